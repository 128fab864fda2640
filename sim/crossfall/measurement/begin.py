"""A truck file of a few lumps that gives every reading back.

The readings fix the sums: mass, CG, and each axle's couple across. Weighed parts stand as they are;
an axle and a wheel are lumps of their own; the rest of the truck is one lump of the chassis, whose
mass and place make the sums come out. Its tolerance is the sums' uncertainty, so the file is as
sure of mass and CG as scale and ruler are, whatever the split.

Source: derived here from sums of mass and of mass times place; the couples' split is the least of
sum((y / sd)^2) under two equations, S A^T (A S A^T)^-1 b, by Lagrange multipliers.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import sqrt
from typing import Any

import numpy as np
from pydantic import ValidationError

from crossfall.measurement import typical
from crossfall.measurement.readings import Readings
from crossfall.measurement.setup import Filled, Setup, setup
from crossfall.measurement.sums import Sums, sums
from crossfall.truck import pieces as placing
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import ENDS, GRAVITY, WHEELS, Array, Part
from crossfall.truck.schema import TruckSpec
from crossfall.truck.sentences import problems

_MM = _G = 1e-3
_RECTANGULAR = 1 / sqrt(3)
REST = "chassis and drive"
AXLES = ("front axle", "rear axle")
_HIGHEST = 0.7  # of the wheelbase, a CG no truck that stands has
_STEEPEST = 0.5  # block over wheelbase
LOWEST_BLOCK = 15.0  # mm
FURTHEST_SIDE = 0.3  # of the track, an axle's mass centre beside its middle
_DECIMALS = 4


@dataclass(frozen=True)
class PartLump:
    """A part of the new file: its entries, what it is, and how it came about."""

    entries: Mapping[str, Any]
    how: str


@dataclass(frozen=True)
class Beginning:
    """setup and sums: what the readings say. lumps: in the file's order."""

    readings: Readings
    setup: Setup
    sums: Sums
    lumps: tuple[PartLump, ...]

    @property
    def data(self) -> dict[str, Any]:
        """The truck file's values."""
        return truck_data(self.readings, self.setup, [dict(one.entries) for one in self.lumps])


def begin(readings: Readings) -> Beginning:
    """The truck of these readings. mm and g in, SI in its sums.

    What is left for the chassis has mass M - sum(m) and stands at (M c - sum(m c_i)) / (M -
    sum(m)). Raises InputError where the readings make no truck, with the reading to look at.
    """
    if found := _mistakes(readings):
        raise InputError(found)
    made = setup(readings)
    known = [_wheel(readings, made), *_axles(made), *_weighed(readings)]
    total = _sums(readings, made)
    height = total.cg[2] / _MM
    if not 0.9 * made.ends[0].tyre["radius"].value < height < _HIGHEST * readings.wheelbase_mm:
        what = f"puts the CG {height:.0f} mm above the ground"
        allowed = "no such truck: look at raised_g, block_mm, and whether both wheels were on"
        raise InputError(Problem("readings", what, allowed, "raised_g"))
    return Beginning(readings, made, total, tuple(_closed(readings, made, total, known)))


def _mistakes(r: Readings) -> list[Problem]:
    """What cannot be, a problem each at the reading to look at."""
    found = []

    def bad(key: str, what: str, allowed: str) -> None:
        found.append(Problem("readings", what, allowed, key))

    if not LOWEST_BLOCK <= r.block_mm <= _STEEPEST * r.wheelbase_mm:
        bad(
            "block_mm",
            f"is {r.block_mm:g}",
            f"{LOWEST_BLOCK:g} to {_STEEPEST * r.wheelbase_mm:.0f}",
        )
    total = sum(r.corners_g)
    if r.raised_g >= total:
        bad("raised_g", f"is {r.raised_g:g}, all of the truck", f"less than {total:g}")
    if r.wheelbase_mm <= r.tyre_diameter_mm:
        bad("wheelbase_mm", "is less than a tyre's diameter", "front and rear tyres would touch")
    for key in ("front_track_mm", "rear_track_mm"):
        if getattr(r, key) <= r.tyre_width_mm:
            bad(key, "is less than a tyre's width", "measure between the tyres' middles")
    if r.tread_mm is not None and r.tread_mm > r.tyre_width_mm:
        bad("tread_mm", "is wider than the tyre", f"at most {r.tyre_width_mm:g}")
    for key in ("front_sag_mm", "rear_sag_mm"):
        sag = getattr(r, key)
        if r.sag_g is None or sag is None:
            continue
        least = r.sag_g * _G * GRAVITY / setup(r).ends[0].tyre["stiffness"].value / 2
        if sag <= least:
            bad(key, f"is {sag:g}, which the tyres alone give", f"more than {least:.1f}")
    return found


def _sums(r: Readings, made: Setup) -> Sums:
    radii = [end.tyre["radius"] for end in made.ends]
    pairs = {}
    for i, name in enumerate(ENDS):
        end = made.ends[i]
        spring, axle = end.suspension["spring"], end.axle_g
        unsprung = axle.value + 2 * made.wheel_g.value
        off = axle.tol + 2 * made.wheel_g.tol
        pairs[f"rate_{name}"] = (spring.value / _MM, spring.tol / _MM * _RECTANGULAR)
        pairs[f"unsprung_{name}"] = (unsprung * _G, off * _G * _RECTANGULAR)
    both = [end.suspension for end in made.ends]
    for key, field in (("spacing", "spring_spacing"), ("roll_centre", "roll_centre")):
        mean = sum(one[field].value for one in both) / 2
        pairs[key] = (mean * _MM, both[0][field].tol * _MM * _RECTANGULAR)
    return sums(
        r,
        (radii[0].value * _MM, radii[1].value * _MM),
        radii[0].tol * _MM * _RECTANGULAR,
        pairs,
        made.ends[0].tyre["stiffness"].value / _MM,
    )


def _wheel(r: Readings, made: Setup) -> PartLump:
    d, w = r.tyre_diameter_mm, r.tyre_width_mm
    shape = {"kind": "ring", "outer_mm": d, "inner_mm": _tidy(0.45 * d), "width_mm": w}
    return _lump("wheel", "every wheel", made.wheel_g, [0, 0, 0], 1.0, shape)


def _axles(made: Setup) -> list[PartLump]:
    found = []
    for name, end in zip(AXLES, made.ends, strict=True):
        length = max(end.track.value - end.tyre["width"].value, 10.0)
        shape = {"kind": "cylinder", "diameter_mm": 24, "length_mm": _tidy(length), "along": "y"}
        found.append(_lump(f"{name} lump", name, end.axle_g, [0, 0, 0], 5.0, shape))
    return found


def _lump(
    name: str, on: str, mass: Filled, at: Sequence[float], place_tol: float, shape: dict[str, Any]
) -> PartLump:
    entries = {
        "name": name,
        "on": on,
        "mass_g": _tidy(mass.value),
        "shape": shape,
        "at_mm": [_tidy(v) for v in at],
        "mass_tol_g": _tidy(mass.tol),
        "place_tol_mm": place_tol,
    }
    return PartLump(entries, mass.how)


def _weighed(r: Readings) -> list[PartLump]:
    """Body, pack, and the parts weighed on their own."""
    found = []
    middle = (r.front_track_mm + r.rear_track_mm) / 2
    if r.body_g is not None:
        roof = r.roof_mm or typical.ROOF_RADII * r.tyre_diameter_mm / 2
        box = [_tidy(v) for v in (1.35 * r.wheelbase_mm, 0.95 * middle, 0.45 * roof)]
        mass = Filled(r.body_g, 2 * r.scale_step_g, "weighed; its height is a share of the roof's")
        shape = {"kind": "box", "size_mm": box, "wall_mm": 2}
        found.append(_lump("body", "chassis", mass, [0, 0, typical.ROOF_SHARE * roof], 20, shape))
    if r.pack_g is not None and r.pack_at_mm is not None:
        mass = Filled(r.pack_g, 2 * r.scale_step_g, "weighed, and its place measured")
        shape = {"kind": "box", "size_mm": [100, 34, 24]}
        found.append(_lump("battery pack", "chassis", mass, r.pack_at_mm, 4, shape))
    for part in r.part:
        entries = part.model_dump(mode="json", exclude_unset=True)
        found.append(PartLump(entries, "given with the readings"))
    return found


def _spec_of(data: dict[str, Any]) -> TruckSpec:
    """Checked. Raises InputError where readings amount to what no truck has."""
    try:
        return TruckSpec.model_validate(data)
    except ValidationError as error:
        here = "what the readings amount to"
        raise InputError(problems(error, TruckSpec, data, lambda _: (here, None))) from None


def _closed(r: Readings, made: Setup, total: Sums, known: Sequence[PartLump]) -> list[PartLump]:
    """The lumps with what is left for the chassis, and the axles moved across, so that mass, CG
    and the couple on each axle come out."""
    spec = _spec_of(truck_data(r, made, [dict(one.entries) for one in known]))
    placed = [
        p for i, part in enumerate(spec.part)
        for p in placing.pieces(part, i, placing.setting(part, spec))
    ]  # fmt: skip
    known = _taken_out(r, known, placed)
    sides = _across(r, made, known, placed, total)
    for i, side in enumerate(sides[1:]):
        if abs(side) > FURTHEST_SIDE * made.ends[i].track.value:
            fl, fr, rl, rr = r.corners_g
            what = f"stand on one diagonal: {abs(fl + rr - fr - rl) / 2:.0f} g too much"
            allowed = (
                "level the blocks under the other wheels, and set left and right springs alike"
            )
            raise InputError(Problem("readings", what, allowed, "the corner weights"))
    known = [_moved(one, sides) for one in known]
    rest = _remainder(r, made, total, known)
    return [rest, *known]


def _taken_out(r: Readings, known: Sequence[PartLump], placed: Sequence[Part]) -> list[PartLump]:
    """Axle and wheel lumps less the parts on them that were weighed on their own."""
    own = {one.entries["name"]: i for i, one in enumerate(known)}
    given = len(known) - len(r.part)
    found = list(known)
    taken = dict.fromkeys((*AXLES, *WHEELS), 0.0)
    for part in placed:
        if part.row >= given and part.carrier != "chassis":
            taken[part.carrier] += part.body.mass * part.unsprung
    wheels = [taken[wheel] for wheel in WHEELS]
    if max(wheels) - min(wheels) > 1e-9:
        what, allowed = "is on some wheels only", "put parts on 'every wheel'"
        raise InputError(Problem("readings", what, allowed, "part"))
    for name, mass in (("wheel", wheels[0]), *((f"{a} lump", taken[a]) for a in AXLES)):
        i = own[name]
        left = found[i].entries["mass_g"] - mass / _G
        if left <= 0:
            what = f"weigh {mass / _G:.0f} g, all of the {name.removesuffix(' lump')}"
            allowed = f"less than {found[i].entries['mass_g']:g}"
            raise InputError(Problem("readings", what, allowed, "part"))
        found[i] = PartLump({**found[i].entries, "mass_g": _tidy(left)}, found[i].how)
    return found


def _across(
    r: Readings, made: Setup, known: Sequence[PartLump], placed: Sequence[Part], total: Sums
) -> Array:
    """(3,) mm, y of the sprung mass centre, and of the front and rear axle lump.

    Each axle's couple is S y + U: its sprung load at the sprung centre, and what is unsprung. Two
    equations in three unknowns; the likeliest, in units of what each may be off, is taken.
    """
    fl, fr, rl, rr = r.corners_g
    couples = np.array([(fl - fr) * r.front_track_mm, (rl - rr) * r.rear_track_mm]) / 2
    own_lumps = known[: len(known) - len(r.part)]  # a part may have a material instead
    masses = {one.entries["name"]: one.entries["mass_g"] for one in own_lumps}
    given = len(known) - len(r.part)
    a = np.zeros((2, 3))
    b = couples.copy()
    for i, name in enumerate(ENDS):
        own = [p for p in placed if p.carrier.startswith(name) and p.row >= given]
        unsprung = made.ends[i].axle_g.value + 2 * made.wheel_g.value
        a[i, 0] = made.ends[i].load_g - unsprung
        a[i, 1 + i] = masses[f"{AXLES[i]} lump"]
        b[i] -= sum(p.body.mass / _G * p.unsprung * p.body.cg[1] / _MM for p in own)
    scale = np.diag([typical.CHASSIS_SIDE_MM, typical.AXLE_SIDE_MM, typical.AXLE_SIDE_MM]) ** 2
    return np.asarray(scale @ a.T @ np.linalg.solve(a @ scale @ a.T, b))


def _moved(one: PartLump, sides: Array) -> PartLump:
    for name, y in zip(AXLES, sides[1:], strict=True):
        if one.entries["name"] == f"{name} lump":
            return PartLump({**one.entries, "at_mm": [0, _tidy(y), 0]}, one.how)
    return one


def _remainder(r: Readings, made: Setup, total: Sums, known: Sequence[PartLump]) -> PartLump:
    spec = _spec_of(truck_data(r, made, [dict(one.entries) for one in known]))
    placed = [
        p for i, part in enumerate(spec.part)
        for p in placing.pieces(part, i, placing.setting(part, spec))
    ]  # fmt: skip
    mass = total.mass - sum(p.body.mass for p in placed)
    if mass <= 0.02 * total.mass:
        what = (
            f"weigh {(total.mass - mass) / _G:.0f} g together, and the truck {total.mass / _G:.0f}"
        )
        allowed = "something must be left for frame and drive"
        raise InputError(Problem("readings", what, allowed, "the parts"))
    moment = total.mass * total.cg - np.sum([p.body.mass * p.body.cg for p in placed], axis=0)
    at = moment / mass
    if not 0 < at[2] < r.wheelbase_mm * _MM:
        what = f"leave the rest of the truck {at[2] / _MM:.0f} mm above the ground"
        allowed = "look at the heights of pack, body and parts, and at raised_g"
        raise InputError(Problem("readings", what, allowed, "the parts"))
    share = total.mass / mass / _RECTANGULAR
    sd = total.sd
    height = min(80.0, 1.6 * at[2] / _MM)
    size = [1.1 * r.wheelbase_mm, 0.4 * r.front_track_mm, height]
    entries = {
        "name": REST,
        "on": "chassis",
        "remainder": True,
        "mass_g": _tidy(mass / _G),
        "shape": {"kind": "box", "size_mm": [_tidy(v) for v in size]},
        "at_mm": [_tidy(v / _MM) for v in at],
        "mass_tol_g": _tidy(sd[0] / _G / _RECTANGULAR),
        "place_tol_xyz_mm": [round(float(v) * share / _MM, 2) for v in sd[1:]],
    }
    return PartLump(entries, "all the rest: what scale and ruler leave after the parts below")


def truck_data(r: Readings, made: Setup, parts: Sequence[Mapping[str, Any]]) -> dict[str, Any]:
    """Values of a truck file with these parts, by key, each with the unit in its key."""
    data: dict[str, Any] = {
        "format": 1,
        "name": r.name,
        "chassis": {"wheelbase_mm": r.wheelbase_mm, "wheelbase_tol_mm": made.wheelbase.tol},
        "grip": {"ground": grip(r)[0]},
        "part": [dict(p) for p in parts],
    }
    for name, end in zip(ENDS, made.ends, strict=True):
        table: dict[str, Any] = {}
        for key, value, tol, _ in end_lines(end.tyre, TYRE_UNITS):
            table |= {key: value} | ({tol[0]: tol[1]} if tol else {})
        springs: dict[str, Any] = {}
        for key, value, tol, _ in end_lines(end.in_file, SUSPENSION_UNITS):
            springs |= {key: value} | ({tol[0]: tol[1]} if tol else {})
        data[name] = {
            "track_mm": end.track.value,
            "track_tol_mm": end.track.tol,
            "tyre": table,
            "suspension": springs,
        }
    return data


TYRE_UNITS = {
    "radius": "mm",
    "width": "mm",
    "contact_half_width": "mm",
    "stiffness": "n_per_mm",
    "lateral": "n_per_mm",
    "longitudinal": "n_per_mm",
}
SUSPENSION_UNITS = {
    "spring": "n_per_mm",
    "spring_spacing": "mm",
    "roll_centre": "mm",
    "bump": "mm",
    "droop": "mm",
    "anti_roll": "n_mm_per_deg",
    "anti_dive": "percent",
    "anti_squat": "percent",
}
_Line = tuple[str, float, tuple[str, float] | None, str]


def end_lines(values: Mapping[str, Filled], units: Mapping[str, str]) -> list[_Line]:
    """Key, value, key and value of the tolerance, and how it came about."""
    found: list[_Line] = []
    for key, one in values.items():
        unit = units[key]
        tol = (f"{key}_tol_{unit}", _tidy(one.tol)) if one.tol else None
        found.append((f"{key}_{unit}", _tidy(one.value), tol, one.how))
    return found


def grip(r: Readings) -> tuple[dict[str, float], str]:
    """Low, likely and high friction coefficient, and how they came about. A pull over the truck's
    weight, mu = pull_g / sum(corners), held to 0.05 to 4, and a tenth of it either way.

    Source: Coulomb friction; the tenth is common practice, no source.
    """
    low, likely, high = typical.GRIP
    if r.pull_g is None:
        return {"low": low, "likely": likely, "high": high}, f"assumed: {typical.GRIP_WHY}"
    mu = min(max(r.pull_g / sum(r.corners_g), 0.05), 4.0)
    found = {"low": _tidy(0.9 * mu), "likely": _tidy(mu), "high": _tidy(1.1 * mu)}
    return found, f"{r.pull_g:g} g pulled it over the ground, wheels held; by a tenth at most"


def _tidy(value: float) -> float:
    return round(float(value), _DECIMALS)
