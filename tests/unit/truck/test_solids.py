"""Plain shapes against textbook formulas and against fine meshes of the same shapes."""

from __future__ import annotations

from math import pi

import numpy as np
import pytest
import trimesh

from crossfall.truck import shapes, solids

MM = 1e-3


def about(mesh: trimesh.Trimesh) -> tuple[float, np.ndarray]:
    return float(mesh.volume), np.array(mesh.moment_inertia) / mesh.volume


def test_a_block_agrees_with_a_mesh_of_it():
    solid = solids.block(0.03, 0.05, 0.07)
    volume, gyration = about(trimesh.creation.box((0.03, 0.05, 0.07)))
    assert solid.volume == pytest.approx(volume, rel=1e-12)
    np.testing.assert_allclose(solid.gyration, gyration, rtol=1e-10, atol=1e-15)


def test_a_shell_is_a_block_less_its_inside():
    solid = solids.block(0.1, 0.08, 0.06, wall=0.002)
    outer = trimesh.creation.box((0.1, 0.08, 0.06))
    inner = trimesh.creation.box((0.096, 0.076, 0.056))
    volume = outer.volume - inner.volume
    gyration = (outer.moment_inertia - inner.moment_inertia) / volume
    assert solid.volume == pytest.approx(volume, rel=1e-10)
    np.testing.assert_allclose(solid.gyration, gyration, rtol=1e-9, atol=1e-15)


@pytest.mark.parametrize("along", ["x", "y", "z"])
def test_a_tube_agrees_with_a_fine_mesh_along_every_axis(along):
    solid = solids.tube(0.020, 0.012, 0.05, along)
    mesh = trimesh.creation.annulus(r_min=0.012, r_max=0.020, height=0.05, sections=720)
    turn = np.eye(4)
    turn[:3, :3] = solids.ALONG[along]
    mesh.apply_transform(turn)
    volume, gyration = about(mesh)
    # An inscribed 720-sided polygon has (n / 2 pi) sin(2 pi / n) of the circle's area.
    assert solid.volume == pytest.approx(volume, rel=2e-5)
    np.testing.assert_allclose(solid.gyration, gyration, rtol=4e-5, atol=1e-12)


def test_a_ball_agrees_with_a_fine_mesh():
    solid = solids.ball(0.02)
    volume, gyration = about(trimesh.creation.icosphere(subdivisions=6, radius=0.02))
    assert solid.volume == pytest.approx(volume, rel=1e-3)
    np.testing.assert_allclose(solid.gyration, gyration, rtol=1e-3, atol=1e-12)


def test_the_axes_are_proper_rotations():
    for name, axis in solids.ALONG.items():
        assert np.linalg.det(axis) == pytest.approx(1.0)
        np.testing.assert_array_equal(axis @ axis.T, np.eye(3))
        assert (axis @ [0, 0, 1])["xyz".index(name)] == 1


def test_a_thin_rod_about_its_end():
    # m L^2 / 3: any mechanics text, e.g. Meriam and Kraige, Dynamics, appendix D.
    rod = solids.tube(1e-5, 0.0, 0.3, "x")
    about_end = rod.gyration[2, 2] + 0.15**2
    assert about_end == pytest.approx(0.3**2 / 3, rel=1e-6)


def test_a_thin_hoop_has_all_its_mass_at_its_radius():
    hoop = solids.tube(0.0500001, 0.05, 0.01, "y")
    assert hoop.gyration[1, 1] == pytest.approx(0.05**2, rel=1e-5)


def test_a_wound_strip_keeps_the_volume_of_the_flat_one():
    strip = shapes.Strip(
        kind="strip", around_mm=50, width_mm=12, thickness_mm=2, length_mm=500, g_per_m=None
    )
    assert solids.solid(strip).volume == pytest.approx(12 * 2 * 500 * MM**3, rel=1e-12)


def test_one_turn_of_a_thin_strip_is_as_thick_as_the_strip():
    solid = solids.wound(0.025, 0.012, 1e-5, 2 * pi * 0.025, "y")
    outer, inner, _ = solid.shape.size
    assert outer - inner == pytest.approx(1e-5, rel=1e-3)


def test_a_lump_has_the_mass_it_was_made_for():
    solid = solids.lump(0.1)
    assert solid.volume * solids.LUMP_DENSITY == pytest.approx(0.1, rel=1e-12)


@pytest.mark.parametrize(
    "shape",
    [
        shapes.Box(kind="box", size_mm=(10, 20, 30)),
        shapes.Plate(kind="plate", length_mm=50, width_mm=20, thickness_mm=2),
        shapes.Rod(kind="rod", diameter_mm=6, length_mm=80),
        shapes.Tube(kind="tube", outer_mm=8, inner_mm=5, length_mm=60),
        shapes.Cylinder(kind="cylinder", diameter_mm=36, length_mm=50),
        shapes.Ring(kind="ring", outer_mm=110, inner_mm=60, width_mm=40),
        shapes.Sphere(kind="sphere", diameter_mm=30),
        shapes.Strip(kind="strip", around_mm=50, width_mm=12, thickness_mm=2, length_mm=150),
    ],
)
def test_every_shape_is_a_possible_body(shape):
    solid = solids.solid(shape)
    low, middle, high = np.linalg.eigvalsh(solid.gyration)
    assert solid.volume > 0
    assert low > 0
    assert high < low + middle
    assert not solid.gyration.flags.writeable


def test_shapes_lie_along_the_axis_one_expects():
    rod = solids.solid(shapes.Rod(kind="rod", diameter_mm=6, length_mm=80))
    ring = solids.solid(shapes.Ring(kind="ring", outer_mm=110, inner_mm=60, width_mm=40))
    column = solids.solid(shapes.Cylinder(kind="cylinder", diameter_mm=6, length_mm=80))
    assert np.argmin(np.diag(rod.gyration)) == 0
    assert np.argmax(np.diag(ring.gyration)) == 1
    assert np.argmin(np.diag(column.gyration)) == 2
