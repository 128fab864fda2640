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

/** Whether the page is drawn without a graphics card, and so slowly. */
export function drawnInSoftware(): boolean {
  if (software === null) {
    const probe = document.createElement("canvas").getContext("webgl2");
    const about = probe?.getExtension("WEBGL_debug_renderer_info");
    const name = about ? String(probe?.getParameter(about.UNMASKED_RENDERER_WEBGL)) : "";
    probe?.getExtension("WEBGL_lose_context")?.loseContext();
    software = /swiftshader|llvmpipe|software|basic render/i.test(name);
  }
  return software;
}
