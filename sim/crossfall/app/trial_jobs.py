"""Virtual trials for the bench: one round at a time, watched, stopped, replayed."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from crossfall.app import replay
from crossfall.app.folder import inside, listing
from crossfall.app.jobs import LatestJob
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Truck

MAX_HEADINGS = 72


class Trials(LatestJob):
    """The round of trials going on, or the last one, with its truck and surface."""

    def __init__(self) -> None:
        super().__init__({"truck": "", "surface": ""})

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
        task = {"text": text, "path": str(path), **asked}
        beside = {"truck": truck, "surface": surface}
        self.begin("crossfall.app.trial_process", task, len(headings), beside)
        return self.state()

    def poses(self, file: str) -> bytes:
        """The replay of one finished heading. Raises InputError."""
        return self.file(file, Problem("trial", "there is no such replay"))


def kept_trials(folder: Path) -> tuple[str, ...]:
    """Recorded trials someone kept in the opened folder."""
    return listing(folder, ".npz")


def record_poses(folder: Path, name: str, truck: Truck) -> bytes:
    """A kept record as a replay of the truck on the bench. Raises InputError."""
    record = replay.read_record(inside(folder, name, ".npz"))
    about = {"heading_deg": None, "trial_outcome": "recorded", "file": name}
    return replay.pack_replay(truck, record, about)
