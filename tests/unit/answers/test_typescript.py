"""The page's types are the answer's keys."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from crossfall.answers.keys import KEYS, TRIAL_KEYS, Key
from crossfall.answers.typescript import declarations, interface, type_of

SOURCE = Path(__file__).resolve().parents[3] / "sim" / "page" / "src" / "answers.ts"


def test_the_page_was_written_for_these_keys() -> None:
    """`python -m crossfall.answers.typescript sim/page/src/answers.ts` writes it anew."""
    assert SOURCE.read_text("utf-8") == declarations()


def test_every_key_has_one_field_in_order() -> None:
    text = interface("Any", "", KEYS)
    assert re.findall(r"^  (\w+):", text, re.MULTILINE) == [key.name for key in KEYS]
    tried = [key.name for key in TRIAL_KEYS]
    assert [key.name for key in KEYS if key.name.startswith("trial_")] == tried


@pytest.mark.parametrize(
    ("form", "fields", "null", "written"),
    [
        ("number", (), False, "number"),
        ("number", (), True, "number | null"),
        ("text", (), False, "string"),
        ("pair", (), True, "[number | null, number | null] | null"),
        ("named numbers", ("low", "high"), False, "{ low: number | null; high: number | null }"),
        ("list", ("pm_deg",), False, "{ name: string; pm_deg: number | null }[]"),
    ],
)
def test_a_form_has_its_type(form, fields, null, written) -> None:
    assert type_of(Key("x", form, "", lambda a: None, null, fields)) == written
