"""`crossfall slope` from the outside."""

from __future__ import annotations

import json
import math
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from crossfall.cli import crossfall
from crossfall.study.slopes import standing_tip
from crossfall.trials.record import load_record
from crossfall.truck.build import load_truck
from numbered_files import numbered_text


def run(*words: str) -> Result:
    return CliRunner().invoke(crossfall, ["slope", *words], standalone_mode=False)


def test_a_gentle_slope_is_crossed_and_recorded(tmp_path: Path) -> None:
    kept = tmp_path / "drive.npz"
    result = run("thistle", "--slope", "15", "--speed", "400", "--record", str(kept), "--json")
    answer = json.loads(result.output)
    assert result.return_value == 0
    assert answer["schema"] == 3
    assert answer["outcome"] == "crossed"
    assert answer["heading_deg"] == 90
    assert answer["slope_deg"] == 15
    assert answer["travelled_mm"] > 600
    assert answer["least_load_g"] > 0
    record = load_record(kept)
    assert record.loads.min() * 1000 / 9.80665 == pytest.approx(answer["least_load_g"])


def test_a_slope_too_steep_is_a_no() -> None:
    result = run("burdock", "--slope", "48", "--grip", "2", "--json")
    assert result.return_value == 1
    assert json.loads(result.output)["outcome"] == "rolled over"


def test_a_low_ramp_tells_which_point_touched(tmp_path: Path) -> None:
    file = tmp_path / "numbers.toml"
    file.write_text(numbered_text("bramble"), encoding="utf-8")
    untwisted = ("--shaft-ratio", "200")  # twisted by its shafts it gets its belly past the edge
    result = run(str(file), "--ramp", "60", "--rise", "150", "--speed", "300", *untwisted, "--json")
    answer = json.loads(result.output)
    assert answer["ground"]["kind"] == "ramp"
    assert answer["ground"]["angle_deg"] == pytest.approx(60)
    assert answer["ground"]["rise_mm"] == pytest.approx(150)
    assert answer["belly_touched_at_mm"] > 0  # breakover is 55 deg
    assert answer["nose_touched_at_mm"] is None  # approach is 70 deg
    assert not answer["climbed"]


@pytest.mark.parametrize("surface", ["rock", "wet rock", "loose dirt", "tilt board"])
@pytest.mark.parametrize("grade", [30, 45, 60])
def test_a_ramp_is_climbed_where_there_is_grip_for_it(grade: int, surface: str) -> None:
    """Both axles driven need tan(grade) of grip, and its lifted front leaves none at 45 deg."""
    grip = next(g for g in load_truck("bramble").truck.grips if g.surface == surface).likely
    result = run("bramble", "--ramp", str(grade), "--surface", surface, "--json")
    answer = json.loads(result.output)
    climbs = math.tan(math.radians(grade)) < grip
    assert answer["climbed"] == climbs
    assert (answer["outcome"] == "up") == climbs == (result.return_value == 0)
    assert (answer["on_ramp_mm"] >= 313) == climbs
    if grade == 60:
        assert answer["outcome"] in ("spins", "slides", "stalls", "loops over", "tail hangs")
        assert answer["reserve_deg"] < 0


def test_the_reserve_is_that_of_the_truck_on_its_springs() -> None:
    result = run("thistle", "--slope", "30", "--heading", "90", "--json")
    answer = json.loads(result.output)
    grip = answer["grip"]
    tip = math.degrees(standing_tip(load_truck("thistle").truck, math.pi / 2, grip))
    assert answer["standing_tip_deg"] == pytest.approx(tip)
    assert answer["reserve_deg"] == pytest.approx(tip - 30)
    text = run("thistle", "--slope", "30").output
    assert f"{tip - 30:.1f}°" in text
    assert "margin" not in text


def test_the_critical_slope_is_found_and_held_against_standing() -> None:
    result = run("thistle", "--grip", "2", "--speed", "300", "--within", "1", "--json")
    answer = json.loads(result.output)
    low, high = answer["critical_ci_deg"]
    assert low <= answer["critical_deg"] <= high
    assert answer["trials"] == len(answer["outcomes"])
    assert answer["static_deg"] - answer["critical_deg"] == pytest.approx(answer["allowance_deg"])


def test_the_table_reads_like_an_answer() -> None:
    text = run("thistle", "--slope", "10", "--drive", "stop", "--speed", "300").output
    assert "climbs" in text
    assert "in reserve" in text


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--slope", "20", "--ramp", "30"], "--ramp and --slope do not go together"),
        (["--stone", "10", "--rough", "3"], "--rough and --stone do not go together"),
        (["--drive", "start"], "--drive needs --slope"),
        (["--record", "x.npz"], "--record keeps a single trial"),
        (["--slope", "20", "--heading", "nan"], "nan is no number"),
        (["--slope", "nan"], "nan is no number from 0 to 85"),
        (["--stone", "nan"], "nan is no height of a stone"),
        (["--stone", "0"], "0 is no height of a stone"),
        (["--stone=-5"], "-5 is no height of a stone"),
        (["--slope", "20", "--rise", "50"], "--rise needs --ramp"),
        (["--slope", "20", "--oblique", "20"], "--oblique needs --ramp"),
        (["--slope", "99"], "99"),
    ],
)
def test_what_does_not_fit_is_refused(words: list[str], said: str) -> None:
    result = run("thistle", *words)
    assert result.exception is not None
    assert said in getattr(result.exception, "message", str(result.exception))


def test_what_driving_leaves_out_is_said(tmp_path: Path) -> None:
    from crossfall.study.slopes import left_out
    from crossfall.truck.build import build, load_truck
    from crossfall.truck.edits import set_values

    loaded = load_truck("bramble")
    assert left_out(loaded.truck) == ()
    turned = build(set_values(loaded.spec, {"chassis.steer_deg": 10.0}), loaded.folder)[0]
    assert [said.split()[:3] for said in left_out(turned)] == [["it", "drives", "straight"]]
    file = tmp_path / "turned.toml"
    text = numbered_text("bramble")
    file.write_text(text.replace("[chassis]\n", "[chassis]\nsteer_deg = 10\n"), encoding="utf-8")
    found = run(str(file), "--slope", "10", "--json")
    assert json.loads(found.stdout)["left_out"] == list(left_out(turned))
    assert "drives straight ahead" in " ".join(run(str(file), "--slope", "10").stdout.split())
