"""`crossfall spread TRUCK`: how sure the tip angle is, which input's uncertainty matters most."""

from __future__ import annotations

from math import degrees, radians
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument
from crossfall.verbs.tilt import FOUR, ProgressLine, headings_option, span_text

if TYPE_CHECKING:
    from crossfall.study.montecarlo import HeadingSpread, InputInfluence, Method, Spread

AS_TILT = {"compliant": ", as tilt says", "closed form": ", tilt's rigid"}
_WORDS = {"compliant": "on springs and tyres", "closed form": "as a rigid block"}


@click.command()
@truck_argument
@click.option(
    "--heading",
    "headings",
    type=float,
    callback=headings_option,
    multiple=True,
    metavar="DEG",
    help="0, 90, 180 and 270 if not given. May be repeated.",
)
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--rail", is_flag=True, help="Hold the downhill tyres with a trip rail.")
@click.option(
    "--method",
    type=click.Choice(["compliant", "closed form"]),
    default="compliant",
    show_default=True,
    help="What each drawn truck is answered by.",
)
@click.option(
    "--samples",
    default=128,
    show_default=True,
    help="A power of two. The errors, which are printed, halve with four times as many.",
)
@click.option("--seed", default=0, show_default=True)
@json_option
def command(
    truck: str,
    headings: tuple[float, ...],
    surface: str | None,
    rail: bool,
    method: Method,
    samples: int,
    seed: int,
    as_json: bool,
) -> None:
    """How sure is the answer, and which input's uncertainty matters most?

    Whole trucks are drawn with every number off within its tolerance, on grip between low and
    high, and each is answered as `tilt` does. Every number has its 95 % interval.
    """
    from crossfall.answers.conditions import conditions
    from crossfall.study.montecarlo import monte_carlo

    loaded = load_and_warn(truck)
    psi = [radians(h) for h in headings or FOUR]
    asked = conditions(loaded.truck, psi, surface, hold="rail" if rail else "brakes")
    try:
        with ProgressLine(as_json, "answer") as progress:
            found = monte_carlo(
                loaded.truck, asked, method=method, samples=samples, seed=seed, progress=progress
            )
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    if as_json:
        grip = asked[0].grip
        head = {"truck": loaded.truck.name, "method": method, "surface": grip.surface}
        limits = {"low": grip.low, "likely": grip.likely, "high": grip.high}
        answers = [heading_answer(h, method) for h in found]
        emit("spread", {**head, "grip_range": limits, "headings": answers})
    else:
        _show(loaded.truck.name, method, found)


def heading_answer(h: HeadingSpread, method: Method) -> dict[str, Any]:
    """One heading; what everything at its likely value gives has the keys of `answers.keys`."""
    from crossfall.answers.keys import deg

    asked, centre = h.conditions, deg(h.centre)
    own: dict[str, float | None] = {"rigid_deg": centre}
    if method == "compliant":
        own = {
            "compliant_deg": None if h.slides_first else centre,
            "rail_deg": centre if h.slides_first or asked.rail else None,
        }
    return {
        "heading_deg": round(degrees(asked.heading), 9),
        "grip": asked.grip.likely,
        "hold": asked.hold,
        **own,
        "goes_at_deg": deg(h.centre_goes),
        "tip": spread_answer(h.tip),
        "goes": spread_answer(h.goes),
        "tips_first_share": h.tips_first,
        "tips_first_share_ci": h.tips_first_ci,
        "tip_depends_on": [influence_answer(i) for i in h.by_tip],
        "goes_depends_on": [influence_answer(i) for i in h.by_goes],
        "samples": h.samples,
        "without_a_tip": h.lost,
    }


def spread_answer(s: Spread) -> dict[str, float]:
    return {
        "mean_deg": degrees(s.mean),
        "sd_deg": degrees(s.sd),
        "low_deg": degrees(s.low),
        "high_deg": degrees(s.high),
        "mean_error_deg": degrees(s.mean_error),
        "low_error_deg": degrees(s.low_error),
        "high_error_deg": degrees(s.high_error),
    }


def influence_answer(i: InputInfluence) -> dict[str, Any]:
    return {
        "input": i.name,
        "first": i.first,
        "first_ci": i.first_ci,
        "total": i.total,
        "total_ci": i.total_ci,
    }


def _show(name: str, method: Method, found: tuple[HeadingSpread, ...]) -> None:
    from rich.table import Table

    out, asked = console(), found[0].conditions
    grip = asked.grip
    range_ = f"{grip.low:g} to {grip.high:g}" if grip.high > grip.low else f"{grip.likely:g}"
    title = f"{name} on {grip.surface}, grip {range_}, {_WORDS[method]}"
    title += ", against a rail" if asked.rail else ""
    table = Table(title=title, box=None, title_justify="left")
    for column in ("heading", "tips at", "mean", "95 %", "goes at", "95 %", "tips first"):
        table.add_column(column, justify="right", no_wrap=True)
    for h in found:
        low, high = (100 * p for p in h.tips_first_ci)
        centre = f"{degrees(h.centre):.1f}"
        table.add_row(
            f"{degrees(h.conditions.heading):g}",
            f"\\[{centre}]" if h.slides_first else centre,
            plus_minus(h.tip.mean, h.tip.mean_error),
            span_text((h.tip.low, h.tip.high)),
            f"{degrees(h.centre_goes):.1f}",
            span_text((h.goes.low, h.goes.high)),
            f"{100 * h.tips_first:.0f} % ({low:.0f}\N{EN DASH}{high:.0f})",
        )
    out.print(table)
    worst = max(max(h.tip.low_error, h.tip.high_error) for h in found)
    out.print(
        f"Degrees. tips at, goes at: everything at its likely value{AS_TILT[method]}; [tip]: it"
        " slides first, and would tip there against a rail. 95 %: of the trucks drawn,"
        f" {found[0].samples}, which pins the ends down to {degrees(worst):.1f}."
        " ± and round brackets: 95 %.",
        style="dim",
        markup=False,
    )
    if lost := sum(h.lost for h in found):
        out.print(f"{lost} of the trucks drawn had no tip that could be found.")
    for h in found:
        for what, lines in (("tips", h.by_tip), ("goes, by tip or slide,", h.by_goes)):
            said = [_words(i) for i in lines[:4]]
            if said and (what == "tips" or h.tips_first < 1.0):
                out.print(
                    f"{degrees(h.conditions.heading):g}: the angle at which it {what} depends on"
                )
                out.print("  " + "; ".join(said))


def plus_minus(middle: float, error: float) -> str:
    return f"{degrees(middle):.2f} ±{degrees(error):.2f}"


def _words(i: InputInfluence) -> str:
    low, high = (100 * max(v, 0.0) for v in i.total_ci)
    return f"{i.name} {100 * max(i.total, 0.0):.0f} % ({low:.0f} to {high:.0f})"
