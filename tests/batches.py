"""Batches of the small methods in `trial_methods`, and a runner that can be killed: run as

python tests/batches.py STORE COUNT [--ms MS] [--workers N] [--diary FILE] [--cluster ADDRESS]
"""

from __future__ import annotations

import argparse
import platform
import signal
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pyarrow.parquet

from crossfall.study.export import export
from crossfall.study.pool import TrialLimits
from crossfall.study.runner import run_batch
from crossfall.study.store import StoreError
from crossfall.study.task import Batch, make_batch


def burning(count: int, ms: float = 1.0, diary: Path | None = None, name: str = "burn") -> Batch:
    """`count` trials that use the processor for `ms` each."""
    common: dict[str, Any] = {"ms": ms}
    if diary is not None:
        common["diary"] = str(diary)
    return _batch(name, "burn", common, count)


def working(count: int, rounds: int) -> Batch:
    """`count` trials of a fixed amount of work: about 0.7 us a round."""
    return _batch("work", "work", {"rounds": rounds}, count)


def misbehaving(count: int, bad: dict[int, str]) -> Batch:
    """`count` trials of which some go wrong in the way named."""
    return _batch("mixed", "mixed", {"bad": {str(k): v for k, v in bad.items()}}, count)


def _batch(name: str, method: str, common: dict[str, Any], count: int) -> Batch:
    def payloads() -> Iterator[dict[str, Any]]:
        return ({"x": x, "seed": 1000 + x % 7} for x in range(count))

    where = f"trial_methods:{method}"
    return make_batch(
        name,
        where,
        common,
        payloads,
        count,
        spec="s" * 64,
        versions={"python": platform.python_version()},
    )


QUICK = TrialLimits(trial=1.5, crashes=3, hangs=1, start=30.0)


def main() -> int:
    """Run one burning batch; 0 all done, 3 stopped with the work kept, 4 the store refuses."""
    parser = argparse.ArgumentParser()
    parser.add_argument("store", type=Path)
    parser.add_argument("count", type=int)
    parser.add_argument("--ms", type=float, default=1.0)
    parser.add_argument("--workers", type=int, default=2)
    parser.add_argument("--diary", type=Path)
    parser.add_argument("--cluster", default="")
    args = parser.parse_args()
    stopped: list[int] = []
    signal.signal(signal.SIGINT, lambda number, frame: stopped.append(number))
    batch = burning(args.count, args.ms, args.diary)
    try:
        result = run_batch(
            batch,
            args.store,
            workers=args.workers,
            cluster=args.cluster,
            stop=lambda: bool(stopped),
        )
    except StoreError as error:
        print(error, file=sys.stderr)
        return 4
    return 0 if result.complete else 3


if __name__ == "__main__":
    sys.exit(main())


def table_rows(store: Path) -> list[dict[str, Any]]:
    """All lines of the latest batch's table."""
    target = store.with_suffix(".parquet")
    export(store, target)
    return pyarrow.parquet.read_table(target).to_pylist()
