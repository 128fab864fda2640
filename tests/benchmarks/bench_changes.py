"""What changes buy, by statics and by virtual trials in the same conditions: run by hand.

python tests/benchmarks/bench_changes.py [side climb descent worst] [--surface NAME] [--truck NAME]

Every change of the truck's change file, on top of what it requires. Where the truck slides first,
with or without the change, both stand against a rail. Prints a line for each change and direction,
and for each direction the rank correlation (Spearman's) of the two gains, the wrong signs above
0.1 deg, and how far apart the gains are.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from crossfall.truck.build import Loaded, load_truck  # noqa: E402
from crossfall.truck.model import Array  # noqa: E402
from crossfall.tuning.changes import Catalogue, change_file_of, read_changes  # noqa: E402
from crossfall.tuning.directions import DIRECTIONS, Direction  # noqa: E402
from crossfall.tuning.whatif import Ranking, rank_changes  # noqa: E402
from trial_gains import Tried, tried_gain  # noqa: E402

WRONG = 0.1  # deg; a gain of less has no sign worth a word


def main() -> None:
    parser = argparse.ArgumentParser()
    parser.add_argument("directions", nargs="*", default=list(DIRECTIONS))
    parser.add_argument("--truck", default="bramble")
    parser.add_argument("--surface")
    asked = parser.parse_args()
    loaded = load_truck(asked.truck)
    catalogue = read_changes(change_file_of(loaded.path))
    for name in asked.directions:
        found = rank_changes(loaded, catalogue, name, surface=asked.surface)
        compare(loaded, catalogue, found, name)


def compare(loaded: Loaded, catalogue: Catalogue, found: Ranking, name: Direction) -> None:
    d = DIRECTIONS.index(name)
    tried = Tried(loaded, catalogue, found.grip)
    told, seen = [], []
    for o in found.outcomes:
        told.append(np.degrees(o.gain[d]))
        gain, most = tried_gain(tried, o, d)
        seen.append(np.degrees(gain))
        apart = f"{told[-1]:+.2f} {seen[-1]:+.2f} ±{np.degrees(most):.2f}"
        print(f"{name:8s} {catalogue.changes[o.change].name:22s} {apart}", flush=True)
    summary(name, np.array(told), np.array(seen))


def summary(name: str, told: Array, seen: Array) -> None:
    from scipy.stats import spearmanr

    known = np.isfinite(told) & np.isfinite(seen)
    told, seen = told[known], seen[known]
    off = np.abs(told - seen)
    wrong = int(np.sum((told * seen < 0) & (np.maximum(np.abs(told), np.abs(seen)) > WRONG)))
    print(
        f"{name}: {len(told)} changes, rank correlation {spearmanr(told, seen)[0]:.4f}, "
        f"{wrong} wrong signs above {WRONG} deg; apart by {np.median(off):.3f} (median), "
        f"{off.max():.3f} (most)",
        flush=True,
    )


if __name__ == "__main__":
    main()
