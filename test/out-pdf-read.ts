/** The words of a PDF that pdfkit wrote, read back out of its streams by way of the fonts' own maps to Unicode. */

import { inflateSync } from "node:zlib";

/** Objects by number, each with its dictionary's text and, where it has one, its stream, unpacked. */
function objectsOf(pdf: Buffer): Map<number, { readonly head: string; readonly stream: string }> {
  const text = pdf.toString("latin1");
  const objects = new Map<number, { head: string; stream: string }>();
  for (const match of text.matchAll(/(\d+) 0 obj\n([\s\S]*?)endobj/g)) {
    const [, number = "", body = ""] = match;
    const at = body.indexOf("stream\n");
    const head = at < 0 ? body : body.slice(0, at);
    const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0);
    const raw = Buffer.from(body.slice(at + 7, at + 7 + length), "latin1");
    const stream =
      at < 0
        ? ""
        : head.includes("FlateDecode")
          ? inflateSync(raw).toString("latin1")
          : raw.toString("latin1");
    objects.set(Number(number), { head, stream });
  }
  return objects;
}

/** Letters shown by one operator. */
export interface ShownLetters {
  readonly text: string;
  /** Where the first of them begins, its baseline: points from the page's upper left corner. */
  readonly x: number;
  readonly y: number;
}

export interface ReadPdf {
  readonly pages: number;
  /** In points. */
  readonly widthPt: number;
  readonly heightPt: number;
  /** Everything shown as letters, in the order it was drawn. */
  readonly letters: readonly ShownLetters[];
  readonly fonts: readonly string[];
  /** What a screen reader is told of the page. */
  readonly alt: string;
}

export function readPdf(pdf: Buffer): ReadPdf {
  const objects = objectsOf(pdf);
  const heads = [...objects.values()].map(({ head }) => head);
  const page = heads.find((head) => /\/Type \/Page\b/.test(head)) ?? "";
  const [, width = "", height = ""] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
  const maps = new Map<string, Map<string, string>>();
  const resources = objects.get(Number(/\/Resources (\d+) 0 R/.exec(page)?.[1]))?.head ?? "";
  for (const [, name = "", number = ""] of resources.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const font = objects.get(Number(number))?.head ?? "";
    maps.set(name, unicodeMap(objects.get(Number(/\/ToUnicode (\d+) 0 R/.exec(font)?.[1]))?.stream ?? ""));
  }
  const content = objects.get(Number(/\/Contents (\d+) 0 R/.exec(page)?.[1]))?.stream ?? "";
  const letters = lettersOf(content, maps, Number(height));
  return {
    pages: heads.filter((head) => /\/Type \/Page\b/.test(head)).length,
    widthPt: Number(width),
    heightPt: Number(height),
    letters,
    fonts: heads.flatMap((head) => /\/BaseFont \/(?:[A-Z]+\+)?([\w-]+)/.exec(head)?.[1] ?? []),
    alt: utf16(heads.find((head) => head.includes("/S /Figure")) ?? ""),
  };
}

type Matrix = readonly [number, number, number, number, number, number];

const times = ([a, b, c, d, e, f]: Matrix, [p, q, r, s, t, u]: Matrix): Matrix => [
  a * p + b * r,
  a * q + b * s,
  c * p + d * r,
  c * q + d * s,
  e * p + f * r + t,
  e * q + f * s + u,
];

/** Follows the operators that place letters (ISO 32000-1, 8.4.4 and 9.4): q, Q, cm, Tm, Tf and TJ. */
function lettersOf(
  content: string,
  maps: ReadonlyMap<string, ReadonlyMap<string, string>>,
  heightPt: number,
): readonly ShownLetters[] {
  const letters: ShownLetters[] = [];
  const kept: Matrix[] = [];
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  let text: Matrix = now;
  let map: ReadonlyMap<string, string> | undefined;
  for (const line of content.split("\n")) {
    const [, numbers = "", matrix] = /^((?:[-\d.]+ ){6})(cm|Tm)$/.exec(line) ?? [];
    const six = numbers.trim().split(" ").map(Number) as unknown as Matrix;
    if (line === "q") kept.push(now);
    else if (line === "Q") now = kept.pop() ?? now;
    else if (matrix === "cm") now = times(six, now);
    else if (matrix === "Tm") text = six;
    const [, font] = /^\/(F\d+) [\d.]+ Tf$/.exec(line) ?? [];
    if (font !== undefined) map = maps.get(font);
    const [, shown] = /^\[(.*)\] TJ$/.exec(line) ?? [];
    if (shown === undefined) continue;
    const codes = [...shown.matchAll(/<([0-9a-f]+)>/gi)].flatMap(([, hex = ""]) => hex.match(/.{4}/g) ?? []);
    const [, , , , x, y] = times(text, now);
    letters.push({
      text: codes.map((code) => map?.get(code.toLowerCase()) ?? "?").join(""),
      x,
      y: heightPt - y,
    });
  }
  return letters;
}

/** The text after `/Alt`, which begins with its byte order mark; a backslash stands before what would end it. */
function utf16(head: string): string {
  const [, text = ""] = /\/Alt \(\xfe\xff((?:[^()\\]|\\.)*)\)/s.exec(head) ?? [];
  const bytes = Buffer.from(
    text.replace(/\\(.)/gs, (_, sign: string) => ({ n: "\n", r: "\r" })[sign] ?? sign),
    "latin1",
  );
  return bytes.swap16().toString("utf16le");
}

/** Glyph codes to characters, of `bfrange` with lists as pdfkit writes it. */
function unicodeMap(cmap: string): Map<string, string> {
  const map = new Map<string, string>();
  for (const [, from = "", list = ""] of cmap.matchAll(/<([0-9a-f]{4})> <[0-9a-f]{4}> \[([^\]]*)\]/gi))
    [...list.matchAll(/<([0-9a-f ]*)>/gi)].forEach(([, hex = ""], index) => {
      const units = hex.replaceAll(" ", "").match(/.{4}/g) ?? [];
      const code = (Number.parseInt(from, 16) + index).toString(16).padStart(4, "0");
      map.set(code, String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))));
    });
  return map;
}
