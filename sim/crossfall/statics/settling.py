"""Where a truck goes that has lost its balance: it falls over, or stands again elsewhere.

Springs that go slack let the body jump up to the droop stop, and it may stand there as firmly as
before. So a loss of stability is a tip only if the truck does not settle.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Flags
from crossfall.statics.continuation import Cases, solve
from crossfall.statics.kinematics import gravity_direction
from crossfall.truck.model import Array


@dataclass(frozen=True)
class Settling:
    """Numerical settings of the fall; lengths over the wheelbase, angles in rad.

    nudge: first displacement in the direction of the loss. beyond: table angle past the loss, so
    that there is nothing to fall back to. stride: largest movement in one step.
    drag: first value of the damping over the step length (weight times wheelbase is 1).
    fallen: cosine of the body's z axis to the vertical at which the truck is over; no truck comes
    back from there. steps: a limit never met in practice.
    """

    nudge: float = 0.005
    beyond: float = 1e-5
    stride: float = 0.2
    drag: float = 0.5
    fallen: float = 0.15
    steps: int = 300


SETTLING = Settling()


def settle(cases: Cases, state: Array, direction: Array) -> tuple[Array, Flags]:
    """Overdamped motion from state (n + 1, B), nudged along direction, theta just beyond.

    Implicit Euler steps (drag + K) dx = Q whose length adapts: a step must not be long and the
    forces must do work along it. Returns the states and (B,) whether each stands again.
    """
    n, count = len(state) - 1, len(cases)
    out, stands = state.copy(), np.zeros(count, dtype=bool)
    size = np.sqrt((direction[:-1] ** 2).sum(axis=0))
    out[:-1] += SETTLING.nudge * direction[:-1] / np.maximum(size, 1e-12)
    out[-1] += SETTLING.beyond
    live, drag = np.arange(count), np.full(count, SETTLING.drag)
    part = cases
    gravity = gravity_direction(cases.heading, state[-1])[0]
    for _ in range(SETTLING.steps):
        at = part.balance(out[:, live])
        matrix = at.stiffness + drag * np.eye(n)[:, :, None]
        (move,) = solve(matrix, at.load)
        length = np.abs(move).max(axis=0)
        good = ((at.load * move).sum(axis=0) >= 0) & (length < SETTLING.stride)
        out[:-1, live[good]] += move[:, good]
        drag = np.where(good, drag * 0.4, drag * 4.0)

        still = good & (length < 1e-8) & (drag < 1e-2)
        if still.any():
            sign = np.linalg.slogdet(at.stiffness[:, :, still].transpose(2, 0, 1))[0]
            stands[live[still]] = sign > 0
        upright = -(at.pose.turn[:, 2] * gravity[:, live]).sum(axis=0)
        keep = ~still & (upright > SETTLING.fallen)
        if not keep.any():
            break
        if not keep.all():
            live, drag, part = live[keep], drag[keep], part.take(keep)
    return out, stands
