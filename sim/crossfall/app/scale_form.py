"""The form of scale readings on the page, as a readings file and back.

What a scale shows is written down in many ways. A number is taken only where it can mean one thing:
"2044,5" and "2.044,5" are two thousand and some; what could be two readings, or a thousand times
another, is asked about.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from crossfall.truck.errors import InputError, Problem

_PLACES = (
    "front", "rear", "left", "right", "front left", "front right", "rear left", "rear right", "all",
)  # fmt: skip
_ENDS = ("", "front", "rear", "left", "right")
# What the form has fields for; a file that says more is not the form's to write over.
_KNOWN = {
    "": {"title", "scale", "suspension", "reading"},
    "scale": {"resolution_g"},
    "suspension": {"locked"},
    "reading": {"at", "raised", "block_mm", "load_g"},
}


def loads(text: str) -> list[float]:
    """Repeats of one reading, g: numbers apart by spaces or semicolons, with a comma too or not.

    Raises InputError with a sentence for each that is no number or could be more than one.
    """
    wrong: list[Problem] = []
    found: list[float] = []
    for word in re.split(r"\s*;\s*|,?\s+", text.strip().strip(",;")):
        word = word.strip(",")
        if not word:
            continue
        try:
            found.append(number(word))
        except InputError as error:
            wrong += error.problems
    if wrong:
        raise InputError(wrong)
    return found


def number(word: str) -> float:
    """One number with a decimal point or comma, thousands apart or not. Raises InputError."""
    plain = re.fullmatch(r"\d+(?:[.,](?:\d{1,2}|\d{4,}))?", word)
    # A comma with as many digits as a reading may have behind it is more likely two readings.
    if plain and not re.fullmatch(r"\d{3,},\d{3,}", word):
        return float(word.replace(",", "."))
    if re.fullmatch(r"\d{1,3}(?:\.\d{3})+,\d+", word):
        return float(word.replace(".", "").replace(",", "."))
    if re.fullmatch(r"\d{1,3}(?:,\d{3})+\.\d+", word):
        return float(word.replace(",", ""))
    if re.fullmatch(r"0[.,]\d+", word):
        return float(word.replace(",", "."))
    if match := re.fullmatch(r"(\d+)[.,](\d{3,})", word):
        whole, rest = match.groups()
        thousands = len(whole) <= 3 and len(rest) == 3
        first = f"write {whole}{rest} or {whole}.{rest}0" if thousands else f"write {whole}.{rest}"
        allowed = f"{first}, or {whole}; {rest} for two readings"
        raise InputError(Problem("scale", f"'{word}' could be more than one thing", allowed))
    allowed = "grams as in 1342.5, repeats apart by spaces or semicolons"
    raise InputError(Problem("scale", f"'{word[:40]}' is no weight", allowed))


def as_text(form: Mapping[str, Any], truck: str) -> str:
    """The readings file that a form stands for. Raises InputError.

    form: step_g, locked, and readings, each with at, raised, block_mm and loads as typed.
    """
    step = form["step_g"]
    title = re.sub(r"[^\w ()+.-]", "", truck)[:60]
    out = [f'title = "weigh-in of {title}"', "", "[scale]", f"resolution_g = {step:g}", ""]
    out += ["[suspension]", f"locked = {str(form['locked']).lower()}"]
    wrong: list[Problem] = []
    for i, line in enumerate(form["readings"], start=1):
        try:
            out += _reading(line)
        except InputError as error:
            wrong += [Problem(f"reading {i}", p.what, p.allowed) for p in error.problems]
    if wrong:
        raise InputError(wrong)
    return "\n".join(out) + "\n"


def _reading(line: Mapping[str, Any]) -> list[str]:
    at, raised = line["at"], line["raised"]
    if at not in _PLACES or raised not in _ENDS:
        raise InputError(Problem("scale", "stands in no known way", ", ".join(_PLACES)))
    found = loads(line["loads"])
    if not found:
        return []
    out = ["", "[[reading]]", f'at = "{at}"']
    if raised:
        block = number(line["block_mm"].strip())
        out += [f'raised = "{raised}"', f"block_mm = {block:g}"]
    return [*out, f"load_g = [{', '.join(f'{v:.10g}' for v in found)}]"]


def as_form(path: Path) -> dict[str, Any] | None:
    """The form of a readings file; None where the file says more than the form can show."""
    try:
        data = tomllib.loads(path.read_text("utf-8"))
    except (OSError, ValueError):
        return None
    parts = [("", data), ("scale", data.get("scale")), ("suspension", data.get("suspension"))]
    readings = data.get("reading")
    if not isinstance(readings, list):
        return None
    parts += [("reading", r) for r in readings]
    if any(not isinstance(part, dict) or set(part) - _KNOWN[name] for name, part in parts):
        return None
    if any(r.get("at") not in _PLACES or r.get("raised", "") not in _ENDS for r in readings):
        return None
    return {
        "step_g": data.get("scale", {}).get("resolution_g", 1),
        "locked": data.get("suspension", {}).get("locked") is True,
        "readings": [
            {
                "at": r["at"],
                "raised": r.get("raised", ""),
                "block_mm": f"{r['block_mm']:g}" if "block_mm" in r else "",
                "loads": "; ".join(f"{v:.10g}" for v in _repeats(r.get("load_g"))),
            }
            for r in readings
        ],
    }


def _repeats(given: Any) -> list[float]:
    values = given if isinstance(given, list) else [given]
    return [float(v) for v in values if isinstance(v, int | float)]
