"""Demo trucks whose link parts say what they are."""

from __future__ import annotations

import re
from pathlib import Path

from crossfall.truck.build import Loaded, load_text
from crossfall.truck.read import locate
from numbered_files import numbered_text


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


def linked(name: str, *, shocks: bool = False) -> Loaded:
    """The truck of that file."""
    return load_text(linked_text(name, shocks=shocks), Path(locate(name)))
