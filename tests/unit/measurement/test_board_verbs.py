"""weigh-in, board and reconcile on the command line: one JSON answer, exit status, sentences."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

import crossfall
from crossfall import cli

SCALES = """\
[scale]
resolution_g = 1
[suspension]
locked = true
[[reading]]
at = "front"
load_g = [1650, 1652, 1649]
[[reading]]
at = "rear"
load_g = [2040, 2043, 2041]
[[reading]]
at = "left"
load_g = [1840, 1838, 1842]
[[reading]]
at = "right"
load_g = [1850, 1851, 1849]
[[reading]]
at = "rear"
raised = "front"
block_mm = 90
load_g = [2240, 2243, 2238]
"""


def run(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], *args: object
) -> tuple[int, str, str]:
    monkeypatch.setattr("sys.argv", ["crossfall", *map(str, args)])
    with pytest.raises(SystemExit) as ended:
        cli.main()
    out, err = capsys.readouterr()
    return int(ended.value.code or 0), out, err


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "s.toml").write_text(SCALES)
    return tmp_path


def test_weigh_in_answers_in_json_with_units(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    status, out, _ = run(monkeypatch, capsys, "weigh-in", "s.toml", "--truck", "bramble", "--json")
    answer = json.loads(out)
    assert status == 0
    assert answer["mass_g"]["value"] == pytest.approx(3691, abs=4)
    low, value, high = (answer["cg_z_mm"][k] for k in ("low_95", "value", "high_95"))
    assert low < value < high
    assert answer["next"][0]["times_better"] >= answer["next"][1]["times_better"] > 1


def test_weigh_in_with_an_impossible_reading_answers_no(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (here / "s.toml").write_text(SCALES.replace("[2040, 2043, 2041]", "[2140, 2143, 2141]"))
    status, out, _ = run(monkeypatch, capsys, "weigh-in", "s.toml", "--truck", "bramble")
    assert status == 1
    assert "cannot be believed" in out
    assert "line 8" in out


def test_bad_input_is_one_line_and_status_2(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (here / "s.toml").write_text(SCALES.replace('at = "rear"', 'at = "reer"', 1))
    status, out, err = run(monkeypatch, capsys, "weigh-in", "s.toml", "--truck", "bramble")
    assert (status, out) == (2, "")
    assert err == "crossfall: s.toml:9: reading[1].at: is the text 'reer'; did you mean 'rear'?\n"
    status, _, err = run(monkeypatch, capsys, "weigh-in", "s.toml")
    assert status == 2
    (here / "one.toml").write_text(SCALES.split('[[reading]]\nat = "rear"')[0])
    status, _, err = run(monkeypatch, capsys, "weigh-in", "one.toml", "--truck", "bramble")
    assert status == 2
    assert "do not add up to the whole truck" in err


def test_board_predicts_records_and_judges(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    status, out, _ = run(monkeypatch, capsys, "board", "bramble", "--json")
    expected = {p["heading_deg"]: p for p in json.loads(out)["predictions"]}
    assert status == 0
    assert not (here / "bramble.board.toml").exists()
    near = expected[0.0]["predicted_deg"] + 0.1
    args = ("--heading", 0, "--angle", near, "--angle", near, "--angle", near + 0.1, "--json")
    status, out, _ = run(monkeypatch, capsys, "board", "bramble", *args)
    first: dict[str, Any] = json.loads(out)
    assert (status, first["agrees"]) == (0, True)
    far = ("--heading", 180, "--angle", 40, "--angle", 40.1, "--angle", 40.2)
    status, out, _ = run(monkeypatch, capsys, "board", "bramble", *far)
    assert status == 1
    assert "does not agree" in out
    status, out, _ = run(monkeypatch, capsys, "board", "bramble", "--json")
    second = json.loads(out)
    assert status == 1
    assert [h["heading_deg"] for h in second["headings"]] == [0.0, 180.0]
    assert second["headings"][1]["en_number"] < -1


def test_board_prints_no_negative_half_width(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """With a railed climb and both sides of a truck that leans far, its springs free."""
    (here / "burdock.board.toml").write_text(
        "".join(
            f"[[tip]]\nheading_deg = {h}\nangle_deg = {a}\nrail = true\n"
            for h, a in ((90, [33.0, 33.2]), (270, [32.9, 33.1]), (0, [50.4, 50.6]))
        )
    )
    _, out, err = run(
        monkeypatch, capsys, "board", "burdock", "--file", str(here / "burdock.board.toml")
    )
    assert "mm inside the tyres' centre planes" in " ".join(out.split())
    assert "half-width of" not in out
    assert "only side slopes" not in err


def test_a_slide_that_disagrees_is_no_matter_of_headings(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    args = ("--heading", 90, "--angle", 10, "--angle", 10.2, "--slid")
    status, out, err = run(monkeypatch, capsys, "board", "bramble", *args)
    assert status == 1
    assert "single cause" not in out
    assert "lower it to about 0.18" in " ".join(err.split())


@pytest.mark.parametrize(
    "args", [("--heading", "90"), ("--angle", "30"), ("--heading", "90", "--angle", "95")]
)
def test_board_refuses_half_a_reading_and_writes_nothing(
    here: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    args: tuple[str, ...],
) -> None:
    status, out, err = run(monkeypatch, capsys, "board", "bramble", *args)
    assert (status, out) == (2, "")
    assert err.startswith("crossfall: ")
    assert list(here.glob("*.board.toml")) == []


def test_reconcile_writes_a_new_file_once(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    args = ("reconcile", "bramble", "--scales", "s.toml", "--json")
    status, out, _ = run(monkeypatch, capsys, *args)
    answer = json.loads(out)
    assert status == (0 if answer["agrees"] else 1)
    assert Path(answer["file"]) == here / "bramble.reconciled.toml"
    assert answer["mass_g"]["after_sd"] < answer["mass_g"]["before_sd"]
    written = (here / "bramble.reconciled.toml").read_bytes()
    status, _, err = run(monkeypatch, capsys, *args)
    assert status == 2
    assert "nothing is overwritten" in err
    assert (here / "bramble.reconciled.toml").read_bytes() == written


def test_reconcile_takes_the_surface_of_the_board(
    here: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from crossfall.measurement import reconcile

    board = here / "b.toml"
    board.write_text("[[tip]]\nheading_deg = 0\nangle_deg = [47, 47.1]\n")
    asked = []
    outlook = reconcile.outlook
    monkeypatch.setattr(
        reconcile, "outlook", lambda t, r, grip: asked.append(grip) or outlook(t, r, grip)
    )
    args = ("reconcile", "bramble", "--board", board)
    run(monkeypatch, capsys, *args, "--surface", "rock")
    run(monkeypatch, capsys, *args, "-o", here / "other.toml")
    assert asked[0].surface == "rock"
    assert asked[1].surface == "tilt board"
    status, _, err = run(monkeypatch, capsys, *args, "-o", here / "x.toml", "--surface", "ice")
    assert status == 2
    assert "no surface 'ice'" in err
    found = crossfall.reconcile("bramble", board=board, surface="rock")
    assert asked[2].surface == "rock"
    assert found.agrees in (True, False)
