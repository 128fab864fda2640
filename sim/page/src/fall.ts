// What a truck does once it has gone: a rigid body in the plane of its fall, on table and floor.

import type { Pair } from "./types";

/** Where the body may not go: n · p + aside e < c; n of length one, in the plane of the fall, and e
 * how far a corner lies out of that plane. */
export interface Wall {
  n: Pair;
  aside: number;
  c: number;
}

/** A corner of the body: along, up, and out of the plane of its fall, m. */
export type Corner = [number, number, number];

/** The body at a moment: how far its CG has moved, m, and how far it has turned from up to along. */
export interface Fallen {
  along: number;
  up: number;
  turned: number;
}

const STEP = 2.5e-4; // s
const FRAME = 1 / 60; // s between two that are kept
const LONGEST = 2.2; // s, after which whatever still moves is held
const STIFF = 3e4; // N/m per kg and corner: some tenths of a millimetre under its weight
const DAMPED = 150; // N s/m per kg
const SHOVE = 0.05; // m/s with which it slides off
const CREEP = 0.02; // m/s under which friction grows with speed

/** Frames of the fall, 60 a second, of a body of uniform plate; lengths in m, along and up.
 *
 * corners: its hull as it stands, on the first wall. gravity: m/s^2. grip: friction coefficient of
 * all that touches. over: it turns over its outer edge, with what it takes to do so; else it slides
 * off. Turning is from up towards along. The last frame lies outside every wall. */
export function fall(corners: Corner[], cg: Pair, walls: Wall[], gravity: Pair, grip: number, over: boolean): Fallen[] {
  const arms = corners.map(([s, w, e]): Corner => [s - cg[0], w - cg[1], e]);
  const spread = (i: 0 | 1): number => Math.max(...arms.map((a) => a[i])) - Math.min(...arms.map((a) => a[i]));
  const inertia = (spread(0) ** 2 + spread(1) ** 2) / 12; // m^2, per kg
  const [edge, begun] = over ? setOff(corners, cg, gravity, inertia) : [cg, 0];
  let [s, w, phi, omega] = [cg[0], cg[1], 0, begun];
  let [vs, vw] = over ? [omega * (cg[1] - edge[1]), -omega * (cg[0] - edge[0])] : [SHOVE, 0];
  const frames: Fallen[] = [{ along: 0, up: 0, turned: 0 }];
  let still = 0;
  for (let k = 1; k * STEP < LONGEST && still < 0.15; k++) {
    let [fs, fw, moment] = [gravity[0], gravity[1], 0];
    const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
    for (const [a, b, e] of arms) {
      const [rs, rw] = [a * cos + b * sin, -a * sin + b * cos];
      for (const { n, aside, c } of walls) {
        const deep = c - aside * e - n[0] * (s + rs) - n[1] * (w + rw);
        if (deep <= 0) continue;
        const [us, uw] = [vs + omega * rw, vw - omega * rs];
        const press = Math.max(0, STIFF * deep - DAMPED * (us * n[0] + uw * n[1]));
        const slip = us * n[1] - uw * n[0]; // along the wall
        const drag = -grip * press * Math.max(-1, Math.min(1, slip / CREEP));
        const [ps, pw] = [press * n[0] + drag * n[1], press * n[1] - drag * n[0]];
        fs += ps;
        fw += pw;
        moment += rw * ps - rs * pw;
      }
    }
    vs += fs * STEP;
    vw += fw * STEP;
    omega += (moment / inertia) * STEP;
    s += vs * STEP;
    w += vw * STEP;
    phi += omega * STEP;
    still = Math.hypot(vs, vw) + Math.abs(omega) * Math.sqrt(inertia) < 0.03 && k * STEP > 0.2 ? still + STEP : 0;
    if (Math.floor((k * STEP) / FRAME) > Math.floor(((k - 1) * STEP) / FRAME)) frames.push({ along: s - cg[0], up: w - cg[1], turned: phi });
  }
  frames.push(outside({ along: s - cg[0], up: w - cg[1], turned: phi }, arms, cg, walls));
  return frames;
}

/** The outer edge it turns over, and how fast, rad/s, so that its CG gets over it. */
function setOff(corners: Corner[], cg: Pair, gravity: Pair, inertia: number): [Pair, number] {
  const low = Math.min(...corners.map((p) => p[1]));
  const [s, w] = corners.filter((p) => p[1] < low + 0.004).reduce((a, b) => (b[0] > a[0] ? b : a));
  const edge: Pair = [s, w];
  const [rs, rw] = [cg[0] - edge[0], cg[1] - edge[1]];
  const g = Math.hypot(...gravity);
  const up = -(rs * gravity[0] + rw * gravity[1]) / g;
  const arm = Math.hypot(rs, rw);
  const before = rs * gravity[1] - rw * gravity[0] > 0; // its CG is uphill of the edge yet
  return [edge, 0.4 + Math.sqrt((2 * g * (before ? arm - up : 0)) / (inertia + arm ** 2)) * 1.1];
}

/** The same, pushed out of what it may have sunk into. */
function outside(at: Fallen, arms: Corner[], cg: Pair, walls: Wall[]): Fallen {
  const [cos, sin] = [Math.cos(at.turned), Math.sin(at.turned)];
  const lies = { ...at };
  for (let round = 0; round < 20; round++) for (const { n, aside, c } of walls) {
    const deep = Math.max(...arms.map(([a, b, e]) => c - aside * e - n[0] * (cg[0] + lies.along + a * cos + b * sin) - n[1] * (cg[1] + lies.up - a * sin + b * cos)));
    if (deep <= 0) continue;
    lies.along += n[0] * deep;
    lies.up += n[1] * deep;
  }
  return lies;
}
