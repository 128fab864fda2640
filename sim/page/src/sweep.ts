// Running a sweep from the page: two keys and their ranges, progress, Stop, and the map when done.

import { api, Refusal } from "./api";
import { el, fixed, put, say } from "./dom";
import { DIRECTIONS, on, store } from "./store";
import { inSight } from "./tabs";
import type { SweepState } from "./types";

/** What of a part may be varied: the end of its key, words, and how far around its value. */
const OF_PART: [string, string, number][] = [["mass_g", "mass of a part, g", 0], ["at_mm.x", "a part's place ahead, mm", 30], ["at_mm.y", "a part's place to the left, mm", 20], ["at_mm.z", "a part's place up, mm", 25]];
const CONDITIONS: Record<string, [string, number, number, number]> = { heading_deg: ["way it stands, turned by °", 0, 180, 13], grip: ["grip of the ground", 0.5, 1.2, 8] };

interface Axis {
  node: HTMLElement;
  asked: () => Record<string, unknown>;
  key: () => string;
}

export function makeSweep(holder: HTMLElement, finished: (table: string) => void): void {
  const axes = [axis("x", "Across", "both.track_mm"), axis("y", "Up", "chassis.raise_mm")];
  const heading = el("select", { id: "sweep-heading", "aria-label": "Which way to stand" }, ...Object.values(DIRECTIONS).map((d) => el("option", { value: d.heading, selected: d.heading === 90 }, d.name)), el("option", { value: "all" }, "all four ways"));
  const method = el("select", { id: "sweep-method", "aria-label": "By which method" }, el("option", { value: "compliant" }, "springs and tyres"), el("option", { value: "closed form" }, "as if nothing gave, at once"));
  const count = el("span", { class: "soft", id: "sweep-count" });
  const run = el("button", { type: "submit", class: "main", id: "sweep-run" }, "Run");
  const stop = el("button", { type: "button", id: "sweep-stop", hidden: true }, "Stop");
  const bar = el("progress", { id: "sweep-bar", max: 1, value: 0, "aria-label": "How far the sweep is", hidden: true });
  const words = el("p", { class: "text", id: "sweep-words", role: "status", hidden: true });
  const form = el("form", { class: "new-part sweep-form", "aria-label": "A new sweep" }, el("h3", {}, "A new sweep"), ...axes.map((a) => a.node),
    el("div", { class: "new-line" }, el("span", { class: "new-label" }, "Standing"), heading), el("div", { class: "new-line" }, el("span", { class: "new-label" }, "By"), method),
    el("div", { class: "bar" }, run, stop, count), bar, words);
  holder.append(form);

  const trials = (): number => axes.reduce((n, a) => n * Number(a.asked()["steps"]), 1) * (heading.disabled || heading.value !== "all" ? 1 : 4);
  const tell = (): void => {
    heading.disabled = axes.some((a) => a.key() === "heading_deg");
    count.textContent = `${trials()} trucks to answer`;
  };
  form.addEventListener("input", tell);
  form.addEventListener("change", tell);
  on("bench", tell);
  let watched = "";
  const show = (now: SweepState): void => {
    const busy = now.state === "running" || now.state === "stopping";
    run.disabled = busy;
    stop.hidden = !busy;
    stop.disabled = now.state === "stopping";
    bar.hidden = !busy;
    bar.max = Math.max(1, now.total);
    bar.value = now.done;
    words.hidden = now.state === "none";
    words.classList.toggle("wrong", now.state === "failed");
    const left = now.left_s === null || now.left_s < 1 ? "" : `, about ${now.left_s < 90 ? `${fixed(now.left_s, 0)} s` : `${fixed(now.left_s / 60, 0)} min`} left`;
    const said = { none: "", running: now.done ? `${now.done} of ${now.total}${left}.` : "Starting…", stopping: "Stopping; what is done is kept.", stopped: `Stopped at ${now.done} of ${now.total}; what is done is in the map.`, done: `${now.total} done; the map is below.`, failed: `It failed: ${now.words}` }[now.state];
    if (words.textContent !== said) words.textContent = said;
    if (!busy && watched) {
      watched = "";
      if (now.table) finished(now.table);
      if (now.state === "done") say("The sweep is done.");
    }
  };
  let timer = 0;
  const watch = async (): Promise<void> => {
    clearTimeout(timer);
    try {
      const now = await api.sweepState();
      if (now.state === "running" || now.state === "stopping") watched = "yes";
      show(now);
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
    }
    if (watched) timer = window.setTimeout(() => void watch(), inSight(holder) ? 500 : 3000);
  };
  form.addEventListener("submit", (e) => {
    e.preventDefault();
    const [x, y] = axes.map((a) => a.key());
    if (x === y) return say("The two are the same: vary two different things.", "wrong");
    const headings = heading.value === "all" ? Object.values(DIRECTIONS).map((d) => d.heading) : [Number(heading.value)];
    run.disabled = true;
    api.runSweep({ axes: axes.map((a) => a.asked()), headings, method: method.value }).then((now) => {
      watched = "yes";
      show(now);
      void watch();
    }, (err: unknown) => {
      run.disabled = false;
      if (!(err instanceof Refusal)) throw err;
      say(err.sentences.slice(0, 2).join(" "), "wrong");
    });
  });
  stop.addEventListener("click", () => void api.stopSweep().then(show));
  tell();
  void watch(); // one may be going on since before this page was opened
}

/** One thing to vary, with its range; the range begins around what the truck has. */
function axis(id: string, label: string, start: string): Axis {
  const choices = (): HTMLElement[] => [
    el("optgroup", { label: "The truck" }, el("option", { value: "both.track_mm" }, "both tracks, mm"), ...store.bench.measures.map((m) => el("option", { value: m.key }, `${m.name.toLowerCase()}, ${m.unit}`))),
    el("optgroup", { label: "Its parts" }, ...OF_PART.map(([k, words]) => el("option", { value: `part.${k}` }, words))),
    el("optgroup", { label: "The conditions" }, ...Object.entries(CONDITIONS).map(([k, [words]]) => el("option", { value: k }, words)))];
  const what = el("select", { id: `sweep-${id}`, "aria-label": `${label}: what to vary` }, ...choices());
  what.value = start;
  const part = el("select", { id: `sweep-${id}-part`, "aria-label": `${label}: of which part`, hidden: true });
  const number = (end: string, words: string, more: Record<string, unknown> = {}): HTMLInputElement => el("input", { id: `sweep-${id}-${end}`, type: "number", step: "any", required: true, "aria-label": `${label}: ${words}`, ...more });
  const [first, last, steps] = [number("first", "from"), number("last", "to"), number("steps", "in how many steps", { min: 2, max: 500, step: 1, value: 11 })];
  const ofPart = (): boolean => what.value.startsWith("part.");
  const key = (): string => (ofPart() ? `part.${part.value}.${what.value.slice(5)}` : what.value);
  const range = (): [number, number, number] => {
    if (what.value in CONDITIONS) return CONDITIONS[what.value]!.slice(1) as [number, number, number];
    if (ofPart()) {
      const row = store.bench.rows.find((r) => r.name === part.value);
      const [end, , reach] = OF_PART.find(([k]) => `part.${k}` === what.value)!;
      if (!row) return [0, 1, 11];
      if (end === "mass_g") return [Math.round(row.mass_g / 2), Math.round(row.mass_g * 1.5), 11];
      const at = row.at_mm?.["xyz".indexOf(end.slice(-1))] ?? 0;
      return [at - reach, at + reach, 11];
    }
    const m = store.bench.measures.find((one) => one.key === (what.value === "both.track_mm" ? "front.track_mm" : what.value));
    if (!m) return [0, 1, 11];
    const reach = Math.min((m.high - m.low) / 4, 20);
    const tidy = (v: number): number => Number((Math.round(Math.min(m.high, Math.max(m.low, v)) / m.step) * m.step).toFixed(3));
    return [tidy(m.value - reach), tidy(m.value + reach), 11];
  };
  const fill = (): void => {
    part.hidden = !ofPart();
    if (!part.hidden) {
      const was = part.value || store.bench.rows.find((r) => r.row === store.view.row)?.name;
      const mass = what.value === "part.mass_g";
      put(part, ...store.bench.rows.filter((r) => mass || r.at_mm).map((r) => el("option", { value: r.name, selected: r.name === was }, r.name)));
    }
    const [low, high, count] = range();
    [first.value, last.value, steps.value] = [String(low), String(high), String(count)];
  };
  what.addEventListener("change", fill);
  part.addEventListener("change", fill);
  let of = "";
  on("bench", () => {
    if (of === store.bench.file) return;
    of = store.bench.file;
    const was = what.value;
    put(what, ...choices());
    what.value = was;
    if (!what.value) what.value = start;
    fill();
  });
  of = store.bench.file;
  fill();
  const node = el("div", { class: "new-line" }, el("span", { class: "new-label" }, label), what, part,
    el("span", { class: "sweep-range" }, el("span", { class: "soft" }, "from"), first, el("span", { class: "soft" }, "to"), last, el("span", { class: "soft" }, "in"), steps, el("span", { class: "soft" }, "steps")));
  return { node, key, asked: () => ({ key: key(), first: Number(first.value), last: Number(last.value), steps: Number(steps.value) }) };
}
