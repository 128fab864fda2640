"""Virtual trials for the bench: one round at a time, watched, stopped, replayed."""

from __future__ import annotations

from pathlib import Path
from threading import Lock
from typing import Any

from crossfall.app import replay
from crossfall.app.folder import inside, listing
from crossfall.app.jobs import Job
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Truck

MAX_HEADINGS = 72


class Trials:
    """The round of trials going on, or the last one; methods may be called from any thread."""

    def __init__(self) -> None:
        self._job: Job | None = None
        self._truck, self._surface = "", ""
        self._mutex = Lock()

    def start(
        self, text: str, path: Path, truck: str, surface: str, asked: dict[str, Any]
    ) -> dict[str, Any]:
        """Begin a round, in place of any before it.

        truck: what this very truck is known by. asked: headings and near (deg, or None), grip: the
        surface's, and rail.
        """
        headings = asked["headings"]
        if not 0 < len(headings) <= MAX_HEADINGS:
            raise InputError(Problem("trial", "has no headings", f"1 to {MAX_HEADINGS}"))
        with self._mutex:
            if self._job is not None:
                self._job.clear()
            task = {"text": text, "path": str(path), **asked}
            self._job = Job("crossfall.app.trial_process", task, len(headings))
            self._truck, self._surface = truck, surface
        return self.state()

    def state(self) -> dict[str, Any]:
        """How far it is, and what each finished heading gave."""
        job = self._job
        if job is None:
            nothing = {"state": "none", "words": "", "done": 0, "total": 0, "found": []}
            return {**nothing, "truck": "", "surface": ""}
        return {**job.state(), "truck": self._truck, "surface": self._surface}

    def stop(self) -> dict[str, Any]:
        if self._job is not None:
            self._job.cancel()
        return self.state()

    def poses(self, file: str) -> bytes:
        """The replay of one finished heading."""
        job = self._job
        if job is None or file not in {str(f["file"]) for f in job.state()["found"]}:
            raise InputError(Problem("trial", "there is no such replay"))
        return (job.folder / file).read_bytes()

    def close(self) -> None:
        if self._job is not None:
            self._job.clear()


def kept_trials(folder: Path) -> tuple[str, ...]:
    """Recorded trials someone kept in the opened folder."""
    return listing(folder, ".npz")


def record_poses(folder: Path, name: str, truck: Truck) -> bytes:
    """A kept record as a replay of the truck on the bench. Raises InputError."""
    record = replay.read_record(inside(folder, name, ".npz"))
    about = {"heading_deg": None, "trial_outcome": "recorded", "file": name}
    return replay.pack_replay(truck, record, about)
