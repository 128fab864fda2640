"""`crossfall status SCENARIO`: how far a sweep has got, from any terminal."""

from __future__ import annotations

import time
from pathlib import Path

import click

from crossfall.verbs.common import emit, json_option


@click.command()
@click.argument("scenario", metavar="SCENARIO")
@click.option("-o", "--out", type=click.Path(path_type=Path), help="Folder of the results.")
@json_option
def command(scenario: str, out: Path | None, as_json: bool) -> None:
    """How far a sweep has got, and what failed; safe to ask while it runs.

    SCENARIO is what `crossfall sweep` was given, or the folder of its results.
    """
    from crossfall.study.store import status
    from crossfall.study.sweep import STORE, folder_of
    from crossfall.verbs.sweep import duration

    store = (out or folder_of(scenario)) / STORE
    found = status(store)
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
                "causes": [{"cause": c, "trials": n} for c, n in found.causes],
                "store": str(store),
            },
        )
        return
    state = "running" if found.running else "not running"
    click.echo(f"{found.name}: {state}")
    share = 100 * (found.done + found.failed) / max(found.total, 1)
    click.echo(f"  {found.done:,} done, {found.failed:,} failed of {found.total:,} ({share:.1f} %)")
    if found.running and found.rate > 0:
        click.echo(f"  {found.rate:.1f} trials/s, {duration(found.seconds_left)} left")
    if since is not None:
        click.echo(f"  last trial {duration(since)} ago")
    for cause, count in found.causes[:10]:
        click.echo(f"  {count:,} x {cause}")
