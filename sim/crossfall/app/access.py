"""Who may talk to the bench: pages of its own, from this machine, unless told to listen wider.

A local server is reachable by every web page the same browser has open. So the Host header must
name this server (else a foreign name could be pointed at it), and anything that changes state
must come from the bench's own page (Origin). When listening wider than this machine a token is
asked for as well.
"""

from __future__ import annotations

import ipaddress
import secrets
from collections.abc import Awaitable, Callable, MutableMapping
from dataclasses import dataclass, field
from http.cookies import SimpleCookie
from typing import Any
from urllib.parse import parse_qs, urlsplit

Scope = MutableMapping[str, Any]
Message = MutableMapping[str, Any]
Receive = Callable[[], Awaitable[Message]]
Send = Callable[[Message], Awaitable[None]]
App = Callable[[Scope, Receive, Send], Awaitable[None]]

MAX_BODY = 2_000_000  # bytes; a chassis file of 2,000 parts is a tenth of that
COOKIE = "crossfall_bench"

HEADERS = (
    (
        b"content-security-policy",
        b"default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; "
        b"connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    ),
    (b"x-content-type-options", b"nosniff"),
    (b"referrer-policy", b"no-referrer"),
    (b"cross-origin-opener-policy", b"same-origin"),
    (b"cross-origin-resource-policy", b"same-origin"),
    (b"cache-control", b"no-store"),
)


def is_loopback(host: str) -> bool:
    """Whether an address to listen on can be reached from this machine only."""
    if host == "localhost":
        return True
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return False


@dataclass(frozen=True)
class Gate:
    """What is let in. token: asked for when not None. wide: listens beyond this machine."""

    port: int
    host: str = "127.0.0.1"
    token: str | None = field(default=None, repr=False)

    @property
    def wide(self) -> bool:
        return not is_loopback(self.host)

    @property
    def address(self) -> str:
        """What to open in the browser, token included."""
        name = "127.0.0.1" if self.host in ("0.0.0.0", "::") else self.host
        name = f"[{name}]" if ":" in name else name
        return f"http://{name}:{self.port}/" + (f"?token={self.token}" if self.token else "")

    def knows_host(self, header: str) -> bool:
        """Whether a Host header names this server.

        When listening wider, any plain address will do: a foreign page can only get here by a
        name, and the token stands behind this check anyway.
        """
        parts = urlsplit(f"//{header}")
        try:
            name, port = parts.hostname or "", parts.port or 80
        except ValueError:
            return False
        if port != self.port:
            return False
        if name in ("localhost", self.host) or is_loopback(name):
            return True
        return self.wide and _is_address(name)

    def knows_origin(self, origin: str) -> bool:
        """Whether an Origin header is a page of this server."""
        parts = urlsplit(origin)
        return parts.scheme == "http" and not parts.path and self.knows_host(parts.netloc)

    def knows_token(self, given: str | None) -> bool:
        if self.token is None:
            return True
        return given is not None and secrets.compare_digest(given.encode(), self.token.encode())


def open_gate(host: str, port: int) -> Gate:
    """A gate for the address; one that listens wider than this machine gets a fresh token."""
    return Gate(port, host, None if is_loopback(host) else secrets.token_urlsafe(24))


class Guard:
    """ASGI middleware around the bench: `Gate` checks, bounded bodies, safe headers."""

    def __init__(self, app: App, gate: Gate) -> None:
        self.app, self.gate = app, gate

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            if scope["type"] == "lifespan":
                await self.app(scope, receive, send)
            return
        headers = {k.decode("latin-1").lower(): v.decode("latin-1") for k, v in scope["headers"]}
        fresh = _token_in_query(scope)
        if (refusal := self._refusal(scope, headers, fresh)) is not None:
            await _answer(send, *refusal)
            return
        await self.app(scope, _bounded(receive), self._sealed(send, fresh))

    def _refusal(
        self, scope: Scope, headers: dict[str, str], fresh: str | None
    ) -> tuple[int, str] | None:
        """(status, sentence) where the request is not let in."""
        if not self.gate.knows_host(headers.get("host", "")):
            return 421, "this server does not answer to that name"
        if headers.get("sec-fetch-site", "same-origin") not in ("same-origin", "none"):
            return 403, "only the bench's own page may ask"
        origin = headers.get("origin")
        if origin is not None and not self.gate.knows_origin(origin):
            return 403, "only the bench's own page may ask"
        if not self.gate.knows_token(fresh or _token_in_cookie(headers)):
            return 401, "open the bench with the full address it printed, token included"
        if scope["method"] in ("GET", "HEAD"):
            return None
        if origin is None:
            return 403, "only the bench's own page may change anything"
        if headers.get("content-type", "").split(";")[0].strip() != "application/json":
            return 415, "send JSON"
        length = headers.get("content-length", "0")
        if not length.isdigit() or int(length) > MAX_BODY:
            return 413, f"that is more than {MAX_BODY // 1_000_000} MB"
        return None

    def _sealed(self, send: Send, fresh: str | None) -> Send:
        """Every answer carries the safe headers; a token from the address becomes a cookie."""
        extra = list(HEADERS)
        if self.gate.token is not None and fresh is not None:
            cookie = f"{COOKIE}={self.gate.token}; HttpOnly; SameSite=Strict; Path=/"
            extra.append((b"set-cookie", cookie.encode()))

        async def sealed(message: Message) -> None:
            if message["type"] == "http.response.start":
                own = {name for name, _ in extra}
                kept = [h for h in message.get("headers", []) if h[0].lower() not in own]
                message = {**message, "headers": [*kept, *extra]}
            await send(message)

        return sealed


class TooBig(Exception):
    """A body longer than its header promised, or than is allowed."""


def _bounded(receive: Receive) -> Receive:
    seen = 0

    async def counted() -> Message:
        nonlocal seen
        message = await receive()
        seen += len(message.get("body", b""))
        if seen > MAX_BODY:
            raise TooBig
        return message

    return counted


def _is_address(name: str) -> bool:
    try:
        ipaddress.ip_address(name)
    except ValueError:
        return False
    return True


def _token_in_query(scope: Scope) -> str | None:
    values = parse_qs(scope.get("query_string", b"").decode("latin-1")).get("token")
    return values[0] if values else None


def _token_in_cookie(headers: dict[str, str]) -> str | None:
    morsel = SimpleCookie(headers.get("cookie", "")).get(COOKIE)
    return morsel.value if morsel else None


async def _answer(send: Send, status: int, sentence: str) -> None:
    body = sentence.encode()
    headers = [(b"content-type", b"text/plain; charset=utf-8"), *HEADERS]
    await send({"type": "http.response.start", "status": status, "headers": headers})
    await send({"type": "http.response.body", "body": body})
