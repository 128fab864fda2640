"""The answer's keys as TypeScript types, for the page in the browser.

`python -m crossfall.answers.typescript sim/page/src/answers.ts` writes them; a test holds the file
to the keys.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from pathlib import Path

from crossfall.answers.keys import KEYS, TRIAL_KEYS, Key
from crossfall.truck.files import write_atomically

_HEAD = """\
// Made from crossfall/answers/keys.py by crossfall/answers/typescript.py; change those instead.
// Angles are in degrees; null is where there is no number.
"""


def declarations() -> str:
    """The whole file: an interface for an answer and for a trial."""
    parts = (
        _HEAD,
        interface("TipAnswer", "What the truck does on one heading.", KEYS),
        interface("TrialAnswer", "What a virtual trial on one heading gave.", TRIAL_KEYS),
    )
    return "\n".join(parts)


def interface(name: str, about: str, keys: Sequence[Key]) -> str:
    """One interface with a documented field for every key."""
    lines = [f"/** {about} */", f"export interface {name} {{"]
    for key in keys:
        lines += [f"  /** {key.meaning} */", f"  {key.name}: {type_of(key)};"]
    return "\n".join([*lines, "}", ""])


def type_of(key: Key) -> str:
    """The TypeScript type of a key's value."""
    number = "number | null"
    fields = "; ".join(f"{name}: {number}" for name in key.fields)
    written = {
        "number": "number",
        "text": "string",
        "pair": f"[{number}, {number}]",
        "named numbers": f"{{ {fields} }}",
        "list": f"{{ name: string; {fields} }}[]",
    }[key.form]
    return f"{written} | null" if key.may_be_null else written


if __name__ == "__main__":
    write_atomically(Path(sys.argv[1]), declarations())
