"""A real bench process and a real headless browser, for the tests of the page."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import tomllib
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from playwright.sync_api import Browser, Page, expect, sync_playwright

from browsers import browser_path
from crossfall.truck.demos import demo_folder

FLAGS = [
    "--no-sandbox",
    "--enable-unsafe-swiftshader",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-default-apps",
    "--disable-sync",
    "--no-first-run",
    "--disable-features=MediaRouter,OptimizationHints,Translate",
]
# Said by the software renderer when pixels are read back for a screenshot; no fault of the page.
READ_BACK = "GPU stall due to ReadPixels"

expect.set_options(timeout=20_000)  # ms; server and browser share two cores with other work


@dataclass
class Bench:
    """A running bench: its address, the folder it opened, and where its journals are."""

    address: str
    folder: Path
    state: Path
    process: subprocess.Popen[str]


@contextmanager
def running(folder: Path, truck: str, *options: str) -> Iterator[Bench]:
    """`crossfall bench` as a process of its own, on a free port, killed at the end."""
    state = folder.parent / "state"
    command = [sys.executable, "-m", "crossfall.cli", "bench", truck, "--port", "0"]
    command += ["--no-browser", "--json", *options]
    environment = {**os.environ, "XDG_STATE_HOME": str(state)}
    process = subprocess.Popen(
        command, cwd=folder, env=environment, stdout=subprocess.PIPE, text=True
    )
    try:
        assert process.stdout is not None
        line = process.stdout.readline()
        yield Bench(json.loads(line)["address"], folder, state, process)
    finally:
        process.kill()
        process.wait()


def shop(folder: Path, *names: str) -> Path:
    """A workshop folder with copies of demo trucks."""
    folder.mkdir()
    for name in names:
        shutil.copy(demo_folder() / f"{name}.toml", folder)
    shutil.copytree(demo_folder() / "meshes", folder / "meshes")
    return folder


def ask(bench: Bench, path: str) -> dict[str, object]:
    """A question that changes nothing."""
    opener = urllib.request.build_opener(urllib.request.ProxyHandler({}))
    with opener.open(bench.address + path.lstrip("/"), timeout=60) as answer:
        found: dict[str, object] = json.load(answer)
    return found


def tell(bench: Bench, path: str, body: dict[str, object]) -> dict[str, object]:
    """A question to the bench as its page would ask it."""
    request = urllib.request.Request(
        bench.address + path.lstrip("/"),
        json.dumps(body).encode(),
        {"Content-Type": "application/json", "Origin": bench.address.rstrip("/")},
    )
    opener = urllib.request.build_opener(urllib.request.ProxyHandler({}))
    with opener.open(request, timeout=60) as answer:
        found: dict[str, object] = json.load(answer)
    return found


def turn_to(page: Page, *names: str) -> None:
    """A page of the notebook by the names of its tabs, from the outermost."""
    for name in names:
        page.get_by_role("tab", name=name, exact=True).click()


def deaf(page: Page, bench: Bench) -> None:
    """From now on the page is told that nothing happens elsewhere, so that it is taken unawares."""
    told = json.dumps(ask(bench, "/api/pulse"))
    page.route(
        "**/api/pulse", lambda route: route.fulfill(body=told, content_type="application/json")
    )


def afresh(bench: Bench, name: str) -> None:
    """The demo truck's own file back in the folder and on the desk."""
    shutil.copy(demo_folder() / f"{name}.toml", bench.folder)
    state = tell(bench, "/api/open", {"name": f"{name}.toml"})
    tell(bench, "/api/discard", {k: state[k] for k in ("document", "revision")})


def on_disk(bench: Bench, part: str, name: str = "bramble.toml") -> dict[str, Any]:
    parts = tomllib.loads((bench.folder / name).read_text())["part"]
    return next(p for p in parts if p["name"] == part)


def slide(page: Page, selector: str, value: float, *, let_go: bool = True) -> None:
    events = ["input", "change"] if let_go else ["input"]
    page.locator(selector).evaluate(
        "(e, [v, names]) => { e.value = v; for (const n of names)"
        " e.dispatchEvent(new Event(n, {bubbles: true})); }",
        [value, events],
    )


def row(page: Page, part: str) -> Any:
    return page.locator(f'#parts tr:has(input[aria-label="Name of {part}"])')


@contextmanager
def browser() -> Iterator[Browser]:
    with sync_playwright() as playwright:
        launched = playwright.chromium.launch(executable_path=browser_path(), args=FLAGS)
        yield launched
        launched.close()


@dataclass
class Watched:
    """A page, with what it complained about and whom it called."""

    page: Page
    complaints: list[str] = field(default_factory=list)
    strangers: list[str] = field(default_factory=list)


@contextmanager
def looking(
    launched: Browser,
    bench: Bench,
    size: tuple[int, int] = (1280, 720),
    light: str = "light",
    prepare: str = "",
) -> Iterator[Watched]:
    """A fresh page on the bench, ready; complaints and foreign requests are noted."""
    context = launched.new_context(
        viewport={"width": size[0], "height": size[1]},
        color_scheme="dark" if light == "dark" else "light",
        reduced_motion="reduce",
    )
    context.set_default_timeout(60_000)
    if prepare:  # a script that runs in the page before its own
        context.add_init_script(prepare)
    page = context.new_page()
    seen = Watched(page)
    home = urlsplit(bench.address).netloc

    def heard(kind: str, text: str) -> None:
        if kind in ("error", "warning") and READ_BACK not in text:
            seen.complaints.append(f"{kind}: {text}")

    def called(url: str) -> None:
        parts = urlsplit(url)
        if parts.scheme not in ("data", "blob") and parts.netloc != home:
            seen.strangers.append(url)

    page.on("console", lambda message: heard(message.type, message.text))
    page.on("pageerror", lambda error: heard("error", str(error)))
    page.on("request", lambda request: called(request.url))
    page.goto(bench.address)
    page.wait_for_selector("html[data-ready]")
    yield seen
    context.close()
