"""Finished sweeps in the opened folder: their tables as maps, and any point as a truck."""

from __future__ import annotations

import csv
import io
from pathlib import Path
from typing import Any

from crossfall.app.answers import without_nan
from crossfall.app.folder import inside
from crossfall.truck.errors import InputError, Problem

_MAX_BYTES = 30_000_000
MAX_ROWS = 20_000
MAX_FOUND = 60


def found(folder: Path) -> list[str]:
    """Tables of finished sweeps: results.csv in the folder, and up to two folders deep."""
    paths = sorted({*folder.glob("*.csv"), *folder.glob("*/*.csv"), *folder.glob("*/*/*.csv")})
    home = folder.resolve()
    safe = (p for p in paths if p.resolve().is_relative_to(home) and p.is_file())
    return [p.relative_to(folder).as_posix() for p in safe][:MAX_FOUND]


def table(folder: Path, name: str) -> dict[str, Any]:
    """The columns of one table, as data only. Raises InputError."""
    path = folder
    *above, last = name.split("/")
    for part in above:
        path = inside(path, part, "")
    path = inside(path, last, ".csv")
    if not path.resolve().is_relative_to(folder.resolve()) or not path.is_file():
        raise InputError(Problem(name[:80], "is not in the opened folder"))
    if path.stat().st_size > _MAX_BYTES:
        raise InputError(Problem(name, "is too large", f"at most {_MAX_BYTES // 1_000_000} MB"))
    try:
        lines = csv.reader(io.StringIO(path.read_text("utf-8")))
        names = next(lines)
        rows = [row for row, _ in zip(lines, range(MAX_ROWS + 1), strict=False)]
    except (UnicodeDecodeError, csv.Error, StopIteration):
        raise InputError(Problem(name, "is no table")) from None
    if any(len(row) != len(names) for row in rows) or len(set(names)) != len(names):
        raise InputError(Problem(name, "is no table"))
    columns = {n: [_value(row[i]) for row in rows[:MAX_ROWS]] for i, n in enumerate(names)}
    kept = {n: v for n, v in columns.items() if any(x is not None for x in v)}
    return {
        "name": name,
        "columns": kept,
        "rows": min(len(rows), MAX_ROWS),
        "cut": len(rows) > MAX_ROWS,
    }


def _value(text: str) -> Any:
    try:
        return without_nan(float(text))
    except ValueError:
        return text[:200] or None
