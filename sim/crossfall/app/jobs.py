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
            [sys.executable, "-m", module],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            text=True,
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
        except BrokenPipeError:
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
