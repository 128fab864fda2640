// The head of the sheet: which truck, what state its file is in, and what can be done with it.

import { api, Refusal } from "./api";
import { change, inTurn, notice } from "./edits";
import { askFor, byId, el, oneStop, put, say } from "./dom";
import { on, store, takeBench } from "./store";

export function makeHeader(repaint: () => void): void {
  byId("undo").addEventListener("click", undo);
  byId("redo").addEventListener("click", redo);
  byId("save").addEventListener("click", () => void save());
  byId("save-as").addEventListener("click", saveAs);
  byId("sheet").addEventListener("click", () => void sheet());
  const truck = byId<HTMLSelectElement>("truck");
  truck.addEventListener("change", () => void open(truck.value));
  const surface = byId<HTMLSelectElement>("surface");
  surface.addEventListener("change", () => void change(() => api.surface(surface.value), `on ${surface.value}`));
  const reference = byId<HTMLSelectElement>("reference");
  reference.addEventListener("change", () => void change(() => api.pin(reference.value), `compared with: ${reference.selectedOptions[0]?.textContent ?? ""}`));
  lights(repaint);
  addEventListener("keydown", (e) => {
    if (!(e.ctrlKey || e.metaKey)) return;
    const key = e.key.toLowerCase();
    const typing = (e.target as Element).matches("input[type=text], input[type=number], textarea");
    // What is typed but not yet put down goes into the file as well.
    if (key === "s" && typing) (e.target as HTMLElement).blur();
    else if (typing) return;
    if (key === "z") { e.preventDefault(); (e.shiftKey ? redo : undo)(); }
    if (key === "y") { e.preventDefault(); redo(); }
    if (key === "s") { e.preventDefault(); void save(); }
  });
  oneStop(document.querySelector(".tools")!);
  on("bench", draw);
}

function draw(): void {
  const b = store.bench;
  put(byId("truck"), ...b.trucks.map((t) => el("option", { value: t, selected: t === b.file }, t.replace(/\.toml$/, ""))));
  put(byId("surface"), ...(b.surfaces.length ? b.surfaces : [b.answers.surface]).map((s) => el("option", { value: s, selected: s === b.answers.surface }, s)));
  byId<HTMLSelectElement>("surface").disabled = b.surfaces.length < 2;
  put(byId("reference"), ...b.references.map((r) => el("option", { value: r.key, selected: r.key === b.reference }, r.words)));
  const state = byId("state");
  state.textContent = b.needs_name ? (b.unsaved ? "demo truck, changed: save it under a name" : "demo truck") : b.unsaved ? "changed, not saved yet" : "saved";
  state.classList.toggle("unsaved", b.unsaved);
  const [undoButton, redoButton] = [byId<HTMLButtonElement>("undo"), byId<HTMLButtonElement>("redo")];
  undoButton.disabled = b.undo === null;
  redoButton.disabled = b.redo === null;
  undoButton.title = b.undo === null ? "Nothing to undo" : `Undo: ${b.undo}`;
  redoButton.title = b.redo === null ? "Nothing to redo" : `Redo: ${b.redo}`;
  byId<HTMLButtonElement>("save").disabled = !b.unsaved && !b.needs_name;
  document.title = `${b.unsaved ? "• " : ""}${b.file.replace(/\.toml$/, "")} – crossfall bench`;
}

async function sheet(): Promise<void> {
  say("Drawing the set-up sheet…");
  try {
    const link = el("a", { href: URL.createObjectURL(await api.sheet()), download: `${store.bench.file.replace(/\.toml$/, "")}-sheet.pdf` });
    link.click();
    URL.revokeObjectURL(link.href);
    say("The set-up sheet is in your downloads.");
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    say(`The sheet was not drawn: ${e.message}`, "wrong");
  }
}

function undo(): void {
  void change(() => api.undo(), `undone: ${store.bench.undo ?? "nothing"}`);
}

function redo(): void {
  void change(() => api.redo(), `done again: ${store.bench.redo ?? "nothing"}`);
}

async function save(): Promise<void> {
  if (store.bench.needs_name) return saveAs();
  await put_(null, false);
}

const put_ = (name: string | null, over: boolean): Promise<void> => inTurn(() => putNow(name, over));

async function putNow(name: string | null, over: boolean): Promise<void> {
  try {
    takeBench(await api.save(name, over));
    say(`Saved as ${store.bench.file}.`);
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    if (e.status === 409 && e.where === "disk") {
      notice(`Not saved: ${e.message}.`, [
        ["Save under a new name", saveAs],
        ["Write mine over it", () => void put_(name, true)],
        ["Take the file as it is on disk", () => void change(() => api.discard(), "taken from disk")],
      ]);
    } else if (e.status === 409) {
      const mine = store.bench.file;
      takeBench(await api.bench());
      if (store.bench.file !== mine) notice(`${store.bench.file} is on the bench now, put there from another tab; ${mine} was not saved.`, [[`Put ${mine} back on the bench`, () => void open(mine)]]);
      else notice("This truck was changed in another tab or on disk. You see that state now; nothing was saved.", [["Save this state", () => void put_(name, over)]]);
    } else if (e.status !== 0) say(e.message, "wrong");
  }
}

function saveAs(): void {
  askFor("new-file", "Save as a new file", "Name, in the opened folder", store.bench.file.replace(/\.toml$/, "") + "-2", "Save", (name) => void put_(name.trim(), false));
}

async function open(name: string): Promise<void> {
  say(`Fetching ${name.replace(/\.toml$/, "")}…`);
  if (await change(() => api.open(name), `on the bench: ${name.replace(/\.toml$/, "")}`)) draw();
}

function lights(repaint: () => void): void {
  const root = document.documentElement;
  const button = byId("light");
  const dark = matchMedia("(prefers-color-scheme: dark)");
  let own: string | null = null;
  try { own = localStorage.getItem("crossfall-light"); } catch { /* private windows may refuse */ }
  const show = (): void => {
    const now = own ?? (dark.matches ? "dark" : "light");
    root.dataset["light"] = now;
    button.textContent = now === "dark" ? "Light" : "Dark";
    repaint();
  };
  button.addEventListener("click", () => {
    own = root.dataset["light"] === "dark" ? "light" : "dark";
    try { localStorage.setItem("crossfall-light", own); } catch { /* not remembered, then */ }
    show();
  });
  dark.addEventListener("change", show);
  show();
}
