"""Handing it on: a picture, and the page as one file that opens without a bench."""

from __future__ import annotations

from pathlib import Path

from PIL import Image
from playwright.sync_api import Browser, expect

from browsing import READ_BACK, looking, running, shop

LONG = 120_000  # ms, on a machine with other work to do


def test_a_picture_and_a_copy_are_handed_on(chromium: Browser, tmp_path: Path) -> None:
    folder = shop(tmp_path / "shop", "bramble", "thistle")
    with running(folder, "bramble.toml") as bench, looking(chromium, bench) as seen:
        page = seen.page
        expect(page.locator("#sliding")).to_contain_text("Climb: ", timeout=LONG)
        with page.expect_download(timeout=LONG) as download:
            page.locator("#share-picture").click()
        assert download.value.suggested_filename == "bramble.png"
        picture = Image.open(download.value.path()).convert("RGB")
        assert picture.size == (1600, 900)
        for box in ((20, 90, 800, 780), (820, 90, 1580, 750), (20, 790, 1580, 880)):
            found = picture.crop(box).getcolors(maxcolors=1_000_000)
            assert found is not None
            assert len(found) > 20, f"truck, map and numbers are all there: {box}"
        with page.expect_download(timeout=LONG) as download:
            page.locator("#share-page").click()
        copy = tmp_path / "bramble-bench.html"
        download.value.save_as(copy)
        numbers = page.locator("#numbers").inner_text()
        curve = page.locator(".polar .compliant").get_attribute("d")
        assert seen.complaints == []
    assert str(folder) not in copy.read_text("utf-8")
    assert "burdock" not in copy.read_text("utf-8")
    context = chromium.new_context(offline=True, reduced_motion="reduce")
    page = context.new_page()
    complaints: list[str] = []
    asked: list[str] = []
    page.on("console", lambda m: complaints.append(m.text) if READ_BACK not in m.text else None)
    page.on("pageerror", lambda e: complaints.append(str(e)))
    page.on("request", lambda r: asked.append(r.url))
    page.goto(copy.as_uri())
    page.wait_for_selector("html[data-ready]")
    expect(page.locator(".head")).to_contain_text("bramble, as it was on 2")
    assert page.locator("#numbers").inner_text() == numbers
    assert page.locator(".polar .compliant").get_attribute("d") == curve
    page.locator("#tilt").evaluate(
        "e => { e.value = 60; e.dispatchEvent(new Event('input', {bubbles: true})); }"
    )
    expect(page.locator("#standing")).to_contain_text("Gone over its left tyres")
    assert page.evaluate("benchWatch.stage.frames") > 0
    assert complaints == []
    assert [url for url in asked if not url.startswith(("data:", "blob:"))] == [copy.as_uri()]
    context.close()
