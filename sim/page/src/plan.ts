// The planner: the best set of changes for the money, its front, and fitting a set at a click.

import { api, Refusal } from "./api";
import { change } from "./edits";
import { el, fixed, money, oneStop, put, svg } from "./dom";
import { store } from "./store";
import { keepFresh } from "./tabs";
import type { Planned, PlannedSet } from "./types";

const FIELDS: [string, string, string][] = [
  ["budget", "At most, money", "100"], ["added_g", "At most heavier, g", ""], ["run_min", "Run time at least, min", ""], ["front_least", "On the front axle at least, %", ""], ["front_most", "On the front axle at most, %", ""], ["reach_deg", "Reach this angle, °", ""],
];

let currency = "";

export function planPage(leaf: HTMLElement): void {
  const aim = el("select", { id: "plan-aim" }, ...[["worst", "the weakest way"], ["side", "the side slope"], ["climb", "the climb"], ["descent", "the descent"]].map(([k, words]) => el("option", { value: k }, words!)));
  const inputs = FIELDS.map(([key, words, start]) => {
    const input = el("input", { id: `plan-${key}`, type: "number", step: "any", min: key === "added_g" ? undefined : 0, value: start });
    return [key, el("label", { for: `plan-${key}` }, words), input] as const;
  });
  const limits = el("select", { id: "plan-limits" }, el("option", { value: "" }, "no class"));
  let of = "";
  const fetchLimits = async (): Promise<void> => {
    if (of === store.bench.document) return;
    of = store.bench.document;
    const found = await api.changes();
    currency = found.currency;
    const label = form.querySelector("label[for='plan-budget']");
    if (label) label.textContent = `At most, ${currency || "money"}`;
    put(limits, el("option", { value: "" }, "no class"), ...found.limits.map((name) => el("option", { value: name }, name.replace(".limits.toml", ""))));
  };
  const answer = el("div", { id: "plan-answer", "aria-live": "polite" });
  const go = el("button", { type: "submit", class: "main", id: "plan-go" }, "Find the best set");
  const form = el("form", { class: "plan-form" }, el("label", { for: "plan-aim" }, "Raise"), aim, ...inputs.flatMap(([, label, input]) => [label, input]), el("label", { for: "plan-limits" }, "Within the limits of"), limits, go);
  form.addEventListener("submit", (e) => {
    e.preventDefault();
    const asked: Record<string, unknown> = { aim: aim.value };
    for (const [key, , input] of inputs) if (input.value !== "") asked[key] = Number(input.value);
    if (limits.value) asked["limits"] = limits.value;
    go.disabled = true;
    put(answer, el("p", { class: "text soft" }, "Looking through every set that may go together…"));
    api.plan(asked).then((found) => show(answer, found), (err: unknown) => {
      if (!(err instanceof Refusal)) throw err;
      put(answer, el("p", { class: "text wrong" }, err.message));
    }).finally(() => { go.disabled = false; });
  });
  leaf.append(form, answer);
  leaf.addEventListener("open", () => void fetchLimits());
  keepFresh(leaf, () => void fetchLimits());
  void fetchLimits();
}

function show(holder: HTMLElement, found: Planned): void {
  const best = found.best;
  put(holder,
    best ? el("div", {}, el("h3", {}, `Best: ${fixed(best.deg, 2)}° for ${money(best.price, currency)}`), one(best, "best")) : el("p", { class: "text" }, "No set of these changes does what is asked."),
    found.front.length > 1 ? front(found) : null,
    el("p", { class: "text soft" }, `${found.scored} sets were scored with springs and tyres${found.proven ? "; this is proven to be the best of them all" : ""}.`),
    found.runners.length ? el("h3", {}, "Next best") : null,
    ...found.runners.map((r, i) => one(r, `runner-${i}`)));
}

function one(set: PlannedSet, id: string): HTMLElement {
  return el("div", { class: "change" }, el("span", {}), el("span", {}, set.labels.join("; ") || "nothing"), el("button", { type: "button", id: `fit-${id}`, onclick: () => void fit(set) }, "Fit"),
    el("p", { class: "note" }, `${fixed(set.deg, 2)}° ± ${fixed(1.96 * set.sd_deg, 2)}${set.slides ? " against a rail: it slides first" : ""}, ${money(set.price, currency)}, ${fixed(set.added_g, 0)} g heavier${set.tied ? "; as good as the best, as far as the masses are known" : ""}`));
}

function fit(set: PlannedSet): Promise<boolean> {
  return change(() => api.fit(set.chosen), "fitted the set");
}

/** Money across, degrees up: the most degrees for every price. Each point can be fitted. */
function front(found: Planned): HTMLElement {
  const sets = found.front;
  const [w, h, m] = [420, 200, 38];
  const [p0, p1] = [0, Math.max(...sets.map((s) => s.price), 1)];
  const degs = [...sets.map((s) => s.deg), found.now.deg];
  const [d0, d1] = [Math.floor(Math.min(...degs)), Math.ceil(Math.max(...degs))];
  const x = (p: number): number => m + ((p - p0) / (p1 - p0)) * (w - m - 14);
  const y = (d: number): number => h - 28 - ((d - d0) / Math.max(1, d1 - d0)) * (h - 44);
  const marks: SVGElement[] = [];
  for (let d = d0; d <= d1; d += Math.max(1, Math.round((d1 - d0) / 5))) marks.push(svg("path", { class: "ring", d: `M${m} ${y(d)}H${w - 10}` }), svg("text", { class: "ring-name", x: m - 5, y: y(d) + 3, "text-anchor": "end" }, `${d}°`));
  for (let i = 0; i <= 4; i++) marks.push(svg("text", { class: "ring-name", x: x((p1 * i) / 4), y: h - 12, "text-anchor": "middle" }, fixed((p1 * i) / 4, 0)));
  let line = `M${x(0)} ${y(sets[0]!.deg)}`;
  sets.forEach((s, i) => { line += `${i ? `H${x(s.price)}` : ""}L${x(s.price)} ${y(s.deg)}`; });
  marks.push(svg("path", { class: "compliant", d: line }));
  for (const s of sets) {
    const words = `${money(s.price, currency)}: ${fixed(s.deg, 2)}°, ${s.labels.join("; ") || "nothing"}`;
    const point = svg("circle", { cx: x(s.price), cy: y(s.deg), r: 5, class: "front-point", tabindex: 0, role: "button", "aria-label": `Fit: ${words}` }, svg("title", {}, words));
    point.addEventListener("click", () => void fit(s));
    point.addEventListener("keydown", (e) => { if (e.key === "Enter" || e.key === " ") { e.preventDefault(); void fit(s); } });
    marks.push(point);
  }
  const drawn = svg("svg", { viewBox: `0 0 ${w} ${h}`, id: "front", role: "group", "aria-label": "Money against degrees; arrow keys go from point to point" }, ...marks);
  oneStop(drawn, ".front-point");
  return el("figure", { class: "front" }, el("figcaption", { class: "text soft" }, "The most degrees for every price; a point fits its set."), drawn);
}
