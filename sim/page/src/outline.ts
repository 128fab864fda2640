// Outlines of parts in plan, side and rear view, from the hull of their points.

import { fixed, svg } from "./dom";
import { placed, solid } from "./solids";
import type { Pair, Part, Scene, Triple } from "./types";

export type Face = "plan" | "side" | "rear";

/** Truck axes to drawing axes, mm, with y of the drawing pointing down as SVG wants it. */
export const PROJECT: Record<Face, (p: Triple) => Pair> = {
  plan: ([x, y]) => [-y, -x], // nose up, left side on the left
  side: ([x, , z]) => [x, -z], // nose to the right
  rear: ([, y, z]) => [-y, -z], // seen from behind, left side on the left
};

const known = new Map<string, Pair[]>();

/** What the outline of a part depends on, short. */
export function lookOf(part: Part): string {
  const s = part.shape;
  if (!s) return "";
  const size = s.vertices_mm ? `${s.vertices_mm.length} ${s.vertices_mm[0]} ${s.faces?.length}` : `${s.size_mm} ${s.middle_mm ?? ""}`;
  return `${part.label}|${s.kind} ${size}|${part.centre_mm}|${part.turn}`;
}

export function outline(part: Part, face: Face): Pair[] {
  const key = `${face}|${lookOf(part)}`;
  let found = known.get(key);
  if (!found) {
    if (known.size > 4000) known.clear();
    found = trace(part, face);
    known.set(key, found);
  }
  return found;
}

function trace(part: Part, face: Face): Pair[] {
  if (!part.shape) return [];
  return hull(solid(part.shape).hull.map((p) => PROJECT[face](placed(p, part.turn, part.centre_mm))));
}

export function pathData(points: Pair[]): string {
  return points.length ? `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}Z` : "";
}

/** Parts from the far one to the near one, so that what is in front is drawn last. */
export function inDepth(parts: Part[], face: Face): Part[] {
  const depth: Record<Face, (p: Part) => number> = {
    plan: (p) => p.centre_mm[2],
    side: (p) => -p.centre_mm[1],
    rear: (p) => -p.centre_mm[0],
  };
  return [...parts].sort((a, b) => depth[face](a) - depth[face](b));
}

/** What a part rides on, as its class in every drawing and its colour in three dimensions. */
export function kindOf(carrier: string): string {
  return carrier === "chassis" ? "chassis" : carrier.endsWith("axle") ? `axle ${carrier.split(" ")[0]}` : "wheel";
}

/** Convex hull, by Andrew's monotone chain. */
export function hull(points: Pair[]): Pair[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: Pair[]): Pair[] => {
    const chain: Pair[] = [];
    for (const p of list) {
      while (chain.length >= 2 && turn(chain[chain.length - 2]!, chain[chain.length - 1]!, p) <= 0) chain.pop();
      chain.push(p);
    }
    chain.pop();
    return chain;
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

const turn = (o: Pair, a: Pair, b: Pair): number => (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** The truck's extent in a view: left, top, right, bottom in drawing mm. */
export function extent(scene: Scene, face: Face): [number, number, number, number] {
  const points: Pair[] = [];
  for (const part of scene.parts) points.push(...outline(part, face));
  for (const axle of scene.axles) {
    for (const s of [-1, 1]) {
      const y = s * (axle.track_mm / 2 + axle.width_mm / 2);
      points.push(PROJECT[face]([axle.x_mm + s * axle.radius_mm, y, 0]), PROJECT[face]([axle.x_mm, y, 2 * axle.radius_mm]));
    }
  }
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Part outlines of one view as SVG paths, touched only where a part looks different than before. */
export class Outlines {
  readonly root = svg("g");
  private order = "";
  private drawn: { path: SVGPathElement; look: string; dress: string }[] = [];

  constructor(private readonly face: Face, private readonly scale: number | (() => number) = 1, private readonly named = false) {}

  draw(parts: Part[], picked: number | null): void {
    const seen = inDepth(parts.filter((p) => p.shape), this.face);
    const order = seen.map((p) => p.label).join("|");
    if (order !== this.order) {
      this.order = order;
      this.drawn = seen.map(() => ({ path: svg("path"), look: "", dress: "" }));
      this.root.replaceChildren(...this.drawn.map((d) => d.path));
    }
    const scale = typeof this.scale === "number" ? this.scale : this.scale();
    seen.forEach((part, i) => this.one(this.drawn[i]!, part, picked, scale));
  }

  private one(drawn: { path: SVGPathElement; look: string; dress: string }, part: Part, picked: number | null, scale: number): void {
    const look = `${lookOf(part)} ${scale}`;
    if (look !== drawn.look) {
      drawn.look = look;
      drawn.path.setAttribute("d", pathData(outline(part, this.face).map(([x, y]) => [x * scale, y * scale])));
    }
    const here = part.row >= 0;
    const dress = `part ${kindOf(part.carrier)}${here && part.row === picked ? " picked" : ""}${here ? " here" : ""}`;
    const full = `${dress} ${part.row} ${this.named ? part.mass_g : ""}`;
    if (full === drawn.dress) return;
    drawn.dress = full;
    drawn.path.setAttribute("class", dress);
    if (here) drawn.path.setAttribute("data-row", String(part.row));
    if (this.named) drawn.path.replaceChildren(svg("title", {}, `${part.label}, ${fixed(part.mass_g)} g`));
  }
}
