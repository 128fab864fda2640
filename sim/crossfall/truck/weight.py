"""Where the weight is, how sure that is, and which parts matter most.

Uncertainty is propagated linearly from each row's mass and place, and from
wheelbase, tracks and tyre radii; one row is one set of errors, shared by all its pieces, and
different rows are independent.

Source: JCGM 100:2008, 5.1 (from memory): u^2 = sum (df/dx_i)^2 u_i^2; the derivatives are derived
here from `massprops` and `ride`.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.truck.clearance import ClearanceAngles, clearance_angles
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Truck
from crossfall.truck.ride import level_axle_loads, tyre_loads
from crossfall.truck.uncertain import sd, varied

COVERAGE = 1.96
"""95 % of a sum of many errors lies within so many standard uncertainties: it is nearly normal
whatever each of them is (JCGM 100:2008, table G.1). Where one even (rectangular) error outweighs
the rest this says too much, by 19 % at most."""


@dataclass(frozen=True)
class PartInfluence:
    """What one row of the parts list does to the CG height.

    mass: kg, all its pieces. height: m, its own CG. pull: m, mass (height - h) / total, by how
    much it holds the CG up (or down). without: m, change of the CG height if it were gone.
    """

    row: int
    name: str
    mass: float
    height: float
    pull: float
    without: float


@dataclass(frozen=True)
class WeighIn:
    """The weight of a truck standing level. SI; `_sd` are standard uncertainties.

    cg: (3,) m. inertia: (3, 3) kg m^2 about the CG. unsprung: (2,) kg front and rear.
    axle_loads: (2,) N. tyre_loads: (4,) N, front left first. front_share: of the weight.
    influences: all rows, the strongest pull on the CG height first.
    """

    mass: float
    mass_sd: float
    sprung: float
    unsprung: Array
    cg: Array
    cg_sd: Array
    inertia: Array
    axle_loads: Array
    axle_loads_sd: Array
    tyre_loads: Array
    tyre_loads_sd: Array
    front_share: float
    front_share_sd: float
    sprung_cg: Array
    clearance: ClearanceAngles | None
    influences: tuple[PartInfluence, ...]


def weigh_truck(truck: Truck) -> WeighIn:
    """Everything `crossfall weigh` says, SI. Raises nothing of a truck that `build` made."""
    body = whole(truck)
    slopes = sensitivities(truck)
    loads = level_axle_loads(truck)
    by_parts = np.concatenate([slopes.mass, slopes.cg, slopes.axle_loads, slopes.tyre_loads])
    share = slopes.cg[:1] / truck.wheelbase
    parts = slopes.spread(np.concatenate([by_parts, share]))
    spread = np.hypot(parts, np.sqrt(np.sum(_by_measures(truck) ** 2, axis=1)))
    return WeighIn(
        mass=body.mass,
        mass_sd=float(spread[0]),
        sprung=truck.chassis.mass,
        unsprung=np.array([unsprung(truck, i).mass for i in (0, 1)]),
        cg=body.cg,
        cg_sd=spread[1:4],
        inertia=body.inertia,
        axle_loads=loads,
        axle_loads_sd=spread[4:6],
        tyre_loads=tyre_loads(truck),
        tyre_loads_sd=spread[6:10],
        front_share=float(loads[0] / loads.sum()),
        front_share_sd=float(spread[10]),
        sprung_cg=truck.chassis.cg,
        clearance=clearance_angles(truck),
        influences=influences(truck),
    )


_MEASURES = ("wheelbase", "track", "radius", "stands")


def _by_measures(truck: Truck) -> Array:
    """(11, n) what a standard uncertainty of wheelbase, tracks, radii and of how high collars let
    each end stand does to mass, CG, axle loads, tyre loads and front share; the truck's other
    inputs do nothing to them."""

    def results(changed: Truck) -> Array:
        body, loads = whole(changed), level_axle_loads(changed)
        share = loads[0] / loads.sum()
        return np.array([body.mass, *body.cg, *loads, *tyre_loads(changed), share])

    found = []
    for number, one in enumerate(truck.uncertain):
        if one.fields[0].rpartition(".")[2] in _MEASURES:
            ends = (one.likely - sd(one), one.likely + sd(one))
            low, high = (results(varied(truck, {number: value})) for value in ends)
            found.append((high - low) / 2)
    return np.array(found).reshape(-1, 11).T


@dataclass(frozen=True)
class Sensitivities:
    """Derivatives of the weigh-in by every row's errors.

    Each array is (k, rows, 4): k results by the row's mass (per kg of one piece) and its place
    along x, y, z (per m; y of mirrored pieces counts the other way). sd: (rows, 4).
    """

    mass: Array
    cg: Array
    axle_loads: Array
    tyre_loads: Array
    sd: Array

    def spread(self, slopes: Array) -> Array:
        """(k,) standard uncertainties of k results, slopes (k, rows, 4): sqrt(sum (slope sd)^2)."""
        total: Array = np.sqrt(np.sum((slopes * self.sd) ** 2, axis=(1, 2)))
        return total


def sensitivities(truck: Truck) -> Sensitivities:
    """Exact derivatives of mass, CG, axle and tyre loads by the rows' masses and places.

    dc/dm = (c_i - c) / M, dc/dc_i = m / M; loads as in `_by_axle_loads` and `_by_tyre_loads`. Not
    finite where the chassis has no mass.
    """
    body = whole(truck)
    rows = 1 + max((p.row for p in truck.parts), default=-1)
    groups = np.zeros((rows, len(truck.parts)))
    sd = np.zeros((rows, 4))
    for j, part in enumerate(truck.parts):
        groups[part.row, j] = 1.0
        sd[part.row] = [part.mass_sd, *np.broadcast_to(part.place_sd, 3)]
    mass = np.array([p.body.mass for p in truck.parts])
    place = np.array([p.body.cg for p in truck.parts]).reshape(-1, 3)
    side = np.array([-1.0 if p.mirrored else 1.0 for p in truck.parts])

    n = len(truck.parts)
    by_mass = np.zeros((1, n, 4))
    by_mass[0, :, 0] = 1.0
    by_cg = np.zeros((3, n, 4))
    by_cg[:, :, 0] = (place - body.cg).T / body.mass
    for axis in range(3):
        by_cg[axis, :, 1 + axis] = mass / body.mass * (side if axis == 1 else 1.0)
    by_axle = _by_axle_loads(truck, mass, place)
    by_tyre = _by_tyre_loads(truck, mass, place, side, by_axle)
    grouped = [np.einsum("knq,rn->krq", a, groups) for a in (by_mass, by_cg, by_axle, by_tyre)]
    return Sensitivities(grouped[0], grouped[1], grouped[2], grouped[3], sd)


def _by_axle_loads(truck: Truck, mass: Array, place: Array) -> Array:
    """(2, n, 4): the front axle carries g m (x - x_rear) / L of each piece."""
    out = np.zeros((2, len(mass), 4))
    out[0, :, 0] = GRAVITY * (place[:, 0] - truck.rear.x) / truck.wheelbase
    out[1, :, 0] = GRAVITY - out[0, :, 0]
    out[0, :, 1] = GRAVITY * mass / truck.wheelbase
    out[1, :, 1] = -out[0, :, 1]
    return out


def _by_tyre_loads(truck: Truck, mass: Array, place: Array, side: Array, by_axle: Array) -> Array:
    """(4, n, 4): F/2 +- (S y_c + W_u y_u) / T on each axle, as in `ride.tyre_loads`."""
    y_chassis, m_chassis = truck.chassis.cg[1], truck.chassis.mass
    share = np.array([p.unsprung if p.carrier != "chassis" else 0.0 for p in truck.parts])
    by_offset = np.zeros((len(mass), 4))  # of the chassis CG's y
    by_offset[:, 0] = (1 - share) * (place[:, 1] - y_chassis) / m_chassis
    by_offset[:, 2] = (1 - share) * mass * side / m_chassis
    loads = level_axle_loads(truck)
    out = np.zeros((4, len(mass), 4))
    for i, axle in enumerate(truck.axles):
        name = ("front", "rear")[i]
        on = share * np.array([p.carrier.startswith(name) for p in truck.parts])
        sprung = loads[i] - unsprung(truck, i).mass * GRAVITY
        by_sprung = by_axle[i].copy()
        by_sprung[:, 0] -= GRAVITY * on
        by_moment = by_sprung * y_chassis + sprung * by_offset
        by_moment[:, 0] += GRAVITY * on * place[:, 1]
        by_moment[:, 2] += GRAVITY * on * mass * side
        out[2 * i] = by_axle[i] / 2 + by_moment / axle.track
        out[2 * i + 1] = by_axle[i] / 2 - by_moment / axle.track
    return out


def influences(truck: Truck) -> tuple[PartInfluence, ...]:
    """Every row's hold on the CG height, the strongest first; ties in file order.

    m (z - h) / M, and the CG height without it less h, (M h - m z) / (M - m) - h; m.
    """
    body = whole(truck)
    height = float(body.cg[2])
    pieces: dict[int, list[int]] = {}
    for j, part in enumerate(truck.parts):
        pieces.setdefault(part.row, []).append(j)
    found = []
    for row, members in pieces.items():
        own = [truck.parts[j] for j in members]
        mass = sum(p.body.mass for p in own)
        z = float(sum(p.body.mass * p.body.cg[2] for p in own)) / mass
        rest = body.mass - mass
        without = (body.mass * height - mass * z) / rest - height if rest > 0 else -height
        name = own[0].label if len(own) == 1 else own[0].label.rsplit(" ", 1)[0]
        found.append(PartInfluence(row, name, mass, z, mass * (z - height) / body.mass, without))
    return tuple(sorted(found, key=lambda f: (-abs(f.pull), f.row)))
