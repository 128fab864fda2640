"""A lock is one process's alone, can be asked about, and goes with its process."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

from crossfall.truck.locks import is_locked, lock

HOLD = """
import os, sys
from crossfall.truck.locks import lock
print(lock(os.open(sys.argv[1], os.O_RDWR)), flush=True)
sys.stdin.read()
"""


def test_a_lock_is_one_process_s_alone_and_goes_with_it(tmp_path: Path) -> None:
    path = tmp_path / "x.lock"
    path.touch()
    handle = os.open(path, os.O_RDWR)
    assert not is_locked(handle)
    other = subprocess.Popen(
        [sys.executable, "-c", HOLD, str(path)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert other.stdout is not None
    assert other.stdout.readline().strip() == "True"
    assert is_locked(handle)
    assert not lock(handle)
    other.kill()
    other.communicate()
    assert not is_locked(handle)
    assert lock(handle)
    os.close(handle)
