"""The stated 95 % ranges against drawing whole trucks within all their tolerances."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_pairs
from crossfall.statics.sliding import triangular_quantile
from crossfall.study.draws import drawn
from crossfall.truck.build import load_truck

DRAWS = 500
HEADINGS = np.radians([0.0, 45.0, 90.0, 150.0])


def middle(values: np.ndarray) -> tuple[np.ndarray, float]:
    """The 95 % range of values (n,), (2,), and the standard error of its width."""
    rng = np.random.default_rng(1)
    again = values[rng.integers(len(values), size=(400, len(values)))]
    widths = np.ptp(np.quantile(again, [0.025, 0.975], axis=1), axis=0)
    return np.quantile(values, [0.025, 0.975]), float(widths.std())


@pytest.mark.parametrize("name", ["bramble", "thistle", "burdock"])
def test_the_range_is_that_of_trucks_drawn_at_random(name: str) -> None:
    """Within 10 % of its width, and what so few draws leave open."""
    truck = load_truck(name).truck
    asked = conditions(truck, HEADINGS)
    grip = asked[0].grip
    likely, made = ranges(truck, asked)
    said = np.array([r.tip for r in made]).T
    mu = triangular_quantile((np.random.default_rng(2).permutation(DRAWS) + 0.5) / DRAWS, grip)
    builds = [drawn(truck, seed) for seed in range(DRAWS)]
    each = len(HEADINGS)
    found = tip_pairs(
        [b for b in builds for _ in range(each)], np.tile(HEADINGS, DRAWS), np.repeat(mu, each)
    )
    tip, goes = found.tip.reshape(DRAWS, each), found.goes.reshape(DRAWS, each)
    railed = tip_pairs(
        [b for b in builds for _ in range(each)],
        np.tile(HEADINGS, DRAWS),
        np.repeat(mu, each),
        "rail",
    ).tip.reshape(DRAWS, each)
    for h in range(each):
        own = railed[:, h] if likely.slides[h] else tip[np.isfinite(tip[:, h]), h]
        for values, ends in ((own, said[:, h]), (goes[:, h], made[h].goes)):
            (low, high), error = middle(values)
            assert abs((ends[1] - ends[0]) - (high - low)) < 0.1 * (high - low) + 2.5 * error
