// The hill from above: the way over it, stones and ramps, all to be dragged or moved by keys.

import { el, fixed, put, svg } from "./dom";
import type { CourseAsked, CourseEvent, Way, Pair } from "./types";
import { wayAt } from "./courses";

const [WIDE, HIGH] = [1150, 430]; // mm, half the hill shown
const APART = 110; // mm between points of a way drawn by hand

type Kind = "points_mm" | "stones" | "ramps";
interface Picked {
  kind: Kind;
  index: number;
}

export class CourseMap {
  readonly root: HTMLElement;
  private readonly svg = svg("svg", { class: "hill", viewBox: `${-WIDE} ${-HIGH} ${2 * WIDE} ${2 * HIGH}`, role: "group", "aria-label": "The hill from above, uphill at the top" });
  private readonly ground = svg("g");
  private readonly things = svg("g");
  private readonly line = svg("path", { class: "way" });
  private readonly marks = svg("g");
  private readonly cart = svg("g", { class: "cart", visibility: "hidden" }, svg("path", { d: "M-70 -40H60L95 0L60 40H-70Z" }));
  readonly form = el("div", { class: "bar hill-form" });
  private picked: Picked = { kind: "points_mm", index: 0 };
  private held = false;
  private sketch: Pair[] | null = null;
  private drawing = false;

  constructor(public course: CourseAsked, private readonly changed: (done: boolean) => void) {
    const lines = Array.from({ length: 9 }, (_, i) => `M${-WIDE} ${(i - 4) * 100}H${WIDE}`).join("");
    this.ground.append(svg("path", { class: "contour", d: lines }),
      svg("text", { class: "hill-word", x: -WIDE + 20, y: -HIGH + 50 }, "uphill"), svg("text", { class: "hill-word", x: -WIDE + 20, y: HIGH - 22 }, "downhill"));
    this.svg.append(this.ground, this.line, this.things, this.marks, this.cart);
    this.root = el("div", {}, this.svg);
    this.svg.addEventListener("pointerdown", (e) => this.down(e));
    this.svg.addEventListener("pointermove", (e) => this.move(e));
    for (const end of ["pointerup", "pointercancel"]) this.svg.addEventListener(end, () => this.up());
    this.svg.addEventListener("keydown", (e) => this.key(e));
    this.draw();
  }

  take(course: CourseAsked): void {
    this.course = course;
    this.picked = { kind: "points_mm", index: 0 };
    this.draw();
  }

  /** The way rounded off, as it is driven, with what happened on it. */
  show(way: Way | null, events: { whose: string; event: CourseEvent }[]): void {
    this.line.setAttribute("d", path(way ? way.places_mm : this.course.points_mm));
    this.marks.replaceChildren(...(way ? events : []).map(({ whose, event }) => {
      const { place: [x, y], heading } = wayAt(way!, event.at_mm);
      const off = whose === "truck" ? 34 : -34;
      return svg("g", { class: `mark ${event.what.replace(" ", "-")} ${whose}`, transform: `translate(${x + off * -Math.cos(heading)} ${-(y + off * -Math.sin(heading))})` },
        svg("circle", { r: event.what === "lifts" ? 11 : 20 }), svg("title", {}, `${whose === "truck" ? "" : "reference: "}${event.wheel ?? "it"} ${event.what}`));
    }));
  }

  /** The truck's place on the way while it drives. */
  follow(way: Way | null, along: number): void {
    this.cart.setAttribute("visibility", way ? "visible" : "hidden");
    if (!way) return;
    const { place: [x, y], heading } = wayAt(way, along);
    this.cart.setAttribute("transform", `translate(${x.toFixed(1)} ${(-y).toFixed(1)}) rotate(${(-90 - (heading * 180) / Math.PI).toFixed(1)})`);
  }

  /** The next stroke of the pointer is the new way. */
  begin(): void {
    this.drawing = true;
    this.svg.classList.add("drawing");
  }

  add(kind: "stones" | "ramps"): void {
    const { points_mm: points } = this.course;
    const at = points[Math.floor(points.length / 2)]!;
    if (kind === "stones") this.course.stones.push({ at_mm: [at[0] + 60, at[1] + 88], height_mm: 20 });
    else this.course.ramps.push({ at_mm: [...at], turned_deg: -90, angle_deg: 15, flank_mm: 220, top_mm: 140, width_mm: 560 });
    this.pick({ kind, index: this.course[kind].length - 1 });
    this.changed(true);
  }

  private all(): Picked[] {
    return (["points_mm", "stones", "ramps"] as Kind[]).flatMap((kind) => this.course[kind].map((_, index) => ({ kind, index })));
  }

  private place({ kind, index }: Picked): Pair {
    const list = this.course[kind];
    const one = list[index]!;
    return Array.isArray(one) ? one : one.at_mm;
  }

  private put({ kind, index }: Picked, at: Pair): void {
    const kept: Pair = [Math.max(-WIDE, Math.min(WIDE, Math.round(at[0]))), Math.max(-HIGH, Math.min(HIGH, Math.round(at[1])))];
    if (kind === "points_mm") this.course.points_mm[index] = kept;
    else this.course[kind][index]!.at_mm = kept;
  }

  private pick(to: Picked): void {
    this.picked = to;
    this.draw();
  }

  private words({ kind, index }: Picked): string {
    return kind === "points_mm" ? `Point ${index + 1} of the way` : kind === "stones" ? `Stone ${index + 1}` : `Ramp ${index + 1}`;
  }

  private draw(): void {
    const held = document.activeElement === this.things.querySelector("[tabindex='0']");
    const order = [...this.all()].sort((a, b) => (a.kind === "ramps" ? 0 : 1) - (b.kind === "ramps" ? 0 : 1));
    this.things.replaceChildren(...order.map((one) => {
      const [x, y] = this.place(one);
      const chosen = one.kind === this.picked.kind && one.index === this.picked.index;
      const node = svg("g", {
        role: "slider", class: `thing ${one.kind}${chosen ? " picked" : ""}`, tabindex: chosen ? 0 : -1, "data-thing": `${one.kind} ${one.index}`,
        transform: `translate(${x} ${-y})`, "aria-valuenow": 0, "aria-valuetext": `${fixed(x, 0)} mm to the right, ${fixed(y, 0)} up the hill`,
        "aria-label": `${this.words(one)}: arrow keys move it, Page Down goes to the next, Delete takes it away`,
      });
      if (one.kind === "points_mm") node.append(svg("circle", { r: 46, class: "thing-reach" }), svg("circle", { r: 20 }));
      else if (one.kind === "stones") {
        const { height_mm } = this.course.stones[one.index]!;
        node.append(svg("circle", { r: 52, class: "thing-reach" }), svg("ellipse", { rx: 18 + height_mm * 0.8, ry: 16 + height_mm * 0.6 }), svg("text", { y: -30 - height_mm * 0.5 }, `${fixed(height_mm, 0)}`));
      } else node.append(this.ramp(one.index));
      return node;
    }));
    if (held) this.things.querySelector<SVGGElement>("[tabindex='0']")?.focus();
    this.drawForm();
    if (!this.held) this.show(null, []);
  }

  private ramp(index: number): SVGGElement {
    const r = this.course.ramps[index]!;
    const [half, top, wide] = [r.flank_mm + r.top_mm / 2, r.top_mm / 2, r.width_mm / 2];
    return svg("g", { transform: `rotate(${-r.turned_deg})` },
      svg("rect", { x: -wide, y: -half, width: 2 * wide, height: 2 * half }),
      svg("path", { d: `M${-wide} ${-top}H${wide}M${-wide} ${top}H${wide}M0 ${half - 20}V${top + 30}M-26 ${top + 62}L0 ${top + 28}L26 ${top + 62}` }));
  }

  private drawForm(): void {
    const { kind, index } = this.picked;
    const number = (words: string, key: string, unit: string, low: number, high: number, of: Record<string, unknown>): HTMLElement => {
      const input = el("input", { type: "number", "data-key": `hill-${key}`, min: low, max: high, step: 1, value: of[key] });
      input.addEventListener("change", () => {
        if (!input.checkValidity()) return input.reportValidity();
        of[key] = Number(input.value);
        this.draw();
        this.changed(true);
        return true;
      });
      return el("label", {}, `${words} `, input, ` ${unit}`);
    };
    const fields: HTMLElement[] = [];
    if (kind === "stones") fields.push(number("height", "height_mm", "mm", 2, 80, this.course.stones[index]! as unknown as Record<string, unknown>));
    if (kind === "ramps") {
      const of = this.course.ramps[index]! as unknown as Record<string, unknown>;
      fields.push(number("steep", "angle_deg", "°", 1, 45, of), number("up points, from uphill to the left,", "turned_deg", "°", -180, 180, of));
    }
    const out = el("button", { type: "button", "data-key": "hill-remove", disabled: kind === "points_mm" && this.course.points_mm.length < 3, onclick: () => this.remove() }, "Take it away");
    const more = kind === "points_mm" ? el("button", { type: "button", "data-key": "hill-more", onclick: () => this.split() }, "A point after it") : null;
    put(this.form, el("b", {}, this.words(this.picked)), ...fields, more, out);
  }

  private remove(): void {
    const { kind, index } = this.picked;
    if (kind === "points_mm" && this.course.points_mm.length < 3) return;
    this.course[kind].splice(index, 1);
    this.pick({ kind: "points_mm", index: kind === "points_mm" ? Math.max(0, index - 1) : 0 });
    this.changed(true);
  }

  private split(): void {
    const { index } = this.picked;
    const { points_mm: points } = this.course;
    const [a, b] = index + 1 < points.length ? [points[index]!, points[index + 1]!] : [points[index - 1]!, points[index]!];
    points.splice(index + 1 < points.length ? index + 1 : index, 0, [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
    this.pick({ kind: "points_mm", index: index + 1 });
    this.changed(true);
  }

  private point(e: PointerEvent): Pair {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(this.svg.getScreenCTM()!.inverse());
    return [p.x, -p.y];
  }

  private down(e: PointerEvent): void {
    e.preventDefault();
    this.svg.setPointerCapture(e.pointerId);
    if (this.drawing) {
      this.sketch = [this.point(e)];
      return;
    }
    const name = (e.target as Element).closest("[data-thing]")?.getAttribute("data-thing");
    if (!name) return;
    const [kind, index] = name.split(" ") as [Kind, string];
    this.pick({ kind, index: Number(index) });
    this.held = true;
    this.things.querySelector<SVGGElement>("[tabindex='0']")?.focus({ preventScroll: true });
  }

  private move(e: PointerEvent): void {
    const at = this.point(e);
    if (this.sketch) {
      const last = this.sketch[this.sketch.length - 1]!;
      if (Math.hypot(at[0] - last[0], at[1] - last[1]) > APART) this.sketch.push(at);
      this.line.setAttribute("d", path([...this.sketch, at]));
    } else if (this.held) {
      this.put(this.picked, at);
      this.draw();
      this.line.setAttribute("d", path(this.course.points_mm));
      this.changed(false);
    }
  }

  private up(): void {
    const sketch = this.sketch;
    this.sketch = null;
    if (sketch) {
      this.drawing = false;
      this.svg.classList.remove("drawing");
      if (sketch.length > 1) this.course.points_mm = sketch.slice(0, 60).map(([x, y]) => [Math.round(x), Math.round(y)]);
      this.pick({ kind: "points_mm", index: 0 });
    } else if (!this.held) return;
    this.held = false;
    this.changed(true);
  }

  private key(e: KeyboardEvent): void {
    if (!(e.target as Element).hasAttribute("data-thing")) return;
    const step = e.shiftKey ? 50 : 10;
    const all = this.all();
    const here = all.findIndex((one) => one.kind === this.picked.kind && one.index === this.picked.index);
    const go = (by: number): void => this.pick(all[(here + by + all.length) % all.length]!);
    const shift = (dx: number, dy: number): void => {
      const [x, y] = this.place(this.picked);
      this.put(this.picked, [x + dx, y + dy]);
      this.draw();
      this.changed(true);
    };
    const keys: Record<string, () => void> = {
      ArrowLeft: () => shift(-step, 0), ArrowRight: () => shift(step, 0), ArrowUp: () => shift(0, step), ArrowDown: () => shift(0, -step),
      PageDown: () => go(1), PageUp: () => go(-1), Delete: () => this.remove(),
    };
    if (!keys[e.key]) return;
    e.preventDefault();
    keys[e.key]!();
  }
}

const path = (points: Pair[]): string => `M${points.map(([x, y]) => `${x.toFixed(0)} ${(-y).toFixed(0)}`).join("L")}`;
