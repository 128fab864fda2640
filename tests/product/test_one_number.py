"""One question, one answer: every route to a tip angle gives the same number.

Three trucks, 24 headings, three surfaces: the one function on the whole table at once is held
against tilt's answers, a sweep's rows, the board's prediction, the page's curve and its four ways,
the centre of a spread, the sheet, and the base of what-if and plan. To 1e-9 deg.
"""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.answers.answer import answer
from crossfall.answers.conditions import conditions
from crossfall.answers.tips import TipAngles, tip_angles
from crossfall.app import answers as page
from crossfall.measurement.board_predict import predict
from crossfall.show.sheet.facts import gather
from crossfall.study.methods import ahead, compliant_rows
from crossfall.study.montecarlo import monte_carlo
from crossfall.study.task import canonical
from crossfall.truck.build import Loaded, load_truck
from crossfall.tuning.changes import change_file_of, read_changes
from crossfall.tuning.milp_model import Bounds
from crossfall.tuning.plan import aim_at, plan
from crossfall.tuning.whatif import rank_changes

HEADINGS = np.arange(0.0, 360.0, 15.0)
PSI = np.radians(HEADINGS)
TRUCKS = ("bramble", "thistle", "burdock")
SAME = {"rtol": 0, "atol": 1e-9}


@pytest.fixture(scope="module", params=[(t, i) for t in TRUCKS for i in range(3)], ids=str)
def case(request: pytest.FixtureRequest) -> tuple[Loaded, str, TipAngles]:
    """A truck, one of its surfaces, and its tips on every heading at once."""
    name, number = request.param
    loaded = load_truck(name)
    grip = loaded.truck.grips[number]
    return loaded, grip.surface, tip_angles(loaded.truck, PSI, grip.likely)


def test_tilt(case: tuple[Loaded, str, TipAngles]) -> None:
    loaded, surface, wanted = case
    some = slice(0, None, 6)
    found = answer(loaded.truck, conditions(loaded.truck, PSI[some], surface), trial=False)
    tips = np.degrees([a.tip for a in found.answers])
    np.testing.assert_allclose(tips, np.degrees(wanted.free[some]), **SAME)
    goes = np.degrees([a.goes for a in found.answers])
    np.testing.assert_allclose(goes, np.degrees(wanted.goes[some]), **SAME)
    assert [a.slides_first for a in found.answers] == wanted.slides[some].tolist()


def test_a_sweep_s_rows(case: tuple[Loaded, str, TipAngles]) -> None:
    loaded, surface, wanted = case
    common = {
        "method": "compliant",
        "spec": canonical(loaded.spec.model_dump(mode="json", exclude_unset=True)),
        "fixed": {},
        "surface": surface,
        "hold": "brakes",
        "tolerances": False,
        "folder": str(loaded.folder),
    }
    payloads = [{"heading_deg": h, "seed": 0} for h in HEADINGS.tolist()]
    ahead(common, payloads)
    rows = [compliant_rows(common, payload)[0] for payload in payloads]
    np.testing.assert_allclose([r["tip_deg"] for r in rows], np.degrees(wanted.free), **SAME)
    np.testing.assert_allclose([r["goes_at_deg"] for r in rows], np.degrees(wanted.goes), **SAME)
    assert [r["compliant_deg"] is None for r in rows] == wanted.slides.tolist()


def test_the_board_s_prediction(case: tuple[Loaded, str, TipAngles]) -> None:
    loaded, surface, wanted = case
    grip = next(g for g in loaded.truck.grips if g.surface == surface)
    some = slice(0, None, 6)
    found = predict(loaded.truck, list(PSI[some]), [False] * 4, grip=grip).angle
    np.testing.assert_allclose(np.degrees(found), np.degrees(wanted.free[some]), **SAME)


def test_the_page(case: tuple[Loaded, str, TipAngles]) -> None:
    loaded, surface, wanted = case
    grip = page.shown_grip(loaded.truck, surface)
    curve = page.exact_curve(loaded.truck, grip).tips.free
    every = {round(float(np.degrees(h)), 6): k for k, h in enumerate(page.MAP_HEADINGS)}
    shared = [h for h in HEADINGS if round(float(h), 6) in every]
    assert len(shared) >= 12
    at = [every[round(float(h), 6)] for h in shared]
    mine = [list(HEADINGS).index(h) for h in shared]
    np.testing.assert_allclose(np.degrees(curve[at]), np.degrees(wanted.free[mine]), **SAME)


@pytest.mark.parametrize("name", TRUCKS)
def test_four_ways_spread_and_sheet(name: str) -> None:
    loaded = load_truck(name)
    grip = loaded.truck.grips[1]
    wanted = tip_angles(loaded.truck, PSI[::6], grip.likely).free  # 0, 90, 180, 270
    ways = page.four_ways(loaded.truck, grip).answers
    np.testing.assert_allclose(np.degrees([a.tip for a in ways]), np.degrees(wanted), **SAME)
    found = monte_carlo(
        loaded.truck, conditions(loaded.truck, PSI[:12:6], grip.surface), samples=16
    )
    centres = np.degrees([f.centre for f in found])
    np.testing.assert_allclose(centres, np.degrees(wanted[:2]), **SAME)
    sheet = gather(loaded, surface=grip.surface).now.tips.answers
    by_heading = {round(np.degrees(a.conditions.heading)): a.tip for a in sheet}
    for heading, tip in zip((0, 90, 180, 270), wanted, strict=True):
        assert np.degrees(by_heading[heading]) == pytest.approx(np.degrees(tip), abs=1e-9)


def test_the_base_of_what_if_and_plan() -> None:
    loaded = load_truck("bramble")
    catalogue = read_changes(change_file_of(loaded.path))
    grip = loaded.truck.grips[1]
    climb, left, descent, right = tip_angles(loaded.truck, PSI[::6], grip.likely).free
    now = rank_changes(loaded, catalogue, surface=grip.surface).now
    np.testing.assert_allclose(
        np.degrees(now[:3]), np.degrees([min(left, right), climb, descent]), **SAME
    )
    made = plan(loaded, catalogue, aim_at("climb"), Bounds(budget=0.0), surface=grip.surface)
    assert np.degrees(made.now.value) == pytest.approx(np.degrees(climb), abs=1e-9)
