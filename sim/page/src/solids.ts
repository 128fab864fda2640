// Triangles and ink lines for the few solids a parts list knows, in the part's own axes (mm).

import type { Shape, Triple } from "./types";

export interface Solid {
  triangles: number[];
  lines: number[];
  /** Points whose hull in any view is the part's outline. */
  hull: Triple[];
}

const ROUND = 20;

function push(out: number[], ...points: Triple[]): void {
  for (const p of points) out.push(p[0], p[1], p[2]);
}

function quad(out: number[], a: Triple, b: Triple, c: Triple, d: Triple): void {
  push(out, a, b, c, a, c, d);
}

function box(size: number[], middle: Triple = [0, 0, 0]): Solid {
  const [x, y, z] = [0, 1, 2].map((i) => (size[i] ?? 1) / 2) as Triple;
  const corner = (i: number): Triple => [
    middle[0] + (i & 1 ? x : -x),
    middle[1] + (i & 2 ? y : -y),
    middle[2] + (i & 4 ? z : -z),
  ];
  const c = [0, 1, 2, 3, 4, 5, 6, 7].map(corner);
  const at = (i: number): Triple => c[i]!;
  const triangles: number[] = [];
  const faces = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
  for (const [i, j, k, l] of faces) quad(triangles, at(i!), at(j!), at(k!), at(l!));
  const lines: number[] = [];
  for (let i = 0; i < 8; i++) for (const bit of [1, 2, 4]) if (!(i & bit)) push(lines, at(i), at(i | bit));
  return { triangles, lines, hull: c };
}

function round(outer: number, inner: number, length: number): Solid {
  const ring = (r: number, z: number): Triple[] =>
    Array.from({ length: ROUND }, (_, i) => {
      const a = (2 * Math.PI * i) / ROUND;
      return [r * Math.cos(a), r * Math.sin(a), z];
    });
  const [low, high] = [-length / 2, length / 2];
  const [bottom, top, inBottom, inTop] = [ring(outer, low), ring(outer, high), ring(inner, low), ring(inner, high)];
  const triangles: number[] = [];
  const lines: number[] = [];
  for (let i = 0; i < ROUND; i++) {
    const j = (i + 1) % ROUND;
    quad(triangles, bottom[i]!, bottom[j]!, top[j]!, top[i]!);
    if (inner > 0) {
      quad(triangles, inBottom[j]!, inBottom[i]!, inTop[i]!, inTop[j]!);
      quad(triangles, top[i]!, top[j]!, inTop[j]!, inTop[i]!);
      quad(triangles, bottom[j]!, bottom[i]!, inBottom[i]!, inBottom[j]!);
      push(lines, inBottom[i]!, inBottom[j]!, inTop[i]!, inTop[j]!);
    } else {
      push(triangles, [0, 0, high], top[i]!, top[j]!);
      push(triangles, [0, 0, low], bottom[j]!, bottom[i]!);
    }
    push(lines, bottom[i]!, bottom[j]!, top[i]!, top[j]!);
  }
  return { triangles, lines, hull: [...bottom, ...top] };
}

function ball(radius: number): Solid {
  const [rows, columns] = [7, 12];
  const at = (i: number, j: number): Triple => {
    const [a, b] = [(Math.PI * i) / rows, (2 * Math.PI * j) / columns];
    return [radius * Math.sin(a) * Math.cos(b), radius * Math.sin(a) * Math.sin(b), radius * Math.cos(a)];
  };
  const triangles: number[] = [];
  const lines: number[] = [];
  const hull: Triple[] = [];
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < columns; j++) {
      quad(triangles, at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
      hull.push(at(i, j));
    }
  }
  for (let j = 0; j < ROUND; j++) {
    const [a, b] = [j, j + 1].map((k) => (2 * Math.PI * k) / ROUND) as [number, number];
    push(lines, [radius * Math.cos(a), radius * Math.sin(a), 0], [radius * Math.cos(b), radius * Math.sin(b), 0]);
    push(lines, [radius * Math.cos(a), 0, radius * Math.sin(a)], [radius * Math.cos(b), 0, radius * Math.sin(b)]);
  }
  return { triangles, lines, hull };
}

function mesh(vertices: Triple[], faces: Triple[]): Solid {
  const triangles: number[] = [];
  for (const f of faces) push(triangles, vertices[f[0]]!, vertices[f[1]]!, vertices[f[2]]!);
  return { triangles, lines: creases(vertices, faces), hull: thinned(vertices) };
}

/** The outline needs no more than the farthest points in a few hundred directions. */
function thinned(vertices: Triple[]): Triple[] {
  if (vertices.length <= 300) return vertices;
  const kept = new Set<Triple>();
  for (let i = 0; i < 240; i++) {
    const z = 1 - (2 * i + 1) / 240;
    const [r, a] = [Math.sqrt(1 - z * z), i * 2.399963];
    const d: Triple = [r * Math.cos(a), r * Math.sin(a), z];
    let best = vertices[0]!;
    let reach = -Infinity;
    for (const v of vertices) {
      const along = v[0] * d[0] + v[1] * d[1] + v[2] * d[2];
      if (along > reach) [best, reach] = [v, along];
    }
    kept.add(best);
  }
  return [...kept];
}

function creases(vertices: Triple[], faces: Triple[]): number[] {
  const seen = new Map<string, Triple>();
  const lines: number[] = [];
  for (const f of faces) {
    const [a, b, c] = f.map((i) => vertices[i]!) as [Triple, Triple, Triple];
    const n = unit(cross(minus(b, a), minus(c, a)));
    for (const [i, j] of [[f[0], f[1]], [f[1], f[2]], [f[2], f[0]]] as Pair[]) {
      const key = i < j ? `${i} ${j}` : `${j} ${i}`;
      const other = seen.get(key);
      if (other === undefined) seen.set(key, n);
      else if (dot(other, n) < 0.8) push(lines, vertices[i]!, vertices[j]!);
    }
  }
  return lines;
}

type Pair = [number, number];
const minus = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
function unit(a: Triple): Triple {
  const length = Math.hypot(...a) || 1;
  return [a[0] / length, a[1] / length, a[2] / length];
}

export function solid(shape: Shape): Solid {
  const [a = 1, b = 1, c = 1] = shape.size_mm;
  switch (shape.kind) {
    case "box":
      return box(shape.size_mm, shape.middle_mm);
    case "cylinder":
      return round(a, 0, b);
    case "tube":
      return round(a, b, c);
    case "sphere":
      return ball(a);
    case "mesh":
      return mesh(shape.vertices_mm ?? [], shape.faces ?? []);
  }
}

export function placed(p: Triple, turn: number[], centre: Triple): Triple {
  return [0, 1, 2].map(
    (i) => turn[3 * i]! * p[0] + turn[3 * i + 1]! * p[1] + turn[3 * i + 2]! * p[2] + centre[i]!,
  ) as Triple;
}
