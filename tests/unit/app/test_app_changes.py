"""The list of changes, edited by whoever has seen it as it is; what is fitted stays what it is."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import Any

import pytest

from asking import Server, seen
from crossfall.truck.demos import demo_folder


@pytest.fixture
def server(tmp_path: Path) -> Any:
    folder = tmp_path / "shop"
    folder.mkdir()
    for name in ("bramble.toml", "bramble.changes.toml"):
        shutil.copy(demo_folder() / name, folder)
    made = Server(folder, "bramble.toml", tmp_path / "state")
    yield made
    made.close()


def listed(server: Server) -> Any:
    return server.ask("/api/changes", **seen(server.ask("/api/bench")))


def edit(server: Server, stamp: str, **asked: Any) -> Any:
    state = server.ask("/api/bench")
    return server.tell("/api/edit-changes", **seen(state), seen=stamp, asked=asked)


def price(server: Server, stamp: str, value: Any) -> Any:
    return edit(server, stamp, do="field", name="light body", field="price", value=value)


def test_two_tabs_do_not_write_over_each_other(server: Server) -> None:
    stamp = listed(server)["stamp"]
    assert price(server, stamp, 70)["stamp"] != stamp
    refused = price(server, stamp, 80)
    assert "changed by another tab" in refused["problems"][0]
    now = listed(server)
    assert next(c for c in now["changes"] if c["name"] == "light body")["price"] == 70


def test_what_is_fitted_may_cost_otherwise_but_not_go(server: Server) -> None:
    state = server.ask("/api/bench")
    server.tell("/api/fit", **seen(state), chosen={"light body": 1})
    stamp = listed(server)["stamp"]
    for asked in ({"do": "remove"}, {"do": "field", "field": "name", "value": "other"}):
        refused = edit(server, stamp, name="light body", **asked)
        assert "take it off first" in refused["problems"][0]
    assert price(server, stamp, 3)["stamp"]
    off = server.tell("/api/fit", **seen(server.ask("/api/bench")), chosen={})
    assert not off["unsaved"]


@pytest.mark.parametrize(
    ("asked", "words"),
    [
        ({"do": "field", "name": "light body", "field": "price", "value": "much"}, "price"),
        ({"do": "field", "name": "light body", "field": "swap", "value": []}, "no 'swap'"),
        ({"do": "field", "name": "nothing", "field": "price", "value": 1}, "no such change"),
        ({"do": "new", "change": {"name": "x"}}, "changes nothing"),
        ({"do": "new", "change": {"name": "x", "remove": ["no such part"]}}, "no such part"),
        ({"do": "new", "change": {"name": "light body", "remove": ["cab"]}}, "there already"),
        ({"do": "text", "text": "nonsense"}, "not valid TOML"),
        ({"do": "nothing"}, "known are field, new, remove, text"),
        ({"do": "new"}, "nothing that can be done"),
    ],
)
def test_what_makes_no_list_is_refused_and_nothing_is_written(
    server: Server, asked: Any, words: str
) -> None:
    file = server.bench.folder / "bramble.changes.toml"
    was = file.read_bytes()
    refused = edit(server, listed(server)["stamp"], **asked)
    assert refused["refused"] == 422
    assert words in refused["problems"][0]
    assert file.read_bytes() == was


def test_the_list_of_a_demo_truck_stays_as_it_is(server: Server) -> None:
    server.tell("/api/open", name="thistle.toml")
    refused = edit(server, "", do="new", change={"name": "x", "remove": ["motor"]})
    assert "demo truck" in refused["problems"][0]
    assert not (demo_folder() / "thistle.changes.toml").exists()
