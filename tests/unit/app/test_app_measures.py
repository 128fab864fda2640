"""The sliders of the page show numbers that the truck's file has."""

from __future__ import annotations

from crossfall.app.edits import MEASURES
from crossfall.app.truck_cache import measures
from crossfall.truck.build import load_truck
from numbered_files import numbered

AT_WHEELS = {k for k in MEASURES if k.endswith("spring_n_per_mm")}
ON_SHOCKS = {k for k in MEASURES if k.endswith("shock_n_per_mm")}


def test_every_measure_of_a_plain_truck_has_its_slider() -> None:
    found = {m["key"]: m["value"] for m in measures(numbered("bramble").spec)}
    assert found.keys() == MEASURES.keys() - ON_SHOCKS
    assert found["front.suspension.spring_n_per_mm"] == 0.2


def test_springs_on_their_shocks_have_theirs() -> None:
    found = {m["key"]: m["value"] for m in measures(load_truck("bramble").spec)}
    assert found.keys() == MEASURES.keys() - AT_WHEELS
    assert found["front.suspension.shock_n_per_mm"] == 0.26
