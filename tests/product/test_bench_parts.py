"""New parts of any shape, placed in a drawing or taken out of a lump."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, afresh, ask, looking, running, shop, turn_to

LONG = 240_000  # ms, on a machine with other work to do


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


def changes(bench: Bench) -> dict[str, Any]:
    text = (bench.folder / "thistle.changes.toml").read_text()
    return {c["name"]: c for c in tomllib.loads(text)["change"]}


def test_a_list_of_changes_is_begun_priced_and_taken_back(page: Page, bench: Bench) -> None:
    turn_to(page, "Changes", "The list")
    page.locator("#change-new").click()
    page.get_by_label("Name", exact=True).fill("pack low")
    page.get_by_label("Price", exact=True).fill("4")
    page.get_by_label("Which part").select_option("battery pack")
    page.get_by_label("Moved by, up, mm").fill("-6")
    page.get_by_role("button", name="Put it in the list").click()
    price = page.get_by_label("Price of pack low")
    expect(price).to_have_value("4")
    assert changes(bench) == {
        "pack low": {
            "name": "pack low",
            "price": 4,
            "move": [{"part": "battery pack", "by_mm": [0, 0, -6]}],
        }
    }
    price.fill("5.5")
    price.press("Enter")
    expect(page.locator("#change-back")).to_contain_text("price of pack low")
    page.get_by_label("Group of pack low").fill("pack")
    page.get_by_label("Group of pack low").press("Enter")
    expect(page.locator("#change-back")).to_contain_text("group of pack low")
    assert changes(bench)["pack low"] | {"move": []} == {
        "name": "pack low", "price": 5.5, "group": "pack", "move": [],
    }  # fmt: skip
    page.get_by_label("Remove pack low from the list").click()
    expect(page.locator("#change-list")).to_contain_text("There is no thistle.changes.toml yet")
    assert not (bench.folder / "thistle.changes.toml").exists()
    page.locator("#change-back").click()
    expect(page.get_by_label("Group of pack low")).to_have_value("pack")
    turn_to(page, "Switches")
    page.locator('[data-change="pack low"]').get_by_role("switch").check()
    expect(page.locator("#change-total")).to_contain_text("1 fitted, 5.50 EUR")
    turn_to(page, "The list")
    expect(page.get_by_label("Remove pack low from the list")).to_be_disabled()


def test_what_was_edited_by_hand_becomes_a_switch(page: Page, bench: Bench) -> None:
    (bench.folder / "thistle.changes.toml").unlink(missing_ok=True)
    mass = page.get_by_label("Mass of motor", exact=True)
    was = mass.input_value()
    mass.fill("120")
    mass.press("Enter")
    expect(page.locator("#state")).to_have_text("changed, not saved yet")
    turn_to(page, "Changes", "The list")
    page.locator("#change-keep").click()
    page.get_by_label("Name", exact=True).fill("small motor")
    page.get_by_label("Price", exact=True).fill("38")
    page.get_by_role("button", name="Keep them").click()
    switch = page.locator('[data-change="small motor"]').get_by_role("switch")
    expect(switch).to_be_checked()
    expect(page.locator("#change-total")).to_contain_text("1 fitted, 38 EUR")
    switch.uncheck()
    expect(page.locator("#state")).to_have_text("saved")
    turn_to(page, "Weights")
    expect(mass).to_have_value(was)
