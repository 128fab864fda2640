// What the server says, in mm, g and degrees. The Python side is crossfall/app/scene.py and
// answers.py; keep the two together. What is said about a tip angle has its types in answers.ts.

import type { TipAnswer, TrialAnswer } from "./answers";

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
  /** The part that is the drive pack, by its name in the file. */
  pack: string | null;
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

/** Tips all round and the four ways, on the surface shown; angles in degrees, under the keys that
 * every answer has. Lists go with `heading_deg`. */
export interface Answers {
  /** Whether the compliant curve was worked out for this very truck, or carried along. */
  exact: boolean;
  surface: string;
  grip_range: { low: number; likely: number; high: number };
  numbers: Numbers;
  heading_deg: number[];
  rigid_deg: number[];
  /** Null where it slides away first, and where nothing is known yet. */
  compliant_deg: (number | null)[];
  /** Where it slides away first: the tip against a rail. */
  rail_deg: (number | null)[];
  first_lift_deg: (number | null)[];
  slide_deg: { low: number; likely: number; high: number };
  /** Climb, left side down, descent, right side down in full; null until it is worked out. */
  ways: TipAnswer[] | null;
  /** Degrees per 10 g at a place, by direction and by what carries it: c0 + cx x + cy y + cz z. */
  gain: Record<string, Record<string, [number, number, number, number]>>;
  /** Whether they are of the truck on its springs and tyres, or of the rigid truck meanwhile. */
  gain_of: "compliant" | "rigid";
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

/** Something of the truck that is one of a few words. */
export interface Choice {
  key: string;
  name: string;
  choices: string[];
  value: string;
}

export interface Bench {
  /** The file being worked on, by a name that is never given twice; and which state of it. */
  document: string;
  revision: number;
  /** This very truck, whatever was done and undone on the way to it. */
  truck: string;
  file: string;
  needs_name: boolean;
  unsaved: boolean;
  recovered: boolean;
  undo: string | null;
  redo: string | null;
  trucks: string[];
  /** Surfaces of the truck's file that the answers can be shown on. */
  surfaces: string[];
  scene: Scene;
  rows: Row[];
  measures: Measure[];
  choices: Choice[];
  carriers: string[];
  /** Changes fitted, by name, with how many of each. */
  fitted: Record<string, number>;
  /** What the truck is compared with: the state pinned, else before its changes, or as saved. */
  before: Before | null;
  /** By which key that was chosen, and what could be chosen. */
  reference: string;
  references: { key: string; words: string }[];
  answers: Answers;
}

export interface Before extends Answers {
  key: string;
  what: string;
  scene: Scene;
}

/** What edits would do. */
export interface Tried {
  scene: Scene;
  rows: Row[];
  measures: Measure[];
  answers: Answers;
}

export interface Pulse {
  document: string;
  revision: number;
  unsaved: boolean;
  surface: string;
  reference: string;
  /** What is the matter with the file on disk, or nothing. */
  disk: string;
}

/** The history, from the start; `now` steps lie behind. */
export interface Steps {
  now: number;
  steps: { what: string; name: string; weakest_deg: number | null; saved: boolean }[];
}

export interface PathPoint {
  theta_deg: number;
  /** Chassis, front axle, rear axle: x, y, z in mm and a quaternion x, y, z, w, table axes. */
  poses: number[][];
  cg_mm: Triple;
  load_g: [number, number, number, number];
}

/** From level to the tip on one heading; where it slides first, against a rail from there on. */
export interface Path {
  heading_deg: number;
  surface: string;
  compliant_deg: number | null;
  rail_deg: number | null;
  slide_deg: number | null;
  goes_at_deg: number | null;
  over: string;
  points: PathPoint[];
}

export type Edit =
  | { do: "set"; part: string; key: string; value: unknown }
  | { do: "measure"; key: string; value: number | string }
  | { do: "remove"; part: string }
  | { do: "add"; part: Record<string, unknown>; out_of?: string };

export interface PartField {
  key: string;
  meaning: string;
  many: number;
  needed: boolean;
  choices: string[];
  start: number | number[] | string | null;
}

export interface PartKind {
  kind: string;
  words: string;
  fields: PartField[];
}

/** What to ask of a new part, and the lumps that it can be taken out of. */
export interface PartForm {
  kinds: PartKind[];
  materials: string[];
  meshes: string[];
  lumps: string[];
  currency: string;
}

export interface TrialFound extends TrialAnswer {
  heading_deg: number;
  hold: string;
  file: string;
}

export interface TrialState {
  state: "none" | "running" | "done" | "stopped" | "failed";
  words: string;
  done: number;
  total: number;
  found: TrialFound[];
  /** Which truck they are of. */
  truck: string;
  surface: string;
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
  /** What it does, in words. */
  does: string;
}

export interface Candidates {
  file: string;
  currency: string;
  changes: Candidate[];
  limits: string[];
  /** Tells one state of the file from another. */
  stamp: string;
  /** After an edit of the list: its text before. */
  was?: string;
}

export interface Buys {
  place: number;
  many: number;
  on_top_of: string[];
  gain_deg: Record<string, number | null>;
  gain_sd_deg: Record<string, number | null>;
  per_100g_deg: Record<string, number | null>;
  /** Whether the gain's sign is another one at the ends of what is not known. */
  turns: Record<string, boolean>;
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
  /** It slides away first there, so that `deg` is the angle against a rail. */
  slides: boolean;
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

/** Scale readings as they are typed. */
export interface ScaleForm {
  step_g: number;
  locked: boolean;
  readings: { at: string; raised: string; block_mm: string; loads: string }[];
}

export interface Readings {
  file: string;
  there: boolean;
  /** Null where there is no such file, or it says more than the form can show. */
  form: ScaleForm | null;
}

export interface BoardCard {
  file: string;
  card: { heading_deg: number; name: string; low_deg: number; high_deg: number; deg: number; u_deg: number }[];
  readings: { number: number; angles_deg: number[]; heading_deg: number; measured_deg: number; predicted_deg: number | null; agrees: boolean }[];
  causes: string[];
  agrees: boolean | null;
}

export interface SweepTable {
  name: string;
  columns: Record<string, (number | string | null)[]>;
  rows: number;
  cut: boolean;
}

/** What a copy to look at carries: the state, and how it stands by heading. */
export interface Frozen {
  date: string;
  turn_deg: number;
  bench: Bench;
  paths: Record<number, Path>;
}

/** One reading that the wizard asks for. */
export interface Question {
  key: string;
  words: string;
  do: string;
  hint: string;
  kind: "mm" | "g" | "N/mm" | "word" | "yes or no" | "place" | "name";
  choices: string[];
  needed: boolean;
  after: string;
  minutes: number;
  picture: string;
  caution: string;
  first: boolean;
}

export interface Wizard {
  questions: Question[];
  /** Drawings by name, as SVG. */
  pictures: Record<string, string>;
  cautions: Record<string, string>;
  begun: boolean;
  as_begun: boolean;
  weighed: boolean;
  tilted: boolean;
}

export interface Begun {
  truck: string;
  file: string;
  readings_file: string;
  mass_g: number;
  mass_pm_g: number;
  cg_mm: Triple;
  cg_pm_mm: Triple;
  typical: string[];
  doubts: string[];
  headings: { heading_deg: number; compliant_deg: number; compliant_range_deg: Pair; slides_first: boolean }[];
  next: { do: string; readings: string[]; minutes: number; narrows_pm_deg: number }[];
}

export interface Agreement {
  agrees: boolean;
  /** Whether the file was brought together with all or some of these readings before. */
  counted: "all" | "some" | "";
  scales: boolean;
  board: boolean;
  sums: { what: string; unit: string; before: number; before_pm: number; after: number; after_pm: number }[];
  moves: { part: string; mass_by_g: number; place_by_mm: Triple }[];
  at_limit: string[];
  left_out: { reading: string; kind: string; off: number; unit: string }[];
}

/** A sweep run from the page; table: the name of its table once it is over. */
export interface SweepState {
  state: "none" | "running" | "stopping" | "stopped" | "done" | "failed";
  words: string;
  done: number;
  total: number;
  left_s: number | null;
  table: string;
}
