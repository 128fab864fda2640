"""What the truck on the bench is compared with: an earlier state of it, or another file."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from crossfall.app.document import Sheet
from crossfall.app.history import gone, walk
from crossfall.truck.errors import InputError, Problem


@dataclass(frozen=True)
class Reference:
    """A truck to compare with: how it was asked for, what it is in words, its text and file."""

    key: str
    words: str
    text: str
    source: Path


def as_opened(sheet: Sheet) -> Reference:
    return Reference("opened", "as opened", sheet.history.text, sheet.source)


def automatic(sheet: Sheet) -> Reference:
    """The truck before its changes were fitted; else as it is saved."""
    fitted = sheet.history.fitted
    if fitted is not None:
        return Reference("auto", "before these changes", fitted.base, sheet.source)
    return Reference("auto", "as saved", sheet.saved_text, sheet.source)


def current(sheet: Sheet, pinned: Reference | None) -> Reference:
    """The reference at this moment: what was pinned follows a save, and says whose it is once
    another truck is on the bench."""
    if pinned is None:
        return automatic(sheet)
    if pinned.source != sheet.source:
        stem = pinned.source.stem
        words = pinned.words if pinned.words == stem else f"{stem}, {pinned.words}"
        return replace(pinned, words=words)
    if pinned.key == "saved":
        return replace(pinned, text=sheet.saved_text)
    return pinned


def listed_references(
    sheet: Sheet, opened: Reference, now: Reference, files: Sequence[str]
) -> list[dict[str, str]]:
    """What may be pinned, by key, in words. now: what is; files: truck files by name."""
    found = [
        {"key": "auto", "words": "as it was: saved, or before its changes"},
        {"key": "saved", "words": "as last saved"},
    ]
    if opened.source == sheet.source:
        found.append({"key": "opened", "words": "as opened"})
    if now.key not in {f["key"] for f in found}:
        found.append({"key": now.key, "words": now.words})
    others = [n for n in files if f"file:{n}" not in {f["key"] for f in found}]
    others = [n for n in others if n != sheet.source.name]
    return found + [{"key": f"file:{n}", "words": n.removesuffix(".toml")} for n in others]


def chosen(
    sheet: Sheet, key: str, opened: Reference, file: Callable[[str], Path]
) -> Reference | None:
    """What a key stands for: auto (None), saved, opened, now, step:N or file:NAME.

    Raises InputError where it stands for nothing.

    file: the path of a truck file by name.
    """
    if key == "auto":
        return None
    if key == "saved":
        return Reference(key, "as last saved", sheet.saved_text, sheet.source)
    if key == "opened" and opened.source == sheet.source:
        return opened
    if key == "now":  # the step it is at, whatever the page knows of it
        key = f"step:{len(sheet.history.back)}"
    kind, _, rest = key.partition(":")
    if kind == "step" and rest.isdecimal() and int(rest) <= len(sheet.history.steps):
        past = gone(sheet.history, int(rest))
        words = "as at the start" if rest == "0" else f"after step {rest}"
        named = past.back[-1].name if past.back else ""
        return Reference(f"{key}@{past.revision}", named or words, past.text, sheet.source)
    if kind == "file":
        path = file(rest)
        return Reference(key, path.stem, path.read_bytes().decode("utf-8-sig"), path)
    raise InputError(Problem("compare", f"there is no '{key[:80]}' to compare with"))


def strip(sheet: Sheet, weakest: Callable[[str], float | None]) -> dict[str, Any]:
    """The history from its start. weakest: deg, of a text, as far as that was worked out."""
    history = sheet.history
    found = []
    for i, text in enumerate(walk(history)):
        step = history.steps[i - 1] if i else None
        found.append(
            {
                "what": step.what if step else "the start",
                "name": step.name if step else "",
                "weakest_deg": weakest(text),
                "saved": text == sheet.saved_text,
            }
        )
    return {"now": history.now, "steps": found}
