"""`crossfall report SCENARIO`: the summary page of a sweep, as far as it has got."""

from __future__ import annotations

from pathlib import Path

import click

from crossfall.verbs.common import emit, json_option


@click.command()
@click.argument("scenario", metavar="SCENARIO")
@click.option("-o", "--out", type=click.Path(path_type=Path), help="Folder of the results.")
@json_option
def command(scenario: str, out: Path | None, as_json: bool) -> None:
    """Write the table and the summary page of a sweep, also of one still running.

    Where truck or scenario were edited since, there is nothing to report before the next sweep.
    """
    from crossfall.show.summary import write_page
    from crossfall.study.scenario import load_scenario
    from crossfall.study.sweep import STORE, default_folder, write_tables
    from crossfall.truck.errors import InputError, Problem

    loaded = load_scenario(scenario)
    folder = out or default_folder(loaded)
    files = [*write_tables(loaded, folder)[0]]
    if not files:
        raise InputError(Problem(str(folder / STORE), "no results here yet", "run the sweep first"))
    files.append(write_page(loaded, folder))
    if as_json:
        emit("report", {"scenario": loaded.spec.name, "files": [str(f) for f in files]})
        return
    for file in files:
        click.echo(str(file))
