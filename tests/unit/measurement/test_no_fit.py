"""Readings that no truck could give end in a sentence, not in a matrix without an inverse."""

from __future__ import annotations

import warnings
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from crossfall.measurement.reconcile_fit import fit_within
from crossfall.measurement.scatter import Scatter
from crossfall.measurement.weigh_in_file import read_session
from crossfall.measurement.weigh_in_next import next_readings
from crossfall.measurement.weighted_fit import Datum, Prior, fit
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array

DATA = [Datum("one", 1.0, 1), Datum("two", 2.0, 1)]
KINDS = [Scatter(1e-6, 0.0, np.inf)]


def steep(p: Array) -> Array:
    """A pose that leaves its range at once, as an arcsine of more than 1 does."""
    return np.arcsin(np.hstack([p, p]) * 1e3)


def endless(p: Array) -> Array:
    """Overflows wherever a step leads."""
    return np.exp(np.hstack([p, 2 * p]) * 1e5)


@pytest.mark.parametrize("method", [fit, fit_within])
@pytest.mark.parametrize("model", [steep, endless])
def test_a_model_without_an_answer_is_said_in_a_sentence(
    method: Callable[..., object], model: Callable[[Array], Array]
) -> None:
    known = [Prior("p", 0.5, 1.0)]
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        with pytest.raises(InputError, match="no truck gives these readings"):
            method(model, DATA, KINDS, known)


def test_what_the_truck_could_not_stand_for_is_not_advised(tmp_path: Path) -> None:
    """On springs of next to nothing it tips over where an end is raised further than it was."""
    file = tmp_path / "scales.toml"
    file.write_text(SOFT)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        plan = next_readings(read_session(file))
    assert plan.advice
    assert all(np.isfinite(a.after).all() for a in plan.advice)


SOFT = """\
title = "too soft"
floor_tol_deg = 0.2
[truck]
wheelbase_mm = 313
front_track_mm = 170
rear_track_mm = 170
front_radius_mm = 250.6
rear_radius_mm = 56
[scale]
resolution_g = 1
accuracy_percent = 0.2
height_match_mm = 0.3
[suspension]
locked = false
front_spring_n_per_mm = 0.3
rear_spring_n_per_mm = 0.02745
tyre_n_per_mm = 5
[[reading]]
at = "front"
load_g = [1342, 1345, 1341]
[[reading]]
at = "rear"
load_g = [1290, 1288, 1291]
[[reading]]
at = "left"
load_g = 1320
[[reading]]
at = "rear"
raised = "front"
block_mm = 90
load_g = [1502, 1499, 1503]
[[reading]]
at = "each wheel"
load_g = [[642.4, 672, 644, 646], [671, 672, 645, 646]]
"""
