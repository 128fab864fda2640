// Making elements without a framework, and without inline styles (the page forbids them).

type Child = Node | string | null | undefined | false;
type Attributes = Record<string, unknown>;

function fill(node: Element, attributes: Attributes, children: Child[]): void {
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (key.startsWith("on") && typeof value === "function") {
      node.addEventListener(key.slice(2), value as EventListener);
    } else node.setAttribute(key, value === true ? "" : String(value));
  }
  node.append(...children.filter((c): c is Node | string => c !== null && c !== undefined && c !== false));
}

export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  const node = document.createElement(tag);
  fill(node, attributes, children);
  return node;
}

export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: Child[]
): SVGElementTagNameMap[K] {
  const node = document.createElementNS("http://www.w3.org/2000/svg", tag);
  fill(node, attributes, children);
  return node;
}

export function byId<T extends HTMLElement>(id: string): T {
  const node = document.getElementById(id);
  if (node === null) throw new Error(`no element ${id}`);
  return node as T;
}

/** Replaces what is in a node, keeping the keyboard's place when the same control comes back. */
export function put(node: Element, ...children: Child[]): void {
  const held = document.activeElement;
  const key = held && node.contains(held) ? held.getAttribute("data-key") : null;
  node.replaceChildren(...children.filter((c): c is Node | string => !!c));
  if (key !== null) {
    const again = node.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`);
    again?.focus({ preventScroll: true });
  }
}

let speaker: HTMLElement | null = null;

/** Says a sentence in the line at the foot of the page, aloud for those who listen. */
export function say(sentence: string, kind: "note" | "wrong" = "note"): void {
  speaker ??= byId("say");
  speaker.textContent = sentence;
  speaker.dataset["kind"] = kind;
}

/** Asks for a name in the page's dialog: `done` gets what was typed where it is said yes to. */
export function askFor(id: string, title: string, label: string, value: string, yes: string, done: (name: string) => void, limits: Record<string, unknown> = { required: true, maxlength: 80 }): void {
  const dialog = byId<HTMLDialogElement>("ask");
  const field = el("input", { id, ...limits, value });
  put(dialog, el("form", { method: "dialog" }, el("h2", {}, title), el("label", { for: id }, label), field,
    el("div", { class: "bar" }, el("button", { value: "no", formnovalidate: true }, "Leave it"), el("button", { value: "yes", class: "main" }, yes))));
  dialog.onclose = () => { if (dialog.returnValue === "yes") done(field.value); };
  dialog.returnValue = "no";
  dialog.showModal();
  field.select();
}

/** Makes one tab stop of what belongs together: arrow keys, Home and End go about in it. */
export function oneStop(holder: Element, which = "button"): void {
  const all = (): HTMLElement[] => [...holder.querySelectorAll<HTMLElement>(which)].filter((e) => !(e as HTMLButtonElement).disabled && !e.hidden);
  let last: HTMLElement | null = null;
  const settle = (): void => {
    const list = all();
    const stop = last && list.includes(last) ? last : (list.find((e) => e.getAttribute("aria-pressed") === "true") ?? list[0]);
    for (const e of list) {
      const index = e === stop ? 0 : -1;
      if (e.tabIndex !== index) e.tabIndex = index;
    }
  };
  holder.addEventListener("focusin", (e) => {
    last = (e.target as HTMLElement).closest<HTMLElement>(which);
    settle();
  });
  holder.addEventListener("keydown", (e) => {
    const key = (e as KeyboardEvent).key;
    const list = all();
    const here = list.indexOf(document.activeElement as HTMLElement);
    if (here < 0) return;
    const steps: Record<string, number> = { ArrowRight: here + 1, ArrowDown: here + 1, ArrowLeft: here - 1, ArrowUp: here - 1, Home: 0, End: list.length - 1 };
    const to = steps[key];
    if (to === undefined) return;
    e.preventDefault();
    list[(to + list.length) % list.length]!.focus();
  });
  new MutationObserver(settle).observe(holder, { childList: true, subtree: true, attributes: true, attributeFilter: ["disabled", "hidden", "aria-pressed"] });
  settle();
}

export const calm = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

export const fixed = (value: number | null | undefined, digits = 1): string =>
  value === null || value === undefined || !Number.isFinite(value)
    ? "–"
    : value.toFixed(digits).replace(/^-(0(\.0*)?)$/, "$1").replace("-", "−");

export const signed = (value: number, digits = 1): string => {
  const text = fixed(value, digits);
  return value > 0 && Number(value.toFixed(digits)) !== 0 ? `+${text}` : text;
};

let software: boolean | null = null;
let flat = false;

/** Whether the browser offers nothing to draw in three dimensions with. */
export function drawnFlat(): boolean {
  drawnInSoftware();
  return flat;
}

/** Whether the page is drawn without a graphics card, and so slowly. */
export function drawnInSoftware(): boolean {
  if (software === null) {
    const probe = document.createElement("canvas").getContext("webgl2");
    flat = probe === null;
    const about = probe?.getExtension("WEBGL_debug_renderer_info");
    const name = about ? String(probe?.getParameter(about.UNMASKED_RENDERER_WEBGL)) : "";
    probe?.getExtension("WEBGL_lose_context")?.loseContext();
    software = /swiftshader|llvmpipe|software|basic render/i.test(name);
  }
  return software;
}

/** As many decimals as a step of that size shows. */
export const decimals = (step: number): number => Math.max(0, Math.min(3, -Math.floor(Math.log10(step) + 1e-9)));

/** Money to the cent, and whole where it is. */
export const money = (value: number, currency: string): string =>
  `${fixed(value, Number.isInteger(Math.round(value * 100) / 100) ? 0 : 2)} ${currency}`.trim();
