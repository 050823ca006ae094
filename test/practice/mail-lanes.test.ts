/**
 * The nav log of the isles' seven mail lanes, worked by another hand on a sphere of 3440.065 NM: radial out and in, miles, true track,
 * and for 100 kt in a wind of 140/18 heading, groundspeed and minutes. The reference functions must come to the same lines.
 */

import { describe, expect, it } from "vitest";
import { inverse, trueDeg, variation, wrap180 } from "../../src/earth/index.ts";
import { type Facts, TRUTH } from "../../src/practice/index.ts";
import { PRACTICE_ISLES } from "../practice-world.ts";
import { factsOn } from "./published-facts.ts";

const LANES = [
  ["HJL", "TXJ", 88, 267, 52, 77.9, 94, 90, 35],
  ["TXJ", "SRX", 164, 345, 64, 154.7, 159, 82, 47],
  ["SRX", "OXK", 265, 85, 64, 254.5, 253, 106, 36],
  ["OXK", "HJL", 355, 175, 66, 345.4, 358, 116, 34],
  ["HJL", "BJQ", 256, 76, 52, 245.9, 244, 103, 30],
  ["LJY", "HJL", 169, 350, 50, 160.4, 164, 83, 36],
  ["SRX", "HJL", 311, 131, 92, 300.8, 305, 117, 47],
] as const;

const stationOf = (ident: string) => {
  const found = PRACTICE_ISLES.stations.find((station) => station.ident === ident);
  if (found === undefined) throw new Error(`${ident} is not in the isles`);
  return found;
};

const lineBetween = (from: string, to: string) => {
  const line = inverse(stationOf(from).position, stationOf(to).position);
  if (line.kind !== "line") throw new Error(`${from} and ${to} are one place`);
  return line;
};

describe("a line of the nav log", () => {
  it.each(LANES)("%s to %s", (from, to, outDeg, inDeg, miles, trackDeg, headingDeg, speedKt, minutes) => {
    const line = lineBetween(from, to);
    const track = line.azimuth;
    const { variationDeg } = variation({
      position: stationOf(from).position,
      altitudeFt: 3_500,
      date: PRACTICE_ISLES.date,
    });
    const facts: Facts = {
      ...factsOn(0),
      azimuth: track,
      declinationDeg: stationOf(from).declinationDeg,
      variationDeg,
      wind: { from: trueDeg(140), speedKt: 18 },
    };
    const arriving: Facts = {
      ...facts,
      azimuth: lineBetween(to, from).azimuth,
      declinationDeg: stationOf(to).declinationDeg,
    };
    const offBy = (said: number, worked: number): number => Math.abs(wrap180(said - worked));
    // Half a degree of rounding and a fifth between the sphere and the ellipsoid; the heading's variation is another place's by a tenth or two.
    expect(offBy(TRUTH.radial(facts), outDeg)).toBeLessThan(0.75);
    expect(offBy(TRUTH.radial(arriving), inDeg)).toBeLessThan(0.75);
    expect(offBy(track, trackDeg)).toBeLessThan(0.25);
    expect(Math.abs(line.distanceNm - miles)).toBeLessThan(0.85);
    expect(offBy(TRUTH.planHeading(track, facts), headingDeg)).toBeLessThan(0.9);
    const worked = TRUTH.groundspeedKt(track, facts);
    expect(Math.abs(worked - speedKt)).toBeLessThan(0.75);
    expect(Math.abs((60 * line.distanceNm) / worked - minutes)).toBeLessThan(0.75);
  });
});
