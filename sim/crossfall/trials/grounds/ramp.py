"""A ramp and the level top behind it; see `trials/ramp.py`, which asks for it.

Source: derived here from plane geometry; quaternions as in J. B. Kuipers, Quaternions and Rotation
Sequences (Princeton 1999) (from memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from crossfall.trials.grounds.base import Ground, front_of_tyres, metres, radians_of
from crossfall.truck.model import Truck

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig

RAMP_WIDTH = 3.0  # wheelbases, about the way the truck goes


@dataclass(frozen=True)
class Ramp(Ground):
    """A ramp and the level top behind it.

    angle: rad. rise: m, height of the top. oblique: rad, how far the way up it is turned to the
    left of the truck's: positive when the left wheel meets it first. gap: m from the foremost
    point of the nearer front tyre to its foot.
    """

    kind = "ramp"
    chance = False

    angle: float = radians_of()
    rise: float = metres()
    oblique: float = radians_of(0.0)
    gap: float = metres(0.03)

    def __post_init__(self) -> None:
        angle, oblique = self.angle, self.oblique
        if not (0 < angle < math.pi / 2 and self.rise > 0 and abs(oblique) < math.pi / 2):
            raise ValueError(f"no ramp: {self}")

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        rig.world.plane(1.0)
        s = rig.scale.length
        length, run = self.rise / math.sin(self.angle), self.rise / math.tan(self.angle)
        thick, top = 0.5 * truck.wheelbase, 4 * truck.wheelbase
        # A truck that goes straight on drifts to one side of a ramp that lies askew.
        width = RAMP_WIDTH * truck.wheelbase + 2 * (run + top / 2) * math.tan(abs(self.oblique))
        foot = ramp_foot(truck, self)
        cos, sin = math.cos(self.angle), math.sin(self.angle)
        # In the ramp's own plan axes: u up the ramp from its foot, z up.
        boxes = (
            (length, run / 2 + thick / 2 * sin, self.rise / 2 - thick / 2 * cos, -self.angle),
            (top, run + top / 2, self.rise - thick / 2, 0.0),
        )
        cos_b, sin_b = math.cos(self.oblique), math.sin(self.oblique)
        for edge, u, z, pitch in boxes:
            centre = ((foot + u * cos_b) * s, u * sin_b * s, z * s)
            turn = yaw_pitch(self.oblique, pitch)
            rig.world.box((edge * s, width * s, thick * s), centre, turn)


def ramp_foot(truck: Truck, ramp: Ramp) -> float:
    """m ahead of the truck's middle, where the line of its way meets the foot.

    x_front + r + gap + (T / 2 + w) tan(|oblique|), T the front track and w the contact half-width.
    """
    half_width = truck.front.track / 2 + truck.front.tyre.contact_half_width
    return front_of_tyres(truck) + ramp.gap + half_width * math.tan(abs(ramp.oblique))


def yaw_pitch(yaw: float, pitch: float) -> tuple[float, float, float, float]:
    """Quaternion x, y, z, w of a pitch (rad) about y followed by a yaw (rad) about z: q_z(yaw)
    q_y(pitch)."""
    cy, sy = math.cos(yaw / 2), math.sin(yaw / 2)
    cp, sp = math.cos(pitch / 2), math.sin(pitch / 2)
    return -sy * sp, cy * sp, sy * cp, cy * cp
