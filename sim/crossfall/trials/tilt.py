"""Tilt-table trials: settle on the level, tilt slowly, see when the last uphill tyre leaves.

The critical angle is the table angle at which the last uphill tyre leaves the table for good (the
end point of tilt-table standards for road vehicles, e.g. UN ECE R111). It is reported twice, both
at zero rate: the event, bracketed by holding the table still and seeing whether the truck stands,
and the fit of table angle to load at the angles at which it stood.

Source: the end point as said; the way there, from a start below an expected tip, is made here, and
trials from elsewhere and at other rates give the same within their intervals (a test).
"""

from __future__ import annotations

import math
import time as clock
from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from crossfall.engines.held import EngineName, usual_engine
from crossfall.engines.settings import TrialSettings
from crossfall.trials.holding import search, settling
from crossfall.trials.log import Fate, TiltingSamples
from crossfall.trials.outcome import TiltTrial, concluded
from crossfall.trials.pace import Pace
from crossfall.trials.table import LevelTable, Tilting, level_table, set_grip
from crossfall.truck.model import Array, Truck

RUNS = 1.2  # times as fast as its table a truck leans on that is losing its balance
LOOSE = 0.005  # m/s, faster than any truck creeps that is still held


def tilt_trial(
    truck: Truck,
    heading: float,
    *,
    grip: float,
    near: float | None = None,
    rail: bool = False,
    settings: TrialSettings | None = None,
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
    settings: TrialSettings | None = None,
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
    with level_table(truck, settings or TrialSettings(), engine or usual_engine()) as table:
        return tuple(
            tilt_on(table, heading, near=guess, grip=grip, rail=rail, pace=pace or Pace())
            for heading, guess in asked
        )


def tilt_on(
    table: LevelTable,
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
        rest, began = run.kept[-1], len(run.log)
        goes = run.end(_tilt(run, pace, near or 0.0))
        way = run.log.way()
        if goes != "rests":
            way_there = run.log.tilting(began)
            at = _held(way_there) if goes == "slides" else _balanced(way_there, pace.slow)
            search(run, rest, at - pace.near, pace)
        trial = TiltTrial(
            heading,
            "stands",
            grip,
            rail,
            run.log.log(way, table.weight),
            table.rig.settings,
            pace,
            table.rig.engine,
            table.truck.name,
            table.digest,
        )
        return replace(concluded(trial), seconds=clock.process_time() - started)
    finally:
        run.forget()


def _start(run: Tilting, near: float | None, pace: Pace) -> None:
    """To a start below the tip and below any lift, settled.

    From an expected tip, or from one found by a hurried tilting until it falls.
    """
    run.keep()
    if near is not None:
        run.approach(max(near - pace.below, 0.0), pace.approach, pace.below)
        run.keep()
    else:
        near = _hurry(run, pace)
    start = near - pace.below
    run.end("")
    while True:
        run.back(run.last_kept(start), forget=True)
        run.begin("approach")
        if run.fate(settling(pace)) == "rests" and not run.light(pace.light):
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


def _tilt(run: Tilting, pace: Pace, near: float) -> Fate:
    """Tilt on until the truck goes over or slides away, slowly from a little below where that is
    expected (rad); rests: not before the limit. Moments are kept on the way.
    """
    run.begin("tilt")
    dt, kept = run.table.rig.dt, -math.inf
    while run.theta < pace.limit:
        per_step = dt * (pace.slow if run.theta > near - pace.last else pace.brisk)
        if run.theta - kept > pace.keep:
            kept = run.theta
            run.keep()
        if not run.step(run.theta + per_step):
            continue
        if run.airborne is not None and run.falls(pace.fallen, 1.5):
            return "tips"
        if _slid(run, pace):
            return "slides"
    return "rests"


def _balanced(way: TiltingSamples, rate: float) -> float:
    """About where (rad) a truck on a table tilting at `rate` (rad/s) began to run away."""
    if len(way.time) < 2:  # gone at once
        return float(way.theta[-1]) if len(way.theta) else 0.0
    speed = np.gradient(_smooth(way.lean), way.time)
    runs = np.flatnonzero(speed > RUNS * rate)
    return float(way.theta[runs[0] if len(runs) else -1])


def _smooth(values: Array) -> Array:
    """Means of five in a row; the ends repeat."""
    return np.convolve(np.pad(values, 2, mode="edge"), np.full(5, 0.2), mode="valid")


def _held(way: TiltingSamples) -> float:
    """About where (rad) a truck that slid away was last held by one of its tyres."""
    if len(way.time) < 2:
        return float(way.theta[-1]) if len(way.theta) else 0.0
    holds = np.flatnonzero(np.gradient(way.slid, way.time) < LOOSE)
    return float(way.theta[holds[-1] if len(holds) else 0])
