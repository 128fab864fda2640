"""The truck file on the desk: nothing lost, nothing written over in silence."""

from __future__ import annotations

from pathlib import Path

import pytest

from crossfall.app import journal
from crossfall.app.document import At, Conflict, Desk
from crossfall.app.folder import inside, listing
from crossfall.app.history import Fitted
from crossfall.truck.errors import InputError, Problem


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
    desk.edit(desk.sheet.at, lambda _: text, what)


def test_unsaved_work_is_there_after_a_crash(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "# mine\na = 2\n", "first")
    put(desk, "# mine\na = 3\n", "second")
    desk.close()  # all that is left of a killed process: its lock is gone, its journal is there
    again = Desk(spec, check, keeper=keeper)
    assert again.sheet.recovered
    assert again.sheet.history.text == "# mine\na = 3\n"
    assert again.undo(again.sheet.at).history.text == "# mine\na = 2\n"
    assert spec.read_text() == "# mine\na = 1\n"


def test_saved_work_leaves_no_journal(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    assert list(keeper.glob("*.json"))
    desk.save(desk.sheet.at)
    assert spec.read_text() == "a = 2\n"
    assert not list(keeper.glob("*.json"))
    assert not desk.sheet.unsaved
    assert desk.undo(desk.sheet.at).unsaved


def test_a_torn_journal_is_no_obstacle(spec: Path, keeper: Path) -> None:
    path = journal.journal_path(spec, keeper)
    path.parent.mkdir()
    path.write_text('{"format": 1, "base": "x", "history": {"text": "a')
    assert not Desk(spec, check, keeper=keeper).sheet.recovered


def test_an_old_revision_is_told_so(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    old = desk.sheet.at
    put(desk, "a = 2\n")
    with pytest.raises(Conflict) as refused:
        desk.edit(old, lambda _: "a = 9\n", "late")
    assert refused.value.where == "tab"
    for act in (desk.undo, desk.redo, desk.save, desk.discard):
        with pytest.raises(Conflict):
            act(old)
    assert desk.sheet.history.text == "a = 2\n"


def test_a_file_changed_on_disk_is_not_written_over(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    spec.write_text("a = 7\n")
    with pytest.raises(Conflict) as refused:
        desk.save(desk.sheet.at)
    assert refused.value.where == "disk"
    assert spec.read_text() == "a = 7\n"
    taken = desk.discard(desk.sheet.at)
    assert taken.history.text == "a = 7\n"
    assert not taken.unsaved
    assert desk.undo(desk.sheet.at).history.text == "a = 2\n"
    desk.save(desk.sheet.at)
    assert spec.read_text() == "a = 2\n"


def test_over_writes_all_the_same(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    spec.write_text("a = 7\n")
    desk.save(desk.sheet.at, over=True)
    assert spec.read_text() == "a = 2\n"


def test_saving_as_moves_to_the_new_file_and_leaves_the_old(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    new = spec.with_name("other.toml")
    sheet = desk.save(desk.sheet.at, new)
    assert (sheet.source, sheet.unsaved) == (new, False)
    assert (spec.read_text(), new.read_text()) == ("# mine\na = 1\n", "a = 2\n")
    put(desk, "a = 3\n")
    with pytest.raises(Conflict):
        desk.save(desk.sheet.at, spec)
    assert Desk(spec, check, keeper=keeper).sheet.history.text == "# mine\na = 1\n"


def test_what_is_no_truck_under_its_new_name_is_not_saved(spec: Path, keeper: Path) -> None:
    def only_here(text: str, path: Path) -> None:
        if path.parent != spec.parent:
            raise InputError(Problem(path.name, "names a mesh that is not there"))

    desk = Desk(spec, only_here, keeper=keeper)
    put(desk, "a = 2\n")
    before = desk.sheet
    away = spec.parent.parent / "away.toml"
    with pytest.raises(InputError, match="not there"):
        desk.save(before.at, away)
    assert desk.sheet == before
    assert not away.exists()
    assert list(keeper.glob("*.json"))
    put(desk, "a = 3\n")
    away.write_text("a = 4\n")
    Desk(away, check, keeper=keeper).close()  # it is not held


def test_a_demo_truck_needs_a_name(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, writable=False, keeper=keeper)
    put(desk, "a = 2\n")
    with pytest.raises(InputError, match="save as a new name"):
        desk.save(desk.sheet.at)
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


def test_what_is_asked_of_another_document_is_refused(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    mine = desk.sheet.at
    desk.close()
    other = spec.with_name("other.toml")
    other.write_text("b = 1\n")
    second = Desk(other, check, keeper=keeper)
    assert second.sheet.history.revision == mine.revision
    for late, there in ((second, mine), (desk, mine), (second, At("", 0))):
        with pytest.raises(Conflict, match="put on the bench meanwhile") as refused:
            late.edit(there, lambda _: "a = 9\n", "late")
        assert refused.value.where == "document"
    assert second.sheet.history.text == "b = 1\n"


def test_saving_as_is_another_document(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    seen = desk.sheet.at
    desk.save(seen, spec.with_name("other.toml"))
    with pytest.raises(Conflict, match=r"other\.toml was put on the bench"):
        desk.edit(seen, lambda _: "a = 9\n", "late")


def test_unsaved_work_is_the_same_document_after_a_crash(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    put(desk, "a = 2\n")
    seen = desk.sheet.at
    desk.close()
    again = Desk(spec, check, keeper=keeper)
    again.edit(seen, lambda _: "a = 3\n", "carries on")
    again.save(again.sheet.at)
    again.close()
    third = Desk(spec, check, keeper=keeper)
    with pytest.raises(Conflict, match="started anew"):
        third.edit(again.sheet.at, lambda _: "a = 4\n", "late")


def test_a_file_changed_on_disk_is_followed_where_nothing_is_unsaved(
    spec: Path, keeper: Path
) -> None:
    desk = Desk(spec, check, keeper=keeper)
    assert desk.follow() == ""
    spec.write_text("a = 7\n")
    assert desk.follow() == ""
    assert (desk.sheet.history.text, desk.sheet.unsaved) == ("a = 7\n", False)
    spec.write_text("bad\n")
    assert "is no truck" in desk.follow()
    assert desk.sheet.history.text == "a = 7\n"
    spec.unlink()
    assert "gone from disk" in desk.follow()
    spec.write_text("a = 7\n")
    put(desk, "a = 8\n")
    spec.write_text("a = 9\n")
    assert "another program" in desk.follow()
    assert desk.sheet.history.text == "a = 8\n"


def test_no_truck_is_saved_over_one_with_unsaved_work(spec: Path, keeper: Path) -> None:
    first = Desk(spec, check, keeper=keeper)
    put(first, "a = 2\n")
    first.close()
    other = spec.with_name("other.toml")
    other.write_text("b = 1\n")
    second = Desk(other, check, keeper=keeper)
    with pytest.raises(InputError, match="unsaved work of its own"):
        second.save(second.sheet.at, spec, over=True)
    second.close()
    assert Desk(spec, check, keeper=keeper).sheet.history.text == "a = 2\n"


def test_what_is_fitted_is_remembered_with_its_history(spec: Path, keeper: Path) -> None:
    desk = Desk(spec, check, keeper=keeper)
    base = desk.sheet.history.text
    first, second = Fitted(base, (("wide", 1),)), Fitted(base, (("wide", 1), ("low", 2)))
    desk.fit(desk.sheet.at, lambda _: ("a = 2\n", first), "one")
    desk.fit(desk.sheet.at, lambda _: ("a = 3\n", second), "two")
    put(desk, "a = 4\n")
    assert desk.sheet.history.fitted == second
    desk.save(desk.sheet.at)
    desk.close()
    again = Desk(spec, check, keeper=keeper)
    assert not again.sheet.unsaved
    assert again.sheet.history.fitted == second
    assert again.go(again.sheet.at, 1).history.fitted == first
    assert again.go(again.sheet.at, 0).history.fitted is None
    assert again.go(again.sheet.at, 3).history.text == "a = 4\n"
    with pytest.raises(InputError, match="no step"):
        again.go(again.sheet.at, 4)
    assert again.name(again.sheet.at, 2, "low").history.steps[1].name == "low"
