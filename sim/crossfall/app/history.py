"""A text with its history: what undo, redo and the journal are made of.

A step keeps only the lines that changed, so that a thousand edits of a long file stay small. With
the text goes what is fitted to it, so that undo and redo move that too.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

MAX_STEPS = 500  # older ones are forgotten, so that memory stays steady


@dataclass(frozen=True)
class Fitted:
    """Changes made to a text. base: the text without them. chosen: name of a change, how many."""

    base: str
    chosen: tuple[tuple[str, int], ...]


@dataclass(frozen=True)
class Step:
    """`was` lines from line `first` on became `now`; `what` says so in a tuner's words.

    fitted: the changes fitted before and after. name: what its owner calls the state after it.
    """

    first: int
    was: tuple[str, ...]
    now: tuple[str, ...]
    what: str
    fitted: tuple[Fitted | None, Fitted | None] = (None, None)
    name: str = ""


@dataclass(frozen=True)
class History:
    """A text and the steps on both sides of it. revision: counts every change, undo included."""

    text: str
    revision: int = 0
    back: tuple[Step, ...] = ()
    ahead: tuple[Step, ...] = ()
    fitted: Fitted | None = None

    @property
    def now(self) -> int:
        """How many steps lie behind."""
        return len(self.back)

    @property
    def steps(self) -> tuple[Step, ...]:
        """All steps in their order, those undone included."""
        return (*self.back, *reversed(self.ahead))


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


def changed(history: History, text: str, what: str, fitted: Fitted | None = None) -> History:
    """The history after an edit; a text that is the same leaves it as it was."""
    if text == history.text and fitted == history.fitted:
        return history
    step = replace(step_between(history.text, text, what), fitted=(history.fitted, fitted))
    return History(text, history.revision + 1, (*history.back, step)[-MAX_STEPS:], (), fitted)


def undone(history: History) -> History:
    """One step back; nothing where there is none."""
    return gone(history, max(0, history.now - 1))


def redone(history: History) -> History:
    """One step forward again; nothing where there is none."""
    return gone(history, min(len(history.steps), history.now + 1))


def gone(history: History, to: int) -> History:
    """The history with `to` steps behind it, as one change. Raises IndexError."""
    if not 0 <= to <= len(history.steps):
        raise IndexError(to)
    moved = history
    while moved.now > to:
        step = moved.back[-1]
        text = _replace(moved.text, step.first, step.now, step.was)
        ahead = (*moved.ahead, step)
        moved = replace(moved, text=text, back=moved.back[:-1], ahead=ahead, fitted=step.fitted[0])
    while moved.now < to:
        step = moved.ahead[-1]
        text = _replace(moved.text, step.first, step.was, step.now)
        back = (*moved.back, step)
        moved = replace(moved, text=text, back=back, ahead=moved.ahead[:-1], fitted=step.fitted[1])
    return moved if moved is history else replace(moved, revision=history.revision + 1)


def walk(history: History) -> list[str]:
    """The text at the start and after every step, those undone included."""
    at = gone(history, 0)
    texts = [at.text]
    for _ in history.steps:
        at = redone(at)
        texts.append(at.text)
    return texts


def named_history(history: History, step: int, name: str) -> History:
    """The history with a name on the state after its `step`-th step, from 1. Raises IndexError."""
    if not 1 <= step <= len(history.steps):
        raise IndexError(step)
    steps = list(history.steps)
    steps[step - 1] = replace(steps[step - 1], name=name)
    back, ahead = steps[: history.now], steps[history.now :]
    return replace(history, back=tuple(back), ahead=tuple(reversed(ahead)))


def _replace(text: str, first: int, old: tuple[str, ...], new: tuple[str, ...]) -> str:
    lines = text.splitlines(keepends=True)
    if tuple(lines[first : first + len(old)]) != old:
        raise ValueError("the text is not the one this step was made on")
    return "".join((*lines[:first], *new, *lines[first + len(old) :]))
