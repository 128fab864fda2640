// Finished sweeps as maps: two columns across and up, one as colour; a point becomes the truck.

import { api, Refusal } from "./api";
import { change } from "./edits";
import { makeSweep } from "./sweep";
import { el, fixed, oneStop, put, say, svg } from "./dom";
import type { SweepTable } from "./types";

export function mapsPage(leaf: HTMLElement): void {
  const holder = el("div", { id: "map-holder" });
  const making = el("div", {});
  const choice = el("select", { id: "sweep-choice", class: "grow", "aria-label": "Finished sweep" });
  const open = async (): Promise<void> => {
    try {
      put(holder, chart(await api.sweep(choice.value)));
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      put(holder, el("p", { class: "text wrong" }, e.message));
    }
  };
  const bar = el("div", { class: "bar", hidden: true }, el("label", { for: "sweep-choice" }, "Finished"), choice, el("button", { type: "button", id: "sweep-open", onclick: () => void open() }, "Open"));
  const none = el("p", { class: "text soft", hidden: true }, "No finished sweep in this folder yet: run one here, or with crossfall sweep.");
  leaf.append(making, bar, none, holder);
  const list = async (pick = ""): Promise<void> => {
    try {
      const { tables } = await api.sweeps();
      const was = pick || choice.value;
      put(choice, ...tables.map((t) => el("option", { value: t, selected: t === was }, t.replace(/^crossfall-out\//, "").replace(/\/table\.csv$/, ""))));
      bar.hidden = tables.length === 0;
      none.hidden = tables.length > 0;
      if (pick) await open();
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
    }
  };
  makeSweep(making, (table) => void list(table));
  leaf.addEventListener("open", () => void list());
  void list();
}

function chart(table: SweepTable): HTMLElement {
  const numeric = Object.entries(table.columns).filter(([, v]) => v.every((x) => x === null || typeof x === "number")).map(([k]) => k);
  const varies = numeric.filter((k) => new Set(table.columns[k]).size > 1);
  const keys = varies.filter((k) => k.includes(".") && !k.startsWith("slide"));
  const tips = numeric.filter((k) => /tip|compliant|rigid|critical|angle/.test(k) && k.endsWith("_deg"));
  const pickers = { x: keys[0] ?? varies[0] ?? "", y: keys[1] ?? varies[1] ?? "", z: tips.find((k) => k === "tip_deg") ?? tips[0] ?? varies[varies.length - 1] ?? "" };
  const headings = [...new Set(table.columns["heading_deg"] ?? [])].filter((h): h is number => typeof h === "number");
  let heading: number | null = headings[0] ?? null;
  const picture = el("div", {});
  const select = (key: "x" | "y" | "z", words: string): HTMLElement[] => {
    const input = el("select", { id: `map-${key}` }, ...varies.map((k) => el("option", { value: k, selected: k === pickers[key] }, plain(k))));
    input.addEventListener("change", () => { pickers[key] = input.value; draw(); });
    return [el("label", { for: `map-${key}` }, words), input];
  };
  const way = el("select", { id: "map-way", "aria-label": "Heading" }, ...headings.map((h) => el("option", { value: h }, `turned ${h}°`)));
  way.addEventListener("change", () => { heading = Number(way.value); draw(); });
  const draw = (): void => put(picture, scatter(table, pickers, heading, keys));
  draw();
  return el("div", {}, el("div", { class: "bar map-bar" }, ...select("x", "Across"), ...select("y", "Up"), ...select("z", "Colour"), headings.length > 1 ? way : null), picture,
    el("p", { class: "text soft" }, `${table.rows} lines${table.cut ? ", the first of more" : ""}. A point puts that truck on the table; undo brings yours back.`));
}

/** A column's name without what the eye does not need. */
function plain(key: string): string {
  return key.replace(/^part\./, "").replace(/\.at_mm\./, " ").replace(/\./g, " ").replace(/_(mm|deg|g)$/, " ($1)").replace(/_/g, " ");
}

function scatter(table: SweepTable, by: { x: string; y: string; z: string }, heading: number | null, keys: string[]): SVGElement {
  const c = table.columns;
  const rows: number[] = [];
  for (let i = 0; i < table.rows; i++) {
    const whole = [by.x, by.y, by.z].every((k) => typeof c[k]?.[i] === "number");
    if (whole && (heading === null || c["heading_deg"]?.[i] === heading)) rows.push(i);
  }
  const of = (k: string, i: number): number => c[k]![i] as number;
  const span = (k: string): [number, number] => {
    const v = rows.map((i) => of(k, i));
    const [low, high] = [Math.min(...v), Math.max(...v)];
    return high > low ? [low, high] : [low - 1, high + 1];
  };
  const [w, h, m] = [420, 320, 46];
  if (rows.length === 0) return svg("svg", { viewBox: `0 0 ${w} 40` }, svg("text", { x: 10, y: 24, class: "ring-name" }, "nothing to draw"));
  const [[x0, x1], [y0, y1], [z0, z1]] = [span(by.x), span(by.y), span(by.z)];
  const x = (v: number): number => m + ((v - x0) / (x1 - x0)) * (w - m - 70);
  const y = (v: number): number => h - 40 - ((v - y0) / (y1 - y0)) * (h - 60);
  // Dark to light by lightness alone, so that the order shows without colour vision.
  const tone = (t: number): string => {
    const stops = [[31, 56, 84], [88, 124, 144], [176, 184, 164], [243, 228, 178]];
    const at = Math.max(0, Math.min(2.999, t * 3));
    const [a, b] = [stops[Math.floor(at)]!, stops[Math.floor(at) + 1]!];
    return `rgb(${a.map((v, k) => Math.round(v + (b[k]! - v) * (at % 1))).join(" ")})`;
  };
  const [nx, ny] = [new Set(rows.map((i) => of(by.x, i))).size, new Set(rows.map((i) => of(by.y, i))).size];
  const grid = nx * ny <= rows.length * 1.5 && nx > 1 && ny > 1;
  const [cw, ch] = grid ? [((w - m - 70) / (nx - 1)) * 1.02, ((h - 60) / (ny - 1)) * 1.02] : [11, 11];
  const marks = rows.map((i) => {
    const words = `${by.x} ${fixed(of(by.x, i), 2)}, ${by.y} ${fixed(of(by.y, i), 2)}: ${by.z} ${fixed(of(by.z, i), 2)}`;
    const mark = svg("rect", { x: x(of(by.x, i)) - cw / 2, y: y(of(by.y, i)) - ch / 2, width: cw, height: ch, fill: tone((of(by.z, i) - z0) / (z1 - z0)), class: "map-point", tabindex: -1, role: "button", "aria-label": words }, svg("title", {}, words));
    const place = (): void => {
      const values: Record<string, number> = {};
      for (const k of keys) values[k] = of(k, i);
      void change(() => api.place(values), "put a point of the sweep on the table").then((taken) => { if (taken) say(words); });
    };
    mark.addEventListener("click", place);
    mark.addEventListener("keydown", (e) => { if (e.key === "Enter" || e.key === " ") { e.preventDefault(); place(); } });
    return mark;
  });
  const axis: SVGElement[] = [];
  for (let i = 0; i <= 4; i++) {
    axis.push(svg("text", { class: "ring-name", x: x(x0 + ((x1 - x0) * i) / 4), y: h - 12, "text-anchor": "middle" }, fixed(x0 + ((x1 - x0) * i) / 4, x1 - x0 < 8 ? 2 : 0)),
      svg("text", { class: "ring-name", x: m - 14, y: y(y0 + ((y1 - y0) * i) / 4) + 3, "text-anchor": "end" }, fixed(y0 + ((y1 - y0) * i) / 4, y1 - y0 < 8 ? 2 : 0)),
      svg("rect", { x: w - 38, y: 24 + (4 - i) * 30, width: 12, height: 30, fill: tone(i / 4) }),
      svg("text", { class: "ring-name", x: w - 22, y: 24 + (4 - i) * 30 + 18 }, fixed(z0 + ((z1 - z0) * i) / 4, 1)));
  }
  axis.push(svg("text", { class: "ring-name", x: w - 38, y: 16 }, by.z.replace(/_/g, " ")));
  const map = svg("svg", { viewBox: `0 0 ${w} ${h}`, id: "map", role: "group", "aria-label": `${by.z} over ${by.x} and ${by.y}; arrow keys go from point to point` }, ...marks, ...axis);
  oneStop(map, ".map-point");
  return map;
}
