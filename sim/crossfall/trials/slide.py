"""Slide trials: at which table angle a truck with its wheels held begins to slide.

A soft truck creeps some millimetres before it slides, while its tyres settle among themselves, so
the onset is found as a tip is: by holding the table still and seeing whether the truck keeps going.
"""

from __future__ import annotations

import math
import time as clock
from dataclasses import dataclass, field
from typing import Literal

from crossfall.trials.fits import Fit, fit_onset
from crossfall.trials.record import Record
from crossfall.trials.table import Table, Tilting, set_grip, standing
from crossfall.trials.world import Settings, engine_version
from crossfall.truck.model import Truck

APPROACH = math.radians(30.0)  # rad/s, on the way to the start
RATE = math.radians(2.0)  # rad/s over the last stretch
BELOW = math.radians(3.0)  # rad under atan(mu) where the last stretch starts
GONE = 0.5  # of a tyre radius slid: enough to fit, too little to meet anything
KEEP = math.radians(0.7)  # rad between moments kept on the way, to come back to and hold
HOLD = 0.5  # s, twice: what creeps has come to rest by then, what slides goes further the second
GOING = 0.01  # of a tyre radius in the second: 0.02 deg past the onset goes twice as far
BRACKET = math.radians(0.04)  # rad, width to which holding narrows the onset
FLOOR = math.radians(0.05)  # rad, uncertainty that is always there: solver, and what GOING misses


@dataclass(frozen=True)
class SlideTrial:
    """slide: rad, the table angle at which sliding begins, nan unless it slides: between one at
    which the held truck comes to rest and one at which it slides on; slide_ci about 95 %, as far
    as the fit where that lies outside. fit: the onset fitted to how far it slid on the moving
    table. seconds: CPU time."""

    heading: float
    grip: float
    outcome: Literal["slides", "tips", "stands"]
    slide: float
    slide_ci: tuple[float, float]
    fit: Fit | None
    record: Record = field(repr=False)
    settings: Settings = field(repr=False)
    seconds: float
    engine: str


def slide_trial(
    truck: Truck, heading: float, grip: float, *, settings: Settings | None = None
) -> SlideTrial:
    """Tilt with the wheels held and one friction coefficient everywhere, until it slides.

    heading: rad. The start, 3 deg under atan(grip), is thrown away for a lower one if it slides
    or tips there already. Raises InputError for a truck that makes no multibody and ValueError
    for a grip that is not above zero.
    """
    if not grip > 0.0:
        raise ValueError(f"grip must be above zero, not {grip}")
    started = clock.process_time()
    with standing(truck, settings or Settings()) as table:
        set_grip(table, heading, grip, rail=False)
        start = math.atan(grip) - BELOW
        while True:
            run = Tilting(table, heading, turned=True)
            if start > 0.0:
                run.move(start, APPROACH)
                run.hold(0.3)
            if start <= 0.0 or (run.airborne is None and run.slid < _gone(table) / 2):
                break
            start -= 2 * BELOW
        try:
            outcome = _tilt(run)
            record = run.samples.record()
            found = sliding_onset(run, record, start) if outcome == "slides" else None
        finally:
            run.forget()
        return SlideTrial(
            heading,
            grip,
            outcome,
            math.nan if found is None else found.value,
            (math.nan, math.nan) if found is None else found.interval,
            None if found is None else found.fit,
            record,
            table.rig.settings,
            clock.process_time() - started,
            engine_version(),
        )


@dataclass(frozen=True)
class Onset:
    """Where sliding begins, rad, with its interval, and the fit that goes with it."""

    value: float
    interval: tuple[float, float]
    fit: Fit | None


def sliding_onset(run: Tilting, record: Record, start: float) -> Onset:
    """Where a truck that slid, and stood at `start` (rad), began to: by holding, and by a fit.

    Comes back to the moments kept on the way; what is recorded ends with them.
    """
    far = run.slid
    after = record.theta > start
    slip = record.slip.mean(axis=1)
    near = after & (slip < slip[after].min() + far)
    fit = fit_onset(record.theta[near], slip[near])
    high = run.theta
    low = run.kept[0].theta
    while high - low > BRACKET:
        # Sliding starts at the last of the way, so the first looks are near its end.
        test = max((low + high) / 2, high - 0.5 * KEEP) if high - low > KEEP else (low + high) / 2
        if _slides_on(run, test):
            high = test
        else:
            low = test
    value, half = (low + high) / 2, math.hypot((high - low) / 2, FLOOR)
    interval = value - half, value + half
    if fit is not None:
        interval = min(interval[0], fit.high), max(interval[1], fit.low)
    return Onset(value, interval, fit)


def _slides_on(run: Tilting, theta: float) -> bool:
    """Whether a truck held at `theta`, coming slowly from the last moment kept below, slides on."""
    run.back(run.last_kept(theta))
    run.move(theta, RATE)
    run.hold(HOLD)
    come = run.slid
    run.hold(HOLD)
    return run.slid - come > GOING * run.table.truck.front.tyre.radius


def _gone(table: Table) -> float:
    return GONE * table.truck.front.tyre.radius


def _tilt(run: Tilting) -> Literal["slides", "tips", "stands"]:
    per_step = RATE / run.table.steps_per_second
    gone, kept = _gone(run.table), -math.inf
    while run.theta < math.radians(85.0):
        if run.theta - kept > KEEP:
            kept = run.theta
            run.keep()
        if not run.step(run.theta + per_step):
            continue
        if run.slid > gone:
            return "slides"
        if run.airborne is not None and run.falls(math.radians(4.0), 1.5):
            return "tips"
    return "stands"
