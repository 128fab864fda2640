// Where links and shocks put roll centre and instant centre, how they wander over the travel, and
// what each end of a link moved a little does.

import { api, Gone, Refusal } from "./api";
import { commit } from "./edits";
import { el, fixed, oneStop, put, signed, svg } from "./dom";
import { extent, Outlines, PROJECT, type Face } from "./outline";
import { store } from "./store";
import type { AxleTold, LinkMove, SuspensionMoves, SuspensionOf, SuspensionTold, Pair, Triple } from "./types";
import { keepFresh } from "./tabs";
import { measureDials } from "./weights";

const NONE = "No link part of this file says what it is, so roll centre and lean are the file's own numbers: give its links link = \"lower\", \"upper\", \"track bar\" or \"wishbone\", and what they amount to stands here.";
const FIRST = 12; // moves that are shown at once
const ENDS = ["front", "rear"] as const;

/** Words, digits, and the number of an axle. */
const ROWS: [string, number, (a: AxleTold) => number | null][] = [
  ["roll centre, mm above ground", 1, (a) => a.roll_centre_mm],
  ["anti-dive, anti-squat, %", 0, (a) => a.anti_dive_percent ?? a.anti_squat_percent ?? null],
  ["instant centre, mm ahead", 0, (a) => a.instant_centre_mm[0]],
  ["instant centre, mm above ground", 0, (a) => a.instant_centre_mm[1]],
  ["roll steer, deg per deg", 3, (a) => a.roll_steer_deg_per_deg],
  ["castor, deg per mm of bump", 3, (a) => a.castor_deg_per_mm],
  ["forwards, mm per mm of bump", 3, (a) => a.wheelbase_mm_per_mm],
  ["wheel rate, N/mm", 3, (a) => a.wheel_rate_n_per_mm],
  ["springs apart, as if upright, mm", 1, (a) => a.spring_spacing_mm],
  ["bump at the wheel, mm", 1, (a) => a.bump_mm],
  ["droop at the wheel, mm", 1, (a) => a.droop_mm],
  ["left spring pressed at ride height, mm", 1, (a) => a.spring_squeeze_mm[0]],
  ["left spring pressed at droop, mm", 1, (a) => a.spring_squeeze_at_droop_mm[0]],
  ["soft springs bind at heave, mm", 1, (a) => a.soft_spring_bound_at_mm],
  ["shock at droop, mm", 1, (a) => a.shock_length_mm[0]],
  ["shock at ride height, mm", 1, (a) => a.shock_length_mm[1]],
  ["shock at bump, mm", 1, (a) => a.shock_length_mm[2]],
];

const CURVES: [string, string, (a: AxleTold) => [number[], (number | null)[]]][] = [
  ["anti-dive, anti-squat, %", "heave, mm", (a) => [a.travel.heave_mm, a.travel.anti_percent]],
  ["roll centre, mm above ground", "heave, mm", (a) => [a.travel.heave_mm, a.travel.roll_centre_mm]],
  ["castor gained, °", "heave, mm", (a) => [a.travel.heave_mm, a.travel.castor_deg]],
  ["wheel rate, N/mm", "heave, mm", (a) => [a.travel.heave_mm, a.travel.wheel_rate_n_per_mm]],
  ["axle goes forwards, mm", "heave, mm", (a) => [a.travel.heave_mm, a.travel.wheelbase_mm]],
  ["axle steers, °", "roll of the axle, °", (a) => [a.rolling.roll_deg, a.rolling.steer_deg]],
];

export function suspensionPage(leaf: HTMLElement): void {
  leaf.classList.add("suspension");
  const views = el("div", { class: "views" });
  const numbers = el("div", { class: "parts-holder" });
  const curves = el("div", { class: "small-curves" });
  const moves = el("div");
  const words = el("p", { class: "text" });
  const dials = el("div", { class: "one", id: "suspension-dials" });
  const outlines = { side: new Outlines("side"), rear: new Outlines("rear") };
  leaf.append(words, views, numbers, dials, curves, moves);

  const ask = async (): Promise<void> => {
    const bench = store.bench;
    try {
      const told = await api.suspension();
      if (bench !== store.bench) return;
      draw(told);
      if (!told.truck.linked) return;
      moves.setAttribute("aria-busy", "true");
      if (!moves.firstChild) put(moves, el("h3", {}, "A link end moved by 5 mm"), el("p", { class: "text soft" }, "Working out what each would do…"));
      const found = await api.suspensionMoves();
      if (bench !== store.bench) return;
      put(moves, ...movesTable(found));
      moves.removeAttribute("aria-busy");
    } catch (e) {
      if (!(e instanceof Refusal)) throw e;
      if (!(e instanceof Gone) && e.status !== 409) words.textContent = e.message;
    }
  };
  const draw = (told: SuspensionTold): void => {
    const { linked } = told.truck;
    put(dials, el("h3", {}, "Springs and shocks"), ...measureDials(store.bench.measures.filter((m) => m.key.includes(".suspension.")), "links-"));
    words.classList.toggle("soft", linked);
    words.textContent = linked ? "At ride height, wheels held. Violet is the front axle, rose the rear; thick lines are links, dashed ones shocks." : NONE;
    for (const node of [views, numbers, curves, moves]) node.hidden = !linked;
    if (!linked) return;
    put(views, ...(["side", "rear"] as const).map((face) => view(face, told.truck, outlines[face])));
    put(numbers, numbersTable(told));
    put(curves, ...CURVES.map((c) => smallCurve(c, told)));
  };
  keepFresh(leaf, () => void ask(), 250);
  void ask();
}

/** Side or rear view to scale, with links, roll centres, roll axis and instant centres. */
function view(face: "side" | "rear", told: SuspensionOf, outlines: Outlines): HTMLElement {
  const scene = store.bench.scene;
  const [l, , r] = extent(scene, face);
  const top = Math.min(extent(scene, "side")[1], extent(scene, "rear")[1]);
  const box: [number, number, number, number] = face === "side" ? [l - 70, top - 14, r + 70, 26] : [l - 40, top - 14, r + 40, 26];
  outlines.draw(scene.parts, null);
  const shapes = told.axles.flatMap((axle) => [...rods(face, axle), ...(face === "side" ? sideOf(axle, box) : rearOf(axle, box))]);
  const [cx, cy] = PROJECT[face](scene.cg_mm);
  const name = face === "side" ? "Side view, nose to the right" : "Rear view";
  const label = told.axles.map((a) => `${a.axle} roll centre ${fixed(a.roll_centre_mm)} mm above ground, instant centre ${fixed(a.instant_centre_mm[0], 0)} ahead and ${fixed(a.instant_centre_mm[1], 0)} up`).join("; ");
  const drawing = svg("svg", { class: `view links-view`, viewBox: `${box[0]} ${box[1]} ${box[2] - box[0]} ${box[3] - box[1]}`, role: "img", "aria-label": `${name}: ${label}` },
    svg("path", { class: "ground", d: `M${box[0]} 0H${box[2]}` }), svg("g", { class: "faint" }, outlines.root), ...shapes,
    svg("g", { transform: `translate(${cx} ${cy})` }, svg("circle", { r: 6, class: "cg-back" }), svg("path", { d: "M0 0V-6A6 6 0 0 1 6 0ZM0 0V6A6 6 0 0 1 -6 0Z", class: "cg-dark" }), svg("circle", { r: 6, class: "cg-ring" })));
  const figure = el("figure", {}, drawing, el("figcaption", {}, name));
  figure.style.flexGrow = String(Math.round(box[2] - box[0]));
  return figure;
}

function rods(face: Face, axle: AxleTold): SVGElement[] {
  const at = (p: Triple): string => PROJECT[face](p).map((v) => v.toFixed(1)).join(" ");
  return axle.rods.flatMap((rod) => [
    svg("path", { class: `rod of-${axle.axle}${rod.shock ? " shock" : ""}`, d: `M${at(rod.chassis_mm)}L${at(rod.axle_mm)}` }, svg("title", {}, `${axle.axle} ${rod.name}`)),
    ...[rod.chassis_mm, rod.axle_mm].map((p) => {
      const [x, y] = PROJECT[face](p);
      return svg("circle", { class: `rod-end of-${axle.axle}`, cx: x, cy: y, r: 2.6 });
    })]);
}

const cross = (x: number, y: number, of: string): SVGElement => svg("path", { class: `centre of-${of}`, d: `M${x - 6} ${y}H${x + 6}M${x} ${y - 6}V${y + 6}` });
const word = (x: number, y: number, words: string, of: string, anchor = "middle"): SVGElement => svg("text", { class: `link-word of-${of}`, x, y, "text-anchor": anchor }, words);

/** The roll axis through the roll centre, and the line from the contact to the instant centre, as
 * far as the drawing goes. */
function sideOf(axle: AxleTold, box: [number, number, number, number]): SVGElement[] {
  const { x_mm: x, roll_centre_mm: h, roll_axis_slope: slope, instant_centre_mm: [ix, iz], axle: of } = axle;
  const reach = 75;
  const found: SVGElement[] = [
    svg("path", { class: `roll-axis of-${of}`, d: `M${x - reach} ${-(h - slope * reach)}L${x + reach} ${-(h + slope * reach)}` }),
    cross(x, -h, of), word(x, -h - 12, `roll centre ${fixed(h, 0)}`, of)];
  if (ix === null || iz === null) return found;
  const edge = ix > x ? box[2] - 4 : box[0] + 4;
  const outside = ix > box[2] - 4 || ix < box[0] + 4;
  const tall = Math.abs(iz) > -box[1] - 8 ? (-box[1] - 8) / Math.abs(iz) : 1;
  const share = Math.min(tall, outside ? (edge - x) / (ix - x) : 1);
  const [ex, ez] = [x + share * (ix - x), share * iz];
  found.push(svg("path", { class: `to-instant of-${of}`, d: `M${x} 0L${ex.toFixed(1)} ${(-ez).toFixed(1)}` }));
  if (share === 1) found.push(svg("path", { class: `instant of-${of}`, d: `M${ix - 5} ${-iz - 5}L${ix + 5} ${-iz + 5}M${ix - 5} ${-iz + 5}L${ix + 5} ${-iz - 5}` }));
  const anchor = ex > box[2] - 90 ? "end" : ex < box[0] + 90 ? "start" : "middle";
  found.push(word(ex, Math.max(box[1] + 12, -ez - 8), share === 1 ? `${of} instant centre` : `${of} instant centre at ${fixed(ix, 0)}, ${fixed(iz, 0)}`, of, anchor));
  return found;
}

function rearOf(axle: AxleTold, box: [number, number, number, number]): SVGElement[] {
  const left = axle.axle === "front";
  const [x, y] = [left ? box[0] + 3 : box[2] - 3, -axle.roll_centre_mm];
  return [svg("path", { class: `roll-axis of-${axle.axle}`, d: `M0 ${y}H${x}` }), cross(0, y, axle.axle), word(x, y - 5, fixed(axle.roll_centre_mm), axle.axle, left ? "start" : "end")];
}

function numbersTable(told: SuspensionTold): HTMLElement {
  const cell = (value: number | null, then: number | null | undefined, digits: number): HTMLElement => {
    const moved = value !== null && then !== null && then !== undefined && Number((value - then).toFixed(digits)) !== 0;
    return el("td", { class: "n" }, fixed(value, digits), moved ? el("span", { class: "diff" }, ` ${signed(value! - then!, digits)}`) : null);
  };
  return el("table", { class: "link-numbers" }, el("caption", {}, "At ride height", told.reference ? el("span", { class: "soft" }, `, against ${store.bench.before?.what ?? "the reference"}`) : null),
    el("thead", {}, el("tr", {}, el("td", {}), ...ENDS.map((end) => el("th", { scope: "col", class: "n" }, end)))),
    el("tbody", {},
      el("tr", {}, el("th", { scope: "row" }, "guided by"), ...told.truck.axles.map((a) => el("td", { class: "n kinds" }, a.links.map((name) => name.replace(`${a.axle} `, "")).join(", ") || "numbers"))),
      ...ROWS.filter(([, , of]) => told.truck.axles.some((a) => of(a) !== null)).map(([words, digits, of]) => el("tr", {}, el("th", { scope: "row" }, words),
        ...told.truck.axles.map((a, i) => cell(of(a), told.reference && of(told.reference.axles[i]!), digits))))));
}

/** One curve over the travel for both axles, the reference thin beneath. */
function smallCurve([words, along, of]: (typeof CURVES)[number], told: SuspensionTold): HTMLElement {
  const [W, H, left, low] = [230, 118, 32, 20];
  const kinds: [string, AxleTold][] = [...(told.reference?.axles ?? []).map((a): [string, AxleTold] => ["then", a]), ...told.truck.axles.map((a): [string, AxleTold] => ["now", a])];
  const all = kinds.map(([, a]) => of(a));
  const xs = all.flatMap(([x]) => x);
  const ys = all.flatMap(([, y]) => y).filter((v): v is number => v !== null);
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)];
  let [y0, y1] = [Math.min(...ys), Math.max(...ys)];
  if (y1 - y0 < 1e-3) [y0, y1] = [y0 - 1, y1 + 1]; // what does not wander is a level line
  const x = (v: number): number => left + ((v - x0) / (x1 - x0 || 1)) * (W - left - 6);
  const y = (v: number): number => 8 + ((y1 - v) / (y1 - y0)) * (H - 8 - low);
  const digits = y1 - y0 > 20 ? 0 : y1 - y0 > 2 ? 1 : 2;
  const line = ([a, b]: [number[], (number | null)[]]): string => b.map((v, i): [number, number | null] => [a[i]!, v]).filter((p): p is Pair => p[1] !== null).map((p, i) => `${i ? "L" : "M"}${x(p[0]).toFixed(1)} ${y(p[1]).toFixed(1)}`).join("");
  const drawn = kinds.map(([when, a], i) => svg("path", { class: `${when} of-${a.axle}`, d: line(all[i]!) }));
  const said = told.truck.axles.map((a) => { const [, v] = of(a); return `${a.axle} ${fixed(v[0], 2)} to ${fixed(v[v.length - 1], 2)}`; }).join(", ");
  return el("figure", {}, el("figcaption", {}, words), svg("svg", { viewBox: `0 0 ${W} ${H}`, role: "img", "aria-label": `${words} over ${along}: ${said}` },
    svg("path", { class: "curve-frame", d: `M${left} 8V${H - low}H${W - 6}M${x(0)} 8V${H - low}` }), ...drawn,
    ...[y0, y1].map((v) => svg("text", { x: left - 4, y: y(v) + 3.5, "text-anchor": "end" }, fixed(v, digits))),
    ...[x0, x1].map((v, i) => svg("text", { x: x(v), y: H - 8, "text-anchor": i ? "end" : "start" }, fixed(v, 0))),
    svg("text", { x: (left + W) / 2, y: H - 8, "text-anchor": "middle" }, along)));
}

/** What moving does, the ends that matter most first; each can be done. */
function movesTable(found: SuspensionMoves): HTMLElement[] {
  const most = (m: LinkMove): number => Math.max(...[m.side_deg, m.climb_deg, m.descent_deg].map((v) => Math.abs(v ?? 0)));
  const cell = (v: number | null): HTMLElement => el("td", { class: `n ${v === null || Math.abs(v) < 0.005 ? "" : v > 0 ? "gain-up" : "gain-down"}` }, v === null ? "–" : signed(v, 2));
  const row = (m: LinkMove): HTMLElement => el("tr", {}, el("th", { scope: "row" }, `${m.part}, ${m.end} end ${m.axis}`),
    ...(m.why_not ? [el("td", { colspan: 3, class: "soft" }, m.why_not)] : [cell(m.side_deg), cell(m.climb_deg), cell(m.descent_deg)]),
    el("td", {}, m.why_not ? null : el("button", { type: "button", class: "small", "data-key": `move-${m.part}-${m.end}-${m.axis}`, "aria-label": `Move ${m.part}, ${m.end} end ${m.axis} by ${fixed(found.moved_by_mm, 0)} mm`, onclick: () => void commit([m.edit], `${m.part}, ${m.end} end ${m.axis} ${fixed(found.moved_by_mm, 0)} mm`) }, "Do it")));
  const rows = [...found.moves].sort((a, b) => most(b) - most(a)).map(row);
  const body = el("tbody", {}, ...rows.slice(0, FIRST));
  oneStop(body);
  const rest = rows.length > FIRST ? el("button", { type: "button", id: "link-moves-all", onclick: () => { body.append(...rows.slice(FIRST)); rest?.parentElement?.remove(); } }, `All ${rows.length} of them`) : null;
  return [el("h3", {}, `A link end moved by ${fixed(found.moved_by_mm, 0)} mm`), el("p", { class: "text soft" }, `Degrees that it tips later on ${found.surface}, against a rail where it slides first; the side that loses more counts. Links on both sides move together.`),
    el("div", { class: "parts-holder" }, el("table", { id: "link-moves" }, el("thead", {}, el("tr", {}, el("td", {}), ...["side", "climb", "descent"].map((w) => el("th", { scope: "col", class: "n" }, w)), el("td", {}))), body)), ...(rest ? [el("div", { class: "bar" }, rest)] : [])];
}
