"""The same trials on a running dask.distributed cluster, named by its scheduler's address.

Each worker thread of the cluster keeps one child process of our own (`pool`), so that crashes,
hangs and their causes come out just as on one machine, and trials see an environment without the
allocator setting that cluster launchers add (see `pool.child_environment`). Results are let go of
the moment they are delivered: then a worker killed later costs only the chunk it was at. By hand,
on one host, in the environment crossfall is installed in:

    dask scheduler --host 127.0.0.1 --port 8786
    dask worker tcp://127.0.0.1:8786 --nworkers 2 --nthreads 1
    crossfall sweep overnight --cluster tcp://127.0.0.1:8786
"""

from __future__ import annotations

import hashlib
import importlib
import threading
import time
from collections import deque
from collections.abc import Generator, Iterator
from concurrent.futures import CancelledError
from contextlib import suppress
from itertools import islice
from typing import Any

from crossfall.study.pool import TICK, PoolError, TrialLimits, WorkerPool, hello
from crossfall.study.task import Batch, Payload, Task, TrialOutcome
from crossfall.study.versions import version_disagreement

_CHUNK = 10  # trials sent at once: the cluster's own cost per message is shared between them
_AHEAD = 2  # chunks per thread of the cluster

_AWAY = "the cluster's scheduler went away; what was delivered is kept"

_GONE = (OSError, TimeoutError, RuntimeError, CancelledError)

Company = tuple[Payload, ...]
_worker_pools: dict[int, tuple[str, WorkerPool]] = {}  # one per thread of a cluster worker
_guard = threading.Lock()


def cluster_outcomes(
    batch: Batch, tasks: Iterator[Task], address: str, limits: TrialLimits
) -> Generator[list[TrialOutcome], None, None]:
    """Do the tasks on the cluster at `address`; yields as `pool.outcomes`.

    PoolError where no scheduler or worker answers, or a worker has other versions.
    """
    client = _connect(address)
    try:
        yield from _through(client, batch, tasks, limits)
    except _GONE as error:
        # What a client says of a scheduler that was killed hangs on what it was doing just then.
        raise PoolError(f"{_AWAY}: {error}" if str(error) else _AWAY) from error
    finally:
        with suppress(*_GONE):
            client.close(timeout=5)


def _through(
    client: Any, batch: Batch, tasks: Iterator[Task], limits: TrialLimits
) -> Generator[list[TrialOutcome], None, None]:
    waiting: deque[list[Task]] = deque()  # chunks to send again
    sent: dict[Any, list[Task]] = {}
    strikes: dict[int, int] = {}
    common = {**batch.common, **batch.local}
    size = batch.together * -(-_CHUNK // batch.together)
    _check_versions(client, batch, limits)
    while True:
        free = _AHEAD * max(1, sum(client.nthreads().values())) - len(sent)
        for _ in range(free):
            chunk = waiting.popleft() if waiting else list(islice(tasks, size))
            if not chunk:
                break
            work = [(t.place, t.payload, t.company) for t in chunk]
            future = client.submit(do_chunk, batch.method, common, work, limits, pure=False)
            sent[future] = chunk
        if not sent:
            client.run(end_worker_pools)
            return
        yield _collect(client, sent, waiting, strikes, limits)


def do_chunk(
    method: str,
    common: dict[str, Any],
    work: list[tuple[int, Payload, Company]],
    limits: TrialLimits,
) -> list[TrialOutcome]:
    """On a worker of the cluster: the chunk's outcomes, from this thread's own child process."""
    first = hello(method, common)
    pool = _pool_of_thread(first, limits)
    pool.tasks, pool.exhausted = (
        iter([Task(place, "", p, company) for place, p, company in work]),
        False,
    )
    done: list[TrialOutcome] = []
    try:
        pool.hire(1)
        while pool.busy():
            pool.feed()
            done += pool.collect()
    except BaseException:
        with _guard:
            _worker_pools.pop(threading.get_ident(), None)
        pool.dismiss()
        raise
    return done


def end_worker_pools() -> None:
    """On a worker of the cluster: end the child processes kept between chunks."""
    with _guard:
        for _, pool in _worker_pools.values():
            pool.dismiss()
        _worker_pools.clear()


def _pool_of_thread(first: bytes, limits: TrialLimits) -> WorkerPool:
    name, thread = hashlib.sha256(first).hexdigest(), threading.get_ident()
    with _guard:
        kept = _worker_pools.get(thread)
        if kept is not None and kept[0] == name:
            return kept[1]
        if kept is not None:
            kept[1].dismiss()
        pool = WorkerPool(first, iter(()), limits)
        _worker_pools[thread] = (name, pool)
        return pool


def _connect(address: str) -> Any:
    try:
        distributed: Any = importlib.import_module("distributed")
    except ImportError as error:
        raise PoolError("--cluster needs the extra: pip install 'crossfall[cluster]'") from error
    try:
        return distributed.Client(address, timeout=10, set_as_default=False)
    except (OSError, TimeoutError, ValueError) as error:
        raise PoolError(f"no scheduler answers at {address}: {error}") from error


def _check_versions(client: Any, batch: Batch, limits: TrialLimits) -> None:
    try:
        client.wait_for_workers(1, timeout=limits.start)
    except TimeoutError as error:
        raise PoolError("the cluster has no workers; start some and go on") from error
    for where, said in client.run(version_disagreement, batch.versions).items():
        if said:
            raise PoolError(f"{where}: {said}; the rows would not be comparable")


def _collect(
    client: Any,
    sent: dict[Any, list[Task]],
    waiting: deque[list[Task]],
    strikes: dict[int, int],
    limits: TrialLimits,
) -> list[TrialOutcome]:
    """What has arrived within a tick. A chunk the cluster lost is sent again, a trial at a time."""
    distributed: Any = importlib.import_module("distributed")
    began, arrived = time.monotonic(), []
    with suppress(TimeoutError), client.as_current():
        distributed.wait(list(sent), timeout=TICK, return_when="FIRST_COMPLETED")
    if client.status != "running" and time.monotonic() - began > TICK / 2:
        raise PoolError(_AWAY)
    for future in [f for f in sent if f.done()]:
        chunk = sent.pop(future)
        if future.status == "finished":
            arrived += future.result()
        elif future.status == "error":
            arrived += _strike(chunk, future.exception(), waiting, strikes, limits)
        else:
            waiting.append(chunk)  # lost or cancelled by the scheduler: no fault of the trials
        future.release()
    return arrived


def _strike(
    chunk: list[Task],
    error: BaseException,
    waiting: deque[list[Task]],
    strikes: dict[int, int],
    limits: TrialLimits,
) -> list[TrialOutcome]:
    if isinstance(error, PoolError):
        raise error
    if len(chunk) > 1:
        waiting.extend([task] for task in chunk)
        return []
    place = chunk[0].place
    strikes[place] = strikes.get(place, 0) + 1
    if strikes[place] < limits.crashes:
        waiting.append(chunk)
        return []
    cause = f"the cluster lost the worker, {strikes.pop(place)} times: {type(error).__name__}"
    return [TrialOutcome(place, "", cause, str(error)[:300], 0.0)]
