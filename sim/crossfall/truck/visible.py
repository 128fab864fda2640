"""Text as it may go to a terminal: control characters and the like spelled out, not obeyed."""

from __future__ import annotations


def visible(text: str) -> str:
    """One line in which every character can be seen: an escape comes out as \\x1b, and so on."""
    return text if text.isprintable() else "".join(map(_shown, text))


def _shown(character: str) -> str:
    if character.isprintable():
        return character
    return character.encode("unicode_escape").decode("ascii")
