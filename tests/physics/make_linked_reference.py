"""Make the table of tip angles of trucks on links, test_linked_tips.py's measure.

python make_linked_reference.py TABLE: every truck on every heading in the other engine, its links
as bodies with a ball at either end. Goes on from what the table holds already.
"""

from __future__ import annotations

import json
import math
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import mujoco
from mujoco_tips import PACE, tip
from mujoco_truck import Method

from crossfall.truck.model import Truck
from linkages import leaning_shocks, linked
from linked_files import linked as linked_demo
from support import make_truck

# Where a truck jumps to its stops, swinging may carry it over there, or slip its light tyres, and
# the tip is another: then it is asked again with next to no swing.
SETTLED = Method(tyre_damping=0.5, corner_damping=30.0)
GENTLE = replace(PACE, slow=math.radians(0.1), gently=1.2)
# Where light tyres slip at a high grip, a table that gives a little lets them slip too early: what
# half the step moves by more than this (deg) is asked again on a firm one.
MOVES = 0.1
FIRM = replace(SETTLED, step=2.5e-4, ground=0.001)
HEADINGS = (0, 45, 90, 150, 180, 270)
GRIP = 5.0
TRUCKS: dict[str, Callable[[], Truck]] = {
    "bramble on its links": lambda: linked_demo("bramble").truck,
    "thistle on its links": lambda: linked_demo("thistle").truck,
    "burdock on its links": lambda: linked_demo("burdock").truck,
    "bramble on links and shocks": lambda: linked_demo("bramble", shocks=True).truck,
    "track bar and wishbone": lambda: linked(
        make_truck(chassis_cg=(-0.01, 0.006, 0.115)), "three links and a track bar", "wishbone"
    ),
    "bent, on shocks": lambda: linked(
        make_truck(spring_rate=400.0, droop=0.012),
        "a bent truck",
        "lower links converge",
        leaning_shocks(),
    ),
}


def main(table: Path) -> None:
    rows = json.loads(table.read_text())["rows"] if table.exists() else []
    done = {(name, heading) for name, heading, *_ in rows}
    for name, made in TRUCKS.items():
        for heading in HEADINGS:
            if (name, heading) in done:
                continue
            truck, psi = made(), math.radians(heading)
            found = tip(truck, psi, GRIP)
            half = tip(truck, psi, GRIP, method=Method(step=Method.step / 2))
            moved = abs(math.degrees(half.angle - found.angle)) > MOVES
            if moved or found.snap.counts:
                method = FIRM if moved and not found.snap.counts else SETTLED
                found = tip(truck, psi, GRIP, method=method, pace=GENTLE)
            degrees = [round(math.degrees(a), 4) for a in (found.angle, found.first_lift)]
            rows.append([name, heading, found.outcome, *degrees, found.snap.counts])
            head = {
                "note": "Made by make_linked_reference.py, a run each, held to 0.015 deg; those "
                "that jump damped, those that half the step moves by 0.1 deg on a firm table.",
                "mujoco": mujoco.__version__,
                "columns": ["truck", "heading_deg", "outcome", "tip_deg", "first_lift_deg", "snap"],
            }
            lines = ",\n".join(json.dumps(row) for row in rows)
            table.write_text(f'{json.dumps(head, indent=1)[:-2]},\n "rows": [\n{lines}\n ]\n}}\n')


if __name__ == "__main__":
    main(Path(sys.argv[1]))
