"""What to change, as a tuner meets it: whatif, gains, runtime, limits and plan."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from crossfall.cli import crossfall, main
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
    assert found["schema"] == 2
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
        assert change["gain_sd_deg"].keys() == {"side", "climb", "descent", "worst"}


def test_whatif_says_which_changes_leave_the_class() -> None:
    limits = ("--limits", LIMITS)
    found = {c["change"]: c["breaks"] for c in answer("whatif", "bramble", *limits)["changes"]}
    assert [b["limit"] for b in found["bare cab"]] == ["details"]
    assert found["brass knuckles"] == []
    assert "outside the class: the detail 'interior' is missing" in " ".join(
        run("whatif", "bramble", *limits).split()
    )


def test_whatif_in_words() -> None:
    text = run("whatif", "bramble")
    assert "ranked by side" in text
    assert "clear roof" in text
    assert "costs the climb" in text.replace("\n", " ")


def test_gains_draws_its_map(tmp_path: Path) -> None:
    found = answer("gains", "bramble", "--plots", str(tmp_path))
    assert (tmp_path / "bramble-gains.svg").stat().st_size > 10_000
    assert found["method"] == "compliant"
    by_name = {p["name"]: p for p in found["parts"]}
    assert by_name["roof rack"]["deg_per_10g"]["side"] < 0
    assert by_name["axle housing"]["deg_per_10g"]["side"] > 0
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
