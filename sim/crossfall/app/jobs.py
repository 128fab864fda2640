"""Running something long beside the server: progress, cancel, and what came out."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
import tempfile
import threading
from pathlib import Path
from typing import Any

from crossfall.truck.errors import InputError, Problem

NO_JOB = {"state": "none", "words": "", "done": 0, "total": 0}  # how far it is before the first


class Job:
    """One process that answers line by line; every method may be called from any thread.

    module: run as `python -m module`, given `task` as JSON on its standard input. total: how many
    lines are expected, for the progress. The folder for its files is removed by `clear`.
    """

    def __init__(self, module: str, task: dict[str, Any], total: int) -> None:
        self.total = total
        self.folder = Path(tempfile.mkdtemp(prefix="crossfall-"))
        self._found: list[dict[str, Any]] = []
        self._state, self._words = "running", ""
        self._mutex = threading.Lock()
        self._process = subprocess.Popen(
            [sys.executable, "-X", "utf8", "-m", module],  # whatever the system's own letters are
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            encoding="utf-8",
            errors="replace",
        )
        text = json.dumps({**task, "folder": str(self.folder)})
        threading.Thread(target=self._watch, args=(text,), daemon=True).start()

    def _watch(self, text: str) -> None:
        process = self._process
        assert process.stdin is not None
        assert process.stdout is not None
        assert process.stderr is not None
        try:
            process.stdin.write(text)
            process.stdin.close()
        except OSError:
            pass  # it stopped before it read its task: the exit status says so
        for line in process.stdout:
            if line.startswith("{"):
                with self._mutex:
                    self._found.append(json.loads(line))
        complaint = process.stderr.read().strip().splitlines()
        status = process.wait()
        with self._mutex:
            if self._state == "running":
                self._state = "done" if status == 0 else "failed"
                self._words = complaint[-1] if status and complaint else ""

    def cancel(self) -> None:
        """Stop it; what was found so far is kept."""
        with self._mutex:
            if self._state == "running":
                self._state = "stopped"
        self._process.terminate()

    def clear(self) -> None:
        """Stop it and remove its files."""
        self.cancel()
        self._process.wait()
        shutil.rmtree(self.folder, ignore_errors=True)

    @property
    def over(self) -> bool:
        """Whether its process has ended."""
        return self._process.poll() is not None

    def state(self) -> dict[str, Any]:
        with self._mutex:
            return {
                "state": self._state,
                "words": self._words,
                "done": len(self._found),
                "total": self.total,
                "found": list(self._found),
            }


class LatestJob:
    """The job going on, or the last one, with what is told beside its state; from any thread.

    before: told as long as nothing was begun.
    """

    def __init__(self, before: dict[str, Any]) -> None:
        self._before = before
        self._latest: tuple[Job, dict[str, Any]] | None = None
        self._mutex = threading.Lock()

    def begin(self, module: str, task: dict[str, Any], total: int, beside: dict[str, Any]) -> None:
        """A `Job` in place of any before it."""
        with self._mutex:
            self.close()
            self._latest = Job(module, task, total), beside

    @property
    def latest(self) -> tuple[Job, dict[str, Any]] | None:
        """Both as they belong together, None before the first."""
        return self._latest

    def state(self) -> dict[str, Any]:
        """How far it is, and what it found."""
        latest = self._latest
        if latest is None:
            return {**NO_JOB, "found": [], **self._before}
        job, beside = latest
        return {**job.state(), **beside}

    def stop(self) -> dict[str, Any]:
        if self._latest is not None:
            self._latest[0].cancel()
        return self.state()

    def file(self, name: str, missing: Problem) -> bytes:
        """What it wrote under a name that it found. Raises InputError with `missing`."""
        latest = self._latest
        if latest is None or name not in {str(f["file"]) for f in latest[0].state()["found"]}:
            raise InputError(missing)
        return (latest[0].folder / name).read_bytes()

    def close(self) -> None:
        if self._latest is not None:
            self._latest[0].clear()
