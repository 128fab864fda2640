"""Where parts end up: carriers, counts, mirror images, turns, links, and what moves with what."""

from __future__ import annotations

import numpy as np
import pytest
from spec_text import changed, load

from crossfall.truck.assemble import BODIES, bodies
from crossfall.truck.build import build
from crossfall.truck.edits import add_part, set_value, set_values
from crossfall.truck.massprops import combine, whole
from crossfall.truck.model import Body, Truck
from crossfall.truck.pieces import rotation
from support import with_masses, with_shifts


@pytest.fixture(scope="module")
def spec(tmp_path_factory):
    return load(tmp_path_factory.mktemp("sample")).spec


def placed(spec, **part) -> list:
    """The pieces of one more part."""
    truck, _ = build(add_part(spec, {"name": "extra", "mass_g": 10, **part}))
    return [p for p in truck.parts if p.row == len(spec.part)]


def places(pieces: list) -> list:
    return [tuple(np.round(p.body.cg * 1e3, 9)) for p in pieces]


@pytest.mark.parametrize(
    ("on", "expected"),
    [
        ("chassis", [(10, 20, 30)]),
        ("front axle", [(166.5, 20, 87)]),
        ("rear axle", [(-146.5, 20, 87)]),
        ("each axle", [(166.5, 20, 87), (-146.5, 20, 87)]),
        ("front left", [(166.5, 105, 87)]),
        ("front right", [(166.5, -105, 87)]),
        ("rear right", [(-146.5, -106, 87)]),
        ("each front wheel", [(166.5, 105, 87), (166.5, -105, 87)]),
        ("each rear wheel", [(-146.5, 106, 87), (-146.5, -106, 87)]),
        (
            "every wheel",
            [(166.5, 105, 87), (166.5, -105, 87), (-146.5, 106, 87), (-146.5, -106, 87)],
        ),
    ],
)
def test_a_place_counts_from_its_carrier(spec, on, expected):
    assert places(placed(spec, on=on, at_mm=[10, 20, 30])) == expected


def test_counts_and_mirror_images_multiply(spec):
    pieces = placed(
        spec, on="chassis", at_mm=[10, 20, 30], count=2, step_mm=[-5, 1, 0], mirror=True
    )
    assert places(pieces) == [(10, 20, 30), (10, -20, 30), (5, 21, 30), (5, -21, 30)]
    assert [p.label for p in pieces] == ["extra 1", "extra 2", "extra 3", "extra 4"]
    assert [p.mirrored for p in pieces] == [False, True, False, True]


def test_tolerances_become_standard_uncertainties(spec):
    # Rectangular, plus or minus a: a / sqrt(3), JCGM 100:2008, 4.3.7.
    own = placed(spec, on="chassis", at_mm=[0, 0, 90], mass_tol_g=3, place_tol_mm=6)
    assert own[0].mass_sd == pytest.approx(3e-3 / np.sqrt(3))
    assert own[0].place_sd == pytest.approx(6e-3 / np.sqrt(3))
    default = placed(spec, on="chassis", at_mm=[0, 0, 90])
    assert default[0].mass_sd == pytest.approx(0.02 * 10e-3 / np.sqrt(3))
    assert default[0].place_sd == pytest.approx(2e-3 / np.sqrt(3))


def test_a_turn_goes_about_the_fixed_axes_in_order():
    x = rotation((90, 0, 90)) @ [0, 1, 0]  # about x: onto z; about z: stays there
    np.testing.assert_allclose(x, [0, 0, 1], atol=1e-15)
    y = rotation((0, 90, 90)) @ [1, 0, 0]  # about y: onto -z
    np.testing.assert_allclose(y, [0, 0, -1], atol=1e-15)


def test_an_own_centre_and_inertia_turn_with_the_part(spec):
    (piece,) = placed(
        spec,
        on="chassis",
        at_mm=[0, 0, 100],
        turn_deg=[0, 0, 90],
        cg_mm=[5, 0, 0],
        inertia_kg_mm2=[1, 2, 2.5, 0.1, 0, 0],
    )
    np.testing.assert_allclose(piece.body.cg * 1e3, [0, 5, 100], atol=1e-12)
    expected = [[2, -0.1, 0], [-0.1, 1, 0], [0, 0, 2.5]]
    np.testing.assert_allclose(piece.body.inertia * 1e6, expected, atol=1e-12)


def test_the_mirror_image_of_a_turned_part_balances_it(spec):
    shape = {"kind": "box", "size_mm": [40, 20, 5]}
    left, right = placed(
        spec, on="chassis", at_mm=[0, 30, 90], turn_deg=[20, 30, 40], shape=shape, mirror=True
    )
    pair = combine([left.body, right.body])
    assert pair.cg[1] == pytest.approx(0.0, abs=1e-15)
    np.testing.assert_allclose(pair.inertia[1, [0, 2]], 0.0, atol=1e-15)
    assert np.linalg.det(right.turn) == pytest.approx(1.0)


def test_a_link_runs_from_end_to_end(spec):
    (piece,) = placed(
        spec,
        on="front link",
        chassis_end_mm=[50, 10, 100],
        axle_end_mm=[0, 30, 10],
        unsprung=0.25,
        shape={"kind": "rod", "diameter_mm": 6},
    )
    ends = np.array([[50, 10, 100], [156.5, 30, 67]]) * 1e-3
    np.testing.assert_allclose(piece.body.cg, ends.mean(axis=0))
    direction = (ends[1] - ends[0]) / np.linalg.norm(ends[1] - ends[0])
    np.testing.assert_allclose(piece.turn[:, 2], direction)
    assert piece.shape.size[-1] == pytest.approx(np.linalg.norm(ends[1] - ends[0]))
    own = piece.turn.T @ piece.body.inertia @ piece.turn
    np.testing.assert_allclose(own, np.diag(np.diag(own)), atol=1e-16)
    assert own[2, 2] == pytest.approx(0.01 * 0.003**2 / 2)


def test_a_link_is_shared_between_chassis_and_axle(spec):
    before, _ = build(spec)
    link = {"chassis_end_mm": [50, 0, 100], "axle_end_mm": [0, 0, 10], "unsprung": 0.25}
    after, _ = build(add_part(spec, {"name": "rod", "on": "front link", "mass_g": 40, **link}))
    assert after.chassis.mass - before.chassis.mass == pytest.approx(0.030)
    assert after.front.body.mass - before.front.body.mass == pytest.approx(0.010)
    assert after.rear.body.mass == pytest.approx(before.rear.body.mass, abs=1e-15)


def test_what_moves_with_wheelbase_track_and_tyre(spec):
    a, _ = build(spec)
    b, _ = build(set_values(spec, {"chassis.wheelbase_mm": 333, "front.track_mm": 190}))
    assert b.front.wheels[0].cg[0] - a.front.wheels[0].cg[0] == pytest.approx(0.010)
    assert b.front.wheels[1].cg[1] - a.front.wheels[1].cg[1] == pytest.approx(-0.010)
    assert b.rear.body.cg[0] < a.rear.body.cg[0]
    frame = [t.parts[0].body.cg for t in (a, b)]
    np.testing.assert_array_equal(*frame)
    c, _ = build(set_value(spec, "rear.tyre.radius_mm", 60))
    assert c.rear.wheels[0].cg[2] - a.rear.wheels[0].cg[2] == pytest.approx(0.003)


def test_raising_lifts_everything_sprung(spec):
    a, _ = build(spec)
    b, _ = build(set_value(spec, "chassis.raise_mm", 12))
    assert b.parts[0].body.cg[2] - a.parts[0].body.cg[2] == pytest.approx(0.012)
    assert b.clearance.belly[1] - a.clearance.belly[1] == pytest.approx(0.012)
    assert b.front.wheels[0].cg[2] == a.front.wheels[0].cg[2]
    links = [next(p for p in t.parts if p.label == "link 1") for t in (a, b)]
    assert links[1].body.cg[2] - links[0].body.cg[2] == pytest.approx(0.006)


def test_anti_squat_and_anti_dive_lean_the_heave_axis(spec):
    text = changed(("heave_lean_deg = -3", "anti_squat_percent = 40"))
    import tomllib

    from crossfall.truck.schema import TruckSpec

    truck, _ = build(TruckSpec.model_validate(tomllib.loads(text)))
    slope = whole(truck).cg[2] / truck.wheelbase
    assert np.tan(truck.front.suspension.heave_lean) == pytest.approx(0.10 * slope)
    assert np.tan(truck.rear.suspension.heave_lean) == pytest.approx(-0.40 * slope)


def test_units_come_out_in_si(spec):
    truck, _ = build(set_value(spec, "front.suspension.anti_roll_n_mm_per_deg", 10))
    assert truck.front.suspension.spring_rate == pytest.approx(200.0)
    assert truck.front.suspension.anti_roll == pytest.approx(0.010 * 180 / np.pi)
    assert truck.front.tyre.stiffness == pytest.approx(5000.0)
    assert truck.steering_lock == pytest.approx(np.radians(40))
    assert truck.driven == (True, True)


def slowly(truck: Truck) -> list[Body]:
    """The seven bodies again, one part at a time."""
    found = []
    for name in BODIES:
        own = []
        for p in truck.parts:
            share = p.unsprung if p.carrier == name else 0.0
            if name == "chassis":
                share = 1.0 - (p.unsprung if p.carrier != "chassis" else 0.0)
            if share:
                own.append(Body(p.body.mass * share, p.body.cg, p.body.inertia * share))
        found.append(combine(own))
    return found


def test_all_bodies_at_once_are_the_same_as_one_by_one(spec):
    truck, _ = build(spec)
    for quick, slow in zip(bodies(truck.parts), slowly(truck), strict=True):
        assert quick.mass == pytest.approx(slow.mass, rel=1e-14)
        np.testing.assert_allclose(quick.cg, slow.cg, rtol=1e-12, atol=1e-15)
        np.testing.assert_allclose(quick.inertia, slow.inertia, rtol=1e-10, atol=1e-15)


def test_combining_against_a_mesh_of_two_boxes():
    import trimesh

    boxes = [trimesh.creation.box((0.1, 0.02, 0.03)), trimesh.creation.box((0.02, 0.04, 0.02))]
    boxes[1].apply_translation((0.2, 0.05, -0.1))
    both = trimesh.util.concatenate(boxes)
    total = combine([Body(b.volume, b.center_mass, b.moment_inertia) for b in boxes])
    assert total.mass == pytest.approx(both.volume)
    np.testing.assert_allclose(total.cg, both.center_mass)
    np.testing.assert_allclose(total.inertia, both.moment_inertia, rtol=1e-9, atol=1e-15)


def same(a: Truck, b: Truck) -> None:
    for one, other in zip(
        (a.chassis, a.front.body, a.rear.body, *a.front.wheels, *a.rear.wheels),
        (b.chassis, b.front.body, b.rear.body, *b.front.wheels, *b.rear.wheels),
        strict=True,
    ):
        assert one.mass == pytest.approx(other.mass, rel=1e-12)
        np.testing.assert_allclose(one.cg, other.cg, rtol=1e-12, atol=1e-15)
        np.testing.assert_allclose(one.inertia, other.inertia, rtol=1e-9, atol=1e-15)


def test_quick_changes_agree_with_building_anew(spec):
    base, _ = build(spec)
    heavier, _ = build(set_value(spec, "part.pack.mass_g", 300))
    same(with_masses(base, {1: 0.300}), heavier)
    moved, _ = build(set_value(spec, "part.cover.at_mm", [3, 54, 145]))
    same(with_shifts(base, {2: np.array([0.003, 0.004, 0.005])}), moved)


def test_a_weighed_part_without_a_shape_still_has_inertia(spec):
    (piece,) = placed(spec, on="chassis", at_mm=[0, 0, 90])
    low, middle, high = np.linalg.eigvalsh(piece.body.inertia)
    assert 0 < low <= high < low + middle


def test_a_strip_by_length_weighs_its_length(spec):
    strip = {"kind": "strip", "around_mm": 50, "width_mm": 12, "thickness_mm": 2}
    shape = {**strip, "length_mm": 250, "g_per_m": 120.0}
    part = {"name": "strip", "on": "front left", "at_mm": [0, 0, 0], "shape": shape}
    truck, _ = build(add_part(spec, part))
    assert truck.parts[-1].body.mass == pytest.approx(0.030)
