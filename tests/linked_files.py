"""Demo trucks whose link parts say what they are."""

from __future__ import annotations

import re
from pathlib import Path

from crossfall.truck.build import Loaded, load_text
from crossfall.truck.read import locate
from numbered_files import numbered_text

TRAVEL = ("bump_mm", "droop_mm")
TWO_SPRINGS = {"soft_n_per_mm": 0.4, "soft_travel_mm": 10.0}
STIFF = {"bramble": {"0.20": "0.50", "0.26": "0.60"}}  # springs under a soft one, N/mm
WHOLE = TWO_SPRINGS | {"shock_length_mm": 100.0, "shaft_travel_mm": 40.0, "droop_limiter_mm": 4.0}


def linked_text(name: str, counts: str = "links", *, shocks: bool = False) -> str:
    """The file of a demo truck with its links named, and by default what counts: the links."""
    text = numbered_text(name)
    for kind in ("lower", "upper", *(["shock"] if shocks else [])):
        pattern = rf'(name = "(?:front|rear) {kind}(?: link)?"\n)'
        text, found = re.subn(pattern, rf'\1link = "{kind}"\n', text)
        assert found == 2
    said = f'guided_by = "{counts}"\n' if counts else ""
    text = re.sub(r"(\[(?:front|rear)\.suspension\]\n)", rf"\1{said}", text)
    if shocks:
        text = re.sub(r"\nspring_n_per_mm", "\nshock_n_per_mm", text)
        text = re.sub(r"\nspring_spacing_mm = \d+", "", text)
    return text


def shocks_text(name: str = "bramble", *, without: tuple[str, ...] = (), **keys: float) -> str:
    """The same on shocks, with keys added to both axles' suspension and others taken away."""
    text = linked_text(name, shocks=True)
    for key in without:
        text, found = re.subn(rf"\n{key} = [\d.]+", "", text)
        assert found == 2
    added = "".join(f"{key} = {value}\n" for key, value in keys.items())
    return re.sub(r"(\[(?:front|rear)\.suspension\]\n)", rf"\1{added}", text)


def linked(name: str, *, shocks: bool = False) -> Loaded:
    """The truck of that file."""
    return load_text(linked_text(name, shocks=shocks), Path(locate(name)))


def on_whole_shocks(name: str = "bramble", **keys: float) -> Loaded:
    """On two springs each, stroke and length of the shocks given, and a spacer in them."""
    text = shocks_text(name, without=TRAVEL, **(WHOLE | keys))
    for soft, stiff in STIFF[name].items():
        text, found = re.subn(rf"\nshock_n_per_mm = {soft}\b", f"\nshock_n_per_mm = {stiff}", text)
        assert found == 1
    return load_text(text, Path(locate(name)))
