"""New parts of any shape, placed in a drawing or taken out of a lump."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, afresh, ask, browser, looking, running, shop

LONG = 240_000  # ms, on a machine with other work to do


@pytest.fixture(scope="module")
def chromium() -> Iterator[Browser]:
    with browser() as launched:
        yield launched


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "thistle")
    with running(folder, "thistle.toml") as started:
        yield started


@pytest.fixture
def page(chromium: Browser, bench: Bench) -> Iterator[Page]:
    afresh(bench, "thistle")
    with looking(chromium, bench) as seen:
        yield seen.page
        assert seen.complaints == []
        assert seen.strangers == []


def last_part(bench: Bench) -> dict[str, Any]:
    found: dict[str, Any] = tomllib.loads((bench.folder / "thistle.toml").read_text())["part"][-1]
    return found


def save(page: Page) -> None:
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")


def test_a_mirrored_tube_is_placed_by_a_click(page: Page, bench: Bench) -> None:
    page.locator("#add-part").click()
    page.get_by_label("Name", exact=True).fill("bumper end")
    page.get_by_label("Shape", exact=True).select_option("tube")
    page.locator('[data-field="outer_mm"]').fill("14")
    page.locator('[data-field="inner_mm"]').fill("8")
    page.locator('[data-field="along"]').select_option("y")
    page.get_by_label("Weighed, or out of what").select_option("aluminium")
    page.get_by_label("Also on the other side").check()
    page.get_by_label("How many in a row").fill("2")
    page.get_by_label("Each further on by, up, mm").fill("20")
    page.get_by_label("Price of one").fill("3.5")
    view = page.locator("svg.view").first
    wanted = view.evaluate("""(svg) => { const box = svg.getBoundingClientRect();
        const [u, v] = [0.3, 0.4].map((s, i) =>
            Math.round(i ? box.top + box.height * s : box.left + box.width * s));
        const p = new DOMPoint(u, v).matrixTransform(svg.getScreenCTM().inverse());
        return [u, v, p.x, -p.y]; }""")
    page.mouse.click(wanted[0], wanted[1])
    expect(page.locator("#new-x")).to_have_value(f"{round(wanted[2] * 2) / 2:g}")
    # what is asked for is seen before it is put down
    expect(page.locator("svg.view").first.locator(".part.picked")).not_to_have_count(0)
    expect(page.locator("#state")).to_have_text("saved")
    page.get_by_role("button", name="Add it").click()
    expect(page.locator("#picked h3")).to_have_text("bumper end")
    save(page)
    part = last_part(bench)
    at = part.pop("at_mm")
    assert part == {
        "name": "bumper end", "on": "chassis", "material": "aluminium", "mirror": True, "count": 2,
        "step_mm": [0, 0, 20], "price": 3.5,
        "shape": {"kind": "tube", "outer_mm": 14, "inner_mm": 8, "length_mm": 30, "along": "y"},
    }  # fmt: skip
    assert abs(at[0] - wanted[2]) <= 0.25
    assert abs(at[2] - wanted[3]) <= 0.25


def test_a_part_comes_out_of_the_lump_it_was_counted_in(page: Page, bench: Bench) -> None:
    state: Any = ask(bench, "/api/bench")
    before = state["answers"]["numbers"]
    page.get_by_label("Name of battery pack", exact=True).focus()
    page.locator("#take-out").click()
    page.get_by_label("Name", exact=True).fill("plug")
    page.get_by_label("Mass of one, g", exact=True).fill("11")
    page.get_by_label("Ahead, mm", exact=True).fill("-40")
    page.get_by_role("button", name="Add it").click()
    expect(page.locator("#say")).to_contain_text("Took plug out of battery pack")
    expect(page.get_by_label("Mass of battery pack", exact=True)).to_have_value("107.0")
    state = ask(bench, "/api/bench")
    after = state["answers"]["numbers"]
    for key in ("mass_g", "sprung_g", "unsprung_g", "cg_mm", "corner_g"):
        assert after[key] == pytest.approx(before[key], abs=0.02), key  # printed to a hundredth
    page.locator("#undo").click()
    expect(page.get_by_label("Mass of battery pack", exact=True)).to_have_value("118.0")
    expect(page.locator("#state")).to_have_text("saved")


def test_a_part_that_cannot_be_is_left_without_a_trace(page: Page) -> None:
    page.locator("#add-part").click()
    page.get_by_label("Was counted in").select_option("receiver")
    page.get_by_label("Mass of one, g", exact=True).fill("500")
    expect(page.locator("#say")).to_contain_text("a part is lighter than the lump", timeout=LONG)
    page.locator("#new-leave").click()
    expect(page.locator("#parts")).to_be_visible()
    expect(page.locator("#state")).to_have_text("saved")
