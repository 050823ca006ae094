/** Published values of slant range, the overhead cone and flight plan points; each row names its source (rows/*.json). */

import { describe, expect, test } from "vitest";
import { FT_PER_NM, nmFromFt, stationDeg } from "../../src/earth/index.ts";
import {
  abeamToleranceNm,
  coneRadiusNm,
  elevationAngleDeg,
  flightPlanPoint,
  groundRangeByPansOpsNm,
  groundRangeNm,
  isInCone,
  readSignificantPoint,
  slantErrorIsNegligible,
  slantRangeNm,
  timeAcrossConeS,
  VOR_CONE_HALF_ANGLE_DEG,
} from "../../src/radio/index.ts";
import { checkRows, numberIn, type PublishedRow, type RowValues, textIn } from "./published-rows.ts";
import dmeSlant from "./rows/dme-slant.json" with { type: "json" };
import flightPlanPoints from "./rows/flight-plan-point.json" with { type: "json" };
import stationPassage from "./rows/station-passage.json" with { type: "json" };

/** Of a non-directional beacon (ICAO Doc 8168 Vol I, Part I, Section 2, 2.4.4.2; station-passage-c002). */
const NDB_CONE_HALF_ANGLE_DEG = 40;

checkRows({ name: "dme-slant", rows: dmeSlant, knownRows: 16, ours: slant });
checkRows({ name: "station-passage", rows: stationPassage, knownRows: 8, ours: passage });
checkRows({ name: "flight-plan-point", rows: flightPlanPoints, knownRows: 8, ours: point });

function slant({ what, inputs }: PublishedRow): RowValues {
  if (what === "Horizontal distance by the PANS-OPS conversion")
    return {
      horizontal_nm: groundRangeByPansOpsNm(
        numberIn(inputs, "slant_nm"),
        numberIn(inputs, "height_kft") * 1000,
      ),
    };
  const heightFt = numberIn(inputs, "height_ft");
  if (what === "Horizontal distance from slant range")
    return { horizontal_nm: groundRangeNm(numberIn(inputs, "slant_nm"), heightFt) };
  const horizontalNm =
    "horizontal_ft" in inputs
      ? nmFromFt(numberIn(inputs, "horizontal_ft"))
      : numberIn(inputs, "horizontal_nm");
  const slantNm = slantRangeNm(horizontalNm, heightFt);
  return { slant_nm: slantNm, slant_ft: slantNm * FT_PER_NM, error_nm: slantNm - horizontalNm };
}

function passage({ inputs }: PublishedRow): RowValues {
  const heightFt = numberIn(inputs, "height_ft");
  if ("horizontal_nm" in inputs) {
    const horizontalNm = numberIn(inputs, "horizontal_nm");
    return {
      elevation_deg: elevationAngleDeg(heightFt, horizontalNm),
      inside_cone: isInCone(heightFt, horizontalNm),
    };
  }
  return {
    vor_cone_radius_nm: coneRadiusNm(heightFt),
    ndb_cone_radius_nm: coneRadiusNm(heightFt, NDB_CONE_HALF_ANGLE_DEG),
    abeam_deviation_nm: abeamToleranceNm(heightFt),
    ...("groundspeed_kt" in inputs && {
      time_across_vor_cone_s: timeAcrossConeS(heightFt, numberIn(inputs, "groundspeed_kt")),
    }),
  };
}

function point({ what, inputs }: PublishedRow): RowValues {
  if (what === "Write a point")
    return {
      text: flightPlanPoint({
        ident: textIn(inputs, "ident"),
        radial: stationDeg(numberIn(inputs, "bearing_magnetic_deg")),
        distanceNm: numberIn(inputs, "distance_nm"),
      }),
    };
  const read = readSignificantPoint(textIn(inputs, "text"));
  if (read.kind === "unreadable") throw new Error(read.reason);
  return read.point.kind === "place"
    ? { lat_deg: read.point.position.latDeg, lon_deg: read.point.position.lonDeg }
    : {
        ident: read.point.ident,
        bearing_magnetic_deg: read.point.radial,
        distance_nm: read.point.distanceNm,
      };
}

describe("published constants of range and passage", () => {
  test("the cone is 50 degrees to each side of the vertical (station-passage-c001, ICAO Doc 8168 2.4.4.1)", () => {
    expect(VOR_CONE_HALF_ANGLE_DEG).toBe(50);
    const onTheEdge = elevationAngleDeg(10_000, coneRadiusNm(10_000));
    // 40 degrees of elevation is the top of the coverage in ICAO Annex 10 (vor-signal-c012, from memory).
    expect(Math.abs(onTheEdge - 40)).toBeLessThan(1e-9);
  });

  test("a DME 3000 ft below and half a mile away reads 0.703, not the handbook's 0.6 (dme-slant-c004)", () => {
    expect(Math.abs(slantRangeNm(0.5, 3000) - 0.703)).toBeLessThanOrEqual(0.0005);
  });

  test("slant error is negligible from one mile per 1000 ft out (dme-slant-c002, FAA-H-8083-15B chapter 9)", () => {
    expect(slantErrorIsNegligible(6, 6000)).toBe(true);
    expect(slantErrorIsNegligible(5.99, 6000)).toBe(false);
  });

  test("the Doc 4444 example DUB180040 is read and written back (flight-plan-point-c001)", () => {
    const read = readSignificantPoint("DUB180040");
    expect(read).toMatchObject({
      kind: "read",
      point: { kind: "station-point", ident: "DUB", radial: 180, distanceNm: 40 },
    });
    expect(flightPlanPoint({ ident: "DUB", radial: stationDeg(180), distanceNm: 40 })).toBe("DUB180040");
  });
});
