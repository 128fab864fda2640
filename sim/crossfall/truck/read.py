"""Reading a chassis file: every mistake found in one go, each with its file, line and key."""

from __future__ import annotations

import re
import stat
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from os import PathLike
from pathlib import Path
from typing import Any, NoReturn

from pydantic import ValidationError

from crossfall.truck import toml_line_index
from crossfall.truck.demos import demo_names, find_demo
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.schema import TruckSpec
from crossfall.truck.sentences import key_text, problems, show, suggestion

MAX_FILE_BYTES = 1_000_000  # a parts list of thousands of entries is well below this
MAX_ENTRIES = 50_000  # keys, tables and array entries: two thousand parts have fewer
MAX_DEPTH = 10  # names in a dotted key: what any file of ours needs, twice
MAX_INCLUDES = 16
_SHARED = ("part", "materials", "grip")  # what an included file may hold


@dataclass(frozen=True)
class Source:
    """One file as read: its name for messages, its values and the line of each."""

    file: str
    data: dict[str, Any]
    index: dict[toml_line_index.KeyPath, int]


@dataclass(frozen=True)
class Where:
    """From a place in the merged spec back to file, line and key."""

    main: Source
    # Where included entries came from: merged path, and its source and path there.
    moved: dict[toml_line_index.KeyPath, tuple[Source, toml_line_index.KeyPath]] = field(
        default_factory=dict
    )
    data: Mapping[str, Any] = field(default_factory=dict)

    def place(self, path: toml_line_index.KeyPath) -> tuple[str, int | None]:
        """File and line."""
        source, own = self.moved.get(path[:2], (self.main, path[:2]))
        return source.file, toml_line_index.nearest_line(source.index, own + path[2:])

    def problem(self, path: toml_line_index.KeyPath, what: str, allowed: str = "") -> Problem:
        """A problem at a place of the merged spec."""
        file, line = self.place(path)
        return Problem(file, what, allowed, key_text(path, self.data), line)


def in_memory(spec: TruckSpec) -> Where:
    """Places for a spec that no file stands behind: keys only."""
    names = [{"name": part.name} for part in spec.part]
    return Where(Source(spec.name, {}, {}), {}, {"part": names})


@dataclass(frozen=True)
class ReadFile:
    """A chassis file that holds to the format. path: the file itself."""

    spec: TruckSpec
    where: Where
    path: Path


def read_spec(path_or_demo_name: str | Path) -> ReadFile:
    """The checked spec of a file, or of a demo truck by name. Raises InputError."""
    path = locate(path_or_demo_name)
    return _reading(read_source(path, str(path)), path)


def read_text(text: str, path: str | Path) -> ReadFile:
    """The checked spec of a text as if it stood at `path`: unsaved edits. Raises InputError."""
    path = Path(path)
    if len(text) > MAX_FILE_BYTES:
        raise InputError(
            Problem(str(path), f"has {len(text)} characters", f"at most {MAX_FILE_BYTES}")
        )
    return _reading(source_of(text, str(path)), path)


def _reading(main: Source, path: Path) -> ReadFile:
    where = _merge(main, path.resolve().parent)
    try:
        spec = TruckSpec.model_validate(where.data)
    except ValidationError as error:
        raise InputError(problems(error, TruckSpec, where.data, where.place)) from None
    return ReadFile(spec, where, path)


def locate(path_or_demo_name: str | Path) -> Path:
    """The path meant: a file as given, else a demo truck of that name. Raises InputError."""
    given = str(path_or_demo_name)
    path = Path(given)
    try:
        if path.exists() and not (path.is_dir() and find_demo(given)):
            return path
        usable = given.isprintable()
    except (OSError, ValueError):
        usable = False
    if not usable:
        raise InputError(Problem(repr(given)[:80], "is not a usable file name"))
    demo = find_demo(given)
    if demo is None:
        hint = suggestion(given.removesuffix(".toml"), demo_names())
        raise InputError(Problem(given, "there is no such file, and no demo truck either", hint))
    return demo


def read_source(path: Path, label: str) -> Source:
    """A TOML file's values and lines, format not yet checked. Raises InputError."""
    return source_of(_text(path, label), label)


def given_source(given: str | PathLike[str] | Mapping[str, Any], label: str) -> Source:
    """A TOML file's values, or those of a mapping, called `label`, as such a file would hold them;
    arrays and tuples count as lists. Raises InputError."""
    if not isinstance(given, Mapping):
        return read_source(Path(given), str(given))
    return _within_toml(Source(label, as_toml(given), {}))


def as_toml(value: Any) -> Any:
    """Plain tables, lists and values, as a TOML file would give them."""
    if isinstance(value, Mapping):
        return {str(k): as_toml(v) for k, v in value.items()}
    if hasattr(value, "tolist"):
        value = value.tolist()
    return [as_toml(v) for v in value] if isinstance(value, (list, tuple)) else value


def source_of(text: str, label: str) -> Source:
    """A TOML text's values and lines, as of a file called `label`. Raises InputError."""
    _check_size(text, label)
    try:
        data = tomllib.loads(text)
        return _within_toml(Source(label, data, toml_line_index.line_index(text)))
    except ValueError as error:
        found = re.search(r"\(at (?:line (\d+), column (\d+)|end of document)\)", str(error))
        line = int(found.group(1)) if found and found.group(1) else text.count("\n") + 1
        if not found and (long := re.search(r"[\d_]{4000}", text)):  # too long for Python to read
            line = text.count("\n", 0, long.start()) + 1
        reason = str(error).split(" (at ")[0] if found else "a number out of all bounds"
        reason = reason[:1].lower() + reason[1:]
        raise InputError(Problem(label, f"is not valid TOML: {reason}", line=line)) from None
    except RecursionError:
        raise InputError(Problem(label, "is nested too deeply", "a few levels")) from None


def _within_toml(source: Source) -> Source:
    """The same. Raises InputError for a whole number beyond 64 bits, TOML's own bound."""
    left: list[tuple[toml_line_index.KeyPath, Any]] = [((), source.data)]
    while left:
        path, value = left.pop()
        if isinstance(value, dict):
            left += [((*path, key), own) for key, own in value.items()]
        elif isinstance(value, list):
            left += [((*path, n), own) for n, own in enumerate(value)]
        elif isinstance(value, int) and not -(2**63) <= value < 2**63:
            _fail(source, path, "is a whole number beyond 64 bits", "at most 9.2e18")
    return source


def _check_size(text: str, label: str) -> None:
    """Refuse what the reader of TOML would take gigabytes or hours for, before it is asked."""
    entries = text.count("=") + text.count(",") + text.count("[")
    if entries > MAX_ENTRIES:
        allowed = f"at most {MAX_ENTRIES} keys, tables and array entries"
        raise InputError(Problem(label, f"has about {entries} entries", allowed))
    deep = toml_line_index.deepest_key(text)
    if deep is not None and deep[0] > MAX_DEPTH:
        what = f"has a key of {deep[0]} names with dots between"
        raise InputError(Problem(label, what, f"at most {MAX_DEPTH}", line=deep[1]))


def _text(path: Path, label: str) -> str:
    try:
        about = path.stat()
        if stat.S_ISDIR(about.st_mode):
            raise InputError(Problem(label, "is a folder", "name a TOML file in it"))
        if not stat.S_ISREG(about.st_mode):
            raise InputError(Problem(label, "is not an ordinary file"))
        if about.st_size > MAX_FILE_BYTES:
            size = f"has {about.st_size} bytes"
            raise InputError(Problem(label, size, f"a chassis file has at most {MAX_FILE_BYTES}"))
        return path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = error.object[: error.start].count(b"\n") + 1
        what = "is not UTF-8 text"
        raise InputError(Problem(label, what, "save it as UTF-8", line=line)) from None
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "not a usable file name"
        raise InputError(Problem(label, f"cannot be read: {reason.lower()}")) from None


def _merge(main: Source, folder: Path) -> Where:
    """The values of a file with those of its includes put in."""
    data = dict(main.data)
    names = data.pop("include", [])
    if not isinstance(names, list) or not all(isinstance(n, str) for n in names):
        what = f"is {show(names)}"
        _fail(main, ("include",), what, "it must be an array of file names")
    if len(names) > MAX_INCLUDES:
        _fail(main, ("include",), f"names {len(names)} files", f"at most {MAX_INCLUDES}")
    where = Where(main, {}, data)
    found: list[Problem] = []
    for i, name in enumerate(names):
        try:
            _take(where, data, main, i, name, folder)
        except InputError as error:
            found += error.problems
    if found:
        raise InputError(found)
    return where


def _take(
    where: Where, data: dict[str, Any], main: Source, i: int, name: str, folder: Path
) -> None:
    """Put the shared entries of one included file into `data`."""
    inside = contained(folder, name)
    if inside is None:
        _fail(main, ("include", i), f"'{name}' is outside the file's folder", "stay inside it")
    source = read_source(inside, str(Path(main.file).parent / name))
    for key, value in source.data.items():
        if key not in _SHARED:
            _fail(source, (key,), "may not stand in an included file", f"only {_SHARED}")
        if key == "part":
            _take_parts(where, data, source, value, Path(name).parent)
        elif isinstance(value, dict):
            table = data[key] = dict(data.get(key) or {}) if _is_table(data, key) else {}
            for entry in value:
                if entry in table:
                    _fail(source, (key, entry), "is given twice", "once, in one of the files")
                table[entry] = value[entry]
                where.moved[(key, entry)] = (source, (key, entry))
        else:
            _fail(source, (key,), f"is {show(value)}", "it must be a table")


def _take_parts(
    where: Where, data: dict[str, Any], source: Source, value: object, folder: Path
) -> None:
    if not isinstance(value, list):
        _fail(source, ("part",), f"is {show(value)}", "write [[part]] above each part")
    own = data.get("part", [])
    merged = data["part"] = list(own) if isinstance(own, list) else []
    for i, part in enumerate(value):
        where.moved[("part", len(merged))] = (source, ("part", i))
        merged.append(_from_folder(part, folder))


def _from_folder(part: Any, folder: Path) -> Any:
    """The part with its mesh file named from the main file's folder."""
    shape = part.get("shape") if isinstance(part, dict) else None
    if not isinstance(shape, dict) or not isinstance(shape.get("file"), str):
        return part
    return {**part, "shape": {**shape, "file": str(folder / shape["file"])}}


def _is_table(data: Mapping[str, Any], key: str) -> bool:
    return isinstance(data.get(key, {}), dict)


def contained(folder: Path, name: str) -> Path | None:
    """The file `name` inside `folder`, links followed, or None where that leads out of it."""
    try:
        path = (folder / name).resolve()
    except (OSError, ValueError, RuntimeError):
        return None
    return path if path.is_relative_to(folder.resolve()) else None


def _fail(source: Source, path: toml_line_index.KeyPath, what: str, allowed: str) -> NoReturn:
    line = toml_line_index.nearest_line(source.index, path)
    raise InputError(Problem(source.file, what, allowed, key_text(path, source.data), line))
