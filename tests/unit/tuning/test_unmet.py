"""A plan that finds nothing names what cannot be met."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from crossfall.truck.build import Loaded, load_truck
from crossfall.truck.ride import level_axle_loads
from crossfall.tuning.changes import Catalogue, read_changes
from crossfall.tuning.limits import ClassLimits, free_diameter
from crossfall.tuning.menu import menu
from crossfall.tuning.milp_model import Bounds, Modeller
from crossfall.tuning.plan import aim_at
from crossfall.tuning.unmet import unmet

CHANGES = """
format = 1
truck = "bramble"
[[change]]
name = "narrow"
price = 30
widen = { front_mm = -6, rear_mm = -6 }
[[change]]
name = "no spare"
remove = ["spare wheel"]
[[change]]
name = "light bed"
price = 20
swap = [{ part = "bed", new = { mass_g = 60 } }]
"""


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture
def some(tmp_path: Path) -> Catalogue:
    path = tmp_path / "some.changes.toml"
    path.write_text(CHANGES, encoding="utf-8")
    return read_changes(path)


def limits(**given: object) -> ClassLimits:
    return ClassLimits.model_validate({"format": 1, "name": "some class", **given})


def test_the_limit_that_nothing_meets_is_named(bramble: Loaded, some: Catalogue) -> None:
    """Over the tyres it is 218 mm wide, 206 narrowed, and it weighs 3690 g."""
    asked = Bounds(limits=limits(most_width_mm=200, most_mass_g=3700, least_wheelbase_mm=300))
    (sentence,) = unmet(bramble, some, aim_at("side"), asked)
    assert "most_width_mm" in sentence
    assert "200 mm" in sentence
    (sentence,) = unmet(
        bramble, some, aim_at("side"), Bounds(limits=limits(details=["figurehead"]))
    )
    assert "'figurehead'" in sentence


def test_tyres_are_measured_free_as_scrutineers_do(bramble: Loaded, some: Catalogue) -> None:
    """114 mm as they stand; what they carry squashes them by 3 mm more."""
    asked = Bounds(limits=limits(most_tyre_diameter_mm=115))
    (sentence,) = unmet(bramble, some, aim_at("side"), asked)
    assert sentence.endswith("free tyres of at most 115 mm")
    truck = bramble.truck
    free = [
        free_diameter(a.tyre.radius, a.tyre.stiffness, load) * 1e3
        for a, load in zip(truck.axles, level_axle_loads(truck), strict=True)
    ]
    assert 116.5 < min(free) < max(free) < 118
    made = menu(some)
    for edge, fits in ((-0.01, False), (0.01, True)):
        asked = Bounds(limits=limits(most_tyre_diameter_mm=max(free) + edge))
        model = Modeller(bramble, made, asked).model(())
        assert (model is not None) == fits


def test_what_only_together_cannot_be_is_named(bramble: Loaded, some: Catalogue) -> None:
    """Narrow enough costs 30; within 25 there is no such set, and either alone there is."""
    asked = Bounds(budget=25.0, limits=limits(most_width_mm=210))
    found = unmet(bramble, some, aim_at("side"), asked)
    assert len(found) == 2
    assert any("a budget of 25" in s for s in found)
    assert any("most_width_mm" in s for s in found)
    assert all("without" in s for s in found)


def test_an_angle_out_of_reach_is_told(bramble: Loaded, some: Catalogue) -> None:
    (sentence,) = unmet(bramble, some, aim_at("side", np.radians(60.0)), Bounds())
    assert "60°" in sentence
    (sentence,) = unmet(bramble, some, aim_at("side", np.radians(36.0)), Bounds())
    assert "springs and tyres" in sentence


def test_nothing_is_unmet_where_a_set_is_there(bramble: Loaded, some: Catalogue) -> None:
    assert unmet(bramble, some, aim_at("side"), Bounds(budget=100.0)) == ()
