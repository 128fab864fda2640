"""Every column of every method's table says what it is."""

from __future__ import annotations

import pyarrow.parquet
import pytest

from crossfall.show.summary import summary_page
from crossfall.study.dictionary import ABOUT, describe_column
from crossfall.study.scenario import scenario_of
from crossfall.study.summary import summarize
from crossfall.study.sweep import run_scenario
from crossfall.truck.build import load_truck

DATA = {
    "name": "columns",
    "headings_deg": [90.0],
    "surface": "rock",
    "axis": [{"key": "both.track_mm", "values": [176.0]}],
    "response": [{"name": "in_hand_deg", "is": "goes_at_deg - 25"}],
}
DRIVES = {"fixed": {"slope_deg": 10.0, "speed_mm_per_s": 400.0}, "response": []}


@pytest.mark.parametrize(
    "more",
    [
        {"method": "closed form"},
        {"method": "compliant", "ranges": True},
        {"method": "tilt trial"},
        pytest.param({"method": "slope trial", **DRIVES}, marks=pytest.mark.bullet),
    ],
    ids=lambda m: m["method"],
)
def test_every_column_has_a_title_a_unit_and_a_source(more, tmp_path):
    asked = scenario_of(load_truck("bramble"), {**DATA, **more})
    done = run_scenario(asked, tmp_path, workers=1)
    schema = pyarrow.parquet.read_schema(done.files[0])
    assert schema.metadata[b"citation"].startswith(b"columns. Virtual tilt-table study")
    for field in schema:
        told = {k.decode(): v.decode() for k, v in field.metadata.items() if b":" not in k}
        assert set(told) == {"title", "unit", "source"}
        known = field.name in ABOUT or "." in field.name or told["title"] != _bare(field.name)
        assert known, f"nobody says what {field.name} is"
        if field.name.endswith("_deg"):
            assert told["unit"] == "degree"
    text = summary_page(summarize(asked, tmp_path))
    assert "Columns of the table" in text
    assert "To cite it: columns." in text


def _bare(name: str) -> str:
    return name.replace("_", " ")


@pytest.mark.parametrize("method", ["compliant", "closed form"])
def test_a_table_says_what_was_held_fast_and_on_which_ground(method, tmp_path):
    fixed = {"both.suspension.droop_mm": 10.0}
    asked = scenario_of(load_truck("bramble"), {**DATA, "method": method, "fixed": fixed})
    (row,) = pyarrow.parquet.read_table(run_scenario(asked, tmp_path).files[0]).to_pylist()
    assert row["both.suspension.droop_mm"] == 10.0
    assert method == "closed form" or row["surface"] == "rock"


@pytest.mark.bullet
def test_a_table_of_drives_says_how_steep_and_how_fast(tmp_path):
    drives = scenario_of(load_truck("bramble"), {**DATA, "method": "slope trial", **DRIVES})
    (row,) = pyarrow.parquet.read_table(run_scenario(drives, tmp_path).files[0]).to_pylist()
    assert (row["slope_deg"], row["speed_mm_per_s"]) == (10.0, 400.0)


def test_an_angle_that_no_line_has_is_a_column_of_numbers_still(tmp_path):
    asked = scenario_of(load_truck("bramble"), {**DATA, "method": "compliant"})
    table = pyarrow.parquet.read_table(run_scenario(asked, tmp_path).files[0])
    empty = [c for c in table.column_names if table[c].null_count == len(table)]
    assert {"rail_deg", "first_snap_deg"} <= set(empty)
    for name in set(empty) - {"cause"}:
        assert pyarrow.types.is_floating(table.schema.field(name).type), name


def test_intervals_are_told_by_what_they_are_of():
    assert describe_column("trial_ci_low_deg").title == "95 % interval of trial_deg, lower end"
    assert describe_column("goes_at_range_high_deg").title == "95 % range of goes_at_deg, upper end"
    assert describe_column("part.winch.mass_g").unit == "g"
    assert describe_column("part.battery pack.at_mm.z").unit == "mm"


def test_a_closed_form_of_the_truck_as_it_is_has_a_line_a_heading(tmp_path):
    data = {k: v for k, v in DATA.items() if k != "axis"} | {"method": "closed form"}
    done = run_scenario(
        scenario_of(load_truck("bramble"), data | {"headings_deg": [0, 90]}), tmp_path
    )
    rows = pyarrow.parquet.read_table(done.files[0]).to_pylist()
    assert [row["heading_deg"] for row in rows] == [0.0, 90.0]
