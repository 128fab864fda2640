"""A smaller run of bench_trial: the ratio holds, with room for a busy machine."""

from __future__ import annotations

import math
import sys
from pathlib import Path

from support import make_truck

sys.path.insert(0, str(Path(__file__).parent))
from bench_trial import measure


def test_a_trial_is_many_times_faster_than_the_script():
    seen = measure(make_truck(), [0.0, math.pi / 2])
    assert seen.plain / seen.ours > 4.0
    assert math.degrees(seen.error.max()) <= 0.05
