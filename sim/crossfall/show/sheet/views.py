"""The drawings on a set-up sheet: side, rear and plan to one scale, and the tips by direction.

Each function draws into a frame of an axes whose data units are mm of paper.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.patches import Circle, Polygon

from crossfall.answers.answer import Answers, TipAnswer
from crossfall.show.drawings import (
    SCALES,
    clearances,
    extent,
    rear_sizes,
    side_sizes,
    tyres_across,
)
from crossfall.show.paper import (
    Z_LINE,
    Z_MARK,
    Z_TEXT,
    Placement,
    arrow,
    centre_mark,
    dimension,
    draw_ground,
    haloed,
    paint,
    rectangle,
)
from crossfall.show.sheet.facts import Build, Facts
from crossfall.show.silhouette import PLAN, REAR, SIDE, PlacedShape, solids
from crossfall.show.style import HEADING, LIGHT, SMALL, text_size
from crossfall.statics.rigid import downhill, tip_points, wedge_lines
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Truck

DASH, DOTS, SLIDES = (0, (5, 2)), (0, (1.2, 1.6)), (0, (3, 1.5))
LEFT, BETWEEN, RIGHT = 14.0, 20.0, 10.0  # mm for dimensions beside the views
OVER, UNDER = 1.0, 14.0  # mm over and under them
BESIDE = 8.0  # mm for the loads beside the plan
RING = 10.0  # deg between the rings of the compass
HEADED, NOTES = 6.5, 4.5  # mm over and under it


@dataclass(frozen=True)
class Frame:
    """mm of paper: left, bottom, width, height."""

    left: float
    bottom: float
    width: float
    height: float


def choose_scale(things: list[PlacedShape], views: Frame, plan: Frame) -> float:
    """The largest usual scale at which side and rear fit one frame and the plan the other."""
    side, rear, top = (extent(things, v) for v in (SIDE, REAR, PLAN))
    across = side.right - side.left + rear.right - rear.left
    for scale in SCALES:
        k = 1000 / scale
        fits = (
            k * across <= views.width - LEFT - BETWEEN - RIGHT,
            k * max(side.high, rear.high) <= views.height - OVER - UNDER,
            k * (top.right - top.left) <= plan.width - LEFT,
            k * (top.high - top.low) <= plan.height - BESIDE,
        )
        if all(fits):
            return scale
    return SCALES[-1]


def draw_views(axes: Axes, frame: Frame, facts: Facts, scale: float) -> None:
    """Side and rear, with CG, tip lines, clearances and dimensions."""
    truck, old = facts.now.truck, facts.before.truck if facts.before else None
    things = solids(truck)
    side, rear = extent(things, SIDE), extent(things, REAR)
    k = 1000 / scale
    level = frame.bottom + UNDER
    wide = k * (side.right - side.left + rear.right - rear.left)
    spare = max(0.0, frame.width - LEFT - BETWEEN - RIGHT - wide)
    x_side = frame.left + LEFT - k * side.left + spare / 3
    x_rear = x_side + k * side.right + BETWEEN + spare / 3 - k * rear.left
    at_side = Placement(SIDE, (x_side, level), scale)
    at_rear = Placement(REAR, (x_rear, level), scale)
    for place, box in ((at_side, side), (at_rear, rear)):
        paint(axes, place, things)
        draw_ground(axes, place.at(box.left, 0)[0] - 4, place.at(box.right, 0)[0] + 4, level)
        _tip_lines(axes, place, truck, old)
    clearances(axes, at_side, truck, side)
    side_sizes(axes, at_side, truck, old)
    rear_sizes(axes, at_rear, truck, old)
    x, cg = at_rear.at(rear.right, 0)[0], whole(truck).cg
    foot, high = (x + 2, level), at_rear.at(rear.right, rear.high)
    dimension(axes, foot, high, x + 8.5, f"{1000 * rear.high:.0f} high", upright=True)
    at = at_rear.at(-float(cg[1]), float(cg[2]))
    dimension(axes, foot, at, x + 3.5, f"CG {1000 * cg[2]:.1f}", upright=True)


def _tip_lines(axes: Axes, place: Placement, truck: Truck, old: Truck | None) -> None:
    """From the tip lines through the CG and a little beyond, the truck before in dots."""
    for one, dash, colour, width in ((old, DOTS, LIGHT.faint, 0.9), (truck, DASH, LIGHT.ink, 0.9)):
        if one is None:
            continue
        lines = wedge_lines(one)[[0, 2] if place.view is SIDE else [1, 3]]
        if place.view is REAR:
            lines = lines * [-1.0, 1.0]  # the page's right is the truck's right
        for foot, top in lines:
            x, y = place.flat(np.array([foot, top + 0.3 * (top - foot)])).T
            axes.plot(x, y, color=colour, lw=width, ls=dash, zorder=Z_LINE)
    _marks(axes, place, truck, old)


def _marks(axes: Axes, place: Placement, truck: Truck, old: Truck | None) -> None:
    """The CG; the one before as an open dotted ring."""
    if old is not None:
        x, y = place.of(whole(old).cg)[0]
        ring = Circle((x, y), 1.9, fill=False, ec=LIGHT.ink, lw=0.8, ls=DOTS, zorder=Z_MARK)
        axes.add_artist(ring)
    centre_mark(axes, place.of(whole(truck).cg)[0], radius=1.9)


def draw_plan(axes: Axes, frame: Frame, facts: Facts, scale: float) -> None:
    """From above, nose to the right, with the load under each tyre."""
    truck, old = facts.now.truck, facts.before.truck if facts.before else None
    things = solids(truck)
    box = extent(things, PLAN)
    k = 1000 / scale
    middle = frame.bottom + frame.height / 2
    x = frame.left + LEFT - k * box.left
    place = Placement(PLAN, (x, middle - k * (box.high + box.low) / 2), scale)
    paint(axes, place, things)
    corners = place.flat(tip_points(truck)[[0, 1, 3, 2]])
    axes.add_artist(Polygon(corners, fill=False, ec=LIGHT.ink, lw=0.9, ls=DASH, zorder=Z_LINE))
    _marks(axes, place, truck, old)
    loads = corner_loads(facts)
    for i, text in enumerate(loads):
        axle = truck.axles[i // 2]
        u = axle.x
        side = 1.0 if i % 2 == 0 else -1.0
        edge = place.at(u, side * (axle.track + axle.tyre.width) / 2)
        y = edge[1] + side * 1.2
        haloed(axes, edge[0], y, text, va="bottom" if side > 0 else "top", weight="bold")
    tyres_across(axes, place, truck, place.at(box.left, 0)[0] - 5.0)


def corner_loads(facts: Facts) -> list[str]:
    """What a scale under each tyre shows, front left first; with what it showed before."""
    now = facts.now.weight.tyre_loads * 1e3 / GRAVITY
    if facts.before is None:
        return [f"{g:.0f} g" for g in now]
    old = facts.before.weight.tyre_loads * 1e3 / GRAVITY
    return [f"{g:.0f} g (was {o:.0f})" for g, o in zip(now, old, strict=True)]


def draw_compass(axes: Axes, frame: Frame, facts: Facts) -> None:
    """Tip angle by the side it falls to, nose up the page: the further out the better."""
    x, y = frame.left + frame.width / 2, frame.bottom + NOTES + (frame.height - NOTES - HEADED) / 2
    middle = np.array([x, y])
    builds = [b for b in (facts.before, facts.now) if b is not None]
    ends = [v for b in builds for a in b.tips.answers for v in (a.tip, a.range.tip[1])]
    rings = np.arange(
        RING, np.degrees(max((v for v in ends if np.isfinite(v)), default=1)) + RING, RING
    )
    k = (frame.height - NOTES - HEADED) / 2 / rings[-1]
    top = frame.bottom + frame.height
    axes.text(frame.left, top - 3.2, "By direction, nose up", size=HEADING, weight="bold")
    first = facts.now.weakest
    slides = not first.conditions.rail
    _compass_key(axes, frame, facts.before is not None, slides)
    for ring in rings:
        heavy = ring % 20 == 0
        colour = LIGHT.faint if heavy else LIGHT.grid
        axes.add_artist(Circle((x, y), k * ring, fill=False, ec=colour, lw=0.5, zorder=1))
    if slides:
        _slides(axes, middle, facts.now.tips, k, float(rings[-1]))
    _little_truck(axes, middle, facts.now.truck, k)
    if facts.before is not None:
        loop = _loop(middle, facts.before.tips, k, lambda a: a.tip)
        axes.plot(*loop.T, color=LIGHT.ink, lw=0.9, ls=DOTS, zorder=Z_LINE)
        axes.plot(*loop.T, "o", ms=2.6, mfc=LIGHT.paper, mec=LIGHT.ink, mew=0.7, zorder=Z_MARK)
    _band(axes, middle, facts.now, k)
    for ring in rings[(rings % 20 == 0) & (k * rings > 9)]:
        u, v = k * ring * np.sin(0.39), k * ring * np.cos(0.39)
        haloed(axes, x + u, y + v, f"{ring:.0f}°", size=SMALL, color=LIGHT.soft)


def _slides(axes: Axes, middle: Array, tips: Answers, k: float, most: float) -> None:
    """Where it slides or rolls away, deg: a circle if that is the same all round."""
    angles = np.degrees([a.slide[1] for a in tips.answers])
    look: dict[str, Any] = {"lw": 0.9, "ls": SLIDES, "zorder": Z_LINE, "gid": "slide"}
    if np.ptp(angles) < 0.01:
        if angles[0] < most:
            x, y = middle
            ring = Circle((x, y), k * angles[0], fill=False, ec=LIGHT.trial, **look)
            axes.add_artist(ring)
        return
    loop = _loop(middle, tips, k, lambda a: min(float(a.slide[1]), np.radians(most)))
    axes.plot(*loop.T, color=LIGHT.trial, **look)


def _compass_key(axes: Axes, frame: Frame, compared: bool, slides: bool) -> None:
    x, y = frame.left + 1.0, frame.bottom + 1.2
    axes.plot(x, y, "o", ms=3.2, color=LIGHT.compliant)
    x = _named(axes, x + 1.6, y, "now" if compared else "tips, 95 %", 2.4)
    if compared:
        axes.plot(x, y, "o", ms=2.6, mfc=LIGHT.paper, mec=LIGHT.ink, mew=0.7)
        x = _named(axes, x + 1.6, y, "before", 2.4)
    if slides:
        axes.plot([x, x + 5], [y, y], color=LIGHT.trial, lw=0.9, ls=SLIDES)
        _named(axes, x + 6.2, y, "slides")


def _loop(middle: Array, tips: Answers, k: float, what: Callable[[TipAnswer], float]) -> Array:
    """(n, 2) mm, closed, in order of heading; headings without a number are left out."""
    rows = []
    for a in sorted(tips.answers, key=lambda a: a.conditions.heading):
        angle = float(np.degrees(what(a)))
        if np.isfinite(angle):
            down = downhill(np.array([a.conditions.heading]))[0]
            rows.append(middle + k * angle * np.array([-down[1], down[0]]))
    return np.array([*rows, *rows[:1]]).reshape(-1, 2)


def _band(axes: Axes, middle: Array, build: Build, k: float) -> None:
    """The truck as it is, with the 95 % range of every angle."""
    low = _loop(middle, build.tips, k, lambda a: a.range.tip[0])
    high = _loop(middle, build.tips, k, lambda a: a.range.tip[1])
    line = _loop(middle, build.tips, k, lambda a: a.tip)
    if not len(line):
        return
    ring = np.vstack([high, low[::-1]])
    axes.add_artist(Polygon(ring, fc=LIGHT.compliant, alpha=0.30, ec="none", zorder=Z_LINE))
    axes.plot(*line.T, color=LIGHT.compliant, lw=1.5, zorder=Z_LINE + 0.2, gid="now")
    axes.plot(*line.T, "o", ms=3.2, color=LIGHT.compliant, zorder=Z_MARK + 0.1)


def _little_truck(axes: Axes, middle: Array, truck: Truck, k: float) -> None:
    """Four tyres, two axles and the way it looks, within the innermost rings."""
    size = 15.0 * k / (0.5 * truck.wheelbase + truck.front.tyre.radius)  # mm per m
    x, tail, nose = middle[0], *(middle[1] + size * a.x for a in (truck.rear, truck.front))
    for axle, y in ((truck.rear, tail), (truck.front, nose)):
        half, tread, radius = size * np.array([axle.track / 2, axle.tyre.width, axle.tyre.radius])
        axes.plot([x - half, x + half], [y, y], color=LIGHT.soft, lw=1.2)
        for left in (x - half - tread / 2, x + half - tread / 2):
            rectangle(axes, left, y - radius, tread, 2 * radius, LIGHT.tyre, r=0.4)
    arrow(axes, (x, tail), (x, nose + 2.0), LIGHT.soft, 1.0)


def scale_words(scale: float) -> str:
    return f"drawn 1:{scale:g}, mm"


def view_key(axes: Axes, left: float, y: float, compared: bool) -> None:
    """What the lines and marks mean, in one line."""
    centre_mark(axes, np.array([left + 2, y]), radius=1.5)
    x = _named(axes, left + 4.5, y, "CG")
    axes.plot([x, x + 6], [y, y], color=LIGHT.ink, lw=0.9, ls=DASH)
    x = _named(axes, x + 7, y, "tip line; weight under it helps")
    axes.plot([x, x + 6], [y, y], color=LIGHT.trial, lw=0.9, ls=(0, (1.5, 1.5)))
    x = _named(axes, x + 7, y, "clearance")
    if compared:
        axes.plot([x, x + 6], [y, y], color=LIGHT.faint, lw=0.9, ls=DOTS)
        axes.add_artist(Circle((x + 9, y), 1.5, fill=False, ec=LIGHT.ink, lw=0.8, ls=DOTS))
        _named(axes, x + 11.5, y, "before")


def _named(axes: Axes, x: float, y: float, text: str, spare: float = 4.0) -> float:
    """The text, and where the next thing may stand."""
    axes.text(x, y, text, size=SMALL, va="center", color=LIGHT.soft, zorder=Z_TEXT)
    return x + text_size(text, SMALL)[0] + spare
