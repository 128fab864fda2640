// The row over the table: from where one looks, through what, and which way a part moves.

import { el, oneStop } from "./dom";
import { ALONG, type Handles } from "./handles";
import { on } from "./store";

export type From = "corner" | "side" | "rear" | "front" | "top";
/** Degrees round the truck from its nose, to its left, and up; null where it stays with the table. */
export const FROM: Record<From, { words: string; round: number | null; up: number }> = {
  corner: { words: "Corner", round: null, up: 20 },
  side: { words: "Side", round: -90, up: 0 },
  rear: { words: "Rear", round: 180, up: 0 },
  front: { words: "Front", round: 0, up: 0 },
  top: { words: "Top", round: 180, up: 88 },
};

export interface Looked {
  from: From | null;
  glass: boolean;
  look(from: From): void;
  seeThrough(yes: boolean): void;
}

export function makeStageBar(stage: Looked, handles: Handles): { follow(): void; root: HTMLElement } {
  const looks = (Object.keys(FROM) as From[]).map((from, i) =>
    el("button", { type: "button", id: `look-${from}`, "data-from": from, title: `Look from there: key ${i + 1} on the table`, onclick: () => stage.look(from) }, FROM[from].words));
  const through = el("button", { type: "button", id: "see-through", title: "Key t on the table", onclick: () => stage.seeThrough(!stage.glass) }, "See through");
  const moves = el("button", { type: "button", id: "move-along", class: "moves", title: "Key m at the part", onclick: () => handles.next() });
  const tools = el("div", { class: "looks", role: "toolbar", "aria-label": "How to look at the table, and which way the picked part moves" }, ...looks, through, moves);
  oneStop(tools);
  const root = el("div", { class: "stage-bar" }, tools);
  const follow = (): void => {
    looks.forEach((b) => b.setAttribute("aria-pressed", String(b.dataset["from"] === stage.from)));
    through.setAttribute("aria-pressed", String(stage.glass));
    moves.hidden = handles.movable() === null;
    moves.textContent = `Moves: ${ALONG[handles.along].words}`;
  };
  on(["pick", "bench"], follow);
  follow();
  return { follow, root };
}
