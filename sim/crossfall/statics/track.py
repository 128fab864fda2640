"""Where the cases of a batch have got to on their way, and the numerical settings of it.

Source: derived here; interpolation between points is cubic Hermite, as in any text on numerical
analysis.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Ints, pick
from crossfall.statics.case import FREEDOMS
from crossfall.statics.newton import Cases, Corrected, solve
from crossfall.statics.tyres import Patches
from crossfall.truck.model import Array, Flags

GOING, FOLD, CORNER, STANDS, UNRESOLVED = range(5)


@dataclass(frozen=True)
class _Settings:
    """Numerical settings of the continuation; lengths over the wheelbase, angles in rad.

    step: first arc length, about 5 deg of tilt. largest_step: keeps a gap from opening and closing
    unseen within one step. looks: after which arc length it is noted where tyres that slip have
    got to, whatever the steps, so that the answer is a smooth function of the truck. round_bends:
    of the way there, the first step where that cannot be had at once. trust: how far to go by
    earlier points, over the distance to them. overshoot: how far beyond where the path seems to
    turn back a step may go. bracket: arc length within which a fold is then found. fine: below
    this the branches are free during a step. smallest_step: a case that gets no further than this
    is lost there. together: gaps within this of zero at an event switch together: a symmetric truck
    lifts two wheels at once. top: how far theta may be below a fold's. away: how far all tyres have
    gone over the table when open differentials hold a truck no more. rounds: of steps and events.
    creeps: steps with the branches free, after which a case is lost: two thousand drawn ones took
    fifty at most, and what takes more on tyres as hard as iron takes them without end.
    """

    step: float = 0.1
    largest_step: float = 0.2
    looks: float = 0.0175
    round_bends: float = 0.7
    trust: float = 3.0
    overshoot: float = 1.3
    bracket: float = 0.02
    fine: float = 5e-4
    smallest_step: float = 1e-8
    together: float = 1e-8
    top: float = 1e-11
    away: float = 0.06
    rounds: int = 400
    creeps: int = 150


SETTINGS = _Settings()
THETA = np.eye(len(FREEDOMS) + 1)[-1]
PAST = 3  # points remembered


@dataclass
class Track:
    """Where each of B cases has got to, updated in place.

    state: (n + 1, B). on: (g, B) branches in use. tangent: (n + 1, B). step: (B,).
    opened, closed: (g, B) rad, table angle at which each gap first did, nan before. outcome: (B,).
    other: (n + 1, B) far end of the bracket where a fold was passed, back: the tangent there; at a
    corner other is the unit direction in which the lost path goes on. switched: (g, B) gaps that
    switched at the last event. gaps: (g, B) at the state. normal:
    (n + 1, B) and level: (B,) of the plane across the path where it is noted next how far tyres
    have slipped, level inf where none does. past: (PAST, n + 1, B) the last points of the smooth
    path, latest first, nan where there are none. home: (2, 2, p, B) where tyres held the table at
    first. away: (B,) whether a truck on open differentials went from there. crept: (B,) steps with
    the branches free. trail: (who, state, on,
    patches) of every point met, in order, with the branches and patches used after it; None where
    it is not wanted.
    """

    state: Array
    on: Flags
    tangent: Array
    step: Array
    opened: Array
    closed: Array
    outcome: Ints
    other: Array
    back: Array
    switched: Flags
    gaps: Array
    normal: Array
    level: Array
    past: Array
    home: Array
    away: Flags
    crept: Ints
    trail: list[tuple[Ints, Array, Flags, Patches]] | None = None

    def mark(self, who: Ints, cases: Cases) -> None:
        """Add the present points of the cases `who` to the trail."""
        if self.trail is not None and len(who):
            held = cases.patches.take(who)
            self.trail.append((who, self.state[:, who], self.on[:, who], held))

    def move(self, who: Ints, to: Corrected, chosen: Ints) -> None:
        """Go on to the points to[chosen] of the same smooth path."""
        self.past[1:, :, who] = self.past[:-1, :, who]
        self.past[0][:, who] = self.state[:, who]
        self.state[:, who], self.tangent[:, who] = pick(to.state, chosen), pick(to.tangent, chosen)
        self.gaps[:, who] = pick(to.gaps, chosen)

    def remember(self, cases: Cases, who: Ints, seen: Corrected, chosen: Ints) -> None:
        """Note where the tyres of the cases `who` hold, seen[chosen], and which of them stick."""
        cases.patches.history[:, who] = pick(seen.history, chosen)
        way = cases.patches.way[..., who]
        self.on[-cases.tyres() :, who] = (way == 0).all(axis=0).reshape(cases.tyres(), -1)
        self.look_from(cases, who)

    def look_from(self, cases: Cases, who: Ints) -> None:
        """Look again one step of SETTINGS.looks after the present points, where tyres slip."""
        state, tangent = pick(self.state, who), pick(self.tangent, who)
        slips = ~self.on[-cases.tyres() :, who].all(axis=0)
        self.normal[:, who] = tangent
        level = (tangent * state).sum(axis=0) + SETTINGS.looks
        self.level[who] = np.where(slips, level, np.inf)

    def shorten(self, who: Ints) -> None:
        """Shorten the step; a case that cannot take even the smallest has come to its end."""
        self.step[who] *= 0.35
        stuck = who[self.step[who] < SETTINGS.smallest_step]
        self.outcome[stuck], self.switched[:, stuck] = CORNER, False
        self.other[:, stuck] = self.tangent[:, stuck]

    def turn_back(self, who: Ints, beyond: Corrected, chosen: Flags, length: Array) -> None:
        """The path has turned back by beyond[chosen], length (B,) from the state: a fold, if that
        is near enough; or else a shorter step."""
        if not len(who):
            return
        end, back = beyond.state[:, chosen], beyond.tangent[:, chosen]
        close = length <= SETTINGS.bracket
        fold, more = who[close], who[~close]
        self.outcome[fold] = FOLD
        self.other[:, fold], self.back[:, fold] = end[:, close], back[:, close]
        rise, fall = self.tangent[-1, more], back[-1, ~close]
        self.step[more] = 0.9 * length[~close] * rise / (rise - fall)

    def roll_away(self, cases: Cases, who: Ints) -> None:
        """Those of `who` all of whose tyres have gone far over the table have lost their hold."""
        gone = np.hypot(*(cases.patches.anchor[..., who] - self.home[..., who]))
        off = ~self.on[: cases.tyres(), who]
        far = who[np.where(off, np.inf, gone.reshape(off.shape)).min(axis=0) > SETTINGS.away]
        self.outcome[far], self.away[far] = CORNER, True

    def note(self, who: Ints, was: Flags, now: Flags) -> None:
        """Note when gaps first opened or closed, at the present state."""
        for times, changed in ((self.opened, was & ~now), (self.closed, ~was & now)):
            old = times[:, who]
            times[:, who] = np.where(changed & np.isnan(old), self.state[-1, who], old)

    def set_out(self, cases: Cases, who: Ints, several: Flags) -> None:
        """Tangent towards larger theta with the present branches; a corner where that is unstable.
        Tyres that slip from here on have their ways noted.

        `several` marks cases where more than one gap switched: there two signs may have changed at
        once, which the determinant does not show, so the eigenvalues are looked at.
        """
        part = cases.take(who)
        at = part.balance(pick(self.state, who), pick(self.on, who))
        self.gaps[:, who], self.past[:, :, who] = at.gaps, np.nan
        cases.patches.way[..., who] = Patches(part.patches.friction, at.history).way
        stiffness = at.stiffness
        lost = np.linalg.slogdet(stiffness)[0] <= 0
        if several.any():
            values = np.linalg.eigvals(stiffness[several])
            lost[several] |= ((values.real < 0) & (np.abs(values.imag) < 1e-12)).any(axis=1)
        rate = solve(stiffness, at.slope[:, :, None])[:, :, 0].T
        tangent = np.concatenate([rate, np.ones((1, len(who)))]) * np.where(lost, -1.0, 1.0)
        tangent /= np.sqrt((tangent**2).sum(axis=0))
        self.tangent[:, who] = tangent
        self.look_from(cases, who)
        self.outcome[who[lost]] = CORNER
        self.other[:, who[lost]] = tangent[:, lost]


def between(a: Array, b: Array, leave: Array, arrive: Array, share: Array) -> Array:
    """Cubic from points a to b (n, B), with unit tangents there, (n, B), at a share (B,) of the
    way.

    a + u^2 (3 - 2u) (b - a) + u v |b - a| (v t_a - u t_b), v = 1 - u. The chord stands for the arc.
    """
    way = b - a
    length = np.sqrt((way**2).sum(axis=0))
    u, v = share, 1.0 - share
    return np.asarray(
        a + u * u * (3.0 - 2.0 * u) * way + (u * v * length) * (v * leave - u * arrive)
    )
