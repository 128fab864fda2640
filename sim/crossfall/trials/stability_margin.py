"""How far a truck is from tipping, in angle, seen from its CG: the force-angle measure.

Papadopoulos and Rey, Vehicle System Dynamics 33 (2000) 29-48: for every tip line the angle
between the resultant of weight and inertia force through the CG and the plane through the CG and
the line; the margin is the least, zero when the resultant points at a line, and on level ground
at rest the static tip angle of the truck as it stands, springs and tyres included. Their factor
for the size of the force is left out, so that the answer stays an angle.

Source: E. Papadopoulos and D. A. Rey, The Force-Angle Measure of Tipover Stability Margin for
Mobile Manipulators, Vehicle System Dynamics 33 (2000) 29-48.
"""

from __future__ import annotations

import numpy as np

from crossfall.truck.model import Array, frozen

_ROUND = (0, 1, 3, 2)  # wheels in order round the truck: front left, front right, rear right, left
BLUR = 0.06  # s over which motion is averaged before it is differentiated twice


def force_angles(cg: Array, force: Array, contacts: Array) -> Array:
    """(n,) rad, negative once the resultant points outside the tyres.

    cg: (n, 3) m. force: (n, 3) in any unit, weight and inertia force together. contacts: (n, 4, 3)
    m, outermost point of each tyre on the ground, front left first. The least over the four lines
    of the signed angle about line a from f to l, f and l being force and the way to the line, less
    their parts along a.
    """
    corners = contacts[:, _ROUND, :]
    along = np.roll(corners, -1, axis=1) - corners  # (n, 4, 3), clockwise seen from above
    along = along / np.linalg.norm(along, axis=-1, keepdims=True)
    to_line = corners - cg[:, None, :]
    to_line = to_line - np.sum(to_line * along, axis=-1, keepdims=True) * along
    pull = force[:, None, :] - np.sum(force[:, None, :] * along, axis=-1, keepdims=True) * along
    turn = np.sum(np.cross(pull, to_line) * along, axis=-1)
    angles = np.arctan2(turn, np.sum(pull * to_line, axis=-1))
    return frozen(angles.min(axis=1))


def effective_gravity(time: Array, cg: Array, gravity: Array) -> Array:
    """(n, 3) m/s^2, gravity (3,) or (n, 3) less the acceleration of the CG, from its path (n, 3) m
    over time (n,) s.

    The path is averaged over BLUR first; at both ends, where that cannot be done, it is at rest. g
    - r'' by central differences of evenly spaced samples.
    Source: d'Alembert's principle, any mechanics text, e.g. H. Goldstein, Classical Mechanics
    (Addison-Wesley 1980), chapter 1 (from memory).
    """
    pull = np.broadcast_to(gravity, cg.shape).astype(np.float64)
    if len(time) < 5:
        return frozen(pull)
    width = 2 * max(1, round(BLUR / (time[1] - time[0]) / 2)) + 1
    if len(time) < 2 * width:
        return frozen(pull)
    window = np.ones(width) / width
    smooth = np.stack([np.convolve(cg[:, i], window, mode="valid") for i in range(3)], axis=1)
    rate = np.gradient(smooth, time[1] - time[0], axis=0)
    speeding = np.gradient(rate, time[1] - time[0], axis=0)
    half = width // 2
    pull[half + 2 : half + len(smooth) - 2] -= speeding[2:-2]
    return frozen(pull)
