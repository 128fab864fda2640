// What becomes of the truck on the table once it has gone, and how it is drawn meanwhile.

import { Quaternion, Vector3, type Group } from "three";
import { fall, type Corner, type Fallen, type Wall } from "./fall";
import { hull } from "./outline";
import type { Moment } from "./stage";
import { store } from "./store";
import type { Pair } from "./types";

const SLICE = 60; // mm across, in which a falling truck is one shape
const GRAVITY = 9.80665;
const RUB = 0.6; // friction of a truck on its side on plywood; common practice, no source

/** Frames 60 a second, the way it falls in the truck's axes, and its CG before, mm. */
export interface Fate {
  frames: Fallen[];
  along: Vector3;
  cg: Vector3;
}

/** How it goes over a tip line, or "away", until it lies: in the plane that the line is square to, on
 * the table and on the floor at its foot. corners: of all its bodies as it stands, truck axes, mm.
 * hinge: mm down the table from the truck to its foot; board: mm from there to the floor. */
export function fate(points: Vector3[], moment: Moment, over: string, { hinge, board }: { hinge: number; board: number }): Fate {
  const [psi, theta] = [rad(moment.heading_deg), rad(moment.theta_deg)];
  const along = over === "away" ? new Vector3(-Math.cos(psi), Math.sin(psi), 0) : outwards(over);
  const aside = new Vector3(-along.y, along.x, 0);
  const cg = new Vector3(...(moment.cg_mm ?? store.scene.cg_mm));
  const inTable = (v: Vector3): number => v.x * Math.cos(psi) - v.y * Math.sin(psi); // up the table
  const corners = hulls(points, along, aside);
  const low = Math.min(0, ...corners.map((p) => p[1]));
  const down = inTable(along);
  const long = Math.hypot(down * Math.sin(theta), Math.cos(theta));
  const floor: Wall = {
    n: [(down * Math.sin(theta)) / long, Math.cos(theta) / long],
    aside: (inTable(aside) * Math.sin(theta)) / long,
    c: -((hinge * Math.sin(theta) + board) / 1000) / long,
  };
  const grip = over === "away" ? Math.min(store.answers.grip_range.likely, Math.tan(theta) - 0.1) : RUB;
  const pull: Pair = [-GRAVITY * Math.sin(theta) * down, -GRAVITY * Math.cos(theta)];
  const frames = fall(corners, flatly(cg, along), [{ n: [0, 1], aside: 0, c: low }, floor], pull, Math.max(0.05, grip), over !== "away");
  frames[frames.length - 1]!.up -= low; // what its tyres were squashed by
  return { frames, along, cg };
}

/** Puts what falls where it is after some seconds. */
export function lieAt(body: Group, { frames, along, cg }: Fate, seconds: number): void {
  const at = Math.min(frames.length - 1, seconds * 60);
  const [a, b] = [frames[Math.floor(at)]!, frames[Math.ceil(at)]!];
  const mix = (k: keyof Fallen): number => a[k] + (b[k] - a[k]) * (at % 1);
  body.quaternion.copy(new Quaternion().setFromAxisAngle(new Vector3(0, 0, 1).cross(along), mix("turned")));
  body.position.copy(cg).addScaledVector(along, mix("along") * 1000).add(new Vector3(0, 0, mix("up") * 1000));
  body.position.sub(cg.clone().applyQuaternion(body.quaternion));
}

/** Square to a tip line and away from the truck. */
function outwards(over: string): Vector3 {
  const points = store.scene.tip_points_mm;
  const ends: Record<string, Pair> = { rear: [3, 2], left: [2, 0], front: [0, 1], right: [1, 3] };
  const [a, b] = (ends[over] ?? [2, 0]).map((i) => points[i]!) as [Pair, Pair];
  const out = new Vector3(-(b[1] - a[1]), b[0] - a[0], 0).normalize();
  return out.x * (a[0] + b[0]) + out.y * (a[1] + b[1]) < 0 ? out.negate() : out;
}

const flatly = (p: Vector3, along: Vector3): Pair => [p.dot(along) / 1000, p.z / 1000];

/** The hull of each slice of the truck across the plane of its fall, at its inner and outer face. */
function hulls(points: Vector3[], along: Vector3, aside: Vector3): Corner[] {
  const slices = new Map<number, Vector3[]>();
  for (const p of points) {
    const slice = Math.floor(p.dot(aside) / SLICE);
    const found = slices.get(slice);
    if (found) found.push(p);
    else slices.set(slice, [p]);
  }
  return [...slices.values()].flatMap((slice) => {
    const ends = slice.map((p) => p.dot(aside) / 1000);
    const faces = [...new Set([Math.min(...ends), Math.max(...ends)])];
    return hull(slice.map((p) => flatly(p, along))).flatMap(([s, w]) => faces.map((e): Corner => [s, w, e]));
  });
}

const rad = (deg: number): number => (deg * Math.PI) / 180;
