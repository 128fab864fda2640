"""The measuring guide: complete in itself, true to the tool, careful with what it replaces."""

from __future__ import annotations

import json
import re
import tomllib
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import pytest

from crossfall import cli
from crossfall.show import guide_drawings as draw
from crossfall.show.guide import MARK, guide_page, write_guide
from crossfall.truck.problems import InputError
from crossfall.tuning.weighin import weigh_in
from crossfall.tuning.weighin_file import read_session
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
    assert len(pictures) == 7
    for picture in pictures:
        root = ElementTree.fromstring(picture)
        assert len(root.attrib["aria-label"]) > 20
        assert root.attrib["role"] == "img"
        assert "nan" not in picture


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


def test_raised_truck_stands_on_its_block_in_the_picture() -> None:
    """The front wheel centre drawn is one radius above the block's top."""
    f = draw.Figure()
    picture = ElementTree.fromstring(draw.raised_weighing(f, 90.0))
    dots = [c for c in picture.iter("circle") if c.attrib["class"] == "dot"]
    rear, front = ((float(d.attrib["cx"]), float(d.attrib["cy"])) for d in dots)
    assert rear[1] - front[1] == pytest.approx(90, abs=0.1)
    apart = ((front[0] - rear[0]) ** 2 + (front[1] - rear[1]) ** 2) ** 0.5
    assert apart == pytest.approx(f.wheelbase, abs=0.1)
    block = next(r for r in picture.iter("rect") if r.attrib["class"] == "wood")
    assert float(block.attrib["y"]) == pytest.approx(front[1] + f.radius, abs=0.1)


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
