"""A held truck that is past its balance, and let fall."""

from __future__ import annotations

import math

import pytest

from crossfall.trials import table
from crossfall.trials.tilt import tilt_trial
from support import make_truck


@pytest.mark.parametrize("heading", [90, 135])
def test_it_falls_sooner_at_the_same_angle(monkeypatch, heading):
    """Its drag is taken from it only once it moves faster and faster: that decides nothing."""
    taken = []
    forget = table.Tilting.forget

    def counted(run):
        taken.append(run.steps)
        forget(run)

    monkeypatch.setattr(table.Tilting, "forget", counted)
    asked = make_truck(), math.radians(heading)
    soon = tilt_trial(*asked, grip=1.2)
    monkeypatch.setattr(table, "GLIDE", 1.0)
    late = tilt_trial(*asked, grip=1.2)
    assert taken[0] < taken[1]
    assert soon.event_bracket == late.event_bracket
    assert soon.tip_ci == pytest.approx(late.tip_ci, abs=1e-4)
