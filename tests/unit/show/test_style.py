"""Palette for colour-blind eyes and grey copies; files that come out the same each time."""

from __future__ import annotations

import re
from concurrent.futures import ThreadPoolExecutor
from dataclasses import astuple
from itertools import combinations

import matplotlib
import numpy as np
import pytest
from matplotlib.colors import to_rgb

from crossfall.show import style
from crossfall.truck.errors import InputError

# Machado, Oliveira, Fernandes, IEEE TVCG 15 (2009) 1291-1298, severity 1.0, linear RGB
# (from memory; each row must sum to one, so that greys stay grey, which is checked below).
DEUTERANOPIA = np.array(
    [
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ]
)
PROTANOPIA = np.array(
    [
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ]
)
# sRGB to XYZ, D65 (IEC 61966-2-1)
XYZ = np.array([[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]])
SETS = {
    "answers": ("rigid", "compliant", "trial", "slide"),
    "gain": ("helps", "hurts"),
    "parts": ("sprung", "unsprung", "tyre", "link"),
    "wheels": ("front", "rear"),
}
THEMES = {"light": style.LIGHT}


def linear(colour):
    c = np.array(to_rgb(colour))
    return np.where(c <= 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4)


def lab(rgb):
    """CIE 1976 L*a*b* of linear RGB, D65."""
    ratio = XYZ @ np.clip(rgb, 0, 1) / (XYZ @ np.ones(3))
    f = np.where(ratio > (6 / 29) ** 3, np.cbrt(ratio), ratio / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def contrast(a, b):
    """WCAG 2 contrast ratio."""
    low, high = sorted(float(XYZ[1] @ linear(c)) for c in (a, b))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("matrix", [DEUTERANOPIA, PROTANOPIA])
def test_simulation_leaves_greys_grey(matrix):
    assert np.allclose(matrix.sum(axis=1), 1.0, atol=1e-5)


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("roles", SETS)
@pytest.mark.parametrize("eyes", [np.eye(3), DEUTERANOPIA, PROTANOPIA])
def test_colours_used_together_differ_to_any_eyes(theme, roles, eyes):
    colours = [getattr(THEMES[theme], role) for role in SETS[roles]]
    for a, b in combinations(colours, 2):
        assert np.linalg.norm(lab(eyes @ linear(a)) - lab(eyes @ linear(b))) > 18.0


@pytest.mark.parametrize("theme", THEMES)
def test_part_colours_differ_in_grey(theme):
    grey = sorted(lab(linear(getattr(THEMES[theme], role)))[0] for role in SETS["parts"])
    assert min(np.diff(grey)) > 5.0


@pytest.mark.parametrize("theme", THEMES)
def test_text_reads_on_paper(theme):
    t = THEMES[theme]
    assert contrast(t.ink, t.paper) > 7.0
    assert contrast(t.soft, t.paper) > 4.5
    for role in ("rigid", "compliant", "trial"):
        assert contrast(getattr(t, role), t.paper) > 3.0


def test_themes_are_complete_colours():
    for theme in THEMES.values():
        assert all(c.startswith("#") and len(c) == 7 for c in astuple(theme))


@pytest.mark.parametrize("kind", ["png", "svg", "pdf"])
def test_same_picture_same_bytes(kind, tmp_path):
    def bytes_of(name):
        made, axes = style.paper_page(60, 40)
        axes.plot([5, 50], [5, 30])
        axes.contourf([5, 50], [5, 30], [[0, 1], [2, 3]], hatches=["//"])
        axes.text(10, 10, "38.2°")
        path = tmp_path / f"{name}.{kind}"
        style.save(made, path)
        return path.read_bytes()

    first = bytes_of("a")
    assert first == bytes_of("b")
    assert len(first) > 1000
    assert not any(word in first for word in (b"Date", b"2024", b"2025", b"2026"))


def test_two_pictures_on_one_page_share_no_id():
    made, axes = style.paper_page(60, 40)
    axes.plot([5, 50], [5, 30], "o-")  # a marker and a clip path, named and used by their ids
    one, other = (style.svg_element(made, name) for name in "ab")
    ids = [set(re.findall(r'\bid="([^"]*)"', text)) for text in (one, other)]
    assert len(ids[0]) == len(ids[1])
    assert not ids[0] & ids[1]
    for text, known in zip((one, other), ids, strict=True):
        used = re.findall(r'(?:xlink:href="|url\()#([\w-]+)', text)
        assert len(set(used)) > 1
        assert set(used) <= known


def _titled():
    made, axes = style.paper_page(60, 40)
    axes.plot([5, 50], [5, 30])
    style.title(made, "a", "b")
    return made


def test_a_users_settings_do_not_change_a_picture():
    drawn = style.styled(_titled)
    plain = style.render(drawn(), "svg")
    with matplotlib.rc_context({"lines.linewidth": 9.0, "svg.fonttype": "none"}):
        assert style.render(drawn(), "svg") == plain
        assert matplotlib.rcParams["lines.linewidth"] == 9.0


def test_pictures_drawn_at_once_come_out_as_one_by_one():
    """Matplotlib's settings are one for all threads: a page's text once became paths."""
    drawn = style.styled(_titled)
    whole, piece = style.render(drawn(), "svg"), style.inline_svg(drawn(), {})

    def draw(turn):
        return style.render(drawn(), "svg") if turn % 2 else style.inline_svg(drawn(), {})

    with ThreadPoolExecutor(4) as threads:
        made = list(threads.map(draw, range(40)))
    assert made == [piece, whole] * 20


def test_unknown_format_is_a_sentence(tmp_path):
    made, _ = style.paper_page(60, 40)
    with pytest.raises(InputError, match=r"not written in this format; \.png, \.svg, \.pdf"):
        style.save(made, tmp_path / "x.bmp")
    assert not list(tmp_path.iterdir())


def test_text_size_is_what_is_drawn():
    made, axes = style.paper_page(100, 50)
    text = axes.text(10, 10, "steering servo 62 g", size=style.BODY)
    box = text.get_window_extent(made.canvas.get_renderer())
    width, _ = style.text_size("steering servo 62 g", style.BODY)
    assert width == pytest.approx(box.width / made.dpi * style.MM_PER_INCH, rel=0.03)


def test_page_units_are_mm():
    made, axes = style.paper_page(120, 80)
    ends = axes.transData.transform([(10, 10), (110, 10), (10, 60)]) / made.dpi * style.MM_PER_INCH
    assert ends[1, 0] - ends[0, 0] == pytest.approx(100.0, abs=1e-9)
    assert ends[2, 1] - ends[0, 1] == pytest.approx(50.0, abs=1e-9)
