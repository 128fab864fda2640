"""Gain map and front of the demo truck bramble and its demo changes, as the verbs draw them."""

from __future__ import annotations

import numpy as np
import pytest
from looks import clipped, drawn, least_size, overlaps, texts

from crossfall.show.drawings import extent
from crossfall.show.front import Choices, draw_front, on_front
from crossfall.show.gainmap import DEG_PER_10G, draw_gainmap, sample
from crossfall.show.silhouette import REAR, SIDE, solids
from crossfall.show.style import SMALL
from crossfall.statics.rigid import wedge_lines
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.massprops import whole
from crossfall.tuning.changes import read_changes
from crossfall.tuning.gains import gradients
from crossfall.tuning.whatif import rank_changes
from crossfall.verbs.gains import PANELS, panels

CLIMB = 1  # of directions.DIRECTIONS
NAMES = [name for name, *_ in PANELS]


@pytest.fixture(scope="module")
def bramble():
    return load_truck("bramble")


@pytest.fixture(scope="module")
def gains(bramble):
    return gradients(bramble, everywhere=False)


def test_gain_map_of_eight_panels_is_legible(bramble, gains):
    made = draw_gainmap(bramble.truck, panels(gains))
    assert overlaps(made) == []
    assert clipped(made) == []
    assert least_size(made) >= SMALL
    words = [t for t, _ in texts(made)]
    assert sorted(w for w in words if w in NAMES) == sorted(NAMES)


@pytest.mark.parametrize("which", [0, 2, 4])
def test_drawn_field_is_the_derivative_of_the_weaker_direction(bramble, gains, which):
    """By hand from the gradients: where directions are taken at once, the least of them counts."""
    panel = panels(gains)[which]
    view = SIDE if panel.view == "side" else REAR
    u, v, values = sample(bramble.truck, panel, extent(solids(bramble.truck), view))
    i, j = len(v) // 4, len(u) // 3
    # In the rear view a gram counts as at the x of the whole truck's CG, seen from behind.
    place = (u[j], 0.0, v[i]) if view is SIDE else (whole(bramble.truck).cg[0], -u[j], v[i])
    headings = {0: [0], 2: [0, 2], 4: [1]}[which]
    slopes = gains.slopes.per_mass("chassis", np.array([place]))[headings, 0]
    assert values[i, j] == pytest.approx(DEG_PER_10G * slopes.min(), rel=1e-9)


def test_rigid_climb_field_of_the_demo_changes_sign_on_its_wedge_line(bramble):
    panel = panels(gradients(bramble, "rigid"))[0]
    u, v, values = sample(bramble.truck, panel, extent(solids(bramble.truck), SIDE))
    (x0, z0), (x1, z1) = wedge_lines(bramble.truck)[0]
    across, up = np.meshgrid(u, v)
    under = (x1 - x0) * (up - z0) - (z1 - z0) * (across - x0) < 0
    assert np.array_equal(values > 0, under)


@pytest.fixture(scope="module")
def choices(bramble):
    """Every change alone: what it weighs and what becomes of the climb."""
    catalogue = read_changes(demo_folder() / "bramble.changes.toml")
    found = rank_changes(bramble, catalogue, "climb").outcomes
    climb = np.degrees([o.angle[CLIMB] for o in found])
    return Choices(
        np.array([1e3 * o.side.mass for o in found]),
        climb,
        np.degrees([o.gain_sd[CLIMB] for o in found]),
        tuple(catalogue.changes[o.change].label for o in found),
        "added, g",
        "climb, degrees",
        best=int(np.argmax(climb)),
    )


def test_front_of_the_demo_changes_is_legible_and_complete(choices):
    made = draw_front(choices, "bramble: degrees for grams")
    assert overlaps(made) == []
    assert clipped(made) == []
    assert drawn(made, "all") == pytest.approx(np.column_stack([choices.cost, choices.gain]))


def test_front_of_the_demo_changes_names_its_ends(choices):
    words = " ".join(t for t, _ in texts(draw_front(choices, "bramble")))
    front = on_front(choices.cost, choices.gain)
    assert len(front) >= 2
    assert choices.gain[front[-1]] == choices.gain.max()
    for end in (front[0], front[-1]):
        assert choices.names[end][:12] in words
