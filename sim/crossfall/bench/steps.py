"""A text with its history: what undo, redo and the journal are made of.

A step keeps only the lines that changed, so that a thousand edits of a long file stay small.
"""

from __future__ import annotations

from dataclasses import dataclass

MAX_STEPS = 500  # older ones are forgotten, so that memory stays steady


@dataclass(frozen=True)
class Step:
    """`was` lines from line `first` on became `now`; `what` says so in a tuner's words."""

    first: int
    was: tuple[str, ...]
    now: tuple[str, ...]
    what: str


@dataclass(frozen=True)
class History:
    """A text and the steps on both sides of it. revision: counts every change, undo included."""

    text: str
    revision: int = 0
    back: tuple[Step, ...] = ()
    ahead: tuple[Step, ...] = ()


def step_between(old: str, new: str, what: str) -> Step:
    """The step from one text to another: what is left after the lines both share at the ends."""
    a, b = old.splitlines(keepends=True), new.splitlines(keepends=True)
    first = 0
    while first < min(len(a), len(b)) and a[first] == b[first]:
        first += 1
    last = 0
    while last < min(len(a), len(b)) - first and a[-1 - last] == b[-1 - last]:
        last += 1
    return Step(first, tuple(a[first : len(a) - last]), tuple(b[first : len(b) - last]), what)


def changed(history: History, text: str, what: str) -> History:
    """The history after an edit; a text that is the same leaves it as it was."""
    if text == history.text:
        return history
    back = (*history.back, step_between(history.text, text, what))[-MAX_STEPS:]
    return History(text, history.revision + 1, back, ())


def undone(history: History) -> History:
    """One step back; nothing where there is none."""
    if not history.back:
        return history
    step = history.back[-1]
    text = _replace(history.text, step.first, step.now, step.was)
    return History(text, history.revision + 1, history.back[:-1], (*history.ahead, step))


def redone(history: History) -> History:
    """One step forward again; nothing where there is none."""
    if not history.ahead:
        return history
    step = history.ahead[-1]
    text = _replace(history.text, step.first, step.was, step.now)
    return History(text, history.revision + 1, (*history.back, step), history.ahead[:-1])


def _replace(text: str, first: int, old: tuple[str, ...], new: tuple[str, ...]) -> str:
    lines = text.splitlines(keepends=True)
    if tuple(lines[first : first + len(old)]) != old:
        raise ValueError("the text is not the one this step was made on")
    return "".join((*lines[:first], *new, *lines[first + len(old) :]))
