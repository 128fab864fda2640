"""`crossfall sheet TRUCK`: one printable page to hand over."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import emit, json_option, load_and_warn, truck_argument

if TYPE_CHECKING:
    from crossfall.show.sheet_changes import Difference
    from crossfall.show.sheet_facts import Build, Facts


@click.command()
@truck_argument
@click.option("--before", metavar="OTHER", help="The truck as it was: a file or a demo truck.")
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Where to write it, .html or .pdf; NAME-sheet.html if not given.",
)
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--date", default="", metavar="TEXT", help="A date, or any line, to print on it.")
@json_option
def command(
    truck: str,
    before: str | None,
    output: Path | None,
    surface: str | None,
    date: str,
    as_json: bool,
) -> None:
    """Write a set-up sheet: one A4 page for the wall, or for a customer.

    Drawings to scale, weights, tips by direction, what was changed since OTHER and what it cost,
    a tilt-board card to prove it, and the cautions. With --json and no -o nothing is written.
    """
    from crossfall.show.sheet import check_target, write_sheet
    from crossfall.show.sheet_facts import gather

    if output is not None:
        check_target(output)
    now = load_and_warn(truck)
    facts = gather(now, load_and_warn(before) if before is not None else None, surface, date)
    path = output or Path(f"{facts.now.truck.name.replace('/', '-')}-sheet.html")
    if output is not None or not as_json:
        write_sheet(facts, path)
    if as_json:
        emit("sheet", {**answer(facts), "files": [] if output is None else [str(path)]})
    else:
        click.echo(f"wrote {path}")


def answer(facts: Facts) -> dict[str, Any]:
    """All numbers of the sheet in tuner's units."""
    from math import degrees

    from crossfall.show.sheet_facts import BOARD

    board, changed = facts.board, facts.changed
    return {
        "truck": facts.now.truck.name,
        "before": _build(facts.before) if facts.before is not None else None,
        "now": _build(facts.now),
        "changed": None
        if changed is None
        else {
            "mass_g": changed.mass * 1e3,
            "price": changed.price,
            "price_put_on": changed.put_on,
            "price_taken_off": changed.taken_off,
            "currency": changed.currency,
            "parts": [_difference(d) for d in changed.parts],
            "dimensions": [_difference(d) for d in changed.dimensions],
        },
        "board": [
            {
                "heading_deg": degrees(heading),
                "predicted_deg": degrees(board.angle[i]),
                "window_deg": [degrees(board.low[i]), degrees(board.high[i])],
                "low_95_deg": degrees(board.angle[i] - 2 * board.u[i]),
                "high_95_deg": degrees(board.angle[i] + 2 * board.u[i]),
                "slide_deg": [degrees(v) for v in facts.board_slide[i]],
            }
            for i, heading in enumerate(BOARD)
        ],
        "board_surface": facts.board_surface,
    }


def _build(build: Build) -> dict[str, Any]:
    from crossfall.verbs import tilt, weigh

    weights = weigh.answer(build.truck, build.weight, 0)
    extras = {
        "width_mm": build.extras.width * 1e3,
        "turning_circle_mm": build.extras.turning_circle * 1e3,
        "run_time_min": build.extras.run_time / 60.0,
    }
    return {"weights": {**weights, **extras}, "tips": tilt.answer(build.tips)}


def _difference(d: Difference) -> dict[str, Any]:
    return {"what": d.what, "how": d.how, "mass_g": d.mass * 1e3, "price": d.price}
