// The slope course: a hill to draw a way over, the drive in the engine, and the clip of it.

import { api, Gone, Refusal } from "./api";
import { animated, filmed, filmKind, type Film } from "./clip";
import { CourseMap } from "./coursemap";
import { CourseStrip } from "./coursestrip";
import { GIVEN } from "./courses";
import type { CourseAsked, CourseEvent, CourseStanding, CourseState, Driven, KeptCourses } from "./types";
import { CourseView, type Seen } from "./courseview";
import { askFor, calm, drawnFlat, el, fixed, oneStop, put, say } from "./dom";
import { notice } from "./edits";
import { Recording } from "./replay";
import { save, stem } from "./share";
import { packOf, store } from "./store";
import { keepFresh } from "./tabs";

const FILM: [number, number] = [640, 400]; // px
const MADE = `Driven in the engine: the truck goes straight on while the hill turns under it as the way does, with stones and ramps
  where the way has them. It is steered to stay on its line; the reference has the same way beside it. Left out: that bends turn the front wheels, and what they cost. The curve above is no drive: it is the one answer for standing there.`;

export function coursePage(leaf: HTMLElement): void {
  new CoursePage(leaf);
}

class CoursePage {
  private readonly map: CourseMap;
  private readonly strip = new CourseStrip();
  private view: CourseView | null = null;
  private readonly canvas = el("canvas", { class: "course-canvas", role: "img", "aria-label": "The drive in three dimensions" });
  private readonly told = el("div", { class: "course-told" });
  private readonly controls = el("div", { class: "bar course-controls" });
  private readonly drive = el("button", { type: "button", class: "main", id: "course-drive", onclick: () => void this.run() }, "Drive it");
  private readonly slope = el("input", { type: "number", id: "course-slope", min: 0, max: 60, step: 1, value: 0 });
  private readonly speed = el("input", { type: "number", id: "course-speed", min: 50, max: 1000, step: 10, value: 0 });
  private readonly choice = el("select", { id: "course-choice", "aria-label": "Course" });
  private kept: Record<string, CourseAsked> = {};
  private standing: CourseStanding | null = null;
  private state: CourseState | null = null;
  private shown: { course: CourseAsked; seen: (Seen | null)[] } | null = null;
  private time = 0;
  private playing = false;
  private filming = false;
  private timer = 0;
  private asked = 0;

  constructor(leaf: HTMLElement) {
    leaf.classList.add("course");
    const first = Object.keys(GIVEN)[0]!;
    this.map = new CourseMap(structuredClone(GIVEN[first]!), (done) => this.changed(done));
    const choice = this.choice;
    choice.addEventListener("change", () => {
      const [kind, name] = [choice.value[0], choice.value.slice(1)];
      const course = kind === "k" ? this.kept[name] : GIVEN[name];
      if (!course) return;
      this.map.take(structuredClone(course));
      this.dials();
      this.changed(true);
    });
    this.offer({ courses: {}, wrong: [] }, `g${first}`);
    // Courses kept by other tabs and other benches come into view with the place.
    choice.addEventListener("focus", () => void this.fetchKept());
    void this.fetchKept();
    for (const [input, key] of [[this.slope, "slope_deg"], [this.speed, "speed_mm_per_s"]] as const) {
      input.addEventListener("change", () => {
        if (!input.checkValidity()) return input.reportValidity();
        this.map.course[key] = Number(input.value);
        this.changed(true);
        return true;
      });
    }
    const tools = el("div", { class: "hill-tools", role: "toolbar", "aria-label": "What lies on the hill" },
      el("button", { type: "button", id: "course-draw", onclick: () => { this.map.begin(); say("Draw the way on the hill with one stroke."); } }, "Draw a way"),
      el("button", { type: "button", id: "course-stone", onclick: () => this.map.add("stones") }, "Add a stone"),
      el("button", { type: "button", id: "course-ramp", onclick: () => this.map.add("ramps") }, "Add a ramp"),
      el("button", { type: "button", id: "course-keep", title: "As a file in the opened folder", onclick: () => this.askName() }, "Keep course…"));
    oneStop(tools);
    leaf.append(
      el("div", { class: "bar" }, choice, el("label", {}, "hill ", this.slope, " °"), el("label", {}, "at ", this.speed, " mm/s"), this.drive),
      this.map.root, el("div", { class: "hill-row" }, this.map.form, tools), el("div", { class: "course-stage", hidden: true }, this.canvas), this.controls, this.told, this.strip.root, el("p", { class: "text soft" }, MADE.replace(/\s+/g, " ")));
    this.dials();
    // Only what it was driven with makes a drive another one.
    const driven = (): string => {
      const { truck, answers, before } = store.bench;
      return `${truck} ${answers.surface} ${before?.key} ${before?.what}`;
    };
    let was = driven();
    keepFresh(leaf, () => {
      if (driven() !== was) this.changed(true);
      was = driven();
    });
    new MutationObserver(() => { this.view?.repaint(); this.view?.again(); }).observe(document.documentElement, { attributes: true, attributeFilter: ["data-light"] });
    new ResizeObserver(() => this.view?.again()).observe(this.canvas);
    this.changed(true);
  }

  private offer(kept: KeptCourses, chosen: string): void {
    this.kept = kept.courses;
    const option = (kind: string, name: string): HTMLElement => el("option", { value: kind + name, selected: kind + name === chosen }, name);
    const mine = Object.keys(this.kept).map((name) => option("k", name));
    put(this.choice, el("optgroup", { label: "Given" }, ...Object.keys(GIVEN).map((name) => option("g", name))),
      mine.length ? el("optgroup", { label: "Kept in this folder" }, ...mine) : null);
    if (kept.wrong.length) say(kept.wrong.slice(0, 2).join(" "), "wrong");
  }

  private async fetchKept(): Promise<void> {
    try {
      const kept = await api.courses();
      if (JSON.stringify(kept.courses) !== JSON.stringify(this.kept) || kept.wrong.length) this.offer(kept, this.choice.value);
    } catch (e) {
      this.refused(e);
    }
  }

  private askName(): void {
    const was = this.choice.value.startsWith("k") ? this.choice.value.slice(1) : "";
    askFor("course-name", "Keep this course", "Name, in the opened folder", was || "my course", "Keep it", (name) => void this.keep(name.trim(), name.trim() === was));
  }

  private async keep(name: string, over: boolean): Promise<void> {
    try {
      this.offer(await api.keepCourse(name, this.map.course, over), `k${name}`);
      say(`Kept as ${name}.course.toml.`);
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      if (e.where === "disk") notice(`Not kept: ${e.message}.`, [["Write mine over it", () => void this.keep(name, true)], ["Leave it as it is", () => {}]]);
      else if (e.status !== 0) say(e.message, "wrong");
    }
  }

  private dials(): void {
    this.slope.value = String(this.map.course.slope_deg);
    this.speed.value = String(this.map.course.speed_mm_per_s);
  }

  /** Asks again how it stands on the course; what was driven belongs to another one then. */
  private changed(done: boolean): void {
    if (done) this.leave();
    clearTimeout(this.timer);
    this.timer = window.setTimeout(() => void this.ask(), done ? 20 : 120);
  }

  private leave(): void {
    this.playing = false;
    this.shown = null;
    this.state = null;
    this.canvas.parentElement?.toggleAttribute("hidden", true);
    this.map.follow(null, 0);
    this.strip.now(null);
    put(this.controls);
    put(this.told);
  }

  private async ask(): Promise<void> {
    const mine = ++this.asked;
    try {
      const found = await api.courseStanding(this.map.course);
      if (mine !== this.asked) return;
      this.standing = found;
      this.map.show(found.way, []);
      this.strip.draw(found, []);
      this.drive.title = `${fixed(found.way.seconds)} s on the way`;
    } catch (e) {
      this.refused(e);
    }
  }

  private refused(e: unknown): void {
    if (!(e instanceof Refusal)) throw e;
    if (e instanceof Gone || e.status === 409) return; // the page says so, or takes the newer state
    put(this.told, el("p", { class: "text wrong" }, e.message));
  }

  private async run(): Promise<void> {
    if (this.drive.getAttribute("aria-disabled") === "true") return;
    this.leave();
    this.drive.setAttribute("aria-disabled", "true"); // and keeps the focus
    const course = structuredClone(this.map.course);
    const bench = store.bench;
    try {
      let state = await api.driveCourse(course);
      const { number } = state;
      while (state.state === "running" && state.number === number) {
        put(this.controls, el("progress", { max: state.total, value: state.done, "aria-label": "Drives done" }), el("button", { type: "button", id: "course-stop", onclick: () => void api.stopCourse() }, "Stop"));
        await new Promise((r) => setTimeout(r, 150));
        state = await api.courseState();
      }
      put(this.controls);
      if (state.number !== number) put(this.told, el("p", { class: "text" }, "Another tab drives a course meanwhile."));
      if (bench !== store.bench || state.number !== number) return;
      if (state.state === "failed") put(this.told, el("p", { class: "text wrong" }, `It was not driven: ${state.words}`));
      if (state.found.length) await this.take(course, state);
    } catch (e) {
      put(this.controls);
      this.refused(e);
    } finally {
      this.drive.removeAttribute("aria-disabled");
    }
  }

  private async take(course: CourseAsked, state: CourseState): Promise<void> {
    const one = async (whose: Driven["whose"]): Promise<Seen | null> => {
      const driven = state.found.find((f) => f.whose === whose);
      const scene = whose === "truck" ? store.bench.scene : store.bench.before?.scene;
      if (!driven || !scene) return null;
      return { scene, pack: packOf(), recording: new Recording(await api.coursePoses(driven.file)), events: driven.events };
    };
    const seen = [await one("truck"), await one("reference")];
    if (this.map.course.points_mm.length === 0 || !seen[0]) return;
    this.state = state;
    this.shown = { course, seen };
    this.time = 0;
    const events = this.events();
    this.map.show(state.way!, events);
    if (this.standing) this.strip.draw(this.standing, events);
    this.tell();
    if (!drawnFlat()) {
      this.canvas.parentElement!.hidden = false;
      this.view ??= new CourseView(this.canvas);
      this.view.take(course, state.way!, seen);
    }
    this.buttons();
    this.show();
    say(this.outcome(state.found[0]!, "The truck"));
    if (calm()) return;
    this.play();
  }

  private events(): { whose: string; event: CourseEvent }[] {
    return (this.state?.found ?? []).flatMap((f) => f.events.map((event) => ({ whose: f.whose, event })));
  }

  private outcome(driven: Driven, who: string): string {
    const end = driven.events.find((e) => e.what === driven.outcome);
    const lifts = driven.events.filter((e) => e.what === "lifts");
    const off = Math.abs(driven.off_line_mm) >= 5 && !end ? `, ${fixed(Math.abs(driven.off_line_mm), 0)} mm off its line at the end` : "";
    return `${who} ${driven.outcome}${end ? ` at ${fixed(end.at_mm, 0)} mm` : ""}${off}; ${lifts.length === 0 ? "no wheel lifts" : `${lifts.length} ${lifts.length === 1 ? "lift" : "lifts"} of a wheel`}.`;
  }

  private tell(): void {
    const state = this.state!;
    const jump = (e: CourseEvent): HTMLElement =>
      el("button", { type: "button", class: "event", title: `after ${fixed(e.begin_s)} s`, onclick: () => { this.playing = false; this.time = e.begin_s; this.show(); this.buttons(); } },
        `${e.wheel ? `${e.wheel} ${e.what}` : e.what}, ${fixed(e.at_mm, 0)} mm`);
    put(this.told, ...state.found.flatMap((driven) => {
      const who = driven.whose === "truck" ? "The truck" : `The reference (${state.against})`;
      const happened = el("div", { class: `events ${driven.whose}`, role: "toolbar", "aria-label": `What happened to ${who.toLowerCase()}` }, ...driven.events.map(jump));
      oneStop(happened);
      return [el("p", { class: `text outcome ${driven.whose}${driven.outcome === "comes through" ? "" : " bad"}` }, this.outcome(driven, who)), driven.events.length ? happened : null];
    }));
  }

  private get seconds(): number {
    return Math.max(0.1, ...(this.shown?.seen ?? []).map((s) => s?.recording.seconds ?? 0));
  }

  private buttons(): void {
    const scrub = el("input", { type: "range", id: "course-time", "data-key": "course-time", class: "grow", min: 0, max: this.seconds.toFixed(2), step: 0.02, value: this.time.toFixed(2), "aria-label": "Moment of the drive" });
    scrub.addEventListener("input", () => { this.playing = false; this.time = Number(scrub.value); this.show(); });
    const kind = drawnFlat() ? null : filmKind();
    put(this.controls,
      el("button", { type: "button", id: "course-play", "data-key": "course-play", onclick: () => (this.playing ? this.pause() : this.play()) }, this.playing ? "Pause" : "Play"),
      scrub, el("output", { id: "course-clock" }, ""),
      drawnFlat() ? null : el("button", { type: "button", id: "course-clip", "data-key": "course-clip", title: "An animated picture (WebP)", onclick: () => void this.clip(null) }, "Clip"),
      kind ? el("button", { type: "button", id: "course-film", "data-key": "course-film", title: "A film (MP4), which takes as long as it plays", onclick: () => void this.clip(kind) }, "MP4") : null,
      drawnFlat() ? null : el("button", { type: "button", id: "course-still", "data-key": "course-still", title: "This moment as a picture", onclick: () => this.still() }, "Still"),
      drawnFlat() ? null : el("button", { type: "button", id: "course-sheet", "data-key": "course-sheet", title: "This moment as a second page of the set-up sheet, as long as the truck stays as it is", onclick: () => void this.onSheet() }, "Sheet"));
    this.show();
  }

  private play(): void {
    if (this.time >= this.seconds) this.time = 0;
    this.playing = true;
    this.buttons();
    let last = performance.now();
    const step = (now: number): void => {
      if (!this.playing || !this.shown) return;
      this.time = Math.min(this.seconds, this.time + (now - last) / 1000);
      last = now;
      this.show();
      if (this.time >= this.seconds) return this.pause();
      requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  }

  private pause(): void {
    this.playing = false;
    this.buttons();
  }

  private show(): void {
    if (!this.shown || !this.state?.way) return;
    const recording = this.shown.seen[0]!.recording;
    const now = recording.at(recording.rowAt(this.time));
    const along = now.poses[0]![0]!;
    if (!this.filming) this.view?.draw(this.time);
    this.map.follow(this.state.way, along);
    this.strip.now(along);
    const scrub = document.getElementById("course-time") as HTMLInputElement | null;
    const off = now.load_g.filter((g) => g < 1).length;
    if (scrub) {
      scrub.value = this.time.toFixed(2);
      scrub.setAttribute("aria-valuetext", `${fixed(this.time)} seconds, ${fixed(along, 0)} millimetres along, ${off === 0 ? "all wheels down" : `${off} of 4 wheels off the ground`}`);
    }
    const clock = document.getElementById("course-clock");
    if (clock) clock.textContent = `${fixed(this.time)} s`;
  }

  /** The sheet a clip or still is drawn on, with what it shows written on it. */
  private film(): Film {
    const sheet = el("canvas", { width: FILM[0], height: FILM[1] });
    const pen = sheet.getContext("2d", { alpha: false })!;
    const style = getComputedStyle(document.documentElement);
    const ink = (name: string): string => style.getPropertyValue(name).trim();
    const { course, seen } = this.shown!;
    const [view, state] = [this.view!, this.state!];
    const write = (words: string, x: number, y: number, font: string, colour: string, align: CanvasTextAlign = "left"): void => {
      pen.font = `${font} ${style.getPropertyValue("--plain")}`;
      pen.textAlign = align;
      pen.lineWidth = 4;
      pen.strokeStyle = ink("--sheet");
      pen.strokeText(words, x, y);
      pen.fillStyle = ink(colour);
      pen.fillText(words, x, y);
    };
    const draw = (time: number): void => {
      view.draw(time, FILM);
      pen.drawImage(view.canvas, 0, 0, ...FILM);
      write(stem(), 14, 28, "600 20px", "--ink");
      write(`hill of ${fixed(course.slope_deg, 0)}°, ${state.surface}`, 14, 48, "13px", "--soft");
      if (seen[1]) write(`blue edges: ${state.against}`, 14, 66, "13px", "--blue");
      write(`${fixed(time)} s`, FILM[0] - 14, 28, "600 18px", "--ink", "right");
      state.found.forEach((driven, i) => {
        const past = driven.events.filter((e) => e.begin_s <= time && (e.what !== "lifts" || e.end_s >= time));
        const words = past.map((e) => (e.wheel ? `${e.wheel} ${e.what}` : e.what));
        if (words.length) write(`${driven.whose === "truck" ? "" : "reference: "}${[...new Set(words)].slice(-3).join(", ")}`, 14, FILM[1] - 16 - 22 * i, "600 15px", driven.whose === "truck" ? "--red" : "--blue");
      });
    };
    return { seconds: this.seconds, draw, sheet };
  }

  private async clip(kind: string | null): Promise<void> {
    this.playing = false;
    this.filming = true;
    const began = performance.now();
    const shown = this.shown;
    const bar = el("progress", { max: 1, value: 0, "aria-label": "Clip made" });
    let stop = false;
    put(this.controls, bar, el("button", { type: "button", id: "course-clip-stop", onclick: () => { stop = true; } }, "Stop"));
    try {
      const film = this.film();
      const stopped = (): boolean => stop || this.shown !== shown;
      const told = (share: number): void => { bar.value = share; };
      const made = kind ? await filmed(film, kind, told, stopped) : await animated(film, told, stopped);
      if (made) {
        save(made, `${stem()}-course.${kind ? "mp4" : "webp"}`);
        say(`${stem()}-course.${kind ? "mp4" : "webp"} is in your downloads: ${fixed(made.size / 1e6, 2)} MB, made in ${fixed((performance.now() - began) / 1000, 0)} s.`);
      }
    } catch (e) {
      say(e instanceof Error ? e.message : String(e), "wrong");
    } finally {
      this.filming = false;
      if (this.shown === shown && shown) {
        this.buttons();
        if (document.activeElement === document.body) document.getElementById(kind ? "course-film" : "course-clip")?.focus();
      }
    }
  }

  private still(): void {
    const film = this.film();
    film.draw(this.time);
    film.sheet.toBlob((content) => { if (content) save(content, `${stem()}-course.png`); });
    this.view?.again();
  }

  private async onSheet(): Promise<void> {
    const { course } = this.shown!;
    const film = this.film();
    film.draw(this.time);
    this.view?.again();
    const picture = film.sheet.toDataURL("image/png").split(",")[1]!;
    const told = this.state!.found.flatMap((driven) => {
      const who = driven.whose === "truck" ? "The truck" : `The reference (${this.state!.against})`;
      const events = driven.events.map((e) => `${e.wheel ? `${e.wheel} ${e.what}` : e.what} at ${fixed(e.at_mm, 0)} mm`);
      return [this.outcome(driven, who), ...(events.length ? [short(`${events.join(", ")}.`)] : [])];
    });
    const ground = `A hill of ${fixed(course.slope_deg, 0)}° on ${this.state!.surface}, driven at ${fixed(course.speed_mm_per_s, 0)} mm/s over ${course.stones.length} stones and ${course.ramps.length} ramps; here after ${fixed(this.time)} s.`;
    try {
      await api.keepStill(picture, [ground, ...told, "Driven in the engine: see the page for what is left out."]);
      say("This moment is the second page of the set-up sheet, as long as the truck stays as it is.");
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      say(e.message, "wrong");
    }
  }
}

const short = (words: string): string => (words.length > 230 ? `${words.slice(0, 226)} …` : words);
