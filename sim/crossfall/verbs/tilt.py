"""`crossfall tilt TRUCK`: the main job, three answers for each heading."""

from __future__ import annotations

from math import ceil, degrees, isfinite, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import (
    console,
    emit,
    json_option,
    load_and_warn,
    say_how_it_stands,
    standing_options,
    stood,
    truck_argument,
)

if TYPE_CHECKING:
    from rich.table import Table

    from crossfall.answers.answer import Answers, TipAnswer
    from crossfall.engines.held import EngineName
    from crossfall.statics.traction import Traction
    from crossfall.trials.outcome import TiltTrial
    from crossfall.truck.model import Truck

FOUR = (0.0, 90.0, 180.0, 270.0)


def headings_option(
    _: click.Context, __: click.Parameter, values: tuple[float, ...]
) -> tuple[float, ...]:
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
    callback=headings_option,
    multiple=True,
    metavar="DEG",
    help="0 climbs, 90 has its left side down, 180 descends, 270 its right. May be repeated.",
)
@click.option("--all-round", is_flag=True, help="Every 15 degrees all the way round.")
@click.option("--both-sides", is_flag=True, help="Each heading and its mirror image.")
@click.option("--weakest", is_flag=True, help="The weakest heading, searched for all round.")
@click.option("--rail", is_flag=True, help="The same as --hold rail.")
@standing_options
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--no-trial", is_flag=True, help="Statics only: quick, and without the engine.")
@click.option("--quick", is_flag=True, help="Half the time, and intervals twice as wide.")
@click.option(
    "--engine",
    type=click.Choice(["bullet", "mujoco", "both"]),
    help="Which engine tries it out; both shows how far they agree, at the cost of both.",
)
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Write pictures.")
@click.option(
    "--record",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Keep the trial of the weakest heading, sample by sample (.npz); see refit.",
)
@json_option
def command(
    truck: str,
    headings: tuple[float, ...],
    all_round: bool,
    both_sides: bool,
    weakest: bool,
    rail: bool,
    hold: str | None,
    steer: float | None,
    surface: str | None,
    no_trial: bool,
    quick: bool,
    engine: str | None,
    plots: Path | None,
    record: Path | None,
    as_json: bool,
) -> None:
    """When does it tip, which way, and does it slide first?

    For each heading and the surface's own grip: the rigid closed form, the tip on springs and
    tyres with its 95 % range, the virtual trial with its 95 % interval, and the slide range.
    """
    from crossfall.answers.answer import answer, weakest_heading
    from crossfall.answers.conditions import conditions
    from crossfall.answers.keys import report
    from crossfall.statics.traction import traction
    from crossfall.truck.complete import how_it_stands

    loaded, rail = stood(load_and_warn(truck), hold, steer), rail or hold == "rail"
    given = choose(headings, all_round, both_sides, weakest)
    asked = conditions(
        loaded.truck, [radians(h) for h in given], surface, hold="rail" if rail else "brakes"
    )
    if weakest:
        asked = (*asked[:-1], weakest_heading(loaded.truck, asked[-1]))
    with ProgressLine(as_json) as progress:
        found = answer(
            loaded.truck,
            asked,
            trial=not no_trial,
            engines=None if no_trial else engines(engine),
            care="quick" if quick else "careful",
            progress=progress,
        )
    written = draw(found, loaded.truck, plots) if plots is not None else []
    tried = found.weakest.trial
    if record is not None and tried is not None:
        from crossfall.trials.saved import save_trial

        save_trial(tried, record, dict(found.versions))
        written.append(record)
    if as_json:
        from crossfall.verbs.weigh import traction_answer

        drives = traction_answer(traction(loaded.truck, asked[0].grip))
        stands = {"stands": list(how_it_stands(loaded.spec))}
        files = {"files": [str(p) for p in written]}
        emit("tilt", {**report(found), **stands, "traction": drives, **files})
        return
    _show(found)
    say_how_it_stands(loaded.spec)
    show_drive(loaded.truck, traction(loaded.truck, asked[0].grip))
    for path in written:
        click.echo(f"wrote {path}")


def choose(
    headings: tuple[float, ...], all_round: bool, both_sides: bool, weakest: bool = False
) -> list[float]:
    """The headings asked for, degrees, each once and in order of asking.

    weakest: a place is kept for it at the end.
    """
    asked = list(headings) or ([] if all_round or weakest else list(FOUR))
    if all_round:
        asked += [15.0 * i for i in range(24)]
    if both_sides:
        asked = [h for one in asked for h in (one, -one % 360.0)]
    return list(dict.fromkeys(asked)) + ([0.0] if weakest else [])


def engines(asked: str | None) -> tuple[EngineName, ...]:
    """Which engines try it out: those asked for, else the usual one, which is said once where it
    is the second choice."""
    from crossfall.engines.held import engines_named, installed, usual_engine

    if asked is not None:
        return engines_named(asked)
    if not installed("bullet"):
        click.echo(
            "crossfall: pybullet has no build for this Python and system; MuJoCo tries it out",
            err=True,
        )
    return (usual_engine(),)


class ProgressLine:
    """One line on a terminal's standard error, with what is left where that is long; nothing
    anywhere else."""

    WIDE = 40

    def __init__(self, quiet: bool, what: str = "trial") -> None:
        import sys
        from time import monotonic

        self.on, self.what = not quiet and sys.stderr.isatty(), what
        self.clock, self.began = monotonic, monotonic()

    def __enter__(self) -> ProgressLine:
        return self

    def __call__(self, done: int, of: int) -> None:
        if self.on:
            line = f"{self.what} {min(done + 1, of)} of {of}"
            left = (self.clock() - self.began) * (of - done) / done if done else 0.0
            if left > 2.0:
                line += f", some {left:.0f} s left"
            click.echo(f"\r{line:<{self.WIDE}}", nl=False, err=True)

    def __exit__(self, *_: object) -> None:
        if self.on:
            click.echo("\r" + " " * self.WIDE + "\r", nl=False, err=True)


def draw(found: Answers, truck: Truck, folder: Path) -> list[Path]:
    """All pictures of the answers, written into `folder`."""
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
        pictures["loads"] = draw_loads(worst, truck)
    written = []
    for name, picture in pictures.items():
        path = folder / f"{found.truck}-{name}.svg"
        save(picture, path)
        written.append(path)
    return written


def all_round(found: Answers, truck: Truck) -> Answers:
    """The answers with the headings between filled in by statics alone, for the tip map."""
    from dataclasses import replace

    from crossfall.answers.answer import answer

    known = {round(degrees(a.conditions.heading), 6) % 360 for a in found.answers}
    like = found.answers[0].conditions
    missing = [replace(like, heading=radians(h)) for h in range(0, 360, 15) if h not in known]
    if not missing:
        return found
    between = answer(truck, missing, trial=False)
    answers = sorted((*found.answers, *between.answers), key=lambda a: a.conditions.heading)
    return replace(found, answers=tuple(answers))


def _show(found: Answers) -> None:
    """The table a tuner reads, and a sentence a heading."""
    out = console()
    out.print()
    out.print(tips_table(found))
    out.print(
        "Degrees of table tilt. compliant: on springs and tyres, with its 95 % range over every"
        " tolerance of the file and the grip; [rail]: it slides first, and would tip there against"
        " a rail. trial: ± 95 %. lifts: the first tyre leaves. slides: at lowest and highest grip.",
        style="dim",
        markup=False,
    )
    out.print()
    if any(a.other for a in found.answers):
        out.print(engines_table(found))
        out.print()
    for a in found.answers:
        out.print(f"• {sentence_case(a.verdict)}.")


def show_drive(truck: Truck, drives: Traction) -> None:
    """What drives it up a grade, and what holds it there, on this surface."""
    from crossfall.verbs.weigh import traction_table, traction_words

    out = console()
    out.print()
    out.print(traction_table([drives]))
    out.print(traction_words(truck, drives), style="dim")


def sentence_case(text: str) -> str:
    return text[:1].upper() + text[1:]


def tips_table(found: Answers) -> Table:
    """Heading by heading: three answers, first lift, slide range, outcome; fits 80 columns."""
    from rich.box import SIMPLE_HEAD
    from rich.table import Table

    grip = found.answers[0].conditions.grip
    title = f"{found.truck} on {found.surface}, grip {grip.likely:g}"
    if found.answers[0].conditions.rail:
        title += ", against a rail"
    table = Table(title=title, title_justify="left", box=SIMPLE_HEAD, padding=0, show_edge=False)
    for name in ("heading", "rigid", "compliant", "95 %", "trial", "lifts", "slides", "first it"):
        left = name in ("heading", "first it")
        table.add_column(name, justify="left" if left else "right", no_wrap=True)
    for a in found.answers:
        table.add_row(
            f"{degrees(a.conditions.heading):.0f} {short_case(a.case)}",
            angle(a.rigid),
            f"\\[{angle(a.rail)}]" if a.slides_first else angle(a.tip),
            span_text(a.range.tip),
            trial_text(a),
            angle(a.first_lift),
            span_text((a.slide[0], a.slide[2]), 0),
            "is a toss-up" if a.outcome == "too close to call" else a.outcome,
        )
    return table


def engines_table(found: Answers) -> Table:
    """The trials of both engines side by side."""
    from rich.box import SIMPLE_HEAD
    from rich.table import Table

    tries = [(a, a.trial, a.other) for a in found.answers if a.trial and a.other]
    table = Table(title="two engines", title_justify="left", box=SIMPLE_HEAD, show_edge=False)
    table.add_column("heading", no_wrap=True)
    for name in (tries[0][1].engine, tries[0][2].engine, "apart"):
        table.add_column(name, justify="right", no_wrap=True)
    for a, one, two in tries:
        apart = f"{degrees(a.engines_apart):.2f}" if isfinite(a.engines_apart) else "-"
        heading = f"{degrees(a.conditions.heading):.0f} {short_case(a.case)}"
        table.add_row(heading, went(one), went(two), apart)
    return table


def went(trial: TiltTrial) -> str:
    """How and where one trial went, and how far the farther end of its interval lies."""
    angle, ends = trial.tip, trial.tip_ci
    if trial.outcome == "slides":
        angle, ends = trial.slide, trial.slide_ci
    if not isfinite(angle):
        return trial.outcome
    return f"{trial.outcome} {degrees(angle):.2f} ±{degrees(_reach(angle, ends)):.2f}"


def _reach(angle: float, ends: tuple[float, float]) -> float:
    """What ± has to say that both ends of an interval are within it: they may lie unevenly."""
    return max(ends[1] - angle, angle - ends[0])


def span_text(ends: Any, digits: int = 1) -> str:
    low, high = (f"{degrees(v):.{digits}f}" for v in ends)
    return low if low == high else f"{low}\N{EN DASH}{high}"


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


def trial_text(a: TipAnswer) -> str:
    """The trial's angle with what its interval needs, or what happened instead."""
    t = a.trial
    if t is None:
        return "-"
    if t.outcome != "tips":
        return t.outcome
    half = degrees(_reach(t.tip, t.tip_ci))
    return f"{degrees(t.tip):.1f} ±{ceil(10 * half) / 10:.1f}"
