"""The set-up sheet to hand over: one A4 page, as HTML that prints to it or as PDF."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from matplotlib.axes import Axes

from crossfall.show.sheet import page as at
from crossfall.show.sheet.facts import Facts
from crossfall.show.sheet.still import Still, draw_still
from crossfall.show.sheet.text import PAD
from crossfall.show.sheet.views import (
    Frame,
    draw_compass,
    draw_plan,
    draw_views,
    scale_words,
    view_key,
)
from crossfall.show.sheet.words import sheet_words
from crossfall.show.style import (
    BODY,
    HEADING,
    LIGHT,
    SMALL,
    paper_page,
    render,
    render_pages,
    styled,
    svg_element,
)
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically

_KINDS = (".html", ".pdf")
_TEMPLATE = Path(__file__).with_name("sheet.html.j2")


@dataclass(frozen=True)
class _Picture:
    """An inline drawing and its place on the page. label: for those who cannot see it."""

    box: at.Rect
    label: str
    svg: str


def write_sheet(facts: Facts, path: str | Path) -> None:
    """Write the sheet whole or not at all; the suffix says the format. Raises InputError."""
    path = Path(path)
    check_target(path)
    write_atomically(path, pdf(facts) if path.suffix.lower() == ".pdf" else html(facts))


def check_target(path: Path) -> None:
    """Raises InputError where the file's format is none of the sheet's, or its folder is missing:
    before anything is worked out."""
    if path.suffix.lower() not in _KINDS:
        what = f"'{path.suffix}' is no format of the sheet" if path.suffix else "has no suffix"
        raise InputError(Problem(str(path), what, f"use {' or '.join(_KINDS)}"))
    if not path.parent.is_dir():
        raise InputError(Problem(str(path), f"there is no folder '{path.parent}'", "make it first"))


def pdf(facts: Facts, still: Still | None = None) -> bytes:
    """One A4 page, its text as text; the same facts give the same bytes. still: a second page."""
    sheet = at.draw_sheet(facts)
    if still is None:
        return render(sheet, "pdf")
    return render_pages([sheet, draw_still(facts.now.truck.name, still)])


def html(facts: Facts) -> str:
    """One page of HTML that holds all it shows; the same facts give the same text."""
    from jinja2 import Environment

    scale = at.scale_of(facts)
    environment = Environment(autoescape=True, trim_blocks=True, lstrip_blocks=True)
    return environment.from_string(_TEMPLATE.read_text(encoding="utf-8")).render(
        told=sheet_words(facts),
        pictures=pictures(facts, scale),
        scale=scale_words(scale),
        views_top=at.VIEWS[1],
        figures=at.FIGURES,
        figure_size=at.FIGURE_SIZE,
        edge=at.EDGE,
        name=at.NAME,
        unders=at.UNDERS,
        title=at.TITLE,
        heads=at.HEADS,
        note=at.NOTE,
        pad=PAD,
        caution_top=at.CAUTION_TOP,
        caution_step=at.CAUTION_STEP,
        body=BODY,
        heading=HEADING,
        small=SMALL,
        ink=LIGHT.ink,
        soft=LIGHT.soft,
        faint=LIGHT.faint,
        grid=LIGHT.grid,
    )


def pictures(facts: Facts, scale: float) -> list[_Picture]:
    """The drawings, each by itself; side, rear and plan at 1:scale."""

    def views(axes: Axes, frame: Frame) -> None:
        draw_views(axes, at.lowered(frame), facts, scale)
        view_key(axes, 0.0, frame.height - 1.5, facts.before is not None)

    drawn = (
        ("side", at.VIEWS, "Side and rear view to scale", views),
        ("plan", at.PLAN_RECT, "Plan with the load under each tyre",
         lambda a, f: draw_plan(a, f, facts, scale)),
        ("ways", at.COMPASS, "Tip angle by direction", lambda a, f: draw_compass(a, f, facts)),
    )  # fmt: skip
    return [_Picture(box, label, _svg(box, name, draw)) for name, box, label, draw in drawn]


@styled
def _svg(box: at.Rect, name: str, draw: Callable[[Axes, Frame], None]) -> str:
    """A drawing of the box's size as an element."""
    made, axes = paper_page(box[2], box[3])
    made.set_facecolor("none")
    draw(axes, Frame(0.0, 0.0, box[2], box[3]))
    return svg_element(made, name)
