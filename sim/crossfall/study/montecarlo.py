"""How sure are we: tolerances, placement and grip carried through to the answer, with intervals.

Every row of the parts list is off in mass and place by errors of its own (as in `truck.weight`:
normal, all its pieces alike, mirrored pieces mirrored), every other uncertain number of the truck
within its tolerance (`truck.uncertain`), and grip is triangular between low and high. Whole trucks
are drawn and answered; `answers.ranges` gives the same ranges from far fewer. The answers are the
tip angle, against a rail where it slides first, and the angle at which the truck goes, by tipping
or by sliding, whichever comes first. Which input matters most is said by variance-based (Sobol')
indices, by groups of inputs: Saltelli et al., Computer Physics Communications 181 (2010) 259-270.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.answers.conditions import Hold, choose_grip
from crossfall.answers.tips import tip_angles, tip_pairs
from crossfall.statics import rigid
from crossfall.statics.sliding import triangular_quantile
from crossfall.study.methods import MOST_OFF
from crossfall.truck.assemble import with_masses, with_shifts
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck
from crossfall.truck.uncertain import quantile, sd, varied

Method = Literal["closed form", "compliant"]
SAMPLES: dict[Method, int] = {"closed form": 1024, "compliant": 128}
"""Of Monte Carlo and per group of the indices; powers of two. Compliant ones cost a thousand times
as much; what so few leave open is said with every number."""
GROUPS = 10  # inputs named one by one; the others count together
RESAMPLES = 200  # of the bootstrap behind the intervals of the indices
LEVEL = 0.95

Indices = NDArray[np.intp]


@dataclass(frozen=True)
class Spread:
    """An answer with its uncertainty; rad. low, high: 95 % of trucks built to these tolerances.

    The three errors say how well the samples pin down mean, low and high (95 %, half width).
    """

    mean: float
    sd: float
    low: float
    high: float
    mean_error: float
    low_error: float
    high_error: float


@dataclass(frozen=True)
class Influence:
    """How much of an answer's variance one input explains, alone and with all it interacts with.

    first, total: indices; their intervals are 95 % by bootstrap.
    """

    name: str
    first: float
    first_ci: tuple[float, float]
    total: float
    total_ci: tuple[float, float]


@dataclass(frozen=True)
class HeadingSpread:
    """One heading (rad). centre: the tip of the truck as its file has it, at the likely grip, which
    is the one answer's. goes: tips or slides, whichever first, or None against a rail.

    tips_first: probability, with its 95 % interval (Wilson). by_tip, by_goes: the inputs that
    matter, the strongest first.
    """

    heading: float
    centre: float
    tip: Spread
    goes: Spread | None
    tips_first: float
    tips_first_ci: tuple[float, float]
    by_tip: tuple[Influence, ...]
    by_goes: tuple[Influence, ...]


@dataclass(frozen=True)
class Errors:
    """A truck's uncertain inputs. rows: (R,) part rows; sd: (R, 4) of mass (kg) and place (m).

    names: what each row is called.
    """

    rows: Indices
    sd: Array
    names: tuple[str, ...]


def spread(
    truck: Truck,
    headings: ArrayLike,
    *,
    surface: str | None = None,
    hold: Hold = "brakes",
    method: Method = "compliant",
    samples: int | None = None,
    seed: int = 0,
) -> tuple[HeadingSpread, ...]:
    """The spread of the answers on every heading (H,) rad, and which inputs are behind it.

    surface: whose grip counts; the first if unsaid. method: "closed form" draws what moves the CG,
    and grip, only. samples: a power of two, SAMPLES if unsaid. ValueError where samples is no power
    of two or no input is uncertain; InputError for a surface the truck has not.
    """
    samples = SAMPLES[method] if samples is None else samples
    if samples < 16 or samples & (samples - 1):
        raise ValueError(f"samples is {samples}; it must be a power of two from 16")
    psi = np.atleast_1d(np.asarray(headings, np.float64))
    grip = choose_grip(truck, surface)
    errors = uncertain_inputs(truck)
    answer = _answerer(truck, errors, psi, grip, method, hold)
    groups = input_groups(truck, errors, psi, grip, method)
    if not groups:
        raise ValueError("nothing is uncertain: no number has a tolerance and grip has no range")
    names, members = [g[0] for g in groups], [g[1] for g in groups]
    a, b = _draws(4 * len(errors.rows) + len(truck.uncertain) + 1, samples, seed)
    sets = [a, b]
    for columns in members:
        mixed = a.copy()
        mixed[:, columns] = b[:, columns]
        sets.append(mixed)
    f_a, f_b, *swapped = np.split(answer(np.concatenate(sets)), len(sets), axis=1)
    influences = sobol(names, f_a, f_b, np.array(swapped), samples, seed)
    both = np.concatenate([f_a, f_b], axis=1)
    h = len(psi)
    if method == "compliant":
        centre = tip_angles(truck, psi, grip.likely, hold).free
    else:
        centre = rigid.tip_angle(truck, psi)
    return tuple(
        _heading(
            psi[i],
            float(centre[i]),
            both[i],
            None if hold == "rail" else both[h + i],
            influences[i],
            influences[h + i],
        )
        for i in range(h)
    )


def uncertain_inputs(truck: Truck) -> Errors:
    """Rows with a tolerance, in file order."""
    first = {p.row: p for p in reversed(truck.parts)}
    pieces = {r: sum(p.row == r for p in truck.parts) for r in first}
    rows = [r for r in sorted(first) if first[r].mass_sd or first[r].place_sd]
    sd = np.array([[first[r].mass_sd, *(first[r].place_sd,) * 3] for r in rows]).reshape(-1, 4)
    names = [first[r].label if pieces[r] == 1 else first[r].label.rsplit(" ", 1)[0] for r in rows]
    return Errors(np.array(rows, np.intp), sd, tuple(names))


def cg_samples(truck: Truck, errors: Errors, off: Array) -> tuple[Array, Array]:
    """(n,) kg and (n, 3) m: mass and CG of the truck with rows off by (n, R, 4) kg and m.

    Exact: a row's moment is the sum over its pieces of (m + dm)(p + dp), dp mirrored with them.
    """
    body = whole(truck)
    count, place, side = (np.zeros((len(errors.rows), k)) for k in (1, 3, 3))
    mass = np.zeros(len(errors.rows))
    for i, row in enumerate(errors.rows):
        for p in (p for p in truck.parts if p.row == row):
            count[i] += 1
            place[i] += p.body.cg
            side[i] += (1.0, -1.0 if p.mirrored else 1.0, 1.0)
            mass[i] = p.body.mass
    dm, dp = off[:, :, 0], off[:, :, 1:]
    total = body.mass + dm @ count[:, 0]
    moment = body.mass * body.cg + dm @ place
    moment = moment + np.einsum("nr,nrk,rk->nk", mass + dm, dp, side)
    return total, moment / total[:, None]


def input_groups(
    truck: Truck, errors: Errors, headings: Array, grip: Grip, method: Method
) -> list[tuple[str, Indices]]:
    """(name, columns) of the inputs worth naming, the rest as one, and grip last.

    Ranked by the linear share of the tip angle's variance, over all headings.
    """
    shares = _part_shares(truck, errors, headings)
    if method == "compliant":
        shares += _number_shares(truck, headings, grip, 4 * len(errors.rows))
    shares.sort(key=lambda s: -s[0])
    groups: list[tuple[str, Indices]] = [(name, columns) for _, name, columns in shares[:GROUPS]]
    if rest := [columns for _, _, columns in shares[GROUPS:]]:
        groups.append((f"{len(rest)} others", np.concatenate(rest)))
    if grip.high > grip.low:
        last = 4 * len(errors.rows) + len(truck.uncertain)
        groups.append((f"grip on {grip.surface}", np.array([last], np.intp)))
    return groups


def _part_shares(truck: Truck, errors: Errors, headings: Array) -> list[tuple[float, str, Indices]]:
    """(variance, name, columns) of every row's mass and place, by the rigid derivatives."""
    mean_mass = whole(truck).mass
    lever = np.zeros((len(errors.rows), 4))
    for heading in headings:
        gradient = rigid.cg_gradient(truck, float(heading))
        for i, row in enumerate(errors.rows):
            pieces = [p for p in truck.parts if p.row == row]
            by_mass = sum(rigid.mass_derivative(truck, heading, p.body.cg) for p in pieces)
            side = sum(np.array([1, -1 if p.mirrored else 1, 1]) for p in pieces)
            by_place = pieces[0].body.mass / mean_mass * gradient * side
            lever[i] += np.square(np.array([float(by_mass), *by_place]) * errors.sd[i])
    return [
        (float(lever[i, k].sum()), f"{name}, {what}", 4 * i + np.array(k, np.intp))
        for i, name in enumerate(errors.names)
        for what, k in (("mass", [0]), ("place", [1, 2, 3]))
        if errors.sd[i, k].any()
    ]


def _number_shares(
    truck: Truck, headings: Array, grip: Grip, first: int
) -> list[tuple[float, str, Indices]]:
    """The same of every uncertain number, by a difference of one standard uncertainty each way."""
    inputs = truck.uncertain
    if not inputs:
        return []
    steps = [
        (i, one.likely + way * min(sd(one), one.high - one.likely))
        for i, one in enumerate(inputs)
        for way in (-1.0, 1.0)
    ]
    builds = [varied(truck, {i: max(value, inputs[i].low)}) for i, value in steps]
    tip = tip_angles(builds, headings, grip.likely).free
    apart = np.nan_to_num((tip[1::2] - tip[::2]) / 2)
    return [
        (float((apart[i] ** 2).sum()), one.name, np.array([first + i], np.intp))
        for i, one in enumerate(inputs)
    ]


def sobol(
    names: Sequence[str], f_a: Array, f_b: Array, f_ab: Array, samples: int, seed: int
) -> list[tuple[Influence, ...]]:
    """Per answer (s), the influence of each group (d), strongest total first.

    f_a, f_b: (s, n) answers of two sets of samples; f_ab: (d, s, n) with one group swapped.
    Groups that an answer does not notice are left out. Intervals by percentile bootstrap, made
    here because scipy's own takes no seed.
    """
    out: list[tuple[Influence, ...]] = []
    for i in range(len(f_a)):
        if np.ptp(np.concatenate([f_a[i], f_b[i]])) < 1e-12:
            out.append(())
            continue
        live = [j for j in range(len(names)) if not np.array_equal(f_ab[j, i], f_a[i])]
        if len(live) == 1:
            out.append((Influence(names[live[0]], 1.0, (1.0, 1.0), 1.0, (1.0, 1.0)),))
            continue
        centred = [f - f_a[i].mean() for f in (f_a[i], f_b[i], f_ab[live, i])]
        first, total = _indices(*centred)
        rng = np.random.default_rng(seed)
        again = np.array(
            [
                _indices(*(f[..., pick] for f in centred))
                for pick in rng.integers(samples, size=(RESAMPLES, samples))
            ]
        )
        tail = 100 * (1 - LEVEL) / 2
        low, high = np.percentile(again, [tail, 100 - tail], axis=0)
        lines = [
            Influence(
                name,
                float(first[j]),
                (float(low[0, j]), float(high[0, j])),
                float(total[j]),
                (float(low[1, j]), float(high[1, j])),
            )
            for j, name in enumerate(names[k] for k in live)
        ]
        out.append(tuple(sorted(lines, key=lambda line: -line.total)))
    return out


def _indices(f_a: Array, f_b: Array, f_ab: Array) -> tuple[Array, Array]:
    """(d,) first and total indices of one answer: f_a, f_b (n,), f_ab (d, n), centred."""
    from scipy.stats import sobol_indices

    one = {"f_A": f_a[None], "f_B": f_b[None], "f_AB": f_ab[:, None]}
    found = sobol_indices(func=one, n=f_a.shape[-1])
    return found.first_order, found.total_order


def describe(values: Array) -> Spread:
    """Mean, sd and 95 % range of a sample (n,), and how well the sample pins them down."""
    n = len(values)
    ordered = np.sort(values)
    tail = (1 - LEVEL) / 2
    low, high = np.quantile(ordered, [tail, 1 - tail])
    # A quantile lies between two order statistics with binomial probability; half their distance.
    half = 1.96 * np.sqrt(n * tail * (1 - tail))

    def error(centre: float) -> float:
        at = np.clip([centre - half, centre + half], 0, n - 1)
        return float(np.diff(np.interp(at, np.arange(n), ordered))[0] / 2)

    sd = float(values.std(ddof=1))
    return Spread(
        float(values.mean()),
        sd,
        float(low),
        float(high),
        float(1.96 * sd / np.sqrt(n)),
        error(tail * n),
        error((1 - tail) * n),
    )


def wilson(hits: int, n: int) -> tuple[float, float]:
    """95 % interval of a probability seen hits times in n (Wilson, JASA 22 (1927) 209-212)."""
    z = 1.959963984540054
    share, scale = hits / n, 1 + z * z / n
    middle = (share + z * z / (2 * n)) / scale
    half = z / scale * np.sqrt(share * (1 - share) / n + z * z / (4 * n * n))
    return max(0.0, float(middle - half)), min(1.0, float(middle + half))


def _draws(inputs: int, samples: int, seed: int) -> tuple[Array, Array]:
    """Two independent (n, inputs) sets in the unit cube, evenly filling it."""
    from scipy.stats import qmc

    unit = qmc.Sobol(2 * inputs, rng=np.random.default_rng(seed)).random(samples)
    unit = np.clip(unit, 1e-12, 1 - 1e-12)
    return unit[:, :inputs], unit[:, inputs:]


def _answerer(
    truck: Truck, errors: Errors, headings: Array, grip: Grip, method: Method, hold: Hold
) -> Callable[[Array], Array]:
    """From unit samples (n, 4 R + U + 1) to (2 H, n): tip angles, then angles at which it goes."""
    from scipy.special import ndtri

    front, rear = (rigid.tip_line(a.track, a.tyre.contact_half_width) for a in truck.axles)
    rows = 4 * len(errors.rows)

    def answer(unit: Array) -> Array:
        normal = np.clip(ndtri(unit[:, :rows]), -MOST_OFF, MOST_OFF)
        off = normal.reshape(len(unit), -1, 4) * errors.sd
        mu = triangular_quantile(unit[:, -1], grip)
        if method == "compliant":
            return _compliant(truck, errors, off, unit[:, rows:-1], headings, mu, hold)
        x, y, z = cg_samples(truck, errors, off)[1].T
        tip = rigid.tip_angles(front, rear, truck.front.x, truck.rear.x, x, y, z, headings).T
        goes = tip if hold == "rail" else np.minimum(tip, np.arctan(mu))
        return np.concatenate([tip, goes])

    return answer


def _compliant(
    truck: Truck,
    errors: Errors,
    off: Array,
    unit: Array,
    headings: Array,
    mu: Array,
    hold: Hold,
) -> Array:
    """(2 H, n) rad; a sample whose tip cannot be followed takes the mean of the others."""
    numbers = [quantile(one, unit[:, i]) for i, one in enumerate(truck.uncertain)]
    own = {p.row: p.body.mass for p in truck.parts}
    builds = []
    for i, one in enumerate(off):
        build = varied(truck, {k: float(values[i]) for k, values in enumerate(numbers)})
        masses = {int(r): float(e[0]) for r, e in zip(errors.rows, one, strict=True)}
        build = with_masses(
            build, {r: max(own[r] + e, 0.1 * own[r]) for r, e in masses.items() if e}
        )
        builds.append(
            with_shifts(build, {int(r): e[1:] for r, e in zip(errors.rows, one, strict=True)})
        )
    count = len(headings)
    found = tip_pairs(
        [b for b in builds for _ in range(count)],
        np.tile(headings, len(builds)),
        np.repeat(mu, count),
        hold,
    )
    tip = found.free.reshape(-1, count).T
    goes = np.fmin(found.goes, found.free).reshape(-1, count).T
    missing = np.isnan(tip)
    filled = np.where(missing, np.nanmean(tip, axis=1, keepdims=True), tip)
    return np.concatenate([filled, np.where(missing, filled, goes)])


def _heading(
    heading: float,
    centre: float,
    tip: Array,
    goes: Array | None,
    by_tip: tuple[Influence, ...],
    by_goes: tuple[Influence, ...],
) -> HeadingSpread:
    if goes is None:
        nan = float("nan")
        one = describe(tip)
        return HeadingSpread(float(heading), centre, one, None, 1.0, (nan, nan), by_tip, ())
    hits = int(np.sum(goes == tip))
    return HeadingSpread(
        float(heading),
        centre,
        describe(tip),
        describe(goes),
        hits / len(tip),
        wilson(hits, len(tip)),
        by_tip,
        by_goes,
    )
