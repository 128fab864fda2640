"""Where the truck stands at every table angle: poses, joints and wheel loads, for drawing.

Source: derived here: the equilibrium of `balance` at given theta, by Newton's method from between
two points of the path of `continuation`.
"""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np

from crossfall.statics import continuation
from crossfall.statics.balance import Picture
from crossfall.statics.builds import Builds, Ints, stacked
from crossfall.statics.compliant import NO_SLIDE, lose, on_the_level, railed_tyres
from crossfall.statics.newton import Cases, correct
from crossfall.statics.track import Track
from crossfall.statics.tyres import Patches
from crossfall.truck.model import Array, Flags, Truck


@dataclass(frozen=True)
class EquilibriumPath:
    """Equilibrium at n table angles on one heading; nan where the truck does not stand.

    theta: (n,) rad. tip: rad. position, turn: (n, 3, 3) m and (n, 3, 3, 3) for front axle, rear
    axle, chassis: a point X at ride height (truck axes) is now at position + turn @ X, in axes
    fixed to the table (the truck's at the start, table at z = 0). give: (n, 4, 3) m, how far each
    wheel has moved along its axle's x, y and z. heave: (n, 2) m, roll: (n, 2) rad, front and rear,
    relative to the chassis. load: (n, 4) N normal to the table on each wheel, front left first.
    """

    theta: Array
    tip: float
    position: Array
    turn: Array
    give: Array
    heave: Array
    roll: Array
    load: Array


def equilibrium_path(
    truck: Truck, heading: float, thetas: Array, grip: float = NO_SLIDE, *, rail: bool = False
) -> EquilibriumPath:
    """Equilibrium poses at the table angles (n,) rad, any order, on one heading (rad).

    grip: friction coefficient. rail: the tyres it would tip over cannot slip.

    Solves load(x, theta) = 0 at each theta. Raises InputError as `builds.stacked` does.
    """
    thetas = np.asarray(thetas, dtype=np.float64)
    builds, psi, mu = stacked([truck]), np.array([heading]), np.array([grip])
    railed = railed_tyres([truck], np.zeros(1, dtype=np.int64), psi) if rail else None
    one = on_the_level(builds, psi, mu, railed)
    track = continuation.start(one, trail=True)
    lose(one, track)
    tip = float(track.state[-1, 0])
    states, flags, patches = _trail(track)
    corner = np.clip(np.searchsorted(states[-1], thetas, side="right") - 1, 0, len(flags.T) - 1)
    guess, on = _between(states, corner, thetas), flags[:, corner]

    many = np.zeros(len(thetas), dtype=np.int64)
    limit = np.full(len(thetas), one.limit[0])
    cases = Cases(builds.take(many), np.full(len(thetas), heading), patches.take(corner), limit)
    normal = np.zeros_like(guess)
    normal[-1] = 1.0
    at = correct(cases, guess, on, normal=normal, level=thetas)
    stands = at.good & (thetas <= tip)
    return _described(cases.builds, at.state, cases.picture(at.state, on), stands, tip)


def _trail(track: Track) -> tuple[Array, Flags, Patches]:
    """(n + 1, k) states met on the way, in order, (g, k) branches and patches used after each."""
    trail = track.trail or []
    states = np.stack([state[:, 0] for _, state, _, _ in trail], axis=1)
    flags = np.stack([on[:, 0] for _, _, on, _ in trail], axis=1)
    patches = Patches(
        **{
            f.name: np.concatenate([getattr(held, f.name) for *_, held in trail], axis=-1)
            for f in fields(Patches)
        }
    )
    return states, flags, patches


def _between(states: Array, corner: Ints, thetas: Array) -> Array:
    """Linear interpolation from state `corner` (n,) to the next; at a jump, the state before."""
    here, there = states[:, corner], states[:, np.minimum(corner + 1, states.shape[1] - 1)]
    span = there[-1] - here[-1]
    share = np.where(span > 1e-4, (thetas - here[-1]) / np.where(span > 1e-4, span, 1.0), 0.0)
    guess = here + np.clip(share, 0.0, 1.0) * (there - here)
    guess[-1] = thetas
    return np.asarray(guess)


def _described(
    builds: Builds, state: Array, at: Picture, stands: Flags, tip: float
) -> EquilibriumPath:
    """Back to SI, case first."""
    count, points = state.shape[1], builds.points
    length, weight = builds.wheelbase, builds.weight
    blank = np.where(stands, 1.0, np.nan)
    turn = at.turn * blank
    centre = np.concatenate([builds.point, np.zeros((3, 1, count))], axis=1)
    position = state[:3, None] + at.origin - np.einsum("ijcb,jcb->icb", at.turn, centre)
    give = np.einsum("ikcb,icpb->kcpb", at.turn[:, :, :2], at.give)

    def per_wheel(values: Array) -> Array:  # (..., 2, p, B) to (..., 4, points, B)
        return values.reshape(*values.shape[:-3], 4, points // 2, count) * blank

    return EquilibriumPath(
        state[-1],
        tip,
        (position * length * blank).transpose(2, 1, 0),
        turn.transpose(3, 2, 0, 1),
        (per_wheel(give).mean(axis=-2) * length).transpose(2, 1, 0),
        (state[[6, 8]] * length * blank).T,
        (state[[7, 9]] * blank).T,
        (per_wheel(at.force[2]).sum(axis=1) * weight).T,
    )
