// What truck and reference have in hand standing anywhere on a course, and what the drive did there.

import { el, fixed, svg } from "./dom";
import type { CourseEvent, CourseStanding, Standing, Pair } from "./types";

const [W, H, LEFT, BOTTOM, TOP] = [600, 150, 34, 22, 10];

export class CourseStrip {
  readonly root: HTMLElement;
  private readonly svg = svg("svg", { class: "course-strip", viewBox: `0 0 ${W} ${H}`, role: "img", "aria-label": "Degrees in hand along the course" });
  private readonly cursor = svg("path", { class: "strip-now" });
  private words = el("p", { class: "text soft strip-words" });
  private x: (along: number) => number = () => 0;

  constructor() {
    const dot = (what: string): SVGElement => svg("svg", { viewBox: "0 0 10 10", "aria-hidden": "true" }, svg("g", { class: `mark ${what}` }, svg("circle", { cx: 5, cy: 5, r: what === "lifts" ? 3 : 5 })));
    const line = (whose: string): SVGElement => svg("svg", { viewBox: "0 0 24 10", class: "long", "aria-hidden": "true" }, svg("path", { class: `strip-${whose}`, d: "M0 5H24" }));
    const key: [SVGElement, string][] = [[line("truck"), "the truck"], [line("reference"), "the reference"], [dot("lifts"), "a wheel lifts"], [dot("slides"), "slides, is stuck"], [dot("goes-over"), "goes over"]];
    this.root = el("div", {}, el("h3", {}, "In hand, standing there"), this.svg, el("ul", { class: "strip-key" }, ...key.map(([mark, what]) => el("li", {}, mark, what))), this.words);
  }

  draw(found: CourseStanding, events: { whose: string; event: CourseEvent }[]): void {
    const { along_mm: along } = found.way;
    const length = along[along.length - 1]!;
    const kinds: [string, Standing][] = [["reference", found.reference], ["truck", found.truck]].filter((k): k is [string, Standing] => !!k[1]);
    const all = kinds.flatMap(([, s]) => s.in_hand_deg).filter((v): v is number => v !== null);
    const [low, high] = [Math.min(0, Math.floor(Math.min(...all) / 5) * 5), Math.max(10, Math.ceil(Math.max(...all) / 5) * 5)];
    const x = (this.x = (s: number): number => LEFT + (s / length) * (W - LEFT - 8));
    const y = (deg: number): number => TOP + ((high - deg) / (high - low)) * (H - TOP - BOTTOM);
    const step = high - low > 40 ? 20 : high - low > 20 ? 10 : 5;
    const marks: SVGElement[] = [];
    for (let deg = Math.ceil(low / step) * step; deg <= high; deg += step) {
      marks.push(svg("path", { class: deg === 0 ? "strip-zero" : "strip-grid", d: `M${LEFT} ${y(deg)}H${W - 8}` }), svg("text", { class: "strip-text", x: LEFT - 5, y: y(deg) + 3.5, "text-anchor": "end" }, `${fixed(deg, 0)}°`));
    }
    for (let s = 0; s <= length; s += 500) marks.push(svg("text", { class: "strip-text", x: x(s), y: H - 6, "text-anchor": s === 0 ? "start" : "middle" }, s === 0 ? "start" : `${s} mm`));
    const curves = kinds.map(([whose, s]) => svg("path", { class: `strip-${whose}`, d: curve(s.in_hand_deg.map((v, i) => (v === null ? null : [x(along[i]!), y(v)]))) }));
    const happened = events.map(({ whose, event }) => svg("g", { class: `mark ${event.what.replace(" ", "-")} ${whose}` },
      svg("circle", { cx: x(Math.max(0, event.at_mm)), cy: whose === "truck" ? H - BOTTOM - 4 : TOP + 4, r: event.what === "lifts" ? 3.5 : 6 })));
    this.svg.replaceChildren(...marks, ...curves, ...happened, this.cursor);
    const least = kinds.map(([whose, s]) => {
      const i = s.in_hand_deg.reduce<number>((best, v, k) => (v !== null && v < (s.in_hand_deg[best] ?? Infinity) ? k : best), 0);
      return `${whose === "truck" ? "The truck" : "the reference"} has least at ${fixed(along[i]!, 0)} mm: ${fixed(s.in_hand_deg[i])}° (ground ${fixed(s.slope_deg[i])}°, turned ${fixed((s.local_heading_deg[i]! + 360) % 360, 0)}°)`;
    });
    this.words.textContent = `${least.reverse().join("; ")}. The ground's own slope under the middle of the truck; stones are left out here.`;
    this.svg.setAttribute("aria-label", `Degrees in hand along the course. ${this.words.textContent}`);
  }

  now(along: number | null): void {
    this.cursor.setAttribute("d", along === null ? "" : `M${this.x(Math.max(0, along)).toFixed(1)} ${TOP}V${H - BOTTOM}`);
  }
}

function curve(points: (Pair | null)[]): string {
  let pen = false;
  return points.map((p) => {
    if (!p) {
      pen = false;
      return "";
    }
    const step = `${pen ? "L" : "M"}${p[0].toFixed(1)} ${p[1].toFixed(1)}`;
    pen = true;
    return step;
  }).join("");
}
