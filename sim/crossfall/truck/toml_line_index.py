"""Which line of a TOML file a key stands on.

The standard reader gives values without places, so this walks the text a second time. It may
assume the text is valid TOML, since it is only asked after the reader has accepted it.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

KeyPath = tuple[str | int, ...]

_BARE = re.compile(r"[A-Za-z0-9_-]+")
_SPACE = re.compile(r"[ \t]*")
_BLANK = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
_LONG = r'"""(?:[^"\\]|\\.|"{1,2}(?!"))*"{3,5}' r"|'''(?:[^']|'{1,2}(?!'))*'{3,5}"
_LONG_STRING = re.compile(_LONG, re.DOTALL)
_STRING = re.compile(_LONG + r'|"(?:[^"\\\n]|\\.)*"' r"|'[^'\n]*'", re.DOTALL)
_NAME = r"(?:[A-Za-z0-9_-]+|\"(?:[^\"\\\n]|\\.)*\"|'[^'\n]*')"
# What can be mistaken for a dotted key is stepped over: comments, long strings, and what is left of
# a line after a quote that has no second one.
_DOTTED = re.compile(rf"#[^\n]*|\"\"\"|'''|({_NAME}(?:[ \t]*\.[ \t]*{_NAME})+)|{_NAME}|[\"'][^\n]*")
_PART = re.compile(_NAME)
_SCALAR = re.compile(r"[^,\]}#\n]*")
_ESCAPE = re.compile(r"\\(u[0-9A-Fa-f]{4}|U[0-9A-Fa-f]{8}|.)")
_SHORT = {"b": "\b", "t": "\t", "n": "\n", "f": "\f", "r": "\r"}


def line_index(text: str) -> dict[KeyPath, int]:
    """1-based line of every key, table and array entry, by its path; tables count from 0."""
    return _Walk(text).run()


def deepest_key(text: str) -> tuple[int, int] | None:
    """How many names the longest dotted key has, and its line; None where there is none.

    Any text will do: this is asked before the standard reader, whose time and memory grow with the
    square of that number.
    """
    most, at, start = 1, 0, 0
    while found := _DOTTED.search(text, start):
        start = found.end()
        if found.group() in ('"""', "'''"):
            whole = _LONG_STRING.match(text, found.start())
            if whole is None:
                break  # it never ends, so nothing behind it is read
            start = whole.end()
        elif found.group(1) and (names := len(_PART.findall(found.group(1)))) > most:
            most, at = names, found.start()
    return (most, text.count("\n", 0, at) + 1) if most > 1 else None


def nearest_line(index: Mapping[KeyPath, int], path: KeyPath) -> int | None:
    """The line of `path`, or of the closest thing around it that the file does have."""
    for end in range(len(path), 0, -1):
        if path[:end] in index:
            return index[path[:end]]
    return None


class _Walk:
    """A cursor over the text; every method leaves it behind what it has read."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.at = 0
        self.line = 1
        self.found: dict[KeyPath, int] = {}
        self.entries: dict[KeyPath, int] = {}  # how many [[tables]] there are so far, by path

    def skip(self, pattern: re.Pattern[str]) -> str:
        match = pattern.match(self.text, self.at)
        if match is None:
            return ""
        self.at = match.end()
        self.line += match.group().count("\n")
        return match.group()

    def take(self, mark: str) -> bool:
        if self.text.startswith(mark, self.at):
            self.at += len(mark)
            return True
        return False

    def note(self, path: KeyPath) -> None:
        self.found.setdefault(path, self.line)

    def run(self) -> dict[KeyPath, int]:
        table: KeyPath = ()
        self.skip(_BLANK)
        while self.at < len(self.text):
            start = self.at
            if self.take("[["):
                table = self.header(many=True)
            elif self.take("["):
                table = self.header(many=False)
            else:
                self.pair(table)
            self.skip(_BLANK)
            if self.at == start:  # not valid after all: better no line than no end
                break
        return self.found

    def header(self, many: bool) -> KeyPath:
        line = self.line
        names = self.dotted()
        path: KeyPath = ()
        for i, name in enumerate(names):
            path += (name,)
            self.found.setdefault(path, line)
            if many and i == len(names) - 1:
                self.entries[path] = self.entries.get(path, -1) + 1
            if path in self.entries:
                path += (self.entries[path],)
        self.found.setdefault(path, line)
        self.skip(_SPACE)
        _ = self.take("]]") if many else self.take("]")
        return path

    def dotted(self) -> list[str]:
        names = []
        while True:
            self.skip(_SPACE)
            names.append(self.key())
            self.skip(_SPACE)
            if not self.take("."):
                return names

    def key(self) -> str:
        quoted = self.skip(_STRING)
        if quoted.startswith("'"):
            return quoted[1:-1]
        if quoted:
            return _ESCAPE.sub(_unescape, quoted[1:-1])
        return self.skip(_BARE)

    def pair(self, table: KeyPath) -> None:
        path = table
        for name in self.dotted():
            path += (name,)
            self.note(path)
        self.take("=")
        self.skip(_SPACE)
        self.value(path)

    def value(self, path: KeyPath) -> None:
        if self.take("["):
            self.inside(path, "]")
        elif self.take("{"):
            self.inside(path, "}")
        elif not self.skip(_STRING):
            self.skip(_SCALAR)

    def inside(self, path: KeyPath, close: str) -> None:
        count = 0
        while self.at < len(self.text):
            self.skip(_BLANK)
            if self.take(close):
                return
            start = self.at
            if close == "]":
                self.note((*path, count))
                self.value((*path, count))
                count += 1
            else:
                self.pair(path)
            self.skip(_BLANK)
            self.take(",")
            if self.at == start:
                return


def _unescape(match: re.Match[str]) -> str:
    code = match.group(1)
    if code[0] in "uU" and len(code) > 1:
        return chr(int(code[1:], 16))
    return _SHORT.get(code, code)
