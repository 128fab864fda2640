"""The command line: `crossfall VERB FILE [options]`.

Each verb lives in `crossfall/verbs/NAME.py` as a click command called `command`, and is imported
only when it is used, so that a quick question stays quick. To add a verb, write that module and
give it a line in VERBS. How a command ends, and with which exit status, is in `verbs/ending.py`.
"""

from __future__ import annotations

import difflib
import importlib
import os
import sys
from typing import Any

# Before numpy comes in: our matrices are small, and idle BLAS threads cost more than they do.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import click

from crossfall.verbs.ending import end, reader_may_leave

VERBS = {
    "demo": "See it work: three trucks, a small table, pictures.",
    "begin": "A first truck file from a dozen readings of scale and ruler.",
    "check": "Is a truck file right, and how complete is it?",
    "keys": "Every key of a truck file and every material, with meaning and unit.",
    "weigh": "Where is the weight: mass, CG, loads, clearance angles.",
    "suspension": "Where links and shocks put roll and instant centres, and how they wander.",
    "tilt": "When does it tip, which way, and does it slide first?",
    "converge": "Does the trial's angle hang on step, rate or engine?",
    "refit": "What a kept trial says, concluded from its record anew.",
    "slope": "Drive across, up, down or onto a slope: does it get through?",
    "urdf": "Write the truck as a standard multibody model.",
    "guide": "How to measure a truck in ten minutes, as a page with pictures.",
    "weigh-in": "Mass and CG of the real truck from a kitchen scale and a block.",
    "board": "Measured tip angles against predicted ones; if they differ, why.",
    "reconcile": "A new chassis file that agrees with scale and board.",
    "whatif": "What would each change buy, and what does it cost elsewhere?",
    "fit": "Write the truck with chosen changes to a new file.",
    "gains": "Where does a gram help, and where does it hurt?",
    "runtime": "How long does the pack last, and what do minutes cost in degrees?",
    "limits": "Does the truck keep to the limits of a class?",
    "plan": "Which set of changes is the best for the money?",
    "sheet": "One page to hand over: drawings, weights, tips, changes, tilt-board card.",
    "bench": "Open the bench in the browser, for looking and dragging.",
    "sweep": "Try many builds; stopped or killed, it goes on where it was.",
    "spread": "How sure is the angle, and which input's uncertainty matters most?",
    "sensitivity": "Which axis of a scenario matters, over its whole range?",
    "status": "How far has a sweep got, and what failed?",
    "names": "Every name of an answer and of the Python front door, with its meaning.",
    "report": "The table and the summary page of a sweep.",
}


class VerbGroup(click.Group):
    """A group that imports a verb only when it is called."""

    def make_context(
        self,
        info_name: str | None,
        args: list[str],
        parent: click.Context | None = None,
        **extra: Any,
    ) -> click.Context:
        with reader_may_leave():
            return super().make_context(info_name, args, parent, **extra)

    def invoke(self, ctx: click.Context) -> Any:
        with reader_may_leave():
            return super().invoke(ctx)

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(VERBS)

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in VERBS:
            return None
        module = importlib.import_module(f"crossfall.verbs.{cmd_name.replace('-', '_')}")
        command: click.Command = module.command
        return command

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        name = args[0] if args else ""
        if name and not name.startswith("-") and name not in VERBS:
            close = difflib.get_close_matches(name, VERBS, n=1)
            hint = f"; did you mean '{close[0]}'?" if close else f"; there are {', '.join(VERBS)}"
            raise click.UsageError(f"no verb '{name}'{hint}", ctx)
        return super().resolve_command(ctx, args)

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        with formatter.section("Verbs"):
            formatter.write_dl(list(VERBS.items()))


@click.group(cls=VerbGroup, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="crossfall")
def crossfall() -> None:
    """A virtual tilt table for scale off-road trucks.

    TRUCK is a chassis file (TOML) or the name of a demo truck: bramble, thistle, burdock.
    Every verb takes --json. Scale models only: nothing here is a basis for a vehicle that
    carries people.
    """


def main() -> None:
    """Run, and turn every failure into one clear line and its exit status."""
    sys.exit(end(lambda: crossfall.main(standalone_mode=False), sys.argv[1:]))


if __name__ == "__main__":
    main()
