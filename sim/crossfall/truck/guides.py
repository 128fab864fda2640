"""From link and shock parts of the file to an axle's guidance: `Links` and `Shocks`.

Source: of anti-squat and anti-dive T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE, 1992),
chapter 7 (from memory); the rest is derived here from `truck.linkage`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache
from math import degrees, tan

import numpy as np

from crossfall.truck import schema
from crossfall.truck.axle_law import law_of
from crossfall.truck.errors import Problem
from crossfall.truck.linkage import LinkageError, geometry, refuse, shock_ratio
from crossfall.truck.massprops import whole
from crossfall.truck.model import ENDS, Array, Axle, Links, Shocks, Suspension, Truck, frozen
from crossfall.truck.read import Where
from crossfall.truck.solids import MM

RODS = ("lower", "upper", "track bar", "wishbone")
_LAST = 1e-12  # m and rad: further digits of what follows from links differ between processors
AT_REST = np.zeros(1)
LEAST_APART = 0.01  # m between two shocks' middles; nearer ones hold no roll


def suspended(truck: Truck, spec: schema.TruckSpec, where: Where) -> tuple[Truck, list[Problem]]:
    """The truck with its axles on their links and shocks, where the file has any and they count;
    and what is wrong with them. It refuses nothing itself.
    """
    found: list[Problem] = []
    axles = []
    for end, axle, given in zip(ENDS, truck.axles, (spec.front, spec.rear), strict=True):
        try:
            axle, problem = _axle(end, axle, given.suspension, truck, spec)
        except LinkageError as error:
            row = error.row if error.row is not None else rods(spec, end)[0][0]
            found.append(where.problem(("part", row, "chassis_end_mm"), str(error)))
            continue
        if problem is not None:
            key, what, allowed = problem
            found.append(where.problem((end, "suspension", key), what, allowed))
        axles.append(axle)
    if found:
        return truck, found
    return replace(truck, front=axles[0], rear=axles[1]), []


def rods(spec: schema.TruckSpec, end: str) -> list[tuple[int, schema.PartSpec]]:
    """Rows and parts that guide an axle; none where the file says that numbers count."""
    given = (spec.front if end == "front" else spec.rear).suspension
    if given.guided_by == "numbers":
        return []
    return _links(spec, end, RODS)


def _links(
    spec: schema.TruckSpec, end: str, kinds: Sequence[str]
) -> list[tuple[int, schema.PartSpec]]:
    on = f"{end} link"
    return [(i, p) for i, p in enumerate(spec.part) if p.on == on and p.link in kinds]


def _ends(part: schema.PartSpec, axle: Axle, lift: float) -> tuple[Array, Array]:
    """(n, 3) m chassis and axle ends of one row, from the axle's centre: see Links."""
    sides = np.array([[1.0, 1.0, 1.0], [1.0, -1.0, 1.0]][: 1 + part.mirror])
    upper = np.multiply(part.chassis_end_mm or (0.0,) * 3, MM) * sides
    lower = np.multiply(part.axle_end_mm or (0.0,) * 3, MM) * sides
    return upper - [axle.x, 0.0, axle.tyre.radius - lift], lower


Wrong = tuple[str, str, str]  # key of the suspension, what, what is allowed


def _axle(
    end: str, axle: Axle, given: schema.SuspensionSpec, truck: Truck, spec: schema.TruckSpec
) -> tuple[Axle, Wrong | None]:
    """Raises LinkageError."""
    if given.shock_n_per_mm is None:
        return _on_its_links(end, axle, given, truck, spec)
    parts = _links(spec, end, ("shock",))
    if len(parts) != 1:
        what = "is given, and " + ("no" if not parts else "more than one") + " part is a shock"
        allowed = f"one mirrored part on the {end} link with link = 'shock'"
        return axle, ("shock_n_per_mm", what, allowed)
    ((row, part),) = parts
    shocks = Shocks(*(frozen(e) for e in _ends(part, axle, spec.chassis.raise_mm * MM)))
    length = float(shocks.lengths[0])
    if not length:
        raise LinkageError(f"{part.name} has both ends at the same place", row)
    own = replace(axle.suspension, shocks=shocks, spring_spacing=_apart(shocks))
    if own.spring_spacing < LEAST_APART:
        what = "crosses the truck's middle, where it holds no roll"
        raise LinkageError(f"{part.name} {what}: a sign is wrong at one of its ends", row)
    pressed = (given.droop_mm or 0.0) * MM
    if given.shock_length_mm is not None:
        pressed = given.shock_length_mm * MM - length
    if wrong := _short(given, length, pressed):
        return axle, wrong
    shaft = given.shaft_travel_mm
    bump = (given.bump_mm or 0.0) * MM if shaft is None else shaft * MM - pressed
    own = replace(
        own,
        droop=_round(pressed - given.droop_limiter_mm * MM),
        bump=_round(bump - given.bump_limiter_mm * MM),
    )
    return _on_its_links(end, replace(axle, suspension=own), given, truck, spec)


def _short(given: schema.SuspensionSpec, length: float, pressed: float) -> Wrong | None:
    """What of a shock's travel does not go together. length: m eye to eye at ride height, pressed:
    m from fully extended."""
    mm = pressed / MM
    if pressed < 0:
        what = f"is {given.shock_length_mm:g}, and its ends are {length / MM:.1f} mm apart"
        return "shock_length_mm", what, f"at least {length / MM:.1f}"
    if given.droop_limiter_mm > mm:
        what = f"is {given.droop_limiter_mm:g}, more than the droop there is"
        return "droop_limiter_mm", what, f"at most {mm:.1f}"
    shaft = given.shaft_travel_mm
    if shaft is not None and shaft < mm:
        what = f"is {shaft:g}, and at ride height the shock is pressed in by {mm:.1f} mm"
        return "shaft_travel_mm", what, f"at least {mm:.1f}"
    bump = (given.bump_mm or 0.0) if shaft is None else shaft - mm
    if given.bump_limiter_mm > bump:
        what = f"is {given.bump_limiter_mm:g}, more than the bump there is"
        return "bump_limiter_mm", what, f"at most {bump:.1f}"
    return None


def _on_its_links(
    end: str, axle: Axle, given: schema.SuspensionSpec, truck: Truck, spec: schema.TruckSpec
) -> tuple[Axle, Wrong | None]:
    """The axle on the rods of the file, if there are any that count. Raises LinkageError."""
    lift, own = spec.chassis.raise_mm * MM, axle.suspension
    chosen = rods(spec, end)
    if not chosen:
        if given.roll_centre_mm is None:
            allowed = "give it, or say what the links are: link = 'lower', 'upper', 'track bar'"
            return axle, ("roll_centre_mm", "is missing", allowed)
        return with_spacing(replace(axle, suspension=own)), None
    ends = [_ends(part, axle, lift) for _, part in chosen]
    links = Links(
        frozen(np.vstack([e[0] for e in ends])),
        frozen(np.vstack([e[1] for e in ends])),
        tuple(part.name for (_, part), e in zip(chosen, ends, strict=True) for _ in e[0]),
        own.bump,
        own.droop,
        own.spring_spacing,
    )
    refuse(links, end)
    ratio = 1.0 if own.shocks is None else shock_ratio(links, own.shocks)
    if 0.0 < ratio < 1.0:  # the wheel moves further than the shaft
        links = replace(links, bump=_round(own.bump / ratio), droop=_round(own.droop / ratio))
    axle = guided(replace(axle, suspension=own), links)
    law_of(axle)  # refuses links that bind
    axle = with_spacing(axle)
    if given.guided_by is None and (contradictions := _contradiction(end, axle, given, truck)):
        key, what = contradictions
        return axle, (key, what, 'say which counts: guided_by = "links" or "numbers"')
    return axle, None


def guided(axle: Axle, links: Links) -> Axle:
    """The axle on these links; roll centre and lean become what they amount to at ride height.

    height m, lean rad, of `linkage.geometry` at 0, 0. Raises LinkageError as that does.
    """
    height, lean = _amounts(links, axle.tyre.radius)
    return replace(
        axle,
        suspension=replace(
            axle.suspension, links=links, roll_centre_height=height, heave_lean=lean
        ),
    )


@lru_cache(maxsize=1024)
def _amounts(links: Links, radius: float) -> tuple[float, float]:
    """Roll centre's height, m, and lean, rad, at ride height."""
    at = geometry(links, 0.0, radius, AT_REST, AT_REST)
    return _round(at.roll_centre[0]), _round(at.lean[0])


def _round(value: float) -> float:
    return float(round(value / _LAST) * _LAST)


def _apart(shocks: Shocks | None) -> float:
    """m between the shocks' middles, about where they push; exact spacing comes with the law."""
    if shocks is None:
        return 0.0
    middle = (shocks.chassis + shocks.axle) / 2
    return float(abs(middle[0, 1] - middle[1, 1]))


def with_spacing(axle: Axle) -> Axle:
    """The axle with the spacing of two upright springs that would roll it as its shocks do.

    (r_left - r_right) / q, m, of `AxleLaw.ratios`. Raises LinkageError where its links bind.
    """
    if axle.suspension.shocks is None:
        return axle
    (by_q, by_r), (_, other) = law_of(axle).ratios()
    spacing = _round((by_r - other) / by_q)
    return replace(axle, suspension=replace(axle.suspension, spring_spacing=spacing))


def anti(end: str, suspension: Suspension, truck: Truck) -> float:
    """Anti-dive (front) or anti-squat (rear), percent, that a lean amounts to: SuspensionSpec.

    +-100 tan(lean) L / h, + in front. end: front or rear; any other counts as rear.
    """
    sign = 1.0 if end == "front" else -1.0
    return float(sign * 100 * tan(suspension.heave_lean) * truck.wheelbase / whole(truck).cg[2])


def _contradiction(
    end: str, axle: Axle, given: schema.SuspensionSpec, truck: Truck
) -> tuple[str, str] | None:
    """The first key that the links answer as well, and both values."""
    s, contradictions = axle.suspension, []
    key = ""
    if given.roll_centre_mm is not None:
        key = "roll_centre_mm"
        contradictions.append(
            f"a roll centre of {given.roll_centre_mm:g} mm and the links give "
            f"{s.roll_centre_height / MM:.1f} mm"
        )
    if given.percent is not None:
        key = key or given.PERCENT
        name = given.PERCENT.removesuffix("_percent").replace("_", "-")
        contradictions.append(
            f"{name} of {given.percent:g} % and the links give {anti(end, s, truck):.0f} %"
        )
    if given.heave_lean_deg is not None:
        key = key or "heave_lean_deg"
        contradictions.append(
            f"a lean of {given.heave_lean_deg:g} deg and the links give "
            f"{degrees(s.heave_lean):.1f} deg"
        )
    return (key, f"the file says {', '.join(contradictions)}") if contradictions else None
