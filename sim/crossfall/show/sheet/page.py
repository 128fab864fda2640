"""The set-up sheet as one drawn A4 page, for PDF; and where everything stands, for both forms."""

from __future__ import annotations

from collections.abc import Sequence

from matplotlib.axes import Axes
from matplotlib.figure import Figure as Drawing
from matplotlib.patches import Rectangle

from crossfall.show.sheet.facts import Facts
from crossfall.show.sheet.text import PAD, Column, TextTable
from crossfall.show.sheet.views import (
    Frame,
    choose_scale,
    draw_compass,
    draw_plan,
    draw_views,
    scale_words,
    view_key,
)
from crossfall.show.sheet.words import Words, sheet_words
from crossfall.show.silhouette import solids
from crossfall.show.style import A4, BODY, HEADING, LIGHT, SMALL, paper_page, styled

EDGE = 10.0  # mm kept free all round: no printer reaches further out
TITLE, HEADS, NOTE = 5.0, 4.0, 3.1  # mm, heights of a table's title, heads and lines of notes
FIGURES = (69.0, 119.5, 144.5, 177.0)  # mm, where the large numbers start
FIGURE_SIZE = 14.0  # pt
NAME, UNDERS = 17.0, (21.9, 25.9)  # mm, base lines of the name and of what stands below
CAUTION_TOP, CAUTION_STEP = 266.5, 64.5  # mm

# Left, top, width and height of the drawings, mm from the upper left corner of the page.
Rect = tuple[float, float, float, float]
VIEWS: Rect = (EDGE, 31.0, 190.0, 69.0)
PLAN_RECT: Rect = (EDGE, 101.0, 106.0, 54.0)
COMPASS: Rect = (156.0, 157.0, 44.0, 46.5)


def frame(box: Rect, height: float = A4[1]) -> Frame:
    """The box counted from the lower left corner of a page `height` mm tall."""
    left, top, width, tall = box
    return Frame(left, height - top - tall, width, tall)


def scale_of(facts: Facts) -> float:
    """1:scale of side, rear and plan."""
    return choose_scale(solids(facts.now.truck), lowered(frame(VIEWS)), frame(PLAN_RECT))


@styled
def draw_sheet(facts: Facts) -> Drawing:
    """The page, for `style.render`."""
    made, axes = paper_page(*A4)
    text, scale = sheet_words(facts), scale_of(facts)
    _head(axes, text, scale_words(scale))
    draw_views(axes, lowered(frame(VIEWS)), facts, scale)
    view_key(axes, EDGE, A4[1] - VIEWS[1] - 1.5, facts.before is not None)
    draw_plan(axes, frame(PLAN_RECT), facts, scale)
    draw_compass(axes, frame(COMPASS), facts)
    for table in text.tables:
        draw_table(axes, table)
    _cautions(axes, text)
    return made


def lowered(box: Frame) -> Frame:
    """Without the strip at the top where the key stands."""
    return Frame(box.left, box.bottom, box.width, box.height - 4.0)


def _text(axes: Axes, x: float, top: float, text: str, size: float, **style: object) -> None:
    """Text at mm from the upper left corner, of the page to its base line."""
    axes.text(x, A4[1] - top, text, size=size, **style)  # type: ignore[arg-type]


def _head(axes: Axes, text: Words, scale: str) -> None:
    _text(axes, EDGE, NAME, text.name, text.name_size, weight="bold")
    for base, line in zip(UNDERS, text.under, strict=True):
        _text(axes, EDGE, base, line, BODY, color=LIGHT.soft)
    for x, figure in zip(FIGURES, text.figures, strict=True):
        _text(axes, x, 13.0, figure.label, SMALL, color=LIGHT.soft)
        _text(axes, x, 19.5, figure.value, FIGURE_SIZE, weight="bold")
        _text(axes, x, 25.9, figure.under, SMALL, color=LIGHT.soft)
    _rule(axes, EDGE, A4[0] - EDGE, 28.5, 1.2, LIGHT.ink)
    _text(axes, A4[0] - EDGE, VIEWS[1] + 2.4, scale, SMALL, ha="right", color=LIGHT.soft)


def _rule(
    axes: Axes, left: float, right: float, top: float, width: float, colour: str = LIGHT.grid
) -> None:
    axes.plot([left, right], [A4[1] - top] * 2, color=colour, lw=width, solid_capstyle="butt")


def draw_table(axes: Axes, table: TextTable) -> None:
    """Title, heads, rows, notes; figures to the right, boxes where something is to be written."""
    left, top = table.at
    right = left + table.width
    _text(axes, left, top + 3.2, table.title, HEADING, weight="bold")
    y = top + TITLE
    _rule(axes, left, right, y, 0.8, LIGHT.ink)
    if any(c.head for c in table.columns):
        heads = [c.head for c in table.columns]
        _line(axes, table.columns, heads, left, y + HEADS - 1.1, SMALL, LIGHT.soft)
        y += HEADS
        _rule(axes, left, right, y, 0.5, LIGHT.faint)
    for i, row in enumerate(table.rows):
        total = table.last_is_sum and i == len(table.rows) - 1
        if total:
            _rule(axes, left, right, y, 0.8, LIGHT.ink)
        _line(axes, table.columns, row, left, y + table.row / 2 + 0.95, BODY, LIGHT.ink, total)
        _boxes(axes, table, left, y)
        y += table.row
        _rule(axes, left, right, y, 0.4)
    for i, note in enumerate(table.notes):
        _text(axes, left, y + 3.2 + NOTE * i, note, SMALL, color=LIGHT.soft)


def _line(
    axes: Axes,
    columns: Sequence[Column],
    texts: Sequence[str],
    left: float,
    base: float,
    size: float,
    colour: str,
    bold: bool = False,
) -> None:
    for column, text in zip(columns, texts, strict=True):
        x = left if column.align == "left" else left + column.width - PAD
        heavy = bold or (column.bold and size == BODY)
        weight = "bold" if heavy else "normal"
        _text(axes, x, base, text, size, ha=column.align, color=colour, weight=weight)
        left += column.width


def _boxes(axes: Axes, table: TextTable, left: float, top: float) -> None:
    for column in table.columns:
        if column.write:
            corner = (left + 0.6, A4[1] - top - table.row + 0.6)
            size = (column.width - 1.2, table.row - 1.2)
            axes.add_artist(Rectangle(corner, *size, fill=False, ec=LIGHT.soft, lw=0.6))
        left += column.width


def _cautions(axes: Axes, text: Words) -> None:
    _rule(axes, EDGE, A4[0] - EDGE, CAUTION_TOP, 1.2, LIGHT.ink)
    for i, (name, lines) in enumerate(text.cautions):
        x = EDGE + CAUTION_STEP * i
        _text(axes, x, CAUTION_TOP + 4.2, name, BODY, weight="bold")
        for j, line in enumerate(lines):
            _text(axes, x, CAUTION_TOP + 7.6 + NOTE * j, line, SMALL)
    _text(axes, EDGE, A4[1] - EDGE + 1.0, text.people, BODY, weight="bold")
