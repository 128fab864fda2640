// Courses to begin with, and places along a way. The hill is a plane: x across it to the right, y
// up it, in mm.

import type { CourseAsked, Pair, Ramp, Way } from "./types";

/** Where a way is after so many mm: place and the angle it points at, rad to the left from uphill. */
export function wayAt(way: Way, along: number): { place: Pair; heading: number } {
  const { along_mm: s, places_mm: p, heading_deg: h } = way;
  let i = 0;
  while (i < s.length - 2 && s[i + 1]! < along) i++;
  const t = (along - s[i]!) / (s[i + 1]! - s[i]! || 1); // beyond its ends it goes straight on
  const mix = (a: number, b: number, u: number): number => a + (b - a) * u;
  const kept = Math.max(0, Math.min(1, t));
  return {
    place: [mix(p[i]![0], p[i + 1]![0], t), mix(p[i]![1], p[i + 1]![1], t)],
    heading: (mix(h[i]!, h[i + 1]!, kept) * Math.PI) / 180,
  };
}

const ramp = (at: Pair, turned: number, angle: number): Ramp => ({ at_mm: at, turned_deg: turned, angle_deg: angle, flank_mm: 220, top_mm: 140, width_mm: 560 });

/** Courses to begin with, each about eight seconds long. */
export const GIVEN: Record<string, CourseAsked> = {
  "Along the bank, over stones": {
    slope_deg: 22, speed_mm_per_s: 250, points_mm: [[-950, 40], [-320, 0], [300, 70], [950, 0]],
    stones: [{ at_mm: [-330, 92], height_mm: 18 }, { at_mm: [150, -34], height_mm: 22 }, { at_mm: [560, 132], height_mm: 26 }], ramps: [],
  },
  "Askew over a ramp": {
    slope_deg: 12, speed_mm_per_s: 250, points_mm: [[-930, -160], [0, 0], [930, 160]],
    stones: [{ at_mm: [-420, 0], height_mm: 16 }], ramps: [ramp([120, 20], -65, 18)],
  },
  "Up the switchback": {
    slope_deg: 24, speed_mm_per_s: 350, points_mm: [[-850, -360], [250, -300], [640, -40], [250, 230], [-700, 300]],
    stones: [{ at_mm: [-200, -250], height_mm: 20 }, { at_mm: [0, 350], height_mm: 24 }], ramps: [],
  },
};
