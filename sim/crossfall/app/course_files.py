"""Courses kept in the opened folder, one NAME.course.toml each: mm across the hill and up it.

slope_deg = 22
speed_mm_per_s = 250
points_mm = [[-950, 40], [950, 0]]

[[stone]]
at_mm = [-330, 92]
height_mm = 18
"""

from __future__ import annotations

import tomllib
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from crossfall.app.bodies import CourseAskedBody, RampBody, StoneBody
from crossfall.app.course import understood_course
from crossfall.app.document import Conflict
from crossfall.app.folder import inside, listing
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.sentences import suggestion

COURSE = ".course.toml"
_MOST = 100  # files, and kB of each
_THINGS = {  # by what the page calls them: what the file does, and the keys of one
    "stones": ("stone", tuple(StoneBody.model_fields)),
    "ramps": ("ramp", tuple(RampBody.model_fields)),
}
_PLAIN = tuple(key for key in CourseAskedBody.model_fields if key not in _THINGS)


def kept_courses(folder: Path) -> dict[str, Any]:
    """courses: by name, as the page draws them. wrong: a sentence for each file that is none."""
    courses: dict[str, Any] = {}
    wrong: list[str] = []
    for file in listing(folder, COURSE, _MOST):
        try:
            courses[file.removesuffix(COURSE)] = _read(folder / file)
        except InputError as error:
            wrong += [f"{file}: {problem}" for problem in error.problems]
    return {"courses": courses, "wrong": wrong}


def keep_course(folder: Path, name: str, asked: dict[str, Any], over: bool) -> None:
    """Write a course that can be driven. Raises InputError; Conflict where one of that name is
    there already and is not to be written over."""
    path = inside(folder, name, COURSE)
    understood_course(asked)
    if path.exists() and not over:
        raise Conflict("disk", f"there is a {path.name} already")
    write_atomically(path, _written(asked))


def _read(path: Path) -> dict[str, Any]:
    if path.stat().st_size > _MOST * 1000:
        raise InputError(Problem("course", "is too big", f"{_MOST} kB at most"))
    try:
        data = tomllib.loads(path.read_bytes().decode("utf-8-sig"))
    except (ValueError, RecursionError) as error:
        raise InputError(Problem("course", f"is no TOML: {error}")) from None
    _check_keys(data, [*_PLAIN, *(entry for entry, _ in _THINGS.values())])
    for entry, keys in _THINGS.values():
        laid = data.get(entry, [])
        for thing in laid if isinstance(laid, list) else []:
            if isinstance(thing, dict):
                _check_keys(thing, keys, f"{entry}.")
    course = {key: data.get(key) for key in _PLAIN}
    course |= {many: data.get(entry, []) for many, (entry, _) in _THINGS.items()}
    understood_course(course)
    return course


def _check_keys(table: dict[str, Any], known: Sequence[str], where: str = "") -> None:
    for key in table:
        if key not in known:
            name = f"{where}{key[:60]}"
            raise InputError(Problem(name, "is no key here", suggestion(key, known)))


def _written(course: dict[str, Any]) -> str:
    """The file's text; every value was understood, so that Python writes it as TOML does."""
    lines = ["# A slope course: mm across the hill to the right and up it, from its middle.", ""]
    lines += [f"{key} = {_plain(course[key])}" for key in _PLAIN]
    for many, (entry, keys) in _THINGS.items():
        for thing in course.get(many, []):
            lines += ["", f"[[{entry}]]", *(f"{key} = {_plain(thing[key])}" for key in keys)]
    return "\n".join(lines) + "\n"


def _plain(value: Any) -> str:
    if isinstance(value, list):
        return f"[{', '.join(map(_plain, value))}]"
    return repr(int(value)) if float(value).is_integer() else repr(round(float(value), 3))
