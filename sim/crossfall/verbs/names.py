"""`crossfall names`: what there is to ask for in Python, and what each key of an answer means."""

from __future__ import annotations

from pathlib import Path

import click

from crossfall.verbs.common import console, emit, json_option


@click.command()
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Write all of it, with the docstrings, as one HTML page.",
)
@json_option
def command(output: Path | None, as_json: bool) -> None:
    """Every name of the Python front door, and every key of an answer, with its meaning."""
    from crossfall.answers.keys import KEYS
    from crossfall.front.reference import public_names, reference_page
    from crossfall.truck.files import write_atomically

    names = public_names()
    if output is not None:
        write_atomically(output, reference_page())
    if as_json:
        keys = {k.name: {"form": k.form, "meaning": k.meaning} for k in KEYS}
        python = {n: {"arguments": s, "about": text} for n, (s, text) in names.items()}
        emit("names", {"keys": keys, "python": python})
    elif output is not None:
        click.echo(f"wrote {output}")
    else:
        _show({n: text.partition("\n\n")[0].replace("\n", " ") for n, (_, text) in names.items()})
        _show({k.name: k.meaning for k in KEYS})


def _show(lines: dict[str, str]) -> None:
    from rich.table import Table

    table = Table(box=None, show_header=False, padding=(0, 2, 0, 0))
    for name, words in lines.items():
        table.add_row(name, words)
    out = console()
    out.print(table, markup=False)
    out.print()
