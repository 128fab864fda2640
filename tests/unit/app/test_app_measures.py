"""The sliders of the page show numbers that the truck's file has."""

from __future__ import annotations

from crossfall.app.edits import CHOICES, LIMITERS, MEASURES, on_text, understood
from crossfall.app.truck_cache import choices, measures
from crossfall.truck.build import load_text, load_truck
from linked_files import on_whole_shocks
from numbered_files import numbered, numbered_text

WHOLE = {k for k in MEASURES if k.endswith(("preload_mm", "shock_length_mm", "shaft_travel_mm"))}
SPACERS = {k for k in MEASURES if k.endswith(LIMITERS)}
AT_WHEELS = {k for k in MEASURES if k.endswith("spring_n_per_mm")}
ON_SHOCKS = {k for k in MEASURES if k.endswith("shock_n_per_mm")}


def test_every_measure_of_a_plain_truck_has_its_slider() -> None:
    found = {m["key"]: m["value"] for m in measures(numbered("bramble").spec)}
    assert found.keys() == MEASURES.keys() - ON_SHOCKS - WHOLE - SPACERS
    assert found["front.suspension.spring_n_per_mm"] == 0.2


def test_springs_on_their_shocks_have_theirs() -> None:
    found = {m["key"]: m["value"] for m in measures(load_truck("bramble").spec)}
    assert found.keys() == MEASURES.keys() - AT_WHEELS - WHOLE
    assert found["front.suspension.shock_n_per_mm"] == 0.26


def test_shocks_that_are_known_whole_have_all_of_theirs() -> None:
    found = {m["key"]: m["value"] for m in measures(on_whole_shocks(preload_mm=2.0).spec)}
    assert found.keys() >= WHOLE | SPACERS
    assert found["rear.suspension.preload_mm"] == 2.0
    assert "rear.suspension.droop_mm" not in found


def test_how_it_stands_is_chosen_and_put_into_the_file() -> None:
    loaded = numbered("bramble")
    before = {c["key"]: c["value"] for c in choices(loaded.spec)}
    assert before == dict(zip(CHOICES, ("brakes", "locked", "locked"), strict=True))
    asked = [
        {"do": "measure", "key": "chassis.held_by", "value": "motor"},
        {"do": "measure", "key": "rear.differential", "value": "open"},
        {"do": "measure", "key": "chassis.steer_deg", "value": -20},
    ]
    edits = understood(loaded.spec, asked, loaded.folder)
    after = load_text(on_text(numbered_text("bramble"), edits), loaded.path)
    assert after.truck.may_roll
    assert after.truck.front.steered != loaded.truck.front.steered
    assert [c["value"] for c in choices(after.spec)] == ["motor", "locked", "open"]
