"""A smaller run of bench_trial: the ratio holds, with room for a busy machine."""

from __future__ import annotations

import math
import sys
from pathlib import Path

import pytest

from support import INSTALLED, make_truck

sys.path.insert(0, str(Path(__file__).parent))
from bench_trial import measure

LEAST = {"bullet": 6.0, "mujoco": 1.2}  # times cheaper; MuJoCo's own step is most of its cost


@pytest.mark.parametrize("engine", INSTALLED)
def test_a_trial_is_cheaper_than_the_script_and_exact(engine):
    seen = measure(make_truck(), [0.0, math.pi / 2], engine)
    assert seen["script"].cost / seen["careful"].cost > LEAST[engine]
    assert math.degrees(seen["careful"].error.max()) <= 0.05
