// From no file yet to one that agrees with scale and board, one question at a time.

import { api, Refusal } from "./api";
import { change } from "./edits";
import { el, fixed, oneStop, put, say, signed } from "./dom";
import { keepFresh } from "./tabs";
import { showWeighed } from "./scales";
import { store, takeBench } from "./store";
import type { Agreement, Begun, Bench, ScaleForm, Wizard } from "./types";

type Stage = "file" | "scale" | "board" | "agree";
const STAGES: [Stage, string][] = [["file", "A file"], ["scale", "The scale"], ["board", "The board"], ["agree", "They agree"]];

/** One thing to ask: what to do, what helps to do it, and what is done with what was typed. */
interface Asked {
  key: string;
  title: string;
  help: string;
  picture: string;
  caution: string;
  unit: string;
  choices: string[];
  needed: boolean;
  value: string;
  /** Gives a sentence where what was typed cannot be. */
  take: (typed: string) => Promise<string | null>;
}

const DRAFT = "crossfall-begin";

/** The answers to a beginning that is not made yet, kept in this browser until it is. */
interface Draft {
  name: string;
  typed: Record<string, string>;
  at: number;
}

function readDraft(): Draft | null {
  try {
    return JSON.parse(localStorage.getItem(DRAFT) ?? "null") as Draft | null;
  } catch {
    return null;
  }
}

function keepDraft(draft: Draft | null): void {
  try {
    if (draft) localStorage.setItem(DRAFT, JSON.stringify(draft));
    else localStorage.removeItem(DRAFT);
  } catch {
    // a browser that keeps nothing: the answers last as long as the page
  }
}

export function wizardPage(leaf: HTMLElement): void {
  let known: Wizard;
  let stage: Stage = "file";
  let of = "";
  let weighing: Record<string, string> = {};
  const rail = el("div", { class: "stages", role: "toolbar", "aria-label": "Steps to a file that agrees" });
  const body = el("div", { class: "asks", "aria-live": "polite" });
  leaf.append(rail, body);
  for (const [id, words] of STAGES) rail.append(el("button", { type: "button", "data-stage": id, onclick: () => show(id) }, words));
  oneStop(rail);

  const refused = (e: unknown): string => {
    if (!(e instanceof Refusal)) throw e;
    return e.sentences.slice(0, 3).join(" ");
  };
  const mark = (): void => {
    const done: Record<Stage, boolean> = { file: true, scale: known.weighed, board: known.tilted, agree: false };
    for (const b of rail.querySelectorAll<HTMLElement>("button")) {
      const id = b.dataset["stage"] as Stage;
      b.setAttribute("aria-pressed", String(id === stage));
      b.classList.toggle("done", done[id]);
      b.setAttribute("aria-label", `${b.textContent}${done[id] ? ", done" : ""}`);
    }
  };
  const look = async (): Promise<boolean> => {
    try {
      known = await api.wizard();
      if (of !== store.bench.file) weighing = {};
      of = store.bench.file;
      return true;
    } catch (e) {
      put(body, el("p", { class: "text wrong" }, refused(e)));
      return false;
    }
  };
  const show = (to: Stage): void => {
    stage = to;
    mark();
    ({ file: fileStage, scale: scaleStage, board: boardStage, agree: agreeStage })[to]();
  };
  const caution = (name: string): HTMLElement | null => (name ? el("p", { class: "caution", role: "note" }, known.cautions[name] ?? "") : null);
  const picture = (name: string): Node | null => {
    const text = known.pictures[name];
    if (!text) return null;
    const drawn = new DOMParser().parseFromString(text.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" '), "image/svg+xml");
    return el("div", { class: "pict" }, document.importNode(drawn.documentElement, true));
  };

  /** Asks one after the other, from `at`; `then` follows the last. What there is to ask is looked
   * at anew each time, since an answer may bring further questions. */
  const ask = (every: () => Asked[], at: number, title: string, then: () => void, moved: (to: number) => void = () => {}): void => {
    const all = every();
    const one = all[at];
    moved(at);
    if (!one) return then();
    const wrong = el("p", { class: "wrong", role: "alert", id: "ask-wrong" });
    const on = (to: number): void => ask(every, to, title, then, moved);
    const control = one.choices.length
      ? el("select", { id: "ask-value", "aria-label": one.title }, ...one.choices.map((c) => el("option", { value: c, selected: c === one.value }, c)))
      : el("input", { id: "ask-value", type: "text", inputmode: /^(mm|g|°|N)/.test(one.unit) && !one.unit.includes(":") ? "decimal" : "text", autocomplete: "off", "aria-label": `${one.title}${one.unit ? `, ${one.unit}` : ""}`, "aria-describedby": "ask-wrong", value: one.value });
    const form = el("form", { class: "ask-one" },
      el("p", { class: "soft" }, `${title}, ${at + 1} of ${all.length}`), el("h3", { tabindex: -1 }, one.title),
      one.help ? el("p", {}, one.help) : null, caution(one.caution), picture(one.picture),
      el("div", { class: "new-line" }, control, el("span", { class: "soft" }, one.unit)), wrong,
      el("div", { class: "bar" }, el("button", { type: "submit", class: "main", id: "ask-next" }, "Next"),
        at > 0 ? el("button", { type: "button", id: "ask-back", onclick: () => on(at - 1) }, "Back") : null,
        one.needed ? null : el("button", { type: "button", id: "ask-skip", onclick: () => { void one.take("").then(() => on(at + 1)); } }, "Leave it out")));
    form.addEventListener("submit", (e) => {
      e.preventDefault();
      const typed = control.value.trim();
      if (!typed && one.needed) {
        wrong.textContent = "This one is needed.";
        control.setAttribute("aria-invalid", "true");
        return control.focus();
      }
      void one.take(typed).then((said) => {
        if (said === null) return on(at + 1);
        wrong.textContent = said;
        control.setAttribute("aria-invalid", "true");
        control.focus();
      });
    });
    put(body, form);
    control.focus();
    if (control instanceof HTMLInputElement) control.select();
  };

  // A file

  const fileStage = (): void => {
    const draft = readDraft();
    put(body,
      el("h3", {}, "A truck that has no file yet"),
      el("p", { class: "text" }, "A kitchen scale, a ruler and a block of 80 to 120 mm make one, in about ten minutes. Every question shows what to do; what you cannot measure now may be left out and added later."),
      el("div", { class: "bar" }, el("button", { type: "button", class: "main", id: "begin-new", onclick: () => beginNew(null) }, "Begin a new truck"),
        draft ? el("button", { type: "button", id: "begin-on", onclick: () => beginNew(draft) }, `Go on with ${draft.name}`) : null),
      el("h3", {}, `${store.bench.file.replace(".toml", "")} is on the bench`),
      el("p", { class: "text" }, known.begun && !known.as_begun ? "It was begun here and changed by hand since: measure what matters on the scale and the board now." : "Bring it together with what scale and board say."),
      el("div", { class: "bar" }, el("button", { type: "button", id: "to-scale", onclick: () => show("scale") }, "Go on to the scale")),
      known.as_begun ? el("p", { class: "text soft" }, "It is as it was begun: a further reading makes it surer.") : null,
      known.as_begun ? el("div", { class: "bar" }, el("button", { type: "button", id: "begin-more", onclick: () => further() }, "What to measure next")) : null,
      el("h3", {}, "Before you start"), ...["pack", "block", "fall", "dust", "models"].map(caution));
  };
  const beginNew = (from: Draft | null): void => {
    const draft: Draft = from ?? { name: "", typed: {}, at: 0 };
    const named: Asked = { key: "name", title: "What is the truck called?", help: "Its file is called so as well.", picture: "", caution: "", unit: "", choices: [], needed: true, value: draft.name,
      take: async (typed) => {
        if (/[.[\]"\\/]/.test(typed) || typed.length > 60) return "Up to 60 letters, no dots, quotes, slashes or brackets.";
        if (store.bench.trucks.includes(`${typed}.toml`)) return `There is a ${typed}.toml already: choose another name.`;
        draft.name = typed;
        return null;
      } };
    // A reading that belongs to another is asked for only where that one was given.
    const asked = (): Asked[] => [named, ...known.questions.filter((q) => q.first && !(q.after && !draft.typed[q.after])).map((q) => question(q.key, draft.typed))];
    const go = (at: number): void => ask(asked, at, "Beginning", made, (to) => {
      draft.at = to;
      keepDraft(draft);
    });
    const made = (): void => {
      put(body, el("h3", {}, `What you read off ${draft.name}`),
        el("table", {}, el("tbody", {}, ...known.questions.filter((q) => draft.typed[q.key]).map((q) => el("tr", {}, el("th", { scope: "row" }, q.words), el("td", { class: "n" }, `${draft.typed[q.key]}${["mm", "g"].includes(q.kind) ? ` ${q.kind}` : ""}`))))),
        el("div", { class: "bar" }, el("button", { type: "button", class: "main", id: "begin-make", onclick: () => make(draft.name, draft.typed, false) }, "Make the file"),
          el("button", { type: "button", id: "ask-back", onclick: () => go(0) }, "Go through it again")),
        el("p", { class: "wrong text", role: "alert", id: "ask-wrong" }));
      document.getElementById("begin-make")?.focus();
    };
    go(Math.min(draft.at, asked().length));
  };
  const question = (key: string, typed: Record<string, string>): Asked => {
    const q = known.questions.find((one) => one.key === key)!;
    const unit = { mm: "mm", g: "g", "N/mm": "N/mm", place: "mm: ahead of mid-wheelbase, left of the middle, above the ground" }[q.kind as string] ?? "";
    return { key, title: q.do, help: q.kind === "place" ? "Three numbers, as 20, 0, 95." : q.hint ? `${q.hint[0]!.toUpperCase()}${q.hint.slice(1)}.` : "", picture: q.picture, caution: q.caution, unit, choices: q.choices, needed: q.needed, value: typed[key] ?? "",
      take: async (text) => {
        if (!text) {
          delete typed[key];
          return null;
        }
        try {
          await api.reading(key, text);
        } catch (e) {
          return refused(e);
        }
        typed[key] = text;
        return null;
      } };
  };
  const make = async (name: string, typed: Record<string, string>, again: boolean): Promise<void> => {
    const wrong = document.getElementById("ask-wrong");
    say("Making the file…");
    try {
      const { begun, bench } = await api.begin(name, typed, again);
      if (!again) keepDraft(null);
      of = bench.file;
      takeBench(bench);
      say(`${begun.file} is made and on the bench.`);
      if (await look()) beginning(begun);
    } catch (e) {
      const said = refused(e);
      if (wrong) wrong.textContent = said;
      else put(body, el("p", { class: "wrong text", role: "alert" }, said));
      say(said, "wrong");
    }
  };
  const beginning = (b: Begun): void => {
    const [x, y, z] = b.cg_mm;
    put(body, el("h3", { tabindex: -1, id: "begun" }, `${b.file} is on the bench`),
      el("p", { class: "text" }, `${fixed(b.mass_g, 0)} ± ${fixed(b.mass_pm_g, 0)} g; CG ${signed(x)} ± ${fixed(b.cg_pm_mm[0])} mm ahead of mid-wheelbase, ${signed(y)} ± ${fixed(b.cg_pm_mm[1])} to the left, ${fixed(z)} ± ${fixed(b.cg_pm_mm[2])} up (95 %).`),
      ...b.implausible.map((d) => el("p", { class: "text wrong" }, `${d[0]!.toUpperCase()}${d.slice(1)}.`)),
      b.next.length ? el("h3", {}, "What to measure next") : null,
      b.next.length ? el("p", { class: "text soft" }, "By how much it narrows the ± of the tip angle, for its minutes.") : null,
      ...b.next.slice(0, 4).map((n, i) => el("div", { class: "change" }, el("span", {}), el("span", {}, n.do),
        el("button", { type: "button", id: `measure-${i}`, onclick: () => measure(n.readings) }, "Measure it"), el("p", { class: "note" }, `±${fixed(n.narrows_pm_deg, 2)}° in ${fixed(n.minutes, n.minutes % 1 ? 1 : 0)} min`))),
      b.typical.length ? el("details", { class: "text" }, el("summary", {}, `${b.typical.length} numbers are typical, not measured`), el("p", {}, `${b.typical.join(", ")}.`)) : null,
      el("div", { class: "bar" }, el("button", { type: "button", class: "main", id: "to-scale", onclick: () => show("scale") }, "Go on to the scale")));
    document.getElementById("begun")?.focus();
  };
  const measure = (keys: string[]): void => {
    const typed: Record<string, string> = {};
    const name = store.bench.file.replace(".toml", "");
    const wanted = keys.filter((k) => known.questions.some((q) => q.key === k));
    ask(() => wanted.map((k) => ({ ...question(k, typed), needed: true })), 0, "One more reading", () => void make(name, typed, true));
  };
  /** Begins again from the readings as they are, to hear what would help most now. */
  const further = (): void => {
    put(body, el("p", { class: "text soft" }, "Working out which reading would help most…"));
    void make(store.bench.file.replace(".toml", ""), {}, true);
  };

  // The scale

  const WEIGHINGS: [string, string, string, string, string][] = [
    ["front", "", "Stand the front axle on the scale, the rear on blocks just as high", "level front", "pack"],
    ["rear", "", "Turn it round: the rear axle on the scale, the front on the blocks", "level rear", ""],
    ["left", "", "Both left wheels on the scale, the right ones on the blocks", "side left", ""],
    ["rear", "front", "Raise the front on a tall block, and weigh the rear", "raised", "block"],
  ];
  const scaleStage = (): void => {
    const asked: Asked[] = WEIGHINGS.flatMap(([at, raised, title, drawn, careful]) => {
      const key = `${at} ${raised}`;
      const shows: Asked = { key, title, help: raised ? "" : "Lift it and put it down again once or twice: more than one number says how far the scale scatters.", picture: drawn, caution: careful, unit: "g, repeats apart by spaces", choices: [], needed: false, value: weighing[key] ?? "",
        take: async (typed) => { weighing[key] = typed; return null; } };
      if (!raised) return [shows];
      const block: Asked = { key: "block", title: "How tall is that block?", help: "From the ground of the lower wheels to that of the raised ones.", picture: drawn, caution: careful, unit: "mm", choices: [], needed: false, value: weighing["block"] ?? "90",
        take: async (typed) => { weighing["block"] = typed; return null; } };
      return [block, shows];
    });
    asked.push({ key: "tied", title: "Was the suspension tied, so that nothing sank or rose?", help: "Cable ties round the dampers, at ride height.", picture: "damper", caution: "", unit: "", choices: ["yes", "no"], needed: true, value: weighing["tied"] ?? "yes",
      take: async (typed) => { weighing["tied"] = typed; return null; } });
    asked.push({ key: "step", title: "What is the smallest step the scale shows?", help: "", picture: "", caution: "", unit: "g", choices: [], needed: true, value: weighing["step"] ?? "1",
      take: async (typed) => {
        if (!(Number(typed.replace(",", ".")) > 0)) return "A number of grams, as 1 or 0.1.";
        weighing["step"] = typed.replace(",", ".");
        return null;
      } });
    ask(() => asked, 0, "On the scale", () => void weighed());
  };
  const weighed = async (): Promise<void> => {
    const readings = WEIGHINGS.map(([at, raised]) => ({ at, raised, block_mm: raised ? (weighing["block"] ?? "") : "", loads: weighing[`${at} ${raised}`] ?? "" })).filter((r) => r.loads);
    const form: ScaleForm = { step_g: Number(weighing["step"] ?? 1), locked: weighing["tied"] !== "no", readings };
    const answer = el("div", {});
    const again = el("button", { type: "button", id: "ask-back", onclick: scaleStage }, "Go through it again");
    try {
      showWeighed(answer, await api.weigh(form, true));
      say("The readings are kept beside the truck.");
      if (await look()) mark();
      put(body, answer, el("div", { class: "bar" }, el("button", { type: "button", class: "main", id: "to-board", onclick: () => show("board") }, "Go on to the board"),
        el("button", { type: "button", id: "to-agree", onclick: () => show("agree") }, "No board: bring file and scale together"), again));
      document.getElementById("to-board")?.focus();
    } catch (e) {
      put(body, el("p", { class: "text wrong", role: "alert" }, refused(e)), el("div", { class: "bar" }, again));
      again.focus();
    }
  };

  // The board

  const WAYS: [number, string][] = [[90, "Across, left side down"], [270, "Across, right side down"], [0, "Climbing, nose uphill"], [180, "Descending, nose downhill"]];
  const boardStage = (): void => {
    const noted: string[] = [];
    const asked = WAYS.map(([heading, words]): Asked => ({ key: String(heading), title: `${words}: at what angle does the last uphill tyre leave the board?`, help: "A strip under the downhill tyres keeps them from sliding. Raise the board slowly, and read the phone on it.", picture: heading === 90 ? "board" : "headings", caution: "fall", unit: "°", choices: [], needed: false, value: "",
      take: async (typed) => {
        if (!typed) return null;
        const angle = Number(typed.replace(",", ".").replace("°", ""));
        if (!(angle > 0 && angle < 90)) return "An angle between 0 and 90 degrees.";
        try {
          const card = await api.board({ heading_deg: heading, angle_deg: angle });
          const mine = card.readings.filter((r) => r.heading_deg === heading).pop();
          if (mine) noted.push(`${words}: ${fixed(mine.measured_deg)}°, foretold ${fixed(mine.predicted_deg)}°, which ${mine.agrees ? "agrees" : "does not agree"}.`);
        } catch (e) {
          return refused(e);
        }
        return null;
      } }));
    ask(() => asked, 0, "On the board", () => {
      put(body, el("h3", {}, noted.length ? "What the board said" : "Nothing was noted"), ...noted.map((n) => el("p", { class: "text" }, n)),
        el("div", { class: "bar" }, el("button", { type: "button", class: "main", id: "to-agree", onclick: () => show("agree") }, "Bring them together"), el("button", { type: "button", id: "ask-back", onclick: boardStage }, "Go through it again")));
      void look().then((there) => { if (there) mark(); });
      document.getElementById("to-agree")?.focus();
    });
  };

  // They agree

  const agreeStage = (): void => {
    put(body, el("p", { class: "text soft" }, "Looking for what has to move, within its tolerance, for the file to agree with what was read…"));
    api.agreement(false).then(({ found }) => agreed(found), (e: unknown) => put(body, el("p", { class: "text wrong", role: "alert" }, refused(e))));
  };
  const agreed = (found: Agreement): void => {
    const what = [found.scales ? "scale" : "", found.board ? "board" : ""].filter(Boolean).join(" and ");
    const still = found.moves.length === 0 || found.counted === "all";
    const at = (v: number[]): string => v.map((n) => signed(n)).join(", ");
    put(body,
      el("h3", { id: "agreement" }, found.agrees && still ? `The file agrees with ${what}` : found.agrees ? `With these moves the file agrees with ${what}` : `The file and ${what} do not agree`),
      el("table", {}, el("thead", {}, el("tr", {}, ...["", "by the file", "± 95 %", "together", "± 95 %"].map((h) => el(h ? "th" : "td", h ? { scope: "col", class: "n" } : {}, h)))),
        el("tbody", {}, ...found.sums.map((s) => el("tr", {}, el("th", { scope: "row" }, `${s.what}, ${s.unit}`), ...[s.before, s.before_pm, s.after, s.after_pm].map((v) => el("td", { class: "n" }, fixed(v))))))),
      ...found.left_out.map((l) => el("p", { class: "text wrong" }, `Cannot be believed and was left out: ${l.reading}, ${signed(l.off)} ${l.unit} from what the rest make of the truck.`)),
      found.agrees ? null : el("p", { class: "text" }, "Some tolerance in the file is too small, a part is missing from it, or a reading is wrong: weigh again what stands out."),
      still ? null : el("table", {}, el("caption", {}, "What has to move"), el("thead", {}, el("tr", {}, ...["part", "by, g", "ahead, left, up, mm"].map((h) => el("th", { scope: "col" }, h)))),
        el("tbody", {}, ...found.moves.slice(0, 12).map((m) => el("tr", {}, el("th", { scope: "row" }, m.part), el("td", {}, signed(m.mass_by_g)), el("td", {}, at(m.place_by_mm)))))),
      found.counted === "some" ? el("p", { class: "text wrong" }, "The file was brought together with some of these readings before, and they would count twice: undo that first, or go on from a file that has not seen them.") : null,
      found.at_limit.length ? el("p", { class: "text soft" }, `At the limit of its tolerance: ${found.at_limit.slice(0, 6).join(", ")}.`) : null,
      el("div", { class: "bar" }, still ? null : el("button", { type: "button", class: "main", id: "agree-put", onclick: () => void putIn() }, "Put it into the file"),
        el("button", { type: "button", id: "agree-scale", onclick: () => show("scale") }, "Weigh again")));
    document.getElementById("agree-put")?.focus();
  };
  const putIn = async (): Promise<void> => {
    let found: Agreement | null = null;
    const question = async (): Promise<Bench> => {
      const done = await api.agreement(true);
      found = done.found;
      return done.bench!;
    };
    if (await change(question, "brought the file together with what was read")) {
      put(body, el("h3", { id: "agreement", tabindex: -1 }, found!.agrees ? "The file agrees with what was read" : "The file is as near as its tolerances let it come"),
        el("p", { class: "text" }, "Save it to keep it; undo brings back what it was."), el("div", { class: "bar" }, el("button", { type: "button", id: "agree-again", onclick: agreeStage }, "Look again")));
      document.getElementById("agreement")?.focus();
    }
  };

  const first = async (): Promise<void> => { if (await look()) show(stage); };
  keepFresh(leaf, () => {
    if (of === store.bench.file) return; // what is being typed stays
    stage = "file";
    void first();
  });
  put(body, el("p", { class: "text soft" }, "…"));
  void first();
}
