import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dotMs, isMorseText, morseCode, morseStrokes, morseUnits, printedMorse } from "./morse.ts";

const LETTERS = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"];
const word = fc.array(fc.constantFrom(...LETTERS), { minLength: 1, maxLength: 6 }).map((all) => all.join(""));

describe("code", () => {
  test("differs for all 36 letters and figures", () => {
    expect(new Set(LETTERS.map(morseCode)).size).toBe(36);
  });

  test("has five signs for each figure", () => {
    for (const figure of "0123456789") expect(morseCode(figure)).toHaveLength(5);
  });

  test("does not mind the case", () => {
    expect(morseCode("txj")).toBe(morseCode("TXJ"));
  });

  test("is printed with raised dots and long dashes", () => {
    expect(printedMorse("TXJ")).toBe("− −··− ·−−−");
  });

  test.each(["", "É", "A B", "A-B", "constructor"])("of %j is judged by its characters", (text) => {
    if (/^[a-z]+$/.test(text)) return expect(isMorseText(text)).toBe(true);
    expect(isMorseText(text)).toBe(false);
    expect(() => morseCode(text)).toThrow(RangeError);
  });
});

describe("timing", () => {
  test("spells the code back out of its strokes and gaps", () => {
    fc.assert(
      fc.property(word, (text) => {
        let spelt = "";
        let end = 0;
        for (const { startUnits, units } of morseStrokes(text)) {
          // M.1677-1: gaps of 1 inside a letter, 3 between letters; nothing else occurs in a word.
          const gap = startUnits - end;
          expect(end === 0 ? gap === 0 : gap === 1 || gap === 3).toBe(true);
          expect(units === 1 || units === 3).toBe(true);
          spelt += (gap === 3 ? " " : "") + (units === 3 ? "-" : ".");
          end = startUnits + units;
        }
        expect(spelt).toBe(morseCode(text));
        expect(morseUnits(text)).toBe(end);
      }),
    );
  });

  test.each([0, -7, Number.NaN, Number.POSITIVE_INFINITY])("refuses a speed of %d", (wpm) => {
    expect(() => dotMs(wpm)).toThrow(RangeError);
  });
});
