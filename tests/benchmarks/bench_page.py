"""The bench in a real browser at 1280 x 720. Run as

    python tests/benchmarks/bench_page.py [--edits 1000]

Prints the first paint and when the page is ready, the lag from a moved slider to the redrawn tip
map and numbers over 200 moves beside the least there can be (a question to the server and a frame),
frames a second of a replay, and what server and tab hold in memory over many edits. How busy the
machine is stands before it all: two of these moves want a processor each.
"""

from __future__ import annotations

import argparse
import os
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from playwright.sync_api import Browser, Page  # noqa: E402

from browsing import Bench, browser, looking, running, shop  # noqa: E402
from crossfall.app.server import STATIC  # noqa: E402

MEASURED = ("slider to tip map", "least there can be")
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


PLAIN = """() => new Promise((done) => {
    const start = performance.now();
    fetch('/api/pulse').then((r) => r.json()).then(() =>
        requestAnimationFrame(() => done(performance.now() - start)));
})"""


def first_paint(launched: Browser, bench: Bench) -> tuple[float, float, float]:
    """s, from asking for the page to anything painted, to a truck's tip map, and to ready."""
    page = launched.new_context(viewport={"width": 1280, "height": 720}).new_page()
    start = time.perf_counter()
    page.goto(bench.address, wait_until="commit")
    page.locator(".polar .rigid[d^=M]").wait_for()
    seconds = time.perf_counter() - start
    page.wait_for_selector("html[data-ready]")
    marks = "performance.getEntriesByName('{}')[0].startTime / 1000"
    painted, ready = (
        page.evaluate(marks.format(name)) for name in ("first-contentful-paint", "bench-ready")
    )
    page.context.close()
    return painted, seconds, ready


def lags(page: Page) -> tuple[list[float], list[float]]:
    """ms from the moved slider to the frame with the new map; and, taken in turns with it, from a
    question that needs no answering to the next frame."""
    key = page.locator("#measures input[type=range]").first.get_attribute("data-key")
    found, plain = [], []
    for i in range(MOVES + 10):
        found.append(page.evaluate(MOVE, [i, key]))
        plain.append(page.evaluate(PLAIN))
    return found[10:], plain[10:]


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
        print(f"load average        {os.getloadavg()[0]:.1f} on {os.cpu_count()} processors")
        size = sum(f.stat().st_size for f in STATIC.iterdir())
        print(f"page, all of it     {size / 1e6:.2f} MB")
        first_paint(launched, bench)  # the server has read what it needs
        painted, useful, ready = first_paint(launched, bench)
        print(f"first paint {painted:.2f} s, tip map {useful:.2f} s, ready {ready:.2f} s")
        with looking(launched, bench) as seen:
            seen.page.wait_for_timeout(8000)  # the exact curves are drawn first
            for words, took in zip(MEASURED, lags(seen.page), strict=True):
                middle, most = np.median(took), np.percentile(took, 95)
                print(f"{words:19s} {middle:.0f} ms, p95 {most:.0f} ms over {len(took)} moves")
            print(f"load average        {os.getloadavg()[0]:.1f}")
            print("replay frames/s     ", [round(r) for r in replay_rate(seen.page)])
            for i, server, tab in memory(seen.page, bench, edits) if edits else ():
                print(f"after {i:5d} edits   server {server:.0f} MB, tab {tab:.1f} MB")


if __name__ == "__main__":
    main()
