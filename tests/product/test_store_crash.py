"""Kill the runner, its workers, or both, at any moment: the table comes out the same."""

from __future__ import annotations

import signal
import time
from pathlib import Path

from batches import burning
from crossfall.study.export import export
from crossfall.study.runner import run_batch
from crossfall.study.store import is_running, status
from shooting import WORKERS, all_gone, shoot, start, times_begun, workers_of


def tables(store: Path) -> tuple[bytes, bytes]:
    names = [store.parent / "table.parquet", store.parent / "table.csv"]
    for name in names:
        export(store, name)
    return names[0].read_bytes(), names[1].read_bytes()


def wait_for(store: Path, trials: int) -> None:
    """Until that many trials are kept, seen from outside as a second terminal would."""
    deadline = time.monotonic() + 30
    while time.monotonic() < deadline:
        try:
            if status(store).done >= trials:
                return
        except Exception:
            pass
        time.sleep(0.02)
    raise AssertionError("the runner made no progress")


def test_random_kills_leave_the_same_table(tmp_path: Path) -> None:
    count, ms, kills = 900, 15.0, 12  # more than gets done between the kills
    store, calm = tmp_path / "shot" / "trials.db", tmp_path / "calm" / "trials.db"
    store.parent.mkdir()
    diary = store.parent / "diary"
    assert shoot(store, count, ms, kills, longest=0.9, seed=7) == kills
    assert start(store, count, ms, diary).wait() == 0
    begun = times_begun(diary)
    assert set(begun) == set(range(count))
    # Each kill can cost what its workers were at and had just handed over, and no more.
    assert sum(begun.values()) - count <= 2 * WORKERS * kills
    run_batch(burning(count, ms, diary), calm, workers=WORKERS)
    assert tables(store) == tables(calm)


def test_an_interrupt_ends_with_the_work_kept(tmp_path: Path) -> None:
    store = tmp_path / "trials.db"
    runner = start(store, 400, 10.0)
    wait_for(store, 20)
    assert is_running(store)
    workers = workers_of(runner.pid)
    runner.send_signal(signal.SIGINT)
    assert runner.wait(timeout=10) == 3
    assert all_gone(workers)
    kept = status(store)
    assert 20 <= kept.done < 400
    assert not kept.running
    assert start(store, 400, 10.0).wait() == 0
    assert status(store).done == 400


def test_a_full_disk_is_said_in_a_sentence_and_the_rest_is_done_when_there_is_room(
    tmp_path: Path,
) -> None:
    store, calm = tmp_path / "full" / "trials.db", tmp_path / "calm" / "trials.db"
    store.parent.mkdir()
    runner = start(store, 3000, 0.1, limit_bytes=600_000)
    assert runner.wait(timeout=60) == 4
    assert runner.stderr is not None
    said = runner.stderr.read().decode().splitlines()
    assert len(said) == 1
    assert "disk is full" in said[0]
    assert "same command again" in said[0]
    kept = status(store).done
    assert 0 < kept < 3000
    assert start(store, 3000, 0.1).wait() == 0
    assert status(store).done == 3000
    run_batch(burning(3000, 0.1), calm, workers=WORKERS)
    assert tables(store) == tables(calm)


def test_two_runners_do_not_share_a_store(tmp_path: Path) -> None:
    store = tmp_path / "trials.db"
    first = start(store, 400, 10.0)
    wait_for(store, 1)
    second = start(store, 400, 10.0)
    assert second.wait(timeout=30) == 4
    assert second.stderr is not None
    assert b"another run is writing" in second.stderr.read()
    first.send_signal(signal.SIGKILL)
    first.wait()
    assert run_batch(burning(400, 10.0), store, workers=1, stop=lambda: True).progress.total == 400
