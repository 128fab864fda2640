"""crossfall: a virtual tilt table for scale off-road trucks.

    >>> import crossfall
    >>> truck = crossfall.load("bramble")
    >>> side = truck.edit({"part.battery pack.at_mm.z": 90}).tip(heading=90, surface="rock")
    >>> round(side.compliant_deg)
    33

In: degrees, millimetres, grams, and the keys of the truck file. Out: results under the names that
`--json` has, with the unit in the name. Scale models only: nothing here is a basis for a vehicle
that carries people.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from crossfall.front import plot as plot
    from crossfall.front.measured import board as board
    from crossfall.front.measured import expected as expected
    from crossfall.front.measured import reconcile as reconcile
    from crossfall.front.measured import weigh_in as weigh_in
    from crossfall.front.questions import tip as tip
    from crossfall.front.questions import trial as trial
    from crossfall.front.questions import weigh as weigh
    from crossfall.front.questions import what_if as what_if
    from crossfall.front.results import Result as Result
    from crossfall.front.results import Results as Results
    from crossfall.front.studies import sensitivity as sensitivity
    from crossfall.front.studies import sweep as sweep
    from crossfall.front.vehicle import Vehicle as Vehicle
    from crossfall.front.vehicle import load as load
    from crossfall.truck.errors import InputError as InputError

_HOMES = {
    "load": "crossfall.front.vehicle",
    "Vehicle": "crossfall.front.vehicle",
    "tip": "crossfall.front.questions",
    "trial": "crossfall.front.questions",
    "weigh": "crossfall.front.questions",
    "what_if": "crossfall.front.questions",
    "weigh_in": "crossfall.front.measured",
    "board": "crossfall.front.measured",
    "expected": "crossfall.front.measured",
    "reconcile": "crossfall.front.measured",
    "sensitivity": "crossfall.front.studies",
    "sweep": "crossfall.front.studies",
    "Result": "crossfall.front.results",
    "Results": "crossfall.front.results",
    "InputError": "crossfall.truck.errors",
}

__all__ = [
    "InputError",
    "Result",
    "Results",
    "Vehicle",
    "board",
    "expected",
    "load",
    "plot",
    "reconcile",
    "sensitivity",
    "sweep",
    "tip",
    "trial",
    "weigh",
    "weigh_in",
    "what_if",
]


def __getattr__(name: str) -> Any:
    """Names are found when first asked for: `import crossfall` loads nothing else."""
    from importlib import import_module

    if name == "plot":
        return import_module("crossfall.front.plot")
    if name in _HOMES:
        return getattr(import_module(_HOMES[name]), name)
    raise AttributeError(f"module 'crossfall' has no attribute '{name}'")


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
