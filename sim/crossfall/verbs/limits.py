"""`crossfall limits TRUCK FILE`: does the truck keep to a class's limits?"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument

if TYPE_CHECKING:
    from crossfall.tuning.limits import Breach


@click.command()
@truck_argument
@click.argument("limits", metavar="FILE", type=click.Path(path_type=Path))
@json_option
def command(truck: str, limits: Path, as_json: bool) -> int:
    """Does the truck keep to the limits of a class? Exit status 1 where one is broken."""
    from crossfall.tuning.limits import breaches, details, read_limits

    loaded = load_and_warn(truck)
    asked = read_limits(limits)
    found = breaches(asked, loaded.truck, loaded.spec)
    if as_json:
        there = sorted(details(loaded.spec))
        emit(
            "limits",
            {
                "truck": loaded.truck.name,
                "class": asked.name,
                "broken": breach_records(found),
                "details": there,
            },
        )
    else:
        from rich.markup import escape

        out = console()
        head = f"[bold]{escape(loaded.truck.name)}[/bold] in {escape(asked.name)}: "
        out.print(head + ("keeps to every limit" if not found else f"{len(found)} broken"))
        for breach in found:
            out.print(f"  {escape(breach.sentence)}")
    return 1 if found else 0


def breach_records(found: tuple[Breach, ...]) -> list[dict[str, Any]]:
    """Broken limits, each in the unit of its name."""
    return [
        {"limit": b.name, "value": b.value, "allowed": b.limit, "words": b.sentence} for b in found
    ]
