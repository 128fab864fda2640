"""`crossfall sheet TRUCK`: one printable page to hand over."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import emit, json_option, load_and_warn, truck_argument
from crossfall.verbs.whatif import (
    catalogue_of,
    changes_option,
    hold_of,
    rail_option,
    surface_option,
)

if TYPE_CHECKING:
    from crossfall.show.sheet.changes import Difference
    from crossfall.show.sheet.facts import Build, Facts
    from crossfall.tuning.changes import Catalogue


@click.command()
@truck_argument
@click.option("--before", metavar="OTHER", help="The truck as it was: a file or a demo truck.")
@click.option(
    "--with",
    "made",
    multiple=True,
    metavar="CHANGE",
    help="Make this change first, and compare with the truck as it is; 'NAME x 2' makes it twice.",
)
@changes_option
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Where to write it, .html or .pdf; NAME-sheet.html if not given.",
)
@surface_option
@rail_option
@click.option("--date", default="", metavar="TEXT", help="A date, or any line, to print on it.")
@json_option
def command(
    truck: str,
    before: str | None,
    made: tuple[str, ...],
    changes: Path | None,
    output: Path | None,
    surface: str | None,
    rail: bool,
    date: str,
    as_json: bool,
) -> None:
    """Write a set-up sheet: one A4 page for the wall, or for a customer.

    Drawings to scale, weights, tips by direction, what was changed since OTHER and what it cost,
    a tilt-board card to prove it, and the cautions. With changes named by --with, what it cost is
    what `plan` counts, else the prices of parts in the two files. With --json and no -o nothing is
    written.
    """
    from crossfall.show.sheet.facts import fitted_truck, gather
    from crossfall.show.sheet.write import check_target, write_sheet

    if output is not None:
        check_target(output)
    if made and before is not None:
        raise click.UsageError("--with compares with the truck as it is: leave --before out")
    now = load_and_warn(truck)
    old = load_and_warn(before) if before is not None else None
    more: dict[str, Any] = {}
    if made:
        catalogue = catalogue_of(now, changes)
        old = now
        now, more["bought"] = fitted_truck(old, catalogue, _chosen(catalogue, made))
        more["currency"] = catalogue.currency or old.spec.currency
    facts = gather(now, old, surface, date, hold=hold_of(rail), **more)
    path = output or Path(f"{facts.now.truck.name.replace('/', '-')}-sheet.html")
    if output is not None or not as_json:
        write_sheet(facts, path)
    if as_json:
        emit("sheet", {**_answer(facts), "files": [] if output is None else [str(path)]})
    else:
        click.echo(f"wrote {path}")


def _chosen(catalogue: Catalogue, made: tuple[str, ...]) -> dict[int, int]:
    """Changes by name, each perhaps with ' x 2'. Raises InputError for what may not be made."""
    from crossfall.truck.errors import InputError, Problem
    from crossfall.tuning.apply import objections

    found: dict[int, int] = {}
    for text in made:
        name, _, many = text.rpartition(" x ")
        times = int(many) if name and many.isdecimal() else 1
        i = catalogue.position(name if name and many.isdecimal() else text)
        found[i] = found.get(i, 0) + times
    if why := objections(catalogue, found):
        raise InputError(Problem(catalogue.source.file, sentence) for sentence in why)
    return dict(sorted(found.items()))


def _answer(facts: Facts) -> dict[str, Any]:
    """All numbers of the sheet in tuner's units."""
    from crossfall.answers.keys import report

    changed = facts.changed
    return {
        "truck": facts.now.truck.name,
        "before": _build(facts.before) if facts.before is not None else None,
        "now": _build(facts.now),
        "changed": None
        if changed is None
        else {
            "mass_g": changed.mass * 1e3,
            "parts_price": changed.price,
            "parts_price_put_on": changed.put_on,
            "parts_price_taken_off": changed.taken_off,
            "currency": changed.currency,
            "parts": [_difference(d) for d in changed.parts],
            "dimensions": [_difference(d) for d in changed.dimensions],
        },
        "bought": None if not facts.bought else _bought(facts),
        "board": report(facts.board),
    }


def _bought(facts: Facts) -> dict[str, Any]:
    return {
        "price": sum(b.price for b in facts.bought),
        "currency": facts.currency,
        "changes": [
            {"label": b.label, "quantity": b.many, "mass_g": b.mass * 1e3, "price": b.price}
            for b in facts.bought
        ],
    }


def _build(build: Build) -> dict[str, Any]:
    """Weights, and the tips on the eight ways and on the weakest heading, last."""
    from crossfall.answers.keys import report
    from crossfall.verbs import weigh

    weights = weigh.weigh_record(build.truck, build.weight, 0)
    extras = {
        "width_mm": build.extras.width * 1e3,
        "turning_circle_mm": build.extras.turning_circle * 1e3,
        "run_time_min": build.extras.run_time / 60.0,
    }
    return {"weights": {**weights, **extras}, "tips": report(build.tips)}


def _difference(d: Difference) -> dict[str, Any]:
    return {"what": d.what, "how": d.how, "mass_g": d.mass * 1e3, "price": d.price}
