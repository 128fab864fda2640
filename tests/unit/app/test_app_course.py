"""A course as the bench understands it, and how a truck stands on it."""

from __future__ import annotations

import shutil
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from asking import Server, seen
from crossfall.answers.tips import tip_angles
from crossfall.app.answers import exact_curve, shown_grip
from crossfall.app.course import local_slopes, standing_on_course, understood_course, way_told
from crossfall.app.replay import MAGIC
from crossfall.engines import held
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.errors import InputError

ACROSS = {
    "slope_deg": 20,
    "speed_mm_per_s": 250,
    "points_mm": [[-300, 0], [300, 0]],
    "stones": [{"at_mm": [0, 88], "height_mm": 20}],
    "ramps": [],
}
RAMP = {"at_mm": [0, 0], "turned_deg": 0, "angle_deg": 15, "flank_mm": 200, "top_mm": 100,
        "width_mm": 600}  # fmt: skip


def test_on_a_plain_hill_it_stands_as_on_the_table() -> None:
    """Straight across to the right: right side down, heading 270, the table's own answer."""
    truck = load_truck("thistle").truck
    hill = understood_course({**ACROSS, "points_mm": [[-100, 0], [100, 0]]})
    grip = shown_grip(truck, None)
    told = standing_on_course(hill, exact_curve(truck, grip))
    assert np.allclose(told["slope_deg"], 20)
    assert np.allclose(told["local_heading_deg"], 270)
    tip = np.degrees(tip_angles(truck, [np.radians(270)], grip.likely).goes[0])
    assert np.allclose(told["goes_at_deg"], tip)
    assert np.allclose(told["in_hand_deg"], tip - 20)


def test_a_ramp_adds_to_the_hill_on_its_way_up_and_takes_on_its_way_down() -> None:
    """Up a hill of 20 deg over a ramp of 15: 35, then 20 on top, then 5, all nose uphill."""
    up = {**ACROSS, "points_mm": [[0, -400], [0, 400]], "ramps": [RAMP]}
    slope, heading = local_slopes(understood_course(up))
    assert set(np.round(np.degrees(slope), 6)) == {20.0, 35.0, 5.0}
    assert np.allclose(np.degrees(heading) % 360, 0)
    steep = {**up, "slope_deg": 5}
    slope, heading = local_slopes(understood_course(steep))
    down = np.isclose(np.degrees(slope), 10) & np.isclose(np.degrees(heading) % 360, 180)
    assert down.any(), "15 down on a hill of 5 up: nose down by 10"


def test_a_ramp_across_the_hill_leans_by_both() -> None:
    """cos of the slope is the product of the cosines; the hill is to the right, the ramp ahead."""
    over = {**ACROSS, "points_mm": [[-400, 0], [400, 0]], "ramps": [{**RAMP, "turned_deg": -90}]}
    slope, heading = local_slopes(understood_course(over))
    both = np.degrees(np.arccos(np.cos(np.radians(20)) * np.cos(np.radians(15))))
    assert np.isclose(np.degrees(slope), both).any()
    up = np.degrees(heading[np.isclose(np.degrees(slope), both)]) % 360
    assert ((up > 270) | (up < 270)).all()
    assert up.max() > 271 > 269 > up.min(), "nose up on one flank, down on the other"


def test_the_way_is_told_in_time_and_places() -> None:
    told = way_told(understood_course(ACROSS))
    assert told["seconds"] == pytest.approx(0.6 / 0.25)
    assert told["places_mm"][0] == [-300.0, 0.0]
    assert told["along_mm"][-1] == pytest.approx(600)


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"points_mm": [[0, 0]]}, "no length"),
        ({"points_mm": [[0, 0], [1e9, 0]]}, "out of bounds"),
        ({"points_mm": [[0, 0], [0, "x"]]}, "out of bounds"),
        ({"points_mm": "along"}, "points_mm"),
        ({"points_mm": [[0, 0]] * 61}, "60 at most"),
        ({"slope_deg": 61}, "slope_deg"),
        ({"slope_deg": True}, "slope_deg"),
        ({"slope_deg": float("nan")}, "slope_deg"),
        ({"speed_mm_per_s": 0}, "speed"),
        ({"speed_mm_per_s": 50, "points_mm": [[-1500, 0], [1500, 0]]}, "20 s at most"),
        ({"stones": [{"at_mm": [0, 0], "height_mm": 500}]}, "height_mm"),
        ({"stones": [7]}, "stones"),
        ({"ramps": [{"at_mm": [0, 0]}]}, "turned_deg"),
    ],
)
def test_what_is_no_course_is_refused_in_a_sentence(wrong: dict[str, Any], words: str) -> None:
    with pytest.raises(InputError, match=words):
        understood_course({**ACROSS, **wrong})


@pytest.fixture
def server(tmp_path: Path) -> Iterator[Server]:
    folder = tmp_path / "shop"
    folder.mkdir()
    shutil.copy(demo_folder() / "thistle.toml", folder)
    made = Server(folder, "thistle.toml", tmp_path / "state")
    yield made
    made.close()


def test_where_trucks_cannot_be_driven_the_page_is_told_at_once(
    server: Server, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(held, "installed", lambda engine: engine != "bullet")
    told = server.tell("/api/course", **seen(server.ask("/api/bench")), course=ACROSS)
    assert "trucks are driven in no other engine" in told["problems"][0]


@pytest.mark.bullet
def test_truck_and_reference_are_driven_and_told_apart(server: Server) -> None:
    state = server.ask("/api/bench")
    assert "reference" not in server.tell("/api/course-standing", **seen(state), course=ACROSS)
    heavier = [{"do": "set", "part": state["rows"][5]["name"], "key": "mass_g", "value": 300}]
    state = server.tell("/api/edit", **seen(state), edits=heavier, what="heavier")
    both = server.tell("/api/course-standing", **seen(state), course=ACROSS)
    assert both["truck"]["goes_at_deg"] != both["reference"]["goes_at_deg"]
    found = server.tell("/api/course", **seen(state), course=ACROSS)
    assert found["total"] == 2
    until = time.monotonic() + 120
    while found["state"] == "running" and time.monotonic() < until:
        time.sleep(0.1)
        found = server.ask("/api/course")
    assert (found["state"], found["words"]) == ("done", "")
    assert [f["whose"] for f in found["found"]] == ["truck", "reference"]
    assert {f["outcome"] for f in found["found"]} == {"comes through"}
    assert found["truck"] == state["truck"]
    assert server.bench.tried.courses.poses(found["found"][0]["file"])[:4] == MAGIC
    with pytest.raises(InputError, match="no such drive"):
        server.bench.tried.courses.poses("../thistle.toml")


def test_a_course_is_kept_in_the_folder_and_read_back(server: Server) -> None:
    course = {**ACROSS, "stones": [{"at_mm": [10.5, 0], "height_mm": 12}], "ramps": [RAMP]}
    told = server.tell("/api/keep-course", name="bank two", course=course, over=False)
    assert list(told["courses"]) == ["bank two"]
    back, there = understood_course(told["courses"]["bank two"]), understood_course(course)
    assert back.ramps == there.ramps
    assert back.course.ground == there.course.ground
    assert (back.course.slope, back.course.speed) == (there.course.slope, there.course.speed)
    assert np.array_equal(back.places, there.places)
    refused = server.tell("/api/keep-course", name="bank two", course=ACROSS, over=False)
    assert (refused["refused"], refused["where"]) == (409, "disk")
    told = server.tell("/api/keep-course", name="bank two", course=ACROSS, over=True)
    assert told["courses"]["bank two"]["ramps"] == []
    assert not [t for t in server.ask("/api/bench")["trucks"] if "course" in t], "is no truck"


RIGHT = "slope_deg = 9\nspeed_mm_per_s = 250\npoints_mm = [[0, 0], [300, 0]]\n"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("slope_deg = 22", "points_mm"),
        ("slope_deg = [", "is no TOML"),
        ("slope = 22", "slope: is no key here; did you mean 'slope_deg'?"),
        (f"{RIGHT}[[stone]]\nat_mm = [0, 9]\nheight = 9", "stone.height: is no key here; did you"),
        (f"{RIGHT}[[ramp]]\nhight_mm = 9", "ramp.hight_mm: is no key here; did you"),
        ("slope_deg = 99\nspeed_mm_per_s = 250\npoints_mm = [[0, 0], [300, 0]]", "slope_deg"),
        (f"stone = 3\n{RIGHT}", "stones"),
        ("#" * 100_001, "too big"),
    ],
)
def test_a_course_file_that_is_none_is_told(server: Server, text: str, words: str) -> None:
    (server.bench.folder / "odd.course.toml").write_text(text)
    told = server.ask("/api/courses")
    assert told["courses"] == {}
    assert told["wrong"][0].startswith("odd.course.toml: ")
    assert words in told["wrong"][0]


@pytest.mark.parametrize(
    ("name", "course", "words"),
    [
        ("../out", {}, "is not a usable file name"),
        ("steep", {"slope_deg": 99}, "slope_deg"),
    ],
)
def test_what_cannot_be_kept_is_not_written(
    server: Server, name: str, course: dict[str, Any], words: str
) -> None:
    before = sorted(server.bench.folder.iterdir())
    told = server.tell("/api/keep-course", name=name, course={**ACROSS, **course}, over=True)
    assert words in told["problems"][0]
    assert sorted(server.bench.folder.iterdir()) == before
