/** Bad files, each with the very line, column and sentence that its author reads. */

import { expect, test } from "vitest";
import {
  decodeText,
  FAULT_CODES,
  type Fault,
  faultLine,
  readLand,
  readScene,
  readStations,
  tooBigFault,
} from "../src/scene/index.ts";
import { SCENE_ROWS, STATION_ROWS } from "./scene-fault-rows.ts";
import { changed, LAND_TEXT, openFrom, read, SCENE_TEXT, STATIONS_TEXT, tableText } from "./scene-files.ts";

/** Codes that the tests of this file came upon. */
const codesSeen = new Set<string>();

function linesFrom(result: { readonly ok: boolean; readonly faults?: readonly Fault[] }): string[] {
  for (const { code } of result.faults ?? []) codesSeen.add(code);
  return (result.faults ?? []).map(faultLine);
}

const linesOf = (text: string, files: Record<string, string> = {}): string[] => linesFrom(read(text, files));

test.each(SCENE_ROWS)("a scene with $name", ({ from, to, faults }) => {
  expect(linesOf(changed(SCENE_TEXT, from, to))).toEqual(faults);
});

test.each(STATION_ROWS)("a station file with $name", ({ from, to, faults }) => {
  expect(linesOf(SCENE_TEXT, { "isles.yaml": changed(STATIONS_TEXT, from, to) })).toEqual(faults);
});

/** Whole files in place of a scene. */
const WHOLE: [name: string, text: string, fault: string][] = [
  [
    "an empty file",
    "",
    "s.yaml:1:1 the file is empty; a scene file begins with scene: 1, a station file with stations: 1",
  ],
  [
    "a file of comments",
    "# nothing yet\n",
    "s.yaml:1:1 the file holds nothing but comments; a scene file begins with scene: 1, a station file with stations: 1",
  ],
  [
    "a binary file",
    "PNG\r\n\u0000\u0001",
    "s.yaml:2:1 this is not a text file; scene, station and land files are plain text in UTF-8",
  ],
  [
    "a file past the limit",
    "# a very long line of words\n".repeat(180_000),
    "s.yaml:1:1 the file is 5.1 MB; a scene, station or land file is at most 5 MB, so this is some other file",
  ],
  ["a list", "- ident: HJL\n", "s.yaml:1:1 the file is a list; a scene file begins with scene: 1"],
  [
    "a sentence",
    "Take off and turn left\n",
    "s.yaml:1:1 the file is nothing but Take off and turn left; a scene file begins with scene: 1",
  ],
  ["a station file", STATIONS_TEXT, "s.yaml:1:1 this is a station file; a scene file begins with scene: 1"],
  ["a land file", LAND_TEXT, "s.yaml:1:1 this is a land file; a scene file begins with scene: 1"],
  [
    "twenty thousand brackets",
    "[".repeat(20_000),
    "s.yaml:1:41 lists and maps are nested more than 40 deep here; nothing in these files needs more than five",
  ],
  [
    "twenty thousand dashes",
    "- ".repeat(20_000),
    "s.yaml:1:1 lists and maps are nested more than 40 deep here; nothing in these files needs more than five",
  ],
];

test.each(WHOLE)("%s in place of a scene", (_, text, fault) => {
  expect(linesOf(text)).toEqual([fault]);
});

test("every fault of every file is told at once, in the order of the files and their lines", () => {
  const scene = changed(changed(SCENE_TEXT, "heading: 090", "heading: 361"), "140/18", "400/18");
  const stations = changed(changed(STATIONS_TEXT, "113.90", "108.10"), "9W", "nine");
  const wrong = changed(scene, "course: 180", "course: 400");
  expect(linesOf(wrong, { "isles.yaml": stations }).map((line) => line.split(" ")[0])).toEqual([
    "s.yaml:8:12",
    "s.yaml:11:7",
    "s.yaml:14:38",
    "isles.yaml:6:16",
    "isles.yaml:17:18",
  ]);
});

test("a circle of includes is told with the way round it", () => {
  const files = {
    "isles.yaml": changed(STATIONS_TEXT, "list:", "include: more.yaml\nlist:"),
    "more.yaml": "stations: 1\ninclude: [isles.yaml]\n",
  };
  expect(linesOf(SCENE_TEXT, files)).toEqual([
    "more.yaml:2:11 include isles.yaml leads in a circle, isles.yaml includes more.yaml includes isles.yaml; take one of these includes out",
  ]);
});

test("a scene may take its stations from nowhere but station files", () => {
  expect(linesOf(SCENE_TEXT, { "isles.yaml": SCENE_TEXT })).toEqual([
    "isles.yaml:2:1 this is a scene file; a station file begins with stations: 1",
  ]);
});

test("an ident that several stations of the worldwide table bear is told with where they are", () => {
  const table = tableText(
    "1,AAA,First,VOR-DME,113900,10.5,20.5,100,113900,086X,,,,-1",
    "2,AAA,Second,VOR,114000,50.5,-20.5,100,,,,,,1",
  );
  const scene = changed(changed(SCENE_TEXT, "isles.yaml", "world.csv"), "TXJ 246/18", "AAA 246/18");
  expect(linesOf(changed(scene, "HJL", "AAA"), { "world.csv": table })).toEqual([
    "s.yaml:7:7 at AAA 246/18: 2 stations have the ident AAA, First 113.90 at 10°30.0′N 020°30.0′E and Second 114.00 at 50°30.0′N 020°30.0′W; write at: in latitude and longitude",
  ]);
});

test("a place cannot be counted from a station without radials", () => {
  const stations = changed(changed(STATIONS_TEXT, "kind: VOR-DME", "kind: DME"), "    declination: 9W\n", "");
  expect(linesOf(SCENE_TEXT, { "isles.yaml": stations })).toEqual([
    "s.yaml:7:7 at TXJ 246/18: TXJ is a DME and has no radials to count from; write latitude and longitude",
  ]);
});

test("a land file is told its faults with the names in it", () => {
  const land = changed(changed(LAND_TEXT, "radius: 6", "radius: 600"), "      - [-10.40, 1.45]\n", "");
  const result = readLand(land, { path: "l.yaml" });
  expect(linesFrom(result)).toEqual([
    "l.yaml:6:7 Haldrey coast has 2 points; write at least three points such as - [-10.25, 1.40]",
    "l.yaml:9:79 Mount Corvane radius 600 is out of range; write the NM from the summit to where the mountain meets the sea, 0.1 to 60, such as 6",
  ]);
});

test("a station file and a table are told their faults without a scene", () => {
  const options = { open: openFrom({}), date: "2026-06-01" };
  const stations = readStations(LAND_TEXT, { ...options, path: "l.yaml" });
  expect(linesFrom(stations)).toEqual([
    "l.yaml:1:1 this is a land file; a station file begins with stations: 1",
  ]);
  const table = readStations("a\u0000b", { ...options, path: "t.csv" });
  expect(linesFrom(table)).toEqual([
    "t.csv:1:2 this is not a text file; a table is plain text in UTF-8: export it as CSV",
  ]);
});

test("bytes that are no text are told before they are read", () => {
  const said = (bytes: Uint8Array | string, path = "f.yaml"): string => {
    const text = decodeText(typeof bytes === "string" ? new TextEncoder().encode(bytes) : bytes, path);
    return text.ok ? `text ${text.text}` : linesFrom({ ok: false, faults: [text.fault] }).join();
  };
  expect(said(new Uint8Array(50_000_000))).toBe(
    "f.yaml:1:1 the file is 50 MB; a scene, station or land file is at most 5 MB, so this is some other file",
  );
  expect(faultLine(tooBigFault("world.csv", 50_000_000))).toBe(
    "world.csv:1:1 the file is 50 MB; a navaid table is at most 25 MB, so this is some other file",
  );
  expect(said("%PDF-1.7\u0000")).toBe(
    "f.yaml:1:9 this is not a text file but a PDF; scene, station and land files are plain text in UTF-8",
  );
  // 0xB0 is the degree sign in Latin-1.
  expect(said(new Uint8Array([0x61, 0x0a, 0x31, 0x30, 0xb0]))).toBe(
    "f.yaml:2:3 a character here is not UTF-8, as when an accent or degree sign was saved in an older encoding; save the file as UTF-8",
  );
  expect(said(new Uint8Array([0xff, 0xfe, 0x31, 0, 0xb0, 0]))).toBe("text 1°");
  expect(said(new Uint8Array([0xfe, 0xff, 0, 0x31, 0, 0xb0]))).toBe("text 1°");
  expect(said("\uFEFFscene: 1")).toBe("text scene: 1");
  expect(said("scene: 1\rtitle: A\r")).toBe("text scene: 1\ntitle: A\n");
});

test("a byte order mark left in the text does not hide the first key", () => {
  expect(linesOf(`\uFEFF${SCENE_TEXT}`)).toEqual([]);
});

test("no fault speaks the language of the program", () => {
  const all = [
    ...SCENE_ROWS.flatMap(({ from, to }) => linesOf(changed(SCENE_TEXT, from, to))),
    ...STATION_ROWS.flatMap(({ from, to }) =>
      linesOf(SCENE_TEXT, { "isles.yaml": changed(STATIONS_TEXT, from, to) }),
    ),
    ...WHOLE.flatMap(([, text]) => linesOf(text)),
  ];
  expect(all.length).toBeGreaterThan(80);
  for (const line of all) {
    expect(line).not.toMatch(
      /[Zz]od\b|undefined|\bnull\b|NaN|object Object|expected \w+, received|Error| {4}at |[Ii]nvalid/,
    );
    expect(line).toMatch(/^[\w.]+:\d+:\d+ [^\n]+[^.\n]$/);
  }
});

test("reading stays with the text that was given: another file is only opened through the caller", () => {
  const opened: [string, string][] = [];
  readScene(SCENE_TEXT, {
    path: "lessons/one/s.yaml",
    open: (wanted, from) => {
      opened.push([wanted, from]);
      return {
        path: "lessons/one/isles.yaml",
        text: changed(STATIONS_TEXT, "list:", "include: more.yaml\nlist:"),
      };
    },
  });
  expect(opened).toEqual([
    ["isles.yaml", "lessons/one/s.yaml"],
    ["more.yaml", "lessons/one/isles.yaml"],
  ]);
});

test("a file that is called .csv must be the worldwide table", () => {
  const [line] = linesOf(changed(SCENE_TEXT, "isles.yaml", "t.csv"), {
    "t.csv": "ident,name\nHJL,Haldrey\n",
  });
  expect(line).toMatch(/^t\.csv:1:1 this is not the worldwide navaid table/);
});

test("every code that can be given was come upon above", () => {
  // The one that only an edit gives has its test beside the edits.
  // The codes of problem sets are met in test/practice/problem-set.test.ts.
  const ofSets = FAULT_CODES.slice(FAULT_CODES.indexOf("bad-code"));
  const others = FAULT_CODES.filter((code) => code !== "unknown-receiver" && !ofSets.includes(code));
  expect(others.filter((code) => !codesSeen.has(code))).toEqual([]);
});
