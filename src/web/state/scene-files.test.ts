import { describe, expect, it } from "vitest";
import { readFrom } from "./scene-reader.ts";

const STATIONS = `stations: 1
list:
  - { ident: TXJ, name: Tamsel, kind: VOR-DME, frequency: 115.60, at: 10°09.0′S 002°19.0′E, elevation: 22, declination: 9W, class: VL/DL }
`;
const scene = (stations: string) => `scene: 1
title: One station
date: 2026-07-01
stations: ${stations}
aircraft: { at: TXJ 246/18, heading: 090, altitude: 3500, tas: 100 }
receivers:
  - { name: NAV1, tune: TXJ, course: 070 }
`;
const files = (stations: string, stationsPath: string) =>
  new Map([
    ["scenes/mine.yaml", scene(stations)],
    [stationsPath, STATIONS],
  ]);

describe("readFrom", () => {
  it.each([
    ["../isles.yaml", "isles.yaml"],
    ["./isles.yaml", "scenes/isles.yaml"],
    ["sub/../isles.yaml", "scenes/isles.yaml"],
    ["../../shared/isles.yaml", "../shared/isles.yaml"],
    ["/home/isles.yaml", "home/isles.yaml"],
    ["..\\isles.yaml", "isles.yaml"],
  ])("finds %s, named in a scene in a folder, at %s", (wanted, path) => {
    expect(readFrom(files(wanted, path), "scenes/mine.yaml", "file")).toMatchObject({
      ok: true,
      name: "mine",
      origin: "file",
    });
  });

  it("finds a file by its name alone when a person picked it without its folder", () => {
    const picked = new Map([
      ["mine.yaml", scene("../stations/isles.yaml")],
      ["isles.yaml", STATIONS],
    ]);
    expect(readFrom(picked, "mine.yaml", "file").ok).toBe(true);
  });

  it("says which file is missing, and where it was named", () => {
    const read = readFrom(new Map([["mine.yaml", scene("isles.yaml")]]), "mine.yaml", "file");
    expect(read).toMatchObject({ ok: false, name: "mine.yaml" });
    expect(read.ok ? [] : read.lines).toEqual([
      expect.stringMatching(/^mine\.yaml:4:11 .*isles\.yaml cannot be opened: it was not given together/),
    ]);
  });
});
