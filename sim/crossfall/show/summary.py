"""The page for the morning after: what ran, what failed and why, what surprises, and maps.

One HTML file with its pictures inside, nothing fetched from anywhere.
"""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np
from matplotlib.collections import PolyCollection
from matplotlib.colors import ListedColormap
from matplotlib.figure import Figure
from matplotlib.patches import Patch
from matplotlib.ticker import MaxNLocator

from crossfall.answers.conditions import case_name
from crossfall.answers.figures import signed_figures
from crossfall.show.maps import WIDTH, MapPanel, draw_maps, plain_name
from crossfall.show.style import LIGHT, axes_at, figure, styled, svg_element, title
from crossfall.show.unbeaten import MOST_FRONTS, draw_unbeaten
from crossfall.study.dictionary import citation, describe_column
from crossfall.study.scenario import Scenario
from crossfall.study.scenario_file import DRIVES, AimsSpec, MapSpec
from crossfall.study.summary import Morning, by_words, how_asked, numbers, summarize
from crossfall.truck.files import write_atomically
from crossfall.truck.model import Array

_SUMMARY_FILE = "morning.html"
BINS = 12  # a side at most, where the points of a map stand on no grid
_MOST_PANELS = 9
_FATES = ("stands", "stuck", "slides", "tips")  # from good to bad
_Columns = dict[str, Any]


def write_page(scenario: Scenario, folder: Path) -> Path:
    """Write the page of the results in `folder`; returns its path. InputError without results."""
    path = folder / _SUMMARY_FILE
    write_atomically(path, summary_page(summarize(scenario, folder)))
    return path


def summary_page(morning: Morning) -> str:
    """The page as HTML text; the same results give the same text."""
    from jinja2 import Environment, select_autoescape

    environment = Environment(autoescape=select_autoescape(default=True), trim_blocks=True)
    environment.filters["deg"] = lambda v: "–" if v is None or math.isnan(v) else f"{v:.2f}"
    environment.filters["fine"] = lambda v: "–" if math.isnan(v) else f"{v:.3f}"
    environment.filters["percent"] = lambda v: "–" if math.isnan(v) else f"{100 * v:.0f} %"
    environment.filters["signed"] = lambda v: signed_figures(v, 2)
    environment.filters["thousands"] = lambda v: f"{v:,}"
    from crossfall.study.slopes import left_out

    spec, truck = morning.scenario.spec, morning.scenario.loaded.truck
    pictures = [svg_element(f, f"map{i}") for i, f in enumerate(figures(morning))]
    return environment.from_string(_PAGE).render(
        m=morning,
        spec=spec,
        how=how_asked(morning.scenario),
        pictures=pictures,
        took=_hours(morning.took),
        undrawn=undrawn(morning),
        left_out=left_out(truck) if spec.method in DRIVES else (),
        tips_first=any(not math.isnan(h.tips_first) for h in morning.headings),
        versions=json.loads(morning.versions or "{}"),
        dictionary={c: describe_column(c, spec.responses) for c in morning.columns},
        cite=citation(
            spec.name, json.loads(morning.versions or "{}").get("crossfall", ""), morning.digest
        ),
    )


def figures(morning: Morning) -> list[Figure]:
    """The maps the scenario asks for, as far as its results allow, and trials against statics."""
    drawn = []
    for wanted in morning.scenario.spec.map:
        drawn += draw_map(morning.columns, wanted, how_asked(morning.scenario))
    for front in morning.scenario.spec.front:
        drawn += _fronts(morning, front)
    if "trial_less_compliant_deg" in morning.columns:
        apart = numbers(morning.columns, "trial_less_compliant_deg")
        if np.isfinite(apart).sum() > 1:
            drawn.append(draw_agreement(morning.columns, how_asked(morning.scenario)))
    return drawn


def undrawn(morning: Morning) -> list[str]:
    """A sentence for each picture the scenario asks for and its results do not allow."""
    spec, said = morning.scenario.spec, []
    for wanted in spec.map:
        if not draw_map(morning.columns, wanted):
            over = f"{plain_name(wanted.x)} and {plain_name(wanted.y)}"
            what = "two values of each and four answers that differ are needed"
            said.append(f"No map over {over}: {what}.")
    for front in spec.front:
        if not _fronts(morning, front):
            names = " and ".join(plain_name(c) for c in front.aims)
            said.append(f"No front of {names}: no line has them all.")
    return said


def _fronts(morning: Morning, front: AimsSpec) -> list[Figure]:
    """Builds are compared on one heading and under the same words only."""
    columns = morning.columns
    if any(c not in columns for c in front.aims):
        return []
    aims = {c: numbers(columns, c) for c in front.aims}
    there = np.all([np.isfinite(v) for v in aims.values()], axis=0)
    heading = numbers(columns, "heading_deg")
    panels = [
        (", ".join(filter(None, (f"heading {h:g}°", words))), there & alike & (heading == h))
        for h in np.unique(heading[there])
        for words, alike in by_words(columns)
        if (there & alike & (heading == h)).any()
    ]
    return [
        draw_unbeaten(
            aims, front.aims, panels[at : at + MOST_FRONTS], front.title or "",
            how_asked(morning.scenario), beside=panels,
        )
        for at in range(0, len(panels), MOST_FRONTS)
    ]  # fmt: skip


def draw_map(columns: _Columns, wanted: MapSpec, how: str = "") -> list[Figure]:
    """One map of the table, a panel a heading and combination of words; nothing where too few lines
    have an answer.

    Headings whose angles lie far apart have contours of their own, so that each shows its shape,
    in the colours of one scale.
    """
    if any(name not in columns for name in (wanted.x, wanted.y)):
        return []
    if wanted.shows == "slope":
        return draw_fates(columns, wanted, how) if "on_slope" in columns else []
    tips = wanted.shows == "tip"
    shown = "tip_deg" if tips else wanted.shows
    by_heading = _panels(columns, wanted, shown) if shown in columns else []
    panels = [panel for some in by_heading for panel in some]
    if not panels:
        return []
    x, y = plain_name(wanted.x), plain_name(wanted.y)
    said = "tip angle" if tips else plain_name(shown).partition(",")[0]
    what = said[:1].upper() + said[1:]
    names = wanted.title or f"{what} over {x.partition(',')[0]} and {y.partition(',')[0]}", x, y
    made = partial(draw_maps, *names, how=how, shown="" if tips else plain_name(shown))
    apart = len(by_heading) > 1 and _range(panels) > 2 * max(map(_range, by_heading))
    figures = by_heading if apart else [panels]
    return [
        made(some[at : at + _MOST_PANELS], beside=panels)
        for some in figures
        for at in range(0, len(some), _MOST_PANELS)
    ]


def _range(panels: Sequence[MapPanel]) -> float:
    tips = np.concatenate([p.values.ravel() for p in panels])
    return float(np.nanmax(tips) - np.nanmin(tips))


def _panels(columns: _Columns, wanted: MapSpec, shown: str) -> list[list[MapPanel]]:
    """By heading, a panel for every combination of words."""
    found = []
    for heading, standing in _by_heading(columns, wanted):
        panels = []
        for words, alike in by_words(columns):
            lines = standing & alike
            x, y, values = gridded(columns, wanted, shown, lines)
            if len(x) < 2 or len(y) < 2 or np.isfinite(values).sum() < 4:
                continue
            if not float(np.nanmax(values)) > float(np.nanmin(values)):
                continue  # nothing to draw a contour of
            slide = None
            tips = wanted.shows == "tip"
            if (
                tips
                and "slide_deg" in columns
                and np.isfinite(numbers(columns, "slide_deg")[lines]).any()
            ):
                slide = gridded(columns, wanted, "slide_deg", lines)[2]
            name = ", ".join(filter(None, (heading, words)))
            panels.append(MapPanel(name, x, y, values, slide))
        found.append(panels)
    return list(filter(None, found))


@styled
def draw_fates(columns: _Columns, wanted: MapSpec, how: str) -> list[Figure]:
    """What happens on the slope asked for: stands, slides, tips or sticks, each an area; a picture
    for every heading and combination of words."""
    found = []
    for heading, standing in _by_heading(columns, wanted):
        for words, alike in by_words(columns):
            x, y, fate = _commonest(columns, wanted, standing & alike)
            if np.isfinite(fate).sum() >= 4 and len(x) >= 2 and len(y) >= 2:
                under = ", ".join(filter(None, (heading, words, how)))
                found.append(_draw_areas(x, y, fate, wanted, under))
    return found


def _commonest(columns: _Columns, wanted: MapSpec, lines: Any) -> tuple[Array, Array, Array]:
    """x (n,), y (m,), and (m, n) which of _FATES is commonest in each cell, the worse of two as
    common; nan where nothing was tried."""
    fates = np.array([str(v) for v in columns["on_slope"]])
    shares = []
    for one in _FATES:
        coded = {**columns, "_share": np.where(np.isin(fates, _FATES), fates == one, np.nan)}
        x, y, share = gridded(coded, wanted, "_share", lines)
        shares.append(share)
    worst_first = np.array(shares)[::-1]
    tried = np.isfinite(worst_first).all(axis=0)
    commonest = len(_FATES) - 1 - np.nan_to_num(worst_first).argmax(axis=0)
    return x, y, np.where(tried, commonest, np.nan)


def _draw_areas(x: Array, y: Array, fate: Array, wanted: MapSpec, under: str) -> Figure:
    made = figure(WIDTH, 118.0)
    axes = axes_at(made, 18.0, 16.0, WIDTH - 60.0, 80.0)
    axes.grid(False)
    looks = (
        (LIGHT.earth, ""),
        (LIGHT.faint, "xx"),
        (LIGHT.slide, "..."),
        (LIGHT.trial, "///"),
    )
    colours = ListedColormap([c for c, _ in looks])
    axes.pcolormesh(x, y, fate, cmap=colours, vmin=-0.5, vmax=len(looks) - 0.5, edgecolors="face")
    (left, right), (low, high) = _cells(x), _cells(y)
    for i, (_, hatch) in enumerate(looks):
        if hatch and (fate == i).any():
            corners = [
                [(left[k], low[m]), (right[k], low[m]), (right[k], high[m]), (left[k], high[m])]
                for m, k in np.argwhere(fate == i)
            ]
            area = PolyCollection(corners, facecolors="none", edgecolors=LIGHT.paper, hatch=hatch)
            area.set_linewidth(0.0)
            axes.add_collection(area)
    # Cells reach half a step beyond their values; the axes do not, where there may be nothing.
    axes.set(xlim=(x.min(), x.max()), ylim=(y.min(), y.max()))
    axes.set_xlabel(plain_name(wanted.x))
    axes.set_ylabel(plain_name(wanted.y))
    told = [i for i, one in enumerate(_FATES) if one != "stuck" or (fate == i).any()]
    handles = [Patch(fc=looks[i][0], ec=LIGHT.paper, hatch=looks[i][1]) for i in told]
    names = [_FATES[i] for i in told]
    axes.legend(handles, names, loc="upper left", bbox_to_anchor=(1.02, 1.0))
    name = wanted.title or "What happens on the slope"
    title(made, name, f"{under}: whichever comes first" if under else "whichever comes first")
    return made


@styled
def draw_agreement(columns: _Columns, how: str = "") -> Figure:
    """Every trial against the compliant answer in the same conditions, and how far above it is."""
    names = ("compliant_deg", "trial_deg", "trial_ci_low_deg", "trial_ci_high_deg")
    static, trial, low, high = (numbers(columns, name) for name in names)
    both = np.isfinite(static) & np.isfinite(trial)
    static, trial, low, high = static[both], trial[both], low[both], high[both]
    made = figure(WIDTH, 84.0)
    left = axes_at(made, 18.0, 14.0, 58.0, 52.0)
    ends = [float(min(static.min(), trial.min())) - 1, float(max(static.max(), trial.max())) + 1]
    left.plot(ends, ends, color=LIGHT.faint, lw=0.8)
    left.vlines(static, low, high, color=LIGHT.trial, lw=0.8, alpha=0.6)
    left.plot(static, trial, "o", ms=1.6, mfc=LIGHT.trial, mec="none")
    left.set(xlim=ends, ylim=ends, xlabel="compliant answer, °", ylabel="trial, °")
    right = axes_at(made, 100.0, 14.0, WIDTH - 108.0, 52.0)
    bins = int(np.clip(2 * np.sqrt(len(static)), 5, 41))
    right.hist(trial - static, bins=bins, color=LIGHT.compliant)
    right.set(xlabel="trial less compliant, °", ylabel="trials")
    right.yaxis.set_major_locator(MaxNLocator(integer=True))
    under = "bars: the trial's 95 % interval"
    title(made, "Do trial and statics agree?", f"{how}: {under}" if how else under)
    return made


def _cells(at: Array) -> tuple[Array, Array]:
    """(n,) where the cell of each value begins and ends: midway to its neighbours."""
    middle = (at[1:] + at[:-1]) / 2
    return np.append(2 * at[0] - middle[0], middle), np.append(middle, 2 * at[-1] - middle[-1])


def gridded(
    columns: _Columns, wanted: MapSpec, value: str, lines: Any
) -> tuple[Array, Array, Array]:
    """x (n,), y (m,) and (m, n) means of a column, nan where it says nothing; binned where the
    points stand on no grid."""
    x, y = numbers(columns, wanted.x)[lines], numbers(columns, wanted.y)[lines]
    z = numbers(columns, value)[lines]
    there = np.isfinite(x) & np.isfinite(y)
    x, y, z = x[there], y[there], z[there]
    if not len(x):
        return np.zeros(1), np.zeros(1), np.full((1, 1), np.nan)
    xs, i = _steps(x)
    ys, j = _steps(y)
    total, count = np.zeros((len(ys), len(xs))), np.zeros((len(ys), len(xs)))
    np.add.at(total, (j, i), np.nan_to_num(z))
    np.add.at(count, (j, i), np.isfinite(z).astype(float))
    return xs, ys, np.where(count > 0, total / np.maximum(count, 1.0), np.nan)


def _steps(values: Array) -> tuple[Array, Any]:
    """The grid lines of values and where each stands; values all over are put into bins."""
    lines, index = np.unique(np.round(values, 9), return_inverse=True)
    if len(lines) <= 200 and len(lines) ** 2 <= 4 * len(values) + 4 * BINS:
        return lines, index
    count = int(np.clip(np.sqrt(len(values) / 3), 2, BINS))  # three points a cell, on average
    edges = np.linspace(values.min(), values.max(), count + 1)
    index = np.clip(np.searchsorted(edges, values, side="right") - 1, 0, count - 1)
    return (edges[1:] + edges[:-1]) / 2, index


def _by_heading(columns: _Columns, wanted: MapSpec) -> list[tuple[str, Any]]:
    """What each heading is called, and its lines; all lines where heading is on an axis."""
    good = np.array([c is None for c in columns["cause"]], bool)
    if "heading_deg" in (wanted.x, wanted.y) or "heading_deg" not in columns:
        return [("", good)]
    headings = numbers(columns, "heading_deg")
    return [(f"{h:g}°, {case_name(h)}", good & (headings == h)) for h in np.unique(headings)]


def _hours(seconds: float) -> str:
    if math.isnan(seconds):
        return ""
    if seconds < 120:
        return f"{seconds:.1f} s"
    return f"{seconds / 60:.0f} min" if seconds < 3600 else f"{seconds / 3600:.2f} h"


_PAGE = """<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>{{ spec.name }}</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<style>
body { font: 15px/1.45 system-ui, sans-serif; color: #17212b; background: #fff;
       max-width: 60rem; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.5rem; margin-bottom: .2rem } h2 { font-size: 1.1rem; margin-top: 2rem }
p.under { color: #4c5965; margin-top: 0 }
table { border-collapse: collapse; margin: .5rem 0 } caption { text-align: left; color: #4c5965 }
th, td { padding: .2rem .8rem .2rem 0; text-align: right; border-bottom: 1px solid #dfe4e8;
         vertical-align: top }
th.text, td.text { text-align: left }
figure { margin: 1rem 0 } figure svg { max-width: 100%; height: auto; overflow: visible }
code { font-size: .85em; overflow-wrap: anywhere }
@media print { body { margin: 0; max-width: none } figure { break-inside: avoid } }
</style></head><body>
<h1>{{ spec.name }}</h1>
<p class="under">{{ how }}. {{ spec.note }}</p>
{% for said in left_out %}<p>Here {{ said }}.</p>
{% endfor %}

<h2>What ran</h2>
<p>{{ m.done|thousands }} of {{ m.total|thousands }} trials have an answer,
{{ m.failed|thousands }} failed{% if m.done + m.failed < m.total %},
{{ (m.total - m.done - m.failed)|thousands }} are still to do{% endif %}.
{% if took %}They took {{ took }} of worker time.{% endif %}</p>
{% if m.headings %}
<table><caption>{% if spec.method == "critical slope" %}Slope that half of the drives do not survive
{%- else %}Table angle at which it tips{% endif %}, degrees, over all builds tried
{%- if spec.method == "compliant" and spec.hold == "brakes" %};
against a rail where a build slides first{% endif %}</caption>
<tr><th>heading</th>{% if m.headings[0].words %}<th class="text">and</th>{% endif %}
<th>lines</th><th>least</th><th>median</th><th>greatest</th>
{% if tips_first %}<th>tips first</th>{% endif %}</tr>
{% for h in m.headings %}
<tr><td>{{ "%g"|format(h.heading_deg) }}</td>
{% if m.headings[0].words %}<td class="text">{{ h.words }}</td>{% endif %}
<td>{{ h.lines|thousands }}</td>
<td>{{ h.least|deg }}</td><td>{{ h.median|deg }}</td><td>{{ h.greatest|deg }}</td>
{% if tips_first %}<td>{{ h.tips_first|percent }}</td>{% endif %}</tr>
{% endfor %}</table>
{% endif %}

<h2>What failed, and why</h2>
{% if m.failures %}
<table><tr><th>trials</th><th class="text">cause</th><th class="text">for example</th></tr>
{% for f in m.failures %}
<tr><td>{{ f.count|thousands }}</td><td class="text">{{ f.cause }}</td>
<td class="text">{{ f.example }}</td></tr>
{% endfor %}</table>
{% else %}<p>Nothing.</p>{% endif %}

{% if m.surprises %}
<h2>Surprises</h2>
<table><caption>Trials furthest from the statics in the same conditions, degrees</caption>
<tr><th>line</th><th>trial</th><th>statics</th><th>apart</th><th class="text">build</th></tr>
{% for s in m.surprises %}
<tr><td>{{ s.place }}</td><td>{{ s.trial|deg }}</td><td>{{ s.static|deg }}</td>
<td>{{ s.apart|signed }}</td><td class="text">{{ s.inputs }}</td></tr>
{% endfor %}</table>
{% endif %}

{% if m.convergence %}
<h2>Convergence</h2>
<table><caption>Largest change from the finest, degrees; of how many builds the 95 % interval holds
the finest; and what lies between the engines</caption>
<tr><th class="text">engine</th><th class="text">made finer</th><th>times</th><th>builds</th>
<th>largest</th><th>order</th><th>held</th></tr>
{% for c in m.convergence %}
<tr><td class="text">{{ c.engine }}</td><td class="text">{{ c.varied }}</td>
<td>{{ "–" if c.varied == "engine" else "%g"|format(c.finer) }}</td><td>{{ c.builds }}</td>
<td>{{ c.change|fine }}</td>
<td>{% if c.orders %}{{ "%.1f"|format(c.order) }} ({{ c.orders }}){% else %}–{% endif %}</td>
<td>{{ c.held }}</td></tr>
{% endfor %}</table>
{% endif %}

{% if pictures or undrawn %}
<h2>Pictures</h2>
{% for what in undrawn %}<p>{{ what }}</p>
{% endfor %}
{% for picture in pictures %}<figure>{{ picture|safe }}</figure>
{% endfor %}{% endif %}

<h2>What it stands on</h2>
<p>Truck <code>{{ m.digest }}</code><br>seed {{ spec.seed }}</p>
<details><summary>Versions</summary>
<table>{% for name, version in versions.items() %}
<tr><td class="text">{{ name }}</td><td class="text"><code>{{ version }}</code></td></tr>
{% endfor %}</table></details>
<p>To cite it: {{ cite }}</p>
<details><summary>Columns of the table</summary>
<table><tr><th class="text">column</th><th class="text">unit</th><th class="text">what it is</th>
<th class="text">from</th></tr>
{% for name, about in dictionary.items() %}
<tr><td class="text"><code>{{ name }}</code></td><td class="text">{{ about.unit }}</td>
<td class="text">{{ about.title }}</td><td class="text">{{ about.source }}</td></tr>
{% endfor %}</table></details>
<p>For scale models only; no basis for a vehicle that carries people.</p>
</body></html>
"""
