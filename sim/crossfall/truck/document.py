"""Changing a chassis file as text, so that comments, order and layout stay as they are.

Works on the main file's own entries; what an included file brings in is changed there. Keys are
those of `edits`. Every function gives the new text and raises InputError; nothing is written.
Adding a part and removing it again gives back the same bytes.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from typing import Any

import tomlkit
from tomlkit.exceptions import TOMLKitError

from crossfall.truck import sentences, toml_line_index
from crossfall.truck.errors import InputError, Problem

_AXES = {"x": 0, "y": 1, "z": 2}


def text_with_value(text: str, key: str, value: Any) -> str:
    """The text with one value changed, or with None taken out; tables on the way are made.

    Raises InputError for a part or an entry that is not there, and for a text that is no TOML.
    """
    return text_with_values(text, {key: value})


def text_with_values(text: str, values: Mapping[str, Any]) -> str:
    """`text_with_value` for many, read and written once."""
    document = _parse(text)
    for key, value in values.items():
        steps = key.replace("[", ".").replace("]", "").split(".")
        for start in ("front", "rear") if steps[0] == "both" else (steps[0],):
            _set(document, [start, *steps[1:]], value, key)
    return _dump(document, text)


def text_with_part(text: str, part: Mapping[str, Any]) -> str:
    """The text with a [[part]] entry at its end. Raises as `text_with_entry` does."""
    return text_with_entry(text, "part", part)


def text_with_entry(text: str, table: str, given: Mapping[str, Any]) -> str:
    """The text with a [[table]] entry at its end, its values in line.

    Raises InputError where it has no name, where the name is there already, or no list takes it.
    """
    name = given.get("name")
    if not isinstance(name, str) or not name:
        raise InputError(Problem("file", f"a {table} needs a name", "", f"{table}.name"))
    if _find(plain_data(text), name, table) is not None:
        raise InputError(Problem("file", f"'{name}' is there already", "", f"{table}.{name}"))
    end = _newline(text)
    entry = [f"[[{table}]]"]
    for key, value in given.items():
        if value is not None:
            entry.append(f"{tomlkit.key(key).as_string()} = {_literal(value)}")
    block = end.join(entry)
    # The block ends as the text did, with or without a line end, so that removal can restore it.
    added = text + end + block + (end if text.endswith("\n") else "")
    try:
        tomllib.loads(added)
    except tomllib.TOMLDecodeError:
        what = f"no [[{table}]] can be added to this file"
        raise InputError(Problem("file", what, f"write the list as [[{table}]] entries")) from None
    return added


def text_without_part(text: str, name: str) -> str:
    """The text without a part's entry and the blank line above it; other comments stay."""
    return text_without_entry(text, "part", name)


def text_without_entry(text: str, table: str, name: str) -> str:
    """`text_without_part` for an entry of any list of tables.

    Raises InputError where there is none of that name, or it cannot be told from other entries.
    """
    data = plain_data(text)
    row = _row(data, name, table)
    index = toml_line_index.line_index(text)
    rows = text.splitlines(keepends=True)
    start = index[(table, row)] - 1
    if not rows[start].lstrip().startswith("[["):
        what = f"is not written as a [[{table}]] entry of its own"
        raise InputError(Problem("file", what, "remove it by hand", f"{table}.{name}", start + 1))
    after = [n for path, n in index.items() if path[:2] != (table, row) and n > start + 1]
    end = min(after, default=len(rows) + 1) - 1
    while end < len(rows) and end > start + 1 and _is_remark(rows[end - 1]):
        end -= 1
    if start > 0 and not rows[start - 1].strip():
        start -= 1
    elif end == len(rows) and start > 0 and not rows[-1].endswith("\n"):
        rows[start - 1] = rows[start - 1].rstrip("\r\n")
    result = "".join(rows[:start] + rows[end:])
    wanted = {**data, table: [p for i, p in enumerate(data[table]) if i != row]}
    if not wanted[table]:
        del wanted[table]
    if plain_data(result) != wanted:
        what = "is tangled up with other entries"
        raise InputError(Problem("file", what, "remove it by hand", f"{table}.{name}", start + 1))
    return result


def places_moved(data: Mapping[str, Any], name: str, by_mm: Sequence[float]) -> dict[str, Any]:
    """By key, where a part of the file's data then is, mm; by_mm: (3,).

    Raises InputError where there is no such part, ValueError where by_mm is not three numbers.
    """
    part = data["part"][_row(data, name)]
    return {
        f"part.{name}.{field}": [
            tidy_number(p + b) for p, b in zip(part[field], by_mm, strict=True)
        ]
        for field in ("at_mm", "chassis_end_mm", "axle_end_mm")
        if field in part
    }


def text_with_name(text: str, name: str, new_name: str) -> str:
    """The text with a part called otherwise; the battery section follows.

    Raises InputError where there is no such part, or the new name is taken.
    """
    data = plain_data(text)
    row, taken = _row(data, name), _find(data, new_name)
    if taken is not None and taken != row:
        raise InputError(Problem("file", f"'{new_name}' is there already", "", f"part.{name}"))
    text = text_with_value(text, f"part.{name}.name", new_name)
    battery = data.get("battery", {}).get("part")
    if isinstance(battery, str) and battery.casefold() == name.casefold():
        text = text_with_value(text, "battery.part", new_name)
    return text


def _set(document: Any, steps: list[str], value: Any, key: str) -> None:
    here = document
    for i, step in enumerate(steps[:-1]):
        try:
            if steps[:i] in (["part"], ["change"]):
                here = here[_row(document, step, steps[0])]
            elif isinstance(here, list):
                here = here[_position(here, step, key)]
            else:
                here = here[step] if step in here else here.setdefault(step, tomlkit.table())
        except (KeyError, IndexError, TypeError, AttributeError):
            raise InputError(Problem("file", f"there is no '{step}'", "", key)) from None
    last: Any = steps[-1]
    if isinstance(here, list):
        last = _position(here, last, key)
    elif not isinstance(here, dict):
        raise InputError(Problem("file", f"nothing is below '{steps[-2]}'", "", key))
    if value is not None:
        here[last] = value
    elif isinstance(here, dict) and last in here:
        del here[last]


def _position(here: Sequence[Any], step: str, key: str) -> int:
    found = _AXES.get(step, int(step) if step.isdecimal() else -1)
    if not 0 <= found < len(here):
        raise InputError(Problem("file", f"'{step}' is no entry of an array", "x, y, z", key))
    return found


def _parse(text: str) -> tomlkit.TOMLDocument:
    try:
        return tomlkit.parse(text)
    except (TOMLKitError, ValueError, RecursionError) as error:
        raise InputError(Problem("file", f"is not valid TOML: {error}")) from None


def plain_data(text: str) -> dict[str, Any]:
    """What the text says. Raises InputError."""
    try:
        return tomllib.loads(text)
    except (ValueError, RecursionError) as error:
        raise InputError(Problem("file", f"is not valid TOML: {error}")) from None


def _dump(document: tomlkit.TOMLDocument, before: str) -> str:
    after = tomlkit.dumps(document)
    if "\r\n" in before and "\r\n" not in after:
        return after.replace("\n", "\r\n")
    return after


def _find(data: Mapping[str, Any], name: str, table: str = "part") -> int | None:
    for i, part in enumerate(data.get(table, [])):
        if str(part.get("name", "")).casefold() == name.casefold():
            return i
    return None


def _row(data: Mapping[str, Any], name: str, table: str = "part") -> int:
    row = _find(data, name, table)
    if row is None:
        hint = sentences.suggestion(name, [str(p.get("name")) for p in data.get(table, [])])
        what = f"there is no such {table} in this file"
        raise InputError(Problem("file", what, hint, f"{table}.{name}"))
    return row


def _literal(value: Any) -> str:
    """TOML for a value, tables inline so that a part stays one block."""
    if isinstance(value, Mapping):
        inner = (f"{tomlkit.key(k).as_string()} = {_literal(v)}" for k, v in value.items())
        return "{ " + ", ".join(inner) + " }"
    if isinstance(value, list | tuple):
        return "[" + ", ".join(_literal(v) for v in value) + "]"
    return str(tomlkit.item(value).as_string())


def _newline(text: str) -> str:
    return "\r\n" if "\r\n" in text else "\n"


def _is_remark(line: str) -> bool:
    return not line.strip() or line.lstrip().startswith("#")


def plain_value(value: Any) -> Any:
    """Tuples as lists and whole numbers whole, as a file would have them."""
    if isinstance(value, Mapping):
        return {k: plain_value(v) for k, v in value.items()}
    if isinstance(value, list | tuple):
        return [plain_value(v) for v in value]
    if isinstance(value, float) and value.is_integer():
        return int(value)
    return value


def tidy_number(value: float) -> float | int:
    """A sum of decimals without the dust of binary arithmetic: to 6 places, whole if it is."""
    clean = round(value, 6)
    return int(clean) if clean == int(clean) else clean
