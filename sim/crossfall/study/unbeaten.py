"""Builds that no other beats: the front of two or three aims at once (V. Pareto's)."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

Sense = Literal["high", "low"]


def unbeaten(columns: Mapping[str, Any], aims: Mapping[str, Sense]) -> NDArray[np.bool_]:
    """(n,) whether each line is on the front: no other is at least as good in every aim and better
    in one. Lines that lack a number are not; of lines that are the same in all, every one is.

    All pairs are looked at, best first, against those on the front so far: O(n m) for m of them.

    Source: V. Pareto's front; sorting before comparing as H. T. Kung, F. Luccio and F. P.
    Preparata, Journal of the ACM 22 (1975) 469-476 (from memory).
    """
    values = np.column_stack(
        [np.asarray(columns[k], np.float64) * (-1 if a == "high" else 1) for k, a in aims.items()]
    )
    good = np.isfinite(values).all(axis=1)
    out = np.zeros(len(values), dtype=bool)
    rows = np.flatnonzero(good)
    rows = rows[np.lexsort(values[rows].T[::-1])]
    front = np.empty((0, values.shape[1]))
    for i in rows:
        one = values[i]
        worse = (front <= one).all(axis=1) & (front < one).any(axis=1)
        if not worse.any():
            out[i] = True
            front = np.vstack([front, one])
    return out
