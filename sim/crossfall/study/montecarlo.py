"""How sure are we: every tolerance and the grip carried through to the answer, with intervals.

Whole trucks are drawn, every uncertain number off within its tolerance (`draws`), on grip that is
triangular between low and high, and each is answered like any other truck. The answers are the
tip angle, of those draws that tip (where the truck as it is slides first, of all against a rail: as
`answers.ranges`, which gives the same ranges from far fewer), and the angle at which it goes, by
tipping or by sliding, whichever comes first. Which input matters most is said by variance-based
(Sobol') indices, by groups of inputs: Saltelli et al., Computer Physics Communications 181 (2010)
259-270.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from crossfall.answers.conditions import Conditions
from crossfall.answers.ranges import moved_truck
from crossfall.answers.tips import tip_angles, tip_pairs
from crossfall.statics import rigid
from crossfall.statics.sliding import triangular_quantile
from crossfall.study.draws import Indices, Inputs, build_at, inputs_of
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck
from crossfall.truck.weight import sensitivities

_SAMPLES = 128  # of each of the sets behind the indices; a power of two
GROUPS = 6  # inputs named one by one; the others count together
RESAMPLES = 200  # of the bootstrap behind the intervals of the indices
_LEVEL = 0.95
_STACK = 4096  # answers asked for at once: enough for speed, few enough to tell of progress

Method = Literal["compliant", "closed form"]
_Progress = Callable[[int, int], None]


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
class InputInfluence:
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
    """One set of conditions; rad. centre: the tip with everything at its likely value, of the same
    method, against a rail where `slides_first`; centre_goes: tip or slide, whichever comes first.
    tip, goes: their spreads. tips_first: probability that a tip comes first, with its 95 %
    interval (Wilson). by_tip, by_goes: the inputs that matter, the strongest first. samples: trucks
    behind a spread, of which `lost` had no tip that could be found; they count as the mean.
    """

    conditions: Conditions
    centre: float
    centre_goes: float
    slides_first: bool
    tip: Spread
    goes: Spread
    tips_first: float
    tips_first_ci: tuple[float, float]
    by_tip: tuple[InputInfluence, ...]
    by_goes: tuple[InputInfluence, ...]
    samples: int
    lost: int


@dataclass(frozen=True)
class Answered:
    """n trucks on H headings: (H, n) tip, against a rail where it slides first, and goes, rad, and
    whether that is a slide."""

    tip: Array
    goes: Array
    slides: NDArray[np.bool_]

    @property
    def both(self) -> Array:
        """(2 H, n) tips, then goes."""
        return np.concatenate([self.tip, self.goes])

    def part(self, some: slice) -> Answered:
        return Answered(self.tip[:, some], self.goes[:, some], self.slides[:, some])


def monte_carlo(
    truck: Truck,
    asked: Sequence[Conditions],
    *,
    method: Method = "compliant",
    samples: int = _SAMPLES,
    seed: int = 0,
    progress: _Progress = lambda done, of: None,
) -> tuple[HeadingSpread, ...]:
    """The spread of the answer in each of the conditions, and which inputs are behind it; rad.

    The conditions share grip and hold. samples: a power of two; a spread rests on twice as many.
    progress: told of answers had and to be had. ValueError where samples is no power of two from 16
    or no input is uncertain.
    Source: JCGM 101:2008 for distributions carried through; indices as `sobol` (from memory).
    """
    if samples < 16 or samples & (samples - 1):
        raise ValueError(f"samples is {samples}; it must be a power of two from 16")
    inputs, grip = inputs_of(truck), asked[0].grip
    groups = input_groups(inputs, asked, method)
    if not groups:
        raise ValueError("nothing is uncertain: no number has a tolerance, and grip no range")
    a, b = _draws(inputs.columns + 1, samples, seed)
    sets = [a, b]
    for _, columns in groups:
        mixed = a.copy()
        mixed[:, columns] = b[:, columns]
        sets.append(mixed)
    centre = answered([truck], np.array([grip.likely]), asked, method)
    railed = centre.slides[:, 0]
    found = sampled(inputs, np.concatenate(sets), asked, method, railed, progress)
    lost = np.isnan(found.tip[:, : 2 * samples]).sum(axis=1)
    found = _filled(found)
    by_set = found.both.reshape(2 * len(asked), len(sets), samples).swapaxes(0, 1)
    names = [name for name, _ in groups]
    influences = sobol(names, by_set[0], by_set[1], by_set[2:], samples, seed)
    drawn = found.part(slice(0, 2 * samples))
    out = []
    for i, one in enumerate(asked):
        tips = ~drawn.slides[i]
        hits = int(tips.sum())
        out.append(
            HeadingSpread(
                one,
                float(centre.tip[i, 0]),
                float(centre.goes[i, 0]),
                bool(railed[i]),
                sample_spread(drawn.tip[i][tips | railed[i] | (hits < 2)]),
                sample_spread(drawn.goes[i]),
                hits / (2 * samples),
                wilson(hits, 2 * samples),
                influences[i],
                influences[len(asked) + i],
                2 * samples,
                int(lost[i]),
            )
        )
    return tuple(out)


def sampled(
    inputs: Inputs,
    unit: Array,
    asked: Sequence[Conditions],
    method: Method,
    railed: NDArray[np.bool_],
    progress: _Progress = lambda done, of: None,
) -> Answered:
    """Answers of trucks drawn at unit samples (n, columns + 1), the last of grip; rad.

    railed: (H,) headings on which tip is against a rail for every truck.
    Source: as `draws.build_at`, and a triangular grip as `statics.sliding`.
    """
    mu = triangular_quantile(unit[:, -1], asked[0].grip)
    stack = max(1, _STACK // len(asked))
    parts = []
    for begin in range(0, len(unit), stack):
        progress(begin * len(asked), len(unit) * len(asked))
        some = slice(begin, begin + stack)
        trucks = [build_at(inputs, row) for row in unit[some, :-1]]
        parts.append(answered(trucks, mu[some], asked, method, railed))
    progress(len(unit) * len(asked), len(unit) * len(asked))
    return Answered(
        np.concatenate([p.tip for p in parts], axis=1),
        np.concatenate([p.goes for p in parts], axis=1),
        np.concatenate([p.slides for p in parts], axis=1),
    )


def answered(
    trucks: Sequence[Truck],
    mu: Array,
    asked: Sequence[Conditions],
    method: Method,
    railed: NDArray[np.bool_] | None = None,
) -> Answered:
    """n trucks with grips (n,) on every heading asked, each answered as it is; see `sampled`. rad.

    By the closed form: goes = min(tip, atan(mu)), the tip alone against a rail.
    Source: as `answers.tips`; of the closed form `statics.rigid` and Coulomb friction.
    """
    psi = np.array([c.heading for c in asked])
    if method == "compliant":
        found = tip_angles(trucks, psi, mu, asked[0].hold)
        tip = found.free.copy()
        if railed is not None and not asked[0].rail:
            who, which = np.nonzero(~found.slides & railed)
            if len(who):
                again = tip_pairs([trucks[int(i)] for i in who], psi[which], mu[who], "rail")
                tip[who, which] = again.tip
        return Answered(tip.T, found.goes.T, found.slides.T)
    tip = np.array([rigid.tip_angle(truck, psi) for truck in trucks]).T
    slide = np.full_like(tip, np.inf) if asked[0].rail else np.arctan(mu) + 0.0 * tip
    return Answered(tip, np.minimum(tip, slide), slide < tip)


def _filled(found: Answered) -> Answered:
    """Tips that could not be followed at the mean of the others on their heading."""
    tip = np.where(np.isnan(found.tip), np.nanmean(found.tip, axis=1, keepdims=True), found.tip)
    return Answered(tip, np.where(np.isnan(found.goes), tip, found.goes), found.slides)


def input_groups(
    inputs: Inputs, asked: Sequence[Conditions], method: Method
) -> list[tuple[str, Indices]]:
    """(name, columns) of the inputs worth naming, the rest as one, and grip last.

    Ranked by the share of the tip angle's variance that each has on its own, over all headings, to
    first order: (dtheta/dx u(x))^2 by central differences.
    Source: JCGM 100 (GUM), 5.1.2 and 5.1.3 (from memory).
    """
    ranked = sorted(_shares(inputs, asked, method), key=lambda one: -one[0])
    groups = [(name, columns) for _, name, columns in ranked[:GROUPS]]
    if rest := [columns for _, _, columns in ranked[GROUPS:]]:
        groups.append((f"{len(rest)} others", np.concatenate(rest)))
    grip = asked[0].grip
    if grip.high > grip.low:
        groups.append((f"grip on {grip.surface}", np.array([inputs.columns], np.intp)))
    return groups


def _shares(
    inputs: Inputs, asked: Sequence[Conditions], method: Method
) -> list[tuple[float, str, Indices]]:
    """(rad^2, name, columns): variance of the tip that each input alone is behind.

    By central differences of the answer over a standard uncertainty: one by one, but for the parts'
    masses and places, which act through the truck's mass and CG.
    """
    truck, named = inputs.truck, inputs.named()
    others = named[len(named) - len(truck.uncertain) :]
    either = np.full((2 * len(others), inputs.columns), 0.5)
    step = 1 / np.sqrt(12)  # of an even input, in units of its width
    for i, (_, columns) in enumerate(others):
        either[2 * i, columns], either[2 * i + 1, columns] = 0.5 - step, 0.5 + step
    builds = [build_at(inputs, unit) for unit in either]
    body = whole(truck)
    size = np.array([1e-3 * body.mass, *(3 * [1e-3 * truck.wheelbase])])
    builds += [moved_truck(truck, k, sign * size[k]) for k in range(4) for sign in (-1, 1)]
    likely = np.full(len(builds), asked[0].grip.likely)
    tip = answered(builds, likely, asked, method).tip
    change = np.nan_to_num(tip[:, 1::2] - tip[:, ::2]) / 2  # (H, inputs and 4)
    gradient = change[:, len(others) :] / size
    shares = list(np.sum(change[:, : len(others)] ** 2, axis=0))
    by_row = np.zeros(4 * len(inputs.rows))
    if len(inputs.rows):
        slopes = sensitivities(truck)
        lever = np.einsum("hk,krq->hrq", gradient, np.concatenate([slopes.mass, slopes.cg]))
        by_row = np.sum((lever[:, inputs.rows] * inputs.sd) ** 2, axis=0).ravel()
    found = [
        (float(by_row[columns].sum()), name, columns)
        for name, columns in named[: -len(others) or None]
    ]
    return found + [(float(s), *one) for s, one in zip(shares, others, strict=True)]


def sobol(
    names: Sequence[str], f_a: Array, f_b: Array, f_ab: Array, samples: int, seed: int
) -> list[tuple[InputInfluence, ...]]:
    """Per answer (s), the influence of each group (d), strongest total first.

    f_a, f_b: (s, n) answers of two sets of samples; f_ab: (d, s, n) with one group swapped. Groups
    that an answer does not notice are left out. Intervals by percentile bootstrap, made here
    because scipy's own takes no seed. S = mean(f_b (f_ab - f_a)) / V, T = mean((f_a - f_ab)^2) / 2
    V.
    Source: A. Saltelli et al., Computer Physics Communications 181 (2010) 259-270, as scipy has it;
    B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap (1993) (from memory).
    """
    out: list[tuple[InputInfluence, ...]] = []
    for i in range(len(f_a)):
        if np.ptp(np.concatenate([f_a[i], f_b[i]])) < 1e-12:
            out.append(())
            continue
        live = [j for j in range(len(names)) if not np.array_equal(f_ab[j, i], f_a[i])]
        if len(live) == 1:
            out.append((InputInfluence(names[live[0]], 1.0, (1.0, 1.0), 1.0, (1.0, 1.0)),))
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
        tail = 100 * (1 - _LEVEL) / 2
        low, high = np.percentile(again, [tail, 100 - tail], axis=0)
        lines = [
            InputInfluence(
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


def sample_spread(values: Array) -> Spread:
    """Mean, sd and 95 % range of a sample (n,), and how well the sample pins them down; in its
    unit.

    Mean +- 1.96 sd / sqrt(n); a quantile p lies between the order statistics n p +- 1.96 sqrt(n p
    q).
    Source: H. A. David and H. N. Nagaraja, Order Statistics (Wiley 2003), for quantiles (from
    memory).
    """
    n = len(values)
    ordered = np.sort(values)
    tail = (1 - _LEVEL) / 2
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
    """95 % interval of a probability seen hits times in n > 0.

    (p + z^2 / 2n +- z sqrt(p q / n + z^2 / 4n^2)) / (1 + z^2 / n).
    Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927) 209-212 (from
    memory).
    """
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
