"""Tip map, budget, load curve and pose: what is drawn is what was said."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from looks import clipped, drawn, least_size, overlaps, texts
from scipy.spatial.transform import Rotation

from crossfall.show import budget, loads, polar, tiltpose
from crossfall.show.style import SMALL, render
from crossfall.statics.rigid import tip_angle, tip_points
from crossfall.trials.tilt import tilt_trials
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, WHEELS


def angles_on(figure, gid, truck):
    """rad and rad: heading and table angle of each point drawn, read back off the paper."""
    place = polar._placement(truck)
    body = whole(truck)
    points = (drawn(figure, gid) - np.array(place.origin)) * place.scale / 1000
    ahead, left = points[:, 1] - body.cg[0], -points[:, 0] - body.cg[1]
    theta = np.arctan2(np.hypot(ahead, left), body.cg[2])
    return np.mod(np.arctan2(left, -ahead), 2 * np.pi), theta


SAID = {
    "rigid": lambda a: a.rigid,
    "compliant": lambda a: a.compliant,
    "rail": lambda a: a.rail,
    "lift": lambda a: a.first_lift,
    "trial": lambda a: a.trial.tip,
    "trial slide": lambda a: a.trial.slide,
}


@pytest.mark.parametrize("gid", SAID)
@pytest.mark.parametrize("asked", ["eight", "all_round"])
def test_map_shows_each_answer_at_its_angle(request, truck, gid, asked):
    found = request.getfixturevalue(asked)
    heading, theta = angles_on(polar.draw_polar(found, truck), gid, truck)
    shown = [a for a in found.answers if np.isfinite(SAID[gid](a))]
    assert len(shown) > 0
    assert theta == pytest.approx([SAID[gid](a) for a in shown], abs=1e-9)
    turned = np.angle(np.exp(1j * (heading - [a.conditions.heading for a in shown])))
    assert np.abs(turned).max() < 1e-9


def test_line_of_the_tip_goes_on_as_the_rails_where_the_ring_of_the_grip_is(all_round):
    found = polar.runs(all_round)
    assert [r.railed for r in found] == [True, False, True, False, True]
    slide = all_round.answers[0].slide[1]
    for before, after in pairwise(found):
        assert before.headings[-1] == after.headings[0]
        assert before.tip[-1] == pytest.approx(slide, abs=1e-12)
        assert after.tip[0] == before.tip[-1]
    assert found[-1].headings[-1] == pytest.approx(2 * np.pi)
    inside = [a for a in all_round.answers if not a.slides_first]
    drawn_inside = np.concatenate([r.tip[1:-1] for r in found if not r.railed])
    assert drawn_inside == pytest.approx([a.compliant for a in inside])


def test_a_truck_that_only_tips_has_one_line_all_round(truck, all_round):
    tips = tuple(
        replace(a, compliant=a.tip, rail=np.nan, slide=np.full(3, 1.3)) for a in all_round.answers
    )
    (one,) = polar.runs(replace(all_round, answers=tips))
    assert not one.railed
    assert len(one.headings) == len(tips) + 1
    words = [t for t, _ in texts(polar.draw_polar(replace(all_round, answers=tips), truck))]
    assert not any("against a rail" in w for w in words)


def test_rigid_answers_lie_on_the_support_polygon(truck):
    headings = np.radians(np.arange(0, 360, 7.0))
    points = polar.plumb(truck, headings, tip_angle(truck, headings))
    corners = tip_points(truck)[[0, 1, 3, 2]]
    for p in points[:, :2]:
        off = min(
            abs((b - a)[0] * (p - a)[1] - (b - a)[1] * (p - a)[0]) / np.linalg.norm(b - a)
            for a, b in zip(corners, np.roll(corners, -1, axis=0), strict=True)
        )
        assert off < 1e-9


def test_slide_ring_is_the_likely_grip(truck, eight):
    _, theta = angles_on(polar.draw_polar(eight, truck), "slide", truck)
    assert theta == pytest.approx(np.arctan(0.85), abs=1e-9)


@pytest.mark.parametrize("asked", ["eight", "all_round"])
def test_map_is_legible(request, truck, asked):
    made = polar.draw_polar(request.getfixturevalue(asked), truck)
    assert overlaps(made) == []
    assert clipped(made) == []
    assert least_size(made) >= SMALL


def test_key_stays_on_the_page_without_trials(truck, all_round):
    answers = tuple(replace(a, trial=None) for a in all_round.answers)
    made = polar.draw_polar(replace(all_round, answers=answers), truck)
    assert overlaps(made) == []
    assert clipped(made) == []


def test_weakest_heading_is_named_with_its_range(truck, eight):
    made = polar.draw_polar(eight, truck)
    least = eight.weakest
    low, high = np.degrees(least.range.tip)
    words = f"{least.case}, at {np.degrees(least.tip):.1f}° ({low:.1f} to {high:.1f})"
    assert any(words in t for t, _ in texts(made))


def test_where_it_slides_first_the_margin_says_so_and_gives_the_rails_angle(truck, eight):
    made = polar.draw_polar(eight, truck)
    climb = eight.answers[0]
    assert climb.slides_first
    (said,) = [t for t, _ in texts(made) if "nose uphill, over the tail" in t]
    assert f"slides first {np.degrees(climb.slide[1]):.1f}°" in said
    assert f"rail {np.degrees(climb.rail):.1f}°" in said


def test_map_against_a_rail_has_no_ring_of_grip(truck, eight):
    answers = tuple(
        replace(a, conditions=replace(a.conditions, hold="rail"), compliant=a.tip, rail=a.tip)
        for a in eight.answers
    )
    made = polar.draw_polar(replace(eight, answers=answers), truck)
    assert made.findobj(lambda a: a.get_gid() == "slide") == []
    words = " ".join(t for t, _ in texts(made))
    assert "on rock, grip 0.85, against a rail" in words
    assert "ring it tips" not in words
    assert overlaps(made) == []
    assert clipped(made) == []


def test_heading_without_any_tip_found_is_said_so(truck, eight):
    nan = float("nan")
    odd = eight.answers[0]
    lost = replace(
        odd,
        compliant=nan,
        rail=nan,
        range=replace(odd.range, tip=(nan, nan)),
        first_lift=nan,
        trial=None,
        budget=replace(odd.budget, compliant=nan, trial=nan),
    )
    found = replace(eight, answers=(lost, *eight.answers[1:]))
    assert any("no tip found" in t for t, _ in texts(polar.draw_polar(found, truck)))
    assert any("no tip found" in t for t, _ in texts(budget.draw_budget(found)))


def test_margins_hold_the_longest_words(truck, eight):
    made = polar.draw_polar(eight, truck)
    margin = [b for t, b in texts(made) if "side down (" in t]
    assert len(margin) == 2
    assert min(b[:, 0].min() for b in margin) > 2.0  # mm


def test_line_is_drawn_only_where_headings_are_close():
    assert polar.joined_line(np.radians(np.arange(0, 360, 5)))
    assert polar.joined_line(np.radians(np.arange(350, -10, -10)))
    assert not polar.joined_line(np.radians(np.arange(0, 360, 45)))
    assert not polar.joined_line(np.radians(np.arange(0, 90, 5)))


def test_stairs_add_up_to_the_trial_or_to_the_tip_against_a_rail(eight):
    for answer in eight.answers:
        heights = budget.levels(answer)
        tried = answer.trial.outcome == "tips"
        assert len(heights) == (6 if tried else 5)
        end = answer.budget.trial if tried else answer.rail
        assert answer.rigid + heights[-1] == pytest.approx(end)


def test_each_stair_is_as_wide_as_its_step(eight):
    made = budget.draw_budget(eight)
    for i in range(5):
        found = made.findobj(lambda a, i=i: a.get_gid() == f"step {i}")
        wide = np.array([p.get_width() for p in found])
        said = np.array([a.budget.steps[i][1] for a in eight.answers])
        said = said[np.isfinite(said)]
        assert len(wide) == len(said) > 0
        assert wide / said == pytest.approx(np.full(len(said), wide[0] / said[0]), rel=1e-6)


def test_names_of_the_stairs_are_the_budgets(eight):
    for (drawn_name, _, _), (name, _) in zip(
        budget.STAIRS, eight.answers[0].budget.steps, strict=True
    ):
        assert name.startswith(drawn_name)


def test_range_is_drawn_to_the_scale_of_the_stairs(eight):
    made = budget.draw_budget(eight)
    lines = made.findobj(lambda a: a.get_gid() == "range")
    wide = sorted(float(np.ptp(line.get_xdata())) for line in lines)
    said = [float(np.ptp(a.range.tip)) for a in eight.answers]
    first = made.findobj(lambda a: a.get_gid() == "step 0")[0]
    scale = abs(first.get_width() / eight.answers[0].budget.steps[0][1])
    assert wide == pytest.approx(sorted([5.0, *(scale * w for w in said)]))  # 5 mm in the key


def test_budget_is_legible_and_shows_the_weakest_of_many(eight, all_round):
    for found in (eight, all_round):
        made = budget.draw_budget(found)
        assert overlaps(made) == []
        assert clipped(made) == []
    least = all_round.weakest.conditions.heading
    assert any(t == f"{np.degrees(least):.0f}" for t, _ in texts(made))


def test_budget_without_a_trial_ends_at_statics(eight):
    answers = tuple(
        replace(a, trial=None, budget=replace(a.budget, trial=float("nan"))) for a in eight.answers
    )
    made = budget.draw_budget(replace(eight, answers=answers))
    assert made.findobj(lambda a: a.get_gid() == "step 4") == []
    assert any("compliant" in t for t, _ in texts(made))


@pytest.fixture(scope="module")
def tried(eight, trial):
    """The answer that the trial belongs to."""
    return replace(eight.answers[2], trial=trial)


def test_load_curve_is_the_record(truck, tried):
    made, trial = loads.draw_loads(tried, truck), tried.trial
    theta, seen = loads.until_tip(trial)
    for i, wheel in enumerate(WHEELS):
        line = drawn(made, f"whole {wheel}")
        assert line[:, 0] == pytest.approx(np.degrees(theta))
        assert line[:, 1] == pytest.approx(seen[:, i])
    assert theta[-1] <= trial.ramp
    assert drawn(made, "tip")[0, 0] == pytest.approx(np.degrees(trial.tip))


def test_fit_curve_ends_at_the_fitted_angle_with_no_load_left(truck):
    # Slipping tyres may leave load, and a tip that is soon found too few rests, and no fit.
    several = tilt_trials(truck, (np.pi / 2, 0.0, np.pi), grip=5.0)
    trial = next(one for one in several if one.fit is not None)
    angle, load = loads.fitted_loads(trial, truck, 3.0)
    assert trial.fit is not None
    assert load[0] == 0.0
    assert angle[0] == pytest.approx(trial.fit.value, abs=1e-12)
    steepness = np.diff(np.tan(angle)) / np.diff(load / np.cos(angle))
    weight = whole(truck).mass * GRAVITY
    assert steepness[0] * weight == pytest.approx(trial.fit.coefficients[1], rel=0.02)


def test_load_curve_is_legible_and_names_its_conditions(truck, tried):
    made = loads.draw_loads(tried, truck)
    words = [t for t, _ in texts(made)]
    assert any("side-hill, left side down" in t for t in words)
    assert any(t.startswith("on rock, grip 0.85; virtual trial") for t in words)
    assert overlaps(made) == []
    assert clipped(made) == []


def test_trial_without_a_tip_says_so(truck, tried):
    slid = replace(tried.trial, outcome="slides", slide=0.5, fit=None, tip=float("nan"), over=None)
    made = loads.draw_loads(replace(tried, trial=slid), truck)
    assert any("it slid away" in t for t, _ in texts(made))


def test_level_pose_leaves_the_truck_where_it_is(truck):
    pose = tiltpose.level()
    assert tiltpose.centre_of_gravity(truck, pose) == pytest.approx(whole(truck).cg)
    for solid in tiltpose.placed(truck, pose):
        assert solid.centre == pytest.approx(solid.part.centre)


def hubs(truck, pose):
    """(4, 3) m, wheel centres in table axes."""
    moves = tiltpose.motions(truck, pose)
    rows = []
    for i, wheel in enumerate(WHEELS):
        axle = truck.axles[i // 2]
        hub = np.array([axle.x, (0.5 - i % 2) * axle.track, axle.tyre.radius])
        rows.append(moves[wheel][0] @ hub + moves[wheel][1])
    return np.array(rows)


def touching(truck, pose):
    """(4, 3) m, the lowest point of each wheel's disc in table axes."""
    moves = tiltpose.motions(truck, pose)
    axes = np.array([moves[wheel][0][:, 1] for wheel in WHEELS])
    down = axes[:, 2:] * axes - np.array([0.0, 0.0, 1.0])
    radii = np.array([truck.axles[i // 2].tyre.radius for i in range(4)])
    return hubs(truck, pose) + radii[:, None] * down / np.linalg.norm(down, axis=1)[:, None]


def test_plumb_line_of_a_recorded_pose_meets_the_middle_of_the_loads(truck, trial):
    near = np.abs(trial.record.theta - (trial.tip - np.radians(1.0))) < np.radians(0.8)
    apart = []
    for at in np.flatnonzero(near):
        pose = tiltpose.recorded(trial.record, int(at))
        loads_now = trial.record.loads[at]
        cg = tiltpose.centre_of_gravity(truck, pose)
        plumb = cg[1] + cg[2] * np.tan(trial.record.theta[at])
        apart.append(plumb - touching(truck, pose)[:, 1] @ loads_now / loads_now.sum())
    assert len(apart) > 5
    assert np.mean(apart) == pytest.approx(0.0, abs=0.0005)  # m; it rocks a little, so the mean


def test_axle_moves_by_heave_along_the_leaning_axis_and_by_roll_about_its_centre(truck):
    lean, heave, roll = 0.1, 0.006, 0.05
    front = replace(truck.front, suspension=replace(truck.front.suspension, heave_lean=lean))
    leaning = replace(truck, front=front)
    tilted = Rotation.from_quat([0.1, -0.2, 0.05, 1.0]).as_matrix()
    shift = np.array([0.01, -0.02, 0.03])
    pose = tiltpose.TiltPose(
        tilted, shift, np.array([heave, 0.0]), np.array([roll, 0.0]), np.zeros((4, 3))
    )
    turn, move = tiltpose.motions(leaning, pose)["front axle"]
    s = front.suspension
    for side in (1.0, -1.0):
        mount = np.array([front.x, side * s.spring_spacing / 2, s.roll_centre_height])
        moved = tilted.T @ (turn @ mount + move - shift) - mount
        along = np.array([np.sin(lean), 0.0, np.cos(lean)])
        compression = heave + side * s.spring_spacing / 2 * np.sin(roll) * np.cos(lean)
        assert moved @ along == pytest.approx(compression)
    still, stays = tiltpose.motions(leaning, pose)["rear axle"]
    assert still == pytest.approx(tilted)
    assert stays == pytest.approx(shift)


def test_wheels_of_the_first_sample_stand_on_the_table(truck, trial):
    centres = hubs(truck, tiltpose.recorded(trial.record, 0))
    radii = [truck.axles[i // 2].tyre.radius for i in range(4)]
    assert centres[:, 2] == pytest.approx(radii, abs=2e-4)


@pytest.mark.parametrize("degrees", [0, 45, 90, 135, 180, 225, 270, 315])
def test_slope_rises_to_the_right_for_every_heading(degrees):
    heading, theta = np.radians(degrees), np.radians(30.0)
    view = tiltpose.hinge_view(heading, theta)
    uphill = np.array([[np.cos(heading), -np.sin(heading), 0.0]])
    assert view.flat(uphill)[0] == pytest.approx([np.cos(theta), np.sin(theta)])
    assert np.cross(view.right, view.up) == pytest.approx(view.toward)


def test_pose_picture_is_legible_and_the_same_each_time(truck, trial):
    at = int(np.searchsorted(trial.record.theta, trial.tip))
    args = (truck, trial.heading, trial.tip, tiltpose.recorded(trial.record, at))
    made = tiltpose.draw_tiltpose(*args, loads=trial.record.loads[at])
    assert overlaps(made) == []
    assert clipped(made) == []
    assert sum(trial.record.loads[at]) < whole(truck).mass * GRAVITY
    again = tiltpose.draw_tiltpose(*args, loads=trial.record.loads[at])
    assert render(made, "pdf") == render(again, "pdf")
