"""Where turned wheels stand: both swing alike about upright kingpins.

Source: derived here: a point turned about an upright axis. Unequal angles left and right
(Ackermann's) are left out.
"""

from __future__ import annotations

from math import atan2, cos, hypot, sin

from crossfall.truck.model import Axle

Steered = tuple[tuple[float, float], tuple[float, float]]


def swung(turn: float, offset: float) -> Steered:
    """`Axle.steered` with the wheels turned to the left by `turn` (rad), their tyres' middles
    `offset` (m) out from the kingpins: c sin t back and c (1 - cos t) inwards on the left.
    """
    back, inwards = offset * sin(turn), offset * (1 - cos(turn))
    return (-back, -inwards), (back, inwards)


def steering(axle: Axle) -> tuple[float, float]:
    """Turn (rad) and offset (m) of an axle whose wheels are turned, from where they stand: with
    back = c sin t and in = c (1 - cos t), in / back = tan(t / 2).

    c = (back^2 + in^2) / (2 in). 0 and 0 where nothing stands inwards. Raises nothing.
    """
    _, (back, inwards) = axle.steered
    if not inwards:
        return 0.0, 0.0
    turn = 2 * atan2(inwards, abs(back)) * (1 if back > 0 else -1)
    return turn, hypot(back, inwards) ** 2 / (2 * inwards)
