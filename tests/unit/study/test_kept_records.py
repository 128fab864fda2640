"""Records of the trials that a scenario asks to keep."""

from __future__ import annotations

import csv
import math
from pathlib import Path

import pytest

from crossfall.engines import held
from crossfall.study.methods import _kept
from crossfall.study.scenario import load_scenario
from crossfall.study.sweep import batch_of, run_scenario
from crossfall.trials.record import load_record
from crossfall.trials.saved import load_trial
from crossfall.truck.errors import InputError

TILT = """\
name = "kept"
truck = "thistle"
method = "tilt trial"
trial = "quick"
headings_deg = [90]
keep = "value(\\"both.track_mm\\") > 170"
[fixed]
grip = 1.5
[[axis]]
key = "both.track_mm"
values = [160, 180]
"""
DRIVE = """\
name = "kept drives"
truck = "thistle"
method = "slope trial"
headings_deg = [90]
keep = "stone_mm"
[fixed]
slope_deg = 10
speed_mm_per_s = 400
[[axis]]
key = "stone_mm"
values = [0, 10]
"""


def rows_of(folder: Path, text: str) -> list[dict[str, str]]:
    (folder / "s.toml").write_text(text)
    run_scenario(load_scenario(folder / "s.toml"), folder / "out", workers=1)
    with (folder / "out" / "table.csv").open() as stream:
        return list(csv.DictReader(stream))


def test_a_row_names_the_record_from_which_its_angle_follows_again(tmp_path: Path) -> None:
    left, kept = rows_of(tmp_path, TILT)
    assert left["record"] == ""
    trial = load_trial(tmp_path / "out" / kept["record"])
    assert math.degrees(trial.tip) == pytest.approx(float(kept["trial_deg"]), abs=1e-9)
    assert len(list((tmp_path / "out" / "records").iterdir())) == 1


def test_trials_of_different_questions_have_records_of_different_names(tmp_path: Path) -> None:
    names: list[str] = []
    asked = ("", 'hold = "rail"\n', 'surface = "rock"\n', "tolerances = true\n", "ranges = true\n")
    asked += ('engine = "mujoco"\n',) if held.usual_engine() == "bullet" else ()  # else no other
    text = TILT.replace("[fixed]\ngrip = 1.5\n", "")
    for words in (*asked, ""):
        (tmp_path / "s.toml").write_text(text.replace("keep =", f"{words}keep ="))
        batch = batch_of(load_scenario(tmp_path / "s.toml"), tmp_path / "out")
        *_, last = batch.tasks()
        common = {**batch.common, **batch.local}
        _kept(common, last.payload, {}, lambda path: names.append(path.name))
    assert len(set(names)) == len(asked)
    assert names[0] == names[-1]


def test_nothing_is_begun_where_trucks_cannot_be_driven(tmp_path: Path, monkeypatch) -> None:
    monkeypatch.setattr(held, "installed", lambda engine: engine != "bullet")
    with pytest.raises(InputError, match="pybullet is not installed here, and trucks are driven"):
        rows_of(tmp_path, DRIVE)
    assert not (tmp_path / "out").exists()


@pytest.mark.bullet
def test_drives_are_kept_too(tmp_path: Path) -> None:
    left, kept = rows_of(tmp_path, DRIVE)
    assert left["record"] == ""
    record = load_record(tmp_path / "out" / kept["record"])
    least = 1000 * record.loads.min() / 9.80665
    assert least == pytest.approx(float(kept["least_load_g"]))


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (('"tilt trial"\ntrial = "quick"', '"compliant"'), "keep: has no use in compliant"),
        (('keep = "value(\\"both.track_mm\\") > 170"', 'keep = "tip_dge"'), "which is no column"),
    ],
)
def test_what_cannot_be_kept_is_said(tmp_path: Path, change: tuple[str, str], said: str) -> None:
    (tmp_path / "s.toml").write_text(TILT.replace(*change))
    with pytest.raises(InputError) as caught:
        load_scenario(tmp_path / "s.toml")
    assert said in str(caught.value.problems[0])
