"""`crossfall guide`: how to measure a truck, as a page with pictures."""

from __future__ import annotations

from pathlib import Path

import click

from crossfall.verbs.common import emit, json_option


@click.command()
@click.argument("truck", metavar="[TRUCK]", required=False)
@click.option(
    "-o",
    "--output",
    type=click.Path(path_type=Path, dir_okay=False),
    default=Path("measuring-guide.html"),
    show_default=True,
    metavar="FILE",
    help="Where the page goes.",
)
@click.option("--open", "show", is_flag=True, help="Open it in the browser.")
@json_option
def command(truck: str | None, output: Path, show: bool, as_json: bool) -> None:
    """Write the measuring guide: scale, block, board and phone, in ten minutes.

    With a TRUCK the page carries its lengths, the block to use and the angles to expect.
    """
    from crossfall.show.guide import write_guide
    from crossfall.truck.build import load_truck

    loaded = load_truck(truck) if truck else None
    if loaded is None:
        write_guide(output)
    else:
        write_guide(output, loaded.truck, loaded.path.stem)
    if as_json:
        name = loaded.truck.name if loaded else None
        emit("guide", {"file": str(output), "truck": name})
    else:
        click.echo(f"wrote {output}")
    if show:
        click.launch(str(output))
