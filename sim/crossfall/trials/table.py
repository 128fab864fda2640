"""A truck on the table: tilting, holding, going back, and seeing what leaves the table.

The table's slow motion is played by turning gravity in the table's axes; a test shows that a
table on a real joint gives the same. Where tyres may slide, the truck is turned instead, so that
the slope runs along x: the engine resolves friction along x and y, and along them its limit is
exact.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass

import numpy as np

from crossfall.trials.record import Recorder
from crossfall.trials.rig import Rig, Snapshot, gravity_on_table
from crossfall.trials.world import Settings
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck

PAIRS = ((0, 2), (1, 3), (0, 1), (2, 3))  # left, right, front, rear: what leaves the table
OPPOSITE = (1, 0, 3, 2)
LOOK = 6  # steps between looks at loads and lean
SQUARE = math.radians(10.0)  # from a climb, descent or side slope: less counts as one
HOVER = math.radians(0.2)  # rad a truck on two wheels leans on before it is watched again
OFF = 0.02  # s a pair must be off the table to count as off: longer than any chatter


@dataclass(frozen=True)
class Table:
    """A truck settled on the level table, and that moment to come back to. Loads in world N."""

    truck: Truck
    rig: Rig
    level: Snapshot
    level_loads: tuple[float, ...]
    weight: float

    @property
    def steps_per_second(self) -> float:
        """World steps in a second of the real truck."""
        return self.rig.scale.time / self.rig.dt

    def steps(self, seconds: float) -> int:
        return max(1, round(seconds * self.steps_per_second))


@contextmanager
def standing(truck: Truck, settings: Settings) -> Iterator[Table]:
    """The truck on a plane, wheels held, settled on the level; the world closes at the end."""
    with Rig(truck, settings) as rig:
        rig.world.plane(1.0)
        for _ in range(max(1, round(0.05 * rig.scale.time / rig.dt))):
            rig.step((0.0, 0.0, -GRAVITY))
        weight = whole(truck).mass * GRAVITY * rig.scale.force
        yield Table(truck, rig, rig.save(), tuple(rig.world.loads()), weight)


def set_grip(table: Table, heading: float, grip: float | None, rail: bool) -> None:
    """Friction of every tyre: `grip`, or enough never to slide.

    rail: the wheels it would tip over cannot slide, as if they stood against a rail of no height,
    which takes force along the table only and so adds nothing against tipping.
    """
    rig = table.rig
    # Up and down a truck's tyres do not creep, and the rims roll most: no anchors there.
    aside = abs(math.remainder(heading, math.pi)) > SQUARE
    rig.world.anchor(grip is None and bool(rig.tyres) and aside)
    stick = rig.settings.stick
    held = downhill_pair(table.truck, heading) if rail else ()
    for wheel in range(4):
        rig.world.grip(wheel, stick if grip is None or wheel in held else grip)


def downhill_pair(truck: Truck, heading: float) -> tuple[int, int]:
    """The two wheels a rigid truck would tip over at `heading` (rad): least a / (n.d)."""
    body = whole(truck)
    downhill = np.array([-math.cos(heading), math.sin(heading)])
    levers = {}
    for pair, outward in zip(PAIRS, ((0, 1), (0, -1), (1, 0), (-1, 0)), strict=True):
        a, b = (
            np.array([truck.axles[w // 2].x, (0.5 - w % 2) * truck.axles[w // 2].track])
            for w in pair
        )
        normal = np.array([(b - a)[1], (a - b)[0]]) / np.linalg.norm(b - a)
        normal = normal if normal @ outward > 0 else -normal
        if normal @ downhill > 1e-9:
            levers[pair] = float((a - body.cg[:2]) @ normal / (normal @ downhill))
    return min(levers, key=lambda pair: levers[pair])


@dataclass(frozen=True)
class Moment:
    """A kept moment of a tilting; mark: samples recorded until then."""

    snapshot: Snapshot
    theta: float
    time: float
    lean: float
    off: tuple[int, ...]
    left: tuple[float, ...]
    touched: tuple[float, ...]
    mark: int


class Tilting:
    """One tilting of the table from the level, while it is going on; angles in rad.

    turned: the truck is turned to the heading, not the slope; for trials in which it may slide.
    theta: the table's angle. loads: (4,) world N and lean: of the chassis, at the last look.
    left: angle when each of PAIRS last touched the table, touched: each wheel.
    """

    def __init__(self, table: Table, heading: float, *, turned: bool = False) -> None:
        self.table, self.heading, self._rig = table, heading, table.rig
        self._uphill = 0.0 if turned else heading  # rad, of the truck as it was loaded
        self._rig.restore(table.level)
        if turned:
            self._rig.world.turn(heading)
        self.theta = self.time = self.lean = 0.0
        self.loads: list[float] = list(table.level_loads)
        self.off = [0] * len(PAIRS)
        self.left = [0.0] * len(PAIRS)
        self.touched = [0.0] * 4
        self.recorder: Recorder | None = Recorder(
            table.rig, table.truck, heading if turned else 0.0
        )
        self._tick = 0
        self._hovering = -math.inf
        self._off_looks = max(2, round(table.steps(OFF) / LOOK))
        self.kept: list[Moment] = []

    # --- moving ---------------------------------------------------------------------------

    def step(self, theta: float) -> bool:
        """One step at table angle theta; True when it was also looked at."""
        self.theta = theta
        self._rig.step(gravity_on_table(self._uphill, theta))
        self.time += self._rig.dt
        self._tick += 1
        if self._tick % LOOK:
            return False
        self._look()
        return True

    def move(
        self, target: float, rate: float, *, keep: float = math.inf, least: float = 0.0
    ) -> None:
        """Tilt to target, starting and stopping gently, at `rate` (rad/s) on average.

        least: s it takes, however near the target. keep: rad between the moments kept on the last
        of the way.
        """
        start = last = self.theta
        n = self.table.steps(max(abs(target - start) / rate, least))
        for i in range(1, n + 1):
            self.step(start + (target - start) * (1 - math.cos(math.pi * i / n)) / 2)
            if self.theta - last > keep and target - self.theta < 6 * keep:
                last = self.theta
                self.keep()

    def hold(self, seconds: float) -> None:
        for _ in range(self.table.steps(seconds)):
            self.step(self.theta)

    def falls(self, fallen: float, longest: float, rate: float = 0.0) -> bool:
        """Watch while a pair is off the table: True once the chassis has leaned on by `fallen`.

        The table is held, or tilts on at `rate` (rad/s), for `longest` (s) at most.

        A truck that comes back onto its wheels (its springs let it jump, say) has not tipped, nor
        has one that stands on two wide tyres: that one is only watched again when it leans on.
        """
        start, per_step = self.lean, rate / self.table.steps_per_second
        for _ in range(self.table.steps(longest)):
            if self.step(self.theta + per_step):
                if self.lean - start > fallen:
                    return True
                if self.airborne is None:
                    return False
        self._hovering = self.lean
        return False

    # --- looking --------------------------------------------------------------------------

    def _look(self) -> None:
        world = self._rig.world
        self.loads = loads = world.loads()
        self.lean = math.acos(max(-1.0, min(1.0, world.uprightness())))
        for w in range(4):
            if loads[w] > 0.0:
                self.touched[w] = self.theta
        for i, (a, b) in enumerate(PAIRS):
            if loads[a] > 0.0 or loads[b] > 0.0:
                self.off[i], self.left[i] = 0, self.theta
            else:
                self.off[i] += 1
        if self.recorder is not None:
            self.recorder.look(self.time, self.theta, self.lean, loads)

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
    def samples(self) -> Recorder:
        """What is being recorded. Raises ValueError when nothing is."""
        if self.recorder is None:
            raise ValueError("this tilting is not recorded")
        return self.recorder

    @property
    def slid(self) -> float:
        """m, least way any loaded wheel has come since the recording began."""
        if self.recorder is None:
            return 0.0
        moved = self.recorder.moved()
        return min((m for m, load in zip(moved, self.loads, strict=True) if load > 0), default=0.0)

    def light(self, fraction: float) -> bool:
        """Whether a wheel bears less than this fraction of its level load.

        Where tyres are rigid the single loads mean nothing, and pairs are looked at.
        """
        level = self.table.level_loads
        groups: tuple[tuple[int, ...], ...] = PAIRS
        if self._rig.tyres:
            groups = ((0,), (1,), (2,), (3,))
        return any(
            sum(self.loads[w] for w in g) < fraction * sum(level[w] for w in g) for g in groups
        )

    # --- going back -----------------------------------------------------------------------

    def keep(self) -> None:
        """Keep this moment; costs as much as thirty steps."""
        self.kept.append(self._moment(self._rig.save()))

    def _moment(self, snapshot: Snapshot) -> Moment:
        return Moment(
            snapshot,
            self.theta,
            self.time,
            self.lean,
            tuple(self.off),
            tuple(self.left),
            tuple(self.touched),
            0 if self.recorder is None else len(self.recorder),
        )

    def back(self, moment: Moment) -> None:
        """Go back to a kept moment, forgetting what was recorded and kept since."""
        self._rig.restore(moment.snapshot)
        self.theta, self.time, self.lean = moment.theta, moment.time, moment.lean
        self.off, self.left = list(moment.off), list(moment.left)
        self.touched = list(moment.touched)
        self._tick = 0
        self._hovering = -math.inf
        if self.recorder is not None:
            self.recorder.cut(moment.mark)
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
