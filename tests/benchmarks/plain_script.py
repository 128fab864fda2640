"""The straightforward way to do a tilt trial, to measure ours against.

The exported file at real size, 240 Hz, 1 degree a second from the level, a Python loop over the
joints in every step (springs, tyres, brakes), until the truck lies on its side. No prediction, no
tricks, default solver.
"""

from __future__ import annotations

import math
import tempfile
from pathlib import Path
from typing import Any

from crossfall.engines.urdf import urdf
from crossfall.truck.model import GRAVITY, Truck
from crossfall.truck.ride import spring_preloads, tyre_loads
from support import with_tyres


def plain_trial(p: Any, truck: Truck, heading: float, steps_per_second: int = 240) -> float:
    """Table angle (rad) when the truck has fallen. p: the engine's module."""
    truck = with_tyres(truck, lateral=math.inf, longitudinal=math.inf)  # springs upwards only
    client = p.connect(p.DIRECT)
    p.setTimeStep(1 / steps_per_second, physicsClientId=client)
    floor = p.createCollisionShape(p.GEOM_PLANE, physicsClientId=client)
    p.changeDynamics(
        p.createMultiBody(0, floor, physicsClientId=client),
        -1,
        lateralFriction=1.0,
        physicsClientId=client,
    )
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "truck.urdf"
        path.write_text(urdf(truck))
        flags = p.URDF_USE_INERTIA_FROM_FILE | p.URDF_USE_IMPLICIT_CYLINDER
        body = p.loadURDF(str(path), flags=flags, physicsClientId=client)
    joints = {}
    for j in range(p.getNumJoints(body, physicsClientId=client)):
        joints[p.getJointInfo(body, j, physicsClientId=client)[1].decode()] = j
        p.changeDynamics(body, j, lateralFriction=5.0, physicsClientId=client)
        p.setJointMotorControl2(body, j, p.VELOCITY_CONTROL, force=0, physicsClientId=client)
    preloads, loads = spring_preloads(truck), tyre_loads(truck)
    theta = 0.0
    while theta < math.radians(85.0):
        theta += math.radians(1.0) / steps_per_second
        _push(p, client, body, joints, truck, preloads, loads)
        p.setGravity(
            -GRAVITY * math.sin(theta) * math.cos(heading),
            GRAVITY * math.sin(theta) * math.sin(heading),
            -GRAVITY * math.cos(theta),
            physicsClientId=client,
        )
        p.stepSimulation(physicsClientId=client)
        p.getContactPoints(body, physicsClientId=client)
        turn = p.getBasePositionAndOrientation(body, physicsClientId=client)[1]
        if p.getMatrixFromQuaternion(turn)[8] < math.cos(math.radians(35.0)):
            break
    p.disconnect(physicsClientId=client)
    return theta


def _push(
    p: Any, client: int, body: int, joints: dict[str, int], truck: Truck, preloads: Any, loads: Any
) -> None:
    for i, end in enumerate(("front", "rear")):
        s = truck.axles[i].suspension
        q, qv = p.getJointState(body, joints[f"{end}_heave"], physicsClientId=client)[:2]
        r, rv = p.getJointState(body, joints[f"{end}_roll"], physicsClientId=client)[:2]
        forces = []
        for side, arm in ((0, s.spring_spacing / 2), (1, -s.spring_spacing / 2)):
            c, v = q + arm * r, qv + arm * rv
            stop = 3000.0 * (max(0.0, c - s.bump) - max(0.0, -s.droop - c))
            push = max(0.0, preloads[2 * i + side] + s.spring_rate * c)
            forces.append(push + s.damping * v + stop)
        _torque(p, client, body, joints[f"{end}_heave"], -sum(forces))
        moment = s.spring_spacing / 2 * (forces[0] - forces[1]) + s.anti_roll * r
        _torque(p, client, body, joints[f"{end}_roll"], -moment)
        for side, name in enumerate(("left", "right")):
            mine = [n for n in joints if n.startswith(f"{end}_{name}")]
            discs = [joints[n] for n in mine if n.endswith("tyre")]
            own = truck.axles[i].wheels[side].mass * GRAVITY
            rest, rate = loads[2 * i + side] - own, truck.axles[i].tyre.stiffness
            for joint in discs:
                u, v = p.getJointState(body, joint, physicsClientId=client)[:2]
                force = (rest + rate * u) / len(discs) + 8.0 * v
                _torque(p, client, body, joint, -force)
            for brake in [joints[n] for n in mine if n.endswith("spin")]:
                p.setJointMotorControl2(
                    body, brake, p.VELOCITY_CONTROL, targetVelocity=0.0, force=10.0,
                    physicsClientId=client,
                )  # fmt: skip


def _torque(p: Any, client: int, body: int, joint: int, force: float) -> None:
    p.setJointMotorControl2(body, joint, p.TORQUE_CONTROL, force=force, physicsClientId=client)
