"""Colours that stand side by side stay apart for colour-blind eyes, by simulation.

Simulation: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, IEEE Trans. Vis. Comput. Graph. 15
(2009) 1291-1298; distance: CAM02-UCS, M. R. Luo, G. Cui and C. Li, Color Res. Appl. 31 (2006)
320-330; both by the library colorspacious. There a distance of about 1 is just seen (from memory);
ten times that is asked for, with lines as thin as ours.
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from colorspacious import cspace_convert

from crossfall.show.style import LIGHT

TOGETHER = {
    "answers": ("rigid", "compliant", "trial", "slide", "paper"),
    "gains": ("helps", "hurts", "paper"),
    "parts": ("sprung", "unsprung", "tyre", "link", "paper"),
    "wheels": ("front", "rear", "paper"),
}
EYES = (None, "deuteranomaly", "protanomaly", "tritanomaly")


def seen(colour: str, eyes: str | None) -> np.ndarray:
    rgb = np.array([int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)])
    if eyes is not None:
        space = {"name": "sRGB1+CVD", "cvd_type": eyes, "severity": 100}
        rgb = np.clip(cspace_convert(rgb, space, "sRGB1"), 0, 1)
    return cspace_convert(rgb, "sRGB1", "CAM02-UCS")


@pytest.mark.parametrize("theme", [LIGHT], ids=["light"])
@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("roles", TOGETHER.values(), ids=TOGETHER)
def test_colours_stay_apart(theme, eyes, roles):
    for a, b in itertools.combinations(roles, 2):
        apart = np.linalg.norm(seen(getattr(theme, a), eyes) - seen(getattr(theme, b), eyes))
        assert apart > 10, (a, b)
