// The title block under the map: masses, balance, and where the degrees go.

import { byId, el, fixed, put, signed, svg } from "./dom";
import type { TipAnswer, Answers, Before, Numbers } from "./types";
import { around, DIRECTIONS, goes, isWide, on, rangeOf, spoken, store, tips } from "./store";

/** A difference to what it is compared with, or nothing where there is none to see. */
function change(now: number | null, then: number | null | undefined, digits: number): HTMLElement | null {
  if (now === null || then === null || then === undefined || Number((now - then).toFixed(digits)) === 0) return null;
  return el("span", { class: "diff" }, signed(now - then, digits));
}

/** What is compared with, while there is something to compare. */
const against = (): Before | null => store.bench.before;

function numbers(): HTMLElement {
  const leftPercent = (n: Numbers): number => (100 * (n.corner_g[0] + n.corner_g[2])) / n.mass_g;
  const cell = (name: string, of: (n: Numbers) => number, digits: number, unit: string): HTMLElement => {
    const [now, then] = [of(store.answers.numbers), against() ? of(against()!.numbers) : undefined];
    return el("div", {}, el("dt", {}, `${name}, ${unit}`), el("dd", {}, fixed(now, digits), " ", change(now, then, digits)));
  };
  return el("dl", { class: "cells", id: "numbers" },
    cell("All up", (n) => n.mass_g, 0, "g"),
    cell("CG height", (n) => n.cg_mm[2], 1, "mm"),
    cell("On the front", (n) => n.front_percent, 1, "%"),
    cell("On the left", leftPercent, 1, "%"),
    cell("CG ahead", (n) => n.cg_mm[0], 1, "mm"),
    cell("CG left", (n) => n.cg_mm[1], 1, "mm"),
    cell("On springs", (n) => n.sprung_g, 0, "g"),
    cell("Off springs", (n) => n.unsprung_g, 0, "g"));
}

/** The steps of the budget, as the table heads them. */
const STEPS = ["squash", "along", "rise", "lean"];

/** Rigid and, as far as it is known, where it tips; in full once the four ways are. */
interface Line { name: string; short: string; rigid: number; tip: number | null; slides: boolean; way: TipAnswer | null }

function lines(a: Answers): Line[] {
  return Object.entries(DIRECTIONS).map(([name, { heading, short }], i) => {
    const at = (values: (number | null)[]): number | null => around(a.heading_deg, values, heading);
    const tip = at(tips(a));
    return { name, short, rigid: at(a.rigid_deg) ?? 0, tip, slides: goes(a, heading)?.slides ?? false, way: a.ways?.[i] ?? null };
  });
}

function bar(c: Line, then: Line | null, full: number): SVGElement {
  const x = (deg: number): number => (Math.max(0, deg) / full) * 200;
  const shapes = [...stack(c, x, 3, 9), svg("line", { x1: x(c.rigid), x2: x(c.rigid), y1: 0, y2: 15 })];
  if (then) shapes.push(svg("g", { class: "then" }, ...stack(then, x, 14, 4)));
  const words = gained(c).map((deg, i) => `${c.way?.budget_steps[i]?.name} ${signed(deg)}°`).join(", ");
  return svg("svg", { viewBox: `0 0 200 ${then ? 19 : 15}`, class: then ? "budget-bar both" : "budget-bar", preserveAspectRatio: "none", role: "img", "aria-label": words || "no budget yet" }, ...shapes);
}

/** What is kept, then the losses, one after the other. */
function stack(c: Line, x: (deg: number) => number, y: number, height: number): SVGElement[] {
  const shapes: SVGElement[] = [svg("rect", { class: "keep", x: 0, y, width: x(c.tip ?? c.rigid), height })];
  let at = c.rigid;
  gained(c).forEach((deg, i) => {
    const [a, b] = [x(at + Math.min(0, deg)), x(at + Math.max(0, deg))];
    shapes.push(svg("rect", { class: `loss${i}`, x: a, y, width: Math.max(0, b - a), height }));
    at += deg;
  });
  return shapes;
}

/** What each step gains, without the remainder, which only a trial leaves. */
function gained(c: Line): number[] {
  return (c.way?.budget_steps ?? []).slice(0, STEPS.length).map((s) => s.gained_deg ?? 0);
}

/** The range of the tip, and on being pointed at what is behind it. */
function rangeCell(c: Line): HTMLElement {
  const range = rangeOf(c.way);
  const by = c.way?.uncertain_by.slice(0, 4).map((u) => `${u.name} ±${fixed(u.pm_deg, 2)}°`).join(", ");
  const words = !range ? "…" : isWide(range) ? `likely ${fixed(c.tip)}` : `${fixed(range[0])} to ${fixed(range[1])}`;
  return el("td", { class: "n range-cell", title: by ? `95 %. Behind it: ${by}` : undefined }, words);
}

/** One number where it is known well, else the range itself. */
function tipCell(c: Line, then: Line | null): HTMLElement {
  const words = spoken(c.tip, rangeOf(c.way));
  return el("td", { class: "n" }, el("b", {}, c.slides ? `[${words}]` : words), " ", change(c.tip, then?.tip, 1));
}

function budget(): HTMLElement {
  const all = lines(store.answers);
  const before = against();
  const then = before ? lines(before) : [];
  const full = Math.max(...[...all, ...then].map((c) => Math.max(c.rigid, c.tip ?? 0))) * 1.02;
  const cells = (c: Line): HTMLElement[] => STEPS.map((_, i) => el("td", { class: "n" }, c.way ? signed(gained(c)[i] ?? 0) : "…"));
  return el("table", { id: "budget" },
    el("caption", {}, "Where the degrees go", before ? el("span", { class: "soft" }, `, thin bars: ${before.what}`) : null),
    el("thead", {}, el("tr", {}, ...["", "stiff", ...STEPS, "tips, 95 %"].map((t, i) =>
      el(t ? "th" : "td", t ? { scope: "col", class: i ? "n" : "" } : {}, t)))),
    ...all.map((c, k) => el("tbody", { "data-case": c.name },
      el("tr", {}, el("th", { scope: "row", rowspan: 2 }, c.short), el("td", { class: "n" }, fixed(c.rigid)), ...cells(c), tipCell(c, then[k] ?? null)),
      el("tr", {}, el("td", { class: "bar-cell", colspan: STEPS.length + 1 }, bar(c, then[k] ?? null, full)), rangeCell(c)))));
}

function outcome(way: TipAnswer): string {
  if (way.outcome !== "too close to call") return `${way.outcome} first`;
  return `too close to call, ${fixed(100 * way.tips_first_share, 0)} % tips`;
}

function sliding(): HTMLElement {
  const { surface, grip_range: grip, slide_deg: slide, goes_at_deg: rolls, ways } = store.answers;
  const span = (low: number, high: number, digits: number): string => (high > low ? ` (${fixed(low, digits)} to ${fixed(high, digits)})` : "");
  const all = lines(store.answers);
  const by = (c: Line): string => (c.way ? `${c.short} ${fixed(c.way.slide_deg.likely)}°${span(c.way.slide_deg.low ?? 0, c.way.slide_deg.high ?? 0, 1)}` : `${c.short} …`);
  const where = rolls === null
    ? `it slides at ${fixed(slide.likely)}°${span(slide.low, slide.high, 1)}`
    : `it slides or rolls away by heading: ${all.map(by).join(", ")}`;
  return el("p", { class: "text soft", id: "sliding" },
    `On ${surface}, grip ${fixed(grip.likely, 2)}${span(grip.low, grip.high, 2)}, ${where}. `,
    ways ? `${all.map((c) => `${c.short}: ${outcome(c.way!)}`).join("; ")}. ` : "",
    all.some((c) => c.slides) ? "In brackets: it slides first, and would tip there against a rail." : "");
}

/** On a narrow screen: the numbers that matter, always in view. */
function readout(): void {
  const a = store.answers;
  const heading = store.view.heading;
  const way = store.trying ? undefined : a.ways?.find((w) => w.heading_deg === heading);
  const [low, high] = way?.goes_at_range_deg ?? [null, null];
  const first = goes(a, heading);
  const before = against();
  const name = Object.values(DIRECTIONS).find((d) => d.heading === heading)?.short ?? `Turned ${fixed(heading, 0)}°`;
  const then = before ? goes(before, heading)?.deg : undefined;
  put(byId("readout"),
    el("span", {}, `${name}: ${first?.slides ? "slides" : "tips"} at ${spoken(first?.deg ?? null, low === null || high === null ? null : [low, high])}° `, change(first?.deg ?? null, then, 1)),
    el("span", {}, `${fixed(a.numbers.mass_g, 0)} g `, change(a.numbers.mass_g, before?.numbers.mass_g, 0)));
}

export function makeBlock(): void {
  on(["shown", "view"], () => { if (store.answers) readout(); });
  const draw = (): void => { if (store.answers) put(byId("block"), numbers(), budget(), sliding()); };
  on("shown", draw);
}
