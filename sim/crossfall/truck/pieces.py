"""One row of the parts list written out: weighed, counted, mirrored and put in its place.

Source: a part's own inertia R I R^T, and M R M for a mirror image, are derived here from the turn
of a tensor; uncertainties as below.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import product
from math import cos, radians, sin, sqrt

import numpy as np

from crossfall.truck import schema, shapes, solids
from crossfall.truck.materials import MATERIALS
from crossfall.truck.model import Array, Body, Carrier, Part, Shape, frozen
from crossfall.truck.solids import MM, Solid
from crossfall.truck.tolerances import of_parts

_G = 1e-3
_RECTANGULAR = 1 / sqrt(3)  # sd of "plus or minus a": JCGM 100:2008, 4.3.7
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
class Setting:
    """All that a row depends on beside itself, so that unchanged rows are worked out only once.

    origins: m, per carrier, where places on it count from. lift: m, of the chassis. density:
    kg/m^3 of its material. mass_tol: kg and mass_share, place_tol: m, where it gives none itself.
    """

    origins: tuple[tuple[float, float, float], ...]
    lift: float
    density: float
    mass_tol: float
    mass_share: float
    place_tol: float


def setting(part: schema.PartSpec, spec: schema.TruckSpec) -> Setting:
    """What a spec means for one of its rows."""
    mass_tol, mass_share, place_tol = of_parts(spec.tolerance)
    return Setting(
        origins=tuple(_origin(carrier, spec) for carrier in _CARRIERS[part.on]),
        lift=spec.chassis.raise_mm * MM if part.is_link else 0.0,
        density=density(part.material, spec),
        mass_tol=mass_tol * _G,
        mass_share=mass_share,
        place_tol=place_tol * MM,
    )


def density(name: str | None, spec: schema.TruckSpec) -> float:
    """kg/m^3 of a material; 0 for none, and for an unknown one, which is reported elsewhere.

    Raises nothing.
    """
    if name in spec.materials:
        return spec.materials[name].density_g_cm3 * 1000.0
    return MATERIALS[name].density if name in MATERIALS else 0.0


@lru_cache(maxsize=1024)
def pieces(
    part: schema.PartSpec, index: int, around: Setting, mesh: Solid | None = None
) -> tuple[Part, ...]:
    """Every piece of a row on all its carriers.

    index: the row's place in the list. mesh: the solid of a part whose shape is a mesh. Raises
    ValueError where a link has no length.

    Inertia kg m^2, places m, truck axes. Places are steps of step_mm apart.
    """
    solid, at, turn = _placed(part, around, mesh)
    mass = piece_mass(part, around.density, solid.volume)
    step = np.multiply(part.step_mm, MM)
    mass_sd, place_sd = uncertainty(part, mass, around)
    shapes = (solid.shape, _mirrored(solid.shape))
    bodies = [_turned(part, mass, solid, turn, mirrored) for mirrored in (False, True)]
    total = len(around.origins) * part.count * (1 + part.mirror)
    found: list[Part] = []
    for carrier, origin in zip(_CARRIERS[part.on], around.origins, strict=True):
        start = np.zeros(3) if part.is_link else np.array(origin)
        # A wheel's y points outboard, so that right-hand wheels carry the mirror image.
        sides = [carrier.endswith("right")] if part.on_wheel else [False, True][: 1 + part.mirror]
        for i, mirrored in product(range(part.count), sides):
            place = start + (at + i * step) * (_MIRROR if mirrored else 1.0)
            offset, inertia, axes = bodies[mirrored]
            found.append(
                Part(
                    label=f"{part.name} {len(found) + 1}" if total > 1 else part.name,
                    row=index,
                    carrier=carrier,
                    body=Body(mass, frozen(place + offset), inertia),
                    unsprung=_unsprung(part),
                    shape=shapes[mirrored],
                    centre=frozen(place),
                    turn=axes,
                    material=part.material or "",
                    price=part.price,
                    mass_sd=mass_sd,
                    place_sd=place_sd,
                    mirrored=mirrored,
                )
            )
    return tuple(found)


def piece_mass(part: schema.PartSpec, density: float, volume: float) -> float:
    """kg of one piece: as weighed, else by length, else volume (m^3) times density (kg/m^3).

    m = rho V. Raises nothing.
    """
    if part.mass_g is not None:
        return part.mass_g * _G
    if isinstance(part.shape, shapes.Strip) and part.shape.g_per_m is not None:
        return part.shape.g_per_m * _G * part.shape.length_mm * MM
    return density * volume


def uncertainty(
    part: schema.PartSpec, mass: float, around: Setting
) -> tuple[float, float | tuple[float, float, float]]:
    """Standard uncertainty of a piece's mass, kg, and its place, m: one for all axes or three.

    u = a / sqrt(3) for plus or minus a; mass: kg. Raises nothing.

    Source: JCGM 100:2008, 4.3.7 (from memory), for a rectangular distribution.
    """
    mass_tol = around.mass_tol + around.mass_share * mass
    if part.mass_tol_g is not None:
        mass_tol = part.mass_tol_g * _G
    place_tol = around.place_tol
    if part.place_tol_xyz_mm is not None:
        x, y, z = (v * MM * _RECTANGULAR for v in part.place_tol_xyz_mm)
        return mass_tol * _RECTANGULAR, (x, y, z)
    if part.place_tol_mm is not None:
        place_tol = part.place_tol_mm * MM
    return mass_tol * _RECTANGULAR, place_tol * _RECTANGULAR


@lru_cache(maxsize=1024)
def rotation(turn_deg: tuple[float, float, float]) -> Array:
    """(3, 3), a turn (deg) about the fixed x, then y, then z axis, as in URDF's rpy: Rz Ry Rx.

    Source: the URDF specification of rpy (read 2026, as quoted).
    """
    (sx, sy, sz), (cx, cy, cz) = ([f(radians(a)) for a in turn_deg] for f in (sin, cos))
    about_x = np.array([[1, 0, 0], [0, cx, -sx], [0, sx, cx]])
    about_y = np.array([[cy, 0, sy], [0, 1, 0], [-sy, 0, cy]])
    about_z = np.array([[cz, -sz, 0], [sz, cz, 0], [0, 0, 1]])
    return frozen(about_z @ about_y @ about_x)


def _placed(
    part: schema.PartSpec, around: Setting, mesh: Solid | None
) -> tuple[Solid, Array, Array]:
    """Solid, place (3,) m and turn (3, 3) of the first piece; a link's are in truck axes."""
    if part.is_link:
        return _link(part, around)
    at, turn = np.multiply(part.at_mm or (0.0, 0.0, 0.0), MM), rotation(part.turn_deg)
    if mesh is not None:
        return mesh, at, turn
    if part.shape is None:
        return solids.lump((part.mass_g or 0.0) * _G), at, turn
    return solids.solid(part.shape), at, turn


def _link(part: schema.PartSpec, around: Setting) -> tuple[Solid, Array, Array]:
    nowhere = (0.0, 0.0, 0.0)
    upper = np.multiply(part.chassis_end_mm or nowhere, MM) + np.array([0.0, 0.0, around.lift])
    lower = np.multiply(part.axle_end_mm or nowhere, MM) + around.origins[0]
    length = float(np.linalg.norm(lower - upper))
    if length == 0.0:
        raise ValueError("puts both ends of the link at the same place")
    if part.shape is None:
        solid = solids.tube(_BARE_LINK, 0.0, length, "z")
    else:
        solid = solids.solid(part.shape, length)
    # The solid lies along an axis of its own choice: bring that to z first.
    turn = rotation(part.turn_deg) @ _pointing(lower - upper) @ solid.axis.T
    return solid, (upper + lower) / 2, turn


def _pointing(direction: Array) -> Array:
    """(3, 3), a rotation that carries z onto a direction and keeps x as level as it can."""
    z = direction / np.linalg.norm(direction)
    other = np.array([0.0, 0.0, 1.0]) if abs(z[2]) < 0.9 else np.array([1.0, 0.0, 0.0])
    x = np.cross(other, z)
    x /= np.linalg.norm(x)
    return np.array([x, np.cross(z, x), z]).T


def _turned(
    part: schema.PartSpec, mass: float, solid: Solid, turn: Array, mirrored: bool
) -> tuple[Array, Array, Array]:
    """CG offset (3,), inertia (3, 3) and shape's axes (3, 3) in truck axes.

    The mirror image of a body at turn R is its mirrored shape at turn M R M, with M = diag(1, -1,
    1); plain shapes are their own mirror images.
    """
    own = mass * solid.gyration
    if part.inertia_kg_mm2 is not None:
        xx, yy, zz, xy, xz, yz = (*part.inertia_kg_mm2, 0.0, 0.0, 0.0)[:6]
        own = np.array([[xx, xy, xz], [xy, yy, yz], [xz, yz, zz]]) * MM**2
    offset = turn @ (solid.centre + np.multiply(part.cg_mm, MM))
    inertia, axes = turn @ own @ turn.T, turn @ solid.axis
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


def _origin(carrier: Carrier, spec: schema.TruckSpec) -> tuple[float, float, float]:
    """m, where places on a carrier count from."""
    if carrier == "chassis":
        return 0.0, 0.0, spec.chassis.raise_mm * MM
    front = carrier.startswith("front")
    end = spec.front if front else spec.rear
    x = spec.chassis.wheelbase_mm * MM / 2 * (1 if front else -1)
    side = {"left": 0.5, "right": -0.5}.get(carrier.split()[-1], 0.0)
    return x, end.track_mm * MM * side, end.tyre.radius_mm * MM


def _unsprung(part: schema.PartSpec) -> float:
    return part.unsprung if part.unsprung is not None else float(part.on != "chassis")
