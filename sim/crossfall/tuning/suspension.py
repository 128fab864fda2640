"""What a suspension amounts to: at ride height, over its travel, and with its link ends moved."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.answers.conditions import Conditions
from crossfall.answers.tips import tip_pairs
from crossfall.truck import edits
from crossfall.truck.axle_law import LEFT, RIGHT, VALUE, law_of
from crossfall.truck.build import Loaded, build
from crossfall.truck.errors import InputError
from crossfall.truck.linkage import geometry
from crossfall.truck.massprops import whole
from crossfall.truck.model import ENDS, Array, Axle, Suspension, Truck, frozen
from crossfall.truck.ride import spring_squeezes, wheel_rates
from crossfall.truck.spring_law import spring_law

_STEPS = 41  # places along the travel
BY = 5e-3  # m that each link end is moved by
AXES = ("forwards", "outwards", "up")
SLOPE_HEADINGS = (90.0, 270.0, 0.0, 180.0)  # deg: both side slopes, climb and descent


@dataclass(frozen=True)
class Travel:
    """Along n heaves (n,) m, no roll: roll_centre m above the ground on which the axle stands
    there; instant_centre (n, 2) m x and z, truck axes on the chassis, nan where there is none;
    anti: percent; castor: rad gained; wheelbase: m the axle has gone forwards; wheel_rate: N/m of
    one wheel's load by its travel.

    Source: as `look`.
    """

    heave: Array
    roll_centre: Array
    instant_centre: Array
    anti: Array
    castor: Array
    wheelbase: Array
    wheel_rate: Array


@dataclass(frozen=True)
class AxleLook:
    """One axle. end: front or rear. kinds: of the links that guide it, none where numbers do.

    roll_centre: m above ground. roll_axis: slope, which is the roll steer too, rad/rad.
    instant_centre: (2,) m, nan where there is none. anti: percent, anti-dive in front and
    anti-squat behind. castor, heave_steer: rad/m, wheelbase: m/m, by heave. wheel_rate: N/m.
    spacing: m of upright springs that roll alike. bump, droop: m of heave to the stops. squeeze: m
    that the springs are pressed at ride height, left and right; at_droop: at the droop stop, below
    zero where slack. bound: m of heave at which soft springs bind, nan without such. shock: m eye
    to eye at droop, ride height and bump, nan without shocks. travel, and roll (n,) rad with steer
    (n,) rad.
    """

    end: str
    kinds: tuple[str, ...]
    roll_centre: float
    roll_axis: float
    instant_centre: Array
    anti: float
    castor: float
    heave_steer: float
    wheelbase: float
    wheel_rate: float
    spacing: float
    bump: float
    droop: float
    squeeze: tuple[float, float]
    at_droop: tuple[float, float]
    bound: float
    shock: tuple[float, float, float]
    travel: Travel
    roll: Array
    steer: Array


@dataclass(frozen=True)
class Moved:
    """One link end moved by BY along one of AXES: rad by which tips on H headings change.

    end: chassis or axle. why: why it cannot be, else empty; then change is nan.
    """

    part: str
    end: str
    axis: str
    change: Array
    why: str = ""


def look(truck: Truck) -> tuple[AxleLook, AxleLook]:
    """Both axles, front first; SI.

    wheel_rate as `truck.ride.wheel_rates`; anti 100 tan(lean) L / h, for all of the force on that
    axle; spacing (dc_l/dr - dc_r/dr) / (dc/dq), of compression c over heave q and roll r.
    Source: W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics (SAE 1995), for anti
    percentages; J. C. Dixon, Suspension Geometry and Computation (Wiley 2009), for axles on links
    (from memory).
    """
    squeezes = spring_squeezes(truck).reshape(2, 2)
    front, rear = (
        _axle(truck, end, axle, squeeze)
        for end, axle, squeeze in zip(ENDS, truck.axles, squeezes, strict=True)
    )
    return front, rear


def _axle(truck: Truck, end: str, axle: Axle, squeeze: Array) -> AxleLook:
    s, law, springs = axle.suspension, law_of(axle), spring_law(axle.suspension)
    wide = np.linspace(-2.0 * s.droop - 1e-4, 2.0 * s.bump + 1e-4, 400)
    pressed = law.at(wide, np.zeros_like(wide))[[LEFT, RIGHT], VALUE].max(axis=0)
    bump = float(np.interp(s.bump, pressed, wide))
    droop = float(-np.interp(-s.droop, pressed, wide))
    heave = np.sort(np.append(np.linspace(-droop, bump, _STEPS), 0.0))
    at = int(np.argmin(np.abs(heave)))
    rate = wheel_rates(axle, float(squeeze[0]), heave)
    sign = 100.0 if end == "front" else -100.0
    full = whole(truck).cg[2] / truck.wheelbase
    if s.links is not None:
        now = geometry(s.links, axle.x, axle.tyre.radius, heave, np.zeros_like(heave))
        # As the axle comes up so does the ground it stands on, in axes fixed to the chassis.
        lean, instant = now.lean, now.instant_centre
        centre = now.roll_centre - now.centre[:, 2]
        castor, forwards = -now.pitch, now.centre[:, 0]
        rates = (now.castor[at], now.heave_steer[at], now.wheelbase[at], now.roll_axis[at])
    else:
        lean = np.full(len(heave), s.heave_lean)
        centre = np.full(len(heave), s.roll_centre_height)
        instant = np.full((len(heave), 2), np.nan)
        castor, forwards = np.zeros(len(heave)), heave * math.sin(s.heave_lean)
        rates = (0.0, 0.0, math.sin(s.heave_lean), 0.0)
    instant = np.where(np.abs(instant) < 1e3, instant, np.nan)
    anti = sign * np.tan(lean) / full
    most = (s.bump + s.droop) / s.spring_spacing
    roll = np.linspace(-most, most, _STEPS)
    yaw = law.at(np.zeros_like(roll), roll)[3, VALUE]
    ratios = law.ratios()
    return AxleLook(
        end=end,
        kinds=tuple(dict.fromkeys(s.links.names)) if s.links is not None else (),
        roll_centre=float(centre[at]),
        roll_axis=float(rates[3]),
        instant_centre=frozen(instant[at]),
        anti=float(anti[at]),
        castor=float(rates[0]),
        heave_steer=float(rates[1]),
        wheelbase=float(rates[2]),
        wheel_rate=float(rate[at]),
        spacing=float((ratios[0, 1] - ratios[1, 1]) / ratios[0, 0]),
        bump=bump,
        droop=droop,
        squeeze=(float(squeeze[0]), float(squeeze[1])),
        at_droop=(float(squeeze[0] - s.droop), float(squeeze[1] - s.droop)),
        bound=_bound(springs.bound - float(squeeze[0]), pressed, wide),
        shock=_shock(s),
        travel=Travel(heave, centre, instant, anti, castor, forwards, rate),
        roll=roll,
        steer=yaw,
    )


def _bound(at: float, pressed: Array, heave: Array) -> float:
    """m of heave at which a compression is reached, nan where it never is."""
    reached = pressed[0] <= at <= pressed[-1]
    return float(np.interp(at, pressed, heave)) if reached else math.nan


def _shock(s: Suspension) -> tuple[float, float, float]:
    if s.shocks is None:
        return math.nan, math.nan, math.nan
    length = float(s.shocks.lengths[0])
    return length + s.droop, length, length - s.bump


def moved_ends(loaded: Loaded, asked: Sequence[Conditions]) -> tuple[Moved, ...]:
    """Every end of every link that guides an axle, and of shocks that count, moved by BY (m): rad.

    Mirrored links move on both sides. Tips against a rail where the truck as it is slides first.
    asked: conditions that share their hold.
    Source: differences of the one answer, `answers.tips`.
    """
    tried: list[tuple[str, str, str, Truck | str]] = []
    for part in loaded.spec.part:
        axle = loaded.truck.front if part.on == "front link" else loaded.truck.rear
        s = axle.suspension
        counts = s.shocks is not None if part.link == "shock" else s.links is not None
        if part.link is None or not counts:
            continue
        for end in ("chassis", "axle"):
            for i, axis in enumerate(AXES):
                tried.append((part.name, end, axis, _with_end(loaded, part.name, end, i)))
    trucks = [loaded.truck, *(t for *_, t in tried if isinstance(t, Truck))]
    psi = np.tile([c.heading for c in asked], len(trucks))
    mu = np.tile([c.grip.likely for c in asked], len(trucks))
    each = [truck for truck in trucks for _ in asked]
    tips = tip_pairs(each, psi, mu, asked[0].hold, originals=len(asked)).free
    base, *others = tips.reshape(-1, len(asked))
    answers = iter(others)
    return tuple(
        Moved(name, end, axis, np.full(len(asked), np.nan), truck)
        if isinstance(truck, str)
        else Moved(name, end, axis, next(answers) - base)
        for name, end, axis, truck in tried
    )


def _with_end(loaded: Loaded, name: str, end: str, axis: int) -> Truck | str:
    """The truck with one end moved, or why it cannot be."""
    key = f"part.{name}.{end}_end_mm"
    try:
        place = list(edits.get_value(loaded.spec, key))
        outwards = math.copysign(1.0, place[1]) if axis == 1 else 1.0
        place[axis] += outwards * BY * 1e3
        return build(edits.set_value(loaded.spec, key, place), loaded.folder)[0]
    except InputError as error:
        return error.problems[0].what
