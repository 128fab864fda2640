// The two sliders under the table, and the pose they ask for.

import { api, Refusal } from "./api";
import { byId, el, fixed, oneStop, say } from "./dom";
import { between, type Table } from "./stage";
import { DIRECTIONS, look, on, store } from "./store";
import type { TipAnswer, Path } from "./types";

const OVER: Record<string, string> = { rear: "its rear tyres", left: "its left tyres", front: "its front tyres", right: "its right tyres" };

export class Tilt {
  private asked: AbortController | null = null;
  private timer = 0;
  private wasOver = false;
  /** While a recording plays the sliders follow it and do not lead. */
  playing = false;

  constructor(private readonly stage: Table) {
    const [tilt, turn] = [byId<HTMLInputElement>("tilt"), byId<HTMLInputElement>("turn")];
    tilt.addEventListener("input", () => look({ tilt: Number(tilt.value) }));
    turn.addEventListener("input", () => look({ heading: Number(turn.value) % 360 }));
    byId("ways").append(
      ...Object.values(DIRECTIONS).map(({ heading, name }) =>
        el("button", { type: "button", "data-heading": heading, onclick: () => look({ heading }) }, name)));
    oneStop(byId("ways"));
    on("view", () => this.follow());
    on("shown", () => this.fetchPath());
    on("path", () => this.pose());
    let heading = -1;
    on("view", () => {
      if (heading !== store.view.heading) this.fetchPath();
      heading = store.view.heading;
    });
  }

  private follow(): void {
    const { tilt, heading } = store.view;
    const [a, b] = [byId<HTMLInputElement>("tilt"), byId<HTMLInputElement>("turn")];
    a.value = String(tilt);
    b.value = String(heading);
    byId("tilt-value").textContent = `${fixed(tilt)}°`;
    byId("turn-value").textContent = `${fixed(heading, 0)}°`;
    a.setAttribute("aria-valuetext", `${fixed(tilt)} degrees`);
    b.setAttribute("aria-valuetext", `${fixed(heading, 0)} degrees to the left from nose uphill`);
    for (const button of byId("ways").querySelectorAll("button")) {
      button.setAttribute("aria-pressed", String(Number(button.dataset["heading"]) === heading));
    }
    this.pose();
  }

  /** Asks for the way the truck takes from level to its tip at this heading; latest wins. */
  private fetchPath(): void {
    clearTimeout(this.timer);
    if (store.trying || !store.bench) return this.pose();
    if (!store.path) this.pose(); // says that it is being worked out
    this.timer = window.setTimeout(() => {
      this.asked?.abort();
      this.asked = new AbortController();
      api.path(store.view.heading, this.asked.signal).then((path) => {
        store.path = path;
        this.pose();
      }, (e: unknown) => {
        if (e instanceof Refusal && (e.status === 409 || e.status === 0)) return; // a newer state is on its way
        if (!(e instanceof DOMException)) say(String(e instanceof Error ? e.message : e), "wrong");
      });
    }, 15);
  }

  private pose(): void {
    if (this.playing) return;
    const { tilt, heading } = store.view;
    const path = store.path;
    const here = path !== null && path.surface === store.answers?.surface;
    const fits = path !== null && here && Math.abs(path.heading_deg - heading) < 3 && !store.trying;
    // Where it slides first, a rail holds it only where one was put.
    const away = path !== null && path.rail_deg !== null && !store.view.rail;
    const end = (away ? path?.goes_at_deg : (path?.compliant_deg ?? path?.rail_deg)) ?? 90;
    const point = path && fits ? between(path.points, Math.min(tilt, end)) : null;
    const over = path !== null && fits && tilt > end ? (away ? "away" : path.over) : null;
    this.stage.show({
      theta_deg: tilt, heading_deg: heading, poses: point?.poses ?? [],
      load_g: over ? [0, 0, 0, 0] : (point?.load_g ?? store.answers?.numbers.corner_g ?? [0, 0, 0, 0]),
      cg_mm: point?.cg_mm ?? null,
    }, over);
    const words = byId("standing");
    const gone = path !== null && fits && tilt > (path.goes_at_deg ?? 90);
    if (path && fits) words.textContent = standing(path, tilt);
    else if (!here) words.textContent = "Working out how it stands…";
    words.classList.toggle("over", gone);
    if (gone && !this.wasOver) say(words.textContent ?? "");
    this.wasOver = gone;
    const label = `The truck on the table, tilted ${fixed(tilt)} degrees, turned ${fixed(heading, 0)}. ${words.textContent ?? ""} Arrow keys look round it, Enter takes the picked part.`;
    byId("stage-canvas").setAttribute("aria-label", label);
  }
}

/** How it stands at a tilt, what is in hand until it tips or slides, or what has happened. */
function standing(path: Path, tilt: number): string {
  const over = OVER[path.over] ?? path.over;
  const { compliant_deg: tip, rail_deg: rail, slide_deg: slide, goes_at_deg: goes } = path;
  if (goes === null || (tip === null && rail === null)) return "No tip was found on this heading.";
  const slides = rail !== null && slide !== null;
  if (tilt <= goes) {
    const rest = slides ? `its tyres slide; against a rail it tips over ${over} at ${fixed(rail)}°` : `it tips over ${over}`;
    return `Stands, with ${inHand(path, tilt, goes)} in hand before ${close(path) ? `it slides or tips over ${over}, which is too close to call` : rest}.`;
  }
  if (!slides) return `Gone over ${over}. It tips at ${fixed(tip)}°.`;
  const held = store.view.rail ? "Held by a rail as here, it has" : "Against a rail it would have";
  if (tilt <= rail) return `Slides away at ${fixed(slide)}°. ${held} ${fixed(rail - tilt)}° in hand before it tips over ${over}.`;
  return `Gone. It slides away at ${fixed(slide)}°, and tips over ${over} at ${fixed(rail)}° where a rail holds it.`;
}

/** All that is known of the heading, where it is one of the four ways. */
const wayOf = (path: Path): TipAnswer | undefined =>
  store.trying ? undefined : store.answers?.ways?.find((w) => w.heading_deg === path.heading_deg);

const close = (path: Path): boolean => wayOf(path)?.outcome === "too close to call";

/** Degrees until it goes; with its range, so that nobody takes the middle of it for a promise. */
function inHand(path: Path, tilt: number, goes: number): string {
  const [low, high] = wayOf(path)?.goes_at_range_deg ?? [null, null];
  const middle = `${fixed(goes - tilt)}°`;
  if (low === null || high === null) return middle;
  return low < tilt ? `${middle} (perhaps nothing, at most ${fixed(high - tilt)}°)` : `${middle} (${fixed(low - tilt)} to ${fixed(high - tilt)})`;
}
