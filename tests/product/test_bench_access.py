"""Every page of the notebook, by day and by night, put to an independent check of accessibility,
and every control of it within a few tab stops."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from importlib.resources import files
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, looking, running, shop
from crossfall.engines.held import installed
from crossfall.truck.demos import demo_folder

AXE = files("axe_playwright_python").joinpath("axe.min.js").read_text("utf-8")
# What WCAG 2.2 asks at levels A and AA, and what is known to be good practice besides.
RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
STOPS = 25
LONG = 240_000  # ms, on a machine with other work to do


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "bramble")
    shutil.copy(demo_folder() / "bramble.changes.toml", folder)
    rows = [f"{160 + i},{j},{30 + i - j / 2}" for i in range(6) for j in range(6)]
    head = "both.track_mm,chassis.raise_mm,tip_deg"
    (folder / "track.csv").write_text("\n".join([head, *rows]) + "\n")
    with running(folder, "bramble.toml") as started:
        yield started


def pages(page: Page) -> Iterator[str]:
    """Opens every page of the notebook in turn, those inside others too."""
    for outer in page.locator("#tabs > [role=tab]").all():
        outer.click()
        name = outer.inner_text()
        inner = page.locator("#leaf > [role=tabpanel]:not([hidden]) > .subtabs > [role=tab]").all()
        for one in inner:
            one.click()
            yield f"{name}, {one.inner_text()}"
        if not inner:
            yield name


def filled(page: Page, name: str) -> None:
    """Waits for what a page asks its server for, and opens the one sweep there is."""
    if name == "Changes, Switches":
        expect(page.locator(".change").first).to_be_visible(timeout=LONG)
    if name == "Changes, The list":
        expect(page.locator(".listed")).to_be_visible(timeout=LONG)
    if name == "Scale and board, Step by step":
        expect(page.locator("#begin-new")).to_be_visible(timeout=LONG)
    if name == "Scale and board, On the board":
        expect(page.locator("#board table")).to_be_visible(timeout=LONG)
    if name == "Links":
        expect(page.locator("#link-moves")).to_be_visible(timeout=LONG)
    if name == "Course":
        page.locator("#course-drive").click()
        driven = "#course-play" if installed("bullet") else "p.wrong"
        expect(page.locator(driven)).to_be_visible(timeout=LONG)
    if name == "Sweeps":
        page.locator("#sweep-open").click()
        expect(page.locator("#map .map-point")).to_have_count(36)


def violations(page: Page) -> list[str]:
    options = {"runOnly": {"type": "tag", "values": RULES}, "resultTypes": ["violations"]}
    found: Any = page.evaluate("(options) => axe.run(document, options)", options)
    return [
        f"{v['id']}: {v['help']}: {n['html'][:160]} {n.get('failureSummary', '')[:200]}"
        for v in found["violations"]
        for n in v["nodes"]
    ]


@pytest.mark.parametrize("light", ["light", "dark"])
def test_no_page_is_in_anybodys_way(chromium: Browser, bench: Bench, light: str) -> None:
    with looking(chromium, bench, light=light) as seen:
        page = seen.page
        page.evaluate(AXE)
        wrong = {}
        for name in pages(page):
            filled(page, name)
            if found := violations(page):
                wrong[name] = found
        assert wrong == {}


def test_every_control_is_a_few_tab_stops_away(chromium: Browser, bench: Bench) -> None:
    """From the top of the page, or from its notebook, to which the first link leads."""
    reach = """() => {
        const shown = (e) => e.checkVisibility() && !e.disabled && e.tabIndex >= 0;
        return [...document.querySelectorAll('a, button, input, select, textarea, summary,'
            + '[tabindex]')].filter(shown).map((e) => [e.id || e.dataset.key || e.textContent,
            !!e.closest('#page')]);
    }"""
    with looking(chromium, bench) as seen:
        for name in pages(seen.page):
            filled(seen.page, name)
            found: Any = seen.page.evaluate(reach)
            outside = [one for one, inside in found if not inside]
            inside = [one for one, inside in found if inside]
            assert len(outside) <= STOPS, (name, outside)
            assert 1 + len(inside) <= STOPS, (name, inside)
