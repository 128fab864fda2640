"""The page's types, made from the models of what it is told and what it sends.

`python -m crossfall.app.typescript sim/page/src/types.ts` writes them; a test holds the file to the
models.
"""

from __future__ import annotations

import inspect
import json
import sys
from collections.abc import Iterator
from pathlib import Path
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin

from pydantic import BaseModel

from crossfall.app import bodies, replies
from crossfall.truck.files import write_atomically

_HEAD = """\
// Made from crossfall/app/replies.py and bodies.py by crossfall/app/typescript.py; change those
// instead. In mm, g and degrees; null is where there is no number.

export type Triple = [number, number, number];
export type Pair = [number, number];
"""
_PLAIN: dict[Any, str] = {
    str: "string", int: "number", float: "number", bool: "boolean", NoneType: "null",
    Any: "unknown", tuple[float, float]: "Pair", tuple[float, float, float]: "Triple",
}  # fmt: skip
_SUFFIXES = ("Reply", "Body")


def type_declarations() -> str:
    """The whole file: an interface for every reply, and for what of a request the page builds."""
    found = [_interface(model) for model in dict.fromkeys(_models())]
    return "\n".join([_HEAD, f"export type Edit = {_written(bodies.EditBody)};\n", *found])


def _models() -> Iterator[type[BaseModel]]:
    for model in vars(replies).values():
        if (
            inspect.isclass(model)
            and issubclass(model, replies.Reply)
            and model is not replies.Reply
        ):
            yield from _within(model)
    for part in get_args(get_args(bodies.EditBody)[0]):
        yield from _within(part)


def _within(model: type[BaseModel]) -> Iterator[type[BaseModel]]:
    """The models that a model's fields are made of, and itself after them."""
    for field in model.model_fields.values():
        yield from _named(field.annotation)
    yield model


def _named(annotation: Any) -> Iterator[type[BaseModel]]:
    if inspect.isclass(annotation) and issubclass(annotation, BaseModel):
        yield from _within(annotation)
    for inner in get_args(annotation):
        yield from _named(inner)


def _interface(model: type[BaseModel]) -> str:
    """One interface with a line for every field, those of another that it extends left out."""
    base: Any = model.__base__
    own = base in (replies.Reply, bodies.StrictBody)
    about = "" if model.__doc__ == base.__doc__ else inspect.cleandoc(model.__doc__ or "")
    lines = [f"/** {' '.join(about.split())} */"] if about else []
    lines += [f"export interface {_name(model)}{'' if own else f' extends {_name(base)}'} {{"]
    for name, field in model.model_fields.items():
        if not own and name in base.model_fields:
            continue
        if field.description:
            lines += [f"  /** {' '.join(field.description.split())} */"]
        lines += [f"  {name}{'' if field.is_required() else '?'}: {_written(field.annotation)};"]
    return "\n".join([*lines, "}", ""])


def _written(annotation: Any) -> str:
    """The TypeScript type of a field."""
    if annotation in _PLAIN:
        return _PLAIN[annotation]
    kind, inner = get_origin(annotation), get_args(annotation)
    if kind is Annotated:
        return _written(inner[0])
    if kind is Literal:
        return " | ".join(json.dumps(value) for value in inner)
    if kind in (Union, UnionType):
        return " | ".join(map(_written, inner))
    if kind is list:
        of = _written(inner[0])
        return f"({of})[]" if " | " in of else f"{of}[]"
    if kind is tuple:
        return f"[{', '.join(map(_written, inner))}]"
    if kind is dict:
        return f"Record<{_written(inner[0])}, {_written(inner[1])}>"
    return _name(annotation)


def _name(model: type[BaseModel]) -> str:
    name = model.__name__
    for suffix in _SUFFIXES:
        name = name.removesuffix(suffix)
    return name


if __name__ == "__main__":
    write_atomically(Path(sys.argv[1]), type_declarations())
