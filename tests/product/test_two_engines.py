"""Trials in both engines, as a user asks for them. Needs Bullet."""

from __future__ import annotations

import json

import pytest
from click.testing import CliRunner

from crossfall.cli import crossfall


def run(*arguments: str) -> str:
    """Standard output of a verb that must succeed."""
    result = CliRunner().invoke(crossfall, arguments, catch_exceptions=False)
    assert result.exit_code == 0, result.output
    return result.stdout


def test_two_engines_are_shown_side_by_side_and_the_verdict_says_how_far_they_agree() -> None:
    asked = ("tilt", "bramble", "--heading", "90", "--engine")
    (both,) = json.loads(run(*asked, "both", "--json"))["headings"]
    assert both["trial_engine"].startswith("pybullet ")
    assert both["other_trial_engine"].startswith("mujoco ")
    apart = abs(both["trial_deg"] - both["other_trial_deg"])
    assert both["engines_apart_deg"] == pytest.approx(apart)
    ends = [both["trial_ci_deg"], both["other_trial_ci_deg"]]
    assert max(low for low, _ in ends) < min(high for _, high in ends)
    assert "two engines agree within" in both["verdict"]
    (alone,) = json.loads(run(*asked, "mujoco", "--json"))["headings"]
    assert alone["trial_engine"] == both["other_trial_engine"]
    assert alone["trial_deg"] == both["other_trial_deg"]
    assert alone["engines_apart_deg"] is None
    text = run(*asked, "both")
    assert f"tips {both['trial_deg']:.2f}" in text
    assert f"tips {both['other_trial_deg']:.2f}" in text
