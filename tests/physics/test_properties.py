"""What must hold of every truck, tried on invented ones."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crossfall.statics import compliant, rigid
from crossfall.statics.sliding import Held, slide
from crossfall.truck.massprops import combine, whole
from crossfall.truck.model import Axle, Body, Truck, frozen
from support import block, make_truck

every = settings(deadline=None, derandomize=True)
rare = settings(every, max_examples=4)
few = settings(every, max_examples=10)

MIRRORS = {"left-right": (1, 0, 3, 2), "front-back": (2, 3, 0, 1)}  # which wheel lands where


@st.composite
def trucks(draw: st.DrawFn) -> Truck:
    """A truck of the class: unequal tracks, wide contact, CG off the middle."""
    lengths = st.floats(0.12, 0.21)
    return make_truck(
        wheelbase=draw(st.floats(0.28, 0.34)),
        tracks=(draw(lengths), draw(lengths)),
        chassis_mass=draw(st.floats(1.2, 3.5)),
        chassis_cg=(
            draw(st.floats(-0.05, 0.05)),
            draw(st.floats(-0.02, 0.02)),
            draw(st.floats(0.07, 0.15)),
        ),
        contact_half_width=draw(st.floats(0.0, 0.02)),
        tyre_stiffness=draw(st.floats(2e3, 2e4)),
        spring_rate=draw(st.floats(150.0, 800.0)),
    )


headings = st.floats(0.0, 2 * np.pi)
places = st.tuples(st.floats(-0.2, 0.2), st.floats(-0.1, 0.1), st.floats(0.0, 0.2))
grips = st.tuples(*[st.floats(0.3, 0.8)] * 4)
helds: st.SearchStrategy[Held] = st.tuples(*[st.booleans()] * 4)


def flipped(body: Body, axis: int) -> Body:
    """The body's mirror image in the plane square to an axis."""
    flip = np.ones(3)
    flip[axis] = -1.0
    inertia = body.inertia * np.outer(flip, flip)
    return Body(body.mass, frozen(body.cg * flip), frozen(inertia))


def mirrored(truck: Truck, mirror: str) -> Truck:
    """The truck seen in a mirror, left for right or front for back."""
    axis = 1 if mirror == "left-right" else 0

    def turned(axle: Axle) -> Axle:
        left, right = (flipped(w, axis) for w in axle.wheels)
        lean = axle.suspension.heave_lean * (1 if axis == 1 else -1)
        return replace(
            axle,
            x=axle.x if axis == 1 else -axle.x,
            body=flipped(axle.body, axis),
            wheels=(right, left) if axis == 1 else (left, right),
            suspension=replace(axle.suspension, heave_lean=lean),
        )

    front, rear = (turned(a) for a in truck.axles)
    if axis == 0:
        front, rear = rear, front
    return replace(truck, chassis=flipped(truck.chassis, axis), front=front, rear=rear)


def heading_in(mirror: str, heading: float) -> float:
    return -heading if mirror == "left-right" else np.pi - heading


def scaled(truck: Truck, k: float) -> Truck:
    """Every length k times as long, masses and forces the same: stiffness goes with 1/k."""

    def body(b: Body) -> Body:
        return Body(b.mass, frozen(b.cg * k), frozen(b.inertia * k * k))

    def axle(a: Axle) -> Axle:
        t, s = a.tyre, a.suspension
        tyre = replace(
            t,
            radius=t.radius * k,
            width=t.width * k,
            contact_half_width=t.contact_half_width * k,
            stiffness=t.stiffness / k,
            lateral=t.lateral / k,
            longitudinal=t.longitudinal / k,
        )
        suspension = replace(
            s,
            spring_rate=s.spring_rate / k,
            anti_roll=s.anti_roll * k,
            spring_spacing=s.spring_spacing * k,
            roll_centre_height=s.roll_centre_height * k,
            bump=s.bump * k,
            droop=s.droop * k,
        )
        left, right = (body(w) for w in a.wheels)
        return Axle(a.x * k, a.track * k, tyre, suspension, body(a.body), (left, right))

    return replace(
        truck, chassis=body(truck.chassis), front=axle(truck.front), rear=axle(truck.rear)
    )


def with_mass(truck: Truck, mass: float, place: tuple[float, float, float]) -> Truck:
    return replace(truck, chassis=combine((truck.chassis, block(mass, place, (0.01,) * 3))))


# Rigid


@pytest.mark.parametrize("mirror", MIRRORS)
@every
@given(truck=trucks(), heading=headings)
def test_rigid_mirror(mirror: str, truck: Truck, heading: float) -> None:
    image = rigid.tip_angle(mirrored(truck, mirror), heading_in(mirror, heading))
    assert image == pytest.approx(float(rigid.tip_angle(truck, heading)), abs=1e-12)


@every
@given(truck=trucks(), heading=headings, k=st.floats(0.01, 100.0), heavier=st.floats(0.1, 10.0))
def test_rigid_scale(truck: Truck, heading: float, k: float, heavier: float) -> None:
    """Lengths and masses in other units, or of another size, leave the angle alone."""
    own = float(rigid.tip_angle(truck, heading))
    assert rigid.tip_angle(scaled(truck, k), heading) == pytest.approx(own, rel=1e-11)
    front, rear = (
        replace(
            a,
            body=replace(a.body, mass=a.body.mass * heavier),
            wheels=tuple(replace(w, mass=w.mass * heavier) for w in a.wheels),
        )
        for a in truck.axles
    )
    chassis = replace(truck.chassis, mass=truck.chassis.mass * heavier)
    other = replace(truck, chassis=chassis, front=front, rear=rear)
    assert rigid.tip_angle(other, heading) == pytest.approx(own, rel=1e-11)


@every
@given(truck=trucks(), heading=headings, place=places, mass=st.floats(0.01, 0.4))
def test_lowering_a_mass_never_hurts(
    truck: Truck, heading: float, place: tuple[float, float, float], mass: float
) -> None:
    low = (place[0], place[1], place[2] / 2)
    before = rigid.tip_angle(with_mass(truck, mass, place), heading)
    after = rigid.tip_angle(with_mass(truck, mass, low), heading)
    assert after >= before - 1e-15


@every
@given(truck=trucks(), heading=headings, place=places, mass=st.floats(1e-4, 0.01))
def test_a_mass_below_the_tip_line_never_hurts(
    truck: Truck, heading: float, place: tuple[float, float, float], mass: float
) -> None:
    """Below the line from tip line to CG of the edge it tips over: a_i / z_i > a / h."""
    edge = int(rigid.tip_edge(truck, heading))
    body = whole(truck)
    a = rigid.edge_distances(truck, body.cg)[edge]
    a_i = rigid.edge_distances(truck, place)[edge]
    below = a_i * body.cg[2] > a * place[2]
    laden = with_mass(truck, mass, place)
    own = rigid.edge_angles(truck, heading)[edge]
    after = rigid.edge_angles(laden, heading)[edge]
    assert after >= own - 1e-13 if below else after <= own + 1e-13


@every
@given(truck=trucks(), heading=headings, step=st.floats(1e-9, 0.2))
def test_no_jumps_round_the_compass(truck: Truck, heading: float, step: float) -> None:
    """d(theta)/d(psi) = -a h f' / (a^2 + (h f)^2), at most h / a."""
    here, there = rigid.tip_angle(truck, [heading, heading + step])
    body = whole(truck)
    steepest = body.cg[2] / np.min(rigid.edge_distances(truck, body.cg))
    assert abs(there - here) <= steepest * step * (1 + 1e-9) + 1e-14


@every
@given(truck=trucks(), heading=headings, place=places)
def test_mass_derivative_is_the_difference(
    truck: Truck, heading: float, place: tuple[float, float, float]
) -> None:
    """By central difference, over the edge that governs: near a corner two edges take turns."""
    step = 2e-5
    edge = int(rigid.tip_edge(truck, heading))
    plus, minus = (
        rigid.edge_angles(with_mass(truck, s * step, place), heading)[edge] for s in (1, -1)
    )
    slope = rigid.mass_derivative(truck, heading, place)
    assert slope == pytest.approx((plus - minus) / (2 * step), abs=1e-6)


@few
@given(pieces=st.lists(st.tuples(st.floats(0.01, 1.0), places), min_size=2, max_size=4))
def test_order_of_parts_does_not_matter(
    pieces: list[tuple[float, tuple[float, float, float]]],
) -> None:
    truck = make_truck()
    bodies = [block(m, at, (0.02, 0.03, 0.01)) for m, at in pieces]
    angles = [
        rigid.tip_angle(replace(truck, chassis=combine((truck.chassis, *some))), rigid.QUARTERS)
        for some in permutations(bodies)
    ]
    np.testing.assert_allclose(angles, angles[0] * np.ones((len(angles), 1)), atol=1e-13)


# Compliant


@rare
@pytest.mark.parametrize("mirror", MIRRORS)
@given(truck=trucks(), some=st.lists(headings, min_size=4, max_size=4))
def test_compliant_mirror(mirror: str, truck: Truck, some: list[float]) -> None:
    image = mirrored(truck, mirror)
    own = compliant.tips(truck, np.array(some))
    seen = compliant.tips(image, np.array([heading_in(mirror, h) for h in some]))
    np.testing.assert_allclose(seen.tip, own.tip, atol=1e-6)
    np.testing.assert_allclose(seen.lift[:, MIRRORS[mirror]], own.lift, atol=1e-6)


@rare
@given(truck=trucks(), heading=headings, k=st.floats(0.1, 10.0))
def test_compliant_scale(truck: Truck, heading: float, k: float) -> None:
    at = np.array([heading])
    own, other = (compliant.tips(t, at).tip[0] for t in (truck, scaled(truck, k)))
    assert other == pytest.approx(own, abs=1e-6, nan_ok=True)


# Sliding


@few
@pytest.mark.parametrize("mirror", MIRRORS)
@given(truck=trucks(), heading=headings, grip=grips, held=helds)
def test_sliding_mirror(
    mirror: str, truck: Truck, heading: float, grip: tuple[float, ...], held: Held
) -> None:
    lands = MIRRORS[mirror]
    image_grip = tuple(grip[i] for i in lands)
    image_held: Held = tuple(held[i] for i in lands)  # type: ignore[assignment]
    own = slide(truck, heading, grip, held).angle[0]
    image = slide(
        mirrored(truck, mirror), heading_in(mirror, heading), image_grip, image_held
    ).angle[0]
    assert image == pytest.approx(float(own), abs=2e-6)


@few
@given(truck=trucks(), heading=headings, grip=grips, k=st.floats(0.01, 100.0))
def test_sliding_scale(truck: Truck, heading: float, grip: tuple[float, ...], k: float) -> None:
    own = slide(truck, heading, grip).angle[0]
    assert slide(scaled(truck, k), heading, grip).angle[0] == pytest.approx(float(own), abs=1e-6)


@few
@given(truck=trucks(), heading=headings, grip=grips, held=helds)
def test_sliding_lies_between_its_grips_and_in_order(
    truck: Truck, heading: float, grip: tuple[float, ...], held: Held
) -> None:
    """No split holds beyond the best tyre's atan(mu); all held, none slides before the worst's."""
    least, elastic, greatest = (
        slide(truck, heading, grip, held, split).angle[0]
        for split in ("least", "elastic", "greatest")
    )
    assert least <= elastic + 1e-6
    assert elastic <= greatest + 1e-6
    assert greatest <= np.arctan(max(grip)) + 1e-6
    if all(held):
        assert least >= np.arctan(min(grip)) - 1e-6
