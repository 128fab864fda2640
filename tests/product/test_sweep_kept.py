"""Sweeps stopped early, late and while they write: the same table in the end, and true counts."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall as command_line
from crossfall.study import blocks
from crossfall.study.scenario import Scenario, load_scenario
from crossfall.study.store import CHANGED, status
from crossfall.study.summary import how_asked
from crossfall.study.sweep import batch_of, run_scenario
from crossfall.truck.errors import InputError
from shooting import ROOT

CLOSED = """
name = "tracks"
truck = "thistle"
method = "closed form"
headings_deg = [0, 90]
[[axis]]
key = "front.track_mm"
first = 150
last = 200
steps = 30
[[axis]]
key = "rear.track_mm"
first = 150
last = 200
steps = 20
"""
DRAWN = CLOSED.replace("steps = 30", "steps = 3000")
DRAWN = DRAWN.replace("headings_deg", "tolerances = true\nheadings_deg")
SPRUNG = """
name = "tracks on springs"
truck = "thistle"
method = "compliant"
headings_deg = [0, 90]
[[axis]]
key = "front.track_mm"
values = [150, 160, 170]
"""


def crossfall(*arguments: str, folder: Path, before: str = "") -> subprocess.CompletedProcess[str]:
    """A command in a process of its own. before: Python done in it first."""
    code = f"{before}\nfrom crossfall.cli import main\nmain()"
    return subprocess.run(
        [sys.executable, "-c", code, *arguments],
        cwd=folder,
        env=dict(os.environ, PYTHONPATH=str(ROOT / "sim")),
        capture_output=True,
        text=True,
        timeout=300,
    )


def asked(folder: Path, text: str = CLOSED) -> Scenario:
    (folder / "s.toml").write_text(text)
    return load_scenario(folder / "s.toml")


def tables(folder: Path) -> tuple[bytes, bytes]:
    return (folder / "table.parquet").read_bytes(), (folder / "table.csv").read_bytes()


@pytest.fixture
def small(monkeypatch: pytest.MonkeyPatch) -> None:
    """Blocks so small that a scenario of 600 points has six."""
    monkeypatch.setattr(blocks, "BLOCK", 100)


@pytest.mark.usefixtures("small")
def test_a_closed_form_sweep_goes_on_where_it_stopped(tmp_path: Path) -> None:
    scenario, seen = asked(tmp_path), []
    calm = run_scenario(scenario, tmp_path / "calm")
    assert (calm.complete, calm.lines, calm.done, calm.known) == (True, 1200, 1200, 0)
    out = tmp_path / "out"
    first = run_scenario(scenario, out, watch=seen.append, stop=lambda: len(seen) >= 2)
    assert (first.complete, first.done, first.lines) == (False, 400, 400)
    assert [p.finished for p in seen] == [200, 400]
    half = status(out / "trials.db", batch_of(scenario))
    assert (half.total, half.done, half.failed, half.changed) == (1200, 400, 0, False)
    second = run_scenario(scenario, out)
    assert (second.complete, second.done, second.known) == (True, 1200, 400)
    assert tables(out) == tables(tmp_path / "calm")
    again = run_scenario(scenario, out)
    assert (again.known, again.done) == (1200, 1200)


@pytest.mark.usefixtures("small")
@pytest.mark.parametrize("damage", [b"", b"changed", None], ids=["emptied", "changed", "gone"])
def test_a_block_that_is_not_what_was_written_is_made_again(
    tmp_path: Path, damage: bytes | None
) -> None:
    scenario, out = asked(tmp_path), tmp_path / "out"
    run_scenario(scenario, out)
    before = tables(out)
    victim = sorted((out / "blocks").iterdir())[2]
    victim.unlink()
    if damage is not None:
        victim.write_bytes(damage)
    mended = run_scenario(scenario, out)
    assert (mended.complete, mended.known, mended.done) == (True, 1000, 1200)
    assert tables(out) == before


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_the_first_signal_stops_a_closed_form_sweep(tmp_path: Path, number: signal.Signals) -> None:
    """Every build is drawn and made, which would take minutes."""
    asked(tmp_path, DRAWN)
    store = tmp_path / "crossfall-out" / "s" / "trials.db"
    running = subprocess.Popen(
        [sys.executable, "-m", "crossfall.cli", "sweep", "s.toml", "--json"],
        cwd=tmp_path,
        env=dict(os.environ, PYTHONPATH=str(ROOT / "sim")),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    deadline = time.monotonic() + 120
    while not store.exists():
        assert running.poll() is None
        assert time.monotonic() < deadline
        time.sleep(0.05)
    running.send_signal(number)
    said, complained = running.communicate(timeout=60)
    assert running.returncode == 3, complained
    answer = json.loads(said)
    assert answer["complete"] is False
    told = json.loads(crossfall("status", "s.toml", "--json", folder=tmp_path).stdout)
    assert (told["trials"], told["done"], told["running"]) == (120_000, answer["done"], False)


DIES = "import os, signal\ndie = lambda *_: os.kill(os.getpid(), signal.SIGKILL)\n"
LATE = DIES + "from crossfall.study import sweep\nsweep.write_tables = die"
EXPORTING = DIES + (
    "real = os.replace\nos.replace = lambda a, b: die() if str(b).endswith('.csv') else real(a, b)"
)


@pytest.mark.parametrize("method", [CLOSED, SPRUNG], ids=["closed form", "compliant"])
@pytest.mark.parametrize("when", [LATE, EXPORTING], ids=["late", "mid-export"])
def test_killed_late_or_while_it_writes_the_table_is_whole_or_not_there(
    tmp_path: Path, method: str, when: str
) -> None:
    asked(tmp_path, method)
    options = ("--no-page", "--workers", "1", "--json")
    shot = crossfall("sweep", "s.toml", *options, folder=tmp_path, before=when)
    assert shot.returncode == -signal.SIGKILL
    out = tmp_path / "crossfall-out" / "s"
    assert not (out / "table.csv").exists()
    told = json.loads(crossfall("status", "s.toml", "--json", folder=tmp_path).stdout)
    assert told["done"] == told["trials"]
    rest = json.loads(crossfall("sweep", "s.toml", *options, folder=tmp_path).stdout)
    assert (rest["complete"], rest["known_before"]) == (True, told["trials"])
    crossfall("sweep", "s.toml", "-o", "calm", *options, folder=tmp_path)
    assert tables(out) == tables(tmp_path / "calm")


@pytest.mark.parametrize("method", [CLOSED, SPRUNG], ids=["closed form", "compliant"])
def test_status_knows_that_the_truck_has_changed(tmp_path: Path, method: str) -> None:
    own = (ROOT / "models" / "thistle.toml").read_text()
    (tmp_path / "own.toml").write_text(own)
    asked(tmp_path, method.replace('"thistle"', '"own.toml"'))
    crossfall("sweep", "s.toml", "--no-page", "--workers", "1", folder=tmp_path)

    def told() -> tuple[bool, int, int]:
        found = json.loads(crossfall("status", "s.toml", "--json", folder=tmp_path).stdout)
        return found["changed"], found["done"], found["trials"]

    changed, done, trials = told()
    assert (changed, done) == (False, trials)
    (tmp_path / "own.toml").write_text(own.replace("mass_g = ", "mass_g = 1", 1))
    assert told() == (True, 0, trials)
    (tmp_path / "own.toml").write_text(own)
    assert told() == (False, trials, trials)


@pytest.mark.parametrize("method", [CLOSED, SPRUNG], ids=["closed form", "compliant"])
def test_a_report_is_of_the_scenario_as_it_is(tmp_path: Path, method: str) -> None:
    out, words = tmp_path / "out", ["report", str(tmp_path / "s.toml"), "-o", str(tmp_path / "out")]
    run_scenario(asked(tmp_path, method), out, workers=1)
    before = tables(out)
    edited = asked(tmp_path, method.replace("headings_deg", 'hold = "rail"\nheadings_deg'))
    refused = CliRunner().invoke(command_line, words)
    assert isinstance(refused.exception, InputError)
    assert CHANGED in str(refused.exception)
    assert tables(out) == before
    assert not (out / "morning.html").exists()
    run_scenario(edited, out, workers=1)
    back = asked(tmp_path, method)
    assert CliRunner().invoke(command_line, words).exit_code == 0
    assert tables(out) == before
    assert f"{how_asked(back)}." in (out / "morning.html").read_text()


def test_nothing_is_reported_from_a_table_alone(tmp_path: Path) -> None:
    out, words = tmp_path / "out", ["report", str(tmp_path / "s.toml"), "-o", str(tmp_path / "out")]
    run_scenario(asked(tmp_path), out)
    for file in out.glob("trials.db*"):
        file.unlink()
    assert "no results here yet" in str(CliRunner().invoke(command_line, words).exception)
    assert not (out / "morning.html").exists()
