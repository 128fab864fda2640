"""The table in three dimensions: looking round, moving a part there, and how a truck falls."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from browsing import Bench, Watched, afresh, looking, running, shop

LONG = 60_000  # ms, on a machine with other work to do


@pytest.fixture(scope="module")
def bench(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Bench]:
    folder = shop(tmp_path_factory.mktemp("stage") / "shop", "bramble")
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


def place(bench: Bench, part: str) -> list[float]:
    """Where the file has a part once the page has saved it, mm."""
    parts = tomllib.loads((bench.folder / "bramble.toml").read_text())["part"]
    at: list[float] = next(p["at_mm"] for p in parts if p["name"] == part)
    return at


def tilted(page: Page, tilt: float, heading: int) -> None:
    page.evaluate(
        """(set) => { for (const [id, v] of set) { const e = document.getElementById(id);
        e.value = v; e.dispatchEvent(new Event('input', {bubbles: true})); } }""",
        [["turn", heading], ["tilt", tilt]],
    )


def test_a_part_is_moved_along_the_axis_that_one_takes(page: Page, bench: Bench) -> None:
    page.get_by_label("Name of winch").focus()
    before = place(bench, "winch")
    tip = page.locator(".handles .arm", has_text="ahead").locator("circle")
    expect(tip).to_be_visible()
    box = tip.bounding_box()
    assert box is not None
    at = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(*at)
    page.mouse.down()
    page.mouse.move(at[0] + 30, at[1] - 12, steps=4)
    readout = page.locator(".stage-readout")
    expect(readout).to_contain_text("winch")
    expect(readout).to_contain_text("ahead")
    expect(readout).to_contain_text("°")
    page.mouse.up()
    expect(page.locator("#state")).to_contain_text("not saved")
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")
    after = place(bench, "winch")
    assert after[0] > before[0]
    assert after[1:] == before[1:], "the other two axes were not taken"


def test_keys_move_a_part_in_the_plane_one_chooses(page: Page, bench: Bench) -> None:
    page.get_by_label("Name of winch").focus()
    before = place(bench, "winch")
    page.locator("#stage-canvas").press("Enter")
    grip = page.locator("#grip-3d")
    expect(grip).to_be_focused()
    grip.press("m")
    expect(page.locator("#move-along")).to_have_text("Moves: rear plane")
    for key in ("ArrowUp", "Shift+ArrowLeft"):
        told = grip.get_attribute("aria-valuetext") or ""
        grip.press(key)
        expect(grip).not_to_have_attribute("aria-valuetext", told)
    expect(grip).to_be_focused()
    grip.press("Escape")
    expect(page.locator("#stage-canvas")).to_be_focused()
    page.locator("#save").click()
    expect(page.locator("#state")).to_have_text("saved")
    assert place(bench, "winch") == [before[0], before[1] + 10, before[2] + 1]


def test_one_looks_from_where_one_wants_and_through_the_body(page: Page) -> None:
    canvas = page.locator("#stage-canvas")
    canvas.press("3")
    expect(page.get_by_role("button", name="Rear", exact=True)).to_have_attribute(
        "aria-pressed", "true"
    )
    canvas.press("t")
    expect(page.locator("#see-through")).to_have_attribute("aria-pressed", "true")
    for tag in ("CG", "pack"):
        expect(page.locator(".stage-tag", has_text=tag)).to_be_visible()
    for wheel in ("front left", "front right", "rear left", "rear right"):
        expect(page.locator(".stage-load", has_text=wheel)).to_contain_text("g")
    canvas.press("ArrowLeft")
    expect(page.locator('.looks [aria-pressed="true"]')).to_have_text("See through")


# mm: how far the lowest corner of a fallen truck is over the table, over the floor at its foot, and
# how far its CG has come down.
LYING = """() => { const stage = benchWatch.stage; stage.table.updateMatrixWorld(true);
    const V = stage.camera.position.constructor, theta = stage.moment.theta_deg * Math.PI / 180;
    let [table, floor] = [Infinity, Infinity];
    for (const p of stage.figure.corners()) {
        const q = p.clone().applyMatrix4(stage.fall.matrixWorld);
        table = Math.min(table, -(q.x + 250) * Math.sin(theta) + q.z * Math.cos(theta));
        floor = Math.min(floor, q.z + 12);
    }
    const cg = stage.falls.cg, now = cg.clone().applyMatrix4(stage.fall.matrixWorld);
    const then = cg.clone().applyMatrix4(stage.turn.matrixWorld);
    return { table, floor, down: then.z - now.z, turned: stage.falls.frames.at(-1).turned }; }"""


@pytest.mark.parametrize(("heading", "tilt"), [(90, 40), (270, 60), (45, 50), (135, 75)])
def test_a_truck_gone_over_comes_to_lie_on_table_or_floor(
    page: Page, heading: int, tilt: float
) -> None:
    tilted(page, tilt, heading)
    expect(page.locator("#standing")).to_contain_text("Gone over", timeout=LONG)
    lies = page.evaluate(LYING)
    assert lies["table"] > -0.5, "mm; it does not sink through the table"
    assert lies["floor"] > -0.5, "mm; nor through the floor"
    assert lies["down"] > 20, "mm; a fall goes down"
    assert lies["turned"] > 0.4, "rad; and over"


def test_a_truck_that_slides_goes_down_on_its_wheels(page: Page) -> None:
    tilted(page, 44, 0)
    expect(page.locator("#standing")).to_contain_text("Slides away", timeout=LONG)
    lies = page.evaluate(LYING)
    assert min(lies["table"], lies["floor"]) > -0.5
    assert lies["down"] > 20, "mm"
    page.locator("#trial-rail").check()
    expect(page.locator("#standing")).to_contain_text("Held by a rail as here")
    assert page.evaluate("benchWatch.stage.falls") is None
