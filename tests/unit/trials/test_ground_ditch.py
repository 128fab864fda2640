"""The ditch: one module and this file is all that a ground takes."""

from __future__ import annotations

import json
import math
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall
from crossfall.study.scenario import load_scenario
from crossfall.study.sweep import run_scenario
from crossfall.trials.grounds.ditch import Ditch, ditch_heights
from crossfall.trials.slope import cross_slope
from crossfall.truck.model import frozen
from support import make_truck


def test_it_is_as_deep_and_wide_as_asked_and_leaves_the_upper_wheels_alone() -> None:
    ditch = Ditch(0.03, width=0.12)
    ahead, down = frozen(np.linspace(-0.1, 0.3, 401)), frozen(np.linspace(-0.2, 0.2, 201))
    heights = ditch_heights(ditch, ahead, down)
    assert heights.min() == pytest.approx(-0.03)
    assert ahead[heights.min(axis=1) < -1e-12].min() == pytest.approx(0.0, abs=0.002)
    assert ahead[heights.min(axis=1) < -1e-12].max() == pytest.approx(0.12, abs=0.002)
    assert not heights[:, down <= 0].any()
    grade = np.abs(np.diff(heights, axis=0)).max() / 0.001
    assert grade == pytest.approx(math.pi * 0.03 / 0.12, rel=1e-3)


@pytest.mark.parametrize("sizes", [(0.0, 0.1), (-0.01, 0.1), (0.1, 0.1), (math.nan, 0.1)])
def test_what_makes_no_ditch_is_refused(sizes: tuple[float, float]) -> None:
    with pytest.raises(ValueError, match="no ditch"):
        Ditch(*sizes)


@pytest.mark.bullet
@pytest.mark.parametrize("heading", [math.pi / 2, 3 * math.pi / 2])
def test_lower_wheels_drop_into_it(heading: float) -> None:
    """A wheel over its bottom hangs lower than on the plane, whichever side is down."""
    truck, slope = make_truck(), math.radians(15.0)

    def lean(depth: float | None) -> float:
        ground = None if depth is None else Ditch(depth, width=0.2)
        trial = cross_slope(truck, slope, heading=heading, speed=0.3, ground=ground, grip=1.5)
        assert trial.outcome == "crossed"
        return trial.least_margin

    assert lean(None) > lean(0.01) > lean(0.025)
    assert lean(None) > lean(0.025) + math.radians(3.0)


@pytest.mark.bullet
def test_it_is_asked_for_by_its_key_everywhere(tmp_path: Path) -> None:
    words = ["slope", "thistle", "--slope", "12", "--ditch", "20", "--ditch-width", "200"]
    words += ["--speed", "400", "--grip", "1.2", "--json"]
    result = CliRunner().invoke(crossfall, words, standalone_mode=False)
    said = json.loads(result.output)["ground"]
    assert said["kind"] == "ditch"
    assert said["depth_mm"] == pytest.approx(20)
    assert said["width_mm"] == pytest.approx(200)
    path = tmp_path / "ditches.toml"
    path.write_text(
        'name = "ditches"\ntruck = "thistle"\nmethod = "slope trial"\nheadings_deg = [90]\n'
        "[fixed]\nslope_deg = 12\nspeed_mm_per_s = 400\ngrip = 1.2\nditch_width_mm = 200\n"
        '[[axis]]\nkey = "ditch_mm"\nvalues = [0, 20]\n'
    )
    run_scenario(load_scenario(path), tmp_path / "out", workers=1)
    table = (tmp_path / "out" / "table.csv").read_text()
    assert ",plane," in table
    assert ",ditch," in table
