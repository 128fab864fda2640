"""Vectors as what is compiled takes them: three numbers, a tuple or a row of an array."""

from __future__ import annotations

from typing import Any

from crossfall.truck.to_compile import inner

Vector = tuple[float, float, float]


@inner
def unit_along(k: int) -> Vector:
    """Of the k-th axis."""
    return 1.0 if k == 0 else 0.0, 1.0 if k == 1 else 0.0, 1.0 if k == 2 else 0.0


@inner
def put(row: Any, v: Vector) -> None:
    """row[:3] = v."""
    row[0], row[1], row[2] = v


@inner
def crossed(a: Any, b: Any) -> Vector:
    """a x b."""
    return a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]


@inner
def dotted(a: Any, b: Any) -> float:
    """a . b."""
    return float(a[0] * b[0] + a[1] * b[1] + a[2] * b[2])
