"""Tip angles in the other engine, by holding the table still.

The truck starts at rest on the level and is never jerked: the table moves slowly, with gentle
starts and ends, and a held angle counts when the truck has come to rest there. A start above the
first lift is thrown away and taken lower. Angles in rad.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

import numpy as np
from mujoco_truck import Bench, Hold, Method

from crossfall.trials.table import PAIRS, downhill_pair
from crossfall.truck.model import Array, Truck

Outcome = Literal["tips", "slides", "stands"]
LOOK = 0.004  # s between looks
FALLEN = math.radians(40.0)  # of lean, more than any truck stands with
LIMIT = math.radians(85.0)


@dataclass(frozen=True)
class Pace:
    """How the table moves; each value says why.

    hurried: rad/s of a first tilting that finds about where it goes.
    steady: rad/s from the start to `near` (rad) below that; slow: rad/s from there on.
    fall: s that a fall takes, about. below: rad from the first light wheel down to the start.
    keep: rad between moments kept, to come back to.
    gently: s, shortest way from one held angle to the next.
    watch: s a truck has to be at rest; still: m and rad of chassis movement in it that is none.
    longest: s a held angle is watched if it does not come to rest.
    width: rad, to which holding brackets the tip.
    jump: s in which a snap happens.
    """

    hurried: float = math.radians(6.0)
    steady: float = math.radians(1.5)
    slow: float = math.radians(0.3)
    below: float = math.radians(3.0)
    near: float = math.radians(2.5)
    fall: float = 0.8
    keep: float = math.radians(0.25)
    gently: float = 0.4
    watch: float = 0.3
    still: float = 5e-6
    longest: float = 8.0
    width: float = math.radians(0.015)
    jump: float = 0.12


@dataclass(frozen=True)
class Snap:
    """A jump of the chassis on its springs after which it stands: m, rad."""

    theta: float
    shift: float
    turn: float

    @property
    def counts(self) -> bool:
        return self.shift > 0.002 or self.turn > math.radians(0.5)


@dataclass(frozen=True)
class Tip:
    """outcome: what ends it. angle: middle of bracket, where it stands and where it does not.

    first_lift: where a wheel is first off the table at rest, at most the angle; lifts: that wheel.
    snap: the largest jump within a degree below the angle. load_left: of the weight, on the pair
    that leaves, at the last angle it stood. yaw: rad it has turned by then. slid: (4,) m.
    """

    outcome: Outcome
    angle: float
    bracket: tuple[float, float]
    first_lift: float
    lifts: int | None
    snap: Snap
    load_left: float
    yaw: float
    slid: tuple[float, ...]
    light: int  # most wheels off the table at rest


METHOD, PACE = Method(), Pace()
Moment = tuple[Array, float]
Row = tuple[float, Array, Array]  # theta, pose, loads


class Search:
    """One truck on one table, and the moments kept on the way."""

    def __init__(self, bench: Bench, pace: Pace, step: float) -> None:
        self.bench, self.pace = bench, pace
        self.every = max(1, round(LOOK / step))
        self.look = self.every * step
        self.far = 0.5 * float(bench.radii.min())
        self.kept: list[Moment] = [bench.moment()]
        self.rest()
        self.level = bench.loads()
        self.kept = [bench.moment()]

    def go(self, target: float, seconds: float, *, gentle: bool = True) -> tuple[str, list[Row]]:
        """Tilt to target; "", "tips" or "slides", and what was seen."""
        start, rows = self.bench.theta, []
        n = max(1, round(seconds / self.look))
        for i in range(1, n + 1):
            part = (1 - math.cos(math.pi * i / n)) / 2 if gentle else i / n
            self.bench.step(start + (target - start) * part, self.every)
            rows.append((self.bench.theta, self.bench.pose(), self.bench.loads()))
            if self.bench.theta - self.kept[-1][1] >= self.pace.keep:
                self.kept.append(self.bench.moment())
            if i % 25 == 0 and (gone := self.gone()):
                return gone, rows
        return "", rows

    def gone(self) -> str:
        if self.bench.lean() > FALLEN:
            return "tips"
        loaded = self.bench.loads() > 0.0
        slid = self.bench.slid()[loaded]
        return "slides" if len(slid) and slid.min() > self.far else ""

    def rest(self) -> tuple[str, list[Row]]:
        """Hold the table until the truck is at rest, or gone, or for pace.longest."""
        theta, rows = self.bench.theta, []
        for _ in range(max(1, round(self.pace.longest / self.pace.watch))):
            gone, seen = self.go(theta, self.pace.watch)
            rows += seen
            poses = np.array([r[1] for r in seen])
            if gone or np.ptp(poses, axis=0).max() < self.pace.still:
                return gone, rows
        return "", rows

    def hold(self, target: float) -> tuple[str, list[Row]]:
        """Go to target and stand there; as `go`."""
        seconds = max(self.pace.gently, abs(target - self.bench.theta) / self.pace.slow)
        gone, rows = self.go(target, seconds)
        if gone:
            return gone, rows
        gone, more = self.rest()
        return gone, rows + more

    def back(self, theta: float) -> None:
        """To the last moment kept at or below theta; later ones are forgotten."""
        self.kept = [m for m in self.kept if m[1] <= theta + 1e-9] or self.kept[:1]
        self.bench.back(self.kept[-1])


def tip(
    truck: Truck,
    heading: float,
    friction: float = 5.0,
    hold: Hold = "brakes",
    method: Method = METHOD,
    pace: Pace = PACE,
) -> Tip:
    """How the truck goes over at `heading` (rad), wheels held."""
    sticking = downhill_pair(truck, heading) if hold == "rail" else ()
    bench = Bench(truck, heading, friction, sticking, method)
    search = Search(bench, pace, method.step)
    gone, rows = search.go(LIMIT, LIMIT / pace.hurried, gentle=False)
    if not gone:
        raise ValueError("still stands where the table ends")
    end = rows[-1][0] - pace.fall * pace.hurried
    start = min(_light(rows, search.level), end - pace.near) - pace.below
    while True:
        found = _search(search, start, end)
        if found is not None:
            return found
        if start <= 0.0:
            raise ValueError("goes over on the level")
        start -= pace.below


def _light(rows: list[Row], level: Array) -> float:
    """Where a wheel first bears less than a tenth of its level load, or the end."""
    below = (np.array([r[2] for r in rows]) < 0.1 * level).any(axis=1)
    return rows[int(np.argmax(below))][0] if below.any() else rows[-1][0]


def _search(search: Search, start: float, end: float) -> Tip | None:
    """From `start` upwards; None if that was too late."""
    pace, bench = search.pace, search.bench
    search.back(max(start, 0.0))
    gone, rows = search.rest()
    if gone or _light(rows, search.level) < rows[-1][0] or (rows[-1][2] < 0.1 * search.level).any():
        return None
    if (reach := end - pace.near - bench.theta) > 0.0:
        gone, rows = search.go(bench.theta + reach, reach / pace.steady)
    if not gone:
        span = LIMIT - bench.theta
        gone, more = search.go(LIMIT, span / pace.slow, gentle=False)
        rows += more
    ramp, outcome, high = rows, gone, rows[-1][0]
    bottom = search.kept[0][1] if start <= 0 else max(start, 0.0)
    step, look = pace.keep, high
    while True:  # down to where it stands
        look -= step
        if look < bottom:
            return None
        search.back(look)
        gone, seen = search.hold(look)
        if not gone:
            break
        outcome, high, step = gone, look, step * 1.5
    low, held, rest = look, seen, bench.moment()
    step = pace.keep / 2
    while high - low > pace.width:
        bench.back(rest)
        look = min(low + step, (low + high) / 2)
        gone, seen = search.hold(look)
        if gone:
            outcome, high = gone, look
        else:
            low, rest = look, bench.moment()
            held += seen
    bench.back(rest)
    return _answer(search, outcome, (low, high), ramp, held)


def _answer(
    search: Search, outcome: str, bracket: tuple[float, float], ramp: list[Row], held: list[Row]
) -> Tip:
    low, high = bracket
    bench = search.bench
    loads = bench.loads()
    angle = (low + high) / 2
    pair = min(PAIRS, key=lambda p: loads[list(p)].sum())
    yaw, slid = bench.pose()[5], tuple(bench.slid().tolist())
    most = _lean(bench.pose()) + math.radians(1.5)
    fell = next((i for i, row in enumerate(ramp) if _lean(row[1]) > most), len(ramp))
    stood = [row for row in ramp[:fell] if row[0] <= low]
    jumps = [_snap(rows, low - math.radians(1.0), search) for rows in (stood, held)]
    lift, wheel = _first_lift(search, stood, low)
    return Tip(
        outcome,  # type: ignore[arg-type]
        angle,
        bracket,
        min(lift, angle),
        wheel,
        max(jumps, key=lambda s: max(s.shift / 0.002, s.turn / math.radians(0.5))),
        float(loads[list(pair)].sum() / loads.sum()),
        float(yaw),
        slid,
        int((loads <= 0.0).sum()),
    )


def _lean(pose: Array) -> float:
    return math.hypot(pose[3], pose[4])


def _snap(rows: list[Row], above: float, search: Search) -> Snap:
    """The quickest movement of the chassis above that angle."""
    rows = [row for row in rows if row[0] >= above]
    lag = round(search.pace.jump / search.look)
    if len(rows) <= lag:
        return Snap(math.nan, 0.0, 0.0)
    poses = np.array([row[1] for row in rows])
    moved = poses[lag:] - poses[:-lag]
    shift, turn = np.linalg.norm(moved[:, :3], axis=1), np.linalg.norm(moved[:, 3:], axis=1)
    most = int(np.argmax(np.maximum(shift / 0.002, turn / math.radians(0.5))))
    return Snap(rows[most + lag][0], float(shift[most]), float(turn[most]))


def _first_lift(search: Search, ramp: list[Row], low: float) -> tuple[float, int | None]:
    """By holding, from where the moving table showed it; inf if none is off before `low`."""
    off = np.array([row[2] for row in ramp]) <= 0.0
    # off for 20 ms on end: a wheel that chatters is not off
    runs = np.array([np.convolve(wheel, np.ones(5), "valid") >= 5 for wheel in off.T])
    if not len(ramp) or not runs.any():
        return math.inf, None
    first = int(np.argmax(runs.any(axis=0)))
    wheel = int(np.argmax(runs[:, first]))
    seen = ramp[first][0]
    look, high = seen, math.inf
    step = search.pace.keep
    while True:
        look -= step
        step *= 1.5
        search.back(look)
        gone, _ = search.hold(look)
        if gone or search.bench.loads()[wheel] > 0.0 or look <= 0.0:
            break
        high = look
    below, rest = look, search.bench.moment()
    step = search.pace.keep / 2
    while high - below > search.pace.width:
        search.bench.back(rest)
        look = min(below + step, (below + high) / 2)
        if look > low:
            return low, wheel
        gone, _ = search.hold(look)
        if gone:
            break
        if search.bench.loads()[wheel] <= 0.0:
            high = look
        else:
            below, rest = look, search.bench.moment()
    return (below + min(high, low)) / 2, wheel
