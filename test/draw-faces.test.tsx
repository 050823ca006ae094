import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CARD_NUMERALS } from "../src/draw/faces/compass-card.tsx";
import { dialGeometry } from "../src/draw/faces/dial-geometry.ts";
import { plateMiddleY } from "../src/draw/faces/face-flag.tsx";
import { plateSize } from "../src/draw/faces/flag-plate.tsx";
import { HeadingIndicator, MagneticIndicator, ReceiverFace, THEMES } from "../src/draw/index.ts";
import { textWidthPx } from "../src/draw/plain/text-width.ts";
import { magneticDeg, wrap180, wrap360 } from "../src/earth/index.ts";
import type { Face, ReceiverReading } from "../src/panel/index.ts";
import {
  badNumbers,
  dotPlacesPx,
  hasPart,
  idsOf,
  needleDotsDrawn,
  partTag,
  svgOf,
  turnOf,
  wordsOf,
} from "./draw-faces-read.ts";
import { HJL, onRadial, readingOf, TXJ } from "./isles.ts";

const theme = THEMES.light;
const faceOf = (reading: ReceiverReading, sizePx = 240, more: object = {}) =>
  svgOf(<ReceiverFace reading={reading} sizePx={sizePx} theme={theme} idPrefix="f" {...more} />);

/** Evenly spread; `fc.double` draws evenly from all floating-point numbers, nearly all of which are next to nothing. */
const evenly = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);

/** Any place within reach of Tamsel, with any course and heading. */
const flown = fc
  .record({
    radialDeg: evenly(0, 360),
    courseDeg: evenly(0, 360),
    headingDeg: evenly(0, 360),
    distanceNm: evenly(4, 35),
  })
  .map((made) => ({ ...made, at: onRadial(TXJ, made.radialDeg, made.distanceNm) }));

const readingOn = (
  place: { at: { latDeg: number; lonDeg: number }; courseDeg: number; headingDeg: number },
  face: Face,
) => readingOf({ ...place, face });

const apartDeg = (a: number, b: number): number => Math.abs(wrap180(a - b));

describe("the course indicator", () => {
  it("puts the bar where the reading says, two degrees a dot, at the fifth dot from there on", () => {
    fc.assert(
      fc.property(flown, (place) => {
        const reading = readingOn(place, "cdi");
        const dots = Math.max(-5, Math.min(5, (reading.deviationDeg ?? Number.NaN) / 2));
        expect(needleDotsDrawn(faceOf(reading))).toBeCloseTo(dots, 2);
      }),
    );
  });

  it("draws G3 two dots left of the middle: radial 246, course 070", () => {
    const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70, headingDeg: 90 });
    expect(needleDotsDrawn(faceOf(reading))).toBeCloseTo(-2, 2);
    expect(partTag(faceOf(reading), "flag")).toContain('data-flag="TO"');
    expect(wordsOf(faceOf(reading))).toContain("\nTO\n");
  });

  it("turns the card so that the selected course stands under the index", () => {
    fc.assert(
      fc.property(flown, (place) => {
        expect(
          apartDeg(turnOf(faceOf(readingOn(place, "cdi")), "course-card"), -place.courseDeg),
        ).toBeLessThan(0.001);
      }),
    );
  });

  it("does not change by a byte when the heading changes", () => {
    fc.assert(
      fc.property(flown, evenly(0, 360), (place, other) => {
        expect(faceOf(readingOn({ ...place, headingDeg: other }, "cdi"))).toBe(
          faceOf(readingOn(place, "cdi")),
        );
      }),
    );
  });

  it("parks a broken grey bar in the middle and hatches OFF when nothing is received", () => {
    const svg = faceOf(readingOf({ at: onRadial(TXJ, 246, 18), tune: 112.45 }));
    expect(partTag(svg, "needle")).toContain('data-live="no"');
    expect(needleDotsDrawn(svg)).toBe(0);
    expect(wordsOf(svg)).toContain("\nOFF\n");
    expect(svg).toContain('id="f-off"');
  });

  it("shows OFF and a live bar at its stop abeam the station", () => {
    const svg = faceOf(readingOf({ at: onRadial(TXJ, 160, 18), courseDeg: 70 }));
    expect(partTag(svg, "flag")).toContain('data-flag="OFF"');
    expect(partTag(svg, "needle")).toContain('data-live="yes"');
    expect(Math.abs(needleDotsDrawn(svg))).toBeCloseTo(5, 2);
  });

  it("follows a damped needle instead of the reading when told where it is", () => {
    const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
    expect(needleDotsDrawn(faceOf(reading, 240, { shownDots: 1.25 }))).toBeCloseTo(1.25, 2);
    expect(needleDotsDrawn(faceOf(reading, 240, { shownDots: -99 }))).toBeCloseTo(-5, 2);
  });

  it("has five dots a side, evenly apart", () => {
    const places = dotPlacesPx(faceOf(readingOf({ at: onRadial(TXJ, 246, 18) })));
    expect(places).toHaveLength(10);
    const spacing = (places[9]! - places[5]!) / 4;
    [-5, -4, -3, -2, -1, 1, 2, 3, 4, 5].forEach((dot, index) => {
      expect(places[index]).toBeCloseTo(dot * spacing, 2);
    });
  });
});

describe("the horizontal situation indicator", () => {
  it("shows heading under the lubber line and the selected course on the card, under the pointer", () => {
    fc.assert(
      fc.property(flown, (place) => {
        const svg = faceOf(readingOn(place, "hsi"));
        expect(apartDeg(turnOf(svg, "heading"), -place.headingDeg)).toBeLessThan(0.001);
        const onCard = wrap360(turnOf(svg, "course") - turnOf(svg, "heading"));
        expect(apartDeg(onCard, place.courseDeg)).toBeLessThan(0.002);
      }),
    );
  });

  it("slides its bar as the course indicator's, and only turns with the heading", () => {
    fc.assert(
      fc.property(flown, (place) => {
        const hsi = faceOf(readingOn(place, "hsi"));
        const cdi = faceOf(readingOn(place, "cdi"));
        expect(needleDotsDrawn(hsi)).toBeCloseTo(needleDotsDrawn(cdi), 2);
      }),
    );
  });

  it("puts the TO triangle on the pointer's head side and the FROM triangle on its tail side, with the word", () => {
    for (const [radial, flag, side] of [
      [250, "TO", -1],
      [70, "FROM", 1],
    ] as const) {
      const svg = faceOf(readingOf({ at: onRadial(TXJ, radial, 18), courseDeg: 70, face: "hsi" }));
      const tip = /d="M-?[\d.]+ (-?[\d.]+)L/.exec(partTag(svg, "to-from"))?.[1];
      expect(Math.sign(Number(tip))).toBe(side);
      expect(wordsOf(svg)).toContain(`\n${flag}\n`);
    }
  });
});

describe("the magnetic indicator", () => {
  it("lies with its head on the bearing to the station and its tail on the radial, whatever the course", () => {
    fc.assert(
      fc.property(flown, (place) => {
        const reading = readingOn(place, "rmi");
        const svg = faceOf(reading);
        const headOnCard = wrap360(turnOf(svg, "needle") - turnOf(svg, "heading"));
        expect(apartDeg(headOnCard, reading.bearingTo ?? Number.NaN)).toBeLessThan(0.002);
        expect(apartDeg(headOnCard + 180, place.radialDeg)).toBeLessThan(0.01);
        expect(faceOf(readingOn({ ...place, courseDeg: 0 }, "rmi"))).toBe(svg);
      }),
    );
  });

  it("carries two pointers, single and double, told by their numbers", () => {
    const at = onRadial(TXJ, 246, 18);
    const first = readingOf({ at, face: "rmi" });
    const nav2 = readingOf({ at, face: "rmi", tune: HJL.frequencyMhz });
    const second = { ...nav2, settings: { ...nav2.settings, name: "NAV2" } };
    const svg = svgOf(
      <MagneticIndicator reading={first} second={second} sizePx={300} theme={theme} idPrefix="f" />,
    );
    const pointers = [
      ...svg.matchAll(/data-part="needle" data-receiver="(NAV\d)" transform="rotate\((-?[\d.]+)/g),
    ];
    expect(pointers.map(([, name]) => name)).toEqual(["NAV1", "NAV2"]);
    [first, second].forEach((reading, index) => {
      expect(
        apartDeg(Number(pointers[index]?.[2]), reading.rmiPointerRelativeDeg ?? Number.NaN),
      ).toBeLessThan(0.001);
    });
    expect(wordsOf(svg)).toMatch(/\n1\n2\n/);
  });

  it("says which of two pointers has no signal", () => {
    const at = onRadial(TXJ, 246, 18);
    const first = readingOf({ at, face: "rmi" });
    const nav2 = readingOf({ at, face: "rmi", tune: 112.45 });
    const second = { ...nav2, settings: { ...nav2.settings, name: "NAV2" } };
    const words = wordsOf(
      svgOf(<MagneticIndicator reading={first} second={second} sizePx={300} theme={theme} idPrefix="f" />),
    );
    expect(words).toContain("\n2 OFF\n");
    expect(words).not.toContain("1 OFF");
  });

  it("draws no pointer and OFF without a bearing", () => {
    const svg = faceOf(readingOf({ at: onRadial(TXJ, 246, 18), face: "rmi", tune: 112.45 }));
    expect(hasPart(svg, "needle")).toBe(false);
    expect(wordsOf(svg)).toContain("\nOFF\n");
  });
});

describe("the heading indicator", () => {
  it("turns its card to the heading", () => {
    const svg = svgOf(<HeadingIndicator heading={magneticDeg(252)} sizePx={200} theme={theme} />);
    expect(apartDeg(turnOf(svg, "heading"), -252)).toBeLessThan(0.001);
  });
});

describe("every face", () => {
  const faces: readonly Face[] = ["cdi", "hsi", "rmi"];

  it("has no bad number, no twin id, no class, and the same bytes each time, at any reading", () => {
    fc.assert(
      fc.property(flown, fc.constantFrom(...faces), fc.constantFrom(90, 120, 600), (place, face, sizePx) => {
        const svg = faceOf(readingOn(place, face), sizePx);
        expect(badNumbers(svg)).toEqual([]);
        expect(new Set(idsOf(svg)).size).toBe(idsOf(svg).length);
        expect(idsOf(svg).every((id) => id.startsWith("f-"))).toBe(true);
        expect(svg).not.toMatch(/ (class|style)=/);
        expect(faceOf(readingOn(place, face), sizePx)).toBe(svg);
      }),
    );
  });

  it("refuses a reading that is no number rather than drawing it", () => {
    const reading = { ...readingOf({ at: onRadial(TXJ, 246, 18) }), deviationDeg: Number.NaN };
    expect(() => faceOf(reading)).toThrow(RangeError);
  });

  it("has a card of twelve numerals, as the trade numbers it", () => {
    const svg = faceOf(readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 0 }));
    const numerals = [...svg.matchAll(/<g transform="rotate\((\d+)\)"><text[^>]*>([^<]+)</g)];
    expect(numerals.map(([, turn, text]) => [Number(turn), text])).toEqual(
      ["N", "3", "6", "E", "12", "15", "S", "21", "24", "W", "30", "33"].map((text, index) => [
        30 * index,
        text,
      ]),
    );
  });

  it("keeps numerals apart, clear of ticks and of the needle's room, and type at 12 px or more", () => {
    for (let sizePx = 112; sizePx <= 640; sizePx += 4) {
      const g = dialGeometry(sizePx);
      expect(g.numeralSizePx).toBeGreaterThanOrEqual(12);
      expect(g.plateTextPx).toBeGreaterThanOrEqual(12);
      const widest = Math.max(
        ...CARD_NUMERALS.map((each) => textWidthPx(each, g.numeralSizePx, "words-bold")),
      );
      const half = g.numeralSizePx * 0.375;
      // The corners of the widest numeral stay inside the ticks, its foot outside the needle's room.
      expect(Math.hypot(widest / 2, g.numeralRadiusPx + half)).toBeLessThan(g.ringRadiusPx - g.tickPx.ten);
      expect(g.numeralRadiusPx - half).toBeGreaterThanOrEqual(g.innerRadiusPx);
      // Neighbours, a twelfth of a turn apart, do not touch at their feet.
      expect(2 * (g.numeralRadiusPx - half) * Math.sin(Math.PI / 12)).toBeGreaterThan(widest * 0.98);
      // The whole face stays inside its square.
      expect(g.ringRadiusPx + Math.max(4, sizePx * 0.034)).toBeLessThanOrEqual(sizePx / 2);
    }
  });

  it("has plates that hold their words and stay clear of the numerals", () => {
    for (const sizePx of [90, 120, 180, 240, 400, 600]) {
      const g = dialGeometry(sizePx);
      for (const word of ["TO", "FROM", "OFF"]) {
        const { widthPx, heightPx, trianglePx } = plateSize(word, g.plateTextPx, !g.tiny);
        expect(textWidthPx(word, g.plateTextPx, "words-bold") + trianglePx).toBeLessThan(widthPx);
        expect(g.plateTextPx * 0.75).toBeLessThan(heightPx);
        const lowest = plateMiddleY(g) + heightPx / 2;
        if (sizePx >= 120)
          expect(Math.hypot(widthPx / 2, lowest)).toBeLessThanOrEqual(g.clearRadiusPx + 0.001);
      }
    }
  });

  it("lights what the argument speaks of, and only that receiver's", () => {
    const reading = readingOf({ at: onRadial(TXJ, 246, 18), courseDeg: 70 });
    const lit = (receiver: string) => faceOf(reading, 240, { lit: { receiver, parts: ["needle", "flag"] } });
    expect(lit("NAV1").match(/data-lit/g)).toHaveLength(2);
    expect(lit("NAV2")).not.toContain("data-lit");
  });
});
