"""What every ground to drive over says of itself.

Places are in ground axes: those of the truck at the start, origin on the ground midway between
its axles, z along the ground's normal. A slope is played by turning gravity, so the ground itself
never leans. Everything is laid at the length scale of the trial's world.

Source: derived here from the geometry of truck and ground, but where said otherwise.
"""

from __future__ import annotations

import hashlib
import math
from abc import ABC, abstractmethod
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, fields
from pathlib import Path
from typing import TYPE_CHECKING, Any, ClassVar, Self

import numpy as np

from crossfall.truck.model import Array, Truck, frozen

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig

STRAY = 0.06  # m, the most a thing lies farther ahead: about where on the tread it is met
LEVELLED = 0.06  # m over which a height field rises from the level place the truck starts on
FINEST = 0.02  # m, cell of a height field: on the edges of triangles finer than 15 mm the engine's
# discs catch and stop; from 16 to 40 mm a truck leans alike on the same shape
STEEPEST_FIELD = math.radians(45.0)  # of a height field, along the way or across it
PER_SI: dict[str, float] = {"mm": 1000.0, "deg": math.degrees(1.0)}


@dataclass(frozen=True)
class GroundKey:
    """How scenarios and the command line ask for a number of a ground.

    field: its name in the ground. key: in a scenario, with its unit. least, high: in that unit; 0
    says in a scenario that there is none. says: what it is. file: that it names a file instead.
    """

    field: str
    key: str
    least: float
    high: float
    says: str
    file: bool = False

    @property
    def unit(self) -> str:
        """ "mm" or "deg", or "" for a file."""
        return "" if self.file else self.key.rsplit("_", 1)[-1]

    @property
    def option(self) -> str:
        """On the command line, without its unit."""
        return "--" + self.key.removesuffix(f"_{self.unit or 'file'}").replace("_", "-")


@dataclass(frozen=True)
class Ground(ABC):
    """One kind of ground, found by being here (see the package).

    kind: its name. keys: how it is asked for, the first of them saying that it is there at all.
    below: rad under the static answer where a search of a critical slope begins. chance: whether
    two drives over it may end differently. ValueError for sizes that make none, NaN among them.
    """

    kind: ClassVar[str]
    keys: ClassVar[tuple[GroundKey, ...]] = ()
    below: ClassVar[float] = math.radians(25.0)
    chance: ClassVar[bool] = True

    @classmethod
    def asked(cls, values: Mapping[str, Any], folder: Path) -> Self:
        """From the values of its keys. folder: where the files named lie. InputError or ValueError
        for what makes none."""
        given = {k: values[k.key] for k in cls.keys if values.get(k.key) is not None}
        return cls(**{k.field: v / PER_SI[k.unit] for k, v in given.items()})

    @abstractmethod
    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        """Put it into the rig's world. heading: rad, on the slope; reach: m to drive."""

    def passage(self, truck: Truck) -> float:
        """m to drive unless something else is said."""
        return 2 * truck.wheelbase

    def drawn(self, rng: np.random.Generator) -> Self:
        """One of its kind, with what a driver cannot choose drawn."""
        return self

    def said(self) -> dict[str, Any]:
        """Kind and sizes, in mm and deg; of a ground from a file its name and digest too."""
        sizes = {
            f"{f.name}_{f.metadata['unit']}": getattr(self, f.name) * PER_SI[f.metadata["unit"]]
            for f in fields(self)
            if "unit" in f.metadata
        }
        return {"kind": self.kind, **sizes}


def metres(default: float | None = None) -> Any:
    """A length of a ground, told in mm."""
    return _size("mm", default)


def radians_of(default: float | None = None) -> Any:
    """An angle of a ground, told in deg."""
    return _size("deg", default)


def _size(unit: str, default: float | None) -> Any:
    metadata = {"unit": unit}
    return (
        field(metadata=metadata) if default is None else field(default=default, metadata=metadata)
    )


def file_digest(path: Path) -> str:
    """SHA-256 of a file, in hexadecimal; OSError where it cannot be read."""
    return hashlib.sha256(path.read_bytes()).hexdigest()


def front_of_tyres(truck: Truck) -> float:
    """m, foremost point of the front tyres."""
    return truck.front.x + truck.front.tyre.radius


def passed(truck: Truck, end: float) -> float:
    """m that bring the rear wheels past `end` (m ahead of the middle), or two wheelbases.

    max(2 L, end + r - x_rear).
    """
    return max(2 * truck.wheelbase, end + truck.rear.tyre.radius - truck.rear.x)


def levelled(ahead: Array) -> Array:
    """Share (n,) of its height that a field has, so far ahead (n,) m of the foremost point of the
    tyres.

    t^2 (3 - 2 t), t = ahead / LEVELLED held to 0 to 1.
    Source: common practice, no source: the cubic with level ends (Hermite's).
    """
    rise = np.clip(ahead / LEVELLED, 0.0, 1.0)
    return frozen(rise**2 * (3 - 2 * rise))


def half_width(truck: Truck) -> float:
    """m to each side that a height field reaches."""
    return max(a.track for a in truck.axles) / 2 + truck.front.tyre.width + 0.1


def lay_heights(
    rig: Rig, truck: Truck, reach: float, cell: float, heights: Callable[[Array, Array], Array]
) -> None:
    """A height field as wide as the truck needs. cell: m. heights: (nx, ny) m at all x (nx,) and y
    (ny,) m, to which the ground rises from the level place the truck starts on. reach: m to drive.
    """
    side, start = half_width(truck), front_of_tyres(truck)
    back = truck.rear.x - truck.rear.tyre.radius - 0.2
    x = frozen(back + cell * np.arange(math.ceil((start + reach + 0.3 - back) / cell) + 1))
    y = frozen(-side + cell * np.arange(math.ceil(2 * side / cell) + 1))
    s = rig.scale.length
    laid = heights(x, y) * levelled(frozen(x - start))[:, None]
    rig.world.terrain(laid * s, cell * s, (back * s, -side * s))
