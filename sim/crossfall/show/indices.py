"""Which axis matters: bars of Sobol's or Morris' numbers, a block a heading."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from crossfall.show.maps import plain_name
from crossfall.show.style import LIGHT, SMALL, axes_at, figure, styled, title

if TYPE_CHECKING:
    from crossfall.study.sensitivity import Sensitivity

WIDTH, ROW = 178.0, 9.0  # mm


@styled
def draw_sensitivity(name: str, found: Sequence[Sensitivity], how: str = "") -> Figure:
    """All headings on one scale. Whiskers are 95 %, as far as there are shares: from 0 to 1.

    how: what was asked and by which method, in words.
    """
    sobol = found[0].how == "sobol"
    unit = ", °" if found[0].response.endswith("_deg") else ""
    rows = sum(len(s.axes) for s in found)
    made = figure(WIDTH, 30.0 + rows * ROW + 14.0 * len(found))
    high = max((_high(s) for s in found), default=1.0) * 1.08
    high = min(high, 1.0) if sobol else high  # there is no more to share
    top = 30.0 + rows * ROW + 14.0 * len(found) - 24.0
    for k, one in enumerate(found):
        height = len(one.axes) * ROW
        top -= height + (6.0 if k == 0 else 14.0)
        axes = axes_at(made, 62.0, top, WIDTH - 70.0, height)
        _bars(axes, one, sobol)
        axes.set(xlim=(0, high), ylim=(len(one.axes) - 0.5, -0.5))
        axes.set_yticks(
            range(len(one.axes)),
            [plain_name(a.key).partition(",")[0] for a in one.axes],
            fontsize=SMALL,
        )
        axes.tick_params(left=False, labelbottom=k == len(found) - 1)
        if one.said:
            axes.set_title(", ".join(one.said), loc="left", fontsize=SMALL, pad=2)
    axes.set_xlabel(
        "share of the variance" if sobol else "mean size of the effect over the whole range" + unit
    )
    what = "dark: by itself; light: with what it does together with others"
    words = what if sobol else "bar: mean size; cross: standard deviation of the effects"
    asked = ": ".join(filter(None, (how, plain_name(found[0].response))))
    title(made, f"What matters: {name}", f"{asked}\n{words}; 95 %")
    return made


def _high(s: Sensitivity) -> float:
    if s.how == "sobol":
        return max(a.total + a.total_pm for a in s.axes)
    return max(max(a.mu_star + a.mu_star_pm, a.sigma) for a in s.axes)


def _bars(axes: Axes, s: Sensitivity, sobol: bool) -> None:
    at = np.arange(len(s.axes), dtype=np.float64)
    whisker: dict[str, Any] = {
        "ecolor": LIGHT.ink, "elinewidth": 0.8, "capsize": 2, "clip_on": False,
    }  # fmt: skip
    axes.grid(False)
    if sobol:
        looks: tuple[tuple[float, str, str, dict[str, Any]], ...] = (
            (-0.18, "first", LIGHT.compliant, {}),
            (0.18, "total", LIGHT.sprung, {"hatch": "////", "edgecolor": LIGHT.soft}),
        )
        for up, kind, colour, look in looks:
            share, half = (np.array([getattr(a, k) for a in s.axes]) for k in (kind, f"{kind}_pm"))
            value, low, high = (np.clip(v, 0.0, 1.0) for v in (share, share - half, share + half))
            axes.barh(at + up, value, 0.34, color=colour, **look)
            axes.errorbar(value, at + up, xerr=[value - low, high - value], fmt="none", **whisker)
        return
    size = [a.mu_star for a in s.axes]
    axes.barh(at, size, 0.5, color=LIGHT.compliant)
    axes.errorbar(size, at, xerr=[a.mu_star_pm for a in s.axes], fmt="none", **whisker)
    axes.plot([a.sigma for a in s.axes], at, "x", color=LIGHT.trial)
