"""`crossfall spread TRUCK`: how sure the tip angle is, and which input's doubt matters most."""

from __future__ import annotations

from math import degrees, radians
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument

if TYPE_CHECKING:
    from crossfall.study.montecarlo import HeadingSpread, Influence, Spread


@click.command()
@truck_argument
@click.option("--heading", "headings", type=float, multiple=True, metavar="DEG", help="Repeatable.")
@click.option("--surface", metavar="NAME", help="Whose grip counts; the first in the file if not.")
@click.option("--rail", is_flag=True, help="Hold the downhill tyres with a trip rail.")
@click.option(
    "--method",
    type=click.Choice(["compliant", "closed form"]),
    default="compliant",
    show_default=True,
    help="The closed form draws what moves the CG, and grip, only.",
)
@click.option("--samples", type=int, help="A power of two; 128, or 1024 by the closed form.")
@click.option("--seed", default=0, show_default=True)
@json_option
def command(
    truck: str,
    headings: tuple[float, ...],
    surface: str | None,
    rail: bool,
    method: str,
    samples: int | None,
    seed: int,
    as_json: bool,
) -> None:
    """How sure is the answer, and which input's doubt matters most?

    Whole trucks are drawn within all their tolerances, on grip between low and high. Every number
    has its interval.
    """
    from crossfall.study.montecarlo import spread

    loaded = load_and_warn(truck)
    asked = headings or (0.0, 90.0, 180.0, 270.0)
    try:
        found = spread(
            loaded.truck,
            [radians(h) for h in asked],
            surface=surface,
            hold="rail" if rail else "brakes",
            method="compliant" if method == "compliant" else "closed form",
            samples=samples,
            seed=seed,
        )
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    if as_json:
        emit("spread", {"truck": loaded.truck.name, "method": method, "headings": _answer(found)})
    else:
        _show(loaded.truck.name, method, found)


def _answer(found: tuple[HeadingSpread, ...]) -> list[dict[str, Any]]:
    return [
        {
            "heading_deg": degrees(h.heading),
            "centre_deg": degrees(h.centre),
            "tip": _spread(h.tip),
            "goes": None if h.goes is None else _spread(h.goes),
            "tips_first": h.tips_first,
            "tips_first_ci": h.tips_first_ci,
            "tip_depends_on": [_influence(i) for i in h.by_tip],
            "goes_depends_on": [_influence(i) for i in h.by_goes],
        }
        for h in found
    ]


def _spread(s: Spread) -> dict[str, float]:
    return {
        "mean_deg": degrees(s.mean),
        "sd_deg": degrees(s.sd),
        "low_deg": degrees(s.low),
        "high_deg": degrees(s.high),
        "mean_error_deg": degrees(s.mean_error),
        "low_error_deg": degrees(s.low_error),
        "high_error_deg": degrees(s.high_error),
    }


def _influence(i: Influence) -> dict[str, Any]:
    return {
        "input": i.name,
        "first": i.first,
        "first_ci": i.first_ci,
        "total": i.total,
        "total_ci": i.total_ci,
    }


def _show(name: str, method: str, found: tuple[HeadingSpread, ...]) -> None:
    from rich.table import Table

    out = console()
    table = Table(title=f"{name}, {method}: angles in degrees", box=None, title_justify="left")
    for column in (
        "heading",
        "as filed",
        "mean",
        "95 % of trucks",
        "goes at",
        "95 %",
        "tips first",
    ):
        table.add_column(column, justify="right")
    for h in found:
        goes = ("", "") if h.goes is None else _cells(h.goes)
        low, high = (100 * p for p in h.tips_first_ci)
        first = "" if h.goes is None else f"{100 * h.tips_first:.0f} % ({low:.0f} to {high:.0f})"
        heading = f"{degrees(h.heading):g}"
        table.add_row(heading, f"{degrees(h.centre):.2f}", *_cells(h.tip), *goes, first)
    out.print(table)
    for h in found:
        for what, lines in (("tips", h.by_tip), ("goes, by tip or slide,", h.by_goes)):
            shown = [_words(i) for i in lines[:4]]
            if shown:
                out.print(f"{degrees(h.heading):g}: the angle at which it {what} depends on")
                out.print("  " + "; ".join(shown))


def _cells(s: Spread) -> tuple[str, str]:
    return (
        f"{degrees(s.mean):.2f} ± {degrees(s.mean_error):.2f}",
        f"{degrees(s.low):.2f} to {degrees(s.high):.2f}",
    )


def _words(i: Influence) -> str:
    low, high = (100 * max(v, 0.0) for v in i.total_ci)
    return f"{i.name} {100 * i.total:.0f} % ({low:.0f} to {high:.0f})"
