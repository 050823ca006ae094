/** The words of a typeset PDF, page by page, by way of each font's own map to Unicode (ISO 32000-1, 9.10.3). */

import { inflateSync } from "node:zlib";

interface PdfObject {
  readonly head: string;
  readonly stream: string;
}

function objectsOf(pdf: Buffer): ReadonlyMap<string, PdfObject> {
  const text = pdf.toString("latin1");
  const objects = new Map<string, PdfObject>();
  for (const [, number = "", body = ""] of text.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const at = body.search(/stream\r?\n/);
    const head = at < 0 ? body : body.slice(0, at);
    const start = body.indexOf("\n", at) + 1;
    const length = Number(/\/Length (\d+)/.exec(head)?.[1] ?? 0);
    const raw = Buffer.from(at < 0 ? "" : body.slice(start, start + length), "latin1");
    const stream = head.includes("FlateDecode") ? inflateSync(raw) : raw;
    objects.set(number, { head, stream: stream.toString("latin1") });
  }
  return objects;
}

/** Each page's words, every run of letters after the one before it, with a blank between. */
export function pdfPages(pdf: Buffer): readonly string[] {
  const objects = objectsOf(pdf);
  const pages = [...objects.values()].filter(({ head }) => /\/Type \/Page\n/.test(head));
  return pages.map(({ head }) => {
    const resources = objects.get(/\/Resources (\d+) 0 R/.exec(head)?.[1] ?? "")?.head ?? head;
    const fonts = new Map(
      [...resources.matchAll(/\/(f\d+) (\d+) 0 R/g)].map(([, name = "", number = ""]) => {
        const unicode = /\/ToUnicode (\d+) 0 R/.exec(objects.get(number)?.head ?? "")?.[1] ?? "";
        return [name, unicodeMap(objects.get(unicode)?.stream ?? "")];
      }),
    );
    const content = objects.get(/\/Contents (\d+) 0 R/.exec(head)?.[1] ?? "")?.stream ?? "";
    return wordsOf(content, fonts);
  });
}

/** Follows the operators that choose a font and show letters: Tf and TJ. */
function wordsOf(content: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let font: ReadonlyMap<number, string> | undefined;
  let shown: readonly number[] = [];
  const words: string[] = [];
  for (let at = 0; at < content.length; at += 1) {
    if (content[at] === "(") {
      const literal = literalAt(content, at);
      shown = [...shown, ...pairsOf(literal.text)];
      at = literal.end;
    } else if (content.startsWith("TJ", at)) {
      words.push(shown.map((glyph) => font?.get(glyph) ?? "�").join(""));
      shown = [];
    } else {
      const name = /^\/(f\d+) [\d.]+ Tf/.exec(content.slice(at, at + 24))?.[1];
      if (name !== undefined) font = fonts.get(name);
    }
  }
  return words.join(" ").replace(/\s+/g, " ");
}

const ESCAPES: Readonly<Record<string, string>> = { n: "\n", r: "\r", t: "\t", b: "\b", f: "\f" };

/** A literal string from its opening parenthesis on: those inside it come in pairs, or escaped (ISO 32000-1, 7.3.4.2). */
function literalAt(content: string, start: number): { readonly text: string; readonly end: number } {
  let text = "";
  let depth = 0;
  for (let at = start; at < content.length; at += 1) {
    const sign = content[at] ?? "";
    if (sign === "\\") {
      const octal = /^[0-7]{1,3}/.exec(content.slice(at + 1, at + 4))?.[0];
      const next = content[at + 1] ?? "";
      text += octal === undefined ? (ESCAPES[next] ?? next) : String.fromCharCode(Number.parseInt(octal, 8));
      at += octal?.length ?? 1;
      continue;
    }
    if (sign === ")") depth -= 1;
    if (depth === 0 && at > start) return { text, end: at };
    if (depth > 0) text += sign;
    if (sign === "(") depth += 1;
  }
  throw new Error("a string that does not end");
}

const pairsOf = (text: string): readonly number[] =>
  Array.from(
    { length: text.length / 2 },
    (_, at) => text.charCodeAt(2 * at) * 256 + text.charCodeAt(2 * at + 1),
  );

function unicodeMap(cmap: string): ReadonlyMap<number, string> {
  const map = new Map<number, string>();
  for (const [, glyph = "", hex = ""] of cmap.matchAll(/<([0-9a-f]{4})> <([0-9a-f]+)>\n/gi)) {
    const units = hex.match(/.{4}/g) ?? [];
    map.set(
      Number.parseInt(glyph, 16),
      String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))),
    );
  }
  return map;
}
