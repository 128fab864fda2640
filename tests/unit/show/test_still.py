"""A picture as a further page of the sheet."""

from __future__ import annotations

import io

import numpy as np
import pytest
from matplotlib.image import imsave

from crossfall.show.sheet.still import Still, draw_still
from crossfall.show.style import render
from crossfall.truck.errors import InputError


def png(width: int = 64, height: int = 40) -> bytes:
    buffer = io.BytesIO()
    imsave(buffer, np.tile(np.linspace(0, 1, width), (height, 1)), format="png")
    return buffer.getvalue()


def test_words_are_broken_into_lines_and_all_of_them_stand() -> None:
    words = ("One $ and two $ more.", " ".join(f"word{i}" for i in range(30)))
    made = draw_still("bramble", Still(png(), words))
    said = " ".join(text.get_text() for axes in made.axes for text in axes.texts)
    assert all(word in said for paragraph in words for word in paragraph.split())
    width = made.get_size_inches()[0] * made.dpi
    for axes in made.axes:
        for text in axes.texts:
            assert text.get_window_extent().x1 < width
    assert render(made, "pdf").startswith(b"%PDF")


@pytest.mark.parametrize(
    "wrong",
    [b"", b"no picture", png()[:20], b"GIF89a" + png()[6:], png(2001, 2), png() + bytes(1_500_000)],
)
def test_what_is_no_small_png_is_refused_before_it_is_read(wrong: bytes) -> None:
    with pytest.raises(InputError, match="cannot stand on the sheet"):
        Still(wrong, ())


def test_a_broken_picture_and_too_many_words_are_refused() -> None:
    whole = png()
    with pytest.raises(InputError, match="broken"):
        draw_still("bramble", Still(whole[:40] + bytes(len(whole) - 40), ()))
    with pytest.raises(InputError, match="too many words"):
        Still(whole, ("word",) * 13)
