// The notebook's index tabs, and the smaller ones of a page that holds several. A page is made when
// it is first opened, and told by an "open" event whenever it comes into view again.

import { byId, el } from "./dom";
import { on } from "./store";

export interface Leaf {
  id: string;
  name: string;
  make: (leaf: HTMLElement) => void;
}

/** Whether a page is in view, and none that it lies in is hidden. */
export const inSight = (leaf: Element): boolean => leaf.closest("[hidden]") === null;

/** Asks a page's own questions anew after every change of the truck: at once where it is in view,
 * else when it comes into view. */
export function keepFresh(leaf: HTMLElement, refresh: () => void, delay = 0): void {
  let stale = false;
  let timer = 0;
  const now = (): void => {
    clearTimeout(timer);
    if (!stale || !inSight(leaf)) return;
    stale = false;
    refresh();
  };
  on("bench", () => {
    stale = true;
    clearTimeout(timer);
    timer = window.setTimeout(now, delay);
  });
  leaf.addEventListener("open", now);
}

export function makeTabs(leaves: Leaf[]): void {
  tabsIn(byId("tabs"), byId("leaf"), leaves);
}

/** A page that holds several, with a row of its own to choose among them. */
export function several(label: string, leaves: Leaf[]): Leaf["make"] {
  return (leaf) => {
    const bar = el("div", { class: "subtabs", role: "tablist", "aria-label": label });
    leaf.classList.add("several");
    leaf.append(bar);
    tabsIn(bar, leaf, leaves);
  };
}

/** Opens a page by its name, and the ones it lies in. */
export function goTo(...ids: string[]): void {
  for (const id of ids) document.getElementById(`tab-${id}`)?.click();
}

function tabsIn(bar: HTMLElement, holder: HTMLElement, leaves: Leaf[]): void {
  const made = new Map<string, HTMLElement>();
  const tabs = leaves.map((leaf, i) => {
    const tab = el("button", { type: "button", role: "tab", id: `tab-${leaf.id}`, onclick: () => open(leaf.id) }, leaf.name);
    tab.addEventListener("keydown", (e) => {
      const to = { ArrowRight: i + 1, ArrowLeft: i - 1, Home: 0, End: leaves.length - 1 }[e.key];
      if (to === undefined) return;
      e.preventDefault();
      open(leaves[(to + leaves.length) % leaves.length]!.id, true);
    });
    bar.append(tab);
    return tab;
  });
  const open = (id: string, focus = false): void => {
    leaves.forEach((leaf, i) => {
      const tab = tabs[i]!;
      const chosen = leaf.id === id;
      const was = made.get(leaf.id);
      tab.setAttribute("aria-selected", String(chosen));
      tab.tabIndex = chosen ? 0 : -1;
      if (was) was.hidden = !chosen;
      if (!chosen) return;
      if (focus) tab.focus();
      if (!was) {
        const page = el("div", { role: "tabpanel", id: `leaf-${id}`, "aria-labelledby": `tab-${id}` });
        holder.append(page);
        made.set(id, page);
        tab.setAttribute("aria-controls", page.id);
        leaf.make(page);
      } else for (const one of [was, ...was.querySelectorAll('[role="tabpanel"]')]) if (inSight(one)) one.dispatchEvent(new Event("open"));
    });
  };
  open(leaves[0]!.id);
}

/** On a narrow screen one part of the bench shows at a time. */
export function makePlaces(): void {
  const bench = document.querySelector<HTMLElement>(".bench")!;
  const buttons = [...document.querySelectorAll<HTMLButtonElement>(".places button")];
  for (const button of buttons) button.addEventListener("click", () => {
    bench.dataset["place"] = button.dataset["place"]!;
    for (const b of buttons) b.setAttribute("aria-pressed", String(b === button));
  });
}
