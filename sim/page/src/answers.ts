// Made from crossfall/answers/keys.py by crossfall/answers/typescript.py; change those instead.
// Angles are in degrees; null is where there is no number.

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
  lift_deg: { front_left: number | null; front_right: number | null; rear_left: number | null; rear_right: number | null };
  /** the body first jumps on its springs and stands again */
  first_snap_deg: number | null;
  /** it slides away as a whole, at low, likely and high grip */
  slide_deg: { low: number | null; likely: number | null; high: number | null };
  /** tip or slide, whichever comes first */
  goes_at_deg: number | null;
  /** 95 % range of goes_at_deg */
  goes_at_range_deg: [number | null, number | null];
  /** tips, slides, or too close to call: what comes first, at 95 % */
  outcome: string;
  /** probability, 0 to 1, that a tip comes first */
  tips_first_share: number;
  /** inputs behind the range, largest first: name, and pm_deg, what it alone gives the tip, plus or minus, 95 % */
  uncertain_by: { name: string; pm_deg: number | null }[];
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
  trial_terms_deg: { event: number | null; step: number | null; solver: number | null; contact: number | null; rate: number | null; repeat: number | null; rest: number | null } | null;
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
  budget_deg: { rigid: number | null; tyres: number | null; ground: number | null; extension: number | null; compliant: number | null; trial: number | null };
  /** the differences: name, and gained_deg, losses negative */
  budget_steps: { name: string; gained_deg: number | null }[];
  /** the answer in words */
  verdict: string;
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
  trial_terms_deg: { event: number | null; step: number | null; solver: number | null; contact: number | null; rate: number | null; repeat: number | null; rest: number | null };
  /** the trial's first tyre leaves the table */
  trial_first_lift_deg: number | null;
  /** of the weight, on the lifting tyres at the last angle it stood */
  trial_load_left_percent: number | null;
  /** where that load would be gone, fitted */
  trial_fit_deg: number | null;
  /** its 95 % interval */
  trial_fit_ci_deg: [number | null, number | null] | null;
}
