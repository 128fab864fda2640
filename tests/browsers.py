"""A browser for the tests of the page: one that is there, or one that can be fetched.

Looked for on the system first, then among those that Playwright has fetched before. Where there is
none, Playwright is asked to fetch its own, and where that does not run (a bare container has none
of the libraries it needs) the system's packages are, by root. Once for all test processes.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from functools import cache
from pathlib import Path

NAMES = (
    *("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"),
    *("microsoft-edge", "microsoft-edge-stable", "msedge"),
)
PLACES = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    r"C:\Program Files\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Google\Chrome\Application\chrome.exe",
    r"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
)
HOW = (
    "the tests of the page need a browser and none could be found or fetched: install Chromium, "
    "Chrome or Edge, or run `uv run playwright install --with-deps chromium`, and test again"
)
LONGEST = 900  # s that fetching may take
WITHOUT = "CROSSFALL_NO_BROWSER"  # set in the environment: as on a machine where none can be had


@cache
def browser_path() -> str:
    """The program of a browser that starts, fetched if need be; "" where none can be had."""
    if os.environ.get(WITHOUT):
        return ""
    if found := _there():
        return found
    with _one_at_a_time():
        return _there() or _fetched() or _from_packages()


def _there() -> str:
    known = [shutil.which(name) or "" for name in NAMES]
    return next((p for p in (*known, *PLACES, _playwrights()) if p and _starts(p)), "")


def _starts(program: str) -> bool:
    if not Path(program).is_file():
        return False
    if sys.platform == "win32":
        return True  # there, asking for the version opens a window
    with suppress(OSError, subprocess.TimeoutExpired):
        asked = [program, "--version"]
        return subprocess.run(asked, capture_output=True, timeout=60).returncode == 0
    return False


def _playwrights() -> str:
    """Where Playwright keeps its own, whether it has been fetched or not."""
    from playwright.sync_api import Error, sync_playwright

    try:
        with sync_playwright() as playwright:
            return playwright.chromium.executable_path
    except Error:
        return ""


def _fetched() -> str:
    _try_to([sys.executable, "-m", "playwright", "install", "chromium"])
    own = _playwrights()
    return own if own and _starts(own) else ""


def _from_packages() -> str:
    if sys.platform == "win32" or os.geteuid() != 0 or shutil.which("apt-get") is None:
        return ""
    _try_to(["apt-get", "update", "-qq"])
    _try_to(["apt-get", "install", "-y", "-qq", "chromium"])
    return _there()


def _try_to(command: list[str]) -> None:
    with suppress(OSError, subprocess.TimeoutExpired):
        quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
        subprocess.run(command, env=quiet, capture_output=True, timeout=LONGEST)


@contextmanager
def _one_at_a_time() -> Iterator[None]:
    """Test processes side by side must not both fetch: a folder can be made by one only."""
    mark = Path(tempfile.gettempdir()) / "crossfall-fetching-a-browser"
    end = time.monotonic() + 3 * LONGEST
    while True:
        try:
            mark.mkdir()
            break
        except FileExistsError:
            with suppress(OSError):
                if time.time() - mark.stat().st_mtime > 3 * LONGEST or time.monotonic() > end:
                    mark.rmdir()  # left behind by a process that was killed
            time.sleep(0.5)
    try:
        yield
    finally:
        with suppress(OSError):
            mark.rmdir()
