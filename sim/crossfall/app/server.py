"""The bench's own small web server: the page, and a JSON door to `session.Bench`."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import JSONResponse, Response
from starlette.routing import Route

from crossfall.app import wizard
from crossfall.app.access import Gate, Guard, TooBig
from crossfall.app.document import At, Conflict
from crossfall.app.session import Bench
from crossfall.truck.errors import InputError, Problem

STATIC = Path(__file__).parent / "static"
KINDS = {
    "index.html": "text/html",
    "bench.js": "text/javascript",
    "bench.css": "text/css",
    "icon.svg": "image/svg+xml",
}


def make_app(bench: Bench, gate: Gate) -> Guard:
    """The whole server as an ASGI application, behind its guard."""
    routes = [
        Route("/", _page),
        Route("/static/{name}", _static),
        _get("/api/bench", lambda q: bench.state()),
        _get("/api/pulse", lambda q: bench.pulse()),
        _get("/api/exact", lambda q: bench.exact(_asked(q))),
        _get("/api/ways", lambda q: bench.ways(_asked(q))),
        _get("/api/gains", lambda q: bench.gains(_asked(q))),
        _get("/api/reference", lambda q: bench.reference(_asked(q))),
        _post("/api/pin", lambda b: bench.pin(_at(b), _text(b, "key"))),
        _get("/api/history", lambda q: bench.history(_asked(q))),
        _post("/api/go", lambda b: bench.go(_at(b), _whole(b, "to"))),
        _post(
            "/api/name-step",
            lambda b: bench.name_step(_at(b), _whole(b, "step"), _text(b, "name")),
        ),
        _post("/api/surface", lambda b: bench.surface(_at(b), _text(b, "surface"))),
        _get("/api/path", lambda q: bench.tried.path(_asked(q), _number(q, "heading_deg", float))),
        _get("/api/trial", lambda q: bench.tried.trial_state()),
        _binary("/api/poses", lambda q: bench.tried.poses(_asked(q), str(q.get("file", "")))),
        _post(
            "/api/trial", lambda b: bench.tried.trial(_at(b), _list(b, "headings"), _yes(b, "rail"))
        ),
        _post("/api/trial-stop", lambda b: bench.tried.trials.stop()),
        _get("/api/suspension", lambda q: bench.tried.suspension(_asked(q))),
        _get("/api/suspension-moves", lambda q: bench.tried.suspension_moves(_asked(q))),
        _post(
            "/api/course-standing",
            lambda b: bench.tried.course_standing(_at(b), _table(b, "course")),
        ),
        _post("/api/course", lambda b: bench.tried.course(_at(b), _table(b, "course"))),
        _get("/api/course", lambda q: bench.tried.courses.state()),
        _post(
            "/api/course-still",
            lambda b: bench.paper.keep_still(_at(b), _text(b, "picture"), _list(b, "words")),
        ),
        _get("/api/courses", lambda q: bench.tried.kept_courses()),
        _post(
            "/api/keep-course",
            lambda b: bench.tried.keep_course(
                _text(b, "name"), _table(b, "course"), _yes(b, "over")
            ),
        ),
        _post("/api/course-stop", lambda b: bench.tried.courses.stop()),
        _binary("/api/course-poses", lambda q: bench.tried.courses.poses(str(q.get("file", "")))),
        _get("/api/part-form", lambda q: bench.part_form(_asked(q))),
        _get("/api/changes", lambda q: bench.tuning.changes(_asked(q))),
        _post(
            "/api/edit-changes",
            lambda b: bench.tuning.edit_changes(_at(b), _text(b, "seen"), _table(b, "asked")),
        ),
        _post(
            "/api/keep-edits",
            lambda b: bench.tuning.keep_edits(_at(b), _text(b, "seen"), _table(b, "asked")),
        ),
        _get("/api/bought", lambda q: bench.tuning.bought(_asked(q))),
        _post("/api/fit", lambda b: bench.tuning.fit(_at(b), _table(b, "chosen"))),
        _get("/api/readings", lambda q: bench.measured.readings(_asked(q))),
        _binary(
            "/api/sheet",
            lambda q: bench.paper.sheet(_asked(q)),
            "application/pdf",
            "set-up-sheet.pdf",
        ),
        _binary("/api/share", lambda q: bench.paper.share(_asked(q)), "text/html", "bench.html"),
        _get("/api/board", lambda q: bench.measured.board(_asked(q))),
        _get("/api/wizard", lambda q: bench.measured.wizard(_asked(q))),
        _post(
            "/api/reading",
            lambda b: {"value": wizard.checked_typed(_text(b, "key"), _text(b, "typed"))},
        ),
        _post(
            "/api/begin",
            lambda b: bench.measured.begin(_text(b, "name"), _table(b, "typed"), _yes(b, "again")),
        ),
        _post("/api/agreement", lambda b: bench.measured.agreement(_at(b), _yes(b, "put"))),
        _get("/api/sweeps", lambda q: bench.sweeps()),
        _get("/api/sweep-state", lambda q: bench.sweep_job.state()),
        _post("/api/sweep-run", lambda b: bench.run_sweep(_at(b), _table(b, "asked"))),
        _post("/api/sweep-stop", lambda b: bench.sweep_job.stop()),
        _get("/api/sweep", lambda q: bench.sweep(str(q.get("name", "")))),
        _post("/api/plan", lambda b: bench.tuning.planned(_at(b), _table(b, "asked"))),
        _post(
            "/api/weigh",
            lambda b: bench.measured.weighed(_at(b), _table(b, "form"), _yes(b, "keep")),
        ),
        _post("/api/board", lambda b: bench.measured.board(_at(b), _table(b, "asked"))),
        _post("/api/place", lambda b: bench.place(_at(b), _table(b, "values"))),
        _post("/api/try", lambda b: bench.attempt(_at(b), _list(b, "edits"), _yes(b, "full"))),
        _post("/api/edit", lambda b: bench.edit(_at(b), _list(b, "edits"), _text(b, "what"))),
        _post("/api/undo", lambda b: bench.undo(_at(b))),
        _post("/api/redo", lambda b: bench.redo(_at(b))),
        _post("/api/save", lambda b: bench.save(_at(b), _name(b), _yes(b, "over"))),
        _post("/api/discard", lambda b: bench.discard(_at(b))),
        _post("/api/open", lambda b: bench.open(_text(b, "name"))),
    ]
    handlers: dict[Any, Any] = {
        InputError: _refuse_input,
        Conflict: _refuse_conflict,
        TooBig: _refuse_size,
        404: _nothing,
    }
    return Guard(Starlette(routes=routes, exception_handlers=handlers), gate)


def _get(path: str, answer: Callable[[Any], Any]) -> Route:
    async def endpoint(request: Request) -> Response:
        return JSONResponse(await run_in_threadpool(answer, request.query_params))

    return Route(path, endpoint, methods=["GET"])


def _binary(
    path: str,
    answer: Callable[[Any], bytes],
    kind: str = "application/octet-stream",
    name: str = "poses",
) -> Route:
    async def endpoint(request: Request) -> Response:
        content = await run_in_threadpool(answer, request.query_params)
        attached = {"content-disposition": f'attachment; filename="{name}"'}
        return Response(content, media_type=kind, headers=attached)

    return Route(path, endpoint, methods=["GET"])


def _post(path: str, answer: Callable[[dict[str, Any]], Any]) -> Route:
    async def endpoint(request: Request) -> Response:
        try:
            body = json.loads(await request.body())
            # Half of a surrogate pair is a Python string, but no text that could be written.
            json.dumps(body, ensure_ascii=False).encode()
        except (ValueError, RecursionError):
            body = None
        if not isinstance(body, dict):
            raise InputError(Problem("request", "is not a JSON object"))
        return JSONResponse(await run_in_threadpool(answer, body))

    return Route(path, endpoint, methods=["POST"])


async def _page(request: Request) -> Response:
    return Response((STATIC / "index.html").read_bytes(), media_type="text/html")


async def _static(request: Request) -> Response:
    name = request.path_params["name"]
    if name not in KINDS:
        return await _nothing(request, None)
    return Response((STATIC / name).read_bytes(), media_type=KINDS[name])


async def _nothing(request: Request, error: Any) -> Response:
    return JSONResponse({"problems": ["there is nothing here"]}, 404)


def _refused(status: int, problems: list[str], where: str | None = None) -> Response:
    """An answer, not a failure of the request: browsers log every 4xx as an error of the page."""
    return JSONResponse({"refused": status, "problems": problems, "where": where})


async def _refuse_input(request: Request, error: Exception) -> Response:
    assert isinstance(error, InputError)
    return _refused(422, [str(p) for p in error.problems])


async def _refuse_conflict(request: Request, error: Exception) -> Response:
    assert isinstance(error, Conflict)
    return _refused(409, [str(error)], error.where)


async def _refuse_size(request: Request, error: Exception) -> Response:
    return JSONResponse({"problems": ["that is too much at once"]}, 413)


# Values of a request, or a sentence why not


def _number(query: Any, key: str, kind: type) -> Any:
    try:
        value = kind(query.get(key, ""))
    except ValueError:
        raise InputError(Problem("request", f"{key} is not a number")) from None
    if not abs(value) < 1e9:
        raise InputError(Problem("request", f"{key} is out of bounds"))
    return value


def _whole(body: dict[str, Any], key: str) -> int:
    value = body.get(key)
    if type(value) is not int or abs(value) > 1e9:
        raise InputError(Problem("request", f"{key} is missing"))
    return value


def _at(body: dict[str, Any]) -> At:
    """What the asker has in view."""
    return At(_text(body, "document"), _whole(body, "revision"))


def _asked(query: Any) -> At:
    """What the asker has in view, of a question."""
    return At(str(query.get("document", "")), _number(query, "revision", int))


def _list(body: dict[str, Any], key: str) -> list[Any]:
    value = body.get(key)
    if not isinstance(value, list):
        raise InputError(Problem("request", f"{key} are missing"))
    return value


def _table(body: dict[str, Any], key: str) -> dict[str, Any]:
    value = body.get(key)
    if not isinstance(value, dict):
        raise InputError(Problem("request", f"{key} are missing"))
    return value


def _yes(body: dict[str, Any], key: str) -> bool:
    return body.get(key) is True


def _text(body: dict[str, Any], key: str) -> str:
    value = body.get(key)
    if not isinstance(value, str):
        raise InputError(Problem("request", f"{key} is missing"))
    return value


def _name(body: dict[str, Any]) -> str | None:
    return None if body.get("name") is None else _text(body, "name")
