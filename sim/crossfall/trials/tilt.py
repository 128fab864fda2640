"""Tilt-table trials: settle on the level, tilt slowly, see when the last uphill tyre leaves.

The critical angle is the table angle at which the last uphill tyre leaves the table for good (the
end point of tilt-table standards for road vehicles, e.g. UN ECE R111). It is reported twice, both
at zero rate: the event, bracketed by holding the table still and seeing whether the truck stands,
and the fit of table angle to load at the angles at which it stood.
"""

from __future__ import annotations

import math
import time as clock
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Literal

import numpy as np
from scipy.ndimage import uniform_filter1d

from crossfall.engines.held import EngineName, usual_engine
from crossfall.engines.settings import Settings
from crossfall.trials.fits import Approach, Fit, fit_critical_angle
from crossfall.trials.holding import bracket
from crossfall.trials.pace import Pace
from crossfall.trials.record import Record, Stretch
from crossfall.trials.table import (
    OPPOSITE,
    Fate,
    Moment,
    Table,
    Tilting,
    set_grip,
    standing,
)
from crossfall.truck.model import Array, Truck, frozen
from crossfall.truck.support import PAIRS

Outcome = Literal["tips", "slides", "stands"]
RUNS = 1.2  # times as fast as its table a truck leans on that is losing its balance
SPAN = math.radians(1.5)  # below a tip, in which load is fitted
NEAR = math.radians(2.0)  # below a tip, in which a snap is told
LEFT = 0.001  # of the weight; a truck that tips as its load runs out has less at the last hold


@dataclass(frozen=True)
class TiltTrial:
    """One trial; angles in rad.

    tip: critical angle at zero rate (the event), nan unless it tips. tip_ci: (low, high), 95 %: the
    bracket and the floor of Pace, and down to the snap where there is one: how it comes to rest
    there hangs on how its movement is damped. event: middle of event_bracket, between an angle at
    which it stands and one at which it does not. load_left: of the truck's weight, on the lifting
    pair at the last angle it stood. fit: the angle at which that load would be gone, with its
    interval; where there was more than LEFT of it, the truck lost its balance first, and the fit is
    none of the tip. ramp: what the moving table showed, late by its rate. lift: (4,) angle at which
    each uphill wheel left the table for good, as the moving table showed it but not above the tip,
    nan for the wheels it tips over; first_lift: the least. snap: highest angle within two degrees
    of the tip at which it jumped and stood again, nan if none was seen. slide, slide_ci: angle at
    which it began to slide and its interval, nan unless it slides before it tips. over: the wheels
    it tipped over. seconds: CPU time it took.
    """

    heading: float
    outcome: Outcome
    grip: float
    rail: bool
    record: Record = field(repr=False)
    settings: Settings = field(repr=False)
    pace: Pace = field(repr=False)
    seconds: float
    engine: str
    tip: float = math.nan
    tip_ci: tuple[float, float] = (math.nan, math.nan)
    event: float = math.nan
    event_bracket: tuple[float, float] = (math.nan, math.nan)
    load_left: float = math.nan
    fit: Fit | None = None
    ramp: float = math.nan
    first_lift: float = math.nan
    lift: Array = field(default_factory=lambda: frozen(np.full(4, math.nan)))
    snap: float = math.nan
    slide: float = math.nan
    slide_ci: tuple[float, float] = (math.nan, math.nan)
    over: tuple[int, int] | None = None


def tilt_trial(
    truck: Truck,
    heading: float,
    *,
    grip: float,
    near: float | None = None,
    rail: bool = False,
    settings: Settings | None = None,
    pace: Pace | None = None,
    engine: EngineName | None = None,
) -> TiltTrial:
    """One trial at `heading` (rad), brakes held.

    grip: friction coefficient of the surface. rail: the wheels it would tip over cannot slide.
    near: an expected tip angle (rad), only used to hurry to a start below it; a start that turns
    out too late is thrown away. engine: None for the usual one. Raises InputError for a truck that
    makes no multibody, ValueError for a grip that is not above zero.
    """
    expected = None if near is None else (near,)
    return tilt_trials(
        truck,
        (heading,),
        grip=grip,
        near=expected,
        rail=rail,
        settings=settings,
        pace=pace,
        engine=engine,
    )[0]


def tilt_trials(
    truck: Truck,
    headings: Sequence[float],
    *,
    grip: float,
    near: Sequence[float] | None = None,
    rail: bool = False,
    both_sides: bool = False,
    settings: Settings | None = None,
    pace: Pace | None = None,
    engine: EngineName | None = None,
) -> tuple[TiltTrial, ...]:
    """A trial for each heading (rad), in order; the truck is loaded once.

    both_sides: each heading is followed by its mirror image. See `tilt_trial` for the rest.
    """
    expected: Sequence[float | None] = (
        [None] * len(headings) if near is None else [float(n) for n in near]
    )
    if not grip > 0.0:
        raise ValueError(f"grip must be above zero, not {grip}")
    asked = list(zip(map(float, headings), expected, strict=True))
    if both_sides:
        asked = [pair for h, n in asked for pair in ((h, n), (-h % math.tau, n))]
    with standing(truck, settings or Settings(), engine or usual_engine()) as table:
        return tuple(
            tilt_on(table, heading, near=guess, grip=grip, rail=rail, pace=pace or Pace())
            for heading, guess in asked
        )


def tilt_on(
    table: Table,
    heading: float,
    *,
    grip: float,
    near: float | None,
    rail: bool,
    pace: Pace,
) -> TiltTrial:
    """One trial on a table that may serve many; see `tilt_trial`."""
    started = clock.process_time()
    set_grip(table, heading, grip, rail)
    run = Tilting(table, heading)
    try:
        if near is not None and not rail:
            near = min(near, math.atan(grip))
        _start(run, near, pace)
        run.keep()
        rest, began = run.kept[-1], len(run.samples)
        goes = _tilt(run, pace, pace.brisk)
        seen = run.samples.stretch(began)
        if goes == "tips":
            run.back(run.last_kept(_balanced(seen, pace.brisk) - pace.last))
            began = len(run.samples)
            goes = _tilt(run, pace, pace.slow)
            seen = run.samples.stretch(began)
        record = run.samples.record()
        trial = TiltTrial(
            heading, "stands", grip, rail, record, table.rig.settings, pace, 0.0, table.rig.engine
        )
        if goes != "rests":
            trial = _ended(run, trial, rest, seen)
        return replace(trial, seconds=clock.process_time() - started)
    finally:
        run.forget()


def _start(run: Tilting, near: float | None, pace: Pace) -> None:
    """To a start below the tip and below any lift, settled.

    From an expected tip, or from one found by a hurried tilting until it falls.
    """
    run.keep()
    if near is not None:
        run.move(max(near - pace.below, 0.0), pace.approach, keep=pace.below)
        run.keep()
    else:
        near = _hurry(run, pace)
    start = near - pace.below
    while True:
        run.back(run.last_kept(start))
        if run.fate(pace) == "rests" and not run.light(pace.light):
            return
        if run.theta <= run.kept[0].theta:
            return
        start = min(run.theta, *run.touched) - pace.below


def _hurry(run: Tilting, pace: Pace) -> float:
    """Tilt at the approach rate until it falls, keeping moments: about where it tips, too late."""
    per_step = pace.approach * run.table.rig.dt
    while run.theta < pace.limit:
        if not run.kept or run.theta - run.kept[-1].theta > pace.below:
            run.keep()
        looked = run.step(run.theta + per_step)
        if looked and run.airborne is not None and run.falls(pace.fallen, 1.0, pace.approach):
            return run.left[run.fell]
        if looked and _slid(run, pace):
            break
    return run.theta


def _slid(run: Tilting, pace: Pace) -> bool:
    """Whether the truck has slid away."""
    return run.slid > pace.slid * run.table.truck.front.tyre.radius


def _tilt(run: Tilting, pace: Pace, rate: float) -> Fate:
    """Tilt on at `rate` until the truck goes over or slides away; rests: not before the limit.

    Moments are kept on the way.
    """
    per_step = rate * run.table.rig.dt
    kept = -math.inf
    while run.theta < pace.limit:
        if run.theta - kept > pace.keep:
            kept = run.theta
            run.keep()
        if not run.step(run.theta + per_step):
            continue
        on = rate if rate > pace.slow else 0.0
        if run.airborne is not None and run.falls(pace.fallen, 1.5, on):
            return "tips"
        if _slid(run, pace):
            return "slides"
    return "rests"


def _balanced(stretch: Stretch, rate: float) -> float:
    """About where (rad) a truck on a table tilting at `rate` (rad/s) began to run away."""
    speed = np.gradient(uniform_filter1d(stretch.lean, 9), stretch.time)
    runs = np.flatnonzero(speed > RUNS * rate)
    return float(stretch.theta[runs[0] if len(runs) else -1])


def _approach(run: Tilting, tip: float, pair: tuple[int, int]) -> Approach:
    """What to fit: the angles at which it rested close below its tip, the pair on the table.

    Without those before the one wheel of the pair lifted, unless that was at the very end.
    """
    seen = [(theta, [loads[w] for w in pair]) for theta, loads in run.rests]
    seen = sorted(one for one in seen if one[0] > tip - SPAN and sum(one[1]) > 0.0)
    both = [theta for theta, loads in seen if min(loads) > 0.0]
    if both and both[-1] < tip - SPAN / 3:
        seen = [one for one in seen if one[0] > both[-1]]
    loads = [sum(loads) / run.table.weight for _, loads in seen]
    return Approach(frozen([theta for theta, _ in seen]), frozen(loads))


def _ended(run: Tilting, trial: TiltTrial, rest: Moment, slow: Stretch) -> TiltTrial:
    """The trial with where and how it went, found by holding."""
    pace, left, touched = trial.pace, list(run.left), list(run.touched)
    run.recorder = None
    found = bracket(run, rest, _balanced(slow, pace.slow) - pace.near, pace)
    event = (found.low + found.high) / 2
    half = math.hypot((found.high - found.low) / 2, pace.floor)
    interval = event - half, event + half
    if found.goes == "slides":
        return replace(trial, outcome="slides", slide=event, slide_ci=interval)
    if found.goes == "rests":
        return trial
    pair = PAIRS[found.fell]
    lift = np.full(4, math.nan)
    lift[list(pair)] = [min(touched[w], event) for w in pair]
    snap = max((at for at in run.jumped if event - NEAR < at), default=math.nan)
    loads = dict(run.rests)[found.low]
    return replace(
        trial,
        outcome="tips",
        tip=event,
        tip_ci=(min(interval[0], snap), interval[1]),
        event=event,
        event_bracket=(found.low, found.high),
        load_left=sum(loads[w] for w in pair) / run.table.weight,
        fit=fit_critical_angle(_approach(run, event, pair)),
        ramp=left[found.fell],
        lift=frozen(lift),
        first_lift=float(np.nanmin(lift)),
        snap=snap,
        over=PAIRS[OPPOSITE[found.fell]],
    )
