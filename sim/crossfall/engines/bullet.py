"""One truck in a rigid-body world; the only module that knows the engine.

A World names what the engine only numbers: wheels, joints, loads. It works in SI on whatever
truck it is given, so a trial that wants another length scale gives it a similar truck.
"""

from __future__ import annotations

import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from types import TracebackType
from typing import Any

import numpy as np

from crossfall.engines.held import check_driving
from crossfall.engines.multibody import Link, disc_names, multibody
from crossfall.engines.settings import EngineError, GroundSettings
from crossfall.engines.urdf import urdf_text
from crossfall.truck.model import Array, Truck, frozen
from crossfall.truck.quiet import silence

_ALIKE = 1e-9  # relative agreement asked of masses and inertias the engine reports
_Place = tuple[float, float, float]


@cache
def _engine() -> Any:
    """pybullet, imported on first use with its build line kept off the output."""
    check_driving()
    with silence():
        import pybullet
    return pybullet


class World:
    """A truck at ride height at the origin, without ground; see `plane` and `box`. SI throughout.

    step: s of one step. joints: name -> number. link: link name -> number (the chassis is -1).
    moving: names of joints that are not fixed. Motors are off, all built-in damping is zero, no
    joint has limits. Use as a context manager; any number may be open at once in a process. Raises
    InputError for a truck that makes no multibody and EngineError if the engine read it wrongly.

    `mass_centre` is sum(m r) / sum(m) over the links, m; `uprightness` is n.R z of the chassis, its
    cosine. The engine's own is articulated-body dynamics with Coulomb friction at contacts.
    Source: R. Featherstone, Rigid Body Dynamics Algorithms (Springer 2008), for trees of links
    (from memory); the rest derived here from the definition of a mass centre and of a dot product.
    """

    def __init__(
        self,
        truck: Truck,
        *,
        step: float,
        ground: GroundSettings | None = None,
        turning: bool = True,
        steering: bool = False,
    ) -> None:
        tree = multibody(truck, turning=turning, steering=steering)
        self._p, self._pulled = _engine(), (0.0, 0.0, 0.0)
        self._client: int = self._p.connect(self._p.DIRECT)
        try:
            self._set_up(step, ground or GroundSettings())
            self._body = self._load(urdf_text(tree, truck.name, limits=False))
            self._name_everything(truck, turning)
            self._check(tree.links)
            self._still()
        except BaseException:
            self.close()
            raise
        self.step_time = step
        self._truck = truck

    def __enter__(self) -> World:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def close(self) -> None:
        """Give back the engine's memory; closing twice is harmless."""
        if self._client >= 0:
            self._p.disconnect(physicsClientId=self._client)
            self._client = -1

    # --- ground ---------------------------------------------------------------------------

    def plane(self, friction: float = 1.0) -> int:
        """The plane z = 0; friction is a product of both bodies', so 1 leaves it to the tyres."""
        shape = self._p.createCollisionShape(self._p.GEOM_PLANE, physicsClientId=self._client)
        return self._fixed(shape, (0.0, 0.0, 0.0), (0.0, 0.0, 0.0, 1.0), friction)

    def box(
        self,
        edges: Sequence[float],
        centre: Sequence[float],
        quaternion: Sequence[float] = (0.0, 0.0, 0.0, 1.0),
        friction: float = 1.0,
    ) -> int:
        """A fixed box: edges (3,) m, centre (3,) m, quaternion x, y, z, w."""
        shape = self._p.createCollisionShape(
            self._p.GEOM_BOX, halfExtents=[e / 2 for e in edges], physicsClientId=self._client
        )
        return self._fixed(shape, centre, quaternion, friction)

    def capsule(
        self,
        radius: float,
        length: float,
        centre: Sequence[float],
        quaternion: Sequence[float] = (0.0, 0.0, 0.0, 1.0),
        friction: float = 1.0,
    ) -> int:
        """A fixed round-ended rod along its own z: radius and length between the ends' centres, m.

        The one curved shape whose roundness the collision margin does not touch.
        """
        shape = self._p.createCollisionShape(
            self._p.GEOM_CAPSULE, radius=radius, height=length, physicsClientId=self._client
        )
        return self._fixed(shape, centre, quaternion, friction)

    def terrain(
        self, heights: Array, cell: float, corner: tuple[float, float], friction: float = 1.0
    ) -> int:
        """A fixed height field: heights (nx, ny) m at corner + cell * (i, j); cell m."""
        nx, ny = heights.shape
        shape = self._p.createCollisionShape(
            self._p.GEOM_HEIGHTFIELD,
            meshScale=[cell, cell, 1.0],
            heightfieldData=heights.T.ravel().tolist(),
            numHeightfieldRows=nx,
            numHeightfieldColumns=ny,
            flags=self._p.GEOM_CONCAVE_INTERNAL_EDGE,  # or contacts are lost at seams
            physicsClientId=self._client,
        )
        middle = (  # the engine puts the middle of the field's bounding box at the body's origin
            corner[0] + cell * (nx - 1) / 2,
            corner[1] + cell * (ny - 1) / 2,
            float(heights.min() + heights.max()) / 2,
        )
        return self._fixed(shape, middle, (0.0, 0.0, 0.0, 1.0), friction)

    def _fixed(
        self, shape: int, centre: Sequence[float], quaternion: Sequence[float], friction: float
    ) -> int:
        body: int = self._p.createMultiBody(
            0.0, shape, -1, list(centre), list(quaternion), physicsClientId=self._client
        )
        self._p.changeDynamics(
            body, -1, lateralFriction=friction, restitution=0.0, physicsClientId=self._client
        )
        return body

    # --- running --------------------------------------------------------------------------

    def gravity(self, x: float, y: float, z: float) -> None:
        """Set gravity, m/s^2."""
        self._pulled = x, y, z
        self._p.setGravity(x, y, z, physicsClientId=self._client)

    def step(self) -> None:
        self._p.stepSimulation(physicsClientId=self._client)

    def advance(
        self, gravity: tuple[float, float, float], joints: Sequence[int], forces: Sequence[float]
    ) -> None:
        """One step under gravity (m/s^2) with these joint forces (N, N m).

        The same as gravity, torques and step, which a trial calls thousands of times.
        """
        p, client = self._p, self._client
        if gravity != self._pulled:
            self.gravity(*gravity)
        if joints:
            p.setJointMotorControlArray(
                self._body, joints, p.TORQUE_CONTROL, forces=forces, physicsClientId=client
            )
        p.stepSimulation(physicsClientId=client)

    def refine(self, step: float) -> None:
        """Steps of `step` (s) from now on."""
        self._p.setPhysicsEngineParameter(fixedTimeStep=step, physicsClientId=self._client)

    def save(self) -> int:
        """Keep the whole state in memory; costs as much as thirty steps."""
        return int(self._p.saveState(physicsClientId=self._client))

    def restore(self, state: int) -> None:
        self._p.restoreState(state, physicsClientId=self._client)

    def forget(self, state: int) -> None:
        self._p.removeState(state, physicsClientId=self._client)

    def torques(self, joints: Sequence[int], values: Sequence[float]) -> None:
        """Joint forces (N) and torques (N m) for the next step only."""
        self._p.setJointMotorControlArray(
            self._body,
            joints,
            self._p.TORQUE_CONTROL,
            forces=values,
            physicsClientId=self._client,
        )

    def motors(self, joints: Sequence[int], speeds: Sequence[float], most: Sequence[float]) -> None:
        """Hold joint speeds (rad/s) with at most the given torques (N m); 0 and 0 is free."""
        self._p.setJointMotorControlArray(
            self._body,
            joints,
            self._p.VELOCITY_CONTROL,
            targetVelocities=speeds,
            forces=most,
            physicsClientId=self._client,
        )

    def tie(self, spin: int, other: int) -> None:
        """Make two spin joints turn as one, like the two discs of a wheel."""
        constraint = self._p.createConstraint(
            self._body,
            spin,
            self._body,
            other,
            self._p.JOINT_GEAR,
            [0.0, 1.0, 0.0],
            [0.0, 0.0, 0.0],
            [0.0, 0.0, 0.0],
            physicsClientId=self._client,
        )
        self._p.changeConstraint(  # the engine's gear turns both ways round at +1
            constraint, gearRatio=-1.0, maxForce=1e9, erp=0.2, physicsClientId=self._client
        )

    def drag(self, rate: float) -> None:
        """Slow everything down by `rate` (1/s) of its speed, as in thick air."""
        for link in range(-1, len(self.joints)):
            self._p.changeDynamics(
                self._body,
                link,
                linearDamping=rate,
                angularDamping=rate,
                physicsClientId=self._client,
            )

    def press(self, link: int, at: _Place, force: _Place, moment: _Place) -> None:
        """Force (N) at a point (m) and moment (N m) on a link for the next step only."""
        p, body = self._p, self._body
        p.applyExternalForce(body, link, force, at, p.WORLD_FRAME, physicsClientId=self._client)
        p.applyExternalTorque(body, link, moment, p.WORLD_FRAME, physicsClientId=self._client)

    def grip(self, wheel: int, friction: float) -> None:
        """Friction coefficient of one wheel's tyre (0 front left to 3 rear right)."""
        for link, owner in self.wheel_of.items():
            if owner == wheel:
                self._p.changeDynamics(
                    self._body, link, lateralFriction=friction, physicsClientId=self._client
                )

    def hull_grip(self, friction: float) -> None:
        """Friction coefficient of the chassis where it drags on the ground."""
        self._p.changeDynamics(
            self._body, -1, lateralFriction=friction, physicsClientId=self._client
        )

    # --- reading --------------------------------------------------------------------------

    def joint_states(self, joints: Sequence[int]) -> list[tuple[float, ...]]:
        """(position, velocity, and the engine's reactions) of each joint."""
        if not joints:
            return []
        states: list[tuple[float, ...]] = self._p.getJointStates(
            self._body, joints, physicsClientId=self._client
        )
        return states

    def loads(self) -> list[float]:
        """(4,) N, normal force of each wheel on whatever it touches, front left first."""
        loads = [0.0, 0.0, 0.0, 0.0]
        wheel_of = self.wheel_of
        for contact in self._p.getContactPoints(self._body, physicsClientId=self._client):
            wheel = wheel_of.get(contact[3])
            if wheel is not None:
                loads[wheel] += contact[9]
        return loads

    def hull_contacts(self) -> list[tuple[tuple[float, ...], float]]:
        """Where (3,) m, and how hard, N, the chassis itself presses on anything."""
        found = self._p.getContactPoints(self._body, linkIndexA=-1, physicsClientId=self._client)
        return [(contact[5], contact[9]) for contact in found if contact[9] > 0.0]

    def mass_centre(self) -> tuple[float, float, float]:
        """CG of the whole truck, m."""
        states = self._p.getLinkStates(
            self._body, range(len(self.joints)), physicsClientId=self._client
        )
        places = [self.chassis()[0], *(state[0] for state in states)]
        x, y, z = (
            sum(m * at[i] for m, at in zip(self._masses, places, strict=True)) for i in range(3)
        )
        total = sum(self._masses)
        return x / total, y / total, z / total

    def chassis(self) -> tuple[tuple[float, ...], tuple[float, ...]]:
        """Engine's pose of the chassis: CG (3,) m and principal axes (4,); see `chassis_poses`."""
        pose: tuple[tuple[float, ...], tuple[float, ...]] = self._p.getBasePositionAndOrientation(
            self._body, physicsClientId=self._client
        )
        return pose

    def uprightness(self) -> float:
        """Cosine of the chassis' lean from the plane's normal."""
        x, y, z, w = self.chassis()[1]
        a, b, c = self._up
        return 2 * (x * z - y * w) * a + 2 * (y * z + x * w) * b + (1 - 2 * (x * x + y * y)) * c

    def chassis_poses(self, raw: Sequence[tuple[Sequence[float], Sequence[float]]]) -> Array:
        """(n, 7) pose of the truck axes on the chassis, x, y, z m and quaternion x, y, z, w."""
        return frozen([_compose(*pose, *self._base_inverse) for pose in raw])

    def links(self, links: Sequence[int]) -> list[tuple[tuple[float, ...], tuple[float, ...]]]:
        """Pose of each link's own frame: origin (3,) m, quaternion (4,)."""
        states = self._p.getLinkStates(self._body, links, physicsClientId=self._client)
        return [(s[4], s[5]) for s in states]

    def places(self, links: Sequence[int]) -> list[tuple[float, ...]]:
        """(10,) of each link: CG and origin (3,) m, and its frame's quaternion x, y, z, w."""
        states = self._p.getLinkStates(self._body, links, 0, 1, physicsClientId=self._client)
        return [(*s[0], *s[4], *s[5]) for s in states]

    def frames(self, links: Sequence[int]) -> list[tuple[_Place, _Place, tuple[float, ...]]]:
        """CG and origin (3,) m of each link, and the (9,) rotation of its frame, rows first."""
        p = self._p
        states = p.getLinkStates(self._body, links, 0, 1, physicsClientId=self._client)
        return [(s[0], s[4], p.getMatrixFromQuaternion(s[5])) for s in states]

    # --- setting up -----------------------------------------------------------------------

    def _set_up(self, step: float, ground: GroundSettings) -> None:
        self._p.setPhysicsEngineParameter(
            fixedTimeStep=step,
            numSolverIterations=ground.iterations,
            solverResidualThreshold=ground.residual,
            numSubSteps=0,
            enableConeFriction=1,
            enableFileCaching=0,  # otherwise a rewritten file at the same path is not read again
            deterministicOverlappingPairs=1,
            physicsClientId=self._client,
        )

    def _load(self, text: str) -> int:
        flags = (
            self._p.URDF_USE_INERTIA_FROM_FILE  # otherwise it makes up its own from the shapes
            | self._p.URDF_USE_IMPLICIT_CYLINDER  # otherwise wheels are 32-sided
            | self._p.URDF_MAINTAIN_LINK_ORDER
        )
        with tempfile.TemporaryDirectory(prefix="crossfall-") as folder:
            path = Path(folder) / "truck.urdf"
            path.write_text(text, encoding="utf-8")
            body = self._p.loadURDF(str(path), flags=flags, physicsClientId=self._client)
        if body < 0:
            raise EngineError("the engine could not load the truck")
        return int(body)

    def _name_everything(self, truck: Truck, turning: bool) -> None:
        count = self._p.getNumJoints(self._body, physicsClientId=self._client)
        infos = [
            self._p.getJointInfo(self._body, j, physicsClientId=self._client) for j in range(count)
        ]
        self.joints = {info[1].decode(): int(info[0]) for info in infos}
        self.link = {info[12].decode(): int(info[0]) for info in infos} | {"chassis": -1}
        self.moving = [i[1].decode() for i in infos if i[2] != self._p.JOINT_FIXED]
        self.wheel_of = {
            self.link[name]: wheel
            for wheel in (range(4) if turning else ())
            for name in disc_names(wheel, truck.axles[wheel // 2])
        }

    def _check(self, links: Sequence[Link]) -> None:
        """Mass and inertia must have arrived: the engine zeroes an inertia it does not like."""
        for link in links:
            info = self._p.getDynamicsInfo(
                self._body, self.link[link.name], physicsClientId=self._client
            )
            mass, moments, turn = info[0], info[2], _rotation(self._p, info[4])
            inertia = turn @ np.diag(moments) @ turn.T
            size = np.abs(link.body.inertia).max()
            if abs(mass - link.body.mass) > _ALIKE * link.body.mass:
                raise EngineError(f"{link.name}: mass {mass} kg read, {link.body.mass} written")
            if np.abs(inertia - link.body.inertia).max() > 1e-6 * size:
                raise EngineError(f"{link.name}: inertia read differs from the one written")
        in_order = sorted(links, key=lambda link: self.link[link.name])
        self._masses = [link.body.mass for link in in_order]
        info = self._p.getDynamicsInfo(self._body, -1, physicsClientId=self._client)
        inverse = self._p.invertTransform(info[3], info[4])
        self._base_inverse: tuple[Sequence[float], Sequence[float]] = inverse
        self._up: list[float] = _rotation(self._p, inverse[1])[:, 2].tolist()

    def _still(self) -> None:
        """Off with default motors, dampings and rolling friction."""
        moving = [self.joints[name] for name in self.moving]
        if moving:
            self.motors(moving, [0.0] * len(moving), [0.0] * len(moving))
        for link in range(-1, len(self.joints)):
            self._p.changeDynamics(
                self._body,
                link,
                lateralFriction=1.0,
                rollingFriction=0.0,
                spinningFriction=0.0,
                restitution=0.0,
                linearDamping=0.0,
                angularDamping=0.0,
                jointDamping=0.0,
                physicsClientId=self._client,
            )


@contextmanager
def saved(world: World) -> Iterator[int]:
    """A kept state, forgotten at the end of the block."""
    state = world.save()
    try:
        yield state
    finally:
        world.forget(state)


def _rotation(p: Any, quaternion: Sequence[float]) -> Array:
    return np.array(p.getMatrixFromQuaternion(quaternion)).reshape(3, 3)


def _compose(
    at: Sequence[float], q: Sequence[float], shift: Sequence[float], r: Sequence[float]
) -> tuple[float, ...]:
    """Pose (at, q) followed by (shift, r), as x, y, z and quaternion."""
    p = _engine()
    place, turn = p.multiplyTransforms(at, q, shift, r)
    return (*place, *turn)
