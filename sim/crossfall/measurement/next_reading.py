"""Which further reading would narrow the range of the tip angle most, for the minutes it takes.

A reading is tried as if it had been taken and had come out as now assumed: the truck file made from
it has smaller tolerances, and an input's share of the range shrinks as its tolerance does.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from crossfall.answers.ranges import MASSES, Range
from crossfall.measurement.begin import Beginning, begin
from crossfall.measurement.readings import Readings
from crossfall.truck.build import build
from crossfall.truck.errors import InputError
from crossfall.truck.model import GRAVITY, Array, Truck
from crossfall.truck.schema import TruckSpec

_G = 1e-3
TRIED_G = 1000.0  # pressed or pulled with
SAG_G = 500.0


@dataclass(frozen=True)
class Advice:
    """A reading: keys of the readings file, what to do, and minutes. gain: rad, by how much it
    narrows half the range, on the average of the headings; after: (H,) rad, half the range then."""

    keys: tuple[str, ...]
    words: str
    minutes: float
    gain: float
    after: Array

    @property
    def per_minute(self) -> float:
        """rad per minute of work."""
        return self.gain / self.minutes


def next_measurements(begun: Beginning, truck: Truck, spans: Sequence[Range]) -> tuple[Advice, ...]:
    """All that would help, the most for its minutes first. spans: of the truck as begun, rad.

    A range shrinks to sqrt(sum((share sd)^2) / sum(sd^2)), share by how much a cause's tolerance
    does.
    Source: derived here from independent variances adding up, JCGM 100 (GUM), 5.1.2 (from memory);
    minutes are common practice, no source.
    """
    now = np.array([(s.tip[1] - s.tip[0]) / 2 for s in spans])
    found = []
    for words, minutes, given in _candidates(begun):
        try:
            data = begun.readings.model_dump(exclude_unset=True) | given
            tried = begin(Readings.model_validate(data))
            other = build(TruckSpec.model_validate(tried.data))[0]
        except (InputError, ValueError):
            continue  # not one that this truck allows
        left = np.array([_left(s, _shares(begun, truck, tried, other, given)) for s in spans])
        after = now * left
        gain = float((now - after).mean())
        if gain > 0:
            found.append(Advice(tuple(given), words, minutes, gain, after))
    return tuple(sorted(found, key=lambda a: -a.per_minute))


def _left(span: Range, shares: Mapping[str, float]) -> float:
    """What is left of a range, 0 to 1, once some of its causes have shrunk."""
    total = sum(sd**2 for _, sd in span.causes)
    after = sum((sd * shares.get(name, 1.0)) ** 2 for name, sd in span.causes)
    return float(np.sqrt(after / total)) if total > 0 else 1.0


def _shares(
    begun: Beginning, truck: Truck, tried: Beginning, other: Truck, given: Mapping[str, Any]
) -> dict[str, float]:
    """By how much each cause shrinks, by name."""
    halves = {one.name: one.high - one.low for one in other.uncertain}
    found = {
        one.name: min(halves.get(one.name, 0.0) / (one.high - one.low), 1.0)
        for one in truck.uncertain
    }
    found[MASSES] = float(min(tried.sums.sd[3] / begun.sums.sd[3], 1.0))
    if "side_g" in given:  # the ratio is then no longer assumed, but two stiffnesses are known
        one = next(o for o in other.uncertain if "lateral" in o.name)
        ratio = next((o for o in truck.uncertain if o.unit == "1"), None)
        if ratio is not None:
            known, guessed = ((o.high - o.low) / o.likely for o in (one, ratio))
            found[ratio.name] = min(known / guessed, 1.0)
    if "pull_g" in given:
        widths = {g.surface: (g.high - g.low) / g.likely for g in truck.grips}
        found |= {f"grip on {name}": min(0.2 / width, 1.0) for name, width in widths.items()}
    return found


def _candidates(begun: Beginning) -> list[tuple[str, float, dict[str, Any]]]:
    """What to do, minutes, and the readings as they would be if the file is right."""
    r, made = begun.readings, begun.setup
    front, rear = made.ends
    tyre = front.tyre["stiffness"].value
    along = 0.6 * tyre
    found: list[tuple[str, float, dict[str, Any]]] = []

    def add(words: str, minutes: float, **given: float) -> None:
        if not any(getattr(r, key) is not None for key in given if key != "sag_g"):
            found.append((words, minutes, {k: _tidy(v) for k, v in given.items()}))

    for name, end in (("front", front), ("rear", rear)):
        s = end.suspension
        sank = SAG_G * _G * GRAVITY / 2 * (1 / s["spring"].value + 1 / tyre)
        weight = {"sag_g": r.sag_g or SAG_G}
        add(f"put {weight['sag_g']:.0f} g on the body over the {name} axle: how far does it sink?",
            3.0, **weight, **{f"{name}_sag_mm": sank * weight["sag_g"] / SAG_G})  # fmt: skip
        add(f"lift the truck and see how far the {name} wheels hang down", 1.0,
            **{f"{name}_hang_mm": s["droop"].value})  # fmt: skip
        add(f"measure between the {name} springs", 1.0,
            **{f"{name}_spacing_mm": s["spring_spacing"].value})  # fmt: skip
        percent = "anti_dive" if name == "front" else "anti_squat"
        if not end.linked:
            add(f"measure the {name} links' ends: a [[part]] with link = ... each in the readings",
                15.0, **{f"{name}_roll_centre_mm": s["roll_centre"].value,
                         f"{percent}_percent": s[percent].value})  # fmt: skip
        add(f"take the {name} axle out and weigh it", 20.0, **{f"{name}_axle_g": end.axle_g.value})
    add("press a tyre on the scale", 2.0, squash_g=TRIED_G,
        squash_mm=TRIED_G * _G * GRAVITY / tyre)  # fmt: skip
    add("pull a held wheel sideways and along, with a luggage scale", 4.0,
        side_g=TRIED_G, side_mm=TRIED_G * _G * GRAVITY / along,
        roll_g=TRIED_G, roll_mm=TRIED_G * _G * GRAVITY / along)  # fmt: skip
    add("pull the truck, wheels held, over the ground until it slides", 3.0,
        pull_g=begun.sums.mass / _G * 0.8)  # fmt: skip
    add("take a wheel off and weigh it", 2.0, wheel_g=made.wheel_g.value)
    add("push the body down to its stops", 1.0, bump_mm=front.suspension["bump"].value)
    add("print a tyre's tread on paper", 3.0, tread_mm=4 * front.tyre["contact_half_width"].value)
    add("measure a wheel nut's height, the truck standing", 1.0,
        axle_height_mm=front.tyre["radius"].value)  # fmt: skip
    if r.anti_roll_bar is None:
        found.append(("look whether there is an anti-roll bar", 0.2, {"anti_roll_bar": "none"}))
    more = {"raised_repeats": r.raised_repeats + 2}
    found.append(("weigh the raised end twice more and take the mean", 8.0, more))
    return found


def _tidy(value: float) -> float:
    return round(float(value), 3)
