"""`crossfall sweep SCENARIO`: many builds, one method, a table and a page for the morning."""

from __future__ import annotations

import signal
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import emit, json_option
from crossfall.verbs.ending import STOPPED

if TYPE_CHECKING:
    from crossfall.study.runner import RunProgress


@click.command()
@click.argument("scenario", metavar="SCENARIO")
@click.option("-o", "--out", type=click.Path(path_type=Path), help="Folder for the results.")
@click.option("--workers", type=click.IntRange(1, 1024), help="Processes; one per core if unsaid.")
@click.option("--cluster", metavar="ADDRESS", help="Use this dask scheduler instead.")
@click.option("--retry-failed", is_flag=True, help="Do failed trials once more.")
@click.option("--no-page", is_flag=True, help="Leave out the summary page.")
@json_option
def command(
    scenario: str,
    out: Path | None,
    workers: int | None,
    cluster: str | None,
    retry_failed: bool,
    no_page: bool,
    as_json: bool,
) -> int:
    """Try many builds: SCENARIO is a file, or the name of a shipped one.

    A trial once done is never done again: stopped, killed or cut off, the same command goes on.

    \b
    On a cluster, or one host by hand, in the environment crossfall is installed in:
      dask scheduler --host 127.0.0.1 --port 8786
      dask worker tcp://127.0.0.1:8786 --nworkers 2 --nthreads 1
      crossfall sweep overnight --cluster tcp://127.0.0.1:8786
    """
    from crossfall.study.scenario import load_scenario
    from crossfall.study.sweep import default_folder, run_scenario

    if cluster is not None and not cluster.strip():
        raise click.UsageError("--cluster is empty: say the scheduler's address, or leave it out")
    loaded = load_scenario(scenario)
    folder = out or default_folder(loaded)
    stopped: list[int] = []

    def note(number: int, frame: object) -> None:
        stopped.append(number)
        signal.signal(number, signal.default_int_handler)  # a second one means now

    for number in (signal.SIGINT, signal.SIGTERM):
        signal.signal(number, note)
    result = run_scenario(
        loaded,
        folder,
        workers=workers,
        cluster=cluster or "",
        retry_failed=retry_failed,
        watch=Meter(),
        stop=lambda: bool(stopped),
    )
    files = [*result.files]
    if not no_page and not stopped:
        from crossfall.show.summary import write_page

        files.append(write_page(loaded, folder))
    if as_json:
        emit("sweep", _answer(loaded.spec.name, result, files))
    else:
        _show(result, files)
    return 0 if result.complete else STOPPED


class Meter:
    """Progress on standard error: one line that changes on a terminal, else one now and then."""

    def __init__(self) -> None:
        self.shown = -1e9
        self.tty = sys.stderr.isatty()

    def __call__(self, progress: RunProgress) -> None:
        now, over = time.monotonic(), progress.finished == progress.total
        if now - self.shown < (0.5 if self.tty else 30.0) and not over:
            return
        self.shown = now
        text = progress_line(progress)
        click.echo(f"\r\x1b[K{text}" if self.tty else text, err=True, nl=not self.tty or over)


def progress_line(progress: RunProgress) -> str:
    """How a run stands, in one line."""
    p = progress
    failed = p.failed + p.known_failed
    parts = [f"{p.finished:,} of {p.total:,} trials"]
    if p.known:
        parts.append(f"{p.known:,} known from before")
    parts.append(f"{p.rate:.1f}/s" if p.rate < 100 else f"{p.rate:.0f}/s")
    if p.seconds_left == p.seconds_left:
        parts.append(f"{duration(p.seconds_left)} left")
    parts.append(f"{failed:,} failed" + (f" (last: {p.last_cause[:60]})" if p.last_cause else ""))
    return ", ".join(parts)


def duration(seconds: float) -> str:
    """Such as 3 h 20 min, or 45 s."""
    if seconds < 90:
        return f"{seconds:.0f} s"
    minutes = round(seconds / 60)
    return f"{minutes} min" if minutes < 90 else f"{minutes // 60} h {minutes % 60} min"


def _answer(name: str, result: Any, files: list[Path]) -> dict[str, Any]:
    return {
        "scenario": name,
        "complete": result.complete,
        "trials": result.trials,
        "done": result.done,
        "failed": result.failed,
        "known_before": result.known,
        "lines": result.lines,
        "wall_s": result.seconds,
        "files": [str(f) for f in files],
    }


def _show(result: Any, files: list[Path]) -> None:
    state = "all done" if result.complete else "stopped; the same command goes on from here"
    counts = f"{result.done:,} of {result.trials:,} trials, {result.failed:,} failed"
    known = f", {result.known:,} known from before" if result.known else ""
    click.echo(f"{counts}{known}, in {duration(result.seconds)}: {state}")
    for file in files:
        click.echo(f"  {file}")
