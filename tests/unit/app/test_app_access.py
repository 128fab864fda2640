"""Who is let in to the bench's server."""

from __future__ import annotations

import asyncio
from typing import Any

import pytest

from crossfall.app.access import HEADERS, MAX_BODY, Gate, Guard, open_gate

PORT = 8310


async def _inner(scope: Any, receive: Any, send: Any) -> None:
    body = b""
    while (message := await receive()).get("more_body"):
        body += message.get("body", b"")
    await send({"type": "http.response.start", "status": 200, "headers": []})
    await send({"type": "http.response.body", "body": b"in"})


def ask(gate: Gate, headers: dict[str, str], method: str = "GET", query: str = "") -> Any:
    """(status, headers) of one request through the guard."""
    sent: list[Any] = []

    async def receive() -> Any:
        return {"type": "http.request", "body": b"{}", "more_body": False}

    async def send(message: Any) -> None:
        sent.append(message)

    scope = {
        "type": "http",
        "method": method,
        "path": "/api/edit",
        "query_string": query.encode(),
        "headers": [(k.encode(), v.encode()) for k, v in headers.items()],
    }
    asyncio.run(Guard(_inner, gate)(scope, receive, send))
    return sent[0]["status"], sent[0]["headers"]


HERE = {"host": f"127.0.0.1:{PORT}"}
PAGE = {**HERE, "origin": f"http://127.0.0.1:{PORT}", "content-type": "application/json"}


@pytest.mark.parametrize("host", ["127.0.0.1:8310", "localhost:8310", "[::1]:8310"])
def test_this_machines_own_names_are_let_in(host: str) -> None:
    assert ask(Gate(PORT), {"host": host})[0] == 200


@pytest.mark.parametrize(
    "host", ["", "evil.example:8310", "127.0.0.1", "127.0.0.1:9", "192.168.1.5:8310", "127.0.0.1:x"]
)
def test_any_other_host_is_refused(host: str) -> None:
    assert ask(Gate(PORT), {"host": host})[0] == 421


def test_a_change_needs_the_pages_own_origin() -> None:
    gate = Gate(PORT)
    assert ask(gate, PAGE, "POST")[0] == 200
    assert ask(gate, {**HERE, "content-type": "application/json"}, "POST")[0] == 403
    for origin in (
        "http://evil.example",
        "null",
        f"https://127.0.0.1:{PORT}",
        "http://127.0.0.1:1",
    ):
        assert ask(gate, {**PAGE, "origin": origin}, "POST")[0] == 403


def test_other_sites_may_not_even_read() -> None:
    assert ask(Gate(PORT), {**HERE, "sec-fetch-site": "cross-site"})[0] == 403
    assert ask(Gate(PORT), {**HERE, "origin": "http://evil.example"})[0] == 403
    assert ask(Gate(PORT), {**HERE, "sec-fetch-site": "none"})[0] == 200


def test_forms_cannot_pose_as_the_page() -> None:
    assert ask(Gate(PORT), {**PAGE, "content-type": "text/plain"}, "POST")[0] == 415


def test_bodies_are_bounded() -> None:
    assert ask(Gate(PORT), {**PAGE, "content-length": str(MAX_BODY)}, "POST")[0] == 200
    assert ask(Gate(PORT), {**PAGE, "content-length": str(MAX_BODY + 1)}, "POST")[0] == 413
    assert ask(Gate(PORT), {**PAGE, "content-length": "-1"}, "POST")[0] == 413


def test_every_answer_carries_the_safe_headers() -> None:
    for headers in (HERE, {"host": "evil.example"}):
        assert set(HEADERS) <= set(ask(Gate(PORT), headers)[1])


def test_listening_wider_asks_for_a_token() -> None:
    gate = open_gate("0.0.0.0", PORT)
    assert gate.wide
    assert gate.token is not None
    assert gate.token in gate.address
    outside = {"host": f"192.168.1.5:{PORT}"}
    assert ask(gate, outside)[0] == 401
    assert ask(gate, outside, query="token=guess")[0] == 401
    status, headers = ask(gate, outside, query=f"token={gate.token}")
    assert status == 200
    cookie = dict(headers)[b"set-cookie"].decode()
    assert "HttpOnly" in cookie
    assert "SameSite=Strict" in cookie
    assert ask(gate, {**outside, "cookie": cookie.split(";")[0]})[0] == 200
    assert ask(gate, {"host": f"name.example:{PORT}", "cookie": cookie.split(";")[0]})[0] == 421


def test_loopback_needs_no_token() -> None:
    assert open_gate("127.0.0.1", PORT).token is None
    assert open_gate("localhost", PORT).token is None
