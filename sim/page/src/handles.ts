// The picked part in three dimensions: dragged along an axis or in a plane, or moved by arrow keys,
// with what it does read out beside it.

import { frozen } from "./api";
import { attempt, commit, revert } from "./edits";
import { el, fixed, put, signed, svg } from "./dom";
import { DIRECTIONS, goes, on, store } from "./store";
import type { Edit, Pair, Part, Row, Triple } from "./types";

export type Along = "ahead" | "left" | "up" | "side" | "floor" | "rear";
export const ALONG: Record<Along, { axes: number[]; words: string }> = {
  ahead: { axes: [0], words: "ahead, back" },
  left: { axes: [1], words: "left, right" },
  up: { axes: [2], words: "up, down" },
  side: { axes: [0, 2], words: "side plane" },
  rear: { axes: [1, 2], words: "rear plane" },
  floor: { axes: [0, 1], words: "floor plane" },
};
const AXES: Along[] = ["ahead", "left", "up"];
const WORDS: [string, string][] = [["ahead", "back"], ["left", "right"], ["up", "down"]];
const ARM = 52; // px of a handle
const END_ON = 0.25; // of a millimetre's length on the screen, under which an axis is seen end-on

/** Where a place on a body is drawn, px. */
export type Drawn = (place: Triple, carrier: string) => Pair;

interface Held {
  part: Part;
  row: Row;
  along: Along;
  from: Pair;
  moved: Triple;
  /** px of a millimetre along each axis. */
  pixels: Pair[];
}

export class Handles {
  along: Along = "side";
  private readonly root: SVGSVGElement;
  private readonly grip: SVGGElement;
  private readonly arms = AXES.map((along) => this.arm(along));
  private readonly readout = el("div", { class: "stage-readout", "aria-hidden": "true", hidden: true });
  private held: Held | null = null;
  private readTimer = 0;

  constructor(private readonly holder: HTMLElement, private readonly drawn: Drawn, private readonly changed: () => void, private readonly back: () => void) {
    this.grip = svg("g", { role: "slider", tabindex: -1, id: "grip-3d", class: "grip-3d", "aria-valuenow": 0 },
      svg("circle", { r: 15, class: "handle-reach" }), svg("circle", { r: 6, class: "handle" }));
    this.root = svg("svg", { class: "handles", role: "group", "aria-label": "The picked part on the table" }, ...this.arms.map((a) => a.root), this.grip);
    holder.append(this.root, this.readout);
    this.grip.addEventListener("pointerdown", (e) => this.take(e, this.along));
    this.grip.addEventListener("keydown", (e) => this.nudge(e));
    this.root.addEventListener("pointermove", (e) => this.drag(e));
    for (const end of ["pointerup", "pointercancel"]) this.root.addEventListener(end, () => this.drop());
    on("bench", () => { if (!this.held) this.say(null); });
    on("shown", () => { if (this.held) this.read(this.held); });
  }

  /** The picked part and its row, where it can be moved at all. */
  movable(): { part: Part; row: Row } | null {
    if (frozen) return null;
    const row = store.bench?.rows.find((one) => one.row === store.view.row);
    const part = store.scene?.parts.find((p) => p.row === store.view.row);
    return row && part && row.at_mm && row.here ? { part, row } : null;
  }

  focus(): void {
    if (this.movable()) this.grip.focus();
  }

  /** The next way to move. */
  next(): void {
    const ways = Object.keys(ALONG) as Along[];
    this.choose(ways[(ways.indexOf(this.along) + 1) % ways.length]!);
  }

  choose(along: Along): void {
    this.along = along;
    this.changed();
  }

  private arm(along: Along): { root: SVGGElement; line: SVGPathElement; tip: SVGCircleElement; name: SVGTextElement } {
    const [line, tip, name] = [svg("path"), svg("circle", { r: 7 }), svg("text", {}, along)];
    const root = svg("g", { class: "arm", "aria-hidden": "true" }, line, tip, name);
    root.addEventListener("pointerdown", (e) => this.take(e, along));
    return { root, line, tip, name };
  }

  /** Puts the handles where the picked part is drawn; hidden while the truck falls. */
  place(falling: boolean): void {
    const found = falling ? null : this.movable();
    this.root.toggleAttribute("hidden", !found);
    if (!found) return;
    const { part, row } = found;
    const at = this.drawn(part.cg_mm, part.carrier);
    const pixels = this.pixels(part);
    const most = Math.max(...pixels.map((p) => Math.hypot(...p)));
    this.grip.setAttribute("transform", `translate(${at[0].toFixed(1)} ${at[1].toFixed(1)})`);
    this.arms.forEach((arm, i) => {
      const [dx, dy] = pixels[i]!;
      const length = Math.hypot(dx, dy);
      arm.root.toggleAttribute("hidden", length < END_ON * most);
      const [x, y] = [at[0] + (dx / length) * ARM, at[1] + (dy / length) * ARM];
      arm.line.setAttribute("d", `M${at[0].toFixed(1)} ${at[1].toFixed(1)}L${x.toFixed(1)} ${y.toFixed(1)}`);
      for (const [node, a, b] of [[arm.tip, "cx", "cy"], [arm.name, "x", "y"]] as const) {
        node.setAttribute(a, x.toFixed(1));
        node.setAttribute(b, (y - (node === arm.name ? 10 : 0)).toFixed(1));
      }
      arm.root.classList.toggle("chosen", ALONG[this.along].axes.includes(i));
    });
    const [ahead, left, up] = row.at_mm!;
    const { axes, words } = ALONG[this.along];
    const keys = axes.length === 1 ? "arrow keys move it a millimetre" : `left and right move it ${WORDS[axes[0]!]!.join(" or ")}, up and down ${WORDS[axes[1]!]!.join(" or ")}, a millimetre each`;
    const more = ". M changes the way, Escape goes back to the table.";
    this.grip.setAttribute("aria-label", `${row.name} in three dimensions, ${words}: ${keys}${more}`);
    this.grip.setAttribute("aria-valuetext", `${fixed(ahead)} ahead, ${fixed(left)} left, ${fixed(up)} up`);
  }

  private pixels(part: Part): Pair[] {
    const at = this.drawn(part.cg_mm, part.carrier);
    return [0, 1, 2].map((i) => {
      const to = [...part.cg_mm] as Triple;
      to[i]! += 20;
      const [x, y] = this.drawn(to, part.carrier);
      return [(x - at[0]) / 20, (y - at[1]) / 20] as Pair;
    });
  }

  /** Begins a drag; says whether there is anything to drag. */
  take(e: PointerEvent, along: Along = this.along): boolean {
    const found = this.movable();
    if (!found) return false;
    e.preventDefault();
    e.stopPropagation();
    this.root.setPointerCapture(e.pointerId);
    if (along !== this.along) this.choose(along);
    this.held = { ...found, along, from: [e.clientX, e.clientY], moved: [0, 0, 0], pixels: this.pixels(found.part) };
    this.read(this.held);
    return true;
  }

  private drag(e: PointerEvent): void {
    const held = this.held;
    if (!held) return;
    const by = shift(held, [e.clientX - held.from[0], e.clientY - held.from[1]]);
    if (by.every((v, i) => v === held.moved[i])) return;
    held.moved = by;
    attempt(edits(held.row, held.part, by));
    this.read(held);
  }

  private drop(): void {
    const held = this.held;
    if (!held) return;
    this.held = null;
    this.say(null);
    if (held.moved.every((v) => v === 0)) return;
    void commit(edits(held.row, held.part, held.moved), `moved ${held.row.name}`).then((taken) => { if (!taken) revert(); });
  }

  private nudge(e: KeyboardEvent): void {
    if (e.key === "Escape" || e.key === "Enter") {
      e.preventDefault();
      return this.back();
    }
    if (e.key === "m") return this.next();
    const found = this.movable();
    const { axes } = ALONG[this.along];
    const step = e.shiftKey ? 10 : 1;
    const [first, second] = [axes[0]!, axes[1] ?? axes[0]!];
    // To the right of a drawing lies the truck's right.
    const right = first === 1 ? -1 : 1;
    const moves: Record<string, [number, number]> = {
      ArrowRight: [first, right * step], ArrowLeft: [first, -right * step], ArrowUp: [second, second === 1 && axes.length === 1 ? -step : step], ArrowDown: [second, second === 1 && axes.length === 1 ? step : -step],
    };
    const move = moves[e.key];
    if (!move || !found) return;
    e.preventDefault();
    const by: Triple = [0, 0, 0];
    by[move[0]] = move[1];
    void commit(edits(found.row, found.part, by), `moved ${found.row.name}`).then((taken) => {
      if (taken) this.read({ ...found, along: this.along, from: [0, 0], moved: by, pixels: [] }, 1600);
    });
  }

  /** Millimetres and degrees beside the part; for a while, or until it is let go. */
  private read(held: Held, ms = 0): void {
    const { moved, row } = held;
    const way = Object.values(DIRECTIONS).find((d) => d.heading === store.view.heading)?.short ?? `Turned ${fixed(store.view.heading, 0)}°`;
    const [now, then] = [goes(store.answers, store.view.heading), goes(store.bench.answers, store.view.heading)];
    const by = now && then && this.held ? ` (${signed(now.deg - then.deg)}°)` : "";
    const places = ALONG[held.along].axes.map((i) => `${moved[i]! < 0 ? WORDS[i]![1] : WORDS[i]![0]} ${fixed(Math.abs(moved[i]!), 0)} mm`);
    this.say([el("b", {}, row.name), places.join(", "),
      now ? `${way} ${now.slides ? "slides" : "tips"} ${store.answers.exact ? "" : "≈ "}${fixed(now.deg)}°${by}` : ""], held, ms);
  }

  private say(words: (string | Node)[] | null, held: Held | null = null, ms = 0): void {
    clearTimeout(this.readTimer);
    this.readout.hidden = words === null;
    if (words === null || !held) return;
    put(this.readout, ...words.map((w) => el("div", {}, w)));
    const now = store.scene.parts.find((p) => p.row === held.row.row) ?? held.part;
    const [x, y] = this.drawn(now.cg_mm, now.carrier);
    const [w, h] = [this.holder.clientWidth, this.holder.clientHeight];
    const { offsetWidth: wide, offsetHeight: high } = this.readout;
    const [left, top] = [x + 26 + wide > w ? x - 26 - wide : x + 26, Math.min(h - high - 4, Math.max(4, y + 18))];
    this.readout.style.transform = `translate(${Math.max(4, left).toFixed(0)}px, ${top.toFixed(0)}px)`;
    if (ms) this.readTimer = window.setTimeout(() => this.say(null), ms);
  }
}

/** Whole millimetres along the axes chosen that bring the part nearest to a shift on the screen. */
function shift(held: Pick<Held, "along" | "pixels">, [x, y]: Pair): Triple {
  const by: Triple = [0, 0, 0];
  const most = Math.max(...held.pixels.map((p) => Math.hypot(...p)));
  const seen = ALONG[held.along].axes.filter((i) => Math.hypot(...held.pixels[i]!) >= END_ON * most);
  const [i, j] = seen;
  if (i === undefined) return by;
  const [a, b] = [held.pixels[i]!, j === undefined ? null : held.pixels[j]!];
  const area = b ? a[0] * b[1] - a[1] * b[0] : 0;
  if (b && j !== undefined && Math.abs(area) > END_ON ** 2 * most ** 2) {
    by[i] = Math.round((x * b[1] - y * b[0]) / area);
    by[j] = Math.round((a[0] * y - a[1] * x) / area);
  } else by[i] = Math.round((x * a[0] + y * a[1]) / (a[0] ** 2 + a[1] ** 2));
  return by;
}

/** The file's place after a move; a mirrored piece moves the other way across. */
function edits(row: Row, part: Part, by: Triple): Edit[] {
  return [0, 1, 2].filter((i) => by[i] !== 0).map((i): Edit => ({
    do: "set", part: row.name, key: `at_mm.${"xyz"[i]}`, value: Number((row.at_mm![i]! + (i === 1 && part.mirrored ? -by[i]! : by[i]!)).toFixed(3)) }));
}
