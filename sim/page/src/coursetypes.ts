// What page and server say of a course. The Python side is crossfall/app/course.py and
// course_process.py. The hill is a plane: x across it to the right, y up it, in mm.

import type { Pair } from "./types";

export interface Stone {
  at_mm: Pair;
  height_mm: number;
}

export interface Ramp {
  at_mm: Pair;
  /** To the left, from straight up the hill, that its way up points. */
  turned_deg: number;
  angle_deg: number;
  flank_mm: number;
  top_mm: number;
  width_mm: number;
}

export interface CourseAsked {
  slope_deg: number;
  speed_mm_per_s: number;
  points_mm: Pair[];
  stones: Stone[];
  ramps: Ramp[];
}

export interface Way {
  along_mm: number[];
  places_mm: Pair[];
  heading_deg: number[];
  seconds: number;
}

/** By place of the way: the ground's own slope and heading, and where the truck would go on it. */
export interface Standing {
  slope_deg: number[];
  local_heading_deg: number[];
  goes_at_deg: (number | null)[];
  in_hand_deg: (number | null)[];
}

export interface CourseStanding {
  way: Way;
  truck: Standing;
  reference?: Standing;
}

export interface CourseEvent {
  what: "lifts" | "slides" | "goes over" | "is stuck";
  wheel: string | null;
  begin_s: number;
  end_s: number;
  at_mm: number;
}

export interface Driven {
  whose: "truck" | "reference";
  outcome: "comes through" | "slides" | "goes over" | "is stuck";
  travelled_mm: number;
  off_line_mm: number;
  events: CourseEvent[];
  cpu_s: number;
  engine: string;
  file: string;
}

export interface KeptCourses {
  courses: Record<string, CourseAsked>;
  /** A sentence for each file of the folder that is no course. */
  wrong: string[];
}

export interface CourseState {
  /** Counts the courses driven, so that no tab takes another's. */
  number: number;
  state: "none" | "running" | "done" | "stopped" | "failed";
  words: string;
  done: number;
  total: number;
  found: Driven[];
  /** Which truck was driven, on which surface, and against what. */
  truck?: string;
  surface?: string;
  against?: string;
  way?: Way;
}

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
