"""What the server answers the page, as models: in mm, g and degrees, null where is no number.

Every answer is held to its model before it leaves, and the page's types are made from them (see
`typescript`). A field that has LEFT_OUT may be missing.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Literal

from pydantic import BaseModel, ConfigDict, Field, create_model

from crossfall.answers.keys import KEYS, TRIAL_KEYS, Key
from crossfall.app.bodies import CourseAskedBody, Pair, ScaleFormBody, SetBody, Triple

LEFT_OUT: Any = Field(default=None)
_Number = float | None


class Reply(BaseModel):
    """What an answer of the server has in it, and nothing else."""

    model_config = ConfigDict(extra="forbid", use_attribute_docstrings=True)


def _of_keys(name: str, about: str, keys: tuple[Key, ...]) -> type[Reply]:
    """The model of an answer by its one schema of keys."""

    def type_of(key: Key) -> Any:
        numbers: dict[str, Any] = dict.fromkeys(key.fields, (_Number, ...))
        inner = f"{name.removesuffix('Reply')}{key.name.title().replace('_', '')}Reply"
        match key.form:
            case "number":
                return float
            case "text":
                return str
            case "pair":
                return tuple[_Number, _Number]
            case "named numbers":
                return create_model(inner, __base__=Reply, **numbers)
            case "list":
                entry: Any = create_model(inner, __base__=Reply, name=(str, ...), **numbers)
                return list[entry]

    fields: dict[str, Any] = {
        key.name: (
            type_of(key) | None if key.may_be_null else type_of(key),
            Field(description=key.meaning),
        )
        for key in keys
    }
    return create_model(name, __base__=Reply, __doc__=about, **fields)


if TYPE_CHECKING:

    class TipAnswerReply(Reply):
        """See `answers.keys.KEYS`."""

    class TrialAnswerReply(Reply):
        """See `answers.keys.TRIAL_KEYS`."""
else:
    TipAnswerReply = _of_keys("TipAnswerReply", "What the truck does on one heading.", KEYS)
    TrialAnswerReply = _of_keys(
        "TrialAnswerReply", "What a virtual trial on one heading gave.", TRIAL_KEYS
    )


class ShapeReply(Reply):
    kind: Literal["box", "cylinder", "tube", "sphere", "mesh"]
    size_mm: list[float]
    middle_mm: Triple = LEFT_OUT
    vertices_mm: list[Triple] = LEFT_OUT
    faces: list[tuple[int, int, int]] = LEFT_OUT


class PartReply(Reply):
    label: str
    row: int
    carrier: str
    mirrored: bool
    mass_g: float
    cg_mm: Triple
    centre_mm: Triple
    turn: list[float]
    shape: ShapeReply | None


class AxleReply(Reply):
    x_mm: float
    track_mm: float
    radius_mm: float
    width_mm: float
    contact_half_width_mm: float
    bump_mm: float
    droop_mm: float
    locked: bool


class SceneReply(Reply):
    name: str
    wheelbase_mm: float
    axles: tuple[AxleReply, AxleReply]
    tip_points_mm: list[Pair]
    wedge_mm: list[tuple[Pair, Pair]]
    cg_mm: Triple
    sprung_cg_mm: Triple
    clearance_mm: tuple[Pair, Pair, Pair] | None
    pack: str | None
    """The part that is the drive pack, by its name in the file."""
    parts: list[PartReply]


class NumbersReply(Reply):
    mass_g: float
    sprung_g: float
    unsprung_g: float
    cg_mm: Triple
    front_percent: float
    axle_g: Pair
    corner_g: tuple[float, float, float, float]
    price: float


class LowLikelyHighReply(Reply):
    low: float
    likely: float
    high: float


class AnswersReply(Reply):
    """Tips all round and the four ways, on the surface shown; angles in degrees, under the keys
    that every answer has. Lists go with `heading_deg`."""

    exact: bool
    """Whether the compliant curve was worked out for this very truck, or carried along."""
    surface: str
    grip_range: LowLikelyHighReply
    numbers: NumbersReply
    heading_deg: list[float]
    rigid_deg: list[float]
    compliant_deg: list[float | None]
    """Null where it slides away first, and where nothing is known yet."""
    rail_deg: list[float | None]
    """Where it slides away first: the tip against a rail."""
    first_lift_deg: list[float | None]
    slide_deg: LowLikelyHighReply
    """As a whole on its tyres, the same on every heading."""
    goes_at_deg: list[float | None] | None
    """Of a truck that open differentials may let roll away: tip, slide or that, whichever is first.
    Null of any other, which slides as `slide_deg` says."""
    ways: list[TipAnswerReply] | None
    """Climb, left side down, descent, right side down in full; null until it is worked out."""
    gain: dict[str, dict[str, tuple[float, float, float, float]]]
    """Degrees per 10 g at a place, by direction and by what carries it: c0 + cx x + cy y + cz z."""
    gain_of: Literal["compliant", "rigid"]
    """Whether they are of the truck on its springs and tyres, or of the rigid truck meanwhile."""


class RowReply(Reply):
    row: int
    name: str
    on: str
    count: int
    mirror: bool
    mass_g: float
    weighed: bool
    at_mm: Triple | None
    price: float
    pieces: int
    here: bool
    note: str


class MeasureReply(Reply):
    key: str
    name: str
    unit: str
    value: float
    low: float
    high: float
    step: float


class ChoiceReply(Reply):
    """Something of the truck that is one of a few words."""

    key: str
    name: str
    choices: list[str]
    value: str


class ReferenceReply(Reply):
    key: str
    words: str


class BeforeReply(AnswersReply):
    key: str
    what: str
    scene: SceneReply


class BenchReply(Reply):
    document: str
    """The file being worked on, by a name that is never given twice; and which state of it."""
    revision: int
    truck: str
    """This very truck, whatever was done and undone on the way to it."""
    file: str
    needs_name: bool
    unsaved: bool
    recovered: bool
    undo: str | None
    redo: str | None
    trucks: list[str]
    surfaces: list[str]
    """Surfaces of the truck's file that the answers can be shown on."""
    scene: SceneReply
    rows: list[RowReply]
    measures: list[MeasureReply]
    choices: list[ChoiceReply]
    carriers: list[str]
    fitted: dict[str, int]
    """Changes fitted, by name, with how many of each."""
    before: BeforeReply | None
    """What the truck is compared with: the state pinned, else before its changes, or as saved."""
    reference: str
    """By which key that was chosen, and what could be chosen."""
    references: list[ReferenceReply]
    answers: AnswersReply


class TriedReply(Reply):
    """What edits would do."""

    scene: SceneReply
    rows: list[RowReply]
    measures: list[MeasureReply]
    answers: AnswersReply


class PulseReply(Reply):
    document: str
    revision: int
    unsaved: bool
    surface: str
    reference: str
    disk: str
    """What is the matter with the file on disk, or nothing."""


class StepReply(Reply):
    what: str
    name: str
    weakest_deg: float | None
    saved: bool


class StepsReply(Reply):
    """The history, from the start; `now` steps lie behind."""

    now: int
    steps: list[StepReply]


class PathPointReply(Reply):
    theta_deg: float
    poses: list[list[float]]
    """Chassis, front axle, rear axle: x, y, z in mm and a quaternion x, y, z, w, table axes."""
    cg_mm: Triple
    load_g: tuple[float, float, float, float]


class PathReply(Reply):
    """From level to the tip on one heading; where it slides first, against a rail from there on."""

    heading_deg: float
    surface: str
    compliant_deg: float | None
    rail_deg: float | None
    slide_deg: float | None
    goes_at_deg: float | None
    over: str
    points: list[PathPointReply]


class PartFieldReply(Reply):
    key: str
    meaning: str
    many: int
    needed: bool
    choices: list[str]
    start: float | list[float] | str | None


class PartKindReply(Reply):
    kind: str
    words: str
    fields: list[PartFieldReply]


class PartFormReply(Reply):
    """What to ask of a new part, and the lumps that it can be taken out of."""

    kinds: list[PartKindReply]
    materials: list[str]
    meshes: list[str]
    lumps: list[str]
    currency: str


class TrialFoundReply(TrialAnswerReply):
    heading_deg: float
    hold: str
    file: str


class TrialStateReply(Reply):
    state: Literal["none", "running", "done", "stopped", "failed"]
    words: str
    done: int
    total: int
    found: list[TrialFoundReply]
    truck: str
    """Which truck they are of."""
    surface: str
    records: list[str] = LEFT_OUT


class CandidateReply(Reply):
    name: str
    label: str
    price: float
    most: int
    group: str | None
    requires: list[str]
    note: str
    does: str
    """What it does, in words."""


class CandidatesReply(Reply):
    file: str
    currency: str
    changes: list[CandidateReply]
    limits: list[str]
    stamp: str
    """Tells one state of the file from another."""
    was: str = LEFT_OUT
    """After an edit of the list: its text before."""


class SideEffectReply(Reply):
    what: str
    by: float
    unit: str


class BuysReply(Reply):
    place: int
    many: int
    on_top_of: list[str]
    gain_deg: dict[str, float | None]
    gain_sd_deg: dict[str, float | None]
    per_100g_deg: dict[str, float | None]
    turns: dict[str, bool]
    """Whether the gain's sign is another one at the ends of what is not known."""
    side: list[SideEffectReply]
    words: str


class BoughtReply(Reply):
    now_deg: dict[str, float | None]
    changes: dict[str, BuysReply]
    impossible: dict[str, str]


class PlannedSetReply(Reply):
    chosen: dict[str, int]
    labels: list[str]
    price: float
    deg: float
    sd_deg: float
    slides: bool
    """It slides away first there, so that `deg` is the angle against a rail."""
    added_g: float
    tied: bool


class PlannedReply(Reply):
    now: PlannedSetReply
    best: PlannedSetReply | None
    runners: list[PlannedSetReply]
    front: list[PlannedSetReply]
    scored: int
    proven: bool


class ScaleFindingReply(Reply):
    what: str
    unit: str
    value: float | None
    low: float | None
    high: float | None


class WeighedReply(Reply):
    file: str
    found: list[ScaleFindingReply]
    outliers: list[str]
    warnings: list[str]
    next: list[str]


class ReadingsReply(Reply):
    file: str
    there: bool
    form: ScaleFormBody | None
    """Null where there is no such file, or it says more than the form can show."""


class CardLineReply(Reply):
    heading_deg: float
    name: str
    low_deg: float
    high_deg: float
    deg: float
    u_deg: float


class BoardReadingReply(Reply):
    number: int
    angles_deg: list[float]
    heading_deg: float
    measured_deg: float
    predicted_deg: float | None
    agrees: bool


class BoardCardReply(Reply):
    file: str
    card: list[CardLineReply]
    readings: list[BoardReadingReply]
    causes: list[str]
    agrees: bool | None


class SweepTableReply(Reply):
    name: str
    columns: dict[str, list[float | str | None]]
    rows: int
    cut: bool


class FrozenReply(Reply):
    """What a copy to look at carries: the state, and how it stands by heading."""

    date: str
    turn_deg: float
    bench: BenchReply
    paths: dict[int, PathReply]


class QuestionReply(Reply):
    """One reading that the wizard asks for."""

    key: str
    words: str
    do: str
    hint: str
    kind: Literal["mm", "g", "N/mm", "word", "yes or no", "place", "name"]
    choices: list[str]
    needed: bool
    after: str
    minutes: float
    picture: str
    caution: str
    first: bool


class WizardReply(Reply):
    questions: list[QuestionReply]
    pictures: dict[str, str]
    """Drawings by name, as SVG."""
    cautions: dict[str, str]
    begun: bool
    as_begun: bool
    weighed: bool
    tilted: bool


class BegunHeadingReply(Reply):
    heading_deg: float
    compliant_deg: float
    compliant_range_deg: Pair
    slides_first: bool


class BegunNextReply(Reply):
    do: str
    readings: list[str]
    minutes: float
    narrows_pm_deg: float
    narrows_deg_per_minute: float


class BegunReply(Reply):
    truck: str
    file: str
    readings_file: str
    mass_g: float
    mass_pm_g: float
    cg_mm: Triple
    cg_pm_mm: Triple
    typical: list[str]
    implausible: list[str]
    headings: list[BegunHeadingReply]
    next: list[BegunNextReply]


class ReconciledReply(Reply):
    what: str
    unit: str
    before: float
    before_pm: float
    after: float
    after_pm: float


class MoveReply(Reply):
    part: str
    mass_by_g: float
    place_by_mm: Triple


class LeftOutReply(Reply):
    reading: str
    kind: str
    off: float
    unit: str


class AgreementReply(Reply):
    agrees: bool
    counted: Literal["all", "some", ""]
    """Whether the file was brought together with all or some of these readings before."""
    scales: bool
    board: bool
    sums: list[ReconciledReply]
    moves: list[MoveReply]
    at_limit: list[str]
    left_out: list[LeftOutReply]


class SweepStateReply(Reply):
    """A sweep run from the page; table: the name of its table once it is over."""

    state: Literal["none", "running", "stopping", "stopped", "done", "failed"]
    words: str
    done: int
    total: int
    left_s: float | None
    table: str


class WayReply(Reply):
    along_mm: list[float]
    places_mm: list[Pair]
    heading_deg: list[float]
    seconds: float


class StandingReply(Reply):
    """By place of the way: the ground's own slope and heading, and where the truck would go."""

    slope_deg: list[float]
    local_heading_deg: list[float]
    goes_at_deg: list[float | None]
    in_hand_deg: list[float | None]


class CourseStandingReply(Reply):
    way: WayReply
    truck: StandingReply
    reference: StandingReply = LEFT_OUT


class CourseEventReply(Reply):
    what: Literal["lifts", "slides", "goes over", "is stuck"]
    wheel: str | None
    begin_s: float
    end_s: float
    at_mm: float


class DrivenReply(Reply):
    whose: Literal["truck", "reference"]
    outcome: Literal["comes through", "slides", "goes over", "is stuck"]
    travelled_mm: float
    off_line_mm: float
    events: list[CourseEventReply]
    cpu_s: float
    engine: str
    file: str


class KeptCoursesReply(Reply):
    courses: dict[str, CourseAskedBody]
    wrong: list[str]
    """A sentence for each file of the folder that is no course."""


class CourseStateReply(Reply):
    number: int
    """Counts the courses driven, so that no tab takes another's."""
    state: Literal["none", "running", "done", "stopped", "failed"]
    words: str
    done: int
    total: int
    found: list[DrivenReply]
    truck: str = LEFT_OUT
    """Which truck was driven, on which surface, and against what."""
    surface: str = LEFT_OUT
    against: str = LEFT_OUT
    way: WayReply = LEFT_OUT


class RodReply(Reply):
    name: str
    shock: bool
    chassis_mm: Triple
    axle_mm: Triple


class TravelReply(Reply):
    heave_mm: list[float]
    instant_centre_mm: list[tuple[float | None, float | None]]
    roll_centre_mm: list[float | None]
    anti_percent: list[float | None]
    castor_deg: list[float | None]
    wheelbase_mm: list[float | None]
    wheel_rate_n_per_mm: list[float | None]


class RollingReply(Reply):
    roll_deg: list[float]
    steer_deg: list[float | None]


class AxleToldReply(Reply):
    axle: Literal["front", "rear"]
    x_mm: float
    links: list[str]
    rods: list[RodReply]
    roll_centre_mm: float
    roll_axis_slope: float
    roll_steer_deg_per_deg: float
    instant_centre_mm: tuple[float | None, float | None]
    anti_dive_percent: float = LEFT_OUT
    anti_squat_percent: float = LEFT_OUT
    castor_deg_per_mm: float
    heave_steer_deg_per_mm: float
    wheelbase_mm_per_mm: float
    wheel_rate_n_per_mm: float
    spring_spacing_mm: float
    bump_mm: float
    droop_mm: float
    spring_squeeze_mm: Pair
    spring_squeeze_at_droop_mm: Pair
    """Below nought where the spring is slack there."""
    soft_spring_bound_at_mm: float | None
    shock_length_mm: tuple[float | None, float | None, float | None]
    """Eye to eye at droop, ride height and bump."""
    travel: TravelReply
    rolling: RollingReply


class SuspensionOfReply(Reply):
    linked: bool
    axles: tuple[AxleToldReply, AxleToldReply]


class SuspensionToldReply(Reply):
    truck: SuspensionOfReply
    reference: SuspensionOfReply = LEFT_OUT


class LinkMoveReply(Reply):
    part: str
    end: Literal["chassis", "axle"]
    axis: Literal["forwards", "outwards", "up"]
    side_deg: float | None
    climb_deg: float | None
    descent_deg: float | None
    why_not: str
    edit: SetBody


class SuspensionMovesReply(Reply):
    surface: str
    moved_by_mm: float
    moves: list[LinkMoveReply]


class SweepsReply(Reply):
    tables: list[str]


class ReadingReply(Reply):
    """value: as the wizard understands what was typed."""

    value: Any


class BeganReply(Reply):
    begun: BegunReply
    bench: BenchReply


class AgreedReply(Reply):
    found: AgreementReply
    bench: BenchReply | None


class StillReply(Reply):
    bytes: int
