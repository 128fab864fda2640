"""The gain map against finite differences of the full answers."""

from __future__ import annotations

from collections.abc import Callable
from math import pi

import numpy as np
import pytest

from crossfall.answers.tips import tip_angles
from crossfall.statics import rigid
from crossfall.statics.compliant_gradient import added
from crossfall.truck import edits
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.model import Array, Carrier, Truck
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.tuning import gains
from crossfall.tuning.directions import DIRECTIONS
from crossfall.tuning.gains import Gradients, PartGain, field, gradients, part_gains
from numbered_files import numbered
from support import with_masses, with_shifts

Answer = Callable[[Truck], Array]
PLACES: tuple[tuple[Carrier, tuple[float, float, float]], ...] = (
    ("chassis", (0.10, 0.02, 0.05)),
    ("chassis", (-0.15, -0.04, 0.20)),
    ("front axle", (0.15, 0.03, 0.06)),
    ("rear axle", (-0.16, 0.0, 0.05)),
    ("rear left", (-0.15, 0.09, 0.06)),
)


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture(scope="module")
def stiff(bramble: Loaded) -> Gradients:
    return gradients(bramble, "rigid")


@pytest.fixture(scope="module")
def found(bramble: Loaded) -> Gradients:
    return gradients(bramble, everywhere=False)


def of(found: Gradients, name: str) -> PartGain:
    return next(g for g in part_gains(found) if g.name == name)


def rigid_answer(found: Gradients) -> Answer:
    return lambda truck: rigid.tip_angle(truck, found.headings)


def slope(answer: Answer, truck: Truck, carrier: Carrier, place: Array, step: float) -> Array:
    """Central difference over a mass of +-step kg."""
    up, down = (answer(added(truck, carrier, place, m)) for m in (step, -step))
    return (up - down) / (2 * step)


@pytest.mark.parametrize(("carrier", "place"), PLACES)
def test_rigid_field_is_the_slope_of_the_answer(
    stiff: Gradients, carrier: Carrier, place: tuple[float, float, float]
) -> None:
    at = np.array(place)
    exact = stiff.slopes.per_mass(carrier, at[None])[:, 0]
    by_step = slope(rigid_answer(stiff), stiff.truck, carrier, at, 1e-4)
    np.testing.assert_allclose(by_step, exact, rtol=1e-6, atol=1e-7 * np.abs(exact).max())


@pytest.mark.parametrize("name", ["cab", "winch", "front knuckle", "rear lower link"])
def test_numbers_per_part_are_slopes_of_the_rigid_answer(stiff: Gradients, name: str) -> None:
    """10 g on the part, spread over its pieces, and the part moved along x, y and z."""
    truck, gain, answer = stiff.truck, of(stiff, name), rigid_answer(stiff)
    pieces = [p for p in truck.parts if p.row == gain.row]
    mass, step = pieces[0].body.mass, 1e-5
    up, down = (answer(with_masses(truck, {gain.row: mass + m})) for m in (step, -step))
    by_mass = ((up - down) / (2 * step * len(pieces)))[stiff.governing]
    np.testing.assert_allclose(by_mass, gain.per_mass, rtol=1e-6, atol=1e-9)
    for axis in range(3):
        shift = np.zeros(3)
        shift[axis] = 1e-6
        up, down = (answer(with_shifts(truck, {gain.row: s})) for s in (shift, -shift))
        by_move = ((up - down) / 2e-6)[stiff.governing]
        np.testing.assert_allclose(by_move, gain.per_move[:, axis], rtol=1e-5, atol=1e-8)


def test_rigid_truck_is_weakest_where_no_other_heading_is_weaker(stiff: Gradients) -> None:
    round_it = rigid.tip_angle(stiff.truck, np.radians(np.arange(0.0, 360.0, 0.1)))
    assert stiff.angles[gains.WEAKEST] == pytest.approx(round_it.min(), abs=1e-6)
    assert stiff.angles[gains.WEAKEST] <= round_it.min()


# With springs and tyres, against the answer to the edited file


def one_end(spec: TruckSpec, name: str) -> tuple[TruckSpec, str]:
    """A part of each axle as one of the front and one of the rear; and the front one's name."""
    row = edits.part_row(spec, name)
    old = spec.part[row]
    ends = {
        "each axle": ("front axle", "rear axle"),
        "every wheel": ("each front wheel", "each rear wheel"),
    }
    made = [
        PartSpec.model_validate(
            {**{k: getattr(old, k) for k in old.model_fields_set}, "name": f"{name} {on}", "on": on}
        )
        for on in ends[old.on]
    ]
    return edits.with_parts(spec, (*spec.part[:row], *made, *spec.part[row + 1 :])), made[0].name


def by_edit(loaded: Loaded, found: Gradients, spec: TruckSpec, key: str, step: float) -> Array:
    """(4,) rad, half the difference between the answers to a file whose value is a step more and
    less."""
    value = edits.get_value(spec, key)
    many = [build(edits.set_value(spec, key, value + s), loaded.folder)[0] for s in (step, -step)]
    tips = np.empty((2, 5))
    for railed in (False, True):
        at = np.flatnonzero((found.slides | (found.hold == "rail")) == railed)
        if len(at):
            hold = "rail" if railed else "brakes"
            tips[:, at] = tip_angles(many, found.headings[at], found.grip.likely, hold).free
    return np.asarray((tips[0] - tips[1]) / 2)[found.governing]


def close(told: Array, found: Array) -> None:
    """Degrees: within 1 % or 0.003."""
    np.testing.assert_allclose(np.degrees(told), np.degrees(found), rtol=0.01, atol=0.003)


@pytest.mark.parametrize("name", ["cab", "winch", "battery pack", "spare wheel", "steering servo"])
def test_part_moved_and_made_heavier_in_the_file(
    bramble: Loaded, found: Gradients, name: str
) -> None:
    """What 10 mm and 10 g do, from steps of 2 mm and 2 g."""
    gain = of(found, name)
    for axis in range(3):
        key = f"part.{name}.at_mm.{axis}"
        close(0.010 * gain.per_move[:, axis], 5 * by_edit(bramble, found, bramble.spec, key, 2.0))
    mass = f"part.{name}.mass_g"
    close(0.010 * gain.per_mass, 5 * by_edit(bramble, found, bramble.spec, mass, 2.0))


@pytest.mark.parametrize(("name", "axis"), [("differential", 2), ("tyre", 1)])
def test_front_and_rear_of_a_part_on_both_axles(
    bramble: Loaded, found: Gradients, name: str, axis: int
) -> None:
    """Two lines, and each is what the file says with the part written as two."""
    front, rear = of(found, f"{name} (front)"), of(found, f"{name} (rear)")
    assert (front.end, rear.end, front.row) == ("front", "rear", rear.row)
    spec, own = one_end(bramble.spec, name)
    pieces = len([p for p in found.truck.parts if p.row == front.row]) // 2
    by_mass = by_edit(bramble, found, spec, f"part.{own}.mass_g", 2.0 / pieces)
    close(0.010 * front.per_mass, 5 * by_mass)
    by_move = by_edit(bramble, found, spec, f"part.{own}.at_mm.{axis}", 2.0)
    close(0.010 * front.per_move[:, axis], 5 * by_move)
    both = by_edit(bramble, found, bramble.spec, f"part.{name}.at_mm.{axis}", 2.0)
    close(0.010 * (front.per_move + rear.per_move)[:, axis], 5 * both)


def test_signs_are_told_where_they_turn() -> None:
    """Weight in the front wheels, on the weakest heading: up or down by how the tyres give."""
    bramble = numbered("bramble")
    every = gradients(bramble)
    assert [c.kind for c in every.corners] == ["grip low", "grip high", "tyres soft", "tyres stiff"]
    worst = DIRECTIONS.index("worst")
    turned = [g for g in part_gains(every) if g.mass_turns.any()]
    assert "tyre (front)" in [g.name for g in turned]
    for gain in turned:
        assert not gain.mass_turns[~np.isin(range(4), [0, worst])].any()
    assert not any(g.mass_turns.any() or g.move_turns.any() for g in part_gains(gradients(
        bramble, everywhere=False
    )))  # fmt: skip


def test_angles_are_the_one_answer(bramble: Loaded, found: Gradients) -> None:
    there = tip_angles(bramble.truck, found.headings, 0.9)
    np.testing.assert_allclose(found.angles, there.free, atol=1e-9)
    np.testing.assert_array_equal(found.slides, there.slides)
    np.testing.assert_allclose(found.slopes.exact.tip, there.free, atol=1e-9)  # type: ignore[union-attr]
    assert found.headings[found.governing[0]] == pytest.approx(3 * pi / 2)


def test_field_of_all_at_once_is_the_least(stiff: Gradients) -> None:
    places = np.random.default_rng(3).uniform((-0.2, -0.1, 0.0), (0.2, 0.1, 0.25), (40, 3))
    four = np.stack([field(stiff, [h])(places) for h in range(4)])
    np.testing.assert_array_equal(field(stiff, range(4))(places), four.min(axis=0))
    assert np.any(four.min(axis=0) > 0)
    assert np.any(four.min(axis=0) < 0)


def test_wedge_line_is_where_a_gram_changes_nothing(stiff: Gradients) -> None:
    """On the line through tip line and CG; below it a gram helps, above it hurts."""
    foot, top = rigid.wedge_lines(stiff.truck)[0]
    climb = field(stiff, [gains.CLIMB])
    for share in (0.2, 0.7, 1.4):
        x, z = foot + share * (top - foot)
        on, below, above = climb(np.array([[x, 0, z], [x, 0, z - 0.01], [x, 0, z + 0.01]]))
        assert abs(on) < 1e-12
        assert below > 0 > above
