"""A map ends where what was tried ends: there are no stones of a negative height."""

from __future__ import annotations

import itertools

import numpy as np
from matplotlib.collections import QuadMesh
from matplotlib.text import Text

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


def test_headings_and_fates_are_not_averaged() -> None:
    """Stands at one heading and tips at the other had been drawn as slides, in one picture."""
    points = list(itertools.product([0.0, 8.0, 16.0], [14.0, 28.0, 42.0], [0.0, 90.0]))
    columns = {
        "cause": np.full(len(points), None, object),
        "stone_mm": np.array([p[0] for p in points]),
        "slope_deg": np.array([p[1] for p in points]),
        "heading_deg": np.array([p[2] for p in points]),
        "on_slope": np.array(["stands", "tips"] * 9, object),
    }
    made = draw_fates(columns, MapSpec(x="stone_mm", y="slope_deg", shows="slope"), "")
    drawn = [
        np.unique(mesh.get_array())
        for figure in made
        for axes in figure.axes
        for mesh in axes.collections
        if isinstance(mesh, QuadMesh)
    ]
    assert [d.tolist() for d in drawn] == [[0.0], [3.0]]
    said = ["".join(t.get_text() for t in figure.findobj(Text)) for figure in made]
    assert "0°, climb" in said[0]
    assert "90°, side-hill" in said[1]


def test_of_two_fates_as_common_the_worse_is_drawn_and_stuck_is_told() -> None:
    points = list(itertools.product([0.0, 8.0], [14.0, 28.0], range(2)))
    columns = {
        "cause": np.full(len(points), None, object),
        "stone_mm": np.array([p[0] for p in points]),
        "slope_deg": np.array([p[1] for p in points]),
        "on_slope": np.array(["stuck", "stuck"] * 2 + ["stands", "slides"] * 2, object),
    }
    (made,) = draw_fates(columns, MapSpec(x="stone_mm", y="slope_deg", shows="slope"), "")
    (mesh,) = (m for axes in made.axes for m in axes.collections if isinstance(m, QuadMesh))
    assert mesh.get_array().tolist() == [[1.0, 2.0], [1.0, 2.0]]
    assert "stuck" in "".join(t.get_text() for t in made.findobj(Text))
