"""The suspension on the page: the verb's own numbers, and moves that can be made."""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner

from asking import Server, seen
from crossfall.cli import crossfall
from linked_files import linked_text
from numbered_files import numbered_text


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    place = tmp_path / "shop"
    place.mkdir()
    (place / "numbered.toml").write_text(numbered_text("bramble"), encoding="utf-8")
    (place / "linked.toml").write_text(linked_text("bramble", shocks=True), encoding="utf-8")
    return place


@pytest.fixture
def server(folder: Path, tmp_path: Path) -> Iterator[Server]:
    made = Server(folder, "linked.toml", tmp_path / "state")
    yield made
    made.close()


@pytest.fixture
def verb(folder: Path) -> dict[str, Any]:
    args = ["suspension", str(folder / "linked.toml"), "--json"]
    done = CliRunner().invoke(crossfall, args, catch_exceptions=False)
    found: dict[str, Any] = json.loads(done.output)
    return found


def test_page_and_verb_say_the_same(server: Server, verb: dict[str, Any]) -> None:
    state = server.ask("/api/bench")
    told = server.ask("/api/suspension", **seen(state))
    assert set(told) == {"truck"}, "as saved it is compared with itself"
    assert told["truck"]["linked"]
    for mine, theirs in zip(told["truck"]["axles"], verb["axles"], strict=True):
        assert {k: mine[k] for k in theirs} == theirs
    moves = server.ask("/api/suspension-moves", **seen(state))
    mine = [{k: v for k, v in move.items() if k != "edit"} for move in moves["moves"]]
    assert mine == verb["moves"]
    assert (moves["moved_by_mm"], moves["surface"]) == (verb["moved_by_mm"], verb["surface"])


def test_links_and_shocks_are_drawn_where_their_ends_are(server: Server) -> None:
    told = server.ask("/api/suspension", **seen(server.ask("/api/bench")))
    front = told["truck"]["axles"][0]["rods"]
    assert sum(rod["shock"] for rod in front) == 2
    shocks = [rod for rod in front if rod["shock"]]
    assert shocks[0]["chassis_mm"][1] == -shocks[1]["chassis_mm"][1], "left and right"
    assert all(rod["chassis_mm"][2] > rod["axle_mm"][2] for rod in shocks)


def test_a_move_can_be_made_and_does_what_was_said(server: Server) -> None:
    state = server.ask("/api/bench")
    moves = server.ask("/api/suspension-moves", **seen(state))["moves"]
    best = max((m for m in moves if not m["why_not"]), key=lambda m: abs(m["climb_deg"]))
    climb = server.ask("/api/ways", **seen(state))["ways"][0]
    state = server.tell("/api/edit", **seen(state), edits=[best["edit"]], what="a link end")
    then = server.ask("/api/ways", **seen(state))["ways"][0]
    free = [w["compliant_deg"] or w["rail_deg"] for w in (climb, then)]
    assert free[1] - free[0] == pytest.approx(best["climb_deg"], abs=0.02)
    both = server.ask("/api/suspension", **seen(state))
    assert both["truck"] != both["reference"]


def test_a_truck_without_links_says_so(server: Server) -> None:
    state = server.tell("/api/open", name="numbered.toml")
    told = server.ask("/api/suspension", **seen(state))
    assert not told["truck"]["linked"]
    assert told["truck"]["axles"][0]["instant_centre_mm"] == [None, None]
    assert server.ask("/api/suspension-moves", **seen(state))["moves"] == []
