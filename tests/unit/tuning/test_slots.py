"""A slot is a change whose best place is found, and equals the same move written out."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from crossfall.truck.build import Loaded, load_truck
from crossfall.truck.errors import InputError
from crossfall.truck.model import Truck
from crossfall.tuning.apply import apply, built, check_fit
from crossfall.tuning.changes import SLOT, Catalogue, read_changes
from crossfall.tuning.directions import DIRECTIONS, DirectionAngles, angles
from crossfall.tuning.milp_model import Bounds
from crossfall.tuning.plan import aim_at, plan
from crossfall.tuning.whatif import best_slots, rank_changes

HEAD = 'format = 1\ntruck = "bramble"\n'
# Across: the pack stands at y = -4, the truck is heavier on the left by a hair.
ACROSS = """
[[change]]
name = "across"
price = 9
slide = [{ part = "battery pack", along_mm = [0, 60, 0] }]
"""
DOWN = """
[[change]]
name = "down"
price = 7
slide = [
  { part = "battery pack", along_mm = [40, 0, -20] },
  { part = "battery tray", along_mm = [40, 0, -20] },
]
"""
MOVED = """
[[change]]
name = "moved"
move = [
  { part = "battery pack", by_mm = [28, 0, -14] },
  { part = "battery tray", by_mm = [28, 0, -14] },
]
"""


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


def catalogue(folder: Path, *entries: str) -> Catalogue:
    path = folder / "some.changes.toml"
    path.write_text(HEAD + "".join(entries), encoding="utf-8")
    return read_changes(path)


def test_a_slot_is_the_move_it_amounts_to(tmp_path: Path, bramble: Loaded) -> None:
    found = catalogue(tmp_path, DOWN, MOVED)
    check_fit(found, bramble)
    slid = apply(bramble.spec, found, {0: 7})
    moved = apply(bramble.spec, found, {1: 1})
    assert slid == moved
    assert found.changes[0].cost(3) == found.changes[0].cost(SLOT) == 7
    assert found.changes[0].counted(7) == "down (battery pack slid by [28, 0, -14] mm)"


def test_the_label_is_the_name_where_none_is_given(tmp_path: Path) -> None:
    assert catalogue(tmp_path, DOWN).changes[0].label == "down"


def test_the_best_place_is_the_best_of_all(tmp_path: Path, bramble: Loaded) -> None:
    """Across, in the middle somewhere: further is better for one side and worse for the other."""
    found = catalogue(tmp_path, ACROSS)
    grip = bramble.truck.grips[0].likely
    trucks = [built(bramble, apply(bramble.spec, found, {0: n})) for n in range(1, SLOT + 1)]
    each = angles(trucks, grip).angle
    for aim in ("side", "worst"):
        wanted = int(np.argmax(each[:, DIRECTIONS.index(aim)])) + 1
        ranking = rank_changes(bramble, found, aim)
        (outcome,) = ranking.outcomes
        assert outcome.many == wanted
        assert outcome.price == 9
        assert outcome.angle[DIRECTIONS.index(aim)] == pytest.approx(
            each[wanted - 1, DIRECTIONS.index(aim)], abs=1e-4
        )
        assert best_slots(bramble, found, {0: 1}, {0}, aim=aim) == {0: wanted}
    assert wanted < SLOT


def test_a_slot_is_looked_at_with_the_grip_that_what_it_requires_sets(
    tmp_path: Path, bramble: Loaded, monkeypatch: pytest.MonkeyPatch
) -> None:
    sticky = '\n[[change]]\nname = "sticky"\nset."grip.rock.likely" = 0.8\n'
    found = catalogue(tmp_path, sticky, DOWN + "requires = ['sticky']\n")
    asked: list[float] = []

    def noted(trucks: list[Truck], grip: list[float], hold: str) -> DirectionAngles:
        asked.extend(np.broadcast_to(grip, len(trucks)))
        nothing = np.zeros((len(trucks), 4))
        return DirectionAngles(nothing, nothing, nothing, nothing > 0)

    monkeypatch.setattr("crossfall.tuning.whatif.angles", noted)
    assert best_slots(bramble, found, {0: 1, 1: 1}, {1}) == {0: 1, 1: 1}
    assert asked == [0.8] * SLOT


def test_plan_puts_a_slot_where_it_is_best(tmp_path: Path, bramble: Loaded) -> None:
    found = plan(bramble, catalogue(tmp_path, ACROSS, DOWN), aim_at("side"), Bounds(budget=8))
    assert found.best is not None
    assert found.best.price == 7  # the price is for the slot, not for each step
    (pick,) = found.best.picks
    assert pick[0] == 1
    ranking = rank_changes(bramble, catalogue(tmp_path, DOWN), "side")
    assert pick[1] == ranking.outcomes[0].many


@pytest.mark.parametrize(
    ("entry", "words"),
    [
        (DOWN.replace("price = 7", "most = 3"), "most"),
        (DOWN + "by.front.tyre.stiffness_n_per_mm = 1\n", "slide"),
        (DOWN.replace('part = "battery tray"', 'part = "tray"'), "there is no such part"),
        (DOWN.replace("[40, 0, -20]", "[40, 0]", 1), "along_mm"),
    ],
)
def test_slots_that_cannot_be(tmp_path: Path, bramble: Loaded, entry: str, words: str) -> None:
    with pytest.raises(InputError) as error:
        check_fit(catalogue(tmp_path, entry), bramble)
    assert words in str(error.value)
