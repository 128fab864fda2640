"""Links and shocks in a chassis file: what they amount to, and what is wrong with them."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from crossfall.truck.axle_law import law_of
from crossfall.truck.build import build, load_text, load_truck
from crossfall.truck.complete import falls_in_tolerance
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError
from crossfall.truck.guides import anti
from crossfall.truck.read import locate
from crossfall.truck.uncertain import varied
from linked_files import linked, linked_text
from numbered_files import numbered, numbered_text


def mistakes(text: str) -> list[str]:
    with pytest.raises(InputError) as caught:
        load_text(text, Path(locate("bramble")))
    return [f"{p.key}: {p.what}; {p.allowed}" for p in caught.value.problems]


@pytest.mark.parametrize(
    ("name", "front", "rear"),
    [("bramble", 123, 123), ("burdock", 125, 135), ("thistle", 168, 139)],
)
def test_demo_links_amount_to_what_was_worked_out_from_their_instant_centres(
    name: str, front: int, rear: int
) -> None:
    truck = linked(name).truck
    assert anti("front", truck.front.suspension, truck) == pytest.approx(front, abs=0.6)
    assert anti("rear", truck.rear.suspension, truck) == pytest.approx(rear, abs=0.6)
    bare = numbered(name).truck
    for new, old in zip(truck.axles, bare.axles, strict=True):
        apart = new.suspension.roll_centre_height - old.suspension.roll_centre_height
        assert abs(apart) < 0.0045


def test_a_file_that_gives_both_is_told_both_and_asked_which_counts() -> None:
    found = mistakes(linked_text("bramble", counts=""))
    assert found == [
        "front.suspension.roll_centre_mm: the file says a roll centre of 82 mm and the links give "
        "86.1 mm, anti-dive of 15 % and the links give 123 %; "
        'say which counts: guided_by = "links" or "numbers"',
        "rear.suspension.roll_centre_mm: the file says a roll centre of 84 mm and the links give "
        "84.0 mm, anti-squat of 30 % and the links give 123 %; "
        'say which counts: guided_by = "links" or "numbers"',
    ]


def test_numbers_that_count_leave_the_truck_as_it_was() -> None:
    truck = load_text(linked_text("bramble", "numbers"), Path(locate("bramble"))).truck
    bare = numbered("bramble").truck
    assert truck.front.suspension == bare.front.suspension
    assert truck.rear.suspension == bare.rear.suspension


def test_without_links_and_without_a_roll_centre_there_is_no_suspension() -> None:
    text = numbered_text("bramble").replace("roll_centre_mm = 82\n", "")
    (found,) = mistakes(text)
    assert found.startswith("front.suspension.roll_centre_mm: is missing; give it, or say what")


def test_wrong_links_are_one_sentence_at_their_part() -> None:
    three = linked_text("bramble").replace(
        'name = "front upper link"\nlink = "upper"\non = "front link"\nmirror = true',
        'name = "front upper link"\nlink = "upper"\non = "front link"',
    )
    (found,) = mistakes(three)
    assert "with 3 rods, which leaves it 3 freedoms instead of two" in found
    assert found.startswith("part.front lower link.chassis_end_mm")
    short = linked_text("bramble").replace("[52, 30, 102]", "[149, 17, 86]")
    (found,) = mistakes(short)
    assert "bind within the stops" in found


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('link = "upper"', 'link = "uper"', "'uper'"),
        ('link = "shock"\non = "front link"\nmirror = true', 'link = "shock"\non = "front link"',
         "it needs mirror = true"),
        ('link = "upper"', 'link = "wishbone"', "one of its ends must lie in the middle"),
        ('name = "winch"', 'name = "winch"\nlink = "lower"', "is for links only"),
        ('link = "shock"', "", "no part is a shock"),
    ],
)  # fmt: skip
def test_a_link_that_cannot_be_what_it_says_is_refused(old: str, new: str, said: str) -> None:
    text = linked_text("bramble", shocks=True)
    assert old in text
    assert any(said in line for line in mistakes(text.replace(old, new)))


def test_a_shock_that_leans_gives_less_at_the_wheel() -> None:
    truck, loaded = linked("bramble").truck, linked("bramble", shocks=True).truck
    for axle, plain in zip(loaded.axles, truck.axles, strict=True):
        s, ratios = axle.suspension, law_of(axle).ratios()
        along = s.shocks.chassis[0] - s.shocks.axle[0]
        lean = np.arccos(along[2] / np.linalg.norm(along))
        assert s.spring_rate == plain.suspension.spring_rate
        # Links turn the axle as it heaves, and so move the shock's foot besides.
        assert ratios[0, 0] == pytest.approx(np.cos(lean), abs=0.12)
        assert s.spring_spacing == pytest.approx(0.110, abs=0.004)  # between its ends


def test_a_link_end_that_may_be_out_moves_roll_centre_and_lean() -> None:
    truck = linked("bramble").truck
    names = [one.name for one in truck.uncertain]
    number = names.index("front upper link, height of its chassis end")
    assert "front roll centre" not in names
    assert not any("lean" in name for name in names)
    moved = varied(truck, {number: 1e-3})
    text = linked_text("bramble").replace("[52, 30, 102]", "[52, 30, 103]")
    wanted = load_text(text, Path(locate("bramble"))).truck
    for name in ("roll_centre_height", "heave_lean"):
        got, want = (getattr(t.front.suspension, name) for t in (moved, wanted))
        assert got == pytest.approx(want, rel=1e-9)
        assert got != getattr(truck.front.suspension, name)


def test_links_that_bind_within_their_tolerances_are_noted_by_check():
    """They bound nowhere as the file has them; `check` ended as a fault of its own."""
    loaded = load_truck("burdock")
    spec = set_values(loaded.spec, {"front.suspension.bump_mm": 87.483})
    truck = build(spec, loaded.folder)[0]
    said = falls_in_tolerance(truck, spec)
    assert said
    assert all("in its range, " in one and "bind" in one for one in said)
