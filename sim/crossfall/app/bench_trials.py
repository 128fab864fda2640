"""What the bench tries of a truck: how it stands up to the tip, trials, courses, its links."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from crossfall.app import answers, course, course_files, course_jobs, suspension, trial_jobs
from crossfall.app.document import At, Sheet
from crossfall.app.stances import stances
from crossfall.app.truck_cache import Memory, truck_name
from crossfall.engines.held import check_driving
from crossfall.truck.errors import InputError, Problem

if TYPE_CHECKING:
    from crossfall.app.session import Bench


class Tried:
    """Everything that lets the truck on the desk stand or drive."""

    def __init__(self, bench: Bench) -> None:
        self._bench = bench
        self._moves: Memory[dict[str, Any]] = Memory(8)
        self._stances: Memory[dict[str, Any]] = Memory(150)
        self.trials = trial_jobs.Trials()
        self.courses = course_jobs.Courses()

    def close(self) -> None:
        self.trials.close()
        self.courses.close()

    def path(self, at: At, heading_deg: float) -> dict[str, Any]:
        """How it stands on one heading (the nearest 5 deg), from level to the tip."""
        loaded, sheet = self._bench.at(at)
        text, heading = sheet.history.text, round(heading_deg / 5) * 5 % 360
        truck = loaded.truck
        grip = self._bench.grip(truck)
        known = self._bench.curves.get((text, grip))
        key = (text, grip, heading)
        return self._stances.find(key, lambda: stances(truck, grip, float(heading), known))

    def trial_state(self) -> dict[str, Any]:
        return {**self.trials.state(), "records": trial_jobs.kept_trials(self._bench.folder)}

    def trial(self, at: At, headings: list[float], rail: bool) -> dict[str, Any]:
        """Begin virtual trials at some headings (deg) on the surface shown."""
        loaded, sheet = self._bench.at(at)
        text = sheet.history.text
        if not all(abs(h) <= 360 for h in headings):
            raise InputError(Problem("trial", "a heading is no angle", "degrees"))
        grip = self._bench.grip(loaded.truck)
        known = self._bench.curves.get((text, grip))
        asked = {
            "headings": [float(h) % 360 for h in headings],
            "near": [answers.expected(known, float(h)) for h in headings],
            "grip": grip.likely,
            "rail": rail,
        }
        whose = truck_name(text, sheet.source)
        return self.trials.start(text, sheet.source, whose, grip.surface, asked)

    def poses(self, at: At, file: str) -> bytes:
        """A finished trial, or a record kept in the folder, as a file of poses."""
        loaded, _ = self._bench.at(at)
        if file.endswith(".npz"):
            return trial_jobs.record_poses(self._bench.folder, file, loaded.truck)
        return self.trials.poses(file)

    def suspension(self, at: At) -> dict[str, Any]:
        """What the links of truck and reference amount to."""
        return {
            whose: suspension.suspension(self._bench.reader.load(text, source).truck)
            for whose, (text, source) in self._driven(self._bench.desk.agree(at)).items()
        }

    def suspension_moves(self, at: At) -> dict[str, Any]:
        """What each link end moved by 5 mm does; some seconds."""
        with self._bench.heavy:
            loaded, sheet = self._bench.at(at)
            surface = self._bench.known_surface(loaded.truck)
            work = partial(suspension.suspension_moves, loaded, surface)
            return self._moves.find((sheet.history.text, surface), work)

    def course_standing(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """A course's way, and what truck and reference would have in hand standing on it."""
        hill = course.understood_course(asked)
        with self._bench.heavy:
            found: dict[str, Any] = {"way": course.way_told(hill)}
            for whose, (text, source) in self._driven(self._bench.desk.agree(at)).items():
                truck = self._bench.reader.load(text, source).truck
                curve = self._bench.curves.find(
                    (text, self._bench.grip(truck)),
                    partial(answers.exact_curve, truck, self._bench.grip(truck)),
                )
                found[whose] = course.standing_on_course(hill, curve)
        return found

    def course(self, at: At, asked: dict[str, Any]) -> dict[str, Any]:
        """Begin driving a course with the truck and what it is compared with.

        Raises InputError, and where trucks cannot be driven.
        """
        check_driving()
        hill, sheet = course.understood_course(asked), self._bench.desk.agree(at)
        trucks = []
        for whose, (text, source) in self._driven(sheet).items():
            grip = self._bench.grip(self._bench.reader.load(text, source).truck)
            trucks.append({"whose": whose, "text": text, "path": str(source), "grip": grip.likely})
        beside = {
            "truck": truck_name(sheet.history.text, sheet.source),
            "surface": self._bench.grip(self._bench.loaded(sheet).truck).surface,
            "against": self._bench.compared(sheet).words,
            "way": course.way_told(hill),
        }
        return self.courses.start(asked, trucks, beside)

    def kept_courses(self) -> dict[str, Any]:
        return course_files.kept_courses(self._bench.folder)

    def keep_course(self, name: str, asked: dict[str, Any], over: bool) -> dict[str, Any]:
        """Write a course into the folder, whatever truck is on the desk."""
        course_files.keep_course(self._bench.folder, name, asked, over)
        return self.kept_courses()

    def _driven(self, sheet: Sheet) -> dict[str, tuple[str, Path]]:
        """Text and source of the truck, and of what it is compared with where that is another."""
        found = {"truck": (sheet.history.text, sheet.source)}
        then = self._bench.compared(sheet)
        if (then.text, then.source) != found["truck"]:
            found["reference"] = (then.text, then.source)
        return found
