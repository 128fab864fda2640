// Handing it on: one picture of truck, map and numbers, or the page itself as a file to look at.

import { api, frozen, Refusal } from "./api";
import { byId, el, fixed, say } from "./dom";
import { DIRECTIONS, goes, on, rangeOf, spoken, store } from "./store";
import type { Table } from "./stage";

const [WIDTH, HEIGHT] = [1600, 900];
const KEPT = ["fill", "fill-opacity", "fill-rule", "stroke", "stroke-width", "stroke-opacity", "stroke-dasharray", "stroke-linecap", "stroke-linejoin", "paint-order", "font", "text-anchor", "visibility", "vector-effect", "letter-spacing"];

export function makeShare(stage: Table): void {
  byId("share-picture").addEventListener("click", () => void picture(stage));
  byId("share-page").addEventListener("click", () => void page());
  if (!frozen) return;
  const told = el("p", { class: "frozen-note" });
  document.querySelector(".head")!.append(told);
  on("bench", () => { told.textContent = `${store.bench.file.replace(/\.toml$/, "")}, as it was on ${frozen!.date}: a copy to look at`; });
}

export function save(content: Blob, name: string): void {
  const link = el("a", { href: URL.createObjectURL(content), download: name });
  link.click();
  URL.revokeObjectURL(link.href);
  say(`${name} is in your downloads.`);
}

export const stem = (): string => store.bench.file.replace(/\.toml$/, "");

async function page(): Promise<void> {
  say("Working out every way to stand, for the copy…");
  try {
    save(await api.share(), `${stem()}-bench.html`);
  } catch (e) {
    if (!(e instanceof Refusal)) throw e;
    say(`No copy was made: ${e.message}`, "wrong");
  }
}

/** A drawing as a picture by itself: what the sheet's style gives it is written into it. */
async function asImage(drawing: SVGSVGElement, width: number, height: number): Promise<HTMLImageElement> {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const [from, to] = [[drawing, ...drawing.querySelectorAll("*")], [copy, ...copy.querySelectorAll("*")]];
  from.forEach((node, i) => {
    const style = getComputedStyle(node);
    for (const name of KEPT) (to[i] as SVGElement).style.setProperty(name, style.getPropertyValue(name));
  });
  copy.setAttribute("width", String(width));
  copy.setAttribute("height", String(height));
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  const image = new Image();
  const url = URL.createObjectURL(new Blob([new XMLSerializer().serializeToString(copy)], { type: "image/svg+xml" }));
  image.src = url;
  await image.decode();
  URL.revokeObjectURL(url);
  return image;
}

async function picture(stage: Table): Promise<void> {
  const sheet = el("canvas", { width: WIDTH, height: HEIGHT });
  const pen = sheet.getContext("2d")!;
  const style = getComputedStyle(document.documentElement);
  const ink = (name: string): string => style.getPropertyValue(name).trim();
  pen.fillStyle = ink("--sheet");
  pen.fillRect(0, 0, WIDTH, HEIGHT);
  stage.render();
  const truck = document.querySelector<SVGSVGElement>("#stage .flat");
  const canvas = byId<HTMLCanvasElement>("stage-canvas");
  const size = truck ? truck.getBoundingClientRect() : canvas;
  const [w, h] = [size.width, size.height];
  const scale = Math.min(790 / w, 700 / h);
  pen.drawImage(truck ? await asImage(truck, w * 2, h * 2) : canvas, 20, 90, w * scale, h * scale);
  const map = document.querySelector<SVGSVGElement>("svg.polar")!;
  pen.drawImage(await asImage(map, 1560, 1374), 820, 84, 760, 669);
  const write = (words: string, x: number, y: number, font: string, colour = "--ink"): void => {
    pen.font = font;
    pen.fillStyle = ink(colour);
    pen.fillText(words, x, y);
  };
  const plain = style.getPropertyValue("--plain") || "sans-serif";
  const { numbers: n, surface, grip_range: grip } = store.answers;
  write(stem(), 30, 56, `600 38px ${plain}`);
  write(`on ${surface}, grip ${fixed(grip.likely, 2)}, ${frozen?.date ?? new Date().toISOString().slice(0, 10)}`, 60 + measure(pen, stem(), `600 38px ${plain}`), 56, `22px ${plain}`, "--soft");
  write(`${fixed(n.mass_g, 0)} g, CG ${fixed(n.cg_mm[2])} mm high, ${fixed(n.front_percent)} % on the front`, 30, 820, `24px ${plain}`);
  const ways = Object.values(DIRECTIONS).map(({ heading, short }) => {
    const first = goes(store.answers, heading);
    const way = store.answers.ways?.find((one) => one.heading_deg === heading);
    return `${short} ${first?.slides ? "slides" : "tips"} ${spoken(first?.deg ?? null, first?.slides ? null : rangeOf(way))}°`;
  });
  write(ways.join("   "), 30, 862, `600 24px ${plain}`);
  sheet.toBlob((content) => { if (content) save(content, `${stem()}.png`); });
}

function measure(pen: CanvasRenderingContext2D, words: string, font: string): number {
  pen.font = font;
  return pen.measureText(words).width;
}
