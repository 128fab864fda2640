"""The suspension as the page shows it: numbers and curves as `crossfall suspension` has them, and
where links, shocks and roll centres are drawn."""

from __future__ import annotations

from math import copysign, radians
from typing import Any

from crossfall.answers.conditions import conditions
from crossfall.app.answers import without_nan
from crossfall.app.scene import mm
from crossfall.truck.build import Loaded
from crossfall.truck.model import Axle, Truck
from crossfall.tuning.suspension import AXES, BY, SLOPE_HEADINGS, look, moved_ends
from crossfall.tuning.suspension_record import axle_record, move_record

_ENDS = ("chassis", "axle")


def suspension(truck: Truck) -> dict[str, Any]:
    """Both axles, front first; linked: whether links or shocks count. Rods in mm, truck axes."""
    return {
        "linked": any(a.suspension.links or a.suspension.shocks for a in truck.axles),
        "axles": [
            {**without_nan(axle_record(one)), "rods": _rods(axle), "x_mm": mm(axle.x)}
            for one, axle in zip(look(truck), truck.axles, strict=True)
        ],
    }


def _rods(axle: Axle) -> list[dict[str, Any]]:
    """Every link and shock that counts: its name, and its chassis and axle end."""
    s, middle = axle.suspension, [axle.x, 0.0, axle.tyre.radius]
    found = []
    if s.links is not None:
        ends = zip(s.links.names, s.links.chassis, s.links.axle, strict=True)
        found += [(name, False, upper, lower) for name, upper, lower in ends]
    if s.shocks is not None:
        found += [
            ("shock", True, upper, lower)
            for upper, lower in zip(s.shocks.chassis, s.shocks.axle, strict=True)
        ]
    return [
        {
            "name": name,
            "shock": shock,
            "chassis_mm": mm(upper + middle),
            "axle_mm": mm(lower + middle),
        }
        for name, shock, upper, lower in found
    ]


def suspension_moves(loaded: Loaded, surface: str | None) -> dict[str, Any]:
    """What each link end moved by 5 mm does, with the edit that does it; some seconds."""
    asked = conditions(loaded.truck, [radians(h) for h in SLOPE_HEADINGS], surface)
    ends = {(p.name, end): getattr(p, f"{end}_end_mm") for p in loaded.spec.part for end in _ENDS}
    moves = []
    for one in moved_ends(loaded, asked):
        i = AXES.index(one.axis)
        was = ends[one.part, one.end][i]
        by = copysign(BY, was) if one.axis == "outwards" else BY
        edit = {"do": "set", "part": one.part, "key": f"{one.end}_end_mm.{'xyz'[i]}"}
        moves.append({**without_nan(move_record(one)), "edit": {**edit, "value": was + by * 1e3}})
    return {"surface": asked[0].grip.surface, "moved_by_mm": BY * 1e3, "moves": moves}
