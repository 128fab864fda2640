"""The main job as a user meets it: tilt, urdf and demo on the command line."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall, main
from crossfall.trials.record import load_record
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import whole


def run(*arguments: str) -> str:
    """Standard output of a verb that must succeed."""
    result = CliRunner().invoke(crossfall, arguments, catch_exceptions=False)
    assert result.exit_code == 0, result.output
    return result.stdout


@pytest.fixture(scope="module")
def tilted(tmp_path_factory: pytest.TempPathFactory) -> tuple[dict, Path]:
    """One run of tilt with everything it writes: a side-hill and the diagonal beside it."""
    folder = tmp_path_factory.mktemp("tilt")
    text = run("tilt", "bramble", "--heading", "90", "--heading", "45", "--both-sides",
               "--plots", str(folder / "plots"), "--record", str(folder / "weakest.npz"),
               "--json")  # fmt: skip
    return json.loads(text), folder


def test_one_json_object_with_every_promised_key(tilted: tuple[dict, Path]) -> None:
    found, _ = tilted
    assert found["schema"] == 3
    assert [h["heading_deg"] for h in found["headings"]] == [90, 270, 45, 315]
    promised = {"heading_deg", "rigid_deg", "compliant_deg", "compliant_window_deg",
                "first_lift_deg", "trial_deg", "trial_ci_deg", "slide_deg", "outcome",
                "budget_deg"}  # fmt: skip
    for heading in found["headings"]:
        assert promised <= heading.keys()
        low, high = heading["compliant_window_deg"]
        assert low <= high
        # One number where friction does not decide, none where it does.
        assert (heading["compliant_deg"] is None) == heading["friction_decides"]
        assert heading["outcome"] in ("tips", "slides", "too close to call")


def test_the_budget_adds_up_from_the_rigid_answer_to_the_trial(
    tilted: tuple[dict, Path],
) -> None:
    for heading in tilted[0]["headings"]:
        budget = heading["budget_deg"]
        assert budget["rigid"] == pytest.approx(heading["rigid_deg"])
        total = budget["rigid"] + sum(budget["steps"].values())
        assert total == pytest.approx(heading["trial_deg"], abs=1e-9)


def test_the_trial_interval_holds_its_event_and_meets_its_fit(tilted: tuple[dict, Path]) -> None:
    for heading in tilted[0]["headings"]:
        low, high = heading["trial_ci_deg"]
        assert low <= heading["trial_deg"] <= high
        assert low <= heading["trial_event_deg"] <= high
        fit_low, fit_high = heading["trial_fit_ci_deg"]
        assert fit_low <= heading["trial_fit_deg"] <= fit_high
        # One that loses its balance with load left tips before the fit's angle.
        lost = heading["trial_load_left_pct"] > 0.3
        assert lost or fit_low <= high + 1e-9
        assert fit_high >= low - 1e-9


def test_pictures_and_the_record_are_written_and_listed(tilted: tuple[dict, Path]) -> None:
    found, folder = tilted
    files = [Path(f) for f in found["files"]]
    assert len(files) >= 5
    for file in files:
        assert file.stat().st_size > 1000
    record = load_record(folder / "weakest.npz")
    # The record is the weakest heading's: the table went past the angle it reports.
    weakest = min(found["headings"], key=lambda h: h["compliant_window_deg"][0])
    assert np.degrees(record.theta.max()) > weakest["trial_ci_deg"][0]


def test_the_table_for_people_shows_the_window_where_friction_decides(
    tilted: tuple[dict, Path],
) -> None:
    text = run("tilt", "bramble", "--heading", "45")
    heading = next(h for h in tilted[0]["headings"] if h["heading_deg"] == 45)
    assert heading["friction_decides"]
    low, high = heading["compliant_window_deg"]
    assert f"between {low:.1f}° and {high:.1f}°" in re.sub(r"\s+", " ", text)


def test_the_same_question_gives_the_same_bytes() -> None:
    first, second = (run("tilt", "thistle", "--heading", "180", "--json") for _ in range(2))
    assert first == second


def test_urdf_is_written_with_the_truck_s_mass(tmp_path: Path) -> None:
    file = tmp_path / "thistle.urdf"
    found = json.loads(run("urdf", "thistle", "-o", str(file), "--json"))
    masses = re.findall(r'<mass value="([^"]+)"', file.read_text())
    assert sum(map(float, masses)) == pytest.approx(found["mass_g"] / 1e3, rel=1e-9)
    assert found["mass_g"] == pytest.approx(whole(load_truck("thistle").truck).mass * 1e3)


@pytest.mark.parametrize(
    ("arguments", "expected"),
    [
        (["tilt", "bramble", "--heading", "nan"], "no heading"),
        (["tilt", "bramble", "--heading", "left"], "left"),
        (["tilt", "brambel"], "bramble"),
        (["tilt", "bramble", "--surface", "moon"], "moon"),
        (["tilted", "bramble"], "did you mean 'tilt'"),
        (["urdf", "bramble"], "--output"),
        (["urdf", "bramble", "-o", "/nowhere/at/all.urdf"], "/nowhere/at"),
    ],
)
def test_a_mistake_is_one_clear_line_and_status_2(
    arguments: list[str],
    expected: str,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(sys, "argv", ["crossfall", *arguments])
    with pytest.raises(SystemExit) as stop:
        main()
    captured = capsys.readouterr()
    assert stop.value.code == 2
    assert captured.out == ""
    lines = captured.err.strip().splitlines()
    assert len(lines) == 1
    assert lines[0].startswith("crossfall: ")
    assert expected in lines[0]


def test_a_quick_question_imports_nothing_heavy() -> None:
    code = (
        "import sys; sys.argv = ['crossfall', 'weigh', 'bramble', '--json']\n"
        "from crossfall.cli import main\n"
        "try: main()\n"
        "except SystemExit as stop: assert not stop.code\n"
        "heavy = {'pybullet', 'matplotlib', 'scipy', 'trimesh'} & set(sys.modules)\n"
        "assert not heavy, heavy"
    )
    subprocess.run([sys.executable, "-c", code], check=True, capture_output=True)


def test_the_demo_shows_three_trucks_and_writes_its_pictures(tmp_path: Path) -> None:
    text = run("demo", "--plots", str(tmp_path))
    for name in ("bramble", "thistle", "burdock"):
        assert name in text
    assert "carries people" in text
    pictures = sorted(p.name for p in tmp_path.iterdir())
    assert len(pictures) >= 5
    for picture in pictures:
        assert picture in text
