"""A sweep run from the page: watched, stopped, its table read, and bad ones refused."""

from __future__ import annotations

import shutil
import time
from pathlib import Path
from typing import Any

import pytest

from asking import Server, seen
from crossfall.truck.demos import demo_folder

LONG = 300  # s to wait for at most, on a machine with other work to do
TRACK = {"key": "both.track_mm", "first": 150, "last": 190, "steps": 5}
RAISE = {"key": "chassis.raise_mm", "first": -10, "last": 10, "steps": 3}


@pytest.fixture
def server(tmp_path: Path) -> Any:
    folder = tmp_path / "shop"
    folder.mkdir()
    shutil.copy(demo_folder() / "thistle.toml", folder)
    made = Server(folder, "thistle.toml", tmp_path / "state")
    yield made
    made.close()


def run(server: Server, **asked: Any) -> Any:
    state = server.ask("/api/bench")
    whole = {"axes": [TRACK, RAISE], "headings": [90], "method": "closed form", **asked}
    return server.tell("/api/sweep-run", **seen(state), asked=whole)


def awaited(server: Server, *ends: str) -> Any:
    end = time.monotonic() + LONG
    while time.monotonic() < end:
        state = server.ask("/api/sweep-state")
        if state["state"] in ends:
            return state
        time.sleep(0.1)
    pytest.fail(f"still {state}")


def test_a_sweep_of_two_keys_gives_a_table_of_the_truck_as_edited(server: Server) -> None:
    assert server.ask("/api/sweep-state")["state"] == "none"
    state = server.ask("/api/bench")
    edits = [{"do": "set", "part": "motor", "key": "mass_g", "value": 250}]
    server.tell("/api/edit", **seen(state), edits=edits, what="heavier")
    assert run(server)["total"] == 15
    done = awaited(server, "done")
    assert done["done"] == done["total"] == 15
    assert server.ask("/api/sweeps")["tables"] == [done["table"]]
    columns = server.ask("/api/sweep", name=done["table"])["columns"]
    assert sorted(set(columns["both.track_mm"])) == [150, 160, 170, 180, 190]
    assert sorted(set(columns["chassis.raise_mm"])) == [-10, 0, 10]
    # a point put on the bench answers what its line of the table says
    i = columns["both.track_mm"].index(180)
    values = {k: columns[k][i] for k in ("both.track_mm", "chassis.raise_mm")}
    placed = server.tell("/api/place", **seen(server.ask("/api/bench")), values=values)
    across = placed["answers"]["heading_deg"].index(90)
    rigid = placed["answers"]["rigid_deg"][across]
    assert rigid == pytest.approx(columns["tip_deg"][i], abs=0.006)  # told to a hundredth


def test_it_is_stopped_and_keeps_what_is_done(server: Server) -> None:
    steps = {**TRACK, "steps": 200}
    assert run(server, axes=[steps, RAISE], method="compliant")["state"] == "running"
    end = time.monotonic() + LONG
    while server.ask("/api/sweep-state")["done"] == 0 and time.monotonic() < end:
        time.sleep(0.1)
    assert server.tell("/api/sweep-stop")["state"] in ("stopping", "stopped")
    stopped = awaited(server, "stopped")
    assert 0 < stopped["done"] < stopped["total"]
    lines = server.ask("/api/sweep", name=stopped["table"])["rows"]
    assert lines >= stopped["done"]


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        ({"axes": [{**TRACK, "key": "no.such_mm"}]}, "no.such"),
        ({"axes": [{**TRACK, "last": 150}]}, "more than first"),
        ({"axes": [{**TRACK, "steps": 1}]}, "steps"),
        ({"axes": [{**TRACK, "first": None}]}, "has no range"),
        ({"axes": []}, "one or two things"),
        ({"axes": [{**TRACK, "steps": 500}, {**RAISE, "steps": 500}]}, "at most 20000"),
        ({"method": "tilt trial"}, "no such method"),
        ({"headings": []}, "no way to stand"),
    ],
)
def test_what_cannot_be_swept_is_refused(server: Server, asked: Any, words: str) -> None:
    refused = run(server, **asked)
    assert refused["refused"] == 422
    assert words in refused["problems"][0]
    assert server.ask("/api/sweep-state")["state"] == "none"
