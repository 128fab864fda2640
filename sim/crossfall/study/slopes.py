"""The slope a truck can just be driven across, by trials, beside the static answer.

Every trial has a seed of its own, which draws what a driver cannot choose: the ground, as far as
it is of chance (`Ground.drawn`), and the grip within its range. The critical slope is where half
of the trials fail (see `critical`). What the static answer has above it is the dynamic allowance:
the degrees a driver must keep in hand.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from typing import Literal

import numpy as np

from crossfall.statics.sliding import triangular_quantile
from crossfall.study.critical import CriticalSlope, find_critical, fit_logistic
from crossfall.trials.drive import Drive
from crossfall.trials.grounds.base import Ground
from crossfall.trials.grounds.plane import Plane
from crossfall.trials.ramp import RampTrial
from crossfall.trials.slope import SlopeTrial, cross_slope
from crossfall.truck.model import Grip, Truck

ABOVE = math.radians(3.0)
_STEEPEST = math.radians(85.0)


@dataclass(frozen=True)
class Crossing:
    """What is tried: heading rad, speed m/s. grip: a coefficient for every trial, a range to draw
    from, or None for enough never to slide. seed: of all trials together.
    """

    heading: float = math.pi / 2
    speed: float = 0.15
    distance: float | None = None
    ground: Ground = field(default_factory=Plane)
    drive: Drive = field(default_factory=Drive)
    grip: Grip | float | None = None
    seed: int = 0


@dataclass(frozen=True)
class SlopeStudy:
    """A critical slope by trials and its static answer; rad.

    outcomes: of every trial, in the order of critical.angles. compliant: static tip at the likely
    grip, against a rail where it slides first. slide: static slide angle at that grip, nan without
    one. static: the lower of the two, and which: first. allowance: static less critical.fit.angle,
    and allowance_ci: (low, high). seconds: CPU time of the trials.
    """

    crossing: Crossing
    critical: CriticalSlope
    outcomes: tuple[str, ...]
    compliant: float
    slide: float
    static: float
    first: Literal["tips", "slides"]
    allowance: float
    allowance_ci: tuple[float, float]
    seconds: float = field(compare=False, default=0.0)


@dataclass(frozen=True)
class Standing:
    """The truck standing where it drove; rad. tip: of the compliant answer; reserve: tip less the
    slope, negative where it does not stand there."""

    tip: float
    reserve: float


def critical_slope(
    truck: Truck,
    crossing: Crossing,
    *,
    half_width: float = math.radians(0.5),
    most: int = 40,
    watch: Callable[[int, float, str], None] = lambda number, angle, outcome: None,
) -> SlopeStudy:
    """Find the critical slope of a crossing to +-half_width (rad), in at most `most` trials.

    The static answer says where to look first; where all trials there end alike the search goes on
    outside, and nothing but outcomes enters the fit. Where nothing is drawn the edge is sharp and
    is bisected, and the interval is what is left between. watch: told of every trial. allowance =
    static - critical. Raises InputError for a truck that makes no multibody.
    Source: as `critical.find_critical` and `bisect`; the allowance is a difference of the two
    answers.
    """
    tip, slide = static_answer(truck, crossing)
    first: Literal["tips", "slides"] = "slides" if slide < tip else "tips"
    static = min(tip, slide) if math.isfinite(slide) else tip
    outcomes: list[str] = []
    seconds = [0.0]

    def fails(angle: float, number: int) -> bool:
        trial = one_trial(truck, crossing, angle, len(outcomes))
        outcomes.append(trial.outcome)
        seconds[0] += trial.seconds
        watch(len(outcomes), angle, trial.outcome)
        return trial.outcome != "crossed"

    search = find_critical if varies(crossing) else bisect
    low = max(0.0, static - crossing.ground.below)
    high = min(_STEEPEST, static + ABOVE)
    found = search(fails, low, high, half_width=half_width, most=most)
    outside = (0.0, low) if found.failed.all() else (high, _STEEPEST)
    if (found.failed.all() or not found.failed.any()) and outside[0] < outside[1]:
        del outcomes[:]
        found = search(fails, *outside, half_width=half_width, most=most)
    fit = found.fit
    return SlopeStudy(
        crossing,
        found,
        tuple(outcomes),
        tip,
        slide,
        static,
        first,
        static - fit.angle,
        (static - fit.high, static - fit.low),
        seconds[0],
    )


def what_closes(found: CriticalSlope, half_width: float, *, sharp: bool = False) -> str:
    """What would bring the interval of a search that ended wider than +-half_width (rad) to it, a
    sentence; "" where it is as narrow as that.

    sharp: whether the search is `bisect`. Trials wanted: n (width / (2 half_width))^2, as widths go
    with 1 / sqrt(n), and of a sharp edge n + log2(width / (2 half_width)).
    Source: derived here from the central limit theorem, and from halving.
    """
    fit = found.fit
    if found.settled:
        return ""
    least, most = (f"{math.degrees(v):.1f}°" for v in (found.angles.min(), found.angles.max()))
    if not found.failed.any():
        return (
            f"No drive failed up to {most}: a steeper slope, more speed or a rougher ground would."
        )
    if found.failed.all():
        return (
            f"Every drive failed down to {least}: less speed, more grip or an easier ground holds."
        )
    if not math.isfinite(fit.high - fit.low):
        side = "above" if math.isinf(fit.high) else "below"
        tail = f"it is open {side}: drives that end alike there would close it"
        return f"{found.trials} trials do not bound it, {tail}; allow twice as many."
    times = (fit.high - fit.low) / (2 * half_width)
    wanted = math.ceil(found.trials + math.log2(times) if sharp else found.trials * times**2)
    now = math.degrees(fit.high - fit.low) / 2
    return (
        f"The interval is ±{now:.1f}° after {found.trials} trials; about {wanted} would bring it "
        f"to ±{math.degrees(half_width):g}°."
    )


def varies(crossing: Crossing) -> bool:
    """Whether two trials at one angle can end differently."""
    return crossing.ground.chance or isinstance(crossing.grip, Grip)


def bisect(
    fails: Callable[[float, int], bool], low: float, high: float, *, half_width: float, most: int
) -> CriticalSlope:
    """Where holds turn into failures between low and high, to +-half_width, for a sharp edge; rad.

    fails: as of `critical.find_critical`.
    Source: bisection, any numerical text.
    """
    angles: list[float] = []
    failed: list[bool] = []
    ends = [-math.inf, math.inf]
    narrow = 2 * half_width * (1 + 1e-9)  # halves of a width may be a hair off
    while len(angles) < most and not ends[1] - ends[0] <= narrow:
        angle = (max(ends[0], low) + min(ends[1], high)) / 2
        if angle - low < half_width or high - angle < half_width:
            angle = low if angle - low < half_width else high
        if angle in angles:
            break
        angles.append(angle)
        failed.append(bool(fails(angle, len(failed))))
        ends[1 if failed[-1] else 0] = angle
    fit = fit_logistic(angles, failed)
    sharp = replace(fit, low=ends[0], high=ends[1])
    settled = ends[1] - ends[0] <= narrow
    return CriticalSlope(sharp, np.array(angles), np.array(failed), settled)


def one_trial(truck: Truck, crossing: Crossing, angle: float, number: int) -> SlopeTrial:
    """Trial `number` of a crossing, on a slope of `angle` (rad). Raises as
    `trials.slope.cross_slope`.

    Source: as `trials.slope`.
    """
    ground, grip = drawn_ground(crossing, number)
    return cross_slope(
        truck,
        angle,
        heading=crossing.heading,
        speed=crossing.speed,
        distance=crossing.distance,
        ground=ground,
        drive=crossing.drive,
        grip=grip,
    )


def drawn_ground(crossing: Crossing, number: int) -> tuple[Ground, float | None]:
    """The ground and grip of trial `number`: triangular within a range of grips, by its quantile.

    Source: as `statics.sliding.triangular_quantile`.
    """
    rng = np.random.default_rng([crossing.seed, number])
    grip, share = crossing.grip, rng.random()
    ground = crossing.ground.drawn(rng)
    if isinstance(grip, Grip):
        return ground, float(triangular_quantile(share, grip))
    return ground, grip


def likely(grip: Grip | float | None) -> float | None:
    """The coefficient, or the likely one of a range."""
    return grip.likely if isinstance(grip, Grip) else grip


def static_answer(truck: Truck, crossing: Crossing) -> tuple[float, float]:
    """(tip, slide) in rad of the truck standing there, `as_driven`, at the likely grip.

    slide is nan where nothing is said about grip, and then the tyres hold as well as they can.
    Source: as `answers.tips`.
    """
    grip = likely(crossing.grip)
    tip = standing_tip(truck, crossing.heading, grip)
    if grip is None:
        return tip, math.nan
    from crossfall.answers.tips import tip_angles

    return tip, float(tip_angles(as_driven(truck), [crossing.heading], grip).slide[0])


def left_out(truck: Truck) -> tuple[str, ...]:
    """What of a truck its trials on driven wheels do not have, a sentence each."""
    found = []
    if truck.turned:
        found.append("it drives straight ahead, not with its front wheels turned")
    return tuple(found)


def as_driven(truck: Truck) -> Truck:
    """The truck as it is on a slope: its wheels straight ahead, whatever its file says, and held by
    their brakes where it stands; so that a drive is held against itself standing there."""
    ahead = ((0.0, 0.0), (0.0, 0.0))
    front, rear = (replace(axle, steered=ahead, shaft=0.0) for axle in truck.axles)
    return replace(truck, front=front, rear=rear)


def standing_tip(truck: Truck, heading: float, grip: float | None = None) -> float:
    """The one answer's tip (rad) of the truck standing `as_driven` at a heading (rad), against a
    rail where it slides first. grip: a coefficient; None: the tyres hold as well as they can.

    Source: as `answers.tips`; where that finds none, as `statics.rigid`.
    """
    from crossfall.answers.tips import tip_angles
    from crossfall.statics.compliant import NO_SLIDE

    truck = as_driven(truck)
    found = tip_angles(truck, [heading], NO_SLIDE if grip is None else grip)
    tip = float(found.free[0])
    if math.isnan(tip):  # unresolved: the rigid answer is still a place to start from
        from crossfall.statics.rigid import tip_angle

        tip = float(tip_angle(truck, [heading])[0])
    return tip


def standing_reserve(truck: Truck, trial: SlopeTrial | RampTrial) -> Standing:
    """How much steeper the slope or ramp of a trial might be before the truck tips standing on it:
    tip less slope, rad.

    The ground is taken as a plane with the trial's grip, without its stone or its waves.
    Source: as `standing_tip`.
    """
    if isinstance(trial, RampTrial):
        heading, slope = -trial.ramp.oblique % math.tau, trial.ramp.angle
    else:
        heading, slope = trial.heading, trial.slope
    tip = standing_tip(truck, heading, trial.grip)
    return Standing(tip, tip - slope)
