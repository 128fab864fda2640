"""Drawing on the page in mm: solids to scale, ground, dimension lines, marks, row labels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.colors import to_rgb
from matplotlib.patches import Circle, PathPatch, Rectangle, Wedge
from matplotlib.path import Path as Curve

from crossfall.show.silhouette import Patch, PlacedShape, View, area, outline, painted, patches
from crossfall.show.style import BODY, LIGHT, SMALL, text_size
from crossfall.truck.model import Array

# Painting order on a page.
Z_SOLID, Z_GROUND, Z_LINE, Z_MARK, Z_TEXT = 2.0, 5.0, 6.0, 7.0, 8.0

PaperPoint = Array | Sequence[float]
PaperPoints = Array | Sequence[PaperPoint]

WHEEL = 0.55
ROLE_COLOURS = {
    "chassis": LIGHT.sprung,
    "link": LIGHT.link,
    "front axle": LIGHT.unsprung,
    "rear axle": LIGHT.unsprung,
}


@dataclass(frozen=True)
class Placement:
    """Where a view lies on the page. origin: mm of paper of the truck's origin; scale: 1:scale."""

    view: View
    origin: tuple[float, float]
    scale: float

    def at(self, u: float, v: float) -> tuple[float, float]:
        """mm of paper of a point (u, v) m in the plane of the view."""
        k = 1000 / self.scale
        return self.origin[0] + k * u, self.origin[1] + k * v

    def flat(self, points: Array) -> Array:
        """(n, 2) mm of paper of points (n, 2) m in the plane of the view."""
        return np.asarray(self.origin) + 1000 / self.scale * np.asarray(points)

    def of(self, points: Array) -> Array:
        """(n, 2) mm of paper of points (n, 3) m in truck axes."""
        return self.flat(self.view.flat(np.atleast_2d(points)))


def tinted(colour: str, shade: float) -> tuple[float, float, float]:
    """The colour in light (shade 1) or shadow (shade 0); 0.7 leaves it as it is."""
    rgb = np.array(to_rgb(colour))
    to = np.ones(3) if shade > 0.7 else np.array(to_rgb(LIGHT.ink))
    r, g, b = rgb + (to - rgb) * min(abs(shade - 0.7) * 0.9, 0.6)
    return float(r), float(g), float(b)


def paint(
    axes: Axes, place: Placement, things: Iterable[PlacedShape], strength: float = 1.0
) -> None:
    """Paint solids far to near. The more of the picture one covers, the clearer its glass, so
    that a body shell does not hide what it holds."""
    ordered = painted(things, place.view)
    shapes = [outline(s, place.view) for s in ordered]
    rows = np.concatenate(shapes) if shapes else np.zeros((1, 2))
    whole = max(float(np.prod(np.ptp(rows, axis=0))), 1e-9)
    for solid, shape in zip(ordered, shapes, strict=True):
        cover = area(shape) / whole if len(shape) > 2 else 0.0
        alpha = strength * float(np.interp(cover, [0.0, 0.1, 0.4], [0.92, 0.62, 0.16]))
        colour = ROLE_COLOURS.get(solid.role, LIGHT.tyre)
        if solid.role not in ROLE_COLOURS:
            alpha *= WHEEL  # wheels nest many pieces, and stand before the axles
        for patch in patches(solid, place.view):
            axes.add_artist(_filled(patch, place, colour, alpha))
        if len(shape) > 2:
            edge = Curve(place.flat(np.vstack([shape, shape[:1]])))
            axes.add_artist(
                PathPatch(
                    edge, fill=False, lw=0.45, ec=LIGHT.ink, alpha=0.75 * strength, zorder=Z_SOLID
                )
            )


def _filled(patch: Patch, place: Placement, colour: str, alpha: float) -> PathPatch:
    rings = [patch.points] + ([patch.hole[::-1]] if patch.hole is not None else [])
    closed = [place.flat(np.vstack([ring, ring[:1]])) for ring in rings if len(ring) > 2]
    curve = Curve.make_compound_path(*(Curve(c, closed=True) for c in closed))
    return PathPatch(
        curve,
        fc=(*tinted(colour, patch.shade), alpha),
        ec=(*tinted(colour, 0.0), min(1.0, 1.3 * alpha)),
        lw=0.3,
        zorder=Z_SOLID,
    )


def draw_ground(axes: Axes, left: float, right: float, level: float, k: float = 1.0) -> None:
    """The ground: a firm line with a strip of earth under it (mm of paper), k times as large."""
    strip = Rectangle((left, level), right - left, -1.6 * k, fc=LIGHT.earth, zorder=Z_GROUND)
    axes.add_artist(strip)
    axes.plot([left, right], [level, level], color=LIGHT.ink, lw=0.9 * k, zorder=Z_GROUND + 0.1)


def bent(points: PaperPoints, r: float, closed: bool) -> Curve:
    """A line through points (n, 2), or round them, its corners cut r before they come and bent."""
    p = np.asarray(points, dtype=float)
    if not r:
        return Curve(np.vstack([p, p[:1]]) if closed else p, closed=closed)
    corners = range(len(p)) if closed else range(1, len(p) - 1)
    rows = [] if closed else [p[0]]
    for i in corners:
        ways = [p[j] - p[i] for j in (i - 1, (i + 1) % len(p))]
        start, end = (p[i] + min(r / np.hypot(*way), 0.5) * way for way in ways)
        rows += [start, p[i], end]
    bends = [Curve.LINETO, Curve.CURVE3, Curve.CURVE3] * len(corners)
    codes = [*bends, Curve.CLOSEPOLY] if closed else [Curve.LINETO, *bends, Curve.LINETO]
    return Curve([*rows, rows[0] if closed else p[-1]], [Curve.MOVETO, *codes[1:]])


def filled_shape(
    axes: Axes, points: PaperPoints, colour: str, r: float = 0.0, edge: float = 0.0
) -> None:
    """What fills an outline (mm), its corners bent by r; edge: pt, of the ink round it."""
    _shape(axes, bent(points, r, True), fc=colour, ec=LIGHT.ink if edge else "none", lw=edge)


def rectangle(
    axes: Axes, x: float, y: float, wide: float, high: float, colour: str, **look: float
) -> None:
    """A full rectangle from its lower left corner, mm; r and edge as of `filled_shape`."""
    right, top = x + wide, y + high
    filled_shape(axes, [(x, y), (right, y), (right, top), (x, top)], colour, **look)


def disc(axes: Axes, at: tuple[float, float], r: float, colour: str) -> None:
    """A full circle, mm."""
    _shape(axes, Curve.circle(at, r), fc=colour, ec="none")


def stroke(
    axes: Axes,
    colour: str,
    lw: float,
    *lines: PaperPoints,
    r: float = 0.0,
    closed: bool = False,
    **look: Any,
) -> None:
    """Lines (mm) of one pen, pt wide, their corners bent by r; closed: back to where they began."""
    curve = Curve.make_compound_path(*(bent(one, r, closed) for one in lines))
    _shape(axes, curve, fill=False, ec=colour, lw=lw, capstyle="round", **look)


def _shape(axes: Axes, curve: Curve, **look: Any) -> None:
    axes.add_artist(PathPatch(curve, joinstyle="round", zorder=Z_SOLID, **look))


def arrow(
    axes: Axes, tail: PaperPoint, head: PaperPoint, colour: str, lw: float, k: float = 1.0
) -> None:
    """An arrow from one point to another (mm), k times as large."""
    style = {"arrowstyle": "-|>", "color": colour, "lw": lw * k, "shrinkA": 0, "shrinkB": 0}
    axes.annotate(
        "", (head[0], head[1]), (tail[0], tail[1]), size=k * BODY, arrowprops=style, zorder=Z_LINE
    )


def centre_mark(axes: Axes, at: Array, radius: float = 2.3, whole: bool = True) -> None:
    """The quartered mark of a CG (mm); half of it, smaller, for the sprung mass."""
    x, y = (float(v) for v in at)
    r = radius if whole else 0.72 * radius
    axes.add_artist(Circle((x, y), r, fc=LIGHT.paper, ec=LIGHT.ink, lw=0.8, zorder=Z_MARK))
    for start in (0, 180) if whole else (180,):
        end = start + (90 if whole else 180)
        axes.add_artist(Wedge((x, y), r, start, end, fc=LIGHT.ink, ec="none", zorder=Z_MARK + 0.1))


def haloed(axes: Axes, x: float, y: float, text: str, **kwargs: object) -> None:
    """Text on a small sheet of paper, so that lines behind never cross it."""
    style: dict[str, object] = {
        "size": BODY,
        "ha": "center",
        "va": "center",
        "zorder": Z_TEXT,
        "bbox": {"fc": LIGHT.paper, "ec": "none", "pad": 0.8, "alpha": 0.88},
    }
    axes.text(x, y, text, **(style | kwargs))  # type: ignore[arg-type]


def dimension(
    axes: Axes,
    start: PaperPoint,
    end: PaperPoint,
    line: float,
    text: str,
    upright: bool = False,
    k: float = 1.0,
    **words: Any,
) -> None:
    """A dimension line between two points (mm of paper), at y = `line`, or x where upright.

    Thin lines lead from the points to it; a text too long for the span stands beyond its end, and
    a letter by itself is never turned. k: times as large. words: how its text looks; a colour of
    its own is that of the line as well, which is firmer then.
    """

    def pen(along: PaperPoint, across: PaperPoint, colour: str, width: float) -> None:
        x, y = (across, along) if upright else (along, across)
        axes.plot(x, y, color=colour, lw=k * width, zorder=Z_LINE)

    axis = 1 if upright else 0
    low, high = sorted((start, end), key=lambda p: p[axis])
    along, tick = (low[axis], high[axis]), 0.7 * k * np.array([-1.0, 1.0])
    for p in (low, high):
        reach = line + np.sign(line - p[1 - axis]) * k
        pen((p[axis], p[axis]), (p[1 - axis], reach), LIGHT.faint, 0.35)
        pen(p[axis] + tick, line + tick, words.get("color", LIGHT.ink), 0.7)
    pen(along, (line, line), words.get("color", LIGHT.soft), 0.8 if "color" in words else 0.5)
    fits = along[1] - along[0] > text_size(text, k * SMALL)[0] + 2 * k
    middle = sum(along) / 2 if fits else along[1] + 1.5 * k
    x, y = (line, middle) if upright else (middle, line)
    look: dict[str, Any] = {"size": k * SMALL, "color": LIGHT.ink}
    if not fits:
        look |= {"va": "bottom"} if upright else {"ha": "left"}
    elif upright and len(text) > 1:
        look |= {"rotation": 90, "rotation_mode": "anchor"}
    haloed(axes, x, y, text, **(look | words))


def label_places(
    wanted: Sequence[float], widths: Sequence[float], left: float, right: float
) -> Array:
    """(n,) middles of labels side by side, nearest to where each is wanted (least squares).

    wanted: in ascending order. Pools neighbours that would overlap, then shifts each pool as one
    (isotonic regression of the wanted places less the widths before them).
    """
    half = np.array(widths) / 2
    before = np.concatenate([[0.0], np.cumsum(half[:-1] + half[1:])])
    pools: list[list[float]] = []
    for target in np.array(wanted) - before:
        pools.append([float(target), 1.0])
        while len(pools) > 1 and pools[-2][0] > pools[-1][0]:
            (a, m), (b, n) = pools[-2:]
            pools[-2:] = [[(a * m + b * n) / (m + n), m + n]]
    loose = np.concatenate([np.full(int(n), a) for a, n in pools])
    last = right - half[-1] - before[-1]
    middles: Array = np.clip(loose, left + half[0], last) + before
    return middles


def row_labels(
    axes: Axes, items: Sequence[tuple[float, float, str]], level: float, left: float, right: float
) -> None:
    """Texts in one row above what they name, leaders in order so that none cross.

    items: (x, y, text) mm, the point named. level: mm, foot of the texts. Labels that do not fit
    between left and right are left out, the last given first: give them in order of importance.
    """
    sizes = {text: text_size(text, SMALL) for _, _, text in items}
    kept = list(items)
    while sum(sizes[t][0] + 3.0 for _, _, t in kept) > right - left:
        kept.pop()
    kept.sort()
    if not kept:
        return
    widths = [sizes[t][0] + 3.0 for _, _, t in kept]
    middles = label_places([x for x, _, _ in kept], widths, left, right)
    bend = level - 4.5
    for (x, y, text), middle in zip(kept, middles, strict=True):
        axes.plot(
            [x, x, middle], [y, max(bend, y), level - 0.6], color=LIGHT.soft, lw=0.4, zorder=Z_LINE
        )
        axes.plot(x, y, "o", ms=1.8, color=LIGHT.ink, mec=LIGHT.paper, mew=0.3, zorder=Z_MARK)
        axes.text(
            middle,
            level,
            text,
            size=SMALL,
            ha="center",
            va="baseline",
            linespacing=1.1,
            zorder=Z_TEXT,
        )
