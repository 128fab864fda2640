"""Turning validation errors into one plain sentence each."""

from __future__ import annotations

import difflib
import types
import typing
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from crossfall.truck.errors import Problem
from crossfall.truck.toml_line_index import KeyPath

Locate = Callable[[KeyPath], tuple[str, int | None]]

_TAGS = ("kind", "do")  # fields that say which of several models a table is
MOST_SENTENCES = 100  # mistakes told at once
_CLOSE = 0.6  # how alike two words must be to take one for a slip of the other
_BOUNDS = {
    "greater_than": ("gt", "more than {}"),
    "greater_than_equal": ("ge", "{} or more"),
    "less_than": ("lt", "less than {}"),
    "less_than_equal": ("le", "{} or less"),
}
_WANTED = {
    "float_type": "a number",
    "int_type": "a whole number",
    "int_from_float": "a whole number",
    "bool_type": "true or false",
    "string_type": "text in quotes",
    "tuple_type": "an array, [ ... ]",
    "dict_type": "a table",
    "model_type": "a table",
    "model_attributes_type": "a table",
    "float_parsing": "a number",
    "int_parsing": "a whole number",
}


def problems(
    error: ValidationError, model: type[BaseModel], data: Mapping[str, Any], locate: Locate
) -> tuple[Problem, ...]:
    """One problem per mistake, in file order; of very many, the first and how many more there are.

    model: what `data` was checked against. locate: file and line of a path.
    """
    found = []
    details = error.errors(include_url=False)
    more = len(details) - MOST_SENTENCES
    for detail in _without_echoes(details[:MOST_SENTENCES], model):
        path = _path_in_file(detail["loc"], data)
        what, allowed, path = _say(detail, path, model)
        file, line = locate(path)
        found.append(Problem(file, what, allowed, key_text(path, data), line))
    shown = sorted(set(found), key=lambda p: (p.file, p.line or 0, p.key, p.what))
    if more > 0:
        shown.append(Problem(locate(())[0], f"has {more} more mistakes", "mend these first"))
    return tuple(shown)


def key_text(path: KeyPath, data: Mapping[str, Any]) -> str:
    """The dotted key of a path, with parts called by their names: part.winch.at_mm[2]."""
    text = ""
    here: Any = data
    for step in path:
        here = _step(here, step)
        name = here.get("name") if isinstance(here, Mapping) else None
        if text == "part" and isinstance(step, int) and isinstance(name, str) and name:
            text += f".{name}"
        elif isinstance(step, int):
            text += f"[{step}]"
        else:
            text += f".{step}" if text else str(step)
    return text


def suggestion(word: str, known: Iterable[str]) -> str:
    """ "did you mean 'x'?" where something is close, else a list of what there is."""
    known = list(known)
    close = difflib.get_close_matches(word, known, n=1, cutoff=_CLOSE)
    if close:
        return f"did you mean '{close[0]}'?"
    shown = ", ".join(known[:20]) + (", ..." if len(known) > 20 else "")
    return f"known are {shown}" if known else "there are none"


def show(value: object) -> str:
    """A value of the file in a few words."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        short = value if len(value) <= 40 else value[:37] + "..."
        return f"the text {short!r}"
    if isinstance(value, int) and abs(value) > 10**15:
        return "a huge number"
    if isinstance(value, int | float):
        return f"{value:g}" if isinstance(value, float) else str(value)
    if isinstance(value, list | tuple):
        return f"an array of {len(value)}"
    if isinstance(value, Mapping):
        return "a table"
    return str(value)[:40]


def _say(detail: ErrorDetails, path: KeyPath, model: type[BaseModel]) -> tuple[str, str, KeyPath]:
    """What is wrong, what is allowed, and where."""
    kind, value = detail["type"], detail["input"]
    ctx: dict[str, Any] = detail.get("ctx") or {}
    if kind == "crossfall":
        return ctx["what"], ctx["allowed"], path + tuple(ctx["key"].split("."))
    if kind == "extra_forbidden":
        fields = _fields(model, detail["loc"][:-1])
        return "is not a known key", suggestion(str(path[-1]), fields), path
    if kind == "missing" and isinstance(path[-1], int):
        return f"has too few values, {path[-1]}", "give one per axis", path[:-1]
    if kind == "missing":
        return "is missing", "it has to be given", path
    if kind == "too_long" and isinstance(value, list | tuple):
        return f"has {len(value)} values", f"at most {ctx['max_length']}", path
    if kind == "too_short":
        return "has too few values", f"at least {ctx['min_length']}", path
    if kind in _BOUNDS:
        name, words = _BOUNDS[kind]
        return f"is {show(value)}", f"it must be {words.format(f'{ctx[name]:g}')}", path
    if kind == "finite_number" or (kind in ("float_type", "int_type") and _huge(value)):
        return f"is {show(value)}", "it must be an ordinary finite number", path
    if kind in ("literal_error", "enum"):
        wanted = _literals(model, detail["loc"])
        named = f"it must be {' or '.join(wanted)}"
        hint = suggestion(value, wanted) if isinstance(value, str) else named
        return f"is {show(value)}", hint, path
    if kind == "union_tag_invalid":
        tags = [t.strip("' ") for t in str(ctx["expected_tags"]).split(",")]
        key = ctx["discriminator"].strip("'")
        return f"is {show(ctx['tag'])}", suggestion(str(ctx["tag"]), tags), (*path, key)
    if kind == "union_tag_not_found":
        key = ctx["discriminator"].strip("'")
        said = "say which shape it is, as in kind = 'box'" if key == "kind" else "say which it is"
        return "is missing", said, (*path, key)
    if kind in ("string_too_short", "string_too_long", "string_pattern_mismatch"):
        return _say_text(kind, value, ctx, path)
    if kind in _WANTED:
        return f"is {show(value)}", f"it must be {_WANTED[kind]}", path
    return f"is {show(value)}", detail["msg"][:1].lower() + detail["msg"][1:], path


def _say_text(
    kind: str, value: object, ctx: dict[str, Any], path: KeyPath
) -> tuple[str, str, KeyPath]:
    path = path[:-1] if path and path[-1] == "[key]" else path
    if kind == "string_too_short":
        return "is empty", "it needs at least one letter", path
    if kind == "string_too_long":
        return "is too long", f"at most {ctx['max_length']} letters", path
    return (
        f"is {show(value)}",
        "no dots, quotes, square brackets, line breaks or control characters",
        path,
    )


def _without_echoes(details: list[ErrorDetails], model: type[BaseModel]) -> list[ErrorDetails]:
    """Without the missing keys that are there, only misspelt: those are told once."""
    meant = set()
    for d in details:
        if d["type"] == "extra_forbidden":
            close = difflib.get_close_matches(
                str(d["loc"][-1]), _fields(model, d["loc"][:-1]), n=1, cutoff=_CLOSE
            )
            meant |= {(*d["loc"][:-1], name) for name in close}
    return [d for d in details if d["type"] != "missing" or d["loc"] not in meant]


def _huge(value: object) -> bool:
    return isinstance(value, int) and not isinstance(value, bool) and abs(value) > 10**15


def _step(here: Any, step: str | int) -> Any:
    try:
        return here[step]
    except (KeyError, IndexError, TypeError):
        return None


def _path_in_file(loc: tuple[str | int, ...], data: Mapping[str, Any]) -> KeyPath:
    """The path without the union tags that the validator puts between a key and its fields."""
    path: KeyPath = ()
    here: Any = data
    for i, step in enumerate(loc):
        tag = next((t for t in _TAGS if isinstance(here, Mapping) and t in here), None)
        inside = tag is not None and step not in here and here[tag] == step
        if inside and (loc[i - 1] == "shape" or isinstance(loc[i - 1], int)):
            continue
        path += (step,)
        here = _step(here, step)
    return path


def _fields(model: type[BaseModel], loc: tuple[str | int, ...]) -> list[str]:
    """Names of the fields at a place in the model, by walking its annotations."""
    here: Any = model
    for step in loc:
        here = _descend(here, step)
    found = _model_in(here)
    return list(found.model_fields) if found else []


def _literals(model: type[BaseModel], loc: tuple[str | int, ...]) -> list[str]:
    here: Any = model
    for step in loc:
        here = _descend(here, step)
    for kind in (here, *_arguments(here)):
        if typing.get_origin(kind) is typing.Literal:
            return [str(a) for a in typing.get_args(kind)]
    return []


def _arguments(kind: Any) -> tuple[Any, ...]:
    """Members of a union, with Annotated wrappings taken off."""
    if typing.get_origin(kind) is typing.Annotated:
        return _arguments(typing.get_args(kind)[0])
    if typing.get_origin(kind) in (typing.Union, types.UnionType):
        return tuple(b for a in typing.get_args(kind) for b in (a, *_arguments(a)))
    return (kind,)


def _model_in(kind: Any) -> type[BaseModel] | None:
    for member in _arguments(kind):
        if isinstance(member, type) and issubclass(member, BaseModel):
            return member
    return None


def _descend(here: Any, step: str | int) -> Any:
    for member in _arguments(here):
        if isinstance(member, type) and issubclass(member, BaseModel):
            if step in member.model_fields:
                return member.model_fields[str(step)].annotation
            tags = [f for t in _TAGS if (f := member.model_fields.get(t)) is not None]
            if any(step in typing.get_args(tag.annotation) for tag in tags):
                return member
        elif typing.get_origin(member) in (tuple, dict, list):
            return typing.get_args(member)[0 if isinstance(step, int) else -1]
    return None
