"""Undo and redo of a text."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from crossfall.app.history import MAX_STEPS, History, changed, redone, step_between, undone

texts = st.lists(st.sampled_from(["a\n", "b\n", "# c\r\n", "\n"]), max_size=8).map("".join)


@given(st.lists(texts, min_size=1, max_size=12))
def test_undoing_everything_gives_the_first_text_and_redoing_the_last(versions: list[str]) -> None:
    history = History(versions[0])
    for text in versions[1:]:
        history = changed(history, text, "x")
    last = history.text
    while history.back:
        history = undone(history)
    assert history.text == versions[0]
    while history.ahead:
        history = redone(history)
    assert history.text == last


def test_every_change_counts_and_a_change_to_the_same_text_does_not() -> None:
    history = changed(History("a\n"), "b\n", "x")
    assert history.revision == 1
    assert changed(history, "b\n", "y") is history
    assert undone(history).revision == 2


def test_an_edit_after_undo_forgets_what_was_undone() -> None:
    history = undone(changed(History("a\n"), "b\n", "x"))
    assert changed(history, "c\n", "y").ahead == ()


def test_a_step_keeps_only_the_lines_that_changed() -> None:
    long = "".join(f"{i}\n" for i in range(1000))
    step = step_between(long, long.replace("500\n", "five hundred\n"), "x")
    assert (step.first, step.was, step.now) == (500, ("500\n",), ("five hundred\n",))


def test_steps_are_bounded() -> None:
    history = History("0\n")
    for i in range(1, MAX_STEPS + 50):
        history = changed(history, f"{i}\n", "x")
    assert len(history.back) == MAX_STEPS
