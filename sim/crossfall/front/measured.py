"""Measurements of a real truck at the front door: on the scale, on the board, and both together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from os import PathLike
from typing import Any

from crossfall.front.asking import headings, result_of
from crossfall.front.results import Result, Results
from crossfall.front.vehicle import Vehicle, vehicle_of

Readings = str | PathLike[str] | Mapping[str, Any]
WEIGHED_SHOWN = ("mass_g", "cg_x_mm", "cg_y_mm", "cg_z_mm", "worst", "next")
NEXT_SHOWN = ("do", "times_better", "u_cg_z_mm")
BOARD_SHOWN = ("truck", "agrees", "headings", "likely_wrong")
VERDICT_SHOWN = (
    *("heading_deg", "case", "locked", "rail", "measured_deg", "predicted_deg"),
    *("predicted_range_deg", "en_number", "agrees"),
)
EXPECTED_SHOWN = (
    *("heading_deg", "case", "predicted_deg", "low_95_deg", "high_95_deg"),
    *("locked_deg", "locked_low_95_deg", "locked_high_95_deg"),
)
RECONCILED_SHOWN = (
    *("mass_before_g", "mass_after_g", "mass_after_sd_g", "cg_x_before_mm", "cg_x_after_mm"),
    *("cg_x_after_sd_mm", "cg_z_before_mm", "cg_z_after_mm", "cg_z_after_sd_mm", "agrees"),
    *("chi_square", "redundancy", "moves"),
)
MOVE_SHOWN = ("part", "mass_g", "mass_by_g", "place_by_mm")


def weigh_in(
    readings: Readings,
    truck: Vehicle | str | PathLike[str] | None = None,
    *,
    suggestions: int = 5,
) -> Result:
    """Mass and CG of a real truck from scale readings, under the keys of `crossfall weigh-in
    --json`: `mass_g`, `cg_z_mm` and so on with `value`, `u` (standard uncertainty), `low_95` and
    `high_95`; `budget`, what the uncertainty comes from; `next`, the readings most worth taking.

    readings: a file, or a mapping with the same keys (`crossfall guide` shows them): mm, g, deg.
    truck: whose lengths and springs count where the readings leave them out. One weighted
    least-squares fit of all loads, lengths and tolerances (Mikhail and Ackermann, Observations and
    Least Squares), with interval factors after JCGM 100 (GUM). Raises InputError.

    >>> import crossfall
    >>> found = crossfall.weigh_in({
    ...     "scale": {"resolution_g": 1}, "suspension": {"locked": True},
    ...     "reading": [{"at": "front", "load_g": [1645, 1646]}, {"at": "rear", "load_g": 2044},
    ...                 {"at": "rear", "raised": "front", "block_mm": 90, "load_g": 2248}],
    ... }, "bramble")
    >>> round(found.mass_g.value)
    3690
    """
    from crossfall.measurement.weigh_in_file import read_session
    from crossfall.measurement.weigh_in_next import next_readings
    from crossfall.verbs.common import plain_json
    from crossfall.verbs.weigh_in import weigh_in_record, weighing_of

    session = read_session(readings, None if truck is None else vehicle_of(truck).model)
    found = weigh_in_record(weighing_of(session), next_readings(session), suggestions)
    return result_of(plain_json(found), WEIGHED_SHOWN, {"next": NEXT_SHOWN})


def board(
    truck: Vehicle | str | PathLike[str],
    readings: Readings,
    *,
    surface: str | None = None,
) -> Result:
    """Do prediction and tilt board agree, and if not, what is most likely wrong? Under the keys of
    `crossfall board --json`.

    readings: a board file, or a mapping with the same keys, as {"tip": [{"heading_deg": 90,
    "angle_deg": [32.1, 32.4]}]}, each with locked, rail, slid where they hold. surface: the
    board's; "tilt board" or the file's first if not given. They agree where E_n, the difference
    over the root of the sum of the squared 95 % uncertainties, is at most 1 (ISO/IEC 17043:2010
    B.3.1.3). Raises InputError; ValueError where there are no readings.

    >>> import crossfall
    >>> crossfall.board("bramble", {"tip": [{"heading_deg": 90, "angle_deg": [32.2]}]}).agrees
    True
    """
    from crossfall.measurement.board_file import read_board
    from crossfall.verbs.board import board_record, compared
    from crossfall.verbs.common import plain_json

    vehicle, given = vehicle_of(truck), read_board(readings)
    if not given.readings:
        raise ValueError("there are no readings; `expected` says what a board should show")
    found = board_record(vehicle.name, given.file, *compared(vehicle.model, given, surface))
    return result_of(plain_json(found), BOARD_SHOWN, {"headings": VERDICT_SHOWN})


def expected(
    truck: Vehicle | str | PathLike[str],
    heading: float | Iterable[float] | None = None,
    *,
    surface: str | None = None,
) -> Results:
    """What a tilt board should show, with the 95 % ranges, suspension free and locked: the
    `predictions` of `crossfall board --json`.

    heading: deg, one or several; the four cases if not given. surface: as for `board`. Raises
    InputError.
    """
    from crossfall.verbs.board import predictions_record
    from crossfall.verbs.common import plain_json

    vehicle = vehicle_of(truck)
    ways = [h % 360.0 for h in headings(vehicle.name, heading)]
    rows = plain_json(predictions_record(vehicle.model, ways, surface))
    return Results([result_of(row) for row in rows], EXPECTED_SHOWN)


def reconcile(
    truck: Vehicle | str | PathLike[str],
    scales: Readings | None = None,
    board: Readings | None = None,
    *,
    surface: str | None = None,
) -> Result:
    """Move uncertain masses and places, within the file's tolerances, to agree with scale and
    board: under the keys of `crossfall reconcile --json`, and `vehicle`, the truck that agrees,
    to be asked and saved.

    scales: as for `weigh_in`. board, surface: as the readings and surface of `board`. `left_out`
    names readings that no movement within the tolerances explains (data snooping after Baarda;
    Mikhail and Ackermann, Observations and Least Squares). Raises InputError; ValueError where
    nothing is given.
    """
    from crossfall.measurement.board_file import read_board
    from crossfall.measurement.reconcile_write import new_text
    from crossfall.measurement.weigh_in_file import read_session
    from crossfall.truck.build import load_text
    from crossfall.verbs.common import plain_json
    from crossfall.verbs.reconcile import reconcile_record, reconciled_truck

    if scales is None and board is None:
        raise ValueError("give scales, board, or both")
    vehicle = vehicle_of(truck)
    loaded = vehicle.loaded
    found = reconciled_truck(
        loaded,
        None if scales is None else read_session(scales, vehicle.model),
        None if board is None else read_board(board),
        surface,
    )
    text = new_text(loaded, found, vehicle.source())
    record = plain_json({"truck": vehicle.name, **reconcile_record(found)})
    result = result_of(record, RECONCILED_SHOWN, {"moves": MOVE_SHOWN})
    new = Vehicle(load_text(text, loaded.path), text=text)
    return Result({**result, "vehicle": new}, RECONCILED_SHOWN)
