"""Tip map seen from above: where the CG's plumb line meets the ground as the slope rises.

On a slope theta the plumb line through the CG moves h tan(theta) downhill under the truck. Drawn
to that measure the rigid answer *is* the support polygon, grip is a circle of radius mu h, and a
point lies on the side over which the truck falls. The scale of the truck and of the map is one.
"""

from __future__ import annotations

from typing import Any, TypeGuard

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import PathPatch, Polygon, Rectangle
from matplotlib.path import Path as Curve

from crossfall.compare import Comparison, HeadingAnswer
from crossfall.show.paper import Z_LINE, Z_MARK, Z_TEXT, Placement, centre_mark, haloed, paint
from crossfall.show.silhouette import PLAN_NOSE_UP, Solid, area, outline, solids
from crossfall.show.style import BODY, LIGHT, SMALL, page, styled, text_size, title
from crossfall.statics.rigid import downhill, tip_points
from crossfall.trials.tilt import TiltTrial
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck

WIDTH, HEIGHT = 178.0, 196.0  # mm
MAP = (34.0, 36.0, 110.0, 132.0)  # left, bottom, width, height of the map, mm
RINGS = np.arange(10, 80, 10)  # deg
DASH = (0, (5, 2))
CLOSE = np.radians(15.5)  # headings at most this far apart are joined by a line


@styled
def draw_polar(comparison: Comparison, truck: Truck) -> Figure:
    """The tip map of a comparison, with the truck in plan, nose up the page."""
    made, axes = page(WIDTH, HEIGHT)
    place = _placement(truck)
    frame = Rectangle(MAP[:2], MAP[2], MAP[3], fc=LIGHT.paper, ec=LIGHT.faint, lw=0.5)
    axes.add_artist(frame)
    inner: list[object] = []
    before = set(axes.get_children())
    _slide_band(axes, place, truck, comparison)
    _rings(axes, place, truck)
    paint(axes, place, _bare(truck), strength=0.5)
    _answers(axes, place, truck, comparison)
    inner = [a for a in axes.get_children() if a not in before]
    for artist in inner:
        artist.set_clip_path(frame)  # type: ignore[attr-defined]
    _ring_names(axes, place, truck)
    centre_mark(axes, place.of(whole(truck).cg)[0], radius=1.8)
    _edges(axes, comparison)
    _key(axes, comparison)
    title(made, f"{truck.name}: tip map on {comparison.surface}", _weakest_words(comparison))
    return made


def _bare(truck: Truck) -> list[Solid]:
    """The truck as it stands under the map: wheels, axles, and the large pieces of the body."""
    things = solids(truck)
    sizes = [area(outline(s, PLAN_NOSE_UP)) if s.role == "chassis" else 0.0 for s in things]
    body = [s for s, size in zip(things, sizes, strict=True) if 0 < 0.4 * max(sizes) <= size]
    return body + [s for s in things if s.role not in ("chassis", "link")]


def plumb(truck: Truck, headings: Array, angles: Array) -> Array:
    """(n, 3) m, where the plumb line through the CG meets the ground, z = 0, truck axes."""
    body = whole(truck)
    reach = body.cg[2] * np.tan(np.asarray(angles))[:, None] * downhill(np.asarray(headings))
    return np.column_stack([body.cg[:2] + reach, np.zeros(len(reach))])


def _least(comparison: Comparison) -> HeadingAnswer:
    """The heading with the least tip angle: by trial where there is one, else by statics."""
    return min(comparison.answers, key=best_angle)


def best_angle(answer: HeadingAnswer) -> float:
    """rad: the trial's tip; without one the statics', and the rigid one where that found none."""
    if tipped(answer.trial):
        return answer.trial.tip
    return answer.compliant if np.isfinite(answer.compliant) else answer.rigid


def tipped(trial: TiltTrial | None) -> TypeGuard[TiltTrial]:
    """Whether there was a trial and it ended in a tip, so that it has an angle to show."""
    return trial is not None and trial.outcome == "tips"


def _placement(truck: Truck) -> Placement:
    """The support polygon fills four fifths of the map."""
    points = tip_points(truck)
    wide, long = np.ptp(points[:, 1]), np.ptp(points[:, 0])
    reach = max(long / (0.80 * MAP[3]), wide / (0.72 * MAP[2]))
    middle = points.mean(axis=0)
    k = 1 / reach
    x, y = MAP[0] + MAP[2] / 2, MAP[1] + MAP[3] / 2
    return Placement(PLAN_NOSE_UP, (x + k * middle[1], y - k * middle[0]), 1000 * reach)


def _loop(place: Placement, truck: Truck, headings: Array, angles: Array) -> Array:
    """(n, 2) mm, a closed line of plumb points."""
    order = np.argsort(headings)
    flat = place.of(plumb(truck, headings[order], angles[order]))
    return np.vstack([flat, flat[:1]])


def _column(comparison: Comparison, name: str) -> Array:
    return np.array([getattr(a, name) for a in comparison.answers])


def joined(headings: Array) -> bool:
    """Whether headings lie so close all round that a line between them says what is between."""
    turn = np.sort(np.mod(headings, 2 * np.pi))
    gaps = np.diff(np.append(turn, turn[0] + 2 * np.pi))
    return len(turn) > 3 and float(gaps.max()) <= CLOSE


def _slide_band(axes: Axes, place: Placement, truck: Truck, comparison: Comparison) -> None:
    headings, slide = _column(comparison, "heading"), _column(comparison, "slide")
    fine = np.radians(np.arange(0.0, 360.0))
    low, likely, high = (
        _loop(place, truck, fine, np.interp(fine, headings, slide[:, i], period=2 * np.pi))
        for i in range(3)
    )
    ring = Curve.make_compound_path(Curve(high, closed=True), Curve(low[::-1], closed=True))
    axes.add_artist(PathPatch(ring, fc=LIGHT.slide, alpha=0.30, ec="none", zorder=1.2))
    axes.add_artist(PathPatch(ring, fill=False, hatch="....", ec=LIGHT.slide, lw=0.0, zorder=1.25))
    axes.plot(*likely.T, color=LIGHT.slide, lw=1.4, ls=(0, (6, 1.5)), zorder=1.3, gid="slide")


def _rings(axes: Axes, place: Placement, truck: Truck) -> None:
    fine = np.radians(np.arange(0.0, 360.0))
    for degrees in RINGS:
        ring = _loop(place, truck, fine, np.full(len(fine), np.radians(degrees)))
        axes.plot(*ring.T, color=LIGHT.faint, lw=0.45, zorder=1.1)


def _ring_names(axes: Axes, place: Placement, truck: Truck) -> None:
    """Along the diagonal that leaves the tail on the right, where they are inside the map."""
    for degrees in RINGS:
        for heading in (np.radians(325.0), np.radians(345.0), np.radians(200.0)):
            x, y = place.of(plumb(truck, np.array([heading]), np.array([np.radians(degrees)])))[0]
            if MAP[0] + 4 < x < MAP[0] + MAP[2] - 4 and MAP[1] + 3 < y < MAP[1] + MAP[3] - 3:
                haloed(axes, x, y, f"{degrees}°", size=SMALL, color=LIGHT.soft)
                break


def _answers(axes: Axes, place: Placement, truck: Truck, comparison: Comparison) -> None:
    headings = _column(comparison, "heading")
    corners = place.of(np.column_stack([tip_points(truck)[[0, 1, 3, 2]], np.zeros(4)]))
    axes.add_artist(Polygon(corners, fill=False, ec=LIGHT.rigid, lw=1.2, ls=DASH, zorder=Z_LINE))
    rigid = place.of(plumb(truck, headings, _column(comparison, "rigid")))
    line = joined(headings)
    axes.plot(*rigid.T, "D", ms=1.2 if line else 2.4, color=LIGHT.rigid, zorder=Z_LINE, gid="rigid")
    window = _column(comparison, "window")
    low, high = (place.of(plumb(truck, headings, window[:, i])) for i in (0, 1))
    compliant = place.of(plumb(truck, headings, _column(comparison, "compliant")))
    if line:
        order = np.argsort(headings)
        ring = np.vstack([high[order], low[order][::-1]])
        ring = ring[np.all(np.isfinite(ring), axis=1)]
        axes.add_artist(Polygon(ring, fc=LIGHT.compliant, alpha=0.28, ec="none", zorder=Z_LINE))
        loop = np.append(order, order[0])
        axes.plot(*compliant[loop].T, color=LIGHT.compliant, lw=1.5, zorder=Z_LINE + 0.2)
    else:
        for a, b in zip(low, high, strict=True):
            axes.plot(*np.array([a, b]).T, color=LIGHT.compliant, lw=3.4, alpha=0.45, zorder=Z_LINE)
    axes.plot(
        *compliant.T,
        "o",
        ms=1.6 if line else 4.2,
        color=LIGHT.compliant,
        zorder=Z_LINE + 0.2,
        gid="compliant",
    )
    _trials(axes, place, truck, comparison)
    worst = _least(comparison)
    spoke = place.of(plumb(truck, np.full(2, worst.heading), np.array([0.0, best_angle(worst)])))
    axes.plot(*spoke.T, color=LIGHT.ink, lw=0.9, zorder=Z_LINE)
    axes.plot(*spoke[1], "o", ms=8, mfc="none", mec=LIGHT.ink, mew=1.1, zorder=Z_MARK)


def _trials(axes: Axes, place: Placement, truck: Truck, comparison: Comparison) -> None:
    done = [(a.heading, a.trial) for a in comparison.answers if tipped(a.trial)]
    if not done:
        return
    headings = np.array([h for h, _ in done])
    low, high = (np.array([t.tip_ci[i] for _, t in done]) for i in (0, 1))
    ends = [place.of(plumb(truck, headings, a)) for a in (low, high)]
    for a, b in zip(*ends, strict=True):
        axes.plot(*np.array([a, b]).T, color=LIGHT.trial, lw=1.0, zorder=Z_MARK)
    points = place.of(plumb(truck, headings, np.array([t.tip for _, t in done])))
    size = 3.5 if joined(headings) else 5.0
    style: dict[str, Any] = {"ms": size, "mew": 1.1, "color": LIGHT.trial, "zorder": Z_MARK + 0.1}
    axes.plot(*points.T, "x", gid="trial", **style)


def _edges(axes: Axes, comparison: Comparison) -> None:
    """What each side of the map means, with its numbers, in the margin."""
    by_heading = {round(np.degrees(a.heading) % 360): a for a in comparison.answers}
    left, bottom, width, height = MAP
    spots = {
        180: (left + width / 2, bottom + height + 2, "nose downhill, over the front", "bottom"),
        0: (left + width / 2, bottom - 2, "nose uphill, over the tail", "top"),
        90: (left - 2, bottom + height / 2, "left side down", "center"),
        270: (left + width + 2, bottom + height / 2, "right side down", "center"),
    }
    for degrees, (x, y, name, va) in spots.items():
        ha = {90: "right", 270: "left"}.get(degrees, "center")
        answer = by_heading.get(degrees)
        name = f"{name} ({degrees})"
        text = name if answer is None else f"{name}\n{_numbers(answer, degrees in (90, 270))}"
        axes.text(x, y, text, size=BODY, ha=ha, va=va, linespacing=1.35, zorder=Z_TEXT)


def _numbers(answer: HeadingAnswer, stacked: bool) -> str:
    """The three answers of one heading, the window where friction decides."""
    low, high = np.degrees(answer.window)
    compliant = f"{np.degrees(answer.compliant):.1f}°"
    if answer.friction_decides:
        compliant = f"{low:.1f}" + ("\n" if stacked else " ") + f"to {high:.1f}°"
    elif not np.isfinite(answer.compliant):
        compliant = "none found"
    items = [f"rigid {np.degrees(answer.rigid):.1f}°", f"compliant {compliant}"]
    if tipped(answer.trial):
        items.append(f"trial {np.degrees(answer.trial.tip):.1f}°")
    return ("\n" if stacked else "   ").join(items)


def _weakest_words(comparison: Comparison) -> str:
    worst = _least(comparison)
    angle, heading = np.degrees(best_angle(worst)), np.degrees(worst.heading) % 360
    return f"weakest at heading {heading:.0f}: {angle:.1f}°, {worst.case}"


def _key(axes: Axes, comparison: Comparison) -> None:
    x, y = 8.0, 17.5
    bar = {"lw": 3.4, "alpha": 0.45}
    items: list[tuple[str, dict[str, Any], dict[str, Any]]] = [
        ("rigid", {"color": LIGHT.rigid, "lw": 1.2, "ls": DASH}, {"marker": "D", "ms": 2.4}),
        (
            "compliant, band: both friction closures",
            {"color": LIGHT.compliant, **bar},
            {"marker": "o", "ms": 4.2},
        ),
        (
            "trial, with its interval",
            {"color": LIGHT.trial, "lw": 1.0},
            {"marker": "x", "ms": 5, "mew": 1.3},
        ),
    ]
    if not any(tipped(a.trial) for a in comparison.answers):
        items.pop()
    for text, line, mark in items:
        axes.plot([x, x + 6], [y, y], **line)
        if mark:
            axes.plot(x + 3, y, ls="", color=line["color"], **mark)
        axes.text(x + 7.5, y, text, size=SMALL, va="center")
        x += 11.5 + text_size(text, SMALL)[0]
    for hatch, alpha in (("", 0.3), ("....", 1.0)):
        style: dict[str, Any] = {
            "fc": LIGHT.slide if not hatch else "none",
            "ec": LIGHT.slide,
            "alpha": alpha,
        }
        axes.add_artist(Rectangle((x, y - 1.3), 6, 2.6, lw=0.0, hatch=hatch, **style))
    axes.text(x + 7.5, y, "slides, grip low to high", size=SMALL, va="center")
    reading = (
        "The truck falls towards the side you look at. Each point is where the CG's plumb line\n"
        "meets the ground as the slope rises; rings are slopes. Where the answers lie inside the\n"
        "dotted ring it tips before it slides. Heading in brackets: 0 nose uphill, 90 left down."
    )
    axes.text(8.0, 12.5, reading, size=SMALL, color=LIGHT.soft, va="top", linespacing=1.4)
