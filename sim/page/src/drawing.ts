// Side and rear view to scale, with the map of where a gram helps underneath and weights to drag.

import { attempt, commit, revert } from "./edits";
import { drawnInSoftware, el, fixed, svg } from "./dom";
import { extent, lookOf, outline, Outlines, pathData, PROJECT } from "./outline";
import { placeAt, placing } from "./newpart";
import { afterTheMap, DIRECTIONS, look, on, store, type Direction } from "./store";
import type { Edit, Pair, Part, Row, Triple } from "./types";

const MARGIN = 16;
const GRID: Pair = [60, 32];

let painted = { light: "", helps: [0, 0, 0], hurts: [0, 0, 0] };

/** The two colours of the map, read from the sheet's style once for day and once for night. */
function paints(): typeof painted {
  const light = document.documentElement.dataset["light"] ?? "";
  if (painted.light !== light) {
    const style = getComputedStyle(document.documentElement);
    const read = (name: string): number[] => {
      const hex = style.getPropertyValue(name).trim();
      return [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));
    };
    painted = { light, helps: read("--helps"), hurts: read("--hurts") };
  }
  return painted;
}

/** Degrees per 10 g at a place, on what carries it; for all directions the least of the four. */
export function gainAt(direction: Direction, p: Triple, carrier = "chassis"): number {
  const one = (name: string): number => {
    const c = store.answers.gain[name]?.[carrier];
    return c ? c[0] + c[1] * p[0] + c[2] * p[1] + c[3] * p[2] : 0;
  };
  return direction === "all" ? Math.min(...Object.keys(DIRECTIONS).map(one)) : one(direction);
}

export class Drawing {
  readonly figure: HTMLElement;
  private readonly root: SVGSVGElement;
  private readonly field = svg("image", { preserveAspectRatio: "none" });
  private readonly ground = svg("g");
  private readonly parts: Outlines;
  private readonly truck = svg("g");
  private readonly grips = svg("g");
  private readonly ghost = svg("g", { class: "ghost" });
  private readonly canvas = document.createElement("canvas");
  private box: [number, number, number, number] = [0, 0, 1, 1];
  private held: { part: Part; row: Row; from: Pair; moved: Pair } | null = null;

  constructor(private readonly face: "side" | "rear") {
    const name = face === "side" ? "Side view, nose to the right" : "Rear view";
    this.parts = new Outlines(face, 1, true);
    this.root = svg("svg", { class: "view", role: "group", "aria-label": name }, this.field, this.ground, this.parts.root, this.ghost, this.truck, this.grips);
    this.figure = el("figure", {}, this.root, el("figcaption", {}, name));
    [this.canvas.width, this.canvas.height] = GRID;
    on("bench", () => (this.box = this.frame()));
    on("shown", afterTheMap(() => this.draw(), () => (this.held ? 0 : drawnInSoftware() ? 2000 : 50)));
    on("pick", () => this.draw());
    let direction = store.view.direction;
    on("view", () => {
      if (store.view.direction !== direction) this.paintField();
      direction = store.view.direction;
    });
    this.box = this.frame();
    this.draw();
    this.root.addEventListener("pointermove", (e) => this.drag(e));
    for (const end of ["pointerup", "pointercancel"]) this.root.addEventListener(end, () => this.drop());
    this.root.addEventListener("click", (e) => {
      if (placing()) {
        const [u, v] = this.point(e);
        return placeAt(this.face === "side" ? [u, null, -v] : [null, -u, -v]);
      }
      const row = (e.target as Element).getAttribute("data-row");
      if (row !== null && !this.held) look({ row: Number(row) });
    });
  }

  private frame(): [number, number, number, number] {
    const [l, , r] = extent(store.scene, this.face);
    const top = Math.min(extent(store.scene, "side")[1], extent(store.scene, "rear")[1]);
    return [l - MARGIN, top - MARGIN, r + MARGIN, MARGIN];
  }

  private draw(): void {
    const scene = store.scene;
    const [l, t, r, b] = this.box;
    this.root.setAttribute("viewBox", `${l} ${t} ${r - l} ${b - t}`);
    // Both views at one scale: widths share the row as the drawings do.
    this.figure.style.flexGrow = String(Math.round(r - l));
    const shapes: SVGElement[] = [svg("path", { class: "ground", d: `M${l} 0H${r}` })];
    for (const axle of scene.axles) {
      if (this.face === "side") shapes.push(svg("circle", { class: "tyre", cx: axle.x_mm, cy: -axle.radius_mm, r: axle.radius_mm }));
      else for (const s of [-1, 1]) {
        shapes.push(svg("rect", { class: "tyre", x: (s * axle.track_mm - axle.width_mm) / 2, y: -2 * axle.radius_mm, width: axle.width_mm, height: 2 * axle.radius_mm }));
      }
    }
    this.parts.draw(scene.parts, store.view.row);
    this.drawGhost();
    this.ground.replaceChildren(...shapes.splice(0));
    for (const line of this.face === "side" ? [scene.wedge_mm[0]!, scene.wedge_mm[2]!] : [scene.wedge_mm[1]!, scene.wedge_mm[3]!]) {
      shapes.push(this.wedge(line));
    }
    const [cx, cy] = PROJECT[this.face](scene.cg_mm);
    shapes.push(svg("g", { transform: `translate(${cx} ${cy})` }, svg("circle", { r: 7, class: "cg-back" }),
      svg("path", { d: "M0 0V-7A7 7 0 0 1 7 0ZM0 0V7A7 7 0 0 1 -7 0Z", class: "cg-dark" }), svg("circle", { r: 7, class: "cg-ring" })));
    this.truck.replaceChildren(...shapes);
    // While a weight is dragged the map underneath stays: it moves little, and painting it is slow.
    if (!store.trying) this.paintField();
    this.drawGrips();
  }

  /** Where the truck compared with has its parts otherwise, and its CG. */
  private drawGhost(): void {
    const then = store.bench.before?.scene;
    if (!then) return this.ghost.replaceChildren();
    const now = new Set(store.scene.parts.map(lookOf));
    const [cx, cy] = PROJECT[this.face](then.cg_mm);
    this.ghost.replaceChildren(
      ...then.parts.filter((p) => p.shape && !now.has(lookOf(p))).map((p) => svg("path", { d: pathData(outline(p, this.face)) })),
      svg("path", { d: `M${cx - 9} ${cy}H${cx + 9}M${cx} ${cy - 9}V${cy + 9}` }));
  }

  /** From the tip line through the CG to the edge of the sheet: below it a gram helps. */
  private wedge([foot, top]: [Pair, Pair]): SVGElement {
    const flip = this.face === "rear" ? -1 : 1;
    const reach = (-this.box[1] + 40) / Math.max(1, top[1] - foot[1]);
    const [dx, dz] = [(top[0] - foot[0]) * reach, (top[1] - foot[1]) * reach];
    return svg("path", { class: "wedge", d: `M${flip * foot[0]} ${-foot[1]}L${flip * (foot[0] + dx)} ${-(foot[1] + dz)}` });
  }

  private paintField(): void {
    const [l, t, r, b] = this.box;
    const [w, h] = GRID;
    const { helps, hurts } = paints();
    const picture = new ImageData(w, h);
    const cg = store.scene.cg_mm;
    for (let j = 0; j < h; j++) for (let i = 0; i < w; i++) {
      const [u, v] = [l + ((i + 0.5) / w) * (r - l), t + ((j + 0.5) / h) * (b - t)];
      const p: Triple = this.face === "side" ? [u, cg[1], -v] : [cg[0], -u, -v];
      const gain = v > 0 ? 0 : gainAt(store.view.direction, p);
      const [red, green, blue] = gain > 0 ? helps : hurts;
      // In steps, so that the lines of equal gain can be seen and counted.
      const step = Math.min(6, Math.ceil(Math.abs(gain) / 0.05));
      picture.data.set([red!, green!, blue!, v > 0 ? 0 : step * 24], 4 * (j * w + i));
    }
    this.canvas.getContext("2d")!.putImageData(picture, 0, 0);
    this.field.setAttribute("href", this.canvas.toDataURL());
    for (const [k, v] of Object.entries({ x: l, y: t, width: r - l, height: b - t })) this.field.setAttribute(k, String(v));
  }

  private movable(): { part: Part; row: Row } | null {
    const row = store.bench.rows.find((one) => one.row === store.view.row);
    const part = store.scene.parts.find((p) => p.row === store.view.row);
    return row && part && row.at_mm && row.here ? { part, row } : null;
  }

  private drawGrips(): void {
    const found = this.movable();
    if (!found) return this.grips.replaceChildren();
    const [x, y] = PROJECT[this.face](found.part.cg_mm);
    let grip = this.grips.firstElementChild as SVGGElement | null;
    if (!grip) {
      grip = svg("g", { role: "slider", tabindex: 0, "data-key": `grip-${this.face}`, "aria-valuenow": 0 },
        svg("circle", { r: 18, class: "handle-reach" }), svg("circle", { r: 7, class: "handle" }));
      grip.addEventListener("pointerdown", (e) => this.take(e));
      grip.addEventListener("keydown", (e) => this.nudge(e));
      this.grips.append(grip);
    }
    grip.setAttribute("transform", `translate(${x} ${y})`);
    const at = found.row.at_mm!;
    grip.setAttribute("aria-label", `${found.row.name}, ${this.face === "side" ? "along and up" : "across and up"}: arrow keys move it a millimetre`);
    grip.setAttribute("aria-valuetext", `${fixed(at[0])} ahead, ${fixed(at[1])} left, ${fixed(at[2])} up`);
  }

  private point(e: MouseEvent): Pair {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(this.root.getScreenCTM()!.inverse());
    return [p.x, p.y];
  }

  private take(e: PointerEvent): void {
    const found = this.movable();
    if (!found) return;
    e.preventDefault();
    this.root.setPointerCapture(e.pointerId);
    this.held = { ...found, from: this.point(e), moved: [0, 0] };
  }

  private drag(e: PointerEvent): void {
    if (!this.held) return;
    const [x, y] = this.point(e);
    const moved: Pair = [Math.round(x - this.held.from[0]), Math.round(y - this.held.from[1])];
    if (moved[0] === this.held.moved[0] && moved[1] === this.held.moved[1]) return;
    this.held.moved = moved;
    attempt(this.moveEdit(this.held.row, this.held.part, moved));
  }

  private drop(): void {
    const held = this.held;
    if (!held) return;
    this.held = null;
    if (held.moved[0] === 0 && held.moved[1] === 0) return;
    void commit(this.moveEdit(held.row, held.part, held.moved), `moved ${held.row.name}`).then((taken) => { if (!taken) revert(); });
  }

  private nudge(e: KeyboardEvent): void {
    const step = e.shiftKey ? 10 : 1;
    const moves: Record<string, Pair> = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] };
    const move = moves[e.key];
    const found = this.movable();
    if (!move || !found) return;
    e.preventDefault();
    void commit(this.moveEdit(found.row, found.part, move), `moved ${found.row.name}`);
  }

  /** The file's place after a move in this view, axis by axis. A mirrored piece moves the other
   * way across. */
  private moveEdit(row: Row, part: Part, [dx, dy]: Pair): Edit[] {
    const at = row.at_mm!;
    const edit = (axis: "x" | "y" | "z", value: number): Edit => ({ do: "set", part: row.name, key: `at_mm.${axis}`, value: Number(value.toFixed(3)) });
    const edits: Edit[] = [];
    if (dx && this.face === "side") edits.push(edit("x", at[0] + dx));
    if (dx && this.face === "rear") edits.push(edit("y", at[1] + (part.mirrored ? dx : -dx)));
    if (dy || !dx) edits.push(edit("z", at[2] - dy));
    return edits;
  }
}
