"""Changes as switches, on a page of the bench."""

from __future__ import annotations

import re
import shutil
import tomllib
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, Watched, afresh, browser, looking, running, shop
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.tuning.apply import apply, built
from crossfall.tuning.changes import read_changes

LONG = 60_000  # ms


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    with browser() as launched:
        yield launched


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "bramble")
    shutil.copy(demo_folder() / "bramble.changes.toml", folder)
    with running(folder, "bramble.toml") as started:
        yield started


@pytest.fixture
def watched(chromium: Browser, bench: Bench) -> Iterator[Watched]:
    afresh(bench, "bramble")
    with looking(chromium, bench) as seen:
        yield seen
        assert seen.complaints == []
        assert seen.strangers == []


@pytest.fixture
def page(watched: Watched) -> Page:
    return watched.page


def mass(page: Page) -> float:
    return float(
        page.locator("#numbers div", has_text="All up").locator("dd").inner_text().split()[0]
    )


def test_switches_fit_changes_and_the_file_keeps_its_comments(page: Page, bench: Bench) -> None:
    path = bench.folder / "bramble.toml"
    comments = [line for line in path.read_text().splitlines() if line.startswith("#")]
    before = mass(page)
    page.get_by_role("tab", name="Changes").click()
    body = page.locator('[data-change="light body"]')
    expect(body.locator(".buys")).to_contain_text("Side slope +", timeout=LONG)
    body.get_by_role("switch").check()
    expect(page.locator("#change-total")).to_contain_text("1 fitted, 64 EUR")
    pack = page.locator('[data-change="small pack"]')
    pack.get_by_role("switch").check()
    expect(page.locator("#change-total")).to_contain_text("2 fitted, 93 EUR")
    expect(page.locator("#change-total")).to_contain_text("against the truck before")
    expect(page.locator(".polar .before")).to_have_count(1)
    loaded = load_truck(path)
    catalogue = read_changes(bench.folder / "bramble.changes.toml")
    chosen = {catalogue.position("light body"): 1, catalogue.position("small pack"): 1}
    wanted = built(loaded, apply(loaded.spec, catalogue, chosen))
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")
    fitted = load_truck(path).truck
    for one, other in ((fitted.chassis, wanted.chassis), (fitted.front.body, wanted.front.body)):
        assert one.mass == pytest.approx(other.mass, rel=1e-12)
        assert one.cg == pytest.approx(other.cg, rel=1e-9, abs=1e-12)
        assert one.inertia == pytest.approx(other.inertia, rel=1e-9, abs=1e-15)
    kept = [line for line in path.read_text().splitlines() if line.startswith("#")]
    assert kept == comments
    assert tomllib.loads(path.read_text())["battery"]["capacity_mah"] == 2200
    page.locator("#fit-none").click()
    expect(page.locator("#change-total")).to_contain_text("Nothing fitted")
    assert mass(page) == before


def test_one_of_a_group_takes_the_place_of_the_other(page: Page) -> None:
    page.get_by_role("tab", name="Changes").click()
    first = page.locator('[data-change="small pack"]').get_by_role("switch")
    other = page.locator('[data-change="saddle packs"]').get_by_role("switch")
    first.check()
    expect(page.locator("#change-total")).to_contain_text("1 fitted")
    other.check()
    expect(first).not_to_be_checked()
    expect(other).to_be_checked()
    page.locator("#undo").click()
    expect(first).to_be_checked()
    page.locator("#undo").click()
    expect(page.locator("#change-total")).to_contain_text("Nothing fitted")
    expect(page.locator("#state")).to_have_text("saved")


def test_what_a_change_needs_comes_with_it(page: Page) -> None:
    page.get_by_role("tab", name="Changes").click()
    page.locator('[data-change="deep offset"]').get_by_role("switch").check()
    expect(page.locator('[data-change="beadlocks"]').get_by_role("switch")).to_be_checked()
    expect(page.locator("#change-total")).to_contain_text("2 fitted")


def test_a_truck_without_a_change_file_is_told_how(page: Page) -> None:
    page.locator("#truck").select_option("thistle.toml")
    page.get_by_role("tab", name="Changes").click()
    expect(page.locator("#changes")).to_contain_text(re.compile("There is no thistle.changes.toml"))
