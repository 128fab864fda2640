"""Which tyres a truck leans on as the table tilts.

Source: derived here: equilibrium of moments about the line of contacts, tan(theta) = a / (h n.d).
"""

from __future__ import annotations

import math

import numpy as np

from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck

PAIRS = ((0, 2), (1, 3), (0, 1), (2, 3))  # left, right, front, rear wheels


def downhill_pair(truck: Truck, heading: float) -> tuple[int, int]:
    """The two wheels a rigid truck would tip over at `heading` (rad): least a / (n.d).

    The lines run between the tyres' tip lines, half a contact width outside their middles. Numbers
    are of `model.WHEELS`. Raises ValueError where the heading is nan.
    """
    body = whole(truck)
    downhill = np.array([-math.cos(heading), math.sin(heading)])
    widths = [a.tyre.contact_half_width for a in truck.axles]
    points = np.concatenate([axle.hubs[:, :2] for axle in truck.axles])
    points[:, 1] += np.repeat(widths, 2) * (1.0, -1.0, 1.0, -1.0)
    levers = {}
    for pair, outward in zip(PAIRS, ((0, 1), (0, -1), (1, 0), (-1, 0)), strict=True):
        a, b = (points[w] for w in pair)
        normal = np.array([(b - a)[1], (a - b)[0]]) / np.linalg.norm(b - a)
        normal = normal if normal @ outward > 0 else -normal
        if normal @ downhill > 1e-9:
            levers[pair] = float((a - body.cg[:2]) @ normal / (normal @ downhill))
    return min(levers, key=lambda pair: levers[pair])
