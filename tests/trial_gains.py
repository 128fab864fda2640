"""What a change buys in virtual trials, in the conditions that what-if answered for."""

from __future__ import annotations

from crossfall.trials.outcome import TiltTrial
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.build import Loaded, build
from crossfall.truck.model import Grip
from crossfall.tuning.apply import apply
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.whatif import ChangeOutcome

Picks = tuple[tuple[int, int], ...]


class Tried:
    """Trials of builds of one truck, each done once."""

    def __init__(self, loaded: Loaded, catalogue: Catalogue, grip: Grip) -> None:
        self.loaded, self.catalogue, self.grip = loaded, catalogue, grip
        self._known: dict[tuple[Picks, float, bool], TiltTrial] = {}

    def trial(self, chosen: dict[int, int], heading: float, near: float, rail: bool) -> TiltTrial:
        key = (tuple(sorted(chosen.items())), heading, rail)
        if key not in self._known:
            spec = apply(self.loaded.spec, self.catalogue, chosen)
            truck = build(spec, self.loaded.folder)[0]
            self._known[key] = tilt_trial(
                truck, heading, grip=self.grip.likely, near=near, rail=rail
            )
        return self._known[key]


def tried_gain(tried: Tried, o: ChangeOutcome, d: int) -> tuple[float, float]:
    """rad, the gain of an outcome in direction d by trials, and how far off it may be: the half
    intervals of both trials together. nan where a trial did not tip."""
    rail = bool(o.slides[d] or o.slid[d])
    first = dict.fromkeys(o.on_top_of, 1)
    before = tried.trial(first, float(o.was_heading[d]), float(o.was[d]), rail)
    after = tried.trial(first | {o.change: o.many}, float(o.heading[d]), float(o.angle[d]), rail)
    most = sum(t.tip_ci[1] - t.tip_ci[0] for t in (before, after)) / 2
    return after.tip - before.tip, most
