"""Angle budget: how the rigid promise comes down to the trial, as stairs per heading."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure
from matplotlib.patches import Polygon, Rectangle

from crossfall.answers.answer import Answers, TipAnswer
from crossfall.answers.figures import signed_figures
from crossfall.show.paper import haloed
from crossfall.show.polar import ground_words
from crossfall.show.style import BODY, HEADING, LIGHT, SMALL, paper_page, styled, text_size, title

ROW, HEAD, FOOT = 27.5, 27.0, 18.0  # mm
NAME, CHART, EDGE = 62.0, 118.0, 10.0  # widths in mm: names, stairs, right margin
STAIRS = (
    ("tyres squash", LIGHT.tyre, ""),
    ("tyres give along the ground", LIGHT.unsprung, ""),
    ("body rises on its springs", LIGHT.sprung, ""),
    ("body leans and pitches", LIGHT.link, ""),
    ("remainder", LIGHT.paper, "/////"),
)
LEAST_SPAN = np.radians(2.0)  # a budget of hundredths is not blown up to look like a loss


@styled
def draw_budget(found: Answers, most: int = 8) -> Figure:
    """One flight of stairs per heading, all on one scale of degrees lost from the rigid answer.

    Where more than `most` headings were asked, the weakest ones are shown, in order of heading.
    """
    answers = sorted(found.answers, key=lambda a: (not np.isfinite(a.tip), a.tip))[:most]
    answers.sort(key=lambda a: a.conditions.heading)
    height = HEAD + ROW * len(answers) + FOOT
    made, axes = paper_page(NAME + CHART + EDGE, height)
    reached = [levels(a) for a in answers] + [_ends(a) for a in answers]
    losses = np.concatenate(reached)
    low, high = min(float(np.min(losses)), -LEAST_SPAN), max(0.0, float(np.max(losses)))
    pad = 0.10 * (high - low)
    k = CHART / (high - low + 2 * pad)
    zero = NAME + k * (pad - low)
    _ruler(axes, zero, k, (low - pad, high + pad), height)
    for i, answer in enumerate(answers):
        _flight(axes, answer, zero, k, height - HEAD - ROW * i)
    _key(axes)
    on = ground_words(answers[0].conditions)
    under = f"{on}: degrees lost from the rigid answer, step by step, to the trial"
    title(made, f"{found.truck}: angle budget", under)
    return made


def levels(answer: TipAnswer) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """(k,) rad, height of each landing over the rigid answer; without a trial one less."""
    steps = [gain for _, gain in answer.budget.steps if np.isfinite(gain)]
    return np.concatenate([[0.0], np.cumsum(steps)])


def _ends(answer: TipAnswer) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """(2,) rad, 95 % range of the compliant answer over the rigid one; empty where none is."""
    ends = np.asarray(answer.range.tip) - answer.rigid
    return ends[np.isfinite(ends)]


def _ruler(axes: Axes, zero: float, k: float, span: tuple[float, float], height: float) -> None:
    top, bottom = height - HEAD + 3.0, FOOT - 1.0
    spans = np.degrees(span)
    step = next(s for s in (0.1, 0.2, 0.5, 1, 2, 5, 10, 20) if (spans[1] - spans[0]) / s <= 9)
    first = np.ceil(spans[0] / step)
    for i in range(int(first), int(np.floor(spans[1] / step)) + 1):
        x = zero + k * np.radians(i * step)
        axes.plot([x, x], [bottom, top], color=LIGHT.grid, lw=0.5, zorder=0)
        text = "rigid" if i == 0 else f"{signed_figures(i * step, 1 if step < 1 else 0)}°"
        axes.text(x, top + 1.0, text, size=SMALL, ha="center", color=LIGHT.soft)
    axes.plot([zero, zero], [bottom, top], color=LIGHT.rigid, lw=1.0, ls=(0, (5, 2)), zorder=1)


def _flight(axes: Axes, answer: TipAnswer, zero: float, k: float, top: float) -> None:
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
        if i + 2 < len(landings):
            axes.plot([end, end], [y, y - drop], color=LIGHT.ink, lw=0.6, zorder=2)
        gain = np.degrees(answer.budget.steps[i][1])
        text = signed_figures(gain, 2)
        x = max(start, end) + 1.2
        haloed(axes, x, y + drop / 2, text, size=SMALL, ha="left")
    if len(ends := zero + k * _ends(answer)) == 2:
        _bracket(axes, (float(ends[0]), float(ends[1])), high - drop * len(STAIRS) - 2.8)
    _names(axes, answer, high)
    _end(axes, landings[-1], high - drop * (len(landings) - 1), bool(len(landings) > len(STAIRS)))
    axes.plot([6, NAME + CHART], [top - ROW + 1.5] * 2, color=LIGHT.grid, lw=0.5)


def _end(axes: Axes, x: float, y: float, tried: bool) -> None:
    """Points at the last landing: full where that is the trial, open where only the statics."""
    corners = np.array([(x, y), (x - 1.2, y - 2.0), (x + 1.2, y - 2.0)])
    fill = LIGHT.trial if tried else LIGHT.paper
    edge = LIGHT.trial if tried else LIGHT.compliant
    axes.add_artist(Polygon(corners, fc=fill, ec=edge, lw=0.9, zorder=4))


def _bracket(axes: Axes, ends: tuple[float, float], y: float) -> None:
    """The 95 % range of the compliant answer."""
    (line,) = axes.plot(ends, (y, y), "|-", ms=4, mew=1.2, lw=1.2, color=LIGHT.compliant, zorder=5)
    line.set_gid("range")


def _names(axes: Axes, answer: TipAnswer, high: float) -> None:
    """Heading, case, and what is left of the rigid angle."""
    degrees = np.degrees(answer.conditions.heading) % 360
    axes.text(6, high, f"{degrees:.0f}", size=HEADING, weight="bold", va="top")
    axes.text(15, high, answer.case, size=BODY, va="top")
    rigid, trial = np.degrees(answer.budget.rigid), np.degrees(answer.budget.trial)
    end = f"trial {trial:.2f}°"
    if not np.isfinite(trial):
        name = "rail" if np.isfinite(answer.rail) else "compliant"
        end = f"{name} {np.degrees(answer.tip):.2f}°" if np.isfinite(answer.tip) else "no tip found"
    axes.text(15, high - 4.6, f"rigid {rigid:.2f}°   {end}", size=BODY, va="top", color=LIGHT.soft)
    if answer.slides_first:
        words = f"slides first, at {np.degrees(answer.slide[1]):.1f}°; here against a rail"
        axes.text(15, high - 9.2, words, size=SMALL, va="top", color=LIGHT.soft)


def _key(axes: Axes) -> None:
    x = 6.0
    for text, colour, hatch in STAIRS:
        box = Rectangle((x, 8.6), 5, 3.2, fc=colour, ec=LIGHT.ink, lw=0.5, hatch=hatch or None)
        axes.add_artist(box)
        axes.text(x + 6.5, 10.2, text, size=SMALL, va="center")
        x += 9.5 + text_size(text, SMALL)[0]
    x = 6.0
    for tried, text in ((True, "trial"), (False, "compliant, where no trial tips")):
        _end(axes, x + 2.5, 5.4, tried)
        axes.text(x + 6.5, 4.4, text, size=SMALL, va="center")
        x += 9.5 + text_size(text, SMALL)[0]
    _bracket(axes, (x, x + 5), 4.4)
    axes.text(x + 6.5, 4.4, "95 % range of the compliant answer", size=SMALL, va="center")
