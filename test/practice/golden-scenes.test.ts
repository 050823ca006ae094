/**
 * The golden scenes put through the reference functions: places by latitude and longitude, truths worked out by hand on a sphere of
 * radius 3440.065 NM, so that they hold on the ellipsoid to half a degree and a third of a mile.
 */

import { describe, expect, it } from "vitest";
import { inverse, magneticDeg, nmFromFt, readLatLon, stationDeg, twoLineFix } from "../../src/earth/index.ts";
import { panelShown } from "../../src/practice/functions.ts";
import { type Facts, functionsWith, type SlipId, slipOf, TRUTH } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";

const WITHIN_DEG = 0.5;
const WITHIN_NM = 0.35;

const stationOf = (ident: string) => PRACTICE_ISLES.stations.find((station) => station.ident === ident)!;

function placeOf(text: string) {
  const read = readLatLon(text);
  if (!("position" in read)) throw new Error(`${text} cannot be read`);
  return read.position;
}

function factsAt(
  place: string,
  altitudeFt: number,
  ident: string,
  courseDeg: number,
  headingDeg = courseDeg,
): Facts {
  const station = stationOf(ident);
  const line = inverse(station.position, placeOf(place));
  if (line.kind !== "line") throw new Error("overhead");
  return {
    azimuth: line.azimuth,
    declinationDeg: station.declinationDeg,
    variationDeg: -8,
    course: stationDeg(courseDeg),
    heading: magneticDeg(headingDeg),
    distanceNm: line.distanceNm,
    heightNm: nmFromFt(altitudeFt - station.elevationFt),
    tasKt: 100,
    wind: { from: line.azimuth, speedKt: 0 },
  };
}

const saidBy = (slip: SlipId) => functionsWith([slipOf(slip).patch]);
const near = (deg: number, wanted: number, within = WITHIN_DEG): void =>
  expect(Math.abs(((deg - wanted + 540) % 360) - 180), `${deg} for ${wanted}`).toBeLessThan(within);

const WEST_OF_HALDREY = "10°29.7′S 001°04.7′E";

/** Radial, distance and, where a panel is spoken of, flag, needle in degrees (right positive) and side. */
const SCENES = [
  ["G1", WEST_OF_HALDREY, 3500, "HJL", 256, 256, 24, "FROM", 0, null],
  ["G2", WEST_OF_HALDREY, 3500, "HJL", 76, 256, 24, "TO", 0, null],
  ["G3", "10°18.8′S 002°03.7′E", 3500, "TXJ", 70, 246, 18, "TO", -4, "right"],
  ["G4", "09°54.1′S 002°08.8′E", 3500, "TXJ", 120, 335, 18, "TO", 35, "left"],
  ["G5", "10°55.0′S 001°36.1′E", 4500, "OXK", 351, 355, 30, "FROM", -4, "right"],
  ["G6", "10°35.5′S 000°58.5′E", 2500, "BJQ", 270, 84, 20, "TO", -6, "right"],
  ["G7", "11°06.4′S 002°45.9′E", 8500, "SRX", 131, 309, 1.2, "TO", -2, "right"],
  ["G8", "11°01.9′S 002°50.1′E", 4500, "SRX", 131, 41, 6, "OFF", 90, null],
] as const;

describe("a golden scene", () => {
  it.each(SCENES)(
    "%s is what a pilot works out",
    (name, place, altitudeFt, ident, courseDeg, radial, nm, flag, needle, side) => {
      const facts = factsAt(place, altitudeFt, ident, courseDeg);
      // At a mile and a fifth a tenth of a minute of position is five degrees.
      const withinDeg = name === "G7" ? 4 : WITHIN_DEG;
      near(TRUTH.radial(facts), radial, withinDeg);
      expect(Math.abs(facts.distanceNm - nm)).toBeLessThan(WITHIN_NM);
      expect(TRUTH.flag(facts)).toBe(flag);
      expect(Math.abs(Math.abs(TRUTH.needleDeg(facts)) - Math.abs(needle))).toBeLessThan(withinDeg);
      if (needle !== 0 && flag !== "OFF") expect(Math.sign(TRUTH.needleDeg(facts))).toBe(Math.sign(needle));
      if (side !== null) expect(TRUTH.side(facts)).toBe(side);
    },
  );

  it("G1 and G2 part the idea that the number dialled is the radial from the idea that a radial leads in", () => {
    const from = factsAt(WEST_OF_HALDREY, 3500, "HJL", 256);
    const to = factsAt(WEST_OF_HALDREY, 3500, "HJL", 76);
    for (const [facts, dialled, inward] of [
      [from, 256, 76],
      [to, 76, 76],
    ] as const) {
      near(saidBy("selector-is-radial").readRadial(panelShown(facts), facts), dialled);
      near(saidBy("radial-reads-inbound").readRadial(panelShown(facts), facts), inward);
      near(TRUTH.readRadial(panelShown(facts), facts), 256);
    }
  });

  it("G3 and G5 lie 1.2 and 2 NM off the line, by the rule of sixty", () => {
    expect(TRUTH.offNm(18, -4)).toBeCloseTo(1.2, 9);
    expect(TRUTH.offNm(30, -4)).toBeCloseTo(2, 9);
    expect(saidBy("degree-is-a-mile").offNm(30, -4)).toBe(4);
  });

  it("G7 reads 1.8 on the DME and is overhead, G8 is abeam", () => {
    const over = factsAt("11°06.4′S 002°45.9′E", 8500, "SRX", 131);
    expect(TRUTH.slantNm(over.distanceNm, over.heightNm)).toBeCloseTo(1.8, 1);
    expect(TRUTH.isOverhead({ flagChanged: true }, over)).toBe(true);
    const abeam = factsAt("11°01.9′S 002°50.1′E", 4500, "SRX", 131);
    expect(TRUTH.isOverhead({ flagChanged: true }, abeam)).toBe(false);
    expect(saidBy("abeam-is-overhead").isOverhead({ flagChanged: true }, abeam)).toBe(true);
  });

  it("G9 is in the hill's shadow and G10 beyond the protected volume, and the class alone says neither", () => {
    const hidden = { distanceNm: 30, classRadiusNm: 40, lineOfSightNm: 116, terrainClear: false };
    expect(TRUTH.hears(hidden)).toBe(false);
    expect(saidBy("reach-by-class").hears(hidden)).toBe(true);
    expect(TRUTH.hears({ distanceNm: 45, classRadiusNm: 40, lineOfSightNm: 68, terrainClear: true })).toBe(
      false,
    );
  });

  it("G11 is where the 131 radial of Haldrey meets the 233 of Tamsel, cut at 103 degrees", () => {
    const place = "10°35.4′S 001°53.1′E";
    for (const [ident, radial, nm] of [
      ["HJL", 131, 30],
      ["TXJ", 233, 36.7],
      ["PJH", 110, 20.2],
      ["OXK", 20.5, 49.4],
    ] as const) {
      const facts = factsAt(place, 3500, ident, 0);
      near(TRUTH.radial(facts), radial);
      expect(Math.abs(facts.distanceNm - nm)).toBeLessThan(WITHIN_NM);
    }
    const [haldrey, tamsel] = [factsAt(place, 3500, "HJL", 131), factsAt(place, 3500, "TXJ", 233)];
    const fix = twoLineFix(
      { station: stationOf("HJL").position, azimuth: TRUTH.plotTrue(stationDeg(131), haldrey) },
      { station: stationOf("TXJ").position, azimuth: TRUTH.plotTrue(stationDeg(233), tamsel) },
    );
    if (fix.kind !== "fix") throw new Error(fix.kind);
    expect(Math.abs(fix.cutDeg - 103)).toBeLessThan(1);
    const away = inverse(fix.position, placeOf(place));
    expect(away.distanceNm).toBeLessThan(WITHIN_NM);
  });
});
