"""What was measured at one weigh-in, as plain values in SI."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Measured:
    """A length known within +- tolerance, m."""

    value: float
    tolerance: float


@dataclass(frozen=True)
class Ruler:
    """What the ruler says of the truck: wheelbase, tracks between tyre middles, wheel-centre
    heights under load. m."""

    wheelbase: Measured
    track_front: Measured
    track_rear: Measured
    radius_front: Measured
    radius_rear: Measured


@dataclass(frozen=True)
class WeighingScale:
    """resolution: kg, one step. accuracy: fraction of the reading, +- limit. height_match: m, how
    well blocks match the scale's height. placement: kg, sd of re-placing the truck, or None."""

    resolution: float
    accuracy: float = 0.0
    height_match: float = 0.0
    placement: float | None = None


@dataclass(frozen=True)
class Free:
    """Suspension left free: each as (value, +- tolerance), as in `weigh_in_model.Springs`.

    known: False where the springs are guesses, so wide that they bound the height.
    """

    rate_front: Measured
    rate_rear: Measured
    spacing: Measured
    roll_centre: Measured
    unsprung_front: Measured
    unsprung_rear: Measured
    anti_roll: float = 0.0
    known: bool = True


@dataclass(frozen=True)
class Repeats:
    """Repeats of one load, kg.

    at: one of `weigh_in_model.STATIONS`. raised: front, rear, left, right or "" (level), on a
    `block`. together: all four wheels on scales at once (then `at` is a wheel). turned: the truck
    faces the other way on the same floor. locked: the suspension is held still. line: where in its
    file.
    """

    at: str
    loads: tuple[float, ...]
    raised: str = ""
    block: Measured = Measured(0.0, 0.0)
    together: bool = False
    turned: bool = False
    locked: bool = False
    line: int | None = None

    @property
    def label(self) -> str:
        """As a tuner would say it."""
        where = "whole truck" if self.at == "all" else f"{self.at} {_noun(self.at)}"
        how = f", {self.raised} raised {self.block.value * 1e3:g} mm" if self.raised else ", level"
        return where + how + (", turned round" if self.turned else "")


@dataclass(frozen=True)
class Session:
    """All that was measured at one weigh-in. floor: rad, +- slope of the floor either way.

    tyre_stiffness: N/m. free: the springs, for readings that are not locked; None if all are.
    """

    ruler: Ruler
    scale: WeighingScale
    readings: tuple[Repeats, ...]
    free: Free | None = None
    floor: float = 0.0
    tyre_stiffness: float = 5000.0
    file: str = "readings"


def _noun(at: str) -> str:
    return {"front": "axle", "rear": "axle", "left": "side", "right": "side"}.get(at, "wheel")
