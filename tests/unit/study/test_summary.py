"""The summary of a batch and its page, on tables made by hand."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from crossfall.show.maps import MapPanel, draw_maps, plain_name
from crossfall.show.summary import draw_map, figures, gridded, summary_page
from crossfall.show.unbeaten import draw_unbeaten
from crossfall.study.scenario import load_scenario, scenario_of
from crossfall.study.scenario_file import AimsSpec, MapSpec
from crossfall.study.summary import (
    Morning,
    failures,
    heading_lines,
    input_names,
    summarize,
    surprises,
)
from crossfall.study.sweep import run_scenario
from crossfall.truck.build import build, load_truck
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError

Columns = dict[str, Any]


def trials() -> Columns:
    """Twelve trials on two headings, two of them failed."""
    n = 12
    none = np.full(n, None, object)
    cause = none.copy()
    cause[[3, 7]] = "took longer than 60 s"
    cause[5] = "NoAnswer: <b>odd</b>"
    track = np.repeat([150.0, 160.0, 170.0], 4)
    heading = np.tile([0.0, 90.0], 6)
    tip = 30.0 + track / 10 + heading / 30
    apart = np.array([0.0, 0.1, -0.3, 9, 0.2, 9, 0.0, 9, 0.05, -0.6, 0.0, 0.1])
    return {
        "place": np.arange(n),
        "scenario": np.full(n, "hand", object),
        "spec": np.full(n, "d" * 64, object),
        "method": np.full(n, "m", object),
        "seed": np.zeros(n, int),
        "versions": np.full(n, "{}", object),
        "address": np.full(n, "k", object),
        "both.track_mm": track,
        "heading_deg": heading,
        "repeat": np.zeros(n, int),
        "mass_g": np.full(n, 2000.0),
        "tip_deg": tip + apart,
        "compliant_deg": tip,
        "trial_outcome": np.where(tip < 47.5, "tips", "slides").astype(object),
        "trial_deg": tip + apart,
        "trial_ci_low_deg": tip + apart - 0.05,
        "trial_ci_high_deg": tip + apart + 0.05,
        "trial_less_compliant_deg": apart,
        "slide_deg": np.full(n, 47.5),
        "cause": cause,
    }


def good(columns: Columns) -> Any:
    return np.array([c is None for c in columns["cause"]])


def test_causes_are_counted_the_commonest_first_with_an_example() -> None:
    columns = trials()
    found = failures(columns, good(columns))
    assert [(f.cause, f.count) for f in found] == [
        ("took longer than 60 s", 2),
        ("NoAnswer: <b>odd</b>", 1),
    ]
    assert found[0].example == "both.track_mm 150, heading_deg 90"


def test_surprises_are_the_greatest_differences_of_trials_that_worked() -> None:
    columns = trials()
    found = surprises(columns, good(columns))
    assert [s.place for s in found[:3]] == [9, 2, 4]
    assert found[0].apart == pytest.approx(-0.6)
    assert not {3, 5, 7} & {s.place for s in found}


def test_headings_are_summed_up_without_failed_trials() -> None:
    columns = trials()
    climb, side = heading_lines(columns, good(columns))
    assert (climb.heading_deg, climb.lines, side.heading_deg, side.lines) == (0, 6, 90, 3)
    assert climb.least == pytest.approx(45.0 - 0.3)
    assert (climb.tips_first, side.tips_first) == (1.0, 0.0)


def test_inputs_are_what_stands_before_the_results() -> None:
    assert input_names(trials()) == ["both.track_mm", "heading_deg"]


def test_points_on_a_grid_stay_and_scattered_ones_are_binned() -> None:
    columns = trials()
    wanted = MapSpec(x="both.track_mm", y="heading_deg")
    x, y, z = gridded(columns, wanted, "compliant_deg", good(columns))
    np.testing.assert_array_equal(x, [150, 160, 170])
    np.testing.assert_array_equal(y, [0, 90])
    np.testing.assert_allclose(
        z, [[45, 46, 47], [48, np.nan, 50]]
    )  # both trials failed at 160 across
    rng = np.random.default_rng(0)
    u, v = rng.random((2, 4000))
    cloud = {"a": u, "b": v, "tip_deg": u + 10 * v}
    x, y, z = gridded(cloud, MapSpec(x="a", y="b"), "tip_deg", np.ones(4000, bool))
    np.testing.assert_allclose(z, x + 10 * y[:, None], atol=0.2)


def test_trials_that_slide_leave_their_place_empty() -> None:
    """A heading on which every trial slides is on the map's axis all the same."""
    columns = trials()
    columns["cause"] = np.full(12, None, object)
    columns["heading_deg"] = np.tile([0.0, 45.0, 90.0, 135.0], 3)
    columns["tip_deg"] = np.where(columns["heading_deg"] == 90.0, np.nan, columns["compliant_deg"])
    wanted = MapSpec(x="both.track_mm", y="heading_deg")
    tip = gridded(columns, wanted, "tip_deg", good(columns))[2]
    assert tip.shape == (4, 3)
    assert np.isnan(tip[2]).all()
    assert len(draw_map(columns, wanted)) == 1
    columns["trial_outcome"] = np.where(np.isnan(columns["tip_deg"]), "slides", "tips")
    lines = heading_lines(columns, good(columns))
    assert [line.tips_first for line in lines] == [1.0, 1.0, 0.0, 1.0]
    assert np.isnan(lines[2].greatest)


def test_maps_that_have_no_column_or_answer_are_left_out() -> None:
    columns = trials()
    assert draw_map(columns, MapSpec(x="both.track_mm", y="grip")) == []
    columns["tip_deg"] = np.full(12, np.nan)
    assert draw_map(columns, MapSpec(x="both.track_mm", y="heading_deg")) == []
    assert draw_map(columns, MapSpec(x="both.track_mm", y="heading_deg", shows="margin_mm")) == []


def test_a_map_of_ones_own_response_has_its_own_scale_and_words() -> None:
    columns = trials()
    columns["cause"] = np.full(12, None, object)
    columns["margin_mm"] = 1000.0 + 100.0 * np.arange(12)
    (made,) = draw_map(
        columns, MapSpec(x="both.track_mm", y="heading_deg", shows="margin_mm"), "bramble"
    )
    title, under = (t.get_text() for t in made.texts)
    assert title == "Margin over track and heading"
    assert under == "bramble: margin, mm; light is high"
    scale = [t.get_text() for t in made.axes[-1].texts]
    assert (scale[0], scale[-1]) == ("1100", "2000 mm")


def test_the_page_says_what_failed_and_escapes_it(tmp_path: Path) -> None:
    columns = trials()
    morning = Morning(
        load_scenario("overnight"),
        9,
        3,
        10_000,
        failures(columns, good(columns)),
        heading_lines(columns, good(columns)),
        surprises(columns, good(columns)),
        (),
        "{}",
        "d" * 64,
        4000.0,
        columns,
    )
    text = summary_page(morning)
    assert "9 of 10,000 trials have an answer" in text
    assert "9,988 are still to do" in text
    assert "NoAnswer: &lt;b&gt;odd&lt;/b&gt;" in text
    assert "1.11 h of worker time" in text
    assert "−0.60" in text
    assert text == summary_page(morning)


@pytest.mark.parametrize(("method", "said"), [("slope trial", True), ("compliant", False)])
def test_the_page_says_that_trucks_drive_straight_ahead(method: str, said: bool) -> None:
    loaded = load_truck("bramble")
    turned = set_values(loaded.spec, {"chassis.steer_deg": 10.0})
    loaded = replace(loaded, spec=turned, truck=build(turned, loaded.folder)[0])
    asked = scenario_of(loaded, {"method": method, "name": "t", "fixed": {"slope_deg": 20.0}})
    morning = Morning(asked, 12, 0, 12, (), (), (), (), "{}", "", 1.0, trials())
    assert ("Here it drives straight ahead" in summary_page(morning)) == said


def test_the_page_says_which_picture_could_not_be_drawn(tmp_path: Path) -> None:
    scenario = load_scenario("grip-against-slope")
    run_scenario(scenario, tmp_path)
    morning = summarize(scenario, tmp_path)
    few = morning.columns | {"on_slope": np.full(len(morning.columns["place"]), None, object)}
    text = summary_page(replace(morning, columns=few))
    assert "No map over grip and slope, °" in text
    assert "No map" not in summary_page(morning)


def test_fronts_compare_builds_of_one_heading_and_one_hold_on_shared_axes() -> None:
    scenario = load_scenario("overnight")
    front = AimsSpec(aims={"tip_deg": "high", "both.track_mm": "low"})
    scenario = replace(scenario, spec=scenario.spec.model_copy(update={"front": [front]}))
    columns = trials()
    columns = {
        **{k: columns[k] for k in ("place", "heading_deg")},
        "hold": np.tile(["brakes", "brakes", "rail", "rail"], 3).astype(object),
        **{k: v for k, v in columns.items() if k not in ("trial_less_compliant_deg", "slide_deg")},
    }
    columns["cause"] = np.full(12, None, object)
    made = figures(Morning(scenario, 12, 0, 12, (), (), (), (), "{}", "", 1.0, columns))
    panels = made[-1].axes
    assert [a.get_title(loc="left") for a in panels] == [
        f"heading {h}°, {hold}" for h in (0, 90) for hold in ("brakes", "rail")
    ]
    assert len({a.get_xlim() for a in panels}) == len({a.get_ylim() for a in panels}) == 1


def test_a_shade_of_one_value_has_no_scale_of_others() -> None:
    columns = {"a": np.array([1.0, 2.0]), "b": np.array([1.0, 2.0]), "c": np.full(2, 113.9)}
    aims = {"a": "high", "b": "low", "c": "low"}
    made = draw_unbeaten(columns, aims, [("", np.ones(2, bool))])
    assert list(made.axes[-1].get_yticks()) == [113.9]


def test_labels_of_contours_are_not_cut_off() -> None:
    x, y = np.array([165.0, 185.0]), np.array([90.0, 135.0])
    tip = np.array([[31.7, 35.1], [39.0, 42.5]])
    made = draw_maps("", "track, mm", "heading, °", [MapPanel("", x, y, tip)] * 6)
    made.draw_without_rendering()
    for axes in made.axes[:6]:
        frame = axes.get_window_extent()
        shown = [t for t in axes.texts if t.get_visible()]
        assert shown
        for text in shown:
            inside = text.get_window_extent()
            assert frame.x0 <= inside.x0 < inside.x1 <= frame.x1
            assert frame.y0 <= inside.y0 < inside.y1 <= frame.y1


def test_a_slope_map_has_its_three_fates(tmp_path: Path) -> None:
    scenario = load_scenario("grip-against-slope")
    run_scenario(scenario, tmp_path)
    morning = summarize(scenario, tmp_path)
    assert set(morning.columns["on_slope"]) == {"stands", "slides", "tips"}
    grip, slope = morning.columns["grip"], morning.columns["slope_deg"]
    slides = np.tan(np.radians(slope)) > grip
    first = np.where(morning.columns["tip_deg"] < np.degrees(np.arctan(grip)), "tips", "slides")
    gone = slides | (slope > morning.columns["tip_deg"])
    expected = np.where(gone, first, "stands")
    assert list(morning.columns["on_slope"]) == list(expected)
    assert summary_page(morning).count("<svg") == 1


def test_without_results_there_is_a_sentence(tmp_path: Path) -> None:
    from crossfall.show.summary import write_page

    with pytest.raises(InputError, match="no results here yet"):
        write_page(load_scenario("overnight"), tmp_path)


@pytest.mark.parametrize(
    ("column", "said"),
    [
        ("both.track_mm", "track, mm"),
        ("both.suspension.spring_n_per_mm", "suspension spring, N/mm"),
        ("part.battery pack.at_mm.z", "battery pack at z, mm"),
        ("heading_deg", "heading, °"),
        ("front_share", "front share"),
        ("grip", "grip"),
        ("speed_mm_per_s", "speed, mm/s"),
    ],
)
def test_columns_are_named_in_words(column: str, said: str) -> None:
    assert plain_name(column) == said
