/** Whether a chart can be read: type large enough and upright, words on the sheet and clear of each other, whatever is drawn. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wordsWidthPx } from "../src/draw/chart/words.tsx";
import { THEMES } from "../src/draw/theme.ts";
import { resolveScene } from "../src/scene/index.ts";
import {
  all,
  chartOf,
  chartSvg,
  type Drawn,
  demoSituations,
  moved,
  type Point,
  parseSvg,
  propsOf,
  type Sheet,
} from "./draw-chart-read.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";
import { sceneArbitrary } from "./scene-arbitraries.ts";

const DEMO = demoSituations();

const SHEETS: readonly (Sheet & { readonly name: string })[] = [
  { name: "on the bench", widthPx: 1000, heightPx: 700 },
  { name: "on a telephone", widthPx: 390, heightPx: 420 },
  { name: "on a slide", widthPx: 1920, heightPx: 1080, typeScale: 1.6 },
  { name: "projected", widthPx: 1920, heightPx: 1080, typeScale: 2, theme: THEMES.dark },
];

interface TextBox {
  readonly words: string;
  readonly corners: readonly Point[];
  /** Stands in a rose, whose figures may be cut by the sheet's edge as its ring is. */
  readonly inRose: boolean;
  readonly inBox: string | null;
}

function textBoxes(picture: Drawn): TextBox[] {
  return all(picture, ({ tag }) => tag === "text").map((text) => {
    const { attributes, words, matrix, groups } = text;
    const sizePx = Number(attributes["font-size"]);
    const bold = attributes["font-weight"] === "700";
    const spacingPx = Number(attributes["letter-spacing"] ?? 0);
    const width = wordsWidthPx(words, { sizePx, bold, spacingPx });
    const anchor = attributes["text-anchor"] ?? "start";
    const left = Number(attributes.x) - { start: 0, middle: width / 2, end: width }[anchor as "start"];
    const base = Number(attributes.y);
    const corners = [
      { x: left, y: base - 0.75 * sizePx },
      { x: left + width, y: base - 0.75 * sizePx },
      { x: left + width, y: base },
      { x: left, y: base },
    ].map((corner) => moved(corner, matrix));
    return {
      words,
      corners,
      inRose: groups.some((group) => group["data-part"] === "rose"),
      inBox: groups.map((group) => group["data-info-box"]).find((ident) => ident !== undefined) ?? null,
    };
  });
}

/** Whether two convex shapes meet: no line along a side of either parts them. */
function meet(a: readonly Point[], b: readonly Point[]): boolean {
  for (const shape of [a, b]) {
    for (let index = 0; index < shape.length; index++) {
      const from = shape[index]!;
      const to = shape[(index + 1) % shape.length]!;
      const normal = { x: to.y - from.y, y: from.x - to.x };
      const along = (points: readonly Point[]) => points.map(({ x, y }) => x * normal.x + y * normal.y);
      if (Math.max(...along(a)) <= Math.min(...along(b)) || Math.max(...along(b)) <= Math.min(...along(a)))
        return false;
    }
  }
  return true;
}

describe.each(SHEETS)("every demo scene $name", (sheet) => {
  const pictures = DEMO.map(({ name, situation }) => ({ name, picture: chartOf(situation, sheet) }));

  test("no type is smaller than 12 px at type scale 1", () => {
    for (const { picture } of pictures)
      for (const { attributes } of all(picture, ({ tag }) => tag === "text"))
        expect(Number(attributes["font-size"])).toBeGreaterThanOrEqual(12 * (sheet.typeScale ?? 1) - 0.005);
  });

  test("no words are upside down", () => {
    for (const { picture } of pictures)
      for (const { words, matrix } of all(picture, ({ tag }) => tag === "text"))
        expect({ words, upright: matrix[0] >= -1e-9 }).toEqual({ words, upright: true });
  });

  test("no words run off the sheet", () => {
    for (const { name, picture } of pictures)
      for (const { words, corners, inRose } of textBoxes(picture)) {
        if (inRose) continue;
        const off = corners.filter(
          ({ x, y }) => x < 0 || y < 0 || x > (sheet.widthPx ?? 0) || y > (sheet.heightPx ?? 0),
        );
        expect({ name, words, off }).toEqual({ name, words, off: [] });
      }
  });

  test("no words lie on other words", () => {
    const clashes = pictures.flatMap(({ name, picture }) => {
      const boxes = textBoxes(picture).filter(({ inRose }) => !inRose);
      return boxes.flatMap((one, index) =>
        boxes
          .slice(index + 1)
          .filter((other) => meet(one.corners, other.corners))
          .map((other) => `${name}: ${one.words} / ${other.words}`),
      );
    });
    expect(clashes).toEqual([]);
  });

  test("information boxes lie on the sheet, apart from each other and from the aircraft", () => {
    for (const { name, picture } of pictures) {
      const boxes = all(picture, ({ attributes }) => attributes["data-info-box"] !== undefined).map(
        (group) => {
          const {
            x = 0,
            y = 0,
            width = 0,
            height = 0,
          } = all(group, ({ tag }) => tag === "rect")[0]?.attributes ?? {};
          const [left, top, right, bottom] = [
            Number(x),
            Number(y),
            Number(x) + Number(width),
            Number(y) + Number(height),
          ];
          return [
            { x: left, y: top },
            { x: right, y: top },
            { x: right, y: bottom },
            { x: left, y: bottom },
          ];
        },
      );
      const dart = all(picture, ({ attributes }) => attributes["data-part"] === "aircraft")[0];
      const at = dart && moved({ x: 0, y: 0 }, dart.matrix);
      boxes.forEach((box, index) => {
        for (const { x, y } of box) {
          expect(x).toBeGreaterThan(0);
          expect(y).toBeGreaterThan(0);
          expect(x).toBeLessThan(sheet.widthPx ?? 0);
          expect(y).toBeLessThan(sheet.heightPx ?? 0);
        }
        for (const other of boxes.slice(index + 1))
          expect({ name, apart: !meet(box, other) }).toEqual({ name, apart: true });
        if (at)
          expect({
            name,
            hidesAircraft: meet(box, [at, { x: at.x + 1, y: at.y }, { x: at.x, y: at.y + 1 }]),
          }).toEqual({ name, hidesAircraft: false });
      });
    }
  });
});

describe("any scene", () => {
  test("is drawn the same twice, well formed, with no number that is none", () => {
    fc.assert(
      fc.property(
        sceneArbitrary,
        fc.record({
          widthPx: fc.integer({ min: 120, max: 1600 }),
          heightPx: fc.integer({ min: 120, max: 1200 }),
          widthNm: fc.double({ min: 5, max: 600, noNaN: true }),
          typeScale: fc.constantFrom(1, 1.5, 2),
          fitted: fc.boolean(),
          lat: fc.double({ min: -85, max: 85, noNaN: true }),
        }),
        (scene, { widthPx, heightPx, widthNm, typeScale, fitted, lat }) => {
          const situation = resolveScene(scene);
          const centre = { latDeg: lat, lonDeg: scene.aircraft.position.lonDeg };
          const size = { widthPx, heightPx, typeScale };
          const sheet = fitted ? size : { ...size, view: { centre, widthNm } };
          const lit = {
            receiver: scene.receivers[0]?.name ?? "",
            parts: ["offset", "radial", "service-volume"] as const,
          };
          const svg = chartSvg(situation, { ...sheet, lit });
          // Compared outside `expect`, which would print two whole pictures.
          expect(chartSvg(situation, { ...sheet, lit }) === svg).toBe(true);
          const values = all(parseSvg(svg), () => true).flatMap(({ attributes }) =>
            Object.entries(attributes).filter(
              ([name, value]) => !/^(data-|aria|id$)/.test(name) && /NaN|Infinity|undefined|null/.test(value),
            ),
          );
          expect(values).toEqual([]);
        },
      ),
      { numRuns: 120 },
    );
  });

  test("is titled and described for whoever cannot see it", () => {
    const situation = situationOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70, headingDeg: 90, windKt: 18 });
    const picture = chartOf(situation);
    const [title, description] = picture.children;
    expect([title?.tag, title?.words]).toEqual(["title", "Chart: A test"]);
    expect(description?.tag).toBe("desc");
    expect(description?.words).toMatch(
      /^Aircraft bears 246 from TXJ, 18\.0 miles; heading 090; 3,500 feet\. Wind from 140 true, 18 knots\. NAV1 tuned to TXJ, course 070\. Stations: Tamsel VOR-DME TXJ 115\.60, /,
    );
    const ids = (picture.attributes["aria-labelledby"] ?? "").split(" ");
    expect(ids).toEqual([title?.attributes.id, description?.attributes.id]);
    expect(ids.every((id) => id.startsWith(propsOf(situation).idPrefix))).toBe(true);
  });

  test("two charts on one page share no id", () => {
    const situation = situationOf({ at: onRadial(TXJ, 246, 18) });
    const idsOf = (idPrefix: string) =>
      all(chartOf(situation, { idPrefix }), ({ attributes }) => attributes.id !== undefined).map(
        ({ attributes }) => attributes.id,
      );
    const ids = [...idsOf("one"), ...idsOf("two")];
    expect(ids.length).toBeGreaterThan(4);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
