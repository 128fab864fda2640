"""Whatever three tabs, other programs and restarts do in turn: nothing is lost or misplaced."""

from __future__ import annotations

import pytest

from interleaving import play

ROUNDS, GROUPS = 200, 8  # 2,000 are played by hand


@pytest.mark.parametrize("group", range(GROUPS))
def test_no_edit_is_lost_and_none_is_in_another_truck(group: int) -> None:
    refused = sum(play(seed, steps=15) for seed in range(group, ROUNDS, GROUPS))
    assert refused > ROUNDS / GROUPS, "the tabs hardly met"
