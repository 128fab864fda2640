"""What can be wrong with an input, said in one sentence each."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from crossfall.truck.visible import visible


@dataclass(frozen=True)
class Problem:
    """One mistake in an input file.

    `file` and `key` say where; `line` is 1-based, or None where no line applies;
    `what` says what is wrong and `allowed` what would be right.
    """

    file: str
    what: str
    allowed: str = ""
    key: str = ""
    line: int | None = None

    def __str__(self) -> str:
        place = self.file if self.line is None else f"{self.file}:{self.line}"
        key = f" {self.key}:" if self.key else ""
        allowed = f"; {self.allowed}" if self.allowed else ""
        return visible(f"{place}:{key} {self.what}{allowed}")


class InputError(Exception):
    """Bad input. Carries every problem found; the command line prints a line each, exit 2."""

    def __init__(self, problems: Problem | Iterable[Problem]) -> None:
        self.problems = (problems,) if isinstance(problems, Problem) else tuple(problems)
        super().__init__("\n".join(str(p) for p in self.problems))


class StoppedError(Exception):
    """Work stopped half-way, for a reason in one sentence. What was finished is kept: exit 3."""
