"""What a tuner should know about one change, in a sentence."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np

from crossfall.answers.figures import signed_figures
from crossfall.truck.model import Array
from crossfall.tuning.corners import WORTH_SAYING, Corner
from crossfall.tuning.directions import DIRECTIONS, NUMERICAL, SURE

if TYPE_CHECKING:
    from crossfall.tuning.whatif import ChangeOutcome

_PLACES = {
    "side": "the side slope",
    "climb": "the climb",
    "descent": "the descent",
    "worst": "the weakest heading",
}


def outcome_words(
    o: ChangeOutcome, aim: int, corners: Sequence[Corner], names: Sequence[str]
) -> str:
    """What it trades, where its sign or place turns, and where it slides first; "" for nothing."""
    shown = [d for d, name in enumerate(DIRECTIONS) if name != "worst" or d == aim]
    said = [
        _trade(o),
        *(_turn(o, d, corners) for d in shown if o.turns[d]),
        _order(o, corners, names),
    ]
    said += [_slide(o, d) for d in shown if o.slides[d] != o.slid[d]]
    return "; ".join(s for s in said if s)


def _trade(o: ChangeOutcome) -> str:
    """Where a change helps one direction and hurts another, beyond doubt."""
    least = np.maximum(SURE * o.gain_sd + NUMERICAL, WORTH_SAYING)
    named = list(zip(DIRECTIONS[:3], o.gain[:3], least[:3], strict=True))
    up = [f"{_PLACES[d]} {_degrees(g)}" for d, g, sure in named if g > sure]
    down = [f"{_PLACES[d]} {_degrees(g)}" for d, g, sure in named if g < -sure]
    if not up or not down:
        return ""
    return f"helps {' and '.join(up)}; costs {' and '.join(down)}"


def _turn(o: ChangeOutcome, d: int, corners: Sequence[Corner]) -> str:
    """Where the sign of the gain is another one."""
    own, there = o.gain[d], o.corners[:, d]
    worst = int(np.nanargmin(there) if own > 0 else np.nanargmax(there))
    first = f"on {_PLACES[DIRECTIONS[d]]} it may help or cost: {_degrees(own)}"
    return f"{first} as assumed, {_degrees(there[worst])} {corners[worst].words}"


def _order(o: ChangeOutcome, corners: Sequence[Corner], names: Sequence[str]) -> str:
    """What comes before it somewhere in the range, though surely after it as assumed."""
    found: dict[int, list[str]] = {}
    for corner, change in o.overtaken:
        found.setdefault(corner, []).append(f"'{names[change]}'")
    return "; ".join(
        f"{corners[corner].words}, {_listed(them)} come{'s' if len(them) == 1 else ''} before it"
        for corner, them in found.items()
    )


def _slide(o: ChangeOutcome, d: int) -> str:
    place = _PLACES[DIRECTIONS[d]]
    if o.slides[d]:
        return f"with it the truck slides first on {place}: compared against a rail"
    return f"with it the truck no longer slides first on {place}: compared against a rail"


def _listed(them: Sequence[str], most: int = 2) -> str:
    """The first ones, and how many more."""
    if len(them) <= most:
        return " and ".join(them)
    return f"{', '.join(them[:most])} and {len(them) - most} more"


def _degrees(angle: float | Array) -> str:
    """Signed, two decimals."""
    return f"{signed_figures(float(np.degrees(angle)), 2)}°"
