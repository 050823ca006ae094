import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spread } from "../../test/spread.ts";
import { latLonText, readLatLon } from "./coordinates.ts";
import { inverse } from "./geodesic.ts";
import { latLon } from "./position.ts";

describe("reading", () => {
  const g3 = [-10 - 18.8 / 60, 2 + 3.7 / 60] as const;
  test.each([
    ["-10.5, 2.06", -10.5, 2.06],
    ["-10.5 2.06", -10.5, 2.06],
    ["−10.5; +2.06", -10.5, 2.06],
    ["  46 ,-78  ", 46, -78],
    ["-10.5°, 2.06°", -10.5, 2.06],
    ["10°18.8′S 002°03.7′E", ...g3],
    ["10°18.8'S, 002°03.7'E", ...g3],
    ["10º18.8’s 2º3.7’e", ...g3],
    ["S10 18.8 E002 03.7", ...g3],
    ["S 10° 18.8′  E 2° 3.7′", ...g3],
    ["10 18.8 S 2 3.7 E", ...g3],
    ["10°18.8′S002°03.7′E", ...g3],
    ["S10°18.8′E002°03.7′", ...g3],
    ["002°03.7′E 10°18.8′S", ...g3],
    ["10-18.8S 002-03.7E", ...g3],
    ["10:18.8S 2:3.7E", ...g3],
    ["1018.8S 00203.7E", ...g3],
    ["10°18′48″S 002°03′42″E", ...g3],
    [`10°18'48"S 002°03'42"E`, ...g3],
    ["10°18''48S", null, null],
    ["10 18 48 S 2 3 42 E", ...g3],
    ["10-18-48.0S 002-03-42.0E", ...g3],
    ["101848S 0020342E", ...g3],
    ["101848S0020342E", ...g3],
    ["10.5S 2.06E", -10.5, 2.06],
    ["N46 W078", 46, -78],
    ["46N078W", 46, -78],
    ["4620N07805W", 46 + 20 / 60, -78 - 5 / 60],
    ["462030N0780512W", 46 + 20.5 / 60, -78 - 5.2 / 60],
    ["90N 180E", 90, -180],
    ["0N 0E", 0, 0],
    ["00°00.0′S 000°00.0′W", 0, 0],
  ])("%s", (text, latDeg, lonDeg) => {
    const read = readLatLon(text);
    if (latDeg === null || lonDeg === null) {
      expect(read.ok).toBe(false);
      return;
    }
    if (!read.ok) throw new Error(read.reason);
    expect(read.position.latDeg).toBeCloseTo(latDeg, 10);
    expect(read.position.lonDeg).toBeCloseTo(lonDeg, 10);
    expect(Object.values(read.position).some((value) => Object.is(value, -0))).toBe(false);
  });

  test.each([
    ["", "the position is empty", ""],
    ["   ", "the position is empty", "   "],
    ["somewhere over there", "is not a position", "somewhere over there"],
    ["12", '"12" is not a position', "12"],
    ["10,5, 2,06", "is not a position", "10,5, 2,06"],
    ["95, 2", "latitude 95 lies outside 90 S to 90 N", "95"],
    ["-90.01 2", "latitude -90.01 lies outside", "-90.01"],
    ["95°00′N 002°00′E", "latitude 95°00'N lies outside", "95°00'N"],
    ["90°00.1′N 002°00′E", "latitude 90°00.1'N lies outside", "90°00.1'N"],
    ["10, 181", "longitude 181 lies outside 180 W to 180 E", "181"],
    ["10N 180°00.1′W", "longitude 180°00.1'W lies outside", "180°00.1'W"],
    ["10°75′S 002°00′E", 'minutes 75 in "10°75\'S" must be below 60', "10°75'S"],
    ["10°18′60″S 002°00′E", 'seconds 60 in "10°18\'60"S" must be below 60', "10°18'60\"S"],
    ["4660N07805W", "minutes 60", "4660N"],
    ["10°18′N 12°00′S", "names two latitudes and no longitude", "10°18′N 12°00′S"],
    ["10E 12W", "names two longitudes and no latitude", "10E 12W"],
    ["10N", "needs one letter N or S and one letter E or W", "10N"],
    ["10N 20E 30E", "needs one letter N or S", "10N 20E 30E"],
    ["N10 20E", "letters both before or both after", "N10 20E"],
    ["-10S 2E", "both a sign and a letter", "-10S"],
    ["10.5°18′S 002°E", "fraction before its last number", "10.5°18'S"],
    ["10'18°S 2E", "is not degrees, minutes and seconds", "10'18°S"],
    ["462N07805W", "latitude 462N lies outside", "462N"],
    ["46N0780W", "longitude 0780W lies outside", "0780W"],
    ["10..5S 2E", "is not degrees", "10..5S"],
    ["1e400, 2", "needs one letter", "1e400, 2"],
    ["NaN, 2", "is not a position", "NaN, 2"],
    ["Infinity 2", "is not a position", "Infinity 2"],
    ["𝟏0S 2E", "is not degrees", "𝟏0S"],
  ])("%o: %s", (text, reason, part) => {
    const read = readLatLon(text);
    if (read.ok) throw new Error(`read as ${JSON.stringify(read.position)}`);
    expect(read.reason).toContain(reason);
    expect(read.reason).not.toMatch(/\.$|\n/);
    expect(read.part).toBe(part);
  });

  test("a very long text is refused at once, with its beginning", () => {
    const start = performance.now();
    const read = readLatLon("1".repeat(5_000_000));
    expect(performance.now() - start).toBeLessThan(50);
    expect(read).toMatchObject({ ok: false, part: `${"1".repeat(24)}…` });
  });

  test("never throws, and what it reads lies in range", () => {
    const piece = fc.constantFrom(..."0123456789.°'\" NSEW-+,;:′″".split(""));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(piece, { maxLength: 30 }).map((all) => all.join("")),
        ),
        (text) => {
          const read = readLatLon(text);
          if (!read.ok) return;
          expect(Math.abs(read.position.latDeg)).toBeLessThanOrEqual(90);
          expect(read.position.lonDeg >= -180 && read.position.lonDeg < 180).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
  });
});

describe("writing", () => {
  test.each([
    [-10 - 18.8 / 60, 2 + 3.7 / 60, 1, "10°18.8′S 002°03.7′E"],
    [46 + 59.96 / 60, -78 - 59.96 / 60, 1, "47°00.0′N 079°00.0′W"],
    [0, 0, 1, "00°00.0′N 000°00.0′E"],
    [-0.0001, -0.0001, 1, "00°00.0′N 000°00.0′E"],
    [-0.001, -0.001, 1, "00°00.1′S 000°00.1′W"],
    [90, -180, 1, "90°00.0′N 180°00.0′W"],
    [89.99999, 179.99999, 1, "90°00.0′N 180°00.0′E"],
    [-10.5, 2.06, 0, "10°30′S 002°04′E"],
    [-10.5, 2.0612345, 3, "10°30.000′S 002°03.674′E"],
  ])("%d, %d with %d decimals", (latDeg, lonDeg, minuteDecimals, text) => {
    expect(latLonText({ latDeg, lonDeg }, minuteDecimals)).toBe(text);
  });

  test("one decimal when not told otherwise", () => {
    expect(latLonText(latLon(1, 2))).toBe("01°00.0′N 002°00.0′E");
  });

  test("refuses what is no place", () => {
    expect(() => latLonText({ latDeg: 95, lonDeg: 0 })).toThrow(RangeError);
    expect(() => latLonText({ latDeg: Number.NaN, lonDeg: 0 })).toThrow(RangeError);
  });

  test("what is written is read back within its last digit", () => {
    fc.assert(
      fc.property(
        spread(-90, 90),
        spread(-180, 179.999999),
        fc.integer({ min: 0, max: 6 }),
        (latDeg, lonDeg, minuteDecimals) => {
          const place = latLon(latDeg, lonDeg);
          const read = readLatLon(latLonText(place, minuteDecimals));
          if (!read.ok) throw new Error(read.reason);
          // Half of the last digit in both, at most 1 NM to the minute.
          expect(inverse(place, read.position).distanceNm).toBeLessThan(0.75 * 10 ** -minuteDecimals);
        },
      ),
    );
  });
});
