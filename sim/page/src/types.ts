// What the server says, in mm, g and degrees. The Python side is crossfall/bench/scene.py and
// answers.py; keep the two together.

export type Triple = [number, number, number];
export type Pair = [number, number];

export interface Shape {
  kind: "box" | "cylinder" | "tube" | "sphere" | "mesh";
  size_mm: number[];
  middle_mm?: Triple;
  vertices_mm?: Triple[];
  faces?: Triple[];
}

export interface Part {
  label: string;
  row: number;
  carrier: string;
  mirrored: boolean;
  mass_g: number;
  cg_mm: Triple;
  centre_mm: Triple;
  turn: number[];
  shape: Shape | null;
}

export interface Axle {
  x_mm: number;
  track_mm: number;
  radius_mm: number;
  width_mm: number;
  contact_half_width_mm: number;
  bump_mm: number;
  droop_mm: number;
  locked: boolean;
}

export interface Scene {
  name: string;
  wheelbase_mm: number;
  axles: [Axle, Axle];
  tip_points_mm: Pair[];
  wedge_mm: [Pair, Pair][];
  cg_mm: Triple;
  sprung_cg_mm: Triple;
  clearance_mm: [Pair, Pair, Pair] | null;
  parts: Part[];
}

export interface Numbers {
  mass_g: number;
  sprung_g: number;
  unsprung_g: number;
  cg_mm: Triple;
  front_percent: number;
  axle_g: Pair;
  corner_g: [number, number, number, number];
  price: number;
}

export interface BudgetStep {
  what: string;
  deg: number;
}

export interface Case {
  direction: string;
  heading_deg: number;
  name: string;
  over: string;
  rigid_deg: number;
  compliant_deg: number | null;
  slide_deg: Triple | null;
  outcome: string;
  budget: BudgetStep[];
}

export interface Answers {
  /** Whether the compliant curve was worked out for this very truck, or carried along. */
  exact: boolean;
  surface: string | null;
  numbers: Numbers;
  headings_deg: number[];
  rigid_deg: number[];
  compliant_deg: (number | null)[];
  slide_deg: Triple[] | null;
  cases: Case[];
  gain: Record<string, [number, number, number, number]>;
}

/** What takes longer to find: the window of the two friction closures and the first lifts. */
export interface Window {
  revision: number;
  headings_deg: number[];
  low_deg: (number | null)[];
  high_deg: (number | null)[];
  first_lift_deg: (number | null)[];
}

export interface Row {
  row: number;
  name: string;
  on: string;
  count: number;
  mirror: boolean;
  mass_g: number;
  weighed: boolean;
  at_mm: Triple | null;
  price: number;
  pieces: number;
  here: boolean;
  note: string;
}

export interface Measure {
  key: string;
  name: string;
  unit: string;
  value: number;
  low: number;
  high: number;
  step: number;
}

export interface Bench {
  revision: number;
  file: string;
  needs_name: boolean;
  unsaved: boolean;
  recovered: boolean;
  undo: string | null;
  redo: string | null;
  trucks: string[];
  scene: Scene;
  rows: Row[];
  measures: Measure[];
  carriers: string[];
  /** Changes fitted, by name, with how many of each. */
  fitted: Record<string, number>;
  /** What the truck is compared with: before its changes, or as saved. */
  before: (Answers & { what: string }) | null;
  answers: Answers;
}

export interface PathPoint {
  theta_deg: number;
  /** Chassis, front axle, rear axle: x, y, z in mm and a quaternion x, y, z, w, table axes. */
  poses: number[][];
  cg_mm: Triple;
  load_g: [number, number, number, number];
}

export interface Path {
  heading_deg: number;
  tip_deg: number;
  over: string;
  springs: boolean;
  points: PathPoint[];
}

export type Edit =
  | { do: "set"; row: number; key: string; value: unknown }
  | { do: "measure"; key: string; value: number }
  | { do: "remove"; row: number }
  | { do: "add"; part: { name: string; on: string; mass_g: number; at_mm: Triple; price?: number } };

export interface TrialFound {
  heading_deg: number;
  outcome: string;
  tip_deg: number | null;
  tip_ci_deg: [number | null, number | null];
  first_lift_deg: number | null;
  slide_deg: number | null;
  file: string;
}

export interface TrialState {
  state: "none" | "running" | "done" | "stopped" | "failed";
  words: string;
  done: number;
  total: number;
  found: TrialFound[];
  revision: number;
  records?: string[];
}

export interface Candidate {
  name: string;
  label: string;
  price: number;
  most: number;
  group: string | null;
  requires: string[];
  note: string;
}

export interface Candidates {
  file: string;
  currency: string;
  changes: Candidate[];
  limits: string[];
}

export interface Buys {
  place: number;
  many: number;
  on_top_of: string[];
  gain_deg: Record<string, number | null>;
  gain_sd_deg: Record<string, number | null>;
  per_100g_deg: Record<string, number | null>;
  side: { what: string; by: number; unit: string }[];
  words: string;
}

export interface Bought {
  now_deg: Record<string, number | null>;
  changes: Record<string, Buys>;
  impossible: Record<string, string>;
}

export interface PlannedSet {
  chosen: Record<string, number>;
  labels: string[];
  price: number;
  deg: number;
  sd_deg: number;
  added_g: number;
  tied: boolean;
}

export interface Planned {
  now: PlannedSet;
  best: PlannedSet | null;
  runners: PlannedSet[];
  front: PlannedSet[];
  scored: number;
  proven: boolean;
}

export interface Weighed {
  file: string;
  found: { what: string; unit: string; value: number | null; low: number | null; high: number | null }[];
  doubts: string[];
  warnings: string[];
  next: string[];
}

export interface BoardCard {
  file: string;
  card: { heading_deg: number; name: string; low_deg: number; high_deg: number; deg: number; u_deg: number }[];
  readings: { heading_deg: number; measured_deg: number; predicted_deg: number | null; agrees: boolean }[];
  causes: string[];
  agrees: boolean | null;
}

export interface SweepTable {
  name: string;
  columns: Record<string, (number | string | null)[]>;
  rows: number;
  cut: boolean;
}
