"""What a batch is made of: trials with a name for the method, a payload and a content address.

A method is any function `f(common, payload) -> rows`, named "package.module:function":

    common   JSON-able, the same for the whole batch (the spec, the method's settings)
    payload  flat JSON object, what is special to this trial; its "seed" fixes all randomness
    rows     list of flat JSON objects, one per line of the table

Its module may have a function `ahead(common, payloads)` beside it, which is told of the trials that
a process will be given next, to do at once what is cheaper done at once.

Everything that decides the rows is in common, payload and versions, so their digest is the
trial's address: a trial with a known address need never be done again.
"""

from __future__ import annotations

import hashlib
import importlib
import itertools
import json
import traceback
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

Payload = dict[str, Any]
_Method = Callable[[Mapping[str, Any], Payload], list[dict[str, Any]]]


@dataclass(frozen=True)
class Task:
    """One trial to do. place: its line in the plan, from 0. key: its content address.

    company: payloads of the trials that it shares work with, itself among them, or empty: always
    the same, whichever of them are done already, so that its rows are the same to the last bit.
    """

    place: int
    key: str
    payload: Payload
    company: tuple[Payload, ...] = field(default=(), compare=False, repr=False)


@dataclass(frozen=True)
class TrialOutcome:
    """What became of one trial.

    rows: JSON text of its rows, or "" where it failed; cause: why it failed, one sentence that
    is the same every time, or "". detail: for reading only (where in the code). took: s.
    """

    place: int
    rows: str
    cause: str
    detail: str
    took: float


@dataclass(frozen=True)
class Batch:
    """A set of trials of one method.

    tasks: gives the tasks afresh, in the order of their places, each time it is called.
    spec: digest of the truck. versions: of everything that can change a row. local: handed to
    the method with common, but no part of an address, such as where files lie on this machine.
    together: how many tasks in a row keep company, and so go to one process.
    """

    name: str
    method: str
    common: dict[str, Any]
    spec: str
    versions: dict[str, str]
    total: int
    tasks: Callable[[], Iterator[Task]]
    local: dict[str, Any] = field(default_factory=dict)
    together: int = 1


def canonical(value: Any) -> str:
    """The one JSON text of a value: keys sorted, no spaces, floats to the last bit."""
    return json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=True)


def value_digest(value: Any) -> str:
    """SHA-256 of the canonical text, in hexadecimal."""
    return hashlib.sha256(canonical(value).encode()).hexdigest()


def make_batch(
    name: str,
    method: str,
    common: dict[str, Any],
    payloads: Callable[[], Iterator[Payload]],
    total: int,
    *,
    spec: str = "",
    versions: dict[str, str] | None = None,
    local: dict[str, Any] | None = None,
    together: int = 1,
) -> Batch:
    """A batch whose tasks carry their addresses. payloads: gives them afresh, in order."""
    versions = versions or {}
    base = value_digest([method, common, spec, versions])

    def tasks() -> Iterator[Task]:
        stream, place = payloads(), 0
        while company := tuple(itertools.islice(stream, together)):
            for payload in company:
                yield Task(place, value_digest([base, payload]), payload, company)
                place += 1

    return Batch(name, method, common, spec, versions, total, tasks, local or {}, together)


def find_method(name: str) -> _Method:
    """The function called "package.module:function"."""
    module, _, function = name.partition(":")
    method: _Method = getattr(importlib.import_module(module), function)
    return method


def perform(method: _Method, common: Mapping[str, Any], payload: Payload) -> tuple[str, str, str]:
    """Do one trial: (rows, cause, detail) as in `TrialOutcome`. Whatever it raises is its cause."""
    try:
        return encode_rows(method(common, payload)), "", ""
    except BaseException as error:
        # SystemExit and the like from deep inside an engine must not end the night either.
        cause = f"{type(error).__name__}: {error}".strip().rstrip(":")
        frames = traceback.extract_tb(error.__traceback__)[-3:]
        return "", " ".join(cause.split())[:500], " < ".join(map(_frame, reversed(frames)))


def encode_rows(rows: list[dict[str, Any]]) -> str:
    """JSON text of the rows; TypeError where a value is not a plain number, text or truth."""
    for row in rows:
        for name, value in row.items():
            if not (value is None or isinstance(value, (bool, int, float, str))):
                raise TypeError(f"column {name} holds a {type(value).__name__}, not a plain value")
    return json.dumps(rows, separators=(",", ":"))


def _frame(frame: traceback.FrameSummary) -> str:
    return f"{frame.name} ({frame.filename.rsplit('/', 1)[-1]}:{frame.lineno})"
