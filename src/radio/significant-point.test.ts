import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { geodesicDistanceNm, inverse, stationDeg, stationFromTrue, turnBetween } from "../earth/index.ts";
import { flightPlanPoint, placeOfPoint, readSignificantPoint, spokenPoint } from "./significant-point.ts";

const ident = fc
  .array(fc.constantFrom(..."ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"), { minLength: 2, maxLength: 5 })
  .map((letters) => letters.join(""))
  .filter((text) => /[A-Z]/.test(text));
const whole = fc.record({
  ident,
  radial: fc.integer({ min: 0, max: 359 }).map(stationDeg),
  distanceNm: fc.integer({ min: 0, max: 999 }),
});

describe("reading and writing", () => {
  test("a flight plan point comes back as it went", () => {
    fc.assert(
      fc.property(whole, (point) => {
        const text = flightPlanPoint(point);
        // An ident that ends like a coordinate reads as one (46N078W is a place); no station bears such an ident.
        fc.pre(!/^\d{2}(\d{2})?[NS]/.test(text));
        expect(readSignificantPoint(text)).toEqual({
          kind: "read",
          point: { kind: "station-point", ...point },
        });
      }),
    );
  });

  test("a spoken point comes back as it went, to the tenth of a mile", () => {
    fc.assert(
      fc.property(whole, fc.integer({ min: 0, max: 9 }), (point, tenths) => {
        const tenth = { ...point, distanceNm: Number(`${Math.min(998, point.distanceNm)}.${tenths}`) };
        expect(readSignificantPoint(spokenPoint(tenth))).toEqual({
          kind: "read",
          point: { kind: "station-point", ...tenth },
        });
      }),
    );
  });

  test.each([
    ["TXJ 246/18", "TXJ", 246, 18],
    ["TXJ246018", "TXJ", 246, 18],
    ["txj 246/18.5", "TXJ", 246, 18.5],
    ["  TXJ 006 / 8 ", "TXJ", 6, 8],
    ["TXJ 360/5", "TXJ", 0, 5],
    ["TXJ 000/5", "TXJ", 0, 5],
    ["1CD051017", "1CD", 51, 17],
  ])("%j is %s, radial %d, %d NM", (text, station, radial, distanceNm) => {
    expect(readSignificantPoint(text)).toEqual({
      kind: "read",
      point: { kind: "station-point", ident: station, radial, distanceNm },
    });
  });

  test("north is written 360", () => {
    expect(flightPlanPoint({ ident: "TXJ", radial: stationDeg(0), distanceNm: 4.6 })).toBe("TXJ360005");
    expect(spokenPoint({ ident: "TXJ", radial: stationDeg(0), distanceNm: 18 })).toBe("TXJ 360/18");
  });

  test.each([
    ["", "write it as TXJ 246/18"],
    ["TXJ", "write it as TXJ 246/18"],
    ["TXJ24618", "write it as TXJ 246/18"],
    ["123456789", "write it as TXJ 246/18"],
    ["TXJ 46/18", "a radial has three figures"],
    ["TXJ 246.5/18", "a radial has three figures"],
    ["TXJ 361/18", "must be 001 to 360"],
    ["TXJ361018", "must be 001 to 360"],
    ["TXJ 246/1000", "must be 0 to 999"],
    ["T246018", "has 1 characters; it has 2 to 5"],
    ["OSTRELLE246018", "has 8 characters"],
    ["46N07830W", "minutes on one side only"],
    ["9101N07800W", "above 90 degrees"],
    ["4660N07800W", "minutes above 59"],
    ["46N181W", "above 180 degrees"],
  ])("%j is refused: %s", (text, reason) => {
    const read = readSignificantPoint(text);
    expect(read).toEqual({ kind: "unreadable", reason: expect.stringContaining(reason) });
  });

  test.each([
    ["46S078E", -46, 78],
    ["0000N00000E", 0, 0],
    ["0030S18000W", -0.5, -180],
  ])("%j is the place %d, %d", (text, latDeg, lonDeg) => {
    expect(readSignificantPoint(text)).toEqual({
      kind: "read",
      point: { kind: "place", position: { latDeg, lonDeg } },
    });
  });

  test("does not write what the form cannot hold", () => {
    const radial = stationDeg(90);
    expect(() => flightPlanPoint({ ident: "TXJ", radial, distanceNm: 999.6 })).toThrow(RangeError);
    expect(() => flightPlanPoint({ ident: "TXJ", radial, distanceNm: Number.NaN })).toThrow(RangeError);
    expect(() => flightPlanPoint({ ident: "T", radial, distanceNm: 5 })).toThrow(RangeError);
  });
});

test("the place lies on the station's own radial, at that distance over the ground", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -70, max: 70, noNaN: true }),
      fc.double({ min: -180, max: 179, noNaN: true }),
      fc.double({ min: -40, max: 40, noNaN: true }),
      whole,
      (latDeg, lonDeg, declinationDeg, point) => {
        const station = { position: { latDeg, lonDeg }, declinationDeg };
        const there = placeOfPoint(point, station);
        expect(geodesicDistanceNm(station.position, there)).toBeCloseTo(point.distanceNm, 6);
        const line = inverse(station.position, there);
        if (line.kind === "line")
          expect(turnBetween(stationFromTrue(line.azimuth, declinationDeg), point.radial)).toBeCloseTo(0, 6);
      },
    ),
  );
});
