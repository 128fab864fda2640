"""How far every number of a chassis file may be out: as the file says, or else by default.

Source: DEFAULTS says of each whether it is common practice, no source, or an assumption; that
independent limits add as the root of their squares is JCGM 100:2008, 5.1.2 (from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, degrees, radians, sqrt
from types import MappingProxyType
from typing import Literal

from crossfall.truck.axle_law import law_of
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import ENDS, TANGENTIAL_RATIO, Links, Suspension, Truck, UncertainInput
from crossfall.truck.ride import axle_squeezes
from crossfall.truck.schema import (
    AXLE_RATIOS,
    KINGPIN_SHARES,
    TYPICAL_AXLE_RATIO,
    AxleSpec,
    SuspensionSpec,
    TruckSpec,
)
from crossfall.truck.steering import steering
from crossfall.truck.toleranced import ToleranceSpec

Unit = Literal["m", "kg", "N/m", "N m/rad", "rad", "1"]
Basis = Literal["file", "default", "assumed"]
LEAST_UNSPRUNG = 0.8  # of an axle, as much as its mass may be out by


@dataclass(frozen=True)
class Default:
    """Plus or minus where a file says nothing, in its [tolerance] key's unit, and why so much."""

    value: float
    why: str


DEFAULTS: MappingProxyType[str, Default] = MappingProxyType(
    {
        "mass_percent": Default(
            5.0, "an assumption: a part weighed with its screws, or a density as tabled"
        ),
        "place_mm": Default(3.0, "an assumption: by eye along a ruler, to the middle of a part"),
        "wheelbase_mm": Default(1.0, "common practice, no source: a ruler between wheel centres"),
        "track_mm": Default(1.0, "common practice, no source: a ruler between tyre middles"),
        "radius_mm": Default(1.0, "common practice, no source: a ruler up to the wheel nut"),
        "contact_half_width_mm": Default(
            2.0, "an assumption: where a soft tread leaves off carrying is seen, not measured"
        ),
        "tyre_percent": Default(
            20.0, "an assumption: millimetres of squash read off a ruler, and foams differ"
        ),
        "tyre_along_percent": Default(
            15.0, "an assumption: a luggage scale and a ruler at a wheel that is held"
        ),
        "spring_percent": Default(
            10.0, "common practice, no source: what makers of springs let them differ by"
        ),
        "spring_spacing_mm": Default(2.0, "common practice, no source: a ruler past the axle"),
        "roll_centre_mm": Default(6.0, "an assumption: constructed from links, seldom measured"),
        "link_end_mm": Default(1.0, "common practice, no source: a ruler held to a ball"),
        "preload_mm": Default(0.5, "common practice, no source: a caliper at a collar"),
        "steer_deg": Default(2.0, "an assumption: an angle read over a turned wheel"),
        "kingpin_offset_mm": Default(
            2.0, "common practice, no source: a ruler from the kingpin's end to the tyre's middle"
        ),
        "travel_mm": Default(1.5, "common practice, no source: a ruler along a damper's shaft"),
        "anti_roll_percent": Default(20.0, "an assumption: seldom measured"),
        "lean_percent": Default(
            30.0, "an assumption: constructed from links, and the CG height goes into it"
        ),
    }
)


@dataclass(frozen=True)
class _Kind:
    """A value of each axle that may be out.

    table: where it stands below the axle in the file, and `field` in the truck. tol: the table's
    own key for its tolerance. key: of [tolerance].
    """

    words: str
    table: Literal["", "tyre", "suspension"]
    tol: str
    key: str
    field: str
    unit: Unit


_KINDS = (
    _Kind("track", "", "track_tol_mm", "track_mm", "track", "m"),
    _Kind("tyre radius", "tyre", "radius_tol_mm", "radius_mm", "radius", "m"),
    _Kind("tyre contact half-width", "tyre", "contact_half_width_tol_mm",
          "contact_half_width_mm", "contact_half_width", "m"),
    _Kind("tyre vertical stiffness", "tyre", "stiffness_tol_n_per_mm",
          "tyre_percent", "stiffness", "N/m"),
    _Kind("tyre lateral stiffness", "tyre", "lateral_tol_n_per_mm",
          "tyre_along_percent", "lateral", "N/m"),
    _Kind("tyre longitudinal stiffness", "tyre", "longitudinal_tol_n_per_mm",
          "tyre_along_percent", "longitudinal", "N/m"),
    _Kind("spring rate", "suspension", "spring_tol_n_per_mm",
          "spring_percent", "spring_rate", "N/m"),
    _Kind("soft spring rate", "suspension", "soft_tol_n_per_mm",
          "spring_percent", "soft_rate", "N/m"),
    _Kind("spring spacing", "suspension", "spring_spacing_tol_mm",
          "spring_spacing_mm", "spring_spacing", "m"),
    _Kind("roll centre", "suspension", "roll_centre_tol_mm",
          "roll_centre_mm", "roll_centre_height", "m"),
    _Kind("bump travel", "suspension", "bump_tol_mm", "travel_mm", "bump", "m"),
    _Kind("droop travel", "suspension", "droop_tol_mm", "travel_mm", "droop", "m"),
    _Kind("anti-roll bar", "suspension", "anti_roll_tol_n_mm_per_deg",
          "anti_roll_percent", "anti_roll", "N m/rad"),
)  # fmt: skip
_SI: dict[Unit, float] = {
    "m": 1e-3,
    "kg": 1e-3,
    "N/m": 1e3,
    "N m/rad": 1e-3 * degrees(1),
    "rad": radians(1),
}


_KEYS = {k.field: k.key for k in _KINDS} | {
    "wheelbase": "wheelbase_mm",
    "heave_lean": "lean_percent",
    "turn": "steer_deg",
    "offset": "kingpin_offset_mm",
    "stands": "preload_mm",
    "chassis": "link_end_mm",
    "axle": "link_end_mm",
}
_ASSUMED = {
    "shaft": "an assumption: from the ratios that axles of scale trucks are built with",
    "offset": "an assumption: from the offsets that steering knuckles are built with",
}
NOT_MEASURED = "an assumption: no published number was found for small foam-filled tyres"


def reason(one: UncertainInput) -> str:
    """Why an input may be out by so much, or nothing where the file itself says so."""
    table, _, field = one.fields[0].rpartition(".")
    if one.basis == "default":
        return DEFAULTS["link_end_mm" if table.endswith("links") else _KEYS[field]].why
    return _ASSUMED.get(field, NOT_MEASURED) if one.basis == "assumed" else ""


def general(tolerance: ToleranceSpec | None, key: str) -> tuple[float, Basis]:
    """What a key of [tolerance] comes to, in its unit, and whether the file says so.

    Raises AttributeError or KeyError for a key that has no default.
    """
    given = None if tolerance is None else getattr(tolerance, key)
    return (DEFAULTS[key].value, "default") if given is None else (given, "file")


def of_parts(tolerance: ToleranceSpec | None) -> tuple[float, float, float]:
    """Plus or minus of parts that say nothing: g, share of the mass (they add), and mm."""
    place = general(tolerance, "place_mm")[0]
    if tolerance is None or (tolerance.mass_g is None and tolerance.mass_percent is None):
        return 0.0, DEFAULTS["mass_percent"].value / 100, place
    return tolerance.mass_g or 0.0, (tolerance.mass_percent or 0.0) / 100, place


def uncertain_inputs(truck: Truck, spec: TruckSpec) -> tuple[UncertainInput, ...]:
    """All that may be out in a truck built from this spec, beside its parts, in a fixed order.

    What cannot be out is left out: a tolerance of 0, a value of 0 that has to be positive, and
    the suspension of a locked axle.

    low and high are likely -+ limit, SI, cut at 0. Lean, to first order: points / 100 h / L
    cos(lean)^2. Raises LinkageError where links bind.
    """
    own = spec.chassis.wheelbase_tol_mm
    found = [_even("wheelbase", truck.wheelbase, own, "wheelbase_mm", spec, "m", ("wheelbase",))]
    for name, axle, end in zip(ENDS, truck.axles, (spec.front, spec.rear), strict=True):
        guessed = [f for f in ("lateral", "longitudinal") if _guessed(end, f)]
        for kind in _KINDS:
            if kind.field in guessed or (kind.table == "suspension" and axle.suspension.locked):
                continue
            if kind.field in _follows(axle.suspension):
                continue
            table, given = (getattr(v, kind.table) if kind.table else v for v in (axle, end))
            moved = [kind.field, *(guessed if kind.field == "stiffness" else ())]
            found.append(
                _even(
                    f"{name} {kind.words}",
                    getattr(table, kind.field),
                    _own(given, kind),
                    kind.key,
                    spec,
                    kind.unit,
                    tuple(".".join(filter(None, (name, kind.table, f))) for f in moved),
                )
            )
        if axle.suspension.links is not None and not axle.suspension.locked:
            found += _link_ends(name, axle.suspension.links, spec)
        elif not axle.suspension.locked:
            found.append(_lean(name, truck, axle.suspension, end.suspension, spec))
    found += [*_ratio(spec), *_unsprung(truck, spec)]
    for name, axle in zip(ENDS, truck.axles, strict=True):
        found += _shock_ends(name, axle.suspension, spec)
    found += [*_stances(truck, spec), *_shafts(spec), *_steering(truck, spec)]
    return tuple(one for one in found if one.high > one.low)


def _follows(suspension: Suspension) -> tuple[str, ...]:
    """Fields that are no numbers of the file but follow from its links and shocks."""
    links = ("roll_centre_height",) if suspension.links is not None else ()
    return links if suspension.shocks is None else (*links, "spring_spacing")


def _own(given: object, kind: _Kind) -> float | None:
    """The table's own tolerance of a kind; a spring may stand along its shock."""
    if kind.field == "spring_rate" and getattr(given, "shock_n_per_mm", None) is not None:
        return getattr(given, "shock_tol_n_per_mm", None)
    return getattr(given, kind.tol)  # type: ignore[no-any-return]


def _link_ends(name: str, links: Links, spec: TruckSpec) -> list[UncertainInput]:
    """How high each link's chassis end is: what roll centre and instant centre hang on most."""
    amount, basis = general(spec.tolerance, "link_end_mm")
    half, found = amount * 1e-3, []
    for first, part in enumerate(links.names):
        if part in links.names[:first]:
            continue
        found.append(
            UncertainInput(
                f"{part}, height of its chassis end",
                "m",
                -half,
                0.0,
                half,
                "rectangular",
                basis,
                (f"{name}.links.{first}",),
            )
        )
    return found


def _off(
    words: str, half: float, basis: Basis, field: str, likely: float = 0.0, unit: Unit = "m"
) -> UncertainInput:
    """An input as likely anywhere half about `likely`; a shift where that is 0."""
    low, high = likely - half, likely + half
    return UncertainInput(words, unit, low, likely, high, "rectangular", basis, (field,))


def _shock_ends(name: str, suspension: Suspension, spec: TruckSpec) -> list[UncertainInput]:
    """How far out a pair of shocks' ends are, each: what their motion ratio hangs on most."""
    if suspension.shocks is None or suspension.locked:
        return []
    amount, basis = general(spec.tolerance, "link_end_mm")
    return [
        _off(f"{name} shocks, how far out their {end} ends are", amount * 1e-3, basis,
             f"{name}.shocks.{end}")
        for end in ("chassis", "axle")
    ]  # fmt: skip


def _stances(truck: Truck, spec: TruckSpec) -> list[UncertainInput]:
    """How high either end stands, where collar, shock and spring say so (root of their squares):
    the spring's rate is varied besides, at one height."""
    found = []
    for i, (name, end) in enumerate(zip(ENDS, (spec.front, spec.rear), strict=True)):
        axle, given = truck.axles[i], end.suspension
        if given.preload_mm is None or axle.suspension.locked:
            continue
        collar, basis = general(spec.tolerance, "preload_mm")
        length, _ = general(spec.tolerance, "link_end_mm")
        share, _ = general(spec.tolerance, "spring_percent")
        if given.shock_tol_n_per_mm is not None:
            share = 100 * given.shock_tol_n_per_mm / given.rate
        squeeze = float(axle_squeezes(truck, i).mean())
        along = sqrt((collar * 1e-3) ** 2 + (length * 1e-3) ** 2 + (share / 100 * squeeze) ** 2)
        half = along / float(law_of(axle).ratios()[0, 0])
        found.append(_off(f"{name}, how high it stands on its springs", half, basis,
                          f"{name}.stands"))  # fmt: skip
    return found


def _shafts(spec: TruckSpec) -> list[UncertainInput]:
    """The axles' ratio where it is assumed; teeth that are counted are not out."""
    if spec.chassis.held_by != "motor" or spec.chassis.axle_ratio is not None:
        return []
    low, high = 1 / AXLE_RATIOS[1], 1 / AXLE_RATIOS[0]
    words, fields = "turns of a wheel to one of its axle's shaft", ("front.shaft", "rear.shaft")
    likely = 1 / TYPICAL_AXLE_RATIO
    return [UncertainInput(words, "1", low, likely, high, "triangular", "assumed", fields)]


def _steering(truck: Truck, spec: TruckSpec) -> list[UncertainInput]:
    """How far the front wheels are turned, and about what, where they are."""
    if not spec.chassis.steer_deg:
        return []
    turn, offset = steering(truck.front)
    amount, basis = general(spec.tolerance, "steer_deg")
    half = min(radians(amount), abs(turn))
    found = [_off("angle of the front wheels", half, basis, "front.steered.turn", turn, "rad")]
    words, field = "kingpins to tyres' middles", "front.steered.offset"
    if spec.front.kingpin_offset_mm is not None:
        amount, basis = general(spec.tolerance, "kingpin_offset_mm")
        return [*found, _off(words, min(amount * 1e-3, offset), basis, field, offset)]
    low, high = (share * offset for share in KINGPIN_SHARES)
    one = UncertainInput(words, "m", low, offset, high, "triangular", "assumed", (field,))
    return [*found, one]


def _guessed(end: AxleSpec, field: str) -> bool:
    return getattr(end.tyre, f"{field}_n_per_mm") is None


def _even(
    words: str,
    likely: float,
    own: float | None,
    key: str,
    spec: TruckSpec,
    unit: Unit,
    fields: tuple[str, ...],
) -> UncertainInput:
    """An input as likely anywhere between its limits. own: its table's tolerance, file's unit."""
    basis: Basis
    if own is not None:
        half, basis = own * _SI[unit], "file"
    else:
        amount, basis = general(spec.tolerance, key)
        half = amount * (likely / 100 if key.endswith("percent") else _SI[unit])
    half = min(half, likely)
    return UncertainInput(
        words, unit, likely - half, likely, likely + half, "rectangular", basis, fields
    )


def _lean(
    name: str, truck: Truck, suspension: Suspension, given: SuspensionSpec, spec: TruckSpec
) -> UncertainInput:
    """The lean of a heave axis. Percentage points make of it what they do at the truck's own CG
    height and wheelbase, to first order: see SuspensionSpec."""
    lean = suspension.heave_lean
    basis: Basis
    if given.heave_lean_tol_deg is not None:
        half, basis = radians(given.heave_lean_tol_deg), "file"
    else:
        points, basis = general(spec.tolerance, "lean_percent")
        if given.percent_tol is not None:
            points, basis = given.percent_tol, "file"
        half = points / 100 * float(whole(truck).cg[2]) / truck.wheelbase * cos(lean) ** 2
    words = f"{name} {'anti-dive' if name == 'front' else 'anti-squat'}, lean of the heave axis"
    field = f"{name}.suspension.heave_lean"
    return UncertainInput(
        words, "rad", lean - half, lean, lean + half, "rectangular", basis, (field,)
    )


def _ratio(spec: TruckSpec) -> list[UncertainInput]:
    """How tyres give along the ground where nobody measured it: one ratio for all of them."""
    fields = tuple(
        f"{name}.tyre.{field}"
        for name, end in zip(ENDS, (spec.front, spec.rear), strict=True)
        for field in ("lateral", "longitudinal")
        if _guessed(end, field)
    )
    words = "tyre stiffness along the ground over the vertical one"
    low, likely, high = TANGENTIAL_RATIO
    one = UncertainInput(words, "1", low, likely, high, "triangular", "assumed", fields)
    return [one] if fields else []


def _unsprung(truck: Truck, spec: TruckSpec) -> list[UncertainInput]:
    """How much of the weight is on the axles, where a remainder keeps the sums: all errors of the
    masses there together (root of their squares)."""
    row = spec.remainder
    found: list[UncertainInput] = []
    for i, name in enumerate(ENDS if row is not None else ()):
        own = [p for p in truck.parts if p.carrier.startswith(name) and p.unsprung == 1]
        pieces = {p.row: sum(q.row == p.row for q in own) for p in own}
        masses = {p.row: p.body.mass for p in own}
        off = [n * _mass_limit(spec, r, masses[r]) for r, n in pieces.items()]
        total, half = unsprung(truck, i).mass, sqrt(sum(v * v for v in off))
        half = min(half, LEAST_UNSPRUNG * total)
        found.append(
            UncertainInput(
                f"{name} unsprung mass",
                "kg",
                total - half,
                total,
                total + half,
                "rectangular",
                "file",
                (f"{name}.unsprung.{row}",),
            )
        )
    return found


def _mass_limit(spec: TruckSpec, row: int, mass: float) -> float:
    """kg, plus or minus, of one piece."""
    own = spec.part[row].mass_tol_g
    if own is not None:
        return own * 1e-3
    grams, share, _ = of_parts(spec.tolerance)
    return grams * 1e-3 + share * mass
