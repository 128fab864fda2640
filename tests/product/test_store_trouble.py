"""Results that are damaged, in the way, or lost on the way: always a sentence."""

from __future__ import annotations

import csv
import json
import os
import signal
import sqlite3
import subprocess
import sys
from pathlib import Path

import psutil
import pytest
from test_store_cluster import cluster

from batches import burning
from crossfall.study.export import export
from crossfall.study.pool import PoolError
from crossfall.study.runner import run_batch
from crossfall.study.store import status
from crossfall.study.sweep import folder_of
from crossfall.truck.errors import InputError
from shooting import ROOT

ALONE = """
name = "{name}"
truck = "thistle"
method = "{method}"
headings_deg = [0, 90]
[[axis]]
key = "both.track_mm"
values = [150, 165]
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


def one_line(done: subprocess.CompletedProcess[str]) -> str:
    (line,) = done.stderr.splitlines()
    assert line.startswith("crossfall: ")
    return line


@pytest.mark.parametrize("at", [0, 60, 4096], ids=["head", "format", "pages"])
def test_a_damaged_store_tells_the_way_out(tmp_path: Path, at: int) -> None:
    path = tmp_path / "trials.db"
    run_batch(burning(200), path, workers=1)
    sqlite3.connect(path).execute("PRAGMA wal_checkpoint(TRUNCATE)").close()
    data = bytearray(path.read_bytes())
    data[at:] = b"\xa5" * len(data[at:]) if at else b"no store".ljust(len(data))
    path.write_bytes(data)
    for command in (["status"], ["sweep", "--no-page"]):
        (tmp_path / "s.toml").write_text(ALONE.format(name="s", method="compliant"))
        done = crossfall(command[0], "s.toml", "-o", str(tmp_path), *command[1:], folder=tmp_path)
        assert done.returncode == 2
        assert "the sweep begins anew" in one_line(done) or "new folder" in one_line(done)


def test_rows_that_are_no_rows_are_a_damaged_store(tmp_path: Path) -> None:
    path = tmp_path / "trials.db"
    run_batch(burning(5), path, workers=1)
    with sqlite3.connect(path) as db:
        db.execute("UPDATE trial SET rows = '[{' WHERE rowid = 2")
    with pytest.raises(InputError, match="the sweep begins anew"):
        export(path, tmp_path / "table.csv")
    assert not (tmp_path / "table.csv").exists()


def test_a_folder_in_the_place_of_the_store_is_said(tmp_path: Path) -> None:
    (tmp_path / "s.toml").write_text(ALONE.format(name="s", method="compliant"))
    (tmp_path / "crossfall-out" / "s" / "trials.db").mkdir(parents=True)
    for verb in ("sweep", "status", "report"):
        done = crossfall(verb, "s.toml", folder=tmp_path)
        assert done.returncode == 2
        assert "trials.db: is a folder" in one_line(done)


def test_scenarios_of_like_name_have_folders_of_their_own(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "elsewhere").mkdir()
    named = ["a b.toml", "a-b.toml", "a_b.toml", "elsewhere/a-b.toml", "a.b.toml"]
    assert len({folder_of(name) for name in named}) == len(named)
    assert folder_of("a-b.toml") == folder_of("a-b") == Path("crossfall-out/a-b")
    assert folder_of("overnight") == Path("crossfall-out/overnight")


@pytest.mark.parametrize("method", ["compliant", "closed form"])
def test_a_name_is_text_for_a_spreadsheet(tmp_path: Path, method: str) -> None:
    (tmp_path / "s.toml").write_text(ALONE.format(name="=1+1", method=method))
    done = crossfall("sweep", "s.toml", "--no-page", "--workers", "1", folder=tmp_path)
    assert (done.returncode, done.stdout.count("table")) == (0, 2)
    with (tmp_path / "crossfall-out/s/table.csv").open(newline="") as stream:
        lines = list(csv.DictReader(stream))
    assert {line["scenario"] for line in lines} == {"'=1+1"}
    assert all(float(line["tip_deg"]) > 0 for line in lines)


def test_an_empty_address_is_no_wish_for_this_machine(tmp_path: Path) -> None:
    (tmp_path / "s.toml").write_text(ALONE.format(name="s", method="compliant"))
    done = crossfall("sweep", "s.toml", "--cluster", "", folder=tmp_path)
    assert done.returncode == 2
    assert "--cluster is empty" in one_line(done)
    assert [p.name for p in tmp_path.iterdir()] == ["s.toml"]


def test_a_killed_scheduler_is_a_sentence_and_the_work_is_kept(tmp_path: Path) -> None:
    store, killed = tmp_path / "trials.db", []
    with cluster(tmp_path, workers=1) as (address, _):
        scheduler = min(psutil.Process().children(), key=lambda p: p.create_time()).pid

        def watch(progress: object) -> None:
            if status(store).done >= 20 and not killed:
                killed.append(scheduler)
                os.kill(scheduler, signal.SIGKILL)

        with pytest.raises(PoolError, match="scheduler went away"):
            run_batch(burning(2000, 5.0), store, cluster=address, watch=watch)
    assert killed
    kept = status(store)
    assert 20 <= kept.done < 2000
    assert run_batch(burning(2000, 0.0), tmp_path / "other.db", workers=2).complete


@pytest.mark.parametrize(
    "option",
    [
        ("--reach", "nan"),
        ("--budget", "nan"),
        ("--added-mass", "nan"),
        ("--run-time", "inf"),
        ("--front-share", "nan", "nan"),
        ("--heading", "nan"),
    ],
    ids=lambda option: option[0],
)
def test_options_of_plan_are_numbers(tmp_path: Path, option: tuple[str, ...]) -> None:
    done = crossfall("plan", "bramble", *option, "--json", folder=tmp_path)
    assert done.returncode == 2
    assert option[0] in one_line(done)
    assert json.loads(done.stdout)["failed"] == "bad input"
