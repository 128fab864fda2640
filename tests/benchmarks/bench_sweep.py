"""A million builds by four directions in closed form. Run as

python tests/benchmarks/bench_sweep.py
"""

from __future__ import annotations

import resource
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from closed_tables import closed_form_table  # noqa: E402
from crossfall.study.scenario import load_scenario  # noqa: E402
from crossfall.study.sweep import run_scenario  # noqa: E402

TEXT = """
name = "a million"
truck = "bramble"
method = "closed form"
[[axis]]
key = "both.track_mm"
first = 150
last = 200
steps = 100
[[axis]]
key = "part.battery pack.at_mm.z"
first = 50
last = 130
steps = 100
[[axis]]
key = "part.battery pack.at_mm.x"
first = -100
last = 100
steps = {steps}
"""


def peak() -> float:
    """MB, the most memory this process has held."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main() -> None:
    """Processor time and memory of 10,000, 100,000 and a million builds."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "s.toml"
        for steps in (2, 10, 100):
            path.write_text(TEXT.format(steps=steps))
            scenario = load_scenario(path)
            began, lines = time.process_time(), 0
            for chunk in closed_form_table(scenario):
                lines += len(chunk["tip_deg"])
            took = time.process_time() - began
            print(f"{lines // 4} builds x 4: {took:.2f} s of processor, peak {peak():.0f} MB")
        began = time.process_time()
        run_scenario(scenario, Path(folder) / "out")
        print(f"with the table written: {time.process_time() - began:.2f} s, peak {peak():.0f} MB")


if __name__ == "__main__":
    main()
