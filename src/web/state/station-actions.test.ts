import { describe, expect, it } from "vitest";
import { inverse, latLon, magneticDeg, trueDeg } from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import { resolver, type Scene } from "../../scene/index.ts";
import { act } from "./actions.ts";

const station = (ident: string, latDeg: number, lonDeg: number): Station => ({
  ident,
  name: ident,
  kind: "VOR-DME",
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: latLon(latDeg, lonDeg),
  elevationFt: 0,
  dmeSite: null,
  declinationDeg: -9,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
});

const ABC = station("ABC", -10, 2);
const DEF = station("DEF", -11, 2);
const scene = (...stations: Station[]): Scene => ({
  title: "",
  about: "",
  date: "2026-07-01",
  stations,
  land: null,
  aircraft: { position: latLon(-10.3, 2), heading: magneticDeg(90), altitudeFt: 3500, tasKt: 100 },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [],
  signal: null,
  covers: [],
  ask: "",
});
const identsOf = (each: Scene) => each.stations.map(({ ident }) => ident);

describe("station actions", () => {
  it("hold each ident once, and the first stays", () => {
    const other = station("ABC", 40, 40);
    const set = act(scene(), { kind: "set-stations", stations: [ABC, DEF, other] });
    expect(set.stations).toEqual([ABC, DEF]);
    expect(act(set, { kind: "add-station", station: other })).toBe(set);
    expect(act(set, { kind: "change-station", ident: "DEF", station: other })).toBe(set);
  });

  it("let in no station that the engine cannot resolve", () => {
    const polar = station("POL", 84, 0);
    const withFarDme = { ...ABC, ident: "FAR", dmeSite: { position: latLon(81, 0), elevationFt: 0 } };
    const before = scene(ABC);
    expect(identsOf(act(before, { kind: "set-stations", stations: [polar, ABC, withFarDme] }))).toEqual([
      "ABC",
    ]);
    expect(act(before, { kind: "add-station", station: polar })).toBe(before);
    expect(act(before, { kind: "move-station", ident: "ABC", to: latLon(80.1, 0) })).toBe(before);
    const moved = act(before, { kind: "move-station", ident: "ABC", to: latLon(80, 0) });
    expect(() => resolver(moved.stations, null)(moved)).not.toThrow();
    expect(moved.stations[0]?.position.latDeg).toBe(80);
  });

  it("change, rename and take away the one that is named, in its place", () => {
    const before = scene(ABC, DEF);
    const renamed = act(before, { kind: "change-station", ident: "ABC", station: { ...ABC, ident: "XYZ" } });
    expect(identsOf(renamed)).toEqual(["XYZ", "DEF"]);
    expect(renamed.stations[1]).toBe(DEF);
    expect(identsOf(act(renamed, { kind: "remove-station", ident: "XYZ" }))).toEqual(["DEF"]);
    expect(act(renamed, { kind: "remove-station", ident: "ABC" })).toBe(renamed);
  });

  it("take a DME that stands apart along, as far and in the same direction", () => {
    const dmeSite = { position: latLon(-10.02, 2.03), elevationFt: 50 };
    const apart = inverse(ABC.position, dmeSite.position);
    const after = act(scene({ ...ABC, dmeSite }), {
      kind: "move-station",
      ident: "ABC",
      to: latLon(-12, 3),
    });
    const moved = after.stations[0]!;
    const now = inverse(moved.position, moved.dmeSite!.position);
    expect(now.distanceNm).toBeCloseTo(apart.distanceNm, 6);
    expect(now.kind === "line" && now.azimuth).toBeCloseTo(apart.kind === "line" ? apart.azimuth : NaN, 6);
  });

  it("give the very same scene where nothing changes", () => {
    const before = scene(ABC, DEF);
    expect(act(before, { kind: "set-stations", stations: [ABC, DEF] })).toBe(before);
    expect(act(before, { kind: "move-station", ident: "DEF", to: DEF.position })).toBe(before);
    expect(act(before, { kind: "change-station", ident: "DEF", station: DEF })).toBe(before);
  });
});

describe("the reflectors of a scene's signal", () => {
  const reflector = { ident: "ABC", position: { latDeg: -10, lonDeg: 2 }, amplitude: 0.1 };
  const spoilt: Scene = {
    ...scene(ABC, DEF),
    signal: { kind: "doppler", noiseDb: 25, reflectors: [reflector], propeller: null },
  };

  it("go with a station that is taken away, and stay with one that moves", () => {
    expect(act(spoilt, { kind: "remove-station", ident: "ABC" }).signal?.reflectors).toEqual([]);
    const to = { latDeg: -10.5, lonDeg: 2.5 };
    expect(act(spoilt, { kind: "move-station", ident: "ABC", to }).signal).toBe(spoilt.signal);
    expect(act(spoilt, { kind: "remove-station", ident: "DEF" }).signal).toBe(spoilt.signal);
  });

  it("follow a station that gets another ident, and leave one that gives no radials any more", () => {
    const renamed = { ...ABC, ident: "ABX" };
    expect(
      act(spoilt, { kind: "change-station", ident: "ABC", station: renamed }).signal?.reflectors,
    ).toEqual([{ ...reflector, ident: "ABX" }]);
    const distance: Station = { ...ABC, kind: "DME" };
    expect(
      act(spoilt, { kind: "change-station", ident: "ABC", station: distance }).signal?.reflectors,
    ).toEqual([]);
  });
});
