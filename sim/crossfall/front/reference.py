"""The front door's names with their docstrings, made from the code itself."""

from __future__ import annotations

import inspect
from collections.abc import Iterator
from html import escape
from typing import Any

CLASSES = ("Vehicle", "Result", "Results")
FUNCTIONS = (
    *("load", "tip", "trial", "weigh", "what_if", "sweep", "sensitivity"),
    *("weigh_in", "expected", "board", "reconcile"),
)


def public_names() -> dict[str, tuple[str, str]]:
    """{name: (signature, docstring)} of everything `import crossfall` is for, in reading order."""
    return {
        name: (_signature(thing), inspect.cleandoc(_doc(thing) or "")) for name, thing in _things()
    }


def _things() -> Iterator[tuple[str, Any]]:
    import crossfall
    from crossfall.front import plot
    from crossfall.front.studies import Indices, Sweep

    for name in FUNCTIONS:
        yield name, getattr(crossfall, name)
    for name in CLASSES:
        yield from _members(name, getattr(crossfall, name))
    yield from _members("Sweep", Sweep)
    yield from _members("Indices", Indices)
    for name in plot.__all__:
        thing = getattr(plot, name)
        if inspect.isclass(thing):
            yield from _members(f"plot.{name}", thing)
        elif not callable(thing):
            yield f"plot.{name}", type(thing)
        else:
            yield f"plot.{name}", thing
    yield "InputError", crossfall.InputError


def _members(name: str, kind: type) -> Iterator[tuple[str, Any]]:
    yield name, kind
    for own, thing in vars(kind).items():
        if not own.startswith("_") and (inspect.isfunction(thing) or isinstance(thing, property)):
            yield f"{name}.{own}", thing


def _doc(thing: Any) -> str | None:
    return thing.fget.__doc__ if isinstance(thing, property) else thing.__doc__


def _signature(thing: Any) -> str:
    if isinstance(thing, property) or inspect.isclass(thing):
        return ""
    found = inspect.signature(thing)
    kept = [p.replace(annotation=p.empty) for n, p in found.parameters.items() if n != "self"]
    return str(found.replace(parameters=kept, return_annotation=found.empty))


def reference_page() -> str:
    """One self-contained HTML page: the Python names, and the keys of an answer."""
    from crossfall.answers.keys import KEYS, SCHEMA

    names = "".join(
        f"<dt><code>{escape(n)}{escape(signature)}</code></dt><dd><pre>{escape(text)}</pre></dd>"
        for n, (signature, text) in public_names().items()
    )
    keys = "".join(
        f"<tr><td><code>{escape(k.name)}</code></td><td>{escape(k.form)}"
        f"{', or null' if k.may_be_null else ''}</td><td>{escape(k.meaning)}</td></tr>"
        for k in KEYS
    )
    return PAGE.format(names=names, keys=keys, schema=SCHEMA)


PAGE = """<!doctype html>
<html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>crossfall: names</title>
<style>
body {{ font: 15px/1.5 "DejaVu Sans", sans-serif; color: #17212b; background: #fff;
  max-width: 60rem; margin: 2rem auto; padding: 0 1rem }}
h1, h2 {{ line-height: 1.2 }} h2 {{ margin-top: 2.5rem }}
code, pre {{ font: 13px/1.5 "DejaVu Sans Mono", monospace }}
dt {{ margin-top: 1.2rem; font-weight: bold; overflow-wrap: anywhere }}
dd {{ margin: 0 0 0 1rem }} dd pre {{ margin: .3rem 0; white-space: pre-wrap }}
table {{ border-collapse: collapse }} td, th {{ border-top: 1px solid #dfe4e8; padding: .3rem .8rem
  .3rem 0; text-align: left; vertical-align: top }}
</style>
<h1>Names</h1>
<p>What Python asks crossfall for, and what is in an answer. Degrees, millimetres and grams, with
the unit at the end of each name. Scale models only: nothing here is a basis for a vehicle that
carries people.</p>
<h2>Python: <code>import crossfall</code></h2><dl>{names}</dl>
<h2>Keys of an answer (schema {schema})</h2>
<p>The same in every verb's <code>--json</code>, in sweeps' columns and on results in Python.</p>
<table><tr><th>key</th><th>form</th><th>meaning</th></tr>{keys}</table>
</html>
"""
