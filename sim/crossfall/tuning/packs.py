"""Minutes against degrees: every allowed combination of changes to the pack, scored."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.answers.conditions import Hold, choose_grip
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array, Flags
from crossfall.tuning.apply import apply, built
from crossfall.tuning.battery import RunTime, run_time
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.directions import angle_errors, angles, difference_sd
from crossfall.tuning.menu import Picks, guiding, menu, touched_names
from crossfall.tuning.whatif import fresh_parts, grip_there


@dataclass(frozen=True)
class Pack:
    """One combination. heading, angle, sd: (4,) rad for DIRECTIONS; slide: (4,) rad, where it
    slides or rolls away, and slides: whether it does so first, so that the angle is the one against
    a rail. on_front: per direction, whether no other runs at least as long and stands at least as
    far."""

    picks: Picks
    price: float
    runs: RunTime
    heading: Array
    angle: Array
    slide: Array
    slides: Flags
    sd: Array
    on_front: tuple[bool, ...]


def packs(
    loaded: Loaded, catalogue: Catalogue, *, surface: str | None = None, hold: Hold = "brakes"
) -> tuple[Pack, ...]:
    """All combinations of changes that touch the pack or the battery section, longest first.

    Angles (rad) on a surface by name, the truck's first if not given.

    Raises InputError for a truck without a battery section. Changes that require others outside the
    pack are left out.
    Source: the front is V. Pareto's, none better in one and no worse in the other; angles as
    `answers.tips`, minutes as `tuning.battery`.
    """
    if loaded.spec.battery is None:
        what = "there is no [battery] section, so there is no run time"
        raise InputError(Problem(str(loaded.path), what, "give cells and capacity", "battery"))
    found = []
    for picks in _about_the_pack(loaded, catalogue):
        spec = apply(loaded.spec, catalogue, dict(picks))
        try:
            truck = built(loaded, spec)
        except InputError:
            continue
        runs = run_time(truck, spec, loaded.spec.battery)
        if runs is not None:
            found.append((picks, truck, runs))
    grip = choose_grip(loaded.truck, surface)
    grips = [grip_there(truck, grip).likely for _, truck, _ in found]
    stood = angles([truck for _, truck, _ in found], grips, hold)
    minutes = np.array([runs.seconds for *_, runs in found])
    made = []
    for k, (picks, truck, runs) in enumerate(found):
        own = (stood.heading[k], stood.angle[k], stood.slide[k], stood.slides[k])
        fresh = fresh_parts([catalogue.changes[i] for i, _ in picks])
        errors = [angle_errors(truck, float(h), fresh, loaded.truck) for h in stood.heading[k]]
        sd = [difference_sd(own, {}) for own in errors]
        beaten = _beaten(minutes, stood.angle, k)
        price = sum(catalogue.changes[i].cost(n) for i, n in picks)
        made.append(
            Pack(picks, float(price), runs, *own, np.array(sd), tuple(not b for b in beaten))
        )
    return tuple(sorted(made, key=lambda p: (-p.runs.seconds, p.price, p.picks)))


def _beaten(minutes: Array, stood: Array, k: int) -> Array:
    """(4,) whether another one is better in minutes or degrees and no worse in the other."""
    longer = (minutes >= minutes[k])[:, None] & (stood >= stood[k])
    better = (minutes > minutes[k])[:, None] | (stood > stood[k])
    beaten: Array = (longer & better).any(axis=0)
    return beaten


def _about_the_pack(loaded: Loaded, catalogue: Catalogue) -> list[Picks]:
    battery = loaded.spec.battery
    assert battery is not None
    made = menu(catalogue, guiding(loaded.spec))
    wanted = {"battery.", battery.part.casefold()}
    chosen: list[Picks] = [()]
    for picks in made.columns:
        names = [touched_names(made.hands[i]) for i, _ in picks]
        there = {catalogue.changes[i].name.casefold() for i, _ in picks}
        needs = {n.casefold() for i, _ in picks for n in catalogue.changes[i].requires}
        if any(wanted & n for n in names) and needs <= there:
            chosen.append(picks)
    return chosen
