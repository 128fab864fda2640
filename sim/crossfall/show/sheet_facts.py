"""All numbers of a set-up sheet, gathered once; what is drawn and printed only reads them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.compare import Comparison, choose_grip, compare
from crossfall.show.sheet_changes import Differences, differences
from crossfall.statics.sliding import slide_range
from crossfall.truck.build import Loaded
from crossfall.truck.model import Array, Truck
from crossfall.truck.weight import WeighIn, weigh
from crossfall.tuning.board import board_grip
from crossfall.tuning.board_predict import Prediction, predict
from crossfall.tuning.effects import Effects, effects

WAYS = np.radians([0.0, 90.0, 180.0, 270.0, 45.0, 135.0, 225.0, 315.0])
BOARD = np.radians([90.0, 270.0, 0.0, 180.0])


@dataclass(frozen=True)
class Build:
    """One truck with its answers. tips: on WAYS, in that order, without virtual trials."""

    loaded: Loaded
    weight: WeighIn
    tips: Comparison
    extras: Effects

    @property
    def truck(self) -> Truck:
        return self.loaded.truck


@dataclass(frozen=True)
class Facts:
    """What a set-up sheet tells. before, changed: None where nothing is compared.

    board: what a tilt board should show on the headings BOARD, suspension free. board_slide:
    (4, 3) rad, low, likely and high, where the tyres let go on `board_surface`. date: a line to
    print, or "".
    """

    now: Build
    before: Build | None
    changed: Differences | None
    board: Prediction
    board_slide: Array
    board_surface: str
    date: str


def gather(
    now: Loaded, before: Loaded | None = None, surface: str | None = None, date: str = ""
) -> Facts:
    """Everything the sheet says. Raises InputError where a truck has no such surface."""
    truck = now.truck
    grip = choose_grip(truck, surface)
    on_board = board_grip(truck) or grip
    old = None
    if before is not None:
        there = [g.surface for g in before.truck.grips]
        old = _build(before, grip.surface if grip.surface in there else None, None)
    return Facts(
        now=_build(now, grip.surface, before),
        before=old,
        changed=differences(before, now) if before is not None else None,
        board=predict(truck, list(BOARD), [False] * len(BOARD)),
        board_slide=slide_range(truck, BOARD, on_board),
        board_surface=on_board.surface,
        date=date,
    )


def _build(loaded: Loaded, surface: str | None, before: Loaded | None) -> Build:
    """before: where the current was measured, if the pack is another since."""
    measured_on = None
    if before is not None and before.spec.battery is not None and loaded.spec.battery is not None:
        a, b = before.spec.battery, loaded.spec.battery
        if (a.draw_a, a.draw_mass_g) == (b.draw_a, b.draw_mass_g):
            measured_on = a
    return Build(
        loaded,
        weigh(loaded.truck),
        compare(loaded.truck, list(WAYS), surface, trial=False),
        effects(loaded.truck, loaded.spec, measured_on),
    )
