"""Change files: what is read, what is refused and where, and what each action does."""

from __future__ import annotations

from pathlib import Path

import pytest

from crossfall.truck import edits
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.clearance import clearance_angles
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, check_fit, objections
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes, requirements

HEAD = 'format = 1\ntruck = "bramble"\n'


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


def write(folder: Path, body: str) -> Path:
    path = folder / "bramble.changes.toml"
    path.write_text(HEAD + body, encoding="utf-8")
    return path


def entry(name: str, rest: str) -> str:
    return f'\n[[change]]\nname = "{name}"\nlabel = "{name}"\n{rest}\n'


def read(folder: Path, body: str) -> Catalogue:
    return read_changes(write(folder, body))


def done(folder: Path, loaded: Loaded, body: str, many: int = 1) -> TruckSpec:
    """The spec after the first change of a file, done `many` times."""
    return apply(loaded.spec, read(folder, body), {0: many})


def complaints(folder: Path, body: str, loaded: Loaded | None = None) -> list[str]:
    path = write(folder, body)
    with pytest.raises(InputError) as caught:
        check_fit(read_changes(path), loaded) if loaded is not None else read_changes(path)
    return [str(p).split(".changes.toml:", 1)[1] for p in caught.value.problems]


def test_demo_file_fits_its_truck(bramble: Loaded) -> None:
    catalogue = read_changes(change_file_of(bramble.path))
    assert len(catalogue.changes) >= 25
    check_fit(catalogue, bramble)
    for i, change in enumerate(catalogue.changes):
        chosen = dict.fromkeys(requirements(catalogue, change.name), 1) | {i: change.most}
        assert objections(catalogue, chosen) == []
        build(apply(bramble.spec, catalogue, chosen), bramble.folder)


# Mistakes


def test_a_bad_swap_that_another_change_requires_is_told_once(
    tmp_path: Path, bramble: Loaded
) -> None:
    body = entry("first", "swap = [{ part = 'winch', new = { mass_g = -3 } }]")
    body += entry("second", "requires = ['first']\nremove = ['spare wheel']")
    found = complaints(tmp_path, body, bramble)
    assert len(found) == 1
    assert "change.first.swap[0].new.mass_g: is -3" in found[0]


def test_every_mistake_is_told_with_line_and_key(tmp_path: Path) -> None:
    body = (
        entry("one", "prize = 3\nremove = ['winch']")
        + entry("two", "most = 3\nremove = ['winch']")
        + entry("three", "price = -1\nremove = ['winch']")
        + entry("four", "")
    )
    found = complaints(tmp_path, body)
    assert found == [
        "7: change.one.prize: is not a known key; did you mean 'price'?",
        "13: change.two.most: is 3, but 'remove' can be done only once; "
        "leave it out, or use add, by, move, widen or lengthen",
        "19: change.three.price: is -1; it must be 0 or more",
        "23: change.four.name: changes nothing; "
        "give one of remove, swap, set, add, by, move, slide, widen, lengthen",
    ]


def test_references_between_changes_are_checked(tmp_path: Path) -> None:
    body = (
        entry("rings", "remove = ['winch']\nrequires = ['beadlock']")
        + entry("beadlocks", "remove = ['bed']\nexcludes = ['beadlocks']")
        + entry("a", "remove = ['cab']\nrequires = ['b']")
        + entry("b", "remove = ['cab']\nrequires = ['a']")
        + entry("rings", "remove = ['winch']")
        + entry("c", "remove = ['cab']\ngroup = 'g'\nrequires = ['d']")
        + entry("d", "remove = ['cab']\ngroup = 'g'")
    )
    found = complaints(tmp_path, body)
    assert "change.rings.requires[0]: there is no change 'beadlock'" in found[1]
    assert "did you mean 'beadlocks'?" in found[1]
    assert found[0].endswith("'rings' is there twice; give each change its own name")
    assert any("change.beadlocks.excludes[0]: names the change itself" in f for f in found)
    assert sum("requires itself in the end; break the circle" in f for f in found) == 2
    assert any("'d' is in the same group, so both cannot be chosen" in f for f in found)


def test_references_to_the_truck_are_checked(tmp_path: Path, bramble: Loaded) -> None:
    body = (
        entry("a", "remove = ['wynch']")
        + entry("b", "set = { 'front.trak_mm' = 180 }")
        + entry("c", "move = [{ part = 'batery pack', by_mm = [0, 0, -5] }]")
        + entry("d", "swap = [{ part = 'cab', new = { mas_g = 100 } }]")
        + entry("e", "add = [{ name = 'cab', on = 'chassis', mass_g = 9, at_mm = [0, 0, 90] }]")
        + entry("f", "by = { 'front.suspension.locked' = 1 }")
        + entry("g", "lengthen = { front_mm = 3, with_front = ['front bumpr'] }")
        + entry("h", "set = { 'front.track_mm' = -3 }")
    )
    found = complaints(tmp_path, body, bramble)
    assert len(found) == 8
    for text, name, words in zip(
        found,
        "abcdefgh",
        (
            "there is no such part; did you mean 'winch'?",
            "'trak_mm' is not a known key; did you mean 'track_mm'?",
            "there is no such part; did you mean 'battery pack'?",
            "is not a known key; did you mean 'mass_g'?",
            "'cab' is there already",
            "is false; only a number can be changed by some",
            "there is no such part; did you mean 'front bumper'?",
            "is -3; it must be",
        ),
        strict=True,
    ):
        assert f"change.{name}." in text
        assert words in text
        assert int(text.split(":")[0]) > 3


def test_not_toml_and_no_such_file(tmp_path: Path) -> None:
    assert complaints(tmp_path, "change = []") == [
        "3: change: is empty; give at least one [[change]]"
    ]
    assert "is not valid TOML" in complaints(tmp_path, "[[change]\n")[0]
    with pytest.raises(InputError, match="cannot be read"):
        read_changes(tmp_path / "none.toml")


# Actions


def test_swap_keeps_what_is_not_given(tmp_path: Path, bramble: Loaded) -> None:
    spec = done(
        tmp_path, bramble, entry("s", "swap = [{ part = 'battery pack', new = { mass_g = 100 } }]")
    )
    old, new = (s.part[edits.part_row(s, "battery pack")] for s in (bramble.spec, spec))
    assert new.mass_g == 100
    assert new.at_mm == old.at_mm
    assert new.mass_tol_g is None  # the old scale reading says nothing about the new part
    assert len(spec.part) == len(bramble.spec.part)


def test_swap_for_another_material_drops_the_old_mass(tmp_path: Path, bramble: Loaded) -> None:
    new = "{ material = 'aluminium', shape = { kind = 'sphere', diameter_mm = 20 } }"
    spec = done(tmp_path, bramble, entry("s", f"swap = [{{ part = 'winch', new = {new} }}]"))
    winch = spec.part[edits.part_row(spec, "winch")]
    truck, _ = build(spec, bramble.folder)
    mass = next(p.body.mass for p in truck.parts if p.label == "winch")
    assert winch.mass_g is None
    assert mass == pytest.approx(2700 * 3.141592653589793 / 6 * 0.020**3)


def test_swapped_pack_takes_the_battery_section_along(tmp_path: Path, bramble: Loaded) -> None:
    new = "{ name = 'brick', mass_g = 100 }"
    spec = done(tmp_path, bramble, entry("s", f"swap = [{{ part = 'battery pack', new = {new} }}]"))
    assert spec.battery is not None
    assert spec.battery.part == "brick"


def test_quantities_multiply_mass_and_steps(tmp_path: Path, bramble: Loaded) -> None:
    part = "{ name = 'strip', on = 'each front wheel', mass_g = 7, at_mm = [0, 0, 0], "
    part += "unit_step_mm = [0, 1, 0] }"
    body = entry("s", f"most = 8\nadd = [{part}]\nmove = [{{ part = 'cab', by_mm = [0, 0, -2] }}]")
    before = whole(bramble.truck).mass
    for many in (1, 3, 8):
        spec = done(tmp_path, bramble, body, many)
        truck, _ = build(spec, bramble.folder)
        assert whole(truck).mass - before == pytest.approx(many * 2 * 0.007, abs=1e-12)
        z = [s.part[edits.part_row(s, "cab")].at_mm[2] for s in (bramble.spec, spec)]
        assert z[1] - z[0] == pytest.approx(-2 * many)
        outer = max(p.body.cg[1] for p in truck.parts if p.label.startswith("strip"))
        assert outer == pytest.approx(truck.front.track / 2 + (many - 1) * 1e-3)


def test_widen_moves_wheels_and_nothing_else(tmp_path: Path, bramble: Loaded) -> None:
    spec = done(tmp_path, bramble, entry("w", "widen = { front_mm = 3 }"))
    truck, _ = build(spec, bramble.folder)
    assert truck.front.track - bramble.truck.front.track == pytest.approx(0.006)
    assert truck.rear.track == bramble.truck.rear.track
    for old, new in zip(bramble.truck.parts, truck.parts, strict=True):
        out = {"front left": 0.003, "front right": -0.003}.get(new.carrier, 0.0)
        assert new.body.cg - old.body.cg == pytest.approx([0, out, 0], abs=1e-12)


def test_lengthen_at_the_rear_moves_only_the_rear_axle(tmp_path: Path, bramble: Loaded) -> None:
    """Seen from the front axle nothing on the chassis moves; what is named goes with the axle."""
    body = entry("l", "lengthen = { rear_mm = 8, with_rear = ['rear bumper'] }")
    spec = done(tmp_path, bramble, body)
    truck, _ = build(spec, bramble.folder)
    old = bramble.truck
    assert truck.wheelbase - old.wheelbase == pytest.approx(0.008)
    for a, b in zip(old.parts, truck.parts, strict=True):
        moved = (b.body.cg[0] - truck.front.x) - (a.body.cg[0] - old.front.x)
        if a.label == "rear bumper" or (a.carrier.startswith("rear") and a.unsprung == 1.0):
            assert moved == pytest.approx(-0.008, abs=1e-12)
        elif a.carrier == "chassis" or a.carrier.startswith("front"):
            assert moved == pytest.approx(0.0, abs=1e-6)
    before, after = clearance_angles(old), clearance_angles(truck)
    assert before is not None
    assert after is not None
    assert after.approach == pytest.approx(before.approach, abs=1e-12)
    assert after.breakover < before.breakover
    assert after.departure > before.departure


def test_keys_need_no_quotes(tmp_path: Path, bramble: Loaded) -> None:
    spec = done(tmp_path, bramble, entry("k", "set.front.tyre.stiffness_n_per_mm = 7.0"))
    assert spec.front.tyre.stiffness_n_per_mm == 7.0
    assert spec.front.tyre.radius_mm == bramble.spec.front.tyre.radius_mm


def test_order_of_choice_does_not_matter(bramble: Loaded) -> None:
    catalogue = read_changes(change_file_of(bramble.path))
    names = ("tray lower", "small pack", "long rear", "deep offset", "beadlocks")
    picks = [catalogue.position(n) for n in names]
    forward = apply(bramble.spec, catalogue, dict.fromkeys(picks, 1))
    backward = apply(bramble.spec, catalogue, dict.fromkeys(reversed(picks), 1))
    assert forward == backward
    pack = forward.part[edits.part_row(forward, "battery pack")]
    assert pack.at_mm is not None
    assert pack.at_mm[2] == 123 - 15  # the small pack's place, and then the tray's drop


# What goes together


def test_objections(tmp_path: Path) -> None:
    body = (
        entry("a", "remove = ['winch']\ngroup = 'g'")
        + entry("b", "remove = ['bed']\ngroup = 'g'")
        + entry("c", "move = [{ part = 'winch', by_mm = [1, 0, 0] }]\nrequires = ['d']")
        + entry("d", "set = { 'both.track_mm' = 180 }\nexcludes = ['b']")
        + entry("e", "set = { 'rear.track_mm' = 182 }\n")
        + entry("f", "most = 2\nwiden = { front_mm = 1 }")
        + entry("h", "swap = [{ part = 'cab', new = { mass_g = 90 } }]")
        + entry("i", "swap = [{ part = 'cab', new = { mass_g = 80 } }]")
    )
    catalogue = read(tmp_path, body)
    assert objections(catalogue, {3: 1, 5: 2, 6: 1}) == []
    assert objections(catalogue, {0: 1, 1: 1}) == ["'a' and 'b' are both in 'g'"]
    assert objections(catalogue, {0: 1, 2: 1, 3: 1}) == [
        "'a' and 'c' do not go together: one of them removes 'winch'"
    ]
    assert objections(catalogue, {2: 1}) == ["'c' requires 'd'"]
    assert objections(catalogue, {1: 1, 3: 1}) == ["'d' excludes 'b'"]
    assert objections(catalogue, {3: 1, 4: 1}) == [
        "'d' and 'e' do not go together: both set 'rear.track_mm'"
    ]
    assert objections(catalogue, {5: 3}) == ["'f' can be done 1 to 2 times, not 3"]
    assert objections(catalogue, {6: 1, 7: 1}) == [
        "'h' and 'i' do not go together: both swap 'cab'"
    ]
