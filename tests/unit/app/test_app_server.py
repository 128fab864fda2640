"""The bench as its tabs see it: every question names what the asker has in view."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from asking import Server, seen
from crossfall.app import scale_form, share
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole

NAMES = ("bramble.toml", "bramble.changes.toml", "thistle.toml", "burdock.toml")


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    place = tmp_path / "shop"
    place.mkdir()
    for name in NAMES:
        shutil.copy(demo_folder() / name, place)
    shutil.copytree(demo_folder() / "meshes", place / "meshes")
    return place


@pytest.fixture
def server(folder: Path, tmp_path: Path) -> Iterator[Server]:
    made = Server(folder, "thistle.toml", tmp_path / "state")
    yield made
    made.close()


@pytest.fixture
def bramble(server: Server) -> dict[str, Any]:
    state: dict[str, Any] = server.tell("/api/open", name="bramble.toml")
    return state


def weigh(part: str, mass: float) -> list[dict[str, Any]]:
    return [{"do": "set", "part": part, "key": "mass_g", "value": mass}]


def mass_of(state: dict[str, Any], part: str) -> float:
    return next(r["mass_g"] for r in state["rows"] if r["name"] == part)


def track(state: dict[str, Any]) -> float:
    return next(m["value"] for m in state["measures"] if m["key"] == "front.track_mm")


def edit(server: Server, state: dict[str, Any], edits: list[dict[str, Any]]) -> Any:
    return server.tell("/api/edit", **seen(state), edits=edits, what="an edit")


# Which truck, which state of it, which part


def test_no_tab_writes_into_the_truck_another_tab_opened(server: Server, folder: Path) -> None:
    mine = server.ask("/api/bench")
    other = server.tell("/api/open", name="burdock.toml")
    assert other["revision"] == mine["revision"], "the number alone would let it in"
    before = (folder / "burdock.toml").read_bytes()
    part = mine["rows"][5]["name"]
    for path, body in (
        ("/api/edit", {"edits": weigh(part, 777), "what": "mass"}),
        ("/api/try", {"edits": weigh(part, 777)}),
        ("/api/save", {"name": None, "over": True}),
        ("/api/fit", {"chosen": {}}),
        ("/api/place", {"values": {"chassis.wheelbase_mm": 300}}),
        ("/api/surface", {"surface": "wet rock"}),
        ("/api/board", {"asked": {"heading_deg": 0, "angle_deg": 40}}),
        ("/api/weigh", {"form": {"step_g": 1, "locked": True, "readings": []}, "keep": True}),
        ("/api/trial", {"headings": [0], "rail": False}),
        ("/api/go", {"to": 0}),
        ("/api/name-step", {"step": 1, "name": "x"}),
        ("/api/pin", {"key": "saved"}),
        ("/api/plan", {"asked": {"aim": "side"}}),
        *((f"/api/{act}", {}) for act in ("undo", "redo", "discard")),
    ):
        refused = server.tell(path, **seen(mine), **body)
        assert (path, refused.get("where")) == (path, "document")
        assert "burdock.toml was put on the bench" in refused["problems"][0]
    for name in ("exact", "ways", "gains", "path", "changes", "bought", "board", "readings",
                 "history", "reference"):  # fmt: skip
        refused = server.ask(f"/api/{name}", **seen(mine), heading_deg=0)
        assert (name, refused.get("where")) == (name, "document")
    assert server.ask("/api/bench")["revision"] == other["revision"]
    assert (folder / "burdock.toml").read_bytes() == before
    assert not list(folder.glob("*.board.toml"))


def test_a_question_that_names_nothing_is_refused(server: Server) -> None:
    for body in ({}, {"revision": 0}, {"document": "x", "revision": "0"}):
        assert server.tell("/api/undo", **body)["refused"] == 422
    assert server.ask("/api/exact", revision=0)["where"] == "document"


def test_an_edit_finds_its_part_by_name(server: Server) -> None:
    first = server.ask("/api/bench")
    names = [r["name"] for r in first["rows"]]
    mine = names[6]
    second = edit(server, first, [{"do": "remove", "part": names[2]}])
    stale = edit(server, first, weigh(mine, 123))
    assert stale["where"] == "tab"
    third = edit(server, second, weigh(mine, 123))  # what "Do mine on top" asks
    assert mass_of(third, mine) == 123
    assert [r["name"] for r in third["rows"]] == [n for n in names if n != names[2]]
    gone = edit(server, third, weigh(names[2], 50))
    assert f"there is no part '{names[2]}'" in gone["problems"][0]
    assert server.ask("/api/bench")["revision"] == third["revision"]


def test_a_place_is_set_axis_by_axis(server: Server, bramble: dict[str, Any]) -> None:
    at = next(r["at_mm"] for r in bramble["rows"] if r["name"] == "motor")
    one = {"do": "set", "part": "motor", "key": "at_mm.z", "value": at[2] + 5}
    other = {"do": "set", "part": "motor", "key": "at_mm.x", "value": at[0] - 3}
    state = edit(server, edit(server, bramble, [one]), [other])
    found = next(r["at_mm"] for r in state["rows"] if r["name"] == "motor")
    assert found == [at[0] - 3, at[1], at[2] + 5]


def test_a_restart_with_unsaved_work_is_no_break(folder: Path, tmp_path: Path) -> None:
    first = Server(folder, "thistle.toml", tmp_path / "state")
    state = first.ask("/api/bench")
    part = state["rows"][5]["name"]
    state = edit(first, state, weigh(part, 77))
    first.close()
    second = Server(folder, "thistle.toml", tmp_path / "state")
    assert mass_of(edit(second, state, weigh(part, 78)), part) == 78
    second.close()


def test_a_trial_is_of_the_truck_it_was_made_of(server: Server) -> None:
    state = server.ask("/api/bench")
    started = server.tell("/api/trial", **seen(state), headings=[90], rail=False)
    assert started["truck"] == state["truck"]
    server.tell("/api/trial-stop")
    part = state["rows"][5]["name"]
    changed = edit(server, state, weigh(part, 77))
    other = server.tell("/api/open", name="burdock.toml")
    back = server.tell("/api/open", name="thistle.toml")
    undone = server.tell("/api/undo", **seen(back))
    trucks = [s["truck"] for s in (changed, other, back, undone)]
    assert [t == started["truck"] for t in trucks] == [False, False, False, True]


def test_the_pulse_tells_of_another_tab_and_of_the_disk(server: Server, folder: Path) -> None:
    state = server.ask("/api/bench")
    pulse = server.ask("/api/pulse")
    assert {k: pulse[k] for k in seen(state)} == seen(state)
    part = state["rows"][5]["name"]
    path = folder / "thistle.toml"
    text = path.read_text()
    path.write_text(text + "# looked at\n")
    pulse = server.ask("/api/pulse")
    assert (pulse["disk"], pulse["revision"]) == ("", state["revision"] + 1)
    state = edit(server, server.ask("/api/bench"), weigh(part, 77))
    path.write_text(text)
    pulse = server.ask("/api/pulse")
    assert "changed by another program" in pulse["disk"]
    assert pulse["revision"] == state["revision"]


def test_half_a_surrogate_pair_is_refused(server: Server) -> None:
    state = server.ask("/api/bench")
    part = {"name": "a\ud800", "on": "chassis", "mass_g": 1, "at_mm": [0, 0, 50]}
    for path, body in (
        ("/api/edit", {"edits": [{"do": "add", "part": part}], "what": "x"}),
        ("/api/edit", {"edits": weigh("motor", 1), "what": "\udfff"}),
        ("/api/save", {"name": "\ud800", "over": False}),
        ("/api/open", {"name": "\ud800"}),
    ):
        assert server.tell(path, **seen(state), **body)["refused"] == 422


@pytest.mark.parametrize("kind", ["changes", "limits", "weighin", "board"])
def test_no_truck_is_saved_where_the_list_would_not_show_it(server: Server, kind: str) -> None:
    state = server.ask("/api/bench")
    refused = server.tell("/api/save", **seen(state), name=f"mine.{kind}", over=False)
    assert f"is the name of a {kind} file" in refused["problems"][0]


# Changes fitted


def fit(server: Server, state: dict[str, Any], **chosen: int) -> Any:
    named = {k.replace("_", " "): n for k, n in chosen.items()}
    return server.tell("/api/fit", **seen(state), chosen=named)


def test_fitted_changes_outlast_an_edit_and_are_not_made_twice(
    server: Server, bramble: dict[str, Any], folder: Path
) -> None:
    was = track(bramble)
    wide = fit(server, bramble, long_hubs=1)
    gained = track(wide) - was
    assert gained > 0
    edited = edit(server, wide, weigh("motor", 150))
    assert edited["fitted"] == {"long hubs": 1}
    again = fit(server, edited, long_hubs=1, small_pack=1)
    assert (track(again), mass_of(again, "motor")) == (was + gained, 150)
    bare = fit(server, again)
    assert (bare["fitted"], track(bare), mass_of(bare, "motor")) == ({}, was, 150)
    undone = server.tell("/api/undo", **seen(bare))
    assert undone["fitted"] == {"long hubs": 1, "small pack": 1}


def test_taking_everything_off_gives_the_very_file(server: Server, bramble: dict[str, Any]) -> None:
    state = fit(server, bramble, long_hubs=1)
    state = fit(server, state, long_hubs=1, light_body=1)
    assert not fit(server, state)["unsaved"]


def test_what_was_done_by_hand_to_a_fitted_part_stays(
    server: Server, bramble: dict[str, Any]
) -> None:
    state = fit(server, bramble, long_hubs=1)
    by_hand = {"do": "measure", "key": "front.track_mm", "value": 181.5}
    extra = {"name": "brass", "on": "chassis", "mass_g": 20, "at_mm": [0, 0, 60]}
    state = edit(server, state, [by_hand, {"do": "add", "part": extra}])
    state = edit(server, state, [{"do": "remove", "part": "winch"}])
    for chosen in ({"long_hubs": 1, "light_body": 1}, {"light_body": 1}, {}):
        state = fit(server, state, **chosen)
        assert track(state) == 181.5
        names = {r["name"] for r in state["rows"]}
        assert "brass" in names
        assert "winch" not in names


def test_saving_as_keeps_changes_and_plan(
    server: Server, bramble: dict[str, Any], folder: Path, tmp_path: Path
) -> None:
    state = fit(server, bramble, long_hubs=1)
    saved = server.tell("/api/save", **seen(state), name="mine", over=False)
    assert (saved["file"], saved["fitted"]) == ("mine.toml", {"long hubs": 1})
    assert len(server.ask("/api/changes", **seen(saved))["changes"]) > 5
    assert track(fit(server, saved, long_hubs=1)) == track(state)
    server.close()
    second = Server(folder, "mine.toml", tmp_path / "state")
    later = second.ask("/api/bench")
    assert (later["fitted"], later["unsaved"]) == ({"long hubs": 1}, False)
    assert track(fit(second, later)) == track(bramble)
    second.close()


# What it is compared with, and its history


def test_any_state_can_be_pinned_to_compare_with(
    server: Server, bramble: dict[str, Any], folder: Path
) -> None:
    heavy = edit(server, bramble, weigh("motor", 150))
    saved = server.tell("/api/save", **seen(heavy), name=None, over=False)
    heavier = edit(server, saved, weigh("motor", 190))
    masses = {}
    for key in ("opened", "saved", "step:0", "step:1", "file:thistle.toml", "auto"):
        state = server.tell("/api/pin", **seen(heavier), key=key)
        masses[key] = state["before"]["numbers"]["mass_g"]
        assert state["before"]["scene"]["parts"]
        assert state["before"]["key"] in {r["key"] for r in state["references"]}
    first = bramble["answers"]["numbers"]["mass_g"]
    assert masses["opened"] == masses["step:0"] == first
    assert masses["saved"] == masses["step:1"] == masses["auto"]
    assert masses["saved"] == pytest.approx(heavy["answers"]["numbers"]["mass_g"])
    thistle = load_truck(folder / "thistle.toml").truck
    assert masses["file:thistle.toml"] == pytest.approx(whole(thistle).mass * 1e3, abs=0.01)
    server.tell("/api/pin", **seen(heavier), key="saved")
    saved = server.tell("/api/save", **seen(heavier), name=None, over=False)
    assert saved["before"]["numbers"] == saved["answers"]["numbers"], "it follows a save"
    server.tell("/api/pin", **seen(saved), key="step:0")
    other = server.tell("/api/open", name="burdock.toml")
    assert other["before"]["what"] == "bramble, as at the start"
    assert other["before"]["numbers"]["mass_g"] == first
    heavier = server.tell("/api/open", name="bramble.toml")
    for key in ("step:9", "file:../x", "file:none.toml", "moon", "step:-1"):
        assert server.tell("/api/pin", **seen(heavier), key=key)["refused"] == 422


def test_history_is_walked_and_named(server: Server) -> None:
    state = server.ask("/api/bench")
    first, part = seen(state), state["rows"][5]["name"]
    for mass in (70, 80, 90):
        state = edit(server, state, weigh(part, mass))
    told = server.tell("/api/name-step", **seen(state), step=2, name=" eighty ")
    assert [s["name"] for s in told["steps"]] == ["", "", "eighty", ""]
    assert [s["saved"] for s in told["steps"]] == [True, False, False, False]
    assert told["now"] == 3
    state = server.tell("/api/go", **seen(state), to=2)
    assert (mass_of(state, part), state["revision"]) == (80, first["revision"] + 4)
    state = server.tell("/api/go", **seen(state), to=0)
    assert not state["unsaved"]
    state = server.tell("/api/go", **seen(state), to=3)
    assert mass_of(state, part) == 90
    assert server.tell("/api/go", **seen(state), to=4)["refused"] == 422


# Scale and board


@pytest.mark.parametrize(
    ("typed", "grams"),
    [
        ("1342, 1345", [1342, 1345]),
        ("1342 1345;1341", [1342, 1345, 1341]),
        ("2044,5", [2044.5]),
        ("2.044,5", [2044.5]),
        ("2,044.5; 2.045,0", [2044.5, 2045]),
        ("12,34", [12.34]),
        ("0,125", [0.125]),
        (" 88 , 89 ", [88, 89]),
        ("", []),
    ],
)
def test_a_weight_is_read_as_it_is_meant(typed: str, grams: list[float]) -> None:
    assert scale_form.loads(typed) == grams


@pytest.mark.parametrize("typed", ["1342,1345", "2.044", "2,044", "abc", "1e3", "1.2.3", "-5"])
def test_a_weight_that_could_be_two_things_is_asked_about(typed: str) -> None:
    with pytest.raises(InputError, match=r"more than one thing|is no weight"):
        scale_form.loads(typed)


def test_kept_readings_are_read_back(server: Server, folder: Path) -> None:
    state = server.ask("/api/bench")
    form = {
        "step_g": 0.5,
        "locked": True,
        "readings": [
            {"at": "front", "raised": "", "block_mm": "", "loads": "1342,5; 1343"},
            {"at": "rear", "raised": "", "block_mm": "", "loads": "1.210,5"},
            {"at": "left", "raised": "", "block_mm": "", "loads": ""},
            {"at": "rear", "raised": "front", "block_mm": "90", "loads": "1310"},
        ],
    }
    assert server.ask("/api/readings", **seen(state))["form"] is None
    found = server.tell("/api/weigh", **seen(state), form=form, keep=True)
    assert found["found"][0]["value"] == pytest.approx(2553.25, abs=1)
    back = server.ask("/api/readings", **seen(state))["form"]
    kept = [r for r in form["readings"] if r["loads"]]
    assert [r["at"] for r in back["readings"]] == [r["at"] for r in kept]
    assert [scale_form.loads(r["loads"]) for r in back["readings"]] == [
        scale_form.loads(r["loads"]) for r in kept
    ]
    assert (back["step_g"], back["readings"][2]["block_mm"]) == (0.5, "90")
    more = folder / "thistle.weighin.toml"
    more.write_text(more.read_text().replace("[scale]", "[scale]\naccuracy_percent = 1"))
    answer = server.ask("/api/readings", **seen(state))
    assert (answer["there"], answer["form"]) == (True, None)


def test_a_doubtful_reading_is_a_sentence_that_names_it(server: Server) -> None:
    state = server.ask("/api/bench")
    line = {"at": "front", "raised": "", "block_mm": "", "loads": "1342,1345"}
    form = {"step_g": 1, "locked": True, "readings": [line]}
    refused = server.tell("/api/weigh", **seen(state), form=form, keep=True)
    assert refused["problems"][0].startswith("reading 1: '1342,1345' could be more than one")


def test_a_board_reading_is_taken_out_again(server: Server, folder: Path) -> None:
    state = server.ask("/api/bench")
    for angle in (38.0, 20.0):
        asked = {"heading_deg": 90, "angle_deg": angle}
        card = server.tell("/api/board", **seen(state), asked=asked)
    first, second = card["readings"]
    wrong = {"remove": first["number"], "angles_deg": second["angles_deg"]}
    refused = server.tell("/api/board", **seen(state), asked=wrong)
    assert "no such reading any more" in refused["problems"][0]
    right = {"remove": second["number"], "angles_deg": second["angles_deg"]}
    card = server.tell("/api/board", **seen(state), asked=right)
    assert [r["measured_deg"] for r in card["readings"]] == [38.0]
    last = {"remove": 0, "angles_deg": [38.0]}
    assert server.tell("/api/board", **seen(state), asked=last)["readings"] == []
    again = server.tell("/api/board", **seen(state), asked={"heading_deg": 0, "angle_deg": 41})
    assert [r["measured_deg"] for r in again["readings"]] == [41.0]
    text = (folder / "thistle.board.toml").read_text()
    assert "resolution_deg = 0.1          # one step" in text


def test_what_is_tried_moves_the_list_and_the_dials(
    server: Server, bramble: dict[str, Any]
) -> None:
    edits = [*weigh("motor", 222), {"do": "measure", "key": "front.track_mm", "value": 190}]
    tried = server.tell("/api/try", **seen(bramble), edits=edits)
    assert (mass_of(tried, "motor"), track(tried)) == (222, 190)
    assert server.ask("/api/bench")["revision"] == bramble["revision"]


def test_every_answer_is_plain_json(server: Server, bramble: dict[str, Any]) -> None:
    for name in ("bench", "pulse", "changes", "history", "readings"):
        answer = server.ask(f"/api/{name}", **seen(bramble))
        json.dumps(answer, allow_nan=False)


def test_a_copy_keeps_to_itself(server: Server) -> None:
    state = server.ask("/api/bench")
    state["scene"]["name"] = "</script><script>alert(1)</script>"
    page = share.copy(state, {}, "2030-01-01").decode()
    assert "<script>alert" not in page
    assert page.count("<script") == page.count("</script>") == 2
    assert "burdock" not in page
    assert "/static/" not in page.split("<script")[0]
