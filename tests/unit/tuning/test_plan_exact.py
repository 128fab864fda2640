"""The planner against trying every set, and its linear sums against trucks really built."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics import rigid
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array
from crossfall.tuning.apply import apply
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes
from crossfall.tuning.menu import Menu, menu
from crossfall.tuning.milp_model import Bounds, MilpModel, Modeller
from crossfall.tuning.solver import Search, best_angle, least_money, near_best
from random_catalogues import random_catalogue, try_everything

SIDES = np.radians([90.0, 270.0])


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


def search(loaded: Loaded, catalogue: Catalogue, headings: Array, bounds: Bounds) -> Search:
    made = menu(catalogue)
    modeller = Modeller(loaded, made, bounds)
    models = [m for m in (modeller.model(s) for s in made.setups) if m is not None]
    return Search(models, headings, np.zeros((len(models), len(headings))))


def sets(models: list[MilpModel], made: Menu, rng: np.random.Generator, count: int) -> list:
    """Random picks: (model, chosen) with one column or none a cluster."""
    found = []
    for _ in range(count):
        model = models[int(rng.integers(len(models)))]
        chosen = np.zeros(model.columns.shape[1])
        for a, b in zip(made.starts, [*made.starts[1:], len(made.columns)], strict=True):
            if rng.random() < 0.3:
                chosen[int(rng.integers(a, b))] = 1.0
        found.append((model, chosen))
    return found


@pytest.mark.parametrize("steer", [0.0, -28.0])
def test_sums_are_those_of_the_built_truck(bramble: Loaded, steer: float) -> None:
    """Mass, CG and all four tip angles of random sets, by columns and by building the truck."""
    catalogue = read_changes(change_file_of(bramble.path))
    spec = set_values(bramble.spec, {"chassis.steer_deg": steer})
    bramble = replace(bramble, spec=spec, truck=build(spec, bramble.folder)[0])
    made = menu(catalogue)
    modeller = Modeller(bramble, made, Bounds())
    models = [m for m in (modeller.model(s) for s in made.setups[::7]) if m is not None]
    compared = 0
    for model, chosen in sets(models, made, np.random.default_rng(5), 40):
        picks = dict(model.setup)
        for j in np.flatnonzero(chosen):
            picks |= dict(made.columns[j])
        if not model.allowed(chosen[None])[0]:
            continue
        truck, _ = build(apply(bramble.spec, catalogue, picks), bramble.folder)
        body, sums = whole(truck), model.sums + model.columns @ chosen
        np.testing.assert_allclose(sums[0], body.mass, rtol=1e-13)
        np.testing.assert_allclose(sums[1:] / sums[0], body.cg, atol=1e-14)
        np.testing.assert_allclose(
            model.angles(chosen[None], rigid.QUARTERS)[0],
            rigid.tip_angle(truck, rigid.QUARTERS),
            atol=1e-13,
        )
        compared += 1
    assert compared >= 8


@pytest.mark.parametrize("seed", range(50))
def test_best_set_is_that_of_an_exhaustive_search(bramble: Loaded, seed: int) -> None:
    """14 changes, every one of the 2^14 sets tried: the same aim value, and the same money."""
    rng = np.random.default_rng(seed)
    catalogue = random_catalogue(rng)
    headings = (SIDES, rigid.QUARTERS, np.radians([0.0]))[seed % 3]
    bounds = Bounds(
        budget=float(rng.uniform(30, 160)) if seed % 2 else None,
        added_mass=float(rng.uniform(-0.2, 0.15)) if seed % 5 == 0 else None,
    )
    every = try_everything(bramble, catalogue, headings, bounds)
    values = every.values.min(axis=1)
    asked = search(bramble, catalogue, headings, bounds)
    found = best_angle(asked)
    if not len(values):
        assert found is None
        return
    assert found is not None
    assert found.value == pytest.approx(values.max(), abs=1e-12)

    target = float(np.quantile(values, 0.98))
    cheapest = every.money[values >= target].min()
    bought = least_money(asked, target)
    assert bought is not None
    assert bought.value >= target - 1e-9
    assert bought.money == pytest.approx(cheapest, abs=1e-9)


@pytest.mark.parametrize("seed", range(100, 106))
def test_every_near_best_set_is_listed(bramble: Loaded, seed: int) -> None:
    rng = np.random.default_rng(seed)
    catalogue = random_catalogue(rng)
    bounds = Bounds(budget=90.0)
    every = try_everything(bramble, catalogue, SIDES, bounds)
    values = every.values.min(axis=1)
    floor = values.max() - np.radians(0.6)
    found, complete = near_best(search(bramble, catalogue, SIDES, bounds), floor)
    assert complete
    assert len(found) == np.count_nonzero(values >= floor)
    np.testing.assert_allclose(
        [f.value for f in found], np.sort(values[values >= floor])[::-1], atol=1e-9
    )
