"""Weigh-ins made by hand: a truth, what a careful or a clumsy hobbyist would read, and errors."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from crossfall.measurement.weigh_in_pose import pose
from crossfall.measurement.weigh_in_session import (
    Free,
    Measured,
    Repeats,
    Ruler,
    Session,
    WeighingScale,
)

RULER = Ruler(
    Measured(0.313, 0.0005),
    Measured(0.170, 0.0005),
    Measured(0.170, 0.0005),
    Measured(0.056, 0.0005),
    Measured(0.055, 0.0005),
)
SPRINGS = Free(
    Measured(300.0, 60.0),
    Measured(350.0, 70.0),
    Measured(0.11, 0.005),
    Measured(0.075, 0.005),
    Measured(0.50, 0.05),
    Measured(0.52, 0.05),
)
BLOCK = Measured(0.080, 0.0005)
KITCHEN = WeighingScale(0.001, 0.002, 0.0005)
TRUTH = (2.75, -0.012, 0.003, 0.098)  # mass kg, CG m

AXLES = (("front", ""), ("rear", ""), ("left", ""), ("right", ""), ("rear", "front"))
BOTH_ENDS = (*AXLES, ("front", "rear"))
WHEELS = tuple((w, "") for w in ("front left", "front right", "rear left", "rear right"))


def session(
    stations: tuple[tuple[str, str], ...] = AXLES,
    *,
    repeats: int = 3,
    scale: WeighingScale = KITCHEN,
    ruler: Ruler = RULER,
    block: Measured = BLOCK,
    free: Free | None = None,
    floor: float = 0.003,
    together: bool = False,
) -> Session:
    """A session with nothing read yet: every load is 0.7 kg a wheel."""
    readings = tuple(
        Repeats(at, (0.7,) * repeats, raised, block if raised else Measured(0, 0), together)
        for at, raised in stations
    )
    return Session(ruler, scale, readings, free, floor)


def read(
    blank: Session,
    truth: tuple[float, float, float, float] = TRUTH,
    rng: np.random.Generator | None = None,
    placement: float = 0.0,
) -> Session:
    """The session as read from a truck with that mass and CG: exactly, or with every error.

    With a generator, everything known within limits is drawn from them, each placing scatters by
    `placement` kg, and the scale rounds to its step.
    """
    problem = pose(blank)
    values = np.array([k.value for k in problem.known])
    values[:4] = truth
    if rng is not None:
        sd = np.array([k.sd if k.rectangular else 0.0 for k in problem.known])
        values += np.sqrt(3) * sd * rng.uniform(-1, 1, len(sd))
        cross = [i for i, k in enumerate(problem.known) if k.name.startswith("cross")]
        values[cross] = rng.normal(0, 0.02, len(cross))
    loads = problem.model(values[None])[0]
    readings = []
    for r, load in zip(blank.readings, loads, strict=True):
        shown = np.full(len(r.loads), load)
        if rng is not None:
            step = blank.scale.resolution
            shown = step * np.round((shown + rng.normal(0, placement, len(shown))) / step)
        readings.append(replace(r, loads=tuple(float(v) for v in shown)))
    return replace(blank, readings=tuple(readings))
