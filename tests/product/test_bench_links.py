"""The suspension as a place on the page: drawn to scale, in numbers, and moved."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, Watched, looking, running, shop
from linked_files import linked_text
from numbered_files import numbered_text

LONG = 120_000  # ms, on a machine with other work to do


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("links") / "shop", "thistle")
    (folder / "numbered.toml").write_text(numbered_text("bramble"), encoding="utf-8")
    (folder / "linked.toml").write_text(linked_text("bramble", shocks=True), encoding="utf-8")
    with running(folder, "linked.toml") as started:
        yield started


@pytest.fixture
def watched(chromium: Browser, bench: Bench) -> Iterator[Watched]:
    with looking(chromium, bench) as seen:
        yield seen
        assert seen.complaints == []


@pytest.fixture
def page(watched: Watched) -> Page:
    watched.page.locator("#tab-suspension").click()
    return watched.page


def number(page: Page, row: str, end: int) -> float:
    cells = page.locator(".link-numbers tr", has_text=row).locator("td")
    return float(cells.nth(end).inner_text().split()[0].replace("−", "-"))


def test_a_link_end_is_moved_and_the_numbers_follow(page: Page) -> None:
    expect(page.locator(".link-numbers")).to_be_visible(timeout=LONG)
    for end in ("front", "rear"):
        assert page.locator(f".links-view .rod.of-{end}:not(.shock)").count() == 8
        assert page.locator(f".links-view .rod.shock.of-{end}").count() == 4
    expect(page.locator(".links-view").first).to_have_attribute(
        "aria-label", re.compile(r"front roll centre \d.* instant centre .*rear roll centre")
    )
    assert page.locator(".small-curves figure").count() == 6
    height = number(page, "roll centre", 1)
    name = re.compile("^Move rear upper.*, axle end up by 5 mm")
    page.locator("#link-moves-all").click(timeout=LONG)
    page.get_by_role("button", name=name).click(timeout=LONG)
    expect(page.locator(".link-numbers .diff").first).to_be_visible(timeout=LONG)
    assert number(page, "roll centre", 1) != height
    assert page.locator(".small-curves .then").count() == 12
    page.locator("#undo").click()
    expect(page.locator(".link-numbers .diff")).to_have_count(0, timeout=LONG)


def test_a_truck_without_links_is_told_in_one_sentence(page: Page) -> None:
    page.locator("#truck").select_option("numbered.toml")
    leaf = page.locator("#leaf-suspension")
    expect(leaf).to_contain_text("No link part of this file says what it is", timeout=LONG)
    expect(page.locator(".link-numbers")).to_be_hidden()
    page.locator("#truck").select_option("linked.toml")
    expect(page.locator(".link-numbers")).to_be_visible(timeout=LONG)


def test_what_holds_the_wheels_is_chosen_and_shocks_are_set(page: Page) -> None:
    """An open differential lets the truck roll away on a diagonal, which its map shows."""
    dial = page.locator('[id="dial-links-rear.suspension.droop_limiter_mm"]')
    expect(dial).to_be_visible(timeout=LONG)
    before = number(page, "droop at the wheel", 1)
    dial.press("PageUp")
    page.keyboard.up("PageUp")
    expect(page.locator(".link-numbers .diff").first).to_be_visible(timeout=LONG)
    assert number(page, "droop at the wheel", 1) < before
    page.locator("#undo").click()
    page.locator("#tab-weights").click()
    page.locator("#measures-fold").click()
    page.locator('[id="choice-chassis.held_by"]').select_option("motor")
    expect(page.locator("#undo")).to_be_enabled(timeout=LONG)
    for end in ("front", "rear"):
        page.locator(f'[id="choice-{end}.differential"]').select_option("open")
        expect(page.locator(f'[id="choice-{end}.differential"]')).to_have_value("open")
    expect(page.locator("#undo")).to_have_attribute("title", re.compile("rear differential open"))
