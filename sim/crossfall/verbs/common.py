"""What every verb shares: the JSON answer, the console, and the truck argument."""

from __future__ import annotations

import json
import math
from collections.abc import Callable
from typing import TYPE_CHECKING, Any, TypeVar

import click

if TYPE_CHECKING:
    from rich.console import Console

    from crossfall.truck.build import Loaded
    from crossfall.truck.errors import Problem
    from crossfall.truck.schema import TruckSpec

F = TypeVar("F", bound=Callable[..., Any])


class Number(click.FloatRange):
    """A finite number from low to high, or between them with open ends.

    refusal: what to say of any other, after the value itself.
    """

    def __init__(
        self, low: float, high: float, refusal: str = "", *, open_ends: bool = False
    ) -> None:
        super().__init__(low, high, min_open=open_ends, max_open=open_ends)
        words = f"between {low:g} and {high:g}" if open_ends else f"from {low:g} to {high:g}"
        self.refusal = refusal or f"no number {words}"

    def convert(
        self, value: Any, param: click.Parameter | None, ctx: click.Context | None
    ) -> float:
        """The range alone would let NaN through."""
        try:
            number = float(super().convert(value, param, ctx))
        except click.BadParameter:
            number = math.nan
        if not math.isfinite(number):
            self.fail(f"{value} is {self.refusal}", param, ctx)
        return number


def json_option(function: F) -> F:
    """`--json`, passed on as `as_json`."""
    return click.option("--json", "as_json", is_flag=True, help="Print one JSON object.")(function)


def truck_argument(function: F) -> F:
    """The TRUCK argument: a file, or the name of a demo truck."""
    return click.argument("truck", metavar="TRUCK")(function)


def emit(verb: str, answer: dict[str, Any]) -> None:
    """Print the one JSON object of a verb. Numbers that do not exist come out as null."""
    from crossfall.answers.keys import SCHEMA

    click.echo(json.dumps(plain_json({"schema": SCHEMA, "verb": verb, **answer}), indent=2))


def problem_keys(problem: Problem) -> dict[str, Any]:
    """A mistake as JSON says it."""
    return {
        "file": problem.file,
        "line": problem.line,
        "key": problem.key,
        "what": problem.what,
        "allowed": problem.allowed,
    }


def plain_json(value: Any) -> Any:
    """The same value in JSON's own types; NaN and infinities become None."""
    if isinstance(value, dict):
        return {str(k): plain_json(v) for k, v in value.items()}
    if isinstance(value, (list, tuple)):
        return [plain_json(v) for v in value]
    if hasattr(value, "tolist"):
        return plain_json(value.tolist())
    if isinstance(value, float):
        return value if math.isfinite(value) else None
    return value


def console() -> Console:
    """Where tables go: plain when not a terminal, no line longer than the reader's screen."""
    from rich.console import Console

    class Piped(Console):
        def on_broken_pipe(self) -> None:
            """It would end with 1, which means "no"."""
            raise BrokenPipeError

    return Piped(highlight=False, soft_wrap=False)


def warn(text: str) -> None:
    """A warning on standard error, so that it never mixes with the answer."""
    click.echo(f"crossfall: warning: {text}", err=True)


def load_and_warn(truck: str) -> Loaded:
    """The truck of a TRUCK argument, its warnings told. Raises InputError for one that is none."""
    from crossfall.truck.build import load_truck

    loaded = load_truck(truck)
    for warning in loaded.warnings:
        warn(str(warning))
    return loaded


def standing_options(function: F) -> F:
    """--hold and --steer, as `hold` and `steer`; see `stood`."""
    hold = click.option(
        "--hold",
        type=click.Choice(["brakes", "rail", "motor"]),
        help="What holds the wheels: their brakes; besides, a trip rail; or the motor's shafts.",
    )
    steer = click.option(
        "--steer", type=float, metavar="DEG", help="Turn the front wheels so far to the left."
    )
    return hold(steer(function))


def stood(loaded: Loaded, hold: str | None, steer: float | None) -> Loaded:
    """The truck as it stands with these options, and as of its file without. Raises InputError."""
    from dataclasses import replace

    from crossfall.truck.build import build
    from crossfall.truck.edits import set_values

    keys: dict[str, Any] = {}
    if hold in ("brakes", "motor"):
        keys["chassis.held_by"] = hold
    if steer is not None:
        keys["chassis.steer_deg"] = steer
    if not keys:
        return loaded
    spec = set_values(loaded.spec, keys)
    return replace(loaded, spec=spec, truck=build(spec, loaded.folder)[0])


def say_how_it_stands(spec: TruckSpec) -> None:
    """A line for each thing that is unusual about it."""
    from crossfall.truck.complete import how_it_stands

    for said in how_it_stands(spec):
        console().print(f"It stands {said}.", style="dim", markup=False)
