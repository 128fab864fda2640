"""What a scale under a wheel, an axle or a side shows, for a truck standing on blocks.

Wheels stand on level tops at different heights and are free to settle, so that every contact
force is vertical and passes through a wheel centre. Raising one end by H turns the wheel-centre
line by the angle (1), which also holds for unlike tyres (compare SAE 2004-01-1076), and the load
on the front axle follows from moments about the rear wheel centres (2):

    sin(gamma) = (H + r_f - r_r) / D,  alpha = gamma - gamma_level                        (1)
    R_f / W = (b cos(alpha) - (h - r_r) sin(alpha)) / (D cos(gamma))                      (2)

with D the distance between wheel centres and b the CG's distance ahead of the rear axle; for
equal tyres this is the axle-lift formula of ISO 10392 and SAE J874. A side raised by H is the same
turned by a right angle, each axle taking its part of the couple.

On free suspension the springs also move, by what the loads along the heave axis change:

    q_i = ((R_i - U_i) cos(alpha) - (R_i - U_i)_level) / 2k_i                             (3)

and the sprung mass pitches, rises and (side raised) leans about the roll centre with them. All
loads are in kg, as a scale shows them. Every argument may carry a leading axis: many parameter
sets at once.

Source: ISO 10392 and SAE J874 for (2) with equal tyres, SAE 2004-01-1076 for (1) (from memory);
springs (3), sides, floor and diagonals derived here from moments.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.model import GRAVITY, WHEELS, Array

_ENDS = ("front", "rear", "left", "right")
STATIONS = (*WHEELS, *_ENDS, "all")
UNDER = {  # which wheels (front left first) stand on the scale
    **{wheel: (i,) for i, wheel in enumerate(WHEELS)},
    "front": (0, 1),
    "rear": (2, 3),
    "left": (0, 2),
    "right": (1, 3),
    "all": (0, 1, 2, 3),
}
SETTLE = 60  # rounds of the spring balance at most: each gains a factor of 3 or more
_SETTLED = 1e-15  # m or rad


@dataclass(frozen=True)
class TruckGeometry:
    """The truck's geometry and its mass: arrays of one shape (K,), or numbers. SI.

    place: x, y, z of the CG. radii: wheel centres' heights, front and rear, under load.
    """

    mass: Array
    x: Array
    y: Array
    z: Array
    wheelbase: Array
    track_front: Array
    track_rear: Array
    radius_front: Array
    radius_rear: Array

    @property
    def mean_track(self) -> Array:
        """m, of front and rear."""
        return (self.track_front + self.track_rear) / 2


@dataclass(frozen=True)
class Springs:
    """Free suspension: rates N/m at a corner, the rest as in `truck.model.Suspension`.

    unsprung_front, unsprung_rear: kg, each axle with its wheels. anti_roll: N m/rad, both axles.
    """

    rate_front: Array
    rate_rear: Array
    spacing: Array
    roll_centre: Array
    unsprung_front: Array
    unsprung_rear: Array
    anti_roll: float = 0.0


@dataclass(frozen=True)
class Stand:
    """How the truck stands: all (K,) or numbers.

    end_up: m, front wheels above rear. side_up: m, left wheels above right. floor_pitch,
    floor_roll: rad, of the floor itself, nose and left side up. cross: kg on the front left wheel
    by which the truck stands on one diagonal.
    """

    end_up: Array
    side_up: Array
    floor_pitch: Array
    floor_roll: Array
    cross: Array

    def at(self, some: NDArray[np.intp]) -> Stand:
        """Some of many: picked along the last axis."""
        return Stand(*(getattr(self, n)[..., some] for n in self.__dataclass_fields__))


def wheel_loads(shape: TruckGeometry, springs: Springs | None, stand: Stand) -> Array:
    """(..., 4) kg on each wheel, front left first; angles rad, lengths m.

    Half of each axle's load, and its share of the couple over the track, and the cross load. Values
    no truck could have give nan.
    """
    front, height = _end_balance(shape, springs, stand)
    couple = _side_couple(shape, springs, stand, front, height)
    share = front / shape.mass
    front_half = couple * share / shape.track_front + stand.cross
    rear_half = (couple * (1 - share) - stand.cross * shape.track_front) / shape.track_rear
    rear = shape.mass - front
    return np.stack(
        [
            front / 2 + front_half,
            front / 2 - front_half,
            rear / 2 + rear_half,
            rear / 2 - rear_half,
        ],
        axis=-1,
    )


def _end_balance(
    shape: TruckGeometry, springs: Springs | None, stand: Stand
) -> tuple[Array, Array]:
    """kg on the front axle (2) and m, CG height above the wheels' level in the truck's frame."""
    if springs is None:
        return _front_load(shape, stand, 0.0, 0.0, shape.z), shape.z
    level = Stand(*(np.zeros_like(shape.mass),) * 5)
    own = np.stack([springs.unsprung_front, springs.unsprung_rear])
    rate = 2 * np.stack([springs.rate_front, springs.rate_rear]) / GRAVITY  # kg per m
    front = _front_load(shape, level, 0.0, 0.0, shape.z)
    carried = np.stack([front, shape.mass - front]) - own
    cos_side = np.cos(np.arcsin(stand.side_up / shape.mean_track))
    q = np.zeros_like(carried * cos_side)
    height = shape.z
    for _ in range(SETTLE):
        height = shape.z + (own * q).sum(axis=0) / shape.mass
        front = _front_load(shape, stand, q[0], q[1], height)
        now = np.stack([front, shape.mass - front]) - own
        cos_end = np.cos(_pitch(shape, stand, q[0], q[1])[0])
        before, q = q, (now * cos_end * cos_side - carried) / rate
        if np.max(np.abs(q - before)) < _SETTLED:
            break
    at_cg = 0.5 + shape.x / shape.wheelbase
    return front, height - q[0] * at_cg - q[1] * (1 - at_cg)


def _pitch(
    shape: TruckGeometry, stand: Stand, q_front: Array | float, q_rear: Array | float
) -> tuple[Array, Array]:
    """alpha rad (1), nose up, of the chassis; and m, the level distance between wheel centres."""
    rise = shape.radius_front + q_front - shape.radius_rear - q_rear
    apart = np.hypot(shape.wheelbase, rise)
    sine = (stand.end_up + shape.radius_front - shape.radius_rear) / apart
    gamma = np.arcsin(sine)
    return gamma - np.arctan2(rise, shape.wheelbase), apart * np.cos(gamma)


def _front_load(
    shape: TruckGeometry, stand: Stand, q_front: Array | float, q_rear: Array | float, height: Array
) -> Array:
    """kg on the front axle, equation (2); height: m, of the CG in the chassis frame."""
    alpha, apart = _pitch(shape, stand, q_front, q_rear)
    along = shape.x + shape.wheelbase / 2
    above = height - shape.radius_rear - q_rear
    reach = along * np.cos(alpha) - above * np.sin(alpha)
    # A sloping floor leans everything backwards about the rear contact.
    top = shape.radius_rear + along * np.sin(alpha) + above * np.cos(alpha)
    lean = np.tan(stand.floor_pitch)
    load: Array = shape.mass * (reach - top * lean) / (apart - stand.end_up * lean)
    return load


def _side_couple(
    shape: TruckGeometry, springs: Springs | None, stand: Stand, front: Array, height: Array
) -> Array:
    """kg m, the couple of both axles' left less right loads times half the track."""
    share = front / shape.mass
    hub = share * shape.radius_front + (1 - share) * shape.radius_rear
    beta = np.arcsin(stand.side_up / shape.mean_track)
    across, above = shape.y, height
    if springs is not None:
        across, above = _lean(shape, springs, beta, across, above)
    return shape.mass * (
        across - (above - hub) * np.tan(beta) - above * np.tan(stand.floor_roll)
    )  # fmt: skip


def _lean(
    shape: TruckGeometry, springs: Springs, beta: Array, across: Array, above: Array
) -> tuple[Array, Array]:
    """The CG's place once the sprung mass has leaned to the low side, axle frame."""
    own = springs.unsprung_front + springs.unsprung_rear
    sprung = shape.mass - own
    y = shape.mass * across / sprung
    low = springs.unsprung_front * shape.radius_front + springs.unsprung_rear * shape.radius_rear
    arm = (shape.mass * above - low) / sprung - springs.roll_centre
    stiffness = (springs.rate_front + springs.rate_rear) * springs.spacing**2 / 2
    stiffness = (stiffness + springs.anti_roll) / GRAVITY  # kg m per rad
    phi = np.zeros_like(beta)
    side, up = y, arm
    for _ in range(SETTLE):
        side, up = y * np.cos(phi) - arm * np.sin(phi), arm * np.cos(phi) + y * np.sin(phi)
        pull = sprung * (up * np.sin(beta) - side * np.cos(beta) + y)
        before, phi = phi, np.clip(pull / stiffness, -1.0, 1.0)
        if np.max(np.abs(phi - before)) < _SETTLED:
            break
    part = sprung / shape.mass
    return across + part * (side - y), above + part * (up - arm)


def warp_stiffness(track: float, tyre_stiffness: float, springs: Springs | None = None) -> float:
    """kg per m: how much one wheel gains when it stands higher than the other three. track: m.

    Each axle's roll stiffness, tyres and springs in series, and the two axles in series; torque K d
    / T over the track T, so K / (T^2 g) with 1/K = 1/K_f + 1/K_r. tyre_stiffness: N/m.
    Source: derived here from springs in series.
    """
    tyres = tyre_stiffness * track**2 / 2
    axles = [tyres, tyres]
    if springs is not None:
        rates = [float(np.mean(r)) for r in (springs.rate_front, springs.rate_rear)]
        rolls = [r * float(np.mean(springs.spacing)) ** 2 / 2 for r in rates]
        axles = [1 / (1 / tyres + 1 / roll) for roll in rolls]
    return 1 / sum(1 / k for k in axles) / track**2 / GRAVITY
