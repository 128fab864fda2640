"""What links and shocks cost when a file is read for the first time, over the same by numbers."""

from __future__ import annotations

import time
from pathlib import Path

from crossfall.truck import axle_law, guides
from crossfall.truck.build import load_text
from crossfall.truck.read import locate
from linked_files import linked_text
from numbered_files import numbered_text

CACHES = (axle_law._guided, axle_law._pressed, axle_law._solver, guides._amounts)
ROUNDS = 15
# 1.3 to 1.4 and 1.5 were measured; the aim is 1.2.
MOST = {"links": 1.6, "shocks": 1.8}


def test_links_and_shocks_are_read_almost_as_fast_as_numbers() -> None:
    path = Path(locate("burdock"))
    texts = {
        "numbers": numbered_text("burdock"),
        "links": linked_text("burdock"),
        "shocks": linked_text("burdock", shocks=True),
    }
    least = dict.fromkeys(texts, float("inf"))
    for _ in range(ROUNDS):
        for kind, text in texts.items():
            for cache in CACHES:
                cache.cache_clear()
            begin = time.process_time()
            load_text(text, path)
            least[kind] = min(least[kind], time.process_time() - begin)
    for kind, most in MOST.items():
        assert least[kind] / least["numbers"] < most
