"""The methods a scenario can ask for, as trials of a batch (see `task`).

common: {"spec": JSON text of the truck file's values, "fixed": overrides and conditions, "surface":
name or None, "tolerances": bool, "headings_deg": those tried on every build, or empty, "folder":
where its meshes lie}; payload: the point of the design, heading_deg and the seed. Every row says
what the build weighs besides the answer, so that a map can be drawn over CG height or front share
as well as over what was varied.
"""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from crossfall.statics import rigid
from crossfall.truck.assemble import with_masses, with_shifts
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.schema import TruckSpec

if TYPE_CHECKING:
    from crossfall.statics.compliant import CompliantTips
    from crossfall.statics.window import Window
    from crossfall.study.slopes import Crossing

Row = dict[str, Any]
FATES = {"crossed": "stands", "slid": "slides", "rolled over": "tips"}
MOST_OFF = 3.0  # standard uncertainties, beyond which an error counts as a blunder


class NoAnswer(Exception):
    """The method came to no number for this build; the reason is its text."""


def warm_up(common: Mapping[str, Any]) -> None:
    """Import what the method needs before the first trial's clock starts."""
    if common.get("method") != "closed form":
        from crossfall.statics import window  # noqa: F401
    if common.get("method") == "tilt trial":
        from crossfall.trials import tilt  # noqa: F401
    if common.get("method") in ("slope trial", "critical slope"):
        from crossfall.study import slopes  # noqa: F401


def closed_form(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """The rigid tip and slide angle."""
    truck = truck_of(common, payload)
    asked = conditions(common, payload)
    tip = float(rigid.tip_angle(truck, [asked["heading"]])[0])
    edge = rigid.EDGES[int(rigid.tip_edge(truck, [asked["heading"]])[0])]
    grip = grip_of(truck, common, asked)
    return [{**about(truck), **_answer(tip, edge, grip, asked["slope"])}]


def compliant(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """The tip angle on springs and tyres, with one friction closure throughout (uniform)."""
    from crossfall.statics.compliant import REASONS

    truck = truck_of(common, payload)
    asked = conditions(common, payload)
    found, i = _compliant_tips(common, payload)
    tip = float(found.tip[i])
    if math.isnan(tip):
        raise NoAnswer("the equilibrium could not be followed to a tip")
    heading = [asked["heading"]]
    edge = rigid.EDGES[int(rigid.tip_edge(truck, heading)[0])]
    grip = grip_of(truck, common, asked)
    return [
        {
            **about(truck),
            **_answer(tip, edge, grip, asked["slope"]),
            "rigid_deg": math.degrees(float(rigid.tip_angle(truck, heading)[0])),
            "first_lift_deg": _degrees(float(found.first_lift[i])),
            "first_snap_deg": _degrees(float(found.first_snap[i])),
            "reason": REASONS[int(found.reason[i])],
        }
    ]


def tilt_trial(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """One virtual trial on the table, and the compliant answers beside it.

    outside_window_deg: how far the trial lies outside what the two friction closures allow.
    """
    from crossfall.trials.tilt import tilt_trial as run_trial

    truck = truck_of(common, payload)
    asked = conditions(common, payload)
    headings, i = _stack(common, payload)
    static = _window(_build_key(common, payload), headings)
    expected, low, high = (float(v[i]) for v in (static.uniform.tip, static.low, static.high))
    near = None if math.isnan(expected) else expected
    trial = run_trial(truck, asked["heading"], near=near, grip=asked["grip"])
    if trial.outcome == "tips" and not math.isfinite(trial.tip):
        raise NoAnswer("the truck left the table in no orderly way")
    return [
        {
            **about(truck),
            "outcome": trial.outcome,
            "tip_deg": _degrees(trial.tip),
            "tip_low_deg": _degrees(trial.tip_ci[0]),
            "tip_high_deg": _degrees(trial.tip_ci[1]),
            "first_lift_deg": _degrees(trial.first_lift),
            "slide_deg": _degrees(trial.slide),
            "rigid_deg": math.degrees(float(rigid.tip_angle(truck, [asked["heading"]])[0])),
            "compliant_deg": _degrees(expected),
            "compliant_low_deg": _degrees(low),
            "compliant_high_deg": _degrees(high),
            "outside_window_deg": _degrees(trial.tip - float(np.clip(trial.tip, low, high))),
        }
    ]


def slope_trial(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """One drive across a slope: over a plane, a stone or rough ground, drawn by the seed."""
    from crossfall.study.slopes import one_trial
    from crossfall.truck.model import GRAVITY, WHEELS

    truck = truck_of(common, payload)
    asked = conditions(common, payload)
    trial = one_trial(truck, _crossing(asked, payload), asked["slope"], 0)
    return [
        {
            **about(truck),
            "outcome": trial.outcome,
            "on_slope": FATES.get(trial.outcome, trial.outcome),
            "least_load_g": 1000 * trial.least_load / GRAVITY,
            "least_wheel": WHEELS[trial.least_wheel],
            "least_geometric_margin_deg": _degrees(trial.least_margin),
            "slid_mm": 1000 * trial.slid,
        }
    ]


def critical_slope(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """The slope that half of the drives across do not survive, found by trials."""
    from crossfall.study.slopes import critical_slope as search

    truck = truck_of(common, payload)
    study = search(truck, _crossing(conditions(common, payload), payload))
    fit = study.critical.fit
    return [
        {
            **about(truck),
            "tip_deg": math.degrees(fit.angle),
            "tip_low_deg": _degrees(fit.low),
            "tip_high_deg": _degrees(fit.high),
            "spread_deg": _degrees(fit.spread),
            "drives": study.critical.trials,
            "settled": study.critical.settled,
            "rolled_over": study.outcomes.count("rolled over"),
            "slid": study.outcomes.count("slid"),
            "stuck": study.outcomes.count("stuck"),
            "compliant_low_deg": math.degrees(study.window[0]),
            "compliant_high_deg": math.degrees(study.window[1]),
            "dynamic_allowance_deg": _degrees(study.allowance),
        }
    ]


def _crossing(asked: Mapping[str, Any], payload: Row) -> Crossing:
    from crossfall.study.slopes import Crossing
    from crossfall.trials.ground import Plane, Rough, Stone

    ground: Plane | Stone | Rough = Plane()
    if asked["stone"]:
        ground = Stone(asked["stone"])
    elif asked["rough"]:
        ground = Rough(asked["rough"])
    return Crossing(
        heading=asked["heading"],
        speed=asked["speed"],
        ground=ground,
        grip=asked["grip"],
        seed=int(payload["seed"]),
    )


# What the methods share


def truck_of(common: Mapping[str, Any], payload: Row) -> Truck:
    """The build of this trial: edits put in, and errors drawn where tolerances are asked for."""
    return _built(*_build_key(common, payload))


def conditions(common: Mapping[str, Any], payload: Row) -> dict[str, Any]:
    """heading (rad), slope (rad or None), grip (or None), speed (m/s), stone and rough (m)."""
    chosen = {**common["fixed"], **payload}
    slope = chosen.get("slope_deg")
    grip = chosen.get("grip")
    return {
        "heading": math.radians(chosen.get("heading_deg", 90.0)),
        "slope": None if slope is None else math.radians(slope),
        "grip": None if grip is None else float(grip),
        "speed": chosen.get("speed_mm_per_s", 150.0) / 1000,
        "stone": chosen.get("stone_mm", 0.0) / 1000,
        "rough": chosen.get("rough_mm", 0.0) / 1000,
    }


def grip_of(truck: Truck, common: Mapping[str, Any], asked: Mapping[str, Any]) -> float | None:
    """The friction coefficient: as asked, else the likely one of the surface, else of the first."""
    if asked["grip"] is not None:
        return float(asked["grip"])
    for grip in truck.grips:
        if common.get("surface") in (None, grip.surface):
            return grip.likely
    return None


def drawn(truck: Truck, seed: int) -> Truck:
    """The truck with each row's mass and place off by errors drawn within its tolerances.

    Normal with the rows' standard uncertainties, cut at three of them; all pieces of a row share
    their errors, mirrored ones mirrored, as in `truck.weight`.
    """
    rng = np.random.default_rng(seed)
    parts = {p.row: p for p in reversed(truck.parts)}
    masses, shifts = {}, {}
    for row in sorted(parts):
        error = np.clip(rng.standard_normal(4), -MOST_OFF, MOST_OFF)
        part = parts[row]
        if part.mass_sd:
            # No part weighs less than a tenth of what it should, however loose its tolerance.
            masses[row] = max(part.body.mass + part.mass_sd * error[0], 0.1 * part.body.mass)
        if part.place_sd:
            shifts[row] = part.place_sd * error[1:]
    return with_shifts(with_masses(truck, masses), shifts)


def about(truck: Truck) -> Row:
    """Columns that say what the build weighs."""
    body = whole(truck)
    x, y, z = (1000 * float(v) for v in body.cg)
    return {
        "mass_g": 1000 * body.mass,
        "cg_x_mm": x,
        "cg_y_mm": y,
        "cg_z_mm": z,
        "front_share": (body.cg[0] - truck.rear.x) / truck.wheelbase,
    }


def _answer(tip: float, edge: str, grip: float | None, slope: float | None) -> Row:
    slide = math.nan if grip is None else math.atan(grip)
    row: Row = {"tip_deg": math.degrees(tip), "over": edge, "grip_used": grip}
    row |= {"slide_deg": _degrees(slide), "tips_less_slides_deg": _degrees(tip - slide)}
    row["first"] = None if grip is None else ("tips" if tip < slide else "slides")
    if slope is not None:
        end = min(tip, math.inf if grip is None else slide)
        row["on_slope"] = "stands" if slope < end else (row["first"] or "tips")
    return row


def _degrees(angle: float) -> float | None:
    return math.degrees(angle) if math.isfinite(angle) else None


@lru_cache(maxsize=2)
def _parsed(text: str) -> TruckSpec:
    return TruckSpec.model_validate(json.loads(text))


def _build_key(
    common: Mapping[str, Any], payload: Row
) -> tuple[str, str | None, tuple[tuple[str, Any], ...], int | None]:
    """What decides the build: the file's values, its folder, the edits and the seed of errors."""
    edits = {k: v for k, v in {**common["fixed"], **payload}.items() if "." in k}
    seed = int(payload["seed"]) if common["tolerances"] else None
    return common["spec"], common.get("folder"), tuple(edits.items()), seed


# Trials of one build on several headings come in a row, so these remember the latest builds.


@lru_cache(maxsize=2)
def _built(
    text: str, folder: str | None, edits: tuple[tuple[str, Any], ...], seed: int | None
) -> Truck:
    spec = set_values(_parsed(text), dict(edits))
    truck = build(spec, None if folder is None else Path(folder))[0]
    return truck if seed is None else drawn(truck, seed)


def _stack(common: Mapping[str, Any], payload: Row) -> tuple[tuple[float, ...], int]:
    """Headings (deg) to solve at once, which costs little more than one, and which is asked."""
    heading = float({**common["fixed"], **payload}.get("heading_deg", 90.0))
    headings = tuple(float(h) for h in common["headings_deg"]) or (heading,)
    return headings, headings.index(heading)


def _compliant_tips(common: Mapping[str, Any], payload: Row) -> tuple[CompliantTips, int]:
    """The compliant answers of this trial's build, and which of them is on its heading."""
    headings, i = _stack(common, payload)
    return _stacked(_build_key(common, payload), headings), i


@lru_cache(maxsize=2)
def _stacked(key: Any, headings_deg: tuple[float, ...]) -> CompliantTips:
    from crossfall.statics.compliant import tips

    return tips(_built(*key), np.radians(headings_deg))


@lru_cache(maxsize=2)
def _window(key: Any, headings_deg: tuple[float, ...]) -> Window:
    from crossfall.statics.window import window

    return window(_built(*key), np.radians(headings_deg))
