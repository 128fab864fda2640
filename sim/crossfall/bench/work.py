"""The bench itself, without its server: one opened folder, one truck on the desk, its answers."""

from __future__ import annotations

import tomllib
from dataclasses import replace
from pathlib import Path
from threading import Lock
from typing import Any

from crossfall.answers.answer import Answers
from crossfall.answers.conditions import choose_grip
from crossfall.bench import answers, deciding, fitting, sweeps, trying
from crossfall.bench.answers import Curve, Gains, Known
from crossfall.bench.desk import Conflict, Desk, Sheet
from crossfall.bench.edits import MEASURES, on_spec, on_text, understood
from crossfall.bench.fitting import Fitted
from crossfall.bench.folder import inside, listing
from crossfall.bench.reading import CARRIERS, Memory, Reader, measure, rows
from crossfall.bench.scene import scene
from crossfall.bench.stances import stances
from crossfall.truck import document
from crossfall.truck.build import Loaded, build
from crossfall.truck.demos import demo_folder, demo_names
from crossfall.truck.model import Grip, Truck
from crossfall.truck.problems import InputError, Problem
from crossfall.tuning.board_predict import board_grip
from crossfall.tuning.changes import Catalogue, beside, read_changes
from crossfall.tuning.whatif import Ranking

MAX_WORDS = 120
# Files beside a truck's own that are no trucks.
OTHERS = (".changes.toml", ".limits.toml", ".weighin.toml", ".board.toml")


class Bench:
    """Everything the page may ask; every method may be called from any thread.

    folder: the only place files are read from and written to, besides the demo trucks.
    keeper: where journals are kept, by default the user's state folder.
    """

    def __init__(self, source: Path, folder: Path, keeper: Path | None = None) -> None:
        self.folder, self.keeper = folder.resolve(), keeper
        self.reader = Reader()
        self._curves: Memory[Curve] = Memory(32)  # by text and grip, as the next two
        self._ways: Memory[Answers] = Memory(8)
        self._gains: Memory[Gains] = Memory(8)
        self._fits: Memory[Fitted] = Memory(200)
        self._catalogues: Memory[Catalogue] = Memory(2)
        self._rankings: Memory[Ranking] = Memory(8)
        self._stances: Memory[dict[str, Any]] = Memory(150)
        self._last = Known()
        self._surface: str | None = None
        self.trials = trying.Trials()
        # Long work is done one at a time, and not at all for a truck that has moved on meanwhile.
        self._heavy = Lock()
        self.desk = self._desk(source)

    def _desk(self, source: Path) -> Desk:
        writable = source.resolve().parent == self.folder
        text = source.read_bytes().decode("utf-8-sig")
        self.reader.load(text, source)
        desk = Desk(
            source, self.reader.load, writable=writable, keeper=self.keeper, memo=self._remembered
        )
        if isinstance(desk.recalled, dict):
            fit = Fitted(desk.recalled["base"], tuple((i, n) for i, n in desk.recalled["chosen"]))
            self._fits.find(desk.sheet.history.text, lambda: fit)
        return desk

    def _remembered(self, text: str) -> dict[str, Any] | None:
        """For the journal: which changes are fitted, and on what."""
        fit = self._fits.get(text)
        return None if fit is None else {"base": fit.base, "chosen": fit.chosen}

    # What the page shows

    def state(self) -> dict[str, Any]:
        """The whole of it: file, scene, parts, measures, answers."""
        sheet = self.desk.sheet
        loaded = self._loaded(sheet)
        text = sheet.history.text
        own = len(tomllib.loads(text).get("part", []))
        back, ahead = sheet.history.back, sheet.history.ahead
        return {
            "revision": sheet.history.revision,
            "file": sheet.source.name,
            "needs_name": sheet.path is None,
            "unsaved": sheet.unsaved,
            "recovered": sheet.recovered,
            "undo": back[-1].what if back else None,
            "redo": ahead[-1].what if ahead else None,
            "trucks": self.trucks(),
            "surfaces": [g.surface for g in loaded.truck.grips],
            "scene": scene(loaded.truck),
            "rows": rows(loaded, own),
            "measures": _measures(loaded),
            "carriers": CARRIERS,
            "fitted": self._fitted_names(loaded, text),
            "before": self._before(sheet),
            "answers": self._answers(loaded.truck, text),
        }

    def _grip(self, truck: Truck) -> Grip:
        return answers.shown_grip(truck, self._surface)

    def _known_surface(self, truck: Truck) -> str | None:
        """The surface shown by name, None where the file names none."""
        return self._grip(truck).surface if truck.grips else None

    def _answers(self, truck: Truck, text: str) -> dict[str, Any]:
        """All that is known by now of the truck of this text, on the surface shown."""
        grip = self._grip(truck)
        curve, gains = self._curves.get((text, grip)), self._gains.get((text, grip))
        self._last = Known(curve or self._last.curve, None, gains or self._last.gains)
        known = replace(self._last, ways=self._ways.get((text, grip)))
        return answers.quick(truck, grip, known, curve is not None)

    def _fitted_names(self, loaded: Loaded, text: str) -> dict[str, int]:
        fit = self._fits.get(text)
        catalogue = self._catalogue(loaded) if fit is not None else None
        if fit is None or catalogue is None:
            return {}
        return {catalogue.changes[i].name: many for i, many in fit.chosen}

    def _before(self, sheet: Sheet) -> dict[str, Any] | None:
        """The truck to compare with: before its changes were fitted, else as it is saved."""
        fit = self._fits.get(sheet.history.text)
        text = fit.base if fit is not None else sheet.saved_text
        if text == sheet.history.text:
            return None
        try:
            truck = self.reader.load(text, sheet.source).truck
        except InputError:
            return None  # the file on disk is no truck any more: there is nothing to compare with
        what = "before these changes" if fit is not None else "as saved"
        grip = self._grip(truck)
        curve = self._curves.get((text, grip))
        return {"what": what, **answers.quick(truck, grip, Known(curve), curve is not None)}

    def _catalogue(self, loaded: Loaded) -> Catalogue | None:
        path = beside(loaded.path)
        stamp = path.stat().st_mtime_ns if path.is_file() else None
        if stamp is None:
            return None
        return self._catalogues.find((path, stamp), lambda: read_changes(path))

    def changes(self) -> dict[str, Any]:
        """The change file beside the truck's own, or the reason why there is none."""
        loaded = self._loaded(self.desk.sheet)
        catalogue = self._catalogue(loaded)
        if catalogue is None:
            return {"file": beside(loaded.path).name, "currency": "", "changes": [], "limits": []}
        found = fitting.listed(catalogue, loaded.spec.currency, beside(loaded.path))
        return {**found, "limits": list(deciding.limits_files(loaded))}

    def bought(self, revision: int) -> dict[str, Any]:
        """What each change buys on the truck the choice began from; about a second's work."""
        from crossfall.tuning.whatif import what_if

        with self._heavy:
            loaded, text = self._at(revision)
            catalogue = self._catalogue(loaded)
            if catalogue is None:
                raise InputError(Problem("changes", "there is no change file"))
            fit = self._fits.get(text)
            base = text if fit is None else fit.base
            truck = self.reader.load(base, self.desk.sheet.source)
            surface = self._known_surface(truck.truck)
            key = (base, catalogue.source.file, surface)
            work = lambda: what_if(truck, catalogue, surface=surface)  # noqa: E731
            ranking = self._rankings.find(key, work)
            return fitting.bought(catalogue, ranking)

    def fit(self, revision: int, asked: dict[str, Any]) -> dict[str, Any]:
        """Fit a choice of changes, in place of any choice fitted before."""
        loaded, text = self._at(revision)
        catalogue = self._catalogue(loaded)
        if catalogue is None:
            raise InputError(Problem("changes", "there is no change file"))
        chosen = fitting.choice(catalogue, asked)
        fit = self._fits.get(text)
        base = text if fit is None else fit.base
        began = self.reader.load(base, self.desk.sheet.source)
        after = fitting.fitted_text(base, began, catalogue, chosen) if chosen else base
        names = ", ".join(catalogue.changes[i].name for i in chosen) or "no changes"
        if chosen:  # known before the edit, so that the journal has it
            self._fits.find(after, lambda: Fitted(base, tuple(chosen.items())))
        self.desk.edit(revision, lambda _: after, f"fitted {names}"[:MAX_WORDS])
        return self.state()

    def planned(self, revision: int, asked: dict[str, Any]) -> dict[str, Any]:
        """The best set of changes for the truck the choice began from; a few seconds."""
        with self._heavy:
            loaded, text = self._at(revision)
            catalogue = self._catalogue(loaded)
            if catalogue is None:
                raise InputError(Problem("plan", "there is no change file beside this truck"))
            fit = self._fits.get(text)
            base = text if fit is None else fit.base
            began = self.reader.load(base, loaded.path)
            surface = self._known_surface(began.truck)
            return deciding.planned(began, catalogue, asked, surface)

    def weighed(self, text: str, keep: bool) -> dict[str, Any]:
        """Mass and CG out of scale readings; keep: also write them beside the truck."""
        sheet = self.desk.sheet
        path = self.folder / f"{sheet.source.stem}.weighin.toml"
        found = deciding.weighed(text[:200_000], self._loaded(sheet).truck, path)
        if keep:
            deciding.keep_readings(text, path)
        return {**found, "file": path.name}

    def readings(self) -> dict[str, Any]:
        """The readings file beside the truck, if there is one."""
        path = self.folder / f"{self.desk.sheet.source.stem}.weighin.toml"
        return {"file": path.name, "text": path.read_text("utf-8") if path.is_file() else ""}

    def board(self, asked: dict[str, Any] | None = None) -> dict[str, Any]:
        """The tilt-board card; with `asked` a reading is put into the board file first."""
        sheet = self.desk.sheet
        truck = self._loaded(sheet).truck
        path = self.folder / f"{sheet.source.stem}.board.toml"
        if asked is not None:
            deciding.note_reading(truck, path, asked)
        grip = board_grip(truck)
        return deciding.board_card(truck, path, grip)

    def sheet(self) -> bytes:
        """The set-up sheet as PDF, against the truck before its changes or as saved."""
        from crossfall.show.sheet import pdf
        from crossfall.show.sheet_facts import gather

        sheet = self.desk.sheet
        text = sheet.history.text
        fit = self._fits.get(text)
        base = fit.base if fit is not None else sheet.saved_text
        before = None if base == text else self.reader.load(base, sheet.source)
        return pdf(gather(self._loaded(sheet), before))

    def sweeps(self) -> dict[str, Any]:
        return {"tables": sweeps.found(self.folder)}

    def sweep(self, name: str) -> dict[str, Any]:
        return sweeps.table(self.folder, name)

    def place(self, revision: int, values: dict[str, Any]) -> dict[str, Any]:
        """A point of a sweep as the truck on the table: values by dotted key, as one edit."""

        def change(text: str) -> str:
            for key, value in list(values.items())[:20]:
                if type(value) is not float and type(value) is not int:
                    raise InputError(Problem("sweep", f"{key[:60]} is no number"))
                whole = float(value).is_integer()
                text = document.set_value(text, key, int(value) if whole else float(value))
            return text

        self.desk.edit(revision, change, "a point of the sweep")
        return self.state()

    def trucks(self) -> list[str]:
        """Truck files of the folder, then the demo trucks it has no file of the same name for."""
        names = [n for n in listing(self.folder) if not n.endswith(OTHERS)]
        demos = [f"{n}.toml" for n in demo_names() if not f"{n}.toml".endswith(OTHERS)]
        names += [n for n in demos if n not in names]
        current = self.desk.sheet.source.name
        return names if current in names else [current, *names]

    def exact(self, revision: int) -> dict[str, Any]:
        """The answers with the compliant curve worked out for the text as it is."""
        with self._heavy:
            loaded, text = self._at(revision)
            grip = self._grip(loaded.truck)
            self._curves.find((text, grip), lambda: answers.exact_curve(loaded.truck, grip))
        return self._answers(loaded.truck, text)

    def ways(self, revision: int) -> dict[str, Any]:
        """The answers with all there is to say on the four ways, ranges and budget with it."""
        with self._heavy:
            loaded, text = self._at(revision)
            grip = self._grip(loaded.truck)
            self._ways.find((text, grip), lambda: answers.four_ways(loaded.truck, grip))
        return self._answers(loaded.truck, text)

    def gains(self, revision: int) -> dict[str, Any]:
        """The answers with what a gram is worth anywhere, springs and tyres at work."""
        with self._heavy:
            loaded, text = self._at(revision)
            grip = self._grip(loaded.truck)
            self._gains.find((text, grip), lambda: answers.exact_gains(loaded, grip))
        return self._answers(loaded.truck, text)

    def surface(self, name: str) -> dict[str, Any]:
        """Show the answers on another surface of the truck's."""
        choose_grip(self._loaded(self.desk.sheet).truck, name)
        self._surface = name
        return self.state()

    def path(self, heading_deg: float) -> dict[str, Any]:
        """How it stands on one heading (the nearest 5 deg), from level to the tip."""
        sheet = self.desk.sheet
        text, heading = sheet.history.text, round(heading_deg / 5) * 5 % 360
        truck = self._loaded(sheet).truck
        grip = self._grip(truck)
        known = self._curves.get((text, grip))
        key = (text, grip, heading)
        return self._stances.find(key, lambda: stances(truck, grip, float(heading), known))

    def trial_state(self) -> dict[str, Any]:
        return {**self.trials.state(), "records": trying.records(self.folder)}

    def poses(self, file: str) -> bytes:
        """A finished trial, or a record kept in the folder, as a file of poses."""
        if file.endswith(".npz"):
            return trying.record_poses(self.folder, file, self._loaded(self.desk.sheet).truck)
        return self.trials.poses(file)

    # What the page does

    def trial(self, revision: int, headings: list[Any], rail: bool) -> dict[str, Any]:
        """Begin virtual trials at some headings (deg) on the surface shown."""
        loaded, text = self._at(revision)
        if not all(isinstance(h, int | float) and abs(h) <= 360 for h in headings):
            raise InputError(Problem("trial", "a heading is no angle", "degrees"))
        grip = self._grip(loaded.truck)
        known = self._curves.get((text, grip))
        asked = {
            "headings": [float(h) % 360 for h in headings],
            "near": [answers.expected(known, float(h)) for h in headings],
            "grip": grip.likely,
            "rail": rail,
        }
        return self.trials.start(text, self.desk.sheet.source, revision, grip.surface, asked)

    def attempt(self, revision: int, edits: list[Any], full: bool = False) -> dict[str, Any]:
        """What edits would do, without putting them down; full: the springs' answer as well."""
        sheet = self.desk.sheet
        if revision != sheet.history.revision:
            raise Conflict("tab", "this truck was changed in another tab meanwhile")
        spec = self._loaded(sheet).spec
        truck, _ = build(on_spec(spec, understood(spec, edits)), sheet.source.resolve().parent)
        grip, known = self._grip(truck), self._last
        if full:
            with self._heavy:
                known = replace(known, curve=answers.exact_curve(truck, grip))
        return {"scene": scene(truck), "answers": answers.quick(truck, grip, known, full)}

    def edit(self, revision: int, edits: list[Any], what: str) -> dict[str, Any]:
        """Put edits down and journal them; `what` is what undo will call them."""

        def change(text: str) -> str:
            spec = self.reader.load(text, self.desk.sheet.source).spec
            return on_text(text, understood(spec, edits))

        self.desk.edit(revision, change, what[:MAX_WORDS])
        return self.state()

    def undo(self, revision: int) -> dict[str, Any]:
        self.desk.undo(revision)
        return self.state()

    def redo(self, revision: int) -> dict[str, Any]:
        self.desk.redo(revision)
        return self.state()

    def save(self, revision: int, name: str | None, over: bool) -> dict[str, Any]:
        path = None if name is None else inside(self.folder, name)
        self.desk.save(revision, path, over)
        return self.state()

    def discard(self, revision: int) -> dict[str, Any]:
        self.desk.discard(revision)
        return self.state()

    def open(self, name: str) -> dict[str, Any]:
        """Another truck of the folder, or a demo truck; unsaved work stays in its journal."""
        path = inside(self.folder, name)
        if not path.is_file() and path.stem in demo_names():
            path = demo_folder() / path.name
        if not path.is_file():
            raise InputError(Problem(name[:80], "is not in the opened folder"))
        if path.resolve() != self.desk.sheet.source.resolve():
            fresh = self._desk(path)
            self.desk.close()
            self.desk, self._last = fresh, Known()
        return self.state()

    def close(self) -> None:
        self.trials.close()
        self.desk.close()

    def _at(self, revision: int) -> tuple[Loaded, str]:
        sheet = self.desk.sheet
        if revision != sheet.history.revision:
            raise Conflict("tab", "the truck has changed meanwhile")
        return self._loaded(sheet), sheet.history.text

    def _loaded(self, sheet: Sheet) -> Loaded:
        return self.reader.load(sheet.history.text, sheet.source)


def _measures(loaded: Loaded) -> list[dict[str, Any]]:
    """Those that the file has; a spring may stand along its shock instead."""
    found = []
    for key, (name, unit, low, high, step) in MEASURES.items():
        if (value := measure(loaded.spec, key)) is not None:
            limits = {"low": low, "high": high, "step": step}
            found.append({"key": key, "name": name, "unit": unit, "value": value, **limits})
    return found
