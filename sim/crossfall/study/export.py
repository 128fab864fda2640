"""The table of a batch as Parquet and CSV: same trials, same bytes, whenever and wherever done.

Lines stand in the order of the plan and hold no clock times. Both files are written a few
thousand lines at a time, so a batch of any length needs little memory.
"""

from __future__ import annotations

import csv
import itertools
import json
import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from contextlib import ExitStack
from pathlib import Path
from typing import Any

import numpy as np

from crossfall.study.dictionary import NONE, citation, describe_column
from crossfall.study.responses import columns_of, with_responses
from crossfall.study.store import batch_name, damaged, latest_batch, reading, stored_records
from crossfall.study.versions import versions_of
from crossfall.truck.files import in_one_step

LINES = 5_000  # written at once
LEADING = ("place", "scenario", "spec", "method", "seed", "versions", "address")
FAILURE = "cause"
_WORKED_OUT = tuple("=+-@\t\r")

_Row = dict[str, Any]


def export(
    store: Path,
    target: Path,
    responses: Mapping[str, str] = NONE,
    fixed: Mapping[str, Any] = NONE,
    batch: str = "",
) -> int:
    """Write a batch's table to `target`, .parquet or .csv; returns its lines.

    responses: columns more, name -> expression; see `responses`. fixed: columns of one value, what
    the scenario holds fast. batch: its id, the latest's if not given.

    Trials not yet done are not in it; failed ones are, with their cause. ValueError for another
    ending, InputError where `store` is none or has no such batch, OSError where the target cannot
    be written.
    """
    if target.suffix not in (".parquet", ".csv"):
        raise ValueError(f"{target}: the table can be written as .parquet or .csv")
    with reading(store) as db:
        db.execute("BEGIN")  # both passes see the same trials, whatever a run adds meanwhile
        batch = batch or latest_batch(db, store)[0]
        scenario = batch_name(db, store, batch)
        columns = _columns(_rows(db, store, batch, scenario, responses, fixed), responses)
        with in_one_step(target) as part:
            lines = _rows(db, store, batch, scenario, responses, fixed)
            if target.suffix == ".csv":
                return _write_csv(part, columns, lines)
            return _write_parquet(part, columns, lines, responses)


def export_columns(
    targets: Sequence[Path],
    head: dict[str, str],
    tables: Iterator[Any],
    responses: Mapping[str, str] = NONE,
    fixed: Mapping[str, Any] = NONE,
) -> int:
    """Write a table given as arrow tables, place first, to .parquet and .csv files.

    head and fixed: columns that are the same on every line, in after place and at the end. Returns
    its lines.
    """
    import pyarrow as pa
    import pyarrow.csv
    import pyarrow.parquet

    lines = 0
    with ExitStack() as open_files:
        parts = [open_files.enter_context(in_one_step(t)) for t in targets]
        writers: list[tuple[Any, bool]] = []
        for table in tables:
            lines += len(table)
            same = pa.array(np.zeros(len(table), np.int8))
            for i, (name, value) in enumerate(head.items(), start=1):
                column = pa.DictionaryArray.from_arrays(same, pa.array([value]))
                table = table.add_column(i, name, column)
            for name in (n for n in fixed if n not in table.column_names):
                table = table.append_column(name, pa.repeat(fixed[name], len(table)))
            for name, values in columns_of(table, responses).items():
                table = table.append_column(name, pa.array(values, from_pandas=True))
            if (responses or fixed) and FAILURE in table.column_names:
                last = [n for n in table.column_names if n != FAILURE]
                table = table.select([*last, FAILURE])
            table = table.cast(described(table.schema, responses, head["scenario"], head["spec"]))
            if not writers:
                for target, part in zip(targets, parts, strict=True):
                    sheet = target.suffix == ".csv"
                    kind = pyarrow.csv.CSVWriter if sheet else pyarrow.parquet.ParquetWriter
                    how = {} if sheet else how_written(table.schema)
                    schema = (_for_csv(table) if sheet else table).schema
                    writers.append((open_files.enter_context(kind(part, schema, **how)), sheet))
            for writer, sheet in writers:
                writer.write_table(_for_csv(table) if sheet else table)
    return lines


def _for_csv(table: Any) -> Any:
    """The same with every text as `_cell` has it."""
    import pyarrow as pa

    for i, column in enumerate(table.schema):
        if pa.types.is_dictionary(column.type):
            text = table.column(i).cast(pa.string())
        elif pa.types.is_string(column.type):
            text = table.column(i)
        else:
            continue
        safe = [None if t is None else _cell(t) for t in text.unique().to_pylist()]
        if safe != text.unique().to_pylist():
            known = dict(zip(text.unique().to_pylist(), safe, strict=True))
            mended = pa.array([known[t] for t in text.to_pylist()], pa.string())
            table = table.set_column(i, column.name, mended)
    return table


def how_written(schema: Any) -> dict[str, Any]:
    """What a Parquet writer is told: numbers get no dictionaries, which take twice the time and
    half as much room again."""
    words = [f.name for f in schema if "string" in str(f.type)]
    return {"compression": "zstd", "compression_level": 1, "use_dictionary": words}


def _rows(
    db: sqlite3.Connection,
    store: Path,
    batch: str,
    scenario: str,
    responses: Mapping[str, str],
    fixed: Mapping[str, Any],
) -> Iterator[_Row]:
    for record in stored_records(db, batch):
        head = (
            record.place,
            scenario,
            record.spec,
            record.method,
            record.seed,
            record.versions,
            record.key,
        )
        cause = record.cause or None
        try:
            payload, found = (json.loads(t) if t else [{}] for t in (record.payload, record.rows))
            inputs = {k: v for k, v in payload.items() if k != "seed"}
            plain = [{**dict(zip(LEADING, head, strict=True)), **inputs, **r} for r in found]
        except (ValueError, TypeError, AttributeError) as error:
            raise damaged(store, f"trial {record.place} is not what was written") from error
        for line, row in zip(plain, found, strict=True):
            line |= {k: v for k, v in fixed.items() if k not in line}
            yield {**(with_responses(line, responses) if row else line), FAILURE: cause}


def _columns(lines: Iterator[_Row], responses: Mapping[str, str]) -> dict[str, type]:
    """Name -> the narrowest type that holds every value, of numbers where a column without any
    value has a unit; in order of appearance, cause last."""
    types: dict[str, type] = dict.fromkeys(LEADING, str)
    types |= {"place": int, "seed": int}
    for line in lines:
        for name, value in line.items():
            if name in LEADING or name == FAILURE:
                continue
            kind = types.setdefault(name, type(None))
            types[name] = _wider(kind, type(value))
    for name, kind in types.items():
        if kind is type(None):
            types[name] = str if describe_column(name, responses).unit == "1" else float
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


def _write_csv(path: Path, columns: dict[str, type], lines: Iterator[_Row]) -> int:
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
    return repr(value) if isinstance(value, float) else _cell(str(value))


def _cell(text: str) -> str:
    """Text that a spreadsheet shows and does not work out: =1+1 gets a quote before it."""
    return f"'{text}" if text[:1] in _WORKED_OUT else text


def described(schema: Any, responses: Mapping[str, str], scenario: str, digest: str) -> Any:
    """An Arrow schema with title, unit and source of every column, and how to cite the table."""
    import pyarrow as pa

    fields = []
    for field in schema:
        about = describe_column(field.name, responses)
        metadata = {"title": about.title, "unit": about.unit, "source": about.source}
        fields.append(field.with_metadata(metadata))
    cite = {"citation": citation(scenario, versions_of("closed form")["crossfall"], digest)}
    return pa.schema(fields, metadata=cite)


def _write_parquet(
    path: Path, columns: dict[str, type], lines: Iterator[_Row], responses: Mapping[str, str]
) -> int:
    import pyarrow as pa
    import pyarrow.parquet as pq

    arrow = {int: pa.int64(), float: pa.float64(), bool: pa.bool_(), str: pa.string()}
    schema = pa.schema([(name, arrow[kind]) for name, kind in columns.items()])
    first = next(lines, None)
    lines = itertools.chain([] if first is None else [first], lines)
    named = ("", "") if first is None else (first["scenario"], first["spec"])
    schema = described(schema, responses, *named)
    count = 0
    with pq.ParquetWriter(path, schema, **how_written(schema)) as writer:
        while some := list(itertools.islice(lines, LINES)):
            values = [[_cast(r.get(n), kind) for r in some] for n, kind in columns.items()]
            arrays = [pa.array(v, field.type) for v, field in zip(values, schema, strict=True)]
            writer.write_table(pa.Table.from_arrays(arrays, schema=schema))
            count += len(some)
    return count
