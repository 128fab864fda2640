"""The weigh-in: exact readings come back, intervals cover, bad readings and weak set-ups show."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from weighin_cases import AXLES, BOTH_ENDS, KITCHEN, RULER, SPRINGS, TRUTH, WHEELS, read, session

from crossfall.measurement.weigh_in import weigh_in
from crossfall.measurement.weigh_in_next import next_readings
from crossfall.measurement.weigh_in_session import Free, Measured, Session, WeighingScale

ON_FOUR = tuple(WHEELS) + tuple((wheel, "rear") for wheel, _ in WHEELS)


@pytest.mark.parametrize(
    "blank",
    [
        session(AXLES),
        session(BOTH_ENDS, repeats=1),
        session((*WHEELS, ("rear", "front"))),
        session(ON_FOUR, together=True),
        session((*AXLES[:4], ("right", "left"))),
        session(AXLES, free=SPRINGS),
        session((*WHEELS, ("front", "rear"), ("right", "left")), free=SPRINGS),
        session((("all", ""), ("rear", ""), ("left", ""), ("rear", "front"))),
    ],
    ids=["axles", "both ends", "wheels", "four scales", "side", "free", "free side", "whole"],
)
def test_exact_readings_give_the_truth(blank: Session) -> None:
    answer = weigh_in(read(blank))
    for estimate, truth in zip(answer.estimates, TRUTH, strict=True):
        assert estimate.value == pytest.approx(truth, rel=1e-9, abs=1e-10)
    assert answer.outliers == ()


def coverage(
    blank: Session, placement: float, trials: int, seed: int = 20
) -> tuple[list[float], float]:
    """Share of trials whose 95 % interval holds the truth (mass, x, y, z), and with a doubt."""
    rng = np.random.default_rng(seed)
    hits, outliers = np.zeros(4), 0
    for _ in range(trials):
        truth = (
            rng.uniform(2.0, 4.0),
            rng.uniform(-0.03, 0.03),
            rng.uniform(-0.006, 0.006),
            rng.uniform(0.075, 0.120),
        )
        answer = weigh_in(read(blank, truth, rng, placement))
        hits += [e.low <= t <= e.high for e, t in zip(answer.estimates, truth, strict=True)]
        outliers += bool(answer.outliers)
    return list(hits / trials), outliers / trials


def test_intervals_cover_the_truth_in_a_thousand_weigh_ins() -> None:
    """1 g steps, 2 g of placing, 0.5 mm rulers and block, 0.2 % scale, three repeats."""
    covered, doubted = coverage(session(AXLES), 0.002, 1000)
    assert all(0.93 <= c <= 0.97 for c in covered)
    assert doubted < 0.02


@pytest.mark.parametrize(
    ("blank", "placement"),
    [
        (session(BOTH_ENDS, repeats=2), 0.006),
        (session(ON_FOUR, together=True, repeats=2), 0.004),
        (session(AXLES, free=SPRINGS), 0.002),
        (session(BOTH_ENDS, scale=WeighingScale(0.005, 0.002, 0.0005)), 0.0015),
    ],
    ids=["clumsy, two repeats", "four scales", "free suspension", "5 g steps"],
)
def test_intervals_cover_in_other_set_ups(blank: Session, placement: float) -> None:
    """100 trials have a standard error of 2.2 %: three of those below 95 %."""
    covered, _ = coverage(blank, placement, 100)
    assert all(0.885 <= c <= 1.0 for c in covered)


def test_more_repeats_and_a_higher_block_narrow_the_height() -> None:
    rng = np.random.default_rng(7)
    plain = weigh_in(read(session(AXLES), rng=rng, placement=0.002))
    repeats = weigh_in(read(session(AXLES, repeats=12), rng=rng, placement=0.002))
    block = Measured(0.13, 0.0005)
    higher = weigh_in(read(session(AXLES, block=block), rng=rng, placement=0.002))
    assert repeats.z.u < 0.8 * plain.z.u
    assert higher.z.u < 0.8 * plain.z.u


def test_few_repeats_mean_few_degrees_of_freedom_and_a_wide_interval() -> None:
    rng = np.random.default_rng(7)
    answer = weigh_in(read(session(AXLES[:2], repeats=2), rng=rng, placement=0.02))
    assert answer.scatter_dof == 2
    assert answer.mass.dof < 2.5
    assert answer.mass.high - answer.mass.low > 2 * 3.5 * answer.mass.u


def test_level_readings_alone_leave_the_height_unmeasured_and_say_so() -> None:
    answer = weigh_in(read(session(AXLES[:4])))
    assert not answer.z.measured
    assert answer.x.value == pytest.approx(TRUTH[1], abs=1e-9)
    assert any("height not measured" in w for w in answer.warnings)


def test_axles_alone_leave_the_side_offset_unmeasured() -> None:
    answer = weigh_in(read(session((("front", ""), ("rear", ""), ("rear", "front")))))
    assert not answer.y.measured
    assert answer.z.value == pytest.approx(TRUTH[3], abs=1e-9)


def test_one_axle_alone_cannot_tell_the_mass() -> None:
    with pytest.raises(ValueError, match="do not add up"):
        weigh_in(read(session((("front", ""),))))


def test_a_raise_too_small_for_the_scale_is_warned_of_and_the_raise_named_is_enough() -> None:
    coarse, low = WeighingScale(0.005, 0.002, 0.0005), Measured(0.020, 0.0005)
    answer = weigh_in(read(session(AXLES, scale=coarse, block=low)))
    (text,) = [w for w in answer.warnings if "too little" in w]
    named = float(text.split("raise it ")[1].split(" mm")[0])
    enough = Measured(named * 1e-3, 0.0005)
    again = weigh_in(read(session(AXLES, scale=coarse, block=enough)))
    assert not any("too little" in w for w in again.warnings)
    fine = weigh_in(read(session(AXLES, scale=WeighingScale(0.0005), block=low)))
    assert not any("too little" in w for w in fine.warnings)


def test_free_suspension_is_accounted_for_and_ignoring_it_is_wrong() -> None:
    true = read(session(AXLES, free=SPRINGS))
    taken_as_locked = replace(true, free=None)
    assert weigh_in(true).z.value == pytest.approx(TRUTH[3], abs=1e-9)
    wrong = weigh_in(taken_as_locked).z
    assert abs(wrong.value - TRUTH[3]) > 4 * wrong.u
    assert any("suspension was free" in w for w in weigh_in(true).warnings)


def test_unknown_springs_only_bound_the_height() -> None:
    wide = {
        n: Measured(getattr(SPRINGS, n).value, 0.65 * getattr(SPRINGS, n).value)
        for n in ("rate_front", "rate_rear", "unsprung_front", "unsprung_rear")
    }
    bounded = replace(SPRINGS, known=False, **wide)
    known, guessed = (weigh_in(read(session(AXLES, free=f))) for f in (SPRINGS, bounded))
    assert guessed.z.u > 1.8 * known.z.u
    assert any("only bounded" in w for w in guessed.warnings)


def test_a_lone_scale_taller_than_its_blocks_is_warned_of_on_a_locked_truck() -> None:
    wheels = (*WHEELS, ("rear", "front"))
    locked = weigh_in(read(session(wheels)))
    free = weigh_in(read(session(wheels, free=SPRINGS)))
    assert any("taller than the blocks" in w for w in locked.warnings)
    assert not any("taller than the blocks" in w for w in free.warnings)
    assert locked.mass.u > 10 * free.mass.u


@pytest.mark.parametrize("wrong", range(5))
def test_a_slip_of_the_pen_is_found_or_at_least_no_good_reading_is_blamed(wrong: int) -> None:
    """A level reading written 80 g off: only left + right against front + rear can tell."""
    good = read(session(AXLES), rng=np.random.default_rng(wrong), placement=0.001)
    r = good.readings[wrong]
    off = replace(r, loads=tuple(v + 0.08 for v in r.loads))
    readings = tuple(off if i == wrong else o for i, o in enumerate(good.readings))
    answer = weigh_in(replace(good, readings=readings))
    blamed = {d.label for d in answer.outliers}
    if wrong < 4:
        assert blamed
        assert answer.chi_square > 20
    else:  # nothing else measures the height: a wrong raised reading cannot show
        assert not blamed


def test_a_wrong_raised_reading_shows_when_both_ends_were_raised() -> None:
    good = read(session(BOTH_ENDS), rng=np.random.default_rng(1), placement=0.001)
    last = good.readings[-1]
    off = replace(last, loads=tuple(v + 0.08 for v in last.loads))
    answer = weigh_in(replace(good, readings=(*good.readings[:-1], off)))
    assert answer.outliers
    assert answer.outliers[0].label in {good.readings[-1].label, good.readings[-2].label}


# What to measure next


def test_advice_foretells_the_uncertainty_that_the_reading_then_leaves() -> None:
    stated = WeighingScale(0.001, 0.002, 0.0005, placement=0.002)
    before = read(session(AXLES, scale=stated, repeats=3))
    plan = next_readings(before)
    best = plan.advice[0]
    assert plan.worst == "z"
    assert "raised 140 mm" in best.what
    at, raised = ("front", "rear") if "front axle" in best.what else ("rear", "front")
    extra = session(((at, raised),), block=Measured(0.14, 0.0005), scale=stated).readings
    after = weigh_in(read(replace(before, readings=(*before.readings, *extra))))
    told = [best.after[i] for i in range(4)]
    # The scatter's own estimate tightens a little too, which advice cannot know.
    assert [e.u for e in after.estimates] == pytest.approx(told, rel=0.05)


def test_advice_asks_for_a_raised_end_when_the_height_is_missing() -> None:
    plan = next_readings(read(session(AXLES[:4])))
    assert plan.worst == "z"
    assert "raised" in plan.advice[0].what
    assert plan.advice[0].gain > 10


def test_advice_asks_for_a_side_when_only_that_is_missing() -> None:
    plan = next_readings(read(session((("front", ""), ("rear", ""), ("rear", "front")))))
    assert plan.worst == "y"
    assert "side" in plan.advice[0].what


def test_what_was_weighed_the_right_way_round_may_be_weighed_turned_round() -> None:
    before = read(session(AXLES, floor=0.02))
    assert any("front axle, level, turned round" in a.what for a in next_readings(before).advice)


@pytest.mark.parametrize(("free", "level"), [(None, True), (SPRINGS, True), (SPRINGS, False)])
def test_what_was_done_with_the_suspension_locked_is_not_asked_for_again(
    free: Free | None, level: bool
) -> None:
    before = read(session(BOTH_ENDS, free=free))
    readings = tuple(replace(r, locked=level or bool(r.raised)) for r in before.readings)
    locked = replace(before, readings=readings)
    asked = {a.what for a in next_readings(locked).advice}
    for reading in locked.readings:
        held = " with the suspension locked" if free and reading.raised else ""
        assert f"weigh the {reading.label}{held}, 3 times" not in asked


def test_no_advice_makes_anything_worse() -> None:
    before = read(session(BOTH_ENDS), rng=np.random.default_rng(2), placement=0.002)
    u = [e.u for e in weigh_in(before).estimates]
    for advice in next_readings(before).advice:
        assert all(advice.after <= np.array(u) * (1 + 1e-6)), advice.what


def test_ruler_and_scale_are_what_the_cases_say() -> None:
    """Guards the coverage test: its errors must be those of a kitchen and a ruler."""
    assert KITCHEN.resolution == 0.001
    assert RULER.wheelbase.tolerance == 0.0005
