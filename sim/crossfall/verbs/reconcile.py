"""`crossfall reconcile TRUCK`: a new chassis file that agrees with scale and board."""

from __future__ import annotations

from math import degrees
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import console, emit, json_option, truck_argument, warn

if TYPE_CHECKING:
    from crossfall.measurement.board_file import BoardReadings
    from crossfall.measurement.reconcile import Left, Move, Reconciled
    from crossfall.measurement.weigh_in_session import Session
    from crossfall.truck.build import Loaded

_NAMES = ("mass_g", "cg_x_mm", "cg_y_mm", "cg_z_mm")
_WORDS = ("mass, g", "CG ahead of the middle, mm", "CG left of the middle, mm", "CG height, mm")
_SHOWN = 12  # rows of the table of moves


@click.command()
@truck_argument
@click.option(
    "--scales",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="A readings file, as for weigh-in.",
)
@click.option(
    "--board",
    "board_path",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="A board file, as the board verb keeps it.",
)
@click.option(
    "--surface",
    metavar="NAME",
    help="Which [grip] the board has; 'tilt board' or the first if not given.",
)
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="The new chassis file; TRUCK.reconciled.toml if not given. Never overwrites.",
)
@json_option
def command(
    truck: str,
    scales: Path | None,
    board_path: Path | None,
    surface: str | None,
    output: Path | None,
    as_json: bool,
) -> int:
    """Move uncertain masses and places, within their tolerances, to agree with the readings.

    Writes a new file with all comments kept. A reading that no movement within the tolerances can
    explain is named and left out.
    """
    from crossfall.measurement.board_file import read_board
    from crossfall.measurement.reconcile_write import included_rows, new_path, write_reconciled
    from crossfall.measurement.weigh_in_file import read_session
    from crossfall.truck.build import load_truck

    if scales is None and board_path is None:
        raise click.UsageError("give --scales, --board, or both")
    loaded = load_truck(truck)
    path = new_path(loaded, output)
    session = read_session(scales, loaded.truck) if scales else None
    board = read_board(board_path) if board_path else None
    fixed = included_rows(loaded)
    if fixed:
        warn(f"{len(fixed)} parts from included files are taken as they are")
    found = reconciled_truck(loaded, session, board, surface)
    sources = [p.name for p in (scales, board_path) if p]
    write_reconciled(loaded, found, path, sources)
    if as_json:
        emit(
            "reconcile", {"truck": loaded.truck.name, "file": str(path), **reconcile_record(found)}
        )
    else:
        _show(loaded.truck.name, found)
        click.echo(f"wrote {path}")
    return 0 if found.agrees else 1


def reconciled_truck(
    loaded: Loaded,
    session: Session | None,
    board: BoardReadings | None,
    surface: str | None = None,
) -> Reconciled:
    """What the readings make of the truck, the board being of that surface or its own.

    Raises InputError where they say nothing of it, or the truck has no such surface.
    """
    from crossfall.measurement.reconcile import reconcile
    from crossfall.measurement.reconcile_write import included_rows
    from crossfall.truck.errors import InputError, Problem
    from crossfall.verbs.board import board_surface

    grip, names = board_surface(loaded.truck, surface), [p.name for p in loaded.spec.part]
    try:
        return reconcile(loaded.truck, names, session, board, included_rows(loaded), grip)
    except ValueError as error:
        raise InputError(Problem(str(loaded.path), str(error))) from None


def reconcile_record(found: Reconciled) -> dict[str, Any]:
    """Grams and mm."""
    return {
        "agrees": found.agrees,
        "chi_square": found.chi_square,
        "redundancy": found.redundancy,
        "chance": found.chance,
        **{
            name: {
                "before": found.before[i] * 1e3,
                "before_sd": found.before_sd[i] * 1e3,
                "after": found.after[i] * 1e3,
                "after_sd": found.after_sd[i] * 1e3,
            }
            for i, name in enumerate(_NAMES)
        },
        "moves": [_move(m) for m in found.moves if m.most > 0],
        "at_limit": list(found.at_limit),
        "left_out": [_left(one) for one in found.left_out],
    }


def _move(m: Move) -> dict[str, Any]:
    return {
        "part": m.name,
        "mass_g": m.old_mass * 1e3,
        "mass_by_g": m.mass_by * 1e3,
        "mass_by_sd": m.mass_sds,
        "place_by_mm": m.place_by * 1e3,
        "place_by_sd": m.place_sds,
    }


def _left(one: Left) -> dict[str, Any]:
    out: dict[str, Any] = {"reading": one.label, "kind": one.kind, "line": one.line, "sd": one.by}
    if one.kind == "scale":
        return out | {"off_g": one.off * 1e3}
    return out | {"off_deg": degrees(one.off)}


def _show(name: str, found: Reconciled) -> None:
    from rich.markup import escape
    from rich.table import Table

    out = console()
    table = Table(box=None, title=f"{escape(name)}: file and truck", title_justify="left")
    table.add_column("")
    for head in ("by the file", "± (sd)", "reconciled", "± (sd)"):
        table.add_column(head, justify="right")
    for i, words in enumerate(_WORDS):
        values = (found.before[i], found.before_sd[i], found.after[i], found.after_sd[i])
        table.add_row(words, *(f"{v * 1e3:.1f}" for v in values))
    out.print(table)
    for one in found.left_out:
        off = f"{signed_figures(degrees(one.off), 1)}°"
        if one.kind == "scale":
            off = f"{signed_figures(one.off * 1e3, 0)} g"
        where = f", line {one.line}" if one.line else ""
        out.print(
            f"Cannot be believed and was left out: {one.kind}, {escape(one.label)}{where}: "
            f"{off.replace('-', '−')} from what the rest make of the truck ({abs(one.by):.1f} sd)"
        )
    _show_moves(found)
    if found.chance < 0.01:
        out.print(
            "What is left still does not agree: some tolerance in the file is too small, or a "
            "part is missing from it."
        )


def _show_moves(found: Reconciled) -> None:
    from rich.markup import escape
    from rich.table import Table

    moved = [m for m in found.moves if m.most >= 0.05]
    if not moved:
        console().print("Nothing had to move.")
        return
    table = Table(box=None, title="What moved, most first", title_justify="left")
    table.add_column("part")
    for head in ("was, g", "by, g", "sd", "forward, left, up, mm", "sd"):
        table.add_column(head, justify="right")
    for m in moved[:_SHOWN]:
        place = ", ".join(signed_figures(v * 1e3, 1) for v in m.place_by)
        sds = ", ".join(signed_figures(v, 1) for v in m.place_sds)
        grams = (signed_figures(v, 1) for v in (m.mass_by * 1e3, m.mass_sds))
        table.add_row(escape(m.name), f"{m.old_mass * 1e3:.1f}", *grams, place, sds)
    console().print(table)
    if len(moved) > _SHOWN:
        console().print(f"and {len(moved) - _SHOWN} more by less; --json has them all")
    if found.at_limit:
        names = ", ".join(found.at_limit[:6])
        console().print(f"At the limit of its tolerance: {escape(names)}")
