"""What may be out in a truck: how far, on whose word, and the truck with other values."""

from __future__ import annotations

from dataclasses import replace
from math import radians

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from spec_text import SAMPLE, changed, load

from crossfall.truck.assemble import reassemble
from crossfall.truck.build import build, load_truck
from crossfall.truck.demos import demo_names
from crossfall.truck.digest import truck_digest
from crossfall.truck.edits import set_value, set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import TANGENTIAL_RATIO, Truck, UncertainInput
from crossfall.truck.schema import TruckSpec
from crossfall.truck.tolerances import DEFAULTS, reason
from crossfall.truck.uncertain import mean, quantile, sd, shown, varied
from support import make_truck, with_masses

# A link's mass given: by material it would follow its length, which varying leaves as it is.
WEIGHED = changed(('material = "steel"\n', "mass_g = 9\n"))
MEASURED = changed(
    ("stiffness_n_per_mm = 5\n", "stiffness_n_per_mm = 5\nlateral_n_per_mm = 4\n"),
    ("anti_dive_percent = 10", "anti_dive_percent = 10\nanti_roll_n_mm_per_deg = 6"),
    text=WEIGHED,
)
KEYS = {  # the file's key of each input
    "wheelbase": "chassis.wheelbase_mm",
    "track": "track_mm",
    "tyre radius": "tyre.radius_mm",
    "tyre contact half-width": "tyre.contact_half_width_mm",
    "tyre vertical stiffness": "tyre.stiffness_n_per_mm",
    "tyre lateral stiffness": "tyre.lateral_n_per_mm",
    "tyre longitudinal stiffness": "tyre.longitudinal_n_per_mm",
    "spring rate": "suspension.spring_n_per_mm",
    "spring spacing": "suspension.spring_spacing_mm",
    "roll centre": "suspension.roll_centre_mm",
    "bump travel": "suspension.bump_mm",
    "droop travel": "suspension.droop_mm",
    "anti-roll bar": "suspension.anti_roll_n_mm_per_deg",
    "anti-dive, lean of the heave axis": "suspension.heave_lean_deg",
    "anti-squat, lean of the heave axis": "suspension.heave_lean_deg",
}


def sample(text: str = WEIGHED) -> tuple[Truck, TruckSpec]:
    import tomllib

    spec = TruckSpec.model_validate(tomllib.loads(text))
    return build(spec)[0], spec


def key_of(one: UncertainInput) -> str:
    end, _, rest = one.name.partition(" ")
    return f"{end}.{KEYS[rest]}" if end in ("front", "rear") else KEYS[one.name]


def named(truck: Truck, name: str) -> int:
    return [one.name for one in truck.uncertain].index(name)


def numbers(truck: Truck) -> np.ndarray:
    """Every number of the axles but their bodies."""
    found = []
    for a in truck.axles:
        t, s = a.tyre, a.suspension
        found += [a.x, a.track, t.radius, t.contact_half_width, t.stiffness, t.lateral]
        found += [t.longitudinal, s.spring_rate, s.spring_spacing, s.roll_centre_height, s.bump]
        found += [s.droop, s.anti_roll, s.heave_lean]
    return np.array(found)


def bodies(truck: Truck) -> list:
    return [truck.chassis, *(b for a in truck.axles for b in (a.body, *a.wheels))]


def one_by_one(text: str) -> list[tuple[str, int]]:
    truck, _ = sample(text)
    return [(o.name, sign) for o in truck.uncertain for sign in (-1, 1) if o.unit != "1"]


@pytest.mark.parametrize(("name", "sign"), one_by_one(MEASURED))
def test_a_varied_truck_is_the_one_that_a_changed_file_gives(name, sign):
    truck, spec = sample(MEASURED)
    number = named(truck, name)
    one = truck.uncertain[number]
    _, low, _, high = shown(one)
    value = low if sign < 0 else high
    quick = varied(truck, {number: one.low if sign < 0 else one.high})
    edits = {key_of(one): value}
    if name.startswith("front anti-dive"):  # the percentage gives way to the lean
        edits = {"front.suspension.anti_dive_percent": None, **edits}
    # What is worked out from another height and wheelbase is not varied along.
    keep = {} if "anti-dive" in name else {
        "front.suspension.anti_dive_percent": None,
        "front.suspension.heave_lean_deg": np.degrees(truck.front.suspension.heave_lean),
    }  # fmt: skip
    slow, _ = build(set_values(spec, {**keep, **edits}))
    np.testing.assert_allclose(numbers(quick), numbers(slow), rtol=1e-12, atol=1e-15)
    for a, b in zip(bodies(quick), bodies(slow), strict=True):
        assert a.mass == pytest.approx(b.mass, rel=1e-12)
        np.testing.assert_allclose(a.cg, b.cg, atol=1e-12)
        # A link turns a little: the square of a millimetre over its length, of a part's inertia.
        np.testing.assert_allclose(a.inertia, b.inertia, rtol=1e-3, atol=1e-3 * a.inertia.max())
    for p, q in zip(quick.parts, slow.parts, strict=True):
        np.testing.assert_allclose(p.centre, q.centre, atol=1e-12)
        np.testing.assert_allclose(p.body.cg, q.body.cg, atol=1e-12)


@pytest.mark.parametrize("name", demo_names())
def test_at_the_likely_values_it_is_the_same_truck(name):
    truck = load_truck(name).truck
    everything = {i: one.likely for i, one in enumerate(truck.uncertain)}
    assert truck_digest(varied(truck, everything)) == truck_digest(truck)


@settings(max_examples=30, deadline=None)
@given(st.data())
def test_changes_at_once_are_the_changes_one_by_one(data):
    truck, _ = sample(MEASURED)
    chances = data.draw(st.dictionaries(st.integers(0, len(truck.uncertain) - 1), st.floats(0, 1)))
    changes = {i: float(quantile(truck.uncertain[i], u)) for i, u in chances.items()}
    together = varied(truck, changes)
    apart = truck
    for i, value in changes.items():
        apart = varied(apart, {i: value})
    np.testing.assert_allclose(numbers(together), numbers(apart), rtol=1e-12, atol=1e-15)
    for a, b in zip(bodies(together), bodies(apart), strict=True):
        np.testing.assert_allclose(a.cg, b.cg, atol=1e-12)
    # Its parts tell the same as its bodies, so that they may be reweighed and moved in turn.
    for a, b in zip(bodies(together), bodies(reassemble(together, together.parts)), strict=True):
        np.testing.assert_allclose(a.cg, b.cg, atol=1e-12)
        np.testing.assert_allclose(a.inertia, b.inertia, atol=1e-12)


def test_reweighing_and_varying_come_to_the_same_in_any_order():
    truck, _ = sample()
    changes = {named(truck, "wheelbase"): 0.314, named(truck, "rear track"): 0.171}
    row = next(p.row for p in truck.parts if p.carrier == "rear left")
    first = varied(with_masses(truck, {row: 0.2}), changes)
    last = with_masses(varied(truck, changes), {row: 0.2})
    np.testing.assert_allclose(whole(first).cg, whole(last).cg, atol=1e-12)
    assert first.rear.wheels[0].cg[1] == pytest.approx(truck.rear.wheels[0].cg[1] - 0.0005)


def test_a_truck_changed_since_keeps_its_changes():
    truck, _ = sample()
    stiff = replace(
        truck, front=replace(truck.front, tyre=replace(truck.front.tyre, stiffness=1e9))
    )
    number = named(truck, "front tyre vertical stiffness")
    one = truck.uncertain[number]
    soft = varied(stiff, {number: one.low})
    assert soft.front.tyre.stiffness == pytest.approx(1e9 * one.low / one.likely)


def test_a_truck_made_by_hand_has_none_and_moves_its_bodies_if_it_is_given_some():
    truck = make_truck()
    assert truck.uncertain == ()
    assert varied(truck, {}) is truck
    wide = UncertainInput(
        "front track", "m", 0.169, 0.17, 0.171, "rectangular", "default", ("front.track",)
    )
    moved = varied(replace(truck, uncertain=(wide,)), {0: 0.171})
    assert moved.front.track == pytest.approx(0.171)
    for side, before, after in zip((1, -1), truck.front.wheels, moved.front.wheels, strict=True):
        np.testing.assert_allclose(after.cg - before.cg, [0, side * 0.0005, 0], atol=1e-15)


def test_tyres_nobody_measured_along_the_ground_share_one_ratio():
    truck, _ = sample(MEASURED)  # front lateral is measured
    ratio = truck.uncertain[-1]
    assert (ratio.low, ratio.likely, ratio.high) == TANGENTIAL_RATIO
    assert (ratio.shape, ratio.basis) == ("triangular", "assumed")
    low = varied(truck, {len(truck.uncertain) - 1: ratio.low})
    for axle in low.axles:
        assert axle.tyre.longitudinal == pytest.approx(0.3 * axle.tyre.stiffness)
    assert low.rear.tyre.lateral == pytest.approx(0.3 * low.rear.tyre.stiffness)
    assert low.front.tyre.lateral == 4000.0
    # The vertical stiffness carries along what is only known as a share of it.
    soft = varied(truck, {named(truck, "front tyre vertical stiffness"): 4000.0})
    assert soft.front.tyre.longitudinal == pytest.approx(0.6 * 4000.0)
    assert soft.front.tyre.lateral == 4000.0
    assert soft.rear.tyre == truck.rear.tyre


def test_with_everything_measured_nothing_is_assumed():
    text = changed(
        ("stiffness_n_per_mm = 5\n", "lateral_n_per_mm = 4\nlongitudinal_n_per_mm = 3\n"),
        ("stiffness_n_per_mm = 5\n", "lateral_n_per_mm = 4\nlongitudinal_n_per_mm = 3\n"),
        ("width_mm = 40\n", "width_mm = 40\nstiffness_n_per_mm = 5\n"),
    )
    start = text.rindex("width_mm = 40\ncontact")
    text = text[:start] + "stiffness_n_per_mm = 5\n" + text[start:]
    truck, _ = sample(text)
    assert "assumed" not in {one.basis for one in truck.uncertain}
    side = truck.uncertain[named(truck, "rear tyre lateral stiffness")]
    assert (side.low, side.high) == pytest.approx((0.85 * 4000, 1.15 * 4000))


def test_the_table_goes_before_the_general_and_that_before_the_default():
    truck, spec = sample()
    number = named(truck, "front track")

    def half(**values: float) -> tuple[float, str]:
        edited, _ = build(set_values(spec, {k.replace("__", "."): v for k, v in values.items()}))
        one = edited.uncertain[number]
        assert one.name == "front track"
        return pytest.approx(one.high - one.likely), one.basis

    assert half() == (DEFAULTS["track_mm"].value / 1e3, "default")
    assert half(tolerance__track_mm=3) == (0.003, "file")
    assert half(tolerance__track_mm=3, front__track_tol_mm=0.25) == (0.00025, "file")


def test_percentage_points_become_a_lean_to_first_order():
    truck, spec = sample()
    one = truck.uncertain[named(truck, "front anti-dive, lean of the heave axis")]
    likely = spec.front.suspension.anti_dive_percent
    for sign, end in ((-1, one.low), (1, one.high)):
        points = sign * DEFAULTS["lean_percent"].value
        key = "front.suspension.anti_dive_percent"
        exact = build(set_value(spec, key, likely + points))[0].front.suspension.heave_lean
        # The next term of atan is below the square of the step.
        step = end - one.likely
        assert end == pytest.approx(exact, abs=step**2)
    given = build(set_value(spec, "front.suspension.anti_dive_tol_percent", 15))[0]
    half = given.uncertain[named(given, one.name)]
    assert (half.high - half.low) == pytest.approx((one.high - one.low) / 2)
    plain = build(set_value(spec, "rear.suspension.heave_lean_tol_deg", 2))[0]
    lean = plain.uncertain[named(plain, "rear anti-squat, lean of the heave axis")]
    assert lean.high - lean.likely == pytest.approx(radians(2))


def test_what_cannot_be_out_is_left_out():
    truck, spec = sample()
    names = [one.name for one in truck.uncertain]
    assert "front anti-roll bar" not in names  # there is none
    locked, _ = build(set_value(spec, "rear.suspension.locked", True))
    assert not [o.name for o in locked.uncertain if "rear.suspension" in o.fields[0]]
    exact, _ = build(set_values(spec, {"tolerance.track_mm": 0, "chassis.wheelbase_tol_mm": 0}))
    left = [one.name for one in exact.uncertain]
    assert [n for n in names if n not in left] == ["wheelbase", "front track", "rear track"]


def test_a_tolerance_beyond_nothing_is_cut_there_on_both_sides():
    _, spec = sample()
    truck, _ = build(set_values(spec, {"front.suspension.droop_mm": 1}))
    droop = truck.uncertain[named(truck, "front droop travel")]
    assert (droop.low, droop.high) == pytest.approx((0.0, 0.002))


def test_parts_without_a_tolerance_have_one_by_default(tmp_path):
    start, end = SAMPLE.index("[tolerance]"), SAMPLE.index("[materials")
    truck = load(tmp_path, SAMPLE[:start] + SAMPLE[end:]).truck
    frame = truck.parts[0]
    share, place = DEFAULTS["mass_percent"].value / 100, DEFAULTS["place_mm"].value
    assert frame.mass_sd == pytest.approx(share * 1.5 / np.sqrt(3))
    assert frame.place_sd == pytest.approx(place * 1e-3 / np.sqrt(3))


def test_every_default_says_why_and_every_input_where_it_comes_from():
    assert all(len(d.why) > 20 for d in DEFAULTS.values())
    truck, _ = sample(MEASURED)
    assert all(reason(one) for one in truck.uncertain)
    given, _ = sample(MEASURED.replace("track_mm = 170", "track_mm = 170\ntrack_tol_mm = 1"))
    assert reason(given.uncertain[named(given, "front track")]) == ""


EVEN = UncertainInput("a", "m", 1.0, 2.0, 3.0, "rectangular", "file", ("wheelbase",))
PEAKED = UncertainInput("b", "1", 0.3, 0.6, 1.0, "triangular", "assumed", ("x",))


@pytest.mark.parametrize("one", [EVEN, PEAKED])
def test_quantiles_have_the_mean_and_spread_that_are_told(one):
    n = 20_000
    values = quantile(one, (np.arange(n) + 0.5) / n)
    # The midpoint rule on a monotone function is off by less than its whole rise over n.
    assert np.mean(values) == pytest.approx(mean(one), abs=(one.high - one.low) / n)
    assert np.std(values) == pytest.approx(sd(one), rel=1e-3)
    assert np.all(np.diff(values) > 0)
    np.testing.assert_allclose(quantile(one, [0.0, 1.0]), [one.low, one.high])
    assert quantile(one, np.zeros((2, 3))).shape == (2, 3)


def test_half_of_a_triangle_lies_where_its_area_says():
    left = (0.6 - 0.3) / (1.0 - 0.3)
    assert quantile(PEAKED, left) == pytest.approx(0.6)


def test_trucks_that_are_known_otherwise_are_told_apart():
    truck, spec = sample()
    surer, _ = build(set_value(spec, "front.track_tol_mm", 0.5))
    assert truck_digest(surer) != truck_digest(truck)


@pytest.mark.parametrize("key", ["rear.tyre.radius_mm", "front.tyre.radius_mm"])
def test_links_keep_their_ends_on_the_chassis_as_a_radius_varies(key):
    """They went up with the axle: the roll centre stood still, and the tip of bramble's climb had
    the wrong sign of it."""
    loaded, end = load_truck("bramble"), key.partition(".")[0]
    radius = getattr(loaded.truck, end).tyre.radius
    number = named(loaded.truck, f"{end} tyre radius")
    quick = varied(loaded.truck, {number: radius + 1e-3})
    slow, _ = build(set_values(loaded.spec, {key: 1e3 * radius + 1.0}), loaded.folder)
    for a, b in zip(quick.axles, slow.axles, strict=True):
        assert a.suspension.roll_centre_height == pytest.approx(b.suspension.roll_centre_height)
        assert a.suspension.heave_lean == pytest.approx(b.suspension.heave_lean)
        assert a.suspension.spring_spacing == pytest.approx(b.suspension.spring_spacing, abs=1e-7)
        np.testing.assert_allclose(a.suspension.links.chassis, b.suspension.links.chassis)
