"""The child process that does trials: `python -m crossfall.study.worker`, fed through its pipes.

In, one JSON value a line: first {path, method, common}; then [place, payload] for a trial, or
{company} with payloads of which the following [place, number] are.
Out, one line each: "ready" once the method is imported, then [place, rows, cause, detail, took].
When the pipe closes, because the runner ended or was killed, the child ends at once.
"""

from __future__ import annotations

import contextlib
import faulthandler
import json
import os
import queue
import sys
import threading
import time
from typing import Any, BinaryIO

from crossfall.study.task import find_method, perform


def _main() -> None:
    """Serve until the pipe closes."""
    inbox: BinaryIO = sys.stdin.buffer
    # Engines print what they like; only answers may go down the real standard output.
    outbox = os.dup(1)
    os.dup2(2, 1)
    faulthandler.enable()
    hello = json.loads(inbox.readline() or "null")
    if hello is None:
        return
    sys.path[:] = hello["path"]
    method, common = find_method(hello["method"]), hello["common"]
    warm = getattr(sys.modules[method.__module__], "warm_up", None)
    if warm is not None:
        warm(common)
    ahead = getattr(sys.modules[method.__module__], "ahead", None)
    work: queue.SimpleQueue[Any] = queue.SimpleQueue()
    threading.Thread(target=_receive, args=(inbox, work), daemon=True).start()
    _send(outbox, "ready")
    company: list[dict[str, Any]] = []
    shared = 0.0
    while True:
        item = work.get()
        began = time.perf_counter()
        if isinstance(item, dict):
            company = item["company"]
            if ahead is not None:
                with contextlib.suppress(Exception):  # each trial will say for itself
                    ahead(common, company)
            shared = (time.perf_counter() - began) / len(company)
            continue
        place, payload = item
        answer = perform(method, common, company[payload] if type(payload) is int else payload)
        _send(outbox, [place, *answer, time.perf_counter() - began + shared])


def _receive(inbox: BinaryIO, work: queue.SimpleQueue[Any]) -> None:
    """Pass lines on; the end of the pipe means that nobody waits for an answer any more."""
    for line in inbox:
        work.put(json.loads(line))
    os._exit(0)


def _send(outbox: int, value: Any) -> None:
    data = memoryview(json.dumps(value, separators=(",", ":")).encode() + b"\n")
    try:
        while data:
            data = data[os.write(outbox, data) :]
    except OSError:  # whatever a system says of a pipe that nobody reads
        os._exit(0)


if __name__ == "__main__":
    _main()
