"""The planner, the scale and the tilt board, as the page asks for them and wants them told."""

from __future__ import annotations

import tempfile
from collections.abc import Mapping
from math import degrees, radians
from pathlib import Path
from typing import Any

from crossfall.answers.conditions import case_name
from crossfall.app.answers import without_nan
from crossfall.app.folder import listing
from crossfall.measurement.board import check_board
from crossfall.measurement.board_file import add_reading, read_board, remove_reading
from crossfall.measurement.board_predict import predict
from crossfall.measurement.weigh_in import weigh_in
from crossfall.measurement.weigh_in_file import read_session
from crossfall.measurement.weigh_in_next import next_readings
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.model import Grip, Truck
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.directions import DIRECTIONS
from crossfall.tuning.limits import ClassLimits, read_limits
from crossfall.tuning.milp_model import Bounds
from crossfall.tuning.plan import Choice, aim_at, plan

_BOARD = (90.0, 270.0, 0.0, 180.0)


def planned(
    loaded: Loaded, catalogue: Catalogue, asked: Mapping[str, Any], surface: str | None
) -> dict[str, Any]:
    """The best set for what is asked, on a surface by name (None: the truck's first).

    asked: aim, and any of budget, added_g, run_min, reach_deg, front_least, front_most (percent)
    and limits (name of a limits file beside the truck's).
    """
    if asked.get("aim") not in DIRECTIONS:
        raise InputError(Problem("plan", "has no such aim", ", ".join(DIRECTIONS)))
    budget, added, minutes, reach = map(asked.get, ("budget", "added_g", "run_min", "reach_deg"))
    if minutes is not None and loaded.spec.battery is None:
        raise InputError(Problem("plan", "the truck's file has no [battery]"))
    aim = aim_at(asked["aim"], None if reach is None else radians(reach))
    bounds = Bounds(
        budget,
        None if added is None else added / 1e3,
        None if minutes is None else minutes * 60.0,
        _front_share(asked),
        _limits(loaded, asked),
    )
    found = plan(loaded, catalogue, aim, bounds, surface=surface)
    return {
        "now": _choice(catalogue, found.now),
        "best": None if found.best is None else _choice(catalogue, found.best),
        "runners": [_choice(catalogue, c) for c in found.runners],
        "front": [_choice(catalogue, c) for c in found.front],
        "scored": int(found.scored),
        "proven": bool(found.proven),
    }


def limits_files(loaded: Loaded) -> tuple[str, ...]:
    """Names of the limits files beside the truck's own."""
    return listing(loaded.path.parent, ".limits.toml")


def _front_share(asked: Mapping[str, Any]) -> tuple[float, float] | None:
    low, high = map(asked.get, ("front_least", "front_most"))
    if low is None and high is None:
        return None
    share = (low or 0.0) / 100, (100.0 if high is None else high) / 100
    if not 0 <= share[0] < share[1] <= 1:
        allowed = "a least below the most, both of 0 to 100 percent"
        raise InputError(Problem("plan", "that share of the front axle is impossible", allowed))
    return share


def _limits(loaded: Loaded, asked: Mapping[str, Any]) -> ClassLimits | None:
    name = asked.get("limits")
    if not name:
        return None
    if name not in limits_files(loaded):
        raise InputError(Problem("plan", f"there is no limits file '{str(name)[:80]}'"))
    return read_limits(loaded.path.parent / str(name))


def _choice(catalogue: Catalogue, choice: Choice) -> dict[str, Any]:
    return {
        "chosen": {catalogue.changes[i].name: n for i, n in choice.picks},
        "labels": [
            (f"{n} × " if n > 1 else "") + catalogue.changes[i].label for i, n in choice.picks
        ],
        "price": float(choice.price),
        "deg": degrees(choice.value),
        "sd_deg": round(degrees(choice.sd), 3),
        "slides": bool(choice.slides[choice.angles.argmin()]),
        "added_g": round(choice.added_mass * 1e3, 1),
        "tied": bool(choice.tied),
    }


# The scale


def weighed(text: str, truck: Truck, path: Path) -> dict[str, Any]:
    """Mass and CG from a readings file's text. Raises InputError, told as of `path`."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / path.name
        file.write_text(text, encoding="utf-8")
        try:
            session = read_session(file, truck)
            found = weigh_in(session)
        except InputError as error:
            raise InputError(
                Problem(path.name, p.what, p.allowed, p.key, p.line) for p in error.problems
            ) from None
        except ValueError as error:
            allowed = "weigh both axles, both sides, all four wheels, or the whole truck"
            raise InputError(Problem(path.name, str(error), allowed)) from None
        advice = next_readings(session).advice[:3]
    names = ("mass", "CG ahead of the middle", "CG to the left", "CG height")
    units = ("g", "mm", "mm", "mm")
    return {
        "found": [
            {
                "what": name,
                "unit": unit,
                "value": without_nan(e.value * 1e3),
                "low": without_nan(e.low * 1e3),
                "high": without_nan(e.high * 1e3),
            }
            for name, unit, e in zip(names, units, found.estimates, strict=True)
        ],
        "outliers": [
            f"{d.label}: {d.by:.1f} standard deviations off the rest" for d in found.outliers
        ],
        "warnings": list(found.warnings),
        "next": [a.what for a in advice],
    }


def keep_readings(text: str, path: Path) -> None:
    """Keep the readings file. Raises InputError where another one is in its place."""
    if path.exists() and path.read_text("utf-8") != text:
        backup = path.with_name(f"{path.stem}.before{path.suffix}")
        write_atomically(backup, path.read_bytes())
    write_atomically(path, text)


# The board


def board_card(truck: Truck, path: Path, grip: Grip | None) -> dict[str, Any]:
    """Predicted angles for the four ways, and how each reading in the board file compares."""
    asked = [radians(h) for h in _BOARD]
    predicted = predict(truck, asked, [False] * len(asked), grip=grip)
    card = [
        {
            "heading_deg": h,
            "name": case_name(h),
            "low_deg": round(degrees(predicted.low[i]), 2),
            "high_deg": round(degrees(predicted.high[i]), 2),
            "deg": round(degrees(predicted.angle[i]), 2),
            "u_deg": round(degrees(predicted.u[i]), 2),
        }
        for i, h in enumerate(_BOARD)
    ]
    board = read_board(path) if path.is_file() else None
    if board is None or not board.readings:
        return {"file": path.name, "card": card, "readings": [], "causes": [], "agrees": None}
    found = check_board(truck, board, grip)
    return {
        "file": path.name,
        "card": card,
        "readings": [
            {
                "number": board.readings.index(v.reading),
                "angles_deg": [round(degrees(a), 6) for a in v.reading.angles],
                "heading_deg": round(degrees(v.reading.heading), 2),
                "measured_deg": round(degrees(v.measured), 2),
                "predicted_deg": without_nan(round(degrees(v.predicted), 2)),
                "agrees": bool(v.agrees),
            }
            for v in found.verdicts
        ],
        "causes": [cause.words for cause in found.causes],
        "agrees": bool(found.agrees),
    }


def note_reading(truck: Truck, path: Path, asked: Mapping[str, Any]) -> None:
    """Put a measured angle into the board file, or with `remove` take that one out. InputError."""
    if asked.get("remove") is not None:
        number, measured = asked["remove"], asked.get("angles_deg")
        if measured is None:
            raise InputError(Problem("board", "which reading to take out is missing"))
        return remove_reading(path, number, measured)
    heading, angle = asked.get("heading_deg"), asked.get("angle_deg")
    if heading is None or angle is None or not 0 < angle < 90:
        raise InputError(Problem("board", "needs a heading and an angle", "0 to 90 degrees"))
    add_reading(path, truck.name, heading % 360, [angle], slid=asked.get("slid") is True)
