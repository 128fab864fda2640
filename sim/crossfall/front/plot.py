"""Pictures of the front door: `crossfall.plot.tip_map(truck).save("tips.svg")`.

Each function takes a truck (or a file, or a demo truck's name) and gives a `Picture`, which a
notebook shows by itself.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import compress
from os import PathLike
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from crossfall.front.asking import Holding, answers
from crossfall.front.results import Result
from crossfall.front.results import heading as heading_words
from crossfall.front.vehicle import Vehicle, vehicle_of
from crossfall.show.style import LIGHT

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from crossfall.answers.conditions import Hold
    from crossfall.front.studies import Indices
    from crossfall.show.maps import MapPanel
    from crossfall.study.unbeaten import Sense

ANGLES = ("tip_deg", "rigid_deg", "compliant_deg", "rail_deg", "trial_deg")
ROUND = tuple(15.0 * i for i in range(24))
Rows = Iterable[Mapping[str, Any]]
AnyTruck = Vehicle | str | PathLike[str]

COLOURS = LIGHT

__all__ = [
    *("Picture", "page", "COLOURS", "tip_map", "budget", "drawing", "tilted", "loads"),
    *("gains", "suspension", "sheet", "sweep_map", "indices", "front"),
]


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


@contextmanager
def page(
    title: str,
    under: str = "",
    *,
    xlabel: str = "",
    ylabel: str = "",
    size: tuple[float, float] = (178.0, 92.0),
    left: float = 18.0,
    legend: float = 0.0,
) -> Iterator[Axes]:
    """matplotlib axes of your own in the house's style: `with crossfall.plot.page("Title") as axes`
    and after it `crossfall.plot.Picture(axes.figure)`; colours by role in COLOURS.

    under: a line below the title. size: mm, width and height. left: mm for the labels of the
    y-axis. legend: mm kept free at the right, where the legend of what has a label then stands.
    """
    import matplotlib.style

    from crossfall.show.style import STYLE_SETTINGS, axes_at, figure
    from crossfall.show.style import title as write_title

    width, height = size
    with matplotlib.style.context(STYLE_SETTINGS, after_reset=True):
        made = figure(width, height)
        top = 22.0 if under else 16.0
        axes = axes_at(made, left, 14.0, width - left - max(legend, 8.0), height - 14.0 - top)
        axes.set(xlabel=xlabel, ylabel=ylabel)
        write_title(made, title, under)
        yield axes
        if legend and axes.get_legend() is None and axes.get_legend_handles_labels()[0]:
            axes.legend(loc="upper left", bbox_to_anchor=(1.02, 1.0), borderaxespad=0)


def tip_map(
    truck: AnyTruck,
    heading: Iterable[float] = ROUND,
    *,
    surface: str | None = None,
    grip: float | None = None,
    hold: Holding = "brakes",
    trial: bool = False,
) -> Picture:
    """Where it goes over all round, seen from above, and where it slides first.

    heading: deg. Other arguments as for `Vehicle.tip`.
    """
    from crossfall.show.polar import draw_polar

    vehicle = vehicle_of(truck)
    found = answers(vehicle.loaded, heading, surface, grip, hold, trial=trial)
    return Picture(draw_polar(found, vehicle.model))


def budget(
    truck: AnyTruck,
    heading: float | Iterable[float] | None = None,
    *,
    surface: str | None = None,
    grip: float | None = None,
    hold: Holding = "brakes",
    trial: bool = False,
) -> Picture:
    """Where the degrees go, from the rigid truck to the trial. Arguments as for `Vehicle.tip`."""
    from crossfall.show.budget import draw_budget

    return Picture(
        draw_budget(answers(vehicle_of(truck).loaded, heading, surface, grip, hold, trial=trial))
    )


def drawing(truck: AnyTruck) -> Picture:
    """The truck to scale from the side, the rear and above, with CG and tip lines."""
    from crossfall.show.drawings import draw_truck

    return Picture(draw_truck(vehicle_of(truck).model))


def tilted(truck: AnyTruck, heading: float, table: float, trial: Result | None = None) -> Picture:
    """The truck on the table, seen along its hinge, with the plumb line from its CG.

    heading, table: deg. trial: what `Vehicle.trial` found of this truck, on its own heading: then
    it leans as it did there, with its tyres' loads as arrows; without, it is a block. Raises
    ValueError where the trial never had the table there.
    """
    from crossfall.show.tiltpose import draw_tiltpose, level, recorded

    model, psi, theta = vehicle_of(truck).model, np.radians(heading), np.radians(table)
    if trial is None:
        return Picture(draw_tiltpose(model, float(psi), float(theta), level()))
    record = trial.record
    if not record.theta[0] <= theta <= record.theta[-1]:
        first, last = np.degrees(record.theta[[0, -1]])
        raise ValueError(f"the trial's table went from {first:.1f} to {last:.1f} degrees")
    i, psi = int(np.searchsorted(record.theta, theta)), np.radians(trial.heading_deg)
    pose, at = recorded(record, i), float(record.theta[i])
    return Picture(draw_tiltpose(model, float(psi), at, pose, record.loads[i]))


def gains(
    truck: AnyTruck, *, surface: str | None = None, hold: Hold = "brakes", rigid: bool = False
) -> Picture:
    """Where on the truck a gram helps and where it hurts, by direction. See `Vehicle.gains`."""
    from crossfall.show.gainmap import draw_gainmap
    from crossfall.tuning.gains import gradients
    from crossfall.verbs.gains import panels, where

    loaded = vehicle_of(truck).loaded
    found = gradients(loaded, "rigid" if rigid else "compliant", surface=surface, hold=hold)
    return Picture(draw_gainmap(found.truck, panels(found), where(found)))


def suspension(truck: AnyTruck) -> Picture:
    """Links, instant centres and roll axis to scale, and their curves over the travel."""
    from crossfall.show.suspension import draw_suspension
    from crossfall.tuning.suspension import look

    model = vehicle_of(truck).model
    return Picture(draw_suspension(model, look(model)))


def sheet(
    truck: AnyTruck,
    before: AnyTruck | None = None,
    *,
    surface: str | None = None,
    hold: Hold = "brakes",
) -> Picture:
    """The set-up sheet, one A4 page, as `crossfall sheet` writes it. before: the truck it is
    compared with. Other arguments as for `Vehicle.tip`. Raises InputError."""
    from crossfall.show.sheet.facts import gather
    from crossfall.show.sheet.page import draw_sheet

    old = None if before is None else vehicle_of(before).loaded
    return Picture(draw_sheet(gather(vehicle_of(truck).loaded, old, surface, hold=hold)))


def indices(found: Indices, title: str = "") -> Picture:
    """Which axis matters: bars of what `crossfall.sensitivity` found, a block a heading, with 95 %
    whiskers."""
    from crossfall.show.indices import draw_sensitivity

    return Picture(draw_sensitivity(title or found.name, found.found, found.how))


def loads(
    truck: AnyTruck,
    heading: float,
    *,
    surface: str | None = None,
    grip: float | None = None,
    hold: Holding = "brakes",
) -> Picture:
    """What each tyre carries in a virtual trial as the table rises."""
    from crossfall.show.loads import draw_loads

    vehicle = vehicle_of(truck)
    (one,) = answers(vehicle.loaded, heading, surface, grip, hold, trial=True).answers
    return Picture(draw_loads(one, vehicle.model))


def front(rows: Iterable[Mapping[str, Any]], aims: Mapping[str, Sense], title: str = "") -> Picture:
    """The rows of a sweep that no other beats in two or three columns at once, among all others.

    aims: "high" or "low" for each column. Builds are compared on one heading and under the same
    hold, surface, engine and trial only, in the first MOST_FRONTS of these. Raises ValueError where
    a column is not there or empty.
    """
    from crossfall.show.unbeaten import MOST_FRONTS, draw_unbeaten

    how = getattr(rows, "how", "")
    rows = list(rows)
    for name in aims:
        if not rows or name not in rows[0]:
            raise ValueError(f"there is no column '{name}'")
    columns = {k: np.array([np.nan if r[k] is None else r[k] for r in rows], float) for k in aims}
    there = np.all([np.isfinite(v) for v in columns.values()], axis=0)
    if not there.any():
        raise ValueError(f"no row has {' and '.join(aims)}")
    heading = np.array([r.get("heading_deg", np.nan) for r in rows], float)
    panels = [
        (", ".join(filter(None, (f"heading {h:g}°", words))), there & some & (heading == h))
        for h in np.unique(heading[there])
        for words, some in _alike(rows)
    ]
    panels = [(words, some) for words, some in panels if some.any()][:MOST_FRONTS]
    return Picture(draw_unbeaten(columns, aims, panels or [("", there)], title, how))


def sweep_map(
    rows: Rows | Mapping[str, Rows],
    x: str,
    y: str,
    value: str = "tip_deg",
    title: str = "",
    mark: tuple[float, float] | None = None,
) -> Picture:
    """A map of one answer over two columns of a sweep's rows that form a grid, of tips with where
    it slides first; of several sweeps, {name: rows}, beside each other on one scale.

    value: which column, of ANGLES or any other of numbers, as a response of your own. mark: a place
    to ring, as the truck as it is. Each hold, surface, engine and trial has a map of its own; where
    several rows of it share a point their mean is drawn. Raises ValueError where a column is not
    there or has no numbers, or the grid has no area.
    """
    from crossfall.show.maps import draw_maps

    named = rows if isinstance(rows, Mapping) else {"": rows}
    how = getattr(next(iter(named.values()), ()), "how", "") if len(named) == 1 else ""
    lists = {name: list(some) for name, some in named.items()}
    panels = [
        _panel(", ".join(filter(None, (name, words))), list(compress(some, own)), x, y, value, mark)
        for name, some in lists.items()
        for words, own in _alike(some)
    ]
    tips, shown = value in ANGLES, heading_words(value)
    said = "tip angle" if tips else shown.partition(",")[0]
    names = title or said[:1].upper() + said[1:], heading_words(x), heading_words(y)
    return Picture(draw_maps(*names, panels, how, shown="" if tips else shown))


def _alike(rows: Sequence[Mapping[str, Any]]) -> list[tuple[str, Any]]:
    """Which rows (n,) share hold, surface, engine and trial, and these in words where they vary."""
    from crossfall.study.scenario_file import WORDS
    from crossfall.study.summary import same_words

    words = {k: np.array([r.get(k) for r in rows], object) for k in WORDS if rows and k in rows[0]}
    return same_words(words, len(rows))


def _panel(
    name: str, rows: list[Mapping[str, Any]], x: str, y: str, value: str, mark: Any
) -> MapPanel:
    from crossfall.show.maps import MapPanel

    for column in (x, y, value):
        if not rows or column not in rows[0]:
            raise ValueError(
                f"no column '{column}'; there are {', '.join(rows[0]) if rows else 'no rows'}"
            )
    xs, ys = (np.unique([float(r[k]) for r in rows]) for k in (x, y))
    if len(xs) < 2 or len(ys) < 2:
        raise ValueError(f"{x} has {len(xs)} values and {y} has {len(ys)}; two of each are needed")
    grids = []
    for column in (value, "slide_deg"):
        total, count = np.zeros((len(ys), len(xs))), np.zeros((len(ys), len(xs)))
        for row in rows:
            known = row.get(column)
            if isinstance(known, (int, float)):
                at = np.searchsorted(ys, row[y]), np.searchsorted(xs, row[x])
                total[at] += known
                count[at] += 1
        grids.append(np.divide(total, count, out=np.full(total.shape, np.nan), where=count > 0))
    if not np.isfinite(grids[0]).any():
        raise ValueError(f"no row has a number for {value}")
    return MapPanel(name, xs, ys, grids[0], grids[1] if value in ANGLES else None, mark)
