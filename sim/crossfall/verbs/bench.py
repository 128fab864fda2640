"""`crossfall bench [TRUCK]`: the bench in the browser."""

from __future__ import annotations

import json
import socket
from pathlib import Path

import click

from crossfall.verbs.common import warn

DEFAULT_PORT = 8310


@click.command("bench")
@click.argument("truck", metavar="[TRUCK]", default="bramble")
@click.option("--folder", type=click.Path(exists=True, file_okay=False), help="Folder to open.")
@click.option("--host", default="127.0.0.1", show_default=True, help="Address to listen on.")
@click.option("--port", default=DEFAULT_PORT, show_default=True, help="Port; 0 takes a free one.")
@click.option("--no-browser", is_flag=True, help="Only print the address.")
@click.option("--json", "as_json", is_flag=True, help="Print the address as one JSON object.")
def command(
    truck: str, folder: str | None, host: str, port: int, no_browser: bool, as_json: bool
) -> None:
    """Open TRUCK on the bench: a page in the browser, for looking and dragging.

    Files are read from and written to one folder only: the truck file's own, or the present one
    for a demo truck.
    """
    import uvicorn

    from crossfall.app.access import open_gate
    from crossfall.app.server import make_app
    from crossfall.app.session import Bench
    from crossfall.truck.demos import find_demo
    from crossfall.truck.read import locate

    source = locate(truck)
    place = Path(folder) if folder else Path() if source == find_demo(truck) else source.parent
    bench = Bench(source, place)
    try:
        with _listen(host, port) as sock:
            gate = open_gate(host, sock.getsockname()[1])
            _announce(gate.address, bench.folder, as_json)
            if gate.wide:
                warn(f"listening on {host}: anyone who reaches it and has this address can edit")
            if not no_browser:
                click.launch(gate.address)
            config = uvicorn.Config(
                make_app(bench, gate), log_level="warning", server_header=False, ws="none"
            )
            uvicorn.Server(config).run(sockets=[sock])
    finally:
        bench.close()


def _listen(host: str, port: int) -> socket.socket:
    """A listening socket; the next free port where the usual one is taken."""
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    for candidate in (port, 0) if port == DEFAULT_PORT else (port,):
        # Named as TCP, or asyncio leaves Nagle's algorithm on, which holds answers up by 40 ms.
        sock = socket.socket(family, socket.SOCK_STREAM, socket.IPPROTO_TCP)
        sock.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            sock.bind((host, candidate))
            sock.listen()  # so that whoever reads the address may call at once
            return sock
        except OSError as error:
            sock.close()
            reason = error.strerror or str(error)
            failure = click.ClickException(f"cannot listen on {host} port {candidate}: {reason}")
    raise failure


def _announce(address: str, folder: Path, as_json: bool) -> None:
    if as_json:
        from crossfall.answers.keys import SCHEMA

        # On one line, so that who started it can read the answer while it goes on running.
        answer = {"schema": SCHEMA, "verb": "bench", "address": address, "folder": str(folder)}
        click.echo(json.dumps(answer))
    else:
        click.echo(f"The bench is open at {address}\nFolder: {folder}\nStop it with Ctrl-C.")
