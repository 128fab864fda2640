"""Every key of a truck file in words, with its unit, for people who write one."""

from __future__ import annotations

import types
import typing
from collections.abc import Iterator
from dataclasses import dataclass

from pydantic import BaseModel

from crossfall.truck import schema, shapes
from crossfall.truck.toleranced import ToleranceSpec, value_of

_UNITS = (
    ("_n_mm_per_deg", "N mm/deg"),
    ("_n_s_per_m", "N s/m"),
    ("_n_per_mm", "N/mm"),
    ("_g_cm3", "g/cm³"),
    ("_kg_mm2", "kg mm²"),
    ("_percent", "%"),
    ("_mah", "mAh"),
    ("_deg", "deg"),
    ("_mm", "mm"),
    ("_g", "g"),
    ("_a", "A"),
    ("g_per_m", "g/m"),
)
"""Ends of keys, the longest first."""

TABLES: tuple[tuple[str, type[BaseModel], str], ...] = (
    ("", schema.TruckSpec, "the file itself"),
    ("chassis", schema.ChassisSpec, "the truck as a whole"),
    ("front, rear", schema.AxleSpec, "each axle"),
    ("front.tyre, rear.tyre", schema.TyreSpec, "both tyres of an axle"),
    ("front.suspension", schema.FrontSuspensionSpec, "how the axle is sprung"),
    ("rear.suspension", schema.RearSuspensionSpec, "how the axle is sprung"),
    ("grip.NAME", schema.GripSpec, "friction coefficients of the tyres on one surface"),
    ("clearance", schema.ClearanceSpec, "points [x, z] of the chassis that hit the ground first"),
    ("battery", schema.BatterySpec, "the pack that runs the truck"),
    ("tolerance", ToleranceSpec, "plus or minus, for whatever gives none of its own"),
    ("materials.NAME", schema.MaterialSpec, "materials of your own"),
    ("part", schema.PartSpec, "one part, as [[part]]"),
    ("part.shape, kind box", shapes.Box, "a block, or with a wall a shell"),
    ("part.shape, kind plate", shapes.Plate, "a flat plate"),
    ("part.shape, kind rod", shapes.Rod, "a solid round rod"),
    ("part.shape, kind tube", shapes.Tube, "a round tube"),
    ("part.shape, kind cylinder", shapes.Cylinder, "a solid round body"),
    ("part.shape, kind ring", shapes.Ring, "a flat ring, round the wheel's axis"),
    ("part.shape, kind sphere", shapes.Sphere, "a ball"),
    ("part.shape, kind strip", shapes.Strip, "stick-on weight wound round a wheel"),
    ("part.shape, kind mesh", shapes.Mesh, "a surface from a file"),
)

MEANINGS = {
    "format": "always 1",
    "name": "what it is called",
    "note": "anything you like",
    "currency": "of prices, as EUR",
    "include": "other files that parts are taken from",
    "wheelbase_mm": "between the axles",
    "raise_mm": "lifts everything sprung, links' upper ends included",
    "steering_lock_deg": "how far the front wheels turn, for the turning circle",
    "final_drive": "motor turns per wheel turn, gearbox and axles; axle_ratio is held against it",
    "steer_deg": "how far the front wheels are turned as it stands, to the left",
    "kingpin_offset_mm": "from kingpin out to the tyre's middle; left out, 20 or track / 4",
    "held_by": "what holds the wheels: brakes, or the motor through shafts and differentials",
    "axle_ratio": "turns of the shaft to the axle for one of its wheels; left out, 3 is assumed",
    "differential": "between an axle's wheels: locked (or a spool), or open",
    "shaft_turns": "clockwise or anticlockwise, seen from behind as it drives forwards",
    "driven": "which axles are driven: both, front or rear",
    "track_mm": "between the tyres' centre planes",
    "radius_mm": "from axle centre to ground under load, half of a diameter at most",
    "width_mm": "across",
    "contact_half_width_mm": "from the tyre's middle out to where it tips over; 0 is the middle",
    "stiffness_n_per_mm": "of one tyre upwards; 1 kg that presses it in by 2 mm is 4.9",
    "lateral_n_per_mm": "of one tyre along the axle; left out, 0.6 of the vertical is assumed",
    "longitudinal_n_per_mm": "of one held tyre along the ground; left out, as the lateral one",
    "spring_n_per_mm": "at each corner, where the springs stand on the axle",
    "shock_n_per_mm": "along the shaft of each shock",
    "soft_n_per_mm": "of a soft spring stacked on each shock's own",
    "soft_travel_mm": "how far the soft spring gives until its coils or its adapter bind",
    "preload_mm": "how far the collar presses a shock's springs at full extension; the truck then "
    "stands where its springs hold it, not at the height of the file",
    "shock_length_mm": "eye to eye, fully extended and without limiters, instead of droop",
    "shaft_travel_mm": "of a shock from fully extended to its end, instead of bump",
    "droop_limiter_mm": "of spacers inside a shock, under its piston, that take droop",
    "bump_limiter_mm": "of clips or bump rubber on a shock's shaft that take bump",
    "spring_spacing_mm": "between left and right spring, where they push on the axle",
    "damping_n_s_per_m": "at each corner; no slow tilt asks for it",
    "roll_centre_mm": "above the ground, the point the body leans about over this axle",
    "bump_mm": "travel from standing to the upper stops, along the shaft with shock_n_per_mm",
    "droop_mm": "travel from standing to the lower stops: how far wheels hang when lifted, or "
    "along the shaft",
    "anti_roll_n_mm_per_deg": "of the bar, per degree the body leans over the axle; 0 without",
    "heave_lean_deg": "lean of the axle's way up and down, forwards as it compresses",
    "anti_dive_percent": "share of the drive or brake force the front links take",
    "anti_squat_percent": "share of the drive force the rear links take",
    "guided_by": "which counts where the file gives both: links or numbers",
    "locked": "true where the suspension cannot move",
    "low": "the least it may be",
    "likely": "what it mostly is",
    "high": "the most it may be",
    "nose_mm": "foremost low point",
    "belly_mm": "lowest point between the axles",
    "tail_mm": "rearmost low point",
    "part": "the pack's name in the parts list",
    "cells": "in series",
    "capacity_mah": "of the pack",
    "usable_percent": "of the capacity before it is empty",
    "draw_a": "mean current while driving on this pack",
    "draw_mass_g": "what the truck weighed at that current",
    "mass_percent": "of every part's mass",
    "mass_g": "of one piece; left out, it comes from shape and material",
    "place_mm": "of every part's place, on each axis",
    "tyre_percent": "of the vertical stiffness",
    "tyre_along_percent": "of a measured lateral or longitudinal stiffness",
    "spring_percent": "of the spring rate",
    "link_end_mm": "of a link's chassis end, up and down, and a shock's ends, outwards",
    "travel_mm": "of bump and droop",
    "anti_roll_percent": "of the anti-roll bar",
    "lean_percent": "points of anti-dive and anti-squat",
    "density_g_cm3": "of the material",
    "source": "where the number is from",
    "on": "what it sits on: chassis, front axle, every wheel, front link and so on",
    "count": "how many pieces, step_mm apart",
    "mirror": "true: each piece also stands on the other side",
    "step_mm": "[x, y, z] from one piece to the next",
    "material": "one of the table below, or of your own",
    "shape": "its form, for its own inertia, for mass by material, and for drawings",
    "at_mm": "[x, y, z] of its middle: on the chassis from mid-wheelbase on the ground, on an axle "
    "from the axle's centre, on a wheel from the wheel's centre with y outwards",
    "turn_deg": "turns about x, then y, then z",
    "chassis_end_mm": "a link's upper end, counted as parts of the chassis are",
    "axle_end_mm": "its other end, from the axle's centre",
    "unsprung": "share of a link that moves with the axle, mostly 0.5",
    "link": "what a link is: lower, upper, track bar, wishbone or shock",
    "cg_mm": "[x, y, z] of the mass centre from at_mm",
    "inertia_kg_mm2": "[ixx, iyy, izz] of its own, instead of the shape's",
    "price": "of one piece",
    "place_tol_xyz_mm": "the same along x, y and z apart",
    "place_tol_mm": "plus or minus of its place, on each axis",
    "remainder": "true for the one part that is what the scale leaves after all others",
    "detail": "the scale detail it counts as in a class",
    "kind": "which shape it is",
    "size_mm": "[x, y, z] edges",
    "wall_mm": "wall of a hollow one",
    "length_mm": "along; a link's may be left out",
    "thickness_mm": "along its own z, or of the strip",
    "diameter_mm": "across",
    "outer_mm": "outer diameter",
    "inner_mm": "inner diameter",
    "along": "which way it lies: x, y or z",
    "around_mm": "diameter it is wound on",
    "g_per_m": "mass by length",
    "file": "STL, OBJ or PLY beside the truck file",
    "unit": "of the mesh: mm, cm, m or inch",
}
"""By key; what a key means in two tables is said so that it holds in both."""

_TABLES = {"chassis", "front", "rear", "tyre", "suspension", "grip", "clearance", "battery",
           "tolerance", "materials"}  # fmt: skip


@dataclass(frozen=True)
class _Entry:
    """One key. table: where it stands. needed: the file cannot do without it where its table is."""

    table: str
    key: str
    unit: str
    meaning: str
    needed: bool


def entries() -> Iterator[_Entry]:
    """Every key, table by table, in the file's order."""
    for table, model, _ in TABLES:
        for key, field in model.model_fields.items():
            if (key in _TABLES and _is_model(field.annotation)) or (table == "" and key == "part"):
                continue
            yield _Entry(table, key, unit(key), meaning(key), field.is_required())


def unit(key: str) -> str:
    """A key's unit, empty where it has none."""
    return next((words for end, words in _UNITS if key.endswith(end)), "")


def meaning(key: str) -> str:
    """In words; of a tolerance, what it belongs to. Empty where nobody wrote any."""
    if key in MEANINGS:
        return MEANINGS[key]
    return f"plus or minus of {value_of(key)}, as a limit" if "_tol_" in key else ""


def _is_model(kind: object) -> bool:
    """Whether a key is a table of its own, or a table of such."""
    if isinstance(kind, type):
        return issubclass(kind, BaseModel)
    if typing.get_origin(kind) in (typing.Union, types.UnionType, dict):
        return any(_is_model(a) for a in typing.get_args(kind))
    return False
