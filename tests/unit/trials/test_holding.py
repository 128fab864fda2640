"""The search for where a truck goes, on trucks that are only rules."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import pytest

from crossfall.trials.holding import bracket
from crossfall.trials.pace import Pace

PACE = Pace(bracket=0.01, stride=0.1, limit=1.5)


@dataclass
class Rest:
    theta: float


@dataclass
class Rules:
    """Goes above `tip`. carried: furthest stride (rad) over `snap` from which it stands again."""

    tip: float
    snap: float = math.inf
    carried: float = math.inf
    theta: float = 0.0
    fell: int = 2
    kept: list[Rest] = field(default_factory=list)
    jumped: list[float] = field(default_factory=list)
    holds: int = 0
    came_from: float = 0.0

    def back(self, rest):
        self.theta = rest.theta

    def move(self, theta, rate, *, least):
        assert theta > self.theta  # upwards, from rest
        self.came_from, self.theta = self.theta, theta

    def keep(self):
        self.kept.append(Rest(self.theta))

    def fate(self, pace):
        self.holds += 1
        if self.theta > self.tip:
            return "tips"
        if self.came_from <= self.snap < self.theta:
            if self.theta - self.snap > self.carried:
                return "tips"
            self.jumped.append(self.theta)
        return "rests"


@pytest.mark.parametrize("below", [0.0, 0.4, 0.62, 0.7])
def test_it_is_found_wherever_it_is_looked_for(below):
    found = bracket(Rules(tip=0.637), Rest(0.1), below, PACE)
    assert found.low <= 0.637 < found.high
    assert found.high - found.low <= 0.01001
    assert (found.goes, found.fell) == ("tips", 2)


def test_one_that_rests_up_to_the_limit_is_told():
    found = bracket(Rules(tip=9.0), Rest(0.1), 0.5, PACE)
    assert found.goes == "rests"
    assert math.isinf(found.high)


def test_what_it_did_before_a_jump_says_nothing_of_after():
    """From far it is carried over by its jump, from near it stands again, until its tip."""
    found = bracket(Rules(tip=0.83, snap=0.52, carried=0.03), Rest(0.1), 0.4, PACE)
    assert found.low <= 0.83 < found.high


def test_where_the_strides_decide_both_ends_are_told():
    """One that goes at its snap when it comes in the longer strides, and at its tip in others."""

    class Strides(Rules):
        def fate(self, pace):
            if self.came_from <= 0.5 < self.theta and round(self.came_from, 9) in (0.4, 0.5):
                return "tips"
            return super().fate(pace)

    found = bracket(Strides(tip=0.9), Rest(0.1), 0.0, PACE)
    assert found.low < 0.52
    assert found.high > 0.9


def test_a_truck_that_jumps_at_every_look_does_not_take_for_ever():
    """It stands wherever it comes to in small enough strides, and never otherwise."""

    class Rocks(Rules):
        def fate(self, pace):
            self.holds += 1
            if self.theta - self.came_from > 0.012:
                return "tips"
            self.jumped.append(self.theta)
            return "rests"

    rules = Rocks(tip=9.0)
    found = bracket(rules, Rest(0.1), 0.0, PACE)
    assert found.goes == "tips"
    assert rules.holds < 200
