"""How a trial's angle settles as it is computed more finely: a panel a series, on one scale."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np
from matplotlib.figure import Figure

from crossfall.show.style import LIGHT, SMALL, axes_at, figure, styled, title

if TYPE_CHECKING:
    from crossfall.study.convergence import LevelSeries

_ROW, _LEFT, _GAP = 52.0, 18.0, 8.0  # mm
_SAID = {"step": "time step", "solver": "solver rounds", "rate": "tilting rate"}


@styled
def draw_convergence(name: str, how: str, found: Sequence[LevelSeries]) -> Figure:
    """Dots with 95 % bars; the band is the interval of a trial as trials are made."""
    columns = 3
    rows = -(-len(found) // columns)
    wide = (178.0 - _LEFT - 6.0 - _GAP * (columns - 1)) / columns
    made = figure(178.0, 22.0 + rows * _ROW)
    ends = np.degrees([(v.tip, v.low, v.high) for s in found for v in s.levels])
    ends = ends[np.isfinite(ends)]
    low, high = (float(ends.min()), float(ends.max())) if len(ends) else (0.0, 1.0)
    spare = max(0.02, 0.12 * (high - low))
    for k, series in enumerate(found):
        row, column = divmod(k, columns)
        bottom = 12.0 + (rows - 1 - row) * _ROW
        axes = axes_at(made, _LEFT + column * (wide + _GAP), bottom, wide, _ROW - 18.0)
        levels = series.levels
        at = range(len(levels))
        usual = levels[0]
        axes.axhspan(*np.degrees([usual.low, usual.high]), color=LIGHT.grid, zorder=0)
        axes.vlines(at, *np.degrees([(v.low, v.high) for v in levels]).T, color=LIGHT.trial, lw=1)
        axes.plot(at, np.degrees([v.tip for v in levels]), "o", ms=3, color=LIGHT.trial)
        axes.set(xlim=(-0.4, len(levels) - 0.6), ylim=(low - spare, high + spare))
        axes.set_xticks(list(at), ["as usual", *(f"1/{v.finer}" for v in levels[1:])])
        if series.varied == "solver":
            axes.set_xticks(list(at), ["as usual", *(f"{v.finer} times" for v in levels[1:])])
        axes.tick_params(labelleft=column == 0)
        axes.set_ylabel("tips at, deg" if column == 0 else "")
        said = f"{_SAID[series.varied]}, {series.engine}"
        axes.set_title(said, loc="left", fontsize=SMALL, pad=3)
    title(made, f"How the trial converges: {name}", f"{how}; bars and band: 95 % intervals")
    return made
