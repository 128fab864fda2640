"""What the front door is asked for: headings and conditions in degrees, and answers as results."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from math import isfinite, radians
from typing import TYPE_CHECKING, Any, Literal, get_args

from crossfall.front.results import Result, frozen_value
from crossfall.truck.errors import InputError, Problem
from crossfall.verbs.tilt import FOUR

if TYPE_CHECKING:
    from crossfall.answers.answer import Answers
    from crossfall.answers.conditions import Conditions, Hold
    from crossfall.truck.build import Loaded
    from crossfall.truck.model import Truck

Weakest = Literal["weakest"]
Holding = Literal["brakes", "rail", "motor"]
Tried = bool | Literal["quick"]
Engine = Literal["bullet", "mujoco", "both"]
TIP_SHOWN = (
    *("heading_deg", "rigid_deg", "compliant_deg", "compliant_range_deg", "rail_deg"),
    *("trial_deg", "trial_ci_deg", "trial_outcome", "goes_at_deg", "outcome"),
)


def asked_conditions(
    truck: Truck,
    heading: float | Iterable[float] | Weakest | None,
    surface: str | None,
    grip: float | None,
    hold: Hold,
) -> tuple[Conditions, ...]:
    """The conditions meant, one a heading (deg). Raises InputError."""
    from crossfall.answers.answer import weakest_heading
    from crossfall.answers.conditions import conditions

    if hold not in ("brakes", "rail"):
        raise InputError(Problem(truck.name, f"hold is '{hold}'", "brakes or rail"))
    if heading == "weakest":
        (any_way,) = conditions(truck, [0.0], surface, grip=grip, hold=hold)
        return (weakest_heading(truck, any_way),)
    psi = [radians(h % 360.0) for h in headings(truck.name, heading)]
    return conditions(truck, psi, surface, grip=grip, hold=hold)


def answers(
    loaded: Loaded,
    heading: float | Iterable[float] | Weakest | None,
    surface: str | None,
    grip: float | None,
    hold: Holding,
    *,
    trial: Tried,
    engine: Engine | None = None,
) -> Answers:
    """The one answer, in SI. Raises InputError."""
    from crossfall.answers.answer import answer
    from crossfall.engines.held import ENGINES, engines_named
    from crossfall.verbs.common import stood

    if hold not in get_args(Holding):
        raise InputError(Problem(loaded.truck.name, f"hold is '{hold}'", "brakes, rail or motor"))
    by: Hold = "brakes" if hold == "motor" else hold
    truck = stood(loaded, "motor" if hold == "motor" else None, None).truck
    if trial not in (True, False, "quick"):
        raise InputError(Problem(truck.name, f"trial is {trial!r}", "True, False or 'quick'"))
    engines = engines_named(engine)
    if engine is not None and not engines:
        raise InputError(
            Problem(truck.name, f"engine is {engine!r}", f"{', '.join(ENGINES)} or both")
        )
    return answer(
        truck,
        asked_conditions(truck, heading, surface, grip, by),
        trial=trial is not False,
        engines=engines or None,
        care="quick" if trial == "quick" else "careful",
    )


def is_one(heading: Any) -> bool:
    """Whether one heading is meant, and one result wanted."""
    return heading is not None and (isinstance(heading, str) or not hasattr(heading, "__iter__"))


def headings(name: str, heading: Any) -> list[float]:
    """deg: one, several, or the four cases for None. Raises InputError about truck `name`."""
    given = FOUR if heading is None else (heading,) if is_one(heading) else tuple(heading)
    try:
        found = [float(h) for h in given]
    except (TypeError, ValueError):
        found = []
    if not found or not all(map(isfinite, found)):
        raise InputError(
            Problem(name, f"heading is {heading!r}", "degrees, one or several, or 'weakest'")
        )
    return found


def answer_record(one: Any) -> dict[str, Any]:
    """The keys of `crossfall tilt --json` for one answer, in JSON's own types."""
    from crossfall.answers.keys import record
    from crossfall.verbs.common import plain_json

    found: dict[str, Any] = plain_json(record(one))
    return found


def tip_rows(found: Answers) -> list[Result]:
    """A result a heading."""
    head = {"truck": found.truck, "surface": found.surface}
    return [result_of({**head, **answer_record(one)}, TIP_SHOWN) for one in found.answers]


def result_of(
    values: Mapping[str, Any],
    shown: tuple[str, ...] = (),
    tables: Mapping[str, tuple[str, ...]] | None = None,
) -> Result:
    """A frozen result. tables: which columns of a list of objects in it are printed."""
    frozen = {k: frozen_value(v) for k, v in values.items()}
    for name, columns in (tables or {}).items():
        if frozen[name]:
            frozen[name] = frozen[name].showing(columns)
    return Result(frozen, shown)
