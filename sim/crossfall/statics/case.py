"""One truck at one look: everything that is worked out on the way to its balance.

What is compiled writes into it and passes it on. Vectors are (3,) in table axes; twists (6,) are
turning and shifting, wrenches moment and force, about the chassis' origin, which is where places
are from. Lengths over the wheelbase, forces over the weight: see `Builds`.

Source: none; `kinematics`, `tyres` and `balance`, which work it out, name theirs.
"""

from __future__ import annotations

import numpy as np

from crossfall.truck.axle_law import POWERS

FREEDOMS = (
    *("x", "y", "z", "yaw", "pitch", "roll"),
    *("front heave", "front roll", "rear heave", "rear roll"),
)
N = 10  # of them
MOST_POINTS = 4  # contact points of an axle, at most
CORNER_GAPS = 16  # a spring's, both stops' and its second stage's, of each corner

CASE = np.dtype(
    [
        ("x", "f8", N),
        ("gravity", "f8", 3),  # direction, and its derivative by theta
        ("d_gravity", "f8", 3),
        ("turning", "f8", (3, 3)),  # axes about which yaw, pitch and roll turn
        ("body", "f8", (3, 3, 3)),  # front axle, rear axle, chassis: their axes
        ("origin", "f8", (3, 3)),  # and their places: of axles, their points
        ("law", "f8", (2, 7, 6)),  # of each axle: see `axle_law`
        ("power", "f8", POWERS),  # scratch: of heave and roll
        ("inside", "f8", (16, 3)),  # see `kinematics.inside_axes`
        ("joints", "f8", (2, 2, 6)),  # twists of axles' heave and roll
        (
            "bends",
            "f8",
            (2, 4, 6),
        ),  # of heave by heave, by roll, and of roll by them
        ("ahead", "f8", (2, 2)),  # horizontal direction of rolling
        ("arc", "f8", 2),  # rad the held wheels have rolled
        ("rolls", "f8", (2, 2)),  # how far a wheel rolls on by a turn of its axle
        ("stiff", "f8", (2, 3, 3)),  # A K A^T of a contact point, and A K^-1 A^T
        ("soft", "f8", (2, 3, 3)),
        ("point", "f8", (2, MOST_POINTS, 3)),  # lowest rim point, as if no tyre had given
        ("hang", "f8", (2, MOST_POINTS, 3)),  # give in the air
        (
            "gap",
            "f8",
            (2, MOST_POINTS),
        ),  # how far it is pressed from hanging, times k_z
        ("spare", "f8", (2, MOST_POINTS)),  # mu F_n - |F_t| if it sticks; 1 where it cannot slip
        ("touch", "f8", (2, MOST_POINTS)),  # 1 or 0
        ("give", "f8", (2, MOST_POINTS, 3)),
        ("force", "f8", (2, MOST_POINTS, 3)),  # of the table on the tyre, and its derivatives
        ("d_force", "f8", (2, MOST_POINTS, 7, 3)),
        ("spring", "f8", (2, MOST_POINTS, 3)),  # that and the wheel's weight, where it touches
        ("way", "f8", (2, MOST_POINTS, 2)),  # direction of friction where it slips, else 0
        ("d_point", "f8", (2, MOST_POINTS, 7, 2)),  # how the point that holds moves
        ("moment", "f8", (3, 3)),  # first moments of the bodies' weights
        ("wrench", "f8", (3, 6)),  # on every body, and its derivatives by its twist and theta
        ("slopes", "f8", (3, 7, 6)),
        ("moves", "f8", (3, 9, 6)),  # by x, y, z, yaw, pitch, roll, own heave and roll, theta
        ("load", "f8", N),  # on the freedoms
        ("rates", "f8", (N + 1, N + 1)),  # its derivatives by them and theta; then a gap's
        ("by", "f8", 7),  # scratch: of a twist and theta
    ],
    align=True,
)
