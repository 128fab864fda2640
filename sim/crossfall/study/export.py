"""The table of a batch as Parquet and CSV: same trials, same bytes, whenever and wherever done.

Lines stand in the order of the plan and hold no clock times. Both files are written a few
thousand lines at a time, so a batch of any length needs little memory.
"""

from __future__ import annotations

import csv
import itertools
import json
import os
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from crossfall.study.store import latest_batch, reading, records

LINES = 5_000  # written at once
LEADING = ("place", "scenario", "spec", "method", "seed", "versions", "trial")
FAILURE = "cause"

Row = dict[str, Any]


def export(store: Path, target: Path) -> int:
    """Write the latest batch's table to `target`, .parquet or .csv; returns its lines.

    Trials not yet done are not in it; failed ones are, with their cause. ValueError for another
    ending, InputError where `store` is none, OSError where the target cannot be written.
    """
    writers: dict[str, Callable[[Path, dict[str, type], Iterator[Row]], int]] = {
        ".parquet": _write_parquet,
        ".csv": _write_csv,
    }
    if target.suffix not in writers:
        raise ValueError(f"{target}: the table can be written as .parquet or .csv")
    with reading(store) as db:
        db.execute("BEGIN")  # both passes see the same trials, whatever a run adds meanwhile
        batch, scenario, _, _ = latest_batch(db, store)
        columns = _columns(_rows(db, batch, scenario))
        handle, name = tempfile.mkstemp(dir=target.parent, prefix=f".{target.name}.")
        os.close(handle)
        try:
            count = writers[target.suffix](Path(name), columns, _rows(db, batch, scenario))
            os.chmod(name, 0o644)
            os.replace(name, target)
        except BaseException:
            Path(name).unlink(missing_ok=True)
            raise
    return count


def rows(store: Path) -> list[Row]:
    """All lines of the latest batch's table, for pictures and summaries of a modest batch."""
    with reading(store) as db:
        db.execute("BEGIN")
        batch, scenario, _, _ = latest_batch(db, store)
        return list(_rows(db, batch, scenario))


def _rows(db: sqlite3.Connection, batch: str, scenario: str) -> Iterator[Row]:
    for record in records(db, batch):
        head = (
            record.place,
            scenario,
            record.spec,
            record.method,
            record.seed,
            record.versions,
            record.key,
        )
        inputs = {k: v for k, v in json.loads(record.payload).items() if k != "seed"}
        for row in json.loads(record.rows) if record.rows else [{}]:
            yield {
                **dict(zip(LEADING, head, strict=True)),
                **inputs,
                **row,
                FAILURE: record.cause or None,
            }


def _columns(lines: Iterator[Row]) -> dict[str, type]:
    """Name -> the narrowest type that holds every value; in order of appearance, cause last."""
    types: dict[str, type] = dict.fromkeys(LEADING, str)
    types |= {"place": int, "seed": int}
    for line in lines:
        for name, value in line.items():
            if name in LEADING or name == FAILURE:
                continue
            kind = types.setdefault(name, type(None))
            types[name] = _wider(kind, type(value))
    types = {name: str if kind is type(None) else kind for name, kind in types.items()}
    return {**types, FAILURE: str}


def _wider(a: type, b: type) -> type:
    if a is b or b is type(None):
        return a
    if a is type(None):
        return b
    return float if {a, b} == {int, float} else str


def _cast(value: Any, kind: type) -> Any:
    if value is None or type(value) is kind:
        return value
    return float(value) if kind is float else str(value)


def _write_csv(path: Path, columns: dict[str, type], lines: Iterator[Row]) -> int:
    count = 0
    with path.open("w", newline="", encoding="utf-8") as stream:
        writer = csv.writer(stream, lineterminator="\n")
        writer.writerow(columns)
        for line in lines:
            count += 1
            writer.writerow([_text(_cast(line.get(n), kind)) for n, kind in columns.items()])
    return count


def _text(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    return repr(value) if isinstance(value, float) else str(value)


def _write_parquet(path: Path, columns: dict[str, type], lines: Iterator[Row]) -> int:
    import pyarrow as pa
    import pyarrow.parquet as pq

    arrow = {int: pa.int64(), float: pa.float64(), bool: pa.bool_(), str: pa.string()}
    schema = pa.schema([(name, arrow[kind]) for name, kind in columns.items()])
    count = 0
    with pq.ParquetWriter(path, schema, compression="zstd") as writer:
        while some := list(itertools.islice(lines, LINES)):
            values = [[_cast(r.get(n), kind) for r in some] for n, kind in columns.items()]
            arrays = [pa.array(v, field.type) for v, field in zip(values, schema, strict=True)]
            writer.write_table(pa.Table.from_arrays(arrays, schema=schema))
            count += len(some)
    return count
