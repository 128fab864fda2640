"""What a suspension amounts to under the names and units of every answer."""

from __future__ import annotations

from math import degrees
from typing import Any

from crossfall.tuning.suspension import AxleLook, Moved

_MM = 1e3


def axle_record(one: AxleLook) -> dict[str, Any]:
    """One axle; lengths in mm, angles in deg, rates in N/mm; nan where there is none."""
    t = one.travel
    return {
        "axle": one.end,
        "links": list(one.kinds),
        "roll_centre_mm": one.roll_centre * _MM,
        "roll_axis_slope": one.roll_axis,
        "roll_steer_deg_per_deg": one.roll_axis,
        "instant_centre_mm": [v * _MM for v in one.instant_centre.tolist()],
        "anti_dive_percent" if one.end == "front" else "anti_squat_percent": one.anti,
        "castor_deg_per_mm": degrees(one.castor) / _MM,
        "heave_steer_deg_per_mm": degrees(one.heave_steer) / _MM,
        "wheelbase_mm_per_mm": one.wheelbase,
        "wheel_rate_n_per_mm": one.wheel_rate / _MM,
        "spring_spacing_mm": one.spacing * _MM,
        "bump_mm": one.bump * _MM,
        "droop_mm": one.droop * _MM,
        "spring_squeeze_mm": [v * _MM for v in one.squeeze],
        "spring_squeeze_at_droop_mm": [v * _MM for v in one.at_droop],
        "soft_spring_bound_at_mm": one.bound * _MM,
        "shock_length_mm": [v * _MM for v in one.shock],
        "travel": {
            "heave_mm": (t.heave * _MM).tolist(),
            "roll_centre_mm": (t.roll_centre * _MM).tolist(),
            "instant_centre_mm": (t.instant_centre * _MM).tolist(),
            "anti_percent": t.anti.tolist(),
            "castor_deg": [degrees(v) for v in t.castor],
            "wheelbase_mm": (t.wheelbase * _MM).tolist(),
            "wheel_rate_n_per_mm": (t.wheel_rate / _MM).tolist(),
        },
        "rolling": {
            "roll_deg": [degrees(v) for v in one.roll],
            "steer_deg": [degrees(v) for v in one.steer],
        },
    }


def moved_degrees(one: Moved) -> tuple[float, float, float]:
    """Degrees on the side slope (the side that loses more), climb and descent."""
    left, right, climb, descent = (degrees(v) for v in one.change)
    return min(left, right), climb, descent


def move_record(one: Moved) -> dict[str, Any]:
    """What one moved link end does, deg; nan where it cannot be."""
    side, climb, descent = moved_degrees(one)
    return {
        "part": one.part,
        "end": one.end,
        "axis": one.axis,
        "side_deg": side,
        "climb_deg": climb,
        "descent_deg": descent,
        "why_not": one.why,
    }
