"""The methods a scenario can ask for, as trials of a batch (see `task`).

common: {"spec": JSON text of the truck file's values, "fixed": overrides and conditions, "surface":
name or None, "hold": what holds the wheels, "tolerances": bool, "headings_deg": those tried on
every build, or empty, "folder": where its meshes lie}; payload: the point of the design,
heading_deg and the seed. Every row says what the build weighs besides the answer, so that a map can
be drawn over CG height or front share as well as over what was varied.
"""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from crossfall.answers.conditions import Hold
from crossfall.statics import rigid
from crossfall.truck.assemble import with_masses, with_shifts
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import Truck
from crossfall.truck.schema import TruckSpec
from crossfall.truck.uncertain import quantile, varied

if TYPE_CHECKING:
    from crossfall.answers.tips import TipAngles
    from crossfall.study.slopes import Crossing

Row = dict[str, Any]
FATES = {"crossed": "stands", "slid": "slides", "rolled over": "tips"}
MOST_OFF = 3.0  # standard uncertainties, beyond which an error counts as a blunder


class NoAnswer(Exception):
    """The method came to no number for this build; the reason is its text."""


def warm_up(common: Mapping[str, Any]) -> None:
    """Import what the method needs before the first trial's clock starts."""
    if common.get("method") != "closed form":
        from crossfall.answers import tips  # noqa: F401
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
    """The tip angle on springs and tyres at the surface's grip, as `answers.tips` gives it."""
    return [{**about(truck_of(common, payload)), **_statics(common, payload)}]


def tilt_trial(common: Mapping[str, Any], payload: Row) -> list[Row]:
    """One virtual trial on the table, and the compliant answer in the same conditions beside it.

    tip_deg and first_lift_deg are the trial's; trial_less_compliant_deg: how far it lies above the
    statics' tip.
    """
    from crossfall.trials.tilt import tilt_trial as run_trial

    truck = truck_of(common, payload)
    asked = conditions(common, payload)
    static = _statics(common, payload)
    trial = run_trial(
        truck,
        asked["heading"],
        near=math.radians(static["tip_deg"]),
        grip=static["grip"],
        rail=static["hold"] == "rail",
    )
    if trial.outcome == "tips" and not math.isfinite(trial.tip):
        raise NoAnswer("the truck left the table in no orderly way")
    tip, compliant_deg = _degrees(trial.tip), static["compliant_deg"]
    both = tip is not None and compliant_deg is not None
    return [
        {
            **about(truck),
            **static,
            "outcome": trial.outcome,
            "tip_deg": tip,
            "tip_low_deg": _degrees(trial.tip_ci[0]),
            "tip_high_deg": _degrees(trial.tip_ci[1]),
            "first_lift_deg": _degrees(trial.first_lift),
            "trial_slide_deg": _degrees(trial.slide),
            "trial_engine": trial.engine,
            "trial_less_compliant_deg": tip - compliant_deg if both else None,
        }
    ]


def _statics(common: Mapping[str, Any], payload: Row) -> Row:
    """The conditions and the answer under the keys of `answers.keys`; tip_deg is always a number:
    what it does against a rail where it slides first."""
    truck = truck_of(common, payload)
    asked = conditions(common, payload)
    headings, i = _stack(common, payload)
    hold = common.get("hold", "brakes")
    mu = grip_of(truck, common, asked)
    found = _stacked(_build_key(common, payload), headings, mu, hold)
    if math.isnan(found.free[i]):
        raise NoAnswer("the equilibrium could not be followed to a tip")
    heading, free = [asked["heading"]], float(found.free[i])
    edge = rigid.EDGES[int(rigid.tip_edge(truck, heading)[0])]
    slides = bool(found.slides[i])
    return {
        **_answer(free, edge, None if hold == "rail" else mu, asked["slope"]),
        "grip": mu,
        "hold": hold,
        "rigid_deg": math.degrees(float(rigid.tip_angle(truck, heading)[0])),
        "compliant_deg": _degrees(float(found.tip[i])),
        "rail_deg": math.degrees(free) if slides or hold == "rail" else None,
        "goes_at_deg": _degrees(float(found.goes[i])),
        "first_lift_deg": _degrees(float(found.first_lift[i])),
        "first_snap_deg": _degrees(float(found.first_snap[i])),
    }


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
            "compliant_deg": math.degrees(study.compliant),
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


def grip_of(truck: Truck, common: Mapping[str, Any], asked: Mapping[str, Any]) -> float:
    """The friction coefficient: as asked, else the likely one of the surface, or of the first."""
    from crossfall.answers.conditions import choose_grip

    if asked["grip"] is not None:
        return float(asked["grip"])
    return choose_grip(truck, common.get("surface")).likely


def drawn(truck: Truck, seed: int) -> Truck:
    """The truck with everything uncertain about it off by errors drawn within its tolerances.

    Masses and places of the rows are normal with their standard uncertainties, cut at three of
    them; all pieces of a row share their errors, mirrored ones mirrored, as in `truck.weight`. Its
    other numbers are spread as `truck.uncertain` says.
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
    units = rng.random(len(truck.uncertain))
    numbers = {i: float(quantile(one, units[i])) for i, one in enumerate(truck.uncertain)}
    return with_shifts(with_masses(varied(truck, numbers), masses), shifts)


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


@lru_cache(maxsize=2)
def _stacked(key: Any, headings_deg: tuple[float, ...], mu: float, hold: Hold) -> TipAngles:
    from crossfall.answers.tips import tip_angles

    return tip_angles(_built(*key), np.radians(headings_deg), mu, hold)
