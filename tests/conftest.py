"""What holds for all tests: one BLAS thread, as on the command line, and where a browser is."""

from __future__ import annotations

import os

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import pytest

BROWSER = "chromium"  # the fixture of every test that needs one


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Where no browser can be had, one test of the page says so for all of them."""
    page = [i for i in items if BROWSER in getattr(i, "fixturenames", ())]
    if not page:
        return
    from browsers import HOW, browser_path

    if browser_path():
        return

    def without_a_browser() -> None:
        pytest.fail(HOW, pytrace=False)

    one = pytest.Function.from_parent(
        page[0].parent, name="test_a_browser_can_be_had", callobj=without_a_browser
    )
    config.hook.pytest_deselected(items=page)
    items[:] = [one, *(i for i in items if i not in page)]
