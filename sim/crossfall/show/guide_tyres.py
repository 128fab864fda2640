"""Pictures of the measuring guide on how a tyre gives: pressed, pulled sideways, pulled along.

Close-ups, drawn like those of `guide_drawings`; what a tyre gives is drawn larger than it is.
"""

from __future__ import annotations

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.transforms import Affine2D

from crossfall.show.guide_drawings import (
    BROKEN,
    INK,
    K,
    Measures,
    around,
    blank,
    display,
    moved,
    scale,
    truck_rear,
    truck_side,
    words,
)
from crossfall.show.paper import arrow, draw_ground, rectangle, stroke

GIVES = 10.0  # mm in the pictures
FOOT = 0.46  # of the radius: how high a rim's foot is above the ground
_WIDE, _HIGH, _LEFT, _LOW = 300.0, 188.0, 92.0, -50.0  # mm, of each picture about its wheel
_RULER = 11.0  # mm, its width


def pressed(f: Measures, shown: str) -> Figure:
    """One wheel on a kitchen scale, pressed down at its axle; a ruler stands on the plate."""
    half, r = f.track / 2, f.radius
    made, axes = _close_up(
        "Rear view of one wheel on a kitchen scale, its axle pressed down; a ruler stands on the "
        "scale's plate, and the wheel nut points at it before and after",
        half,
        -24,
    )
    nut, at = half + f.tread / 2, half + f.tread / 2 + 34
    with moved(axes, Affine2D().translate(0, -GIVES)):
        truck_rear(axes, f)
    scale(axes, half + 22, 150, shown)
    _ruler(axes, 118, Affine2D().rotate_deg(90).translate(at, 0))
    _moves(axes, [(nut, r), (at, r)], (0, -GIVES))
    words(axes, (at + _RULER + 8, r + 2), "before", 13, INK.soft, "left")
    words(axes, (at + _RULER + 8, r - GIVES - 8), "pressed", 13, INK.red, "left")
    press = half - f.tread / 2 - 20
    arrow(axes, (press, 100 - GIVES), (press, r - GIVES + 8), INK.red, 1, K)
    words(axes, (press - 8, 74 - GIVES), "press", 13, INK.red, "right")
    words(axes, (half + 22, -45), "kitchen scale", 13)
    return made


def sideways(f: Measures, shown: str) -> Figure:
    """A luggage scale pulling along the axle at the foot of a rim; the tread stays."""
    half, r, w = f.track / 2, f.radius, f.tread
    made, axes = _close_up(
        "Rear view of one wheel: a luggage scale pulls along the axle at the foot of the rim; the "
        "tread stays and the rim moves; a straw on the rim points at a ruler on the table",
        half,
    )
    foot, rim = FOOT * r, half + w / 2
    truck_rear(axes, f, GIVES)
    still = [(rim - w, 0), (rim, 0), (rim, 2 * r), (rim - w, 2 * r)]
    stroke(axes, INK.faint, 4, still, r=9, closed=True, ls=BROKEN)
    _ruler(axes, 80, Affine2D().translate(rim + 6, _RULER))
    _moves(axes, [(rim, foot), (rim + 26, _RULER)], (GIVES, 0))
    _luggage_scale(axes, rim + GIVES, foot, 58, shown)
    words(axes, (half - 34, -26), "tread stays", 13)
    words(axes, (rim + 50, -26), "straw and ruler", 13)
    return made


def along(f: Measures, shown: str) -> Figure:
    """A luggage scale pulling the front axle ahead, its wheels tied so that they cannot turn."""
    half, r = f.wheelbase / 2, f.radius
    made, axes = _close_up(
        "Side view of the front wheel, tied so that it cannot turn: a luggage scale pulls the axle "
        "ahead; a straw on the rim points at a ruler on the table",
        half,
    )
    at = half - 0.34 * r
    with moved(axes, Affine2D().translate(GIVES, 0)):
        truck_side(axes, f)
        tie = np.array([(-0.25, 1.2), (-0.4, 1.5), (-1.0, 1.55), (-1.0, 1.2), (-0.5, 1.05)])
        stroke(axes, INK.red, 11, r * tie + (half, 0), r=20, closed=True)
    stroke(axes, INK.faint, 4, around(half, r, r, np.linspace(0, 2 * np.pi, 72)), ls=BROKEN)
    _ruler(axes, 80, Affine2D().translate(at - 34, _RULER))
    _moves(axes, [(at, 0.64 * r), (at, _RULER)], (GIVES, 0))
    _luggage_scale(axes, half + GIVES + 6, r, r + 18, shown)
    words(axes, (half + GIVES - 8, -26), "straw and ruler", 13)
    words(axes, (half - _LEFT + 4, r - 16), "tied", 13, INK.red, "left")
    return made


def _close_up(label: str, wheel: float, ground: float = 0.0) -> tuple[Figure, Axes]:
    """An empty picture about a wheel and the ground."""
    made, axes = blank(label, wheel - _LEFT, _LOW, _WIDE, _HIGH)
    draw_ground(axes, wheel - _LEFT + 4, wheel - _LEFT + _WIDE - 4, ground, K)
    return made, axes


def _moves(axes: Axes, line: list[tuple[float, float]], by: tuple[float, float]) -> None:
    """A pointer where it was, and where it went."""
    stroke(axes, INK.faint, 3.4, line, ls=BROKEN)
    stroke(axes, INK.red, 7, np.add(line, by))


def _ruler(axes: Axes, length: int, to: Affine2D) -> None:
    """A ruler from the origin to the right, its marks on the upper edge, until it is moved."""
    with moved(axes, to):
        rectangle(axes, 0, -_RULER, length, _RULER, INK.plate, r=1, edge=2.8)
        marks = ([(d, 0), (d, -4 if d % 20 else -7)] for d in range(4, length, 4))
        stroke(axes, INK.ink, 2.5, *marks)


def _luggage_scale(axes: Axes, x: float, y: float, string: float, shown: str) -> None:
    """On a string from (x, y), pulling to the right."""
    body = x + string
    stroke(axes, INK.ink, 4.5, [(x, y), (body - 12, y)])
    hook = [(0, 0), (-8, 0), (-8, -7), (-20, -7), (-20, 6), (-13, 6)]
    stroke(axes, INK.frame, 7.4, np.add(hook, (body, y)), r=6)
    rectangle(axes, body, y - 14, 66, 28, INK.scale, r=8)
    display(axes, body + 33, y, 52, 18, shown)
    arrow(axes, (body + 66, y), (body + 98, y), INK.red, 1, K)
    words(axes, (body + 33, y + 22), "luggage scale", 13)
