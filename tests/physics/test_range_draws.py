"""The stated 95 % ranges against drawing whole trucks within all their tolerances."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_pairs
from crossfall.measurement.begin import begin
from crossfall.measurement.readings import checked
from crossfall.statics.sliding import triangular_quantile
from crossfall.study.draws import drawn_truck
from crossfall.truck.build import build, load_truck
from crossfall.truck.schema import TruckSpec
from measured_builds import QUICK

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
    """Its width and both ends within 10 % of the width, and what so few draws leave open."""
    truck = load_truck(name).truck
    asked = conditions(truck, HEADINGS)
    grip = asked[0].grip
    likely, made = ranges(truck, asked)
    said = np.array([r.tip for r in made]).T
    mu = triangular_quantile((np.random.default_rng(2).permutation(DRAWS) + 0.5) / DRAWS, grip)
    builds = [drawn_truck(truck, seed) for seed in range(DRAWS)]
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
            allowed = 0.1 * (high - low) + 2.5 * error
            assert abs((ends[1] - ends[0]) - (high - low)) < allowed
            assert max(abs(ends[0] - low), abs(ends[1] - high)) < allowed


def test_so_is_that_of_a_truck_of_which_little_is_known() -> None:
    """Its springs, stops and roll centres are typical and wide, and their effects do not add up."""
    truck = build(TruckSpec.model_validate(begin(checked(QUICK)).data))[0]
    asked = conditions(truck, [np.pi / 2], grip=0.9, hold="rail")
    said = ranges(truck, asked)[1][0].tip
    builds = [drawn_truck(truck, seed) for seed in range(DRAWS)]
    tips = tip_pairs(builds, np.full(DRAWS, np.pi / 2), np.full(DRAWS, 0.9), "rail").tip
    (low, high), error = middle(tips[np.isfinite(tips)])
    assert max(abs(said[0] - low), abs(said[1] - high)) < 0.1 * (high - low) + 2.5 * error
