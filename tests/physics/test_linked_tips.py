"""The statics of trucks on links against another engine's, in which every link is a body.

`linked_tips.json` holds tip angles by holding in MuJoCo, with rods between balls, shocks between
their ends, loops closed and that engine's own contacts; `make_linked_reference.py` made it. Six
trucks, six headings. One of them, whose light tyres slip, went over 0.6 deg early on a table that
gave by a hundredth of its tyres: those are asked on a firmer one.
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


def two_springs_a_shock() -> Truck:
    return on_whole_shocks().truck


@cache
def compared() -> dict[tuple[str, int], float]:
    """By truck and heading, deg from the engine's tip to the statics'."""
    table = json.loads(TABLE.read_text())
    rows = [dict(zip(table["columns"], row, strict=True)) for row in table["rows"]]
    made = {name: make() for name, make in TRUCKS.items()}
    headings = np.radians([r["heading_deg"] for r in rows])
    found = np.degrees(tip_pairs([made[r["truck"]] for r in rows], headings, GRIP).tip)
    return {
        (r["truck"], r["heading_deg"]): float(tip - r["tip_deg"])
        for r, tip in zip(rows, found, strict=True)
    }


def test_the_whole_table_is_there() -> None:
    assert set(compared()) == {(name, heading) for name in TRUCKS for heading in HEADINGS}


def test_tips_on_links_agree() -> None:
    apart = compared()
    assert {c: a for c, a in apart.items() if abs(a) >= WORST} == {}
    assert float(np.median(np.abs(list(apart.values())))) < 0.05


@pytest.mark.parametrize(
    ("made", "heading"), [(TRUCKS["bramble on its links"], 90), (two_springs_a_shock, 0)]
)
def test_a_live_run_agrees(made: Callable[[], Truck], heading: int) -> None:
    truck = made()
    seen = tip(truck, math.radians(heading), GRIP)
    wanted = float(np.degrees(tip_angles(truck, [math.radians(heading)], GRIP).tip[0]))
    assert seen.outcome == "tips"
    assert math.degrees(seen.angle) == pytest.approx(wanted, abs=WORST)
