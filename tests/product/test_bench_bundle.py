"""The shipped page is what its sources give, and asks for nothing from elsewhere."""

from __future__ import annotations

import hashlib
import re
from pathlib import Path

from crossfall.app.server import KINDS, STATIC

PAGE = Path(__file__).resolve().parents[2] / "sim" / "page"


def test_the_bundle_was_built_from_these_sources() -> None:
    """`npm run build` in sim/page writes this list; CI builds again and compares the bytes."""
    listed = {}
    for line in (STATIC / "built-from.txt").read_text().splitlines():
        digest, name = line.split("  ")
        listed[name] = digest
    sources = {f"src/{p.name}" for p in (PAGE / "src").glob("*.ts")}
    assert sources == {n for n in listed if n.startswith("src/")}
    for name, digest in listed.items():
        assert hashlib.sha256((PAGE / name).read_bytes()).hexdigest() == digest, name


def test_the_page_is_small() -> None:
    """All that a browser fetches before it shows a truck, in bytes."""
    assert sum(file.stat().st_size for file in STATIC.iterdir()) <= 1_200_000


def test_the_page_names_no_other_host() -> None:
    allowed = {"www.w3.org"}  # a namespace, never fetched
    for name in KINDS:
        if name != "bench.js":  # the drawing library names its own pages in its messages
            text = (STATIC / name).read_text()
            assert set(re.findall(r"https?://([\w.-]+)", text)) <= allowed
    for source in (PAGE / "src").glob("*.ts"):
        hosts = set(re.findall(r"https?://([\w.-]+)", source.read_text()))
        assert hosts <= allowed, source.name
