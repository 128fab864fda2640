"""A closed-form scenario's whole table, as its blocks are answered one after another."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from crossfall.study.closedform import block_table, known_sizes
from crossfall.study.scenario import Scenario

CHUNK = 50_000  # points at once


def closed_form_table(scenario: Scenario) -> Iterator[Any]:
    """A chunk at a time: column -> array, in the order of its trials."""
    known = known_sizes(scenario)
    for start in range(0, scenario.points, CHUNK):
        some = slice(start, min(start + CHUNK, scenario.points))
        yield block_table(scenario, known, some)
