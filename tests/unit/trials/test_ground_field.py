"""Grounds from files: what is read, how it is laid, and what is refused."""

from __future__ import annotations

import csv
import io
import json
import math
from pathlib import Path

import numpy as np
import pytest
import trimesh
from click.testing import CliRunner
from PIL import Image

from crossfall.cli import crossfall
from crossfall.study.scenario import load_scenario
from crossfall.study.sweep import run_scenario
from crossfall.trials.drive import Drive
from crossfall.trials.grounds.field import Field, heights_between, laid_heights
from crossfall.trials.slope import cross_slope
from crossfall.truck.build import build, load_truck
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array, frozen
from support import make_truck


def hump(nx: int = 31, ny: int = 41, high: float = 20.0, left: float = 0.0) -> Array:
    """mm, a ridge of one cosine wave across the way, higher to the left by `left` a cell."""
    along = 1 - np.cos(np.linspace(0.0, math.tau, nx))
    return frozen(high / 2 * along[:, None] * (1 + left * np.arange(ny)))


def table(folder: Path, heights: Array, name: str = "hump.npy") -> Path:
    np.save(folder / name, heights)
    return folder / name


def asked(path: Path, **more: float) -> Field:
    return Field.asked({"field_file": path.name, **more}, path.parent)


def test_a_table_goes_ahead_and_to_the_left(tmp_path: Path) -> None:
    heights = hump(left=0.02)
    cell, laid = laid_heights(asked(table(tmp_path, heights), field_cell_mm=20.0))
    assert cell == pytest.approx(0.02)
    assert laid == pytest.approx(heights / 1000)
    assert laid[15, -1] > laid[15, 0]
    at = heights_between(laid, cell, frozen([-1.0, 0.3, 0.31, 9.0]), frozen([-9.0, 0.0, 9.0]))
    assert at[1] == pytest.approx(laid[15, [0, 20, 40]])
    assert at[2] == pytest.approx((laid[15] + laid[16])[[0, 20, 40]] / 2)
    assert at[0] == pytest.approx(laid[0, [0, 20, 40]])
    assert at[3] == pytest.approx(laid[-1, [0, 20, 40]])


@pytest.mark.parametrize(("white", "kind"), [(255, np.uint8), (65535, np.uint16)])
def test_a_picture_is_seen_from_above_with_its_top_ahead(
    tmp_path: Path, white: int, kind: type
) -> None:
    heights = np.linspace(0.0, 1.0, 30)[:, None] * np.linspace(0.5, 1.0, 20)  # up ahead and left
    pixels = np.round(heights * white).astype(kind)[::-1, ::-1]
    Image.fromarray(pixels).save(tmp_path / "rise.png")
    field = asked(tmp_path / "rise.png", field_cell_mm=20.0, field_rise_mm=100.0)
    laid = laid_heights(field)[1]
    assert laid == pytest.approx(0.1 * heights, abs=0.1 / white)


def test_a_surface_is_seen_from_above(tmp_path: Path) -> None:
    """A tent over 600 x 400 mm, 60 mm high along its ridge, which lies across the way."""
    corners = [(0, 0, 0), (300, 0, 60), (600, 0, 0), (0, 400, 0), (300, 400, 60), (600, 400, 0)]
    faces = [(0, 1, 4), (0, 4, 3), (1, 2, 5), (1, 5, 4)]
    trimesh.Trimesh(corners, faces, process=False).export(tmp_path / "tent.ply")
    _, laid = laid_heights(asked(tmp_path / "tent.ply", field_cell_mm=20.0))
    assert laid.shape == (30, 20)
    middles = 0.02 * (np.arange(30) + 0.5)
    expected = 0.06 * (1 - np.abs(middles - 0.3) / 0.3)
    assert laid == pytest.approx(np.repeat((expected - expected[0])[:, None], 20, axis=1), abs=1e-6)


def test_finer_cells_are_averaged_to_those_the_engine_can_carry(tmp_path: Path) -> None:
    heights = np.repeat(np.repeat(hump(16, 21), 10, axis=0), 10, axis=1)
    ripple = heights + 0.5 * (-1) ** np.arange(heights.shape[0])[:, None]  # +-0.5 mm, 2 mm apart
    plain, rippled = (
        laid_heights(asked(table(tmp_path, h, f"{i}.npy"), field_cell_mm=2.0))
        for i, h in enumerate((heights, ripple))
    )
    assert plain[0] == rippled[0] == 0.02
    assert rippled[1] == pytest.approx(plain[1], abs=1.5e-4)
    assert np.ptp(plain[1]) == pytest.approx(0.02, rel=0.02)


@pytest.mark.bullet
def test_a_level_field_is_a_plane_and_a_hump_is_not(tmp_path: Path) -> None:
    truck, slope = make_truck(), math.radians(15.0)
    level = asked(table(tmp_path, frozen(np.zeros((31, 41))), "level.npy"), field_cell_mm=20.0)
    right = np.clip((20 - np.arange(41)) / 3, 0.0, 1.0)  # uphill at heading 90
    high = asked(table(tmp_path, frozen(hump() * right)), field_cell_mm=20.0)
    margins = [
        cross_slope(truck, slope, speed=0.3, ground=ground, grip=1.5).least_margin
        for ground in (None, level, high)
    ]
    assert margins[1] == pytest.approx(margins[0], abs=math.radians(0.3))
    assert margins[2] < margins[0] - math.radians(1.0)


@pytest.mark.bullet
def test_a_picture_is_driven_over_as_its_heights_are(tmp_path: Path) -> None:
    """A round hump, the same from all sides, under the uphill wheels and then not."""
    truck, slope = make_truck(), math.radians(15.0)
    x, y = np.meshgrid(np.linspace(-1, 1, 31), np.linspace(-1, 1, 31), indexing="ij")
    grey = np.round(255 * np.clip(1 - x**2 - y**2, 0.0, 1.0)).astype(np.uint8)
    Image.fromarray(grey).save(tmp_path / "hump.png")
    grounds = (
        asked(table(tmp_path, frozen(grey * 30.0 / 255)), field_cell_mm=20.0),
        asked(tmp_path / "hump.png", field_cell_mm=20.0, field_rise_mm=30.0),
        None,
    )
    heights, picture, plane = (
        cross_slope(truck, slope, speed=0.3, ground=ground, grip=1.5) for ground in grounds
    )
    assert picture.least_margin == pytest.approx(heights.least_margin, abs=1e-9)
    assert picture.least_load == pytest.approx(heights.least_load, abs=1e-6)
    assert abs(picture.least_margin - plane.least_margin) > math.radians(0.1)


@pytest.mark.bullet
@pytest.mark.parametrize("track", [176.0, 184.0])
def test_no_wheel_is_lost_at_the_seams_of_a_level_field(tmp_path: Path, track: float) -> None:
    loaded = load_truck("bramble")
    truck = build(set_values(loaded.spec, {"both.track_mm": track}), loaded.folder)[0]
    level = asked(table(tmp_path, frozen(np.zeros((26, 25))), "level.npy"), field_cell_mm=20.0)
    untwisted = Drive(shaft_ratio=1e9)  # the least load is then that of setting off, on either
    plain, laid = (
        cross_slope(
            truck, math.radians(25.0), speed=0.25, ground=ground, grip=0.72, drive=untwisted
        )
        for ground in (None, level)
    )
    # N, of a truck of 36: the two set off a little apart, for the field begins behind the truck.
    assert laid.least_load == pytest.approx(plain.least_load, abs=0.1)


def png(pixels: Array, mode: str) -> bytes:
    made = io.BytesIO()
    Image.fromarray(pixels).convert(mode).save(made, "PNG")
    return made.getvalue()


GREY = np.full((20, 20), 100, np.uint8)


@pytest.mark.parametrize(
    ("name", "data", "more", "said"),
    [
        ("a.npy", hump()[:, :1], {}, "holds 31 x 1 heights"),
        ("a.npy", np.zeros((20, 20, 2)), {}, "holds 20 x 20 x 2 heights"),
        ("a.npy", np.full((20, 20), np.nan), {}, "has no height at 100.0 %"),
        ("a.npy", np.full((20, 20), "x"), {}, "holds no real numbers"),
        ("a.npy", b"\x93NUMPY nonsense", {}, "is no table"),
        ("a.npy", hump(high=150.0), {"field_cell_mm": 10.0}, "deg steep ahead"),
        ("a.npy", hump(left=5.0), {"field_cell_mm": 20.0}, "from its lowest to its highest"),
        ("a.npy", hump(), {"field_cell_mm": 1.0}, "is 20 mm long and 40 mm wide"),
        ("a.npy", hump(900, 30), {"field_cell_mm": 100.0}, "is 89900 mm long"),
        ("a.npy", hump(), {"field_rise_mm": 10.0}, "says its heights itself"),
        ("a.png", png(GREY, "L"), {}, "needs to be told how high"),
        ("a.png", png(GREY, "RGB"), {"field_rise_mm": 9.0}, "is a picture in colour"),
        ("a.png", b"GIF89a", {"field_rise_mm": 9.0}, "is no picture"),
        ("a.stl", b"solid nothing", {}, "names"),
        ("a.txt", b"1 2 3", {}, "is of no kind"),
    ],
)
def test_what_holds_no_ground_is_refused(
    tmp_path: Path, name: str, data: bytes | Array, more: dict[str, float], said: str
) -> None:
    if isinstance(data, bytes):
        (tmp_path / name).write_bytes(data)
    else:
        np.save(tmp_path / name, data)
    with pytest.raises(InputError) as caught:
        asked(tmp_path / name, **more)
    (problem,) = caught.value.problems
    assert said in problem.what
    assert name in problem.file


@pytest.mark.parametrize("name", ["none.npy", "", "\0.npy"])
def test_a_file_that_is_not_there_is_said(tmp_path: Path, name: str) -> None:
    with pytest.raises(InputError, match=r"cannot be read|is of no kind"):
        Field.asked({"field_file": name or "."}, tmp_path)


@pytest.mark.bullet
def test_it_is_asked_for_on_the_command_line(tmp_path: Path) -> None:
    path = table(tmp_path, hump())
    words = ["slope", "thistle", "--slope", "12", "--field", str(path), "--field-cell", "20"]
    words += ["--speed", "400", "--grip", "1.2", "--json"]
    said = json.loads(CliRunner().invoke(crossfall, words, standalone_mode=False).output)
    assert said["ground"]["kind"] == "field"
    assert said["ground"]["file"] == "hump.npy"
    assert len(said["ground"]["digest"]) == 64
    bad = CliRunner().invoke(crossfall, [*words[:4], "--field-cell", "20"], standalone_mode=False)
    assert "--field-cell needs --field" in getattr(bad.exception, "message", "")


SCENARIO = """\
name = "humps"
truck = "thistle"
method = "slope trial"
headings_deg = [90]
[fixed]
slope_deg = 12
speed_mm_per_s = 400
grip = 1.2
field_cell_mm = 20
[[axis]]
key = "field_file"
values = ["low.npy", "high.npy"]
"""


@pytest.mark.bullet
def test_scenarios_vary_it_and_keep_its_digest(tmp_path: Path) -> None:
    for name, high in (("low.npy", 5.0), ("high.npy", 20.0)):
        table(tmp_path, hump(high=high), name)
    path = tmp_path / "humps.toml"
    path.write_text(SCENARIO)
    scenario = load_scenario(path)
    run_scenario(scenario, tmp_path / "out", workers=1)
    with (tmp_path / "out" / "table.csv").open() as stream:
        rows = list(csv.DictReader(stream))
    digests = {row["field_file"]: row["ground_digest"] for row in rows}
    for name in ("low.npy", "high.npy"):
        assert digests[name] == asked(tmp_path / name, field_cell_mm=20.0).digest
    # Another file under the same name is another trial.
    table(tmp_path, hump(high=8.0), "low.npy")
    again = run_scenario(load_scenario(path), tmp_path / "out", workers=1)
    assert (again.trials, again.known) == (2, 1)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (('"high.npy"', '"gone.npy"'), "gone.npy: cannot be read: No such file"),
        (('"high.npy"', "3"), "field_file is 3.0; it must be the name of a file"),
        (("[[axis]]", "stone_mm = 3\n[[axis]]"), "'field_file' is given and so is stone_mm"),
        (("field_file", "stone_mm"), "'field_cell_mm' is given without field_file"),
    ],
)
def test_mistakes_are_found_before_anything_runs(
    tmp_path: Path, change: tuple[str, str], said: str
) -> None:
    for name in ("low.npy", "high.npy"):
        table(tmp_path, hump(), name)
    text = SCENARIO.replace(*change)
    if "stone_mm" in change[1] and "[[axis]]" not in change[0]:
        text = text.replace('["low.npy", "high.npy"]', "[1, 2]")
    path = tmp_path / "humps.toml"
    path.write_text(text)
    with pytest.raises(InputError) as caught:
        load_scenario(path)
    assert [said in str(p) for p in caught.value.problems] == [True], caught.value.problems
