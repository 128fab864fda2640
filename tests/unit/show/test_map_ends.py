"""A map ends where what was tried ends: there are no stones of a negative height."""

from __future__ import annotations

import itertools

import numpy as np

from crossfall.show.summary import draw_fates
from crossfall.study.scenario_file import MapSpec


def test_an_area_map_has_the_ends_of_its_values() -> None:
    points = list(itertools.product([0.0, 8.0, 16.0], [14.0, 28.0, 42.0]))
    columns = {
        "cause": np.full(len(points), None, object),
        "stone_mm": np.array([p[0] for p in points]),
        "slope_deg": np.array([p[1] for p in points]),
        "on_slope": np.array(["stands", "slides", "tips"] * 3, object),
    }
    (made,) = draw_fates(columns, MapSpec(x="stone_mm", y="slope_deg", shows="slope"), "")
    (axes,) = (a for a in made.axes if a.get_xlabel() == "stone, mm")
    assert axes.get_xlim() == (0.0, 16.0)
    assert axes.get_ylim() == (14.0, 42.0)
