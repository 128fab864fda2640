"""What holds for all tests: one BLAS thread, as on the command line, where a browser is, and which
engines there are.

Bullet has no build for every Python and system. Where it is absent, tests of what only it does are
not there to run: driving, its own traps, and one engine against the other.
"""

from __future__ import annotations

import os
from importlib.util import find_spec
from pathlib import Path

import pytest

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
WITH_BULLET = find_spec("pybullet") is not None
collect_ignore_glob = [] if WITH_BULLET else [str(HERE / name) for name in ONLY_BULLET]


def pytest_report_header() -> str:
    if WITH_BULLET:
        return "engines: pybullet and mujoco"
    return "engines: mujoco; tests of what is done in pybullet only are left out"


os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

BROWSER = "chromium"  # the fixture of every test that needs one


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Without Bullet, what only it does is not asked; where no browser can be had, one test of the
    page says so for all of them."""
    if not WITH_BULLET:
        only = [i for i in items if i.get_closest_marker("bullet")]
        config.hook.pytest_deselected(items=only)
        items[:] = [i for i in items if i not in only]
    page = [i for i in items if BROWSER in getattr(i, "fixturenames", ())]
    if not page:
        return
    from browsers import HOW, browser_path

    if browser_path():
        return

    def without_a_browser() -> None:
        pytest.fail(HOW, pytrace=False)

    one = pytest.Function.from_parent(
        page[0].parent, name="test_a_browser_can_be_had", callobj=without_a_browser
    )
    config.hook.pytest_deselected(items=page)
    items[:] = [one, *(i for i in items if i not in page)]
