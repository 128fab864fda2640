"""Which builds a study tries: grids, Latin hypercubes, Sobol sequences."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

import numpy as np

from crossfall.truck.model import Array

DesignKind = Literal["grid", "latin hypercube", "sobol"]


@dataclass(frozen=True)
class Axis:
    """One thing varied. key: as `truck.edits` names it, or a condition of the trial.

    values: what a grid tries; for the other designs its first and last are the bounds.
    """

    key: str
    values: tuple[Any, ...]


@dataclass(frozen=True)
class Design:
    """How the axes are combined. points: of a Latin hypercube or Sobol sequence."""

    kind: DesignKind
    points: int = 0


def count(axes: Sequence[Axis], design: Design) -> int:
    """How many points the design has: of a grid the product of its axes' values.

    Source: derived here from counting.
    """
    return math.prod(len(a.values) for a in axes) if design.kind == "grid" else design.points


def points(axes: Sequence[Axis], design: Design, seed: int) -> Iterator[tuple[Any, ...]]:
    """The points in order, one value per axis; of a grid, the last axis changes quickest.

    Source: as `design_points`.
    """
    if design.kind == "grid":
        return itertools.product(*(a.values for a in axes))
    return map(tuple, design_points(axes, design, seed).tolist())


def columns(axes: Sequence[Axis], design: Design, seed: int, some: slice) -> list[Array]:
    """The same points as one (n,) array an axis; `some` of them.

    Source: as `design_points`.
    """
    if design.kind != "grid":
        return list(design_points(axes, design, seed)[some].T)
    if not axes:
        return []
    total = count(axes, design)
    index = np.unravel_index(np.arange(total)[some], [len(a.values) for a in axes])
    return [np.asarray(a.values)[i] for a, i in zip(axes, index, strict=True)]


def design_points(axes: Sequence[Axis], design: Design, seed: int) -> Array:
    """(n, k) points between the axes' bounds, low + u (high - low); the same seed gives the same
    points.

    Source: M. D. McKay, R. J. Beckman and W. J. Conover, Technometrics 21 (1979) 239-245, for Latin
    hypercubes; I. M. Sobol', USSR Computational Mathematics and Mathematical Physics 7 (1967)
    86-112, for his sequence, scrambled as scipy does (from memory).
    """
    from scipy.stats import qmc

    maker = qmc.Sobol if design.kind == "sobol" else qmc.LatinHypercube
    unit = maker(len(axes), rng=np.random.default_rng(seed)).random(design.points)
    low = np.array([a.values[0] for a in axes], np.float64)
    high = np.array([a.values[-1] for a in axes], np.float64)
    scaled: Array = low + unit * (high - low)
    return scaled
