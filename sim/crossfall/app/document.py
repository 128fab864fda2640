"""The truck file on the desk: its working text, what is saved, and who may write over whom."""

from __future__ import annotations

import secrets
import threading
from collections.abc import Callable
from contextlib import AbstractContextManager, nullcontext
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import IO

from crossfall.app import journal
from crossfall.app.history import Fitted, History, changed, gone, named_history, redone, undone
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically

MAX_WORDS = 120  # in what an edit is called


class Conflict(Exception):
    """Someone else changed the text, or the file, since the asker last looked.

    where: "tab" when the working text moved on, "document" when another truck is on the desk,
    "disk" when the file itself changed.
    """

    def __init__(self, where: str, sentence: str) -> None:
        self.where = where
        super().__init__(sentence)


@dataclass(frozen=True)
class At:
    """What an asker has in view: a document and one of its revisions."""

    document: str
    revision: int


@dataclass(frozen=True)
class Sheet:
    """What lies on the desk at one moment.

    path: the file it will be saved to, or None for a demo truck, which needs a name first.
    base: digest of the file as it was when last read or written. recovered: unsaved work of an
    earlier run was found and is shown. saved_fitted: the changes fitted to the saved text.
    document: a name of its own for this file being worked on, never given twice.
    """

    source: Path
    path: Path | None
    base: str
    saved_text: str
    history: History
    recovered: bool = False
    saved_fitted: Fitted | None = None
    document: str = field(default_factory=lambda: secrets.token_hex(8))

    @property
    def unsaved(self) -> bool:
        return self.history.text != self.saved_text

    @property
    def at(self) -> At:
        return At(self.document, self.history.revision)


class Desk:
    """One truck file being worked on; every method may be called from any thread.

    check(text, path) must raise InputError where the text is no truck, and is asked before any
    edit is accepted. keeper: where journals are kept, by default the user's state folder.
    """

    def __init__(
        self,
        source: Path,
        check: Callable[[str, Path], object],
        *,
        writable: bool = True,
        keeper: Path | None = None,
    ) -> None:
        self._check, self._keeper = check, keeper
        self._mutex = threading.RLock()
        self._held: IO[str] | None = None
        self._open(source, writable)

    def _open(self, source: Path, writable: bool) -> None:
        text = _read(source)
        self._journal = journal.journal_path(source, self._keeper)
        held = journal.lock_journal(self._journal)
        if held is None:
            raise InputError(Problem(str(source), "is open in another bench", "close that first"))
        self.close()
        self._held = held
        path = source if writable else None
        sheet = Sheet(source, path, journal.text_digest(text), text, History(text))
        entry = journal.read(self._journal)
        if entry is not None and (entry.unsaved or entry.history.text == text):
            fitted = entry.history.fitted if entry.history.text == text else entry.saved_fitted
            sheet = replace(sheet, history=entry.history, saved_fitted=fitted)
            sheet = replace(sheet, document=entry.document or sheet.document)
            if sheet.unsaved:
                sheet = replace(sheet, base=entry.base, recovered=True)
        self._sheet = sheet

    def close(self) -> None:
        """Let go of the file, so that another bench may open it."""
        with self._mutex:
            if self._held is not None:
                self._held.close()
                self._held = None

    @property
    def sheet(self) -> Sheet:
        with self._mutex:
            return self._sheet

    def agree(self, at: At) -> Sheet:
        """The sheet, if it is what the asker has in view. Raises Conflict."""
        with self._mutex:
            sheet = self._sheet
            if at.document != sheet.document or self._held is None:
                sentence = f"{sheet.source.name} was put on the bench meanwhile"
                raise Conflict("document", f"{sentence}, or the bench was started anew")
            if at.revision != sheet.history.revision:
                raise Conflict("tab", "this truck was changed in another tab or on disk meanwhile")
            return sheet

    def edit(self, at: At, change: Callable[[str], str], what: str) -> Sheet:
        """Put a change down. Raises Conflict where the asker saw another state, InputError."""
        return self.fit(at, lambda history: (change(history.text), history.fitted), what)

    def fit(
        self, at: At, change: Callable[[History], tuple[str, Fitted | None]], what: str
    ) -> Sheet:
        """`edit` by a change that also says what is fitted afterwards."""
        with self._mutex:
            sheet = self.agree(at)
            text, fitted = change(sheet.history)
            self._check(text, sheet.source)
            history = changed(sheet.history, text, what[:MAX_WORDS], fitted)
            return self._put(replace(sheet, history=history))

    def undo(self, at: At) -> Sheet:
        with self._mutex:
            sheet = self.agree(at)
            return self._put(replace(sheet, history=undone(sheet.history)))

    def redo(self, at: At) -> Sheet:
        with self._mutex:
            sheet = self.agree(at)
            return self._put(replace(sheet, history=redone(sheet.history)))

    def go(self, at: At, to: int) -> Sheet:
        """To where `to` steps lie behind. Raises Conflict, InputError."""
        return self._walk(at, to, lambda history: gone(history, to))

    def name(self, at: At, step: int, name: str) -> Sheet:
        """Put a name on the state after a step, counted from 1. Raises Conflict, InputError."""
        return self._walk(at, step, lambda history: named_history(history, step, name))

    def _walk(self, at: At, step: int, move: Callable[[History], History]) -> Sheet:
        with self._mutex:
            sheet = self.agree(at)
            try:
                return self._put(replace(sheet, history=move(sheet.history)))
            except IndexError:
                raise InputError(Problem("history", f"has no step {step}")) from None

    def save(
        self,
        at: At,
        path: Path | None = None,
        over: bool = False,
        beside: Callable[[], AbstractContextManager[None]] = nullcontext,
    ) -> Sheet:
        """Write the working text to its file, or to `path` as a new one.

        beside: puts what the text names beside a new file, and takes it away again on an error.
        Raises Conflict where the file on disk is no longer the one the work began from, or a
        new name is taken; `over` says to write all the same. Raises InputError, and writes nothing,
        where the text would be no truck as the new file.
        """
        with self._mutex:
            sheet = self.agree(at)
            target = path or sheet.path
            if target is None:
                raise InputError(
                    Problem(sheet.source.name, "is a demo truck", "save as a new name")
                )
            if not over:
                self._clear_to_write(target, new=target != sheet.path)
            if target != sheet.source:
                return self._move_to(target, beside)
            write_atomically(target, sheet.history.text)
            return self._put(_saved(sheet, target))

    def discard(self, at: At) -> Sheet:
        """Back to the file as it is on disk. Undo brings the discarded work back."""
        with self._mutex:
            self.agree(at)
            return self._take(_read(self._sheet.source), "back to the file on disk")

    def follow(self) -> str:
        """Look at the file on disk; where nothing is unsaved here, take what changed there.

        "" where it is as it was, or was taken; else a sentence that says what is the matter.
        """
        with self._mutex:
            sheet = self._sheet
            try:
                text = _read(sheet.source)
            except FileNotFoundError:
                return f"{sheet.source.name} is gone from disk; save to write it again"
            except (OSError, UnicodeDecodeError):
                return f"{sheet.source.name} cannot be read any more"
            if journal.text_digest(text) == sheet.base:
                return ""
            if sheet.unsaved:
                return f"{sheet.source.name} was changed by another program"
            try:
                self._take(text, "as another program saved it")
            except InputError as error:
                return f"{sheet.source.name} was changed on disk and is no truck: {error}"
            return ""

    def _take(self, text: str, what: str) -> Sheet:
        sheet = self._sheet
        self._check(text, sheet.source)
        fitted = sheet.saved_fitted if text == sheet.saved_text else None
        history = changed(sheet.history, text, what, fitted)
        return self._put(_saved(replace(sheet, history=history), sheet.path))

    def _move_to(self, target: Path, beside: Callable[[], AbstractContextManager[None]]) -> Sheet:
        """Write the new file and carry on in it, history kept; the old one's journal is done."""
        path = journal.journal_path(target, self._keeper)
        held = journal.lock_journal(path)
        if held is None:
            raise InputError(Problem(target.name, "is open in another bench", "close that first"))
        history = self._sheet.history
        try:
            entry = journal.read(path)
            if target.exists() and entry is not None and entry.unsaved:
                allowed = "open it, save or discard that"
                raise InputError(Problem(target.name, "has unsaved work of its own", allowed))
            with beside():
                self._check(history.text, target)
                write_atomically(target, history.text)
        except BaseException:
            held.close()
            raise
        self._journal.unlink(missing_ok=True)
        self.close()
        self._held, self._journal = held, path
        base = journal.text_digest(history.text)
        moved = Sheet(target, target, base, history.text, history, saved_fitted=history.fitted)
        return self._put(moved)

    def _clear_to_write(self, target: Path, new: bool) -> None:
        if new and target.exists():
            raise Conflict("disk", f"there is a {target.name} already")
        if not new:
            try:
                on_disk = _read(target)
            except FileNotFoundError:
                return
            if journal.text_digest(on_disk) != self._sheet.base:
                raise Conflict("disk", f"{target.name} was changed by another program meanwhile")

    def _put(self, sheet: Sheet) -> Sheet:
        # What is fitted cannot be read from the file, so that is remembered even when saved.
        if sheet.unsaved or sheet.history.fitted is not None:
            entry = journal.Entry(
                sheet.base, sheet.history, sheet.document, sheet.unsaved, sheet.saved_fitted
            )
            journal.write_journal(self._journal, entry)
        else:
            self._journal.unlink(missing_ok=True)
        self._sheet = sheet
        return sheet


def _saved(sheet: Sheet, path: Path | None) -> Sheet:
    """The sheet whose text is the one on disk."""
    history = sheet.history
    return replace(
        sheet,
        path=path,
        base=journal.text_digest(history.text),
        saved_text=history.text,
        saved_fitted=history.fitted,
        recovered=False,
    )


def _read(path: Path) -> str:
    return path.read_bytes().decode("utf-8-sig")
