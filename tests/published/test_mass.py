"""CG of composites, inertia tables and densities from textbooks and handbooks.

"Seen", "worked" and "memory" as in test_tipping.
"""

from __future__ import annotations

from math import pi

import numpy as np
import pytest

from crossfall.truck import solids
from crossfall.truck.massprops import combine, steiner
from crossfall.truck.materials import MATERIALS
from crossfall.truck.model import Body, frozen


def lump(mass: float, x: float, y: float, z: float) -> Body:
    return Body(mass, frozen([x, y, z]), frozen(np.zeros((3, 3))))


def test_cone_on_a_hemisphere_with_holes() -> None:
    """Hibbeler, Engineering Mechanics: Statics, example 9.11. Seen: densities 8 and 4 Mg/m^3,
    4.18879, 1.04720, -0.52360, -1.57080 kg at z 50, -18.75, 125, 50 mm: 3.1416 kg, z = 14.6 mm.

    A hole is a body of negative mass.
    """
    masses, heights = (4.18879, 1.04720, -0.52360, -1.57080), (50.0, -18.75, 125.0, 50.0)
    whole = combine([lump(m, 0, 0, z) for m, z in zip(masses, heights, strict=True)])
    assert whole.mass == pytest.approx(3.1416, abs=5e-5)
    assert whole.cg[2] == pytest.approx(14.583, abs=5e-3)


def test_bent_wire() -> None:
    """Hibbeler, Engineering Mechanics: Statics, example 9.9. Seen: lengths 60 pi, 40, 20 at
    x (60, 0, 0), y (-38.2, 20, 40), z (0, 0, -10) mm: (45.5, -22.5, -0.805) mm.
    """
    pieces = [
        lump(60 * pi, 60.0, -38.2, 0.0),
        lump(40.0, 0.0, 20.0, 0.0),
        lump(20.0, 0.0, 40.0, -10.0),
    ]
    np.testing.assert_allclose(combine(pieces).cg, [45.5, -22.5, -0.805], atol=0.05)
    assert combine(pieces).cg[2] == pytest.approx(-0.805, abs=5e-4)


# Table of homogeneous solids, Meriam and Kraige, Engineering Mechanics: Dynamics, appendix D;
# cylinder and ball also seen in Wikiversity, Moments of inertia (small table). I / m.
def test_inertia_of_a_cylinder() -> None:
    """I_z = m r^2 / 2, I_x = m (3 r^2 + h^2) / 12. Seen."""
    r, h = 0.057, 0.042
    expected = np.diag([(3 * r**2 + h**2) / 12, (3 * r**2 + h**2) / 12, r**2 / 2])
    np.testing.assert_allclose(solids.tube(r, 0.0, h, "z").gyration, expected, rtol=1e-14)
    # On its side, as a wheel: the axis goes along y.
    on_side = np.diag([expected[0, 0], expected[2, 2], expected[0, 0]])
    np.testing.assert_allclose(solids.tube(r, 0.0, h, "y").gyration, on_side, atol=1e-18)


def test_inertia_of_a_ball() -> None:
    """I = 2 m r^2 / 5. Seen."""
    np.testing.assert_allclose(solids.ball(0.03).gyration, 0.4 * 0.03**2 * np.eye(3), rtol=1e-14)


def test_inertia_of_a_block_and_a_rod() -> None:
    """I_x = m (b^2 + c^2) / 12; a slender rod m l^2 / 12 across. Seen."""
    a, b, c = 0.14, 0.046, 0.026
    found = solids.block(a, b, c).gyration
    expected = np.diag([b**2 + c**2, a**2 + c**2, a**2 + b**2]) / 12
    np.testing.assert_allclose(found, expected, rtol=1e-14)
    rod = solids.tube(1e-6, 0.0, 0.1, "x").gyration
    assert rod[1, 1] == pytest.approx(0.1**2 / 12, rel=1e-8)


def test_inertia_of_a_hollow_cylinder_and_a_hoop() -> None:
    """I = m (R^2 + r^2) / 2 about the axis; a thin hoop m R^2. Memory."""
    ring = solids.tube(0.05, 0.04, 0.03, "z").gyration
    assert ring[2, 2] == pytest.approx((0.05**2 + 0.04**2) / 2)
    hoop = solids.tube(0.05, 0.05 - 1e-9, 1e-9, "z").gyration
    assert hoop[2, 2] == pytest.approx(0.05**2, rel=1e-6)
    assert hoop[0, 0] == pytest.approx(0.05**2 / 2, rel=1e-6)


def test_inertia_of_a_rod_about_its_end() -> None:
    """I = m l^2 / 3 (Wikiversity, Moments of inertia, small table). Seen. By parallel axes."""
    m, length = 0.4, 0.3
    about_end = m * solids.tube(1e-7, 0.0, length, "x").gyration + steiner(
        m, np.array([length / 2, 0.0, 0.0])
    )
    assert about_end[2, 2] == pytest.approx(m * length**2 / 3, rel=1e-9)


# g/cm^3. The first six seen in OpenStax, College Physics for AP Courses, table 11.1; the rest in
# data sheets and handbooks: see the source beside each material in the program's own table.
DENSITIES = [
    ("aluminium", 2.70, 0.01),
    ("brass", 8.44, 0.02),
    ("copper", 8.8, 0.02),
    ("steel", 7.8, 0.01),
    ("lead", 11.3, 0.01),
    ("tungsten", 19.30, 0.01),
    ("aluminium 7075", 2.81, 0.01),  # mill data sheet of alloy 7075
    ("brass", 8.50, 0.002),  # C36000, copper industry data sheet
    ("brass sheet", 8.53, 0.002),  # C26000, the same
    ("stainless steel", 8.00, 0.005),  # 304 and 316, Callister
    ("acetal", 1.41, 0.01),  # Engineering Plastics Handbook, table 5.5
    ("polycarbonate", 1.19, 0.02),  # Engineering Plastics Handbook
    ("nylon", 1.14, 0.01),  # nylon 6/6, Engineering Plastics Handbook
]


@pytest.mark.parametrize(("name", "density", "within"), DENSITIES)
def test_densities(name: str, density: float, within: float) -> None:
    assert MATERIALS[name].density == pytest.approx(density * 1000.0, rel=within)
    assert MATERIALS[name].source


def test_a_pound_of_brass() -> None:
    """12 oz of brass is three quarters of a pound: common practice, no source. The ounce of
    28.349523125 g is exact (international yard and pound agreement, 1959).
    """
    twelve_ounces = 12 * 28.349523125e-3
    assert twelve_ounces == pytest.approx(0.75 * 0.45359237, rel=1e-12)
    ring = solids.tube(0.026, 0.018, 0.006, "y")
    pieces = twelve_ounces / (ring.volume * MATERIALS["brass"].density)
    assert 6 < pieces < 8  # rings of 52 x 36 x 6 mm: it fits on two axles and their knuckles
