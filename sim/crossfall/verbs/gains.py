"""`crossfall gains TRUCK`: where a gram helps and where it hurts."""

from __future__ import annotations

from math import degrees
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import (
    console,
    emit,
    json_option,
    load_and_warn,
    truck_argument,
)
from crossfall.verbs.whatif import (
    by_direction,
    conditions_record,
    hold_of,
    named_directions,
    now_words,
    rail_option,
    sentence_list,
    surface_option,
)

if TYPE_CHECKING:
    from crossfall.tuning.gains import Gradients, PartGain

PER_10G = degrees(1.0) / 100  # from rad/kg
PER_10MM = degrees(1.0) / 100  # from rad/m
# name, view, headings of `gains.Gradients`, edges of `rigid.EDGES`
PANELS = (
    ("climb", "side", (0,), (0,)),
    ("descent", "side", (2,), (2,)),
    ("climb and descent at once", "side", (0, 2), (0, 2)),
    ("all four at once", "side", (0, 1, 2, 3), (0, 2)),
    ("left side down", "rear", (1,), (1,)),
    ("right side down", "rear", (3,), (3,)),
    ("both sides at once", "rear", (1, 3), (1, 3)),
    ("all four at once", "rear", (0, 1, 2, 3), (1, 3)),
)


@click.command()
@truck_argument
@surface_option
@rail_option
@click.option("--rigid", is_flag=True, help="By the closed form, without springs and tyres.")
@click.option("--parts", default=15, show_default=True, metavar="N", help="How many parts to list.")
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Draw the gain map.")
@json_option
def command(
    truck: str,
    surface: str | None,
    rail: bool,
    rigid: bool,
    parts: int,
    plots: Path | None,
    as_json: bool,
) -> None:
    """Where does a gram help, and where does it hurt?

    Degrees per 10 g added to each part (taken away: the other sign) and per 10 mm it is moved, by
    direction: derivatives of the tip on springs and tyres at the surface's own grip; where the
    truck slides first, of what it would do against a rail. Parts on both axles have a line each.
    """
    from crossfall.tuning.gains import gradients, part_gains

    loaded = load_and_warn(truck)
    method: Any = "rigid" if rigid else "compliant"
    found = gradients(loaded, method, surface=surface, hold=hold_of(rail))
    rows = part_gains(found)
    written = _draw(found, plots) if plots is not None else None
    if as_json:
        emit("gains", gains_record(found, rows) | {"picture": str(written) if written else None})
    else:
        _show(found, rows[: max(parts, 0)])
        if written is not None:
            console().print(f"picture: {written}")


def gains_record(found: Gradients, rows: tuple[PartGain, ...]) -> dict[str, Any]:
    """The numbers in tuner's units."""
    own = found.governing
    return {
        "truck": found.truck.name,
        "method": found.method,
        **conditions_record(found.grip, found.hold),
        "slide_likely_deg": by_direction(found.slide[own]),
        "angle_deg": by_direction(found.angles[own]),
        "heading_deg": by_direction(found.headings[own]),
        "slides_first": named_directions(found.slides[own]),
        "corners": [{"at": c.kind, "words": c.words} for c in found.corners],
        "parts": [
            {
                "name": row.name,
                "end": row.end or None,
                "mass_g": row.mass * 1e3,
                "deg_per_10g": named_directions(row.per_mass * PER_10G),
                "deg_per_10mm": {
                    axis: named_directions(row.per_move[:, k] * PER_10MM)
                    for k, axis in enumerate("xyz")
                },
                "sign_turns_per_10g": named_directions(row.mass_turns),
                "sign_turns_per_10mm": {
                    axis: named_directions(row.move_turns[:, k]) for k, axis in enumerate("xyz")
                },
            }
            for row in rows
        ],
    }


def _draw(found: Gradients, folder: Path) -> Path:
    """The gain map, written into `folder`."""
    from crossfall.show.gainmap import draw_gainmap
    from crossfall.show.style import save

    folder.mkdir(parents=True, exist_ok=True)
    path = folder / f"{found.truck.name}-gains.svg"
    save(draw_gainmap(found.truck, panels(found), where(found)), path)
    return path


def where(found: Gradients) -> str:
    """What the fields are for, in words."""
    if found.method == "rigid":
        return "a rigid truck"
    said = f"on {found.grip.surface}, grip {found.grip.likely:g}"
    if found.hold == "rail":
        return f"{said}, against a rail"
    names = ("climb", "left side down", "descent", "right side down")
    railed = [n for n, slides in zip(names, found.slides[:4], strict=True) if slides]
    return (
        f"{said}; {sentence_list(railed)} as against a rail, for it slides first"
        if railed
        else said
    )


def panels(found: Gradients) -> list[Any]:
    """The fields to draw: each direction in its view, and the least of all four in both."""
    from crossfall.show.gainmap import Panel
    from crossfall.tuning.gains import field

    return [
        Panel(name, view, field(found, headings), wedges)  # type: ignore[arg-type]
        for name, view, headings, wedges in PANELS
    ]


def _show(found: Gradients, rows: tuple[PartGain, ...]) -> None:
    from rich.markup import escape
    from rich.table import Table

    out = console()
    name, own = escape(found.truck.name), found.governing
    if found.method == "rigid":
        how = "rigid, the closed form"
    else:
        there = (found.angles, found.headings, found.slide, found.slides)
        first, *rest = now_words(found.grip, found.hold, *(values[own] for values in there))
        out.print(f"[bold]{name}[/bold] {escape(first)}")
        for line in rest:
            out.print(escape(line))
        out.print()
        how = "with springs and tyres"
    table = Table(title=f"{name}: degrees per 10 g added, {how}", box=None)
    table.title_justify = "left"
    table.add_column("part", min_width=18)
    for head in ("g", "side", "climb", "descent"):
        table.add_column(head, justify="right")
    for head in ("side\n10 mm\ndown", "climb\n10 mm\nahead", "descent\n10 mm\nahead"):
        table.add_column(head, justify="right")
    for row in rows:
        moves = ((0, 2, -1.0), (1, 0, 1.0), (2, 0, 1.0))
        table.add_row(
            escape(row.name),
            f"{row.mass * 1e3:.0f}",
            *(_signed(row.per_mass[i] * PER_10G, 3, row.mass_turns[i]) for i in range(3)),
            *(
                _signed(way * row.per_move[i, k] * PER_10MM, 2, row.move_turns[i, k])
                for i, k, way in moves
            ),
        )
    out.print(table)
    out.print(_legend(rows), style="dim")


def _legend(rows: tuple[PartGain, ...]) -> str:
    said = ["Taken away, 10 g do the opposite. --json has all directions and all axes."]
    if any(r.mass_turns[:3].any() or r.move_turns[:3].any() for r in rows):
        said.append("?: may help or cost, by the grip and by how the tyres give along the ground.")
    return " ".join(said)


def _signed(value: float, decimals: int, turns: bool) -> str:
    text = signed_figures(value, decimals)
    return f"{text}?" if turns else text
