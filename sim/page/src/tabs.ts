// The notebook's index tabs; a page is made when it is first opened.

import { byId, el } from "./dom";

export interface Leaf {
  id: string;
  name: string;
  make: (leaf: HTMLElement) => void;
}

export function makeTabs(leaves: Leaf[]): void {
  const [bar, holder] = [byId("tabs"), byId("leaf")];
  const made = new Map<string, HTMLElement>();
  const open = (id: string, focus = false): void => {
    for (const leaf of leaves) {
      const tab = byId(`tab-${leaf.id}`);
      const chosen = leaf.id === id;
      tab.setAttribute("aria-selected", String(chosen));
      tab.tabIndex = chosen ? 0 : -1;
      if (chosen && focus) tab.focus();
      if (chosen && !made.has(id)) {
        const page = el("div", { role: "tabpanel", id: `leaf-${id}`, "aria-labelledby": `tab-${id}` });
        holder.append(page);
        made.set(id, page);
        leaf.make(page);
      }
      const page = made.get(leaf.id);
      if (page) page.hidden = !chosen;
    }
  };
  leaves.forEach((leaf, i) => {
    const tab = el("button", { type: "button", role: "tab", id: `tab-${leaf.id}`, "aria-controls": `leaf-${leaf.id}`, onclick: () => open(leaf.id) }, leaf.name);
    tab.addEventListener("keydown", (e) => {
      const step = e.key === "ArrowRight" ? 1 : e.key === "ArrowLeft" ? -1 : 0;
      if (step) open(leaves[(i + step + leaves.length) % leaves.length]!.id, true);
    });
    bar.append(tab);
  });
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
