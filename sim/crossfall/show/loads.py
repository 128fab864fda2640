"""Load curve of a trial: what each tyre carries as the table tilts, and the fit near the lift."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.figure import Figure

from crossfall.answers.answer import TipAnswer
from crossfall.show.paper import haloed
from crossfall.show.polar import ground_words
from crossfall.show.style import (
    BODY,
    LIGHT,
    SMALL,
    WHEEL_COLOURS,
    WHEEL_LINES,
    WHEEL_MARKERS,
    axes_at,
    figure,
    styled,
    title,
)
from crossfall.trials.fits import tangent_at
from crossfall.trials.outcome import LEFT, TiltTrial
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, WHEELS, Array, Truck

WIDTH, HEIGHT = 178.0, 110.0  # mm
MAIN = (15.0, 15.0, 88.0, 68.0)  # left, bottom, width, height, mm
_NEAR = (120.0, 15.0, 52.0, 68.0)
ZOOM = math.radians(3.0)  # before the tip
HURRIED = math.radians(12.0)  # rad/s; a table that fast shows the truck rocking, not its balance


@styled
def draw_loads(answer: TipAnswer, truck: Truck) -> Figure:
    """The four loads over the whole trial, and at the right the last stretch with the fit.

    The answer must have a trial.
    """
    trial = answer.trial
    assert trial is not None
    made = figure(WIDTH, HEIGHT)
    axes = axes_at(made, *MAIN)
    theta, loads = until_tip(trial)
    degrees = np.degrees(theta)
    calm = np.searchsorted(theta, approached(trial))
    every = max(1, (len(theta) - int(calm)) // 5)
    for i, wheel in enumerate(WHEELS):
        look: dict[str, Any] = {"color": WHEEL_COLOURS[i], "ls": WHEEL_LINES[i]}
        axes.plot(degrees, loads[:, i], lw=0.8, alpha=0.45, gid=f"whole {wheel}", **look)
        axes.plot(
            degrees[calm:],
            loads[calm:, i],
            lw=1.2,
            marker=WHEEL_MARKERS[i],
            ms=3.4,
            mfc=WHEEL_COLOURS[i] if i % 2 == 0 else LIGHT.paper,
            markevery=(i * every // 4, every),
            label=wheel,
            **look,
        )
    axes.set(xlabel="table angle, degrees", ylabel="load on the tyre, N")
    axes.set(xlim=(0, max(degrees[-1] * 1.02, 1.0)), ylim=(0, float(loads.max()) * 1.06))
    axes.legend(loc="lower left", bbox_to_anchor=(-0.03, 1.0), ncols=4, handlelength=3.2)
    if trial.outcome == "tips":
        _lift_marks(axes, trial)
        _near(axes_at(made, *_NEAR), trial, truck, theta, loads)
        axes.axvspan(*_window(trial, theta), fc=LIGHT.grid, alpha=0.5, zorder=0)
    else:
        words = {"slides": "it slid away", "stands": "it never tipped"}[trial.outcome]
        made.text(_NEAR[0] / WIDTH, 0.5, f"no lift to fit:\n{words}", size=BODY, color=LIGHT.soft)
    words = "pale: the hurried approach"
    made.text(
        (MAIN[0] + MAIN[2]) / WIDTH, 2.6 / HEIGHT, words, size=SMALL, ha="right", color=LIGHT.soft
    )
    under = f"{ground_words(answer.conditions)}; {_words(trial)}"
    title(made, f"{truck.name}: tyre loads, {answer.case}", under)
    return made


def until_tip(trial: TiltTrial) -> tuple[Array, Array]:
    """(n,) rad and (n, 4) N, up to the moment the last uphill tyre left the table."""
    record = trial.record
    last = len(record)
    if trial.outcome == "tips":
        last = int(np.flatnonzero(record.theta <= trial.ramp)[-1]) + 1
    return record.theta[:last], record.loads[:last]


def approached(trial: TiltTrial) -> float:
    """rad, where the hurried approach ends: past it the table moves slowly."""
    record = trial.record
    if len(record) < 3:
        return 0.0
    fast = np.gradient(record.theta, record.time) > HURRIED
    return float(record.theta[fast].max()) if fast.any() else 0.0


def lifting(trial: TiltTrial) -> list[int]:
    """The wheels that leave the table: those it does not tip over."""
    return [w for w in range(4) if w not in (trial.over or ())]


def fitted_loads(trial: TiltTrial, truck: Truck, most: float) -> tuple[Array, Array]:
    """The fit, `trials.fits.tangent_at`: rad and N of the lifting pair, for 0 to `most` N."""
    assert trial.fit is not None
    weight = whole(truck).mass * GRAVITY
    share = np.linspace(0.0, most / weight / math.cos(trial.tip), 80)
    theta = np.arctan(tangent_at(share, *trial.fit.coefficients))
    return theta, share * weight * np.cos(theta)


def _window(trial: TiltTrial, theta: Array) -> tuple[float, float]:
    """deg, the stretch shown enlarged."""
    low, last = max(trial.tip - ZOOM, 0.0), float(theta[-1])
    high = max(last, min(trial.tip_ci[1], last + 0.3 * ZOOM)) + 0.08 * ZOOM
    return math.degrees(low), math.degrees(high)


def _lift_marks(axes: Axes, trial: TiltTrial) -> None:
    for i in lifting(trial):
        if np.isfinite(trial.lift[i]):
            x = math.degrees(trial.lift[i])
            style = {"color": WHEEL_COLOURS[i], "mec": LIGHT.ink, "clip_on": False, "zorder": 6}
            axes.plot(x, 0.0, WHEEL_MARKERS[i], ms=5, **style)  # type: ignore[arg-type]


def _near(axes: Axes, trial: TiltTrial, truck: Truck, theta: Array, loads: Array) -> None:
    pair = loads[:, lifting(trial)].sum(axis=1)
    low, high = _window(trial, theta)
    inside = np.degrees(theta) >= low
    most = float(pair[inside].max()) * 1.06 if inside.any() else 1.0
    axes.axvspan(*np.degrees(trial.tip_ci), fc=LIGHT.trial, alpha=0.22, ec="none", gid="interval")
    axes.axvline(math.degrees(trial.tip), color=LIGHT.trial, lw=1.2, gid="tip")
    axes.plot(
        np.degrees(theta[inside]), pair[inside], "o", ms=2.4, mfc="none", mec=LIGHT.ink, mew=0.5,
        label="moving table", gid="seen",
    )  # fmt: skip
    if trial.fit is not None:
        angle, load = fitted_loads(trial, truck, most)
        x = np.degrees(angle)
        spread = 2 * math.degrees(trial.fit.scatter)
        axes.fill_betweenx(
            load, x - spread, x + spread, fc=LIGHT.compliant, alpha=0.2, ec="none", zorder=1
        )
        axes.plot(x, load, color=LIGHT.compliant, lw=1.3, label="fit, table at rest", gid="fit")
    axes.set(xlim=(low, high), ylim=(0, most))
    axes.set(xlabel="table angle, degrees", ylabel="load on the lifting tyres together, N")
    axes.legend(loc="lower left", bbox_to_anchor=(-0.06, 1.0), ncols=2, handlelength=2.0)
    at, ends = math.degrees(trial.tip), [math.degrees(v) for v in trial.tip_ci]
    on = {"ha": "left", "color": LIGHT.trial, "transform": axes.transAxes}  # under the curve
    haloed(axes, 0.04, 0.12, f"tips at {at:.2f}°", weight="bold", **on)
    haloed(axes, 0.04, 0.05, f"{ends[0]:.2f} to {ends[1]:.2f}°, 95 %", size=SMALL, **on)


def _words(trial: TiltTrial) -> str:
    if trial.outcome != "tips":
        end = f" at {math.degrees(trial.slide):.1f}°" if trial.outcome == "slides" else ""
        return f"virtual trial: {trial.outcome}{end}"
    first = f"first tyre off at {math.degrees(trial.first_lift):.2f}°"
    last = f"{math.degrees(trial.tip):.2f}°"
    if trial.load_left > LEFT:
        left = f"{100 * trial.load_left:.1f} % of its weight still on the lifting tyres"
        return f"virtual trial: {first}; over at {last}, {left}"
    return f"virtual trial: {first}, last at {last} with the table at rest"
