// A new part: any shape the file knows, how many, mirrored, for what money, placed by a click in a
// drawing, and if it was counted in a lump before, taken out of it. What is asked for is tried at
// once, so that drawings, map and numbers show it before it is put down.

import { api, Refusal } from "./api";
import { el, put, say } from "./dom";
import { attempt, commit, revert } from "./edits";
import { look, on, store } from "./store";
import type { Edit, PartForm, PartKind, Triple } from "./types";

type Seen = [number | null, number | null, number | null];

/** Who wants to know where a drawing is clicked: truck axes in mm, null along the line of sight. */
let asks: ((at: Seen) => void) | null = null;
export const placing = (): boolean => asks !== null;
export const placeAt = (at: Seen): void => asks?.(at);

const FAR = 10_000;
const round = (v: number): number => Math.round(v * 2) / 2;

/** Where places on a carrier count from, mm in truck axes, and which way its y points. */
function origin(on: string): { at: Triple; out: number } {
  const raise = store.measures.find((m) => m.key === "chassis.raise_mm")?.value ?? 0;
  if (on === "chassis") return { at: [0, 0, raise], out: 1 };
  const axle = store.scene.axles[on.includes("rear") ? 1 : 0]!;
  if (on.endsWith("axle")) return { at: [axle.x_mm, 0, axle.radius_mm], out: 1 };
  const right = on.endsWith("right");
  return { at: [axle.x_mm, (right ? -1 : 1) * axle.track_mm / 2, axle.radius_mm], out: right ? -1 : 1 };
}

/** Opens the form in `holder`, in place of `instead`; `from` is a lump to take the part out of. */
export async function newPart(holder: HTMLElement, instead: HTMLElement[], views: HTMLElement, from = ""): Promise<void> {
  let form: PartForm;
  try {
    form = await api.partForm();
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    return say(e.message, "wrong");
  }
  const free = (base: string): string => {
    const taken = new Set(store.bench.rows.map((r) => r.name));
    let n = 1;
    while (taken.has(n > 1 ? `${base} ${n}` : base)) n += 1;
    return n > 1 ? `${base} ${n}` : base;
  };
  const lump = store.bench.rows.find((r) => r.name === from);
  const input = (id: string, label: string, attributes: Record<string, unknown>): HTMLInputElement => el("input", { id: `new-${id}`, "aria-label": label, "data-key": `new-${id}`, ...attributes });
  const number = (id: string, label: string, value: number | "", more: Record<string, unknown> = {}): HTMLInputElement => input(id, label, { type: "number", step: "any", value, ...more });
  const name = input("name", "Name", { required: true, maxlength: 60, value: free(from ? "weighed part" : "added weight"), pattern: "[^.\\[\\]\"]+" });
  const mass = number("mass", "Mass of one, g", 20, { min: 0.001, max: 100000, required: true });
  const material = el("select", { id: "new-material", "aria-label": "Weighed, or out of what" }, el("option", { value: "" }, "as weighed"), ...form.materials.map((m) => el("option", { value: m }, m)));
  const price = number("price", "Price of one", 0, { min: 0, max: 1e7 });
  const rides = el("select", { id: "new-on", "aria-label": "Rides on" }, ...store.bench.carriers.filter((c) => !c.endsWith("link")).map((c) => el("option", { value: c, selected: c === lump?.on }, c)));
  const count = number("count", "How many in a row", 1, { min: 1, max: 500, step: 1, required: true });
  const step = ["ahead", "to the left", "up"].map((w, i) => number(`step${i}`, `Each further on by, ${w}, mm`, 0, { min: -FAR, max: FAR }));
  const mirror = input("mirror", "Also on the other side", { type: "checkbox" });
  const start = lump?.at_mm ?? [0, 0, 60];
  const at = ["x", "y", "z"].map((axis, i) => number(axis, ["Ahead, mm", "To the left, mm", "Up, mm"][i]!, start[i]!, { min: -FAR, max: FAR, required: true }));
  const turn = ["x", "y", "z"].map((axis) => number(`turn-${axis}`, `Turned about ${axis}, degrees`, 0, { min: -360, max: 360 }));
  const kind = el("select", { id: "new-kind", "aria-label": "Shape" }, el("option", { value: "" }, "a point"), ...form.kinds.filter((k) => k.kind !== "mesh" || form.meshes.length).map((k) => el("option", { value: k.kind, selected: k.kind === "box" }, k.kind)));
  const out = el("select", { id: "new-out-of", "aria-label": "Was counted in" }, el("option", { value: "" }, "nothing: it is new"), ...form.lumps.map((l) => el("option", { value: l, selected: l === from }, l)));
  const fields = el("div", { class: "new-shape" });
  const stepRow = el("div", { class: "new-line", hidden: true }, el("span", {}, "each on by"), ...step, el("span", { class: "soft" }, "mm ahead, left, up"));
  const now = (): PartKind | undefined => form.kinds.find((k) => k.kind === kind.value);

  const drawFields = (): void => put(fields, ...(now()?.fields ?? []).flatMap((f) => {
    const words = `${f.key.replace(/_(mm|g_per_m)$/, "").replace(/_/g, " ")}${f.key.endsWith("_mm") ? ", mm" : f.key === "g_per_m" ? ", g per m" : ""}`;
    const starts = Array.isArray(f.start) ? f.start : [f.start];
    if (f.key === "file" || f.choices.length) {
      const choices = f.key === "file" ? form.meshes : f.choices;
      return [el("label", {}, words, el("select", { "data-field": f.key, "aria-label": `${words}: ${f.meaning}` }, ...choices.map((c) => el("option", { value: c, selected: c === f.start }, c))))];
    }
    return [el("label", {}, words, ...starts.map((v, i) => el("input", { type: "number", step: "any", min: 0.001, max: FAR, required: f.needed, value: v ?? "", "data-field": f.key, "aria-label": f.many > 1 ? `${words}, ${["ahead", "across", "up"][i]}` : `${words}: ${f.meaning}` })))];
  }));
  const shape = (): Record<string, unknown> | null => {
    const kept = now();
    if (!kept) return null;
    const made: Record<string, unknown> = { kind: kept.kind };
    for (const f of kept.fields) {
      const boxes = [...fields.querySelectorAll<HTMLInputElement | HTMLSelectElement>(`[data-field="${f.key}"]`)];
      const values = boxes.map((b) => (b instanceof HTMLSelectElement ? b.value : b.value === "" ? null : Number(b.value)));
      if (values.some((v) => v === null)) continue;
      made[f.key] = f.many > 1 ? values : values[0];
    }
    return made;
  };
  const byLength = (): boolean => kind.value === "strip" && fields.querySelector<HTMLInputElement>('[data-field="g_per_m"]')?.value !== "";
  const edit = (): Edit => {
    const part: Record<string, unknown> = { name: name.value.trim(), on: rides.value };
    const weighed = material.value === "" && !byLength();
    if (weighed) part["mass_g"] = Number(mass.value);
    if (material.value) part["material"] = material.value;
    const made = shape();
    if (made) part["shape"] = made;
    part["at_mm"] = at.map((a) => Number(a.value));
    if (turn.some((t) => Number(t.value))) part["turn_deg"] = turn.map((t) => Number(t.value));
    if (Number(count.value) > 1) Object.assign(part, { count: Number(count.value), step_mm: step.map((s) => Number(s.value)) });
    if (mirror.checked) part["mirror"] = true;
    if (Number(price.value)) part["price"] = Number(price.value);
    return { do: "add", part, ...(out.value ? { out_of: out.value } : {}) };
  };
  const wheel = (): boolean => /wheel|left|right/.test(rides.value);
  const tried = (): void => {
    stepRow.hidden = Number(count.value) <= 1;
    mirror.disabled = wheel();
    mass.disabled = material.value !== "" || byLength();
    material.disabled = kind.value === "" || byLength();
    if (kind.value === "") material.value = "";
    dust.hidden = !/lead|brass/i.test(`${name.value} ${material.value}`);
    at[1]!.setAttribute("aria-label", wheel() ? "Outwards, mm" : "To the left, mm");
    acrossWord.textContent = wheel() ? "outwards" : "left";
    store.view.row = store.bench.rows.length; // where it comes to stand, and so drawn as picked
    if (box.checkValidity()) attempt([edit()]);
  };
  const close = (): void => {
    asks = null;
    open = null;
    views.classList.remove("placing");
    holder.replaceChildren();
    holder.hidden = true;
    for (const one of instead) one.hidden = false;
  };
  const dust = el("p", { class: "caution", role: "note", hidden: true }, "Do not file or drill lead or brass dry: the dust is harmful. Wash your hands after handling lead.");
  const acrossWord = el("span", { class: "soft" }, "left");
  const line = (label: string, ...rest: HTMLElement[]): HTMLElement => el("div", { class: "new-line" }, el("span", { class: "new-label" }, label), ...rest);
  const box = el("form", { class: "new-part", "aria-label": "A new part" },
    el("h3", {}, from ? `A part out of ${from}` : "A new part"),
    line("Name", name, el("label", {}, "price ", price, ` ${form.currency}`)),
    line("Shape", kind, fields),
    line("Weighs", mass, el("span", {}, "g,"), material), dust,
    line("Rides on", rides, el("label", { class: "tick" }, mirror, "also on the other side")),
    line("Stands", at[0]!, el("span", { class: "soft" }, "ahead"), at[1]!, acrossWord, at[2]!, el("span", { class: "soft" }, "up, mm")),
    el("p", { class: "about" }, "Click in a drawing to put it there."),
    line("How many", count, stepRow),
    el("details", {}, el("summary", {}, "Turned"), line("by, degrees", ...turn.flatMap((t, i) => [t, el("span", { class: "soft" }, `about ${"xyz"[i]}`)]))),
    line("Counted in", out),
    el("p", { class: "about" }, "What was weighed on its own and stood in a lump until now comes out of it: mass and CG of the whole stay as they are."),
    el("div", { class: "bar" }, el("button", { type: "submit", class: "main", id: "new-add" }, "Add it"), el("button", { type: "button", id: "new-leave", onclick: () => { close(); look({ row: null }); revert(); document.getElementById("add-part")?.focus(); } }, "Leave it")));
  kind.addEventListener("change", () => { drawFields(); });
  box.addEventListener("input", tried);
  box.addEventListener("submit", (e) => {
    e.preventDefault();
    const called = name.value.trim();
    const what = out.value ? `took ${called} out of ${out.value}` : `added ${called}`;
    void commit([edit()], what).then((taken) => {
      if (!taken) return;
      close();
      look({ row: store.bench.rows.find((r) => r.name === called)?.row ?? null });
      document.getElementById("add-part")?.focus();
    });
  });
  asks = (seen) => {
    const { at: zero, out: way } = origin(rides.value);
    seen.forEach((v, i) => {
      if (v !== null) at[i]!.value = String(round((v - zero[i]!) * (i === 1 ? way : 1)));
    });
    tried();
  };
  open = { file: store.bench.file, close };
  for (const one of instead) one.hidden = true;
  put(holder, box);
  holder.hidden = false;
  views.classList.add("placing");
  drawFields();
  tried();
  name.focus();
  name.select();
}

let open: { file: string; close: () => void } | null = null;
on("bench", () => { if (open && open.file !== store.bench.file) open.close(); });
