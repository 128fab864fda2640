"""What only Windows runs, with that system's calls put in place of this one's."""

from __future__ import annotations

import importlib.util
import os
import sys
from pathlib import Path
from types import ModuleType

import pytest

from crossfall.app import journal
from crossfall.truck import locks


class Bytes(ModuleType):
    """As the C runtime there: a range of bytes from where the file stands belongs to one opening,
    whoever else asks is refused, and nobody reads or writes in it."""

    LK_NBLCK, LK_UNLCK = 2, 0

    def __init__(self) -> None:
        super().__init__("msvcrt")
        self.held: dict[tuple[int, int], int] = {}  # inode and byte -> handle

    def locking(self, handle: int, mode: int, count: int) -> None:
        assert count == 1
        place = os.fstat(handle).st_ino, os.lseek(handle, 0, os.SEEK_CUR)
        if mode == self.LK_NBLCK:
            if place in self.held:
                raise OSError(36, "Resource deadlock avoided")
            self.held[place] = handle
        elif self.held.get(place) == handle:
            del self.held[place]
        else:
            raise PermissionError(13, "Permission denied")


@pytest.fixture
def elsewhere(monkeypatch: pytest.MonkeyPatch) -> ModuleType:
    """The module of locks as Windows imports it, where there is no fcntl."""
    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.setitem(sys.modules, "msvcrt", Bytes())
    monkeypatch.setitem(sys.modules, "fcntl", None)
    spec = importlib.util.spec_from_file_location("locks_elsewhere", locks.__file__)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_one_process_has_the_lock_and_others_see_it(elsewhere: ModuleType, tmp_path: Path) -> None:
    path = tmp_path / "held.lock"
    path.write_text("what it says")
    one, two = (os.open(path, os.O_RDWR) for _ in range(2))
    assert not elsewhere.is_locked(two)
    assert elsewhere.lock(one)
    assert not elsewhere.lock(two)
    assert elsewhere.is_locked(two)
    assert all(at >= path.stat().st_size for _, at in sys.modules["msvcrt"].held)  # still readable
    assert path.read_text() == "what it says"
    for handle in (one, two):
        os.close(handle)


def test_looking_whether_it_is_locked_leaves_it_free(elsewhere: ModuleType, tmp_path: Path) -> None:
    path = tmp_path / "free.lock"
    path.touch()
    handle = os.open(path, os.O_RDWR)
    assert not elsewhere.is_locked(handle)
    assert elsewhere.lock(handle)
    os.close(handle)


def test_unsaved_work_is_kept_where_that_system_keeps_it(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(journal, "Path", type(tmp_path))  # no path of Windows can be made here
    monkeypatch.setattr(os, "name", "nt")
    monkeypatch.delenv("XDG_STATE_HOME", raising=False)
    monkeypatch.setenv("LOCALAPPDATA", str(tmp_path))
    assert journal.state_folder() == tmp_path / "crossfall" / "bench"
