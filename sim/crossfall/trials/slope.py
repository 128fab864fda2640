"""Trials on slopes: driving across, up and down a slope of fixed angle.

The slope is played by gravity turned in the ground's axes, as on the tilt table: `heading` is how
far the truck is turned to its left from nose-uphill (90 has its left side down). The truck is held
by its brakes while the slope rises from the level, settles, and then drives; it does not steer.

Source: common practice, no source: when a truck counts as over, slid, spun, stuck or stalled is the
project's own word (`Manner`); gravity as in `engines.held`, the motion that of `engines.rig`.
"""

from __future__ import annotations

import math
import time as clock
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Literal

import numpy as np

from crossfall.engines.held import engine_version
from crossfall.engines.settings import GroundSettings
from crossfall.trials.drive import Drive
from crossfall.trials.drive_run import Going, Journey, under_way
from crossfall.trials.grounds.base import Ground
from crossfall.trials.grounds.plane import Plane
from crossfall.truck.model import Truck

_Crossing = Literal["crossed", "slid", "rolled over", "stuck"]
Climbing = Literal["climbs", "descends", "loops over", "slides", "spins", "stalls"]


@dataclass(frozen=True)
class Manner:
    """How trials on slopes are run, in the real truck's time; each value says why.

    tilt: rad/s, mean, at which the slope rises; at 40 deg/s a soft truck whose springs go slack on
    the way leans past its rest and goes over 0.6 deg too early.
    settle: s held on the slope, several times the slowest motion of the truck on its springs.
    ease: s in which a truck that sets off comes up to its speed.
    slide: m off its line that counts as sliding, or of wheels turning in vain as spinning.
    fallen: rad of the chassis against the ground that counts as over; no truck comes back from it.
    patience: times the time a passage should take after which the truck is stuck.
    verdict: s longest wait, at the end, for a truck with a pair of wheels in the air.
    """

    tilt: float = math.radians(15.0)
    settle: float = 0.4
    ease: float = 0.3
    slide: float = 0.05
    fallen: float = math.radians(50.0)
    patience: float = 2.0
    verdict: float = 1.5


@dataclass(frozen=True)
class Command:
    """What the driver asks for during `seconds`.

    speed: m/s; 0 brakes. effort: share of the torque limit, or of the brake. ease: s in which
    the speed is reached, 0 for a step.
    """

    seconds: float
    speed: float
    effort: float = 1.0
    ease: float = 0.0


@dataclass(frozen=True)
class SlopeTrial:
    """One trial; rad, m, N, real size.

    least_load: (N) least on any wheel after setting off, and which: least_wheel, 0 front left to
    3 rear right. least_margin: rad, of `journey.margin` after setting off. slid: m off its line.
    spun: m the driven wheels turned without going on. seconds: CPU time it took.
    """

    outcome: _Crossing | Climbing
    heading: float
    slope: float
    ground: Ground
    drive: Drive
    grip: float | None
    least_load: float
    least_wheel: int
    least_margin: float
    travelled: float
    slid: float
    spun: float
    journey: Journey = field(repr=False)
    settings: GroundSettings = field(repr=False)
    seconds: float = 0.0
    engine: str = ""


def cross_slope(
    truck: Truck,
    slope: float,
    *,
    heading: float = math.pi / 2,
    speed: float = 0.15,
    distance: float | None = None,
    ground: Ground | None = None,
    drive: Drive | None = None,
    grip: float | None = None,
    settings: GroundSettings | None = None,
    manner: Manner | None = None,
) -> SlopeTrial:
    """Drive straight across a slope (rad) at `speed` (m/s) over `ground`.

    distance: m to drive, None for what the ground asks (`Ground.passage`). grip: friction
    coefficient of the tyres, None for enough never to slide. Outcome: crossed, slid (more than
    manner.slide off its line), rolled over, or stuck. ValueError for a speed or slope that is
    none; InputError for a truck that makes no multibody.
    """
    if not (speed > 0 and 0 <= slope < math.pi / 2):
        raise ValueError(f"no way across: speed {speed} m/s, slope {slope} rad")
    manner, ground, started = manner or Manner(), ground or Plane(), clock.process_time()
    far = ground.passage(truck) if distance is None else distance
    course = (Command(manner.patience * far / speed + manner.ease, speed, ease=manner.ease),)
    drive, settings = drive or Drive(), settings or GroundSettings()
    with under_way(
        truck, ground, heading=heading, reach=far, drive=drive, grip=grip, settings=settings
    ) as going:
        going.settle(heading, slope, manner.tilt, manner.settle)
        outcome = _cross(going, course, far, manner)
        return _trial(going, outcome, heading, slope, ground, drive, grip, settings, started)


def climb_slope(
    truck: Truck,
    slope: float,
    commands: Sequence[Command],
    *,
    heading: float = 0.0,
    ground: Ground | None = None,
    drive: Drive | None = None,
    grip: float | None = None,
    settings: GroundSettings | None = None,
    manner: Manner | None = None,
) -> SlopeTrial:
    """Drive up or down a slope (rad) as commanded; heading (rad) 0 climbs, pi descends.

    Outcome: climbs or descends; loops over; slides (off its line, back down, or on locked wheels);
    spins (wheels turning without going on); stalls (wheels that do not turn, or come less than half
    as far as asked, sum(seconds speed)). ValueError for no commands or a slope that is none. See
    `cross_slope` for the rest.
    """
    manner, ground, started = manner or Manner(), ground or Plane(), clock.process_time()
    if not commands or not 0 <= slope < math.pi / 2:
        raise ValueError(f"no climb: {len(commands)} commands, slope {slope} rad")
    drive, settings = drive or Drive(), settings or GroundSettings()
    reach = sum(c.seconds * c.speed for c in commands)
    with under_way(
        truck, ground, heading=heading, reach=reach, drive=drive, grip=grip, settings=settings
    ) as going:
        going.settle(heading, slope, manner.tilt, manner.settle)
        outcome = _climb(going, commands, heading, manner)
        return _trial(going, outcome, heading, slope, ground, drive, grip, settings, started)


def programmes(speed: float, drive: Drive) -> dict[str, tuple[Command, ...]]:
    """Named sets of commands around a crawling speed (m/s): start, stop, and steps on the grade.

    A brake step begins at 0.6 of the top speed, or at `speed` where that is more.
    """
    fast = max(speed, 0.6 * drive.top_speed)
    crawl = Command(0.8, speed, ease=0.3)
    return {
        "start": (Command(1.5, speed),),
        "stop": (crawl, Command(0.8, 0.0)),
        "throttle step": (crawl, Command(0.6, drive.top_speed)),
        "brake step": (Command(0.8, fast, ease=0.5), Command(0.8, 0.0)),
    }


# Running


def running(going: Going, commands: Sequence[Command]) -> Iterator[None]:
    """Carry out the commands one after another, yielding after every look."""
    before = 0.0
    for command in commands:
        steps = going.steps(command.seconds)
        eased = going.steps(command.ease) if command.ease > 0 else 0
        if command.speed == 0:
            going.driveline.brake(command.effort)
        for i in range(steps):
            if command.speed != 0 and i <= eased:
                share = i / eased if eased else 1.0
                going.driveline.go(before + (command.speed - before) * share, command.effort)
            if going.step():
                yield
        before = command.speed


def goes_over(going: Going, manner: Manner, grade: float = 0.0) -> bool:
    """Brake and watch a truck with a pair of wheels in the air until it stands or lies.

    grade: rad, of what it stands on against the ground.
    """
    going.driveline.brake()
    for _ in range(going.steps(manner.verdict)):
        if not going.airborne:
            return False
        if going.step() and going.lean > manner.fallen + grade:
            return True
    return going.airborne


def _cross(going: Going, course: Sequence[Command], far: float, manner: Manner) -> _Crossing:
    for _ in running(going, course):
        if going.lean > manner.fallen:
            return "rolled over"
        if abs(going.sideways) > manner.slide or going.fell_back > manner.slide:
            return "rolled over" if goes_over(going, manner) else "slid"
        if going.travelled >= far:
            return "rolled over" if goes_over(going, manner) else "crossed"
    return "rolled over" if goes_over(going, manner) else "stuck"


def _climb(going: Going, commands: Sequence[Command], heading: float, manner: Manner) -> Climbing:
    uphill = math.cos(heading) >= 0
    for _ in running(going, commands):
        if going.lean > manner.fallen:
            return "loops over"
        ahead = going.rolled - going.travelled  # wheels ahead of the ground
        if abs(going.sideways) > manner.slide or ahead < -manner.slide:
            return "loops over" if goes_over(going, manner) else "slides"
        if ahead > manner.slide:
            back = going.fell_back > manner.slide / 2
            return "slides" if back else "spins"
    if goes_over(going, manner):
        return "loops over"
    asked = sum(c.seconds * c.speed for c in commands)
    if going.travelled < asked / 2:
        return "spins" if going.fastest - going.travelled > manner.slide else "stalls"
    return "climbs" if uphill else "descends"


def _trial(
    going: Going,
    outcome: _Crossing | Climbing,
    heading: float,
    slope: float,
    ground: Ground,
    drive: Drive,
    grip: float | None,
    settings: GroundSettings,
    started: float,
) -> SlopeTrial:
    journey = going.journey()
    loads = journey.record.loads
    least = int(np.argmin(loads))
    return SlopeTrial(
        outcome,
        heading,
        slope,
        ground,
        drive,
        grip,
        float(loads.flat[least]),
        least % 4,
        float(journey.margin.min()),
        going.travelled,
        abs(going.sideways),
        going.rolled - going.travelled,
        journey,
        settings,
        clock.process_time() - started,
        engine_version("bullet"),
    )
