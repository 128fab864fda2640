"""Keyboard, small screens, history and comparing: the page in the hands of different people."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from browsing import Bench, Watched, afresh, ask, looking, running, shop

LONG = 90_000  # ms, on a machine with other work to do
STOPS = 25
HERE = "(document.activeElement.closest('[data-key],[id]') ?? document.body)"


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("bench") / "shop", "bramble", "thistle")
    with running(folder, "bramble.toml") as started:
        yield started


@pytest.fixture
def watched(chromium: Browser, bench: Bench) -> Iterator[Watched]:
    afresh(bench, "bramble")
    with looking(chromium, bench) as seen:
        yield seen
        assert seen.complaints == []


@pytest.fixture
def page(watched: Watched) -> Page:
    return watched.page


def mass(page: Page, part: str) -> Locator:
    return page.get_by_label(f"Mass of {part}", exact=True)


def set_mass(page: Page, part: str, grams: float) -> None:
    mass(page, part).fill(f"{grams}")
    mass(page, part).press("Enter")
    expect(page.locator("#say")).to_contain_text(f"Mass of {part}")


def pull(page: Page, selector: str, value: float) -> None:
    """A slider on its way, not let go."""
    page.locator(selector).evaluate(
        "(e, v) => { e.value = v; e.dispatchEvent(new Event('input', {bubbles: true})); }", value
    )


def test_everything_is_reached_in_a_few_tab_stops(page: Page) -> None:
    set_mass(page, "motor", 180)
    expect(page.locator("#history")).to_be_visible()
    page.evaluate("document.activeElement.blur(); window.getSelection().removeAllRanges()")
    page.locator("#skip").focus()
    reached = []
    for _ in range(STOPS + 5):
        reached.append(page.evaluate(f"{HERE}.id || {HERE}.dataset.key || ''"))
        page.keyboard.press("Tab")
    stops = reached[: len(reached) if "" not in reached else reached.index("")]
    first = stops.index(stops[0], 1) if stops[0] in stops[1:] else len(stops)
    assert first <= STOPS, stops
    wanted = {"truck", "tilt", "turn", "surface", "reference", "tab-weights", "dial-mass"}
    assert wanted <= set(stops)
    assert any(s.startswith("step-") for s in stops)


def test_arrow_keys_go_through_the_list(page: Page) -> None:
    names = page.locator("#parts input[aria-label^='Name of']")
    names.nth(2).focus()
    page.keyboard.press("ArrowDown")
    expect(names.nth(3)).to_be_focused()
    page.keyboard.press("ArrowUp")
    page.keyboard.press("ArrowUp")
    expect(names.nth(1)).to_be_focused()
    page.keyboard.press("ArrowRight")
    label = names.nth(1).input_value()
    expect(mass(page, label)).to_be_focused()
    was = mass(page, label).input_value()
    page.keyboard.press("ArrowDown")
    assert mass(page, label).input_value() == was, "an arrow key is no edit"
    assert page.locator("#parts [tabindex='0']").count() == 1


def test_picking_a_part_leaves_drawings_and_dials_in_view(page: Page) -> None:
    was = page.locator(".views").bounding_box()
    page.locator("#parts input[aria-label^='Name of']").last.focus()
    expect(page.locator("#parts tr").last).to_have_class(re.compile("picked"))
    assert page.locator(".views").bounding_box() == was
    expect(page.locator("#picked h3")).to_be_in_viewport()
    expect(page.locator("#add-part")).to_be_in_viewport()
    page.wait_for_function(
        """() => { const row = document.querySelector('#parts tr.picked').getBoundingClientRect();
        const list = document.querySelector('.below').getBoundingClientRect();
        return row.top >= list.top && row.bottom <= list.bottom + 1; }"""
    )


def test_list_and_dials_follow_while_something_is_tried(page: Page) -> None:
    page.get_by_label("Name of motor", exact=True).focus()
    was = mass(page, "motor").input_value()
    pull(page, "#dial-mass", 300)
    expect(mass(page, "motor")).to_have_value("300.0")
    grip = page.locator('[data-key="grip-side"] .handle').bounding_box()
    assert grip is not None
    page.keyboard.press("Escape")
    pull(page, "#dial-mass", float(was))
    expect(mass(page, "motor")).to_have_value(was)


def test_numbers_show_the_decimals_they_have(page: Page, bench: Bench) -> None:
    springs = page.locator("[id='dial-front.suspension.shock_n_per_mm']")
    value = ask(bench, "/api/bench")["measures"]
    assert isinstance(value, list)
    wanted = next(m["value"] for m in value if m["key"] == "front.suspension.shock_n_per_mm")
    expect(springs).to_have_attribute("aria-valuetext", f"{wanted:.2f} N/mm")


def test_the_history_is_a_strip_that_goes_back(page: Page) -> None:
    for name in ("thistle.toml", "bramble.toml"):  # a history starts where a file is opened
        page.locator("#truck").select_option(name)
        expect(page).to_have_title(re.compile(name[:6]), timeout=LONG)
    expect(page.locator("#history")).to_be_hidden()
    set_mass(page, "motor", 250)
    set_mass(page, "winch", 20)
    steps = page.locator("#history .step")
    expect(steps).to_have_count(3)
    expect(steps.nth(2)).to_have_attribute("aria-pressed", "true")
    expect(steps.nth(2)).to_contain_text(re.compile(r"\d+\.\d°"), timeout=LONG)
    page.locator("#step-name").click()
    page.get_by_label("What to call the truck").fill("light winch")
    page.get_by_role("button", name="Name it").click()
    expect(steps.nth(2)).to_contain_text("light winch")
    steps.nth(0).click()
    expect(page.locator("#state")).to_have_text("saved")
    expect(steps.nth(0)).to_have_attribute("aria-pressed", "true")
    expect(steps.nth(2)).to_have_class(re.compile("undone"))
    steps.nth(2).click()
    expect(mass(page, "winch")).to_have_value("20.0")


def test_any_truck_or_step_can_be_compared_with(page: Page) -> None:
    assert page.locator("#numbers .diff").count() == 0
    set_mass(page, "motor", 250)
    all_up = page.locator("#numbers div", has_text="All up")
    expect(all_up.locator(".diff")).to_have_text(re.compile(r"^\+\d+$"))
    expect(page.locator(".views .ghost path").first).to_be_attached()
    expect(page.locator(".budget-bar.both")).to_have_count(4)
    page.locator("#step-pin").click()
    expect(all_up.locator(".diff")).to_have_count(0)
    set_mass(page, "motor", 260)
    expect(all_up.locator(".diff")).to_have_text("+10")
    page.locator("#reference").select_option("file:thistle.toml")
    expect(page.locator("#budget caption")).to_contain_text("thistle")
    expect(all_up.locator(".diff")).not_to_have_text("+10")
    assert page.locator(".views .ghost path").count() > 20
    expect(page.locator(".polar .before")).to_have_count(1)
    page.locator("#reference").select_option("auto")
    expect(page.locator("#budget caption")).to_contain_text("as saved")


def test_a_narrow_screen_keeps_the_numbers_in_view(chromium: Browser, bench: Bench) -> None:
    afresh(bench, "bramble")
    with looking(chromium, bench, (390, 844)) as seen:
        page = seen.page
        page.get_by_role("button", name="Notebook").click()
        page.get_by_label("Name of motor", exact=True).focus()
        dial = page.locator("#dial-mass")
        dial.scroll_into_view_if_needed()
        readout = page.locator("#readout")
        expect(readout).to_be_in_viewport()
        was = readout.inner_text()
        pull(page, "#dial-mass", 340)
        expect(readout).not_to_have_text(was)
        expect(readout).to_be_in_viewport()
        expect(dial).to_be_in_viewport()
        assert seen.complaints == []


def test_on_a_phone_every_field_of_a_scale_reading_is_in_view(
    chromium: Browser, bench: Bench
) -> None:
    with looking(chromium, bench, (390, 844)) as seen:
        seen.page.get_by_role("button", name="Notebook").click()
        seen.page.locator("#tab-measure").click()
        seen.page.locator("#tab-scales").click()
        fields = seen.page.locator("#readings tbody tr").first.locator("select, input, button")
        assert fields.count() == 5
        for field in fields.all():
            expect(field).to_be_in_viewport(ratio=1)
        assert seen.complaints == []


@pytest.mark.parametrize("size", [(1024, 576), (1280, 720)])
def test_nothing_is_cut_at_the_side(chromium: Browser, bench: Bench, size: tuple[int, int]) -> None:
    afresh(bench, "bramble")
    with looking(chromium, bench, size) as seen:
        page = seen.page
        set_mass(page, "motor", 250)
        wider = page.evaluate(
            """() => ['.below', '#parts', '#numbers', '#numbers dd', '#numbers dt', '#budget',
                      '.tabs', '.ways'].flatMap((s) => [...document.querySelectorAll(s)]
                .filter((e) => e.scrollWidth > e.clientWidth + 1)
                .map((e) => `${s} ${e.scrollWidth} ${e.clientWidth} ${e.textContent}`))"""
        )
        assert wider == []


def test_the_map_says_in_words_what_its_sides_are(page: Page) -> None:
    words = page.locator("svg.polar").text_content() or ""
    for name in ("nose", "tail", "left", "right", "nose downhill", "tail downhill", "60°"):
        assert name in words


FALLEN = """() => { const stage = benchWatch.stage; stage.table.updateMatrixWorld(true);
    const inverse = stage.table.matrixWorld.clone().invert(); let low = Infinity;
    for (const body of stage.bodies) for (const mesh of body.children) {
        if (!mesh.isMesh) continue;
        const p = mesh.geometry.getAttribute('position');
        const whole = inverse.clone().multiply(mesh.matrixWorld).elements;
        for (let i = 0; i < p.count; i++) low = Math.min(low, whole[2] * p.getX(i)
            + whole[6] * p.getY(i) + whole[10] * p.getZ(i) + whole[14]);
    }
    return low; }"""


@pytest.mark.parametrize("way", ["Left side down", "Right side down"])
def test_a_truck_gone_over_lies_on_the_table(page: Page, way: str) -> None:
    page.get_by_role("button", name=way).first.click()
    page.locator("#tilt").evaluate(
        "e => { e.value = 60; e.dispatchEvent(new Event('input', {bubbles: true})); }"
    )
    expect(page.locator("#standing")).to_contain_text("Gone over", timeout=LONG)
    assert page.evaluate(FALLEN) > -0.5, "mm; it does not sink through the table"
