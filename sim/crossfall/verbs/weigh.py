"""`crossfall weigh TRUCK`: where the weight is."""

from __future__ import annotations

from math import degrees
from typing import TYPE_CHECKING, Any

import click

from crossfall.answers.figures import signed_figures
from crossfall.verbs.common import console, emit, json_option, load_and_warn, truck_argument

if TYPE_CHECKING:
    from collections.abc import Sequence

    from rich.table import Table

    from crossfall.statics.traction import Traction
    from crossfall.truck.model import Truck
    from crossfall.truck.weight import WeighIn

_WHEELS = ("front_left", "front_right", "rear_left", "rear_right")


@click.command()
@truck_argument
@click.option("--parts", default=10, show_default=True, metavar="N", help="How many parts to list.")
@json_option
def command(truck: str, parts: int, as_json: bool) -> None:
    """Where is the weight: mass, CG, loads, clearance angles, and what drives it up a grade.

    ± is 95 %: 1.96 standard uncertainties, from all tolerances of parts, wheelbase, tracks and
    tyre radii, as the file gives them or by default (`crossfall check` lists those).
    """
    from crossfall.statics.traction import traction
    from crossfall.truck.weight import weigh_truck

    loaded = load_and_warn(truck)
    found = weigh_truck(loaded.truck)
    grades = [traction(loaded.truck, grip) for grip in loaded.truck.grips]
    if as_json:
        parted = weigh_record(loaded.truck, found, parts)
        emit("weigh", parted | {"traction": [traction_answer(t) for t in grades]})
    else:
        _show(loaded.truck, found, parts)
        if grades:
            console().print(traction_table(grades))
            console().print(traction_words(loaded.truck, grades[0]))


def weigh_record(truck: Truck, w: WeighIn, parts: int) -> dict[str, Any]:
    """The weigh-in in tuner's units."""
    from crossfall.truck.model import GRAVITY
    from crossfall.truck.weight import COVERAGE

    gram = 1e3 / GRAVITY
    clearance = None
    if w.clearance is not None:
        clearance = {
            "approach_deg": degrees(w.clearance.approach),
            "breakover_deg": degrees(w.clearance.breakover),
            "departure_deg": degrees(w.clearance.departure),
        }
    return {
        "truck": truck.name,
        "mass_g": w.mass * 1e3,
        "mass_plus_minus_g": COVERAGE * w.mass_sd * 1e3,
        "sprung_g": w.sprung * 1e3,
        "unsprung_g": w.unsprung * 1e3,
        "cg_mm": w.cg * 1e3,
        "cg_plus_minus_mm": COVERAGE * w.cg_sd * 1e3,
        "sprung_cg_mm": w.sprung_cg * 1e3,
        "inertia_kg_mm2": w.inertia * 1e6,
        "front_share_percent": w.front_share * 100,
        "front_share_plus_minus_percent": COVERAGE * w.front_share_sd * 100,
        "axle_loads_g": w.axle_loads * gram,
        "axle_loads_plus_minus_g": COVERAGE * w.axle_loads_sd * gram,
        "wheel_loads_g": dict(zip(_WHEELS, w.tyre_loads * gram, strict=True)),
        "wheel_loads_plus_minus_g": dict(
            zip(_WHEELS, COVERAGE * w.tyre_loads_sd * gram, strict=True)
        ),
        "clearance": clearance,
        "parts": [
            {
                "name": i.name,
                "mass_g": i.mass * 1e3,
                "height_mm": i.height * 1e3,
                "pull_mm": i.pull * 1e3,
                "cg_height_change_without_mm": i.without * 1e3,
            }
            for i in w.influences[: max(parts, 0)]
        ],
    }


def traction_answer(t: Traction) -> dict[str, Any]:
    """Degrees at the low, likely and high grip; keys say which wheels drive or brake."""
    from crossfall.statics.traction import DRIVEN

    def by_wheels(grades: Any) -> dict[str, list[float]]:
        return {w: [degrees(v) for v in row] for w, row in zip(DRIVEN, grades, strict=True)}

    return {
        "surface": t.grip.surface,
        "grip": [t.grip.low, t.grip.likely, t.grip.high],
        "climbs_driven_deg": by_wheels(t.climbs),
        "slides_nose_up_braked_deg": by_wheels(t.slides_up),
        "slides_nose_down_braked_deg": by_wheels(t.slides_down),
        "rigid_tip_nose_up_deg": degrees(t.tips_up),
        "rigid_tip_nose_down_deg": degrees(t.tips_down),
    }


def _show(truck: Truck, w: WeighIn, parts: int) -> None:
    out = console()
    out.print(f"[bold]{truck.name}[/bold], standing level; ± is 95 %, from all tolerances")
    out.print(_summary(truck, w))
    out.print(_loads(w))
    if parts > 0:
        out.print(_parts(w, parts))
        out.print("pull: by how much the part holds the CG up (+) or down (-).")


def _summary(truck: Truck, w: WeighIn) -> Table:
    from rich.table import Table

    from crossfall.truck.weight import COVERAGE

    table = Table(show_header=False, box=None, padding=(0, 2, 0, 0))
    x, y, z = w.cg * 1e3
    pm = COVERAGE * w.cg_sd * 1e3
    ahead = "ahead of" if x >= 0 else "behind"
    table.add_row("mass", f"{w.mass * 1e3:.0f} ± {COVERAGE * w.mass_sd * 1e3:.0f} g")
    front, rear = w.unsprung * 1e3
    unsprung = f"unsprung {front:.0f} g front, {rear:.0f} g rear"
    table.add_row("", f"sprung {w.sprung * 1e3:.0f} g, {unsprung}")
    table.add_row("CG height", f"{z:.1f} ± {pm[2]:.1f} mm above ground")
    table.add_row("CG along", f"{abs(x):.1f} ± {pm[0]:.1f} mm {ahead} the middle")
    side = "left" if y >= 0 else "right"
    table.add_row("CG across", f"{abs(y):.1f} ± {pm[1]:.1f} mm to the {side}")
    half = COVERAGE * w.front_share_sd * 100
    share = f"{w.front_share * 100:.1f} ± {half:.1f} % on the front axle"
    table.add_row("front share", share)
    roll, pitch, yaw = w.inertia.diagonal() * 1e6
    table.add_row("inertia", f"roll {roll:.0f}, pitch {pitch:.0f}, yaw {yaw:.0f} kg mm²")
    if w.clearance is None:
        table.add_row("clearance", "no points given in the file")
    else:
        c = w.clearance
        angles = [
            f"{name} {degrees(value):.0f}°" if degrees(value) < 90 else f"{name} free"
            for name, value in (("approach", c.approach), ("departure", c.departure))
        ]
        table.add_row(
            "clearance", f"{angles[0]}, breakover {degrees(c.breakover):.0f}°, {angles[1]}"
        )
    return table


def _loads(w: WeighIn) -> Table:
    from rich.table import Table

    from crossfall.truck.model import GRAVITY
    from crossfall.truck.weight import COVERAGE

    gram = 1e3 / GRAVITY
    table = Table(title="On the scales, g", title_justify="left")
    for name in ("", "left", "right", "axle"):
        table.add_column(name, justify="left" if not name else "right")
    for i, name in enumerate(("front", "rear")):
        cells = [
            f"{load * gram:.0f} ± {COVERAGE * sd * gram:.0f}"
            for load, sd in (
                (w.tyre_loads[2 * i], w.tyre_loads_sd[2 * i]),
                (w.tyre_loads[2 * i + 1], w.tyre_loads_sd[2 * i + 1]),
                (w.axle_loads[i], w.axle_loads_sd[i]),
            )
        ]
        table.add_row(name, *cells)
    return table


def _parts(w: WeighIn, parts: int) -> Table:
    from rich.markup import escape
    from rich.table import Table

    table = Table(title="What matters most for the CG height", title_justify="left")
    table.add_column("part")
    for name in ("mass, g", "height, mm", "pull, mm", "CG without it, mm"):
        table.add_column(name, justify="right")
    for i in w.influences[:parts]:
        table.add_row(
            escape(i.name),
            f"{i.mass * 1e3:.0f}",
            f"{i.height * 1e3:.0f}",
            signed_figures(i.pull * 1e3, 1),
            signed_figures(i.without * 1e3, 1),
        )
    return table


def traction_table(grades: Sequence[Traction]) -> Table:
    from rich.markup import escape
    from rich.table import Table

    table = Table(title="Where the grip gives out, degrees", title_justify="left", box=None)
    table.add_column("")
    for name in (
        "front,\nnose up",
        "rear,\nnose up",
        "all",
        "front,\nnose down",
        "rear,\nnose down",
    ):
        table.add_column(name, justify="right")
    for t in grades:
        rows = (t.slides_up[0], t.slides_up[1], t.slides_up[2], t.slides_down[0], t.slides_down[1])
        table.add_row(escape(t.grip.surface), *(_range(row) for row in rows))
    return table


def _range(ends: Sequence[float]) -> str:
    low, likely, high = (degrees(v) for v in ends)
    return f"{likely:.0f} ({low:.0f}–{high:.0f})"


def traction_words(truck: Truck, t: Traction) -> str:
    own = "both axles" if all(truck.driven) else f"the {'front' if truck.driven[0] else 'rear'}"
    return (
        f"by the wheels that drive (this truck's: {own}) or brake, at likely (low–high) grip: nose "
        "up the steepest climb and where it slides back, nose down where it slides on. With grip "
        f"enough the rigid truck would go over at {degrees(t.tips_up):.0f}° nose up and "
        f"{degrees(t.tips_down):.0f}° nose down."
    )
