"""Open differentials between the wheels of an axle that the motor holds by its shaft.

The two wheels turn against each other, by s and -s, until the shaft's torque is shared evenly: with
way = R ahead and F the ground force on a wheel's contact points

    sum over the left F . way = sum over the right F . way                              (1)

which hangs on s alone, since both wheels sit on one axle. So s is solved for here, at every look,
and is no unknown of the truck's; the derivatives below have it follow. It counts from where the
tyres' history stood. Wheels against a rail are held there, and so their axle counts as locked. All
of it is compiled.

Source: derived here from virtual work: an open differential turns its two wheels by s and -s at no
work of the shaft, so both have the same torque.
"""

from __future__ import annotations

from typing import Any

from crossfall.truck.to_compile import inner

CLOSE = 1e-11  # of the weight and wheelbase, to which (1) is solved
MOST_ROUNDS = 40
_LEAST = 0.02  # of what tyres that stick give, that a step on slipping ones reckons with at least
_TURN = 0.1  # rad in one step


@inner
def by_turn(case: Any, axle: int, j: int, x: float, y: float) -> tuple[float, ...]:
    """By how much a contact point's force (3,) grows, and it moves (2,), by a turn of its wheel
    ahead, which rolls it by (x, y) a rad: as if the axle went back under it."""
    d, p, touch = case.d_force[axle, j], case.d_point[axle, j], case.touch[axle, j]
    return (
        -d[3, 0] * x - d[4, 0] * y,
        -d[3, 1] * x - d[4, 1] * y,
        -d[3, 2] * x - d[4, 2] * y,
        touch * (x - p[3, 0] * x - p[4, 0] * y),
        touch * (y - p[3, 1] * x - p[4, 1] * y),
    )


@inner
def pull_apart(case: Any, axle: int, points: int, x: float, y: float) -> tuple[float, float, float]:
    """What the two sides of (1) are apart, how much that grows with s, how many points touch."""
    miss, gain, touching = 0.0, 0.0, 0.0
    for j in range(points):
        side = 1.0 if 2 * j < points else -1.0
        force, more = case.force[axle, j], by_turn(case, axle, j, x, y)
        miss += side * (x * force[0] + y * force[1])
        gain += x * more[0] + y * more[1]
        touching += case.touch[axle, j]
    return miss, gain, touching


@inner
def turn_on(
    s: float, low: float, high: float, miss: float, gain: float, firm: float
) -> tuple[float, float, float]:
    """The next s and the bounds it lies between: Newton's, or midway where that leads beside them,
    since tyres that slip both ways pull alike however far they turn. firm: the gain of tyres that
    stick."""
    if miss > 0:
        high = s
    else:
        low = s
    tried = s - min(max(miss / max(gain, _LEAST * firm), -_TURN), _TURN)
    if not low < tried < high:  # only where both are known
        tried = (low + high) / 2
    return tried, low, high


@inner
def follow_turn(case: Any, axle: int, points: int, x: float, y: float, gain: float) -> None:
    """Have the derivatives of an axle's contact take in s as it follows from (1)."""
    by = case.by
    for c in range(7):
        by[c] = 0.0
        for j in range(points):
            side, d = 1.0 if 2 * j < points else -1.0, case.d_force[axle, j]
            by[c] += side * (x * d[c, 0] + y * d[c, 1])
    for j in range(points):
        side, more = 1.0 if 2 * j < points else -1.0, by_turn(case, axle, j, x, y)
        for c in range(7):
            s = -side * by[c] / gain
            for k in range(3):
                case.d_force[axle, j, c, k] += more[k] * s
            for k in range(2):
                case.d_point[axle, j, c, k] += more[3 + k] * s
