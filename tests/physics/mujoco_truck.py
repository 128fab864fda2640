"""The same truck in another engine, with that engine's own springs, for comparison.

Built from the Truck alone, not from the URDF. Corner springs are fixed tendons of length
-c = -(q +- (s/2) r): a tendon's spring with a dead band above its free length only pushes, and
its limits are the stops. Contact and friction: elliptic cones, impratio 2000 (less creeps in yaw).
"""

from __future__ import annotations

import math

import mujoco
import numpy as np

from crossfall.truck.model import GRAVITY, Body, Truck
from crossfall.truck.ride import spring_preloads, tyre_loads

PAIRS = ((0, 2), (1, 3), (0, 1), (2, 3))
ENDS = ("front", "rear")


def numbers(values: object) -> str:
    return " ".join(repr(float(v)) for v in np.ravel(np.asarray(values, dtype=float)))


def inertial(body: Body, origin: np.ndarray) -> str:
    i = body.inertia
    full = numbers([i[0, 0], i[1, 1], i[2, 2], i[0, 1], i[0, 2], i[1, 2]])
    return (
        f'<inertial pos="{numbers(body.cg - origin)}" mass="{body.mass!r}" fullinertia="{full}"/>'
    )


def mjcf(truck: Truck, damping: float = 8.0, friction: float = 5.0) -> str:
    """MJCF of the truck at ride height on a plane; corner damping N s/m."""
    preloads, loads = spring_preloads(truck), tyre_loads(truck)
    bodies, tendons = [], []
    for i, axle in enumerate(truck.axles):
        s, end = axle.suspension, ENDS[i]
        centre = np.array([axle.x, 0.0, s.roll_centre_height])
        joints = ""
        if not s.locked:
            lean = numbers([math.sin(s.heave_lean), 0.0, math.cos(s.heave_lean)])
            joints = (
                f'<joint name="{end}_q" type="slide" axis="{lean}"/>'
                f'<joint name="{end}_r" type="hinge" axis="1 0 0" stiffness="{s.anti_roll!r}"/>'
            )
            for side, sign in ((0, 1.0), (1, -1.0)):
                free = float(preloads[2 * i + side]) / s.spring_rate
                tendons.append(
                    f'<fixed name="{end}{side}" limited="true" range="{-s.bump!r} {s.droop!r}" '
                    f'solreflimit="0.004 1" stiffness="{s.spring_rate!r}" '
                    f'springlength="{free!r} 1000" damping="{damping!r}">'
                    f'<joint joint="{end}_q" coef="-1"/>'
                    f'<joint joint="{end}_r" coef="{-sign * s.spring_spacing / 2!r}"/></fixed>'
                )
        wheels = "".join(
            _wheel(truck, 2 * i + side, float(loads[2 * i + side]), centre, friction)
            for side in (0, 1)
        )
        bodies.append(
            f'<body name="{end}" pos="{numbers(centre)}">{joints}'
            f"{inertial(axle.body, centre)}{wheels}</body>"
        )
    return f"""<mujoco><compiler angle="radian" autolimits="false"/>
<option timestep="0.0005" cone="elliptic" impratio="2000" integrator="implicitfast"
 iterations="200" tolerance="1e-12"/>
<default><geom friction="{friction!r} 0 0" condim="3" solref="0.004 1" solimp="0.99 0.999 1e-4"/>
</default>
<worldbody><geom name="table" type="plane" size="5 5 1"/>
<body name="chassis"><freejoint/>{inertial(truck.chassis, np.zeros(3))}{"".join(bodies)}</body>
</worldbody><tendon>{"".join(tendons)}</tendon></mujoco>"""


def _wheel(truck: Truck, wheel: int, load: float, parent: np.ndarray, friction: float) -> str:
    axle = truck.axles[wheel // 2]
    tyre, body = axle.tyre, axle.wheels[wheel % 2]
    hub = np.array([axle.x, (0.5 - wheel % 2) * axle.track, tyre.radius])
    discs = [0.0] if tyre.contact_half_width == 0.0 else [-1.0, 1.0]
    share, rate = 1.0 / len(discs), tyre.stiffness / len(discs)
    out = ""
    for n, offset in enumerate(discs):
        own = Body(body.mass * share, body.cg, body.inertia * share)
        rest = -(load * share - own.mass * GRAVITY) / rate
        y = offset * tyre.contact_half_width
        out += (
            f'<body name="wheel{wheel}_{n}" pos="{numbers(hub - parent)}">'
            f'<joint type="slide" axis="0 0 1" stiffness="{rate!r}" springref="{rest!r}" '
            f'damping="{0.3 * math.sqrt(rate * load * share / GRAVITY)!r}"/>'
            f'{inertial(own, hub)}<geom name="disc{wheel}_{n}" type="cylinder" '
            f'size="{tyre.radius!r} 0.0001" pos="0 {y!r} 0" euler="{math.pi / 2!r} 0 0"/></body>'
        )
    return out


class Bench:
    """The truck on a table that can be tilted, held, and put back to a moment."""

    def __init__(self, truck: Truck, heading: float, damping: float = 8.0) -> None:
        self.model = mujoco.MjModel.from_xml_string(mjcf(truck, damping))
        self.data = mujoco.MjData(self.model)
        self.heading, self.theta = heading, 0.0
        geoms = range(self.model.ngeom)
        names = [mujoco.mj_id2name(self.model, mujoco.mjtObj.mjOBJ_GEOM, g) for g in geoms]
        self.wheel_of = {g: int(n[4]) for g, n in enumerate(names) if n.startswith("disc")}

    def step(self, theta: float, steps: int) -> None:
        along = GRAVITY * math.sin(theta)
        self.theta = theta
        self.model.opt.gravity[:] = (
            -along * math.cos(self.heading),
            along * math.sin(self.heading),
            -GRAVITY * math.cos(theta),
        )
        mujoco.mj_step(self.model, self.data, steps)

    def loads(self) -> np.ndarray:
        loads, force = np.zeros(4), np.zeros(6)
        for n in range(self.data.ncon):
            contact = self.data.contact[n]
            mujoco.mj_contactForce(self.model, self.data, n, force)
            loads[self.wheel_of[max(contact.geom1, contact.geom2)]] += force[0]
        return loads

    def lean(self) -> float:
        x, y = self.data.qpos[4:6]
        return math.acos(min(1.0, 1 - 2 * (x * x + y * y)))

    def move(self, target: float, rate: float) -> bool:
        """Tilt to target; True when it went over on the way."""
        start, every = self.theta, 8
        n = max(1, round(abs(target - start) / rate / self.model.opt.timestep / every))
        for i in range(1, n + 1):
            self.step(start + (target - start) * i / n, every)
            if self.lean() > math.radians(30.0):
                return True
        return False

    def stands(self, target: float, hold: float) -> bool:
        """Whether it still stands after going to target and being held there."""
        if self.move(target, math.radians(2.0)):
            return False
        for _ in range(round(hold / self.model.opt.timestep / 20)):
            self.step(target, 20)
            if self.lean() > math.radians(30.0):
                return False
        loads = self.loads()
        return all(loads[a] + loads[b] > 0.0 for a, b in PAIRS)

    def moment(self) -> tuple[np.ndarray, float]:
        size = mujoco.mj_stateSize(self.model, mujoco.mjtState.mjSTATE_INTEGRATION)
        state = np.empty(size)
        mujoco.mj_getState(self.model, self.data, state, mujoco.mjtState.mjSTATE_INTEGRATION)
        return state, self.theta

    def back(self, moment: tuple[np.ndarray, float]) -> None:
        state, self.theta = moment
        mujoco.mj_setState(self.model, self.data, state, mujoco.mjtState.mjSTATE_INTEGRATION)


def tip(truck: Truck, heading: float, start: float, width: float = math.radians(0.02)) -> float:
    """Critical angle (rad) by holding, searched upwards from `start` (rad), below any lift."""
    bench = Bench(truck, heading)
    bench.move(0.8 * start, math.radians(20.0))
    bench.move(start, math.radians(5.0))
    bench.stands(start, 0.5)
    step, moment = math.radians(0.25), bench.moment()
    low = start
    while bench.stands(low + step, 0.5):
        low, moment = low + step, bench.moment()
        if low > math.radians(80.0):
            return math.nan
    high = low + step
    while high - low > width:
        bench.back(moment)
        middle = (low + high) / 2
        if bench.stands(middle, 1.5):
            low, moment = middle, bench.moment()
        else:
            high = middle
    return (low + high) / 2
