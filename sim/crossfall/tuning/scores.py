"""Sets of changes with their tip angles: the one answer for every set the planner asks about.

A loss is the rigid less the compliant tip angle, rad.
Source: as `answers.tips` and `statics.rigid`, of which it takes the difference.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from crossfall.answers.conditions import Hold, choose_grip
from crossfall.answers.tips import slide_there, tip_angles, tip_pairs, valleys, weakest
from crossfall.statics import rigid
from crossfall.truck.build import Loaded
from crossfall.truck.errors import InputError
from crossfall.truck.model import Array, Flags, Grip, Truck
from crossfall.truck.schema import TruckSpec
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import Catalogue
from crossfall.tuning.corners import Corner, corners, grip_at, truck_at
from crossfall.tuning.directions import AngleErrors, angle_errors
from crossfall.tuning.menu import Picks
from crossfall.tuning.whatif import fresh_parts, grip_there


@dataclass(frozen=True)
class Scored:
    """A set's answer, and what was predicted of it.

    headings: (H,) rad, where it was asked; angles, rigid: (H,) rad there; slide: (H,) rad, where it
    slides or rolls away, and slides: whether it does so first, so that the angle is the one against
    a rail. weakest: (2,) heading and angle, rad, where the weakest heading is the aim and was
    searched for; until then the value is only a bound.
    """

    picks: Picks
    spec: TruckSpec
    truck: Truck
    grip: Grip
    hold: Hold
    headings: Array
    angles: Array
    slide: Array
    slides: Flags
    rigid: Array
    predicted: float
    weakest: Array | None = None

    @property
    def value(self) -> float:
        """rad, the least."""
        return float(self.angles.min() if self.weakest is None else self.weakest[1])

    @property
    def own_headings(self) -> Array:
        """Those that were asked for, or the one searched for."""
        return self.headings if self.weakest is None else self.weakest[:1]

    @property
    def own_slide(self) -> tuple[Array, Flags]:
        """rad, where it slides away, and whether it does so first, on `own_headings`."""
        if self.weakest is None:
            return self.slide, self.slides
        heading, angle = self.weakest[:1], self.weakest[1:]
        return slide_there([self.truck], heading, angle, self.grip.likely, self.hold)


class Scores:
    """Every set asked about so far. headings: (H,) rad on which sets are asked.

    fixed: the aim's headings; none where the weakest of all is the aim. Sets are then asked on the
    four ways and in the valleys of the truck as it is.
    """

    def __init__(
        self,
        loaded: Loaded,
        catalogue: Catalogue,
        fixed: Sequence[float],
        surface: str | None,
        hold: Hold,
    ) -> None:
        self.loaded, self.catalogue, self.fixed = loaded, catalogue, fixed
        self.grip, self.hold = choose_grip(loaded.truck, surface), hold
        self.headings, weak = np.array(fixed), None
        if not len(fixed):
            known = valleys(loaded.truck, self.grip.likely, hold)
            weak = np.array(known.weakest)
            self.headings = np.append(rigid.QUARTERS, known.headings)
        self.scored: dict[Picks, Scored] = {}
        self.impossible: set[Picks] = set()
        self.scored[()] = replace(self.score([((), 0.0)])[0], weakest=weak)

    @property
    def all(self) -> list[Scored]:
        return list(self.scored.values())

    @property
    def now(self) -> Scored:
        """The truck as it is."""
        return self.scored[()]

    def knows(self, picks: Picks) -> bool:
        """Whether a set was asked about before."""
        return picks in self.scored or picks in self.impossible

    def score(self, wanted: Iterable[tuple[Picks, float]]) -> list[Scored]:
        """The answer for sets not seen before, all in one call; those that can stand."""
        new: list[tuple[Picks, float, TruckSpec, Truck, Grip]] = []
        for picks, predicted in wanted:
            if picks in self.scored or picks in self.impossible:
                continue
            try:
                spec = apply(self.loaded.spec, self.catalogue, dict(picks))
                truck = built(self.loaded, spec)
                new.append((picks, predicted, spec, truck, grip_there(truck, self.grip)))
            except InputError:
                self.impossible.add(picks)
        if not new:
            return []
        grips = [g.likely for *_, g in new]
        found = tip_angles([t for *_, t, _ in new], self.headings, grips, self.hold)
        fresh = [
            Scored(
                picks=picks,
                spec=spec,
                truck=truck,
                grip=grip,
                hold=self.hold,
                headings=self.headings,
                angles=angles,
                slide=slide,
                slides=slides,
                rigid=self._rigid(truck),
                predicted=predicted,
            )
            for (picks, predicted, spec, truck, grip), angles, slide, slides in zip(
                new, np.nan_to_num(found.free), found.slide, found.slides, strict=True
            )
        ]
        self.scored |= {s.picks: s for s in fresh}
        return fresh

    def _rigid(self, truck: Truck) -> Array:
        return rigid.tip_angle(truck, self.headings)

    def search_weakest(self, some: Sequence[Scored]) -> bool:
        """Search for the weakest heading of sets that only have a bound; whether there were any."""
        todo = [s for s in some if s.weakest is None]
        if self.fixed or not todo:
            return False
        grips = [s.grip.likely for s in todo]
        found = np.array(weakest([s.truck for s in todo], grips, self.hold)).T
        for s, own in zip(todo, found, strict=True):
            self.scored[s.picks] = replace(s, weakest=own)
        return True

    def losses(self, trucks: Sequence[Truck]) -> Array:
        """(B, H) rad, rigid less compliant."""
        if not trucks:
            return np.zeros((0, len(self.headings)))
        grips = [grip_there(t, self.grip).likely for t in trucks]
        compliant = np.nan_to_num(tip_angles(trucks, self.headings, grips, self.hold).free)
        stiff = np.array([self._rigid(t) for t in trucks])
        losses: Array = stiff - compliant
        return losses

    def at_corners(self, some: Sequence[Scored]) -> tuple[tuple[Corner, ...], Array]:
        """The corners, and (c, n) rad, the values of sets there: held as they were scored."""
        where = corners(self.grip, self.loaded.truck)
        out = np.full((len(where), len(some)), np.inf)
        asked = [
            (c, k, float(h), bool(railed))
            for c in range(len(where))
            for k, s in enumerate(some)
            for h, railed in zip(s.own_headings, s.own_slide[1], strict=True)
        ]
        for rail in (False, True):
            these = [a for a in asked if (a[3] or self.hold == "rail") == rail]
            if not these:
                continue
            found = tip_pairs(
                [truck_at(where[c], some[k].truck) for c, k, *_ in these],
                [h for *_, h, _ in these],
                [grip_at(where[c], some[k].grip) for c, k, *_ in these],
                "rail" if rail else "brakes",
            )
            for (c, k, *_), tip in zip(these, found.free, strict=True):
                out[c, k] = min(out[c, k], np.nan_to_num(tip))
        return where, out

    def price(self, s: Scored) -> float:
        """Money, of all units of its changes."""
        return float(sum(self.catalogue.changes[i].cost(n) for i, n in s.picks))

    def angle_errors(self, s: Scored) -> AngleErrors:
        """What masses and places may do to its angle, (4,) rad by part; see
        `directions.angle_errors`."""
        fresh = fresh_parts([self.catalogue.changes[i] for i, _ in s.picks])
        heading = s.headings[int(s.angles.argmin())] if s.weakest is None else s.weakest[0]
        return angle_errors(s.truck, float(heading), fresh, self.loaded.truck)
