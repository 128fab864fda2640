"""`crossfall board TRUCK`: measured tip angles beside predicted ones, kept in a small file."""

from __future__ import annotations

from collections.abc import Sequence
from math import degrees, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import (
    Number,
    console,
    emit,
    json_option,
    load_and_warn,
    truck_argument,
    warn,
)

if TYPE_CHECKING:
    from crossfall.measurement.board import BoardResult, Verdict
    from crossfall.measurement.board_file import BoardReadings
    from crossfall.measurement.board_height import BoardFit
    from crossfall.measurement.weigh_in import Estimate
    from crossfall.truck.build import Loaded
    from crossfall.truck.model import Grip, Truck

FOUR_WAYS = (90.0, 270.0, 0.0, 180.0)  # deg


@click.command()
@truck_argument
@click.option(
    "--heading",
    type=Number(-360, 360),
    metavar="DEG",
    help="Which way it tipped: 0 climb, 90 left side down, 180 descent, 270 right side down.",
)
@click.option(
    "--angle",
    "angles",
    type=Number(0, 90, open_ends=True),
    multiple=True,
    metavar="DEG",
    help="A measured angle; once for each repeat.",
)
@click.option("--locked", is_flag=True, help="The suspension was held still.")
@click.option("--rail", is_flag=True, help="A thin strip kept the downhill tyres from sliding.")
@click.option("--slid", is_flag=True, help="It slid at this angle and did not tip.")
@click.option(
    "--file",
    "path",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="The board file; TRUCK.board.toml beside the truck if not given.",
)
@click.option(
    "--surface",
    metavar="NAME",
    help="Which [grip] the board has; 'tilt board' or the first if not given.",
)
@json_option
def command(
    truck: str,
    heading: float | None,
    angles: tuple[float, ...],
    locked: bool,
    rail: bool,
    slid: bool,
    path: Path | None,
    surface: str | None,
    as_json: bool,
) -> int:
    """Do prediction and board agree, and if not, what is most likely wrong?

    With --heading and --angle the reading is added to the board file first. Without either, all
    that is in the file is compared; with no file yet, the predictions are shown to try for.
    """
    from crossfall.measurement.board_file import add_reading, board_file_of, read_board

    if (heading is None) != (not angles):
        raise click.UsageError("--heading and --angle go together")
    loaded = load_and_warn(truck)
    file = path or board_file_of(loaded.path)
    if heading is not None:
        add_reading(
            file, loaded.truck.name, heading % 360, angles, locked=locked, rail=rail, slid=slid
        )
    board = read_board(file) if file.exists() else None
    if board is None or not board.readings:
        return _predictions(loaded, file, surface, as_json)
    return _compare(loaded, board, surface, as_json)


def _compare(loaded: Loaded, board: Any, surface: str | None, as_json: bool) -> int:
    found, fitted = compared(loaded.truck, board, surface)
    for text in _warnings(found, fitted):
        warn(text)
    if as_json:
        emit("board", board_record(loaded.truck.name, board.file, found, fitted))
    else:
        _show(loaded, board.file, found, fitted)
    return 0 if found.agrees else 1


def compared(
    truck: Truck, board: BoardReadings, surface: str | None
) -> tuple[BoardResult, BoardFit | None]:
    """Prediction against board, and what the tips alone say of the truck, where there are any."""
    from crossfall.measurement.board import check_board
    from crossfall.measurement.board_height import infer
    from crossfall.measurement.board_predict import outlook

    grip = board_surface(truck, surface)
    ahead = outlook(truck, board.tips, grip) if board.tips else None
    found = check_board(truck, board, grip, ahead)
    return found, infer(truck, board, ahead=ahead) if board.tips else None


def board_surface(truck: Truck, surface: str | None) -> Grip:
    """The grip of a surface, or the board's own."""
    from crossfall.answers.conditions import choose_grip
    from crossfall.measurement.board_predict import board_grip

    return board_grip(truck) if surface is None else choose_grip(truck, surface)


def predictions_record(
    truck: Truck, headings: Sequence[float] = FOUR_WAYS, surface: str | None = None
) -> list[dict[str, Any]]:
    """What to expect on each heading (deg), suspension free and locked."""
    from crossfall.answers.conditions import case_name
    from crossfall.measurement.board_predict import predict

    psi, grip = [radians(h) for h in headings], board_surface(truck, surface)
    free = predict(truck, psi, [False] * len(psi), grip=grip)
    held = predict(truck, psi, [True] * len(psi), grip=grip)
    return [
        {
            "heading_deg": h,
            "case": case_name(h),
            "predicted_deg": degrees(free.angle[i]),
            "low_95_deg": degrees(free.low[i]),
            "high_95_deg": degrees(free.high[i]),
            "locked_deg": degrees(held.angle[i]),
            "locked_low_95_deg": degrees(held.low[i]),
            "locked_high_95_deg": degrees(held.high[i]),
        }
        for i, h in enumerate(headings)
    ]


def _predictions(loaded: Loaded, file: Path, surface: str | None, as_json: bool) -> int:
    """Nothing measured yet: what to try for."""
    rows = predictions_record(loaded.truck, surface=surface)
    if as_json:
        emit("board", {"truck": loaded.truck.name, "file": str(file), "predictions": rows})
        return 0
    from rich.table import Table

    out = console()
    table = Table(box=None, title="What the board should show, degrees", title_justify="left")
    for name in ("heading", "", "suspension free", "suspension locked"):
        table.add_column(name, justify="left" if not name else "right")
    for row in rows:
        table.add_row(
            f"{row['heading_deg']:g}",
            row["case"],
            f"{row['low_95_deg']:.1f} to {row['high_95_deg']:.1f}",
            f"{row['locked_low_95_deg']:.1f} to {row['locked_high_95_deg']:.1f}",
        )
    out.print(table)
    out.print("Nothing measured yet. Tip it, then say so, as in")
    out.print(f"  crossfall board {loaded.truck.name} --heading 90 --angle 41.2 --angle 41.5")
    return 0


def board_record(
    truck: str, file: str, found: BoardResult, fitted: BoardFit | None
) -> dict[str, Any]:
    """Everything in degrees and mm."""
    return {
        "truck": truck,
        "file": file,
        "agrees": found.agrees,
        "headings": [_row(v) for v in found.verdicts],
        "likely_wrong": [
            {"cause": c.name, "words": c.words, "explained": c.explained} for c in found.causes
        ],
        "from_the_board": None
        if fitted is None
        else {
            "cg_height_mm": _estimate(fitted.height),
            "contact_half_width_mm": _estimate(fitted.contact),
            "closed_form_tip_line_mm": _estimate(fitted.closed_form),
            "correlation": fitted.correlation,
            "outliers": [
                {"reading": d.label, "line": d.line, "off_deg": degrees(d.off), "sd": d.by}
                for d in fitted.outliers
            ],
            "outliers_left_out": fitted.left_out,
        },
        "warnings": _warnings(found, fitted),
    }


def _warnings(found: BoardResult, fitted: BoardFit | None) -> list[str]:
    return list(dict.fromkeys((*found.warnings, *(fitted.warnings if fitted else ()))))


def _row(v: Verdict) -> dict[str, Any]:
    from crossfall.answers.conditions import case_name

    return {
        "heading_deg": degrees(v.reading.heading),
        "case": case_name(degrees(v.reading.heading)),
        "slid": v.reading.slid,
        "locked": v.reading.locked,
        "rail": v.reading.rail,
        "repeats": len(v.reading.angles),
        "measured_deg": degrees(v.measured),
        "measured_u_deg": degrees(v.u),
        "predicted_deg": degrees(v.predicted),
        "predicted_u_deg": degrees(v.predicted_u),
        "predicted_range_deg": [degrees(v.low), degrees(v.high)],
        "rigid_deg": degrees(v.rigid),
        "en_number": v.number,
        "agrees": v.agrees,
    }


def _estimate(e: Estimate) -> dict[str, float]:
    return {
        "value": e.value * 1e3,
        "u": e.u * 1e3,
        "low_95": e.low * 1e3,
        "high_95": e.high * 1e3,
        "degrees_of_freedom": e.dof,
    }


def _show(loaded: Loaded, file: str, found: BoardResult, fitted: BoardFit | None) -> None:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.answers.conditions import case_name

    out = console()
    table = Table(box=None, title=f"{loaded.truck.name} on the board", title_justify="left")
    table.add_column("")
    for name in ("measured", "predicted", "apart", "allowed"):
        table.add_column(name, justify="right")
    table.add_column("")
    for v in found.verdicts:
        gap = degrees(v.measured - v.predicted)
        allowed = abs(gap / v.number) if v.number else float("inf")
        what = case_name(degrees(v.reading.heading)) + (", slid" if v.reading.slid else "")
        table.add_row(
            what + (", locked" if v.reading.locked else ""),
            f"{degrees(v.measured):.1f}°",
            f"{degrees(v.predicted):.1f}°",
            f"{signed_figures(gap, 1)}°",
            f"± {allowed:.1f}°",
            "agrees" if v.agrees else "does not agree",
        )
    out.print(table)
    if found.agrees:
        out.print("Prediction and board agree within their uncertainties.")
    elif found.causes:
        out.print("Most likely " + escape(found.causes[0].words) + ".")
        for c in found.causes[1:]:
            out.print("It may also be that " + escape(c.words) + ".")
    elif not all(v.agrees for v in found.verdicts if not v.reading.slid):
        out.print(
            "No single cause explains the pattern. Check that the truck stood square on the board, "
            "that the headings are the right way round, and repeat the odd one out."
        )
    if fitted is not None:
        _show_fit(fitted)
    out.print(f"Kept in {escape(file)}")


def _show_fit(fitted: BoardFit) -> None:
    out = console()
    h, w = fitted.height, fitted.contact
    text = f"The angles alone put the CG {h.value * 1e3:.1f} mm up (95 %: {h.low * 1e3:.1f} to "
    text += f"{h.high * 1e3:.1f})"
    if w.measured:
        text += f" and the contact half-width at {w.value * 1e3:.1f} mm "
        text += f"({w.low * 1e3:.1f} to {w.high * 1e3:.1f})"
    out.print(text + ".")
    c = fitted.closed_form
    if c.measured:
        side = "outside" if c.value >= 0 else "inside"
        out.print(
            f"With tip lines {abs(c.value) * 1e3:.1f} mm {side} the tyres' centre planes the "
            "closed form alone would give the side angles; what tyres and springs cost is in it."
        )
    if fitted.left_out:
        out.print("That is without what does not fit the other angles, which fit each other:")
    elif fitted.outliers:
        out.print("One or more of these cannot be believed, and nothing tells which:")
    for d in fitted.outliers:
        where = f", line {d.line}" if d.line else ""
        out.print(
            f"  {d.label}{where}: {degrees(abs(d.off)):.1f}° {'more' if d.off > 0 else 'less'} "
            f"than the rest allow ({abs(d.by):.1f} sd)"
        )
