"""What a trial saw, sample by sample, and keeping it in a file."""

from __future__ import annotations

import io
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from crossfall.truck.files import write_atomically
from crossfall.truck.model import Array, frozen

FIELDS = ("time", "theta", "loads", "chassis", "joints", "give", "slip")


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

    def __repr__(self) -> str:
        lasts = float(self.time[-1] - self.time[0]) if len(self) else 0.0
        return f"Record, {len(self)} samples over {lasts:.1f} s"

    def only(self, which: Array) -> Record:
        """Some of the samples: (n,) whether each is wanted."""
        wanted = np.asarray(which, dtype=bool)
        values = {name: frozen(getattr(self, name)[wanted]) for name in FIELDS}
        return Record(joint_names=self.joint_names, **values)

    def save(self, path: str | Path) -> None:
        """Write as .npz in one step, with the field names above as keys."""
        buffer = io.BytesIO()
        np.savez_compressed(
            buffer,
            joint_names=np.array(self.joint_names, dtype=np.str_),
            **{name: getattr(self, name) for name in FIELDS},
        )
        write_atomically(path, buffer.getvalue())


def load_record(path: str | Path) -> Record:
    """Read what `Record.save` wrote, or of a whole trial (`saved.save_trial`) the way from the
    level to the end of the tilting. Raises OSError, KeyError or ValueError for anything else."""
    with np.load(path, allow_pickle=False) as data:
        values = {name: frozen(data[name]) for name in FIELDS}
        names = tuple(str(n) for n in data["joint_names"])
        record = Record(joint_names=names, **values)
        return record.only(data["passed"]) if "passed" in data else record


def contact_slip(wheels: Array, radii: Array) -> Array:
    """(n, 4) m slid since the first sample, from wheel frames (n, 4, 7) and radii (4,) m.

    The contact is the disc's lowest point, r (e e_z - n) / |...| from its middle. A held wheel that
    turns with its axle rolls: its contact moves by radius times turning without sliding. The ground
    counts as the plane z = 0.
    Source: derived here from rolling without sliding, dx = r dphi.
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
