"""Virtual trials in a process of their own, so that they can be watched and stopped.

Reads one JSON object from standard input: the truck's text and path, the headings with their
expected tips, the grip, whether against a rail, and the folder for replay files. Writes one JSON
line per finished heading.
"""

from __future__ import annotations

import json
import math
import sys
from pathlib import Path
from typing import Any

from crossfall.answers.keys import trial_record
from crossfall.app.replay import pack_replay
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.build import load_text
from crossfall.truck.files import write_atomically


def run_trials(task: dict[str, Any]) -> None:
    truck = load_text(task["text"], task["path"]).truck
    folder, grip, rail = Path(task["folder"]), task["grip"], task["rail"]
    for number, (heading, near) in enumerate(zip(task["headings"], task["near"], strict=True)):
        expected = None if near is None else math.radians(near)
        trial = tilt_trial(truck, math.radians(heading), near=expected, grip=grip, rail=rail)
        about = {"heading_deg": heading, "hold": "rail" if rail else "brakes"}
        about |= trial_record(trial)
        file = f"{number}.poses"
        write_atomically(folder / file, pack_replay(truck, trial.record, about))
        print(json.dumps({**about, "file": file}), flush=True)


if __name__ == "__main__":
    run_trials(json.load(sys.stdin))
