"""Tip angles of sprung trucks: what the answers must obey."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics import compliant, continuation, rigid
from crossfall.statics.builds import stacked
from crossfall.statics.compliant import NO_SLIDE, CompliantTips, tips, tips_at
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck
from support import make_truck, with_suspension

EIGHT = np.radians(np.arange(0.0, 360.0, 45.0))


def varied(count: int, seed: int = 1) -> list[Truck]:
    """Trucks that differ in everything: some snap, some lean, some barely move."""
    u = np.random.default_rng(seed).uniform
    return [
        make_truck(
            tracks=(u(0.15, 0.2), u(0.15, 0.2)),
            chassis_mass=u(1.3, 2.5),
            chassis_cg=(u(-0.03, 0.03), u(-0.01, 0.01), u(0.08, 0.12)),
            tyre_stiffness=u(3000, 15000),
            spring_rate=u(200, 1500),
            bump=u(0.01, 0.02),
            droop=u(0.005, 0.03),
            anti_roll=u(0, 1),
            heave_lean=(u(-0.2, 0.2), u(-0.2, 0.2)),
            contact_half_width=u(0, 0.012),
            tangential=u(0.3, 1.0),
        )
        for _ in range(count)
    ]


@pytest.fixture(scope="module")
def twelve() -> tuple[list[Truck], CompliantTips]:
    trucks = varied(12)
    return trucks, tips(trucks, EIGHT)


def test_shapes_and_order(twelve: tuple[list[Truck], CompliantTips]) -> None:
    trucks, found = twelve
    assert found.tip.shape == found.reason.shape == (12, 8)
    assert found.lift.shape == found.slack.shape == (12, 8, 4)
    assert np.isfinite(found.tip).all()
    assert {compliant.REASONS[int(r)] for r in found.reason.ravel()} <= {"fold", "corner"}
    lifted = np.isfinite(found.lift)
    assert lifted.any()
    assert (found.lift < found.tip[..., None])[lifted].all()
    some = lifted.any(axis=-1)
    np.testing.assert_array_equal(found.first_lift[some], np.nanmin(found.lift[some], axis=-1))
    assert np.isnan(found.first_lift[~some]).all()
    assert tips(trucks[0], EIGHT).tip.shape == (8,)


def test_compliance_costs_degrees() -> None:
    """Squash, rise and lean all bring the weight nearer the edge."""
    for truck in (make_truck(), make_truck(spring_rate=900.0, droop=0.006)):
        assert (tips(truck, EIGHT).tip < rigid.tip_angle(truck, EIGHT)).all()


def test_batched_equals_single(twelve: tuple[list[Truck], CompliantTips]) -> None:
    trucks, found = twelve
    for i in (0, 11):
        alone = tips(trucks[i], EIGHT)
        np.testing.assert_allclose(alone.tip, found.tip[i], atol=1e-6)
        # Lifts met in the shortest steps are known to within those.
        np.testing.assert_allclose(alone.lift, found.lift[i], atol=1e-5)
        np.testing.assert_array_equal(alone.snaps, found.snaps[i])
    pairs = tips_at(trucks[:8], np.arange(8), EIGHT, np.full(8, NO_SLIDE))
    np.testing.assert_allclose(pairs.tip, np.diagonal(found.tip[:8]), atol=1e-6)


@pytest.mark.parametrize("grip", [5.0, 0.9])
def test_steps_hardly_matter(grip: float, monkeypatch: pytest.MonkeyPatch) -> None:
    """A fifth of a degree at a time instead of whole ones, and more."""
    trucks = varied(4)
    found = tips(trucks, EIGHT, grip)
    fine = replace(
        continuation.SETTINGS, step=0.02, largest_step=0.02, looks=np.radians(0.2), rounds=4000
    )
    monkeypatch.setattr(continuation, "SETTINGS", fine)
    apart = np.degrees(np.abs(tips(trucks, EIGHT, grip).tip - found.tip))
    assert np.median(apart) < 0.003
    assert apart.max() < 0.05


@pytest.mark.parametrize("grip", [5.0, 0.9])
def test_mirror_left_and_right(grip: float) -> None:
    left = make_truck(chassis_cg=(-0.01, 0.006, 0.105), spring_rate=700.0, droop=0.008)
    right = make_truck(chassis_cg=(-0.01, -0.006, 0.105), spring_rate=700.0, droop=0.008)
    a, b = tips(left, EIGHT, grip), tips(right, -EIGHT, grip)
    np.testing.assert_allclose(a.tip, b.tip, atol=1e-6)
    np.testing.assert_allclose(a.lift, b.lift[:, [1, 0, 3, 2]], atol=1e-6)


def test_mirror_front_and_back() -> None:
    forward = make_truck(chassis_cg=(-0.015, 0, 0.1), tracks=(0.16, 0.18), heave_lean=(0.1, -0.2))
    backward = make_truck(chassis_cg=(0.015, 0, 0.1), tracks=(0.18, 0.16), heave_lean=(0.2, -0.1))
    a, b = tips(forward, EIGHT), tips(backward, np.pi - EIGHT)
    np.testing.assert_allclose(a.tip, b.tip, atol=1e-8)


def test_size_does_not_matter() -> None:
    """Lengths x 10, and stiffnesses so that everything deflects in proportion: same angles."""
    small = make_truck(spring_rate=500.0, anti_roll=0.2)
    f, mass = 10.0, 1.9
    large = make_truck(
        wheelbase=0.313 * f,
        tracks=(0.17 * f, 0.17 * f),
        chassis_mass=mass,
        chassis_cg=(-0.01 * f, 0.0, 0.11 * f),
        radius=0.057 * f,
        tyre_stiffness=6000.0 / f,
        spring_rate=500.0 / f,
        spring_spacing=0.11 * f,
        roll_centre_height=0.075 * f,
        bump=0.02 * f,
        droop=0.025 * f,
        anti_roll=0.2 * f,
    )
    np.testing.assert_allclose(tips(large, EIGHT).tip, tips(small, EIGHT).tip, atol=1e-9)


@pytest.mark.parametrize("half_width", [0.0, 0.012])
def test_stiff_trucks_tip_at_the_rigid_angle(half_width: float) -> None:
    """Everything some thirty times stiffer still: the difference falls in proportion."""
    worst = []
    for factor in (30.0, 1000.0):
        truck = make_truck(
            tyre_stiffness=6000.0 * factor,
            spring_rate=300.0 * factor,
            bump=0.01 / factor,
            droop=0.01 / factor,
            contact_half_width=half_width,
            tracks=(0.17, 0.18),
            chassis_cg=(-0.01, 0.004, 0.11),
        )
        difference = tips(truck, EIGHT).tip - rigid.tip_angle(truck, EIGHT)
        worst.append(np.degrees(np.abs(difference)).max())
    assert worst[1] < 0.02
    assert worst[1] == pytest.approx(worst[0] * 30 / 1000, rel=0.2)


def test_locked_is_the_limit_of_stiff_springs() -> None:
    locked = tips(make_truck(locked=True), EIGHT).tip
    hard = make_truck(spring_rate=1e8, bump=1e-7, droop=1e-7)
    np.testing.assert_allclose(np.degrees(tips(hard, EIGHT).tip), np.degrees(locked), atol=1e-4)


def test_stops_are_stiff_enough() -> None:
    """The stops stand for metal on metal: three times stiffer ones change nothing to speak of."""
    truck = make_truck(spring_rate=500.0, droop=0.006, bump=0.006)
    usual, stiffer = (
        compliant.tips_of_builds(stacked([truck] * 8, stop_ratio=ratio), EIGHT, np.full(8, 0.9))
        for ratio in (100.0, 300.0)
    )
    assert np.isfinite(usual.droop_stop).any()
    np.testing.assert_allclose(np.degrees(usual.tip), np.degrees(stiffer.tip), atol=0.05)


def test_springs_that_go_slack_snap_and_the_truck_stands_again() -> None:
    """Push-only springs with droop travel beyond their free length: the first loss is no tip."""
    truck = make_truck(chassis_cg=(-0.01, 0.0, 0.1))
    found = tips(truck, np.radians([0.0, 180.0]))
    assert found.snaps.tolist() == [1, 1]
    assert (np.degrees(found.tip - found.first_snap) > 9.0).all()
    np.testing.assert_allclose(
        found.first_snap, np.nanmax(found.slack, axis=-1), atol=np.radians(0.5)
    )
    short = tips(with_suspension(truck, droop=0.012), np.radians([0.0, 180.0]))
    assert short.snaps.tolist() == [0, 0]
    assert (short.tip > found.tip).all()  # tight droop limits keep the body down


def test_wheels_lift_before_the_tip_on_a_diagonal() -> None:
    found = tips(make_truck(spring_rate=600.0, droop=0.01), np.radians([135.0, 225.0]))
    early = np.degrees(found.tip - found.first_lift)
    assert (early > 0.5).all()
    assert np.isfinite(found.lift[0, 3])  # the rear right wheel, uphill of both
    assert np.isfinite(found.lift[1, 2])


def test_it_slides_as_a_whole_at_its_grip() -> None:
    """Every wheel held, one grip: nothing stands past atan(mu), whatever its heading."""
    truck = make_truck(chassis_cg=(-0.01, 0.003, 0.07))
    for mu in (0.3, 0.5, 0.7):
        found = tips(truck, EIGHT, mu)
        np.testing.assert_allclose(found.tip, np.arctan(mu), atol=1e-3)
        assert {compliant.REASONS[int(r)] for r in found.reason} == {"stands"}


def test_against_a_rail_it_tips_instead() -> None:
    """The rail takes what the tyres cannot: on little grip the truck tips as if it could not
    slide. The grip of the uphill tyres still counts, where they pull it about."""
    truck = make_truck(chassis_cg=(-0.01, 0.003, 0.09))
    held = tips(truck, EIGHT, 5.0).tip
    railed = tips(truck, EIGHT, 0.4, rail=True)
    assert (railed.tip > np.arctan(0.4) + 0.1).all()
    square = np.arange(0, 8, 2)
    np.testing.assert_allclose(railed.tip[square], held[square], atol=np.radians(2.5))


def test_tyres_that_give_along_the_ground_cost_degrees() -> None:
    """The weight moves over its support by T / k: about cos^2(theta) T / (k h) of tip."""
    side = np.radians([90.0])
    lost = []
    for ratio in (1e3, 1.0, 0.5):
        truck = make_truck(locked=True, tangential=ratio, chassis_cg=(-0.01, 0.0, 0.11))
        lost.append(float(tips(truck, side, 5.0).tip[0]))
    theta, body = lost[0], whole(make_truck())
    moves = body.mass - 2 * 0.13  # all but the wheels that stand on their patches
    give = moves * GRAVITY * np.sin(theta) / 2 / 6000.0  # of each of the two that stay down
    expected = np.cos(theta) ** 2 * give * moves / body.mass / body.cg[2]
    assert lost[0] - lost[1] == pytest.approx(expected, rel=0.05)
    assert lost[0] - lost[2] == pytest.approx(2 * expected, rel=0.05)


def test_a_wider_tyre_helps_only_if_it_is_stiff() -> None:
    side = np.radians([90.0])

    def gain(stiffness: float) -> float:
        wide, narrow = (
            make_truck(contact_half_width=w, tyre_stiffness=stiffness, locked=True)
            for w in (0.012, 0.0)
        )
        return float(np.degrees(tips(wide, side).tip - tips(narrow, side).tip)[0])

    promised = np.degrees(
        rigid.tip_angle(make_truck(contact_half_width=0.012), side)
        - rigid.tip_angle(make_truck(), side)
    )[0]
    assert gain(4e6) == pytest.approx(promised, rel=0.02)
    assert gain(4e3) < 0.3 * promised


def test_a_batch_is_worth_it() -> None:
    """72 headings together against one at a time, same machine, same moment."""
    truck = make_truck()
    headings = np.linspace(0.0, 2 * np.pi, 72, endpoint=False)
    tips(truck, headings[:2])

    def cost(run: Callable[[], object]) -> float:
        begin = time.process_time()
        run()
        return time.process_time() - begin

    together = min(cost(lambda: tips(truck, headings)) for _ in range(2)) / 72
    alone = cost(lambda: [tips(truck, h) for h in headings[:8]]) / 8
    assert alone > 5 * together
