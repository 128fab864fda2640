"""`crossfall suspension` as a user meets it, and what its moved link ends are worth."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

from crossfall.answers.tips import tip_angles
from crossfall.cli import crossfall
from crossfall.show.style import render
from crossfall.show.suspension import draw_suspension
from crossfall.truck.build import load_text
from crossfall.truck.model import GRAVITY
from crossfall.truck.read import locate
from crossfall.tuning.suspension import look
from linked_files import linked, linked_text
from numbered_files import numbered_text


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "on links.toml"
    path.write_text(linked_text("bramble"), encoding="utf-8")
    return path


def run(*args: str) -> str:
    done = CliRunner().invoke(crossfall, ["suspension", *args], catch_exceptions=False)
    assert done.exit_code == 0, done.output
    return done.output


def test_json_holds_numbers_curves_and_moves(file: Path, tmp_path: Path) -> None:
    told = json.loads(run(str(file), "--json", "--plots", str(tmp_path)))
    front, rear = told["axles"]
    assert front["roll_centre_mm"] == pytest.approx(86.1, abs=0.05)
    assert front["anti_dive_percent"] == pytest.approx(123, abs=0.6)
    assert rear["anti_squat_percent"] == pytest.approx(123, abs=0.6)
    assert front["roll_steer_deg_per_deg"] < 0 < rear["roll_steer_deg_per_deg"]
    assert front["travel"]["heave_mm"][0] == pytest.approx(-16, abs=0.05)
    assert front["travel"]["heave_mm"][-1] == pytest.approx(20, abs=0.05)
    # Above the ground that comes up with the axle: it was counted from where the ground had been,
    # and a centre that stays where it is seemed to go up by the whole heave.
    centres = front["travel"]["roll_centre_mm"]
    assert 3.0 < max(centres) - min(centres) < 6.0
    assert len(told["moves"]) == 4 * 2 * 3
    assert all(Path(p).stat().st_size > 10_000 for p in told["files"])


def test_a_moved_end_is_worth_what_the_edited_file_says(file: Path) -> None:
    told = json.loads(run(str(file), "--json"))
    (row,) = (
        m
        for m in told["moves"]
        if (m["part"], m["end"], m["axis"]) == ("rear lower link", "axle", "up")
    )
    text = linked_text("bramble")
    at = text.index('name = "rear lower link"')
    edited = text[:at] + text[at:].replace("[4, 40, -8]", "[4, 40, -3]", 1)
    before, after = (load_text(t, Path(locate("bramble"))).truck for t in (text, edited))
    headings = np.radians([90.0, 270.0, 0.0, 180.0])
    grip = before.grips[0].likely
    change = np.degrees(
        tip_angles(after, headings, grip).free - tip_angles(before, headings, grip).free
    )
    assert row["climb_deg"] == pytest.approx(change[2], abs=1e-6)
    assert row["descent_deg"] == pytest.approx(change[3], abs=1e-6)
    assert row["side_deg"] == pytest.approx(change[:2].min(), abs=1e-6)
    assert abs(row["climb_deg"]) > 0.2


def test_the_tables_name_every_link_end(file: Path) -> None:
    text = run(str(file))
    for words in ("roll centre, mm", "over the travel", "front upper link, chassis end up"):
        assert words in text


def test_a_truck_without_links_has_its_own_numbers(tmp_path: Path) -> None:
    path = tmp_path / "plain.toml"
    path.write_text(numbered_text("thistle"), encoding="utf-8")
    text = run(str(path))
    assert "the file's numbers" in text
    assert "No link part says what it is" in text


@pytest.mark.parametrize("shocks", [False, True])
def test_curves_agree_with_small_movements(shocks: bool) -> None:
    """The wheel rate is the slope of the load, and what is pressed at the ends is the stop."""
    truck = linked("thistle", shocks=shocks).truck
    for axle, one in zip(truck.axles, look(truck), strict=True):
        t, s = one.travel, axle.suspension
        assert np.interp(0.0, t.heave, t.wheel_rate) == pytest.approx(one.wheel_rate, rel=1e-6)
        assert (one.bump > s.bump * 1.1) == shocks
        anti = np.interp(0.0, t.heave, t.anti)
        assert anti == pytest.approx(one.anti, rel=1e-6)
        slope = np.gradient(t.castor, t.heave)
        assert np.interp(0.0, t.heave, slope) == pytest.approx(one.castor, rel=0.02)
        load = one.squeeze[0] * s.spring_rate
        assert 0 < load < truck.chassis.mass * GRAVITY


def test_the_picture_is_the_same_every_time() -> None:
    truck = linked("burdock", shocks=True).truck
    first, second = (render(draw_suspension(truck, look(truck)), "svg") for _ in range(2))
    assert first == second
