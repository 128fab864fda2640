"""How sure a tip angle is: every input's uncertainty carried through to the answer.

Each uncertain input (`Truck.uncertain`, and grip) is varied alone, below and above its likely
value; what that does to the tip is drawn through by a parabola, and the parabolas add up. The parts
list's masses and places act through mass and CG, which follow their errors linearly. Errors are
then drawn from all inputs at once, evenly (a Latin hypercube: McKay, Beckman and Conover,
Technometrics 21 (1979) 239-245), and the middle 95 % of the answers is the range: the propagation
of distributions of JCGM 101:2008, with a cheap stand-in for the model. What it leaves out, that one
input changes what another does, is measured by tests against drawing whole trucks. Where inputs are
so wide that their effects bend (a stop reached or not, a body that snaps over), the parabolas no
longer add up: then some whole trucks are drawn too, and the sum is put right by what they say.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from crossfall.answers.conditions import Conditions
from crossfall.answers.tips import TipAngles, held_tips, taken, tip_pairs
from crossfall.statics.sliding import triangular_quantile
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck, frozen
from crossfall.truck.solids import MM
from crossfall.truck.uncertain import quantile, varied
from crossfall.truck.weight import sensitivities

_LEVEL = 0.95
_NODES = ((3 - np.sqrt(3)) / 6, (3 + np.sqrt(3)) / 6)  # of Gauss' rule with two points, on (0, 1)
_DRAWS = 4096
WHOLE = 96  # whole trucks drawn, where that is needed
BENDS = 0.3  # of the range's sd, mean shifts of all inputs together, from which it is
_NARROW = np.radians(0.02)  # sd of a range that no whole trucks are drawn for
MASSES = "masses and places of the parts"


@dataclass(frozen=True)
class Range:
    """One heading; rad. tip: (low, high), the tip of 95 % of the trucks that tip; where the truck
    as it is slides first, of all against a rail. goes: of whichever comes first. tips_first:
    probability that that is a tip. causes: (input, standard uncertainty it alone gives the tip),
    largest first.
    """

    tip: tuple[float, float]
    goes: tuple[float, float]
    tips_first: float
    causes: tuple[tuple[str, float], ...]


def ranges(truck: Truck, asked: Sequence[Conditions]) -> tuple[TipAngles, tuple[Range, ...]]:
    """The tips at the likely values (H,), and the range for each of the conditions; rad.

    They share grip and hold. All builds are answered in one batch. theta = theta_0 + sum(f_i(x_i)),
    f_i a parabola through two Gauss points of input i; its 2.5 % and 97.5 % quantiles over a Latin
    hypercube.
    Source: M. D. McKay, R. J. Beckman and W. J. Conover, Technometrics 21 (1979) 239-245; JCGM
    101:2008 for distributions carried through (from memory); Gauss' two points as in any numerical
    text.
    """
    grip, hold = asked[0].grip, asked[0].hold
    psi = np.array([c.heading for c in asked])
    inputs = truck.uncertain
    values = np.array([[quantile(one, u) for u in _NODES] for one in inputs]).reshape(-1, 2)
    builds = [truck]
    builds += [varied(truck, {i: float(v)}) for i, pair in enumerate(values) for v in pair]
    spread, covariance = _mass_and_cg(truck)
    axes = [k for k in range(4) if spread[k] > 0]
    builds += [moved_truck(truck, k, sign * spread[k]) for k in axes for sign in (-1, 1)]
    likely = [grip.likely] * len(builds)
    mus = np.unique([grip.low, *triangular_quantile(_NODES, grip), grip.high])
    if grip.high > grip.low:
        builds += [truck] * len(mus)
        likely += mus.tolist()
    angles = tip_pairs(
        [b for b in builds for _ in psi],
        np.tile(psi, len(builds)),
        np.repeat(likely, len(psi)),
        hold,
        originals=len(psi),
        braked=np.repeat([b is truck or truck.may_roll for b in builds], len(psi)),
    )
    likeliest = taken(angles, slice(0, len(psi)))
    check_followed(truck, asked, likeliest.free)
    found = angles.free.reshape(len(builds), len(psi))
    braked = angles.tip.reshape(len(builds), len(psi))[len(builds) - len(mus) :]
    slide = angles.slide.reshape(len(builds), len(psi))
    held = likeliest.slides | (hold == "rail")
    known = [
        _Known(truck, grip, found[:, h], braked[:, h], values, axes, covariance, mus)
        for h in range(len(psi))
    ]
    unit = _hypercube(len(inputs) + 5, _DRAWS)
    effects = [one.effects(unit) for one in known]
    bent = [h for h, one in enumerate(effects) if _bends(one)]
    right = _put_right(truck, [asked[h] for h in bent], [known[h] for h in bent], held[bent])
    fixes = dict(zip(bent, right, strict=True))
    mu = triangular_quantile(unit[-1], grip)
    goes = [np.arctan(mu)] * len(psi)
    if truck.may_roll and hold == "brakes":  # sooner, and then that hangs on all inputs, too
        rolling = [replace(one, found=slide[:, h]) for h, one in enumerate(known)]
        rolls = [one.centre + np.sum([e for _, e in one.effects(unit)], axis=0) for one in rolling]
        goes = [np.minimum(a, b) for a, b in zip(goes, rolls, strict=True)]
    return likeliest, tuple(
        _range(one, bool(held[h]), known[h], effects[h], fixes.get(h), mu, goes[h])
        for h, one in enumerate(asked)
    )


def check_followed(truck: Truck, asked: Sequence[Conditions], free: Array) -> None:
    """Raises InputError where a truck's way to its tip (H,) rad could not be followed: nan."""
    lost = [f"{math.degrees(a.heading):g}" for a, t in zip(asked, free, strict=True) if np.isnan(t)]
    if lost:
        hard = max(axle.tyre.stiffness for axle in truck.axles) * MM
        what = f"its tyres stick and slip without end at heading {', '.join(lost)}"
        allowed = f"they are {hard:.3g} N/mm; softer ones, or another heading, can be followed"
        raise InputError(Problem(truck.name, what, allowed))


@dataclass(frozen=True)
class _Known:
    """What one heading's tips are known to do with each input alone. found: (builds,) rad. braked:
    (m,) at the grips of `mus`, on brakes; nan where it slides first."""

    truck: Truck
    grip: Grip
    found: Array
    braked: Array
    values: Array
    axes: Sequence[int]
    covariance: Array
    mus: Array

    @property
    def centre(self) -> float:
        return float(self.found[0])

    def effects(self, unit: Array) -> list[tuple[str, Array]]:
        """(n,) rad of each input at chances (inputs + 5, n): mass and CG have four, grip one."""
        inputs, found, centre = self.truck.uncertain, self.found[1:], self.centre
        effects: list[tuple[str, Array]] = []
        for i, one in enumerate(inputs):
            change = found[2 * i : 2 * i + 2] - centre
            drawn = np.array(quantile(one, unit[i]))
            effects.append((one.name, parabola(one.likely, self.values[i], change, drawn)))
        at = 2 * len(inputs)
        by_mass = found[at : at + 2 * len(self.axes)]
        slope = np.zeros(4)
        for j, k in enumerate(self.axes):
            sides = np.array([centre - by_mass[2 * j], by_mass[2 * j + 1] - centre])
            slope[k] = _known_mean(sides) / np.sqrt(self.covariance[k, k])
        effects.append((MASSES, slope @ self.offsets(unit)))
        if self.grip.high > self.grip.low:
            mu = triangular_quantile(unit[-1], self.grip)
            nodes = np.append(self.mus, self.grip.likely)
            tips = np.append(found[at + 2 * len(self.axes) :], centre)
            order = [k for k in np.argsort(nodes) if np.isfinite(tips[k])]
            effect = np.interp(mu, nodes[order], tips[order]) - centre
            effects.append((f"grip on {self.grip.surface}", effect))
        return effects

    @property
    def tips_braked(self) -> Array:
        return self.braked[np.isfinite(self.braked)]

    def on_brakes(self, grips: Array) -> Array:
        """(n,) rad of the truck as it is on its brakes at grips (n,); below those that let it tip
        it goes straight on."""
        at, tips = self.mus[np.isfinite(self.braked)], self.tips_braked
        slope = (tips[1] - tips[0]) / (at[1] - at[0]) if len(at) > 1 else 0.0
        return np.asarray(np.interp(grips, at, tips) + slope * np.minimum(grips - at[0], 0.0))

    def offsets(self, unit: Array) -> Array:
        """(4, n) errors of mass, kg, and CG, m."""
        values, vectors = np.linalg.eigh(self.covariance)
        root = vectors * np.sqrt(np.maximum(values, 0.0))
        return np.asarray(root @ _normal(unit[-5:-1]))


def _bends(effects: Sequence[tuple[str, Array]]) -> bool:
    shifts = sum(abs(float(e.mean())) for _, e in effects)
    spread = float(np.std(np.sum([e for _, e in effects], axis=0)))
    return spread > _NARROW and shifts > BENDS * spread


@dataclass(frozen=True)
class _Fix:
    """What whole trucks differ by from the sum: a parabola over the sum less its middle, (2,) ends
    of where it holds, and (n,) what is left, rad."""

    middle: float
    parabola: Array
    ends: tuple[float, float]
    left: Array

    def put_right(self, predicted: Array) -> Array:
        """(n,) rad of trucks whose sums are `predicted`."""
        left = np.random.default_rng(1).permutation(np.resize(self.left, len(predicted)))
        inside = np.clip(predicted, *self.ends) - self.middle
        return np.asarray(predicted + np.polyval(self.parabola, inside) + left)


def _put_right(
    truck: Truck, asked: Sequence[Conditions], known: Sequence[_Known], held: NDArray[np.bool_]
) -> list[_Fix | None]:
    """For each of the headings, from the same whole trucks."""
    if not asked:
        return []
    unit = _hypercube(len(truck.uncertain) + 5, WHOLE)
    grip = asked[0].grip
    mu = triangular_quantile(unit[-1], grip)
    off = known[0].offsets(unit)
    builds = []
    for n in range(WHOLE):
        build = varied(truck, {i: float(quantile(v, unit[i, n]))
                               for i, v in enumerate(truck.uncertain)})  # fmt: skip
        for axis in known[0].axes:
            build = moved_truck(build, axis, float(off[axis, n]))
        builds.append(build)
    found = held_tips(
        [b for b in builds for _ in asked],
        np.tile([one.heading for one in asked], WHOLE),
        np.repeat(mu, len(asked)),
        np.tile(held, WHOLE),
    ).reshape(WHOLE, len(asked))
    return [
        _fix(k.centre + np.sum([e for _, e in k.effects(unit)], axis=0), found[:, j])
        for j, k in enumerate(known)
    ]


def _fix(predicted: Array, found: Array) -> _Fix | None:
    """By least squares; None where too few whole trucks tip."""
    there = np.isfinite(found)
    if there.sum() < WHOLE / 4:
        return None
    predicted, more = predicted[there], found[there] - predicted[there]
    middle = float(predicted.mean())
    curve = np.polyfit(predicted - middle, more, 2)
    left = more - np.polyval(curve, predicted - middle)
    left *= np.sqrt(len(predicted) / (len(predicted) - 3))
    return _Fix(middle, curve, (float(predicted.min()), float(predicted.max())), left)


def _range(
    asked: Conditions,
    held: bool,
    known: _Known,
    effects: Sequence[tuple[str, Array]],
    fix: _Fix | None,
    mu: Array,
    slide: Array,
) -> Range:
    tip = known.centre + np.sum([e for _, e in effects], axis=0)
    if fix is not None:
        tip = fix.put_right(tip)
    free = tip
    if held and not asked.rail and asked.grip.high > asked.grip.low and len(known.tips_braked):
        # With more grip it tips on its brakes, and then not where it would against a rail.
        free = tip - effects[-1][1] - known.centre + known.on_brakes(mu)
    slide = np.full(_DRAWS, np.inf) if asked.rail else slide
    first = free < slide
    causes = sorted([(n, float(e.std())) for n, e in effects], key=lambda c: -c[1])
    return Range(
        _middle(tip if held or not first.any() else tip[first]),
        _middle(np.minimum(free, slide)),
        float(first.mean()),
        tuple(c for c in causes if c[1] > 0),
    )


def _known_mean(values: Array) -> float:
    """The mean of those that are numbers, 0 of none."""
    known = values[np.isfinite(values)]
    return float(known.mean()) if len(known) else 0.0


def parabola(likely: float, nodes: Array, change: Array, at: Array) -> Array:
    """The parabola through (likely, 0) and (nodes, change), (2,) each, at (n,) values; a straight
    line where one change is nan. In the unit of change.

    Source: Newton's divided differences, any numerical text.
    """
    a, b = nodes - likely
    sides = change / (nodes - likely)
    sides = np.where(np.isfinite(sides), sides, _known_mean(sides))
    bend = (sides[1] - sides[0]) / (b - a)
    step = at - likely
    return np.asarray(step * (sides[0] + bend * (step - a)))


def _middle(values: Array) -> tuple[float, float]:
    low, high = np.quantile(values, [(1 - _LEVEL) / 2, (1 + _LEVEL) / 2])
    return float(low), float(high)


def _hypercube(inputs: int, draws: int) -> Array:
    """(inputs, draws) in (0, 1): each input in equal steps, in an order of its own."""
    rng = np.random.default_rng(0)
    steps = (np.arange(draws) + 0.5) / draws
    return np.array([rng.permutation(steps) for _ in range(inputs)])


def _normal(unit: Array) -> Array:
    """Standard normal values at chances that are those of a hypercube; no scipy for so little."""
    steps = unit.shape[-1]
    at = np.rint(unit * steps - 0.5).astype(np.intp)
    return np.asarray(_normal_steps(steps)[at])


@cache
def _normal_steps(steps: int) -> Array:
    normal = NormalDist()
    return frozen(np.array([normal.inv_cdf((i + 0.5) / steps) for i in range(steps)]))


def _mass_and_cg(truck: Truck) -> tuple[Array, Array]:
    """(4,) standard uncertainties of mass (kg) and CG x, y, z (m), and their (4, 4) covariance."""
    if not truck.parts:
        return np.zeros(4), np.zeros((4, 4))
    found = sensitivities(truck)
    slopes = np.concatenate([found.mass, found.cg]) * found.sd
    flat = slopes.reshape(4, -1)
    covariance = flat @ flat.T
    return np.sqrt(np.diag(covariance)), covariance


def moved_truck(truck: Truck, axis: int, by: float) -> Truck:
    """The truck with its mass (axis 0, kg) or its CG's x, y or z (1 to 3, m) off by this much.

    All of it in the chassis, m_c of m, so that shifts by m / m_c; mass is added at the truck's CG,
    which stays where it is.
    Source: derived here from the definition of a mass centre.
    """
    body, all_of_it = truck.chassis, whole(truck)
    if axis == 0:
        mass = body.mass + by
        cg = (body.mass * body.cg + by * all_of_it.cg) / mass
        return replace(truck, chassis=replace(body, mass=mass, cg=frozen(cg)))
    shift = np.zeros(3)
    shift[axis - 1] = by * all_of_it.mass / body.mass
    return replace(truck, chassis=replace(body, cg=frozen(body.cg + shift)))
