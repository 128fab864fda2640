// The table without a graphics interface: the flat view that shows the tilt best, turned with it.

import { el, fixed, svg } from "./dom";
import { Outlines, PROJECT, type Face } from "./outline";
import type { Moment, Table } from "./stage";
import { on, store } from "./store";
import type { Pair } from "./types";

export class FlatTable implements Table {
  frames = 0;
  moment: Moment = { theta_deg: 0, poses: [], load_g: [0, 0, 0, 0], cg_mm: null, heading_deg: 0 };
  private readonly views: Record<"side" | "rear", Outlines> = { side: new Outlines("side"), rear: new Outlines("rear") };
  private readonly table = svg("g");
  private readonly truck = svg("g");
  private readonly marks = svg("g");
  private readonly angle = svg("text", { class: "reading", x: -262, y: -12 });
  private over: string | null = null;

  constructor(holder: HTMLElement, canvas: HTMLCanvasElement) {
    canvas.hidden = true;
    this.table.append(svg("path", { class: "ground", d: "M-300 0H300" }), this.truck, this.marks);
    holder.append(
      svg("svg", { class: "flat view", viewBox: "-320 -330 640 400", role: "img", "aria-label": "The truck on the table, as a flat view" },
        svg("path", { class: "wedge", d: "M-300 0H300" }), this.table, this.angle),
      el("p", { class: "flat-note" }, "This browser offers no WebGL, so the truck is drawn flat: from behind where it stands across the slope, from its right side else."));
    on(["shown", "pick"], () => this.render());
  }

  show(moment: Moment, over: string | null = null): void {
    this.moment = moment;
    this.over = over;
    this.render();
  }

  repaint(): void { /* its colours are the sheet's own */ }

  render(): void {
    const scene = store.scene;
    if (!scene) return;
    const { theta_deg: theta, heading_deg: heading } = this.moment;
    const psi = (heading * Math.PI) / 180;
    const face: Face & ("side" | "rear") = Math.abs(Math.sin(psi)) > 0.7 ? "rear" : "side";
    // Left in the drawing is downhill with the left side or, nose to the right, with the rear down.
    const down = (face === "rear" ? Math.sin(psi) : Math.cos(psi)) >= 0 ? -1 : 1;
    this.table.setAttribute("transform", `rotate(${(down * theta).toFixed(2)} ${down * 300} 0)`);
    const view = this.views[face];
    view.draw(scene.parts, store.view.row);
    const ends = scene.tip_points_mm.map(([x, y]) => PROJECT[face]([x, y, 0])[0]);
    const foot = down < 0 ? Math.min(...ends) : Math.max(...ends);
    this.truck.setAttribute("transform", this.over === null ? "" : this.over === "away" ? `translate(${down * 90} 0)` : `rotate(${down * 86} ${foot} 0) translate(0 -14)`);
    this.truck.replaceChildren(view.root);
    const [cx, cy] = PROJECT[face](this.moment.cg_mm ?? scene.cg_mm);
    const loads = this.moment.load_g;
    const pairs: Pair[] = face === "rear" ? [[0, 2], [1, 3]] : [[2, 3], [0, 1]];
    this.marks.replaceChildren(
      svg("g", { transform: `translate(${cx} ${cy})` }, svg("circle", { r: 8, class: "cg-back" }), svg("path", { d: "M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z", class: "cg-dark" }), svg("circle", { r: 8, class: "cg-ring" })),
      ...pairs.map(([a, b], i) => svg("text", { class: "reading", x: (i ? Math.max : Math.min)(...ends), y: 18, "text-anchor": "middle" }, `${fixed(Math.max(0, (loads[a] ?? 0) + (loads[b] ?? 0)), 0)} g`)));
    this.marks.setAttribute("visibility", this.over === null ? "visible" : "hidden");
    this.angle.textContent = `${fixed(theta)}°`;
    this.frames += 1;
  }
}
