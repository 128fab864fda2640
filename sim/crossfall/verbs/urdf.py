"""`crossfall urdf TRUCK -o FILE`: the truck as a standard multibody model."""

from __future__ import annotations

from pathlib import Path

import click

from crossfall.verbs.common import emit, json_option, load_and_warn, truck_argument


@click.command()
@truck_argument
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    required=True,
    metavar="FILE",
    help="Where to write the model.",
)
@json_option
def command(truck: str, output: Path, as_json: bool) -> None:
    """Write the truck as a URDF multibody, with visual and collision shapes.

    Each axle heaves and rolls on the chassis, each tyre is a spring along its axle, each wheel
    turns. Springs, stops and preloads are no part of the format.
    """
    from crossfall.engines.urdf import check_urdf, urdf
    from crossfall.truck.files import write_atomically
    from crossfall.truck.massprops import whole

    loaded = load_and_warn(truck)
    text = urdf(loaded.truck)
    check_urdf(text, loaded.truck)
    write_atomically(output, text)
    body = whole(loaded.truck)
    if as_json:
        found = {"truck": loaded.truck.name, "file": str(output), "mass_g": body.mass * 1e3}
        emit("urdf", {**found, "cg_mm": [v * 1e3 for v in body.cg]})
    else:
        click.echo(f"wrote {output}: {body.mass * 1e3:.0f} g, checked against the spec")
