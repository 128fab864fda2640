"""Drives over a course for the bench: one course at a time, watched, stopped, replayed."""

from __future__ import annotations

from threading import Lock
from typing import Any

from crossfall.app.jobs import Job
from crossfall.truck.errors import InputError, Problem


class Courses:
    """The course being driven, or the last one; methods may be called from any thread."""

    def __init__(self) -> None:
        self._job: Job | None = None
        self._told: dict[str, Any] = {}
        self._number = 0
        self._mutex = Lock()

    def start(
        self, course: dict[str, Any], trucks: list[dict[str, Any]], told: dict[str, Any]
    ) -> dict[str, Any]:
        """Drive a course with some trucks, in place of any before.

        course: as the page drew it, understood already. trucks: text, path, grip and whose. told:
        what goes with the answer.
        """
        with self._mutex:
            if self._job is not None:
                self._job.clear()
            task = {"course": course, "trucks": trucks}
            self._job = Job("crossfall.app.course_process", task, len(trucks))
            self._number += 1
            self._told = {**told, "number": self._number}
        return self.state()

    def state(self) -> dict[str, Any]:
        """How far it is, and what each truck did."""
        with self._mutex:
            job, told = self._job, self._told
        if job is None:
            nothing = {"state": "none", "words": "", "done": 0, "total": 0, "found": []}
            return {**nothing, "number": 0}
        return {**job.state(), **told}

    def stop(self) -> dict[str, Any]:
        if self._job is not None:
            self._job.cancel()
        return self.state()

    def poses(self, file: str) -> bytes:
        """The replay of one drive. Raises InputError."""
        job = self._job
        if job is None or file not in {str(f["file"]) for f in job.state()["found"]}:
            raise InputError(Problem("course", "there is no such drive"))
        return (job.folder / file).read_bytes()

    def close(self) -> None:
        if self._job is not None:
            self._job.clear()
