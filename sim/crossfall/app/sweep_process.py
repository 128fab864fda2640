"""A sweep in a process of its own, so that it can be watched and stopped.

Reads one JSON object from standard input: the truck's text and path, the scenario's data, and the
folder of the results. Writes a JSON line whenever it is further, and ends in its own time when it
is told to terminate: what is done by then is in the table.
"""

from __future__ import annotations

import json
import signal
import sys
from pathlib import Path
from typing import Any

from crossfall.study.runner import RunProgress, processors
from crossfall.study.scenario import scenario_of
from crossfall.study.sweep import run_scenario
from crossfall.truck.build import load_text


def run_sweep(task: dict[str, Any]) -> None:
    stopped = False

    def stop(*_: object) -> None:
        nonlocal stopped
        stopped = True

    def watch(p: RunProgress) -> None:
        left = p.seconds_left
        state = {"done": p.finished, "total": p.total, "seconds_left": left if left < 1e9 else None}
        print(json.dumps(state), flush=True)

    signal.signal(signal.SIGTERM, stop)
    scenario = scenario_of(load_text(task["text"], task["path"]), task["data"])
    workers = max(1, processors() - 1)  # one is left for the page
    done = run_scenario(
        scenario, Path(task["results"]), workers=workers, watch=watch, stop=lambda: stopped
    )
    # Standard output is for whoever watches; anything else would be a line of JSON too many.
    print(json.dumps({"done": done.done, "total": done.trials, "failed": done.failed}), flush=True)


if __name__ == "__main__":
    run_sweep(json.load(sys.stdin))
