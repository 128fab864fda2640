"""How sure an answer is: every tolerance carried through."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.answers.conditions import Conditions, conditions
from crossfall.answers.ranges import moved_truck, parabola, ranges
from crossfall.answers.tips import tip_pairs
from crossfall.statics.sliding import triangular_quantile
from crossfall.truck.build import load_text, load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Grip
from crossfall.truck.weight import weigh_truck
from support import make_truck

SIDE = np.pi / 2


def test_the_parabola_goes_through_its_points() -> None:
    at = np.array([0.3, 0.6, 0.9])
    np.testing.assert_allclose(
        parabola(0.6, np.array([0.3, 0.9]), np.array([-0.2, 0.05]), at),
        [-0.2, 0.0, 0.05],
        atol=1e-15,
    )


def test_nothing_uncertain_has_no_range() -> None:
    truck = make_truck(grip=(0.9, 0.9, 0.9))
    found, (side,) = ranges(truck, conditions(truck, [SIDE]))
    assert side.tip == side.goes == (found.free[0], found.free[0])
    assert side.causes == ()


def test_mass_and_cg_are_moved_alone() -> None:
    truck = make_truck()
    before = whole(truck)
    heavier = whole(moved_truck(truck, 0, 0.1))
    assert heavier.mass == pytest.approx(before.mass + 0.1)
    np.testing.assert_allclose(heavier.cg, before.cg, atol=1e-15)
    for axis in (1, 2, 3):
        shifted = whole(moved_truck(truck, axis, 0.002))
        wanted = before.cg + 0.002 * np.eye(3)[axis - 1]
        np.testing.assert_allclose(shifted.cg, wanted, atol=1e-15)
        assert shifted.mass == before.mass


def test_the_demo_truck_says_what_it_is_unsure_of() -> None:
    truck = load_truck("bramble").truck
    found, (side, climb) = ranges(truck, conditions(truck, [SIDE, 0.0], "rock"))
    for one, centre in zip((side, climb), found.free, strict=True):
        assert one.tip[0] < centre < one.tip[1]
        shares = [sd for _, sd in one.causes]
        assert shares == sorted(shares, reverse=True)
    # Nobody measured how its tyres give along the ground.
    assert any("along the ground" in name for name, _ in side.causes[:4])
    # Up a slope it slides at its grip, low to high, before it tips.
    grip = truck.grips[0]
    low, high = np.tan(climb.goes)
    assert grip.low < low < grip.likely < high < grip.high
    assert climb.tips_first < 0.05
    assert climb.tip[0] > climb.goes[1]


def test_more_doubt_is_a_wider_range() -> None:
    truck = load_truck("bramble").truck
    sure = replace(truck, uncertain=())
    wide = ranges(truck, conditions(truck, [SIDE]))[1][0].tip
    narrow = ranges(sure, conditions(sure, [SIDE]))[1][0].tip
    assert wide[1] - wide[0] > 1.5 * (narrow[1] - narrow[0])


def test_grip_near_the_tip_is_a_toss_up() -> None:
    truck = make_truck()
    tip = ranges(truck, conditions(truck, [SIDE], grip=2.0))[0].free[0]
    mu = float(np.tan(tip))
    ask = Conditions(SIDE, Grip("edge", 0.8 * mu, mu, 1.2 * mu))
    _, (found,) = ranges(truck, [ask])
    assert 0.3 < found.tips_first < 0.7
    assert ranges(truck, [replace(ask, hold="rail")])[1][0].tips_first == 1.0


def test_with_more_grip_it_tips_on_its_brakes_and_not_where_a_rail_would_let_it() -> None:
    truck = load_truck("burdock").truck
    (ask,) = conditions(truck, [np.radians(135.0)], "rock")
    known = replace(truck, parts=(), uncertain=())
    found, (side,) = ranges(known, [ask])
    assert found.slides[0]
    grips = triangular_quantile((np.arange(100) + 0.5) / 100, ask.grip)
    tips = tip_pairs([known] * 100, np.full(100, ask.heading), grips)
    # Two of the grips looked at let it tip, and the way it goes with grip is a little bent.
    assert side.tips_first == pytest.approx(float((~tips.slides).mean()), abs=0.1)


def test_links_that_bind_within_their_tolerances_are_told() -> None:
    """They just close as the file has them; a millimetre aside they do not."""
    text = (demo_folder() / "thistle.toml").read_text("utf-8")
    raised = text.replace("axle_end_mm = [-4, 14, 24]", "axle_end_mm = [-4, 14, 0]")
    truck = load_text(raised, demo_folder() / "thistle.toml").truck
    with pytest.raises(InputError, match="within its tolerances the links bind"):
        ranges(truck, conditions(truck, [0.0], None))
    assert weigh_truck(truck).cg_sd[2] > 0.0  # which asks no links
