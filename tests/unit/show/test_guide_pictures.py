"""The guide's pictures: legible, coloured by the page, and the corners they are made of."""

from __future__ import annotations

import re
from collections.abc import Callable
from importlib.resources import files
from typing import Any
from xml.etree import ElementTree

import numpy as np
import pytest
from looks import clipped, overlaps
from matplotlib.figure import Figure
from matplotlib.path import Path as Curve

from crossfall.app.wizard import drawings
from crossfall.show import guide_drawings as draw
from crossfall.show import guide_tyres as tyres
from crossfall.show import paper, style
from crossfall.show.guide import guide_page

F = draw.Measures()
PICTURES: list[tuple[Callable[..., Figure], tuple[Any, ...]]] = [
    (draw.lengths, (F,)),
    (draw.track, (F,)),
    (draw.damper, ()),
    (draw.tyre_size, (F,)),
    (draw.raised_weighing, (F, 90.0)),
    (draw.tilt_board, (F, 36.0)),
    (draw.headings, ()),
    (tyres.pressed, (F, "1000 g")),
    (tyres.sideways, (F, "1.00 kg")),
    (tyres.along, (F, "1.00 kg")),
    *((draw.weighing, (F, on)) for on in ("front", "rear", "left", "right")),
    *((draw.corner_weighing, (c,)) for c in ("front left", "rear right")),
]


@pytest.mark.parametrize(("picture", "given"), PICTURES)
def test_no_text_over_another_and_none_off_the_picture(picture, given):
    made = style.styled(picture)(*given)
    assert overlaps(made) == []
    assert clipped(made) == []


def test_words_stay_words_and_bytes_are_the_same_each_time():
    lengths = draw.page_svg(draw.lengths, F)
    said = ["".join(e.itertext()) for e in ElementTree.fromstring(lengths).iter("text")]
    assert said == ["wheelbase", "r"]
    assert draw.page_svg(draw.lengths, F) == lengths


def test_every_colour_of_a_picture_is_one_that_both_pages_set():
    """By day and by night. What a scale shows is black on a display that stays light."""
    names = set(draw.INK._fields)
    assert len(set(draw.INK)) == len(names)
    colours = set(re.findall(r'(?:fill|stroke)="([^"]*)"', "".join(drawings(F).values())))
    assert colours == {f"var(--{name})" for name in names} | {"none"}
    guide = re.findall(r":root \{(.*?)\}", guide_page(), re.DOTALL)
    bench = files("crossfall.app").joinpath("static/bench.css").read_text("utf-8")
    assert len(guide) == 2
    for css in (*guide, bench):
        assert names <= set(re.findall(r"--(\w+):", css))


class Older(Figure):
    """Writes its text as matplotlib 3.9 does."""

    def savefig(self, file, **_):
        text = "font: {}px 'DejaVu Sans', sans-serif; text-anchor: middle"
        rows = (text.format("700 12.5"), text.format("9"))
        turned = 'x="1" y="2" transform="rotate(-0 1 2)"'
        drawn = "".join(f'<text style="{row}" {turned}>a &amp; b</text>' for row in rows)
        svg = f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9.123456 9">{drawn}</svg>'
        file.write(svg.encode())


def test_an_older_matplotlib_s_letters_have_the_same_size_and_weight():
    made = Older()
    made.set_label('"a" < b')
    root = ElementTree.fromstring(style.inline_svg(made, {}))
    bold, plain = (e.attrib for e in root)
    assert bold == {**plain, "font-size": "12.5px", "font-weight": "700"}
    assert plain["font-size"] == "9px"
    assert "transform" not in plain
    assert root[0].text == "a & b"
    assert root.attrib["aria-label"] == '"a" < b'


@pytest.mark.parametrize("closed", [True, False])
def test_a_bent_corner_begins_where_it_is_told(closed):
    """From r before the corner to r after it, by the corner as the parabola's control point."""
    square = np.array([[0, 0], [10, 0], [10, 10], [0, 10]])
    curve = paper.bent(square, 2.0, closed)
    bends = [list(v.reshape(-1, 2)) for v, code in curve.iter_segments() if code == Curve.CURVE3]
    assert len(bends) == (4 if closed else 2)
    at = {tuple(map(float, control)): tuple(map(float, end)) for control, end in bends}
    assert at[10, 0] == (10, 2)
    assert at[10, 10] == (8, 10)
    ends = curve.vertices[[0, -1]]
    assert ends.tolist() == ([[0, 2], [0, 2]] if closed else [[0, 0], [0, 10]])


def test_a_bend_takes_half_a_short_side_at_most():
    curve = paper.bent([(0, 0), (2, 0), (2, 10)], 5.0, False)
    assert curve.vertices.tolist() == [[0, 0], [1, 0], [2, 0], [2, 5], [2, 10]]


def test_an_upright_measure_turns_its_words_but_no_letter_alone():
    turned = []
    for text in ("H", "CG 90"):
        _, axes = style.paper_page(60, 60)
        paper.dimension(axes, (10, 10), (10, 50), 20, text, upright=True, color="#b3400a")
        turned.append(axes.texts[0].get_rotation())
        assert "#b3400a" in {line.get_color() for line in axes.lines}
    assert turned == [0, 90]
