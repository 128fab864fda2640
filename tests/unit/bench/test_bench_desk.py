"""The truck file on the desk: nothing lost, nothing written over in silence."""

from __future__ import annotations

from pathlib import Path

import pytest

from crossfall.bench import journal
from crossfall.bench.desk import Conflict, Desk
from crossfall.bench.folder import inside, listing
from crossfall.truck.problems import InputError, Problem


def check(text: str, path: Path) -> None:
    if "bad" in text:
        raise InputError(Problem(path.name, "is bad"))


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    path = tmp_path / "shop" / "truck.toml"
    path.parent.mkdir()
    path.write_text("# mine\na = 1\n")
    return path


@pytest.fixture
def keeper(tmp_path: Path) -> Path:
    return tmp_path / "state"


def put(desk: Desk, text: str, what: str = "edit") -> None:
    desk.edit(desk.sheet.history.revision, lambda _: text, what)


def test_unsaved_work_is_there_after_a_crash(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "# mine\na = 2\n", "first")
    put(desk, "# mine\na = 3\n", "second")
    desk.close()  # all that is left of a killed process: its lock is gone, its journal is there
    again = Desk(spec, check, keeper=keeper)
    assert again.sheet.recovered
    assert again.sheet.history.text == "# mine\na = 3\n"
    assert again.undo(again.sheet.history.revision).history.text == "# mine\na = 2\n"
    assert spec.read_text() == "# mine\na = 1\n"


def test_saved_work_leaves_no_journal(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    assert list(keeper.glob("*.json"))
    desk.save(desk.sheet.history.revision)
    assert spec.read_text() == "a = 2\n"
    assert not list(keeper.glob("*.json"))
    assert not desk.sheet.unsaved
    assert desk.undo(desk.sheet.history.revision).unsaved


def test_a_torn_journal_is_no_obstacle(spec: Path, keeper: Path) -> None:
    path = journal.journal_path(spec, keeper)
    path.parent.mkdir()
    path.write_text('{"format": 1, "base": "x", "history": {"text": "a')
    assert not Desk(spec, check, keeper=keeper).sheet.recovered


def test_an_old_revision_is_told_so(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    with pytest.raises(Conflict) as refused:
        desk.edit(0, lambda _: "a = 9\n", "late")
    assert refused.value.where == "tab"
    for act in (desk.undo, desk.redo, desk.save, desk.discard):
        with pytest.raises(Conflict):
            act(0)
    assert desk.sheet.history.text == "a = 2\n"


def test_a_file_changed_on_disk_is_not_written_over(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    spec.write_text("a = 7\n")
    with pytest.raises(Conflict) as refused:
        desk.save(1)
    assert refused.value.where == "disk"
    assert spec.read_text() == "a = 7\n"
    taken = desk.discard(1)
    assert taken.history.text == "a = 7\n"
    assert not taken.unsaved
    assert desk.undo(2).history.text == "a = 2\n"
    desk.save(3)
    assert spec.read_text() == "a = 2\n"


def test_over_writes_all_the_same(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    spec.write_text("a = 7\n")
    desk.save(1, over=True)
    assert spec.read_text() == "a = 2\n"


def test_saving_as_moves_to_the_new_file_and_leaves_the_old(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    new = spec.with_name("other.toml")
    sheet = desk.save(1, new)
    assert (sheet.source, sheet.unsaved) == (new, False)
    assert (spec.read_text(), new.read_text()) == ("# mine\na = 1\n", "a = 2\n")
    put(desk, "a = 3\n")
    with pytest.raises(Conflict):
        desk.save(desk.sheet.history.revision, spec)
    assert Desk(spec, check, keeper=keeper).sheet.history.text == "# mine\na = 1\n"


def test_a_demo_truck_needs_a_name(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, writable=False, keeper=keeper)
    put(desk, "a = 2\n")
    with pytest.raises(InputError, match="save as a new name"):
        desk.save(1)
    assert spec.read_text() == "# mine\na = 1\n"


def test_what_is_no_truck_is_not_put_down(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    with pytest.raises(InputError):
        put(desk, "bad\n")
    assert desk.sheet.history.revision == 0


def test_two_benches_do_not_share_a_file(spec: Path, keeper: Path) -> None:
    first = Desk(spec, check, keeper=keeper)
    with pytest.raises(InputError, match="another bench"):
        Desk(spec, check, keeper=keeper)
    first.close()
    assert Desk(spec, check, keeper=keeper).sheet.history.revision == 0


@pytest.mark.parametrize(
    "name", ["../a", "a/b", "/etc/passwd", ".hidden", "", "a\x00b", "a\nb", "..", "x" * 100, "con"]
)
def test_names_stay_in_the_folder(tmp_path: Path, name: str) -> None:
    with pytest.raises(InputError):
        inside(tmp_path, name)


def test_links_out_of_the_folder_are_not_followed(tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    shop.mkdir()
    outside = tmp_path / "secret.toml"
    outside.write_text("a = 1\n")
    (shop / "link.toml").symlink_to(outside)
    (shop / "truck.toml").write_text("a = 1\n")
    with pytest.raises(InputError, match="leads out"):
        inside(shop, "link.toml")
    assert listing(shop) == ("truck.toml",)
