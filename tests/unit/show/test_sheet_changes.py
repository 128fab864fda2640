"""What was changed between two trucks: nothing missed, nothing made up, sums that come out."""

from __future__ import annotations

from dataclasses import replace

import pytest

from crossfall.show.sheet.changes import differences, plain_key, shift_words
from crossfall.truck import edits
from crossfall.truck.build import build, load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.massprops import whole
from crossfall.tuning.apply import apply
from crossfall.tuning.changes import read_changes


@pytest.fixture(scope="module")
def bramble():
    return load_truck("bramble")


def made(loaded, spec):
    return replace(loaded, spec=spec, truck=build(spec, loaded.folder)[0])


def after(loaded, *names):
    """The truck with changes of its demo change file."""
    catalogue = read_changes(demo_folder() / "bramble.changes.toml")
    known = [c.name for c in catalogue.changes]
    return made(loaded, apply(loaded.spec, catalogue, {known.index(n): 1 for n in names}))


def told(found):
    return {d.what: d.how for d in (*found.parts, *found.dimensions)}


def test_the_same_truck_has_no_differences(bramble):
    found = differences(bramble, bramble)
    assert found.parts == found.dimensions == ()
    assert (found.mass, found.price) == (0.0, 0.0)


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ("light body", {"bonnet": "116 → 48 g", "cab": "296 → 104 g", "bed": "186 → 66 g"}),
        ("empty rack", {"roof box": "taken off", "fuel can": "taken off"}),
        ("tray lower", {"battery pack": "15 mm lower", "battery tray": "15 mm lower"}),
        ("low light bar", {"light bar": "134 mm lower, 166 mm forward"}),
        ("brass front cover", {"front cover": "added: front axle"}),
        ("spare inside", {"spare wheel": "4 mm lower, 84 mm forward, turned"}),
        ("small pack", {
            "battery pack": "3 mm lower, 262 → 176 g",
            "battery capacity": "3300 → 2200 mAh",
        }),
        ("floor plate", {
            "floor plate": "added: chassis",
            "belly point": "3 mm lower",
        }),
    ],
)  # fmt: skip
def test_a_change_is_told_as_it_was_made(bramble, change, expected):
    assert told(differences(bramble, after(bramble, change))) == expected


def test_a_longer_wheelbase_moves_no_part_but_those_really_moved(bramble):
    found = told(differences(bramble, after(bramble, "long rear", "tray lower")))
    assert found.pop("wheelbase") == "313 → 320 mm, rear 7 mm back"
    assert found.pop("battery pack") == found.pop("battery tray") == "15 mm lower"
    # What runs from the chassis to the rear axle is longer now, and so heavier.
    assert sorted(found) == ["rear drive shaft", "rear lower link", "rear upper link"]
    assert all("→" in how and how.endswith(" g") for how in found.values())


def test_alike_at_both_ends_is_told_once(bramble):
    found = told(differences(bramble, after(bramble, "firm foams")))
    assert found["tyre stiffness, both"] == "5.5 → 9 N/mm"
    assert not any(w.startswith(("front tyre", "rear tyre")) for w in found)
    one = made(bramble, edits.set_value(bramble.spec, "rear.track_mm", 180))
    assert told(differences(bramble, one)) == {"rear track": "176 → 180 mm"}


def test_material_comes_before_mass(bramble):
    how = told(differences(bramble, after(bramble, "brass knuckles")))["front knuckle"]
    assert how.startswith("aluminium → brass, ")
    assert how.endswith(" g")


@pytest.mark.parametrize("change", [("light body", "empty rack"), ("saddle packs", "long hubs")])
def test_grams_add_up_to_the_truck(bramble, change):
    later = after(bramble, *change)
    found = differences(bramble, later)
    gained = whole(later.truck).mass - whole(bramble.truck).mass
    assert found.mass == pytest.approx(gained, abs=1e-9)
    assert sum(d.mass for d in found.parts) == pytest.approx(gained, abs=1e-9)


def test_money_adds_up_to_the_parts_lists(bramble):
    later = after(bramble, "empty rack")
    spec = edits.add_part(
        later.spec, {"name": "lead", "on": "front axle", "mass_g": 30, "at_mm": [0, 0, 0],
                     "price": 4.5, "mirror": True}
    )  # fmt: skip
    later = made(bramble, spec)
    total = [sum(p.price for p in t.truck.parts) for t in (bramble, later)]
    found = differences(bramble, later)
    assert found.put_on == 9.0  # two pieces
    assert found.taken_off == 12.0 + 2 * 5.0  # roof box, two fuel cans
    assert found.price == pytest.approx(total[1] - total[0])


def test_different_money_has_no_sum(bramble):
    other = replace(bramble, spec=bramble.spec.model_copy(update={"currency": "CHF"}))
    found = differences(bramble, other)
    assert found.price is found.put_on is found.taken_off is None


def test_heaviest_difference_comes_first(bramble):
    parts = differences(bramble, load_truck("burdock")).parts
    grams = [round(1e3 * abs(d.mass), 3) for d in parts]
    assert grams == sorted(grams, reverse=True)


def test_there_and_back_is_the_same_with_the_sign_changed(bramble):
    later = after(bramble, "light body", "long rear")
    there, back = differences(bramble, later), differences(later, bramble)
    assert back.mass == pytest.approx(-there.mass)
    assert {d.what for d in back.parts} == {d.what for d in there.parts}
    assert told(back)["wheelbase"] == "320 → 313 mm, rear 7 mm forward"


def test_sideways_is_out_or_in_for_pairs_and_left_or_right_for_one():
    assert shift_words((0.0, 3.0, 0.0), outward=1.0) == "3 mm further out"
    assert shift_words((0.0, 3.0, 0.0), outward=-1.0) == "3 mm further in"
    assert shift_words((0.0, -2.5, 0.0)) == "2.5 mm to the right"
    assert shift_words((0.04, 0.0, -0.04)) == ""


def test_keys_are_said_in_words_with_their_unit():
    assert plain_key("rear.suspension.droop_mm") == ("rear droop", " mm")
    assert plain_key("front.tyre.stiffness_n_per_mm") == ("front tyre stiffness", " N/mm")
    assert plain_key("chassis.raise_mm") == ("body lift", " mm")
    assert plain_key("rear.suspension.anti_roll_n_mm_per_deg") == ("rear anti roll", " N mm/deg")
