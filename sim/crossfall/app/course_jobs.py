"""Drives over a course for the bench: one course at a time, watched, stopped, replayed."""

from __future__ import annotations

from itertools import count
from typing import Any

from crossfall.app.jobs import LatestJob
from crossfall.truck.errors import Problem


class Courses(LatestJob):
    """The course being driven, or the last one, with its number."""

    def __init__(self) -> None:
        super().__init__({"number": 0})
        self._numbers = count(1)

    def start(
        self, course: dict[str, Any], trucks: list[dict[str, Any]], beside: dict[str, Any]
    ) -> dict[str, Any]:
        """Drive a course with some trucks, in place of any before.

        course: as the page drew it, understood already. trucks: text, path, grip and whose. beside:
        what goes with the answer.
        """
        task = {"course": course, "trucks": trucks}
        beside = {**beside, "number": next(self._numbers)}
        self.begin("crossfall.app.course_process", task, len(trucks), beside)
        return self.state()

    def poses(self, file: str) -> bytes:
        """The replay of one drive. Raises InputError."""
        return self.file(file, Problem("course", "there is no such drive"))
