"""The slope course: a way drawn over a hill, driven, and kept as a clip and a still."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, Watched, afresh, looking, running, shop

LONG = 120_000  # ms, on a machine with other work to do


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("course") / "shop", "thistle")
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
    watched.page.locator("#tab-course").click()
    expect(watched.page.locator(".course-strip .strip-truck")).to_have_attribute(
        "d", re.compile(r"^M.{200,}"), timeout=LONG
    )
    return watched.page


def fill(page: Page, field: str, value: str) -> None:
    page.locator(field).fill(value)
    page.locator(field).press("Enter")


def drive(page: Page) -> None:
    page.locator("#course-drive").click()
    expect(page.locator("#course-play")).to_be_visible(timeout=LONG)


@pytest.mark.bullet
def test_a_course_is_driven_and_kept_as_clip_and_still(page: Page, tmp_path: Path) -> None:
    page.locator("#tab-weights").click()
    mass = page.locator("#parts tr", has=page.get_by_label("Name of motor")).get_by_label("Mass")
    mass.fill("400")
    mass.press("Enter")
    page.locator("#tab-course").click()
    expect(page.locator(".course-strip .strip-reference")).to_have_attribute(
        "d", re.compile(r"^M.{200,}"), timeout=LONG
    )
    fill(page, "#course-speed", "1000")
    drive(page)
    told = page.locator(".course-told")
    expect(told).to_contain_text("The truck comes through")
    expect(told).to_contain_text("The reference (")
    expect(page.locator("#leaf-course")).to_contain_text(
        "Left out: that bends turn the front wheels"
    )
    with page.expect_download(timeout=LONG) as kept:
        page.locator("#course-clip").click()
    kept.value.save_as(tmp_path / "clip.webp")
    clip = Image.open(tmp_path / "clip.webp")
    assert clip.size == (640, 400)
    assert getattr(clip, "n_frames", 1) > 10
    first = clip.convert("RGB").tobytes()
    clip.seek(8)
    assert clip.convert("RGB").tobytes() != first, "it moves"
    with page.expect_download(timeout=LONG) as kept:
        page.locator("#course-still").click()
    kept.value.save_as(tmp_path / "still.png")
    colours = Image.open(tmp_path / "still.png").convert("RGB").getcolors(1 << 20)
    assert colours is not None
    assert len(colours) > 50, "the truck is on it"
    page.locator("#course-sheet").click()
    expect(page.locator("#say")).to_contain_text("second page of the set-up sheet")
    with page.expect_download(timeout=LONG) as kept:
        page.locator("#sheet").click()
    kept.value.save_as(tmp_path / "sheet.pdf")
    assert (tmp_path / "sheet.pdf").read_bytes().count(b"/Type /Page ") == 2


@pytest.mark.bullet
def test_a_hill_too_steep_turns_it_over_and_where_is_marked(page: Page) -> None:
    fill(page, "#course-slope", "50")
    expect(page.locator(".strip-words")).to_contain_text(re.compile(r"mm: −\d"), timeout=LONG)
    drive(page)
    expect(page.locator(".course-told .bad")).to_contain_text(re.compile("goes over|slides"))
    expect(page.locator(".hill .mark:is(.goes-over, .slides)")).to_have_count(1)
    moment = page.locator(".course-told .event").last
    moment.click()
    expect(page.locator("#course-time")).to_have_attribute(
        "aria-valuetext", re.compile(r"seconds, .* along")
    )
    fill(page, "#course-slope", "10")
    expect(page.locator("#course-play")).to_have_count(0)


def test_way_stones_and_ramps_are_moved_by_keys(page: Page) -> None:
    page.locator("#course-ramp").click()
    ramp = page.locator(".thing.ramps")
    ramp.focus()
    was = ramp.get_attribute("aria-valuetext")
    ramp.press("Shift+ArrowRight")
    expect(ramp).not_to_have_attribute("aria-valuetext", was or "")
    page.locator(".hill-form").get_by_label("steep").fill("30")
    page.locator(".hill-form").get_by_label("steep").press("Enter")
    expect(page.locator(".strip-words")).to_contain_text("ground 3", timeout=LONG)
    ramp.focus()
    ramp.press("Delete")
    expect(ramp).to_have_count(0)
    count = page.locator(".thing.points_mm").count()
    page.get_by_role("button", name="A point after it").click()
    expect(page.locator(".thing.points_mm")).to_have_count(count + 1)


def test_a_way_is_drawn_with_one_stroke(page: Page) -> None:
    before = page.locator(".way").get_attribute("d")
    page.locator("#course-draw").click()
    box = page.locator(".hill").bounding_box()
    assert box is not None
    x, y = box["x"] + 40, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 200, y - 30, steps=12)
    page.mouse.up()
    expect(page.locator(".way")).not_to_have_attribute("d", before or "")
    expect(page.locator(".strip-words")).to_contain_text("The truck has least", timeout=LONG)


@pytest.mark.bullet
def test_without_webgl_it_is_driven_on_the_map_alone(chromium: Browser, bench: Bench) -> None:
    none = "HTMLCanvasElement.prototype.getContext = ((old) => function (kind, ...more) {"
    none += " return kind.startsWith('webgl') ? null : old.call(this, kind, ...more); })"
    none += "(HTMLCanvasElement.prototype.getContext)"
    with looking(chromium, bench, prepare=none) as seen:
        page = seen.page
        page.locator("#tab-course").click()
        fill(page, "#course-speed", "1000")
        drive(page)
        expect(page.locator(".cart")).to_have_attribute("visibility", "visible")
        expect(page.locator(".course-stage")).to_be_hidden()
        expect(page.locator("#course-clip")).to_have_count(0)
        assert seen.complaints == []


def test_a_course_is_kept_and_there_again(page: Page, chromium: Browser, bench: Bench) -> None:
    count = page.locator(".thing.stones").count()
    page.locator("#course-stone").click()
    page.locator("#course-keep").click()
    page.locator("#course-name").fill("my bank")
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("#say")).to_have_text("Kept as my bank.course.toml.")
    expect(page.locator("#course-choice")).to_have_value("kmy bank")
    with looking(chromium, bench) as other:
        other.page.locator("#tab-course").click()
        other.page.locator("#course-choice").select_option("my bank")
        expect(other.page.locator(".thing.stones")).to_have_count(count + 1)
        other.page.locator("#course-choice").select_option("Up the switchback")
        other.page.locator("#course-keep").click()
        other.page.locator("#course-name").fill("my bank")
        other.page.get_by_role("button", name="Keep it").click()
        expect(other.page.locator("#notice")).to_contain_text("there is a my bank.course.toml")
        other.page.get_by_role("button", name="Leave it as it is").click()
        assert other.complaints == []
    (bench.folder / "my bank.course.toml").unlink()
