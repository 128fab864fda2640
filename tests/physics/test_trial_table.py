"""Turning gravity is the same as turning the table."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from crossfall.engines.rig import HeldRig
from crossfall.engines.settings import TrialSettings
from crossfall.engines.springs import LooseCorners, corner_springs
from crossfall.trials.table import Tilting, level_table, set_grip
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.model import GRAVITY
from support import make_truck

SIDE = math.pi / 2  # left side downhill, for a hinge that turns about -x
GRIP = 0.9
DOWN = np.array([0.0, 0.0, -GRAVITY])


class MovingTable(HeldRig):
    """The truck in a world whose gravity stays, on a table that turns about a hinge along x."""

    def __init__(self, truck, settings) -> None:
        super().__init__(truck, settings)
        laws = corner_springs(truck, settings, self.dt, 1.0, settling=True)
        self.corners = LooseCorners(laws)

    def tilt(self, theta: float) -> None:
        """One step with the table at theta (rad): its tyres feel it in the table's own axes."""
        table = Rotation.from_euler("x", -theta)
        to_table, world = table.inv(), self.world
        frames, states = world.frames(self._links), world.joint_states(self._joints)
        forces = self.corners.forces(states, self.dt)
        for i, (link, (cg, origin, turn)) in enumerate(zip(self._links, frames, strict=True)):
            inside = (to_table * Rotation.from_matrix(np.reshape(turn, (3, 3)))).as_matrix()
            seen = [tuple(to_table.apply(v).tolist()) for v in (origin, cg, DOWN)]
            force, moment = self.wheels.press(i, seen[0], inside.ravel().tolist(), *seen[1:])
            world.press(link, cg, table.apply(force).tolist(), table.apply(moment).tolist())
        world.advance(tuple(DOWN), self._joints, forces)


def _rate(way):
    """rad/s: a real table throws its truck about unless it moves gently near the tip."""
    return math.radians(5.0 if way > math.radians(2.0) else 1.0)


def stand_on_a_real_table(truck, angles):
    """Loads (4,) N at each angle (rad) after 0.8 s there."""
    out = []
    with MovingTable(truck, TrialSettings()) as rig:
        rig.grip([GRIP] * 4)
        theta = 0.0
        for angle in angles:
            n = round((angle - theta) / _rate(angle - theta) / rig.dt)
            ease = (1 - np.cos(np.pi * np.arange(1, n + 1) / n)) / 2
            for at in [*(theta + (angle - theta) * ease), *[angle] * round(0.8 / rig.dt)]:
                rig.tilt(at)
            theta = angle
            out.append(np.array(rig.loads()))
    return out


def stand_with_turned_gravity(truck, angles):
    """The same by turning gravity."""
    out = []
    with level_table(truck, TrialSettings(), "bullet") as table:
        set_grip(table, SIDE, GRIP, rail=False)
        run = Tilting(table, SIDE)
        for angle in angles:
            run.move(angle, _rate(angle - run.theta), 0.0)
            list(run.hold(0.8))
            out.append(np.array(run.loads))
    return out


def test_a_table_that_really_turns_gives_the_same():
    truck = make_truck(spring_rate=900.0)
    tip = tilt_trial(truck, SIDE, grip=GRIP).tip
    slack = math.radians(0.25)
    angles = [math.radians(20.0), tip - 3 * slack, tip - slack]
    real, turned = stand_on_a_real_table(truck, angles), stand_with_turned_gravity(truck, angles)
    np.testing.assert_allclose(real, turned, atol=0.1)  # of 29 N
    assert turned[-1][1] + turned[-1][3] > 0.0
    over = stand_on_a_real_table(truck, [*angles, tip + slack])[-1]
    assert over[1] + over[3] == 0.0


@pytest.mark.parametrize("heading", [0.0, 45.0, 90.0])
def test_the_time_step_does_not_matter(heading):
    truck = make_truck(droop=0.006)
    one, two = (
        tilt_trial(truck, math.radians(heading), grip=2.0, settings=TrialSettings(step=1 / n))
        for n in (240, 960)
    )
    assert one.tip_ci[0] < two.tip < one.tip_ci[1]
