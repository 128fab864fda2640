"""Stones, rough ground and ramps, before and after they are in a world."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
import pytest

from crossfall.engines.rig import Rig
from crossfall.engines.settings import GroundSettings
from crossfall.trials.grounds.ramp import Ramp
from crossfall.trials.grounds.rough import Rough, rough_heights
from crossfall.trials.grounds.stone import FLANK, Stone, stone_foot, stone_radius, stone_side
from crossfall.truck.model import frozen
from support import make_truck


def test_a_stone_is_as_high_as_asked_and_leaves_the_ground_at_its_flank() -> None:
    radius, foot = stone_radius(0.02), stone_foot(0.02)
    assert radius - math.sqrt(radius**2 - foot**2) == pytest.approx(0.02, rel=1e-12)
    assert math.asin(foot / radius) == pytest.approx(FLANK, rel=1e-12)


@pytest.mark.parametrize(("heading", "side"), [(90.0, -1), (270.0, 1), (60.0, -1), (200.0, 1)])
def test_the_uphill_side_lies_against_the_downhill_vector(heading: float, side: int) -> None:
    psi = math.radians(heading)
    downhill_to_the_left = math.sin(psi)  # d = (-cos, sin)
    assert stone_side("uphill", psi) == side == -math.copysign(1, downhill_to_the_left)


def test_rough_ground_has_the_height_and_correlation_asked_for() -> None:
    x, y = frozen(np.arange(0.0, 8.0, 0.02)), frozen(np.arange(0.0, 8.0, 0.02))
    heights = rough_heights(Rough(0.005, length=0.1, seed=3), x, y)
    assert heights.std() == pytest.approx(0.005, rel=0.05)
    along = np.mean(heights[:-5] * heights[5:]) / np.mean(heights**2)  # 5 cells are one length
    across = np.mean(heights[:, :-5] * heights[:, 5:]) / np.mean(heights**2)
    assert along == pytest.approx(math.exp(-1), abs=0.1)
    assert across == pytest.approx(math.exp(-1), abs=0.1)


def test_a_seed_is_a_ground() -> None:
    x = frozen(np.arange(0.0, 1.0, 0.02))
    same = [rough_heights(Rough(0.005, seed=7), x, x) for _ in (0, 1)]
    other = rough_heights(Rough(0.005, seed=8), x, x)
    assert np.array_equal(*same)
    assert not np.allclose(same[0], other)


@pytest.mark.parametrize(
    "make",
    [
        lambda: Stone(0.0),
        lambda: Stone(-0.02),
        lambda: Stone(math.nan),
        lambda: Stone(0.02, stray=-0.1),
        lambda: Rough(-0.001),
        lambda: Rough(math.nan),
        lambda: Ramp(0.0, 0.1),
        lambda: Ramp(0.5, 0.1, oblique=2.0),
    ],
)
def test_ground_that_is_none_is_refused(make: Callable[[], object]) -> None:
    with pytest.raises(ValueError, match=r"no (stone|rough ground|ramp)"):
        make()


def test_a_level_height_field_carries_a_truck_as_a_plane_does() -> None:
    truck, loads = make_truck(), []
    for rough in (False, True):
        with Rig(truck, GroundSettings()) as rig:
            if rough:
                Rough(0.0).lay(rig, truck, math.pi / 2, 0.2)
            else:
                rig.world.plane()
            for _ in range(150):
                rig.step((0.0, 0.0, -9.80665))
            loads.append(np.array(rig.world.loads()) / rig.scale.force)
    assert loads[1] == pytest.approx(loads[0], rel=2e-3)
