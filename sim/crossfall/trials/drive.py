"""What turns the wheels: one motor, shafts along the truck, locked or open axles, the brake.

The motor sits in the chassis and turns both driven axles through shafts along x, without a centre
differential. A wheel is held to its speed by the engine's velocity motor with a torque limit,
whose reaction goes into the axle's housing about y and from there through the links into the
chassis. A shaft carries the wheels' torque of its axle divided by the ratio i behind it: the
pinion turns the axle's housing about x by T / i and the chassis the other way, which presses one
tyre of the axle down and lifts the other. It is put on the roll joint, which does just that. An
axle that is fixed to the chassis feels nothing of it.

A locked axle turns both wheels at one speed, whatever torque each needs. An open one gives both
the same torque, such that the mean of their speeds is the one asked for.

Left out: the rotor's own inertia, which no truck file knows; and that a locked drive hands a
lifted wheel's torque to the others. Each driven wheel takes at most its share of the limit, so a
truck at its limit with wheels in the air pushes less than a real one, and they run ahead.

Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), chapter 2, for the couple T /
i that a drive shaft puts on a solid axle (from memory); shares of torque derived here from action
and reaction.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from crossfall.engines.multibody import disc_names
from crossfall.engines.rig import Rig
from crossfall.truck.massprops import whole
from crossfall.truck.model import ENDS, GRAVITY, Truck

HOLD = 5.0  # weights of thrust per wheel with which a standing truck is held
BLEND = 0.1  # of the newest torque in the smoothed one that the shafts carry
_FIRM = 0.3  # share of a free wheel's error of speed an open axle takes away in a step
RECALL = 20  # steps in which it makes good a lasting error; a wheel on the ground is ten times as
# heavy to turn as a free one, and with these neither rings


@dataclass(frozen=True)
class Drive:
    """How a truck is driven; forces in weights of the truck, so that they fit any size.

    locked: front and rear, whether an axle turns both its wheels at one speed; None for the truck's
    own differentials. thrust: push of all
    driven wheels together at the torque limit. brake: pull of the same wheels at full brake.
    top_speed: m/s at full throttle. shaft_ratio: shaft turns per wheel turn, None for the truck's
    own: of its axles only, without the gearbox before the shafts. shaft_way: +1 where the shafts
    turn clockwise seen from behind when driving forward, -1 anticlockwise, None for the truck's
    own.
    """

    locked: tuple[bool, bool] | None = None
    thrust: float = 1.2
    brake: float = 1.2
    top_speed: float = 1.5
    shaft_ratio: float | None = None
    shaft_way: int | None = None


class Driveline:
    """The drive of one rig, which must have turning wheels. Speeds (m/s) and torques (N m) in real
    size.

    A wheel's limit is thrust W r / n, W the weight, r its radius and n the driven wheels; its speed
    v / r. The smoothed torque goes BLEND of the way to the newest one in every step.
    """

    def __init__(self, rig: Rig, truck: Truck, drive: Drive) -> None:
        self.drive, self._rig, self._truck = drive, rig, truck
        world, self._names = rig.world, [disc_names(w, truck.axles[w // 2]) for w in range(4)]
        self._spins = [[world.joints[f"{n}_spin"] for n in names] for names in self._names]
        self._all = [joint for wheel in self._spins for joint in wheel]
        self._of = [w for w, wheel in enumerate(self._spins) for _ in wheel]
        self._torque_scale = rig.scale.force * rig.scale.length
        self._weight = whole(truck).mass * GRAVITY
        driven = [axle for axle in (0, 1) if truck.driven[axle]]
        self.wheels = tuple(w for axle in driven for w in (2 * axle, 2 * axle + 1))
        rolls = [world.joints.get(f"{ENDS[axle]}_roll") for axle in driven]
        self._shafts = [(axle, r) for axle, r in zip(driven, rolls, strict=True) if r is not None]
        self._kept = [0.0, 0.0]  # world N m, lasting part of an open axle's torque on each wheel
        self._smooth = [0.0, 0.0, 0.0, 0.0]  # N m, real size
        self._speed = 0.0
        self._limit = 0.0
        locked = drive.locked or tuple(not axle.open for axle in truck.axles)
        self._open = [axle for axle in driven if not locked[axle]]
        self._held = True
        for w, spins in enumerate(self._spins):
            if len(spins) == 2 and (w // 2 not in driven or w // 2 in self._open):
                world.tie(*spins)
        self.hold()

    def hold(self) -> None:
        """Hold all four wheels still, driven or not."""
        most = [HOLD * self._weight * self._truck.axles[w // 2].tyre.radius for w in self._of]
        self._rig.world.motors(
            self._all,
            [0.0] * len(self._all),
            [
                m * self._torque_scale / len(self._spins[w])
                for m, w in zip(most, self._of, strict=True)
            ],
        )
        self._held, self._kept = True, [0.0, 0.0]

    def go(self, speed: float, effort: float = 1.0) -> None:
        """Drive at `speed` (m/s) with `effort` of the torque limit; undriven wheels run free."""
        self._speed, self._limit = speed, effort * self.drive.thrust
        self._put()

    def brake(self, effort: float = 1.0) -> None:
        """Hold the driven wheels with `effort` of the brake."""
        self._speed, self._limit = 0.0, effort * self.drive.brake
        self._put()

    def step(self) -> None:
        """Before each step: shaft reactions, and the torque of open axles."""
        states = self._rig.world.joint_states(self._all)
        torque, speed = [0.0] * 4, [0.0] * 4
        for w, state in zip(self._of, states, strict=True):
            if self._held or w in self.wheels:  # a motor at rest still tells its last torque
                torque[w] += state[3]
            speed[w] += state[1] / len(self._spins[w])
        if not self._held:
            for axle in self._open:
                both = self._even(axle, (speed[2 * axle] + speed[2 * axle + 1]) / 2)
                torque[2 * axle] = torque[2 * axle + 1] = both
        now = [t / self._torque_scale for t in torque]
        self._smooth = [s + BLEND * (t - s) for s, t in zip(self._smooth, now, strict=True)]
        self._react()

    @property
    def torques(self) -> tuple[float, ...]:
        """(4,) N m on each wheel, forward positive, smoothed over a few steps."""
        return tuple(self._smooth)

    def rolled(self) -> tuple[float, ...]:
        """(4,) m, how far each wheel has turned since it was loaded, radius times angle."""
        states = self._rig.world.joint_states(self._all)
        out, done = [], 0
        for w, spins in enumerate(self._spins):
            turned = sum(s[0] for s in states[done : done + len(spins)]) / len(spins)
            out.append(turned * self._truck.axles[w // 2].tyre.radius)
            done += len(spins)
        return tuple(out)

    def _react(self) -> None:
        if not self._shafts:
            return
        moments = [
            self._pinion(axle)
            * self._torque_scale
            * (self._smooth[2 * axle] + self._smooth[2 * axle + 1])
            for axle, _ in self._shafts
        ]
        self._rig.world.torques([joint for _, joint in self._shafts], moments)

    def _pinion(self, axle: int) -> float:
        """As of `Axle`, by the drive where that says otherwise."""
        own, drive = self._truck.axles[axle].pinion, self.drive
        size = abs(own) if drive.shaft_ratio is None else 1.0 / drive.shaft_ratio
        return math.copysign(size, own if drive.shaft_way is None else drive.shaft_way)

    def _even(self, axle: int, mean: float) -> float:
        """World N m that an open axle puts on each of its wheels, now turning at `mean` (rad/s)."""
        rig, wheels = self._rig, self._truck.axles[axle].wheels
        inertia = sum(float(w.inertia[1, 1]) for w in wheels) / 2
        firm = _FIRM * inertia * self._torque_scale * rig.scale.time**2 / rig.dt
        most = self._most(2 * axle)
        error = self._wanted(axle) - mean
        kept = self._kept[axle] + firm / RECALL * error
        self._kept[axle] = max(-most, min(most, kept))
        both = max(-most, min(most, firm * error + self._kept[axle]))
        rig.world.torques([self._spins[2 * axle + side][0] for side in (0, 1)], [both, both])
        return both

    def _wanted(self, axle: int) -> float:
        """World rad/s asked of an axle."""
        return self._speed / self._truck.axles[axle].tyre.radius / self._rig.scale.time

    def _most(self, wheel: int) -> float:
        """World N m, torque limit of a driven wheel."""
        thrust = self._limit * self._weight / max(1, len(self.wheels))
        return thrust * self._truck.axles[wheel // 2].tyre.radius * self._torque_scale

    def _put(self) -> None:
        """Speeds and torque limits into the engine; its motors rest on free and open wheels."""
        self._held = False
        speeds, limits = [], []
        for w in self._of:
            turned = w in self.wheels and w // 2 not in self._open
            speeds.append(self._wanted(w // 2) if turned else 0.0)
            limits.append(self._most(w) / len(self._spins[w]) if turned else 0.0)
        self._rig.world.motors(self._all, speeds, limits)
