"""The URDF read by other people's programs, and what is refused before it is written."""

from __future__ import annotations

import math
import xml.etree.ElementTree as ET
from dataclasses import replace

import mujoco
import numpy as np
import pinocchio
import pytest

from crossfall.engines.multibody import disc_names, multibody
from crossfall.engines.urdf import check_urdf, read_back, roll_pitch_yaw, urdf, urdf_text
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Body, Clearance, Part, Shape, Truck, frozen
from support import block, make_truck, with_suspension, with_tyres

LOPSIDED = make_truck(
    tracks=(0.165, 0.185), chassis_cg=(-0.013, 0.007, 0.118), heave_lean=(0.12, -0.2)
)
TRUCKS = {
    "plain": make_truck(),
    "lopsided": LOPSIDED,
    "two discs": replace(make_truck(contact_half_width=0.012), name="two discs"),
    "locked": with_suspension(LOPSIDED, locked=True),
    "rigid": with_suspension(with_tyres(LOPSIDED, stiffness=math.inf), locked=True),
}


def with_skew_inertia(truck: Truck) -> Truck:
    """Products of inertia everywhere, and wheels whose CG is off their axis."""
    skew = np.array([[0, 2e-4, -1e-4], [2e-4, 0, 3e-4], [-1e-4, 3e-4, 0]])
    chassis = replace(truck.chassis, inertia=frozen(truck.chassis.inertia + skew))
    left, right = truck.front.wheels
    left = replace(left, cg=frozen(left.cg + np.array([0.001, 0.002, -0.001])))
    return replace(truck, chassis=chassis, front=replace(truck.front, wheels=(left, right)))


def by_pinocchio(text: str) -> Body:
    model = pinocchio.buildModelFromXML(text, pinocchio.JointModelFreeFlyer())
    data, rest = model.createData(), pinocchio.neutral(model)
    pinocchio.ccrba(model, data, rest, np.zeros(model.nv))
    cg = pinocchio.centerOfMass(model, data, rest)
    return Body(data.Ig.mass, frozen(cg), frozen(data.Ig.inertia))


def by_mujoco(text: str) -> Body:
    spec = mujoco.MjSpec.from_string(text)
    spec.compiler.fusestatic = False  # otherwise the base's mass is lost in the world
    model = spec.compile()
    data = mujoco.MjData(model)
    mujoco.mj_forward(model, data)
    mass = float(model.body_mass.sum())
    cg = (model.body_mass[:, None] * data.xipos).sum(axis=0) / mass
    inertia = np.zeros((3, 3))
    for m, at, turn, moments in zip(
        model.body_mass, data.xipos, data.ximat, model.body_inertia, strict=True
    ):
        rotation, offset = turn.reshape(3, 3), at - cg
        inertia += rotation @ np.diag(moments) @ rotation.T
        inertia += m * (offset @ offset * np.eye(3) - np.outer(offset, offset))
    return Body(mass, frozen(cg), frozen(inertia))


@pytest.mark.parametrize("turning", [True, False])
@pytest.mark.parametrize("name", TRUCKS)
@pytest.mark.parametrize("reader", [by_pinocchio, by_mujoco, read_back])
def test_others_read_our_mass_cg_and_inertia(reader, name, turning):
    truck = with_skew_inertia(TRUCKS[name])
    have, want = reader(urdf(truck, turning=turning)), whole(truck)
    assert have.mass == pytest.approx(want.mass, rel=1e-9)
    np.testing.assert_allclose(have.cg, want.cg, atol=1e-9 * truck.wheelbase)
    np.testing.assert_allclose(have.inertia, want.inertia, atol=1e-9 * np.abs(want.inertia).max())


def test_wheels_stand_on_the_ground_and_turn_about_their_axes():
    truck = TRUCKS["lopsided"]
    model = pinocchio.buildModelFromXML(urdf(truck), pinocchio.JointModelFreeFlyer())
    data = model.createData()
    pinocchio.framesForwardKinematics(model, data, pinocchio.neutral(model))
    for name, axle, side in (("front_left", truck.front, 1), ("rear_right", truck.rear, -1)):
        at = data.oMf[model.getFrameId(name)].translation
        np.testing.assert_allclose(at, [axle.x, side * axle.track / 2, axle.tyre.radius])
    assert model.nq == 7 + 2 * 2 + 4 * 3 + 4 * 2  # base, axles, tyres, cos and sin of spins


@pytest.mark.parametrize("name", TRUCKS)
def test_knuckles_change_no_mass_and_steer_about_the_wheels_middle(name):
    truck = with_skew_inertia(TRUCKS[name])
    text = urdf_text(multibody(truck, steering=True), truck.name)
    check_urdf(text, truck)
    model = pinocchio.buildModelFromXML(text, pinocchio.JointModelFreeFlyer())
    data, q, angle = model.createData(), pinocchio.neutral(model), 0.3
    q[model.joints[model.getJointId("front_left_steer")].idx_q] = angle
    pinocchio.framesForwardKinematics(model, data, q)
    wheel = data.oMf[model.getFrameId(disc_names(0, truck.front)[0])]
    hub = np.array([truck.front.x, truck.front.track / 2, truck.front.tyre.radius])
    axis = np.array([-math.sin(angle), math.cos(angle), 0.0])
    np.testing.assert_allclose(wheel.rotation[:, 1], axis, atol=1e-12)
    np.testing.assert_allclose(wheel.translation - hub, 0.0, atol=1e-12)


def test_heave_moves_the_axle_along_the_leaning_axis():
    truck = TRUCKS["lopsided"]
    model = pinocchio.buildModelFromXML(urdf(truck, turning=False))
    data, q = model.createData(), np.zeros(model.nq)
    q[model.joints[model.getJointId("front_heave")].idx_q] = 0.01
    before = pinocchio.neutral(model)
    frame = model.getFrameId("front_axle")
    pinocchio.framesForwardKinematics(model, data, before)
    start = data.oMf[frame].translation.copy()
    pinocchio.framesForwardKinematics(model, data, q)
    lean = truck.front.suspension.heave_lean
    np.testing.assert_allclose(
        data.oMf[frame].translation - start, [0.01 * math.sin(lean), 0, 0.01 * math.cos(lean)]
    )


def test_an_inertia_no_solid_can_have_is_refused_by_name():
    flat = replace(make_truck().chassis, inertia=frozen(np.diag([0.001, 0.002, 0.003])))
    needle = Body(0.2, frozen([0.15, 0, 0.057]), frozen(np.diag([1e-9, 4e-4, 1e-3])))
    truck = make_truck()
    truck = replace(truck, chassis=flat, front=replace(truck.front, body=needle))
    with pytest.raises(InputError) as caught:
        multibody(truck)
    text = str(caught.value)
    assert len(caught.value.problems) == 2
    assert "chassis" in text
    assert "front axle" in text
    assert "principal moments" in text


def test_a_massless_axle_is_refused():
    truck = make_truck()
    empty = replace(truck.rear, body=replace(truck.rear.body, mass=0.0))
    with pytest.raises(InputError, match="rear axle has a mass"):
        multibody(replace(truck, rear=empty))


def test_a_text_that_is_not_the_truck_is_found_out():
    truck = make_truck()
    text = urdf(truck)
    with pytest.raises(InputError, match="mass"):
        check_urdf(text.replace('mass value="1.9"', 'mass value="1.9000001"'), truck)
    heavier = make_truck(chassis_cg=(-0.01, 0.0, 0.1100001))
    with pytest.raises(InputError, match="CG"):
        check_urdf(text, heavier)


def test_parts_are_drawn_where_they_are():
    turn = frozen([[0, -1, 0], [1, 0, 0], [0, 0, 1]])
    corners = np.array([[0, 0, 0], [0.02, 0, 0], [0, 0.04, 0], [0, 0, 0.06]])
    shapes = (
        Shape("box", (0.1, 0.05, 0.03)),
        Shape("tube", (0.02, 0.01, 0.3)),
        Shape("sphere", (0.015,)),
        Shape("mesh", (), corners, np.array([[0, 1, 2]])),
    )
    parts = tuple(
        Part(f"p{i}", i, "chassis", block(0.1, (0, 0, 0.1), (0.1,) * 3), 0.0, shape,
             frozen([0.01 * i, 0.02, 0.1]), turn)
        for i, shape in enumerate(shapes)
    )  # fmt: skip
    truck = replace(
        make_truck(), parts=parts, clearance=Clearance((0.2, 0.06), (0, 0.05), (-0.2, 0.07))
    )
    root = ET.fromstring(urdf(truck))
    chassis = next(link for link in root.iter("link") if link.get("name") == "chassis")
    visuals = chassis.findall("visual")
    assert [v.find("geometry")[0].tag for v in visuals] == ["box", "cylinder", "sphere", "box"]
    assert visuals[1].find("geometry/cylinder").attrib == {"radius": "0.02", "length": "0.3"}
    assert visuals[0].find("origin").get("rpy").split()[2] == repr(math.pi / 2)
    mesh_box = [float(v) for v in visuals[3].find("geometry/box").get("size").split()]
    assert mesh_box == pytest.approx([0.02, 0.04, 0.06])
    mesh_at = [float(v) for v in visuals[3].find("origin").get("xyz").split()]
    assert mesh_at == pytest.approx([0.03 - 0.02, 0.02 + 0.01, 0.13])
    lowest = [
        float(c.find("origin").get("xyz").split()[2]) - float(c.find("geometry")[0].get("radius"))
        for c in chassis.findall("collision")
    ]
    assert lowest == pytest.approx([0.06, 0.05, 0.07])


@pytest.mark.parametrize("angles", [(0.3, -0.7, 2.1), (1.0, math.pi / 2, 0.4), (-2.0, -1.2, -3.0)])
def test_roll_pitch_yaw_gives_the_rotation_back(angles):
    roll, pitch, yaw = angles

    def matrix(r, p, y):
        cr, sr, cp, sp, cy, sy = (f(a) for a in (r, p, y) for f in (math.cos, math.sin))
        return np.array(
            [
                [cy * cp, cy * sp * sr - sy * cr, cy * sp * cr + sy * sr],
                [sy * cp, sy * sp * sr + cy * cr, sy * sp * cr - cy * sr],
                [-sp, cp * sr, cp * cr],
            ]
        )

    turn = matrix(roll, pitch, yaw)
    np.testing.assert_allclose(matrix(*roll_pitch_yaw(turn)), turn, atol=1e-9)
