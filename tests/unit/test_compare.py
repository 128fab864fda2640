"""The methods side by side: what is said where they disagree."""

from __future__ import annotations

from dataclasses import replace
from math import nan, radians

import numpy as np
import pytest

from crossfall.compare import HeadingAnswer, compare, disagreement
from crossfall.truck.build import build, load_truck
from crossfall.truck.edits import set_values


@pytest.fixture(scope="module")
def found() -> HeadingAnswer:
    """A soft truck on a diagonal climb, whose body snaps up on its springs near its tip."""
    bramble = load_truck("bramble")
    values = {"spring_n_per_mm": 0.37, "droop_mm": 9.4, "roll_centre_mm": 70.5}
    changes = {f"both.suspension.{k}": v for k, v in values.items()}
    spec = set_values(bramble.spec, {**changes, "both.track_mm": 178.7})
    truck, _ = build(spec, bramble.folder)
    return compare(truck, [radians(30.0)]).answers[0]


def moved(answer: HeadingAnswer, tip: float, snap: float = nan) -> HeadingAnswer:
    assert answer.trial is not None
    return replace(answer, trial=replace(answer.trial, tip=tip), held_snap=snap, first_snap=nan)


def test_inside_the_window_nothing_is_said(found: HeadingAnswer) -> None:
    low, high = found.window
    assert disagreement(moved(found, (low + high) / 2)) == ""
    assert disagreement(moved(found, high + radians(0.2))) == ""
    assert disagreement(replace(found, trial=None)) == ""


def test_outside_it_the_difference_is_told(found: HeadingAnswer) -> None:
    low, high = found.window
    assert "0.5° above" in disagreement(moved(found, high + radians(0.5)))
    below = disagreement(moved(found, low - radians(0.5)))
    assert "0.5° below" in below
    assert "nothing here explains" in below


def test_a_fall_at_a_snap_is_momentum(found: HeadingAnswer) -> None:
    tip = found.window[0] - radians(0.5)
    assert "momentum" in disagreement(moved(found, tip, snap=tip + radians(0.1)))
    assert "momentum" not in disagreement(moved(found, tip, snap=tip - radians(3.0)))


def test_a_truck_that_snaps_is_carried_over(found: HeadingAnswer) -> None:
    """The real thing: tried out, it falls where the statics, without momentum, stands again."""
    assert found.trial is not None
    assert np.degrees(found.held_snap - found.trial.tip) == pytest.approx(0.0, abs=0.6)
    assert found.trial.tip < found.window[0] - radians(0.3)
    assert "momentum" in found.verdict
