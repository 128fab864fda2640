"""A recorded trial as one binary file of poses, for the page to play in real time.

Layout, little-endian: 4 bytes "CFP1", uint32 length of the header, the header as JSON padded with
spaces to a multiple of 4, then rows of float32. Columns of a row: time (s), table angle (deg), the
four tyre loads (g), the CG (x, y, z, mm), then for each of `BODIES` its displacement from ride
height: x, y, z (mm) and a quaternion x, y, z, w, in table axes (the truck's own at the start).
"""

from __future__ import annotations

import json
import struct
import zipfile
from pathlib import Path
from typing import Any

import numpy as np
from scipy.spatial.transform import Rotation

from crossfall.engines.multibody import steer_joint
from crossfall.trials.record import Record, load_record
from crossfall.truck.assemble import BODIES
from crossfall.truck.axle_law import law_of
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, WHEELS, Array, Body, Truck

MAGIC = b"CFP1"
ROWS = 6000  # at most; a longer record is thinned evenly
MAX_FILE = 100_000_000  # bytes of a record file once unpacked


def body_poses(truck: Truck, chassis: Array, joints: dict[str, Array], give: Array) -> Array:
    """(n, 7, 7) displacement of each of BODIES from ride height: x, y, z m and a quaternion.

    chassis: (n, 7) pose of the truck axes on the chassis. joints: (n,) m or rad by name, as the
    multibody names them; a joint that is not there does not move. give: (n, 4, 3) m, see `Record`.
    """
    n = len(chassis)
    still = np.zeros(n)
    poses = np.empty((n, len(BODIES), 7))
    poses[:, 0] = chassis
    for end, axle in zip(("front", "rear"), truck.axles, strict=True):
        heave, roll = (joints.get(f"{end}_{name}", still) for name in ("heave", "roll"))
        turn, shift = law_of(axle).motion(heave, roll)
        quaternions = Rotation.from_matrix(turn).as_quat()
        row = 1 if end == "front" else 2
        poses[:, row] = _after(chassis, np.hstack([shift, quaternions]))
        for side in ("left", "right"):
            wheel = f"{end} {side}"
            w = WHEELS.index(wheel)
            steer = np.outer(joints.get(steer_joint(w), still), (0.0, 0.0, 1.0))
            turned = Rotation.from_rotvec(steer)
            hub = np.array([axle.x, (1 - 2 * (w % 2)) * axle.track / 2, axle.tyre.radius])
            moved = np.hstack([give[:, w] + hub - turned.apply(hub), turned.as_quat()])
            poses[:, BODIES.index(wheel)] = _after(poses[:, row], moved)
    return poses


def cg_path(truck: Truck, poses: Array) -> Array:
    """(n, 3) m, CG of the whole truck at poses (n, 7, 7)."""
    bodies: tuple[Body, ...] = (
        truck.chassis,
        *(a.body for a in truck.axles),
        *(w for a in truck.axles for w in a.wheels),
    )
    total = np.zeros((len(poses), 3))
    for i, body in enumerate(bodies):
        turn = Rotation.from_quat(poses[:, i, 3:])
        total += body.mass * (poses[:, i, :3] + turn.apply(np.array(body.cg)))
    path: Array = total / whole(truck).mass
    return path


def pack_replay(truck: Truck, record: Record, about: dict[str, Any]) -> bytes:
    """The binary file. about: goes into its header, with the names of the bodies."""
    keep = np.unique(np.linspace(0, len(record) - 1, min(len(record), ROWS)).round().astype(int))
    joints = {name: record.joints[keep, i] for i, name in enumerate(record.joint_names)}
    poses = body_poses(truck, record.chassis[keep], joints, record.give[keep])
    centre = cg_path(truck, poses) * 1000
    poses[:, :, :3] *= 1000
    time = record.time[keep] - record.time[keep[0]]
    lead = [time, np.degrees(record.theta[keep]), *(record.loads[keep].T / GRAVITY * 1000)]
    rows = np.column_stack([*lead, centre, poses.reshape(len(keep), -1)]).astype("<f4")
    header = json.dumps({**about, "bodies": BODIES, "rows": len(keep), "columns": rows.shape[1]})
    text = header.encode()
    text += b" " * (-len(text) % 4)
    return MAGIC + struct.pack("<I", len(text)) + text + rows.tobytes()


def read_record(path: Path) -> Record:
    """A record file someone left in the folder: data only, and of a bounded size. InputError."""
    try:
        with zipfile.ZipFile(path) as archive:
            if sum(entry.file_size for entry in archive.infolist()) > MAX_FILE:
                raise InputError(Problem(path.name, "is too large", f"{MAX_FILE} bytes unpacked"))
        record = load_record(path)
        shaped = record.chassis.shape == (len(record), 7) and record.loads.shape[1:] == (4,)
        shaped = shaped and record.give.shape == (len(record), 4, 3)
    except (OSError, ValueError, KeyError, EOFError, IndexError, zipfile.BadZipFile):
        raise InputError(Problem(path.name, "is no recorded trial")) from None
    if not shaped or len(record) == 0:
        raise InputError(Problem(path.name, "is no recorded trial"))
    return record


def _after(outer: Array, inner: Array) -> Array:
    """(n, 7) the pose `inner` seen through the pose `outer`."""
    turn = Rotation.from_quat(outer[:, 3:])
    place = outer[:, :3] + turn.apply(inner[:, :3])
    return np.hstack([place, (turn * Rotation.from_quat(inner[:, 3:])).as_quat()])
