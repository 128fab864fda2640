"""Maps of a sweep: contours of one answer over two inputs, and where sliding comes first."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from matplotlib.axes import Axes
from matplotlib.colors import LinearSegmentedColormap, Normalize
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.path import Path
from matplotlib.text import Text
from matplotlib.ticker import MaxNLocator, MultipleLocator

from crossfall.show.style import (
    BODY,
    LIGHT,
    SMALL,
    axes_at,
    figure,
    styled,
    title,
)
from crossfall.truck.model import Array

WIDTH = 178.0  # mm
_UNITS = {  # ends of column names, and how they are said
    "_n_per_mm": ", N/mm",
    "_mm_per_s": ", mm/s",
    "_deg": ", °",
    "_mm": ", mm",
    "_g": ", g",
}
ANGLES = LinearSegmentedColormap.from_list("angle", ["#4f86bf", "#a9c8e4", "#f6f2ea"])
LABEL_MARGIN = 0.07  # of a side of a panel, that its labels keep free
_TIPS = "table angle at which it tips, degrees; light is steep"


@dataclass(frozen=True)
class MapPanel:
    """One map. x (n,), y (m,): the inputs in the tuner's units. values: (m, n) as shown, nan where
    there is none. slide: (m, n) in the same unit, for tips, or None. mark: (x, y) of the truck as
    it is, or None.
    """

    name: str
    x: Array
    y: Array
    values: Array
    slide: Array | None = None
    mark: tuple[float, float] | None = None


@styled
def draw_maps(
    name: str,
    x_name: str,
    y_name: str,
    panels: Sequence[MapPanel],
    how: str = "",
    beside: Sequence[MapPanel] = (),
    shown: str = "",
) -> Figure:
    """Small multiples on one scale of colour; light is high, and dots are where it slides first.

    The heavy line is the frontier between tipping first and sliding first. how: what was asked and
    by which method, in words. beside: panels drawn elsewhere that share the scale of colour. shown:
    the values' name and unit, as "margin, mm"; tips if not given.
    """
    unit = shown.partition(", ")[2] if shown else "°"
    columns = min(len(panels), 3 if len(panels) > 4 else 2)
    rows = -(-len(panels) // columns)
    wide = (WIDTH - 18.0 - 8.0 * (columns - 1) - 6.0) / columns
    tall = wide * (0.62 if columns == 1 else 0.85)
    height = 20.0 + rows * (tall + 9.0) + 21.0
    made = figure(WIDTH, height)
    levels = contour_levels(np.concatenate([p.values.ravel() for p in panels]))
    scale = contour_levels(np.concatenate([p.values.ravel() for p in (*panels, *beside)]))
    for i, panel in enumerate(panels):
        row, column = divmod(i, columns)
        left = 18.0 + column * (wide + 8.0)
        axes = axes_at(made, left, height - 20.0 - (row + 1) * (tall + 9.0) + 4.0, wide, tall)
        _map(axes, panel, levels, Normalize(scale[0], scale[-1]))
        lowest = i + columns >= len(panels)
        axes.tick_params(labelbottom=lowest, labelleft=column == 0)
        for axis, said in ((axes.xaxis, x_name), (axes.yaxis, y_name)):
            if said.startswith("heading"):
                low, high = axis.get_view_interval()
                axis.set_major_locator(MultipleLocator(30 if high - low > 90 else 15))
        axes.set_xlabel(x_name if lowest else "")
        axes.set_ylabel(y_name if column == 0 else "")
    empty = any(np.isnan(p.values).any() for p in panels)
    slides = any(p.slide is not None and (p.slide < p.values).any() for p in panels)
    unit = unit if unit == "°" else f" {unit}".rstrip()
    _bar(made, scale, unit, slides, ("no value" if shown else "no tip") if empty else "")
    what = f"{shown}; light is high" if shown else _TIPS
    title(made, name, f"{how}: {what}" if how else what)
    return made


def contour_levels(values: Array) -> Array:
    """Round steps over all finite values, at most ten."""
    known = values[np.isfinite(values)]
    steps = MaxNLocator(9, steps=[1, 2, 5, 10]).tick_values(float(known.min()), float(known.max()))
    return np.asarray(steps)


def _map(axes: Axes, panel: MapPanel, levels: Array, scale: Normalize) -> None:
    axes.grid(False)
    tip = np.ma.masked_invalid(panel.values)
    axes.set_facecolor(LIGHT.grid)
    axes.contourf(panel.x, panel.y, tip, levels=levels, cmap=ANGLES, norm=scale)
    inner = [v for v in levels if tip.min() < v < tip.max()]
    if inner:
        lines = axes.contour(panel.x, panel.y, tip, levels=inner, colors=LIGHT.ink, linewidths=0.45)
        for text in axes.clabel(lines, fmt="%g", fontsize=SMALL, inline=False):
            level = inner.index(min(inner, key=lambda v: abs(v - float(text.get_text()))))
            _brought_inside(axes, text, lines.get_paths()[level])
            text.set_bbox({"fc": LIGHT.paper, "ec": "none", "alpha": 0.7, "pad": 0.6})
    if panel.slide is not None:
        _frontier(axes, panel, panel.slide)
    if panel.mark is not None:
        axes.plot(*panel.mark, "o", ms=6, mfc=LIGHT.paper, mec=LIGHT.ink, mew=1.1, zorder=6)
        axes.plot(*panel.mark, "+", ms=6, color=LIGHT.ink, mew=0.9, zorder=6.1)
    axes.set_title(panel.name, size=BODY, weight="bold", pad=3)
    axes.set(xlim=(panel.x.min(), panel.x.max()), ylim=(panel.y.min(), panel.y.max()))


def _brought_inside(axes: Axes, text: Text, path: Path) -> None:
    """A label that would be cut off goes to the middle of its contour's longest piece, or away
    where it would be cut off there too."""
    box = axes.transAxes.inverted()

    def cut(x: float, y: float) -> bool:
        place = box.transform(axes.transData.transform((x, y)))
        return bool(np.any(np.minimum(place, 1 - place) < LABEL_MARGIN))

    if not cut(*text.get_position()):
        return
    pieces = [np.asarray(p) for p in path.to_polygons(closed_only=False)]
    shown = [box.transform(axes.transData.transform(p)) for p in pieces]
    lengths = [np.linalg.norm(np.diff(p, axis=0), axis=1) for p in shown]
    best = int(np.argmax([steps.sum() for steps in lengths]))
    along = np.concatenate([[0.0], np.cumsum(lengths[best])])
    half = along[-1] / 2
    i = int(np.clip(np.searchsorted(along, half) - 1, 0, len(along) - 2))
    across, up = np.diff(axes.transData.transform(pieces[best][i : i + 2]), axis=0)[0]
    x, y = (float(np.interp(half, along, pieces[best][:, k])) for k in (0, 1))
    if cut(x, y):
        text.set_visible(False)
    text.set(position=(x, y), rotation=(np.degrees(np.arctan2(up, across)) + 90) % 180 - 90)


def _frontier(axes: Axes, panel: MapPanel, slide: Array) -> None:
    spare = np.ma.masked_invalid(slide - panel.values)
    if spare.min() < 0:
        low = float(spare.min()) - 1.0
        area = axes.contourf(
            panel.x, panel.y, spare, levels=[low, 0.0], colors="none", hatches=["..."]
        )
        area.set(edgecolor=LIGHT.ink, linewidth=0.0)
    if spare.min() < 0 < spare.max():
        for colour, width in ((LIGHT.paper, 3.2), (LIGHT.trial, 1.8)):
            axes.contour(panel.x, panel.y, spare, levels=[0.0], colors=colour, linewidths=width)


def _bar(made: Figure, levels: Array, unit: str, slides: bool, empty: str) -> None:
    """The scale of colour in the steps drawn, and what dots, line and empty places mean."""
    width = min(9.0, 90.0 / (len(levels) - 1))
    axes = axes_at(made, 0, 0, WIDTH, 14.0)
    axes.set(xlim=(0, WIDTH), ylim=(0, 14.0))
    axes.set_axis_off()
    x = 18.0
    for low, high in pairwise(levels):
        share = (0.5 * (low + high) - levels[0]) / (levels[-1] - levels[0])
        axes.add_patch(Rectangle((x, 6.0), width, 3.4, fc=ANGLES(share), ec=LIGHT.faint, lw=0.3))
        axes.text(x, 5.2, f"{low:g}", size=SMALL, ha="center", va="top", color=LIGHT.soft)
        x += width
    axes.text(x, 5.2, f"{levels[-1]:g}{unit}", size=SMALL, ha="center", va="top", color=LIGHT.soft)
    if slides:
        x += 12.0
        axes.add_patch(Rectangle((x, 6.0), 7, 3.4, fc="none", ec=LIGHT.ink, lw=0.0, hatch="..."))
        axes.add_patch(Rectangle((x, 6.0), 7, 3.4, fill=False, ec=LIGHT.trial, lw=1.6))
        axes.text(x + 9, 7.7, "slides before it tips", size=BODY, va="center")
        x += 40.0
    if empty:
        axes.add_patch(Rectangle((x + 5, 6.0), 7, 3.4, fc=LIGHT.grid, ec=LIGHT.faint, lw=0.3))
        axes.text(x + 14, 7.7, empty, size=BODY, va="center")


def plain_name(column: str) -> str:
    """A column as a reader would say it: both.track_mm is 'both track, mm'."""
    column = re.sub(r"^(both|part)\.", "", column)
    place, entry = re.subn(r"(at|end)_mm\.(\w)$", r"\1 \2", column)
    unit = ", mm" if entry else ""
    for end, said in _UNITS.items():
        if not unit and place.endswith(end):
            place, unit = place.removesuffix(end), said
    return place.replace(".", " ").replace("_", " ") + unit
