"""Three answers side by side: closed form, compliant equilibrium, virtual trial.

Nothing here averages or tunes: each method reads the same truck, and their differences are shown
as an angle budget with a remainder.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from crossfall.truck.model import Array

if TYPE_CHECKING:
    from crossfall.trials.tilt import TiltTrial

CASES = {
    0: "climb",
    90: "side-hill, left side down",
    180: "descent",
    270: "side-hill, right side down",
}


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
    the normal load falls. compliant: and it leans and pitches. trial: the virtual trial, or nan.
    """

    rigid: float
    tyres: float
    extension: float
    compliant: float
    trial: float

    @property
    def steps(self) -> tuple[tuple[str, float], ...]:
        """(name, rad gained) per stage, loss negative; the last is the unexplained remainder."""
        return (
            ("tyres squash", self.tyres - self.rigid),
            ("body rises on its springs", self.extension - self.tyres),
            ("body leans and pitches", self.compliant - self.extension),
            ("remainder: trial less statics", self.trial - self.compliant),
        )


@dataclass(frozen=True)
class HeadingAnswer:
    """Everything said about one heading. Angles in rad.

    compliant: tip with the uniform friction closure. window: (2,) low and high tip over both
    friction closures. friction_decides: whether the window is too wide for one number. lift: (4,)
    table angle at which each wheel leaves the table, nan if not before the tip; first_lift their
    least. slide: (3,) low, likely, high. tips_first: probability, grip read as a triangular
    distribution. outcome: tips / slides / too close to call.
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


@dataclass(frozen=True)
class Comparison:
    """The answers for one truck on one surface, in the order the headings were asked."""

    truck: str
    digest: str
    surface: str
    answers: tuple[HeadingAnswer, ...]
    versions: tuple[tuple[str, str], ...]
