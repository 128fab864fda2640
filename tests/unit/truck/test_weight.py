"""The weigh-in: loads, uncertainties, influences, clearance angles, completeness."""

from __future__ import annotations

from math import atan, degrees, pi, radians

import numpy as np
import pytest
from spec_text import SAMPLE, changed, load

from crossfall.truck.build import load_truck
from crossfall.truck.clearance import clearance_angles, touching_slope
from crossfall.truck.complete import completeness
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY
from crossfall.truck.ride import level_axle_loads, tyre_loads
from crossfall.truck.uncertain import quantile, varied
from crossfall.truck.weight import influences, sensitivities, weigh_truck
from support import with_masses, with_shifts


@pytest.fixture(scope="module")
def truck(tmp_path_factory):
    return load(tmp_path_factory.mktemp("weigh")).truck


def test_the_loads_add_up(truck):
    found = weigh_truck(truck)
    assert found.axle_loads.sum() == pytest.approx(found.mass * GRAVITY)
    assert found.tyre_loads.sum() == pytest.approx(found.mass * GRAVITY)
    np.testing.assert_allclose(found.tyre_loads.reshape(2, 2).sum(axis=1), found.axle_loads)
    assert found.sprung + found.unsprung.sum() == pytest.approx(found.mass)
    assert found.front_share == pytest.approx(found.axle_loads[0] / found.axle_loads.sum())


def test_moments_about_the_ground_vanish(truck):
    found = weigh_truck(truck)
    places = [
        (a.x, side * a.track / 2) for a in truck.axles for side in (1, -1)
    ]  # front left first
    centre = found.tyre_loads @ np.array(places) / found.tyre_loads.sum()
    np.testing.assert_allclose(centre, found.cg[:2], atol=1e-12)


def test_derivatives_agree_with_differences():
    truck = load_truck("bramble").truck
    slopes = sensitivities(truck)

    def results(changed):
        body = whole(changed)
        return np.concatenate(
            [[body.mass], body.cg, level_axle_loads(changed), tyre_loads(changed)]
        )

    exact = np.concatenate([slopes.mass, slopes.cg, slopes.axle_loads, slopes.tyre_loads])
    names = [p.row for p in truck.parts]
    for row in (0, 5, 10, 21, 34, 40, 44, 49):
        mass = truck.parts[names.index(row)].body.mass
        step = 1e-5
        for q in range(4):
            ends = []
            for sign in (1, -1):
                if q == 0:
                    ends.append(results(with_masses(truck, {row: mass + sign * step})))
                else:
                    shift = np.zeros(3)
                    shift[q - 1] = sign * step
                    ends.append(results(with_shifts(truck, {row: shift})))
            difference = (ends[0] - ends[1]) / (2 * step)
            np.testing.assert_allclose(exact[:, row, q], difference, rtol=1e-6, atol=1e-7)


def test_uncertainty_agrees_with_drawing_at_random(truck):
    found, slopes = weigh_truck(truck), sensitivities(truck)
    rng = np.random.default_rng(4)
    rows = range(slopes.sd.shape[0])
    first = {p.row: p for p in reversed(truck.parts)}
    draws = []
    for _ in range(600):
        error = rng.uniform(-1, 1, slopes.sd.shape) * np.sqrt(3) * slopes.sd
        changed = with_masses(truck, {r: first[r].body.mass + error[r, 0] for r in rows})
        changed = with_shifts(changed, {r: error[r, 1:] for r in rows})
        chances = enumerate(rng.uniform(size=len(truck.uncertain)))
        changed = varied(changed, {i: float(quantile(truck.uncertain[i], u)) for i, u in chances})
        draws.append([*whole(changed).cg, *tyre_loads(changed)])
    spread = np.std(draws, axis=0)
    # 600 draws know a standard deviation to 2.9 %: five of those.
    np.testing.assert_allclose(spread, [*found.cg_sd, *found.tyre_loads_sd], rtol=0.145)


def test_mirrored_pieces_cancel_across():
    exact = "place_mm = 0\nwheelbase_mm = 0\ntrack_mm = 0\nradius_mm = 0"
    plain = changed(("mass_percent = 2", "mass_percent = 0"), ("place_mm = 2", exact))
    text = plain.replace("turn_deg = [15, 0, 0]", "place_tol_mm = 5")
    text = text.replace("mass_tol_g = 1\nplace_tol_mm = 3\n", "")
    import tomllib

    from crossfall.truck.build import build
    from crossfall.truck.schema import TruckSpec

    truck, _ = build(TruckSpec.model_validate(tomllib.loads(text)))
    sd = weigh_truck(truck).cg_sd
    assert sd[1] == pytest.approx(0.0, abs=1e-12)
    assert sd[0] == pytest.approx(sd[2])
    assert sd[2] > 0


def test_influences_sum_to_nothing_and_tell_what_removal_does(truck):
    found = influences(truck)
    assert sum(i.pull for i in found) == pytest.approx(0.0, abs=1e-12)
    pulls = [abs(i.pull) for i in found]
    assert pulls == sorted(pulls, reverse=True)
    body = whole(truck)
    cover = next(i for i in found if i.name == "cover")
    height = (body.mass * body.cg[2] - cover.mass * cover.height) / (body.mass - cover.mass)
    assert cover.without == pytest.approx(height - body.cg[2])


@pytest.mark.parametrize("slope", [5.0, 20.0, 40.0, 60.0, 75.0])
def test_a_point_on_a_tangent_plane_gives_its_slope(slope):
    a, r = radians(slope), 0.057
    touch = r * np.array([np.sin(a), -np.cos(a)])
    point = touch + 0.08 * np.array([np.cos(a), np.sin(a)])
    assert touching_slope(*point, r) == pytest.approx(a, rel=1e-12)


def test_limits_of_the_touching_plane():
    assert touching_slope(0.10, -0.057, 0.057) == pytest.approx(0.0, abs=1e-12)  # on the ground
    assert touching_slope(0.03, 0.01, 0.057) == pi / 2  # inside the tyre
    assert touching_slope(-0.10, 0.0, 0.057) == pi / 2  # behind the axle
    assert touching_slope(0.05, 0.5, 0.057) == pi / 2  # high above it
    # With the wheel shrunk to a point on the ground it is the plain triangle.
    assert touching_slope(0.1, 0.05, 1e-12) == pytest.approx(atan(0.5))


def test_breakover_of_a_belly_on_the_line_of_the_tyres_is_nothing(truck):
    from dataclasses import replace

    low = replace(truck.clearance, belly=(0.0, 0.0))
    flat = clearance_angles(replace(truck, clearance=low))
    assert flat.breakover == pytest.approx(0.0, abs=1e-9)
    # With wheels as points it is 2 atan(2 c / L), the usual rule of thumb (from memory).
    high = replace(truck.clearance, belly=(0.0, 0.03))
    small = [replace(a, tyre=replace(a.tyre, radius=1e-9)) for a in truck.axles]
    point = clearance_angles(replace(truck, clearance=high, front=small[0], rear=small[1]))
    expected = 2 * degrees(atan(2 * 0.03 / truck.wheelbase))
    assert degrees(point.breakover) == pytest.approx(expected, rel=1e-6)


def test_no_clearance_points_no_angles(tmp_path):
    start, end = SAMPLE.index("[clearance]"), SAMPLE.index("[battery]")
    loaded = load(tmp_path, SAMPLE[:start] + SAMPLE[end:])
    assert weigh_truck(loaded.truck).clearance is None
    missing = dict(completeness(loaded.truck, loaded.spec).missing)
    assert list(missing) == ["clearance"]


def test_completeness_counts_mass(tmp_path):
    loaded = load(tmp_path)
    found = completeness(loaded.truck, loaded.spec)
    weighed = (1500 + 250 + 4 * 150) / 1e3
    assert found.weighed == pytest.approx(weighed / whole(loaded.truck).mass)
    assert found.weighed + found.computed == pytest.approx(1.0)
    assert found.toleranced == pytest.approx(1.0)
    assert found.no_tolerance == ()
    assert found.no_price == ("frame", "pack", "cover", "axle tube", "link", "wheel")
    assert found.notes == ()
    (ratio,) = found.assumptions
    assert "not measured: 0.6 is taken, 0.3 to 1" in ratio
    assert "front and rear track ±1 mm" in found.default_tolerances
    assert "front and rear tyre vertical stiffness ±20 %" in found.default_tolerances


def test_a_tolerance_in_which_the_truck_falls_over_is_remarked_on(tmp_path):
    soft = changed(
        ("spring_n_per_mm = 0.2\n", "spring_n_per_mm = 0.2\nspring_tol_n_per_mm = 0.19\n")
    )
    loaded = load(tmp_path, soft)
    (note,) = completeness(loaded.truck, loaded.spec).notes
    assert note.startswith("front spring rate: at 0.01 N/mm")
    assert "cannot hold" in note


def test_without_a_default_tolerance_parts_are_named(tmp_path):
    start, end = SAMPLE.index("[tolerance]"), SAMPLE.index("[materials")
    loaded = load(tmp_path, SAMPLE[:start] + SAMPLE[end:])
    found = completeness(loaded.truck, loaded.spec)
    assert found.no_tolerance == ("frame", "cover", "axle tube", "link", "wheel")
    assert found.toleranced == pytest.approx(0.250 / whole(loaded.truck).mass)
    assert found.default_tolerances[-2:] == ("mass of a part ±5 %", "place of a part ±3 mm")


def test_slack_springs_are_remarked_on(tmp_path):
    text = changed(("droop_mm = 15", "droop_mm = 45"), ("bump_mm = 20\ndroop_mm = 15\nheave",
                   "bump_mm = 20\ndroop_mm = 15\nlocked = true\nheave"))  # fmt: skip
    loaded = load(tmp_path, text)
    slack, locked = completeness(loaded.truck, loaded.spec).notes
    assert "go slack" in slack
    assert "locked" in locked
