/** Pictures on their way out: their sizes, and that a page of a PDF knows everything that our pictures are drawn with. */

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { figureSvg, THEMES } from "../src/draw/index.ts";
import { reasonsFor } from "../src/reason/index.ts";
import { resolveScene, VIEWS } from "../src/scene/index.ts";
import { readText } from "../src/web/files/read-given.ts";
import { FIRST_STYLE, numbers, styleOf } from "../src/web/out/pdf/svg-style.ts";
import { pictureSize, sizeText } from "../src/web/out/picture-size.ts";

const demoText = (path: string): string => readFileSync(new URL(`../demo/${path}`, import.meta.url), "utf8");
const AT_HAND = new Map(
  ["ostrelle.stations.yaml", "ostrelle.land.yaml"].map((path) => [path, demoText(path)]),
);

describe("sizes", () => {
  const screen = { innerWidth: 1440, innerHeight: 900, devicePixelRatio: 2 };
  it("are those of slides, or the screen's own", () => {
    expect(sizeText(pictureSize("wide", screen))).toBe("1920 × 1080");
    expect(sizeText(pictureSize("slide", screen))).toBe("1600 × 1200");
    expect(pictureSize("screen", screen)).toEqual({ widthPx: 1440, heightPx: 900, pixelRatio: 2 });
    expect(sizeText(pictureSize("screen", screen))).toBe("2880 × 1800");
  });
  it("stay within what can be drawn", () => {
    expect(
      sizeText(pictureSize("screen", { innerWidth: 7680, innerHeight: 4320, devicePixelRatio: 3 })),
    ).toBe("8000 × 4500");
    expect(pictureSize("screen", { innerWidth: 90, innerHeight: 640, devicePixelRatio: 0 })).toEqual({
      widthPx: 200,
      heightPx: 640,
      pixelRatio: 0.5,
    });
  });
});

/** What `svg-draw.ts` and `svg-text.ts` draw, or know to be never drawn. */
const KNOWN = new Set([
  ..."svg g text tspan rect circle ellipse line path polygon polyline".split(" "),
  ..."title desc defs style clipPath pattern".split(" "),
]);

describe("a page of a PDF", () => {
  const element = (tagName: string, attributes: readonly { name: string; value: string }[]): Element =>
    ({ tagName, attributes }) as unknown as Element;

  it("knows every element and attribute of every figure of the demo", () => {
    let count = 0;
    for (const file of readdirSync(new URL("../demo/scenes/", import.meta.url))) {
      const read = readText(
        { path: file, text: demoText(`scenes/${file}`), files: new Map() },
        { atHand: AT_HAND, today: "2026-07-01" },
      );
      if (!read.ok) throw new Error(read.lines.join("\n"));
      for (const covers of [read.scene.covers, []]) {
        const situation = resolveScene({ ...read.scene, covers });
        const svg = figureSvg({
          situation,
          reasons: reasonsFor(situation),
          views: VIEWS,
          widthPx: 1600,
          heightPx: 1200,
          theme: THEMES.dark,
          idPrefix: "f",
        });
        for (const [, tagName = "", inside = ""] of svg.matchAll(
          /<([a-zA-Z]+)((?:\s+[\w:-]+="[^"]*")*)\s*\/?>/g,
        )) {
          const attributes = [...inside.matchAll(/([\w:-]+)="([^"]*)"/g)].map(
            ([, name = "", value = ""]) => ({
              name,
              value,
            }),
          );
          expect(KNOWN.has(tagName), tagName).toBe(true);
          expect(() => styleOf(element(tagName, attributes), FIRST_STYLE)).not.toThrow();
          count++;
        }
        for (const [, tile = ""] of svg.matchAll(/<pattern[^>]*>(.*?)<\/pattern>/gs))
          expect(tile).toMatch(
            /^(<path d="M[\d.]+ 0V[\d.]+"[^>]*><\/path>|<rect width="[\d.]+" height="[\d.]+"[^>]*><\/rect>)+$/,
          );
        for (const [, kind] of svg.matchAll(/transform="(\w+)\(/g))
          expect(["translate", "rotate", "scale"]).toContain(kind);
      }
    }
    expect(count).toBeGreaterThan(20_000);
  });

  it("refuses what it would not show", () => {
    const styled = (name: string, value: string) => () =>
      styleOf(element("path", [{ name, value }]), FIRST_STYLE);
    expect(styled("filter", "url(#blur)")).toThrow(
      'a page has no counterpart of filter="url(#blur)" on <path>',
    );
    expect(styled("stroke-linejoin", "arcs")).toThrow('"arcs" is none of miter, round, bevel');
    expect(styled("stroke-width", "2em")).toThrow('"2em" is no number of a picture');
    expect(() => numbers("1,2 NaN")).toThrow(RangeError);
  });

  it("inherits what is not said anew", () => {
    const group = styleOf(
      element("g", [
        { name: "stroke", value: "#fff" },
        { name: "stroke-dasharray", value: "2 3" },
      ]),
      FIRST_STYLE,
    );
    const path = styleOf(element("path", [{ name: "stroke-dasharray", value: "none" }]), group);
    expect(path).toEqual({ ...FIRST_STYLE, stroke: "#fff", dashes: [] });
  });
});
