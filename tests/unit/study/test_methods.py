"""A scenario's rows: the one answer under its keys, whatever is answered beside it."""

from __future__ import annotations

from pathlib import Path
from typing import Any, get_args

import numpy as np
import pytest

from crossfall.answers.answer import answer
from crossfall.answers.conditions import conditions
from crossfall.answers.keys import record
from crossfall.engines.held import engine_version
from crossfall.study import methods
from crossfall.study.methods import ahead, compliant_rows, tilt_rows
from crossfall.study.scenario import Scenario, load_scenario
from crossfall.study.scenario_file import MethodName
from crossfall.study.sweep import batch_of
from crossfall.study.task import find_method, perform
from crossfall.study.versions import versions_of
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from support import INSTALLED

FILE = """
name = "s"
truck = "bramble"
method = "compliant"
headings_deg = [0, 60]
[[axis]]
key = "both.track_mm"
values = [160, 180]
"""


def scenario(folder: Path, text: str = "", first: str = "") -> Scenario:
    path = folder / "s.toml"
    path.write_text(first + FILE + text)
    return load_scenario(path)


def asked_of(one: Scenario) -> tuple[dict[str, Any], list[dict[str, Any]]]:
    batch = batch_of(one)
    return {**batch.common, **batch.local}, [t.payload for t in batch.tasks()]


def rows_of(one: Scenario, method: Any = compliant_rows) -> list[dict[str, Any]]:
    common, payloads = asked_of(one)
    ahead(common, payloads)
    return [method(common, payload)[0] for payload in payloads]


def test_a_row_is_the_one_answer_under_its_keys(tmp_path: Path) -> None:
    one = scenario(tmp_path, "[fixed]\nslope_deg = 35\n", 'surface = "wet rock"\n')
    rows = iter(rows_of(one))
    for track in (160.0, 180.0):
        edits = {"both.track_mm": track}
        truck = build(set_values(one.loaded.spec, edits), one.loaded.folder)[0]
        asked = conditions(truck, np.radians([0.0, 60.0]), "wet rock")
        for found in answer(truck, asked, trial=False).answers:
            said, row = record(found), next(rows)
            for key in ("rigid_deg", "compliant_deg", "rail_deg", "goes_at_deg", "grip"):
                assert row[key] == pytest.approx(said[key], abs=1e-9), key
            for key in ("first_lift_deg", "first_snap_deg"):
                assert row[key] == pytest.approx(said[key], abs=1e-6), key
            assert (row["hold"], row["over"]) == ("brakes", said["over"])
            assert row["slide_deg"] == pytest.approx(said["slide_deg"]["likely"])
            assert row["first"] == ("slides" if found.slides_first else "tips")
            assert row["tip_deg"] == pytest.approx(np.degrees(found.tip), abs=1e-9)
            gone = row["goes_at_deg"] <= 35.0
            assert row["on_slope"] == (row["first"] if gone else "stands")


def test_ranges_come_where_they_are_asked_for(tmp_path: Path) -> None:
    one = scenario(tmp_path, first="ranges = true\n")
    climb, side, *_ = rows_of(one)
    truck = build(set_values(one.loaded.spec, {"both.track_mm": 160.0}), one.loaded.folder)[0]
    asked = conditions(truck, np.radians([0.0, 60.0]))
    for row, found in zip((climb, side), answer(truck, asked, trial=False).answers, strict=True):
        said = record(found)
        for key in ("compliant", "rail", "goes_at"):
            ends = [row[f"{key}_range_{end}_deg"] for end in ("low", "high")]
            assert ends == pytest.approx(said[f"{key}_range_deg"] or [None, None], abs=1e-6)
        assert row["outcome"] == said["outcome"]
        assert row["tips_first_share"] == pytest.approx(said["tips_first_share"], abs=1e-3)
        slides = [row[f"slide_range_{end}_deg"] for end in ("low", "high")]
        assert slides == pytest.approx([said["slide_deg"][end] for end in ("low", "high")])
    assert climb["compliant_range_low_deg"] is None
    assert side["rail_range_low_deg"] is None


def test_a_row_hangs_on_nothing_that_was_answered_with_it(tmp_path: Path) -> None:
    one = scenario(tmp_path)
    together = rows_of(one)
    common, payloads = asked_of(one)
    for payload, row in zip(payloads, together, strict=True):
        methods._solved.clear()
        alone = compliant_rows(common, payload)[0]
        assert alone.keys() == row.keys()
        for key, value in alone.items():
            close = pytest.approx(value, abs=1e-9) if isinstance(value, float) else value
            assert row[key] == close, key


def test_a_build_that_is_no_truck_spoils_no_other(tmp_path: Path) -> None:
    one = scenario(tmp_path, '[[axis]]\nkey = "part.battery pack.at_mm.x"\nvalues = [0, -3000]\n')
    common, payloads = asked_of(one)
    ahead(common, payloads)
    done = [perform(compliant_rows, common, p) for p in payloads]
    assert sum(bool(rows) for rows, _, _ in done) == 4
    causes = {cause.split(":")[0] for _, cause, _ in done if cause}
    assert causes == {"InputError"}


def test_against_a_rail_there_is_no_slide(tmp_path: Path) -> None:
    for row in rows_of(scenario(tmp_path, first='hold = "rail"\n')):
        assert row["slide_deg"] is None
        assert row["first"] == "tips"
        assert row["compliant_deg"] == row["rail_deg"] == row["goes_at_deg"] == row["tip_deg"]


def test_a_grip_given_as_a_number_is_the_grip(tmp_path: Path) -> None:
    rows = rows_of(scenario(tmp_path, '[[axis]]\nkey = "grip"\nvalues = [0.5, 5]\n'))
    by_grip = {(r["grip"], i % 2): r for i, r in enumerate(rows[:4])}
    assert by_grip[0.5, 1]["first"] == "slides"
    assert by_grip[0.5, 1]["slide_deg"] == pytest.approx(np.degrees(np.arctan(0.5)))
    assert by_grip[5.0, 1]["first"] == "tips"


def test_a_trial_has_the_statics_of_its_conditions_beside_it(tmp_path: Path) -> None:
    one = scenario(tmp_path)
    static = rows_of(one)[1]
    common, payloads = asked_of(one)
    (row,) = tilt_rows({**common, "method": "tilt trial"}, payloads[1])
    for key in ("compliant_deg", "rail_deg", "goes_at_deg", "grip", "hold", "first_lift_deg"):
        assert row[key] == pytest.approx(static[key], abs=1e-9), key
    assert row["trial_outcome"] == "tips"
    assert row["tip_deg"] == row["trial_deg"]
    assert row["trial_ci_low_deg"] < row["trial_deg"] < row["trial_ci_high_deg"]
    apart = row["trial_deg"] - row["compliant_deg"]
    assert row["trial_less_compliant_deg"] == apart
    assert abs(apart) < 0.3


def test_a_row_says_which_engine_tried_it(tmp_path: Path) -> None:
    common, payloads = asked_of(scenario(tmp_path))
    common = {**common, "method": "tilt trial"}
    for engine in INSTALLED:
        (row,) = tilt_rows({**common, "engine": engine}, payloads[1])
        assert row["trial_engine"] == engine_version(engine)
        (quick,) = tilt_rows({**common, "engine": engine, "trial": "quick"}, payloads[1])
        assert quick["trial_ci_low_deg"] < row["trial_deg"] < quick["trial_ci_high_deg"]
    assert versions_of("tilt trial", ["mujoco"])["mujoco"] != "absent"
    assert "pybullet" not in versions_of("tilt trial", ["mujoco"])


def test_where_no_surface_is_named_it_is_the_first_of_the_file(tmp_path: Path) -> None:
    one = scenario(tmp_path)
    first = one.loaded.truck.grips[0]
    assert {r["grip"] for r in rows_of(one)} == {first.likely}


@pytest.mark.parametrize("method", [m for m in get_args(MethodName) if m != "closed form"])
def test_every_method_is_found_under_the_name_a_batch_gives_it(method: str, tmp_path: Path) -> None:
    fixed = "[fixed]\nslope_deg = 20\n" if method == "slope trial" else ""
    path = tmp_path / "s.toml"
    path.write_text(FILE.replace('"compliant"', f'"{method}"') + fixed)
    batch = batch_of(load_scenario(path))
    assert find_method(batch.method).__module__ == methods.__name__
