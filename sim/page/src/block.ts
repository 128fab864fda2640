// The title block under the map: masses, balance, and where the degrees go.

import { byId, el, fixed, put, signed, svg } from "./dom";
import type { TipAnswer } from "./answers";
import { around, DIRECTIONS, goes, on, store, tips } from "./store";

function cell(name: string, value: string, unit: string, wide = false): HTMLElement {
  return el("div", wide ? { class: "wide" } : {}, el("dt", {}, name), el("dd", {}, value, " ", el("small", {}, unit)));
}

function numbers(): HTMLElement {
  const n = store.answers.numbers;
  const side = n.corner_g[0] + n.corner_g[2];
  return el("dl", { class: "cells", id: "numbers" },
    cell("All up", fixed(n.mass_g, 0), "g"),
    cell("CG height", fixed(n.cg_mm[2]), "mm"),
    cell("On the front", fixed(n.front_percent), "%"),
    cell("On the left", fixed((100 * side) / n.mass_g), "%"),
    cell("CG ahead", fixed(n.cg_mm[0]), "mm"),
    cell("CG left", fixed(n.cg_mm[1]), "mm"),
    cell("On springs", fixed(n.sprung_g, 0), "g"),
    cell("Off springs", fixed(n.unsprung_g, 0), "g"));
}

/** The steps of the budget, as the table heads them. */
const STEPS = ["squash", "along", "rise", "lean"];

/** Rigid and, as far as it is known, where it tips; in full once the four ways are. */
interface Line { name: string; short: string; rigid: number; tip: number | null; slides: boolean; way: TipAnswer | null }

function lines(): Line[] {
  const a = store.answers;
  return Object.entries(DIRECTIONS).map(([name, { heading, short }], i) => {
    const at = (values: (number | null)[]): number | null => around(a.heading_deg, values, heading);
    const tip = at(tips(a));
    return { name, short, rigid: at(a.rigid_deg) ?? 0, tip, slides: goes(a, heading)?.slides ?? false, way: a.ways?.[i] ?? null };
  });
}

function bar(c: Line, full: number): SVGElement {
  const x = (deg: number): number => (Math.max(0, deg) / full) * 200;
  const shapes: SVGElement[] = [svg("rect", { class: "keep", x: 0, y: 3, width: x(c.tip ?? c.rigid), height: 9 })];
  let at = c.rigid;
  const steps = gained(c);
  steps.forEach((deg, i) => {
    const [a, b] = [x(at + Math.min(0, deg)), x(at + Math.max(0, deg))];
    shapes.push(svg("rect", { class: `loss${i}`, x: a, y: 3, width: Math.max(0, b - a), height: 9 }));
    at += deg;
  });
  shapes.push(svg("line", { x1: x(c.rigid), x2: x(c.rigid), y1: 0, y2: 15 }));
  const words = steps.map((deg, i) => `${c.way?.budget_steps[i]?.name} ${signed(deg)}°`).join(", ");
  return svg("svg", { viewBox: "0 0 200 15", class: "budget-bar", preserveAspectRatio: "none", role: "img", "aria-label": words || "no budget yet" }, ...shapes);
}

/** What each step gains, without the remainder, which only a trial leaves. */
function gained(c: Line): number[] {
  return (c.way?.budget_steps ?? []).slice(0, STEPS.length).map((s) => s.gained_deg ?? 0);
}

/** The range of the tip, and on being pointed at what is behind it. */
function rangeCell(c: Line): HTMLElement {
  const range = c.way ? (c.way.compliant_range_deg ?? c.way.rail_range_deg) : null;
  const by = c.way?.uncertain_by.slice(0, 4).map((u) => `${u.name} ±${fixed(u.pm_deg, 2)}°`).join(", ");
  return el("td", { class: "n range-cell", title: by ? `95 %. Behind it: ${by}` : undefined },
    range ? `${fixed(range[0])} to ${fixed(range[1])}` : "…");
}

function budget(): HTMLElement {
  const all = lines();
  const full = Math.max(...all.map((c) => Math.max(c.rigid, c.tip ?? 0))) * 1.02;
  const cells = (c: Line): HTMLElement[] => STEPS.map((_, i) => el("td", { class: "n" }, c.way ? signed(gained(c)[i] ?? 0) : "…"));
  return el("table", { id: "budget" },
    el("caption", {}, "Where the degrees go"),
    el("thead", {}, el("tr", {}, ...["", "stiff", ...STEPS, "tips, 95 %"].map((t, i) =>
      el("th", { scope: "col", class: i ? "n" : "" }, t)))),
    ...all.map((c) => el("tbody", { "data-case": c.name },
      el("tr", {}, el("th", { scope: "row", rowspan: 2 }, c.short), el("td", { class: "n" }, fixed(c.rigid)), ...cells(c),
        el("td", { class: "n" }, el("b", {}, c.slides ? `[${fixed(c.tip)}]` : fixed(c.tip)))),
      el("tr", {}, el("td", { class: "bar-cell", colspan: STEPS.length + 1 }, bar(c, full)), rangeCell(c)))));
}

function outcome(way: TipAnswer): string {
  if (way.outcome !== "too close to call") return `${way.outcome} first`;
  return `too close to call, ${fixed(100 * way.tips_first_share, 0)} % tips`;
}

function sliding(): HTMLElement {
  const { surface, grip_range: grip, slide_deg: slide, ways } = store.answers;
  const span = (low: number, high: number, digits: number): string => (high > low ? ` (${fixed(low, digits)} to ${fixed(high, digits)})` : "");
  const all = lines();
  return el("p", { class: "text soft", id: "sliding" },
    `On ${surface}, grip ${fixed(grip.likely, 2)}${span(grip.low, grip.high, 2)}, it slides at ${fixed(slide.likely)}°${span(slide.low, slide.high, 1)}. `,
    ways ? `${all.map((c) => `${c.short}: ${outcome(c.way!)}`).join("; ")}. ` : "",
    all.some((c) => c.slides) ? "In brackets: it slides first, and would tip there against a rail." : "");
}

export function makeBlock(): void {
  const draw = (): void => { if (store.answers) put(byId("block"), numbers(), budget(), sliding()); };
  on("shown", draw);
}
