"""The list of changes beside a truck, edited on the page: what each costs, its group, new ones."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Collection, Mapping
from pathlib import Path
from typing import Any

from crossfall.app import fitted_changes
from crossfall.app.document import Sheet
from crossfall.app.history import Fitted
from crossfall.app.journal import text_digest
from crossfall.app.reference import Reference
from crossfall.truck.build import Loaded
from crossfall.truck.document import plain_value
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.files import write_atomically
from crossfall.truck.read import source_of
from crossfall.truck.schema import TruckSpec
from crossfall.tuning import change_text
from crossfall.tuning.apply import apply, misfits
from crossfall.tuning.changes import Catalogue, change_file_of, checked_changes

# What a fitted change does must stay, or it could not be taken off again; what it costs may change.
ALWAYS_EDITABLE = ("label", "price", "group", "note")


def stamp(path: Path) -> str:
    """Tells one state of a change file from another; "" where there is none."""
    return text_digest(path.read_bytes().decode("utf-8-sig")) if path.is_file() else ""


def edit_list(sheet: Sheet, base: Loaded, seen: str, asked: Mapping[str, Any]) -> str:
    """Do one thing to the list, each {"do": "field" | "new" | "remove" | "text"}, write it, and
    give its text before. base: the truck without what is fitted to it. Raises InputError."""
    path, was = _to_write(sheet, seen)
    text = _edited(was or _empty(base), asked, _fitted_names(sheet))
    new = [str(asked["change"].get("name"))] if asked.get("do") == "new" else []
    if text:
        _checked(text, path.name, base.spec, new)
        write_atomically(path, text)
    else:
        path.unlink(missing_ok=True)
    return was


def kept(
    sheet: Sheet,
    reference: Reference,
    load: Callable[[str], Loaded],
    seen: str,
    asked: Mapping[str, Any],
) -> tuple[str, Fitted]:
    """What was edited by hand since the reference written into the list as a change; the truck's
    text with that change fitted instead. asked: name, and any of label, price, group.

    Raises InputError, also where it does not go together with what is fitted already.
    """
    path, was = _to_write(sheet, seen)
    fitted = sheet.history.fitted or Fitted(reference.text, ())
    if not fitted.chosen and reference.source != sheet.source:
        what = "the truck is compared with another file"
        raise InputError(Problem("changes", what, "compare it with a state of its own"))
    began = load(fitted.base)
    old, on, text = began.spec, {}, was or _empty(began)
    if fitted.chosen:
        catalogue = _checked(text, path.name, began.spec)
        on = {catalogue.position(name): many for name, many in fitted.chosen}
        old = apply(began.spec, catalogue, on)
    entry = {**_given(asked), **change_text.difference(old, load(sheet.history.text).spec)}
    text = change_text.add_change(text, entry)
    catalogue = _checked(text, path.name, old, [str(asked.get("name"))])
    chosen = {**on, len(catalogue.changes) - 1: 1}
    names = {catalogue.changes[i].name: many for i, many in chosen.items()}
    fitted_changes.choice(catalogue, names)
    made = fitted_changes.fitted_text(fitted.base, began, catalogue, chosen)
    write_atomically(path, text)
    return made, Fitted(fitted.base, tuple(names.items()))


def _edited(text: str, asked: Mapping[str, Any], fitted: Collection[str]) -> str:
    act, name = asked.get("do"), str(asked.get("name", ""))
    if act == "text" and isinstance(asked.get("text"), str):
        return str(asked["text"])
    if act == "new" and isinstance(asked.get("change"), Mapping):
        return change_text.add_change(text, _given(asked["change"]))
    if name in fitted and (act == "remove" or asked.get("field") not in ALWAYS_EDITABLE):
        raise InputError(Problem("changes", f"'{name}' is on the truck", "take it off first"))
    if act == "remove":
        left = change_text.remove_change(text, name)
        return left if "change" in tomllib.loads(left) else ""  # a list of nothing is no list
    if act == "field":
        value = _given({"value": asked.get("value")}).get("value")
        return change_text.set_field(text, name, str(asked.get("field")), value)
    raise InputError(Problem("changes", "that is nothing that can be done to the list"))


def _checked(text: str, file: str, fits: TruckSpec, new: Collection[str] = ()) -> Catalogue:
    """The changes of a text. Raises InputError where it is no change file, or where one of the
    changes named in `new` does not fit the truck."""
    catalogue = checked_changes(source_of(text, file))
    found = [p for n in new for p in misfits(catalogue, catalogue.position(n), fits)]
    if found:
        raise InputError(found)
    return catalogue


def _to_write(sheet: Sheet, seen: str) -> tuple[Path, str]:
    """The change file and its text, "" where there is none. Raises InputError where it cannot be
    written, or is not the one the asker has seen."""
    if sheet.path is None:
        what = "is a demo truck, whose list of changes stays as it is"
        raise InputError(Problem(sheet.source.name, what, "save it under a name of its own"))
    path = change_file_of(sheet.path)
    if seen != stamp(path):
        what = "was changed by another tab or program meanwhile"
        raise InputError(Problem(path.name, what, "look at it again"))
    return path, path.read_bytes().decode("utf-8-sig") if path.is_file() else ""


def _fitted_names(sheet: Sheet) -> tuple[str, ...]:
    fitted = sheet.history.fitted
    return () if fitted is None else tuple(name for name, _ in fitted.chosen)


def _empty(truck: Loaded) -> str:
    return change_text.empty_text(truck.spec.name, truck.spec.currency)


def _given(entry: Mapping[str, Any]) -> dict[str, Any]:
    """Without what was left empty; whole numbers whole, as a file would have them."""
    return {str(k): plain_value(v) for k, v in entry.items() if v not in (None, "", [])}
