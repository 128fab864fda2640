"""How sure a tip angle is: every input's doubt carried through to the answer.

Each uncertain input (`Truck.uncertain`, and grip) is varied alone, below and above its likely
value; what that does to the tip is drawn through by a parabola, and the parabolas add up. The parts
list's masses and places act through mass and CG, which follow their errors linearly. Errors are
then drawn from all inputs at once, evenly (a Latin hypercube: McKay, Beckman and Conover,
Technometrics 21 (1979) 239-245), and the middle 95 % of the answers is the range: the propagation
of distributions of JCGM 101:2008, with a cheap stand-in for the model. What it leaves out, that one
input changes what another does, is measured by tests against drawing whole trucks.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from statistics import NormalDist

import numpy as np

from crossfall.answers.conditions import Conditions
from crossfall.answers.tips import TipAngles, taken, tip_pairs
from crossfall.statics.sliding import triangular_quantile
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck, frozen
from crossfall.truck.uncertain import quantile, varied
from crossfall.truck.weight import sensitivities

LEVEL = 0.95
NODES = ((3 - np.sqrt(3)) / 6, (3 + np.sqrt(3)) / 6)  # of Gauss' rule with two points, on (0, 1)
DRAWS = 4096
NORMAL = NormalDist()
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
    """The tips at the likely values (H,), and the range for each of the conditions.

    They share grip and hold. All builds are answered in one batch.
    """
    grip, hold = asked[0].grip, asked[0].hold
    psi = np.array([c.heading for c in asked])
    inputs = truck.uncertain
    values = np.array([[quantile(one, u) for u in NODES] for one in inputs]).reshape(-1, 2)
    builds = [truck]
    builds += [varied(truck, {i: float(v)}) for i, pair in enumerate(values) for v in pair]
    spread, covariance = _mass_and_cg(truck)
    axes = [k for k in range(4) if spread[k] > 0]
    builds += [moved(truck, k, sign * spread[k]) for k in axes for sign in (-1, 1)]
    likely = [grip.likely] * len(builds)
    mus = np.unique([grip.low, *triangular_quantile(NODES, grip), grip.high])
    if grip.high > grip.low:
        builds += [truck] * len(mus)
        likely += mus.tolist()
    angles = tip_pairs(
        [b for b in builds for _ in psi],
        np.tile(psi, len(builds)),
        np.repeat(likely, len(psi)),
        hold,
        originals=len(psi),
    )
    likeliest = taken(angles, slice(0, len(psi)))
    found = angles.free.reshape(len(builds), len(psi))
    braked = angles.tip.reshape(len(builds), len(psi))[len(builds) - len(mus) :]
    held = likeliest.slides | (hold == "rail")
    return likeliest, tuple(
        _range(truck, one, bool(held[h]), found[:, h], braked[:, h], values, axes, covariance, mus)
        for h, one in enumerate(asked)
    )


def _range(
    truck: Truck,
    asked: Conditions,
    held: bool,
    found: Array,
    braked: Array,
    values: Array,
    axes: Sequence[int],
    covariance: Array,
    mus: Array,
) -> Range:
    inputs, grip = truck.uncertain, asked.grip
    centre, found = float(found[0]), found[1:]
    unit = _hypercube(len(inputs) + 2)
    effects: list[tuple[str, Array]] = []
    for i, one in enumerate(inputs):
        drawn = np.array(quantile(one, unit[i]))
        effects.append(
            (one.name, parabola(one.likely, values[i], found[2 * i : 2 * i + 2] - centre, drawn))
        )
    at = 2 * len(inputs)
    by_mass = found[at : at + 2 * len(axes)]
    slope = np.zeros(4)
    for j, k in enumerate(axes):
        sides = np.array([centre - by_mass[2 * j], by_mass[2 * j + 1] - centre])
        slope[k] = _known_mean(sides) / np.sqrt(covariance[k, k])
    sd = np.sqrt(max(float(slope @ covariance @ slope), 0.0))
    effects.append((MASSES, sd * np.array([NORMAL.inv_cdf(p) for p in unit[-2]])))
    mu = triangular_quantile(unit[-1], grip)
    if grip.high > grip.low:
        nodes = np.append(mus, grip.likely)
        tips = np.append(found[at + 2 * len(axes) :], centre)
        order = [k for k in np.argsort(nodes) if np.isfinite(tips[k])]
        effect = np.interp(mu, nodes[order], tips[order]) - centre
        effects.append((f"grip on {grip.surface}", effect))
    tip = centre + np.sum([e for _, e in effects], axis=0)
    free = tip
    if held and not asked.rail and grip.high > grip.low and np.isfinite(braked).any():
        # With more grip it tips on its brakes, and then not where it would against a rail.
        free = tip - effect - centre + _on_brakes(mu, mus, braked)
    slide = np.full(DRAWS, np.inf) if asked.rail else np.arctan(mu)
    first = free < slide
    causes = sorted([(n, float(e.std())) for n, e in effects], key=lambda c: -c[1])
    return Range(
        _middle(tip if held or not first.any() else tip[first]),
        _middle(np.minimum(free, slide)),
        float(first.mean()),
        tuple(c for c in causes if c[1] > 0),
    )


def _on_brakes(grips: Array, nodes: Array, tips: Array) -> Array:
    """Tips at grips (n,) from those at ascending nodes (m,), nan for those too slippery for a tip:
    below the others they go straight on."""
    known = np.isfinite(tips)
    at, tips = nodes[known], tips[known]
    slope = (tips[1] - tips[0]) / (at[1] - at[0]) if len(at) > 1 else 0.0
    return np.asarray(np.interp(grips, at, tips) + slope * np.minimum(grips - at[0], 0.0))


def _known_mean(values: Array) -> float:
    """The mean of those that are numbers, 0 of none."""
    known = values[np.isfinite(values)]
    return float(known.mean()) if len(known) else 0.0


def parabola(likely: float, nodes: Array, change: Array, at: Array) -> Array:
    """The parabola through (likely, 0) and (nodes, change), (2,) each, at (n,) values; a straight
    line where one change is nan."""
    a, b = nodes - likely
    sides = change / (nodes - likely)
    sides = np.where(np.isfinite(sides), sides, _known_mean(sides))
    bend = (sides[1] - sides[0]) / (b - a)
    step = at - likely
    return np.asarray(step * (sides[0] + bend * (step - a)))


def _middle(values: Array) -> tuple[float, float]:
    low, high = np.quantile(values, [(1 - LEVEL) / 2, (1 + LEVEL) / 2])
    return float(low), float(high)


def _hypercube(inputs: int) -> Array:
    """(inputs, DRAWS) in (0, 1): each input in equal steps, in an order of its own."""
    rng = np.random.default_rng(0)
    steps = (np.arange(DRAWS) + 0.5) / DRAWS
    return np.array([rng.permutation(steps) for _ in range(inputs)])


def _mass_and_cg(truck: Truck) -> tuple[Array, Array]:
    """(4,) standard uncertainties of mass (kg) and CG x, y, z (m), and their (4, 4) covariance."""
    if not truck.parts:
        return np.zeros(4), np.zeros((4, 4))
    found = sensitivities(truck)
    slopes = np.concatenate([found.mass, found.cg]) * found.sd
    flat = slopes.reshape(4, -1)
    covariance = flat @ flat.T
    return np.sqrt(np.diag(covariance)), covariance


def moved(truck: Truck, axis: int, by: float) -> Truck:
    """The truck with its mass (axis 0, kg) or its CG's x, y or z (1 to 3, m) off by this much.

    All of it in the chassis; mass is added at the truck's CG, which stays where it is.
    """
    body, all_of_it = truck.chassis, whole(truck)
    if axis == 0:
        mass = body.mass + by
        cg = (body.mass * body.cg + by * all_of_it.cg) / mass
        return replace(truck, chassis=replace(body, mass=mass, cg=frozen(cg)))
    shift = np.zeros(3)
    shift[axis - 1] = by * all_of_it.mass / body.mass
    return replace(truck, chassis=replace(body, cg=frozen(body.cg + shift)))
