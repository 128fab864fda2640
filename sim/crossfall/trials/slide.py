"""Slide trials: at which table angle a truck with its wheels held begins to slide."""

from __future__ import annotations

import math
import time as clock
from dataclasses import dataclass, field
from typing import Literal

import numpy as np

from crossfall.trials.fits import Fit, fit_onset
from crossfall.trials.record import Record
from crossfall.trials.table import Table, Tilting, set_grip, standing
from crossfall.trials.world import Settings, engine_version
from crossfall.truck.model import Truck

APPROACH = math.radians(30.0)  # rad/s, on the way to the start
RATE = math.radians(2.0)  # rad/s over the last stretch
BELOW = math.radians(3.0)  # rad under atan(mu) where the last stretch starts
GONE = 0.25  # of a tyre radius slid: enough to fit, too little to meet anything
SHARE = 0.02  # of that distance, where the fit begins: above any creep


@dataclass(frozen=True)
class SlideTrial:
    """slide: rad, the table angle at which sliding begins, nan unless it slides; slide_ci its
    95 % interval; fit: the fitted onset. seconds: CPU time."""

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
            run = Tilting(table, heading)
            if start > 0.0:
                run.move(start, APPROACH)
                run.hold(0.3)
            if start <= 0.0 or (run.airborne is None and run.slid < _gone(table) / 2):
                break
            start -= 2 * BELOW
        outcome = _tilt(run)
        record = run.samples.record()
        fit = sliding_onset(record, start, truck) if outcome == "slides" else None
        slide, low, high = (math.nan,) * 3 if fit is None else (fit.value, fit.low, fit.high)
        return SlideTrial(
            heading,
            grip,
            outcome,
            slide,
            (low, high),
            fit,
            record,
            table.rig.settings,
            clock.process_time() - started,
            engine_version(),
        )


def sliding_onset(record: Record, start: float, truck: Truck) -> Fit | None:
    """Angle (rad) at which a truck began to slide that stood still at `start` (rad)."""
    slip = record.slip.mean(axis=1)
    settled = int(np.searchsorted(record.theta, start + 1e-9)) - 1
    slip = slip - slip[max(settled, 0)]
    far = GONE * truck.front.tyre.radius
    keep = (slip > SHARE * far) & (slip < 2 * far) & (record.theta > start)
    return fit_onset(record.theta[keep], slip[keep])


def _gone(table: Table) -> float:
    return GONE * table.truck.front.tyre.radius


def _tilt(run: Tilting) -> Literal["slides", "tips", "stands"]:
    per_step = RATE / run.table.steps_per_second
    gone = _gone(run.table)
    while run.theta < math.radians(85.0):
        if not run.step(run.theta + per_step):
            continue
        if run.slid > gone:
            return "slides"
        if run.airborne is not None and run.falls(math.radians(4.0), 1.5):
            return "tips"
    return "stands"
