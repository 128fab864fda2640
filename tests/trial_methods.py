"""Small methods that behave well or badly on purpose, so that the machinery can be tested alone."""

from __future__ import annotations

import hashlib
import os
import signal
import time
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

Row = dict[str, Any]


def burn(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """Use the processor for common["ms"]; the answer depends on the payload alone.

    Where common["diary"] names a file, a line is written there at the start of every trial.
    """
    if "diary" in common:
        with Path(common["diary"]).open("a") as diary:
            diary.write(f"{payload['x']}\n")
    end = time.process_time() + common.get("ms", 1) / 1000
    while time.process_time() < end:
        pass
    number = int(
        hashlib.sha256(repr((payload["x"], payload["seed"])).encode()).hexdigest()[:12], 16
    )
    return [{"answer": number / 7.0, "even": number % 2 == 0}]


def mixed(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """What common["bad"] says for this x: raise, die, segv, hang, loud, unplain; else x squared."""
    x = payload["x"]
    match common["bad"].get(str(x)):
        case "raise":
            raise ValueError(f"no answer for {x}")
        case "die":
            os.kill(os.getpid(), signal.SIGKILL)
        case "segv":
            os.kill(os.getpid(), signal.SIGSEGV)
        case "leave":
            os._exit(7)
        case "exit":
            raise SystemExit("enough")
        case "hang":
            time.sleep(3600)
        case "loud":
            os.write(1, b"engine build line\n" * 100_000)
        case "unplain":
            return [{"answer": [1, 2]}]
    return [{"answer": x * x, "half": x / 2}]


def environment(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """What the trial's process sees."""
    names = ("MALLOC_TRIM_THRESHOLD_", "OMP_NUM_THREADS")
    return [{name: os.environ.get(name, "") for name in names}]


def work(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """common["rounds"] of hashing: a fixed amount of work, whatever else the machine does."""
    text = repr(payload).encode()
    for _ in range(common["rounds"]):
        text = hashlib.sha256(text).digest()
    return [{"answer": int.from_bytes(text[:6], "big") / 7.0}]


_told: list[str] = []


def ahead(common: Mapping[str, Any], payloads: Sequence[Row]) -> None:
    """Remember what this process was told of."""
    if common.get("fail"):
        raise ValueError("not ahead")
    _told[:] = [str(p["x"]) for p in payloads]


def company(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """What this process was told of last."""
    return [{"told": " ".join(_told)}]
