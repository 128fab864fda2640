"""How much of a truck is known, and how much is taken for granted."""

from __future__ import annotations

from dataclasses import dataclass

from crossfall.truck.checks import truck_mistakes
from crossfall.truck.linkage import LinkageError
from crossfall.truck.model import ENDS, Truck
from crossfall.truck.read import in_memory
from crossfall.truck.ride import spring_squeezes
from crossfall.truck.schema import (
    TYPICAL_AXLE_RATIO,
    TYPICAL_DAMPING,
    ToleranceSpec,
    TruckSpec,
    assumed_kingpin_offset,
)
from crossfall.truck.tolerances import DEFAULTS, Basis
from crossfall.truck.uncertain import shown, varied

_SECTIONS = {
    "clearance": "no approach, breakover or departure angle",
    "battery": "no run time",
    "grip": "no slide angle",
    "tolerance": "what gives no tolerance of its own has one by default",
}


@dataclass(frozen=True)
class Completeness:
    """What a chassis file leaves open. Shares are of the total mass, 0 to 1.

    weighed, computed: how masses came about. shaped: mass whose own inertia comes from a shape or
    is given; the rest counts as compact lumps. toleranced: mass of rows with a tolerance on mass
    and place. missing: optional sections left out, with what that costs. no_tolerance, no_shape,
    no_price: names of parts. assumptions: values nobody measured, a sentence each.
    default_tolerances: what has one by default, and how much. notes: things to know that are no
    mistakes.
    """

    rows: int
    pieces: int
    weighed: float
    computed: float
    shaped: float
    toleranced: float
    missing: tuple[tuple[str, str], ...]
    no_tolerance: tuple[str, ...]
    no_shape: tuple[str, ...]
    no_price: tuple[str, ...]
    assumptions: tuple[str, ...]
    default_tolerances: tuple[str, ...]
    notes: tuple[str, ...]


def completeness(truck: Truck, spec: TruckSpec) -> Completeness:
    """How complete a truck's file is; the truck must have been built from this spec.

    Shares are sums of masses over the total. Raises ZeroDivisionError where nothing has mass.
    """
    mass = [0.0] * len(spec.part)
    for piece in truck.parts:
        mass[piece.row] += piece.body.mass
    total = sum(mass)
    weighed = {i for i, p in enumerate(spec.part) if p.mass_g is not None}
    shaped = {
        i for i, p in enumerate(spec.part) if p.shape is not None or p.inertia_kg_mm2 is not None
    }
    bare = {i for i in range(len(spec.part)) if not _toleranced(spec, i)}
    everything = set(range(len(spec.part)))

    def share(rows: set[int]) -> float:
        return sum(mass[i] for i in sorted(rows)) / total

    def names(rows: set[int]) -> tuple[str, ...]:
        return tuple(spec.part[i].name for i in sorted(rows))

    return Completeness(
        rows=len(spec.part),
        pieces=len(truck.parts),
        weighed=share(weighed),
        computed=share(everything - weighed),
        shaped=share(shaped),
        toleranced=share(everything - bare),
        missing=tuple((k, cost) for k, cost in _SECTIONS.items() if not getattr(spec, k)),
        no_tolerance=names(bare),
        no_shape=names(everything - shaped),
        no_price=names({i for i, p in enumerate(spec.part) if p.price == 0}),
        assumptions=(*assumptions(truck), *_damping(spec)),
        default_tolerances=default_tolerances(truck, spec),
        notes=(*notes(truck), *falls_in_tolerance(truck, spec)),
    )


def _toleranced(spec: TruckSpec, row: int) -> bool:
    part, default = spec.part[row], spec.tolerance
    mass = part.mass_tol_g is not None or (default and (default.mass_g or default.mass_percent))
    place = part.place_tol_mm is not None or part.place_tol_xyz_mm is not None
    place = place or bool(default and default.place_mm)
    return bool(mass) and bool(place)


def assumptions(truck: Truck) -> tuple[str, ...]:
    """What was not measured and so is assumed, a sentence each."""
    found = []
    for one in truck.uncertain:
        if one.basis == "assumed":
            unit, low, likely, high = shown(one)
            taken = f"{likely:.3g} {unit}".strip()
            found.append(
                f"{one.name} was not measured: {taken} is taken, {low:.3g} to {high:.3g} for ±"
            )
    return tuple(found)


def _damping(spec: TruckSpec) -> tuple[str, ...]:
    given = [e.suspension.model_fields_set for e in (spec.front, spec.rear)]
    if all("damping_n_s_per_m" in keys for keys in given):
        return ()
    what = f"{TYPICAL_DAMPING:g} N s/m is taken; a slow tilt does not ask for it"
    return (f"damping was not measured: {what}",)


def default_tolerances(truck: Truck, spec: TruckSpec) -> tuple[str, ...]:
    """Every tolerance that the file leaves to default, as in `limits`.

    Raises nothing.
    """
    given, found = spec.tolerance or ToleranceSpec(), limits(truck, "default")
    if given.mass_g is None and given.mass_percent is None and _any_without(spec, "mass_tol_g"):
        found += (f"mass of a part ±{DEFAULTS['mass_percent'].value:g} %",)
    if given.place_mm is None and _any_without(spec, "place_tol_mm"):
        found += (f"place of a part ±{DEFAULTS['place_mm'].value:g} mm",)
    return found


def _any_without(spec: TruckSpec, key: str) -> bool:
    by_axis = "place_tol_xyz_mm" if key == "place_tol_mm" else key
    return any(getattr(p, key) is None and getattr(p, by_axis) is None for p in spec.part)


def limits(truck: Truck, basis: Basis) -> tuple[str, ...]:
    """Every tolerance on that basis, as "front and rear track ±1 mm"; stiffnesses in percent."""
    ends: dict[tuple[str, str], list[str]] = {}
    for one in truck.uncertain:
        if one.basis != basis:
            continue
        unit, low, likely, high = shown(one)
        half = f"±{(high - low) / 2:.3g} {unit}"
        if one.unit in ("N/m", "N m/rad"):
            half = f"±{(high - low) / 2 / likely * 100:.3g} %"
        end, _, rest = one.name.partition(" ")
        words = (rest, end) if end in ENDS else (one.name, "")
        ends.setdefault((words[0], half), []).append(words[1])
    return tuple(
        " ".join(filter(None, (" and ".join(filter(None, where)), words, half)))
        for (words, half), where in ends.items()
    )


def falls_in_tolerance(truck: Truck, spec: TruckSpec) -> tuple[str, ...]:
    """Inputs within whose own tolerance the truck cannot stand on the level, or its links bind, a
    sentence each."""
    where, found = in_memory(spec), []
    for number, one in enumerate(truck.uncertain):
        unit, low, _, high = shown(one)
        for value, end in ((one.low, low), (one.high, high)):
            try:
                problems = truck_mistakes(varied(truck, {number: value}), spec, where)
                wrong = problems[0].what if problems else ""
            except LinkageError as error:
                wrong = str(error)
            if wrong:
                found.append(f"{one.name}: at {end:.4g} {unit}, in its range, {wrong}")
    return tuple(found)


def notes(truck: Truck) -> tuple[str, ...]:
    """What an experienced eye would remark on, a sentence each."""
    found = []
    squeezes = spring_squeezes(truck)
    for i, (name, axle) in enumerate(zip(("front", "rear"), truck.axles, strict=True)):
        s = axle.suspension
        if s.locked:
            found.append(f"the {name} suspension is locked")
            continue
        free = min(squeezes[2 * i : 2 * i + 2])
        if free < s.droop:
            found.append(
                f"the {name} springs go slack after {free * 1e3:.1f} mm of the "
                f"{s.droop * 1e3:g} mm of droop: the body can snap up to its stops on a slope"
            )
    return tuple(found)


def how_it_stands(spec: TruckSpec) -> tuple[str, ...]:
    """What is unusual about how it stands on a slope, a sentence each, with what is assumed for it;
    none with straight wheels on brakes."""
    found, chassis = [], spec.chassis
    if chassis.held_by == "motor":
        ratio = chassis.axle_ratio
        assumed = "" if ratio else ", which is assumed: give axle_ratio"
        kinds = spec.front.differential, spec.rear.differential
        how = (
            f"{kinds[0]} differentials"
            if kinds[0] == kinds[1]
            else f"a {kinds[0]} front and {kinds[1]} rear differential".replace("a open", "an open")
        )
        found.append(
            f"held by its motor through {how}, the shafts turning "
            f"{ratio or TYPICAL_AXLE_RATIO:g} times for each turn of a wheel{assumed}"
        )
    if chassis.steer_deg:
        given, track = spec.front.kingpin_offset_mm, spec.front.track_mm
        offset = assumed_kingpin_offset(track) if given is None else given
        assumed = "" if given is not None else ", which is assumed: give kingpin_offset_mm"
        found.append(
            f"with its front wheels turned {abs(chassis.steer_deg):g}° to the "
            f"{'left' if chassis.steer_deg > 0 else 'right'} about kingpins "
            f"{offset:g} mm inside their tyres' middles{assumed}"
        )
    return tuple(found)
