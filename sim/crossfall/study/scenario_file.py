"""Scenario files (TOML): which truck, what is varied, which method answers.

    name = "track against approach angle"
    truck = "bramble"                  # a demo truck, or a file beside this one
    method = "closed form"             # closed form, compliant, tilt trial, convergence (the trial
                                       # made finer in step, solver and rate, in each engine); or
                                       # by driving across: slope trial (at slope_deg), critical
                                       # slope (finds it)
    headings_deg = [0, 90, 180, 270]   # unless heading_deg is an axis
    repeats = 1                        # each point this often, with seeds of its own
    seed = 1
    tolerances = false                 # true: each trial draws every number within its tolerance
    surface = "rock"                   # whose grip counts, its likely one; the file's first if not
                                       # said; or give one number as grip, fixed or varied
    hold = "brakes"                    # brakes on every wheel; or rail: besides, the tyres it would
                                       # tip over cannot slide
    engine = "bullet"                  # bullet or mujoco, for tilt trials; bullet if not said,
                                       # where it is installed
    keep = "trial_deg < 40"            # which trials' records are kept, an expression as of a
                                       # response; 1: all; the table names each one's file
    trial = "careful"                  # careful; quick: half the time, intervals twice as wide; or
                                       # none: only the statics
    ranges = false                     # true: 95 % ranges too, at sixty times the cost; for
                                       # compliant and tilt trial

    [fixed]                            # any value of the truck file, by dotted key
    "both.suspension.spring_n_per_mm" = 0.3

    [[axis]]
    key = "both.track_mm"              # a dotted key; surface, hold, engine or trial, with values
                                       # = ["brakes", "rail"]; heading_deg, slope_deg, grip, and for
                                       # driving speed_mm_per_s and a ground: stone_mm,
                                       # rough_mm, ditch_mm (0: none), field_file (see
                                       # trials/grounds/ for each)
    first = 160
    last = 200
    steps = 21                         # or values = [160, 180, 200]

    [design]
    kind = "grid"                      # grid, latin hypercube, sobol
    points = 512                       # not for a grid

    [[map]]                            # pictures of the summary page
    x = "both.track_mm"
    y = "heading_deg"
    shows = "tip"                      # tip, or slope: what happens on slope_deg

    [[response]]                       # a column of one's own, worked out from the others
    name = "in_hand_deg"
    is = "goes_at_deg - 25"            # numbers, + - * / **, comparisons, abs, sqrt, exp, log, min,
                                       # max, where, sin_deg, cos_deg, tan_deg, atan_deg;
                                       # value("both.track_mm") for a column that is no single word

    [[front]]                          # builds that no other beats in all of these
    aims = { tip_deg = "high", mass_g = "low" }

Every mistake is found before anything runs, each with its file, line and key.
"""

from __future__ import annotations

from typing import Annotated, Any, Literal, get_args

import numpy as np
from pydantic import Field, PlainValidator, model_validator
from pydantic_core import PydanticKnownError

from crossfall.answers.conditions import Hold
from crossfall.engines.held import ENGINES, EngineName
from crossfall.study.design import DesignKind
from crossfall.trials.grounds import ground_keys
from crossfall.trials.pace import Care
from crossfall.truck.schema import Angle, Line, Name, Strict, Text, mistake

MOST_TRIALS = 10_000_000  # trials of one scenario
MOST_NUMBER = 1e15  # of any value
CONDITIONS: dict[str, tuple[float, float]] = {  # keys that are no value of a truck: their bounds
    "heading_deg": (-360.0, 360.0),
    "slope_deg": (0.0, 89.0),
    "grip": (0.01, 5.0),
    "speed_mm_per_s": (1.0, 5000.0),
    # 0: none, so that an axis may begin with the plane
    **{key: (0.0, ground.high) for key, ground in ground_keys().items() if not ground.file},
}
TrialCare = Care | Literal["none"]
WORDS: dict[str, tuple[str, ...]] = {  # conditions in words; the surfaces are those of the truck
    "surface": (),
    "hold": get_args(Hold),
    "engine": ENGINES,
    "trial": (*get_args(Care), "none"),
}
DRIVING = ("speed_mm_per_s", *ground_keys())  # conditions of trials that drive
WEIGHTS = (  # of every build
    *("mass_g", "cg_x_mm", "cg_y_mm", "cg_z_mm", "front_share"),
    *("front_track_mm", "rear_track_mm"),
)
TILTS = ("tilt trial", "convergence")  # methods that tilt in an engine
DRIVES = ("slope trial", "critical slope")  # those that drive in one
MethodName = Literal[
    "closed form", "compliant", "tilt trial", "convergence", "slope trial", "critical slope"
]


def _plain(value: object) -> bool | float | str:
    if isinstance(value, bool | str):
        return value
    if not isinstance(value, int | float):
        raise PydanticKnownError("float_type")
    if not -MOST_NUMBER < value < MOST_NUMBER:
        raise PydanticKnownError("finite_number")
    return float(value)


Plain = Annotated[bool | float | str, PlainValidator(_plain)]


class AxisSpec(Strict):
    """What is varied: a list of values, or from first to last in a number of steps."""

    key: Line
    values: Annotated[tuple[Plain, ...], Field(strict=False, min_length=1)] | None = None
    first: float | None = None
    last: float | None = None
    steps: Annotated[int, Field(ge=2, le=1_000_000)] | None = None

    @model_validator(mode="after")
    def _one_way(self) -> AxisSpec:
        ranged = [k for k in ("first", "last", "steps") if getattr(self, k) is not None]
        if self.values is not None and ranged:
            raise mistake(ranged[0], "is given and so is values", "keep one of the two")
        if self.values is None and (self.first is None or self.last is None):
            missing = "first" if self.first is None else "last"
            raise mistake(missing, "is missing", "give values, or first and last")
        if self.first is not None and self.last is not None and self.first >= self.last:
            raise mistake(
                "last", f"is {self.last:g}", f"it must be more than first, {self.first:g}"
            )
        return self

    def grid_values(self) -> tuple[Any, ...]:
        """All values of a grid, or the two bounds where no steps are given."""
        if self.values is not None:
            return self.values
        return tuple(np.linspace(self.first or 0.0, self.last or 0.0, self.steps or 2).tolist())


class DesignSpec(Strict):
    """[design]; see the module."""

    kind: DesignKind = "grid"
    points: Annotated[int, Field(ge=1, le=MOST_TRIALS)] | None = None

    @model_validator(mode="after")
    def _points_fit(self) -> DesignSpec:
        if self.kind == "grid" and self.points is not None:
            raise mistake("points", "has no use in a grid", "give each axis its steps")
        if self.kind != "grid" and self.points is None:
            raise mistake("points", "is missing", f"say how many points the {self.kind} has")
        if self.kind == "sobol" and self.points and self.points & (self.points - 1):
            near = 2 ** round(np.log2(self.points))
            raise mistake(
                "points",
                f"is {self.points}",
                f"a Sobol sequence is balanced only at powers of two, such as {near}",
            )
        return self


class MapSpec(Strict):
    """A picture of the results over x and y, two columns of the table.

    shows: "tip", where it tips, with the frontier to sliding first; "slope", what happens on
    slope_deg; or any column of numbers, of one's own as well.
    """

    x: Line
    y: Line
    shows: Line = "tip"
    title: Line | None = None


class ResponseSpec(Strict):
    """A column of one's own. is: an expression of other columns; see `responses`."""

    name: Annotated[str, Field(pattern=r"^[a-z][a-z0-9_]*$", max_length=60)]
    expression: Annotated[Line, Field(alias="is")]


class AimsSpec(Strict):
    """A picture of the builds that no other beats in all of two or three columns at once."""

    aims: Annotated[dict[str, Literal["high", "low"]], Field(min_length=2, max_length=3)]
    title: Line | None = None


class LimitsSpec(Strict):
    """When a trial is given up."""

    trial_s: Annotated[float, Field(gt=0, le=86_400)] | None = None  # 120, of convergence 3600


class ScenarioSpec(Strict):
    """A whole scenario file; see the module."""

    name: Name
    note: Text = ""
    truck: Line
    method: MethodName
    headings_deg: Annotated[tuple[Angle, ...], Field(strict=False, min_length=1)] = (
        0.0,
        90.0,
        180.0,
        270.0,
    )
    surface: Name | None = None
    hold: Hold = "brakes"
    engine: EngineName | None = None
    trial: TrialCare | None = None
    ranges: bool = False
    keep: Line | None = None
    repeats: Annotated[int, Field(ge=1, le=1_000_000)] = 1
    seed: Annotated[int, Field(ge=0, lt=2**53)] = 0
    tolerances: bool = False
    fixed: dict[str, Plain] = Field(default_factory=dict)
    axis: Annotated[tuple[AxisSpec, ...], Field(strict=False)] = ()
    design: DesignSpec = DesignSpec()
    limits: LimitsSpec = LimitsSpec()
    map: Annotated[tuple[MapSpec, ...], Field(strict=False)] = ()
    response: Annotated[tuple[ResponseSpec, ...], Field(strict=False)] = ()
    front: Annotated[tuple[AimsSpec, ...], Field(strict=False)] = ()

    @property
    def trial_seconds(self) -> float:
        """When a trial is given up."""
        return self.limits.trial_s or (3600.0 if self.method == "convergence" else 120.0)

    @property
    def responses(self) -> dict[str, str]:
        """name -> expression."""
        return {r.name: r.expression for r in self.response}


def given_values(spec: ScenarioSpec, key: str) -> list[Any]:
    """What a key is fixed at, or every value it takes on an axis; empty where it is not given."""
    if key in spec.fixed:
        return [spec.fixed[key]]
    return [v for axis in spec.axis if axis.key == key for v in axis.grid_values()]
