"""One spring, or a soft one stacked on it, against two springs held in balance."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.truck.model import Suspension
from crossfall.truck.ride import corner_rates, spring_preloads, spring_squeezes
from crossfall.truck.spring_law import SpringLaw, spring_law
from support import make_truck

STIFF, SOFT, TRAVEL = 500.0, 300.0, 0.012


def law(soft: float = SOFT) -> SpringLaw:
    return spring_law(
        Suspension(STIFF, 0.1, 8.0, 0.08, 0.02, 0.02, soft_rate=soft, soft_travel=TRAVEL)
    )


def stacked(squeeze: float) -> float:
    """N: how the squeeze is shared between two springs that push alike, by bisection."""
    low, high = 0.0, STIFF * squeeze
    for _ in range(80):
        force = (low + high) / 2
        given = force / STIFF + min(force / SOFT, TRAVEL)
        low, high = (force, high) if given < squeeze else (low, force)
    return low


@pytest.mark.parametrize("squeeze", [0.001, 0.015, 0.0191, 0.0193, 0.03])
def test_two_springs_push_as_in_balance_with_each_other(squeeze: float) -> None:
    assert float(law().force(squeeze)) == pytest.approx(stacked(squeeze), rel=1e-9)
    h = 1e-6
    slope = (stacked(squeeze + h) - stacked(squeeze - h)) / (2 * h)
    assert float(law().rate_at(squeeze)) == pytest.approx(slope, rel=1e-6)


@pytest.mark.parametrize("force", [-1.0, 0.0, 2.0, SOFT * TRAVEL, 9.0])
def test_squeeze_and_force_undo_each_other(force: float) -> None:
    squeeze = law().squeeze(force)
    assert float(law().force(squeeze)) == pytest.approx(max(0.0, force), abs=1e-12)


def test_springs_only_push() -> None:
    assert float(law().force(-0.01)) == 0.0
    assert float(law().rate_at(-0.01)) == 0.0


def test_one_spring_alone_never_binds() -> None:
    alone = law(soft=0.0)
    assert alone.rate == STIFF
    assert math.isinf(alone.bound)
    assert alone.force([0.01, 0.5]) == pytest.approx([STIFF * 0.01, STIFF * 0.5])


def test_a_truck_stands_with_its_springs_pressed_by_its_weight() -> None:
    from dataclasses import replace

    truck = make_truck(chassis_cg=(-0.02, 0.006, 0.1))
    front = replace(truck.front.suspension, soft_rate=SOFT, soft_travel=TRAVEL)
    truck = replace(truck, front=replace(truck.front, suspension=front))
    laws = [spring_law(a.suspension) for a in truck.axles for _ in (0, 1)]
    held = [float(one.force(s)) for one, s in zip(laws, spring_squeezes(truck), strict=True)]
    assert held == pytest.approx(spring_preloads(truck), rel=1e-12)
    rates = [float(one.rate_at(s)) for one, s in zip(laws, spring_squeezes(truck), strict=True)]
    assert corner_rates(truck) == pytest.approx(np.array(rates), rel=1e-12)
