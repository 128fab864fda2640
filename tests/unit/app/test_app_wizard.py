"""From no file at all to one that agrees with its scale readings, one question at a time."""

from __future__ import annotations

import re
import shutil
from pathlib import Path
from typing import Any

import pytest

from asking import Server, seen
from crossfall.app.wizard import CAUTIONS, INSTRUCTIONS, wizard_questions
from crossfall.measurement.readings import QUESTIONS
from crossfall.truck.demos import demo_folder

TYPED = {
    "wheelbase_mm": "313",
    "front_track_mm": "176",
    "rear_track_mm": "174 mm",
    "tyre_diameter_mm": "118",
    "tyre_width_mm": "44",
    "front_left_g": "921",
    "front_right_g": "918",
    "rear_left_g": "760",
    "rear_right_g": "764",
    "block_mm": "90",
    "raised_g": "1743,5",
}


@pytest.fixture
def server(tmp_path: Path) -> Any:
    folder = tmp_path / "shop"
    folder.mkdir()
    shutil.copy(demo_folder() / "thistle.toml", folder)
    made = Server(folder, "thistle.toml", tmp_path / "state")
    yield made
    made.close()


def begin(server: Server, **more: str) -> Any:
    return server.tell("/api/begin", name="alder", typed={**TYPED, **more}, again=False)


def test_every_question_has_words_and_a_picture_that_is_there(server: Server) -> None:
    told = server.ask("/api/wizard", **seen(server.ask("/api/bench")))
    assert [q["key"] for q in told["questions"] if q["first"]] == [q.key for q in QUESTIONS]
    for q in told["questions"]:
        assert q["do"]
        assert q["picture"] == "" or told["pictures"][q["picture"]].startswith("<svg viewBox")
        assert q["caution"] == "" or q["caution"] in told["cautions"]
    assert {q.key for q in QUESTIONS} <= set(INSTRUCTIONS)
    # work that can hurt is never asked for without its caution
    cautioned = {q["key"]: q["caution"] for q in wizard_questions()}
    assert cautioned["front_left_g"] == cautioned["pack_g"] == "pack"
    assert cautioned["raised"] == cautioned["raised_g"] == "block"
    assert {"fall", "dust", "models"} <= set(CAUTIONS)
    assert not re.search(r"style=|<script|on\w+=", "".join(told["pictures"].values()))


def test_one_reading_at_a_time_is_looked_at(server: Server) -> None:
    def asked(key: str, typed: str) -> Any:
        return server.tell("/api/reading", key=key, typed=typed)

    assert asked("wheelbase_mm", " 313,5 mm") == {"value": 313.5}
    assert asked("held", "yes") == {"value": True}
    assert asked("pack_at_mm", "20, 0; 95") == {"value": [20, 0, 95]}
    for key, typed in (("wheelbase_mm", "long"), ("wheelbase_mm", "0"), ("raised", "left"),
                       ("pack_at_mm", "1,2"), ("nonsense", "1"), ("raised_g", "1e99")):  # fmt: skip
        refused = asked(key, typed)
        assert refused["refused"] == 422, (key, typed)
        assert refused["problems"][0]


def test_a_truck_is_begun_and_lies_on_the_bench(server: Server) -> None:
    found = begin(server)
    said, bench = found["begun"], found["bench"]
    assert bench["file"] == said["file"] == "alder.toml"
    assert said["mass_g"] == pytest.approx(921 + 918 + 760 + 764)
    assert bench["answers"]["numbers"]["mass_g"] == pytest.approx(said["mass_g"], abs=0.01)
    assert said["next"]
    assert "alder.readings.toml" not in bench["trucks"]
    told = server.ask("/api/wizard", **seen(bench))
    assert told["as_begun"]
    more = {"wheel_g": "155"}
    again = server.tell("/api/begin", name="alder", typed=more, again=True)
    assert again["bench"]["answers"]["numbers"]["mass_g"] == pytest.approx(said["mass_g"], abs=0.01)
    assert any(r["name"] == "wheel" and r["mass_g"] == 155 for r in again["bench"]["rows"])


def test_what_cannot_be_a_truck_is_refused_and_writes_nothing(server: Server) -> None:
    for name, more, words in (
        ("thistle", {}, "is there already"),
        ("../alder", {}, "usable file name"),
        ("alder", {"raised_g": "9000"}, "all of the truck"),
        ("alder", {"wheelbase_mm": "x"}, "number of mm"),
    ):
        refused = server.tell("/api/begin", name=name, typed={**TYPED, **more}, again=False)
        assert refused["refused"] == 422
        assert words in refused["problems"][0]
    assert [p.name for p in server.bench.folder.iterdir()] == ["thistle.toml"]


def test_begun_by_hand_is_not_begun_again(server: Server) -> None:
    bench = begin(server)["bench"]
    edits = [{"do": "measure", "key": "chassis.wheelbase_mm", "value": 320}]
    bench = server.tell("/api/edit", **seen(bench), edits=edits, what="longer")
    refused = server.tell("/api/begin", name="alder", typed={"wheel_g": "150"}, again=True)
    assert "not saved" in refused["problems"][0]
    server.tell("/api/save", **seen(bench), name=None, over=False)
    refused = server.tell("/api/begin", name="alder", typed={"wheel_g": "150"}, again=True)
    assert "changed by hand" in refused["problems"][0]


def test_the_file_comes_to_agree_with_the_scale(server: Server) -> None:
    bench = begin(server)["bench"]
    nothing = server.tell("/api/agreement", **seen(bench), put=False)
    assert "kept beside this truck" in nothing["problems"][0]
    sums = {"front": 1844, "rear": 1531, "left": 1686}  # 12 g more than the corners made
    readings = [{"at": k, "raised": "", "block_mm": "", "loads": str(v)} for k, v in sums.items()]
    form = {"step_g": 1, "locked": True, "readings": readings}
    server.tell("/api/weigh", **seen(bench), form=form, keep=True)
    found = server.tell("/api/agreement", **seen(bench), put=False)
    assert found["bench"] is None
    mass = found["found"]["sums"][0]
    assert mass["before"] < mass["after"]
    assert found["found"]["moves"]
    put = server.tell("/api/agreement", **seen(bench), put=True)
    mass_now = put["bench"]["answers"]["numbers"]["mass_g"]
    assert mass_now == pytest.approx(mass["after"], abs=0.01)
    assert put["bench"]["undo"] == "brought together with scale and board"
    after = server.tell("/api/agreement", **seen(put["bench"]), put=False)["found"]
    assert (after["counted"], after["moves"]) == ("all", [])  # no reading pulls a second time
    readings[0]["loads"] = "1850"
    form = {"step_g": 1, "locked": True, "readings": readings}
    server.tell("/api/weigh", **seen(put["bench"]), form=form, keep=True)
    more = server.tell("/api/agreement", **seen(put["bench"]), put=False)["found"]
    assert more["counted"] == "some"
