// Virtual trials: run them, watch them come in, and play what was recorded in real time.

import { api, Refusal } from "./api";
import { byId, el, fixed, oneStop, put, say } from "./dom";
import { DIRECTIONS, look, on, store, tellAll } from "./store";
import type { Table } from "./stage";
import type { Tilt } from "./tilt";
import type { Triple, TrialFound, TrialState } from "./types";

const WHEELS = ["front left", "front right", "rear left", "rear right"];
const LEAD = 9; // columns before the poses

/** One recording: float32 rows of time, angle, loads, CG and poses. */
export class Recording {
  readonly about: TrialFound;
  readonly rows: number;
  private readonly columns: number;
  private readonly values: Float32Array;

  constructor(buffer: ArrayBuffer) {
    const view = new DataView(buffer);
    if (new TextDecoder().decode(new Uint8Array(buffer, 0, 4)) !== "CFP1") throw new Error("That is no recording.");
    const length = view.getUint32(4, true);
    const header = JSON.parse(new TextDecoder().decode(new Uint8Array(buffer, 8, length))) as TrialFound & { rows: number; columns: number };
    this.about = header;
    this.rows = header.rows;
    this.columns = header.columns;
    this.values = new Float32Array(buffer, 8 + length);
  }

  get seconds(): number {
    return this.values[(this.rows - 1) * this.columns] ?? 0;
  }

  /** The row to show at a time: the last one not after it. */
  rowAt(time: number): number {
    let [low, high] = [0, this.rows - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((this.values[middle * this.columns] ?? 0) <= time) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** What happens on the way, with its moment in s. */
  events(): { what: string; time: number }[] {
    const found: { what: string; time: number }[] = [];
    for (let wheel = 0; wheel < 4; wheel++) {
      for (let row = 0; row < this.rows; row++) {
        if (this.at(row).load_g[wheel]! >= 1) continue;
        const { theta, time } = { theta: this.at(row).theta, time: this.values[row * this.columns]! };
        // A tyre that comes down again has not lifted for good.
        if (Array.from({ length: this.rows - row }, (_, k) => this.at(row + k).load_g[wheel]!).every((g) => g < 1)) {
          found.push({ what: `${WHEELS[wheel]} lifts at ${fixed(theta)}°`, time });
          break;
        }
      }
    }
    const end = this.at(this.rows - 1).theta;
    if (this.about.trial_outcome === "tips") found.push({ what: `goes over at ${fixed(this.about.trial_deg ?? end)}°`, time: this.seconds });
    if (this.about.trial_outcome === "slides") found.push({ what: `slides away at ${fixed(this.about.trial_slide_deg ?? end)}°`, time: this.seconds });
    return found.sort((a, b) => a.time - b.time);
  }

  /** How it ends: over which tyres it goes, or away. */
  get end(): string | null {
    if (this.about.trial_outcome === "slides") return "away";
    if (this.about.trial_outcome !== "tips") return null;
    const [fl, fr, rl, rr] = this.at(this.rows - 1).load_g.map((g) => Math.max(0, g)) as [number, number, number, number];
    const sides: [string, number][] = [["left", fl + rl], ["right", fr + rr], ["front", fl + fr], ["rear", rl + rr]];
    return sides.sort((a, b) => b[1] - a[1])[0]![0];
  }

  at(row: number): { theta: number; load_g: number[]; cg_mm: Triple; poses: number[][] } {
    const v = this.values.subarray(row * this.columns, (row + 1) * this.columns);
    const poses = Array.from({ length: 7 }, (_, i) => Array.from(v.subarray(LEAD + 7 * i, LEAD + 7 * i + 7)));
    return { theta: v[1]!, load_g: Array.from(v.subarray(2, 6)), cg_mm: [v[6]!, v[7]!, v[8]!], poses };
  }
}

export class Replay {
  private recording: Recording | null = null;
  private events: { what: string; time: number }[] = [];
  private time = 0;
  private speed = 1;
  private running = false;
  private last = 0;
  private drawn = 0;
  private since = 0;
  private state: TrialState | null = null;
  private timer = 0;
  /** What the last second of playing reached, for whoever wants to know. */
  rate = 0;

  constructor(private readonly stage: Table, private readonly tilt: Tilt) {
    on("bench", () => {
      if (this.state && this.state.truck !== store.bench.truck && this.recording) this.leave();
      store.trials = this.state && fits(this.state) ? this.state.found : [];
      tellAll("trials");
      if (!this.recording) this.draw();
    });
    this.draw();
    void this.poll();
  }

  private async poll(): Promise<void> {
    clearTimeout(this.timer);
    try {
      this.take(await api.trial());
    } catch {
      return; // The bench does not answer; the next change says so.
    }
    if (this.state?.state === "running") this.timer = window.setTimeout(() => void this.poll(), 250);
  }

  private take(state: TrialState): void {
    const was = this.state;
    this.state = state;
    store.trials = fits(state) ? state.found : [];
    tellAll("trials");
    if (was?.state === "running" && state.state !== "running") {
      const words = { done: `Trials done: ${state.done} of ${state.total}.`, stopped: `Trials stopped; ${state.done} of ${state.total} are kept.`, failed: `The trials failed: ${state.words}` };
      say(words[state.state as keyof typeof words] ?? "", state.state === "failed" ? "wrong" : "note");
    }
    if (!this.recording) this.draw();
  }

  private async run(headings: number[]): Promise<void> {
    const { rail } = store.view;
    try {
      this.take(await api.runTrial(headings, rail));
      say("The trial is running.");
      void this.poll();
    } catch (e) {
      if (e instanceof Refusal) say(e.message, "wrong");
      else throw e;
    }
  }

  private async open(file: string): Promise<void> {
    try {
      this.recording = new Recording(await api.poses(file));
    } catch (e) {
      return say(e instanceof Error ? e.message : String(e), "wrong");
    }
    this.events = this.recording.events();
    this.playing(true);
    if (this.recording.about.heading_deg !== null) look({ heading: this.recording.about.heading_deg });
    this.time = 0;
    this.draw();
    this.play();
  }

  /** While a recording plays it leads, and the sliders rest. */
  private playing(yes: boolean): void {
    this.tilt.playing = yes;
    for (const input of document.querySelectorAll<HTMLInputElement>(".sliders input, .ways button")) input.disabled = yes;
  }

  private leave(): void {
    this.pause();
    this.recording = null;
    this.playing(false);
    look({ tilt: store.view.tilt });
    this.draw();
  }

  private play(): void {
    const r = this.recording;
    if (!r) return;
    if (this.time >= r.seconds) this.time = 0;
    this.running = true;
    this.last = this.since = performance.now();
    this.drawn = 0;
    this.drawControls();
    requestAnimationFrame((now) => this.step(now));
  }

  private pause(): void {
    this.running = false;
    if (this.recording) this.drawControls();
  }

  /** Time comes from the clock, never from counting frames: a slow machine skips, it does not lag. */
  private step(now: number): void {
    const r = this.recording;
    if (!r || !this.running) return;
    this.time = Math.min(r.seconds, this.time + ((now - this.last) / 1000) * this.speed);
    this.last = now;
    this.show();
    this.drawn += 1;
    if (now - this.since > 500) {
      this.rate = (this.drawn * 1000) / (now - this.since);
      this.since = now;
      this.drawn = 0;
    }
    if (this.time >= r.seconds) return this.pause();
    requestAnimationFrame((next) => this.step(next));
  }

  /** Table, slider and map at this moment; at its end the truck goes where it went. */
  private show(): void {
    const r = this.recording!;
    const at = r.at(r.rowAt(this.time));
    const over = this.time >= r.seconds ? r.end : null;
    look({ tilt: Math.max(0, Math.min(90, at.theta)) });
    this.stage.show({ theta_deg: at.theta, poses: at.poses, load_g: at.load_g, cg_mm: at.cg_mm, heading_deg: store.view.heading }, over);
    const off = at.load_g.filter((g) => g < 1).length;
    const tyres = off === 0 ? "all four tyres down" : `${off} of 4 tyres off the table`;
    const end = over === null ? "" : over === "away" ? "; it slides away" : `; it goes over its ${over} tyres`;
    byId("standing").textContent = `Replay: table at ${fixed(at.theta)}°, ${tyres}${end}.`;
    byId("standing").classList.toggle("over", off >= 2 || over !== null);
    const scrub = document.getElementById("scrub") as HTMLInputElement | null;
    if (scrub) {
      scrub.value = this.time.toFixed(2);
      scrub.setAttribute("aria-valuetext", `${fixed(this.time)} seconds, table at ${fixed(at.theta)} degrees${end}`);
    }
    const clock = document.getElementById("replay-clock");
    if (clock) clock.textContent = `${fixed(this.time, 1)} s`;
  }

  private draw(): void {
    if (this.recording) return this.drawControls();
    const s = this.state;
    const busy = s?.state === "running";
    const found = store.trials;
    const replays = found.map((f) => el("option", { value: f.file }, `${name(f.heading_deg)}: ${outcome(f)}`));
    const kept = (s?.records ?? []).map((file) => el("option", { value: file }, `kept record ${file}`));
    const choice = el("select", { id: "replay-choice", "aria-label": "Recorded trial", class: "grow" }, ...replays, ...kept);
    const tick = el("input", { type: "checkbox", id: "trial-rail", "data-key": "rail", checked: store.view.rail });
    tick.addEventListener("change", () => look({ rail: tick.checked }));
    const rail = el("label", { class: "tick" }, tick, "against a rail");
    const tries = el("div", { class: "tries", role: "toolbar", "aria-label": "Virtual trials" },
      el("button", { type: "button", id: "trial-one", "data-key": "trial-one", onclick: () => void this.run([store.view.heading]) }, "Try it this way"),
      el("button", { type: "button", id: "trial-four", "data-key": "trial-four", onclick: () => void this.run(Object.values(DIRECTIONS).map((d) => d.heading)) }, "Try all four"), rail);
    oneStop(tries, "button, input");
    put(byId("trial"),
      busy
        ? el("progress", { class: "grow", max: s.total, value: s.done, "aria-label": "Trials done" })
        : null,
      busy ? el("span", {}, `${s.done} of ${s.total}`) : null,
      busy ? el("button", { type: "button", id: "trial-stop", onclick: () => void api.stopTrial().then((t) => this.take(t)) }, "Stop") : null,
      busy ? null : tries,
      replays.length + kept.length ? choice : null,
      replays.length + kept.length ? el("button", { type: "button", id: "replay-open", onclick: () => void this.open(choice.value) }, "Replay") : null);
  }

  private drawControls(): void {
    const r = this.recording!;
    const scrub = el("input", { type: "range", id: "scrub", "data-key": "scrub", class: "grow", min: 0, max: r.seconds.toFixed(2), step: 0.01, value: this.time.toFixed(2), "aria-label": "Moment of the recording" });
    scrub.addEventListener("input", () => {
      // Its end is rounded to a hundredth; drawn to there it is the recording's own.
      this.time = scrub.value === scrub.max ? r.seconds : Number(scrub.value);
      this.show();
    });
    const speeds = el("select", { id: "replay-speed", "data-key": "speed", "aria-label": "Speed" },
      ...[0.25, 0.5, 1, 2, 4].map((v) => el("option", { value: v, selected: v === this.speed }, v === 1 ? "real time" : v < 1 ? `${v * 100} %` : `${v} times`)));
    speeds.addEventListener("change", () => { this.speed = Number(speeds.value); });
    put(byId("trial"),
      el("button", { type: "button", id: "play", "data-key": "play", onclick: () => (this.running ? this.pause() : this.play()) }, this.running ? "Pause" : "Play"),
      scrub, el("output", { id: "replay-clock" }, `${fixed(this.time)} s`), speeds,
      el("button", { type: "button", id: "replay-leave", onclick: () => this.leave() }, "Back to the sliders"),
      el("div", { class: "events", role: "group", "aria-label": "Moments of the recording" }, ...this.events.map(({ what, time }) =>
        el("button", { type: "button", "data-key": `event-${time.toFixed(2)}-${what}`, onclick: () => { this.pause(); this.time = time; this.show(); } }, what))),
      el("p", {}, `Recorded trial${r.about.heading_deg === null ? "" : `, ${name(r.about.heading_deg)}`}: ${outcome(r.about)}.`));
    this.show();
  }
}

function name(heading: number): string {
  const known = Object.values(DIRECTIONS).find((d) => d.heading === heading);
  return known ? known.name.toLowerCase() : `turned ${fixed(heading, 0)}°`;
}

/** Whether trials are of the truck as it is, on the surface shown. */
const fits = (s: TrialState): boolean => s.truck === store.bench.truck && s.surface === store.bench.answers.surface;

function outcome(f: TrialFound): string {
  const held = f.hold === "rail" ? " against a rail" : "";
  if (f.trial_outcome === "tips") {
    const [low, high] = f.trial_ci_deg ?? [null, null];
    return `tips${held} at ${fixed(f.trial_deg)}°, ${fixed(low)} to ${fixed(high)}`;
  }
  return f.trial_outcome === "slides" ? `slides away at ${fixed(f.trial_slide_deg)}°` : f.trial_outcome;
}
