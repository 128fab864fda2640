"""Turning gravity is the same as turning the table."""

from __future__ import annotations

import math

import numpy as np
import pybullet as engine
import pytest

from crossfall.trials.rig import Rig
from crossfall.trials.table import Tilting, set_grip, standing
from crossfall.trials.tilt import tilt_trial
from crossfall.trials.world import Settings
from crossfall.truck.model import GRAVITY
from support import make_truck

SIDE = math.pi / 2  # left side downhill, for a hinge that turns about -x


def table_on_a_joint(world):
    """A slab whose top is z = 0, on a hinge along x through the origin."""
    shape = engine.createCollisionShape(
        engine.GEOM_BOX, halfExtents=[5, 5, 0.5], physicsClientId=world._client
    )
    body = engine.createMultiBody(
        0.0, -1, -1, [0, 0, 0],
        linkMasses=[1e5], linkCollisionShapeIndices=[shape], linkVisualShapeIndices=[-1],
        linkPositions=[[0, 0, 0]], linkOrientations=[[0, 0, 0, 1]],
        linkInertialFramePositions=[[0, 0, -0.5]], linkInertialFrameOrientations=[[0, 0, 0, 1]],
        linkParentIndices=[0], linkJointTypes=[engine.JOINT_REVOLUTE], linkJointAxis=[[1, 0, 0]],
        physicsClientId=world._client,
    )  # fmt: skip
    engine.changeDynamics(body, 0, lateralFriction=1.0, physicsClientId=world._client)
    return body


def _rate(way):
    """rad/s: a real table throws its truck about unless it moves gently near the tip."""
    return math.radians(5.0 if way > math.radians(2.0) else 1.0)


def stand_on_a_real_table(truck, angles):
    """Loads (4,) N at each angle (rad) after 0.8 s there."""
    out = []
    with Rig(truck, Settings()) as rig:
        world = rig.world
        table = table_on_a_joint(world)
        per_second = rig.scale.time / rig.dt
        for wheel in range(4):
            world.grip(wheel, rig.settings.stick)
        theta = 0.0
        for angle in angles:
            n = round((angle - theta) / _rate(angle - theta) * per_second)
            ease = (1 - np.cos(np.pi * np.arange(1, n + 1) / n)) / 2
            for target in [*(theta + (angle - theta) * ease), *[angle] * round(0.8 * per_second)]:
                engine.setJointMotorControl2(
                    table, 0, engine.POSITION_CONTROL, targetPosition=-target,
                    positionGain=0.5, velocityGain=1.0, force=1e12, physicsClientId=world._client,
                )  # fmt: skip
                rig.step((0.0, 0.0, -GRAVITY))
            theta = angle
            at = -engine.getJointState(table, 0, physicsClientId=world._client)[0]
            assert at == pytest.approx(angle, abs=1e-4)
            loads = np.array(world.loads()) / rig.scale.force
            out.append(loads)
    return out


def stand_with_turned_gravity(truck, angles):
    """The same by turning gravity."""
    out = []
    with standing(truck, Settings()) as table:
        set_grip(table, SIDE, None, rail=False)
        run = Tilting(table, SIDE)
        for angle in angles:
            run.move(angle, _rate(angle - run.theta))
            run.hold(0.8)
            out.append(np.array(run.loads) / table.rig.scale.force)
    return out


def test_a_table_on_a_real_joint_gives_the_same():
    truck = make_truck(spring_rate=900.0)
    tip = tilt_trial(truck, SIDE).tip
    slack = math.radians(0.25)
    angles = [math.radians(20.0), tip - 3 * slack, tip - slack]
    real, turned = stand_on_a_real_table(truck, angles), stand_with_turned_gravity(truck, angles)
    np.testing.assert_allclose(real, turned, atol=0.1)  # of 29 N
    assert turned[-1][1] + turned[-1][3] > 0.0
    over = stand_on_a_real_table(truck, [*angles, tip + slack])[-1]
    assert over[1] + over[3] == 0.0


def test_the_length_scale_does_not_matter():
    truck = make_truck()
    at = [
        tilt_trial(truck, SIDE, settings=Settings(length_scale=s)).tip for s in (10.0, 30.0, 100.0)
    ]
    assert np.ptp(np.degrees(at)) <= 0.06


def test_the_time_step_does_not_matter():
    truck = make_truck(droop=0.006)
    at = [tilt_trial(truck, SIDE, settings=Settings(step=1 / n)).tip for n in (480, 960)]
    assert np.ptp(np.degrees(at)) <= 0.05
