"""The same batch on a real scheduler and workers, started by hand as the manual says."""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

import pytest

from batches import QUICK, burning, misbehaving
from crossfall.study.cluster import cluster_outcomes
from crossfall.study.export import export
from crossfall.study.pool import PoolError
from crossfall.study.runner import run_batch
from crossfall.study.store import status
from crossfall.study.task import make_batch
from shooting import ROOT, all_gone, workers_of


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])


def wait_for(port: int) -> None:
    """Until something listens there: a start can take long on a busy machine."""
    deadline = time.monotonic() + 90
    while time.monotonic() < deadline:
        with socket.socket() as probe:
            if probe.connect_ex(("127.0.0.1", port)) == 0:
                return
        time.sleep(0.1)
    raise AssertionError("the scheduler did not start")


@contextmanager
def process(*arguments: str, folder: Path) -> Iterator[subprocess.Popen[bytes]]:
    """A command of the engine, in a session of its own; ended with everything it started."""
    env = dict(os.environ, PYTHONPATH=f"{ROOT / 'sim'}{os.pathsep}{ROOT / 'tests'}")
    env["DASK_DISTRIBUTED__WORKER__DAEMON"] = "False"
    command = [sys.executable, "-m", "distributed.cli.dask_" + arguments[0], *arguments[1:]]
    with (folder / f"{arguments[0]}.log").open("ab") as log:
        started = subprocess.Popen(
            command, env=env, cwd=folder, stdout=log, stderr=log, start_new_session=True
        )
        try:
            yield started
        finally:
            if started.poll() is None:
                os.killpg(started.pid, signal.SIGKILL)
            started.wait()


@contextmanager
def cluster(folder: Path, workers: int = 2) -> Iterator[tuple[str, list[subprocess.Popen[bytes]]]]:
    port = free_port()
    address = f"tcp://127.0.0.1:{port}"
    with ExitStack() as open_processes:
        scheduler = ["scheduler", "--host", "127.0.0.1", "--port", str(port), "--no-dashboard"]
        open_processes.enter_context(process(*scheduler, folder=folder))
        wait_for(port)
        worker = ["worker", address, "--nthreads", "1", "--no-dashboard"]
        crew = [
            open_processes.enter_context(process(*worker, folder=folder)) for _ in range(workers)
        ]
        yield address, crew


def table(store: Path) -> bytes:
    export(store, store.parent / "table.parquet")
    return (store.parent / "table.parquet").read_bytes()


def test_results_are_the_same_bit_for_bit_also_when_a_worker_is_killed(tmp_path: Path) -> None:
    here, there = tmp_path / "here" / "trials.db", tmp_path / "there" / "trials.db"
    batch = burning(300, 15.0)
    run_batch(batch, here, workers=2)
    killed: list[int] = []
    with cluster(tmp_path) as (address, crew):

        def watch(progress: object) -> None:
            if status(there).done > 60 and not killed:
                # The launcher of a worker minds the worker itself: kill what does the work.
                killed.extend(workers_of(crew[0].pid) or [crew[0].pid])
                for pid in killed:
                    os.kill(pid, signal.SIGKILL)

        result = run_batch(batch, there, cluster=address, watch=watch)
    assert killed
    assert result.complete
    assert result.progress.failed == 0
    assert table(here) == table(there)


def test_bad_trials_have_the_same_causes_as_on_one_machine(tmp_path: Path) -> None:
    batch = misbehaving(40, {3: "raise", 7: "die", 12: "leave", 25: "hang"})
    here, there = tmp_path / "here" / "trials.db", tmp_path / "there" / "trials.db"
    run_batch(batch, here, workers=1, limits=QUICK)
    environment = make_batch("env", "trial_methods:environment", {}, lambda: iter([{"x": 1}]), 1)
    with cluster(tmp_path, workers=1) as (address, crew):
        run_batch(batch, there, cluster=address, limits=QUICK)
        (seen,) = [
            o
            for some in cluster_outcomes(environment, environment.tasks(), address, QUICK)
            for o in some
        ]
        children = [c for w in workers_of(crew[0].pid) for c in workers_of(w)]
    assert table(here) == table(there)
    assert seen.rows == '[{"MALLOC_TRIM_THRESHOLD_":"","OMP_NUM_THREADS":"1"}]'
    assert all_gone(children)


def test_a_cluster_that_is_not_there_is_said_in_a_sentence(tmp_path: Path) -> None:
    address = f"tcp://127.0.0.1:{free_port()}"
    began = time.monotonic()
    with pytest.raises(PoolError, match="no scheduler answers"):
        run_batch(burning(5), tmp_path / "trials.db", cluster=address)
    assert time.monotonic() - began < 60


def test_a_worker_with_other_versions_is_refused(tmp_path: Path) -> None:
    batch = make_batch(
        "v",
        "trial_methods:mixed",
        {"bad": {}},
        lambda: iter([{"x": 1}]),
        1,
        versions={"numpy": "0.1"},
    )
    with (
        cluster(tmp_path, workers=1) as (address, _),
        pytest.raises(PoolError, match=r"numpy .* instead of 0\.1"),
    ):
        run_batch(batch, tmp_path / "trials.db", cluster=address)
