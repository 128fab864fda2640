"""The page shows what the verbs print: every number of its title block, after edits by hand."""

from __future__ import annotations

from page_numbers import check


def test_every_number_that_the_page_shows_is_the_verbs() -> None:
    """Two trucks and two edits; page_numbers.py plays more by hand."""
    count, wrong = check(("bramble", "thistle"), edits=2)
    assert wrong == []
    assert count > 100
