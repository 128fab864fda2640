"""How our pictures look: ink, palette, sizes, the page in millimetres, and reproducible files.

Colour never stands alone: every role also has a line style, a marker or a hatch, so that a page
survives a grey copy and colour-blind eyes.
"""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache, wraps
from html import escape
from pathlib import Path
from threading import RLock
from typing import Any, ParamSpec, TypeVar
from xml.etree import ElementTree

import matplotlib
import matplotlib.style
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.font_manager import FontProperties
from matplotlib.textpath import text_to_path

from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically

MM_PER_INCH = 25.4
MM_PER_POINT = MM_PER_INCH / 72
A4 = (210.0, 297.0)  # mm
DPI = 200

TITLE, HEADING, BODY, SMALL = 11.0, 8.5, 7.5, 6.5  # pt on paper; SMALL is the least we print


@dataclass(frozen=True)
class Theme:
    """Colours by role, as hex strings.

    ink, soft, faint: text and lines in falling weight. grid: the quietest line. paper: the page.
    earth: ground and table. rigid, compliant, trial, slide: the answers. helps, hurts: gain of
    either sign. sprung, unsprung, tyre, link: parts by what carries them. front, rear: wheels.
    """

    paper: str
    ink: str
    soft: str
    faint: str
    grid: str
    earth: str
    rigid: str
    compliant: str
    trial: str
    slide: str
    helps: str
    hurts: str
    sprung: str
    unsprung: str
    tyre: str
    link: str
    front: str
    rear: str


LIGHT = Theme(
    paper="#ffffff",
    ink="#17212b",
    soft="#4c5965",
    faint="#8d98a3",
    grid="#dfe4e8",
    earth="#e9e3d8",
    rigid="#6a7682",
    compliant="#1a5fa6",
    trial="#c34a06",
    slide="#e0ad2e",
    helps="#1a5fa6",
    hurts="#c9640f",
    sprung="#bfd4ea",
    unsprung="#d99a3e",
    tyre="#56616c",
    link="#8775ab",
    front="#1a5fa6",
    rear="#c34a06",
)


# Front and rear differ in colour, left and right in line and fill of the marker.
WHEEL_COLOURS = (LIGHT.front, LIGHT.front, LIGHT.rear, LIGHT.rear)
WHEEL_LINES = ("-", (0, (4, 2)), "-", (0, (4, 2)))
WHEEL_MARKERS = ("o", "o", "s", "s")

STYLE_SETTINGS: dict[str, Any] = {
    "font.family": "DejaVu Sans",
    "font.size": BODY,
    "text.color": LIGHT.ink,
    "axes.edgecolor": LIGHT.soft,
    "axes.labelcolor": LIGHT.ink,
    "axes.labelsize": BODY,
    "axes.linewidth": 0.6,
    "axes.spines.top": False,
    "axes.spines.right": False,
    "axes.titlelocation": "left",
    "axes.titlesize": HEADING,
    "axes.grid": True,
    "axes.axisbelow": True,
    "grid.color": LIGHT.grid,
    "grid.linewidth": 0.5,
    "xtick.color": LIGHT.soft,
    "ytick.color": LIGHT.soft,
    "xtick.labelcolor": LIGHT.ink,
    "ytick.labelcolor": LIGHT.ink,
    "xtick.labelsize": SMALL,
    "ytick.labelsize": SMALL,
    "xtick.major.size": 2.5,
    "ytick.major.size": 2.5,
    "xtick.major.width": 0.6,
    "ytick.major.width": 0.6,
    "lines.linewidth": 1.2,
    "text.parse_math": False,  # a name with a dollar in it is a name
    "hatch.linewidth": 0.4,
    "legend.frameon": False,
    "legend.fontsize": SMALL,
    "svg.hashsalt": "crossfall",
    "svg.fonttype": "path",
    "pdf.fonttype": 42,
    "savefig.dpi": DPI,
}

# No dates and no tool versions: the same picture is the same bytes.
_METADATA: dict[str, dict[str, None]] = {
    "png": {"Software": None},
    "svg": {"Date": None, "Creator": None},
    "pdf": {"CreationDate": None, "Creator": None, "Producer": None},
}

P = ParamSpec("P")
R = TypeVar("R")


_one_at_a_time = RLock()  # matplotlib has one set of settings, whatever thread asks


def styled(draw: Callable[P, R]) -> Callable[P, R]:
    """Draw under our settings alone, whatever a user's matplotlibrc says, one thread at a time."""

    @wraps(draw)
    def inside(*args: P.args, **kwargs: P.kwargs) -> R:
        with _one_at_a_time, matplotlib.style.context(STYLE_SETTINGS, after_reset=True):
            return draw(*args, **kwargs)

    return inside


def figure(width: float, height: float) -> Figure:
    """An empty figure, mm."""
    made = Figure(figsize=(width / MM_PER_INCH, height / MM_PER_INCH), dpi=DPI)
    FigureCanvasAgg(made)
    made.set_facecolor(LIGHT.paper)
    return made


def paper_page(width: float, height: float) -> tuple[Figure, Axes]:
    """A figure and one bare axes over all of it, whose data units are mm of paper.

    Its limits stand, so shapes go on it by `add_artist`, which need not work them out again."""
    made = figure(width, height)
    axes = made.add_axes((0, 0, 1, 1))
    axes.set(xlim=(0, width), ylim=(0, height))
    axes.set_axis_off()
    return made, axes


def axes_at(made: Figure, left: float, bottom: float, width: float, height: float) -> Axes:
    """Axes placed in mm of paper, from the lower left corner."""
    w, h = made.get_size_inches() * MM_PER_INCH
    return made.add_axes((left / w, bottom / h, width / w, height / h))


def title(made: Figure, text: str, under: str = "", left: float = 6.0, top: float = 6.0) -> None:
    """The picture's title and a softer line under it, at the top left (mm from the corner)."""
    w, h = made.get_size_inches() * MM_PER_INCH
    made.text(left / w, 1 - top / h, text, size=TITLE, weight="bold", va="top")
    if under:
        below = 1 - (top + 5.4) / h
        made.text(left / w, below, under, size=BODY, color=LIGHT.soft, va="top")


@lru_cache(maxsize=4096)
def text_size(text: str, size: float, weight: str = "normal") -> tuple[float, float]:
    """Width and height (mm) of a text of one or more lines set in `size` pt."""
    prop = FontProperties(family="DejaVu Sans", size=size, weight=weight)
    lines = text.split("\n")
    widths = [text_to_path.get_text_width_height_descent(t, prop, ismath=False)[0] for t in lines]
    return max(widths) * MM_PER_POINT, len(lines) * 1.2 * size * MM_PER_POINT


@styled
def render(made: Figure, kind: str) -> bytes:
    """The picture as png, svg or pdf, byte for byte the same each time."""
    if kind not in _METADATA:
        known = ", ".join(f".{k}" for k in _METADATA)
        raise InputError(Problem(f".{kind}", "pictures are not written in this format", known))
    buffer = io.BytesIO()
    made.savefig(buffer, format=kind, metadata=_METADATA[kind])
    return buffer.getvalue()


def svg_element(made: Figure, name: str) -> str:
    """The picture as in a file, as an element of a page; its ids begin with a name of its own."""
    text = render(made, "svg").decode()
    text = re.sub(r"<metadata>.*?</metadata>", "", text[text.index("<svg") :], flags=re.DOTALL)
    text = re.sub(r'\bid="', f'id="{name}-', text)
    return re.sub(r'(xlink:href="|url\()#', rf"\1#{name}-", text).strip()


_LOOKS = ["fill", "opacity", "stroke", "stroke-width", "stroke-linecap", "stroke-dasharray"]
_LOOKS += ["font-size", "font-weight", "text-anchor"]


@styled
def inline_svg(made: Figure, names: Mapping[str, str]) -> str:
    """The picture as a piece of a page, its words kept as text, said by the figure's label.

    names: of the page's variables, by the colour (hex) each takes the place of. There are no ids
    and no style, so that any number may stand on a page whose policy forbids both.
    """
    buffer = io.BytesIO()
    with matplotlib.rc_context({"svg.fonttype": "none"}):
        made.savefig(buffer, format="svg", metadata=_METADATA["svg"])
    rough = re.sub(rb"-?\d+\.\d{3,}", lambda n: b"%.0f" % float(n[0]), buffer.getvalue())
    root = ElementTree.fromstring(rough)
    parts = [_piece(e, names) for e in root.iter() if e.get("d") or e.tag.endswith("}text")]
    label = escape(str(made.get_label()))
    start = f'<svg viewBox="{root.attrib["viewBox"]}" role="img" aria-label="{label}"'
    return f'{start} stroke-linejoin="round">{"".join(parts)}</svg>'


def _piece(drawn: ElementTree.Element, names: Mapping[str, str]) -> str:
    """One path or text, with its looks as attributes."""
    tag, given = drawn.tag.rpartition("}")[2], drawn.attrib
    look = dict(re.findall(r"([\w-]+): ([^;]+)", given["style"]))
    if old := re.match(r"(\d+ )?([\d.]+px)", look.get("font", "")):  # matplotlib before 3.11
        look |= {"font-weight": (old[1] or "400").strip(), "font-size": old[2]}
    shown = {k: names.get(look[k], look[k]) for k in _LOOKS if k in look}
    if tag == "path":
        shown["d"] = re.sub(r"\s*([A-Za-z])\s*", r"\1", given["d"].strip())
    else:
        shown |= {k: given[k] for k in ("x", "y", "transform") if "(-0 " not in given[k]}
    words = "".join(f' {k}="{v}"' for k, v in shown.items())
    return f"<{tag}{words}>{escape(drawn.text or '')}</{tag}>"


@styled
def render_pages(pages: Sequence[Figure]) -> bytes:
    """Several pages as one pdf, byte for byte the same each time."""
    from matplotlib.backends.backend_pdf import PdfPages

    buffer = io.BytesIO()
    with PdfPages(buffer, metadata=_METADATA["pdf"]) as book:
        for made in pages:
            book.savefig(made)
    return buffer.getvalue()


def save(made: Figure, path: Path) -> None:
    """Write the picture whole or not at all; the suffix says the format."""
    path = Path(path)
    write_atomically(path, render(made, path.suffix.lstrip(".").lower()))
