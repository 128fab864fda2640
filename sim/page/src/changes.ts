// The notebook's second page: changes as switches, what each buys, and before against after.

import { api, Refusal } from "./api";
import { change } from "./edits";
import { oneStopGrid } from "./grid";
import { el, money, put, say, signed } from "./dom";
import { keepFresh } from "./tabs";
import { around, DIRECTIONS, on, store, tips } from "./store";
import type { Answers, Bought, Candidate, Candidates } from "./types";

const AIMS: [string, string][] = [["side", "Side slope"], ["climb", "Climb"], ["descent", "Descent"], ["worst", "Weakest way"]];

export function changesPage(leaf: HTMLElement): void {
  let list: Candidates | null = null;
  let bought: Bought | null = null;
  let boughtFor = "";
  let aim = "side";
  const total = el("div", { class: "total", id: "change-total" });
  const holder = el("div", { id: "changes" });
  const stop = { key: "" };
  const order = el("select", { id: "change-order", "aria-label": "Best first for" }, ...AIMS.map(([k, words]) => el("option", { value: k }, words)));
  order.addEventListener("change", () => { aim = order.value; draw(); });
  leaf.append(el("div", { class: "bar" }, el("label", { for: "change-order" }, "Best first for"), order), total, holder);

  const draw = (): void => {
    put(total, ...totals(list));
    if (!list) return put(holder, el("p", { class: "text soft" }, "Reading the change file…"));
    if (list.changes.length === 0) {
      return put(holder, el("p", { class: "text" }, `There is no ${list.file} beside this truck. It lists what you could do, with prices: begin one under "The list", where what you edited by hand becomes a change as well.`));
    }
    const gain = (c: Candidate): number => bought?.changes[c.name]?.gain_deg[aim] ?? -99;
    const rows = el("div", {}, ...[...list.changes].sort((a, b) => gain(b) - gain(a)).map((c) => line(c, list!, bought)));
    oneStopGrid(rows, ".change", stop);
    put(holder, rows);
  };
  const fetchAll = async (): Promise<void> => {
    try {
      list = await api.changes();
      draw();
      if (list.changes.length === 0) return;
      // The ranking is of the truck the choice began from, so that switching changes nothing in it.
      const key = `${store.bench.file} ${store.bench.answers.surface} ${list.stamp}`;
      if (bought && key === boughtFor && Object.keys(store.bench.fitted).length) return;
      boughtFor = key;
      bought = await api.bought();
      draw();
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      if (e.status !== 409 && e.status !== 0) say(e.message, "wrong");
    }
  };
  on("bench", draw);
  keepFresh(leaf, () => void fetchAll(), 250);
  leaf.addEventListener("open", () => void fetchAll()); // the list may have been edited
  // The tips are worked out after the change is made: the total follows them.
  on("shown", () => put(total, ...totals(list)));
  draw();
  void fetchAll();
}

function totals(list: Candidates | null): HTMLElement[] {
  const { fitted, before, answers } = store.bench;
  const names = Object.keys(fitted);
  const spent = (list?.changes ?? []).reduce((sum, c) => sum + c.price * (fitted[c.name] ?? 0), 0);
  const parts = [el("span", {}, names.length ? `${names.length} fitted, ` : "Nothing fitted, ", el("b", {}, money(spent, list?.currency ?? "")))];
  if (before) {
    parts.push(el("span", {}, `${signed(answers.numbers.mass_g - before.numbers.mass_g, 0)} g`));
    for (const { heading, short } of Object.values(DIRECTIONS)) {
      const at = (a: Answers, values: (number | null)[]): number | null => around(a.heading_deg, values, heading);
      const [now, then] = [at(answers, tips(answers)), at(before, tips(before))];
      const gain = now !== null && then !== null ? now - then : (at(answers, answers.rigid_deg) ?? 0) - (at(before, before.rigid_deg) ?? 0);
      parts.push(el("span", { class: "one-gain" }, `${short} `, el("b", { class: gain > 0.05 ? "gain-up" : gain < -0.05 ? "gain-down" : "" }, `${signed(gain, 1)}°`)));
    }
    parts.push(el("span", { class: "soft" }, `against ${against(before.what)}`));
  }
  if (names.length) parts.push(el("button", { type: "button", id: "fit-none", "data-key": "fit-none", onclick: () => void fit({}, "took all changes off") }, "Take all off"));
  return parts;
}

const against = (what: string): string => (what === "before these changes" ? "the truck before" : what.startsWith("as ") ? `the truck ${what}` : what);

function fit(chosen: Record<string, number>, what: string): Promise<boolean> {
  return change(() => api.fit(chosen), what);
}

function line(c: Candidate, list: Candidates, bought: Bought | null): HTMLElement {
  const many = store.bench.fitted[c.name] ?? 0;
  const buys = bought?.changes[c.name];
  const id = `change-${c.name.replace(/\W+/g, "-")}`;
  const put_ = (n: number): void => {
    const chosen = { ...store.bench.fitted };
    if (n > 0) chosen[c.name] = n;
    else delete chosen[c.name];
    // A choice of one from a group: the new one takes the old one's place.
    if (n > 0 && c.group) for (const other of list.changes) if (other.group === c.group && other.name !== c.name) delete chosen[other.name];
    if (n > 0) for (const name of c.requires) chosen[name] ??= 1;
    void fit(chosen, n > 0 ? `fitted ${c.name}` : `took ${c.name} off`).then((taken) => { if (!taken) box.checked = many > 0; });
  };
  const box = el("input", { type: "checkbox", id, "data-key": id, checked: many > 0, role: "switch" });
  box.addEventListener("change", () => put_(box.checked ? 1 : 0));
  let count: HTMLInputElement | null = null;
  if (c.most > 1) {
    count = el("input", { type: "number", min: 0, max: c.most, step: 1, value: many, "aria-label": `How many of ${c.label}`, "data-key": `${id}-many` });
    count.addEventListener("change", () => put_(Math.max(0, Math.min(c.most, Math.round(Number(count!.value))))));
  }
  const gains = buys ? AIMS.slice(0, 3).map(([k, words]) => {
    const gain = buys.gain_deg[k] ?? null;
    const sure = !buys.turns[k] && Math.abs(gain ?? 0) > 2 * (buys.gain_sd_deg[k] ?? 0) && Math.abs(gain ?? 0) >= 0.05;
    const style = !sure ? "" : (gain ?? 0) > 0 ? "gain-up" : "gain-down";
    return el("span", {}, `${words} `, el("b", { class: style }, gain === null ? "–" : `${signed(gain, 2)}°`));
  }) : [];
  const why = bought?.impossible[c.name];
  return el("div", { class: `change${many > 0 ? " on" : ""}`, "data-change": c.name },
    box, el("label", { for: id }, c.label),
    el("span", { class: "price" }, count, count ? ` × ` : "", money(c.price, list.currency)),
    el("div", { class: "buys" }, ...(bought ? gains : [el("span", { class: "soft" }, "working out what it buys…")]),
      ...(buys?.side ?? []).map((s) => el("span", { class: "soft" }, `${s.what} ${signed(s.by, Math.abs(s.by) < 10 ? 1 : 0)} ${s.unit}`))),
    buys?.words || why || c.requires.length ? el("p", { class: "note" }, [why ?? "", buys?.words ? `${buys.words[0]!.toUpperCase()}${buys.words.slice(1)}.` : "", c.requires.length ? `Needs ${c.requires.join(", ")}.` : ""].filter(Boolean).join(" ")) : null);
}
