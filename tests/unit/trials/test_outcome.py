"""What a log is concluded to say, and that a kept trial says the same again."""

from __future__ import annotations

import gc
import json
import math
import sys
import warnings
from dataclasses import fields, replace

import numpy as np
import pytest

from crossfall.trials.fits import FittedValue
from crossfall.trials.log import TiltingSamples
from crossfall.trials.outcome import Bracket, Terms, TiltTrial, concluded, together, widened
from crossfall.trials.pace import QUICK, Pace
from crossfall.trials.record import FIELDS, load_record
from crossfall.trials.saved import UNITS, load_trial, save_trial
from crossfall.trials.tilt import _balanced, _held, tilt_trial
from crossfall.truck.build import load_truck
from crossfall.truck.digest import truck_digest
from crossfall.truck.errors import InputError
from support import INSTALLED, make_truck

SIDE = math.pi / 2


def same(one: TiltTrial, two: TiltTrial) -> bool:
    """Whether every number of two trials is the same, to the last bit."""
    for f in fields(TiltTrial):
        a, b = getattr(one, f.name), getattr(two, f.name)
        if f.name == "log":
            continue
        if isinstance(a, np.ndarray):
            if not np.array_equal(a, b, equal_nan=True):
                return False
        elif repr(a) != repr(b):
            return False
    return True


@pytest.mark.parametrize("engine", INSTALLED)
@pytest.mark.parametrize(
    ("heading", "grip", "pace"), [(90.0, 1.2, Pace()), (40.0, 1.3, QUICK), (0.0, 0.4, QUICK)]
)
def test_a_kept_trial_says_the_same_to_the_last_digit(tmp_path, engine, heading, grip, pace):
    truck, path = make_truck(), tmp_path / "trial.npz"
    trial = tilt_trial(truck, math.radians(heading), grip=grip, pace=pace, engine=engine)
    save_trial(trial, path, {"numpy": np.__version__})
    back = load_trial(path)
    assert same(trial, back)
    assert back.outcome == ("slides" if grip < 0.5 else "tips")
    for name in FIELDS:
        np.testing.assert_array_equal(
            getattr(back.log.samples, name), getattr(trial.log.samples, name)
        )
        np.testing.assert_array_equal(getattr(load_record(path), name), getattr(trial.record, name))
    assert [p.name for p in tmp_path.iterdir()] == ["trial.npz"]


def test_one_that_rested_nowhere_but_where_it_began_is_concluded_from_there():
    """It may go at the first angle it is held at."""
    trial = tilt_trial(make_truck(), SIDE, grip=1.2, pace=QUICK)
    stretches = trial.log.stretches
    gone = [s for s in stretches if s.kind == "hold" and s.fate == "tips"]
    rest = [s for s in stretches if s.kind != "hold"]
    again = concluded(replace(trial, log=replace(trial.log, stretches=(*rest, gone[0]))))
    began = [trial.log.end(s)[0] for s in rest if s.kind == "approach"][-1]
    assert again.event_bracket == (began, trial.log.end(gone[0])[0])
    assert again.tip_ci[0] <= began
    assert again.load_left > 0.0


def test_a_truck_that_is_gone_before_a_sample_balanced_nowhere():
    nothing = TiltingSamples(*[np.array([])] * 4)
    assert _balanced(nothing, 0.1) == _held(nothing) == 0.0


def test_a_kept_trial_names_its_truck_engine_and_units(tmp_path):
    truck, path = make_truck(), tmp_path / "trial.npz"
    trial = tilt_trial(truck, SIDE, grip=1.2, pace=QUICK)
    save_trial(trial, path, {"numpy": np.__version__})
    with np.load(path, allow_pickle=False) as data:
        about = json.loads(str(data["about"]))
        assert about["digest"] == truck_digest(truck)
        assert about["engine"] == trial.engine
        assert about["versions"] == {"numpy": np.__version__}
        assert set(about["units"]) <= set(data.files)
        numbers = [n for n in data.files if data[n].dtype.kind == "f"]
    assert set(numbers) <= set(UNITS)


def test_the_record_holds_every_hold(tmp_path):
    trial = tilt_trial(make_truck(), SIDE, grip=1.2)
    log = trial.log
    holds = [s for s in log.stretches if s.kind == "hold"]
    assert {s.vary for s in holds} >= {"", "base", "step", "rate"}
    assert {s.fate for s in holds} == {"rests", "tips"}
    assert [s.first for s in log.stretches[1:]] == [s.last for s in log.stretches[:-1]]
    assert log.stretches[-1].last == len(log.samples)
    for hold in holds:
        theta = log.samples.theta[hold.first : hold.last]
        assert (np.diff(theta) >= 0.0).all()
        if hold.fate == "rests":  # nothing moves at its end
            poses = log.samples.chassis[hold.last - 2 : hold.last]
            assert np.abs(np.diff(poses, axis=0)).max() < 1e-4
    assert not log.passed[holds[0].first :].any()


@pytest.mark.parametrize("engine", INSTALLED)
def test_a_slide_begins_at_the_angle_of_friction(engine):
    grip = 0.9
    trial = tilt_trial(load_truck("bramble").truck, 0.0, grip=grip, near=0.84, engine=engine)
    assert trial.outcome == "slides"
    assert trial.slide_ci[0] < math.atan(grip) < trial.slide_ci[1]
    assert trial.slide_ci[1] - trial.slide_ci[0] < math.radians(0.3)


@pytest.mark.parametrize("content", [b"", b"PK\x03\x04nonsense", b"\x93NUMPY"])
def test_what_is_no_kept_trial_is_said_in_a_line(tmp_path, content):
    path = tmp_path / "x.npz"
    path.write_bytes(content)
    with pytest.raises(InputError, match="is no kept trial"):
        load_trial(path)
    with pytest.raises(InputError, match="no such file"):
        load_trial(tmp_path / "y.npz")


def test_a_record_of_a_drive_is_no_kept_trial(tmp_path):
    path = tmp_path / "drive.npz"
    tilt_trial(make_truck(), SIDE, grip=1.2, pace=QUICK).record.save(path)
    with pytest.raises(InputError, match="is no kept trial"):
        load_trial(path)


def test_terms_add_as_squares():
    assert Terms(event=3.0, rest=4.0).half == pytest.approx(5.0)
    assert Terms().half == 0.0


def test_a_sharp_fit_moves_the_event_within_its_bracket_only():
    found = Bracket(1.0, 1.02, "tips", 0)
    sharp = FittedValue(1.013, 1.0129, 1.0131, (), 9, 0.0)
    at, half = together(found, sharp)
    assert at == pytest.approx(1.013, abs=1e-4)
    assert half < 0.001
    at, half = together(found, replace(sharp, low=0.5, high=1.5))
    assert at == pytest.approx(1.01, abs=1e-3)
    assert half <= 0.01 + 1e-12
    elsewhere = FittedValue(1.2, 1.19, 1.21, (), 9, 0.0)
    assert together(found, elsewhere) == (1.01, pytest.approx(0.01))


def test_an_interval_holds_both_searches():
    assert widened(1.0, 0.1, (0.5, 1.05)) == (0.5, 1.1)


def test_a_trial_has_a_budget_of_steps():
    from crossfall.engines.settings import TrialSettings

    with pytest.raises(InputError, match="came to no end in 500 steps"):
        tilt_trial(make_truck(), SIDE, grip=1.2, settings=TrialSettings(budget=500))


def test_a_damaged_record_is_refused_and_let_go(tmp_path, monkeypatch):
    left_open: list[object] = []
    monkeypatch.setattr(sys, "unraisablehook", left_open.append)
    path = tmp_path / "trial.npz"
    save_trial(tilt_trial(make_truck(), SIDE, grip=1.2, pace=QUICK), path, {})
    path.write_bytes(path.read_bytes()[:-40])
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        with pytest.raises(InputError, match="no kept trial"):
            load_trial(path)
        gc.collect()
    assert left_open == []
