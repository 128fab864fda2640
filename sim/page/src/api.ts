// Talking to the server: one JSON question, one JSON answer, refusals as sentences.

import type { Answers, Bench, BoardCard, Bought, Candidates, Edit, Path, Planned, SweepTable, TrialState, Weighed } from "./types";

export class Refusal extends Error {
  constructor(
    readonly status: number,
    readonly sentences: string[],
    readonly where: string | null,
  ) {
    super(sentences.join(" "));
  }
}

interface Refused {
  refused: number;
  problems: string[];
  where: string | null;
}

async function answer<T>(response: Response): Promise<T> {
  if (!response.ok) throw new Refusal(response.status, [(await response.text()) || response.statusText], null);
  const body = (await response.json()) as T | Refused;
  if (typeof body === "object" && body !== null && "refused" in body) {
    throw new Refusal(body.refused, body.problems, body.where);
  }
  return body as T;
}

export async function ask<T>(path: string, signal?: AbortSignal): Promise<T> {
  return answer<T>(await fetch(path, signal ? { signal } : {}));
}

export async function tell<T>(path: string, body: unknown, signal?: AbortSignal): Promise<T> {
  const response = await fetch(path, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify(body),
    ...(signal ? { signal } : {}),
  });
  return answer<T>(response);
}

export const api = {
  bench: () => ask<Bench>("/api/bench"),
  edit: (revision: number, edits: Edit[], what: string) =>
    tell<Bench>("/api/edit", { revision, edits, what }),
  attempt: (revision: number, edits: Edit[], full = false) =>
    tell<{ answers: Answers; scene: Bench["scene"] }>("/api/try", { revision, edits, full }),
  undo: (revision: number) => tell<Bench>("/api/undo", { revision }),
  redo: (revision: number) => tell<Bench>("/api/redo", { revision }),
  save: (revision: number, name: string | null, over: boolean) =>
    tell<Bench>("/api/save", { revision, name, over }),
  discard: (revision: number) => tell<Bench>("/api/discard", { revision }),
  open: (name: string) => tell<Bench>("/api/open", { name }),
  path: (heading: number, signal?: AbortSignal) => ask<Path>(`/api/path?heading_deg=${heading}`, signal),
  changes: () => ask<Candidates>("/api/changes"),
  bought: (revision: number) => ask<Bought>(`/api/bought?revision=${revision}`),
  fit: (revision: number, chosen: Record<string, number>) => tell<Bench>("/api/fit", { revision, chosen }),
  plan: (revision: number, asked: Record<string, unknown>) => tell<Planned>("/api/plan", { revision, asked }),
  weigh: (text: string, keep: boolean) => tell<Weighed>("/api/weigh", { text, keep }),
  board: (asked?: Record<string, unknown>) => (asked ? tell<BoardCard>("/api/board", { asked }) : ask<BoardCard>("/api/board")),
  sweeps: () => ask<{ tables: string[] }>("/api/sweeps"),
  sweep: (name: string) => ask<SweepTable>(`/api/sweep?name=${encodeURIComponent(name)}`),
  place: (revision: number, values: Record<string, number>) => tell<Bench>("/api/place", { revision, values }),
  trial: () => ask<TrialState>("/api/trial"),
  runTrial: (revision: number, headings: number[], rail: boolean) =>
    tell<TrialState>("/api/trial", { revision, headings, rail }),
  stopTrial: () => tell<TrialState>("/api/trial-stop", {}),
  poses: async (file: string): Promise<ArrayBuffer> => {
    const response = await fetch(`/api/poses?file=${encodeURIComponent(file)}`);
    if (!response.ok || response.headers.get("content-type")?.includes("json")) await answer(response);
    return response.arrayBuffer();
  },
  exact: (revision: number) => ask<Answers>(`/api/exact?revision=${revision}`),
  gains: (revision: number) => ask<Answers>(`/api/gains?revision=${revision}`),
  ways: (revision: number) => ask<Answers>(`/api/ways?revision=${revision}`),
  surface: (surface: string) => tell<Bench>("/api/surface", { surface }),
};
