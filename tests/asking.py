"""The bench's server without a network: one question, one answer, as its page would ask it."""

from __future__ import annotations

import asyncio
import json
from pathlib import Path
from typing import Any
from urllib.parse import quote, urlencode

from crossfall.app.access import Guard, open_gate
from crossfall.app.server import make_app
from crossfall.app.session import Bench

PORT = 8310
HOME = f"127.0.0.1:{PORT}"


class Server:
    """A bench behind its door. `close` lets go of the files as a killed process would."""

    def __init__(self, folder: Path, truck: str, keeper: Path) -> None:
        self.bench = Bench(folder / truck, folder, keeper)
        self._app: Guard = make_app(self.bench, open_gate("127.0.0.1", PORT))

    def close(self) -> None:
        self.bench.close()

    def ask(self, path: str, **query: Any) -> Any:
        return json.loads(self.raw("GET", path, urlencode(query, quote_via=quote).encode(), b""))

    def tell(self, path: str, **body: Any) -> Any:
        return json.loads(self.raw("POST", path, b"", json.dumps(body).encode()))

    def raw(self, method: str, path: str, query: bytes, body: bytes) -> bytes:
        """The body of an answer; the server never fails."""
        headers = [(b"host", HOME.encode()), (b"origin", f"http://{HOME}".encode())]
        headers.append((b"content-type", b"application/json"))
        headers.append((b"content-length", str(len(body)).encode()))
        scope = {
            "type": "http", "http_version": "1.1", "method": method, "path": path,
            "raw_path": path.encode(), "query_string": query, "headers": headers,
            "scheme": "http", "server": ("127.0.0.1", PORT), "client": ("127.0.0.1", 1),
        }  # fmt: skip
        sent: list[Any] = []

        async def receive() -> Any:
            return {"type": "http.request", "body": body, "more_body": False}

        async def send(message: Any) -> None:
            sent.append(message)

        asyncio.run(self._app(scope, receive, send))
        assert sent[0]["status"] < 500, sent
        return b"".join(m.get("body", b"") for m in sent[1:])


def seen(state: dict[str, Any]) -> dict[str, Any]:
    """What a page that was sent this state names in its questions."""
    return {"document": state["document"], "revision": state["revision"]}
