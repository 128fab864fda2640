"""A short run of the spoiled files; `spoiling.py` by hand does thousands."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from random import Random

from mutations import spoiled, within
from right_files import KINDS, READINGS, whole
from spoiling import Case, beside

from shooting import ROOT

FIRST, COUNT = 1, 30


def test_whatever_stands_in_a_file_is_answered_or_refused() -> None:
    """In a process of its own: it forks, which a test process full of threads should not."""
    done = subprocess.run(
        [sys.executable, str(ROOT / "tests" / "fuzz" / "spoiling.py"), str(FIRST), str(COUNT)],
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


def test_every_kind_of_file_is_right_before_it_is_spoiled(tmp_path) -> None:
    """Else a fuzzer only ever sees its own mistakes refused."""
    for n, kind in enumerate(KINDS):
        folder = tmp_path / kind
        folder.mkdir()
        asked = Case(n, kind, folder, whole(kind, Random(n), folder)[2])
        assert beside(asked, folder)[0] in (0, 1), (kind, (folder / ".err").read_text())
