"""What the page may send to the server, as models. Whether a truck can do it is said elsewhere.

The page's types are made from those that it builds itself (see `typescript`).
"""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BaseModel, ConfigDict, Field

from crossfall.app.document import At

Pair = Annotated[tuple[float, float], Field(strict=False)]
Triple = Annotated[tuple[float, float, float], Field(strict=False)]
_Whole = Annotated[int, Field(ge=-(10**9), le=10**9)]


class StrictBody(BaseModel):
    """What a request has in it, and nothing else; no text is taken for a number."""

    model_config = ConfigDict(
        strict=True, extra="forbid", allow_inf_nan=False, use_attribute_docstrings=True
    )


class NothingBody(StrictBody):
    pass


class SeenBody(StrictBody):
    """What the asker has in view: a document, by a name never given twice, and its revision."""

    document: str
    revision: _Whole

    @property
    def at(self) -> At:
        return At(self.document, self.revision)


class SetBody(StrictBody):
    do: Literal["set"]
    part: str
    key: str
    value: Any


class MeasureEditBody(StrictBody):
    do: Literal["measure"]
    key: str
    value: float | str


class RemoveBody(StrictBody):
    do: Literal["remove"]
    part: str


class AddBody(StrictBody):
    do: Literal["add"]
    part: dict[str, Any]
    out_of: str | None = None


EditBody = Annotated[SetBody | MeasureEditBody | RemoveBody | AddBody, Field(discriminator="do")]


_Edits = Annotated[list[EditBody], Field(min_length=1, max_length=50)]


class TryBody(SeenBody):
    edits: _Edits
    full: bool = False


class EditsBody(SeenBody):
    edits: _Edits
    what: str


class PlaceBody(SeenBody):
    """values: of a point of a sweep, by dotted key."""

    values: dict[str, float]


class PinBody(SeenBody):
    key: str


class GoBody(SeenBody):
    to: _Whole


class NameStepBody(SeenBody):
    step: _Whole
    name: str


class SurfaceBody(SeenBody):
    surface: str


class SaveBody(SeenBody):
    name: str | None
    over: bool


class OpenBody(StrictBody):
    name: str


class TrialBody(SeenBody):
    headings: list[float]
    rail: bool = False


class StoneBody(StrictBody):
    at_mm: Pair
    height_mm: float


class RampBody(StrictBody):
    at_mm: Pair
    turned_deg: float
    """To the left, from straight up the hill, that its way up points."""
    angle_deg: float
    flank_mm: float
    top_mm: float
    width_mm: float


class CourseAskedBody(StrictBody):
    slope_deg: float
    speed_mm_per_s: float
    points_mm: list[Pair]
    stones: list[StoneBody]
    ramps: list[RampBody]


class CourseBody(SeenBody):
    course: CourseAskedBody


class KeepCourseBody(StrictBody):
    name: str
    course: CourseAskedBody
    over: bool


class StillBody(SeenBody):
    """picture: base64 of a PNG."""

    picture: str
    words: list[str]


class ListEditBody(StrictBody):
    """One thing to do to the list of changes."""

    do: Literal["field", "new", "remove", "text"]
    name: str = ""
    field: str = ""
    value: Any = None
    change: dict[str, Any] | None = None
    text: str | None = None


class EditListBody(SeenBody):
    seen: str
    asked: ListEditBody


class KeptEditsBody(StrictBody):
    """What is to stand beside a new change."""

    name: str
    label: str = ""
    price: float | None = None
    group: str | None = None


class KeepEditsBody(SeenBody):
    seen: str
    asked: KeptEditsBody


class FitBody(SeenBody):
    chosen: dict[str, int]


class PlanAskedBody(StrictBody):
    aim: str
    budget: float | None = None
    added_g: float | None = None
    run_min: float | None = None
    reach_deg: float | None = None
    front_least: float | None = None
    front_most: float | None = None
    limits: str | None = None


class PlanBody(SeenBody):
    asked: PlanAskedBody


class ScaleReadingBody(StrictBody):
    at: str
    raised: str
    block_mm: str
    loads: str


class ScaleFormBody(StrictBody):
    """Scale readings as they are typed."""

    step_g: Annotated[float, Field(gt=0, le=1000)]
    locked: bool
    readings: Annotated[list[ScaleReadingBody], Field(max_length=60)]


class WeighBody(SeenBody):
    form: ScaleFormBody
    keep: bool


class BoardAskedBody(StrictBody):
    """A reading to put down; or the number of one to take out, with what it is, to be sure."""

    heading_deg: float | None = None
    angle_deg: float | None = None
    slid: bool = False
    remove: _Whole | None = None
    angles_deg: list[float] | None = None


class BoardBody(SeenBody):
    asked: BoardAskedBody


class TypedBody(StrictBody):
    """A reading of the wizard as it was typed."""

    key: str
    typed: str


class BeginBody(StrictBody):
    name: str
    typed: dict[str, str]
    again: bool


class AgreementBody(SeenBody):
    put: bool


class SweepAxisBody(StrictBody):
    key: Annotated[str, Field(max_length=200)]
    first: float | None
    last: float | None
    steps: _Whole | None


class SweepAskedBody(StrictBody):
    method: str
    axes: list[SweepAxisBody]
    headings: list[float] | None = None


class SweepBody(SeenBody):
    asked: SweepAskedBody


# Of questions, whose values come as text


class Query(BaseModel):
    model_config = ConfigDict(extra="ignore", allow_inf_nan=False)


class SeenQuery(Query):
    document: str = ""
    revision: _Whole

    @property
    def at(self) -> At:
        return At(self.document, self.revision)


class HeadingQuery(SeenQuery):
    heading_deg: Annotated[float, Field(gt=-1e9, lt=1e9)]


class FileQuery(Query):
    file: str = ""


class SeenFileQuery(SeenQuery):
    file: str = ""


class NameQuery(Query):
    name: str = ""
