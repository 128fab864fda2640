"""The plan with springs and tyres: bounds kept, aims reached, and what is proven."""

from __future__ import annotations

import itertools
from pathlib import Path

import numpy as np
import pytest

from crossfall.answers.tips import tip_angles, tip_pairs, weakest
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.ride import level_axle_loads
from crossfall.tuning.apply import apply, objections
from crossfall.tuning.battery import run_time
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes
from crossfall.tuning.corners import WORTH_SAYING, truck_at
from crossfall.tuning.directions import NUMERICAL
from crossfall.tuning.limits import ClassLimits, breaches
from crossfall.tuning.menu import is_setup, menu, only_softens
from crossfall.tuning.milp_model import Bounds, Modeller
from crossfall.tuning.plan import Aim, BuildPlan, Choice, SolverSettings, aim_at, plan
from linked_files import on_whole_shocks
from random_catalogues import random_catalogue

SIDES = aim_at("side")
ROCK = 0.9  # bramble's first surface
FEW = (
    "light body",
    "clear roof",
    "brass lock-outs",
    "tray lower",
    "firm springs",
    "droop limits",
    "long hubs",
    "front bar",
)


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture(scope="module")
def catalogue(bramble: Loaded) -> Catalogue:
    return read_changes(change_file_of(bramble.path))


@pytest.fixture(scope="module")
def few(catalogue: Catalogue) -> Catalogue:
    changes = tuple(catalogue[name] for name in FEW)
    return Catalogue(changes, catalogue.currency, catalogue.source)


def truck_of(loaded: Loaded, catalogue: Catalogue, choice: Choice) -> Truck:
    return build(apply(loaded.spec, catalogue, dict(choice.picks)), loaded.folder)[0]


def choices(found: BuildPlan) -> list[Choice]:
    return [*([found.best] if found.best else []), *found.runners, *found.front]


def test_all_listed_is_the_best_of_all_sets(bramble: Loaded, few: Catalogue) -> None:
    """2^8 sets by hand against the plan's own listing, with springs and tyres."""
    bounds = Bounds(budget=100.0)
    found = plan(bramble, few, SIDES, bounds, SolverSettings(listed=10_000))
    assert found.proven
    assert found.best is not None
    best = 0.0
    trucks = []
    for number in range(2 ** len(FEW)):
        chosen = {i: 1 for i in range(len(FEW)) if number >> i & 1}
        if sum(few.changes[i].price for i in chosen) <= 100.0 and not objections(few, chosen):
            trucks.append(build(apply(bramble.spec, few, chosen), bramble.folder)[0])
    best = tip_angles(trucks, SIDES.headings, ROCK).free.min(axis=1).max()
    assert found.scored == len(trucks)
    assert found.best.value == pytest.approx(best, abs=NUMERICAL)


@pytest.mark.parametrize("budget", [60.0, 140.0])
def test_rounds_find_what_listing_finds(bramble: Loaded, few: Catalogue, budget: float) -> None:
    """Springs, droop and a bar among the changes: the closed form alone would leave them out."""
    bounds = Bounds(budget=budget)
    listed = plan(bramble, few, SIDES, bounds, SolverSettings(listed=10_000))
    rounds = plan(bramble, few, SIDES, bounds, SolverSettings(listed=0, scored=25))
    assert listed.proven
    assert not rounds.proven
    assert rounds.best is not None
    assert listed.best is not None
    assert rounds.best.value == pytest.approx(listed.best.value, abs=2 * NUMERICAL)
    assert rounds.scored < listed.scored
    names = {few.changes[i].name for i, _ in rounds.best.picks}
    assert "droop limits" in names


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_rounds_on_random_catalogues(bramble: Loaded, seed: int) -> None:
    made = random_catalogue(np.random.default_rng(seed), count=7, setups=2)
    listed = plan(bramble, made, SIDES, Bounds(budget=70.0), SolverSettings(listed=10_000))
    rounds = plan(bramble, made, SIDES, Bounds(budget=70.0), SolverSettings(listed=0))
    assert listed.proven
    assert listed.best is not None
    assert rounds.best is not None
    assert rounds.best.value == pytest.approx(listed.best.value, abs=2 * NUMERICAL)


def test_bounds_are_kept_by_every_choice(bramble: Loaded, catalogue: Catalogue) -> None:
    limits = ClassLimits.model_validate(
        {
            "format": 1,
            "name": "made up",
            "least_mass_g": 3500.0,
            "most_width_mm": 226.0,
            "most_wheelbase_mm": 316.0,
            "details": ["roof rack"],
            "least_details": 12,
        }
    )
    bounds = Bounds(
        budget=90.0, added_mass=0.05, run_time=20 * 60.0, front_share=(0.46, 0.50), limits=limits
    )
    found = plan(bramble, catalogue, SIDES, bounds, SolverSettings(scored=20, steps=3))
    assert found.best is not None
    assert found.best.value > found.now.value
    assert len(found.front) >= 2
    for choice in choices(found):
        chosen = dict(choice.picks)
        assert objections(catalogue, chosen) == []
        spec = apply(bramble.spec, catalogue, chosen)
        truck = truck_of(bramble, catalogue, choice)
        assert choice.price == pytest.approx(
            sum(catalogue.changes[i].price * n for i, n in choice.picks)
        )
        assert choice.price <= 90.0 + 1e-9
        assert whole(truck).mass - whole(bramble.truck).mass <= 0.05 + 1e-9
        assert choice.breaches == breaches(limits, truck, spec) == ()
        share = level_axle_loads(truck)[0] / level_axle_loads(truck).sum()
        assert 0.46 - 1e-9 <= share <= 0.50 + 1e-9
        runs = run_time(truck, spec, bramble.spec.battery)
        assert runs is not None
        assert runs.minutes >= 20 - 1e-9
        told = tip_angles(truck, SIDES.headings, ROCK)
        assert choice.value == pytest.approx(told.free.min(), abs=1e-9)
        np.testing.assert_array_equal(choice.slides, told.slides)


def test_front_rises_with_money(bramble: Loaded, catalogue: Catalogue) -> None:
    found = plan(bramble, catalogue, SIDES, Bounds(budget=120.0), SolverSettings(scored=20))
    money = [c.price for c in found.front]
    values = [c.value for c in found.front]
    assert money == sorted(money)
    assert values == sorted(values)
    assert len(set(money)) == len(money) >= 4
    assert found.best is not None
    assert values[-1] == pytest.approx(found.best.value, abs=NUMERICAL)
    assert money[0] == 0.0


def test_reach_for_the_least_money(bramble: Loaded, few: Catalogue) -> None:
    """The cheapest of all sets that reach it, with springs; and dearer by a hair is not taken."""
    target = np.radians(38.0)
    aim = Aim("side", SIDES.headings, target)
    listed = plan(bramble, few, aim, Bounds(), SolverSettings(listed=10_000))
    rounds = plan(bramble, few, aim, Bounds(), SolverSettings(listed=0, scored=30))
    assert listed.proven
    assert listed.best is not None
    assert rounds.best is not None
    assert listed.best.value >= target - NUMERICAL
    assert rounds.best.value >= target - NUMERICAL
    assert rounds.best.price == pytest.approx(listed.best.price)
    assert all(c.price >= listed.best.price for c in listed.runners)


def test_nothing_reaches_the_sky(bramble: Loaded, few: Catalogue) -> None:
    aim = Aim("side", SIDES.headings, np.radians(70.0))
    assert plan(bramble, few, aim, Bounds(), SolverSettings(listed=0)).best is None
    heavy = ClassLimits.model_validate({"format": 1, "name": "x", "least_mass_g": 9000.0})
    assert plan(bramble, few, SIDES, Bounds(limits=heavy)).best is None
    wide = ClassLimits.model_validate({"format": 1, "name": "x", "most_width_mm": 100.0})
    assert plan(bramble, few, SIDES, Bounds(limits=wide)).best is None


def test_a_broken_limit_is_mended(bramble: Loaded, few: Catalogue) -> None:
    """The truck as it is weighs too much; what is proposed does not, whatever that costs."""
    limits = ClassLimits.model_validate({"format": 1, "name": "x", "most_mass_g": 3400.0})
    found = plan(bramble, few, SIDES, Bounds(limits=limits))
    assert found.now.breaches
    assert found.best is not None
    assert found.best.breaches == ()
    assert found.best.picks != ()


def test_weakest_of_all_is_searched_for(bramble: Loaded, few: Catalogue) -> None:
    """What is proposed, runners-up and front stand as far as their own weakest heading lets them,
    and no set that was scored could stand further."""
    found = plan(
        bramble, few, aim_at("worst"), Bounds(budget=60.0), SolverSettings(listed=0, scored=8)
    )
    every = [found.now, *choices(found)]
    trucks = [truck_of(bramble, few, c) for c in every]
    _, angles = weakest(trucks, ROCK)
    np.testing.assert_allclose([c.value for c in every], angles, atol=1e-9)
    there = tip_pairs(trucks, [c.headings[0] for c in every], ROCK).free
    np.testing.assert_allclose([c.angles[0] for c in every], there, atol=1e-9)
    assert found.best is not None
    assert found.best.value >= max(c.value for c in every)
    assert found.best.value > found.now.value + np.radians(3)


def test_target_for_the_weakest_heading_is_really_reached(bramble: Loaded, few: Catalogue) -> None:
    """The headings the rounds look at only bound it from above; a set that falls short is none."""
    target = np.radians(36.0)
    aim = aim_at("worst", target)
    found = plan(bramble, few, aim, Bounds(), SolverSettings(listed=0, scored=8))
    assert found.best is not None
    value = weakest([truck_of(bramble, few, found.best)], ROCK)[1][0]
    assert value >= target - NUMERICAL
    assert found.best.price > 0.0


def test_asked_on_the_surface_named_and_against_a_rail(bramble: Loaded, few: Catalogue) -> None:
    asked = (bramble, few, SIDES, Bounds(budget=20.0), SolverSettings(listed=0, scored=5))
    wet = plan(*asked, surface="wet rock")
    assert wet.now.slides.all()
    rail = plan(*asked, surface="wet rock", hold="rail")
    assert not rail.now.slides.any()
    told = tip_angles(bramble.truck, SIDES.headings, 0.6, "rail").free.min()
    assert wet.now.value == pytest.approx(told, abs=1e-9)
    assert rail.now.value == pytest.approx(told, abs=1e-9)


def test_a_runner_up_that_is_better_elsewhere_is_told(bramble: Loaded, few: Catalogue) -> None:
    """Every choice at the ends of grip and of the tyres' give, and who comes before the best."""
    found = plan(bramble, few, SIDES, Bounds(budget=100.0))
    assert found.best is not None
    shown = (found.now, found.best, *found.runners)
    for corner, at in enumerate(found.corners):
        grip = {"grip low": 0.75, "grip high": 1.05}.get(at.kind, ROCK)
        trucks = [truck_at(at, truck_of(bramble, few, c)) for c in shown]
        held, railed = (
            tip_angles(trucks, SIDES.headings, grip, hold).free for hold in ("brakes", "rail")
        )
        tips = np.where([c.slides for c in shown], railed, held).min(axis=1)
        np.testing.assert_allclose([c.there[corner] for c in shown], tips, atol=1e-9)
        ahead = [
            (corner, k)
            for k, r in enumerate(found.runners)
            if r.value < found.best.value - WORTH_SAYING
            and r.there[corner] > found.best.there[corner] + WORTH_SAYING
        ]
        assert [o for o in found.overtaken if o[0] == corner] == ahead


def test_same_question_same_answer(bramble: Loaded, few: Catalogue) -> None:
    asked = (bramble, few, SIDES, Bounds(budget=60.0), SolverSettings(listed=0, scored=10))
    one, other = plan(*asked), plan(*asked)
    assert [c.picks for c in choices(one)] == [c.picks for c in choices(other)]
    assert [c.value for c in choices(one)] == [c.value for c in choices(other)]


def test_kinds_of_change(catalogue: Catalogue) -> None:
    setups = {c.name for c in catalogue.changes if is_setup(c)}
    assert setups >= {"long hubs", "long rear", "low ride", "droop limits", "firm foams"}
    assert "light body" not in setups
    assert "small pack" not in setups
    soft = {c.name for c in catalogue.changes if only_softens(c)}
    assert soft == {"firm springs", "soft springs", "droop limits", "front bar"}
    made = menu(catalogue)
    assert len(set(made.setups)) == len(made.setups)
    assert () in made.setups


def test_too_many_set_ups_are_refused_in_words(tmp_path: Path) -> None:
    from crossfall.truck.errors import InputError

    text = 'format = 1\ntruck = "bramble"\n'
    for i in range(14):
        text += f'[[change]]\nname = "w{i}"\nlabel = "w"\nwiden = {{ front_mm = 1 }}\n'
    path = tmp_path / "c.toml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(InputError, match="combinations of set-up changes; put track"):
        menu(read_changes(path))


def test_a_truck_on_collars_is_planned_at_the_height_at_which_it_stands(
    catalogue: Catalogue,
) -> None:
    """The best of all sixteen sets, and what is said of it is what its own build says: heavier or
    lighter it stands lower or higher."""
    loaded = on_whole_shocks(preload_mm=2.0)
    names = ("light body", "clear roof", "brass lock-outs", "tray lower")
    four = Catalogue(tuple(catalogue[n] for n in names), catalogue.currency, catalogue.source)
    modeller = Modeller(loaded, menu(four), Bounds())
    model = modeller.model(())
    assert model is not None
    bare = model.sums[1:] / model.sums[0]
    np.testing.assert_allclose(bare, whole(loaded.truck).cg, atol=1e-9)
    found = plan(loaded, four, SIDES, Bounds())
    tips = {}
    for on in itertools.product((0, 1), repeat=4):
        picks = {i: n for i, n in enumerate(on) if n}
        truck = build(apply(loaded.spec, four, picks), loaded.folder)[0]
        tips[on] = float(tip_angles(truck, [np.pi / 2, 3 * np.pi / 2], ROCK).free.min())
    assert found.best is not None
    assert found.best.value == pytest.approx(max(tips.values()), abs=NUMERICAL)
