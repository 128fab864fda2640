"""What the page needs to draw a truck: shapes and places, in mm and g, truck axes."""

from __future__ import annotations

from typing import Any

import numpy as np

from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import WHEELS, Array, Axle, Part, Shape, Truck
from crossfall.truck.schema import BatterySpec

_MAX_FACES = 4000  # of one mesh; beyond that the page draws its outline box


def scene(truck: Truck, battery: BatterySpec | None = None) -> dict[str, Any]:
    """The whole picture: axles, parts, CG, tip lines and the lines that bound where a gram helps.

    battery: of the truck's file, which says what part the drive pack is. Lengths in mm with one
    decimal of a hundredth, masses in g; turns as nine numbers, row by row.
    """
    body = whole(truck)
    return {
        "name": truck.name,
        "wheelbase_mm": mm(truck.wheelbase),
        "axles": [_axle(axle) for axle in truck.axles],
        "tip_points_mm": mm(rigid.tip_points(truck)),
        "wedge_mm": mm(rigid.wedge_lines(truck)),
        "cg_mm": mm(body.cg),
        "sprung_cg_mm": mm(truck.chassis.cg),
        "clearance_mm": None if truck.clearance is None else mm(_points(truck)),
        "pack": None if battery is None else battery.part,
        "parts": [_part(part) for part in truck.parts] or _bodies(truck),
    }


def mm(metres: float | Array) -> Any:
    """Metres as mm, rounded to a thousandth, in plain numbers."""
    return _rounded(np.asarray(metres).tolist())


def _rounded(value: Any) -> Any:
    return [_rounded(v) for v in value] if isinstance(value, list) else round(value * 1000, 3)


def _axle(axle: Axle) -> dict[str, Any]:
    return {
        "x_mm": mm(axle.x),
        "track_mm": mm(axle.track),
        "radius_mm": mm(axle.tyre.radius),
        "width_mm": mm(axle.tyre.width),
        "contact_half_width_mm": mm(axle.tyre.contact_half_width),
        "bump_mm": mm(axle.suspension.bump),
        "droop_mm": mm(axle.suspension.droop),
        "locked": axle.suspension.locked,
    }


def _part(part: Part) -> dict[str, Any]:
    return {
        "label": part.label,
        "row": part.row,
        "carrier": part.carrier,
        "mirrored": part.mirrored,
        "mass_g": round(part.body.mass * 1000, 3),
        "cg_mm": mm(part.body.cg),
        "centre_mm": mm(part.centre),
        "turn": [round(v, 6) for v in part.turn.ravel().tolist()],
        "shape": None if part.shape is None else _shape(part.shape),
    }


def _shape(shape: Shape) -> dict[str, Any]:
    if shape.kind != "mesh" or shape.vertices is None or shape.faces is None:
        return {"kind": shape.kind, "size_mm": mm(np.asarray(shape.size))}
    if len(shape.faces) > _MAX_FACES:
        low, high = shape.vertices.min(axis=0), shape.vertices.max(axis=0)
        return {"kind": "box", "size_mm": mm(high - low), "middle_mm": mm((low + high) / 2)}
    return {
        "kind": "mesh",
        "size_mm": [],
        "vertices_mm": mm(shape.vertices),
        "faces": shape.faces.tolist(),
    }


def _bodies(truck: Truck) -> list[dict[str, Any]]:
    """A truck without a parts list: its bodies, as blocks of about their size."""
    pieces = [("chassis", truck.chassis)]
    for name, axle in zip(("front axle", "rear axle"), truck.axles, strict=True):
        pieces.append((name, axle.body))
        pieces += [(f"{name.split()[0]} {side}", wheel) for side, wheel in _sides(axle)]
    drawn = []
    for carrier, body in pieces:
        turn, size = np.eye(3), _block_size(body.inertia / body.mass)
        shape = {"kind": "box", "size_mm": mm(size)}
        if carrier in WHEELS:
            axle = truck.front if carrier.startswith("front") else truck.rear
            turn = np.array([[1.0, 0, 0], [0, 0, 1], [0, -1, 0]])
            shape = {"kind": "cylinder", "size_mm": mm(np.array([axle.tyre.radius, 0.04]))}
        drawn.append(
            {
                "label": carrier,
                "row": -1,
                "carrier": carrier,
                "mirrored": False,
                "mass_g": round(body.mass * 1000, 3),
                "cg_mm": mm(body.cg),
                "centre_mm": mm(body.cg),
                "turn": turn.ravel().tolist(),
                "shape": shape,
            }
        )
    return drawn


def _sides(axle: Axle) -> Any:
    return zip(("left", "right"), axle.wheels, strict=True)


def _block_size(specific: Array) -> Array:
    """(3,) m, edges of the uniform block whose inertia per mass has this diagonal (m^2)."""
    x, y, z = np.diag(specific)
    squares = 6 * np.array([y + z - x, x + z - y, x + y - z])
    edges: Array = np.sqrt(np.maximum(squares, 1e-6))
    return edges


def _points(truck: Truck) -> Array:
    assert truck.clearance is not None
    c = truck.clearance
    return np.array([c.nose, c.belly, c.tail])
