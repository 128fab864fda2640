"""The line that says how far a long question has come, and what is left of it."""

from __future__ import annotations

import sys

from crossfall.verbs.tilt import ProgressLine


def test_a_terminal_is_told_what_is_left_once_that_is_long(monkeypatch, capsys):
    monkeypatch.setattr(sys.stderr, "isatty", lambda: True)
    with ProgressLine(quiet=False) as line:
        line.began, line.clock = 0.0, lambda: 6.0
        line(0, 48)
        line(12, 48)
        line(47, 48)
    said = [part.strip() for part in capsys.readouterr().err.split("\r")]
    assert said == ["", "trial 1 of 48", "trial 13 of 48, some 18 s left", "trial 48 of 48", "", ""]


def test_nobody_else_is_told_anything(capsys):
    with ProgressLine(quiet=False) as line:
        line(3, 48)
    with ProgressLine(quiet=True) as line:
        line(3, 48)
    assert capsys.readouterr() == ("", "")
