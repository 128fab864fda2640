"""The bench's own small web server: the page, and a JSON door to `session.Bench`."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any, TypeVar

from pydantic import BaseModel, TypeAdapter, ValidationError
from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import JSONResponse, Response
from starlette.routing import Route

from crossfall.app import bodies as q
from crossfall.app import replies as r
from crossfall.app import wizard
from crossfall.app.access import Gate, Guard, TooBig
from crossfall.app.document import Conflict
from crossfall.app.session import Bench
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.sentences import problems

STATIC = Path(__file__).parent / "static"
KINDS = {
    "index.html": "text/html",
    "bench.js": "text/javascript",
    "bench.css": "text/css",
    "icon.svg": "image/svg+xml",
}
_Q = TypeVar("_Q", bound=BaseModel)
_Bench, _Before = r.BenchReply, r.BeforeReply | None


def make_app(bench: Bench, gate: Gate) -> Guard:
    """The whole server as an ASGI application, behind its guard."""
    tried, tuning, measured, paper = bench.tried, bench.tuning, bench.measured, bench.paper
    routes = [
        Route("/", _page),
        Route("/static/{name}", _static),
        # The truck on the desk
        _get("/api/bench", q.Query, r.BenchReply, lambda _: bench.state()),
        _get("/api/pulse", q.Query, r.PulseReply, lambda _: bench.pulse()),
        _get("/api/exact", q.SeenQuery, r.AnswersReply, lambda s: bench.exact(s.at)),
        _get("/api/ways", q.SeenQuery, r.AnswersReply, lambda s: bench.ways(s.at)),
        _get("/api/gains", q.SeenQuery, r.AnswersReply, lambda s: bench.gains(s.at)),
        _get("/api/reference", q.SeenQuery, _Before, lambda s: bench.reference(s.at)),
        _get("/api/history", q.SeenQuery, r.StepsReply, lambda s: bench.history(s.at)),
        _get("/api/part-form", q.SeenQuery, r.PartFormReply, lambda s: bench.part_form(s.at)),
        _post("/api/pin", q.PinBody, _Bench, lambda b: bench.pin(b.at, b.key)),
        _post("/api/go", q.GoBody, _Bench, lambda b: bench.go(b.at, b.to)),
        _post(
            "/api/name-step",
            q.NameStepBody,
            r.StepsReply,
            lambda b: bench.name_step(b.at, b.step, b.name),
        ),
        _post("/api/surface", q.SurfaceBody, _Bench, lambda b: bench.surface(b.at, b.surface)),
        _post("/api/place", q.PlaceBody, _Bench, lambda b: bench.place(b.at, b.values)),
        _post(
            "/api/try",
            q.TryBody,
            r.TriedReply,
            lambda b: bench.attempt(b.at, _plain(b.edits), b.full),
        ),
        _post(
            "/api/edit", q.EditsBody, _Bench, lambda b: bench.edit(b.at, _plain(b.edits), b.what)
        ),
        _post("/api/undo", q.SeenBody, _Bench, lambda b: bench.undo(b.at)),
        _post("/api/redo", q.SeenBody, _Bench, lambda b: bench.redo(b.at)),
        _post("/api/save", q.SaveBody, _Bench, lambda b: bench.save(b.at, b.name, b.over)),
        _post("/api/discard", q.SeenBody, _Bench, lambda b: bench.discard(b.at)),
        _post("/api/open", q.OpenBody, _Bench, lambda b: bench.open(b.name)),
        # What it does
        _get("/api/path", q.HeadingQuery, r.PathReply, lambda s: tried.path(s.at, s.heading_deg)),
        _get("/api/trial", q.Query, r.TrialStateReply, lambda _: tried.trial_state()),
        _post(
            "/api/trial",
            q.TrialBody,
            r.TrialStateReply,
            lambda b: tried.trial(b.at, b.headings, b.rail),
        ),
        _post("/api/trial-stop", q.NothingBody, r.TrialStateReply, lambda _: tried.trials.stop()),
        _binary("/api/poses", q.SeenFileQuery, lambda s: tried.poses(s.at, s.file)),
        _get(
            "/api/suspension", q.SeenQuery, r.SuspensionToldReply, lambda s: tried.suspension(s.at)
        ),
        _get(
            "/api/suspension-moves",
            q.SeenQuery,
            r.SuspensionMovesReply,
            lambda s: tried.suspension_moves(s.at),
        ),
        # Courses
        _post(
            "/api/course-standing",
            q.CourseBody,
            r.CourseStandingReply,
            lambda b: tried.course_standing(b.at, _plain(b.course)),
        ),
        _post(
            "/api/course",
            q.CourseBody,
            r.CourseStateReply,
            lambda b: tried.course(b.at, _plain(b.course)),
        ),
        _get("/api/course", q.Query, r.CourseStateReply, lambda _: tried.courses.state()),
        _post(
            "/api/course-stop", q.NothingBody, r.CourseStateReply, lambda _: tried.courses.stop()
        ),
        _binary("/api/course-poses", q.FileQuery, lambda s: tried.courses.poses(s.file)),
        _get("/api/courses", q.Query, r.KeptCoursesReply, lambda _: tried.kept_courses()),
        _post(
            "/api/keep-course",
            q.KeepCourseBody,
            r.KeptCoursesReply,
            lambda b: tried.keep_course(b.name, _plain(b.course), b.over),
        ),
        # Changes
        _get("/api/changes", q.SeenQuery, r.CandidatesReply, lambda s: tuning.changes(s.at)),
        _get("/api/bought", q.SeenQuery, r.BoughtReply, lambda s: tuning.bought(s.at)),
        _post(
            "/api/edit-changes",
            q.EditListBody,
            r.CandidatesReply,
            lambda b: tuning.edit_changes(b.at, b.seen, _plain(b.asked)),
        ),
        _post(
            "/api/keep-edits",
            q.KeepEditsBody,
            _Bench,
            lambda b: tuning.keep_edits(b.at, b.seen, _plain(b.asked)),
        ),
        _post("/api/fit", q.FitBody, _Bench, lambda b: tuning.fit(b.at, b.chosen)),
        _post(
            "/api/plan", q.PlanBody, r.PlannedReply, lambda b: tuning.planned(b.at, _plain(b.asked))
        ),
        # Scale, board and a first file
        _get("/api/readings", q.SeenQuery, r.ReadingsReply, lambda s: measured.readings(s.at)),
        _post(
            "/api/weigh",
            q.WeighBody,
            r.WeighedReply,
            lambda b: measured.weighed(b.at, _plain(b.form), b.keep),
        ),
        _get("/api/board", q.SeenQuery, r.BoardCardReply, lambda s: measured.board(s.at)),
        _post(
            "/api/board",
            q.BoardBody,
            r.BoardCardReply,
            lambda b: measured.board(b.at, _plain(b.asked)),
        ),
        _get("/api/wizard", q.SeenQuery, r.WizardReply, lambda s: measured.wizard(s.at)),
        _post(
            "/api/reading",
            q.TypedBody,
            r.ReadingReply,
            lambda b: {"value": wizard.checked_typed(b.key, b.typed)},
        ),
        _post(
            "/api/begin",
            q.BeginBody,
            r.BeganReply,
            lambda b: measured.begin(b.name, b.typed, b.again),
        ),
        _post(
            "/api/agreement",
            q.AgreementBody,
            r.AgreedReply,
            lambda b: measured.agreement(b.at, b.put),
        ),
        # Sweeps
        _get("/api/sweeps", q.Query, r.SweepsReply, lambda _: bench.sweeps()),
        _get("/api/sweep", q.NameQuery, r.SweepTableReply, lambda s: bench.sweep(s.name)),
        _get("/api/sweep-state", q.Query, r.SweepStateReply, lambda _: bench.sweep_job.state()),
        _post(
            "/api/sweep-run",
            q.SweepBody,
            r.SweepStateReply,
            lambda b: bench.run_sweep(b.at, _plain(b.asked)),
        ),
        _post(
            "/api/sweep-stop", q.NothingBody, r.SweepStateReply, lambda _: bench.sweep_job.stop()
        ),
        # What is carried away
        _post(
            "/api/course-still",
            q.StillBody,
            r.StillReply,
            lambda b: paper.keep_still(b.at, b.picture, b.words),
        ),
        _binary(
            "/api/sheet",
            q.SeenQuery,
            lambda s: paper.sheet(s.at),
            "application/pdf",
            "set-up-sheet.pdf",
        ),
        _binary("/api/share", q.SeenQuery, lambda s: paper.share(s.at), "text/html", "bench.html"),
    ]
    handlers: dict[Any, Any] = {
        InputError: _refuse_input,
        Conflict: _refuse_conflict,
        TooBig: _refuse_size,
        404: _nothing,
    }
    return Guard(Starlette(routes=routes, exception_handlers=handlers), gate)


def _get(path: str, asks: type[_Q], reply: Any, answer: Callable[[_Q], Any]) -> Route:
    adapter = TypeAdapter(reply)

    async def endpoint(request: Request) -> Response:
        asked = _understood(asks, dict(request.query_params))
        return await run_in_threadpool(_said, adapter, answer, asked)

    return Route(path, endpoint, methods=["GET"])


def _binary(
    path: str,
    asks: type[_Q],
    answer: Callable[[_Q], bytes],
    kind: str = "application/octet-stream",
    name: str = "poses",
) -> Route:
    async def endpoint(request: Request) -> Response:
        asked = _understood(asks, dict(request.query_params))
        content = await run_in_threadpool(answer, asked)
        attached = {"content-disposition": f'attachment; filename="{name}"'}
        return Response(content, media_type=kind, headers=attached)

    return Route(path, endpoint, methods=["GET"])


def _post(path: str, asks: type[_Q], reply: Any, answer: Callable[[_Q], Any]) -> Route:
    adapter = TypeAdapter(reply)

    async def endpoint(request: Request) -> Response:
        try:
            body = json.loads(await request.body())
            # Half of a surrogate pair is a Python string, but no text that could be written.
            json.dumps(body, ensure_ascii=False).encode()
        except (ValueError, RecursionError):
            body = None
        if not isinstance(body, dict):
            raise InputError(Problem("request", "is not a JSON object"))
        return await run_in_threadpool(_said, adapter, answer, _understood(asks, body))

    return Route(path, endpoint, methods=["POST"])


def _understood(asks: type[_Q], given: dict[str, Any]) -> _Q:
    """The request as its model; raises InputError with one sentence for what is not."""
    try:
        return asks.model_validate(given)
    except ValidationError as error:
        raise InputError(problems(error, asks, given, lambda _: ("request", None))[:1]) from None


def _said(adapter: TypeAdapter[Any], answer: Callable[[_Q], Any], asked: _Q) -> Response:
    """The answer, held to its model."""
    found = adapter.validate_python(answer(asked))
    return Response(adapter.dump_json(found, exclude_unset=True), media_type="application/json")


def _plain(asked: Any) -> Any:
    """A part of a body as plain lists and tables, without what was not given."""
    if isinstance(asked, list):
        return [_plain(one) for one in asked]
    return asked.model_dump(mode="json", exclude_unset=True)


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
