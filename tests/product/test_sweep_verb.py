"""Sweeping from the command line, from scenario to page."""

from __future__ import annotations

import csv
import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pyarrow.parquet as pq
import pytest

from crossfall.study.store import status
from crossfall.truck.errors import InputError
from shooting import ROOT

COMPLIANT = """
name = "track and droop"
truck = "thistle"
method = "compliant"
headings_deg = [0, 90]

[[axis]]
key = "both.track_mm"
values = [150, 165, 180]

[[axis]]
key = "both.suspension.droop_mm"
values = [4, 12]

[[map]]
x = "both.track_mm"
y = "both.suspension.droop_mm"
"""


def crossfall(*arguments: str, folder: Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "crossfall.cli", *arguments],
        cwd=folder,
        env=dict(os.environ, PYTHONPATH=str(ROOT / "sim")),
        capture_output=True,
        text=True,
        timeout=300,
    )


def done_in(store: Path) -> int:
    """Trials a running sweep has done, 0 before there is a store."""
    try:
        return status(store).done
    except InputError:
        return 0


@pytest.fixture(scope="module")
def swept(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("swept")
    (folder / "s.toml").write_text(COMPLIANT)
    done = crossfall("sweep", "s.toml", "--json", folder=folder)
    assert done.returncode == 0, done.stderr
    (folder / "answer.json").write_text(done.stdout)
    return folder


def test_a_sweep_answers_with_its_counts_and_files(swept: Path) -> None:
    answer = json.loads((swept / "answer.json").read_text())
    assert (answer["trials"], answer["done"], answer["failed"]) == (12, 12, 0)
    assert answer["complete"] is True
    assert all((swept / f).exists() for f in answer["files"])
    assert [Path(f).name for f in answer["files"]] == ["table.parquet", "table.csv", "morning.html"]


def test_wider_and_tighter_trucks_tip_later_across_the_slope(swept: Path) -> None:
    lines = pq.read_table(swept / "crossfall-out/s/table.parquet").to_pylist()
    across = {
        (r["both.track_mm"], r["both.suspension.droop_mm"]): r["tip_deg"]
        for r in lines
        if r["heading_deg"] == 90
    }
    for droop in (4, 12):
        assert across[150, droop] < across[165, droop] < across[180, droop]
    assert all(across[track, 4] > across[track, 12] for track in (150, 165, 180))
    assert all(r["tip_deg"] < r["rigid_deg"] for r in lines)
    with (swept / "crossfall-out/s/table.csv").open(newline="") as stream:
        assert [float(r["tip_deg"]) for r in csv.DictReader(stream)] == [
            r["tip_deg"] for r in lines
        ]


def test_a_second_sweep_does_nothing_again(swept: Path) -> None:
    before = (swept / "crossfall-out/s/table.parquet").read_bytes()
    again = crossfall("sweep", "s.toml", "--json", folder=swept)
    answer = json.loads(again.stdout)
    assert (answer["known_before"], answer["done"]) == (12, 12)
    assert (swept / "crossfall-out/s/table.parquet").read_bytes() == before


def test_status_tells_how_far_it_got(swept: Path) -> None:
    answer = json.loads(crossfall("status", "s.toml", "--json", folder=swept).stdout)
    assert answer["running"] is False
    assert (answer["trials"], answer["done"], answer["failed"]) == (12, 12, 0)
    spoken = crossfall("status", "crossfall-out/s", folder=swept).stdout
    assert "12 done, 0 failed of 12 (100.0 %)" in spoken


def test_the_page_stands_alone_and_shows_the_map(swept: Path) -> None:
    page = (swept / "crossfall-out/s/morning.html").read_text()
    assert "12 of 12 trials have an answer" in page
    assert page.count("<svg") == 2  # climb and side slope lie too far apart for one scale
    outside = [w for w in ("http://", "https://", "src=", "@import") if w in _without_names(page)]
    assert outside == []


def test_a_report_of_the_same_results_is_the_same_page(swept: Path) -> None:
    before = (swept / "crossfall-out/s/morning.html").read_bytes()
    assert crossfall("report", "s.toml", folder=swept).returncode == 0
    assert (swept / "crossfall-out/s/morning.html").read_bytes() == before


def _without_names(page: str) -> str:
    """The page without the names of its XML vocabularies, which are no addresses to fetch."""
    for name in ("http://www.w3.org/", "http://purl.org/", "http://creativecommons.org/"):
        page = page.replace(name, "")
    return page


def test_failed_trials_are_shown_with_their_cause_and_stop_nothing(tmp_path: Path) -> None:
    text = COMPLIANT.replace("values = [150, 165, 180]", "values = [150, 180]")
    text += '[[axis]]\nkey = "part.battery pack.at_mm.x"\nvalues = [0, -3000]\n'
    (tmp_path / "s.toml").write_text(text)
    done = crossfall("sweep", "s.toml", "--json", folder=tmp_path)
    answer = json.loads(done.stdout)
    assert done.returncode == 0
    assert (answer["trials"], answer["failed"]) == (16, 8)
    status = json.loads(crossfall("status", "s", "--json", folder=tmp_path).stdout)
    assert sum(c["trials"] for c in status["causes"]) == 8
    assert all(c["cause"].startswith("InputError: ") for c in status["causes"])
    page = (tmp_path / "crossfall-out/s/morning.html").read_text()
    assert "InputError" in page


def test_an_interrupted_sweep_leaves_with_three_and_goes_on(tmp_path: Path) -> None:
    text = COMPLIANT.replace("values = [150, 165, 180]", "first = 150\nlast = 180\nsteps = 300")
    (tmp_path / "s.toml").write_text(text)
    running = subprocess.Popen(
        [sys.executable, "-m", "crossfall.cli", "sweep", "s.toml", "--json"],
        cwd=tmp_path,
        env=dict(os.environ, PYTHONPATH=str(ROOT / "sim")),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    store = tmp_path / "crossfall-out/s/trials.db"
    deadline = time.monotonic() + 120
    while done_in(store) < 4:
        assert running.poll() is None, "it ended before it was interrupted"
        assert time.monotonic() < deadline
        time.sleep(0.05)
    assert status(store).running
    running.send_signal(signal.SIGINT)
    said, _ = running.communicate(timeout=60)
    assert running.returncode == 3
    part = json.loads(said)
    assert part["complete"] is False
    assert 4 <= part["done"] < 1200
    rest = json.loads(crossfall("sweep", "s.toml", "--json", folder=tmp_path).stdout)
    assert rest["complete"] is True
    assert part["done"] <= rest["known_before"] < 1200
    crossfall("sweep", "s.toml", "-o", "at once", "--workers", "1", "--no-page", folder=tmp_path)
    tables = [tmp_path / f / "table.parquet" for f in ("crossfall-out/s", "at once")]
    assert tables[0].read_bytes() == tables[1].read_bytes()


def test_bad_scenarios_run_nothing(tmp_path: Path) -> None:
    (tmp_path / "s.toml").write_text(COMPLIANT.replace("both.track_mm", "both.trak_mm"))
    done = crossfall("sweep", "s.toml", folder=tmp_path)
    assert done.returncode == 2
    lines = done.stderr.splitlines()
    assert lines[0].startswith("crossfall: s.toml:8: axis[0].key: 'both.trak_mm'")
    assert "Traceback" not in done.stderr
    assert os.listdir(tmp_path) == ["s.toml"]


@pytest.mark.parametrize(
    "arguments",
    [
        ["status", "nowhere"],
        ["report", "overnight"],
        ["sweep", "overnigt"],
        ["sweep", "overnight", "--cluster", "tcp://127.0.0.1:9", "--workers", "0"],
        ["spread", "bramble", "--surface", "moon"],
        ["spread", "bramble", "--samples", "100"],
    ],
)
def test_what_cannot_be_done_is_said_in_a_line(tmp_path: Path, arguments: list[str]) -> None:
    done = crossfall(*arguments, folder=tmp_path)
    assert done.returncode == 2
    assert done.stderr.startswith("crossfall: ")
    assert len(done.stderr.splitlines()) == 1


def test_spread_answers_with_an_interval_on_everything(tmp_path: Path) -> None:
    done = crossfall(
        "spread", "bramble", "--heading", "90", "--samples", "16", "--json", folder=tmp_path
    )
    (heading,) = json.loads(done.stdout)["headings"]
    assert heading["tip"]["low_deg"] < heading["tip"]["mean_deg"] < heading["tip"]["high_deg"]
    share, (low, high) = heading["tips_first_share"], heading["tips_first_share_ci"]
    assert low <= share <= high
    for line in heading["tip_depends_on"]:
        assert line["total_ci"][0] <= line["total"] <= line["total_ci"][1]
    spoken = crossfall("spread", "bramble", "--heading", "90", "--samples", "16", folder=tmp_path)
    assert "depends on" in spoken.stdout
