"""Solids seen from one side: outlines in the plane of the page, far ones first."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

import numpy as np

from crossfall.truck.model import WHEELS, Array, Axle, Part, Shape, Truck, frozen

_ROUND = 48  # corners of a drawn circle: the sagitta of a 60 mm tyre is 0.13 mm
RIM = 0.58  # drawn rim radius over tyre radius, where the file gives no wheel to draw
_Point = tuple[float, float]


@dataclass(frozen=True)
class View:
    """A direction of sight. right, up: (3,) unit vectors of the page in truck axes."""

    name: str
    right: Array
    up: Array

    @property
    def toward(self) -> Array:
        """(3,) unit vector towards the viewer."""
        return np.cross(self.right, self.up)

    def flat(self, points: Array) -> Array:
        """(n, 2) m on the page of points (n, 3) m."""
        flat: Array = np.asarray(points, dtype=np.float64) @ np.stack(
            [self.right, self.up], axis=-1
        )
        return flat


SIDE = View("side", frozen((1, 0, 0)), frozen((0, 0, 1)))  # from the right, nose to the right
REAR = View("rear", frozen((0, -1, 0)), frozen((0, 0, 1)))  # from behind, left is left
PLAN = View("plan", frozen((1, 0, 0)), frozen((0, 1, 0)))  # from above, nose to the right
PLAN_NOSE_UP = View("plan", frozen((0, -1, 0)), frozen((1, 0, 0)))


@dataclass(frozen=True)
class Patch:
    """A filled outline. points: (n, 2) m, counter-clockwise. shade: 0 dark to 1 light.

    hole: (k, 2) m cut out of it, or None.
    """

    points: Array
    shade: float
    hole: Array | None = None


@dataclass(frozen=True)
class PlacedShape:
    """A shape in its place. centre (3,) m, turn (3, 3), truck axes. role: what carries it."""

    shape: Shape
    centre: Array
    turn: Array
    role: str
    part: Part | None = None

    def moved(self, turn: Array, shift: Array) -> PlacedShape:
        """The same solid carried along by a rigid motion x -> turn x + shift."""
        return PlacedShape(
            self.shape, turn @ self.centre + shift, turn @ self.turn, self.role, self.part
        )


def hull(points: Array) -> Array:
    """(k, 2) convex outline of points (n, 2), counter-clockwise.

    Andrew's monotone chain; points within 1 um count as one.
    """
    rows = sorted({(x, y) for x, y in np.round(points, 6).tolist()})
    if len(rows) < 3:
        return np.array(rows)

    def chain(order: Iterable[_Point]) -> list[_Point]:
        out: list[_Point] = []
        for p in order:
            while len(out) > 1 and _turn(out[-2], out[-1], p) <= 0:
                out.pop()
            out.append(p)
        return out[:-1]

    return np.array(chain(rows) + chain(reversed(rows)))


def _turn(a: _Point, b: _Point, c: _Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def area(points: Array) -> float:
    """m^2 inside an outline (n, 2) m."""
    x, y = np.asarray(points).T
    return float(abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2)


def _circle(radius: float, height: float) -> Array:
    """(ROUND, 3) m about the z axis."""
    t = np.linspace(0, 2 * np.pi, _ROUND, endpoint=False)
    return np.column_stack([radius * np.cos(t), radius * np.sin(t), np.full(_ROUND, height)])


def patches(solid: PlacedShape, view: View) -> list[Patch]:
    """What is seen of a solid, in the order to paint it."""
    return _SEEN[solid.shape.kind](solid, view)


def outline(solid: PlacedShape, view: View) -> Array:
    """(n, 2) m convex silhouette of a solid."""
    return hull(view.flat(_placed(solid, _corners(solid.shape))))


def _placed(solid: PlacedShape, points: Array) -> Array:
    return points @ solid.turn.T + solid.centre


def _corners(shape: Shape) -> Array:
    """(n, 3) m, points whose convex hull is the shape's, in its own axes."""
    if shape.kind == "mesh":
        return np.asarray(shape.vertices)
    if shape.kind == "box":
        x, y, z = np.array(shape.size) / 2
        return np.array([(a * x, b * y, c * z) for a in (-1, 1) for b in (-1, 1) for c in (-1, 1)])
    if shape.kind == "sphere":
        r = shape.size[0]
        return np.concatenate([_circle(r * np.cos(t), r * np.sin(t)) for t in _LATITUDES])
    radius, length = shape.size[0], shape.size[-1]
    return np.concatenate([_circle(radius, -length / 2), _circle(radius, length / 2)])


_LATITUDES = np.linspace(-np.pi / 2, np.pi / 2, 25)


def _light(normal: Array, view: View) -> float:
    """0 to 1: light falls over the viewer's left shoulder, from above."""
    sun = -0.35 * view.right + 0.75 * view.up + 0.75 * view.toward
    return float(np.clip(0.5 + 0.45 * np.dot(normal, sun) / np.linalg.norm(sun), 0, 1))


def _box(solid: PlacedShape, view: View) -> list[Patch]:
    half = np.array(solid.shape.size) / 2
    seen = []
    for axis in range(3):
        for sign in (-1.0, 1.0):
            normal = sign * solid.turn[:, axis]
            if normal @ view.toward < 1e-6:
                continue
            others = [i for i in range(3) if i != axis]
            face = np.zeros((4, 3))
            face[:, axis] = sign * half[axis]
            for i, signs in zip(others, ((-1, 1, 1, -1), (-1, -1, 1, 1)), strict=True):
                face[:, i] = half[i] * np.array(signs)
            seen.append(Patch(hull(view.flat(_placed(solid, face))), _light(normal, view)))
    return [p for p in seen if len(p.points) > 2]


def _round(solid: PlacedShape, view: View) -> list[Patch]:
    radius, length = solid.shape.size[0], solid.shape.size[-1]
    axis = solid.turn[:, 2]
    towards = float(axis @ view.toward)
    near = length / 2 if towards >= 0 else -length / 2
    cap = hull(view.flat(_placed(solid, _circle(radius, near))))
    hole = None
    if solid.shape.kind == "tube":
        hole = hull(view.flat(_placed(solid, _circle(solid.shape.size[1], near))))
    if abs(towards) > 0.999:  # end on: a bore that one can look through
        return [Patch(cap, _light(np.sign(towards) * axis, view), hole)]
    side = [Patch(outline(solid, view), _light(view.toward, view))]
    if abs(towards) > 0.02 and len(cap) > 2:
        side.append(Patch(cap, _light(np.sign(towards) * axis, view), hole))
    return side


def _lump(solid: PlacedShape, view: View) -> list[Patch]:
    return [Patch(outline(solid, view), _light(view.toward, view))]


_SEEN: dict[str, Callable[[PlacedShape, View], list[Patch]]] = {
    "box": _box,
    "cylinder": _round,
    "tube": _round,
    "sphere": _lump,
    "mesh": _lump,
}


def solids(truck: Truck) -> list[PlacedShape]:
    """Every part with a shape, and plain tyres for wheels that have none in the file."""
    made = [PlacedShape(p.shape, p.centre, p.turn, role(p), p) for p in truck.parts if p.shape]
    tread = {c for c in WHEELS if _has_tyre(truck, c)}
    for i, axle in enumerate(truck.axles):
        for j, wheel in enumerate(WHEELS[2 * i : 2 * i + 2]):
            if wheel not in tread:
                made.append(tyre(axle, j, wheel))
    return made


def tyre(axle: Axle, side: int, wheel: str) -> PlacedShape:
    """A plain tyre to draw, left (0) or right (1)."""
    r = axle.tyre.radius
    centre = np.array([axle.x, (0.5 - side) * axle.track, r])
    shape = Shape("tube", (r, RIM * r, axle.tyre.width))
    return PlacedShape(shape, centre, np.array([[1.0, 0, 0], [0, 0, 1], [0, -1, 0]]), wheel)


def role(part: Part) -> str:
    """chassis, link (shared with an axle), front axle, rear axle, or the wheel's name."""
    return "link" if 0 < part.unsprung < 1 else part.carrier


def _has_tyre(truck: Truck, wheel: str) -> bool:
    """Whether the file's own parts fill the wheel out to nine tenths of its radius."""
    radius = truck.axles[WHEELS.index(wheel) // 2].tyre.radius
    return any(
        p.carrier == wheel and p.shape is not None and np.max(_corners(p.shape)) > 0.9 * radius
        for p in truck.parts
    )


def painted(truck_solids: Iterable[PlacedShape], view: View) -> list[PlacedShape]:
    """Far to near; equal depths keep their order."""
    return sorted(truck_solids, key=lambda s: float(s.centre @ view.toward))
