"""What the page asks of a new part: the fields of each shape, materials, and lumps to take it from.

Fields, bounds and meanings are those of the file's own schema, so that the form can do what a file
can.
"""

from __future__ import annotations

import typing
from pathlib import Path
from typing import Any

from crossfall.app.folder import listing
from crossfall.truck import shapes
from crossfall.truck.glossary import MEANINGS, TABLES
from crossfall.truck.materials import MATERIALS
from crossfall.truck.schema import TruckSpec
from crossfall.truck.take_out import lumps

_KINDS = (
    shapes.Box, shapes.Cylinder, shapes.Ring, shapes.Plate, shapes.Rod, shapes.Tube, shapes.Sphere,
    shapes.Strip, shapes.Mesh,
)  # fmt: skip
_MESHES = (".stl", ".obj", ".ply")
_START = {
    "size_mm": (30, 20, 10),
    "length_mm": 30,
    "width_mm": 12,
    "thickness_mm": 3,
    "diameter_mm": 12,
    "outer_mm": 40,
    "inner_mm": 30,
    "around_mm": 50,
    "g_per_m": 72,
}
# Optional in the file because a link gives them otherwise; a new part of the page is no link.
_WANTED = ("length_mm",)


def part_form(spec: TruckSpec, folder: Path) -> dict[str, Any]:
    """folder: of the truck's file, where its meshes are looked for."""
    found = [*_MESHES, *(m.upper() for m in _MESHES)]
    return {
        "kinds": [_kind(model) for model in _KINDS],
        "materials": sorted({*MATERIALS, *spec.materials}),
        "meshes": [name for suffix in found for name in listing(folder, suffix)],
        "lumps": lumps(spec),
        "currency": spec.currency,
    }


def _kind(model: type[shapes.Strict]) -> dict[str, Any]:
    (name,) = typing.get_args(model.model_fields["kind"].annotation)
    words = next(words for title, _, words in TABLES if title == f"part.shape, kind {name}")
    fields = [_field(key, info) for key, info in model.model_fields.items() if key != "kind"]
    return {"kind": name, "words": words, "fields": fields}


def _field(key: str, info: Any) -> dict[str, Any]:
    choices = [c for c in typing.get_args(info.annotation) if isinstance(c, str)]
    start = _START.get(key)
    return {
        "key": key,
        "meaning": MEANINGS.get(key, ""),
        "many": 3 if key == "size_mm" else 1,
        "needed": info.is_required() or key in _WANTED,
        "choices": choices,
        "start": info.default if choices and info.default in choices else start,
    }
