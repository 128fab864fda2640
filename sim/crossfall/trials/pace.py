"""How a tilt trial moves its table and watches its truck.

Source: values found here by trial, so that trials with finer ones agree within their intervals (a
test).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True)
class Pace:
    """In s, m and rad; each value says why.

    approach: rad/s on the way to the start.
    brisk: rad/s of the tilting towards an expected tip, up to `last` (rad) below it.
    slow: rad/s of the tilting to the tip, which finds about where it is and when wheels lift.
    below: rad under the expected tip where the tilting starts, settled.
    near: rad under where it began to run away from which angles are held.
    keep: rad between moments kept on the way, to come back to and hold.
    light: a start is too late where a wheel bears less than this fraction of its level load.
    steady: rad/s between angles that are held.
    stride: rad, furthest from one held angle to the next.
    gently: s, shortest way from one held angle to the next, so that the truck is not jerked over.
    still: m a truck at rest moves in WATCH at most; past its tip, by 0.02 deg, farther.
    hold: s, longest a held angle is watched; one that moves for longer only shakes.
    bracket: rad, width to which holding narrows the tip.
    floor: rad, about 95 %, uncertainty that is always there: step, rates, and when it is at rest;
    trials that differ in these alone agree this well.
    checks: whether the trial measures its own error; if not, the floor must hold it.
    limit: rad, where a trial that has not tipped ends.
    fallen: rad of lean added with a pair of wheels off the table that counts as a fall.
    slid: of a tyre radius, sliding that ends a tilting.
    """

    approach: float = math.radians(15.0)
    brisk: float = math.radians(5.0)
    last: float = math.radians(1.5)
    slow: float = math.radians(2.0)
    below: float = math.radians(3.0)
    near: float = math.radians(1.2)
    keep: float = math.radians(0.7)
    light: float = 0.03
    steady: float = math.radians(1.0)
    stride: float = math.radians(0.3)
    gently: float = 0.1
    still: float = 7e-6
    hold: float = 20.0
    bracket: float = math.radians(0.04)
    floor: float = math.radians(0.04)
    checks: bool = True
    limit: float = math.radians(85.0)
    fallen: float = math.radians(4.0)
    slid: float = 0.5


QUICK = Pace(
    slow=math.radians(4.0),
    steady=math.radians(2.0),
    still=1.4e-5,
    bracket=math.radians(0.12),
    floor=math.radians(0.06),
    checks=False,
)
"""For looking round: some half of the steps, and intervals twice as wide."""

Care = Literal["careful", "quick"]
PACES: dict[Care, Pace] = {"careful": Pace(), "quick": QUICK}
