/** The selected course among the two waves: read back out of the picture, it tells the very needle and flag of the receiver. */

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { THEMES, TwoWaves, wavesSentence } from "../src/draw/index.ts";
import { wrap180 } from "../src/earth/index.ts";
import { svgOf, wordsOf } from "./draw-faces-read.ts";
import { onRadial, readingOf, TXJ } from "./isles.ts";
import { spread } from "./spread.ts";

const waves = (reading: ReturnType<typeof readingOf>, covers: readonly string[] = []) =>
  svgOf(
    <TwoWaves
      reading={reading}
      widthPx={2400}
      heightPx={300}
      theme={THEMES.light}
      idPrefix="w"
      covers={covers}
    />,
  );

/** Turns after the reference's peak at which something is drawn. */
function readBack(svg: string) {
  const peak = (wave: string) => Number(new RegExp(`data-peak="${wave}" x1="([\\d.]+)"`).exec(svg)?.[1]);
  const ends = /data-wave="reference" d="M([\d.]+) [^"]*L([\d.]+) [\d.]+"/.exec(svg);
  const turnPx = (Number(ends?.[2]) - Number(ends?.[1])) / 2.5;
  const turns = (x: number) => (x - peak("reference")) / turnPx;
  const lines = [...svg.matchAll(/data-centred="(TO|FROM)">.*?<line x1="([\d.]+)"/gs)];
  return {
    lagTurns: turns(peak("variable")),
    marks: lines.map(([, flag, x]) => ({ flag, turns: turns(Number(x)) })),
  };
}

describe("the selected course among the waves", () => {
  it("tells needle and flag by where the variable wave's peak stands", () => {
    fc.assert(
      fc.property(spread(0, 360), fc.integer({ min: 0, max: 359 }), (radialDeg, courseDeg) => {
        const reading = readingOf({ at: onRadial(TXJ, radialDeg, 20), courseDeg });
        const { lagTurns, marks } = readBack(waves(reading));
        const apart = marks.map(({ flag, turns }) => ({ flag, deg: (turns - lagTurns) * 360 }));
        const nearest = apart.sort((a, b) => Math.abs(a.deg) - Math.abs(b.deg))[0]!;
        // Near abeam neither flag shows, and either line may be the nearer one by a pixel.
        if (Math.abs(Math.abs(nearest.deg) - 90) < 3) return;
        expect(nearest.flag).toBe(reading.flag);
        // Facing along the course, more radial is to the right when outbound, to the left when inbound.
        const deviationDeg = nearest.flag === "FROM" ? nearest.deg : -nearest.deg;
        expect(deviationDeg).toBeCloseTo(reading.deviationDeg!, 0);
      }),
      { numRuns: 60 },
    );
  });

  it("names both lines, in three digits", () => {
    const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
    expect(wordsOf(waves(reading))).toMatch(/070 FROM/);
    expect(wordsOf(waves(reading))).toMatch(/250 TO/);
    expect(wavesSentence(reading)).toMatch(
      /On course 070 the needle is centred where that is 070, FROM, or 250, TO\.$/,
    );
  });

  it("stands amid ten degrees on either side", () => {
    const svg = waves(readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 }));
    const turnPx = 360;
    const { marks } = readBack(svg);
    expect(marks.map(({ turns }) => Math.round(wrap180(turns * turnPx)))).toContain(70);
    const rect = /data-centred="FROM"><rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/.exec(svg);
    const ends = /data-wave="reference" d="M([\d.]+) [^"]*L([\d.]+) [\d.]+"/.exec(svg);
    const onePx = (Number(ends?.[2]) - Number(ends?.[1])) / 2.5;
    expect((Number(rect?.[2]) / onePx) * 360).toBeCloseTo(20, 0);
  });

  it.each([["NAV1.course"], ["NAV1.needle"], ["NAV1.flag"], ["panel"]])(
    "is neither drawn nor said while %s is covered",
    (cover) => {
      const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
      expect(waves(reading, [cover])).not.toContain("data-centred");
      expect(wavesSentence(reading, [cover])).not.toContain("070");
    },
  );

  it("has no place on a magnetic indicator, which needs none", () => {
    const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70, face: "rmi" });
    expect(waves(reading)).not.toContain("data-centred");
  });
});
