import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { THEMES } from "../theme.ts";
import { IdentKeyingPicture, keyedCode } from "./ident-keying.tsx";

/** TXJ lasts 33 dots; with 3 px for the light bar a dot is 5 px wide. */
const draw = (sentUnits: number, given: { moving?: boolean; lettered?: boolean; widthPx?: number } = {}) =>
  renderToString(
    <IdentKeyingPicture
      code={keyedCode("TXJ")}
      sentUnits={sentUnits}
      moving={given.moving ?? true}
      lettered={given.lettered ?? true}
      widthPx={given.widthPx ?? 168}
      theme={THEMES.light}
      sentence="Identify NAV1: T, X, J."
    />,
  );

const rects = (svg: string, what: RegExp) =>
  [...svg.matchAll(/<rect([^>]*?)\/?>/g)]
    .map(([, attributes = ""]) => attributes)
    .filter((attributes) => what.test(attributes))
    .map((attributes) => {
      const number = (name: string) => Number(new RegExp(` ${name}="([-\\d.]+)"`).exec(attributes)?.[1]);
      return { x: number("x"), widthPx: number("width") };
    });
const FILLED = /fill="#0f6b78"/;
const OUTLINE = /stroke="#0f6b78"/;
const LIGHT = /data-part="light"/;

describe("the keying of TXJ", () => {
  it("has its nine bars where Morse puts them, by hand from ITU-R M.1677-1", () => {
    const bars = rects(draw(-1), OUTLINE);
    // The outline lies half a pixel inside the bar.
    expect(bars.map(({ x }) => (x - 2) / 5)).toEqual([0, 6, 10, 12, 14, 20, 22, 26, 30]);
    expect(bars.map(({ widthPx }) => (widthPx + 1) / 5)).toEqual([3, 3, 1, 1, 3, 1, 3, 3, 3]);
    expect(rects(draw(-1), FILLED)).toEqual([]);
  });

  it("is filled as far as it is sent, with the light at the key", () => {
    const svg = draw(7.5);
    expect(rects(svg, FILLED).map(({ widthPx }) => widthPx / 5)).toEqual([3, 1.5]);
    expect(rects(svg, LIGHT)[0]!.x).toBeCloseTo(7.5 * 5, 6);
    expect(rects(draw(40), FILLED)).toHaveLength(9);
    expect(rects(draw(40), LIGHT)).toEqual([]);
  });

  it("stands whole and without a light where motion is not wished", () => {
    expect(rects(draw(7.5, { moving: false }), FILLED)).toHaveLength(9);
    expect(rects(draw(7.5, { moving: false }), LIGHT)).toEqual([]);
  });

  it("marks the letter being sent, and shows none where they are withheld", () => {
    expect(draw(7.5)).toMatch(/data-letter="now"><text[^>]*font-weight="700"[^>]*>X</);
    expect(draw(40)).not.toMatch(/data-letter/);
    expect(draw(7.5, { lettered: false })).not.toMatch(/<text/);
  });

  it("keeps inside its width, on a phone too", () => {
    for (const widthPx of [100, 147, 400]) {
      const bars = rects(draw(-1, { widthPx }), OUTLINE);
      expect(bars[0]!.x).toBeGreaterThan(0);
      expect(bars.at(-1)!.x + bars.at(-1)!.widthPx).toBeLessThan(widthPx);
    }
  });
});
