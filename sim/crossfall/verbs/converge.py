"""`crossfall converge TRUCK`: does the trial's angle hang on how it was computed?"""

from __future__ import annotations

import csv
from math import degrees, isnan, radians
from pathlib import Path
from typing import TYPE_CHECKING

import click

from crossfall.answers.figures import as_figures, signed_figures
from crossfall.verbs.common import (
    Number,
    console,
    emit,
    json_option,
    load_and_warn,
    truck_argument,
)
from crossfall.verbs.tilt import ProgressLine

if TYPE_CHECKING:
    from crossfall.study.convergence import LevelSeries
    from crossfall.truck.model import Truck

_SHOWN = {"step": "step", "solver": "solver rounds", "rate": "rate"}


@click.command()
@truck_argument
@click.option("--heading", type=Number(-360, 360), default=90.0, show_default=True, metavar="DEG")
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--grip", type=Number(0.01, 5), metavar="MU", help="One coefficient instead.")
@click.option("--rail", is_flag=True, help="Hold the downhill tyres with a trip rail.")
@click.option(
    "--engine",
    type=click.Choice(["bullet", "mujoco"]),
    help="Only this one; every one installed if not given.",
)
@click.option("--quick", is_flag=True, help="Quick trials instead of careful ones.")
@click.option(
    "--csv", "table", type=click.Path(path_type=Path, dir_okay=False), metavar="FILE",
    help="Write the table.",
)  # fmt: skip
@click.option(
    "--plot", type=click.Path(path_type=Path, dir_okay=False), metavar="FILE", help="Draw it."
)
@json_option
def command(
    truck: str,
    heading: float,
    surface: str | None,
    grip: float | None,
    rail: bool,
    engine: str | None,
    quick: bool,
    table: Path | None,
    plot: Path | None,
    as_json: bool,
) -> int:
    """Step, solver rounds and tilting rate made twice and four times as fine, in each engine.

    The table a referee asks for: every angle with its 95 % interval, its change from the finest,
    the observed order where changes are larger than the trial resolves, and what lies between the
    engines. The exit status is 1 where an interval of a trial as it is usually made does not hold
    the finest's angle, or what lies between the engines is more than both intervals allow.

    For many builds and conditions, sweep a scenario by the method "convergence".
    """
    if surface is not None and grip is not None:
        raise click.UsageError("--surface and --grip do not go together")
    from crossfall.answers.conditions import case_name, conditions
    from crossfall.engines.held import ENGINES, installed
    from crossfall.study.convergence import convergence_rows, engines_apart, trial_convergence
    from crossfall.truck.files import in_one_step

    loaded = load_and_warn(truck)
    (one,) = conditions(
        loaded.truck, [radians(heading % 360.0)], surface, grip=grip,
        hold="rail" if rail else "brakes",
    )  # fmt: skip
    engines = [e for e in ENGINES if (installed(e) if engine is None else e == engine)]
    with ProgressLine(as_json) as progress:
        found = trial_convergence(
            loaded.truck, one, engines, "quick" if quick else "careful", progress
        )
    rows, files = convergence_rows(found), []
    if table is not None:
        with in_one_step(table) as part, part.open("w", newline="", encoding="utf-8") as stream:
            writer = csv.DictWriter(stream, rows[0], lineterminator="\n")
            writer.writeheader()
            writer.writerows(rows)
        files.append(str(table))
    how = f"heading {heading:g}°, {case_name(heading)}, on {one.grip.surface}"
    how += f" (grip {one.grip.likely:g})" if grip is None else ""
    how += ", against a rail" if rail else ""
    if plot is not None:
        from crossfall.show.convergence import draw_convergence
        from crossfall.show.style import save

        save(draw_convergence(loaded.truck.name, how, found), plot)
        files.append(str(plot))
    if as_json:
        asked = {"heading_deg": heading, "grip": one.grip.likely, "hold": one.hold}
        emit("converge", {"truck": loaded.truck.name, **asked, "trials": rows, "files": files})
    else:
        _show(loaded.truck, how, found)
        for file in files:
            click.echo(f"wrote {file}")
    tips = [s for s in found if not isnan(s.levels[0].tip)]
    two = engines_apart(found)
    return 0 if all(s.holds for s in tips) and not (two and (two.low > 0 or two.high < 0)) else 1


def _show(truck: Truck, how: str, found: tuple[LevelSeries, ...]) -> None:
    from rich.table import Table

    from crossfall.study.convergence import engines_apart

    out = console()
    out.print(f"{truck.name}, {how}: the trial's angle, 95 %", soft_wrap=True)
    table = Table(box=None)
    for head in ("engine", "finer", "", "tips at", "low", "high", "change", "order"):
        left = head in ("engine", "finer")
        table.add_column(head, justify="left" if left else "right", no_wrap=True)
    for series in found:
        for level in series.levels:
            angles = (level.tip, level.low, level.high, series.change(level))
            order = series.order if level is series.levels[-1] else float("nan")
            table.add_row(
                series.engine,
                series.varied,
                "as usual" if level.finer == 1 else f"{level.finer} times",
                *("–" if isnan(a) else f"{as_figures(degrees(a), 3)}°" for a in angles),
                "" if isnan(order) else f"{order:.1f}",
            )
    out.print(table)
    two = engines_apart(found)
    if two is not None and not isnan(two.apart):
        apart, low, high = (signed_figures(degrees(v), 3) for v in (two.apart, two.low, two.high))
        out.print(
            f"{two.engines[1]} lies {apart}° from {two.engines[0]} ({low}° to {high}°, 95 %)."
        )
    for engine, outcome in {
        s.engine: s.levels[0].outcome for s in found if isnan(s.levels[0].tip)
    }.items():
        against = "; --rail compares where it would tip" if outcome == "slides" else ""
        out.print(f"In {engine} it {outcome}: there is no tip to compare{against}.", style="dim")
    for series in found:
        if not isnan(series.levels[0].tip) and not series.holds:
            what = f"the angle of the finest {_SHOWN[series.varied]} in {series.engine}"
            out.print(f"The interval of the usual trial does not hold {what}.")
