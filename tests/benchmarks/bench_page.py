"""The bench in a real browser at 1280 x 720. Run as

    python tests/benchmarks/bench_page.py [--edits 1000]

Prints the first useful paint, the lag from a moved slider to the redrawn tip map over 200 moves,
frames a second of a replay, and what server and tab hold in memory over many edits.
"""

from __future__ import annotations

import argparse
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from playwright.sync_api import Browser, Page  # noqa: E402

from browsing import Bench, browser, looking, running, shop  # noqa: E402

MOVES = 200
MOVE = """([i, key]) => new Promise((done) => {
    const slider = document.querySelector(`input[type=range][data-key="${key}"]`);
    const low = Number(slider.min), high = Number(slider.max);
    const start = performance.now();
    slider.value = low + (high - low) * (0.3 + 0.4 * ((i * 37) % 200) / 200);
    slider.dispatchEvent(new Event('input', {bubbles: true}));
    const drawn = document.querySelector('.polar .rigid').getAttribute('d');
    const look = () => {
        if (document.querySelector('.polar .rigid').getAttribute('d') !== drawn)
            requestAnimationFrame(() => done(performance.now() - start));
        else if (performance.now() - start > 5000) done(5000);
        else setTimeout(look, 1);
    };
    look();
})"""


def first_paint(launched: Browser, bench: Bench) -> float:
    """s, from asking for the page to a truck's tip map on it."""
    page = launched.new_context(viewport={"width": 1280, "height": 720}).new_page()
    start = time.perf_counter()
    page.goto(bench.address, wait_until="commit")
    page.locator(".polar .rigid[d^=M]").wait_for()
    seconds = time.perf_counter() - start
    page.context.close()
    return seconds


def lags(page: Page) -> list[float]:
    """ms from the moved slider to the frame with the new map."""
    key = page.locator("#measures input[type=range]").first.get_attribute("data-key")
    found = []
    for i in range(MOVES + 10):
        found.append(page.evaluate(MOVE, [i, key]))
    return found[10:]


def replay_rate(page: Page) -> list[float]:
    """Frames a second, twice a second, of a trial played at its own speed."""
    page.get_by_role("button", name="Left side down").first.click()
    page.locator("#trial-one").click()
    page.locator("#replay-open").click(timeout=90_000)
    rates = []
    for _ in range(8):
        page.wait_for_timeout(500)
        rates.append(page.evaluate("benchWatch.replay.rate"))
    stage = page.locator("#stage-canvas").bounding_box()
    print(f"stage {stage['width']:.0f} x {stage['height']:.0f} px" if stage else "")
    page.locator("#replay-leave").click()
    return [r for r in rates if r]


def memory(page: Page, bench: Bench, edits: int) -> list[tuple[int, float, float]]:
    """(edits, server MB, tab MB), a tenth of the way at a time; the tab after its garbage."""
    session = page.context.new_cdp_session(page)
    rows = []
    box = page.locator("#measures input[type=range]").first
    first = float(box.input_value())
    for i in range(edits + 1):
        if i % max(1, edits // 10) == 0:
            session.send("HeapProfiler.collectGarbage")
            used = session.send("Runtime.getHeapUsage")["usedSize"] / 1e6
            status = Path(f"/proc/{bench.process.pid}/status").read_text()
            resident = int(status.split("VmRSS:")[1].split()[0]) / 1e3
            rows.append((i, resident, used))
        page.evaluate(
            "([v]) => new Promise((done) => { const b = document.querySelector("
            "'#measures input[type=range]'); b.value = v;"
            " b.dispatchEvent(new Event('change', {bubbles: true})); setTimeout(done, 60); })",
            [first + (i % 7)],
        )
    return rows


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--edits", type=int, default=0)
    edits = parser.parse_args().edits
    with (
        tempfile.TemporaryDirectory() as place,
        browser() as launched,
        running(shop(Path(place) / "shop", "bramble"), "bramble.toml") as bench,
    ):
        print(f"first useful paint  {first_paint(launched, bench):.2f} s")
        with looking(launched, bench) as seen:
            seen.page.wait_for_timeout(8000)  # the exact curves are drawn first
            took = np.array(lags(seen.page))
            middle, most = np.median(took), np.percentile(took, 95)
            print(f"slider to tip map   {middle:.0f} ms, p95 {most:.0f} ms over {len(took)} moves")
            print("replay frames/s     ", [round(r) for r in replay_rate(seen.page)])
            for i, server, tab in memory(seen.page, bench, edits) if edits else ():
                print(f"after {i:5d} edits   server {server:.0f} MB, tab {tab:.1f} MB")


if __name__ == "__main__":
    main()
