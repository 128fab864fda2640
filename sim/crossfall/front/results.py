"""What the front door hands out: results under the names that `--json` has, frozen.

The unit stands at the end of each name (`tip_deg`, `mass_g`), so nothing needs to be looked up;
what does not exist is None.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from html import escape
from math import isfinite
from typing import Any, overload

from crossfall.answers.figures import as_figures

UNITS = {
    "n_per_mm": "N/mm",
    "deg_per_mm": "°/mm",
    "deg_per_deg": "°/°",
    "mm_per_mm": "mm/mm",
    "mm_per_s": "mm/s",
    "deg": "°",
    "mm": "mm",
    "g": "g",
    "percent": "%",
    "min": "min",
    "s": "s",
    "mm2": "kg mm²",
}
NOTHING = 1e-9  # of a number shown: rounding of no interest
MOST_ROWS, MOST_COLUMNS, MOST_INSIDE = 40, 9, 12  # MOST_INSIDE: rows of a table in a result


def frozen_value(value: Any) -> Any:
    """A JSON value with its objects as `Result`, its lists of objects as `Results`."""
    if isinstance(value, Mapping):
        return Result({str(k): frozen_value(v) for k, v in value.items()})
    if isinstance(value, (list, tuple)):
        if value and all(isinstance(v, Mapping) for v in value):
            return Results([Result({str(k): frozen_value(x) for k, x in v.items()}) for v in value])
        return tuple(map(frozen_value, value))
    return value


class Result(Mapping[str, Any]):
    """One answer; its values as attributes (`a.tip_deg`) and as items (`a["tip_deg"]`).

    Printed as a short table with units; `dict(a)` or `plain()` gives everything.
    """

    __slots__ = ("_shown", "_values")
    _values: dict[str, Any]
    _shown: tuple[str, ...]

    def __init__(self, values: Mapping[str, Any], shown: Sequence[str] = ()) -> None:
        object.__setattr__(self, "_values", dict(values))
        object.__setattr__(self, "_shown", tuple(shown))

    def __getattr__(self, name: str) -> Any:
        try:
            return object.__getattribute__(self, "_values")[name]
        except KeyError:
            from difflib import get_close_matches

            near = get_close_matches(name, self._values, 1)
            hint = f"; perhaps '{near[0]}'" if near else ""
            raise AttributeError(f"no '{name}' in this result{hint}") from None

    def __setattr__(self, name: str, value: Any) -> None:
        raise AttributeError("results are frozen")

    def __delattr__(self, name: str) -> None:
        raise AttributeError("results are frozen")

    def __getitem__(self, name: str) -> Any:
        return self._values[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._values)

    def __len__(self) -> int:
        return len(self._values)

    def __dir__(self) -> list[str]:
        return [*super().__dir__(), *(k for k in self._values if k.isidentifier())]

    def __reduce__(self) -> tuple[Any, ...]:
        return Result, (self._values, self._shown)

    def plain(self) -> dict[str, Any]:
        """The same as dicts, lists and numbers, as `--json` prints them; a trial's record and a
        reconciled vehicle are left out."""
        return {k: _plain(v) for k, v in self._values.items() if _is_json(v)}

    def to_frame(self) -> Any:
        """A data frame of one row; see `Results.to_frame`."""
        return Results([self]).to_frame()

    def _lines(self) -> list[tuple[str, str]]:
        known = {**flattened(self._values), **self._values}
        names = self._shown or [k for k, v in self._values.items() if _is_cell(v)]
        kept = [k for k in names if k in known and not isinstance(known[k], Results)]
        return [(heading(k), cell(k, known[k])) for k in kept]

    def _tables(self) -> list[tuple[str, Results]]:
        found = {k: self._values.get(k) for k in self._shown}
        return [(heading(k), v) for k, v in found.items() if isinstance(v, Results)]

    def __repr__(self) -> str:
        lines = self._lines()
        width = max((len(k) for k, _ in lines), default=0)
        said = "\n".join(f"{k:<{width}}  {v}" for k, v in lines)
        tables = [f"{k}:\n{v._text(MOST_INSIDE)}" for k, v in self._tables()]
        return "\n\n".join(filter(None, [said, *tables])) or "Result()"

    def _repr_html_(self) -> str:
        rows = "".join(
            f"<tr><th style='text-align:left'>{escape(k)}</th><td>{escape(v)}</td></tr>"
            for k, v in self._lines()
        )
        tables = (f"<p>{escape(k)}</p>{v._html(MOST_INSIDE)}" for k, v in self._tables())
        return "".join([f"<table>{rows}</table>", *tables])


class Results(Sequence[Result]):
    """Answers in a row, as many rows of one table. `r.tip_deg` is that value of every row."""

    __slots__ = ("_rows", "_shown")
    _rows: tuple[Result, ...]
    _shown: tuple[str, ...]

    def __init__(self, rows: Sequence[Result], shown: Sequence[str] = ()) -> None:
        object.__setattr__(self, "_rows", tuple(rows))
        object.__setattr__(self, "_shown", tuple(shown))

    @overload
    def __getitem__(self, index: int) -> Result: ...
    @overload
    def __getitem__(self, index: slice) -> Results: ...
    def __getitem__(self, index: int | slice) -> Result | Results:
        if isinstance(index, slice):
            return Results(self._rows[index], self._shown)
        return self._rows[index]

    def __len__(self) -> int:
        return len(self._rows)

    def __getattr__(self, name: str) -> tuple[Any, ...]:
        if name.startswith("_"):
            raise AttributeError(name)
        return tuple(getattr(row, name) for row in self._rows)

    def __setattr__(self, name: str, value: Any) -> None:
        raise AttributeError("results are frozen")

    def __reduce__(self) -> tuple[Any, ...]:
        return Results, (self._rows, self._shown)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Results) and self._rows == other._rows

    def __hash__(self) -> int:
        return hash(len(self._rows))

    def showing(self, columns: Sequence[str]) -> Results:
        """The same rows, printed with these columns; every other is still there."""
        return Results(self._rows, columns)

    def plain(self) -> list[dict[str, Any]]:
        """The same as dicts, lists and numbers, as `--json` prints them."""
        return [row.plain() for row in self._rows]

    def to_frame(self) -> Any:
        """A pandas DataFrame where pandas is installed, otherwise an Arrow table. A pair such as
        `compliant_range_deg` becomes the columns `compliant_range_low_deg` and `..._high_deg`,
        named numbers one column each; lists are left out."""
        flat = [flattened(row) for row in self._rows]
        columns = list(dict.fromkeys(k for row in flat for k in row))
        table = {k: [row.get(k) for row in flat] for k in columns}
        try:
            import pandas
        except ImportError:
            import pyarrow

            return pyarrow.table(table)
        return pandas.DataFrame(table)

    def _columns(self, most: int) -> list[tuple[str, list[str], bool]]:
        """What is printed: heading, cells, and whether it is words; nothing that says nothing."""
        if not self._rows:
            return []
        names = self._shown or [k for k, v in self._rows[0].items() if _is_cell(v)][:MOST_COLUMNS]
        known = [{**flattened(row), **row} for row in self._rows]
        found = []
        for name in names:
            values = [row.get(name) for row in known]
            said = [v for v in values if v not in (None, "", ())]
            if said:
                flat = [x for v in said for x in (v if isinstance(v, tuple) else (v,))]
                digits = decimals(name, [x for x in flat if isinstance(x, float)])
                cells = [cell(name, v, digits) for v in values[:most]]
                found.append((heading(name), cells, all(isinstance(v, str) for v in said)))
        return found

    def _rest(self, most: int) -> str:
        left = len(self._rows) - most
        return f"... and {left:,} more" if left > 0 else ""

    def __repr__(self) -> str:
        return self._text(MOST_ROWS)

    def _text(self, most: int) -> str:
        columns = []
        for head, cells, words in self._columns(most):
            width = max(map(len, (head, *cells)))
            columns.append([c.ljust(width) if words else c.rjust(width) for c in (head, *cells)])
        if not columns:
            return "no rows"
        lines = ["  ".join(line).rstrip() for line in zip(*columns, strict=True)]
        return "\n".join([*lines, *(filter(None, [self._rest(most)]))])

    def _repr_html_(self) -> str:
        return self._html(MOST_ROWS)

    def _html(self, most: int) -> str:
        columns = self._columns(most)
        sides = [" style='text-align:left'" if words else "" for _, _, words in columns]
        head = _cells("th", sides, [h for h, _, _ in columns])
        rows = zip(*(cells for _, cells, _ in columns), strict=True)
        body = "".join(f"<tr>{_cells('td', sides, row)}</tr>" for row in rows)
        return f"<table><tr>{head}</tr>{body}</table>{escape(self._rest(most))}"


def _cells(kind: str, sides: Sequence[str], texts: Sequence[str]) -> str:
    return "".join(
        f"<{kind}{side}>{escape(text)}</{kind}>" for side, text in zip(sides, texts, strict=True)
    )


def flattened(row: Mapping[str, Any]) -> dict[str, Any]:
    """One row of a data frame; see `Results.to_frame`."""
    out: dict[str, Any] = {}
    for key, value in row.items():
        stem, unit = split(key)
        tail = f"_{unit}" if unit else ""
        if isinstance(value, Results):
            continue
        if isinstance(value, Mapping):
            out |= {f"{stem}_{k}{tail}": v for k, v in value.items() if _is_scalar(v)}
        elif isinstance(value, tuple):
            if len(value) == 2 and all(_is_scalar(v) for v in value):
                out |= {f"{stem}_low{tail}": value[0], f"{stem}_high{tail}": value[1]}
        else:
            out[key] = value
    return out


def split(key: str) -> tuple[str, str]:
    """A key as its stem and its unit: "tip_deg" is ("tip", "deg")."""
    words = key.split("_")
    for i in range(1, len(words)):
        if (unit := "_".join(words[i:])) in UNITS:
            return "_".join(words[:i]), unit
    return key, ""


def heading(key: str) -> str:
    """A key as a table shows it: "front_share_percent" is "front share, %"."""
    stem, unit = split(key)
    words = (
        stem.removeprefix("both.")
        if "." in stem
        else stem.replace("_plus_minus", " ±").replace("_95", ", 95 %").replace("_", " ")
    )
    return f"{words}, {UNITS[unit]}" if unit else words


def decimals(key: str, values: Sequence[float]) -> int:
    """How many a number under that key is shown with; the same for all of a column."""
    size = max((abs(v) for v in values if isfinite(v)), default=0.0)
    if size < NOTHING:
        return 1
    if split(key)[1] == "deg":
        return 1 if size >= 1 else 2
    return next((d for d, least in enumerate((1000, 10, 0.1, 0.01)) if size >= least), 5)


def cell(key: str, value: Any, digits: int | None = None) -> str:
    """A value as a table shows it under its key."""
    if isinstance(value, Mapping) and "low_95" in value:
        low, found, high = (cell(key, value[k], digits) for k in ("low_95", "value", "high_95"))
        return f"{found} ({low} to {high})"
    if isinstance(value, tuple) and value:
        between = " to " if split(key)[0].endswith(("range", "ci")) else ", "
        return between.join(cell(key, v, digits) for v in value)
    if value is None or value == ():
        return "–"
    if not isinstance(value, float):
        return str(value)
    return as_figures(value, decimals(key, [value]) if digits is None else digits)


def _is_scalar(value: Any) -> bool:
    return value is None or isinstance(value, (int, float, str, bool))


def _is_json(value: Any) -> bool:
    return _is_scalar(value) or isinstance(value, (tuple, Mapping, Results))


def _is_cell(value: Any) -> bool:
    return _is_scalar(value) or (isinstance(value, tuple) and len(value) <= 3)


def _plain(value: Any) -> Any:
    if isinstance(value, (Result, Results)):
        return value.plain()
    if isinstance(value, tuple):
        return [_plain(v) for v in value]
    return value
