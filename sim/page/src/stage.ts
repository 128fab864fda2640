// The truck on its tilt table in three dimensions: paper, ink and no perspective.

import {
  BufferAttribute,
  Group,
  Mesh,
  OrthographicCamera,
  Raycaster,
  Scene as World,
  Vector2,
  Vector3,
  WebGLRenderer,
  type LineSegments,
} from "three";
import { byId, calm, drawnFlat, drawnInSoftware, el, fixed, svg } from "./dom";
import { fate, lieAt, type Fate } from "./fate";
import { empty, Figure, flat, KINDS, lines, Paints, WHEELS } from "./figure";
import { FlatTable } from "./flat";
import { Handles } from "./handles";
import { solid } from "./solids";
import { FROM, makeStageBar, type From, type Looked } from "./stagebar";
import { afterTheMap, look, on, packOf, store } from "./store";
import type { Pair, Part, PathPoint, Triple } from "./types";

const HINGE = 250; // mm from the middle of the table to its hinge
const HALF = 210; // mm, half its width
const BOARD = 12; // mm, its thickness
const ROOM = 300; // mm of floor below the table
const CORNER = -62; // deg, from where the table is looked at unless otherwise wanted

/** Where everything is: table angle, pose of each body, loads, CG in truck axes. */
export interface Moment {
  theta_deg: number;
  poses: number[][];
  load_g: number[];
  cg_mm: Triple | null;
  heading_deg: number;
}

/** What shows the truck on the table. over: the tip line it has gone over, or "away" where it has
 * slid away. */
export interface Table {
  frames: number;
  moment: Moment;
  show(moment: Moment, over?: string | null): void;
  repaint(): void;
  render(): void;
}

export class Stage implements Table, Looked {
  private readonly world = new World();
  private readonly camera = new OrthographicCamera(-1, 1, 1, -1, -4000, 4000);
  private readonly renderer: WebGLRenderer;
  private readonly paints = new Paints();
  private readonly figure = new Figure(this.paints);
  private readonly table = new Group();
  private readonly turn = new Group();
  private readonly fall = this.figure.root;
  private readonly bodies = this.figure.bodies;
  private readonly columns: Mesh[] = [];
  private readonly tipLines = new Group();
  private readonly plumb: LineSegments;
  private readonly labels: { root: HTMLElement; grams: HTMLElement }[] = [];
  private readonly mark: SVGSVGElement;
  private readonly tags: Record<"cg" | "pack", HTMLElement>;
  private readonly angle: HTMLElement;
  private readonly handles: Handles;
  private readonly bar: { follow(): void; root: HTMLElement };
  private azimuth = CORNER;
  private elevation = FROM.corner.up;
  private zoom = 1;
  from: From | null = "corner";
  glass = false;
  private wanted = false;
  /** Without a graphics card: plain while things move, fine once they rest. */
  private readonly slow: boolean;
  private fine = true;
  private restTimer = 0;
  /** How it falls, frame by frame, and since when, s; none while it stands. */
  private falls: ({ key: string } & Fate) | null = null;
  private fallen = 0;
  private fallTimer = 0;
  private size = new Vector2(1, 1);
  /** Frames drawn since the page opened; replay reads it to say how it keeps up. */
  frames = 0;
  moment: Moment = { theta_deg: 0, poses: [], load_g: [0, 0, 0, 0], cg_mm: null, heading_deg: 0 };

  constructor(private readonly holder: HTMLElement, private readonly canvas: HTMLCanvasElement) {
    this.slow = drawnInSoftware();
    this.renderer = new WebGLRenderer({ canvas, antialias: !this.slow, powerPreference: "low-power" });
    this.camera.up.set(0, 0, 1);
    this.world.add(this.table);
    this.turn.position.set(HINGE, 0, 0);
    this.table.position.set(-HINGE, 0, 0);
    this.table.add(this.turn);
    this.turn.add(this.fall, this.tipLines);
    this.furnish();
    this.plumb = lines([0, 0, 0, 0, 0, 1], this.paints.line("over"));
    this.world.add(this.plumb);
    this.mark = svg("svg", { class: "cg-mark", viewBox: "-10 -10 20 20", "aria-hidden": "true" },
      svg("circle", { r: 8, class: "cg-back" }),
      svg("path", { d: "M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z", class: "cg-dark" }),
      svg("circle", { r: 8, class: "cg-ring" }));
    this.angle = el("div", { class: "stage-angle", "aria-hidden": "true" });
    const tag = (words: string): HTMLElement => el("div", { class: `stage-tag ${words}`, "aria-hidden": "true" }, words === "cg" ? "CG" : words);
    this.tags = { cg: tag("cg"), pack: tag("pack") };
    holder.append(this.mark, this.tags.cg, this.tags.pack, this.angle, key());
    for (const wheel of WHEELS) {
      const grams = el("b");
      const root = el("div", { class: "stage-load", "aria-hidden": "true", title: `load on the ${wheel} wheel` }, el("span", {}, `${wheel} `), grams);
      this.labels.push({ root, grams });
      holder.append(root);
    }
    this.handles = new Handles(holder, (place, carrier) => this.drawnAt(place, carrier), () => { this.bar.follow(); this.draw(); }, () => this.canvas.focus());
    this.bar = makeStageBar(this, this.handles);
    holder.before(this.bar.root);
    this.repaint();
    this.listen();
    new ResizeObserver(() => this.resize()).observe(holder);
    this.resize();
  }

  private listen(): void {
    on("shown", afterTheMap(() => this.build(), () => (this.slow ? 2000 : 50)));
    on("pick", () => this.build());
    let from: { x: number; y: number; far: boolean } | null = null;
    this.canvas.addEventListener("pointerdown", (e) => {
      // The picked part itself is as good a handle as any.
      if (this.partsAt(e)[0]?.row === store.view.row && this.handles.take(e)) return;
      from = { x: e.clientX, y: e.clientY, far: false };
      this.canvas.setPointerCapture(e.pointerId);
    });
    this.canvas.addEventListener("pointermove", (e) => {
      if (!from) return;
      const [dx, dy] = [e.clientX - from.x, e.clientY - from.y];
      if (!from.far && Math.hypot(dx, dy) < 4) return;
      from = { x: e.clientX, y: e.clientY, far: true };
      this.orbit(-dx * 0.4, dy * 0.4);
    });
    this.canvas.addEventListener("pointerup", (e) => {
      if (from && !from.far) this.pickAt(e);
      from = null;
    });
    this.canvas.addEventListener("pointercancel", () => (from = null));
    this.canvas.addEventListener("wheel", (e) => {
      e.preventDefault();
      this.enlarge(Math.exp(-e.deltaY * 0.001));
    }, { passive: false });
    this.canvas.addEventListener("keydown", (e) => {
      const step = e.shiftKey ? 20 : 5;
      const moves: Record<string, () => void> = {
        ArrowLeft: () => this.orbit(-step, 0), ArrowRight: () => this.orbit(step, 0),
        ArrowUp: () => this.orbit(0, step), ArrowDown: () => this.orbit(0, -step),
        "+": () => this.enlarge(1.15), "=": () => this.enlarge(1.15), "-": () => this.enlarge(1 / 1.15),
        Home: () => { this.zoom = 1; this.look("corner"); },
        t: () => this.seeThrough(!this.glass), Enter: () => this.handles.focus(), Escape: () => look({ row: null }),
      };
      (Object.keys(FROM) as From[]).forEach((from, i) => { moves[String(i + 1)] = () => this.look(from); });
      const move = moves[e.key];
      if (move) { e.preventDefault(); move(); }
    });
    this.canvas.addEventListener("webglcontextlost", (e) => e.preventDefault());
    this.canvas.addEventListener("webglcontextrestored", () => this.draw());
  }

  orbit(azimuth: number, elevation: number): void {
    this.azimuth += azimuth;
    this.elevation = Math.max(-5, Math.min(88, this.elevation + elevation));
    this.from = null;
    this.bar.follow();
    this.draw();
  }

  /** Looks from one of the usual places; it stays so as the truck turns on the table. */
  look(from: From): void {
    this.from = from;
    this.bar.follow();
    this.draw();
  }

  /** The body as of glass, with pack and picked part in it as they are. */
  seeThrough(yes: boolean): void {
    this.glass = yes;
    this.bar.follow();
    this.build();
  }

  private enlarge(factor: number): void {
    this.zoom = Math.max(0.5, Math.min(4, this.zoom * factor));
    this.draw();
  }

  /** Takes the colours of the light or dark sheet. */
  repaint(): void {
    this.paints.repaint();
    this.world.background = this.paints.ink.paper;
    if (store.scene) this.build();
    this.draw();
  }

  /** The table, its hinge, the bench it stands on, and the arc that shows the angle. */
  private furnish(): void {
    const board = solid({ kind: "box", size_mm: [2 * HINGE, 2 * HALF, BOARD] });
    const lift = (p: number[], x: number, z: number): number[] => p.map((v, i) => (i % 3 === 0 ? v + x : i % 3 === 2 ? v + z : v));
    const slab = new Mesh(flat(lift(board.triangles, HINGE, -BOARD / 2)), this.paints.fill("board", 2));
    const grid: number[] = [];
    for (let x = 50; x < 2 * HINGE; x += 50) grid.push(x, -HALF, 0.4, x, HALF, 0.4);
    for (let y = -200; y <= 200; y += 50) grid.push(0, y, 0.4, 2 * HINGE, y, 0.4);
    this.table.add(slab, lines(lift(board.lines, HINGE, -BOARD / 2), this.paints.line("ink")), lines(grid, this.paints.line("faint")));
    const arc: number[] = [];
    const at = (r: number, deg: number): Triple => [r * Math.cos(rad(deg)) - HINGE, -HALF, r * Math.sin(rad(deg)) - BOARD];
    for (let deg = 0; deg < 90; deg += 2) arc.push(...at(150, deg), ...at(150, deg + 2));
    for (let deg = 0; deg <= 90; deg += 5) arc.push(...at(150, deg), ...at(deg % 10 ? 155 : 162, deg));
    const foot: number[] = [];
    for (const y of [-HALF, HALF]) foot.push(-HINGE - ROOM, y, -BOARD, HINGE, y, -BOARD);
    foot.push(-HINGE - ROOM, -HALF, -BOARD, -HINGE - ROOM, HALF, -BOARD);
    foot.push(-HINGE, -HALF, -BOARD, -HINGE, HALF, -BOARD, HINGE, -HALF, -BOARD, HINGE, HALF, -BOARD);
    this.world.add(lines(arc, this.paints.line("ink")), lines(foot, this.paints.line("faint")));
    for (let i = 0; i < 4; i++) {
      const column = new Mesh(flat(lift(solid({ kind: "box", size_mm: [9, 9, 1] }).triangles, 0, 0.5)), this.paints.fill("load"));
      this.columns.push(column);
      this.turn.add(column);
    }
  }

  /** The truck's meshes after an edit or a pick, and its tip lines. */
  private build(): void {
    const scene = store.scene;
    if (!scene) return;
    this.figure.dress(scene, { picked: store.view.row, pack: packOf(), glass: this.glass, before: store.bench.before?.scene ?? null });
    empty(this.tipLines);
    const points = scene.tip_points_mm;
    const order = [0, 1, 3, 2];
    order.forEach((a, k) => this.tipLines.add(this.strip(points[a]!, points[order[(k + 1) % 4]!]!)));
    this.draw();
  }

  /** A tip line on the table, wide enough to see. */
  private strip(a: [number, number], b: [number, number]): Mesh {
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = Math.hypot(dx, dy) || 1;
    const [nx, ny] = [(-dy / length) * 1.3, (dx / length) * 1.3];
    const corner = (p: [number, number], s: number): Triple => [p[0] + s * nx, p[1] + s * ny, 0.8];
    const [p, q, r, s] = [corner(a, 1), corner(a, -1), corner(b, -1), corner(b, 1)];
    return new Mesh(flat([...p, ...q, ...r, ...p, ...r, ...s]), this.paints.fill("over"));
  }

  /** The parts under the pointer, the nearest first. */
  private partsAt(e: PointerEvent): Part[] {
    const box = this.canvas.getBoundingClientRect();
    const at = new Vector2(((e.clientX - box.left) / box.width) * 2 - 1, 1 - ((e.clientY - box.top) / box.height) * 2);
    const ray = new Raycaster();
    ray.setFromCamera(at, this.camera);
    const hits = ray.intersectObjects(this.bodies, true).filter((h) => h.object instanceof Mesh);
    const parts = hits.map((h) => (h.object.userData["owner"] as Part[])[h.faceIndex ?? 0]!).filter((p) => p.row >= 0);
    return parts.filter((p, i) => parts.findIndex((q) => q.row === p.row) === i);
  }

  /** Picks the nearest part, and with the body of glass the next behind it at every further press. */
  private pickAt(e: PointerEvent): void {
    const rows = this.partsAt(e).map((p) => p.row);
    const here = this.glass ? rows.indexOf(store.view.row ?? -1) : -1;
    look({ row: rows[(here + 1) % Math.max(1, rows.length)] ?? null });
  }

  /** Puts everything where the moment says. over: the truck has gone over this tip line. */
  show(moment: Moment, over: string | null = null): void {
    this.moment = moment;
    this.table.rotation.y = -rad(moment.theta_deg);
    this.turn.rotation.z = rad(moment.heading_deg);
    this.figure.pose(moment.poses);
    this.topple(over);
    this.draw();
  }

  /** Lets it fall or slide from where it stands now, or stands it up again. */
  private topple(over: string | null): void {
    cancelAnimationFrame(this.fallTimer);
    if (over === null || !store.scene) {
      this.falls = null;
      this.fallen = 0;
      this.fall.position.set(0, 0, 0);
      this.fall.quaternion.identity();
      return;
    }
    const key = `${over} ${this.moment.theta_deg.toFixed(2)} ${this.moment.heading_deg} ${store.bench.truck} ${JSON.stringify(this.moment.poses[0] ?? [])}`;
    if (this.falls?.key !== key) this.falls = { key, ...fate(this.figure.corners(), this.moment, over, { hinge: HINGE, board: BOARD }) };
    const end = (this.falls.frames.length - 1) / 60;
    if (calm()) this.fallen = end;
    const start = performance.now() - this.fallen * 1000;
    const step = (now: number): void => {
      this.fallen = Math.min(end, Math.max(0, (now - start) / 1000));
      lieAt(this.fall, this.falls!, this.fallen);
      this.draw();
      if (this.fallen < end) this.fallTimer = requestAnimationFrame(step);
    };
    step(performance.now());
  }

  /** Where a place on a body is drawn, px. */
  private drawnAt(place: Triple, carrier: string): Pair {
    const body = this.bodies[["chassis", "front axle", "rear axle", ...WHEELS].indexOf(carrier)] ?? this.bodies[0]!;
    const p = body.localToWorld(new Vector3(...place)).project(this.camera);
    return [((p.x + 1) / 2) * this.size.x, ((1 - p.y) / 2) * this.size.y];
  }

  private resize(): void {
    const { clientWidth: w, clientHeight: h } = this.holder;
    if (w < 2 || h < 2) return;
    this.size.set(w, h);
    this.sharpen(this.fine);
    this.draw();
  }

  private sharpen(fine: boolean): void {
    this.fine = fine;
    this.renderer.setPixelRatio(this.slow ? (fine ? 2 : 1) : Math.min(devicePixelRatio, 2));
    this.renderer.setSize(this.size.x, this.size.y, false);
  }

  draw(): void {
    if (this.slow) {
      if (this.fine) this.sharpen(false);
      clearTimeout(this.restTimer);
      this.restTimer = window.setTimeout(() => {
        this.sharpen(true);
        this.render();
      }, 350);
    }
    if (this.wanted) return;
    this.wanted = true;
    requestAnimationFrame(() => {
      this.wanted = false;
      this.render();
    });
  }

  /** Draws now; replay calls it itself, once a frame. */
  render(): void {
    const { x: w, y: h } = this.size;
    const theta = rad(this.moment.theta_deg);
    // Keeps the truck in the middle while the table rises.
    const target = new Vector3(-HINGE + HINGE * Math.cos(theta) - 55 * Math.sin(theta), 0, HINGE * Math.sin(theta) + 55 * Math.cos(theta));
    if (this.falls) { // and follows it down, most of the way
      this.world.updateMatrixWorld();
      target.lerp(this.fall.localToWorld(this.falls.cg.clone()), 0.75);
    }
    const reach = (w / h > 1 ? 285 : 285 * Math.min(1.35, h / w)) / this.zoom;
    this.camera.left = (-reach * w) / h;
    this.camera.right = (reach * w) / h;
    this.camera.top = reach;
    this.camera.bottom = -reach;
    if (this.from) {
      const { round, up } = FROM[this.from];
      this.azimuth = round === null ? CORNER : this.moment.heading_deg + round;
      this.elevation = up;
    }
    const [az, up] = [rad(this.azimuth), rad(this.elevation)];
    this.camera.position.copy(target).add(new Vector3(Math.cos(az) * Math.cos(up), Math.sin(az) * Math.cos(up), Math.sin(up)).multiplyScalar(1000));
    this.camera.lookAt(target);
    this.camera.updateProjectionMatrix();
    this.placeLoads();
    this.world.updateMatrixWorld();
    this.placeMarks();
    this.renderer.render(this.world, this.camera);
    this.frames += 1;
  }

  private placeLoads(): void {
    const scene = store.scene;
    if (!scene) return;
    scene.tip_points_mm.forEach((p, i) => {
      const load = Math.max(0, this.moment.load_g[i] ?? 0);
      const axle = scene.axles[i < 2 ? 0 : 1];
      const out = (i % 2 === 0 ? 1 : -1) * (axle.track_mm / 2 + axle.width_mm / 2 + 16);
      this.columns[i]!.position.set(p[0], out, 0);
      this.columns[i]!.scale.z = Math.max(0.5, load / 12);
      this.columns[i]!.visible = this.falls === null;
    });
  }

  private placeMarks(): void {
    const cg = this.moment.cg_mm ?? store.scene?.cg_mm ?? [0, 0, 0];
    const at = this.fall.localToWorld(new Vector3(...cg));
    this.put(this.mark, at, 0, 0);
    this.put(this.tags.cg, at, 20, 0);
    const pack = store.scene?.parts.find((p) => p.row >= 0 && p.row === packOf());
    this.tags.pack.hidden = !pack;
    if (pack) {
      const [x, y] = this.drawnAt(pack.cg_mm, pack.carrier);
      this.move(this.tags.pack, x, y - 15);
    }
    const down = this.plumbFoot(at);
    const line = this.plumb.geometry.getAttribute("position") as BufferAttribute;
    line.setXYZ(0, at.x, at.y, at.z);
    line.setXYZ(1, down.x, down.y, down.z);
    line.needsUpdate = true;
    this.plumb.visible = this.falls === null;
    this.columns.forEach((column, i) => {
      const { root, grams } = this.labels[i]!;
      const load = Math.max(0, this.moment.load_g[i] ?? 0);
      grams.textContent = `${fixed(load, 0)} g`;
      root.classList.toggle("light", load < 1);
      root.hidden = !column.visible;
      this.put(root, column.localToWorld(new Vector3(0, 0, 0)), 0, 10);
    });
    this.handles.place(this.falls !== null);
    this.angle.textContent = `${fixed(this.moment.theta_deg, 1)}°`;
    const mid = rad(this.moment.theta_deg / 2);
    this.put(this.angle, new Vector3(110 * Math.cos(mid) - HINGE, -HALF, 110 * Math.sin(mid) - BOARD), 0, 0);
  }

  /** Where the line of gravity through a point meets the table. */
  private plumbFoot(at: Vector3): Vector3 {
    const local = this.table.worldToLocal(at.clone());
    const theta = rad(this.moment.theta_deg);
    local.x -= local.z * Math.tan(Math.min(theta, rad(85)));
    local.z = 1;
    return this.table.localToWorld(local);
  }

  private put(node: HTMLElement | SVGElement, at: Vector3, dx: number, dy: number): void {
    const p = at.clone().project(this.camera);
    this.move(node, ((p.x + 1) / 2) * this.size.x + dx, ((1 - p.y) / 2) * this.size.y + dy);
  }

  private move(node: HTMLElement | SVGElement, x: number, y: number): void {
    node.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)`;
  }
}

/** What the colours mean. */
function key(): HTMLElement {
  return el("ul", { class: "stage-key", "aria-label": "Colours by what a part rides on" },
    ...Object.entries(KINDS).map(([kind, words]) => el("li", {}, svg("svg", { viewBox: "0 0 10 10", "aria-hidden": "true" }, svg("rect", { class: `part ${kind}`, width: 10, height: 10 })), words)));
}

/** The pose between two points of the path; beyond its end the last one holds. */
export function between(points: PathPoint[], theta: number): PathPoint | null {
  if (points.length === 0) return null;
  let i = 0;
  while (i < points.length - 2 && points[i + 1]!.theta_deg < theta) i++;
  const [a, b] = [points[i]!, points[Math.min(i + 1, points.length - 1)]!];
  const span = b.theta_deg - a.theta_deg;
  const t = span > 0 ? Math.max(0, Math.min(1, (theta - a.theta_deg) / span)) : 0;
  const mix = (p: number[], q: number[]): number[] => p.map((v, k) => v + ((q[k] ?? v) - v) * t);
  return {
    theta_deg: theta,
    poses: a.poses.map((p, k) => mix(p, b.poses[k]!)),
    load_g: mix(a.load_g, b.load_g) as PathPoint["load_g"],
    cg_mm: mix(a.cg_mm, b.cg_mm) as Triple,
  };
}

const rad = (deg: number): number => (deg * Math.PI) / 180;

export function makeStage(): Table {
  const [holder, canvas] = [byId("stage"), byId<HTMLCanvasElement>("stage-canvas")];
  return drawnFlat() ? new FlatTable(holder, canvas) : new Stage(holder, canvas);
}
