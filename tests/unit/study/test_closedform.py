"""Closed-form sweeps: the quick way gives what the slow way gives."""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow.parquet as pq
import pytest

from closed_tables import closed_form_table
from crossfall.statics import rigid
from crossfall.study.closedform import known_sizes, sizes
from crossfall.study.design import points
from crossfall.study.scenario import Scenario, load_scenario
from crossfall.study.summary import how_asked, summarize
from crossfall.study.sweep import run_scenario
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole

HEAD = 'name = "s"\ntruck = "thistle"\nmethod = "closed form"\nseed = 2\n'


def scenario(folder: Path, text: str, truck: str = "thistle") -> Scenario:
    path = folder / "s.toml"
    path.write_text(HEAD.replace("thistle", truck) + text)
    return load_scenario(path)


def axis(key: str, first: float, last: float, steps: int) -> str:
    return f'[[axis]]\nkey = "{key}"\nfirst = {first}\nlast = {last}\nsteps = {steps}\n'


def whole_table(asked: Scenario) -> dict[str, Any]:
    chunks = list(closed_form_table(asked))
    return {
        name: np.concatenate([c[name] for c in chunks])
        for name in chunks[0]
        if chunks[0][name] is not None
    }


SMOOTH = {
    "tracks and a part": axis("front.track_mm", 150, 200, 4)
    + axis("rear.track_mm", 150, 190, 3)
    + axis("part.battery pack.at_mm.z", 40, 90, 3),
    "wheelbase and a mass": axis("chassis.wheelbase_mm", 280, 330, 5)
    + axis("part.battery pack.mass_g", 100, 300, 4),
    "turned wheels and a track": axis("chassis.steer_deg", -30, 30, 7)
    + axis("front.track_mm", 150, 200, 4),
    "raise and contact": axis("chassis.raise_mm", -5, 20, 4)
    + axis("both.tyre.contact_half_width_mm", 0, 8, 3),
}


@pytest.mark.parametrize("text", SMOOTH.values(), ids=SMOOTH.keys())
def test_a_few_builds_give_what_every_build_gives(tmp_path: Path, text: str) -> None:
    asked = scenario(tmp_path, "headings_deg = [0, 35, 90, 180, 300]\n" + text)
    assert known_sizes(asked) is not None
    table = whole_table(asked)
    expected = []
    for point in points(asked.axes, asked.design, asked.spec.seed):
        edits = dict(zip([a.key for a in asked.axes], point, strict=True))
        truck = build(set_values(asked.loaded.spec, edits), asked.loaded.folder)[0]
        expected.extend(rigid.tip_angle(truck, np.radians(asked.headings)))
    np.testing.assert_allclose(table["tip_deg"], np.degrees(expected), rtol=1e-9)


def test_the_table_is_in_the_order_of_the_trials_with_their_columns(tmp_path: Path) -> None:
    text = axis("both.track_mm", 150, 200, 3) + axis("grip", 0.5, 1.2, 3)
    asked = scenario(tmp_path, "headings_deg = [0, 90]\n[fixed]\nslope_deg = 35\n" + text)
    table = whole_table(asked)
    for i, payload in enumerate(asked.payloads()):
        edits = {"both.track_mm": payload["both.track_mm"]}
        truck = build(set_values(asked.loaded.spec, edits), asked.loaded.folder)[0]
        for name in ("both.track_mm", "grip", "heading_deg", "repeat", "seed"):
            assert table[name][i] == payload[name]
        body = whole(truck)
        assert table["mass_g"][i] == pytest.approx(1000 * body.mass)
        assert table["cg_z_mm"][i] == pytest.approx(1000 * body.cg[2])
        tip = np.degrees(rigid.tip_angle(truck, [np.radians(payload["heading_deg"])])[0])
        slide = np.degrees(np.arctan(payload["grip"]))
        first = "tips" if tip < slide else "slides"
        assert table["tip_deg"][i] == pytest.approx(tip, rel=1e-8)
        assert table["slide_deg"][i] == pytest.approx(slide)
        assert table["goes_at_deg"][i] == pytest.approx(min(tip, slide), rel=1e-8)
        assert table["first"][i] == first
        assert table["on_slope"][i] == ("stands" if min(tip, slide) > 35 else first)


def test_against_a_rail_nothing_slides(tmp_path: Path) -> None:
    asked = scenario(tmp_path, 'hold = "rail"\n' + axis("grip", 0.2, 0.9, 3))
    table = whole_table(asked)
    assert set(table["first"]) == {"tips"}
    assert np.isnan(table["slide_deg"]).all()
    np.testing.assert_array_equal(table["goes_at_deg"], table["tip_deg"])


@pytest.mark.parametrize("drawn", ["", "tolerances = true\n"])
def test_the_grip_is_that_of_the_build(tmp_path: Path, drawn: str) -> None:
    fixed = '[fixed]\n"grip.wet rock.likely" = 0.5\n'
    text = "headings_deg = [0]\n" + drawn + fixed + axis("grip.rock.likely", 0.76, 1.0, 4)
    text += '[[axis]]\nkey = "surface"\nvalues = ["rock", "wet rock", "tilt board"]\n'
    asked = scenario(tmp_path, text, "bramble")
    assert (known_sizes(asked) is None) == bool(drawn)
    table = whole_table(asked)
    expected = [g for rock in (0.76, 0.84, 0.92, 1.0) for g in (rock, 0.5, 0.95)]
    assert list(table["grip"]) == expected
    np.testing.assert_allclose(table["slide_deg"], np.degrees(np.arctan(table["grip"])))


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ('[fixed]\n"grip.rock.likely" = 0.8\n', "bramble on rock, grip 0.8, as a rigid block"),
        ('[fixed]\n"grip.wet rock.likely" = 0.5\n', "bramble on rock, grip 0.9, as a rigid block"),
        (axis("grip.rock.likely", 0.76, 1.0, 4), "bramble on rock, as a rigid block"),
    ],
)
def test_titles_say_the_grip_of_the_builds(tmp_path: Path, text: str, said: str) -> None:
    assert how_asked(scenario(tmp_path, text, "bramble")) == said


def test_a_swept_heading_is_taken_from_the_axis(tmp_path: Path) -> None:
    asked = scenario(tmp_path, axis("heading_deg", 0, 350, 36) + axis("both.track_mm", 150, 180, 4))
    table = whole_table(asked)
    fixed = scenario(
        tmp_path,
        f"headings_deg = {[float(h) for h in range(0, 360, 10)]}\n"
        + axis("both.track_mm", 150, 180, 4),
    )
    other = whole_table(fixed)
    a = table["tip_deg"].reshape(36, 4)
    b = other["tip_deg"].reshape(4, 36)
    np.testing.assert_allclose(a, b.T, rtol=1e-12)


def test_keys_that_are_not_smooth_are_built_one_by_one(tmp_path: Path) -> None:
    text = '[[axis]]\nkey = "part.battery pack.turn_deg.x"\nfirst = -360\nlast = 360\nsteps = 4\n'
    text += '[[axis]]\nkey = "part.battery pack.cg_mm.y"\nfirst = 0\nlast = 40\nsteps = 3\n'
    asked = scenario(tmp_path, "headings_deg = [90]\n" + text)
    assert known_sizes(asked) is None
    table = whole_table(asked)
    for i, payload in enumerate(asked.payloads()):
        edits = {k: v for k, v in payload.items() if "." in k}
        truck = build(set_values(asked.loaded.spec, edits), asked.loaded.folder)[0]
        expected = np.degrees(rigid.tip_angle(truck, [np.pi / 2])[0])
        assert table["tip_deg"][i] == pytest.approx(expected, rel=1e-12)


def test_a_build_that_is_no_truck_is_a_line_with_its_cause(tmp_path: Path) -> None:
    text = axis("part.battery pack.at_mm.x", -5000, 0, 3)
    result = run_scenario(scenario(tmp_path, "headings_deg = [0, 90]\n" + text), tmp_path / "out")
    assert result.lines == 6
    assert 2 <= result.failed < 6
    lines = (tmp_path / "out" / "table.csv").read_text().splitlines()
    assert sum("InputError" in line for line in lines) == result.failed


@pytest.mark.parametrize("hold", ["brakes", "rail"])
def test_a_line_without_a_build_says_no_more_than_what_was_put_in(
    tmp_path: Path, hold: str
) -> None:
    text = f'headings_deg = [0, 90]\nhold = "{hold}"\n[fixed]\nslope_deg = 20\n'
    text += axis("both.track_mm", 30, 176, 2)
    text += '[[response]]\nname = "steep"\nis = "where(slope_deg > 10, 1, 0)"\n'
    result = run_scenario(scenario(tmp_path, text), tmp_path / "out")
    assert result.failed == 2
    lines = pq.read_table(tmp_path / "out" / "table.parquet").to_pylist()
    bad, good = lines[:2], lines[2:]
    given = {"both.track_mm", "heading_deg", "repeat", "seed", "slope_deg", "cause"}
    given |= {"place", "scenario", "spec", "method", "versions", "batch"}
    for line in bad:
        assert line["cause"].startswith("InputError: ")
        assert {k for k, v in line.items() if v is not None} == given
    for line in good:
        nothing = {"cause"} if hold == "brakes" else {"cause", "slide_deg"}
        assert {k for k, v in line.items() if v is None} == nothing
        assert line["steep"] == 1
    with (tmp_path / "out" / "table.csv").open(newline="") as stream:
        assert {row["tip_deg"] for row in list(csv.DictReader(stream))[:2]} == {""}
    morning = summarize(scenario(tmp_path, text), tmp_path / "out")
    assert [h.lines for h in morning.headings] == [1, 1]


HIGH = axis("part.battery pack.at_mm.z", 60, 906.9, 3)


@pytest.mark.parametrize("more", ["", axis("grip", 0.5, 1.0, 2)])
def test_an_end_that_is_no_truck_is_not_answered_from_the_others(tmp_path: Path, more: str) -> None:
    """Beyond about 873 mm the springs cannot hold the body up."""
    asked = scenario(tmp_path, "headings_deg = [90]\n" + HIGH + more, "bramble")
    table = whole_table(asked)
    beyond = table["part.battery pack.at_mm.z"] > 900
    assert all("InputError" in cause for cause in table["cause"][beyond])
    assert np.isnan(table["tip_deg"][beyond]).all()
    assert np.isfinite(table["tip_deg"][~beyond]).all()


def test_corners_that_are_no_trucks_are_not_answered_from_the_others(tmp_path: Path) -> None:
    """Either end alone still stands on its springs; both together do not."""
    text = axis("part.battery pack.at_mm.z", 60, 860, 2)
    text += axis("part.battery pack.mass_g", 100, 300, 2)
    asked = scenario(tmp_path, "headings_deg = [90]\n" + text, "bramble")
    for point in [(460.0, 300.0), (860.0, 200.0)]:
        edits = dict(zip([a.key for a in asked.axes], point, strict=True))
        build(set_values(asked.loaded.spec, edits), asked.loaded.folder)
    assert list(np.isnan(whole_table(asked)["tip_deg"])) == [False, False, False, True]


def test_tolerances_draw_the_same_errors_for_every_build(tmp_path: Path) -> None:
    text = "headings_deg = [90]\nrepeats = 4\ntolerances = true\n"
    table = whole_table(scenario(tmp_path, text + axis("both.track_mm", 150, 180, 2)))
    mass = table["mass_g"].reshape(2, 4)
    np.testing.assert_allclose(mass[0], mass[1], rtol=1e-12)
    assert len(set(mass[0])) == 4


def test_chunks_make_no_difference(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    text = axis("both.track_mm", 150, 180, 7) + axis("part.battery pack.at_mm.z", 40, 90, 5)
    asked = scenario(tmp_path, text)
    table = whole_table(asked)
    monkeypatch.setattr("closed_tables.CHUNK", 4)
    small = whole_table(asked)
    for name, column in table.items():
        np.testing.assert_array_equal(column, small[name])


def test_the_sizes_of_a_truck_give_its_tip_angle(tmp_path: Path) -> None:
    truck = scenario(tmp_path, "").loaded.truck
    mass, mx, my, mz, front, rear, x_front, x_rear, *tracks, back, inwards = sizes(truck)
    assert (back, inwards) == (0.0, 0.0)
    quarters = rigid.rigid_tip_angles(
        front, rear, x_front, x_rear, mx / mass, my / mass, mz / mass, rigid.QUARTERS
    )
    np.testing.assert_allclose(quarters[0], rigid.tip_angle(truck, rigid.QUARTERS), rtol=1e-12)
    assert tracks == [axle.track for axle in truck.axles]
