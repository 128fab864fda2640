"""Measurements at the bench: of scale, ruler and tilt board, and a truck file made of them."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from crossfall.app import decisions, scale_form, wizard
from crossfall.app.document import At, Sheet
from crossfall.app.folder import inside
from crossfall.measurement.begin_files import is_sealed, readings_of
from crossfall.measurement.board_predict import board_grip
from crossfall.truck.errors import InputError, Problem

if TYPE_CHECKING:
    from crossfall.app.session import Bench


class Measurements:
    """What was read from the truck on the desk, kept in files beside its own."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench

    def weighed(self, at: At, asked: dict[str, Any], keep: bool) -> dict[str, Any]:
        """Mass and CG out of scale readings; keep: also write them beside the truck."""
        loaded, sheet = self._bench.at(at)
        path = self._beside(sheet, "weighin")
        text = scale_form.as_text(asked, loaded.truck.name)
        found = decisions.weighed(text, loaded.truck, path)
        if keep:
            decisions.keep_readings(text, path)
        return {**found, "file": path.name}

    def readings(self, at: At) -> dict[str, Any]:
        """The form of the readings kept beside the truck; form: None where there are none."""
        _, sheet = self._bench.at(at)
        path = self._beside(sheet, "weighin")
        there = path.is_file()
        return {
            "file": path.name,
            "there": there,
            "form": scale_form.as_form(path) if there else None,
        }

    def board(self, at: At, asked: dict[str, Any] | None = None) -> dict[str, Any]:
        """The tilt-board card; with `asked` a reading is put into the board file or taken out."""
        loaded, sheet = self._bench.at(at)
        truck = loaded.truck
        path = self._beside(sheet, "board")
        if asked is not None:
            decisions.note_reading(truck, path, asked)
        grip = board_grip(truck)
        return decisions.board_card(truck, path, grip)

    def wizard(self, at: At) -> dict[str, Any]:
        """What the page asks one by one, its pictures and cautions, and how far this truck is."""
        loaded, sheet = self._bench.at(at)
        kept = readings_of(self._bench.folder / sheet.source.name)
        return {
            "questions": wizard.wizard_questions(),
            "pictures": wizard.wizard_pictures(loaded.truck),
            "cautions": wizard.CAUTIONS,
            "begun": kept.is_file(),
            "as_begun": kept.is_file() and not sheet.unsaved and is_sealed(sheet.source),
            "weighed": self._beside(sheet, "weighin").is_file(),
            "tilted": self._beside(sheet, "board").is_file(),
        }

    def _beside(self, sheet: Sheet, kind: str) -> Path:
        return self._bench.folder / f"{sheet.source.stem}.{kind}.toml"

    def begin(self, name: str, typed: dict[str, Any], again: bool) -> dict[str, Any]:
        """Make a truck file of readings as typed and put it on the bench; some seconds.

        again: from the readings kept beside the file, with these added.
        """
        inside(self._bench.folder, name)
        with self._bench.heavy:
            sheet = self._bench.desk.sheet
            if again and sheet.unsaved and sheet.source.stem == name.removesuffix(".toml"):
                what = "has changes that are not saved"
                raise InputError(Problem(sheet.source.name, what, "undo or save them first"))
            said = wizard.begun(self._bench.folder, name, typed, again)
        if again:
            self._bench.desk.follow()
        return {"begun": said, "bench": self._bench.open(said["file"])}

    def agreement(self, at: At, put: bool) -> dict[str, Any]:
        """Bring the file and the readings kept beside it together; put: into the truck's text."""
        with self._bench.heavy:
            loaded, sheet = self._bench.at(at)
            found, text = wizard.agreement(
                loaded,
                sheet.history.text,
                self._beside(sheet, "weighin"),
                self._beside(sheet, "board"),
            )
        if put:
            self._bench.desk.edit(at, lambda _: text, "brought together with scale and board")
        return {"found": found, "bench": self._bench.state() if put else None}
