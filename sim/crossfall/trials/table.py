"""A truck on the table: tilting, holding, going back, and seeing what leaves the table.

The table's slow motion is played by turning gravity in the table's axes; a test shows that a
table on a real joint gives the same.

Angles rad, lengths m, loads N, times s. Raises `InputError` past the settings' budget of steps.

Source: in axes that tilt with the table, slowly, gravity is (g sin theta along its downhill way,
-g cos theta), any mechanics text; starts and stops follow (1 - cos(pi t / T)) / 2, a cycloid's
rise, common practice, no source; what counts as rest, jump and slide was found here by trial.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

from crossfall.engines.held import EngineName, HeldTruck, gravity_on_table, held_truck
from crossfall.engines.settings import TrialSettings, endless
from crossfall.trials.log import Fate, Recorder, StretchKind
from crossfall.trials.pace import Pace
from crossfall.truck.digest import truck_digest
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck
from crossfall.truck.ride import tyre_loads
from crossfall.truck.support import PAIRS, downhill_pair

_LOOK = 4  # steps between looks at loads and lean
HOVER = math.radians(0.2)  # rad a truck on two wheels leans on before it is watched again
WATCH = 0.1  # s between looks at whether it rests
JUMP = 1e-3  # m in WATCH, twice what a truck moves there that swings on soft springs
CREPT = 0.02  # of a tyre radius: a truck that has crept further at the end of a hold slides
GLIDES = 5  # looks of WATCH a truck slides in a row, after which its drag is taken from it
GLIDE = 0.05  # of the settings' drag is left to it
_AWAY = 8.0  # s of sliding, on every wheel and without a rest, from which none comes back
_STEADY = 16  # looks of WATCH in a row, after which one slides away that slows down no more
_EASES = 0.99  # of its way in a look: one that comes to rest again has lost more in so many
OFF = 0.02  # s a pair must be off the table to count as off: longer than any chatter


@dataclass(frozen=True)
class LevelTable:
    """A truck on the level table, and that moment to come back to. Weight in N, and loads of each
    wheel, which no engine tells yet: its contacts have still to bear."""

    truck: Truck
    rig: HeldTruck
    level: Any
    level_loads: tuple[float, ...]
    weight: float
    digest: str

    def steps(self, seconds: float) -> int:
        return max(1, round(seconds / self.rig.dt))


@contextmanager
def level_table(truck: Truck, settings: TrialSettings, engine: EngineName) -> Iterator[LevelTable]:
    """The truck on the level table, wheels held; the world closes at the end."""
    with held_truck(truck, settings, engine) as rig:
        rig.step((0.0, 0.0, -GRAVITY))
        weight, loads = whole(truck).mass * GRAVITY, tuple(tyre_loads(truck).tolist())
        yield LevelTable(truck, rig, rig.save(), loads, weight, truck_digest(truck))


def set_grip(table: LevelTable, heading: float, grip: float, rail: bool) -> None:
    """Friction coefficient of every tyre.

    rail: the wheels it would tip over cannot slide, as if they stood against a rail of no height,
    which takes force along the table only and so adds nothing against tipping.
    """
    held = downhill_pair(table.truck, heading) if rail else ()
    table.rig.grip([math.inf if wheel in held else grip for wheel in range(4)])


@dataclass(frozen=True, eq=False)
class Moment:
    """A kept moment of a tilting; way: the samples that led there."""

    snapshot: Any
    theta: float
    time: float
    lean: float
    off: tuple[int, ...]
    left: tuple[float, ...]
    touched: tuple[float, ...]
    way: tuple[tuple[int, int], ...]


class Tilting:
    """One tilting of the table from the level, while it is going on; angles in rad.

    theta: the table's angle. loads: (4,) N and lean: of the chassis, at the last look.
    left: angle when each of PAIRS last touched the table, touched: each wheel. rests: angles at
    which it came to rest, with its loads. jumped: those at which it had jumped. fell: which of
    PAIRS was off when it last went over. log: what is recorded. ended: the stretch of it that
    ended last. steps: taken so far; InputError past the settings' budget.
    """

    def __init__(self, table: LevelTable, heading: float) -> None:
        self.table, self.heading, self._rig = table, heading, table.rig
        self._rig.restore(table.level)
        self.theta = self.time = self.lean = 0.0
        self.loads: list[float] = list(table.level_loads)
        self.off = [0] * len(PAIRS)
        self.left = [0.0] * len(PAIRS)
        self.touched = [0.0] * 4
        self.log = Recorder(table.rig)
        self.steps = 0
        self._tick = 0
        self._hovering = -math.inf
        self._off_looks = max(2, round(table.steps(OFF) / _LOOK))
        self.kept: list[Moment] = []
        self.fell = 0
        self._drag = 1.0
        self.begin("approach")
        self.log.look(self.time, self.theta, self.lean, self.loads)  # a record begins at the level

    def begin(self, kind: StretchKind, search: int = 0, vary: str = "") -> None:
        """A new stretch of the log; see `Stretch`."""
        self.log.begin(kind, search, vary)

    def end(self, fate: Fate, *, jumped: bool = False) -> Fate:
        """The end of the stretch."""
        now = self.time, self.theta, self.lean, self.loads
        ends = {"left": self.left, "touched": self.touched}
        self.ended = self.log.end(now, fate, jumped=jumped, fell=self.fell, **ends)
        return fate

    def drag(self, times: float) -> None:
        """So many times the settings' drag from now on."""
        self._drag = times
        self._rig.drag(times)

    # --- moving ---------------------------------------------------------------------------

    def step(self, theta: float, count: int = 1) -> bool:
        """One step at table angle theta, or `count`; True when it was also looked at."""
        self.theta = theta
        self._rig.step(gravity_on_table(self.heading, theta), count)
        self.time += count * self._rig.dt
        self._tick += count
        self.steps += count
        if self.steps > self._rig.settings.budget:
            raise endless(self.table.truck.name, "its trial", self.steps - 1, self._rig.dt)
        if self._tick % _LOOK:
            return False
        self._look()
        return True

    def move(self, target: float, rate: float, least: float) -> None:
        """Tilt to target, starting and stopping gently, at `rate` (rad/s) on average.

        least: s it takes, however near the target.
        """
        start = self.theta
        n = self.table.steps(max(abs(target - start) / rate, least))
        for i in range(1, n + 1):
            self.step(start + (target - start) * (1 - math.cos(math.pi * i / n)) / 2)

    def approach(self, target: float, rate: float, keep: float) -> None:
        """Tilt to target, at `rate` (rad/s) on average and ever slower: the lighter the uphill
        tyres, the more they slip that are hurried, and what slipped on the way moves the tip.

        keep: rad between the moments kept on the last of the way.
        """
        start = last = self.theta
        n = self.table.steps(abs(target - start) / rate)
        for i in range(1, n + 1):
            self.step(target - (target - start) * (1 - i / n) ** 3)
            if self.theta - last > keep and target - self.theta < 6 * keep:
                last = self.theta
                self.keep()

    def hold(self, seconds: float) -> Iterator[bool]:
        """Stand for so long, a look at a time; each says whether it was looked at."""
        left = self.table.steps(seconds)
        while left > 0:
            count = min(left, _LOOK - self._tick % _LOOK)
            left -= count
            yield self.step(self.theta, count)

    def fate(self, pace: Pace) -> Fate:
        """Hold the table until the truck rests, has tipped over, or slides away.

        It rests once it moves little twice in turn: once may be where a swing turns back. It slides
        away once it does so steadily; one that goes over on slipping tyres leans on faster than it
        slides. With drag one that slides only creeps, above the angle of friction as below it: it
        slides on without, and soon is either faster or at rest. Ends the stretch, and notes in it
        where a truck that comes to rest first moved faster and faster.
        """
        try:
            return self._watched(pace)
        finally:
            self._rig.drag(self._drag)

    def _watched(self, pace: Pace) -> Fate:
        base, radius = self.table.truck.wheelbase, self.table.truck.front.tyre.radius
        began = slid = self.slid
        calm, jumps, moved = 0, False, math.inf
        ways: list[float] = []  # m it slid in each look, since it last did not
        place, lean = self._rig.place(), self.lean
        for _ in range(round(pace.hold / WATCH)):
            for looked in self.hold(WATCH):
                if looked and self.airborne is not None and self.falls(pace.fallen, 1.0):
                    return self.end("tips")
            was, place, before = place, self._rig.place(), moved
            moved = max(abs(a - b) for a, b in zip(place, was, strict=True))
            jumps = jumps or moved > max(before, JUMP)
            calm = calm + 1 if moved < pace.still else 0
            way, leant = self.slid - slid, abs(self.lean - lean)
            slid, lean = self.slid, self.lean
            ways = [*ways, way] if way > max(pace.still, base * leant) else []
            self._rig.drag(GLIDE if len(ways) >= GLIDES else self._drag)
            if calm == 2:
                break
            if slides_on(ways) or slid - began > pace.slid * radius:
                return self.end("slides")
        else:
            if slid - began > CREPT * radius:
                return self.end("slides")
        return self.end("rests", jumped=jumps)

    def falls(self, fallen: float, longest: float, rate: float = 0.0) -> bool:
        """Watch while a pair is off the table: True once the chassis has leaned on by `fallen`.

        The table is held, or tilts on at `rate` (rad/s), for `longest` (s) at most.

        A truck that comes back onto its wheels (its springs let it jump, say) has not tipped, nor
        has one that stands on two wide tyres: that one is only watched again when it leans on.
        """
        start, per_step, pair = self.lean, rate * self._rig.dt, self.airborne
        for _ in range(self.table.steps(longest)):
            if self.step(self.theta + per_step):
                if self.lean - start > fallen:
                    self.fell = pair or 0
                    return True
                if self.airborne is None:
                    return False
        self._hovering = self.lean
        return False

    # --- looking --------------------------------------------------------------------------

    def _look(self) -> None:
        self.loads = loads = self._rig.loads()
        self.lean = self._rig.lean()
        for w in range(4):
            if loads[w] > 0.0:
                self.touched[w] = self.theta
        for i, (a, b) in enumerate(PAIRS):
            if loads[a] > 0.0 or loads[b] > 0.0:
                self.off[i], self.left[i] = 0, self.theta
            else:
                self.off[i] += 1
        self.log.look(self.time, self.theta, self.lean, loads)

    @property
    def airborne(self) -> int | None:
        """Which of PAIRS is off the table for OFF or longer, the longest if several.

        None too while the truck is known to stand on the others.
        """
        most = max(range(len(PAIRS)), key=lambda i: self.off[i])
        if self.off[most] < self._off_looks:
            self._hovering = -math.inf
            return None
        return most if self.lean > self._hovering + HOVER else None

    @property
    def slid(self) -> float:
        """m, least way any loaded wheel has slipped; of all wheels while a hop loads none."""
        ways = self._rig.slips()
        return min(
            (w for w, load in zip(ways, self.loads, strict=True) if load > 0.0), default=min(ways)
        )

    @property
    def slipped(self) -> float:
        """m, furthest any tyre has slipped."""
        return max(self._rig.slips())

    def light(self, fraction: float) -> bool:
        """Whether a wheel bears less than this fraction of its level load."""
        level = self.table.level_loads
        return any(load < fraction * was for load, was in zip(self.loads, level, strict=True))

    # --- going back -----------------------------------------------------------------------

    def keep(self) -> None:
        """Keep this moment; costs as much as thirty steps."""
        self.kept.append(self._moment(self._rig.save()))

    def _moment(self, snapshot: Any) -> Moment:
        return Moment(
            snapshot,
            self.theta,
            self.time,
            self.lean,
            tuple(self.off),
            tuple(self.left),
            tuple(self.touched),
            self.log.way(),
        )

    def back(self, moment: Moment, *, forget: bool = False) -> None:
        """Go back to a kept moment; on the way to the tip those kept later are forgotten."""
        self._rig.restore(moment.snapshot)
        self.theta, self.time, self.lean = moment.theta, moment.time, moment.lean
        self.off, self.left = list(moment.off), list(moment.left)
        self.touched = list(moment.touched)
        self._tick = 0
        self._hovering = -math.inf
        self.log.back(moment.way)
        if forget:
            for later in [m for m in self.kept if m.theta > moment.theta]:
                self._rig.forget(later.snapshot)
                self.kept.remove(later)

    def last_kept(self, theta: float) -> Moment:
        """The latest kept moment at or below theta, or the first."""
        below = [m for m in self.kept if m.theta <= theta]
        return below[-1] if below else self.kept[0]

    def forget(self) -> None:
        """Give back the memory of every kept moment."""
        for moment in self.kept:
            self._rig.forget(moment.snapshot)
        self.kept.clear()


def slides_on(ways: list[float]) -> bool:
    """Whether a truck slides away that has slid so far (m) in each of the looks up to now: for so
    long, or steadily, no slower in the later looks than in those before."""
    if len(ways) * WATCH >= _AWAY:
        return True
    before, after = ways[-_STEADY : -_STEADY // 2], ways[-_STEADY // 2 :]
    return len(ways) >= _STEADY and min(after) >= _EASES * max(before)
