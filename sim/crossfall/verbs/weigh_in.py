"""`crossfall weigh-in READINGS`: mass and CG of the real truck from a kitchen scale."""

from __future__ import annotations

from math import isfinite
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, warn

if TYPE_CHECKING:
    from crossfall.measurement.weigh_in import Weighing
    from crossfall.measurement.weigh_in_next import ReadingPlan
    from crossfall.measurement.weigh_in_session import Session

_NAMES = ("mass_g", "cg_x_mm", "cg_y_mm", "cg_z_mm")
_WORDS = ("mass, g", "CG ahead of the middle, mm", "CG left of the middle, mm", "CG height, mm")


@click.command()
@click.argument("readings", metavar="READINGS", type=click.Path(path_type=Path))
@click.option("--truck", metavar="TRUCK", help="Take lengths and springs from this chassis file.")
@click.option("--next", "most", type=click.IntRange(0), default=5, show_default=True,
              help="How many further readings to suggest.")  # fmt: skip
@json_option
def command(readings: Path, truck: str | None, most: int, as_json: bool) -> int:
    """Mass and CG from scale readings, with their uncertainty, and what to measure next.

    READINGS is a small file: the guide verb shows how to take the readings and what to write.
    """
    from crossfall.measurement.weigh_in_file import read_session
    from crossfall.measurement.weigh_in_next import next_readings
    from crossfall.truck.build import load_truck

    real = load_truck(truck).truck if truck else None
    session = read_session(readings, real)
    found = weighing_of(session)
    plan = next_readings(session)
    for text in found.warnings:
        warn(text)
    if as_json:
        emit("weigh-in", weigh_in_record(found, plan, most))
    else:
        _show(found, plan, most)
    return 1 if found.outliers else 0


def weighing_of(session: Session) -> Weighing:
    """What the readings say. Raises InputError where they say too little."""
    from crossfall.measurement.weigh_in import weigh_in
    from crossfall.truck.errors import InputError, Problem

    try:
        return weigh_in(session)
    except ValueError as error:
        allowed = "weigh both axles, both sides, all four wheels, or the whole truck"
        raise InputError(Problem(session.file, str(error), allowed)) from None


def weigh_in_record(found: Weighing, plan: ReadingPlan, most: int) -> dict[str, Any]:
    """The weighing in tuner's units, a quantity nothing bears on null throughout, and the `most`
    useful readings to take next."""
    out: dict[str, Any] = {}
    for name, e in zip(_NAMES, found.estimates, strict=True):
        out[name] = {
            "value": e.value * 1e3,
            "u": e.u * 1e3,
            "low_95": e.low * 1e3,
            "high_95": e.high * 1e3,
            "degrees_of_freedom": e.dof,
        }
    return out | {
        "budget": [
            {"cause": cause, **{f"u_{n}": u * 1e3 for n, u in zip(_NAMES, us, strict=True)}}
            for cause, us in found.budget
        ],
        "scatter_g": found.scatter * 1e3,
        "scatter_degrees_of_freedom": found.scatter_dof,
        "chi_square": found.chi_square,
        "redundancy": found.redundancy,
        "outliers": [
            {"reading": d.label, "line": d.line, "off_g": d.off * 1e3, "sd": d.by}
            for d in found.outliers
        ],
        "warnings": list(found.warnings),
        **advice(plan, most),
    }


def advice(plan: ReadingPlan, most: int) -> dict[str, Any]:
    """What limits the tip angle, and what to do next."""
    names = dict(zip(("mass", "x", "y", "z"), _NAMES, strict=True))
    return {
        "worst": names[plan.worst],
        "next": [
            {
                "do": a.what,
                "times_better": a.gain,
                **{f"u_{n}": u * 1e3 for n, u in zip(_NAMES, a.after, strict=True)},
            }
            for a in plan.advice[:most]
        ],
    }


def _show(found: Weighing, plan: ReadingPlan, most: int) -> None:
    from rich.table import Table

    out = console()
    table = Table(box=None, title="On the scales", title_justify="left")
    table.add_column("")
    for name in ("", "±  (95 %)", "from", "to"):
        table.add_column(name, justify="right")
    for words, e in zip(_WORDS, found.estimates, strict=True):
        if e.measured:
            half = (e.high - e.low) / 2
            values = [f"{v * 1e3:.1f}" for v in (e.value, half, e.low, e.high)]
            table.add_row(words, *values)
        else:
            table.add_row(words, "not measured")
    out.print(table)
    scatter = f"{found.scatter * 1e3:.1f} g" if found.scatter_dof else "not known, no repeats"
    out.print(f"Placing the truck again changes a reading by {scatter} (one sd).")
    if found.outliers:
        one = "This reading" if len(found.outliers) == 1 else "One or more of these"
        out.print(f"{one} cannot be believed:")
    for d in found.outliers:
        where = f", line {d.line}" if d.line else ""
        which = f"{abs(d.off) * 1e3:.0f} g {'more' if d.off > 0 else 'less'}"
        out.print(f"  {d.label}{where}: {which} than the rest allow ({abs(d.by):.1f} sd)")
    _show_advice(found, plan, most)


def _show_advice(found: Weighing, plan: ReadingPlan, most: int) -> None:
    from rich.table import Table

    index = ("mass", "x", "y", "z").index(plan.worst)
    limit = found.estimates[index]
    now = f"± {limit.u * 1e3:.2f} (one sd)" if isfinite(limit.u) else "not measured"
    if not plan.advice or not most:
        return
    out = console()
    out.print(f"\nWhat limits the tip angle most: {_WORDS[index]}, {now}. What would help:")
    table = Table(box=None, show_header=False)
    for a in plan.advice[:most]:
        if a.gain > 1.005:
            table.add_row(f"± {a.after[index] * 1e3:.2f}", a.what)
    out.print(table)
