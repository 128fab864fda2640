"""How a command ends: what is said of a failure, and its exit status.

0 answered, 1 answered "no", 2 bad input, 3 stopped with the work so far kept, 4 a fault of
crossfall's own. Under --json a failure is one JSON object on standard output too.
"""

from __future__ import annotations

import codecs
import errno
import io
import logging
import os
import re
import sys
import traceback
import warnings
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from typing import TextIO

import click

from crossfall.truck.errors import InputError, Problem, StoppedError
from crossfall.truck.visible import visible

BAD_INPUT, STOPPED, FAULT = 2, 3, 4
TRACEBACK = "CROSSFALL_TRACEBACK"  # set in the environment: a fault of our own is shown whole
_KINDS = {BAD_INPUT: "bad input", STOPPED: "stopped", FAULT: "fault"}
# What our own tables and meters send to a terminal: colours, and clearing a line.
_OURS = re.compile(r"\x1b\[[0-9;]*m|\x1b\[K")
_HIDDEN = re.compile(r"[^\x20-\x7e]")
_LAYOUT = "\n\r\t"
_ASCII = {"°": " deg", "±": "+/-", "×": "x", "−": "-", "–": "-", "…": "...", "≥": ">=", "≤": "<="}
_ASCII |= {
    "·": ".",
    "•": "-",
    "→": "->",
    "²": "2",
    "³": "3",
    "‘": "'",
    "’": "'",
    "μ": "mu",
    "µ": "u",
}


class ReaderGone(Exception):
    """Nobody reads the output any more, as after `| head -1`: not a failure."""


@contextmanager
def reader_may_leave() -> Iterator[None]:
    """A broken pipe as ReaderGone, which click hands on; it would end with 1, which means "no"."""
    try:
        yield
    except OSError as error:
        if no_reader(error):
            raise ReaderGone from None
        raise


def no_reader(error: OSError) -> bool:
    """Whether it says that nobody reads a pipe any more; Windows calls that an invalid argument,
    as it may call a file's name, which is then in the error."""
    windows = sys.platform == "win32" and error.errno == errno.EINVAL and error.filename is None
    return isinstance(error, BrokenPipeError) or error.errno == errno.EPIPE or windows


def end(command: Callable[[], object], words: list[str]) -> int:
    """Do a command and say how it failed, if it did; the exit status.

    words: of the command line, from which the verb's name and --json are taken.
    """
    if not sys.warnoptions:
        warnings.simplefilter("ignore")  # a user can do nothing about a library's
    if sys.stderr.isatty():
        told = logging.StreamHandler()
        told.setFormatter(logging.Formatter("crossfall: %(message)s"))
        logging.getLogger("crossfall").addHandler(told)
        logging.getLogger("crossfall").setLevel(logging.INFO)
    with _readable(), _readable("stderr"):
        status = _status(command, words)
        try:
            sys.stdout.flush()
        except OSError as error:
            if not no_reader(error):
                status = _fail(words, BAD_INPUT, [_of_system(error)])
            _let_go()
    return status


def _status(command: Callable[[], object], words: list[str]) -> int:
    try:
        status = command()
        return status if isinstance(status, int) else 0
    except ReaderGone:
        _let_go()
        return 0
    except InputError as error:
        return _fail(words, BAD_INPUT, error.problems)
    except click.ClickException as error:
        return _fail(words, BAD_INPUT, [error.format_message()])
    except StoppedError as error:
        return _fail(words, STOPPED, [str(error)])
    except (KeyboardInterrupt, click.Abort):
        return _fail(words, STOPPED, ["stopped; what was finished is kept"])
    except OSError as error:
        if no_reader(error):
            _let_go()
            return 0
        return _fail(words, BAD_INPUT, [_of_system(error)])
    except MemoryError:
        return _fail(words, FAULT, ["there is not enough memory for this"])
    except Exception as error:
        if os.environ.get(TRACEBACK):
            traceback.print_exc()
        return _fail(words, FAULT, [_own_fault(error)])


def _fail(words: list[str], status: int, said: list[str] | tuple[Problem, ...]) -> int:
    for one in said:
        with suppress(OSError):
            click.echo(f"crossfall: {visible(str(one))}", err=True)
    if "--json" in words:
        from crossfall.verbs.common import emit, problem_keys

        verb = next((w for w in words if not w.startswith("-")), "")
        problems = [problem_keys(p if isinstance(p, Problem) else Problem("", p)) for p in said]
        with suppress(OSError):
            emit(verb, {"failed": _KINDS[status], "exit_status": status, "problems": problems})
    return status


def _of_system(error: OSError) -> str:
    """Which file, and what the system says of it."""
    return f"{error.filename or 'standard output'}: {error.strerror or error}"


def _own_fault(error: Exception) -> str:
    frame = traceback.extract_tb(error.__traceback__)[-1]
    where = f"{os.path.basename(frame.filename)}:{frame.lineno}"
    return (
        f"a fault of crossfall's own, not of your files: {type(error).__name__}: {error} "
        f"({where}); please report it with the command and the files, or set {TRACEBACK}=1 to "
        "see where it comes from"
    )


def _let_go() -> None:
    """Python flushes at exit, and would complain of a reader that has gone."""
    with suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


@contextmanager
def _readable(name: str = "stdout") -> Iterator[None]:
    """Standard output or error in which every character can be seen, and none cannot be written.

    Names of trucks, files and sweeps are written by others: what would move a terminal's cursor,
    or turn the direction of writing, is spelled out wherever it comes from.
    """
    codecs.register_error("crossfall", _plainly)
    before: TextIO = getattr(sys, name)
    buffer = getattr(before, "buffer", None)
    if buffer is None:
        yield
        return
    before.flush()
    ours = _Readable(
        buffer, before.encoding, errors="crossfall", line_buffering=True, write_through=False
    )
    setattr(sys, name, ours)
    try:
        yield
    finally:
        setattr(sys, name, before)
        with suppress(OSError):
            ours.flush()
        ours.detach()


class _Readable(io.TextIOWrapper):
    def write(self, text: str) -> int:
        clean = text if text.isascii() and text.isprintable() else self._clean(text)
        super().write(clean)
        return len(text)

    def _clean(self, text: str) -> str:
        if not self.isatty():
            return _spelled(text)
        done, at = [], 0
        for own in _OURS.finditer(text):
            done += [_spelled(text[at : own.start()]), own.group()]
            at = own.end()
        return "".join([*done, _spelled(text[at:])])


def _spelled(text: str) -> str:
    return _HIDDEN.sub(lambda c: c.group() if c.group() in _LAYOUT else visible(c.group()), text)


def _plainly(error: UnicodeError) -> tuple[str, int]:
    """For a terminal that knows few letters: the nearest thing in ASCII."""
    if not isinstance(error, UnicodeEncodeError):
        raise error
    letters = error.object[error.start : error.end]
    plain = "".join(_ASCII.get(c) or c.encode("unicode_escape").decode("ascii") for c in letters)
    return plain, error.end
