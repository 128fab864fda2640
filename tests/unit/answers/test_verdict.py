"""What is said of an answer, and where the methods disagree."""

from __future__ import annotations

from dataclasses import replace
from math import nan, radians
from types import SimpleNamespace
from typing import Any

import numpy as np
import pytest

from crossfall.answers.answer import TipAnswer, answer
from crossfall.answers.conditions import conditions
from crossfall.answers.verdict import disagreement, verdict
from support import make_truck


@pytest.fixture(scope="module")
def tipping() -> TipAnswer:
    truck = make_truck()
    return answer(truck, conditions(truck, [radians(90.0)], grip=1.2), trial=False).answers[0]


@pytest.fixture(scope="module")
def sliding() -> TipAnswer:
    truck = make_truck()
    return answer(truck, conditions(truck, [radians(90.0)], grip=0.5), trial=False).answers[0]


def tried(answer: TipAnswer, tip: float, **more: Any) -> TipAnswer:
    """The same with a trial that went over at `tip`."""
    trial: Any = SimpleNamespace(**{"outcome": "tips", "tip": tip, "slide": nan, **more})
    return replace(answer, trial=trial)


def test_a_tip_is_told_with_its_range(tipping: TipAnswer) -> None:
    low, high = tipping.range.tip
    assert low <= tipping.compliant <= high
    assert "it goes over its left tyres at" in tipping.verdict
    assert "tips first" in tipping.verdict
    assert "rail" not in tipping.verdict


def test_a_slide_is_told_first_and_the_rail_after(sliding: TipAnswer) -> None:
    assert sliding.slides_first
    assert sliding.outcome == "slides"
    assert sliding.goes == pytest.approx(float(sliding.slide[1]))
    said = sliding.verdict
    assert said.index("let go at 27°") < said.index("against a rail it goes over")
    assert "slides first" in said


def test_one_that_could_not_be_followed_is_told_with_what_its_trial_did(tipping: TipAnswer) -> None:
    lost = replace(tipping, compliant=nan, rail=nan)
    said = verdict(lost)
    assert "could not follow it to its tip" in said
    assert "let go at" in said
    assert "first" not in said
    assert "nan" not in verdict(tried(lost, 0.7))
    assert verdict(tried(lost, 0.7)).endswith("the trial tips at 40.1°")
    assert verdict(tried(lost, nan, outcome="stands")) == said


def test_where_they_agree_nothing_is_said(tipping: TipAnswer) -> None:
    assert disagreement(tipping) == ""
    assert disagreement(tried(tipping, tipping.compliant + radians(0.2))) == ""
    assert "apart" not in verdict(tried(tipping, tipping.compliant))


def test_a_difference_is_told(tipping: TipAnswer) -> None:
    assert "0.5° above" in disagreement(tried(tipping, tipping.compliant + radians(0.5)))
    below = disagreement(tried(tipping, tipping.compliant - radians(0.5)))
    assert "0.5° below" in below
    assert "nothing here explains" in below


def test_a_fall_at_a_snap_is_momentum(tipping: TipAnswer) -> None:
    tip = tipping.compliant - radians(2.0)
    near, far = (tried(replace(tipping, first_snap=tip + radians(d)), tip) for d in (0.1, 1.9))
    assert "momentum" in disagreement(near)
    assert "momentum" not in disagreement(far)


def test_one_tips_and_the_other_slides(tipping: TipAnswer, sliding: TipAnswer) -> None:
    slid = tried(tipping, nan, outcome="slides", slide=radians(40.0))
    assert "the trial slides away at 40.0°" in disagreement(slid)
    assert "the trial goes over at" in disagreement(tried(sliding, radians(26.0)))
    assert disagreement(tried(sliding, nan, outcome="slides")) == ""


def twice(answer: TipAnswer, tip: float, other: float, *, outcome: str = "tips") -> TipAnswer:
    """The same, tried in two engines that saw it go at these angles, +-0.05 deg."""
    made = []
    for name, angle, end in (("one 1", tip, "tips"), ("two 2", other, outcome)):
        ci = (angle - radians(0.05), angle + radians(0.05))
        trial: Any = SimpleNamespace(
            engine=name, outcome=end, tip=angle, slide=angle, tip_ci=ci, slide_ci=ci
        )
        made.append(trial)
    return replace(answer, trial=made[0], other=made[1])


def test_two_engines_are_held_against_each_other(tipping: TipAnswer) -> None:
    tip = tipping.compliant
    assert "engine" not in tipping.verdict
    alike = twice(tipping, tip, tip + radians(0.03))
    assert alike.engines_apart == pytest.approx(radians(0.03))
    assert verdict(alike).endswith("two engines agree within 0.03°")
    apart = verdict(twice(tipping, tip, tip + radians(0.26)))
    assert "the engines say" in apart
    assert "to better than 0.26° here" in apart
    two_ways = twice(tipping, tip, tip, outcome="slides")
    assert np.isnan(two_ways.engines_apart)
    assert "two ways: it tips at" in verdict(two_ways)
