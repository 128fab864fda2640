"""How long the pack lasts: usable energy over mean power.

What is kept from pack to pack is the power at the truck's work. Going the same way at the same
pace takes the same work whatever the pack, and the speed controller turns a higher voltage down to
what the motor needs; so with more cells the current falls. (Were the current kept, more cells would
mean more power: another, faster outing.) The power counts as proportional to the truck's mass, as
climbing and rolling are. It comes from a mean current measured on the file's own pack, at a mass
the file gives, or else is a guess, and the answer says which. Packs of other cell counts are
compared by their energy at the nominal voltage of a cell.

Source: derived here from conservation of energy; the power's share of mass, the nominal voltage and
all that is guessed are common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.schema import BatterySpec, TruckSpec

CELL = 3.7  # V, nominal of a lithium polymer cell; from memory
SPECIFIC_POWER = 22.0  # W/kg of truck, slow going on rocks; a guess to be replaced by a reading
KEPT = (
    "the power at the truck's work is kept, in proportion to the truck's mass: the same way at the "
    "same pace takes the same work whatever the pack, so with more cells the current falls"
)
NEGLECTED = (
    "the pack's voltage away from 3.7 V a cell, and its fall as it empties",
    "heat in pack, leads and controller, less at the lower current of more cells",
    "the motor's efficiency at another speed, and that more volts tempt to drive faster",
    "electronics and servos, which draw alike at every mass",
)
ESTIMATE_SD = 0.35  # relative, of the guessed power
MEASURED_SD = 0.10  # relative, of a mean current read over one outing


@dataclass(frozen=True)
class RunTime:
    """seconds: mean. sd: s, standard uncertainty, from the power. energy: J usable.

    power: W mean at this truck's mass. cells: of the pack, in series. how: whether the power was
    measured or estimated.
    """

    seconds: float
    sd: float
    energy: float
    power: float
    cells: int
    how: Literal["measured", "estimated"]

    @property
    def voltage(self) -> float:
        """V, nominal: cells in series times CELL."""
        return self.cells * CELL

    @property
    def current(self) -> float:
        """A, mean, from this pack: power / voltage."""
        return self.power / self.voltage

    @property
    def minutes(self) -> float:
        """Of 60 seconds."""
        return self.seconds / 60.0


def usable_energy(battery: BatterySpec) -> float:
    """J: charge x cells x nominal voltage x the share that may be used; 3.6 C to the mAh."""
    charge = battery.capacity_mah * 3.6
    return charge * battery.cells * CELL * battery.usable_percent / 100.0


def specific_power(battery: BatterySpec) -> tuple[float, Literal["measured", "estimated"]]:
    """W per kg of truck, and how it is known: from the current measured on this pack and the mass
    it was measured at, I n V / m, or `SPECIFIC_POWER`."""
    if battery.draw_a is None or battery.draw_mass_g is None:
        return SPECIFIC_POWER, "estimated"
    power = battery.draw_a * battery.cells * CELL
    return power / (battery.draw_mass_g * 1e-3), "measured"


def run_time(
    truck: Truck, spec: TruckSpec, measured_on: BatterySpec | None = None
) -> RunTime | None:
    """How long this truck runs, E / (p m), p the specific power and m its mass; None for a file
    without a battery section. s, J and W.

    measured_on: the battery section with which the current was measured, where a change has put in
    another pack since.
    """
    if spec.battery is None:
        return None
    per_mass, how = specific_power(measured_on or spec.battery)
    energy = usable_energy(spec.battery)
    power = per_mass * whole(truck).mass
    seconds = energy / power
    spread = MEASURED_SD if how == "measured" else ESTIMATE_SD
    return RunTime(seconds, spread * seconds, energy, power, spec.battery.cells, how)
