"""Where a truck goes over or slides, found by holding the table still.

Angles rad, widths of brackets rad, ways m. Raises `InputError` past the settings' budget of steps.

Source: strides, then bisection, any numerical text; what a number hangs on is found by making one
numerical setting finer at a time, as in P. J. Roache, Verification and Validation in Computational
Science and Engineering (1998) (from memory). The thresholds were found here by trial.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from crossfall.trials.log import Fate
from crossfall.trials.outcome import FINER, SHORT, Bracket
from crossfall.trials.pace import Pace
from crossfall.trials.table import Moment, Tilting

SETTLED = 10.0  # times as far as at rest a truck may still move where its tilting starts
MOST_JUMPS = 4  # after which it begins afresh; one that jumps more often only rocks
OTHER_WAY = 0.004  # of the weight, by which loads differ that another way has led to
SLIPS = 1e-4  # m; tyres that slip less on the way move no tip
OTHER = 0.7  # of the strides, in the repeat


@dataclass(frozen=True)
class _Search:
    """What one search found, and the moments at which it rested, upwards."""

    bracket: Bracket
    rests: tuple[Moment, ...]
    jumped: bool


def search(run: Tilting, rest: Moment, below: float, pace: Pace) -> Bracket:
    """From `rest`, first to a little `below` where it goes, if that is known, as fast as the table
    tilted there, then in strides.

    Then how much of that hangs on how it was done: the truck's last strides are done again, one
    thing finer at a time. Where it jumped, or slid, the whole search is done again, everything
    finer and in other strides. What comes after a jump may hang on how the swing dies away, since
    light tyres slip in it: there it is done again with more drag, too, which is nearer to a truck
    that never swings.
    """
    if below > rest.theta:
        rest = _hold(run, rest, below, replace(pace, steady=pace.slow), 1) or rest
    one = _narrowed(run, rest, pace, 1)
    if one.bracket.goes == "rests" or not pace.checks:
        return one.bracket
    first: tuple[float, ...] = ()
    if one.bracket.goes == "slides":  # all in the last strides: what held before holds again
        rest = one.rests[-min(3, len(one.rests))]
        first = one.bracket.low, one.bracket.high
    elif not one.jumped and check(run, one, pace):
        return one.bracket
    times = FINER["all"]
    slower = _slower(pace, times)
    finer = replace(slower, stride=OTHER * pace.stride, bracket=2 * pace.bracket)
    tips = one.bracket.goes == "tips"
    run.drag(FINER["way"] if tips else 1.0)
    run.table.rig.refine(step=times, solver=times, contact=times)
    try:
        again = _another_way(run, rest, finer, 2) if tips else None
        _narrowed(run, again or rest, finer, 2, first)
    finally:
        run.table.rig.refine()
        run.drag(1.0)
    return one.bracket


def settling(pace: Pace) -> Pace:
    """For the end of the way from the level."""
    return replace(pace, still=SETTLED * pace.still)


def _slower(pace: Pace, times: float) -> Pace:
    return replace(
        pace,
        approach=pace.approach / times,
        steady=pace.steady / times,
        gently=pace.gently * times,
        still=pace.still / times,
    )


def check(run: Tilting, found: _Search, pace: Pace) -> bool:
    """Go from the first rest to one below the tip, as usual and with one thing finer at a time:
    all that tyres slip on the way tells. Solver and contacts slip no tyre: for them it goes from
    the rest before, as it has already done. At last from the level, with more drag. False where
    there are too few rests for that, it does not come to rest, or the way decides."""
    rests, rig = found.rests, run.table.rig
    apart = [i for i in range(1, len(rests)) if rests[i].theta < found.bracket.low - pace.bracket]
    if not apart:
        return False
    end, loads = rests[apart[-1]].theta, []
    for vary in ("base", *rig.varies, "rate"):
        own = pace
        if vary == "rate":
            own = _slower(pace, FINER["rate"])
        elif vary != "base":
            rig.refine(**{vary: FINER[vary]})
        try:
            start = rests[apart[-1] - 1 if vary in SHORT else 0]
            if _hold(run, start, end, own, 0, vary) is None:
                return False
        finally:
            rig.refine()
        loads.append(run.loads)
    return _comes_another_way(run, rests[0], end, loads[0], pace)


def _comes_another_way(
    run: Tilting, rest: Moment, end: float, before: Sequence[float], pace: Pace
) -> bool:
    """From the level with more drag, whether loads (4,) N at `end` are what they were before. It is
    not tried where no tyre has slipped by `rest`."""
    run.back(rest)
    if run.slipped < SLIPS:
        return True
    run.drag(FINER["way"])
    try:
        other = _another_way(run, rest, pace, 0, "way")
    finally:
        run.drag(1.0)
    if other is None or _hold(run, other, end, pace, 0, "way") is None:
        return False
    apart = max(abs(a - b) for a, b in zip(run.loads, before, strict=True))
    return apart < OTHER_WAY * run.table.weight


def _narrowed(
    run: Tilting, rest: Moment, pace: Pace, number: int, first: Sequence[float] = ()
) -> _Search:
    """In strides from `rest`, and by halves. first: angles (rad) to try before, upwards.

    Where it went from before a jump says nothing of where it goes from after it.
    """
    high, fresh, rests, jumps = math.inf, 0, [rest], False
    goes: Fate = "rests"
    while high - rest.theta > 1.001 * pace.bracket and rest.theta < pace.limit:
        ahead = [theta for theta in first if rest.theta < theta < high]
        test = min(ahead or ((rest.theta + high) / 2, rest.theta + pace.stride))
        moment = _hold(run, rest, test, pace, number)
        if moment is None:
            high, goes = test, run.ended.fate
            continue
        rest = moment
        rests.append(rest)
        if not run.ended.jumped:
            continue
        jumps = True
        if high - test > pace.bracket and math.isfinite(high) and fresh < MOST_JUMPS:
            high, goes, fresh = math.inf, "rests", fresh + 1
            run.log.afresh()
    return _Search(Bracket(rest.theta, high, goes, run.fell), tuple(rests), jumps)


def _another_way(
    run: Tilting, rest: Moment, pace: Pace, number: int, vary: str = ""
) -> Moment | None:
    """To the angle of a rest again, from the level: kept; None where it does not rest there."""
    run.back(run.kept[0])
    run.begin("approach", number, vary)
    run.approach(rest.theta, pace.approach, math.inf)
    if run.fate(settling(pace)) != "rests":
        return None
    run.keep()
    return run.kept[-1]


def _hold(
    run: Tilting, rest: Moment, theta: float, pace: Pace, number: int, vary: str = ""
) -> Moment | None:
    """The moment of rest at theta, kept; None where it does not come to rest there.

    Always from a truck at rest: one that comes off the moving table may go over early.
    """
    run.back(rest)
    run.begin("hold", number, vary)
    run.move(theta, pace.steady, pace.gently)
    if run.fate(pace) != "rests":
        return None
    run.keep()
    return run.kept[-1]
