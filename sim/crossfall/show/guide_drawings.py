"""Pictures of the measuring guide: inline SVG, drawn in mm with y down, coloured by the page.

Shapes carry classes, the page's style sheet gives them colours, so that they follow it into print
and dark rooms. Every picture has a viewBox and no ids, and may stand any number of times.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import asin, cos, degrees, hypot, radians, sin, sqrt


@dataclass(frozen=True)
class Figure:
    """A truck's measures for drawing, mm."""

    wheelbase: float = 313.0
    track: float = 172.0
    radius: float = 56.0
    tread: float = 42.0


def svg(label: str, box: tuple[float, float, float, float], *parts: str, text: float = 14.0) -> str:
    """A picture with its words for those who do not see it.

    box: x, y, width, height, mm. text: mm, the size of its letters.
    """
    view = " ".join(f"{v:.0f}" for v in box)
    return (
        f'<svg viewBox="{view}" role="img" aria-label="{label}" font-size="{text:g}">'
        f"{''.join(parts)}</svg>"
    )


def line(x1: float, y1: float, x2: float, y2: float, kind: str = "thin") -> str:
    return f'<line class="{kind}" x1="{x1:.1f}" y1="{y1:.1f}" x2="{x2:.1f}" y2="{y2:.1f}"/>'


def rect(x: float, y: float, w: float, h: float, kind: str, round_: float = 0.0) -> str:
    return (
        f'<rect class="{kind}" x="{x:.1f}" y="{y:.1f}" width="{w:.1f}" height="{h:.1f}" '
        f'rx="{round_:.1f}"/>'
    )


def _circle(x: float, y: float, r: float, kind: str) -> str:
    return f'<circle class="{kind}" cx="{x:.1f}" cy="{y:.1f}" r="{r:.1f}"/>'


def svg_path(d: str, kind: str) -> str:
    return f'<path class="{kind}" d="{d}"/>'


def svg_text(x: float, y: float, text: str, kind: str = "", anchor: str = "middle") -> str:
    return f'<text class="{kind}" x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{text}</text>'


def _turned(angle: float, x: float, y: float, *parts: str) -> str:
    """Parts turned by an angle (deg, counter-clockwise) about a point."""
    return f'<g transform="rotate({-angle:.2f} {x:.1f} {y:.1f})">{"".join(parts)}</g>'


def arrow(x1: float, y1: float, x2: float, y2: float) -> str:
    """An arrow with its head at the second point."""
    far = hypot(x2 - x1, y2 - y1)
    ux, uy = (x2 - x1) / far, (y2 - y1) / far
    left = (x2 - 9 * ux + 4 * uy, y2 - 9 * uy - 4 * ux)
    right = (x2 - 9 * ux - 4 * uy, y2 - 9 * uy + 4 * ux)
    head = f"M{x2:.1f} {y2:.1f}L{left[0]:.1f} {left[1]:.1f}L{right[0]:.1f} {right[1]:.1f}Z"
    return line(x1, y1, x2 - 6 * ux, y2 - 6 * uy, "mark") + svg_path(head, "head")


def _dimension(x1: float, y1: float, x2: float, y2: float, text: str, away: float = 0.0) -> str:
    """A level or upright measure with ticks and its words in the middle, `away` from the line."""
    upright = abs(x2 - x1) < abs(y2 - y1)
    tick = (4.0, 0.0) if upright else (0.0, 4.0)
    ends = "".join(
        line(x - tick[0], y - tick[1], x + tick[0], y + tick[1], "mark")
        for x, y in ((x1, y1), (x2, y2))
    )
    mx, my = (x1 + x2) / 2, (y1 + y2) / 2
    if upright:
        anchor = "start" if away > 0 else "end"
        return (
            ends + line(x1, y1, x2, y2, "mark") + svg_text(mx + away, my + 5, text, "red", anchor)
        )
    return ends + line(x1, y1, x2, y2, "mark") + svg_text(mx, my + away, text, "red")


# The truck


def wheel_side(x: float, y: float, r: float) -> str:
    lugs = "".join(
        line(
            x + (r - 5) * cos(a),
            y + (r - 5) * sin(a),
            x + (r + 0.5) * cos(a + 0.06),
            y + (r + 0.5) * sin(a + 0.06),
            "lug",
        )
        for a in (radians(20 * i) for i in range(18))
    )
    rim = _circle(x, y, 0.52 * r, "rim") + _circle(x, y, 5, "hub")
    return _circle(x, y, r, "tyre") + lugs + rim


def truck_side(f: Figure) -> str:
    """Side view, nose to the right, ground at y = 0, the middle of the wheelbase at x = 0."""
    half, r = f.wheelbase / 2, f.radius
    s = f.wheelbase / 313
    body = (
        f"M{-222 * s:.0f} -112 L{-218 * s:.0f} -150 L{-70 * s:.0f} -152 L{-52 * s:.0f} -206 "
        f"Q{-48 * s:.0f} -212 {-40 * s:.0f} -212 L{52 * s:.0f} -210 Q{60 * s:.0f} -209 "
        f"{66 * s:.0f} -202 L{92 * s:.0f} -160 L{196 * s:.0f} -150 Q{210 * s:.0f} -148 "
        f"{210 * s:.0f} -136 L{212 * s:.0f} -112 Z"
    )
    glass = (
        f"M{-40 * s:.0f} -160 L{-34 * s:.0f} -200 L{8 * s:.0f} -200 L{8 * s:.0f} -160 Z "
        f"M{16 * s:.0f} -160 L{16 * s:.0f} -200 L{50 * s:.0f} -199 L{74 * s:.0f} -160 Z"
    )
    shocks = "".join(
        line(x, -r - 4, x - 14 * k, -128, "shock") for x, k in ((half, 1.0), (-half, -1.0))
    )
    frame = rect(-205 * s, -116, 404 * s, 10, "frame", 3)
    links = line(half, -r, 20 * s, -104, "link") + line(-half, -r, -20 * s, -104, "link")
    wheels = wheel_side(half, -r, r) + wheel_side(-half, -r, r)
    return links + svg_path(body, "body") + svg_path(glass, "glass") + frame + shocks + wheels


def truck_rear(f: Figure, gives: float = 0.0) -> str:
    """Rear view, ground at y = 0, the middle at x = 0.

    gives: mm by which everything but the tyres' treads has moved to the right.
    """
    half, r = f.track / 2, f.radius
    axle = rect(-half, -r - 6, f.track, 12, "frame", 5) + _circle(0, -r, 15, "frame")
    body = (
        "M-76 -112 L-78 -152 L-66 -158 L-58 -204 Q-56 -212 -48 -212 "
        "L48 -212 Q56 -212 58 -204 L66 -158 L78 -152 L76 -112 Z"
    )
    glass = "M-52 -164 L-46 -200 L46 -200 L52 -164 Z"
    shocks = line(-54, -r, -44, -122, "shock") + line(54, -r, 44, -122, "shock")
    sprung = shocks + svg_path(body, "body") + svg_path(glass, "glass") + axle
    moved = f'<g transform="translate({gives:g} 0)">{sprung}</g>' if gives else sprung
    return moved + "".join(_tyre_rear(x, f, gives) for x in (-half, half))


def _tyre_rear(x: float, f: Figure, gives: float) -> str:
    """A tyre seen from behind, its tread where it was and its rim moved."""
    r, w = f.radius, f.tread

    def at(side: float, up: float) -> str:
        bent = gives * min(1.0, up / (0.6 * r))
        return f"{x + side * w / 2 + bent:.1f} {-up:.1f}"

    left, right = ([at(s, u) for u in (9, 0.6 * r, 2 * r - 9)] for s in (-1.0, 1.0))
    inner = [at(s * (1 - 18 / w), u) for s, u in ((-1, 0), (1, 0), (1, 2 * r), (-1, 2 * r))]
    outline = (
        f"M{inner[0]} L{inner[1]} Q{at(1, 0)} {right[0]} L{right[1]} L{right[2]} "
        f"Q{at(1, 2 * r)} {inner[2]} L{inner[3]} Q{at(-1, 2 * r)} {left[2]} L{left[1]} "
        f"L{left[0]} Q{at(-1, 0)} {inner[0]} Z"
    )
    lugs = "".join(
        f'<path class="lug" d="M{at(-1, up)} L{at(1, up)}"/>'
        for up in (2 * r - 14 * i for i in range(1, 8))
        if up > 0
    )
    return svg_path(outline, "tyre") + lugs


# Things around it


def scale(x: float, top: float, width: float = 120.0, shown: str = "1342 g") -> str:
    """A kitchen scale with its plate at `top`, 24 mm tall."""
    return (
        rect(x - width / 2, top, width, 6, "plate", 3)
        + rect(x - width / 2 + 8, top + 6, width - 16, 18, "scale", 4)
        + rect(x - 27, top + 8, 54, 14, "display", 2)
        + svg_text(x, top + 19.5, shown, "digits")
    )


def _block(x: float, top: float, ground: float, width: float = 84.0) -> str:
    grain = "".join(
        line(x - width / 2 + 6, top + d, x + width / 2 - 6, top + d, "grain")
        for d in range(10, int(ground - top) - 2, 10)
    )
    return rect(x - width / 2, top, width, ground - top, "wood", 1.5) + grain


def floor(left: float, right: float, y: float) -> str:
    hatch = "".join(line(x, y + 9, x + 9, y, "grain") for x in range(int(left), int(right) - 8, 14))
    return line(left, y, right, y, "ground") + hatch


def level_weighing(f: Figure, end: str = "front") -> str:
    """One axle on the scale, the other on blocks of the scale's height."""
    half = f.wheelbase / 2
    other = {"front": "rear", "rear": "front"}[end]
    at = half if end == "front" else -half
    tick = -at + (62 if at < 0 else -62)
    return svg(
        f"Side view: {end} wheels on a kitchen scale, {other} wheels on a block of the same height",
        (-250, -230, 500, 282),
        truck_side(f),
        scale(at, 0),
        _block(-at, 0, 24),
        floor(-245, 245, 24),
        _dimension(tick, 0, tick, 24, ""),
        svg_text(-at, 46, "same height", "red"),
        svg_text(at, 46, "scale"),
    )


def side_weighing(f: Figure, side: str = "left") -> str:
    """Both wheels of one side on the scale, the others on blocks of its height; from behind."""
    at = f.track / 2 * (-1 if side == "left" else 1)
    return svg(
        f"Rear view: {side} wheels on a kitchen scale, the other two on blocks of the same height",
        (-190, -230, 380, 282),
        truck_rear(f),
        scale(at, 0, 104),
        _block(-at, 0, 24, 74),
        floor(-184, 184, 24),
        svg_text(at, 46, "scale"),
        svg_text(-at, 46, "same height", "red"),
    )


def corner_weighing(corner: str) -> str:
    """One wheel on the scale, the others on blocks of its height; from above, nose up.

    corner: as "front left".
    """
    pads = []
    for name in ("front left", "front right", "rear left", "rear right"):
        x = -22.5 if name.endswith("left") else 22.5
        y = -29.0 if name.startswith("front") else 29.0
        x *= 1.7
        y *= 1.7
        pads.append(rect(x - 24, y - 26, 48, 52, "plate" if name == corner else "wood", 4))
        if name == corner:
            out = x - 30 if x < 0 else x + 30
            pads.append(svg_text(out, y + 4, "scale", "red", "end" if x < 0 else "start"))
    return svg(
        f"From above, nose up: the {corner} wheel on the scale, the others on blocks as high",
        (-150, -112, 300, 224),
        *pads,
        f'<g transform="scale(1.7)">{_plan()}</g>',
        text=13,
    )


def tyre_size(f: Figure) -> str:
    """A bare wheel: across, and the width of its tread."""
    r, w = f.radius, f.tread
    return svg(
        "A wheel off the truck: diameter across the tyre, and width of its tread",
        (-140, -150, 280, 182),
        wheel_side(-50, -r - 4, r),
        _dimension(-50 - r, 8, -50 + r, 8, "diameter", 17),
        rect(70 - w / 2, -2 * r - 4, w, 2 * r, "tyre", 9),
        rect(70 - w / 4, -r - 4 - 0.45 * r, w / 2, 0.9 * r, "rim", 2),
        _dimension(70 - w / 2, 8, 70 + w / 2, 8, "width", 17),
    )


def raised_weighing(f: Figure, block_height: float) -> str:
    """The front on a block, the scale under the rear axle; turns about the rear wheel centres."""
    half, r = f.wheelbase / 2, f.radius
    alpha = degrees(asin(block_height / f.wheelbase))
    run = sqrt(f.wheelbase**2 - block_height**2)
    front = -half + run
    return svg(
        "Side view: front wheels on a tall block, rear wheels on the scale",
        (-262, -312, 540, 364),
        _turned(alpha, -half, -r, truck_side(f)),
        scale(-half, 0, shown="1613 g"),
        _block(front, -block_height, 24),
        floor(-255, 268, 24),
        line(-half + 66, 0, front + 96, 0, "help"),
        _dimension(front + 78, -block_height, front + 78, 0, "H", 8),
        line(-half, -r, front, -r - block_height, "help"),
        _circle(-half, -r, 3.5, "dot"),
        _circle(front, -r - block_height, 3.5, "dot"),
        svg_text(-half + 4, 46, "scale"),
        svg_text(front, 46, "block"),
    )


def lengths(f: Figure) -> str:
    """Wheelbase and wheel-centre height, side view."""
    half, r = f.wheelbase / 2, f.radius
    return svg(
        "Side view: wheelbase between wheel centres, and height of a wheel centre above the ground",
        (-250, -230, 500, 282),
        truck_side(f),
        floor(-245, 245, 0),
        line(-half, -r, -half, 32, "help"),
        line(half, -r, half, 32, "help"),
        _dimension(-half, 26, half, 26, "wheelbase", 17),
        line(half, -r, half + 84, -r, "help"),
        _dimension(half + 74, -r, half + 74, 0, "r", -7),
    )


def track(f: Figure) -> str:
    """Track between tyre middles, rear view."""
    half = f.track / 2
    return svg(
        "Rear view: track from the middle of one tyre to the middle of the other",
        (-140, -230, 280, 282),
        truck_rear(f),
        floor(-132, 132, 0),
        line(-half, -2 * f.radius, -half, 32, "help"),
        line(half, -2 * f.radius, half, 32, "help"),
        _dimension(-half, 26, half, 26, "track", 17),
    )


def damper() -> str:
    """A damper with its spring and a cable tie from eye to eye."""
    coils = "".join(line(-17, -150 + 17 * i, 17, -142 + 17 * i, "coil") for i in range(7))
    tie = "M-25 -196 Q-33 -110 -25 -14 Q0 6 25 -14 Q33 -110 25 -196 Q0 -214 -25 -196 Z"
    return svg(
        "A damper with a cable tie looped from its upper to its lower eye",
        (-70, -232, 140, 284),
        line(0, -60, 0, -6, "link"),
        rect(-11, -178, 22, 96, "frame", 4),
        _circle(0, -190, 12, "frame"),
        _circle(0, -190, 4.5, "glass"),
        _circle(0, -8, 12, "frame"),
        _circle(0, -8, 4.5, "glass"),
        rect(-20, -30, 40, 6, "frame", 2),
        coils,
        svg_path(tie, "tie"),
        rect(18, -122, 14, 18, "rail", 2),
        svg_text(0, 34, "cable tie", "red"),
        text=17,
    )


def tilt_board(f: Figure, angle: float) -> str:
    """The board raised at its right edge, the truck across it, left side down, and a phone."""
    length = 420.0
    half, w = f.track / 2, f.tread
    foot = half + w / 2 + 26
    pivot = (0.0, 0.0)
    phone = rect(foot + half + w / 2 + 34, -9, 82, 9, "phone", 3)
    board = (
        rect(0, 0, length, 13, "wood", 2)
        + rect(foot - half - w / 2 - 7, -5, 7, 5, "rail")
        + f'<g transform="translate({foot:.1f} 0)">{truck_rear(f)}</g>'
        + phone
    )
    a = radians(angle)
    tip = (length * cos(a), -length * sin(a))
    cab = _place(foot + 48, -212, a)
    hook = _place(length - 16, 0, a)
    arc = 150.0
    end = (arc * cos(a), -arc * sin(a))
    hand = svg_path(
        f"M{cab[0]:.0f} {cab[1]:.0f} Q{(cab[0] + hook[0]) / 2 + 46:.0f} "
        f"{(cab[1] + hook[1]) / 2 - 12:.0f} {hook[0]:.0f} {hook[1]:.0f}",
        "tether",
    )
    return svg(
        "A board raised at one edge with the truck across it, downhill tyres against a thin strip, "
        "a phone on the board, a slack tether and a soft mat",
        (-150, -340, 560, 410),
        floor(-145, 405, 40),
        rect(-142, 26, 134, 14, "mat", 6),
        _block(6, 11, 40, 26),
        line(0, 0, 300, 0, "help"),
        svg_path(f"M{arc:.0f} 0 A{arc:.0f} {arc:.0f} 0 0 0 {end[0]:.1f} {end[1]:.1f}", "arc"),
        svg_text(arc + 12, -30, "angle", "red", "start"),
        _turned(angle, *pivot, board),
        hand,
        arrow(tip[0] + 16, tip[1] + 66, tip[0] + 16, tip[1] + 2),
        svg_text(tip[0] + 12, tip[1] + 86, "lift slowly"),
        svg_text(-76, 63, "soft mat"),
        _called(_place(foot - half - w / 2 - 4, -4, a), (-78, -52), "strip"),
        _called(_place(foot + half + w / 2 + 62, 2, a), (300, -82), "phone"),
        svg_text((cab[0] + hook[0]) / 2 + 40, (cab[1] + hook[1]) / 2 - 30, "slack tether"),
        text=18,
    )


def _place(along: float, up: float, a: float) -> tuple[float, float]:
    """Where a point of the board (up negative, as drawn) is once it is raised by a (rad)."""
    return along * cos(a) + up * sin(a), -along * sin(a) + up * cos(a)


def _called(at: tuple[float, float], label: tuple[float, float], text: str) -> str:
    """A name with a thin line to the thing."""
    end = label[1] + 5 if at[1] > label[1] else label[1] - 16
    return line(*at, label[0], end, "lead") + svg_text(label[0], label[1], text)


def headings() -> str:
    """The four ways round on a board that rises away from the reader, in plan.

    Drawn nose up, which is uphill; the heading counts to the left.
    """
    parts = []
    names = (("left side down", 90), ("right side down", 270), ("climb", 0), ("descent", 180))
    for i, (name, heading) in enumerate(names):
        x = 75 + 150 * i
        parts += [
            rect(x - 69, 0, 138, 120, "wood", 3),
            arrow(x + 55, 16, x + 55, 106),
            f'<g transform="translate({x - 12} 60) rotate({-heading}) scale(0.86)">{_plan()}</g>',
            svg_text(x, 140, name),
            svg_text(x, 158, f"heading {heading}", "soft"),
        ]
    return svg(
        "Four plans of the truck on the board; the arrow points downhill",
        (0, -6, 600, 172),
        *parts,
        text=12,
    )


def _plan() -> str:
    """A small truck from above, nose up."""
    tyres = "".join(rect(x, y, 9, 22, "tyre", 3) for x in (-27, 18) for y in (-40, 18))
    nose = svg_path("M-9 -46 L0 -58 L9 -46 Z", "head")
    return tyres + rect(-17, -42, 34, 84, "body", 6) + rect(-13, -16, 26, 24, "glass", 3) + nose
