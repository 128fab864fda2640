"""A picture from the page as a further page of the sheet."""

from __future__ import annotations

import io
from dataclasses import dataclass

from matplotlib.figure import Figure
from matplotlib.image import imread

from crossfall.show.style import BODY, LIGHT, axes_at, paper_page, styled, text_size, title
from crossfall.truck.errors import InputError, Problem

WIDTH, HEIGHT, EDGE = 210.0, 297.0, 14.0  # mm, A4 standing
MAX_BYTES = 1_500_000
MAX_SIDE = 2000  # pixels
MAX_LINES, MAX_LENGTH = 12, 240
_PNG = b"\x89PNG\r\n\x1a\n"
LINE = 5.2  # mm


@dataclass(frozen=True)
class Still:
    """png: the picture. words: what stands under it, one paragraph each."""

    png: bytes
    words: tuple[str, ...]

    def __post_init__(self) -> None:
        """InputError for what is no PNG of a sensible size; nothing is unpacked before."""
        width, height = (int.from_bytes(self.png[i : i + 4], "big") for i in (16, 20))
        fits = 0 < width <= MAX_SIDE and 0 < height <= MAX_SIDE
        if len(self.png) > MAX_BYTES or self.png[:8] != _PNG or not fits:
            allowed = f"a PNG of up to {MAX_SIDE} by {MAX_SIDE} pixels"
            raise InputError(Problem("picture", "cannot stand on the sheet", allowed))
        if len(self.words) > MAX_LINES or any(len(w) > MAX_LENGTH for w in self.words):
            raise InputError(Problem("picture", "has too many words with it"))


@styled
def draw_still(name: str, still: Still) -> Figure:
    """An A4 page with the picture across it and its words beneath. InputError for a broken one."""
    try:
        picture = imread(io.BytesIO(still.png), format="png")
    except (OSError, ValueError, SyntaxError):
        raise InputError(Problem("picture", "is broken")) from None
    made, axes = paper_page(WIDTH, HEIGHT)
    title(made, f"{name}: a slope course", left=EDGE, top=EDGE)
    wide = WIDTH - 2 * EDGE
    high = min(wide * picture.shape[0] / picture.shape[1], HEIGHT / 2)
    top = HEIGHT - EDGE - 12
    shown = axes_at(made, EDGE, top - high, wide, high)
    shown.imshow(picture, interpolation="antialiased")
    shown.set_axis_off()
    y = top - high - 2 * LINE
    for paragraph in still.words:
        for line in _broken(paragraph, wide):
            axes.text(EDGE, y, line, size=BODY, color=LIGHT.ink, parse_math=False)
            y -= LINE
        y -= LINE / 2
    return made


def _broken(paragraph: str, wide: float) -> list[str]:
    """Its lines, none wider than so many mm unless one word is."""
    lines = [""]
    for word in paragraph.split():
        longer = f"{lines[-1]} {word}".strip()
        if lines[-1] and text_size(longer, BODY)[0] > wide:
            lines.append(word)
        else:
            lines[-1] = longer
    return lines
