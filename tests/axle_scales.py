"""CG from scale readings, as a textbook has it: rigid truck, equal tyres, exact readings.

Loads may be in any unit of mass or force, as long as it is the same throughout; lengths in m. The
weigh-in proper (`weigh_in_model`) uses a fuller model and agrees with these where they apply.
"""

from __future__ import annotations

import numpy as np


def behind_front_axle(front: float, rear: float, wheelbase: float) -> float:
    """m, a = L R_r / W: how far the CG lies behind the front axle, from level axle loads."""
    return wheelbase * rear / (front + rear)


def left_of_middle(left: float, right: float, track: float) -> float:
    """m, y = T (R_left - R_right) / 2W: how far the CG lies left of the middle, level."""
    return track * (left - right) / (2 * (left + right))


def raised_height(
    front_raised: float, total: float, ahead_of_rear: float, wheelbase: float, block: float,
    radius: float,
) -> float:  # fmt: skip
    """m, CG height from the front load with the front wheels on a block.

    h = (b - L R_f / W) cot(asin(H / L)) + r                                              (1)

    the axle-lift formula of ISO 10392 and SAE J874. front_raised: R_f, the load under the front
    axle while it is raised; total: W; ahead_of_rear: b, m; block: H, m; radius: r, m, the wheel
    centre's height under load, both axles alike. Wheels stand on level ground and a level block
    and are free to roll, so that every contact force is vertical and passes through the wheel
    centre: the truck turns about the rear wheel centres, which is why r comes in.
    """
    lever = ahead_of_rear - wheelbase * front_raised / total
    return float(lever / np.tan(np.arcsin(block / wheelbase)) + radius)


def raised_front_load(
    height: float, total: float, ahead_of_rear: float, wheelbase: float, block: float,
    radius: float,
) -> float:  # fmt: skip
    """Load under the raised front axle: `raised_height` (1) solved for R_f."""
    tilt = np.tan(np.arcsin(block / wheelbase))
    return float(total * (ahead_of_rear - (height - radius) * tilt) / wheelbase)
