"""Both engines, which share no law of force, stand the same truck the same way. Needs Bullet."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.engines.held import ENGINES
from held_cases import LOPSIDED, ON_SHOCKS, stood
from linkages import linked
from support import make_truck

SLACK = (0.02, 2e-5, 2e-4, 1e-4, 1e-4)  # N, m, m or rad: a solver's contact gives a little


@pytest.mark.parametrize(
    "truck",
    [
        LOPSIDED,
        make_truck(droop=0.004),
        make_truck(),
        linked(make_truck(droop=0.004), "four links", "three links and a track bar"),
        ON_SHOCKS,
    ],
)
def test_the_engines_stand_alike_on_a_slope(truck):
    one, two = (stood(engine, truck) for engine in ENGINES)
    for found, other, slack in zip(one, two, SLACK, strict=True):
        np.testing.assert_allclose(found, other, atol=slack, rtol=5e-3)
    assert np.abs(one[1]).max() > 20 * SLACK[1]  # tyres gave
