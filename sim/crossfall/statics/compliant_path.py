"""Where the truck stands at every table angle: poses, joints and wheel loads, for drawing.

With the uniform friction closure, so that the answer depends on the table angle alone.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics import continuation
from crossfall.statics.balance import Balance, Uniform
from crossfall.statics.builds import Builds, Flags, Ints, pack
from crossfall.statics.compliant import lose
from crossfall.statics.continuation import Track
from crossfall.statics.newton import Cases, correct
from crossfall.truck.model import Array, Truck


@dataclass(frozen=True)
class Path:
    """Equilibrium at n table angles on one heading; nan where the truck does not stand.

    theta: (n,) rad. tip: rad. position, turn: (n, 3, 3) m and (n, 3, 3, 3) for front axle, rear
    axle, chassis: a point X at ride height (truck axes) is now at position + turn @ X, in axes
    fixed to the table (the truck's at the start, table at z = 0). squash: (n, 4) m, how far each
    wheel has moved up along its axle's z. heave: (n, 2) m, roll: (n, 2) rad, front and rear,
    relative to the chassis. load: (n, 4) N normal to the table on each wheel, front left first.
    """

    theta: Array
    tip: float
    position: Array
    turn: Array
    squash: Array
    heave: Array
    roll: Array
    load: Array


def path(truck: Truck, heading: float, thetas: Array) -> Path:
    """Equilibrium poses at the table angles (n,) rad, any order, on one heading (rad)."""
    thetas = np.asarray(thetas, dtype=np.float64)
    builds = pack([truck])
    one = Cases(builds, np.array([heading]), Uniform())
    track = continuation.start(one, trail=True)
    lose(one, track)
    tip = float(track.state[-1, 0])
    states, flags = _trail(track)
    corner = np.clip(np.searchsorted(states[-1], thetas, side="right") - 1, 0, len(flags.T) - 1)
    guess, on = _between(states, corner, thetas), flags[:, corner]

    many = np.zeros(len(thetas), dtype=np.int64)
    cases = Cases(builds.take(many), np.full(len(thetas), heading), Uniform())
    normal = np.zeros_like(guess)
    normal[-1] = 1.0
    at = correct(cases, guess, on, normal=normal, level=thetas)
    stands = at.good & (thetas <= tip)
    return _described(cases.builds, at.state, cases.balance(at.state, on), stands, tip)


def _trail(track: Track) -> tuple[Array, Flags]:
    """(n + 1, k) states met on the way, in order, and (g, k) branches used after each."""
    states = np.stack([state[:, 0] for _, state, _ in track.trail or ()], axis=1)
    flags = np.stack([on[:, 0] for _, _, on in track.trail or ()], axis=1)
    return states, flags


def _between(states: Array, corner: Ints, thetas: Array) -> Array:
    """Linear interpolation from state `corner` (n,) to the next; at a jump, the state before."""
    here, there = states[:, corner], states[:, np.minimum(corner + 1, states.shape[1] - 1)]
    span = there[-1] - here[-1]
    share = np.where(span > 1e-4, (thetas - here[-1]) / np.where(span > 1e-4, span, 1.0), 0.0)
    guess = here + np.clip(share, 0.0, 1.0) * (there - here)
    guess[-1] = thetas
    return np.asarray(guess)


def _described(builds: Builds, state: Array, at: Balance, stands: Flags, tip: float) -> Path:
    """Back to SI, case first."""
    count, points = state.shape[1], builds.disc_mass.shape[1]
    length, weight = builds.wheelbase, builds.weight
    blank = np.where(stands, 1.0, np.nan)
    turn = at.pose.turn * blank
    centre = np.concatenate([builds.roll_centre, np.zeros((3, 1, count))], axis=1)
    position = at.pose.origin - np.einsum("ijcb,jcb->icb", at.pose.turn, centre)
    upright = np.cos(state[-1])  # contact forces are anti-parallel to gravity

    def per_wheel(values: Array, how: str) -> Array:
        grouped = values.reshape(4, points // 2, count)
        return np.asarray(getattr(grouped, how)(axis=1) * blank).T

    return Path(
        state[-1],
        tip,
        (position * length * blank).transpose(2, 1, 0),
        turn.transpose(3, 2, 0, 1),
        per_wheel(at.contact.travel, "mean") * length[:, None],
        (state[[3, 5]] * length * blank).T,
        (state[[4, 6]] * blank).T,
        per_wheel(at.contact.held, "sum") * (weight * upright)[:, None],
    )
