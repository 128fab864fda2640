"""Changes at the bench: the list beside the truck, what each buys, fitting and planning them."""

from __future__ import annotations

from threading import Lock
from typing import TYPE_CHECKING, Any

from crossfall.app import change_list, decisions, fitted_changes
from crossfall.app.document import At, Sheet
from crossfall.app.journal import text_digest
from crossfall.app.truck_cache import Memory
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError, Problem
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes
from crossfall.tuning.whatif import Ranking

if TYPE_CHECKING:
    from crossfall.app.session import Bench


class Changes:
    """The change file beside the truck on the desk, and what is chosen from it."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._catalogues: Memory[Catalogue] = Memory(2)
        self._rankings: Memory[Ranking] = Memory(8)
        self._listing = Lock()

    def _catalogue(self, loaded: Loaded) -> Catalogue | None:
        path = change_file_of(loaded.path)
        stamp = path.stat().st_mtime_ns if path.is_file() else None
        if stamp is None:
            return None
        return self._catalogues.find((path, stamp), lambda: read_changes(path))

    def changes(self, at: At) -> dict[str, Any]:
        """The change file beside the truck's own, or the reason why there is none."""
        loaded, _ = self._bench.at(at)
        catalogue = self._catalogue(loaded)
        if catalogue is None:
            return {
                "file": change_file_of(loaded.path).name,
                "currency": "",
                "changes": [],
                "limits": [],
                "stamp": "",
            }
        path = change_file_of(loaded.path)
        return {
            **fitted_changes.listed_changes(catalogue, loaded.spec.currency, path),
            "limits": list(decisions.limits_files(loaded)),
            "stamp": change_list.stamp(path),
        }

    def edit_changes(self, at: At, seen: str, asked: dict[str, Any]) -> dict[str, Any]:
        """Do one thing to the list of changes beside the truck, and write it. `was`: its text
        before, which "text" puts back."""
        with self._listing:
            loaded, sheet = self._bench.at(at)
            fitted = sheet.history.fitted
            base = loaded if fitted is None else self._bench.reader.load(fitted.base, sheet.source)
            was = change_list.edit_list(sheet, base, seen, asked)
        return {**self.changes(at), "was": was}

    def keep_edits(self, at: At, seen: str, asked: dict[str, Any]) -> dict[str, Any]:
        """What was edited by hand since the reference, as a change of the list, and on the truck
        as such from now on."""
        with self._listing:
            sheet = self._bench.desk.agree(at)
            made = change_list.kept(
                sheet,
                self._bench.compared(sheet),
                lambda text: self._bench.reader.load(text, sheet.source),
                seen,
                asked,
            )
            self._bench.desk.fit(at, lambda _: made, f"kept as the change {asked.get('name')}")
        return self._bench.state()

    def choice_of(self, at: At) -> tuple[Sheet, Catalogue, str, Loaded]:
        """The sheet, the change file, and the text and truck that a choice is made on."""
        loaded, sheet = self._bench.at(at)
        catalogue = self._catalogue(loaded)
        if catalogue is None:
            raise InputError(Problem("changes", "there is no change file beside this truck"))
        fitted = sheet.history.fitted
        base = sheet.history.text if fitted is None else fitted.base
        return sheet, catalogue, base, self._bench.reader.load(base, sheet.source)

    def bought(self, at: At) -> dict[str, Any]:
        """What each change buys on the truck the choice began from; about a second's work."""
        from crossfall.tuning.whatif import rank_changes

        with self._bench.heavy:
            _, catalogue, base, began = self.choice_of(at)
            surface = self._bench.known_surface(began.truck)
            key = (base, text_digest(repr(catalogue.changes)), surface)
            work = lambda: rank_changes(began, catalogue, surface=surface)  # noqa: E731
            return fitted_changes.bought(catalogue, self._rankings.find(key, work))

    def fit(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """Fit a choice of changes, in place of any choice fitted before."""
        sheet, catalogue, _, _ = self.choice_of(at)
        chosen = fitted_changes.choice(catalogue, asked)
        names = ", ".join(catalogue.changes[i].name for i in chosen) or "no changes"

        def load(text: str) -> Loaded:
            return self._bench.reader.load(text, sheet.source)

        self._bench.desk.fit(
            at,
            lambda h: fitted_changes.refitted(h.text, h.fitted, catalogue, chosen, load),
            f"fitted {names}",
        )
        return self._bench.state()

    def planned(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """The best set of changes for the truck the choice began from; a few seconds."""
        with self._bench.heavy:
            _, catalogue, _, began = self.choice_of(at)
            surface = self._bench.known_surface(began.truck)
            return decisions.planned(began, catalogue, asked, surface)
