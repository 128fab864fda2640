"""The front door for Python: what a researcher types in a notebook."""

from __future__ import annotations

import doctest
import importlib
import json
import pickle
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

import crossfall
from crossfall import cli
from crossfall.front.reference import public_names
from crossfall.front.results import Result, Results

MODULES = (
    "crossfall",
    "crossfall.front.vehicle",
    "crossfall.front.studies",
    "crossfall.front.measured",
    "crossfall.front.plot",
)


def printed(*words: str) -> dict:
    done = CliRunner().invoke(cli.crossfall, [*words, "--json"])
    assert done.exit_code == 0, done.output
    return json.loads(done.stdout)


@pytest.fixture(scope="module")
def bramble() -> crossfall.Vehicle:
    return crossfall.load("bramble")


@pytest.mark.parametrize("module", MODULES)
def test_the_examples_in_the_docstrings_hold(module):
    failed, tried = doctest.testmod(importlib.import_module(module))
    assert failed == 0
    assert tried > 0 or module == "crossfall.front.plot"


def test_every_public_name_says_what_it_is():
    names = public_names()
    assert {"load", "Vehicle.tip", "sweep", "plot.tip_map", "Results.to_frame"} <= set(names)
    for name, (signature, text) in names.items():
        assert len(text.split()) >= 5, f"{name}{signature} says too little"


def test_importing_it_loads_nothing():
    code = (
        "import sys; before = set(sys.modules); import crossfall; print(*set(sys.modules) - before)"
    )
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    loaded = {name.partition(".")[0] for name in found.stdout.split()}
    assert loaded <= {"crossfall", *sys.stdlib_module_names}


def test_a_name_that_is_not_there_is_an_attribute_error():
    with pytest.raises(AttributeError, match="no attribute 'tilt_all'"):
        crossfall.tilt_all  # noqa: B018


def test_tips_are_those_of_the_command_line(bramble):
    mine = bramble.tip(heading=[0, 90, 250], surface="wet rock")
    theirs = printed(
        "tilt",
        "bramble",
        "--no-trial",
        "--surface",
        "wet rock",
        *("--heading", "0", "--heading", "90", "--heading", "250"),
    )["headings"]
    for row, wanted in zip(mine.plain(), theirs, strict=True):
        assert {k: row[k] for k in wanted} == wanted


def test_weighing_is_that_of_the_command_line(bramble):
    wanted = printed("weigh", "bramble")
    found = bramble.weigh().plain()
    assert {k: wanted[k] for k in found} == found


def test_what_ifs_are_those_of_the_command_line(bramble):
    wanted = printed("whatif", "bramble", "--aim", "climb")["changes"]
    found = bramble.what_if(aim="climb")
    assert [c["change"] for c in wanted] == list(found.change)
    assert [c["gain_deg"]["climb"] for c in wanted] == list(found.gain_aim_deg)


def test_a_trial_is_that_of_the_same_conditions(bramble):
    tried = bramble.trial(90, grip=0.9)
    asked = bramble.tip(90, grip=0.9, trial=True)
    assert (tried.trial_deg, tried.trial_ci_deg) == (asked.trial_deg, asked.trial_ci_deg)
    assert len(tried.record.theta) > 10
    assert crossfall.trial("bramble", 90, grip=0.9).trial_deg == tried.trial_deg


def test_an_edit_gives_another_truck_and_leaves_the_first(bramble):
    wider = bramble.edit({"both.track_mm": 200})
    assert (bramble.value("front.track_mm"), wider.value("rear.track_mm")) == (176.0, 200.0)
    assert wider.tip(90).rigid_deg > bramble.tip(90).rigid_deg + 2
    assert crossfall.tip("bramble", 90).rigid_deg == bramble.tip(90).rigid_deg


def test_the_weakest_heading_is_weaker_than_the_four_cases(bramble):
    assert bramble.tip("weakest").goes_at_deg < min(bramble.tip().goes_at_deg)


@pytest.mark.parametrize(
    ("how", "words"),
    [
        ({"heading": float("nan")}, "heading is nan"),
        ({"heading": "sideways"}, "heading is 'sideways'"),
        ({"heading": []}, r"heading is \[\]"),
        ({"surface": "ice"}, "no surface 'ice'"),
        ({"surface": "rock", "grip": 0.9}, "give one of them"),
        ({"grip": -1.0}, "must be above 0"),
        ({"hold": "hand"}, "brakes, rail or motor"),
        ({"trial": "slow"}, "True, False or 'quick'"),
        ({"engine": "steam"}, "bullet, mujoco or both"),
    ],
)
def test_what_cannot_be_asked_is_refused_in_a_sentence(bramble, how, words):
    with pytest.raises(crossfall.InputError, match=words):
        bramble.tip(**how)


def test_a_key_that_names_nothing_is_refused(bramble):
    with pytest.raises(crossfall.InputError, match="track"):
        bramble.edit({"front.trak_mm": 1})


def test_a_saved_truck_is_the_one_that_was_edited(bramble, tmp_path):
    edited = bramble.edit({"both.track_mm": np.float64(190)}).edit(
        {"grip.slab": {"low": 0.6, "likely": 0.7, "high": 0.9}, "front.suspension.locked": True}
    )
    path = edited.save(tmp_path / "mine.toml")
    assert edited.surfaces[-1] == "slab"
    assert crossfall.load(path).tip(90, surface="slab") == edited.tip(90, surface="slab")
    assert "# " in path.read_text()
    with pytest.raises(crossfall.InputError, match="nothing is overwritten"):
        bramble.save(path)
    bramble.save(path, overwrite=True)
    loaded = crossfall.load(path)
    assert loaded.value("rear.track_mm") == 176.0
    edited.save(path, overwrite=True)
    with pytest.raises(crossfall.InputError, match="has changed since"):
        loaded.save(tmp_path / "other.toml")
    assert not (tmp_path / "other.toml").exists()


def test_gains_are_those_of_the_command_line(bramble):
    wanted = printed("gains", "bramble", "--rigid")
    found = bramble.gains(method="rigid").plain()
    assert {k: wanted[k] for k in found} == found


def test_the_suspension_is_that_of_the_command_line(bramble):
    wanted = printed("suspension", "bramble", "--no-moves")
    found = bramble.suspension(moves=False)
    assert {k: wanted[k] for k in found} == found.plain()
    assert "roll centre, mm" in repr(found)


def test_a_plan_is_that_of_the_command_line(bramble):
    wanted = printed("plan", "bramble", "--aim", "side", "--budget", "20")
    found = bramble.plan(aim="side", budget=20)
    assert found.best.price <= 20
    assert {k: wanted[k] for k in found} == found.plain()
    assert "best value" in repr(found)


def test_results_are_frozen_and_can_be_pickled(bramble):
    one = bramble.weigh()
    with pytest.raises(AttributeError, match="frozen"):
        one.mass_g = 1
    with pytest.raises(AttributeError, match="perhaps 'mass_g'"):
        one.mas_g  # noqa: B018
    assert pickle.loads(pickle.dumps(one)) == one
    rows = bramble.tip()
    assert list(pickle.loads(pickle.dumps(rows))) == list(rows)
    assert rows[1:3].heading_deg == (90.0, 180.0)


def test_results_print_as_tables_with_units(bramble):
    lines = repr(bramble.tip()).splitlines()
    assert len(lines) == 5
    assert "compliant range, °" in lines[0]
    assert "mass, g" in repr(bramble.weigh())
    assert ">slides</td>" in bramble.tip()._repr_html_()


def test_printed_numbers_have_a_true_minus_and_a_column_one_precision():
    rows = Results(
        [
            Result({"change": "long", "price": 0.0, "climb_deg": -0.04, "side_deg": -1.25}),
            Result({"change": "light body", "price": 34.0, "climb_deg": None, "side_deg": 0.5}),
            Result({"change": "", "price": 4.0, "climb_deg": 1.1, "side_deg": 2.0}),
        ]
    )
    assert repr(rows).splitlines() == [
        "change      price  climb, °  side, °",
        "long          0.0       0.0     −1.2",
        "light body   34.0         –      0.5",
        "              4.0       1.1      2.0",
    ]


def test_a_column_that_says_nothing_is_not_printed():
    rows = Results([Result({"part": "shock", "why_not": "", "moved_mm": None, "side_deg": 1.0})])
    assert repr(rows).splitlines()[0].split() == ["part", "side,", "°"]


def test_a_trial_s_record_prints_in_a_line(bramble):
    record = bramble.trial(90, grip=0.9).record
    assert repr(record) == (
        f"Record, {len(record)} samples over {record.time[-1] - record.time[0]:.1f} s"
    )


def test_what_matters_prints_which_axis_does(bramble):
    axes = {"both.track_mm": (160, 200), "chassis.raise_mm": (-10, 10)}
    found = crossfall.sensitivity(bramble, axes, heading=[0, 90], method="closed form", samples=16)
    for said in (repr(found), found._repr_html_()):
        assert said.count("both.track_mm") == said.count("chassis.raise_mm") == 2
        assert said.index("heading") < said.index("both.track_mm")


def test_results_turn_into_data_frames_with_and_without_pandas(bramble, monkeypatch):
    rows = bramble.tip()
    names = {"heading_deg", "compliant_range_low_deg", "slide_likely_deg", "outcome"}
    frame = pytest.importorskip("pandas") and rows.to_frame()
    assert names <= set(frame.columns)
    monkeypatch.setitem(sys.modules, "pandas", None)
    table = rows.to_frame()
    assert names <= set(table.column_names)
    assert table["rigid_deg"].to_pylist() == list(rows.rigid_deg)


def test_sweeps_of_trucks_of_one_name_have_folders_of_their_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    truck = crossfall.load("bramble")
    wide = truck.edit({"both.track_mm": 190})
    asked = [(truck, [60, 90]), (wide, [60, 90]), (truck, [60, 100]), (truck, [60, 90])]
    folders = [
        crossfall.sweep(
            one, {"part.battery pack.at_mm.z": heights}, heading=90, method="closed form"
        )
        .files[0]
        .parent.resolve()
        for one, heights in asked
    ]
    assert len(set(folders)) == 3
    assert folders[0] == folders[3], "the same question finds what was done"


def test_a_sweep_of_an_edited_truck_and_its_map(bramble, tmp_path):
    lower = bramble.edit({"part.battery pack.at_mm.z": 90})
    axes = {"both.track_mm": np.array([170.0, 180.0]), "heading_deg": [80, 90]}
    found = crossfall.sweep(lower, axes, folder=tmp_path / "out", surface="rock", workers=1)
    assert found.complete
    assert [f.suffix for f in found.files] == [".parquet", ".csv"]
    asked = lower.edit({"both.track_mm": 180}).tip(90, surface="rock")
    assert found[-1].compliant_deg == pytest.approx(asked.compliant_deg, abs=1e-9)
    picture = crossfall.plot.sweep_map(found, "both.track_mm", "heading_deg")
    assert picture.save(tmp_path / "map.svg").read_text().startswith("<?xml")
    with pytest.raises(ValueError, match="no column 'width'"):
        crossfall.plot.sweep_map(found, "width", "heading_deg")


def test_a_shipped_scenario_by_name(tmp_path):
    found = crossfall.sweep("track-against-approach", folder=tmp_path)
    assert len(found) == 51 * 61
    with pytest.raises(ValueError, match="swept over axes"):
        crossfall.sweep("side-slope", heading=90)


def test_a_mistake_in_an_axis_is_refused(bramble, tmp_path):
    with pytest.raises(crossfall.InputError, match=r"both.trak_mm"):
        crossfall.sweep(bramble, {"both.trak_mm": [1, 2]}, folder=tmp_path)


def test_a_sensitivity_and_its_picture(bramble):
    axes = {"both.track_mm": (160, 200), "chassis.raise_mm": (-10, 10)}
    found = crossfall.sensitivity(bramble, axes, heading=90, method="closed form", samples=64)
    assert {a.key for a in found[0].axes} == set(axes)
    assert crossfall.plot.indices(found)._repr_png_().startswith(b"\x89PNG")


def test_a_trial_s_picture_leans_as_it_did(bramble):
    tried = bramble.trial(90, grip=0.9)
    block = crossfall.plot.tilted(bramble, 90, 30)._repr_png_()
    assert crossfall.plot.tilted(bramble, 90, 30, tried)._repr_png_() != block
    with pytest.raises(ValueError, match="table went from 0"):
        crossfall.plot.tilted(bramble, 90, 80, tried)


def test_a_page_of_one_s_own(tmp_path):
    with crossfall.plot.page("Mine", "below", xlabel="mm", legend=40) as axes:
        axes.plot([1, 2], [3, 4], color=crossfall.plot.COLOURS.trial, label="line")
    picture = crossfall.plot.Picture(axes.figure)
    assert axes.get_legend() is not None
    assert picture.save(tmp_path / "mine.png").stat().st_size > 1000


@pytest.mark.parametrize("name", ["tip_map", "budget", "drawing", "sheet", "suspension", "gains"])
def test_pictures_are_files_and_show_in_notebooks(name, bramble, tmp_path):
    draw = getattr(crossfall.plot, name)
    picture = draw(bramble) if name != "tip_map" else draw(bramble, range(0, 360, 45))
    assert picture._repr_png_().startswith(b"\x89PNG")
    assert Path(picture.save(tmp_path / f"{name}.svg")).stat().st_size > 1000
    assert "mm" in repr(picture)


def test_doubt_by_input(bramble):
    found = bramble.spread(90, surface="rock", samples=16)
    assert found.tip.low_deg < bramble.tip(90).compliant_deg < found.tip.high_deg
    assert found.tip_depends_on[0].input
    assert found.tip_depends_on[0].input in repr(found)
    assert f"tip low, °        {found.tip.low_deg:.1f}" in repr(found)


def test_the_readme_s_lines_of_python_run(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    text = (Path(__file__).resolve().parents[3] / "README.md").read_text()
    blocks = text.split("```python\n")[1:]
    assert len(blocks) == 2
    names: dict = {}
    for block in blocks:
        code = block.partition("```")[0].replace("range(160, 201, 5)", "(170, 180)")
        assert len(code.splitlines()) == 5
        code = code.replace("[0, 90, 180]", "[90]").replace(
            "heading=90,", "heading=90, samples=16,"
        )
        exec(code.replace("range(0, 181, 15)", "(80, 90)"), names)
    assert {p.name for p in Path().glob("*.svg")} == {"lower.svg", "track.svg", "matters.svg"}


def test_names_as_a_page_and_as_a_list(tmp_path):
    page = tmp_path / "names.html"
    done = CliRunner().invoke(cli.crossfall, ["names", "-o", str(page)])
    assert done.exit_code == 0
    text = page.read_text()
    assert "compliant_range_deg" in text
    assert "Vehicle.what_if(" in text
    assert "compliant_range_deg" in CliRunner().invoke(cli.crossfall, ["names"]).stdout
    assert printed("names")["keys"]["goes_at_deg"]["meaning"]


def test_what_holds_it_which_engine_and_how_carefully_are_asked_for_as_on_the_command_line(bramble):
    heading, grip = 0, 1.5
    held = bramble.edit({"chassis.held_by": "motor"}).tip(heading, grip=grip)
    motor = bramble.tip(heading, grip=grip, hold="motor", trial="quick", engine="mujoco")
    assert motor.compliant_deg == held.compliant_deg
    assert motor.compliant_deg != bramble.tip(heading, grip=grip).compliant_deg
    assert motor.trial_engine.startswith("mujoco")
    quick = bramble.trial(heading, grip=grip, hold="motor", quick=True, engine="mujoco")
    assert quick.trial_deg == motor.trial_deg
    assert crossfall.plot.budget(bramble, heading, grip=grip, hold="motor")
