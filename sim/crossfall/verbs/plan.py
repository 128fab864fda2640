"""`crossfall plan TRUCK`: the best set of changes within money, mass, limits and run time."""

from __future__ import annotations

from math import degrees, isfinite, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, truck_argument
from crossfall.verbs.whatif import changes_option, effect_keys, limits_option, load, side_words

if TYPE_CHECKING:
    from crossfall.truck.build import Loaded
    from crossfall.tuning.changes import Catalogue
    from crossfall.tuning.plan import Aim, Choice, Plan

HEADINGS = {
    "side": (90.0, 270.0),
    "climb": (0.0,),
    "descent": (180.0,),
    "worst": tuple(45.0 * i for i in range(8)),
}


@click.command()
@truck_argument
@changes_option
@click.option(
    "--aim",
    type=click.Choice(list(HEADINGS)),
    default="worst",
    show_default=True,
    help="Which angle to raise: the weaker side, climb, descent, or the worst of eight headings.",
)
@click.option("--heading", "headings", type=float, multiple=True, metavar="DEG", help="Or these.")
@click.option("--reach", type=float, metavar="DEG", help="Reach this angle for the least money.")
@click.option("--budget", type=click.FloatRange(min=0), metavar="MONEY", help="At most this much.")
@click.option("--added-mass", type=float, metavar="G", help="At most this much heavier.")
@click.option("--run-time", type=click.FloatRange(min=0), metavar="MIN", help="At least this long.")
@click.option(
    "--front-share", type=(float, float), metavar="LOW HIGH", help="Percent on the front axle."
)
@limits_option
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Draw the front.")
@json_option
def command(
    truck: str,
    changes: Path | None,
    aim: str,
    headings: tuple[float, ...],
    reach: float | None,
    budget: float | None,
    added_mass: float | None,
    run_time: float | None,
    front_share: tuple[float, float] | None,
    limits: Path | None,
    plots: Path | None,
    as_json: bool,
) -> int:
    """What is the best set of changes for my money?

    The closed form's best set is proven; the set proposed is the best with springs and tyres, the
    compliant answer with the least friction. Exit status 1 where no set keeps to what is asked.
    """
    from crossfall.tuning.limits import read_limits
    from crossfall.tuning.linear import Bounds
    from crossfall.tuning.plan import plan

    loaded, catalogue = load(truck, changes)
    bounds = Bounds(
        budget=budget,
        added_mass=None if added_mass is None else added_mass / 1e3,
        run_time=None if run_time is None else run_time * 60.0,
        front_share=None if front_share is None else _shares(front_share),
        limits=read_limits(limits) if limits else None,
    )
    if run_time is not None and loaded.spec.battery is None:
        raise click.UsageError("--run-time: the truck's file has no [battery]")
    found = plan(loaded, catalogue, _aim(aim, headings, reach), bounds)
    if plots is not None:
        _draw(loaded, catalogue, found, plots)
    if as_json:
        emit("plan", answer(loaded, catalogue, found))
    else:
        _show(loaded, catalogue, found)
    return 0 if found.best is not None else 1


def _shares(percent: tuple[float, float]) -> tuple[float, float]:
    if not 0 <= percent[0] <= percent[1] <= 100:
        raise click.UsageError("--front-share: two percentages, the lower one first")
    return percent[0] / 100, percent[1] / 100


def _aim(name: str, headings: tuple[float, ...], reach: float | None) -> Aim:
    from crossfall.tuning.plan import Aim

    if any(not isfinite(h) for h in headings):
        raise click.UsageError("--heading: a number of degrees, as 90")
    if reach is not None and not 0 < reach < 89:
        raise click.UsageError("--reach: an angle between 0 and 89 degrees")
    chosen = tuple(h % 360.0 for h in headings) or HEADINGS[name]
    words = name if not headings else "heading " + ", ".join(f"{h:g}°" for h in chosen)
    target = None if reach is None else radians(reach)
    return Aim(words, tuple(radians(h) for h in chosen), target)


def answer(loaded: Loaded, catalogue: Catalogue, found: Plan) -> dict[str, Any]:
    """The plan in tuner's units."""
    closed = None
    if found.closed_form is not None:
        closed = {
            "proven": True,
            "value_deg": degrees(found.closed_form[0]),
            "changes": picks(catalogue, found.closed_form[1]),
        }
    return {
        "truck": loaded.truck.name,
        "currency": catalogue.currency or loaded.spec.currency,
        "aim": found.aim.name,
        "headings_deg": [degrees(h) for h in found.aim.headings],
        "reach_deg": None if found.aim.target is None else degrees(found.aim.target),
        "closure": "uniform",
        "now": _choice(catalogue, found.now),
        "best": _choice(catalogue, found.best) if found.best else None,
        "runners_up": [_choice(catalogue, c) for c in found.runners],
        "front": [_choice(catalogue, c) for c in found.front],
        "closed_form": closed,
        "proof": {
            "words": proof(found),
            "all_sets_scored": found.proven,
            "sets_scored": found.scored,
            "setups": found.setups,
            "foretold_sd_deg": degrees(found.spread),
            "listed_down_to_deg_below_best": degrees(found.margin),
        },
    }


def picks(catalogue: Catalogue, chosen: tuple[tuple[int, int], ...]) -> list[dict[str, Any]]:
    """Changes of a set by name."""
    return [
        {
            "change": catalogue.changes[i].name,
            "label": catalogue.changes[i].label,
            "quantity": n,
            "price": catalogue.changes[i].price * n,
        }
        for i, n in chosen
    ]


def _choice(catalogue: Catalogue, c: Choice) -> dict[str, Any]:
    return {
        "changes": picks(catalogue, c.picks),
        "price": c.price,
        "value_deg": degrees(c.value),
        "value_sd_deg": degrees(c.sd),
        "compliant_deg": [degrees(a) for a in c.angles],
        "rigid_deg": [degrees(a) for a in c.rigid],
        "side_effects": effect_keys(c.side),
        "breaches": [b.sentence for b in c.breaches],
        "tied_with_best": c.tied,
    }


def proof(found: Plan) -> str:
    """What is proven and what is not, in a sentence or two."""
    if found.best is None:
        return "No set of these changes does what is asked."
    if found.proven:
        return f"Proven: all {found.scored} allowed sets were scored with springs and tyres."
    words = (
        f"The closed form's best over {found.setups} set-ups is proven. With springs and tyres it "
        f"is the best of {found.scored} sets scored: what each set-up loses was found in rounds, "
    )
    if isfinite(found.margin) and found.margin > 0:
        words += f"and every set promising within {degrees(found.margin):.2f}° of it was scored"
    else:
        words += "and the most promising sets were scored"
    if isfinite(found.spread):
        words += f"; such promises were off by {degrees(found.spread):.2f}° (one sd)"
    return words + "."


def _words(catalogue: Catalogue, c: Choice) -> str:
    names = [
        f"{n} × {catalogue.changes[i].name}" if n > 1 else catalogue.changes[i].name
        for i, n in c.picks
    ]
    return ", ".join(names) if names else "nothing"


def _show(loaded: Loaded, catalogue: Catalogue, found: Plan) -> None:
    from rich.markup import escape
    from rich.table import Table

    out = console()
    money = catalogue.currency or loaded.spec.currency or "money"
    out.print(
        f"[bold]{escape(loaded.truck.name)}[/bold], {found.aim.name}: "
        f"now {degrees(found.now.value):.1f} ± {degrees(found.now.sd):.1f}°"
    )
    if found.best is None:
        out.print("No set of these changes does what is asked.")
    else:
        _best(loaded, catalogue, found.best, found)
        table = Table(title="Runners-up (= as good, by the tolerances)", box=None)
        table.title_justify = "left"
        _columns(table, money)
        for c in found.runners:
            mark = "=" if c.tied else ""
            table.add_row(
                mark,
                f"{degrees(c.value):.2f}",
                f"{c.price:g}",
                escape(_less(catalogue, c, found.best)),
            )
        out.print(table)
    if found.front:
        table = Table(title="The most degrees for the money", box=None, title_justify="left")
        _columns(table, money)
        for c in found.front:
            table.add_row(
                "", f"{degrees(c.value):.2f}", f"{c.price:g}", escape(_words(catalogue, c))
            )
        out.print(table)
    out.print(proof(found))


def _columns(table: Any, money: str) -> None:
    table.add_column("")
    table.add_column("degrees", justify="right")
    table.add_column(money, justify="right")
    table.add_column("changes")


def _less(catalogue: Catalogue, c: Choice, best: Choice) -> str:
    """A runner-up by what it does otherwise than the best."""
    names = {
        p: f"{p[1]} × {catalogue.changes[p[0]].name}" if p[1] > 1 else catalogue.changes[p[0]].name
        for p in (*c.picks, *best.picks)
    }
    plus = [names[p] for p in c.picks if p not in best.picks]
    minus = [names[p] for p in best.picks if p not in c.picks]
    words = [*(f"+ {n}" for n in plus), *(f"− {n}" for n in minus)]
    return "the best, " + ", ".join(words)


def _best(loaded: Loaded, catalogue: Catalogue, best: Choice, found: Plan) -> None:
    from rich.markup import escape

    out = console()
    money = catalogue.currency or loaded.spec.currency or ""
    gain = degrees(best.value - found.now.value)
    out.print(
        f"best set: [bold]{degrees(best.value):.1f} ± {degrees(best.sd):.1f}°[/bold], "
        f"{gain:+.1f}°, for {best.price:g} {money}".rstrip()
    )
    for entry in picks(catalogue, best.picks):
        many = f"{entry['quantity']} × " if entry["quantity"] > 1 else ""
        out.print(f"  {escape(many + entry['label'])}, {entry['price']:g}")
    if not best.picks:
        out.print("  nothing: leave it as it is")
    out.print(f"  {escape(side_words(best.side, most=15))}")
    for heading, angle, rigid in zip(found.aim.headings, best.angles, best.rigid, strict=True):
        out.print(
            f"  heading {degrees(heading):g}°: {degrees(angle):.1f}° with springs and tyres, "
            f"{degrees(rigid):.1f}° rigid"
        )


def _draw(loaded: Loaded, catalogue: Catalogue, found: Plan, folder: Path) -> None:
    import numpy as np

    from crossfall.show.front import Choices, draw_front
    from crossfall.show.style import save

    listed = [found.now, *found.front, *found.runners, *([found.best] if found.best else [])]
    choices = Choices(
        cost=np.array([c.price for c in listed]),
        gain=np.array([degrees(c.value) for c in listed]),
        sd=np.array([degrees(c.sd) for c in listed]),
        names=tuple(_words(catalogue, c) for c in listed),
        cost_name=f"price, {catalogue.currency or loaded.spec.currency or 'money'}",
        gain_name=f"{found.aim.name}, degrees",
        now=0,
        best=len(listed) - 1 if found.best else None,
    )
    folder.mkdir(parents=True, exist_ok=True)
    picture = draw_front(choices, f"{loaded.truck.name}: degrees for money")
    save(picture, folder / f"{loaded.truck.name}-plan.svg")
