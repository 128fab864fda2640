"""When a truck that slides on a held table has slid away, and from where it is held after that."""

from __future__ import annotations

import math
from types import SimpleNamespace

import numpy as np
import pytest

from crossfall.engines.held import usual_engine
from crossfall.engines.settings import TrialSettings
from crossfall.trials.log import TiltingSamples
from crossfall.trials.pace import Pace
from crossfall.trials.table import WATCH, Tilting, level_table, slides_on
from crossfall.trials.tilt import _held
from crossfall.truck.model import GRAVITY
from support import make_truck

DRAG = 5.0  # 1/s
COS = 0.75


def ways(acceleration: float, speed: float, count: int = 60) -> list[float]:
    """m in each look of a block under this acceleration, m/s^2, and drag, from that speed, m/s; it
    does not slide back."""
    end = acceleration / DRAG
    out, times = [], np.linspace(0.0, WATCH, 50)
    for look in range(count):
        now = end + (speed - end) * np.exp(-DRAG * (look * WATCH + times))
        out.append(float(np.maximum(now, 0.0).mean() * WATCH))
    return out


def told(all_ways: list[float]) -> int | None:
    return next((n for n in range(1, len(all_ways) + 1) if slides_on(all_ways[:n])), None)


@pytest.mark.parametrize("beyond", [0.001, 0.02, 0.3])
def test_one_beyond_its_grip_slides_away_soon(beyond):
    assert 16 <= (told(ways(GRAVITY * COS * math.radians(beyond), 0.0)) or 99) <= 30


@pytest.mark.parametrize("speed", [0.001, 0.03])
def test_one_that_comes_to_rest_has_not(speed):
    still = [way for way in ways(-GRAVITY * COS * math.radians(0.005), speed) if way > 0.0]
    assert told(still) is None


def test_a_soft_one_that_creeps_to_its_rest_has_not():
    """Springs and drag may let it creep on for seconds, ever more slowly."""
    creeps = [1e-4 * 0.955**n for n in range(100) if 1e-4 * 0.955**n > Pace().still]
    assert len(creeps) > 40
    assert told(creeps) is None


def test_one_that_rocks_on_has_slid_away_in_the_end():
    assert told([1e-3, 4e-4] * 50) == 80


def test_where_it_let_go_is_told_from_the_moving_table():
    rate, grip = math.radians(2.0), math.atan(0.8)
    time = np.arange(0.0, 2.0, 1 / 30)
    theta = grip - math.radians(1.5) + rate * time
    since = np.maximum(time - math.radians(1.5) / rate, 0.0)
    slid = GRAVITY * COS * rate / DRAG * since**2 / 2
    at = _held(TiltingSamples(time, theta, 0.0 * time, slid))
    assert grip <= at < grip + math.radians(0.5)
    assert _held(TiltingSamples(time[:1], theta[:1], time[:1], time[:1])) == theta[0]


def test_a_truck_that_hops_as_it_slides_has_not_slid_back(monkeypatch):
    """Seen with no wheel on the table it once counted as not slid at all, and then as at rest."""
    with level_table(make_truck(), TrialSettings(), usual_engine()) as table:
        run = Tilting(table, 0.0)
        monkeypatch.setattr(run, "_rig", SimpleNamespace(slips=lambda: [0.3, 0.4, 0.31, 0.32]))
        monkeypatch.setattr(run, "loads", [0.0, 5.0, 5.0, 0.0])
        assert run.slid == 0.31
        monkeypatch.setattr(run, "loads", [0.0] * 4)
        assert run.slid == 0.3
