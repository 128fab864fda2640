"""The critical slope of a crossing: what is drawn, how it is searched, what it is held against."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.statics.sliding import triangular_quantile
from crossfall.study.critical import CriticalSlope, LogisticFit, find_critical
from crossfall.study.slopes import (
    Crossing,
    bisect,
    critical_slope,
    drawn_ground,
    static_answer,
    varies,
    what_closes,
)
from crossfall.trials.grounds.plane import Plane
from crossfall.trials.grounds.rough import Rough
from crossfall.trials.grounds.stone import Stone
from crossfall.truck.build import load_truck
from crossfall.truck.edits import set_values
from crossfall.truck.model import Grip
from crossfall.tuning.apply import built
from support import make_truck

ROCK = Grip("rock", 0.6, 0.9, 1.0)


def test_grips_are_drawn_from_the_triangle() -> None:
    shares = (np.arange(20_000) + 0.5) / 20_000
    grips = np.array([triangular_quantile(float(s), ROCK) for s in shares])
    assert grips.min() >= 0.6
    assert grips.max() <= 1.0
    assert grips.mean() == pytest.approx((0.6 + 0.9 + 1.0) / 3, abs=1e-4)  # mean of a triangle
    below = (0.9 - 0.6) / (1.0 - 0.6)
    assert triangular_quantile(below, ROCK) == pytest.approx(0.9)
    assert triangular_quantile(0.3, Grip("board", 0.8, 0.8, 0.8)) == 0.8


def test_a_number_and_a_seed_fix_the_ground_and_the_grip() -> None:
    crossing = Crossing(ground=Rough(0.004), grip=ROCK, seed=5)
    assert drawn_ground(crossing, 3) == drawn_ground(crossing, 3)
    assert drawn_ground(crossing, 3) != drawn_ground(crossing, 4)
    assert drawn_ground(crossing, 3) != drawn_ground(
        Crossing(ground=Rough(0.004), grip=ROCK, seed=6), 3
    )
    stone, grip = drawn_ground(Crossing(ground=Stone(0.02), grip=0.7), 0)
    assert isinstance(stone, Stone)
    assert stone.height == 0.02
    assert stone.stray > 0
    assert grip == 0.7


def test_only_what_is_drawn_makes_outcomes_vary() -> None:
    assert not varies(Crossing(ground=Plane(), grip=0.8))
    assert varies(Crossing(ground=Plane(), grip=ROCK))
    assert varies(Crossing(ground=Rough(0.002)))


@pytest.mark.parametrize("edge", [0.1001, 0.37, 0.4999])
def test_a_sharp_edge_is_bisected(edge: float) -> None:
    found = bisect(lambda angle, _: angle > edge, 0.1, 0.5, half_width=0.002, most=40)
    assert found.settled
    assert found.fit.low <= edge <= found.fit.high
    assert found.fit.high - found.fit.low <= 0.004 + 1e-12
    assert found.trials <= 9


def test_a_sharp_edge_is_settled_only_where_it_is_as_narrow_as_was_asked() -> None:
    def searched(most: int) -> CriticalSlope:
        return bisect(lambda angle, _: angle > 0.3217, 0.1, 0.5, half_width=width, most=most)

    width = math.radians(0.05)
    short = searched(7)
    assert not short.settled
    said = what_closes(short, width, sharp=True)
    most = int(said.partition("about ")[2].partition(" would")[0])
    assert searched(most).settled
    assert not searched(most - 1).settled
    assert what_closes(searched(most), width, sharp=True) == ""


@pytest.mark.parametrize("fails", [True, False])
def test_an_edge_outside_is_said_to_be_open(fails: bool) -> None:
    found = bisect(lambda *_: fails, 0.1, 0.5, half_width=0.002, most=40)
    assert not found.settled
    assert found.failed.all() == fails
    assert math.isinf(found.fit.low if fails else found.fit.high)


def test_on_a_plane_little_is_lost_against_standing() -> None:
    angles = []
    study = critical_slope(
        make_truck(),
        Crossing(speed=0.05, distance=0.05),
        half_width=math.radians(0.2),
        watch=lambda number, angle, outcome: angles.append(angle),
    )
    assert study.critical.settled
    assert study.first == "tips"
    # Driven tyres do not give along the ground, which standing costs up to a degree.
    assert abs(study.allowance) < math.radians(1.0)
    assert angles == list(study.critical.angles)
    assert [o != "crossed" for o in study.outcomes] == list(study.critical.failed)


def test_where_grip_ends_first_the_slide_is_what_counts() -> None:
    crossing = Crossing(speed=0.05, distance=0.05, grip=0.4)
    study = critical_slope(make_truck(), crossing, half_width=math.radians(0.3))
    assert study.first == "slides"
    assert set(study.outcomes) == {"crossed", "slid"}
    assert study.static == pytest.approx(math.atan(0.4))
    assert abs(study.allowance) < math.radians(1.0)


def found(failed: list[bool], low: float, high: float, settled: bool = False) -> CriticalSlope:
    angles = np.radians(np.linspace(20.0, 30.0, len(failed)))
    fit = LogisticFit(math.radians(25), math.radians(low), math.radians(high), 0.0, 0.0, (0, 0))
    return CriticalSlope(fit, angles, np.array(failed), settled)


@pytest.mark.parametrize(
    ("case", "said"),
    [
        (found([False, True] * 4, 24.6, 25.4, settled=True), ""),
        (found([False] * 8, 30.0, math.inf), "No drive failed up to 30.0°"),
        (found([True] * 8, -math.inf, 20.0), "Every drive failed down to 20.0°"),
        (found([False, True] * 4, 24.0, math.inf), "it is open above"),
        (
            found([False, True] * 10, 23.0, 27.0),
            "about 320 would bring it to ±0.5°",
        ),
    ],
)
def test_a_search_that_ends_open_says_what_would_close_it(case: CriticalSlope, said: str) -> None:
    closes = what_closes(case, math.radians(0.5))
    assert (said in closes) if said else closes == ""


def test_four_times_the_trials_halve_an_interval() -> None:
    """As `what_closes` takes it, of searches among logistic outcomes."""
    rng = np.random.default_rng(3)
    widths = []
    for trials in (40, 160):
        some = [
            find_critical(
                lambda angle, _: rng.random() < 1 / (1 + math.exp(-(angle - 0.5) / 0.03)),
                0.0, 1.0, half_width=0.0, most=trials, least=trials,
            ).fit
            for _ in range(12)
        ]  # fmt: skip
        widths.append(float(np.median([fit.high - fit.low for fit in some])))
    assert 1.5 < widths[0] / widths[1] < 2.7


def test_a_drive_is_held_against_the_truck_standing_as_it_drives() -> None:
    """Straight ahead and on its brakes, whatever its file says: the rest is no dynamics."""
    loaded = load_truck("bramble")
    turned = built(
        loaded, set_values(loaded.spec, {"chassis.steer_deg": 30.0, "chassis.held_by": "motor"})
    )
    crossing = Crossing(heading=math.radians(150.0), grip=2.0)
    assert static_answer(turned, crossing) == static_answer(loaded.truck, crossing)
