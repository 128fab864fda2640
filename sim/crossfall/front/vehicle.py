"""A truck at the front door: load it, change it, weigh it, tip it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal, overload

from crossfall.front.asking import (
    TIP_SHOWN,
    Engine,
    Holding,
    Tried,
    Weakest,
    answer_record,
    answers,
    asked_conditions,
    headings,
    is_one,
    result_of,
    tip_rows,
)
from crossfall.front.results import Result, Results, frozen_value
from crossfall.truck.build import Loaded, build, load_text, load_truck
from crossfall.truck.edits import get_value, set_values
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.read import as_toml

if TYPE_CHECKING:
    from crossfall.answers.conditions import Hold
    from crossfall.engines.held import EngineName
    from crossfall.truck.model import Truck

WEIGH_SHOWN = (
    *("mass_g", "mass_plus_minus_g", "sprung_g", "unsprung_g", "cg_mm", "cg_plus_minus_mm"),
    *("front_share_percent", "axle_loads_g"),
)
TRIAL_SHOWN = (
    *("heading_deg", "grip", "trial_outcome", "trial_deg", "trial_ci_deg", "trial_slide_deg"),
    *("trial_first_lift_deg", "trial_engine"),
)
CHANGE_SHOWN = ("place", "change", "price", "gain_aim_deg", "gain_aim_pm_deg", "words")
GAIN_SHOWN = (
    *("name", "end", "mass_g", "deg_per_10g_side", "deg_per_10g_climb"),
    "deg_per_10g_descent",
)
SPREAD_SHOWN = (
    *("heading_deg", "grip", "compliant_deg", "rail_deg", "tip_low_deg", "tip_high_deg"),
    *("goes_low_deg", "goes_high_deg", "tips_first_share", "samples", "tip_depends_on"),
)
INFLUENCE_SHOWN = ("input", "first", "first_ci", "total", "total_ci")
AXLE_SHOWN = (
    *("axle", "roll_centre_mm", "roll_steer_deg_per_deg", "anti_dive_percent"),
    *("anti_squat_percent", "wheel_rate_n_per_mm", "bump_mm", "droop_mm"),
)
PLAN_SHOWN = (
    *("surface", "grip", "aim", "now_value_deg", "best_value_deg", "best_value_pm_deg"),
    *("best_price", "currency", "proof_words", "front", "runners_up"),
)
SET_SHOWN = ("price", "value_deg", "value_pm_deg", "words")


@dataclass(frozen=True, repr=False)
class Vehicle:
    """A truck as a file describes it, perhaps edited in memory. Frozen: `edit` gives another.

    edits: what was changed since, by dotted key. text: the file's, where it is not what lies there.

    >>> import crossfall
    >>> crossfall.load("bramble")
    bramble: 3690 g, CG 113.9 mm up, 44.6 % on the front axle
    """

    loaded: Loaded
    edits: tuple[tuple[str, Any], ...] = ()
    text: str | None = field(default=None, compare=False)

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
        "part.battery pack.at_mm.z", "part.winch.mass_g", "both.suspension.locked". A surface of
        your own: {"grip.slab": {"low": 0.6, "likely": 0.7, "high": 0.9}}. None takes an optional
        value away. Raises InputError for a key or a value that does not fit, or a truck that
        cannot be.

        >>> import crossfall
        >>> crossfall.load("bramble").edit({"both.track_mm": 200}).value("rear.track_mm")
        200.0
        """
        given = as_toml(values)
        spec = set_values(self.loaded.spec, given)
        truck, warnings = build(spec, self.loaded.folder)
        loaded = replace(self.loaded, truck=truck, spec=spec, warnings=warnings)
        return Vehicle(loaded, (*self.edits, *given.items()), self.text)

    def save(self, path: str | PathLike[str], *, overwrite: bool = False) -> Path:
        """Write it as a truck file: the one it came from, comments kept, with every edit put in.

        Raises InputError, and writes nothing, where a file is there and overwrite is not asked
        for, where an edit is of a part from an included file, or where the text would not give
        this same truck.
        """
        from crossfall.truck.files import write_atomically

        path = Path(path)
        if path.exists() and not overwrite:
            what = "is there already, and nothing is overwritten"
            raise InputError(Problem(str(path), what, "another name, or overwrite=True"))
        text = self.source()
        if load_text(text, path).spec != self.loaded.spec:
            what = f"would not be this truck: {self.loaded.path.name} has changed since"
            raise InputError(Problem(str(path), what, "load it again"))
        write_atomically(path, text)
        return path

    def source(self) -> str:
        """The text of its truck file (TOML), comments kept, with every edit put in. Raises
        InputError where an edit is of a part from an included file."""
        from crossfall.truck.document import text_with_value

        text = self.text
        if text is None:
            text = self.loaded.path.read_text(encoding="utf-8-sig")
        for key, value in self.edits:
            text = text_with_value(text, key, value)
        return text

    def weigh(self, parts: int = 10) -> Result:
        """Mass, CG, loads and clearance angles, as `crossfall weigh --json` has them; ± is 95 %.

        parts: of how many parts, the most influential first, `parts` tells.
        """
        from crossfall.truck.weight import weigh_truck as weighed
        from crossfall.verbs.common import plain_json
        from crossfall.verbs.weigh import weigh_record

        return result_of(
            plain_json(weigh_record(self.model, weighed(self.model), parts)), WEIGH_SHOWN
        )

    @overload
    def tip(
        self,
        heading: float | Weakest,
        *,
        surface: str | None = ...,
        grip: float | None = ...,
        hold: Holding = ...,
        trial: Tried = ...,
        engine: Engine | None = ...,
    ) -> Result: ...
    @overload
    def tip(
        self,
        heading: Iterable[float] | None = ...,
        *,
        surface: str | None = ...,
        grip: float | None = ...,
        hold: Holding = ...,
        trial: Tried = ...,
        engine: Engine | None = ...,
    ) -> Results: ...
    def tip(
        self,
        heading: float | Iterable[float] | Weakest | None = None,
        *,
        surface: str | None = None,
        grip: float | None = None,
        hold: Holding = "brakes",
        trial: Tried = False,
        engine: Engine | None = None,
    ) -> Result | Results:
        """When it goes over, under the keys of `crossfall tilt --json`: `rigid_deg`,
        `compliant_deg`, `compliant_range_deg` (95 %), `goes_at_deg`, `outcome` and the rest.

        heading: deg, 0 nose uphill, 90 left side down; several give `Results`, none the four
        cases, "weakest" the weakest heading there is. surface: of the file, by name, its first if
        not given; or grip: one friction coefficient. hold: "brakes" as the file has it, or a
        "rail" besides, or the "motor". trial: also tilt it in the engine (a second or two a
        heading), or "quick" in half the time. engine: which, or "both", the usual one if not
        given. Raises InputError.

        >>> import crossfall
        >>> crossfall.load("bramble").tip(heading=90, grip=0.9).outcome
        'tips'
        """
        found = answers(self.loaded, heading, surface, grip, hold, trial=trial, engine=engine)
        rows = tip_rows(found)
        if is_one(heading):
            return rows[0]
        return Results(rows, TIP_SHOWN)

    def trial(
        self,
        heading: float | Weakest,
        *,
        surface: str | None = None,
        grip: float | None = None,
        hold: Holding = "brakes",
        quick: bool = False,
        engine: EngineName | None = None,
    ) -> Result:
        """One virtual trial in the engine: the keys that start with `trial_`, and `record`, the
        samples of the run: time, table angle, loads and poses, as numpy arrays in SI.

        Arguments as for `tip`; quick: in half the time. Raises InputError.
        """
        from crossfall.answers.keys import trial_record

        care: Tried = "quick" if quick else True
        (one,) = answers(
            self.loaded, heading, surface, grip, hold, trial=care, engine=engine
        ).answers
        assert one.trial is not None
        head = {k: answer_record(one)[k] for k in ("heading_deg", "case", "grip", "hold")}
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
        return Results([result_of(row) for row in rows], CHANGE_SHOWN)

    def plan(
        self,
        changes: str | PathLike[str] | None = None,
        *,
        aim: Literal["side", "climb", "descent", "worst"] = "worst",
        heading: float | Iterable[float] = (),
        reach: float | None = None,
        budget: float | None = None,
        added_mass: float | None = None,
        run_time: float | None = None,
        front_share: tuple[float, float] | None = None,
        limits: str | PathLike[str] | None = None,
        surface: str | None = None,
        hold: Hold = "brakes",
    ) -> Result:
        """The best set of changes for the money, under the keys of `crossfall plan --json`.

        changes, aim: as for `what_if`; or heading: deg, one or several, to aim at instead. reach:
        deg, for the least money. budget: money. added_mass: g. run_time: min. front_share: least
        and most, %. limits: a class's file. Each set of `front` and `runners_up` has `words`.
        best is None, and `unmet` says why, where no set keeps to all that. Solved as mixed-integer
        programmes over the closed form, near-best sets scored with springs and tyres (see
        DEVELOPERS.md). Raises InputError; ValueError for run_time without a [battery].
        """
        from crossfall.tuning.limits import read_limits
        from crossfall.tuning.milp_model import Bounds
        from crossfall.tuning.plan import plan as planned
        from crossfall.tuning.unmet import unmet
        from crossfall.verbs.common import plain_json
        from crossfall.verbs.plan import aim_of, plan_record
        from crossfall.verbs.whatif import catalogue_of

        if run_time is not None and self.loaded.spec.battery is None:
            raise ValueError("run_time: the truck's file has no [battery]")
        catalogue = catalogue_of(self.loaded, None if changes is None else Path(changes))
        ways = headings(self.name, heading) if is_one(heading) or heading else ()
        bounds = Bounds(
            budget=budget,
            added_mass=None if added_mass is None else added_mass / 1e3,
            run_time=None if run_time is None else run_time * 60.0,
            front_share=front_share and (front_share[0] / 100, front_share[1] / 100),
            limits=None if limits is None else read_limits(Path(limits)),
        )
        wanted = aim_of(aim, ways, reach)
        found = planned(self.loaded, catalogue, wanted, bounds, surface=surface, hold=hold)
        why = () if found.best else unmet(self.loaded, catalogue, wanted, bounds)
        record = plain_json(plan_record(self.loaded, catalogue, found, why))
        return result_of(record, PLAN_SHOWN, {"front": SET_SHOWN, "runners_up": SET_SHOWN})

    def gains(
        self,
        *,
        method: Literal["compliant", "rigid"] = "compliant",
        surface: str | None = None,
        hold: Hold = "brakes",
    ) -> Result:
        """Where a gram helps and where it hurts, under the keys of `crossfall gains --json`:
        `parts` has degrees per 10 g added and per 10 mm moved, by direction.

        Derivatives of the tip angle: of the closed form as it stands, or with springs and tyres by
        central differences, the truck trimmed level again. Raises InputError.

        >>> import crossfall
        >>> found = crossfall.load("bramble").gains(method="rigid")
        >>> {p.name: p.deg_per_10g.side for p in found.parts}["roof box"] < 0
        True
        """
        from crossfall.tuning.gains import gradients, part_gains
        from crossfall.verbs.common import plain_json
        from crossfall.verbs.gains import gains_record

        found = gradients(self.loaded, method, surface=surface, hold=hold)
        record = plain_json(gains_record(found, part_gains(found)))
        return result_of(record, ("surface", "grip", "method", "parts"), {"parts": GAIN_SHOWN})

    def suspension(self, *, moves: bool = True, surface: str | None = None) -> Result:
        """What links and shocks amount to, under the keys of `crossfall suspension --json`: `axles`
        front and rear at ride height and over the travel, and, with moves, what each link end
        moved by 5 mm would do to the tip angles.

        surface: as for `tip`. Raises InputError.

        >>> import crossfall
        >>> crossfall.load("bramble").suspension(moves=False).axles.axle
        ('front', 'rear')
        """
        from crossfall.tuning.suspension import SLOPE_HEADINGS, look, moved_ends
        from crossfall.tuning.suspension_record import suspension_record
        from crossfall.verbs.common import plain_json

        asked = asked_conditions(self.model, SLOPE_HEADINGS, surface, None, "brakes")
        moved = moved_ends(self.loaded, asked) if moves else ()
        record = suspension_record(self.name, asked[0].grip.surface, look(self.model), moved)
        return result_of(plain_json(record), ("surface", "axles", "moves"), {"axles": AXLE_SHOWN})

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

        asked = asked_conditions(self.model, heading, surface, grip, hold)
        found = drawn(self.model, asked, samples=samples, seed=seed)
        rows = [
            result_of(
                plain_json(heading_answer(h, "compliant")),
                SPREAD_SHOWN,
                {"tip_depends_on": INFLUENCE_SHOWN},
            )
            for h in found
        ]
        return rows[0] if is_one(heading) else Results(rows, SPREAD_SHOWN[:-1])


def load(name_or_path: str | PathLike[str]) -> Vehicle:
    """The truck of a file, or a demo truck by name (bramble, burdock, thistle).

    Raises InputError with every mistake in the file, each with its line.
    """
    return Vehicle(
        load_truck(Path(name_or_path) if not isinstance(name_or_path, str) else name_or_path)
    )


def vehicle_of(truck: Vehicle | str | PathLike[str]) -> Vehicle:
    """A truck as it is, or loaded from a file or by a demo truck's name."""
    return truck if isinstance(truck, Vehicle) else load(truck)
