"""One row of the parts list written out: weighed, counted, mirrored and put in its place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache
from math import cos, radians, sin, sqrt

import numpy as np

from crossfall.truck import schema, solids
from crossfall.truck.materials import MATERIALS
from crossfall.truck.model import Array, Body, Carrier, Part, Shape, frozen
from crossfall.truck.solids import MM, Solid

G = 1e-3
RECTANGULAR = 1 / sqrt(3)  # sd of "plus or minus a": JCGM 100:2008, 4.3.7
_MIRROR = np.array([1.0, -1.0, 1.0])
_BARE_LINK = 2e-3  # m, radius of the rod that stands for a link without a shape
_WHEELS: tuple[Carrier, ...] = ("front left", "front right", "rear left", "rear right")
_CARRIERS: dict[str, tuple[Carrier, ...]] = {
    "chassis": ("chassis",),
    "front axle": ("front axle",),
    "rear axle": ("rear axle",),
    "each axle": ("front axle", "rear axle"),
    **{wheel: (wheel,) for wheel in _WHEELS},
    "each front wheel": _WHEELS[:2],
    "each rear wheel": _WHEELS[2:],
    "every wheel": _WHEELS,
    "front link": ("front axle",),
    "rear link": ("rear axle",),
}


@dataclass(frozen=True)
class Row:
    """One piece of a row in its own axes, before it is placed.

    mass: kg. cg: (3,) m from the place. inertia: (3, 3) kg m^2 about the CG.
    """

    mass: float
    solid: Solid
    cg: Array
    inertia: Array


def row(part: schema.PartSpec, spec: schema.TruckSpec, mesh: Callable[[schema.Mesh], Solid]) -> Row:
    """Mass properties of one piece. mesh: how a mesh shape becomes a solid.

    Raises ValueError where a link has no length.
    """
    solid = _solid(part, spec, mesh)
    mass = piece_mass(part, spec, solid.volume)
    inertia = mass * solid.gyration
    if part.inertia_kg_mm2 is not None:
        xx, yy, zz, xy, xz, yz = (*part.inertia_kg_mm2, 0.0, 0.0, 0.0)[:6]
        inertia = np.array([[xx, xy, xz], [xy, yy, yz], [xz, yz, zz]]) * MM**2
    return Row(mass, solid, solid.centre + np.multiply(part.cg_mm, MM), inertia)


def piece_mass(part: schema.PartSpec, spec: schema.TruckSpec, volume: float) -> float:
    """kg of one piece: as weighed, else by length, else volume (m^3) times density."""
    if part.mass_g is not None:
        return part.mass_g * G
    if isinstance(part.shape, schema.Strip) and part.shape.g_per_m is not None:
        return part.shape.g_per_m * G * part.shape.length_mm * MM
    name = part.material or ""
    if name in spec.materials:
        return spec.materials[name].density_g_cm3 * 1000.0 * volume
    # An unknown material is reported elsewhere, with its line; here it just weighs nothing.
    return MATERIALS[name].density * volume if name in MATERIALS else 0.0


def pieces(part: schema.PartSpec, index: int, own: Row, spec: schema.TruckSpec) -> list[Part]:
    """Every piece of a row on all its carriers. index: the row's place in the list."""
    at, turn = _frame(part, own.solid, spec)
    step = np.multiply(part.step_mm, MM)
    mass_sd, place_sd = uncertainty(part, own.mass, spec)
    shape, image = own.solid.shape, None
    if part.mirror or part.on_wheel:
        image = _mirrored(shape)
    bodies = [_turned(own, turn, mirrored=False), _turned(own, turn, mirrored=True)]
    found: list[Part] = []
    for carrier in _CARRIERS[part.on]:
        origin = _origin(carrier, part.is_link, spec)
        # A wheel's y points outboard, so that right-hand wheels carry the mirror image.
        sides = [carrier.endswith("right")] if part.on_wheel else [False, True][: 1 + part.mirror]
        for i in range(part.count):
            for mirrored in sides:
                place = origin + (at + i * step) * (_MIRROR if mirrored else 1.0)
                offset, inertia, axes = bodies[mirrored]
                found.append(
                    Part(
                        label=part.name,
                        row=index,
                        carrier=carrier,
                        body=Body(own.mass, frozen(place + offset), inertia),
                        unsprung=_unsprung(part),
                        shape=image if mirrored else shape,
                        centre=frozen(place),
                        turn=axes,
                        material=part.material or "",
                        price=part.price,
                        mass_sd=mass_sd,
                        place_sd=place_sd,
                        mirrored=mirrored,
                    )
                )
    if len(found) > 1:
        found = [replace(p, label=f"{p.label} {i}") for i, p in enumerate(found, 1)]
    return found


def uncertainty(part: schema.PartSpec, mass: float, spec: schema.TruckSpec) -> tuple[float, float]:
    """Standard uncertainty of a piece's mass, kg, and of its place on each axis, m."""
    default = spec.tolerance or schema.ToleranceSpec()
    mass_tol = default.mass_g * G + default.mass_percent / 100 * mass
    if part.mass_tol_g is not None:
        mass_tol = part.mass_tol_g * G
    place_tol = part.place_tol_mm if part.place_tol_mm is not None else default.place_mm
    return mass_tol * RECTANGULAR, place_tol * MM * RECTANGULAR


def link_ends(part: schema.PartSpec, spec: schema.TruckSpec) -> tuple[Array, Array]:
    """(3,) m, a link's chassis end and axle end in truck axes."""
    lift = np.array([0.0, 0.0, spec.chassis.raise_mm])
    upper = (np.array(part.chassis_end_mm) + lift) * MM
    axle = _origin(_CARRIERS[part.on][0], False, spec)
    return upper, axle + np.multiply(part.axle_end_mm or (0.0, 0.0, 0.0), MM)


def rotation(turn_deg: tuple[float, float, float]) -> Array:
    """(3, 3), a turn about the fixed x, then y, then z axis, as in URDF's rpy."""
    (sx, sy, sz), (cx, cy, cz) = ([f(radians(a)) for a in turn_deg] for f in (sin, cos))
    about_x = np.array([[1, 0, 0], [0, cx, -sx], [0, sx, cx]])
    about_y = np.array([[cy, 0, sy], [0, 1, 0], [-sy, 0, cy]])
    about_z = np.array([[cz, -sz, 0], [sz, cz, 0], [0, 0, 1]])
    turn: Array = about_z @ about_y @ about_x
    return turn


def _solid(
    part: schema.PartSpec, spec: schema.TruckSpec, mesh: Callable[[schema.Mesh], Solid]
) -> Solid:
    if part.is_link:
        upper, lower = link_ends(part, spec)
        length = float(np.linalg.norm(lower - upper))
        if length == 0.0:
            raise ValueError("both ends of the link are at the same place")
        if part.shape is None:
            return solids.tube(_BARE_LINK, 0.0, length, "z")
        return solids.solid(part.shape, length)
    if isinstance(part.shape, schema.Mesh):
        return mesh(part.shape)
    if part.shape is None:
        return solids.lump((part.mass_g or 0.0) * G)
    return solids.solid(part.shape)


def _frame(part: schema.PartSpec, solid: Solid, spec: schema.TruckSpec) -> tuple[Array, Array]:
    """Place (3,) m from the carrier's origin and turn (3, 3) of the first piece."""
    if not part.is_link:
        return np.multiply(part.at_mm or (0.0, 0.0, 0.0), MM), _rotation(part.turn_deg)
    upper, lower = link_ends(part, spec)
    return (upper + lower) / 2, _rotation(part.turn_deg) @ _pointing(lower - upper) @ solid.axis.T


def _pointing(direction: Array) -> Array:
    """(3, 3), a rotation that carries z onto a direction and keeps x as level as it can."""
    z = direction / np.linalg.norm(direction)
    helper = np.array([0.0, 0.0, 1.0]) if abs(z[2]) < 0.9 else np.array([1.0, 0.0, 0.0])
    x = np.cross(helper, z)
    x /= np.linalg.norm(x)
    return np.column_stack([x, np.cross(z, x), z])


def _turned(own: Row, turn: Array, mirrored: bool) -> tuple[Array, Array, Array]:
    """CG offset (3,), inertia (3, 3) and shape's axes (3, 3) in truck axes.

    The mirror image of a body at turn R is its mirrored shape at turn M R M, with M = diag(1, -1,
    1); plain shapes are their own mirror images.
    """
    offset, inertia, axes = turn @ own.cg, turn @ own.inertia @ turn.T, turn @ own.solid.axis
    if mirrored:
        flip = _MIRROR[:, None] * _MIRROR
        offset, inertia, axes = offset * _MIRROR, inertia * flip, axes * flip
    return offset, frozen((inertia + inertia.T) / 2), frozen(axes)


def _mirrored(shape: Shape) -> Shape:
    if shape.vertices is None or shape.faces is None:
        return shape
    faces = shape.faces[:, ::-1].copy()
    faces.flags.writeable = False
    return replace(shape, vertices=frozen(shape.vertices * _MIRROR), faces=faces)


def _origin(carrier: Carrier, is_link: bool, spec: schema.TruckSpec) -> Array:
    """(3,) m, where places on a carrier count from."""
    if is_link:  # its ends are in truck axes already
        return np.zeros(3)
    if carrier == "chassis":
        return np.array([0.0, 0.0, spec.chassis.raise_mm * MM])
    front = carrier.startswith("front")
    end = spec.front if front else spec.rear
    x = spec.chassis.wheelbase_mm / 2 * (1 if front else -1)
    y = {"left": end.track_mm / 2, "right": -end.track_mm / 2}.get(carrier.split()[-1], 0.0)
    return np.array([x, y, end.tyre.radius_mm]) * MM


def _unsprung(part: schema.PartSpec) -> float:
    return part.unsprung if part.unsprung is not None else float(part.on != "chassis")


_rotation = lru_cache(maxsize=1024)(rotation)
