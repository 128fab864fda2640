"""The page's numbers are the one answer's, on every surface, exact or carried along."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from crossfall.answers.answer import answer
from crossfall.answers.conditions import ASSUMED, conditions, one_grip
from crossfall.answers.keys import record
from crossfall.answers.tips import TipAngles, tip_angles
from crossfall.app import trial_process
from crossfall.app.answers import (
    MAP_HEADINGS,
    QUARTER_HEADINGS,
    KnownAnswers,
    TipMap,
    carried,
    quick,
    shown_grip,
)
from crossfall.app.session import Bench
from crossfall.app.stances import stances
from crossfall.statics import rigid
from crossfall.truck.build import Loaded, load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.document import text_with_value
from crossfall.truck.errors import InputError
from crossfall.tuning.gains import gradients
from support import make_truck

SAME = 1e-9  # deg
ROLLS = 1e-3  # deg, as closely as where it rolls away is found
COARSE = np.radians(np.arange(0.0, 360.0, 30.0))
OPENED = {
    "chassis.held_by": "motor",
    "front.differential": "open",
    "rear.differential": "open",
}


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = tmp_path_factory.mktemp("bench")
    made = Bench(demo_folder() / "bramble.toml", folder, folder / "state")
    yield made
    made.close()


@pytest.fixture(scope="module", params=["rock", "wet rock"])
def shown(request: pytest.FixtureRequest, bench: Bench) -> dict[str, Any]:
    """What the page is sent once all is worked out; on wet rock it slides nearly all round."""
    bench.surface(bench.desk.sheet.at, request.param)
    bench.exact(bench.desk.sheet.at)
    found: dict[str, Any] = json.loads(json.dumps(bench.ways(bench.desk.sheet.at), allow_nan=False))
    return found


def test_the_four_ways_are_what_tilt_prints(bramble: Loaded, shown: dict[str, Any]) -> None:
    asked = conditions(
        bramble.truck, np.radians([*QUARTER_HEADINGS.values()]).tolist(), shown["surface"]
    )
    found = answer(bramble.truck, asked, trial=False)
    assert [w["outcome"] for w in shown["ways"]] == [a.outcome for a in found.answers]
    for one, said in zip(found.answers, shown["ways"], strict=True):
        assert flat(said) == pytest.approx(flat(record(one)), abs=SAME, nan_ok=True)


def flat(values: Any) -> list[float]:
    """Every number in it, in order; nan for none."""
    if isinstance(values, dict):
        return [v for one in values.values() for v in flat(one)]
    if isinstance(values, list):
        return [v for one in values for v in flat(one)]
    return [] if isinstance(values, str) else [np.nan if values is None else float(values)]


def test_the_curve_is_the_answer_all_round(bramble: Loaded, shown: dict[str, Any]) -> None:
    assert shown["exact"]
    grip = shown_grip(bramble.truck, shown["surface"])
    every = 3
    found = tip_angles(bramble.truck, MAP_HEADINGS[::every], grip.likely)
    assert found.slides.any()
    for key, values in (
        ("compliant_deg", found.tip),
        ("rail_deg", np.where(found.slides, found.free, np.nan)),
        ("first_lift_deg", found.first_lift),
    ):
        said = np.array(shown[key], dtype=float)[::every]
        assert said == pytest.approx(np.degrees(values), abs=SAME, nan_ok=True)


def test_map_and_table_of_the_page_say_the_same(shown: dict[str, Any]) -> None:
    for way in shown["ways"]:
        at = shown["heading_deg"].index(way["heading_deg"])
        for key in ("rigid_deg", "compliant_deg", "rail_deg", "first_lift_deg"):
            assert flat([shown[key][at]]) == pytest.approx(flat([way[key]]), abs=SAME, nan_ok=True)
        assert way["slide_deg"] == pytest.approx(shown["slide_deg"], abs=SAME)


def test_how_it_stands_ends_where_the_answer_does(bramble: Loaded, bench: Bench) -> None:
    bench.surface(bench.desk.sheet.at, "rock")
    said = bench.exact(bench.desk.sheet.at)
    for heading, at in ((0.0, 0), (90.0, 18)):
        path = bench.tried.path(bench.desk.sheet.at, heading)
        for key in ("compliant_deg", "rail_deg"):
            assert flat([path[key]]) == pytest.approx(flat([said[key][at]]), abs=SAME, nan_ok=True)
        angles = [p["theta_deg"] for p in path["points"]]
        assert angles == sorted(angles)
        tip = path["compliant_deg"] or path["rail_deg"]
        assert tip - 0.5 < angles[-1] <= tip
        unknown = stances(bramble.truck, shown_grip(bramble.truck, "rock"), heading, None)
        assert unknown["goes_at_deg"] == pytest.approx(path["goes_at_deg"], abs=SAME)


@pytest.fixture
def rolling(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Bench]:
    """Bramble held by its motor, both its differentials open; every 30 degrees, as it is slow."""
    for name in ("answers", "stances"):
        monkeypatch.setattr(f"crossfall.app.{name}.MAP_HEADINGS", COARSE)
    folder = tmp_path / "shop"
    folder.mkdir()
    text = (demo_folder() / "bramble.toml").read_text("utf-8")
    for key, value in OPENED.items():
        text = text_with_value(text, key, value)
    (folder / "bramble.toml").write_text(text, "utf-8")
    made = Bench(folder / "bramble.toml", folder, folder / "state")
    yield made
    made.close()


def test_where_it_rolls_away_is_the_answer_and_stays_while_a_weight_is_dragged(
    rolling: Bench,
) -> None:
    at = rolling.desk.sheet.at
    assert rolling.state()["answers"]["goes_at_deg"] == [None] * len(COARSE)
    said, (loaded, _) = rolling.exact(at), rolling.at(at)
    grip = rolling.grip(loaded.truck)
    found = tip_angles(loaded.truck, COARSE[::2], grip.likely)
    assert (found.slides & (found.slide < np.arctan(grip.likely) - 0.1)).any()
    goes = np.array(said["goes_at_deg"], dtype=float)
    assert goes[::2] == pytest.approx(np.degrees(found.goes), abs=ROLLS, nan_ok=True)
    assert goes[4] < said["slide_deg"]["low"]
    assert rolling.tried.path(at, 120.0)["goes_at_deg"] == pytest.approx(goes[4], abs=SAME)
    edit = {"do": "set", "part": "motor", "key": "mass_g", "value": 150}
    tried = rolling.attempt(at, [edit])["answers"]
    assert not tried["exact"]
    assert tried["goes_at_deg"][4] == pytest.approx(said["goes_at_deg"][4], abs=SAME)
    assert tried["rail_deg"][4] is not None


def test_a_truck_that_cannot_roll_away_is_sent_no_more() -> None:
    truck = make_truck()
    assert quick(truck, shown_grip(truck, "rock"), KnownAnswers())["goes_at_deg"] is None


def test_grams_are_worth_what_gains_says(bramble: Loaded, bench: Bench) -> None:
    bench.surface(bench.desk.sheet.at, "rock")
    said = bench.gains(bench.desk.sheet.at)
    assert said["gain_of"] == "compliant"
    slopes = gradients(bramble, surface="rock", everywhere=False).slopes
    place = np.array([0.07, -0.03, 0.12])
    for carrier in ("chassis", "front axle", "rear left"):
        wanted = np.degrees(slopes.per_mass(carrier, place))[:4, 0] * 0.010
        got = [said["gain"][way][carrier] for way in QUARTER_HEADINGS]
        assert [c[0] + 1000 * np.dot(c[1:], place) for c in got] == pytest.approx(wanted, abs=SAME)


def angles(free: list[float], slide: float, lift: list[float]) -> TipAngles:
    """Tips all round that repeat a few values; rad."""
    many = len(MAP_HEADINGS) // len(free)
    tip, first = np.tile(free, many), np.tile(lift, many)
    slides = tip > slide
    nothing = np.full((len(tip), 4), np.nan)
    return TipAngles(
        np.where(slides, np.nan, tip), tip, np.full(len(tip), slide), np.minimum(tip, slide),
        slides, first, nothing, first * np.nan, nothing, nothing, nothing,
    )  # fmt: skip


def test_a_curve_is_carried_by_what_the_rigid_one_has_moved() -> None:
    known = TipMap(one_grip(0.9), np.full(72, 0.8), angles([0.6, 0.8], 0.7, [0.5, 0.75]))
    same = carried(known, known.rigid, 0.7)
    assert same.tip[:2] == pytest.approx([0.6, np.nan], nan_ok=True)
    assert same.rail[:2] == pytest.approx([np.nan, 0.8], nan_ok=True)
    assert same.first_lift[:2] == pytest.approx([0.5, 0.75])
    lower = carried(known, known.rigid - 0.15, 0.7)
    assert lower.tip[:2] == pytest.approx([0.45, 0.65])
    assert np.isnan(lower.rail).all()
    assert lower.first_lift[:2] == pytest.approx([0.35, 0.60])


def test_a_curve_on_another_ground_is_not_carried() -> None:
    truck = make_truck()
    known = TipMap(one_grip(0.9), rigid.tip_angle(truck, MAP_HEADINGS), angles([0.6], 0.7, [0.5]))
    assert quick(truck, known.grip, KnownAnswers(known), True)["exact"]
    other = quick(truck, shown_grip(truck, "rock"), KnownAnswers(known), True)
    assert not other["exact"]
    assert other["compliant_deg"] == [None] * len(MAP_HEADINGS)
    assert other["gain_of"] == "rigid"


def test_a_surface_the_truck_has_not_is_refused_or_left(bench: Bench) -> None:
    with pytest.raises(InputError, match="moon"):
        bench.surface(bench.desk.sheet.at, "moon")
    truck = make_truck()
    assert shown_grip(truck, "moon").surface == "rock"
    assert shown_grip(replace(truck, grips=()), "moon") == ASSUMED


@pytest.mark.parametrize(("rail", "outcome"), [(False, "slides"), (True, "tips")])
def test_a_trial_stands_on_the_surface_shown(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], rail: bool, outcome: str
) -> None:
    source = demo_folder() / "bramble.toml"
    task = {
        "text": source.read_text("utf-8"), "path": str(source), "folder": str(tmp_path),
        "headings": [0.0], "near": [None], "grip": 0.6, "rail": rail,
    }  # fmt: skip
    trial_process.run_trials(task)
    said = json.loads(capsys.readouterr().out)
    assert said["trial_outcome"] == outcome
    assert said["hold"] == ("rail" if rail else "brakes")
    assert (tmp_path / said["file"]).read_bytes().startswith(b"CFP1")
    if not rail:
        low, high = said["trial_slide_ci_deg"]
        assert low <= np.degrees(np.arctan(0.6)) <= high
