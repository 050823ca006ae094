/** Good files: what each way of writing a value means, and where stations, land and defaults come from. */

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { direct, inverse, stationDeg, trueFromStation, variation } from "../src/earth/index.ts";
import { faultLine, type Open, readLand, readScene, readStations } from "../src/scene/index.ts";
import {
  changed,
  LAND_TEXT,
  openFrom,
  read,
  SCENE_TEXT,
  STATIONS_TEXT,
  sceneFrom,
  tableText,
} from "./scene-files.ts";

const TXJ = { latDeg: -(10 + 9 / 60), lonDeg: 2 + 19 / 60 };

test("the scene of the design is read whole", () => {
  const scene = sceneFrom(SCENE_TEXT);
  expect(scene).toMatchObject({
    title: "Which way to the course?",
    about: "",
    date: "2026-06-01",
    land: null,
    aircraft: { heading: 90, altitudeFt: 3500, tasKt: 100 },
    wind: { from: 140, speedKt: 18 },
    receivers: [
      { name: "NAV1", frequencyMhz: 115.6, course: 70, face: "cdi", bearingErrorDeg: 0 },
      { name: "NAV2", frequencyMhz: 113.9, course: 180, face: "hsi", bearingErrorDeg: 0 },
    ],
    covers: ["NAV1.needle"],
    ask: "Which way is the course?",
  });
  expect(scene.stations).toHaveLength(2);
  expect(scene.stations[0]).toEqual({
    ident: "HJL",
    name: "Haldrey",
    kind: "VORTAC",
    frequencyMhz: 113.9,
    dmeChannel: "86X",
    position: { latDeg: -(10 + 20 / 60), lonDeg: 1 + 27 / 60 },
    elevationFt: 1240,
    dmeSite: null,
    declinationDeg: -10,
    declinationEstimated: false,
    vorClass: "VH",
    dmeClass: "DH",
    status: "on-air",
    eirpW: 200,
  });
});

test("a place from a station lies on the radial by the station's own north, that far over the ground", () => {
  const { position } = sceneFrom(SCENE_TEXT).aircraft;
  // Radial 246 of a station aligned 9 west is 237 true.
  const line = inverse(TXJ, position);
  expect(line.kind === "line" && line.azimuth).toBeCloseTo(237, 9);
  expect(line.distanceNm).toBeCloseTo(18, 9);
});

const PLACE = direct(TXJ, trueFromStation(stationDeg(246), -9), 18);
test.each([
  ["TXJ 246/18", PLACE, 9],
  ["txj 246/18", PLACE, 9],
  ["TXJ 246/18.0", PLACE, 9],
  ["TXJ246018", PLACE, 9],
  ["10°18.8′S 002°03.7′E", { latDeg: -(10 + 18.8 / 60), lonDeg: 2 + 3.7 / 60 }, 9],
  ["S10 18.8 E002 03.7", { latDeg: -(10 + 18.8 / 60), lonDeg: 2 + 3.7 / 60 }, 9],
  ["10°18'48\"S 002°03'42\"E", { latDeg: -(10 + 18.8 / 60), lonDeg: 2 + 3.7 / 60 }, 9],
  ["-10.5, 2.25", { latDeg: -10.5, lonDeg: 2.25 }, 12],
  ["1030S00215E", { latDeg: -10.5, lonDeg: 2.25 }, 12],
  ["{ lat: -10.5, lon: 2.25 }", { latDeg: -10.5, lonDeg: 2.25 }, 12],
  ["{ lon: 2°15′E, lat: 10°30′S }", { latDeg: -10.5, lonDeg: 2.25 }, 12],
  ["[-10.5, 2.25]", { latDeg: -10.5, lonDeg: 2.25 }, 12],
])("at: %s", (text, expected, digits) => {
  const { position } = sceneFrom(changed(SCENE_TEXT, "TXJ 246/18", text)).aircraft;
  expect(position.latDeg).toBeCloseTo(expected.latDeg, digits);
  expect(position.lonDeg).toBeCloseTo(expected.lonDeg, digits);
});

test.each([
  ["000", 0],
  ["0", 0],
  ["360", 0],
  ["060", 60],
  ["60", 60],
  ["070.5", 70.5],
  ['"060"', 60],
])("heading and course %s", (text, expected) => {
  expect(sceneFrom(changed(SCENE_TEXT, "heading: 090", `heading: ${text}`)).aircraft.heading).toBe(expected);
  expect(sceneFrom(changed(SCENE_TEXT, "course: 070", `course: ${text}`)).receivers[0]?.course).toBe(
    expected,
  );
});

test.each([
  ["10W", -10],
  ["10 W", -10],
  ["10°W", -10],
  ["-10", -10],
  ["10E", 10],
  ["10.5 E", 10.5],
  ["+7.25", 7.25],
  ["0", 0],
  ["0W", 0],
])("declination %s is %d degrees, east positive", (text, expected) => {
  const stations = changed(STATIONS_TEXT, "10W", text);
  const station = sceneFrom(SCENE_TEXT, { "isles.yaml": stations }).stations[0];
  expect(station).toMatchObject({ declinationDeg: expected, declinationEstimated: false });
});

test("a declination that is not given is the model's variation there on the scene's day, and marked", () => {
  const stations = changed(STATIONS_TEXT, "    declination: 9W\n", "");
  for (const date of ["2026-06-01", "2021-06-01"]) {
    const scene = sceneFrom(changed(SCENE_TEXT, "2026-06-01", date), { "isles.yaml": stations });
    const { variationDeg } = variation({ position: TXJ, altitudeFt: 22, date });
    expect(scene.stations[1]).toMatchObject({ declinationDeg: variationDeg, declinationEstimated: true });
  }
});

// Each of these YAML alone would take for a number, a truth value or nothing.
test.each(["NO", "ON", "Y", "TRUE", "NULL", "1E5", "0123", "123", "007", "1", "INF"])(
  "the ident %s stays what was written",
  (ident) => {
    const stations = changed(STATIONS_TEXT, "ident: HJL", `ident: ${ident}`);
    const scene = sceneFrom(changed(SCENE_TEXT, "HJL", ident), { "isles.yaml": stations });
    expect(scene.stations[0]?.ident).toBe(ident);
    expect(scene.receivers[1]?.frequencyMhz).toBe(113.9);
  },
);

test.each([
  ["115.60", 115.6],
  ["115.6", 115.6],
  ['"115.60"', 115.6],
  ["115.60 MHz", 115.6],
  ["117", 117],
  ["TXJ", 115.6],
  ["txj", 115.6],
])("tune: %s", (text, expected) => {
  expect(sceneFrom(changed(SCENE_TEXT, "115.60", text)).receivers[0]?.frequencyMhz).toBe(expected);
});

test.each([
  ["calm", 0, 0],
  ["Calm", 0, 0],
  ["360/10", 0, 10],
  ["005/7.5", 5, 7.5],
])("wind: %s", (text, from, speedKt) => {
  expect(sceneFrom(changed(SCENE_TEXT, "140/18", text)).wind).toEqual({ from, speedKt });
});

test("what is left out has its usual value", () => {
  const scene = sceneFrom(
    "scene: 1\ndate: 2026-06-01\nstations: isles.yaml\naircraft: { at: TXJ246018, altitude: 0 }\nreceivers:\n  - tune: TXJ\n  - tune: HJL\n",
  );
  expect(scene).toMatchObject({
    title: "",
    about: "",
    ask: "",
    land: null,
    covers: [],
    wind: { from: 0, speedKt: 0 },
    aircraft: { heading: 0, altitudeFt: 0, tasKt: 100 },
    receivers: [
      { name: "NAV1", course: 0, face: "cdi", bearingErrorDeg: 0 },
      { name: "NAV2", course: 0, face: "cdi", bearingErrorDeg: 0 },
    ],
  });
});

test("today stands in for a date that is left out, where the caller gives one", () => {
  const text = changed(SCENE_TEXT, "date: 2026-06-01\n", "");
  const options = { path: "s.yaml", open: openFrom({ "isles.yaml": STATIONS_TEXT }) };
  const result = readScene(text, { ...options, today: "2027-01-02" });
  expect(result.ok && result.scene.date).toBe("2027-01-02");
  expect(readScene(text, options).ok).toBe(false);
});

test("the DME of an instrument landing system is tuned on its localizer's channel", () => {
  const dme = "  - { ident: IHJ, kind: DME, channel: 18X, at: [-10.5, 1.5], elevation: 80 }\n";
  const files = { "isles.yaml": STATIONS_TEXT + dme };
  const scene = sceneFrom(changed(SCENE_TEXT, "HJL", "IHJ"), files);
  expect(scene.stations[2]).toMatchObject({ kind: "DME", frequencyMhz: 108.1, dmeChannel: "18X" });
  expect(scene.receivers[1]?.frequencyMhz).toBe(108.1);
  expect(sceneFrom(changed(SCENE_TEXT, "HJL", "108.10"), files).receivers[1]?.frequencyMhz).toBe(108.1);
});

test("stations come from a path, from several, from the scene itself, or from a mixture", () => {
  const inline = `
  - isles.yaml
  - ident: OXK
    kind: VOR
    frequency: 117.30
    at: 11°24.0′S 001°44.0′E
    elevation: 310
    class: VL
    status: no-ident
    power: 100
  - more.yaml`;
  const more = `stations: 1
list:
  - { ident: SRX, kind: VORTAC, channel: 112X, at: [-11.1, 2.8], elevation: 260, declination: 10W, class: VL/DL,
      dmeAt: [-11.11, 2.8], dmeElevation: 270 }
`;
  const { stations } = sceneFrom(changed(SCENE_TEXT, " isles.yaml", inline), { "more.yaml": more });
  expect(stations.map(({ ident }) => ident)).toEqual(["HJL", "TXJ", "OXK", "SRX"]);
  expect(stations[2]).toMatchObject({
    name: "OXK",
    status: "no-ident",
    eirpW: 100,
    vorClass: "VL",
    dmeChannel: null,
  });
  expect(stations[3]).toMatchObject({
    frequencyMhz: 116.5,
    dmeSite: { position: { latDeg: -11.11, lonDeg: 2.8 }, elevationFt: 270 },
  });
});

test("a file that two others include is read once", () => {
  const files = {
    "one.yaml": "stations: 1\ninclude: isles.yaml\n",
    "two.yaml": "stations: 1\ninclude: [isles.yaml, one.yaml]\n",
  };
  const result = read(changed(SCENE_TEXT, "isles.yaml", "[one.yaml, two.yaml]"), files);
  expect(result.ok && result.scene.stations).toHaveLength(2);
  expect(result.ok && result.sources.map(({ kind, path }) => `${kind} ${path}`)).toEqual([
    "scene s.yaml",
    "stations one.yaml",
    "stations isles.yaml",
    "stations two.yaml",
  ]);
});

test("land comes from its file or from the scene itself, and is the same", () => {
  const fromFile = sceneFrom(changed(SCENE_TEXT, "wind:", "land: isles.land.yaml\nwind:")).land;
  const inline = LAND_TEXT.replace("land: 1\n", "").replace(/^/gm, "  ").trimEnd();
  expect(sceneFrom(changed(SCENE_TEXT, "wind:", `land:\n${inline}\nwind:`)).land).toEqual(fromFile);
  expect(fromFile).toEqual({
    name: "The Isles",
    islands: [
      {
        name: "Haldrey",
        coast: [
          { latDeg: -10.2, lonDeg: 1.4 },
          { latDeg: -10.2, lonDeg: 1.5 },
          { latDeg: -10.4, lonDeg: 1.45 },
        ],
      },
    ],
    relief: [],
    peaks: [
      {
        name: "Mount Corvane",
        position: { latDeg: -(10 + 27.5 / 60), lonDeg: 1 + 22 / 60 },
        elevationFt: 4260,
        baseRadiusNm: 6,
      },
    ],
    airfields: [],
  });
});

test("a ring that says its first point again is the same ring, and relief is drawn lowest first", () => {
  const twice = changed(
    LAND_TEXT,
    "      - [-10.40, 1.45]\n",
    "      - [-10.40, 1.45]\n      - [-10.20, 1.40]\n",
  );
  const relief =
    "relief:\n  - { above: 2000, ring: [[-10.2, 1.4], [-10.3, 1.4], [-10.3, 1.5]] }\n  - { above: 500, ring: [[-10.2, 1.4], [-10.3, 1.4], [-10.3, 1.5]] }\n";
  const result = readLand(twice + relief, { path: "l.yaml" });
  expect(result.ok && result.land.islands[0]?.coast).toHaveLength(3);
  expect(result.ok && result.land.relief.map(({ aboveFt }) => aboveFt)).toEqual([500, 2000]);
});

test("of the worldwide table's stations with one ident the nearest to the aircraft is tuned, and only those around are kept", () => {
  const table = tableText(
    "1,AAA,Far,VOR,114000,50.5,-20.5,100,,,,,,1",
    "2,AAA,Near,VOR-DME,113900,-10.5,2.5,100,113900,086X,,,,-9",
    "3,BBB,Far too,VOR,112000,50.6,-20.6,100,,,,,,1",
    "4,CCC,Around,VOR,112300,-12.5,2.5,100,,,,,,-9",
    "6,EEE,Far east,VOR,112500,-12.5,32.5,100,,,,,,-9",
    "5,DDD,Broken,VOR,108100,-12.5,2.5,100,,,,,,-9",
  );
  const scene = changed(changed(SCENE_TEXT, "isles.yaml", "[isles.yaml, world.csv]"), "HJL", "AAA");
  const result = read(scene, { "world.csv": table });
  expect(result.ok && result.scene.receivers[1]?.frequencyMhz).toBe(113.9);
  expect(result.ok && result.scene.stations.map(({ name }) => name)).toEqual([
    "Haldrey",
    "Tamsel",
    "Near",
    "Around",
  ]);
  const source = result.ok ? result.sources.find(({ kind }) => kind === "table") : null;
  expect(source?.skipped.map(({ line }) => line)).toEqual([7]);
  // A station tuned by its ident is kept however far it is.
  const far = read(changed(scene, "AAA", "BBB"), { "world.csv": table });
  expect(far.ok && far.scene.stations.map(({ name }) => name)).toContain("Far too");
});

test("a station of our own goes before the table's of the same ident", () => {
  const table = tableText("1,HJL,Other,VOR,114000,-10.3,2.0,100,,,,,,1");
  const scene = sceneFrom(changed(SCENE_TEXT, "isles.yaml", "[world.csv, isles.yaml]"), {
    "world.csv": table,
  });
  expect(scene.receivers[1]?.frequencyMhz).toBe(113.9);
});

test("station files and tables are read by themselves", () => {
  const options = { open: openFrom({ "isles.yaml": STATIONS_TEXT }), date: "2026-06-01" };
  const own = readStations("stations: 1\ninclude: isles.yaml\n", { ...options, path: "all.yaml" });
  expect(own.ok && own.stations.map(({ ident }) => ident)).toEqual(["HJL", "TXJ"]);
  const rows = ["1,AAA,One,VOR,114000,50.5,-20.5,100,,,,,,1", "2,AAA,Two,VOR,114000,95,-20.5,100,,,,,,1"];
  const table = readStations(tableText(...rows), { ...options, path: "world.csv" });
  expect(table.ok && table.stations).toHaveLength(1);
  expect(table.ok && table.skipped).toHaveLength(1);
});

const fromDisk: Open = (wanted, from) => {
  const path = join(dirname(from), wanted);
  return { path, text: readFileSync(path, "utf8") };
};

test("every scene of the demo is read", () => {
  const folder = "demo/scenes";
  const names = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
  expect(names.length).toBeGreaterThanOrEqual(10);
  for (const name of names) {
    const path = join(folder, name);
    const result = readScene(readFileSync(path, "utf8"), { path, open: fromDisk });
    expect(result.ok ? [] : result.faults.map(faultLine)).toEqual([]);
  }
});

test("a scene of usual size is read in under 10 ms", () => {
  const times = Array.from({ length: 30 }, () => {
    const start = performance.now();
    sceneFrom(SCENE_TEXT);
    return performance.now() - start;
  }).sort((one, other) => one - other);
  // The quickest third: the machine may be busy with other things.
  expect(times[10]).toBeLessThan(10);
});
