"""What the tests of the page share."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from playwright.sync_api import Browser


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    from browsing import browser  # not before it is asked for: most tests here need no browser

    with browser() as launched:
        yield launched
