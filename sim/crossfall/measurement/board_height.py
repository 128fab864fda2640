"""CG height and effective contact half-width from tip angles measured on a board.

The rigid closed form tan(theta) = a / (h n.d) gives the angle; what tyres and springs take off it
comes from the compliant answer for the truck as its file has it, and counts as known within a
tolerance. Climbs and descents tip over the axle lines and tell h alone; side slopes tell
(T/2 + w) / h; so both are needed for both. A locked suspension leaves least to correct.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from crossfall.measurement.board import board_scatter
from crossfall.measurement.board_file import BoardReadings
from crossfall.measurement.board_predict import GIVE_SD, Outlook, Prediction, outlook
from crossfall.measurement.scatter import Scatter
from crossfall.measurement.weigh_in import Estimate, OddReading, estimate
from crossfall.measurement.weighted_fit import (
    TOLERANCE,
    Datum,
    Prior,
    ReadingModel,
    WeightedFit,
    fit,
    jacobian,
    unbelievable,
)
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Truck
from crossfall.truck.weight import weigh_truck

RULER = 0.0005  # m, +- limit on wheelbase and tracks
TRUSTED = 0.002  # m, least sd of the CG's place in plan where the file gives no tolerances
GIVE_LIMIT = GIVE_SD / TOLERANCE
_LEAST = np.radians(0.3)  # per 20 mm of height or 10 mm of half-width: less is no measurement
TOLD = 0.1  # of the height's pattern over the headings, that must not look like a half-width's
HEADING_LIMIT = np.radians(2.0)  # +- of how squarely the truck stood on the board

NOTHING = Estimate(*(float("nan"),) * 5)


@dataclass(frozen=True)
class BoardFit:
    """height: m, the CG's. contact: m, the file's half-width put right, over all tyres alike,
    from none to half the tread; nan where the headings or the tyres' softness keep it from
    showing, or no tyre could have it. closed_form: m, how far outside the tyres' centre planes
    (inside, if negative) the tip lines lie with which the closed form alone gives the measured
    side angles: it holds what tyres and springs cost, and is no half-width of any tyre. x, y: m,
    the CG's place in plan as the angles leave it.
    correlation of height and contact. outliers: readings that do not fit the rest, off and by in
    rad and sd; where left_out is true, the others fit each other, and all else is theirs."""

    height: Estimate
    contact: Estimate
    closed_form: Estimate
    x: Estimate
    y: Estimate
    correlation: float
    chi_square: float
    redundancy: int
    outliers: tuple[OddReading, ...]
    left_out: bool
    warnings: tuple[str, ...]


def infer(
    truck: Truck,
    board: BoardReadings,
    place: Array | None = None,
    ahead: Outlook | None = None,
) -> BoardFit:
    """Height and contact half-width (m) that fit the measured tip angles (rad), by
    `weighted_fit.fit`.

    place: (2, 2) m, x and y of the CG with their sd, from a weigh-in; from the truck's file where
    not given. ahead: what is expected of `board.tips`, if it is at hand. Where some of the angles,
    fewer than half, do not fit the others, and those fit each other, they are left out, the worst
    first. ValueError where nothing tipped; InputError where the angles fit no truck.
    Source: derived here from `board_model`; weighted least squares as in `weighted_fit`; leaving
    out one by one is Baarda's data snooping, W. Baarda, A Testing Procedure for Use in Geodetic
    Networks (1968) (from memory).
    """
    tips = board.tips
    if not tips:
        raise ValueError("no heading on the board at which the truck tipped")
    if ahead is None:
        ahead = outlook(truck, tips)
    every, odd, values = _from_all(truck, board, place, ahead)
    rest, kept = every, list(range(len(tips)))
    out: dict[int, OddReading] = {}
    while odd and 2 * (len(out) + 1) < len(tips):
        out[kept.pop(odd[0])] = rest.outliers[0]
        some = replace(board, readings=tuple(tips[i] for i in kept))
        rest, odd, values = _from_all(truck, some, place, ahead.of(kept))
    if odd or not out:
        return every
    common = np.append(values[: len(values) - len(kept)], np.zeros(len(tips)))  # none of its own
    shown = board_model(truck, board, ahead)(common[None])[0]
    outliers = [
        replace(one, off=float(np.mean(tips[i].angles) - shown[i])) for i, one in out.items()
    ]
    return replace(rest, outliers=tuple(outliers), left_out=True)


def _from_all(
    truck: Truck, board: BoardReadings, place: Array | None, ahead: Outlook
) -> tuple[BoardFit, list[int], Array]:
    """What all tips say, which of them are outliers, worst first, and `board_model`'s values."""
    tips = board.tips
    known = board_known(truck, board, place, ahead.expected)
    model = board_model(truck, board, ahead)
    bears = _bears(model, known)
    if not bears[0]:  # sides only: the height rests on the file's contact half-width
        known[1] = contact_from_file(truck)
    elif not bears[1]:
        known[1] = Prior("contact", _half_width(truck), 0.0)
    kind = board_scatter(board)
    data = [Datum(_label(r.heading), float(np.mean(r.angles)), len(r.angles)) for r in tips]
    found = fit(model, data, [kind], known)
    said = _warnings(board, bears, ahead.expected)
    contact = NOTHING
    if all(bears):
        contact, nearest, impossible = _possible(estimate(found, 1), _tread(truck))
        said += impossible
        if nearest is not None:
            known[1] = Prior("contact", nearest, 0.0)
            found = fit(model, data, [kind], known)
    odd = unbelievable(found.normalised, [kind.dof] * len(data))
    outliers = tuple(
        OddReading(data[i].label, tips[i].line, float(found.slips[i]), float(found.normalised[i]))
        for i in odd
    )
    made = BoardFit(
        estimate(found, 0),
        contact,
        _closed_form(truck, board, kind, found) if bears[0] else NOTHING,
        estimate(found, 2),
        estimate(found, 3),
        _correlation(found) if contact.measured else float("nan"),
        found.chi_square,
        found.redundancy,
        outliers,
        False,
        tuple(said),
    )
    return made, odd, found.values


def _possible(asked: Estimate, most: float) -> tuple[Estimate, float | None, list[str]]:
    """A half-width as a tyre can have it, from 0 to `most` m.

    With where it must be held, if the angles ask for more or less than that; and what to say
    where even its interval lies outside, and nothing is left to tell of it.
    """
    value, low, high = (float(v) for v in np.clip([asked.value, asked.low, asked.high], 0.0, most))
    if value == asked.value:
        return Estimate(value, asked.u, low, high, asked.dof), None, []
    if low < high:
        return Estimate(value, asked.u, low, high, asked.dof), value, []
    where = "inside the tyres' centre planes" if asked.value < 0 else "beyond the edge of the tread"
    said = (
        f"the angles ask for tyres that carry {abs(asked.value - value) * 1e3:.1f} mm {where}, "
        "which none does: a heading, the CG or a track is not what it is taken for; the height "
        f"takes a half-width of {value * 1e3:.1f} mm"
    )
    return NOTHING, value, [said]


def _closed_form(truck: Truck, board: BoardReadings, kind: Scatter, found: WeightedFit) -> Estimate:
    """The tip lines that the closed form needs on the side slopes, the height being known."""
    tips = [r for r in board.tips if abs(np.sin(r.heading)) > np.sin(np.radians(80))]
    if not tips:
        return NOTHING
    psi = [r.heading for r in tips]
    sd = np.sqrt(np.diag(found.covariance))
    known = [
        Prior("contact", _half_width(truck), np.inf, 0.01, False),
        *(
            Prior(n, float(found.values[i]), float(sd[i]), 0.0, False)
            for n, i in (("height", 0), ("x", 2), ("y", 3))
        ),
        _limit("track", 0.0, RULER),
        _limit("inclinometer", 0.0, board.accuracy),
    ]
    front, rear = (a.track / 2 for a in truck.axles)
    _, aside = truck.front.steered

    def angles(p: Array) -> Array:
        w, z, x, y, track, meter = p.T
        wider = w + track / 2
        tilt: Array = rigid.rigid_tip_angles(
            front + wider, rear + wider, truck.front.x, truck.rear.x, x, y, z, psi, aside
        )
        shown: Array = tilt + meter[:, None]
        return shown

    data = [Datum(_label(r.heading), float(np.mean(r.angles)), len(r.angles)) for r in tips]
    return estimate(fit(angles, data, [kind], known), 0)


def board_known(
    truck: Truck, board: BoardReadings, place: Array | None, expected: Prediction
) -> list[Prior]:
    """Height and contact (m) unknown; the rest within what the file, a ruler and the eye tell.

    place: as of `infer`. A limit a counts as sd a / sqrt(3). The order is that of `board_model`'s
    columns.
    Source: JCGM 100 (GUM), 4.3.7, for limits (from memory); the limits are common practice, no
    source.
    """
    cg = whole(truck).cg
    if place is None:
        sd = np.maximum(weigh_truck(truck).cg_sd[:2], TRUSTED)
        place = np.array([cg[:2], sd]).T
    half = _half_width(truck)
    found = [
        Prior("height", float(cg[2]), np.inf, 0.02, False),
        Prior("contact", half, np.inf, 0.01, False),
        Prior("x", float(place[0, 0]), float(place[0, 1]), 0.0, False, "CG along"),
        Prior("y", float(place[1, 0]), float(place[1, 1]), 0.0, False, "CG across"),
        _limit("wheelbase", truck.wheelbase, RULER),
        _limit("track", 0.0, RULER),
        _limit("inclinometer", 0.0, board.accuracy),
        _limit("give", 1.0, GIVE_LIMIT),
        _limit("square", 0.0, float(HEADING_LIMIT)),
    ]
    for i, sd in enumerate(expected.ground):
        found.append(Prior(f"friction {i}", 0.0, float(sd), 0.0, True, "friction"))
    return found


def _limit(name: str, value: float, limit: float) -> Prior:
    return Prior(name, value, limit * TOLERANCE, 0.0, True, name)


def contact_from_file(truck: Truck) -> Prior:
    """The file's half-width (m), give or take a quarter of the tread, from 0 to half the tread.

    Source: common practice, no source.
    """
    half, most = _half_width(truck), _tread(truck)
    sd = most / 2 * TOLERANCE
    return Prior("contact", half, sd, 0.0, True, "contact", least=0.0, most=most)


def _half_width(truck: Truck) -> float:
    return (truck.front.tyre.contact_half_width + truck.rear.tyre.contact_half_width) / 2


def _tread(truck: Truck) -> float:
    """m, half the tread: no tyre stands further out than its edge."""
    return (truck.front.tyre.width + truck.rear.tyre.width) / 4


def board_model(truck: Truck, board: BoardReadings, ahead: Outlook) -> ReadingModel:
    """(K, P) parameters, SI -> (K, D) rad, the tip angles in order.

    The closed form, and what tyres and springs give, which itself changes with the CG and the
    half-width: to first order from the file's truck. theta = closed(p) + share (give + s.(p - p_0))
    + meter + square dtheta/dpsi + friction, s the compliant slopes less the closed form's.
    Source: tan(theta) = a / (h n.d) of `statics.rigid`; the rest derived here as a Taylor series.
    """
    psi = np.array([r.heading for r in board.tips])
    middle = np.array([*whole(truck).cg, _half_width(truck)])
    apart = [a.tyre.contact_half_width - middle[3] for a in truck.axles]
    halves = [a.track / 2 + d for a, d in zip(truck.axles, apart, strict=True)]
    _, aside = truck.front.steered
    # A truck that stands askew tips along another line: the derivative is enough for 2 deg.
    turned = _turning(truck, psi)

    def closed(x: Array, y: Array, z: Array, w: Array, base: Array, track: Array) -> Array:
        """(K, D); a heading each, as diagonals differ from builds only in the heading."""
        front, rear = (half + track / 2 + w for half in halves)
        return rigid.rigid_tip_angles(front, rear, base / 2, -base / 2, x, y, z, psi, aside)

    steps = np.concatenate([np.eye(4), -np.eye(4)]) * 1e-4
    x0, y0, z0, w0 = (middle + steps).T
    around = closed(x0, y0, z0, w0, np.full(8, truck.wheelbase), np.zeros(8))
    stiff_slopes = (around[:4] - around[4:]) / 2e-4
    give_slopes = ahead.slopes.T - stiff_slopes

    def angles(p: Array) -> Array:
        height, contact, x, y, base, track, meter, share, square = p[:, :9].T
        place = np.stack([x, y, height, contact], axis=1)
        give = ahead.expected.give + (place - middle) @ give_slopes
        shown: Array = (
            closed(x, y, height, contact, base, track)
            + share[:, None] * give
            + meter[:, None]
            + square[:, None] * turned
            + p[:, 9:]
        )
        return shown

    return angles


def _turning(truck: Truck, psi: Array) -> Array:
    """(D,) change of the tip angle per rad of heading."""
    step = 1e-4
    turned: Array = (rigid.tip_angle(truck, psi + step) - rigid.tip_angle(truck, psi - step)) / (
        2 * step
    )
    return turned


def _bears(model: ReadingModel, known: list[Prior]) -> tuple[bool, bool]:
    """Whether the headings tell height and contact half-width, each whatever the other is."""
    at = np.array([k.value for k in known])
    sizes = np.array([k.size if k.uncertain else 1.0 for k in known])
    height, contact = (jacobian(model, at, sizes)[:, :2] * sizes[:2]).T
    if np.linalg.norm(contact) < _LEAST:  # climbs and descents only, or very soft tyres
        return True, False
    enough = max(_LEAST, TOLD * float(np.linalg.norm(height)))
    return _apart(height, contact) > enough, _apart(contact, height) > _LEAST


def _apart(one: Array, other: Array) -> float:
    """Size of what is in one pattern over the headings and not in the other."""
    return float(np.linalg.norm(one - other * (one @ other) / (other @ other)))


def _correlation(found: WeightedFit) -> float:
    """nan where the half-width is held."""
    c = found.covariance
    return float(c[0, 1] / np.sqrt(c[0, 0] * c[1, 1])) if c[1, 1] > 0 else float("nan")


def _label(heading: float) -> str:
    return f"heading {np.degrees(heading):g}"


def _warnings(board: BoardReadings, bears: tuple[bool, bool], expected: Prediction) -> list[str]:
    said = []
    if not bears[0]:
        said.append(
            "only side slopes were measured: they give the ratio of half-width to height, so the "
            "height rests on the contact half-width in the file; tip a climb or a descent too"
        )
    elif not bears[1]:
        said.append(
            "only climbs and descents were measured: they tell the height but not the contact "
            "half-width; tip both sides too"
            if not np.any(np.abs(np.sin([r.heading for r in board.tips])) > 0.5)
            else "the tyres are too soft for the contact half-width to show on a board"
        )
    sides = {round(float(np.degrees(r.heading))) for r in board.tips}
    for one, other, way in ((90, 270, "side"), (0, 180, "end")):
        if (one in sides) != (other in sides):
            said.append(
                f"only one {way} was measured: an offset of the CG looks like height; "
                f"tip heading {other if one in sides else one} too"
            )
    free = np.array([not r.locked for r in board.tips])
    if np.any(free):
        worst = float(np.degrees(np.max(np.abs(expected.give[free]))))
        if worst > 1.0:
            said.append(
                f"the suspension was free and costs up to {worst:.1f} deg, taken from the file's "
                "springs and tyres within 10 %; lock it to do better"
            )
    return said
