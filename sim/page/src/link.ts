// Keeping in step: with other tabs, with the file on disk, and with a server that may be gone.

import { api, Gone, onGone, Refusal } from "./api";
import { byId, el, say } from "./dom";
import { change, changing, notice, revert, takeUnsure } from "./edits";
import { store, takeBench } from "./store";

const EVERY = 1500; // ms between two looks
let lost = false;
let told = "";

export function keepInStep(): void {
  onGone(() => {
    if (lost) return;
    lost = true;
    document.documentElement.dataset["lost"] = "";
    revert();
    const box = byId("notice");
    box.replaceChildren(el("p", {}, "The bench does not answer. What you see is the last state it took; your work up to there is kept. Start it again with crossfall bench: this page finds it by itself."));
    box.hidden = false;
  });
  window.setTimeout(() => void look(), EVERY);
}

async function look(): Promise<void> {
  try {
    await compare();
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    if (!(e instanceof Gone)) say(e.message, "wrong");
  } finally {
    window.setTimeout(() => void look(), EVERY);
  }
}

async function compare(): Promise<void> {
  const mine = store.bench;
  const pulse = await api.pulse();
  if (lost) return back();
  // A hand that drags, or a change on its way or just done, finds out by itself.
  if (store.trying || changing() || store.bench !== mine) return;
  if (pulse.document !== mine.document || pulse.revision !== mine.revision) {
    const bench = await api.bench();
    if (store.trying || changing() || store.bench !== mine) return;
    takeBench(bench);
    say(bench.document !== mine.document ? `${bench.file} was put on the bench by another tab.` : `Changed elsewhere: ${bench.undo ?? "an older state"}.`);
  } else if (pulse.unsaved !== mine.unsaved || pulse.surface !== mine.answers.surface || pulse.reference !== (mine.reference ?? "auto")) {
    const bench = await api.bench();
    if (!store.trying && !changing() && store.bench === mine) takeBench(bench);
  }
  if (pulse.disk !== told) {
    told = pulse.disk;
    if (told) notice(`${told}.`, [
      ["Take the file as it is on disk", () => void change(() => api.discard(), "taken from disk")],
      ["Keep what is here", () => {}],
    ]);
  }
}

async function back(): Promise<void> {
  const mine = store.bench;
  const bench = await api.bench();
  lost = false;
  delete document.documentElement.dataset["lost"];
  byId("notice").hidden = true;
  takeBench(bench);
  const unsure = takeUnsure();
  say(bench.document === mine.document && bench.revision === mine.revision
    ? `The bench is back, with everything as it was${unsure ? `; not put down: ${unsure}` : ""}.`
    : `The bench is back, with ${bench.file} as it is there now.`);
}
