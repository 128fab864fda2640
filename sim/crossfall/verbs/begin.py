"""`crossfall begin NAME`: a first truck file from what scale, ruler and block say."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.measurement.readings import FURTHER, QUESTIONS
from crossfall.verbs.common import console, emit, json_option, warn

_SHOWN = 4  # further readings
_CAUTIONS = (
    "Lithium packs: take the pack out, or insulate and secure it, before you lift, raise or turn "
    "the truck.",
    "A truck on a block can roll off: chock the lower wheels, keep the block in the bench's middle "
    "and fingers away.",
)


def _options(command: Callable[..., Any]) -> Callable[..., Any]:
    """An option for every reading."""
    kinds: dict[str, Any] = {"mm": float, "g": float, "yes or no": bool}
    for q in reversed((*QUESTIONS, *FURTHER)):
        kind = kinds.get(q.kind, str)
        text = q.words + (f": {q.hint}" if q.hint else "")
        metavar = {"place": "X,Y,Z"}.get(q.kind)
        name = "--" + q.key.replace("_", "-")
        command = click.option(name, q.key, type=kind, metavar=metavar, help=text)(command)
    return command


@click.command()
@click.argument("name", metavar="NAME")
@click.option(
    "--readings",
    "source",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Take readings from this file; options beside it count.",
)
@click.option(
    "--again",
    is_flag=True,
    help="Make NAME.toml anew from NAME.readings.toml and the options beside it.",
)
@_options
@json_option
def command(name: str, source: Path | None, again: bool, as_json: bool, **options: Any) -> int:
    """A first truck file from a dozen readings of scale, ruler and block.

    Asks for them on a terminal; options or a file answer beforehand. Writes NAME.toml, a few lumps
    that give every reading back, and NAME.readings.toml, and says which further reading would
    narrow the tip angle's range most.

    Take a lithium pack out, or insulate and secure it, before you lift, raise or turn the truck;
    chock the lower wheels of a truck on a block.
    """
    from crossfall.measurement import begin_files as files
    from crossfall.measurement.readings import missing
    from crossfall.truck.read import read_source

    path, kept = files.begin_paths(name, again)
    given = {k: _tidy(_value(k, v)) for k, v in options.items() if v is not None}
    source = kept if again and source is None else source
    data = {**({} if source is None else read_source(source, str(source)).data), **given}
    if missing(data) and sys.stdin.isatty() and not as_json:
        _ask(data)
    begun, loaded = files.begin_files(path, kept, data, source, again)
    for text in files.askew(begun):
        warn(text)
    record = files.begin_answer(begun, loaded, path, kept)
    if as_json:
        emit("begin", record)
    else:
        _show(record, path)
    return 0


def _value(key: str, value: Any) -> Any:
    from crossfall.measurement.begin_files import reading_typed, wanted
    from crossfall.truck.errors import InputError, Problem

    question = next(q for q in (*QUESTIONS, *FURTHER) if q.key == key)
    try:
        return reading_typed(question, value)
    except ValueError:
        option = "--" + key.replace("_", "-")
        what = f"is {str(value)[:40]!r}"
        raise InputError(Problem(option, what, f"it must be {wanted(question)}")) from None


def _tidy(value: Any) -> Any:
    return int(value) if isinstance(value, float) and value.is_integer() else value


def _ask(data: dict[str, Any]) -> None:
    """Every question not answered yet, one by one; an empty line leaves a reading out."""
    from crossfall.measurement.begin_files import accepted_reading
    from crossfall.truck.errors import InputError

    for text in (*_CAUTIONS, "An empty line leaves out what may be left out."):
        click.echo(text, err=True)
    for q in QUESTIONS:
        if q.key in data or (q.after and data.get(q.after) is None):
            continue
        unit = f", {q.kind}" if q.kind in ("mm", "g") else ""
        hint = f" ({q.hint})" if q.hint else ""
        while q.key not in data:
            typed = click.prompt(f"{q.words}{unit}{hint}", default="", show_default=False, err=True)
            if not typed.strip():
                if not q.needed:
                    break
                click.echo("This one is needed.", err=True)
                continue
            try:
                data[q.key] = accepted_reading(q, typed)
            except InputError as error:
                click.echo(f"{error.problems[0].what}.", err=True)


def _show(record: dict[str, Any], path: Path) -> None:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.answers.conditions import case_name

    out = console()
    x, y, z = record["cg_mm"]
    out.print(f"Wrote [bold]{escape(str(path))}[/bold] and {escape(record['readings_file'])}.")
    off = record["cg_pm_mm"]
    ahead, left = signed_figures(x, 1), signed_figures(y, 1)
    out.print(
        f"{record['mass_g']:.0f} ± {record['mass_pm_g']:.0f} g; CG {ahead} ± {off[0]:.1f} mm "
        f"ahead of mid-wheelbase, {left} ± {off[1]:.1f} to the left, {z:.1f} ± {off[2]:.1f} up "
        "(95 %)."
    )
    table = Table(box=None, title="Tips at, degrees, 95 % range", title_justify="left")
    for name in ("heading", "", "tips", "from", "to"):
        table.add_column(name, justify="left" if not name else "right")
    for row in record["headings"]:
        low, high = row["compliant_range_deg"]
        angle = f"{row['compliant_deg']:.1f}"
        angle = f"\\[{angle}]" if row["slides_first"] else angle
        table.add_row(f"{row['heading_deg']:.0f}", case_name(row["heading_deg"]), angle,
                      f"{low:.1f}", f"{high:.1f}")  # fmt: skip
    out.print(table)
    if any(row["slides_first"] for row in record["headings"]):
        out.print(
            "\\[ ]: it slides first on most ground; the angle is what it does against a rail."
        )
    out.print(f"Typical, not measured: {', '.join(record['typical'])}.")
    if record["next"]:
        out.print("What to measure next, by how much it narrows ± for its minutes:")
    for a in record["next"][:_SHOWN]:
        keys = " ".join("--" + k.replace("_", "-") + " .." for k in a["readings"])
        gain = f"{a['narrows_pm_deg']:.2f}° in {a['minutes']:g} min"
        out.print(f"  {gain}: {escape(a['do'])}; begin {escape(path.stem)} --again {keys}")
