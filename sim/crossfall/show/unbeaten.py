"""Builds that no other beats, among all that were tried; a panel a heading."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Literal

import numpy as np
from matplotlib.axes import Axes
from matplotlib.cm import ScalarMappable
from matplotlib.colors import Normalize
from matplotlib.figure import Figure
from numpy.typing import NDArray

from crossfall.show.maps import ANGLES, WIDTH, plain_name
from crossfall.show.style import LIGHT, SMALL, axes_at, figure, styled, title
from crossfall.study.unbeaten import Sense, unbeaten
from crossfall.truck.model import Array

MOST_FRONTS = 6  # panels of one picture
MOST_DOTS = 5_000  # of builds that are beaten, drawn
ALONE, BESIDE = 58.0, 44.0  # mm, a panel's height alone and in one of two columns
APART = 2.5  # times the widest panel that all together may reach and still share an axis


@styled
def draw_unbeaten(
    columns: Mapping[str, Array],
    aims: Mapping[str, Sense],
    panels: Sequence[tuple[str, NDArray[np.bool_]]],
    name: str = "",
    how: str = "",
    beside: Sequence[tuple[str, NDArray[np.bool_]]] = (),
) -> Figure:
    """The first two aims along and up, a third one as a shade of the front's points.

    columns: (n,) of each aim. panels: what each is called and (n,) which lines stand in it; these
    are compared among themselves. They share their axes where their values do not lie far apart,
    and the shade always. how: what was asked and by which method, in words. beside: panels drawn
    elsewhere that share them too.
    """
    across = min(len(panels), 2)
    tall = ALONE if across == 1 else BESIDE
    rows, step = -(-len(panels) // across), (WIDTH - 8.0) / across
    wide = step - (52.0 if len(aims) == 3 else 20.0)
    made = figure(WIDTH, 26.0 + (tall + 18.0) * rows)
    here, every = ([some for _, some in them] for them in (panels, (*panels, *beside)))
    ends = {c: _ends(columns[c], every) or _ends(columns[c], here) for c in aims}
    for k, (words, some) in enumerate(panels):
        row, column = divmod(k, across)
        bottom = 14.0 + (tall + 18.0) * (rows - 1 - row)
        axes = axes_at(made, 20.0 + column * step, bottom, wide, tall)
        _panel(axes, {c: columns[c][some] for c in aims}, aims, ends)
        axes.set_title(words, loc="left", fontsize=SMALL, pad=2)
    words = " and ".join(f"{_bare(c)} {a}" for c, a in aims.items())
    title(made, name or "Builds that no other beats", f"{how}: {words}" if how else words)
    return made


def _bare(column: str) -> str:
    return plain_name(column).partition(",")[0]


def _ends(values: Array, panels: Sequence[NDArray[np.bool_]]) -> tuple[float, float] | None:
    """Least and greatest over all panels; None where they lie too far apart for one axis."""
    spans = [float(np.ptp(values[some])) for some in panels]
    every = values[np.any(panels, axis=0)]
    if len(panels) > 1 and float(np.ptp(every)) > APART * max(spans):
        return None
    return float(every.min()), float(every.max())


def _panel(
    axes: Axes,
    columns: Mapping[str, Array],
    aims: Mapping[str, Sense],
    ends: Mapping[str, tuple[float, float] | None],
) -> None:
    best = unbeaten(columns, aims)
    (x_name, x), (y_name, y) = list(columns.items())[:2]
    rest = np.flatnonzero(~best)
    rest = rest[:: -(-len(rest) // MOST_DOTS) or 1]
    axes.plot(x[rest], y[rest], ".", ms=2.5, color=LIGHT.faint, zorder=1)
    order = np.flatnonzero(best)[np.argsort(x[best])]
    if len(aims) == 2:
        # Between two builds of a front there is none: the line goes over the corner left free.
        where: Literal["pre", "post"] = "post" if aims[x_name] == "low" else "pre"
        axes.step(x[order], y[order], where=where, lw=1.0, color=LIGHT.compliant, zorder=2)
        axes.plot(x[order], y[order], "o", ms=4, color=LIGHT.compliant, mec=LIGHT.paper, zorder=3)
    else:
        third = list(columns)[2]
        low, high = ends[third] or (float(columns[third].min()), float(columns[third].max()))
        scale, shade = Normalize(low, high if high > low else low + 1.0), columns[third][order]
        axes.scatter(
            x[order], y[order], c=shade, cmap=ANGLES, norm=scale, s=18, ec=LIGHT.ink, lw=0.5
        )
        bar = axes.figure.colorbar(ScalarMappable(scale, ANGLES), ax=None, cax=_beside(axes))
        bar.set_label(f"{plain_name(third)}: {aims[third]} is best", fontsize=SMALL)
        if high <= low:
            bar.set_ticks([low])  # there is no other value
    for axis, name in ((axes.xaxis, x_name), (axes.yaxis, y_name)):
        if (both := ends[name]) is not None:
            room = 0.04 * (both[1] - both[0]) or 0.5
            axis.axes.set(**{f"{axis.axis_name}lim": (both[0] - room, both[1] + room)})
    axes.set(xlabel=f"{plain_name(x_name)}: {aims[x_name]} is best")
    axes.set_ylabel(f"{plain_name(y_name)}: {aims[y_name]} is best")


def _beside(axes: Axes) -> Axes:
    box = axes.get_position()
    return axes.figure.add_axes((box.x1 + 0.02, box.y0, 0.018, box.height))
