"""The night shift: takes a batch through a pool or a cluster and into the store.

Both engines are generators of outcomes and know nothing of the store; the store alone remembers,
so whatever dies, the same command goes on where it stopped.
"""

from __future__ import annotations

import os
import time
from collections import deque
from collections.abc import Callable, Generator, Iterator
from dataclasses import dataclass, field, replace
from pathlib import Path

from crossfall.study.pool import TrialLimits, outcomes
from crossfall.study.store import Store
from crossfall.study.task import Batch, Task, TrialOutcome

_WINDOW = 30.0  # s, over which the rate is taken


@dataclass(frozen=True)
class RunProgress:
    """How a run stands. known: found in the store, of which known_failed had failed.

    done, failed: by this run. rate: trials/s lately; seconds_left: nan while unknown.
    """

    total: int
    known: int = 0
    known_failed: int = 0
    done: int = 0
    failed: int = 0
    rate: float = 0.0
    seconds_left: float = float("nan")
    last_cause: str = ""

    @property
    def finished(self) -> int:
        """Trials of the batch that need no more doing."""
        return self.known + self.done + self.failed


@dataclass(frozen=True)
class RunResult:
    """What a run did. complete: nothing is left to do; seconds: wall clock."""

    batch_id: str
    progress: RunProgress
    complete: bool
    seconds: float


@dataclass
class _Tally:
    """Counts of a run, and times of the latest outcomes for the rate."""

    progress: RunProgress
    began: float = field(default_factory=time.monotonic)
    recent: deque[tuple[float, int]] = field(default_factory=deque)

    def known(self, done: int, failed: int) -> None:
        p = self.progress
        self.progress = replace(
            p, known=p.known + done + failed, known_failed=p.known_failed + failed
        )

    def count(self, arrived: list[TrialOutcome]) -> None:
        now, p = time.monotonic(), self.progress
        if arrived:
            self.recent.append((now, len(arrived)))
        while self.recent and now - self.recent[0][0] > _WINDOW:
            self.recent.popleft()
        rate = sum(n for _, n in self.recent) / max(min(now - self.began, _WINDOW), 1e-3)
        failed = [o for o in arrived if o.cause]
        p = replace(
            p,
            done=p.done + len(arrived) - len(failed),
            failed=p.failed + len(failed),
            rate=rate,
            last_cause=failed[-1].cause if failed else p.last_cause,
        )
        left = (p.total - p.finished) / rate if rate > 0 else float("nan")
        self.progress = replace(p, seconds_left=left)


def run_batch(
    batch: Batch,
    path: Path,
    *,
    workers: int | None = None,
    cluster: str = "",
    limits: TrialLimits | None = None,
    retry_failed: bool = False,
    watch: Callable[[RunProgress], None] | None = None,
    stop: Callable[[], bool] = lambda: False,
) -> RunResult:
    """Do what is not yet done of a batch and remember it in the store at `path`.

    workers: child processes, one per core if not given. cluster: address of a running scheduler,
    used instead. retry_failed: do failed trials again. watch: called after every tick.
    stop: asked every tick; when true the run ends with what is finished kept.
    Raises StoreError where the store cannot be written, PoolError where no child starts.
    """
    began, limits = time.monotonic(), limits or TrialLimits()
    with Store(path) as store:
        batch_id = store.open_batch(batch)
        if retry_failed:
            store.forget_failures(batch_id)
        tally = _Tally(RunProgress(batch.total))
        in_flight: dict[int, Task] = {}

        def left() -> Iterator[Task]:
            for task in store.undone(batch.tasks(), tally.known):
                in_flight[task.place] = task
                yield task

        engine = _engine(batch, left(), workers, cluster, limits)
        try:
            for arrived in engine:
                store.add(batch, [(in_flight.pop(o.place), o) for o in arrived])
                tally.count(arrived)
                if watch is not None:
                    watch(tally.progress)
                if stop():
                    break
            else:
                store.sync()
                return RunResult(batch_id, tally.progress, True, time.monotonic() - began)
        finally:
            engine.close()
        return RunResult(batch_id, tally.progress, False, time.monotonic() - began)


def _engine(
    batch: Batch, tasks: Iterator[Task], workers: int | None, cluster: str, limits: TrialLimits
) -> Generator[list[TrialOutcome], None, None]:
    if cluster:
        from crossfall.study.cluster import cluster_outcomes

        return cluster_outcomes(batch, tasks, cluster, limits)
    return outcomes(batch, tasks, workers or processors(), limits)


def processors() -> int:
    """How many this process may use; where the system does not say, how many there are."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
