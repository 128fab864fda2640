"""The force laws of corner springs, stops and tyres, and the time step they allow."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.engines.held import gravity_on_table
from crossfall.engines.rig import HeldRig, Rig
from crossfall.engines.scale import SimilarityScale, similar
from crossfall.engines.settings import GroundSettings, TrialSettings
from crossfall.engines.springs import (
    LooseCorners,
    corner_springs,
    held_step,
    safe_step,
    tyre_springs,
)
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY
from crossfall.truck.ride import spring_preloads, tyre_loads
from support import make_truck, with_suspension, with_tyres

STEP = 1 / 480


def laws(truck, settling=False):
    return corner_springs(truck, TrialSettings(), STEP, 1.0, settling=settling)


def forces(law, q=0.0, r=0.0, qv=0.0, rv=0.0, corners=None):
    return (corners or LooseCorners([law])).forces([(q, qv), (r, rv)], STEP)


def test_at_ride_height_the_springs_carry_the_preloads():
    truck = make_truck(chassis_cg=(-0.02, 0.006, 0.1))
    law = laws(truck)[0]
    left, right = spring_preloads(truck)[:2]
    heave, roll = forces(law)
    assert heave == pytest.approx(-(left + right))
    assert roll == pytest.approx(-law.half_spacing * (left - right))


def test_forces_are_the_slope_of_the_stored_energy():
    truck = make_truck(anti_roll=1.5)
    law = laws(truck)[0]

    def energy(q, r):
        corners = (q + law.half_spacing * r, q - law.half_spacing * r)
        springs = sum(
            (max(0.0, p + law.rate * c)) ** 2 / (2 * law.rate)
            for p, c in zip(law.preload, corners, strict=True)
        )
        return springs + law.anti_roll * r**2 / 2

    rng, h = np.random.default_rng(1), 1e-6
    for _ in range(50):
        q, r = rng.uniform(-0.02, 0.015), rng.uniform(-0.08, 0.08)
        if not all(-0.025 < q + a * law.half_spacing * r < 0.02 for a in (1, -1)):
            continue
        heave, roll = forces(law, q, r)
        assert heave == pytest.approx(-(energy(q + h, r) - energy(q - h, r)) / (2 * h), abs=1e-5)
        assert roll == pytest.approx(-(energy(q, r + h) - energy(q, r - h)) / (2 * h), abs=1e-5)


def test_a_spring_only_pushes():
    law = laws(make_truck(droop=0.5))[0]
    slack = -law.preload[0] / law.rate
    assert forces(law, slack - 0.01)[0] == 0.0
    assert forces(law, slack + 0.001)[0] == pytest.approx(-2 * 0.001 * law.rate)


def test_dampers_act_both_ways():
    law = laws(make_truck())[0]
    still, up, down = (forces(law, qv=v)[0] for v in (0.0, 0.1, -0.1))
    assert still - up == pytest.approx(2 * law.damping * 0.1)
    assert down - still == pytest.approx(2 * law.damping * 0.1)


@pytest.mark.parametrize(("over", "sign"), [(0.0215, -1), (-0.0265, 1)])
def test_stops_push_back_and_take_up_their_overlap(over, sign):
    law = laws(make_truck())[0]
    corners, free = LooseCorners([law]), forces(law, over)[0]
    bare = -sum(max(0.0, p + law.rate * over) for p in law.preload)
    first = forces(law, over, corners=corners)[0] - bare
    assert first * sign > 0
    assert first == pytest.approx(free - bare)
    for _ in range(20):
        last = forces(law, over, corners=corners)[0] - bare
    assert last * sign > first * sign


def test_a_stop_lets_go():
    law = laws(make_truck())[0]
    corners = LooseCorners([law])
    for _ in range(5):
        forces(law, 0.021, corners=corners)
    assert corners.corners.stops.any()
    for _ in range(200):
        forces(law, 0.019, corners=corners)
    assert not corners.corners.stops.any()


def test_settling_only_ever_adds_damping():
    soft, hard = make_truck(damping=0.0), make_truck(damping=20.0)
    assert laws(soft)[0].damping == 0.0
    assert 5.0 < laws(soft, settling=True)[0].damping < 10.0
    assert laws(hard, settling=True)[0].damping == pytest.approx(20.0, rel=0.5)


def test_tyres_carry_all_but_the_wheels():
    for width in (0.0, 0.012):
        truck = make_truck(contact_half_width=width, chassis_cg=(0.02, 0.01, 0.1))
        springs = tyre_springs(truck, TrialSettings(), STEP)
        wheels = sum(w.mass for a in truck.axles for w in a.wheels) * GRAVITY
        carried = sum(t.force for t in springs)
        assert carried + wheels == pytest.approx(whole(truck).mass * GRAVITY)
        tyre = truck.front.tyre
        for end, rate in (
            ("tyre", tyre.stiffness),
            ("tyre_along", tyre.longitudinal),
            ("tyre_aside", tyre.lateral),
        ):
            given = [t.rate for t in springs if t.joint.endswith(f"_{end}")]
            assert sum(given) == pytest.approx(4 * rate)


def test_rigid_tyres_and_locked_axles_have_no_springs():
    rigid = dict.fromkeys(("stiffness", "lateral", "longitudinal"), math.inf)
    truck = with_suspension(with_tyres(make_truck(), **rigid), locked=True)
    assert tyre_springs(truck, TrialSettings(), STEP) == ()
    assert laws(truck) == ()
    assert safe_step(truck, TrialSettings(), 1.0) == TrialSettings().step


def test_stiff_tyres_shorten_the_step():
    plain, stiff = (make_truck(tyre_stiffness=k) for k in (3000.0, 48000.0))
    settings = GroundSettings()
    assert safe_step(plain, settings, 1.0) == settings.step
    ratio = safe_step(make_truck(tyre_stiffness=192000.0), settings, 1.0) / safe_step(
        stiff, settings, 1.0
    )
    assert ratio == pytest.approx(0.5)


@pytest.mark.parametrize("way", ["stiffness", "lateral", "longitudinal"])
def test_a_held_truck_is_stepped_for_its_stiffest_way(way):
    slow = with_tyres(make_truck(spring_rate=1.0), stiffness=1.0, lateral=1.0, longitudinal=1.0)
    assert held_step(slow, TrialSettings()) == TrialSettings().step
    steps = [held_step(with_tyres(slow, **{way: k}), TrialSettings()) for k in (1e6, 4e6)]
    assert steps[1] == pytest.approx(steps[0] / 2, rel=1e-3)


def test_the_step_of_a_locked_truck_is_that_of_one_body():
    """Up and down, with wheels under their load's middle: omega^2 = 4 k / M."""
    truck = with_suspension(make_truck(chassis_cg=(0.0, 0.0, 0.11)), locked=True)
    truck = with_tyres(truck, stiffness=1e6, lateral=1.0, longitudinal=1.0)
    # Pitch and roll are quicker than heave here; all three lie within a factor of two.
    heave = math.sqrt(4e6 / whole(truck).mass)
    assert heave < TrialSettings().turn_per_step / held_step(truck, TrialSettings()) < 2 * heave


LOPSIDED = make_truck(
    chassis_cg=(-0.02, 0.008, 0.11), heave_lean=(0.15, -0.2), contact_half_width=0.01
)


def test_ride_height_is_an_equilibrium_on_turning_wheels():
    with Rig(LOPSIDED, GroundSettings()) as rig:
        rig.world.plane()
        for _ in range(480):
            rig.step((0.0, 0.0, -GRAVITY))
        names = [rig.world.joints[n] for n in rig.world.moving if not n.endswith("spin")]
        moved = [state[0] for state in rig.world.joint_states(names)]
        loads = np.array(rig.world.loads()) / rig.scale.force
    np.testing.assert_allclose(moved, 0.0, atol=1e-4 * rig.scale.length)
    np.testing.assert_allclose(loads, tyre_loads(LOPSIDED), rtol=2e-3)


@pytest.mark.parametrize("locked", [False, True])
def test_ride_height_is_an_equilibrium_on_held_wheels(locked):
    truck = with_suspension(LOPSIDED, locked=locked)
    with HeldRig(truck, TrialSettings()) as rig:
        for _ in range(480):
            rig.step((0.0, 0.0, -GRAVITY))
        joints = [rig.world.joints[n] for n in rig.world.moving]
        moved = [state[0] for state in rig.world.joint_states(joints)]
        pose = rig.world.chassis_poses([rig.world.chassis()])[0]
        loads, slips = rig.loads(), rig.slips()
    np.testing.assert_allclose(moved, 0.0, atol=1e-7)
    np.testing.assert_allclose(pose, [0, 0, 0, 0, 0, 0, 1], atol=1e-7)
    np.testing.assert_allclose(loads, tyre_loads(truck), rtol=1e-4)
    assert slips == [0.0] * 4


def test_a_held_truck_that_rests_is_balanced():
    """Its tyres carry its weight, and no moment is left about any point: wheels displaced by what
    their tyres gave, of which the engine knows nothing, included."""
    gravity = gravity_on_table(math.radians(60.0), math.radians(20.0))
    with HeldRig(LOPSIDED, TrialSettings()) as rig:
        rig.grip([5.0] * 4)
        for i in range(6000):
            rig.step(gravity_on_table(math.radians(60.0), math.radians(20.0) * min(1.0, i / 500)))
        world, wheels, mass = rig.world, rig.wheels, whole(LOPSIDED).mass
        links = [world.link["front_axle"], world.link["rear_axle"]]
        force, moment, give = np.zeros(3), np.zeros(3), np.zeros(3)
        for _ in range(200):  # the engine's places move by 1e-9 m at rest, loads by 1e-4 N
            rig.step(gravity)
            now, frames = wheels.save(), world.frames(links)
            moment += np.cross(world.mass_centre(), np.multiply(mass, gravity)) / 200
            for i, (_, origin, turn) in enumerate(frames):
                f, m = wheels.press(i, origin, turn, (0.0, 0.0, 0.0), gravity)
                force, moment = force + np.array(f) / 200, moment + np.array(m) / 200
            give += wheels.patches["mass"] @ wheels.patches["give"] / 200
            wheels.restore(now)
    np.testing.assert_allclose(force, -mass * np.array(gravity), atol=1e-5 * mass * GRAVITY)
    np.testing.assert_allclose(moment, 0.0, atol=1e-5 * mass * GRAVITY * 0.3)
    assert np.linalg.norm(np.cross(give, gravity)) > 1e-4 * mass * GRAVITY * 0.3  # it counts


def test_a_similar_truck_weighs_and_stands_alike():
    truck = make_truck(chassis_cg=(-0.02, 0.008, 0.11), anti_roll=1.0)
    big = similar(truck, SimilarityScale(10.0))
    assert whole(big).mass == pytest.approx(1000 * whole(truck).mass)
    np.testing.assert_allclose(tyre_loads(big), 1000 * tyre_loads(truck))
    np.testing.assert_allclose(spring_preloads(big), 1000 * spring_preloads(truck))
    # Deflection under the truck's own load scales like a length, anti-roll like a moment.
    rate = big.front.suspension.spring_rate / truck.front.suspension.spring_rate
    assert rate == pytest.approx(1000 / 10)
    assert big.front.suspension.anti_roll == pytest.approx(1e4 * 1.0)
    # Frequencies fall with the root of the length, damping ratios stay.
    ratios = [
        t.front.suspension.damping / math.sqrt(t.front.suspension.spring_rate * whole(t).mass)
        for t in (truck, big)
    ]
    assert ratios[0] == pytest.approx(ratios[1])
