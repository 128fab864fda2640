"""How numbers are written, said once for tables, sentences and pictures."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import crossfall
from crossfall.answers.figures import as_figures, signed_figures

ROOMS = ("verbs", "show", "tuning", "front", "measurement", "study")
HOME = Path(crossfall.__file__).parent


@pytest.mark.parametrize(
    ("value", "decimals", "plain", "signed"),
    [
        (-1.25, 1, "−1.2", "−1.2"),
        (-0.04, 1, "0.0", "+0.0"),
        (3.0, 0, "3", "+3"),
        (float("nan"), 2, "–", "–"),
        (float("-inf"), 2, "–", "–"),
    ],
)
def test_a_true_minus_and_no_zero_below_zero(value, decimals, plain, signed):
    assert (as_figures(value, decimals), signed_figures(value, decimals)) == (plain, signed)


def test_no_room_writes_a_sign_of_its_own():
    own = re.compile(r"\{[^{}]*:\+[^{}]|replace\(\"-\", ")
    found = [
        f"{path.relative_to(HOME)}:{i}"
        for room in ROOMS
        for path in sorted((HOME / room).rglob("*.py"))
        for i, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        if own.search(line) and "{v:+g}" not in line  # a change as its file says it
    ]
    assert found == []
