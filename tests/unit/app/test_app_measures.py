"""The sliders of the page show numbers that the truck's file has."""

from __future__ import annotations

from crossfall.app.edits import MEASURES
from crossfall.app.truck_cache import measures
from crossfall.truck.build import load_truck
from linked_files import linked


def test_every_measure_of_a_plain_truck_has_its_slider() -> None:
    found = {m["key"]: m["value"] for m in measures(load_truck("bramble").spec)}
    assert found.keys() == MEASURES.keys()
    assert found["front.suspension.spring_n_per_mm"] == 0.2


def test_springs_along_their_shocks_have_none() -> None:
    found = {m["key"] for m in measures(linked("bramble", shocks=True).spec)}
    springs = {k for k in MEASURES if k.endswith("spring_n_per_mm")}
    assert found == MEASURES.keys() - springs
