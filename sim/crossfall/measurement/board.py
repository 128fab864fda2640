"""The tilt board against the file: measured angles, predicted angles, and whether they agree."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.answers.answer import slide_angles
from crossfall.measurement.board_diagnosis import Cause, diagnose
from crossfall.measurement.board_file import BoardReading, BoardReadings
from crossfall.measurement.board_predict import (
    Outlook,
    Prediction,
    board_grip,
    predict,
    slopes,
    ways,
)
from crossfall.measurement.scatter import Scatter, interval, pooled, scatter
from crossfall.measurement.weighted_fit import TOLERANCE
from crossfall.truck.model import Grip, Truck

_GUESSED_SCATTER = float(np.radians(0.3))  # of one tip, where nothing is repeated
_GUESS_WORTH = 2.0
AGREE = 1.0  # of the combined 95 % uncertainty


@dataclass(frozen=True)
class Verdict:
    """One measured heading against its prediction. Angles in rad.

    measured: mean of the repeats, u its standard uncertainty. predicted: the one answer's tip, with
    its 95 % range low to high and predicted_u. number: E_n = (measured - predicted) /
    sqrt(U^2 + U_predicted^2), U the 95 % expanded uncertainties (ISO/IEC 17043:2010 B.3.1.3 and
    ISO 13528, from memory), of the prediction that on the reading's side, as its range may be
    lopsided; they agree where |E_n| <= 1. A reading at which it slid is held against
    the slide range instead.

    Source: E_n as above; a triangle's sd, (high - low) / sqrt(24), as JCGM 100 (GUM), 4.3.9 (from
    memory).
    """

    reading: BoardReading
    measured: float
    u: float
    predicted: float
    low: float
    high: float
    rigid: float
    predicted_u: float
    number: float

    @property
    def agrees(self) -> bool:
        return abs(self.number) <= AGREE


@dataclass(frozen=True)
class BoardResult:
    """verdicts in the file's order; causes: what is most likely wrong, best first, empty where
    everything agrees."""

    verdicts: tuple[Verdict, ...]
    causes: tuple[Cause, ...]
    warnings: tuple[str, ...]

    @property
    def agrees(self) -> bool:
        return all(v.agrees for v in self.verdicts)


def board_scatter(board: BoardReadings) -> Scatter:
    """How one tip differs from the next, from all repeats of this truck: variances in rad^2.

    With fewer than two degrees of freedom a guess joins in, worth two of them.
    Source: as `scatter.scatter`; the guess is common practice, no source.
    """
    groups = [r.angles for r in board.readings]
    prior = (_GUESSED_SCATTER, _GUESS_WORTH) if pooled(groups)[1] < 2 else None
    return scatter(groups, board.resolution, prior)


def check_board(
    truck: Truck, board: BoardReadings, grip: Grip | None = None, ahead: Outlook | None = None
) -> BoardResult:
    """Every reading against the truck's prediction, rad. grip: the board's, `board_grip` if not
    said. ahead: what is expected of `board.tips`, if it is at hand.

    u^2 = V / n + B + (accuracy / sqrt(3))^2, V and B as of `scatter`; E_n as of `Verdict`.
    Source: ISO/IEC 17043:2010 and ISO 13528 for E_n; JCGM 100 (GUM), 4.3.7 and 5.1.2, for u (from
    memory).
    """
    kind = board_scatter(board)
    grip = board_grip(truck) if grip is None else grip
    asked = ways(board.tips)
    expected = ahead.expected if ahead is not None else predict(truck, *asked, grip)
    tipped = [_verdict(r, board, kind, expected, i) for i, r in enumerate(board.tips)]
    rest = iter(tipped)
    found = tuple(
        _slide_verdict(truck, grip, r, board, kind) if r.slid else next(rest)
        for r in board.readings
    )
    causes: tuple[Cause, ...] = ()
    if not all(v.agrees for v in tipped):
        if ahead is None:
            ahead = Outlook(expected, slopes(truck, *asked, grip))
        residuals = np.array([v.measured - v.predicted for v in tipped])
        u = np.array([np.hypot(v.u, v.predicted_u) for v in tipped])
        causes = diagnose(truck, board.tips, residuals, u, grip, ahead)
    return BoardResult(found, causes, tuple(_warnings(truck, board, found)))


def _errors(r: BoardReading, board: BoardReadings, kind: Scatter) -> tuple[float, float]:
    """(u, half-width of the 95 % interval) of a mean, rad."""
    changing = float(np.sqrt(kind.changing / len(r.angles)))
    boxes = [float(np.sqrt(kind.shared)), board.accuracy * TOLERANCE]
    u = float(np.sqrt(changing**2 + sum(b**2 for b in boxes)))
    return u, interval(0.0, [(changing, kind.dof)], boxes)


def _verdict(
    r: BoardReading, board: BoardReadings, kind: Scatter, expected: Prediction, i: int
) -> Verdict:
    u, half = _errors(r, board, kind)
    measured = float(np.mean(r.angles))
    residual = measured - float(expected.angle[i])
    towards = expected.high[i] if residual > 0 else expected.low[i]
    number = residual / float(np.hypot(half, towards - expected.angle[i]))
    return Verdict(
        r,
        measured,
        u,
        float(expected.angle[i]),
        float(expected.low[i]),
        float(expected.high[i]),
        float(expected.rigid[i]),
        float(expected.u[i]),
        number,
    )


def _slide_verdict(
    truck: Truck, grip: Grip, r: BoardReading, board: BoardReadings, kind: Scatter
) -> Verdict:
    """It slid: the angle against the range the grip allows."""
    low, likely, high = (float(v) for v in slide_angles(truck, np.array([r.heading]), grip)[0])
    u, half = _errors(r, board, kind)
    measured = float(np.mean(r.angles))
    spread = (high - low) / np.sqrt(24)  # sd of a triangular distribution, symmetric
    number = (measured - likely) / float(np.hypot(half, max(high - likely, likely - low)))
    return Verdict(r, measured, u, likely, low, high, float("nan"), float(spread), number)


def _warnings(truck: Truck, board: BoardReadings, verdicts: tuple[Verdict, ...]) -> list[str]:
    found = []
    repeats = sum(len(r.angles) - 1 for r in board.readings)
    if board.readings and repeats < 2:
        found.append("too few repeats to know how one tip differs from the next; 0.3 deg is taken")
    for v in verdicts:
        heading = np.degrees(v.reading.heading)
        if v.reading.slid and v.measured > v.high:
            found.append(
                f"at heading {heading:.0f} it held on longer than the grip in the file allows: "
                "raise it"
            )
        elif v.reading.slid and v.measured < v.low:
            # Where it may roll away, the angle is not that of friction.
            about = "" if truck.may_roll else f" to about {np.tan(v.measured):.2f}"
            found.append(
                f"at heading {heading:.0f} it let go sooner than the grip in the file allows: "
                f"lower it{about}"
            )
    return found
