"""Tyres, springs and travel of a truck from its readings; what nobody measured is typical.

A stiffness is weight over deflection, m g / s; two give in series, 1/k = 2 s / (m g) - 1/k_tyre.
Source: Hooke's law, derived here; shares and tolerances nobody measured as in `typical`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from crossfall.measurement import typical
from crossfall.measurement.readings import Readings
from crossfall.measurement.typical import Typical
from crossfall.truck.model import ENDS, GRAVITY

_G = 1e-3
GIVE_TOL = 0.3  # mm, plus or minus: of something that gives, read off a ruler beside it
TYRES_DIFFER = 0.05  # of a stiffness: one tyre or spring against the next
PULL_TOL = 0.05  # of a luggage scale's pull
GUIDED = ("roll_centre", "anti_dive", "anti_squat")  # follow from links, where their ends are known


@dataclass(frozen=True)
class Filled:
    """A value of the truck file in its unit, plus or minus as a limit (none for 0), and how it
    came about; typical: nobody measured it."""

    value: float
    tol: float
    how: str
    typical: bool = False


@dataclass(frozen=True)
class End:
    """One axle. Keys of `tyre` and `suspension` are the truck file's, without units. axle_g: one
    axle without its wheels. linked: link ends among the readings say what GUIDED would."""

    track: Filled
    tyre: Mapping[str, Filled]
    suspension: Mapping[str, Filled]
    axle_g: Filled
    load_g: float
    linked: bool

    @property
    def in_file(self) -> dict[str, Filled]:
        """What of the suspension the truck file gives by numbers."""
        return {k: v for k, v in self.suspension.items() if not (self.linked and k in GUIDED)}


@dataclass(frozen=True)
class Setup:
    """A truck but for where its weight is. wheel_g: of one wheel. ends: front, rear."""

    wheelbase: Filled
    wheel_g: Filled
    ends: tuple[End, End]


def setup(r: Readings) -> Setup:
    """All but where the weight is. Readings in mm and g, values in the truck file's units."""
    total = sum(r.corners_g)
    wheel = _measured(r.wheel_g, r, "one wheel weighed") or _share(typical.WHEEL_SHARE, total)
    loads = (r.front_left_g + r.front_right_g, r.rear_left_g + r.rear_right_g)
    stiffness = _tyre(r, total)
    axles = [
        _measured(given, r, f"{name} axle weighed") or _share(typical.AXLE_SHARE, total)
        for name, given in zip(ENDS, (r.front_axle_g, r.rear_axle_g), strict=True)
    ]
    carried = [
        max(load - axle.value - 2 * wheel.value, 0.1 * load)
        for load, axle in zip(loads, axles, strict=True)
    ]
    springs = _springs(r, carried, stiffness.value)
    tyres = [_tyre_values(r, load, stiffness) for load in loads]
    ends = [
        End(
            Filled((r.front_track_mm, r.rear_track_mm)[i], r.ruler_tol_mm, "measured"),
            tyres[i],
            _suspension(r, i, springs[i], tyres[i]["radius"].value),
            axles[i],
            loads[i],
            any(p.on == f"{ENDS[i]} link" and p.link not in (None, "shock") for p in r.part),
        )
        for i in (0, 1)
    ]
    wheelbase = Filled(r.wheelbase_mm, r.ruler_tol_mm, "measured")
    return Setup(wheelbase, wheel, (ends[0], ends[1]))


LINKS_MM = 5.0  # plus or minus: a roll centre drawn from link ends
LINKS_PERCENT = 15.0  # points of anti-dive or anti-squat from the same


def _guess(likely: Typical, scale: float = 1.0) -> Filled:
    how = f"typical, not measured: {likely.why}"
    return Filled(likely.value * scale, likely.tol * scale, how, True)


def _share(likely: Typical, total: float) -> Filled:
    return _guess(likely, total)


def _measured(
    value: float | None, r: Readings, how: str, tol: float | None = None
) -> Filled | None:
    if value is None:
        return None
    return Filled(value, 2 * r.scale_step_g if tol is None else tol, how)


def _tyre(r: Readings, total: float) -> Filled:
    """N/mm, vertical, of every tyre."""
    if r.squash_g is None or r.squash_mm is None:
        likely = typical.TYRE_SQUASH
        rate = total / 4 * _G * GRAVITY / likely.value
        how = f"typical, not measured: {likely.why}"
        return Filled(rate, rate * likely.tol / likely.value, how, True)
    rate = r.squash_g * _G * GRAVITY / r.squash_mm
    off = min(GIVE_TOL / r.squash_mm + TYRES_DIFFER, 0.9)
    return Filled(rate, rate * off, f"{r.squash_g:g} g pressed a tyre in by {r.squash_mm:g} mm")


def _pulled(grams: float | None, gave: float | None) -> Filled | None:
    """N/mm along the ground, or None."""
    if grams is None or gave is None:
        return None
    rate = grams * _G * GRAVITY / gave
    off = min(GIVE_TOL / gave + TYRES_DIFFER + PULL_TOL, 0.9)
    return Filled(rate, rate * off, f"{grams:g} g moved a held wheel by {gave:g} mm")


def _tyre_values(r: Readings, load: float, stiffness: Filled) -> dict[str, Filled]:
    squash = load / 2 * _G * GRAVITY / stiffness.value
    if r.axle_height_mm is not None:
        radius = Filled(r.axle_height_mm, r.ruler_tol_mm, "measured, standing")
    else:
        off = r.ruler_tol_mm / 2 + squash * stiffness.tol / stiffness.value
        how = f"half of {r.tyre_diameter_mm:g} mm, less what the tyre gives under the truck"
        radius = Filled(r.tyre_diameter_mm / 2 - squash, off, how)
    width = r.tyre_width_mm
    if r.tread_mm is None:
        contact = _guess(typical.CONTACT_SHARE, width)
    else:
        contact = Filled(
            min(r.tread_mm, width) / 4, min(r.tread_mm, width) / 8, "the tread's print"
        )
    found = {
        "radius": radius,
        "width": Filled(width, 0.0, "measured"),
        "contact_half_width": contact,
        "stiffness": stiffness,
    }
    for key, pulled in (
        ("lateral", _pulled(r.side_g, r.side_mm)),
        ("longitudinal", _pulled(r.roll_g, r.roll_mm)),
    ):
        if pulled is not None:
            found[key] = pulled
    return found


def _springs(r: Readings, carried: list[float], tyre: float) -> list[Filled]:
    """N/mm at a corner. carried: g on each axle's springs. A weight on the body over an axle
    squeezes its springs and tyres in series: 1/k = 2 s / (m g) - 1/k_tyre."""
    rates = [g / 2 * _G * GRAVITY / typical.SQUEEZE_MM for g in carried]
    how = f"typical, not measured: {typical.SPRING_WHY}"
    found = [Filled(k, k * typical.SPRING_SHARE, how, True) for k in rates]
    for i, sag in enumerate((r.front_sag_mm, r.rear_sag_mm)):
        if r.sag_g is None or sag is None:
            continue
        softness = 2 * sag / (r.sag_g * _G * GRAVITY) - 1 / tyre
        if softness > 0:  # if not, all of it is the tyre: told by `begin`
            off = min(GIVE_TOL / sag + 2 * TYRES_DIFFER, 0.9)
            how = f"{r.sag_g:g} g sank the body by {sag:g} mm"
            found[i] = Filled(1 / softness, off / softness, how)
    if found[0].typical != found[1].typical:
        at = 0 if found[1].typical else 1
        guess = found[at].value * carried[1 - at] / carried[at]
        found[1 - at] = _guess(typical.SAME_SPRINGS, guess)
    return found


def _spacing(r: Readings, i: int) -> Filled:
    tracks = (r.front_track_mm, r.rear_track_mm)
    given = (r.front_spacing_mm, r.rear_spacing_mm)
    own, other = given[i], given[1 - i]
    if own is not None:
        return Filled(own, 2 * r.ruler_tol_mm, "measured")
    if other is not None:
        return _guess(typical.SAME_SPACING, other * tracks[i] / tracks[1 - i])
    return _guess(typical.SPACING_SHARE, tracks[i])


def _droop(r: Readings, i: int) -> Filled:
    own, other = (r.front_hang_mm, r.rear_hang_mm)[:: 1 if i == 0 else -1]
    if own is not None:
        return Filled(own, 2 * GIVE_TOL + r.ruler_tol_mm / 2, "measured")
    if other is not None:
        same = typical.SAME_DROOP_MM
        how = f"typical, not measured: {same.why}"
        return Filled(other, min(same.tol, 0.9 * other), how, True)
    return _guess(typical.DROOP_MM)


def _suspension(r: Readings, i: int, spring: Filled, radius: float) -> dict[str, Filled]:

    def given(value: float | None, tol: float, likely: Typical, scale: float = 1.0) -> Filled:
        return Filled(value, tol, "measured") if value is not None else _guess(likely, scale)

    bar = Filled(0.0, 0.0, "no bar")
    if r.anti_roll_bar is None:
        bar = _guess(typical.PERHAPS_ANTI_ROLL)
    elif r.anti_roll_bar in ("both", ENDS[i]):
        bar = _guess(typical.ANTI_ROLL)
    percent = ("anti_dive", "anti_squat")[i]
    centre = (r.front_roll_centre_mm, r.rear_roll_centre_mm)[i]
    drawn = (r.anti_dive_percent, r.anti_squat_percent)[i]
    return {
        "spring": spring,
        "spring_spacing": _spacing(r, i),
        "roll_centre": given(centre, LINKS_MM, typical.ROLL_CENTRE_RADII, radius),
        "bump": given(r.bump_mm, 1.5, typical.BUMP_MM),
        "droop": _droop(r, i),
        "anti_roll": bar,
        percent: given(drawn, LINKS_PERCENT, (typical.ANTI_DIVE, typical.ANTI_SQUAT)[i]),
    }
