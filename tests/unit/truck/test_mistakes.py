"""Every mistake in a chassis file: one plain sentence with its file, line and key."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from spec_text import SAMPLE, changed, line_of, load, mistakes

from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError

PART = "\n[[part]]\n"

# What is swapped in, a snippet on the line to be named, the key, and words of the sentence.
ONE_MISTAKE = [
    ("wheelbase_mm = 313", "wheelbase_mm = -313", "wheelbase_mm", "chassis.wheelbase_mm", "-313"),
    ("wheelbase_mm = 313", "wheelbase_mm = 0", "wheelbase_mm", "chassis.wheelbase_mm", "1 or more"),
    ("wheelbase_mm = 313", "wheelbase_mm = nan", "wheelbase_mm", "chassis.wheelbase_mm", "finite"),
    ("wheelbase_mm = 313", "wheelbase_mm = inf", "wheelbase_mm", "chassis.wheelbase_mm", "finite"),
    ("base_mm = 313", 'base_mm = "313"', "wheelbase_mm", "chassis.wheelbase_mm", "number"),
    ("wheelbase_mm = 313", "wheelbase_mm = true", "wheelbase_mm", "chassis.wheelbase_mm", "true"),
    ("wheelbase_mm = 313", "wheelbase_mm = [3]", "wheelbase_mm", "chassis.wheelbase_mm", "array"),
    ("wheelbase_mm = 313", "wheelbase_mm = 1e9", "wheelbase_mm", "chassis.wheelbase_mm", "or less"),
    ("wheelbase_mm =", "wheelbse_mm =", "wheelbse_", "chassis.wheelbse_mm", "'wheelbase_mm'"),
    ("wheelbase_mm = 313", "wheelbase_mm = 110", "wheelbase", "chassis.wheelbase_mm", "touch"),
    ("wheelbase_mm = 313", "", "[chassis]", "chassis.wheelbase_mm", "missing"),
    ('driven = "both"', 'driven = "bth"', "driven", "chassis.driven", "'both'"),
    ('driven = "both"', "driven = 4", "driven", "chassis.driven", "both or front"),
    ("final_drive = 30.5", "final_drive = 0", "final_drive", "chassis.final_drive", "0.1 or more"),
    ("lock_deg = 40", "lock_deg = 95", "lock_deg", "chassis.steering_lock_deg", "80"),
    ("format = 1", "format = 2", "format", "format", "1"),
    ("track_mm = 170", "track_mm = 30", "track_mm = 30", "front.track_mm", "touch"),
    ("ing_mm = 110", "ing_mm = 170", "spacing", "front.suspension.spring_spacing_mm", "stand"),
    ("centre_mm = 78", "centre_mm = 300", "roll", "front.suspension.roll_centre_mm", "228"),
    ("bump_mm = 20", "bump_mm = -1", "bump", "front.suspension.bump_mm", "0 or more"),
    ("droop_mm = 15", "droop_mm = -2", "droop", "front.suspension.droop_mm", "hanging"),
    ("width_mm = 4\n", "width_mm = 24\n", "contact", "front.tyre.contact_half_width_mm", "edge"),
    ("anti_dive", "anti_squat", "anti_squat", "front.suspension.anti_squat_percent", "not a known"),
    ("heave_lean_deg = -3", "heave_lean_deg = -3\nanti_squat_percent = 1", "anti_squat",
     "rear.suspension.anti_squat_percent", "one of the two"),
    ("likely = 0.85", "likely = 0.5", "likely", "grip.rock.likely", "rise"),
    ("high = 1.0", "high = -1.0", "high", "grip.rock.high", "0.01 or more"),
    ("belly_mm = [0, 75]", "belly_mm = [0]", "belly", "clearance.belly_mm", "too few"),
    ("belly_mm = [0, 75]", "belly_mm = [300, 75]", "belly", "clearance.belly_mm", "between"),
    ("belly_mm = [0, 75]", "belly_mm = [0, -5]", "belly", "clearance.belly_mm", "under ground"),
    ('part = "pack"', 'part = "pck"', "pck", "battery.part", "'pack'"),
    ("cells = 3", "cells = 2.5", "cells", "battery.cells", "whole"),
    ("density_g_cm3 = 1.15", "density_g_cm3 = 0", "density", "materials.resin.density_g_cm3", "0"),
    ("[materials.resin]", "[materials.brass]\ndensity_g_cm3 = 8\nsource = 'x'\n[materials.resin]",
     "[materials.brass]", "materials.brass", "already"),
    ("mass_g = 1500", "mass_g = 0", "mass_g = 0", "part.frame.mass_g", "0.001 or more"),
    ("mass_g = 1500", "mass_g = -5", "mass_g = -5", "part.frame.mass_g", "-5"),
    ("mass_g = 1500\n", "", PART, "part.frame.mass_g", "missing"),
    ("  0,\n", "  'a',\n", "'a'", "part.frame.at_mm[1]", "number"),
    ("  110,\n", "  110, 5\n", "at_mm = [", "part.frame.at_mm", "4 values"),
    ("  110,\n", "  -10,\n", "at_mm = [", "part.frame.at_mm", "under the ground"),
    ('kind = "box"', 'kind = "bx"', "bx", "part.frame.shape.kind", "'box'"),
    ('kind = "box", ', "", "shape = {", "part.frame.shape.kind", "missing"),
    ("size_mm = [300, 90, 60]", "sise_mm = 1, size_mm = [300, 90, 60]", "sise_mm",
     "part.frame.shape.sise_mm", "'size_mm'"),
    ("size_mm = [300, 90, 60]", "size_mm = [300, 90, 60], wall_mm = 31", "wall_mm",
     "part.frame.shape.wall_mm", "no room"),
    ("inner_mm = 10", "inner_mm = 18", "inner_mm", "part.axle tube.shape.inner_mm", "less than"),
    ('along = "y"', 'along = "w"', "along", "part.axle tube.shape.along", "x, y, z"),
    ('material = "resin"', 'material = "resn"', "resn", "part.cover.material", "'resin'"),
    ('on = "each axle"', 'on = "each axel"', "each axel", "part.axle tube.on", "'each axle'"),
    ('name = "cover"', 'name = "Frame"', 'name = "Frame"', "part[2].name", "twice"),
    ('name = "cover"', 'name = "a.b"', "a.b", "part.a.b.name", "no dots"),
    ('name = "cover"', 'name = ""', 'name = ""', "part[2].name", "empty"),
    ("mirror = true", "mirror = 1", "mirror", "part.cover.mirror", "true or false"),
    ("turn_deg = [15, 0, 0]", "step_mm = [1, 0, 0]", "step_mm", "part.cover.step_mm", "no use"),
    ("turn_deg = [15, 0, 0]", "count = 0", "count", "part.cover.count", "1 or more"),
    ("turn_deg = [15, 0, 0]", "unsprung = 0.4", "unsprung = 0.4", "part.cover.unsprung", "links"),
    ("turn_deg = [15, 0, 0]", "inertia_kg_mm2 = [1, 1, 9]", "inertia",
     "part.cover.inertia_kg_mm2", "no solid body"),
    ("turn_deg = [15, 0, 0]", "inertia_kg_mm2 = [1, 1, 1, 0]", "inertia",
     "part.cover.inertia_kg_mm2", "3 or 6"),
    ("unsprung = 0.5", "unsprung = 1.0", "unsprung", "part.link.unsprung", "less than 1"),
    ("unsprung = 0.5\n", "", 'on = "rear link"', "part.link.on", "unsprung"),
    ("unsprung = 0.5", "unsprung = 0.5\nat_mm = [0, 0, 0]", "at_mm = [0, 0, 0]\nmaterial",
     "part.link.at_mm", "link"),
    ("axle_end_mm = [0, 40, -6]", "axle_end_mm = [126.5, 30, 28]", "axle_end",
     "part.link.axle_end_mm", "same place"),
    ('kind = "rod", diameter_mm = 6', 'kind = "sphere", diameter_mm = 6', "sphere",
     "part.link.shape.kind", "rod or a tube"),
    ('on = "every wheel"', 'on = "every wheel"\nmirror = true', "mirror = true\nmass_g = 150",
     "part.wheel.mirror", "by themselves"),
    ("place_tol_mm = 3", "place_tol_mm = -3", "place_tol", "part.pack.place_tol_mm", "0 or more"),
    ("track_mm = 170", "track_mm = 170\ntrack_tol_mm = -1", "track_tol", "front.track_tol_mm",
     "0 or more"),
    ("track_mm = 170", "track_mm = 170\ntrack_tol_mm = nan", "track_tol", "front.track_tol_mm",
     "finite"),
    ("wheelbase_mm = 313", "wheelbase_mm = 313\nwheelbase_tol_mm = 400", "wheelbase_tol",
     "chassis.wheelbase_tol_mm", "more than wheelbase_mm itself"),
    ("per_mm = 5\n", "per_mm = 5\nstiffness_tol_n_per_mm = 5\n", "stiffness_tol",
     "front.tyre.stiffness_tol_n_per_mm", "as much as stiffness_n_per_mm itself"),
    ("per_mm = 5\n", "per_mm = 5\nlateral_tol_n_per_mm = 1\n", "lateral_tol",
     "front.tyre.lateral_tol_n_per_mm", "without lateral_n_per_mm"),
    ("per_mm = 5\n", "per_mm = 5\nlateral_n_per_mm = 0\n", "lateral_n",
     "front.tyre.lateral_n_per_mm", "0.01 or more"),
    ("droop_mm = 15", "droop_mm = 15\nheave_lean_tol_deg = 2", "heave_lean_tol",
     "front.suspension.heave_lean_tol_deg", "without heave_lean_deg"),
    ("droop_mm = 15", "droop_mm = 15\nanti_squat_tol_percent = 2", "anti_squat_tol",
     "front.suspension.anti_squat_tol_percent", "not a known"),
    ("place_mm = 2", "place_mm = 2\ntrack_mm = 200", "track_mm = 200", "tolerance.track_mm", "170"),
    ("place_mm = 2", "place_mm = 2\nspring_percent = 100", "spring_p", "tolerance.spring_percent",
     "less than 100"),
]  # fmt: skip


@pytest.mark.parametrize(("old", "new", "snippet", "key", "words"), ONE_MISTAKE)
def test_one_mistake_gives_one_sentence_at_its_place(tmp_path, old, new, snippet, key, words):
    text = changed((old, new))
    found = mistakes(tmp_path, text)
    assert len(found) == 1, [str(p) for p in found]
    (problem,) = found
    assert problem.file == str(tmp_path / "truck.toml")
    where = line_of(text, snippet) + (1 if snippet == PART else 0)
    assert problem.line == where, str(problem)
    assert problem.key == key
    assert words in f"{problem.what}; {problem.allowed}"
    assert "\n" not in str(problem)


def test_the_sample_itself_is_right(tmp_path):
    assert load(tmp_path).warnings == ()


def test_many_mistakes_are_told_at_once_in_file_order(tmp_path):
    text = changed(
        ("wheelbase_mm = 313", "wheelbase_mm = -1"),
        ("track_mm = 172", "trak_mm = 172"),
        ("mass_g = 250", 'mass_g = "heavy"'),
        ('kind = "ring"', 'kind = "rnig"'),
    )
    found = mistakes(tmp_path, text)
    assert [p.key for p in found] == [
        "chassis.wheelbase_mm",
        "rear.trak_mm",
        "part.pack.mass_g",
        "part.wheel.shape.kind",
    ]
    lines = [p.line for p in found]
    assert lines == sorted(lines)


# Mistakes that only show once the truck is put together.
STANDING = [
    ([("  -5, ", "  -900, ")], "behind the rear axle"),
    ([("  -5, ", "  900, ")], "ahead of the front axle"),
    ([("  0,\n  110", "  400,\n  110")], "to the left"),
    ([("  0,\n  110", "  -150,\n  110")], "hanging"),
    ([("spring_n_per_mm = 0.2\n", "spring_n_per_mm = 0.01\n")], "cannot hold"),
    ([("spring_n_per_mm = 0.2\n", "spring_n_per_mm = 0.04\n"), ("= 0.21", "= 0.04")], "falls over"),
    ([("stiffness_n_per_mm = 5", "stiffness_n_per_mm = 0.05")], "rim"),
    ([('on = "every wheel"', 'on = "each front wheel"')], "nothing is on the rear right wheel"),
    ([("mass_g = 150\n", "mass_g = 0.001\n")], "the rear right wheel weigh 0.001 g together"),
    ([("stiffness_n_per_mm = 5", "stiffness_n_per_mm = 200"), ("mass_g = 150\n", "mass_g = 2\n")],
     "a front wheel on its tyre swing at 1592 Hz; at most 500 Hz"),
    ([("stiffness_n_per_mm = 5", "lateral_n_per_mm = 1000\nstiffness_n_per_mm = 5"),
      ("mass_g = 150\n", "mass_g = 30\n")], "a front wheel on its tyre swing at 919 Hz"),
    ([("  0,\n  110", "  75,\n  110")], "have to pull"),
    ([('on = "every wheel"', 'on = "each rear wheel"')], "front left wheel"),
    ([('on = "each axle"', 'on = "front axle"'), ('on = "rear link"', 'on = "front link"')],
     "nothing is on the rear axle"),
]  # fmt: skip


@pytest.mark.parametrize(("swaps", "words"), STANDING)
def test_a_truck_that_cannot_stand_is_refused(tmp_path, swaps, words):
    found = mistakes(tmp_path, changed(*swaps))
    assert any(words in f"{p.what}; {p.allowed}" for p in found), [str(p) for p in found]


def test_a_part_far_out_is_a_warning_only(tmp_path):
    loaded = load(tmp_path, changed(("at_mm = [20, 0, 100]", "at_mm = [200, 0, 600]")))
    (warning,) = loaded.warnings
    assert warning.key == "part.pack"


@pytest.mark.parametrize(
    ("old", "new", "key", "words"),
    [
        ("per_mm = 5\n", "per_mm = 5\nlateral_n_per_mm = 300\n", "front.tyre.lateral_n_per_mm",
         "60 times the vertical stiffness"),
        ("per_mm = 5\n", "per_mm = 5\nlongitudinal_n_per_mm = 0.2\n",
         "front.tyre.longitudinal_n_per_mm", "0.04 times"),
        ("droop_mm = 15", "droop_mm = 15\ndroop_tol_mm = 16", "front.suspension.droop_tol_mm",
         "more than droop_mm itself; it counts up to 15"),
        ("mass_tol_g = 1", "mass_tol_g = 251", "part.pack.mass_tol_g", "more than mass_g itself"),
    ],
)  # fmt: skip
def test_values_that_are_odd_but_possible_are_warnings(tmp_path, old, new, key, words):
    (warning,) = load(tmp_path, changed((old, new))).warnings
    assert warning.key == key
    assert words in f"{warning.what}; {warning.allowed}"
    assert warning.line == line_of(changed((old, new)), key.rpartition(".")[2])


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "missing"),
        (b"\xff\xfe\x00", "UTF-8"),
        (b"name = \x00", "TOML"),
        (b"format = 1\nname = 'a'\n\xe9", "UTF-8"),
        (b"format = \n", "TOML"),
        (b"a = 1\na = 2\n", "TOML"),
        (b"[chassis\n", "TOML"),
        (b"x = " + b"[" * 4000, "nested"),
        (b"x = " + b"9" * 6000, "TOML"),
        (b"x = 1979-99-99", "TOML"),
        (b"x = '" + b"y" * 2_100_000 + b"'", "bytes"),
    ],
)
def test_a_file_that_is_no_chassis_file(tmp_path, content, words):
    found = mistakes(tmp_path, content)
    assert any(words in str(p) for p in found)


def test_a_syntax_mistake_names_its_line(tmp_path):
    text = changed(("track_mm = 170", "track_mm 170"))
    (problem,) = mistakes(tmp_path, text)
    assert problem.line == line_of(text, "track_mm 170")


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("brambel", "'bramble'"),
        ("no/such/file.toml", "no such file"),
        ("a\0b", "usable"),
        ("x" * 5000, "usable"),
        ("", "folder"),
        (".", "folder"),
        ("/dev/null", "ordinary"),
    ],
)
def test_files_that_cannot_be_opened(name, words):
    with pytest.raises(InputError) as caught:
        load_truck(name)
    assert words in str(caught.value)


def test_a_file_without_read_permission(tmp_path):
    path = tmp_path / "locked.toml"
    path.symlink_to(path)  # a link to itself: unreadable for every user
    with pytest.raises(InputError):
        load_truck(path)


def with_include(folder: Path, names: str, shared: str = "") -> str:
    (folder / "parts.toml").write_text(shared or SHARED)
    return f"include = {names}\n" + SAMPLE


SHARED = """\
[materials.clay]
density_g_cm3 = 1.8
source = "weighed"

[[part]]
name = "lamp"
on = "chassis"
mass_g = 10
at_mm = [100, 0, 120]
"""


def test_an_included_file_adds_parts_and_materials(tmp_path):
    loaded = load(tmp_path, with_include(tmp_path, '["parts.toml"]'))
    assert loaded.spec.part[-1].name == "lamp"
    assert "clay" in loaded.spec.materials


def test_a_mistake_in_an_included_file_is_told_there(tmp_path):
    shared = SHARED.replace("mass_g = 10", "mass_g = -10")
    (problem,) = mistakes(tmp_path, with_include(tmp_path, '["parts.toml"]', shared))
    assert problem.file.endswith("parts.toml")
    assert problem.line == line_of(shared, "mass_g")
    assert problem.key == "part.lamp.mass_g"


@pytest.mark.parametrize(
    ("names", "shared", "words"),
    [
        ('["../parts.toml"]', "", "outside"),
        ('["/etc/passwd"]', "", "outside"),
        ('["out.toml"]', "", "outside"),
        ('["nowhere.toml"]', "", "cannot be read"),
        ('["."]', "", "folder"),
        ('["parts.toml", "parts.toml"]', "", "twice"),
        ('"parts.toml"', "", "array"),
        ("[3]", "", "array"),
        (str(["parts.toml"] * 20), "", "at most"),
        ('["parts.toml"]', "[chassis]\nwheelbase_mm = 3", "included"),
        ('["parts.toml"]', "part = 3", "[[part]]"),
        ('["parts.toml"]', "grip = 3", "table"),
        ('["parts.toml"]', "include = ['x']", "included"),
        ('["parts.toml"]', "[grip.rock]\nlow = 1", "twice"),
        ('["parts.toml"]', "x = ", "TOML"),
    ],
)
def test_includes_that_are_wrong(tmp_path, names, shared, words):
    folder = tmp_path / "inner"
    folder.mkdir()
    (tmp_path / "parts.toml").write_text(SHARED)
    os.symlink(tmp_path / "parts.toml", folder / "out.toml")
    found = mistakes(folder, with_include(folder, names, shared))
    assert any(words in str(p) for p in found), [str(p) for p in found]
