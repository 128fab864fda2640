"""The one schema of an answer's keys: names, units, meanings, and how they are filled.

Every verb's --json, table column and page type that shows a tip angle is made from this table, so
that a key means the same everywhere. Angles are in degrees here and nowhere else in this room.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import degrees, isfinite
from typing import TYPE_CHECKING, Any, Literal

from crossfall.answers.answer import Answers, TipAnswer

if TYPE_CHECKING:
    from crossfall.trials.outcome import TiltTrial

SCHEMA = 3  # raised when a key of any JSON answer changes its meaning or goes away
_WHEELS = ("front_left", "front_right", "rear_left", "rear_right")

Form = Literal["number", "text", "pair", "named numbers", "list"]


@dataclass(frozen=True)
class Key:
    """name: as printed, with the unit. form: what the value is; null where there is none, if
    `may_be_null`. fields: of "named numbers", their names; of a "list", whose entries each have a
    name, the numbers beside it."""

    name: str
    form: Form
    meaning: str
    value: Callable[[Any], Any]
    may_be_null: bool = False
    fields: tuple[str, ...] = ()


def deg(angle: float) -> float | None:
    """rad to deg; None where there is no number."""
    return degrees(angle) if isfinite(angle) else None


def _pair(ends: tuple[float, float]) -> list[float | None]:
    return [deg(v) for v in ends]


def _number(value: float) -> float | None:
    return value if isfinite(value) else None


def _unless(absent: bool, value: Any) -> Any:
    return None if absent else value


TERMS = ("event", "step", "solver", "contact", "rate", "way", "repeat", "rest")

TRIAL_KEYS = (
    Key(
        "trial_outcome", "text", "tips, slides or stands, of the virtual trial", lambda t: t.outcome
    ),
    Key(
        "trial_deg",
        "number",
        "tip of the virtual trial in the same conditions",
        lambda t: deg(t.tip),
        True,
    ),
    Key(
        "trial_ci_deg",
        "pair",
        "its 95 % interval",
        lambda t: _pair(t.tip_ci) if isfinite(t.tip) else None,
        True,
    ),
    Key(
        "trial_slide_deg",
        "number",
        "where the virtual trial began to slide away",
        lambda t: deg(t.slide),
        True,
    ),
    Key(
        "trial_slide_ci_deg",
        "pair",
        "its 95 % interval",
        lambda t: _pair(t.slide_ci) if isfinite(t.slide) else None,
        True,
    ),
    Key("trial_engine", "text", "engine and version", lambda t: t.engine),
    Key(
        "trial_care",
        "text",
        "careful: the trial measured its own error; quick: it did not, and its interval is wider",
        lambda t: "careful" if t.pace.checks else "quick",
    ),
    Key(
        "trial_terms_deg",
        "named numbers",
        "parts of the interval, plus or minus, 95 %: event (bracket and fit), step, solver, contact"
        " and rate as measured by doing it finer, repeat (between two searches), rest",
        lambda t: {n: degrees(getattr(t.terms, n)) for n in TERMS},
        False,
        TERMS,
    ),
    Key(
        "trial_first_lift_deg",
        "number",
        "the trial's first tyre leaves the table",
        lambda t: deg(t.first_lift),
        True,
    ),
    Key(
        "trial_load_left_percent",
        "number",
        "of the weight, on the lifting tyres at the last angle it stood",
        lambda t: _number(100 * t.load_left),
        True,
    ),
    Key(
        "trial_fit_deg",
        "number",
        "where that load would be gone, fitted",
        lambda t: deg(t.fit.value) if t.fit else None,
        True,
    ),
    Key(
        "trial_fit_ci_deg",
        "pair",
        "its 95 % interval",
        lambda t: _pair((t.fit.low, t.fit.high)) if t.fit else None,
        True,
    ),
)
"""Of a virtual trial; in an answer they are null where there was none."""


def _where_tried(key: Key) -> Key:
    return replace(key, value=lambda a: key.value(a.trial) if a.trial else None, may_be_null=True)


def _other(key: Key) -> Key:
    """The same of the trial in the second engine."""
    return replace(
        key,
        name=f"other_{key.name}",
        meaning=f"of a second engine's trial: {key.meaning}",
        value=lambda a: key.value(a.other) if a.other else None,
        may_be_null=True,
    )


IN_BOTH = (
    *("trial_outcome", "trial_deg", "trial_ci_deg", "trial_slide_deg", "trial_slide_ci_deg"),
    "trial_engine",
)
OTHER_KEYS = (
    *(_other(key) for key in TRIAL_KEYS if key.name in IN_BOTH),
    Key(
        "engines_apart_deg",
        "number",
        "how far the two engines' trials are apart in where it goes",
        lambda a: deg(a.engines_apart),
        True,
    ),
)


STAGES = ("rigid", "tyres", "ground", "extension", "compliant", "trial")

KEYS = (
    Key(
        "heading_deg",
        "number",
        "how the truck stands: 0 nose uphill, 90 left side down, 180 nose"
        " downhill, 270 right side down",
        lambda a: round(degrees(a.conditions.heading), 9),
    ),
    Key("case", "text", "the heading in words", lambda a: a.case),
    Key(
        "grip",
        "number",
        "friction coefficient the answer is for",
        lambda a: a.conditions.grip.likely,
    ),
    Key(
        "hold",
        "text",
        "what holds the wheels: brakes, or rail: the tyres it would tip over cannot slide",
        lambda a: a.conditions.hold,
    ),
    Key("over", "text", "the tyres the rigid truck goes over", lambda a: a.over),
    Key(
        "rigid_deg",
        "number",
        "tip of the truck as a block on its tip lines",
        lambda a: deg(a.rigid),
    ),
    Key(
        "compliant_deg",
        "number",
        "tip on springs and tyres; null where it slides away first",
        lambda a: deg(a.compliant),
        True,
    ),
    Key(
        "compliant_range_deg",
        "pair",
        "95 % range of compliant_deg over every tolerance of the file and the grip",
        lambda a: _unless(a.slides_first, _pair(a.range.tip)),
        True,
    ),
    Key(
        "rail_deg",
        "number",
        "tip against a rail: given where it slides away first, or where that was asked",
        lambda a: deg(a.rail),
        True,
    ),
    Key(
        "rail_range_deg",
        "pair",
        "95 % range of rail_deg",
        lambda a: _unless(not isfinite(a.rail), _pair(a.range.tip)),
        True,
    ),
    Key(
        "first_lift_deg",
        "number",
        "the first tyre leaves the table; null if none does before the tip",
        lambda a: deg(a.first_lift),
        True,
    ),
    Key(
        "lift_deg",
        "named numbers",
        "each tyre leaves the table; null if not before the tip",
        lambda a: {n: deg(v) for n, v in zip(_WHEELS, a.lift, strict=True)},
        False,
        _WHEELS,
    ),
    Key(
        "first_snap_deg",
        "number",
        "the body first jumps on its springs and stands again",
        lambda a: deg(a.first_snap),
        True,
    ),
    Key(
        "slide_deg",
        "named numbers",
        "it slides away as a whole, at low, likely and high grip",
        lambda a: {n: deg(v) for n, v in zip(("low", "likely", "high"), a.slide, strict=True)},
        False,
        ("low", "likely", "high"),
    ),
    Key(
        "goes_at_deg", "number", "tip or slide, whichever comes first", lambda a: deg(a.goes), True
    ),
    Key("goes_at_range_deg", "pair", "95 % range of goes_at_deg", lambda a: _pair(a.range.goes)),
    Key(
        "outcome",
        "text",
        "tips, slides, or too close to call: what comes first, at 95 %",
        lambda a: a.outcome,
    ),
    Key(
        "tips_first_share",
        "number",
        "probability, 0 to 1, that a tip comes first",
        lambda a: 1.0 if a.conditions.rail else a.range.tips_first,
    ),
    Key(
        "uncertain_by",
        "list",
        "inputs behind the range, largest first: name, and pm_deg, what it"
        " alone gives the tip, plus or minus, 95 %",
        lambda a: [{"name": n, "pm_deg": 1.96 * degrees(sd)} for n, sd in a.range.causes],
        False,
        ("pm_deg",),
    ),
    *map(_where_tried, TRIAL_KEYS),
    *OTHER_KEYS,
    Key(
        "budget_deg",
        "named numbers",
        "tip with one more thing allowed to give at each stage",
        lambda a: {n: deg(getattr(a.budget, n)) for n in STAGES},
        False,
        STAGES,
    ),
    Key(
        "budget_steps",
        "list",
        "the differences: name, and gained_deg, losses negative",
        lambda a: [{"name": n, "gained_deg": deg(v)} for n, v in a.budget.steps],
        False,
        ("gained_deg",),
    ),
    Key("verdict", "text", "the answer in words", lambda a: a.verdict),
)


def record(answer: TipAnswer) -> dict[str, Any]:
    """One answer under its keys."""
    return {key.name: key.value(answer) for key in KEYS}


def trial_record(trial: TiltTrial) -> dict[str, Any]:
    """One virtual trial under its keys."""
    return {key.name: key.value(trial) for key in TRIAL_KEYS}


def report(found: Answers) -> dict[str, Any]:
    """All answers about one truck, with what they depend on."""
    grip = found.answers[0].conditions.grip
    return {
        "truck": found.truck,
        "digest": found.digest,
        "surface": grip.surface,
        "grip_range": {"low": grip.low, "likely": grip.likely, "high": grip.high},
        "versions": dict(found.versions),
        "headings": [record(a) for a in found.answers],
    }
