"""One held truck in MuJoCo, with that engine's own springs, stops, tyres and friction.

Built from the Truck alone, apart from the URDF and from `held_wheels`: the two engines share no
more than the truck and the way it is tilted. A corner is a fixed tendon of length
-c = -(q +- (s/2) r): its spring has a dead band above its free length, so it only pushes, and its
limits are the stops. An axle on links has six joints in a row, heave and roll among them, and its
links are tendons from ball to ball whose length is held: it goes where they let it, whatever
`truck.axle_law` says. Shocks press on heave and roll by that law, as in the other engine. A wheel
is one thin disc, or one at either end of its contact width, each with its share of the wheel's
mass, on slides with springs along its axle's x, y and z: the tyre. Brakes let it turn by nothing;
held by the motor's shaft it is on a hinge whose angle is tied to the axle's roll, its own (a locked
differential) or the mean of both wheels' (an open one). Contacts are elliptic cones with next to no
creep.

A damper is 2 zeta sqrt(k m) with m the share of the truck on the tyre; a joint that would turn by
more than turn_per_step in a step, omega dt, is given the inertia k (dt / turn_per_step)^2.
Source: derived here from virtual work (a tendon's force acts on every joint by its coefficient) and
from the least period of an oscillator; springs, limits and friction cones as the engine's own
manual describes them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import mujoco
import numpy as np

from crossfall.engines.axle_forces import Records
from crossfall.engines.held import engine_version
from crossfall.engines.multibody import multibody
from crossfall.engines.settings import EngineError, TrialSettings
from crossfall.engines.springs import Corners, CornerSprings, corner_springs
from crossfall.truck.massprops import whole
from crossfall.truck.model import ENDS, GRAVITY, Array, Axle, Body, Links, Truck, Tyre, frozen
from crossfall.truck.ride import tyre_loads
from crossfall.truck.vectors import Vector

STICKS = 50.0  # friction coefficient of a wheel against a rail: it never slips
SOFT = (0.99, 0.999, 1e-4)  # a stop's impedance, see the engine's manual, "solimp"
GROUND = (0.9, 0.999, 1e-4)  # the ground's: it has to give a little, or contacts part
STIFF = (0.9999, 0.9999, 1e-4)  # the same of a link, which has no length to give
THIN = 5e-6  # m, half of a disc's thickness
BAD = tuple(getattr(mujoco.mjtWarning, f"mjWARN_BADQ{what}") for what in ("POS", "VEL", "ACC"))
STATE = mujoco.mjtState.mjSTATE_INTEGRATION


@dataclass(frozen=True)
class SolverMethod:
    """How the engine is run; none of it belongs to the truck.

    step: s. turn_per_step: rad of its fastest oscillation a joint may go through in a step; where a
    spring is stiffer, its joint is given inertia, which at rest does nothing. impratio: friction's
    stiffness over that of the contact; the more, the less creep, and the more work: 2000 takes half
    as long again and finds the same, and 20 leaves trucks that hardly give an interval of a degree.
    unslip: rounds of taking out what creep is left.
    rounds: of the solver, at most, which may stop at `tolerance`. firm: steps in which a contact, a
    stop or a link takes up an overlap, two at least.
    """

    step: float = 0.002
    turn_per_step: float = 0.9
    impratio: float = 200.0
    unslip: int = 10
    rounds: int = 100
    tolerance: float = 1e-12
    firm: float = 2.0


@dataclass(frozen=True)
class _Snapshot:
    """Everything needed to go back to a moment."""

    state: Array
    corners: Records | None


class MujocoTruck:
    """See `HeldTruck`. Raises EngineError where the engine does not take the model."""

    def __init__(
        self, truck: Truck, settings: TrialSettings, method: SolverMethod = SolverMethod()
    ) -> None:
        multibody(truck, turning=False)  # refuses what makes none
        self.settings, self._method = settings, method
        self.engine, self.varies = engine_version("mujoco"), ("step", "solver", "contact")
        self.dt = self._whole_step = method.step * settings.step / TrialSettings.step
        try:
            self._model = mujoco.MjModel.from_xml_string(mjcf(truck, settings, method, self.dt))
        except ValueError as error:
            raise EngineError(f"the engine could not load the truck: {error}") from error
        self._data = mujoco.MjData(self._model)
        model, names = self._model, [f"{end}_{way}" for end in ENDS for way in ("heave", "roll")]
        moving = {model.joint(j).name: int(model.jnt_qposadr[j]) for j in range(model.njnt)}
        self.joint_names = tuple(name for name in names if name in moving)
        self._joints = [moving[name] for name in self.joint_names]
        self._wheelbase = truck.wheelbase
        geoms = [model.geom(g).name for g in range(model.ngeom)]
        self._wheel_of = [int(n[4]) if n.startswith("disc") else -1 for n in geoms]
        self._discs = [[g for g, w in enumerate(self._wheel_of) if w == k] for k in range(4)]
        self._gives = [
            [[moving[f"{geoms[g]}_{axis}"] for g in discs] for axis in "xyz"]
            for discs in self._discs
        ]
        self._ties = [  # between the wheels of an open axle, for where a rail holds one
            (end, model.equality(f"{name}_tie").id)
            for end, name in enumerate(ENDS)
            if truck.axles[end].loose
        ]
        self._railed = [False, False]
        self._shafts = [axle.shaft for axle in truck.axles]
        self._rolls = [moving.get(f"{end}_roll") for end in ENDS]
        self._radii = [truck.axles[w // 2].tyre.radius for w in range(4)]
        self._axles = [model.body(end).id for end in ENDS]
        laws = corner_springs(truck, settings, self.dt, 1.0, settling=True)
        shocks = [law for law in laws if law.law is not None]
        places = [  # of heave and roll among positions and among freedoms
            [(moving[name], model.joint(name).dofadr[0]) for name in (law.heave, law.roll)]
            for law in shocks
        ]
        data = self._data
        self._shocks = (
            Corners(shocks, np.array(places, np.int64), data.qpos, data.qvel, data.qfrc_applied)
            if shocks
            else None
        )
        body = whole(truck)  # drag on the whole: its joints have dampers of their own
        self._inert = np.concatenate([np.full(3, body.mass), np.diag(body.inertia)])
        self.refine()
        self.drag(1.0)
        mujoco.mj_forward(model, self._data)
        self._start = self._unrolled()

    def __enter__(self) -> MujocoTruck:
        self._warning = mujoco.get_mju_user_warning()
        mujoco.set_mju_user_warning(lambda text: None)  # else it writes a file; see `_check`
        return self

    def __exit__(self, *_: object) -> None:
        mujoco.set_mju_user_warning(self._warning)
        del self._data, self._model

    def grip(self, friction: Sequence[float]) -> None:
        for pair, geom in enumerate(self._model.pair_geom2.tolist()):
            self._model.pair_friction[pair, :2] = min(friction[self._wheel_of[geom]], STICKS)
        self._railed = [math.inf in friction[2 * end : 2 * end + 2] for end in (0, 1)]
        self._tie()

    def _tie(self) -> None:
        for end, tie in self._ties:
            self._data.eq_active[tie] = self._railed[end]

    def refine(self, *, step: int = 1, solver: int = 1, contact: int = 1) -> None:
        option, method = self._model.opt, self._method
        self.dt = option.timestep = self._whole_step / step
        rounds = solver * self.settings.solver
        option.iterations, option.noslip_iterations = method.rounds * rounds, method.unslip * rounds
        option.impratio = method.impratio * contact
        self._model.pair_solimp[:, 0] = 1.0 - (1.0 - GROUND[0]) / contact
        self._model.pair_solimp[:, 1] = 1.0 - (1.0 - GROUND[1]) / contact

    def drag(self, times: float) -> None:
        self._model.dof_damping[:6] = self.settings.drag * times * self._inert

    def step(self, gravity: Vector, count: int = 1) -> None:
        self._model.opt.gravity[:] = gravity
        if self._shocks is None:
            mujoco.mj_step(self._model, self._data, count)
            return
        for _ in range(count):
            self._shocks.press(self.dt)
            mujoco.mj_step(self._model, self._data)

    def loads(self) -> list[float]:
        loads, contacts, forces = [0.0] * 4, self._data.contact, self._data.efc_force
        for (one, other), at in zip(
            contacts.geom.tolist(), contacts.efc_address.tolist(), strict=True
        ):
            if at >= 0:
                loads[max(self._wheel_of[one], self._wheel_of[other])] += float(forces[at])
        return loads

    def slips(self) -> list[float]:
        return [
            math.hypot(x - a, y - b)
            for (x, y), (a, b) in zip(self._unrolled(), self._start, strict=True)
        ]

    def gives(self) -> list[Vector]:
        at = self._data.qpos
        sums = [[sum(float(at[j]) for j in own) / len(own) for own in w] for w in self._gives]
        return [(x, y, z) for x, y, z in sums]

    def joint_positions(self) -> list[float]:
        return [float(self._data.qpos[j]) for j in self._joints]

    def lean(self) -> float:
        x, y = self._data.qpos[4:6].tolist()
        return math.acos(max(-1.0, 1.0 - 2.0 * (x * x + y * y)))

    def place(self) -> tuple[float, ...]:
        x, y, z, *turn = self._data.qpos[:7].tolist()
        return (x, y, z, *(self._wheelbase * q for q in turn))

    def pose(self) -> list[float]:
        self._check()
        pose: list[float] = self._data.qpos[:7].tolist()
        return pose

    def poses(self, raw: Sequence[list[float]]) -> Array:
        return frozen(np.array(raw).reshape(-1, 7)[:, [0, 1, 2, 4, 5, 6, 3]])

    def save(self) -> _Snapshot:
        self._check()
        state = np.empty(mujoco.mj_stateSize(self._model, STATE))
        mujoco.mj_getState(self._model, self._data, state, STATE)
        return _Snapshot(state, None if self._shocks is None else self._shocks.save())

    def restore(self, snapshot: _Snapshot) -> None:
        mujoco.mj_setState(self._model, self._data, snapshot.state, STATE)
        if self._shocks is not None and snapshot.corners is not None:
            self._shocks.restore(snapshot.corners)
        self._tie()

    def forget(self, snapshot: _Snapshot) -> None:
        """Nothing is kept outside the snapshot itself."""

    def _check(self) -> None:
        """Where its numbers run away the engine quietly begins anew, which is no trial."""
        warned = self._data.warning
        if any(warned[kind].number for kind in BAD):
            raise EngineError("the engine lost the truck: its step is too long for this one")

    def _unrolled(self) -> list[tuple[float, float]]:
        """(4, 2) m, where each wheel's lowest point is, less how far it has rolled, about."""
        at, turns = self._data.geom_xpos, self._data.xmat
        out = []
        for wheel, discs in enumerate(self._discs):
            turn = turns[self._axles[wheel // 2]].tolist()
            pitch, roll = math.atan2(-turn[6], turn[8]), turn[7]
            if (joint := self._rolls[wheel // 2]) is not None:
                pitch += self._shafts[wheel // 2] * float(self._data.qpos[joint])
            places = [at[g].tolist() for g in discs]
            x, y = (sum(place[i] for place in places) / len(discs) for i in (0, 1))
            radius = self._radii[wheel]
            out.append((x - radius * pitch, y + radius * roll))
        return out


def mjcf(truck: Truck, settings: TrialSettings, method: SolverMethod, step: float) -> str:
    """MJCF of the truck at ride height on a plane, without friction.

    settings: damping ratios are read from it. step: s, of the engine. Lengths m, masses kg, rates
    N/m.
    """
    loads = tyre_loads(truck)
    laws = {law.heave: law for law in corner_springs(truck, settings, step, 1.0, settling=True)}
    soft = (step / method.turn_per_step) ** 2  # kg of inertia for each N/m, at least
    firm = method.firm * step
    bodies, tendons, ties, meets = [], [], [], []
    for i, axle in enumerate(truck.axles):
        s, end = axle.suspension, ENDS[i]
        centre = np.array([axle.x, 0.0, s.roll_centre_height])
        joints = feet = ""
        if not s.locked:
            law = laws[f"{end}_heave"]
            if s.links is not None:
                centre = np.array([axle.x, 0.0, axle.tyre.radius])
                heads, feet = _balls(end, s.links, centre)
                bodies.append(heads)
                tendons += [_link(end, n) for n in range(len(s.links.names))]
                ties += [f'<tendon tendon1="{end}_link{n}"/>' for n in range(len(s.links.names))]
            joints = _axle_joints(end, law, None if s.links else s.heave_lean, soft, axle.body)
            tendons += [] if law.law is not None else _corners(law, firm)
        wheels = "".join(
            _wheel(truck, w, float(loads[w]), centre, settings, soft) for w in (2 * i, 2 * i + 1)
        )
        meets += [
            f'<pair geom1="table" geom2="{name}"/>'
            for w in (2 * i, 2 * i + 1)
            for name in _discs(w, axle.tyre)
        ]
        if axle.shaft:
            means, same = _shaft(end, i, axle)
            tendons += means
            ties += same
        bodies.append(
            f'<body name="{end}" pos="{_numbers(centre)}">{joints}'
            f"{_inertial(axle.body, centre)}{wheels}{feet}</body>"
        )
    return f"""<mujoco><compiler angle="radian" autolimits="false"/>
<option timestep="{step!r}" cone="elliptic" impratio="{method.impratio!r}"
 integrator="implicitfast" jacobian="sparse"
 iterations="{method.rounds}" tolerance="{method.tolerance!r}"
 noslip_iterations="{method.unslip}" noslip_tolerance="{method.tolerance!r}"/>
<default><geom contype="0" conaffinity="0"/>
<pair condim="3" solref="{firm!r} 1" solimp="{_numbers(GROUND)}" friction="0 0 0 0 0"/>
<equality solref="{firm!r} 1" solimp="{_numbers(STIFF)}"/></default>
<worldbody><geom name="table" type="plane" size="5 5 1"/>
<body name="chassis"><freejoint/>{_inertial(truck.chassis, np.zeros(3))}{"".join(bodies)}</body>
</worldbody><contact>{"".join(meets)}</contact><tendon>{"".join(tendons)}</tendon>
<equality>{"".join(ties)}</equality></mujoco>"""


def _axle_joints(end: str, law: CornerSprings, lean: float | None, soft: float, body: Body) -> str:
    """Heave and roll; the springs themselves are tendons. lean: rad, None for an axle on links,
    which has its place ahead and aside, yaw and pitch between them. soft: s^2, see `mjcf`."""
    axis = _numbers([math.sin(lean or 0.0), 0.0, math.cos(lean or 0.0)])
    ways, turns = ("", "") if lean is not None else _guided(end)
    rate = law.rate + law.more
    heave = 2 * rate * soft - body.mass
    roll = (2 * rate * law.half_spacing**2 + law.anti_roll) * soft - float(body.inertia[0, 0])
    bar = law.anti_roll if law.law is None else 0.0  # shocks come with theirs
    return (
        f'{ways}<joint name="{end}_heave" type="slide" axis="{axis}" '
        f'armature="{max(0.0, heave)!r}"/>{turns}'
        f'<joint name="{end}_roll" type="hinge" axis="1 0 0" stiffness="{bar!r}" '
        f'armature="{max(0.0, roll)!r}"/>'
    )


def _guided(end: str) -> tuple[str, str]:
    """The joints that links lead: place before heave, turning after it."""
    ways = (
        f'<joint name="{end}_{name}" type="slide" axis="{axis}"/>'
        for name, axis in (("x", "1 0 0"), ("y", "0 1 0"))
    )
    turns = (
        f'<joint name="{end}_{name}" type="hinge" axis="{axis}"/>'
        for name, axis in (("yaw", "0 0 1"), ("pitch", "0 1 0"))
    )
    return "".join(ways), "".join(turns)


def _balls(end: str, links: Links, centre: Array) -> tuple[str, str]:
    """The ends of its links, on the chassis and on the axle. centre: m, of the axle."""
    heads = "".join(
        f'<site name="{end}_head{n}" pos="{_numbers(at + centre)}"/>'
        for n, at in enumerate(links.chassis)
    )
    feet = "".join(
        f'<site name="{end}_foot{n}" pos="{_numbers(at)}"/>' for n, at in enumerate(links.axle)
    )
    return heads, feet


def _link(end: str, n: int) -> str:
    sites = f'<site site="{end}_head{n}"/><site site="{end}_foot{n}"/>'
    return f'<spatial name="{end}_link{n}">{sites}</spatial>'


def _corners(law: CornerSprings, firm: float) -> list[str]:
    """Springs, dampers and stops of an axle's two corners, a tendon more where soft springs bind.
    firm: s, of the stops."""
    out = []
    for preload, bound, sign in zip(law.preload, law.bound, (1.0, -1.0), strict=True):
        whole = (
            f'limited="true" range="{-law.bump!r} {law.droop!r}" solreflimit="{firm!r} 1" '
            f'solimplimit="{_numbers(SOFT)}" stiffness="{law.rate!r}" '
            f'springlength="{preload / law.rate!r} 1000" damping="{law.damping!r}"'
        )
        beyond = f'stiffness="{law.more!r}" springlength="{-bound!r} 1000"'
        out += [
            f'<fixed {how}><joint joint="{law.heave}" coef="-1"/>'
            f'<joint joint="{law.roll}" coef="{-sign * law.half_spacing!r}"/></fixed>'
            for how in (whole, *([beyond] if law.more else []))
        ]
    return out


def _shaft(end: str, i: int, axle: Axle) -> tuple[list[str], list[str]]:
    """What ties the wheels' turning to the axle's roll, tendons and equalities."""
    left, right = (_discs(w, axle.tyre) for w in (2 * i, 2 * i + 1))
    roll = "" if axle.suspension.locked else f"{end}_roll"
    if not axle.open:
        other = f'joint2="{roll}" polycoef="0 {axle.shaft!r} 0 0 0"' if roll else ""
        return [], [f'<joint joint1="{name}_turn" {other}/>' for name in left + right]
    ways = [(f"{left[0]}_turn", 0.5), (f"{right[0]}_turn", 0.5), (roll, -axle.shaft)]
    joints = "".join(f'<joint joint="{name}" coef="{c!r}"/>' for name, c in ways if name)
    same = [(f"{end}_tie", left[0], right[0], "false")]
    same += [(f"{d}_with", discs[0], d, "true") for discs in (left, right) for d in discs[1:]]
    ties = [
        f'<joint name="{name}" joint1="{a}_turn" joint2="{b}_turn" active="{on}"/>'
        for name, a, b, on in same
    ]
    mean = f'<fixed name="{end}_mean">{joints}</fixed>'
    return [mean], [f'<tendon tendon1="{end}_mean"/>', *ties]


def _discs(wheel: int, tyre: Tyre) -> list[str]:
    return [f"disc{wheel}_{n}" for n in range(1 if tyre.contact_half_width == 0.0 else 2)]


def _wheel(
    truck: Truck, wheel: int, load: float, parent: Array, settings: TrialSettings, soft: float
) -> str:
    """A held wheel's discs on their slides. load: N on the ground. soft: s^2, see `mjcf`."""
    axle = truck.axles[wheel // 2]
    tyre, body = axle.tyre, axle.wheels[wheel % 2]
    hub = axle.hubs[wheel % 2]
    offsets = [0.0] if tyre.contact_half_width == 0.0 else [-1.0, 1.0]
    share = 1.0 / len(offsets)
    own = Body(body.mass * share, body.cg, body.inertia * share)
    out = ""
    for n, offset in enumerate(offsets):
        name, slides = _discs(wheel, tyre)[n], ""
        for axis, way, whole_rate in (
            ("x", "1 0 0", tyre.longitudinal),
            ("y", "0 1 0", tyre.lateral),
            ("z", "0 0 1", tyre.stiffness),
        ):
            rate = whole_rate * share
            damping = settings.tyre_damping * 2 * math.sqrt(rate * load * share / GRAVITY)
            rest = -(load * share - own.mass * GRAVITY) / rate if axis == "z" else 0.0
            slides += (
                f'<joint name="{name}_{axis}" type="slide" axis="{way}" stiffness="{rate!r}" '
                f'springref="{rest!r}" damping="{damping!r}" '
                f'armature="{max(0.0, rate * soft - own.mass)!r}"/>'
            )
        if (
            axle.shaft
        ):  # where a tyre along the ground is stiff, as heavy to turn as a step can follow
            heavy = tyre.longitudinal * share * soft * tyre.radius**2 - float(own.inertia[1, 1])
            slides += (
                f'<joint name="{name}_turn" type="hinge" axis="0 1 0" '
                f'armature="{max(0.0, heavy)!r}"/>'
            )
        out += (
            f'<body pos="{_numbers(hub - parent)}">{slides}{_inertial(own, hub)}'
            f'<geom name="{name}" type="ellipsoid" size="{tyre.radius!r} {THIN!r} {tyre.radius!r}" '
            f'pos="0 {offset * tyre.contact_half_width!r} 0"/></body>'
        )
    return out


def _inertial(body: Body, origin: Array) -> str:
    i = body.inertia
    full = _numbers([i[0, 0], i[1, 1], i[2, 2], i[0, 1], i[0, 2], i[1, 2]])
    mass = float(body.mass)
    return f'<inertial pos="{_numbers(body.cg - origin)}" mass="{mass!r}" fullinertia="{full}"/>'


def _numbers(values: Any) -> str:
    return " ".join(repr(float(v)) for v in np.ravel(np.asarray(values, dtype=float)))
