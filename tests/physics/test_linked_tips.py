"""The statics of trucks on links against another engine's, in which every link is a body.

`linked_tips.json` holds tip angles by holding in MuJoCo, with rods between balls, shocks between
their ends, loops closed and that engine's own contacts; `make_linked_reference.py` made it. Six
trucks, six headings.
"""

from __future__ import annotations

import json
import math
from collections.abc import Callable
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from make_linked_reference import GRIP, HEADINGS, TRUCKS
from mujoco_tips import tip

from crossfall.answers.tips import tip_angles, tip_pairs
from crossfall.truck.model import Truck
from linked_files import on_whole_shocks

TABLE = Path(__file__).parent / "linked_tips.json"
WORST = 0.2  # deg
NEAR = 1.0  # deg, of a snap to the tip: momentum may carry a truck over there
BESIDE = 2.0  # deg of heading: what snaps there may be about to here


def two_springs_a_shock() -> Truck:
    return on_whole_shocks().truck


@cache
def compared() -> tuple[list[tuple[str, int]], np.ndarray, np.ndarray]:
    """Truck and heading, deg from the engine's tip to the statics', where neither sees a snap."""
    table = json.loads(TABLE.read_text())
    rows = [dict(zip(table["columns"], row, strict=True)) for row in table["rows"]]
    made = {name: make() for name, make in TRUCKS.items()}
    trucks = [made[r["truck"]] for r in rows]
    headings, seen = (np.array([r[key] for r in rows]) for key in ("heading_deg", "tip_deg"))
    calm, tips = ~np.array([r["snap"] for r in rows]), np.zeros(len(rows))
    for aside in (-BESIDE, BESIDE, 0.0):
        found = tip_pairs(trucks, np.radians(headings + aside), GRIP)
        tips, snap = np.degrees(found.tip), np.degrees(found.first_snap)
        calm &= ~((np.abs(tips - snap) < NEAR) | (np.abs(seen - snap) < NEAR))
    return [(r["truck"], r["heading_deg"]) for r in rows], tips - seen, calm


def test_the_whole_table_is_there() -> None:
    cases, _, calm = compared()
    assert set(cases) == {(name, heading) for name in TRUCKS for heading in HEADINGS}
    assert calm.mean() > 0.7


def test_tips_on_links_agree_where_nothing_snaps() -> None:
    cases, apart, calm = compared()
    misses = [(c, a) for c, a, still in zip(cases, apart, calm, strict=True) if still]
    assert [m for m in misses if not abs(m[1]) < WORST] == []
    assert float(np.median(np.abs(apart[calm]))) < 0.05


def test_tips_on_links_are_not_far_off_where_something_snaps() -> None:
    _, apart, _ = compared()
    assert np.abs(apart).max() < NEAR


@pytest.mark.parametrize(
    ("made", "heading"), [(TRUCKS["bramble on its links"], 90), (two_springs_a_shock, 0)]
)
def test_a_live_run_agrees(made: Callable[[], Truck], heading: int) -> None:
    truck = made()
    seen = tip(truck, math.radians(heading), GRIP)
    wanted = float(np.degrees(tip_angles(truck, [math.radians(heading)], GRIP).tip[0]))
    assert seen.outcome == "tips"
    assert math.degrees(seen.angle) == pytest.approx(wanted, abs=WORST)
