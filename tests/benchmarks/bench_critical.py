"""Coverage of the critical slope's interval over simulated searches, at full size. Run as

python tests/benchmarks/bench_critical.py [REPEATS]
"""

from __future__ import annotations

import sys
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "sim"), str(ROOT / "tests")]

from crossfall.study.critical import next_angle, stated  # noqa: E402
from threshold_laws import LAWS  # noqa: E402

LOW, HIGH = 10.0, 70.0
LOOKS = (20, 30, 40, 60)


def search(seed: int, law: str, unit: float) -> list[tuple[bool, float]]:
    """Whether the interval holds the truth, and its width, after each number of trials."""
    rng = np.random.default_rng(seed)
    truth = rng.uniform(25, 45)
    angles: list[float] = []
    failed: list[bool] = []
    out = []
    for _ in range(max(LOOKS)):
        angles.append(next_angle(angles, failed, LOW, HIGH))
        failed.append(bool(angles[-1] > truth + unit * LAWS[law](rng)))
        if len(angles) in LOOKS:
            fit = stated(angles, failed)
            out.append((fit.low <= truth <= fit.high, fit.high - fit.low))
    return out


def main() -> None:
    """Coverage and median width of sharp, middling and gradual slopes, law by law."""
    repeats = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    for law in LAWS:
        for unit in (0.2, 1.1, 4.0):
            found = np.array([search(seed, law, unit) for seed in range(repeats)])
            for i, trials in enumerate(LOOKS):
                covered, width = found[:, i, 0].mean(), np.median(found[:, i, 1])
                print(
                    f"{law}, {unit:g}, {trials} trials: {100 * covered:.1f} % cover, "
                    f"width {width:.2f}",
                    flush=True,
                )


if __name__ == "__main__":
    main()
