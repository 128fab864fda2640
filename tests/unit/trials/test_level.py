"""A trial begins with the truck at ride height on the level."""

from __future__ import annotations

import pytest

from crossfall.engines.settings import TrialSettings
from crossfall.trials.table import Tilting, level_table
from crossfall.truck.ride import tyre_loads
from support import INSTALLED, make_truck


@pytest.mark.parametrize("engine", INSTALLED)
def test_on_the_level_every_wheel_bears_its_load(engine):
    truck = make_truck(chassis_cg=(0.02, 0.006, 0.1))
    with level_table(truck, TrialSettings(), engine) as table:
        assert table.level_loads == pytest.approx(tuple(tyre_loads(truck)), rel=1e-9)
        run = Tilting(table, 0.0)
        assert not run.light(0.03)
        run.loads[0] = 0.02 * table.level_loads[0]
        assert run.light(0.03)
