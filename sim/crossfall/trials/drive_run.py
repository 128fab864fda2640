"""A truck under way in a world: how far it has come, how it leans, what its wheels carry.

The slope comes in as theta(s) = theta (1 - (1 - s)^3), s from 0 to 1. `rolled` is the mean of the
driven wheels' turning times radius, weighted by load.
Source: derived here from kinematics of the wheels; margins as in `trials.stability_margin`, slips
as in `trials.record`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike
from scipy.spatial.transform import Rotation

from crossfall.engines.held import gravity_on_table
from crossfall.engines.multibody import disc_names
from crossfall.engines.rig import Rig
from crossfall.engines.settings import GroundSettings
from crossfall.trials.drive import Drive, Driveline
from crossfall.trials.grounds.base import Ground
from crossfall.trials.helm import Helm
from crossfall.trials.record import Record, contact_slip
from crossfall.trials.stability_margin import effective_gravity, force_angles
from crossfall.truck.model import GRAVITY, Array, Truck, frozen
from crossfall.truck.support import PAIRS

_LOOK = 8  # steps between looks at loads and poses
SCRAPE = 0.4  # friction coefficient of a chassis dragging on the ground; common practice, no source
LEVEL_SETTLE = 0.1  # s on the level before the slope comes


@dataclass(frozen=True)
class Journey:
    """What a drive showed, n samples; real size.

    record: poses, loads and slip as of any trial; its slip takes the ground as a plane. travelled,
    sideways: (n,) m, the middle of the four wheels from where it started, along the truck's first
    heading and to its left. rolled: (n,) m, see `Going`.
    margin: (n,) rad, see `margin`. torque: (n, 4) N m of each wheel's drive.
    """

    record: Record
    travelled: Array
    sideways: Array
    rolled: Array
    margin: Array
    torque: Array


_Pose = tuple[tuple[float, ...], tuple[float, ...]]


@dataclass(frozen=True)
class _Look:
    """One sample: real s, m, m/s^2, N, N m; but cg and poses in world lengths."""

    time: float
    way: tuple[float, float, float]
    loads: list[float]
    torque: tuple[float, ...]
    cg: tuple[float, float, float]
    chassis: _Pose
    joints: list[float]
    inner: list[_Pose]
    outer: list[_Pose]
    gravity: tuple[float, float, float]


class Going:
    """One drive while it is going on. Real seconds, metres, radians.

    rear: (2,) m of the middle of the rear axle, as travelled and sideways count.
    travelled, sideways, rolled, fell_back: m, at the last look; rolled is the turning of the driven
    wheels times their radius, weighted by what they carry, and fastest that of the quickest of
    them; fell_back is how far it has come back from the farthest point. lean: rad, of the chassis
    from the ground's normal. loads: (4,) N. hull: where the chassis itself presses, (3,) m each.
    """

    def __init__(self, rig: Rig, truck: Truck, drive: Drive, steering: bool = False) -> None:
        self.rig, self.truck = rig, truck
        self.driveline = Driveline(rig, truck, drive)
        self.gravity = (0.0, 0.0, -GRAVITY)
        self.theta = self.time = self.lean = 0.0
        self.travelled = self.sideways = self.farthest = self.rolled = self.fastest = 0.0
        self.loads: list[float] = [0.0] * 4
        self.hull: list[tuple[float, ...]] = []
        world = rig.world
        self._joints = [world.joints[name] for name in world.moving]
        self._names = [disc_names(w, truck.axles[w // 2]) for w in range(4)]
        self._inner = [world.link[n[0]] for n in self._names]
        self._outer = [world.link[n[-1]] for n in self._names]
        self._seen: list[_Look] = []
        self._tick = 0
        self._began: tuple[float, float] | None = None
        self.rear = (0.0, 0.0)
        self.helm = Helm(rig, truck) if steering else None
        self._turned: list[float] = []
        self._per_second = rig.scale.time / rig.dt

    # --- moving ---------------------------------------------------------------------------

    def step(self) -> bool:
        """One step; True when it was also looked at."""
        self.driveline.step()
        self.rig.step(self.gravity)
        self.time += 1 / self._per_second
        self._tick += 1
        if self._tick % _LOOK:
            return False
        self._look()
        return True

    def steps(self, seconds: float) -> int:
        """Steps in so many real seconds, one at least."""
        return max(1, round(seconds * self._per_second))

    def settle(self, heading: float, theta: float, rate: float, hold: float) -> None:
        """Held by the brake, from the level to a slope of theta at `rate` (rad/s) on average.

        The slope comes in ever more gently, so that the truck does not lean past its rest.
        """
        for _ in range(self.steps(LEVEL_SETTLE)):
            self.rig.step(self.gravity)
        n = self.steps(abs(theta) / rate)
        for i in range(1, n + 1):
            self.theta = theta * (1 - (1 - i / n) ** 3)
            self.gravity = gravity_on_table(heading, self.theta)
            self.rig.step(self.gravity)
        for _ in range(self.steps(hold)):
            self.rig.step(self.gravity)
        self._look()

    # --- looking --------------------------------------------------------------------------

    def _look(self) -> None:
        world, scale = self.rig.world, self.rig.scale
        self.loads = [load / scale.force for load in world.loads()]
        self.lean = math.acos(max(-1.0, min(1.0, world.uprightness())))
        inner = world.links(self._inner)
        x, y = (sum(at[i] for at, _ in inner) / 4 / scale.length for i in (0, 1))
        if self._began is None:
            self._began = (x, y)
        self.travelled, self.sideways = x - self._began[0], y - self._began[1]
        back = (sum(at[i] for at, _ in inner[2:]) / 2 / scale.length for i in (0, 1))
        self.rear = next(back) - self._began[0], next(back) - self._began[1]
        if self.helm is not None:
            self.helm.keep(*self.rear, self._pointing())
        self.farthest = max(self.farthest, self.travelled)
        self._roll()
        self.hull = [tuple(v / scale.length for v in at) for at, _ in world.hull_contacts()]
        self._seen.append(
            _Look(
                self.time,
                (self.travelled, self.sideways, self.rolled),
                self.loads,
                self.driveline.torques,
                world.mass_centre(),
                world.chassis(),
                [state[0] for state in world.joint_states(self._joints)],
                inner,
                world.links(self._outer),
                self.gravity,
            )
        )

    def _roll(self) -> None:
        """How far the driven wheels have turned since the last look, by the loads they carry."""
        up, rolled = self._nose_up(), self.driveline.rolled()
        # The joints count from the axle, which pitches with the chassis.
        turned = [r - self.truck.axles[w // 2].tyre.radius * up for w, r in enumerate(rolled)]
        wheels = self.driveline.wheels or (0, 1, 2, 3)
        load = sum(self.loads[w] for w in wheels)
        if self._turned and load > 0:
            steps = [(t - was) for t, was in zip(turned, self._turned, strict=True)]
            self.rolled += sum(self.loads[w] * steps[w] for w in wheels) / load
            self.fastest += max(steps[w] for w in wheels)
        self._turned = turned

    def _nose_up(self) -> float:
        """rad, pitch of the chassis against the ground."""
        return math.asin(max(-1.0, min(1.0, float(self.along_truck((0.0, 0.0, 1.0))[0]))))

    @property
    def fell_back(self) -> float:
        """m that it has come back from the farthest point."""
        return self.farthest - self.travelled

    @property
    def airborne(self) -> bool:
        """Whether both wheels of a side or an axle are off the ground."""
        return any(self.loads[a] <= 0.0 and self.loads[b] <= 0.0 for a, b in PAIRS)

    def in_truck(self, place: Sequence[float]) -> Array:
        """(3,) m, a place on the ground seen in the truck's own axes as the chassis stands."""
        origin = self._pose()[:3] / self.rig.scale.length
        return self.along_truck(np.asarray(place) - origin)

    def along_truck(self, direction: ArrayLike) -> Array:
        """(3,) a direction over the ground in the truck's own axes as the chassis stands."""
        turned = Rotation.from_quat(self._pose()[3:]).apply(direction, inverse=True)
        return np.asarray(turned)

    def _pointing(self) -> float:
        """rad by which the truck points to the left of where it started."""
        ahead = Rotation.from_quat(self._pose()[3:]).apply((1.0, 0.0, 0.0))
        return math.atan2(ahead[1], ahead[0])

    def _pose(self) -> Array:
        return np.asarray(self.rig.world.chassis_poses([self.rig.world.chassis()])[0])

    def journey(self) -> Journey:
        """Everything seen so far."""
        length, seen = self.rig.scale.length, self._seen
        way = frozen([look.way for look in seen])
        cg = frozen([look.cg for look in seen]) / length
        record = self._record()
        pull = effective_gravity(record.time, cg, frozen([look.gravity for look in seen]))
        margin = force_angles(cg, pull, self._contacts() / length)
        torque = frozen([look.torque for look in seen])
        return Journey(record, way[:, 0], way[:, 1], way[:, 2], margin, torque)

    def _record(self) -> Record:
        world, length, seen = self.rig.world, self.rig.scale.length, self._seen
        chassis = np.array(world.chassis_poses([look.chassis for look in seen]))
        chassis[:, :3] /= length
        joints = np.array([look.joints for look in seen])
        straight = np.array(["heave" in n or "tyre" in n for n in world.moving], dtype=bool)
        joints[:, straight] /= length
        give = np.zeros((len(seen), 4, 3))
        for w, names in enumerate(self._names):
            for way, name in enumerate(("tyre_along", "tyre_aside", "tyre")):
                tyres = [
                    world.moving.index(j) for n in names if (j := f"{n}_{name}") in world.joints
                ]
                give[:, w, way] = joints[:, tyres].mean(axis=1) if tyres else 0.0
        wheels = np.array([[(*at, *turn) for at, turn in look.inner] for look in seen])
        wheels[:, :, :3] /= length
        radii = np.array([a.tyre.radius for a in self.truck.axles for _ in (0, 1)])
        return Record(
            time=frozen([look.time for look in seen]),
            theta=frozen(np.full(len(seen), self.theta)),
            loads=frozen([look.loads for look in seen]),
            chassis=frozen(chassis),
            joints=frozen(joints),
            joint_names=tuple(world.moving),
            give=frozen(give),
            slip=frozen(contact_slip(wheels, radii)),
        )

    def _contacts(self) -> Array:
        """(n, 4, 3) world m, lowest point of each tyre's outer edge."""
        poses = np.array([[(*at, *turn) for at, turn in look.outer] for look in self._seen])
        turn = Rotation.from_quat(poses[..., 3:].reshape(-1, 4))
        axle = turn.apply([0.0, 1.0, 0.0]).reshape(*poses.shape[:2], 3)
        down = -np.array([0.0, 0.0, 1.0]) + axle * axle[..., 2:3]
        down /= np.linalg.norm(down, axis=-1, keepdims=True)
        tyres = [self.truck.axles[w // 2].tyre for w in range(4)]
        length = self.rig.scale.length
        radius = np.array([t.radius for t in tyres]) * length
        out = np.array([1, -1, 1, -1]) * [t.contact_half_width for t in tyres] * length
        places: Array = poses[..., :3] + out[:, None] * axle + radius[:, None] * down
        return places


@contextmanager
def under_way(
    truck: Truck,
    ground: Ground,
    *,
    heading: float,
    reach: float,
    drive: Drive,
    grip: float | None,
    settings: GroundSettings,
    steering: bool = False,
) -> Iterator[Going]:
    """The truck held on its brakes on level ground; the world closes at the end.

    heading: rad, on the slope. reach: m to drive. grip: friction coefficient, None for
    settings.stick. Springs and dampers are the truck's own: here motion matters, so nothing is
    damped up. Raises InputError for a truck that makes no multibody or where Bullet is not
    installed.
    """
    with Rig(truck, settings, steering=steering) as rig:
        ground.lay(rig, truck, heading, reach)
        rig.world.hull_grip(SCRAPE)
        for wheel in range(4):
            rig.world.grip(wheel, settings.stick if grip is None else grip)
        yield Going(rig, truck, drive, steering)
