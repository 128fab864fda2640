// A truck in three dimensions: one mesh a body, coloured by what its parts ride on, as drawn flat.

import {
  BufferAttribute,
  BufferGeometry,
  Color,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  Vector3,
  type Material,
} from "three";
import { kindOf, lookOf } from "./outline";
import { placed, solid } from "./solids";
import type { Part, Scene, Triple } from "./types";

export const BODIES = ["chassis", "front axle", "rear axle", "front left", "front right", "rear left", "rear right"];
export const WHEELS = BODIES.slice(3);
/** What a part rides on, in words, by the class it has in the drawings. */
export const KINDS: Record<string, string> = { chassis: "body", "axle front": "front axle", "axle rear": "rear axle", wheel: "wheels" };
const INKS = { paper: "--sheet", ink: "--ink", faint: "--rule", soft: "--soft", board: "--board", chassis: "--chassis",
  "axle front": "--axle-front", "axle rear": "--axle-rear", stone: "--stone", wheel: "--wheel", picked: "--picked", over: "--red", load: "--blue", pack: "--pack" };
type Name = keyof typeof INKS;

/** The sheet's colours by day or night, and the materials painted with them. */
export class Paints {
  readonly ink = Object.fromEntries(Object.keys(INKS).map((name) => [name, new Color()])) as Record<Name, Color>;
  readonly face = new MeshBasicMaterial({ vertexColors: true, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 });
  readonly glass = new MeshBasicMaterial({ vertexColors: true, transparent: true, opacity: 0.16, depthWrite: false });
  /** The pack's edges, drawn over whatever is before it. */
  readonly pack = new LineBasicMaterial({ depthTest: false, transparent: true });
  private readonly lined = new Map<Name, LineBasicMaterial>();
  private readonly filled = new Map<Name, MeshBasicMaterial>();
  /** Counts the times it was painted. */
  times = 0;

  repaint(): void {
    const style = getComputedStyle(document.documentElement);
    for (const [name, of] of Object.entries(INKS)) this.ink[name as Name].set(style.getPropertyValue(of).trim());
    for (const [name, material] of [...this.lined, ...this.filled]) material.color.copy(this.ink[name]);
    this.pack.color.copy(this.ink.pack);
    this.times += 1;
  }

  line(name: Name): LineBasicMaterial {
    let found = this.lined.get(name);
    if (!found) this.lined.set(name, (found = new LineBasicMaterial({ color: this.ink[name] })));
    return found;
  }

  fill(name: Name, back = 0): MeshBasicMaterial {
    let found = this.filled.get(name);
    if (!found) this.filled.set(name, (found = new MeshBasicMaterial({ color: this.ink[name], polygonOffset: back > 0, polygonOffsetFactor: back, polygonOffsetUnits: back })));
    return found;
  }
}

export interface Dress {
  picked: number | null;
  /** Rows that are the drive pack. */
  pack: number | null;
  glass: boolean;
  /** The truck compared with: where it has parts otherwise, their edges. */
  before: Scene | null;
  /** In its edges on bare paper, as the ghost beside another truck. */
  ghost?: boolean;
}

export class Figure {
  readonly root = new Group();
  readonly bodies = BODIES.map(() => new Group());
  private readonly built: string[] = [];

  constructor(private readonly paints: Paints) {
    this.root.add(...this.bodies);
  }

  /** Makes meshes again where a body's parts look otherwise: a drag changes one of seven. */
  dress(scene: Scene, dress: Dress): void {
    BODIES.forEach((carrier, i) => {
      const parts = scene.parts.filter((p) => p.carrier === carrier && p.shape);
      const same = new Set(parts.map(lookOf));
      const then = (dress.before?.parts ?? []).filter((p) => p.carrier === carrier && p.shape && !same.has(lookOf(p)));
      const look = `${this.paints.times}|${dress.glass}|${dress.ghost}|${parts.map((p) => `${lookOf(p)} ${p.row === dress.picked} ${p.row === dress.pack}`).join("|")}|${then.map(lookOf).join("|")}`;
      if (this.built[i] === look) return;
      this.built[i] = look;
      const body = this.bodies[i]!;
      empty(body);
      const glass = (p: Part): boolean => dress.glass && carrier === "chassis" && !(p.row >= 0 && (p.row === dress.picked || p.row === dress.pack));
      if (dress.ghost) {
        const faces = parts.flatMap((p) => trianglesOf(p));
        if (faces.length) body.add(new Mesh(flat(faces), this.paints.fill("paper", 1)));
        this.edges(body, parts, this.paints.line("load"));
      } else {
        this.meshes(body, parts.filter((p) => !glass(p)), carrier, dress.picked, this.paints.face, this.paints.line("ink"));
        this.meshes(body, parts.filter(glass), carrier, dress.picked, this.paints.glass, this.paints.line("soft"));
        this.edges(body, parts.filter((p) => p.row >= 0 && p.row === dress.pack), this.paints.pack, 5);
      }
      this.edges(body, then, this.paints.line("load"));
    });
  }

  private meshes(group: Group, parts: Part[], carrier: string, picked: number | null, face: Material, line: LineBasicMaterial): void {
    const triangles: number[] = [];
    const colours: number[] = [];
    const owner: Part[] = [];
    const tint = this.paints.ink[kindOf(carrier) as Name];
    for (const part of parts) {
      const made = trianglesOf(part);
      triangles.push(...made);
      for (let i = 0; i < made.length; i += 9) owner.push(part);
      shade(triangles, colours, part.row >= 0 && part.row === picked ? this.paints.ink.picked : tint);
    }
    if (triangles.length === 0) return;
    const geometry = flat(triangles);
    geometry.setAttribute("color", new BufferAttribute(new Float32Array(colours), 3));
    const mesh = new Mesh(geometry, face);
    mesh.userData["owner"] = owner;
    mesh.frustumCulled = false;
    group.add(mesh);
    this.edges(group, parts, line);
  }

  private edges(group: Group, parts: Part[], line: LineBasicMaterial, order = 0): void {
    const points: number[] = [];
    for (const part of parts) {
      const made = solid(part.shape!).lines;
      for (let i = 0; i < made.length; i += 3) points.push(...placed(made.slice(i, i + 3) as Triple, part.turn, part.centre_mm));
    }
    if (points.length === 0) return;
    const drawn = lines(points, line);
    drawn.renderOrder = order;
    group.add(drawn);
  }

  /** Displaces the bodies; wheels without a pose of their own go with their axle. */
  pose(poses: number[][]): void {
    this.bodies.forEach((body, i) => {
      const pose = poses[i] ?? poses[i < 3 ? i : i < 5 ? 1 : 2];
      body.position.set(pose?.[0] ?? 0, pose?.[1] ?? 0, pose?.[2] ?? 0);
      body.quaternion.set(pose?.[3] ?? 0, pose?.[4] ?? 0, pose?.[5] ?? 0, pose?.[6] ?? 1);
    });
  }

  /** Every corner of every body as it stands, in the figure's own axes, mm. */
  corners(): Vector3[] {
    const found: Vector3[] = [];
    for (const body of this.bodies) {
      body.updateMatrix();
      for (const child of body.children) {
        if (!(child instanceof Mesh)) continue;
        const at = (child.geometry as BufferGeometry).getAttribute("position") as BufferAttribute;
        for (let k = 0; k < at.count; k++) found.push(new Vector3().fromBufferAttribute(at, k).applyMatrix4(body.matrix));
      }
    }
    return found;
  }
}

/** A part's faces where it sits on its body, three corners each. */
function trianglesOf(part: Part): number[] {
  const made = solid(part.shape!).triangles;
  return Array.from({ length: made.length / 3 }, (_, i) => placed(made.slice(3 * i, 3 * i + 3) as Triple, part.turn, part.centre_mm)).flat();
}

const SUN = new Vector3(0.25, 0.55, 0.85).normalize();

/** Shades every face once, by how it faces a lamp that turns with the truck: as a drawing would. */
export function shade(triangles: number[], colours: number[], colour: Color): void {
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

export function flat(triangles: number[]): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(triangles), 3));
  return geometry;
}

export function lines(points: number[], material: LineBasicMaterial): LineSegments {
  const made = new LineSegments(flat(points), material);
  made.frustumCulled = false;
  return made;
}

export function empty(group: Group): void {
  for (const child of [...group.children]) {
    group.remove(child);
    if (child instanceof Mesh || child instanceof LineSegments) (child.geometry as BufferGeometry).dispose();
  }
}
