"""The bench itself, without its server: one opened folder, one truck on the desk, its answers."""

from __future__ import annotations

import base64
import datetime
import tomllib
from dataclasses import replace
from functools import partial
from pathlib import Path
from threading import Lock
from typing import TYPE_CHECKING, Any

from crossfall.answers.answer import Answers
from crossfall.answers.conditions import choose_grip
from crossfall.app import (
    answers,
    change_list,
    course,
    course_jobs,
    decisions,
    fitted_changes,
    part_form,
    reference,
    scale_form,
    share,
    suspension,
    sweep_jobs,
    sweeps,
    trial_jobs,
    wizard,
)
from crossfall.app.answers import Gains, KnownAnswers, TipMap
from crossfall.app.document import At, Desk, Sheet
from crossfall.app.edits import on_spec, on_text, understood
from crossfall.app.folder import inside, listing
from crossfall.app.journal import text_digest
from crossfall.app.reference import Reference
from crossfall.app.scene import scene
from crossfall.app.stances import stances
from crossfall.app.truck_cache import (
    CARRIER_NAMES,
    Memory,
    Reader,
    choices,
    measures,
    part_rows,
    truck_name,
)
from crossfall.measurement.begin_files import is_sealed, readings_of
from crossfall.measurement.board_predict import board_grip
from crossfall.show.guide import figure_of
from crossfall.truck import document
from crossfall.truck.build import Loaded, build
from crossfall.truck.demos import demo_folder, demo_names
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.model import Grip, Truck
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes
from crossfall.tuning.whatif import Ranking

if TYPE_CHECKING:
    from crossfall.show.sheet.still import Still

MAX_WORDS = 120
# Files beside a truck's own that are no trucks.
OTHERS = (".changes.toml", ".limits.toml", ".weighin.toml", ".board.toml", ".readings.toml")


class Bench:
    """Everything the page may ask; every method may be called from any thread.

    folder: the only place files are read from and written to, besides the demo trucks.
    keeper: where journals are kept, by default the user's state folder.
    """

    def __init__(self, source: Path, folder: Path, keeper: Path | None = None) -> None:
        self.folder, self.keeper = folder.resolve(), keeper
        self.reader = Reader()
        self._curves: Memory[TipMap] = Memory(32)  # by text and grip, as the next two
        self._ways: Memory[Answers] = Memory(8)
        self._gains: Memory[Gains] = Memory(8)
        self._weakest: Memory[float] = Memory(2000)  # deg, by digest of the text and grip
        self._catalogues: Memory[Catalogue] = Memory(2)
        self._rankings: Memory[Ranking] = Memory(8)
        self._moves: Memory[dict[str, Any]] = Memory(8)
        self._stances: Memory[dict[str, Any]] = Memory(150)
        self._last = KnownAnswers()
        self._surface: str | None = None
        self._pinned: Reference | None = None
        self.trials = trial_jobs.Trials()
        self.sweep_job = sweep_jobs.Sweeps(self.folder)
        self.courses = course_jobs.Courses()
        self._still: dict[str, Still] = {}  # by truck; the last one kept
        # Long work is done one at a time, and not at all for a truck that has moved on meanwhile.
        self._heavy = Lock()
        self._opening = Lock()
        self._listing = Lock()
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
        loaded = self._loaded(sheet)
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
            "reference": self._reference(sheet).key,
            "references": reference.listed_references(
                sheet, self._opened, self._reference(sheet), self.trucks()
            ),
            "answers": self._answers(loaded.truck, text),
        }

    def pulse(self) -> dict[str, Any]:
        """What every tab asks again and again: is what it has in view still what is here?"""
        disk = self.desk.follow()
        sheet = self.desk.sheet
        shown = self._grip(self._loaded(sheet).truck).surface
        return {
            "document": sheet.document,
            "revision": sheet.history.revision,
            "unsaved": sheet.unsaved,
            "surface": shown,
            "reference": self._reference(sheet).key,
            "disk": disk,
        }

    def _table(self, loaded: Loaded, text: str) -> dict[str, Any]:
        own = len(tomllib.loads(text).get("part", []))
        return {
            "rows": part_rows(loaded.truck, loaded.spec, own),
            "measures": measures(loaded.spec),
            "choices": choices(loaded.spec),
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
        self._last = KnownAnswers(curve or self._last.curve, None, gains or self._last.gains)
        known = replace(self._last, ways=self._ways.get((text, grip)))
        return answers.quick(truck, grip, known, curve is not None)

    # What it is compared with

    def _reference(self, sheet: Sheet) -> Reference:
        return reference.current(sheet, self._pinned)

    def _before(self, sheet: Sheet) -> dict[str, Any] | None:
        """The reference with all that is known of it; None where it is this very truck."""
        reference = self._reference(sheet)
        same = reference.text == sheet.history.text and reference.source == sheet.source
        if same and reference.key == "auto":
            return None
        try:
            truck = self.reader.load(reference.text, reference.source).truck
        except InputError:
            return None  # the file on disk is no truck any more: there is nothing to compare with
        grip = self._grip(truck)
        curve = self._curves.get((reference.text, grip))
        known = KnownAnswers(curve, self._ways.get((reference.text, grip)))
        said = answers.quick(truck, grip, known, curve is not None)
        return {"key": reference.key, "what": reference.words, "scene": scene(truck), **said}

    def reference(self, at: At) -> dict[str, Any] | None:
        """The reference, its tips worked out exactly; a second or two."""
        with self._heavy:
            sheet = self.desk.agree(at)
            reference = self._reference(sheet)
            truck = self.reader.load(reference.text, reference.source).truck
            grip = self._grip(truck)
            key = (reference.text, grip)
            curve = self._curves.find(key, lambda: answers.exact_curve(truck, grip))
            self._weakest.find(
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
        loaded, sheet = self._at(at)
        grip = self._grip(loaded.truck)
        return reference.strip(sheet, lambda text: self._weakest.get((text_digest(text), grip)))

    def go(self, at: At, to: int) -> dict[str, Any]:
        self.desk.go(at, to)
        return self.state()

    def name_step(self, at: At, step: int, name: str) -> dict[str, Any]:
        self.desk.name(at, step, name.strip()[:60])
        return self.history(at)

    def part_form(self, at: At) -> dict[str, Any]:
        """What to ask of a part that is to be added."""
        loaded, _ = self._at(at)
        return part_form.part_form(loaded.spec, loaded.folder)

    def _catalogue(self, loaded: Loaded) -> Catalogue | None:
        path = change_file_of(loaded.path)
        stamp = path.stat().st_mtime_ns if path.is_file() else None
        if stamp is None:
            return None
        return self._catalogues.find((path, stamp), lambda: read_changes(path))

    def changes(self, at: At) -> dict[str, Any]:
        """The change file beside the truck's own, or the reason why there is none."""
        loaded, _ = self._at(at)
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
            loaded, sheet = self._at(at)
            fitted = sheet.history.fitted
            base = loaded if fitted is None else self.reader.load(fitted.base, sheet.source)
            was = change_list.edit_list(sheet, base, seen, asked)
        return {**self.changes(at), "was": was}

    def keep_edits(self, at: At, seen: str, asked: dict[str, Any]) -> dict[str, Any]:
        """What was edited by hand since the reference, as a change of the list, and on the truck
        as such from now on."""
        with self._listing:
            sheet = self.desk.agree(at)
            made = change_list.kept(
                sheet,
                self._reference(sheet),
                lambda text: self.reader.load(text, sheet.source),
                seen,
                asked,
            )
            self.desk.fit(at, lambda _: made, f"kept as the change {asked.get('name')}"[:MAX_WORDS])
        return self.state()

    def _choice_of(self, at: At) -> tuple[Sheet, Catalogue, str, Loaded]:
        """The sheet, the change file, and the text and truck that a choice is made on."""
        loaded, sheet = self._at(at)
        catalogue = self._catalogue(loaded)
        if catalogue is None:
            raise InputError(Problem("changes", "there is no change file beside this truck"))
        fitted = sheet.history.fitted
        base = sheet.history.text if fitted is None else fitted.base
        return sheet, catalogue, base, self.reader.load(base, sheet.source)

    def bought(self, at: At) -> dict[str, Any]:
        """What each change buys on the truck the choice began from; about a second's work."""
        from crossfall.tuning.whatif import rank_changes

        with self._heavy:
            _, catalogue, base, began = self._choice_of(at)
            surface = self._known_surface(began.truck)
            key = (base, text_digest(repr(catalogue.changes)), surface)
            work = lambda: rank_changes(began, catalogue, surface=surface)  # noqa: E731
            return fitted_changes.bought(catalogue, self._rankings.find(key, work))

    def fit(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """Fit a choice of changes, in place of any choice fitted before."""
        sheet, catalogue, _, _ = self._choice_of(at)
        chosen = fitted_changes.choice(catalogue, asked)
        names = ", ".join(catalogue.changes[i].name for i in chosen) or "no changes"

        def load(text: str) -> Loaded:
            return self.reader.load(text, sheet.source)

        self.desk.fit(
            at,
            lambda h: fitted_changes.refitted(h.text, h.fitted, catalogue, chosen, load),
            f"fitted {names}"[:MAX_WORDS],
        )
        return self.state()

    def planned(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """The best set of changes for the truck the choice began from; a few seconds."""
        with self._heavy:
            _, catalogue, _, began = self._choice_of(at)
            surface = self._known_surface(began.truck)
            return decisions.planned(began, catalogue, asked, surface)

    def weighed(self, at: At, asked: dict[str, Any], keep: bool) -> dict[str, Any]:
        """Mass and CG out of scale readings; keep: also write them beside the truck."""
        loaded, sheet = self._at(at)
        path = self._beside(sheet, "weighin")
        text = scale_form.as_text(asked, loaded.truck.name)
        found = decisions.weighed(text, loaded.truck, path)
        if keep:
            decisions.keep_readings(text, path)
        return {**found, "file": path.name}

    def readings(self, at: At) -> dict[str, Any]:
        """The form of the readings kept beside the truck; form: None where there are none."""
        _, sheet = self._at(at)
        path = self._beside(sheet, "weighin")
        there = path.is_file()
        return {
            "file": path.name,
            "there": there,
            "form": scale_form.as_form(path) if there else None,
        }

    def board(self, at: At, asked: dict[str, Any] | None = None) -> dict[str, Any]:
        """The tilt-board card; with `asked` a reading is put into the board file or taken out."""
        loaded, sheet = self._at(at)
        truck = loaded.truck
        path = self._beside(sheet, "board")
        if asked is not None:
            decisions.note_reading(truck, path, asked)
        grip = board_grip(truck)
        return decisions.board_card(truck, path, grip)

    def wizard(self, at: At) -> dict[str, Any]:
        """What the page asks one by one, its pictures and cautions, and how far this truck is."""
        loaded, sheet = self._at(at)
        kept = readings_of(self.folder / sheet.source.name)
        return {
            "questions": wizard.wizard_questions(),
            "pictures": wizard.wizard_pictures(figure_of(loaded.truck)),
            "cautions": wizard.CAUTIONS,
            "begun": kept.is_file(),
            "as_begun": kept.is_file() and not sheet.unsaved and is_sealed(sheet.source),
            "weighed": self._beside(sheet, "weighin").is_file(),
            "tilted": self._beside(sheet, "board").is_file(),
        }

    def _beside(self, sheet: Sheet, kind: str) -> Path:
        return self.folder / f"{sheet.source.stem}.{kind}.toml"

    def begin(self, name: str, typed: dict[str, Any], again: bool) -> dict[str, Any]:
        """Make a truck file of readings as typed and put it on the bench; some seconds.

        again: from the readings kept beside the file, with these added.
        """
        inside(self.folder, name)
        with self._heavy:
            sheet = self.desk.sheet
            if again and sheet.unsaved and sheet.source.stem == name.removesuffix(".toml"):
                what = "has changes that are not saved"
                raise InputError(Problem(sheet.source.name, what, "undo or save them first"))
            said = wizard.begun(self.folder, name, typed, again)
        if again:
            self.desk.follow()
        return {"begun": said, "bench": self.open(said["file"])}

    def agreement(self, at: At, put: bool) -> dict[str, Any]:
        """Bring the file and the readings kept beside it together; put: into the truck's text."""
        with self._heavy:
            loaded, sheet = self._at(at)
            found, text = wizard.agreement(
                loaded,
                sheet.history.text,
                self._beside(sheet, "weighin"),
                self._beside(sheet, "board"),
            )
        if put:
            self.desk.edit(at, lambda _: text, "brought together with scale and board")
        return {"found": found, "bench": self.state() if put else None}

    def sheet(self, at: At) -> bytes:
        """The set-up sheet as PDF, against the truck before its changes or as saved; with the still
        of a course that was kept for this very truck."""
        from crossfall.show.sheet.facts import fitted_truck, gather
        from crossfall.show.sheet.write import pdf

        loaded, sheet = self._at(at)
        reference = self._reference(sheet)
        surface = self._known_surface(loaded.truck)
        still = self._still.get(truck_name(sheet.history.text, sheet.source))
        if reference.text == sheet.history.text and reference.source == sheet.source:
            return pdf(gather(loaded, None, surface), still)
        before = self.reader.load(reference.text, reference.source)
        made = sheet.history.fitted
        if made is None or reference.text != made.base:
            return pdf(gather(loaded, before, surface), still)
        _, catalogue, _, began = self._choice_of(at)
        chosen = {catalogue.position(name): many for name, many in made.chosen}
        _, bought = fitted_truck(began, catalogue, chosen)
        currency = catalogue.currency or began.spec.currency
        return pdf(gather(loaded, before, surface, bought=bought, currency=currency), still)

    def keep_still(self, at: At, picture: str, words: list[Any]) -> dict[str, Any]:
        """A picture of a course, base64 of a PNG, for the sheet of this very truck."""
        from crossfall.show.sheet.still import Still

        sheet = self.desk.agree(at)
        try:
            png = base64.b64decode(picture, validate=True)
        except ValueError:
            raise InputError(Problem("picture", "is not base64")) from None
        still = Still(png, tuple(str(w) for w in words))
        whose = truck_name(sheet.history.text, sheet.source)
        self._still = {whose: still}
        return {"bytes": len(png)}

    def share(self, at: At) -> bytes:
        """The page with all its answers as one file that needs no bench; some seconds."""
        self.exact(at)
        self.ways(at)
        self.reference(at)
        paths = {h: self.path(at, h) for h in range(0, 360, share.TURN)}
        state = self.state()
        self.desk.agree(at)  # the state is the one that was asked for
        return share.copy(state, paths, f"{datetime.date.today():%Y-%m-%d}")

    def sweeps(self) -> dict[str, Any]:
        return {"tables": sweeps.found(self.folder)}

    def sweep(self, name: str) -> dict[str, Any]:
        return sweeps.table(self.folder, name)

    def run_sweep(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """Begin a sweep of the truck as it is, on the surface shown."""
        loaded, sheet = self._at(at)
        data = sweep_jobs.sweep_data(asked, self._known_surface(loaded.truck))
        return self.sweep_job.start(loaded, sheet.history.text, data)

    def place(self, at: At, values: dict[str, Any]) -> dict[str, Any]:
        """A point of a sweep as the truck on the table: values by dotted key, as one edit."""

        def change(text: str) -> str:
            for key, value in list(values.items())[:20]:
                if type(value) is not float and type(value) is not int:
                    raise InputError(Problem("sweep", f"{key[:60]} is no number"))
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
        with self._heavy:
            loaded, sheet = self._at(at)
            text = sheet.history.text
            grip = self._grip(loaded.truck)
            find = lambda: answers.exact_curve(loaded.truck, grip)  # noqa: E731
            curve = self._curves.find((text, grip), find)
            self._weakest.find(
                (text_digest(text), grip), lambda: answers.least_over_headings(curve)
            )
        return self._answers(loaded.truck, text)

    def ways(self, at: At) -> dict[str, Any]:
        """The answers with all there is to say on the four ways, ranges and budget with it."""
        with self._heavy:
            loaded, sheet = self._at(at)
            text = sheet.history.text
            grip = self._grip(loaded.truck)
            self._ways.find((text, grip), lambda: answers.four_ways(loaded.truck, grip))
        return self._answers(loaded.truck, text)

    def gains(self, at: At) -> dict[str, Any]:
        """The answers with what a gram is worth anywhere, springs and tyres at work."""
        with self._heavy:
            loaded, sheet = self._at(at)
            text = sheet.history.text
            grip = self._grip(loaded.truck)
            self._gains.find((text, grip), lambda: answers.exact_gains(loaded, grip))
        return self._answers(loaded.truck, text)

    def surface(self, at: At, name: str) -> dict[str, Any]:
        """Show the answers on another surface of the truck's."""
        loaded, _ = self._at(at)
        choose_grip(loaded.truck, name)
        self._surface = name
        return self.state()

    def path(self, at: At, heading_deg: float) -> dict[str, Any]:
        """How it stands on one heading (the nearest 5 deg), from level to the tip."""
        loaded, sheet = self._at(at)
        text, heading = sheet.history.text, round(heading_deg / 5) * 5 % 360
        truck = loaded.truck
        grip = self._grip(truck)
        known = self._curves.get((text, grip))
        key = (text, grip, heading)
        return self._stances.find(key, lambda: stances(truck, grip, float(heading), known))

    def trial_state(self) -> dict[str, Any]:
        return {**self.trials.state(), "records": trial_jobs.kept_trials(self.folder)}

    def poses(self, at: At, file: str) -> bytes:
        """A finished trial, or a record kept in the folder, as a file of poses."""
        loaded, _ = self._at(at)
        if file.endswith(".npz"):
            return trial_jobs.record_poses(self.folder, file, loaded.truck)
        return self.trials.poses(file)

    def suspension(self, at: At) -> dict[str, Any]:
        """What the links of truck and reference amount to."""
        return {
            whose: suspension.suspension(self.reader.load(text, source).truck)
            for whose, (text, source) in self._driven(self.desk.agree(at)).items()
        }

    def suspension_moves(self, at: At) -> dict[str, Any]:
        """What each link end moved by 5 mm does; some seconds."""
        with self._heavy:
            loaded, sheet = self._at(at)
            surface = self._known_surface(loaded.truck)
            work = partial(suspension.suspension_moves, loaded, surface)
            return self._moves.find((sheet.history.text, surface), work)

    def course_standing(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """A course's way, and what truck and reference would have in hand standing on it."""
        hill = course.understood_course(asked)
        with self._heavy:
            found: dict[str, Any] = {"way": course.way_told(hill)}
            for whose, (text, source) in self._driven(self.desk.agree(at)).items():
                truck = self.reader.load(text, source).truck
                curve = self._curves.find(
                    (text, self._grip(truck)),
                    partial(answers.exact_curve, truck, self._grip(truck)),
                )
                found[whose] = course.standing_on_course(hill, curve)
        return found

    def course(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """Begin driving a course with the truck and what it is compared with."""
        hill, sheet = course.understood_course(asked), self.desk.agree(at)
        trucks = []
        for whose, (text, source) in self._driven(sheet).items():
            grip = self._grip(self.reader.load(text, source).truck)
            trucks.append({"whose": whose, "text": text, "path": str(source), "grip": grip.likely})
        told = {
            "truck": truck_name(sheet.history.text, sheet.source),
            "surface": self._grip(self._loaded(sheet).truck).surface,
            "against": self._reference(sheet).words,
            "way": course.way_told(hill),
        }
        return self.courses.start(asked, trucks, told)

    def _driven(self, sheet: Sheet) -> dict[str, tuple[str, Path]]:
        """Text and source of the truck, and of what it is compared with where that is another."""
        found = {"truck": (sheet.history.text, sheet.source)}
        then = self._reference(sheet)
        if (then.text, then.source) != found["truck"]:
            found["reference"] = (then.text, then.source)
        return found

    # What the page does

    def trial(self, at: At, headings: list[Any], rail: bool) -> dict[str, Any]:
        """Begin virtual trials at some headings (deg) on the surface shown."""
        loaded, sheet = self._at(at)
        text = sheet.history.text
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
        whose = truck_name(text, sheet.source)
        return self.trials.start(text, sheet.source, whose, grip.surface, asked)

    def attempt(self, at: At, edits: list[Any], full: bool = False) -> dict[str, Any]:
        """What edits would do, without putting them down; full: the springs' answer as well."""
        loaded, sheet = self._at(at)
        folder = sheet.source.resolve().parent
        spec = on_spec(loaded.spec, understood(loaded.spec, edits, folder))
        truck, _ = build(spec, folder)
        grip, known = self._grip(truck), self._last
        if full:
            with self._heavy:
                known = replace(known, curve=answers.exact_curve(truck, grip))
        return {
            "scene": scene(truck, spec.battery),
            "rows": part_rows(truck, spec, None),
            "measures": measures(spec),
            "answers": answers.quick(truck, grip, known, full),
        }

    def edit(self, at: At, edits: list[Any], what: str) -> dict[str, Any]:
        """Put edits down and journal them; `what` is what undo will call them."""

        source = self.desk.agree(at).source

        def change(text: str) -> str:
            folder = source.resolve().parent
            return on_text(text, understood(self.reader.load(text, source).spec, edits, folder))

        self.desk.edit(at, change, what[:MAX_WORDS])
        return self.state()

    def undo(self, at: At) -> dict[str, Any]:
        self.desk.undo(at)
        return self.state()

    def redo(self, at: At) -> dict[str, Any]:
        self.desk.redo(at)
        return self.state()

    def save(self, at: At, name: str | None, over: bool) -> dict[str, Any]:
        """Write the truck to its file, or to a new one, which gets a copy of the change file."""
        path = None if name is None else inside(self.folder, name)
        if path is not None and path.name.endswith(OTHERS):
            kind = path.name.removesuffix(".toml").rpartition(".")[2]
            raise InputError(Problem(path.name, f"is the name of a {kind} file, not of a truck"))
        before = self.desk.agree(at).source
        after = self.desk.save(at, path, over).source
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
        self.trials.close()
        self.sweep_job.close()
        self.courses.close()
        self.desk.close()

    def _at(self, at: At) -> tuple[Loaded, Sheet]:
        sheet = self.desk.agree(at)
        return self._loaded(sheet), sheet

    def _loaded(self, sheet: Sheet) -> Loaded:
        return self.reader.load(sheet.history.text, sheet.source)
