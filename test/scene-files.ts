/** A good scene with its files, for tests that change one thing in it. */

import { faultLine, type Open, readScene, type Scene, type SceneRead } from "../src/scene/index.ts";

export const SCENE_TEXT = `# A scene for tests.
scene: 1
title: Which way to the course?
date: 2026-06-01
stations: isles.yaml
aircraft:
  at: TXJ 246/18                      # over the sea
  heading: 090
  altitude: 3500
  tas: 100
wind: 140/18
receivers:
  - { name: NAV1, tune: 115.60, course: 070 }
  - { name: NAV2, tune: HJL, course: 180, face: hsi }
cover: [NAV1.needle]
ask: Which way is the course?
`;

export const STATIONS_TEXT = `stations: 1
list:
  - ident: HJL
    name: Haldrey
    kind: VORTAC
    frequency: 113.90
    at: 10°20.0′S 001°27.0′E
    elevation: 1240
    declination: 10W
    class: VH/DH
  - ident: TXJ
    name: Tamsel
    kind: VOR-DME
    frequency: 115.60
    at: 10°09.0′S 002°19.0′E
    elevation: 22
    declination: 9W
`;

export const LAND_TEXT = `land: 1
name: The Isles
islands:
  - name: Haldrey
    coast:
      - [-10.20, 1.40]
      - [-10.20, 1.50]
      - [-10.40, 1.45]
peaks:
  - { name: Mount Corvane, at: 10°27.5′S 001°22.0′E, elevation: 4260, radius: 6 }
`;

/** The columns of the worldwide table that are read, and rows under them. */
export const tableText = (...rows: string[]): string =>
  [
    "id,ident,name,type,frequency_khz,latitude_deg,longitude_deg,elevation_ft,dme_frequency_khz,dme_channel,dme_latitude_deg,dme_longitude_deg,dme_elevation_ft,slaved_variation_deg",
    ...rows,
    "",
  ].join("\n");

/** Opens files out of a table of texts, all in one folder. */
export const openFrom =
  (files: Readonly<Record<string, string>>): Open =>
  (wanted) => {
    const text = Object.hasOwn(files, wanted) ? files[wanted] : undefined;
    return text === undefined ? { failure: "no such file" } : { path: wanted, text };
  };

export const FILES = { "isles.yaml": STATIONS_TEXT, "isles.land.yaml": LAND_TEXT };

/** Reads a scene called s.yaml beside the files above, some of them changed. */
export const read = (text: string, files: Readonly<Record<string, string>> = {}): SceneRead =>
  readScene(text, { path: "s.yaml", open: openFrom({ ...FILES, ...files }) });

/** The scene, or the faults as an exception. */
export function sceneFrom(text: string, files: Readonly<Record<string, string>> = {}): Scene {
  const result = read(text, files);
  if (!result.ok) throw new Error(result.faults.map(faultLine).join("\n"));
  return result.scene;
}

/** The text with one piece of it replaced; the piece must be there. */
export function changed(text: string, from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`"${from}" is not in the text`);
  return text.replace(from, () => to);
}
