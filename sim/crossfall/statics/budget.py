"""Where the degrees go between the rigid promise and the compliant answer.

Source: derived here: the tip of the same truck with one freedom after the other set free.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics import compliant, rigid
from crossfall.statics.builds import firm, joined_builds, locked_builds, rise_only, stacked
from crossfall.truck.model import Array, Truck


@dataclass(frozen=True)
class Stages:
    """Tip angles, (H,) rad each, with one more thing allowed to give at every stage.

    rigid: nothing. tyres: the tyres squash; the suspension is locked. ground: and they give along
    the ground. extension: and both axles extend alike without rolling, so that the body rises as
    its weight on them falls. The rest is that it leans and pitches.
    """

    rigid: Array
    tyres: Array
    ground: Array
    extension: Array


def budget(truck: Truck, headings: Array, grip: float) -> Stages:
    """The stages on every heading (H,) rad with one friction coefficient.

    Against a rail, so that no stage ends in a slide.

    grip: friction coefficient. Each stage is `compliant.tips_of_builds` of a truck with fewer
    freedoms, the first (1) of `rigid`. Raises InputError as `builds.stacked` does.
    """
    psi = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    builds, count = stacked([truck]), len(psi)
    stages = joined_builds([firm(locked_builds(builds)), locked_builds(builds), rise_only(builds)])
    who = np.repeat(np.arange(3), count)
    headings = np.tile(psi, 3)
    railed = compliant.railed_tyres([truck] * 3, who, headings)
    mu = np.full(3 * count, float(grip))
    tip = compliant.tips_of_builds(stages, headings, mu, railed, who).tip.reshape(3, count)
    return Stages(rigid.tip_angle(truck, psi), *tip)
