"""Where the degrees go between the rigid promise and the compliant answer."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics import compliant, rigid
from crossfall.statics.builds import firm, lock, pack, rise_only
from crossfall.truck.model import Array, Truck


@dataclass(frozen=True)
class Stages:
    """Tip angles, (H,) rad each, with one more thing allowed to give at every stage.

    rigid: nothing. tyres: the tyres squash; the suspension is locked. ground: and they give along
    the ground. extension: and both axles extend alike without rolling, so that the body rises as
    its weight on them falls. compliant: everything. All but the first at the same grip.
    """

    rigid: Array
    tyres: Array
    ground: Array
    extension: Array
    compliant: Array


def budget(truck: Truck, headings: Array, grip: Array, *, rail: bool = False) -> Stages:
    """The stages on every heading (H,) rad, each with its friction coefficient, (H,)."""
    psi = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    builds, who = pack([truck]), np.zeros(len(psi), dtype=np.int64)
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), psi.shape)
    railed = compliant.railed_tyres([truck], who, psi) if rail else None
    tyres, ground, extension, full = (
        compliant.tips_of_builds(b, psi, mu, railed, who).tip
        for b in (firm(lock(builds)), lock(builds), rise_only(builds), builds)
    )
    return Stages(rigid.tip_angle(truck, psi), tyres, ground, extension, full)
