"""The measuring guide: complete in itself, true to the tool, careful with what it replaces."""

from __future__ import annotations

import json
import re
import tomllib
from dataclasses import replace
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest
from matplotlib.colors import to_hex
from matplotlib.figure import Figure
from matplotlib.transforms import Bbox

from crossfall import cli
from crossfall.measurement.weigh_in import weigh_in
from crossfall.measurement.weigh_in_file import read_session
from crossfall.show import guide_drawings as draw
from crossfall.show import guide_tyres
from crossfall.show.guide import MARK, METHOD, guide_page, write_guide
from crossfall.truck.errors import InputError
from crossfall.truck.model import GRAVITY, Truck
from crossfall.truck.schema import TyreSpec
from support import make_truck

VOID = {"meta", "br", "link"}


class Page(HTMLParser):
    """Tags in balance, their attributes, and the text."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.pre: list[str] = []
        self.text = ""
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.attributes += attrs
        if tag not in VOID:
            self.open.append(tag)
        if tag == "pre":
            self.pre.append("")

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.attributes += attrs

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.text += data
        if "pre" in self.open:
            self.pre[-1] += data


def test_the_page_is_well_formed_and_fetches_nothing() -> None:
    html = guide_page()
    page = Page(html)
    assert page.open == []
    assert "http" not in re.sub(r'xmlns="[^"]*"', "", html)
    assert not [v for k, v in page.attributes if k in ("src", "href")]
    assert "url(" not in html
    assert "@import" not in html


def test_every_picture_is_drawn_and_has_words_for_those_who_do_not_see_it() -> None:
    pictures = re.findall(r"<svg.*?</svg>", guide_page(), re.DOTALL)
    assert len(pictures) == 10
    for picture in pictures:
        root = ElementTree.fromstring(picture)
        assert len(root.attrib["aria-label"]) > 20
        assert root.attrib["role"] == "img"
        assert "nan" not in picture
        assert "id" not in {k for e in root.iter() for k in e.attrib}  # none meets another's


def test_the_cautions_are_there() -> None:
    text = Page(guide_page()).text
    for word in ("Unplug the pack", "dust", "soft mat", "Fingers", "carries people", "local codes"):
        assert word in text


def test_the_readings_file_on_the_page_is_one_the_tool_reads(tmp_path: Path) -> None:
    scales = Page(guide_page()).pre[0]
    path = tmp_path / "scales.toml"
    path.write_text(scales)
    found = weigh_in(read_session(path))
    assert found.mass.value == pytest.approx(2.844, abs=0.005)
    assert found.z.measured


def test_the_commands_on_the_page_are_verbs_of_the_tool() -> None:
    commands = Page(guide_page()).pre[1]
    verbs = re.findall(r"^crossfall ([\w-]+)", commands, re.MULTILINE)
    assert verbs == ["weigh-in", "board", "reconcile"]
    assert set(verbs) <= set(cli.VERBS)


def test_a_truck_brings_its_own_numbers() -> None:
    truck = make_truck(wheelbase=0.340, tracks=(0.18, 0.19), radius=0.06)
    page = Page(guide_page(truck, "sample"))
    told = tomllib.loads(page.pre[0].replace("[   ,    ,    ]", "[1]"))
    assert told["truck"]["wheelbase_mm"] == 340
    assert told["truck"]["rear_track_mm"] == 190
    assert told["reading"][-1]["block_mm"] == 100
    assert "crossfall board sample" in page.pre[1]
    assert "side-hill, left side down" in page.text


def filled(figure: Figure, ink: str) -> list[Bbox]:
    """What is filled with an ink, in the order drawn; mm."""
    shapes = [p for axes in figure.axes for p in axes.patches if p.get_fill()]
    return [
        p.get_path().get_extents()
        for p in shapes
        if to_hex(p.get_facecolor()) == getattr(draw.INK, ink)
    ]


def test_raised_truck_stands_on_its_block_in_the_picture() -> None:
    """The front wheel centre drawn is one radius above the block's top."""
    f = draw.Measures()
    figure = draw.raised_weighing(f, 90.0)
    rear, front = (d.intervalx.mean() + 1j * d.intervaly.mean() for d in filled(figure, "red"))
    assert (front - rear).imag == pytest.approx(90)
    assert abs(front - rear) == pytest.approx(f.wheelbase)
    (block,) = filled(figure, "wood")
    assert block.y1 == pytest.approx(front.imag - f.radius)


def test_the_sums_for_a_tyre_come_out_and_are_lines_of_a_chassis_file() -> None:
    truck = make_truck(tyre_stiffness=5200.0, tangential=0.7)
    page = Page(guide_page(truck, "sample"))
    table = tomllib.loads(page.pre[2])["front"]["tyre"]
    tyre = TyreSpec(radius_mm=57, width_mm=42, **table)
    sums = re.findall(r"(\d+) ÷ ([\d.]+) × ([\d.]+) =\s*([\d.]+) ± ([\d.]+)", page.text)
    found = (tyre.stiffness_n_per_mm, tyre.lateral_n_per_mm, tyre.longitudinal_n_per_mm)
    assert len(sums) == 3
    for (grams, way, factor, value, _), told in zip(sums, found, strict=True):
        assert float(value) == told
        assert float(grams) / float(way) * float(factor) == pytest.approx(told, abs=0.05)
        assert float(factor) == pytest.approx(GRAVITY / 1e3, rel=1e-3)
    # Worked backwards from the truck's own tyres, to what 0.1 mm on the ruler makes of them.
    for told, exact, (_, way, *_) in zip(found, (5.2, 3.64, 3.64), sums, strict=True):
        assert told == pytest.approx(exact, rel=0.05 / float(way) + 0.05 / told)


def with_rear_tyre(truck: Truck, **changes: float) -> Truck:
    return replace(truck, rear=replace(truck.rear, tyre=replace(truck.rear.tyre, **changes)))


def way(truck: Truck, height: float, direction: int) -> float:
    """m from a pull of 1 N on the front axle to one the other way, suspension tied up and rear
    wheels on pencils: a rigid truck on four tyres, linear. direction: 0 along or 1 across."""
    stiffness = np.zeros((6, 6))
    for i, axle in enumerate(truck.axles):
        for side in (1, -1):
            x, y = axle.x, side * axle.track / 2
            at = np.hstack([np.eye(3), [[0, 0, -y], [0, 0, x], [y, -x, 0]]])
            t = axle.tyre
            k = [0.0 if i else t.longitudinal, t.lateral, t.stiffness]
            stiffness += at.T @ np.diag(k) @ at
    x, z = truck.front.x, height
    there = np.hstack([np.eye(3), [[0, z, 0], [-z, 0, x], [0, -x, 0]]])
    moved = there @ np.linalg.solve(stiffness, there[direction])
    return 2 * float(moved[direction])


@pytest.mark.parametrize("ratio", [0.3, 0.6, 1.0])
@pytest.mark.parametrize("rear", [0.5, 2.0])
def test_pull_over_way_is_the_stiffness_of_one_tyre_to_a_tenth(ratio: float, rear: float) -> None:
    """What the page lets one work out, on a truck that leans, turns and pitches as it is pulled."""
    truck = make_truck(tangential=ratio)
    other = truck.rear.tyre
    truck = with_rear_tyre(truck, lateral=rear * other.lateral, stiffness=other.stiffness / rear)
    tyre = truck.front.tyre
    low = guide_tyres.FOOT * tyre.radius
    assert 1 / way(truck, low, 1) == pytest.approx(tyre.lateral, rel=METHOD)
    assert 1 / way(truck, tyre.radius, 0) == pytest.approx(tyre.longitudinal, rel=METHOD)
    assert way(truck, tyre.radius, 1) > way(truck, low, 1)  # why the page says to pull low


def test_pulled_sideways_the_tread_stays_and_the_rim_moves() -> None:
    f = draw.Measures()
    rows = []
    for gives in (0.0, 8.0):
        figure, axes = draw.blank("rear", -150, -10, 300, 250)
        draw.truck_rear(axes, f, gives)
        tyres = [
            p.get_path().vertices
            for p in axes.patches
            if to_hex(p.get_facecolor()) == draw.INK.tyre
        ]
        assert len(tyres) == len(filled(figure, "tyre")) == 2
        rows.append([(t[t[:, 1] == 0, 0], t[t[:, 1] == 2 * f.radius, 0]) for t in tyres])
    for (foot, top), (foot_pulled, top_pulled) in zip(*rows, strict=True):
        assert np.ptp(foot) == pytest.approx(f.tread)
        # the corners of the tread bend up a little, as the rim goes over
        assert foot_pulled == pytest.approx(foot)
        assert top_pulled == pytest.approx(top + 8)


def test_it_replaces_an_older_guide_and_nothing_else(tmp_path: Path) -> None:
    path = tmp_path / "page.html"
    write_guide(path)
    first = path.read_bytes()
    write_guide(path)
    assert path.read_bytes() == first
    assert MARK.encode() in first
    path.write_text("my notes")
    with pytest.raises(InputError, match="no measuring guide"):
        write_guide(path)
    assert path.read_text() == "my notes"


def test_the_verb_writes_the_page(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr("sys.argv", ["crossfall", "guide", "--json"])
    with pytest.raises(SystemExit) as ended:
        cli.main()
    assert not ended.value.code
    answer = json.loads(capsys.readouterr().out)
    assert answer["file"] == "measuring-guide.html"
    assert (tmp_path / "measuring-guide.html").read_text().startswith("<!doctype html>")
