"""`crossfall plan TRUCK`: the best set of changes within money, mass, limits and run time."""

from __future__ import annotations

from collections.abc import Iterable
from math import degrees, isfinite, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import Number, console, emit, json_option, truck_argument
from crossfall.verbs.whatif import (
    changes_option,
    conditions_record,
    effect_keys,
    hold_of,
    limits_option,
    load_with_changes,
    rail_option,
    sentence_list,
    side_words,
    surface_option,
)

if TYPE_CHECKING:
    from crossfall.truck.build import Loaded
    from crossfall.tuning.changes import Catalogue
    from crossfall.tuning.plan import Aim, BuildPlan, Choice


@click.command()
@truck_argument
@changes_option
@click.option(
    "--aim",
    type=click.Choice(["side", "climb", "descent", "worst"]),
    default="worst",
    show_default=True,
    help="Which angle to raise: the weaker side, climb, descent, or the weakest heading of all.",
)
@click.option(
    "--heading",
    "headings",
    type=Number(-360, 360, "no heading from -360 to 360 degrees"),
    multiple=True,
    metavar="DEG",
    help="Or these.",
)
@click.option(
    "--reach",
    type=Number(0, 89, "no angle between 0 and 89 degrees", open_ends=True),
    metavar="DEG",
    help="Reach this angle for the least money.",
)
@click.option("--budget", type=Number(0, 1e9), metavar="MONEY", help="At most this much.")
@click.option(
    "--added-mass", type=Number(-1e5, 1e5), metavar="G", help="At most this much heavier."
)
@click.option("--run-time", type=Number(0, 1e4), metavar="MIN", help="At least this long.")
@click.option(
    "--front-share",
    type=(Number(0, 100), Number(0, 100)),
    metavar="LOW HIGH",
    help="Percent on the front axle.",
)
@surface_option
@rail_option
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
    surface: str | None,
    rail: bool,
    limits: Path | None,
    plots: Path | None,
    as_json: bool,
) -> int:
    """What is the best set of changes for my money?

    The closed form's best set is proven; the set proposed is the best with springs and tyres at the
    surface's own grip, as `tilt` has them. A slot is put in its best place. Where a set slides
    first, it is compared by what it would do against a rail. Money is the prices of the changes in
    the change file. Exit status 1 where no set keeps to what is asked; which of it cannot be met is
    then named.
    """
    from crossfall.tuning.limits import read_limits
    from crossfall.tuning.milp_model import Bounds
    from crossfall.tuning.plan import plan
    from crossfall.tuning.unmet import unmet

    loaded, catalogue = load_with_changes(truck, changes)
    bounds = Bounds(
        budget=budget,
        added_mass=None if added_mass is None else added_mass / 1e3,
        run_time=None if run_time is None else run_time * 60.0,
        front_share=None if front_share is None else _shares(front_share),
        limits=read_limits(limits) if limits else None,
    )
    if run_time is not None and loaded.spec.battery is None:
        raise click.UsageError("--run-time: the truck's file has no [battery]")
    aimed = aim_of(aim, headings, reach)
    found = plan(loaded, catalogue, aimed, bounds, surface=surface, hold=hold_of(rail))
    if plots is not None:
        _draw(loaded, catalogue, found, plots)
    why = unmet(loaded, catalogue, aimed, bounds) if found.best is None else ()
    if as_json:
        emit("plan", plan_record(loaded, catalogue, found, why))
    else:
        _show(loaded, catalogue, found, why)
    return 0 if found.best is not None else 1


def _shares(percent: tuple[float, float]) -> tuple[float, float]:
    if not 0 <= percent[0] <= percent[1] <= 100:
        raise click.UsageError("--front-share: two percentages, the lower one first")
    return percent[0] / 100, percent[1] / 100


def aim_of(name: Any, headings: Iterable[float], reach: float | None) -> Aim:
    """What is aimed at: a direction by name, or headings (deg); reach: deg."""
    from crossfall.tuning.plan import Aim, aim_at

    target = None if reach is None else radians(reach)
    chosen = tuple(dict.fromkeys(h % 360.0 for h in headings))
    if not chosen:
        return aim_at(name, target)
    words = "heading " + ", ".join(f"{h:g}°" for h in chosen)
    return Aim(words, tuple(radians(h) for h in chosen), target)


def plan_record(
    loaded: Loaded, catalogue: Catalogue, found: BuildPlan, unmet: Iterable[str]
) -> dict[str, Any]:
    """The plan in tuner's units. unmet: what cannot be met, a sentence each."""
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
        **conditions_record(found.grip, found.hold),
        "corners": [{"at": c.kind, "words": c.words} for c in found.corners],
        "now": _choice(catalogue, found, found.now),
        "best": _choice(catalogue, found, found.best) if found.best else None,
        "runners_up": [_choice(catalogue, found, c) for c in found.runners],
        "overtaken_by": [{"at": found.corners[c].kind, "runner_up": k} for c, k in found.overtaken],
        "front": [_choice(catalogue, found, c) for c in found.front],
        "closed_form": closed,
        "proof": {
            "words": proof(found),
            "all_sets_scored": found.proven,
            "sets_scored": found.scored,
            "setups": found.setups,
            "predicted_sd_deg": degrees(found.spread),
            "listed_down_to_deg_below_best": degrees(found.margin),
        },
        "unmet": list(unmet),
    }


def picks(catalogue: Catalogue, chosen: tuple[tuple[int, int], ...]) -> list[dict[str, Any]]:
    """Changes of a set by name."""
    return [
        {
            "change": catalogue.changes[i].name,
            "label": catalogue.changes[i].label,
            "quantity": n,
            "price": catalogue.changes[i].cost(n),
        }
        for i, n in chosen
    ]


def _choice(catalogue: Catalogue, found: BuildPlan, c: Choice) -> dict[str, Any]:
    from crossfall.tuning.directions import SURE

    return {
        "changes": picks(catalogue, c.picks),
        "words": _words(catalogue, c),
        "price": c.price,
        "value_deg": degrees(c.value),
        "value_pm_deg": degrees(SURE * c.sd),
        "value_deg_at": {w.kind: degrees(v) for w, v in zip(found.corners, c.there, strict=True)},
        "headings": [
            {
                "heading_deg": degrees(h),
                "angle_deg": degrees(angle),
                "slide_likely_deg": degrees(slide),
                "slides_first": bool(slides),
                "rigid_deg": degrees(stiff),
            }
            for h, angle, slide, slides, stiff in zip(
                c.headings, c.angles, c.slide, c.slides, c.rigid, strict=True
            )
        ],
        "side_effects": effect_keys(c.side),
        "breaches": [b.sentence for b in c.breaches],
        "tied_with_best": c.tied,
    }


def proof(found: BuildPlan) -> str:
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
        words += f"; such promises were off by {1.96 * degrees(found.spread):.2f}° (95 %)"
    return words + "."


def _words(catalogue: Catalogue, c: Choice) -> str:
    names = [catalogue.changes[i].counted(n) for i, n in c.picks]
    return ", ".join(names) if names else "nothing"


def _stands(found: BuildPlan, c: Choice) -> str:
    """A set's angle with what is said of sliding: '31.9 ± 0.2°, against a rail, since it slides
    first'."""
    from crossfall.tuning.directions import SURE

    said = f"{degrees(c.value):.1f} ± {degrees(SURE * c.sd):.1f}°"
    if len(c.headings) == 1 and not found.aim.headings:
        said += f" at heading {degrees(c.headings[0]):.0f}"
    if _railed(c):
        said += ", against a rail, for it slides first"
    return said


def _show(loaded: Loaded, catalogue: Catalogue, found: BuildPlan, why: tuple[str, ...]) -> None:
    from rich.markup import escape
    from rich.table import Table

    out = console()
    money = catalogue.currency or loaded.spec.currency or "money"
    how = "against a rail" if found.hold == "rail" else "all wheels held"
    goal = "weakest heading" if found.aim.name == "worst" else found.aim.name
    out.print(
        f"[bold]{escape(loaded.truck.name)}[/bold] on {escape(found.grip.surface)}, grip "
        f"{found.grip.likely:g}, {how}; {goal}: now {_stands(found, found.now)}"
    )
    if found.best is None:
        out.print("No set of these changes does what is asked:")
        for sentence in why:
            out.print(f"  {escape(sentence)}")
    else:
        _best(loaded, catalogue, found.best, found)
        table = Table(title="Runners-up (= as good, by the tolerances)", box=None)
        table.title_justify = "left"
        _columns(table, money)
        for c in found.runners:
            mark = "=" if c.tied else ""
            table.add_row(
                mark,
                _cell(c),
                f"{c.price:g}",
                escape(_less(catalogue, c, found.best)),
            )
        out.print(table)
        for line in turning(found):
            out.print(escape(line))
    if found.front:
        table = Table(title="The most degrees for the money", box=None, title_justify="left")
        _columns(table, money)
        for c in found.front:
            table.add_row("", _cell(c), f"{c.price:g}", escape(_words(catalogue, c)))
        out.print(table)
    if any(_railed(c) for c in (*found.runners, *found.front)):
        out.print(r"\[ ]: it slides first, and would tip there against a rail.", style="dim")
    out.print(proof(found))


def _railed(c: Choice) -> bool:
    """Whether a set's angle is the one against a rail, since it slides first."""
    return bool(c.slides[c.angles.argmin()])


def _cell(c: Choice) -> str:
    return f"\\[{degrees(c.value):.2f}]" if _railed(c) else f"{degrees(c.value):.2f}"


def turning(found: BuildPlan) -> list[str]:
    """Where a runner-up is better than the set proposed, a sentence a corner."""
    named = ("first", "second", "third", "fourth", "fifth")
    lines = []
    for c, corner in enumerate(found.corners):
        them = [k for at, k in found.overtaken if at == c]
        if them and found.best is not None:
            ahead = max(found.runners[k].there[c] - found.best.there[c] for k in them)
            which = sentence_list([named[k] if k < len(named) else str(k + 1) for k in them])
            lines.append(
                f"{corner.words[:1].upper() + corner.words[1:]}, the {which} runner-up would be "
                f"better, by up to {degrees(ahead):.1f}°."
            )
    return lines


def _columns(table: Any, money: str) -> None:
    table.add_column("")
    table.add_column("degrees", justify="right")
    table.add_column(money, justify="right")
    table.add_column("changes")


def _less(catalogue: Catalogue, c: Choice, best: Choice) -> str:
    """A runner-up by what it does otherwise than the best."""
    names = {p: catalogue.changes[p[0]].counted(p[1]) for p in (*c.picks, *best.picks)}
    plus = [names[p] for p in c.picks if p not in best.picks]
    minus = [names[p] for p in best.picks if p not in c.picks]
    words = [*(f"+ {n}" for n in plus), *(f"− {n}" for n in minus)]
    return "the best, " + ", ".join(words)


def _best(loaded: Loaded, catalogue: Catalogue, best: Choice, found: BuildPlan) -> None:
    from rich.markup import escape

    out = console()
    money = catalogue.currency or loaded.spec.currency or ""
    gain = degrees(best.value - found.now.value)
    out.print(
        f"best set: [bold]{_stands(found, best)}[/bold], "
        f"{signed_figures(gain, 1)}°, for {best.price:g} {money}".rstrip()
    )
    for i, n in best.picks:
        change = catalogue.changes[i]
        out.print(f"  {escape(change.counted(n, change.label))}, {change.cost(n):g}")
    if not best.picks:
        out.print("  nothing: leave it as it is")
    out.print(f"  {escape(side_words(best.side, most=15))}")
    for heading, angle, slide, slides, rigid in zip(
        best.headings, best.angles, best.slide, best.slides, best.rigid, strict=True
    ):
        slid = f" against a rail, sliding first at {degrees(slide):.0f}°" if slides else ""
        out.print(
            f"  heading {degrees(heading):.0f}°: {degrees(angle):.1f}° with springs and tyres"
            f"{slid}, {degrees(rigid):.1f}° rigid"
        )


def _draw(loaded: Loaded, catalogue: Catalogue, found: BuildPlan, folder: Path) -> None:
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
        gain_name=f"{'weakest heading' if found.aim.name == 'worst' else found.aim.name}, degrees",
        now=0,
        best=len(listed) - 1 if found.best else None,
    )
    folder.mkdir(parents=True, exist_ok=True)
    where = f"on {found.grip.surface}, grip {found.grip.likely:g}"
    picture = draw_front(choices, f"{loaded.truck.name} {where}: degrees for money")
    save(picture, folder / f"{loaded.truck.name}-plan.svg")
