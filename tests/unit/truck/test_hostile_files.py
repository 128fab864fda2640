"""Files made to take all memory or time are refused before they can."""

from __future__ import annotations

import tracemalloc
from pathlib import Path

import pytest
from spec_text import SAMPLE, mistakes

from crossfall.truck import toml_line_index
from crossfall.truck.errors import InputError
from crossfall.truck.read import MAX_DEPTH, MAX_ENTRIES, MAX_FILE_BYTES, given_source, read_source
from crossfall.truck.sentences import MOST_SENTENCES

ROOM = 150 << 20  # bytes, half of what any command may take in all


def refused(folder: Path, text: str) -> str:
    file = folder / "truck.toml"
    file.write_text(text)
    with pytest.raises(InputError) as caught:
        read_source(file, "truck.toml")
    (problem,) = caught.value.problems
    return str(problem)


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("a." * 100_000 + "b = 1\n", "100001 names with dots"),
        ('"a" . ' * 20_000 + "b = 1\n", "20001 names with dots"),
        ("[" + "a." * 100_000 + "b]\n", "100001 names with dots"),
        ("x = [" + "1," * 99_000 + "]\n", "entries"),
        ("[[p]]\n" * 150_000, "entries"),
        ("x = " + "[" * 40_000, "nested too deeply"),
        ("x = '" + "y" * MAX_FILE_BYTES + "'", "bytes"),
    ],
    ids=["dotted", "quoted", "heading", "array", "tables", "nested", "long"],
)
def test_what_would_take_gigabytes_is_refused_at_once(tmp_path: Path, text: str, word: str) -> None:
    tracemalloc.start()
    try:
        assert word in refused(tmp_path, text)
        assert tracemalloc.get_traced_memory()[1] < ROOM
    finally:
        tracemalloc.stop()


@pytest.mark.parametrize("sign", ["", "-"])
def test_a_whole_number_longer_than_any_of_toml_is_refused(tmp_path: Path, sign: str) -> None:
    """Its value may be beyond any float, and 4,300 digits beyond Python's own reading."""
    for digits in (20, 400, 4400):
        number = sign + "9" * digits
        said = refused(tmp_path, f"[front]\nmore = [{{ stiffness = {number} }}]\n")
        assert "truck.toml:2" in said
        assert ("at most 9.2e18" if digits < 4300 else "out of all bounds") in said
    file = tmp_path / "truck.toml"
    file.write_text(f"a = {sign}{2**63 - 1}\n")
    assert read_source(file, "truck.toml").data == {"a": int(f"{sign}{2**63 - 1}")}
    with pytest.raises(InputError):
        given_source({"a": [2**63, 10**5000]}, "a mapping")


def test_the_worst_file_that_is_read_takes_little(tmp_path: Path) -> None:
    deep = "a." * (MAX_DEPTH - 1)
    count = min(MAX_ENTRIES, MAX_FILE_BYTES // (len(deep) + 12)) - 1
    text = "".join(f"k{i}.{deep[2:]}b = 1\n" for i in range(count))
    file = tmp_path / "truck.toml"
    file.write_text(text)
    tracemalloc.start()
    try:
        assert len(read_source(file, "truck.toml").data) == count
        assert tracemalloc.get_traced_memory()[1] < ROOM
    finally:
        tracemalloc.stop()


def test_dots_in_notes_and_comments_are_no_keys() -> None:
    long = ".".join("abcdefghijkl")
    assert toml_line_index.deepest_key(f"# {long}\nx.y = 1\n") == (2, 2)
    assert toml_line_index.deepest_key(f'n = """\n{long}\n"""\n') is None
    assert toml_line_index.deepest_key(f"n = '''\n{long}\n'''\nx.y.z = 1\n") == (3, 4)
    assert toml_line_index.deepest_key(f'"{long}" = 1\n') is None
    assert toml_line_index.deepest_key(f'"it\'s" = "{long}"\n') is None


@pytest.mark.parametrize("piece", ['"\\', "'''\na", '"""\\', '"', "a" + " " * 9, '"a\n', '"""a"'])
def test_unfinished_strings_take_no_longer_than_others(piece: str) -> None:
    """Were the search to start again behind every quote, this would take hours."""
    toml_line_index.deepest_key(piece * (MAX_FILE_BYTES // len(piece)))


def test_of_very_many_mistakes_the_first_are_told(tmp_path: Path) -> None:
    found = mistakes(tmp_path, "".join(f"k{i} = 1\n" for i in range(5000)) + SAMPLE)
    assert len(found) <= MOST_SENTENCES + 1
    assert found[-1].what == f"has {5000 - MOST_SENTENCES} more mistakes"


def test_a_million_pieces_are_refused_before_they_are_made(tmp_path: Path) -> None:
    pile = (
        '[[part]]\nname = "p{}"\non = "chassis"\nmass_g = 0.001\ncount = 500\nat_mm = [0, 0, 90]\n'
    )
    text = SAMPLE + "".join(pile.format(i) for i in range(1950))
    (found,) = mistakes(tmp_path, text)
    assert "pieces; at most" in str(found)
