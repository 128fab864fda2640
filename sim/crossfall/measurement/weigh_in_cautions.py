"""What makes a weigh-in weaker than it looks, in sentences."""

from __future__ import annotations

import numpy as np

from crossfall.measurement.weigh_in_formulas import block_for, height_per_load
from crossfall.measurement.weigh_in_model import UNDER
from crossfall.measurement.weigh_in_pose import GUESSED_SCATTER, warp_gain
from crossfall.measurement.weigh_in_session import Session

SMALL_RAISE = 0.02  # of the CG height: half a scale step may not be worth more


def cautions(session: Session, mass: float, z: float) -> list[str]:
    """Sentences, worst first. mass kg and CG height z m as found, z nan where not measured.

    A raise is too small where half a scale step is worth SMALL_RAISE of the height
    (`height_per_load`).
    Source: `weigh_in_formulas` for the raise; the limits are common practice, no source.
    """
    found = []
    raised = [r for r in session.readings if r.raised]
    hub = session.ruler.radius_front.value
    if np.isfinite(z) and not 0.5 * hub < z < 4 * hub:
        found.append(
            f"a CG {z * 1e3:.0f} mm above ground is hard to believe on wheels with centres at "
            f"{hub * 1e3:.0f} mm: check which end was raised and where the scale stood"
        )
    if np.isfinite(z):
        found += _small_raise(session, mass, z)
    elif raised == []:
        found.append("CG height not measured: no reading has an end or a side raised")
    if session.free is not None and not all(r.locked for r in raised):
        found.append(
            "the suspension was free while an end was raised: the body's movement on its springs "
            + (
                "is worked out from the spring data given"
                if session.free.known
                else "is only bounded, as no spring data are given; lock it to do better"
            )
        )
    repeats = sum(len(r.loads) - 1 for r in session.readings)
    if repeats < 2 and session.scale.placement is None:
        found.append(
            f"too few repeats to know the scatter: {GUESSED_SCATTER * 1e3:g} g is assumed; "
            "lift the truck off and weigh again, three times each"
        )
    unlike = abs(session.ruler.track_front.value - session.ruler.track_rear.value)
    if any(r.raised in ("left", "right") for r in raised) and unlike > 0.01:
        found.append("a side raise with unlike tracks twists the truck: raise an end instead")
    lone = [r for r in session.readings if len(UNDER[r.at]) == 1 and not r.together]
    gain = max((warp_gain(session, r) for r in lone), default=0.0) * session.scale.height_match
    if gain > 5 * max(session.scale.resolution, 1e-3):
        found.append(
            f"a scale {session.scale.height_match * 1e3:g} mm taller than the blocks puts "
            f"{gain * 1e3:.0f} g more on the wheel it carries: weigh axles and sides, not wheels"
        )
    return found


def _small_raise(session: Session, mass: float, z: float) -> list[str]:
    """A raise on which half a step of the scale already moves the height too much."""
    found = []
    for end, height in dict.fromkeys((r.raised, r.block.value) for r in session.readings):
        if not end:
            continue
        ruler = session.ruler
        base = ruler.wheelbase.value if end in ("front", "rear") else ruler.track_front.value
        half = session.scale.resolution / 2
        error = half * height_per_load(mass, base, height)
        if error > SMALL_RAISE * abs(z):
            enough = block_for(mass, base, session.scale.resolution, SMALL_RAISE * z)
            found.append(
                f"{end} raised {height * 1e3:g} mm is too little for this scale: half a step of "
                f"{session.scale.resolution * 1e3:g} g is worth {error * 1e3:.1f} mm of CG height; "
                f"raise it {np.ceil(enough * 200) * 5:.0f} mm or more"
            )
    return found
