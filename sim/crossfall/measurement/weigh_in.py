"""The weigh-in: mass and CG of a real truck from scale readings, each with its uncertainty.

Readings, ruler tolerances, block height, scale accuracy and floor slope enter one least-squares
problem (`weighted_fit`) over the model of `weigh_in_model`. Intervals are 95 %, small samples and
limits treated as what they are (`scatter`).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.measurement.scatter import pooled
from crossfall.measurement.weigh_in_cautions import cautions
from crossfall.measurement.weigh_in_pose import pose
from crossfall.measurement.weigh_in_session import Session
from crossfall.measurement.weighted_fit import WeightedFit, fit, unbelievable
from crossfall.truck.model import Array


@dataclass(frozen=True)
class Estimate:
    """A quantity with standard uncertainty u, 95 % interval and effective degrees of freedom.

    All nan where no reading bears on it.
    """

    value: float
    u: float
    low: float
    high: float
    dof: float

    @property
    def measured(self) -> bool:
        return bool(np.isfinite(self.value))


@dataclass(frozen=True)
class OddReading:
    """A reading further from the rest than chance allows.

    off: kg, how wrong it would be if the others are right; by: standard deviations.
    """

    label: str
    line: int | None
    off: float
    by: float


@dataclass(frozen=True)
class Weighing:
    """mass kg, CG x, y, z m. covariance: (4, 4) of them. budget: (cause, (4,) u of each), largest
    for the height first.

    scatter: kg, sd of one re-placing as found, with its degrees of freedom. chi_square against
    redundancy says whether everything agrees.
    """

    mass: Estimate
    x: Estimate
    y: Estimate
    z: Estimate
    covariance: Array
    budget: tuple[tuple[str, Array], ...]
    scatter: float
    scatter_dof: float
    chi_square: float
    redundancy: int
    outliers: tuple[OddReading, ...]
    warnings: tuple[str, ...]

    @property
    def estimates(self) -> tuple[Estimate, ...]:
        return self.mass, self.x, self.y, self.z


def weigh_in(session: Session) -> Weighing:
    """Mass (kg) and CG (m) from a session. ValueError where no reading tells the mass; InputError
    where the readings fit no truck.

    Source: weighted least squares as in `weighted_fit`, of the model in `weigh_in_model`.
    """
    problem = pose(session)
    if not problem.bears[0]:
        raise ValueError("the readings do not add up to the whole truck")
    found = fit(problem.model, problem.data, problem.kinds, problem.known)
    mass, x, y, z = (
        estimate(found, i) if there else Estimate(*(float("nan"),) * 5)
        for i, there in enumerate(problem.bears)
    )
    causes: dict[str, Array] = {}
    for s in found.sources:
        causes[s.label] = causes.get(s.label, np.zeros(4)) + s.effect[:4] ** 2
    spread, dof = pooled([r.loads for r in session.readings])
    dofs = [problem.kinds[d.kind].dof for d in problem.data]
    outliers = [
        OddReading(
            problem.data[i].label,
            session.readings[i].line,
            float(found.slips[i]),
            float(found.normalised[i]),
        )
        for i in unbelievable(found.normalised, dofs)
    ]
    return Weighing(
        mass,
        x,
        y,
        z,
        covariance=found.covariance[:4, :4],
        budget=tuple(
            sorted(((k, np.sqrt(v)) for k, v in causes.items()), key=lambda kv: -kv[1][3])
        ),
        scatter=float(np.sqrt(spread)),
        scatter_dof=dof,
        chi_square=found.chi_square,
        redundancy=found.redundancy,
        outliers=tuple(outliers),
        warnings=tuple(cautions(session, mass.value, z.value)),
    )


def estimate(found: WeightedFit, index: int) -> Estimate:
    """Parameter number `index` of a fit, SI, with its standard uncertainty and its 95 % interval,
    which `scatter.interval` propagates.

    Source: JCGM 101:2008 for the interval, JCGM 100 (GUM), G.4, for degrees of freedom (from
    memory).
    """
    gradient = np.zeros(len(found.values))
    gradient[index] = 1.0
    u, half, dof = found.combine(gradient)
    value = float(found.values[index])
    return Estimate(value, u, value - half, value + half, dof)
