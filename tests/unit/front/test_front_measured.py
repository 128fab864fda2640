"""Scale, board and both at the front door: what the verbs say, and a truck to go on with."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

import crossfall
from crossfall import cli

SCALES = {
    "scale": {"resolution_g": 1},
    "suspension": {"locked": True},
    "reading": [
        {"at": "front", "load_g": [1650, 1652]},
        {"at": "rear", "load_g": [2049, 2048]},
        {"at": "left", "load_g": [1846]},
        {"at": "rear", "raised": "front", "block_mm": 90, "load_g": [2256, 2257]},
    ],
}
BOARD = {"tip": [{"heading_deg": 180, "angle_deg": [55.6, 55.8], "locked": True, "rail": True}]}


def toml(data: dict, *above: str) -> str:
    """A readings or board file of the mapping."""
    lines = []
    for key, value in data.items():
        if isinstance(value, dict):
            lines += [f"[{key}]", *(f"{k} = {json.dumps(v)}" for k, v in value.items())]
        else:
            for one in value:
                lines += [f"[[{key}]]", *(f"{k} = {json.dumps(v)}" for k, v in one.items())]
    return "\n".join(lines)


def printed(*words: str) -> dict:
    done = CliRunner().invoke(cli.crossfall, [*words, "--json"])
    assert done.exit_code in (0, 1), done.output
    return json.loads(done.stdout)


@pytest.fixture(scope="module")
def files(tmp_path_factory) -> tuple[str, str]:
    folder = tmp_path_factory.mktemp("measured")
    scales, board = folder / "scales.toml", folder / "board.toml"
    scales.write_text(toml(SCALES))
    board.write_text(toml(BOARD))
    return str(scales), str(board)


def without(given: dict, *names: str) -> dict:
    return {k: v for k, v in given.items() if k not in ("schema", "verb", *names)}


def test_a_weigh_in_is_that_of_the_command_line(files):
    wanted = without(printed("weigh-in", files[0], "--truck", "bramble"))
    for readings in (SCALES, files[0]):
        found = crossfall.weigh_in(readings, "bramble")
        assert found.plain() == wanted
    assert "mass, g   3700 (" in repr(found)
    assert "times better" in repr(found)


def test_what_a_board_should_show_is_that_of_the_command_line(tmp_path):
    wanted = printed("board", "bramble", "--file", str(tmp_path / "none.toml"))["predictions"]
    found = crossfall.expected("bramble")
    order = [wanted[i] for i in (2, 0, 3, 1)]
    assert found.plain() == order
    one = crossfall.expected("bramble", 90)[0]
    assert one.predicted_deg == pytest.approx(wanted[0]["predicted_deg"], abs=1e-9)


def test_a_board_is_that_of_the_command_line(files):
    wanted = without(printed("board", "bramble", "--file", files[1]), "file")
    for readings in (BOARD, files[1]):
        assert without(crossfall.board("bramble", readings).plain(), "file") == wanted
    with pytest.raises(ValueError, match="no readings"):
        crossfall.board("bramble", {"tip": []})


def test_what_is_reconciled_can_be_asked_edited_and_saved(files, tmp_path):
    path = tmp_path / "theirs.toml"
    wanted = printed(
        *("reconcile", "bramble", "--scales", files[0], "--board", files[1], "-o", str(path))
    )
    found = crossfall.reconcile("bramble", SCALES, BOARD)
    assert found.plain() == without(wanted, "file")
    theirs = crossfall.load(path)
    assert found.vehicle.weigh() == theirs.weigh()
    assert found.vehicle.weigh().cg_mm[2] == pytest.approx(found.cg_z_mm.after, abs=0.05)
    wider = found.vehicle.edit({"both.track_mm": 190})
    assert crossfall.load(wider.save(tmp_path / "mine.toml")).tip() == wider.tip()


def test_an_edited_truck_is_reconciled_from_where_it_is():
    higher = crossfall.load("bramble").edit({"part.battery pack.at_mm.z": 130})
    found = crossfall.reconcile(higher, board=BOARD)
    height = found.vehicle.value("part.battery pack.at_mm.z")
    moves = {m.part: m.place_by_mm[2] for m in found.moves}
    assert height == pytest.approx(130 + moves["battery pack"], abs=0.01)


def test_readings_that_do_not_fit_are_refused_with_their_key():
    with pytest.raises(crossfall.InputError, match="load_g"):
        crossfall.weigh_in({**SCALES, "reading": [{"at": "front", "load_g": -1}]}, "bramble")
    with pytest.raises(crossfall.InputError, match="axle"):
        crossfall.weigh_in({**SCALES, "reading": SCALES["reading"][:1]}, "bramble")
    with pytest.raises(ValueError, match="scales, board"):
        crossfall.reconcile("bramble")
