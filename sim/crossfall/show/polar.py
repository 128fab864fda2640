"""Tip map seen from above: where the CG's plumb line meets the ground as the slope rises.

On a slope theta the plumb line through the CG moves h tan(theta) downhill under the truck. Drawn
to that measure the rigid answer *is* the support polygon, grip is a circle of radius mu h, and a
point lies on the side over which the truck falls. The scale of the truck and of the map is one.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, TypeGuard

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import PathPatch, Polygon, Rectangle
from matplotlib.path import Path as Curve

from crossfall.answers.answer import Answers, TipAnswer
from crossfall.answers.conditions import Conditions
from crossfall.show.paper import Z_LINE, Z_MARK, Z_TEXT, Placement, centre_mark, haloed, paint
from crossfall.show.silhouette import PLAN_NOSE_UP, PlacedShape, area, outline, solids
from crossfall.show.style import BODY, LIGHT, SMALL, paper_page, styled, text_size, title
from crossfall.statics.rigid import downhill, tip_points
from crossfall.trials.outcome import TiltTrial
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck

WIDTH, HEIGHT = 178.0, 204.0  # mm
MAP = (34.0, 44.0, 110.0, 132.0)  # left, bottom, width, height of the map, mm
RINGS = np.arange(10, 80, 10)  # deg
DASH = (0, (5, 2))
RAILED = (0, (2.2, 1.4))  # the line of what would happen against a rail
DOTS = (0, (0.8, 1.6))  # the line of the first lift
TIP_LINE: dict[str, Any] = {"lw": 1.5, "ls": "-"}
RAIL_LINE: dict[str, Any] = {"lw": 1.1, "ls": RAILED}
BAND = {False: 0.28, True: 0.13}  # how strong the range is drawn: of the tip, of one against a rail
_OUTCOMES = {"trial": "tips", "trial slide": "slides"}
_SLIDES = "slides, grip low to high"
_CLOSE = np.radians(15.5)  # headings at most this far apart are joined by a line


@styled
def draw_polar(found: Answers, truck: Truck) -> Figure:
    """The tip map of the answers, with the truck in plan, nose up the page."""
    made, axes = paper_page(WIDTH, HEIGHT)
    place = _placement(truck)
    frame = Rectangle(MAP[:2], MAP[2], MAP[3], fc=LIGHT.paper, ec=LIGHT.faint, lw=0.5)
    axes.add_artist(frame)
    before = set(axes.get_children())
    if not found.answers[0].conditions.rail:
        _slide_band(axes, place, truck, found)
    _rings(axes, place, truck)
    paint(axes, place, _bare(truck), strength=0.5)
    _rigid(axes, place, truck, found)
    _compliant(axes, place, truck, found)
    _trials(axes, place, truck, found)
    _spoke(axes, place, truck, found.weakest)
    for artist in set(axes.get_children()) - before:
        artist.set_clip_path(frame)
    _ring_names(axes, place, truck)
    centre_mark(axes, place.of(whole(truck).cg)[0], radius=1.8)
    _edges(axes, found)
    _key(axes, found)
    title(
        made,
        f"{truck.name}: tip map {ground_words(found.answers[0].conditions)}",
        _weakest_words(found),
    )
    return made


def ground_words(one: Conditions) -> str:
    """What the truck stands on, in words: the surface with its likely grip, and a rail if any."""
    named = f"grip {one.grip.likely:g}"
    words = f"at {named}" if one.grip.surface == named else f"on {one.grip.surface}, {named}"
    return f"{words}, against a rail" if one.rail else words


def _bare(truck: Truck) -> list[PlacedShape]:
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


def _each(found: Answers, value: Callable[[TipAnswer], float]) -> Array:
    return np.array([value(a) for a in found.answers])


def _headings(found: Answers) -> Array:
    return _each(found, lambda a: a.conditions.heading)


def joined_line(headings: Array) -> bool:
    """Whether headings lie so close all round that a line between them says what is between."""
    turn = np.sort(np.mod(headings, 2 * np.pi))
    gaps = np.diff(np.append(turn, turn[0] + 2 * np.pi))
    return len(turn) > 3 and float(gaps.max()) <= _CLOSE


def _slide_band(axes: Axes, place: Placement, truck: Truck, found: Answers) -> None:
    headings, slide = _headings(found), np.array([a.slide for a in found.answers])
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


def _rigid(axes: Axes, place: Placement, truck: Truck, found: Answers) -> None:
    headings = _headings(found)
    corners = place.of(np.column_stack([tip_points(truck)[[0, 1, 3, 2]], np.zeros(4)]))
    axes.add_artist(Polygon(corners, fill=False, ec=LIGHT.rigid, lw=1.2, ls=DASH, zorder=Z_LINE))
    points = place.of(plumb(truck, headings, _each(found, lambda a: a.rigid)))
    size = 1.2 if joined_line(headings) else 2.4
    axes.plot(*points.T, "D", ms=size, color=LIGHT.rigid, zorder=Z_LINE, gid="rigid")


@dataclass(frozen=True)
class _Run:
    """Neighbouring headings on which the truck does the same. railed: it slides first, and these
    are the angles against a rail. headings: (n,), tip, low, high: (n,) rad."""

    railed: bool
    headings: Array
    tip: Array
    low: Array
    high: Array


def runs(found: Answers) -> list[_Run]:
    """All round in order, cut where tipping first turns into sliding first: at the grip itself."""
    answers = sorted(found.answers, key=lambda a: a.conditions.heading)
    rows = [(a.conditions.heading, a.tip, *a.range.tip) for a in answers]
    railed = [a.slides_first for a in answers]
    turn = np.array([2 * np.pi, 0.0, 0.0, 0.0])
    made, current = [], [np.array(rows[0])]
    for i in range(len(rows)):
        j = (i + 1) % len(rows)
        here, there = np.array(rows[i]), np.array(rows[j]) + (turn if j == 0 else 0.0)
        if railed[i] != railed[j]:
            rise = there[1] - here[1]
            share = (answers[i].slide[1] - here[1]) / rise if rise else 0.5
            cut = here + float(np.clip(share, 0.0, 1.0)) * (there - here)
            made.append(_Run(railed[i], *np.array([*current, cut]).T))
            current = [cut]
        current.append(there)
    return [*made, _Run(railed[0], *np.array(current).T)]


def _compliant(axes: Axes, place: Placement, truck: Truck, found: Answers) -> None:
    """The tip with its range; where it slides first, what it does against a rail, drawn open."""
    headings = _headings(found)
    line = joined_line(headings)

    def at(psi: Array, angles: Array) -> Array:
        return place.of(plumb(truck, psi, angles))

    def look(railed: bool) -> dict[str, Any]:
        return {"color": LIGHT.compliant, **(RAIL_LINE if railed else TIP_LINE)}

    for run in runs(found) if line else []:
        ring = np.vstack([at(run.headings, run.high), at(run.headings, run.low)[::-1]])
        ring = ring[np.all(np.isfinite(ring), axis=1)]
        alpha = BAND[run.railed]
        axes.add_artist(Polygon(ring, fc=LIGHT.compliant, alpha=alpha, ec="none", zorder=Z_LINE))
        axes.plot(*at(run.headings, run.tip).T, zorder=Z_LINE + 0.2, **look(run.railed))
    for one in () if line else found.answers:
        ends = at(np.full(2, one.conditions.heading), np.array(one.range.tip))
        alpha = 1.6 * BAND[one.slides_first]
        axes.plot(*ends.T, color=LIGHT.compliant, lw=3.4, alpha=alpha, zorder=Z_LINE)
    for gid, railed, fill in (("compliant", False, LIGHT.compliant), ("rail", True, LIGHT.paper)):
        some = np.array([a.slides_first == railed for a in found.answers])
        points = at(headings[some], _each(found, lambda a: a.tip)[some])
        size = 2.4 if line else 4.2
        style: dict[str, Any] = {"ms": size, "mfc": fill, "mew": 0.8, "color": LIGHT.compliant}
        axes.plot(*points.T, "o", zorder=Z_LINE + 0.3, gid=gid, **style)
    _lifts(axes, at, found, line)


def _lifts(axes: Axes, at: Callable[[Array, Array], Array], found: Answers, line: bool) -> None:
    """Where the first tyre leaves the table, before the tip of the same answer."""
    answers = sorted(found.answers, key=lambda a: a.conditions.heading)
    psi = np.array([a.conditions.heading for a in answers])
    points = at(psi, np.array([a.first_lift for a in answers]))
    style: dict[str, Any] = {"color": LIGHT.compliant, "zorder": Z_LINE + 0.1}
    if line:
        axes.plot(*points[[*range(len(psi)), 0]].T, lw=1.0, ls=DOTS, dash_capstyle="round", **style)
    axes.plot(
        *points.T, "^", ms=1.8 if line else 3.4, mfc=LIGHT.paper, mew=0.6, gid="lift", **style
    )


def _trials(axes: Axes, place: Placement, truck: Truck, found: Answers) -> None:
    """Each trial where it tipped (a cross) or slid away (a plus), with its interval."""
    size = 3.5 if joined_line(_headings(found)) else 5.0
    for gid, mark in (("trial", "x"), ("trial slide", "+")):
        done = [a for a in found.answers if a.trial and a.trial.outcome == _OUTCOMES[gid]]
        for one in done:
            assert one.trial is not None
            ends = np.array(one.trial.tip_ci if mark == "x" else one.trial.slide_ci)
            bar = place.of(plumb(truck, np.full(2, one.conditions.heading), ends))
            axes.plot(*bar.T, color=LIGHT.trial, lw=1.0, zorder=Z_MARK)
        angles = np.array([a.trial.tip if mark == "x" else a.trial.slide for a in done if a.trial])
        points = place.of(plumb(truck, np.array([a.conditions.heading for a in done]), angles))
        look: dict[str, Any] = {"ms": size if mark == "x" else 1.3 * size, "zorder": Z_MARK + 0.1}
        axes.plot(*points.T, mark, mew=2.6, color=LIGHT.paper, **look)
        axes.plot(*points.T, mark, mew=1.2, color=LIGHT.trial, gid=gid, **look)


def _spoke(axes: Axes, place: Placement, truck: Truck, worst: TipAnswer) -> None:
    ends = np.array([0.0, worst.tip])
    spoke = place.of(plumb(truck, np.full(2, worst.conditions.heading), ends))
    axes.plot(*spoke.T, color=LIGHT.ink, lw=0.9, zorder=Z_LINE)
    axes.plot(*spoke[1], "o", ms=8, mfc="none", mec=LIGHT.ink, mew=1.1, zorder=Z_MARK)


def _edges(axes: Axes, found: Answers) -> None:
    """What each side of the map means, with its numbers, in the margin."""
    by_heading = {round(np.degrees(a.conditions.heading) % 360, 6): a for a in found.answers}
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


def _numbers(answer: TipAnswer, stacked: bool) -> str:
    """The answers of one heading, in the order in which they come about."""
    break_, range_ = ("\n", "\n{} to {}") if stacked else ("   ", " ({} to {})")
    tip = f"{'against a rail' if answer.conditions.rail else 'compliant'} {_deg(answer.tip)}"
    if answer.slides_first:
        tip = f"slides first {_deg(answer.slide[1])}{break_}rail {_deg(answer.tip)}"
    if not np.isfinite(answer.tip):
        tip = "no tip found"
    else:
        tip += range_.format(*(f"{np.degrees(v):.1f}" for v in answer.range.tip))
    items = [f"rigid {_deg(answer.rigid)}", tip]
    if tipped(answer.trial):
        items.append(f"trial {_deg(answer.trial.tip)}")
    elif answer.trial and answer.trial.outcome == "slides":
        items.append(f"trial slides {_deg(answer.trial.slide)}")
    return break_.join(items)


def _deg(angle: float) -> str:
    return f"{np.degrees(angle):.1f}°"


def _weakest_words(found: Answers) -> str:
    worst = found.weakest
    heading = np.degrees(worst.conditions.heading) % 360
    low, high = np.degrees(worst.range.tip)
    angle = f"{worst.case}, at {_deg(worst.tip)} ({low:.1f} to {high:.1f})"
    if worst.slides_first:
        return (
            f"slides first all round; against a rail weakest of those drawn: {heading:.0f}, {angle}"
        )
    return f"weakest heading drawn: {heading:.0f}, {angle}"


def _key(axes: Axes, found: Answers) -> None:
    """The signs that are on this map, in rows."""
    point: dict[str, Any] = {"marker": "o", "ms": 4.2, "mew": 0.8}
    tip = {"color": LIGHT.compliant, **TIP_LINE}, point, BAND[False]
    rail = {"color": LIGHT.compliant, **RAIL_LINE}, point | {"mfc": LIGHT.paper}, BAND[True]
    railed = found.answers[0].conditions.rail
    line = {"color": LIGHT.compliant, "lw": 1.0, "ls": DOTS, "dash_capstyle": "round"}
    items: list[tuple[str, dict[str, Any], dict[str, Any], float]] = [
        ("rigid", {"color": LIGHT.rigid, "lw": 1.2, "ls": DASH}, {"marker": "D", "ms": 2.4}, 0.0),
        ("compliant with its 95 % range", *tip),
    ]
    if railed:
        items[-1] = ("compliant, against a rail, with its 95 % range", *tip)
    if any(a.slides_first for a in found.answers):
        items.append(("the same against a rail, where it slides first", *rail))
    if any(np.isfinite(a.first_lift) for a in found.answers):
        lift = {"marker": "^", "ms": 3.4, "mfc": LIGHT.paper, "mew": 0.7}
        items.append(("first tyre lifts", line, lift, 0.0))
    for gid, words, sign in (("trial", "trial tips", "x"), ("trial slide", "trial slides", "+")):
        if any(a.trial and a.trial.outcome == _OUTCOMES[gid] for a in found.answers):
            cross = {"marker": sign, "ms": 5, "mew": 1.3}
            items.append((f"{words}, 95 %", {"color": LIGHT.trial, "lw": 1.0}, cross, 0.0))
    x, y = 8.0, 26.0
    for text, look, mark, band in items:
        x, y, wide = _in_row(text, x, y)
        if band:
            axes.add_artist(Rectangle((x, y - 1.3), 7, 2.6, fc=LIGHT.compliant, alpha=band, lw=0))
        axes.plot([x, x + 7], [y, y], **look)
        axes.plot(x + 3.5, y, ls="", color=look["color"], **mark)
        axes.text(x + 8.5, y, text, size=SMALL, va="center")
        x += wide
    if not railed:
        x, y, _ = _in_row(_SLIDES, x, y)
        _slide_key(axes, x, y)
    reading = (
        "The truck falls towards the side you look at. Each point is where the CG's plumb line\n"
        "meets the ground as the slope rises; rings are slopes. In brackets the heading: 0 nose\n"
        "uphill, 90 left side down."
    )
    if not railed:
        reading += " Where the answers lie inside the dotted ring it tips before it slides."
    axes.text(8.0, y - 4.5, reading, size=SMALL, color=LIGHT.soft, va="top", linespacing=1.4)


def _in_row(text: str, x: float, y: float) -> tuple[float, float, float]:
    """Where the next sign of the key goes, in the next row if it would leave the page, and its
    width; mm."""
    wide = 12.5 + text_size(text, SMALL)[0]
    return (x, y, wide) if x + wide < WIDTH - 3.0 else (8.0, y - 5.0, wide)


def _slide_key(axes: Axes, x: float, y: float) -> None:
    for hatch, alpha in (("", 0.3), ("....", 1.0)):
        style: dict[str, Any] = {
            "fc": LIGHT.slide if not hatch else "none",
            "ec": LIGHT.slide,
            "alpha": alpha,
        }
        axes.add_artist(Rectangle((x, y - 1.3), 7, 2.6, lw=0.0, hatch=hatch, **style))
    axes.plot([x, x + 7], [y, y], color=LIGHT.slide, lw=1.4, ls=(0, (6, 1.5)))
    axes.text(x + 8.5, y, _SLIDES, size=SMALL, va="center")
