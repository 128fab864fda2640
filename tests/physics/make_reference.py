"""Make the table of reference tip angles, test_reference_tips.py's and the statics tests' measure.

python make_reference.py LINES [TABLE]: appends a JSON line a case to LINES, goes on from what is
there already, and in the end writes the table. Each case is run five times, with other time steps,
damping, speeds and starts; the middle one counts, and how far the others lie is its error. First
every case is run once, without error; of two lines of a case the later one holds.
"""

from __future__ import annotations

import json
import math
import platform
import random
import sys
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from statistics import median
from typing import Any

import mujoco
from mujoco_tips import Pace, Tip, tip
from mujoco_truck import Hold, Method
from trial_trucks import VARIED

from crossfall.truck.model import Truck
from numbered_files import numbered

DEMOS = ("bramble", "thistle", "burdock")
HEADINGS = tuple(range(0, 360, 30))
HIGH = 5.0
NEAR = (1.05, 1.15, 1.25)  # grip over tan(tip): least, aim, most
FLOOR = 0.015  # deg, error that is always there: half a bracket, and a processor's last digits

RUNS: tuple[tuple[Method, Pace], ...] = (
    (Method(), Pace()),
    (
        Method(step=0.0005, impratio=4000.0, corner_damping=24.0),
        Pace(slow=math.radians(0.15), gently=0.8, longest=16.0),
    ),
    (Method(tyre_damping=0.3), Pace(below=math.radians(5.0))),
    (Method(corner_damping=24.0), Pace(below=math.radians(4.0))),
    (Method(step=0.0005), Pace(slow=math.radians(0.15), gently=0.8)),
)

Case = tuple[str, int, float, Hold, str]  # truck, heading in deg, ratio, hold, grip
Line = dict[str, Any]


def cases() -> Iterator[Case]:
    """All cases, well mixed; a grip near the tip comes after the high one it is taken from."""
    every = [
        (name, heading, ratio)
        for name in (*VARIED, *DEMOS)
        for heading in HEADINGS
        for ratio in (1.0, 0.5)
    ]
    random.Random(20).shuffle(every)
    for name, heading, ratio in every:
        yield name, heading, ratio, "brakes", "high"
        yield name, heading, ratio, "brakes", "near"
    more: list[Case] = []
    for name in DEMOS:
        for heading in HEADINGS:
            more += [(name, heading, 0.6, "brakes", "0.9"), (name, heading, 0.6, "rail", "0.6")]
    random.Random(20).shuffle(more)
    yield from more


def truck_of(name: str, ratio: float) -> Truck:
    """The truck with tyres that give `ratio` times as stiffly along the ground as upwards."""
    truck = VARIED[name] if name in VARIED else numbered(name).truck
    front, rear = (
        replace(
            a,
            tyre=replace(
                a.tyre, lateral=ratio * a.tyre.stiffness, longitudinal=ratio * a.tyre.stiffness
            ),
        )
        for a in truck.axles
    )
    return replace(truck, front=front, rear=rear)


def first(case: Case, made: dict[Case, Line]) -> Line:
    """The line of one case after its first run."""
    name, heading, ratio, hold, grip = case
    truck, psi = truck_of(name, ratio), math.radians(heading)
    if grip == "near":
        start = made[name, heading, ratio, hold, "high"]["tip_deg"]
        mu, found = _near(truck, psi, hold, NEAR[1] * math.tan(math.radians(start)))
    else:
        mu = HIGH if grip == "high" else float(grip)
        found = tip(truck, psi, mu, hold, *RUNS[0])
    return _line(case, mu, [_run(found)])


def rest(case: Case, line: Line) -> Line:
    """Its line after all runs."""
    name, heading, ratio, hold, _ = case
    truck, psi, mu = truck_of(name, ratio), math.radians(heading), line["mu"]
    more = [_run(tip(truck, psi, mu, hold, *run)) for run in RUNS[len(line["runs"]) :]]
    return _line(case, mu, [*line["runs"], *more])


def _run(found: Tip) -> Line:
    return {
        "outcome": found.outcome,
        "tip_deg": round(math.degrees(found.angle), 4),
        "first_lift_deg": round(math.degrees(found.first_lift), 4),
        "first_lift_wheel": found.lifts,
        "snaps": found.snap.counts,
        "snap_at_deg": round(math.degrees(found.snap.theta), 3),
        "snap_mm": round(found.snap.shift * 1e3, 3),
        "snap_turn_deg": round(math.degrees(found.snap.turn), 3),
        "load_left": round(found.load_left, 5),
        "yaw_deg": round(math.degrees(found.yaw), 3),
        "slid_mm": [round(1e3 * s, 3) for s in found.slid],
    }


def _line(case: Case, mu: float, runs: list[Line]) -> Line:
    tips, lifts = ([r[key] for r in runs] for key in ("tip_deg", "first_lift_deg"))
    middle = min(runs, key=lambda r: abs(r["tip_deg"] - median(tips)))
    line = dict(zip(("truck", "heading_deg", "ratio", "hold", "grip"), case, strict=True))
    return line | {
        "mu": mu,
        "outcome": middle["outcome"],
        "tip_deg": median(tips),
        "error_deg": _error(tips),
        "first_lift_deg": median(lifts),
        "first_lift_error_deg": _error(lifts),
        "snap": any(r["snaps"] for r in runs),
        "load_left": middle["load_left"],
        "runs": runs,
    }


def _near(truck: Truck, psi: float, hold: Hold, mu: float) -> tuple[float, Tip]:
    """A grip within NEAR of tan(tip) at that grip, and the first run with it."""
    for _ in range(6):
        found = tip(truck, psi, mu, hold, *RUNS[0])
        steep = math.tan(found.angle)
        if found.outcome == "slides":
            mu *= NEAR[1]
        elif NEAR[0] + 0.01 < mu / steep < NEAR[2] - 0.01:
            break
        else:
            mu = NEAR[1] * steep
    return mu, found


def _error(values: list[float]) -> float | None:
    if len(values) < len(RUNS):
        return None
    return round(math.hypot(FLOOR, max(abs(v - median(values)) for v in values)), 4)


def read(lines: Path) -> dict[Case, Line]:
    """What was made so far; half a line at the end is cut off."""
    if not lines.exists():
        return {}
    text = lines.read_text()
    whole = text[: text.rfind("\n") + 1]
    if whole != text:
        lines.write_text(whole)
    rows = [json.loads(line) for line in whole.splitlines()]
    return {(r["truck"], r["heading_deg"], r["ratio"], r["hold"], r["grip"]): r for r in rows}


KEPT = [
    *("truck", "heading_deg", "ratio", "hold", "mu", "outcome", "tip_deg", "error_deg"),
    *("first_lift_deg", "first_lift_error_deg", "snap", "load_left"),
]


def table(made: dict[Case, Line]) -> str:
    """The table as JSON, a line a case."""
    note = (
        "Made by make_reference.py. tip_deg and first_lift_deg are the middle of five runs by "
        "holding; error_deg is how far the farthest run lies from it, with a floor, and null where "
        "only the first run was made. snap: in a run "
        "the chassis jumped by 2 mm or 0.5 deg within a degree below the tip, without falling. "
        "ratio: of a tyre's stiffness along the ground, both ways, over that upwards."
    )
    head = {
        "note": note,
        "mujoco": mujoco.__version__,
        "processor": platform.machine(),
        "columns": KEPT,
    }
    order = [made[case] for case in sorted(made)]
    rows = ",\n".join(json.dumps([_short(row[k]) for k in KEPT]) for row in order)
    return f'{json.dumps(head, indent=1)[:-2]},\n "rows": [\n{rows}\n ]\n}}\n'


def _short(value: object) -> object:
    return round(value, 6) if isinstance(value, float) else value


def main(lines: Path, out: Path | None) -> None:
    made = read(lines)

    def keep(case: Case, line: Line) -> None:
        made[case] = line
        with lines.open("a") as file:
            file.write(json.dumps(line) + "\n")

    for case in cases():
        if case not in made:
            keep(case, first(case, made))
    for case in cases():
        if len(made[case]["runs"]) < len(RUNS):
            keep(case, rest(case, made[case]))
    if out is not None:
        out.write_text(table(made))


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]) if len(sys.argv) > 2 else None)
