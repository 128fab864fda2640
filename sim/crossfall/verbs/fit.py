"""`crossfall fit TRUCK CHANGE...`: the truck with changes made, as a new file."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import console, emit, json_option, truck_argument, warn
from crossfall.verbs.whatif import (
    by_direction,
    changes_option,
    conditions_record,
    hold_of,
    load_with_changes,
    rail_option,
    surface_option,
)

if TYPE_CHECKING:
    from crossfall.truck.build import Loaded
    from crossfall.tuning.changes import Catalogue


@click.command()
@truck_argument
@click.argument("wanted", metavar="CHANGE...", nargs=-1, required=True)
@changes_option
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="The new truck file; TRUCK.fitted.toml if not given. Never overwrites.",
)
@surface_option
@rail_option
@json_option
def command(
    truck: str,
    wanted: tuple[str, ...],
    changes: Path | None,
    output: Path | None,
    surface: str | None,
    rail: bool,
    as_json: bool,
) -> int:
    """Write the truck with changes made to a new file, comments kept.

    CHANGE is a name from the change file, or NAME=3 for three of it. Of a slot NAME finds the best
    place for the weakest heading, and NAME=60% stands so far along it. The old file stays: `sheet
    NEW --before OLD` shows both.
    """
    from crossfall.app.fitted_changes import choice, fitted_text
    from crossfall.truck.build import load_text
    from crossfall.truck.errors import InputError, Problem
    from crossfall.truck.files import write_atomically
    from crossfall.tuning.whatif import best_slots

    loaded, catalogue = load_with_changes(truck, changes)
    asked, free = _asked(catalogue, wanted)
    chosen = choice(catalogue, asked)
    hold = hold_of(rail)
    if free:
        chosen = best_slots(loaded, catalogue, chosen, free, surface, hold)
    path = output or _beside(loaded)
    if path.exists():
        what = "is there already, and nothing is overwritten"
        raise InputError(Problem(str(path), what, "name another with -o"))
    if not path.parent.is_dir():
        raise InputError(Problem(str(path.parent), "there is no such folder"))
    text = loaded.path.read_text(encoding="utf-8-sig")
    words = ", ".join(catalogue.changes[i].counted(n) for i, n in chosen.items())
    head = f"# Fitted: {words}; before: {loaded.path.name}\n"
    text = head + fitted_text(text, loaded, catalogue, chosen)
    new = load_text(text, path)
    write_atomically(path, text)
    record = _answer(loaded, new, catalogue, chosen, surface, rail)
    for said in record["warnings"]:
        warn(said)
    if as_json:
        emit("fit", record)
    else:
        _show(record, truck)
    return 0


def _asked(catalogue: Catalogue, wanted: tuple[str, ...]) -> tuple[dict[str, int], set[int]]:
    """How many of each change by name, and the slots whose place is still to be found."""
    from crossfall.truck.errors import InputError, Problem

    asked: dict[str, int] = {}
    free = set()
    for text in wanted:
        name, _, many = text.rpartition("=") if "=" in text else (text, "", "")
        position = catalogue.position(name)
        change = catalogue.changes[position]
        if change.name in asked:
            raise InputError(Problem("fit", f"'{change.name}' is named twice", "once is enough"))
        count = _count(change, many)
        if count is None:
            how = "tenths of its way, as 60%" if change.slide else "a whole number"
            what = f"'{text}' is no change and number"
            raise InputError(Problem("fit", what, f"after = stands {how}"))
        if change.slide and not many:
            free.add(position)
        asked[change.name] = count
    return asked, free


def _count(change: Any, many: str) -> int | None:
    """Units of a change, of a slot steps of its way; None for what is no such number."""
    if not many:
        return 1
    if change.slide:
        number = many.removesuffix("%")
        if not number.isdecimal() or not 0 < int(number) <= 100:
            return None
        steps = int(number) * change.most / 100
        return int(steps) if steps.is_integer() else None
    return int(many) if many.isdecimal() and int(many) > 0 else None


def _beside(loaded: Loaded) -> Path:
    """Beside the old file, or here for a demo truck."""
    from crossfall.truck.demos import find_demo

    demo = find_demo(loaded.path.stem)
    home = Path.cwd() if demo is not None and demo == loaded.path else loaded.path.parent
    return home / f"{loaded.path.stem}.fitted.toml"


def _answer(
    old: Loaded,
    new: Loaded,
    catalogue: Catalogue,
    chosen: dict[int, int],
    surface: str | None,
    rail: bool,
) -> dict[str, Any]:
    """What was done and what it did, in tuner's units."""
    from crossfall.answers.conditions import choose_grip
    from crossfall.truck.massprops import whole
    from crossfall.tuning.directions import angles
    from crossfall.tuning.whatif import grip_there

    grip, hold = choose_grip(old.truck, surface), hold_of(rail)
    likely = [grip_there(t, grip).likely for t in (old.truck, new.truck)]
    found = angles([old.truck, new.truck], likely, hold)
    return {
        "file": str(new.path),
        "truck": new.truck.name,
        "before": str(old.path),
        "changes": [
            {
                "change": catalogue.changes[i].name,
                "words": catalogue.changes[i].counted(n, catalogue.changes[i].label),
                "quantity": n,
                "price": catalogue.changes[i].cost(n),
            }
            for i, n in chosen.items()
        ],
        "price": sum(catalogue.changes[i].cost(n) for i, n in chosen.items()),
        "currency": catalogue.currency or old.spec.currency,
        "added_mass_g": (whole(new.truck).mass - whole(old.truck).mass) * 1e3,
        **conditions_record(grip, hold),
        "slide_likely_deg": by_direction(found.slide[1]),
        "before_deg": by_direction(found.angle[0]),
        "angle_deg": by_direction(found.angle[1]),
        "warnings": _warnings(old),
    }


def _warnings(old: Loaded) -> list[str]:
    """What the new file cannot know."""
    row = old.spec.remainder
    if row is None:
        return []
    return [
        f"'{old.spec.part[row].name}' is what the scale left of the truck as it was: weigh it "
        "again with these changes. Until then the new file's ± leaves out what the changed parts "
        "may be off by"
    ]


def _show(record: dict[str, Any], truck: str) -> None:
    from rich.markup import escape

    out = console()
    out.print(f"Wrote [bold]{escape(record['file'])}[/bold]:")
    for one in record["changes"]:
        out.print(f"  {escape(one['words'])}, {one['price']:g}")
    money = f"{record['price']:g} {record['currency']}".rstrip()
    added = signed_figures(record["added_mass_g"], 0)
    out.print(f"{money}, {added} g; on {escape(record['surface'])}:")
    names = {"worst": "weakest heading"}
    for name, after in record["angle_deg"].items():
        was = record["before_deg"][name]
        gained = signed_figures(after - was, 1)
        out.print(f"  {names.get(name, name)} {was:.1f}° -> {after:.1f}° ({gained})")
    out.print(f"crossfall sheet {escape(record['file'])} --before {escape(truck)}")
