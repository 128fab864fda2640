"""`crossfall keys [WORD]`: every key of a truck file and every material, in words, with units."""

from __future__ import annotations

from typing import Any

import click

from crossfall.verbs.common import console, emit, json_option


@click.command()
@click.argument("word", metavar="[WORD]", required=False, default="")
@json_option
def command(word: str, as_json: bool) -> int:
    """Every key of a truck file, and every material, with meaning and unit.

    WORD leaves only what has it in its name or meaning. Exit status 1 where nothing has.
    """
    from crossfall.truck.glossary import entries
    from crossfall.truck.materials import MATERIALS

    wanted = word.casefold()
    keys = [e for e in entries() if wanted in f"{e.table} {e.key} {e.meaning}".casefold()]
    materials = [m for m in MATERIALS.values() if wanted in f"material {m.name}".casefold()]
    if as_json:
        emit("keys", _answer(keys, materials))
    else:
        _show(keys, materials)
    return 0 if keys or materials else 1


def _answer(keys: list[Any], materials: list[Any]) -> dict[str, Any]:
    return {
        "keys": [
            {
                "table": e.table,
                "key": e.key,
                "unit": e.unit,
                "meaning": e.meaning,
                "needed": e.needed,
            }
            for e in keys
        ],
        "materials": [
            {"name": m.name, "density_g_cm3": m.density / 1000, "source": m.source}
            for m in materials
        ],
    }


def _show(keys: list[Any], materials: list[Any]) -> None:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.truck.glossary import TABLES

    out = console()
    for name, _, words in TABLES:
        rows = [e for e in keys if e.table == name]
        if not rows:
            continue
        head = f"\\[{escape(name)}] {words}" if name else words
        table = Table(box=None, show_header=False, title=head, title_justify="left")
        for e in rows:
            table.add_row("*" if e.needed else "", e.key, e.unit, e.meaning)
        out.print(table)
    if keys:
        out.print("*: needed where its table is. Prices and tolerances are for one piece.\n")
    if materials:
        table = Table(box=None, title="Materials, g/cm³", title_justify="left", show_header=False)
        for m in materials:
            table.add_row(m.name, f"{m.density / 1000:g}", m.source)
        out.print(table)
    if not keys and not materials:
        out.print("No key and no material has that in its name or meaning.")
