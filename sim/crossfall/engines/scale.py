"""Dynamically similar trucks: the same truck at another size, angles unchanged.

Froude scaling at the same gravity and densities: with lengths times s, masses go with s^3,
forces with s^3, stiffness s^2, moments and roll stiffness s^4, inertia s^5, time sqrt(s) and
damping s^2.5. Statics and quasi-static trials give the same angles at any s.

Source: derived here from equal Froude numbers and equal densities, Fr = v^2 / (g L): dimensional
analysis, as in G. I. Barenblatt, Scaling (Cambridge 2003) (from memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from crossfall.truck.model import Axle, Body, Clearance, Links, Shocks, Truck, frozen


@dataclass(frozen=True)
class SimilarityScale:
    """Factors from the real truck to its similar copy, for a length factor."""

    length: float

    @property
    def mass(self) -> float:
        """kg, s^3: densities are the same."""
        return self.length**3

    @property
    def force(self) -> float:
        """N, s^3: gravity is the same."""
        return self.length**3

    @property
    def time(self) -> float:
        """s, sqrt(s)."""
        return math.sqrt(self.length)

    @property
    def stiffness(self) -> float:
        """N/m, s^2."""
        return self.length**2

    @property
    def damping(self) -> float:
        """N s/m, s^2.5."""
        return self.length**2 * math.sqrt(self.length)


def similar(truck: Truck, scale: SimilarityScale) -> Truck:
    """The truck `scale.length` times as large, without its list of parts. Every field by its power
    of s."""
    s = scale.length
    clearance = truck.clearance
    if clearance is not None:
        points = (clearance.nose, clearance.belly, clearance.tail)
        clearance = Clearance(*((x * s, z * s) for x, z in points))
    return replace(
        truck,
        chassis=_body(truck.chassis, s),
        front=_axle(truck.front, scale),
        rear=_axle(truck.rear, scale),
        clearance=clearance,
        parts=(),
    )


def _body(body: Body, s: float) -> Body:
    return Body(body.mass * s**3, frozen(body.cg * s), frozen(body.inertia * s**5))


def _axle(axle: Axle, scale: SimilarityScale) -> Axle:
    s, k = scale.length, scale.stiffness
    tyre, own = axle.tyre, axle.suspension
    left, right = axle.wheels
    return Axle(
        axle.x * s,
        axle.track * s,
        replace(
            tyre,
            radius=tyre.radius * s,
            width=tyre.width * s,
            contact_half_width=tyre.contact_half_width * s,
            stiffness=tyre.stiffness * k,
            lateral=tyre.lateral * k,
            longitudinal=tyre.longitudinal * k,
        ),
        replace(
            own,
            spring_rate=own.spring_rate * k,
            soft_rate=own.soft_rate * k,
            soft_travel=own.soft_travel * s,
            spring_spacing=own.spring_spacing * s,
            damping=own.damping * scale.damping,
            roll_centre_height=own.roll_centre_height * s,
            bump=own.bump * s,
            droop=own.droop * s,
            anti_roll=own.anti_roll * s**4,
            links=None if own.links is None else _links(own.links, s),
            shocks=None
            if own.shocks is None
            else Shocks(frozen(own.shocks.chassis * s), frozen(own.shocks.axle * s)),
        ),
        _body(axle.body, s),
        (_body(left, s), _body(right, s)),
        axle.shaft,
        open=axle.open,
        pinion=axle.pinion,
    )


def _links(own: Links, s: float) -> Links:
    ends = (frozen(own.chassis * s), frozen(own.axle * s))
    return Links(*ends, own.names, own.bump * s, own.droop * s, own.spacing * s)
