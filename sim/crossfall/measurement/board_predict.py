"""What a board should show for a truck as its file has it, and how sure that is."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, fields, replace
from itertools import product

import numpy as np

from crossfall.answers.conditions import Conditions, Hold, choose_grip
from crossfall.answers.ranges import Range, ranges
from crossfall.answers.tips import tip_pairs
from crossfall.measurement.board_file import BoardReading
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck, frozen
from crossfall.truck.weight import COVERAGE

GIVE_SD = 0.10  # of the angle that tyres and springs cost: rates are seldom known better
_STEP = 1e-3  # m, for derivatives: small to the truck, large to the accuracy of the compliant tip
_BOARD = "tilt board"  # the usual name in a chassis file of the board's own grip


@dataclass(frozen=True)
class Prediction:
    """Predicted tip angles, all (n,) rad, one per heading asked.

    angle: the one answer's tip at the board's likely grip, against a rail where it slides first.
    low, high: its 95 % range over all tolerances and the grip. rigid: closed form. u: standard
    uncertainty, of that range. ground: the part of it that grip and the tyres' give along the
    ground have.
    """

    angle: Array
    low: Array
    high: Array
    rigid: Array
    u: Array
    ground: Array

    @property
    def give(self) -> Array:
        """(n,) rad, what tyres, springs and lean change; usually negative."""
        return self.angle - self.rigid


@dataclass(frozen=True)
class Outlook:
    """What is expected on some headings, and its (n, 4) `slopes`."""

    expected: Prediction
    slopes: Array

    def of(self, some: Sequence[int]) -> Outlook:
        """That of some of the headings."""
        each = {f.name: getattr(self.expected, f.name)[list(some)] for f in fields(Prediction)}
        return Outlook(Prediction(**each), self.slopes[list(some)])


def board_grip(truck: Truck) -> Grip:
    """The board's own grip, where the file has one, else that of its first surface."""
    return next((g for g in truck.grips if g.surface == _BOARD), None) or choose_grip(truck, None)


def outlook(truck: Truck, readings: Sequence[BoardReading], grip: Grip | None = None) -> Outlook:
    """`predict` and `slopes` for the readings' headings.

    Source: as of `predict` and `slopes`.
    """
    asked = ways(readings)
    return Outlook(predict(truck, *asked, grip), slopes(truck, *asked, grip))


def ways(readings: Sequence[BoardReading]) -> tuple[list[float], list[bool], list[bool]]:
    """Heading (rad), whether locked and whether behind a rail, of each reading."""
    return (
        [r.heading for r in readings],
        [r.locked for r in readings],
        [r.rail for r in readings],
    )


def likely_tips(
    truck: Truck,
    headings: Sequence[float],
    locked: Sequence[bool],
    railed: Sequence[bool] | None = None,
    grip: Grip | None = None,
) -> Array:
    """(n,) rad, the angles of `predict` without their ranges.

    Source: as of `answers.tips`.
    """
    psi = np.asarray(headings, dtype=np.float64)
    mu = (board_grip(truck) if grip is None else grip).likely
    still = held(truck)
    out = np.empty(len(psi))
    for hold, some in _by_hold(len(psi), railed):
        builds = [still if locked[i] else truck for i in some]
        out[some] = tip_pairs(builds, psi[some], mu, hold).free
    return out


def held(truck: Truck) -> Truck:
    """The truck with its suspension locked."""
    front, rear = (replace(a, suspension=replace(a.suspension, locked=True)) for a in truck.axles)
    return replace(truck, front=front, rear=rear)


def predict(
    truck: Truck,
    headings: Sequence[float],
    locked: Sequence[bool],
    railed: Sequence[bool] | None = None,
    grip: Grip | None = None,
) -> Prediction:
    """The truck's tip angle on each heading (rad), suspension free or locked, with or without a
    rail (none, if not said); grip: the board's, `board_grip` if not said. All (n,).

    u = (high - low) / (2 1.96), of the 95 % range.
    Source: ranges as in `answers.ranges`; u by JCGM 100 (GUM), 4.3.4 (from memory).
    """
    psi, lock = np.asarray(headings, dtype=np.float64), np.asarray(locked, dtype=bool)
    ground = board_grip(truck) if grip is None else grip
    angle, found = np.empty(len(psi)), [Range((0.0, 0.0), (0.0, 0.0), 1.0, ())] * len(psi)
    for still, (hold, so) in product((False, True), _by_hold(len(psi), railed)):
        some = [i for i in so if lock[i] == still]
        if not some:
            continue
        build = held(truck) if still else truck
        asked = [Conditions(float(psi[i]), ground, hold) for i in some]
        tips, made = ranges(build, asked)
        angle[some] = tips.free
        for i, one in zip(some, made, strict=True):
            found[i] = one
    low, high = np.array([r.tip for r in found]).reshape(-1, 2).T
    by_ground = [np.hypot.reduce([0.0, *(sd for n, sd in r.causes if _ground(n))]) for r in found]
    u = (high - low) / (2 * COVERAGE)
    return Prediction(angle, low, high, rigid.tip_angle(truck, psi), u, np.array(by_ground))


def _by_hold(count: int, railed: Sequence[bool] | None) -> Iterator[tuple[Hold, list[int]]]:
    """Which of so many readings are held how, of the holds there are; on brakes if not said."""
    rail = [False] * count if railed is None else railed
    holds: tuple[Hold, Hold] = ("brakes", "rail")
    for hold in holds:
        if some := [i for i in range(count) if rail[i] == (hold == "rail")]:
            yield hold, some


def _ground(cause: str) -> bool:
    return cause.startswith("grip on ") or "along the ground" in cause


def slopes(
    truck: Truck,
    headings: Sequence[float],
    locked: Sequence[bool],
    railed: Sequence[bool] | None = None,
    grip: Grip | None = None,
) -> Array:
    """(n, 4) rad/m, change of the compliant tip angle with the CG's x, y, z and with the contact
    half-width of all tyres: what the rigid polygon promises for a wider contact, soft tyres do not
    keep. See `predict` for the arguments. 0 where an angle could not be found.

    (theta(+1 mm) - theta(-1 mm)) / 2 mm; the half-width goes down to none at least.
    Source: central differences, as JCGM 100 (GUM), 5.1.3, note 2 (from memory).
    """
    psi = np.asarray(headings, dtype=np.float64)
    mu = (board_grip(truck) if grip is None else grip).likely
    changes = [(sign * _STEP * axis, 0.0) for axis in np.eye(3) for sign in (1.0, -1.0)]
    least = min(a.tyre.contact_half_width for a in truck.axles)
    ends = (_STEP, -min(least, _STEP))
    changes += [(np.zeros(3), end) for end in ends]
    found = np.empty((len(changes), len(psi)))
    for hold, some in _by_hold(len(psi), railed):
        builds = [
            _changed(held(truck) if locked[i] else truck, shift, wider)
            for shift, wider in changes
            for i in some
        ]
        tips = tip_pairs(builds, np.tile(psi[some], len(changes)), mu, hold, originals=len(some))
        found[:, some] = tips.free.reshape(len(changes), -1)
    spans = np.array([2 * _STEP] * 3 + [ends[0] - ends[1]])
    out: Array = ((found[::2] - found[1::2]) / spans[:, None]).T
    return np.nan_to_num(out)


def _changed(truck: Truck, shift: Array, wider: float) -> Truck:
    """The truck with its CG moved by (3,) m, all in the chassis, and its tyres' half-widths."""
    share = whole(truck).mass / truck.chassis.mass
    body = replace(truck.chassis, cg=frozen(truck.chassis.cg + share * shift))
    front, rear = (
        replace(a, tyre=replace(a.tyre, contact_half_width=a.tyre.contact_half_width + wider))
        for a in truck.axles
    )
    return replace(truck, chassis=body, front=front, rear=rear)
