"""Tilt-table trials: settle on the level, tilt slowly, see when the last uphill tyre leaves.

The slow motion of the table is played by turning gravity. The critical angle is the table angle
at which the last uphill tyre leaves the table for good (the end point of tilt-table standards for
road vehicles, e.g. UN ECE R111). It is reported twice, both at zero rate: the event, bracketed by
holding the table still and seeing whether the truck stands, and the fit of table angle to load.
"""

from __future__ import annotations

import math
import time as clock
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from typing import Literal

import numpy as np

from crossfall.trials.fits import Fit, fit_critical_angle
from crossfall.trials.record import Record, Recorder
from crossfall.trials.rig import Rig, Snapshot, gravity_on_table
from crossfall.trials.world import Settings, engine_version
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Truck, frozen

Outcome = Literal["tips", "slides", "stands"]
PAIRS = ((0, 2), (1, 3), (0, 1), (2, 3))  # left, right, front, rear: what leaves the table
OPPOSITE = (1, 0, 3, 2)
CHECK = 4  # steps between looks at loads and poses


@dataclass(frozen=True)
class Pace:
    """How a trial moves the table, real time; each value says why.

    approach: rad/s on the way to the start; the truck only has to stay on its wheels.
    medium: rad/s while no wheel is about to lift, below the last stretch.
    slow: rad/s over the last stretch; what rate remains is taken out by fit and holding.
    below: rad under the expected tip where the last stretch starts.
    settle: s held at the start, several times the slowest motion of the truck on its springs.
    light: a wheel under this fraction of its level load is about to lift, or has.
    hold: s a held angle is watched; a truck 0.02 deg past its tip is well on its way by then.
    bracket: rad, width to which holding narrows the tip.
    floor: rad, uncertainty that is always there (step, solver iterations, contact margin).
    limit: rad, where a trial that has not tipped ends.
    fallen: rad of lean beyond the last stand that counts as a fall.
    slid: of a tyre radius, sliding that ends a trial.
    """

    approach: float = math.radians(40.0)
    medium: float = math.radians(5.0)
    slow: float = math.radians(2.0)
    below: float = math.radians(3.0)
    settle: float = 0.4
    light: float = 0.03
    hold: float = 0.8
    bracket: float = math.radians(0.04)
    floor: float = math.radians(0.01)
    limit: float = math.radians(85.0)
    fallen: float = math.radians(6.0)
    slid: float = 0.5


@dataclass(frozen=True)
class TiltTrial:
    """One trial; angles in rad, real size and time.

    tip: critical angle at zero rate (the event), nan unless it tips. tip_ci: (low, high), about
    95 %: bracket, disagreement of event and fit, and the engine's own floor. event: middle of
    the bracket. fit: the fitted critical angle with its interval. ramp: what the moving table
    showed, late by its rate. lift: (4,) angle at which each uphill wheel left the table for good,
    nan for the wheels it tips over; first_lift: the least. slide: angle when sliding ended the
    trial, else nan. over: the pair of wheels it tipped over. seconds: CPU time it took.
    """

    heading: float
    outcome: Outcome
    tip: float
    tip_ci: tuple[float, float]
    event: float
    event_bracket: tuple[float, float]
    fit: Fit | None
    ramp: float
    first_lift: float
    lift: Array
    slide: float
    over: tuple[int, int] | None
    grip: float | None
    rail: bool
    record: Record = field(repr=False)
    settings: Settings = field(repr=False)
    pace: Pace = field(repr=False)
    seconds: float
    engine: str


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
    rail: the wheels it would tip over cannot slide, as against a rail of no height. Raises
    InputError for a truck that makes no multibody.
    """
    return tilt_trials(
        truck,
        (heading,),
        near=None if near is None else (near,),
        grip=grip,
        rail=rail,
        settings=settings,
        pace=pace,
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
    settings, pace = settings or Settings(), pace or Pace()
    expected: Sequence[float | None] = near or [None] * len(headings)
    asked = list(zip(map(float, headings), expected, strict=True))
    if both_sides:
        asked = [pair for h, n in asked for pair in ((h, n), (-h % math.tau, n))]
    out = []
    with standing(truck, settings) as table:
        for heading, guess in asked:
            out.append(_trial(table, heading, guess, grip, rail, pace))
    return tuple(out)


@dataclass
class Table:
    """A truck on its rig, settled on the level, and that moment to come back to."""

    truck: Truck
    rig: Rig
    level: Snapshot
    weight: float  # world N
    level_loads: list[float]  # world N


@contextmanager
def standing(truck: Truck, settings: Settings) -> Iterator[Table]:
    """The truck settled on a plane, wheels held."""
    with Rig(truck, settings) as rig:
        rig.world.plane(1.0)
        for _ in range(_steps(rig, 0.1)):
            rig.step((0.0, 0.0, -GRAVITY))
        weight = whole(truck).mass * GRAVITY * rig.scale.force
        yield Table(truck, rig, rig.save(), weight, rig.world.loads())


def _steps(rig: Rig, seconds: float) -> int:
    """World steps in real seconds."""
    return max(1, round(seconds * rig.scale.time / rig.dt))


class _Pass:
    """One tilting of the table, from the level or from a snapshot, while it is going on."""

    def __init__(self, table: Table, heading: float, pace: Pace) -> None:
        self.table, self.heading, self.pace = table, heading, pace
        self.rig = table.rig
        self.theta = 0.0
        self.time = 0.0
        self.recorder: Recorder | None = None
        self.loads = table.level_loads
        self.lean = 0.0
        self.off = [0] * len(PAIRS)  # looks since each pair last touched
        self.left = [0.0] * len(PAIRS)  # angle when each pair last touched
        self.touched = [0.0] * 4  # angle when each wheel last touched
        self.tick = 0
        self.snapshots: list[tuple[Snapshot, float]] = []

    def keep(self) -> None:
        """Keep this moment, to come back to and hold."""
        self.snapshots.append((self.rig.save(), self.theta))

    @property
    def slid(self) -> float:
        """m, least distance any loaded wheel has come since the start of the recording."""
        if self.recorder is None:
            return 0.0
        moved = self.recorder.moved()
        return min((m for m, load in zip(moved, self.loads, strict=True) if load > 0), default=0.0)

    def step(self, theta: float) -> bool:
        """One step at table angle theta; True when it was also looked at."""
        self.theta = theta
        self.rig.step(gravity_on_table(self.heading, theta))
        self.time += self.rig.dt
        self.tick += 1
        if self.tick % CHECK:
            return False
        self._look()
        return True

    def _look(self) -> None:
        world = self.rig.world
        self.loads = world.loads()
        self.lean = math.acos(max(-1.0, min(1.0, world.uprightness())))
        for w in range(4):
            if self.loads[w] > 0.0:
                self.touched[w] = self.theta
        for i, (a, b) in enumerate(PAIRS):
            if self.loads[a] > 0.0 or self.loads[b] > 0.0:
                self.off[i], self.left[i] = 0, self.theta
            else:
                self.off[i] += 1
        if self.recorder is not None:
            self.recorder.sample(self.time, self.theta, self.loads)

    def move(self, target: float, rate: float) -> None:
        """Tilt to target, starting and stopping gently, at `rate` (rad/s) on average."""
        start = self.theta
        n = _steps(self.rig, abs(target - start) / rate)
        for i in range(1, n + 1):
            self.step(start + (target - start) * (1 - math.cos(math.pi * i / n)) / 2)

    def hold(self, seconds: float) -> None:
        for _ in range(_steps(self.rig, seconds)):
            self.step(self.theta)

    @property
    def airborne(self) -> int | None:
        """The pair off the table for 0.02 s or longer, if any; the one longest off."""
        most = max(range(len(PAIRS)), key=lambda i: self.off[i])
        return most if self.off[most] * CHECK >= _steps(self.rig, 0.02) else None

    def falls(self, longest: float) -> bool:
        """Hold the table while a pair is off it: True once the truck has gone over.

        A truck that comes back onto its wheels (after its springs let it jump, say) has not tipped.
        """
        start = self.lean
        steps = _steps(self.rig, longest)
        for _ in range(steps):
            if self.step(self.theta):
                if self.lean - start > self.pace.fallen:
                    return True
                if self.airborne is None:
                    return False
        return True


def _trial(
    table: Table, heading: float, near: float | None, grip: float | None, rail: bool, pace: Pace
) -> TiltTrial:
    started = clock.process_time()
    _set_grip(table, heading, grip, rail)
    start = None
    if near is None:
        near, start = _scout(table, heading, pace)
    while True:
        stretch = max(0.0, near - pace.below)
        run = _approach(table, heading, stretch if start is None else min(start, stretch), pace)
        try:
            outcome = _slow(run, stretch, pace)
            if outcome != "tips" or run.theta > stretch + pace.below / 3 or stretch == 0.0:
                return _report(run, outcome, grip, rail, started)
            near, start = run.theta, None  # it went over before the last stretch: start lower
        finally:
            for snapshot, _ in run.snapshots:
                table.rig.forget(snapshot)


def _set_grip(table: Table, heading: float, grip: float | None, rail: bool) -> None:
    stick = table.rig.settings.stick
    held = downhill_pair(table.truck, heading) if rail else ()
    for wheel in range(4):
        friction = stick if grip is None or wheel in held else grip
        table.rig.world.grip(wheel, friction)


def downhill_pair(truck: Truck, heading: float) -> tuple[int, int]:
    """The two wheels a rigid truck would tip over at `heading` (rad): least a / (h n.d)."""
    body = whole(truck)
    downhill = np.array([-math.cos(heading), math.sin(heading)])
    sides = {}
    for pair, outward in zip(PAIRS, ((0, 1), (0, -1), (1, 0), (-1, 0)), strict=True):
        a, b = (
            np.array([truck.axles[w // 2].x, (0.5 - w % 2) * truck.axles[w // 2].track])
            for w in pair
        )
        along = (b - a) / np.linalg.norm(b - a)
        normal = np.array([along[1], -along[0]])
        normal = normal if normal @ outward > 0 else -normal
        lever = normal @ downhill
        if lever > 1e-9:
            sides[pair] = float((a - body.cg[:2]) @ normal / lever)
    return min(sides, key=lambda pair: sides[pair])


def _scout(table: Table, heading: float, pace: Pace) -> tuple[float, float]:
    """A hurried tilt from the level: about where it tips, and where to start below any lift."""
    run = _Pass(table, heading, pace)
    table.rig.restore(table.level)
    rate = pace.approach / _real(table.rig)
    while run.theta < pace.limit:
        if run.step(run.theta + rate) and run.airborne is not None and run.falls(0.3):
            break
    tip = max(run.left[run.airborne] if run.airborne is not None else run.theta, 0.0)
    lifts = [t for t in run.touched if t < tip] if table.rig.tyres else []
    late = pace.below / 2  # a fast table shows everything about this much too late
    return tip - late, min(lifts, default=tip) - late - pace.below / 2


def _real(rig: Rig) -> float:
    """Steps per real second."""
    return rig.scale.time / rig.dt


def _approach(table: Table, heading: float, start: float, pace: Pace) -> _Pass:
    """At `start` and settled, or lower where a wheel turned out to be light already."""
    lower = pace.below
    while True:
        table.rig.restore(table.level)
        run = _Pass(table, heading, pace)
        run.recorder = Recorder(table.rig, table.truck)
        if start <= 0.0:
            return run
        run.move(start, pace.approach)
        run.hold(pace.settle)
        if not _late(run):
            return run
        start, lower = start - lower, 2 * lower


def _late(run: _Pass) -> bool:
    """Whether a wheel, or where tyres are rigid a pair of them, is light already."""
    level, light = run.table.level_loads, run.pace.light
    groups: Sequence[tuple[int, ...]] = PAIRS
    if run.rig.tyres:
        groups = (*PAIRS, (0,), (1,), (2,), (3,))
    return any(sum(run.loads[w] for w in g) < light * sum(level[w] for w in g) for g in groups)


def _slow(run: _Pass, stretch: float, pace: Pace) -> Outcome:
    """Tilt on from where the run stands until it goes over, slides away or reaches the limit."""
    per_step = 1.0 / _real(run.rig)
    level, springy = run.table.level_loads, bool(run.rig.tyres)
    slid = pace.slid * run.table.truck.front.tyre.radius
    rate, kept = pace.medium, -math.inf
    while run.theta < pace.limit:
        if run.theta >= stretch and run.theta - kept > pace.below / 6:
            kept = run.theta
            run.keep()
        if not run.step(run.theta + rate * per_step):
            continue
        lifting = springy and any(0.0 < run.loads[w] < 0.15 * level[w] for w in range(4))
        rate = pace.slow if lifting or run.theta >= stretch else pace.medium
        if run.airborne is not None and run.falls(1.5):
            return "tips"
        if run.slid > slid:
            return "slides"
    return "stands"


def _stands(run: _Pass, theta: float) -> bool:
    """Whether the truck stands at `theta`, coming slowly from the last moment kept below it."""
    snapshot, at = [s for s in run.snapshots if s[1] <= theta][-1]
    run.rig.restore(snapshot)
    trial = _Pass(run.table, run.heading, run.pace)
    trial.theta = at
    trial.move(theta, run.pace.slow)
    for _ in range(_steps(run.rig, run.pace.hold)):
        if trial.step(theta) and trial.airborne is not None and trial.falls(1.0):
            return False
    return True


def _bracket(run: _Pass, guess: float) -> tuple[float, float]:
    """Angles at which it stands and does not, no wider apart than pace.bracket."""
    width = run.pace.bracket
    lowest, low, high = run.snapshots[0][1], -math.inf, run.theta
    test, reach = min(guess, high) - width / 2, width
    while high - max(low, lowest) > width * 1.0001:
        if _stands(run, max(test, lowest)):
            low = max(test, lowest)
            test = min(low + reach, (low + high) / 2 if high < run.theta else low + reach)
            test = test if test < high else (low + high) / 2
        else:
            high = max(test, lowest)
            test = high - reach if low == -math.inf else (low + high) / 2
        reach *= 2 if low == -math.inf or high == run.theta else 1
    return max(low, lowest), high


def _report(
    run: _Pass, outcome: Outcome, grip: float | None, rail: bool, started: float
) -> TiltTrial:
    assert run.recorder is not None
    record = run.recorder.record()
    nan = math.nan
    lift = np.full(4, nan)
    trial = TiltTrial(
        run.heading,
        outcome,
        nan,
        (nan, nan),
        nan,
        (nan, nan),
        None,
        nan,
        nan,
        frozen(lift),
        run.theta if outcome == "slides" else nan,
        None,
        grip,
        rail,
        record,
        run.rig.settings,
        run.pace,
        0.0,
        engine_version(),
    )
    if outcome == "tips":
        trial = _tip(run, trial)
    return replace(trial, seconds=clock.process_time() - started)


def _tip(run: _Pass, trial: TiltTrial) -> TiltTrial:
    off = run.airborne
    assert off is not None
    pair, ramp, record = PAIRS[off], run.left[off], trial.record
    lift = np.full(4, math.nan)
    lift[list(pair)] = [run.touched[w] for w in pair]
    stretch = (record.theta >= run.snapshots[0][1]) & (record.theta <= ramp)
    weight = run.table.weight / run.rig.scale.force
    fit = fit_critical_angle(
        record.time[stretch],
        record.theta[stretch],
        record.loads[stretch][:, list(pair)].sum(axis=1) / weight,
    )
    low, high = _bracket(run, ramp if fit is None else fit.value)
    event = (low + high) / 2
    apart = 0.0 if fit is None else abs(fit.value - event)
    half = math.hypot((high - low) / 2, apart, run.pace.floor)
    return replace(
        trial,
        tip=event,
        tip_ci=(event - half, event + half),
        event=event,
        event_bracket=(low, high),
        fit=fit,
        ramp=ramp,
        lift=frozen(lift),
        first_lift=float(np.nanmin(lift)),
        over=PAIRS[OPPOSITE[off]],
    )
