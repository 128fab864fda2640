"""Keeping off the output what compiled libraries print past Python."""

from __future__ import annotations

import ctypes
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def silence() -> Iterator[None]:
    """Nothing printed in the block, by Python or by compiled code, comes out."""
    sys.stdout.flush()
    sys.stderr.flush()
    flush = ctypes.CDLL("ucrtbase" if os.name == "nt" else None).fflush
    flush(None)  # what was printed before does come out
    kept, sink = [os.dup(1), os.dup(2)], os.open(os.devnull, os.O_WRONLY)
    try:
        os.dup2(sink, 1)
        os.dup2(sink, 2)
        yield
        flush(None)
    finally:
        for number, old in enumerate(kept, start=1):
            os.dup2(old, number)
            os.close(old)
        os.close(sink)
