"""A truck whose height follows from its collars, against springs pressed further on a truck that
stood lower: the equilibrium itself then lifts it."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.statics.builds import stacked, with_rows
from crossfall.statics.compliant import NO_SLIDE, tips, tips_of_builds
from linked_files import on_whole_shocks

# Square headings: the tyres of the one that rises on the table are dragged along by it, half a
# millimetre each, which a diagonal notices and these hardly do.
HEADINGS = np.radians([0.0, 90.0, 180.0, 270.0])
NEAR = 0.03  # deg
FROM, TO = 4.0, 7.0  # mm of collar


def test_turning_the_collars_is_the_same_as_pressing_the_springs() -> None:
    low, high = (on_whole_shocks(preload_mm=p).truck for p in (FROM, TO))
    builds = stacked([low])
    more = (TO - FROM) * 1e-3 / low.wheelbase
    pressed = with_rows(
        builds,
        preload=builds.preload + builds.spring_rate[:, None] * more,
        stage_at=builds.stage_at - more,
    )
    count = len(HEADINGS)
    risen = tips_of_builds(
        pressed, HEADINGS, np.full(count, NO_SLIDE), who=np.zeros(count, dtype=np.int64)
    )
    found, before = (np.degrees(tips(t, HEADINGS, NO_SLIDE).tip) for t in (high, low))
    assert found == pytest.approx(np.degrees(risen.tip), abs=NEAR)
    assert np.abs(found - before).max() > 10 * NEAR


def test_links_keep_their_lengths_on_the_way() -> None:
    trucks = [on_whole_shocks(preload_mm=p).truck for p in (FROM, TO)]
    for end in ("front", "rear"):
        low, high = (getattr(t, end).suspension.links.lengths for t in trucks)
        assert high == pytest.approx(low, abs=1e-9)
