"""`crossfall fit` writes a new file with changes made and comments kept, and nothing else."""

from __future__ import annotations

import json
import shutil
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner

from crossfall.truck.build import load_truck
from crossfall.truck.demos import find_demo
from crossfall.truck.errors import InputError
from crossfall.tuning.apply import apply
from crossfall.tuning.changes import change_file_of, read_changes
from crossfall.verbs.fit import command

SLOT = """
[[change]]
name = "slot"
slide = [{ part = "tool box", along_mm = [0, 0, -30] }]
"""


@pytest.fixture
def truck(tmp_path: Path) -> Path:
    """A copy of a demo with its changes, and a slot among them."""
    demo = find_demo("bramble")
    assert demo is not None
    path = tmp_path / "mine.toml"
    shutil.copy(demo, path)
    changes = change_file_of(demo).read_text(encoding="utf-8")
    change_file_of(path).write_text(changes + SLOT, encoding="utf-8")
    return path


def run(*words: str | Path) -> Any:
    return CliRunner().invoke(command, [str(w) for w in words], standalone_mode=False)


def test_the_new_file_is_the_changed_truck_with_its_comments(truck: Path) -> None:
    before = truck.read_bytes()
    out = truck.with_name("lower.toml")
    found = run(truck, "tray lower", "no spare", "slot=50%", "-o", out, "--json")
    assert found.return_value == 0, found.output
    assert truck.read_bytes() == before
    text = out.read_text(encoding="utf-8")
    assert text.startswith("# Fitted: ")
    assert "slid by [0, 0, -15] mm" in text.splitlines()[0]
    old, new = load_truck(truck), load_truck(out)
    catalogue = read_changes(change_file_of(truck))
    wanted = {catalogue.position("tray lower"): 1, catalogue.position("no spare"): 1}
    spec = apply(old.spec, catalogue, wanted | {catalogue.position("slot"): 5})
    assert new.spec == spec
    kept = [line for line in truck.read_text().splitlines() if "#" in line]
    assert all(line in text for line in kept)
    told = json.loads(found.stdout)
    assert told["price"] == sum(c["price"] for c in told["changes"])
    assert told["added_mass_g"] == pytest.approx(-154)


def test_a_slot_without_a_place_gets_the_best_one(truck: Path) -> None:
    found = run(truck, "slot", "--json")
    (change,) = json.loads(found.stdout)["changes"]
    assert change["quantity"] == 10  # lower is always better for the weakest heading
    assert truck.with_name("mine.fitted.toml").exists()
    with pytest.raises(InputError, match="is there already"):
        raise run(truck, "slot").exception


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["tray lowr"], "did you mean 'tray lower'"),
        (["tray lower=2"], "1 to 1 times"),
        (["tray lower=x"], "a whole number"),
        (["slot=35%"], "tenths of its way"),
        (["tray lower", "tray lower"], "named twice"),
        (["no spare", "spare inside"], "do not go together"),
        (["tray lower", "-o", "no/such/folder/new.toml"], "there is no such folder"),
    ],
)
def test_what_cannot_be_fitted_is_told(truck: Path, words: list[str], told: str) -> None:
    found = run(truck, *words)
    assert isinstance(found.exception, InputError)
    assert told in str(found.exception)
    assert "\n" not in str(found.exception)
    assert len(list(truck.parent.iterdir())) == 2


def test_a_truck_found_by_weighing_wants_to_be_weighed_again(truck: Path) -> None:
    assert (
        json.loads(run(truck, "no spare", "-o", truck.with_name("a.toml"), "--json").stdout)[
            "warnings"
        ]
        == []
    )
    text = truck.read_text(encoding="utf-8")
    head, _, tail = text.partition('name = "motor"')
    lump = 'on = "chassis"\n'
    tail = tail.replace(lump, f"{lump}remainder = true\n", 1)
    truck.write_text(f'{head}name = "motor"{tail}', encoding="utf-8")
    found = run(truck, "no spare", "-o", truck.with_name("b.toml"), "--json")
    assert "weigh it again" in json.loads(found.stdout)["warnings"][0]
    assert "weigh it again" in found.stderr
