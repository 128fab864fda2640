"""Numbers and text of a set-up sheet: rounded, signed, cut and wrapped to fit; and its tables."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from crossfall.answers.answer import TipAnswer
from crossfall.answers.figures import signed_figures
from crossfall.show.style import BODY, SMALL, text_size

ROW, TIGHT, PAD = 4.0, 3.7, 1.2  # mm, of a line of a table, and kept free beside its cells


@dataclass(frozen=True)
class Column:
    """head: its title. width: mm. bold: the number one reads. write: boxes for a pencil."""

    head: str
    width: float
    align: Literal["left", "right"] = "right"
    bold: bool = False
    write: bool = False


@dataclass(frozen=True)
class TextTable:
    """title: above it. at: left and top, mm. rows: texts that fit. last_is_sum: set off by a line.

    notes: lines in small print below. kind: names it in the page.
    """

    kind: str
    title: str
    at: tuple[float, float]
    columns: tuple[Column, ...]
    rows: tuple[tuple[str, ...], ...]
    notes: tuple[str, ...] = ()
    row: float = ROW
    last_is_sum: bool = False

    @property
    def width(self) -> float:
        return sum(c.width for c in self.columns)


def degree_text(value: float) -> str:
    return f"{np.degrees(value):.1f}" if np.isfinite(value) else "none"


def tip_text(answer: TipAnswer) -> str:
    """The tip; in brackets what it would do against a rail, where it slides first."""
    text = degree_text(answer.tip)
    return f"[{text}]" if answer.slides_first else text


def range_text(ends: tuple[float, float]) -> str:
    """Both ends of a range in rad, or nothing where there is none."""
    low, high = (degree_text(v) for v in ends)
    return f"{low} – {high}" if np.all(np.isfinite(ends)) else ""


def tip_gain(now: TipAnswer, before: TipAnswer) -> str:
    """The difference of the two as printed; nothing where only one of them slides first, since it
    would compare a rail with none."""
    if now.slides_first != before.slides_first:
        return ""
    return gain(float(np.degrees(now.tip)), float(np.degrees(before.tip)), 1)


def gain(now: float, before: float, decimals: int) -> str:
    """The difference of two numbers as they are printed, so that a reader's sum comes out."""
    return signed(round(now, decimals) - round(before, decimals), decimals)


def money(value: float) -> str:
    """With its sign; whole amounts as such."""
    return signed(value, 0 if abs(value - round(value)) < 0.005 else 2)


def signed(value: float, decimals: int) -> str:
    """With its sign, and no minus before a zero; nothing for what is not known."""
    return signed_figures(value, decimals) if np.isfinite(value) else ""


def shortened(text: str, width: float, size: float = BODY, weight: str = "normal") -> str:
    """The text, shortened with dots to fit `width` mm."""
    while text_size(text, size, weight)[0] > width and len(text) > 1:
        text = text.rstrip("…")[:-1].rstrip() + "…"
    return text


def wrapped(text: str, width: float, size: float = SMALL) -> tuple[str, ...]:
    """The text in lines of at most `width` mm."""
    lines = [""]
    for word in text.split():
        longer = f"{lines[-1]} {word}".strip()
        if text_size(longer, size)[0] <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return tuple(shortened(line, width, size) for line in lines)
