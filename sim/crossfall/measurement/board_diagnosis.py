"""What is most likely wrong when board and file disagree.

Each cause alone would shift the angles in its own pattern over the headings (a CG lower than the
file says raises them all; a CG to one side raises one side and lowers the other). Every pattern
is fitted to the differences, with a penalty for needing an unlikely amount, and the one that
leaves least unexplained comes first.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.answers.answer import slide_angles
from crossfall.measurement.board_file import BoardReading
from crossfall.measurement.board_predict import Outlook, likely_tips, ways
from crossfall.truck.model import Array, Grip, Truck

TIE = 2.0  # of chi-square: causes closer than this to the best are named as well
# How large each cause is in practice, one sd: m, m, m, m, rad, share of the give.
USUAL = {"height": 0.006, "side": 0.003, "along": 0.005, "contact": 0.003, "meter": 0.009,
         "give": 0.25}  # fmt: skip


@dataclass(frozen=True)
class Cause:
    """name: of the cause. words: a sentence. amount: how much of it (m, rad or a share).

    explained: share of the disagreement (chi-square) that it accounts for.
    """

    name: str
    words: str
    amount: float
    explained: float


def diagnose(
    truck: Truck,
    readings: Sequence[BoardReading],
    residuals: Array,
    u: Array,
    grip: Grip | None,
    ahead: Outlook,
) -> tuple[Cause, ...]:
    """The likeliest causes of residuals (n,) rad, measured less predicted, with sd u (n,) rad.
    ahead: what was expected of the readings.

    Best first, with those that do about as well; empty where none explains half of it. A cause with
    pattern p (n,) per unit and usual size s amounts to sum(p r / u^2) / (sum(p^2 / u^2) + 1 / s^2),
    r the residuals, and scores chi-square left + (amount / s)^2; one that is so or not scores a
    penalty of 4 instead.
    Source: the mode of a normal posterior with a normal prior, e.g. A. Gelman et al., Bayesian Data
    Analysis (CRC 2013) (from memory); usual sizes and penalties are common practice, no source.
    """
    found: list[tuple[float, Cause]] = []
    before = float(np.sum((residuals / u) ** 2))
    for name, pattern in _patterns(ahead).items():
        usual = USUAL[name]
        precision = float(np.sum((pattern / u) ** 2)) + 1 / usual**2
        amount = float(np.sum(pattern * residuals / u**2)) / precision
        left = float(np.sum(((residuals - amount * pattern) / u) ** 2))
        words = _words(name, amount, pattern)
        found.append((left + (amount / usual) ** 2, Cause(name, words, amount, 1 - left / before)))
    for cause, pattern, penalty in _switches(truck, readings, grip, ahead):
        left = float(np.sum(((residuals - pattern) / u) ** 2))
        better = Cause(cause.name, cause.words, cause.amount, 1 - left / before)
        found.append((left + penalty, better))
    found.sort(key=lambda f: f[0])
    best = [c for score, c in found if score <= found[0][0] + TIE and c.explained >= 0.5]
    return tuple(best[:3])


def _patterns(ahead: Outlook) -> dict[str, Array]:
    """(n,) change of the angles per unit of each cause."""
    along, side, height, contact = ahead.slopes.T
    return {
        "height": height,
        "side": side,
        "along": along,
        "contact": contact,
        "meter": np.ones(len(height)),
        "give": ahead.expected.give,
    }


def _switches(
    truck: Truck, readings: Sequence[BoardReading], grip: Grip | None, ahead: Outlook
) -> list[tuple[Cause, Array, float]]:
    """Causes that are so or not: their pattern (n,) and what they cost in chi-square."""
    psi, locked, railed = ways(readings)
    said = ahead.expected.angle
    other = likely_tips(truck, psi, [not k for k in locked], railed, grip) - said
    found = []
    if all(locked):
        words = "the suspension was not locked after all: the angles are those of free springs"
        found.append((Cause("lock", words, 1.0, 0.0), other, 4.0))
    elif not any(locked):
        words = (
            "the suspension hardly moved: the angles are those of a locked truck. Dampers may "
            "bind, or the table rose too fast for them"
        )
        found.append((Cause("lock", words, 1.0, 0.0), other, 4.0))
    if grip is not None and not any(r.rail for r in readings):
        likely = slide_angles(truck, np.array(psi), grip)[:, 1]
        if np.any(likely < said):
            words = (
                "it slid rather than tipped: the angles are those at which the tyres let go. "
                "Lay a thin strip along the downhill tyres and try again"
            )
            pattern = np.minimum(likely - said, 0.0)
            found.append((Cause("slide", words, 1.0, 0.0), pattern, 4.0))
    return found


def _words(name: str, amount: float, pattern: Array) -> str:
    mm, side = abs(amount) * 1e3, "left" if amount > 0 else "right"
    if name == "height":
        where = "higher" if amount > 0 else "lower"
        heavy = f"something heavy sits {where} than entered"
        top = "more" if amount > 0 else "less"
        return (
            f"the CG is about {mm:.0f} mm {where} than the file says: {heavy}, or the top of the "
            f"truck weighs {top}"
        )
    if name == "side":
        return (
            f"the CG is about {mm:.0f} mm further to the {side} than the file says: look for a "
            "part entered in the middle that is not, or a table that is not level across"
        )
    if name == "along":
        where = "forward" if amount > 0 else "to the rear"
        return f"the CG is about {mm:.0f} mm further {where} than the file says: weigh both axles"
    if name == "contact":
        more = "further out" if amount > 0 else "further in"
        return (
            f"the tyres carry about {mm:.0f} mm {more} than the file's contact half-width: "
            + ("harder or squarer" if amount > 0 else "softer or rounder")
            + " than thought, or the track is not what the file says"
        )
    if name == "meter":
        high = "high" if amount > 0 else "low"
        return (
            f"every angle is {high} by about {np.degrees(abs(amount)):.1f} deg: zero the "
            "inclinometer on the level board, and read it when the last uphill tyre leaves"
        )
    more = "more" if amount > 0 else "less"
    soft = "softer" if amount > 0 else "stiffer"
    return (
        f"tyres and springs give about {abs(amount) * 100:.0f} % {more} than in the file: they "
        f"are {soft}, or the tyres squash {more}"
    )
