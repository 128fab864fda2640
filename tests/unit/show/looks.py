"""What the picture tests measure on a drawn figure."""

from __future__ import annotations

from itertools import combinations

import numpy as np
from matplotlib.text import Text

MM = 25.4


def texts(figure):
    """(text, box in mm of paper) of everything written on a figure."""
    figure.draw_without_rendering()
    renderer = figure.canvas.get_renderer()
    found = []
    unseen = {
        id(label)
        for axes in figure.axes
        for axis in (axes.xaxis, axes.yaxis)
        for tick in axis.get_major_ticks()
        for label in (tick.label1, tick.label2)
        if not min(axis.get_view_interval()) <= tick.get_loc() <= max(axis.get_view_interval())
    }
    for text in figure.findobj(Text):
        if text.get_visible() and text.get_text().strip() and id(text) not in unseen:
            box = text.get_window_extent(renderer)
            if box.width > 0:
                found.append((text.get_text(), box.get_points() / figure.dpi * MM))
    return found


def overlaps(figure, spare=0.1):
    """Pairs of texts that cover each other by more than `spare` mm both ways."""
    pairs = []
    for (a, p), (b, q) in combinations(texts(figure), 2):
        shared = np.minimum(p[1], q[1]) - np.maximum(p[0], q[0])
        if np.all(shared > spare):
            pairs.append((a, b))
    return pairs


def clipped(figure):
    """Texts that leave the page."""
    width, height = figure.get_size_inches() * MM
    return [t for t, b in texts(figure) if b.min() < 0 or b[1, 0] > width or b[1, 1] > height]


def least_size(figure):
    """pt, the smallest writing."""
    return min(t.get_size() for t in figure.findobj(Text) if t.get_text().strip())


def drawn(figure, gid):
    """(n, 2) data of the one line drawn under a name."""
    (line,) = [a for a in figure.findobj(lambda a: a.get_gid() == gid) if hasattr(a, "get_xydata")]
    return np.asarray(line.get_xydata())
