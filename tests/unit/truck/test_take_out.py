"""A part taken out of a lump changes neither mass nor CG of what carries it."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest

from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.edits import add_part, set_values
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.schema import TruckSpec
from crossfall.truck.take_out import DECIMALS, left_over, lumps

HALF = 0.5 * 10**-DECIMALS  # of a g or mm, by which the file's decimals may be out
BOX = {"kind": "box", "size_mm": [30, 20, 10]}


@pytest.fixture(scope="module")
def thistle() -> Loaded:
    return load_truck("thistle")


def with_part(spec: TruckSpec, part: dict[str, Any], lump: str) -> TruckSpec:
    after = add_part(spec, part)
    placed = build(after)[0].parts
    return set_values(after, left_over(after, placed, str(part["name"]), lump))


@pytest.mark.parametrize(
    ("part", "lump"),
    [
        ({"on": "chassis", "mass_g": 31, "at_mm": [40, -12, 96]}, "battery pack"),
        ({"on": "chassis", "mass_g": 7, "at_mm": [0, 25, 80], "mirror": True, "count": 3,
          "step_mm": [11, 2, -4], "shape": BOX}, "motor"),
        ({"on": "chassis", "material": "brass", "shape": BOX, "at_mm": [9, 9, 70],
          "turn_deg": [0, 30, 90]}, "skid"),
        ({"on": "front axle", "mass_g": 20, "at_mm": [5, 30, -8], "cg_mm": [2, 1, 0]},
         "steering servo"),
        ({"on": "every wheel", "mass_g": 8, "at_mm": [0, 6, 0]}, "tyre"),
    ],
)  # fmt: skip
def test_no_sum_changes(thistle: Loaded, part: dict[str, Any], lump: str) -> None:
    before = build(thistle.spec)[0]
    spec = with_part(thistle.spec, {"name": "weighed since", **part}, lump)
    after = build(spec)[0]
    pieces = sum(p.row == len(spec.part) - 1 for p in after.parts)
    for one, other in zip(
        (before.chassis, *(a.body for a in before.axles), whole(before)),
        (after.chassis, *(a.body for a in after.axles), whole(after)),
        strict=True,
    ):
        assert other.mass == pytest.approx(one.mass, abs=4 * HALF * 1e-3)
        # each rounded lump is HALF mm out at most, and the whole by no more than its lumps
        assert np.allclose(other.cg, one.cg, rtol=0, atol=2 * HALF * 1e-3)
    assert pieces >= 1


@pytest.mark.parametrize(
    ("part", "lump", "words"),
    [
        ({"on": "chassis", "mass_g": 118, "at_mm": [0, 0, 90]}, "battery pack", "weighs 118.0 g"),
        ({"on": "rear axle", "mass_g": 5, "at_mm": [0, 0, 0]}, "battery pack", "rides on"),
        ({"on": "chassis", "mass_g": 1, "at_mm": [0, 0, 90]}, "side plate", "several pieces"),
        ({"on": "chassis", "mass_g": 1, "at_mm": [0, 0, 90]}, "no such lump", "no such part"),
        ({"on": "front axle", "mass_g": 1, "at_mm": [0, 0, 0]}, "front shock", "no link"),
    ],
)
def test_what_cannot_be_taken_out_is_refused(
    thistle: Loaded, part: dict[str, Any], lump: str, words: str
) -> None:
    with pytest.raises(InputError, match=words):
        with_part(thistle.spec, {"name": "weighed since", **part}, lump)


def test_lumps_are_single_pieces_and_the_rest_comes_first(thistle: Loaded) -> None:
    found = lumps(thistle.spec)
    assert "battery pack" in found
    assert not {"side plate", "front shock"} & set(found)
    data = thistle.spec.model_dump(exclude_unset=True)
    motor = next(p for p in data["part"] if p["name"] == "motor")
    motor["remainder"] = True
    assert lumps(TruckSpec.model_validate(data))[0] == "motor"
