/** Scene files in and out of the bench: what is opened, what is told, and that saving loses nothing of the text. */

import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { magneticDeg, stationDeg } from "../src/earth/index.ts";
import type { Scene } from "../src/scene/index.ts";
import { fileStem, sceneFileName } from "../src/web/files/file-name.ts";
import { type GivenFile, withoutHandles } from "../src/web/files/given-files.ts";
import { openOver, pathFrom } from "../src/web/files/open-over.ts";
import { readGiven, readText } from "../src/web/files/read-given.ts";
import { savedText } from "../src/web/files/saved-text.ts";
import type { SceneSource } from "../src/web/files/scene-source.ts";
import { act } from "../src/web/state/actions.ts";
import {
  aircraftArbitrary,
  coversArbitrary,
  receiversArbitrary,
  windArbitrary,
} from "./scene-arbitraries.ts";
import { changed, SCENE_TEXT, STATIONS_TEXT } from "./scene-files.ts";

const demoText = (path: string): string => readFileSync(new URL(`../demo/${path}`, import.meta.url), "utf8");
const DEMO_KEYS = readdirSync(new URL("../demo/scenes/", import.meta.url)).sort();
const AT_HAND = new Map([
  ["ostrelle.stations.yaml", demoText("ostrelle.stations.yaml")],
  ["ostrelle.land.yaml", demoText("ostrelle.land.yaml")],
]);
const OPTIONS = { atHand: AT_HAND, today: "2026-07-01" };

const given = (files: Readonly<Record<string, string | Uint8Array<ArrayBuffer>>>): GivenFile[] =>
  withoutHandles(Object.entries(files).map(([name, text]) => new File([text], name)));
const open = async (files: Parameters<typeof given>[0]) => {
  const read = await readGiven(given(files), OPTIONS);
  if (read === "catalogue") throw new Error("no catalogue was meant");
  return read;
};

/** A scene with the text it came from. */
function opened(
  text: string,
  files: Readonly<Record<string, string>> = {},
): { scene: Scene; source: SceneSource } {
  const read = readText({ path: "mine.yaml", text, files: new Map(Object.entries(files)) }, OPTIONS);
  if (!read.ok || read.source === null) throw new Error(read.ok ? "no source" : read.lines.join("\n"));
  return { scene: read.scene, source: read.source };
}

function saved(scene: Scene, source: SceneSource | null) {
  const result = savedText(scene, source, AT_HAND);
  if (!result.ok) throw new Error(result.lines.join("\n"));
  return result;
}

describe("opening", () => {
  it("takes a scene with its stations, whichever comes first", async () => {
    const read = await open({ "isles.yaml": STATIONS_TEXT, "mine.yaml": SCENE_TEXT });
    expect(read).toMatchObject({ ok: true, name: "mine", notes: [] });
    expect(read?.ok && read.scene.stations.map(({ ident }) => ident)).toEqual(["HJL", "TXJ"]);
    expect(read?.ok && [...(read.source?.files ?? [])]).toEqual([["isles.yaml", STATIONS_TEXT]]);
  });

  it("takes what is not given from the demo, and says so", async () => {
    const read = await open({ "mine.yaml": changed(SCENE_TEXT, "isles.yaml", "../ostrelle.stations.yaml") });
    expect(read).toMatchObject({
      ok: true,
      notes: ["ostrelle.stations.yaml was not given; the demo's is used"],
    });
    expect(read?.ok && read.source?.files.size).toBe(0);
  });

  it("takes what is given before the demo's of the same name", async () => {
    const read = await open({
      "mine.yaml": changed(SCENE_TEXT, "isles.yaml", "../ostrelle.stations.yaml"),
      "ostrelle.stations.yaml": STATIONS_TEXT,
    });
    expect(read?.ok && read.scene.stations).toHaveLength(2);
    expect(read?.ok && read.notes).toEqual([]);
  });

  it("tells every fault with its place, of a missing file too", async () => {
    const text = changed(changed(SCENE_TEXT, "115.60", "108.10"), "wind: 140/18", "wind: 400/18");
    const read = await open({ "mine.yaml": text });
    expect(read?.ok === false && read.lines).toEqual([
      expect.stringMatching(
        /^mine\.yaml:5:11 stations isles\.yaml cannot be opened: it was not given together with this file, so pick or drop both at once; /,
      ),
      expect.stringMatching(/^mine\.yaml:11:7 .*400/),
      expect.stringMatching(/^mine\.yaml:13:25 NAV1 tune 108\.10 is a localizer channel/),
    ]);
  });

  it.each<[string, Readonly<Record<string, string | Uint8Array<ArrayBuffer>>>, RegExp]>([
    [
      "a picture",
      { "a.png": new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1]) },
      /a\.png.*not a text file but a PNG/,
    ],
    ["an empty file", { "a.yaml": "" }, /the file is empty/],
    ["a text of another kind", { "notes.txt": "buy milk" }, /notes\.txt is no scene file/],
    ["Latin-1", { "a.yaml": new Uint8Array([0x61, 0xb0, 0x62]) }, /not UTF-8/],
    ["half a scene", { "a.yaml": "scene: 1\n" }, /the file has no stations/],
  ])("refuses %s in a sentence", async (_, files, sentence) => {
    const read = await open(files);
    expect(read?.ok).toBe(false);
    expect(read?.ok === false && read.lines.join("\n")).toMatch(sentence);
  });

  it("opens the first of several scenes and says so", async () => {
    const own = changed(SCENE_TEXT, "isles.yaml", "../ostrelle.stations.yaml");
    const read = await open({ "b.yaml": own, "a.yaml": own });
    expect(read).toMatchObject({ name: "b" });
    expect(read?.ok && read.notes[0]).toBe("of 2 scenes given, b.yaml was opened");
  });

  it.each<[string, Readonly<Record<string, string>>, "catalogue" | "scene"]>([
    ["a station file alone", { "isles.yaml": STATIONS_TEXT }, "catalogue"],
    ["a table alone, whatever is in it", { "navaids.CSV": "a,b\n1,2\n" }, "catalogue"],
    ["a table with what is no file of ours", { "notes.txt": "buy milk", "navaids.csv": "a\n" }, "catalogue"],
    ["a scene with its station file", { "isles.yaml": STATIONS_TEXT, "mine.yaml": SCENE_TEXT }, "scene"],
    ["a scene that lost its first key", { "mine.yaml": changed(SCENE_TEXT, "scene: 1\n", "") }, "scene"],
  ])("takes %s for what it is", async (_, files, kind) => {
    const read = await readGiven(given(files), OPTIONS);
    expect(read === "catalogue" ? read : "scene").toBe(kind);
  });

  it("is nothing when nothing was given", async () => {
    expect(await readGiven([], OPTIONS)).toBeNull();
  });

  it("never takes one of two files of one name for the other", () => {
    const files = new Map([
      ["north/isles.yaml", "north"],
      ["south/isles.yaml", "south"],
    ]);
    const openFile = openOver(files, new Map());
    expect(openFile("isles.yaml", "south/mine.yaml")).toEqual({ path: "south/isles.yaml", text: "south" });
    expect(openFile("isles.yaml", "mine.yaml")).toHaveProperty("failure");
  });

  it.each([
    ["../isles.yaml", "isles.yaml"],
    ["./isles.yaml", "scenes/isles.yaml"],
    ["sub/../isles.yaml", "scenes/isles.yaml"],
    ["../../shared/isles.yaml", "../shared/isles.yaml"],
    ["/home/isles.yaml", "home/isles.yaml"],
    ["..\\isles.yaml", "isles.yaml"],
  ])("finds %s, named in a scene in a folder, at %s", (wanted, path) => {
    expect(pathFrom("scenes/mine.yaml", wanted)).toBe(path);
  });
});

describe("saving", () => {
  it("gives an unchanged scene its own text back, byte for byte, for every scene of the demo", () => {
    for (const key of DEMO_KEYS) {
      const text = demoText(`scenes/${key}`);
      const { scene, source } = opened(text);
      expect(saved(scene, source).text).toBe(text);
    }
  });

  it("changes only what changed: comments, order and blank lines stay", () => {
    const { scene, source } = opened(SCENE_TEXT, { "isles.yaml": STATIONS_TEXT });
    const turned = act(scene, { kind: "set-course", receiver: "NAV1", course: stationDeg(75) });
    const both = act(turned, { kind: "set-heading", heading: magneticDeg(101) });
    const { text, notes } = saved({ ...both, covers: [] }, source);
    const expected = changed(
      changed(changed(SCENE_TEXT, "course: 070", "course: 075"), "heading: 090", "heading: 101"),
      "cover: [NAV1.needle]",
      "cover: []",
    );
    expect(text).toBe(expected);
    expect(notes).toEqual(["keep it with isles.yaml, which it draws on"]);
  });

  it("says plainly what it writes into the scene when a station of another file was changed", () => {
    const { scene, source } = opened(SCENE_TEXT, { "isles.yaml": STATIONS_TEXT });
    const moved = act(scene, {
      kind: "move-station",
      ident: "TXJ",
      to: { latDeg: -10.3, lonDeg: 2.2 },
    });
    const { text, notes } = saved(moved, source);
    expect(notes).toEqual([
      "stations were changed, so all 2 are now written in the scene's own file; isles.yaml stays as it is",
    ]);
    expect(text).toContain("# A scene for tests.");
    const again = opened(text).scene;
    expect(again.stations.find(({ ident }) => ident === "TXJ")?.position).toEqual({
      latDeg: -10.3,
      lonDeg: 2.2,
    });
    // The aircraft's place was counted from the station, and stays where it was.
    expect(again.aircraft.position.latDeg).toBeCloseTo(scene.aircraft.position.latDeg, 4);
    expect(again.aircraft.position.lonDeg).toBeCloseTo(scene.aircraft.position.lonDeg, 4);
  });

  it("writes a place and a channel out when the station they were said by is taken away", () => {
    const { scene, source } = opened(SCENE_TEXT, { "isles.yaml": STATIONS_TEXT });
    const alone = act(act(scene, { kind: "remove-station", ident: "TXJ" }), {
      kind: "remove-station",
      ident: "HJL",
    });
    const { text } = saved(alone, source);
    const again = opened(text).scene;
    expect(again.stations).toEqual([]);
    expect(again.receivers.map(({ frequencyMhz }) => frequencyMhz)).toEqual([115.6, 113.9]);
    expect(again.aircraft.position.lonDeg).toBeCloseTo(scene.aircraft.position.lonDeg, 4);
  });

  it("writes a scene that came from no text whole, so that it stands alone", () => {
    const { scene } = opened(demoText(`scenes/${DEMO_KEYS[0]}`));
    const { text, notes } = saved(scene, null);
    expect(notes).toEqual([expect.stringMatching(/^its 8 stations and the land are written in the file/)]);
    const again = readText({ path: "a.yaml", text, files: new Map() }, { ...OPTIONS, atHand: new Map() });
    expect(again.ok && again.scene.stations.map(({ ident }) => ident)).toEqual(
      scene.stations.map(({ ident }) => ident),
    );
  });

  it("overwrites nothing when the text can no longer be read", () => {
    const { scene, source } = opened(SCENE_TEXT, { "isles.yaml": STATIONS_TEXT });
    const turned = act(scene, { kind: "set-heading", heading: magneticDeg(101) });
    const result = savedText(turned, { ...source, text: "scene: 1\n\tx" }, AT_HAND);
    expect(result.ok === false && result.lines[0]).toMatch(/^mine\.yaml:2:1 /);
  });

  it("reads back as the scene on the bench, whatever was done to it", () => {
    const texts = [
      [SCENE_TEXT, { "isles.yaml": STATIONS_TEXT }],
      ...["18", "22", "24"].map((number) => [
        demoText(`scenes/${DEMO_KEYS.find((key) => key.startsWith(number))}`),
        {},
      ]),
    ] as [string, Record<string, string>][];
    fc.assert(
      fc.property(
        fc.constantFrom(...texts),
        aircraftArbitrary,
        receiversArbitrary.chain((receivers) =>
          fc.record({
            receivers: fc.constant(receivers),
            covers: coversArbitrary(receivers.map(({ name }) => name)),
          }),
        ),
        windArbitrary,
        fc.integer({ min: 0, max: 3 }),
        ([text, files], aircraft, { receivers, covers }, wind, moves) => {
          const { scene, source } = opened(text, files);
          let changedScene: Scene = { ...scene, aircraft, receivers, covers, wind };
          for (const station of scene.stations.slice(0, moves))
            changedScene = act(changedScene, {
              kind: "move-station",
              ident: station.ident,
              to: { latDeg: -10.25, lonDeg: 2.5 },
            });
          const once = saved(changedScene, source).text;
          const again = opened(once, files).scene;
          expect(again.stations.map(({ ident }) => ident).sort()).toEqual(
            changedScene.stations.map(({ ident }) => ident).sort(),
          );
          // Covers have no order.
          expect([...again.covers].sort()).toEqual([...covers].sort());
          expect(again.receivers.map(({ frequencyMhz }) => frequencyMhz)).toEqual(
            receivers.map(({ frequencyMhz }) => frequencyMhz),
          );
          expect(Math.abs(again.aircraft.position.latDeg - aircraft.position.latDeg)).toBeLessThan(1e-5);
          // Saved again it stays the same: no edit is made twice.
          expect(saved(again, opened(once, files).source).text).toBe(once);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe("file names", () => {
  it.each([
    ["12-in-the-cone", "12-in-the-cone.yaml"],
    ["Which way to the course?", "Which-way-to-the-course.yaml"],
    ["../../etc/passwd", "etc-passwd.yaml"],
    ["", "scene.yaml"],
    ["???", "scene.yaml"],
    ["Kurs über Łódź", "Kurs-über-Łódź.yaml"],
  ])("of %j is %s", (name, file) => {
    expect(sceneFileName(name)).toBe(file);
  });
  it("are never longer than systems take", () => {
    expect(fileStem("x".repeat(500))).toHaveLength(60);
  });
});
