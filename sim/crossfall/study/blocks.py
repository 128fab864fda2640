"""Closed-form sweeps in blocks: stopped or killed at any moment, they go on where they were.

A block is a task of the batch: BLOCK points of the design in a row. Its lines lie as Arrow in the
folder `blocks` beside the store, and the store remembers its address, how many lines it has and
their checksum. A block whose file is gone or changed counts as not done.
"""

from __future__ import annotations

import hashlib
import io
import json
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from crossfall.study.closedform import block_table, known_sizes
from crossfall.study.runner import RunProgress
from crossfall.study.scenario import Scenario
from crossfall.study.store import BLOCKS, Store, batch_id, records_of
from crossfall.study.task import Batch, Task, TrialOutcome, encode_rows, make_batch
from crossfall.study.versions import versions_of
from crossfall.truck.digest import truck_digest as truck_digest
from crossfall.truck.files import write_atomically

BLOCK = 1 << 14  # points
FOLDER = "blocks"


@dataclass(frozen=True)
class Block:
    """A block that is done. lines: of its table, of which so many failed. sha256: of its file."""

    file: str
    lines: int
    failed: int
    sha256: str


def batch_of_blocks(scenario: Scenario) -> Batch:
    """A closed-form scenario as a batch. total: its trials, though its tasks are blocks."""
    spec, loaded = scenario.spec, scenario.loaded
    decides = spec.model_dump(mode="json", exclude={"name", "note", "map", "limits", "truck"})
    common: dict[str, Any] = {
        **decides,
        "spec": json.dumps(loaded.spec.model_dump(mode="json", exclude_unset=True)),
        "truck": truck_digest(loaded.truck),
    }
    starts = range(0, scenario.points, BLOCK)
    return make_batch(
        spec.name,
        BLOCKS,
        common,
        lambda: ({"first": s, "last": min(s + BLOCK, scenario.points)} for s in starts),
        scenario.total,
        spec=str(common["truck"]),
        versions=versions_of("closed form"),
    )


def do_blocks(
    scenario: Scenario,
    store_path: Path,
    retry_failed: bool = False,
    watch: Callable[[RunProgress], None] | None = None,
    stop: Callable[[], bool] = lambda: False,
) -> tuple[RunProgress, bool]:
    """Do the blocks not done yet; how it stands then, in trials, and whether all are done.

    Raises StoreError where the store cannot be written; OSError where a block cannot.
    """
    batch, folder = batch_of_blocks(scenario), store_path.parent / FOLDER
    folder.mkdir(exist_ok=True)
    known = known_sizes(scenario)
    began, at = time.monotonic(), RunProgress(batch.total)
    with Store(store_path) as store:
        opened = store.open_batch(batch)
        there = {r.key: block_in(r.rows, folder) for r in records_of(store_path, opened)}
        again = [k for k, b in there.items() if b is None or (retry_failed and b.failed)]
        store.forget(again)
        for key in again:
            del there[key]
        for task in batch.tasks():
            block, new = there.get(task.key), False
            if block is None:
                if stop() or (block := _do(scenario, known, store, batch, task, stop)) is None:
                    return at, False
                new = True
            at = _count(at, block, new, began)
            if watch is not None:
                watch(at)
        store.sync()
    return at, True


def done_blocks(store_path: Path, batch: Batch) -> Iterator[Any]:
    """The tables of the blocks that are done and whole, as arrow tables, in order."""
    from pyarrow import feather

    for record in records_of(store_path, batch_id(batch)):
        block = block_in(record.rows, store_path.parent / FOLDER)
        if block is not None:
            data = (store_path.parent / FOLDER / block.file).read_bytes()
            yield feather.read_table(io.BytesIO(data))


def block_in(rows: str, folder: Path) -> Block | None:
    """The block that the store's rows tell of, or None where its file is not what was written."""
    try:
        (head,) = json.loads(rows)
        block = Block(head["file"], head["lines"], head["failed"], head["sha256"])
        data = (folder / block.file).read_bytes()
    except (OSError, ValueError, TypeError, KeyError):
        return None
    return block if hashlib.sha256(data).hexdigest() == block.sha256 else None


def _do(
    scenario: Scenario,
    known: Any,
    store: Store,
    batch: Batch,
    task: Task,
    stop: Callable[[], bool],
) -> Block | None:
    """One block made, written and remembered; None where it was stopped on the way."""
    import pyarrow as pa
    from pyarrow import feather

    began = time.perf_counter()
    some = slice(task.payload["first"], task.payload["last"])
    made = block_table(scenario, known, some, stop)
    if made is None:
        return None
    lines = len(made["tip_deg"])
    cause = made.pop("cause")
    each = lines // (some.stop - some.start)
    columns: dict[str, Any] = {"place": np.arange(some.start * each, some.start * each + lines)}
    columns |= {
        name: pa.array(column, from_pandas=True) if isinstance(column, np.ndarray) else column
        for name, column in made.items()  # null, not nan, where there is no number
    }
    columns["cause"] = pa.array([None] * lines if cause is None else cause, pa.string())
    out = io.BytesIO()
    feather.write_feather(pa.table(columns), out, compression="lz4")
    data = out.getvalue()
    failed = 0 if cause is None else sum(c is not None for c in cause)
    block = Block(f"{task.key[:16]}.arrow", lines, failed, hashlib.sha256(data).hexdigest())
    write_atomically(store.path.parent / FOLDER / block.file, data)
    outcome = TrialOutcome(
        task.place, encode_rows([block.__dict__]), "", "", time.perf_counter() - began
    )
    store.add(batch, [(task, outcome)])
    return block


def _count(at: RunProgress, block: Block, new: bool, began: float) -> RunProgress:
    known, failed_before = (0, 0) if new else (block.lines, block.failed)
    done, failed = (block.lines - block.failed, block.failed) if new else (0, 0)
    done, failed = at.done + done, at.failed + failed
    rate = (done + failed) / max(time.monotonic() - began, 1e-3)
    finished = at.known + known + done + failed
    return RunProgress(
        at.total,
        at.known + known,
        at.known_failed + failed_before,
        done,
        failed,
        rate,
        (at.total - finished) / rate if rate > 0 else float("nan"),
    )
