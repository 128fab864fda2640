"""What trucks of the 1:10 class mostly have, for whatever nobody measured.

Every value is an assumption drawn from what such trucks are built from, wide enough to hold nearly
all of them; none comes from a published survey, for none was found.

Source: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Typical:
    """value, and plus or minus as a limit; why: in a few words, for the file's comment."""

    value: float
    tol: float
    why: str


WHEEL_SHARE = Typical(0.055, 0.02, "a wheel is 3.5 to 7.5 % of the truck")
AXLE_SHARE = Typical(0.09, 0.045, "an axle without wheels is 4.5 to 13.5 % of the truck")
CONTACT_SHARE = Typical(0.10, 0.09, "a tread carries out to 1 to 19 % of its width")
TYRE_SQUASH = Typical(1.5, 0.7, "a tyre gives 1 to 2.8 mm under the truck")  # of the rate, 47 %
SQUEEZE_MM = 18.0
SPRING_SHARE = 0.6
SPRING_WHY = "springs are squeezed 11 to 45 mm by the truck"
SAME_SPRINGS = Typical(1.0, 0.4, "springs as soft for their load as at the other end")
SPACING_SHARE = Typical(0.60, 0.09, "springs stand 51 to 69 % of the track apart")
ROLL_CENTRE_RADII = Typical(1.35, 0.33, "a roll centre lies 1.02 to 1.68 tyre radii up")
"""A shade lower than most. What is unknown costs a truck more where it is worse than where it is
better (the body snaps over), so that middle values alone would promise degrees to most trucks."""
BUMP_MM = Typical(22.0, 10.0, "12 to 32 mm")
DROOP_MM = Typical(15.0, 11.0, "4 to 26 mm")
SAME_DROOP_MM = Typical(0.0, 6.0, "droop within 6 mm of the other end's")
SAME_SPACING = Typical(1.0, 0.08, "springs as far apart as at the other end, for the track")
ANTI_ROLL = Typical(6.0, 5.0, "a bar of 1 to 11 N mm/deg")
PERHAPS_ANTI_ROLL = Typical(1.5, 1.5, "nobody said whether there is a bar: up to a soft one")
ANTI_DIVE = Typical(10.0, 40.0, "percent, from -30 to 50")
ANTI_SQUAT = Typical(30.0, 60.0, "percent, from -30 to 90")
GRIP = (0.5, 0.8, 1.1)
GRIP_WHY = "from loose dirt to dry rock"
AXLE_SIDE_MM = 4.0  # one sd of how far an axle's mass centre lies off its middle
CHASSIS_SIDE_MM = 6.0
ROOF_SHARE = 0.7  # of the roof's height, where a body's mass centre lies
ROOF_RADII = 3.8  # tyre radii, the roof's height where nobody measured it
