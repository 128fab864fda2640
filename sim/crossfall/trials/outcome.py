"""What a tilt trial found, concluded from its log alone: a kept log gives the same numbers again.

The event is a bracket, found by holding: an angle at which the truck came to rest, and one at which
it went. Its error is measured by the trial itself, term by term. From its first rest the truck is
moved close below the event again, as usual and with one thing finer: the step, the solver's rounds,
how firm contacts are, how slowly the table moves; and once from the level with more drag, as tyres
slip that swing. The pair of wheels that leaves the table then
bears another load; over the slope of that load against the table's angle, that is an angle, and
what is left to a limit of that kind (`LIMIT`) is the term. Where a truck jumps on its way, or
slides, loads say little: there the whole search is done again with everything finer, and the term
is what the two angles differ by; if their brackets lie apart, the interval holds both.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, fields, replace
from typing import Literal

import numpy as np

from crossfall.engines.settings import TrialSettings
from crossfall.trials.fits import Approach, FittedValue, fit_critical_angle
from crossfall.trials.log import Fate, Log, Stretch
from crossfall.trials.pace import Pace
from crossfall.trials.record import Record
from crossfall.truck.model import Array, frozen
from crossfall.truck.support import PAIRS

_Outcome = Literal["tips", "slides", "stands"]
OPPOSITE = (1, 0, 3, 2)
SPAN = math.radians(1.5)  # below a tip, in which load is fitted
_NEAR = math.radians(2.0)  # below a tip, in which a snap is told
SAME = 1e-9  # rad between two table angles that are one
LEFT = 0.001  # of the weight; a truck that tips as its load runs out has less at the last hold
FINER = {
    "step": 2,
    "solver": 4,
    "contact": 4,
    "rate": 2,
    "all": 2,
    "drag": 4,
    "way": 4,
}  # times, in a check
CREEP = {"mujoco": math.radians(0.05)}  # contacts may slip so far below the angle of friction
SHORT = ("solver", "contact")  # checks that go over the last stride only
LIMIT = {name: times / (times - 1) for name, times in FINER.items()}  # an error as 1 / times


@dataclass(frozen=True)
class Terms:
    """Half-widths of the interval's parts, rad, 95 %; they add as squares.

    event: of the bracket, or of bracket and fit together. step, solver, contact, rate, way: see
    above; 0 where the engine has none. repeat: between two searches. rest: what counts as rest.

    Source: independent parts add as squares by JCGM 100 (GUM), 5.1.2 (from memory).
    """

    event: float = 0.0
    step: float = 0.0
    solver: float = 0.0
    contact: float = 0.0
    rate: float = 0.0
    way: float = 0.0
    repeat: float = 0.0
    rest: float = 0.0

    @property
    def half(self) -> float:
        """rad, all together."""
        return math.hypot(*(getattr(self, f.name) for f in fields(self)))


@dataclass(frozen=True)
class TiltTrial:
    """One trial; angles in rad.

    tip: critical angle at zero rate, nan unless it tips: the event, and where the load runs out as
    it tips, event and fit together, each by its error. tip_ci: (low, high), 95 %: the terms, and
    down to the snap where there is one: how it comes to rest there hangs on how its movement is
    damped. event: middle of event_bracket, between an angle at which it stands and one at which it
    does not. load_left: of the truck's weight, on the lifting pair at the last angle it stood.
    fit: the angle at which that load would be gone, with its interval; where there was more than
    LEFT of it, the truck lost its balance first, and the fit is none of the tip. ramp: what the
    moving table showed, late by its rate. lift: (4,) angle at which each uphill wheel left the
    table for good, as the moving table showed it but not above the tip, nan for the wheels it tips
    over; first_lift: the least. snap: highest angle within two degrees of the tip at which it
    jumped and stood again, nan if none was seen. slide, slide_ci: angle at which it began to slide
    and its interval, nan unless it slides before it tips. over: the wheels it tipped over. truck,
    digest: its name, and that of its content. seconds: CPU time it took.
    """

    heading: float
    outcome: _Outcome
    grip: float
    rail: bool
    log: Log = field(repr=False)
    settings: TrialSettings = field(repr=False)
    pace: Pace = field(repr=False)
    engine: str
    truck: str = ""
    digest: str = ""
    seconds: float = 0.0
    terms: Terms = Terms()
    tip: float = math.nan
    tip_ci: tuple[float, float] = (math.nan, math.nan)
    event: float = math.nan
    event_bracket: tuple[float, float] = (math.nan, math.nan)
    load_left: float = math.nan
    fit: FittedValue | None = None
    ramp: float = math.nan
    first_lift: float = math.nan
    lift: Array = field(default_factory=lambda: frozen(np.full(4, math.nan)))
    snap: float = math.nan
    slide: float = math.nan
    slide_ci: tuple[float, float] = (math.nan, math.nan)
    over: tuple[int, int] | None = None

    @property
    def record(self) -> Record:
        """The samples on the way from the level to the end of the tilting."""
        return self.log.record


@dataclass(frozen=True)
class Bracket:
    """Between low, where it rests, and high (rad, infinite: none), it goes: how, over what."""

    low: float
    high: float
    goes: Fate
    fell: int

    @property
    def middle(self) -> float:
        """rad, (low + high) / 2."""
        return (self.low + self.high) / 2


def concluded(trial: TiltTrial) -> TiltTrial:
    """The trial with what its log says; angles rad, loads N.

    A check's term is LIMIT |load finer - load usual| / slope, slope N/rad of the pair's load
    between two rests; LIMIT = n / (n - 1), of an error that falls as 1 / n.
    Source: L. F. Richardson, Phil. Trans. R. Soc. A 210 (1911) 307-357, of first order (from
    memory); the rest derived here from brackets by holding.
    """
    log = trial.log
    tilts = [s for s in log.stretches if s.kind == "tilt"]
    holds = [s for s in log.stretches if s.kind == "hold"]
    begun = [log.end(s) for s in log.stretches if s.kind == "approach" and _first_way(s)][-1]
    searches = [narrowed(log, [s for s in holds if s.search == n], begun[0]) for n in (1, 2)]
    one, other = (b if b.goes != "rests" else None for b in searches)
    if one is None or not tilts:
        return trial
    found, repeat = joined_brackets(one, other)
    half = (found.high - found.low) / 2
    interval = found.middle - half, found.middle + half
    if found.goes == "slides":
        creep = CREEP.get(trial.engine.split()[0], 0.0)
        terms = Terms(event=half, contact=creep, repeat=repeat, rest=trial.pace.floor)
        ends = widened(found.middle, terms.half, interval)
        return replace(trial, outcome="slides", slide=found.middle, slide_ci=ends, terms=terms)
    pair, seen = PAIRS[found.fell], tilts[-1]
    rests = [log.end(s) for s in holds if s.fate == "rests" and s.search and s.vary in ("", "all")]
    stood = [begun, *(r for r in rests if begun[0] < r[0] <= found.low)]
    left = _borne(max(stood, key=lambda r: r[0]), pair)
    fit = fit_critical_angle(_approach(rests, found.middle, pair, log.weight))
    tip, event = found.middle, half
    if fit is not None and left <= LEFT * log.weight:
        tip, event = together(found, fit)
    terms = Terms(event=event, repeat=repeat, rest=trial.pace.floor)
    terms = replace(terms, **_checked(log, holds, found, pair))
    jumped = (log.end(s)[0] for s in holds if s.jumped)
    snap = max((at for at in jumped if found.middle - _NEAR < at), default=math.nan)
    low, high = (
        (tip - terms.half, tip + terms.half) if one is found else widened(tip, terms.half, interval)
    )
    lift = np.full(4, math.nan)
    lift[list(pair)] = [min(seen.touched[w], tip) for w in pair]
    return replace(
        trial,
        outcome="tips",
        terms=terms,
        tip=tip,
        tip_ci=(min(low, snap), high),
        event=found.middle,
        event_bracket=(found.low, found.high),
        load_left=left / log.weight,
        fit=fit,
        ramp=seen.left[found.fell],
        lift=frozen(lift),
        first_lift=float(np.nanmin(lift)),
        snap=snap,
        over=PAIRS[OPPOSITE[found.fell]],
    )


def _first_way(stretch: Stretch) -> bool:
    return not stretch.search and not stretch.vary


def narrowed(log: Log, holds: Iterable[Stretch], begun: float) -> Bracket:
    """What one search says: the last rest, and the lowest angle above it from which it went. begun:
    rad, where it rested before.

    Source: derived here from bisection: the event lies between a rest and a going.
    """
    low, high, fell = begun, math.inf, 0
    goes: Fate = "rests"
    for hold in holds:
        theta = log.end(hold)[0]
        if hold.fate == "rests":
            low = theta
            if hold.afresh:
                high, goes = math.inf, "rests"
        else:
            high, goes, fell = theta, hold.fate, hold.fell
    return Bracket(low, high, goes, fell)


def joined_brackets(one: Bracket, other: Bracket | None) -> tuple[Bracket, float]:
    """The first search's bracket and how far (rad) the other's middle lies from it, times LIMIT;
    or, where they lie apart, one that holds both, and 0.

    Source: derived here from two searches, the second twice as fine; Richardson's limit as in
    `concluded`.
    """
    if other is None:
        return one, 0.0
    if one.low < other.high and other.low < one.high:
        return one, LIMIT["all"] * abs(one.middle - other.middle)
    first, last = sorted((one, other), key=lambda found: found.low)
    return replace(first, high=last.high), 0.0


def widened(at: float, half: float, interval: tuple[float, float]) -> tuple[float, float]:
    """An interval of +-half (rad) about `at` that holds another one.

    Source: derived here from the union of two intervals.
    """
    return min(at - half, interval[0]), max(at + half, interval[1])


def together(found: Bracket, fit: FittedValue) -> tuple[float, float]:
    """Event and fit by their errors, within the bracket, and 95 % half of both; rad.

    The event is as likely anywhere in its bracket, a standard deviation of half / sqrt(3). Weighted
    by inverse variance: at = e + (f - e) s_e^2 / (s_e^2 + s_f^2), sd s_e s_f / sqrt(s_e^2 + s_f^2).
    The bracket alone where the fit lies too far from it or has no width.
    Source: JCGM 100 (GUM), 4.3.7, for the rectangle; weighted means, e.g. P. R. Bevington, Data
    Reduction and Error Analysis (McGraw-Hill 1969) (both from memory).
    """
    half = (found.high - found.low) / 2
    event, other = half / math.sqrt(3), (fit.high - fit.low) / 2 / 1.96
    if not other > 0.0 or abs(fit.value - found.middle) > half + 1.96 * other:
        return found.middle, half
    share = event**2 / (event**2 + other**2)
    at = found.middle + share * (fit.value - found.middle)
    both = 1.96 * event * other / math.hypot(event, other)
    return min(max(at, found.low), found.high), min(both, half)


def _checked(
    log: Log, holds: Sequence[Stretch], found: Bracket, pair: tuple[int, int]
) -> dict[str, float]:
    """Each checked term, rad; see the module."""
    checks = [s for s in holds if not s.search]
    if not checks:
        return {}
    base, *others = checks
    if base.fate != "rests":  # in one go it does not even come to where it came in strides
        return {"rate": found.high - log.end(base)[0]}
    at, rests = log.end(base)[0], [log.end(s) for s in holds if s.search == 1 and s.fate == "rests"]
    below, last = [r for r in rests if r[0] < at - SAME], rests[-1]
    slope = 0.0
    if below:
        near = max(below, key=lambda r: r[0])
        slope = (_borne(near, pair) - _borne(last, pair)) / (last[0] - near[0])
    again = next((r for r in rests if abs(r[0] - at) < SAME), log.end(base))
    terms: dict[str, float] = {}
    for check in others:
        moved, usual = found.high - at, again if check.vary in SHORT else log.end(base)
        if check.fate == "rests" and slope > 0.0:
            moved = abs(_borne(log.end(check), pair) - _borne(usual, pair)) / slope
        terms[check.vary] = LIMIT[check.vary] * moved
    return terms


def _borne(end: tuple[float, Array], pair: tuple[int, int]) -> float:
    """N on a pair of wheels at the end of a stretch."""
    return float(end[1][list(pair)].sum())


def _approach(
    rests: Sequence[tuple[float, Array]], tip: float, pair: tuple[int, int], weight: float
) -> Approach:
    """What to fit: the angles at which it rested close below its tip, the pair on the table.

    Without those before the one wheel of the pair lifted, unless that was at the very end.
    """
    seen = [(theta, [float(loads[w]) for w in pair]) for theta, loads in rests]
    seen = sorted(one for one in seen if one[0] > tip - SPAN and sum(one[1]) > 0.0)
    both = [theta for theta, loads in seen if min(loads) > 0.0]
    if both and both[-1] < tip - SPAN / 3:
        seen = [one for one in seen if one[0] > both[-1]]
    loads = [sum(loads) / weight for _, loads in seen]
    return Approach(frozen([theta for theta, _ in seen]), frozen(loads))
