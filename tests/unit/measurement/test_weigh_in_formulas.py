"""The textbook formulas: consistent with each other and with plain geometry."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import axle_scales
from crossfall.measurement import weigh_in_formulas as formulas

heights = st.floats(0.03, 0.2)
blocks = st.floats(0.01, 0.2)


@given(heights, blocks, st.floats(0.1, 0.2), st.floats(0.03, 0.08))
def test_height_comes_back_from_the_load_it_causes(
    height: float, block: float, ahead: float, radius: float
) -> None:
    load = axle_scales.raised_front_load(height, 2.7, ahead, 0.313, block, radius)
    assert axle_scales.raised_height(load, 2.7, ahead, 0.313, block, radius) == pytest.approx(
        height, rel=1e-9
    )


def test_raised_load_is_the_balance_of_moments_about_the_rear_contact() -> None:
    mass, base, block, radius = 2.7, 0.313, 0.09, 0.056
    ahead, height = 0.14, 0.1
    alpha = np.arcsin(block / base)
    turn = np.array([[np.cos(alpha), -np.sin(alpha)], [np.sin(alpha), np.cos(alpha)]])
    cg = turn @ [ahead, height - radius]  # from the rear wheel centre
    front = turn @ [base, 0.0]
    load = axle_scales.raised_front_load(height, mass, ahead, base, block, radius)
    assert load * front[0] == pytest.approx(mass * cg[0], rel=1e-12)


def test_a_cg_at_hub_height_moves_no_load_when_an_end_is_raised() -> None:
    level = 2.7 * 0.14 / 0.313
    raised = axle_scales.raised_front_load(0.056, 2.7, 0.14, 0.313, 0.09, 0.056)
    assert raised == pytest.approx(level, rel=1e-12)


def test_height_per_load_is_the_slope_of_the_height() -> None:
    def height(load: float) -> float:
        return axle_scales.raised_height(load, 2.7, 0.14, 0.313, 0.09, 0.056)

    slope = (height(1.11) - height(1.10)) / 0.01
    assert slope == pytest.approx(-formulas.height_per_load(2.7, 0.313, 0.09), rel=1e-9)


def test_block_for_makes_half_a_step_worth_the_error_asked() -> None:
    block = formulas.block_for(2.7, 0.313, 0.005, 0.002)
    assert 0.0025 * formulas.height_per_load(2.7, 0.313, block) == pytest.approx(0.002, rel=1e-9)


def test_left_of_middle_is_where_the_loads_balance() -> None:
    y = axle_scales.left_of_middle(1.5, 1.2, 0.17)
    assert 1.5 * (0.085 - y) == pytest.approx(1.2 * (0.085 + y), rel=1e-12)
