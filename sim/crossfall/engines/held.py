"""What a tilt trial asks of an engine: a truck on held wheels, on a table whose gravity turns."""

from __future__ import annotations

import math
from collections.abc import Sequence
from contextlib import AbstractContextManager
from importlib.metadata import PackageNotFoundError, version
from importlib.util import find_spec
from typing import Any, Literal, Protocol, get_args

from crossfall.engines.settings import TrialSettings
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import GRAVITY, Array, Truck
from crossfall.truck.vectors import Vector

EngineName = Literal["bullet", "mujoco"]
ENGINES: tuple[EngineName, ...] = get_args(EngineName)
PACKAGES: dict[EngineName, str] = {"bullet": "pybullet", "mujoco": "mujoco"}


class HeldTruck(Protocol):
    """One truck in one engine, in real size, at ride height on the level table when made.

    engine: name and version. dt: s of a step. settings: as asked for. joint_names: what
    `joint_positions` gives, "front_heave" (m) or "rear_roll" (rad) and so on. Wheels go front left
    first. Forces of springs, stops and tyres are the engine's own affair.
    """

    @property
    def engine(self) -> str: ...

    @property
    def dt(self) -> float: ...

    @property
    def settings(self) -> TrialSettings: ...

    @property
    def joint_names(self) -> tuple[str, ...]: ...

    def grip(self, friction: Sequence[float]) -> None:
        """Friction coefficient of each wheel; infinite against a rail."""

    @property
    def varies(self) -> tuple[str, ...]:
        """Which of `refine`'s arguments change anything in this engine."""

    def refine(self, *, step: int = 1, solver: int = 1, contact: int = 1) -> None:
        """From now on so many steps to one, times the solver's rounds, and times as firm contacts;
        1 goes back. A truck at rest does not notice."""

    def drag(self, times: float) -> None:
        """From now on so many times the settings' drag; a truck at rest does not notice."""

    def step(self, gravity: Vector, count: int = 1) -> None:
        """Steps under gravity (3,) m/s^2 in table axes."""

    def loads(self) -> list[float]:
        """(4,) N of the table on each wheel in the last step."""

    def slips(self) -> list[float]:
        """(4,) m, how far each wheel has slipped."""

    def gives(self) -> list[Vector]:
        """(4, 3) m that each wheel has moved on its axle, along the axle's axes."""

    def joint_positions(self) -> list[float]: ...

    def lean(self) -> float:
        """rad, of the chassis from the table's normal."""

    def place(self) -> tuple[float, ...]:
        """(7,) m, where the chassis is and how it is turned, as moves of a point half a wheelbase
        away; only their changes mean anything."""

    def pose(self) -> Any:
        """Where the chassis is, in the engine's own terms; see `poses`."""

    def poses(self, raw: Sequence[Any]) -> Array:
        """(n, 7) of what `pose` gave: x, y, z m and quaternion x, y, z, w of the truck axes."""

    def save(self) -> Any:
        """Everything needed to go back to this moment, any number of times."""

    def restore(self, snapshot: Any) -> None: ...

    def forget(self, snapshot: Any) -> None:
        """Give back the memory of a saved moment."""


def held_truck(
    truck: Truck, settings: TrialSettings, engine: EngineName
) -> AbstractContextManager[HeldTruck]:
    """The truck in that engine, which gives its memory back at the end of the block.

    Raises InputError for a truck that makes no multibody, for tyres that do not give, and where the
    engine is not installed.
    """
    if any(math.isinf(axle.tyre.stiffness) for axle in truck.axles):
        raise InputError(Problem(truck.name, "a tyre that does not give cannot be tried out"))
    if not installed(engine):
        raise InputError(
            Problem(
                f"engine {engine}",
                f"{PACKAGES[engine]} is not installed here",
                f"choose {' or '.join(installed_engines()) or 'no trial'}",
            )
        )
    if engine == "bullet":
        from crossfall.engines.rig import HeldRig

        return HeldRig(truck, settings)
    from crossfall.engines.mujoco import MujocoTruck

    return MujocoTruck(truck, settings)


def installed_engines() -> tuple[EngineName, ...]:
    """Those that are there, the usual one first."""
    return tuple(engine for engine in ENGINES if installed(engine))


def installed(engine: EngineName) -> bool:
    """Whether its package is there; it is not imported."""
    return find_spec(PACKAGES[engine]) is not None


def engines_named(name: str | None) -> tuple[EngineName, ...]:
    """The engine of this name, or "both"; none for any other."""
    return tuple(engine for engine in ENGINES if name in (engine, "both"))


def check_driving() -> None:
    """Raises InputError where trucks cannot be driven, which is done in Bullet only."""
    if not installed("bullet"):
        missing = f"{PACKAGES['bullet']} is not installed here"
        raise InputError(
            Problem("engine bullet", f"{missing}, and trucks are driven in no other engine")
        )


def usual_engine() -> EngineName:
    """Bullet where it is installed, else MuJoCo."""
    return "bullet" if installed("bullet") else "mujoco"


def engine_version(engine: EngineName) -> str:
    """Package and version of the engine, for records."""
    try:
        return f"{PACKAGES[engine]} {version(PACKAGES[engine])}"
    except PackageNotFoundError:
        return f"{PACKAGES[engine]} absent"


def gravity_on_table(heading: float, theta: float) -> Vector:
    """Gravity (3,) m/s^2 in the axes of a table tilted by theta, truck turned to heading (rad).

    g (-sin(theta) cos(psi), sin(theta) sin(psi), -cos(theta)), with psi the heading.
    Source: axes of ISO 8855 (from memory); derived here from turning gravity in place of the table.
    """
    along = GRAVITY * math.sin(theta)
    return -along * math.cos(heading), along * math.sin(heading), -GRAVITY * math.cos(theta)
