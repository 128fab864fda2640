"""From a session's readings to its least-squares problem."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.measurement.scatter import Scatter, pooled, scatter
from crossfall.measurement.weigh_in_model import (
    UNDER,
    Springs,
    Stand,
    TruckGeometry,
    warp_stiffness,
    wheel_loads,
)
from crossfall.measurement.weigh_in_session import Measured, Repeats, Ruler, Session
from crossfall.measurement.weighted_fit import TOLERANCE, Datum, Prior, jacobian, solvable
from crossfall.truck.model import Array

QUANTITIES = ("mass", "x", "y", "z")
GUESSED_SCATTER = 0.003  # kg, placement scatter where nothing is repeated: a guess, so
_GUESS_WORTH = 2.0  # it counts as two degrees of freedom (known to a factor, JCGM 100 G.4.2)
STATED_WORTH = 8.0  # the same for scatter the file states: known to a quarter
CROSS = 0.1  # of the mass: how far a truck may stand on one diagonal


@dataclass(frozen=True)
class Posed:
    """The least-squares problem of a session: model, data, scatter, and what was known.

    The first four parameters are mass, x, y, z.
    """

    model: Callable[[Array], Array]
    data: tuple[Datum, ...]
    kinds: tuple[Scatter, ...]
    known: tuple[Prior, ...]
    bears: tuple[bool, ...]  # which of the four any reading bears on


@solvable()
def pose(session: Session) -> Posed:
    """The least-squares problem of a session, SI.

    Quantities no reading bears on get a loose guess, so that they do not spoil the others: those
    that a null direction of the derivatives moves, by singular values. InputError where no truck
    could stand as it was weighed.
    Source: singular values and null space: G. H. Golub and C. F. Van Loan, Matrix Computations
    (Johns Hopkins 1996) (from memory).
    """
    guess = _mass_guess(session.readings)
    loose = [*_unknowns(session, guess, (False,) * 4), *nuisances(session, guess)]
    model = observer(session, loose)
    bears = _bears(model, loose)
    known = [*_unknowns(session, guess, bears), *loose[4:]]
    data = tuple(
        Datum(r.label, float(np.mean(r.loads)), len(r.loads), 0 if len(UNDER[r.at]) == 1 else 1)
        for r in session.readings
    )
    return Posed(model, data, _kinds(session), tuple(known), bears)


def _unknowns(session: Session, mass: float, bears: Sequence[bool]) -> list[Prior]:
    """Mass and CG: unknown where a reading bears on them, else a loose guess."""
    hub = session.ruler.radius_front.value
    sizes = (0.2 * mass, 0.03, 0.01, 0.03)
    values = (mass, 0.0, 0.0, 1.6 * hub)
    return [
        Prior(name, value, np.inf if there else size, size, False)
        for name, value, size, there in zip(QUANTITIES, values, sizes, bears, strict=True)
    ]


def nuisances(session: Session, mass: float) -> list[Prior]:
    """Everything besides mass (kg) and CG that the readings depend on, in a fixed order; SI.

    A limit +-a counts as sd a / sqrt(3).
    Source: JCGM 100 (GUM), 4.3.7 (from memory).
    """
    found = [
        _within(name, getattr(session.ruler, name), name.replace("_", " "))
        for name in ("wheelbase", "track_front", "track_rear", "radius_front", "radius_rear")
    ]
    if session.free is not None:
        for name in Springs.__dataclass_fields__:
            value = getattr(session.free, name)
            if isinstance(value, Measured):
                found.append(_within(name, value, "free suspension"))
    for number, block in enumerate(_blocks(session)):
        found.append(_within(f"block {number}", block, "block height"))
    floor = Measured(0.0, session.floor)
    found += [_within(n, floor, "floor slope") for n in ("floor pitch", "floor roll")]
    gain = Measured(0.0, session.scale.accuracy)
    scales = sorted({_scale(r) for r in session.readings})
    found += [_within(f"gain {n}", gain, "scale accuracy") for n in scales]
    match = Measured(0.0, session.scale.height_match)
    found.append(_within("match", match, "block and scale heights"))
    for number, _ in enumerate(_arrangements(session)):
        found.append(Prior(f"cross {number}", 0.0, CROSS * mass, 0.0, False, "standing diagonally"))
    return found


def _scale(reading: Repeats) -> int:
    """Which scale it was: of four the one under that wheel, else the only one."""
    return UNDER[reading.at][0] if reading.together else 4


def _within(name: str, m: Measured, label: str) -> Prior:
    return Prior(name, m.value, m.tolerance * TOLERANCE, 0.0, True, label)


def _blocks(session: Session) -> list[Measured]:
    """The blocks used, each once: readings on the same block share its error."""
    return list(dict.fromkeys(r.block for r in session.readings if r.raised))


def _arrangement(reading: Repeats) -> tuple[str, float, bool]:
    return reading.raised, reading.block.value, reading.together


def _arrangements(session: Session) -> list[tuple[str, float, bool]]:
    """The ways the truck was stood, each with its own share on the diagonals."""
    unlike = session.ruler.track_front.value != session.ruler.track_rear.value
    felt = [r for r in session.readings if r.at not in ("front", "rear", "all")]
    return list(dict.fromkeys(_arrangement(r) for r in felt if len(UNDER[r.at]) == 1 or unlike))


def _kinds(session: Session) -> tuple[Scatter, Scatter]:
    """Scatter of single wheels, and of axles, sides and the whole; one pool if either is scant."""
    step = session.scale.resolution
    wheels = [r.loads for r in session.readings if len(UNDER[r.at]) == 1]
    others = [r.loads for r in session.readings if len(UNDER[r.at]) > 1]
    scant = min(pooled(wheels)[1], pooled(others)[1]) < 3
    pools = [[*wheels, *others]] * 2 if scant else [wheels, others]
    stated = session.scale.placement
    kinds = []
    for name, pool in zip(("wheel", "axle"), pools, strict=True):
        prior = None if stated is None else (stated, STATED_WORTH)
        if prior is None and pooled(pool)[1] < 2:
            prior = (GUESSED_SCATTER, _GUESS_WORTH)
        found = scatter(pool, step, prior)
        kinds.append(found if scant else replace(found, label=f"placement scatter, {name}"))
    return kinds[0], kinds[1]


def _mass_guess(readings: Sequence[Repeats]) -> float:
    """kg, near enough to start from: the readings of any way of standing, spread over wheels."""
    per_wheel = [np.mean(r.loads) / len(UNDER[r.at]) for r in readings]
    return float(4 * np.mean(per_wheel))


def _bears(model: Callable[[Array], Array], known: Sequence[Prior]) -> tuple[bool, ...]:
    """Which of mass, x, y, z the readings fix: no null direction of their derivatives moves it."""
    at = np.array([k.value for k in known])
    sizes = np.array([k.size if k.uncertain else 1.0 for k in known])
    rows = jacobian(model, at, sizes)[:, :4] * sizes[:4]
    _, s, vt = np.linalg.svd(rows, full_matrices=True)
    rank = int(np.sum(s > 1e-6 * max(s.max(initial=0.0), 1e-300)))
    loose = np.abs(vt[rank:]).max(axis=0, initial=0.0)
    return tuple(bool(v < 1e-6) for v in loose)


# The readings as a function of the parameters


def observer(session: Session, known: Sequence[Prior]) -> Callable[[Array], Array]:
    """(K, P) parameters, SI -> (K, D) kg, the readings in order: (loads under the scale + warp)
    times (1 + gain).

    Source: as `weigh_in_model`; the gain derived here from a scale that is out by a share.
    """
    column = {k.name: i for i, k in enumerate(known)}
    blocks, arrangements = _blocks(session), _arrangements(session)
    locked = np.array([session.free is None or r.locked for r in session.readings])
    groups = [(np.flatnonzero(locked), False), (np.flatnonzero(~locked), True)]
    under = np.array([[i in UNDER[r.at] for i in range(4)] for r in session.readings], float)
    warp = np.array(
        [warp_gain(session, r) if len(UNDER[r.at]) == 1 else 0.0 for r in session.readings]
    )
    facing = np.array([-1.0 if r.turned else 1.0 for r in session.readings])
    block = np.array([_sign(r, r.raised) for r in session.readings])  # (D, 2): end, side
    match = np.array([(0, 0) if r.together else _sign(r, r.at) for r in session.readings])
    own = np.array([0.0 if r.together else 1.0 for r in session.readings])
    gains = [column[f"gain {_scale(r)}"] for r in session.readings]
    ups = [column[f"block {blocks.index(r.block)}"] if r.raised else -1 for r in session.readings]
    ways = [_arrangement(r) for r in session.readings]
    crosses = [column[f"cross {arrangements.index(w)}"] if w in arrangements else -1 for w in ways]

    def readings(p: Array) -> Array:
        padded = np.hstack([p, np.zeros((len(p), 1))])  # column -1: nothing

        def get(name: str) -> Array:
            values: Array = p[:, [column[name]]]
            return values

        shape = TruckGeometry(*(get(n) for n in (*QUANTITIES, *Ruler.__dataclass_fields__)))
        up, tall = padded[:, ups], get("match")
        stand = Stand(
            block[:, 0] * up + match[:, 0] * tall,
            block[:, 1] * up + match[:, 1] * tall,
            facing * get("floor pitch"),
            facing * get("floor roll"),
            padded[:, crosses],
        )
        wheels = np.empty((len(p), len(under), 4))
        for some, moves in groups:
            if len(some):
                springs = _springs(session, get) if moves else None
                wheels[:, some] = wheel_loads(shape, springs, stand.at(some))
        load = (wheels * under).sum(axis=-1) + warp * own * tall
        shown: Array = load * (1 + p[:, gains])
        return shown

    return readings


def _sign(reading: Repeats, end: str) -> tuple[float, float]:
    """Which way standing up at that end turns the truck: (front over rear, left over right)."""
    found = {"front": (1.0, 0.0), "rear": (-1.0, 0.0), "left": (0.0, 1.0), "right": (0.0, -1.0)}
    return found.get(end, (0.0, 0.0))


def _springs(session: Session, get: Callable[[str], Array]) -> Springs:
    assert session.free is not None
    return Springs(
        get("rate_front"),
        get("rate_rear"),
        get("spacing"),
        get("roll_centre"),
        get("unsprung_front"),
        get("unsprung_rear"),
        session.free.anti_roll,
    )


def warp_gain(session: Session, reading: Repeats) -> float:
    """kg per m a lone wheel gains by standing on something taller than the other three.

    Source: as `weigh_in_model.warp_stiffness`.
    """
    track = (session.ruler.track_front.value + session.ruler.track_rear.value) / 2
    free = None if reading.locked else session.free
    if free is None:
        return warp_stiffness(track, session.tyre_stiffness)
    springs = _springs(session, lambda name: np.array(getattr(free, name).value))
    return warp_stiffness(track, session.tyre_stiffness, springs)
