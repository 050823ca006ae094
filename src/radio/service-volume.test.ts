import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isServiceClass, type ServiceClass, serviceRadiusNm, serviceVolume } from "./service-volume.ts";

describe("the radius at a height", () => {
  // FAA AIM 1-1-8, TBL 1-1-1; DL and DH above 12,900 ft from memory.
  test.each<[ServiceClass, number, number]>([
    ["T", 999, 0],
    ["T", 12_000, 25],
    ["L", 999.9, 0],
    ["H", 14_500, 100],
    ["H", 18_000, 130],
    ["H", 60_000, 100],
    ["VL", 999, 0],
    ["VL", 4999, 40],
    ["VL", 17_999, 70],
    ["VL", 18_000, 0],
    ["VH", 999, 0],
    ["VH", 5000, 70],
    ["VH", 14_499, 70],
    ["VH", 14_500, 100],
    ["VH", 18_000, 130],
    ["VH", 45_001, 100],
    ["VH", 60_001, 0],
    // The 4/3-earth horizon from 12,899 ft is 139 NM.
    ["DL", 12_899, 130],
    ["DH", 11_500, 130],
    ["DL", 12_900, 130],
    ["DL", 18_000, 0],
    ["DH", 12_900, 130],
    ["DH", 45_000, 130],
    ["DH", 45_001, 100],
    ["DH", 60_001, 0],
    ["T", -500, 0],
    ["DL", -500, 0],
    ["DL", 0, 0],
  ])("of class %s at %d ft is %d NM", (serviceClass, heightFt, radiusNm) => {
    expect(serviceRadiusNm(serviceClass, heightFt)).toBe(radiusNm);
  });

  test("of the DME classes is the line of sight low down, and never falls on the way up to 45,000 ft", () => {
    expect(serviceRadiusNm("DL", 1000)).toBeCloseTo(1.2287 * Math.sqrt(1000), 1);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 44_000, noNaN: true }), (heightFt) => {
        expect(serviceRadiusNm("DH", heightFt + 1000)).toBeGreaterThanOrEqual(
          serviceRadiusNm("DH", heightFt),
        );
      }),
    );
  });

  test("is not asked at a height that is no number", () => {
    expect(() => serviceRadiusNm("T", Number.NaN)).toThrow(RangeError);
  });
});

describe("the volume", () => {
  test("holds its edge and nothing beyond", () => {
    expect(serviceVolume("T", 5000, 25)).toBe("inside");
    expect(serviceVolume("T", 5000, 25.01)).toBe("outside");
  });

  test("does not hold the station itself below the floor", () => {
    expect(serviceVolume("T", 500, 0)).toBe("outside");
  });

  test("is unknown without a class", () => {
    expect(serviceVolume(null, 5000, 10)).toBe("unknown");
  });
});

test("names its classes", () => {
  expect(["T", "L", "H", "VL", "VH", "DL", "DH"].every(isServiceClass)).toBe(true);
  expect(["", "t", "HH", "VOR", "toString"].some(isServiceClass)).toBe(false);
});
