"""Balance of the whole truck on the tilted table, and its stiffness.

Virtual work: the load on each freedom is its twist times the wrench of everything it carries, less
what springs, bars and stops take. Equilibrium is zero load on every freedom. Derivatives are exact:
d(S_j . W) = (S_k x S_j) . W + S_j . dW for a freedom k that turns or shifts the freedom j.

Lengths over the wheelbase, forces over the weight: see `Builds`. Case by case, and compiled.

Source: virtual work, e.g. H. Goldstein, Classical Mechanics, chapter 1, with twists and wrenches of
R. Featherstone, Rigid Body Dynamics Algorithms (2008), chapter 2 (both from memory); the
derivatives are derived here from these.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from crossfall.statics.builds import Builds, Ints, row
from crossfall.statics.case import CASE, CORNER_GAPS, N
from crossfall.statics.differentials import (
    CLOSE,
    MOST_ROUNDS,
    by_turn,
    follow_turn,
    pull_apart,
    turn_on,
)
from crossfall.statics.kinematics import product, set_frames, set_gravity
from crossfall.statics.tyres import Patches, set_contact, set_discs, set_rates
from crossfall.truck.axle_law import BY_Q, BY_QQ, BY_QR, BY_R, BY_RR, LEFT, VALUE
from crossfall.truck.model import Array, Flags
from crossfall.truck.native import address, entry
from crossfall.truck.to_compile import BYTE, FLOAT, WHOLE, arrays, inner, outer
from crossfall.truck.vectors import crossed, dotted, unit_along

_MASS, _MOMENT, _RADIUS = row("mass"), row("moment"), row("radius")
_TYRE_RATE, _SPRING_RATE, _PRELOAD = row("tyre_rate"), row("spring_rate"), row("preload")
_STAGE_RATE, _STAGE_AT, _ANTI_ROLL = row("stage_rate"), row("stage_at"), row("anti_roll")
_BUMP, _DROOP, _STOP_RATE = row("bump"), row("droop"), row("stop_rate")
_SHAFT, _OPEN, _HELD, _TIED = row("shaft"), row("open"), row("held"), row("tied")
ON, GAP, PICTURE = 1, 2, 4  # what is asked: with frozen branches, with a gap's slopes, all of it
_BODIES = 6 + 27 + 9  # rows of the picture: CG, gravity, axes and places of the bodies


@dataclass(frozen=True)
class Balance:
    """Loads on the freedoms, with everything the continuation needs.

    load: (n, B). rates: (B, n + 1, n + 1) its derivatives by the unknowns and theta; the last row
    is that of a gap, or free. gaps: (g, B), positive where a tyre touches (2 p), a spring pushes
    (4), the bump stop is free (4), the droop stop is free (4), a soft spring is not bound (4), a
    tyre sticks (2 p). history: (8 p + 6, B) where the tyres hold the table, as `Patches.history`.
    """

    load: Array
    rates: Array
    gaps: Array
    history: Array

    @property
    def stiffness(self) -> Array:
        """(B, n, n), minus d load / d x."""
        return -self.rates[:, :-1, :-1]

    @property
    def slope(self) -> Array:
        """(B, n), d load / d theta."""
        return self.rates[:, :-1, -1]


@dataclass(frozen=True)
class Picture(Balance):
    """The same with where everything is.

    cg: (3, B) of the whole truck, from the chassis' origin, as all places are but `history`'s.
    gravity: (3, B), its direction.
    turn: (3, 3, 3, B), axes as columns, of front axle, rear axle and chassis, origin: (3, 3, B).
    point: (3, 2, p, B) lowest rim points, as if no tyre had given. give: (3, 2, p, B) how far they
    have. force: (3, 2, p, B) of the table on the tyres.
    """

    cg: Array
    gravity: Array
    turn: Array
    origin: Array
    point: Array
    give: Array
    force: Array


def balance(
    builds: Builds,
    heading: Array,
    x: Array,
    theta: Array,
    on: Flags | None,
    patches: Patches,
    gap: Ints | None = None,
) -> Balance:
    """Loads and stiffness at x (n, B), theta (B,), with the contacts and stops of `on` (g, B).

    `on` freezes which branch of every unilateral law is used, so that the result is smooth in x;
    but a tyre that does not stick may do either. Without it the gaps decide. gap: (B,) which gap's
    derivatives go into the last row of `rates`.

    heading, theta: (B,) rad. load_j = sum S_j . W - springs, stops and bars: all of it is 0 at
    rest. Shapes that do not fit raise ValueError.
    """
    load, rates, gaps, history, _ = _asked(builds, heading, x, theta, on, patches, gap, False)
    return Balance(load, rates, gaps, history)


def picture(
    builds: Builds, heading: Array, x: Array, theta: Array, on: Flags | None, patches: Patches
) -> Picture:
    """`balance`, and where everything is then. The same sums, the same errors."""
    load, rates, gaps, history, rows = _asked(builds, heading, x, theta, on, patches, None, True)
    count = len(builds)
    turn, origin = rows[6:33].reshape(3, 3, 3, count), rows[33:_BODIES].reshape(3, 3, count)
    point, give, force = rows[_BODIES:].reshape(3, 3, 2, -1, count)
    return Picture(
        load, rates, gaps, history, rows[:3], rows[3:6], turn, origin, point, give, force
    )


def standing_patches(builds: Builds, friction: Array) -> Patches:
    """Tyres set down on the level table at their ride-height pose, pulling nowhere.

    friction: whatever broadcasts to (2, p, B). Q = P, u = 0.
    """
    count = len(builds)
    friction = np.broadcast_to(friction, (2, builds.points, count)).copy()
    level, none = np.zeros(count), Patches(friction, np.zeros((8 * builds.points + 6, count)))
    at = picture(builds, level, np.zeros((N, count)), level, None, none)
    size = 4 * builds.points
    anchor, way = at.point[:2].reshape(size, count), np.zeros((size, count))
    return Patches(friction, np.concatenate([anchor, way, at.history[-6:]]))


def _asked(
    builds: Builds,
    heading: Array,
    x: Array,
    theta: Array,
    on: Flags | None,
    patches: Patches,
    gap: Ints | None,
    all_of_it: bool,
) -> tuple[Array, Array, Array, Array, Array]:
    count, p = len(builds), builds.points
    gaps = 4 * p + CORNER_GAPS
    rows = _BODIES + 18 * p if all_of_it else 0
    out = (
        np.empty((N, count)),
        np.empty((count, N + 1, N + 1)),
        np.empty((gaps, count)),
        np.empty((8 * p + 6, count)),
        np.empty((rows, count)),
    )
    given: list[Array | Flags | Ints] = [
        _fit(builds.table, FLOAT, len(builds.table), count),
        _fit(builds.law, FLOAT, 7, builds.terms, 2, count),
        _fit(patches.friction, FLOAT, 2, p, count),
        _fit(patches.history, FLOAT, 8 * p + 6, count),
        _fit(heading, FLOAT, count),
        _fit(x, FLOAT, N, count),
        _fit(theta, FLOAT, count),
        _NOTHING if on is None else _fit(on, np.bool_, gaps, count),
        _NOTHING if gap is None else _fit(gap, WHOLE, count),
    ]
    asked = ON * (on is not None) + GAP * (gap is not None) + PICTURE * all_of_it
    work = np.empty(1, CASE)
    pointers = [address(a) for a in (*given, *out, work)]
    entry(balances)(*pointers, count, p, builds.terms, len(builds.table), asked)
    return out


_NOTHING = np.zeros(1)


def _fit(values: Any, kind: Any, *shape: int) -> Any:
    """The values whole in memory. Raises ValueError where their shape is another."""
    found = np.ascontiguousarray(values, dtype=kind)
    if found.shape != shape:
        raise ValueError(f"shape {found.shape} where {shape} is needed")
    return found


# --- compiled ---------------------------------------------------------------------------------


@inner
def _rolling(builds: Any, history: Any, b: int, points: int, axle: int) -> tuple[float, float]:
    """How far a wheel rolls by a turn ahead, the way it went when last seen."""
    radius, ahead = builds[_RADIUS + axle, b], 8 * points + 2 + axle
    return radius * history[ahead, b], radius * history[ahead + 2, b]


@inner
def _tyres(
    case: Any,
    builds: Any,
    friction: Any,
    history: Any,
    on: Any,
    b: int,
    points: int,
    first: int,
    asked: int,
    axle: int,
    spin: float,
) -> None:
    """The contact of an axle's tyres; spin: rad that the left wheel has turned ahead besides, and
    the right one back. first: the row where parts by contact points begin."""
    size, arc = 2 * points, 8 * points
    rate, radius = builds[_TYRE_RATE + 4 + axle, b], builds[_RADIUS + axle, b]
    for j in range(points):
        at = axle * points + j
        past = (
            history[at, b],
            history[size + at, b],
            history[2 * size + at, b],
            history[3 * size + at, b],
            history[arc + axle, b],
            history[arc + 2 + axle, b],
            history[arc + 4 + axle, b],
        )
        touch = stick = -1
        if asked & ON:
            touch = 1 if on[at, b] else 0
            stick = 1 if on[size + CORNER_GAPS + at, b] else 0
        mass, load = builds[first + at, b], builds[first + 4 * size + at, b]
        tyre = (mass, load, rate, radius, friction[at, b])
        turned = spin if 2 * j < points else -spin
        set_contact(case, axle, j, tyre, turned, past, touch, stick)


@inner
def _shared(
    case: Any,
    builds: Any,
    friction: Any,
    history: Any,
    on: Any,
    b: int,
    points: int,
    first: int,
    asked: int,
    axle: int,
) -> None:
    """The same on an open differential."""
    x, y = _rolling(builds, history, b, points, axle)
    firm = builds[_RADIUS + axle, b] ** 2 * builds[_TYRE_RATE + axle, b] * points
    s, low, high, gain = 0.0, -math.inf, math.inf, 0.0
    for _ in range(MOST_ROUNDS):
        _tyres(case, builds, friction, history, on, b, points, first, asked, axle, s)
        miss, gain, touching = pull_apart(case, axle, points, x, y)
        if abs(miss) <= CLOSE or touching == 0.0:
            break
        s, low, high = turn_on(s, low, high, miss, gain, firm)
    if gain > 0.0:
        follow_turn(case, axle, points, x, y, gain)


@inner
def _wrenches(case: Any, builds: Any, b: int, points: int, first: int) -> None:
    """First moments of all weights, weight and contact forces on every body about the chassis'
    origin, and their derivatives by its twist and theta."""
    g, dg = case.gravity, case.d_gravity
    for body in range(3):
        mass, axes = builds[_MASS + body, b], case.body[body]
        moment, wrench, slopes = case.moment[body], case.wrench[body], case.slopes[body]
        m0, m1, m2 = (
            builds[_MOMENT + body, b],
            builds[_MOMENT + 3 + body, b],
            builds[_MOMENT + 6 + body, b],
        )
        for k in range(3):
            moment[k] = axes[0, k] * m0 + axes[1, k] * m1 + axes[2, k] * m2
            moment[k] += mass * case.origin[body, k]
        turned, moved, hanging = (moment[0], moment[1], moment[2]), mass, 0.0
        lost = 0.0
        if body < 2:  # a wheel that stands does not twist with it: its give undoes that
            for j in range(points):
                own = builds[first + body * points + j, b]
                down = own * case.touch[body, j]
                up = own - down
                lost += down
                hanging += up * own
                give, at = case.give[body, j], case.point[body, j]
                turned = (
                    turned[0] + up * give[0] - down * at[0],
                    turned[1] + up * give[1] - down * at[1],
                    turned[2] + up * give[2] - down * at[2],
                )
                for k in range(3):
                    moment[k] += own * give[k]
            moved -= lost
        weight, tilted = crossed(moment, g), crossed(moment, dg)
        for k in range(3):
            wrench[k], wrench[3 + k] = weight[k], mass * g[k]
            slopes[6, k], slopes[6, 3 + k] = tilted[k], mass * dg[k]
        for c in range(3):
            unit = unit_along(c)
            turn, shift = crossed(g, crossed(turned, unit)), crossed(g, unit)
            for k in range(3):
                slopes[c, k], slopes[3 + c, k] = turn[k], -moved * shift[k]
                slopes[c, 3 + k] = slopes[3 + c, 3 + k] = 0.0
        if body == 2:
            continue
        _pressed(case, body, points)
        for c in range(2):
            ahead, rolls = case.ahead[body], case.rolls[body, c] * lost
            more = crossed(g, (ahead[0] * rolls, ahead[1] * rolls, 0.0))
            for k in range(3):
                slopes[c, k] += more[k]
        if hanging > 0.0:
            soft = case.soft[body]
            for c in range(4):
                unit = unit_along(c)
                v = crossed(g, unit) if c < 3 else (dg[0], dg[1], dg[2])
                swing = crossed(g, (dotted(soft[0], v), dotted(soft[1], v), dotted(soft[2], v)))
                for k in range(3):
                    slopes[c if c < 3 else 6, k] -= hanging * swing[k]


@inner
def _pressed(case: Any, axle: int, points: int) -> None:
    """What the table's forces add to the wrench on an axle, and to its derivatives."""
    wrench, slopes = case.wrench[axle], case.slopes[axle]
    for j in range(points):
        if case.touch[axle, j] == 0.0:
            continue
        at, give, spring = case.point[axle, j], case.give[axle, j], case.spring[axle, j]
        arm, force = (at[0] + give[0], at[1] + give[1], at[2] + give[2]), case.force[axle, j]
        moment = crossed(arm, force)
        for k in range(3):
            wrench[k] += moment[k]
            wrench[3 + k] += force[k]
        for c in range(7):
            d, p = case.d_force[axle, j, c], case.d_point[axle, j, c]
            one, other = crossed(arm, d), crossed(spring, (p[0], p[1], 0.0))
            for k in range(3):
                slopes[c, k] += one[k] - other[k]
                slopes[c, 3 + k] += d[k]


@inner
def _freedoms(case: Any) -> None:
    """Load on the freedoms, and its derivatives."""
    load, rates, turning, moves = case.load, case.rates, case.turning, case.moves
    for r in range(N + 1):
        for c in range(N + 1):
            rates[r, c] = 0.0
    for k in range(N):
        load[k] = 0.0
    m0 = m1 = m2 = 0.0  # moment on all of it
    for body in range(3):
        wrench, slopes = case.wrench[body], case.slopes[body]
        m0, m1, m2 = m0 + wrench[0], m1 + wrench[1], m2 + wrench[2]
        force = (wrench[3], wrench[4], wrench[5])
        for k in range(3):
            unit = unit_along(k)
            more = crossed(force, unit)  # shifting it all shifts the chassis' origin
            load[k] += force[k]
            for i in range(6):
                moves[body, k, i] = slopes[3 + k, i] + (more[i] if i < 3 else 0.0)
                turned = slopes[0, i] * turning[k, 0] + slopes[1, i] * turning[k, 1]
                moves[body, 3 + k, i] = turned + slopes[2, i] * turning[k, 2]
        for i in range(6):
            moves[body, 8, i] = slopes[6, i]
            for h in range(2):
                own = 0.0
                if body < 2:
                    for c in range(6):
                        own += slopes[c, i] * case.joints[body, h, c]
                moves[body, 6 + h, i] = own
    total = (m0, m1, m2)
    for k in range(3):
        load[3 + k] = dotted(turning[k], total)
    for body in range(3):
        for m in range(9):
            move = moves[body, m]
            column = m if m < 6 else N if m == 8 else 2 * body + m
            if column > N or (body == 2 and 6 <= m < 8):
                continue
            for k in range(3):
                rates[k, column] += move[3 + k]
                rates[3 + k, column] += dotted(turning[k], move)
            if body < 2:
                for h in range(2):
                    rates[6 + 2 * body + h, column] = product(case.joints[body, h], move)

    # Freedoms that come before turn and shift those that come after.
    for k in range(2):
        for j in range(k + 1, 3):
            rates[3 + j, 3 + k] += dotted(turning[k], crossed(turning[j], total))
    for axle in range(2):
        wrench = case.wrench[axle]
        moment, force = (wrench[0], wrench[1], wrench[2]), (wrench[3], wrench[4], wrench[5])
        for h in range(2):
            row, joint = 6 + 2 * axle + h, case.joints[axle, h]
            load[row] = product(joint, wrench)
            one = crossed((joint[0], joint[1], joint[2]), moment)
            other = crossed((joint[3], joint[4], joint[5]), force)
            bent = (one[0] + other[0], one[1] + other[1], one[2] + other[2])
            for k in range(3):
                rates[row, 3 + k] += dotted(turning[k], bent)
            for by in range(2):
                bend = product(case.bends[axle, 2 * h + by], wrench)
                rates[row, 6 + 2 * axle + by] += bend


@inner
def _shafts(case: Any, builds: Any, history: Any, b: int, points: int, axle: int) -> None:
    """Wheels that turn by `builds.shaft` as their axle rolls: what that adds to loads and rates.

    A disc that turns rolls its patch ahead by R, which gives its tyre as much as shifting the axle
    back would, and takes the force along at R: by virtual work, and that is the shaft's torque.
    """
    shaft, (x, y) = builds[_SHAFT + axle, b], _rolling(builds, history, b, points, axle)
    load, rates, turning, roll = case.load, case.rates, case.turning, 7 + 2 * axle
    by = case.by
    for c in range(7):
        by[c] = 0.0
    turn, push, own = (0.0, 0.0, 0.0), (0.0, 0.0, 0.0), 0.0
    for j in range(points):
        if case.touch[axle, j] == 0.0:
            continue
        at, give, force = case.point[axle, j], case.give[axle, j], case.force[axle, j]
        more = by_turn(case, axle, j, x, y)
        forced = (more[0], more[1], more[2])
        one = crossed((at[0] + give[0], at[1] + give[1], at[2] + give[2]), forced)
        other = crossed((more[3], more[4], 0.0), case.spring[axle, j])
        turn = (
            turn[0] + one[0] + other[0],
            turn[1] + one[1] + other[1],
            turn[2] + one[2] + other[2],
        )
        push = (push[0] + forced[0], push[1] + forced[1], push[2] + forced[2])
        load[roll] -= shaft * (x * force[0] + y * force[1])
        own -= shaft**2 * (x * forced[0] + y * forced[1])
        for c in range(7):
            d = case.d_force[axle, j, c]
            by[c] -= shaft * (x * d[0] + y * d[1])
    rates[roll, roll] += own
    rates[roll, N] += by[6]
    for k in range(3):
        rates[roll, k] += by[3 + k]
        rates[roll, 3 + k] += dotted(turning[k], by)
        rates[k, roll] += shaft * push[k]
        rates[3 + k, roll] += shaft * dotted(turning[k], turn)
    for h in range(2):
        joint, to = case.joints[axle, h], roll - 1 + h
        rates[roll, to] += product(joint, by)
        turned = (joint[0], joint[1], joint[2])
        rates[to, roll] += shaft * dotted(turned, turn)
        shifted = (joint[3], joint[4], joint[5])
        rates[to, roll] += shaft * dotted(shifted, push)


@inner
def _springs(case: Any, builds: Any, gaps: Any, on: Any, b: int, first: int, asked: int) -> None:
    """Corner springs that only push, stops and anti-roll bars; fills in their gaps, from the row
    `first`."""
    load, rates = case.load, case.rates
    for axle in range(2):
        q = 6 + 2 * axle
        spring, stop = builds[_SPRING_RATE + axle, b], builds[_STOP_RATE + axle, b]
        stage, bar = builds[_STAGE_RATE + axle, b], builds[_ANTI_ROLL + axle, b]
        still = builds[_HELD + 2 * axle, b] != 0.0 and builds[_HELD + 2 * axle + 1, b] != 0.0
        load[q + 1] -= bar * case.x[q + 1]
        rates[q + 1, q + 1] -= bar
        for side in range(2):
            law, corner = case.law[axle, LEFT + side], 2 * axle + side
            travel = law[VALUE]
            known = (
                spring * travel + builds[_PRELOAD + corner, b],
                builds[_BUMP + axle, b] - travel,
                travel + builds[_DROOP + axle, b],
                builds[_STAGE_AT + corner, b] - travel,
            )
            force, rate = 0.0, 0.0
            for what in range(4):
                gap, at = known[what], first + 4 * what + corner
                free = on[at, b] != 0 if asked & ON else gap >= 0.0
                if what == 0:
                    if free:
                        force, rate = gap, spring
                elif not free:
                    own = stage if what == 3 else stop
                    rate += own
                    force += own * gap if what == 2 else -own * gap
                gaps[at, b] = 1.0 if still else gap
            load[q] -= force * law[BY_Q]
            load[q + 1] -= force * law[BY_R]
            rates[q, q] -= rate * law[BY_Q] * law[BY_Q] + force * law[BY_QQ]
            mixed = rate * law[BY_Q] * law[BY_R] + force * law[BY_QR]
            rates[q, q + 1] -= mixed
            rates[q + 1, q] -= mixed
            rates[q + 1, q + 1] -= rate * law[BY_R] * law[BY_R] + force * law[BY_RR]


@inner
def _constrain(case: Any, builds: Any, b: int) -> None:
    """Exact constraints: held joints stay at zero, tied axles heave equally."""
    load, rates, x, front, rear = case.load, case.rates, case.x, 6, 8
    if builds[_TIED, b] != 0.0:
        load[front] += load[rear]
        load[rear] = x[front] - x[rear]
        for c in range(N + 1):
            rates[front, c] += rates[rear, c]
            rates[rear, c] = 1.0 if c == front else -1.0 if c == rear else 0.0
    for joint in range(4):
        if builds[_HELD + joint, b] != 0.0:
            row = 6 + joint
            load[row] = -x[row]
            for c in range(N + 1):
                rates[row, c] = -1.0 if c == row else 0.0


@inner
def _gap_slopes(
    case: Any,
    builds: Any,
    friction: Any,
    history: Any,
    b: int,
    points: int,
    first: int,
    gap: int,
) -> None:
    """Derivatives of one gap, its row in `Balance.gaps`, into the last row of the rates.

    Chain rule through the twists: d gap / dx_j = S_j . (d gap / d twist).
    """
    out, by, corner = case.rates[N], case.by, gap - 2 * points
    for c in range(N + 1):
        out[c] = 0.0
    if 0 <= corner < CORNER_GAPS:
        what, axle, side = corner // 4, corner // 2 % 2, corner % 2
        law = case.law[axle, LEFT + side]
        rate = builds[_SPRING_RATE + axle, b] if what == 0 else 1.0 if what == 2 else -1.0
        out[6 + 2 * axle], out[7 + 2 * axle] = rate * law[BY_Q], rate * law[BY_R]
        return
    tyre = gap if corner < 0 else corner - CORNER_GAPS
    axle, j = tyre // points, tyre % points
    if corner < 0:  # how far it is pressed
        soft, at, hang = case.soft[axle, 2], case.point[axle, j], case.hang[axle, j]
        mass, rate = builds[first + tyre, b], builds[_TYRE_RATE + 4 + axle, b]
        rise = crossed(soft, case.gravity)
        by[0] = -rate * (mass * rise[0] + at[1] + hang[1])
        by[1] = -rate * (mass * rise[1] - at[0] - hang[0])
        by[2] = -rate * mass * rise[2]
        by[3] = by[4] = 0.0
        by[5] = -rate
        by[6] = -rate * mass * dotted(soft, case.d_gravity)
    elif case.touch[axle, j] != 0.0 and math.isfinite(friction[tyre, b]):  # its spare grip
        force, mu = case.force[axle, j], friction[tyre, b]
        size = max(math.hypot(force[0], force[1]), 1e-300)
        for c in range(7):
            d = case.d_force[axle, j, c]
            by[c] = mu * d[2] - (force[0] * d[0] + force[1] * d[1]) / size
    else:
        return
    out[N] = by[6]
    for k in range(3):
        out[k] = by[3 + k]
        out[3 + k] = dotted(case.turning[k], by)
    for h in range(2):
        out[6 + 2 * axle + h] = product(case.joints[axle, h], by)
    if corner >= 0:
        x, y = _rolling(builds, history, b, points, axle)
        out[7 + 2 * axle] -= builds[_SHAFT + axle, b] * (x * by[3] + y * by[4])


@inner
def _tell(case: Any, gaps: Any, history: Any, b: int, points: int) -> None:
    """What is known of the tyres: gaps, and where they hold the table."""
    size, arc = 2 * points, 8 * points
    for axle in range(2):
        history[arc + axle, b] = case.arc[axle]
        for k in range(2):
            history[arc + 2 + 2 * k + axle, b] = case.ahead[axle, k]
        for j in range(points):
            at = axle * points + j
            gaps[at, b] = case.gap[axle, j]
            gaps[size + CORNER_GAPS + at, b] = case.spare[axle, j]
            for k in range(2):
                place = case.x[k] + case.point[axle, j, k] + case.give[axle, j, k]
                history[k * size + at, b] = place
                history[(2 + k) * size + at, b] = case.way[axle, j, k]


@inner
def _draw(case: Any, out: Any, b: int, points: int) -> None:
    """The rows of `Picture`."""
    for k in range(3):
        out[k, b] = case.moment[0, k] + case.moment[1, k] + case.moment[2, k]
        out[3 + k, b] = case.gravity[k]
        for body in range(3):
            out[33 + 3 * k + body, b] = case.origin[body, k]
            for axis in range(3):
                out[6 + 9 * k + 3 * axis + body, b] = case.body[body, axis, k]
        for axle in range(2):
            for j in range(points):
                at = _BODIES + 2 * points * k + axle * points + j
                out[at, b] = case.point[axle, j, k]
                out[at + 6 * points, b] = case.give[axle, j, k]
                out[at + 12 * points, b] = case.force[axle, j, k]


@outer("p" * 15 + "i" * 5)
def balances(
    table: Any,
    of_laws: Any,
    frictions: Any,
    pasts: Any,
    headings: Any,
    xs: Any,
    thetas: Any,
    ons: Any,
    which: Any,
    loads: Any,
    slopes_to: Any,
    gaps_to: Any,
    histories: Any,
    rows: Any,
    work: Any,
    count: int,
    points: int,
    terms: int,
    size: int,
    asked: int,
) -> None:
    """`balance` and `picture`, from their arguments in that order into what they tell of; case by
    case. size: rows of the table."""
    builds, heading = arrays(table, (size, count), FLOAT), arrays(headings, (count,), FLOAT)
    friction = arrays(frictions, (2 * points, count), FLOAT)
    past = arrays(pasts, (8 * points + 6, count), FLOAT)
    x, theta = arrays(xs, (N, count), FLOAT), arrays(thetas, (count,), FLOAT)
    gap_count = 4 * points + CORNER_GAPS
    on = arrays(ons, (gap_count if asked & ON else 1, count if asked & ON else 1), BYTE)
    gap = arrays(which, (count if asked & GAP else 1,), WHOLE)
    load, rates = arrays(loads, (N, count), FLOAT), arrays(slopes_to, (count, N + 1, N + 1), FLOAT)
    gaps = arrays(gaps_to, (gap_count, count), FLOAT)
    history = arrays(histories, (8 * points + 6, count), FLOAT)
    drawn = arrays(rows, (_BODIES + 18 * points if asked & PICTURE else 0, count), FLOAT)
    case = arrays(work, (1,), CASE)[0]
    first = size - 14 * terms - 10 * points
    laws = arrays(of_laws, (7, terms, 2, count), FLOAT)
    for b in range(count):
        for k in range(N):
            case.x[k] = x[k, b]
        set_gravity(case, heading[b], theta[b])
        set_frames(case, builds, laws, b)
        for axle in range(2):
            set_discs(case, builds, b, axle, first + 2 * points, points)
            set_rates(case, builds, b, axle)
            railed = False
            for j in range(points):
                railed = railed or not math.isfinite(friction[axle * points + j, b])
            if builds[_OPEN + axle, b] != 0.0 and not railed:
                _shared(case, builds, friction, past, on, b, points, first, asked, axle)
            else:
                _tyres(case, builds, friction, past, on, b, points, first, asked, axle, 0.0)
        _wrenches(case, builds, b, points, first)
        _freedoms(case)
        for axle in range(2):
            if builds[_SHAFT + axle, b] != 0.0:
                _shafts(case, builds, past, b, points, axle)
        _springs(case, builds, gaps, on, b, 2 * points, asked)
        _constrain(case, builds, b)
        if asked & GAP:
            _gap_slopes(case, builds, friction, past, b, points, first, gap[b])
        _tell(case, gaps, history, b, points)
        for r in range(N):
            load[r, b] = case.load[r]
        for r in range(N + 1):
            for c in range(N + 1):
                rates[b, r, c] = case.rates[r, c]
        if asked & PICTURE:
            _draw(case, drawn, b, points)
