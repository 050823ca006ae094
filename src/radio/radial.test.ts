import { expect, test } from "vitest";
import { trueDeg } from "../earth/index.ts";
import { radialToward } from "./radial.ts";
import type { Station } from "./station.ts";

const station: Station = {
  ident: "TXJ",
  name: "Teltrax",
  kind: "VORTAC",
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: { latDeg: -10, lonDeg: 2 },
  elevationFt: 300,
  dmeSite: null,
  declinationDeg: -10,
  declinationEstimated: false,
  vorClass: "VH",
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
};

test("a station aligned 10 degrees west numbers its radials 10 above the true azimuth", () => {
  expect(radialToward(station, trueDeg(90))).toBe(100);
  expect(radialToward(station, trueDeg(355))).toBe(5);
});

test("a test station sends 000 in every direction (FAA AIM 1-1-4)", () => {
  for (const azimuth of [0, 90, 213.7, 359.9])
    expect(radialToward({ ...station, kind: "VOT" }, trueDeg(azimuth))).toBe(0);
});
