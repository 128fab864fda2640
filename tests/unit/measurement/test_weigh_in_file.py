"""The readings file: what it means, and one sentence for each mistake in it."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from crossfall.measurement.weigh_in import weigh_in
from crossfall.measurement.weigh_in_file import read_session
from crossfall.measurement.weigh_in_model import Springs, Stand, TruckGeometry, wheel_loads
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import unsprung, whole
from crossfall.tuning.suspension import look
from support import make_truck

GOOD = """\
title = "on the bench"
[truck]
wheelbase_mm = 313
front_track_mm = 170
rear_track_mm = 172
front_radius_mm = 56
rear_radius_mm = 55.5
[scale]
resolution_g = 1
[suspension]
locked = true
[[reading]]
at = "front"
load_g = [1342, 1345, 1341]
[[reading]]
at = "rear"
load_g = 1502
[[reading]]
at = "each wheel"
load_g = [[672, 670, 752, 750], [671, 671, 753, 750]]
[[reading]]
at = "rear"
raised = "front"
block_mm = 90
load_g = [1612, 1614, 1617]
"""


def write(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "scales.toml"
    path.write_text(text)
    return path


def test_a_good_file_is_read_in_si(tmp_path: Path) -> None:
    session = read_session(write(tmp_path, GOOD))
    assert session.ruler.track_rear.value == pytest.approx(0.172)
    assert session.ruler.wheelbase.tolerance == pytest.approx(0.0005)
    assert [r.at for r in session.readings[:3]] == ["front", "rear", "front left"]
    assert session.readings[2].loads == pytest.approx((0.672, 0.671))
    assert session.readings[2].together
    assert session.readings[-1].block.value == pytest.approx(0.09)
    assert session.readings[-1].line == 21
    assert session.free is None
    assert weigh_in(session).mass.value == pytest.approx(2.844, abs=0.003)


def test_lengths_left_out_come_from_the_truck(tmp_path: Path) -> None:
    truck = make_truck(wheelbase=0.320, radius=0.054, tracks=(0.18, 0.18))
    head, tail = GOOD.split("[truck]")
    bare = head + "[scale]" + tail.split("[scale]")[1]
    session = read_session(write(tmp_path, bare), truck)
    assert session.ruler.wheelbase.value == pytest.approx(0.320)
    assert session.ruler.radius_rear.value == pytest.approx(0.054)
    some = read_session(write(tmp_path, GOOD), truck)
    assert some.ruler.wheelbase.value == pytest.approx(0.313)


def test_springs_come_from_the_file_else_the_truck_else_a_wide_guess(tmp_path: Path) -> None:
    free = GOOD.replace("locked = true", "locked = false")
    guessed = read_session(write(tmp_path, free)).free
    assert guessed is not None
    assert not guessed.known
    assert guessed.rate_front.tolerance > 0.5 * guessed.rate_front.value
    theirs = read_session(write(tmp_path, free), make_truck(spring_rate=420.0)).free
    assert theirs is not None
    assert theirs.known
    assert theirs.rate_rear.value == pytest.approx(420.0)
    own = free.replace("locked = false", "locked = false\nfront_spring_n_per_mm = 0.35")
    told = read_session(write(tmp_path, own), make_truck()).free
    assert told is not None
    assert told.rate_front.value == pytest.approx(350.0)


def test_springs_along_their_shocks_count_as_what_they_are_at_the_wheel() -> None:
    truck = load_truck("bramble").truck
    body, looks = whole(truck), look(truck)
    shape = TruckGeometry(
        *np.array([body.mass, *body.cg, truck.wheelbase, truck.front.track, truck.rear.track]),
        *np.array([a.tyre.radius for a in truck.axles]),
    )
    springs = Springs(
        *(np.array(one.wheel_rate) for one in looks),
        np.mean([one.spacing for one in looks]),
        np.mean([one.roll_centre for one in looks]),
        *(np.array(unsprung(truck, i).mass) for i in (0, 1)),
    )
    zero = np.zeros(())
    level, up = (
        1e3 * wheel_loads(shape, springs, Stand(np.array(block), zero, zero, zero, zero))
        for block in (0.0, 0.09)
    )
    readings = [
        {"at": "front", "load_g": [float(level[:2].sum())] * 3},
        {"at": "rear", "load_g": [float(level[2:].sum())] * 3},
        {"at": "rear", "raised": "front", "block_mm": 90, "load_g": [float(up[2:].sum())] * 3},
    ]
    given = {
        "scale": {"resolution_g": 1},
        "suspension": {"locked": False},
        "reading": readings,
    }
    assert weigh_in(read_session(given, truck)).z.value == pytest.approx(body.cg[2], abs=2e-4)


def test_one_reading_may_be_locked_when_the_rest_are_not(tmp_path: Path) -> None:
    text = GOOD.replace("locked = true", "locked = false") + "locked = true\n"
    session = read_session(write(tmp_path, text))
    assert [r.locked for r in session.readings] == [False] * 6 + [True]
    assert session.free is not None


@pytest.mark.parametrize(
    ("old", "new", "line", "key", "words"),
    [
        ("block_mm = 90", "blok_mm = 90", 24, "blok_mm", "did you mean 'block_mm'"),
        ("block_mm = 90\n", "", 21, "block_mm", "needs both raised and block_mm"),
        ("block_mm = 90", "block_mm = 290", 21, "block_mm", "nearly on end"),
        ('at = "front"', 'at = "frnt"', 13, "at", "did you mean 'front'"),
        ("resolution_g = 1", "resolution_g = -1", 9, "resolution_g", "0.0001 or more"),
        ("resolution_g = 1", "resolution_g = nan", 9, "resolution_g", "finite"),
        ("wheelbase_mm = 313\n", "", 2, "wheelbase_mm", "name the truck's own file"),
        ("load_g = 1502", "load_g = [[1, 2, 3, 4]]", 17, "load_g", "at = 'rear'"),
        ("locked = true\n", "", 10, "locked", "has to be given"),
        ("load_g = 1502", "load_g = -3", 17, "load_g", "load"),
        ("load_g = 1502", 'load_g = [1502, "x"]', 17, "load_g", "load"),
        ("load_g = 1502", "load_g = [1502, 1503", 17, "", "not valid TOML"),
    ],
)
def test_a_mistake_is_one_sentence_with_file_line_and_key(
    tmp_path: Path, old: str, new: str, line: int, key: str, words: str
) -> None:
    assert old in GOOD
    with pytest.raises(InputError) as caught:
        read_session(write(tmp_path, GOOD.replace(old, new, 1)))
    (problem,) = caught.value.problems
    assert problem.file.endswith("scales.toml")
    assert problem.line is not None
    if words != "not valid TOML":
        assert problem.line == line
    assert key in problem.key
    assert words in str(problem)


def test_several_mistakes_are_told_at_once(tmp_path: Path) -> None:
    text = GOOD.replace("resolution_g = 1", "resolution_g = 0").replace("= 313", "= -313")
    with pytest.raises(InputError) as caught:
        read_session(write(tmp_path, text))
    assert [p.line for p in caught.value.problems] == [3, 9]


def test_wheels_that_would_touch_are_refused(tmp_path: Path) -> None:
    with pytest.raises(InputError, match="tyres would touch"):
        read_session(
            write(tmp_path, GOOD.replace("front_radius_mm = 56", "front_radius_mm = 1056"))
        )
