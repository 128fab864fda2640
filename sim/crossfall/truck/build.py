"""From the checked file to the frozen truck.

Source: of a lean from anti-squat and anti-dive see `schema.SuspensionSpec`; of turned wheels
`steering`. All else is a change of units.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import atan, degrees, radians
from pathlib import Path

import numpy as np

from crossfall.truck import checks, meshes, schema, shapes
from crossfall.truck.assemble import reassemble
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.guides import suspended
from crossfall.truck.massprops import whole
from crossfall.truck.model import (
    Axle,
    Body,
    Clearance,
    Grip,
    Part,
    Suspension,
    Truck,
    Tyre,
    frozen,
)
from crossfall.truck.pieces import pieces, setting
from crossfall.truck.read import ReadFile, Where, contained, in_memory, read_spec, read_text
from crossfall.truck.solids import MM, Solid
from crossfall.truck.stance import standing_truck
from crossfall.truck.steering import Steered, swung
from crossfall.truck.tolerances import uncertain_inputs

_NOTHING = Body(0.0, frozen(np.zeros(3)), frozen(np.zeros((3, 3))))


@dataclass(frozen=True)
class Loaded:
    """A truck with the file it came from. warnings: things to know that are no mistakes."""

    truck: Truck
    spec: schema.TruckSpec
    warnings: tuple[Problem, ...]
    path: Path
    where: Where

    @property
    def folder(self) -> Path:
        """Where the file's meshes are looked for; `build` wants it."""
        return self.path.resolve().parent


def load_truck(path_or_demo_name: str | Path) -> Loaded:
    """The truck of a chassis file, or a demo truck by name.

    Raises InputError with every mistake found: first the form of the file, and once that is
    right, whether such a truck can be built, and whether it can stand.
    """
    return _loaded(read_spec(path_or_demo_name))


def load_text(text: str, path: str | Path) -> Loaded:
    """The truck of a text as if it stood at `path`: unsaved edits. Raises InputError."""
    return _loaded(read_text(text, path))


def _loaded(reading: ReadFile) -> Loaded:
    truck, warnings = build(reading.spec, reading.path.resolve().parent, reading.where)
    return Loaded(truck, reading.spec, warnings, reading.path, reading.where)


def build(
    spec: schema.TruckSpec, folder: Path | None = None, where: Where | None = None
) -> tuple[Truck, tuple[Problem, ...]]:
    """The frozen truck of a spec, and warnings.

    folder: where mesh files are looked for; None allows none. where: lines for messages. The same
    spec always gives the same truck, byte for byte. Raises InputError.
    """
    where = where or in_memory(spec)
    return _built(as_it_stands(spec, folder, where), folder, where)


def as_it_stands(
    spec: schema.TruckSpec, folder: Path | None = None, where: Where | None = None
) -> schema.TruckSpec:
    """The same spec, or where collars say how high it stands, one lifted to there. Raises as
    `build` does.
    """
    where = where or in_memory(spec)
    if all(end.suspension.preload_mm is None for end in (spec.front, spec.rear)):
        return spec
    return standing_truck(spec, lambda tried: _built(tried, folder, where)[0], where)


def _built(
    spec: schema.TruckSpec, folder: Path | None, where: Where
) -> tuple[Truck, tuple[Problem, ...]]:
    found = checks.spec_mistakes(spec, where)
    if found and checks.too_many(spec):
        raise InputError(found)
    warnings: list[Problem] = []
    parts: list[Part] = []
    for i, part in enumerate(spec.part):
        try:
            mesh = None
            if isinstance(part.shape, shapes.Mesh):
                mesh = _mesh(part.shape, i, folder, where, warnings)
            parts += pieces(part, i, setting(part, spec), mesh)
        except InputError as error:
            found += error.problems
        except ValueError as error:
            found.append(where.problem(("part", i, "axle_end_mm"), str(error)))
    if found:
        raise InputError(found)
    if spec.remainder is not None:
        parts = [p if p.row == spec.remainder else taken_up(p) for p in parts]
    truck, found = suspended(_lean(reassemble(_bare(spec), parts), spec), spec, where)
    if found:
        raise InputError(found)
    if found := checks.truck_mistakes(truck, spec, where):
        raise InputError(found)
    truck = replace(truck, uncertain=uncertain_inputs(truck, spec))
    return truck, (*warnings, *checks.truck_warnings(truck, spec, where))


def taken_up(part: Part) -> Part:
    """A part whose errors change no sum, since the remainder takes them up."""
    return replace(part, mass_sd=0.0, place_sd=0.0, taken_up=(part.mass_sd, part.place_sd))


def _mesh(
    shape: shapes.Mesh, i: int, folder: Path | None, where: Where, warnings: list[Problem]
) -> Solid:
    key = ("part", i, "shape", "file")
    path = contained(folder, shape.file) if folder is not None else None
    if path is None:
        what = f"'{shape.file}' is outside the truck file's folder"
        raise InputError(where.problem(key, what, "stay inside it"))
    try:
        mesh = meshes.load_mesh(path, shape.unit)
    except meshes.MeshError as error:
        raise InputError(where.problem(key, error.what, error.allowed)) from None
    if mesh.warning:
        warnings.append(where.problem(key, mesh.warning))
    return mesh.solid


def _bare(spec: schema.TruckSpec) -> Truck:
    """The truck without its parts and without the lean of its heave axes."""
    half = spec.chassis.wheelbase_mm * MM / 2
    lock = spec.chassis.steering_lock_deg
    return Truck(
        name=spec.name,
        chassis=_NOTHING,
        front=_axle(spec.front, half, spec.chassis),
        rear=_axle(spec.rear, -half, spec.chassis),
        grips=tuple(Grip(k, g.low, g.likely, g.high) for k, g in spec.grip.items()),
        clearance=_clearance(spec),
        driven=(spec.chassis.driven != "rear", spec.chassis.driven != "front"),
        steering_lock=None if lock is None else radians(lock),
    )


def _axle(end: schema.AxleSpec, x: float, chassis: schema.ChassisSpec) -> Axle:
    t, s = end.tyre, end.suspension
    tyre = Tyre(
        radius=t.radius_mm * MM,
        width=t.width_mm * MM,
        contact_half_width=t.contact_half_width_mm * MM,
        stiffness=t.stiffness_n_per_mm / MM,
        lateral=t.along_ground(t.lateral_n_per_mm) / MM,
        longitudinal=t.along_ground(t.longitudinal_n_per_mm) / MM,
    )
    suspension = Suspension(
        spring_rate=s.rate / MM,
        spring_spacing=(s.spring_spacing_mm or 0.0) * MM,
        damping=s.damping_n_s_per_m,
        roll_centre_height=(s.roll_centre_mm or 0.0) * MM,
        bump=(s.bump_mm or 0.0) * MM,
        droop=(s.droop_mm or 0.0) * MM,
        soft_rate=(s.soft_n_per_mm or 0.0) / MM,
        soft_travel=(s.soft_travel_mm or 0.0) * MM,
        anti_roll=s.anti_roll_n_mm_per_deg * MM * degrees(1),
        heave_lean=radians(s.heave_lean_deg or 0.0),
        locked=s.locked,
    )
    sense = 1.0 if end.shaft_turns == "clockwise" else -1.0
    pinion = sense / (chassis.axle_ratio or schema.TYPICAL_AXLE_RATIO)
    # As the axle rolls about a shaft that stands still, the shaft turns the other way in it.
    shaft = -pinion if chassis.held_by == "motor" else 0.0
    bare = _NOTHING, (_NOTHING, _NOTHING)
    loose = end.differential == "open"
    track, turned = end.track_mm * MM, steered(end, chassis)
    return Axle(x, track, tyre, suspension, *bare, shaft, turned, loose, pinion)


def steered(end: schema.AxleSpec, chassis: schema.ChassisSpec) -> Steered:
    """Where left and right tyre go, (x, y) m each, as both wheels swing alike about upright
    kingpins: `steering.swung`, or nowhere.
    """
    if not isinstance(end, schema.FrontSpec) or not chassis.steer_deg:
        return (0.0, 0.0), (0.0, 0.0)
    given, turn = end.kingpin_offset_mm, radians(chassis.steer_deg)
    out = schema.assumed_kingpin_offset(end.track_mm) if given is None else given
    return swung(turn, out * MM)


def _clearance(spec: schema.TruckSpec) -> Clearance | None:
    c = spec.clearance
    if c is None:
        return None
    lift = spec.chassis.raise_mm
    nose, belly, tail = ((x * MM, (z + lift) * MM) for x, z in (c.nose_mm, c.belly_mm, c.tail_mm))
    return Clearance(nose, belly, tail)


def _lean(truck: Truck, spec: schema.TruckSpec) -> Truck:
    """The truck with the heave axes that anti-dive and anti-squat ask for: see SuspensionSpec."""
    dive, squat = spec.front.suspension.percent, spec.rear.suspension.percent
    if dive is None and squat is None:
        return truck
    full = whole(truck).cg[2] / truck.wheelbase
    front, rear = (a.suspension for a in truck.axles)
    if dive is not None:
        front = replace(front, heave_lean=atan(dive / 100 * full))
    if squat is not None:
        rear = replace(rear, heave_lean=atan(-squat / 100 * full))
    return replace(
        truck,
        front=replace(truck.front, suspension=front),
        rear=replace(truck.rear, suspension=rear),
    )
