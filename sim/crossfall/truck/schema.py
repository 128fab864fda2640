"""The chassis file: what a truck is, in the tuner's units (mm, g, N/mm, deg), units in the keys.

Positions: a part on the chassis is placed in truck axes (x forward, y left, z up, origin on the
ground midway between the axles); a part on an axle from that axle's centre; a part on a wheel from
the wheel's centre with y pointing outboard, so that it comes out mirrored on the other side. Axle
and wheel parts therefore move along when the wheelbase or the track is changed.
"""

from __future__ import annotations

from typing import Annotated, Any, ClassVar, Literal

from pydantic import Field, StringConstraints, model_validator

from crossfall.truck.model import TANGENTIAL_RATIO
from crossfall.truck.shapes import (
    FAR,
    Angle,
    Angles,
    AnyShape,
    Damping,
    Dimension,
    Length,
    Line,
    Mass,
    MassTolerance,
    Name,
    NotNegative,
    Place,
    Places,
    Point,
    Price,
    RateTolerance,
    Rod,
    RollRate,
    SpringRate,
    Strict,
    Strip,
    Text,
    Tube,
    TyreRate,
    mistake,
)
from crossfall.truck.toleranced import Toleranced, ToleranceSpec

# Some are for the other file formats, which are built from the same pieces.
__all__ = [
    "Angle",
    "BatterySpec",
    "ChassisSpec",
    "ClearanceSpec",
    "GripSpec",
    "Length",
    "Line",
    "MaterialSpec",
    "Name",
    "PartSpec",
    "Strict",
    "SuspensionSpec",
    "Text",
    "ToleranceSpec",
    "TruckSpec",
    "TyreSpec",
    "mistake",
]

On = Literal[
    "chassis",
    "front axle",
    "rear axle",
    "each axle",
    "front left",
    "front right",
    "rear left",
    "rear right",
    "each front wheel",
    "each rear wheel",
    "every wheel",
    "front link",
    "rear link",
]


LinkKind = Literal["lower", "upper", "track bar", "wishbone", "shock"]
Inertia = Annotated[float, Field(ge=-1e12, le=1e12)]  # kg mm2: HEAVY at FAR
Inertias = Annotated[tuple[Inertia, ...], Field(strict=False, min_length=3, max_length=6)]


_KINGPIN_OFFSET = 20.0  # mm; an assumption
KINGPIN_SHARES = (0.5, 1.5)  # of it, that are built; an assumption
TYPICAL_AXLE_RATIO = 3.0  # shaft turns to one of the wheels; an assumption
AXLE_RATIOS = (2.6, 4.0)  # that are built; an assumption
TYPICAL_DAMPING = 9.0  # N s/m at a corner where the file says nothing; at rest it does nothing
Limits3 = Annotated[tuple[NotNegative, NotNegative, NotNegative], Field(strict=False)]


def assumed_kingpin_offset(track_mm: float) -> float:
    """mm from kingpin to tyre's middle where the file gives none: min(20, track / 4).

    Source: common practice, no source.
    """
    return min(_KINGPIN_OFFSET, track_mm / 4)


class PartSpec(Strict):
    """One entry of the parts list.

    Without mass_g the mass is shape times material. With `mirror` every piece also stands at -y.
    `count` pieces stand step_mm apart, the first at at_mm. turn_deg turns the part about the fixed
    x, then y, then z axis. cg_mm is the mass centre's offset from at_mm and inertia_kg_mm2 (ixx,
    iyy, izz, and if need be ixy, ixz, iyz) its own inertia, both in the part's own axes. A link
    has chassis_end_mm in truck axes and axle_end_mm from the axle's centre instead of at_mm, and
    `unsprung` is the fraction of it that moves with the axle. `link` says what it is: a lower or
    upper link, a track bar, a wishbone (mirrored, its one ball at y = 0) or a shock; without it a
    link is only a mass. Mass, price and tolerances are for one piece; tolerances are plus or minus,
    place_tol_xyz_mm along x, y and z apart.

    `remainder` is for one part of the chassis: what the scale leaves of the whole truck after all
    other parts. The sums of mass and mass times place are then as sure as its tolerances say, for
    it takes up whatever the others are out by.
    """

    name: Name
    on: On
    count: Annotated[int, Field(ge=1, le=500)] = 1
    mirror: bool = False
    step_mm: Places = (0.0, 0.0, 0.0)
    mass_g: Mass | None = None
    material: Name | None = None
    shape: AnyShape | None = None
    at_mm: Places | None = None
    turn_deg: Angles = (0.0, 0.0, 0.0)
    chassis_end_mm: Places | None = None
    axle_end_mm: Places | None = None
    link: LinkKind | None = None
    unsprung: Annotated[float, Field(gt=0, lt=1)] | None = None
    cg_mm: Places = (0.0, 0.0, 0.0)
    inertia_kg_mm2: Inertias | None = None
    price: Price = 0.0
    mass_tol_g: MassTolerance | None = None
    place_tol_mm: NotNegative | None = None
    place_tol_xyz_mm: Limits3 | None = None
    remainder: bool = False
    detail: Line | None = None
    note: Text = ""

    @property
    def is_link(self) -> bool:
        return self.on.endswith("link")

    @property
    def on_wheel(self) -> bool:
        return self.on.endswith(("wheel", "left", "right"))

    @model_validator(mode="before")
    @classmethod
    def _one_way_to_place(cls, data: Any) -> Any:
        """Before the fields, so that a misplaced key is told by what the part sits on."""
        if not isinstance(data, dict) or not isinstance(data.get("on"), str):
            return data
        link = data["on"] in ("front link", "rear link")
        ends = ("chassis_end_mm", "axle_end_mm", "unsprung")
        if link and "at_mm" in data:
            raise mistake("at_mm", "does not apply to a link", "give chassis_end_mm, axle_end_mm")
        if link and (missing := [k for k in ends if k not in data]):
            raise mistake("on", f"is '{data['on']}'", f"a link also needs {', '.join(missing)}")
        if not link and (extra := [k for k in ends if k in data]):
            raise mistake(extra[0], "is for links only", "use it with on = 'front link' or so")
        if not link and "at_mm" not in data:
            raise mistake("at_mm", "is missing", "give the part's place as [x, y, z] in mm")
        return data

    @model_validator(mode="after")
    def _mass_is_given_once(self) -> PartSpec:
        shape = self.shape
        by_length = isinstance(shape, Strip) and shape.g_per_m is not None
        if self.mass_g is not None and by_length:
            raise mistake("mass_g", "is given and so is g_per_m", "keep one of the two")
        if self.mass_g is None and not by_length and (self.material is None or shape is None):
            raise mistake("mass_g", "is missing", "give mass_g, or a material and a shape")
        if isinstance(shape, Rod | Tube) and shape.length_mm is None and not self.is_link:
            raise mistake("shape.length_mm", "is missing", "only a link may leave it out")
        if self.is_link and shape is not None and not isinstance(shape, Rod | Tube):
            raise mistake("shape.kind", f"is '{shape.kind}'", "a link is a rod or a tube")
        return self

    @model_validator(mode="after")
    def _link_is_one(self) -> PartSpec:
        if self.link is None:
            return self
        if not self.is_link:
            raise mistake("link", "is for links only", "use it with on = 'front link' or so")
        if self.count > 1:
            raise mistake("count", f"is {self.count}", f"a {self.link} is one, or a mirrored pair")
        if self.link in ("wishbone", "shock") and not self.mirror:
            raise mistake("link", f"is '{self.link}'", "it needs mirror = true")
        ends = (self.chassis_end_mm or (0.0,) * 3, self.axle_end_mm or (0.0,) * 3)
        if self.link == "wishbone" and all(end[1] for end in ends):
            raise mistake("link", "is 'wishbone'", "one of its ends must lie in the middle, y = 0")
        return self

    @model_validator(mode="after")
    def _placing_makes_sense(self) -> PartSpec:
        if self.mirror and self.on_wheel:
            raise mistake(
                "mirror", "is not for this part", "wheel parts are mirrored by themselves"
            )
        if any(self.step_mm) and self.count == 1:
            raise mistake("step_mm", "has no use with one piece", "give a count of 2 or more")
        if self.inertia_kg_mm2 is not None:
            _inertia_is_possible(self.inertia_kg_mm2)
        if self.place_tol_mm is not None and self.place_tol_xyz_mm is not None:
            raise mistake("place_tol_xyz_mm", "is given and so is place_tol_mm", "keep one")
        if self.remainder and (self.on != "chassis" or self.mirror or self.count > 1):
            raise mistake("remainder", "is not for this part", "for a single one of the chassis")
        return self


def _inertia_is_possible(values: tuple[float, ...]) -> None:
    if len(values) not in (3, 6):
        raise mistake("inertia_kg_mm2", f"has {len(values)} values", "give 3 or 6")
    import numpy as np

    xx, yy, zz, xy, xz, yz = (*values, 0.0, 0.0, 0.0)[:6]
    moments = np.linalg.eigvalsh([[xx, xy, xz], [xy, yy, yz], [xz, yz, zz]])
    if moments[0] < 0 or moments[2] > moments[0] + moments[1] + 1e-12 * abs(moments[2]):
        raise mistake(
            "inertia_kg_mm2",
            "belongs to no solid body",
            "none may be negative, and none larger than the other two together",
        )


class ChassisSpec(Toleranced):
    """The truck as a whole. raise_mm lifts everything sprung, links' upper ends included.

    held_by: on a slope, brakes hold every wheel, or the motor holds the shafts to both axles and
    these the wheels, through each axle's differential: a shaft then takes axle_ratio less torque
    than its wheels together, and twists the axle against the chassis by it. steer_deg: how far the
    front wheels are turned to the left as it stands.
    """

    wheelbase_mm: Dimension
    wheelbase_tol_mm: NotNegative | None = None
    raise_mm: Place = 0.0
    steer_deg: Annotated[float, Field(ge=-80, le=80)] = 0.0
    steering_lock_deg: Annotated[float, Field(ge=0.1, le=80)] | None = None
    final_drive: Annotated[float, Field(ge=0.1, le=1000)] = 1.0
    driven: Literal["both", "front", "rear"] = "both"
    held_by: Literal["brakes", "motor"] = "brakes"
    axle_ratio: Annotated[float, Field(ge=1, le=20)] | None = None

    @model_validator(mode="after")
    def _steers_within_its_lock(self) -> ChassisSpec:
        lock = self.steering_lock_deg
        if lock is not None and abs(self.steer_deg) > lock:
            what = f"is {self.steer_deg:g}, beyond the steering lock"
            raise mistake("steer_deg", what, f"at most {lock:g} either way")
        return self

    @model_validator(mode="after")
    def _motor_holds_what_it_drives(self) -> ChassisSpec:
        if self.held_by == "motor" and self.driven != "both":
            what = f"is 'motor', which drives the {self.driven} axle only"
            raise mistake("held_by", what, "the other axle would roll away: 'brakes'")
        return self


class TyreSpec(Toleranced):
    """radius_mm is from axle centre to ground under load. See `Tyre` for the contact half-width.

    stiffness_n_per_mm is vertical; without lateral_n_per_mm or longitudinal_n_per_mm the middle of
    TANGENTIAL_RATIO is taken of it.
    """

    radius_mm: Dimension
    width_mm: Dimension
    contact_half_width_mm: Annotated[float, Field(ge=0, le=FAR)] = 0.0
    stiffness_n_per_mm: TyreRate
    lateral_n_per_mm: TyreRate | None = None
    longitudinal_n_per_mm: TyreRate | None = None
    radius_tol_mm: NotNegative | None = None
    contact_half_width_tol_mm: NotNegative | None = None
    stiffness_tol_n_per_mm: RateTolerance | None = None
    lateral_tol_n_per_mm: RateTolerance | None = None
    longitudinal_tol_n_per_mm: RateTolerance | None = None

    def along_ground(self, measured: float | None) -> float:
        """N/mm, a stiffness along the ground as measured, or else as assumed."""
        return TANGENTIAL_RATIO[1] * self.stiffness_n_per_mm if measured is None else measured

    @model_validator(mode="after")
    def _contact_under_tread(self) -> TyreSpec:
        if self.contact_half_width_mm > self.width_mm / 2:
            raise mistake(
                "contact_half_width_mm",
                f"is {self.contact_half_width_mm:g}",
                f"it may not reach beyond the tread's edge, {self.width_mm / 2:g}",
            )
        return self


OF_SHOCKS = (
    "soft_n_per_mm",
    "soft_travel_mm",
    "preload_mm",
    "shock_length_mm",
    "shaft_travel_mm",
    "droop_limiter_mm",
    "bump_limiter_mm",
)
"""Keys that only springs along their shocks have."""


class SuspensionSpec(Toleranced):
    """One solid axle's suspension; travel counts from ride height.

    The heave axis leans by heave_lean_deg (positive: the axle moves forward as it compresses), or
    by what an anti-squat or anti-dive percentage asks for: tan(lean) = -p/100 h/L at the rear and
    +p/100 h/L at the front, with h the CG height and L the wheelbase. That takes the whole drive
    (or brake) force at that axle, acting where the tyre meets the ground. Travel and roll centre
    are given as at ride height, whatever chassis.raise_mm says.

    Where parts say that they are links (PartSpec.link), roll centre and lean follow from them and
    need not stand here; if they do, guided_by says which counts. spring_n_per_mm, damping, bump and
    droop are at the wheel's corner, spring_spacing_mm apart; with shock_n_per_mm instead they are
    along the shaft of the shocks in the parts list, and the spacing follows from these.

    A soft spring of soft_n_per_mm may be stacked on the shock's own and gives soft_travel_mm until
    it is bound. Droop is given, or follows from shock_length_mm (eye to eye, fully extended) and
    the shock's ends; bump is given, or what is left of shaft_travel_mm. Both are as without
    limiters: droop_limiter_mm (under the piston) and bump_limiter_mm (clips on the shaft) then take
    away from them. With preload_mm besides, how far the collar presses the springs at full
    extension, the truck does not stand at the height of the file but where its springs hold it.

    Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE, 1992), chapter 7, for anti-squat
    and anti-dive of a solid axle (from memory).
    """

    spring_n_per_mm: SpringRate | None = None
    shock_n_per_mm: SpringRate | None = None
    spring_spacing_mm: Dimension | None = None
    damping_n_s_per_m: Damping = TYPICAL_DAMPING
    roll_centre_mm: Annotated[float, Field(ge=0, le=FAR)] | None = None
    guided_by: Literal["links", "numbers"] | None = None
    bump_mm: Annotated[float, Field(ge=0, le=FAR)] | None = None
    droop_mm: Place | None = None
    soft_n_per_mm: SpringRate | None = None
    soft_travel_mm: Length | None = None
    preload_mm: Annotated[float, Field(ge=0, le=FAR)] | None = None
    shock_length_mm: Length | None = None
    shaft_travel_mm: Length | None = None
    droop_limiter_mm: Annotated[float, Field(ge=0, le=FAR)] = 0.0
    bump_limiter_mm: Annotated[float, Field(ge=0, le=FAR)] = 0.0
    anti_roll_n_mm_per_deg: RollRate = 0.0
    heave_lean_deg: Annotated[float, Field(ge=-45, le=45)] | None = None
    locked: bool = False
    spring_tol_n_per_mm: RateTolerance | None = None
    shock_tol_n_per_mm: RateTolerance | None = None
    soft_tol_n_per_mm: RateTolerance | None = None
    spring_spacing_tol_mm: NotNegative | None = None
    roll_centre_tol_mm: NotNegative | None = None
    bump_tol_mm: NotNegative | None = None
    droop_tol_mm: NotNegative | None = None
    anti_roll_tol_n_mm_per_deg: RollRate | None = None
    heave_lean_tol_deg: NotNegative | None = None

    PERCENT: ClassVar = ""  # what this end's percentage is called
    FOLLOWS: ClassVar = ("bump_mm", "droop_mm")

    @property
    def percent(self) -> float | None:
        """Anti-dive or anti-squat, where the file gives one."""
        return getattr(self, self.PERCENT, None)

    @property
    def percent_tol(self) -> float | None:
        """Percentage points by which `percent` may be out, where the file says so."""
        return getattr(self, self.PERCENT.replace("_percent", "_tol_percent"), None)

    @model_validator(mode="after")
    def _sprung_once(self) -> SuspensionSpec:
        if self.spring_n_per_mm is None and self.shock_n_per_mm is None:
            raise mistake("spring_n_per_mm", "is missing", "give it, or shock_n_per_mm")
        if self.spring_n_per_mm is not None and self.shock_n_per_mm is not None:
            raise mistake("shock_n_per_mm", "is given and so is spring_n_per_mm", "keep one")
        if self.spring_n_per_mm is not None and self.spring_spacing_mm is None:
            raise mistake("spring_spacing_mm", "is missing", "give a length in mm")
        if self.shock_n_per_mm is not None and self.spring_spacing_mm is not None:
            what = "is given, and with shock_n_per_mm it follows from the shocks' ends"
            raise mistake("spring_spacing_mm", what, "take it away")
        return self

    @model_validator(mode="after")
    def _shocks_are_whole(self) -> SuspensionSpec:
        given = [k for k in OF_SHOCKS if getattr(self, k)]
        if given and self.shock_n_per_mm is None:
            what = "is given without shock_n_per_mm"
            raise mistake(given[0], what, "it is for springs along their shocks")
        if (self.soft_n_per_mm is None) != (self.soft_travel_mm is None):
            missing = "soft_n_per_mm" if self.soft_n_per_mm is None else "soft_travel_mm"
            what = "is missing beside the other number of the soft spring"
            raise mistake(missing, what, "give both, or neither")
        if self.soft_n_per_mm is not None and self.soft_n_per_mm >= self.rate:
            what = f"is {self.soft_n_per_mm:g}, no softer than shock_n_per_mm, {self.rate:g}"
            raise mistake("soft_n_per_mm", what, "the softer of two stacked springs goes here")
        return self

    @model_validator(mode="after")
    def _travel_once(self) -> SuspensionSpec:
        for ways in (("droop_mm", "shock_length_mm"), ("bump_mm", "shaft_travel_mm")):
            given = [k for k in ways if getattr(self, k) is not None]
            if not given:
                allowed = f"give it, or with shock_n_per_mm {ways[1]}"
                raise mistake(ways[0], "is missing", allowed)
            if len(given) > 1:
                what = f"is given and so is {given[0]}, and either says the other"
                raise mistake(given[1], what, "keep one of the two")
        if self.preload_mm is not None and self.shock_length_mm is None:
            what = "is given without shock_length_mm"
            raise mistake("preload_mm", what, "both together say where the truck stands")
        return self

    @property
    def rate(self) -> float:
        """N/mm at the corner, or along the shock."""
        given = self.spring_n_per_mm if self.shock_n_per_mm is None else self.shock_n_per_mm
        return given or 0.0

    @model_validator(mode="after")
    def _lean_once(self) -> SuspensionSpec:
        if self.heave_lean_deg is not None and self.percent is not None:
            raise mistake(self.PERCENT, "is given and so is heave_lean_deg", "keep one of the two")
        return self

    @model_validator(mode="after")
    def _reaches_the_ground(self) -> SuspensionSpec:
        if self.droop_mm is not None and self.droop_mm < 0:
            what = f"is {self.droop_mm:g}, which leaves the wheels hanging on the level"
            raise mistake("droop_mm", what, "it must be 0 or more")
        return self


class FrontSuspensionSpec(SuspensionSpec):
    """[front.suspension]: with how far it lifts the nose against braking."""

    PERCENT: ClassVar = "anti_dive_percent"

    anti_dive_percent: Annotated[float, Field(ge=-200, le=200)] | None = None
    anti_dive_tol_percent: NotNegative | None = None


class RearSuspensionSpec(SuspensionSpec):
    """[rear.suspension]: with how far it holds the tail against driving."""

    PERCENT: ClassVar = "anti_squat_percent"

    anti_squat_percent: Annotated[float, Field(ge=-200, le=200)] | None = None
    anti_squat_tol_percent: NotNegative | None = None


class AxleSpec(Toleranced):
    """track_mm is between the tyres' centre planes. shaft_turns: which way the shaft to the axle
    turns to drive forwards, seen from behind the truck. differential: a locked one (or a spool)
    turns both wheels alike, an open one gives both the same torque."""

    track_mm: Dimension
    shaft_turns: Literal["clockwise", "anticlockwise"] = "clockwise"
    differential: Literal["locked", "open"] = "locked"
    track_tol_mm: NotNegative | None = None
    tyre: TyreSpec
    suspension: SuspensionSpec


class FrontSpec(AxleSpec):
    """kingpin_offset_mm: from a kingpin's axis out to the middle of its tyre, on the ground."""

    suspension: FrontSuspensionSpec
    kingpin_offset_mm: Annotated[float, Field(ge=0, le=500)] | None = None

    @model_validator(mode="after")
    def _kingpins_apart(self) -> FrontSpec:
        if self.kingpin_offset_mm is not None and self.kingpin_offset_mm >= self.track_mm / 2:
            what = f"is {self.kingpin_offset_mm:g}, which puts the kingpins past each other"
            raise mistake("kingpin_offset_mm", what, f"less than {self.track_mm / 2:g}")
        return self


class RearSpec(AxleSpec):
    """[rear]."""

    suspension: RearSuspensionSpec


Friction = Annotated[float, Field(ge=0.01, le=5)]


class GripSpec(Strict):
    """Friction coefficient on one surface, as a range."""

    low: Friction
    likely: Friction
    high: Friction

    @model_validator(mode="after")
    def _in_order(self) -> GripSpec:
        if not self.low <= self.likely <= self.high:
            raise mistake(
                "likely",
                f"is {self.likely:g} between low {self.low:g} and high {self.high:g}",
                "they must rise from low to likely to high",
            )
        return self


class ClearanceSpec(Strict):
    """The points [x, z] of the chassis that hit the ground first, in truck axes."""

    nose_mm: Point
    belly_mm: Point
    tail_mm: Point

    @model_validator(mode="after")
    def _in_order(self) -> ClearanceSpec:
        for key in ("nose_mm", "belly_mm", "tail_mm"):
            if getattr(self, key)[1] < 0:
                raise mistake(key, f"lies {-getattr(self, key)[1]:g} mm under ground", "z >= 0")
        if not self.nose_mm[0] > self.belly_mm[0] > self.tail_mm[0]:
            raise mistake("belly_mm", "is not between nose and tail", "x must fall nose to tail")
        return self


class BatterySpec(Strict):
    """The pack that runs the truck, for run time.

    draw_a: mean current measured on this pack; draw_mass_g: the truck's mass when it was.
    """

    part: Name
    cells: Annotated[int, Field(ge=1, le=12)]
    capacity_mah: Annotated[float, Field(ge=1, le=1_000_000)]
    usable_percent: Annotated[float, Field(ge=1, le=100)] = 80.0
    draw_a: Annotated[float, Field(ge=0.001, le=500)] | None = None
    draw_mass_g: Mass | None = None

    @model_validator(mode="after")
    def _draw_has_its_mass(self) -> BatterySpec:
        if self.draw_a is not None and self.draw_mass_g is None:
            raise mistake("draw_mass_g", "is missing", "say what the truck weighed at that current")
        return self


class MaterialSpec(Strict):
    """[materials.NAME]: a material of the file's own, and where its density is from."""

    density_g_cm3: Annotated[float, Field(ge=0.001, le=30)]
    source: Line


class TruckSpec(Strict):
    """A whole chassis file, includes merged in."""

    format: Literal[1]
    name: Name
    note: Text = ""
    currency: Annotated[str, StringConstraints(max_length=8)] = ""
    chassis: ChassisSpec
    front: FrontSpec
    rear: RearSpec
    grip: dict[Name, GripSpec] = Field(default_factory=dict)
    clearance: ClearanceSpec | None = None
    battery: BatterySpec | None = None
    tolerance: ToleranceSpec | None = None
    materials: dict[Name, MaterialSpec] = Field(default_factory=dict)
    part: Annotated[tuple[PartSpec, ...], Field(strict=False, min_length=1, max_length=2000)]

    @property
    def remainder(self) -> int | None:
        """The row that takes up what the others are out by, where there is one."""
        return next((i for i, part in enumerate(self.part) if part.remainder), None)
