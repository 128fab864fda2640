"""The search for where a truck goes, on trucks that are only rules."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from types import SimpleNamespace

import pytest

from crossfall.trials.holding import check, search
from crossfall.trials.outcome import FINER, joined_brackets
from crossfall.trials.pace import Pace

PACE = Pace(bracket=0.01, stride=0.1, limit=1.5)


@dataclass
class Rest:
    theta: float


@dataclass
class Rig:
    varies: tuple[str, ...] = ("step",)
    finer: dict[str, int] = field(default_factory=dict)

    def refine(self, **times):
        self.finer = {"drag": self.finer["drag"]} | times if "drag" in self.finer else times


@dataclass
class Rules:
    """Goes above `tip`. carried: furthest stride (rad) over `snap` from which it stands again."""

    tip: float
    snap: float = math.inf
    carried: float = math.inf
    theta: float = 0.0
    fell: int = 2
    kept: list[Rest] = field(default_factory=list)
    holds: list[tuple] = field(default_factory=list)  # search, vary, finer, theta, fate, afresh
    came_from: float = 0.0
    slipped: float = 1.0
    loads: tuple[float, ...] = (1.0, 1.0, 1.0, 1.0)
    other_way: tuple[float, ...] = (1.0, 1.0, 1.0, 1.0)
    ways: list[tuple] = field(default_factory=list)  # search, vary, finer

    def __post_init__(self):
        self.table = SimpleNamespace(rig=Rig(), weight=4.0)
        self.kept.append(Rest(0.0))
        self.log = self

    def drag(self, times):
        rest = {name: n for name, n in self.table.rig.finer.items() if name != "drag"}
        self.table.rig.finer = rest | ({"drag": times} if times != 1.0 else {})

    def back(self, rest):
        self.theta = rest.theta

    def begin(self, kind, number, vary):
        self.now = kind, number, vary

    def move(self, theta, rate, least):
        assert theta > self.theta  # upwards, from rest
        self.came_from, self.theta = self.theta, theta

    def approach(self, theta, rate, keep):
        assert self.theta == 0.0  # all the way
        self.came_from, self.theta = theta, theta

    def keep(self):
        self.kept.append(Rest(self.theta))

    def afresh(self):
        self.holds[-1] = (*self.holds[-1][:-1], True)

    def fate(self, pace):
        fate, jumped = self.decide()
        self.ended = SimpleNamespace(fate=fate, jumped=jumped)
        kind, *now = self.now
        if kind == "hold":
            self.holds.append((*now, self.table.rig.finer, self.theta, fate, False))
        else:
            self.ways.append((*now, self.table.rig.finer))
            self.loads = self.other_way
        return fate

    def decide(self):
        if self.theta > self.tip:
            return "tips", False
        if self.came_from <= self.snap < self.theta:
            if self.theta - self.snap > self.carried:
                return "tips", False
            return "rests", True
        return "rests", False

    def of(self, number):
        return [hold for hold in self.holds if hold[0] == number]


@pytest.mark.parametrize("below", [0.0, 0.4, 0.62, 0.7])
def test_it_is_found_wherever_it_is_looked_for(below):
    found = search(Rules(tip=0.637), Rest(0.1), below, PACE)
    assert found.low <= 0.637 < found.high
    assert found.high - found.low <= 0.01001
    assert (found.goes, found.fell) == ("tips", 2)


def test_one_that_rests_up_to_the_limit_is_told():
    found = search(Rules(tip=9.0), Rest(0.1), 0.5, PACE)
    assert found.goes == "rests"
    assert math.isinf(found.high)


def test_what_it_did_before_a_jump_says_nothing_of_after():
    """From far it is carried over by its jump, from near it stands again, until its tip."""
    rules = Rules(tip=0.83, snap=0.52, carried=0.03)
    found = search(rules, Rest(0.1), 0.4, PACE)
    assert found.low <= 0.83 < found.high
    assert any(afresh for *_, afresh in rules.of(1))


def test_its_own_error_is_measured_one_thing_at_a_time_below_the_tip():
    rules = Rules(tip=0.637)
    found = search(rules, Rest(0.1), 0.4, PACE)
    checks = rules.of(0)
    assert [(vary, finer) for _, vary, finer, *_ in checks] == [
        ("base", {}),
        ("step", {"step": FINER["step"]}),
        ("rate", {}),
        ("way", {}),
    ]
    assert rules.ways == [(0, "way", {"drag": FINER["way"]})]
    for *_, theta, fate, _ in checks:
        assert fate == "rests"
        assert theta < found.low
    assert not rules.of(2)
    assert rules.table.rig.finer == {}


def test_where_no_tyre_slips_it_comes_no_other_way():
    rules = Rules(tip=0.637, slipped=0.0)
    search(rules, Rest(0.1), 0.4, PACE)
    assert [vary for _, vary, *_ in rules.of(0)] == ["base", "step", "rate"]
    assert not rules.ways


def test_where_another_way_leads_to_other_loads_it_searches_again_from_there():
    rules = Rules(tip=0.637, other_way=(1.0, 1.1, 0.9, 1.0))
    search(rules, Rest(0.1), 0.4, PACE)
    assert [number for number, *_ in rules.ways] == [0, 2]
    assert rules.of(2)


def test_after_a_jump_everything_is_done_again_finer_and_with_more_drag():
    rules = Rules(tip=0.83, snap=0.52)
    search(rules, Rest(0.1), 0.4, PACE)
    assert not rules.of(0)
    finer = dict.fromkeys(("step", "solver", "contact"), FINER["all"]) | {"drag": FINER["way"]}
    assert rules.ways == [(2, "", finer)]
    assert all(used == finer for _, _, used, *_ in rules.of(2))
    assert rules.of(2)
    assert rules.table.rig.finer == {}


def test_a_quick_trial_measures_no_error():
    from dataclasses import replace

    rules = Rules(tip=0.83, snap=0.52)
    search(rules, Rest(0.1), 0.4, replace(PACE, checks=False))
    assert {number for number, *_ in rules.holds} == {1}


def test_too_few_rests_are_no_check():
    rules = Rules(tip=0.637)
    found = SimpleNamespace(rests=(Rest(0.63), Rest(0.635)), bracket=SimpleNamespace(low=0.63))
    assert not check(rules, found, PACE)


def test_where_two_searches_lie_apart_the_bracket_holds_both():
    from crossfall.trials.outcome import Bracket

    one, other = Bracket(0.5, 0.51, "tips", 1), Bracket(0.8, 0.82, "tips", 1)
    assert joined_brackets(one, other)[0] == Bracket(0.5, 0.82, "tips", 1)
    assert joined_brackets(other, one)[0] == Bracket(0.5, 0.82, "tips", 1)
    near = Bracket(0.505, 0.525, "tips", 1)
    assert joined_brackets(one, near) == (
        one,
        pytest.approx(0.02),
    )  # half the step: as much again is left
    assert joined_brackets(one, None) == (one, 0.0)


def test_a_truck_that_jumps_at_every_look_does_not_take_for_ever():
    """It stands wherever it comes to in small enough strides, and never otherwise."""

    class Rocks(Rules):
        def decide(self):
            if self.theta - self.came_from > 0.012:
                return "tips", False
            return "rests", True

    rules = Rocks(tip=9.0)
    found = search(rules, Rest(0.1), 0.0, PACE)
    assert found.goes == "tips"
    assert len(rules.holds) < 400
