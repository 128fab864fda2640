"""Inputs of a truck that are not known exactly."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike

from crossfall.truck.model import Array, Truck


@dataclass(frozen=True)
class UncertainInput:
    """name: in plain words. low, likely, high: SI. basis: where the range is from."""

    name: str
    low: float
    likely: float
    high: float
    shape: Literal["rectangular", "triangular"]
    basis: Literal["file", "default", "assumed"]
    fields: tuple[str, ...]


def quantile(one: UncertainInput, unit: ArrayLike) -> Array:
    u = np.asarray(unit, dtype=np.float64)
    return np.asarray(one.low + u * (one.high - one.low))


def varied(truck: Truck, changes: Mapping[int, float]) -> Truck:
    return truck
