"""The answer in plain words."""

from __future__ import annotations

from dataclasses import replace
from math import degrees, isfinite, radians
from typing import TYPE_CHECKING

from crossfall.answers.answer import TipAnswer

if TYPE_CHECKING:
    from crossfall.trials.outcome import TiltTrial

AGREED = radians(0.3)  # a trial this near the statics agrees with it
UNRESOLVED = (
    "the statics could not follow it to its tip, nor a little aside of this heading (tyres that"
    " stick and slip without end, or springs that let go one after the other)"
)
SNAPPED = radians(1.0)  # a trial this near a snap fell there


def with_verdict(answer: TipAnswer) -> TipAnswer:
    """The same with its verdict in words."""
    return replace(answer, verdict=verdict(answer))


def verdict(answer: TipAnswer) -> str:
    """What happens, where, how sure that is, and why the methods differ where they do."""
    grip = answer.conditions.grip
    low, high = (degrees(v) for v in answer.range.tip)
    tip = UNRESOLVED
    if isfinite(answer.tip):
        against = "against a rail " if isfinite(answer.rail) else ""
        tip = (
            f"{against}it goes over its {answer.over} tyres at {degrees(answer.tip):.1f}°"
            f" ({low:.1f} to {high:.1f})"
        )
    if answer.conditions.rail:
        return _joined(f"{answer.case}: {tip}", disagreement(answer), _engines(answer))
    least, likely, most = (degrees(v) for v in answer.slide)
    slide = f"on {grip.surface} the tyres let go at {likely:.0f}°"
    if most - least > 0.5:
        slide += f" ({least:.0f} to {most:.0f})"
    first = {
        "tips": "so it tips first",
        "slides": "so it slides first",
        "too close to call": (
            f"which comes first is too close to call ({100 * answer.range.tips_first:.0f} % tips)"
        ),
    }[answer.outcome]
    if not isfinite(answer.tip):  # nor is it known, then, what comes first
        return _joined(f"{answer.case}: {slide}; {tip}", _tried(answer), _engines(answer))
    parts = (slide, tip) if answer.slides_first else (tip, slide)
    sentence = f"{answer.case}: {parts[0]}; {parts[1]}; {first}"
    return _joined(sentence, disagreement(answer), _engines(answer))


def _tried(answer: TipAnswer) -> str:
    """Where a trial went, for want of anything to hold it against."""
    trial = answer.trial
    if trial is None or not isfinite(_goes(trial)):
        return ""
    return f"the trial {trial.outcome} at {degrees(_goes(trial)):.1f}°"


def _joined(*said: str) -> str:
    return "; ".join(one for one in said if one)


def _engines(answer: TipAnswer) -> str:
    """How far two engines agree on the trial; "" where there was only one."""
    one, two = answer.trial, answer.other
    if one is None or two is None:
        return ""
    if one.outcome != two.outcome:
        ways = (f"it {t.outcome} at {degrees(_goes(t)):.1f}° in {t.engine}" for t in (one, two))
        return f"the engines see it go two ways: {' and '.join(ways)}"
    apart = answer.engines_apart
    if not isfinite(apart):
        return ""
    if apart <= radians(0.1) or _meet(one, two):
        return f"two engines agree within {max(0.01, degrees(apart)):.2f}°"
    least, most = sorted(degrees(_goes(t)) for t in (one, two))
    return (
        f"the engines say {least:.2f}° and {most:.2f}°:"
        f" trust no trial to better than {most - least:.2f}° here"
    )


def _goes(trial: TiltTrial) -> float:
    return trial.tip if trial.outcome == "tips" else trial.slide


def _meet(one: TiltTrial, two: TiltTrial) -> bool:
    """Whether their intervals overlap."""
    a, b = (t.tip_ci if t.outcome == "tips" else t.slide_ci for t in (one, two))
    return a[0] <= b[1] and b[0] <= a[1]


def disagreement(answer: TipAnswer) -> str:
    """Why trial and statics differ, in plain words; "" where they do not.

    Statics lets a truck that snaps up on its springs come to rest; a real one has momentum, and
    may be carried over.
    """
    trial, tip = answer.trial, answer.compliant
    if trial is None:
        return ""
    if trial.outcome != "tips" or not isfinite(tip):
        return _other_way(answer)
    off = trial.tip - tip
    if abs(off) <= AGREED:
        return ""
    way = "above" if off > 0 else "below"
    sentence = f"the trial goes over {abs(degrees(off)):.1f}° {way} that"
    if isfinite(answer.first_snap) and abs(trial.tip - answer.first_snap) <= SNAPPED:
        return (
            f"{sentence}, carried over by its own momentum where its body snaps up on the springs,"
            f" at {degrees(answer.first_snap):.1f}°"
        )
    return f"{sentence}, which nothing here explains: trust neither to better than the difference"


def _other_way(answer: TipAnswer) -> str:
    """Where one method sees it tip and the other slide."""
    trial = answer.trial
    assert trial is not None
    if trial.outcome == "tips" and answer.slides_first:
        return f"the trial goes over at {degrees(trial.tip):.1f}°, just before it would slide"
    if trial.outcome == "slides" and not answer.slides_first:
        return f"the trial slides away at {degrees(trial.slide):.1f}°, just before it would tip"
    return ""
