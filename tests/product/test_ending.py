"""How the command line ends when something is wrong: a sentence and a status that say what."""

from __future__ import annotations

import errno
import json
import os
import resource
import subprocess
import sys
from pathlib import Path

import pytest

from crossfall.truck.demos import demo_folder
from crossfall.truck.errors import Problem, StoppedError
from crossfall.verbs.ending import BAD_INPUT, FAULT, STOPPED, end, no_reader
from shooting import ROOT


def crossfall(
    *arguments: str, folder: Path, **environment: str
) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "crossfall.cli", *arguments],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(ROOT / "sim"), **environment},
        capture_output=True,
        text=True,
        timeout=120,
    )


def piped(command: str, folder: Path) -> tuple[int, str]:
    """The first line of a command's output by `head -1`, and the command's own status."""
    line = f"{sys.executable} -m crossfall.cli {command} | head -1; exit ${{PIPESTATUS[0]}}"
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "sim")}
    done = subprocess.run(
        ["bash", "-c", line], cwd=folder, env=environment, capture_output=True, text=True
    )
    assert done.stderr == ""
    return done.returncode, done.stdout


def test_a_reader_that_goes_away_is_no_answer_of_no(tmp_path: Path) -> None:
    assert piped("check bramble", tmp_path)[0] == 0
    assert piped("weigh bramble --parts 100 --json", tmp_path) == (0, "{\n")
    assert piped("--help", tmp_path)[0] == 0


@pytest.mark.parametrize("system", ["linux", "win32"])
def test_a_pipe_that_nobody_reads_is_told_from_a_bad_name(
    system: str, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr("crossfall.verbs.ending.sys.platform", system)
    assert no_reader(BrokenPipeError(errno.EPIPE, "Broken pipe"))
    assert no_reader(BrokenPipeError()), "as a library raises it again"
    assert no_reader(OSError(errno.EINVAL, "Invalid argument")) == (system == "win32")
    named = OSError(errno.EINVAL, "Invalid argument", "a:b")
    assert not no_reader(named)

    def ask() -> None:
        raise named

    assert end(ask, ["tilt"]) == BAD_INPUT
    assert "a:b: Invalid argument" in capfd.readouterr().err


def test_a_fault_of_our_own_is_one_sentence_with_a_status_of_its_own(
    capfd: pytest.CaptureFixture[str],
) -> None:
    assert end(lambda: 1 / 0, ["tilt", "bramble", "--json"]) == FAULT
    said = capfd.readouterr()
    (line,) = said.err.splitlines()
    assert line.startswith("crossfall: a fault of crossfall's own")
    assert "ZeroDivisionError" in line
    answer = json.loads(said.out)
    assert (answer["verb"], answer["failed"], answer["exit_status"]) == ("tilt", "fault", FAULT)
    assert FAULT not in (0, 1, BAD_INPUT, STOPPED)


@pytest.mark.parametrize(
    ("error", "status", "word"),
    [
        (RecursionError("too deep"), FAULT, "RecursionError"),
        (MemoryError(), FAULT, "not enough memory"),
        (StoppedError("the scheduler went away"), STOPPED, "the scheduler went away"),
        (KeyboardInterrupt(), STOPPED, "kept"),
        (FileNotFoundError(2, "No such file", "x.toml"), BAD_INPUT, "x.toml: No such file"),
    ],
)
def test_every_failure_has_its_status(
    error: BaseException, status: int, word: str, capfd: pytest.CaptureFixture[str]
) -> None:
    def fail() -> None:
        raise error

    assert end(fail, ["weigh"]) == status
    (line,) = capfd.readouterr().err.splitlines()
    assert word in line


@pytest.mark.parametrize(
    "arguments",
    [
        ["tilt", "no such truck"],
        ["weigh", "bramble", "--parts", "many"],
        ["nosuchverb"],
        ["limits", "bramble", "no such file"],
        ["weigh-in", "no such file"],
        ["status", "no such sweep"],
        ["check", "no such truck"],
    ],
)
def test_failures_under_json_are_one_object(tmp_path: Path, arguments: list[str]) -> None:
    done = crossfall(*arguments, "--json", folder=tmp_path)
    assert done.returncode == 2
    answer = json.loads(done.stdout)
    assert (answer["verb"], answer["failed"]) == (arguments[0], "bad input")
    assert answer["problems"][0]["what"]


@pytest.mark.parametrize("arguments", [["tilt", "bramble", "--no-trial"], ["check", "bramble"]])
def test_a_terminal_that_knows_ascii_only_is_answered(tmp_path: Path, arguments: list[str]) -> None:
    done = crossfall(*arguments, folder=tmp_path, PYTHONIOENCODING="ascii")
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.isascii()
    assert "\\u" not in done.stdout
    assert "\\x" not in done.stdout


def test_a_full_standard_output_is_said(tmp_path: Path) -> None:
    line = f"{sys.executable} -m crossfall.cli check bramble >/dev/full"
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "sim")}
    done = subprocess.run(
        ["bash", "-c", line], cwd=tmp_path, env=environment, capture_output=True, text=True
    )
    assert done.returncode == 2
    assert done.stderr == "crossfall: standard output: No space left on device\n"


CONTROLS = ("\x1b[31m", "\x9b31m", "\u202e", "\x07")


@pytest.mark.parametrize("control", CONTROLS, ids=["escape", "one-byte escape", "bidi", "bell"])
def test_control_characters_are_seen_and_not_obeyed(tmp_path: Path, control: str) -> None:
    escaped = "".join(f"\\u{ord(c):04x}" for c in control)
    text = (demo_folder() / "thistle.toml").read_text()
    (tmp_path / "key.toml").write_text(f'"{escaped}red" = 1\n' + text)
    (tmp_path / "name.toml").write_text(text.replace('name = "', f'name = "{escaped}', 1))
    (tmp_path / f"{control}.toml").write_text("x = ")
    for name in ("key.toml", "name.toml", f"{control}.toml"):
        done = crossfall("check", name, folder=tmp_path)
        assert done.returncode == 2
        assert control not in done.stdout + done.stderr
        assert control.encode("unicode_escape").decode() in done.stderr.replace("\\\\", "\\")


def test_a_problem_spells_out_what_cannot_be_seen() -> None:
    said = str(Problem("a\x1b[2J.toml", "is odd", key="x\u202ey"))
    assert said == "a\\x1b[2J.toml: x\\u202ey: is odd"


def test_a_file_that_grows_too_large_is_named(tmp_path: Path) -> None:
    def small() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (2000, 2000))

    done = subprocess.run(
        [sys.executable, "-m", "crossfall.cli", "urdf", "bramble", "-o", "model.urdf"],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(ROOT / "sim")},
        capture_output=True,
        text=True,
        preexec_fn=small,
    )
    assert done.returncode == 2
    assert done.stderr.startswith("crossfall: model.urdf: ")
    assert list(tmp_path.iterdir()) == []
