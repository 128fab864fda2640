"""Driving a course: a way over a hill with stones and ramps on it.

The way is driven straightened out: the truck goes straight on over level ground, while gravity
turns as the hill does under it, and stones and ramps lie beside its line as they lie beside the
way. It is steered to stay on that line. So all that a slope, a stone and a ramp do to springs,
tyres and balance is there; what is left out is what a bend asks of the wheels: that they are turned
for it, and go different ways.
"""

from __future__ import annotations

import math
import time as clock
from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Literal

import numpy as np

from crossfall.engines.held import engine_version, gravity_on_table
from crossfall.engines.settings import GroundSettings
from crossfall.trials.drive import Drive
from crossfall.trials.drive_run import Going, Journey, under_way
from crossfall.trials.grounds.strewn import Strewn
from crossfall.trials.slope import Command, Manner, goes_over, running
from crossfall.truck.model import Array, Truck, frozen

_AFTER = 0.8  # s that are still shown once it has gone
_HALT = 1.5  # s without getting on after which it is stuck
_GETTING_ON = 0.1  # of the way it should have come meanwhile
_LEAST_LIFT = 0.05  # s off the ground that count as lifting
_TOUCH = 0.1  # s on the ground between two lifts that are still one
_WINDOW = 0.5  # s over which it is looked whether it slides

Outcome = Literal["comes through", "slides", "goes over", "is stuck"]


@dataclass(frozen=True)
class Course:
    """slope: rad, of the hill. along: (n,) m, growing from 0, of the truck's middle; heading: (n,)
    rad there, without jumps, as on the table: 0 climbs. ground: what lies on the hill, m ahead of
    the start along the way and to the left of it. speed: m/s."""

    slope: float
    along: Array
    heading: Array
    ground: Strewn
    speed: float

    def __post_init__(self) -> None:
        fits = self.along.shape == self.heading.shape and len(self.along) > 1
        if not (fits and np.all(np.diff(self.along) > 0) and 0 <= self.slope < math.pi / 2):
            raise ValueError("no course: its way does not go on")
        if not self.speed > 0:
            raise ValueError(f"no course is driven at {self.speed} m/s")

    @property
    def length(self) -> float:
        """m."""
        return float(self.along[-1])


@dataclass(frozen=True)
class Event:
    """What happened on the way. wheel: 0 front left to 3 rear right, None for the whole truck.
    begin, end: s. at: m along the way."""

    what: Literal["lifts", "slides", "goes over", "is stuck"]
    wheel: int | None
    begin: float
    end: float
    at: float


@dataclass(frozen=True)
class CourseDrive:
    """travelled: m. seconds: CPU time it took."""

    outcome: Outcome
    events: tuple[Event, ...]
    travelled: float
    journey: Journey = field(repr=False)
    seconds: float = 0.0
    engine: str = ""


def drive_course(
    truck: Truck,
    course: Course,
    *,
    grip: float | None = None,
    drive: Drive | None = None,
    settings: GroundSettings | None = None,
    manner: Manner | None = None,
) -> CourseDrive:
    """Drive it once. grip: friction coefficient, None for enough never to slide.

    It slides where it moves more than manner.slide aside of where its wheels point within half a
    second. Raises InputError for a truck that makes no multibody, and past the steps that
    settings.budget allows.
    Source: common practice, no source: when a drive counts as slid, stuck or over is the project's
    own word (`Manner`); the motion is that of `engines.rig`.
    """
    manner, drive, settings = manner or Manner(), drive or Drive(), settings or GroundSettings()
    started = clock.process_time()
    with under_way(
        truck,
        course.ground,
        heading=float(course.heading[0]),
        reach=course.length,
        drive=drive,
        grip=grip,
        settings=settings,
        steering=True,
    ) as going:
        going.settle(float(course.heading[0]), course.slope, manner.tilt, manner.settle)
        outcome, when, at = _drive(going, course, manner)
        journey = going.journey()
        until = math.inf if outcome == "comes through" else when
        events = [lift for lift in _lifts(journey) if lift.begin <= until]
        if outcome != "comes through":
            events.append(Event(outcome, None, when, going.time, at))
        return CourseDrive(
            outcome,
            tuple(sorted(events, key=lambda event: event.begin)),
            going.travelled,
            journey,
            clock.process_time() - started,
            engine_version("bullet"),
        )


def _drive(going: Going, course: Course, manner: Manner) -> tuple[Outcome, float, float]:
    """How it ends, when (s) and where (m along) that began."""
    steepest = max((hump.angle for hump in course.ground.humps), default=0.0)
    command = Command(
        manner.patience * course.length / course.speed + manner.ease, course.speed, ease=manner.ease
    )
    aside = _Aside(going)
    since, mark = going.time, going.travelled
    for _ in running(going, (command,)):
        _turn(going, course)
        when, at = going.time, going.travelled
        if going.lean > manner.fallen + steepest:
            _watch(going)
            return "goes over", when, at
        if aside.look() > manner.slide or going.fell_back > manner.slide:
            over = goes_over(going, manner, steepest)
            _watch(going)
            return ("goes over" if over else "slides"), when, at
        if going.travelled >= course.length:
            break
        if going.travelled > mark + _GETTING_ON * course.speed * _HALT:
            since, mark = going.time, going.travelled
        if going.time - since > _HALT + manner.ease:
            return "is stuck", since, at
    when, at = going.time, going.travelled
    if goes_over(going, manner, steepest):
        _watch(going)
        return "goes over", when, at
    return "comes through", when, at


def _turn(going: Going, course: Course) -> None:
    """Gravity as the hill has it where the truck is now."""
    heading = float(np.interp(going.travelled, course.along, course.heading))
    going.gravity = gravity_on_table(heading, course.slope)


def _watch(going: Going) -> None:
    """A little longer, on the brake, so that one sees what becomes of it."""
    going.driveline.brake()
    for _ in range(going.steps(_AFTER)):
        going.step()


class _Aside:
    """How far the rear axle has moved to its side, not where its wheels point, in the last
    _WINDOW."""

    def __init__(self, going: Going) -> None:
        self._going = going
        self._was = going.rear
        self._seen: list[tuple[float, float]] = []
        self._total = 0.0

    def look(self) -> float:
        """m."""
        now = self._going.rear
        moved = (now[0] - self._was[0], now[1] - self._was[1], 0.0)
        self._was = now
        self._total += float(self._going.along_truck(moved)[1])
        self._seen.append((self._going.time, self._total))
        while self._seen[0][0] < self._going.time - _WINDOW:
            self._seen.pop(0)
        return abs(self._total - self._seen[0][1])


def _lifts(journey: Journey) -> Iterator[Event]:
    """Wheels that are off the ground for a while; one that only touches it has not come down."""
    time, travelled = journey.record.time, journey.travelled
    for wheel in range(4):
        off = np.concatenate([[False], journey.record.loads[:, wheel] <= 0, [False]])
        begins = np.flatnonzero(off[1:] & ~off[:-1])
        ends = np.minimum(np.flatnonzero(off[:-1] & ~off[1:]), len(time) - 1)
        apart = time[begins[1:]] - time[ends[:-1]] > _TOUCH
        firsts = begins[np.append(True, apart)] if len(begins) else begins
        lasts = ends[np.append(apart, True)] if len(ends) else ends
        for begin, end in zip(firsts, lasts, strict=True):
            if time[end] - time[begin] >= _LEAST_LIFT:
                at = float(travelled[begin])
                yield Event("lifts", wheel, float(time[begin]), float(time[end]), at)


def straightened(points: Array, step: float = 0.01) -> tuple[Array, Array, Array]:
    """A way by its corners (n, 2) m, x across the hill to the right and y up it, rounded off.

    Gives along (m,) m, heading (m,) rad without jumps, and places (m, 2) m, every `step` m or
    closer. Raises ValueError for a way without length. heading = atan2(-dx/ds, dy/ds).
    Source: G. M. Chaikin, Computer Graphics and Image Processing 3 (1974) 346, for the rounding
    (from memory); the heading derived here from the tangent, by ISO 8855's sense of turning.
    """
    corners = [points[0]]
    for p in points[1:]:
        if np.hypot(*(p - corners[-1])) > step:
            corners.append(p)
    if len(corners) < 2:
        raise ValueError("the way has no length")
    smooth = _rounded(np.array(corners))
    gone = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(smooth, axis=0).T))])
    along = np.linspace(0.0, gone[-1], max(2, math.ceil(gone[-1] / step) + 1))
    places = np.column_stack([np.interp(along, gone, smooth[:, i]) for i in (0, 1)])
    way = np.gradient(places, along, axis=0)
    heading = np.unwrap(np.arctan2(-way[:, 0], way[:, 1]))
    return frozen(along), frozen(heading), frozen(places)


def _rounded(corners: Array, times: int = 4) -> Array:
    """Chaikin's corner cutting, ends kept: G. M. Chaikin, Computer Graphics and Image Processing 3
    (1974) 346."""
    for _ in range(times):
        a, b = corners[:-1], corners[1:]
        cut = np.stack([0.75 * a + 0.25 * b, 0.25 * a + 0.75 * b], axis=1).reshape(-1, 2)
        corners = np.concatenate([corners[:1], cut[1:-1], corners[-1:]])
    return corners


def beside(place: Array, along: Array, heading: Array, places: Array) -> tuple[float, float, float]:
    """Where a place (2,) m on the hill lies from its nearest point of a way: m along, m to the left
    of it, and rad that the way points there, to the left from uphill.

    along, heading: (m,) and places: (m, 2), as of `straightened`. along + off.ahead and off.left,
    with off from the nearest of the places.
    Source: derived here from projection on the tangent.
    """
    off = place - places
    k = int(np.argmin(np.hypot(*off.T)))
    ahead = np.array([-math.sin(heading[k]), math.cos(heading[k])])
    left = np.array([-ahead[1], ahead[0]])
    return float(along[k] + off[k] @ ahead), float(off[k] @ left), float(heading[k])
