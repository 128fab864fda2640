"""Virtual trials from the page: run, stop, replay in real time, and records kept in the folder."""

from __future__ import annotations

import re
from collections.abc import Iterator

import numpy as np
import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, Watched, afresh, looking, running, shop
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.build import load_truck

LONG = 90_000  # ms; trials share two cores with everything else


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "thistle")
    with running(folder, "thistle.toml") as started:
        yield started


@pytest.fixture
def watched(chromium: Browser, bench: Bench) -> Iterator[Watched]:
    afresh(bench, "thistle")
    with looking(chromium, bench) as seen:
        yield seen
        assert seen.complaints == []
        assert seen.strangers == []


@pytest.fixture
def page(watched: Watched) -> Page:
    return watched.page


def clock(page: Page) -> float:
    return float(page.locator("#replay-clock").inner_text().split()[0])


def test_a_trial_is_run_marked_on_the_map_and_replayed(page: Page) -> None:
    page.get_by_role("button", name="Left side down").first.click()
    page.get_by_role("checkbox", name="against a rail").check()
    page.locator("#trial-one").click()
    expect(page.locator("#say")).to_contain_text("Trials done: 1 of 1", timeout=LONG)
    expect(page.locator(".polar .tried.tips")).to_have_count(1)
    page.locator("#replay-open").click()
    expect(page.locator("#play")).to_have_text("Pause")
    # However few frames the machine draws, the clock of the recording keeps to that of the frames.
    moment = "[benchWatch.replay.time, benchWatch.replay.last / 1000]"
    first, start = page.evaluate(moment)
    page.wait_for_function("first => benchWatch.replay.time > first + 0.5", arg=first)
    played, passed = page.evaluate(moment)
    assert played - first == pytest.approx(passed - start, abs=1e-6)
    page.locator("#play").click()
    expect(page.locator("#play")).to_have_text("Play")
    scrub = page.locator("#scrub")
    end = float(scrub.get_attribute("max") or 0)
    scrub.evaluate("(e, v) => { e.value = v; e.dispatchEvent(new Event('input')); }", end)
    expect(page.locator("#standing")).to_contain_text("tyres off the table")
    expect(page.locator("#standing")).to_contain_text("it goes over its left tyres")
    said = re.search(r"table at ([\d.]+)°", page.locator("#standing").inner_text())
    assert said is not None
    tilted = float(page.locator("#tilt").input_value())
    assert tilted == pytest.approx(float(said[1]), abs=0.1), "slider and map follow"
    over = page.locator(".events button", has_text="goes over at")
    lifts = page.locator(".events button", has_text="right lifts at").first
    lifts.click()
    expect(page.locator("#standing")).not_to_contain_text("it goes over")
    assert float(page.locator("#tilt").input_value()) < tilted
    over.click()
    expect(page.locator("#standing")).to_contain_text("it goes over its left tyres")
    scrub.focus()
    page.keyboard.press("Home")
    expect(page.locator("#standing")).to_contain_text("all four tyres down")
    page.locator("#replay-speed").select_option("4")
    page.locator("#play").click()
    expect(page.locator("#play")).to_have_text("Play", timeout=LONG)
    assert clock(page) == pytest.approx(end, abs=0.1)
    page.locator("#replay-leave").click()
    expect(page.locator("#trial-one")).to_be_visible()
    expect(page.locator("#tilt")).to_be_enabled()


def test_a_trial_slides_away_where_the_answer_does(page: Page) -> None:
    page.get_by_role("button", name="Climb").first.click()
    page.locator("#trial-one").click()
    expect(page.locator("#say")).to_contain_text("Trials done: 1 of 1", timeout=LONG)
    expect(page.locator(".polar .tried.slides")).to_have_count(1)
    expect(page.locator("#replay-choice")).to_contain_text("climb: slides away at 4")
    page.locator("#surface").select_option(index=1)
    expect(page.locator(".polar .tried")).to_have_count(0)
    page.locator("#surface").select_option(index=0)
    expect(page.locator(".polar .tried")).to_have_count(1)


def test_trials_stay_with_their_truck(page: Page) -> None:
    page.locator("#trial-one").click()
    expect(page.locator(".polar .tried")).to_have_count(1, timeout=LONG)
    page.locator("#truck").select_option("burdock.toml")
    expect(page.locator("#state")).to_have_text("demo truck", timeout=LONG)
    expect(page.locator(".polar .tried")).to_have_count(0)
    page.locator("#truck").select_option("thistle.toml")
    expect(page.locator(".polar .tried")).to_have_count(1)


STOP_AT_ONCE = """() => new MutationObserver((_, watching) => {
    const stop = document.getElementById('trial-stop');
    if (!stop) return;
    watching.disconnect();
    stop.click();
}).observe(document.body, {childList: true, subtree: true})"""  # four trials take a second


def test_trials_are_stopped_and_what_was_found_is_kept(page: Page) -> None:
    said = page.locator("#say")
    for _ in range(10):  # until the page is quicker than the trials
        page.evaluate("() => { document.getElementById('say').textContent = '' }")
        page.evaluate(STOP_AT_ONCE)
        page.locator("#trial-four").click()
        expect(said).to_contain_text(re.compile("Trials (stopped|done)"), timeout=LONG)
        if "stopped" in said.inner_text():
            break
    expect(said).to_contain_text(re.compile(r"Trials stopped; \d of 4 are kept"))
    expect(page.locator("#trial-four")).to_be_visible()


def test_an_edit_takes_old_trials_off_the_map(page: Page) -> None:
    page.locator("#trial-one").click()
    expect(page.locator(".polar .tried")).to_have_count(1, timeout=LONG)
    name = page.locator("#parts tbody tr").first.get_by_label(re.compile("^Name of"))
    name.fill("something else")
    name.press("Enter")
    expect(page.locator(".polar .tried")).to_have_count(0)


def test_a_kept_record_is_replayed_and_a_false_one_refused(page: Page, bench: Bench) -> None:
    truck = load_truck(bench.folder / "thistle.toml").truck
    tilt_trial(truck, np.radians(90.0), grip=5.0).record.save(bench.folder / "left.npz")
    (bench.folder / "false.npz").write_bytes(b"not a record")
    page.reload()
    choice = page.locator("#replay-choice")
    expect(choice.locator("option", has_text="left.npz")).to_have_count(1)
    choice.select_option("false.npz")
    page.locator("#replay-open").click()
    expect(page.locator("#say")).to_contain_text("is no recorded trial")
    choice.select_option("left.npz")
    page.locator("#replay-open").click()
    expect(page.locator("#play")).to_have_text("Pause")
    expect(page.locator("#trial")).to_contain_text("Recorded trial")
