// The two sliders under the table, and the pose they ask for.

import { api } from "./api";
import { byId, el, fixed, say } from "./dom";
import { between, type Stage } from "./stage";
import { DIRECTIONS, look, on, store } from "./store";

const OVER: Record<string, string> = { rear: "its rear tyres", left: "its left tyres", front: "its front tyres", right: "its right tyres" };

export class Tilt {
  private asked: AbortController | null = null;
  private timer = 0;
  private wasOver = false;
  /** While a recording plays the sliders follow it and do not lead. */
  playing = false;

  constructor(private readonly stage: Stage) {
    const [tilt, turn] = [byId<HTMLInputElement>("tilt"), byId<HTMLInputElement>("turn")];
    tilt.addEventListener("input", () => look({ tilt: Number(tilt.value) }));
    turn.addEventListener("input", () => look({ heading: Number(turn.value) % 360 }));
    byId("ways").append(
      ...Object.values(DIRECTIONS).map(({ heading, name }) =>
        el("button", { type: "button", "data-heading": heading, onclick: () => look({ heading }) }, name)));
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
    this.timer = window.setTimeout(() => {
      this.asked?.abort();
      this.asked = new AbortController();
      api.path(store.view.heading, this.asked.signal).then((path) => {
        store.path = path;
        this.pose();
      }, (e: unknown) => {
        if (!(e instanceof DOMException)) say(String(e instanceof Error ? e.message : e), "wrong");
      });
    }, 15);
  }

  private pose(): void {
    if (this.playing) return;
    const { tilt, heading } = store.view;
    const path = store.path;
    const fits = path !== null && Math.abs(path.heading_deg - heading) < 3 && !store.trying;
    const point = path && fits ? between(path.points, Math.min(tilt, path.tip_deg)) : null;
    const over = path !== null && fits && tilt > path.tip_deg ? path.over : null;
    this.stage.show({
      theta_deg: tilt, heading_deg: heading, poses: point?.poses ?? [],
      load_g: over ? [0, 0, 0, 0] : (point?.load_g ?? store.answers?.numbers.corner_g ?? [0, 0, 0, 0]),
      cg_mm: point?.cg_mm ?? null,
    }, over);
    const words = byId("standing");
    if (path && fits) {
      words.textContent = over
        ? `Gone over ${OVER[over] ?? over}. It tips at ${fixed(path.tip_deg)}°.`
        : `Stands, with ${fixed(path.tip_deg - tilt)}° in hand before it tips over ${OVER[path.over] ?? path.over}.`;
    }
    words.classList.toggle("over", over !== null);
    if ((over !== null) !== this.wasOver && over) say(words.textContent ?? "");
    this.wasOver = over !== null;
    const label = `The truck on the table, tilted ${fixed(tilt)} degrees, turned ${fixed(heading, 0)}. ${words.textContent ?? ""} Arrow keys look round it.`;
    byId("stage-canvas").setAttribute("aria-label", label);
  }
}
