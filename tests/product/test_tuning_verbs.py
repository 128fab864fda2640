"""What to change, as a tuner meets it: whatif, gains, runtime, limits and plan."""

from __future__ import annotations

import json
import subprocess
import sys
from math import degrees
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from crossfall.answers.tips import tip_angles
from crossfall.cli import crossfall, main
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder

LIMITS = str(demo_folder() / "scale-trail.limits.toml")


def run(*arguments: str, expect: int = 0) -> str:
    """Standard output of a verb that must end with this status."""
    result: Result = CliRunner().invoke(
        crossfall, arguments, catch_exceptions=False, standalone_mode=False
    )
    status = result.return_value if isinstance(result.return_value, int) else result.exit_code
    assert status == expect, result.output
    return result.stdout


def answer(*arguments: str, expect: int = 0) -> dict[str, Any]:
    found = json.loads(run(*arguments, "--json", expect=expect))
    assert found["schema"] == 3
    assert found["verb"] == arguments[0]
    return found


def refused(capsys: pytest.CaptureFixture[str], monkeypatch: Any, *arguments: str) -> list[str]:
    """The lines of standard error of a call that must exit with 2."""
    monkeypatch.setattr("sys.argv", ["crossfall", *arguments])
    with pytest.raises(SystemExit) as caught:
        main()
    assert caught.value.code == 2
    return capsys.readouterr().err.splitlines()


def test_whatif_ranks_all_changes() -> None:
    found = answer("whatif", "bramble", "--aim", "climb")
    assert len(found["changes"]) == 40
    gains = [c["gain_deg"]["climb"] for c in found["changes"]]
    assert gains == sorted(gains, reverse=True)
    promised = {"mass_g", "front_share_percent", "cg_height_mm", "unsprung_g", "width_mm"}
    promised |= {"wheel_spin_inertia_kg_mm2", "breakover_deg", "approach_deg", "run_time_min"}
    promised |= {"turning_circle_mm"}
    for change in found["changes"]:
        assert promised <= change["side_effects"].keys()
        assert change["gain_pm_deg"].keys() == {"side", "climb", "descent", "worst"}
        assert change["gain_deg_at"].keys() == {c["at"] for c in found["corners"]}


def test_what_is_compared_is_what_tilt_says(tmp_path: Path) -> None:
    """One number: side, climb, descent and weakest of the truck as it is, to 1e-9 deg, on a surface
    by name, in whatif, gains and plan; and where it slides first all say so."""
    where = ("--surface", "wet rock")
    few = tmp_path / "few.toml"
    few.write_text(
        'format = 1\ntruck = "bramble"\n[[change]]\nname = "a"\nlabel = "a"\n'
        "remove = ['winch']\n",
        encoding="utf-8",
    )
    where = (*where, "--changes", str(few))
    told = answer("whatif", "bramble", *where)
    asked = [
        a for name in told["heading_deg"] for a in ("--heading", str(told["heading_deg"][name]))
    ]
    tilt = answer("tilt", "bramble", *asked, *where[:2], "--no-trial")
    by_heading = {round(h["heading_deg"], 6): h for h in tilt["headings"]}
    gains = answer("gains", "bramble", *where[:2])
    planned = answer("plan", "bramble", "--aim", "side", "--budget", "0", *where)
    for name, heading in told["heading_deg"].items():
        entry = by_heading[round(heading, 6)]
        slides = entry["compliant_deg"] is None
        angle = entry["rail_deg"] if slides else entry["compliant_deg"]
        assert told["now_deg"][name] == pytest.approx(angle, abs=1e-9)
        assert gains["angle_deg"][name] == pytest.approx(angle, abs=1e-9)
        assert told["slides_first"][name] == gains["slides_first"][name] == slides
    assert planned["now"]["value_deg"] == pytest.approx(told["now_deg"]["side"], abs=1e-9)
    assert told["surface"] == tilt["surface"] == planned["surface"] == "wet rock"
    text = " ".join(run("gains", "bramble", *where[:2], "--parts", "3").split())
    assert "It slides first on" in text
    assert "at 31°" in text


def test_whatif_says_which_changes_leave_the_class() -> None:
    limits = ("--limits", LIMITS)
    found = {c["change"]: c["breaks"] for c in answer("whatif", "bramble", *limits)["changes"]}
    assert [b["limit"] for b in found["bare cab"]] == ["details"]
    assert found["brass knuckles"] == []
    assert "outside the class: the detail 'interior' is missing" in " ".join(
        run("whatif", "bramble", *limits).split()
    )


def test_whatif_in_words() -> None:
    text = " ".join(run("whatif", "bramble").split())
    assert "degrees gained, the best first for side" in text
    assert "clear roof" in text
    assert "costs the climb" in text
    assert "on rock, grip 0.9, all wheels held: side 32.5°" in text
    assert "It slides first on the climb and the descent, at 42°" in text
    assert "if the tyres give more along the ground than assumed, 'firm foams' comes before" in text
    assert "~: another change comes before it somewhere in the range of the grip" in text


def test_gains_draws_its_map(tmp_path: Path) -> None:
    found = answer("gains", "bramble", "--plots", str(tmp_path))
    assert (tmp_path / "bramble-gains.svg").stat().st_size > 10_000
    assert found["method"] == "compliant"
    by_name = {p["name"]: p for p in found["parts"]}
    assert by_name["roof rack"]["deg_per_10g"]["side"] < 0
    assert by_name["axle housing (rear)"]["deg_per_10g"]["side"] > 0
    ends = [by_name[f"differential ({end})"] for end in ("front", "rear")]
    assert [e["end"] for e in ends] == ["front", "rear"]
    assert ends[0]["deg_per_10g"]["climb"] > 0 > ends[1]["deg_per_10g"]["climb"]
    assert by_name["cab"]["deg_per_10mm"]["z"]["side"] < 0
    assert answer("gains", "bramble", "--rigid")["method"] == "rigid"
    assert "degrees per 10 g" in run("gains", "thistle", "--parts", "3")


def test_runtime_with_and_without_changes(tmp_path: Path) -> None:
    found = answer("runtime", "bramble", "--plots", str(tmp_path))
    assert found["now"]["current_is"] == "measured"
    assert 15 < found["now"]["run_time_min"] < 30
    assert any(p["on_front"] for p in found["packs"])
    assert (tmp_path / "bramble-runtime.svg").exists()
    law = found["law"]
    assert (law["kept"], law["measured_on_cells"]) == ("power", 3)
    assert law["neglected"]
    for p in (found["now"], *found["packs"]):
        assert p["nominal_v"] == pytest.approx(p["cells"] * law["nominal_v_per_cell"])
        assert p["power_w"] == pytest.approx(p["nominal_v"] * p["current_a"])
        assert p["run_time_min"] == pytest.approx(60 * p["energy_wh"] / p["power_w"])
    alone = answer("runtime", "thistle")
    assert len(alone["packs"]) == 1
    text = " ".join(run("runtime", "bramble").split())
    assert "Minutes against degrees" in text
    assert "with more cells the current falls" in text
    assert "Left out:" in text
    assert all(p["slides_first"]["climb"] for p in found["packs"])
    aimed = found["aim"]
    for p in found["packs"]:
        bracketed = "[{:.2f}]" if p["slides_first"][aimed] else "{:.2f}"
        told = f"{bracketed.format(p['angle_deg'][aimed])} {1.96 * p['angle_sd_deg'][aimed]:.2f}"
        assert told in text  # ± is 95 % here too
    now = found["now"]
    assert f"{now['run_time_min']:.0f} ± {1.96 * now['run_time_sd_min']:.0f} min" in text
    assert "On rock, grip 0.9, all wheels held" in text


def test_runtime_on_the_surface_named_and_against_a_rail() -> None:
    found = answer("runtime", "thistle", "--surface", "wet rock", "--rail")
    assert (found["surface"], found["hold"]) == ("wet rock", "rail")
    (pack,) = found["packs"]
    assert not any(pack["slides_first"].values())
    truck = load_truck("thistle").truck
    climb = tip_angles(truck, [0.0], found["grip"], "rail").free[0]
    assert pack["angle_deg"]["climb"] == pytest.approx(degrees(climb), abs=1e-6)


def test_limits_answer_no_with_1(tmp_path: Path) -> None:
    assert answer("limits", "bramble", LIMITS)["broken"] == []
    found = answer("limits", "thistle", LIMITS, expect=1)
    assert found["broken"]
    assert all(b["words"] for b in found["broken"])
    assert "broken" in run("limits", "thistle", LIMITS, expect=1)


def test_plan_within_a_budget(tmp_path: Path) -> None:
    found = answer("plan", "bramble", "--aim", "side", "--budget", "40", "--limits", LIMITS,
                   "--plots", str(tmp_path))  # fmt: skip
    best = found["best"]
    assert best["price"] <= 40
    assert best["value_deg"] > found["now"]["value_deg"] + 3
    assert best["breaches"] == []
    assert found["closed_form"]["proven"]
    assert len(found["runners_up"]) == 5
    assert found["front"][0]["price"] == 0
    assert "proven" in found["proof"]["words"]
    assert (tmp_path / "bramble-plan.svg").exists()


def test_plan_that_cannot_be_met_exits_with_1() -> None:
    found = answer("plan", "bramble", "--aim", "side", "--reach", "80", expect=1)
    assert found["best"] is None
    text = run("plan", "bramble", "--heading", "90", "--reach", "36", "--budget", "30")
    assert "best set" in text


def test_bad_input_is_one_line_a_mistake(
    capsys: pytest.CaptureFixture[str], monkeypatch: Any, tmp_path: Path
) -> None:
    path = tmp_path / "mine.toml"
    path.write_text(
        'format = 1\ntruck = "bramble"\n[[change]]\nname = "a"\nlabel = "a"\nremove = ["cabb"]\n'
    )
    for verb in ("whatif", "plan", "gains", "runtime", "sheet"):
        (line,) = refused(capsys, monkeypatch, verb, "bramble", "--surface", "ice")
        assert "no surface 'ice'" in line
    for verb in ("whatif", "plan", "runtime"):
        (line,) = refused(capsys, monkeypatch, verb, "bramble", "--changes", str(path))
        assert line == (
            f"crossfall: {path}:6: change.a.remove[0]: there is no such part; did you mean 'cab'?"
        )
    (line,) = refused(capsys, monkeypatch, "whatif", "burdock")
    assert "there is no change file beside burdock.toml" in line
    (line,) = refused(capsys, monkeypatch, "limits", "bramble", str(tmp_path / "none.toml"))
    assert "cannot be read" in line
    (line,) = refused(capsys, monkeypatch, "plan", "bramble", "--heading", "nan")
    assert "--heading" in line
    (line,) = refused(capsys, monkeypatch, "plan", "bramble", "--front-share", "60", "40")
    assert "the lower one first" in line


def test_plan_prints_nothing_but_its_answer() -> None:
    """In a process of its own: compiled solvers print past Python."""
    call = [sys.executable, "-m", "crossfall.cli", "plan", "bramble", "--aim", "side"]
    call += ["--budget", "120", "--json"]
    done = subprocess.run(call, capture_output=True, text=True, check=True)
    assert json.loads(done.stdout)["verb"] == "plan"
    assert done.stderr == ""
