// The weigh-in: a form for scale readings with pictures, and the tilt-board card.

import { api, Refusal } from "./api";
import { el, fixed, put, say, signed, svg } from "./dom";
import { oneStopGrid } from "./grid";
import { store } from "./store";
import { keepFresh } from "./tabs";
import type { BoardCard, ScaleForm, Weighed } from "./types";

const PLACES = ["front", "rear", "left", "right", "front left", "front right", "rear left", "rear right", "all"];
const ENDS = ["", "front", "rear", "left", "right"];

type Line = ScaleForm["readings"][number];
const blank = (at: string, raised = "", block_mm = ""): Line => ({ at, raised, block_mm, loads: "" });

export function scalesPage(leaf: HTMLElement): void {
  let lines: Line[] = [blank("front"), blank("rear"), blank("left"), blank("rear", "front", "90")];
  let of = "";
  let body = el("tbody", {});
  const stop = { key: "" };
  const answer = el("div", { id: "weigh-answer", "aria-live": "polite" });
  const resolution = el("input", { id: "weigh-step", type: "number", min: 0.01, step: "any", value: 1, required: true });
  const locked = el("input", { id: "weigh-locked", type: "checkbox", checked: true });
  const draw = (): void => {
    const fresh = el("tbody", {}, ...lines.map((line, i) => {
    const picture = el("td", {}, sketch(line));
    const change = (key: keyof Line) => (e: Event): void => {
      line[key] = (e.target as HTMLInputElement).value;
      put(picture, sketch(line));
    };
    return el("tr", {}, picture,
      el("td", {}, el("select", { "aria-label": `Reading ${i + 1}: what stands on the scale`, onchange: change("at") }, ...PLACES.map((p) => el("option", { value: p, selected: p === line.at }, p === "all" ? "the whole truck" : p.includes(" ") ? `${p} wheel` : p === "front" || p === "rear" ? `${p} axle` : `${p} side`)))),
      el("td", {}, el("select", { "aria-label": `Reading ${i + 1}: which end is raised`, onchange: change("raised") }, ...ENDS.map((p) => el("option", { value: p, selected: p === line.raised }, p ? `${p} raised` : "level")))),
      el("td", {}, el("input", { type: "number", min: 1, step: "any", value: line.block_mm, "aria-label": `Reading ${i + 1}: block height in mm`, onchange: change("block_mm") })),
      el("td", {}, el("input", { type: "text", inputmode: "decimal", value: line.loads, placeholder: "1342; 1345", "aria-label": `Reading ${i + 1}: scale shows, in g, repeats apart by semicolons or spaces`, onchange: change("loads") })),
      el("td", {}, el("button", { type: "button", "aria-label": `Remove reading ${i + 1}`, onclick: () => { lines.splice(i, 1); draw(); } }, "✕")));
  }));
    oneStopGrid(fresh, "tr", stop);
    body.replaceWith(fresh);
    body = fresh;
  };
  const weigh = async (keep: boolean): Promise<void> => {
    try {
      showWeighed(answer, await api.weigh({ step_g: Number(resolution.value), locked: locked.checked, readings: lines }, keep));
      if (keep) say("The readings are kept beside the truck.");
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      put(answer, el("p", { class: "text wrong" }, e.sentences.slice(0, 3).join(" ")));
    }
  };
  leaf.append(
    el("p", { class: "text" }, "One kitchen scale will do: put it under one axle, the other on a block of the scale's height, and write down what it shows. Then raise one end on a block you have measured, and weigh the other end again: that gives the height."),
    el("div", { class: "parts-holder" }, el("table", { class: "parts", id: "readings" }, el("thead", {}, el("tr", {}, ...["", "On the scale", "Stands", "Block, mm", "Scale shows, g", ""].map((h) => el(h ? "th" : "td", h ? { scope: "col" } : {}, h)))), body)),
    el("div", { class: "bar" }, el("button", { type: "button", id: "reading-add", onclick: () => { lines.push(blank("front")); draw(); } }, "Another reading"),
      el("label", { for: "weigh-step" }, "Scale's step, g"), resolution, el("label", { class: "tick" }, locked, "suspension tied up"),
      el("button", { type: "button", class: "main", id: "weigh-go", onclick: () => void weigh(false) }, "Weigh"), el("button", { type: "button", id: "weigh-keep", onclick: () => void weigh(true) }, "Keep readings")),
    answer);
  draw();
  /** What was kept beside this truck comes back into the form. */
  const readBack = async (): Promise<void> => {
    if (of === store.bench.file) return;
    of = store.bench.file;
    try {
      const kept = await api.readings();
      if (kept.form) {
        lines = kept.form.readings;
        resolution.value = String(kept.form.step_g);
        locked.checked = kept.form.locked;
        draw();
        put(answer, el("p", { class: "text soft" }, `Read back from ${kept.file}.`));
      } else put(answer, kept.there ? el("p", { class: "text" }, `${kept.file} says more than this form shows, and is left as it is: crossfall weigh-in ${kept.file} reads it. Keeping readings here puts it aside as a copy first.`) : null);
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      of = "";
    }
  };
  keepFresh(leaf, () => void readBack());
  void readBack();
}

/** The truck on scale and block, from the side or from behind. */
function sketch(line: Line): SVGElement {
  const across = ["left", "right"].includes(line.at) || ["left", "right"].includes(line.raised);
  const [a, b] = across ? ["left", "right"] : ["rear", "front"];
  const high = (end: string): number => (line.raised === end ? 16 : 0);
  const on_ = (end: string): boolean => line.at === end || line.at === "all" || line.at.startsWith(`${end} `) || line.at.endsWith(` ${end}`);
  const foot = (x: number, end: string): SVGElement[] => [
    ...(high(end) ? [svg("rect", { class: "sk-block", x: x - 9, y: 40 - high(end), width: 18, height: high(end) })] : []),
    svg("rect", { class: on_(end) ? "sk-scale" : "sk-block", x: x - 11, y: 40, width: 22, height: 5 }),
    svg("circle", { class: "sk-line", cx: x, cy: 32 - high(end), r: 8 }),
  ];
  return svg("svg", { class: "sketch", viewBox: "0 -8 92 56", role: "img", "aria-label": `${line.at} on the scale${line.raised ? `, ${line.raised} raised` : ""}` },
    ...foot(20, a!), ...foot(72, b!), svg("path", { class: "sk-body", d: `M14 ${24 - high(a!)}L78 ${24 - high(b!)}L74 ${14 - high(b!)}L18 ${12 - high(a!)}Z` }));
}

/** What the readings say, beside what the file says. */
export function showWeighed(holder: HTMLElement, found: Weighed): void {
  const n = store.answers.numbers;
  const file = [n.mass_g, n.cg_mm[0], n.cg_mm[1], n.cg_mm[2]];
  put(holder, el("table", { id: "weighed" }, el("caption", {}, "What the scale says"),
    el("thead", {}, el("tr", {}, ...["", "found", "95 % between", "in the file", "difference"].map((h) => el(h ? "th" : "td", h ? { scope: "col", class: "n" } : {}, h)))),
    el("tbody", {}, ...found.found.map((f, i) => el("tr", {}, el("th", { scope: "row" }, `${f.what}, ${f.unit}`),
      el("td", { class: "n" }, el("b", {}, f.value === null ? "not measured" : fixed(f.value))), el("td", { class: "n" }, f.value === null ? "–" : `${fixed(f.low)} to ${fixed(f.high)}`),
      el("td", { class: "n" }, fixed(file[i])), el("td", { class: "n" }, f.value === null ? "–" : signed(f.value - file[i]!)))))),
    ...[...found.outliers, ...found.warnings].map((w) => el("p", { class: "text wrong" }, w)),
    found.next.length ? el("p", { class: "text soft" }, `What would help most now: ${found.next.join("; ")}.`) : null);
}

export function boardPage(leaf: HTMLElement): void {
  const holder = el("div", { id: "board" });
  leaf.append(el("p", { class: "text" }, "Lay a strip under the downhill tyres so that they do not slide, raise the board slowly, and read the angle at which the last uphill tyre leaves it."), holder,
    el("p", { class: "text soft" }, "Have a hand ready to catch the truck, take loose weights off first, and mind the pack. Scale models only: nothing here is a basis for a vehicle that carries people."));
  const fetchCard = (asked?: Record<string, unknown>): void => {
    api.board(asked).then((card) => draw(card), (e: unknown) => {
      if (!(e instanceof Refusal)) throw e;
      if (e.status !== 409 && e.status !== 0) say(e.message, "wrong");
    });
  };
  const draw = (card: BoardCard): void => put(holder, el("table", {}, el("caption", {}, "Tilt-board card"),
    el("thead", {}, el("tr", {}, ...["", "predicted", "measured before", "measured now"].map((h) => el(h ? "th" : "td", h ? { scope: "col", class: "n" } : {}, h)))),
    el("tbody", {}, ...card.card.map((c) => {
      const mine = card.readings.filter((r) => r.heading_deg === c.heading_deg);
      const input = el("input", { type: "number", min: 1, max: 89, step: 0.1, id: `board-${c.heading_deg}`, "aria-label": `Measured angle, ${c.name}` });
      return el("tr", {}, el("th", { scope: "row" }, c.name),
        el("td", { class: "n" }, c.high_deg - c.low_deg > 0.15 ? `${fixed(c.low_deg)} to ${fixed(c.high_deg)}°` : `${fixed(c.deg)}°`, el("small", { class: "soft" }, `± ${fixed(2 * c.u_deg)}`)),
        el("td", { class: "n" }, ...(mine.length ? mine.map((r) => el("span", { class: r.agrees ? "" : "wrong" }, `${fixed(r.measured_deg)}° ${r.agrees ? "agrees" : "does not"} `,
          el("button", { type: "button", class: "small", title: "Take this reading out", "aria-label": `Take out ${fixed(r.measured_deg)}°, ${c.name}`, onclick: () => fetchCard({ remove: r.number, angles_deg: r.angles_deg }) }, "✕"))) : ["–"])),
        el("td", { class: "n" }, input, " ", el("button", { type: "button", "aria-label": `Note ${c.name}`, onclick: () => { if (input.value !== "" && input.reportValidity()) fetchCard({ heading_deg: c.heading_deg, angle_deg: Number(input.value) }); } }, "Note")));
    }))),
    card.agrees === null ? null : el("p", { class: "text" }, el("b", {}, card.agrees ? "Prediction and board agree." : "Prediction and board do not agree.")),
    ...card.causes.map((c) => el("p", { class: "text" }, c)), el("p", { class: "text soft" }, `Readings are kept in ${card.file}.`));
  keepFresh(leaf, () => fetchCard(), 900);
  put(holder, el("p", { class: "text soft" }, "Working out what the board should show…"));
  fetchCard();
}
