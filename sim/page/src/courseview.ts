// The drive over the hill in three dimensions: the truck, its reference in edges on bare paper on a
// lane of its own beside it, and what happened where.

import { BufferAttribute, Group, Matrix4, Mesh, OrthographicCamera, Scene as World, Vector3, WebGLRenderer, type LineSegments } from "three";
import type { CourseAsked, CourseEvent, Way, Pair, Scene, Triple } from "./types";
import { wayAt } from "./courses";
import { drawnInSoftware } from "./dom";
import { empty, Figure, flat, lines, Paints, shade } from "./figure";
import { placed, solid } from "./solids";
import type { Recording } from "./replay";

const [WIDE, HIGH] = [1350, 650]; // mm, half the hill drawn
const REACH = 330; // mm that are seen above and below the truck
const APART = 1200; // mm between truck and reference that the picture makes room for
const LANE = 330; // mm from the truck's way to its reference's
const FLANK = Math.PI / 3; // a stone leaves the ground so steeply: trials/ground.py

export interface Seen {
  scene: Scene;
  pack: number | null;
  recording: Recording;
  events: CourseEvent[];
}

export class CourseView {
  readonly canvas: HTMLCanvasElement;
  private readonly renderer: WebGLRenderer;
  private readonly world = new World();
  private readonly camera = new OrthographicCamera(-1, 1, 1, -1, -6000, 6000);
  private readonly paints = new Paints();
  private readonly hill = new Group();
  private readonly furniture = new Group();
  private readonly figures = [new Figure(this.paints), new Figure(this.paints)] as const;
  private readonly plumb: LineSegments;
  private course: CourseAsked | null = null;
  private way: Way | null = null;
  private seen: (Seen | null)[] = [null, null];
  private time = 0;
  /** mm to the left of the way that the reference drives, over the same things. */
  private lane = 0;

  constructor(canvas: HTMLCanvasElement) {
    this.canvas = canvas;
    this.renderer = new WebGLRenderer({ canvas, antialias: !drawnInSoftware(), powerPreference: "low-power" });
    this.camera.up.set(0, 0, 1);
    this.plumb = lines([0, 0, 0, 0, 0, 1], this.paints.line("over"));
    this.hill.add(this.furniture, ...this.figures.map((f) => f.root));
    this.world.add(this.hill, this.plumb);
    this.repaint();
  }

  repaint(): void {
    this.paints.repaint();
    this.world.background = this.paints.ink.paper;
    if (this.course && this.way) this.take(this.course, this.way, this.seen);
  }

  take(course: CourseAsked, way: Way, seen: (Seen | null)[]): void {
    Object.assign(this, { course, way, seen });
    // Uphill, as far as the way has such a side, where it hides nothing.
    const uphill = way.heading_deg.reduce((sum, h) => sum - Math.sin((h * Math.PI) / 180), 0);
    this.lane = seen[1] ? (uphill < 0 ? -LANE : LANE) : 0;
    this.hill.rotation.x = (course.slope_deg * Math.PI) / 180;
    empty(this.furniture);
    this.furnish(course, way);
    seen.forEach((one, i) => {
      this.figures[i]!.root.visible = one !== null;
      if (one) this.figures[i]!.dress(one.scene, { picked: null, pack: i ? null : one.pack, glass: false, before: null, ghost: i === 1 });
    });
  }

  private furnish(course: CourseAsked, way: Way): void {
    const ground = [-WIDE, -HIGH, 0, WIDE, -HIGH, 0, WIDE, HIGH, 0, -WIDE, -HIGH, 0, WIDE, HIGH, 0, -WIDE, HIGH, 0];
    const grid: number[] = [];
    for (let x = -WIDE + 50; x <= WIDE; x += 100) grid.push(x, -HIGH, 0.5, x, HIGH, 0.5);
    for (let y = -HIGH + 50; y <= HIGH; y += 100) grid.push(-WIDE, y, 0.5, WIDE, y, 0.5);
    const track: number[] = [];
    way.places_mm.forEach((p, i) => { if (i) track.push(...way.places_mm[i - 1]!, 1.5, ...p, 1.5); });
    this.furniture.add(new Mesh(flat(ground), this.paints.fill("board", 2)), lines(grid, this.paints.line("faint")), lines(track, this.paints.line("ink")));
    if (this.lane) this.furniture.add(lines(way.places_mm.flatMap((_, i) => (i ? [...this.across(i - 1), 1.5, ...this.across(i), 1.5] : [])), this.paints.line("load")));
    for (const stone of course.stones) this.lay(stoneOf(way, stone.at_mm, stone.height_mm), stone.at_mm);
    for (const ramp of course.ramps) {
      const [half, top, wide, rise] = [ramp.flank_mm + ramp.top_mm / 2, ramp.top_mm / 2, ramp.width_mm / 2, ramp.flank_mm * Math.tan((ramp.angle_deg * Math.PI) / 180)];
      const profile: Pair[] = [[-half, 0], [-top, rise], [top, rise], [half, 0]];
      const turn = new Matrix4().makeRotationZ((ramp.turned_deg * Math.PI) / 180 + Math.PI / 2).setPosition(...ramp.at_mm, 0);
      this.lay(extruded(profile, wide), ramp.at_mm, turn);
    }
    this.seen.forEach((one, whose) => one?.events.forEach((event) => {
      const { place: [x, y], heading } = wayAt(way, event.at_mm);
      const aside = whose ? this.lane : 26;
      const high = event.what === "lifts" ? 40 : 90;
      const post = solid({ kind: "box", size_mm: [5, 5, high] }).triangles.map((v, i) => v + [x - aside * Math.cos(heading), y - aside * Math.sin(heading), high / 2][i % 3]!);
      this.furniture.add(new Mesh(flat(post), this.paints.fill(event.what === "lifts" ? "load" : "over")));
    }));
  }

  /** The reference's way beside the truck's. */
  private across(i: number, from: Pair = this.way!.places_mm[i]!): Pair {
    const h = (this.way!.heading_deg[i]! * Math.PI) / 180;
    return [from[0] - this.lane * Math.cos(h), from[1] - this.lane * Math.sin(h)];
  }

  /** A thing on the hill, and again in edges where the reference meets it. */
  private lay(made: { triangles: number[]; lines: number[] }, at: Pair, turn = new Matrix4()): void {
    const body = flat(made.triangles).applyMatrix4(turn);
    const colours: number[] = [];
    shade([...(body.getAttribute("position") as BufferAttribute).array], colours, this.paints.ink.stone);
    body.setAttribute("color", new BufferAttribute(new Float32Array(colours), 3));
    const edge = lines(made.lines, this.paints.line("ink"));
    edge.geometry.applyMatrix4(turn);
    this.furniture.add(new Mesh(body, this.paints.face), edge);
    if (!this.lane) return;
    const [x, y] = this.across(nearest(this.way!, at), at);
    const again = lines(made.lines, this.paints.line("load"));
    again.geometry.applyMatrix4(turn).translate(x - at[0], y - at[1], 0);
    this.furniture.add(again);
  }

  get seconds(): number {
    return Math.max(0, ...this.seen.map((one) => one?.recording.seconds ?? 0));
  }

  /** How far the truck's own axes have come along the way, mm, and what its wheels carry, g. */
  at(time: number, whose = 0): { along: number; load_g: number[] } | null {
    const recording = this.seen[whose]?.recording;
    if (!recording) return null;
    const now = recording.at(recording.rowAt(time));
    return { along: now.poses[0]![0]!, load_g: now.load_g };
  }

  /** Draws a moment, s; on a sheet of some size, px, or the canvas' own. */
  draw(time: number, size?: Pair): void {
    if (!this.course || !this.way) return;
    this.time = time;
    const [w, h] = size ?? [this.canvas.clientWidth, this.canvas.clientHeight];
    if (w < 2 || h < 2) return;
    this.renderer.setPixelRatio(size || drawnInSoftware() ? 1 : Math.min(devicePixelRatio, 2));
    this.renderer.setSize(w, h, false);
    const places: Vector3[] = [];
    this.seen.forEach((one, i) => {
      if (!one) return;
      const now = one.recording.at(one.recording.rowAt(time));
      const place = this.figures[i]!.root;
      this.set(this.figures[i]!, now.poses, i ? this.lane : 0);
      this.hill.updateMatrixWorld(true);
      places.push(place.localToWorld(new Vector3(now.poses[0]![0]!, now.poses[0]![1]!, 60)));
      if (i > 0) return;
      const cg = place.localToWorld(new Vector3(...now.cg_mm));
      const line = this.plumb.geometry.getAttribute("position") as BufferAttribute;
      line.setXYZ(0, cg.x, cg.y, cg.z);
      line.setXYZ(1, cg.x, cg.y, cg.y * Math.tan(this.hill.rotation.x));
      line.needsUpdate = true;
    });
    // Both are in the picture, as far as one can still see what they do.
    const [mine, other] = [places[0] ?? new Vector3(), places[1] ?? places[0] ?? new Vector3()];
    const apart = Math.min(APART, mine.distanceTo(other));
    const focus = mine.clone().add(other.clone().sub(mine).setLength(apart / 2));
    const reach = Math.max(REACH, (REACH * 1.35 * h) / w) + apart * 0.3;
    Object.assign(this.camera, { left: (-reach * w) / h, right: (reach * w) / h, top: reach, bottom: -reach });
    this.camera.position.copy(focus).add(new Vector3(-0.4, -1, 0.34).multiplyScalar(1500));
    this.camera.lookAt(focus);
    this.camera.updateProjectionMatrix();
    this.renderer.render(this.world, this.camera);
  }

  again(): void {
    this.draw(this.time);
  }

  /** Bodies driven straight on, put where the way is after so many millimetres. */
  private set(figure: Figure, poses: number[][], lane: number): void {
    const along = poses[0]![0]!;
    const { place: [x, y], heading } = wayAt(this.way!, along);
    figure.pose(poses);
    // The figure's own axes stay those of the straight drive: the way lies at (along, 0) in them.
    figure.root.matrixAutoUpdate = false;
    figure.root.matrix.makeRotationZ(heading + Math.PI / 2).setPosition(x, y, 0).multiply(new Matrix4().makeTranslation(-along, lane, 0));
    figure.root.matrixWorldNeedsUpdate = true;
  }
}

/** The place of a way that lies nearest. */
function nearest(way: Way, at: Pair): number {
  const off = way.places_mm.map((p) => Math.hypot(p[0] - at[0], p[1] - at[1]));
  return off.indexOf(Math.min(...off));
}

/** A stone as it is driven over: a rod across the way, sunk so that its flanks leave at FLANK. */
function stoneOf(way: Way, at: Pair, height: number): { triangles: number[]; lines: number[] } {
  const across = (way.heading_deg[nearest(way, at)]! * Math.PI) / 180 + Math.PI; // to its left
  const radius = height / (1 - Math.cos(FLANK));
  const [c, s] = [Math.cos(across), Math.sin(across)];
  const turn = [-s, 0, c, c, 0, s, 0, 1, 0];
  const out = { triangles: [] as number[], lines: [] as number[] };
  const lay = (made: { triangles: number[]; lines: number[] }, centre: Triple): void => {
    for (const kind of ["triangles", "lines"] as const) {
      for (let i = 0; i < made[kind].length; i += 3) out[kind].push(...placed(made[kind].slice(i, i + 3) as Triple, turn, centre));
    }
  };
  lay(solid({ kind: "cylinder", size_mm: [radius, 60] }), [at[0], at[1], height - radius]);
  for (const end of [-30, 30]) lay({ ...solid({ kind: "sphere", size_mm: [radius] }), lines: [] }, [at[0] + end * c, at[1] + end * s, height - radius]);
  return out;
}

/** A profile of (u, z) drawn out to both sides. */
function extruded(profile: Pair[], wide: number): { triangles: number[]; lines: number[] } {
  const made = { triangles: [] as number[], lines: [] as number[] };
  const at = ([u, z]: Pair, side: number): number[] => [u, side * wide, z];
  profile.forEach((p, i) => {
    made.lines.push(...at(p, -1), ...at(p, 1));
    const next = profile[i + 1];
    if (!next) return;
    made.triangles.push(...at(p, 1), ...at(p, -1), ...at(next, -1), ...at(p, 1), ...at(next, -1), ...at(next, 1));
    for (const side of [-1, 1]) {
      made.lines.push(...at(p, side), ...at(next, side));
      if (i > 0) made.triangles.push(...at(profile[0]!, side), ...(side > 0 ? [...at(p, side), ...at(next, side)] : [...at(next, side), ...at(p, side)]));
    }
  });
  return made;
}
