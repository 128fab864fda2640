"""What a trial saw, sample by sample, and keeping it in a file."""

from __future__ import annotations

import io
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from crossfall.engines.held import HeldTruck
from crossfall.engines.tyre_force import Vector
from crossfall.truck.files import write_atomically
from crossfall.truck.model import Array, frozen

DETAIL = 2  # looks between samples of poses: 30 a second, enough for a replay


@dataclass(frozen=True)
class Record:
    """n samples of one pass, real size and time.

    time: (n,) s. theta: (n,) rad, table angle. loads: (n, 4) N, front left first. chassis: (n, 7)
    x, y, z m and quaternion x, y, z, w of the truck axes on the chassis, in table axes. joints:
    (n, m) m or rad, named by joint_names. give: (n, 4, 3) m, how far each wheel has moved on its
    axle as its tyre gave way, along the axle's own axes. slip: (n, 4) m, how far each tyre's
    contact has slid.
    """

    time: Array
    theta: Array
    loads: Array
    chassis: Array
    joints: Array
    joint_names: tuple[str, ...]
    give: Array
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
            give=self.give,
            slip=self.slip,
        )
        write_atomically(path, buffer.getvalue())


def load_record(path: str | Path) -> Record:
    """Read what `Record.save` wrote. Raises OSError, KeyError or ValueError for anything else."""
    with np.load(path, allow_pickle=False) as data:
        fields = ("time", "theta", "loads", "chassis", "joints", "give", "slip")
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
    """Gathers raw samples cheaply while a trial runs; `record` makes sense of them."""

    def __init__(self, rig: HeldTruck) -> None:
        self._rig = rig
        self._rows: list[tuple[float, float, float, list[float]]] = []
        self._chassis: list[Any] = []
        self._states: list[list[float]] = []
        self._gives: list[list[Vector]] = []
        self._slips: list[list[float]] = []

    def __len__(self) -> int:
        return len(self._rows)

    def cut(self, mark: int) -> None:
        """Forget the looks from number `mark` on."""
        del self._rows[mark:]
        for rows in (self._chassis, self._states, self._gives, self._slips):
            del rows[-(-mark // DETAIL) :]

    def stretch(self, start: int) -> Stretch:
        """What a fit needs of the looks from number `start` on."""
        rows = self._rows[start:]
        return Stretch(*(frozen([row[k] for row in rows]) for k in range(4)))

    def look(self, time: float, theta: float, lean: float, loads: list[float]) -> None:
        """Note a look; every DETAIL-th also takes all poses."""
        if len(self._rows) % DETAIL == 0:
            self._chassis.append(self._rig.pose())
            self._states.append(self._rig.joint_positions())
            self._gives.append(self._rig.gives())
            self._slips.append(self._rig.slips())
        self._rows.append((time, theta, lean, loads))

    def record(self) -> Record:
        """Everything sampled so far."""
        rows = self._rows[::DETAIL]
        return Record(
            frozen([r[0] for r in rows]),
            frozen([r[1] for r in rows]),
            frozen([r[3] for r in rows]),
            frozen(self._rig.poses(self._chassis)),
            frozen(np.reshape(self._states, (len(rows), len(self._rig.joint_names)))),
            self._rig.joint_names,
            frozen(self._gives),
            frozen(self._slips),
        )


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
