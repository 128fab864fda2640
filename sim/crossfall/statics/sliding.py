"""When the rigid truck slides on the tilted table, and whether it tips first.

Each tyre resists with at most mu N: in every direction if its wheel is held, only along its axle
if the wheel rolls freely (rolling resistance neglected). For given normal loads N the truck
starts to slide when the downhill pull equals the least power of friction over all motions in the
plane that take the CG downhill at unit speed,

    W sin(theta) = min over (tau, omega) of sum_i mu_i N_i |P_i v_i|                         (1)
    v_i = d + tau e + omega k x (r_i - c)                                                    (2)

(d downhill, e square to it, P_i keeps what the wheel resists). That is the limit theorem for dry
friction under fixed loads. Its minimum is exact: the forces that belong to the motion are in
balance with force and yaw moment and within the grip, so no friction is left unused and none
invented.

Normal loads: four tyres leave one load pattern undecided, along which each diagonal's pair gains
while the other loses. Three splits are offered, with no tyre pulling on the table:

    "elastic"   the truck rigid on its four tyres' vertical stiffnesses
    "least"     whichever split slides first
    "greatest"  whichever split holds longest

Where one mu holds everywhere and all wheels are held they agree: theta = atan(mu). Past the tip
angle the truck is imagined held upright, by a strap that takes none of its weight.

Shapes that do not broadcast raise numpy's ValueError; nothing else is refused.

Source: of (1) S. Goyal, A. Ruina and J. Papadopoulos, Wear 143 (1991) 307-330 (from memory); (2)
and the split of loads are derived here, where no other source stands below.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike

from crossfall.statics.rigid import downhill, tip_angle, tip_points
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck

Split = Literal["elastic", "least", "greatest"]
_Outcome = Literal["tips", "slides", "too close to call"]
Held = tuple[bool, bool, bool, bool]

HELD: Held = (True, True, True, True)
_SURE = 0.95  # probability from which an outcome is called
ROUNDING = 0.1 ** np.arange(8.0)  # |v| is rounded off to sqrt(v^2 + eps^2), less and less
_SETTLED = 1e-14  # power still to be won at which Newton's method stops
LOW, ELASTIC, HIGH = 0, 1, 2  # amounts of the load pattern, as `_split_at` gives them
KINKS = (((0, 3),), ((0, 4), (3, 4), (1, 4), (2, 4)), ((1, 2),))  # where those change their line


@dataclass(frozen=True)
class _Slide:
    """Start of sliding, one per heading.

    angle: (H,) rad. motion: (H, 3), velocity of the CG (x, y) in truck axes per unit of its
    speed downhill, and yaw rate, rad/m. swings: (H,) "front" or "rear" where that end goes at
    more than twice the speed of the other, "neither" where the truck goes as a whole.
    """

    angle: Array
    motion: Array
    swings: tuple[str, ...]


# The normal loads


def load_pattern(truck: Truck) -> Array:
    """(4,) the change of tyre loads that statics cannot see: no force, and no moment.

    With wheels straight ahead (b_r, -b_r, -b_f, b_f) / (b_f + b_r), b the tip lines of front and
    rear; in general each tyre's is the area of the triangle of the others, in turns + and -.

    Source: derived here: the null space of force and moment balance under four tyres (Cramer's
    rule).
    """
    ground = np.column_stack([np.ones(4), tip_points(truck)])
    areas = np.linalg.det(np.stack([np.delete(ground, i, axis=0) for i in range(4)]))
    areas *= (1.0, -1.0, 1.0, -1.0)
    pattern: Array = areas / (areas[0] - areas[2])
    return pattern


def load_shares(truck: Truck, headings: ArrayLike) -> tuple[Array, Array]:
    """(H, 4) and (H, 4): N / (W cos(theta)) = m0 + m1 tan(theta), the truck rigid on its tyres;
    headings (H,) rad.

    N = K G (G^T K G)^-1 (1, p), rows of G (1, x, y), K the tyre stiffnesses: the least-energy
    split of loads that balance gravity acting at p = c + h tan(theta) d. Negative where that
    would take a tyre that pulls.

    Source: derived here from the least elastic energy under balance (Menabrea's theorem, from
    memory).
    """
    body = whole(truck)
    d = np.atleast_2d(downhill(headings))
    ground = np.column_stack([np.ones(4), tip_points(truck)])
    stiffness = np.repeat([a.tyre.stiffness for a in truck.axles], 2)
    spread = stiffness[:, None] * ground @ np.linalg.inv(ground.T @ (stiffness[:, None] * ground))
    level = spread @ np.array([1.0, body.cg[0], body.cg[1]])
    slope: Array = body.cg[2] * d @ spread[:, 1:].T
    return np.tile(level, (len(d), 1)), slope


def _split_lines(truck: Truck, headings: Array) -> tuple[Array, Array]:
    """(H, 5) s0 and s1: the amounts s = s0 + s1 t of `load_pattern` that unload each tyre, and 0.

    Tyres 0 and 3 bound s from below, 1 and 2 from above; t = tan(theta).
    """
    pattern = load_pattern(truck)
    lines = (-m / pattern for m in load_shares(truck, headings))
    s0, s1 = (np.column_stack([s, np.zeros(len(s))]) for s in lines)
    return s0, s1


def _split_at(lines: tuple[Array, Array], t: Array) -> tuple[Array, Array, Array]:
    """Lowest, elastic and highest amount of the load pattern, (H, K) each, at t (H, K)."""
    s = lines[0][:, None] + lines[1][:, None] * t[..., None]
    low, high = np.maximum(s[..., 0], s[..., 3]), np.minimum(s[..., 1], s[..., 2])
    return low, np.clip(0.0, low, high), high


def _knots(lines: tuple[Array, Array], t_tip: Array, pair: tuple[int, int]) -> Array:
    """(H, K) tangents from level to tip between which the splits asked for are linear."""
    met = [k for split in sorted(set(pair)) for k in KINKS[split]]
    i, j = np.array(met).T
    with np.errstate(divide="ignore", invalid="ignore"):
        crossing = -(lines[0][:, i] - lines[0][:, j]) / (lines[1][:, i] - lines[1][:, j])
    inside = np.clip(np.nan_to_num(crossing), 0.0, t_tip[:, None])
    return np.sort(np.column_stack([np.zeros(len(t_tip)), inside, t_tip]), axis=1)


# The least power of friction


def _least_power(basis: Array, start: Array, pair: Array) -> tuple[Array, Array]:
    """Equation (1): the (P, 2) motion (tau, omega) of least power and that power, (P,).

    basis: (2, 2, P, 4), start: (2, P, 4): P_i v_i = start + basis (tau, omega), components first.
    pair: (2, P, 4), mu N / W cos(theta) for two sets of loads; the power is the greater of the
    two. Newton's method with |v| and the maximum rounded off, ever less.
    """
    z = np.zeros((2, start.shape[1]))
    for eps in ROUNDING:
        for _ in range(20):
            power, gradient, hessian = _rounded_power(basis, start, pair, z, eps)
            step = _newton_step(gradient, hessian)
            if np.max(np.sum(-gradient * step, axis=0)) < _SETTLED:
                break
            size = np.ones(len(power))
            for _ in range(12):  # halve the steps that go up
                worse = _power(basis, start, pair, z + size * step, eps) > power + _SETTLED
                if not worse.any():
                    break
                size[worse] /= 2
            z = z + np.where(worse, 0.0, size) * step
    return z, np.sum(pair * _speed(basis, start, z, 0.0), axis=-1).max(axis=0)


def _speed(basis: Array, start: Array, z: Array, eps: float) -> Array:
    """(P, 4) |P_i v_i|, rounded off at zero to eps."""
    v = start + basis[0] * z[0][:, None] + basis[1] * z[1][:, None]
    speed: Array = np.sqrt(v[0] ** 2 + v[1] ** 2 + eps**2)
    return speed


def _power(basis: Array, start: Array, pair: Array, z: Array, eps: float) -> Array:
    """(P,) the greater power of the two sets of loads, rounded off."""
    a, b = np.sum(pair * _speed(basis, start, z, eps), axis=-1)
    greater: Array = (a + b + np.sqrt((a - b) ** 2 + eps**2)) / 2
    return greater


def _rounded_power(
    basis: Array, start: Array, pair: Array, z: Array, eps: float
) -> tuple[Array, Array, Array]:
    """Rounded power (P,), its gradient (2, P) and Hessian (3, P): 00, 01, 11."""
    v = start + basis[0] * z[0][:, None] + basis[1] * z[1][:, None]
    q = np.sqrt(v[0] ** 2 + v[1] ** 2 + eps**2)
    pull = (basis[:, 0] * v[0] + basis[:, 1] * v[1]) / q  # (2, P, 4) slope of q
    a, b = np.sum(pair * q, axis=-1)
    root = np.sqrt((a - b) ** 2 + eps**2)
    lean = ((a - b) / root)[:, None]
    weight = ((1 + lean) * pair[0] + (1 - lean) * pair[1]) / 2
    apart = np.sum((pair[0] - pair[1]) * pull, axis=-1)
    bend = eps**2 / (2 * root**3)
    gradient = np.sum(weight * pull, axis=-1)
    hessian = np.stack(
        [
            np.sum(weight / q * (np.sum(basis[i] * basis[j], axis=0) - pull[i] * pull[j]), axis=-1)
            + bend * apart[i] * apart[j]
            for i, j in ((0, 0), (0, 1), (1, 1))
        ]
    )
    return (a + b + root) / 2, gradient, hessian


def _newton_step(gradient: Array, hessian: Array) -> Array:
    """(2, P) -H^-1 g, with a little of H's size on its diagonal where a motion costs nothing."""
    h00, h01, h11 = hessian
    damping = 1e-10 * (h00 + h11) + 1e-14
    h00, h11 = h00 + damping, h11 + damping
    g0, g1 = gradient
    step: Array = -np.stack([h11 * g0 - h01 * g1, h00 * g1 - h01 * g0]) / (h00 * h11 - h01**2)
    return step


def _motions(truck: Truck, headings: Array, held: Held) -> tuple[Array, Array]:
    """Equation (2): basis (2, 2, H, 4) and start (2, H, 4), with omega times the wheelbase."""
    dx, dy = downhill(headings).T[..., None]
    ax, ay = (tip_points(truck) - whole(truck).cg[:2]).T / truck.wheelbase
    rolls = np.asarray(held, dtype=np.float64)  # a free wheel resists only along its axle, y
    every = np.ones((len(dx), 4))
    across = np.stack([-dy * every * rolls, dx * every])
    turn = np.stack([-ay * every * rolls, ax * every])
    return np.stack([across, turn]), np.stack([dx * every * rolls, dy * every])


# The slide angle


def slide(
    truck: Truck,
    headings: ArrayLike,
    grip: ArrayLike,
    held: Held = HELD,
    split: Split = "elastic",
) -> _Slide:
    """Where sliding starts: the least theta at which (1) fails, per heading (H,) rad.

    Solves power / (W cos(theta)) = tan(theta). grip: mu of all tyres, or (4,). held: whether each
    wheel is kept from turning. Between load patterns that change hands, the balance of (1) is
    concave in tan(theta), so that the first crossing is found by Newton's method from the far end
    without fail. With all wheels held and one mu the friction of each tyre, straight uphill and in
    the ratio tan(theta) to its load, balances all at once: atan(mu) for every split.
    """
    psi = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    mu = np.broadcast_to(np.asarray(grip, dtype=np.float64), (4,))
    if all(held) and np.all(mu == mu[0]):
        motion = np.column_stack([downhill(psi), np.zeros(len(psi))])
        return _Slide(np.full(len(psi), np.arctan(mu[0])), motion, ("neither",) * len(psi))
    if split == "least":
        ends = [_slide(truck, psi, mu, held, pair) for pair in ((LOW, LOW), (HIGH, HIGH))]
        first = ends[0][0] <= ends[1][0]
        t = np.where(first, ends[0][0], ends[1][0])
        z = np.where(first, ends[0][1], ends[1][1])
    else:
        t, z = _slide(truck, psi, mu, held, (ELASTIC,) * 2 if split == "elastic" else (LOW, HIGH))
    dx, dy = downhill(psi).T
    motion = np.column_stack([dx - z[0] * dy, dy + z[0] * dx, z[1] / truck.wheelbase])
    return _Slide(np.arctan(t), motion, tuple(_swing(truck, m) for m in motion))


def _slide(
    truck: Truck, psi: Array, mu: Array, held: Held, pair: tuple[int, int]
) -> tuple[Array, Array]:
    """tan(theta) (H,) and motion (2, H) at the first slide, for two splits of `_split_at`."""
    m0, m1 = load_shares(truck, psi)
    lines = _split_lines(truck, psi)
    knots = _knots(lines, np.tan(tip_angle(truck, psi)), pair)
    splits = _split_at(lines, knots)
    elastic = m0[:, None] + m1[:, None] * knots[..., None]
    loads = [elastic + load_pattern(truck) * splits[k][..., None] for k in pair]
    weights = mu * np.maximum(np.stack(loads), 0.0)  # (2, H, K, 4)

    basis, start = _motions(truck, psi, held)
    count, each = knots.shape
    _, power = _least_power(
        np.repeat(basis, each, axis=2), np.repeat(start, each, axis=1), weights.reshape(2, -1, 4)
    )
    fails = power.reshape(count, each) < knots - 1e-12
    last = np.where(fails.any(axis=1), fails.argmax(axis=1), each - 1)
    row = np.arange(count)
    before = np.maximum(last - 1, 0)
    run = np.maximum(knots[row, last] - knots[row, before], 1e-300)[:, None]
    slope = (weights[:, row, last] - weights[:, row, before]) / run
    # A truck that holds up to the tip is taken on with the loads it has there.
    slope[:, ~fails.any(axis=1)] = 0.0
    return _first_crossing(basis, start, weights[:, row, last], slope, knots[row, last])


def _first_crossing(
    basis: Array, start: Array, weights: Array, slope: Array, knot: Array
) -> tuple[Array, Array]:
    """tan(theta) (H,) where power = tan(theta), with weights + slope (t - knot); motion (2, H)."""
    t = knot.copy()
    for _ in range(30):
        pair = weights + slope * (t - knot)[:, None]
        z, power = _least_power(basis, start, pair)
        speed = _speed(basis, start, z, 0.0)
        gap = np.sum((pair[0] - pair[1]) * speed, axis=-1)
        lean = gap / np.sqrt(gap**2 + ROUNDING[-1] ** 2)  # how much of each set of loads counts
        rise = np.sum(((1 + lean)[:, None] * slope[0] + (1 - lean)[:, None] * slope[1]) * speed, -1)
        step = (power - t) / (1.0 - rise / 2)
        t = t + step
        if np.max(np.abs(step)) < 1e-9:
            break
    return t, z


def _swing(truck: Truck, motion: Array) -> str:
    """Which end goes at more than twice the speed of the other, if one does."""
    x = np.array([a.x for a in truck.axles]) - whole(truck).cg[0]
    cg_y = whole(truck).cg[1]
    speed = np.hypot(motion[0] + motion[2] * cg_y, motion[1] + motion[2] * x)
    if speed[0] > 2 * speed[1]:
        return "front"
    return "rear" if speed[1] > 2 * speed[0] else "neither"


def slide_range(
    truck: Truck,
    headings: ArrayLike,
    grip: Grip | tuple[Grip, Grip],
    held: Held = HELD,
) -> Array:
    """(H, 3) rad: low, likely and high slide angle for a range of grip; headings (H,) rad.

    grip: one for all tyres, or front and rear. Low is the least split of loads at the lowest
    grip, likely the elastic split at the likely, high the greatest at the highest.

    Source: `slide`, at three grips; that a surface's grip is a range is common practice, no source.
    """
    front, rear = grip if isinstance(grip, tuple) else (grip, grip)
    ends: tuple[tuple[Split, float, float], ...] = (
        ("least", front.low, rear.low),
        ("elastic", front.likely, rear.likely),
        ("greatest", front.high, rear.high),
    )
    angles = [slide(truck, headings, (f, f, r, r), held, split).angle for split, f, r in ends]
    return np.column_stack(angles)


# Tips or slides


def triangular_quantile(unit: ArrayLike, grip: Grip) -> Array:
    """Friction coefficients of a triangular distribution over a grip's range, at unit quantiles.

    unit: (any shape) 0 to 1, the answer alike: low + sqrt(u (high - low) (likely - low)) below the
    peak, high - sqrt((1 - u) (high - low) (high - likely)) above; likely where high = low.

    Source: S. Kotz and J. R. van Dorp, Beyond Beta (2004), chapter 1 (from memory).
    """
    share = np.asarray(unit, dtype=np.float64)
    low, top, high = grip.low, grip.likely, grip.high
    if high <= low:
        return np.full(share.shape, top)
    rising = low + np.sqrt(share * (high - low) * (top - low))
    falling = high - np.sqrt((1 - share) * (high - low) * (high - top))
    return np.where(share < (top - low) / (high - low), rising, falling)


def triangular_cdf(value: ArrayLike, low: ArrayLike, likely: ArrayLike, high: ArrayLike) -> Array:
    """Probability that a triangular variable is below `value`; a point where low = high.

    All of one shape, or what broadcasts to it: (x - a)^2 / ((b - a) (m - a)) below the peak m,
    1 - (b - x)^2 / ((b - a) (b - m)) above.

    Source: S. Kotz and J. R. van Dorp, Beyond Beta (2004), chapter 1 (from memory).
    """
    x, a, m, b = (np.asarray(v, dtype=np.float64) for v in (value, low, likely, high))
    with np.errstate(divide="ignore", invalid="ignore"):
        rising = (x - a) ** 2 / ((b - a) * (m - a))
        falling = 1 - (b - x) ** 2 / ((b - a) * (b - m))
    inside: Array = np.where(x < m, rising, falling)
    return np.where(x <= a, 0.0, np.where(x >= b, 1.0, inside))


def tips_first(slides: ArrayLike, tip: ArrayLike, uncertainty: ArrayLike = 0.0) -> Array:
    """(H,) probability that it tips before it slides.

    slides: (H, 3) rad from `slide_range`; tan(slide angle) is read as triangular, which is grip
    read as triangular where theta = atan(mu). tip: (H,) rad, anywhere in tip +- uncertainty (rad)
    alike, by 201 points.

    Source: derived here: the mean of the chance that tan(slide) is above tan(tip).
    """
    low, likely, high = np.tan(np.atleast_2d(np.asarray(slides, dtype=np.float64))).T
    spread = np.linspace(-1.0, 1.0, 201)[:, None] * np.atleast_1d(uncertainty)
    tips = np.tan(np.atleast_1d(np.asarray(tip, dtype=np.float64)) + spread)
    slides_first: Array = triangular_cdf(tips, low, likely, high).mean(axis=0)
    return 1.0 - slides_first


def outcome(probability_tips: float) -> _Outcome:
    """What to call it: tips or slides where one is at least 0.95 likely, else too close to call.

    Source: common practice, no source, for the 0.95.
    """
    if probability_tips >= _SURE:
        return "tips"
    return "slides" if probability_tips <= 1 - _SURE else "too close to call"
