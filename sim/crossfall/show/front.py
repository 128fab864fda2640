"""The trade between two things one wants: what is worth having, and what is beaten."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from numpy.typing import NDArray

from crossfall.show.paper import label_places
from crossfall.show.style import LIGHT, SMALL, axes_at, figure, styled, text_size, title
from crossfall.study.unbeaten import unbeaten
from crossfall.truck.model import Array

WIDTH, HEIGHT = 178.0, 118.0  # mm
_SURE = 1.96  # standard uncertainties; 95 %
LEFT, BOTTOM, ACROSS, UP = 18.0, 14.0, 98.0, 84.0  # mm, the axes; names stand to their right


@dataclass(frozen=True)
class Choices:
    """Sets to choose from. cost, gain: (n,) in the units of their names; sd: (n,) of the gain, one
    standard uncertainty; drawn is 95 %.

    names: (n,) words for each. now: index of the truck as it is, or None. best: index of the
    set proposed, or None.
    """

    cost: Array
    gain: Array
    sd: Array
    names: tuple[str, ...]
    cost_name: str
    gain_name: str
    now: int | None = None
    best: int | None = None


def on_front(cost: Array, gain: Array) -> NDArray[np.intp]:
    """Indices of the choices that no other beats (less cost, no less gain), cheapest first."""
    kept = np.flatnonzero(unbeaten({"cost": cost, "gain": gain}, {"cost": "low", "gain": "high"}))
    first = np.unique(np.asarray(cost)[kept], return_index=True)[1]  # one of those that are alike
    return np.asarray(kept[first], dtype=np.intp)


@styled
def draw_front(choices: Choices, name: str, most: int = 14) -> Figure:
    """Front as steps, with every choice as a dot; members of the front named at the right."""
    made = figure(WIDTH, HEIGHT)
    axes = axes_at(made, LEFT, BOTTOM, ACROSS, UP)
    front = on_front(choices.cost, choices.gain)
    x, y = choices.cost[front], choices.gain[front]
    axes.plot(
        choices.cost, choices.gain, "o", ms=3, mfc="none", mec=LIGHT.faint, mew=0.7, gid="all"
    )
    axes.step(x, y, where="post", color=LIGHT.compliant, lw=1.2, gid="front")
    half = _SURE * choices.sd[front]
    axes.fill_between(
        x, y - half, y + half, step="post", fc=LIGHT.compliant, alpha=0.15, ec="none", zorder=1
    )
    axes.plot(x, y, "o", ms=4.5, color=LIGHT.compliant, zorder=4)
    _special(axes, choices)
    axes.set(xlabel=choices.cost_name, ylabel=choices.gain_name)
    axes.margins(x=0.06, y=0.08)
    _names(axes, choices, front[_worth_naming(y, most)])
    under = "each step is a set that nothing cheaper matches; the band is 95 %"
    title(made, name, under)
    return made


def _worth_naming(gain: Array, most: int) -> NDArray[np.intp]:
    """Which members to name: the ends, and between them the largest gains."""
    if len(gain) <= most:
        return np.arange(len(gain))
    rises = np.diff(gain, prepend=np.inf)
    rises[[0, -1]] = np.inf
    return np.sort(np.argsort(-rises, kind="stable")[:most])


def _special(axes: Axes, choices: Choices) -> None:
    for index, mark, colour, words in (
        (choices.now, "s", LIGHT.ink, "as it is"),
        (choices.best, "*", LIGHT.trial, "proposed"),
    ):
        if index is not None:
            x, y = choices.cost[index], choices.gain[index]
            size = 12 if mark == "*" else 6
            axes.plot(x, y, mark, ms=size, color=colour, mec=LIGHT.paper, zorder=5, label=words)
    if choices.now is not None or choices.best is not None:
        axes.legend(loc="upper left", numpoints=1, handletextpad=0.2)


def _names(axes: Axes, choices: Choices, members: NDArray[np.intp]) -> None:
    """Names in a column, in order of gain, each with a leader from its point."""
    low, high = axes.get_ylim()
    left, right = axes.get_xlim()
    wanted = BOTTOM + UP * (choices.gain[members] - low) / (high - low)
    rows = [text_size("x", SMALL)[1] + 1.4] * len(members)
    places = label_places(list(wanted), rows, BOTTOM - 2.0, BOTTOM + UP + 4.0)
    space = WIDTH - LEFT - ACROSS - 11.0
    for i, at in zip(members, places, strict=True):
        v = low + (high - low) * (at - BOTTOM) / UP
        u = right + (right - left) * 6.0 / ACROSS
        knee = right + (right - left) * 1.0 / ACROSS
        x, y = choices.cost[i], choices.gain[i]
        axes.plot([x, knee, u], [y, y, v], color=LIGHT.faint, lw=0.5, clip_on=False, zorder=0.9)
        weight = "bold" if i == choices.best else "normal"
        text = _cut(choices.names[i], space, weight)
        axes.text(u, v, f" {text}", size=SMALL, va="center", weight=weight)
    axes.set(xlim=(left, right), ylim=(low, high))


def _cut(text: str, space: float, weight: str) -> str:
    """The text, shortened with dots to fit `space` mm."""
    while text_size(text, SMALL, weight)[0] > space:
        text = text.rstrip("…")[:-1].rstrip() + "…"
    return text
