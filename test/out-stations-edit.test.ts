/** Changed stations in a scene file: what is written reads back as the stations there are, and the rest of the file stays. */

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { latLon } from "../src/earth/index.ts";
import type { Station } from "../src/radio/index.ts";
import { editStations, type Scene, writeScene } from "../src/scene/index.ts";
import { sceneArbitrary } from "./scene-arbitraries.ts";
import { changed, SCENE_TEXT, sceneFrom, tableText } from "./scene-files.ts";

const INLINE = changed(
  SCENE_TEXT,
  "stations: isles.yaml\n",
  `stations:
  # Ours, on the moor.
  - ident: HJL            # the old one
    name: Haldrey
    kind: VORTAC
    frequency: 113.90     # as published
    at: 10°20.0′S 001°27.0′E
    elevation: 1240
    declination: 10W
  - { ident: TXJ, kind: VOR-DME, frequency: 115.60, at: [-10.15, 2.3167], elevation: 22, declination: 9W }
`,
);

const moved = (station: Station, latDeg: number, lonDeg: number): Station => ({
  ...station,
  position: latLon(latDeg, lonDeg),
});

/** The scene's stations after a change, and the file's text after it. */
function edited(text: string, change: (stations: readonly Station[]) => readonly Station[], files = {}) {
  const before = sceneFrom(text, files).stations;
  const after = change(before);
  const result = editStations(text, { before, after }, { path: "s.yaml" });
  if (!result.ok) throw new Error(result.faults[0]?.message);
  return { ...result, after };
}

const byIdent = (stations: readonly Station[]) => [...stations].sort((a, b) => (a.ident < b.ident ? -1 : 1));
const NEW: Station = {
  ident: "ZZQ",
  name: "New, one",
  kind: "VOR",
  frequencyMhz: 112.3,
  dmeChannel: null,
  position: latLon(-10.5, 1.75),
  elevationFt: 55,
  dmeSite: null,
  declinationDeg: -8,
  declinationEstimated: false,
  vorClass: "VL",
  dmeClass: null,
  status: "on-air",
  eirpW: 200,
};

describe("stations of a file that the scene names", () => {
  test("stay in it when none of them changed", () => {
    const { text, takenIn } = edited(SCENE_TEXT, (stations) => stations);
    expect(text).toBe(SCENE_TEXT);
    expect(takenIn).toEqual([]);
  });

  test("stay in it when one is added, which then stands in the scene beside the file's path", () => {
    const { text, takenIn } = edited(SCENE_TEXT, (stations) => [...stations, NEW]);
    expect(takenIn).toEqual([]);
    expect(text).toBe(
      changed(
        SCENE_TEXT,
        "stations: isles.yaml\n",
        `stations:
  - isles.yaml
  - ident: ZZQ
    name: New, one
    kind: VOR
    frequency: 112.30
    at: 10°30.0′S 001°45.0′E
    elevation: 55
    declination: 8W
    class: VL
`,
      ),
    );
    expect(sceneFrom(text).stations.find(({ ident }) => ident === "ZZQ")).toEqual(NEW);
  });

  test("keep the comment beside their file's path", () => {
    const text = changed(SCENE_TEXT, "isles.yaml", "isles.yaml  # as surveyed");
    expect(edited(text, (stations) => [...stations, NEW]).text).toContain(
      "stations:\n  - isles.yaml  # as surveyed\n  - ident: ZZQ\n",
    );
  });

  test("are all written into the scene when one is moved, and the path goes", () => {
    const { text, takenIn, after } = edited(SCENE_TEXT, ([haldrey, ...rest]) => [
      moved(haldrey!, -10.4, 1.5),
      ...rest,
    ]);
    expect(takenIn).toEqual(["isles.yaml"]);
    expect(text).not.toContain("isles.yaml");
    expect(byIdent(sceneFrom(text, { "isles.yaml": "" }).stations)).toEqual(byIdent(after));
    const [head, tail] = SCENE_TEXT.split("stations: isles.yaml\n") as [string, string];
    expect(text.startsWith(head) && text.endsWith(tail)).toBe(true);
  });

  test("of a table that has one ident twice: the second is told as left out", () => {
    const table = tableText(
      "1,AAA,One,VOR,110600,-10.5,1.5,10,,,,,,0",
      "2,AAA,Two,VOR,110800,-10.6,1.6,10,,,,,,0",
      "3,TXJ,Tamsel,VOR,115600,-10.15,2.3167,22,,,,,,-9",
    );
    const text = changed(changed(SCENE_TEXT, "isles.yaml", "t.csv"), "tune: HJL", "tune: 113.90");
    const { leftOut, takenIn } = edited(
      text,
      (stations) =>
        stations.map((station) => (station.ident === "TXJ" ? moved(station, -10.2, 2.3) : station)),
      { "t.csv": table },
    );
    expect(leftOut).toEqual(["AAA"]);
    expect(takenIn).toEqual(["t.csv"]);
  });
});

describe("stations that stand in the scene", () => {
  test("are changed key by key: comments and forms stay", () => {
    const { text } = edited(INLINE, (stations) =>
      stations.map((station) =>
        station.ident === "HJL"
          ? { ...moved(station, -10.4, 1.5), frequencyMhz: 113.8, dmeChannel: "85X", status: "silent" }
          : station,
      ),
    );
    expect(text).toBe(
      changed(
        changed(INLINE, "113.90     # as", "113.80     # as"),
        "at: 10°20.0′S 001°27.0′E\n    elevation: 1240\n    declination: 10W\n",
        "at: 10°24.0′S 001°30.0′E\n    elevation: 1240\n    declination: 10W\n    status: silent\n",
      ),
    );
  });

  test("in braces too", () => {
    const { text, after } = edited(INLINE, (stations) =>
      stations.map((station) => (station.ident === "TXJ" ? moved(station, -10.2, 2.3) : station)),
    );
    expect(text).toContain(
      "{ ident: TXJ, kind: VOR-DME, frequency: 115.60, at: 10°12.0′S 002°18.0′E, elevation: 22, declination: 9W }",
    );
    expect(sceneFrom(text).stations[1]).toEqual(after[1]);
  });

  test("are taken out and added", () => {
    const { text } = edited(INLINE, (stations) => [...stations.filter(({ ident }) => ident !== "TXJ"), NEW]);
    const placed = changed(text, "TXJ 246/18", "10°18.8′S 002°03.7′E");
    expect(sceneFrom(placed).stations.map(({ ident }) => ident)).toEqual(["HJL", "ZZQ"]);
    expect(text).toContain("# Ours, on the moor.\n  - ident: HJL            # the old one");
    expect(text).not.toContain("ident: TXJ");
    expect(text).toContain("  - ident: ZZQ\n    name: New, one\n");
  });

  test("a station written by its channel is written anew with its frequency", () => {
    const text = changed(INLINE, "frequency: 113.90     # as published", "channel: 86X");
    const { text: after } = edited(text, (stations) =>
      stations.map((station) =>
        station.ident === "HJL" ? { ...station, frequencyMhz: 113.8, dmeChannel: "85X" } : station,
      ),
    );
    const again = sceneFrom(changed(after, "tune: HJL", "tune: 113.80"));
    expect(again.stations[0]).toMatchObject({ ident: "HJL", frequencyMhz: 113.8, dmeChannel: "85X" });
  });

  test("with Windows line ends, every line keeps them", () => {
    const { text } = edited(SCENE_TEXT.replaceAll("\n", "\r\n"), (stations) => [...stations, NEW]);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
  });
});

test("whatever the stations become, the file reads back as them", () => {
  fc.assert(
    fc.property(sceneArbitrary, sceneArbitrary, fc.boolean(), (drawn, other, inBraces) => {
      // A reflector whose station goes is taken out by the scene's own edits, which a saved file gets as well.
      const scene = { ...drawn, signal: null };
      const written = writeScene(scene);
      const text = inBraces ? flow(scene) : written;
      const before = sceneFrom(text).stations;
      const kept = before.filter((_, index) => index % 2 === 0);
      const idents = new Set(kept.map(({ ident }) => ident));
      // As the bench has them: read from a file, so that their values are those that files hold.
      const fresh = sceneFrom(writeScene({ ...other, date: scene.date })).stations.filter(
        ({ ident }) => !idents.has(ident),
      );
      const after = [
        ...kept.map((station, index) => (index % 2 === 0 ? { ...station, name: "x, [y]" } : station)),
        ...fresh,
      ];
      const result = editStations(text, { before, after }, { path: "s.yaml" });
      if (!result.ok) throw new Error(result.faults[0]?.message);
      expect(byIdent(sceneFrom(result.text).stations)).toEqual(byIdent(after));
    }),
    { numRuns: 150 },
  );
});

/** A scene file as one map in braces with its stations inside. */
const flow = (scene: Scene): string => {
  const stations = scene.stations.map(({ ident, kind, frequencyMhz, position, elevationFt }) =>
    JSON.stringify({
      ident,
      kind,
      frequency: frequencyMhz.toFixed(2),
      at: [Number(position.latDeg.toFixed(4)) + 0, Number(position.lonDeg.toFixed(4)) + 0],
      elevation: Math.round(elevationFt) + 0,
      declination: 5,
    }),
  );
  return `{ scene: 1, date: ${scene.date}, stations: [${stations.join(", ")}], aircraft: { at: [0, 0], altitude: 1000 }, receivers: [{ tune: "110.60" }] }\n`;
};
