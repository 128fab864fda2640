"""The tip angles that everything reads: conditions, slides and rails, the weakest heading."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.answers import tips
from crossfall.answers.conditions import ASSUMED, case_name, choose_grip, conditions, one_grip
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_angles, tip_pairs, valleys, weakest
from crossfall.statics import compliant
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError
from support import make_truck

FOUR = np.radians([0.0, 90.0, 180.0, 270.0])


def test_conditions_name_their_grip() -> None:
    truck = make_truck(grip=(0.7, 0.85, 1.0))
    climb, side = conditions(truck, [0.0, np.pi / 2], "rock", hold="rail")
    assert (climb.grip.likely, side.heading, side.rail) == (0.85, np.pi / 2, True)
    assert conditions(truck, [0.0], grip=0.4)[0].grip.high == 0.4
    with pytest.raises(InputError, match="no surface 'ice'"):
        conditions(truck, [0.0], "ice")
    with pytest.raises(InputError, match="a surface and a grip"):
        conditions(truck, [0.0], "rock", grip=0.5)
    for bad in (0.0, -1.0, float("nan"), 7.0):
        with pytest.raises(InputError):
            one_grip(bad)


def test_a_file_without_surfaces_gets_an_assumption() -> None:
    from dataclasses import replace

    assert choose_grip(replace(make_truck(), grips=()), None) is ASSUMED


def test_case_names() -> None:
    assert case_name(0.0) == case_name(360.0) == "climb"
    assert case_name(90.0) == "side-hill, left side down"
    assert case_name(200.0) == "diagonal descent, right side down"


def test_where_it_slides_there_is_no_tip_but_one_against_a_rail() -> None:
    truck = make_truck()
    found = tip_angles(truck, FOUR, 0.9)
    np.testing.assert_array_equal(found.slides, [True, False, True, False])
    np.testing.assert_array_equal(np.isnan(found.tip), found.slides)
    np.testing.assert_allclose(found.goes, np.fmin(found.tip, found.slide))
    railed = compliant.tips(truck, FOUR, 0.9, rail=True).tip
    np.testing.assert_allclose(found.free[found.slides], railed[found.slides], atol=1e-11)
    asked = tip_angles(truck, FOUR, 0.9, "rail")
    np.testing.assert_allclose(asked.tip, railed, atol=1e-11)
    assert not asked.slides.any()
    assert np.isnan(asked.slide).all()


@pytest.mark.parametrize("guess", [0.0, tips.SLIDES, 9.0])
@pytest.mark.parametrize("grip", [0.4, 0.8, 5.0])
def test_a_variation_is_held_as_its_original_is(
    grip: float, guess: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whether its original was thought to slide first or not."""
    monkeypatch.setattr(tips, "SLIDES", guess)
    truck, other = make_truck(), make_truck(chassis_cg=(0.0, 0.01, 0.11))
    psi = np.tile(FOUR, 2)
    found = tip_pairs([truck] * 4 + [other] * 4, psi, grip, originals=4)
    slides = tip_angles(truck, FOUR, grip).slides
    alone, railed = tip_angles(other, FOUR, grip), tip_angles(other, FOUR, grip, "rail")
    np.testing.assert_array_equal(found.slides[:4], slides)
    wanted = np.where(slides, railed.tip, alone.tip)
    np.testing.assert_allclose(found.free[4:], wanted, rtol=0, atol=1e-11)
    asked = tip_pairs(
        [truck] * 4 + [other] * 4, psi, grip, originals=4, braked=np.ones(8, dtype=bool)
    )
    np.testing.assert_allclose(asked.tip[4:], alone.tip, rtol=0, atol=1e-11)
    np.testing.assert_allclose(asked.free, found.free, rtol=0, atol=1e-11)


def test_inputs_without_effect_are_no_causes_where_a_truck_was_thought_to_slide_first() -> None:
    """There a variation waits, and must be asked beside its original: another stack may differ in
    the last digit. Bramble tips at 40 degrees by a hair."""
    truck = load_truck("bramble").truck
    made = ranges(truck, conditions(truck, np.radians([40.0, 90.0, 105.0])))[1]
    assert all(sd > 1e-12 for one in made for _, sd in one.causes)


def test_company_does_not_matter() -> None:
    """One number: alone, among headings, among trucks."""
    trucks = [make_truck(), make_truck(tyre_stiffness=3000.0), make_truck(contact_half_width=0.01)]
    grips = np.array([0.9, 0.6, 1.1])
    together = tip_angles(trucks, FOUR, grips).free
    for i, truck in enumerate(trucks):
        np.testing.assert_allclose(tip_angles(truck, FOUR, grips[i]).free, together[i], atol=1e-9)
    pairs = tip_pairs(trucks, FOUR[:3], grips).free
    np.testing.assert_allclose(pairs, np.diagonal(together[:, :3]), atol=1e-9)


@pytest.mark.parametrize("grip", [0.8, 5.0])
def test_the_weakest_heading_against_a_scan(grip: float) -> None:
    """Every degree of the circle; the rest of the random builds is in the benchmarks."""
    u = np.random.default_rng(5).uniform
    trucks = [
        make_truck(
            tracks=(u(0.15, 0.19), u(0.15, 0.19)),
            chassis_cg=(u(-0.03, 0.03), u(-0.01, 0.01), u(0.09, 0.12)),
            spring_rate=u(150, 600),
            droop=u(0.005, 0.02),
        )
        for _ in range(3)
    ]
    headings, angles = weakest(trucks, grip)
    scan = tip_angles(trucks, np.radians(np.arange(0.0, 360.0)), grip).free.min(axis=1)
    assert (np.degrees(angles - scan) < 0.05).all()
    for truck, heading, angle in zip(trucks, headings, angles, strict=True):
        assert tip_angles(truck, [heading], grip).free[0] == pytest.approx(angle, abs=1e-9)
    near = weakest(trucks[:1], grip, like=valleys(trucks[0], grip))[1]
    assert np.degrees(near[0] - angles[0]) == pytest.approx(0.0, abs=0.03)


def test_a_stack_gives_the_very_numbers_of_its_cases_apart() -> None:
    """So that a row of a table is the same whatever it was stacked with."""
    truck = load_truck("bramble").truck
    psi = np.radians(np.arange(0.0, 360.0, 11.0))
    mu = np.linspace(0.5, 1.2, len(psi))
    stacked = tip_pairs([truck] * len(psi), psi, mu).free
    for some in (slice(4, 5), slice(0, 9), slice(20, 33)):
        apart = tip_pairs([truck] * (some.stop - some.start), psi[some], mu[some]).free
        np.testing.assert_allclose(apart, stacked[some], rtol=0, atol=1e-14)
