// The title block under the map: masses, balance, and where the degrees go.

import { byId, el, fixed, put, signed, svg } from "./dom";
import { on, store } from "./store";
import type { Case } from "./types";

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

const SHORT: Record<string, string> = { climb: "Climb", left: "Left down", descent: "Descent", right: "Right down" };

function bar(c: Case, full: number): SVGElement {
  const tip = c.compliant_deg ?? c.rigid_deg;
  const x = (deg: number): number => (Math.max(0, deg) / full) * 200;
  const shapes: SVGElement[] = [svg("rect", { class: "keep", x: 0, y: 3, width: x(tip), height: 9 })];
  let at = c.rigid_deg;
  c.budget.forEach((step, i) => {
    const [a, b] = [x(at + Math.min(0, step.deg)), x(at + Math.max(0, step.deg))];
    shapes.push(svg("rect", { class: `loss${i}`, x: a, y: 3, width: Math.max(0, b - a), height: 9 }));
    at += step.deg;
  });
  shapes.push(svg("line", { x1: x(c.rigid_deg), x2: x(c.rigid_deg), y1: 0, y2: 15 }));
  const words = c.budget.map((s) => `${s.what} ${signed(s.deg)}°`).join(", ");
  return svg("svg", { viewBox: "0 0 200 15", class: "budget-bar", preserveAspectRatio: "none", role: "img", "aria-label": words || "no budget yet" }, ...shapes);
}

function budget(): HTMLElement {
  const cases = store.answers.cases;
  const full = Math.max(...cases.map((c) => Math.max(c.rigid_deg, c.compliant_deg ?? 0))) * 1.02;
  const loss = (c: Case, i: number): HTMLElement =>
    el("td", { class: "n" }, c.budget[i] ? signed(c.budget[i].deg) : "…");
  return el("table", { id: "budget" },
    el("caption", {}, "Where the degrees go"),
    el("thead", {}, el("tr", {}, ...["", "stiff", "tyres", "rise", "lean", "tips"].map((t, i) =>
      el("th", { scope: "col", class: i ? "n" : "" }, t)), el("th", { scope: "col" }, ""))),
    el("tbody", {}, ...cases.map((c) => el("tr", { "data-case": c.direction },
      el("th", { scope: "row" }, SHORT[c.direction] ?? c.name),
      el("td", { class: "n" }, fixed(c.rigid_deg)), loss(c, 0), loss(c, 1), loss(c, 2),
      el("td", { class: "n" }, el("b", {}, fixed(c.compliant_deg))),
      el("td", { class: "bar-cell" }, bar(c, full))))));
}

function sliding(): HTMLElement | null {
  const surface = store.answers.surface;
  if (!surface) return null;
  const words = store.answers.cases.map((c) =>
    `${SHORT[c.direction]}: ${c.outcome === "too close to call" ? c.outcome : `${c.outcome} first`}`);
  const s = store.answers.cases[0]?.slide_deg;
  return el("p", { class: "text soft", id: "sliding" },
    `On ${surface} it slides at ${fixed(s?.[0])}° to ${fixed(s?.[2])}°. `, words.join("; "), ".");
}

export function makeBlock(): void {
  const draw = (): void => { if (store.answers) put(byId("block"), numbers(), budget(), sliding()); };
  on("shown", draw);
}
