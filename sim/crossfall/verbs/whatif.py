"""`crossfall whatif TRUCK`: every change alone, what it buys and what it costs."""

from __future__ import annotations

from collections.abc import Sequence
from math import degrees, isfinite
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import (
    console,
    emit,
    json_option,
    load_and_warn,
    say_how_it_stands,
    standing_options,
    stood,
    truck_argument,
    warn,
)
from crossfall.verbs.limits import breach_records

if TYPE_CHECKING:
    from crossfall.answers.conditions import Hold
    from crossfall.truck.build import Loaded
    from crossfall.truck.model import Grip
    from crossfall.tuning.changes import Catalogue
    from crossfall.tuning.effects import Effects
    from crossfall.tuning.whatif import ChangeOutcome, Ranking

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


surface_option = click.option(
    "--surface", metavar="NAME", help="Which [grip] of the file; its first if not given."
)

rail_option = click.option("--rail", is_flag=True, help="Hold the downhill tyres with a trip rail.")


@click.command()
@truck_argument
@changes_option
@click.option(
    "--aim",
    type=click.Choice(["side", "climb", "descent", "worst"]),
    default="side",
    show_default=True,
    help="Which angle to rank by: the weaker side, climb, descent, or the weakest heading of all.",
)
@surface_option
@rail_option
@standing_options
@limits_option
@json_option
def command(
    truck: str,
    changes: Path | None,
    aim: Any,
    surface: str | None,
    rail: bool,
    hold: str | None,
    steer: float | None,
    limits: Path | None,
    as_json: bool,
) -> None:
    """What would each change do, one at a time: degrees, grams, money, side effects.

    Tip angles on springs and tyres at the surface's own grip, as `tilt` has them; where the truck
    slides first, what it would do against a rail. A change that requires another is shown on top
    of it. What turns with the grip, or with how the tyres give along the ground, is marked.
    """
    from crossfall.truck.complete import how_it_stands
    from crossfall.tuning.limits import read_limits
    from crossfall.tuning.whatif import rank_changes

    loaded = stood(load_and_warn(truck), hold, steer)
    catalogue = catalogue_of(loaded, changes)
    found = rank_changes(
        loaded,
        catalogue,
        aim,
        read_limits(limits) if limits else None,
        surface=surface,
        hold=hold_of(rail or hold == "rail"),
    )
    for i, reason in found.impossible:
        warn(f"'{catalogue.changes[i].name}' left out: {reason}")
    if as_json:
        stands = {"stands": list(how_it_stands(loaded.spec))}
        emit("whatif", {**ranking_record(loaded, catalogue, found), **stands})
    else:
        _show(loaded, catalogue, found)
        say_how_it_stands(loaded.spec)


def hold_of(rail: bool) -> Hold:
    return "rail" if rail else "brakes"


def load_with_changes(truck: str, changes: Path | None) -> tuple[Loaded, Catalogue]:
    """The truck and the changes that fit it. Raises InputError."""
    loaded = load_and_warn(truck)
    return loaded, catalogue_of(loaded, changes)


def catalogue_of(loaded: Loaded, changes: Path | None) -> Catalogue:
    """The changes that fit a truck, from the file beside it if none is named. Raises InputError."""
    from crossfall.truck.errors import InputError, Problem
    from crossfall.tuning.apply import check_fit
    from crossfall.tuning.changes import change_file_of, read_changes

    path = changes or change_file_of(loaded.path)
    if changes is None and not path.exists():
        what = f"there is no change file beside {loaded.path.name}"
        raise InputError(Problem(str(path), what, "write one, or name it with --changes"))
    catalogue = read_changes(path)
    check_fit(catalogue, loaded)
    return catalogue


def ranking_record(loaded: Loaded, catalogue: Catalogue, found: Ranking) -> dict[str, Any]:
    """The ranking in tuner's units."""
    return {
        "truck": loaded.truck.name,
        "currency": catalogue.currency or loaded.spec.currency,
        "aim": found.aim,
        **conditions_record(found.grip, found.hold),
        "slide_likely_deg": by_direction(found.now_slide),
        "now_deg": by_direction(found.now),
        "heading_deg": by_direction(found.now_heading),
        "slides_first": named_directions(found.now_slides),
        "now": effect_keys(found.effects),
        "corners": [{"at": c.kind, "words": c.words} for c in found.corners],
        "changes": [_entry(catalogue, found, o) for o in found.outcomes],
        "impossible": [
            {"change": catalogue.changes[i].name, "reason": reason}
            for i, reason in found.impossible
        ],
    }


def conditions_record(grip: Grip, hold: Hold) -> dict[str, Any]:
    """What the angles are for, under the same keys as `tilt` has them."""
    return {
        "surface": grip.surface,
        "grip": grip.likely,
        "grip_range": {"low": grip.low, "likely": grip.likely, "high": grip.high},
        "hold": hold,
    }


def _entry(catalogue: Catalogue, found: Ranking, o: ChangeOutcome) -> dict[str, Any]:
    from crossfall.tuning.directions import SURE

    change, kinds = catalogue.changes[o.change], [c.kind for c in found.corners]
    return {
        "place": o.place,
        "change": change.name,
        "label": change.label,
        "quantity": o.many,
        "on_top_of": [catalogue.changes[i].name for i in o.on_top_of],
        "price": o.price,
        "before_deg": by_direction(o.was),
        "angle_deg": by_direction(o.angle),
        "heading_deg": by_direction(o.heading),
        "slides_first": named_directions(o.slides),
        "gain_deg": by_direction(o.gain),
        "gain_pm_deg": by_direction(SURE * o.gain_sd),
        "gain_deg_at": {k: by_direction(g) for k, g in zip(kinds, o.corners, strict=True)},
        "sign_turns": named_directions(o.turns),
        "place_at": dict(zip(kinds, o.places, strict=True)),
        "overtaken_by": [
            {"at": kinds[c], "change": catalogue.changes[i].name} for c, i in o.overtaken
        ],
        "gain_deg_per_100g": by_direction(o.per_100g),
        "gain_deg_per_money": by_direction(o.per_money),
        "side_effects": effect_keys(o.side),
        "words": o.words,
        "breaks": breach_records(o.breaches),
    }


def named_directions(values: Any) -> dict[str, Any]:
    """(4,) values by the name of the direction."""
    from crossfall.tuning.directions import DIRECTIONS

    return dict(zip(DIRECTIONS, (v.item() for v in values), strict=True))


def by_direction(values: Any) -> dict[str, float]:
    """(4,) rad as degrees by the name of the direction."""
    return {name: degrees(v) for name, v in named_directions(values).items()}


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
            found.append(f"{name} {signed_figures(value, decimals)} {unit}")
    return ", ".join(found[:most]) if found else "nothing else"


def _number(value: float, decimals: int = 2) -> str:
    return signed_figures(value, decimals) if isfinite(value) else ""


def sentence_list(names: Sequence[str]) -> str:
    """As a list in a sentence."""
    return " and ".join(p for p in (", ".join(names[:-1]), *names[-1:]) if p)


def now_words(
    grip: Grip, hold: Hold, angles: Any, headings: Any, slide: Any, slides: Any
) -> list[str]:
    """Where the truck stands now: a line of angles, and one about sliding where it slides first.

    angles, headings, slide (rad, where it slides or rolls away) and slides are (4,).
    """
    from crossfall.tuning.directions import DIRECTIONS

    said = []
    railed: dict[str, list[str]] = {}
    for k, name in enumerate(DIRECTIONS):
        where = f" (heading {degrees(headings[k]):.0f})" if name == "worst" else ""
        said.append(f"{'weakest' if name == 'worst' else name} {degrees(angles[k]):.1f}°{where}")
        if slides[k]:
            words = "the weakest heading" if name == "worst" else f"the {name}"
            railed.setdefault(f"{degrees(slide[k]):.0f}°", []).append(words)
    how = "against a rail" if hold == "rail" else "all wheels held"
    lines = [f"on {grip.surface}, grip {grip.likely:g}, {how}: {', '.join(said)}"]
    if railed:
        slid = "; on ".join(f"{sentence_list(where)}, at {at}" for at, where in railed.items())
        lines.append(
            f"It slides first on {slid}: the angle there is what it would do against a rail."
        )
    return lines


def _show(loaded: Loaded, catalogue: Catalogue, found: Ranking) -> None:
    from rich.markup import escape

    out = console()
    first, *rest = now_words(
        found.grip, found.hold, found.now, found.now_heading, found.now_slide, found.now_slides
    )
    out.print(f"[bold]{escape(loaded.truck.name)}[/bold] {escape(first)}")
    for line in rest:
        out.print(escape(line))
    out.print()
    out.print(_table(loaded, catalogue, found))
    for o in found.outcomes:
        broken = [f"outside the class: {b.sentence}" for b in o.breaches]
        words = "".join(f"{w}; " for w in (o.words, *broken) if w)
        change = catalogue.changes[o.change]
        head = f"[bold]{escape(change.name)}[/bold]"
        if change.label != change.name:
            head += f" ({escape(change.label)})"
        out.print(f"{head}: {escape(words + side_words(o.side))}")
    out.print()
    out.print(_legend(found), style="dim")


def _table(loaded: Loaded, catalogue: Catalogue, found: Ranking) -> Any:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.tuning.directions import DIRECTIONS, SURE

    money = catalogue.currency or loaded.spec.currency or "money"
    aim = DIRECTIONS.index(found.aim)
    shown = [i for i, name in enumerate(DIRECTIONS) if name != "worst" or found.aim == "worst"]
    goal = "the weakest heading" if found.aim == "worst" else found.aim
    table = Table(
        title=f"One change at a time, degrees gained, the best first for {goal}", box=None
    )
    table.title_justify = "left"
    table.add_column("")
    table.add_column("change", min_width=18)
    names = ["weakest" if DIRECTIONS[i] == "worst" else DIRECTIONS[i] for i in shown]
    for name in (*names, "±", "per 100 g", f"per 10 {money}", money, "g"):
        table.add_column(name, justify="right")
    last = 0
    for o in found.outcomes:
        change = catalogue.changes[o.change]
        extra = ", on " + ", ".join(catalogue.changes[i].name for i in o.on_top_of)
        place = "=" if o.place == last else str(o.place)
        table.add_row(
            place + ("~" if o.overtaken else ""),
            escape(change.counted(o.many) + (extra if o.on_top_of else "")),
            *(_number(degrees(o.gain[i])) + ("?" if o.turns[i] else "") for i in shown),
            f"{degrees(SURE * o.gain_sd[aim]):.2f}",
            _number(degrees(o.per_100g[aim])),
            _number(10 * degrees(o.per_money[aim])) if o.price else "free",
            f"{o.price:g}",
            _number(o.side.mass * 1e3, 0),
        )
        last = o.place
    return table


def _legend(found: Ranking) -> str:
    """What the marks mean, those that are there."""
    said = ["±: 95 %, from the tolerances of masses and places alone."]
    places = [o.place for o in found.outcomes]
    if len(set(places)) < len(places):
        said.append("=: as good as the one above, within that.")
    if any(o.turns.any() for o in found.outcomes):
        said.append("?: may help or cost, by the grip and by how the tyres give along the ground.")
    if any(o.overtaken for o in found.outcomes):
        said.append(
            "~: another change comes before it somewhere in the range of the grip, or of how the"
            " tyres give along the ground."
        )
    if not found.corners:
        said.append("Grip and tyres count as exact, so nothing can turn with them.")
    return " ".join(said)
