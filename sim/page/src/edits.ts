// Changing the truck: try while dragging, put down on release, and what to do when two tabs meet.

import { api, Gone, Refusal } from "./api";
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
    // A try is asked of the state that a change on its way leads to.
    if (changing()) await line;
    if (mine.signal.aborted) return;
    const start = performance.now();
    try {
      const found = await api.attempt(edits);
      if (mine.signal.aborted) return;
      showTry(found);
      lags.push(performance.now() - start);
      if (lags.length > 400) lags.shift();
      clearTimeout(restTimer);
      restTimer = window.setTimeout(() => void rested(edits, mine), 250);
    } catch (e) {
      if (mine.signal.aborted) return;
      if (!(e instanceof Refusal)) throw e;
      if (e instanceof Gone) return revert();
      if (e.status === 409) {
        trying = null;
        waiting = null;
        return void metAnotherTab(e, "what you were trying", null);
      }
      say(e.sentences.slice(0, 3).join(" "), "wrong");
    }
  }
  trying = null;
}

let restTimer = 0;

/** The hand holds still: what is tried is worked out in full. */
async function rested(edits: Edit[], tried: AbortController): Promise<void> {
  if (!store.trying || trying !== null || tried.signal.aborted || waiting !== null) return;
  try {
    const found = await api.attempt(edits, true);
    if (store.trying && trying === null && waiting === null && !tried.signal.aborted) showTry(found);
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
  return change(() => api.edit(edits, what), what, () => api.edit(edits, what));
}

let line: Promise<unknown> = Promise.resolve();
let queued = 0;
/** Counts the times that the page had to take another state than its own changes lead to. */
let turns = 0;

/** Whether a change is on its way. */
export const changing = (): boolean => queued > 0;

/** One change after the other, each asked on the revision the one before it left. A change that
 * was meant for a state the page had to give up meanwhile is not asked at all. */
export function change(question: () => Promise<Bench>, what: string, again?: () => Promise<Bench>): Promise<boolean> {
  const meant = turns;
  return inTurn(async () => (turns === meant ? changeNow(question, what, again) : false));
}

/** Work that changes what is on the bench, once all before it is done. */
export function inTurn<T>(work: () => Promise<T>): Promise<T> {
  queued += 1;
  const mine = line.then(work).finally(() => { queued -= 1; });
  line = mine.catch(() => undefined);
  return mine;
}

/** What was on its way when the server was found to be gone, in words; "" where nothing was. */
let unsure = "";
export function takeUnsure(): string {
  const words = unsure;
  unsure = "";
  return words;
}

async function changeNow(question: () => Promise<Bench>, what: string, again?: () => Promise<Bench>): Promise<boolean> {
  try {
    takeBench(await question());
    say(what ? `${what[0]!.toUpperCase()}${what.slice(1)}.` : "");
    byId("notice").hidden = true;
    return true;
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    if (e instanceof Gone) {
      turns += 1;
      unsure = what;
      revert();
    }
    else if (e.status === 409 && e.where !== "disk") await metAnotherTab(e, what, again ?? null);
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

/** Another tab was quicker: shows its state, and offers to put the change on top of it. */
async function metAnotherTab(met: Refusal, what: string, again: (() => Promise<Bench>) | null): Promise<void> {
  turns += 1;
  const mine = store.bench;
  try {
    takeBench(await api.bench());
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    return;
  }
  const there = store.bench;
  const choices: [string, () => void][] = [["Leave it as it is", () => {}]];
  if (there.file !== mine.file) {
    choices.unshift([`Put ${mine.file} back on the bench`, () => void change(() => api.open(mine.file), `on the bench: ${mine.file}`)]);
    notice(`${there.file} is on the bench now, put there from another tab. Your last change was meant for ${mine.file} and was not put down.`, choices);
    return;
  }
  if (again) choices.unshift([`Do mine on top: ${what}`, () => void change(() => (store.bench.file === mine.file ? again() : Promise.reject(met)), what)]);
  notice("This truck was changed in another tab or on disk. You see that state now; your last change was not put down.", choices);
}

export function notice(sentence: string, choices: [string, () => void][]): void {
  const box = byId("notice");
  put(box, el("p", {}, sentence), ...choices.map(([words, act]) =>
    el("button", { type: "button", onclick: () => { box.hidden = true; act(); } }, words)));
  box.hidden = false;
  box.querySelector("button")?.focus();
}

/** Works the tips out exactly once the hand rests, then all there is to say on the four ways, the
 * same of what it is compared with, and what a gram is worth. */
export function settleLater(): void {
  on("bench", () => {
    clearTimeout(settleTimer);
    const bench = store.bench;
    settleTimer = window.setTimeout(() => void settle(bench), bench.answers.exact ? 400 : 120);
  });
}

async function settle(bench: Bench): Promise<void> {
  // Meanwhile there may have been another edit, or another surface: their own settling follows.
  const over = (): boolean => store.bench !== bench;
  const show = (): void => {
    if (store.trying) return;
    store.answers = bench.answers;
    tellAll("shown");
  };
  try {
    for (const ask of [api.exact, api.ways]) {
      if (over()) return;
      if (ask === api.exact && bench.answers.exact) continue;
      const answers = await ask();
      if (over()) return;
      bench.answers = answers;
      show();
    }
    if (bench.before && !(bench.before.exact && bench.before.ways)) {
      const before = await api.reference();
      if (over()) return;
      bench.before = before;
      show();
    }
    const answers = await api.gains();
    if (over()) return;
    bench.answers = answers;
    show();
  } catch (e) {
    if (!(e instanceof Refusal) || (e.status !== 409 && e.status !== 0)) throw e;
  }
}
