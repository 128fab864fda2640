"""From no file to one that agrees with the scale, one question at a time, in a browser."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from browsing import browser, looking, running, shop, turn_to
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import whole

LONG = 240_000  # ms, on a machine with other work to do
TYPED = {
    "What is the truck called?": "alder",
    "Measure from the front wheel nut": "313",
    "between the middles of the two front tyres": "176",
    "between the middles of the two rear tyres": "174",
    "Measure across a tyre": "118",
    "how wide its tread is": "44",
    "front left wheel on the scale": "921",
    "front right wheel on the scale": "918",
    "rear left wheel on the scale": "760",
    "rear right wheel on the scale": "764",
    "Measure the block": "90",
    "Weigh the lower axle": "1743",
}


def answer(page: Page, typed: dict[str, str], last: str) -> list[str]:
    """Answers what is asked, leaving out what is not in `typed`, until `last` is there. Gives the
    titles in the order asked."""
    asked: list[str] = []
    title = page.locator(".ask-one h3")
    end = page.locator(last)
    for _ in range(40):
        expect(title.or_(end).first).to_be_visible(timeout=LONG)
        if end.count():
            return asked
        asked.append(title.inner_text())
        known = [v for k, v in typed.items() if k in asked[-1]]
        if known:
            page.locator("#ask-value").fill(known[0])
        if known or page.locator("select#ask-value").count():
            page.locator("#ask-next").click()
        else:
            page.locator("#ask-skip").click()
        page.wait_for_function(
            "(was) => document.querySelector('.ask-one h3')?.textContent !== was",
            arg=asked[-1],
            timeout=LONG,
        )
    pytest.fail(f"still asked: {asked}")


def test_from_no_file_to_one_that_agrees(tmp_path: Path) -> None:
    folder = shop(tmp_path / "shop", "thistle")
    with (
        browser() as chromium,
        running(folder, "thistle.toml") as bench,
        looking(chromium, bench) as seen,
    ):
        page = seen.page
        turn_to(page, "Scale and board", "Step by step")
        page.locator("#begin-new").click()
        page.locator("#ask-value").fill("thistle")
        page.locator("#ask-next").click()
        expect(page.locator("#ask-wrong")).to_contain_text("There is a thistle.toml already")
        page.locator("#ask-value").fill("alder")
        page.locator("#ask-next").click()
        page.locator("#ask-value").fill("long")
        page.locator("#ask-next").click()
        expect(page.locator("#ask-wrong")).to_contain_text("It must be a number of mm")
        page.reload()  # answers are kept until the file is made
        turn_to(page, "Scale and board")
        page.get_by_role("button", name="Go on with alder").click()
        expect(page.locator(".pict svg")).to_be_visible()
        asked = answer(page, TYPED, "#begin-make")
        assert len(asked) > len(TYPED)
        page.locator("#begin-make").click()
        expect(page.locator("#begun")).to_have_text("alder.toml is on the bench", timeout=LONG)
        expect(page.locator("#truck")).to_have_value("alder.toml")
        expect(page.locator("#measure-0")).to_be_visible()
        mass = whole(load_truck(folder / "alder.toml").truck).mass
        assert mass == pytest.approx(0.921 + 0.918 + 0.760 + 0.764)
        page.locator("#to-scale").click()
        shown = {
            "Stand the front axle": "1845 1844",
            "Turn it round": "1531",
            "Both left": "1687",
            "smallest step": "1",
        }
        answer(page, shown, "#to-agree")
        expect(page.locator("#weighed")).to_be_visible()
        page.locator("#to-agree").click()
        expect(page.locator("#agreement")).to_have_text(
            "With these moves the file agrees with scale", timeout=LONG
        )
        page.locator("#agree-put").click()
        expect(page.locator("#agreement")).to_contain_text("The file agrees", timeout=LONG)
        expect(page.locator("#state")).to_have_text("changed, not saved yet")
        page.locator("#save").click()
        expect(page.locator("#state")).to_have_text("saved")
        assert whole(load_truck(folder / "alder.toml").truck).mass > mass
        page.locator("#agree-again").click()
        expect(page.locator("#agreement")).to_have_text("The file agrees with scale", timeout=LONG)
        assert seen.complaints == []
        assert seen.strangers == []
