"""The measuring guide: one page of drawn instructions, complete in itself."""

from __future__ import annotations

from importlib.resources import files
from math import hypot
from pathlib import Path
from typing import Any

import numpy as np

from crossfall.measurement.weigh_in_formulas import height_per_load
from crossfall.measurement.weigh_in_model import warp_stiffness
from crossfall.show import guide_drawings as draw
from crossfall.show import guide_tyres as tyres
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, TANGENTIAL_RATIO, Truck, Tyre

MARK = "crossfall measuring guide"
RAISE = 0.29  # of the wheelbase: 17 degrees, where a truck still stands well
ANGLE = 36.0  # deg, of the board in the picture
USUAL_MASS = 2.8  # kg, of the class, where no truck is named: common practice, no source
USUAL_TYRE = Tyre(0.056, 0.042, 0.0, 5000.0, 3000.0, 3500.0)
READ = 0.2  # mm, to which a ruler in a photograph is read
METHOD = 0.1  # a truck pulled at one axle also leans, turns and pitches a little
PER_GRAM = GRAVITY / 1e3  # N

_SCALES = """\
[truck]
wheelbase_mm = {wheelbase}
front_track_mm = {front_track}
rear_track_mm = {rear_track}
front_radius_mm = {front_radius}
rear_radius_mm = {rear_radius}

[scale]
resolution_g = 1

[suspension]
locked = true

[[reading]]
at = "front"
load_g = [{front}]

[[reading]]
at = "rear"
load_g = [{rear}]

# the same for "left" and "right"

[[reading]]
at = "rear"
raised = "front"
block_mm = {block}
load_g = [{raised}]
"""

COMMANDS = """\
crossfall weigh-in scales.toml

crossfall board {name} --heading 90 \\
    --angle 41.2 --angle 41.5 --angle 41.3

crossfall reconcile {name} \\
    --scales scales.toml \\
    --board {stem}.board.toml
"""


def guide_page(truck: Truck | None = None, stem: str = "") -> str:
    """The page as HTML, with a truck's own numbers where one is given.

    stem: of its chassis file, for the commands.
    """
    from jinja2 import Environment

    template = files("crossfall.show").joinpath("guide.html.j2").read_text(encoding="utf-8")
    return Environment(autoescape=True).from_string(template).render(**_context(truck, stem))


def write_guide(path: Path, truck: Truck | None = None, stem: str = "") -> None:
    """Write the page; an older guide is replaced, anything else is left alone (InputError)."""
    if path.exists():
        start = path.read_bytes()[:2000] if path.is_file() else b""
        if MARK.encode() not in start:
            what = "is there already and is no measuring guide"
            raise InputError(Problem(str(path), what, "name another with -o"))
    write_atomically(path, guide_page(truck, stem))


def _context(truck: Truck | None, stem: str) -> dict[str, Any]:
    figure = draw.Measures() if truck is None else draw.measures_of(truck)
    mass = USUAL_MASS if truck is None else whole(truck).mass
    base = figure.wheelbase / 1e3
    block = 5 * round(RAISE * figure.wheelbase / 5)
    tyre = USUAL_TYRE if truck is None else truck.front.tyre
    return {
        "mark": MARK,
        "name": "" if truck is None else truck.name,
        "half_load": f"{np.ceil(6 * mass) / 10:.1f}",
        "block": block,
        "board": 50 * int(np.ceil(1.35 * figure.wheelbase / 50)),
        "per_mm": f"{1e-3 / height_per_load(mass, base, block / 1e3) * 1e3:.0f}",
        "shim": f"{round(warp_stiffness(figure.track / 1e3, tyre.stiffness), -1):.0f}",
        "lengths": draw.page_svg(draw.lengths, figure),
        "track": draw.page_svg(draw.track, figure),
        "damper": draw.page_svg(draw.damper),
        "level": draw.page_svg(draw.weighing, figure),
        "raised": draw.page_svg(draw.raised_weighing, figure, block),
        "board_picture": draw.page_svg(draw.tilt_board, figure, ANGLE),
        "headings": draw.page_svg(draw.headings),
        **_tyres(tyre, figure, mass),
        "predicted": [] if truck is None else _predicted(truck),
        "scales": _scales(truck, figure, block),
        "commands": COMMANDS.format(name=stem or "TRUCK", stem=stem or "TRUCK"),
    }


def _tyres(tyre: Tyre, figure: draw.Measures, mass: float) -> dict[str, Any]:
    """How to measure what a tyre gives, in numbers that suit a truck of this mass, kg."""
    press = 100 * int(np.ceil(3.5 * mass))  # g, some more than a wheel carries
    pull = 50 * max(1, round(mass * 1e3 / 6 / 50))  # g, a third of what an axle carries
    examples = [
        _example("vertical", press, tyre.stiffness, 0.0),
        _example("lateral", pull, tyre.lateral, METHOD),
        _example("longitudinal", pull, tyre.longitudinal, METHOD),
    ]
    keys = ("stiffness", "lateral", "longitudinal")
    lines = [
        f"{key}_n_per_mm = {e['stiffness']}\n{key}_tol_n_per_mm = {e['plus_minus']}"
        for key, e in zip(keys, examples, strict=True)
    ]
    on_scale = f"{round(250 * mass + press, -1):.0f} g"
    low, likely, high = TANGENTIAL_RATIO
    return {
        "pressed": draw.page_svg(tyres.pressed, figure, on_scale),
        "sideways": draw.page_svg(tyres.sideways, figure, f"{pull / 1e3:.2f} kg"),
        "along": draw.page_svg(tyres.along, figure, f"{pull / 1e3:.2f} kg"),
        "press": press,
        "pull": pull,
        "per_gram": f"{PER_GRAM:.5f}",
        "examples": examples,
        "ratio": f"{likely:g}",
        "ratios": f"{low:g} to {high:g}",
        "tyre_lines": "\n".join(["[front.tyre]", *lines]),
    }


def _example(name: str, grams: int, stiffness: float, method: float) -> dict[str, str]:
    """One sum as on the back of an envelope, for a tyre of about this stiffness (N/m).

    method: share by which the way of measuring itself may be out, beside the ruler.
    """
    way = max(round(grams * PER_GRAM / stiffness * 1e3, 1), 2 * READ)
    found = grams * PER_GRAM / way
    return {
        "name": name,
        "grams": str(grams),
        "way": f"{way:.1f}",
        "stiffness": f"{found:.1f}",
        "plus_minus": f"{max(found * hypot(READ / way, method), 0.1):.1f}",
    }


def _scales(truck: Truck | None, figure: draw.Measures, block: int) -> str:
    """A readings file to fill in, with the truck's lengths and invented loads."""
    if truck is None:
        ends = [(figure.track, figure.radius)] * 2
    else:
        ends = [(a.track * 1e3, a.tyre.radius * 1e3) for a in truck.axles]
    return _SCALES.format(
        wheelbase=f"{figure.wheelbase:g}",
        front_track=f"{ends[0][0]:g}",
        rear_track=f"{ends[1][0]:g}",
        front_radius=f"{ends[0][1]:g}",
        rear_radius=f"{ends[1][1]:g}",
        block=block,
        front="1342, 1345, 1341" if truck is None else "   ,    ,    ",
        rear="1502, 1499, 1503" if truck is None else "   ,    ,    ",
        raised="1613, 1611, 1616" if truck is None else "   ,    ,    ",
    )


def _predicted(truck: Truck) -> list[dict[str, str]]:
    from crossfall.answers.conditions import case_name
    from crossfall.measurement.board_predict import predict

    psi = [float(v) for v in np.radians([90.0, 270.0, 0.0, 180.0])]
    free, held = (predict(truck, psi, [locked] * 4) for locked in (False, True))

    def span(p: Any, i: int) -> str:
        low, high = np.degrees([p.low[i], p.high[i]])
        return f"{low:.1f}° to {high:.1f}°"

    return [
        {"case": case_name(np.degrees(h)), "free": span(free, i), "locked": span(held, i)}
        for i, h in enumerate(psi)
    ]
