// Changing the truck: try while dragging, put down on release, and what to do when two tabs meet.

import { api, Refusal } from "./api";
import { byId, el, put, say } from "./dom";
import { on, showTry, store, takeBench, tellAll } from "./store";
import type { Bench, Edit } from "./types";

let trying: AbortController | null = null;
let waiting: Edit[] | null = null;
let settleTimer = 0;

/** How long the last tries took, ms, from the hand's move to the map being drawn. */
export const lags: number[] = [];

/** Shows what edits would do without putting them down. One question at a time; the latest wins. */
export function attempt(edits: Edit[]): void {
  waiting = edits;
  clearTimeout(restTimer);
  if (trying === null) void nextTry();
}

async function nextTry(): Promise<void> {
  while (waiting !== null) {
    const edits = waiting;
    waiting = null;
    const mine = (trying = new AbortController());
    const start = performance.now();
    try {
      const found = await api.attempt(store.bench.revision, edits);
      if (mine.signal.aborted) return;
      showTry(found.scene, found.answers);
      lags.push(performance.now() - start);
      if (lags.length > 400) lags.shift();
      clearTimeout(restTimer);
      restTimer = window.setTimeout(() => void rested(edits, mine), 250);
    } catch (e) {
      if (mine.signal.aborted) return;
      if (e instanceof Refusal) say(e.sentences.slice(0, 3).join(" "), "wrong");
      else throw e;
    }
  }
  trying = null;
}

let restTimer = 0;

/** The hand holds still: what is tried is worked out in full. */
async function rested(edits: Edit[], tried: AbortController): Promise<void> {
  if (!store.trying || trying !== null || tried.signal.aborted || waiting !== null) return;
  try {
    const found = await api.attempt(store.bench.revision, edits, true);
    if (store.trying && trying === null && waiting === null && !tried.signal.aborted) showTry(found.scene, found.answers);
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
  }
}

function stopTrying(): void {
  clearTimeout(restTimer);
  trying?.abort();
  trying = null;
  waiting = null;
}

/** Puts edits down. Gives whether the server took them. */
export async function commit(edits: Edit[], what: string): Promise<boolean> {
  stopTrying();
  return change(() => api.edit(store.bench.revision, edits, what), what, () => api.edit(store.bench.revision, edits, what));
}

let line: Promise<unknown> = Promise.resolve();

/** One change after the other, each asked on the revision the one before it left. */
export function change(question: () => Promise<Bench>, what: string, again?: () => Promise<Bench>): Promise<boolean> {
  const mine = line.then(() => changeNow(question, what, again));
  line = mine;
  return mine;
}

async function changeNow(question: () => Promise<Bench>, what: string, again?: () => Promise<Bench>): Promise<boolean> {
  try {
    takeBench(await question());
    say(what ? `${what[0]!.toUpperCase()}${what.slice(1)}.` : "");
    byId("notice").hidden = true;
    return true;
  } catch (e) {
    if (!(e instanceof Refusal)) {
      notice("The bench does not answer. Your work up to the last change is kept; start it again with crossfall bench.", []);
      return false;
    }
    if (e.status === 409 && e.where === "tab") await metAnotherTab(what, again ?? null);
    else {
      say(e.sentences.slice(0, 3).join(" "), "wrong");
      revert();
    }
    return false;
  }
}

/** Back to what the server last said. */
export function revert(): void {
  stopTrying();
  takeBench(store.bench);
}

/** Another tab changed this truck: shows its state, and offers to put the change on top. */
async function metAnotherTab(what: string, again: (() => Promise<Bench>) | null): Promise<void> {
  takeBench(await api.bench());
  const choices: [string, () => void][] = [["Leave it as the other tab has it", () => {}]];
  if (again) choices.unshift([`Do mine on top: ${what}`, () => void change(again, what)]);
  notice("This truck was changed in another tab. You see that state now; your last change was not put down.", choices);
}

export function notice(sentence: string, choices: [string, () => void][]): void {
  const box = byId("notice");
  put(box, el("p", {}, sentence), ...choices.map(([words, act]) =>
    el("button", { type: "button", onclick: () => { box.hidden = true; act(); } }, words)));
  box.hidden = false;
  box.querySelector("button")?.focus();
}

/** Works the tips out exactly once the hand rests, then all there is to say on the four ways, then
 * what a gram is worth. */
export function settleLater(): void {
  on("bench", () => {
    clearTimeout(settleTimer);
    const revision = store.bench.revision;
    settleTimer = window.setTimeout(() => void settle(revision), store.bench.answers.exact ? 400 : 120);
  });
}

async function settle(revision: number): Promise<void> {
  const surface = store.bench.answers.surface;
  try {
    for (const ask of [api.exact, api.ways, api.gains]) {
      if (ask === api.exact && store.bench.answers.exact) continue;
      const answers = await ask(revision);
      // Meanwhile there may have been another edit, or another surface: their own settling follows.
      if (store.bench.revision !== revision || store.bench.answers.surface !== surface) return;
      store.bench.answers = answers;
      if (store.trying) return;
      store.answers = answers;
      tellAll("shown");
    }
  } catch (e) {
    if (!(e instanceof Refusal) || e.status !== 409) throw e;
  }
}
