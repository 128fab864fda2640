"""A truck that gives: published roll thresholds and tilt-table findings against the compliant tip.

"Seen", "worked" and "memory" as in test_tipping.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.optimize import brentq, fsolve

from crossfall.statics import compliant, rigid
from crossfall.truck.model import GRAVITY, Truck
from stability_measures import static_stability_factor
from support import make_truck, with_suspension

SIDE = np.array([np.pi / 2])


def spring_roll_only(weight: float, arm: float, track: float, height: float, roll: float) -> Truck:
    """All weight sprung, free to roll by `roll` (N m/rad) about an axis `arm` below the CG.

    Heave, pitch and tyres are stiff enough not to count: the springs are hard but stand together
    in the middle, so that the anti-roll bars alone set the roll. They stay in compression.
    """
    rate, spacing, nearly_nothing = 1e6, 1e-4, 1e-5
    truck = make_truck(
        tracks=(track, track),
        chassis_mass=weight / GRAVITY,
        chassis_cg=(0.0, 0.0, height),
        axle_mass=nearly_nothing,
        wheel_mass=nearly_nothing,
        radius=0.05,
        tyre_stiffness=1e8,
        spring_rate=rate,
        spring_spacing=spacing,
        roll_centre_height=height - arm,
        anti_roll=roll / 2 - rate * spacing**2 / 2,
    )
    return truck


def side_tip(truck: Truck) -> float:
    return float(compliant.tips(truck, SIDE).tip[0])


def test_body_roll_on_the_table() -> None:
    """Derived: theta = W e sin(phi) / (K - W e cos(phi)), tan(phi) = (T/2 - e theta) / h, the CG
    not rising. W 30 N, e 0.05 m, T 0.2 m, h 0.1 m, K 16.5 N m/rad: 44.015 deg, 0.9662 of T/2h.

    The formula takes roll as small. With roll as large as it is (3.9 deg) the CG also sinks by
    e (1 - cos(theta)), 0.11 mm of 100: 44.050 deg, and that is what the solver must find.
    """
    weight, arm, track, height, roll = 30.0, 0.05, 0.2, 0.1, 16.5

    def small(phi: float) -> float:
        lean = weight * arm * np.sin(phi) / (roll - weight * arm * np.cos(phi))
        return float(np.tan(phi) * height - (track / 2 - arm * lean))

    def large(both: np.ndarray) -> list[float]:
        phi, lean = both
        moment = weight * arm * np.sin(phi + lean) - roll * lean
        cg = height - arm * (1 - np.cos(lean))
        return [moment, np.tan(phi) * cg - (track / 2 - arm * np.sin(lean))]

    assert np.degrees(brentq(small, 0.1, 1.0)) == pytest.approx(44.015, abs=5e-4)
    exact = float(np.degrees(fsolve(large, [0.77, 0.07])[0]))
    found = np.degrees(side_tip(spring_roll_only(weight, arm, track, height, roll)))
    assert found == pytest.approx(exact, abs=0.002)
    assert found == pytest.approx(44.015, abs=0.04)
    ratio = np.tan(np.radians(found)) / static_stability_factor(track, height)
    assert ratio == pytest.approx(0.9662, abs=0.0015)


def test_suspended_vehicle_in_a_level_turn() -> None:
    """Gillespie, Fundamentals of Vehicle Dynamics, ch. 9. Memory: the rollover threshold is
    T/2h / (1 + R (1 - h_r/h)), 0.952 of T/2h for a roll gain R of 0.1 rad/g and a roll centre at
    half the CG height.

    A level turn is the table at tan(phi) = a_y with the whole weight on the springs, not its
    cos(phi): so the same truck with roll stiffness times cos(phi). The book's roll is small; the
    rest of the difference is the CG sinking as the body rolls by 5 deg.
    """
    weight, arm, track, height, gain = 30.0, 0.05, 0.2, 0.1, 0.1
    factor = static_stability_factor(track, height)
    threshold = factor / (1 + gain * (1 - (height - arm) / height))
    assert threshold / factor == pytest.approx(0.952, abs=5e-4)
    in_turn = weight * arm * (1 + 1 / gain)  # lean per g: W e / (K - W e) = gain
    phi = np.arctan(threshold)
    truck = spring_roll_only(weight, arm, track, height, in_turn * np.cos(phi))
    found = side_tip(truck)
    assert np.tan(found) / factor == pytest.approx(0.952, abs=0.003)
    assert found > phi


def test_rise_of_the_cg_on_the_table() -> None:
    """Transportation Research Board, Special Report 265 (2002), page 28. Seen: as the table is
    tipped up the weight on the tyres drops, the suspension moves into rebound, the CG away from
    the table, and the vehicle tips earlier than it would on the level.

    So droop that ends near ride height wins some of it back.
    """
    free = make_truck()
    held_down = with_suspension(free, droop=0.0005)
    for heading in (0.0, np.pi / 2, np.pi):
        at = np.array([heading])
        tips = [float(compliant.tips(t, at).tip[0]) for t in (free, held_down)]
        assert tips[0] < rigid.tip_angle(free, heading)
        assert np.degrees(tips[1] - tips[0]) > 1.0


def test_balanced_roll_stiffness_tips_last() -> None:
    """Transportation Research Board, Special Report 265 (2002), page 28. Seen: best results on the
    table have the front and rear uphill wheels lift together, by balanced roll stiffness.
    """

    def with_bars(front: float, rear: float) -> Truck:
        base = make_truck(chassis_cg=(0.0, 0.0, 0.11))
        bars = (
            replace(a, suspension=replace(a.suspension, anti_roll=bar))
            for a, bar in zip(base.axles, (front, rear), strict=True)
        )
        axles = tuple(bars)
        return replace(base, front=axles[0], rear=axles[1])

    found = compliant.tips([with_bars(3.0, 3.0), with_bars(4.0, 2.0)], SIDE)
    even, uneven = found.tip[:, 0]
    assert np.degrees(even - uneven) > 0.5
    # Stiff in front, the front uphill wheel is off well before the tip; balanced, none is.
    front_right = found.lift[1, 0, 1]
    assert front_right < uneven - np.radians(0.2)
    assert np.all(np.isnan(found.lift[0, 0]))


def test_soft_tyres_and_springs_lose_a_tenth() -> None:
    """Static stability tests of four quad bikes, 2007, finding 4. Seen: the calculated factor T/2h
    overstates the measured tilt-table ratio by 10 to 15 % (some by none). A loose band: no
    exact pair of values is given, and these are other machines.
    """
    truck = make_truck(tyre_stiffness=4000.0, spring_rate=250.0)
    measured = np.tan(side_tip(truck))
    calculated = np.tan(rigid.tip_angle(truck, SIDE[0]))
    assert 0.02 < calculated / measured - 1 < 0.20
