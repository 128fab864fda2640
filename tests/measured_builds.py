"""Random trucks of the class, and what a hurried tuner with a scale and a ruler reads off them.

The trucks are drawn by hand, from wider thoughts than those behind the typical values of
`measurement.typical`; the readings come from moments written out here, not from the package.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import numpy as np

from crossfall.truck.model import GRAVITY, Axle, Body, Suspension, Truck, Tyre, frozen
from crossfall.truck.ride import tyre_loads
from support import block, wheel

SCATTER = 2e-3  # kg, one sd, of standing the truck on the scale
GAIN = 0.002  # of a load, at most
RULER = 0.5  # mm, at most
GIVES = 0.3  # mm, at most, of a thing that gives
BLOCK = 0.090  # m
QUICK: dict[str, Any] = {
    "name": "mine",
    "wheelbase_mm": 313,
    "front_track_mm": 176,
    "rear_track_mm": 178,
    "tyre_diameter_mm": 117,
    "tyre_width_mm": 42,
    "front_left_g": 830,
    "front_right_g": 820,
    "rear_left_g": 1000,
    "rear_right_g": 1030,
    "block_mm": 90,
    "raised_g": 1450,
}
"""The least a truck file can be begun from."""


@dataclass(frozen=True)
class Build:
    """A truck, and what of it no model holds: body, kg, that comes off; diameter: m, of a free
    tyre; bar: anti-roll bars, none, front, rear or both."""

    truck: Truck
    body: float
    diameter: float
    bar: str


def random_builds(count: int, seed: int) -> Iterator[Build]:
    """Trucks that can stand, unlike at both ends, lopsided, soft and stiff."""
    rng = np.random.default_rng(seed)
    found = 0
    while found < count:
        build = _build(rng, found)
        if _stands(build.truck):
            found += 1
            yield build


def _build(rng: np.random.Generator, number: int) -> Build:
    u = rng.uniform
    base, mass, share = u(0.275, 0.335), u(1.9, 3.9), u(0.42, 0.60)
    diameter, width = u(0.094, 0.128), u(0.030, 0.048)
    track = u(0.150, 0.195)
    squash, contact = u(0.0009, 0.0024), u(0.01, 0.18) * width
    along, across = rng.triangular(0.3, 0.6, 1.0, 2)
    squeeze = np.exp(u(np.log(0.011), np.log(0.042))) * np.array([1.0, u(0.75, 1.35)])
    bar = str(rng.choice(["none", "none", "none", "front", "rear", "both"]))
    wheel_mass = u(0.036, 0.074) * mass
    axle_mass = u(0.05, 0.13, 2) * mass
    spacing = u(0.5, 0.7)
    droop = u(0.004, 0.026)
    lean = np.array([u(-0.3, 0.5), u(-0.9, 0.3)])
    height = u(1.5, 2.5) * diameter / 2
    axles = []
    for i, load in enumerate((share * mass, (1 - share) * mass)):
        own = track + u(-0.006, 0.006)
        stiffness = mass * GRAVITY / 4 / squash * u(0.94, 1.06)
        radius = diameter / 2 - load * GRAVITY / 2 / stiffness
        carried = (load - axle_mass[i] - 2 * wheel_mass) * GRAVITY / 2
        suspension = Suspension(
            spring_rate=carried / squeeze[i],
            spring_spacing=spacing * own * (1.0 if i == 0 else u(0.93, 1.07)),
            damping=9.0,
            roll_centre_height=u(1.1, 1.7) * radius,
            bump=u(0.012, 0.032),
            droop=droop if i == 0 else max(droop + u(-0.006, 0.006), 0.003),
            anti_roll=u(0.05, 0.6) if bar in ("both", ("front", "rear")[i]) else 0.0,
            heave_lean=float(np.arctan(lean[i] * height * 0.8 / base)),
        )
        x = (0.5 - i) * base
        middle = (x, rng.normal(0, 0.003), radius + u(-0.004, 0.006))
        body = block(axle_mass[i], middle, (0.03, own - width, 0.03))
        sides = (own / 2, -own / 2)
        left, right = (
            wheel(wheel_mass * u(0.98, 1.02), (x, y, radius), radius, width) for y in sides
        )
        tyre = Tyre(radius, width, contact, stiffness, across * stiffness, along * stiffness)
        axles.append(Axle(x, own, tyre, suspension, body, (left, right)))
    unsprung = [b for a in axles for b in (a.body, *a.wheels)]
    rest = mass - sum(b.mass for b in unsprung)
    moment = mass * base * (share - 0.5) - sum(b.mass * b.cg[0] for b in unsprung)
    cg = (moment / rest, rng.normal(0, 0.004), height)
    chassis = Body(rest, frozen(cg), block(rest, cg, (1.2 * base, 0.14, 0.09)).inertia)
    truck = Truck(f"build {number}", chassis, axles[0], axles[1])
    return Build(truck, u(0.1, 0.22) * mass, diameter, bar)


def _stands(truck: Truck) -> bool:
    """Held up by its springs with some margin, in roll and in pitch, on all four wheels."""
    s = [a.suspension for a in truck.axles]
    weight, cg = truck.chassis.mass * GRAVITY, truck.chassis.cg
    roll = sum(v.spring_rate * v.spring_spacing**2 / 2 + v.anti_roll for v in s)
    arm = cg[2] - np.mean([v.roll_centre_height for v in s])
    pitch = sum(2 * a.suspension.spring_rate * (a.x - cg[0]) ** 2 for a in truck.axles)
    return bool(roll > 1.5 * weight * arm and pitch > 1.3 * weight * cg[2]) and (
        min(tyre_loads(truck)) > 0
    )


def readings(build: Build, seed: int) -> dict[str, Any]:
    """The fourteen of the quick start, each with an error as scale and ruler have it: wheelbase,
    two tracks, tyre across and along, four corners, a raised end, a pressed tyre, a loaded axle,
    how far the front wheels hang, and how far apart the front springs stand."""
    rng = np.random.default_rng(seed)
    truck = build.truck
    gain = 1 + rng.uniform(-GAIN, GAIN)

    def scale(kg: float, scatter: float = SCATTER) -> float:
        return float(round(kg * gain * 1e3 + rng.normal(0, scatter * 1e3)))

    def ruler(m: float, tol: float = RULER) -> float:
        return round(m * 1e3 + rng.uniform(-tol, tol), 1)

    names = ("front_left_g", "front_right_g", "rear_left_g", "rear_right_g")
    corners = {
        name: scale(load / GRAVITY) for name, load in zip(names, tyre_loads(truck), strict=True)
    }
    front = truck.front
    sag = 0.5 * GRAVITY / 2 * (1 / front.suspension.spring_rate + 1 / front.tyre.stiffness)
    return corners | {
        "name": truck.name,
        "wheelbase_mm": ruler(truck.wheelbase),
        "front_track_mm": ruler(front.track),
        "rear_track_mm": ruler(truck.rear.track),
        "tyre_diameter_mm": ruler(build.diameter),
        "tyre_width_mm": ruler(front.tyre.width),
        "block_mm": ruler(BLOCK),
        "raised_g": scale(raised_load(truck, BLOCK), SCATTER * np.sqrt(2)),
        "front_spacing_mm": ruler(front.suspension.spring_spacing, 2 * RULER),
        "front_hang_mm": max(ruler(front.suspension.droop, 2 * GIVES), 1.0),
        "squash_g": 1000.0,
        "squash_mm": max(ruler(GRAVITY / front.tyre.stiffness, GIVES), 0.3),
        "sag_g": 500.0,
        "front_sag_mm": max(ruler(sag, GIVES), 0.3),
        "anti_roll_bar": build.bar,
    }


def raised_load(truck: Truck, block_height: float) -> float:
    """kg under the front axle on a block: moments about the rear wheel centres, springs held."""
    bodies = [truck.chassis, *(b for a in truck.axles for b in (a.body, *a.wheels))]
    mass = sum(b.mass for b in bodies)
    cg = sum(b.mass * b.cg for b in bodies) / mass
    rear = np.array([truck.rear.x, 0.0, truck.rear.tyre.radius])
    front = np.array([truck.front.x, 0.0, truck.front.tyre.radius])
    apart = front - rear
    length = np.hypot(apart[0], apart[2])
    # The line of wheel centres as it stands on the block, and the turn that took it there.
    now = np.arcsin((block_height + apart[2]) / length)
    turn = now - np.arctan2(apart[2], apart[0])
    out = cg - rear
    reach = out[0] * np.cos(turn) - out[2] * np.sin(turn)
    return float(mass * reach / (length * np.cos(now)))
