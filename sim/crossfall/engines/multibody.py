"""The truck as a tree of links and joints, before it is written out as a URDF.

chassis - heave (prismatic) - roll (revolute) - axle - per wheel: tyre (prismatic along the
axle's z, x and y) - spin (revolute about y) - wheel. Held wheels are part of their axle, and
whoever runs the model lets their tyres give. A wheel that steers has a knuckle between axle and
tyre, which turns about an upright line through the wheel's middle. Every link frame is parallel to
the truck axes at ride height.

No moving link may be without mass, so the heave carriage takes SHARE of the axle body's mass as
a point on the roll axis, and a knuckle and a tyre's hub SHARE of their wheel's mass as a point on
the spin axis. A point on an axis is not moved by turning about it, so the statics is that of the
truck exactly.

A share m of a body M at r leaves M - m at (M R - m r) / (M - m), and by Steiner's theorem the
inertia that is missing to the body's own.
Source: derived here from the sums of mass, first moment and inertia; trees of links and joints as
in R. Featherstone, Rigid Body Dynamics Algorithms (Springer 2008) (from memory).
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

import numpy as np

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.massprops import combine, steiner
from crossfall.truck.model import ENDS, WHEELS, Array, Axle, Body, Part, Truck, frozen

SHARE = 0.01  # of an axle body's or a wheel's mass, see above
SPREAD = 0.1  # radius of gyration of such a share, as a fraction of the tyre radius
_MARGIN = 1e-6  # of the greatest principal moment, kept clear of the triangle rule's equality
STEER = math.radians(60)  # how far a knuckle may turn; whoever steers stops short of it
DISC = 0.0035  # thickness of a contact disc as a fraction of the tyre radius: 0.2 mm of 57 mm

ALONG_Y = frozen([[1.0, 0.0, 0.0], [0.0, 0.0, 1.0], [0.0, -1.0, 0.0]])  # own z onto truck y


@dataclass(frozen=True)
class Primitive:
    """A box (edges), cylinder (radius, length along own z) or sphere (radius), m.

    centre: (3,) m and turn: (3, 3), in truck axes at ride height.
    """

    kind: str
    size: tuple[float, ...]
    centre: Array
    turn: Array


@dataclass(frozen=True)
class Link:
    """A rigid link; everything in truck axes at ride height."""

    name: str
    body: Body
    visuals: tuple[Primitive, ...] = ()
    collisions: tuple[Primitive, ...] = ()


@dataclass(frozen=True)
class Joint:
    """kind: fixed, prismatic, revolute or continuous. origin: (3,) m in truck axes.

    lower, upper: travel in m or rad, for prismatic and revolute joints.
    """

    name: str
    kind: str
    parent: str
    child: str
    origin: Array
    axis: tuple[float, float, float] = (0.0, 0.0, 1.0)
    lower: float = 0.0
    upper: float = 0.0


@dataclass(frozen=True)
class Tree:
    """links, base first, and joints, joint i leading to link i + 1."""

    links: tuple[Link, ...]
    joints: tuple[Joint, ...]


def disc_names(wheel: int, axle: Axle) -> tuple[str, ...]:
    """Link names of one wheel (0 front left to 3 rear right): itself, or its two discs.

    Outer first: of two rigid contacts that share a load the engine loads the first, and the outer
    is the one a truck tips over.
    """
    name = _wheel_name(wheel)
    if axle.tyre.contact_half_width == 0.0:
        return (name,)
    return f"{name}_outer", f"{name}_inner"


def disc_places(wheel: int, axle: Axle) -> list[Array]:
    """(3,) m, middles of one wheel's discs at ride height, as `disc_names` has them."""
    outward = 1.0 - 2.0 * (wheel % 2)
    hub = np.array([axle.x, outward * axle.track / 2, axle.tyre.radius])
    out = np.array([0.0, outward * axle.tyre.contact_half_width, 0.0])
    return [hub + out, hub - out][: len(disc_names(wheel, axle))]


def _wheel_name(wheel: int) -> str:
    return WHEELS[wheel].replace(" ", "_")


def steer_joint(wheel: int) -> str:
    """Name of the joint that steers a wheel (0 front left to 3 rear right), rad to the left."""
    return f"{_wheel_name(wheel)}_steer"


def multibody(truck: Truck, *, turning: bool = True, steering: bool = False) -> Tree:
    """The tree of links; turning=False makes the wheels, held by the brake, part of their axle.

    steering: the front wheels, which must turn, have knuckles.

    A wheel with a contact half-width becomes two discs that far to either side of its centre
    plane, each with half the mass at the wheel's own CG, and a tyre joint each. Tyres of infinite
    stiffness and locked suspension become fixed joints. Raises InputError where a link would have
    no mass or an inertia no solid can have.
    """
    bodies = [Link("chassis", truck.chassis)]
    for end, axle in zip(ENDS, truck.axles, strict=True):
        left, right = axle.wheels
        bodies.append(Link(f"{end} axle", axle.body))
        bodies += [Link(f"{end} left wheel", left), Link(f"{end} right wheel", right)]
    _refuse(truck.name, bodies)
    pairs = []
    for index in (0, 1):
        wheels = _wheels(truck, index, steering and index == 0)
        held = () if turning else tuple(link for link, _ in wheels if link.collisions)
        pairs += _axle(truck, index, held)
        pairs += wheels if turning else []
    chassis = Link("chassis", truck.chassis, _looks(truck, "chassis"), _hull(truck))
    links = (chassis, *(link for link, _ in pairs))
    _refuse(truck.name, links)
    return Tree(links, tuple(joint for _, joint in pairs))


def _axle(truck: Truck, index: int, held: tuple[Link, ...]) -> list[tuple[Link, Joint]]:
    """The axle; held: wheels that are part of it."""
    axle, end = truck.axles[index], ENDS[index]
    s = axle.suspension
    centre = frozen([axle.x, 0.0, s.roll_centre_height])
    body = combine((axle.body, *axle.wheels)) if held else axle.body
    looks = _looks(truck, f"{end} axle") + tuple(v for link in held for v in link.visuals)
    own = Link(f"{end}_axle", body, looks, tuple(c for link in held for c in link.collisions))
    if s.locked:
        return [(own, Joint(f"{end}_locked", "fixed", "chassis", own.name, centre))]
    share, rest = _share(body, centre, axle.tyre.radius)
    lean = (math.sin(s.heave_lean), 0.0, math.cos(s.heave_lean))
    roll = (s.bump + s.droop) / s.spring_spacing
    middle = f"{end}_carriage"
    heave_joint = Joint(
        f"{end}_heave", "prismatic", "chassis", middle, centre, lean, -s.droop, s.bump
    )
    roll_joint = Joint(
        f"{end}_roll", "revolute", middle, own.name, centre, (1.0, 0.0, 0.0), -roll, roll
    )
    return [(Link(middle, share), heave_joint), (replace(own, body=rest), roll_joint)]


def _wheels(truck: Truck, index: int, steering: bool) -> list[tuple[Link, Joint]]:
    axle, out = truck.axles[index], []
    tyre = axle.tyre
    for side, body in enumerate(axle.wheels):
        wheel = 2 * index + side
        outward = 1.0 - 2.0 * side
        hub = np.array([axle.x, outward * axle.track / 2, tyre.radius])
        names, parent = disc_names(wheel, axle), f"{ENDS[index]}_axle"
        if steering:
            share, body = _share(body, hub, tyre.radius)
            knuckle = f"{_wheel_name(wheel)}_knuckle"
            joint = steer_joint(wheel)
            turn = Joint(joint, "revolute", parent, knuckle, hub, lower=-STEER, upper=STEER)
            out.append((Link(knuckle, share), turn))
            parent = knuckle
        half = Body(body.mass / len(names), body.cg, frozen(body.inertia / len(names)))
        looks = _looks(truck, WHEELS[wheel]) or (_cylinder(tyre.radius, tyre.width, hub),)
        for name, at in zip(names, disc_places(wheel, axle), strict=True):
            disc = _cylinder(tyre.radius, DISC * tyre.radius, at)
            out += _disc(Link(name, half, looks, (disc,)), parent, hub, axle)
            looks = ()
    return out


def _disc(link: Link, parent: str, hub: Array, axle: Axle) -> list[tuple[Link, Joint]]:
    name, radius = link.name, axle.tyre.radius
    about = (0.0, 1.0, 0.0)
    out, rest = [], link.body
    for carried, joint, axis, _ in tyre_joints(name, axle):
        share, rest = _share(rest, hub, radius)
        given = Joint(joint, "prismatic", parent, carried, hub, axis, -radius, radius)
        out.append((Link(carried, share), given))
        parent = carried
    spin = Joint(f"{name}_spin", "continuous", parent, name, hub, about)
    return [*out, (replace(link, body=rest), spin)]


def tyre_joints(name: str, axle: Axle) -> list[tuple[str, str, tuple[float, float, float], float]]:
    """How one disc gives, from its axle outwards: link, joint, axis (3,), and N/m of the whole
    tyre.

    A way in which the tyre is rigid, of infinite stiffness, has no joint.
    """
    tyre = axle.tyre
    ways = [
        (f"{name}_hub", f"{name}_tyre", (0.0, 0.0, 1.0), tyre.stiffness),
        (f"{name}_tread", f"{name}_tyre_along", (1.0, 0.0, 0.0), tyre.longitudinal),
        (f"{name}_rim", f"{name}_tyre_aside", (0.0, 1.0, 0.0), tyre.lateral),
    ]
    return [way for way in ways if math.isfinite(way[3])]


def _share(body: Body, point: Array, radius: float) -> tuple[Body, Body]:
    """SHARE of a body as a near-point at `point`, and the rest: together the body exactly."""
    mass = SHARE * body.mass
    share = Body(mass, frozen(point), frozen(mass * (SPREAD * radius) ** 2 * np.eye(3)))
    left = body.mass - mass
    cg = (body.mass * body.cg - mass * share.cg) / left
    inertia = (
        body.inertia
        - share.inertia
        - steiner(mass, share.cg - body.cg)
        - steiner(left, cg - body.cg)
    )
    return share, Body(left, frozen(cg), frozen(inertia))


def _refuse(name: str, links: Iterable[Link]) -> None:
    problems = [p for link in links for p in _problems(name, link)]
    if problems:
        raise InputError(problems)


def _problems(name: str, link: Link) -> list[Problem]:
    """Whether a link could be a solid: mass, and the triangle rule with a margin."""
    body = link.body
    if not (math.isfinite(body.mass) and body.mass > 0.0):
        return [Problem(name, f"{link.name} has a mass of {body.mass} kg", "must be above zero")]
    if not np.isfinite(body.inertia).all() or not np.allclose(body.inertia, body.inertia.T):
        return [Problem(name, f"the inertia of {link.name} is not a symmetric matrix of numbers")]
    a, b, c = np.linalg.eigvalsh(body.inertia)
    if a <= _MARGIN * c or a + b - c <= _MARGIN * c:
        return [
            Problem(
                name,
                f"{link.name} has principal moments {a:.3g}, {b:.3g}, {c:.3g} kg m^2",
                "each must be above zero and less than the sum of the other two",
            )
        ]
    return []


def _cylinder(radius: float, length: float, centre: Array) -> Primitive:
    return Primitive("cylinder", (radius, length), frozen(centre), ALONG_Y)


def _looks(truck: Truck, carrier: str) -> tuple[Primitive, ...]:
    """The shapes of the parts on one carrier; a tube is drawn solid, a mesh as its box."""
    solids = [_look(part) for part in truck.parts if part.carrier == carrier]
    return tuple(s for s in solids if s is not None)


def _look(part: Part) -> Primitive | None:
    shape = part.shape
    if shape is None:
        return None
    if shape.kind == "tube":
        return Primitive("cylinder", (shape.size[0], shape.size[2]), part.centre, part.turn)
    if shape.kind == "mesh":
        if shape.vertices is None:
            return None
        low, high = shape.vertices.min(axis=0), shape.vertices.max(axis=0)
        centre = part.centre + part.turn @ ((low + high) / 2)
        return Primitive("box", tuple(map(float, high - low)), frozen(centre), part.turn)
    return Primitive(shape.kind, shape.size, part.centre, part.turn)


def _hull(truck: Truck) -> tuple[Primitive, ...]:
    """What of the chassis can touch the ground: a rod across at each clearance point.

    The rod's lowest line passes through the point. Without clearance points nothing can.
    """
    if truck.clearance is None:
        return ()
    radius = 0.05 * truck.front.tyre.radius
    length = 0.5 * min(a.track for a in truck.axles)
    points = (truck.clearance.nose, truck.clearance.belly, truck.clearance.tail)
    return tuple(_cylinder(radius, length, np.array([x, 0.0, z + radius])) for x, z in points)
