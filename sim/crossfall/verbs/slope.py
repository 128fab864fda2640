"""`crossfall slope TRUCK`: driving across, up, down and onto a slope, by trials."""

from __future__ import annotations

from math import cos, degrees, isfinite, radians
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import as_figures
from crossfall.verbs.common import (
    F,
    Number,
    console,
    emit,
    json_option,
    load_and_warn,
    truck_argument,
)

if TYPE_CHECKING:
    from crossfall.study.slopes import Crossing, SlopeStudy
    from crossfall.trials.drive import Drive
    from crossfall.trials.ramp import RampTrial
    from crossfall.trials.slope import SlopeTrial
    from crossfall.truck.build import Loaded
    from crossfall.truck.model import Grip, Truck

_WHEELS = ("front left", "front right", "rear left", "rear right")
PASSED = ("crossed", "climbs", "descends", "up")


def ground_options(function: F) -> F:
    """An option for every key of every ground."""
    from crossfall.trials.grounds import ground_keys

    for key in reversed(ground_keys().values()):
        sizes = f"{key.least:g} to {key.high:g} {key.unit}"
        refusal = f"no {key.says}: {sizes}, and without one leave the option out"
        kind = click.STRING if key.file else Number(key.least, key.high, refusal)
        shown = "FILE" if key.file else key.unit.upper()
        text = f"{key.says[0].upper()}{key.says[1:]}."
        function = click.option(key.option, key.key, type=kind, metavar=shown, help=text)(function)
    return function


@click.command()
@truck_argument
@click.option("--slope", type=Number(0, 85), metavar="DEG", help="One trial on this slope.")
@click.option(
    "--heading", type=Number(-360, 360), metavar="DEG", help="As for tilt; 90 drives across."
)
@click.option("--speed", type=Number(10, 3000), default=150, show_default=True, metavar="MM/S")
@ground_options
@click.option(
    "--drive",
    "programme",
    type=click.Choice(["start", "stop", "throttle step", "brake step"]),
    help="Up or down the slope, with this programme; heading 0 if not given.",
)
@click.option("--ramp", type=Number(1, 85), metavar="DEG", help="From the level onto a ramp.")
@click.option("--oblique", type=Number(-60, 60), default=0.0, metavar="DEG", help="Onto it askew.")
@click.option(
    "--rise",
    type=Number(1, 5000),
    metavar="MM",
    help="How high the ramp goes; if not given, the whole truck has room on it.",
)
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--grip", type=Number(0.01, 5), metavar="MU", help="One coefficient instead.")
@click.option(
    "--open",
    "opened",
    type=click.Choice(["front", "rear", "both"]),
    help="Axles with an open differential; as the file says if not given.",
)
@click.option(
    "--shaft-ratio",
    type=Number(0.1, 200),
    metavar="N",
    help="Shaft turns per wheel turn; the file's axle_ratio, or 3, if not given.",
)
@click.option("--within", type=Number(0.05, 5), default=0.5, show_default=True, metavar="DEG")
@click.option("--trials", type=click.IntRange(8, 500), default=40, show_default=True, metavar="N")
@click.option("--seed", type=click.IntRange(0), default=0, metavar="N")
@click.option(
    "--record",
    type=click.Path(path_type=Path, dir_okay=False),
    metavar="FILE",
    help="Keep a single trial, sample by sample (.npz).",
)
@json_option
def command(truck: str, as_json: bool, record: Path | None, **asked: Any) -> int:
    """What happens on a slope: crossed, slid, rolled over?

    With --slope one trial, with --ramp one entry; otherwise the critical slope is searched by
    trials and held against the static answer, which leaves the degrees to keep in hand. The exit
    status of a single trial is 1 where the truck does not get through.
    """
    from crossfall.study.slopes import left_out

    _check(asked, record)
    loaded = load_and_warn(truck)
    left, assumed = left_out(loaded.truck), _assumed(loaded, asked)
    about = {"truck": loaded.truck.name, "left_out": list(left), "assumed": list(assumed)}
    if asked["slope"] is None and asked["ramp"] is None:
        study = _search(loaded.truck, asked, quiet=as_json)
        if as_json:
            emit("slope", {**about, **study_answer(study, radians(asked["within"]))})
        else:
            show_study(loaded.truck, study, radians(asked["within"]))
            _say((*left, *assumed))
        return 0 if study.critical.settled else 1
    trial = single(loaded.truck, asked)
    if record is not None:
        trial.journey.record.save(record)
    if as_json:
        emit("slope", {**about, **trial_answer(loaded.truck, trial)})
    else:
        show_trial(loaded.truck, trial)
        _say((*left, *assumed))
    return 0 if trial.outcome in PASSED else 1


def _assumed(loaded: Loaded, asked: dict[str, Any]) -> tuple[str, ...]:
    """What of its drive is not known, a sentence each."""
    from crossfall.truck.schema import TYPICAL_AXLE_RATIO

    if asked["shaft_ratio"] is not None or loaded.spec.chassis.axle_ratio is not None:
        return ()
    turns = f"its shafts turn {TYPICAL_AXLE_RATIO:g} times for each turn of a wheel"
    return (f"{turns}, which is assumed: give axle_ratio",)


def _say(left: tuple[str, ...]) -> None:
    for said in left:
        console().print(f"Here {said}.", style="dim", markup=False)


def _check(asked: dict[str, Any], record: Path | None) -> None:
    """Options that contradict each other. Raises click.UsageError."""
    from crossfall.trials.grounds import asked_grounds, grounds

    kinds = asked_grounds(asked)
    laid = [kind.keys[0].option for kind in kinds]
    both = {
        " and ".join(laid): len(laid) > 1,
        "--ramp and --slope": asked["ramp"] and asked["slope"] is not None,
        "--ramp and --drive": asked["ramp"] and asked["programme"],
        f"--ramp and {laid[0]}" if laid else "": asked["ramp"] and laid,
        "--ramp and --heading": asked["ramp"] and asked["heading"] is not None,
        "--surface and --grip": asked["surface"] and asked["grip"],
    }
    for names, clash in both.items():
        if clash:
            raise click.UsageError(f"{names} do not go together")
    for name in ("rise", "oblique"):
        if asked[name] and not asked["ramp"]:
            raise click.UsageError(f"--{name} needs --ramp: how steep is it?")
    for kind in grounds().values():
        for key in kind.keys[1:]:
            if asked[key.key] is not None and kind not in kinds:
                raise click.UsageError(f"{key.option} needs {kind.keys[0].option}")
    if asked["programme"] and asked["slope"] is None:
        raise click.UsageError("--drive needs --slope: how steep is it?")
    if record is not None and asked["slope"] is None and asked["ramp"] is None:
        raise click.UsageError("--record keeps a single trial; give --slope or --ramp")


def driveline(asked: dict[str, Any]) -> Drive:
    from crossfall.trials.drive import Drive

    opened = asked["opened"]
    locked = None
    if opened is not None:
        locked = (opened == "rear", opened == "front")
    return Drive(locked=locked, shaft_ratio=asked["shaft_ratio"])


def grips(truck: Truck, asked: dict[str, Any]) -> Grip | float:
    """The coefficient given, or the range of the surface. Raises InputError."""
    from crossfall.answers.conditions import choose_grip

    return asked["grip"] or choose_grip(truck, asked["surface"])


def crossing(truck: Truck, asked: dict[str, Any]) -> Crossing:
    from crossfall.study.slopes import Crossing
    from crossfall.trials.grounds import ground_of

    heading = asked["heading"]
    if heading is None:
        heading = 0.0 if asked["programme"] else 90.0
    return Crossing(
        heading=radians(heading % 360.0),
        speed=asked["speed"] / 1000,
        ground=ground_of(asked, Path()),
        drive=driveline(asked),
        grip=grips(truck, asked),
        seed=asked["seed"],
    )


def single(truck: Truck, asked: dict[str, Any]) -> SlopeTrial | RampTrial:
    """One trial at the likely grip, on ground number 0 of the seed."""
    from crossfall.study.slopes import drawn_ground, likely
    from crossfall.trials.ramp import ramp_entry
    from crossfall.trials.slope import climb_slope, cross_slope, programmes

    drive, grip = driveline(asked), likely(grips(truck, asked))
    if asked["ramp"]:
        angle, oblique = radians(asked["ramp"]), radians(asked["oblique"])
        return ramp_entry(
            truck,
            angle,
            oblique=oblique,
            rise=asked["rise"] / 1000 if asked["rise"] else None,
            speed=asked["speed"] / 1000,
            drive=drive,
            grip=grip,
        )
    wanted = crossing(truck, asked)
    ground, slope = drawn_ground(wanted, 0)[0], radians(asked["slope"])
    if asked["programme"]:
        commands = programmes(asked["speed"] / 1000, drive)[asked["programme"]]
        return climb_slope(
            truck, slope, commands, heading=wanted.heading, ground=ground, drive=drive, grip=grip
        )
    return cross_slope(
        truck,
        slope,
        heading=wanted.heading,
        speed=wanted.speed,
        ground=ground,
        drive=drive,
        grip=grip,
    )


def _search(truck: Truck, asked: dict[str, Any], *, quiet: bool) -> SlopeStudy:
    import sys

    from crossfall.study.slopes import critical_slope

    loud = not quiet and sys.stderr.isatty()

    def watch(count: int, angle: float, outcome: str) -> None:
        if loud:
            click.echo(f"\rtrial {count}: {degrees(angle):.1f}° {outcome:<12}", nl=False, err=True)

    found = critical_slope(
        truck,
        crossing(truck, asked),
        half_width=radians(asked["within"]),
        most=asked["trials"],
        watch=watch,
    )
    if loud:
        click.echo("\r" + " " * 40 + "\r", nl=False, err=True)
    return found


# Answers


def grams(force: float) -> float:
    """What a kitchen scale would show for a force in N."""
    from crossfall.truck.model import GRAVITY

    return 1000 * force / GRAVITY


def trial_answer(truck: Truck, trial: SlopeTrial | RampTrial) -> dict[str, Any]:
    from crossfall.study.slopes import standing_reserve
    from crossfall.trials.ramp import POINTS, RampTrial

    stands = standing_reserve(truck, trial)
    shared = {
        "outcome": trial.outcome,
        "grip": trial.grip,
        "standing_tip_deg": degrees(stands.tip),
        "reserve_deg": degrees(stands.reserve),
        "least_load_g": grams(trial.least_load),
        "least_geometric_margin_deg": degrees(trial.least_margin),
        "travelled_mm": 1000 * trial.travelled,
        "cpu_s": trial.seconds,
        "engine": trial.engine,
    }
    if isinstance(trial, RampTrial):
        touched = {
            f"{name}_touched_at_mm": 1000 * at
            for name, at in zip(POINTS, trial.touched, strict=True)
        }
        needed = {
            "needed_mm": 1000 * trial.needed,
            "on_ramp_mm": 1000 * trial.on_ramp,
            "climbed": trial.climbed,
        }
        return {"trial": "ramp", "ground": trial.ramp.said(), **shared, **needed, **touched}
    return {
        "trial": "slope",
        "heading_deg": round(degrees(trial.heading), 9),
        "slope_deg": round(degrees(trial.slope), 9),
        "ground": trial.ground.said(),
        **shared,
        "least_wheel": _WHEELS[trial.least_wheel],
        "slid_mm": 1000 * trial.slid,
        "spun_mm": 1000 * trial.spun,
    }


def study_answer(study: SlopeStudy, within: float) -> dict[str, Any]:
    from crossfall.study.slopes import varies, what_closes

    fit, asked = study.critical.fit, study.crossing
    return {
        "trial": "critical slope",
        "heading_deg": round(degrees(asked.heading), 9),
        "speed_mm_per_s": 1000 * asked.speed,
        "ground": asked.ground.said(),
        "critical_deg": degrees(fit.angle),
        "critical_ci_deg": [degrees(fit.low), degrees(fit.high)],
        "spread_deg": degrees(fit.spread),
        "settled": study.critical.settled,
        "what_closes": what_closes(study.critical, within, sharp=not varies(asked)),
        "trials": study.critical.trials,
        "outcomes": [
            {"slope_deg": degrees(angle), "outcome": outcome}
            for angle, outcome in zip(study.critical.angles, study.outcomes, strict=True)
        ],
        "compliant_deg": degrees(study.compliant),
        "slide_deg": degrees(study.slide),
        "static_deg": degrees(study.static),
        "static_first": study.first,
        "allowance_deg": degrees(study.allowance),
        "allowance_ci_deg": [degrees(v) for v in study.allowance_ci],
        "cpu_s": study.seconds,
    }


def show_trial(truck: Truck, trial: SlopeTrial | RampTrial) -> None:
    from rich.table import Table

    from crossfall.study.slopes import standing_reserve
    from crossfall.trials.ramp import POINTS, RampTrial

    stands = standing_reserve(truck, trial)
    table = Table(show_header=False, title=f"{truck.name}: {trial.outcome}", title_justify="left")
    table.add_column()
    table.add_column(justify="right")
    if isinstance(trial, RampTrial):
        table.add_row("ramp", f"{degrees(trial.ramp.angle):.1f}°")
        table.add_row("rise", f"{1000 * trial.ramp.rise:.0f} mm")
        table.add_row("came", f"{1000 * trial.travelled:.0f} of {1000 * trial.needed:.0f} mm")
        climbed = "climbed" if trial.climbed else "less than a wheelbase"
        table.add_row("up it on all wheels", f"{1000 * trial.on_ramp:.0f} mm, {climbed}")
        for name, at in zip(POINTS, trial.touched, strict=True):
            table.add_row(f"{name} touched", f"at {1000 * at:.0f} mm" if isfinite(at) else "never")
        table.add_row("least load on a wheel", f"{grams(trial.least_load):.0f} g")
    else:
        table.add_row("slope", f"{degrees(trial.slope):.1f}°")
        table.add_row("heading", f"{degrees(trial.heading):.0f}° {way(trial.heading)}")
        table.add_row("came", f"{1000 * trial.travelled:.0f} mm")
        table.add_row("off its line", f"{1000 * trial.slid:.0f} mm")
        least = f"{grams(trial.least_load):.0f} g, {_WHEELS[trial.least_wheel]}"
        table.add_row("least load on a wheel", least)
    table.add_row("standing there it tips at", f"{degrees(stands.tip):.1f}°")
    table.add_row("in reserve", f"{as_figures(degrees(stands.reserve), 1)}°")
    console().print(table)


def way(heading: float) -> str:
    up = cos(heading)
    return "up" if up > 0.7 else "down" if up < -0.7 else "across"


def show_study(truck: Truck, study: SlopeStudy, within: float) -> None:
    from crossfall.study.slopes import varies, what_closes

    fit, out = study.critical.fit, console()
    low, high = (f"{degrees(v):.1f}°" if isfinite(v) else "open" for v in (fit.low, fit.high))
    count = f"{study.critical.trials} trials"
    if varies(study.crossing):
        half = f"half of the trials fail at {degrees(fit.angle):.1f}°"
        out.print(f"{truck.name}: {half} (95 % interval {low} to {high}; {count}).")
    else:
        out.print(f"{truck.name}: gets across at {low}, fails at {high} ({count}).")
    counts = {o: study.outcomes.count(o) for o in dict.fromkeys(study.outcomes)}
    out.print("Outcomes: " + ", ".join(f"{n} {o}" for o, n in counts.items()) + ".")
    out.print(
        f"Standing there it {study.first} at {degrees(study.static):.1f}° "
        f"(tips at {degrees(study.compliant):.1f}°"
        + (f", slides at {degrees(study.slide):.1f}°)." if isfinite(study.slide) else ").")
    )
    hand = degrees(study.allowance)
    out.print(
        f"Keep {hand:.1f}° in hand when driving."
        if hand > 0
        else "Driving like this costs nothing against standing."
    )
    if closes := what_closes(study.critical, within, sharp=not varies(study.crossing)):
        out.print(closes)
