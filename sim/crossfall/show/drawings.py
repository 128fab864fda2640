"""Side, rear and plan of a truck to scale, with every part, CG, tip lines and dimensions."""

from __future__ import annotations

import re
from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import Polygon, Rectangle

from crossfall.show.paper import (
    ROLE_COLOURS,
    Z_LINE,
    Z_MARK,
    Z_TEXT,
    Placement,
    centre_mark,
    dimension,
    draw_ground,
    haloed,
    paint,
    row_labels,
)
from crossfall.show.silhouette import PLAN, REAR, SIDE, PlacedShape, View, outline, solids
from crossfall.show.style import BODY, HEADING, LIGHT, SMALL, paper_page, styled, title
from crossfall.statics.rigid import QUARTERS, tip_angle, tip_points, wedge_lines
from crossfall.truck.clearance import touching_slope
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Axle, Part, Truck

SCALES = (1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0)
WIDTH, HEIGHT = 297.0, 210.0  # mm, A4 lying
HEAD, LABELS, UNDER, GAP, EDGE = 15.0, 17.0, 20.0, 30.0, 14.0  # mm kept free around the views
_FOOT = 14.0


@dataclass(frozen=True)
class Extent:
    """Least and greatest u and v (m) of everything drawn in a view."""

    left: float
    right: float
    low: float
    high: float


def extent(things: list[PlacedShape], view: View) -> Extent:
    """Of all outlines in a view; the ground line counts."""
    rows = np.concatenate([outline(s, view) for s in things])
    (left, low), (right, high) = rows.min(axis=0), rows.max(axis=0)
    return (
        Extent(left, right, min(low, 0.0), high)
        if view is not PLAN
        else Extent(left, right, low, high)
    )


def _choose_scale(width: float, height: float) -> float:
    """The largest drawing whose views (m) fit the page; the smallest we have if none does."""
    space = (WIDTH - 2 * EDGE - GAP, HEIGHT - HEAD - LABELS - UNDER - _FOOT)
    for scale in SCALES:
        if 1000 * width / scale <= space[0] and 1000 * height / scale <= space[1]:
            return scale
    return SCALES[-1]


@styled
def draw_truck(truck: Truck) -> Figure:
    """A4 sheet of side, rear and plan view, one scale, mm on paper exact."""
    things = solids(truck)
    side, rear, plan = (extent(things, v) for v in (SIDE, REAR, PLAN))
    wide = (side.right - side.left) + (rear.right - rear.left)
    scale = _choose_scale(wide, side.high - side.low + plan.high - plan.low)
    made, axes = paper_page(WIDTH, HEIGHT)
    k = 1000 / scale
    level = HEIGHT - HEAD - LABELS - k * side.high
    x_side = EDGE + 6 - k * side.left
    x_rear = x_side + k * side.right + GAP - k * rear.left
    places = (
        Placement(SIDE, (x_side, level), scale),
        Placement(REAR, (x_rear, level), scale),
        Placement(PLAN, (x_side, level - UNDER - k * plan.high), scale),
    )
    for place, box in zip(places, (side, rear, plan), strict=True):
        paint(axes, place, things)
        if place.view is not PLAN:
            left, right = place.at(box.left, 0)[0] - 8, place.at(box.right, 0)[0] + 8
            draw_ground(axes, left, right, level)
    _side(axes, places[0], truck, side)
    _rear(axes, places[1], truck, rear)
    _plan(axes, places[2], truck, plan)
    top = HEIGHT - HEAD - LABELS + 6.5
    row_labels(axes, heaviest(truck, places[0]), top, EDGE - 6, x_side + k * side.right + 12)
    _block(axes, truck, places[1].at(rear.left, 0)[0] - 8, places[2].at(0, plan.low)[1])
    _scale_bar(axes, places[1].at(rear.left, 0)[0] - 8, scale)
    body = whole(truck)
    title(made, truck.name, f"{1000 * body.mass:.0f} g, drawn 1:{scale:g}, dimensions in mm")
    return made


def heaviest(truck: Truck, place: Placement, most: int = 10) -> list[tuple[float, float, str]]:
    """(x, y, text) mm of the heaviest entries of the parts list, heaviest first.

    Copies of one entry are named once, with their number and their mass together, at the copy
    on the viewer's side that stands clearest of the names before it.
    """
    entries: dict[int, list[Part]] = {}
    for part in truck.parts:
        entries.setdefault(part.row, []).append(part)
    ranked = sorted(entries.values(), key=lambda ps: -sum(p.body.mass for p in ps))[:most]
    items: list[tuple[float, float, str]] = []
    for parts in ranked:
        near = [p for p in parts if p.body.cg @ place.view.toward >= -1e-9] or parts
        spots = [place.of(p.body.cg)[0] for p in near]
        taken = [x for x, _, _ in items]
        x, y = max(spots, key=lambda s: min((abs(s[0] - t) for t in taken), default=0.0))
        name = re.sub(r"\s+\d+$", "", parts[0].label) if len(parts) > 1 else parts[0].label
        grams = 1000 * sum(p.body.mass for p in parts)
        several = f"{len(parts)} x " if len(parts) > 1 else ""
        items.append((float(x), float(y), f"{several}{_folded(name)}\n{grams:.0f} g"))
    return items


def _folded(name: str, longest: int = 13) -> str:
    """A long name on two lines, broken at the space nearest its middle."""
    spaces = [i for i, c in enumerate(name) if c == " "]
    if len(name) <= longest or not spaces:
        return name
    cut = min(spaces, key=lambda i: abs(i - len(name) / 2))
    return f"{name[:cut]}\n{name[cut + 1 :]}"


def _side(axes: Axes, place: Placement, truck: Truck, box: Extent) -> None:
    cg = whole(truck).cg
    angles = tip_angle(truck, QUARTERS)
    lines = wedge_lines(truck)
    _tip_line(axes, place, lines[0], float(angles[0]), "climb")
    _tip_line(axes, place, lines[2], float(angles[2]), "descent")
    clearances(axes, place, truck, box)
    roll_axis = [(a.x, a.suspension.roll_centre_height) for a in truck.axles]
    x, y = place.flat(np.array(roll_axis)).T
    axes.plot(x, y, color=LIGHT.ink, lw=0.7, ls=(0, (6, 2, 1, 2)), zorder=Z_LINE)
    axes.plot(x, y, "P", ms=4, color=LIGHT.paper, mec=LIGHT.ink, mew=0.7, zorder=Z_MARK)
    marks(axes, place, truck)
    side_sizes(axes, place, truck)
    at_left = place.at(box.left, 0)[0] - 10
    low = (at_left + 3, place.origin[1])
    dimension(axes, low, place.at(cg[0], cg[2]), at_left, f"CG {1000 * cg[2]:.1f}", upright=True)


def _rear(axes: Axes, place: Placement, truck: Truck, box: Extent) -> None:
    angles = tip_angle(truck, QUARTERS)
    lines = wedge_lines(truck).copy()
    lines[..., 0] *= -1  # the page's right is the truck's right
    _tip_line(axes, place, lines[1], float(angles[1]), "left side down")
    _tip_line(axes, place, lines[3], float(angles[3]), "right side down")
    for axle in truck.axles:
        x, y = place.at(0, axle.suspension.roll_centre_height)
        axes.plot(x, y, "P", ms=4, color=LIGHT.paper, mec=LIGHT.ink, mew=0.7, zorder=Z_MARK)
    marks(axes, place, truck)
    rear_sizes(axes, place, truck)
    top = place.at(box.right, box.high)
    foot_right = (top[0] + 7, place.origin[1])
    dimension(axes, foot_right, top, foot_right[0] + 3, f"{1000 * box.high:.0f}", upright=True)


def _plan(axes: Axes, place: Placement, truck: Truck, box: Extent) -> None:
    corners = place.flat(tip_points(truck)[[0, 1, 3, 2]])
    axes.add_artist(
        Polygon(corners, fill=False, ec=LIGHT.rigid, lw=1.0, ls=(0, (5, 2)), zorder=Z_LINE)
    )
    marks(axes, place, truck)
    tyres_across(axes, place, truck, place.at(box.left, 0)[0] - 10)
    line = place.at(0, box.low)[1] - 6
    ends = [place.at(u, box.low) for u in (box.left, box.right)]
    dimension(axes, ends[0], ends[1], line, f"overall {1000 * (box.right - box.left):.0f}")


def side_sizes(axes: Axes, place: Placement, truck: Truck, old: Truck | None = None) -> None:
    """Wheelbase, with what it was in the truck before, and the CG between its ends."""
    cg, level = whole(truck).cg, place.origin[1]
    rear, under, front = (place.at(x, 0) for x in (truck.rear.x, cg[0], truck.front.x))
    dimension(axes, rear, under, level - 6.0, f"{1000 * (cg[0] - truck.rear.x):.1f}")
    dimension(axes, under, front, level - 6.0, f"{1000 * (truck.front.x - cg[0]):.1f}")
    text = f"wheelbase {1000 * truck.wheelbase:.1f}"
    if old is not None and f"{1000 * old.wheelbase:.1f}" != text.split()[1]:
        text += f" (was {1000 * old.wheelbase:.1f})"
    dimension(axes, rear, front, level - 11.0, text)


def rear_sizes(axes: Axes, place: Placement, truck: Truck, old: Truck | None = None) -> None:
    """Track, with what it was in the truck before, and the CG between the tip lines."""
    level, under = place.origin[1], place.at(-float(whole(truck).cg[1]), 0)
    for y in wedge_lines(truck)[[1, 3], 0, 0]:
        foot = place.at(-float(y), 0)
        arm = abs(foot[0] - under[0]) * place.scale
        dimension(axes, foot, under, level - 6.0, f"{arm:.1f}")
    half = max(a.track for a in truck.axles) / 2
    text = f"track {_tracks(truck)}"
    if old is not None and _tracks(old) != _tracks(truck) and "/" not in _tracks(old) + text:
        text += f" (was {_tracks(old)})"
    dimension(axes, place.at(-half, 0), place.at(half, 0), level - 11.0, text)


def _tracks(truck: Truck) -> str:
    """One number, or front / rear where they differ."""
    front, rear = 1000 * truck.front.track, 1000 * truck.rear.track
    return f"{front:.1f}" if abs(front - rear) < 0.05 else f"{front:.1f} / {rear:.1f}"


def tyres_across(axes: Axes, place: Placement, truck: Truck, line: float) -> None:
    """In plan, over the tyres' outsides, at x = line (mm of paper)."""
    wide = max(a.track + a.tyre.width for a in truck.axles) / 2
    near = place.at(truck.rear.x, 0)[0]
    low, high = ((near, place.at(0, v)[1]) for v in (-wide, wide))
    dimension(axes, low, high, line, f"tyres {2000 * wide:.0f}", upright=True)


def _tip_line(axes: Axes, place: Placement, line: Array, angle: float, text: str) -> None:
    """From a tip line up to the CG and a little beyond, with its angle from upright."""
    foot, top = np.asarray(line)
    beyond = top + (top - foot) * 0.28
    x, y = place.flat(np.array([foot, beyond])).T
    axes.plot(x, y, color=LIGHT.rigid, lw=1.0, ls=(0, (5, 2)), zorder=Z_LINE)
    axes.plot(x[0], y[0], "^", ms=4, color=LIGHT.rigid, zorder=Z_MARK)
    ha = "left" if x[1] > x[0] else "right"
    shift = 0.8 if ha == "left" else -0.8
    label = f"{text} {np.degrees(angle):.1f}°"
    haloed(axes, x[1] + shift, y[1], label, ha=ha, size=SMALL, color=LIGHT.ink)


def marks(axes: Axes, place: Placement, truck: Truck) -> None:
    """CG of the sprung mass and of the whole truck."""
    centre_mark(axes, place.of(truck.chassis.cg)[0], whole=False)
    centre_mark(axes, place.of(whole(truck).cg)[0])


def clearances(axes: Axes, place: Placement, truck: Truck, box: Extent) -> None:
    """Lines from the tyres to nose, belly and tail, with the slope each allows."""
    if truck.clearance is None:
        return
    points = truck.clearance
    front, rear = truck.front, truck.rear
    for axle, point, sign, text in (
        (front, points.nose, 1.0, "approach"),
        (rear, points.tail, -1.0, "departure"),
    ):
        angle = ramp(axle, point, sign)
        wheel_first = angle >= np.pi / 2
        if wheel_first:  # even a wall meets the tyre before it meets the body
            point = (axle.x + sign * axle.tyre.radius, 1.5 * axle.tyre.radius)
        start = touch(axle, angle, sign)
        end = np.array(point) + 0.012 * np.array([sign * np.cos(angle), np.sin(angle)])
        _clear_line(axes, place, start, end)
        x, y = place.flat(end)
        label = f"{text}\n" + ("over 90°" if wheel_first else f"{np.degrees(angle):.0f}°")
        side = {"ha": "left" if sign > 0 else "right", "va": "top"}
        haloed(axes, x + sign * 0.8, y - 0.4, label, size=SMALL, linespacing=1.0, **side)
    total = 0.0
    for axle, sign in ((front, -1.0), (rear, 1.0)):
        angle = ramp(axle, points.belly, sign)
        total += angle
        _clear_line(axes, place, touch(axle, angle, sign), np.array(points.belly))
    x, y = place.at(points.belly[0], 0.32 * points.belly[1])
    haloed(axes, x, y, f"breakover {np.degrees(total):.0f}°", size=SMALL)


def _clear_line(axes: Axes, place: Placement, start: Array, end: Array) -> None:
    x, y = place.flat(np.array([start, end])).T
    axes.plot(x, y, color=LIGHT.trial, lw=0.9, ls=(0, (1.5, 1.5)), zorder=Z_LINE)


def ramp(axle: Axle, point: tuple[float, float], sign: float) -> float:
    """rad, slope of the line under a tyre and a point (x, z) m, ahead (sign 1) or behind (-1)."""
    radius = axle.tyre.radius
    return touching_slope(sign * (point[0] - axle.x), point[1] - radius, radius)


def touch(axle: Axle, angle: float, sign: float) -> Array:
    """(2,) m, where that line touches the tyre."""
    r = axle.tyre.radius
    return np.array([axle.x + sign * r * np.sin(angle), r - r * np.cos(angle)])


def _block(axes: Axes, truck: Truck, left: float, foot: float) -> None:
    """The key: what the colours and marks mean, and the masses."""
    body = whole(truck)
    share = (body.cg[0] - truck.rear.x) / truck.wheelbase
    rows = [
        ("chassis", LIGHT.sprung, f"sprung, {1000 * truck.chassis.mass:.0f} g"),
        ("axle", LIGHT.unsprung, "on the axles"),
        ("wheel", LIGHT.tyre, "wheels and tyres"),
        ("link", ROLE_COLOURS["link"], "links, shared by chassis and axle"),
    ]
    y = foot + 45
    axes.text(left, y + 4, "Key", size=HEADING, weight="bold", va="bottom")
    for _, colour, text in rows:
        axes.add_artist(Rectangle((left, y - 1.6), 5, 3.2, fc=colour, ec=LIGHT.ink, lw=0.4))
        axes.text(left + 7.5, y, text, size=BODY, va="center", zorder=Z_TEXT)
        y -= 5
    centre_mark(axes, np.array([left + 2.5, y]))
    front = f"{100 * share:.1f} % of the load on the front axle"
    axes.text(left + 7.5, y, f"CG of the whole truck, {front}", size=BODY, va="center")
    y -= 5.5
    centre_mark(axes, np.array([left + 2.5, y]), whole=False)
    axes.text(left + 7.5, y, "CG of the sprung mass", size=BODY, va="center")
    y -= 5.5
    for style, colour, text in (
        ((0, (5, 2)), LIGHT.rigid, "tip line and rigid tip angle; a gram under it helps"),
        ((0, (1.5, 1.5)), LIGHT.trial, "clearance line, from the tyre"),
        ((0, (6, 2, 1, 2)), LIGHT.ink, "roll axis and roll centres"),
    ):
        axes.plot([left, left + 5], [y, y], color=colour, lw=1.0, ls=style)
        axes.text(left + 7.5, y, text, size=BODY, va="center")
        y -= 5


def _scale_bar(axes: Axes, x: float, scale: float) -> None:
    """100 mm of truck, so that a copy at another size can still be measured."""
    y = _FOOT - 6.0
    length = 100 / scale
    for i in range(4):
        shade = LIGHT.ink if i % 2 == 0 else LIGHT.paper
        axes.add_artist(
            Rectangle(
                (x + i * length / 4, y - 0.7), length / 4, 1.4, fc=shade, ec=LIGHT.ink, lw=0.5
            )
        )
    axes.text(x + length + 2, y, "100 mm", size=SMALL, va="center")
