"""The statics against another engine's native springs along the ground: every case of the table.

`reference_tips.json` holds tip angles by holding in MuJoCo, with slide joints along and across each
wheel and that engine's own contacts and friction; `make_reference.py` made it. Eight varied trucks
and the demo trucks, twelve headings, two stiffnesses along the ground, much grip and a grip 5 to 25
per cent above the tangent of the tip.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from make_reference import truck_of

from crossfall.answers.tips import TipAngles, tip_pairs

TABLE = Path(__file__).parent / "reference_tips.json"
NEAR = 1.0  # deg, of a snap to the tip: momentum may carry a truck over there
Rows = list[dict[str, object]]


@cache
def answered() -> tuple[Rows, TipAngles, TipAngles]:
    """The rows of the table, and the statics' answers to them held by brakes and by a rail."""
    table = json.loads(TABLE.read_text())
    rows = [dict(zip(table["columns"], row, strict=True)) for row in table["rows"]]
    trucks = [truck_of(r["truck"], r["ratio"]) for r in rows]
    psi, mu = np.radians([r["heading_deg"] for r in rows]), [r["mu"] for r in rows]
    return rows, tip_pairs(trucks, psi, mu), tip_pairs(trucks, psi, mu, "rail")


def differences() -> tuple[Rows, np.ndarray, np.ndarray]:
    """Rows, deg from the engine's tip or slide to the statics', and where neither sees a snap."""
    rows, brakes, rail = answered()
    held = np.array([r["hold"] == "rail" for r in rows])
    goes = np.degrees(np.where(held, rail.tip, brakes.goes))
    snap = np.degrees(np.where(held, rail.first_snap, brakes.first_snap))
    seen = np.array([r["tip_deg"] for r in rows], dtype=float)
    near = (np.abs(goes - snap) < NEAR) | (np.abs(seen - snap) < NEAR)  # of either's tip
    calm = ~np.array([r["snap"] for r in rows]) & ~near
    return rows, goes - seen, calm


def test_the_whole_table_is_there():
    rows = answered()[0]
    kinds = {(r["truck"], r["heading_deg"], r["ratio"], r["mu"] == 5.0) for r in rows}
    assert len({k[0] for k in kinds}) == 11
    assert {(k[1], k[2], k[3]) for k in kinds} >= {
        (30 * i, ratio, much) for i in range(12) for ratio in (1.0, 0.5) for much in (True, False)
    }


def test_every_case_agrees_where_neither_snaps():
    rows, apart, calm = differences()
    off = np.abs(apart[calm])
    misses = [
        f"{r['truck']} at {r['heading_deg']}, ratio {r['ratio']}, grip {r['mu']:.2f}: {a:+.2f}"
        for r, a, c in zip(rows, apart, calm, strict=True)
        if c and not abs(a) <= 0.25
    ]
    assert not misses
    assert np.median(off) <= 0.06


def test_the_lifts_are_those_of_the_same_answer():
    rows, brakes, rail = answered()
    _, _, calm = differences()
    held = np.array([r["hold"] == "rail" for r in rows])
    lift = np.degrees(np.where(held, rail.first_lift, brakes.first_lift))
    seen = np.array([r["first_lift_deg"] for r in rows], dtype=float)
    both = calm & np.isfinite(lift) & np.isfinite(seen)
    assert both.sum() > len(rows) / 2
    assert np.median(np.abs(lift - seen)[both]) <= 0.06


@pytest.mark.parametrize("outcome", ["tips", "slides"])
def test_what_comes_first_is_the_same(outcome):
    rows, brakes, _ = answered()
    asked = [i for i, r in enumerate(rows) if r["outcome"] == outcome and r["hold"] == "brakes"]
    close = np.abs(np.degrees(brakes.free - brakes.slide)) < 0.3
    wrong = [i for i in asked if brakes.slides[i] != (outcome == "slides") and not close[i]]
    assert not wrong
