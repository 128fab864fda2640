"""Drawing on the page in mm: solids to scale, ground, dimension lines, marks, row labels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

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


def draw_ground(axes: Axes, left: float, right: float, level: float, depth: float = 1.6) -> None:
    """The ground: a firm line with a strip of earth under it (mm of paper)."""
    strip = Rectangle(
        (left, level - depth), right - left, depth, fc=LIGHT.earth, ec="none", zorder=Z_GROUND
    )
    axes.add_artist(strip)
    axes.plot([left, right], [level, level], color=LIGHT.ink, lw=0.9, zorder=Z_GROUND + 0.1)


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
    start: tuple[float, float],
    end: tuple[float, float],
    line: float,
    text: str,
    upright: bool = False,
) -> None:
    """A dimension line between two points (mm of paper), at y = `line`, or x where upright.

    Thin lines lead from the points to it; a text too long for the span stands beyond its end.
    """
    axis = 1 if upright else 0
    low, high = sorted((start, end), key=lambda p: p[axis])
    along = (low[axis], high[axis])
    for p in (low, high):
        reach = line + np.sign(line - p[1 - axis]) * 1.0
        _segment(axes, upright, (p[axis], p[axis]), (p[1 - axis], reach), LIGHT.faint, 0.35)
        _tick(axes, upright, p[axis], line)
    _segment(axes, upright, along, (line, line), LIGHT.soft, 0.5)
    width, _ = text_size(text, SMALL)
    fits = along[1] - along[0] > width + 2
    middle = sum(along) / 2 if fits else along[1] + 1.5
    x, y = (line, middle) if upright else (middle, line)
    align = (
        {"va": "center"} if fits else {("va" if upright else "ha"): "bottom" if upright else "left"}
    )
    turn = {"rotation": 90, "rotation_mode": "anchor"} if upright and fits else {}
    haloed(axes, x, y, text, size=SMALL, color=LIGHT.ink, **(align | turn))


def _segment(
    axes: Axes,
    upright: bool,
    along: tuple[float, float],
    across: tuple[float, float],
    colour: str,
    width: float,
) -> None:
    x, y = (across, along) if upright else (along, across)
    axes.plot(x, y, color=colour, lw=width, zorder=Z_LINE)


def _tick(axes: Axes, upright: bool, along: float, line: float) -> None:
    x, y = (line, along) if upright else (along, line)
    axes.plot([x - 0.7, x + 0.7], [y - 0.7, y + 0.7], color=LIGHT.ink, lw=0.7, zorder=Z_LINE)


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
