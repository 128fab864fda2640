"""What `weigh` and `check` say, and with which exit status."""

from __future__ import annotations

import json
import subprocess
import sys
from math import atan, degrees
from pathlib import Path

import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall
from crossfall.statics.rigid import tip_angle
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.weight import weigh_truck


def ask(*args: str) -> dict:
    """The JSON answer of a verb."""
    run = CliRunner().invoke(crossfall, [*args, "--json"], standalone_mode=False)
    assert run.exception is None, run.output
    return json.loads(run.output)


def test_weigh_in_tuners_units():
    answer = ask("weigh", "bramble")
    body = whole(load_truck("bramble").truck)
    assert answer["schema"] == 3
    assert answer["mass_g"] == pytest.approx(body.mass * 1e3)
    assert answer["cg_mm"] == pytest.approx(list(body.cg * 1e3))
    assert sum(answer["wheel_loads_g"].values()) == pytest.approx(answer["mass_g"])
    assert sum(answer["axle_loads_g"]) == pytest.approx(answer["mass_g"])
    assert answer["sprung_g"] + sum(answer["unsprung_g"]) == pytest.approx(answer["mass_g"])
    found = weigh_truck(load_truck("bramble").truck)
    # 95 % of a normal error: 1.96 standard uncertainties.
    assert answer["cg_plus_minus_mm"] == pytest.approx(list(1960 * found.cg_sd))
    assert answer["mass_plus_minus_g"] == pytest.approx(1960 * found.mass_sd) != 0
    assert len(answer["parts"]) == 10
    assert 0 < answer["clearance"]["approach_deg"] <= 90


def test_weigh_lists_as_many_parts_as_asked():
    assert len(ask("weigh", "thistle", "--parts", "3")["parts"]) == 3
    assert ask("weigh", "thistle", "--parts", "0")["parts"] == []


def test_the_tables_hold_the_same_numbers():
    run = CliRunner().invoke(crossfall, ["weigh", "thistle"])
    answer = ask("weigh", "thistle")
    assert run.exit_code == 0, run.output
    assert f"{answer['mass_g']:.0f} ± {answer['mass_plus_minus_g']:.0f} g" in run.output
    height, pm = answer["cg_mm"][2], answer["cg_plus_minus_mm"][2]
    assert f"{height:.1f} ± {pm:.1f} mm" in run.output
    assert "± is 95 %" in run.output
    assert answer["parts"][0]["name"] in run.output


def test_weigh_tells_what_drives_it_on_each_surface():
    truck = load_truck("bramble").truck
    found = ask("weigh", "bramble")["traction"]
    assert [t["surface"] for t in found] == [g.surface for g in truck.grips]
    rock = found[0]
    both = rock["climbs_driven_deg"]["both"]
    assert both == pytest.approx([degrees(atan(mu)) for mu in rock["grip"]])
    up, down = rock["slides_nose_up_braked_deg"], rock["slides_nose_down_braked_deg"]
    assert up["front"][1] < up["rear"][1] < both[1]  # the grade loads the rear
    assert down["rear"][1] < down["front"][1] < both[1]
    assert rock["rigid_tip_nose_up_deg"] == pytest.approx(degrees(tip_angle(truck, [0.0])[0]))
    text = CliRunner().invoke(crossfall, ["weigh", "bramble"]).output
    assert f"{up['rear'][1]:.0f} ({up['rear'][0]:.0f}–{up['rear'][2]:.0f})" in text


def test_check_says_how_complete_a_file_is():
    answer = ask("check", "burdock")
    assert answer["valid"] is True
    assert answer["mass_weighed_percent"] + answer["mass_computed_percent"] == pytest.approx(100)
    assert answer["no_shape"] == ["wiring"]
    run = CliRunner().invoke(crossfall, ["check", "burdock"])
    assert "no mistakes" in run.output


def test_check_names_what_is_assumed():
    answer = ask("check", "bramble")
    basis = {one["name"]: one["basis"] for one in answer["uncertain"]}
    assert basis["front track"] == "file"
    assert basis["front lower link, height of its chassis end"] == "default"
    (assumed,) = [one for one in answer["uncertain"] if one["basis"] == "assumed"]
    assert (assumed["low"], assumed["likely"], assumed["high"]) == (0.3, 0.6, 1.0)
    assert assumed["why"]
    run = CliRunner().invoke(crossfall, ["check", "bramble"], env={"COLUMNS": "1000"})
    for sentence in (*answer["assumptions"], *answer["default_tolerances"]):
        assert sentence in run.output
    assert ask("check", "thistle")["assumptions"] == []  # measured both ways


def test_check_gives_mistakes_as_data(tmp_path: Path):
    path = tmp_path / "bad.toml"
    path.write_text("format = 3\nnmae = 'x'\n")
    run = CliRunner().invoke(crossfall, ["check", str(path), "--json"], standalone_mode=False)
    assert run.return_value == 2
    answer = json.loads(run.output)
    assert answer["valid"] is False
    assert {p["line"] for p in answer["problems"] if p["line"]} >= {1, 2}
    with pytest.raises(InputError):
        CliRunner().invoke(
            crossfall, ["check", str(path)], standalone_mode=False, catch_exceptions=False
        )


def test_bad_input_is_exit_status_2_and_a_line_each(tmp_path: Path):
    path = tmp_path / "bad.toml"
    path.write_text("format = 3\nnmae = 'x'\n")
    for verb in ("weigh", "check"):
        run = subprocess.run(
            [sys.executable, "-m", "crossfall.cli", verb, str(path)], capture_output=True, text=True
        )
        assert run.returncode == 2
        assert run.stdout == ""
        lines = run.stderr.strip().splitlines()
        assert len(lines) >= 4
        assert all(line.startswith("crossfall: ") and str(path) in line for line in lines)
        assert "did you mean 'name'" in run.stderr
