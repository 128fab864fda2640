"""A course as the page draws it: understood, and what a truck standing anywhere on it has in hand.

On the page a hill is a plane with x across it to the right and y up it, in mm.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from crossfall.app.answers import MAP_HEADINGS, TipMap, plain_degrees
from crossfall.app.scene import mm
from crossfall.trials.course import Course, beside, straightened
from crossfall.trials.grounds.strewn import Hump, Lump, Strewn
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array

_FAR = 3000.0  # mm from the middle of the hill
LONGEST = 20.0  # s
STONE_WIDTH = 0.06  # m across its way
SHOWN = 0.02  # m between places of the way that the page is told
MOST = {"points_mm": 60, "stones": 20, "ramps": 4}
LIMITS = {  # of what the page may ask for
    "slope_deg": (0.0, 60.0),
    "speed_mm_per_s": (50.0, 1000.0),
    "height_mm": (2.0, 80.0),
    "turned_deg": (-360.0, 360.0),
    "angle_deg": (1.0, 45.0),
    "flank_mm": (50.0, 1000.0),
    "top_mm": (20.0, 1000.0),
    "width_mm": (50.0, 2000.0),
}


@dataclass(frozen=True)
class Hill:
    """course: for the drive. places: (n, 2) m of the way on the hill, at course.along. ramps: with
    `at` on the hill and `turned` from straight up it."""

    course: Course
    places: Array
    ramps: tuple[Hump, ...]


def understood_course(asked: dict[str, Any]) -> Hill:
    """Raises InputError for what is no course."""
    points = [_place(p) for p in _several(asked, "points_mm")]
    slope, speed = np.radians(_number(asked, "slope_deg")), _number(asked, "speed_mm_per_s") / 1000
    try:
        along, heading, places = straightened(np.array(points).reshape(-1, 2))
    except (ValueError, IndexError):
        raise InputError(Problem("course", "its way has no length")) from None
    if along[-1] / speed > LONGEST:
        longest = f"{LONGEST:.0f} s at most"
        raise InputError(Problem("course", f"takes {along[-1] / speed:.0f} s", longest))
    way = (along, heading, places)
    stones = []
    for stone in _several(asked, "stones"):
        at, left, _ = beside(np.array(_place(stone.get("at_mm"))), *way)
        stones.append(Lump((at, left), _number(stone, "height_mm") / 1000, STONE_WIDTH))
    ramps, humps = [], []
    for ramp in _several(asked, "ramps"):
        place, turned = _place(ramp.get("at_mm")), np.radians(_number(ramp, "turned_deg"))
        sizes = [_number(ramp, key) / 1000 for key in ("flank_mm", "top_mm", "width_mm")]
        angle = float(np.radians(_number(ramp, "angle_deg")))
        at, left, ahead = beside(np.array(place), *way)
        ramps.append(Hump(place, float(turned), angle, *sizes))
        humps.append(Hump((at, left), float(turned - ahead), angle, *sizes))
    ground = Strewn(tuple(stones), tuple(humps))
    return Hill(Course(float(slope), along, heading, ground, speed), places, tuple(ramps))


def way_told(hill: Hill) -> dict[str, Any]:
    """The way as the page draws it: places in mm, headings in deg, without jumps."""
    course = hill.course
    keep = _kept(course)
    return {
        "along_mm": mm(course.along[keep]),
        "places_mm": mm(hill.places[keep]),
        "heading_deg": plain_degrees(course.heading[keep]),
        "seconds": round(course.length / course.speed, 2),
    }


def standing_on_course(hill: Hill, curve: TipMap) -> dict[str, Any]:
    """Where the truck of this curve would stand, tip or slide, if it stood with all its wheels on
    the ground that is under its middle; deg, at the places of `way_told`."""
    keep = _kept(hill.course)
    slope, heading = local_slopes(hill)
    goes = np.interp(heading[keep], MAP_HEADINGS, curve.tips.goes, period=2 * np.pi)
    return {
        "slope_deg": plain_degrees(slope[keep]),
        "local_heading_deg": plain_degrees(heading[keep]),
        "goes_at_deg": plain_degrees(goes),
        "in_hand_deg": plain_degrees(goes - slope[keep]),
    }


def local_slopes(hill: Hill) -> tuple[Array, Array]:
    """Slope and heading (n,) rad of the ground along the way, stones left out: on a ramp its own,
    with what the hill does to it."""
    course, places = hill.course, hill.places
    normal = np.zeros((len(places), 3))
    normal[:, 2] = 1.0
    for ramp in hill.ramps:
        up = np.array([-np.sin(ramp.turned), np.cos(ramp.turned)])
        off = places - np.array(ramp.at)
        u, v = off @ up, off @ np.array([-up[1], up[0]])
        on = (np.abs(u) > ramp.top / 2) & (np.abs(u) < ramp.top / 2 + ramp.flank)
        on &= np.abs(v) < ramp.width / 2
        flat = np.sign(u[on])[:, None] * up * np.sin(ramp.angle)
        normal[on] = np.column_stack([flat, np.full(on.sum(), np.cos(ramp.angle))])
    top = np.array([0.0, np.sin(course.slope), np.cos(course.slope)])
    level = normal @ top
    uphill = top - level[:, None] * normal
    ahead = np.column_stack(
        [-np.sin(course.heading), np.cos(course.heading), np.zeros(len(places))]
    )
    ahead = ahead - np.sum(ahead * normal, axis=1)[:, None] * normal
    left = np.sum(np.cross(uphill, ahead) * normal, axis=1)
    heading: Array = np.arctan2(left, np.sum(uphill * ahead, axis=1)) % (2 * np.pi)
    return np.arccos(np.clip(level, -1.0, 1.0)), heading


def _kept(course: Course) -> Array:
    """Which places of the way are told."""
    count = max(2, int(np.ceil(course.length / SHOWN)) + 1)
    kept: Array = np.unique(np.linspace(0, len(course.along) - 1, count).round().astype(int))
    return kept


def _several(asked: dict[str, Any], key: str) -> list[Any]:
    found = asked.get(key, [])
    if not isinstance(found, list) or len(found) > MOST[key]:
        raise InputError(
            Problem("course", f"{key} are missing or too many", f"{MOST[key]} at most")
        )
    if key != "points_mm" and not all(isinstance(one, dict) for one in found):
        raise InputError(Problem("course", f"{key} are no stones and ramps"))
    return found


def _place(given: Any) -> tuple[float, float]:
    """m."""
    pair = given if isinstance(given, list) and len(given) == 2 else [None, None]
    x, y = (_between(v, -_FAR, _FAR, "a place") for v in pair)
    return x / 1000, y / 1000


def _number(asked: dict[str, Any], key: str) -> float:
    return _between(asked.get(key), *LIMITS[key], key)


def _between(value: Any, low: float, high: float, what: str) -> float:
    if not isinstance(value, int | float) or isinstance(value, bool) or not low <= value <= high:
        bounds = f"{low:g} to {high:g}"
        raise InputError(Problem("course", f"{what} is missing or out of bounds", bounds))
    return float(value)
