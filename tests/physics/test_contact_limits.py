"""Tyres that hardly give along the ground: the two ends that were once answers of their own.

With infinite stiffness and much grip the tyres stick where they stand; with a grip just above the
slope nothing can be held back, and every force stands straight up against gravity. What two former
closures gave for these ends is kept beside this file, with what they were good to.
"""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from trial_trucks import VARIED

from crossfall.statics.compliant import tips, tips_at
from support import with_tyres

HEADINGS = np.radians(np.arange(0.0, 360.0, 45.0))
SQUARE = [0, 2, 4, 6]
FIRM = 100.0
KEPT = json.loads((Path(__file__).parent / "rigid_along_the_ground.json").read_text())["tips_deg"]
# Trucks that reach the tip without a spring or stop on the way, so that it matters little that
# below it even this grip could hold more.
STRAIGHT = ("plain", "anti-squat", "soft tyres", "stiff springs")


def firm(name: str):
    truck = VARIED[name]
    rate = FIRM * truck.front.tyre.stiffness
    return with_tyres(truck, lateral=rate, longitudinal=rate)


def test_stiff_tyres_with_much_grip_stick():
    """The former answer was good to 0.3 deg at worst."""
    found = tips([firm(name) for name in VARIED], HEADINGS, 5.0).tip
    apart = np.abs(np.degrees(found) - [KEPT[name]["sticking"] for name in VARIED])
    assert apart.max() < 0.5
    assert np.median(apart) < 0.05


@pytest.mark.parametrize("name", VARIED)
def test_stiff_tyres_with_hardly_any_grip_pull_straight_uphill(name):
    wanted = np.array(KEPT[name]["uniform"])
    grip = 1.003 * np.tan(np.radians(wanted))
    truck = firm(name)
    found = tips_at([truck] * 8, np.arange(8), HEADINGS, grip).tip
    apart = np.degrees(found) - wanted
    assert np.abs(apart[SQUARE]).max() < 0.1
    if name in STRAIGHT:
        assert np.abs(apart).max() < 0.15
