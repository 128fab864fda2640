"""`crossfall tilt TRUCK`: the main job, three answers for each heading."""

from __future__ import annotations

from math import ceil, degrees, isfinite, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument

if TYPE_CHECKING:
    from rich.table import Table

    from crossfall.compare import Comparison, HeadingAnswer
    from crossfall.truck.model import Truck

FOUR = (0.0, 90.0, 180.0, 270.0)
WHEELS = ("front_left", "front_right", "rear_left", "rear_right")


def finite(_: click.Context, __: click.Parameter, values: tuple[float, ...]) -> tuple[float, ...]:
    """Headings in degrees, brought into 0 to 360; NaN and infinities are no headings."""
    for value in values:
        if not isfinite(value):
            raise click.BadParameter(f"{value} is no heading; a number of degrees, as 90")
    return tuple(value % 360.0 for value in values)


@click.command()
@truck_argument
@click.option(
    "--heading",
    "headings",
    type=float,
    callback=finite,
    multiple=True,
    metavar="DEG",
    help="0 climbs, 90 has its left side down, 180 descends, 270 its right. May be repeated.",
)
@click.option("--all-round", is_flag=True, help="Every 15 degrees all the way round.")
@click.option("--both-sides", is_flag=True, help="Each heading and its mirror image.")
@click.option("--rail", is_flag=True, help="Hold the downhill tyres with a trip rail.")
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Write pictures.")
@click.option(
    "--record",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Keep the trial of the weakest heading, sample by sample (.npz).",
)
@json_option
def command(
    truck: str,
    headings: tuple[float, ...],
    all_round: bool,
    both_sides: bool,
    rail: bool,
    surface: str | None,
    plots: Path | None,
    record: Path | None,
    as_json: bool,
) -> None:
    """When does it tip, which way, and does it slide first?

    For each heading: the rigid closed form, the compliant equilibrium with its window over both
    friction closures, the virtual trial with its 95 % interval, and the slide range.
    """
    from crossfall.compare import compare

    loaded = load_and_warn(truck)
    asked = choose(headings, all_round, both_sides)
    with Progress(as_json) as progress:
        found = compare(
            loaded.truck, [radians(h) for h in asked], surface, rail=rail, progress=progress
        )
    written = draw(found, loaded.truck, plots) if plots is not None else []
    tried = found.weakest.trial
    if record is not None and tried is not None:
        tried.record.save(record)
        written.append(record)
    if as_json:
        emit("tilt", {**answer(found), "files": [str(p) for p in written]})
        return
    show(found)
    for path in written:
        click.echo(f"wrote {path}")


def choose(headings: tuple[float, ...], all_round: bool, both_sides: bool) -> list[float]:
    """The headings asked for, degrees, each once and in order of asking."""
    asked = list(headings) or ([] if all_round else list(FOUR))
    if all_round:
        asked += [15.0 * i for i in range(24)]
    if both_sides:
        asked = [h for one in asked for h in (one, -one % 360.0)]
    return list(dict.fromkeys(asked))


class Progress:
    """One line on a terminal's standard error; nothing anywhere else."""

    def __init__(self, quiet: bool) -> None:
        import sys

        self.on = not quiet and sys.stderr.isatty()

    def __enter__(self) -> Progress:
        return self

    def __call__(self, done: int, of: int) -> None:
        if self.on:
            click.echo(f"\rtrial {min(done + 1, of)} of {of} ", nl=False, err=True)

    def __exit__(self, *_: object) -> None:
        if self.on:
            click.echo("\r" + " " * 24 + "\r", nl=False, err=True)


def draw(found: Comparison, truck: Truck, folder: Path) -> list[Path]:
    """All pictures of a comparison, written into `folder`."""
    from crossfall.show.budget import draw_budget
    from crossfall.show.drawings import draw_truck
    from crossfall.show.loads import draw_loads
    from crossfall.show.polar import draw_polar
    from crossfall.show.style import save

    folder.mkdir(parents=True, exist_ok=True)
    pictures = {
        "drawing": draw_truck(truck),
        "tips": draw_polar(all_round(found, truck), truck),
        "budget": draw_budget(found),
    }
    worst = found.weakest
    if worst.trial is not None:
        pictures["loads"] = draw_loads(worst.trial, truck)
    written = []
    for name, picture in pictures.items():
        path = folder / f"{found.truck}-{name}.svg"
        save(picture, path)
        written.append(path)
    return written


def all_round(found: Comparison, truck: Truck) -> Comparison:
    """The comparison with the headings between filled in by statics alone, for the tip map."""
    from dataclasses import replace

    from crossfall.compare import compare

    asked = {round(degrees(a.heading)) % 360 for a in found.answers}
    missing = [radians(h) for h in range(0, 360, 15) if h not in asked]
    if not missing:
        return found
    between = compare(truck, missing, found.surface, trial=False)
    answers = sorted((*found.answers, *between.answers), key=lambda a: a.heading)
    return replace(found, answers=tuple(answers))


def answer(found: Comparison) -> dict[str, Any]:
    """A comparison in tuner's units."""
    return {
        "truck": found.truck,
        "digest": found.digest,
        "surface": found.surface,
        "versions": dict(found.versions),
        "headings": [_heading(a) for a in found.answers],
    }


def _heading(a: HeadingAnswer) -> dict[str, Any]:
    t = a.trial
    return {
        "heading_deg": round(degrees(a.heading), 9),
        "case": a.case,
        "over": a.over,
        "rigid_deg": degrees(a.rigid),
        "spec_sd_deg": degrees(a.spec_sd),
        "compliant_deg": None if a.friction_decides else degrees(a.compliant),
        "compliant_window_deg": [degrees(v) for v in a.window],
        "closures": ["uniform", "sticking"],
        "friction_decides": a.friction_decides,
        "first_lift_deg": degrees(a.first_lift),
        "lift_deg": {name: degrees(v) for name, v in zip(WHEELS, a.lift, strict=True)},
        "first_snap_deg": degrees(a.first_snap),
        "held_snap_deg": degrees(a.held_snap),
        "trial_outcome": t.outcome if t else None,
        "trial_deg": degrees(t.tip) if t else None,
        "trial_ci_deg": [degrees(v) for v in t.tip_ci] if t else None,
        "trial_event_deg": degrees(t.event) if t else None,
        "trial_load_left_pct": 100 * t.load_left if t else None,
        "trial_fit_deg": degrees(t.fit.value) if t and t.fit else None,
        "trial_fit_ci_deg": [degrees(t.fit.low), degrees(t.fit.high)] if t and t.fit else None,
        "trial_first_lift_deg": degrees(t.first_lift) if t else None,
        "slide_deg": {
            k: degrees(v) for k, v in zip(("low", "likely", "high"), a.slide, strict=True)
        },
        "tips_first_share": a.tips_first,
        "outcome": a.outcome,
        "budget_deg": {
            "rigid": degrees(a.budget.rigid),
            "tyres": degrees(a.budget.tyres),
            "extension": degrees(a.budget.extension),
            "compliant": degrees(a.budget.compliant),
            "held": degrees(a.budget.held),
            "trial": degrees(a.budget.trial),
            "steps": {name: degrees(v) for name, v in a.budget.steps},
        },
        "verdict": a.verdict,
    }


def show(found: Comparison) -> None:
    """The table a tuner reads, and a sentence a heading."""
    out = console()
    out.print()
    out.print(tips_table(found))
    out.print(
        "Degrees of table tilt; ± is about 95 %: of rigid (and as much of compliant) from the"
        " file's tolerances, of the trial from the trial. compliant: from one friction closure to"
        " the other where they differ. lifts: the first tyre leaves. slides: at lowest and highest"
        " grip.",
        style="dim",
    )
    out.print()
    for a in found.answers:
        out.print(f"• {sentence_case(a.verdict)}.")


def sentence_case(text: str) -> str:
    return text[:1].upper() + text[1:]


def tips_table(found: Comparison) -> Table:
    """Heading by heading: three answers, first lift, slide range, outcome; fits 80 columns."""
    from rich.box import SIMPLE_HEAD
    from rich.table import Table

    title = f"{found.truck} on {found.surface}"
    table = Table(title=title, title_justify="left", box=SIMPLE_HEAD, padding=0, show_edge=False)
    for name in ("heading", "rigid", "compliant", "trial", "lifts", "slides", "first it"):
        left = name in ("heading", "first it")
        table.add_column(name, justify="left" if left else "right", no_wrap=True)
    for a in found.answers:
        table.add_row(
            f"{degrees(a.heading):.0f} {short_case(a.case)}",
            f"{angle(a.rigid)} ±{2 * degrees(a.spec_sd):.1f}",
            window(a),
            trial_text(a),
            angle(a.first_lift),
            f"{degrees(a.slide[0]):.0f}\N{EN DASH}{degrees(a.slide[2]):.0f}",
            "is a toss-up" if a.outcome == "too close to call" else a.outcome,
        )
    return table


def short_case(case: str) -> str:
    """The case in as few words as a table has room for."""
    for long, short in (
        ("side-hill, ", ""),
        (" side down", " down"),
        ("diagonal ", ""),
        (", left down", ", left"),
        (", right down", ", right"),
    ):
        case = case.replace(long, short)
    return case


def angle(value: float) -> str:
    """One decimal of a degree, or a dash where there is none."""
    return f"{degrees(value):.1f}" if isfinite(value) else "-"


def window(a: HeadingAnswer) -> str:
    """One number where friction does not decide, else both ends."""
    low, high = a.window
    return f"{degrees(low):.1f}\N{EN DASH}{degrees(high):.1f}" if a.friction_decides else angle(low)


def trial_text(a: HeadingAnswer) -> str:
    """The trial's angle with half its interval, or what happened instead."""
    t = a.trial
    if t is None:
        return "-"
    if t.outcome != "tips":
        return t.outcome
    half = degrees(t.tip_ci[1] - t.tip_ci[0]) / 2
    return f"{degrees(t.tip):.1f} ±{ceil(10 * half) / 10:.1f}"
