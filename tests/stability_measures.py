"""Two measures of how far the rigid truck is from tipping, besides the angle left.

The force-angle measure of Papadopoulos and Rey, The force-angle measure of tipover stability
margin for mobile manipulators, Vehicle System Dynamics 33 (2000) 29-48, and the energy stability
margin of Messuri and Klein, Automatic body regulation for maintaining stability of a legged
vehicle during rough-terrain locomotion, IEEE Journal of Robotics and Automation 1 (1985) 132-141
(both formulas from memory). Edges as in `crossfall.statics.rigid`: rear, left, front, right.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from crossfall.statics.rigid import downhill, edge_distances, normals, pressure_point, tip_line
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Truck


@dataclass(frozen=True)
class ForceAngle:
    """Per edge (4,): angle, rad, from the force on the CG to the line from CG to edge, negative
    once the force points outside; arm, m, of the force about the edge; force, N, square to it.
    """

    angle: Array
    arm: Array
    force: Array

    @property
    def measure(self) -> float:
        """N m, alpha = min over edges of angle x arm x force; zero on the point of tipping."""
        return float(np.min(self.angle * self.arm * self.force))


def table_gravity(heading: float, theta: float) -> Array:
    """(3,) m/s^2, gravity in truck axes on a tilted table: g (sin(theta) d, -cos(theta))."""
    return GRAVITY * np.append(np.sin(theta) * downhill(heading), -np.cos(theta))


def force_angle(truck: Truck, pull: ArrayLike) -> ForceAngle:
    """The force-angle measure for a pull (3,) m/s^2 on the CG: gravity less acceleration.

    angle: between f_i, the part of the pull square to the edge, and l_i, the perpendicular from
    the CG to the edge. arm: |l_i - (l_i.f_i) f_i / f_i^2|, the distance from f_i's line to it.
    """
    body = whole(truck)
    outward, down = _in_edge_planes(truck, np.asarray(pull, dtype=np.float64))
    a, h = edge_distances(truck, body.cg), body.cg[2]
    angle = np.arctan2(a, h) - np.arctan2(outward, down)
    angle = np.mod(angle + np.pi, 2 * np.pi) - np.pi
    arm = np.abs(np.hypot(a, h) * np.sin(angle))
    return ForceAngle(angle, arm, body.mass * np.hypot(outward, down))


def energy_margin(truck: Truck, heading: float = 0.0, theta: float = 0.0) -> Array:
    """(4,) J, work to turn the truck about each edge until it topples, on a table at theta.

    E = M g R (1 - cos(phi)) cos(psi): R from edge to CG, phi the angle left to the upright plane
    through the edge, psi the edge's slope. Zero over an edge it has already passed.
    """
    body = whole(truck)
    outward, down = _in_edge_planes(truck, table_gravity(heading, theta))
    a, h = edge_distances(truck, body.cg), body.cg[2]
    left = np.arctan2(a, h) - np.arctan2(outward, down)
    energy = body.mass * np.hypot(outward, down) * np.hypot(a, h) * (1 - np.cos(left))
    return np.where(left > 0, energy, 0.0)


def _in_edge_planes(truck: Truck, pull: Array) -> tuple[Array, Array]:
    """The parts of a pull (3,) outward of each edge (4,) and down; the rest runs along the edge."""
    outward: Array = normals(truck) @ pull[:2]
    return outward, np.full(4, -pull[2])


def side_loads(truck: Truck, heading: float, theta: float) -> Array:
    """(2,) N normal load on the left and right tyres: N_l = W cos(theta) (1 + p_y / b) / 2.

    b: m, the tip line of both axles, from `tip_line`. ValueError where the axles' tip lines
    differ: the sides' loads are then statically indeterminate.
    """
    front, rear = (tip_line(a.track, a.tyre.contact_half_width) for a in truck.axles)
    if not np.isclose(front, rear, rtol=1e-12):
        raise ValueError("the loads of the sides are indeterminate where the tip lines differ")
    body = whole(truck)
    p = pressure_point(body.cg, heading, theta)
    normal = body.mass * GRAVITY * np.cos(theta)
    loads: Array = normal / 2 * np.array([1 + p[1] / front, 1 - p[1] / front])
    return loads


def static_stability_factor(track: float, cg_height: float) -> float:
    """T / 2h: lateral acceleration in g at which a rigid vehicle rolls over on the flat.

    US NHTSA, New Car Assessment Program, rollover resistance (49 CFR 575).
    """
    return track / (2 * cg_height)


def tilt_table_ratio(theta: ArrayLike) -> Array:
    """tan(theta): equivalent lateral acceleration in g at the table angle theta (rad).

    The definition of the Australian quad bike safety standard (2019), published guidance. The
    normal load is scaled by cos(theta) meanwhile.
    """
    return np.tan(np.asarray(theta, dtype=np.float64))
