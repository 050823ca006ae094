import { describe, expect, it } from "vitest";
import type { Station } from "../../radio/index.ts";
import { channelStepped, readTuning, stationsOn } from "./tuning.ts";

const station = (ident: string, frequencyMhz: number): Station => ({
  ident,
  name: ident,
  kind: "VOR-DME",
  frequencyMhz,
  dmeChannel: null,
  position: { latDeg: 0, lonDeg: 0 },
  elevationFt: 0,
  dmeSite: null,
  declinationDeg: 0,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 100,
});
const STATIONS = [station("TXJ", 115.6), station("HJL", 113.9)];

describe("readTuning", () => {
  it("takes a VOR frequency or an ident of the scene, in either case", () => {
    for (const text of ["115.6", "115.60", " 115.60 MHz", "txj"])
      expect(readTuning(text, STATIONS)).toEqual({ kind: "tune", frequencyMhz: 115.6 });
  });

  it("refuses a localizer channel, a number off the steps, another band and an unknown ident, each in a sentence", () => {
    const said = (text: string) => {
      const read = readTuning(text, STATIONS);
      return read.kind === "refused" ? read.sentence : "";
    };
    expect(said("108.10")).toMatch(/localizer channel.*even tenth.*108\.05 and 108\.20/);
    expect(said("115.62")).toMatch(/not on the 50 kHz steps/);
    expect(said("121.50")).toMatch(/outside the navigation band/);
    expect(said("abc")).toMatch(/no station here sends ABC; this scene has TXJ, HJL/);
    expect(said("115,6")).toMatch(/not a frequency/);
    expect(said("")).toMatch(/not a frequency/);
  });
});

describe("channelStepped", () => {
  it("steps over the localizer channels below 112 MHz", () => {
    expect(channelStepped(108.05, 1)).toBe(108.2);
    expect(channelStepped(108.2, -1)).toBe(108.05);
    expect(channelStepped(111.85, 1)).toBe(112);
  });

  it("ends at the ends of the band", () => {
    expect(channelStepped(117.95, 1)).toBe(117.95);
    expect(channelStepped(108, -20)).toBe(108);
  });
});

it("finds the stations of a channel", () => {
  expect(stationsOn(113.9, STATIONS).map(({ ident }) => ident)).toEqual(["HJL"]);
  expect(stationsOn(112, STATIONS)).toEqual([]);
});
