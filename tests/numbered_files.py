"""Demo trucks whose suspension is given by numbers, as a file may, instead of links and shocks."""

from __future__ import annotations

import re
from pathlib import Path

from crossfall.truck.build import Loaded, load_text
from crossfall.truck.read import locate

# Roughly what their links and shocks come to at ride height, save for anti-squat and anti-dive.
NUMBERS = {
    "bramble": {
        "front": """
spring_n_per_mm = 0.20
spring_spacing_mm = 112
damping_n_s_per_m = 9
roll_centre_mm = 82
bump_mm = 20
droop_mm = 16
bump_tol_mm = 1
droop_tol_mm = 1
anti_roll_n_mm_per_deg = 0
anti_dive_percent = 15
""",
        "rear": """
spring_n_per_mm = 0.26
spring_spacing_mm = 112
damping_n_s_per_m = 10
roll_centre_mm = 84
bump_mm = 20
droop_mm = 16
bump_tol_mm = 1
droop_tol_mm = 1
anti_roll_n_mm_per_deg = 4
anti_squat_percent = 30
""",
    },
    "burdock": {
        "front": """
spring_n_per_mm = 0.16
spring_spacing_mm = 124
damping_n_s_per_m = 9
roll_centre_mm = 84
bump_mm = 28
droop_mm = 26
anti_roll_n_mm_per_deg = 6
heave_lean_deg = 0
""",
        "rear": """
spring_n_per_mm = 0.17
spring_spacing_mm = 124
damping_n_s_per_m = 9.5
roll_centre_mm = 88
bump_mm = 28
droop_mm = 28
anti_roll_n_mm_per_deg = 8
anti_squat_percent = 25
""",
    },
    "thistle": {
        "front": """
spring_n_per_mm = 0.26
spring_spacing_mm = 98
damping_n_s_per_m = 8
roll_centre_mm = 78
bump_mm = 26
droop_mm = 5
anti_dive_percent = 0
""",
        "rear": """
spring_n_per_mm = 0.16
spring_spacing_mm = 98
damping_n_s_per_m = 5.5
roll_centre_mm = 80
bump_mm = 26
droop_mm = 4
anti_squat_percent = 45
""",
    },
}


def numbered_text(name: str) -> str:
    """The file of a demo truck with NUMBERS, and links that guide nothing."""
    text = locate(name).read_text(encoding="utf-8")
    text = re.sub(r'\nlink = "\w+"', "", text)
    for end, numbers in NUMBERS[name].items():
        head = re.escape(f"[{end}.suspension]")
        text, found = re.subn(rf"{head}\n(?:[^\n]+\n)+", f"[{end}.suspension]{numbers}", text)
        assert found == 1
    return text


def numbered(name: str) -> Loaded:
    """The truck of that file."""
    return load_text(numbered_text(name), Path(locate(name)))
