"""Numbers as a reader sees them, in tables, sentences and pictures."""

from __future__ import annotations

import math


def as_figures(value: float, decimals: int) -> str:
    """A number for a table: a true minus, no zero below zero, and a dash for what is none."""
    if not math.isfinite(value):
        return "–"
    return f"{round(value, decimals) + 0.0:.{decimals}f}".replace("-", "−")


def signed_figures(value: float, decimals: int) -> str:
    """`as_figures` with its sign, a plus for nothing too."""
    text = as_figures(value, decimals)
    return text if text[0] in "−–" else f"+{text}"
