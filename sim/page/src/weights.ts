// The notebook's first page: drawings to drag in, the picked part, and the parts list.

import { Drawing, gainAt } from "./drawing";
import { attempt, commit } from "./edits";
import { decimals, el, fixed, oneStop, put, signed } from "./dom";
import { newPart } from "./newpart";
import { oneStopGrid } from "./grid";
import { afterTheMap, DIRECTIONS, look, on, store, type Direction } from "./store";
import type { Measure, Row, Triple } from "./types";

const FAR = 10000;

export function weightsPage(leaf: HTMLElement): void {
  leaf.classList.add("weights");
  const views = el("div", { class: "views" });
  const one = el("div", { id: "picked" });
  const list = el("div", { class: "parts-holder" });
  const measures = el("div", { id: "measures", hidden: true });
  views.append(new Drawing("side").figure, new Drawing("rear").figure);
  const below = el("div", { class: "below" }, measures, list);
  const fresh = el("div", { id: "new-part", class: "below", hidden: true });
  const add = (from = ""): void => void newPart(fresh, [one, bar, below], views, from);
  const bar = listBar(measures, below, () => add());
  leaf.append(directions(), views, one, bar, below, fresh);
  const drawOne = (): void => put(one, picked(add));
  const drawList = (): void => {
    const { scrollTop } = below;
    put(list, table());
    below.scrollTop = scrollTop;
  };
  let held = "";
  // The dials of a part stay the same elements while the same part is picked and unchanged.
  const drawOneIfOther = (): void => {
    const row = store.bench.rows.find((r) => r.row === store.view.row);
    const now = JSON.stringify(row ?? null);
    if (now !== held) drawOne();
    held = now;
  };
  on(["bench", "pick"], drawOneIfOther);
  on("bench", drawList);
  on("shown", () => refreshWords());
  on("shown", afterTheMap(followTry, () => 100));
  on("bench", () => put(measures, truckMeasures()));
  drawOne();
  drawList();
  put(measures, truckMeasures());
  // Picking marks a row and leaves the table as it is: someone may be typing in it. Drawings and
  // dials stay where they are; only the list itself scrolls, where it can.
  on("pick", () => {
    for (const tr of list.querySelectorAll<HTMLElement>("tr[data-row]")) tr.classList.toggle("picked", Number(tr.dataset["row"]) === store.view.row);
    requestAnimationFrame(reveal); // once the dials above have taken their room
  });
  const reveal = (): void => {
    const row = list.querySelector<HTMLElement>("tr.picked");
    if (!row || below.scrollHeight <= below.clientHeight) return;
    const [inner, outer] = [row.getBoundingClientRect(), below.getBoundingClientRect()];
    const head = 28; // px, of the table's own head, which stays
    if (inner.top < outer.top + head) below.scrollTop -= outer.top + head - inner.top;
    else if (inner.bottom > outer.bottom) below.scrollTop += inner.bottom - outer.bottom;
  };
}

function listBar(measures: HTMLElement, below: HTMLElement, add: () => void): HTMLElement {
  const fold = el("button", { type: "button", id: "measures-fold", "aria-expanded": "false", "aria-controls": "measures" }, "Measures of the truck");
  fold.addEventListener("click", () => {
    measures.hidden = !measures.hidden;
    fold.setAttribute("aria-expanded", String(!measures.hidden));
    below.scrollTop = 0;
  });
  const bar = el("div", { class: "bar list-bar", role: "toolbar", "aria-label": "Parts and measures" },
    fold, el("button", { type: "button", id: "add-part", onclick: add }, "Add a part"));
  oneStop(bar);
  return bar;
}

/** While something is tried, list and dials show what it would be; the one in hand leads. */
function followTry(): void {
  const busy = document.activeElement;
  const show = (key: string, value: string): void => {
    const input = document.querySelector<HTMLInputElement>(`#leaf-weights [data-key="${CSS.escape(key)}"]`);
    if (!input || input === busy || input.value === value) return;
    input.value = value;
  };
  for (const row of store.rows) {
    show(`mass_g-${row.row}`, massText(row));
    row.at_mm?.forEach((v, i) => show(`at${i}-${row.row}`, String(v)));
  }
  const turn = (key: string, value: number | undefined): void => {
    const slider = document.getElementById(`dial-${key}`) as HTMLInputElement | null;
    if (!slider || slider === busy || value === undefined || Number(slider.value) === value) return;
    slider.value = String(value);
    speak(slider, value);
  };
  for (const m of store.measures) turn(m.key, m.value);
  const row = store.rows.find((r) => r.row === store.view.row);
  if (!row) return;
  turn("mass", row.mass_g);
  row.at_mm?.forEach((v, i) => turn(`at${i}`, v));
}

const massText = (row: Row): string => row.mass_g.toFixed(row.mass_g < 10 ? 2 : 1);

/** The number beside a slider, and what a screen reader says of it. */
function speak(slider: HTMLInputElement, value: number): void {
  const words = `${fixed(value, Number(slider.dataset["digits"]))} ${slider.dataset["unit"]}`;
  slider.setAttribute("aria-valuetext", words);
  const number = document.querySelector<HTMLElement>(`output[for="${CSS.escape(slider.id)}"]`);
  if (number) number.textContent = words;
}

function directions(): HTMLElement {
  const pick = (direction: Direction) => () => {
    look({ direction });
    for (const b of holder.querySelectorAll("button")) b.setAttribute("aria-pressed", String(b.dataset["direction"] === direction));
  };
  const button = (direction: Direction, words: string): HTMLElement =>
    el("button", { type: "button", "data-direction": direction, "aria-pressed": String(direction === store.view.direction), onclick: pick(direction) }, words);
  const of = el("span", {}, store.answers.gain_of === "compliant" ? "springs and tyres at work" : "if nothing gives");
  const holder = el("div", { class: "bar", role: "toolbar", "aria-label": "Where a gram helps, for which way to stand" },
    button("all", "All ways"), ...Object.entries(DIRECTIONS).map(([d, { short }]) => button(d as Direction, short)),
    el("span", { class: "gain-key" }, el("i", { class: "helps" }), "helps", el("i", { class: "hurts" }), "hurts, a step is 0.05° per 10 g,", of));
  oneStop(holder);
  on("shown", () => { of.textContent = store.answers.gain_of === "compliant" ? "springs and tyres at work" : "if nothing gives"; });
  return holder;
}

/** A slider and a number for one value, trying while it slides and putting down when let go. */
function dial(key: string, words: string, unit: string, value: number, range: [number, number, number], put_: (v: number) => { edit: Parameters<typeof attempt>[0]; what: string }): HTMLElement[] {
  const [low, high, step] = range;
  const id = `dial-${key}`;
  const digits = Math.max(decimals(step), Math.min(3, String(value).split(".")[1]?.length ?? 0), unit === "mm" || unit === "g" ? 1 : 0);
  const text = `${fixed(value, digits)} ${unit}`;
  const slider = el("input", { type: "range", id, "data-key": id, "data-digits": digits, "data-unit": unit, min: Math.min(low, value), max: Math.max(high, value), step: "any", value, "aria-valuetext": text });
  // Steps count from nought, wherever the value in the file lies between them.
  const stepped = (): number => Number((Math.round(Number(slider.value) / step) * step).toFixed(4));
  slider.addEventListener("keydown", (e) => {
    const by = { ArrowRight: step, ArrowUp: step, ArrowLeft: -step, ArrowDown: -step, PageUp: 10 * step, PageDown: -10 * step }[e.key];
    if (by === undefined) return;
    e.preventDefault();
    slider.value = String(stepped() + by);
    slider.dispatchEvent(new Event("input"));
    slider.dispatchEvent(new Event("change"));
  });
  slider.addEventListener("input", () => {
    speak(slider, stepped());
    attempt(put_(stepped()).edit);
  });
  slider.addEventListener("change", () => {
    const { edit, what } = put_(stepped());
    void commit(edit, what);
  });
  return [el("label", { for: id }, words), slider, el("output", { for: id }, text)];
}

function picked(takeOut: (from: string) => void): HTMLElement {
  const row = store.bench.rows.find((r) => r.row === store.view.row);
  if (!row) return el("p", { class: "text soft" }, "Pick a part in the list, the drawings or on the table to weigh and move it.");
  const holder = el("div", { class: "one" }, el("h3", {}, row.name));
  if (row.here) {
    const top = Math.max(60, Math.ceil((row.mass_g * 2) / 50) * 50);
    holder.append(...dial("mass", "Mass", "g", row.mass_g, [Math.min(1, row.mass_g), top, row.mass_g < 20 ? 0.1 : 1], (v) => ({
      edit: [{ do: "set", part: row.name, key: "mass_g", value: v }], what: `mass of ${row.name} ${fixed(v)} g` })));
    if (row.at_mm) ["Ahead", "To the left", "Up"].forEach((words, i) => {
      const at = row.at_mm!;
      holder.append(...dial(`at${i}`, words, "mm", at[i]!, [at[i]! - 60, at[i]! + 60, 0.5], (v) => ({
        edit: [{ do: "set", part: row.name, key: `at_mm.${"xyz"[i]}`, value: v }], what: `moved ${row.name}` })));
    });
  }
  const words = el("p", { class: "gain-words about", id: "gain-words" });
  holder.append(words);
  if (row.here && row.at_mm && row.count === 1 && !row.mirror) {
    holder.append(el("button", { type: "button", class: "about", id: "take-out", title: "A part that was weighed on its own since: mass and CG of the whole stay as they are", onclick: () => takeOut(row.name) }, "Take a part out of it…"));
  }
  if (!row.here) holder.append(el("p", { class: "about" }, "This part stands in an included file; edit it there."));
  queueMicrotask(refreshWords);
  return holder;
}

/** What ten grams more of the picked part do, each way it can stand. */
function refreshWords(): void {
  const words = document.getElementById("gain-words");
  const pieces = store.scene.parts.filter((p) => p.row === store.view.row);
  if (!words || pieces.length === 0) return;
  const mean = [0, 1, 2].map((i) => pieces.reduce((sum, p) => sum + p.cg_mm[i]!, 0) / pieces.length) as Triple;
  put(words, "10 g more here:", ...Object.entries(DIRECTIONS).map(([d, { short }]) =>
    el("span", {}, `${short} `, el("b", {}, `${signed(gainAt(d as Direction, mean, pieces[0]!.carrier), 2)}°`))));
}

/** The list is one tab stop: up and down go through its rows, left and right through a row, as
 * long as nothing is being typed. */
function table(): HTMLElement {
  const head = ["Part", "Mass, g", "Ahead", "Left", "Up", "Rides on", "", ""];
  const table = el("table", { class: "parts", id: "parts" },
    el("caption", { class: "visually-hidden" }, "Parts of the truck; places in mm from where the part's carrier counts. Arrow keys go through the list."),
    el("thead", {}, el("tr", {}, ...head.map((h, i) => el(h ? "th" : "td", h ? { scope: "col", class: i > 0 && i < 5 ? "n" : "" } : {}, h)))),
    el("tbody", {}, ...store.bench.rows.map(line)));
  oneStopGrid(table, "tr", listStop);
  return table;
}

/** The cell of the list that Tab comes back to. */
const listStop = { key: "" };

function line(row: Row): HTMLElement {
  const pick = (): void => look({ row: row.row });
  const text = (key: string, label: string, value: string, type: string, make: (v: string) => unknown, extra = {}): HTMLInputElement => {
    const input = el("input", { type, value, "aria-label": `${label} of ${row.name}`, "data-key": `${key}-${row.row}`, disabled: !row.here, onfocus: pick, ...extra });
    input.addEventListener("change", () => {
      if (!input.checkValidity()) return input.reportValidity();
      void commit([{ do: "set", part: row.name, key: key.startsWith("at") ? `at_mm.${"xyz"[Number(key[2])]}` : key, value: make(input.value) }], `${label.toLowerCase()} of ${row.name}`)
        .then((taken) => { if (!taken) input.setAttribute("aria-invalid", "true"); });
      return true;
    });
    return input;
  };
  const place = (i: number, label: string): HTMLElement => el("td", { class: "n" }, row.at_mm
    ? text(`at${i}`, label, String(row.at_mm[i]), "number", Number, { step: "any", min: -FAR, max: FAR, required: true }) : "–");
  const carrier = el("select", { "aria-label": `What ${row.name} rides on`, "data-key": `on-${row.row}`, disabled: !row.here || row.at_mm === null, onfocus: pick },
    ...store.bench.carriers.filter((c) => (row.at_mm === null) === c.endsWith("link")).map((c) => el("option", { value: c, selected: c === row.on }, c)));
  carrier.addEventListener("change", () => void commit([{ do: "set", part: row.name, key: "on", value: carrier.value }], `${row.name} rides on ${carrier.value}`));
  const remove = el("button", { type: "button", "aria-label": `Remove ${row.name}`, "data-key": `remove-${row.row}`, disabled: !row.here, title: "Remove",
    onclick: () => void commit([{ do: "remove", part: row.name }], `removed ${row.name}`) }, "✕");
  return el("tr", { class: `${row.row === store.view.row ? "picked" : ""}${row.weighed ? "" : " computed"}`, "data-row": row.row },
    el("td", {}, text("name", "Name", row.name, "text", (v) => v, { required: true, maxlength: 60 })),
    el("td", { class: "n" }, text("mass_g", "Mass", massText(row), "number", Number, { step: "any", min: 0.001, max: 100000, required: true, title: row.weighed ? "as weighed" : "from shape and material" })),
    place(0, "Place ahead"), place(1, "Place to the left"), place(2, "Height"),
    el("td", {}, carrier), el("td", { class: "times" }, row.pieces > 1 ? `× ${row.pieces}` : ""), el("td", {}, remove));
}

/** Dials of measures; `place` tells apart those of one measure in two places. */
export function measureDials(measures: Measure[], place = ""): HTMLElement[] {
  return measures.flatMap((m) => dial(`${place}${m.key}`, m.name, m.unit, m.value, [m.low, m.high, m.step], (v) => ({
    edit: [{ do: "measure", key: m.key, value: v }], what: `${m.name.toLowerCase()} ${fixed(v, 2)} ${m.unit}` })));
}

/** Of shocks by their ends: they stand with the links. */
const ON_SHOCKS = /(preload|shock_length|shaft_travel|limiter)_mm$/;

/** What holds the wheels, and through what. */
function stanceChoices(): HTMLElement[] {
  return store.bench.choices.flatMap((c) => {
    const id = `choice-${c.key}`;
    const select = el("select", { id, "data-key": id }, ...c.choices.map((value) => el("option", { value, selected: value === c.value }, value)));
    select.addEventListener("change", () => void commit([{ do: "measure", key: c.key, value: select.value }], `${c.name.toLowerCase()} ${select.value}`));
    return [el("label", { for: id }, c.name), select, el("span", {})];
  });
}

function truckMeasures(): HTMLElement {
  const [stands, sizes] = [store.bench.measures.filter((m) => m.key === "chassis.steer_deg"), store.bench.measures.filter((m) => m.key !== "chassis.steer_deg" && !ON_SHOCKS.test(m.key))];
  return el("div", {},
    el("div", { class: "one" }, el("h3", {}, "Measures of the truck"), ...measureDials(sizes)),
    el("div", { class: "one" }, el("h3", {}, "How it stands on a slope"), ...measureDials(stands), ...stanceChoices()));
}
