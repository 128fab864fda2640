"""A pool of child processes that outlives any of them.

Each child says when each trial is finished, so the one it was at when it died is known: that one
is tried again a few times and then recorded with its cause, and the rest of what the child held
goes to the others. A trial past its time limit is ended with its child.
"""

from __future__ import annotations

import json
import os
import queue
import signal
import subprocess
import sys
import tempfile
import threading
import time
from collections import deque
from collections.abc import Generator, Iterator
from dataclasses import dataclass, field
from typing import Any

from crossfall.study.task import Batch, Payload, Task, TrialOutcome
from crossfall.truck.errors import StoppedError

TICK = 0.2  # s, how long to wait for an answer before looking at the clock
_AHEAD = 0.25  # s of work each child holds, so that it never waits for the next trial
DEEPEST = 50  # trials held by a child at most
NOTES = 1 << 20  # bytes of a child's chatter kept
PIPE = 48_000  # bytes a busy child may have unread: well under what a pipe takes without blocking


@dataclass(frozen=True)
class TrialLimits:
    """When to give a trial up.

    trial: s, past which a trial counts as hung. crashes: deaths of the child after which the
    trial is recorded as failed. hangs: the same for the time limit; fewer, for each costs the
    whole limit. start: s a child may take to import what it needs.
    """

    trial: float = 120.0
    crashes: int = 3
    hangs: int = 2
    start: float = 120.0


class PoolError(StoppedError):
    """No child process can be started, or no scheduler answers."""


@dataclass(eq=False)
class Child:
    """One child process and the trials it holds, in the order it does them.

    company: that it was told of last. listener: reads what it says.
    """

    process: subprocess.Popen[bytes]
    notes: Any  # its standard error, a temporary file
    held: deque[tuple[Task, int]] = field(default_factory=deque)  # with bytes sent
    ready: bool = False
    since: float = 0.0  # when the first trial held was begun
    partial: bytes = b""
    company: tuple[Payload, ...] = ()
    listener: threading.Thread | None = None


def hello(method: str, common: dict[str, Any]) -> bytes:
    """The first line every child is sent."""
    first = {"path": sys.path, "method": method, "common": common}
    return json.dumps(first, separators=(",", ":")).encode() + b"\n"


def start_child(first: bytes) -> Child:
    """A new child, in a session of its own so that Ctrl-C reaches the runner only."""
    notes = tempfile.TemporaryFile()  # noqa: SIM115 - closed with the child
    process = subprocess.Popen(
        [sys.executable, "-m", "crossfall.study.worker"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=notes,
        start_new_session=True,
        creationflags=getattr(subprocess, "CREATE_NEW_PROCESS_GROUP", 0),  # the same on Windows
        env=child_environment(),
    )
    child = Child(process, notes, since=time.monotonic())
    _write(child, first)
    return child


def child_environment() -> dict[str, str]:
    """One thread a child, and the allocator as glibc means it.

    Cluster launchers set MALLOC_TRIM_THRESHOLD_, which stops glibc from raising its mmap
    threshold and doubles the time of a trial.
    """
    import crossfall

    env = dict(os.environ, OMP_NUM_THREADS="1", OPENBLAS_NUM_THREADS="1", MKL_NUM_THREADS="1")
    env.pop("MALLOC_TRIM_THRESHOLD_", None)
    root = os.path.dirname(os.path.dirname(os.path.abspath(crossfall.__file__)))
    env["PYTHONPATH"] = os.pathsep.join(filter(None, [root, env.get("PYTHONPATH")]))
    return env


def end_child(child: Child) -> None:
    """Kill it and take its remains away."""
    child.process.kill()
    child.process.wait()
    streams = [child.process.stdin, child.process.stdout, child.notes]
    if child.listener is not None:
        child.listener.join(1.0)
        if child.listener.is_alive():  # a child of the child has its pipe
            streams.remove(child.process.stdout)
    for stream in streams:
        try:
            if stream is not None:
                stream.close()
        except OSError:
            pass  # unsent bytes for a child that is gone


def outcomes(
    batch: Batch, tasks: Iterator[Task], workers: int, limits: TrialLimits
) -> Generator[list[TrialOutcome], None, None]:
    """Do the tasks on `workers` children; yields what arrived in each tick, maybe nothing.

    PoolError where children die before they are ready.
    """
    first = hello(batch.method, {**batch.common, **batch.local})
    pool = WorkerPool(first, tasks, limits, batch.together)
    try:
        pool.hire(workers)
        while pool.busy():
            pool.feed()
            yield pool.collect()
    finally:
        pool.dismiss()


class WorkerPool:
    """The children of one batch, what waits for them, and the strikes against each trial."""

    def __init__(
        self, first: bytes, tasks: Iterator[Task], limits: TrialLimits, together: int = 1
    ) -> None:
        self.first, self.tasks, self.limits = first, tasks, limits
        self.together = together
        self.waiting: deque[Task] = deque()  # given back by children that died
        self.exhausted = False
        self.children: list[Child] = []
        self.strikes: dict[int, list[str]] = {}
        self.false_starts = 0
        self.took = _AHEAD  # s, running mean of a trial
        self.heard: queue.SimpleQueue[tuple[Child, bytes]] = queue.SimpleQueue()

    def hire(self, workers: int) -> None:
        """Bring the number of children up to `workers`."""
        while len(self.children) < workers:
            child = start_child(self.first)
            child.listener = threading.Thread(target=_listen, args=(child, self.heard), daemon=True)
            child.listener.start()
            self.children.append(child)

    def busy(self) -> bool:
        """Whether anything is left to do."""
        if any(c.held for c in self.children) or self.waiting:
            return True
        task = self._next()
        if task is not None:
            self.waiting.appendleft(task)
        return task is not None

    def feed(self) -> None:
        """Keep every child supplied a little ahead of its work."""
        depth = int(min(max(_AHEAD / max(self.took, 1e-6), 1), DEEPEST))
        for child in self.children:
            if not child.ready or len(child.held) > depth // 2:
                continue
            _trim(child)
            self._hand_over(child, self._take(depth - len(child.held)))

    def collect(self) -> list[TrialOutcome]:
        """Wait for answers up to a tick; replace children that died or hang."""
        arrived: list[TrialOutcome] = []
        for child, data in _all_heard(self.heard):
            if child not in self.children:  # what one that was buried still had to say
                continue
            arrived += self._answers(child, data)
            if not data:
                arrived += self._lost(child, _last_words(child))
        now = time.monotonic()
        for child in list(self.children):
            allowed = self.limits.trial if child.ready else self.limits.start
            if (child.held or not child.ready) and now - child.since > allowed:
                arrived += self._lost(child, f"took longer than {allowed:g} s")
        return arrived

    def dismiss(self) -> None:
        """End all children."""
        for child in self.children:
            end_child(child)
        self.children.clear()

    def _take(self, free: int) -> list[Task]:
        """The next tasks, `free` of them or up to the end of what goes together."""
        taken: list[Task] = []
        while (task := self._next()) is not None:
            apart = not taken or task.place // self.together != taken[-1].place // self.together
            if apart and len(taken) >= free:
                self.waiting.appendleft(task)
                break
            taken.append(task)
        return taken

    def _next(self) -> Task | None:
        if self.waiting:
            return self.waiting.popleft()
        task = None if self.exhausted else next(self.tasks, None)
        self.exhausted = task is None
        return task

    def _hand_over(self, child: Child, tasks: list[Task]) -> None:
        unread = sum(size for _, size in child.held)
        for index, task in enumerate(tasks):
            line = _said(child, task)
            if child.held and unread + len(line) > PIPE:
                self.waiting.extendleft(reversed(tasks[index:]))
                return
            if not child.held:
                child.since = time.monotonic()
            unread += len(line)
            child.held.append((task, len(line)))
            child.company = task.company
            _write(child, line)

    def _answers(self, child: Child, data: bytes) -> list[TrialOutcome]:
        *lines, child.partial = (child.partial + data).split(b"\n")
        found = []
        for line in lines:
            child.since = time.monotonic()
            value = json.loads(line)
            if value == "ready":
                child.ready, self.false_starts = True, 0
                continue
            outcome = TrialOutcome(*value)
            child.held.popleft()
            self.strikes.pop(outcome.place, None)
            self.took += 0.05 * (outcome.took - self.took)
            found.append(outcome)
        return found

    def _lost(self, child: Child, why: str) -> list[TrialOutcome]:
        """Replace a child; strike the trial it was at and give the others back."""
        detail = _tail(child)
        self.children.remove(child)
        end_child(child)
        if not child.ready:
            self.false_starts += 1
            if self.false_starts >= self.limits.crashes:
                raise PoolError(f"a worker process cannot start ({why}): {detail or 'no message'}")
        lost = [task for task, _ in child.held]
        given_up = self._strike(lost[0], why, detail) if lost else None
        self.waiting.extendleft(reversed(lost[1:] if given_up else lost))
        self.hire(len(self.children) + 1)
        return [given_up] if given_up else []

    def _strike(self, task: Task, why: str, detail: str) -> TrialOutcome | None:
        strikes = self.strikes.setdefault(task.place, [])
        strikes.append(why)
        hung = sum(s.startswith("took longer") for s in strikes)
        if hung < self.limits.hangs and len(strikes) - hung < self.limits.crashes:
            return None
        del self.strikes[task.place]
        # Said in one order, so that the table is the same whichever came first.
        counts = ((s, strikes.count(s)) for s in sorted(set(strikes)))
        cause = "; ".join(s if n == 1 else f"{s}, {n} times" for s, n in counts)
        return TrialOutcome(task.place, "", cause, detail, 0.0)


def _said(child: Child, task: Task) -> bytes:
    """The lines that give a child a task, with its company unless the child was just told of it."""
    if len(task.company) < 2:
        return _line([task.place, task.payload])
    number = task.company.index(task.payload)
    known = task.company == child.company
    return (b"" if known else _line({"company": task.company})) + _line([task.place, number])


def _line(value: Any) -> bytes:
    return json.dumps(value, separators=(",", ":")).encode() + b"\n"


def _write(child: Child, line: bytes) -> None:
    assert child.process.stdin is not None
    try:
        child.process.stdin.write(line)
        child.process.stdin.flush()
    except OSError:
        pass  # it died; reading from it will say so


def _listen(child: Child, heard: queue.SimpleQueue[tuple[Child, bytes]]) -> None:
    """Pass on what a child says, and b"" once it is gone; pipes can be waited for on one system
    only, so each has a thread."""
    assert child.process.stdout is not None
    data = b"-"
    while data:
        try:
            data = os.read(child.process.stdout.fileno(), 1 << 16)
        except (OSError, ValueError):  # closed under it
            data = b""
        heard.put((child, data))


def _all_heard(heard: queue.SimpleQueue[tuple[Child, bytes]]) -> Iterator[tuple[Child, bytes]]:
    """What there is to hear, after a tick at most."""
    try:
        yield heard.get(timeout=TICK)
        while True:
            yield heard.get_nowait()
    except queue.Empty:
        return


def _last_words(child: Child) -> str:
    try:
        status = child.process.wait(timeout=5.0)
    except subprocess.TimeoutExpired:
        return "the worker closed its pipe"
    if status < 0:
        names = {int(s): s.name for s in signal.Signals}
        return f"the worker died of {names.get(-status, f'signal {-status}')}"
    return f"the worker left with status {status}"


def _trim(child: Child) -> None:
    """Forget old chatter: the file offset is shared with the child, so it goes on from there."""
    if os.fstat(child.notes.fileno()).st_size > NOTES:
        os.lseek(child.notes.fileno(), 0, os.SEEK_SET)
        os.ftruncate(child.notes.fileno(), 0)


def _tail(child: Child) -> str:
    """The end of what it wrote on standard error, on one line."""
    child.notes.seek(0, os.SEEK_END)
    child.notes.seek(max(0, child.notes.tell() - 2000))
    text = child.notes.read().decode(errors="replace")
    return " | ".join(line.strip() for line in text.splitlines()[-8:] if line.strip())
