"""Changes to a spec in memory and to its text: the same result, comments kept, bytes restored."""

from __future__ import annotations

import tomllib
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from spec_text import SAMPLE, changed, load

from crossfall.truck import document, edits
from crossfall.truck.build import build, load_text, load_truck
from crossfall.truck.demos import demo_names, find_demo
from crossfall.truck.digest import truck_digest
from crossfall.truck.errors import InputError
from crossfall.truck.files import write_atomically
from crossfall.truck.schema import TruckSpec


@pytest.fixture(scope="module")
def spec(tmp_path_factory) -> TruckSpec:
    return load(tmp_path_factory.mktemp("sample")).spec


def reread(text: str) -> TruckSpec:
    return TruckSpec.model_validate(tomllib.loads(text))


VALUES = [
    ("front.track_mm", 181.5),
    ("both.tyre.radius_mm", 58),
    ("chassis.raise_mm", 5),
    ("part.pack.mass_g", 199),
    ("part.pack.at_mm.z", 88),
    ("part.pack.at_mm.0", -12),
    ("part.frame.at_mm[1]", 2),
    ("part.axle tube.shape.outer_mm", 20),
    ("part.cover.material", "brass"),
    ("grip.rock.likely", 0.9),
    ("front.suspension.locked", True),
    ("materials.resin.density_g_cm3", 1.2),
    ("battery.capacity_mah", 1800),
    ("part.pack.price", 30.5),
    ("part.link.chassis_end_mm", [-20, 28, 90]),
    ("chassis.wheelbase_tol_mm", 0.5),
    ("both.tyre.stiffness_tol_n_per_mm", 0.8),
    ("rear.tyre.lateral_n_per_mm", 3.1),
    ("rear.suspension.heave_lean_tol_deg", 2),
    ("tolerance.travel_mm", 2),
]


@pytest.mark.parametrize(("key", "value"), VALUES)
def test_memory_and_text_change_alike(spec, key, value):
    quick = edits.set_value(spec, key, value)
    text = document.text_with_value(SAMPLE, key, value)
    assert quick == reread(text)
    got = edits.get_value(quick, key)
    assert (list(got) if isinstance(value, list) else got) == value
    assert quick != spec


@pytest.mark.parametrize(("key", "value"), VALUES)
def test_only_the_lines_concerned_change(key, value):
    before, after = SAMPLE.splitlines(), document.text_with_value(SAMPLE, key, value).splitlines()
    new = [line for line in after if line not in before]
    assert len(new) <= 2
    assert sum("#" in line for line in after) == sum("#" in line for line in before)


def test_taking_a_value_away(spec):
    without = edits.set_value(spec, "part.pack.mass_tol_g", None)
    assert edits.get_value(without, "part.pack.mass_tol_g") is None
    text = document.text_with_value(SAMPLE, "part.pack.mass_tol_g", None)
    assert text == SAMPLE.replace("mass_tol_g = 1\n", "")
    assert edits.set_value(spec, "clearance", None).clearance is None


@pytest.mark.parametrize(
    ("key", "value", "words"),
    [
        ("front.trak_mm", 1, "'track_mm'"),
        ("front.track_mm", -1, "1 or more"),
        ("front.track_mm", "wide", "number"),
        ("part.pakc.mass_g", 1, "'pack'"),
        ("part.pack.mass_g", float("nan"), "finite"),
        ("part.pack.at_mm.w", 1, "x, y, z"),
        ("part.pack.at_mm.3", 1, "x, y, z"),
        ("part.pack.at_mm.z.z", 1, "nothing is below"),
        ("part.pack.on", "roof", "known"),
        ("grip.ice.low", 0.1, "ice"),
        ("chassis", None, "missing"),
        ("", 1, "known"),
        ("part.axle tube.shape.outer_mm", 3, "inner_mm"),
    ],
)
def test_changes_that_do_not_fit(spec, key, value, words):
    with pytest.raises(InputError) as caught:
        edits.set_value(spec, key, value)
    assert words in str(caught.value)


@pytest.mark.parametrize(
    "key", ["part.pakc.mass_g", "part.pack.at_mm.w", "name.x", "part.pack.mass_g.x"]
)
def test_text_changes_that_do_not_fit(key):
    with pytest.raises(InputError):
        document.text_with_value(SAMPLE, key, 1)


NEW = {
    "name": "brass ring",
    "on": "each front wheel",
    "material": "brass",
    "shape": {"kind": "ring", "outer_mm": 54, "inner_mm": 48, "width_mm": 10},
    "at_mm": [0, -2.5, 0],
    "note": 'with "quotes" and \\ in it',
}

ENDINGS = [
    SAMPLE,
    SAMPLE.rstrip("\n"),
    SAMPLE + "\n\n",
    SAMPLE + "# the end",
    SAMPLE + "# the end\n",
    SAMPLE.replace("\n", "\r\n"),
    SAMPLE.rstrip("\n").replace("\n", "\r\n"),
]


@pytest.mark.parametrize("text", ENDINGS)
def test_adding_and_removing_a_part_gives_back_the_same_bytes(text):
    longer = document.text_with_part(text, NEW)
    assert reread(longer).part[-1].name == "brass ring"
    assert reread(longer).part[-1].note == NEW["note"]
    assert document.text_without_part(longer, "Brass Ring") == text


@pytest.mark.parametrize("name", demo_names())
def test_every_part_of_the_demos_can_be_removed_alone(name):
    path = find_demo(name)
    assert path is not None
    text = path.read_text()
    comments = [line for line in text.splitlines() if line.startswith("#")]
    for part in load_truck(name).spec.part:
        shorter = document.text_without_part(text, part.name)
        left = [line for line in shorter.splitlines() if line.startswith("#")]
        assert left == comments


def test_a_part_with_tables_of_its_own_and_no_blank_lines():
    text = changed(('\n[[part]]\nname = "pack"', '[[part]]\nname = "pack"'))
    text = text.replace('shape = { kind = "box", size_mm = [100, 34, 24] }\n', "")
    text = text.replace(
        "place_tol_mm = 3\n", 'place_tol_mm = 3\n[part.shape]\nkind = "sphere"\ndiameter_mm = 50\n'
    )
    assert reread(text).part[1].shape.kind == "sphere"
    shorter = document.text_without_part(text, "pack")
    assert [p["name"] for p in tomllib.loads(shorter)["part"]] == [
        "frame", "cover", "axle tube", "link", "wheel",
    ]  # fmt: skip


def test_an_inline_list_of_parts_is_left_alone():
    text = 'part = [{ name = "a" }, { name = "b" }]\n'
    with pytest.raises(InputError, match="by hand"):
        document.text_without_part(text, "a")
    with pytest.raises(InputError):
        document.text_with_part(text, NEW)


def test_moving_and_renaming(spec):
    for name, by in (("pack", (1, -2, 3.5)), ("link", (0.1, 0.2, 0.3))):
        moved = edits.move_part(spec, name, by)
        there = document.places_moved(document.plain_data(SAMPLE), name, by)
        text = document.text_with_values(SAMPLE, there)
        places = [
            (p.at_mm or p.chassis_end_mm + p.axle_end_mm)
            for p in (moved.part[edits.part_row(moved, name)], *_named(text, name))
        ]
        np.testing.assert_allclose(places[0], places[1], atol=1e-9)
    renamed = edits.rename_part(spec, "pack", "big pack")
    assert renamed == reread(document.text_with_name(SAMPLE, "pack", "big pack"))
    assert renamed.battery.part == "big pack"
    for clash in (edits.rename_part, document.text_with_name):
        with pytest.raises(InputError, match="already"):
            clash(spec if clash is edits.rename_part else SAMPLE, "pack", "frame")


def _named(text: str, name: str) -> list:
    return [p for p in reread(text).part if p.name == name]


def test_adding_and_removing_in_memory(spec):
    longer = edits.add_part(spec, NEW)
    assert edits.remove_part(longer, "brass ring") == spec
    a, _ = build(spec)
    b, _ = build(edits.remove_part(longer, "brass ring"))
    assert truck_digest(a) == truck_digest(b)
    with pytest.raises(InputError, match="already"):
        edits.add_part(longer, NEW)
    with pytest.raises(InputError, match=r"0\.001 or more"):
        edits.add_part(spec, {**NEW, "name": "x", "mass_g": -1})
    with pytest.raises(InputError, match="at least one"):
        edits.with_parts(spec, ())


names = st.text(
    st.characters(codec="utf-8", exclude_categories=["C", "Z"], exclude_characters='."[]'),
    min_size=1,
    max_size=20,
)
numbers = st.floats(-500, 500, allow_nan=False).map(lambda v: round(v, 3))


@settings(max_examples=40, deadline=None)
@given(
    name=names,
    at=st.lists(numbers, min_size=3, max_size=3),
    mass=st.floats(0.1, 900),
    note=st.text(max_size=60),
    ending=st.sampled_from(ENDINGS),
)
def test_any_part_added_and_removed_restores_the_bytes(name, at, mass, note, ending):
    if edits.find_part(reread(SAMPLE), name) is not None:
        name += "!"
    part = {"name": name, "on": "chassis", "mass_g": mass, "at_mm": at, "note": note}
    longer = document.text_with_part(ending, part)
    added = tomllib.loads(longer)["part"][-1]
    assert added == part
    assert document.text_without_part(longer, name) == ending


@settings(max_examples=30, deadline=None)
@given(
    key=st.sampled_from(["part.pack.at_mm.x", "part.pack.mass_g", "front.track_mm"]),
    value=st.floats(120, 250),
)
def test_text_and_memory_stay_together(key, value):
    assert edits.set_value(reread(SAMPLE), key, value) == reread(
        document.text_with_value(SAMPLE, key, value)
    )


def test_a_text_can_be_loaded_before_it_is_saved(tmp_path):
    path = tmp_path / "truck.toml"
    loaded = load_text(SAMPLE, path)
    assert not path.exists()
    assert truck_digest(loaded.truck) == truck_digest(load(tmp_path).truck)
    with pytest.raises(InputError, match=r"truck\.toml:10"):
        load_text(changed(("wheelbase_mm = 313", "wheelbase_mm = 0")), path)


def test_writing_is_all_or_nothing(tmp_path: Path, monkeypatch):
    path = tmp_path / "a.toml"
    write_atomically(path, "eins\n")
    write_atomically(path, b"zwei\n")
    assert path.read_bytes() == b"zwei\n"
    path.chmod(0o640)

    def full(*_args):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    with pytest.raises(OSError, match="space"):
        write_atomically(path, "drei\n")
    monkeypatch.undo()
    assert path.read_bytes() == b"zwei\n"
    assert [p.name for p in tmp_path.iterdir()] == ["a.toml"]
    write_atomically(path, "vier\n")
    assert path.stat().st_mode & 0o777 == 0o640


def test_a_surface_keeps_its_place_when_its_grip_changes():
    """The first surface is the one that is meant where none is named."""
    loaded = load_truck("bramble")
    first = next(iter(loaded.spec.grip))
    changed = edits.set_value(loaded.spec, f"grip.{first}.low", 0.5)
    assert list(changed.grip) == list(loaded.spec.grip)
    assert changed.grip[first].low == 0.5
    assert build(changed, loaded.folder)[0].grips[0].surface == loaded.truck.grips[0].surface


def test_many_values_at_once_are_as_one_after_another() -> None:
    values = {"part.pack.mass_g": 151, "both.track_mm": 190, "part.pack.at_mm.z": 33}
    text = SAMPLE
    for key, value in values.items():
        text = document.text_with_value(text, key, value)
    assert document.text_with_values(SAMPLE, values) == text
