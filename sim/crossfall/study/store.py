"""Where trials are remembered: one sqlite file per folder of results.

A trial is found by its content address, so it is done once whatever batch asks for it. One
process writes, any number read while it does. What the runner has been told is committed within
milliseconds, so kill -9 costs only the trials in flight; the disk is made to keep it once a
second, which is what a power cut can cost. Write-ahead logging needs a local disk.

    batch   one line per set of trials asked for, newest last
    plan    which trial stands on which line of a batch's table
    trial   address -> payload, rows or cause, and what they came from; took and finished are
            clock times and stay out of every exported table
"""

from __future__ import annotations

import errno
import json
import os
import sqlite3
import time
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import closing, contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path

from crossfall.study.task import Batch, Task, TrialOutcome, canonical, value_digest
from crossfall.truck.errors import InputError, Problem, StoppedError
from crossfall.truck.locks import is_locked, lock

_FORMAT = 1  # of the tables below; a store of another format is refused
BLOCKS = "closed form"  # method of batches whose tasks are blocks of trials (see `blocks`)
CHANGED = "the truck, the scenario or crossfall itself is not what it was: sweep does the rest anew"
_KNOWN = 200  # trials looked up at once
_FULL = ("full", "disk i/o")  # what sqlite says when the disk takes no more

_TABLES = """
CREATE TABLE batch (id TEXT PRIMARY KEY, name TEXT, method TEXT, spec TEXT, versions TEXT,
    total INTEGER, opened REAL);
CREATE TABLE plan (batch TEXT, place INTEGER, key TEXT, PRIMARY KEY (batch, place)) WITHOUT ROWID;
CREATE TABLE trial (key TEXT PRIMARY KEY, scenario TEXT, method TEXT, spec TEXT, versions TEXT,
    seed INTEGER, payload TEXT, rows TEXT, cause TEXT, detail TEXT, took REAL, finished REAL);
CREATE INDEX trial_finished ON trial (finished);
"""


class StoreError(StoppedError):
    """The store cannot be written: a full disk, or another run at work. Nothing is lost."""


@dataclass(frozen=True)
class BatchStatus:
    """How far a batch has got. rate: trials/s over the last minute; seconds_left: or nan.

    causes: (cause, how often), commonest first. running: whether a run is writing now.
    last: unix time of the newest trial, or 0. changed: the store was last filled for something
    else, as before the truck or the scenario was edited.
    """

    name: str
    method: str
    total: int
    done: int
    failed: int
    rate: float
    seconds_left: float
    causes: tuple[tuple[str, int], ...]
    running: bool
    last: float
    changed: bool = False


@dataclass(frozen=True)
class TrialRecord:
    """One line of a batch's plan that has been done, as stored. payload, rows: JSON text."""

    place: int
    key: str
    method: str
    spec: str
    versions: str
    seed: int | None
    payload: str
    rows: str
    cause: str


class Store:
    """The writing end. Use as a context manager; StoreError where another run is writing."""

    def __init__(self, path: Path) -> None:
        self.path = path
        _no_folder(path)
        self._lock = _take_lock(path)
        try:
            with _clear_errors(path):
                self._db = _connect(path)
        except BaseException:
            os.close(self._lock)
            raise
        self._synced = time.monotonic()

    def __enter__(self) -> Store:
        return self

    def __exit__(self, *exception: object) -> None:
        self.close()

    def close(self) -> None:
        """Let go of the file. A full disk must not hide what is already being reported."""
        with suppress(sqlite3.Error):
            self._db.close()
        os.close(self._lock)

    def open_batch(self, batch: Batch) -> str:
        """Write the batch's plan, unless it is there; returns the batch's id."""
        keys = [task.key for task in batch.tasks()]
        name = _id_of(batch, keys)
        with _clear_errors(self.path), self._db:
            found = self._db.execute("SELECT 1 FROM batch WHERE id = ?", (name,)).fetchone()
            # Asked for last is shown first, so an old batch taken up again moves to the end.
            self._db.execute("DELETE FROM batch WHERE id = ?", (name,))
            self._db.execute(
                "INSERT INTO batch VALUES (?, ?, ?, ?, ?, ?, ?)",
                (
                    name,
                    batch.name,
                    batch.method,
                    batch.spec,
                    canonical(batch.versions),
                    batch.total,
                    time.time(),
                ),
            )
            if not found:
                lines = ((name, place, key) for place, key in enumerate(keys))
                self._db.executemany("INSERT INTO plan VALUES (?, ?, ?)", lines)
        return name

    def forget_failures(self, batch_id: str) -> int:
        """Make the batch's failed trials undone; returns how many."""
        with _clear_errors(self.path), self._db:
            return self._db.execute(
                "DELETE FROM trial WHERE cause != '' AND key IN "
                "(SELECT key FROM plan WHERE batch = ?)",
                (batch_id,),
            ).rowcount

    def forget(self, keys: Sequence[str]) -> None:
        """Make the trials of these addresses undone."""
        with _clear_errors(self.path), self._db:
            self._db.executemany("DELETE FROM trial WHERE key = ?", [(key,) for key in keys])

    def undone(self, tasks: Iterable[Task], on_known: Callable[[int, int], None]) -> Iterator[Task]:
        """The tasks not in the store, in order. on_known: told (done, failed) passed over."""
        some: list[Task] = []
        for task in tasks:
            some.append(task)
            if len(some) == _KNOWN:
                yield from self._undone(some, on_known)
                some = []
        yield from self._undone(some, on_known)

    def _undone(self, tasks: Sequence[Task], on_known: Callable[[int, int], None]) -> list[Task]:
        marks = ",".join("?" * len(tasks))
        query = f"SELECT key, cause != '' FROM trial WHERE key IN ({marks})"
        with _clear_errors(self.path):
            known = dict(self._db.execute(query, [t.key for t in tasks]).fetchall())
        left = [t for t in tasks if t.key not in known]
        failed = sum(known[t.key] for t in tasks if t.key in known)
        if len(left) < len(tasks):
            on_known(len(tasks) - len(left) - failed, failed)
        return left

    def add(self, batch: Batch, done: Sequence[tuple[Task, TrialOutcome]]) -> None:
        """Commit outcomes. StoreError where the disk takes no more; what was there stays."""
        if not done:
            return
        versions, now = canonical(batch.versions), time.time()
        lines = [
            (
                task.key,
                batch.name,
                batch.method,
                batch.spec,
                versions,
                task.payload.get("seed"),
                json.dumps(task.payload, separators=(",", ":")),
                outcome.rows,
                outcome.cause,
                outcome.detail,
                outcome.took,
                now,
            )
            for task, outcome in done
        ]
        with _clear_errors(self.path):
            with self._db:
                self._db.executemany(
                    f"INSERT OR IGNORE INTO trial VALUES ({','.join('?' * 12)})", lines
                )
            if time.monotonic() - self._synced > 1.0:
                self.sync()

    def sync(self) -> None:
        """Make the disk keep everything committed so far."""
        with _clear_errors(self.path):
            self._db.execute("PRAGMA wal_checkpoint(PASSIVE)")
        self._synced = time.monotonic()


# Reading


@contextmanager
def reading(path: Path) -> Iterator[sqlite3.Connection]:
    """A connection that only reads, also while a run writes. InputError where it is no store."""
    if not path.exists():
        raise InputError(Problem(str(path), "no results here yet", "run the sweep first"))
    _no_folder(path)
    with closing(sqlite3.connect(f"{path.resolve().as_uri()}?mode=ro", uri=True, timeout=30)) as db:
        try:
            if not db.execute("SELECT 1 FROM sqlite_master").fetchone():
                raise InputError(Problem(str(path), "no results here yet", "run the sweep first"))
            _check_format(db, path)
            yield db
        except sqlite3.DatabaseError as error:
            raise damaged(path, error) from error


def damaged(path: Path, error: sqlite3.Error | str) -> InputError:
    """What to say of a store that cannot be made out, and the way out of it."""
    allowed = (
        "tables written before are whole; put back a copy of this file if there is one, or move it "
        "away together with its -wal and -shm, and the sweep begins anew"
    )
    return InputError(Problem(str(path), f"cannot be read as results: {error}", allowed))


def _no_folder(path: Path) -> None:
    if path.is_dir():
        raise InputError(
            Problem(str(path), "is a folder", "results are kept in a file of this name")
        )


def latest_batch(db: sqlite3.Connection, path: Path) -> tuple[str, str, str, int]:
    """(id, name, method, total) of the batch asked for last."""
    query = "SELECT id, name, method, total FROM batch ORDER BY rowid DESC LIMIT 1"
    found: tuple[str, str, str, int] | None = db.execute(query).fetchone()
    if found is None:
        raise InputError(Problem(str(path), "no results here yet", "run the sweep first"))
    return found


def batch_name(db: sqlite3.Connection, path: Path, batch: str) -> str:
    """The name of a batch by its id. Raises InputError where the store was filled for others."""
    latest_batch(db, path)
    found = db.execute("SELECT name FROM batch WHERE id = ?", (batch,)).fetchone()
    if found is None:
        raise InputError(Problem(str(path), CHANGED))
    return str(found[0])


def status(path: Path, asked: Batch | None = None) -> BatchStatus:
    """How far a batch in a store has got; safe to ask while it is being written.

    asked: as it would be run now, whatever of it the store has; the latest in the store if not
    given.
    """
    with reading(path) as db:
        if asked is None:
            batch, name, method, total = latest_batch(db, path)
            changed, planned = False, "FROM plan JOIN trial USING (key) WHERE batch = ?"
            found = _tally(db.execute(f"{_TALLIED} {planned}", (batch,)))
        else:
            keys = [task.key for task in asked.tasks()]
            changed = _id_of(asked, keys) != latest_batch(db, path)[0]
            name, method, total = asked.name, asked.method, asked.total
            found = _tally(_by_keys(db, keys))
        opened = db.execute("SELECT max(opened) FROM batch").fetchone()[0]
        now = time.time()
        since = max(now - 60.0, opened)
        recent = _tally(db.execute(f"{_TALLIED} FROM trial WHERE finished > ?", (since,)))
    running = is_running(path)
    rate = (recent.done + recent.failed) / max(now - since, 1e-3) if running else 0.0
    count = found.done + found.failed
    left = (total - count) / rate if rate > 0 else float("nan")
    return BatchStatus(
        name,
        method,
        total,
        found.done,
        found.failed,
        rate,
        left if count < total else 0.0,
        tuple(sorted(found.causes.items(), key=lambda c: (-c[1], c[0]))),
        running,
        found.last,
        changed,
    )


_TALLIED = "SELECT method, rows, cause, finished"


@dataclass
class _Tally:
    """Trials counted, those of blocks too."""

    done: int = 0
    failed: int = 0
    last: float = 0.0
    causes: dict[str, int] = field(default_factory=dict)


def _tally(lines: Iterable[tuple[str, str, str, float]]) -> _Tally:
    found = _Tally()
    for method, rows, cause, finished in lines:
        found.last = max(found.last, finished or 0.0)
        if method == BLOCKS:
            with suppress(ValueError, TypeError, KeyError):
                (block,) = json.loads(rows)
                found.done += block["lines"] - block["failed"]
                found.failed += block["failed"]
        elif cause:
            found.failed += 1
            found.causes[cause] = found.causes.get(cause, 0) + 1
        else:
            found.done += 1
    return found


def _by_keys(db: sqlite3.Connection, keys: Sequence[str]) -> Iterator[tuple[str, str, str, float]]:
    """What is known of these addresses, as often as each of them is asked for."""
    for start in range(0, len(keys), _KNOWN):
        some = keys[start : start + _KNOWN]
        query = f"{_TALLIED}, key FROM trial WHERE key IN ({','.join('?' * len(some))})"
        known = {line[-1]: line[:-1] for line in db.execute(query, some)}
        yield from (known[key] for key in some if key in known)


def batch_id(batch: Batch) -> str:
    """What a store calls a batch: by its name and the addresses of its tasks."""
    return _id_of(batch, [task.key for task in batch.tasks()])


def _id_of(batch: Batch, keys: Sequence[str]) -> str:
    return value_digest([batch.name, list(keys)])


def stored_records(db: sqlite3.Connection, batch_id: str) -> Iterator[TrialRecord]:
    """The trials of a batch that have been done, in the order of its plan, one at a time."""
    query = (
        "SELECT place, key, method, spec, versions, seed, payload, rows, cause "
        "FROM plan JOIN trial USING (key) WHERE batch = ? ORDER BY place"
    )
    for line in db.execute(query, (batch_id,)):
        yield TrialRecord(*line)


def records_of(path: Path, batch_id: str) -> Iterator[TrialRecord]:
    """As `stored_records`, of a batch in the store at `path`."""
    with reading(path) as db:
        yield from stored_records(db, batch_id)


def is_running(path: Path) -> bool:
    """Whether a run holds the store for writing."""
    try:
        handle = os.open(_lock_path(path), os.O_RDWR if os.name == "nt" else os.O_RDONLY)
    except OSError:
        return False
    try:
        return is_locked(handle)
    finally:
        os.close(handle)


# Under the hood


def _lock_path(path: Path) -> Path:
    return path.with_name(path.name + ".lock")


def _take_lock(path: Path) -> int:
    """A lock the system takes back when this process ends, however it ends."""
    path.parent.mkdir(parents=True, exist_ok=True)
    handle = os.open(_lock_path(path), os.O_RDWR | os.O_CREAT, 0o644)
    try:
        # A look from another terminal holds it for an instant, so one try is not enough.
        for _ in range(20):
            if lock(handle):
                return handle
            time.sleep(0.05)
        raise StoreError(f"{path}: another run is writing these results; wait for it or stop it")
    except BaseException:
        os.close(handle)
        raise


def _connect(path: Path) -> sqlite3.Connection:
    db = sqlite3.connect(path, timeout=30)
    try:
        db.execute("PRAGMA journal_mode = WAL")
        db.execute("PRAGMA synchronous = NORMAL")
        if db.execute("SELECT count(*) FROM sqlite_master").fetchone()[0] == 0:
            db.executescript(f"BEGIN; {_TABLES} PRAGMA user_version = {_FORMAT}; COMMIT;")
        _check_format(db, path)
    except BaseException:
        db.close()
        raise
    return db


def _check_format(db: sqlite3.Connection, path: Path) -> None:
    found = db.execute("PRAGMA user_version").fetchone()[0]
    if found != _FORMAT:
        allowed = f"this version reads format {_FORMAT}; use a new folder for results"
        raise InputError(Problem(str(path), f"results are in format {found}", allowed))


@contextmanager
def _clear_errors(path: Path) -> Iterator[None]:
    """sqlite's failures in one sentence each."""
    try:
        yield
    except sqlite3.OperationalError as error:
        if any(word in str(error).lower() for word in _FULL):
            raise full_disk(path) from error
        raise StoreError(f"{path}: cannot be written: {error}") from error
    except sqlite3.DatabaseError as error:
        raise damaged(path, error) from error


def full_disk(path: Path) -> StoreError:
    """What to say when the disk takes no more."""
    return StoreError(
        f"{path}: the disk is full or refuses to write; every trial finished before is kept: "
        "make room and give the same command again"
    )


def is_full(error: OSError) -> bool:
    """Whether an operating-system error means that the disk takes no more."""
    return error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EFBIG)
