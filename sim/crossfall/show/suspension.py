"""Links, instant centres and roll axis in side and rear view to scale, and how they wander."""

from __future__ import annotations

from math import isfinite

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from crossfall.show.drawings import Extent, extent
from crossfall.show.paper import Z_LINE, Z_MARK, Placement, centre_mark, draw_ground, haloed, paint
from crossfall.show.silhouette import REAR, SIDE, solids
from crossfall.show.style import BODY, LIGHT, SMALL, axes_at, paper_page, styled, title
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Axle, Truck
from crossfall.tuning.suspension import AxleLook

WIDTH, HEIGHT, EDGE = 297.0, 210.0, 14.0  # mm, A4 lying
_VIEWS = 96.0  # mm kept for the views under the head
GHOST = 0.25  # how strongly the truck itself is painted
_SCALES = (2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 8.0, 10.0, 15.0, 20.0)
COLOURS = (LIGHT.front, LIGHT.rear)
CURVES = (
    ("anti-dive, anti-squat, %", "heave, mm"),
    ("roll centre, mm above ground", "heave, mm"),
    ("castor gained, deg", "heave, mm"),
    ("wheel rate, N/mm", "heave, mm"),
    ("axle steers, deg", "roll of the axle, deg"),
)


@styled
def draw_suspension(truck: Truck, seen: tuple[AxleLook, AxleLook]) -> Figure:
    """A4 sheet: both views to one scale, and curves over the travel."""
    things = solids(truck)
    side, rear = extent(things, SIDE), extent(things, REAR)
    space = WIDTH - 2 * EDGE - 50
    wide = (side.right - side.left) + (rear.right - rear.left)
    fits = [
        s
        for s in _SCALES
        if 1000 * wide / s <= space and 1000 * max(side.high, rear.high) / s <= _VIEWS - 18
    ]
    scale = fits[0] if fits else _SCALES[-1]
    made, axes = paper_page(WIDTH, HEIGHT)
    k, level = 1000 / scale, HEIGHT - 16 - _VIEWS + 8
    x_side = EDGE + 8 - k * side.left
    x_rear = x_side + k * side.right + 44 - k * rear.left
    places = (
        Placement(SIDE, (x_side, level), scale),
        Placement(REAR, (x_rear, level), scale),
    )
    for place, box in zip(places, (side, rear), strict=True):
        paint(axes, place, things, GHOST)
        draw_ground(axes, place.at(box.left, 0)[0] - 6, place.at(box.right, 0)[0] + 6, level)
        for axle, colour in zip(truck.axles, COLOURS, strict=True):
            _rods(axes, place, axle, colour)
    _side(axes, places[0], truck, seen, side)
    _rear(axes, places[1], seen, rear)
    _curves(made, seen)
    counts = " and ".join(
        f"{one.end} by {'its links' if one.kinds else 'the numbers of the file'}" for one in seen
    )
    title(
        made,
        f"{truck.name}: suspension, 1:{scale:g}",
        f"Guided in {counts}. Blue front, orange rear; at ride height, wheels held.",
    )
    return made


def _ends(axle: Axle) -> list[tuple[Array, Array, bool]]:
    """(3,) m truck axes of both ends of every link, and whether it is a shock."""
    s, middle = axle.suspension, np.array([axle.x, 0.0, axle.tyre.radius])
    found = []
    for guide, shock in ((s.links, False), (s.shocks, True)):
        if guide is not None:
            found += [
                (upper + middle, lower + middle, shock)
                for upper, lower in zip(guide.chassis, guide.axle, strict=True)
            ]
    return found


def _rods(axes: Axes, place: Placement, axle: Axle, colour: str) -> None:
    for upper, lower, shock in _ends(axle):
        x, y = place.of(np.array([upper, lower])).T
        line = (0, (1.2, 0.8)) if shock else "-"
        axes.plot(x, y, color=colour, lw=2.2, ls=line, zorder=Z_LINE, solid_capstyle="round")
        axes.plot(x, y, "o", ms=3, color=LIGHT.paper, mec=colour, mew=0.9, zorder=Z_MARK)


def _side(
    axes: Axes,
    place: Placement,
    truck: Truck,
    seen: tuple[AxleLook, AxleLook],
    box: Extent,
) -> None:
    """Roll axis, instant centres, the lines from the contacts, and the CG."""
    left, right = box.left - 0.02, box.right + 0.02
    for axle, one, colour in zip(truck.axles, seen, COLOURS, strict=True):
        reach = np.array([-0.25, 0.25]) * truck.wheelbase
        x, y = place.flat(
            np.column_stack([axle.x + reach, one.roll_centre + one.roll_axis * reach])
        ).T
        axes.plot(x, y, color=colour, lw=0.9, ls=(0, (6, 2, 1, 2)), zorder=Z_LINE)
        at = place.at(axle.x, one.roll_centre)
        axes.plot(*at, "P", ms=5, color=LIGHT.paper, mec=colour, mew=1.0, zorder=Z_MARK)
        above = one.roll_centre + 0.012
        haloed(
            axes,
            *place.at(axle.x, above),
            f"roll centre {1e3 * one.roll_centre:.0f}",
            size=SMALL,
            color=colour,
            ha="center",
        )
        _instant(axes, place, axle, one, colour, (left, right))
    cg = whole(truck).cg
    centre_mark(axes, np.array(place.at(cg[0], cg[2])))


def _instant(
    axes: Axes,
    place: Placement,
    axle: Axle,
    one: AxleLook,
    colour: str,
    ends: tuple[float, float],
) -> None:
    """From the contact towards the instant centre, as far as the drawing goes."""
    x, z = one.instant_centre
    if not (isfinite(x) and isfinite(z)):
        return
    share = 1.0
    edge = ends[1] if x > axle.x else ends[0]
    outside = (x > ends[1]) or (x < ends[0])
    if outside:
        share = (edge - axle.x) / (x - axle.x)
    contact, tip = np.array([axle.x, 0.0]), np.array([x, z])
    stop = contact + share * (tip - contact)
    across, up = place.flat(np.array([contact, stop])).T
    axes.plot(across, up, color=colour, lw=0.9, ls=(0, (4, 2)), zorder=Z_LINE)
    text = f"{one.end} instant centre"
    if outside:
        text += f"\nat {1e3 * x:.0f}, {1e3 * z:.0f} mm"
    else:
        axes.plot(*place.at(x, z), "X", ms=6, color=colour, mec=LIGHT.paper, zorder=Z_MARK)
    where = place.at(*(stop + np.array([0.0, 0.010])))
    side = "right" if outside and edge == ends[1] else "left" if outside else "center"
    haloed(axes, *where, text, size=SMALL, color=colour, ha=side)


def _rear(axes: Axes, place: Placement, seen: tuple[AxleLook, AxleLook], box: Extent) -> None:
    for one, colour, side in zip(seen, COLOURS, (-1, 1), strict=True):
        at = place.at(0.0, one.roll_centre)
        axes.plot(*at, "P", ms=5, color=LIGHT.paper, mec=colour, mew=1.0, zorder=Z_MARK)
        x = box.left - 0.012 if side < 0 else box.right + 0.012
        beside = place.at(x, one.roll_centre)
        axes.plot(
            [beside[0], at[0]], [at[1], at[1]], color=colour, lw=0.5, ls=(0, (2, 2)), zorder=Z_LINE
        )
        haloed(
            axes,
            *beside,
            f"{one.end}\n{1e3 * one.roll_centre:.1f}",
            size=SMALL,
            color=colour,
            ha="right" if side < 0 else "left",
            va="center",
        )


def _curves(made: Figure, seen: tuple[AxleLook, AxleLook]) -> None:
    width = (WIDTH - 2 * EDGE - 4 * 13) / 5
    for n, (what, along) in enumerate(CURVES):
        axes = axes_at(made, EDGE + n * (width + 13) + 2, 20, width, 52)
        for one, colour in zip(seen, COLOURS, strict=True):
            x, y = _curve(one, n)
            axes.plot(x, y, color=colour, label=one.end)
            axes.plot(np.interp(0.0, x, x), np.interp(0.0, x, y), "o", ms=3, color=colour)
        axes.axvline(0.0, color=LIGHT.soft, lw=0.5)
        axes.set_title(what, size=BODY)
        axes.set_xlabel(along, size=SMALL)
        low, high = axes.get_ylim()
        if high - low < 1e-3:  # a law that does not wander is a level line
            axes.set_ylim(low - 1, high + 1)


def _curve(one: AxleLook, which: int) -> tuple[Array, Array]:
    t = one.travel
    if which == 4:
        return np.degrees(one.roll), np.degrees(one.steer)
    values = (t.anti, 1e3 * t.roll_centre, np.degrees(t.castor), t.wheel_rate / 1e3)
    return 1e3 * t.heave, values[which]
