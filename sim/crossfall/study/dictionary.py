"""What each column of a table is: a title, a unit, and where it comes from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from crossfall.trials.grounds import ground_keys

NONE: Mapping[str, str] = {}
_UNITS = {
    "_deg_per_s": "degree/s",
    "_ms": "ms",
    "_n_per_mm": "N/mm",
    "_mm_per_s": "mm/s",
    "_deg": "degree",
    "_percent": "%",
    "_mm": "mm",
    "_g": "g",
    "_s": "s",
}
INPUT, STATICS, TRIAL, DRIVE = "input", "statics", "virtual trial", "virtual drive"
RIGID = "closed form: tan of it is the CG's distance to the tip line over its height (textbook)"
SLIDE = "atan of the grip (Coulomb)"
ABOUT: dict[str, tuple[str, str]] = {
    "place": ("line of the plan", "bookkeeping"),
    "scenario": ("name of the scenario", "bookkeeping"),
    "spec": ("digest of the truck", "bookkeeping"),
    "batch": ("digest of the scenario", "bookkeeping"),
    "method": ("what answered", "bookkeeping"),
    "seed": ("seed of the random numbers of this line", "bookkeeping"),
    "versions": ("code and libraries behind this line", "bookkeeping"),
    "address": ("digest of all that decides this line", "bookkeeping"),
    "repeat": ("which repeat", "bookkeeping"),
    "cause": ("why there is no answer; empty where there is one", "bookkeeping"),
    "heading_deg": ("0 nose uphill, 90 left side down, 180 nose downhill", INPUT),
    "slope_deg": ("slope that is driven or stood on", INPUT),
    "grip": ("friction coefficient the line is for", INPUT),
    "hold": ("what holds the wheels: brakes, or a rail besides", INPUT),
    "surface": ("surface of the truck file whose grip counts", INPUT),
    "engine": ("engine the trial was asked of", INPUT),
    "trial": ("how the trial was made: careful, quick, or none", INPUT),
    "speed_mm_per_s": ("speed of driving", INPUT),
    **{key: (ground.says, INPUT) for key, ground in ground_keys().items()},
    "ground": ("what it drives over", INPUT),
    "ground_digest": ("SHA-256 of the file the ground was read from", INPUT),
    "mass_g": ("mass of the build", STATICS),
    "cg_x_mm": ("CG ahead of the middle between the axles (ISO 8855)", STATICS),
    "cg_y_mm": ("CG left of the middle (ISO 8855)", STATICS),
    "cg_z_mm": ("CG above the ground (ISO 8855)", STATICS),
    "front_share": ("share of the weight on the front axle, level", STATICS),
    "front_track_mm": ("between the middles of the front tyres", STATICS),
    "rear_track_mm": ("between the middles of the rear tyres", STATICS),
    "tip_deg": ("tips, by the method asked; against a rail where it slides first", "the method"),
    "tip_low_deg": ("95 % interval of tip_deg, lower end", DRIVE),
    "tip_high_deg": ("95 % interval of tip_deg, upper end", DRIVE),
    "over": ("tyres the rigid truck goes over", STATICS),
    "rigid_deg": ("tips as a block on its tip lines", RIGID),
    "compliant_deg": ("tips on springs and tyres; none where it slides first", STATICS),
    "rail_deg": ("tips against a rail, where it slides first or that was asked", STATICS),
    "slide_deg": ("slides away as a whole", SLIDE),
    "slide_range_low_deg": ("slide_deg at the surface's least grip", SLIDE),
    "slide_range_high_deg": ("slide_deg at the surface's greatest grip", SLIDE),
    "goes_at_deg": ("tips or slides, whichever comes first", STATICS),
    "first": ("what comes first", STATICS),
    "first_lift_deg": ("the first tyre leaves the table", STATICS),
    "first_snap_deg": ("the body first jumps on its springs and stands again", STATICS),
    "on_slope": ("what it does on slope_deg", "the method"),
    "outcome": ("what comes first, at 95 %, or how the drive ended", "the method"),
    "tips_first_share": ("probability that a tip comes first", STATICS),
    "trial_outcome": ("how the trial ended", TRIAL),
    "trial_deg": ("tips, in the engine", TRIAL),
    "trial_first_lift_deg": ("the first tyre leaves the table, in the engine", TRIAL),
    "trial_slide_deg": ("slides away, in the engine", TRIAL),
    "varied": ("what was made finer; engine: what lies between two of them", TRIAL),
    "finer": ("how many times as fine; 1 is as trials are made", TRIAL),
    "step_ms": ("time step", TRIAL),
    "rate_deg_per_s": ("tilting rate to the tip", TRIAL),
    "change_from_finest_deg": ("this trial less the finest of its kind", TRIAL),
    "observed_order": ("observed order of convergence, where changes are resolved", TRIAL),
    "engines_apart_deg": ("the second engine's usual trial less the first's", TRIAL),
    "record": ("file of the trial's record, sample by sample, in the folder of results", TRIAL),
    "trial_engine": ("engine and version", TRIAL),
    "trial_less_compliant_deg": ("how far the trial lies above the statics", TRIAL),
    "least_load_g": ("least load on any wheel during the drive", DRIVE),
    "least_wheel": ("the wheel with the least load", DRIVE),
    "least_geometric_margin_deg": ("least angle of the CG to a tip line", DRIVE),
    "slid_mm": ("how far it slid off its line", DRIVE),
    "spread_deg": ("half width of the band in which drives end either way", DRIVE),
    "drives": ("drives it rests on", DRIVE),
    "settled": ("whether the search came to an end", DRIVE),
    "rolled_over": ("drives that rolled over", DRIVE),
    "slid": ("drives that slid off their line", DRIVE),
    "stuck": ("drives that got stuck", DRIVE),
    "dynamic_allowance_deg": ("what driving costs of the angle it stands", DRIVE),
}


@dataclass(frozen=True)
class Description:
    """Of a column. unit: "1" for a bare number or a word."""

    title: str
    unit: str
    source: str


def describe_column(column: str, responses: Mapping[str, str] = NONE) -> Description:
    """What a column is. responses: those of the scenario, name -> expression."""
    unit = next((said for end, said in _UNITS.items() if column.endswith(end)), "1")
    if column in responses:
        return Description(responses[column], unit, "expression of the scenario")
    for end, said in (("_low_deg", "lower"), ("_high_deg", "upper")):
        stem = column.removesuffix(end)
        if stem != column and column not in ABOUT:
            what = "95 % interval" if stem.endswith("_ci") else "95 % range"
            base = stem.removesuffix("_ci").removesuffix("_range") + "_deg"
            source = TRIAL if stem.endswith("_ci") else "every tolerance of the file, and grip"
            return Description(f"{what} of {base}, {said} end", unit, source)
    if column in ABOUT:
        title, source = ABOUT[column]
        return Description(title, unit, source)
    if "." in column:
        unit = "mm" if "_mm." in column else unit
        return Description(f"value of the truck file, {column}", unit, INPUT)
    return Description(column.replace("_", " "), unit, "the method")


def citation(scenario: str, version: str, digest: str) -> str:
    """How results may be cited: what, by which version, of which truck."""
    return (
        f"{scenario}. Virtual tilt-table study made with crossfall {version}, "
        f"truck {digest[:12]}. Scale models only."
    )
