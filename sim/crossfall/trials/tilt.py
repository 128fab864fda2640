"""Tilt-table trials: settle on the level, tilt slowly, see when the last uphill tyre leaves.

The critical angle is the table angle at which the last uphill tyre leaves the table for good (the
end point of tilt-table standards for road vehicles, e.g. UN ECE R111). It is reported twice, both
at zero rate: the event, bracketed by holding the table still and seeing whether the truck stands,
and the fit of table angle to load, which takes two rates to take the rate out.
"""

from __future__ import annotations

import math
import time as clock
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Literal

import numpy as np
from scipy.ndimage import uniform_filter1d

from crossfall.trials.fits import LEAST, Approach, Fit, fit_critical_angle
from crossfall.trials.record import Record, Stretch
from crossfall.trials.slide import sliding_onset
from crossfall.trials.table import (
    OFF,
    OPPOSITE,
    PAIRS,
    SQUARE,
    Table,
    Tilting,
    set_grip,
    standing,
)
from crossfall.trials.world import Settings, engine_version
from crossfall.truck.model import Array, Truck, frozen

Outcome = Literal["tips", "slides", "stands"]
LEFT = 0.003  # of the weight; a truck that tips as its load runs out has less at the last hold


@dataclass(frozen=True)
class Pace:
    """How a trial moves the table, in the real truck's time; each value says why.

    approach: rad/s on the way to the start; the truck only has to stay on its wheels.
    brisk: rad/s of the first tilting to the tip, which finds about where it is.
    slow: rad/s of the second, that is recorded; fit and holding take out what rate remains.
    twice: whether there is a second; without it the first is recorded, and the fit keeps its lag.
    below: rad under the expected tip where the first tilting starts, settled.
    last: rad under the first tilting's tip from which the second goes over the ground again.
    keep: rad between moments kept on the way, to come back to and hold.
    settle: s held at the start, several times the slowest motion of the truck on its springs.
    light: a start is too late where a wheel bears less than this fraction of its level load.
    gently: s, shortest way from one held angle to the next, so that the truck is not jerked over.
    hold: s a held angle is watched; longer holds move the tip by less than 0.01 deg.
    bracket: rad, width to which holding narrows the tip.
    floor: rad, about 95 %, uncertainty that is always there: step, solver, contact margin, and
    where a trial started; trials that differ in these alone agree this well.
    diagonal_floor: rad, the same on diagonals, where it matters which tyre slips a little first;
    over eleven trucks, three diagonals and six ways of solving the standard deviation was 0.07 deg.
    limit: rad, where a trial that has not tipped ends.
    fallen: rad of lean added with a pair of wheels off the table that counts as a fall.
    slid: of a tyre radius, sliding that ends a trial.
    """

    approach: float = math.radians(60.0)
    brisk: float = math.radians(6.0)
    slow: float = math.radians(2.0)
    twice: bool = True
    below: float = math.radians(3.0)
    last: float = math.radians(2.0)
    keep: float = math.radians(0.7)
    settle: float = 0.4
    light: float = 0.03
    gently: float = 0.1
    hold: float = 0.8
    bracket: float = math.radians(0.04)
    floor: float = math.radians(0.03)
    diagonal_floor: float = math.radians(0.15)
    limit: float = math.radians(85.0)
    fallen: float = math.radians(4.0)
    slid: float = 0.5


QUICK = Pace(
    slow=math.radians(3.0),
    twice=False,
    keep=math.radians(1.0),
    settle=0.3,
    hold=0.55,
    bracket=math.radians(0.08),
    fallen=math.radians(2.0),
)
"""For thousands: half the time, and with QUICK_SETTINGS a quarter; within about 0.1 deg of the
careful one where friction hardly decides."""


@dataclass(frozen=True)
class TiltTrial:
    """One trial; angles in rad, real size and time.

    tip: critical angle at zero rate (the event), nan unless it tips. tip_ci: (low, high), about
    95 %: the bracket and the floor of Pace, and as far as the fit's interval where that lies
    outside. event: middle of event_bracket, between an angle at which it stands and one at which
    it does not. load_left: of the truck's weight, on the lifting pair at the last angle it stood.
    fit: the angle at which that load would be gone, with its interval; where there was more than
    LEFT of it, the truck lost its balance first, and the fit is none of the tip. ramp: what the
    moving table showed, late by its rate. lift: (4,) angle at which each uphill wheel left the
    table for good, as the moving table showed it but not above the tip, nan for the wheels it tips
    over; first_lift: the least. slide, slide_ci: angle at which it began to slide and its interval,
    nan unless sliding ended the trial. over: the wheels it tipped over. seconds: CPU time it took.
    """

    heading: float
    outcome: Outcome
    grip: float | None
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
    slide: float = math.nan
    slide_ci: tuple[float, float] = (math.nan, math.nan)
    over: tuple[int, int] | None = None


def tilt_trial(
    truck: Truck,
    heading: float,
    *,
    near: float | None = None,
    grip: float | None = None,
    rail: bool = False,
    settings: Settings | None = None,
    pace: Pace | None = None,
) -> TiltTrial:
    """One trial at `heading` (rad), brakes held.

    near: an expected tip angle (rad), only used to hurry to a start below it; a start that turns
    out too late is thrown away. grip: friction coefficient, None for enough never to slide.
    rail: the wheels it would tip over cannot slide. Raises InputError for a truck that makes no
    multibody.
    """
    expected = None if near is None else (near,)
    return tilt_trials(
        truck, (heading,), near=expected, grip=grip, rail=rail, settings=settings, pace=pace
    )[0]


def tilt_trials(
    truck: Truck,
    headings: Sequence[float],
    *,
    near: Sequence[float] | None = None,
    grip: float | None = None,
    rail: bool = False,
    both_sides: bool = False,
    settings: Settings | None = None,
    pace: Pace | None = None,
) -> tuple[TiltTrial, ...]:
    """A trial for each heading (rad), in order; the truck is loaded once.

    both_sides: each heading is followed by its mirror image. See `tilt_trial` for the rest.
    """
    expected: Sequence[float | None] = (
        [None] * len(headings) if near is None else [float(n) for n in near]
    )
    asked = list(zip(map(float, headings), expected, strict=True))
    if both_sides:
        asked = [pair for h, n in asked for pair in ((h, n), (-h % math.tau, n))]
    with standing(truck, settings or Settings()) as table:
        return tuple(
            tilt_on(table, heading, near=guess, grip=grip, rail=rail, pace=pace or Pace())
            for heading, guess in asked
        )


def tilt_on(
    table: Table,
    heading: float,
    *,
    near: float | None,
    grip: float | None,
    rail: bool,
    pace: Pace,
) -> TiltTrial:
    """One trial on a table that may serve many; see `tilt_trial`."""
    started = clock.process_time()
    set_grip(table, heading, grip, rail)
    run = Tilting(table, heading, turned=grip is not None)
    try:
        _start(run, near, pace)
        began, start = len(run.samples), run.theta
        outcome = _tilt(run, pace, pace.brisk)
        brisk = run.samples.stretch(began)
        again = began
        if outcome == "tips" and pace.twice:
            run.back(run.last_kept(run.left[run.airborne or 0] - pace.last))
            again = len(run.samples)
            outcome = _tilt(run, pace, pace.slow)
        record = run.samples.record()
        trial = TiltTrial(
            heading, outcome, grip, rail, record, table.rig.settings, pace, 0.0, engine_version()
        )
        if outcome == "slides":
            onset = sliding_onset(run, record, start)
            trial = replace(trial, slide=onset.value, slide_ci=onset.interval)
        if outcome == "tips":
            trial = _tip(run, trial, brisk, again)
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
        run.hold(pace.settle)
        sound = run.airborne is None and not run.light(pace.light) and not _slid(run, pace, 0.5)
        if sound or run.theta <= run.kept[0].theta:
            return
        start = min(run.theta, *run.touched) - pace.below


def _hurry(run: Tilting, pace: Pace) -> float:
    """Tilt at the approach rate until it falls, keeping moments: about where it tips, too late."""
    per_step = pace.approach / run.table.steps_per_second
    while run.theta < pace.limit:
        if not run.kept or run.theta - run.kept[-1].theta > pace.below:
            run.keep()
        looked = run.step(run.theta + per_step)
        if looked and run.airborne is not None and run.falls(pace.fallen, 1.0, pace.approach):
            return run.left[run.airborne]
        if looked and _slid(run, pace):
            break
    return run.theta


def _slid(run: Tilting, pace: Pace, part: float = 1.0) -> bool:
    """Whether the truck has slid away, or this part of the way (held wheels roll a little)."""
    return run.slid > part * pace.slid * run.table.truck.front.tyre.radius


def _tilt(run: Tilting, pace: Pace, rate: float) -> Outcome:
    """Tilt on at `rate` until the truck goes over, slides away or stands at the limit.

    Moments are kept on the way.
    """
    per_second = run.table.steps_per_second
    kept = -math.inf
    while run.theta < pace.limit:
        if run.theta - kept > pace.keep:
            kept = run.theta
            run.keep()
        if not run.step(run.theta + rate / per_second):
            continue
        on = rate if rate > pace.slow else 0.0
        if run.airborne is not None and run.falls(pace.fallen, 1.5, on):
            return "tips"
        if _slid(run, pace):
            return "slides"
    return "stands"


def _stands(run: Tilting, theta: float, pace: Pace) -> bool:
    """Whether the truck stands at `theta`, coming slowly from the last moment kept below it.

    If it does, that moment is kept: at rest, it is the best one to come from.
    """
    run.back(run.last_kept(theta))
    run.move(theta, pace.slow, least=pace.gently)
    for _ in range(run.table.steps(pace.hold)):
        if run.step(theta) and run.airborne is not None and run.falls(pace.fallen, 1.0):
            return False
    run.keep()
    return True


def _bracket(
    run: Tilting, guess: float, low: float, high: float, pace: Pace
) -> tuple[float, float]:
    """Narrow low (it stands) and high (it goes over) to pace.bracket, first looking near guess.

    A truck that comes off the moving table may go over early, and has to be found standing once:
    only what it does from there on counts.
    """
    width = reach = pace.bracket
    test = guess - width
    while test > low and not _stands(run, test, pace):
        reach *= 2
        test -= reach
    low, reach = max(test, low), width
    test = low + width
    while high - low > 1.001 * width:
        if _stands(run, test, pace):
            low = test
            reach *= 2
            test = min(low + reach, (low + high) / 2)
        else:
            high, reach = test, width
            test = (low + high) / 2
    return low, high


def _approach(
    stretch: Stretch, pair: tuple[int, int], weight: float, span: float, until: float = math.inf
) -> Approach:
    """The part of a stretch to fit: its last `span` (rad) before the load is nearly gone.

    Up to `until`, if that is less: past it, a moving table shows a truck that falls. Without what
    follows the first sign of running away (a lean that quickens), and without what comes before the
    other wheel of the pair lifted, unless that was at the very end.
    """
    load = stretch.loads[:, list(pair)].sum(axis=1) / weight
    before = np.flatnonzero((load > 0.0) & (stretch.theta <= until))
    end = int(before[-1]) + 1 if len(before) else 0
    if end < LEAST:
        return Approach(frozen([]), frozen([]), frozen([]))
    theta, load, lean = stretch.theta[:end], load[:end], stretch.lean[:end]
    first = theta[-1] - span
    for wheel in pair:
        lifted = theta[stretch.loads[:end, wheel] > 0.0].max(initial=0.0)
        if lifted < theta[-1] - span / 3:
            first = max(first, lifted)
    start = int(np.searchsorted(theta, first))
    speed = np.gradient(uniform_filter1d(lean, 9), stretch.time[:end])[start:]
    rate = np.gradient(theta, stretch.time[:end])[start:]
    quick = speed > 3 * np.median(speed) + np.median(rate) / 2
    calm = len(quick) - int(np.argmin(quick[::-1])) if not quick.all() else 0
    keep = np.zeros(end, dtype=bool)
    keep[start : start + calm] = load[start : start + calm] > load[start:].max() / 12
    keep[start:] &= rate > 0.0  # not while the table waited for a truck that jumped
    return Approach(theta[keep], load[keep], rate[keep[start:]])


def _tip(run: Tilting, trial: TiltTrial, brisk: Stretch, began: int) -> TiltTrial:
    off = run.airborne
    assert off is not None
    pair, ramp, weight = PAIRS[off], run.left[off], run.table.weight / run.table.rig.scale.force
    lift = np.full(4, math.nan)
    lift[list(pair)] = [run.touched[w] for w in pair]
    span = 0.75 * trial.pace.last
    slow = run.samples.stretch(began)

    def fitted(until: float) -> tuple[Fit | None, float]:
        stretches = (slow, brisk) if trial.pace.twice else (slow,)
        seen = [_approach(stretch, pair, weight, span, until) for stretch in stretches]
        last = float(seen[0].theta[-1]) if len(seen[0].theta) else ramp
        seen = [approach for approach in seen if len(approach.theta) >= LEAST]
        return (fit_critical_angle(*seen) if seen else None), last

    rough, calm = fitted(math.inf)
    high = run.theta
    low = run.last_kept(ramp - trial.pace.last).theta
    run.recorder = None
    guess = min(ramp if rough is None else rough.value, calm + trial.pace.bracket)
    low, high = _bracket(run, guess, low, high, trial.pace)
    fit, _ = fitted(high)
    run.back(run.last_kept(low))
    run.hold(2 * OFF)
    left = sum(run.loads[w] for w in pair) / run.table.weight
    event = (low + high) / 2
    square = abs(math.remainder(trial.heading, math.pi / 2)) < SQUARE
    floor = trial.pace.floor if square else trial.pace.diagonal_floor
    half = math.hypot((high - low) / 2, floor)
    interval = event - half, event + half
    if fit is not None and left < LEFT:  # where they disagree, reach to the fit's nearer end
        interval = min(interval[0], fit.high), max(interval[1], fit.low)
    return replace(
        trial,
        tip=event,
        tip_ci=interval,
        event=event,
        event_bracket=(low, high),
        load_left=left,
        fit=fit,
        ramp=ramp,
        lift=frozen(np.minimum(lift, event)),
        first_lift=float(min(np.nanmin(lift), event)),
        over=PAIRS[OPPOSITE[off]],
    )
