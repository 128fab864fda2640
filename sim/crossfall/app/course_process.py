"""Drives over a course in a process of its own, so that they can be watched and stopped.

Reads one JSON object from standard input: the course as the page drew it, the trucks, each with
text, path, grip and whose it is, and the folder for replay files. Writes one JSON line per drive.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from crossfall.app.course import understood_course
from crossfall.app.replay import pack_replay
from crossfall.trials.course import CourseDrive, drive_course
from crossfall.truck.build import load_text
from crossfall.truck.errors import InputError
from crossfall.truck.files import write_atomically
from crossfall.truck.model import WHEELS


def run(task: dict[str, Any]) -> None:
    course = understood_course(task["course"]).course
    folder = Path(task["folder"])
    for number, one in enumerate(task["trucks"]):
        truck = load_text(one["text"], one["path"]).truck
        drive = drive_course(truck, course, grip=one["grip"])
        file = f"{number}.poses"
        about = {"whose": one["whose"], **drive_record(drive), "file": file}
        write_atomically(folder / file, pack_replay(truck, drive.journey.record, about))
        print(json.dumps(about), flush=True)


def drive_record(drive: CourseDrive) -> dict[str, Any]:
    """What came of a drive, with s and mm."""
    return {
        "outcome": drive.outcome,
        "travelled_mm": round(drive.travelled * 1000, 1),
        "off_line_mm": round(float(drive.journey.sideways[-1]) * 1000, 1),
        "events": [
            {
                "what": event.what,
                "wheel": None if event.wheel is None else WHEELS[event.wheel],
                "begin_s": round(event.begin - float(drive.journey.record.time[0]), 3),
                "end_s": round(event.end - float(drive.journey.record.time[0]), 3),
                "at_mm": round(event.at * 1000, 1),
            }
            for event in drive.events
        ],
        "cpu_s": round(drive.seconds, 2),
        "engine": drive.engine,
    }


if __name__ == "__main__":
    try:
        run(json.load(sys.stdin))
    except InputError as error:
        sys.exit("; ".join(str(problem) for problem in error.problems))
