"""A change file edited as text, and changes made out of what was edited by hand."""

from __future__ import annotations

import random
import tomllib
from typing import Any

import pytest

from crossfall.truck import edits
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.errors import InputError
from crossfall.truck.read import source_of
from crossfall.truck.schema import TruckSpec
from crossfall.tuning import change_text
from crossfall.tuning.apply import apply, misfits
from crossfall.tuning.changes import checked_changes

TEXT = (demo_folder() / "bramble.changes.toml").read_text("utf-8")


def by_name(text: str) -> dict[str, Any]:
    return {c["name"]: c for c in tomllib.loads(text)["change"]}


def comments(text: str) -> list[str]:
    return [line for line in text.splitlines() if line.startswith("#")]


def test_a_price_and_a_group_change_and_nothing_else() -> None:
    text = change_text.set_field(TEXT, "light body", "price", 71.5)
    text = change_text.set_field(text, "tray lower", "group", "tray")
    text = change_text.set_field(text, "small pack", "group", None)
    was, now = by_name(TEXT), by_name(text)
    assert now["light body"]["price"] == 71.5
    assert now["tray lower"]["group"] == "tray"
    assert "group" not in now["small pack"]
    for name in was:
        same = {"price", "group"}
        assert {k: v for k, v in was[name].items() if k not in same} == {
            k: v for k, v in now[name].items() if k not in same
        }
    assert comments(text) == comments(TEXT)


def test_a_new_name_is_followed_by_what_requires_it() -> None:
    text = change_text.set_field(TEXT, "beadlocks", "name", "clamped rims")
    assert by_name(text)["deep offset"]["requires"] == ["clamped rims"]
    checked_changes(source_of(text, "f"))


def test_what_was_added_is_removed_to_the_byte() -> None:
    entry = {"name": "roof off", "price": 3, "remove": ["roof rack"]}
    added = change_text.add_change(TEXT, entry)
    assert by_name(added)["roof off"] == entry
    assert change_text.remove_change(added, "roof off") == TEXT


def test_what_others_require_cannot_go() -> None:
    text = change_text.remove_change(TEXT, "beadlocks")
    with pytest.raises(InputError, match="there is no change 'beadlocks'"):
        checked_changes(source_of(text, "f"))


def test_a_list_can_begin_with_nothing() -> None:
    text = change_text.empty_text("alder", "EUR")
    entry = {"name": "lower", "move": [{"part": "pack", "by_mm": [0, 0, -5]}]}
    found = checked_changes(source_of(change_text.add_change(text, entry), "f"))
    assert (found.currency, len(found.changes)) == ("EUR", 1)
    assert change_text.change_words(found.changes[0]) == "moves pack by [0, 0, -5] mm"


def edited(spec: TruckSpec, chance: random.Random) -> TruckSpec:
    """The spec with a few edits as the page makes them."""
    for _ in range(chance.randint(1, 5)):
        names = [p.name for p in spec.part]
        name = chance.choice(names)
        part = spec.part[edits.part_row(spec, name)]
        act = chance.choice(["move", "weigh", "add", "remove", "measure", "price"])
        by = [chance.randint(-9, 9) / 2 for _ in range(3)]
        if act == "move":
            spec = edits.move_part(spec, name, by)
        elif act == "weigh" and (part.shape is None or part.mass_g):
            spec = edits.set_value(spec, f"part.{name}.mass_g", chance.randint(5, 300))
        elif act == "price":
            spec = edits.set_value(spec, f"part.{name}.price", chance.randint(1, 50))
        elif act == "add":
            new = {"name": f"new {len(names)} {chance.random():.3f}".replace(".", ","),
                   "on": "chassis", "mass_g": 12, "at_mm": by, "mirror": True}  # fmt: skip
            spec = edits.add_part(spec, new)
        elif act == "remove" and name != "battery pack":
            spec = edits.remove_part(spec, name)
        elif act == "measure":
            spec = edits.set_value(spec, "front.track_mm", chance.randint(150, 200))
    return spec


@pytest.mark.parametrize("seed", range(60))
def test_the_difference_as_a_change_makes_the_one_truck_of_the_other(seed: int) -> None:
    chance = random.Random(seed)
    old = load_truck("bramble").spec
    new = edited(old, chance)
    if old == new:
        new = edits.move_part(old, "motor", [0, 0, 2])
    text = change_text.empty_text("bramble", "EUR")
    entry = {"name": "mine", **change_text.difference(old, new)}
    catalogue = checked_changes(source_of(change_text.add_change(text, entry), "f"))
    assert misfits(catalogue, 0, old) == []
    made = apply(old, catalogue, {0: 1})
    one, other = ({p.name: p for p in spec.part} for spec in (made, new))
    assert one == other
    assert made.front == new.front


def test_no_difference_is_no_change() -> None:
    spec = load_truck("thistle").spec
    with pytest.raises(InputError, match="nothing differs"):
        change_text.difference(spec, spec)
