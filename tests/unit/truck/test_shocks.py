"""Shocks in a chassis file: length, stroke, spacers, two springs and a collar."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from crossfall.truck.axle_law import LEFT, VALUE, law_of
from crossfall.truck.build import Loaded, build, load_text
from crossfall.truck.edits import set_value, set_values
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.plausibility import implausible_values
from crossfall.truck.read import in_memory, locate
from crossfall.truck.ride import spring_squeezes
from crossfall.truck.uncertain import sd, varied
from crossfall.truck.weight import weigh_truck
from linked_files import TRAVEL, linked, on_whole_shocks, shocks_text
from numbered_files import numbered_text

MM = 1e-3


def load(**keys: float) -> Loaded:
    return load_text(shocks_text(without=TRAVEL, **keys), Path(locate("bramble")))


def test_droop_and_bump_are_what_length_stroke_and_spacers_leave() -> None:
    """The front shock's ends are [125.5, 56, 148] and [146, 54, 69] mm in truck axes."""
    truck = load(
        shock_length_mm=100, shaft_travel_mm=38, droop_limiter_mm=4, bump_limiter_mm=5
    ).truck
    s = truck.front.suspension
    assert s.shocks is not None
    standing = float(np.linalg.norm(s.shocks.chassis[0] - s.shocks.axle[0]))
    assert s.droop == pytest.approx(0.100 - standing - 0.004, abs=1e-9)
    assert s.bump == pytest.approx(0.038 - (0.100 - standing) - 0.005, abs=1e-9)
    # At the stops the shock is as long as its spacers let it be, wherever the links take the axle.
    for compression, length in ((-s.droop, 0.096), (s.bump, 0.067)):
        heave = np.linspace(-0.03, 0.03, 2001)
        pressed = law_of(truck.front).at(heave, np.zeros_like(heave))[LEFT, VALUE]
        at = float(np.interp(compression, pressed, heave))
        turn, shift = law_of(truck.front).motion(at, 0.0)
        middle = np.array([truck.front.x, 0.0, truck.front.tyre.radius])
        foot = turn @ (s.shocks.axle[0] + middle) + shift
        assert np.linalg.norm(foot - s.shocks.chassis[0] - middle) == pytest.approx(
            length, abs=2e-5
        )


def test_lifting_the_body_takes_droop_and_gives_bump() -> None:
    text = shocks_text(without=TRAVEL, shock_length_mm=100, shaft_travel_mm=38)
    path = Path(locate("bramble"))
    low = load_text(text, path).truck.front.suspension
    high = load_text(text.replace("[chassis]\n", "[chassis]\nraise_mm = 3\n"), path)
    s = high.truck.front.suspension
    assert low.shocks is not None
    assert s.shocks is not None
    longer = s.shocks.lengths[0] - low.shocks.lengths[0]
    assert longer == pytest.approx(0.003 * 0.97, abs=1e-4)  # it leans by 14 deg
    assert low.droop - s.droop == pytest.approx(longer, abs=1e-9)
    assert s.bump - low.bump == pytest.approx(longer, abs=1e-9)


def test_given_at_ride_height_travel_is_as_before_and_spacers_take_from_it() -> None:
    bare = linked("bramble", shocks=True).truck.front.suspension
    path = Path(locate("bramble"))
    less = load_text(shocks_text(droop_limiter_mm=3, bump_limiter_mm=2), path).truck.front
    assert less.suspension.droop == pytest.approx(bare.droop - 3 * MM)
    assert less.suspension.bump == pytest.approx(bare.bump - 2 * MM)


def pressed_at_full_length(truck) -> list[float]:
    """mm, mean of both sides, that each axle's collars press the springs."""
    found = []
    for i, axle in enumerate(truck.axles):
        s = axle.suspension
        out = 0.100 - s.shocks.lengths[0]
        found.append((spring_squeezes(truck)[2 * i : 2 * i + 2].mean() - out) / MM)
    return found


@pytest.mark.parametrize("preload", [1.0, 6.0, 12.0])
def test_on_its_collars_a_truck_stands_where_its_springs_hold_it(preload: float) -> None:
    truck = on_whole_shocks(preload_mm=preload).truck
    assert pressed_at_full_length(truck) == pytest.approx([preload, preload], abs=1e-3)


def test_turning_collars_on_lifts_the_truck_and_takes_droop() -> None:
    low, high = (on_whole_shocks(preload_mm=p).truck for p in (4.0, 7.0))
    up = (whole(high).cg - whole(low).cg)[2]
    sprung = low.chassis.mass / whole(low).mass
    lift = (high.chassis.cg - low.chassis.cg)[2]
    assert up == pytest.approx(lift * sprung, rel=0.1)  # links go along with half
    for a, b in zip(low.axles, high.axles, strict=True):
        assert a.suspension.droop - b.suspension.droop == pytest.approx(3 * MM, abs=1e-4)
        assert b.suspension.bump - a.suspension.bump == pytest.approx(3 * MM, abs=1e-4)
        ratio = float(law_of(a).ratios()[0, 0])
        assert lift == pytest.approx(3 * MM / ratio, rel=0.06)  # the ratio changes on the way


def test_a_heavier_load_on_the_same_collars_lets_it_down() -> None:
    path = Path(locate("bramble"))
    text = shocks_text(without=TRAVEL, shock_length_mm=100, shaft_travel_mm=40, preload_mm=12)
    heavy = text + (
        '\n[[part]]\nname = "load"\non = "chassis"\nmass_g = 300\nat_mm = [0, 0, 120]\n'
        'shape = { kind = "box", size_mm = [80, 80, 20] }\n'
    )
    light, laden = (load_text(t, path).truck for t in (text, heavy))
    assert pressed_at_full_length(laden) == pytest.approx([12.0, 12.0], abs=1e-3)
    cab = [next(p for p in t.parts if p.label == "cab").centre[2] for t in (light, laden)]
    # 300 g more on two springs of 0.2 and two of 0.26 N/mm, at 0.88 mm of shaft to one of wheel
    assert cab[0] - cab[1] == pytest.approx(0.3 * 9.81 / (2 * 0.46 * 0.88**2) * MM, rel=0.1)


WRONG = [
    (
        TRAVEL,
        {"shock_length_mm": 60, "shaft_travel_mm": 40},
        "front.suspension.shock_length_mm: is 60, and its ends are 81.6 mm apart; at least 81.6",
    ),
    (
        TRAVEL,
        {"shock_length_mm": 100, "shaft_travel_mm": 12},
        "front.suspension.shaft_travel_mm: is 12, and at ride height the shock is pressed in by "
        "18.4 mm; at least 18.4",
    ),
    (
        (),
        {"droop_limiter_mm": 20},
        "front.suspension.droop_limiter_mm: is 20, more than the droop there is; at most 16.0",
    ),
    (
        (),
        {"bump_limiter_mm": 21},
        "front.suspension.bump_limiter_mm: is 21, more than the bump there is; at most 20.0",
    ),
    (
        TRAVEL,
        {"shaft_travel_mm": 40},
        "front.suspension.droop_mm: is missing; give it, or with shock_n_per_mm shock_length_mm",
    ),
    (
        (),
        {"shaft_travel_mm": 40},
        "front.suspension.shaft_travel_mm: is given and so is bump_mm, and either says the other; "
        "keep one of the two",
    ),
    (
        (),
        {"preload_mm": 5},
        "front.suspension.preload_mm: is given without shock_length_mm; both together say where "
        "the truck stands",
    ),
    (
        TRAVEL,
        {"shock_length_mm": 100, "shaft_travel_mm": 40, "preload_mm": 35},
        "front.suspension.preload_mm: is 35, which lifts the front until its shocks are out; "
        "less than 29.8",
    ),
    (
        (),
        {"soft_n_per_mm": 0.1},
        "front.suspension.soft_travel_mm: is missing beside the other number of the soft spring; "
        "give both, or neither",
    ),
    (
        (),
        {"soft_n_per_mm": 0.3, "soft_travel_mm": 10},
        "front.suspension.soft_n_per_mm: is 0.3, no softer than shock_n_per_mm, 0.2; the softer of "
        "two stacked springs goes here",
    ),
    (
        (),
        {"soft_n_per_mm": 0, "soft_travel_mm": 10},
        "front.suspension.soft_n_per_mm: is 0; it must be 0.001 or more",
    ),
]


@pytest.mark.parametrize(("without", "keys", "said"), WRONG)
def test_what_does_not_go_together_is_one_sentence(
    without: tuple[str, ...], keys: dict[str, float], said: str
) -> None:
    with pytest.raises(InputError) as caught:
        load_text(shocks_text(without=without, **keys), Path(locate("bramble")))
    p = caught.value.problems[0]
    assert f"{p.key}: {p.what}; {p.allowed}" == said


def test_keys_of_shocks_are_for_shocks_only() -> None:
    text = numbered_text("bramble")
    text = text.replace("[front.suspension]\n", "[front.suspension]\nshaft_travel_mm = 30\n")
    with pytest.raises(InputError) as caught:
        load_text(text, Path(locate("bramble")))
    p = caught.value.problems[0]
    assert p.key == "front.suspension.shaft_travel_mm"
    assert p.what == "is given without shock_n_per_mm"


def test_two_soft_springs_are_uncertain_as_springs_are() -> None:
    names = [one.name for one in on_whole_shocks().truck.uncertain]
    assert {"front soft spring rate", "rear soft spring rate"} <= set(names)
    assert not any("soft" in one.name for one in linked("bramble", shocks=True).truck.uncertain)


def test_a_shock_in_centimetres_is_doubted_with_what_was_meant() -> None:
    spec = on_whole_shocks().spec
    assert implausible_values(spec, in_memory(spec)) == []
    short = set_value(spec, "front.suspension.shaft_travel_mm", 4.0)
    assert [(p.key, p.what, p.allowed) for p in implausible_values(short, in_memory(short))] == [
        (
            "front.suspension.shaft_travel_mm",
            "is 4",
            "that would be right in centimetres; 40 meant?",
        )
    ]


def test_shocks_that_cross_the_middle_are_refused_at_their_own_line() -> None:
    """With feet on the other side their middles coincide; that spacing was divided by."""
    text = shocks_text()
    crossed, found = re.subn(
        r"(link = .shock.(?:\n(?!\[\[).*)*?\nchassis_end_mm = \[[^,]+, )", r"\1-", text, count=1
    )
    assert found == 1
    with pytest.raises(InputError, match="crosses the truck's middle") as told:
        load_text(crossed, Path(locate("bramble")))
    (problem,) = told.value.problems
    assert problem.line is not None
    assert "chassis_end_mm" in crossed.splitlines()[problem.line - 1]
    assert "-" in crossed.splitlines()[problem.line - 1]


def test_how_high_its_collars_let_it_stand_is_in_the_range_of_its_centre_of_mass() -> None:
    """Half a millimetre of preload lifts it by 0.4 mm; it had been left out."""
    truck = on_whole_shocks(preload_mm=2.0).truck
    quiet = replace(
        truck, uncertain=tuple(o for o in truck.uncertain if not o.fields[0].endswith("stands"))
    )
    stands = []
    for number, one in enumerate(truck.uncertain):
        if one not in quiet.uncertain:
            low, high = (
                whole(varied(truck, {number: one.likely + side * sd(one)})).cg[2]
                for side in (-1, 1)
            )
            stands.append((high - low) / 2)
    assert len(stands) == 2
    expected = np.sqrt(weigh_truck(quiet).cg_sd[2] ** 2 + np.sum(np.square(stands)))
    assert weigh_truck(truck).cg_sd[2] == pytest.approx(expected, rel=1e-6)
    assert expected > 1.3 * weigh_truck(quiet).cg_sd[2]


@pytest.mark.parametrize("raised", [0.0, 6.0])
def test_links_keep_their_lengths_as_a_raised_truck_takes_its_rake(raised: float) -> None:
    level = on_whole_shocks()
    before = build(set_values(level.spec, {"chassis.raise_mm": raised}), level.folder)[0]
    keys = {"chassis.raise_mm": raised, "rear.suspension.preload_mm": 4.0}
    after = build(set_values(level.spec, keys), level.folder)[0]
    for was, now in zip(before.axles, after.axles, strict=True):
        assert was.suspension.links is not None
        assert now.suspension.links is not None
        assert now.suspension.links.lengths == pytest.approx(was.suspension.links.lengths, abs=1e-8)
