"""Every key of a truck file is listed with a meaning, and with a unit where it has one."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

from crossfall.truck.glossary import MEANINGS, entries, unit
from crossfall.truck.materials import MATERIALS
from crossfall.verbs.keys import command


def test_every_key_has_a_meaning() -> None:
    assert [e.key for e in entries() if not e.meaning] == []


def test_units_are_those_of_the_keys() -> None:
    assert unit("spring_tol_n_per_mm") == "N/mm"
    assert unit("anti_roll_n_mm_per_deg") == "N mm/deg"
    assert unit("wheelbase_mm") == "mm"
    assert unit("density_g_cm3") == "g/cm³"
    assert unit("capacity_mah") == "mAh"
    assert unit("cells") == unit("kind") == ""
    assert {e.key for e in entries()} >= {"wheelbase_mm", "at_mm", "remainder", "mass_percent"}
    assert not any("\n" in text for text in MEANINGS.values())


@pytest.mark.parametrize(("word", "found", "status"), [("droop", "droop_mm", 0), ("xyzzy", "", 1)])
def test_the_verb_lists_what_has_a_word(word: str, found: str, status: int) -> None:
    run = CliRunner().invoke(command, [word, "--json"], standalone_mode=False)
    assert run.return_value == status
    told = json.loads(run.stdout)
    assert (found in [e["key"] for e in told["keys"]]) is bool(found)
    assert len(told["keys"]) < 20


def test_the_verb_lists_all_materials() -> None:
    told = json.loads(CliRunner().invoke(command, ["--json"], standalone_mode=False).stdout)
    assert {m["name"] for m in told["materials"]} == set(MATERIALS)
    shown = CliRunner().invoke(command, [], standalone_mode=False).stdout
    assert "stainless steel" in shown
    assert "wheelbase_mm" in shown
