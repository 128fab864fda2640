"""Ramp entry: the front wheels meet a ramp, straight on or obliquely, and the truck goes up.

On the way up the nose meets the ramp, the tail the ground behind it and the belly the crest; which
of them touches, and which of them ends the climb, is read from where the chassis' clearance points
press on the ground. The static answers are the approach, departure and breakover angles of
`truck.clearance`: in the trial the truck squats on its springs and tyres as well.

If nothing is said the ramp is long enough for the whole truck: all four wheels stand on it and go
on by a wheelbase before the crest. A lower step can be asked for; the truck then stands on its
edge, and a slope it could never climb may be got up.

Source: derived here from the geometry of wheels, foot and crest; what counts as hanging, spinning
or stalled is common practice, no source.
"""

from __future__ import annotations

import math
import time as clock
from dataclasses import dataclass, field
from typing import Literal

from crossfall.engines.held import engine_version
from crossfall.engines.settings import GroundSettings
from crossfall.trials.drive import Drive
from crossfall.trials.drive_run import Going, Journey, under_way
from crossfall.trials.grounds.ramp import Ramp, ramp_foot
from crossfall.trials.slope import Command, Manner, goes_over, running
from crossfall.truck.model import Truck

_Entry = Literal[
    "up",
    "nose hangs",
    "belly hangs",
    "tail hangs",
    "spins",
    "stalls",
    "slides",
    "loops over",
    "rolled over",
]
POINTS = ("nose", "belly", "tail")
STUCK = 0.5  # s without getting on that ends a trial
_GETTING_ON = 0.2  # of the speed asked for, less of which is not getting on
SPARE = 0.1  # wheelbases of ramp more than that takes
CLIMBED = 1.0  # wheelbases gone on with all wheels on the ramp that count as climbed


@dataclass(frozen=True)
class RampTrial:
    """One entry; rad, m, N, real size.

    touched: (nose, belly, tail) m travelled when each first touched the ground, nan if never.
    travelled: m along the level; needed: m for both axles to stand on the top. on_ramp: m up the
    ramp it went on after all four wheels stood on it, at most; 0 where they never did. climbed:
    that this was a wheelbase. least_load, least_margin: as in `SlopeTrial`. seconds: CPU time.
    """

    outcome: _Entry
    ramp: Ramp
    drive: Drive
    grip: float | None
    touched: tuple[float, float, float]
    travelled: float
    needed: float
    on_ramp: float
    climbed: bool
    least_load: float
    least_margin: float
    journey: Journey = field(repr=False)
    settings: GroundSettings = field(repr=False)
    seconds: float = 0.0
    engine: str = ""


def ramp_entry(
    truck: Truck,
    angle: float,
    *,
    oblique: float = 0.0,
    rise: float | None = None,
    speed: float = 0.2,
    drive: Drive | None = None,
    grip: float | None = None,
    settings: GroundSettings | None = None,
    manner: Manner | None = None,
) -> RampTrial:
    """Drive from level ground up a ramp of `angle` (rad) onto its level top, `rise` m high.

    oblique: rad, see `Ramp`. rise: None for a ramp long enough for the whole truck (`whole_rise`).
    Outcome: up; nose, belly or tail hangs (it no longer gets on and that point drags); spins or
    stalls (no point drags); slides (off its line or back down); loops over backwards; rolled over
    sideways. ValueError for a speed that is none and for what makes no ramp.
    """
    if not speed > 0:
        raise ValueError(f"no entry at {speed} m/s")
    manner, drive, settings = manner or Manner(), drive or Drive(), settings or GroundSettings()
    started = clock.process_time()
    ramp = Ramp(angle, whole_rise(truck, angle, oblique) if rise is None else rise, oblique)
    needed = to_the_top(truck, ramp)
    way = needed + _run(ramp) * (1 / math.cos(angle) - 1)
    course = (Command(manner.patience * way / speed + manner.ease, speed, ease=manner.ease),)
    with under_way(
        truck, ramp, heading=0.0, reach=needed, drive=drive, grip=grip, settings=settings
    ) as going:
        going.settle(0.0, 0.0, manner.tilt, manner.settle)
        outcome, touched = _enter(going, course, ramp, needed, manner)
        journey = going.journey()
        on_ramp = _gone_on(truck, ramp, going.farthest)
        return RampTrial(
            outcome,
            ramp,
            drive,
            grip,
            touched,
            going.travelled,
            needed,
            on_ramp,
            on_ramp >= CLIMBED * truck.wheelbase,
            float(journey.record.loads.min()),
            float(journey.margin.min()),
            journey,
            settings,
            clock.process_time() - started,
            engine_version("bullet"),
        )


def whole_rise(truck: Truck, angle: float, oblique: float = 0.0) -> float:
    """m, height of a ramp with left for a truck that goes on by a wheelbase with all wheels on.

    angle, oblique: rad. ((1 + CLIMBED + SPARE) L + r tan(angle / 2) + late / cos(angle)) sin(angle)
    cos(oblique), late = T / 2 tan(|oblique|): the wheel farther from the foot comes to it later.
    """
    late = _late(truck, oblique) / math.cos(angle)
    length = (1 + CLIMBED + SPARE) * truck.wheelbase + _first(truck, angle) + late
    return length * math.sin(angle) * math.cos(oblique)


def to_the_top(truck: Truck, ramp: Ramp) -> float:
    """m along the ground, from the start until the rear wheels stand on the top: foot + run + late
    + r - x_rear, run = rise / tan(angle) / cos(oblique)."""
    late = _late(truck, ramp.oblique)
    return ramp_foot(truck, ramp) + _run(ramp) + late + truck.rear.tyre.radius - truck.rear.x


def _gone_on(truck: Truck, ramp: Ramp, travelled: float) -> float:
    """m up the ramp from where all wheels stand on it, but no further than to its crest."""
    cos, first = math.cos(ramp.angle), _first(truck, ramp.angle)
    half = truck.wheelbase / 2 * cos  # the middle of the wheels is ahead of the rear ones by
    foot = ramp_foot(truck, ramp) + _late(truck, ramp.oblique)
    gone = (travelled - half - foot + truck.rear.tyre.radius * math.tan(ramp.angle / 2)) / cos
    left = (_run(ramp) - _late(truck, ramp.oblique)) / cos - first - truck.wheelbase
    return max(0.0, min(gone, left))


def _first(truck: Truck, angle: float) -> float:
    """m up the ramp, where a rear tyre first touches it: r tan(angle / 2)."""
    return truck.rear.tyre.radius * math.tan(angle / 2)


def _late(truck: Truck, oblique: float) -> float:
    """m, by which the wheel farther from the foot comes to it later."""
    return truck.front.track / 2 * math.tan(abs(oblique))


def _run(ramp: Ramp) -> float:
    """m from foot to crest, along the way the truck goes."""
    return ramp.rise / math.tan(ramp.angle) / math.cos(ramp.oblique)


def _enter(
    going: Going, course: tuple[Command, ...], ramp: Ramp, needed: float, manner: Manner
) -> tuple[_Entry, tuple[float, float, float]]:
    touched = [math.nan] * 3
    since, mark, dragging = going.time, going.travelled, 0
    speed = course[0].speed
    outcome: _Entry = "stalls"
    for _ in running(going, course):
        points = pressing(going)
        for point in points:
            if math.isnan(touched[point]):
                touched[point] = going.travelled
        if points:
            dragging = points[0]
        if going.lean > manner.fallen + ramp.angle:
            outcome = _over(going, ramp)
            break
        if abs(going.sideways) > 2 * manner.slide + needed * abs(math.sin(ramp.oblique)):
            outcome = "slides"
            break
        if going.travelled >= needed:
            outcome = "up"
            break
        if going.fell_back > manner.slide:
            outcome = "slides"
            break
        if going.travelled > mark + _GETTING_ON * speed * STUCK:
            since, mark = going.time, going.travelled
        if going.time - since > STUCK + manner.ease:
            turning = going.fastest - going.travelled > manner.slide
            hung: tuple[_Entry, ...] = ("nose hangs", "belly hangs", "tail hangs")
            outcome = hung[dragging] if points else ("spins" if turning else "stalls")
            break
    if outcome != "up" and goes_over(going, manner, ramp.angle):
        outcome = _over(going, ramp)
    first, second, third = touched
    return outcome, (first, second, third)


def _over(going: Going, ramp: Ramp) -> _Entry:
    """Which way a truck lies: back over its tail, or on a side."""
    level, up = math.sin(ramp.angle), math.cos(ramp.angle)
    square = (-level * math.cos(ramp.oblique), -level * math.sin(ramp.oblique), up)
    ahead, left, _ = going.along_truck(square)
    return "loops over" if ahead > abs(left) else "rolled over"


def pressing(going: Going) -> list[int]:
    """Which of POINTS press on the ground now, the nearest clearance point to each contact."""
    clearance = going.truck.clearance
    if clearance is None:
        return []
    marks = [clearance.nose[0], clearance.belly[0], clearance.tail[0]]
    found = []
    for place in going.hull:
        x = float(going.in_truck(place)[0])
        found.append(min(range(3), key=lambda i: abs(marks[i] - x)))
    return sorted(set(found))
