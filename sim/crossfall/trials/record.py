"""What a trial saw, sample by sample, and keeping it in a file."""

from __future__ import annotations

import io
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from crossfall.trials.multibody import disc_names
from crossfall.trials.rig import Rig
from crossfall.truck.files import write_atomically
from crossfall.truck.model import Array, Truck, frozen

DETAIL = 3  # looks between samples of poses: 27 a second, enough for a replay


@dataclass(frozen=True)
class Record:
    """n samples of one pass, real size and time.

    time: (n,) s. theta: (n,) rad, table angle. loads: (n, 4) N, front left first. chassis: (n, 7)
    x, y, z m and quaternion x, y, z, w of the truck axes on the chassis, in table axes. joints:
    (n, m) m or rad, named by joint_names. slip: (n, 4) m, how far each tyre's contact has slid.
    """

    time: Array
    theta: Array
    loads: Array
    chassis: Array
    joints: Array
    joint_names: tuple[str, ...]
    slip: Array

    def __len__(self) -> int:
        return len(self.time)

    def save(self, path: str | Path) -> None:
        """Write as .npz in one step, with the field names above as keys."""
        buffer = io.BytesIO()
        np.savez_compressed(
            buffer,
            time=self.time,
            theta=self.theta,
            loads=self.loads,
            chassis=self.chassis,
            joints=self.joints,
            joint_names=np.array(self.joint_names, dtype=np.str_),
            slip=self.slip,
        )
        write_atomically(path, buffer.getvalue())


def load_record(path: str | Path) -> Record:
    """Read what `Record.save` wrote. Raises OSError, KeyError or ValueError for anything else."""
    with np.load(path, allow_pickle=False) as data:
        fields = ("time", "theta", "loads", "chassis", "joints", "slip")
        values = {name: frozen(data[name]) for name in fields}
        names = tuple(str(n) for n in data["joint_names"])
    return Record(joint_names=names, **values)


@dataclass(frozen=True)
class Stretch:
    """Samples of one steady tilting: time (n,) s, theta and lean (n,) rad, loads (n, 4) N."""

    time: Array
    theta: Array
    lean: Array
    loads: Array


class Recorder:
    """Gathers raw samples cheaply while a trial runs; `record` makes sense of them.

    turned: rad, by which the truck was turned on the plane; the record turns it back.
    """

    def __init__(self, rig: Rig, truck: Truck, turned: float) -> None:
        self._rig, self._truck, self._turned = rig, truck, turned
        world = rig.world
        self._joint_names = tuple(world.moving)
        self._joints = [world.joints[name] for name in self._joint_names]
        firsts = [disc_names(w, truck.axles[w // 2])[0] for w in range(4)]
        self._wheels = [world.link[name] for name in firsts]
        self._rows: list[tuple[float, float, float, list[float]]] = []
        self._chassis: list[tuple[tuple[float, ...], tuple[float, ...]]] = []
        self._states: list[list[tuple[float, ...]]] = []
        self._links: list[list[tuple[tuple[float, ...], tuple[float, ...]]]] = []

    def __len__(self) -> int:
        return len(self._rows)

    def cut(self, mark: int) -> None:
        """Forget the looks from number `mark` on."""
        del self._rows[mark:]
        for rows in (self._chassis, self._states, self._links):
            del rows[-(-mark // DETAIL) :]

    def stretch(self, start: int) -> Stretch:
        """What a fit needs of the looks from number `start` on, real size and time."""
        scale, rows = self._rig.scale, self._rows[start:]
        return Stretch(
            frozen([r[0] for r in rows]) / scale.time,
            frozen([r[1] for r in rows]),
            frozen([r[2] for r in rows]),
            frozen([r[3] for r in rows]) / scale.force,
        )

    def look(self, time: float, theta: float, lean: float, loads: list[float]) -> None:
        """Note a look at world time; every DETAIL-th also takes all poses."""
        if len(self._rows) % DETAIL == 0:
            world = self._rig.world
            self._chassis.append(world.chassis())
            self._states.append(world.joint_states(self._joints))
            self._links.append(world.links(self._wheels))
        self._rows.append((time, theta, lean, loads))

    def moved(self) -> list[float]:
        """(4,) m, how far each wheel has come over the table since the first sample."""
        first, last = self._links[0], self._links[-1]
        length = self._rig.scale.length
        return [
            ((a[0][0] - b[0][0]) ** 2 + (a[0][1] - b[0][1]) ** 2) ** 0.5 / length
            for a, b in zip(last, first, strict=True)
        ]

    def record(self) -> Record:
        """Everything sampled so far, at real size."""
        scale, rows = self._rig.scale, self._rows[::DETAIL]
        time = np.array([r[0] for r in rows]) / scale.time
        loads = np.array([r[3] for r in rows]) / scale.force
        poses = np.array(self._rig.world.chassis_poses(self._chassis))
        poses[:, :3] /= scale.length
        poses = _turned(poses, -self._turned)
        joints = np.array([[s[0] for s in row] for row in self._states])
        joints = joints.reshape(len(time), len(self._joints))
        sliding = np.array(["heave" in n or "tyre" in n for n in self._joint_names], dtype=bool)
        joints[:, sliding] /= scale.length
        links = np.array([[(*at, *turn) for at, turn in row] for row in self._links])
        links[:, :, :3] /= scale.length
        radii = np.array([a.tyre.radius for a in self._truck.axles for _ in (0, 1)])
        return Record(
            frozen(time),
            frozen([r[1] for r in rows]),
            frozen(loads),
            frozen(poses),
            frozen(joints),
            self._joint_names,
            frozen(contact_slip(links, radii)),
        )


def _turned(poses: Array, angle: float) -> Array:
    """Poses (n, 7), x, y, z and quaternion, turned about z by an angle (rad)."""
    x, y, z, qx, qy, qz, qw = poses.T
    c, s = np.cos(angle), np.sin(angle)
    ch, sh = np.cos(angle / 2), np.sin(angle / 2)
    place = c * x - s * y, s * x + c * y, z
    turn = ch * qx - sh * qy, ch * qy + sh * qx, ch * qz + sh * qw, ch * qw - sh * qz
    return np.stack([*place, *turn], axis=1)


def contact_slip(wheels: Array, radii: Array) -> Array:
    """(n, 4) m slid since the first sample, from wheel frames (n, 4, 7) and radii (4,) m.

    The contact is the disc's lowest point. A held wheel that turns with its axle rolls: its
    contact moves by radius times turning without sliding.
    """
    x, y, z, w = np.moveaxis(wheels[..., 3:], -1, 0)
    axle = np.stack([2 * (x * y - z * w), 1 - 2 * (x * x + z * z), 2 * (y * z + x * w)], axis=-1)
    ahead = np.stack([1 - 2 * (y * y + z * z), 2 * (x * y + z * w), 2 * (x * z - y * w)], axis=-1)
    down = -np.array([0.0, 0.0, 1.0]) + axle * axle[..., 2:3]
    down /= np.linalg.norm(down, axis=-1, keepdims=True)
    contact = wheels[..., :3] + radii[:, None] * down
    forward = np.cross(axle, -down)
    turned = np.unwrap(
        np.arctan2(-ahead[..., 2], np.sum(ahead * forward, axis=-1)), axis=0
    )  # nose down positive
    step = np.diff(contact, axis=0)[..., :2]
    rolled = (radii * np.diff(turned, axis=0))[..., None] * forward[1:, :, :2]
    path = np.cumsum(step - rolled, axis=0)
    return np.concatenate([np.zeros((1, len(radii))), np.linalg.norm(path, axis=-1)])
