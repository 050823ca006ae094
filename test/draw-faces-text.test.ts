import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Resvg } from "@resvg/resvg-js";
import fc from "fast-check";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checksum, FONTS, fontFile, glyphsByCharacter, makeFonts, readWoff } from "../scripts/fonts.mjs";
import { advanceWidthsSource } from "../scripts/text-widths.mjs";
import { lineWidthPx, TextLine } from "../src/draw/plain/text-line.tsx";
import {
  fontsHave,
  shortenText,
  type Typeface,
  textWidthPx,
  wrapText,
} from "../src/draw/plain/text-width.ts";

const FACES = ["words", "words-bold", "numbers", "numbers-bold"] as const;

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "needlework-"));
  makeFonts(folder);
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Width of the ink of a line of text as the rasteriser sets it, px. */
function inkWidthPx(text: string, typeface: Typeface): number {
  const line = renderToString(
    h(TextLine, { x: 100, y: 200, sizePx: 100, fill: "#000000", typeface, children: text }),
  );
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="9000" height="300">${line}</svg>`;
  const fontFiles = FONTS.map((font) => join(folder, `${font.name}.ttf`));
  const box = new Resvg(svg, { font: { loadSystemFonts: false, fontFiles } }).getBBox();
  return box?.width ?? Number.NaN;
}

describe("the TrueType fonts", () => {
  it("are written beside the WOFF2 ones, one of each", () => {
    expect(readdirSync(folder).sort()).toEqual(
      FONTS.flatMap(({ name }) => [`${name}.ttf`, `${name}.woff2`]).sort(),
    );
  });

  it("have the tables of the WOFF files, right checksums and right whole-file sum", () => {
    for (const font of FONTS) {
      const ttf = readFileSync(join(folder, `${font.name}.ttf`));
      const { tables } = readWoff(fontFile(font, "woff"));
      expect(ttf.readUInt16BE(4)).toBe(tables.size);
      expect(checksum(ttf)).toBe(0xb1b0afba);
      for (let i = 0; i < tables.size; i++) {
        const entry = 12 + 16 * i;
        const tag = ttf.toString("latin1", entry, entry + 4);
        const offset = ttf.readUInt32BE(entry + 8);
        const table = Buffer.from(ttf.subarray(offset, offset + ttf.readUInt32BE(entry + 12)));
        const source = Buffer.from(tables.get(tag) ?? []);
        // The whole-file sum inside `head` is the one thing that may differ.
        if (tag === "head") for (const each of [table, source]) each.writeUInt32BE(0, 8);
        expect(offset % 4).toBe(0);
        expect(table.equals(source)).toBe(true);
        expect(checksum(table)).toBe(ttf.readUInt32BE(entry + 4));
      }
    }
  });

  it("refuse what is no WOFF file", () => {
    expect(() => readWoff(fontFile(FONTS[0]!, "woff2"))).toThrow(/not a WOFF 1 file/);
  });

  it("have the signs that pictures write, and lack the arrows that are drawn as paths", () => {
    const glyphs = glyphsByCharacter(readWoff(fontFile(FONTS[0]!, "woff")));
    for (const sign of "°′″−·×÷½√₁".replace(/[√₁]/g, "")) expect(glyphs.has(sign)).toBe(true);
    for (const sign of "→▲▼") expect(glyphs.has(sign)).toBe(false);
  });
});

describe("the width of text", () => {
  it("comes from a table that is what the fonts say today", () => {
    expect(readFileSync("src/draw/plain/advance-widths.ts", "utf8")).toBe(advanceWidthsSource());
  });

  it("is what the rasteriser sets, less the free edges of the outer letters and kerning", () => {
    const lines = [
      "18.0 NM away; line of sight to 73 NM; inside the published volume",
      "covered: TO/FROM",
      "115.60",
      "3,500",
      "−4° 10°18.8′ S",
      "AVATAR Way To. Ty LT",
      "reference: alike everywhere",
    ];
    for (const typeface of FACES)
      for (const line of lines) {
        const said = lineWidthPx(line, 100, typeface);
        const ink = inkWidthPx(line, typeface);
        // Never wider than said; narrower by two side bearings of a letter, and by up to 3 % where pairs are kerned.
        expect(ink).toBeLessThanOrEqual(said);
        expect(ink).toBeGreaterThan(said * 0.97 - 66);
      }
  });

  it("of figures does not depend on which figures they are", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 999 }), fc.constantFrom(...FACES), (number, typeface) => {
        expect(textWidthPx(String(number), 16, typeface)).toBeCloseTo(textWidthPx("000", 16, typeface), 9);
      }),
    );
  });

  it("counts a sign that the fonts lack as wide, so that nothing overflows", () => {
    expect(textWidthPx("→", 10, "words")).toBe(10);
    expect(fontsHave("N 3 6 E − ·")).toBe(true);
    expect(fontsHave("→")).toBe(false);
  });
});

describe("wrapped text", () => {
  const words = fc.array(fc.string({ minLength: 1, maxLength: 14, unit: fc.constantFrom(..."abcWil09°−") }), {
    maxLength: 30,
  });

  it("keeps every word in order and every line inside the width", () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 60, max: 600 }), (list, widthPx) => {
        const lines = wrapText(list.join(" "), widthPx, 14, "words");
        for (const line of lines) expect(textWidthPx(line, 14, "words")).toBeLessThanOrEqual(widthPx + 1e-6);
        expect(lines.join("").replace(/ /g, "")).toBe(list.join(""));
      }),
    );
  });

  it("fills lines: no first word of a line would still have fitted on the line before", () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 250, max: 600 }), (list, widthPx) => {
        const lines = wrapText(list.join(" "), widthPx, 14, "words");
        lines.slice(1).forEach((line, index) => {
          const fuller = `${lines[index]} ${line.split(" ")[0]}`;
          expect(textWidthPx(fuller, 14, "words")).toBeGreaterThan(widthPx - 1e-6);
        });
      }),
    );
  });

  it("does not break at a no-break space, and breaks a word that is wider than a line", () => {
    expect(wrapText("so 22\u00a0NM", textWidthPx("22 NM", 14, "words") + 0.1, 14, "words")).toEqual([
      "so",
      "22\u00a0NM",
    ]);
    expect(wrapText("aaaaaa", textWidthPx("aa", 14, "words"), 14, "words")).toEqual(["aa", "aa", "aa"]);
    expect(wrapText("", 100, 14, "words")).toEqual([]);
  });

  it("is shortened with an ellipsis to what fits", () => {
    expect(shortenText("Which way?", 500, 14, "words")).toBe("Which way?");
    const short = shortenText("Which way to the course?", 90, 14, "words");
    expect(short).toMatch(/^Which.*…$/);
    expect(textWidthPx(short, 14, "words")).toBeLessThanOrEqual(90);
  });
});
