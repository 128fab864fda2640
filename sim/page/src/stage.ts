// The truck on its tilt table in three dimensions: paper, ink and no perspective.

import {
  BufferAttribute,
  BufferGeometry,
  Color,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  OrthographicCamera,
  Quaternion,
  Raycaster,
  Scene as World,
  Vector2,
  Vector3,
  WebGLRenderer,
} from "three";
import { byId, calm, drawnFlat, drawnInSoftware, el, fixed, svg } from "./dom";
import { FlatTable } from "./flat";
import { lookOf } from "./outline";
import { placed, solid } from "./solids";
import { afterTheMap, look, on, store } from "./store";
import type { Part, PathPoint, Triple } from "./types";

const HINGE = 250; // mm from the middle of the table to its hinge
const HALF = 210; // mm, half its width
const BOARD = 12; // mm, its thickness
const BODIES = ["chassis", "front axle", "rear axle", "front left", "front right", "rear left", "rear right"];
const WHEELS = BODIES.slice(3);

interface Ink {
  paper: Color;
  ink: Color;
  faint: Color;
  board: Color;
  chassis: Color;
  axle: Color;
  wheel: Color;
  picked: Color;
  over: Color;
  load: Color;
}

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

export class Stage implements Table {
  private readonly world = new World();
  private readonly camera = new OrthographicCamera(-1, 1, 1, -1, -4000, 4000);
  private readonly renderer: WebGLRenderer;
  private readonly table = new Group();
  private readonly turn = new Group();
  private readonly fall = new Group();
  private readonly bodies = BODIES.map(() => new Group());
  private readonly columns: Mesh[] = [];
  private readonly materials: Record<string, MeshBasicMaterial | LineBasicMaterial> = {};
  private readonly face = new MeshBasicMaterial({ vertexColors: true, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
  private readonly tipLines = new Group();
  private readonly plumb: LineSegments;
  private readonly labels: HTMLElement[] = [];
  private readonly mark: SVGSVGElement;
  private readonly angle: HTMLElement;
  private azimuth = -62;
  private elevation = 20;
  private zoom = 1;
  private wanted = false;
  /** Without a graphics card: plain while things move, fine once they rest. */
  private readonly slow: boolean;
  private fine = true;
  private restTimer = 0;
  private falling = 0;
  private fallTimer = 0;
  private ink!: Ink;
  private paint = 0;
  private readonly built: string[] = [];
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
    this.fall.add(...this.bodies);
    for (const name of ["ink", "faint", "over", "load"]) this.materials[name] = new LineBasicMaterial();
    this.materials["board"] = new MeshBasicMaterial({ polygonOffset: true, polygonOffsetFactor: 2, polygonOffsetUnits: 2 });
    this.materials["tip"] = new MeshBasicMaterial();
    this.materials["column"] = new MeshBasicMaterial();
    this.furnish();
    this.plumb = this.lines([0, 0, 0, 0, 0, 1], "over");
    this.world.add(this.plumb);
    this.mark = svg("svg", { class: "cg-mark", viewBox: "-10 -10 20 20", "aria-hidden": "true" },
      svg("circle", { r: 8, class: "cg-back" }),
      svg("path", { d: "M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z", class: "cg-dark" }),
      svg("circle", { r: 8, class: "cg-ring" }));
    this.angle = el("div", { class: "stage-angle", "aria-hidden": "true" });
    holder.append(this.mark, this.angle);
    for (const wheel of WHEELS) {
      const label = el("div", { class: "stage-load", "aria-hidden": "true", title: `load on the ${wheel} wheel` });
      this.labels.push(label);
      holder.append(label);
    }
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
        Home: () => { this.azimuth = -62; this.elevation = 20; this.zoom = 1; this.draw(); },
      };
      const move = moves[e.key];
      if (move) { e.preventDefault(); move(); }
    });
    this.canvas.addEventListener("webglcontextlost", (e) => e.preventDefault());
    this.canvas.addEventListener("webglcontextrestored", () => this.draw());
  }

  orbit(azimuth: number, elevation: number): void {
    this.azimuth += azimuth;
    this.elevation = Math.max(-5, Math.min(88, this.elevation + elevation));
    this.draw();
  }

  private enlarge(factor: number): void {
    this.zoom = Math.max(0.5, Math.min(4, this.zoom * factor));
    this.draw();
  }

  /** Takes the colours of the light or dark sheet. */
  repaint(): void {
    const style = getComputedStyle(document.documentElement);
    const read = (name: string): Color => new Color(style.getPropertyValue(name).trim());
    this.ink = {
      paper: read("--sheet"), ink: read("--ink"), faint: read("--rule"), board: read("--board"),
      chassis: read("--chassis"), axle: read("--axle"), wheel: read("--wheel"), picked: read("--picked"),
      over: read("--red"), load: read("--blue"),
    };
    this.world.background = this.ink.paper;
    this.paint += 1;
    const paint: [string, Color][] = [["ink", this.ink.ink], ["faint", this.ink.faint], ["over", this.ink.over],
      ["load", this.ink.load], ["board", this.ink.board], ["tip", this.ink.over], ["column", this.ink.load]];
    for (const [name, colour] of paint) this.materials[name]!.color.copy(colour);
    if (store.scene) this.build();
    this.draw();
  }

  private lines(points: number[], material: string): LineSegments {
    const geometry = new BufferGeometry();
    geometry.setAttribute("position", new BufferAttribute(new Float32Array(points), 3));
    const made = new LineSegments(geometry, this.materials[material] as LineBasicMaterial);
    made.frustumCulled = false;
    return made;
  }

  /** The table, its hinge, the bench it stands on, and the arc that shows the angle. */
  private furnish(): void {
    const board = solid({ kind: "box", size_mm: [2 * HINGE, 2 * HALF, BOARD] });
    const lift = (p: number[], x: number, z: number): number[] => p.map((v, i) => (i % 3 === 0 ? v + x : i % 3 === 2 ? v + z : v));
    const slab = new Mesh(flat(lift(board.triangles, HINGE, -BOARD / 2)), this.materials["board"]);
    const grid: number[] = [];
    for (let x = 50; x < 2 * HINGE; x += 50) grid.push(x, -HALF, 0.4, x, HALF, 0.4);
    for (let y = -200; y <= 200; y += 50) grid.push(0, y, 0.4, 2 * HINGE, y, 0.4);
    this.table.add(slab, this.lines(lift(board.lines, HINGE, -BOARD / 2), "ink"), this.lines(grid, "faint"));
    const arc: number[] = [];
    const at = (r: number, deg: number): Triple => [r * Math.cos(rad(deg)) - HINGE, -HALF, r * Math.sin(rad(deg)) - BOARD];
    for (let deg = 0; deg < 90; deg += 2) arc.push(...at(150, deg), ...at(150, deg + 2));
    for (let deg = 0; deg <= 90; deg += 5) arc.push(...at(150, deg), ...at(deg % 10 ? 155 : 162, deg));
    const foot: number[] = [];
    for (const y of [-HALF, HALF]) foot.push(-HINGE - 30, y, -BOARD, HINGE, y, -BOARD);
    foot.push(-HINGE, -HALF, -BOARD, -HINGE, HALF, -BOARD, HINGE, -HALF, -BOARD, HINGE, HALF, -BOARD);
    this.world.add(this.lines(arc, "ink"), this.lines(foot, "faint"));
    for (let i = 0; i < 4; i++) {
      const column = new Mesh(flat(lift(solid({ kind: "box", size_mm: [9, 9, 1] }).triangles, 0, 0.5)), this.materials["column"]);
      this.columns.push(column);
      this.turn.add(column);
    }
  }

  /** Makes the truck's meshes again, one a body, after an edit or a pick. */
  private build(): void {
    if (!store.scene) return;
    empty(this.tipLines);
    BODIES.forEach((carrier, i) => {
      // A body whose parts look as before is left alone: a drag changes one of seven.
      const parts = store.scene.parts.filter((p) => p.carrier === carrier && p.shape);
      const before = store.bench.before?.scene.parts ?? [];
      const same = new Set(parts.map(lookOf));
      const ghost = before.filter((p) => p.carrier === carrier && p.shape && !same.has(lookOf(p)));
      const look = `${this.paint}|${parts.map((p) => `${lookOf(p)} ${p.row === store.view.row}`).join("|")}|${ghost.map(lookOf).join("|")}`;
      if (this.built[i] === look) return;
      this.built[i] = look;
      empty(this.bodies[i]!);
      this.buildBody(parts, carrier, this.bodies[i]!);
      this.buildGhost(ghost, this.bodies[i]!);
    });
    const points = store.scene.tip_points_mm;
    const order = [0, 1, 3, 2];
    order.forEach((a, k) => this.tipLines.add(this.strip(points[a]!, points[order[(k + 1) % 4]!]!)));
    this.draw();
  }

  private buildBody(parts: Part[], carrier: string, group: Group): void {
    const triangles: number[] = [];
    const colours: number[] = [];
    const lines: number[] = [];
    const owner: Part[] = [];
    const tint = carrier === "chassis" ? this.ink.chassis : carrier.endsWith("axle") ? this.ink.axle : this.ink.wheel;
    for (const part of parts) {
      const made = solid(part.shape!);
      const colour = part.row >= 0 && part.row === store.view.row ? this.ink.picked : tint;
      for (let i = 0; i < made.triangles.length; i += 3) {
        triangles.push(...placed(made.triangles.slice(i, i + 3) as Triple, part.turn, part.centre_mm));
        if (i % 9 === 0) owner.push(part);
      }
      shade(triangles, colours, colour);
      for (let i = 0; i < made.lines.length; i += 3) {
        lines.push(...placed(made.lines.slice(i, i + 3) as Triple, part.turn, part.centre_mm));
      }
    }
    if (triangles.length === 0) return;
    const geometry = flat(triangles);
    geometry.setAttribute("color", new BufferAttribute(new Float32Array(colours), 3));
    const mesh = new Mesh(geometry, this.face);
    mesh.userData["owner"] = owner;
    mesh.frustumCulled = false;
    group.add(mesh, this.lines(lines, "ink"));
  }

  /** Parts of the truck compared with that are otherwise here: their edges alone. */
  private buildGhost(parts: Part[], group: Group): void {
    const lines: number[] = [];
    for (const part of parts) {
      const made = solid(part.shape!);
      for (let i = 0; i < made.lines.length; i += 3) lines.push(...placed(made.lines.slice(i, i + 3) as Triple, part.turn, part.centre_mm));
    }
    if (lines.length) group.add(this.lines(lines, "load"));
  }

  /** A tip line on the table, wide enough to see. */
  private strip(a: [number, number], b: [number, number]): Mesh {
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const length = Math.hypot(dx, dy) || 1;
    const [nx, ny] = [(-dy / length) * 1.3, (dx / length) * 1.3];
    const corner = (p: [number, number], s: number): Triple => [p[0] + s * nx, p[1] + s * ny, 0.8];
    const [p, q, r, s] = [corner(a, 1), corner(a, -1), corner(b, -1), corner(b, 1)];
    return new Mesh(flat([...p, ...q, ...r, ...p, ...r, ...s]), this.materials["tip"]);
  }

  private pickAt(e: PointerEvent): void {
    const box = this.canvas.getBoundingClientRect();
    const at = new Vector2(((e.clientX - box.left) / box.width) * 2 - 1, 1 - ((e.clientY - box.top) / box.height) * 2);
    const ray = new Raycaster();
    ray.setFromCamera(at, this.camera);
    const hit = ray.intersectObjects(this.bodies, true).find((h) => h.object instanceof Mesh);
    const owner = hit ? (hit.object.userData["owner"] as Part[])[hit.faceIndex ?? 0] : undefined;
    look({ row: owner && owner.row >= 0 ? owner.row : null });
  }

  /** Puts everything where the moment says. over: the truck has gone over this tip line. */
  show(moment: Moment, over: string | null = null): void {
    this.moment = moment;
    this.table.rotation.y = -rad(moment.theta_deg);
    this.turn.rotation.z = rad(moment.heading_deg);
    BODIES.forEach((_, i) => {
      const carrier = i < 3 ? i : i < 5 ? 1 : 2;
      const pose = moment.poses[i] ?? moment.poses[carrier];
      const body = this.bodies[i]!;
      body.position.set(pose?.[0] ?? 0, pose?.[1] ?? 0, pose?.[2] ?? 0);
      body.quaternion.set(pose?.[3] ?? 0, pose?.[4] ?? 0, pose?.[5] ?? 0, pose?.[6] ?? 1);
    });
    this.topple(over);
    this.draw();
  }

  private topple(over: string | null): void {
    cancelAnimationFrame(this.fallTimer);
    if (over === null) {
      this.falling = 0;
      this.setFall("left", 0);
      return;
    }
    if (calm()) this.falling = 1;
    const start = performance.now() - this.falling * 600;
    const step = (now: number): void => {
      this.falling = Math.min(1, Math.max(0, (now - start) / 600));
      if (over === "away") this.setSlide(this.falling ** 2);
      else this.setFall(over, 90 * this.falling ** 2.2);
      this.draw();
      if (this.falling < 1) this.fallTimer = requestAnimationFrame(step);
    };
    step(performance.now());
  }

  /** Turned over a tip line, and lifted as far as its body, which then lies on the table, needs. */
  private setFall(over: string, deg: number): void {
    const points = store.scene?.tip_points_mm;
    if (!points) return;
    const ends: Record<string, [number, number]> = { rear: [3, 2], left: [2, 0], front: [0, 1], right: [1, 3] };
    const [i, j] = ends[over] ?? [2, 0];
    const [a, b] = [points[i]!, points[j]!];
    const axis = new Vector3(b[0] - a[0], b[1] - a[1], 0).normalize();
    const turn = new Quaternion().setFromAxisAngle(axis, -rad(deg));
    const foot = new Vector3(a[0], a[1], 0);
    this.fall.quaternion.copy(turn);
    this.fall.position.copy(foot.clone().sub(foot.clone().applyQuaternion(turn)));
    if (deg === 0) return;
    // It comes to lie on the table, not in it, and not beyond its lower end.
    const { low, far } = this.reach();
    const psi = rad(this.moment.heading_deg);
    const back = Math.max(0, far - HINGE + 6);
    this.fall.position.add(new Vector3(Math.cos(psi) * back, -Math.sin(psi) * back, Math.max(0, -low)));
  }

  /** Downhill along the table by a share of the way to its edge and beyond. */
  private setSlide(share: number): void {
    const psi = rad(this.moment.heading_deg);
    this.fall.quaternion.identity();
    this.fall.position.set(-Math.cos(psi), Math.sin(psi), 0).multiplyScalar(190 * share);
  }

  /** mm, how low over the table and how far downhill from its middle the bodies reach. */
  private reach(): { low: number; far: number } {
    let [low, far] = [Infinity, -Infinity];
    const psi = rad(this.moment.heading_deg);
    const [c, s] = [-Math.cos(psi), Math.sin(psi)];
    this.fall.updateMatrix();
    for (const body of this.bodies) {
      body.updateMatrix();
      const at = this.fall.matrix.clone().multiply(body.matrix).elements;
      for (const child of body.children) {
        if (!(child instanceof Mesh)) continue;
        const p = (child.geometry as BufferGeometry).getAttribute("position") as BufferAttribute;
        for (let k = 0; k < p.count; k++) {
          const [x, y, z] = [p.getX(k), p.getY(k), p.getZ(k)];
          const along = (i: number): number => at[i]! * x + at[4 + i]! * y + at[8 + i]! * z + at[12 + i]!;
          low = Math.min(low, along(2));
          far = Math.max(far, c * along(0) + s * along(1));
        }
      }
    }
    return { low: Number.isFinite(low) ? low : 0, far };
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
    const reach = (w / h > 1 ? 285 : 285 * Math.min(1.35, h / w)) / this.zoom;
    this.camera.left = (-reach * w) / h;
    this.camera.right = (reach * w) / h;
    this.camera.top = reach;
    this.camera.bottom = -reach;
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
      this.columns[i]!.visible = this.falling === 0;
    });
  }

  private placeMarks(): void {
    const cg = this.moment.cg_mm ?? store.scene?.cg_mm ?? [0, 0, 0];
    const at = this.fall.localToWorld(new Vector3(...cg));
    this.put(this.mark, at, 0, 0);
    const down = this.plumbFoot(at);
    const line = this.plumb.geometry.getAttribute("position") as BufferAttribute;
    line.setXYZ(0, at.x, at.y, at.z);
    line.setXYZ(1, down.x, down.y, down.z);
    line.needsUpdate = true;
    this.plumb.visible = this.falling === 0;
    this.columns.forEach((column, i) => {
      const label = this.labels[i]!;
      const load = this.moment.load_g[i] ?? 0;
      label.textContent = `${fixed(Math.max(0, load), 0)} g`;
      label.classList.toggle("light", load < 1);
      label.hidden = !column.visible;
      this.put(label, column.localToWorld(new Vector3(0, 0, 1)), 0, -9);
    });
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
    const x = ((p.x + 1) / 2) * this.size.x + dx;
    const y = ((1 - p.y) / 2) * this.size.y + dy;
    node.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px) translate(-50%, -50%)`;
  }
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

const SUN = new Vector3(0.25, 0.55, 0.85).normalize();

/** Shades every face once, by how it faces a lamp that turns with the truck: as a drawing would. */
function shade(triangles: number[], colours: number[], colour: Color): void {
  const [a, b, c] = [new Vector3(), new Vector3(), new Vector3()];
  for (let i = colours.length; i < triangles.length; i += 9) {
    a.fromArray(triangles, i);
    b.fromArray(triangles, i + 3).sub(a);
    c.fromArray(triangles, i + 6).sub(a);
    const facing = b.cross(c).normalize();
    const light = 0.88 + 0.2 * facing.dot(SUN) + 0.12 * facing.z;
    const [r, g, blue] = [colour.r, colour.g, colour.b].map((v) => Math.min(1, v * light ** 1.3)) as [number, number, number];
    for (let k = 0; k < 3; k++) colours.push(r, g, blue);
  }
}

function flat(triangles: number[]): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(triangles), 3));
  return geometry;
}

function empty(group: Group): void {
  for (const child of [...group.children]) {
    group.remove(child);
    if (child instanceof Mesh || child instanceof LineSegments) (child.geometry as BufferGeometry).dispose();
  }
}

const rad = (deg: number): number => (deg * Math.PI) / 180;

export function makeStage(): Table {
  const [holder, canvas] = [byId("stage"), byId<HTMLCanvasElement>("stage-canvas")];
  return drawnFlat() ? new FlatTable(holder, canvas) : new Stage(holder, canvas);
}
