"""Pictures of the measuring guide on how a tyre gives: pressed, pulled sideways, pulled along.

Close-ups, drawn like those of `guide_drawings`; what a tyre gives is drawn larger than it is.
"""

from __future__ import annotations

from crossfall.show.guide_drawings import (
    Figure,
    arrow,
    floor,
    line,
    rect,
    scale,
    svg,
    svg_path,
    svg_text,
    truck_rear,
    truck_side,
)

GIVES = 10.0  # mm in the pictures
FOOT = 0.46  # of the radius: how high a rim's foot is above the ground
_WIDE, _HIGH, _LEFT, _TOP = 300.0, 188.0, 92.0, 138.0  # mm, of each picture about its wheel
_RULER = 11.0  # mm, its width


def pressed(f: Figure, shown: str) -> str:
    """One wheel on a kitchen scale, pressed down at its axle; a ruler stands on the plate."""
    half, r = f.track / 2, f.radius
    nut = half + f.tread / 2
    at = nut + 34
    press = half - f.tread / 2 - 20
    return svg(
        "Rear view of one wheel on a kitchen scale, its axle pressed down; a ruler stands on the "
        "scale's plate, and the wheel nut points at it before and after",
        _box(half),
        f'<g transform="translate(0 {GIVES:g})">{truck_rear(f)}</g>',
        scale(half + 22, 0, 150, shown),
        floor(half - _LEFT + 4, half - _LEFT + _WIDE - 4, 24),
        _ruler(at, -118, upright=True),
        line(nut, -r, at, -r, "help"),
        line(nut, -r + GIVES, at, -r + GIVES, "pointer"),
        svg_text(at + _RULER + 8, -r - 2, "before", "soft", "start"),
        svg_text(at + _RULER + 8, -r + GIVES + 8, "pressed", "red", "start"),
        arrow(press, -100 + GIVES, press, -r + GIVES - 8),
        svg_text(press - 8, -74 + GIVES, "press", "red", "end"),
        svg_text(half + 22, 43, "kitchen scale"),
        text=13,
    )


def sideways(f: Figure, shown: str) -> str:
    """A luggage scale pulling along the axle at the foot of a rim; the tread stays."""
    half, r, w = f.track / 2, f.radius, f.tread
    foot, rim = -FOOT * r, half + w / 2
    tip = rim + 26
    return svg(
        "Rear view of one wheel: a luggage scale pulls along the axle at the foot of the rim; the "
        "tread stays and the rim moves; a straw on the rim points at a ruler on the table",
        _box(half),
        truck_rear(f, GIVES),
        rect(half - w / 2, -2 * r, w, 2 * r, "ghost", 9),
        floor(half - _LEFT + 4, half - _LEFT + _WIDE - 4, 0),
        _ruler(rim + 6, -_RULER, upright=False),
        svg_path(f"M{rim:.1f} {foot:.1f} L{tip:.1f} {-_RULER:.1f}", "help"),
        svg_path(f"M{rim + GIVES:.1f} {foot:.1f} L{tip + GIVES:.1f} {-_RULER:.1f}", "pointer"),
        _luggage_scale(rim + GIVES, foot, 58.0, shown),
        svg_text(half - 34, 24, "tread stays"),
        svg_text(tip + 24, 24, "straw and ruler"),
        svg_text(rim + GIVES + 91, foot - 24, "luggage scale"),
        text=13,
    )


def along(f: Figure, shown: str) -> str:
    """A luggage scale pulling the front axle ahead, its wheels tied so that they cannot turn."""
    half, r = f.wheelbase / 2, f.radius
    at, foot = half - 0.34 * r, -0.64 * r
    return svg(
        "Side view of the front wheel, tied so that it cannot turn: a luggage scale pulls the axle "
        "ahead; a straw on the rim points at a ruler on the table",
        _box(half),
        f'<g transform="translate({GIVES:g} 0)">{truck_side(f)}</g>',
        svg_path(_circle(half, -r, r), "ghost"),
        floor(half - _LEFT + 4, half - _LEFT + _WIDE - 4, 0),
        _ruler(at - 34, -_RULER, upright=False),
        svg_path(f"M{at:.1f} {foot:.1f} V{-_RULER:.1f}", "help"),
        svg_path(f"M{at + GIVES:.1f} {foot:.1f} V{-_RULER:.1f}", "pointer"),
        _tie(half + GIVES, r),
        _luggage_scale(half + GIVES + 6, -r, r + 18.0, shown),
        svg_text(half + GIVES - 8, 24, "straw and ruler"),
        svg_text(half + r + 92, -r - 24, "luggage scale"),
        svg_text(half - _LEFT + 4, -r + 16, "tied", "red", "start"),
        text=13,
    )


def _box(wheel: float) -> tuple[float, float, float, float]:
    return wheel - _LEFT, -_TOP, _WIDE, _HIGH


def _circle(x: float, y: float, r: float) -> str:
    return f"M{x - r:.1f} {y:.1f} a{r:g} {r:g} 0 1 0 {2 * r:g} 0 a{r:g} {r:g} 0 1 0 {-2 * r:g} 0 Z"


def _ruler(x: float, y: float, upright: bool) -> str:
    """A ruler from (x, y) to the right, or down to the ground, its marks towards the truck."""
    if upright:
        ticks = (line(x, -d, x + (7 if d % 20 == 0 else 4), -d, "tick") for d in range(4, 118, 4))
        return rect(x, y, _RULER, -y, "ruler", 1) + "".join(ticks)
    marks = (line(x + d, y, x + d, y + (7 if d % 20 == 0 else 4), "tick") for d in range(4, 80, 4))
    return rect(x, y, 80, _RULER, "ruler", 1) + "".join(marks)


def _luggage_scale(x: float, y: float, string: float, shown: str) -> str:
    """On a string from (x, y), pulling to the right."""
    body = x + string
    return (
        line(x, y, body - 12, y, "string")
        + svg_path(f"M{body:.1f} {y:.1f} h-8 a6 6 0 1 1 -6 -6", "hook")
        + rect(body, y - 14, 66, 28, "scale", 8)
        + rect(body + 7, y - 9, 52, 18, "display", 2)
        + svg_text(body + 33, y + 4.5, shown, "digits")
        + arrow(body + 66, y, body + 98, y)
    )


def _tie(x: float, r: float) -> str:
    """A cable tie through the rim and round the link behind it."""
    a, b = x - 0.3 * r, -1.22 * r
    return svg_path(f"M{a:.1f} {b:.1f} c-8 -22 -44 -22 -40 -4 c4 16 34 18 40 4 Z", "tie")
