"""A truck's seven bodies from its placed parts, and quick changes that need no file.

Used both when a truck is first built and by sweeps that move or reweigh its parts.

Source: sums and the parallel-axis theorem (Huygens-Steiner), as in `truck.massprops`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

import numpy as np

from crossfall.truck.massprops import steiner
from crossfall.truck.model import WHEELS, Array, Axle, Body, Part, Truck, frozen

BODIES = ("chassis", "front axle", "rear axle", *WHEELS)
_MIRROR = np.array([1.0, -1.0, 1.0])
_STAYS = np.zeros(3)
_ROW = {name: i for i, name in enumerate(BODIES)}


def shares(parts: Sequence[Part]) -> Array:
    """(7, n) fraction of each part's mass on each of BODIES; a link is on two of them.

    Raises KeyError for a carrier that is none of BODIES.
    """
    weights = np.zeros((len(BODIES), len(parts)))
    for j, part in enumerate(parts):
        weights[_ROW[part.carrier], j] = part.unsprung
        weights[0, j] += 1.0 - part.unsprung if part.carrier != "chassis" else 1.0
    return weights


def bodies(parts: Sequence[Part]) -> tuple[Body, ...]:
    """The seven bodies of BODIES; one that carries nothing has no mass and lies at the origin.

    M = sum w m, c = sum w m c_i / M, I = sum w (I_i + m (d.d I - d d^T)), w of `shares`; SI. Raises
    as that does.
    """
    weights = shares(parts)
    mass = np.array([p.body.mass for p in parts])
    cg = np.array([p.body.cg for p in parts])
    own = np.array([p.body.inertia for p in parts])
    shared = weights * mass
    total = shared.sum(axis=1)
    safe = np.where(total > 0, total, 1.0)
    centre = shared @ cg / safe[:, None]
    # Each part's inertia is moved to its body's centre; a body with one part keeps it unchanged.
    offset = cg[None] - centre[:, None]
    inertia = np.einsum("bn,nij->bij", weights, own) + steiner(shared, offset).sum(axis=1)
    inertia = np.where(total[:, None, None] > 0, inertia, 0.0)
    return tuple(
        Body(float(m), frozen(c), frozen(i)) for m, c, i in zip(total, centre, inertia, strict=True)
    )


def reassemble(truck: Truck, parts: Sequence[Part]) -> Truck:
    """The same truck carrying these parts instead of its own.

    Raises as `shares` does.
    """
    chassis, front, rear, fl, fr, rl, rr = bodies(parts)
    return replace(
        truck,
        chassis=chassis,
        front=replace(truck.front, body=front, wheels=(fl, fr)),
        rear=replace(truck.rear, body=rear, wheels=(rl, rr)),
        parts=tuple(parts),
    )


def with_errors(truck: Truck, masses: Mapping[int, float], shifts: Mapping[int, Array]) -> Truck:
    """The truck with every piece of a row weighing something else, kg, its inertia with it, and
    with rows moved by (3,) m; mirrored pieces move the other way across. masses, shifts: by row.
    """

    def off(part: Part) -> Part:
        body = part.body
        mass = masses.get(part.row, body.mass)
        by = shifts.get(part.row, _STAYS) * (_MIRROR if part.mirrored else 1.0)
        moved = Body(mass, frozen(body.cg + by), frozen(body.inertia * (mass / body.mass)))
        return replace(part, body=moved, centre=frozen(part.centre + by))

    known = masses.keys() | shifts.keys()
    return reassemble(truck, [off(p) if p.row in known else p for p in truck.parts])


def with_weight_shifted(truck: Truck, end: str, row: int, by: float) -> Truck:
    """The truck with `by` kg more on an axle (front or rear) and its wheels, and as much less in a
    part row; mass and CG of the whole stay. Masses there grow in proportion.

    m' = m (1 + by / sum m) there; the row loses mass and first moment alike. Raises ValueError
    where the row is not one piece, ZeroDivisionError where nothing is on that end.
    """
    on = [j for j, p in enumerate(truck.parts) if p.carrier.startswith(end) and p.unsprung == 1]
    share = by / sum(truck.parts[j].body.mass for j in on)
    parts, moment = list(truck.parts), np.zeros(3)
    for j in on:
        body = parts[j].body
        moment += share * body.mass * body.cg
        grown = Body(body.mass * (1 + share), body.cg, frozen(body.inertia * (1 + share)))
        parts[j] = replace(parts[j], body=grown)
    (k,) = [j for j, p in enumerate(parts) if p.row == row]
    body = parts[k].body
    left = body.mass - by
    cg = (body.mass * body.cg - moment) / left
    less = Body(left, frozen(cg), frozen(body.inertia * (left / body.mass)))
    parts[k] = replace(parts[k], body=less, centre=frozen(parts[k].centre + cg - body.cg))
    return reassemble(truck, parts)


def with_carriers_moved(truck: Truck, by: Mapping[str, Array]) -> Truck:
    """The truck with all that is on some of BODIES moved by (3,) m.

    A link's middle follows its axle's end by half; its turn and length are kept, which is of
    second order.

    Raises numpy's ValueError where a shift does not fit (3,).
    """
    if not truck.parts:  # a truck made by hand
        return _with_bodies_moved(truck, by)
    parts = [
        _shifted(p, by[p.carrier] / (2 if 0 < p.unsprung < 1 else 1)) if p.carrier in by else p
        for p in truck.parts
    ]
    return reassemble(truck, parts)


def with_parts_moved(truck: Truck, by: Callable[[Part], Array]) -> Truck:
    """The truck with each of its parts moved by (3,) m.

    Raises what `by` raises.
    """
    return reassemble(truck, [_shifted(p, by(p)) for p in truck.parts])


def _with_bodies_moved(truck: Truck, by: Mapping[str, Array]) -> Truck:
    def moved(body: Body, name: str) -> Body:
        return replace(body, cg=frozen(body.cg + by[name])) if name in by else body

    def axle(name: str, old: Axle) -> Axle:
        left, right = (
            moved(w, f"{name} {side}")
            for w, side in zip(old.wheels, ("left", "right"), strict=True)
        )
        return replace(old, body=moved(old.body, f"{name} axle"), wheels=(left, right))

    return replace(
        truck,
        chassis=moved(truck.chassis, "chassis"),
        front=axle("front", truck.front),
        rear=axle("rear", truck.rear),
    )


def _shifted(part: Part, by: Array) -> Part:
    body = replace(part.body, cg=frozen(part.body.cg + by))
    return replace(part, body=body, centre=frozen(part.centre + by))
