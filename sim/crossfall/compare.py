"""Three answers side by side: closed form, compliant equilibrium, virtual trial.

Nothing here averages or tunes: each method reads the same truck, and their differences are shown
as an angle budget with a remainder.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import ArrayLike

from crossfall.statics import rigid, sliding
from crossfall.statics.budget import budget
from crossfall.statics.window import window
from crossfall.truck.digest import digest
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck, frozen
from crossfall.truck.problems import InputError, Problem

if TYPE_CHECKING:
    from crossfall.trials.tilt import TiltTrial

CASES = {
    0: "climb",
    90: "side-hill, left side down",
    180: "descent",
    270: "side-hill, right side down",
}


AGREED = np.radians(0.3)  # a trial this near the window agrees with it
SNAPPED = np.radians(0.6)  # a trial this near a snap fell there


def case_name(heading: float) -> str:
    """What a tuner calls a heading (rad): one of the four cases, or the diagonal between two."""
    degrees = round(float(np.degrees(heading)) % 360.0, 6)
    if degrees in CASES:
        return CASES[int(degrees)]
    if degrees < 90:
        return "diagonal climb, left side down"
    if degrees < 180:
        return "diagonal descent, left side down"
    if degrees < 270:
        return "diagonal descent, right side down"
    return "diagonal climb, right side down"


@dataclass(frozen=True)
class AngleBudget:
    """Where the degrees go, from the rigid promise to the trial. All rad; each stage is a tip
    angle with one more thing allowed to give.

    rigid: nothing gives. tyres: the tyres squash. extension: and the body rises on its springs as
    the normal load falls. compliant: and it leans and pitches. held: the same with tyres that hold
    where they stand (the sticking closure). trial: the virtual trial, or nan.
    """

    rigid: float
    tyres: float
    extension: float
    compliant: float
    held: float
    trial: float

    @property
    def steps(self) -> tuple[tuple[str, float], ...]:
        """(name, rad gained) per stage, loss negative; the last is the unexplained remainder."""
        return (
            ("tyres squash", self.tyres - self.rigid),
            ("body rises on its springs", self.extension - self.tyres),
            ("body leans and pitches", self.compliant - self.extension),
            ("tyres hold their ground", self.held - self.compliant),
            ("remainder: trial less statics", self.trial - self.held),
        )


@dataclass(frozen=True)
class HeadingAnswer:
    """Everything said about one heading. Angles in rad.

    compliant: tip with the uniform friction closure. window: (2,) low and high tip over both
    friction closures. friction_decides: whether the window is too wide for one number. lift: (4,)
    table angle at which each wheel leaves the table, nan if not before the tip; first_lift their
    least. first_snap: where springs first went slack and the body snapped up but stood again, nan
    if never; held_snap: the same where the tyres hold. spec_sd: standard uncertainty from the
    file's tolerances. slide: (3,) low, likely,
    high. tips_first: probability, grip read as a triangular distribution. outcome: tips / slides
    / too close to call.
    """

    heading: float
    case: str
    over: str
    rigid: float
    compliant: float
    window: Array
    friction_decides: bool
    lift: Array
    first_lift: float
    trial: TiltTrial | None
    slide: Array
    tips_first: float
    outcome: str
    budget: AngleBudget
    verdict: str
    first_snap: float = float("nan")
    held_snap: float = float("nan")
    spec_sd: float = 0.0


@dataclass(frozen=True)
class Comparison:
    """The answers for one truck on one surface, in the order the headings were asked."""

    truck: str
    digest: str
    surface: str
    answers: tuple[HeadingAnswer, ...]
    versions: tuple[tuple[str, str], ...]

    @property
    def weakest(self) -> HeadingAnswer:
        """The heading with the least tip angle, by the lower end of the window."""
        return min(self.answers, key=lambda a: (not np.isfinite(a.window[0]), a.window[0]))


def compare(
    truck: Truck,
    headings: Sequence[float],
    surface: str | None = None,
    *,
    rail: bool = False,
    trial: bool = True,
    progress: Callable[[int, int], None] = lambda done, of: None,
) -> Comparison:
    """All three methods on every heading (rad), on one surface of the truck's (None: its first).

    rail: the trial's downhill tyres stand against a trip rail. trial: False leaves the virtual
    trial out. progress: called with trials done and trials to do. Raises InputError where the
    truck has no such surface.
    """
    psi = np.asarray(headings, dtype=np.float64)
    grip = choose_grip(truck, surface)
    rigid_tips, edges = rigid.tip_angle(truck, psi), rigid.tip_edge(truck, psi)
    friction = window(truck, psi)
    uniform = friction.uniform
    stages = budget(truck, psi)
    # Without a tip of tyres that hold, what they do counts towards the remainder.
    sticking = friction.sticking.tip
    held = np.where(np.isfinite(sticking), sticking, uniform.tip)
    spec_sd = spec_uncertainty(truck, psi)
    slides = sliding.slide_range(truck, psi, grip)
    trials = _trials(truck, psi, uniform.tip, rail, progress) if trial else [None] * len(psi)
    answers = []
    for i, heading in enumerate(psi):
        tried = trials[i]
        low, high = float(friction.low[i]), float(friction.high[i])
        likely, unsure = _best(low, high, tried, float(spec_sd[i]))
        chance = float(sliding.tips_first(slides[i : i + 1], [likely], [unsure])[0])
        answer = HeadingAnswer(
            heading=float(heading),
            case=case_name(float(heading)),
            over=rigid.EDGES[edges[i]],
            rigid=float(rigid_tips[i]),
            compliant=float(uniform.tip[i]),
            window=frozen([low, high]),
            friction_decides=bool(friction.decides[i]),
            lift=frozen(uniform.lift[i]),
            first_lift=float(uniform.first_lift[i]),
            first_snap=float(uniform.first_snap[i]),
            held_snap=float(friction.sticking.first_snap[i]),
            trial=tried,
            spec_sd=float(spec_sd[i]),
            slide=frozen(slides[i]),
            tips_first=chance,
            outcome=sliding.outcome(chance),
            budget=AngleBudget(
                rigid=float(rigid_tips[i]),
                tyres=float(stages.tyres[i]),
                extension=float(stages.extension[i]),
                compliant=float(uniform.tip[i]),
                held=float(held[i]),
                trial=tried.tip if tried else float("nan"),
            ),
            verdict="",
        )
        answers.append(replace(answer, verdict=verdict(answer, grip)))
    return Comparison(truck.name, digest(truck), grip.surface, tuple(answers), versions())


def choose_grip(truck: Truck, surface: str | None) -> Grip:
    """The grip of a surface by name, or the first. Raises InputError where there is none."""
    for grip in truck.grips:
        if surface is None or grip.surface == surface:
            return grip
    names = ", ".join(g.surface for g in truck.grips) or "none"
    raise InputError(
        Problem(truck.name, f"no surface '{surface or ''}'", f"it has {names}", key="grip")
    )


def spec_uncertainty(truck: Truck, headings: ArrayLike) -> Array:
    """(H,) rad, standard uncertainty of a tip angle from the tolerances of the parts.

    Linear propagation (JCGM 100:2008, 5.1.2) of each part's mass and place through the rigid
    closed form; the compliant tip moves with the same masses and places nearly alike.
    """
    psi = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    total = whole(truck).mass
    variance = np.zeros(len(psi))
    if not truck.parts:
        return variance
    mass = np.array([p.body.mass for p in truck.parts])
    places = np.array([p.body.cg for p in truck.parts])
    mass_sd = np.array([p.mass_sd for p in truck.parts])
    place_sd = np.array([p.place_sd for p in truck.parts])
    for i, heading in enumerate(psi):
        by_mass = rigid.mass_derivative(truck, float(heading), places) * mass_sd
        by_place = np.linalg.norm(rigid.cg_gradient(truck, float(heading))) * mass / total
        variance[i] = np.sum(by_mass**2) + np.sum((by_place * place_sd) ** 2)
    return np.asarray(np.sqrt(variance))


def _trials(
    truck: Truck, psi: Array, near: Array, rail: bool, progress: Callable[[int, int], None]
) -> list[TiltTrial | None]:
    """A trial per heading, after the predictions, which only choose where each one starts."""
    from crossfall.trials.tilt import tilt_trial

    out: list[TiltTrial | None] = []
    for heading, guess in zip(psi, near, strict=True):
        progress(len(out), len(psi))
        start = float(guess) if np.isfinite(guess) else None
        out.append(tilt_trial(truck, float(heading), near=start, rail=rail))
    progress(len(out), len(psi))
    return out


def _best(low: float, high: float, trial: TiltTrial | None, spec_sd: float) -> tuple[float, float]:
    """The tip angle to hold against sliding, and how unsure it is (rad, about 95 %).

    The middle of everything the methods leave open; never used as an answer of its own.
    """
    ends = [v for v in (low, high) if np.isfinite(v)]
    if trial is not None and trial.outcome == "tips":
        ends += list(trial.tip_ci)
    if not ends:
        return np.pi / 2, 2 * spec_sd
    middle, half = (min(ends) + max(ends)) / 2, (max(ends) - min(ends)) / 2
    return middle, float(np.hypot(half, 2 * spec_sd))


def verdict(answer: HeadingAnswer, grip: Grip) -> str:
    """The answer in plain words."""
    low, high = np.degrees(answer.window)
    if not np.isfinite(low):
        tip = "the statics found no tip"
    elif high - low < 0.15:
        tip = f"it goes over its {answer.over} tyres at {np.degrees(answer.compliant):.1f}°"
    else:
        tip = (
            f"it goes over its {answer.over} tyres between {low:.1f}° and {high:.1f}°, "
            "depending on how the tyres share their grip"
        )
    least, _, most = np.degrees(answer.slide)
    on = f"on {grip.surface} the tyres let go at {least:.0f}° to {most:.0f}°"
    first = {
        "tips": "so it tips first",
        "slides": "so it slides first",
        "too close to call": f"too close to call ({100 * answer.tips_first:.0f} % tips first)",
    }[answer.outcome]
    apart = disagreement(answer)
    return f"{answer.case}: {tip}; {on}, {first}" + (f"; {apart}" if apart else "")


def disagreement(answer: HeadingAnswer) -> str:
    """Why the trial lies outside the window of the statics, in plain words; "" where it does not.

    Statics lets a truck that snaps up on its springs come to rest; a real one has momentum, and
    may be carried over.
    """
    trial, (low, high) = answer.trial, answer.window
    if trial is None or trial.outcome != "tips" or not np.isfinite(low):
        return ""
    out = trial.tip - high if trial.tip > high else min(trial.tip - low, 0.0)
    if abs(out) <= AGREED:
        return ""
    way = "above" if out > 0 else "below"
    told = f"the trial goes over {abs(np.degrees(out)):.1f}° {way} that"
    for snap in (answer.held_snap, answer.first_snap):
        if out < 0 and abs(trial.tip - snap) <= SNAPPED:
            return (
                f"{told}, carried over by its own momentum where its body snaps up on the springs,"
                f" at {np.degrees(snap):.1f}°"
            )
    return f"{told}, which nothing here explains: trust neither to better than the difference"


def versions() -> tuple[tuple[str, str], ...]:
    """Name and version of what the numbers depend on."""
    from importlib.metadata import PackageNotFoundError, version
    from platform import python_version

    found = [("python", python_version())]
    for name in ("crossfall", "numpy", "scipy", "pybullet"):
        try:
            found.append((name, version(name)))
        except PackageNotFoundError:
            found.append((name, "absent"))
    return tuple(found)
