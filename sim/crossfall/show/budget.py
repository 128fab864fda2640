"""Angle budget: how the rigid promise comes down to the trial, as stairs per heading."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import Polygon, Rectangle

from crossfall.compare import Comparison, HeadingAnswer
from crossfall.show.paper import haloed
from crossfall.show.polar import best_angle
from crossfall.show.style import BODY, HEADING, LIGHT, SMALL, page, styled, text_size, title

ROW, HEAD, FOOT = 27.5, 27.0, 17.0  # mm
NAME, CHART, EDGE = 62.0, 118.0, 10.0  # widths in mm: names, stairs, right margin
STAIRS = (
    ("tyres squash", LIGHT.tyre, ""),
    ("body rises on its springs", LIGHT.sprung, ""),
    ("body leans and pitches", LIGHT.link, ""),
    ("tyres hold their ground", LIGHT.unsprung, ""),
    ("remainder", LIGHT.paper, "/////"),
)
LEAST_SPAN = np.radians(2.0)  # a budget of hundredths is not blown up to look like a loss


@styled
def draw_budget(comparison: Comparison, most: int = 8) -> Figure:
    """One flight of stairs per heading, all on one scale of degrees lost from the rigid answer.

    Where more than `most` headings were asked, the weakest ones are shown, in order of heading.
    """
    answers = sorted(comparison.answers, key=best_angle)[:most]
    answers.sort(key=lambda a: a.heading)
    height = HEAD + ROW * len(answers) + FOOT
    made, axes = page(NAME + CHART + EDGE, height)
    losses = np.concatenate([levels(a) for a in answers])
    low, high = min(float(np.min(losses)), -LEAST_SPAN), max(0.0, float(np.max(losses)))
    pad = 0.10 * (high - low)
    k = CHART / (high - low + 2 * pad)
    zero = NAME + k * (pad - low)
    _ruler(axes, zero, k, (low - pad, high + pad), height)
    for i, answer in enumerate(answers):
        _flight(axes, answer, zero, k, height - HEAD - ROW * i)
    _key(axes)
    under = "degrees lost from the rigid answer, step by step, to the trial"
    title(made, f"{comparison.truck}: angle budget", under)
    return made


def levels(answer: HeadingAnswer) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """(k,) rad, height of each landing over the rigid answer; without a trial one less."""
    steps = [gain for _, gain in answer.budget.steps if np.isfinite(gain)]
    return np.concatenate([[0.0], np.cumsum(steps)])


def _ruler(axes: Axes, zero: float, k: float, span: tuple[float, float], height: float) -> None:
    top, bottom = height - HEAD + 3.0, FOOT - 1.0
    spans = np.degrees(span)
    step = next(s for s in (0.1, 0.2, 0.5, 1, 2, 5, 10, 20) if (spans[1] - spans[0]) / s <= 9)
    first = np.ceil(spans[0] / step)
    for i in range(int(first), int(np.floor(spans[1] / step)) + 1):
        x = zero + k * np.radians(i * step)
        axes.plot([x, x], [bottom, top], color=LIGHT.grid, lw=0.5, zorder=0)
        text = "rigid" if i == 0 else f"{i * step:+g}°".replace("-", "−")
        axes.text(x, top + 1.0, text, size=SMALL, ha="center", color=LIGHT.soft)
    axes.plot([zero, zero], [bottom, top], color=LIGHT.rigid, lw=1.0, ls=(0, (5, 2)), zorder=1)


def _flight(axes: Axes, answer: HeadingAnswer, zero: float, k: float, top: float) -> None:
    landings = zero + k * levels(answer)
    high, drop = top - 2.0, (ROW - 9.5) / len(STAIRS)
    for i, (start, end) in enumerate(pairwise(landings)):
        _, colour, hatch = STAIRS[i]
        y = high - drop * (i + 1)
        box = Rectangle((start, y), end - start, drop, fc=colour, ec=LIGHT.ink, lw=0.6, zorder=3)
        box.set_gid(f"step {i}")
        if hatch:
            box.set_hatch(hatch)
        axes.add_artist(box)
        axes.plot(
            [end, end],
            [y, y - (drop if i < len(STAIRS) - 1 else 0)],
            color=LIGHT.ink,
            lw=0.6,
            zorder=2,
        )
        gain = np.degrees(answer.budget.steps[i][1])
        text = f"{gain:+.2f}".replace("-", "−")
        x = max(start, end) + 1.2
        haloed(axes, x, y + drop / 2, text, size=SMALL, ha="left")
    if answer.friction_decides:
        reach = zero + k * (np.asarray(answer.window) - answer.rigid)
        _bracket(axes, (float(reach[0]), float(reach[1])), high - drop * len(STAIRS) - 2.8)
    _names(axes, answer, high)
    last = landings[-1]
    foot = high - drop * (len(landings) - 1)
    tip = np.array([(last, foot), (last - 1.2, foot - 2.0), (last + 1.2, foot - 2.0)])
    axes.add_artist(Polygon(tip, fc=LIGHT.trial, ec="none", zorder=4))
    axes.plot([6, NAME + CHART], [top - ROW + 1.5] * 2, color=LIGHT.grid, lw=0.5)


def _bracket(axes: Axes, ends: tuple[float, float], y: float) -> None:
    """The window over both friction closures, within which the trial should end."""
    (line,) = axes.plot(ends, (y, y), "|-", ms=4, mew=1.2, lw=1.2, color=LIGHT.compliant, zorder=5)
    line.set_gid("window")


def _names(axes: Axes, answer: HeadingAnswer, high: float) -> None:
    """Heading, case, and what is left of the rigid angle."""
    degrees = np.degrees(answer.heading) % 360
    axes.text(6, high, f"{degrees:.0f}", size=HEADING, weight="bold", va="top")
    axes.text(15, high, answer.case, size=BODY, va="top")
    rigid, trial = np.degrees(answer.budget.rigid), np.degrees(answer.budget.trial)
    end = f"trial {trial:.2f}°"
    if not np.isfinite(trial):
        found = np.degrees(answer.budget.compliant)
        end = f"compliant {found:.2f}°" if np.isfinite(found) else "no tip found"
    axes.text(15, high - 4.6, f"rigid {rigid:.2f}°   {end}", size=BODY, va="top", color=LIGHT.soft)
    if answer.friction_decides:
        low, top = np.degrees(answer.window)
        words = f"friction decides: {low:.1f} to {top:.1f}°"
        axes.text(15, high - 9.2, words, size=SMALL, va="top", color=LIGHT.soft)


def _key(axes: Axes) -> None:
    x = 6.0
    for text, colour, hatch in STAIRS:
        box = Rectangle((x, 7.0), 5, 3.2, fc=colour, ec=LIGHT.ink, lw=0.5, hatch=hatch or None)
        axes.add_artist(box)
        axes.text(x + 6.5, 8.6, text, size=SMALL, va="center")
        x += 9.5 + text_size(text, SMALL)[0]
    _bracket(axes, (x, x + 5), 8.6)
    axes.text(x + 6.5, 8.6, "friction's window", size=SMALL, va="center")
