"""What leaves the bench: the set-up sheet, and a copy of the page that needs no bench."""

from __future__ import annotations

import base64
import datetime
from typing import TYPE_CHECKING, Any

from crossfall.app import share
from crossfall.app.document import At
from crossfall.app.truck_cache import truck_name
from crossfall.truck.errors import InputError, Problem

if TYPE_CHECKING:
    from crossfall.app.session import Bench
    from crossfall.show.sheet.still import Still


class Paper:
    """What is to be carried away from the truck on the desk."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._still: dict[str, Still] = {}  # by truck; the last one kept

    def sheet(self, at: At) -> bytes:
        """The set-up sheet as PDF, against the truck before its changes or as saved; with the still
        of a course that was kept for this very truck."""
        from crossfall.show.sheet.facts import fitted_truck, gather
        from crossfall.show.sheet.write import pdf

        loaded, sheet = self._bench.at(at)
        reference = self._bench.compared(sheet)
        surface = self._bench.known_surface(loaded.truck)
        still = self._still.get(truck_name(sheet.history.text, sheet.source))
        if reference.text == sheet.history.text and reference.source == sheet.source:
            return pdf(gather(loaded, None, surface), still)
        before = self._bench.reader.load(reference.text, reference.source)
        made = sheet.history.fitted
        if made is None or reference.text != made.base:
            return pdf(gather(loaded, before, surface), still)
        _, catalogue, _, began = self._bench.tuning.choice_of(at)
        chosen = {catalogue.position(name): many for name, many in made.chosen}
        _, bought = fitted_truck(began, catalogue, chosen)
        currency = catalogue.currency or began.spec.currency
        return pdf(gather(loaded, before, surface, bought=bought, currency=currency), still)

    def keep_still(self, at: At, picture: str, words: list[str]) -> dict[str, Any]:
        """A picture of a course, base64 of a PNG, for the sheet of this very truck."""
        from crossfall.show.sheet.still import Still

        sheet = self._bench.desk.agree(at)
        try:
            png = base64.b64decode(picture, validate=True)
        except ValueError:
            raise InputError(Problem("picture", "is not base64")) from None
        still = Still(png, tuple(words))
        whose = truck_name(sheet.history.text, sheet.source)
        self._still = {whose: still}
        return {"bytes": len(png)}

    def share(self, at: At) -> bytes:
        """The page with all its answers as one file that needs no bench; some seconds."""
        self._bench.exact(at)
        self._bench.ways(at)
        self._bench.reference(at)
        paths = {h: self._bench.tried.path(at, h) for h in range(0, 360, share.TURN)}
        state = self._bench.state()
        self._bench.desk.agree(at)  # the state is the one that was asked for
        return share.copy(state, paths, f"{datetime.date.today():%Y-%m-%d}")
