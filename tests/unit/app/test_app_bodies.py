"""What the page sends is held to models, what it is told too, and its types are made from them."""

from __future__ import annotations

import re
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from asking import Server, seen
from crossfall.answers.keys import KEYS, TRIAL_KEYS
from crossfall.app.typescript import type_declarations
from crossfall.truck.demos import demo_folder

SOURCE = Path(__file__).resolve().parents[3] / "sim" / "page" / "src" / "types.ts"


@pytest.fixture(scope="module")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Server]:
    folder = tmp_path_factory.mktemp("shop")
    shutil.copy(demo_folder() / "thistle.toml", folder)
    shutil.copytree(demo_folder() / "meshes", folder / "meshes")
    made = Server(folder, "thistle.toml", folder / "state")
    yield made
    made.close()


def test_the_page_was_written_for_these_models() -> None:
    """`python -m crossfall.app.typescript sim/page/src/types.ts` writes it anew."""
    assert SOURCE.read_text("utf-8") == type_declarations()


def test_no_type_is_declared_twice() -> None:
    names = re.findall(r"^export \w+ (\w+)", type_declarations(), re.MULTILINE)
    assert len(names) > 80
    assert sorted(names) == sorted(set(names))


@pytest.mark.parametrize(("name", "keys"), [("TipAnswer", KEYS), ("TrialAnswer", TRIAL_KEYS)])
def test_answers_have_the_one_schema_of_keys(name: str, keys: Any) -> None:
    (body,) = re.findall(rf"export interface {name} {{\n(.*?)\n}}", type_declarations(), re.DOTALL)
    lines = [line for line in body.split("\n") if not line.startswith("  /**")]
    assert [line.split(":")[0].strip() for line in lines] == [key.name for key in keys]
    for key, line in zip(keys, lines, strict=True):
        assert line.endswith("| null;") == key.may_be_null, key.name
    assert f"/** {keys[0].meaning} */" in body


COURSE = {"slope_deg": 10, "speed_mm_per_s": 200, "points_mm": [[0, 0], [500, 0]], "stones": [],
          "ramps": []}  # fmt: skip


@pytest.mark.parametrize(
    ("path", "body", "said"),
    [
        ("go", {"to": "2"}, "to: is the text '2'; it must be a whole number"),
        ("go", {}, "to: is missing"),
        ("go", {"to": 10**12}, "to: is 1000000000000"),
        ("pin", {"key": None}, "key: is None"),
        ("edit", {"edits": "all", "what": "x"}, "edits: is the text 'all'"),
        ("edit", {"edits": [{"do": "sett"}], "what": "x"}, "edits[0].do: is the text 'sett'"),
        ("edit", {"edits": [{"do": "remove"}], "what": "x"}, "edits[0].part: is missing"),
        ("edit", {"edits": [7], "what": "x"}, "edits[0]: is 7; it must be a table"),
        ("go", {"to": 1, "waht": 1}, "waht: is not a known key"),
        ("save", {"name": 5, "over": True}, "name: is 5; it must be text"),
        ("trial", {"headings": ["90"]}, "headings[0]: is the text '90'; it must be a number"),
        ("course", {"course": {**COURSE, "points_mm": [[0, 0, 0]]}}, "course.points_mm[0]"),
        ("course", {"course": {**COURSE, "slope": 3}}, "did you mean 'slope_deg'?"),
        (
            "weigh",
            {"form": {"step_g": 1, "locked": 1, "readings": []}, "keep": True},
            "form.locked",
        ),
        ("plan", {"asked": {"aim": "side", "budget": "lots"}}, "asked.budget: is the text 'lots'"),
        ("board", {"asked": {"heading_deg": True}}, "asked.heading_deg: is true"),
        ("fit", {"chosen": {"x": 1.5}}, "chosen.x: is 1.5; it must be a whole number"),
        ("place", {"values": {"x": []}}, "values.x: is an array of 0; it must be a number"),
    ],
)
def test_a_bad_body_is_one_sentence(server: Server, path: str, body: Any, said: str) -> None:
    told = server.tell(f"/api/{path}", **seen(server.ask("/api/bench")), **body)
    assert told["refused"] == 422
    (sentence,) = told["problems"]
    assert sentence.startswith("request: ")
    assert said in sentence


@pytest.mark.parametrize(
    ("query", "said"),
    [
        ({"heading_deg": "x"}, "heading_deg: is the text 'x'; it must be a number"),
        ({"heading_deg": "nan"}, "heading_deg"),
        ({}, "heading_deg: is missing"),
        ({"heading_deg": 0, "revision": "one"}, "revision"),
    ],
)
def test_a_bad_question_is_one_sentence(server: Server, query: Any, said: str) -> None:
    state = seen(server.ask("/api/bench"))
    told = server.ask("/api/path", **{**state, **query})
    (sentence,) = told["problems"]
    assert said in sentence
