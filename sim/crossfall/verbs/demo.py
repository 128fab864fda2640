"""`crossfall demo`: three invented trucks, a small table, pictures, and where to go next."""

from __future__ import annotations

from math import radians
from pathlib import Path
from typing import TYPE_CHECKING

import click

from crossfall.verbs.common import console, emit, json_option
from crossfall.verbs.tilt import FOUR, ProgressLine, angle, draw, engines, sentence_case, tips_table

if TYPE_CHECKING:
    from crossfall.answers.answer import Answers
    from crossfall.truck.model import Truck


@click.command()
@click.option(
    "--plots",
    type=click.Path(path_type=Path, file_okay=False),
    default=Path("crossfall-out"),
    show_default=True,
    metavar="DIR",
    help="Where the pictures go.",
)
@json_option
def command(plots: Path, as_json: bool) -> None:
    """See it work: three invented trucks, when each tips, and pictures of the first."""
    from crossfall.answers.answer import answer
    from crossfall.answers.conditions import conditions
    from crossfall.answers.keys import report
    from crossfall.truck.build import load_truck
    from crossfall.truck.demos import demo_names

    trucks = [load_truck(name).truck for name in demo_names()]
    first = next(i for i, t in enumerate(trucks) if t.name == "bramble")
    found = []
    for i, truck in enumerate(trucks):  # only the first is also tried out, which takes seconds
        with ProgressLine(as_json) as progress:
            four = conditions(truck, [radians(h) for h in FOUR])
            tried = engines(None) if i == first else None
            found.append(answer(truck, four, trial=i == first, engines=tried, progress=progress))
    written = draw(found[first], trucks[first], plots) + _pose(found[first], trucks[first], plots)
    if as_json:
        emit("demo", {"trucks": [report(f) for f in found], "files": [str(p) for p in written]})
        return
    _show(trucks, found)
    click.echo("Pictures of bramble:")
    for path in written:
        click.echo(f"  {path}")
    click.echo(
        "\nNext:\n"
        "  crossfall weigh bramble               where its weight is\n"
        "  crossfall tilt bramble --all-round    the whole way round, and pictures with --plots\n"
        "  crossfall check FILE                  a truck file of your own: copy one from models/\n"
        "  crossfall --help                      everything else\n\n"
        "Scale models only: nothing here is a basis for a vehicle that carries people."
    )


def _show(trucks: list[Truck], found: list[Answers]) -> None:
    """A line a truck, then the three methods side by side for the first."""
    from rich.box import SIMPLE_HEAD
    from rich.table import Table

    from crossfall.truck.massprops import whole
    from crossfall.truck.ride import level_axle_loads

    title = "Three invented trucks, and the tilt at which each goes over"
    table = Table(title=title, title_justify="left", box=SIMPLE_HEAD, padding=0, show_edge=False)
    for name in ("truck", "mass\ng", "CG\nmm up", "front\n%"):
        table.add_column(name, justify="left" if name == "truck" else "right")
    for name in ("climb", "left\ndown", "descent", "right\ndown"):
        table.add_column(name, justify="right", no_wrap=True)
    table.add_column("at its weakest\nfirst it")
    for truck, one in zip(trucks, found, strict=True):
        body, loads = whole(truck), level_axle_loads(truck)
        worst = one.weakest
        table.add_row(
            truck.name,
            f"{body.mass * 1e3:.0f}",
            f"{body.cg[2] * 1e3:.0f}",
            f"{100 * loads[0] / loads.sum():.0f}",
            *(f"\\[{angle(a.tip)}]" if a.slides_first else angle(a.tip) for a in one.answers),
            "is a toss-up" if worst.outcome == "too close to call" else worst.outcome,
        )
    out = console()
    out.print()
    out.print(table)
    out.print(
        "Degrees of table tilt, on springs and tyres, on the first surface of each file. [In"
        " brackets]: it slides first, and would go over there against a rail.\n",
        style="dim",
        markup=False,
    )
    for one in found:
        if one.truck == "bramble":
            out.print(tips_table(one))
            out.print(f"\n{sentence_case(one.weakest.verdict)}.\n")


def _pose(found: Answers, truck: Truck, folder: Path) -> list[Path]:
    """The truck on the table at the last angle its weakest trial stood at."""
    import numpy as np

    from crossfall.show.polar import ground_words
    from crossfall.show.style import save
    from crossfall.show.tiltpose import draw_tiltpose, recorded

    worst = found.weakest
    trial = worst.trial
    if trial is None or trial.outcome != "tips":
        return []
    row = int(np.searchsorted(trial.record.theta, trial.tip)) - 1
    stance, loads = recorded(trial.record, row), trial.record.loads[row]
    theta, on = trial.record.theta[row], ground_words(worst.conditions)
    picture = draw_tiltpose(truck, worst.conditions.heading, theta, stance, loads, on)
    path = folder / f"{truck.name}-table.svg"
    save(picture, path)
    return [path]
