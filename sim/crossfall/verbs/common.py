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
