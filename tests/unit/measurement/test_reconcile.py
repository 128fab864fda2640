"""Reconciling: the file moves towards the truck, within its tolerances, and no further."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from weighin_cases import BOTH_ENDS, KITCHEN, read, session

from crossfall.measurement.board_file import BoardReading, BoardReadings
from crossfall.measurement.board_predict import predict
from crossfall.measurement.reconcile import Reconciled, reconcile, rows_of
from crossfall.measurement.reconcile_fit import fit_within
from crossfall.measurement.reconcile_write import new_path, new_text, write_reconciled
from crossfall.measurement.scatter import Scatter
from crossfall.measurement.weigh_in_session import Measured, Ruler, Session
from crossfall.measurement.weighted_fit import Datum, Prior
from crossfall.truck.build import Loaded, load_text, load_truck
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck
from support import with_masses, with_shifts

EXACT = 0.0002  # m, for rulers: so that the readings decide


@pytest.fixture(scope="module")
def loaded() -> Loaded:
    return load_truck("bramble")


def names(loaded: Loaded) -> list[str]:
    return [p.name for p in loaded.spec.part]


def row(loaded: Loaded, name: str) -> int:
    return names(loaded).index(name)


def blank(truck: Truck) -> Session:
    ruler = Ruler(
        *(
            Measured(v, EXACT)
            for v in (
                truck.wheelbase,
                truck.front.track,
                truck.rear.track,
                truck.front.tyre.radius,
                truck.rear.tyre.radius,
            )
        )
    )
    return session(BOTH_ENDS, ruler=ruler, block=Measured(0.09, EXACT))


def weighed(real: Truck, nominal: Truck, seed: int | None = 5) -> Session:
    body = whole(real)
    rng = None if seed is None else np.random.default_rng(seed)
    truth = (body.mass, *(float(v) for v in body.cg))
    return read(blank(nominal), truth, rng, 0.0015)  # type: ignore[arg-type]


def heavier(loaded: Loaded, name: str, grams: float) -> Truck:
    r = row(loaded, name)
    old = next(p.body.mass for p in loaded.truck.parts if p.row == r)
    return with_masses(loaded.truck, {r: old + grams * 1e-3})


def whole_of(truck: Truck) -> Array:
    body = whole(truck)
    return np.array([body.mass, *body.cg])


def test_a_truck_that_is_as_its_file_says_moves_nothing(loaded: Loaded) -> None:
    found = reconcile(loaded.truck, names(loaded), weighed(loaded.truck, loaded.truck, None))
    assert found.after == pytest.approx(whole_of(loaded.truck), abs=1e-9)
    assert max(m.most for m in found.moves) < 1e-6
    assert found.agrees
    assert found.chi_square == pytest.approx(0.0, abs=1e-9)


def test_the_file_moves_to_the_truck_and_its_uncertainty_shrinks(loaded: Loaded) -> None:
    rng = np.random.default_rng(8)
    sd = {p.row: (p.mass_sd, p.place_sd, p.body.mass) for p in loaded.truck.parts}
    real = with_masses(loaded.truck, {r: m + s * rng.normal() for r, (s, _, m) in sd.items()})
    real = with_shifts(real, {r: s * rng.normal(size=3) for r, (_, s, _) in sd.items()})
    found = reconcile(loaded.truck, names(loaded), weighed(real, loaded.truck))
    assert found.agrees
    assert np.all(found.after_sd <= found.before_sd * (1 + 1e-9))
    assert found.after_sd[0] < 0.6 * found.before_sd[0]
    assert np.all(np.abs(found.after - whole_of(real)) < 3.5 * found.after_sd)


def test_what_moved_is_told_in_standard_deviations_and_stays_in_its_tolerance(
    loaded: Loaded,
) -> None:
    real = heavier(loaded, "cab", 9.0)
    found = reconcile(loaded.truck, names(loaded), weighed(real, loaded.truck, None))
    for m in found.moves:
        assert abs(m.mass_by) <= np.sqrt(3) * m.mass_sd * (1 + 1e-6)
        assert np.all(np.abs(m.place_by) <= np.sqrt(3) * m.place_sd * (1 + 1e-6))
    cab = next(m for m in found.moves if m.name == "cab")
    assert cab.mass_by > 0
    assert cab.mass_sds == pytest.approx(cab.mass_by / cab.mass_sd)
    assert found.after[0] - found.before[0] == pytest.approx(0.009, abs=0.002)


def test_a_certain_part_does_not_move_and_a_loose_one_does(loaded: Loaded) -> None:
    def told(part: str, **tolerances: float) -> Truck:
        r = row(loaded, part)
        parts = tuple(
            replace(p, **(tolerances if p.row == r else {"mass_sd": 0.0, "place_sd": 0.0}))
            for p in loaded.truck.parts
        )
        return replace(loaded.truck, parts=parts)

    only = told("cab", mass_sd=0.02, place_sd=0.0)
    real = heavier(loaded, "cab", 18.0)
    found = reconcile(only, names(loaded), weighed(real, only, None))
    cab = found.moves[0]
    assert cab.name == "cab"
    assert cab.mass_by == pytest.approx(0.018, abs=0.001)
    assert all(m.most == 0 for m in found.moves[1:])


def test_a_part_at_its_limit_is_held_there_and_named(loaded: Loaded) -> None:
    parts = tuple(
        replace(
            p,
            mass_sd=0.004 if p.row == row(loaded, "cab") else 0.0,
            place_sd=0.0,
        )
        for p in loaded.truck.parts
    )
    tight = replace(loaded.truck, parts=parts)
    real = heavier(loaded, "cab", 9.0)
    seen = weighed(real, tight, None)
    exact = replace(seen, scale=replace(seen.scale, accuracy=0.0))
    found = reconcile(tight, names(loaded), exact)
    cab = next(m for m in found.moves if m.name == "cab")
    assert cab.mass_by == pytest.approx(np.sqrt(3) * 0.004, rel=1e-4)
    assert "cab mass" in found.at_limit


@pytest.mark.parametrize("wrong", [1, 4])
def test_a_reading_that_cannot_be_believed_is_named_and_left_out(
    loaded: Loaded, wrong: int
) -> None:
    good = weighed(loaded.truck, loaded.truck)
    r = good.readings[wrong]
    off = replace(r, loads=tuple(v + 0.12 for v in r.loads))
    readings = tuple(off if i == wrong else o for i, o in enumerate(good.readings))
    found = reconcile(loaded.truck, names(loaded), replace(good, readings=readings))
    assert [one.label for one in found.left_out] == [r.label]
    assert found.left_out[0].off == pytest.approx(0.12, rel=0.15)
    assert not found.agrees
    assert found.after == pytest.approx(whole_of(loaded.truck), rel=0.03, abs=1e-3)


def test_good_readings_are_seldom_doubted(loaded: Loaded) -> None:
    doubted = 0
    for seed in range(12):
        good = weighed(loaded.truck, loaded.truck, seed)
        doubted += bool(reconcile(loaded.truck, names(loaded), good).left_out)
    assert doubted <= 1


def test_the_board_pulls_too(loaded: Loaded) -> None:
    parts = tuple(replace(p, place_sd=0.004) for p in loaded.truck.parts)
    # All but the parts' places is measured: else the tyres' give takes most of the blame.
    loose = replace(loaded.truck, parts=parts, uncertain=())
    lifted = {p.row: np.array([0.0, 0.0, 0.003]) for p in loose.parts if p.carrier == "chassis"}
    real = with_shifts(loose, lifted)
    psi = list(np.radians([0.0, 90.0, 180.0, 270.0]))
    angles = predict(real, psi, [True] * 4).angle
    readings = tuple(
        BoardReading(h, (float(a),) * 3, True) for h, a in zip(psi, angles, strict=True)
    )
    board = BoardReadings(readings, float(np.radians(0.1)), float(np.radians(0.1)))
    found = reconcile(loose, names(loaded), None, board)
    assert found.agrees
    rise = whole_of(real)[3] - whole_of(loose)[3]
    assert found.after[3] - found.before[3] == pytest.approx(rise, rel=0.35)


@pytest.mark.parametrize("off_deg", [-4.0, -3.0, 3.0])
def test_an_odd_climb_leaves_good_side_readings_alone(loaded: Loaded, off_deg: float) -> None:
    psi = np.radians([90.0, 270.0, 0.0])
    angles = predict(loaded.truck, list(psi), [True] * 3).angle
    angles = angles + np.radians([0.0, 0.0, off_deg])
    repeats = np.radians([-0.1, 0.0, 0.1])
    readings = tuple(
        BoardReading(float(h), tuple(a + repeats), True, rail=True)
        for h, a in zip(psi, angles, strict=True)
    )
    board = BoardReadings(readings, float(np.radians(0.1)), float(np.radians(0.2)))
    found = reconcile(loaded.truck, names(loaded), None, board)
    assert [one.label for one in found.left_out] == ["heading 0"]
    assert found.left_out[0].off == pytest.approx(np.radians(off_deg), abs=1e-4)
    assert found.after == pytest.approx(found.before, abs=1e-6)


def test_one_reading_that_the_file_rules_out_leaves_the_file_as_it_is(loaded: Loaded) -> None:
    readings = (BoardReading(0.0, tuple(np.radians([30.0, 30.1, 30.2])), True),)
    board = BoardReadings(readings, float(np.radians(0.1)), float(np.radians(0.2)))
    found = reconcile(loaded.truck, names(loaded), None, board)
    assert [one.label for one in found.left_out] == ["heading 0"]
    assert found.after == pytest.approx(found.before)
    assert not found.agrees


def test_an_instrument_is_no_further_off_than_it_says() -> None:
    """A product of two unknowns, which full Gauss-Newton steps from (1, 0) throw far about."""
    kinds = [Scatter(1e-8, 0.0, 50.0)]
    known = [
        Prior("share", 1.0, 0.1),
        Prior("part", 0.0, 1.0, least=-0.5),
        Prior("meter", 0.0, 1.0),
    ]

    def model(p: Array) -> Array:
        share, part, meter = p.T
        return np.column_stack([share * (1 + 20 * part) + meter, 3 * part, meter])

    data = [Datum(name, v, 1) for name, v in (("one", 9.0), ("two", -2.4), ("three", 4.0))]
    found = fit_within(model, data, kinds, known)
    limits = np.array([k.limits for k in known])
    assert limits[1] == pytest.approx([-0.5, np.sqrt(3)])
    assert np.all((found.values >= limits[:, 0] - 1e-9) & (found.values <= limits[:, 1] + 1e-9))
    nearby = found.values + 1e-3 * np.random.default_rng(2).normal(size=(2000, 3))
    nearby = np.clip(nearby, *limits.T)
    gaps = (model(nearby) - [d.value for d in data]) / 1e-4
    priors = (nearby - [k.value for k in known]) / [k.sd for k in known]
    cost = np.sum(gaps**2, axis=1) + np.sum(priors**2, axis=1)
    assert found.chi_square <= cost.min()


def test_nothing_to_move_or_to_pull_is_said(loaded: Loaded) -> None:
    with pytest.raises(ValueError, match="no readings"):
        reconcile(loaded.truck, names(loaded))
    rigid = replace(
        loaded.truck,
        parts=tuple(replace(p, mass_sd=0.0, place_sd=0.0) for p in loaded.truck.parts),
    )
    with pytest.raises(ValueError, match="no part may move"):
        reconcile(rigid, names(loaded), weighed(rigid, rigid))


def test_rows_move_as_the_truck_does(loaded: Loaded) -> None:
    """The quick mass and CG are those of the truck rebuilt, mirrored and repeated rows too."""
    rng = np.random.default_rng(1)
    count = len(names(loaded))
    by = rng.normal(size=(count, 4)) * 1e-3
    old = {p.row: p.body.mass for p in loaded.truck.parts}
    built = with_masses(loaded.truck, {r: m + by[r, 0] for r, m in old.items()})
    built = with_shifts(built, {r: by[r, 1:] for r in old})
    assert rows_of(loaded.truck).whole(by[None])[0] == pytest.approx(whole_of(built), rel=1e-12)


# Writing


@pytest.fixture(scope="module")
def moved(loaded: Loaded) -> Reconciled:
    real = with_shifts(
        heavier(loaded, "cab", 5.0), {row(loaded, "battery pack"): np.array([0.001, 0, 0.001])}
    )
    return reconcile(loaded.truck, names(loaded), weighed(real, loaded.truck, None))


def test_the_new_file_is_the_reconciled_truck_with_its_comments(
    loaded: Loaded, moved: Reconciled, tmp_path: Path
) -> None:
    before = loaded.path.read_bytes()
    again = write_reconciled(loaded, moved, tmp_path / "new.toml", ["scales.toml"])
    assert loaded.path.read_bytes() == before
    got = whole_of(again.truck)
    assert got[0] == pytest.approx(moved.after[0], abs=3e-4)
    assert got[1:] == pytest.approx(moved.after[1:], abs=5e-5)
    text = (tmp_path / "new.toml").read_text()
    assert text.startswith("# Reconciled with scales.toml; before: bramble.toml\n")
    comments = [line for line in before.decode().splitlines() if line.startswith("#")]
    assert comments
    assert [line for line in text.splitlines()[1:] if line.startswith("#")] == comments


def test_a_truck_that_did_not_move_keeps_its_text(loaded: Loaded) -> None:
    same = reconcile(loaded.truck, names(loaded), weighed(loaded.truck, loaded.truck, None))
    assert new_text(loaded, same) == loaded.path.read_text()


def test_nothing_is_overwritten(loaded: Loaded, tmp_path: Path) -> None:
    there = tmp_path / "there.toml"
    there.write_text("mine")
    with pytest.raises(InputError, match="nothing is overwritten"):
        new_path(loaded, there)
    mine = tmp_path / "bramble.toml"
    mine.write_text(loaded.path.read_text())
    own = load_text(mine.read_text(), mine)
    assert new_path(own, None) == tmp_path / "bramble.reconciled.toml"
    assert new_path(loaded, None).parent == Path.cwd()


def test_the_cases_weigh_with_a_kitchen_scale() -> None:
    assert KITCHEN.resolution == 0.001
