"""`crossfall status SCENARIO`: how far a sweep has got, from any terminal."""

from __future__ import annotations

import time
from pathlib import Path
from typing import TYPE_CHECKING

import click

from crossfall.verbs.common import emit, json_option

if TYPE_CHECKING:
    from crossfall.study.task import Batch


@click.command()
@click.argument("scenario", metavar="SCENARIO")
@click.option("-o", "--out", type=click.Path(path_type=Path), help="Folder of the results.")
@json_option
def command(scenario: str, out: Path | None, as_json: bool) -> None:
    """How far a sweep has got, and what failed; safe to ask while it runs.

    SCENARIO is what `crossfall sweep` was given, or the folder of its results.
    """
    from crossfall.study.store import CHANGED, status
    from crossfall.study.sweep import STORE, folder_of
    from crossfall.verbs.sweep import duration

    store = (out or folder_of(scenario)) / STORE
    found = status(store, _asked(scenario))
    since = time.time() - found.last if found.last else None
    if as_json:
        emit(
            "status",
            {
                "scenario": found.name,
                "running": found.running,
                "trials": found.total,
                "done": found.done,
                "failed": found.failed,
                "rate_per_s": found.rate,
                "left_s": found.seconds_left,
                "since_last_s": since,
                "changed": found.changed,
                "causes": [{"cause": c, "trials": n} for c, n in found.causes],
                "store": str(store),
            },
        )
        return
    state = "running" if found.running else "not running"
    click.echo(f"{found.name}: {state}")
    share = 100 * (found.done + found.failed) / max(found.total, 1)
    click.echo(f"  {found.done:,} done, {found.failed:,} failed of {found.total:,} ({share:.1f} %)")
    if found.changed:
        click.echo(f"  {CHANGED}")
    if found.running and found.rate > 0:
        click.echo(f"  {found.rate:.1f} trials/s, {duration(found.seconds_left)} left")
    if since is not None:
        click.echo(f"  last trial {duration(since)} ago")
    for cause, count in found.causes[:10]:
        click.echo(f"  {count:,} x {cause}")


def _asked(scenario: str) -> Batch | None:
    """What a sweep would do now; None for a folder of results, or a scenario in the making."""
    from crossfall.study.scenario import load_scenario
    from crossfall.study.sweep import batch_of
    from crossfall.truck.errors import InputError

    if Path(scenario).is_dir():
        return None
    known = scenario if Path(scenario).is_file() or not Path(f"{scenario}.toml").is_file() else ""
    try:
        return batch_of(load_scenario(known or f"{scenario}.toml"))
    except InputError:
        return None
