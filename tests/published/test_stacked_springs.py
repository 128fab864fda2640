"""Two springs one on the other against a worked example.

Dual Spring Rate Calculator, calculatormom.com (read 2026): 150 lb/in on 300 lb/in with 2 in to the
stop: 100 lb/in until 200 lb, where the upper has gone 1.33 in and the lower 0.67 in; three times
stiffer from there; a load that swings at 1.28 Hz on the first rate and at 2.21 Hz on the second
rests at 3.33 in, 1.33 of 10 in beyond.
"""

from __future__ import annotations

import math

import pytest

from crossfall.truck.model import GRAVITY, Suspension
from crossfall.truck.spring_law import spring_law

POUND, INCH = 4.4482216152605, 0.0254
UPPER_GOES = 4 / 3 * INCH


def test_a_tender_on_a_main_spring() -> None:
    rate = POUND / INCH
    law = spring_law(
        Suspension(
            300 * rate, 1.0, 0.0, 0.5, 0.1, 0.1, soft_rate=150 * rate, soft_travel=UPPER_GOES
        )
    )
    assert law.rate == pytest.approx(100 * rate, rel=1e-12)
    assert law.bound == pytest.approx(2.0 * INCH, rel=1e-12)
    assert float(law.force(law.bound)) == pytest.approx(200 * POUND, rel=1e-12)
    assert float(law.rate_at(2.01 * INCH) / law.rate_at(1.99 * INCH)) == pytest.approx(3.0)
    weight = law.rate * GRAVITY / (math.tau * 1.28) ** 2
    assert math.sqrt(3 * law.rate * GRAVITY / weight) / math.tau == pytest.approx(2.21, abs=0.01)
    # 1.28 Hz says the weight to 0.4 %, and so the sag to 0.01 in.
    assert law.squeeze(weight) / INCH == pytest.approx(3.33, abs=0.01)
