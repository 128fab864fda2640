"""Everything a trial on the table did: its stretches, one after the other, and samples of each."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Literal

import numpy as np

from crossfall.engines.held import HeldTruck
from crossfall.trials.record import Record
from crossfall.truck.model import Array, frozen
from crossfall.truck.vectors import Vector

Fate = Literal["", "rests", "tips", "slides"]
StretchKind = Literal["approach", "tilt", "hold"]
DETAIL = {"approach": 2, "tilt": 2, "hold": 10}  # looks between samples: 30 or 6 a second


@dataclass(frozen=True)
class Stretch:
    """One piece of a trial, from a kept moment on. Angles in rad.

    kind: the way to the start, a slow tilting, or a move to an angle and a hold there. fate: how it
    ended; "" where it only led on. search: which search for the tip it belongs to, from 1; 0 none.
    vary: what was finer in it than usual, "" nothing. jumped: it came to rest after moving faster
    and faster. afresh: what was known of where it goes was forgotten after it, since it jumped.
    fell: which of PAIRS was off when it tipped. first, last: its samples, last excluded. left,
    touched: where each of PAIRS and each wheel had last touched the table by its end.
    """

    kind: StretchKind
    fate: Fate
    search: int
    vary: str
    jumped: bool
    afresh: bool
    fell: int
    first: int
    last: int
    left: tuple[float, ...]
    touched: tuple[float, ...]


@dataclass(frozen=True)
class Log:
    """All samples, n of them, in the order they were taken, and the stretches they belong to.

    A stretch may begin at an earlier moment than the one before it ended at, so time and table
    angle go back there. lean: (n,) rad, of the chassis. passed: (n,) whether a sample is on the way
    from the level to the end of the tilting, nothing thrown away. weight: N.
    """

    samples: Record
    lean: Array
    passed: Array
    stretches: tuple[Stretch, ...]
    weight: float

    def end(self, stretch: Stretch) -> tuple[float, Array]:
        """Table angle (rad) and loads (4,) N at the end of a stretch."""
        return float(self.samples.theta[stretch.last - 1]), self.samples.loads[stretch.last - 1]

    @property
    def record(self) -> Record:
        """The samples on the way from the level to the end of the tilting."""
        return self.samples.only(self.passed)


@dataclass(frozen=True)
class TiltingSamples:
    """(n,) s, table angle and lean in rad, and m that the loaded wheel has slid that slid least."""

    time: Array
    theta: Array
    lean: Array
    slid: Array


class Recorder:
    """Gathers samples while a trial runs; `log` makes sense of them."""

    def __init__(self, rig: HeldTruck) -> None:
        self._rig = rig
        self._rows: list[tuple[float, float, float, tuple[float, ...]]] = []
        self._chassis: list[Any] = []
        self._joints: list[list[float]] = []
        self._gives: list[list[Vector]] = []
        self._slips: list[list[float]] = []
        self._done: list[Stretch] = []
        self._open: tuple[StretchKind, int, str, int] | None = None
        self._looks = 0
        self._way: tuple[tuple[int, int], ...] = ()
        self._since = 0  # first row of the way that goes on

    def begin(self, kind: StretchKind, search: int = 0, vary: str = "") -> None:
        """A new stretch. The one before must have ended."""
        self._open, self._looks = (kind, search, vary, len(self._rows)), 0

    def look(self, time: float, theta: float, lean: float, loads: list[float]) -> None:
        """Note a look, if its turn has come."""
        kind = self._open[0] if self._open else "approach"
        if self._looks % DETAIL[kind] == 0:
            self._sample(time, theta, lean, loads)
        self._looks += 1

    def end(
        self,
        now: tuple[float, float, float, list[float]],
        fate: Fate,
        *,
        jumped: bool = False,
        fell: int = 0,
        left: list[float],
        touched: list[float],
    ) -> Stretch:
        """The stretch is over; `now`: as of a look, which is sampled in any case."""
        assert self._open is not None
        kind, search, vary, first = self._open
        if not self._rows or self._rows[-1][:2] != now[:2]:
            self._sample(*now)
        last = len(self._rows)
        ends = tuple(left), tuple(touched)
        done = Stretch(kind, fate, search, vary, jumped, False, fell, first, last, *ends)
        self._done.append(done)
        self._open = None
        return done

    def afresh(self) -> None:
        """After the stretch that ended last, what was known of where it goes is forgotten."""
        self._done[-1] = replace(self._done[-1], afresh=True)

    def way(self) -> tuple[tuple[int, int], ...]:
        """The samples that led here, as ranges; see `back`."""
        return (*self._way, (self._since, len(self._rows)))

    def back(self, way: tuple[tuple[int, int], ...]) -> None:
        """The trial goes on from an earlier moment, to which `way` had led."""
        self._way, self._since = way, len(self._rows)

    def tilting(self, first: int) -> TiltingSamples:
        """The samples from number `first` on."""
        rows = self._rows[first:]
        time, theta, lean = (frozen([row[i] for row in rows]) for i in range(3))
        slid = [
            min((way for way, load in zip(ways, row[3], strict=True) if load > 0.0), default=0.0)
            for row, ways in zip(rows, self._slips[first:], strict=True)
        ]
        return TiltingSamples(time, theta, lean, frozen(slid))

    def __len__(self) -> int:
        return len(self._rows)

    def _sample(self, time: float, theta: float, lean: float, loads: list[float]) -> None:
        self._rows.append((time, theta, lean, tuple(loads)))
        self._chassis.append(self._rig.pose())
        self._joints.append(self._rig.joint_positions())
        self._gives.append(self._rig.gives())
        self._slips.append(self._rig.slips())

    def log(self, way: tuple[tuple[int, int], ...], weight: float) -> Log:
        """Everything sampled so far; way: what counts as passed."""
        rows, passed = self._rows, np.zeros(len(self._rows), dtype=bool)
        for first, last in way:
            passed[first:last] = True
        names = self._rig.joint_names
        samples = Record(
            frozen([r[0] for r in rows]),
            frozen([r[1] for r in rows]),
            frozen([r[3] for r in rows]),
            frozen(self._rig.poses(self._chassis)),
            frozen(np.reshape(self._joints, (len(rows), len(names)))),
            names,
            frozen(self._gives),
            frozen(self._slips),
        )
        passed.flags.writeable = False
        return Log(samples, frozen([r[2] for r in rows]), passed, tuple(self._done), weight)
