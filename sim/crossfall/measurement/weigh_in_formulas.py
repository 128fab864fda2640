"""What a scale and a block are worth in a weigh-in: the axle-lift formula's derivative.

h = (b - L R_f / W) cot(asin(H / L)) + r of ISO 10392 and SAE J874, with R_f the load under the
raised front axle, W the total, L the wheelbase, H the block, b from the CG to the rear axle and r
the radius. Loads in any unit of mass or force, lengths in m.

Source: ISO 10392 and SAE J874 for the formula (from memory); its derivative derived here.
"""

from __future__ import annotations

import numpy as np


def height_per_load(total: float, wheelbase: float, block: float) -> float:
    """m of CG height per unit of load, L / (W tan(asin(H / L))): what a scale step is worth.

    total: W, mass or force. wheelbase, block: m, 0 < block < wheelbase.
    """
    return float(wheelbase / (total * np.tan(np.arcsin(block / wheelbase))))


def block_for(total: float, wheelbase: float, step: float, height_error: float) -> float:
    """m, the block at which half a step of the scale moves the height by no more than asked.

    step: scale resolution in the unit of `total`; height_error: m. L sin(atan(L step / 2 / (W e))).
    """
    tilt = np.arctan(wheelbase * step / 2 / (total * height_error))
    return float(wheelbase * np.sin(tilt))
