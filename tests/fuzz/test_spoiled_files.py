"""A short run of the spoiled files; `spoiling.py` by hand does thousands."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from random import Random

import pytest
from mutations import spoiled, within
from spoiling import READINGS

from shooting import ROOT

COUNT = 20  # of each slice


@pytest.mark.parametrize("first", [1, 2001, 4001])
def test_whatever_stands_in_a_file_is_answered_or_refused(first: int) -> None:
    """In a process of its own: it forks, which a test process full of threads should not."""
    done = subprocess.run(
        [sys.executable, str(ROOT / "tests" / "fuzz" / "spoiling.py"), str(first), str(COUNT)],
        env={**os.environ, "PYTHONPATH": os.pathsep.join([str(ROOT / "sim"), str(ROOT / "tests")])},
        capture_output=True,
        text=True,
    )
    faults = [json.loads(line) for line in done.stdout.splitlines() if line.startswith("{")]
    assert faults == []
    assert (done.returncode, done.stderr) == (0, "")
    assert f"{COUNT} files" in done.stdout


def test_the_same_number_spoils_in_the_same_way() -> None:
    for how in (spoiled, within):
        made = [how(Random(n), READINGS) for n in range(50)]
        assert made == [how(Random(n), READINGS) for n in range(50)]
        assert len(set(made)) > 40
