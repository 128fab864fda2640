"""Where an axle on links truly stands beside the engine's straight joints: what `axle_forces` needs
of it, once."""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from crossfall.truck.axle_law import law_of
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Array, Truck


def set_curve(record: Any, truck: Truck, index: int, share: float) -> Array:
    """Write an axle on links into a record of AXLE; its law's (7, terms) coefficients.

    share: of its mass, that the engine has on the heave joint.
    """
    axle, body = truck.axles[index], unsprung(truck, index)
    law, s = law_of(axle), axle.suspension
    centre = np.array([axle.x, 0.0, s.roll_centre_height])
    record["links"] = True
    record["lean"] = math.sin(s.heave_lean), math.cos(s.heave_lean)
    record["mass"], record["share"] = body.mass, share
    record["to_point"], record["to_centre"] = law.point - centre, centre - law.point
    record["to_cg"] = body.cg - law.point
    return law.coefficients
