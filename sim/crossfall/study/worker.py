"""The child process that does trials: `python -m crossfall.study.worker`, fed through its pipes.

In, one JSON value a line: first {path, method, common}, then lists of [place, payload].
Out, one line each: "ready" once the method is imported, then [place, rows, cause, detail, took].
When the pipe closes, because the runner ended or was killed, the child ends at once.
"""

from __future__ import annotations

import faulthandler
import json
import os
import queue
import sys
import threading
import time
from typing import Any, BinaryIO

from crossfall.study.task import find_method, perform


def main() -> None:
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
    work: queue.SimpleQueue[tuple[int, dict[str, Any]]] = queue.SimpleQueue()
    threading.Thread(target=_receive, args=(inbox, work), daemon=True).start()
    _send(outbox, "ready")
    while True:
        place, payload = work.get()
        began = time.perf_counter()
        answer = perform(method, common, payload)
        _send(outbox, [place, *answer, time.perf_counter() - began])


def _receive(inbox: BinaryIO, work: queue.SimpleQueue[tuple[int, dict[str, Any]]]) -> None:
    """Pass chunks on; the end of the pipe means that nobody waits for an answer any more."""
    for line in inbox:
        for place, payload in json.loads(line):
            work.put((place, payload))
    os._exit(0)


def _send(outbox: int, value: Any) -> None:
    data = memoryview(json.dumps(value, separators=(",", ":")).encode() + b"\n")
    try:
        while data:
            data = data[os.write(outbox, data) :]
    except BrokenPipeError:
        os._exit(0)


if __name__ == "__main__":
    main()
