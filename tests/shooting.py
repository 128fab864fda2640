"""A runner in a process of its own, and the means to kill it and its workers at any moment."""

from __future__ import annotations

import collections
import os
import random
import resource
import signal
import sqlite3
import subprocess
import sys
import time
from contextlib import closing, suppress
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
WORKERS = 2


def start(
    store: Path, count: int, ms: float, diary: Path | None = None, *, limit_bytes: int = 0
) -> subprocess.Popen[bytes]:
    """A runner in a process of its own."""
    command = [sys.executable, str(ROOT / "tests" / "batches.py"), str(store), str(count)]
    command += ["--ms", str(ms), "--workers", str(WORKERS)]
    command += ["--diary", str(diary)] if diary else []
    env = dict(os.environ, PYTHONPATH=f"{ROOT / 'sim'}{os.pathsep}{ROOT / 'tests'}")

    def limit() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (limit_bytes, limit_bytes))

    return subprocess.Popen(
        command,
        env=env,
        stderr=subprocess.PIPE,
        start_new_session=True,
        preexec_fn=limit if limit_bytes else None,
    )


def workers_of(runner: int) -> list[int]:
    """Children of a process, whichever of its threads started them."""
    found: list[int] = []
    for listing in Path(f"/proc/{runner}/task").glob("*/children"):
        with suppress(OSError):
            found += map(int, listing.read_text().split())
    return found


def kill(pids: list[int]) -> None:
    for pid in pids:
        with suppress(ProcessLookupError):
            os.kill(pid, signal.SIGKILL)


def numbers_done(store: Path) -> set[int]:
    """x of every trial in the store, read the way any other program would."""
    if not store.exists():
        return set()
    with closing(sqlite3.connect(f"{store.as_uri()}?mode=ro", uri=True, timeout=30)) as db:
        if not db.execute("SELECT 1 FROM sqlite_master WHERE name = 'trial'").fetchone():
            return set()
        query = "SELECT json_extract(payload, '$.x') FROM trial"
        return {x for (x,) in db.execute(query)}


def times_begun(diary: Path) -> collections.Counter[int]:
    text = diary.read_text() if diary.exists() else ""
    return collections.Counter(map(int, text.split()))


def all_gone(pids: list[int], seconds: float = 5.0) -> bool:
    """Whether these processes end within some seconds; one that only awaits burial is gone."""
    deadline = time.monotonic() + seconds
    while any(map(_alive, pids)) and time.monotonic() < deadline:
        time.sleep(0.01)
    return not any(map(_alive, pids))


def _alive(pid: int) -> bool:
    try:
        return Path(f"/proc/{pid}/stat").read_text().rpartition(")")[2].split()[0] != "Z"
    except OSError:
        return False


def shoot(store: Path, count: int, ms: float, kills: int, longest: float, seed: int) -> int:
    """Kill at random until `kills` have been made, starting again whenever the runner is gone.

    Checks on the way that nothing in the store at a restart is done again; returns how many
    trials were begun more than once.
    """
    chance = random.Random(seed)
    diary = store.parent / "diary"
    made = 0
    while made < kills:
        kept, begun = numbers_done(store), times_begun(diary)
        runner = start(store, count, ms, diary)
        targets: list[int] = []
        while runner.poll() is None and made < kills:
            time.sleep(chance.uniform(0.0, longest))
            workers = workers_of(runner.pid)
            what = chance.choice(["runner", "worker", "both"])
            targets = [] if what == "worker" else [runner.pid]
            targets += [] if what == "runner" else workers[: chance.randint(1, WORKERS)]
            if runner.poll() is None and targets:
                kill(targets)
                made += 1
            if runner.pid in targets:
                runner.wait()
                assert all_gone(workers), "workers outlived their runner"
        if made == kills:
            kill([runner.pid])
        assert runner.wait() in (0, -signal.SIGKILL), runner.stderr and runner.stderr.read()
        again = [x for x in kept if times_begun(diary)[x] > begun[x]]
        assert again == [], "a trial in the store was done again"
        assert kept <= numbers_done(store), "a trial was lost from the store"
        if len(kept) == count:
            break
    return made
