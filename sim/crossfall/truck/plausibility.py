"""Values that can be meant but are likely slips, with the value that was probably meant.

Kilograms for grams, centimetres or inches for millimetres, newtons per metre, a diameter for a
radius, a height from the ground where it counts from the axle, an end in the wrong axes. Nothing
here refuses a file. Bounds are generous: no real truck of 1:24 to 1:5 should be doubted.

Source: bounds are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import degrees
from pathlib import Path as FilePath
from typing import Any

import numpy as np

from crossfall.truck import pieces as placing
from crossfall.truck import shapes
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array, Part, Shape
from crossfall.truck.read import Source, Where, locate, read_source, read_spec
from crossfall.truck.schema import AxleSpec, PartSpec, TruckSpec
from crossfall.truck.toml_line_index import KeyPath

_MM = _G = 1e-3
_ENDS = ("front", "rear")


@dataclass(frozen=True)
class _Usual:
    """Between what a value lies on trucks of any scale, and other units it may have been given in:
    (words, factor to the file's unit)."""

    low: float
    high: float
    units: tuple[tuple[str, float], ...]
    zero: bool = False  # 0 is usual as well


_LENGTH = (("centimetres", 10.0), ("inches", 25.4), ("metres", 1000.0), ("tenths of mm", 0.1))
_RATE = (("N/m", 1e-3), ("N/cm", 0.1), ("kg/mm", 9.80665), ("kN/m or N/m", 1e3))
_USUAL: dict[str, _Usual] = {
    "chassis.wheelbase_mm": _Usual(110, 750, _LENGTH),
    "chassis.steering_lock_deg": _Usual(5, 75, (("radians", degrees(1)),)),
    "chassis.final_drive": _Usual(1, 200, ()),
    "track_mm": _Usual(60, 500, _LENGTH),
    "tyre.radius_mm": _Usual(15, 130, _LENGTH),
    "tyre.width_mm": _Usual(8, 130, _LENGTH),
    "tyre.stiffness_n_per_mm": _Usual(0.4, 60, _RATE),
    "tyre.lateral_n_per_mm": _Usual(0.1, 60, _RATE),
    "tyre.longitudinal_n_per_mm": _Usual(0.1, 60, _RATE),
    "suspension.spring_n_per_mm": _Usual(0.02, 6, _RATE),
    "suspension.shock_n_per_mm": _Usual(0.02, 6, _RATE),
    "suspension.soft_n_per_mm": _Usual(0.01, 6, _RATE),
    "suspension.soft_travel_mm": _Usual(2, 90, _LENGTH),
    "suspension.preload_mm": _Usual(0.5, 60, _LENGTH, zero=True),
    "suspension.shock_length_mm": _Usual(35, 300, _LENGTH),
    "suspension.shaft_travel_mm": _Usual(6, 150, _LENGTH),
    "suspension.spring_spacing_mm": _Usual(25, 400, _LENGTH),
    "suspension.damping_n_s_per_m": _Usual(0.5, 300, (("N s/mm", 1e3),), zero=True),
    "suspension.roll_centre_mm": _Usual(15, 300, _LENGTH, zero=True),
    "suspension.bump_mm": _Usual(3, 90, _LENGTH, zero=True),
    "suspension.droop_mm": _Usual(2.5, 90, _LENGTH, zero=True),
    "suspension.anti_roll_n_mm_per_deg": _Usual(
        0.3, 150, (("N m/deg", 1e3), ("N m/rad", 17.4533)), zero=True
    ),
    "suspension.anti_dive_percent": _Usual(1, 200, (("a share of 1", 100.0),), zero=True),
    "suspension.anti_squat_percent": _Usual(1, 200, (("a share of 1", 100.0),), zero=True),
    "battery.capacity_mah": _Usual(150, 25_000, (("Ah", 1e3),)),
    "battery.draw_a": _Usual(0.3, 150, (("mA", 1e-3),)),
    "battery.usable_percent": _Usual(10, 100, (("a share of 1", 100.0),)),
    "battery.draw_mass_g": _Usual(200, 30_000, (("kilograms", 1e3),)),
}
FRAME = ("wheelbase_mm", "track_mm", "tyre.radius_mm")
LIGHTEST_G = 0.3  # a part without a shape that was worth listing by itself
CENTIMETRES = 200.0  # g/cm3 of a shape, a thousand times too much
LOOSEST, DENSEST = 0.02, 22.0  # g/cm3 of a part's shape: below foam, above tungsten
ABOVE_AXLE = 0.75  # tyre radii; more above an axle's centre is rather above the ground
BELOW_PART = 0.85  # tyre radii; a chassis part this low drags
PAST_AXLE = 1.3  # tyre radii along x from an axle's centre
BEYOND_MM = 45.0  # past nose or tail, of a part's middle
OVERHANG = 2.6  # tyre radii past an axle, where the file says nothing of nose and tail
UNDER_MM = 1.0  # ground
_HIGHEST = 7.0  # tyre radii
OTHER_HALF = 0.3  # of the wheelbase, a link of one axle past the middle
LONGEST_LINK = 0.85  # of the wheelbase
STEEP = 0.27  # of the wheelbase, a radius; more is rather a diameter
HEAVIEST_SHARE = 0.65  # of a truck, one part


def implausible_values(spec: TruckSpec, where: Where) -> list[Problem]:
    """Every value that is likely a slip, a sentence each, in file order."""
    found = [*_values(spec, where), *_measures(spec, where), *_materials(spec, where)]
    if not any(p.key.endswith(FRAME) for p in found):  # all places are judged by these
        ends = list(_clearance(spec, where))
        found += [*ends, *_parts(spec if not ends else _without_clearance(spec), where)]
    return sorted(found, key=lambda p: (p.line or 0, p.key))


def implausible_in_file(path_or_demo_name: str | FilePath) -> list[Problem]:
    """Those of a file that may be refused; none where it cannot even be read."""
    try:
        source = read_source(locate(path_or_demo_name), str(path_or_demo_name))
    except InputError:
        return []
    try:
        reading = read_spec(path_or_demo_name)
    except InputError:
        return implausible_in_source(source)
    return implausible_values(reading.spec, reading.where)


def _without_clearance(spec: TruckSpec) -> TruckSpec:
    return spec.model_copy(update={"clearance": None})


def _implausible(where: Where, path: KeyPath, what: str, meant: str) -> Problem:
    return where.problem(path, what, f"{meant}?")


def implausible_in_source(source: Source) -> list[Problem]:
    """The same for a file that is refused: only values that lie out of all bounds by themselves."""
    where = Where(source, {}, source.data)
    return list(_values(source.data, where))


def _values(spec: TruckSpec | Mapping[str, Any], where: Where) -> Iterator[Problem]:
    for key, usual in _USUAL.items():
        table, _, _ = key.partition(".")
        starts = ("",) if table in ("chassis", "battery") else _ENDS
        for start in starts:
            path: KeyPath = tuple(k for k in (start, *key.split(".")) if k)
            value = _at(spec, path)
            if not isinstance(value, int | float) or isinstance(value, bool):
                continue
            if usual.low <= abs(value) <= usual.high or (value == 0 and usual.zero):
                continue
            yield _implausible(where, path, f"is {value:g}", _meant(value, usual))


def _at(spec: TruckSpec | Mapping[str, Any], path: KeyPath) -> object:
    here: object = spec
    for step in path:
        here = here.get(step) if isinstance(here, Mapping) else getattr(here, str(step), None)
    return here


def _meant(value: float, usual: _Usual) -> str:
    if value == 0:
        return f"mostly {usual.low:g} to {usual.high:g}; is that meant"
    for words, factor in usual.units:
        if usual.low <= abs(value) * factor <= usual.high:
            return f"that would be right in {words}; {value * factor:g} meant"
    return f"mostly {usual.low:g} to {usual.high:g}; is that meant"


def _measures(spec: TruckSpec, where: Where) -> Iterator[Problem]:
    """Measures that do not go together."""
    base = spec.chassis.wheelbase_mm
    for name, end in zip(_ENDS, (spec.front, spec.rear), strict=True):
        radius, outer = end.tyre.radius_mm, _outer(spec, name)
        near = outer is not None and abs(radius - outer) < 0.15 * outer
        if near or (outer is None and radius > STEEP * base):
            what = f"is {radius:g}, as much as a tyre's diameter"
            yield _implausible(where, (name, "tyre", "radius_mm"), what, f"{radius / 2:g} meant")
        elif outer is not None and not 0.75 < 2 * radius / outer < 1.15 and radius > 15:
            what = f"is {radius:g}, and the largest ring on that wheel is {outer:g} across"
            meant = f"{outer / 2:g} less what the tyre gives"
            yield _implausible(where, (name, "tyre", "radius_mm"), what, meant)
        if end.track_mm > base >= _USUAL["chassis.wheelbase_mm"].low:
            what = f"is {end.track_mm:g}, more than the wheelbase, {base:g}"
            yield _implausible(where, (name, "track_mm"), what, "is that meant")
        low = 0.5 * radius
        centre = end.suspension.roll_centre_mm
        if centre is not None and 15 <= centre < low:
            what = f"is {centre:g}, and heights count from the ground"
            key = (name, "suspension", "roll_centre_mm")
            yield _implausible(where, key, what, f"{centre + radius:g}, if that was from the axle")
    ratio, drive = spec.chassis.axle_ratio, spec.chassis.final_drive
    if ratio is not None and "final_drive" in spec.chassis.model_fields_set and ratio > drive:
        what = f"is {ratio:g}, and all of the reduction is {drive:g}"
        meant = "that of the axle's own gears alone meant"
        yield _implausible(where, ("chassis", "axle_ratio"), what, meant)
    battery = spec.battery
    if battery is not None and battery.draw_mass_g is not None and battery.draw_mass_g >= 200:
        total = sum(p.body.mass for p, _ in _placed(spec)) / _G
        if not 0.4 < battery.draw_mass_g / total < 2.5:
            what = f"is {battery.draw_mass_g:g}, and the parts weigh {total:.0f} g together"
            yield _implausible(where, ("battery", "draw_mass_g"), what, "is that meant")


def _outer(spec: TruckSpec, end: str) -> float | None:
    """mm, the largest ring or cylinder across on the wheels of that end."""
    found: list[float] = [
        getattr(p.shape, "outer_mm", None) or getattr(p.shape, "diameter_mm", None) or 0.0
        for p in spec.part
        if p.on in ("every wheel", f"each {end} wheel", f"{end} left")
        and isinstance(p.shape, shapes.Ring | shapes.Cylinder | shapes.Tube)
    ]
    return max(found, default=0.0) or None


def _clearance(spec: TruckSpec, where: Where) -> Iterator[Problem]:
    if spec.clearance is None:
        return
    half = spec.chassis.wheelbase_mm / 2
    radius = max(spec.front.tyre.radius_mm, spec.rear.tyre.radius_mm)
    for key, sign in (("nose_mm", 1), ("tail_mm", -1)):
        x, z = getattr(spec.clearance, key)
        if abs(x) < 0.5 * half and abs(10 * x) < half + 6 * radius:
            what = f"is [{x:g}, {z:g}], in the middle of the truck"
            yield _implausible(where, ("clearance", key), what, f"[{10 * x:g}, {10 * z:g}] meant")
        elif sign * x > half + 6 * radius or z > _HIGHEST * radius:
            what = f"is [{x:g}, {z:g}], far from the truck"
            yield _implausible(where, ("clearance", key), what, f"[{x / 10:g}, {z / 10:g}] meant")
        elif 0 < z < 0.2 * radius:
            what = f"is [{x:g}, {z:g}], hardly above the ground"
            yield _implausible(where, ("clearance", key), what, f"{10 * z:g} up meant")
    x, z = spec.clearance.belly_mm
    if 0 < z < 0.2 * radius:
        what = f"is [{x:g}, {z:g}], hardly above the ground"
        yield _implausible(where, ("clearance", "belly_mm"), what, f"{10 * z:g} up meant")


def _materials(spec: TruckSpec, where: Where) -> Iterator[Problem]:
    for name, material in spec.materials.items():
        value = material.density_g_cm3
        if value < 0.005:
            what, meant = f"is {value:g}, lighter than air in foam", f"{value * 1e3:g} meant"
            yield _implausible(where, ("materials", name, "density_g_cm3"), what, meant)
        elif value > DENSEST:
            what, meant = f"is {value:g}, denser than tungsten", f"{value / 10:g} meant"
            yield _implausible(where, ("materials", name, "density_g_cm3"), what, meant)
    for name, grip in spec.grip.items():
        for key in ("low", "likely", "high"):
            value = getattr(grip, key)
            if not 0.1 <= value <= 2.0:
                meant = f"{value / 10:g} meant" if value > 2 else "mostly 0.3 to 1.3; is that meant"
                yield _implausible(where, ("grip", name, key), f"is {value:g}", meant)
                break


def _placed(spec: TruckSpec) -> list[tuple[Part, PartSpec]]:
    """Every piece with its entry; what cannot be built, or is a mesh, is left out."""
    found = []
    for i, part in enumerate(spec.part):
        if isinstance(part.shape, shapes.Mesh):
            continue
        try:
            made = placing.pieces(part, i, placing.setting(part, spec))
        except (InputError, ValueError, KeyError):
            continue
        found += [(p, part) for p in made]
    return found


def _parts(spec: TruckSpec, where: Where) -> Iterator[Problem]:
    placed = _placed(spec)
    total = sum(p.body.mass for p, _ in placed)
    seen: set[int] = set()
    for piece, part in placed:
        if piece.row in seen:
            continue
        seen.add(piece.row)
        path: KeyPath = ("part", piece.row)
        own = [*_mass(piece, part, total, path, where), *_tolerance(part, path, where)]
        places = _link(part, spec, path, where) if part.is_link else ()
        if not part.is_link:
            places = _place(piece, part, spec, path, where)
        yield from own
        # One word about where a part is: the first, which is the closest guess.
        yield from list(places)[:1]


def _mass(
    piece: Part, part: PartSpec, total: float, path: KeyPath, where: Where
) -> Iterator[Problem]:
    grams = piece.body.mass / _G
    volume = _volume(part)
    density = None if not volume else grams / volume
    if part.mass_g is not None and density is not None and not LOOSEST <= density <= DENSEST:
        what = f"is {part.mass_g:g}, which makes {density:.2g} g/cm3 of its shape"
        if density < LOOSEST:
            meant = f"{part.mass_g * 1e3:g} meant, if that was kilograms"
            yield _implausible(where, (*path, "mass_g"), what, meant)
        elif density > CENTIMETRES:
            what = f"makes {density:.3g} g/cm3 of its {part.mass_g:g} g"
            yield _implausible(where, (*path, "shape"), what, "centimetres for millimetres")
        else:
            yield _implausible(where, (*path, "mass_g"), what, f"{part.mass_g / 10:g} meant")
    elif density is None and part.mass_g is not None and part.mass_g < LIGHTEST_G:
        what = f"is {part.mass_g:g}, less than a screw weighs"
        meant = f"{part.mass_g * 1e3:g} meant, if that was kilograms"
        yield _implausible(where, (*path, "mass_g"), what, meant)
    elif part.mass_g is None and grams < 0.2:
        what = f"makes {grams:.2g} g of it"
        yield _implausible(where, (*path, "shape"), what, "centimetres for millimetres")
    elif piece.body.mass > HEAVIEST_SHARE * total and not part.remainder:
        what = f"is {grams:.0f}, {piece.body.mass / total * 100:.0f} % of the truck"
        key = (*path, "mass_g" if part.mass_g is not None else "shape")
        yield _implausible(where, key, what, f"{grams / 10:g} meant")


def _volume(part: PartSpec) -> float | None:
    """cm3 of a part's shape, None where it has none or takes its length from a link."""
    from crossfall.truck.solids import solid

    if part.shape is None or isinstance(part.shape, shapes.Mesh):
        return None
    length = None
    if part.is_link and part.chassis_end_mm is not None and part.axle_end_mm is not None:
        length = 0.1  # m; a link's ends are in two frames, and its order of magnitude will do
    return float(solid(part.shape, length).volume) * 1e6


def _tolerance(part: PartSpec, path: KeyPath, where: Where) -> Iterator[Problem]:
    if part.place_tol_mm is not None and part.place_tol_mm > 60:
        what = f"is {part.place_tol_mm:g}, as if nobody knew where it is"
        yield _implausible(
            where, (*path, "place_tol_mm"), what, f"{part.place_tol_mm / 10:g} meant"
        )


def _place(
    piece: Part, part: PartSpec, spec: TruckSpec, path: KeyPath, where: Where
) -> Iterator[Problem]:
    assert part.at_mm is not None
    key = (*path, "at_mm")
    z = part.at_mm[2]
    end = spec.rear if piece.carrier.startswith("rear") else spec.front
    half = spec.chassis.wheelbase_mm / 2
    radius = end.tyre.radius_mm
    if part.on_wheel:
        yield from _on_wheel(part.at_mm, end, key, where)
    elif part.on != "chassis":
        yield from _on_axle(part, end, half, key, where)
    else:
        yield from _on_chassis(part, spec, key, where)
    under = -_lowest(piece) / _MM
    if under > (0.3 * radius if part.on_wheel else UNDER_MM):
        yield _implausible(
            where, key, f"puts it {under:.0f} mm into the ground", "z counts upwards"
        )
    tall = float(piece.body.cg[2]) / _MM
    if tall > _HIGHEST * radius:
        meant = f"{z / 10:g} up meant"
        yield _implausible(where, key, f"puts it {tall:.0f} mm above the ground", meant)


def _on_wheel(at: Sequence[float], end: AxleSpec, key: KeyPath, where: Where) -> Iterator[Problem]:
    x, y, z = at
    radius, half = end.tyre.radius_mm, end.track_mm / 2
    if abs(z) > 0.4 * radius or abs(x) > 0.4 * radius:
        what = f"is [{x:g}, {y:g}, {z:g}], and wheel parts count from the wheel's centre"
        near = abs(z - radius) < 0.3 * radius
        meant = f"[{0:g}, {y:g}, {z - radius:g}] meant" if near else "[0, .., 0] meant"
        yield _implausible(where, key, what, meant)
    elif abs(y) > max(0.75 * half, end.tyre.width_mm):
        what = f"is [{x:g}, {y:g}, {z:g}], and y counts outwards from the wheel's centre"
        yield _implausible(where, key, what, f"{abs(y) - half:g} meant")


def _on_axle(
    part: PartSpec, end: AxleSpec, half: float, key: KeyPath, where: Where
) -> Iterator[Problem]:
    assert part.at_mm is not None
    x, y, z = part.at_mm
    radius = end.tyre.radius_mm
    if abs(x) > PAST_AXLE * radius:
        what = f"is {abs(x):g} mm from the axle, whose parts count from its centre"
        near = -half if part.on == "rear axle" else half
        yield _implausible(where, key, what, f"{x - near:g} along meant")
    elif z > ABOVE_AXLE * radius:
        what = f"is {z:g} mm above the axle's centre, whose parts count from there"
        yield _implausible(
            where, key, what, f"{z - radius:g} up meant, if that was from the ground"
        )
    elif abs(y) > end.track_mm / 2 + end.tyre.width_mm:
        what = f"is {abs(y):g} mm to the side, beyond the wheels"
        yield _implausible(where, key, what, f"{y / 10:g} meant")


def _on_chassis(part: PartSpec, spec: TruckSpec, key: KeyPath, where: Where) -> Iterator[Problem]:
    assert part.at_mm is not None
    x, y, z = part.at_mm
    radius = min(spec.front.tyre.radius_mm, spec.rear.tyre.radius_mm)
    half = spec.chassis.wheelbase_mm / 2
    nose, tail = half + OVERHANG * radius, -half - OVERHANG * radius
    if spec.clearance is not None:
        nose, tail = spec.clearance.nose_mm[0], spec.clearance.tail_mm[0]
    if z < BELOW_PART * radius:
        yield _low((x, y, z), radius, key, where)
    wide = max(spec.front.track_mm, spec.rear.track_mm) / 2
    wide += max(spec.front.tyre.width_mm, spec.rear.tyre.width_mm)
    if x > nose + BEYOND_MM or x < tail - BEYOND_MM:
        past = x - nose if x > 0 else tail - x
        end = "nose" if x > 0 else "tail"
        meant = f"{x / 10:g} along meant" if abs(x) > 3 * half else "is that meant"
        yield _implausible(where, key, f"is {past:.0f} mm beyond the {end}", meant)
    elif abs(y) > wide:
        what = f"is {abs(y):g} mm to the side, beyond the wheels"
        yield _implausible(where, key, what, f"{y / 10:g} meant")


def _low(at: tuple[float, float, float], radius: float, key: KeyPath, where: Where) -> Problem:
    """Something of the chassis that is lower than the axles."""
    x, y, z = at
    if z < 0:
        return _implausible(where, key, f"is {-z:g} mm under the ground", f"{-z:g} up meant")
    what = f"is {z:g} mm above the ground, lower than the axles"
    if BELOW_PART * radius < 10 * z < _HIGHEST * radius and abs(10 * x) < 10 * radius:
        meant = f"[{10 * x:g}, {10 * y:g}, {10 * z:g}] meant, if that was centimetres"
    else:
        meant = f"{z + radius:g} up meant, if that was from the axles"
    return _implausible(where, key, what, meant)


def _link(part: PartSpec, spec: TruckSpec, path: KeyPath, where: Where) -> Iterator[Problem]:
    if part.chassis_end_mm is None or part.axle_end_mm is None:
        return
    front = part.on == "front link"
    end = spec.front if front else spec.rear
    radius, base = end.tyre.radius_mm, spec.chassis.wheelbase_mm
    middle = base / 2 if front else -base / 2
    x, _, z = part.axle_end_mm
    key = (*path, "axle_end_mm")
    if abs(x) > PAST_AXLE * radius:
        what = f"is {abs(x):g} mm from the axle, and counts from its centre"
        yield _implausible(where, key, what, f"{x - middle:g} along meant")
    elif z > ABOVE_AXLE * radius:
        what = f"is {z:g} mm above the axle's centre, and counts from there"
        yield _implausible(
            where, key, what, f"{z - radius:g} up meant, if that was from the ground"
        )
    other = part.chassis_end_mm
    key = (*path, "chassis_end_mm")
    x, y, z = other
    if z < BELOW_PART * radius:
        yield _low((x, y, z), radius, key, where)
    elif z > _HIGHEST * radius:
        yield _implausible(where, key, f"is {z:g} mm above the ground", f"{z / 10:g} up meant")
    elif (x if front else -x) < -OTHER_HALF * base:
        what = f"is {abs(x):g} mm past the middle, nearer to the other axle"
        yield _implausible(where, key, what, f"{-x:g} along meant")
    elif abs(x) > base / 2 + 2 * radius:
        what = f"is {abs(x):g} mm from the middle, beyond the axle"
        yield _implausible(where, key, what, f"{x / 10:g} along meant")
    yield from _length(part, middle, radius, base, path, where)


def _length(
    part: PartSpec, middle: float, radius: float, base: float, path: KeyPath, where: Where
) -> Iterator[Problem]:
    assert part.chassis_end_mm is not None
    assert part.axle_end_mm is not None
    low = np.add(part.axle_end_mm, (middle, 0.0, radius))
    length = float(np.linalg.norm(low - np.array(part.chassis_end_mm)))
    if not 12 <= length <= LONGEST_LINK * base:
        what = f"makes it {length:.0f} mm long"
        yield _implausible(where, (*path, "chassis_end_mm"), what, "is that meant")


def _lowest(piece: Part) -> float:
    """m, the lowest point of a piece's shape above the ground; its middle where it has none."""
    shape = piece.shape
    if shape is None or not shape.size:
        return float(piece.body.cg[2])
    return float(piece.centre[2]) - _reach(shape, piece.turn)


def _reach(shape: Shape, turn: Array) -> float:
    """m, how far a shape reaches down from its centre."""
    down = np.abs(turn[2])
    if shape.kind == "box":
        return float(down @ np.array(shape.size)) / 2
    if shape.kind == "sphere":
        return float(shape.size[0])
    radius, length = shape.size[0], shape.size[-1]
    return float(radius * np.hypot(down[0], down[1]) + length / 2 * down[2])
