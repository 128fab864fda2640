"""Answers of the bench that come late or overtake each other, in a real browser."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, afresh, looking, on_disk, row, running, shop, slide

LATE = """([path, ms, answered]) => {
    const fetched = window.fetch;
    const wait = () => new Promise((done) => setTimeout(done, ms));
    window.fetch = async (...asked) => {
        if (!String(asked[0]).startsWith(path)) return fetched(...asked);
        if (!answered) await wait();
        const answer = await fetched(...asked);
        if (answered) await wait();
        return answer;
    };
}"""


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("turns") / "shop", "bramble")
    with running(folder, "bramble.toml") as started:
        yield started


@pytest.fixture
def page(chromium: Browser, bench: Bench) -> Iterator[Page]:
    afresh(bench, "bramble")
    with looking(chromium, bench) as seen:
        yield seen.page
        assert seen.complaints == []


def late(page: Page, path: str, ms: float, *, answered: bool) -> None:
    """Questions of a path reach the bench late; answered: only its answers reach the page late."""
    page.evaluate(LATE, [path, ms, answered])


def test_a_save_waits_for_the_edit_before_it(page: Page, bench: Bench) -> None:
    late(page, "/api/edit", 1000, answered=False)
    mass = row(page, "winch").get_by_label("Mass of winch")
    mass.fill("131")
    page.keyboard.press("Control+s")
    expect(page.locator("#say")).to_contain_text("Saved as bramble.toml")
    expect(page.locator("#notice")).to_be_hidden()
    expect(page.locator("#state")).to_have_text("saved")
    assert on_disk(bench, "winch")["mass_g"] == 131


def test_an_edit_after_a_save_that_is_slow_to_answer_stays(page: Page, bench: Bench) -> None:
    mass = row(page, "winch").get_by_label("Mass of winch")
    for grams in ("132", "133"):
        mass.fill(grams)
        mass.press("Enter")
        if grams == "132":
            expect(page.locator("#state")).to_have_text("changed, not saved yet")
            late(page, "/api/save", 1000, answered=True)
            page.keyboard.press("Control+s")
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    expect(mass).to_have_value("133.0")
    mass.fill("134")
    mass.press("Enter")
    expect(page.locator("#say")).to_contain_text("Mass")
    expect(mass).to_have_value("134.0")
    expect(page.locator("#notice")).to_be_hidden()
    assert on_disk(bench, "winch")["mass_g"] == 132


def test_a_slider_moved_while_an_edit_is_on_its_way_is_no_other_tab(page: Page) -> None:
    late(page, "/api/edit", 700, answered=True)
    row(page, "motor").get_by_label("Name of motor").focus()
    slide(page, "#dial-mass", 250)
    slide(page, "#dial-mass", 320, let_go=False)
    expect(page.locator(".polar g.trying")).to_have_count(1)
    expect(page.locator("#notice")).to_be_hidden()
    slide(page, "#dial-mass", 320)
    expect(row(page, "motor").get_by_label("Mass of motor")).to_have_value("320.0")
    expect(page.locator("#notice")).to_be_hidden()
