// The list of changes beside the truck: what each costs, its group, new ones, and what was edited by
// hand kept as one. Every edit is written at once; the last one can be taken back.

import { api, Refusal } from "./api";
import { el, put, say } from "./dom";
import { change } from "./edits";
import { oneStopGrid } from "./grid";
import { store } from "./store";
import { goTo, keepFresh } from "./tabs";
import type { Candidate, Candidates } from "./types";

export function listPage(leaf: HTMLElement): void {
  let list: Candidates | null = null;
  let back: { text: string; stamp: string; what: string } | null = null;
  const stop = { key: "" };
  const holder = el("div", { id: "change-list" });
  const form = el("div", { hidden: true });
  const groups = el("datalist", { id: "change-groups" });
  const fresh = el("button", { type: "button", id: "change-new" }, "New change");
  const keep = el("button", { type: "button", id: "change-keep", title: "What you edited by hand since the state it is compared with" }, "Keep my edits as a change");
  const undo = el("button", { type: "button", id: "change-back", hidden: true });
  leaf.append(el("div", { class: "bar" }, fresh, keep, undo), form, holder, groups);

  const draw = (): void => {
    if (!list) return;
    undo.hidden = back === null || back.stamp !== list.stamp;
    undo.textContent = `Take back: ${back?.what ?? ""}`;
    put(groups, ...[...new Set(list.changes.map((c) => c.group).filter(Boolean))].map((g) => el("option", { value: g! })));
    if (list.changes.length === 0) return put(holder, el("p", { class: "text" }, `There is no ${list.file} yet. Begin it with a new change, or edit the truck (move the pack, weigh something lighter, add a part) and keep that as a change: it becomes a switch with a price.`));
    const rows = el("tbody", {}, ...list.changes.map(row));
    const table = el("table", { class: "parts listed" }, el("caption", { class: "visually-hidden" }, "The list of changes. Arrow keys go through it."),
      el("thead", {}, el("tr", {}, ...["Change, and what it does", `Price, ${list.currency || "money"}`, "One of a group", ""].map((h) => el(h ? "th" : "td", h ? { scope: "col" } : {}, h)))), rows);
    oneStopGrid(rows, "tr", stop);
    put(holder, table, el("p", { class: "text soft" }, `Kept in ${list.file}. Of a group only one can be on the truck.`));
  };
  const row = (c: Candidate): HTMLElement => {
    const on = c.name in store.bench.fitted;
    const field = (key: "label" | "price" | "group", label: string, value: string, attributes: Record<string, unknown>): HTMLInputElement => {
      const input = el("input", { value, "aria-label": `${label} of ${c.name}`, "data-key": `list-${key}-${c.name}`, ...attributes });
      input.addEventListener("change", () => {
        if (!input.checkValidity()) return void input.reportValidity();
        const given = key === "price" ? Number(input.value || 0) : input.value.trim() || null;
        void edit({ do: "field", name: c.name, field: key, value: given }, `${label.toLowerCase()} of ${c.name}`).then((taken) => { if (!taken) input.value = value; });
      });
      return input;
    };
    return el("tr", { "data-listed": c.name }, el("td", {}, field("label", "Words", c.label, { required: true, maxlength: 200 }), el("small", { class: "soft" }, c.does)),
      el("td", { class: "n" }, field("price", "Price", String(c.price), { type: "number", min: 0, max: 1e7, step: "any" })),
      el("td", {}, field("group", "Group", c.group ?? "", { list: "change-groups", maxlength: 60 })),
      el("td", {}, el("button", { type: "button", "aria-label": `Remove ${c.name} from the list`, "data-key": `list-remove-${c.name}`, disabled: on, title: on ? "It is on the truck: take it off first" : "Remove", onclick: () => void edit({ do: "remove", name: c.name }, `removed ${c.name}`) }, "✕")));
  };
  const take = (found: Candidates, what: string): void => {
    list = found;
    back = found.was === undefined ? null : { text: found.was, stamp: found.stamp, what };
    draw();
  };
  const edit = async (asked: Record<string, unknown>, what: string): Promise<boolean> => {
    try {
      take(await api.editChanges(list?.stamp ?? "", asked), what);
      say(`${what[0]!.toUpperCase()}${what.slice(1)}, written to ${list!.file}.`);
      return true;
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      say(e.sentences.slice(0, 3).join(" "), "wrong");
      if (e.status !== 0) void look();
      return false;
    }
  };
  const look = async (): Promise<void> => {
    try {
      list = await api.changes();
      draw();
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      if (e.status !== 409 && e.status !== 0) say(e.message, "wrong");
    }
  };
  undo.addEventListener("click", () => {
    if (back) void edit({ do: "text", text: back.text }, `took back: ${back.what}`).then((taken) => { if (taken) { back = null; draw(); fresh.focus(); } });
  });
  fresh.addEventListener("click", () => openForm(form, "A new change", true, (entry) => edit({ do: "new", change: entry }, `new change ${entry["name"]}`)));
  keep.addEventListener("click", () => openForm(form, "Your edits as a change", false, async (entry) => {
    const taken = await change(() => api.keepEdits(list?.stamp ?? "", entry), `kept your edits as ${entry["name"]}, switched on`);
    if (taken) goTo("changes");
    return taken;
  }));
  keepFresh(leaf, () => void look(), 100);
  leaf.addEventListener("open", () => void look());
  void look();
}

const ACTS: [string, string][] = [["move", "moves a part"], ["mass", "makes a part weigh"], ["remove", "takes a part off"], ["set", "sets a measure"]];

/** Name, price and group of a change, and with `acts` what it does. */
function openForm(holder: HTMLElement, title: string, acts: boolean, take: (entry: Record<string, unknown>) => Promise<boolean>): void {
  const field = (id: string, attributes: Record<string, unknown>): HTMLInputElement => el("input", { id: `change-${id}`, ...attributes });
  const name = field("name", { required: true, maxlength: 60, pattern: "[^.\\[\\]\"]+", "aria-label": "Name" });
  const label = field("label", { maxlength: 200, "aria-label": "In words" });
  const price = field("price", { type: "number", min: 0, max: 1e7, step: "any", value: 0, "aria-label": "Price" });
  const group = field("group", { list: "change-groups", maxlength: 60, "aria-label": "Group, of which only one can be chosen" });
  const act = el("select", { id: "change-act", "aria-label": "What it does" }, ...ACTS.map(([k, words]) => el("option", { value: k }, words)));
  const picked = store.bench.rows.find((r) => r.row === store.view.row)?.name;
  const part = el("select", { id: "change-part", "aria-label": "Which part" }, ...store.bench.rows.map((r) => el("option", { value: r.name, selected: r.name === picked }, r.name)));
  const measure = el("select", { id: "change-measure", "aria-label": "Which measure" }, ...store.bench.measures.map((m) => el("option", { value: m.key }, `${m.name}, ${m.unit}`)));
  const by = ["ahead", "to the left", "up"].map((w, i) => field(`by${i}`, { type: "number", step: "any", value: 0, "aria-label": `Moved by, ${w}, mm` }));
  const value = field("value", { type: "number", step: "any", "aria-label": "To" });
  const does = el("div", { class: "new-line" });
  const draw = (): void => {
    const kind = act.value;
    value.required = kind === "mass" || kind === "set";
    put(does, el("span", { class: "new-label" }, "It"), act, ...(kind === "set" ? [measure, value] : [part]),
      ...(kind === "move" ? [...by, el("span", { class: "soft" }, "mm ahead, left, up")] : []), ...(kind === "mass" ? [value, el("span", { class: "soft" }, "g")] : []));
  };
  act.addEventListener("change", () => { draw(); act.focus(); });
  const actions = (): Record<string, unknown> => {
    if (act.value === "move") return { move: [{ part: part.value, by_mm: by.map((b) => Number(b.value)) }] };
    if (act.value === "mass") return { swap: [{ part: part.value, new: { mass_g: Number(value.value) } }] };
    if (act.value === "remove") return { remove: [part.value] };
    return { set: { [measure.value]: Number(value.value) } };
  };
  const close = (): void => {
    holder.hidden = true;
    holder.replaceChildren();
    document.getElementById(acts ? "change-new" : "change-keep")?.focus();
  };
  const line = (words: string, ...rest: (HTMLElement | null)[]): HTMLElement => el("div", { class: "new-line" }, el("span", { class: "new-label" }, words), ...rest);
  const form = el("form", { class: "new-part", "aria-label": title }, el("h3", {}, title),
    line("Name", name, el("label", {}, "price ", price)), acts ? line("In words", label) : null, line("One of", group, el("span", { class: "soft" }, "leave empty if it goes with all others")), acts ? does : null,
    el("p", { class: "about" }, acts ? "What is more than this (a part added, several things at once): edit the truck, then keep that as a change." : "What differs from the state your truck is compared with goes into the list, and is switched on in its place."),
    el("div", { class: "bar" }, el("button", { type: "submit", class: "main", id: "change-add" }, acts ? "Put it in the list" : "Keep them"), el("button", { type: "button", id: "change-leave", onclick: close }, "Leave it")));
  form.addEventListener("submit", (e) => {
    e.preventDefault();
    const entry: Record<string, unknown> = { name: name.value.trim(), label: label.value.trim(), price: Number(price.value || 0), group: group.value.trim(), ...(acts ? actions() : {}) };
    void take(entry).then((taken) => { if (taken) close(); });
  });
  draw();
  put(holder, form);
  holder.hidden = false;
  name.focus();
}
