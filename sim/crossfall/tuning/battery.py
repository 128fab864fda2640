"""How long the pack lasts.

Run time is usable charge over mean current. The current counts as proportional to the truck's
mass (climbing and rolling resistance are; the electronics' share is small), from the mass at which
it was measured; for another cell count the power is the same and the current falls. Without a
measured current it is estimated, and the answer says so.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.schema import BatterySpec, TruckSpec

CELL = 3.7  # V, nominal of a lithium polymer cell; from memory
SPECIFIC_POWER = 22.0  # W/kg of truck, slow going on rocks; a guess to be replaced by a reading
ESTIMATE_SD = 0.35  # relative, of the guessed power
MEASURED_SD = 0.10  # relative, of a mean current read over one outing


@dataclass(frozen=True)
class RunTime:
    """seconds: mean. sd: s, standard uncertainty, from the current. energy: J usable.

    current: A mean at this truck's mass. how: whether that was measured or estimated.
    """

    seconds: float
    sd: float
    energy: float
    current: float
    how: Literal["measured", "estimated"]

    @property
    def minutes(self) -> float:
        return self.seconds / 60.0


def usable_energy(battery: BatterySpec) -> float:
    """J: charge x cells x nominal voltage x the share that may be used."""
    charge = battery.capacity_mah * 3.6
    return charge * battery.cells * CELL * battery.usable_percent / 100.0


def specific_power(battery: BatterySpec) -> tuple[float, Literal["measured", "estimated"]]:
    """W per kg of truck, and how it is known: measured current and mass, or `SPECIFIC_POWER`."""
    if battery.draw_a is None or battery.draw_mass_g is None:
        return SPECIFIC_POWER, "estimated"
    power = battery.draw_a * battery.cells * CELL
    return power / (battery.draw_mass_g * 1e-3), "measured"


def run_time(
    truck: Truck, spec: TruckSpec, measured_on: BatterySpec | None = None
) -> RunTime | None:
    """How long this truck runs; None for a file without a battery section.

    measured_on: the battery section with which the current was measured, where a change has put
    in another pack since.
    """
    if spec.battery is None:
        return None
    per_mass, how = specific_power(measured_on or spec.battery)
    energy = usable_energy(spec.battery)
    power = per_mass * whole(truck).mass
    seconds = energy / power
    spread = MEASURED_SD if how == "measured" else ESTIMATE_SD
    return RunTime(seconds, spread * seconds, energy, power / (spec.battery.cells * CELL), how)
