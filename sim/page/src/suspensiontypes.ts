// What links and shocks amount to, under the names and units of `crossfall suspension --json`. The
// Python side is crossfall/app/suspension.py.

import type { Edit, Pair, Triple } from "./types";

export interface Rod {
  name: string;
  shock: boolean;
  chassis_mm: Triple;
  axle_mm: Triple;
}

export interface AxleTold {
  axle: "front" | "rear";
  x_mm: number;
  links: string[];
  rods: Rod[];
  roll_centre_mm: number;
  roll_axis_slope: number;
  roll_steer_deg_per_deg: number;
  instant_centre_mm: [number | null, number | null];
  anti_dive_percent?: number;
  anti_squat_percent?: number;
  castor_deg_per_mm: number;
  heave_steer_deg_per_mm: number;
  wheelbase_mm_per_mm: number;
  wheel_rate_n_per_mm: number;
  spring_spacing_mm: number;
  bump_mm: number;
  droop_mm: number;
  spring_squeeze_mm: Pair;
  /** Below nought where the spring is slack there. */
  spring_squeeze_at_droop_mm: Pair;
  soft_spring_bound_at_mm: number | null;
  /** Eye to eye at droop, ride height and bump. */
  shock_length_mm: [number | null, number | null, number | null];
  travel: {
    heave_mm: number[];
    roll_centre_mm: (number | null)[];
    anti_percent: (number | null)[];
    castor_deg: (number | null)[];
    wheelbase_mm: (number | null)[];
    wheel_rate_n_per_mm: (number | null)[];
  };
  rolling: { roll_deg: number[]; steer_deg: (number | null)[] };
}

export interface SuspensionOf {
  linked: boolean;
  axles: [AxleTold, AxleTold];
}

export interface SuspensionTold {
  truck: SuspensionOf;
  reference?: SuspensionOf;
}

export interface LinkMove {
  part: string;
  end: "chassis" | "axle";
  axis: "forwards" | "outwards" | "up";
  side_deg: number | null;
  climb_deg: number | null;
  descent_deg: number | null;
  why_not: string;
  edit: Edit;
}

export interface SuspensionMoves {
  surface: string;
  moved_by_mm: number;
  moves: LinkMove[];
}
