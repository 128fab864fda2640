"""Virtual trials in a process of their own, so that they can be watched and stopped.

Reads one JSON object from standard input: the truck's text and path, the headings with their
expected tips, and the folder for replay files. Writes one JSON line per finished heading.
"""

from __future__ import annotations

import json
import math
import sys
from pathlib import Path
from typing import Any

from crossfall.bench.replay import pack
from crossfall.trials.tilt import TiltTrial, tilt_trial
from crossfall.truck.build import load_text
from crossfall.truck.files import write_atomically


def run(task: dict[str, Any]) -> None:
    truck = load_text(task["text"], task["path"]).truck
    folder = Path(task["folder"])
    for number, (heading, near) in enumerate(zip(task["headings"], task["near"], strict=True)):
        expected = None if near is None else math.radians(near)
        trial = tilt_trial(truck, math.radians(heading), near=expected, grip=task["grip"] or 5.0)
        about = described(trial, heading)
        file = f"{number}.poses"
        write_atomically(folder / file, pack(truck, trial.record, about))
        print(json.dumps({**about, "file": file}), flush=True)


def described(trial: TiltTrial, heading_deg: float) -> dict[str, Any]:
    """What the page says about a trial, angles in degrees, None where there is no such event."""

    def degrees(angle: float) -> float | None:
        return None if math.isnan(angle) else round(math.degrees(angle), 4)

    return {
        "heading_deg": heading_deg,
        "outcome": trial.outcome,
        "tip_deg": degrees(trial.tip),
        "tip_ci_deg": [degrees(a) for a in trial.tip_ci],
        "first_lift_deg": degrees(trial.first_lift),
        "slide_deg": degrees(trial.slide),
        "seconds": round(trial.seconds, 3),
    }


if __name__ == "__main__":
    run(json.load(sys.stdin))
