"""`crossfall whatif TRUCK`: every change alone, what it buys and what it costs."""

from __future__ import annotations

from math import degrees, isfinite
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument, warn
from crossfall.verbs.limits import told

if TYPE_CHECKING:
    from crossfall.truck.build import Loaded
    from crossfall.tuning.changes import Catalogue
    from crossfall.tuning.effects import Effects
    from crossfall.tuning.whatif import Outcome, Ranking

# field of Effects: key in the answer, factor, words in the table, decimals
EFFECTS = {
    "mass": ("mass_g", 1e3, "mass, g", 0),
    "sprung": ("sprung_g", 1e3, "sprung, g", 0),
    "unsprung": ("unsprung_g", 1e3, "unsprung, g", 0),
    "front_share": ("front_share_percent", 1e2, "front share, %", 1),
    "cg_height": ("cg_height_mm", 1e3, "CG height, mm", 1),
    "spin_inertia": ("wheel_spin_inertia_kg_mm2", 1e6, "wheel spin inertia, kg mm²", 0),
    "rotating_mass": ("wheel_rotating_mass_g", 1e3, "weight to the throttle, g", 0),
    "steer_inertia": ("wheel_steer_inertia_kg_mm2", 1e6, "wheel inertia to the servo, kg mm²", 0),
    "width": ("width_mm", 1e3, "outside width, mm", 1),
    "wheelbase": ("wheelbase_mm", 1e3, "wheelbase, mm", 1),
    "approach": ("approach_deg", degrees(1), "approach, °", 1),
    "breakover": ("breakover_deg", degrees(1), "breakover, °", 1),
    "departure": ("departure_deg", degrees(1), "departure, °", 1),
    "turning_circle": ("turning_circle_mm", 1e3, "turning circle, mm", 0),
    "run_time": ("run_time_min", 1 / 60, "run time, min", 1),
}

changes_option = click.option(
    "--changes",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="The change file; TRUCK.changes.toml beside the truck if not given.",
)

limits_option = click.option(
    "--limits",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="A class's limits to keep to.",
)


@click.command()
@truck_argument
@changes_option
@click.option(
    "--aim",
    type=click.Choice(["side", "climb", "descent", "worst"]),
    default="side",
    show_default=True,
    help="Which angle to rank by; worst is the weakest of eight headings.",
)
@limits_option
@json_option
def command(truck: str, changes: Path | None, aim: Any, limits: Path | None, as_json: bool) -> None:
    """What would each change do, one at a time: degrees, grams, money, side effects.

    Angles are compliant, with the least friction everywhere, so that differences are the
    changes' own. A change that requires another is shown on top of it. An equals sign marks a
    tie: closer than the uncertainty of masses and places can tell.
    """
    from crossfall.tuning.limits import read_limits
    from crossfall.tuning.whatif import what_if

    loaded, catalogue = load(truck, changes)
    found = what_if(loaded, catalogue, aim, read_limits(limits) if limits else None)
    for i, reason in found.impossible:
        warn(f"'{catalogue.changes[i].name}' left out: {reason}")
    if as_json:
        emit("whatif", answer(loaded, catalogue, found))
    else:
        _show(loaded, catalogue, found)


def load(truck: str, changes: Path | None) -> tuple[Loaded, Catalogue]:
    """The truck and the changes that fit it. Raises InputError."""
    loaded = load_and_warn(truck)
    return loaded, catalogue_of(loaded, changes)


def catalogue_of(loaded: Loaded, changes: Path | None) -> Catalogue:
    """The changes that fit a truck, from the file beside it if none is named. Raises InputError."""
    from crossfall.truck.problems import InputError, Problem
    from crossfall.tuning.apply import check_fit
    from crossfall.tuning.changes import beside, read_changes

    path = changes or beside(loaded.path)
    if changes is None and not path.exists():
        what = f"there is no change file beside {loaded.path.name}"
        raise InputError(Problem(str(path), what, "write one, or name it with --changes"))
    catalogue = read_changes(path)
    check_fit(catalogue, loaded)
    return catalogue


def answer(loaded: Loaded, catalogue: Catalogue, found: Ranking) -> dict[str, Any]:
    """The ranking in tuner's units."""
    return {
        "truck": loaded.truck.name,
        "currency": catalogue.currency or loaded.spec.currency,
        "aim": found.aim,
        "closure": "uniform",
        "now_deg": by_direction(found.now),
        "now": effect_keys(found.effects),
        "changes": [_entry(catalogue, o) for o in found.outcomes],
        "impossible": [
            {"change": catalogue.changes[i].name, "reason": reason}
            for i, reason in found.impossible
        ],
    }


def _entry(catalogue: Catalogue, o: Outcome) -> dict[str, Any]:
    change = catalogue.changes[o.change]
    return {
        "place": o.place,
        "change": change.name,
        "label": change.label,
        "quantity": o.many,
        "on_top_of": [catalogue.changes[i].name for i in o.on_top_of],
        "price": o.price,
        "angle_deg": by_direction(o.angle),
        "gain_deg": by_direction(o.gain),
        "gain_sd_deg": by_direction(o.gain_sd),
        "gain_deg_per_100g": by_direction(o.per_100g),
        "gain_deg_per_money": by_direction(o.per_money),
        "side_effects": effect_keys(o.side),
        "words": o.words,
        "breaks": told(o.breaches),
    }


def by_direction(values: Any) -> dict[str, float]:
    """(4,) rad as degrees by the name of the direction."""
    from crossfall.tuning.directions import DIRECTIONS

    return {name: degrees(v) for name, v in zip(DIRECTIONS, values, strict=True)}


def effect_keys(effects: Effects) -> dict[str, float]:
    """Effects in tuner's units, with the unit in the key."""
    return {key: getattr(effects, f) * factor for f, (key, factor, _, _) in EFFECTS.items()}


def side_words(side: Effects, most: int = 9) -> str:
    """What else changes, in a few words; what hardly changes is left out."""
    found = []
    for field, (_, factor, words, decimals) in EFFECTS.items():
        value = getattr(side, field) * factor
        if isfinite(value) and round(abs(value), decimals) > 0 and field != "sprung":
            name, _, unit = words.partition(", ")
            found.append(f"{name} {value:+.{decimals}f} {unit}".replace("-", "−"))
    return ", ".join(found[:most]) if found else "nothing else"


def _number(value: float, decimals: int = 2) -> str:
    if not isfinite(value):
        return ""
    return f"{round(value, decimals) + 0.0:+.{decimals}f}".replace("-", "−")


def _show(loaded: Loaded, catalogue: Catalogue, found: Ranking) -> None:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.tuning.directions import DIRECTIONS

    out = console()
    money = catalogue.currency or loaded.spec.currency or "money"
    now = ", ".join(
        f"{name} {degrees(v):.1f}°" for name, v in zip(DIRECTIONS, found.now, strict=True)
    )
    out.print(f"[bold]{escape(loaded.truck.name)}[/bold] now: {now}")
    aim = DIRECTIONS.index(found.aim)
    shown = [i for i, name in enumerate(DIRECTIONS) if name != "worst" or found.aim == "worst"]
    table = Table(title=f"One change at a time, ranked by {found.aim}, degrees", box=None)
    table.title_justify = "left"
    table.add_column("")
    table.add_column("change", min_width=18)
    names = [DIRECTIONS[i] for i in shown]
    for name in (*names, "±", "per 100 g", f"per 10 {money}", money, "g"):
        table.add_column(name, justify="right")
    last = 0
    for o in found.outcomes:
        change = catalogue.changes[o.change]
        many = f"{o.many} × " if o.many > 1 else ""
        extra = ", on " + ", ".join(catalogue.changes[i].name for i in o.on_top_of)
        table.add_row(
            "=" if o.place == last else str(o.place),
            escape(many + change.name + (extra if o.on_top_of else "")),
            *(_number(degrees(o.gain[i])) for i in shown),
            f"{degrees(o.gain_sd[aim]):.2f}",
            _number(degrees(o.per_100g[aim])),
            _number(10 * degrees(o.per_money[aim])) if o.price else "free",
            f"{o.price:g}",
            _number(o.side.mass * 1e3, 0),
        )
        last = o.place
    out.print(table)
    for o in found.outcomes:
        broken = [f"outside the class: {b.sentence}" for b in o.breaches]
        words = "".join(f"{w}; " for w in (o.words, *broken) if w)
        change = catalogue.changes[o.change]
        head = f"[bold]{escape(change.name)}[/bold] ({escape(change.label)})"
        out.print(f"{head}: {escape(words + side_words(o.side))}")
    out.print(
        "=: a tie, closer than the tolerances of masses and places can tell (95 %). "
        "Compliant, least friction; the tilt verb shows the window."
    )
