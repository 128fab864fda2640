"""What keeps unsaved work when the tab or the server dies.

One small JSON file per truck file, in the user's state folder so that the workshop folder stays
clean, rewritten in one step after every edit. A lock beside it keeps a second bench from writing
to it at the same time.
"""

from __future__ import annotations

import hashlib
import json
import os
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

from crossfall.app.history import Fitted, History, Step
from crossfall.truck import locks
from crossfall.truck.files import write_atomically

_FORMAT = 2


@dataclass(frozen=True)
class Entry:
    """A journal as read back. base: digest of the file the work began from. document: what the
    work was known by. unsaved: whether it differed from its file. saved_fitted: the changes fitted
    to the text of the file."""

    base: str
    history: History
    document: str = ""
    unsaved: bool = True
    saved_fitted: Fitted | None = None


def text_digest(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()


def state_folder() -> Path:
    """Where programs keep such things: $XDG_STATE_HOME or ~/.local/state, on Windows
    %LOCALAPPDATA%."""
    usual = os.environ.get("LOCALAPPDATA") if os.name == "nt" else None
    root = os.environ.get("XDG_STATE_HOME") or usual or Path.home() / ".local" / "state"
    return Path(root) / "crossfall" / "bench"


def journal_path(spec: Path, folder: Path | None = None) -> Path:
    """The journal of a truck file, named by the file's full path."""
    key = text_digest(str(spec.resolve()))[:16]
    return (folder or state_folder()) / f"{spec.stem}-{key}.json"


def lock_journal(path: Path) -> IO[str] | None:
    """Hold the journal for this process; None where another bench holds it. Close to let go."""
    path.parent.mkdir(parents=True, exist_ok=True)
    stream = open(path.with_suffix(".lock"), "w", encoding="utf-8")  # noqa: SIM115 - kept open
    if not locks.lock(stream.fileno()):
        stream.close()
        return None
    return stream


def write_journal(path: Path, entry: Entry) -> None:
    """Put the journal down in one step."""
    h = entry.history
    bases: dict[str, int] = {}  # the texts that changes were fitted to, each written once

    def fit(fitted: Fitted | None) -> Any:
        if fitted is None:
            return None
        return {"base": bases.setdefault(fitted.base, len(bases)), "chosen": fitted.chosen}

    def sides(steps: tuple[Step, ...]) -> list[Any]:
        return [{**vars(s), "fitted": [fit(f) for f in s.fitted]} for s in steps]

    content = {
        "format": _FORMAT,
        "base": entry.base,
        "document": entry.document,
        "unsaved": entry.unsaved,
        "saved_fitted": fit(entry.saved_fitted),
        "history": {
            "text": h.text,
            "revision": h.revision,
            "fitted": fit(h.fitted),
            "back": sides(h.back),
            "ahead": sides(h.ahead),
        },
        "bases": list(bases),
    }
    write_atomically(path, json.dumps(content, separators=(",", ":")))


def read(path: Path) -> Entry | None:
    """The journal, or None where there is none or it is not one of ours."""
    try:
        content = json.loads(path.read_text("utf-8"))
        if content["format"] not in (1, _FORMAT):  # the first had no fitted changes
            return None
        h, bases = content["history"], content.get("bases", [])

        def fit(data: Any) -> Fitted | None:
            if data is None:
                return None
            return Fitted(bases[data["base"]], tuple((str(k), int(n)) for k, n in data["chosen"]))

        def side(steps: list[Any]) -> tuple[Step, ...]:
            return tuple(
                Step(
                    s["first"],
                    tuple(s["was"]),
                    tuple(s["now"]),
                    s["what"],
                    (fit(s["fitted"][0]), fit(s["fitted"][1])) if "fitted" in s else (None, None),
                    s.get("name", ""),
                )
                for s in steps
            )

        back, ahead = side(h["back"]), side(h["ahead"])
        text, revision = str(h["text"]), int(h["revision"])
        return Entry(
            str(content["base"]),
            History(text, revision, back, ahead, fit(h.get("fitted"))),
            str(content.get("document", "")),
            bool(content.get("unsaved", True)),
            fit(content.get("saved_fitted")),
        )
    except (OSError, ValueError, KeyError, TypeError, IndexError):
        return None
