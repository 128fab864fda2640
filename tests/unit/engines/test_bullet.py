"""The engine's traps, one test each, and the world that steps round them."""

from __future__ import annotations

import math
import subprocess
import sys
from dataclasses import replace

import numpy as np
import pybullet as engine
import pytest

from crossfall.engines.bullet import World
from crossfall.engines.rig import HeldRig
from crossfall.engines.scale import SimilarityScale, similar
from crossfall.engines.settings import EngineError, TrialSettings
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, frozen
from crossfall.truck.ride import tyre_loads
from held_cases import LOPSIDED, ON_SHOCKS
from support import make_truck, with_suspension, with_tyres

BOX = """<robot name="r"><link name="a"><inertial><mass value="{mass}"/>
<inertia ixx="{xx}" ixy="{xy}" ixz="0" iyy="{yy}" iyz="0" izz="{zz}"/></inertial>
<collision><geometry><box size="0.1 0.2 0.3"/></geometry></collision></link>
<link name="b"><inertial><mass value="1"/>
<inertia ixx="1" ixy="0" ixz="0" iyy="1" iyz="0" izz="1"/></inertial></link>
<joint name="j" type="continuous"><parent link="a"/><child link="b"/><axis xyz="0 0 1"/></joint>
</robot>"""


@pytest.fixture
def client():
    number = engine.connect(engine.DIRECT)
    yield number
    engine.disconnect(number)


def load(client, path, flags=0, mass=1.0, moments=(0.02, 0.03, 0.04), xy=0.0):
    xx, yy, zz = moments
    path.write_text(BOX.format(mass=mass, xx=xx, yy=yy, zz=zz, xy=xy))
    return engine.loadURDF(str(path), flags=flags, physicsClientId=client)


def inertia(client, body):
    return engine.getDynamicsInfo(body, -1, physicsClientId=client)[2]


# Traps: what the engine does when nobody takes care.


def test_trap_inertia_in_the_file_is_ignored_without_the_flag(client, tmp_path):
    path = tmp_path / "a.urdf"
    assert inertia(client, load(client, path)) != pytest.approx((0.02, 0.03, 0.04), rel=0.01)
    flagged = load(client, tmp_path / "b.urdf", engine.URDF_USE_INERTIA_FROM_FILE)
    assert inertia(client, flagged) == pytest.approx((0.02, 0.03, 0.04))


def test_trap_an_impossible_inertia_becomes_zero(client, tmp_path):
    flag = engine.URDF_USE_INERTIA_FROM_FILE
    body = load(client, tmp_path / "a.urdf", flag, moments=(0.02, 0.03, 0.06))
    assert inertia(client, body) == (0.0, 0.0, 0.0)


def test_trap_a_rewritten_file_is_not_read_again(client, tmp_path):
    path = tmp_path / "a.urdf"
    load(client, path, mass=1.0)
    engine.resetSimulation(physicsClientId=client)
    stale = load(client, path, mass=2.0)
    assert engine.getDynamicsInfo(stale, -1, physicsClientId=client)[0] == 1.0
    engine.setPhysicsEngineParameter(enableFileCaching=0, physicsClientId=client)
    fresh = load(client, path, mass=2.0)
    assert engine.getDynamicsInfo(fresh, -1, physicsClientId=client)[0] == 2.0


def spin_after_a_second(client, body):
    engine.resetJointState(body, 0, 0.0, 5.0, physicsClientId=client)
    for _ in range(240):
        engine.stepSimulation(physicsClientId=client)
    return engine.getJointState(body, 0, physicsClientId=client)[1]


def test_trap_default_motors_hold_every_joint(client, tmp_path):
    body = load(client, tmp_path / "a.urdf")
    for link in (-1, 0):
        engine.changeDynamics(
            body, link, linearDamping=0, angularDamping=0, jointDamping=0, physicsClientId=client
        )
    assert abs(spin_after_a_second(client, body)) < 1.0
    engine.setJointMotorControl2(body, 0, engine.VELOCITY_CONTROL, force=0, physicsClientId=client)
    assert spin_after_a_second(client, body) == pytest.approx(5.0, rel=1e-6)


def test_trap_default_damping_is_not_zero(client, tmp_path):
    body = load(client, tmp_path / "a.urdf")
    engine.setJointMotorControl2(body, 0, engine.VELOCITY_CONTROL, force=0, physicsClientId=client)
    assert spin_after_a_second(client, body) < 4.9


@pytest.mark.parametrize(("one", "other"), [(0.5, 1.0), (0.5, 0.6)])
def test_trap_friction_is_the_product_of_both_bodies(client, tmp_path, one, other):
    path = tmp_path / "block.urdf"
    path.write_text(
        '<robot name="r"><link name="a"><inertial><mass value="1"/>'
        '<inertia ixx="0.01" ixy="0" ixz="0" iyy="0.01" iyz="0" izz="0.01"/></inertial>'
        '<collision><geometry><box size="1 1 0.1"/></geometry></collision></link></robot>'
    )
    body = engine.loadURDF(str(path), [0, 0, 0.05], physicsClientId=client)
    floor = engine.createCollisionShape(engine.GEOM_PLANE, physicsClientId=client)
    ground = engine.createMultiBody(0, floor, physicsClientId=client)
    for what, friction in ((body, one), (ground, other)):
        engine.changeDynamics(what, -1, lateralFriction=friction, physicsClientId=client)

    def slides(theta):
        engine.resetBasePositionAndOrientation(body, [0, 0, 0.05], [0, 0, 0, 1], client)
        engine.resetBaseVelocity(body, [0, 0, 0], [0, 0, 0], physicsClientId=client)
        engine.setGravity(9.8 * math.sin(theta), 0, -9.8 * math.cos(theta), physicsClientId=client)
        for _ in range(240):
            engine.stepSimulation(physicsClientId=client)
        return engine.getBasePositionAndOrientation(body, physicsClientId=client)[0][0] > 0.02

    critical = math.atan(one * other)
    assert not slides(critical - math.radians(1.5))
    assert slides(critical + math.radians(1.5))


# The world.


def world(truck, **options):
    return World(truck, step=1 / 480, **options)


def test_masses_and_inertias_arrive():
    truck = make_truck(chassis_cg=(-0.01, 0.005, 0.11), contact_half_width=0.01)
    with world(truck) as w:
        masses = [
            engine.getDynamicsInfo(w._body, link, physicsClientId=w._client)[0]
            for link in w.link.values()
        ]
    assert sum(masses) == pytest.approx(whole(truck).mass, rel=1e-12)


def test_an_inertia_the_engine_dropped_is_noticed(monkeypatch):
    truck = make_truck()
    # Against the triangle rule, and slipped past our own check.
    wrong = frozen(np.diag([0.01, 0.02, 0.04]))
    truck = replace(truck, chassis=replace(truck.chassis, inertia=wrong))
    monkeypatch.setattr("crossfall.engines.multibody._problems", lambda name, link: [])
    with pytest.raises(EngineError, match="chassis: inertia"):
        world(truck)


def test_a_truck_edited_between_loads_is_read_afresh():
    with (
        world(make_truck(chassis_mass=1.9)) as first,
        world(make_truck(chassis_mass=2.3)) as second,
    ):
        read = [
            engine.getDynamicsInfo(w._body, -1, physicsClientId=w._client)[0]
            for w in (first, second)
        ]
    assert read == [1.9, 2.3]


def test_joints_are_free_and_undamped():
    with world(make_truck()) as w:
        joint = w.joints["rear_left_spin"]
        engine.resetJointState(w._body, joint, 0.0, 3.0, physicsClientId=w._client)
        for _ in range(480):
            w.step()
        assert w.joint_states([joint])[0][1] == pytest.approx(3.0, rel=1e-3)


def test_several_worlds_do_not_mix():
    rigid = with_suspension(with_tyres(make_truck(), stiffness=math.inf), locked=True)
    with world(rigid) as a, world(rigid) as b:
        a.plane()
        a.gravity(0, 0, -GRAVITY)
        for _ in range(240):
            a.step()
            b.step()
        assert sum(a.loads()) == pytest.approx(whole(rigid).mass * GRAVITY, rel=1e-3)
        assert b.loads() == [0.0] * 4
        np.testing.assert_allclose(b.chassis_poses([b.chassis()])[0, :3], 0.0, atol=1e-12)


def test_loads_are_named_by_wheel():
    truck = make_truck(chassis_cg=(0.05, 0.02, 0.1))
    truck = similar(
        with_suspension(with_tyres(truck, stiffness=math.inf), locked=True), SimilarityScale(10)
    )
    with World(truck, step=1 / 480) as w:
        w.plane()
        w.gravity(0, 0, -GRAVITY)
        for _ in range(240):
            w.step()
        loads, want = np.array(w.loads()), tyre_loads(truck)
    # Four rigid wheels share a load in many ways; axles and sides have no choice.
    assert loads[:2].sum() == pytest.approx(want[:2].sum(), rel=1e-3)
    assert loads[::2].sum() == pytest.approx(want[::2].sum(), rel=1e-3)


def test_going_back_repeats_exactly():
    with world(make_truck()) as w:
        w.plane()
        w.gravity(1.0, 2.0, -GRAVITY)
        for _ in range(20):
            w.step()
        state = w.save()
        runs = []
        for _ in range(2):
            w.restore(state)
            for _ in range(30):
                w.step()
            runs.append((w.chassis(), tuple(w.loads())))
        w.forget(state)
    assert runs[0] == runs[1]


def test_importing_the_engine_prints_nothing():
    code = "from crossfall.engines.bullet import _engine; _engine(); print('only this')"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout == "only this\n"


def test_trials_can_be_imported_without_the_engine():
    code = "import sys, crossfall.trials.tilt; print('pybullet' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout == "False\n"


@pytest.mark.filterwarnings("error")
@pytest.mark.parametrize("truck", [LOPSIDED, ON_SHOCKS], ids=["joints", "links"])
def test_a_truck_whose_numbers_run_away_is_lost(truck):
    with HeldRig(truck, TrialSettings()) as rig:
        rig.grip([1.0] * 4)
        world = rig.world
        for joint in world.joints.values():
            world._p.resetJointState(world._body, joint, 1e200, physicsClientId=world._client)

        def seen():
            rig.step((0.0, 0.0, -GRAVITY), 20)
            rig.pose()

        with pytest.raises(EngineError, match="lost"):
            seen()
