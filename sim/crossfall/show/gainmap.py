"""Where a gram helps: degrees per 10 g as a field over side and rear views of the truck."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from matplotlib.axes import Axes
from matplotlib.colors import LinearSegmentedColormap, to_rgb
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle

from crossfall.answers.figures import signed_figures
from crossfall.show.drawings import Extent, extent
from crossfall.show.paper import Z_LINE, Placement, centre_mark, draw_ground, paint
from crossfall.show.silhouette import REAR, SIDE, View, solids
from crossfall.show.style import BODY, HEADING, LIGHT, SMALL, paper_page, styled, text_size, title
from crossfall.statics.rigid import wedge_lines
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck

DEG_PER_10G = np.degrees(1.0) / 100  # from rad/kg
BORDER = 0.018  # m of field shown around the truck
WIDTH, EDGE, GUTTER = 210.0, 10.0, 10.0  # mm, an A4 page's width
GAINS = LinearSegmentedColormap.from_list("gain", [LIGHT.hurts, "#ffffff", LIGHT.helps])
ROUND_STEPS = (0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0)

_Field = Callable[[Array], Array]  # (n, 3) m in truck axes -> (n,) rad/kg


@dataclass(frozen=True)
class Panel:
    """One field to draw. name: the direction, in words. view: side or rear.

    gain: change of the tip angle, rad per kg added at a place, as a function of (n, 3) m.
    wedges: which of the tip lines belong to it, of rear, left, front, right.
    """

    name: str
    view: Literal["side", "rear"]
    gain: _Field
    wedges: tuple[int, ...] = ()


@styled
def draw_gainmap(truck: Truck, panels: Sequence[Panel], where: str = "") -> Figure:
    """The panels down the page, two of a view to a row, on one scale of colour; where: what they
    are for, in words.

    A gram counts as on the truck's middle plane in a side view, and as at the CG's x in a rear
    view. Blue helps; orange, hatched, hurts; the heavy line is where a gram changes nothing.
    """
    things = solids(truck)
    boxes = {v.name: extent(things, v) for v in (SIDE, REAR)}
    grids = [sample(truck, p, boxes[p.view]) for p in panels]
    most = max(float(np.abs(g[2]).max()) for g in grids)
    step = next((s for s in ROUND_STEPS if most / s <= 7), ROUND_STEPS[-1])
    rows = _rows(panels)
    scales = {name: _scale(box) for name, box in boxes.items()}
    views = [panels[row[0]].view for row in rows]
    heights = [(boxes[v].high + BORDER) * 1000 / scales[v] + 17 for v in views]
    top = sum(heights) + 14
    made, axes = paper_page(WIDTH, top + 18)
    for row, height, view in zip(rows, heights, views, strict=True):
        left, scale = EDGE, scales[view]
        for i in row:
            panel, box = panels[i], boxes[panels[i].view]
            place = _place(panel, box, scale, left, top - height + 9)
            _field(axes, place, grids[i], step, (step * np.ceil(most / step)))
            _truck(axes, place, truck, panel, box)
            axes.text(left, top - 3, panel.name, size=HEADING, weight="bold", va="center")
            left += (box.right - box.left + 2 * BORDER) * 1000 / scale + GUTTER
        top -= height
    _bar(axes, step, step * np.ceil(most / step))
    under = "change of the tip angle, degrees, for 10 g added where you look"
    under += f"; {where}" if where else ""
    title(made, f"{truck.name}: where a gram helps", under)
    return made


def sample(truck: Truck, panel: Panel, box: Extent, fine: int = 121) -> tuple[Array, Array, Array]:
    """u (n,) m, v (m,) m in the plane of the view, and (m, n) degrees per 10 g."""
    u = np.linspace(box.left - BORDER, box.right + BORDER, fine)
    v = np.linspace(0.0, box.high + BORDER, fine * 2 // 3)
    across, up = np.meshgrid(u, v)
    points = np.zeros((across.size, 3))
    points[:, 2] = up.ravel()
    if panel.view == "side":
        points[:, 0] = across.ravel()
    else:
        points[:, 0], points[:, 1] = whole(truck).cg[0], -across.ravel()
    values = np.asarray(panel.gain(points), dtype=np.float64).reshape(across.shape)
    return u, v, values * DEG_PER_10G


def _rows(panels: Sequence[Panel]) -> list[list[int]]:
    rows: list[list[int]] = []
    for i, panel in enumerate(panels):
        previous = panels[rows[-1][-1]].view if rows else None
        if panel.view == previous and len(rows[-1]) < 2:
            rows[-1].append(i)
        else:
            rows.append([i])
    return rows


def _scale(box: Extent) -> float:
    """1:scale at which two views side by side fill the page's width."""
    return 1000 * 2 * (box.right - box.left + 2 * BORDER) / (WIDTH - 2 * EDGE - GUTTER)


def _place(panel: Panel, box: Extent, scale: float, left: float, level: float) -> Placement:
    view: View = SIDE if panel.view == "side" else REAR
    return Placement(view, (left - (box.left - BORDER) * 1000 / scale, level), scale)


def _field(
    axes: Axes, place: Placement, grid: tuple[Array, Array, Array], step: float, most: float
) -> None:
    u, v, values = grid
    x, y = place.at(0, 0)
    across, up = x + 1000 * u / place.scale, y + 1000 * v / place.scale
    levels = np.arange(-round(most / step), round(most / step) + 1) * step
    axes.contourf(across, up, values, levels=levels, cmap=GAINS, vmin=-most, vmax=most, zorder=0.5)
    if values.min() < 0:
        hurt = axes.contourf(
            across, up, values, levels=[-most, 0.0], colors="none", hatches=["////"], zorder=0.6
        )
        hurt.set(edgecolor=(*to_rgb(LIGHT.hurts), 0.55), linewidth=0.0)
    inner = levels[np.abs(levels) > step / 2]
    drawn = [c for c in inner if values.min() < c < values.max()]
    if drawn:
        lines = axes.contour(
            across, up, values, levels=drawn, colors=LIGHT.soft, linewidths=0.4, zorder=0.7
        )
        lines.set_linestyle("-")
    if values.min() < 0 < values.max():
        axes.contour(
            across, up, values, levels=[0.0], colors=LIGHT.ink, linewidths=1.6, zorder=Z_LINE
        )


def _truck(axes: Axes, place: Placement, truck: Truck, panel: Panel, box: Extent) -> None:
    paint(axes, place, solids(truck), strength=0.34)
    left, right = (place.at(u, 0)[0] for u in (box.left - BORDER, box.right + BORDER))
    draw_ground(axes, left, right, place.origin[1])
    lines = wedge_lines(truck)
    for i in panel.wedges:
        foot, top = lines[i] * ([-1, 1] if panel.view == "rear" else [1, 1])
        reach = (box.high + BORDER) / top[1]
        x, y = place.flat(np.array([foot, foot + (top - foot) * reach])).T
        frame = Rectangle((left, y[0]), right - left, y[1] - y[0], transform=axes.transData)
        for colour, width, dash in ((LIGHT.paper, 2.0, "-"), (LIGHT.ink, 1.0, (0, (5, 2)))):
            (line,) = axes.plot(x, y, color=colour, lw=width, ls=dash, zorder=Z_LINE + 0.1)
            line.set_clip_path(frame)
    centre_mark(axes, place.of(whole(truck).cg)[0])


def _bar(axes: Axes, step: float, most: float) -> None:
    """The colour scale, hatched where it hurts, in the same steps as the field."""
    count = round(most / step)
    width, y = 9.0, 8.0
    x = EDGE + text_size("hurts", BODY)[0] + 2
    axes.text(EDGE, y, "hurts", size=BODY, va="center")
    places = max(0, -int(np.floor(np.log10(step) + 1e-9)))
    for i in range(-count, count):
        colour = GAINS(0.5 + (i + 0.5) * step / (2 * most))
        hatch = "////" if i < 0 else None
        axes.add_artist(
            Rectangle((x, y - 1.7), width, 3.4, fc=colour, ec=LIGHT.faint, lw=0.3, hatch=hatch)
        )
        if i > -count:
            text = signed_figures(i * step, places) if i else "0"
            axes.text(x, y - 2.4, text, size=SMALL, ha="center", va="top", color=LIGHT.soft)
        x += width
    axes.text(x + 2, y, "helps, degrees per 10 g", size=BODY, va="center")
