"""The same truck in another engine, with that engine's own springs, for comparison.

Built from the Truck alone, not from the URDF. An axle on links hangs on six joints in a row and is
held by rods, bodies with a ball at either end, of next to no mass and without weight; its shocks
are tendons between their ends. Else corner springs are fixed tendons of length
-c = -(q +- (s/2) r): a tendon's spring with a dead band above its free length only pushes, and
its limits are the stops. A wheel is one thin disc, or one at either end of its contact width,
each with its share of the wheel's mass and on slides with springs along its axle's x, y and z: the
tyre. It cannot turn: brakes. Contacts are elliptic cones with next to no creep.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import mujoco
import numpy as np

from crossfall.truck.model import GRAVITY, Array, Axle, Body, Links, Suspension, Truck
from crossfall.truck.ride import spring_preloads, tyre_loads

Hold = Literal["brakes", "rail"]

ENDS = ("front", "rear")
STICKS = 50.0  # friction of a wheel against a rail: it never slips
THIN = 5e-6  # m, half of a disc's thickness


@dataclass(frozen=True)
class Method:
    """How the engine is run, in SI; none of it belongs to the truck.

    step: s. impratio: friction's stiffness over that of the contact; the more, the less creep.
    unslip: rounds of taking out what creep is left.
    corner_damping: N s/m. tyre_damping: of the critical one of the mass a tyre bears.
    light: a wheel's weight acts on its axle, and only its inertia moves with the disc. ground: s in
    which the table takes up an overlap; it gives with the square of that.
    """

    step: float = 0.001
    impratio: float = 2000.0
    unslip: int = 20
    corner_damping: float = 8.0
    tyre_damping: float = 0.15
    light: bool = False
    ground: float = 0.004


def mjcf(truck: Truck, method: Method = Method()) -> str:
    """MJCF of the truck at ride height on a plane, without friction."""
    preloads, loads = spring_preloads(truck), tyre_loads(truck)
    bodies, tendons, loops = [], [], []
    for i, axle in enumerate(truck.axles):
        s, end = axle.suspension, ENDS[i]
        centre = np.array([axle.x, 0.0, s.roll_centre_height])
        joints = rods = ""
        heads = _heads(axle, end) if s.shocks is not None else ""
        if not s.locked and s.links is not None:
            centre = np.array([axle.x, 0.0, axle.tyre.radius])
            joints = _six_joints(end, s.anti_roll)
            rods, own = _rods(end, s.links, centre)
            loops += own
        elif not s.locked:
            lean = _numbers([math.sin(s.heave_lean), 0.0, math.cos(s.heave_lean)])
            joints = (
                f'<joint name="{end}_q" type="slide" axis="{lean}"/>'
                f'<joint name="{end}_r" type="hinge" axis="1 0 0" stiffness="{s.anti_roll!r}"/>'
            )
        if not s.locked and s.shocks is not None:
            tendons += _shocks(end, s, preloads[2 * i : 2 * i + 2], method)
        elif not s.locked:
            for side, sign in ((0, 1.0), (1, -1.0)):
                free = float(preloads[2 * i + side]) / s.spring_rate
                tendons.append(
                    f'<fixed name="{end}{side}" limited="true" range="{-s.bump!r} {s.droop!r}" '
                    f'solreflimit="0.004 1" stiffness="{s.spring_rate!r}" '
                    f'springlength="{free!r} 1000" damping="{method.corner_damping!r}">'
                    f'<joint joint="{end}_q" coef="-1"/>'
                    f'<joint joint="{end}_r" coef="{-sign * s.spring_spacing / 2!r}"/></fixed>'
                )
        wheels = "".join(
            _wheel(truck, 2 * i + side, float(loads[2 * i + side]), centre, method)
            for side in (0, 1)
        )
        bodies.append(
            f'<body name="{end}" pos="{_numbers(centre)}">{joints}'
            f"{_inertial(axle.body, centre)}{wheels}{rods}{_feet(axle, end, centre)}</body>{heads}"
        )
    return f"""<mujoco><compiler angle="radian" autolimits="false"/>
<option timestep="{method.step!r}" cone="elliptic" impratio="{method.impratio!r}"
 integrator="implicitfast" iterations="200" tolerance="1e-12"
 noslip_iterations="{method.unslip}" noslip_tolerance="1e-12"/>
<default><geom friction="0 0 0" condim="3" solref="{method.ground!r} 1" solimp="0.99 0.999 1e-4"/>
</default>
<worldbody><geom name="table" type="plane" size="5 5 1"/>
<body name="chassis"><freejoint/>{_inertial(truck.chassis, np.zeros(3))}{"".join(bodies)}</body>
</worldbody><tendon>{"".join(tendons)}</tendon><equality>{"".join(loops)}{_shafts(truck)}</equality></mujoco>"""


def _six_joints(end: str, anti_roll: float) -> str:
    """Place, yaw, pitch and roll one after the other, so that heave and roll are two of them."""
    return "".join(
        f'<joint name="{end}_{name}" type="{kind}" axis="{axis}" stiffness="{rate!r}"/>'
        for name, kind, axis, rate in (
            ("x", "slide", "1 0 0", 0.0),
            ("y", "slide", "0 1 0", 0.0),
            ("q", "slide", "0 0 1", 0.0),
            ("yaw", "hinge", "0 0 1", 0.0),
            ("pitch", "hinge", "0 1 0", 0.0),
            ("r", "hinge", "1 0 0", anti_roll),
        )
    )


def _rods(end: str, links: Links, centre: Array) -> tuple[str, list[str]]:
    """The rods on the axle, and the loops that close on the chassis."""
    rods, loops = "", []
    for n, (upper, lower) in enumerate(zip(links.chassis, links.axle, strict=True)):
        along = upper - lower
        rods += (
            f'<body name="{end}_rod{n}" pos="{_numbers(lower)}" gravcomp="1">'
            f'<joint type="ball" damping="1e-6"/><inertial pos="{_numbers(along / 2)}" '
            f'mass="0.001" diaginertia="1e-6 1e-6 1e-6"/></body>'
        )
        loops.append(
            f'<connect body1="{end}_rod{n}" body2="chassis" anchor="{_numbers(along)}" '
            f'solref="0.002 1" solimp="0.9999 0.9999 0.001"/>'
        )
    return rods, loops


def _heads(axle: Axle, end: str) -> str:
    """Where the shocks hang on the chassis."""
    shocks = axle.suspension.shocks
    assert shocks is not None
    heads = shocks.chassis + np.array([axle.x, 0.0, axle.tyre.radius])
    return "".join(
        f'<site name="{end}_head{side}" pos="{_numbers(head)}"/>' for side, head in enumerate(heads)
    )


def _feet(axle: Axle, end: str, centre: Array) -> str:
    shocks = axle.suspension.shocks
    if shocks is None:
        return ""
    feet = shocks.axle + np.array([axle.x, 0.0, axle.tyre.radius]) - centre
    return "".join(
        f'<site name="{end}_foot{side}" pos="{_numbers(foot)}"/>' for side, foot in enumerate(feet)
    )


def _shocks(end: str, s: Suspension, preloads: Array, method: Method) -> list[str]:
    assert s.shocks is not None
    lengths = np.linalg.norm(s.shocks.chassis - s.shocks.axle, axis=1).tolist()
    out = []
    for side, (length, preload) in enumerate(zip(lengths, preloads, strict=True)):
        rate, free, springs = s.spring_rate, float(length + preload / s.spring_rate), ""
        if s.soft_rate:
            # Two springs one on the other and a rest for the soft one; free: of both together.
            rate = 1.0 / (1.0 / s.spring_rate + 1.0 / s.soft_rate)
            most = s.soft_rate * s.soft_travel  # N under which the soft one has gone home
            over = max(0.0, float(preload) - most)
            free = length + (float(preload) - over) / rate + over / s.spring_rate
            springs = (
                f'stiffness="{s.spring_rate - rate!r}" springlength="{free - most / rate!r} 1000"'
            )
        for law in (
            f'limited="true" range="{length - s.bump!r} {length + s.droop!r}" '
            f'solreflimit="0.004 1" stiffness="{rate!r}" springlength="{free!r} 1000" '
            f'damping="{method.corner_damping!r}"',
            springs,
        ):
            if law:
                out.append(
                    f"<spatial {law}>"
                    f'<site site="{end}_head{side}"/><site site="{end}_foot{side}"/></spatial>'
                )
    return out


def _numbers(values: object) -> str:
    return " ".join(repr(float(v)) for v in np.ravel(np.asarray(values, dtype=float)))


def _inertial(body: Body, origin: Array) -> str:
    i = body.inertia
    full = _numbers([i[0, 0], i[1, 1], i[2, 2], i[0, 1], i[0, 2], i[1, 2]])
    return (
        f'<inertial pos="{_numbers(body.cg - origin)}" mass="{body.mass!r}" fullinertia="{full}"/>'
    )


def _wheel(truck: Truck, wheel: int, load: float, parent: Array, method: Method) -> str:
    axle = truck.axles[wheel // 2]
    tyre, body = axle.tyre, axle.wheels[wheel % 2]
    hub = axle.hubs[wheel % 2]
    discs = [0.0] if tyre.contact_half_width == 0.0 else [-1.0, 1.0]
    share = 1.0 / len(discs)
    own = Body(body.mass * share, body.cg, body.inertia * share)
    spring = load * share if method.light else load * share - own.mass * GRAVITY
    slides = ""
    for axis, whole in (
        ("1 0 0", tyre.longitudinal),
        ("0 1 0", tyre.lateral),
        ("0 0 1", tyre.stiffness),
    ):
        rate = whole * share
        damping = method.tyre_damping * 2 * math.sqrt(rate * load * share / GRAVITY)
        rest = -spring / rate if axis == "0 0 1" else 0.0
        slides += (
            f'<joint type="slide" axis="{axis}" stiffness="{rate!r}" springref="{rest!r}" '
            f'damping="{damping!r}"/>'
        )
    out = ""
    if method.light:
        out += f'<body pos="{_numbers(hub - parent)}">{_inertial(body, hub)}</body>'
    for n, offset in enumerate(discs):
        out += (
            f'<body name="wheel{wheel}_{n}" pos="{_numbers(hub - parent)}" '
            f'gravcomp="{int(method.light)}">{slides}{_spin(axle, f"{wheel}_{n}")}'
            f"{_inertial(own, hub)}"
            f'<geom name="disc{wheel}_{n}" type="ellipsoid" '
            f'size="{tyre.radius!r} {THIN!r} {tyre.radius!r}" '
            f'pos="0 {offset * tyre.contact_half_width!r} 0"/></body>'
        )
    return out


def _spin(axle: Axle, name: str) -> str:
    return f'<joint name="spin{name}" type="hinge" axis="0 1 0"/>' if axle.shaft else ""


def _shafts(truck: Truck) -> str:
    """A wheel that a shaft turns as its axle rolls: one joint tied to another."""
    found = ""
    for i, axle in enumerate(truck.axles):
        for wheel in (2 * i, 2 * i + 1) if axle.shaft else ():
            for n in range(1 if axle.tyre.contact_half_width == 0.0 else 2):
                found += (
                    f'<joint joint1="spin{wheel}_{n}" joint2="{ENDS[i]}_r" '
                    f'polycoef="0 {axle.shaft!r} 0 0 0" solref="0.004 1" '
                    f'solimp="0.999 0.9999 0.001"/>'
                )
    return found


class Bench:
    """The truck on a table that can be tilted, held, and put back to a moment.

    heading, theta: rad. friction: of the tyres; sticking: wheels that never slip.
    """

    def __init__(
        self,
        truck: Truck,
        heading: float,
        friction: float = 5.0,
        sticking: Sequence[int] = (),
        method: Method = Method(),
    ) -> None:
        self.model = mujoco.MjModel.from_xml_string(mjcf(truck, method))
        self.data = mujoco.MjData(self.model)
        self.heading, self.theta = heading, 0.0
        names = [self.model.geom(g).name for g in range(self.model.ngeom)]
        self._wheel_of = np.array([int(n[4]) if n.startswith("disc") else -1 for n in names])
        for geom, wheel in enumerate(self._wheel_of):
            if wheel >= 0:  # of two friction coefficients the engine takes the larger
                self.model.geom_friction[geom, 0] = STICKS if wheel in sticking else friction
        self.radii = np.array([truck.axles[w // 2].tyre.radius for w in range(4)])
        self._axles = [self.model.body(end).id for end in ENDS]
        self._chassis = self.model.body("chassis").id
        mujoco.mj_forward(self.model, self.data)
        self._places = self._unrolled()

    def step(self, theta: float, steps: int) -> None:
        along = GRAVITY * math.sin(theta)
        self.theta = theta
        self.model.opt.gravity[:] = (
            -along * math.cos(self.heading),
            along * math.sin(self.heading),
            -GRAVITY * math.cos(theta),
        )
        mujoco.mj_step(self.model, self.data, steps)

    def loads(self) -> Array:
        """(4,) N between each wheel and the table."""
        contacts = self.data.contact
        wheels = self._wheel_of[contacts.geom].max(axis=1)
        at = contacts.efc_address
        forces = self.data.efc_force[at[at >= 0]]
        loads: Array = np.bincount(wheels[at >= 0], forces, 4).astype(np.float64)
        return loads

    def pose(self) -> Array:
        """(6,) the chassis: its CG in m and its rotation vector in rad, in the table's axes."""
        w, *v = self.data.qpos[3:7]
        size = math.hypot(*v)
        turn = np.array(v) * (2 * math.atan2(size, w) / size if size > 1e-12 else 2.0)
        return np.concatenate([self.data.xipos[self._chassis], turn])

    def lean(self) -> float:
        """rad, of the chassis against the table."""
        x, y = self.data.qpos[4:6]
        return math.acos(max(-1.0, 1 - 2 * (x * x + y * y)))

    def slid(self) -> Array:
        """(4,) m, how far each wheel has come over the table, about; rolling is no sliding."""
        slid: Array = np.linalg.norm(self._unrolled() - self._places, axis=1)
        return slid

    def _unrolled(self) -> Array:
        geoms = self._wheel_of >= 0
        wheels = self._wheel_of[geoms]
        at = self.data.geom_xpos[geoms, :2]
        discs = np.bincount(wheels, minlength=4)[:, None]
        hubs = np.stack([np.bincount(wheels, weights=c, minlength=4) for c in at.T], axis=1) / discs
        axes = self.data.xmat[self._axles].reshape(2, 3, 3)[[0, 0, 1, 1]]
        pitch, roll = np.arctan2(-axes[:, 2, 0], axes[:, 2, 2]), axes[:, 2, 1]
        rolled: Array = hubs - self.radii[:, None] * np.stack([pitch, -roll], axis=1)
        return rolled

    def moment(self) -> tuple[Array, float]:
        size = mujoco.mj_stateSize(self.model, mujoco.mjtState.mjSTATE_INTEGRATION)
        state = np.empty(size)
        mujoco.mj_getState(self.model, self.data, state, mujoco.mjtState.mjSTATE_INTEGRATION)
        return state, self.theta

    def back(self, moment: tuple[Array, float]) -> None:
        state, self.theta = moment
        mujoco.mj_setState(self.model, self.data, state, mujoco.mjtState.mjSTATE_INTEGRATION)
        mujoco.mj_forward(self.model, self.data)
