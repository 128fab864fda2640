"""The bench itself, without its server: one opened folder, one truck on the desk, its answers."""

from __future__ import annotations

import tomllib
from contextlib import AbstractContextManager
from dataclasses import replace
from pathlib import Path
from threading import Lock
from typing import Any

from crossfall.answers.answer import Answers
from crossfall.answers.conditions import choose_grip
from crossfall.app import (
    answers,
    course_files,
    part_form,
    reference,
    sweep_jobs,
    sweeps,
)
from crossfall.app.answers import Gains, KnownAnswers, TipMap
from crossfall.app.bench_changes import Changes
from crossfall.app.bench_paper import Paper
from crossfall.app.bench_readings import Measurements
from crossfall.app.bench_trials import Tried
from crossfall.app.document import At, Desk, Sheet
from crossfall.app.edits import on_spec, on_text, understood
from crossfall.app.folder import inside, listing
from crossfall.app.journal import text_digest
from crossfall.app.mesh_copies import copied_meshes
from crossfall.app.reference import Reference
from crossfall.app.scene import scene
from crossfall.app.truck_cache import (
    CARRIER_NAMES,
    Memory,
    Reader,
    choices,
    measures,
    part_rows,
    truck_name,
)
from crossfall.truck import document
from crossfall.truck.build import Loaded, build
from crossfall.truck.demos import demo_folder, demo_names
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.model import Grip, Truck
from crossfall.tuning.changes import change_file_of

# Files beside a truck's own that are no trucks.
OTHERS = (
    ".changes.toml",
    ".limits.toml",
    ".weighin.toml",
    ".board.toml",
    ".readings.toml",
    course_files.COURSE,
)


class Bench:
    """Everything the page may ask; every method may be called from any thread.

    folder: the only place files are read from and written to, besides the demo trucks.
    keeper: where journals are kept, by default the user's state folder.
    """

    def __init__(self, source: Path, folder: Path, keeper: Path | None = None) -> None:
        self.folder, self.keeper = folder.resolve(), keeper
        self.reader = Reader()
        self.curves: Memory[TipMap] = Memory(32)  # by text and grip, as the next two
        self._ways: Memory[Answers] = Memory(8)
        self._gains: Memory[Gains] = Memory(8)
        self.weakest: Memory[float] = Memory(2000)  # deg, by digest of the text and grip
        self._last = KnownAnswers()
        self._surface: str | None = None
        self._pinned: Reference | None = None
        self.sweep_job = sweep_jobs.Sweeps(self.folder)
        self.tuning, self.measured = Changes(self), Measurements(self)
        self.tried, self.paper = Tried(self), Paper(self)
        # Long work is done one at a time, and not at all for a truck that has moved on meanwhile.
        self.heavy = Lock()
        self._opening = Lock()
        self.desk = self._desk(source)
        self._opened = reference.as_opened(self.desk.sheet)

    def _desk(self, source: Path) -> Desk:
        writable = source.resolve().parent == self.folder
        self.reader.load(source.read_bytes().decode("utf-8-sig"), source)
        return Desk(source, self.reader.load, writable=writable, keeper=self.keeper)

    # What the page shows

    def state(self) -> dict[str, Any]:
        """The whole of it: file, scene, parts, measures, answers."""
        sheet = self.desk.sheet
        loaded = self.loaded(sheet)
        text = sheet.history.text
        back, ahead = sheet.history.back, sheet.history.ahead
        return {
            "document": sheet.document,
            "revision": sheet.history.revision,
            "truck": truck_name(text, sheet.source),
            "file": sheet.source.name,
            "needs_name": sheet.path is None,
            "unsaved": sheet.unsaved,
            "recovered": sheet.recovered,
            "undo": back[-1].what if back else None,
            "redo": ahead[-1].what if ahead else None,
            "trucks": self.trucks(),
            "surfaces": [g.surface for g in loaded.truck.grips],
            "scene": scene(loaded.truck, loaded.spec.battery),
            **self._table(loaded, text),
            "carriers": CARRIER_NAMES,
            "fitted": {} if sheet.history.fitted is None else dict(sheet.history.fitted.chosen),
            "before": self._before(sheet),
            "reference": self.compared(sheet).key,
            "references": reference.listed_references(
                sheet, self._opened, self.compared(sheet), self.trucks()
            ),
            "answers": self._answers(loaded.truck, text),
        }

    def pulse(self) -> dict[str, Any]:
        """What every tab asks again and again: is what it has in view still what is here?"""
        disk = self.desk.follow()
        sheet = self.desk.sheet
        shown = self.grip(self.loaded(sheet).truck).surface
        return {
            "document": sheet.document,
            "revision": sheet.history.revision,
            "unsaved": sheet.unsaved,
            "surface": shown,
            "reference": self.compared(sheet).key,
            "disk": disk,
        }

    def _table(self, loaded: Loaded, text: str) -> dict[str, Any]:
        own = len(tomllib.loads(text).get("part", []))
        return {
            "rows": part_rows(loaded.truck, loaded.spec, own),
            "measures": measures(loaded.spec),
            "choices": choices(loaded.spec),
        }

    def grip(self, truck: Truck) -> Grip:
        return answers.shown_grip(truck, self._surface)

    def known_surface(self, truck: Truck) -> str | None:
        """The surface shown by name, None where the file names none."""
        return self.grip(truck).surface if truck.grips else None

    def _answers(self, truck: Truck, text: str) -> dict[str, Any]:
        """All that is known by now of the truck of this text, on the surface shown."""
        grip = self.grip(truck)
        curve, gains = self.curves.get((text, grip)), self._gains.get((text, grip))
        self._last = KnownAnswers(curve or self._last.curve, None, gains or self._last.gains)
        known = replace(self._last, ways=self._ways.get((text, grip)))
        return answers.quick(truck, grip, known, curve is not None)

    # What it is compared with

    def compared(self, sheet: Sheet) -> Reference:
        return reference.current(sheet, self._pinned)

    def _before(self, sheet: Sheet) -> dict[str, Any] | None:
        """The reference with all that is known of it; None where it is this very truck."""
        reference = self.compared(sheet)
        same = reference.text == sheet.history.text and reference.source == sheet.source
        if same and reference.key == "auto":
            return None
        try:
            truck = self.reader.load(reference.text, reference.source).truck
        except InputError:
            return None  # the file on disk is no truck any more: there is nothing to compare with
        grip = self.grip(truck)
        curve = self.curves.get((reference.text, grip))
        known = KnownAnswers(curve, self._ways.get((reference.text, grip)))
        said = answers.quick(truck, grip, known, curve is not None)
        return {"key": reference.key, "what": reference.words, "scene": scene(truck), **said}

    def reference(self, at: At) -> dict[str, Any] | None:
        """The reference, its tips worked out exactly; a second or two."""
        with self.heavy:
            sheet = self.desk.agree(at)
            reference = self.compared(sheet)
            truck = self.reader.load(reference.text, reference.source).truck
            grip = self.grip(truck)
            key = (reference.text, grip)
            curve = self.curves.find(key, lambda: answers.exact_curve(truck, grip))
            self.weakest.find(
                (text_digest(reference.text), grip), lambda: answers.least_over_headings(curve)
            )
            self._ways.find(key, lambda: answers.four_ways(truck, grip))
        return self._before(sheet)

    def pin(self, at: At, key: str) -> dict[str, Any]:
        """Choose what to compare with: auto, saved, opened, step:N or file:NAME."""
        found = reference.chosen(self.desk.agree(at), key, self._opened, self._found)
        if found is not None:
            self.reader.load(found.text, found.source)
        self._pinned = found
        return self.state()

    def history(self, at: At) -> dict[str, Any]:
        """Every step with the weakest angle after it, as far as that was worked out."""
        loaded, sheet = self.at(at)
        grip = self.grip(loaded.truck)
        return reference.strip(sheet, lambda text: self.weakest.get((text_digest(text), grip)))

    def go(self, at: At, to: int) -> dict[str, Any]:
        self.desk.go(at, to)
        return self.state()

    def name_step(self, at: At, step: int, name: str) -> dict[str, Any]:
        self.desk.name(at, step, name.strip()[:60])
        return self.history(at)

    def part_form(self, at: At) -> dict[str, Any]:
        """What to ask of a part that is to be added."""
        loaded, _ = self.at(at)
        return part_form.part_form(loaded.spec, loaded.folder)

    def sweeps(self) -> dict[str, Any]:
        return {"tables": sweeps.found(self.folder)}

    def sweep(self, name: str) -> dict[str, Any]:
        return sweeps.table(self.folder, name)

    def run_sweep(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """Begin a sweep of the truck as it is, on the surface shown."""
        loaded, sheet = self.at(at)
        data = sweep_jobs.sweep_data(asked, self.known_surface(loaded.truck))
        return self.sweep_job.start(loaded, sheet.history.text, data)

    def place(self, at: At, values: dict[str, float]) -> dict[str, Any]:
        """A point of a sweep as the truck on the table: values by dotted key, as one edit."""

        def change(text: str) -> str:
            for key, value in list(values.items())[:20]:
                whole = float(value).is_integer()
                text = document.text_with_value(text, key, int(value) if whole else float(value))
            return text

        self.desk.edit(at, change, "a point of the sweep")
        return self.state()

    def trucks(self) -> list[str]:
        """Truck files of the folder, then the demo trucks it has no file of the same name for."""
        names = [n for n in listing(self.folder) if not n.endswith(OTHERS)]
        demos = [f"{n}.toml" for n in demo_names() if not f"{n}.toml".endswith(OTHERS)]
        names += [n for n in demos if n not in names]
        current = self.desk.sheet.source.name
        return names if current in names else [current, *names]

    def exact(self, at: At) -> dict[str, Any]:
        """The answers with the compliant curve worked out for the text as it is."""
        with self.heavy:
            loaded, sheet = self.at(at)
            text = sheet.history.text
            grip = self.grip(loaded.truck)
            find = lambda: answers.exact_curve(loaded.truck, grip)  # noqa: E731
            curve = self.curves.find((text, grip), find)
            self.weakest.find((text_digest(text), grip), lambda: answers.least_over_headings(curve))
        return self._answers(loaded.truck, text)

    def ways(self, at: At) -> dict[str, Any]:
        """The answers with all there is to say on the four ways, ranges and budget with it."""
        with self.heavy:
            loaded, sheet = self.at(at)
            text = sheet.history.text
            grip = self.grip(loaded.truck)
            self._ways.find((text, grip), lambda: answers.four_ways(loaded.truck, grip))
        return self._answers(loaded.truck, text)

    def gains(self, at: At) -> dict[str, Any]:
        """The answers with what a gram is worth anywhere, springs and tyres at work."""
        with self.heavy:
            loaded, sheet = self.at(at)
            text = sheet.history.text
            grip = self.grip(loaded.truck)
            self._gains.find((text, grip), lambda: answers.exact_gains(loaded, grip))
        return self._answers(loaded.truck, text)

    def surface(self, at: At, name: str) -> dict[str, Any]:
        """Show the answers on another surface of the truck's."""
        loaded, _ = self.at(at)
        choose_grip(loaded.truck, name)
        self._surface = name
        return self.state()

    # What the page does

    def attempt(self, at: At, edits: list[dict[str, Any]], full: bool = False) -> dict[str, Any]:
        """What edits would do, without putting them down; full: the springs' answer as well."""
        loaded, sheet = self.at(at)
        folder = sheet.source.resolve().parent
        spec = on_spec(loaded.spec, understood(loaded.spec, edits, folder))
        truck, _ = build(spec, folder)
        grip, known = self.grip(truck), self._last
        if full:
            with self.heavy:
                known = replace(known, curve=answers.exact_curve(truck, grip))
        return {
            "scene": scene(truck, spec.battery),
            "rows": part_rows(truck, spec, None),
            "measures": measures(spec),
            "answers": answers.quick(truck, grip, known, full),
        }

    def edit(self, at: At, edits: list[dict[str, Any]], what: str) -> dict[str, Any]:
        """Put edits down and journal them; `what` is what undo will call them."""

        source = self.desk.agree(at).source

        def change(text: str) -> str:
            folder = source.resolve().parent
            return on_text(text, understood(self.reader.load(text, source).spec, edits, folder))

        self.desk.edit(at, change, what)
        return self.state()

    def undo(self, at: At) -> dict[str, Any]:
        self.desk.undo(at)
        return self.state()

    def redo(self, at: At) -> dict[str, Any]:
        self.desk.redo(at)
        return self.state()

    def save(self, at: At, name: str | None, over: bool) -> dict[str, Any]:
        """Write the truck to its file, or to a new one, which gets a copy of the change file and,
        in another folder, of the mesh files it names."""
        path = None if name is None else inside(self.folder, name)
        if path is not None and path.name.endswith(OTHERS):
            kind = path.name.removesuffix(".toml").rpartition(".")[2]
            raise InputError(Problem(path.name, f"is the name of a {kind} file, not of a truck"))
        sheet = self.desk.agree(at)
        before = sheet.source

        def beside() -> AbstractContextManager[None]:
            folder = (path or before).resolve().parent
            return copied_meshes(self.loaded(sheet).spec, before.resolve().parent, folder)

        after = self.desk.save(at, path, over, beside).source
        if after != before:
            mine, its = change_file_of(before), change_file_of(after)
            if mine.is_file() and not its.exists():
                write_atomically(its, mine.read_bytes())
            if self._opened.source == before:
                self._opened = replace(self._opened, source=after)
        return self.state()

    def discard(self, at: At) -> dict[str, Any]:
        self.desk.discard(at)
        return self.state()

    def open(self, name: str) -> dict[str, Any]:
        """Another truck of the folder, or a demo truck; unsaved work stays in its journal."""
        path = self._found(name)
        with self._opening:
            if path.resolve() != self.desk.sheet.source.resolve():
                fresh = self._desk(path)
                self.desk.close()
                self.desk, self._last = fresh, KnownAnswers()
                self._opened = reference.as_opened(self.desk.sheet)
        return self.state()

    def _found(self, name: str) -> Path:
        path = inside(self.folder, name)
        if not path.is_file() and path.stem in demo_names():
            path = demo_folder() / path.name
        if not path.is_file():
            raise InputError(Problem(name[:80], "is not in the opened folder"))
        return path

    def close(self) -> None:
        self.tried.close()
        self.sweep_job.close()
        self.desk.close()

    def at(self, at: At) -> tuple[Loaded, Sheet]:
        sheet = self.desk.agree(at)
        return self.loaded(sheet), sheet

    def loaded(self, sheet: Sheet) -> Loaded:
        return self.reader.load(sheet.history.text, sheet.source)
