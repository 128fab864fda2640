"""Which of the things asked no set of changes can do, where a plan finds none.

Decided on the closed form, rigid and exact (`solver`): what it cannot do, springs cannot either.
Each thing is asked alone first; where each can be had alone, each is left out in turn.
"""

from __future__ import annotations

from dataclasses import replace
from math import degrees

import numpy as np

from crossfall.answers.tips import ROUND
from crossfall.truck.build import Loaded
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.limits import ClassLimits
from crossfall.tuning.menu import guiding, menu
from crossfall.tuning.milp_model import Bounds, Modeller
from crossfall.tuning.plan import Aim
from crossfall.tuning.solver import Search, best_angle

_WORDS = {
    "least_mass_g": "at least {:g} g",
    "most_mass_g": "at most {:g} g",
    "most_width_mm": "at most {:g} mm over the tyres",
    "least_wheelbase_mm": "a wheelbase of at least {:g} mm",
    "most_wheelbase_mm": "a wheelbase of at most {:g} mm",
    "least_tyre_diameter_mm": "free tyres of at least {:g} mm",
    "most_tyre_diameter_mm": "free tyres of at most {:g} mm",
    "least_details": "at least {:g} scale details",
}


def unmet(loaded: Loaded, catalogue: Catalogue, aim: Aim, bounds: Bounds) -> tuple[str, ...]:
    """Sentences that name what cannot be met, none where the closed form could do it all.

    Where the weakest heading is the aim, a rigid truck on every fifteenth degree stands for it: it
    is weakest square to one of its edges, which lie some degrees at most from along and across, and
    1 / cos(3 deg) there is a thousandth more.
    Source: as `solver.best_angle`, each thing asked alone and then left out.
    """
    asked = _asked(bounds, aim)
    if _possible(loaded, catalogue, aim, bounds, aim.target):
        if aim.target is None:
            return ()
        angle = f"{degrees(aim.target):g}°"
        return (f"{angle} is more than any of these sets reaches, since springs and tyres give",)
    alone = [
        words
        for words, only, target in asked
        if not _possible(loaded, catalogue, aim, only, target)
    ]
    if alone:
        return tuple(f"no set of these changes keeps to {words}" for words in alone)
    rest = []
    for words, only, target in asked:
        without = _without(bounds, only)
        left = None if target is not None else aim.target
        if _possible(loaded, catalogue, aim, without, left):
            rest.append(words)
    if rest:
        return tuple(f"without {words} there would be one" for words in rest)
    return ("no two of the things asked can be had together with the others",)


def _asked(bounds: Bounds, aim: Aim) -> list[tuple[str, Bounds, float | None]]:
    """Each thing asked alone: in words, as bounds, and as a target."""
    found: list[tuple[str, Bounds, float | None]] = []
    if aim.target is not None:
        found.append((f"{degrees(aim.target):g}° or more", Bounds(), aim.target))
    if bounds.budget is not None:
        found.append((f"a budget of {bounds.budget:g}", Bounds(budget=bounds.budget), None))
    if bounds.added_mass is not None:
        words = f"at most {bounds.added_mass * 1e3:g} g more"
        found.append((words, Bounds(added_mass=bounds.added_mass), None))
    if bounds.run_time is not None:
        words = f"a run time of {bounds.run_time / 60:g} min"
        found.append((words, Bounds(run_time=bounds.run_time), None))
    if bounds.front_share is not None:
        low, high = bounds.front_share
        words = f"{low * 100:g} to {high * 100:g} % on the front axle"
        found.append((words, Bounds(front_share=bounds.front_share), None))
    for words, limits in _limits(bounds.limits):
        found.append((words, Bounds(limits=limits), None))
    return found


def _limits(limits: ClassLimits | None) -> list[tuple[str, ClassLimits]]:
    """A class's limits one by one."""
    if limits is None:
        return []
    bare = ClassLimits(format=1, name=limits.name)
    found = []
    for key, words in _WORDS.items():
        value = getattr(limits, key)
        if value is not None:
            what = f"{limits.name}'s {key}: {words.format(value)}"
            found.append((what, bare.model_copy(update={key: value})))
    for name in limits.details:
        what = f"{limits.name}'s details: '{name}' on board"
        found.append((what, bare.model_copy(update={"details": (name,)})))
    return found


def _without(bounds: Bounds, only: Bounds) -> Bounds:
    """The bounds less those of `only`."""
    left = {
        name: None
        for name in ("budget", "added_mass", "run_time", "front_share")
        if getattr(only, name) is not None
    }
    limits = bounds.limits
    if limits is not None and only.limits is not None:
        given = {k for k in _WORDS if getattr(only.limits, k) is not None}
        details = tuple(d for d in limits.details if d not in only.limits.details)
        limits = limits.model_copy(update={**dict.fromkeys(given), "details": details})
    return replace(bounds, **left, limits=limits)


def _possible(
    loaded: Loaded, catalogue: Catalogue, aim: Aim, bounds: Bounds, target: float | None
) -> bool:
    """Whether a rigid truck of some set keeps to the bounds and stands at the target, rad."""
    made = menu(catalogue, guiding(loaded.spec))
    modeller = Modeller(loaded, made, bounds)
    models = [m for m in (modeller.model(s) for s in made.setups) if m is not None]
    if not models:
        return False
    headings = np.array(aim.headings) if aim.headings else ROUND
    search = Search(models, headings, np.zeros((len(models), len(headings))))
    found = best_angle(search)
    return found is not None and (target is None or found.value >= target)
