"""How much of a truck is known, and how much is taken for granted."""

from __future__ import annotations

from dataclasses import dataclass

from crossfall.truck.model import Truck
from crossfall.truck.ride import spring_preloads
from crossfall.truck.schema import TruckSpec

_SECTIONS = {
    "clearance": "no approach, breakover or departure angle",
    "battery": "no run time",
    "grip": "no slide angle",
    "tolerance": "parts without their own tolerance count as exact",
}


@dataclass(frozen=True)
class Completeness:
    """What a chassis file leaves open. Shares are of the total mass, 0 to 1.

    weighed, computed: how masses came about. shaped: mass whose own inertia comes from a shape or
    is given; the rest counts as compact lumps. toleranced: mass of rows with a tolerance on mass
    and place. missing: optional sections left out, with what that costs. no_tolerance, no_shape,
    no_price: names of parts. notes: things to know that are no mistakes.
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
    notes: tuple[str, ...]


def completeness(truck: Truck, spec: TruckSpec) -> Completeness:
    """How complete a truck's file is; the truck must have been built from this spec."""
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
        notes=notes(truck),
    )


def _toleranced(spec: TruckSpec, row: int) -> bool:
    part, default = spec.part[row], spec.tolerance
    mass = part.mass_tol_g is not None or (default and (default.mass_g or default.mass_percent))
    place = part.place_tol_mm is not None or (default and default.place_mm)
    return bool(mass) and bool(place)


def notes(truck: Truck) -> tuple[str, ...]:
    """What an experienced eye would remark on, a sentence each."""
    found = []
    preloads = spring_preloads(truck)
    for i, (name, axle) in enumerate(zip(("front", "rear"), truck.axles, strict=True)):
        s = axle.suspension
        if s.locked:
            found.append(f"the {name} suspension is locked")
            continue
        free = min(preloads[2 * i : 2 * i + 2]) / s.spring_rate
        if free < s.droop:
            found.append(
                f"the {name} springs go slack after {free * 1e3:.1f} mm of the "
                f"{s.droop * 1e3:g} mm of droop: the body can snap up to its stops on a slope"
            )
    return tuple(found)
