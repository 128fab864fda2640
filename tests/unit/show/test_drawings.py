"""The scale drawing: true to scale, nothing written over anything."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from looks import clipped, least_size, overlaps, texts

from crossfall.show import drawings
from crossfall.show.paper import Placement, label_places
from crossfall.show.silhouette import SIDE
from crossfall.show.style import MM_PER_INCH, SMALL, render
from crossfall.truck.build import load_truck
from crossfall.truck.clearance import clearance_angles
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck

DEMOS = ("bramble", "thistle", "burdock")


@pytest.fixture(scope="module", params=("sample", *DEMOS))
def shown(request, truck) -> Truck:
    return truck if request.param == "sample" else load_truck(request.param).truck


@pytest.fixture(scope="module")
def sheet(shown):
    return drawings.draw_truck(shown)


def test_no_text_over_another_and_none_off_the_page(sheet):
    assert overlaps(sheet) == []
    assert clipped(sheet) == []
    assert least_size(sheet) >= SMALL


def test_sheet_is_a4(sheet):
    assert sheet.get_size_inches() * MM_PER_INCH == pytest.approx([297.0, 210.0])


def test_wheelbase_on_paper_is_wheelbase_over_scale(sheet, shown):
    words = " ".join(t for t, _ in texts(sheet))
    scale = float(words.split("drawn 1:")[1].split(",")[0])
    axes = sheet.axes[0]
    feet = [
        line.get_xydata()[0]
        for line in axes.lines
        if line.get_marker() == "^" and len(line.get_xydata()) == 1
    ]
    mm = axes.transData.transform(feet) / sheet.dpi * MM_PER_INCH
    rear, front = mm[0], mm[1]  # the side view's tip lines are drawn first
    assert front[0] - rear[0] == pytest.approx(1000 * shown.wheelbase / scale, abs=0.01)
    assert front[1] == pytest.approx(rear[1], abs=1e-9)


def test_one_scale_both_ways():
    place = Placement(SIDE, (40.0, 30.0), 3.5)
    a, b, c = place.of(np.array([[0, 0, 0], [0.1, 0, 0], [0, 0, 0.1]]))
    assert b - a == pytest.approx([100 / 3.5, 0.0])
    assert c - a == pytest.approx([0.0, 100 / 3.5])


def test_numbers_written_are_the_trucks(sheet, shown):
    words = " ".join(t for t, _ in texts(sheet))
    body = whole(shown)
    assert f"wheelbase {1000 * shown.wheelbase:.1f}" in words
    assert f"CG {1000 * body.cg[2]:.1f}" in words
    assert f"{1000 * body.mass:.0f} g" in words


def test_heaviest_names_count_copies_once(truck):
    items = drawings.heaviest(truck, Placement(SIDE, (0.0, 0.0), 3.0))
    words = [text for _, _, text in items]
    assert words[0] == "hard body\n640 g"
    assert words[1] == "4 x tyre\n352 g"
    assert len(words) == len(set(words)) == 10


def test_a_name_is_never_taken_for_a_formula(truck):
    made = drawings.draw_truck(replace(truck, name="50 $ \\frac{ crawler $"))
    (said,) = [t for t in made.texts if "crawler" in t.get_text()]
    assert not said.get_parse_math()
    assert render(made, "svg")


def test_truck_without_parts_or_clearance_is_drawn(bare):
    made = drawings.draw_truck(bare)
    assert overlaps(made) == []
    assert not any("approach" in t for t, _ in texts(made))


def test_same_sheet_same_bytes(truck):
    first, again = (render(drawings.draw_truck(truck), "svg") for _ in range(2))
    assert first == again


def test_clearance_lines_touch_the_tyre_and_pass_the_point(truck):
    for axle, point, sign in (
        (truck.front, truck.clearance.nose, 1.0),
        (truck.rear, truck.clearance.tail, -1.0),
        (truck.front, truck.clearance.belly, -1.0),
    ):
        angle = drawings.ramp(axle, point, sign)
        start = drawings.touch(axle, angle, sign)
        hub = np.array([axle.x, axle.tyre.radius])
        along = np.array([sign * np.cos(angle), np.sin(angle)])
        assert np.hypot(*(start - hub)) == pytest.approx(axle.tyre.radius)
        assert (start - hub) @ along == pytest.approx(0.0, abs=1e-12)
        off = np.array(point) - start
        assert off[0] * along[1] - off[1] * along[0] == pytest.approx(0.0, abs=1e-12)


def test_clearance_angles_written_are_the_weigh_ins(sheet, shown):
    words = " ".join(t for t, _ in texts(sheet))
    angles = clearance_angles(shown)
    for name in ("approach", "departure", "breakover"):
        slope = np.degrees(getattr(angles, name))
        free = name != "breakover" and slope >= 90
        joint = " " if name == "breakover" else "\n"
        assert f"{name}{joint}{'over 90°' if free else f'{slope:.0f}°'}" in words


def test_point_on_the_ground_at_the_wheel_allows_no_slope(truck):
    assert drawings.ramp(truck.front, (0.4, 0.0), 1.0) == pytest.approx(0.0, abs=1e-12)


def test_nose_behind_the_tyre_says_the_tyre_comes_first(truck):
    short = replace(truck, clearance=replace(truck.clearance, nose=(0.16, 0.12)))
    assert any("over 90°" in t for t, _ in texts(drawings.draw_truck(short)))


@settings(max_examples=80, deadline=None)
@given(
    st.lists(st.tuples(st.floats(0, 200), st.floats(1, 15)), min_size=1, max_size=10),
)
def test_spread_labels_never_overlap_nor_leave_the_row(items):
    items = sorted(items)
    wanted, widths = [w for w, _ in items], [s for _, s in items]
    middles = label_places(wanted, widths, 0.0, 200.0)
    half = np.array(widths) / 2
    assert np.all(np.diff(middles) - half[:-1] - half[1:] > -1e-9)
    assert middles[0] - half[0] > -1e-9
    assert middles[-1] + half[-1] < 200.0 + 1e-9


def test_labels_with_room_stay_where_they_are_wanted():
    assert label_places([20.0, 60.0, 100.0], [10.0, 10.0, 10.0], 0.0, 200.0) == pytest.approx(
        [20.0, 60.0, 100.0]
    )
