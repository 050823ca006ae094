/** What is written reads back; what is edited reads back changed, and everything else in the file stays as it was. */

import fc from "fast-check";
import { expect, test } from "vitest";
import { latLon, magneticDeg, stationDeg, trueDeg, turnBetween, wrap180 } from "../src/earth/index.ts";
import type { SignalConditions } from "../src/panel/index.ts";
import {
  editScene,
  editsBetween,
  faultLine,
  readStations,
  type Scene,
  type SceneEdit,
  writeScene,
  writeStationFile,
} from "../src/scene/index.ts";
import {
  aircraftArbitrary,
  coversArbitrary,
  receiversArbitrary,
  sceneArbitrary,
  signalArbitrary,
  windArbitrary,
} from "./scene-arbitraries.ts";
import { changed, openFrom, SCENE_TEXT, STATIONS_TEXT, sceneFrom, tableText } from "./scene-files.ts";

/** The roundings that `written-values.ts` states, with room for binary rounding. */
const NEARLY = 1 + 1e-9;
const PLACE_DEG = (0.0005 / 60) * NEARLY;
const RING_DEG = 0.000005 * NEARLY;
const REFLECTOR_DEG = 0.5e-7 * (1 + 1e-6);
const TENTH = 0.05 * NEARLY;

function expectPlace(
  actual: { latDeg: number; lonDeg: number },
  expected: typeof actual,
  limitDeg = PLACE_DEG,
): void {
  expect(Math.abs(actual.latDeg - expected.latDeg)).toBeLessThanOrEqual(limitDeg);
  expect(Math.abs(wrap180(actual.lonDeg - expected.lonDeg))).toBeLessThanOrEqual(limitDeg);
}

const expectNear = (actual: number, expected: number, limit: number): void =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(limit);

function expectSameScene(actual: Scene, expected: Scene): void {
  const { title, about, date, covers, ask } = expected;
  expect({ title: actual.title, about: actual.about, ask: actual.ask }).toEqual({ title, about, ask });
  expect([actual.date, actual.covers]).toEqual([date, covers]);
  expectPlace(actual.aircraft.position, expected.aircraft.position);
  expectNear(turnBetween(actual.aircraft.heading, expected.aircraft.heading), 0, TENTH);
  expectNear(actual.aircraft.altitudeFt, expected.aircraft.altitudeFt, TENTH);
  expectNear(actual.aircraft.tasKt, expected.aircraft.tasKt, TENTH);
  expectNear(actual.wind.speedKt, expected.wind.speedKt, TENTH);
  if (actual.wind.speedKt > 0) expectNear(turnBetween(actual.wind.from, expected.wind.from), 0, TENTH);
  expectSameSignal(actual.signal, expected.signal);
  expect(actual.receivers).toHaveLength(expected.receivers.length);
  actual.receivers.forEach((receiver, index) => {
    const meant = expected.receivers[index]!;
    const { name, frequencyMhz, face } = meant;
    expect(receiver).toMatchObject({ name, frequencyMhz, face });
    expectNear(turnBetween(receiver.course, meant.course), 0, TENTH);
    expectNear(receiver.bearingErrorDeg, meant.bearingErrorDeg, 0.005 * NEARLY);
  });
}

function expectSameSignal(actual: Scene["signal"], expected: Scene["signal"]): void {
  expect(actual === null).toBe(expected === null);
  if (actual === null || expected === null) return;
  expect(actual.kind).toBe(expected.kind);
  expect(actual.noiseDb === null).toBe(expected.noiseDb === null);
  expectNear(actual.noiseDb ?? 0, expected.noiseDb ?? 0, TENTH);
  expect(actual.propeller?.blades).toBe(expected.propeller?.blades);
  expectNear(actual.propeller?.speedRpm ?? 0, expected.propeller?.speedRpm ?? 0, TENTH);
  expect(actual.reflectors.map(({ ident }) => ident)).toEqual(expected.reflectors.map(({ ident }) => ident));
  actual.reflectors.forEach(({ position, amplitude }, index) => {
    expectPlace(position, expected.reflectors[index]!.position, REFLECTOR_DEG);
    expectNear(amplitude, expected.reflectors[index]!.amplitude, 0.00005 * NEARLY);
  });
}

function expectSameStations(actual: Scene["stations"], expected: Scene["stations"]): void {
  expect(actual).toHaveLength(expected.length);
  actual.forEach((station, index) => {
    const meant = expected[index]!;
    const { position, elevationFt, declinationDeg, dmeSite, ...same } = meant;
    expect(station).toMatchObject(same);
    expectPlace(station.position, position);
    expectNear(station.elevationFt, elevationFt, TENTH);
    if (!meant.declinationEstimated) expectNear(station.declinationDeg, declinationDeg, 0.00005 * NEARLY);
    expect(station.dmeSite === null).toBe(dmeSite === null);
    if (station.dmeSite && dmeSite) expectPlace(station.dmeSite.position, dmeSite.position);
  });
}

test("a written scene reads back as the same scene", () => {
  fc.assert(
    fc.property(sceneArbitrary, (scene) => {
      const again = sceneFrom(writeScene(scene));
      expectSameScene(again, scene);
      expectSameStations(again.stations, scene.stations);
      expect(again.land === null).toBe(scene.land === null);
      if (!again.land || !scene.land) return;
      const { islands, relief, peaks, airfields } = scene.land;
      expect(again.land.name).toBe(scene.land.name);
      expect(again.land.islands.map(({ name }) => name)).toEqual(islands.map(({ name }) => name));
      expect(again.land.relief.map(({ aboveFt }) => aboveFt)).toEqual(relief.map(({ aboveFt }) => aboveFt));
      const rings = (land: NonNullable<Scene["land"]>) => [
        ...land.islands.flatMap(({ coast }) => coast),
        ...land.relief.flatMap(({ ring }) => ring),
      ];
      rings(again.land).forEach((point, index) => {
        expectPlace(point, rings(scene.land!)[index]!, RING_DEG);
      });
      again.land.peaks.forEach(({ position, ...peak }, index) => {
        expect(peaks[index]).toMatchObject(peak);
        expectPlace(position, peaks[index]!.position);
      });
      again.land.airfields.forEach(({ position, ...airfield }, index) => {
        expect(airfields[index]).toMatchObject(airfield);
        expectPlace(position, airfields[index]!.position);
      });
    }),
    { numRuns: 200 },
  );
});

test("a scene is written the way a pilot would say it", () => {
  const written = writeScene(sceneFrom(SCENE_TEXT), { stations: "isles.yaml", at: "TXJ 246/18" });
  const asGiven = SCENE_TEXT.replace("# A scene for tests.\n", "")
    .replace(/ +# over the sea/, "")
    .replace("HJL", "113.90");
  expect(written).toBe(asGiven);
});

test("a written station file reads back as the same stations", () => {
  fc.assert(
    fc.property(sceneArbitrary, ({ stations }) => {
      const { text, leftOut } = writeStationFile(stations, {
        name: "Some: stations",
        about: "Line\nby line",
      });
      expect(leftOut).toEqual([]);
      const result = readStations(text, { path: "x.yaml", open: openFrom({}), date: "2026-06-01" });
      expect(result.ok ? [] : result.faults.map(faultLine)).toEqual([]);
      if (result.ok) expectSameStations(result.stations, stations);
    }),
    { numRuns: 100 },
  );
});

test("a table becomes a station file, with what such a file cannot hold told by name", () => {
  const table = tableText(
    "1,AAA,First,VOR-DME,113900,10.5,20.5,100,113900,086X,,,,-1",
    "2,AAA,Second,VOR,114000,50.5,-20.5,100,,,,,,1",
    "3,BBB,Polar,VOR,114000,82.5,-20.5,100,,,,,,1",
    "4,CCC,No declination,VOR,114000,50.5,-20.5,100,,,,,,",
  );
  const options = { open: openFrom({}), date: "2026-06-01" };
  const read = readStations(table, { ...options, path: "t.csv" });
  const { text, leftOut } = writeStationFile(read.ok ? read.stations : []);
  expect(leftOut.map(({ station, reason }) => `${station.name}: ${reason}`)).toEqual([
    "Second: another station with the ident AAA stands in the file already",
    "Polar: it stands poleward of 80 degrees, where radials have no use",
  ]);
  const again = readStations(text, { ...options, path: "t.yaml" });
  expect(again.ok && again.stations.map(({ name }) => name)).toEqual(["First", "No declination"]);
  expect(again.ok && again.stations.map((station) => station.declinationEstimated)).toEqual([false, true]);
});

/** The good scene in other forms that a person may write it in, each full of comments. */
const FORMS: Readonly<Record<string, string>> = {
  plain: `# one
scene: 1 # two
title: Which way to the course? # three
about: >- # four
  Folded text
  over two lines.

# five
date: 2026-06-01
stations: isles.yaml # six
aircraft: # seven
  # eight
  at: TXJ 246/18                      # nine
  heading: 090 # ten

  altitude: 3500
  tas: 100 # eleven
wind: 140/18 # twelve
receivers: # thirteen
  # fourteen
  - { name: NAV1, tune: 115.60, course: 070 } # fifteen
  # sixteen
  - name: NAV2 # seventeen
    tune: HJL # eighteen
    course: 180
    face: hsi
# nineteen
cover: [NAV1.needle] # twenty
ask: Which way is the course? # twenty-one
# twenty-two
`,
  sparse: `scene: 1
date: 2026-06-01
aircraft:
    at:
        lat: -10.3 # one
        lon: 2.06 # two
    altitude: 3500 # three
stations: isles.yaml
receivers:
- tune: TXJ # four
-
  tune: HJL # five
cover: # six
- NAV1.needle # seven
- heading
# eight`,
  braces: `{ scene: 1, date: 2026-06-01, stations: [isles.yaml], # one
  aircraft: { at: [-10.3, 2.06], altitude: 3500 }, # two
  receivers: [{ tune: TXJ }, { tune: HJL, course: 180 }], # three
  cover: [chart, heading] } # four
`,
  windows: SCENE_TEXT.replaceAll("\n", "\r\n"),
  blanks: `scene: 1
title:
about: # one
date: 2026-06-01
stations: isles.yaml
aircraft: { at: "TXJ246018", altitude: 3500 }
receivers: [ { tune: TXJ } ] # two
cover:
ask: "in \\"quotes\\"" # three
`,
  signal: `${SCENE_TEXT.slice(0, SCENE_TEXT.indexOf("cover:"))}signal: # in its line
  # in the signal
  kind: doppler # in kind
  reflectors:
    # in a list
    - { station: TXJ, at: TXJ 300/2, amplitude: 0.1 } # in an item
    - at: HJL 090/3 # in another
      amplitude: 0.2
  propeller: # in a propeller
    speed: 1810
    blades: 2
# two
ask: What?
`,
  "signal in braces": `${SCENE_TEXT}signal: { noise: none, reflectors: [{ at: [-10.2, 2.3], amplitude: 0 }], # in braces
    propeller: { speed: 2400, blades: 3 } } # in its line
`,
  "signal first": `signal:
  noise: 30
scene: 1
${SCENE_TEXT.replace(/^.*\nscene: 1\n/, "")}`,
};

const commentsOf = (text: string): string[] =>
  [...text.matchAll(/(?:^|\s)(# ?[\w -]+)/g)].map((found) => found[1] ?? "");

test.each(Object.keys(FORMS))("an edited scene (%s) reads back changed, and its comments stay", (form) => {
  const text = FORMS[form]!;
  const before = sceneFrom(text);
  const names = before.receivers.map(({ name }) => name);
  const changes = fc.record({
    title: fc.constantFrom(before.title, "Other: title", "", "two\nlines"),
    about: fc.constantFrom(before.about, "Short", "Long ".repeat(60).trim(), "two\n\nlines\n", ""),
    ask: fc.constantFrom(before.ask, "# not a comment", "What?"),
    date: fc.constantFrom(before.date, "2025-01-31"),
    aircraft: fc.oneof(fc.constant(before.aircraft), aircraftArbitrary),
    wind: fc.oneof(fc.constant(before.wind), windArbitrary),
    covers: coversArbitrary(names),
    signal: fc.oneof(fc.constant(before.signal), signalArbitrary(before.stations)),
    receivers: receiversArbitrary.map((made) =>
      before.receivers.map((old, index) => ({ ...old, ...made[index], name: old.name })),
    ),
  });
  fc.assert(
    fc.property(changes, (change) => {
      const after: Scene = { ...before, ...change };
      const edited = editScene(text, editsBetween(before, after), { path: "s.yaml" });
      if (!edited.ok) throw new Error(edited.faults.map(faultLine).join("\n"));
      const again = sceneFrom(edited.text);
      // A list of covers is changed item by item, so that what was there before keeps its place.
      expect([...again.covers].sort()).toEqual([...after.covers].sort());
      expectSameScene({ ...again, covers: after.covers }, after);
      const gone = before.covers.some((cover) => !after.covers.includes(cover));
      const kept = commentsOf(text).filter(
        (comment) =>
          !(gone && form === "sparse" && comment === "# seven") &&
          !(before.signal !== after.signal && comment.startsWith("# in ")),
      );
      expect(commentsOf(edited.text)).toEqual(expect.arrayContaining(kept));
    }),
    { numRuns: 60 },
  );
});

/** What a hand at the bench changes of a signal, and the lines of the file that change with it. */
test.each<[string, (signal: SignalConditions) => SignalConditions | null, from: string, to: string]>([
  ["the kind", (signal) => ({ ...signal, kind: "conventional" }), "kind: doppler", "kind: conventional"],
  [
    "the noise",
    (signal) => ({ ...signal, noiseDb: 40 }),
    "doppler # in kind",
    "doppler # in kind\n  noise: 40",
  ],
  [
    "no noise",
    (signal) => ({ ...signal, noiseDb: null }),
    "doppler # in kind",
    "doppler # in kind\n  noise: none",
  ],
  [
    "an amplitude",
    ({ reflectors: [first, second], ...signal }) => ({
      ...signal,
      reflectors: [first!, { ...second!, amplitude: 0.5 }],
    }),
    "amplitude: 0.2",
    "amplitude: 0.5",
  ],
  [
    "a reflector less",
    ({ reflectors: [, second], ...signal }) => ({ ...signal, reflectors: [second!] }),
    "    - { station: TXJ, at: TXJ 300/2, amplitude: 0.1 } # in an item\n",
    "",
  ],
  [
    "a reflector more",
    ({ reflectors, ...signal }) => ({
      ...signal,
      reflectors: [...reflectors, { ident: "HJL", position: latLon(-10.25, 1.5), amplitude: 0.3 }],
    }),
    "amplitude: 0.2\n",
    "amplitude: 0.2\n    - { station: HJL, at: [-10.25, 1.5], amplitude: 0.3 }\n",
  ],
  [
    "a propeller's speed",
    (signal) => ({ ...signal, propeller: { speedRpm: 2100, blades: 2 } }),
    "speed: 1810",
    "speed: 2100",
  ],
  [
    "no propeller",
    (signal) => ({ ...signal, propeller: null }),
    "  propeller: # in a propeller\n    speed: 1810\n    blades: 2\n",
    "",
  ],
])("an edit of the signal changes %s and nothing else", (_, change, from, to) => {
  const text = FORMS.signal!;
  const before = sceneFrom(text);
  const after = { ...before, signal: change(before.signal!) };
  expect(edit(text, ...editsBetween(before, after))).toBe(changed(text, from, to));
  expect(sceneFrom(edit(text, ...editsBetween(before, after)))).toEqual(after);
});

test("a signal that is taken away takes its key along, and one that comes stands before the covers", () => {
  const plain = sceneFrom(SCENE_TEXT);
  const signal: SignalConditions = { kind: "doppler", noiseDb: null, reflectors: [], propeller: null };
  const withIt = edit(SCENE_TEXT, ...editsBetween(plain, { ...plain, signal }));
  expect(withIt).toBe(changed(SCENE_TEXT, "cover:", "signal: { kind: doppler, noise: none }\ncover:"));
  expect(edit(withIt, ...editsBetween({ ...plain, signal }, plain))).toBe(SCENE_TEXT);
});

const edit = (text: string, ...edits: SceneEdit[]): string => {
  const result = editScene(text, edits, { path: "s.yaml" });
  return result.ok ? result.text : result.faults.map(faultLine).join("\n");
};

test.each<[string, SceneEdit, from: string, to: string]>([
  ["the heading", { kind: "heading", heading: magneticDeg(5) }, "heading: 090", "heading: 005"],
  ["a half degree", { kind: "heading", heading: magneticDeg(5.52) }, "heading: 090", "heading: 005.5"],
  ["north", { kind: "heading", heading: magneticDeg(0) }, "heading: 090", "heading: 360"],
  ["the altitude", { kind: "altitude", altitudeFt: 5500 }, "altitude: 3500", "altitude: 5500"],
  ["the airspeed", { kind: "tas", tasKt: 95.5 }, "tas: 100", "tas: 95.5"],
  ["the wind", { kind: "wind", wind: { from: trueDeg(5), speedKt: 8 } }, "140/18", "005/8"],
  ["a calm", { kind: "wind", wind: { from: trueDeg(5), speedKt: 0 } }, "140/18", "calm"],
  ["the place", { kind: "position", at: latLon(-10.5, 2.25) }, "TXJ 246/18", "10°30.0′S 002°15.0′E"],
  ["the place from a station", { kind: "position", at: "HJL 076/12" }, "TXJ 246/18", "HJL 076/12"],
  [
    "a course",
    { kind: "receiver", name: "NAV1", change: { course: stationDeg(249) } },
    "course: 070",
    "course: 249",
  ],
  ["a frequency", { kind: "receiver", name: "NAV2", change: { frequencyMhz: 112.3 } }, "HJL", "112.30"],
  [
    "a receiver's error",
    { kind: "receiver", name: "NAV1", change: { bearingErrorDeg: 4 } },
    "course: 070 }",
    "course: 070, error: 4 }",
  ],
  ["a receiver's name", { kind: "receiver", name: "NAV2", change: { name: "VOR2" } }, "NAV2", "VOR2"],
  [
    "the covers",
    { kind: "covers", covers: ["chart", "NAV1.needle"] },
    "[NAV1.needle]",
    "[NAV1.needle, chart]",
  ],
  ["no covers", { kind: "covers", covers: [] }, "[NAV1.needle]", "[]"],
  [
    "the title",
    { kind: "text", key: "title", text: "Left: or right?" },
    "Which way to the course?",
    '"Left: or right?"',
  ],
  [
    "what it shows",
    { kind: "text", key: "about", text: "A needle." },
    "course?\ndate",
    "course?\nabout: A needle.\ndate",
  ],
  [
    "a receiver less",
    { kind: "remove-receiver", name: "NAV1" },
    "  - { name: NAV1, tune: 115.60, course: 070 }\n",
    "",
  ],
  [
    "a receiver more",
    {
      kind: "add-receiver",
      receiver: { name: "NAV3", frequencyMhz: 113.9, course: stationDeg(0), face: "rmi", bearingErrorDeg: 0 },
    },
    "face: hsi }\n",
    "face: hsi }\n  - { name: NAV3, tune: 113.90, course: 360, face: rmi }\n",
  ],
])("an edit of %s changes that and not a character more", (_, change, from, to) => {
  expect(edit(SCENE_TEXT, change)).toBe(changed(SCENE_TEXT, from, to));
});

test("receivers come and go, and comments around them stay", () => {
  const text = FORMS.plain!;
  const receiver = {
    name: "NAV3",
    frequencyMhz: 113.9,
    course: stationDeg(90),
    face: "cdi",
    bearingErrorDeg: 0,
  } as const;
  const result = edit(text, { kind: "add-receiver", receiver }, { kind: "remove-receiver", name: "NAV1" });
  expect(result).toContain(
    `receivers: # thirteen
  # fourteen
  # sixteen
  - name: NAV2 # seventeen
    tune: HJL # eighteen
    course: 180
    face: hsi
  - { name: NAV3, tune: 113.90, course: 090 }
# nineteen`,
  );
});

test("edits that do not fit the file are refused, and so is a file that cannot be read", () => {
  const stranger: SceneEdit = { kind: "receiver", name: "NAV9", change: { course: stationDeg(1) } };
  expect(edit(SCENE_TEXT, stranger)).toBe(
    "s.yaml:2:1 the scene has no receiver NAV9 to change; its receivers are NAV1 and NAV2",
  );
  expect(
    edit(SCENE_TEXT, ...["NAV1", "NAV2"].map((name) => ({ kind: "remove-receiver" as const, name }))),
  ).toBe("s.yaml:2:1 the change leaves the scene no receivers; a scene has one to four");
  const heading: SceneEdit = { kind: "heading", heading: magneticDeg(5) };
  expect(edit(STATIONS_TEXT, heading)).toBe(
    "s.yaml:1:1 this is a station file; a scene file begins with scene: 1",
  );
  expect(edit("scene: 1\n\theading: 090\n", heading)).toBe(
    "s.yaml:2:1 a tab indents this line; YAML is indented with spaces only",
  );
  expect(edit("scene: 1\n", heading)).toBe(
    "s.yaml:1:1 the scene has no aircraft to change; add aircraft: with at: and altitude: under it",
  );
});
