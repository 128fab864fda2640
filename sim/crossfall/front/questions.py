"""The usual questions of a truck at hand, of a file, or of a demo truck by its name."""

from __future__ import annotations

from os import PathLike
from typing import Any

from crossfall.front.results import Result, Results
from crossfall.front.vehicle import Vehicle, vehicle_of


def tip(truck: Vehicle | str | PathLike[str], heading: Any = None, **how: Any) -> Any:
    """`Vehicle.tip` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).tip(heading, **how)


def trial(truck: Vehicle | str | PathLike[str], heading: Any, **how: Any) -> Result:
    """`Vehicle.trial` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).trial(heading, **how)


def weigh(truck: Vehicle | str | PathLike[str], parts: int = 10) -> Result:
    """`Vehicle.weigh` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).weigh(parts)


def what_if(truck: Vehicle | str | PathLike[str], changes: Any = None, **how: Any) -> Results:
    """`Vehicle.what_if` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).what_if(changes, **how)
