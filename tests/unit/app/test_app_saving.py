"""A demo truck with a mesh, saved as a file of the opened folder."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from crossfall.app.document import Conflict
from crossfall.app.session import Bench
from crossfall.truck.build import load_truck
from crossfall.truck.demos import demo_folder
from crossfall.truck.errors import InputError

MESH = Path("meshes") / "anvil.stl"
PRICED = [{"do": "set", "part": "anvil", "key": "price", "value": 3}]


@pytest.fixture
def bench(tmp_path: Path) -> Iterator[Bench]:
    folder = tmp_path / "shop"
    folder.mkdir()
    made = Bench(demo_folder() / "burdock.toml", folder, tmp_path / "state")
    made.edit(made.desk.sheet.at, PRICED, "a price")
    yield made
    made.close()


def files(folder: Path) -> set[str]:
    return {p.relative_to(folder).as_posix() for p in folder.rglob("*")}


def test_its_mesh_comes_along(bench: Bench) -> None:
    saved = bench.save(bench.desk.sheet.at, "mine", False)
    assert (saved["file"], saved["unsaved"]) == ("mine.toml", False)
    assert (bench.folder / MESH).read_bytes() == (demo_folder() / MESH).read_bytes()
    assert files(bench.folder) == {"meshes", MESH.as_posix(), "mine.toml"}
    load_truck(bench.folder / "mine.toml")
    bench.save(bench.desk.sheet.at, "again", False)


def test_no_other_mesh_is_written_over_and_the_work_stays(bench: Bench) -> None:
    there = bench.folder / MESH
    there.parent.mkdir()
    there.write_bytes(b"another")
    before = bench.desk.sheet
    with pytest.raises(InputError, match=r"anvil\.stl: is there already"):
        bench.save(before.at, "mine", False)
    assert there.read_bytes() == b"another"
    assert not (bench.folder / "mine.toml").exists()
    assert bench.desk.sheet == before
    assert bench.state()["unsaved"]


def test_no_mesh_is_left_where_the_save_is_refused(
    bench: Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "no space left on device")

    monkeypatch.setattr("crossfall.app.document.write_atomically", full)
    with pytest.raises(OSError, match="no space"):
        bench.save(bench.desk.sheet.at, "mine", False)
    assert files(bench.folder) == set()
    (bench.folder / "mine.toml").write_text("")
    with pytest.raises(Conflict):
        bench.save(bench.desk.sheet.at, "mine", False)
    assert files(bench.folder) == {"mine.toml"}
