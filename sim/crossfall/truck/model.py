"""The frozen truck: what every method reads. SI units, radians, ISO 8855 axes.

x forward, y left, z up; the origin is on the ground plane midway between the axles, with the
truck level at ride height. Wheels are ordered front left, front right, rear left, rear right.

Source: axes and terms of ISO 8855 (from memory).
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]

TANGENTIAL_RATIO = (0.3, 0.6, 1.0)
"""Lateral and longitudinal stiffness of a tyre over its vertical one, low, likely and high, where
nobody measured them. An assumption: no published number was found for small foam-filled tyres."""
GRAVITY = 9.80665  # m/s^2, standard acceleration of gravity (3rd CGPM, 1901)
ENDS = ("front", "rear")
WHEELS = ("front left", "front right", "rear left", "rear right")

Carrier = Literal[
    "chassis", "front axle", "rear axle", "front left", "front right", "rear left", "rear right"
]


def frozen(values: object) -> Array:
    """A read-only float array, so that a frozen dataclass really is frozen.

    Raises ValueError where the values make no array.
    """
    array = np.array(values, dtype=np.float64)
    array.flags.writeable = False
    return array


@dataclass(frozen=True)
class Body:
    """A rigid body at ride height.

    mass: kg. cg: (3,) m, truck axes. inertia: (3, 3) kg m^2 about its own CG, truck axes.
    """

    mass: float
    cg: Array
    inertia: Array


@dataclass(frozen=True)
class Tyre:
    """Both tyres of one axle.

    radius: m, wheel centre to ground under the static load (so wheel centres sit at this height
    at ride height). width: m, tread width, for drawings. contact_half_width: m, where the tip
    line lies outboard of the wheel's centre plane (0 = the centre plane). stiffness, lateral,
    longitudinal: N/m of the whole tyre at a standstill, how it gives upwards, along the wheel
    axis and along the direction of rolling (SAE J2718 describes the test, from memory).
    """

    radius: float
    width: float
    contact_half_width: float
    stiffness: float
    lateral: float
    longitudinal: float


@dataclass(frozen=True, eq=False)
class Links:
    """The n links that guide one axle, m, from the axle's centre at ride height, in truck axes.

    chassis, axle: (n, 3) ends. names: (n,) of the parts they are. bump, droop, spacing: m, the
    corner travel and spring spacing over which their path is worked out.
    """

    chassis: Array
    axle: Array
    names: tuple[str, ...]
    bump: float
    droop: float
    spacing: float

    @property
    def lengths(self) -> Array:
        """(n,) m."""
        return np.asarray(np.linalg.norm(self.axle - self.chassis, axis=1))

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Links) and self._content == other._content

    def __hash__(self) -> int:
        return hash(self._content)

    @property
    def _content(self) -> tuple[object, ...]:
        ends = self.chassis.tobytes(), self.axle.tobytes()
        return (*ends, self.names, self.bump, self.droop, self.spacing)


@dataclass(frozen=True, eq=False)
class Shocks:
    """Left and right shock of one axle: (2, 3) ends, as of `Links`."""

    chassis: Array
    axle: Array

    @property
    def lengths(self) -> Array:
        """(2,) m, eye to eye at ride height."""
        return np.asarray(np.linalg.norm(self.axle - self.chassis, axis=1))

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Shocks) and self._content == other._content

    def __hash__(self) -> int:
        return hash(self._content)

    @property
    def _content(self) -> tuple[bytes, bytes]:
        return self.chassis.tobytes(), self.axle.tobytes()


@dataclass(frozen=True)
class Suspension:
    """One solid axle's suspension; travel is counted from ride height.

    The axle has two freedoms relative to the chassis, heave q, positive in compression, and roll
    r, positive when the left wheel rises; `truck.axle_law` says where they take it. Without links
    it heaves along (sin heave_lean, 0, cos heave_lean) and rolls about the x axis through the roll
    centre; with links both numbers are what the links amount to at ride height. A corner's
    compression is c = q + (spring_spacing / 2) r on the left and q - (spring_spacing / 2) r on the
    right, or with shocks how far the shock is pressed in.

    spring_rate: N/m at each corner. soft_rate: N/m of a soft spring stacked on it, 0 for none, and
    soft_travel: m it gives until it is bound; `truck.spring_law` says how both push.
    spring_spacing: m between the left and right spring. damping: N s/m at each corner.
    roll_centre_height: m above ground. bump, droop: m of corner compression and extension to the
    stops. anti_roll: N m/rad of axle roll. heave_lean: rad, positive when the axle moves forward as
    it compresses. locked: no movement at all.
    """

    spring_rate: float
    spring_spacing: float
    damping: float
    roll_centre_height: float
    bump: float
    droop: float
    anti_roll: float = 0.0
    heave_lean: float = 0.0
    locked: bool = False
    links: Links | None = None
    shocks: Shocks | None = None
    soft_rate: float = 0.0
    soft_travel: float = 0.0


@dataclass(frozen=True)
class Axle:
    """A solid axle with its two wheels.

    x: m, axle line. track: m between the tyres' centre planes. body: everything the axle carries
    but its wheels. wheels: left and right, tyre included. shaft: rad that both wheels turn forwards
    for each that the axle rolls, where a shaft that the motor holds turns them; 0 where brakes hold
    them. open: between the shaft and the wheels is an open differential, which lets them turn
    against each other and gives both the same torque; a locked one turns both alike. steered:
    (x, y) m by which left and right tyre stand elsewhere than straight ahead, as the wheels swing
    about their kingpins. pinion: what its shaft takes of its wheels' torque as it is driven, as
    part of it, 1 over the axle's ratio; below 0 where the shaft turns anticlockwise, seen from
    behind as it drives forwards.
    """

    x: float
    track: float
    tyre: Tyre
    suspension: Suspension
    body: Body
    wheels: tuple[Body, Body]
    shaft: float = 0.0
    steered: tuple[tuple[float, float], tuple[float, float]] = ((0.0, 0.0), (0.0, 0.0))
    open: bool = False
    pinion: float = 0.0

    @property
    def loose(self) -> bool:
        """Whether the motor holds its wheels through an open differential."""
        return self.open and self.shaft != 0.0

    @property
    def hubs(self) -> Array:
        """(2, 3) m, where left and right wheel stand, truck axes."""
        return np.array(
            [
                (self.x + x, side * self.track / 2 + y, self.tyre.radius)
                for side, (x, y) in zip((1, -1), self.steered, strict=True)
            ]
        )


@dataclass(frozen=True)
class Grip:
    """Friction coefficient of the tyres on one surface, as a range."""

    surface: str
    low: float
    likely: float
    high: float


@dataclass(frozen=True)
class Clearance:
    """Points that hit the ground first, (x, z) m each in truck axes, on the chassis."""

    nose: tuple[float, float]
    belly: tuple[float, float]
    tail: tuple[float, float]


@dataclass(frozen=True)
class Shape:
    """A solid for drawings and collision, in the part's own axes about its centre.

    kind: box (x, y, z edges), cylinder (radius, length along own z), tube (outer radius, inner
    radius, length along own z), sphere (radius), or mesh (vertices and faces given). size in m.
    """

    kind: Literal["box", "cylinder", "tube", "sphere", "mesh"]
    size: tuple[float, ...] = ()
    vertices: Array | None = None
    faces: NDArray[np.int64] | None = None


@dataclass(frozen=True)
class Part:
    """One placed piece, after counts and mirror images are written out.

    label is its name in the file plus a running number where there are several; row is the index
    of its [[part]] entry. A link shared between chassis and axle has unsprung in (0, 1): that
    fraction of its mass rides on `carrier`'s axle and the rest on the chassis. mass_sd: kg,
    place_sd: m, for every axis or one each, standard uncertainties, shared by a row's pieces;
    taken_up: those two where a remainder takes this row's errors up and they are 0 here; mirrored:
    this piece is a mirror image, so that the row's sideways error moves it the other way.
    centre, turn: where `shape` is drawn, (3,) m and (3, 3) rotation, truck axes.
    """

    label: str
    row: int
    carrier: Carrier
    body: Body
    unsprung: float
    shape: Shape | None
    centre: Array
    turn: Array
    material: str = ""
    price: float = 0.0
    mass_sd: float = 0.0
    place_sd: float | tuple[float, float, float] = 0.0
    mirrored: bool = False
    taken_up: tuple[float, float | tuple[float, float, float]] | None = None


@dataclass(frozen=True)
class UncertainInput:
    """One number of the truck, beside its parts, that nobody knows exactly.

    name: in plain words. unit: SI, or "1" for a ratio. low, likely, high: the limits and the value
    the truck has, in that unit. shape: of the chance between the limits, even (rectangular, then
    likely is the middle) or with its peak at likely (triangular). basis: whether the limits stand
    in the file, are a default, or the value itself is assumed. fields: what moves with it, such
    as "front.tyre.stiffness", "rear.track", "wheelbase"; "front.unsprung.3" is mass on an axle and
    its wheels that comes out of part row 3.
    """

    name: str
    unit: Literal["m", "kg", "N/m", "N m/rad", "rad", "1"]
    low: float
    likely: float
    high: float
    shape: Literal["rectangular", "triangular"]
    basis: Literal["file", "default", "assumed"]
    fields: tuple[str, ...]


@dataclass(frozen=True)
class Truck:
    """A complete truck, ready for statics and trials.

    chassis: everything sprung. steering_lock: rad, or None where the file gives none.
    driven: front and rear. uncertain: independent of one another and of the parts' own errors;
    `truck.uncertain` says how to vary them.
    """

    name: str
    chassis: Body
    front: Axle
    rear: Axle
    grips: tuple[Grip, ...] = ()
    clearance: Clearance | None = None
    driven: tuple[bool, bool] = (True, True)
    steering_lock: float | None = None
    parts: tuple[Part, ...] = field(default=(), repr=False)
    uncertain: tuple[UncertainInput, ...] = field(default=(), repr=False)

    @property
    def axles(self) -> tuple[Axle, Axle]:
        return self.front, self.rear

    @property
    def turned(self) -> bool:
        """Whether wheels stand elsewhere than straight ahead."""
        return any(any(map(any, axle.steered)) for axle in self.axles)

    @property
    def may_roll(self) -> bool:
        """Whether the motor holds an axle through an open differential: then it may roll away on a
        slope on which it would neither tip nor slide."""
        return any(axle.loose for axle in self.axles)

    @property
    def wheelbase(self) -> float:
        """m."""
        return self.front.x - self.rear.x
