"""What else a change does: everything about a truck that is not its tip angle."""

from __future__ import annotations

from dataclasses import dataclass, fields
from math import hypot, inf, tan

from crossfall.truck.clearance import clearance_angles
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import Truck
from crossfall.truck.ride import level_axle_loads
from crossfall.truck.schema import BatterySpec, TruckSpec
from crossfall.tuning.battery import run_time


@dataclass(frozen=True)
class Effects:
    """SI; nan where the file does not say.

    mass, sprung, unsprung: kg. front_share: of the weight. cg_height: m. spin_inertia: kg m^2 of
    all wheels about their axes, what the motor spins up. rotating_mass: kg, spin inertia over
    radius squared, what it weighs to the throttle on top of its mass. steer_inertia: kg m^2 of the
    front wheels about upright axes through their centres, what the servo swings. width: m over the
    tyres. wheelbase: m. approach, breakover, departure: rad. turning_circle: m, diameter over the
    outer front tyre. run_time: s.
    """

    mass: float
    sprung: float
    unsprung: float
    front_share: float
    cg_height: float
    spin_inertia: float
    rotating_mass: float
    steer_inertia: float
    width: float
    wheelbase: float
    approach: float
    breakover: float
    departure: float
    turning_circle: float
    run_time: float

    def minus(self, other: Effects) -> Effects:
        """Field by field."""
        return Effects(**{f.name: getattr(self, f.name) - getattr(other, f.name) for f in _FIELDS})


_FIELDS = fields(Effects)


def effects(truck: Truck, spec: TruckSpec, measured_on: BatterySpec | None = None) -> Effects:
    """Everything but the tip angle; SI. measured_on as in `battery.run_time`.

    spin_inertia sum(I_yy), rotating_mass sum(I_yy / r^2), steer_inertia sum(I_zz) of the front
    wheels, front_share N_f / (N_f + N_r).
    Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), chapter 2, for rotating
    mass (from memory); the rest derived here from their definitions.
    """
    body, loads = whole(truck), level_axle_loads(truck)
    angles = clearance_angles(truck)
    runs = run_time(truck, spec, measured_on)
    wheels = [(w, a.tyre.radius) for a in truck.axles for w in a.wheels]
    nan = float("nan")
    return Effects(
        mass=body.mass,
        sprung=truck.chassis.mass,
        unsprung=sum(unsprung(truck, i).mass for i in (0, 1)),
        front_share=float(loads[0] / loads.sum()),
        cg_height=float(body.cg[2]),
        spin_inertia=float(sum(w.inertia[1, 1] for w, _ in wheels)),
        rotating_mass=float(sum(w.inertia[1, 1] / r**2 for w, r in wheels)),
        steer_inertia=float(sum(w.inertia[2, 2] for w in truck.front.wheels)),
        width=outside_width(truck),
        wheelbase=truck.wheelbase,
        approach=angles.approach if angles else nan,
        breakover=angles.breakover if angles else nan,
        departure=angles.departure if angles else nan,
        turning_circle=turning_circle(truck),
        run_time=runs.seconds if runs else nan,
    )


def outside_width(truck: Truck) -> float:
    """m over the tyres of the wider axle: track plus tread width.

    Source: derived here from the geometry of an axle.
    """
    return max(a.track + a.tyre.width for a in truck.axles)


def turning_circle(truck: Truck) -> float:
    """m, diameter of the circle the outer front tyre's outer edge runs on; nan without a lock.

    With the mean steering angle d the middle of the rear axle runs on R = L / tan(d); the outer
    front tyre is half a track further out and L ahead, its outer edge half a tread further: 2
    (sqrt(L^2 + (R + T/2)^2) + w/2). Slow going, no slip.
    Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE 1992), chapter 6, low-speed
    turning (from memory).
    """
    if truck.steering_lock is None:
        return float("nan")
    slope = tan(truck.steering_lock)
    radius = truck.wheelbase / slope if slope > 0 else inf
    front = truck.front
    return 2 * (hypot(truck.wheelbase, radius + front.track / 2) + front.tyre.width / 2)
