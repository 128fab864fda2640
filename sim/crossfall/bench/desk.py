"""The truck file on the desk: its working text, what is saved, and who may write over whom."""

from __future__ import annotations

import threading
from collections.abc import Callable
from dataclasses import dataclass, replace
from pathlib import Path
from typing import IO, Any

from crossfall.bench import journal
from crossfall.bench.steps import History, changed, redone, undone
from crossfall.truck.files import write_atomically
from crossfall.truck.problems import InputError, Problem


class Conflict(Exception):
    """Someone else changed the text, or the file, since the asker last looked.

    where: "tab" when the working text moved on, "disk" when the file itself did.
    """

    def __init__(self, where: str, sentence: str) -> None:
        self.where = where
        super().__init__(sentence)


@dataclass(frozen=True)
class Sheet:
    """What lies on the desk at one moment.

    path: the file it will be saved to, or None for a demo truck, which needs a name first.
    base: digest of the file as it was when last read or written. recovered: unsaved work of an
    earlier run was found and is shown.
    """

    source: Path
    path: Path | None
    base: str
    saved_text: str
    history: History
    recovered: bool = False

    @property
    def unsaved(self) -> bool:
        return self.history.text != self.saved_text


class Desk:
    """One truck file being worked on; every method may be called from any thread.

    check(text, path) must raise InputError where the text is no truck, and is asked before any
    edit is accepted. keeper: where journals are kept, by default the user's state folder. memo:
    what else to remember of a text, in JSON's own types; `recalled` is what an earlier run left.
    """

    def __init__(
        self,
        source: Path,
        check: Callable[[str, Path], object],
        *,
        writable: bool = True,
        keeper: Path | None = None,
        memo: Callable[[str], Any] = lambda text: None,
    ) -> None:
        self._check, self._keeper, self._memo = check, keeper, memo
        self.recalled: Any = None
        self._mutex = threading.RLock()
        self._held: IO[str] | None = None
        self._open(source, writable)

    def _open(self, source: Path, writable: bool) -> None:
        text = source.read_bytes().decode("utf-8-sig")
        self._journal = journal.journal_path(source, self._keeper)
        held = journal.lock(self._journal)
        if held is None:
            raise InputError(Problem(str(source), "is open in another bench", "close that first"))
        self.close()
        self._held = held
        base = journal.digest(text)
        history, recovered = History(text), False
        entry = journal.read(self._journal)
        if entry is not None and entry.history.text != text:
            history, recovered, base = entry.history, True, entry.base
            self.recalled = entry.memo
        path = source if writable else None
        self._sheet = Sheet(source, path, base, text, history, recovered)

    def close(self) -> None:
        """Let go of the file, so that another bench may open it."""
        if self._held is not None:
            self._held.close()
            self._held = None

    @property
    def sheet(self) -> Sheet:
        with self._mutex:
            return self._sheet

    def edit(self, revision: int, change: Callable[[str], str], what: str) -> Sheet:
        """Put a change down. Raises Conflict where the asker's revision is old, InputError."""
        with self._mutex:
            self._agree(revision)
            sheet = self._sheet
            text = change(sheet.history.text)
            self._check(text, sheet.source)
            return self._put(replace(sheet, history=changed(sheet.history, text, what)))

    def undo(self, revision: int) -> Sheet:
        with self._mutex:
            self._agree(revision)
            return self._put(replace(self._sheet, history=undone(self._sheet.history)))

    def redo(self, revision: int) -> Sheet:
        with self._mutex:
            self._agree(revision)
            return self._put(replace(self._sheet, history=redone(self._sheet.history)))

    def save(self, revision: int, path: Path | None = None, over: bool = False) -> Sheet:
        """Write the working text to its file, or to `path` as a new one.

        Raises Conflict where the file on disk is no longer the one the work began from, or a
        new name is taken; `over` says to write all the same.
        """
        with self._mutex:
            self._agree(revision)
            sheet = self._sheet
            target = path or sheet.path
            if target is None:
                raise InputError(
                    Problem(sheet.source.name, "is a demo truck", "save as a new name")
                )
            if not over:
                self._clear_to_write(target, new=target != sheet.path)
            text = sheet.history.text
            if target != sheet.source:
                return self._move_to(target)
            write_atomically(target, text)
            base = journal.digest(text)
            return self._put(
                replace(sheet, path=target, base=base, saved_text=text, recovered=False)
            )

    def discard(self, revision: int) -> Sheet:
        """Back to the file as it is on disk. Undo brings the discarded work back."""
        with self._mutex:
            self._agree(revision)
            text = self._sheet.source.read_bytes().decode("utf-8-sig")
            self._check(text, self._sheet.source)
            history = changed(self._sheet.history, text, "back to the file on disk")
            base = journal.digest(text)
            return self._put(
                Sheet(self._sheet.source, self._sheet.path, base, text, history, False)
            )

    def _move_to(self, target: Path) -> Sheet:
        """Write the new file and carry on in it, history kept; the old one's journal is done."""
        history = self._sheet.history
        path = journal.journal_path(target, self._keeper)
        held = journal.lock(path)
        if held is None:
            raise InputError(Problem(target.name, "is open in another bench", "close that first"))
        text = history.text
        write_atomically(target, text)
        self._journal.unlink(missing_ok=True)
        self.close()
        self._held, self._journal = held, path
        return self._put(Sheet(target, target, journal.digest(text), text, history))

    def _agree(self, revision: int) -> None:
        now = self._sheet.history.revision
        if revision != now:
            raise Conflict("tab", "this truck was changed in another tab meanwhile")

    def _clear_to_write(self, target: Path, new: bool) -> None:
        if new and target.exists():
            raise Conflict("disk", f"there is a {target.name} already")
        if not new:
            try:
                on_disk = target.read_bytes().decode("utf-8-sig")
            except FileNotFoundError:
                return
            if journal.digest(on_disk) != self._sheet.base:
                raise Conflict("disk", f"{target.name} was changed by another program meanwhile")

    def _put(self, sheet: Sheet) -> Sheet:
        if sheet.unsaved:
            journal.write(
                self._journal,
                journal.Entry(sheet.base, sheet.history, self._memo(sheet.history.text)),
            )
        else:
            self._journal.unlink(missing_ok=True)
        self._sheet = sheet
        return sheet
