"""Columns of one's own, and builds that no other beats."""

from __future__ import annotations

import itertools
import math

import numpy as np
import pyarrow.parquet
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import crossfall
from crossfall.show.summary import figures, undrawn
from crossfall.study.responses import evaluate_expression, fault, with_responses
from crossfall.study.scenario import scenario_of
from crossfall.study.summary import summarize
from crossfall.study.sweep import run_scenario
from crossfall.study.unbeaten import unbeaten
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError

OVER = {"x": "both.track_mm", "y": "heading_deg"}
ROW = {"goes_at_deg": 32.0, "slide_deg": 42.0, "rail_deg": None, "both.track_mm": 176.0}


@pytest.mark.parametrize(
    ("expression", "value"),
    [
        ("goes_at_deg - 25", 7.0),
        ("min(goes_at_deg, slide_deg) * 2", 64.0),
        ("value('both.track_mm') / 2 - 8**0.5", 88 - math.sqrt(8)),
        ("where(slide_deg > goes_at_deg, 1, -1)", 1.0),
        ("tan_deg(45) + atan_deg(1)", 46.0),
        ("-abs(-3) + +1", -2.0),
    ],
)
def test_expressions_of_columns(expression, value):
    assert fault(expression, ROW) is None
    assert float(evaluate_expression(expression, ROW)) == pytest.approx(value)
    columns = {k: np.array([v, v], np.float64) for k, v in ROW.items() if v is not None}
    found = evaluate_expression(expression, columns) * np.ones(2)
    np.testing.assert_allclose(found, [value, value])


@pytest.mark.parametrize(
    ("expression", "words"),
    [
        ("goes_at_dg - 25", "goes_at_dg"),
        ("__import__('os').system('true')", "no function"),
        ("goes_at_deg.__class__", "attribute"),
        ("[1, 2]", "list"),
        ("lambda: 1", "lambda"),
        ("(", "no expression"),
        ("value(goes_at_deg)", "value of no column"),
        ("open('x')", "no function"),
        ("1 if tip_deg else 2", "ifexp"),
        ("9" * 600, "longer"),
        ("min(1)", "cannot be worked out"),
    ],
)
def test_what_is_no_such_expression_is_refused(expression, words):
    found = fault(expression, ROW)
    assert found is not None
    assert words in found[0]


def test_a_response_may_use_those_before_it():
    """It ended as a fault of crossfall's own, but in a closed form."""
    own = {
        "spare": "tip_deg - 25",
        "twice": "2 * spare",
        "none": "spare / 0",
        "of_none": "none + 1",
    }
    found = with_responses({"tip_deg": 32.0}, own)
    assert found == {"tip_deg": 32.0, "spare": 7.0, "twice": 14.0, "none": None, "of_none": None}


def test_what_has_no_value_has_no_response():
    row = with_responses(ROW, {"a": "rail_deg + 1", "b": "1 / (slide_deg - 42)", "c": "2"})
    assert (row["a"], row["b"], row["c"]) == (None, None, 2.0)


DATA = {
    "name": "responses",
    "headings_deg": [0.0, 90.0],
    "surface": "rock",
    "axis": [
        {"key": "both.track_mm", "values": [170.0, 180.0]},
        {"key": "part.battery pack.at_mm.z", "values": [60.0, 120.0]},
    ],
    "response": [
        {"name": "in_hand_deg", "is": "goes_at_deg - 25"},
        {"name": "wide_mm", "is": "value('both.track_mm') - 170"},
    ],
    "front": [{"aims": {"in_hand_deg": "high", "both.track_mm": "low"}}],
}


@pytest.mark.parametrize("method", ["closed form", "compliant"])
def test_they_stand_in_the_table_and_on_the_page(method, tmp_path):
    asked = scenario_of(load_truck("bramble"), {**DATA, "method": method})
    done = run_scenario(asked, tmp_path, workers=1)
    rows = pyarrow.parquet.read_table(done.files[0]).to_pylist()
    assert len(rows) == 8
    for row in rows:
        assert row["in_hand_deg"] == pytest.approx(row["goes_at_deg"] - 25)
        assert row["wide_mm"] == row["both.track_mm"] - 170
    assert len(figures(summarize(asked, tmp_path))) == 1


def test_another_expression_does_no_trial_again(tmp_path):
    truck = load_truck("bramble")
    run_scenario(scenario_of(truck, {**DATA, "method": "compliant"}), tmp_path, workers=1)
    other = {**DATA, "response": [{"name": "in_hand_deg", "is": "goes_at_deg - 20"}]}
    again = run_scenario(scenario_of(truck, {**other, "method": "compliant"}), tmp_path, workers=1)
    assert again.known == again.trials
    (first, *_) = pyarrow.parquet.read_table(again.files[0]).to_pylist()
    assert first["in_hand_deg"] == pytest.approx(first["goes_at_deg"] - 20)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"response": [{"name": "tip_deg", "is": "1"}]}, "is a column already"),
        ({"response": [{"name": "a", "is": "tip_dg"}]}, "did you mean 'tip_deg'"),
        ({"front": [{"aims": {"tip_deg": "high", "width": "low"}}]}, "'width' is no column"),
        ({"front": [{"aims": {"tip_deg": "high"}}]}, "aims"),
        ({"map": [{**OVER, "shows": "in_hnd_deg"}]}, "did you mean 'in_hand_deg'"),
        ({"front": [{"aims": {"tip_deg": "high", "mass_g": "least"}}]}, "mass_g"),
    ],
)
def test_mistakes_are_found_before_anything_runs(change, words):
    with pytest.raises(InputError, match=words):
        scenario_of(load_truck("bramble"), {**DATA, "front": [], "method": "compliant", **change})


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(*[st.integers(0, 6)] * 3), min_size=1, max_size=40), st.integers(2, 3))
def test_a_front_is_what_comparing_all_pairs_leaves(points, aims):
    wanted = dict(itertools.islice({"a": "high", "b": "low", "c": "high"}.items(), aims))
    columns = {k: np.array([float(p[i]) for p in points]) for i, k in enumerate(wanted)}
    signed = np.column_stack([v * (-1 if wanted[k] == "high" else 1) for k, v in columns.items()])
    for i, found in enumerate(unbeaten(columns, wanted)):
        beaten = ((signed <= signed[i]).all(axis=1) & (signed < signed[i]).any(axis=1)).any()
        assert found == (not beaten)


def test_lines_without_a_number_are_on_no_front():
    columns = {"a": np.array([1.0, np.nan, 3.0]), "b": np.array([1.0, 9.0, np.inf])}
    assert unbeaten(columns, {"a": "high", "b": "high"}).tolist() == [True, False, False]


def test_a_map_of_ones_own_response_is_drawn(tmp_path):
    spec = {**DATA, "method": "compliant", "front": [], "map": [{**OVER, "shows": "in_hand_deg"}]}
    scenario = scenario_of(load_truck("bramble"), spec)
    run_scenario(scenario, tmp_path, workers=1)
    morning = summarize(scenario, tmp_path)
    assert undrawn(morning) == []
    assert [f.texts[0].get_text() for f in figures(morning)] == ["In hand over track and heading"]


def test_a_map_of_ones_own_response_from_python(tmp_path):
    axes = {"both.track_mm": [170, 180, 190], "hold": ["brakes", "rail"]}
    rows = crossfall.sweep(
        "bramble", axes, heading=[80, 90, 100], folder=tmp_path, workers=1, method="compliant",
        responses={"spare_g": "mass_g * tip_deg / 30"},
    )  # fmt: skip
    made = crossfall.plot.sweep_map(rows, "both.track_mm", "heading_deg", "spare_g").figure
    assert [a.get_title(loc="left") for a in made.axes[:2]] == ["brakes", "rail"]
    assert made.axes[-1].texts[-1].get_text().endswith(" g")
    with pytest.raises(ValueError, match="no row has a number for rigid_deg"):
        crossfall.plot.sweep_map([{**r, "rigid_deg": None} for r in rows],
                                 "both.track_mm", "heading_deg", "rigid_deg")  # fmt: skip
    front = crossfall.plot.front(rows, {"tip_deg": "high", "both.track_mm": "low"}).figure
    titles = [a.get_title(loc="left") for a in front.axes]
    assert titles[:2] == ["heading 80°, brakes", "heading 80°, rail"]


def test_a_front_drawn_from_python(tmp_path):
    axes = {"both.track_mm": [170, 180, 190], "part.battery pack.at_mm.z": [60, 120]}
    rows = crossfall.sweep("bramble", axes, heading=90, folder=tmp_path, workers=1)
    for aims in (
        {"tip_deg": "high", "both.track_mm": "low"},
        {"tip_deg": "high", "both.track_mm": "low", "cg_z_mm": "high"},
    ):
        picture = crossfall.plot.front(rows, aims)
        assert picture.save(tmp_path / "front.png").stat().st_size > 5000
    with pytest.raises(ValueError, match="no column 'width'"):
        crossfall.plot.front(rows, {"width": "low", "tip_deg": "high"})
