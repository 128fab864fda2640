"""Builds that no other beats, among all that were tried; a panel a heading."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal

import numpy as np
from matplotlib.axes import Axes
from matplotlib.cm import ScalarMappable
from matplotlib.colors import Normalize
from matplotlib.figure import Figure

from crossfall.show.maps import ANGLES, WIDTH, plain_name
from crossfall.show.style import LIGHT, SMALL, axes_at, figure, styled, title
from crossfall.study.unbeaten import Sense, unbeaten
from crossfall.truck.model import Array

_MOST_PANELS = 4
MOST_DOTS = 5_000  # of builds that are beaten, drawn
TALL = 58.0  # mm


@styled
def draw_unbeaten(
    columns: Mapping[str, Any], aims: Mapping[str, Sense], name: str = "", how: str = ""
) -> Figure:
    """The first two aims along and up, a third one as a shade of the front's points.

    Headings are compared by themselves. how: what was asked and by which method, in words.
    """
    headings = np.asarray(columns.get("heading_deg", np.zeros(len(columns[next(iter(aims))]))))
    every = np.unique(headings)[:_MOST_PANELS]
    made = figure(WIDTH, 26.0 + (TALL + 18.0) * len(every))
    for k, heading in enumerate(every):
        bottom = 14.0 + (TALL + 18.0) * (len(every) - 1 - k)
        axes = axes_at(made, 20.0, bottom, 118.0 if len(aims) == 3 else 150.0, TALL)
        here = headings == heading
        some = {c: np.asarray(columns[c], np.float64)[here] for c in aims}
        _panel(axes, some, aims)
        if "heading_deg" in columns:
            axes.set_title(f"heading {heading:g}", loc="left", fontsize=SMALL, pad=2)
    words = " and ".join(f"{plain_name(c)} {a}" for c, a in aims.items())
    under = f"{how}: {words}" if how else words
    title(made, name or "Builds that no other beats", under)
    return made


def _panel(axes: Axes, columns: Mapping[str, Array], aims: Mapping[str, Sense]) -> None:
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
        third, shade = list(columns)[2], columns[list(columns)[2]][order]
        scale = Normalize(float(shade.min()), float(shade.max()))
        axes.scatter(
            x[order], y[order], c=shade, cmap=ANGLES, norm=scale, s=18, ec=LIGHT.ink, lw=0.5
        )
        bar = axes.figure.colorbar(ScalarMappable(scale, ANGLES), ax=None, cax=_beside(axes))
        bar.set_label(f"{plain_name(third)}: {aims[third]} is best", fontsize=SMALL)
    axes.set(xlabel=f"{plain_name(x_name)}: {aims[x_name]} is best")
    axes.set_ylabel(f"{plain_name(y_name)}: {aims[y_name]} is best")


def _beside(axes: Axes) -> Axes:
    box = axes.get_position()
    return axes.figure.add_axes((box.x1 + 0.02, box.y0, 0.018, box.height))
