"""A name for a truck by its content, so that work done once for it can be found again."""

from __future__ import annotations

import dataclasses
import hashlib
import struct
from collections.abc import Iterator

import numpy as np

from crossfall.truck.model import Truck


def truck_digest(truck: Truck) -> str:
    """SHA-256 (hex) of everything in the truck; equal trucks give equal digests everywhere.

    Raises TypeError for what no truck holds.
    """
    total = hashlib.sha256(b"crossfall truck 4")
    for piece in _canonical(truck):
        total.update(piece)
    return total.hexdigest()


def _canonical(value: object) -> Iterator[bytes]:
    """Bytes of a value, each kind marked and sized, so that no two values run into each other."""
    if dataclasses.is_dataclass(value):
        yield b"D" + type(value).__name__.encode()
        for field in dataclasses.fields(value):
            yield from _canonical(getattr(value, field.name))
    elif isinstance(value, np.ndarray):
        kind = "<i8" if value.dtype.kind == "i" else "<f8"
        yield f"A{value.shape}".encode()
        yield (np.ascontiguousarray(value, dtype=kind) + 0).tobytes()  # + 0 makes -0.0 into 0.0
    elif isinstance(value, tuple):
        yield f"T{len(value)}".encode()
        for item in value:
            yield from _canonical(item)
    elif isinstance(value, str):
        text = value.encode()
        yield f"S{len(text)}".encode() + text
    elif value is None:
        yield b"N"
    elif isinstance(value, bool):
        yield b"B1" if value else b"B0"
    elif isinstance(value, int | np.integer):
        yield f"I{value}".encode()
    elif isinstance(value, float | np.floating):
        yield b"F" + struct.pack("<d", float(value) + 0.0)
    else:
        raise TypeError(f"a truck holds no {type(value).__name__}")
