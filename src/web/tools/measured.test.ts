import { describe, expect, it } from "vitest";
import { chartProjection } from "../../draw/index.ts";
import { direct, latLon, magneticDeg, trueDeg, variation } from "../../earth/index.ts";
import type { Station, StationKind } from "../../radio/index.ts";
import type { Scene } from "../../scene/index.ts";
import { type MeasureEnd, measured, measuredLines, measuredSentence } from "./measured.ts";
import { SNAP_PX, snappedEnd } from "./snap.ts";

const station = (
  ident: string,
  latDeg: number,
  lonDeg: number,
  declinationDeg: number,
  kind: StationKind = "VOR-DME",
): Station => ({
  ident,
  name: ident,
  kind,
  frequencyMhz: 115.6,
  dmeChannel: "103X",
  position: latLon(latDeg, lonDeg),
  elevationFt: 0,
  dmeSite: null,
  declinationDeg,
  declinationEstimated: false,
  vorClass: null,
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
});

const minutes = (degrees: number, min: number) => degrees + min / 60;
const TXJ = station("TXJ", -minutes(10, 9), minutes(2, 19), -9);
const SRX = station("SRX", -minutes(11, 7), minutes(2, 47), -10);
const TEST = station("PJT", -10.52, 1.557, 0, "VOT");
const FIELD = {
  name: "Tamsel Lagoon",
  position: latLon(-minutes(10, 10.5), minutes(2, 17)),
  elevationFt: 9,
  runway: null,
};

const SCENE: Scene = {
  title: "",
  about: "",
  date: "2026-07-01",
  stations: [TXJ, SRX, TEST],
  land: { name: "", islands: [], relief: [], peaks: [], airfields: [FIELD] },
  // The demo's golden scene G3: radial 246 of TXJ, 18.0 NM.
  aircraft: {
    position: latLon(-minutes(10, 18.8), minutes(2, 3.7)),
    heading: magneticDeg(90),
    altitudeFt: 3500,
    tasKt: 100,
  },
  wind: { from: trueDeg(0), speedKt: 0 },
  receivers: [],
  signal: null,
  covers: [],
  ask: "",
};
const AIRCRAFT: MeasureEnd = { kind: "aircraft" };
const at = (ident: string): MeasureEnd => ({ kind: "station", ident });

const read = (from: MeasureEnd, to: MeasureEnd, scene: Scene = SCENE) => {
  const reading = measured({ from, to }, scene);
  if (reading === null) throw new Error("nothing was measured");
  return reading;
};

describe("measuring", () => {
  it("from a station reads its radial by its own north, and magnetic by today's", () => {
    const reading = read(at("TXJ"), AIRCRAFT);
    expect(reading.distanceNm).toBeCloseTo(18, 1);
    // Station north lies 9 west of true; today's magnetic north at TXJ by the model (-7.16 by the demo's table).
    expect(reading.radialOut).toBeCloseTo(246, 0);
    expect(reading.bearing?.true).toBeCloseTo((reading.radialOut ?? 0) - 9, 9);
    const { variationDeg } = variation({ position: TXJ.position, altitudeFt: 3500, date: SCENE.date });
    expect(variationDeg).toBeCloseTo(-7.16, 1);
    expect(reading.bearing?.magnetic).toBeCloseTo((reading.bearing?.true ?? 0) - variationDeg, 9);
    expect(measuredLines(reading)).toEqual(["from TXJ: radial 246, 18.0 NM", "237 true, 244 magnetic"]);
    expect(measuredSentence(reading)).toBe(
      "from TXJ: radial 246, 18.0 NM to the aircraft; 237 true, 244 magnetic",
    );
  });

  it("to a station says on which of its radials one is", () => {
    const reading = read(AIRCRAFT, at("TXJ"));
    expect(reading.radialOut).toBeNull();
    expect(reading.radialIn).toBeCloseTo(246, 0);
    expect(measuredLines(reading)).toEqual(["to TXJ: 18.0 NM, on its radial 246", "057 true, 064 magnetic"]);
  });

  it("between two stations reads the radials of the mail lane ML2: TXJ 164, SRX 345, 64 NM, 154.7 true", () => {
    const reading = read(at("TXJ"), at("SRX"));
    // The lane's figures are worked on a sphere, whose azimuths differ from the ellipsoid's by up to 0.2 degree here.
    expect(Math.abs((reading.bearing?.true ?? 0) - 154.7)).toBeLessThan(0.2);
    expect(Math.abs((reading.radialIn ?? 0) - (154.7 + 180 + 10))).toBeLessThan(0.3);
    expect(measuredLines(reading)).toEqual([
      "from TXJ: radial 164, 64.0 NM",
      "155 true, 162 magnetic, on SRX radial 344",
    ]);
  });

  it("between bare places reads bearings and miles, both ends named in the sentence", () => {
    const field: MeasureEnd = { kind: "airfield", name: FIELD.name };
    const place: MeasureEnd = { kind: "place", at: latLon(-10.5, 2) };
    const reading = read(field, place);
    const [miles = "", bearings] = measuredLines(reading);
    expect(miles).toMatch(/^from Tamsel Lagoon: \d+\.\d NM$/);
    expect(bearings).toMatch(/^\d{3} true, \d{3} magnetic$/);
    expect(measuredSentence(reading)).toBe(`${miles} to 10°30.0′S 002°00.0′E; ${bearings}`);
    expect(measuredLines(read(place, field))[0]).toMatch(/^to Tamsel Lagoon: \d+\.\d NM$/);
    const bare = read(place, { kind: "place", at: latLon(-10.25, 2) });
    expect(measuredLines(bare)[0]).toBe("14.9 NM");
    expect(measuredSentence(bare)).toMatch(/^14\.9 NM from 10°30\.0′S 002°00\.0′E to 10°15\.0′S/);
  });

  it("gives a test signal no radial, for it sends one and the same everywhere", () => {
    const reading = read(at("PJT"), at("TXJ"));
    expect(reading.radialOut).toBeNull();
    expect(reading.radialIn).not.toBeNull();
  });

  it("follows the aircraft, and is silent where a cover hides it or a station has gone", () => {
    const moved = {
      ...SCENE,
      aircraft: { ...SCENE.aircraft, position: direct(TXJ.position, trueDeg(91), 30) },
    };
    expect(measuredLines(read(at("TXJ"), AIRCRAFT, moved))[0]).toBe("from TXJ: radial 100, 30.0 NM");
    for (const cover of ["aircraft", "chart"])
      expect(measured({ from: at("TXJ"), to: AIRCRAFT }, { ...SCENE, covers: [cover] })).toBeNull();
    expect(measured({ from: at("HJL"), to: AIRCRAFT }, SCENE)).toBeNull();
  });

  it("has no direction where both ends are one place", () => {
    expect(measuredLines(read(at("TXJ"), at("TXJ")))).toEqual(["0.0 NM, the same place"]);
  });
});

describe("snapping", () => {
  const projection = chartProjection({ centre: latLon(-10.3, 2.1), widthNm: 100 }, 800, 700);
  const beside = (place: { latDeg: number; lonDeg: number }, byPx: number) => {
    const { x, y } = projection.toPaper(place);
    return { x: x + byPx, y };
  };

  it("takes station, airfield and aircraft within ten pixels", () => {
    expect(snappedEnd(beside(TXJ.position, SNAP_PX - 0.01), SCENE, projection)).toEqual(at("TXJ"));
    expect(snappedEnd(beside(FIELD.position, -9), SCENE, projection)).toEqual({
      kind: "airfield",
      name: FIELD.name,
    });
    expect(snappedEnd(beside(SCENE.aircraft.position, 9), SCENE, projection)).toEqual(AIRCRAFT);
  });

  it("takes the bare place beyond", () => {
    const point = beside(SCENE.aircraft.position, SNAP_PX + 0.5);
    const end = snappedEnd(point, SCENE, projection);
    expect(end).toEqual({ kind: "place", at: projection.toWorld(point.x, point.y) });
  });

  it("takes the nearer of two", () => {
    const close = { ...SCENE, stations: [TXJ, { ...SRX, position: direct(TXJ.position, trueDeg(90), 1.5) }] };
    expect(snappedEnd(beside(TXJ.position, 2), close, projection)).toEqual(at("TXJ"));
    expect(snappedEnd(beside(TXJ.position, 10), close, projection)).toEqual(at("SRX"));
  });

  it("does not give away a covered aircraft", () => {
    const covered = { ...SCENE, covers: ["aircraft"] };
    expect(snappedEnd(beside(SCENE.aircraft.position, 0), covered, projection).kind).toBe("place");
  });

  it("means by an ident that stands twice only the first", () => {
    const twice = { ...SCENE, stations: [TXJ, { ...SRX, ident: "TXJ" }] };
    expect(snappedEnd(beside(SRX.position, 0), twice, projection)).toEqual({
      kind: "place",
      at: SRX.position,
    });
  });
});
