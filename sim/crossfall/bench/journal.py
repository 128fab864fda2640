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

from crossfall.bench.steps import History, Step
from crossfall.truck import locks
from crossfall.truck.files import write_atomically

FORMAT = 1


@dataclass(frozen=True)
class Entry:
    """A journal as read back. base: digest of the file the work began from. memo: anything more
    to remember about the text, in JSON's own types."""

    base: str
    history: History
    memo: Any = None


def digest(text: str) -> str:
    return hashlib.sha256(text.encode()).hexdigest()


def state_folder() -> Path:
    """Where programs keep such things: $XDG_STATE_HOME or ~/.local/state, on Windows
    %LOCALAPPDATA%."""
    usual = os.environ.get("LOCALAPPDATA") if os.name == "nt" else None
    root = os.environ.get("XDG_STATE_HOME") or usual or Path.home() / ".local" / "state"
    return Path(root) / "crossfall" / "bench"


def journal_path(spec: Path, folder: Path | None = None) -> Path:
    """The journal of a truck file, named by the file's full path."""
    key = digest(str(spec.resolve()))[:16]
    return (folder or state_folder()) / f"{spec.stem}-{key}.json"


def lock(path: Path) -> IO[str] | None:
    """Hold the journal for this process; None where another bench holds it. Close to let go."""
    path.parent.mkdir(parents=True, exist_ok=True)
    stream = open(path.with_suffix(".lock"), "w", encoding="utf-8")  # noqa: SIM115 - kept open
    if not locks.lock(stream.fileno()):
        stream.close()
        return None
    return stream


def write(path: Path, entry: Entry) -> None:
    """Put the journal down in one step."""
    h = entry.history
    sides = {name: [vars(s) for s in getattr(h, name)] for name in ("back", "ahead")}
    history = {"text": h.text, "revision": h.revision, **sides}
    content = {"format": FORMAT, "base": entry.base, "history": history, "memo": entry.memo}
    write_atomically(path, json.dumps(content, separators=(",", ":")))


def read(path: Path) -> Entry | None:
    """The journal, or None where there is none or it is not one of ours."""
    try:
        content = json.loads(path.read_text("utf-8"))
        if content["format"] != FORMAT:
            return None
        h = content["history"]
        back, ahead = (
            tuple(Step(s["first"], tuple(s["was"]), tuple(s["now"]), s["what"]) for s in h[side])
            for side in ("back", "ahead")
        )
        history = History(str(h["text"]), int(h["revision"]), back, ahead)
        return Entry(str(content["base"]), history, content.get("memo"))
    except (OSError, ValueError, KeyError, TypeError):
        return None
