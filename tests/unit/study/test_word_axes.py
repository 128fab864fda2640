"""Hold, surface, engine and trial as axes: every line has its own, in table, maps and indices."""

from __future__ import annotations

from typing import Any

import numpy as np
import pyarrow.parquet
import pytest

from crossfall.engines.held import engine_version
from crossfall.show.summary import figures, how_asked, summary_page
from crossfall.study import methods
from crossfall.study.methods import ahead, compliant_rows
from crossfall.study.scenario import Scenario, scenario_of
from crossfall.study.sensitivity import sobol_sensitivity
from crossfall.study.summary import summarize
from crossfall.study.sweep import batch_of, run_scenario
from crossfall.truck.build import load_truck
from crossfall.truck.errors import InputError
from linked_files import linked
from support import INSTALLED

TRACK, PACK = "both.track_mm", "part.battery pack.at_mm.z"
WORDS = [
    {"key": "hold", "values": ["brakes", "rail"]},
    {"key": "surface", "values": ["rock", "wet rock"]},
]
RANGES = [
    {"key": TRACK, "values": [165.0, 190.0]},
    {"key": PACK, "values": [60.0, 120.0]},
]


def scenario(**data: Any) -> Scenario:
    base = {"name": "words", "method": "compliant", "headings_deg": [90.0], "axis": WORDS}
    return scenario_of(load_truck("bramble"), {**base, **data})


def table_of(asked: Scenario, folder: Any) -> list[dict[str, Any]]:
    done = run_scenario(asked, folder, workers=1)
    return pyarrow.parquet.read_table(done.files[0]).to_pylist()


@pytest.mark.parametrize("method", ["closed form", "compliant"])
def test_every_line_is_what_a_scenario_of_its_words_says(method: str, tmp_path: Any) -> None:
    axis = [*RANGES[:1], *WORDS]
    found = table_of(scenario(method=method, axis=axis), tmp_path / "all")
    assert len(found) == 8
    for i, line in enumerate(found):
        words = {key: line[key] for key in ("hold", "surface")}
        own = scenario(method=method, axis=[{"key": TRACK, "values": [line[TRACK]]}], **words)
        (alone,) = table_of(own, tmp_path / str(i))
        for key in ("tip_deg", "slide_deg", "goes_at_deg", "first", "grip", "hold"):
            close = pytest.approx(alone[key], abs=1e-6, nan_ok=True) if "deg" in key else alone[key]
            assert line[key] == close, key
    assert {line["grip"] for line in found} == {0.9, 0.6}


def test_answers_ahead_are_kept_apart_by_hold() -> None:
    asked = scenario(axis=WORDS, fixed={TRACK: 195.0})
    batch = batch_of(asked)
    common, payloads = {**batch.common, **batch.local}, list(asked.payloads())
    ahead(common, payloads)
    together = [compliant_rows(common, p)[0] for p in payloads]
    assert len(methods._solved) == 4
    slides = {(p["hold"], r["first"]) for p, r in zip(payloads, together, strict=True)}
    assert ("rail", "slides") not in slides
    assert ("brakes", "slides") in slides


def test_engine_and_care_are_a_line_s_own(tmp_path: Any) -> None:
    axis = [
        {"key": "engine", "values": list(INSTALLED)},
        {"key": "trial", "values": ["none", "quick"]},
    ]
    found = table_of(scenario(method="tilt trial", axis=axis), tmp_path)
    for line in found:
        tried = line["trial"] == "quick"
        assert (line["trial_deg"] is not None) == tried
        assert line["trial_engine"] == (engine_version(line["engine"]) if tried else None)
        if not tried:
            assert line["tip_deg"] == line["compliant_deg"]
    assert [line["engine"] for line in found[::2]] == list(INSTALLED)


def test_maps_and_table_tell_the_words_apart(tmp_path: Any) -> None:
    ranged = [{"key": TRACK, "values": [165, 175, 185]}, {"key": PACK, "values": [60, 90, 120]}]
    asked = scenario(axis=[*ranged, *WORDS], map=[{"x": TRACK, "y": PACK}], headings_deg=[0, 90])
    run_scenario(asked, tmp_path, workers=1)
    morning = summarize(asked, tmp_path)
    named = {axes.get_title(loc="left") for figure in figures(morning) for axes in figure.axes}
    assert "90°, side-hill, left side down, wet rock, rail" in named
    assert [h.words for h in morning.headings[:2]] == ["rock, brakes", "rock, rail"]
    assert all(h.lines == 9 for h in morning.headings)
    assert how_asked(asked) == "bramble, on springs and tyres"
    assert "wet rock, rail" in summary_page(morning)


def test_maps_drawn_one_by_one_share_their_colours(tmp_path: Any) -> None:
    ranged = [{"key": TRACK, "values": [165, 175, 185]}, {"key": PACK, "values": [60, 90, 120]}]
    asked = scenario(axis=ranged, map=[{"x": TRACK, "y": PACK}], headings_deg=[0, 90])
    run_scenario(asked, tmp_path, workers=1)
    drawn = figures(summarize(asked, tmp_path))
    assert len(drawn) == 2  # a climb and a side slope lie too far apart for the same contours
    scales = [figure.axes[0].collections[0].norm for figure in drawn]
    assert {(s.vmin, s.vmax) for s in scales} == {(scales[0].vmin, scales[0].vmax)}
    tips = [c for figure in drawn for c in figure.axes[0].collections[0].get_array()]
    assert scales[0].vmin <= min(tips) < max(tips) <= scales[0].vmax


def test_indices_are_asked_for_every_word() -> None:
    found = sobol_sensitivity(scenario(method="closed form", axis=[*RANGES, WORDS[0]]), samples=32)
    assert [dict(s.words) for s in found] == [{"hold": "brakes"}, {"hold": "rail"}]
    assert [s.said for s in found] == [("heading 90", "brakes"), ("heading 90", "rail")]
    assert [a.key for a in found[0].axes] == [TRACK, PACK]


def test_ends_of_a_link_are_axes_like_any_other(tmp_path: Any) -> None:
    heights = [100.0, 108.0]
    axis = [{"key": "part.front upper link.chassis_end_mm.z", "values": heights}]
    asked = scenario_of(
        linked("bramble"),
        {"name": "links", "method": "compliant", "headings_deg": [90.0], "axis": axis},
    )
    found = table_of(asked, tmp_path)
    assert [line[axis[0]["key"]] for line in found] == heights
    assert np.ptp([line["tip_deg"] for line in found]) > 0.05


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({"hold": "rail"}, "hold: is given and is varied"),
        ({"fixed": {"grip": 0.9}}, "'surface' is varied and so is grip"),
        ({"fixed": {"engine": "bullet"}, "axis": []}, "write engine at the top"),
        ({"axis": [{"key": "hold", "values": ["brake"]}]}, "did you mean 'brakes'?"),
        ({"axis": [{"key": "surface", "values": ["moon"]}]}, "known are rock"),
        ({"axis": [{"key": "hold", "first": 1, "last": 2, "steps": 2}]}, "list its values"),
        ({"axis": [{"key": "trial", "values": ["quick"]}]}, "it goes with tilt trial"),
        ({"axis": [{"key": "engine", "values": ["ode"]}]}, "known are bullet, mujoco"),
        ({"method": "critical slope"}, "is 'rail', but the truck drives"),
        ({"map": [{"x": "hold", "y": "mass_g"}]}, "each of its values has a panel already"),
        ({"front": [{"aims": {"hold": "high", "mass_g": "low"}}]}, "none is higher"),
        ({"response": [{"name": "z", "is": "hold - 1"}]}, "cannot be worked out"),
    ],
)
def test_words_that_make_no_sense_are_said(more: dict[str, Any], said: str) -> None:
    with pytest.raises(InputError) as caught:
        scenario(**more)
    assert any(said in str(p) for p in caught.value.problems), caught.value.problems


@pytest.mark.parametrize("method", ["closed form", "compliant"])
def test_a_response_may_ask_for_a_word(method: str, tmp_path: Any) -> None:
    railed = [{"name": "railed", "is": "where(hold == 'rail', 1, 0)"}]
    for line in table_of(scenario(method=method, response=railed), tmp_path):
        assert line["railed"] == (line["hold"] == "rail")
