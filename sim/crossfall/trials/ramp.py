"""Ramp entry: the front wheels meet a ramp, straight on or obliquely, and the truck goes up.

On the way up the nose meets the ramp, the tail the ground behind it and the belly the crest; which
of them touches, and which of them ends the climb, is read from where the chassis' clearance points
press on the ground. The static answers are the approach, departure and breakover angles of
`truck.clearance`: in the trial the truck squats on its springs and tyres as well.
"""

from __future__ import annotations

import math
import time as clock
from dataclasses import dataclass, field
from typing import Literal

from crossfall.trials.drive import Drive
from crossfall.trials.going import Going, Journey, under_way
from crossfall.trials.ground import Ramp, front_of_tyres
from crossfall.trials.slope import Command, Manner, running
from crossfall.trials.world import GroundSettings, engine_version
from crossfall.truck.model import Truck

Entry = Literal[
    "up", "nose hangs", "belly hangs", "tail hangs", "spins", "stalls", "slides", "rolled over"
]
POINTS = ("nose", "belly", "tail")
STUCK = 0.5  # s without getting on that ends a trial
GETTING_ON = 0.2  # of the speed asked for, less of which is not getting on
RISE = 0.5  # wheelbases: height of the top if nothing is said; both axles stand on the ramp


@dataclass(frozen=True)
class RampTrial:
    """One entry; rad, m, N, real size.

    touched: (nose, belly, tail) m travelled when each first touched the ground, nan if never.
    travelled: m; needed: m for both axles to stand on the top. least_load, least_margin: as in
    `SlopeTrial`. seconds: CPU time it took.
    """

    outcome: Entry
    ramp: Ramp
    drive: Drive
    grip: float | None
    touched: tuple[float, float, float]
    travelled: float
    needed: float
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

    oblique: rad, see `Ramp`. rise: None for half a wheelbase. Outcome: up; nose, belly or tail
    hangs (it no longer gets on and that point drags); spins or stalls (no point drags); slides
    (off its line); rolled over, which includes over backwards. ValueError for a speed that is
    none and for what makes no ramp.
    """
    if not speed > 0:
        raise ValueError(f"no entry at {speed} m/s")
    manner, drive, settings = manner or Manner(), drive or Drive(), settings or GroundSettings()
    started = clock.process_time()
    ramp = Ramp(angle, RISE * truck.wheelbase if rise is None else rise, oblique)
    needed = to_the_top(truck, ramp)
    course = (Command(manner.patience * needed / speed, speed, ease=manner.ease),)
    with under_way(
        truck, ramp, heading=0.0, reach=needed, drive=drive, grip=grip, settings=settings
    ) as going:
        going.settle(0.0, 0.0, manner.tilt, manner.settle)
        outcome, touched = _enter(going, course, ramp, needed, manner)
        journey = going.journey()
        return RampTrial(
            outcome,
            ramp,
            drive,
            grip,
            touched,
            going.travelled,
            needed,
            float(journey.record.loads.min()),
            float(journey.margin.min()),
            journey,
            settings,
            clock.process_time() - started,
            engine_version(),
        )


def to_the_top(truck: Truck, ramp: Ramp) -> float:
    """m along the ground, from the start until the rear wheels stand on the top."""
    half = truck.front.track / 2
    foot = front_of_tyres(truck) + ramp.gap + half * math.tan(abs(ramp.oblique))
    run = ramp.rise / math.tan(ramp.angle) / math.cos(ramp.oblique)
    late = half * math.tan(abs(ramp.oblique))  # the wheel farther from the foot
    return foot + run + late + truck.rear.tyre.radius - truck.rear.x


def _enter(
    going: Going, course: tuple[Command, ...], ramp: Ramp, needed: float, manner: Manner
) -> tuple[Entry, tuple[float, float, float]]:
    touched = [math.nan] * 3
    since, mark, dragging = going.time, going.travelled, 0
    speed = course[0].speed
    outcome: Entry = "stalls"
    for _ in running(going, course):
        points = pressing(going)
        for point in points:
            if math.isnan(touched[point]):
                touched[point] = going.travelled
        if points:
            dragging = points[0]
        if going.lean > manner.fallen + ramp.angle:
            outcome = "rolled over"
            break
        if abs(going.sideways) > 2 * manner.slide + needed * abs(math.sin(ramp.oblique)):
            outcome = "slides"
            break
        if going.travelled >= needed:
            outcome = "up"
            break
        if going.travelled > mark + GETTING_ON * speed * STUCK:
            since, mark = going.time, going.travelled
        if going.time - since > STUCK + manner.ease:
            turning = going.fastest - going.travelled > manner.slide
            hung: tuple[Entry, ...] = ("nose hangs", "belly hangs", "tail hangs")
            outcome = hung[dragging] if points else ("spins" if turning else "stalls")
            break
    first, second, third = touched
    return outcome, (first, second, third)


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
