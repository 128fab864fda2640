// The one place where the page remembers anything. Parts of the page listen for what they draw.

import type { TipAnswer, Answers, Bench, Measure, Path, Row, Scene, TrialFound, Tried } from "./types";
import { fixed } from "./dom";

export interface View {
  tilt: number;
  heading: number;
  /** The part that is picked, by its row in the file, and which of its pieces. */
  row: number | null;
  direction: Direction;
  /** Whether a rail holds it where it would slide away. */
  rail: boolean;
}

export type Direction = "climb" | "left" | "descent" | "right" | "all";
export const DIRECTIONS: Record<Exclude<Direction, "all">, { heading: number; name: string; short: string }> = {
  climb: { heading: 0, name: "Climb", short: "Climb" },
  left: { heading: 90, name: "Left side down", short: "Left down" },
  descent: { heading: 180, name: "Descent", short: "Descent" },
  right: { heading: 270, name: "Right side down", short: "Right down" },
};

type Topic = "bench" | "shown" | "view" | "path" | "pick" | "trials";

export const store = {
  bench: null as unknown as Bench,
  /** What is drawn now: the truck itself, or the one being tried while a weight is dragged. */
  scene: null as unknown as Scene,
  answers: null as unknown as Answers,
  rows: [] as Row[],
  measures: [] as Measure[],
  path: null as Path | null,
  /** Finished trials of the truck as it is now, on the surface shown. */
  trials: [] as TrialFound[],
  view: { tilt: 0, heading: 90, row: null, direction: "all", rail: false } as View,
  trying: false,
};

const listeners = new Map<Topic, Set<() => void>>();

export function on(topic: Topic | Topic[], listener: () => void): void {
  for (const t of Array.isArray(topic) ? topic : [topic]) {
    if (!listeners.has(t)) listeners.set(t, new Set());
    listeners.get(t)!.add(listener);
  }
}

export function tellAll(...topics: Topic[]): void {
  const called = new Set<() => void>();
  for (const t of topics) for (const l of listeners.get(t) ?? []) called.add(l);
  for (const l of called) l();
}

const REST = 150; // ms without a move after which the hand rests

/** While a hand drags, map and numbers come first: the rest is drawn when the hand rests, and on
 * the way every `pause()` ms. Otherwise at once. */
export function afterTheMap(draw: () => void, pause: () => number): () => void {
  let timer = 0;
  let last = 0;
  const now = (): void => {
    clearTimeout(timer);
    last = performance.now();
    draw();
  };
  return () => {
    if (!store.trying) return now();
    clearTimeout(timer);
    timer = window.setTimeout(now, Math.max(20, Math.min(REST, last + pause() - performance.now())));
  };
}

export function takeBench(bench: Bench): void {
  // An answer that was overtaken on its way says nothing new.
  if (store.bench?.document === bench.document && bench.revision < store.bench.revision) return;
  // The picked part stays picked, wherever it stands in the list now; in another truck none is.
  const picked = store.bench?.file === bench.file ? store.bench.rows.find((r) => r.row === store.view.row)?.name : undefined;
  if (picked !== undefined || store.bench?.file !== bench.file) store.view.row = bench.rows.find((r) => r.name === picked)?.row ?? null;
  if (store.path && store.bench?.truck !== bench.truck) store.path = null;
  store.bench = bench;
  store.scene = bench.scene;
  store.answers = bench.answers;
  store.rows = bench.rows;
  store.measures = bench.measures;
  store.trying = false;
  tellAll("bench", "shown", "pick");
}

export function showTry(tried: Tried): void {
  store.scene = tried.scene;
  store.answers = tried.answers;
  store.rows = tried.rows;
  store.measures = tried.measures;
  store.trying = true;
  tellAll("shown");
}

export function look(change: Partial<View>): void {
  const turned = change.heading !== undefined && change.heading !== store.view.heading;
  const picked = change.row !== undefined && change.row !== store.view.row;
  Object.assign(store.view, change);
  if (turned || change.tilt !== undefined || change.direction !== undefined || change.rail !== undefined) tellAll("view");
  if (picked) tellAll("pick");
}

/** A value at any heading from the round of headings the server worked out. */
export function around(headings: number[], values: (number | null)[], heading: number): number | null {
  if (headings.length === 0) return null;
  const step = 360 / headings.length;
  const place = (((heading % 360) + 360) % 360) / step;
  const i = Math.floor(place) % headings.length;
  const a = values[i] ?? null;
  const b = values[(i + 1) % headings.length] ?? null;
  if (a === null || b === null) return a ?? b;
  return a + (b - a) * (place - Math.floor(place));
}

/** Tips all round as far as they are known: where it slides first, those against a rail. */
export const tips = (a: Answers): (number | null)[] => a.compliant_deg.map((v, i) => v ?? a.rail_deg[i] ?? null);

/** What comes first at a heading, the tip or the slide, and where; null while that is not known. */
export function goes(a: Answers, heading: number): { slides: boolean; deg: number } | null {
  const tip = around(a.heading_deg, tips(a), heading);
  if (tip === null) return null;
  const count = a.heading_deg.length;
  const slides = a.rail_deg[Math.round((heading * count) / 360) % count] !== null;
  const first = slides ? a.slide_deg.likely : tip;
  return { slides, deg: a.goes_at_deg === null ? first : (around(a.heading_deg, a.goes_at_deg, heading) ?? first) };
}

type Range = [number, number];

/** The 95 % range of the tip of one of the four ways, as far as it is known. */
export function rangeOf(way: TipAnswer | null | undefined): Range | null {
  const [low, high] = way?.compliant_range_deg ?? way?.rail_range_deg ?? [null, null];
  return low === null || high === null ? null : [low, high];
}

/** Over this many degrees one number would promise too much. */
const WIDE = 2;
export const isWide = (range: Range | null): range is Range => range !== null && range[1] - range[0] > WIDE;

/** An angle in figures: one number where it is known well, else its range. */
export const spoken = (deg: number | null, range: Range | null): string =>
  isWide(range) ? `${fixed(range[0], 0)}–${fixed(range[1], 0)}` : fixed(deg);

/** The row of the drive pack, where the file says which part it is. */
export const packOf = (): number | null => store.bench.rows.find((r) => r.name === store.bench.scene.pack)?.row ?? null;
