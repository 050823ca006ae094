/**
 * A cover leaks nothing. The strictest test there is: two scenes that differ only in what is covered give the same picture, byte for
 * byte, titles and descriptions included, in the view that fits each of them.
 */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chartDescription, fitView } from "../src/draw/chart/index.ts";
import type { Lit } from "../src/draw/lit.ts";
import { magneticDeg, stationDeg } from "../src/earth/index.ts";
import { resolveScene, type Scene, type Situation } from "../src/scene/index.ts";
import { all, chartOf, chartSvg, demoSituations, parseSvg, partsOf } from "./draw-chart-read.ts";
import { HJL, onRadial, situationOf, TXJ } from "./isles.ts";
import { placeArbitrary } from "./scene-arbitraries.ts";

const LIT: Lit = {
  receiver: "NAV1",
  parts: [
    "aircraft",
    "heading",
    "track",
    "radial",
    "course",
    "to-side",
    "offset",
    "rose",
    "station",
    "abeam",
    "north",
  ],
};

const base: Situation = situationOf({
  at: onRadial(TXJ, 246, 18),
  courseDeg: 70,
  headingDeg: 90,
  windKt: 18,
});

function changed(change: (scene: Scene) => Partial<Scene>, ...covers: string[]): Situation {
  return resolveScene({ ...base.scene, ...change(base.scene), covers });
}

/** The picture as shown, and as shown while everything is lit. */
function pictures(situation: Situation): string {
  const view = fitView(situation, 1000, 700);
  return [null, LIT].map((lit) => chartSvg(situation, { view, lit })).join("\n");
}

/** Uncovered, the change is seen; covered, it is not. */
function expectHidden(change: (scene: Scene) => Partial<Scene>, ...covers: string[]): void {
  expect(pictures(changed(change))).not.toBe(pictures(changed(() => ({}))));
  expect(pictures(changed(change, ...covers))).toBe(pictures(changed(() => ({}), ...covers)));
}

const near = fc.record({
  radialDeg: fc.double({ min: 0, max: 359.9, noNaN: true }),
  distanceNm: fc.double({ min: 0.2, max: 140, noNaN: true }),
});

describe("a covered aircraft", () => {
  test("is nowhere in the picture, wherever it is", () => {
    fc.assert(
      fc.property(near, ({ radialDeg, distanceNm }) => {
        const position = onRadial(TXJ, radialDeg, distanceNm);
        expectHidden(({ aircraft }) => ({ aircraft: { ...aircraft, position } }), "aircraft");
      }),
      { numRuns: 25 },
    );
  });

  test("nor on the other side of the world", () => {
    fc.assert(
      fc.property(placeArbitrary(85), (position) => {
        expectHidden(({ aircraft }) => ({ aircraft: { ...aircraft, position } }), "aircraft");
      }),
      { numRuns: 15 },
    );
  });

  test("takes its radial, heading, track and distance with it, and leaves a strip", () => {
    const picture = chartOf(
      changed(() => ({}), "aircraft"),
      { lit: LIT },
    );
    for (const part of ["aircraft", "heading", "track", "radial", "offset"])
      expect(partsOf(picture, part)).toEqual([]);
    expect(picture.words).toContain("covered: aircraft");
    expect(chartDescription(changed(() => ({}), "aircraft"))).toMatch(/^The aircraft is covered\./);
    expect(partsOf(picture, "course", "NAV1").length).toBeGreaterThan(0);
  });
});

describe("a covered heading", () => {
  test("shows neither in the dart, the vectors, the words nor the track", () => {
    for (const headingDeg of [0, 45, 180, 271]) {
      const heading = magneticDeg(headingDeg);
      expectHidden(({ aircraft }) => ({ aircraft: { ...aircraft, heading } }), "heading");
    }
    const picture = chartOf(
      changed(() => ({}), "heading"),
      { lit: LIT },
    );
    for (const part of ["heading", "track"]) expect(partsOf(picture, part)).toEqual([]);
    expect(picture.words).toContain("covered: heading");
    expect(picture.words).toContain("3,500 ft");
  });
});

describe("a receiver's covers", () => {
  const turnTo = (courseDeg: number) => (scene: Scene) => ({
    receivers: scene.receivers.map((receiver) => ({ ...receiver, course: stationDeg(courseDeg) })),
  });

  test("its course: no line, no label, no halves", () => {
    for (const courseDeg of [0, 71, 160, 250]) expectHidden(turnTo(courseDeg), "NAV1.course");
    const picture = chartOf(
      changed(() => ({}), "NAV1.course"),
      { lit: LIT },
    );
    for (const part of ["course", "to-side", "from-side", "abeam", "offset"])
      expect(partsOf(picture, part)).toEqual([]);
    expect(partsOf(picture, "radial").length).toBeGreaterThan(0);
  });

  test("its frequency, its ident, or all of it: which station is tuned", () => {
    const tune = (scene: Scene) => ({
      receivers: scene.receivers.map((receiver) => ({ ...receiver, frequencyMhz: HJL.frequencyMhz })),
    });
    for (const cover of ["NAV1.frequency", "NAV1.ident", "NAV1"]) expectHidden(tune, cover);
  });

  test("its flag: no TO, no FROM", () => {
    const picture = chartOf(
      changed(() => ({}), "NAV1.flag"),
      { lit: LIT },
    );
    for (const part of ["to-side", "from-side", "abeam"]) expect(partsOf(picture, part)).toEqual([]);
    const words = all(picture, ({ tag }) => tag === "text").map((text) => text.words);
    expect(words).not.toContain("TO");
    expect(words).not.toContain("FROM");
    expect(words).toContain("course 070");
    // With the flag covered the line must not fade either when nothing is received.
    const far = ({ aircraft }: Scene) => ({ aircraft: { ...aircraft, altitudeFt: 30 } });
    expect(changed(far).receivers[0]?.signal.kind).toBe("none");
    const opacity = (situation: Situation) =>
      all(chartOf(situation), ({ children }) =>
        children.some(({ attributes }) => attributes["data-part"] === "course"),
      ).map(({ attributes }) => attributes.opacity);
    expect(opacity(changed(far, "NAV1.flag"))).toEqual(opacity(changed(() => ({}), "NAV1.flag")));
  });

  test("its needle: no distance from the course, however it is lit", () => {
    expect(
      partsOf(
        chartOf(
          changed(() => ({})),
          { lit: LIT },
        ),
        "offset",
      ).length,
    ).toBeGreaterThan(0);
    expect(
      partsOf(
        chartOf(
          changed(() => ({}), "NAV1.needle"),
          { lit: LIT },
        ),
        "offset",
      ),
    ).toEqual([]);
    expect(
      partsOf(
        chartOf(
          changed(() => ({}), "panel"),
          { lit: LIT },
        ),
        "offset",
      ),
    ).toEqual([]);
  });

  test("a magnetic indicator's needle: its radial", () => {
    const rmi = (scene: Scene) => ({
      receivers: scene.receivers.map((receiver) => ({ ...receiver, face: "rmi" as const })),
    });
    expect(partsOf(chartOf(changed(rmi)), "radial").length).toBeGreaterThan(0);
    expect(partsOf(chartOf(changed(rmi, "NAV1.needle")), "radial")).toEqual([]);
    expect(chartDescription(changed(rmi, "NAV1.needle"))).not.toContain("246");
  });

  test("its distance: not said in the description", () => {
    expect(chartDescription(changed(() => ({})))).toContain("18.0 miles");
    expect(chartDescription(changed(() => ({}), "NAV1.dme"))).not.toMatch(/18\.0|miles/);
  });
});

describe("a covered chart", () => {
  test("is a blank sheet with a strip, whatever the scene", () => {
    const blank = (situation: Situation) =>
      chartSvg(resolveScene({ ...situation.scene, title: "", covers: ["chart"] }), {
        view: { centre: { latDeg: 0, lonDeg: 0 }, widthNm: 80 },
      });
    const sheets = new Set(demoSituations().map(({ situation }) => blank(situation)));
    expect(sheets.size).toBe(1);
    const picture = parseSvg([...sheets][0] ?? "");
    expect(picture.words).toContain("covered: chart");
    expect(picture.words).not.toMatch(/[A-Z]{3}|\d/);
  });
});

test("covers of other views hide nothing here", () => {
  const shown = pictures(changed(() => ({})));
  for (const cover of ["signal", "reasons"]) expect(pictures(changed(() => ({}), cover))).toBe(shown);
});
