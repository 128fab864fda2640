"""`crossfall suspension TRUCK`: what its links and shocks amount to."""

from __future__ import annotations

from math import degrees, isfinite, radians
from pathlib import Path
from typing import TYPE_CHECKING

import click

from crossfall.answers.figures import as_figures, signed_figures
from crossfall.verbs.common import (
    console,
    emit,
    json_option,
    load_and_warn,
    truck_argument,
)

if TYPE_CHECKING:
    from rich.table import Table

    from crossfall.tuning.suspension import AxleLook, Moved

_MM = 1e3


@click.command()
@truck_argument
@click.option("--surface", metavar="NAME", help="Which [grip] of the file; its first if not given.")
@click.option("--no-moves", is_flag=True, help="Do not try what moving link ends would do.")
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Write the picture.")
@json_option
def command(
    truck: str, surface: str | None, no_moves: bool, plots: Path | None, as_json: bool
) -> None:
    """Where do the links put roll centre and instant centre, and what would moving them do?

    For each axle the numbers at ride height, how they wander over the travel, and what each end of
    each link, moved by 5 mm, does to side slope, climb and descent. The picture shows side and rear
    view to scale, with instant centres and roll axis, and the curves.
    """
    from crossfall.answers.conditions import conditions
    from crossfall.tuning.suspension import SLOPE_HEADINGS, look, moved_ends
    from crossfall.tuning.suspension_record import suspension_record

    loaded = load_and_warn(truck)
    seen = look(loaded.truck)
    asked = conditions(loaded.truck, [radians(h) for h in SLOPE_HEADINGS], surface)
    moves = () if no_moves else moved_ends(loaded, asked)
    written = []
    if plots is not None:
        from crossfall.show.style import save
        from crossfall.show.suspension import draw_suspension

        plots.mkdir(parents=True, exist_ok=True)
        written.append(plots / f"{loaded.truck.name}-suspension.svg")
        save(draw_suspension(loaded.truck, seen), written[0])
    if as_json:
        record = suspension_record(loaded.truck.name, asked[0].grip.surface, seen, moves)
        emit("suspension", record | {"files": [str(p) for p in written]})
        return
    out = console()
    out.print(_table(loaded.truck.name, seen))
    out.print(_curves(seen))
    if moves:
        out.print(_moves(moves, asked[0].grip.surface))
    elif not no_moves:
        out.print(
            "No link part says what it is (link = 'lower', 'upper', 'track bar', 'wishbone'), so "
            "roll centre and lean are the file's own numbers.",
            style="dim",
            markup=False,
        )
    for path in written:
        click.echo(f"wrote {path}")


def _plain_table(title: str, names: tuple[str, ...], left: int = 1) -> Table:
    from rich.box import SIMPLE_HEAD
    from rich.table import Table

    table = Table(title=title, title_justify="left", box=SIMPLE_HEAD, show_edge=False)
    for i, name in enumerate(names):
        table.add_column(name, justify="left" if i < left else "right")
    return table


def _table(name: str, seen: tuple[AxleLook, AxleLook]) -> Table:
    table = _plain_table(f"{name}, suspension at ride height", ("", "front", "rear"))
    rows = {
        "guided by": [", ".join(a.kinds) or "the file's numbers" for a in seen],
        "roll centre, mm above ground": [as_figures(a.roll_centre * _MM, 1) for a in seen],
        "anti-dive, anti-squat, %": [as_figures(a.anti, 0) for a in seen],
        "instant centre, mm ahead of the middle": [
            as_figures(a.instant_centre[0] * _MM, 0) for a in seen
        ],
        "instant centre, mm above ground": [as_figures(a.instant_centre[1] * _MM, 0) for a in seen],
        "roll steer, deg per deg": [as_figures(a.roll_axis, 3) for a in seen],
        "castor gained, deg per mm of bump": [as_figures(degrees(a.castor) / _MM, 3) for a in seen],
        "axle forwards, mm per mm of bump": [as_figures(a.wheelbase, 3) for a in seen],
        "wheel rate, N/mm": [as_figures(a.wheel_rate / _MM, 3) for a in seen],
        "springs apart, as if upright, mm": [as_figures(a.spacing * _MM, 1) for a in seen],
        "bump and droop at the wheel, mm": [
            f"{a.bump * _MM:.1f}, {a.droop * _MM:.1f}" for a in seen
        ],
        "springs pressed at ride height, mm": [
            f"{a.squeeze[0] * _MM:.1f}, {a.squeeze[1] * _MM:.1f}" for a in seen
        ],
        "springs pressed at full droop, mm": [
            ", ".join(f"{v * _MM:.1f}" if v > 0 else "slack" for v in a.at_droop) for a in seen
        ],
    }
    if any(isfinite(a.bound) for a in seen):
        label = "soft springs bind at a heave of, mm"
        rows[label] = [as_figures(a.bound * _MM, 1) for a in seen]
    if any(isfinite(a.shock[0]) for a in seen):
        label = "shock, eye to eye at droop, standing, bump, mm"
        rows[label] = [", ".join(as_figures(v * _MM, 1) for v in a.shock) for a in seen]
    for label, values in rows.items():
        table.add_row(label, *values)
    return table


def _curves(seen: tuple[AxleLook, AxleLook]) -> Table:
    """Both axles at droop, ride height and bump."""
    names = ("", "heave", "roll centre", "anti %", "castor", "forwards", "wheel rate")
    table = _plain_table("over the travel: mm, %, deg, mm, N/mm", names)
    for one in seen:
        t = one.travel
        middle = int(abs(t.heave).argmin())
        for place in (0, middle, len(t.heave) - 1):
            table.add_row(
                one.end if place == 0 else "",
                as_figures(t.heave[place] * _MM, 1),
                as_figures(t.roll_centre[place] * _MM, 1),
                as_figures(t.anti[place], 0),
                as_figures(degrees(t.castor[place]), 2),
                as_figures(t.wheelbase[place] * _MM, 2),
                as_figures(t.wheel_rate[place] / _MM, 3),
            )
    return table


def _moves(moves: tuple[Moved, ...], surface: str) -> Table:
    from crossfall.tuning.suspension_record import moved_degrees

    names = ("link end, moved 5 mm", "side", "climb", "descent")
    table = _plain_table(f"what it would do on {surface}, degrees", names)
    for one in moves:
        label = f"{one.part}, {one.end} end {one.axis}"
        if one.why:
            table.add_row(f"{label}: {one.why}", "–", "–", "–")
        else:
            table.add_row(label, *(signed_figures(v, 2) for v in moved_degrees(one)))
    return table
