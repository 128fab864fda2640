"""What a truck drives over: a plane, a stone, rough ground, a ramp.

Places are in ground axes: those of the truck at the start, origin on the ground midway between
its axles, z along the ground's normal. A slope is played by turning gravity, so the ground itself
never leans. Everything is laid at the length scale of the trial's world.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

import numpy as np

from crossfall.engines.rig import Rig
from crossfall.truck.model import Array, Truck, frozen

FLANK = math.radians(60.0)  # of a stone where it leaves the ground
FINEST = 0.02  # m, cell of a height field; finer ones cost time and change nothing
LEVELLED = 0.06  # m over which rough ground rises from the level place the truck starts on
RAMP_WIDTH = 3.0  # wheelbases, about the way the truck goes


# Each kind raises ValueError for a size that makes none, NaN among them.
Side = Literal["left", "right", "uphill"]


@dataclass(frozen=True)
class Plane:
    """Nothing in the way."""


@dataclass(frozen=True)
class Stone:
    """A rounded stone in the path of the wheels of one side, as wide as their tyres.

    height: m above the ground. stray: m from the foremost point of the front tyres to its near
    foot. side: left, right, or uphill, the higher side of a side slope. It is a rod lying across,
    sunk so that its flanks leave the ground at 60 deg.
    """

    height: float
    stray: float = 0.0
    side: Side = "uphill"

    def __post_init__(self) -> None:
        if not (self.height > 0 and self.stray >= 0):
            raise ValueError(f"no stone is {self.height} m high and {self.stray} m ahead")


@dataclass(frozen=True)
class Rough:
    """Seeded rough ground. rms: m, of its heights. length: m, over which they are alike.

    Gaussian heights with the correlation exp(-(d / length)^2), by random waves; level where the
    truck starts. The same seed gives the same ground for every truck.
    """

    rms: float
    length: float = 0.08
    seed: int = 0

    def __post_init__(self) -> None:
        if not (self.rms >= 0 and self.length > 0):
            raise ValueError(f"no rough ground has an rms of {self.rms} m over {self.length} m")


@dataclass(frozen=True)
class Ramp:
    """A ramp and the level top behind it.

    angle: rad. rise: m, height of the top. oblique: rad, how far the way up it is turned to the
    left of the truck's: positive when the left wheel meets it first. gap: m from the foremost
    point of the nearer front tyre to its foot.
    """

    angle: float
    rise: float
    oblique: float = 0.0
    gap: float = 0.03

    def __post_init__(self) -> None:
        angle, oblique = self.angle, self.oblique
        if not (0 < angle < math.pi / 2 and self.rise > 0 and abs(oblique) < math.pi / 2):
            raise ValueError(f"no ramp: {self}")


@dataclass(frozen=True)
class LaidStone:
    """A rounded stone anywhere, as `Stone` is. at: m ahead and to the left. width: m across."""

    at: tuple[float, float]
    height: float
    width: float

    def __post_init__(self) -> None:
        if not (0 < self.height < 1 and 0 < self.width < 1):
            raise ValueError(f"no stone: {self}")


@dataclass(frozen=True)
class Hump:
    """A ramp up, a top and a ramp down. at: m ahead and to the left, of its middle. turned: rad, of
    its way up, to the left. angle: rad, of both flanks. flank, top: m over the ground. width: m."""

    at: tuple[float, float]
    turned: float
    angle: float
    flank: float
    top: float
    width: float

    def __post_init__(self) -> None:
        sizes = (self.flank, self.top, self.width)
        if not (0 < self.angle < math.pi / 3 and all(0 < v < 10 for v in sizes)):
            raise ValueError(f"no ramp: {self}")


@dataclass(frozen=True)
class Strewn:
    """A plane with stones and humps on it, wherever they are."""

    stones: tuple[LaidStone, ...] = ()
    humps: tuple[Hump, ...] = ()


Ground = Plane | Stone | Rough | Ramp | Strewn


def lay(ground: Ground, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
    """Put the ground into the rig's world. heading: rad, on the slope; reach: m to drive."""
    if isinstance(ground, Rough):
        _lay_rough(ground, rig, truck, reach)
        return
    rig.world.plane(1.0)
    if isinstance(ground, Stone):
        _lay_stone(ground, rig, truck, heading)
    elif isinstance(ground, Ramp):
        _lay_ramp(ground, rig, truck)
    elif isinstance(ground, Strewn):
        for stone in ground.stones:
            _lay_one_stone(stone.at, stone.height, stone.width, rig)
        for hump in ground.humps:
            _lay_hump(hump, rig)


def front_of_tyres(truck: Truck) -> float:
    """m, foremost point of the front tyres."""
    return truck.front.x + truck.front.tyre.radius


# Stone


def stone_side(side: Side, heading: float) -> int:
    """+1 for the left wheels, -1 for the right."""
    if side != "uphill":
        return 1 if side == "left" else -1
    return -1 if math.sin(heading) > 0 else 1  # downhill is (-cos, sin): heading 90 has left down


def stone_radius(height: float) -> float:
    """m, of the rod: height = radius (1 - cos FLANK)."""
    return height / (1 - math.cos(FLANK))


def stone_foot(height: float) -> float:
    """m, from a stone's middle to where it leaves the ground."""
    return stone_radius(height) * math.sin(FLANK)


def _lay_stone(stone: Stone, rig: Rig, truck: Truck, heading: float) -> None:
    x = front_of_tyres(truck) + stone.stray + stone_foot(stone.height)
    y = stone_side(stone.side, heading) * sum(a.track for a in truck.axles) / 4
    width = max(a.tyre.width + 2 * a.tyre.contact_half_width for a in truck.axles)
    _lay_one_stone((x, y), stone.height, width, rig)


def _lay_one_stone(at: tuple[float, float], height: float, width: float, rig: Rig) -> None:
    s, radius = rig.scale.length, stone_radius(height)
    across = (math.sin(math.pi / 4), 0.0, 0.0, math.cos(math.pi / 4))
    centre = (at[0] * s, at[1] * s, (height - radius) * s)
    rig.world.capsule(radius * s, width * s, centre, across)


# Rough ground


def rough_heights(rough: Rough, x: Array, y: Array) -> Array:
    """Heights (nx, ny) m at all x (nx,) and y (ny,) m, without the level start.

    A sum of N random waves sqrt(2 / N) rms cos(k.r + phase) with normal k of standard deviation
    sqrt(2) / length has the stated correlation.
    """
    waves = 64
    rng = np.random.default_rng(rough.seed)
    k = rng.standard_normal((waves, 2)) * math.sqrt(2) / rough.length
    phase = rng.uniform(0.0, math.tau, waves)
    across = x[:, None, None] * k[:, 0] + y[None, :, None] * k[:, 1] + phase
    return frozen(rough.rms * math.sqrt(2 / waves) * np.cos(across).sum(axis=-1))


def _lay_rough(rough: Rough, rig: Rig, truck: Truck, reach: float) -> None:
    cell = max(FINEST, rough.length / 4)
    side = max(a.track for a in truck.axles) / 2 + truck.front.tyre.width + 0.1
    back = truck.rear.x - truck.rear.tyre.radius - 0.2
    start = front_of_tyres(truck)
    x = back + cell * np.arange(math.ceil((start + reach + 0.3 - back) / cell) + 1)
    y = -side + cell * np.arange(math.ceil(2 * side / cell) + 1)
    rise = np.clip((x - start) / LEVELLED, 0.0, 1.0)
    heights = rough_heights(rough, frozen(x), frozen(y)) * (rise**2 * (3 - 2 * rise))[:, None]
    s = rig.scale.length
    rig.world.terrain(heights * s, cell * s, (back * s, -side * s))


# Ramp


def ramp_foot(truck: Truck, ramp: Ramp) -> float:
    """m ahead of the truck's middle, where the line of its way meets the foot."""
    half_width = truck.front.track / 2 + truck.front.tyre.contact_half_width
    return front_of_tyres(truck) + ramp.gap + half_width * math.tan(abs(ramp.oblique))


def _lay_ramp(ramp: Ramp, rig: Rig, truck: Truck) -> None:
    s = rig.scale.length
    length, run = ramp.rise / math.sin(ramp.angle), ramp.rise / math.tan(ramp.angle)
    thick, top = 0.5 * truck.wheelbase, 4 * truck.wheelbase
    # A truck that goes straight on drifts to one side of a ramp that lies askew.
    width = RAMP_WIDTH * truck.wheelbase + 2 * (run + top / 2) * math.tan(abs(ramp.oblique))
    foot = ramp_foot(truck, ramp)
    cos, sin = math.cos(ramp.angle), math.sin(ramp.angle)
    # In the ramp's own plan axes: u up the ramp from its foot, z up.
    boxes = (
        (length, run / 2 + thick / 2 * sin, ramp.rise / 2 - thick / 2 * cos, -ramp.angle),
        (top, run + top / 2, ramp.rise - thick / 2, 0.0),
    )
    cos_b, sin_b = math.cos(ramp.oblique), math.sin(ramp.oblique)
    for edge, u, z, pitch in boxes:
        centre = ((foot + u * cos_b) * s, u * sin_b * s, z * s)
        turn = _yaw_pitch(ramp.oblique, pitch)
        rig.world.box((edge * s, width * s, thick * s), centre, turn)


def _lay_hump(hump: Hump, rig: Rig) -> None:
    s, thick = rig.scale.length, 0.5 * hump.flank
    cos, sin = math.cos(hump.angle), math.sin(hump.angle)
    rise, out = hump.flank * math.tan(hump.angle), (hump.top + hump.flank) / 2
    # In its own plan axes: u up the ramp from its middle, z up; tops flush with its surface.
    boxes = (
        (hump.flank / cos, -out + thick / 2 * sin, rise / 2 - thick / 2 * cos, -hump.angle),
        (hump.top, 0.0, rise - thick / 2, 0.0),
        (hump.flank / cos, out - thick / 2 * sin, rise / 2 - thick / 2 * cos, hump.angle),
    )
    cos_b, sin_b = math.cos(hump.turned), math.sin(hump.turned)
    for edge, u, z, pitch in boxes:
        centre = ((hump.at[0] + u * cos_b) * s, (hump.at[1] + u * sin_b) * s, z * s)
        size = (edge * s, hump.width * s, thick * s)
        rig.world.box(size, centre, _yaw_pitch(hump.turned, pitch))


def _yaw_pitch(yaw: float, pitch: float) -> tuple[float, float, float, float]:
    """Quaternion x, y, z, w of a pitch about y followed by a yaw about z."""
    cy, sy = math.cos(yaw / 2), math.sin(yaw / 2)
    cp, sp = math.cos(pitch / 2), math.sin(pitch / 2)
    return -sy * sp, cy * sp, sy * cp, cy * cp
