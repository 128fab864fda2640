"""Pictures of the front door: `crossfall.plot.tip_map(truck).save("tips.svg")`.

Each function takes a truck (or a file, or a demo truck's name) and gives a `Picture`, which a
notebook shows by itself.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from crossfall.front.results import heading as heading_words
from crossfall.front.vehicle import Vehicle, answers, vehicle_of

if TYPE_CHECKING:
    from matplotlib.figure import Figure

    from crossfall.answers.conditions import Hold
    from crossfall.study.unbeaten import Sense

ANGLES = ("tip_deg", "rigid_deg", "compliant_deg", "rail_deg", "trial_deg")
ROUND = tuple(15.0 * i for i in range(24))
AnyTruck = Vehicle | str | PathLike[str]

__all__ = ["Picture", "budget", "drawing", "front", "loads", "sweep_map", "tip_map"]


@dataclass(frozen=True)
class Picture:
    """A drawn page, shown by notebooks. figure: matplotlib's, for a hand of your own in it."""

    figure: Figure

    def save(self, path: str | PathLike[str]) -> Path:
        """Write it as .svg, .pdf or .png: the same bytes each time. Raises InputError."""
        from crossfall.show.style import save

        save(self.figure, Path(path))
        return Path(path)

    def _repr_png_(self) -> bytes:
        from crossfall.show.style import render

        return render(self.figure, "png")

    def __repr__(self) -> str:
        width, height = self.figure.get_size_inches() * 25.4
        return f"Picture, {width:.0f} x {height:.0f} mm"


def tip_map(
    truck: AnyTruck,
    heading: Iterable[float] = ROUND,
    *,
    surface: str | None = None,
    grip: float | None = None,
    hold: Hold = "brakes",
    trial: bool = False,
) -> Picture:
    """Where it goes over all round, seen from above, and where it slides first.

    heading: deg. Other arguments as for `Vehicle.tip`.
    """
    from crossfall.show.polar import draw_polar

    vehicle = vehicle_of(truck)
    found = answers(vehicle, heading, surface, grip, hold, trial=trial)
    return Picture(draw_polar(found, vehicle.model))


def budget(
    truck: AnyTruck,
    heading: float | Iterable[float] | None = None,
    *,
    surface: str | None = None,
    grip: float | None = None,
    hold: Hold = "brakes",
    trial: bool = False,
) -> Picture:
    """Where the degrees go, from the rigid truck to the trial. Arguments as for `Vehicle.tip`."""
    from crossfall.show.budget import draw_budget

    return Picture(
        draw_budget(answers(vehicle_of(truck), heading, surface, grip, hold, trial=trial))
    )


def drawing(truck: AnyTruck) -> Picture:
    """The truck to scale from the side, the rear and above, with CG and tip lines."""
    from crossfall.show.drawings import draw_truck

    return Picture(draw_truck(vehicle_of(truck).model))


def loads(
    truck: AnyTruck,
    heading: float,
    *,
    surface: str | None = None,
    grip: float | None = None,
    hold: Hold = "brakes",
) -> Picture:
    """What each tyre carries in a virtual trial as the table rises."""
    from crossfall.show.loads import draw_loads

    vehicle = vehicle_of(truck)
    (one,) = answers(vehicle, heading, surface, grip, hold, trial=True).answers
    return Picture(draw_loads(one, vehicle.model))


def front(rows: Iterable[Mapping[str, Any]], aims: Mapping[str, Sense], title: str = "") -> Picture:
    """The rows of a sweep that no other beats in two or three columns at once, among all others.

    aims: "high" or "low" for each column. Raises ValueError where a column is not there.
    """
    from crossfall.show.unbeaten import draw_unbeaten

    rows = list(rows)
    for name in aims:
        if not rows or name not in rows[0]:
            raise ValueError(f"there is no column '{name}'")
    names = [*aims, *(["heading_deg"] if "heading_deg" in rows[0] else [])]
    columns = {k: np.array([np.nan if r[k] is None else r[k] for r in rows]) for k in names}
    return Picture(draw_unbeaten(columns, aims, title))


def sweep_map(
    rows: Iterable[Mapping[str, Any]], x: str, y: str, value: str = "tip_deg", title: str = ""
) -> Picture:
    """A map of tip angles over two columns of a sweep's rows that form a grid, and where it
    slides first.

    value: which column, of ANGLES. Where several rows share a point their mean is drawn. Raises
    ValueError where a column is not there, or the grid has no area.
    """
    from crossfall.show.maps import MapPanel, draw_maps

    rows = list(rows)
    if value not in ANGLES:
        raise ValueError(f"{value} is no tip angle; {', '.join(ANGLES)} are")
    for name in (x, y, value):
        if not rows or name not in rows[0]:
            raise ValueError(
                f"no column '{name}'; there are {', '.join(rows[0]) if rows else 'no rows'}"
            )
    xs, ys = (np.unique([float(r[k]) for r in rows]) for k in (x, y))
    if len(xs) < 2 or len(ys) < 2:
        raise ValueError(f"{x} has {len(xs)} values and {y} has {len(ys)}; two of each are needed")
    grids = []
    for name in (value, "slide_deg"):
        total, count = np.zeros((len(ys), len(xs))), np.zeros((len(ys), len(xs)))
        for row in rows:
            known = row.get(name)
            if isinstance(known, (int, float)):
                at = np.searchsorted(ys, row[y]), np.searchsorted(xs, row[x])
                total[at] += known
                count[at] += 1
        grids.append(
            np.radians(np.divide(total, count, out=np.full(total.shape, np.nan), where=count > 0))
        )
    panel = MapPanel("", xs, ys, grids[0], grids[1])
    return Picture(draw_maps(title or "Tip angle", heading_words(x), heading_words(y), [panel]))
