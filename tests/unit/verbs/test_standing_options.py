"""--hold and --steer: the same as the keys of the file."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

from crossfall.answers.tips import tip_angles
from crossfall.cli import crossfall
from crossfall.truck.build import build, load_truck
from crossfall.truck.edits import set_values


def ask(*args: str) -> dict:
    run = CliRunner().invoke(crossfall, [*args, "--json"], standalone_mode=False)
    assert run.exception is None, run.output
    return json.loads(run.output)


def test_tilt_asks_the_truck_as_it_stands() -> None:
    import numpy as np

    how = ("--hold", "motor", "--steer", "-20", "--heading", "90", "--no-trial")
    found = ask("tilt", "bramble", *how)
    loaded = load_truck("bramble")
    spec = set_values(loaded.spec, {"chassis.held_by": "motor", "chassis.steer_deg": -20.0})
    truck, _ = build(spec, loaded.folder)
    wanted = np.degrees(tip_angles(truck, [np.pi / 2], truck.grips[0].likely).tip)
    assert found["headings"][0]["compliant_deg"] == pytest.approx(wanted[0], abs=1e-9)
    assert [said.split()[0] for said in found["stands"]] == ["held", "with"]
    plain = ask("tilt", "bramble", "--heading", "90", "--no-trial")
    assert plain["stands"] == []
    assert abs(plain["headings"][0]["compliant_deg"] - wanted[0]) > 0.1


def test_a_rail_is_a_hold_too() -> None:
    how = ("tilt", "bramble", "--heading", "0", "--no-trial")
    assert ask(*how, "--hold", "rail")["headings"] == ask(*how, "--rail")["headings"]
