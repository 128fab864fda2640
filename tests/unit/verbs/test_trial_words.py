"""What is printed of a trial's interval."""

from __future__ import annotations

from math import radians
from types import SimpleNamespace

from crossfall.verbs.tilt import trial_text, went


def test_plus_minus_reaches_the_farther_end() -> None:
    """Half the width was printed, and an interval widened down to a snap ended above it."""
    ends = radians(38.2), radians(40.1)
    trial = SimpleNamespace(outcome="tips", tip=radians(40.0), tip_ci=ends)
    assert went(trial) == "tips 40.00 ±1.80"  # type: ignore[arg-type]
    assert trial_text(SimpleNamespace(trial=trial)) == "40.0 ±1.8"  # type: ignore[arg-type]
    trial.outcome, trial.slide, trial.slide_ci = (
        "slides",
        radians(30.0),
        (radians(29.9), radians(30.4)),
    )
    assert went(trial) == "slides 30.00 ±0.40"  # type: ignore[arg-type]
