// Talking to the server: one JSON question, one JSON answer, refusals as sentences. Every question
// about the truck names the document and the revision that this page has in view.

import { store } from "./store";
import type { SuspensionMoves, SuspensionTold, CourseAsked, CourseStanding, CourseState, KeptCourses, Frozen, Agreement, Answers, Before, Begun, Bench, BoardCard, Bought, Candidates, Edit, PartForm, Path, Planned, Pulse, Readings, ScaleForm, Steps, SweepState, SweepTable, TrialState, Tried, Weighed, Wizard } from "./types";

export class Refusal extends Error {
  constructor(
    readonly status: number,
    readonly sentences: string[],
    readonly where: string | null,
  ) {
    super(sentences.join(" "));
  }
}

/** The server does not answer at all. */
export class Gone extends Refusal {
  constructor() {
    super(0, ["The bench does not answer."], "gone");
  }
}

/** The answers that a copy to look at carries with it; null on a bench. */
export const frozen: Frozen | null = ((): Frozen | null => {
  const told = document.getElementById("frozen");
  return told?.textContent ? (JSON.parse(told.textContent) as Frozen) : null;
})();
/** How finely the table turns, deg. */
export const turnStep = frozen ? frozen.turn_deg : 5;

function known(path: string, query: Record<string, unknown>): unknown {
  const { bench, paths } = frozen!;
  if (path === "/api/bench") return bench;
  if (path === "/api/path") return paths[(Math.round(Number(query["heading_deg"]) / turnStep) * turnStep) % 360];
  if (path === "/api/reference") return bench.before;
  if (/exact|ways|gains/.test(path)) return bench.answers;
  return null;
}

/** Open questions end when the server is found to be gone. */
let open = new AbortController();
const gone = new EventTarget();

export function hangUp(): void {
  open.abort(new Gone());
  open = new AbortController();
  gone.dispatchEvent(new Event("gone"));
}

export function onGone(listener: () => void): void {
  gone.addEventListener("gone", listener);
}

interface Refused {
  refused: number;
  problems: string[];
  where: string | null;
}

async function call(path: string, options: RequestInit = {}, signal?: AbortSignal): Promise<Response> {
  if (frozen) throw new Refusal(403, ["This is a copy to look at, without a bench behind it."], "copy");
  const mine = open;
  let response: Response;
  try {
    response = await fetch(path, { ...options, signal: signal ? AbortSignal.any([signal, mine.signal]) : mine.signal });
  } catch (e) {
    if (signal?.aborted && !mine.signal.aborted && !(signal.reason instanceof DOMException && signal.reason.name === "TimeoutError")) throw e;
    if (!mine.signal.aborted) hangUp();
    throw new Gone();
  }
  if (!response.ok) throw new Refusal(response.status, [(await response.text()) || response.statusText], null);
  return response;
}

async function answer<T>(response: Response): Promise<T> {
  let body: T | Refused;
  try {
    body = (await response.json()) as T | Refused;
  } catch {
    throw new Gone(); // cut off in the middle of its answer
  }
  if (typeof body === "object" && body !== null && "refused" in body) {
    throw new Refusal(body.refused, body.problems, body.where);
  }
  return body as T;
}

async function ask<T>(path: string, query: Record<string, unknown> = {}, signal?: AbortSignal): Promise<T> {
  if (frozen) {
    const found = known(path, query);
    if (found === null || found === undefined) throw new Refusal(409, ["This is a copy to look at, without a bench behind it."], "copy");
    return found as T;
  }
  return answer<T>(await call(address(path, query), {}, signal));
}

function address(path: string, query: Record<string, unknown>): string {
  const words = new URLSearchParams(Object.entries(query).map(([k, v]) => [k, String(v)])).toString();
  return words ? `${path}?${words}` : path;
}

/** What is no JSON; JSON in its place is a refusal, and thrown. */
async function file(path: string, query: Record<string, unknown>): Promise<Response> {
  const response = await call(address(path, query));
  if (response.headers.get("content-type")?.includes("json")) await answer(response);
  return response;
}

async function tell<T>(path: string, body: unknown): Promise<T> {
  return answer<T>(await call(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) }));
}

/** What this page has in view. */
export const inView = (): { document: string; revision: number } => ({ document: store.bench.document, revision: store.bench.revision });
const about = <T>(path: string, query: Record<string, unknown> = {}, signal?: AbortSignal): Promise<T> => ask<T>(path, { ...inView(), ...query }, signal);
const act = <T>(path: string, body: Record<string, unknown> = {}): Promise<T> => tell<T>(path, { ...inView(), ...body });

export const api = {
  bench: () => ask<Bench>("/api/bench"),
  pulse: () => ask<Pulse>("/api/pulse", {}, AbortSignal.timeout(15_000)),
  edit: (edits: Edit[], what: string) => act<Bench>("/api/edit", { edits, what }),
  attempt: (edits: Edit[], full = false) => act<Tried>("/api/try", { edits, full }),
  undo: () => act<Bench>("/api/undo"),
  redo: () => act<Bench>("/api/redo"),
  history: () => about<Steps>("/api/history"),
  go: (to: number) => act<Bench>("/api/go", { to }),
  nameStep: (step: number, name: string) => act<Steps>("/api/name-step", { step, name }),
  pin: (key: string) => act<Bench>("/api/pin", { key }),
  reference: () => about<Before | null>("/api/reference"),
  save: (name: string | null, over: boolean) => act<Bench>("/api/save", { name, over }),
  discard: () => act<Bench>("/api/discard"),
  open: (name: string) => tell<Bench>("/api/open", { name }),
  path: (heading: number, signal?: AbortSignal) => about<Path>("/api/path", { heading_deg: heading }, signal),
  partForm: () => about<PartForm>("/api/part-form"),
  changes: () => about<Candidates>("/api/changes"),
  editChanges: (seen: string, asked: Record<string, unknown>) => act<Candidates>("/api/edit-changes", { seen, asked }),
  keepEdits: (seen: string, asked: Record<string, unknown>) => act<Bench>("/api/keep-edits", { seen, asked }),
  bought: () => about<Bought>("/api/bought"),
  fit: (chosen: Record<string, number>) => act<Bench>("/api/fit", { chosen }),
  plan: (asked: Record<string, unknown>) => act<Planned>("/api/plan", { asked }),
  readings: () => about<Readings>("/api/readings"),
  weigh: (form: ScaleForm, keep: boolean) => act<Weighed>("/api/weigh", { form, keep }),
  board: (asked?: Record<string, unknown>) => (asked ? act<BoardCard>("/api/board", { asked }) : about<BoardCard>("/api/board")),
  wizard: () => about<Wizard>("/api/wizard"),
  reading: (key: string, typed: string) => tell<{ value: unknown }>("/api/reading", { key, typed }),
  begin: (name: string, typed: Record<string, string>, again: boolean) => tell<{ begun: Begun; bench: Bench }>("/api/begin", { name, typed, again }),
  agreement: (put: boolean) => act<{ found: Agreement; bench: Bench | null }>("/api/agreement", { put }),
  sheet: async (): Promise<Blob> => (await file("/api/sheet", inView())).blob(),
  share: async (): Promise<Blob> => (await file("/api/share", inView())).blob(),
  sweeps: () => ask<{ tables: string[] }>("/api/sweeps"),
  sweep: (name: string) => ask<SweepTable>("/api/sweep", { name }),
  runSweep: (asked: Record<string, unknown>) => act<SweepState>("/api/sweep-run", { asked }),
  sweepState: () => ask<SweepState>("/api/sweep-state"),
  stopSweep: () => tell<SweepState>("/api/sweep-stop", {}),
  place: (values: Record<string, number>) => act<Bench>("/api/place", { values }),
  trial: () => ask<TrialState>("/api/trial"),
  runTrial: (headings: number[], rail: boolean) => act<TrialState>("/api/trial", { headings, rail }),
  stopTrial: () => tell<TrialState>("/api/trial-stop", {}),
  poses: async (name: string): Promise<ArrayBuffer> => (await file("/api/poses", { ...inView(), file: name })).arrayBuffer(),
  suspension: () => about<SuspensionTold>("/api/suspension"),
  suspensionMoves: () => about<SuspensionMoves>("/api/suspension-moves"),
  courseStanding: (course: CourseAsked) => act<CourseStanding>("/api/course-standing", { course }),
  driveCourse: (course: CourseAsked) => act<CourseState>("/api/course", { course }),
  courseState: () => ask<CourseState>("/api/course"),
  courses: () => ask<KeptCourses>("/api/courses"),
  keepCourse: (name: string, course: CourseAsked, over: boolean) => tell<KeptCourses>("/api/keep-course", { name, course, over }),
  keepStill: (picture: string, words: string[]) => act<{ bytes: number }>("/api/course-still", { picture, words }),
  stopCourse: () => tell<CourseState>("/api/course-stop", {}),
  coursePoses: async (name: string): Promise<ArrayBuffer> => (await file("/api/course-poses", { file: name })).arrayBuffer(),
  exact: () => about<Answers>("/api/exact"),
  gains: () => about<Answers>("/api/gains"),
  ways: () => about<Answers>("/api/ways"),
  surface: (surface: string) => act<Bench>("/api/surface", { surface }),
};
