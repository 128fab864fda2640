"""Sweeps run from the page: one at a time, watched, stopped, its table kept in the folder."""

from __future__ import annotations

import re
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from crossfall.app.jobs import NO_JOB, LatestJob
from crossfall.study.scenario import scenario_of
from crossfall.study.sweep import CSV
from crossfall.study.task import value_digest
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError, Problem

MOST_TRIALS_ON_PAGE = {
    "closed form": 20_000,
    "compliant": 4_000,
}  # trials of one sweep: what a page can show
HOME = "crossfall-out"  # where the verb keeps its results too


def sweep_data(asked: Mapping[str, Any], surface: str | None) -> dict[str, Any]:
    """A scenario of two axes out of what the page asks. Raises InputError."""
    method = asked["method"]
    if method not in MOST_TRIALS_ON_PAGE:
        raise InputError(Problem("sweep", "has no such method", ", ".join(MOST_TRIALS_ON_PAGE)))
    if not 1 <= len(asked["axes"]) <= 2:
        raise InputError(Problem("sweep", "needs one or two things to vary"))
    found = [_axis(**axis) for axis in asked["axes"]]
    data = {"name": "sweep from the page", "method": method, "axis": found}
    if surface is not None and not any(a["key"] == "grip" for a in found):
        data["surface"] = surface
    if not any(a["key"] == "heading_deg" for a in found):
        if not 0 < len(asked.get("headings") or ()) <= 72:
            raise InputError(Problem("sweep", "has no way to stand", "1 to 72 headings"))
        data["headings_deg"] = asked["headings"]
    return data


def _axis(key: str, first: float | None, last: float | None, steps: int | None) -> dict[str, Any]:
    if first is None or last is None:
        raise InputError(Problem("sweep", f"{key} has no range", "from one number to another"))
    if steps is None or not 2 <= steps <= 500:
        raise InputError(Problem("sweep", f"{key} has no steps", "2 to 500"))
    return {"key": key, "first": min(first, last), "last": max(first, last), "steps": steps}


class Sweeps(LatestJob):
    """The sweep going on, or the last one, with its table."""

    def __init__(self, folder: Path) -> None:
        super().__init__({})
        self._folder = folder

    def start(self, loaded: Loaded, text: str, data: dict[str, Any]) -> dict[str, Any]:
        """Begin a sweep, in place of any before it. Raises InputError for what cannot be varied."""
        scenario = scenario_of(loaded, data)
        most = MOST_TRIALS_ON_PAGE[str(data["method"])]
        if scenario.total > most:
            what = f"is {scenario.total} trials"
            raise InputError(Problem("sweep", what, f"at most {most}: take fewer steps"))
        keys = "-".join(a.key for a in scenario.axes)
        name = re.sub(r"[^A-Za-z0-9]+", "-", f"{loaded.path.stem}-{keys}").strip("-")[:60]
        name = f"{name}-{value_digest([text, data])[:6]}"
        task = {
            "text": text,
            "path": str(loaded.path),
            "data": data,
            "results": str(self._folder / HOME / name),
        }
        table = {"table": f"{HOME}/{name}/{CSV}"}
        self.begin("crossfall.app.sweep_process", task, scenario.total, table)
        return self.state()

    def state(self) -> dict[str, Any]:
        """How far it is; table: the name of its table once it is over, "" before."""
        latest = self.latest
        if latest is None:
            return {**NO_JOB, "left_s": None, "table": ""}
        job, table = latest[0], str(latest[1]["table"])
        found = job.state()
        last = found["found"][-1] if found["found"] else {}
        there = job.over and (self._folder / table).is_file()
        return {
            "state": "stopping" if found["state"] == "stopped" and not job.over else found["state"],
            "words": found["words"],
            "done": last.get("done", 0),
            "total": job.total,
            "left_s": last.get("seconds_left"),
            "table": table if there else "",
        }
