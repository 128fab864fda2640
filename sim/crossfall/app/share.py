"""The page as one file to look at: the same page, with its answers in it instead of a server."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

_STATIC = Path(__file__).parent / "static"
TURN = 15  # deg between the headings that a copy can stand on
LINKS = (
    '<link rel="icon" href="/static/icon.svg" type="image/svg+xml">\n',
    '<link rel="stylesheet" href="/static/bench.css">\n',
    '<script type="module" src="/static/bench.js"></script>\n',
)


def copy(state: dict[str, Any], paths: dict[int, Any], date: str) -> bytes:
    """One HTML file. state: of the page, exact; paths: how it stands, by heading in deg."""
    page = (_STATIC / "index.html").read_text("utf-8")
    for link in LINKS:
        if link not in page:
            raise ValueError(f"the page no longer has {link}")
        page = page.replace(link, "")
    style = (_STATIC / "bench.css").read_text("utf-8")
    script = (_STATIC / "bench.js").read_text("utf-8").replace("</script", "<\\/script")
    state = {**state, "trucks": [state["file"]], "references": []}  # nothing of the folder's rest
    contents = {"date": date, "turn_deg": TURN, "bench": state, "paths": paths}
    data = json.dumps(contents, allow_nan=False, separators=(",", ":")).replace("<", "\\u003c")
    head, body = page.split("</head>")
    body = body.replace(
        "</body>",
        f'<script type="application/json" id="frozen">{data}</script>\n'
        f'<script type="module">{script}</script>\n</body>',
    )
    return f"{head}<style>{style}</style>\n</head>{body}".encode()
