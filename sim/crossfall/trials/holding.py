"""Where a truck goes over or slides, found by holding the table still."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from crossfall.trials.pace import Pace
from crossfall.trials.table import Fate, Moment, Tilting

MOST_JUMPS = 4  # after which it begins afresh; one that jumps more often only rocks
OTHER = 0.7  # of the strides, in the repeat


@dataclass(frozen=True)
class Bracket:
    """The last moment at rest, an angle at which it goes (rad, infinite: none), how it goes, and
    over what (an index of PAIRS)."""

    rest: Moment
    high: float
    goes: Fate
    fell: int

    @property
    def low(self) -> float:
        return self.rest.theta


def bracket(run: Tilting, rest: Moment, below: float, pace: Pace) -> Bracket:
    """From `rest`, first to a little `below` where it goes, if that is known, then in strides.

    Done again in other strides: where what happens hangs on how a swing dies away, as where a
    light tyre that slips lets the truck jump, the two differ, and the bracket holds both.
    """
    if below > rest.theta:
        rest = _hold(run, rest, below, pace)[1] or rest
    one = _narrowed(run, rest, pace.stride, pace.bracket, pace)
    other = _narrowed(run, rest, OTHER * pace.stride, 2 * pace.bracket, pace)
    if one.low < other.high and other.low < one.high:
        return one
    first, last = sorted((one, other), key=lambda found: found.low)
    return replace(first, high=last.high)


def _narrowed(run: Tilting, rest: Moment, stride: float, width: float, pace: Pace) -> Bracket:
    """In strides from `rest`, and by halves to `width`.

    Where it went from before a jump says nothing of where it goes from after it.
    """
    high, fresh = math.inf, 0
    goes: Fate = "rests"
    while high - rest.theta > 1.001 * width and rest.theta < pace.limit:
        test = min((rest.theta + high) / 2, rest.theta + stride)
        jumps = len(run.jumped)
        fate, moment = _hold(run, rest, test, pace)
        if moment is None:
            high, goes = test, fate
        else:
            rest = moment
            if len(run.jumped) > jumps and high - test > width and fresh < MOST_JUMPS:
                high, goes, fresh = math.inf, "rests", fresh + 1
    return Bracket(rest, high, goes, run.fell)


def _hold(run: Tilting, rest: Moment, theta: float, pace: Pace) -> tuple[Fate, Moment | None]:
    """What becomes of it at theta, and if it rests, that moment, kept.

    Always from a truck at rest: one that comes off the moving table may go over early.
    """
    run.back(rest)
    run.move(theta, pace.steady, least=pace.gently)
    fate = run.fate(pace)
    if fate != "rests":
        return fate, None
    run.keep()
    return fate, run.kept[-1]
