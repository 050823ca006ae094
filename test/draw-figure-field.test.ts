/** A needle field and a trail on a figure, read back out of its SVG: pixels against the engine, places against the projection. */

import { decode } from "fast-png";
import { describe, expect, it } from "vitest";
import {
  type ChartField,
  chartField,
  chartProjection,
  choiceFor,
  EDGE_INK,
  type FieldKind,
  type FigureProps,
  fieldFrom,
  fieldText,
  figureSvg,
  inksFor,
  newChoice,
  RECEPTION_INKS,
  THEMES,
  TILE_CELLS,
} from "../src/draw/index.ts";
import { fieldReception, receptionCode, shadeOf } from "../src/panel/index.ts";
import { resolveScene, type Scene } from "../src/scene/index.ts";
import { demoScene } from "./browser/demo-in-node.ts";

const SCENE: Scene = { ...demoScene("14-what-the-mountain-hides"), covers: [] };
const VIEW = { centre: SCENE.aircraft.position, widthNm: 70 };

const fieldOf = (scene: Scene, kind: FieldKind): ChartField => {
  const choice = choiceFor(scene, newChoice(kind, scene.receivers[0]!.name));
  const field = choice === null ? null : chartField(scene, choice);
  if (field === null) throw new Error("the scene can show the field");
  return field;
};
const figureOf = (more: Partial<FigureProps> = {}): string =>
  figureSvg({
    situation: resolveScene(SCENE),
    reasons: [],
    views: ["chart"],
    widthPx: 1600,
    heightPx: 1200,
    theme: THEMES.light,
    idPrefix: "f",
    chartView: VIEW,
    ...more,
  });
/** The chart's size as its own SVG element gives it. */
const chartSize = (svg: string): readonly [number, number] => {
  const [, width, height] =
    /data-view="chart".*?<svg[^>]*? width="([\d.]+)" height="([\d.]+)"/s.exec(svg) ?? [];
  return [Number(width), Number(height)];
};

describe("a needle field on a figure", () => {
  it.each<[FieldKind, "light" | "dark"]>([
    ["needle", "light"],
    ["to-from", "dark"],
    ["reception", "light"],
  ])("%s (%s) wears at each pixel the ink of what is read there", (kind, name) => {
    const theme = THEMES[name];
    const svg = figureOf({ field: fieldOf(SCENE, kind), theme });
    const image =
      /<image data-part="field" href="data:image\/png;base64,([^"]+)" width="([\d.]+)" height="([\d.]+)"[^>]*style="([^"]+)"/.exec(
        svg,
      );
    const [, base64 = "", width, height, style] = image ?? [];
    expect(style).toBe(`mix-blend-mode:${name === "light" ? "multiply" : "screen"}`);
    const [chartWidth, chartHeight] = chartSize(svg);
    const png = decode(Buffer.from(base64, "base64"));
    expect([png.width, png.height]).toEqual([Math.ceil(chartWidth), Math.ceil(chartHeight)]);
    expect([png.width, png.height]).toEqual([Number(width), Number(height)]);
    const { toWorld } = chartProjection(VIEW, chartWidth, chartHeight);
    const inks = inksFor(kind, theme);
    const colourOf = (ink: number, x: number, y: number): number[] => {
      const from = (ink * TILE_CELLS + (y & 7) * 8 + (x & 7)) * 4;
      return [...inks.subarray(from, from + 3)];
    };
    let edges = 0;
    const seen = new Set<number>();
    for (let index = 0; index < 400; index++) {
      const x = Math.floor(((index * 0.618033988749895) % 1) * png.width);
      const y = Math.floor(((index * 0.754877666246693) % 1) * png.height);
      const position = toWorld(x + 0.5, y + 0.5);
      const [reading] = resolveScene({ ...SCENE, aircraft: { ...SCENE.aircraft, position } }).receivers;
      const reception = RECEPTION_INKS + receptionCode(fieldReception(reading!));
      const ink = kind === "reception" || reading!.radial === null ? reception : shadeOf(reading!);
      seen.add(ink);
      const from = (y * png.width + x) * 3;
      const colour = [...png.data.subarray(from, from + 3)];
      if (String(colour) === String(colourOf(ink, x, y))) continue;
      expect(colour).toEqual(colourOf(EDGE_INK, x, y));
      edges++;
    }
    expect(edges).toBeLessThan(16);
    expect(seen.size).toBeGreaterThan(1);
  });

  it("says what it is under the views and in the description, and takes the place of the chart's own hatch", () => {
    const open = { ...demoScene("01-which-way-to-the-course"), covers: [] };
    const field = fieldOf(open, "needle");
    const look = { situation: resolveScene(open), chartView: undefined, widthPx: 640, heightPx: 480 };
    const svg = figureOf({ ...look, field });
    expect(/<desc id="f-desc">(.*?)<\/desc>/s.exec(svg)?.[1]).toContain(field.words.slice(0, 20));
    expect(/data-wedge|<path[^>]*data-part="to-side"/.test(svg)).toBe(false);
    const plain = figureOf(look);
    expect(/data-wedge/.test(plain)).toBe(true);
    expect(plain.includes('data-part="field"')).toBe(false);
  });

  it("is none where a cover is in its way, and neither drawn nor told where the chart is covered", () => {
    const choice = newChoice("needle", "NAV1");
    expect(chartField({ ...SCENE, covers: ["NAV1.needle"] }, choice)).toBeNull();
    expect(chartField({ ...SCENE, covers: ["aircraft"] }, choice)).not.toBeNull();
    const covered = figureOf({ field: fieldOf(SCENE, "needle"), covers: ["chart"] });
    expect(covered).not.toMatch(/data-part="field"|TO hatched/);
  });

  it("is kept as text, and a spoilt text is no field", () => {
    for (const choice of [null, newChoice("to-from", "NAV2"), { ...newChoice("fix", "NAV1"), other: "NAV2" }])
      expect(fieldFrom(fieldText(choice))).toEqual(choice);
    for (const text of [
      "",
      "{",
      "7",
      "[]",
      '{"kind":"rainbow","receiver":"NAV1","other":""}',
      '{"kind":"needle"}',
    ])
      expect(fieldFrom(text)).toBeNull();
    const odd = fieldFrom('{"kind":"fix","receiver":"A","other":"B","allowedErrorDeg":1e9}');
    expect(odd?.allowedErrorDeg).toBe(4);
  });
});

describe("a trail on a figure", () => {
  const { latDeg, lonDeg } = SCENE.aircraft.position;
  const trail = [0, 60, 120, 180].map((timeS) => ({
    timeS,
    position: { latDeg, lonDeg: lonDeg - 0.2 + timeS / 900 },
  }));

  it("lies where the aircraft has flown, with its minutes, on the chart's own piece of the earth", () => {
    const svg = figureOf({ trail });
    const [width, height] = chartSize(svg);
    const { toPaper } = chartProjection(VIEW, width, height);
    const beads = [...svg.matchAll(/<circle data-minute="(\d+)" cx="([-\d.]+)" cy="([-\d.]+)"/g)];
    expect(beads.map(([, minute]) => Number(minute))).toEqual([1, 2, 3]);
    beads.forEach(([, , cx, cy], index) => {
      const { x, y } = toPaper(trail[index + 1]!.position);
      expect(Math.hypot(Number(cx) - x, Number(cy) - y)).toBeLessThan(0.02);
    });
    // Over the lines, under the aircraft, as on the bench.
    const order = ['data-part="course"', 'data-part="trail"', 'data-part="aircraft"'].map((part) =>
      svg.indexOf(part),
    );
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order[0]).toBeGreaterThan(0);
  });

  it("is left out where it would give a cover away", () => {
    for (const cover of ["chart", "aircraft", "heading"])
      expect(figureOf({ trail, covers: [cover] })).not.toContain('data-part="trail"');
    expect(figureOf({ trail, covers: ["NAV1.needle"] })).toContain('data-part="trail"');
  });
});
