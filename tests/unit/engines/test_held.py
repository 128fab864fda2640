"""What every engine must do alike: one truck on held wheels, asked the same of both."""

from __future__ import annotations

import math
import sys

import numpy as np
import pytest

from crossfall.engines.held import (
    ENGINES,
    engine_version,
    held_truck,
    usual_engine,
)
from crossfall.engines.mujoco import SolverMethod
from crossfall.engines.settings import EngineError, TrialSettings
from crossfall.truck.axle_law import law_of
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import ENDS, GRAVITY
from crossfall.truck.ride import tyre_loads
from held_cases import ASKEW, LOPSIDED, ON_SHOCKS, STEEP, hold, stood
from linkages import leaning_shocks, linked
from support import INSTALLED, make_truck, with_suspension, with_tyres


@pytest.mark.parametrize("engine", INSTALLED)
@pytest.mark.parametrize("locked", [False, True])
def test_ride_height_is_an_equilibrium(engine, locked):
    truck = with_suspension(LOPSIDED, locked=locked)
    with held_truck(truck, TrialSettings(), engine) as rig:
        rig.grip([1.0] * 4)
        hold(rig, 0.0, 0.0, 1.0)
        slack = 1e-4  # m: a solver's contact gives a little
        np.testing.assert_allclose(rig.loads(), tyre_loads(truck), rtol=2e-3)
        np.testing.assert_allclose(rig.poses([rig.pose()])[0], [0, 0, 0, 0, 0, 0, 1], atol=slack)
        np.testing.assert_allclose(rig.joint_positions(), 0.0, atol=slack)
        np.testing.assert_allclose(rig.gives(), 0.0, atol=slack)
        assert max(rig.slips()) < slack
        assert rig.lean() < 1e-3
        assert rig.engine == engine_version(engine)


@pytest.mark.parametrize("engine", INSTALLED)
def test_what_it_bears_is_its_weight(engine):
    loads = stood(engine, LOPSIDED)[0]
    weight = whole(LOPSIDED).mass * GRAVITY
    assert sum(loads) == pytest.approx(weight * math.cos(STEEP), rel=1e-3)


@pytest.mark.parametrize("engine", INSTALLED)
@pytest.mark.parametrize("truck", [LOPSIDED, ON_SHOCKS])
def test_finer_steps_change_nothing_at_rest(engine, truck):
    coarse, fine = stood(engine, truck), stood(engine, truck, refine=4)
    np.testing.assert_allclose(coarse[0], fine[0], atol=0.02)
    np.testing.assert_allclose(coarse[3], fine[3], atol=1e-4)


@pytest.mark.parametrize("engine", INSTALLED)
@pytest.mark.parametrize("truck", [LOPSIDED, ON_SHOCKS])
def test_going_back_repeats_to_the_last_digit(engine, truck):
    with held_truck(truck, TrialSettings(), engine) as rig:
        rig.grip([0.6] * 4)
        hold(rig, ASKEW, STEEP, 1.0)
        moment, seen = rig.save(), []
        for _ in range(2):
            rig.restore(moment)
            hold(rig, ASKEW, STEEP, 0.5)
            seen.append((rig.loads(), rig.place(), rig.joint_positions()))
        rig.forget(moment)
    assert seen[0] == seen[1]


@pytest.mark.parametrize("engine", INSTALLED)
def test_a_wheel_slips_at_its_own_grip_and_none_against_a_rail(engine):
    with held_truck(make_truck(), TrialSettings(), engine) as rig:
        rig.grip([math.inf, 0.2, math.inf, 0.2])
        hold(rig, math.pi / 2, STEEP)
        left, right = rig.slips()[::2], rig.slips()[1::2]
    assert max(left) < 2e-4 < 5e-4 < min(right)


def test_no_spring_is_too_stiff_for_the_second_engine():
    """Where a spring would need a tiny step its joint has inertia, which does nothing at rest."""
    stiff = make_truck(tyre_stiffness=2e5, spring_rate=2e4)
    with held_truck(stiff, TrialSettings(), "mujoco") as rig:
        assert rig.dt == pytest.approx(SolverMethod().step)
        rig.grip([5.0] * 4)
        hold(rig, ASKEW, STEEP, 3.0)
        weight = whole(stiff).mass * GRAVITY * math.cos(STEEP)
        assert sum(rig.loads()) == pytest.approx(weight, rel=1e-3)


def test_an_engine_that_lost_the_truck_says_so(tmp_path, monkeypatch, capfd):
    monkeypatch.chdir(tmp_path)
    with held_truck(make_truck(), TrialSettings(), "mujoco") as rig:
        rig._data.qvel[:] = 1e30
        rig.step((0.0, 0.0, -GRAVITY))
        with pytest.raises(EngineError, match="lost"):
            rig.save()
    assert not list(tmp_path.iterdir())  # the engine's own log
    assert capfd.readouterr() == ("", "")


@pytest.mark.parametrize("engine", INSTALLED)
def test_tyres_that_do_not_give_are_refused(engine):
    rigid = with_tyres(make_truck(), stiffness=math.inf)
    with pytest.raises(InputError, match="does not give"):
        held_truck(rigid, TrialSettings(), engine)


def test_without_bullet_the_other_is_usual_and_bullet_is_refused_in_a_line(monkeypatch):
    assert usual_engine() in ENGINES
    monkeypatch.setitem(sys.modules, "pybullet", None)
    assert usual_engine() == "mujoco"
    with pytest.raises(InputError, match=r"pybullet is not installed here.*choose mujoco"):
        held_truck(make_truck(), TrialSettings(), "bullet")


@pytest.mark.parametrize("shocks", [None, leaning_shocks()])
def test_the_second_engine_s_links_lead_an_axle_where_its_law_says(shocks):
    """There they are lengths held, without a word of the law."""
    truck = linked(make_truck(), "three links and a track bar", "wishbone", shocks)
    with held_truck(truck, TrialSettings(), "mujoco") as rig:
        rig.grip([5.0] * 4)
        hold(rig, ASKEW, STEEP)
        heave, roll = (np.reshape(rig.joint_positions(), (2, 2)).T)[:, :, None]
        data, chassis = rig._data, rig._model.body("chassis").id
        frame, origin = data.xmat[chassis].reshape(3, 3), data.xpos[chassis]
        for i, axle in enumerate(truck.axles):
            turn, shift = law_of(axle).motion(heave[i], roll[i])
            middle = np.array([axle.x, 0.0, axle.tyre.radius])
            own = rig._model.body(f"{ENDS[i]}").id
            at = frame.T @ (data.xpos[own] - origin)
            np.testing.assert_allclose(at, turn[0] @ middle + shift[0], atol=2e-5)
            np.testing.assert_allclose(frame.T @ data.xmat[own].reshape(3, 3), turn[0], atol=2e-4)
            assert abs(roll[i, 0]) > 0.02  # it moved
