"""Shapes seen from one side."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crossfall.show.silhouette import (
    PLAN,
    PLAN_NOSE_UP,
    REAR,
    SIDE,
    PlacedShape,
    area,
    hull,
    outline,
    painted,
    patches,
    solids,
)
from crossfall.truck.model import Shape

STILL = np.zeros(3), np.eye(3)


@pytest.mark.parametrize("view", [SIDE, REAR, PLAN, PLAN_NOSE_UP])
def test_views_are_right_handed_and_towards_the_viewer(view):
    assert np.allclose(np.cross(view.right, view.up), view.toward)
    assert np.linalg.norm(view.toward) == pytest.approx(1.0)


def test_views_look_from_where_they_say():
    assert np.allclose(SIDE.toward, (0, -1, 0))
    assert np.allclose(REAR.toward, (-1, 0, 0))
    assert np.allclose(PLAN.toward, (0, 0, 1))
    assert np.allclose(PLAN_NOSE_UP.toward, (0, 0, 1))


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(*[st.floats(-1, 1)] * 2), min_size=3, max_size=40))
def test_hull_holds_every_point_and_turns_left(points):
    rows = np.array(points)
    edge = hull(rows)
    if len(edge) < 3:
        return
    step = np.roll(edge, -1, axis=0) - edge
    for p in rows:
        off = p - edge
        assert np.all(step[:, 0] * off[:, 1] - step[:, 1] * off[:, 0] > -1e-5)


def test_box_shows_its_faces_square_on():
    box = PlacedShape(Shape("box", (0.3, 0.1, 0.05)), *STILL, "chassis")
    assert area(outline(box, SIDE)) == pytest.approx(0.3 * 0.05)
    assert area(outline(box, REAR)) == pytest.approx(0.1 * 0.05)
    assert area(outline(box, PLAN)) == pytest.approx(0.3 * 0.1)
    assert len(patches(box, PLAN)) == 1


def test_turned_box_shows_three_faces_that_fill_its_outline():
    a = np.radians(30)
    about_z = np.array([[np.cos(a), -np.sin(a), 0], [np.sin(a), np.cos(a), 0], [0, 0, 1]])
    about_x = np.array([[1, 0, 0], [0, np.cos(a), -np.sin(a)], [0, np.sin(a), np.cos(a)]])
    box = PlacedShape(Shape("box", (0.3, 0.1, 0.05)), np.zeros(3), about_x @ about_z, "chassis")
    seen = patches(box, SIDE)
    assert len(seen) == 3
    assert sum(area(p.points) for p in seen) == pytest.approx(area(outline(box, SIDE)), rel=1e-4)


def test_cylinder_is_a_disc_end_on_and_a_bar_across():
    rod = PlacedShape(Shape("cylinder", (0.02, 0.1)), *STILL, "chassis")
    assert area(outline(rod, PLAN)) == pytest.approx(np.pi * 0.02**2, rel=0.004)
    assert area(outline(rod, SIDE)) == pytest.approx(0.04 * 0.1, rel=0.004)


def test_tube_end_on_can_be_looked_through():
    tube = PlacedShape(Shape("tube", (0.05, 0.03, 0.04)), *STILL, "front left")
    (ring,) = patches(tube, PLAN)
    assert ring.hole is not None
    assert area(ring.hole) == pytest.approx(np.pi * 0.03**2, rel=0.004)


def test_sphere_is_round_from_everywhere():
    ball = PlacedShape(Shape("sphere", (0.03,)), *STILL, "front axle")
    for view in (SIDE, REAR, PLAN):
        assert area(outline(ball, view)) == pytest.approx(np.pi * 0.03**2, rel=0.01)


def test_every_part_with_a_shape_is_drawn_once(truck):
    drawn = [s.part for s in solids(truck)]
    assert [p.label for p in drawn] == [p.label for p in truck.parts if p.shape]


def test_wheels_without_parts_are_drawn_from_the_tyres(bare):
    drawn = solids(bare)
    assert [s.role for s in drawn] == ["front left", "front right", "rear left", "rear right"]
    seen = np.concatenate([outline(s, SIDE) for s in drawn])
    radius = bare.front.tyre.radius
    assert seen[:, 1].min() == pytest.approx(0.0, abs=1e-4)
    assert seen[:, 0].max() == pytest.approx(bare.front.x + radius, abs=1e-6)


@pytest.mark.parametrize("view", [SIDE, REAR, PLAN])
def test_near_parts_are_painted_last(truck, view):
    depths = [s.centre @ view.toward for s in painted(solids(truck), view)]
    assert depths == sorted(depths)


def test_moving_a_solid_moves_its_outline(truck):
    solid = solids(truck)[3]
    a = np.radians(20)
    turn = np.array([[np.cos(a), 0, np.sin(a)], [0, 1, 0], [-np.sin(a), 0, np.cos(a)]])
    shift = np.array([0.01, 0.0, 0.02])
    moved = outline(solid.moved(turn, shift), SIDE)
    assert area(moved) == pytest.approx(area(outline(solid, SIDE)), rel=1e-3)
    middle = SIDE.flat((turn @ solid.centre + shift)[None])[0]
    assert (moved.min(axis=0) + moved.max(axis=0)) / 2 == pytest.approx(middle, abs=1e-6)
