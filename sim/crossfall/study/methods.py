"""The methods a scenario can ask for, as trials of a batch (see `task`).

common: {"method": its name, "spec": JSON text of the truck file's values, "fixed": overrides and
conditions, "surface", "hold", "engine" and "trial": as of the scenario, where the payload does not
say otherwise, "ranges": bool, "tolerances": bool, "folder": where its meshes lie,
"ground_folder": where the files of grounds lie, "keep": which records are kept, or None, and
"records": in which folder}; payload: the point of the design, heading_deg, the
seed, and the digest of a ground's file.
Every row says what the build weighs besides the answer, so that a map can be drawn over CG height
or front share as well as over what was varied.
"""

from __future__ import annotations

import json
import math
from collections.abc import Callable, Mapping, Sequence
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from crossfall.answers.conditions import Conditions, choose_grip, one_grip
from crossfall.statics import rigid, sliding
from crossfall.study.draws import drawn_truck
from crossfall.study.responses import evaluate_expression
from crossfall.study.scenario_file import DRIVES, TILTS, WORDS
from crossfall.study.task import value_digest
from crossfall.study.versions import versions_of
from crossfall.trials.grounds import ground_of
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.errors import InputError
from crossfall.truck.massprops import whole
from crossfall.truck.model import Grip, Truck
from crossfall.truck.schema import TruckSpec

if TYPE_CHECKING:
    from crossfall.answers.tips import TipAngles
    from crossfall.study.slopes import Crossing

_Row = dict[str, Any]
_FATES = {"crossed": "stands", "slid": "slides", "rolled over": "tips"}
_PLACES = ("folder", "ground_folder", "records")  # of common: where files lie on this machine
STACK = 128  # builds and headings answered at once: a stack takes little longer than one


class NoAnswer(Exception):
    """The method came to no number for this build; the reason is its text."""


def warm_up(common: Mapping[str, Any]) -> None:
    """Import what the method needs, and load or compile what is compiled, before the first trial's
    clock starts."""
    from crossfall.answers import tips  # noqa: F401
    from crossfall.statics.balance import balances
    from crossfall.truck.native import entry

    entry(balances)
    if common.get("method") in TILTS:
        from crossfall.trials import tilt  # noqa: F401
    if common.get("method") in DRIVES:
        from crossfall.study import slopes  # noqa: F401


def compliant_rows(common: Mapping[str, Any], payload: _Row) -> list[_Row]:
    """The tip angle on springs and tyres at the ground's grip, as `answers` gives it."""
    return [{**about(truck_of(common, payload)), **_statics(common, payload)}]


def tilt_rows(common: Mapping[str, Any], payload: _Row) -> list[_Row]:
    """One virtual trial on the table, and the compliant answer in the same conditions beside it.

    tip_deg is the trial's, or the statics' where none is asked for; trial_less_compliant_deg: how
    far it lies above the statics' tip.
    """
    from crossfall.trials.pace import PACES
    from crossfall.trials.saved import save_trial
    from crossfall.trials.tilt import tilt_trial as run_trial

    truck, static = truck_of(common, payload), _statics(common, payload)
    one, asked = conditions_of(truck, common, payload), asked_of(common, payload)
    if asked["trial"] == "none":
        return [{**about(truck), **static}]
    near = math.radians(static["tip_deg"])
    trial = run_trial(
        truck,
        one.heading,
        near=near,
        grip=one.grip.likely,
        rail=one.rail,
        pace=PACES[asked["trial"]],
        engine=asked["engine"],
    )
    if trial.outcome == "tips" and not math.isfinite(trial.tip):
        raise NoAnswer("the truck left the table in no orderly way")
    tip, beside = _degrees(trial.tip), static["compliant_deg"]
    apart = None if tip is None or beside is None else tip - beside
    versions = versions_of("tilt trial", filter(None, [asked["engine"]]))
    row: _Row = {
        **about(truck),
        **static,
        "tip_deg": tip,
        "trial": asked["trial"],
        "trial_outcome": trial.outcome,
        "trial_deg": tip,
        "trial_ci_low_deg": _degrees(trial.tip_ci[0]),
        "trial_ci_high_deg": _degrees(trial.tip_ci[1]),
        "trial_first_lift_deg": _degrees(trial.first_lift),
        "trial_slide_deg": _degrees(trial.slide),
        "trial_engine": trial.engine,
        "trial_less_compliant_deg": apart,
    }
    return [row | _kept(common, payload, row, lambda path: save_trial(trial, path, versions))]


def _kept(
    common: Mapping[str, Any], payload: _Row, row: _Row, save: Callable[[Path], None]
) -> _Row:
    """Whether the scenario asks for this trial's record, and the name of the file it is kept in."""
    if not common.get("keep"):
        return {}
    wanted = float(evaluate_expression(common["keep"], {**common["fixed"], **payload, **row}))
    if not (math.isfinite(wanted) and wanted):
        return {"record": None}
    asked = {k: v for k, v in common.items() if k not in _PLACES}
    name = value_digest([asked, payload])[:16] + ".npz"
    folder = Path(common["records"])
    folder.mkdir(parents=True, exist_ok=True)
    save(folder / name)
    return {"record": f"{folder.name}/{name}"}


def _statics(common: Mapping[str, Any], payload: _Row) -> _Row:
    """The conditions and the answer, under the keys of `answers.keys`.

    tip_deg is always a number: where it slides first, what it does against a rail. first: what
    comes first at this grip.
    """
    truck = truck_of(common, payload)
    one = conditions_of(truck, common, payload)
    if _case(common, payload) not in _solved:
        ahead(common, [payload])
    found, i = _solved[_case(common, payload)]
    free, goes, slides = float(found.free[i]), float(found.goes[i]), bool(found.slides[i])
    if math.isnan(free):
        raise NoAnswer("the equilibrium could not be followed to a tip")
    asked = asked_of(common, payload)
    heading, slope, given = [one.heading], asked["slope"], asked["grip"]
    row: _Row = {
        "tip_deg": math.degrees(free),
        "over": rigid.EDGES[int(rigid.tip_edge(truck, heading)[0])],
        "surface": None if given else one.grip.surface,
        "grip": one.grip.likely,
        "hold": one.hold,
        "rigid_deg": math.degrees(float(rigid.tip_angle(truck, heading)[0])),
        "compliant_deg": _degrees(float(found.tip[i])),
        "rail_deg": math.degrees(free) if slides or one.rail else None,
        "slide_deg": _degrees(float(found.slide[i])),
        "goes_at_deg": math.degrees(goes),
        "first": "slides" if slides else "tips",
        "first_lift_deg": _degrees(float(found.first_lift[i])),
        "first_snap_deg": _degrees(float(found.first_snap[i])),
    }
    if slope is not None:
        row["on_slope"] = "stands" if slope < goes else row["first"]
    return row | (_range(truck, one, slides) if common.get("ranges") else {})


def _range(truck: Truck, one: Conditions, slides: bool) -> _Row:
    """The 95 % ranges, flat, the slide at the surface's least and greatest grip, and how likely a
    tip comes first."""
    from crossfall.answers.answer import slide_angles
    from crossfall.answers.ranges import ranges

    (found,) = ranges(truck, [one])[1]
    row: _Row = {}
    for name, ends in (
        ("compliant", None if slides else found.tip),
        ("rail", found.tip if slides or one.rail else None),
        ("goes_at", found.goes),
    ):
        low, high = (math.nan, math.nan) if ends is None else ends
        row[f"{name}_range_low_deg"], row[f"{name}_range_high_deg"] = _degrees(low), _degrees(high)
    if not one.rail:
        low, _, high = slide_angles(truck, np.array([one.heading]), one.grip)[0]
        row["slide_range_low_deg"], row["slide_range_high_deg"] = _degrees(low), _degrees(high)
    chance = 1.0 if one.rail else found.tips_first
    return row | {"outcome": sliding.outcome(chance), "tips_first_share": chance}


def convergence_rows_of(common: Mapping[str, Any], payload: _Row) -> list[_Row]:
    """How the trial's angle hangs on step, solver, rate and engine: many lines for one trial, see
    `convergence`. In every engine that is installed, unless the scenario names or varies it.

    tip_deg is that of the line's own trial.
    """
    from crossfall.engines.held import installed_engines
    from crossfall.study.convergence import convergence_rows, trial_convergence

    truck, asked = truck_of(common, payload), asked_of(common, payload)
    one = conditions_of(truck, common, payload)
    engines = [asked["engine"]] if asked["engine"] else installed_engines()
    rows = convergence_rows(trial_convergence(truck, one, engines, asked["trial"]))
    shared = {**about(truck), "grip": one.grip.likely}
    shared["surface"] = None if asked["grip"] else one.grip.surface
    shared |= {"hold": one.hold, "trial": asked["trial"]}
    return [
        {
            **shared,
            "tip_deg": row["trial_deg"],
            "trial_engine": row.pop("engine"),
            "trial_outcome": row.pop("outcome"),
            **row,
        }
        for row in rows
    ]


def slope_rows(common: Mapping[str, Any], payload: _Row) -> list[_Row]:
    """One drive across a slope at the ground's likely grip: over the ground asked for, drawn by
    the seed."""
    from crossfall.study.slopes import one_trial
    from crossfall.truck.model import GRAVITY, WHEELS

    truck, asked = truck_of(common, payload), asked_of(common, payload)
    grip = conditions_of(truck, common, payload).grip.likely
    crossing = _crossing(common, asked, payload, grip)
    trial = one_trial(truck, crossing, asked["slope"], 0)
    row: _Row = {
        **about(truck),
        "ground": crossing.ground.kind,
        "grip": grip,
        "outcome": trial.outcome,
        "on_slope": _FATES.get(trial.outcome, trial.outcome),
        "least_load_g": 1000 * trial.least_load / GRAVITY,
        "least_wheel": WHEELS[trial.least_wheel],
        "least_geometric_margin_deg": _degrees(trial.least_margin),
        "slid_mm": 1000 * trial.slid,
    }
    return [row | _kept(common, payload, row, trial.journey.record.save)]


def critical_rows(common: Mapping[str, Any], payload: _Row) -> list[_Row]:
    """The slope that half of the drives across do not survive, found by trials.

    Grip is drawn anew for every drive, from the surface's range, unless one number is given.
    """
    from crossfall.study.slopes import critical_slope as search

    truck, asked = truck_of(common, payload), asked_of(common, payload)
    grip = asked["grip"] or conditions_of(truck, common, payload).grip
    study = search(truck, _crossing(common, asked, payload, grip))
    fit, standing = study.critical.fit, math.degrees(study.compliant)
    return [
        {
            **about(truck),
            "ground": study.crossing.ground.kind,
            "tip_deg": math.degrees(fit.angle),
            "tip_low_deg": _degrees(fit.low),
            "tip_high_deg": _degrees(fit.high),
            "spread_deg": _degrees(fit.spread),
            "drives": study.critical.trials,
            "settled": study.critical.settled,
            "rolled_over": study.outcomes.count("rolled over"),
            "slid": study.outcomes.count("slid"),
            "stuck": study.outcomes.count("stuck"),
            "compliant_deg": standing if study.first == "tips" else None,
            "rail_deg": None if study.first == "tips" else standing,
            "slide_deg": _degrees(study.slide),
            "goes_at_deg": math.degrees(study.static),
            "dynamic_allowance_deg": _degrees(study.allowance),
        }
    ]


def _crossing(
    common: Mapping[str, Any], asked: Mapping[str, Any], payload: _Row, grip: Grip | float
) -> Crossing:
    from crossfall.study.slopes import Crossing

    values = {**common["fixed"], **payload}
    ground = ground_of(values, Path(common.get("ground_folder", ".")))
    if ground.said().get("digest") != payload.get("ground_digest"):
        raise NoAnswer("the file of the ground is not what it was when the sweep began")
    return Crossing(
        heading=asked["heading"],
        speed=asked["speed"],
        ground=ground,
        grip=grip,
        seed=int(payload["seed"]),
    )


# What the methods share


def truck_of(common: Mapping[str, Any], payload: _Row) -> Truck:
    """The build of this trial: edits put in, and errors drawn where tolerances are asked for."""
    return _built(*_build_key(common, payload))


def asked_of(common: Mapping[str, Any], payload: _Row) -> dict[str, Any]:
    """heading (rad), slope (rad or None), grip (or None), speed (m/s), and the words of WORDS."""
    words = {key: common.get(key) for key in WORDS}
    chosen = {**words, **common["fixed"], **payload}
    slope = chosen.get("slope_deg")
    grip = chosen.get("grip")
    return {
        "heading": math.radians(chosen.get("heading_deg", 90.0)),
        "slope": None if slope is None else math.radians(slope),
        "grip": None if grip is None else float(grip),
        "speed": chosen.get("speed_mm_per_s", 150.0) / 1000,
        **{key: chosen[key] for key in WORDS},
    }


def conditions_of(truck: Truck, common: Mapping[str, Any], payload: _Row) -> Conditions:
    """What is asked: the grip of the scenario's surface, or the truck's first, unless one number
    is given for it."""
    asked = asked_of(common, payload)
    given = asked["grip"]
    grip = choose_grip(truck, asked["surface"]) if given is None else one_grip(given)
    return Conditions(asked["heading"], grip, asked["hold"])


def about(truck: Truck) -> _Row:
    """The columns of WEIGHTS, in g, mm and a share: front_share = (x - x_rear) / L.

    Source: derived here from moments about the rear axle.
    """
    body = whole(truck)
    x, y, z = (1000 * float(v) for v in body.cg)
    return {
        "mass_g": 1000 * body.mass,
        "cg_x_mm": x,
        "cg_y_mm": y,
        "cg_z_mm": z,
        "front_share": (body.cg[0] - truck.rear.x) / truck.wheelbase,
        "front_track_mm": 1000 * truck.front.track,
        "rear_track_mm": 1000 * truck.rear.track,
    }


def _degrees(angle: float) -> float | None:
    return math.degrees(angle) if math.isfinite(angle) else None


@lru_cache(maxsize=2)
def _parsed(text: str) -> TruckSpec:
    return TruckSpec.model_validate(json.loads(text))


def _build_key(
    common: Mapping[str, Any], payload: _Row
) -> tuple[str, str | None, tuple[tuple[str, Any], ...], int | None]:
    """What decides the build: the file's values, its folder, the edits and the seed of errors."""
    edits = {k: v for k, v in {**common["fixed"], **payload}.items() if "." in k}
    seed = int(payload["seed"]) if common["tolerances"] else None
    return common["spec"], common.get("folder"), tuple(edits.items()), seed


@lru_cache(maxsize=STACK + 1)
def _built(
    text: str, folder: str | None, edits: tuple[tuple[str, Any], ...], seed: int | None
) -> Truck:
    spec = set_values(_parsed(text), dict(edits))
    truck = build(spec, None if folder is None else Path(folder))[0]
    return truck if seed is None else drawn_truck(truck, seed)


_solved: dict[Any, tuple[TipAngles, int]] = {}  # of the latest stack, by case


def ahead(common: Mapping[str, Any], payloads: Sequence[_Row]) -> None:
    """Answer by statics, in one stack for each way to hold, what trials will ask for. A build that
    is no truck is left out here, and says so when its turn comes."""
    if common.get("method") not in ("compliant", "tilt trial"):
        return
    from crossfall.answers.tips import tip_pairs

    asked: dict[Any, tuple[Truck, Conditions]] = {}
    for payload in payloads:
        try:
            truck = truck_of(common, payload)
            asked[_case(common, payload)] = truck, conditions_of(truck, common, payload)
        except InputError:
            continue
    _solved.clear()
    for hold in sorted({one.hold for _, one in asked.values()}):
        alike = {case: (truck, one) for case, (truck, one) in asked.items() if one.hold == hold}
        trucks, ones = zip(*alike.values(), strict=True)
        psi, mu = np.array([(c.heading, c.grip.likely) for c in ones]).T
        found = tip_pairs(trucks, psi, mu, hold)
        _solved.update({case: (found, i) for i, case in enumerate(alike)})


def _case(common: Mapping[str, Any], payload: _Row) -> Any:
    asked = asked_of(common, payload)
    conditions = ("heading", "grip", "surface", "hold")
    return _build_key(common, payload), *(asked[key] for key in conditions)
