// A short clip out of frames: an animated WebP put together here, or an MP4 where the browser can.

const FPS = 12;

export interface Film {
  seconds: number;
  /** Draws the frame of a moment, s. */
  draw(time: number): void;
  sheet: HTMLCanvasElement;
}

/** Frames a second apart as one animated WebP; told how far it is between 0 and 1. */
export async function animated(film: Film, told: (share: number) => void, stopped: () => boolean): Promise<Blob | null> {
  const { width, height } = film.sheet;
  const count = Math.max(2, Math.round(film.seconds * FPS) + 1);
  const frames: Uint8Array<ArrayBuffer>[] = [];
  for (let i = 0; i < count; i++) {
    if (stopped()) return null;
    film.draw((i * film.seconds) / (count - 1));
    const picture = await new Promise<Blob | null>((done) => film.sheet.toBlob(done, "image/webp", 0.72));
    if (!picture || picture.type !== "image/webp") throw new Error("This browser cannot write such a clip.");
    frames.push(frame(new Uint8Array(await picture.arrayBuffer()), width, height, i === count - 1 ? 1500 : Math.round(1000 / FPS)));
    told((i + 1) / count);
  }
  const head = new Uint8Array(10);
  head[0] = 0x02; // animated
  three(head, 4, width - 1);
  three(head, 7, height - 1);
  const body = [chunk("VP8X", head), chunk("ANIM", new Uint8Array(6)), ...frames];
  const size = body.reduce((sum, part) => sum + part.length, 4);
  const start = new Uint8Array(12);
  start.set(letters("RIFF"));
  new DataView(start.buffer).setUint32(4, size, true);
  start.set(letters("WEBP"), 8);
  return new Blob([start, ...body], { type: "image/webp" });
}

/** What kind of film this browser records besides, or nothing. */
export function filmKind(): string | null {
  if (typeof MediaRecorder === "undefined") return null;
  return ["video/mp4;codecs=avc1.42E01F", "video/mp4"].find((kind) => MediaRecorder.isTypeSupported(kind)) ?? null;
}

/** The same as an MP4, which takes as long as it plays. */
export async function filmed(film: Film, kind: string, told: (share: number) => void, stopped: () => boolean): Promise<Blob | null> {
  const stream = film.sheet.captureStream(24);
  const recorder = new MediaRecorder(stream, { mimeType: kind, videoBitsPerSecond: 2_500_000 });
  const parts: Blob[] = [];
  recorder.ondataavailable = (e) => parts.push(e.data);
  const ended = new Promise<void>((done) => { recorder.onstop = () => done(); });
  film.draw(0);
  recorder.start();
  const began = performance.now();
  for (;;) {
    const time = Math.min(film.seconds, (performance.now() - began) / 1000);
    film.draw(time);
    told(time / film.seconds);
    if (time >= film.seconds || stopped()) break;
    await new Promise((done) => requestAnimationFrame(done));
  }
  recorder.stop();
  await ended;
  for (const track of stream.getTracks()) track.stop();
  return stopped() ? null : new Blob(parts, { type: kind.split(";")[0]! });
}

/** One frame of the animation, out of a still WebP: RIFF container of the format's specification. */
function frame(still: Uint8Array, width: number, height: number, ms: number): Uint8Array<ArrayBuffer> {
  const picture: Uint8Array[] = [];
  const view = new DataView(still.buffer, still.byteOffset);
  for (let at = 12; at + 8 <= still.length;) {
    const name = String.fromCharCode(...still.subarray(at, at + 4));
    const size = view.getUint32(at + 4, true);
    const end = at + 8 + size + (size % 2);
    if (name === "VP8 " || name === "VP8L" || name === "ALPH") picture.push(still.subarray(at, end));
    at = end;
  }
  const head = new Uint8Array(16);
  three(head, 6, width - 1);
  three(head, 9, height - 1);
  three(head, 12, ms);
  head[15] = 0x02; // as it is, without what was before
  return chunk("ANMF", joined([head, ...picture]));
}

function chunk(name: string, content: Uint8Array): Uint8Array<ArrayBuffer> {
  const made = new Uint8Array(8 + content.length + (content.length % 2));
  made.set(letters(name));
  new DataView(made.buffer).setUint32(4, content.length, true);
  made.set(content, 8);
  return made;
}

function joined(parts: Uint8Array[]): Uint8Array {
  const made = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0));
  let at = 0;
  for (const part of parts) {
    made.set(part, at);
    at += part.length;
  }
  return made;
}

const letters = (word: string): Uint8Array => new Uint8Array([...word].map((c) => c.charCodeAt(0)));
const three = (into: Uint8Array, at: number, value: number): void => into.set([value & 255, (value >> 8) & 255, (value >> 16) & 255], at);
