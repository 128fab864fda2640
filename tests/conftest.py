"""The tests run on one BLAS thread, as the command line does.

Bullet has no build for every Python and system. Where it is absent, tests of what only it does are
not there to run: driving, its own traps, and one engine against the other.
"""

import os
from importlib.util import find_spec
from pathlib import Path

HERE = Path(__file__).parent
ONLY_BULLET = (
    "unit/engines/test_bullet.py",
    "unit/engines/test_both_engines.py",
    "unit/engines/test_springs.py",
    "unit/trials/test_slope_*.py",
    "unit/study/test_slopes.py",
    "physics/test_slope_*.py",
    "physics/test_trial_table.py",
    "product/test_slope_verb.py",
    "product/test_two_engines.py",
)
collect_ignore_glob = [] if find_spec("pybullet") else [str(HERE / name) for name in ONLY_BULLET]


def pytest_report_header() -> str:
    if not collect_ignore_glob:
        return "engines: pybullet and mujoco"
    return f"engines: mujoco; without pybullet {len(ONLY_BULLET)} groups of tests are left out"


os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
