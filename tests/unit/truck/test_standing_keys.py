"""How a truck stands on a slope: who holds its wheels, and which way the front ones point."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.truck.build import build, load_truck
from crossfall.truck.complete import how_it_stands
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError
from crossfall.truck.steering import steering


def stood(**keys):
    loaded = load_truck("bramble")
    spec = set_values(loaded.spec, keys)
    return build(spec, loaded.folder)[0], spec


def test_straight_wheels_on_brakes_are_nothing_to_tell():
    truck, spec = stood()
    assert how_it_stands(spec) == ()
    assert truck.front.shaft == truck.rear.shaft == 0.0
    assert truck.front.hubs[:, 0] == pytest.approx([truck.front.x] * 2)


def test_a_shaft_held_still_turns_the_wheels_as_the_axle_rolls():
    """Left wheel up turns the axle clockwise, seen from behind, past a shaft that stands: in the
    axle it turns anticlockwise, which is backwards, by a third."""
    keys = {
        "chassis.held_by": "motor",
        "chassis.axle_ratio": 3.0,
        "rear.shaft_turns": "anticlockwise",
    }
    truck, spec = stood(**keys)
    assert truck.front.shaft == pytest.approx(-1 / 3)
    assert truck.rear.shaft == pytest.approx(1 / 3)
    (said,) = how_it_stands(spec)
    assert "assumed" not in said
    assert "through locked differentials" in said
    assert not truck.may_roll


def test_an_open_differential_counts_where_the_motor_holds():
    truck, spec = stood(**{"rear.differential": "open"})
    assert how_it_stands(spec) == ()
    assert truck.rear.open
    assert not truck.may_roll
    truck, spec = stood(**{"rear.differential": "open", "chassis.held_by": "motor"})
    assert truck.may_roll
    assert "a locked front and open rear differential" in how_it_stands(spec)[0]


def test_turned_wheels_stand_on_circles_about_their_kingpins():
    turn, offset = math.radians(35), 0.022
    truck, _ = stood(**{"chassis.steer_deg": 35.0, "front.kingpin_offset_mm": 22.0})
    half = truck.front.track / 2 - offset
    for hub, side in zip(truck.front.hubs, (1, -1), strict=True):
        arm = hub[:2] - [truck.front.x, side * half]
        assert np.hypot(*arm) == pytest.approx(offset)
        # Turned to the left the left tyre goes back, the right one ahead.
        assert arm == pytest.approx(
            [-side * offset * math.sin(turn), side * offset * math.cos(turn)]
        )
    assert truck.rear.steered == ((0.0, 0.0), (0.0, 0.0))


def test_what_is_assumed_is_named():
    _, spec = stood(**{"chassis.held_by": "motor", "chassis.steer_deg": -10.0})
    motor, turned = how_it_stands(spec)
    assert "3 times" in motor
    assert "assumed: give axle_ratio" in motor
    assert "10° to the right" in turned
    assert "20 mm" in turned
    assert "assumed: give kingpin_offset_mm" in turned


@pytest.mark.parametrize(
    ("keys", "said"),
    [
        (
            {"chassis.driven": "rear", "chassis.held_by": "motor"},
            "is 'motor', which drives the rear axle only",
        ),
        (
            {"chassis.steering_lock_deg": 35.0, "chassis.steer_deg": -40.0},
            "is -40, beyond the steering lock",
        ),
        ({"front.kingpin_offset_mm": 90.0}, "is 90, which puts the kingpins past each other"),
        ({"chassis.steer_deg": 81.0}, "is 81"),
        ({"chassis.held_by": "hand"}, "is the text 'hand'"),
        ({"chassis.axle_ratio": 0.0}, "is 0"),
    ],
)
def test_what_cannot_be_is_one_sentence(keys, said):
    with pytest.raises(InputError) as caught:
        stood(**keys)
    assert caught.value.problems[0].what.startswith(said)


def test_the_kingpin_offset_that_is_told_is_the_one_used():
    """A narrow truck's is a quarter of its track; 20 mm was told."""
    truck, spec = stood(**{"chassis.steer_deg": 20.0, "front.track_mm": 70.0})
    (said,) = how_it_stands(spec)
    assert "17.5 mm inside" in said
    assert steering(truck.front)[1] == pytest.approx(0.0175)
