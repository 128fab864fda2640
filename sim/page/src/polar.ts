// The tip map: how steep it can stand, in every direction, drawn round the plan of the truck.
//
// The truck's nose points up. A direction on the map is the way the ground falls away, so the
// rear tyres, over which a climb tips, are at the bottom.

import { turnStep } from "./api";
import { byId, fixed, say, svg } from "./dom";
import { Outlines, pathData } from "./outline";
import { around, DIRECTIONS, goes, look, on, spoken, store, tips } from "./store";
import type { TipAnswer, Answers, Pair, TrialFound } from "./types";

const R_IN = 74; // where 15 degrees lie, outside the truck's own drawing
const R_OUT = 178; // where the scale ends
const LOW = 15;

const LEGEND: [string, string][] = [
  ["key-compliant", "tips on springs and tyres"],
  ["key-rail", "against a rail"],
  ["key-range", "its 95 % range"],
  ["key-rigid", "tips, nothing gives"],
  ["key-slide", "slides, low to high grip"],
  ["key-lift", "first wheel lifts"],
  ["key-tried", "virtual trial"],
  ["key-before", "before"],
];

const SIGNS: Record<string, string> = { "key-tried": "M13 0L18 5L13 10L8 5Z", "key-range": "M3 5H23M3 1V9M23 1V9" };

export class Polar {
  private readonly root: SVGSVGElement;
  private readonly back = svg("g");
  private readonly curves = svg("g");
  private readonly parts = new Outlines("plan", () => this.scale());
  private readonly marks = svg("g");
  private readonly plan = svg("g", { class: "polar-plan" }, this.parts.root, this.marks);
  private readonly puck = svg("g", { class: "puck" });
  private high = 75;

  constructor(holder: HTMLElement) {
    this.root = svg("svg", {
      viewBox: "-234 -206 468 412", class: "polar", role: "slider", tabindex: 0, "data-key": "puck",
      "aria-label": "Slope under the truck: arrows left and right turn it, up and down tilt it",
      "aria-valuemin": 0, "aria-valuemax": 90,
    }, this.back, this.plan, this.curves, this.puck);
    const legend = document.createElement("ul");
    legend.className = "legend";
    for (const [mark, words] of LEGEND) {
      const line = svg("svg", { viewBox: "0 0 26 10", class: mark, "aria-hidden": "true" },
        mark === "key-slide" ? svg("rect", { width: 26, height: 10 }) : svg("path", { d: SIGNS[mark] ?? "M0 5H26" }));
      const item = document.createElement("li");
      item.append(line, words);
      legend.append(item);
    }
    holder.append(this.root, legend);
    on(["shown", "trials"], () => this.draw());
    on("view", () => this.drawPuck());
    on("pick", () => this.drawPlan());
    this.listen();
  }

  private listen(): void {
    let held = false;
    const follow = (e: PointerEvent): void => {
      const point = new DOMPoint(e.clientX, e.clientY).matrixTransform(this.root.getScreenCTM()!.inverse());
      const r = Math.hypot(point.x, point.y);
      // Downhill d = (-cos psi, sin psi) in (forward, left); forward is up, left is left.
      const heading = (deg(Math.atan2(-point.x, point.y)) + 360) % 360;
      look({ heading: (Math.round(heading / turnStep) * turnStep) % 360, tilt: Math.max(0, Math.min(90, round(this.angleAt(r), 1))) });
    };
    this.root.addEventListener("pointerdown", (e) => {
      held = true;
      this.root.setPointerCapture(e.pointerId);
      follow(e);
    });
    this.root.addEventListener("pointermove", (e) => { if (held) follow(e); });
    for (const end of ["pointerup", "pointercancel"]) this.root.addEventListener(end, () => (held = false));
    this.root.addEventListener("keydown", (e) => {
      const step = e.shiftKey ? 10 : 1;
      const { tilt, heading } = store.view;
      const to: Record<string, Partial<{ tilt: number; heading: number }>> = {
        ArrowUp: { tilt: Math.min(90, tilt + step) }, ArrowDown: { tilt: Math.max(0, tilt - step) },
        ArrowLeft: { heading: (heading + 360 - turnStep * step) % 360 }, ArrowRight: { heading: (heading + turnStep * step) % 360 },
        Home: { tilt: 0 },
      };
      const change = to[e.key];
      if (change) {
        e.preventDefault();
        look(change);
        say(`Tilt ${fixed(store.view.tilt)}°, turned ${fixed(store.view.heading, 0)}°; ${end(store.view.heading)}.`);
      }
    });
  }

  /** Radius for an angle: squeezed inside the truck's drawing below 15 degrees, even above. */
  private radius(angle: number): number {
    if (angle < LOW) return (angle / LOW) * R_IN;
    return R_IN + ((angle - LOW) / (this.high - LOW)) * (R_OUT - R_IN);
  }

  private angleAt(r: number): number {
    return r < R_IN ? (r / R_IN) * LOW : LOW + ((r - R_IN) / (R_OUT - R_IN)) * (this.high - LOW);
  }

  private at(heading: number, r: number): Pair {
    const psi = (heading * Math.PI) / 180;
    return [-Math.sin(psi) * r, Math.cos(psi) * r];
  }

  private curve(headings: number[], values: (number | null)[]): Pair[] {
    return headings.flatMap((h, i) => {
      const v = values[i];
      return v === null || v === undefined ? [] : [this.at(h, this.radius(Math.min(v, 90)))];
    });
  }

  private draw(): void {
    const a = store.answers;
    if (!a) return;
    const high = this.high;
    const found = tips(a);
    const top = Math.max(...a.rigid_deg, ...found.map((v) => v ?? 0));
    // The scale only grows, and in tens, so that it does not breathe while a weight is dragged.
    this.high = Math.max(this.high, Math.min(95, Math.ceil((top + 2) / 10) * 10));
    if (this.high !== high || !this.back.hasChildNodes()) this.drawBack();
    this.drawPlan();
    const layers: SVGElement[] = [
      ...this.sliding(a),
      svg("path", { class: "lift", d: this.pieces(a.heading_deg, a.first_lift_deg) }),
    ];
    const before = store.bench.before;
    if (before) {
      const was = tips(before);
      layers.push(svg("path", { class: "before", d: pathData(this.curve(before.heading_deg, was.some((v) => v !== null) ? was : before.rigid_deg)) }));
    }
    const [tipping, railed] = this.cutAt(a);
    layers.push(svg("path", { class: "rigid", d: pathData(this.curve(a.heading_deg, a.rigid_deg)) }),
      svg("path", { class: "railed", d: railed }), svg("path", { class: "compliant", d: tipping }));
    for (const way of a.ways ?? []) layers.push(this.range(way));
    for (const t of store.trying ? [] : store.trials) layers.push(...this.tried(t));
    for (const { heading } of Object.values(DIRECTIONS)) layers.push(this.reading(heading), this.wayName(heading));
    for (const [words, x, y] of [["nose", 0, -R_IN - 1], ["tail", 0, R_IN + 7], ["left", 14 - R_IN, -5], ["right", R_IN - 14, -5]] as const) {
      layers.push(svg("text", { x, y, class: "side-name", "text-anchor": "middle" }, words));
    }
    this.curves.replaceChildren(...layers);
    this.curves.classList.toggle("trying", store.trying);
    this.curves.classList.toggle("inexact", !a.exact);
    this.drawPuck();
  }

  /** Rings where it slides, over the range of grip; a line where it may roll away sooner, which is
   * known at the likely grip only. */
  private sliding(a: Answers): SVGElement[] {
    if (a.goes_at_deg !== null) {
      const away = a.goes_at_deg.map((v, i) => (a.rail_deg[i] === null ? a.slide_deg.likely : v));
      return tips(a).some((v) => v !== null) ? [svg("path", { class: "slide-likely", d: pathData(this.curve(a.heading_deg, away)) })] : [];
    }
    const [low, likely, most] = [a.slide_deg.low, a.slide_deg.likely, a.slide_deg.high].map((v) => circle(this.radius(v)));
    return [svg("path", { class: "slide-band", d: `${most}${low}`, "fill-rule": "evenodd" }), svg("path", { class: "slide-likely", d: likely })];
  }

  /** A line all round, left out where there is no number. */
  private pieces(headings: number[], values: (number | null)[]): string {
    let path = "";
    let drawing = false;
    for (let i = 0; i <= headings.length; i++) {
      const v = values[i % headings.length] ?? null;
      if (v !== null) path += `${drawing ? "L" : "M"}${point(this.at(headings[i % headings.length]!, this.radius(Math.min(v, 90))))}`;
      drawing = v !== null;
    }
    return path;
  }

  /** The line of the tips as two: where it tips first, and where it slides first; cut on the ring
   * of the grip itself, or midway where it may roll away. */
  private cutAt(a: Answers): [string, string] {
    const [headings, values] = [a.heading_deg, tips(a)];
    const lines: [string, string] = ["", ""];
    const step = 360 / headings.length;
    let last = -1;
    const go = (to: 0 | 1, heading: number, value: number): void => {
      lines[to] += `${last === to ? "L" : "M"}${point(this.at(heading, this.radius(Math.min(value, 90))))}`;
      last = to;
    };
    headings.forEach((heading, i) => {
      const [v, next] = [values[i] ?? null, values[(i + 1) % headings.length] ?? null];
      if (v === null || next === null) { last = -1; return; }
      const [here, there] = [i, (i + 1) % headings.length].map((k) => (a.rail_deg[k] === null ? 0 : 1)) as [0 | 1, 0 | 1];
      if (last !== here) go(here, heading, v);
      if (here !== there) {
        const slide = a.goes_at_deg === null ? a.slide_deg.likely : (v + next) / 2;
        const share = next === v ? 0.5 : Math.max(0, Math.min(1, (slide - v) / (next - v)));
        const cut = heading + step * share;
        go(here, cut, slide);
        go(there, cut, slide);
      }
      go(there, heading + step, next);
    });
    return lines;
  }

  /** The range of one of the four ways, across its line. */
  private range(way: TipAnswer): SVGElement {
    const [low, high] = way.compliant_range_deg ?? way.rail_range_deg ?? [null, null];
    if (low === null || high === null) return svg("g");
    const [[a, b], [c, d]] = [low, high].map((v) => this.at(way.heading_deg, this.radius(v))) as [Pair, Pair];
    const across = this.at(way.heading_deg + 90, 5);
    const cap = ([x, y]: Pair): string => `M${point([x - across[0], y - across[1]])}L${point([x + across[0], y + across[1]])}`;
    return svg("path", { class: way.compliant_deg === null ? "range of-rail" : "range", d: `M${point([a, b])}L${point([c, d])}${cap([a, b])}${cap([c, d])}` },
      svg("title", {}, `95 % range: ${fixed(low)} to ${fixed(high)}°`));
  }

  /** A finished trial: a lozenge at its angle, with its interval as a line. */
  private tried(t: TrialFound): SVGElement[] {
    const angle = t.trial_deg ?? t.trial_slide_deg;
    if (angle === null) return [];
    const [x, y] = this.at(t.heading_deg, this.radius(angle));
    const [a, b] = (t.trial_ci_deg ?? [angle, angle]).map((v) => this.at(t.heading_deg, this.radius(v ?? angle))) as [Pair, Pair];
    const held = t.hold === "rail" ? " against a rail" : "";
    const words = svg("title", {}, `virtual trial: ${t.trial_outcome}${held} at ${fixed(angle)}°`);
    return [svg("path", { class: "tried-line", d: `M${a[0]} ${a[1]}L${b[0]} ${b[1]}` }),
      svg("path", { class: `tried ${t.trial_outcome}`, d: `M${x} ${y - 5}L${x + 5} ${y}L${x} ${y + 5}L${x - 5} ${y}Z` }, words)];
  }

  /** In the margin: where it tips, or that it slides first and where. */
  private reading(heading: number): SVGElement {
    const a = store.answers;
    const first = goes(a, heading);
    const angle = first?.deg ?? around(a.heading_deg, a.rigid_deg, heading);
    const [x, y] = this.at(heading, R_OUT + 14);
    const anchor = Math.abs(x) < 20 ? "middle" : x < 0 ? "start" : "end";
    const side = heading === 90 ? -231 : heading === 270 ? 231 : x;
    const at = { x: side, y: y + (Math.abs(y) < 20 ? -6 : y > 0 ? 10 : 0), "text-anchor": anchor };
    const words = svg("tspan", { class: "reading-slides" }, "slides ");
    const way = store.trying ? undefined : a.ways?.find((w) => w.heading_deg === heading);
    const [low, high] = way?.goes_at_range_deg ?? [null, null];
    return svg("text", { ...at, class: "reading" }, first?.slides && anchor === "middle" ? words : null, `${spoken(angle, low === null || high === null ? null : [low, high])}°`,
      first?.slides && anchor !== "middle" ? svg("tspan", { class: "reading-slides", x: side, dy: 12 }, "slides") : null);
  }

  /** What a side of the map means, in words: which side of the truck is downhill there. */
  private wayName(heading: number): SVGElement {
    const words = { 0: "tail downhill", 90: "left side", 180: "nose downhill", 270: "right side" }[heading]!;
    const [x, y] = this.at(heading, R_OUT + 14);
    if (Math.abs(x) < 20) return svg("text", { x: 44, y: y + (y > 0 ? 10 : 0), class: "way-name" }, words);
    const side = { x: x < 0 ? -231 : 231, "text-anchor": x < 0 ? "start" : "end" };
    return svg("text", { class: "way-name", y: y + 24 }, svg("tspan", side, words), svg("tspan", { ...side, dy: 12 }, "downhill"));
  }

  private drawBack(): void {
    const rings: SVGElement[] = [];
    for (let angle = 20; angle <= this.high; angle += 10) {
      const r = this.radius(angle);
      const [x, y] = this.at(134, r);
      rings.push(svg("circle", { r, class: angle % 30 === 0 ? "ring strong" : "ring" }),
        svg("text", { x, y: y + 3, class: "ring-name", "text-anchor": "middle" }, `${angle}°`));
    }
    for (let h = 0; h < 360; h += 15) {
      const [x1, y1] = this.at(h, R_OUT);
      const [x2, y2] = this.at(h, R_OUT + (h % 45 === 0 ? 7 : 4));
      rings.push(svg("path", { d: `M${x1} ${y1}L${x2} ${y2}`, class: "tick" }));
    }
    rings.push(svg("circle", { r: R_OUT, class: "rim" }));
    this.back.replaceChildren(...rings);
  }

  private scale(): number {
    return Math.min(0.42, (R_IN - 8) / (store.scene.wheelbase_mm / 2 + 60));
  }

  private drawPlan(): void {
    const scene = store.scene;
    if (!scene) return;
    const scale = this.scale();
    this.parts.draw(scene.parts, store.view.row);
    const shapes: SVGElement[] = [];
    const corners = [0, 1, 3, 2].map((i) => scene.tip_points_mm[i]!).map(([x, y]): Pair => [-y * scale, -x * scale]);
    shapes.push(svg("path", { d: pathData(corners), class: "tip-line" }));
    const [cx, cy] = [-scene.cg_mm[1] * scale, -scene.cg_mm[0] * scale];
    shapes.push(svg("g", { transform: `translate(${cx.toFixed(2)} ${cy.toFixed(2)})`, class: "cg" },
      svg("circle", { r: 5, class: "cg-back" }),
      svg("path", { d: "M0 0V-5A5 5 0 0 1 5 0ZM0 0V5A5 5 0 0 1 -5 0Z", class: "cg-dark" }),
      svg("circle", { r: 5, class: "cg-ring" })));
    this.marks.replaceChildren(...shapes);
  }

  private drawPuck(): void {
    const { tilt, heading } = store.view;
    const a = store.answers;
    if (!a) return;
    const r = this.radius(tilt);
    const [x, y] = this.at(heading, r);
    const [ex, ey] = this.at(heading, R_OUT);
    const limit = goes(a, heading)?.deg ?? around(a.heading_deg, a.rigid_deg, heading) ?? 90;
    this.puck.classList.toggle("over", tilt > limit);
    this.puck.replaceChildren(
      svg("path", { d: `M0 0L${ex.toFixed(1)} ${ey.toFixed(1)}`, class: "puck-line" }),
      svg("circle", { cx: x.toFixed(1), cy: y.toFixed(1), r: 15, class: "puck-reach" }),
      svg("circle", { cx: x.toFixed(1), cy: y.toFixed(1), r: 6.5, class: "puck-dot" }));
    this.root.setAttribute("aria-valuenow", fixed(tilt).replace("−", "-"));
    this.root.setAttribute("aria-valuetext", `tilted ${fixed(tilt)} degrees, turned ${fixed(heading, 0)}; ${end(heading)}`);
  }
}

/** What comes first at a heading, in words. */
function end(heading: number): string {
  const a = store.answers;
  const first = goes(a, heading);
  if (first === null) return `tips at ${fixed(around(a.heading_deg, a.rigid_deg, heading))}° if nothing gives`;
  return `${first.slides ? "slides" : "tips"} at ${fixed(first.deg)}°`;
}

const circle = (r: number): string => `M${r} 0A${r} ${r} 0 1 0 ${-r} 0A${r} ${r} 0 1 0 ${r} 0Z`;
const point = ([x, y]: Pair): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
const deg = (a: number): number => (a * 180) / Math.PI;
const round = (v: number, digits: number): number => Number(v.toFixed(digits));

export const makePolar = (): Polar => new Polar(byId("polar"));
