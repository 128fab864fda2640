"""What to measure next: each further reading's effect on the uncertainty, worked out beforehand.

A reading's use does not depend on what it will show: adding its row to the least-squares problem
gives the covariance it would leave (optimal design, e.g. Atkinson and Donev, Optimum Experimental
Designs).
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass, replace

import numpy as np

from crossfall.measurement.weigh_in_pose import QUANTITIES, Posed, pose
from crossfall.measurement.weigh_in_session import Measured, Repeats, Session
from crossfall.measurement.weighted_fit import fit, foreseen
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array

REPEATS = 3
RAISES = (0.3, 0.45)  # of the wheelbase: 17 and 27 degrees, where a truck still stands well


@dataclass(frozen=True)
class _Advice:
    """One further thing to do. after: (4,) u of mass kg, x, y, z m that it would leave.

    gain: how many times smaller the worst quantity's u becomes.
    """

    what: str
    after: Array
    gain: float


@dataclass(frozen=True)
class ReadingPlan:
    """worst: which of mass, x, y, z limits the tip angle most; degrees: what each is worth there.

    degrees: (4,) deg of tip angle per standard uncertainty. advice: best first.
    """

    worst: str
    degrees: Array
    advice: tuple[_Advice, ...]


def next_readings(session: Session) -> ReadingPlan:
    """Every candidate reading ranked by how far it would shrink the worst quantity.

    The covariance after a reading is that of the same least squares with one observation more, as
    linear theory has it; worst is what moves the tip angles most, `tip_effect` times its sd.
    InputError where the readings fit no truck.
    Source: A. C. Atkinson and A. N. Donev, Optimum Experimental Designs (Oxford 1992) (from
    memory).
    """
    posed = pose(session)
    found = fit(posed.model, posed.data, posed.kinds, posed.known)
    before = np.sqrt(np.diag(found.covariance))[:4]
    degrees = np.degrees(tip_effect(session, found.values[:4]) * before)
    worst = _worst(posed, degrees)
    fitted = dict(zip([k.name for k in posed.known], found.values, strict=True))
    advice = []
    for what, changed in dict(_candidates(session)).items():
        with suppress(InputError):  # the truck found so far could not stand like that
            after = np.sqrt(np.diag(_after(changed, fitted, posed)))[:4]
            advice.append(_Advice(what, after, float(before[worst] / after[worst])))
    advice.sort(key=lambda a: (-round(a.gain, 6), a.what))
    return ReadingPlan(QUANTITIES[worst], degrees, tuple(advice))


def tip_effect(session: Session, values: Array) -> Array:
    """(4,) rad per kg and m: the most any of the four square tip angles changes with each.

    tan(theta) = a / h, a the distance to the tip line, over the sides and the ends; so h / (a^2 +
    h^2) by x or y and a / (a^2 + h^2) by h. values: (4,) mass kg and CG m.
    Source: derived here from the rigid tip angle.
    """
    _, x, y, h = values
    r = session.ruler
    half, end = (r.track_front.value + r.track_rear.value) / 4, r.wheelbase.value / 2
    sides = np.array([half - y, half + y])
    ends = np.array([end - x, end + x])
    both = np.concatenate([sides, ends])
    return np.array(
        [
            0.0,
            np.max(h / (ends**2 + h**2)),
            np.max(h / (sides**2 + h**2)),
            np.max(both / (both**2 + h**2)),
        ]
    )


def _worst(posed: Posed, degrees: Array) -> int:
    """What was not measured at all comes first, the height before the rest."""
    missing = [i for i in (0, 3, 1, 2) if not posed.bears[i]]
    return missing[0] if missing else int(np.argmax(degrees))


def _after(changed: Session, fitted: dict[str, float], posed: Posed) -> Array:
    """(P, P) covariance with the further reading; a loose guess stays as loose as it was."""
    new = pose(changed)
    known = tuple(replace(k, sd=o.sd) for k, o in zip(new.known[:4], posed.known[:4], strict=True))
    known += new.known[4:]
    at = np.array([fitted.get(k.name, k.value) for k in known])
    return foreseen(new.model, at, new.data, posed.kinds, known)


def _candidates(session: Session) -> Iterator[tuple[str, Session]]:
    """What could be done next, in a tuner's words."""
    for i, r in enumerate(session.readings):
        loads = (*r.loads, *(float(np.mean(r.loads)),) * REPEATS)
        more = [replace(r, loads=loads) if j == i else o for j, o in enumerate(session.readings)]
        yield f"{REPEATS} more repeats: {r.label}", replace(session, readings=tuple(more))
    done = {_way(session, r) for r in session.readings}
    locked = session.free is None or all(r.locked for r in session.readings if r.raised)
    for r in _new_readings(session):
        if session.free is None or locked:
            r = replace(r, locked=session.free is not None and locked)
        if _way(session, r) not in done:
            held = " with the suspension locked" if r.locked and r.raised else ""
            what = f"weigh the {r.label}{held}, {REPEATS} times"
            yield what, replace(session, readings=(*session.readings, r))
    yield from _better_rulers(session)


def _way(session: Session, r: Repeats) -> tuple[str, str, float, bool, bool]:
    """What makes one reading another than the next: springs only where they change the loads."""
    held = bool(r.raised) and session.free is not None and r.locked
    return r.at, r.raised, r.block.value, r.turned, held


def _new_readings(session: Session) -> Iterator[Repeats]:
    mean = float(np.mean([np.mean(r.loads) for r in session.readings]))
    loads = (mean,) * REPEATS
    level = Measured(0.0, 0.0)
    for at in ("all", "front", "rear", "left", "right"):
        yield Repeats(at, loads)
    yield Repeats("front", loads, turned=True)
    used = list(dict.fromkeys(r.block for r in session.readings if r.raised))
    tolerance = max((b.tolerance for b in used), default=0.0005)
    base = session.ruler.wheelbase.value
    blocks = used + [Measured(round(k * base, 2), tolerance) for k in RAISES]
    for block in blocks:
        if block == level or block.value > 0.5 * base:
            continue
        for at, raised in (("rear", "front"), ("front", "rear")):
            yield Repeats(at, loads, raised, block)
            if session.free is not None:
                yield Repeats(at, loads, raised, block, locked=True)


def _better_rulers(session: Session) -> Iterator[tuple[str, Session]]:
    """Knowing a length or the scale better, instead of weighing more."""
    ruler = session.ruler
    for names, words in (
        (("wheelbase",), "the wheelbase"),
        (("track_front", "track_rear"), "the tracks"),
        (("radius_front", "radius_rear"), "the wheel-centre heights under load"),
    ):
        olds = [getattr(ruler, n) for n in names]
        if any(m.tolerance for m in olds):
            half = {n: Measured(m.value, m.tolerance / 2) for n, m in zip(names, olds, strict=True)}
            what = f"measure {words} to within {max(m.tolerance for m in olds) * 500:.2g} mm"
            yield what, replace(session, ruler=replace(ruler, **half))
    if session.floor:
        what = f"level the floor to within {np.degrees(session.floor) / 2:.2g} deg"
        yield what, replace(session, floor=session.floor / 2)
    if session.scale.accuracy:
        better = replace(session.scale, accuracy=session.scale.accuracy / 4)
        what = "check the scale with a known weight near the truck's, and note how far it is out"
        yield what, replace(session, scale=better)
    raised = [r for r in session.readings if r.raised and r.block.tolerance]
    if raised:
        finer = {r.block: Measured(r.block.value, r.block.tolerance / 2) for r in raised}
        some = tuple(replace(r, block=finer.get(r.block, r.block)) for r in session.readings)
        what = f"measure the block to within {raised[0].block.tolerance * 500:.2g} mm"
        yield what, replace(session, readings=some)
