"""`crossfall begin`: asks, takes options or a file, and never leaves half a file or a traceback."""

from __future__ import annotations

import json
import os
import pty
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from measured_builds import QUICK

OPTIONS = [
    text
    for key, value in QUICK.items()
    if key != "name"
    for text in (f"--{key.replace('_', '-')}", str(value))
]


def run(folder: Path, *words: str, stdin: Any = subprocess.DEVNULL) -> Any:
    return subprocess.run(
        [sys.executable, "-m", "crossfall.cli", *words],
        cwd=folder,
        stdin=stdin,
        capture_output=True,
        text=True,
        env={**os.environ, "COLUMNS": "200"},
        check=False,
    )


def test_options_make_a_truck_that_every_verb_reads(tmp_path: Path) -> None:
    first = run(tmp_path, "begin", "mine", *OPTIONS, "--json")
    assert first.returncode == 0, first.stderr
    told = json.loads(first.stdout)
    assert told["verb"] == "begin"
    assert abs(told["mass_g"] - 3680) < 1e-6
    assert [h["heading_deg"] for h in told["headings"]] == [0, 90, 180, 270]
    weighed = json.loads(run(tmp_path, "weigh", "mine.toml", "--json").stdout)
    assert weighed["mass_g"] == pytest.approx(3680, abs=0.01)
    tilted = json.loads(run(tmp_path, "tilt", "mine.toml", "--no-trial", "--json").stdout)
    for ours in told["headings"]:
        same = next(h for h in tilted["headings"] if h["heading_deg"] == ours["heading_deg"])
        if ours["slides_first"]:
            assert same["rail_deg"] == pytest.approx(ours["compliant_deg"])
        else:
            assert same["compliant_deg"] == pytest.approx(ours["compliant_deg"])
        if not ours["slides_first"]:
            assert same["compliant_range_deg"] == pytest.approx(ours["compliant_range_deg"])


def test_begin_again_adds_a_reading_and_keeps_what_was_written(tmp_path: Path) -> None:
    assert run(tmp_path, "begin", "mine", *OPTIONS).returncode == 0
    refused = run(tmp_path, "begin", "mine", *OPTIONS)
    assert refused.returncode == 2
    assert "is there already" in refused.stderr
    kept = tmp_path / "mine.readings.toml"
    kept.write_text(kept.read_text() + "# in the shed, Sunday\n", encoding="utf-8")
    again = run(tmp_path, "begin", "mine", "--again", "--front-hang-mm", "16,5")
    assert again.returncode == 2  # a number with a comma is no option's number
    again = run(tmp_path, "begin", "mine", "--again", "--front-hang-mm", "16.5", "--json")
    assert again.returncode == 0, again.stderr
    assert "# in the shed, Sunday" in kept.read_text()
    assert "front_hang_mm = 16.5" in kept.read_text()
    assert "droop_mm = 16.5" in (tmp_path / "mine.toml").read_text()
    assert "front droop" not in json.loads(again.stdout)["typical"]
    truck = tmp_path / "mine.toml"
    truck.write_text(truck.read_text().replace("droop_mm = 16.5", "droop_mm = 12"))
    edited = run(tmp_path, "begin", "mine", "--again", "--rear-hang-mm", "15")
    assert edited.returncode == 2
    assert "changed by hand" in edited.stderr
    assert "droop_mm = 12" in truck.read_text()
    assert "rear_hang_mm" not in kept.read_text()


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["begin", "mine"], "wheelbase_mm: is missing"),
        (["begin", "no/such/mine", *OPTIONS], "there is no such folder"),
        (["begin", 'a"b', *OPTIONS], "is no name"),
        (["begin", "mine", "--again"], "no readings to begin again from"),
        (["begin", "mine", *OPTIONS, "--pack-g", "200", "--pack-at-mm", "1,2"], "three numbers"),
        (["begin", "mine", *OPTIONS, "--wheel-g", "heavy"], "not a valid float"),
        (["begin", "mine", *OPTIONS, "--wheel-g", "nan"], "wheel_g"),
        (["begin", "mine", *OPTIONS, "--raised", "left"], "front"),
        (["begin", "mine", "--readings", "missing.toml"], "cannot be read"),
    ],
)
def test_what_cannot_be_is_told_in_a_line(tmp_path: Path, words: list[str], told: str) -> None:
    found = run(tmp_path, *words)
    assert found.returncode == 2
    assert told in found.stderr
    assert "Traceback" not in found.stderr
    assert not list(tmp_path.iterdir())


def test_on_a_terminal_it_asks(tmp_path: Path) -> None:
    """One answer is nonsense at first, one is empty though needed; the rest is left out."""
    answers = ["wide", "313", "", "176", "178", "117", "42", "830", "820", "1000", "1030", "", "90"]
    answers += ["1450"] + [""] * 30
    ours, theirs = pty.openpty()
    os.write(ours, "".join(f"{a}\n" for a in answers).encode())
    found = run(tmp_path, "begin", "mine", stdin=theirs)
    os.close(theirs)
    os.close(ours)
    assert found.returncode == 0, found.stderr
    assert "It must be a number of mm." in found.stderr
    assert "This one is needed." in found.stderr
    assert "Lithium" in found.stderr
    assert (tmp_path / "mine.toml").exists()
    assert "wheelbase_mm = 313 " in (tmp_path / "mine.readings.toml").read_text()
