"""Six linkages of the kinds that trucks have, for tests: ends in mm, with travel and spacing."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from crossfall.truck.linkage import geometry
from crossfall.truck.model import Links, Shocks, Truck, frozen

RADIUS = 57.0
AXLE_X = 156.0

_LOWER = ((34.0, 30.0, 84.0), (-4.0, 40.0, -8.0))
# Chassis ends in truck axes, axle ends from the axle's centre; a second entry mirrors to -y.
FRONT: dict[str, list[tuple[str, tuple[float, ...], tuple[float, ...], bool]]] = {
    "four links": [
        ("lower", *_LOWER, True),
        ("upper", (52.0, 30.0, 102.0), (-2.0, 16.0, 26.0), True),
    ],
    "four long links, much travel": [
        ("lower", (20.0, 22.0, 80.0), (-5.0, 48.0, -10.0), True),
        ("upper", (40.0, 34.0, 104.0), (-2.0, 12.0, 30.0), True),
    ],
    "lower links converge": [
        ("lower", (30.0, 12.0, 82.0), (-4.0, 46.0, -8.0), True),
        ("upper", (60.0, 34.0, 104.0), (0.0, 26.0, 28.0), True),
    ],
    "three links and a track bar": [
        ("lower", *_LOWER, True),
        ("upper", (54.0, -18.0, 100.0), (-2.0, -20.0, 26.0), False),
        ("track bar", (150.0, 46.0, 84.0), (-14.0, -44.0, 18.0), False),
    ],
    "wishbone": [
        ("lower", *_LOWER, True),
        ("wishbone", (66.0, 28.0, 103.0), (-2.0, 0.0, 27.0), True),
    ],
    "a bent truck": [
        ("lower left", (34.0, 30.0, 85.0), (-4.0, 40.0, -8.0), False),
        ("lower right", (37.0, -28.0, 83.0), (-3.0, -41.0, -9.0), False),
        ("upper left", (50.0, 31.0, 103.0), (-2.0, 17.0, 26.0), False),
        ("upper right", (53.0, -29.0, 100.0), (-1.0, -14.0, 27.0), False),
    ],
}
TRAVEL = dict.fromkeys(FRONT, (0.02, 0.016, 0.112)) | {
    "four long links, much travel": (0.028, 0.028, 0.124)
}


def links(name: str) -> Links:
    """One of FRONT."""
    chassis, axle, names = [], [], []
    for kind, upper, lower, mirror in FRONT[name]:
        for side in (1.0, -1.0) if mirror else (1.0,):
            flip = np.array([1.0, side, 1.0])
            chassis.append(flip * upper - [AXLE_X, 0.0, RADIUS])
            axle.append(flip * lower)
            names.append(kind)
    bump, droop, spacing = TRAVEL[name]
    ends = (frozen(np.array(e) / 1e3) for e in (chassis, axle))
    return Links(*ends, tuple(names), bump, droop, spacing)


def linked(truck: Truck, front: str, rear: str, shocks: Shocks | None = None) -> Truck:
    """The truck with both axles on links of FRONT, those of the rear the other way round.

    Roll centre and lean become what they amount to, as when a file is read.
    """
    ends = []
    for axle, name, ahead in ((truck.front, front, 1.0), (truck.rear, rear, -1.0)):
        own, s, flip = links(name), axle.suspension, np.array([ahead, 1.0, 1.0])
        own = replace(
            own,
            chassis=frozen(own.chassis * flip),
            axle=frozen(own.axle * flip),
            bump=s.bump,
            droop=s.droop,
            spacing=s.spring_spacing,
        )
        at = geometry(own, axle.x, axle.tyre.radius, np.zeros(1), np.zeros(1))
        suspension = replace(
            s,
            links=own,
            shocks=shocks,
            roll_centre_height=float(at.roll_centre[0]),
            heave_lean=float(at.lean[0]),
        )
        ends.append(replace(axle, suspension=suspension))
    return replace(truck, front=ends[0], rear=ends[1])


def leaning_shocks() -> Shocks:
    """In mm: heads 118 apart and 94 up, feet 100 apart."""
    head = np.array([[-30.0, 50.0, 94.0], [-30.0, -50.0, 94.0]])
    foot = np.array([[-10.0, 59.0, 12.0], [-10.0, -59.0, 12.0]])
    return Shocks(frozen(head / 1e3), frozen(foot / 1e3))
