"""Where the truck stands at every table angle on one heading, from level to the tip."""

from __future__ import annotations

from typing import Any

import numpy as np

from crossfall.bench.scene import mm
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck
from crossfall.truck.ride import tyre_loads


def path_at(truck: Truck, heading_deg: float) -> dict[str, Any]:
    heading = np.radians([heading_deg])
    edge = rigid.EDGES[int(rigid.tip_edge(truck, heading)[0])]
    tip = float(np.degrees(rigid.tip_angle(truck, heading)[0]))
    still = [[0.0, 0, 0, 0, 0, 0, 1]] * 3
    load = (tyre_loads(truck) / GRAVITY * 1000).tolist()
    point = {"poses": still, "cg_mm": mm(whole(truck).cg), "load_g": load}
    return {
        "heading_deg": heading_deg,
        "tip_deg": tip,
        "over": edge,
        "points": [{"theta_deg": 0.0, **point}, {"theta_deg": tip, **point}],
    }
