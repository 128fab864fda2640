"""What is wrong with a truck although every single value of its file is in order.

Source: bounds are common practice, no source; what a truck stands on is derived here from
equilibrium: roll stiffness sum k s^2 / 4 and pitch stiffness sum k x^2 against weight times lever,
swings as sqrt(k / m) / 2 pi.
"""

from __future__ import annotations

from math import hypot, inf, sqrt, tau

import numpy as np
from pydantic import BaseModel

from crossfall.truck.assemble import BODIES
from crossfall.truck.errors import Problem
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.materials import MATERIALS
from crossfall.truck.model import GRAVITY, WHEELS, Suspension, Truck
from crossfall.truck.read import Where
from crossfall.truck.ride import (
    corner_rates,
    level_axle_loads,
    spring_preloads,
    spring_squeezes,
    tyre_loads,
)
from crossfall.truck.schema import TruckSpec
from crossfall.truck.sentences import suggestion
from crossfall.truck.toleranced import SIGNED, value_of

_ENDS = ("front", "rear")
# A roll centre higher than this many tyre radii is a slip of the pen.
_HIGHEST_ROLL_CENTRE = 4.0
# A spring squeezed by more than this share of the wheelbase would not fit under the truck.
_LONGEST_SQUEEZE = 0.5
# A tyre pressed in by more than this share of its radius stands on its rim.
_DEEPEST_SQUASH = 0.5
_LIGHTEST = 5e-4  # kg; a wheel, axle or chassis lighter than that is a slip of the pen
# What swings faster is not followed: a trial would take all day, and truck parts swing at 2 to 60.
_FASTEST = 500.0  # Hz
# A tyre that gives along the ground this many times less or more than upwards is a slip of the pen.
_TANGENTIAL_BOUNDS = (0.05, 20.0)
MOST_PIECES = 2000  # a truck of ours has a hundred
_FAR_OUT = 1.5  # wheelbases from the middle; further out a place is probably mistyped


def spec_mistakes(spec: TruckSpec, where: Where) -> list[Problem]:
    """Mistakes between values: names, materials, geometry that cannot be built, tolerances.

    Raises nothing of these.
    """
    return [
        *_many(spec, where),
        *_names(spec, where),
        *_remainders(spec, where),
        *_materials(spec, where),
        *_geometry(spec, where),
        *_general_tolerances(spec, where),
    ]


def _many(spec: TruckSpec, where: Where) -> list[Problem]:
    if not too_many(spec):
        return []
    return [where.problem(("part",), f"lists {_count(spec)} pieces", f"at most {MOST_PIECES}")]


def too_many(spec: TruckSpec) -> bool:
    """Whether the parts list asks for more pieces than are ever made."""
    return _count(spec) > MOST_PIECES


def _count(spec: TruckSpec) -> int:
    return sum(part.count * (2 if part.mirror else 1) for part in spec.part)


def _names(spec: TruckSpec, where: Where) -> list[Problem]:
    found = []
    seen: dict[str, str] = {}
    for i, part in enumerate(spec.part):
        key = part.name.casefold()
        if key in seen:
            file, line = where.place(("part", i, "name"))
            allowed = "every part needs a name of its own"
            what = f"'{part.name}' is there twice"
            found.append(Problem(file, what, allowed, f"part[{i}].name", line))
        seen[key] = part.name
    if spec.battery is not None and spec.battery.part.casefold() not in seen:
        what = f"'{spec.battery.part}' is not in the parts list"
        hint = suggestion(spec.battery.part, list(seen.values()))
        found.append(where.problem(("battery", "part"), what, hint))
    return found


def _remainders(spec: TruckSpec, where: Where) -> list[Problem]:
    rows = [i for i, part in enumerate(spec.part) if part.remainder]
    what = "is given twice"
    return [where.problem(("part", i, "remainder"), what, "one part at most") for i in rows[1:]]


def _materials(spec: TruckSpec, where: Where) -> list[Problem]:
    found = []
    known = [*MATERIALS, *spec.materials]
    for name in spec.materials:
        if name in MATERIALS:
            what = f"is in the table already, {MATERIALS[name].density / 1000:g} g/cm3"
            found.append(where.problem(("materials", name), what, "choose another name"))
    for i, part in enumerate(spec.part):
        if part.material is not None and part.material not in known:
            what = f"'{part.material}' is not a known material"
            hint = suggestion(part.material, known)
            found.append(where.problem(("part", i, "material"), what, hint))
    return found


def _geometry(spec: TruckSpec, where: Where) -> list[Problem]:
    found = []
    reach = spec.front.tyre.radius_mm + spec.rear.tyre.radius_mm
    if spec.chassis.wheelbase_mm <= reach:
        what = f"is {spec.chassis.wheelbase_mm:g}, so front and rear tyres would touch"
        allowed = f"more than both radii together, {reach:g}"
        found.append(where.problem(("chassis", "wheelbase_mm"), what, allowed))
    for name, end in (("front", spec.front), ("rear", spec.rear)):
        s = end.suspension
        if end.track_mm <= end.tyre.width_mm:
            what = f"is {end.track_mm:g}, so left and right tyre would touch"
            allowed = f"more than the tyre's width, {end.tyre.width_mm:g}"
            found.append(where.problem((name, "track_mm"), what, allowed))
        elif s.spring_spacing_mm is not None and s.spring_spacing_mm >= end.track_mm:
            what = f"is {s.spring_spacing_mm:g}, so the springs would stand in the wheels"
            allowed = f"less than the track, {end.track_mm:g}"
            found.append(where.problem((name, "suspension", "spring_spacing_mm"), what, allowed))
        highest = _HIGHEST_ROLL_CENTRE * end.tyre.radius_mm
        if s.roll_centre_mm is not None and s.roll_centre_mm > highest:
            what = f"is {s.roll_centre_mm:g}"
            allowed = f"a roll centre lies at most four tyre radii up, {highest:g}"
            found.append(where.problem((name, "suspension", "roll_centre_mm"), what, allowed))
    return found


def _general_tolerances(spec: TruckSpec, where: Where) -> list[Problem]:
    """A tolerance for all that leaves nothing of one of them."""
    if spec.tolerance is None:
        return []
    ends = (spec.front, spec.rear)
    spacings = [e.suspension.spring_spacing_mm for e in ends]
    least = {
        "wheelbase_mm": spec.chassis.wheelbase_mm,
        "track_mm": min(e.track_mm for e in ends),
        "radius_mm": min(e.tyre.radius_mm for e in ends),
        "spring_spacing_mm": min((s for s in spacings if s is not None), default=inf),
    }
    found = []
    for key, value in least.items():
        tolerance = getattr(spec.tolerance, key)
        if tolerance is not None and tolerance >= value:
            what = f"is {tolerance:g}, and the smallest {key} is {value:g}"
            found.append(where.problem(("tolerance", key), what, f"less than {value:g}"))
    return found


def truck_mistakes(truck: Truck, spec: TruckSpec, where: Where) -> list[Problem]:
    """Reasons why the truck as built cannot stand level on its four wheels.

    In order: carriers without mass, parts below ground, CG outside the wheels, a wheel that hangs,
    tyres pressed to the rim, springs that would pull or are too soft, a body that falls over on
    them, swings above 500 Hz. Raises LinkageError where links bind.
    """
    if found := _empty(truck, where):
        return found
    if found := [*_buried(truck, where), *_balance(truck, where)]:
        return found
    if found := _hanging(truck, where):
        return found
    found = [*_tyres(truck, where), *_springs(truck, where), *_upright(truck, where)]
    return found or _swift(truck, where)


def _empty(truck: Truck, where: Where) -> list[Problem]:
    bodies = (
        truck.chassis,
        truck.front.body,
        truck.rear.body,
        *truck.front.wheels,
        *truck.rear.wheels,
    )
    names = [f"{b} wheel" if b in WHEELS else b for b in BODIES]
    found = []
    for name, body in zip(names, bodies, strict=True):
        if body.mass == 0:
            what, allowed = f"nothing is on the {name}", "it needs at least one part"
            found.append(where.problem(("part",), what, allowed))
        elif body.mass < _LIGHTEST:
            what = f"all parts on the {name} weigh {body.mass * 1e3:.3g} g together"
            allowed = f"at least {_LIGHTEST * 1e3:g} g"
            found.append(where.problem(("part",), what, allowed))
    return found


def _buried(truck: Truck, where: Where) -> list[Problem]:
    found = {}
    for part in truck.parts:
        if part.body.cg[2] < 0 and part.row not in found:
            what = f"puts the part {-part.body.cg[2] * 1e3:.1f} mm under the ground"
            found[part.row] = where.problem(("part", part.row, "at_mm"), what, "z is up")
    return list(found.values())


def _balance(truck: Truck, where: Where) -> list[Problem]:
    body = whole(truck)
    front, rear = (load / (body.mass * GRAVITY) for load in level_axle_loads(truck))
    if min(front, rear) <= 0:
        end, x = (
            ("ahead of the front", truck.front.x)
            if rear <= 0
            else ("behind the rear", truck.rear.x)
        )
        what = f"the parts put the CG {abs(body.cg[0] - x) * 1e3:.0f} mm {end} axle"
        return [where.problem(("part",), what, "it must lie inside the wheels")]
    half = sum(
        share * (a.track / 2 + a.tyre.contact_half_width)
        for share, a in zip((front, rear), truck.axles, strict=True)
    )
    if abs(body.cg[1]) >= half:
        side = "left" if body.cg[1] > 0 else "right"
        what = f"the parts put the CG {abs(body.cg[1]) * 1e3:.0f} mm to the {side}"
        return [where.problem(("part",), what, f"it must lie inside the wheels, {half * 1e3:.0f}")]
    return []


def _hanging(truck: Truck, where: Where) -> list[Problem]:
    return [
        where.problem(
            ("part",),
            f"the parts leave the {name} wheel hanging on the level",
            "move weight towards it",
        )
        for name, load in zip(WHEELS, tyre_loads(truck), strict=True)
        if load <= 0
    ]


def _tyres(truck: Truck, where: Where) -> list[Problem]:
    found = []
    for end, axle, loads in zip(_ENDS, truck.axles, tyre_loads(truck).reshape(2, 2), strict=True):
        load, deepest = max(loads), _DEEPEST_SQUASH * axle.tyre.radius
        if load > deepest * axle.tyre.stiffness:
            squash = load / axle.tyre.stiffness * 1e3
            what = f"a tyre this soft gives {squash:.3g} mm under {load:.1f} N"
            allowed = f"at least {load / deepest / 1e3:.3g} N/mm, or it stands on its rim"
            found.append(where.problem((end, "tyre", "stiffness_n_per_mm"), what, allowed))
    return found


def _springs(truck: Truck, where: Where) -> list[Problem]:
    found = []
    squeezes, longest = spring_squeezes(truck), _LONGEST_SQUEEZE * truck.wheelbase
    for i, (name, force) in enumerate(zip(WHEELS, spring_preloads(truck), strict=True)):
        s, squeeze = truck.axles[i // 2].suspension, squeezes[i]
        key = _rate_key(_ENDS[i // 2], s)
        if s.locked:
            continue
        if force <= 0:
            what = f"the {name} spring would have to pull by {-force:.2f} N to hold the truck level"
            found.append(where.problem(key, what, "springs only push: move weight towards it"))
        elif squeeze > longest:
            what = f"the {name} spring cannot hold {force:.1f} N: it gives {squeeze * 1e3:.0f} mm"
            stiff = force / longest / 1e3
            found.append(where.problem(key, what, f"it needs at least {stiff:.3g} N/mm here"))
    return found


def _rate_key(end: str, suspension: Suspension) -> tuple[str, ...]:
    return end, "suspension", f"{'shock' if suspension.shocks else 'spring'}_n_per_mm"


def _upright(truck: Truck, where: Where) -> list[Problem]:
    """Springs stiffer in roll and pitch than the sprung weight's lever over them."""
    if any(a.suspension.locked for a in truck.axles):
        return []
    c, weight = truck.chassis.cg, truck.chassis.mass * GRAVITY
    s = [a.suspension for a in truck.axles]
    share = (c[0] - truck.rear.x) / truck.wheelbase
    roll_centre = share * s[0].roll_centre_height + (1 - share) * s[1].roll_centre_height
    rates = corner_rates(truck).reshape(2, 2).sum(axis=1).tolist()
    roll = sum(k * v.spring_spacing**2 / 4 + v.anti_roll for k, v in zip(rates, s, strict=True))
    pitch = sum(k * (a.x - c[0]) ** 2 for k, a in zip(rates, truck.axles, strict=True))
    found = []
    for stiffness, arm, way in (
        (roll, c[2] - roll_centre, "sideways"),
        (pitch, c[2], "fore and aft"),
    ):
        if stiffness <= weight * arm:
            what = f"the springs cannot hold the body up: it falls over {way} on them"
            allowed = f"{weight * arm:.2f} N m/rad or more are needed, there are {stiffness:.2f}"
            found.append(where.problem(_rate_key("front", s[0]), what, allowed))
    return found


def _swift(truck: Truck, where: Where) -> list[Problem]:
    """Stiff springs on light masses: what no trial could follow in reasonable steps.

    Each alone, the other end held: a wheel on its tyre along each axis, an axle with its wheels on
    its springs, the chassis on all springs, heaving, rolling and pitching.
    """
    swings: list[tuple[str, tuple[str, ...], float, float]] = []
    c, inertia = truck.chassis, truck.chassis.inertia
    for i, (end, axle) in enumerate(zip(_ENDS, truck.axles, strict=True)):
        tyre, s = axle.tyre, axle.suspension
        stiffest = max(tyre.stiffness, tyre.lateral, tyre.longitudinal)
        key = next(
            k for k in ("stiffness", "lateral", "longitudinal") if getattr(tyre, k) == stiffest
        )
        lightest = min(w.mass for w in axle.wheels)
        swings.append(
            (f"a {end} wheel on its tyre", (end, "tyre", f"{key}_n_per_mm"), stiffest, lightest)
        )
        if not s.locked:
            spring = _rate_key(end, s)
            body = unsprung(truck, i)
            roll = s.spring_rate * s.spring_spacing**2 / 2 + s.anti_roll
            swings += [
                (f"the {end} axle on its springs", spring, 2 * s.spring_rate, body.mass),
                (f"the {end} axle, rolling on its springs", spring, roll, body.inertia[0, 0]),
                (f"the chassis on its {end} springs", spring, 2 * s.spring_rate, c.mass),
                (f"the chassis, rolling on its {end} springs", spring, roll, inertia[0, 0]),
                (
                    f"the chassis, pitching on its {end} springs",
                    spring,
                    2 * s.spring_rate * (axle.x - c.cg[0]) ** 2,
                    inertia[1, 1],
                ),
            ]
    found = []
    for what, path, rate, mass in swings:
        hertz = sqrt(rate / mass) / tau if mass > 0 else inf
        if hertz > _FASTEST:
            said = f"would let {what} swing at {hertz:.0f} Hz"
            allowed = f"at most {_FASTEST:g} Hz: softer, or more weight there"
            found.append(where.problem(path, said, allowed))
    return found


def truck_warnings(truck: Truck, spec: TruckSpec, where: Where) -> list[Problem]:
    """Things that can be meant but mostly are slips."""
    return [*_far_parts(truck, where), *_odd_tyres(spec, where), *_loose(spec, where)]


def _far_parts(truck: Truck, where: Where) -> list[Problem]:
    far = {}
    for part in truck.parts:
        distance = hypot(*np.asarray(part.body.cg))
        if distance > _FAR_OUT * truck.wheelbase and part.row not in far:
            what = f"puts the part {distance * 1e3:.0f} mm from the truck's middle"
            far[part.row] = where.problem(("part", part.row), what, "is that meant?")
    return list(far.values())


def _odd_tyres(spec: TruckSpec, where: Where) -> list[Problem]:
    """Tyres that give along the ground as no tyre does, going by how they give upwards."""
    found = []
    low, high = _TANGENTIAL_BOUNDS
    for name, end in zip(_ENDS, (spec.front, spec.rear), strict=True):
        for key in ("lateral_n_per_mm", "longitudinal_n_per_mm"):
            value = getattr(end.tyre, key)
            ratio = 1.0 if value is None else value / end.tyre.stiffness_n_per_mm
            if not low <= ratio <= high:
                what = f"is {value:g}, {ratio:.2g} times the vertical stiffness"
                allowed = f"a tyre has {low:g} to {high:g} times: is that meant?"
                found.append(where.problem((name, "tyre", key), what, allowed))
    return found


def _loose(spec: TruckSpec, where: Where) -> list[Problem]:
    """Tolerances larger than the value of which nothing need be left: they are cut there."""
    tables: list[tuple[tuple[str | int, ...], BaseModel]] = [
        ((name, *table), end if not table else getattr(end, table[0]))
        for name, end in zip(_ENDS, (spec.front, spec.rear), strict=True)
        for table in ((), ("tyre",), ("suspension",))
    ]
    tables += [(("part", i), part) for i, part in enumerate(spec.part)]
    found = []
    for path, table in tables:
        for key in (k for k in table.model_fields_set if "_tol_" in k):
            name = value_of(key)
            value, tolerance = getattr(table, name, None), getattr(table, key)
            if value is None or tolerance is None or name.startswith(SIGNED):
                continue
            if tolerance > value:
                what = f"is {tolerance:g}, more than {name} itself"
                allowed = f"it counts up to {value:g}: is that meant?"
                found.append(where.problem((*path, key), what, allowed))
    return found
