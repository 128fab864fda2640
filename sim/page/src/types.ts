// Made from crossfall/app/replies.py and bodies.py by crossfall/app/typescript.py; change those
// instead. In mm, g and degrees; null is where there is no number.

export type Triple = [number, number, number];
export type Pair = [number, number];

export type Edit = Set | MeasureEdit | Remove | Add;

export interface TipAnswerLiftDeg {
  front_left: number | null;
  front_right: number | null;
  rear_left: number | null;
  rear_right: number | null;
}

export interface TipAnswerSlideDeg {
  low: number | null;
  likely: number | null;
  high: number | null;
}

export interface TipAnswerUncertainBy {
  name: string;
  pm_deg: number | null;
}

export interface TipAnswerTrialTermsDeg {
  event: number | null;
  step: number | null;
  solver: number | null;
  contact: number | null;
  rate: number | null;
  way: number | null;
  repeat: number | null;
  rest: number | null;
}

export interface TipAnswerBudgetDeg {
  rigid: number | null;
  tyres: number | null;
  ground: number | null;
  extension: number | null;
  compliant: number | null;
  trial: number | null;
}

export interface TipAnswerBudgetSteps {
  name: string;
  gained_deg: number | null;
}

/** What the truck does on one heading. */
export interface TipAnswer {
  /** how the truck stands: 0 nose uphill, 90 left side down, 180 nose downhill, 270 right side down */
  heading_deg: number;
  /** the heading in words */
  case: string;
  /** friction coefficient the answer is for */
  grip: number;
  /** what holds the wheels: brakes, or rail: the tyres it would tip over cannot slide */
  hold: string;
  /** the tyres the rigid truck goes over */
  over: string;
  /** tip of the truck as a block on its tip lines */
  rigid_deg: number;
  /** tip on springs and tyres; null where it slides away first */
  compliant_deg: number | null;
  /** 95 % range of compliant_deg over every tolerance of the file and the grip */
  compliant_range_deg: [number | null, number | null] | null;
  /** tip against a rail: given where it slides away first, or where that was asked */
  rail_deg: number | null;
  /** 95 % range of rail_deg */
  rail_range_deg: [number | null, number | null] | null;
  /** the first tyre leaves the table; null if none does before the tip */
  first_lift_deg: number | null;
  /** each tyre leaves the table; null if not before the tip */
  lift_deg: TipAnswerLiftDeg;
  /** the body first jumps on its springs and stands again */
  first_snap_deg: number | null;
  /** it slides away as a whole, at low, likely and high grip */
  slide_deg: TipAnswerSlideDeg;
  /** tip or slide, whichever comes first */
  goes_at_deg: number | null;
  /** 95 % range of goes_at_deg */
  goes_at_range_deg: [number | null, number | null];
  /** tips, slides, or too close to call: what comes first, at 95 % */
  outcome: string;
  /** probability, 0 to 1, that a tip comes first */
  tips_first_share: number;
  /** inputs behind the range, largest first: name, and pm_deg, what it alone gives the tip, plus or minus, 95 % */
  uncertain_by: TipAnswerUncertainBy[];
  /** tips, slides or stands, of the virtual trial */
  trial_outcome: string | null;
  /** tip of the virtual trial in the same conditions */
  trial_deg: number | null;
  /** its 95 % interval */
  trial_ci_deg: [number | null, number | null] | null;
  /** where the virtual trial began to slide away */
  trial_slide_deg: number | null;
  /** its 95 % interval */
  trial_slide_ci_deg: [number | null, number | null] | null;
  /** engine and version */
  trial_engine: string | null;
  /** careful: the trial measured its own error; quick: it did not, and its interval is wider */
  trial_care: string | null;
  /** parts of the interval, plus or minus, 95 %: event (bracket and fit), step, solver, contact and rate as measured by doing it finer, repeat (between two searches), rest */
  trial_terms_deg: TipAnswerTrialTermsDeg | null;
  /** the trial's first tyre leaves the table */
  trial_first_lift_deg: number | null;
  /** of the weight, on the lifting tyres at the last angle it stood */
  trial_load_left_percent: number | null;
  /** where that load would be gone, fitted */
  trial_fit_deg: number | null;
  /** its 95 % interval */
  trial_fit_ci_deg: [number | null, number | null] | null;
  /** of a second engine's trial: tips, slides or stands, of the virtual trial */
  other_trial_outcome: string | null;
  /** of a second engine's trial: tip of the virtual trial in the same conditions */
  other_trial_deg: number | null;
  /** of a second engine's trial: its 95 % interval */
  other_trial_ci_deg: [number | null, number | null] | null;
  /** of a second engine's trial: where the virtual trial began to slide away */
  other_trial_slide_deg: number | null;
  /** of a second engine's trial: its 95 % interval */
  other_trial_slide_ci_deg: [number | null, number | null] | null;
  /** of a second engine's trial: engine and version */
  other_trial_engine: string | null;
  /** how far the two engines' trials are apart in where it goes */
  engines_apart_deg: number | null;
  /** tip with one more thing allowed to give at each stage */
  budget_deg: TipAnswerBudgetDeg;
  /** the differences: name, and gained_deg, losses negative */
  budget_steps: TipAnswerBudgetSteps[];
  /** the answer in words */
  verdict: string;
}

export interface TrialAnswerTrialTermsDeg {
  event: number | null;
  step: number | null;
  solver: number | null;
  contact: number | null;
  rate: number | null;
  way: number | null;
  repeat: number | null;
  rest: number | null;
}

/** What a virtual trial on one heading gave. */
export interface TrialAnswer {
  /** tips, slides or stands, of the virtual trial */
  trial_outcome: string;
  /** tip of the virtual trial in the same conditions */
  trial_deg: number | null;
  /** its 95 % interval */
  trial_ci_deg: [number | null, number | null] | null;
  /** where the virtual trial began to slide away */
  trial_slide_deg: number | null;
  /** its 95 % interval */
  trial_slide_ci_deg: [number | null, number | null] | null;
  /** engine and version */
  trial_engine: string;
  /** careful: the trial measured its own error; quick: it did not, and its interval is wider */
  trial_care: string;
  /** parts of the interval, plus or minus, 95 %: event (bracket and fit), step, solver, contact and rate as measured by doing it finer, repeat (between two searches), rest */
  trial_terms_deg: TrialAnswerTrialTermsDeg;
  /** the trial's first tyre leaves the table */
  trial_first_lift_deg: number | null;
  /** of the weight, on the lifting tyres at the last angle it stood */
  trial_load_left_percent: number | null;
  /** where that load would be gone, fitted */
  trial_fit_deg: number | null;
  /** its 95 % interval */
  trial_fit_ci_deg: [number | null, number | null] | null;
}

export interface Shape {
  kind: "box" | "cylinder" | "tube" | "sphere" | "mesh";
  size_mm: number[];
  middle_mm?: Triple;
  vertices_mm?: Triple[];
  faces?: [number, number, number][];
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

export interface LowLikelyHigh {
  low: number;
  likely: number;
  high: number;
}

/** Tips all round and the four ways, on the surface shown; angles in degrees, under the keys that every answer has. Lists go with `heading_deg`. */
export interface Answers {
  /** Whether the compliant curve was worked out for this very truck, or carried along. */
  exact: boolean;
  surface: string;
  grip_range: LowLikelyHigh;
  numbers: Numbers;
  heading_deg: number[];
  rigid_deg: number[];
  /** Null where it slides away first, and where nothing is known yet. */
  compliant_deg: (number | null)[];
  /** Where it slides away first: the tip against a rail. */
  rail_deg: (number | null)[];
  first_lift_deg: (number | null)[];
  /** As a whole on its tyres, the same on every heading. */
  slide_deg: LowLikelyHigh;
  /** Of a truck that open differentials may let roll away: tip, slide or that, whichever is first. Null of any other, which slides as `slide_deg` says. */
  goes_at_deg: (number | null)[] | null;
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

export interface Reference {
  key: string;
  words: string;
}

export interface Before extends Answers {
  key: string;
  what: string;
  scene: Scene;
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
  references: Reference[];
  answers: Answers;
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

export interface Step {
  what: string;
  name: string;
  weakest_deg: number | null;
  saved: boolean;
}

/** The history, from the start; `now` steps lie behind. */
export interface Steps {
  now: number;
  steps: Step[];
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

export interface SideEffect {
  what: string;
  by: number;
  unit: string;
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
  side: SideEffect[];
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

export interface ScaleFinding {
  what: string;
  unit: string;
  value: number | null;
  low: number | null;
  high: number | null;
}

export interface Weighed {
  file: string;
  found: ScaleFinding[];
  outliers: string[];
  warnings: string[];
  next: string[];
}

export interface ScaleReading {
  at: string;
  raised: string;
  block_mm: string;
  loads: string;
}

/** Scale readings as they are typed. */
export interface ScaleForm {
  step_g: number;
  locked: boolean;
  readings: ScaleReading[];
}

export interface Readings {
  file: string;
  there: boolean;
  /** Null where there is no such file, or it says more than the form can show. */
  form: ScaleForm | null;
}

export interface CardLine {
  heading_deg: number;
  name: string;
  low_deg: number;
  high_deg: number;
  deg: number;
  u_deg: number;
}

export interface BoardReading {
  number: number;
  angles_deg: number[];
  heading_deg: number;
  measured_deg: number;
  predicted_deg: number | null;
  agrees: boolean;
}

export interface BoardCard {
  file: string;
  card: CardLine[];
  readings: BoardReading[];
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

export interface BegunHeading {
  heading_deg: number;
  compliant_deg: number;
  compliant_range_deg: Pair;
  slides_first: boolean;
}

export interface BegunNext {
  do: string;
  readings: string[];
  minutes: number;
  narrows_pm_deg: number;
  narrows_deg_per_minute: number;
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
  implausible: string[];
  headings: BegunHeading[];
  next: BegunNext[];
}

export interface Reconciled {
  what: string;
  unit: string;
  before: number;
  before_pm: number;
  after: number;
  after_pm: number;
}

export interface Move {
  part: string;
  mass_by_g: number;
  place_by_mm: Triple;
}

export interface LeftOut {
  reading: string;
  kind: string;
  off: number;
  unit: string;
}

export interface Agreement {
  agrees: boolean;
  /** Whether the file was brought together with all or some of these readings before. */
  counted: "all" | "some" | "";
  scales: boolean;
  board: boolean;
  sums: Reconciled[];
  moves: Move[];
  at_limit: string[];
  left_out: LeftOut[];
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

export interface Way {
  along_mm: number[];
  places_mm: Pair[];
  heading_deg: number[];
  seconds: number;
}

/** By place of the way: the ground's own slope and heading, and where the truck would go. */
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

export interface Rod {
  name: string;
  shock: boolean;
  chassis_mm: Triple;
  axle_mm: Triple;
}

export interface Travel {
  heave_mm: number[];
  instant_centre_mm: ([number | null, number | null])[];
  roll_centre_mm: (number | null)[];
  anti_percent: (number | null)[];
  castor_deg: (number | null)[];
  wheelbase_mm: (number | null)[];
  wheel_rate_n_per_mm: (number | null)[];
}

export interface Rolling {
  roll_deg: number[];
  steer_deg: (number | null)[];
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
  travel: Travel;
  rolling: Rolling;
}

export interface SuspensionOf {
  linked: boolean;
  axles: [AxleTold, AxleTold];
}

export interface SuspensionTold {
  truck: SuspensionOf;
  reference?: SuspensionOf;
}

export interface Set {
  do: "set";
  part: string;
  key: string;
  value: unknown;
}

export interface LinkMove {
  part: string;
  end: "chassis" | "axle";
  axis: "forwards" | "outwards" | "up";
  side_deg: number | null;
  climb_deg: number | null;
  descent_deg: number | null;
  why_not: string;
  edit: Set;
}

export interface SuspensionMoves {
  surface: string;
  moved_by_mm: number;
  moves: LinkMove[];
}

export interface Sweeps {
  tables: string[];
}

/** value: as the wizard understands what was typed. */
export interface Reading {
  value: unknown;
}

export interface Began {
  begun: Begun;
  bench: Bench;
}

export interface Agreed {
  found: Agreement;
  bench: Bench | null;
}

export interface Still {
  bytes: number;
}

export interface MeasureEdit {
  do: "measure";
  key: string;
  value: number | string;
}

export interface Remove {
  do: "remove";
  part: string;
}

export interface Add {
  do: "add";
  part: Record<string, unknown>;
  out_of?: string | null;
}
