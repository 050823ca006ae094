/** The sign of each kind of station, told apart by its shapes; and what its information box says. */

import { describe, expect, test } from "vitest";
import { fitView } from "../src/draw/chart/index.ts";
import { STATION_KINDS, type Station, type StationKind } from "../src/radio/index.ts";
import type { Situation } from "../src/scene/index.ts";
import {
  all,
  chartOf,
  cornersOfPath,
  type Drawn,
  demoSituations,
  only,
  type Point,
} from "./draw-chart-read.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";

function signOf(kind: StationKind): Drawn {
  const station: Station = { ...TXJ, kind, dmeChannel: kind === "VOR" || kind === "VOT" ? null : "103X" };
  const situation = situationOf({ at: onRadial(TXJ, 246, 18), stations: [station] });
  const picture = chartOf(situation, { view: fitView(situation, 1000, 700) });
  return only(all(picture, ({ attributes }) => attributes["data-symbol"] !== undefined));
}

const pathsOf = (sign: Drawn): Drawn[] => all(sign, ({ tag }) => tag === "path");
const cornersIn = (sign: Drawn): number[] => pathsOf(sign).map((path) => cornersOfPath(path).length);
const isFilled = ({ attributes }: Drawn): boolean => (attributes.fill ?? "none") === "#0f6b78";

describe("the chart's signs", () => {
  test("VOR: a hexagon with a dot", () => {
    const sign = signOf("VOR");
    expect(cornersIn(sign)).toEqual([6]);
    expect(all(sign, ({ tag }) => tag === "circle").map(isFilled)).toEqual([true]);
  });

  test("VOR-DME: the hexagon in a square", () => {
    const sign = signOf("VOR-DME");
    expect(cornersIn(sign)).toEqual([4, 6]);
    const [square = [], hexagon = []] = pathsOf(sign).map(cornersOfPath);
    const reach = (corners: Point[]) =>
      Math.max(...corners.map(({ x }) => x)) - Math.min(...corners.map(({ x }) => x));
    expect(reach(square)).toBeGreaterThan(reach(hexagon));
  });

  test("VORTAC: the hexagon with three filled sides, 120 degrees apart, one at the bottom", () => {
    const sign = signOf("VORTAC");
    expect(cornersIn(sign)).toEqual([4, 4, 4, 6]);
    expect(pathsOf(sign).map(isFilled)).toEqual([true, true, true, false]);
  });

  test("TACAN: the same outline, open", () => {
    const sign = signOf("TACAN");
    expect(cornersIn(sign)).toEqual([12]);
    expect(pathsOf(sign).map(isFilled)).toEqual([false]);
  });

  test("DME: a square without a hexagon", () => {
    expect(cornersIn(signOf("DME"))).toEqual([4]);
  });

  test("VOT: a ring, no hexagon", () => {
    const sign = signOf("VOT");
    expect(cornersIn(sign).every((corners) => corners < 6)).toBe(true);
    expect(all(sign, ({ tag }) => tag === "circle").map(isFilled)).toEqual([false]);
  });

  test("no two kinds share a sign", () => {
    const drawn = STATION_KINDS.map((kind) => {
      const shapes = all(signOf(kind), ({ tag }) => tag === "path" || tag === "circle");
      return shapes.map((shape) => `${shape.attributes.d ?? shape.attributes.r} ${isFilled(shape)}`).join();
    });
    expect(new Set(drawn).size).toBe(STATION_KINDS.length);
  });

  test("a rose only where radials mean a direction", () => {
    for (const kind of STATION_KINDS) {
      const situation = situationOf({ at: onRadial(TXJ, 246, 18), stations: [{ ...TXJ, kind }] });
      const roses = all(chartOf(situation), ({ attributes }) => attributes["data-part"] === "rose");
      expect(roses).toHaveLength(kind === "VOR" || kind === "VOR-DME" || kind === "VORTAC" ? 1 : 0);
    }
  });
});

describe("the information box", () => {
  const picture = chartOf(situationOf({ at: onRadial(TXJ, 246, 18) }));
  const box = only(all(picture, ({ attributes }) => attributes["data-info-box"] === "TXJ"));

  test("gives name, kind, frequency, channel and ident", () => {
    expect(all(box, ({ tag }) => tag === "text").map(({ words }) => words)).toEqual([
      "Tamsel",
      "VOR-DME",
      "115.60",
      "ch 103X",
      "TXJ",
    ]);
  });

  test("draws the ident's Morse as strokes: dash three dots long, gaps of one and three", () => {
    const morse = only(all(box, ({ attributes }) => attributes["data-morse"] === "TXJ"));
    const points = cornersOfPath(morse);
    const strokes = points.flatMap((point, index) =>
      index % 2 === 1 ? [[points[index - 1]!, point] as const] : [],
    );
    const dot = 2.5;
    const lengths = strokes.map(([a, b]) => Math.round((b.x - a.x) / dot));
    // T -, X -..-, J .---  (ITU-R M.1677-1)
    expect(lengths).toEqual([3, 3, 1, 1, 3, 1, 3, 3, 3]);
    const gaps = strokes.slice(1).map(([a], index) => Math.round((a.x - strokes[index]![1].x) / dot));
    expect(gaps).toEqual([3, 1, 1, 1, 3, 1, 1, 1]);
  });

  test("carries its receivers' numbers, where there is more than one receiver", () => {
    const tags = (element: Drawn) =>
      all(element, ({ tag }) => tag === "circle").length === 0 ? "" : element.words.slice(-1);
    expect(tags(box)).toBe("");
    const two = demoSituations().find(({ name }) => name.startsWith("22"))?.situation;
    const boxes = all(
      chartOf(two as Situation),
      ({ attributes }) => attributes["data-info-box"] !== undefined,
    );
    const numbers = Object.fromEntries(boxes.map((each) => [each.attributes["data-info-box"], tags(each)]));
    expect(numbers).toMatchObject({ HJL: "1", TXJ: "2" });
  });
});
