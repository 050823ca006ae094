import { describe, expect, it } from "vitest";
import { latLon } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import { indexStations, searchStations } from "./search.ts";

const station = (
  ident: string,
  name: string,
  frequencyMhz: number,
  at: readonly [number, number],
  kind: Station["kind"] = "VOR",
  dmeChannel: string | null = null,
): Station => ({
  ident,
  name,
  kind,
  frequencyMhz,
  dmeChannel,
  position: latLon(...at),
  elevationFt: 0,
  dmeSite: null,
  declinationDeg: 0,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
});

// Invented names and places.
const LIST = [
  station("TXJ", "Tamsel", 115.6, [-10.15, 2.3], "VOR-DME", "103X"),
  station("TAM", "Port Aldermoor", 115.65, [-10, 2.4], "VOR-DME", "103Y"),
  station("TX", "Sulbrück", 116.5, [-11, 2.5]),
  station("QAM", "North Tamsel Head", 113.9, [40, 40], "VORTAC", "86X"),
  station("QBM", "Brevane", 115.6, [41, 40]),
];
const INDEX = indexStations(LIST);
const HERE = latLon(-10.3, 2);
const idents = (query: string, from: typeof HERE | null = HERE) =>
  searchStations(INDEX, query, from, 10).stations.map(({ ident }) => ident);

describe("finding stations", () => {
  it("by ident: the exact one first, then those that begin so", () => {
    expect(idents("TX")).toEqual(["TX", "TXJ"]);
    expect(idents("txj")).toEqual(["TXJ"]);
  });

  it("by name, whole before begun, a first word before a later one", () => {
    expect(idents("tamsel")).toEqual(["TXJ", "QAM"]);
    expect(idents("tam")).toEqual(["TAM", "TXJ", "QAM"]);
    expect(idents("head")).toEqual(["QAM"]);
    expect(idents("dermoor")).toEqual(["TAM"]);
  });

  it("by frequency: the channel itself before its neighbours, with point or comma, and with MHz", () => {
    expect(idents("115.6")).toEqual(["TXJ", "QBM", "TAM"]);
    expect(idents("115,60 MHz")).toEqual(["TXJ", "QBM"]);
    expect(idents("115.600")).toEqual(["TXJ", "QBM"]);
    expect(idents("115")).toEqual(["TXJ", "TAM", "QBM"]);
    expect(idents("117.9")).toEqual([]);
  });

  it("by DME channel and by kind", () => {
    expect(idents("103x")).toEqual(["TXJ"]);
    expect(idents("vortac")).toEqual(["QAM"]);
  });

  it("by several words, all of which must fit", () => {
    expect(idents("tamsel 115.6")).toEqual(["TXJ"]);
    expect(idents("tamsel 117.3")).toEqual([]);
  });

  it("without minding accents or case", () => {
    expect(idents("SULBRUCK")).toEqual(["TX"]);
    expect(idents("sulbrück")).toEqual(["TX"]);
  });

  it("puts the nearer of equals first, and goes by ident where distance may not be told", () => {
    expect(idents("115.60")).toEqual(["TXJ", "QBM"]);
    expect(searchStations(INDEX, "115.60", latLon(41, 41), 10).stations[0]?.ident).toBe("QBM");
    expect(idents("115.60", null)).toEqual(["QBM", "TXJ"]);
  });

  it("gives all for nothing asked, as many as wanted, and counts the rest", () => {
    const found = searchStations(INDEX, "  ", HERE, 2);
    expect(found.stations.map(({ ident }) => ident)).toEqual(["TXJ", "TAM"]);
    expect(found.total).toBe(5);
  });

  it("says what was likely meant where nothing fits, and not for a frequency", () => {
    expect(searchStations(INDEX, "tamsle", HERE, 5)).toMatchObject({ total: 0, meant: "Tamsel" });
    expect(searchStations(INDEX, "txk", HERE, 5).meant).toBe("TXJ");
    expect(searchStations(INDEX, "112.05", HERE, 5).meant).toBeNull();
    expect(searchStations(INDEX, "zzzzzzzz", HERE, 5).meant).toBeNull();
  });
});
