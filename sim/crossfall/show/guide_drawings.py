"""Pictures of the measuring guide: full size, mm, y up from the ground; the page colours them."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import partial
from typing import Any, NamedTuple

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.transforms import Affine2D

from crossfall.show.paper import (
    Z_TEXT,
    PaperPoint,
    arrow,
    dimension,
    disc,
    draw_ground,
    filled_shape,
    rectangle,
    stroke,
)
from crossfall.show.style import LIGHT, MM_PER_POINT, inline_svg, paper_page, styled
from crossfall.truck.model import Array, Truck

K = 6.0  # how much larger a dimension is drawn than on a sheet


class Inks(NamedTuple):
    """Colours as on a white page; a page has a variable of each name."""

    panel: str = LIGHT.paper
    ink: str = LIGHT.ink
    soft: str = LIGHT.soft
    faint: str = LIGHT.faint
    earth: str = LIGHT.earth
    body: str = LIGHT.sprung
    tyre: str = LIGHT.tyre
    frame: str = LIGHT.rigid
    red: str = "#b3400a"
    glass: str = "#f1f6fb"
    lug: str = "#3d4750"
    rim: str = "#cfd6db"
    wood: str = "#e7d2ad"
    grain: str = "#c3a878"
    scale: str = "#c9d0d6"
    plate: str = "#eef1f3"
    display: str = "#dbe8d3"


INK = Inks()
BROKEN = (0, (4, 3))
length_line = partial(dimension, k=K, color=INK.red, weight="bold")


@dataclass(frozen=True)
class Measures:
    """A truck's measures for drawing, mm."""

    wheelbase: float = 313.0
    track: float = 172.0
    radius: float = 56.0
    tread: float = 42.0


def measures_of(truck: Truck) -> Measures:
    """A truck's, its two axles' in the mean."""
    sizes = [(a.track, a.tyre.radius, a.tyre.width) for a in truck.axles]
    return Measures(truck.wheelbase * 1e3, *(float(v) for v in np.mean(sizes, axis=0) * 1e3))


@styled
def page_svg(draw: Callable[..., Figure], *given: Any) -> str:
    """What one of these draws, as SVG that the page it stands on colours."""
    return inline_svg(draw(*given), {v: f"var(--{k})" for k, v in INK._asdict().items()})


def blank(label: str, left: float, low: float, width: float, height: float) -> tuple[Figure, Axes]:
    """An empty picture, with its words for those who do not see it; mm."""
    made, axes = paper_page(width, height)
    axes.set(xlim=(left, left + width), ylim=(low, low + height))
    made.patch.set_visible(False)
    made.set_label(label)
    return made, axes


@contextmanager
def moved(axes: Axes, to: Affine2D) -> Iterator[None]:
    """Whatever solids and strokes are drawn inside are moved."""
    before = len(axes.patches)
    yield
    for patch in list(axes.patches)[before:]:
        patch.set_path(to.transform_path(patch.get_path()))  # type: ignore[attr-defined]


def words(
    axes: Axes,
    at: PaperPoint,
    text: str,
    size: float = 14.0,
    colour: str = INK.ink,
    ha: str = "center",
) -> None:
    """Words whose feet stand at a point. size: mm of a letter."""
    look = {"size": size / MM_PER_POINT, "weight": "bold" if colour == INK.red else "normal"}
    axes.text(at[0], at[1], text, color=colour, ha=ha, zorder=Z_TEXT, **look)  # type: ignore[arg-type]


def around(x: float, y: float, r: float, angles: Array) -> Array:
    """(n, 2) mm, points on a circle at angles (rad)."""
    return np.column_stack([x + r * np.cos(angles), y + r * np.sin(angles)])


# The truck


def wheel_side(axes: Axes, x: float, y: float, r: float) -> None:
    disc(axes, (x, y), r, INK.tyre)
    a = np.radians(np.arange(0, 360, 20))
    lugs = np.stack([around(x, y, r - 5, a), around(x, y, r + 0.5, a + 0.06)], axis=1)
    stroke(axes, INK.lug, 6, *lugs)
    disc(axes, (x, y), 0.52 * r, INK.rim)
    disc(axes, (x, y), 5, INK.frame)


def truck_side(axes: Axes, f: Measures) -> None:
    """Side view, nose to the right, the middle of the wheelbase at x = 0."""
    half, r, s = f.wheelbase / 2, f.radius, np.array([f.wheelbase / 313, 1.0])
    x, z = [-222, -218, -70, -50, 60, 92, 210, 212], [112, 150, 152, 212, 210, 160, 149, 112]
    stroke(axes, INK.frame, 14, [(half, r), (20, 104)], [(-half, r), (-20, 104)])
    filled_shape(axes, s * np.column_stack([x, z]), INK.body, r=8, edge=4.5)
    filled_shape(axes, s * [[-40, 160], [-34, 200], [8, 200], [8, 160]], INK.glass, edge=2.8)
    filled_shape(axes, s * [[16, 160], [16, 200], [50, 199], [74, 160]], INK.glass, edge=2.8)
    rectangle(axes, -205 * s[0], 106, 404 * s[0], 10, INK.frame, r=3)
    for side in (half, -half):
        stroke(axes, INK.frame, 17, [(side, r + 4), (side - np.copysign(14, side), 128)])
        wheel_side(axes, side, r, r)


def truck_rear(axes: Axes, f: Measures, gives: float = 0.0) -> None:
    """Rear view, the middle at x = 0.

    gives: mm by which everything but the tyres' treads has moved to the right.
    """
    half, r = f.track / 2, f.radius
    body = np.array([[76, 112], [78, 152], [66, 158], [56, 212]])
    with moved(axes, Affine2D().translate(gives, 0)):
        stroke(axes, INK.frame, 17, [(-54, r), (-44, 122)], [(54, r), (44, 122)])
        filled_shape(axes, [*body, *body[::-1] * [-1, 1]], INK.body, r=8, edge=4.5)
        filled_shape(axes, [(-52, 164), (-46, 200), (46, 200), (52, 164)], INK.glass, edge=2.8)
        rectangle(axes, -half, r - 6, f.track, 12, INK.frame, r=5)
        disc(axes, (0, r), 15, INK.frame)
    for x in (-half, half):
        _tyre_rear(axes, x, f, gives)


def _tyre_rear(axes: Axes, x: float, f: Measures, gives: float) -> None:
    """A tyre seen from behind, its tread where it was and its rim moved."""

    def across(up: float) -> list[tuple[float, float]]:
        bend = gives * min(1.0, up / (0.6 * f.radius))
        return [(x + side * f.tread / 2 + bend, up) for side in (-1, 1)]

    (a, b), (c, d), (e, g) = (across(up * f.radius) for up in (0, 0.6, 2))
    filled_shape(axes, [a, c, e, g, d, b], INK.tyre, r=9)
    stroke(axes, INK.lug, 6, *(across(up) for up in np.arange(2 * f.radius - 14, 0, -14)))


def seen_from_above(axes: Axes, x: float, y: float, to: Affine2D) -> None:
    """A small truck from above, its middle at (x, y), nose up until it is turned or enlarged."""
    with moved(axes, to.translate(x, y)):
        for left, low in ((-27, -40), (18, -40), (-27, 18), (18, 18)):
            rectangle(axes, left, low, 9, 22, INK.tyre, r=3)
        rectangle(axes, -17, -42, 34, 84, INK.body, r=6, edge=3.5)
        rectangle(axes, -13, -8, 26, 24, INK.glass, r=3, edge=2.2)
        filled_shape(axes, [(-9, 46), (0, 58), (9, 46)], INK.red)


# Things around it


def scale(axes: Axes, x: float, width: float = 120.0, shown: str = "1342 g") -> None:
    """A kitchen scale whose plate the wheels stand on, at y = 0; 24 mm tall."""
    rectangle(axes, x - width / 2 + 8, -24, width - 16, 18, INK.scale, r=4)
    rectangle(axes, x - width / 2, -6, width, 6, INK.plate, r=3, edge=2)
    display(axes, x, -15, 54, 14, shown)


def display(axes: Axes, x: float, y: float, width: float, height: float, shown: str) -> None:
    """What a scale shows, its middle at (x, y)."""
    rectangle(axes, x - width / 2, y - height / 2, width, height, INK.display, r=2)
    words(axes, (x, y - 4.5), shown, 12, "black")


def _block(axes: Axes, x: float, top: float, low: float, width: float = 84.0) -> None:
    rectangle(axes, x - width / 2, low, width, top - low, INK.wood)
    half, grain = width / 2 - 6, np.arange(top - 10, low + 2, -10)
    stroke(axes, INK.grain, 2.8, *([(x - half, y), (x + half, y)] for y in grain))


def weighing(f: Measures, on: str = "front") -> Figure:
    """An axle or a side on the scale, the others on blocks of its height; from where both show."""
    axle = on in ("front", "rear")
    view, half = ("Side", f.wheelbase / 2) if axle else ("Rear", f.track / 2)
    what = f"{on} wheels on a kitchen scale, the others on a block of the same height"
    wide = 250 if axle else 190
    made, axes = blank(f"{view} view: {what}", -wide, -54, 2 * wide, 284)
    (truck_side if axle else truck_rear)(axes, f)
    at = half if on in ("front", "right") else -half
    scale(axes, at, 120 if axle else 104)
    _block(axes, -at, 0, -24, 84 if axle else 74)
    draw_ground(axes, 6 - wide, wide - 6, -24, K)
    if axle:
        edge = -at + np.copysign(42, at)
        length_line(axes, (edge, 0), (edge, -24), edge + np.copysign(16, at), "", True)
    words(axes, (-at, -48), "same height", colour=INK.red)
    words(axes, (at, -48), "scale")
    return made


def corner_weighing(corner: str) -> Figure:
    """One wheel on the scale, the others on blocks of its height; from above, nose up.

    corner: as "front left".
    """
    what = f"the {corner} wheel on the scale, the others on blocks as high"
    made, axes = blank(f"From above, nose up: {what}", -150, -112, 300, 224)
    for name in ("front left", "front right", "rear left", "rear right"):
        x, y = 38 * (-1 if "left" in name else 1), 49 * (1 if "front" in name else -1)
        rectangle(axes, x - 24, y - 26, 48, 52, INK.plate if name == corner else INK.wood, r=4)
        if name == corner:
            ha = "right" if x < 0 else "left"
            words(axes, (x + np.copysign(30, x), y - 4), "scale", 13, INK.red, ha)
    seen_from_above(axes, 0, 0, Affine2D().scale(1.7))
    return made


def tyre_size(f: Measures) -> Figure:
    """A bare wheel: across, and the width of its tread."""
    what = "A wheel off the truck: diameter across the tyre, and width of its tread"
    made, axes = blank(what, -130, -36, 290, 186)
    r, w = f.radius, f.tread
    wheel_side(axes, -50, r + 4, r)
    length_line(axes, (-50 - r, r), (-50 + r, r), -16, "diameter")
    rectangle(axes, 70 - w / 2, 4, w, 2 * r, INK.tyre, r=9)
    rectangle(axes, 70 - w / 4, 4 + 0.55 * r, w / 2, 0.9 * r, INK.rim, r=2)
    length_line(axes, (70 - w / 2, r), (70 + w / 2, r), -16, "width")
    return made


def raised_weighing(f: Measures, block_height: float) -> Figure:
    """The front on a block, the scale under the rear axle; turns about the rear wheel centres."""
    half, r = f.wheelbase / 2, f.radius
    what = "front wheels on a tall block, rear wheels on the scale"
    made, axes = blank(f"Side view: {what}", -262, -54, 540, 366)
    alpha = np.arcsin(block_height / f.wheelbase)
    front = -half + f.wheelbase * np.cos(alpha)
    with moved(axes, Affine2D().rotate_around(-half, r, alpha)):
        truck_side(axes, f)
    scale(axes, -half, shown="1613 g")
    _block(axes, front, block_height, -24)
    draw_ground(axes, -255, 268, -24, K)
    length_line(axes, (front + 46, block_height), (-half + 66, 0), front + 78, "H", True)
    stroke(axes, INK.faint, 3.4, [(-half, r), (front, r + block_height)], ls=BROKEN)
    disc(axes, (-half, r), 3.5, INK.red)
    disc(axes, (front, r + block_height), 3.5, INK.red)
    words(axes, (-half + 4, -48), "scale")
    words(axes, (front, -48), "block")
    return made


def lengths(f: Measures) -> Figure:
    """Wheelbase and wheel-centre height, side view."""
    half, r = f.wheelbase / 2, f.radius
    what = "wheelbase between wheel centres, and height of a wheel centre above the ground"
    made, axes = blank(f"Side view: {what}", -250, -52, 500, 282)
    truck_side(axes, f)
    draw_ground(axes, -245, 245, 0, K)
    length_line(axes, (-half, r), (half, r), -32, "wheelbase")
    length_line(axes, (half, r), (half, 0), half + 74, "r", True)
    return made


def track(f: Measures) -> Figure:
    """Track between tyre middles, rear view."""
    half = f.track / 2
    what = "Rear view: track from the middle of one tyre to the middle of the other"
    made, axes = blank(what, -140, -52, 280, 282)
    truck_rear(axes, f)
    draw_ground(axes, -132, 132, 0, K)
    length_line(axes, (-half, 2 * f.radius), (half, 2 * f.radius), -32, "track")
    return made


def damper() -> Figure:
    """A damper with its spring and a cable tie from eye to eye."""
    what = "A damper with a cable tie looped from its upper to its lower eye"
    made, axes = blank(what, -70, -52, 140, 284)
    stroke(axes, INK.frame, 14, [(0, 60), (0, 6)])
    rectangle(axes, -11, 82, 22, 96, INK.frame, r=4)
    for eye in (190, 8):
        disc(axes, (0, eye), 12, INK.frame)
        disc(axes, (0, eye), 4.5, INK.glass)
    rectangle(axes, -20, 24, 40, 6, INK.frame, r=2)
    stroke(axes, INK.soft, 14, *([(-17, y), (17, y - 8)] for y in range(48, 151, 17)))
    tie = np.array([[-27, 203], [27, 203], [30, 100], [27, -4], [-27, -4], [-30, 100]])
    stroke(axes, INK.red, 11, tie, r=22, closed=True)
    rectangle(axes, 20, 104, 14, 18, INK.red, r=2)
    words(axes, (0, -34), "cable tie", 17, INK.red)
    return made


def tilt_board(f: Measures, angle: float) -> Figure:
    """The board raised at its right edge by an angle (deg), the truck across it, left side down."""
    what = (
        "A board raised at one edge with the truck across it, downhill tyres against a thin strip, "
        "a phone on the board, a slack tether and a soft mat"
    )
    made, axes = blank(what, -150, -70, 560, 410)
    a, length, out = np.radians(angle), 420.0, f.track / 2 + f.tread / 2
    foot = out + 26  # of the truck's middle, along the board
    raised = Affine2D().rotate(a)
    draw_ground(axes, -145, 405, -40, K)
    rectangle(axes, -142, -40, 134, 14, INK.faint, r=6)
    _block(axes, 6, -11, -40, 26)
    stroke(axes, INK.faint, 3.4, [(0, 0), (300, 0)], ls=BROKEN)
    stroke(axes, INK.red, 5.7, around(0, 0, 150, np.linspace(0, a, 16)))
    words(axes, (162, 30), "angle", 18, INK.red, "left")
    with moved(axes, raised):
        rectangle(axes, 0, -13, length, 13, INK.wood, r=2)
        rectangle(axes, foot - out - 7, 0, 7, 5, INK.red)
        rectangle(axes, foot + out + 34, 0, 82, 9, INK.ink, r=3)
        with moved(axes, Affine2D().translate(foot, 0)):
            truck_rear(axes, f)
    cab, hook, tip = raised.transform([(foot + 48, 212), (length - 16, 0), (length, 0)])
    strip, phone = raised.transform([(foot - out - 4, 4), (foot + out + 62, -2)])
    middle = (cab + hook) / 2
    stroke(axes, INK.soft, 7, [cab, np.add(middle, (46, 12)), hook], r=200, ls=(0, (3, 2)))
    words(axes, (middle[0] + 40, middle[1] + 30), "slack tether", 18)
    arrow(axes, np.add(tip, (16, -66)), np.add(tip, (16, -2)), INK.red, 1, K)
    words(axes, (tip[0] + 12, tip[1] - 86), "lift slowly", 18)
    words(axes, (-76, -63), "soft mat", 18)
    for thing, name, x, y, near in ((strip, "strip", -78, 52, -5), (phone, "phone", 300, 82, 16)):
        stroke(axes, INK.soft, 3, [thing, (x, y + near)])
        words(axes, (x, y), name, 18)
    return made


def headings() -> Figure:
    """The four ways round on a board that rises away from the reader, in plan.

    Drawn nose up, which is uphill; the heading counts to the left.
    """
    what = "Four plans of the truck on the board; the arrow points downhill"
    made, axes = blank(what, 0, -166, 600, 172)
    names = (("left side down", 90), ("right side down", 270), ("climb", 0), ("descent", 180))
    for x, (name, heading) in zip(range(75, 600, 150), names, strict=True):
        rectangle(axes, x - 69, -120, 138, 120, INK.wood, r=3)
        arrow(axes, (x + 55, -16), (x + 55, -106), INK.red, 1, K)
        seen_from_above(axes, x - 12, -60, Affine2D().scale(0.86).rotate_deg(heading))
        words(axes, (x, -140), name, 12)
        words(axes, (x, -158), f"heading {heading}", 12, INK.soft)
    return made
