"""One change at a time: gains, side effects, words, ties, run time and limits."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import degrees, hypot, pi, radians, tan
from pathlib import Path

import numpy as np
import pytest

from crossfall.answers.tips import tip_angles, tip_pairs, weakest
from crossfall.measurement.begin import begin
from crossfall.measurement.readings import Readings
from crossfall.statics import rigid
from crossfall.truck.assemble import reassemble, with_errors, with_parts_moved
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.edits import add_part, set_values
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import TANGENTIAL_RATIO, Truck
from crossfall.truck.schema import PartSpec, TruckSpec
from crossfall.tuning.apply import apply
from crossfall.tuning.battery import CELL, RunTime, run_time
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes
from crossfall.tuning.corners import WORTH_SAYING, Corner, corners, truck_at, turns
from crossfall.tuning.directions import DIRECTIONS, angle_errors, difference_sd
from crossfall.tuning.effects import effects, turning_circle
from crossfall.tuning.gains import gradients
from crossfall.tuning.limits import breaches, read_limits
from crossfall.tuning.milp_model import Bounds
from crossfall.tuning.packs import packs
from crossfall.tuning.plan import aim_at, plan
from crossfall.tuning.whatif import ChangeOutcome, Ranking, rank_changes
from crossfall.tuning.whatif_words import outcome_words
from crossfall.verbs.whatif import now_words, ranking_record
from measured_builds import QUICK
from support import make_truck

SIDE, CLIMB, DESCENT, WORST = range(4)


@pytest.fixture(scope="module")
def bramble() -> Loaded:
    return load_truck("bramble")


@pytest.fixture(scope="module")
def catalogue(bramble: Loaded) -> Catalogue:
    return read_changes(change_file_of(bramble.path))


@pytest.fixture(scope="module")
def ranking(bramble: Loaded, catalogue: Catalogue) -> Ranking:
    return rank_changes(bramble, catalogue, "side")


def of(ranking: Ranking, catalogue: Catalogue, name: str) -> ChangeOutcome:
    i = catalogue.position(name)
    return next(o for o in ranking.outcomes if o.change == i)


# Gains


def builds(bramble: Loaded, catalogue: Catalogue, outcome: ChangeOutcome) -> list[Truck]:
    """The truck without a change and with it, each by itself, on top of what it requires."""
    first = dict.fromkeys(outcome.on_top_of, 1)
    pair = [first, first | {outcome.change: outcome.many}]
    return [build(apply(bramble.spec, catalogue, c), bramble.folder)[0] for c in pair]


@pytest.mark.parametrize("name", ["clear roof", "droop limits", "front strips"])
def test_gain_is_that_of_the_two_trucks(
    bramble: Loaded, catalogue: Catalogue, ranking: Ranking, name: str
) -> None:
    outcome = of(ranking, catalogue, name)
    found = tip_angles(builds(bramble, catalogue, outcome), rigid.QUARTERS, 0.9)
    assert found.slides[:, [0, 2]].all()  # at 42 deg: what is compared is against a rail
    gains = found.free[1] - found.free[0]
    sides = found.free[:, [1, 3]].min(axis=1)
    assert outcome.gain[SIDE] == pytest.approx(sides[1] - sides[0], abs=1e-9)
    assert outcome.gain[CLIMB] == pytest.approx(gains[0], abs=1e-9)
    assert outcome.gain[DESCENT] == pytest.approx(gains[2], abs=1e-9)
    grams = abs(outcome.side.mass) * 10
    if grams > 0.1:
        np.testing.assert_allclose(outcome.per_100g * grams, outcome.gain)
    if outcome.price:
        np.testing.assert_allclose(outcome.per_money * outcome.price, outcome.gain)
    else:
        assert np.isnan(outcome.per_money).all()


def test_base_is_the_one_answer(bramble: Loaded, ranking: Ranking) -> None:
    """To 1e-9 rad on the very heading, however many builds were answered with it."""
    found = tip_angles(bramble.truck, ranking.now_heading, ranking.grip.likely)
    np.testing.assert_allclose(ranking.now, found.free, atol=1e-9)
    np.testing.assert_array_equal(ranking.now_slides, found.slides)
    heading, angle = weakest([bramble.truck], ranking.grip.likely)
    assert ranking.now[WORST] == pytest.approx(angle[0], abs=1e-9)
    assert ranking.now_heading[WORST] == pytest.approx(heading[0], abs=1e-9)


def test_where_it_rolls_away_is_told_on_each_heading(
    bramble: Loaded, catalogue: Catalogue, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Held by its motor on open differentials it lets go below the angle of friction, 42 deg."""
    exact = {f"grip.rock.{k}": 0.9 for k in ("low", "high")}
    loose = {f"{end}.differential": "open" for end in ("front", "rear")}
    exact |= {f"both.tyre.{way}_n_per_mm": 3.0 for way in ("lateral", "longitudinal")}
    spec = set_values(bramble.spec, loose | exact | {"chassis.held_by": "motor"})
    rolling = replace(bramble, spec=spec, truck=build(spec, bramble.folder)[0])
    few = Catalogue((catalogue["tray lower"],), "", catalogue.source)
    none, skew = replace(few, changes=()), np.array([pi / 4])
    weak = skew, tip_angles(rolling.truck, skew, 0.9).free  # searching for it takes a minute
    monkeypatch.setattr("crossfall.tuning.directions.weakest_alike", lambda *_: weak)
    found = rank_changes(rolling, none)
    right = tip_angles(rolling.truck, found.now_heading, 0.9).slide
    assert found.now_slides[CLIMB]
    assert degrees(right[CLIMB]) < 36
    np.testing.assert_allclose(found.now_slide, right, atol=1e-6)
    told = ranking_record(rolling, none, found)["slide_likely_deg"]
    assert told == pytest.approx(dict(zip(DIRECTIONS, np.degrees(right), strict=True)), abs=1e-4)
    words = now_words(
        found.grip, "brakes", found.now, found.now_heading, found.now_slide, found.now_slides
    )[1]
    assert f"the climb, at {degrees(right[CLIMB]):.0f}°" in words
    assert "42°" not in words
    slopes = gradients(rolling, "rigid")
    at = tip_angles(rolling.truck, slopes.headings, 0.9).slide
    np.testing.assert_allclose(slopes.slide, at, atol=1e-6)
    planned = plan(rolling, few, aim_at("climb"), Bounds(budget=0.0)).now
    assert planned.slide[0] == pytest.approx(right[CLIMB], abs=1e-6)


def test_worst_of_a_changed_truck_is_its_own_weakest_heading(
    bramble: Loaded, catalogue: Catalogue, ranking: Ranking
) -> None:
    """Searched for near the valleys of the truck as it is, and all round: the same within the
    0.05 deg to which either search is good."""
    for name in ("long hubs", "front bar"):
        outcome = of(ranking, catalogue, name)
        _, after = builds(bramble, catalogue, outcome)
        assert outcome.angle[WORST] == pytest.approx(weakest([after], 0.9)[1][0], abs=radians(0.05))


def test_everything_is_asked_on_the_surface_named(
    bramble: Loaded, catalogue: Catalogue, tmp_path: Path
) -> None:
    """A side slope on wet rock ends in a slide; against a rail nothing does."""
    few = Catalogue((catalogue["tray lower"],), "", catalogue.source)
    wet = rank_changes(bramble, few, "side", surface="wet rock")
    assert wet.now_slides.tolist()[:3] == [True] * 3
    asked = tip_angles(bramble.truck, wet.now_heading[:3], 0.6, "rail").free
    np.testing.assert_allclose(wet.now[:3], asked, atol=1e-9)
    rail = rank_changes(bramble, few, "side", surface="wet rock", hold="rail")
    assert not rail.now_slides.any()
    np.testing.assert_allclose(rail.now[:3], asked, atol=1e-9)
    with pytest.raises(InputError, match="no surface 'ice'"):
        rank_changes(bramble, few, "side", surface="ice")


# What turns with grip and tyres


def test_gains_at_the_corners_are_those_of_the_trucks_there(
    bramble: Loaded, catalogue: Catalogue, ranking: Ranking
) -> None:
    """Least and most grip, and tyres that give most and least along the ground: the side slope."""
    outcome = of(ranking, catalogue, "firm foams")
    heading = [float(ranking.now_heading[SIDE]), float(outcome.heading[SIDE])]
    pair = builds(bramble, catalogue, outcome)
    asked = {"grip low": (0.75, 0.6), "grip high": (1.05, 0.6)}
    asked |= {"tyres soft": (0.9, TANGENTIAL_RATIO[0]), "tyres stiff": (0.9, TANGENTIAL_RATIO[2])}
    assert [c.kind for c in ranking.corners] == list(asked)
    for row, (grip, ratio) in zip(outcome.corners, asked.values(), strict=True):
        found = tip_pairs([with_ratio(t, ratio) for t in pair], heading, grip).free
        assert row[SIDE] == pytest.approx(found[1] - found[0], abs=1e-9)
    assert np.isnan(outcome.corners[:, WORST]).all()  # asked only where it is the aim
    assert np.isnan(outcome.corners[:2, CLIMB]).all()  # against a rail, grip is no matter
    railed = tip_pairs([with_ratio(t, TANGENTIAL_RATIO[0]) for t in pair], [0.0, 0.0], 0.9, "rail")
    assert outcome.corners[2, CLIMB] == pytest.approx(railed.free[1] - railed.free[0], abs=1e-9)


def test_against_a_rail_grip_moves_no_gain(bramble: Loaded, catalogue: Catalogue) -> None:
    """So that the ends of grip need not be asked there: within 0.01 deg."""
    for name in ("clear roof", "front strips", "firm springs"):
        i = catalogue.position(name)
        truck = build(
            apply(bramble.spec, catalogue, {i: catalogue.changes[i].most}), bramble.folder
        )
        pair = [bramble.truck, truck[0]]
        gains = [
            np.diff(tip_angles(pair, [0.0, pi], mu, "rail").free, axis=0) for mu in (0.75, 1.05)
        ]
        np.testing.assert_allclose(gains[0], gains[1], atol=radians(0.01))


def with_ratio(truck: Truck, ratio: float) -> Truck:
    front, rear = (
        replace(
            a,
            tyre=replace(
                a.tyre, lateral=ratio * a.tyre.stiffness, longitudinal=ratio * a.tyre.stiffness
            ),
        )
        for a in truck.axles
    )
    return replace(truck, front=front, rear=rear)


def test_measured_tyres_and_exact_grip_leave_nothing_to_turn(
    bramble: Loaded, catalogue: Catalogue
) -> None:
    keys = [f"both.tyre.{kind}_n_per_mm" for kind in ("lateral", "longitudinal")]
    spec = set_values(bramble.spec, dict.fromkeys(keys, 3.0))
    measured, grip = build(spec, bramble.folder)[0], bramble.truck.grips[0]
    assert [c.kind for c in corners(grip, measured)] == ["grip low", "grip high"]
    exact = replace(grip, low=grip.likely, high=grip.likely)
    assert corners(exact, measured) == ()
    certain = replace(bramble, spec=spec, truck=replace(measured, grips=(exact,)))
    (outcome,) = rank_changes(
        certain, Catalogue((catalogue["tray lower"],), "", catalogue.source)
    ).outcomes
    assert outcome.corners.shape == (0, 4)
    assert not outcome.turns.any()
    half = build(set_values(bramble.spec, {"front.tyre.lateral_n_per_mm": 3.0}), bramble.folder)[0]
    (soft, _) = corners(exact, half)
    tyre = truck_at(soft, half).front.tyre
    assert tyre.lateral == half.front.tyre.lateral
    assert tyre.longitudinal == pytest.approx(0.3 * tyre.stiffness)


def test_a_sign_that_turns_is_told(catalogue: Catalogue, ranking: Ranking) -> None:
    """By more than a hair, there and here."""
    here = np.radians([0.3, 0.3, -0.2, 0.02])
    there = np.radians([[0.1, -0.02, 0.1, -0.2], [0.4, 0.2, np.nan, -0.3]])
    assert turns(here, there).tolist() == [False, False, True, False]
    assert turns(here, np.empty((0, 4))).tolist() == [False] * 4
    places = (Corner("grip low", "at the lowest grip, 0.7"), ranking.corners[1])
    outcome = replace(
        ranking.outcomes[0], gain=here, corners=there, turns=turns(here, there), overtaken=((1, 2),)
    )
    said = outcome_words(outcome, SIDE, places, [c.name for c in catalogue.changes])
    assert (
        "on the descent it may help or cost: −0.20° as assumed, +0.10° at the lowest grip, 0.7"
        in said
    )
    name = catalogue.changes[2].name
    assert f"{places[1].words}, '{name}' comes before it" in said


def test_what_overtakes_is_surely_behind_here_and_before_it_there(ranking: Ranking) -> None:
    by_change = {o.change: o for o in ranking.outcomes}
    pairs = [(o, c, by_change[j]) for o in ranking.outcomes for c, j in o.overtaken]
    assert pairs
    for own, corner, other in pairs:
        assert own.place < other.place
        assert own.gain[SIDE] > other.gain[SIDE] + WORTH_SAYING
        assert own.corners[corner, SIDE] < other.corners[corner, SIDE] - WORTH_SAYING
        assert own.places[corner] > other.places[corner]


def test_where_only_one_of_two_slides_first_both_stand_against_a_rail(
    bramble: Loaded, tmp_path: Path
) -> None:
    """Tyres of more grip: without them a side slope ends in a slide, with them in a tip."""
    path = tmp_path / "c.toml"
    path.write_text(
        'format = 1\ntruck = "bramble"\n[[change]]\nname = "a"\nlabel = "a"\n'
        "set = { 'grip.wet rock.likely' = 0.74 }\n",
        encoding="utf-8",
    )
    (outcome,) = rank_changes(bramble, read_changes(path), "side", surface="wet rock").outcomes
    assert outcome.slid[SIDE]
    assert not outcome.slides[SIDE]
    ends = [tip_angles(bramble.truck, rigid.QUARTERS[[1, 3]], mu, "rail") for mu in (0.6, 0.74)]
    gain = ends[1].free.min() - ends[0].free.min()
    assert outcome.gain[SIDE] == pytest.approx(gain, abs=1e-9)
    assert "no longer slides first on the side slope: compared against a rail" in outcome.words


# Rank


def test_every_change_is_ranked_once_and_in_order(catalogue: Catalogue, ranking: Ranking) -> None:
    assert ranking.impossible == ()
    assert sorted(o.change for o in ranking.outcomes) == list(range(len(catalogue.changes)))
    gains = [o.gain[SIDE] for o in ranking.outcomes]
    assert gains == sorted(gains, reverse=True)
    places = [o.place for o in ranking.outcomes]
    assert places == sorted(places)
    assert places[0] == 1


def test_closer_than_the_uncertainty_is_a_tie(bramble: Loaded, tmp_path: Path) -> None:
    """Two changes alike but for a hair tie; one that is surely better does not."""
    path = tmp_path / "c.toml"
    text = 'format = 1\ntruck = "bramble"\n'
    for name, mass in (("a", 60.0), ("b", 60.3), ("c", 20.0)):
        part = f"name = 'lump {name}', on = 'rear axle', mass_g = {mass}, at_mm = [0, 0, 0]"
        part += ", mass_tol_g = 3"
        text += f"[[change]]\nname = '{name}'\nlabel = '{name}'\nadd = [{{ {part} }}]\n"
    path.write_text(text, encoding="utf-8")
    found = rank_changes(bramble, read_changes(path), "side")
    assert [(o.change, o.place) for o in found.outcomes] == [(1, 1), (0, 1), (2, 3)]
    exact = path.read_text(encoding="utf-8").replace("mass_tol_g = 3", "mass_tol_g = 0")
    path.write_text(exact.replace("at_mm", "place_tol_mm = 0, at_mm"), encoding="utf-8")
    assert [o.place for o in rank_changes(bramble, read_changes(path), "side").outcomes] == [
        1,
        2,
        3,
    ]


def test_shared_errors_cancel_in_a_difference(bramble: Loaded) -> None:
    """A change is known far better than the truck it is made to."""
    truck = bramble.truck
    own = angle_errors(truck, pi / 2)
    assert difference_sd(own, own) == 0.0
    alone = difference_sd(own, {})
    lighter = replace(truck, parts=truck.parts[1:])
    assert 0 < difference_sd(own, angle_errors(lighter, pi / 2)) < alone


def test_doubt_is_that_of_drawn_trucks(bramble: Loaded) -> None:
    """Standard deviation of the rigid angle over trucks drawn within their tolerances."""
    from support import with_masses, with_shifts

    truck = bramble.truck
    rng = np.random.default_rng(11)
    rows = {p.row: p for p in truck.parts}
    drawn = []
    for _ in range(400):
        masses = {r: p.body.mass + p.mass_sd * rng.normal() for r, p in rows.items()}
        shifts = {r: p.place_sd * rng.normal(size=3) for r, p in rows.items()}
        other = with_shifts(with_masses(truck, masses), shifts)
        drawn.append(rigid.tip_angle(other, np.array([pi / 2]))[0])
    # 400 draws: the deviation itself is known to 1 / sqrt(800), 3.5 %
    assert np.std(drawn) == pytest.approx(difference_sd(angle_errors(truck, pi / 2), {}), rel=0.12)


def without(truck: Truck, name: str) -> Truck:
    return reassemble(truck, [p for p in truck.parts if p.label != name])


def lowered(truck: Truck, name: str) -> Truck:
    return with_parts_moved(truck, lambda p: np.array([0, 0, -0.04 * (p.label == name)]))


@pytest.mark.parametrize("change", [without, lowered])
def test_a_part_that_goes_leaves_its_error_in_the_remainder(
    change: Callable[[Truck, str], Truck],
) -> None:
    """Standard deviation of what a change does to a truck that `begin` made: its body drawn within
    its tolerances, and the remainder put so that mass and CG stay as weighed."""
    read = QUICK | {"body_g": 500, "roof_mm": 230}
    spec = TruckSpec.model_validate(begin(Readings.model_validate(read)).data)
    truck = build(spec)[0]
    body = next(p for p in truck.parts if p.label == "body")
    rest = next(p for p in truck.parts if p.taken_up is None)
    assert body.taken_up is not None
    mass_sd, place_sd = body.taken_up
    rng = np.random.default_rng(5)
    gains = []
    for _ in range(300):
        mass = body.body.mass + mass_sd * rng.normal()
        by = np.asarray(place_sd) * rng.normal(size=3)
        left = rest.body.mass + body.body.mass - mass
        moment = rest.body.mass * rest.body.cg + body.body.mass * body.body.cg
        at = (moment - mass * (body.body.cg + by)) / left
        shifts = {body.row: by, rest.row: at - rest.body.cg}
        drawn = with_errors(truck, {body.row: mass, rest.row: left}, shifts)
        np.testing.assert_allclose(whole(drawn).cg, whole(truck).cg, atol=1e-12)
        tips = [rigid.tip_angle(t, np.array([pi / 2]))[0] for t in (drawn, change(drawn, "body"))]
        gains.append(tips[1] - tips[0])
    before, after = (
        {"body": angle_errors(t, pi / 2, weighed=truck)["body"]}
        for t in (truck, change(truck, "body"))
    )
    # 300 draws: the deviation itself is known to 4 %; the derivatives are those in the middle
    assert difference_sd(before, after) == pytest.approx(np.std(gains), rel=0.12)


def test_a_part_that_comes_brings_its_own_error(bramble: Loaded) -> None:
    """A truck with a remainder knows what is added to it no better than any other truck."""
    spec = set_values(bramble.spec, {"part.bed.remainder": True})
    load = PartSpec.model_validate(
        {
            "name": "load",
            "on": "chassis",
            "mass_g": 300,
            "mass_tol_g": 60,
            "place_tol_mm": 20,
            "at_mm": [0, 0, 200],
            "shape": {"kind": "box", "size_mm": [50, 50, 20]},
        }
    )
    found = []
    for one in (bramble.spec, spec):
        before, after = (build(s, bramble.folder)[0] for s in (one, add_part(one, load)))
        errors = [angle_errors(t, pi / 2, weighed=before) for t in (before, after)]
        assert difference_sd(*errors) > radians(0.3)
        found.append(errors[1]["load"])
        known = angle_errors(before, pi / 2)
        cancelled = [n for n, e in known.items() if not e.any()]
        assert bool(cancelled) == (one is spec)
    np.testing.assert_array_equal(found[0], found[1])


def test_words_name_what_is_won_and_lost(catalogue: Catalogue, ranking: Ranking) -> None:
    said = of(ranking, catalogue, "brass front cover").words
    assert said.startswith("helps the climb +")
    assert "costs the descent −" in said
    assert of(ranking, catalogue, "clear roof").words == ""


def test_aim_decides_the_order(bramble: Loaded, catalogue: Catalogue, ranking: Ranking) -> None:
    climb = rank_changes(bramble, catalogue, "climb")
    gains = [o.gain[CLIMB] for o in climb.outcomes]
    assert gains == sorted(gains, reverse=True)
    assert climb.outcomes[0].change != ranking.outcomes[0].change


def test_a_change_that_leaves_no_truck_standing_is_told(bramble: Loaded, tmp_path: Path) -> None:
    path = tmp_path / "c.toml"
    path.write_text(
        'format = 1\ntruck = "bramble"\n[[change]]\nname = "a"\nlabel = "a"\n'
        'set = { "both.suspension.shock_n_per_mm" = 0.01 }\n',
        encoding="utf-8",
    )
    found = rank_changes(bramble, read_changes(path), "side")
    assert found.outcomes == ()
    assert "spring cannot hold" in found.impossible[0][1]


# Side effects


def test_side_effects_of_heavier_wheels(catalogue: Catalogue, ranking: Ranking) -> None:
    side = of(ranking, catalogue, "front rings").side
    assert side.mass == pytest.approx(0.116, abs=1e-9)
    assert side.unsprung == pytest.approx(side.mass)
    assert side.sprung == pytest.approx(0.0, abs=1e-12)
    ring = 0.116 * (0.0245**2 + 0.021**2) / 2  # m (r_o^2 + r_i^2) / 2
    assert side.spin_inertia == pytest.approx(ring, rel=1e-9)
    assert side.rotating_mass == pytest.approx(ring / 0.057**2, rel=1e-9)
    assert side.steer_inertia > 0
    assert side.front_share > 0
    assert side.cg_height < 0
    assert side.run_time < 0


def test_side_effects_of_geometry(catalogue: Catalogue, ranking: Ranking) -> None:
    assert of(ranking, catalogue, "deep offset").side.width == pytest.approx(0.010)
    assert of(ranking, catalogue, "deep offset").side.turning_circle > 0
    long = of(ranking, catalogue, "long rear").side
    assert long.wheelbase == pytest.approx(0.007)
    assert long.breakover < 0
    assert long.turning_circle > 0
    low = of(ranking, catalogue, "low ride").side
    assert low.approach < 0
    assert low.breakover < 0
    assert of(ranking, catalogue, "droop limits").side.mass == 0.0


def test_turning_circle_by_hand() -> None:
    truck = replace(make_truck(), steering_lock=radians(40))
    inside = truck.wheelbase / tan(radians(40))
    outer = hypot(truck.wheelbase, inside + 0.085) + 0.021
    assert turning_circle(truck) == pytest.approx(2 * outer)
    assert np.isnan(turning_circle(make_truck()))


def test_effects_of_a_truck_without_optional_sections(bramble: Loaded) -> None:
    bare = bramble.spec.model_copy(update={"clearance": None, "battery": None})
    truck, _ = build(bare, bramble.folder)
    found = effects(truck, bare)
    assert np.isnan([found.approach, found.breakover, found.departure, found.run_time]).all()
    assert found.mass == whole(truck).mass


# Run time


def test_run_time_by_hand(bramble: Loaded) -> None:
    """3300 mAh, 80 % usable, 6.5 A at 3300 g: 24.4 min there, less in proportion to the mass."""
    runs = run_time(bramble.truck, bramble.spec)
    assert runs is not None
    at_measured_mass = 3.3 * 0.8 / 6.5 * 60
    assert runs.how == "measured"
    assert runs.minutes == pytest.approx(at_measured_mass * 3.3 / whole(bramble.truck).mass)
    assert runs.energy == pytest.approx(3.3 * 3600 * 3 * CELL * 0.8)


def test_run_time_falls_with_mass_and_capacity(bramble: Loaded) -> None:
    def minutes(values: dict[str, float | int]) -> float:
        spec = set_values(bramble.spec, values)
        runs = run_time(build(spec, bramble.folder)[0], spec, bramble.spec.battery)
        assert runs is not None
        return runs.minutes

    now = minutes({})
    assert minutes({"battery.capacity_mah": 1650.0}) == pytest.approx(now / 2)
    assert minutes({"battery.cells": 2}) == pytest.approx(now * 2 / 3)  # the power stays
    assert minutes({"part.cab.mass_g": 500.0}) < now


def test_the_power_is_kept_whatever_the_cells(bramble: Loaded) -> None:
    """6.5 A of three cells were measured; the same energy in two lasts as long at 3/2 of it."""

    def runs(values: dict[str, float | int]) -> RunTime:
        spec = set_values(bramble.spec, values)
        found = run_time(bramble.truck, spec, bramble.spec.battery)
        assert found is not None
        return found

    three, two = runs({}), runs({"battery.cells": 2, "battery.capacity_mah": 4950.0})
    mass = whole(bramble.truck).mass
    assert three.power == pytest.approx(6.5 * 3 * CELL * mass / 3.3)
    assert two.energy == pytest.approx(three.energy)
    assert two.seconds == pytest.approx(three.seconds)
    assert two.power == pytest.approx(three.power)
    assert (three.cells, two.cells) == (3, 2)
    assert two.current == pytest.approx(three.current * 3 / 2)
    assert two.voltage * two.current == pytest.approx(two.power)


def test_a_current_without_the_mass_it_was_measured_at_is_refused(bramble: Loaded) -> None:
    with pytest.raises(InputError, match="what the truck weighed"):
        set_values(bramble.spec, {"battery.draw_mass_g": None})


def test_estimated_draw_says_so(bramble: Loaded) -> None:
    spec = set_values(bramble.spec, {"battery.draw_a": None})
    runs = run_time(bramble.truck, spec)
    assert runs is not None
    assert runs.how == "estimated"
    known = run_time(bramble.truck, bramble.spec)
    assert known is not None
    assert runs.sd / runs.seconds > known.sd / known.seconds


def test_front_of_minutes_against_degrees(bramble: Loaded, catalogue: Catalogue) -> None:
    found = packs(bramble, catalogue)
    side = DIRECTIONS.index("side")
    assert len(found) == 9
    front = [p for p in found if p.on_front[side]]
    for p in found:
        beaten = any(
            q.runs.seconds >= p.runs.seconds
            and q.angle[side] >= p.angle[side]
            and (q.runs.seconds, q.angle[side]) != (p.runs.seconds, p.angle[side])
            for q in found
        )
        assert p.on_front[side] == (not beaten)
    minutes, stood = zip(*((p.runs.minutes, degrees(p.angle[side])) for p in front), strict=True)
    assert list(minutes) == sorted(minutes, reverse=True)
    assert list(stood) == sorted(stood)
    assert len(front) >= 2


# Class limits


def limits_text(body: str) -> str:
    return f'format = 1\nname = "made up"\n{body}\n'


def test_limits_that_hold_and_that_do_not(bramble: Loaded, tmp_path: Path) -> None:
    path = tmp_path / "class.toml"

    def broken(body: str) -> list[str]:
        path.write_text(limits_text(body), encoding="utf-8")
        return [b.sentence for b in breaches(read_limits(path), bramble.truck, bramble.spec)]

    assert broken("most_width_mm = 218\nleast_wheelbase_mm = 313\nmost_wheelbase_mm = 313") == []
    assert broken("details = ['Winch', 'roof rack']\nmost_tyre_diameter_mm = 118") == []
    assert broken("most_width_mm = 217.9") == ["the width is 218.0 mm, at most 217.9 are allowed"]
    assert broken("least_mass_g = 3700") == ["the mass is 3690.0 g, at least 3700 are asked"]
    # 57 mm loaded; 3.69 kg g / 4 on each, a little more on one axle, over 5.5 N/mm: 1.7 mm
    (told,) = broken("most_tyre_diameter_mm = 116")
    assert told.startswith("the free tyre's diameter is 117.")
    assert broken("least_tyre_diameter_mm = 116.5") == []
    assert broken("details = ['snorkel', 'winch']") == ["the detail 'snorkel' is missing"]
    assert broken("least_details = 90") == ["there are 14 scale details, at least 90 are asked"]
    assert len(broken("most_mass_g = 3000\nmost_wheelbase_mm = 300\nleast_details = 90")) == 3


def test_mistakes_in_a_limits_file(tmp_path: Path) -> None:
    path = tmp_path / "class.toml"
    body = "most_wdith_mm = 200\nleast_mass_g = -3\nleast_wheelbase_mm = 310"
    path.write_text(limits_text(body), encoding="utf-8")
    with pytest.raises(InputError) as caught:
        read_limits(path)
    found = [str(p).split("class.toml:")[1] for p in caught.value.problems]
    assert found[0] == "3: most_wdith_mm: is not a known key; did you mean 'most_width_mm'?"
    assert found[1].startswith("4: least_mass_g: is -3")
    path.write_text(limits_text("least_mass_g = 3\nmost_mass_g = 2"), encoding="utf-8")
    with pytest.raises(InputError, match="at most most_mass_g, 2"):
        read_limits(path)


def test_no_demo_part_stands_under_the_ground(bramble: Loaded, catalogue: Catalogue) -> None:
    """Everything the demo file adds or moves is somewhere a truck has room for it."""
    for i, change in enumerate(catalogue.changes):
        truck: Truck = build(apply(bramble.spec, catalogue, {i: change.most}), bramble.folder)[0]
        low = min(p.body.cg[2] for p in truck.parts)
        assert low > 0.02
