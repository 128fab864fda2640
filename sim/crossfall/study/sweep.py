"""From a scenario to its table: the closed form at once, every other method by the night shift."""

from __future__ import annotations

import itertools
import json
import re
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from crossfall.engines.held import check_driving, installed_engines, usual_engine
from crossfall.study.blocks import batch_of_blocks, do_blocks, done_blocks
from crossfall.study.export import export, export_columns
from crossfall.study.methods import STACK
from crossfall.study.pool import TrialLimits
from crossfall.study.runner import RunProgress, run_batch
from crossfall.study.scenario import Scenario, scenario_folder
from crossfall.study.scenario_file import DRIVES, given_values
from crossfall.study.store import batch_id, batch_name, full_disk, is_full, reading
from crossfall.study.task import Batch, canonical, make_batch, value_digest
from crossfall.study.versions import versions_of
from crossfall.truck.digest import truck_digest as truck_digest

_METHODS = {
    "compliant": "crossfall.study.methods:compliant_rows",
    "tilt trial": "crossfall.study.methods:tilt_rows",
    "convergence": "crossfall.study.methods:convergence_rows_of",
    "slope trial": "crossfall.study.methods:slope_rows",
    "critical slope": "crossfall.study.methods:critical_rows",
}
MOST_CSV = 500_000  # lines; longer tables are written as Parquet only
STORE, PARQUET, CSV = "trials.db", "table.parquet", "table.csv"
RECORDS = "records"  # folder of the trials kept


@dataclass(frozen=True)
class SweepResult:
    """What a sweep left behind. lines: of the table; trials, failed: of the scenario.

    complete: False where it was stopped; done is then less than trials.
    """

    folder: Path
    files: tuple[Path, ...]
    lines: int
    trials: int
    done: int
    failed: int
    known: int
    complete: bool
    seconds: float


def default_folder(scenario: Scenario) -> Path:
    """Where the results of a scenario go if nothing else is said; of one that is no file, in a
    folder of its own for every truck and question, whatever they are called."""
    folder = folder_of(str(scenario.path))
    if scenario.path.is_file():
        return folder
    asked = value_digest([common_of(scenario), json.loads(scenario.spec.model_dump_json())])
    return folder.with_name(f"{folder.name}-{asked[:6]}")


def folder_of(scenario_or_folder: str) -> Path:
    """The results folder of a scenario by its file or name, or a folder given as such.

    Scenarios of like name have folders of their own: what tells them apart, letters that do not go
    into a folder's name or another place, comes in as a few digits. The scenario itself is not
    read: a running one may be under the editor.
    """
    given = Path(scenario_or_folder)
    if given.is_dir():
        return given
    name, place = _plain(given.stem), given.resolve().parent
    if name != given.stem:
        name += f"-{value_digest(given.stem)[:6]}"
    if given.parent != Path() and place not in (Path.cwd(), scenario_folder().resolve()):
        name += f"-{value_digest(str(place))[:6]}"
    return Path("crossfall-out") / name


def _plain(name: str) -> str:
    return re.sub(r"[^A-Za-z0-9]+", "-", name).strip("-") or "sweep"


def common_of(scenario: Scenario) -> dict[str, Any]:
    """What all trials of a scenario share."""
    spec, loaded = scenario.spec, scenario.loaded
    return {
        "method": spec.method,
        # Not sorted: a scenario that names no surface is on the first one of the file.
        "spec": json.dumps(loaded.spec.model_dump(mode="json", exclude_unset=True)),
        "truck": truck_digest(loaded.truck),
        "fixed": dict(spec.fixed),
        "surface": spec.surface,
        "hold": spec.hold,
        "engine": spec.engine,
        "trial": spec.trial or "careful",
        "ranges": spec.ranges,
        "keep": spec.keep,
        "tolerances": spec.tolerances,
        "folder": str(loaded.folder),
        "ground_folder": str(scenario.path.resolve().parent),
    }


def batch_of(scenario: Scenario, folder: Path = Path()) -> Batch:
    """The scenario as a batch of trials, or by the closed form of blocks of them. folder: of the
    results, where records are kept."""
    if scenario.spec.method == "closed form":
        return batch_of_blocks(scenario)
    spec, common = scenario.spec, common_of(scenario)
    engines = given_values(spec, "engine")
    if spec.method == "convergence" and not engines:
        engines = [spec.engine] if spec.engine else list(installed_engines())
    elif spec.method == "tilt trial" and not engines:
        engines = [spec.engine or usual_engine()]
        common["engine"] = engines[0]
    local = {name: common.pop(name) for name in ("folder", "ground_folder")}
    local["records"] = str(folder.resolve() / RECORDS)
    headings = 1 if scenario.heading_varies else len(scenario.headings)
    stack = STACK if spec.method == "compliant" else 1
    return make_batch(
        spec.name,
        _METHODS[spec.method],
        common,
        scenario.payloads,
        scenario.total,
        spec=str(common["truck"]),
        versions=versions_of(spec.method, engines),
        local=local,
        together=headings * max(1, stack // headings),
    )


def run_scenario(
    scenario: Scenario,
    folder: Path,
    *,
    workers: int | None = None,
    cluster: str = "",
    retry_failed: bool = False,
    watch: Callable[[RunProgress], None] | None = None,
    stop: Callable[[], bool] = lambda: False,
) -> SweepResult:
    """Do a scenario and write its table into `folder`; what is there already is not done again.

    See `runner.run_batch` for the options. Raises StoreError, PoolError; InputError where trucks
    are to be driven and cannot be; OSError where the folder cannot be written.
    """
    if scenario.spec.method in DRIVES:
        check_driving()
    folder.mkdir(parents=True, exist_ok=True)
    try:
        if scenario.spec.method == "closed form":
            return _closed_form(scenario, folder, retry_failed, watch, stop)
        batch, store = batch_of(scenario, folder), folder / STORE
        result = run_batch(
            batch,
            store,
            workers=workers,
            cluster=cluster,
            limits=TrialLimits(trial=scenario.spec.trial_seconds),
            retry_failed=retry_failed,
            watch=watch,
            stop=stop,
        )
        files, lines = write_tables(scenario, folder)
    except OSError as error:
        if is_full(error):
            raise full_disk(Path(error.filename or folder)) from error
        raise
    p = result.progress
    return SweepResult(
        folder,
        files,
        lines,
        batch.total,
        p.finished,
        p.failed + p.known_failed,
        p.known,
        result.complete,
        result.seconds,
    )


def _closed_form(
    scenario: Scenario,
    folder: Path,
    retry_failed: bool,
    watch: Callable[[RunProgress], None] | None,
    stop: Callable[[], bool],
) -> SweepResult:
    began, store = time.monotonic(), folder / STORE
    p, complete = do_blocks(scenario, store, retry_failed, watch, stop)
    files, lines = write_tables(scenario, folder)
    seconds = time.monotonic() - began
    failed = p.failed + p.known_failed
    return SweepResult(
        folder, files, lines, p.total, p.finished, failed, p.known, complete, seconds
    )


def write_tables(scenario: Scenario, folder: Path) -> tuple[tuple[Path, ...], int]:
    """The table of what is done so far, as Parquet and, unless it is very long, as CSV; its lines.

    No files where no block of a closed-form sweep is done yet. Raises InputError where the store
    was filled for another scenario or truck, as before an edit.
    """
    store = folder / STORE
    files = (folder / PARQUET, folder / CSV)[: 2 if scenario.total <= MOST_CSV else 1]
    own, fixed = scenario.spec.responses, scenario.spec.fixed
    batch = batch_of(scenario, folder)
    name = batch_id(batch)
    if scenario.spec.method != "closed form":
        return files, max(export(store, file, own, fixed, name) for file in files)
    head = {
        "scenario": scenario.spec.name,
        "spec": batch.spec,
        "method": "closed form",
        "versions": canonical(batch.versions),
        "batch": value_digest(json.loads(scenario.spec.model_dump_json())),
    }
    with reading(store) as db:
        batch_name(db, store, name)
    tables = done_blocks(store, batch)
    first = next(tables, None)
    if first is None:
        return (), 0
    every = itertools.chain([first], tables)
    return files, export_columns(files, head, every, own, fixed)
