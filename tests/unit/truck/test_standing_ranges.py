"""How sure the newer numbers are: each may be out, is varied as an edited file would have it, and
moves the answer or is told not to."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_angles
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.complete import assumptions
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck, UncertainInput
from crossfall.truck.steering import steering
from crossfall.truck.tolerances import reason
from crossfall.truck.uncertain import varied
from linked_files import linked, on_whole_shocks


def edited(loaded: Loaded, **keys: object) -> Truck:
    values = {k.replace("__", "."): v for k, v in keys.items()}
    return build(set_values(loaded.spec, values), loaded.folder)[0]


def of(truck: Truck, words: str) -> tuple[int, UncertainInput]:
    (found,) = [(i, one) for i, one in enumerate(truck.uncertain) if words in one.name]
    return found


def tip(truck: Truck, heading: float) -> float:
    return float(np.degrees(tip_angles(truck, np.radians([heading]), 1.5).free[0]))


MOTOR = {"chassis__held_by": "motor"}
TURNED = {"chassis__steer_deg": -30.0}


def test_an_assumed_axle_ratio_is_an_input_and_a_counted_one_is_exact() -> None:
    loaded = load_truck("bramble")
    truck = edited(loaded, **MOTOR)
    number, one = of(truck, "turns of a wheel")
    assert (one.basis, one.shape) == ("assumed", "triangular")
    assert "axles" in reason(one)
    steep = edited(loaded, chassis__axle_ratio=4.0, **MOTOR)
    assert varied(truck, {number: one.low}).rear.shaft == pytest.approx(steep.rear.shaft)
    assert varied(truck, {number: one.low}).front.shaft == pytest.approx(steep.front.shaft)
    assert not [o for o in steep.uncertain if "turns of a wheel" in o.name]
    assert any("turns of a wheel" in said for said in assumptions(truck))


@pytest.mark.parametrize(
    ("words", "key", "by"),
    [
        ("angle of the front", "chassis__steer_deg", 2.0),
        ("kingpins", "front__kingpin_offset_mm", 2),
    ],
)
def test_turned_wheels_are_as_sure_as_their_angle_and_offset(words, key, by) -> None:
    loaded = load_truck("bramble")
    given = {"chassis__steer_deg": -30.0, "front__kingpin_offset_mm": 24.0}
    truck = edited(loaded, **given)
    assert steering(truck.front) == pytest.approx((math.radians(-30.0), 0.024))
    number, one = of(truck, words)
    assert one.basis == "default"
    other = edited(loaded, **given | {key: given[key] + by})
    seen = varied(truck, {number: one.high})
    np.testing.assert_allclose(seen.front.hubs, other.front.hubs, atol=1e-12)
    exact = edited(loaded, tolerance__steer_deg=0, tolerance__kingpin_offset_mm=0, **given)
    assert not [o for o in exact.uncertain if "steered" in o.fields[0]]


def test_an_assumed_kingpin_offset_is_wide() -> None:
    _, one = of(edited(load_truck("bramble"), **TURNED), "kingpins")
    assert (one.low, one.likely, one.high) == pytest.approx((0.010, 0.020, 0.030))
    assert one.basis == "assumed"
    assert "knuckles" in reason(one)


@pytest.mark.parametrize("end", ["chassis", "axle"])
def test_shock_ends_are_varied_as_an_edited_file_has_them(end: str) -> None:
    loaded = linked("bramble", shocks=True)
    truck = loaded.truck
    number, one = of(truck, f"rear shocks, how far out their {end} ends")
    assert one.high - one.low == pytest.approx(0.002)
    (row,) = [i for i, p in enumerate(loaded.spec.part) if p.name == "rear shock"]
    key, part = f"{end}_end_mm", loaded.spec.part[row]
    place = list(getattr(part, key))
    place[1] += 1.0
    wide = part.model_copy(update={key: tuple(place)})
    parts = (*loaded.spec.part[:row], wide, *loaded.spec.part[row + 1 :])
    other, _ = build(loaded.spec.model_copy(update={"part": parts}), loaded.folder)
    seen = varied(truck, {number: one.high})
    springs, wanted = (t.rear.suspension.spring_spacing for t in (seen, other))
    assert springs == pytest.approx(wanted, rel=1e-5)  # the law's own accuracy
    assert abs(springs - truck.rear.suspension.spring_spacing) > 3e-4
    assert tip(seen, 90.0) == pytest.approx(tip(other, 90.0), abs=0.01)  # its mass moved, too


def test_how_high_it_stands_is_as_sure_as_its_collars() -> None:
    """A collar half a millimetre further lifts the truck: by first order, as the file has it."""
    loaded = on_whole_shocks(preload_mm=2.0)
    truck = loaded.truck
    number, one = of(truck, "rear, how high it stands")
    further = edited(loaded, rear__suspension__preload_mm=2.5)
    rise = 0.5e-3  # m along the shock; the springs are two in a row, and give what they did before
    seen = varied(truck, {number: rise * rise_for(truck)})
    for value, wanted in zip(whole(seen).cg, whole(further).cg, strict=True):
        assert value == pytest.approx(wanted, abs=5e-5)  # m; by first order
    for heading in (0.0, 90.0):
        moved = tip(further, heading) - tip(truck, heading)
        assert tip(seen, heading) - tip(truck, heading) == pytest.approx(moved, abs=0.02)
    assert one.high > rise
    droop = seen.rear.suspension.droop - truck.rear.suspension.droop
    assert droop == pytest.approx(-rise, abs=2e-5)


def rise_for(truck: Truck) -> float:
    from crossfall.truck.axle_law import law_of

    return 1 / float(law_of(truck.rear).ratios()[0, 0])


CASES = {
    "turns of a wheel": (load_truck, MOTOR, 0.0),
    "angle of the front": (load_truck, TURNED, 90.0),
    "kingpins": (load_truck, TURNED, 90.0),
    "rear shocks, how far out their axle": (linked, {}, 90.0),
    "rear shocks, how far out their chassis": (linked, {}, 90.0),
    "front droop": (on_whole_shocks, {}, 90.0),
    "rear, how high": (on_whole_shocks, {"preload_mm": 2.0}, 90.0),
}


BARELY = ("rear shocks, how far out their chassis",)  # which only turns them about their lower ends


@pytest.mark.parametrize("words", CASES)
def test_each_is_among_what_the_range_hangs_on(words: str) -> None:
    make, keys, heading = CASES[words]
    if make is load_truck:
        truck = edited(load_truck("bramble"), **keys)
    elif make is linked:
        truck = linked("bramble", shocks=True).truck
    else:
        truck = on_whole_shocks(**keys).truck
    (seen,) = ranges(truck, conditions(truck, [math.radians(heading)], grip=1.5))[1]
    sd = {name: math.degrees(v) for name, v in seen.causes}
    (found,) = [v for name, v in sd.items() if words in name]
    assert (0.01 if words not in BARELY else 1e-4) < found < 2.0
