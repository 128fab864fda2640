"""Thousands of trials in one process leave nothing behind."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

SCRIPT = Path(__file__).parents[1] / "benchmarks" / "many_trials.py"


def test_memory_stays_flat():
    # Worlds opened and closed, and states kept and forgotten within one world.
    done = subprocess.run(
        [sys.executable, str(SCRIPT), "--worlds", "40", "--short", "1500"],
        capture_output=True,
        text=True,
        check=True,
        env={**os.environ, "OMP_NUM_THREADS": "1"},
    )
    grown = {k: float(v) for k, v in (line.split("=") for line in done.stdout.split())}
    assert grown["worlds_grown_mb"] < 3.0
    assert grown["trials_grown_mb"] < 3.0
    assert grown["files_left"] == 0.0
