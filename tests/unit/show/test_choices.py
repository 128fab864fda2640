"""Gain map, front and sweep maps."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from looks import clipped, drawn, overlaps, texts

from crossfall.show import front, gainmap, maps
from crossfall.show.drawings import extent
from crossfall.show.silhouette import SIDE, solids
from crossfall.show.style import render
from crossfall.statics.rigid import mass_derivative, wedge_lines
from crossfall.truck.massprops import whole


def panels(truck):
    def gain(heading):
        return lambda points: mass_derivative(truck, heading, points)

    return (
        gainmap.Panel("climb", "side", gain(0.0), (0,)),
        gainmap.Panel("descent", "side", gain(np.pi), (2,)),
        gainmap.Panel("left side down", "rear", gain(np.pi / 2), (1,)),
        gainmap.Panel("right side down", "rear", gain(1.5 * np.pi), (3,)),
    )


def test_field_is_the_gain_in_degrees_per_10_g(truck):
    panel = panels(truck)[0]
    u, v, values = gainmap.sample(truck, panel, extent(solids(truck), SIDE))
    point = np.array([[u[30], 0.0, v[12]]])
    expected = np.degrees(mass_derivative(truck, 0.0, point)[0]) * 0.010
    assert values[12, 30] == pytest.approx(expected, rel=1e-12)


def test_field_changes_sign_on_the_wedge_line(truck):
    u, v, values = gainmap.sample(truck, panels(truck)[0], extent(solids(truck), SIDE))
    (x0, z0), (x1, z1) = wedge_lines(truck)[0]
    across, up = np.meshgrid(u, v)
    under = (x1 - x0) * (up - z0) - (z1 - z0) * (across - x0) < 0
    assert np.array_equal(values > 0, under)


def test_rear_view_field_is_as_seen_from_behind(truck):
    asked = []

    def gain(points):
        asked.append(points)
        return points[:, 1]

    panel = gainmap.Panel("y", "rear", gain)
    _, _, values = gainmap.sample(truck, panel, extent(solids(truck), SIDE))
    assert values[0, 0] > 0 > values[0, -1]  # the page's left is the truck's left
    assert np.all(asked[0][:, 0] == whole(truck).cg[0])


def test_gain_map_is_legible_and_the_same_each_time(truck):
    made = gainmap.draw_gainmap(truck, panels(truck))
    assert overlaps(made) == []
    assert clipped(made) == []
    assert render(made, "svg") == render(gainmap.draw_gainmap(truck, panels(truck)), "svg")


@settings(max_examples=100, deadline=None)
@given(st.lists(st.tuples(st.integers(0, 20), st.integers(0, 20)), min_size=1, max_size=30))
def test_front_is_what_nothing_beats(points):
    cost, gain = np.array(points, dtype=float).T
    found = set(front.on_front(cost, gain))
    for i in range(len(cost)):
        beaten = np.any(
            (cost <= cost[i]) & (gain >= gain[i]) & ((cost < cost[i]) | (gain > gain[i]))
        )
        twin = any(cost[j] == cost[i] and gain[j] == gain[i] for j in found)
        assert (i in found) or beaten or twin
        assert not (i in found and beaten)


def choices():
    rng = np.random.default_rng(3)
    cost = rng.integers(0, 180, 60).astype(float)
    cost[0] = 0.0
    gain = 37 + 5 * (1 - np.exp(-cost / 70)) * rng.uniform(0.3, 1.0, 60)
    names = tuple(f"brass on housings and knuckles, pack {i} lower by a deck" for i in range(60))
    best = int(front.on_front(cost, gain)[-2])
    return front.Choices(cost, gain, np.full(60, 0.2), names, "money", "degrees", 0, best)


def test_front_shows_every_choice(truck):
    made = front.draw_front(choices(), "money against degrees")
    assert drawn(made, "all") == pytest.approx(np.column_stack([choices().cost, choices().gain]))


def test_front_names_do_not_overlap_and_fit():
    made = front.draw_front(choices(), "money against degrees")
    assert overlaps(made) == []
    assert clipped(made) == []
    assert any("…" in t for t, _ in texts(made))


def sweep(grip):
    x, y = np.linspace(150, 220, 30), np.linspace(80, 140, 25)
    tip = np.degrees(np.arctan(x[None, :] / (2 * y[:, None])))
    slide = np.full_like(tip, np.degrees(np.arctan(grip)))
    return maps.MapPanel(f"grip {grip}", x, y, tip, slide, (170.0, 110.0))


@pytest.mark.parametrize("grips", [(0.8,), (0.6, 0.8, 1.0, 1.2), (0.5, 0.6, 0.7, 0.8, 0.9, 1.0)])
def test_maps_are_clipped_nowhere(grips):
    made = maps.draw_maps("Track", "track, mm", "CG height, mm", [sweep(g) for g in grips])
    assert clipped(made) == []
    assert len(made.axes) == len(grips) + 1


def test_frontier_lies_where_tip_and_slide_agree():
    panel = sweep(0.8)
    made = maps.draw_maps("Track", "track, mm", "CG height, mm", [panel])
    (line,) = [
        c
        for c in made.axes[0].collections
        if len(getattr(c, "levels", ())) == 1 and c.get_linewidth()[0] == pytest.approx(1.8)
    ]
    points = np.concatenate([p.vertices for p in line.get_paths() if len(p.vertices)])
    assert len(points) > 5
    assert points[:, 0] / (2 * points[:, 1]) == pytest.approx(0.8, abs=2e-3)


def test_levels_are_round_and_hold_all():
    levels = maps.contour_levels(np.array([31.2, 44.9, np.nan]))
    assert levels[0] <= 31.2
    assert levels[-1] >= 44.9
    assert len(levels) <= 11


def test_maps_with_holes_and_without_sliding_are_drawn():
    panel = sweep(0.8)
    tip = panel.values.copy()
    tip[:4, :4] = np.nan
    bare = maps.MapPanel("holes", panel.x, panel.y, tip)
    made = maps.draw_maps("Track", "track, mm", "CG height, mm", [bare])
    assert not any("slides" in t for t, _ in texts(made))
