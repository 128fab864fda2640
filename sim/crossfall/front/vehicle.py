"""A truck at the front door: load it, change it, weigh it, tip it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from math import isfinite, radians
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal, overload

from crossfall.front.results import Result, Results, frozen_value
from crossfall.truck.build import Loaded, build, load_truck
from crossfall.truck.edits import get_value, set_values
from crossfall.truck.errors import InputError, Problem
from crossfall.verbs.tilt import FOUR

if TYPE_CHECKING:
    from crossfall.answers.answer import Answers
    from crossfall.answers.conditions import Conditions, Hold
    from crossfall.truck.model import Truck

Weakest = Literal["weakest"]
TIP_SHOWN = (
    *("heading_deg", "rigid_deg", "compliant_deg", "compliant_range_deg", "rail_deg"),
    *("trial_deg", "trial_ci_deg", "goes_at_deg", "outcome"),
)
WEIGH_SHOWN = (
    *("mass_g", "mass_plus_minus_g", "sprung_g", "unsprung_g", "cg_mm", "cg_plus_minus_mm"),
    *("front_share_percent", "axle_loads_g"),
)
TRIAL_SHOWN = (
    *("heading_deg", "grip", "trial_outcome", "trial_deg", "trial_ci_deg", "trial_slide_deg"),
    *("trial_first_lift_deg", "trial_engine"),
)
CHANGE_SHOWN = ("place", "change", "price", "gain_aim_deg", "gain_aim_pm_deg", "words")


@dataclass(frozen=True, repr=False)
class Vehicle:
    """A truck as a file describes it, perhaps edited in memory. Frozen: `edit` gives another.

    >>> import crossfall
    >>> crossfall.load("bramble")
    bramble: 3690 g, CG 113.9 mm up, 44.6 % on the front axle
    """

    loaded: Loaded

    @property
    def name(self) -> str:
        """The truck's own name, from its file."""
        return self.loaded.truck.name

    @property
    def model(self) -> Truck:
        """The truck inside, SI and radians, for the rooms of the package."""
        return self.loaded.truck

    @property
    def surfaces(self) -> tuple[str, ...]:
        """Names of the surfaces in the file, which `surface=` may be."""
        return tuple(g.surface for g in self.model.grips)

    def __repr__(self) -> str:
        found = self.weigh()
        return (
            f"{self.name}: {found.mass_g:.0f} g, CG {found.cg_mm[2]:.1f} mm up, "
            f"{found.front_share_percent:.1f} % on the front axle"
        )

    def value(self, key: str) -> Any:
        """What the file has under a dotted key, in the file's unit.

        >>> import crossfall
        >>> crossfall.load("bramble").value("front.track_mm")
        176.0

        Raises InputError for a key that names nothing.
        """
        return get_value(self.loaded.spec, key)

    def edit(self, values: Mapping[str, Any]) -> Vehicle:
        """The truck with values changed, by dotted key in the file's units.

        Keys name what the file names: "front.track_mm", "both.track_mm", "chassis.wheelbase_mm",
        "part.battery pack.at_mm.z", "part.winch.mass_g". None takes an optional value away.
        Raises InputError for a key or a value that does not fit, or a truck that cannot be.
        """
        spec = set_values(self.loaded.spec, values)
        truck, warnings = build(spec, self.loaded.folder)
        return Vehicle(replace(self.loaded, truck=truck, spec=spec, warnings=warnings))

    def weigh(self, parts: int = 10) -> Result:
        """Mass, CG, loads and clearance angles, as `crossfall weigh --json` has them; ± is 95 %.

        parts: of how many parts, the most influential first, `parts` tells.
        """
        from crossfall.truck.weight import weigh_truck as weighed
        from crossfall.verbs.common import plain_json
        from crossfall.verbs.weigh import weigh_record

        return _result(
            plain_json(weigh_record(self.model, weighed(self.model), parts)), WEIGH_SHOWN
        )

    @overload
    def tip(
        self,
        heading: float | Weakest,
        *,
        surface: str | None = ...,
        grip: float | None = ...,
        hold: Hold = ...,
        trial: bool = ...,
    ) -> Result: ...
    @overload
    def tip(
        self,
        heading: Iterable[float] | None = ...,
        *,
        surface: str | None = ...,
        grip: float | None = ...,
        hold: Hold = ...,
        trial: bool = ...,
    ) -> Results: ...
    def tip(
        self,
        heading: float | Iterable[float] | Weakest | None = None,
        *,
        surface: str | None = None,
        grip: float | None = None,
        hold: Hold = "brakes",
        trial: bool = False,
    ) -> Result | Results:
        """When it goes over, under the keys of `crossfall tilt --json`: `rigid_deg`,
        `compliant_deg`, `compliant_range_deg` (95 %), `goes_at_deg`, `outcome` and the rest.

        heading: deg, 0 nose uphill, 90 left side down; several give `Results`, none the four
        cases, "weakest" the weakest heading there is. surface: of the file, by name, its first if
        not given; or grip: one friction coefficient. hold: "brakes", or "rail". trial: also tilt
        it in the engine (a second or two a heading). Raises InputError.

        >>> import crossfall
        >>> crossfall.load("bramble").tip(heading=90, grip=0.9).outcome
        'tips'
        """
        rows = _rows(answers(self, heading, surface, grip, hold, trial=trial))
        if is_one(heading):
            return rows[0]
        return Results(rows, TIP_SHOWN)

    def trial(
        self,
        heading: float | Weakest,
        *,
        surface: str | None = None,
        grip: float | None = None,
        hold: Hold = "brakes",
    ) -> Result:
        """One virtual trial in the engine: the keys that start with `trial_`, and `record`, the
        samples of the run: time, table angle, loads and poses, as numpy arrays in SI.

        Arguments as for `tip`. Raises InputError.
        """
        from crossfall.answers.keys import trial_record

        (one,) = answers(self, heading, surface, grip, hold, trial=True).answers
        assert one.trial is not None
        head = {k: _record(one)[k] for k in ("heading_deg", "case", "grip", "hold")}
        found = {k: frozen_value(v) for k, v in {**head, **trial_record(one.trial)}.items()}
        return Result({**found, "record": one.trial.record}, TRIAL_SHOWN)

    def what_if(
        self,
        changes: str | PathLike[str] | None = None,
        *,
        aim: Literal["side", "climb", "descent", "worst"] = "side",
        surface: str | None = None,
        hold: Hold = "brakes",
    ) -> Results:
        """What each change of a change file would do alone, the best for `aim` first, under the
        keys of `crossfall whatif --json`; `gain_aim_deg` is the gain in the direction aimed at.

        changes: the file; TRUCK.changes.toml beside the truck if not given. Raises InputError.
        """
        from crossfall.tuning.whatif import rank_changes as ranked
        from crossfall.verbs.common import plain_json
        from crossfall.verbs.whatif import catalogue_of, ranking_record

        catalogue = catalogue_of(self.loaded, None if changes is None else Path(changes))
        found = ranked(self.loaded, catalogue, aim, None, surface=surface, hold=hold)
        rows = plain_json(ranking_record(self.loaded, catalogue, found))["changes"]
        for row in rows:
            row["gain_aim_deg"] = row["gain_deg"][aim]
            row["gain_aim_pm_deg"] = row["gain_pm_deg"][aim]
        return Results([_result(row) for row in rows], CHANGE_SHOWN)

    def spread(
        self,
        heading: float | Iterable[float] | None = None,
        *,
        surface: str | None = None,
        grip: float | None = None,
        hold: Hold = "brakes",
        samples: int = 128,
        seed: int = 0,
    ) -> Result | Results:
        """Whole trucks drawn within their tolerances, and which input's uncertainty matters most
        (Sobol indices), under the keys of `crossfall spread --json`.

        samples: a power of two from 16. Other arguments as for `tip`; "weakest" is none.
        Raises InputError; ValueError for samples or where nothing is uncertain.
        """
        from crossfall.study.montecarlo import monte_carlo as drawn
        from crossfall.verbs.common import plain_json
        from crossfall.verbs.spread import heading_answer

        asked = self._asked(heading, surface, grip, hold)
        found = drawn(self.model, asked, samples=samples, seed=seed)
        rows = [_result(plain_json(heading_answer(h, "compliant"))) for h in found]
        return rows[0] if is_one(heading) else Results(rows)

    def _asked(
        self,
        heading: float | Iterable[float] | Weakest | None,
        surface: str | None,
        grip: float | None,
        hold: Hold,
    ) -> tuple[Conditions, ...]:
        from crossfall.answers.answer import weakest_heading
        from crossfall.answers.conditions import conditions

        if hold not in ("brakes", "rail"):
            raise InputError(Problem(self.name, f"hold is '{hold}'", "brakes or rail"))
        if heading == "weakest":
            (any_way,) = conditions(self.model, [0.0], surface, grip=grip, hold=hold)
            return (weakest_heading(self.model, any_way),)
        psi = [radians(h % 360.0) for h in _headings(self.name, heading)]
        return conditions(self.model, psi, surface, grip=grip, hold=hold)


def load(name_or_path: str | PathLike[str]) -> Vehicle:
    """The truck of a file, or a demo truck by name (bramble, burdock, thistle).

    Raises InputError with every mistake in the file, each with its line.
    """
    return Vehicle(
        load_truck(Path(name_or_path) if not isinstance(name_or_path, str) else name_or_path)
    )


def tip(truck: Vehicle | str | PathLike[str], heading: Any = None, **how: Any) -> Any:
    """`Vehicle.tip` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).tip(heading, **how)


def trial(truck: Vehicle | str | PathLike[str], heading: Any, **how: Any) -> Result:
    """`Vehicle.trial` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).trial(heading, **how)


def weigh(truck: Vehicle | str | PathLike[str], parts: int = 10) -> Result:
    """`Vehicle.weigh` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).weigh(parts)


def what_if(truck: Vehicle | str | PathLike[str], changes: Any = None, **how: Any) -> Results:
    """`Vehicle.what_if` of a truck, a file or a demo truck's name."""
    return vehicle_of(truck).what_if(changes, **how)


def answers(
    truck: Vehicle,
    heading: float | Iterable[float] | Weakest | None,
    surface: str | None,
    grip: float | None,
    hold: Hold,
    *,
    trial: bool,
) -> Answers:
    """The one answer in SI, for the pictures."""
    from crossfall.answers.answer import answer

    return answer(truck.model, truck._asked(heading, surface, grip, hold), trial=trial)


def vehicle_of(truck: Vehicle | str | PathLike[str]) -> Vehicle:
    """A truck as it is, or loaded from a file or by a demo truck's name."""
    return truck if isinstance(truck, Vehicle) else load(truck)


def is_one(heading: Any) -> bool:
    """Whether one heading is meant, and one result wanted."""
    return heading is not None and (isinstance(heading, str) or not hasattr(heading, "__iter__"))


def _headings(name: str, heading: Any) -> list[float]:
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


def _record(one: Any) -> dict[str, Any]:
    from crossfall.answers.keys import record
    from crossfall.verbs.common import plain_json

    found: dict[str, Any] = plain_json(record(one))
    return found


def _rows(found: Answers) -> list[Result]:
    head = {"truck": found.truck, "surface": found.surface}
    return [_result({**head, **_record(one)}, TIP_SHOWN) for one in found.answers]


def _result(values: Mapping[str, Any], shown: tuple[str, ...] = ()) -> Result:
    return Result({k: frozen_value(v) for k, v in values.items()}, shown)
