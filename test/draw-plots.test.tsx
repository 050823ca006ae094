/** The plots of a flight, read back out of their SVG: values and times from places, flags from plates, and nothing under a cover. */

import { describe, expect, it } from "vitest";
import {
  chartProjection,
  type HistoryPoint,
  historySentence,
  historyTimeAt,
  NeedleHistory,
  THEMES,
  Trail,
  type TrailPoint,
  timeWords,
} from "../src/draw/index.ts";
import { flyOn, levelFlight } from "../src/flight/index.ts";
import type { Face } from "../src/panel/index.ts";
import { resolver, type Scene } from "../src/scene/index.ts";
import { badNumbers, idsOf, svgOf, wordsOf } from "./draw-faces-read.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";

/** Inbound to Tamsel a mile beside the course, over it, and out: TO, through the abeam line, FROM. */
const { scene } = situationOf({
  at: onRadial(TXJ, 255, 12),
  courseDeg: 70,
  headingDeg: 72,
  face: "cdi",
  windKt: 0,
});

/** The flight second by second. */
function flown(from: Scene, seconds: number) {
  const resolve = resolver(from.stations, from.land);
  let flight = levelFlight(from.aircraft);
  return Array.from({ length: seconds + 1 }, (_, timeS) => {
    if (timeS > 0) flight = flyOn(flight, from, 1);
    const reading = resolve({ ...from, aircraft: flight.aircraft }).receivers[0]!;
    const { needleDots, needleSide, flag, dme } = reading;
    return {
      position: flight.aircraft.position,
      timeS,
      needleDots: needleDots === null ? null : needleSide === "left" ? -needleDots : needleDots,
      flag,
      dmeNm: dme?.distanceNm ?? null,
    };
  });
}
const FLOWN = flown(scene, 900);

const historyOf = (covers: readonly string[], points: readonly HistoryPoint[] = FLOWN, face: Face = "cdi") =>
  svgOf(
    <NeedleHistory
      receiver="NAV1"
      face={face}
      points={points}
      nowS={450}
      covers={covers}
      widthPx={600}
      heightPx={160}
      theme={THEMES.light}
      idPrefix="h"
    />,
  );

const numbers = (text: string | undefined): number[] => (text?.match(/-?[\d.]+/g) ?? []).map(Number);
const pathOf = (svg: string, line: string): [number, number][] => {
  const d = numbers(new RegExp(`data-line="${line}" d="([^"]*)"`).exec(svg)?.[1]);
  return Array.from({ length: d.length / 2 }, (_, index) => [d[2 * index]!, d[2 * index + 1]!]);
};
/** Where the time axis has its first and last mark, px, and what they say. */
const axisOf = (svg: string) => {
  const axis = /<g data-axis="time">(.*?)<\/g><\/g>/s.exec(`${svg}</g>`)?.[1] ?? "";
  const at = [...axis.matchAll(/<line x1="([\d.]+)" x2="\1"/g)].map(([, x]) => Number(x));
  const said = [...axis.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text!);
  return { at, said };
};

describe("the history plot", () => {
  const svg = historyOf([]);

  it("draws needle and DME where the readings are, at their times", () => {
    const { at, said } = axisOf(svg);
    expect([said[0], said.at(-1)]).toEqual(["0 s", "20 min"]);
    const timeOf = (x: number) => ((x - at[0]!) / (at.at(-1)! - at[0]!)) * 1200;
    const band = /<g data-band="needle">(.*?)<\/g>/s.exec(svg)![1]!;
    const [fiveRight, , fiveLeft] = [...band.matchAll(/<line[^>]*y1="([\d.]+)"/g)]
      .map(([, y]) => Number(y))
      .reverse();
    const dotsOf = (y: number) => 5 - ((y - fiveRight!) / (fiveLeft! - fiveRight!)) * 10;
    const needle = pathOf(svg, "needle");
    expect(needle.length).toBeGreaterThan(20);
    for (const [x, y] of needle) {
      const then = FLOWN[Math.round(timeOf(x))]!;
      expect(timeOf(x)).toBeCloseTo(then.timeS, 1);
      expect(dotsOf(y)).toBeCloseTo(then.needleDots!, 1);
    }
    const top = Number(/data-top-nm="([\d.]+)"/.exec(svg)![1]);
    const dmeBand = /<g data-band="dme"[^>]*>(.*?)<\/g>/s.exec(svg)![1]!;
    const [high, low] = [...dmeBand.matchAll(/<line[^>]*y1="([\d.]+)"/g)].map(([, y]) => Number(y));
    for (const [x, y] of pathOf(svg, "dme")) {
      const nm = ((low! - y) / (low! - high!)) * top;
      expect(nm).toBeCloseTo(FLOWN[Math.round(timeOf(x))]!.dmeNm!, 1);
    }
  });

  it("knows the time of a place that a hand points at", () => {
    const { at } = axisOf(svg);
    const size = { widthPx: 600, heightPx: 160, scale: 1, startS: 0, endS: 900 };
    expect(historyTimeAt(size, at[0]!)).toBeCloseTo(0, 6);
    expect(historyTimeAt(size, at.at(-1)!)).toBeCloseTo(1200, 2);
  });

  it("marks the moment that is shown", () => {
    const { at } = axisOf(svg);
    const x = Number(/data-part="now" x1="([\d.]+)"/.exec(svg)![1]);
    expect(((x - at[0]!) / (at.at(-1)! - at[0]!)) * 1200).toBeCloseTo(450, 1);
  });

  it("shows each flag as long as it stood", () => {
    const drawn = [...svg.matchAll(/data-flag="(\w+)" data-from-s="(\d+)" data-to-s="(\d+)"/g)];
    const changes = FLOWN.filter(({ flag }, index) => flag !== FLOWN[index - 1]?.flag);
    expect(drawn.map(([, flag, from]) => [flag, Number(from)])).toEqual(
      changes.map(({ flag, timeS }) => [flag, timeS]),
    );
    expect(changes.map(({ flag }) => flag)).toEqual(expect.arrayContaining(["TO", "OFF", "FROM"]));
    expect(Number(drawn.at(-1)![3])).toBe(900);
  });

  it("breaks the lines where nothing is received, and says so when there never was a DME", () => {
    const lost = FLOWN.map((point) =>
      point.timeS > 100 && point.timeS < 200
        ? { ...point, needleDots: null, dmeNm: null, flag: "OFF" as const }
        : { ...point, dmeNm: null },
    );
    const broken = historyOf([], lost);
    const d = /data-line="needle" d="([^"]*)"/.exec(broken)![1]!;
    const unbroken = /data-line="needle" d="([^"]*)"/.exec(svg)![1]!;
    expect(d.match(/M/g)).toHaveLength(unbroken.match(/M/g)!.length + 1);
    expect(wordsOf(broken)).toContain("no DME");
    expect(broken).not.toContain('data-line="dme"');
  });

  it("tells the flight in words", () => {
    const off = FLOWN.find(({ flag }) => flag === "OFF")!.timeS;
    const from = FLOWN.find(({ flag }) => flag === "FROM")!.timeS;
    expect(wordsOf(svg)).toContain(`Flag TO, OFF at ${timeWords(off)}, FROM at ${timeWords(from)}.`);
    expect(historySentence("NAV1", [], { needle: true, flag: true, dme: true })).toBe(
      "NAV1: nothing flown yet.",
    );
  });

  it.each([
    ["NAV1.needle", [/dots?\b/, /\b(left|right|centred)\b/i, /data-line="needle"/]],
    ["NAV1.flag", [/\bTO\b(?!\/)/, /(?<!\/)\bFROM\b/, /data-flag/]],
    ["NAV1.dme", [/DME \d/, /\d NM/, /data-line="dme"/]],
    ["NAV1", [/data-line/, /data-flag/, /dots/, /DME \d/]],
    ["panel", [/data-line/, /data-flag/, /dots/, /DME \d/]],
  ])("draws and says nothing of what %s covers", (cover, answers) => {
    const covered = historyOf([cover]);
    for (const answer of answers) {
      expect(covered).not.toMatch(answer);
      expect(svg).toMatch(answer);
    }
    expect(covered).toContain("covered:");
  });

  it("leaves the needle out for a pointer, which has none", () => {
    const pointer = historyOf([], FLOWN, "rmi");
    expect(pointer).not.toMatch(/data-line="needle"|data-flag/);
    expect(pointer).toMatch(/data-line="dme"/);
  });

  it.each([0, 1, 2, 61])("is a sound picture of %i moments", (count) => {
    for (const text of [historyOf([], FLOWN.slice(0, count)), historyOf(["NAV1"], FLOWN.slice(0, count))]) {
      expect(badNumbers(text)).toEqual([]);
      expect(new Set(idsOf(text)).size).toBe(idsOf(text).length);
    }
  });
});

describe("the trail", () => {
  const view = { centre: scene.aircraft.position, widthNm: 60 };
  const projection = chartProjection(view, 800, 600);
  const trailOf = (covers: readonly string[], points: readonly TrailPoint[] = FLOWN, wide = projection) =>
    svgOf(<Trail points={points} projection={wide} theme={THEMES.light} covers={covers} />);

  it("goes through every place, with a bead for every minute", () => {
    const svg = trailOf([]);
    const d = numbers(/<path d="([^"]*)"/.exec(svg)![1]);
    expect(d).toHaveLength(2 * FLOWN.length);
    FLOWN.forEach(({ position }, index) => {
      const { x, y } = projection.toPaper(position);
      expect([d[2 * index], d[2 * index + 1]]).toEqual([expect.closeTo(x, 2), expect.closeTo(y, 2)]);
    });
    const beads = [...svg.matchAll(/data-minute="(\d+)" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, ...all]) =>
      all.map(Number),
    );
    expect(beads.map(([minute]) => minute)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15]);
    for (const [minute, x, y] of beads) {
      const at = projection.toPaper(FLOWN[minute! * 60]!.position);
      expect([x, y]).toEqual([expect.closeTo(at.x, 2), expect.closeTo(at.y, 2)]);
    }
  });

  it("has fewer beads from farther off, so that they stay apart", () => {
    const far = trailOf([], FLOWN, chartProjection({ ...view, widthNm: 900 }, 800, 600));
    expect([...far.matchAll(/data-minute="(\d+)"/g)].map(([, minute]) => Number(minute))).toEqual([10]);
  });

  it.each(["aircraft", "heading", "chart"])("is not drawn while %s is covered", (cover) => {
    expect(trailOf([cover])).not.toContain("data-part");
    expect(trailOf(["NAV1.needle"])).toContain("data-part");
  });

  it("is nothing before the aircraft has moved", () => {
    expect(trailOf([], FLOWN.slice(0, 1))).not.toContain("path");
  });
});

it.each([
  [0, "0 s"],
  [20, "20 s"],
  [60, "1 min"],
  [200, "3 min 20 s"],
  [3600, "1 h"],
  [3725.4, "1 h 2 min 5 s"],
])("%s seconds are %s", (timeS, words) => {
  expect(timeWords(timeS)).toBe(words);
});
