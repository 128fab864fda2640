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

from crossfall.answers.keys import KEYS, SCHEMA, TRIAL_KEYS
from crossfall.cli import crossfall, main
from crossfall.trials.outcome import LEFT
from crossfall.trials.record import load_record
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole


def run(*arguments: str) -> str:
    """Standard output of a verb that must succeed."""
    result = CliRunner().invoke(crossfall, arguments, catch_exceptions=False)
    assert result.exit_code == 0, result.output
    return result.stdout


@pytest.fixture(scope="module")
def tilted(tmp_path_factory: pytest.TempPathFactory) -> tuple[dict, Path]:
    """One run of tilt with everything it writes: a climb, on which it slides first, a side-hill
    and the diagonal between."""
    folder = tmp_path_factory.mktemp("tilt")
    text = run("tilt", "bramble", "--heading", "90", "--heading", "45", "--both-sides",
               "--heading", "0", "--plots", str(folder / "plots"),
               "--record", str(folder / "weakest.npz"), "--json")  # fmt: skip
    return json.loads(text), folder


def by_heading(found: dict, heading: float) -> dict:
    return next(h for h in found["headings"] if h["heading_deg"] == heading)


def test_one_json_object_with_every_key_of_the_schema(tilted: tuple[dict, Path]) -> None:
    found, _ = tilted
    assert found["schema"] == SCHEMA
    assert found["surface"] == "rock"
    assert [h["heading_deg"] for h in found["headings"]] == [90, 270, 45, 315, 0]
    for heading in found["headings"]:
        assert list(heading) == [key.name for key in KEYS]
        assert heading["grip"] == found["grip_range"]["likely"]
        assert heading["outcome"] in ("tips", "slides", "too close to call")


def test_what_comes_first_is_said_in_degrees(tilted: tuple[dict, Path]) -> None:
    side, climb = (by_heading(tilted[0], h) for h in (90, 0))
    low, high = side["compliant_range_deg"]
    assert low < side["compliant_deg"] < high < side["rigid_deg"]
    assert side["goes_at_deg"] == side["compliant_deg"]
    assert side["rail_deg"] is None
    assert climb["compliant_deg"] is None
    assert climb["goes_at_deg"] == climb["slide_deg"]["likely"] < climb["rail_deg"]
    assert climb["trial_outcome"] == "slides"
    low, high = climb["trial_slide_ci_deg"]
    assert low <= climb["slide_deg"]["likely"] <= high


def test_the_budget_adds_up_from_the_rigid_answer_to_the_trial(
    tilted: tuple[dict, Path],
) -> None:
    for heading in tilted[0]["headings"]:
        steps = [s["gained_deg"] for s in heading["budget_steps"]]
        assert heading["budget_deg"]["rigid"] == heading["rigid_deg"]
        if heading["trial_outcome"] == "tips":
            total = heading["rigid_deg"] + sum(steps)
            assert total == pytest.approx(heading["trial_deg"], abs=1e-9)
        else:
            assert steps[-1] is None
            total = heading["rigid_deg"] + sum(steps[:-1])
            assert total == pytest.approx(heading["rail_deg"], abs=1e-9)


def test_the_trial_interval_meets_its_fit(tilted: tuple[dict, Path]) -> None:
    tips = [h for h in tilted[0]["headings"] if h["trial_outcome"] == "tips"]
    assert len(tips) == 4
    for heading in tips:
        low, high = heading["trial_ci_deg"]
        assert low <= heading["trial_deg"] <= high
        if heading["trial_fit_ci_deg"] is None:  # it went over with its load far from gone
            assert heading["trial_load_left_percent"] > 100 * LEFT
            continue
        fit_low, fit_high = heading["trial_fit_ci_deg"]
        assert fit_low <= heading["trial_fit_deg"] <= fit_high
        # One that loses its balance with load left tips before the fit's angle.
        lost = heading["trial_load_left_percent"] > 100 * LEFT
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
    tips = [h for h in found["headings"] if h["compliant_deg"] is not None]
    weakest = min(tips, key=lambda h: h["compliant_deg"])
    assert np.degrees(record.theta.max()) > weakest["trial_ci_deg"][0]


def test_the_table_for_people_says_the_same(tilted: tuple[dict, Path]) -> None:
    text = re.sub(
        r"\s+", " ", run("tilt", "bramble", "--heading", "90", "--heading", "0", "--no-trial")
    )
    side, climb = (by_heading(tilted[0], h) for h in (90, 0))
    low, high = side["compliant_range_deg"]
    assert f"bramble on rock, grip {side['grip']:g}" in text
    assert f"90 left down {side['rigid_deg']:.1f} {side['compliant_deg']:.1f}" in text
    assert f"left tyres at {side['compliant_deg']:.1f}° ({low:.1f} to {high:.1f})" in text
    assert f"0 climb {climb['rigid_deg']:.1f} [{climb['rail_deg']:.1f}]" in text


def test_without_a_trial_the_answer_is_the_same_and_the_engine_is_left_alone(
    tilted: tuple[dict, Path],
) -> None:
    code = (
        "import sys; sys.argv = ['crossfall', 'tilt', 'bramble', '--heading', '90', '--no-trial',"
        " '--json']\n"
        "from crossfall.cli import main\n"
        "try: main()\n"
        "except SystemExit as stop: assert not stop.code\n"
        "assert 'pybullet' not in sys.modules"
    )
    done = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True)
    (alone,) = json.loads(done.stdout)["headings"]
    assert alone["trial_outcome"] is None
    assert alone["compliant_deg"] == pytest.approx(
        by_heading(tilted[0], 90)["compliant_deg"], abs=1e-9
    )


def test_refit_says_the_kept_trial_s_numbers_again(tilted: tuple[dict, Path]) -> None:
    found, folder = tilted
    weakest = min(found["headings"], key=lambda h: h["compliant_deg"] or 99.0)
    again = json.loads(run("refit", str(folder / "weakest.npz"), "--json"))
    for key in TRIAL_KEYS:
        assert again[key.name] == weakest[key.name], key.name
    assert again["heading_deg"] == weakest["heading_deg"]
    assert again["digest"] == found["digest"]
    text = run("refit", str(folder / "weakest.npz"))
    low, high = weakest["trial_ci_deg"]
    assert f"{weakest['trial_deg']:.3f}° ({low:.3f} to {high:.3f}, 95 %)" in text
    result = CliRunner().invoke(crossfall, ["refit", str(folder / "none.npz")])
    assert isinstance(result.exception, InputError)


def test_a_quick_trial_says_so_and_its_interval_meets_the_careful_one(
    tilted: tuple[dict, Path],
) -> None:
    careful = by_heading(tilted[0], 90)
    text = run("tilt", "bramble", "--heading", "90", "--quick", "--json")
    (quick,) = json.loads(text)["headings"]
    assert (careful["trial_care"], quick["trial_care"]) == ("careful", "quick")
    assert quick["trial_ci_deg"][0] < careful["trial_deg"] < quick["trial_ci_deg"][1]
    widths = [h["trial_ci_deg"][1] - h["trial_ci_deg"][0] for h in (careful, quick)]
    assert widths[0] < widths[1]
    assert careful["trial_terms_deg"]["rest"] < quick["trial_terms_deg"]["rest"]


def test_without_bullet_the_other_engine_tries_it_out_and_that_is_said_once() -> None:
    code = (
        "import sys; sys.modules['pybullet'] = None\n"
        "sys.argv = ['crossfall', 'tilt', 'thistle', '--heading', '90', '--heading', '270',"
        " '--json']\n"
        "from crossfall.cli import main\nmain()"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert done.returncode == 0
    assert done.stderr.count("pybullet") == 1
    for heading in json.loads(done.stdout)["headings"]:
        assert heading["trial_engine"].startswith("mujoco ")
    driven = code.replace("'tilt'", "'slope'").replace(", '--heading', '270', '--json'", "")
    done = subprocess.run([sys.executable, "-c", driven], capture_output=True, text=True)
    assert done.returncode == 2
    assert done.stdout == ""
    (line,) = done.stderr.strip().splitlines()
    assert "pybullet is not installed here" in line


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
