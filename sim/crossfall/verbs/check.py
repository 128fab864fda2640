"""`crossfall check TRUCK`: is the file right, and how complete is it?"""

from __future__ import annotations

from typing import Any

import click

from crossfall.verbs.common import console, emit, json_option, problem_keys, truck_argument
from crossfall.verbs.ending import BAD_INPUT


@click.command()
@truck_argument
@json_option
def command(truck: str, as_json: bool) -> int:
    """Is a truck file right, and how complete is it?

    Every mistake is told at once, a line each, with file, line and key; exit status 2 then. A value
    that is likely a slip (kilograms for grams, a height from the ground on an axle) is implausible,
    with what was probably meant. `crossfall keys` lists every key and material.
    """
    from crossfall.truck.build import load_truck
    from crossfall.truck.complete import completeness
    from crossfall.truck.errors import InputError
    from crossfall.truck.plausibility import implausible_in_file

    try:
        loaded = load_truck(truck)
    except InputError as error:
        implausible = implausible_in_file(truck)
        if not as_json:
            raise InputError((*error.problems, *implausible)) from None
        problems, slips = (
            [problem_keys(p) for p in error.problems],
            [problem_keys(p) for p in implausible],
        )
        failed = {"failed": "bad input", "exit_status": BAD_INPUT}
        emit("check", {"valid": False, **failed, "problems": problems, "implausible": slips})
        return BAD_INPUT
    found = completeness(loaded.truck, loaded.spec)
    if as_json:
        emit("check", _answer(loaded, found))
    else:
        _show(loaded, found)
    return 0


def _answer(loaded: Any, c: Any) -> dict[str, Any]:
    from crossfall.truck.digest import truck_digest
    from crossfall.truck.plausibility import implausible_values

    return {
        "valid": True,
        "truck": loaded.truck.name,
        "file": str(loaded.path),
        "digest": truck_digest(loaded.truck),
        "rows": c.rows,
        "pieces": c.pieces,
        "mass_weighed_percent": c.weighed * 100,
        "mass_computed_percent": c.computed * 100,
        "mass_shaped_percent": c.shaped * 100,
        "mass_toleranced_percent": c.toleranced * 100,
        "missing_sections": dict(c.missing),
        "no_tolerance": c.no_tolerance,
        "no_shape": c.no_shape,
        "no_price": c.no_price,
        "assumptions": c.assumptions,
        "default_tolerances": c.default_tolerances,
        "uncertain": [_uncertain(one) for one in loaded.truck.uncertain],
        "notes": c.notes,
        "problems": [],
        "implausible": [problem_keys(p) for p in implausible_values(loaded.spec, loaded.where)],
        "warnings": [problem_keys(p) for p in loaded.warnings],
    }


def _uncertain(one: Any) -> dict[str, Any]:
    """One input that may be out, in the file's unit."""
    from crossfall.truck.tolerances import reason
    from crossfall.truck.uncertain import shown

    unit, low, likely, high = shown(one)
    return {
        "name": one.name,
        "unit": unit,
        "low": low,
        "likely": likely,
        "high": high,
        "shape": one.shape,
        "basis": one.basis,
        "why": reason(one),
    }


def _show(loaded: Any, c: Any) -> None:
    from rich.markup import escape

    from crossfall.truck.plausibility import implausible_values

    out = console()
    implausible = implausible_values(loaded.spec, loaded.where)
    but = f", but {len(implausible)} implausible" if implausible else ""
    out.print(f"[bold]{escape(str(loaded.path))}[/bold]: no mistakes{but}")
    for one in implausible:
        out.print(f"  implausible: {escape(str(one))}")
    out.print(f"{escape(loaded.truck.name)}: {c.rows} parts listed, {c.pieces} pieces")
    out.print(f"  mass weighed        {c.weighed * 100:3.0f} %, computed {c.computed * 100:.0f} %")
    out.print(
        f"  mass with a shape   {c.shaped * 100:3.0f} %" + _names(c.no_shape, "compact lumps")
    )
    out.print(
        f"  mass with tolerance {c.toleranced * 100:3.0f} %" + _names(c.no_tolerance, "by default")
    )
    for section, cost in c.missing:
        out.print(f"  no \\[{section}]: {cost}")
    for assumption in c.assumptions:
        out.print(f"  assumed: {escape(assumption)}")
    if c.default_tolerances:
        out.print(f"  tolerances by default: {escape('; '.join(c.default_tolerances))}")
    for note in c.notes:
        out.print(f"  note: {escape(note)}")
    for warning in loaded.warnings:
        out.print(f"  warning: {escape(str(warning))}")


def _names(names: tuple[str, ...], what: str) -> str:
    from rich.markup import escape

    if not names:
        return ""
    shown = ", ".join(names[:6]) + (", ..." if len(names) > 6 else "")
    return escape(f" ({what}: {shown})")
