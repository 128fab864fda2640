// The history as a strip: every step with its weakest angle; a click goes there.

import { api, Refusal } from "./api";
import { askFor, byId, el, fixed, oneStop, put, say, signed } from "./dom";
import { change } from "./edits";
import { on, store } from "./store";
import type { Steps } from "./types";

export function makeHistory(): void {
  const strip = byId("history");
  const list = el("div", { class: "steps" });
  const name = el("button", { type: "button", id: "step-name", onclick: () => ask() }, "Name this step…");
  const pin = el("button", { type: "button", id: "step-pin", title: "Compare everything with the truck as it is now", onclick: () => { void change(() => api.pin("now"), "compared with this step from now on"); } }, "Compare with this");
  strip.append(list, el("div", { class: "step-tools" }, name, pin));
  oneStop(strip);
  let told: Steps | null = null;
  let timer = 0;

  const draw = (): void => {
    const steps = told?.steps ?? [];
    strip.hidden = steps.length < 2;
    if (!told || strip.hidden) return;
    const known = steps.map((s) => s.weakest_deg).filter((v): v is number => v !== null);
    const [low, high] = [Math.min(...known) - 0.5, Math.max(...known) + 0.5];
    put(list, ...steps.map((s, i) => {
      const v = s.weakest_deg;
      const before = i ? steps[i - 1]!.weakest_deg : null;
      const gain = v !== null && before !== null ? `, ${signed(v - before, 1)}°` : "";
      const words = `${s.name || s.what}${v === null ? "" : `: weakest ${fixed(v)}°${gain}`}${s.saved ? ", as saved" : ""}`;
      const bar = el("i", { class: "step-bar", "aria-hidden": "true" });
      bar.style.height = `${v === null ? 2 : Math.round(3 + (15 * (v - low)) / (high - low))}px`;
      return el("button", { type: "button", class: `step${s.saved ? " saved" : ""}${i > told!.now ? " undone" : ""}`, "data-key": `step-${i}`, "aria-pressed": String(i === told!.now), title: words, "aria-label": `Step ${i}: ${words}`,
        onclick: () => void change(() => api.go(i), i === 0 ? "back at the start" : `at the step: ${s.name || s.what}`) },
        bar, el("span", {}, s.name ? s.name : v === null ? "…" : `${fixed(v)}°`));
    }));
    name.disabled = told.now === 0;
    list.querySelector<HTMLElement>("[aria-pressed='true']")?.scrollIntoView({ block: "nearest", inline: "nearest" });
  };
  const fetchSteps = async (): Promise<void> => {
    try {
      told = await api.history();
      draw();
    } catch (e) {
      if (!(e instanceof Refusal)) throw e; // a newer state is on its way, with its own steps
    }
  };
  const later = (): void => {
    clearTimeout(timer);
    timer = window.setTimeout(() => void fetchSteps(), 150);
  };
  on("bench", later);
  // The weakest angle of this step is known once its tips are.
  let exact = "";
  on("shown", () => {
    if (store.trying || !store.answers.exact || exact === store.bench.truck + store.answers.surface) return;
    exact = store.bench.truck + store.answers.surface;
    later();
  });

  const ask = (): void => {
    if (!told || told.now === 0) return;
    const step = told.now;
    askFor("new-step", "Name this step", `What to call the truck after “${told.steps[step]!.what}”`, told.steps[step]!.name, "Name it", (name) => {
      api.nameStep(step, name).then((found) => { told = found; draw(); }, (e: unknown) => {
        if (!(e instanceof Refusal)) throw e;
        say(e.message, "wrong");
      });
    }, { maxlength: 60 });
  };
}
