"""Trucks made by hand for tests, so that no test of the physics depends on the file reader."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

import numpy as np

from crossfall.engines.held import ENGINES, installed
from crossfall.truck.assemble import with_errors
from crossfall.truck.model import Array, Axle, Body, Grip, Suspension, Truck, Tyre, frozen

INSTALLED = tuple(engine for engine in ENGINES if installed(engine))


def block(mass: float, cg: tuple[float, float, float], size: tuple[float, float, float]) -> Body:
    """A uniform box, SI, aligned with the truck axes."""
    a, b, c = size
    inertia = mass / 12 * np.diag([b * b + c * c, a * a + c * c, a * a + b * b])
    return Body(mass, frozen(cg), frozen(inertia))


def wheel(mass: float, cg: tuple[float, float, float], radius: float, width: float) -> Body:
    """A uniform disc about the y axis."""
    side = mass * (3 * radius**2 + width**2) / 12
    return Body(mass, frozen(cg), frozen(np.diag([side, mass * radius**2 / 2, side])))


def make_truck(
    *,
    wheelbase: float = 0.313,
    tracks: tuple[float, float] = (0.170, 0.170),
    chassis_mass: float = 1.9,
    chassis_cg: tuple[float, float, float] = (-0.01, 0.0, 0.110),
    axle_mass: float = 0.25,
    wheel_mass: float = 0.13,
    radius: float = 0.057,
    contact_half_width: float = 0.0,
    tyre_stiffness: float = 6000.0,
    tangential: float = 0.6,
    spring_rate: float = 300.0,
    spring_spacing: float = 0.11,
    damping: float = 8.0,
    roll_centre_height: float = 0.075,
    bump: float = 0.020,
    droop: float = 0.025,
    anti_roll: float = 0.0,
    heave_lean: tuple[float, float] = (0.0, 0.0),
    locked: bool = False,
    grip: tuple[float, float, float] = (0.7, 0.85, 1.0),
) -> Truck:
    """A plain truck of the 1:10 class; every keyword in SI, tangential a ratio."""
    along = tangential * tyre_stiffness
    tyre = Tyre(radius, 0.042, contact_half_width, tyre_stiffness, along, along)

    def axle(x: float, track: float, lean: float) -> Axle:
        suspension = Suspension(
            spring_rate,
            spring_spacing,
            damping,
            roll_centre_height,
            bump,
            droop,
            anti_roll,
            lean,
            locked,
        )
        body = block(axle_mass, (x, 0.0, radius), (0.03, track, 0.03))
        sides = (track / 2, -track / 2)
        left, right = (wheel(wheel_mass, (x, y, radius), radius, 0.04) for y in sides)
        return Axle(x, track, tyre, suspension, body, (left, right))

    return Truck(
        "sample",
        block(chassis_mass, chassis_cg, (0.35, 0.12, 0.10)),
        axle(wheelbase / 2, tracks[0], heave_lean[0]),
        axle(-wheelbase / 2, tracks[1], heave_lean[1]),
        (Grip("rock", *grip),),
    )


def with_suspension(truck: Truck, **changes: float | bool) -> Truck:
    """The same truck with both axles' suspension changed."""
    front, rear = (replace(a, suspension=replace(a.suspension, **changes)) for a in truck.axles)
    return replace(truck, front=front, rear=rear)


def with_tyres(truck: Truck, **changes: float) -> Truck:
    """The same truck with both axles' tyres changed."""
    front, rear = (replace(a, tyre=replace(a.tyre, **changes)) for a in truck.axles)
    return replace(truck, front=front, rear=rear)


def with_masses(truck: Truck, masses: Mapping[int, float]) -> Truck:
    """The truck with every piece of a row weighing something else, kg; inertia goes with it."""
    return with_errors(truck, masses, {})


def with_shifts(truck: Truck, shifts: Mapping[int, Array]) -> Truck:
    """The truck with rows moved by (3,) m; mirrored pieces move the other way across."""
    return with_errors(truck, {}, shifts)
