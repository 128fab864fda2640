"""All numbers of a set-up sheet, gathered once; what is drawn and printed only reads them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np

from crossfall.answers.answer import Answers, TipAnswer, answer, weakest_heading
from crossfall.answers.conditions import Hold, choose_grip, conditions
from crossfall.measurement.board_predict import board_grip
from crossfall.show.sheet.changes import Differences, differences
from crossfall.truck.build import Loaded
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.weight import WeighIn, weigh_truck
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.effects import Effects, effects

WAYS = np.radians([0.0, 90.0, 180.0, 270.0, 45.0, 135.0, 225.0, 315.0])
BOARD = np.radians([90.0, 270.0, 0.0, 180.0])


@dataclass(frozen=True)
class Build:
    """One truck with its answers, without virtual trials. tips: on WAYS, in that order, and on its
    weakest heading of all, last."""

    loaded: Loaded
    weight: WeighIn
    tips: Answers
    extras: Effects

    @property
    def truck(self) -> Truck:
        return self.loaded.truck

    @property
    def weakest(self) -> TipAnswer:
        """On the weakest heading, searched for all round."""
        return self.tips.answers[-1]


@dataclass(frozen=True)
class Bought:
    """One change that was made. mass: kg gained with it, after those before it. price: of all its
    units, from the change file."""

    label: str
    many: int
    mass: float
    price: float


@dataclass(frozen=True)
class Facts:
    """What a set-up sheet tells. before, changed: None where nothing is compared.

    bought: the changes made, where they are known from a change file, else empty; currency: theirs.
    board: what a tilt board should show on the headings BOARD, on its own surface if the file has
    one. date: a line to print, or "".
    """

    now: Build
    before: Build | None
    changed: Differences | None
    bought: tuple[Bought, ...]
    currency: str
    board: Answers
    date: str


def gather(
    now: Loaded,
    before: Loaded | None = None,
    surface: str | None = None,
    date: str = "",
    *,
    hold: Hold = "brakes",
    bought: tuple[Bought, ...] = (),
    currency: str = "",
) -> Facts:
    """Everything the sheet says, on a surface by name (the first of `now` if not given).

    bought, currency: from `fitted`, where `now` is `before` with changes made. Raises InputError
    where `now` has no such surface.
    """
    truck = now.truck
    grip = choose_grip(truck, surface)
    on_board = board_grip(truck)
    old = None
    if before is not None:
        there = [g.surface for g in before.truck.grips]
        old = _build(before, grip.surface if grip.surface in there else None, hold, None)
    return Facts(
        now=_build(now, grip.surface if truck.grips else None, hold, before),
        before=old,
        changed=differences(before, now) if before is not None else None,
        bought=bought,
        currency=currency,
        board=answer(
            truck,
            conditions(truck, BOARD.tolist(), on_board.surface if truck.grips else None),
            trial=False,
        ),
        date=date,
    )


def fitted_truck(
    loaded: Loaded, catalogue: Catalogue, chosen: Mapping[int, int]
) -> tuple[Loaded, tuple[Bought, ...]]:
    """The truck with changes made (position: how many), and what each weighs and costs.

    Raises InputError where it cannot be built.
    """
    bought, mass = [], whole(loaded.truck).mass
    truck, spec = loaded.truck, loaded.spec
    done: dict[int, int] = {}
    for i, many in chosen.items():
        done[i] = many
        spec = apply(loaded.spec, catalogue, done)
        truck = built(loaded, spec)
        change, then = catalogue.changes[i], whole(truck).mass
        label = change.counted(many, change.label) if change.slide else change.label
        count = 1 if change.slide else many
        bought.append(Bought(label, count, then - mass, change.cost(many)))
        mass = then
    return replace(loaded, truck=truck, spec=spec), tuple(bought)


def _build(loaded: Loaded, surface: str | None, hold: Hold, before: Loaded | None) -> Build:
    """before: where the current was measured, if the pack is another since."""
    measured_on = None
    if before is not None and before.spec.battery is not None and loaded.spec.battery is not None:
        a, b = before.spec.battery, loaded.spec.battery
        if (a.draw_a, a.draw_mass_g) == (b.draw_a, b.draw_mass_g):
            measured_on = a
    asked = conditions(loaded.truck, WAYS.tolist(), surface, hold=hold)
    asked = (*asked, weakest_heading(loaded.truck, asked[0]))
    return Build(
        loaded,
        weigh_truck(loaded.truck),
        answer(loaded.truck, asked, trial=False),
        effects(loaded.truck, loaded.spec, measured_on),
    )
