"""`crossfall gains TRUCK`: where a gram helps and where it hurts."""

from __future__ import annotations

from math import degrees
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument

if TYPE_CHECKING:
    from crossfall.truck.model import Truck
    from crossfall.tuning.gains import Gradients, PartGain

PER_10G = degrees(1.0) / 100  # from rad/kg
PER_10MM = degrees(1.0) / 100  # from rad/m
# name, view, headings of directions.ROUND, edges of rigid.EDGES
PANELS = (
    ("climb", "side", (0,), (0,)),
    ("descent", "side", (4,), (2,)),
    ("climb and descent at once", "side", (0, 4), (0, 2)),
    ("all four at once", "side", (0, 2, 4, 6), (0, 2)),
    ("left side down", "rear", (2,), (1,)),
    ("right side down", "rear", (6,), (3,)),
    ("both sides at once", "rear", (2, 6), (1, 3)),
    ("all four at once", "rear", (0, 2, 4, 6), (1, 3)),
)


@click.command()
@truck_argument
@click.option("--rigid", is_flag=True, help="By the closed form, without springs and tyres.")
@click.option("--parts", default=15, show_default=True, metavar="N", help="How many parts to list.")
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Draw the gain map.")
@json_option
def command(truck: str, rigid: bool, parts: int, plots: Path | None, as_json: bool) -> None:
    """Where does a gram help, and where does it hurt?

    Degrees per 10 g added to each part (taken away: the other sign) and per 10 mm it is moved,
    by direction; exact derivatives of the compliant answer with the least friction.
    """
    from crossfall.tuning.gains import gradients, part_gains

    loaded = load_and_warn(truck)
    found = gradients(loaded.truck, "rigid" if rigid else "compliant")
    rows = part_gains(found)
    written = draw(found, plots) if plots is not None else None
    if as_json:
        emit("gains", answer(found, rows) | {"picture": str(written) if written else None})
    else:
        _show(found, rows[: max(parts, 0)])
        if written is not None:
            console().print(f"picture: {written}")


def answer(found: Gradients, rows: tuple[PartGain, ...]) -> dict[str, Any]:
    """The numbers in tuner's units."""
    from crossfall.tuning.directions import DIRECTIONS, ROUND

    governing = found.angles.governing[0]
    return {
        "truck": found.truck.name,
        "method": found.method,
        "angle_deg": _named(found.angles.by_direction[0] * degrees(1.0)),
        "heading_deg": {
            name: degrees(ROUND[h]) for name, h in zip(DIRECTIONS, governing, strict=True)
        },
        "parts": [
            {
                "name": row.name,
                "mass_g": row.mass * 1e3,
                "deg_per_10g": _named(row.per_mass * PER_10G),
                "deg_per_10mm": {
                    axis: _named(row.per_move[:, k] * PER_10MM) for k, axis in enumerate("xyz")
                },
            }
            for row in rows
        ],
    }


def _named(values: Any) -> dict[str, float]:
    from crossfall.tuning.directions import DIRECTIONS

    return {name: float(v) for name, v in zip(DIRECTIONS, values, strict=True)}


def draw(found: Gradients, folder: Path) -> Path:
    """The gain map, written into `folder`."""
    from crossfall.show.gainmap import draw_gainmap
    from crossfall.show.style import save

    folder.mkdir(parents=True, exist_ok=True)
    path = folder / f"{found.truck.name}-gains.svg"
    save(draw_gainmap(found.truck, panels(found)), path)
    return path


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
    truck: Truck = found.truck
    how = "with springs and tyres" if found.method == "compliant" else "rigid"
    table = Table(title=f"{escape(truck.name)}: degrees per 10 g added, {how}", box=None)
    table.title_justify = "left"
    table.add_column("part", min_width=18)
    for name in ("g", "side", "climb", "descent"):
        table.add_column(name, justify="right")
    for name in ("side\n10 mm\ndown", "climb\n10 mm\nahead", "descent\n10 mm\nahead"):
        table.add_column(name, justify="right")
    for row in rows:
        gains = row.per_mass[:3] * PER_10G
        moves = (-row.per_move[0, 2], row.per_move[1, 0], row.per_move[2, 0])
        table.add_row(
            escape(row.name),
            f"{row.mass * 1e3:.0f}",
            *(_signed(g, 3) for g in gains),
            *(_signed(m * PER_10MM, 2) for m in moves),
        )
    out.print(table)
    out.print("Taken away, 10 g do the opposite. --json has all directions and all axes.")


def _signed(value: float, decimals: int) -> str:
    return f"{round(value, decimals) + 0.0:+.{decimals}f}".replace("-", "−")
