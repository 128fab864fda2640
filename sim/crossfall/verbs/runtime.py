"""`crossfall runtime TRUCK`: minutes on a pack, and minutes against degrees."""

from __future__ import annotations

from math import degrees
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from crossfall.verbs.common import (
    console,
    emit,
    json_option,
    load_and_warn,
    say_how_it_stands,
    standing_options,
    stood,
    truck_argument,
)
from crossfall.verbs.whatif import (
    by_direction,
    catalogue_of,
    changes_option,
    conditions_record,
    hold_of,
    named_directions,
    now_words,
    rail_option,
    surface_option,
)

if TYPE_CHECKING:
    from crossfall.answers.conditions import Hold
    from crossfall.truck.build import Loaded
    from crossfall.truck.model import Grip
    from crossfall.tuning.battery import RunTime
    from crossfall.tuning.changes import Catalogue
    from crossfall.tuning.packs import Pack


@click.command()
@truck_argument
@changes_option
@click.option(
    "--aim",
    type=click.Choice(["side", "climb", "descent", "worst"]),
    default="side",
    show_default=True,
    help="Which angle to set against the minutes.",
)
@surface_option
@rail_option
@standing_options
@click.option("--plots", type=click.Path(path_type=Path), metavar="DIR", help="Draw the front.")
@json_option
def command(
    truck: str,
    changes: Path | None,
    aim: Any,
    surface: str | None,
    rail: bool,
    hold: str | None,
    steer: float | None,
    plots: Path | None,
    as_json: bool,
) -> None:
    """How long does the pack last, and what do more minutes cost in degrees?

    The power at the truck's work is kept from pack to pack, in proportion to the truck's mass, so
    that more cells give it at less current; packs are compared by their energy at 3.7 V a cell.
    Every combination of changes to the pack is tried; those marked are on the front: nothing else
    gives more of both. Degrees are those on springs and tyres at the surface's own grip, as `tilt`
    has them; where the truck slides first, what it would do against a rail.
    """
    from crossfall.answers.conditions import choose_grip
    from crossfall.truck.complete import how_it_stands
    from crossfall.tuning.changes import Catalogue, change_file_of
    from crossfall.tuning.packs import packs

    loaded = stood(load_and_warn(truck), hold, steer)
    held, grip = hold_of(rail or hold == "rail"), choose_grip(loaded.truck, surface)
    path = change_file_of(loaded.path)
    if changes is None and not path.exists():
        from crossfall.truck.read import Source

        catalogue = Catalogue((), "", Source(str(path), {}, {}))
    else:
        catalogue = catalogue_of(loaded, changes)
    found = packs(loaded, catalogue, surface=surface, hold=held)
    if plots is not None:
        _draw(loaded, catalogue, found, aim, plots)
    if as_json:
        conditions = {
            **conditions_record(grip, held),
            "stands": list(how_it_stands(loaded.spec)),
        }
        emit("runtime", {**_answer(loaded, catalogue, found, aim), **conditions})
    else:
        _show(loaded, catalogue, found, aim, grip, held)
        say_how_it_stands(loaded.spec)


def _answer(
    loaded: Loaded, catalogue: Catalogue, found: tuple[Pack, ...], aim: Any
) -> dict[str, Any]:
    """The packs in tuner's units."""
    from crossfall.tuning.battery import CELL, KEPT, NEGLECTED
    from crossfall.tuning.directions import DIRECTIONS

    now = next(p for p in found if not p.picks)
    return {
        "truck": loaded.truck.name,
        "currency": catalogue.currency or loaded.spec.currency,
        "aim": aim,
        "law": {
            "kept": "power",
            "words": KEPT,
            "measured_on_cells": now.runs.cells if now.runs.how == "measured" else None,
            "nominal_v_per_cell": CELL,
            "neglected": list(NEGLECTED),
        },
        "now": _runs(now.runs),
        "packs": [
            {
                "changes": [catalogue.changes[i].name for i, _ in p.picks],
                "price": p.price,
                **_runs(p.runs),
                "heading_deg": by_direction(p.heading),
                "angle_deg": by_direction(p.angle),
                "slide_likely_deg": by_direction(p.slide),
                "slides_first": named_directions(p.slides),
                "angle_sd_deg": by_direction(p.sd),
                "on_front": p.on_front[DIRECTIONS.index(aim)],
            }
            for p in found
        ],
    }


def _runs(runs: RunTime) -> dict[str, Any]:
    return {
        "run_time_min": runs.minutes,
        "run_time_sd_min": runs.sd / 60,
        "energy_wh": runs.energy / 3600,
        "power_w": runs.power,
        "cells": runs.cells,
        "nominal_v": runs.voltage,
        "current_a": runs.current,
        "current_is": runs.how,
    }


def _name(catalogue: Catalogue, pack: Pack) -> str:
    return ", ".join(catalogue.changes[i].name for i, _ in pack.picks) or "as it is"


def _show(
    loaded: Loaded,
    catalogue: Catalogue,
    found: tuple[Pack, ...],
    aim: Any,
    grip: Grip,
    hold: Hold,
) -> None:
    from rich.markup import escape
    from rich.table import Table

    from crossfall.tuning.battery import CELL, KEPT, NEGLECTED
    from crossfall.tuning.directions import DIRECTIONS, SURE

    out = console()
    as_is = next(p for p in found if not p.picks)
    now = as_is.runs
    how = "measured on this pack" if now.how == "measured" else "estimated from the mass, a guess"
    out.print(
        f"[bold]{escape(loaded.truck.name)}[/bold]: "
        f"{now.minutes:.0f} ± {SURE * now.sd / 60:.0f} min, "
        f"{now.energy / 3600:.1f} Wh usable at {now.power:.0f} W, {now.current:.1f} A from "
        f"{now.cells} cells ({how})"
    )
    for line in now_words(grip, hold, as_is.angle, as_is.heading, as_is.slide, as_is.slides):
        out.print(escape(f"{line[0].upper()}{line[1:]}"))
    aimed = DIRECTIONS.index(aim)
    table = Table(title=f"Minutes against degrees, {aim}", box=None, title_justify="left")
    for name in ("", "pack"):
        table.add_column(name)
    for name in ("min", "Wh", "cells", "A", "degrees", "±", catalogue.currency or "money"):
        table.add_column(name, justify="right")
    for p in found:
        table.add_row(
            "•" if p.on_front[aimed] else "",
            escape(_name(catalogue, p)),
            f"{p.runs.minutes:.1f}",
            f"{p.runs.energy / 3600:.1f}",
            f"{p.runs.cells}",
            f"{p.runs.current:.1f}",
            (r"\[{:.2f}]" if p.slides[aimed] else "{:.2f}").format(degrees(p.angle[aimed])),
            f"{degrees(SURE * p.sd[aimed]):.2f}",
            f"{p.price:g}",
        )
    out.print(table)
    out.print("•: on the front, nothing else gives more of both. ±: 95 %.")
    if any(p.slides[aimed] for p in found):
        out.print(r"\[ ]: it slides first, and would tip there against a rail.", style="dim")
    out.print(f"{KEPT[0].upper()}{KEPT[1:]}. Packs are compared by energy at {CELL:g} V a cell.")
    out.print(f"Left out: {'; '.join(NEGLECTED)}.")


def _draw(
    loaded: Loaded, catalogue: Catalogue, found: tuple[Pack, ...], aim: Any, folder: Path
) -> None:
    import numpy as np

    from crossfall.show.front import Choices, draw_front
    from crossfall.show.style import save
    from crossfall.tuning.directions import DIRECTIONS

    aimed = DIRECTIONS.index(aim)
    longest = max(p.runs.minutes for p in found)
    choices = Choices(
        cost=np.array([longest - p.runs.minutes for p in found]),
        gain=np.array([degrees(p.angle[aimed]) for p in found]),
        sd=np.array([degrees(p.sd[aimed]) for p in found]),
        names=tuple(_name(catalogue, p) for p in found),
        cost_name=f"minutes given up, of {longest:.0f}",
        gain_name=f"{aim}, degrees",
        now=next(k for k, p in enumerate(found) if not p.picks),
    )
    folder.mkdir(parents=True, exist_ok=True)
    picture = draw_front(choices, f"{loaded.truck.name}: minutes against degrees")
    save(picture, folder / f"{loaded.truck.name}-runtime.svg")
