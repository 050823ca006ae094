import { describe, expect, it } from "vitest";
import {
  direct,
  geodesicDistanceNm,
  inverse,
  latLon,
  magneticDeg,
  magneticFromTrue,
  stationFromTrue,
  trueDeg,
  variation,
} from "../../earth/index.ts";
import type { Station } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import { act } from "../state/actions.ts";
import { beginningNear, cruisingAltitudeFt } from "./fly-there.ts";
import { joinedLists, ownStations, stationKey } from "./station-lists.ts";
import { MOST_NEIGHBOURS, visitStation } from "./visit.ts";

const MIDDLE = latLon(45, 8);

const station = (ident: string, milesEast: number, change: Partial<Station> = {}): Station => ({
  ident,
  name: ident,
  kind: "VOR-DME",
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: direct(MIDDLE, trueDeg(90), milesEast),
  elevationFt: 800,
  dmeSite: null,
  declinationDeg: 1,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
  ...change,
});

const sceneAt = (milesEast: number, stations: readonly Station[]): Scene => ({
  title: "",
  about: "",
  date: "2026-07-01",
  stations,
  land: null,
  aircraft: {
    position: direct(MIDDLE, trueDeg(90), milesEast),
    heading: magneticDeg(90),
    altitudeFt: 3500,
    tasKt: 100,
  },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [],
  signal: null,
  covers: [],
  ask: "",
});

const stationsAfter = (scene: Scene, published: readonly Station[], chosen: Station): readonly Station[] => {
  const visit = visitStation(scene, published, chosen);
  if (visit.kind === "refused") throw new Error(visit.sentence);
  return visit.stations;
};
const idents = (stations: readonly Station[]) => stations.map(({ ident }) => ident);

const HOME = station("HOM", 0);
const NEAR = station("NEA", 140);
const JUST_TOO_FAR = station("TOO", 152);
const FAR = station("FAR", 1000);
const FAR_BESIDE = station("FAB", 1100);
const PUBLISHED = [HOME, NEAR, JUST_TOO_FAR, FAR, FAR_BESIDE];

describe("visiting a station", () => {
  it("brings it in with the neighbours within 150 NM, the nearest first", () => {
    expect(idents(stationsAfter(sceneAt(0, []), PUBLISHED, HOME))).toEqual(["HOM", "NEA"]);
    expect(idents(stationsAfter(sceneAt(0, []), PUBLISHED, NEAR))).toEqual(["NEA", "TOO", "HOM"]);
  });

  it("leaves what the aircraft can still receive, and drops it once the aircraft has gone", () => {
    const before = sceneAt(0, [HOME, NEAR]);
    expect(idents(stationsAfter(before, PUBLISHED, FAR))).toEqual(["HOM", "NEA", "FAR", "FAB"]);
    const flown = { ...before, aircraft: sceneAt(980, []).aircraft };
    expect(idents(stationsAfter(flown, PUBLISHED, FAR))).toEqual(["FAR", "FAB"]);
  });

  it("never drops a station that no list could bring back", () => {
    const own = station("OWN", 20);
    const after = stationsAfter(sceneAt(980, [own, HOME]), PUBLISHED, FAR);
    expect(idents(after)).toEqual(["OWN", "FAR", "FAB"]);
    expect(after[0]).toBe(own);
  });

  it("keeps the scene's version of a station it has", () => {
    const silent = { ...HOME, status: "silent" as const };
    expect(stationsAfter(sceneAt(0, [silent]), PUBLISHED, HOME)[0]).toBe(silent);
  });

  it("holds each ident once: the chosen one goes before a published namesake, never before one's own", () => {
    const namesake = station("HOM", 900, { frequencyMhz: 113.9, dmeChannel: "86X" });
    const lists = [...PUBLISHED, namesake];
    const visited = stationsAfter(sceneAt(0, [HOME, NEAR]), lists, namesake);
    expect(visited.filter(({ ident }) => ident === "HOM")).toEqual([namesake]);
    const own = visitStation(sceneAt(0, [station("HOM", 5)]), lists, namesake);
    expect(own).toMatchObject({ kind: "refused" });
    expect(own.kind === "refused" && own.sentence).toContain("ident HOM already");
  });

  it("refuses a station near a pole in one sentence, and leaves such neighbours out", () => {
    const polar = station("POL", 0, { position: latLon(81, 8) });
    expect(visitStation(sceneAt(0, []), [polar], polar)).toEqual({
      kind: "refused",
      sentence: "POL stands poleward of 80 degrees, where radials have no use.",
    });
    const below = station("BEL", 0, { position: latLon(79.5, 8) });
    expect(idents(stationsAfter(sceneAt(0, []), [polar, below], below))).toEqual(["BEL"]);
  });

  it("takes no more neighbours than a chart can show", () => {
    const crowd = Array.from({ length: 200 }, (_, index) => station(`C${index}`, index / 2));
    const after = stationsAfter(sceneAt(0, []), crowd, crowd[0]!);
    expect(after.length).toBe(MOST_NEIGHBOURS + 1);
    expect(after.at(-1)?.ident).toBe("C60");
  });

  it("estimates a missing declination for the scene's own date", () => {
    const estimated = station("EST", 0, { declinationEstimated: true, declinationDeg: 99 });
    const [after] = stationsAfter(sceneAt(0, []), [estimated], estimated);
    const expected = variation({ position: estimated.position, altitudeFt: 800, date: "2026-07-01" });
    expect(after?.declinationDeg).toBe(expected.variationDeg);
    expect(after?.declinationEstimated).toBe(true);
  });

  it("is an action that the scene takes whole", () => {
    const before = sceneAt(0, [HOME]);
    const stations = stationsAfter(before, PUBLISHED, FAR);
    expect(act(before, { kind: "set-stations", stations }).stations).toEqual(stations);
    expect(act(before, { kind: "set-stations", stations: stationsAfter(before, [HOME], HOME) })).toBe(before);
  });
});

describe("flying there", () => {
  it("begins 20 NM out on the radial the aircraft is on, to ten degrees, and heads for the station", () => {
    const scene = sceneAt(-900, []);
    const begin = beginningNear(HOME, scene);
    const out = inverse(HOME.position, begin.position);
    expect(out.distanceNm).toBeCloseTo(20, 9);
    const now = inverse(HOME.position, scene.aircraft.position);
    if (out.kind !== "line" || now.kind !== "line") throw new Error("no direction");
    const radial = stationFromTrue(out.azimuth, HOME.declinationDeg);
    expect(radial % 10).toBeCloseTo(0, 6);
    expect(Math.abs(radial - stationFromTrue(now.azimuth, HOME.declinationDeg))).toBeLessThanOrEqual(5);
    expect(begin.radial).toBeCloseTo(radial, 6);
    const back = inverse(begin.position, HOME.position);
    const { variationDeg } = variation({ position: begin.position, altitudeFt: 3500, date: scene.date });
    const heading = back.kind === "line" ? magneticFromTrue(back.azimuth, variationDeg) : Number.NaN;
    expect(Math.abs(begin.heading - heading)).toBeLessThanOrEqual(0.5);
  });

  it("begins somewhere even from right above the station", () => {
    const begin = beginningNear(HOME, sceneAt(0, []));
    expect(geodesicDistanceNm(HOME.position, begin.position)).toBeCloseTo(20, 9);
  });

  it("keeps 1,000 ft above the peaks within 25 NM", () => {
    const peak = { name: "Peak", position: MIDDLE, elevationFt: 9200, baseRadiusNm: 5 };
    const land = { name: "", islands: [], relief: [], peaks: [peak], airfields: [] };
    const begin = beginningNear(HOME, { ...sceneAt(-300, []), land });
    expect(begin.altitudeFt).toBeGreaterThanOrEqual(10_200);
    const faraway = { ...land, peaks: [{ ...peak, position: direct(MIDDLE, trueDeg(0), 40) }] };
    expect(beginningNear(HOME, { ...sceneAt(-300, []), land: faraway }).altitudeFt).toBeLessThan(6000);
  });

  // 14 CFR 91.159 (a), from memory: magnetic course 0 to 179, odd thousands plus 500 ft; 180 to 359, even thousands plus 500 ft.
  it.each([
    [0, 3000, 3500],
    [179, 3501, 5500],
    [179.4, 3500, 3500],
    [180, 3000, 4500],
    [359, 4500, 4500],
    [359, 4501, 6500],
    [90, 9000, 9500],
    [270, 9000, 10_500],
    [45, -200, 3500],
  ])("on course %d at or above %d ft cruises at %d ft", (course, atLeastFt, cruisingFt) => {
    expect(cruisingAltitudeFt(magneticDeg(course), atLeastFt)).toBe(cruisingFt);
  });
});

describe("lists of stations", () => {
  it("are joined with each station once, as the first list has it", () => {
    const other = { ...HOME, status: "test" as const };
    expect(joinedLists([HOME], [other, NEAR])).toEqual([HOME, NEAR]);
  });

  it("tell one's own from the published, and know none where a table brought them", () => {
    const keys = new Set([HOME, NEAR].map(stationKey));
    const own = station("OWN", 3);
    expect(ownStations([HOME, own, NEAR], keys)).toEqual([own]);
    expect(ownStations([own, station("OWN", 9)], keys)).toEqual([]);
    const many = Array.from({ length: 25 }, (_, index) => station(`M${index}`, index));
    expect(ownStations(many, keys)).toEqual([]);
    expect(ownStations(many.slice(0, 24), keys)).toHaveLength(24);
  });
});
