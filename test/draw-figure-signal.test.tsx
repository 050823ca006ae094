/** The signal in a figure: as many of its pictures as have room, and nothing of what is covered. */

import { describe, expect, it } from "vitest";
import { signalFigurePlaces } from "../src/draw/figure/signal-figure.tsx";
import { figureSvg, THEMES } from "../src/draw/index.ts";
import { onRadial, situationOf, TXJ } from "./isles.ts";

const figure = (widthPx: number, heightPx: number, covers: readonly string[] = []): string =>
  figureSvg({
    situation: situationOf({ at: onRadial(TXJ, 242, 18), courseDeg: 246, covers }),
    reasons: [],
    views: ["signal"],
    widthPx,
    heightPx,
    theme: THEMES.light,
    idPrefix: "f",
  });

describe("the signal's pictures", () => {
  it.each([
    [1840, 860, 2, ["waves", "composite", "spectrum", "angle"]],
    [880, 330, 1, ["waves", "angle"]],
    [400, 600, 1, ["waves", "angle"]],
    [500, 120, 1, ["waves"]],
  ] as const)("have room on %i by %i at scale %i", (widthPx, heightPx, scale, pictures) => {
    const places = signalFigurePlaces(widthPx, heightPx, scale);
    expect(places.map(({ picture }) => picture)).toEqual(pictures);
    for (const place of places) {
      expect(place.x + place.widthPx).toBeLessThanOrEqual(widthPx);
      expect(place.y + place.heightPx).toBeLessThanOrEqual(heightPx);
      for (const other of places)
        if (other !== place)
          expect(
            place.x >= other.x + other.widthPx ||
              other.x >= place.x + place.widthPx ||
              place.y >= other.y + other.heightPx ||
              other.y >= place.y + place.heightPx,
          ).toBe(true);
    }
  });
});

describe("a figure of the signal", () => {
  it("turns the angle on the rose by the radial", () => {
    const svg = figure(1920, 1080);
    for (const picture of ["rose", "composite", "spectrum"])
      expect(svg).toContain(`data-picture="${picture}"`);
    expect(Number(/data-angle="([\d.]+)"/.exec(svg)?.[1])).toBeCloseTo(242, 1);
  });

  it("keeps a covered course and needle off the rose", () => {
    const open = figure(1920, 1080);
    const covered = figure(1920, 1080, ["NAV1.course", "NAV1.needle"]);
    expect(open).toContain("needle 2 dots right");
    expect(covered).not.toContain("dots right");
    expect(covered).not.toContain("course line");
  });

  it("is under its cover when it is covered", () => {
    expect(figure(1920, 1080, ["signal"])).not.toContain("data-picture");
  });
});
