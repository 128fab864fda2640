"""Bringing the chassis file and the real truck together.

Every part's mass and place may move within its tolerance; scale readings and board angles pull.
The least-squares answer moves most what is least certain and matters most; a reading that cannot
be had by moving parts within their tolerances is named and left out (Baarda's data snooping, e.g.
Mikhail and Ackermann, Observations and Least Squares).
"""

from __future__ import annotations

from collections.abc import Container, Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.measurement.board import board_scatter
from crossfall.measurement.board_file import BoardReadings
from crossfall.measurement.board_height import board_known, board_model, contact_from_file
from crossfall.measurement.board_predict import Outlook, outlook
from crossfall.measurement.reconcile_fit import Bounded, fit_within
from crossfall.measurement.scatter import Scatter
from crossfall.measurement.weigh_in_pose import Posed, pose
from crossfall.measurement.weigh_in_session import Session
from crossfall.measurement.weighted_fit import Datum, Prior, ReadingModel, unbelievable
from crossfall.truck.model import Array, Grip, Truck

MOST_OUT = 3  # readings left out before the whole is given up as not belonging together
AGREES = 0.01  # least chance of a chi-square as large as found


@dataclass(frozen=True)
class Move:
    """What one row of the parts list moved by.

    mass: kg of one piece, by, sd. by: (3,) m in the part's own axes; place_sd: (3,) m. Each as
    found, inside the tolerance sqrt(3) sd.

    Source: limits and sd as JCGM 100 (GUM), 4.3.7 (from memory).
    """

    row: int
    name: str
    old_mass: float
    mass_by: float
    mass_sd: float
    place_by: Array
    place_sd: Array

    @property
    def mass_sds(self) -> float:
        """By how many standard deviations the mass moved."""
        return self.mass_by / self.mass_sd if self.mass_sd else 0.0

    @property
    def place_sds(self) -> Array:
        """(3,) the same for the place."""
        known = self.place_sd > 0
        return np.divide(self.place_by, self.place_sd, out=np.zeros(3), where=known)

    @property
    def most(self) -> float:
        """The largest of its four moves, in standard deviations."""
        return float(max(abs(self.mass_sds), *np.abs(self.place_sds)))


@dataclass(frozen=True)
class Left:
    """A reading that cannot be believed and was left out.

    off: kg or rad, from what the truck comes out at without it. by: sd, when it was left out.
    """

    label: str
    kind: str
    line: int | None
    off: float
    by: float


@dataclass(frozen=True)
class Reconciled:
    """before, after: (4,) mass kg, CG x, y, z m by the file and as reconciled; after_sd its sd.

    moves: by row, those that moved most sds first. chi_square with its redundancy and the chance
    of one as large; agrees where that is not tiny. at_limit: names held at their tolerance.
    """

    before: Array
    after: Array
    before_sd: Array
    after_sd: Array
    moves: tuple[Move, ...]
    left_out: tuple[Left, ...]
    at_limit: tuple[str, ...]
    chi_square: float
    redundancy: int
    chance: float

    @property
    def agrees(self) -> bool:
        return self.chance >= AGREES and not self.left_out


@dataclass(frozen=True)
class _Rows:
    """The parts list as arrays, one piece each: rows, masses kg, places (n, 3) m, side +-1."""

    row: Array
    mass: Array
    place: Array
    side: Array

    def whole(self, moved: Array) -> Array:
        """(K, 4) mass and CG for (K, R, 4) changes of mass and place by row."""
        each = moved[:, self.row.astype(int)]
        mass = self.mass + each[..., 0]
        shift = each[..., 1:] * np.stack([np.ones_like(self.side), self.side, self.side**2], -1)
        total = mass.sum(axis=1)
        cg = (mass[..., None] * (self.place + shift)).sum(axis=1) / total[:, None]
        return np.concatenate([total[:, None], cg], axis=1)


def rows_of(truck: Truck) -> _Rows:
    """Row (n,), mass (n,) kg, CG (n, 3) m and side (n,), -1 where mirrored, of every piece.

    Its `whole` is mass sum(m) and CG sum(m r) / sum(m).
    Source: the definition of a mass centre.
    """
    return _Rows(
        np.array([p.row for p in truck.parts]),
        np.array([p.body.mass for p in truck.parts]),
        np.array([p.body.cg for p in truck.parts]),
        np.array([-1.0 if p.mirrored else 1.0 for p in truck.parts]),
    )


@dataclass(frozen=True)
class Pull:
    """One kind of readings: model of (K, 4) mass and CG and (K, Q) own parameters to (K, D)."""

    name: str
    model: ReadingModel
    data: tuple[Datum, ...]
    kinds: tuple[Scatter, ...]
    known: tuple[Prior, ...]
    lines: tuple[int | None, ...]


def reconcile(
    truck: Truck,
    names: Sequence[str],
    session: Session | None = None,
    board: BoardReadings | None = None,
    fixed: frozenset[int] = frozenset(),
    grip: Grip | None = None,
) -> Reconciled:
    """The least change of the file that agrees with the readings; kg, m, rad.

    names: of the rows. fixed: rows that may not move. grip: the board's, `board_grip` if not said.
    Minimises sum((reading - model)^2 / s^2) + sum(move^2 / sd^2) within limits. ValueError where
    nothing pulls or nothing may move; InputError where the readings fit no truck. chance: that of a
    chi-square as large with as many degrees of freedom as readings.
    Source: E. M. Mikhail and F. Ackermann, Observations and Least Squares (1976), for data
    snooping; the chi-square test is common to all adjustment (from memory).
    """
    pulls = []
    if session is not None:
        pulls.append(_scales(session))
    if board is not None and board.tips:
        pulls.append(_board(truck, board, outlook(truck, board.tips, grip)))
    if not pulls:
        raise ValueError("no readings to reconcile with")
    rows = rows_of(truck)
    parts = _part_priors(truck, names, fixed)
    if not any(k.uncertain for k in parts):
        raise ValueError("no part may move: give mass_tol_g, place_tol_mm or a [tolerance] table")
    outlying: dict[tuple[int, int], float] = {}
    while True:
        found, marks = _fit(rows, parts, pulls, outlying)
        dofs = [pulls[i].kinds[pulls[i].data[j].kind].dof for i, j in marks]
        worst = unbelievable(found.normalised, dofs)
        if not worst or len(outlying) == MOST_OUT:
            break
        outlying[marks[worst[0]]] = float(found.normalised[worst[0]])
    shown = _shown(rows, len(parts), pulls, found.values[None])
    left = [
        Left(d.label, pulls[i].name, pulls[i].lines[j], float(d.value - shown[i][0, j]), by)
        for (i, j), by in outlying.items()
        for d in (pulls[i].data[j],)
    ]
    return _result(truck, names, rows, parts, found, left)


def _part_priors(truck: Truck, names: Sequence[str], fixed: frozenset[int]) -> list[Prior]:
    """Four per row: mass, then place along its own x, y, z; all zero change as the file has it."""
    sds = np.zeros((len(names), 4))
    for p in truck.parts:
        if p.row not in fixed:
            sds[p.row] = [p.mass_sd, *np.broadcast_to(p.place_sd, 3)]
    return [
        Prior(f"{name} {what}", 0.0, float(sd))
        for name, row in zip(names, sds, strict=True)
        for what, sd in zip(("mass", "x", "y", "z"), row, strict=True)
    ]


def _scales(session: Session) -> Pull:
    posed: Posed = pose(session)
    lines = tuple(r.line for r in session.readings)
    return Pull("scale", posed.model, posed.data, posed.kinds, posed.known[4:], lines)


def _board(truck: Truck, board: BoardReadings, ahead: Outlook) -> Pull:
    inner = board_model(truck, board, ahead)

    def model(p: Array) -> Array:
        mass_x_y_z, rest = p[:, :4], p[:, 4:]
        _, x, y, z = mass_x_y_z.T
        return inner(np.column_stack([z, rest[:, 0], x, y, rest[:, 1:]]))

    known = board_known(truck, board, None, ahead.expected)
    own = (contact_from_file(truck), *known[4:])
    data = tuple(
        Datum(f"heading {np.degrees(r.heading):g}", float(np.mean(r.angles)), len(r.angles))
        for r in board.tips
    )
    return Pull(
        "board", model, data, (board_scatter(board),), own, tuple(r.line for r in board.tips)
    )


def _fit(
    rows: _Rows, parts: Sequence[Prior], pulls: Sequence[Pull], out: Container[tuple[int, int]]
) -> tuple[Bounded, list[tuple[int, int]]]:
    """All readings but those out, and which pull and reading each datum is."""
    own = [replace(k, name=f"{pull.name} {k.name}") for pull in pulls for k in pull.known]
    marks = [(i, j) for i, p in enumerate(pulls) for j in range(len(p.data)) if (i, j) not in out]
    data = [replace(pulls[i].data[j], kind=n) for n, (i, j) in enumerate(marks)]
    kinds = [pulls[i].kinds[pulls[i].data[j].kind] for i, j in marks]

    def model(p: Array) -> Array:
        shown = _shown(rows, len(parts), pulls, p)
        return np.hstack([np.empty((len(p), 0)), *(shown[i][:, j : j + 1] for i, j in marks)])

    return fit_within(model, data, kinds, [*parts, *own]), marks


def _shown(rows: _Rows, count: int, pulls: Sequence[Pull], p: Array) -> list[Array]:
    """(K, D) what each pull should read, for (K, P) parameters: `count` of parts, then its own."""
    whole = rows.whole(p[:, :count].reshape(len(p), -1, 4))
    shown, start = [], count
    for pull in pulls:
        own = p[:, start : start + len(pull.known)]
        start += len(pull.known)
        shown.append(pull.model(np.hstack([whole, own])))
    return shown


def _result(
    truck: Truck,
    names: Sequence[str],
    rows: _Rows,
    parts: Sequence[Prior],
    found: Bounded,
    left: Sequence[Left],
) -> Reconciled:
    from scipy.special import gammaincc

    count = len(parts)
    by = found.values[:count].reshape(-1, 4)
    sds = np.array([k.sd for k in parts]).reshape(-1, 4)
    masses = {p.row: p.body.mass for p in truck.parts}
    moves = [
        Move(i, name, masses[i], float(b[0]), float(s[0]), b[1:].copy(), s[1:])
        for i, (name, b, s) in enumerate(zip(names, by, sds, strict=True))
        if i in masses
    ]
    moves.sort(key=lambda m: (-round(m.most, 9), m.row))
    slopes = _slopes(rows, by)
    prior = np.diag(sds.ravel() ** 2)
    limited = [parts[int(n)].name for n in np.flatnonzero(found.held[:count])]
    chance = float(gammaincc(found.redundancy / 2, found.chi_square / 2))
    return Reconciled(
        rows.whole(np.zeros((1, *by.shape)))[0],
        rows.whole(by[None])[0],
        np.sqrt(np.diag(slopes @ prior @ slopes.T)),
        np.sqrt(np.diag(slopes @ found.covariance[:count, :count] @ slopes.T)),
        tuple(moves),
        tuple(left),
        tuple(limited),
        found.chi_square,
        found.redundancy,
        chance,
    )


def _slopes(rows: _Rows, at: Array) -> Array:
    """(4, 4R) change of mass and CG by each row's mass and place."""
    step = 1e-6
    eye = np.eye(at.size).reshape(-1, *at.shape) * step
    change: Array = (rows.whole(at + eye) - rows.whole(at - eye)) / (2 * step)
    return change.T
