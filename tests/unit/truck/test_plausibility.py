"""Likely slips are doubted with the value that was meant, and real trucks are not."""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import pytest

from crossfall.measurement.begin import begin
from crossfall.measurement.readings import checked
from crossfall.measurement.truck_text import truck_text
from crossfall.truck import document
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_names, find_demo
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.plausibility import (
    implausible_in_file,
    implausible_in_source,
    implausible_values,
)
from crossfall.truck.read import Source, in_memory, read_spec, read_text
from crossfall.truck.schema import TruckSpec
from crossfall.truck.toml_line_index import line_index
from measured_builds import QUICK

# What is typed, and what was meant; "" where no one value is certain.
SLIPS: tuple[tuple[str, Any, str], ...] = (
    # kilograms for grams, and a digit too many
    ("part.cab.mass_g", 0.296, "296"),
    ("part.battery pack.mass_g", 0.262, "262"),
    ("part.tyre.mass_g", 0.092, "92"),
    ("part.wiring.mass_g", 0.022, "22"),
    ("part.motor.mass_g", 1720, "172"),
    ("battery.draw_mass_g", 3.3, "3300"),
    # centimetres for millimetres
    ("chassis.wheelbase_mm", 31.3, "313"),
    ("front.track_mm", 17.6, "176"),
    ("rear.tyre.radius_mm", 5.7, "57"),
    ("front.tyre.width_mm", 4.2, "42"),
    ("front.suspension.droop_mm", 1.6, "16"),
    ("rear.suspension.spring_spacing_mm", 11.2, "112"),
    ("part.winch.at_mm", [19.0, 0, 10.8], "190"),
    ("part.battery pack.shape.size_mm", [10.6, 3.4, 2.6], "centimetres"),
    ("part.frame rail.shape.size_mm", [38.8, 0.2, 1.3], "centimetres"),
    ("clearance.nose_mm", [23, 9.2], "[230, 92]"),
    # heights and places from the ground or the middle, where they count from axle or wheel
    ("part.axle housing.at_mm", [0, 0, 57], "0 up"),
    ("part.differential.at_mm", [0, -8, 59], "2 up"),
    ("part.front knuckle.at_mm", [156.5, 64, 0], "0 along"),
    ("part.wheel hub.at_mm", [0, -2, 57], "0]"),
    ("part.tyre.at_mm", [0, 88, 0], "0 meant"),
    # link ends in the other frame, or on the other side
    ("part.front lower link.axle_end_mm", [152.5, 40, -8], "-4 along"),
    ("part.rear upper link.axle_end_mm", [2, 16, 83], "26 up"),
    ("part.front upper link.chassis_end_mm", [52, 30, 45], "102 up"),
    ("part.rear shock.chassis_end_mm", [126, 56, 150], "-126"),
    # under the ground, beyond the bumper
    ("part.skid plate.at_mm", [-4, 0, -77], "77 up"),
    ("part.rear bumper.at_mm", [-424, 0, 100], ""),
    # other units
    ("front.tyre.stiffness_n_per_mm", 5500, "5.5"),
    ("rear.suspension.spring_n_per_mm", 260, "0.26"),
    ("front.tyre.radius_mm", 114, "57"),
)


def doubted(key: str, value: Any) -> list[Problem]:
    path = find_demo("bramble")
    assert path is not None
    text = document.text_with_value(path.read_text(encoding="utf-8"), key, value)
    try:
        reading = read_text(text, path)
    except InputError:  # beyond the bounds of any truck
        return implausible_in_source(Source(str(path), tomllib.loads(text), line_index(text)))
    return implausible_values(reading.spec, reading.where)


def names(problem: Problem, key: str) -> bool:
    """Whether a doubt is about that key, or about an entry above or below it."""
    return key.startswith(problem.key) or problem.key.startswith(key)


def test_nearly_all_of_thirty_slips_are_doubted() -> None:
    assert len(SLIPS) == 30
    missed = [s for s in SLIPS if not any(names(p, s[0]) for p in doubted(s[0], s[1]))]
    assert len(missed) <= 3, missed


@pytest.mark.parametrize(("key", "value", "meant"), SLIPS, ids=[s[0] for s in SLIPS])
def test_a_doubt_says_what_was_meant_in_one_sentence(key: str, value: Any, meant: str) -> None:
    for problem in (p for p in doubted(key, value) if names(p, key)):
        assert problem.line is not None
        assert problem.allowed.endswith("?")
        assert "\n" not in str(problem)
        assert meant in str(problem)


@pytest.mark.parametrize("name", demo_names())
def test_no_demo_truck_is_doubted(name: str) -> None:
    reading = read_spec(name)
    assert implausible_values(reading.spec, reading.where) == []


def test_a_truck_begun_from_readings_is_not_doubted() -> None:
    reading = read_text(truck_text(begin(checked(QUICK)), "mine"), "mine.toml")
    assert implausible_values(reading.spec, reading.where) == []


def test_small_and_large_scales_are_not_doubted() -> None:
    """All lengths of a demo by a half and by two, masses by the cube."""
    for factor in (0.5, 2.0):
        spec = load_truck("bramble").spec
        data = scaled(spec.model_dump(mode="json", exclude_unset=True), factor)
        other = TruckSpec.model_validate(data)
        assert implausible_values(other, in_memory(other)) == []


def scaled(value: Any, by: float, key: str = "") -> Any:
    if isinstance(value, dict):
        return {k: scaled(v, by, k) for k, v in value.items()}
    if isinstance(value, list):
        return [scaled(v, by, key) for v in value]
    if isinstance(value, bool | str) or value is None:
        return value
    power = 1 if key.endswith("_mm") and "n_per" not in key else 3 if key.endswith("_g") else 0
    return type(value)(value) if power == 0 else float(value) * by**power


def test_a_file_that_is_refused_is_doubted_all_the_same(tmp_path: Path) -> None:
    demo = find_demo("bramble")
    assert demo is not None
    text = demo.read_text(encoding="utf-8")
    path = tmp_path / "slip.toml"
    path.write_text(text.replace("wheelbase_mm = 313", "wheelbase_mm = 31.3"), encoding="utf-8")
    assert "313 meant" in str(implausible_in_file(path)[0])
    path.write_text(text.replace("track_mm = 176", "track_mm = 17.6\nspeed = 3"), encoding="utf-8")
    assert any("176 meant" in str(p) for p in implausible_in_file(path))
    assert implausible_in_file(tmp_path / "missing.toml") == []
