"""The command line: `crossfall VERB FILE [options]`.

Each verb lives in `crossfall/verbs/NAME.py` as a click command called `command`, and is imported
only when it is used, so that a quick question stays quick. To add a verb, write that module and
give it a line in VERBS. Exit status: 0 answered, 1 answered "no", 2 bad input, 3 interrupted with
the work so far saved.
"""

from __future__ import annotations

import difflib
import importlib
import os
import sys

# Before numpy comes in: our matrices are small, and idle BLAS threads cost more than they do.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import click

VERBS = {
    "demo": "See it work: three trucks, a small table, pictures.",
    "begin": "A first truck file from a dozen readings of scale and ruler.",
    "check": "Is a truck file right, and how complete is it?",
    "keys": "Every key of a truck file and every material, with meaning and unit.",
    "weigh": "Where is the weight: mass, CG, loads, clearance angles.",
    "tilt": "When does it tip, which way, and does it slide first?",
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
    "spread": "How sure is the angle, and which input's doubt matters most?",
    "status": "How far has a sweep got, and what failed?",
    "report": "The table and the summary page of a sweep.",
}


class VerbGroup(click.Group):
    """A group that imports a verb only when it is called."""

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
    """Run, and turn every foreseen failure into one clear line and its exit status."""
    from crossfall.truck.problems import InputError

    try:
        status = crossfall.main(standalone_mode=False)
        sys.exit(status if isinstance(status, int) else 0)
    except InputError as error:
        for problem in error.problems:
            click.echo(f"crossfall: {problem}", err=True)
        sys.exit(2)
    except click.ClickException as error:
        click.echo(f"crossfall: {error.format_message()}", err=True)
        sys.exit(2)
    except (KeyboardInterrupt, click.Abort):
        click.echo("crossfall: stopped; what was finished is kept", err=True)
        sys.exit(3)
    except BrokenPipeError:
        # The reader of a pipe went away: not a failure, but Python must not complain at exit.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    except OSError as error:
        click.echo(f"crossfall: {error.filename or 'file'}: {error.strerror or error}", err=True)
        sys.exit(2)


if __name__ == "__main__":
    main()
