"""`crossfall sensitivity SCENARIO`: which of its axes matters, over the whole of their ranges."""

from __future__ import annotations

from math import isnan
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import as_figures
from crossfall.verbs.common import console, emit, json_option
from crossfall.verbs.tilt import ProgressLine

if TYPE_CHECKING:
    from crossfall.study.sensitivity import How, Sensitivity


@click.command()
@click.argument("scenario", metavar="SCENARIO")
@click.option(
    "--how",
    type=click.Choice(["sobol", "morris"]),
    default="sobol",
    show_default=True,
    help="Shares of the variance; or, for many axes and few answers, mean effects.",
)
@click.option(
    "--response",
    metavar="NAME",
    help="tip_deg, goes_at_deg, rigid_deg, first_lift_deg, or a response of the scenario's own; "
    "rigid_deg of a closed form, else tip_deg, if not given.",
)
@click.option(
    "--samples",
    type=int,
    metavar="N",
    help="Sobol: a power of two, 128 if not given. Morris: trajectories, 32.",
)
@click.option(
    "--plot", type=click.Path(path_type=Path, dir_okay=False), metavar="FILE", help="Draw it."
)
@json_option
def command(
    scenario: str,
    how: How,
    response: str | None,
    samples: int | None,
    plot: Path | None,
    as_json: bool,
) -> None:
    """Which axis of a scenario matters most, by itself and together with the others?

    Builds are drawn all over the ranges of the axes; their steps have no say. ± is 95 %.
    """
    from crossfall.study.scenario import load_scenario
    from crossfall.study.sensitivity import how_answered, sobol_sensitivity

    loaded = load_scenario(scenario)
    try:
        with ProgressLine(as_json, "answer") as progress:
            found = sobol_sensitivity(
                loaded, how, response=response, samples=samples, progress=progress
            )
    except ValueError as error:
        raise click.UsageError(str(error)) from error
    files, by = [], how_answered(loaded, found[0].response)
    if plot is not None:
        from crossfall.show.indices import draw_sensitivity
        from crossfall.show.style import save

        save(draw_sensitivity(loaded.spec.name, found, by), plot)
        files.append(str(plot))
    if as_json:
        emit(
            "sensitivity",
            {
                "scenario": loaded.spec.name,
                "truck": loaded.loaded.truck.name,
                "how": how,
                "response": found[0].response,
                "headings": [sensitivity_record(s) for s in found],
                "files": files,
            },
        )
        return
    console().print(f"{by}; ± is 95 %", style="dim", markup=False)
    for one in found:
        _show(loaded.spec.name, one)
    for file in files:
        click.echo(f"wrote {file}")


def sensitivity_record(s: Sensitivity) -> dict[str, Any]:
    """One heading. Effects are in the response's unit: degrees, or that of a response of one's own,
    which the keys then do not say."""
    unit = _unit(s)
    if s.how == "sobol":
        axes = [
            {
                "key": a.key,
                "first": a.first,
                "first_plus_minus": a.first_pm,
                "total": a.total,
                "total_plus_minus": a.total_pm,
            }
            for a in s.axes
        ]
    else:
        axes = [
            {
                "key": a.key,
                f"mean_effect{unit}": a.effect,
                f"mean_size{unit}": a.mu_star,
                f"mean_size_plus_minus{unit}": a.mu_star_pm,
                f"sd_of_effects{unit}": a.sigma,
            }
            for a in s.axes
        ]
    return {
        "heading_deg": None if isnan(s.heading) else s.heading,
        **s.words,
        f"mean{unit}": s.mean,
        f"sd{unit}": s.sd,
        "answers": s.answers,
        "without_an_answer": s.lost,
        "axes": axes,
    }


def _unit(s: Sensitivity) -> str:
    return "_deg" if s.response.endswith("_deg") else ""


def _show(name: str, s: Sensitivity) -> None:
    from rich.markup import escape
    from rich.table import Table

    where = ", ".join(["", *s.said])
    out = console()
    out.print()
    out.print(f"[bold]{escape(name)}[/bold]{escape(where)}: {s.response}", soft_wrap=True)
    table = Table(box=None)
    table.add_column("axis")
    heads = ("by itself", "±", "with others", "±")
    if s.how == "morris":
        unit = ", °" if _unit(s) else ""
        heads = (f"mean size{unit}", "±", f"mean effect{unit}", f"sd of effects{unit}")
    for head in heads:
        table.add_column(head, justify="right")
    for a in s.axes:
        numbers = (a.first, a.first_pm, a.total, a.total_pm)
        if s.how == "morris":
            numbers = (a.mu_star, a.mu_star_pm, a.effect, a.sigma)
        table.add_row(escape(a.key), *(as_figures(v, 2) for v in numbers))
    out.print(table)
    lost = f", {s.lost} without one count as the mean" if s.lost else ""
    mean, sd = (f"{s.mean:.1f}°", f"{s.sd:.2f}°") if _unit(s) else (f"{s.mean:.3g}", f"{s.sd:.2g}")
    out.print(f"{s.answers} answers{lost}; mean {mean}, standard deviation {sd}.", style="dim")
