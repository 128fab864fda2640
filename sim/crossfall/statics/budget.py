"""Where the degrees go between the rigid promise and the compliant answer."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics import compliant, rigid
from crossfall.statics.builds import lock, pack, rise_only
from crossfall.truck.model import Array, Truck


@dataclass(frozen=True)
class Stages:
    """Tip angles, (H,) rad each, with one more thing allowed to give at every stage.

    rigid: nothing. tyres: the tyres squash, the suspension is locked. extension: and both axles
    extend alike without rolling, so that the body rises as its weight on them falls. compliant:
    everything; all with the uniform friction closure.
    """

    rigid: Array
    tyres: Array
    extension: Array
    compliant: Array


def budget(truck: Truck, headings: Array) -> Stages:
    """The stages on every heading (H,) rad."""
    psi = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    builds = pack([truck] * len(psi))
    tyres, extension, full = (
        compliant.tips_of_builds(b, psi).tip for b in (lock(builds), rise_only(builds), builds)
    )
    return Stages(rigid.tip_angle(truck, psi), tyres, extension, full)
